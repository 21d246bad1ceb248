//! Completion: what may stand at the cursor, also on lines that cannot be read yet.

mod inside;
mod isolation;
mod radiated;
mod variant;

use std::collections::BTreeSet;

use downlead_base::{CODES, Severity, Span};
use downlead_eval::Snapshot;
use downlead_quantity::{Dim, units_of};
use downlead_station::forms::signature;
use downlead_station::keywords::Context;
use downlead_station::model::acceptable;
use downlead_station::{Env, is_network, library, lower};
use downlead_syntax::{Item, SyntaxKind};

use crate::cables;
use crate::config::Config;
use crate::names::{Class, NameKind};
use crate::resolve::{local, pieces_of, ports, seen};
use crate::situation::Situation;
use crate::snippets::snippet;
use crate::view::{Doc, clamp, doc_path, doc_text, env_of, item_at, path_at, tree};

/// Something that may stand at the cursor.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Completion {
    /// What the user sees.
    pub label: String,
    /// What it is.
    pub kind: CompletionKind,
    /// A few words beside it.
    pub detail: Option<String>,
    /// More about it.
    pub documentation: Option<String>,
    /// What is replaced.
    pub replace: Span,
    /// By what.
    pub insert: String,
    /// Whether `insert` has places to fill in (`${1:…}`, `$0`).
    pub snippet: bool,
    /// Order.
    pub sort: String,
    /// The likeliest to be meant by what is typed; none is before the first letter.
    pub preselect: bool,
    /// Words of the trade that mean it.
    pub also: &'static [&'static str],
    /// The one of them that is being typed: it finds the word, and is replaced by it.
    pub filter: Option<&'static str>,
}

/// Kind of a completion.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "the words speak for themselves")]
pub enum CompletionKind {
    Keyword,
    Tag,
    Port,
    Band,
    Cable,
    Connector,
    Device,
    Instrument,
    Unit,
    Let,
    Place,
    Qualifier,
    File,
    Snippet,
    Person,
    Family,
}

/// What may stand at an offset, in order.
#[must_use]
pub fn completion(s: &Snapshot, doc: Doc, offset: u32, c: &Config) -> Vec<Completion> {
    completion_with(s, doc, offset, c, &Vec::new)
}

/// The same; `files` is asked, where a path is written, for the files below the root that a text
/// may name, besides those that take part.
#[must_use]
pub fn completion_with(
    s: &Snapshot,
    doc: Doc,
    offset: u32,
    c: &Config,
    files: &dyn Fn() -> Vec<String>,
) -> Vec<Completion> {
    let offset = clamp(doc_text(s, doc), offset);
    let Some(mut at) = Situation::at(s, doc, offset) else {
        return Vec::new();
    };
    // a closing quote ends what is said: a word after it wants a blank first
    if at.comment || at.after_text {
        return Vec::new();
    }
    let env = env_of(s, doc);
    let item = item_at(s, doc, at.replace.start).map(|p| &*p.item);
    let base = item.and_then(|i| variant::base(i, env));
    let began = at.head.len() == 1 && at.cx == Context::Variant;
    let part = base.and_then(|b| variant::in_part(&mut at, b));
    let mut list = List {
        s,
        doc,
        at: &at,
        c,
        env,
        base,
        item,
        out: Vec::new(),
    };
    if at.quoted.is_some() {
        list.path(files);
    } else if at.head.is_empty() {
        list.beginning();
    } else {
        list.inside();
        if let Some(form) = part.filter(|_| began) {
            list.lines_of(form);
        }
    }
    let mut out = list.out;
    out.sort_by(|a, b| a.sort.cmp(&b.sort).then_with(|| a.label.cmp(&b.label)));
    let mut seen = BTreeSet::new();
    out.retain(|x| seen.insert((x.label.clone(), x.insert.clone())));
    let text = doc_text(s, doc);
    let typed = |x: &Completion| text.get(x.replace.start as usize..offset as usize);
    // Enter takes what is offered in place of a new line, so a line that is whole offers nothing
    let whole = |x: &Completion| x.replace.end <= offset && typed(x) == Some(&x.label);
    if out.iter().any(whole) && ends_statement(s, doc, offset) {
        return Vec::new();
    }
    for x in &mut out {
        let typed = text.get(x.replace.start as usize..offset as usize);
        x.filter = typed
            .filter(|t| !t.is_empty() && !x.label.starts_with(t))
            .and_then(|t| x.also.iter().copied().find(|w| w.starts_with(t)));
    }
    let typed = |x: &Completion| text.get(x.replace.start as usize..offset as usize);
    // for the same reason nothing is marked before its first letter
    if let Some(likeliest) = out.iter_mut().find(|x| {
        typed(x).is_some_and(|t| !t.is_empty() && x.label.len() > t.len() && x.label.starts_with(t))
    }) {
        likeliest.preselect = true;
    }
    out
}

/// Whether a statement without errors of its own ends at the offset.
fn ends_statement(s: &Snapshot, doc: Doc, offset: u32) -> bool {
    let (Some(placed), Some(env)) = (item_at(s, doc, offset), env_of(s, doc)) else {
        return false;
    };
    let item = &placed.item;
    let at = offset.saturating_sub(placed.start);
    let Some(head) = path_at(item, at).last().map(|s| s.head_span()) else {
        return false;
    };
    let lowered = lower(item, &env.lets, false);
    let mut found = item.diagnostics().iter().chain(&lowered.diagnostics);
    head.end == at
        && !found.any(|d| {
            let own = d.primary.loc.span;
            d.severity == Severity::Error && head.start <= own.start && own.start <= head.end
        })
}

struct List<'a> {
    s: &'a Snapshot,
    doc: Doc,
    at: &'a Situation<'a>,
    c: &'a Config,
    env: Option<&'a Env>,
    /// The station that the variant changes in which the cursor is.
    base: Option<&'a Item>,
    /// The item in which the cursor is.
    item: Option<&'a Item>,
    out: Vec<Completion>,
}

impl<'a> List<'a> {
    fn add(
        &mut self,
        rank: u8,
        kind: CompletionKind,
        label: &str,
        detail: Option<String>,
    ) -> &mut Completion {
        self.out.push(Completion {
            label: label.to_owned(),
            kind,
            detail,
            documentation: None,
            replace: self.at.replace,
            insert: label.to_owned(),
            snippet: false,
            sort: format!("{rank}{:04}", self.out.len()),
            preselect: false,
            also: &[],
            filter: None,
        });
        let last = self.out.len() - 1;
        &mut self.out[last]
    }

    fn words(&mut self, rank: u8, words: &[&str]) {
        for w in words {
            let detail = match *w {
                "k" => Some("coverage factor of an uncertainty: 1 for a standard one, 2 for an expanded one".to_owned()),
                w if w.ends_with("sinad") => {
                    Some("signal, noise and distortion over noise and distortion".to_owned())
                }
                _ => None,
            };
            self.add(rank, CompletionKind::Qualifier, w, detail);
        }
    }

    /// At the beginning of a statement.
    fn beginning(&mut self) {
        let cx = self.at.cx;
        if cx == Context::Chain {
            if let Some((tag, typed)) = self.at.partial.split_once('.') {
                self.ports(tag, typed);
                return;
            }
            self.tags();
        }
        if cx == Context::Variant
            && let Some(b) = self.base
        {
            self.tags_of(b);
        }
        if cx == Context::Table {
            return;
        }
        let rank = if cx == Context::Chain { 5 } else { 1 };
        // a chain's divider written by its tag has branches only
        let only_branches =
            cx == Context::Chain
                && self.at.frames.last().is_some_and(|f| {
                    f.cx == Context::Chain && !matches!(&*f.word, "branch" | "chain")
                });
        for f in self.at.block.lines().iter().filter(|f| !f.word.is_empty()) {
            if only_branches && f.word != "branch" {
                continue;
            }
            let snippets = self.c.snippets;
            let station = self.at.in_station() && cx == Context::Station;
            let item = self.add(rank, CompletionKind::Keyword, f.word, Some(signature(f).0));
            item.documentation = Some(f.doc.to_owned());
            item.also = f.also;
            match snippet(cx, f.word, station).filter(|_| snippets) {
                Some(body) => {
                    item.insert = body.to_owned();
                    item.snippet = true;
                }
                None => item.insert = format!("{} ", f.word),
            }
        }
    }

    fn tags(&mut self) {
        let Some(placed) = item_at(self.s, self.doc, self.at.replace.start) else {
            return;
        };
        let item = &placed.item;
        let list = pieces_of(self.s, self.doc, item);
        // what the chain has already comes last
        let path = path_at(item, self.at.replace.start.saturating_sub(placed.start));
        let here = path
            .iter()
            .rev()
            .find(|x| x.keyword() == Some("chain"))
            .map(|x| x.span());
        let used: BTreeSet<&str> = list
            .iter()
            .filter(|p| {
                p.class == Class::Name(NameKind::Tag, false)
                    && here.is_some_and(|h| h.start <= p.span.start && p.span.end <= h.end)
            })
            .filter(|p| !p.span.shift(placed.start).touches(self.at.replace.end))
            .map(|p| item.slice(p.span))
            .collect();
        for p in &list {
            if p.class != Class::Name(NameKind::Tag, true)
                || here.is_some_and(|h| h.touches(p.span.start))
            {
                continue;
            }
            let name = item.slice(p.span);
            let Some(d) = local(self.s, self.doc, placed, NameKind::Tag, name) else {
                continue;
            };
            let detail = d.stmt.slice(d.stmt.head_span()).trim().to_owned();
            let rank = if used.contains(name) { 4 } else { 1 };
            let list = ports(self.s, &d);
            if list.is_empty() {
                self.add(rank, CompletionKind::Tag, name, Some(detail));
            } else {
                for port in list {
                    self.add(
                        rank,
                        CompletionKind::Port,
                        &format!("{name}.{port}"),
                        Some(detail.clone()),
                    );
                }
            }
        }
    }

    fn ports(&mut self, tag: &str, _typed: &str) {
        let Some(placed) = item_at(self.s, self.doc, self.at.replace.start) else {
            return;
        };
        let Some(d) = local(self.s, self.doc, placed, NameKind::Tag, tag) else {
            return;
        };
        let from = self.at.replace.start + crate::view::to32(tag.len()) + 1;
        for port in ports(self.s, &d) {
            let item = self.add(
                1,
                CompletionKind::Port,
                port,
                Some(format!("port of {tag}")),
            );
            item.replace = Span::new(from, item.replace.end.max(from));
        }
    }

    /// Names of a kind that are visible here, with their titles.
    fn names(&mut self, rank: u8, kind: NameKind, as_kind: CompletionKind) {
        let word = match kind {
            NameKind::Cable => "cable",
            NameKind::Connector => "connector",
            NameKind::Device => "device",
            NameKind::Instrument => "instrument",
            NameKind::Band => "band",
            NameKind::Rules => "licence",
            NameKind::Station => "station",
            _ => return,
        };
        let losses = match kind {
            NameKind::Cable => self.losses(),
            _ => Vec::new(),
        };
        let mut docs: Vec<(u8, Doc)> = seen(self.s, self.doc)
            .into_iter()
            .map(|f| (rank, Doc::File(f)))
            .collect();
        docs.extend((0..library().files.len()).map(|i| (rank + 1, Doc::Library(i))));
        for (rank, doc) in docs {
            let Some(t) = tree(self.s, doc) else { continue };
            for p in t.items() {
                let begins = |w: Option<&str>| {
                    w == Some(word) || kind == NameKind::Rules && w == Some("rules")
                };
                let Some(stmt) = p.item.statement().filter(|x| begins(x.keyword())) else {
                    continue;
                };
                let Some(a) = stmt.atoms().get(1) else {
                    continue;
                };
                let title = stmt.atoms().iter().find_map(|a| stmt.string(*a));
                // what a cable is chosen by: its loss where it is to be used
                let cable = self.env.and_then(|e| Some((e, e.cable(stmt.text(*a))?)));
                let loss = cable
                    .filter(|_| !losses.is_empty())
                    .and_then(|(e, c)| cables::in_short(c, &losses, &e.attachments));
                let detail = match (title, kind) {
                    _ if loss.is_some() => loss,
                    (Some(t), _) => Some(t.to_owned()),
                    (None, NameKind::Band) => Some(
                        stmt.slice(stmt.span())
                            .split_whitespace()
                            .skip(2)
                            .collect::<Vec<_>>()
                            .join(" "),
                    ),
                    (None, _) => None,
                };
                let mut source = match doc {
                    Doc::Library(_) => "built-in library".to_owned(),
                    Doc::File(_) => doc_path(self.s, doc),
                };
                if let Some(t) = title.filter(|_| kind == NameKind::Cable) {
                    source = format!("{t}, {source}");
                }
                self.add(rank, as_kind, stmt.text(*a), detail).documentation = Some(source);
            }
        }
    }

    /// The frequencies at which a cable here is used: those of the chain around the cursor, else all in
    /// use.
    fn losses(&self) -> Vec<(String, f64)> {
        let at = item_at(self.s, self.doc, self.at.replace.start);
        let of_chain = at.zip(self.env).map(|(p, env)| {
            let local = self.at.replace.start.saturating_sub(p.start);
            cables::of_chain(&p.item, local, env)
        });
        match of_chain {
            Some(list) if !list.is_empty() => list,
            _ => cables::frequencies(self.s, self.doc, self.c),
        }
    }

    /// Codes of findings that can be accepted.
    fn codes(&mut self, rank: u8) {
        for code in CODES.iter().filter(|c| acceptable(c)) {
            let title = Some(code.title.to_owned());
            self.add(rank, CompletionKind::Qualifier, code.id, title);
        }
    }

    fn places(&mut self, rank: u8) {
        let Some(placed) = item_at(self.s, self.doc, self.at.replace.start) else {
            return;
        };
        for p in crate::names::places_of(self.base.unwrap_or(&placed.item)) {
            self.add(rank, CompletionKind::Place, p, Some("place".to_owned()));
        }
    }

    fn lets(&mut self, rank: u8, kinds: &[Dim]) {
        let Some(env) = self.env else { return };
        let mut names: Vec<(&str, Dim)> = env.lets.iter().map(|(n, v)| (&**n, v.q.dim)).collect();
        names.sort_unstable_by_key(|n| n.0);
        for (n, dim) in names {
            if kinds.is_empty() || kinds.contains(&dim) || dim == Dim::Count {
                self.add(rank, CompletionKind::Let, n, Some(dim.noun().to_owned()));
            }
        }
    }

    /// Words already used in a role anywhere: people, families, shared causes.
    fn heard(&mut self, kind: NameKind, as_kind: CompletionKind) {
        let mut all = BTreeSet::new();
        for f in 0..self.s.files().len() {
            for p in self.s.files()[f].tree.items() {
                for x in pieces_of(self.s, Doc::File(f), &p.item) {
                    if matches!(x.class, Class::Name(k, _) if k == kind)
                        && !x.span.shift(p.start).touches(self.at.replace.end)
                    {
                        all.insert(p.item.slice(x.span).to_owned());
                    }
                }
            }
        }
        if kind == NameKind::Family {
            for n in library().connector_names() {
                if let Some((a, b)) = library().connector(n).and_then(|c| c.families.clone()) {
                    all.insert(a.to_string());
                    all.insert(b.to_string());
                }
            }
        }
        for n in all {
            self.add(1, as_kind, &n, Some(kind.noun().to_owned()));
        }
    }

    fn units(&mut self) {
        let kinds = self.at.kinds();
        for (i, d) in kinds.iter().enumerate() {
            let mut symbols = BTreeSet::new();
            for (j, u) in units_of(*d).enumerate() {
                if symbols.insert(u.symbol()) {
                    let rank = u8::try_from(i.min(8)).unwrap_or(8);
                    let item = self.add(
                        rank,
                        CompletionKind::Unit,
                        u.symbol(),
                        Some(u.name.to_owned()),
                    );
                    item.sort = format!("{rank}{j:04}");
                    item.documentation = Some(d.noun().to_owned());
                }
            }
        }
    }

    fn path(&mut self, files: &dyn Fn() -> Vec<String>) {
        let Some((_, start)) = self.at.quoted else {
            return;
        };
        let Doc::File(me) = self.doc else { return };
        let mut before = self.at.head.iter().rev();
        let before = before.find(|t| t.kind != SyntaxKind::OpenText);
        let own = self.s.files()[me].path.clone();
        let mut all: BTreeSet<String> = match self.at.word() {
            _ if before.is_some_and(|t| t.text == "from") => {
                let table = matches!(self.at.word(), "readings" | "profile");
                let is_table = |p: &str| !is_network(p) && !p.ends_with(".downlead");
                let mut all = self.measured();
                all.extend(files());
                all.retain(|p| if table { is_table(p) } else { is_network(p) });
                all
            }
            "use" => {
                let known = self.s.files().iter();
                let mut all: BTreeSet<String> = known
                    .filter(|f| f.error.is_none())
                    .map(|f| f.path.clone())
                    .collect();
                all.extend(files().into_iter().filter(|p| p.ends_with(".downlead")));
                all
            }
            _ => return,
        };
        all.remove(&own);
        for path in all {
            let item = self.add(1, CompletionKind::File, &relative(&own, &path), None);
            item.replace = Span::new(start, item.replace.end.max(start));
        }
    }

    /// Files of readings and of networks that take part somewhere.
    fn measured(&self) -> BTreeSet<String> {
        self.s
            .scopes()
            .iter()
            .flat_map(|x| x.items().iter().map(move |i| (x.env(), i)))
            .flat_map(|(env, i)| i.1.files.iter().map(move |f| (env, f)))
            .filter_map(|(env, f)| env.attachments.at(f.loc))
            // what is being typed is a path too, but of no file
            .filter(|a| a.content.is_ok())
            .map(|a| a.path.to_string())
            .collect()
    }
}

/// The path of `to` as the file `from` writes it.
pub(crate) fn relative(from: &str, to: &str) -> String {
    let mut a: Vec<&str> = from.split('/').collect();
    a.pop();
    let b: Vec<&str> = to.split('/').collect();
    let same = a
        .iter()
        .zip(&b)
        .take_while(|(x, y)| x == y)
        .count()
        .min(b.len() - 1);
    let mut out = "../".repeat(a.len() - same);
    out.push_str(&b[same..].join("/"));
    out
}
