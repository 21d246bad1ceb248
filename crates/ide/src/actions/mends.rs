//! Quick fixes that need more than the finding knows: what stands around it, and what the files
//! and the library have.

use downlead_base::{Severity, Span};
use downlead_eval::Snapshot;
use downlead_quantity::{Dim, unit};
use downlead_station::model::{Meaning, Part, PartKind, Step};
use downlead_station::{Env, library};
use downlead_syntax::{BinOp, ExprKind, Item, Placed, Stmt};

use super::{convert, local};
use crate::diagnostics::Finding;
use crate::resolve::owner;
use crate::view::{
    Action, ActionKind, Doc, TextEdit, View, doc_text, env_of, indent, item_at, line_end,
    line_start, newline, tidy,
};

/// Fixes of a finding.
pub(super) fn of(s: &Snapshot, doc: Doc, f: &Finding, out: &mut Vec<Action>) {
    let Some(placed) = item_at(s, doc, f.span.start) else {
        return;
    };
    let at = At { s, doc, placed, f };
    match f.code {
        "levels-added" => at.levels(out),
        "power-times-decibel" => at.product(out),
        "figure-twice" => at.twice(out),
        "loss-rate-implausible" => at.rate(out),
        "mixed-length-units" => at.lengths(out),
        "part-unused" => at.unused(out),
        "connector-gap" => at.gap(out),
        "chain-without-end" => at.end(out),
        "duplexer-across-bands" => at.kind("diplexer", out),
        "diplexer-for-pair" => at.kind("duplexer", out),
        "duplicate-name" => at.name(out),
        "unexpected-word" => at.with(out),
        "unknown-instrument" => at.instrument(out),
        _ => {}
    }
}

struct At<'a> {
    s: &'a Snapshot,
    doc: Doc,
    placed: &'a Placed,
    f: &'a Finding,
}

impl<'a> At<'a> {
    fn item(&self) -> &'a Item {
        &self.placed.item
    }

    /// The finding's range in its item.
    fn local(&self) -> Span {
        local(self.placed, self.f)
    }

    fn statement(&self) -> Option<Stmt<'a>> {
        owner(self.item(), self.local())
    }

    fn edit(&self, local: Span, text: impl Into<String>) -> TextEdit {
        TextEdit {
            doc: self.doc,
            span: local.shift(self.placed.start),
            text: text.into(),
        }
    }

    fn offer(&self, title: String, edits: Vec<TextEdit>, out: &mut Vec<Action>) {
        if !edits.is_empty() {
            out.push(Action {
                codes: vec![self.f.code],
                finding: Some(self.f.span),
                ..Action::new(title, ActionKind::QuickFix, tidy(edits))
            });
        }
    }

    /// Two levels: as powers, which do add.
    fn levels(&self, out: &mut Vec<Action>) {
        let edits =
            convert::levels_to_powers(self.item(), self.doc, self.placed.start, self.local());
        self.offer("Write the powers in watts".to_owned(), edits, out);
    }

    /// A power times decibels: as a level plus decibels.
    fn product(&self, out: &mut Vec<Action>) {
        let Some(stmt) = self.statement() else { return };
        for a in stmt.atoms() {
            let Some(v) = stmt.value(*a) else { continue };
            let ExprKind::Binary(op, l, r) = v.expr().kind() else {
                continue;
            };
            let (sign, power) = match (op, l.kind(), r.kind()) {
                (BinOp::Mul, ExprKind::Number(n), _) if is_power(&n) => ("+", n),
                (BinOp::Mul, _, ExprKind::Number(n)) if is_power(&n) => ("+", n),
                (BinOp::Div, ExprKind::Number(n), _) if is_power(&n) => ("-", n),
                _ => continue,
            };
            let between = Span::new(l.span().end, r.span().start);
            let Some(level) = convert::to_unit(self.item(), &power, "dBm") else {
                continue;
            };
            let edits = vec![
                self.edit(power.digits.join(power.unit_span), level),
                self.edit(between, format!(" {sign} ")),
            ];
            self.offer("Write a level plus decibels".to_owned(), edits, out);
        }
    }

    /// Takes one of two figures away.
    fn twice(&self, out: &mut Vec<Action>) {
        if let Some(edit) = self.without(self.local()) {
            self.offer("Remove this figure".to_owned(), vec![edit], out);
        }
        let first = self.f.related.iter().find(|r| r.place.doc == self.doc);
        if let Some(p) = first.map(|r| r.place.span)
            && p.start >= self.placed.start
        {
            let local = Span::new(p.start - self.placed.start, p.end - self.placed.start);
            if let Some(edit) = self.without(local) {
                self.offer("Remove the first one".to_owned(), vec![edit], out);
            }
        }
    }

    /// The statement or the group at a place, taken away.
    fn without(&self, at: Span) -> Option<TextEdit> {
        let stmt = owner(self.item(), at)?;
        let mut before: Option<Span> = None;
        for (i, g) in stmt.groups().enumerate() {
            let span = g.first()?.span.join(g.last()?.span);
            if span.start <= at.start && at.end <= span.end {
                return match before {
                    // with the comma in front
                    Some(b) => Some(self.edit(Span::new(b.end, span.end), "")),
                    // the first says what the statement is: it goes as a whole
                    None if i == 0 => self.without_line(stmt),
                    None => None,
                };
            }
            before = Some(span);
        }
        None
    }

    /// A statement with its line, if nothing else stands there.
    fn without_line(&self, stmt: Stmt<'_>) -> Option<TextEdit> {
        let text = doc_text(self.s, self.doc);
        let span = stmt.span().shift(self.placed.start);
        let start = line_start(text, span.start);
        let end = line_end(text, span.end);
        let before = text.get(start as usize..span.start as usize)?;
        let after = text.get(span.end as usize..end as usize)?;
        if !before.trim().is_empty() || !after.trim().is_empty() {
            return None;
        }
        let gap = text.get(end as usize..)?;
        let gap = u32::from(gap.starts_with("\r\n")) + u32::from(!gap.is_empty());
        Some(TextEdit {
            doc: self.doc,
            span: Span::new(start, end + gap),
            text: String::new(),
        })
    }

    /// The other one of `dB/100 m` and `dB/100 ft`, where that makes the loss a likely one.
    fn rate(&self, out: &mut Vec<Action>) {
        let Some(loss) = self.statement() else { return };
        let span = loss.span();
        let text = loss.slice(span);
        for (from, to) in [("/100 ft", "/100 m"), ("/100 m", "/100 ft")] {
            let edits: Vec<TextEdit> = text
                .match_indices(from)
                .filter(|(i, _)| !text[i + from.len()..].starts_with(char::is_alphanumeric))
                .map(|(i, _)| {
                    let start = span.start + crate::view::to32(i);
                    self.edit(Span::new(start, start + crate::view::to32(from.len())), to)
                })
                .collect();
            if edits.is_empty() || !self.corrected(&edits) {
                continue;
            }
            self.offer(format!("Write the losses in `dB{to}`"), edits, out);
        }
    }

    /// Whether the finding is gone after the edits.
    fn corrected(&self, edits: &[TextEdit]) -> bool {
        let count = |s: &Snapshot| {
            let list = s.diagnostics();
            list.iter().filter(|d| d.code.id == self.f.code).count()
        };
        count(&crate::rename::with_edits(self.s, edits)) < count(self.s)
    }

    /// Whether the finding is gone after the edits, and no error takes its place.
    fn clean(&self, edits: &[TextEdit]) -> bool {
        let errors = |s: &Snapshot| {
            let list = s.diagnostics();
            list.iter()
                .filter(|d| d.severity == Severity::Error)
                .count()
        };
        let after = crate::rename::with_edits(self.s, edits);
        let lost = usize::from(self.f.severity == Severity::Error);
        self.corrected(edits) && errors(&after) + lost <= errors(self.s)
    }

    /// The instrument of a reading without `with` before it.
    fn with(&self, out: &mut Vec<Action>) {
        let name = self.item().slice(self.local());
        let known = env_of(self.s, self.doc).is_some_and(|e| e.instruments.contains_key(name));
        let reading = self.statement().and_then(|s| s.keyword()) == Some("read");
        if known && reading {
            let edit = self.edit(self.local(), format!("with {name}"));
            if self.clean(std::slice::from_ref(&edit)) {
                self.offer(format!("Write `with {name}`"), vec![edit], out);
            }
        }
    }

    /// An instrument that is not defined, defined before the item with a figure that is marked as a
    /// guess.
    fn instrument(&self, out: &mut Vec<Action>) {
        let name = self.item().slice(self.local());
        let text = doc_text(self.s, self.doc);
        let start = self.placed.start + self.item().statement().map_or(0, |s| s.head_span().start);
        let start = line_start(text, start);
        let edit = TextEdit {
            doc: self.doc,
            span: Span::new(start, start),
            text: format!(
                "instrument {name} {{{nl}    accuracy 5 % of reading, guess{nl}}}{nl}{nl}",
                nl = newline(text)
            ),
        };
        if self.clean(std::slice::from_ref(&edit)) {
            self.offer(format!("Define instrument `{name}`"), vec![edit], out);
        }
    }

    /// All lengths of the item in one unit.
    fn lengths(&self, out: &mut Vec<Action>) {
        for (word, from, to) in [
            ("metres", &["ft", "in", "yd", "mi"][..], ["m", "mm"]),
            ("feet", &["m", "km", "mm", "cm"][..], ["ft", "in"]),
        ] {
            let edits = convert::lengths(self.item(), self.doc, self.placed.start, from, to);
            self.offer(format!("Write all lengths here in {word}"), edits, out);
        }
    }

    fn unused(&self, out: &mut Vec<Action>) {
        let Some(stmt) = self.statement() else { return };
        let name = self.item().slice(self.local());
        if let Some(edit) = self.without_line(stmt) {
            self.offer(format!("Remove `{name}`"), vec![edit], out);
        }
    }

    /// An adapter of the files or the library between two parts.
    fn gap(&self, out: &mut Vec<Action>) {
        let Some(env) = env_of(self.s, self.doc) else {
            return;
        };
        let text = doc_text(self.s, self.doc);
        let first = self.f.related.iter().find(|r| r.place.doc == self.doc);
        let (Some(a), Some(b)) = (
            first.and_then(|r| self.ends(r.place.span)),
            self.ends(self.f.span),
        ) else {
            return;
        };
        let pad = indent(text, self.f.span.start);
        for name in adapters(&a.1, &b.0, env).into_iter().take(3) {
            let line = format!("adapter {name}{}{pad}", newline(text));
            let at = Span::new(self.f.span.start, self.f.span.start);
            let edit = TextEdit {
                doc: self.doc,
                span: at,
                text: line,
            };
            self.offer(format!("Put `adapter {name}` between"), vec![edit], out);
        }
    }

    /// Families of the ends of the part whose line of a chain, or whose statement, is there.
    fn ends(&self, span: Span) -> Option<(Box<str>, Box<str>)> {
        let view = View::new(self.s);
        let Doc::File(file) = self.doc else {
            return None;
        };
        let scope = self.s.scopes().iter().find(|x| x.file() == file)?;
        let meaning = scope.items().iter().find(|i| i.0.id == self.item().id)?;
        let mut found = None;
        each_line(&meaning.1.meaning, &mut |part, loc| {
            if view
                .place(loc)
                .is_some_and(|p| p.doc == self.doc && p.span == span)
            {
                found = part.ends.as_deref().cloned();
            }
        });
        found
    }

    /// A chain that ends in nothing: a dummy load is an end and needs no figure.
    fn end(&self, out: &mut Vec<Action>) {
        let text = doc_text(self.s, self.doc);
        let Some(stmt) = self.statement() else { return };
        let span = stmt.span().shift(self.placed.start);
        // of an empty chain the head itself is marked
        if stmt.keyword() == Some("chain") || text.get(span.range()).is_none() {
            return;
        }
        let edit = TextEdit {
            doc: self.doc,
            span: Span::new(span.end, span.end),
            text: format!("{}{}load", newline(text), indent(text, span.start)),
        };
        if self.clean(std::slice::from_ref(&edit)) {
            self.offer("End it in a dummy load".to_owned(), vec![edit], out);
        }
    }

    /// Another kind of part.
    fn kind(&self, word: &str, out: &mut Vec<Action>) {
        let Some(stmt) = self.statement() else { return };
        let (Some(first), Some(old)) = (stmt.atoms().first(), stmt.keyword()) else {
            return;
        };
        if PartKind::from_word(old).is_some() {
            let edit = self.edit(first.span, word);
            self.offer(format!("Make it a {word}"), vec![edit], out);
        }
    }

    /// The next name that is free.
    fn name(&self, out: &mut Vec<Action>) {
        let old = self.item().slice(self.local());
        let stem = old.trim_end_matches(|c: char| c.is_ascii_digit());
        if stem.is_empty() || stem.contains(['"', ' ']) {
            return;
        }
        let text = doc_text(self.s, self.doc);
        let words: Vec<&str> = text
            .split(|c: char| !(c.is_alphanumeric() || c == '-' || c == '_'))
            .collect();
        let from = old[stem.len()..].parse::<u32>().unwrap_or(1);
        let names = (from.saturating_add(1)..).take(1000);
        let gap = if old.len() == stem.len() { "-" } else { "" };
        let free = names
            .map(|n| format!("{stem}{gap}{n}"))
            .find(|n| !words.contains(&n.as_str()));
        if let Some(free) = free {
            let edit = self.edit(self.local(), free.clone());
            self.offer(format!("Name this one `{free}`"), vec![edit], out);
        }
    }
}

fn is_power(n: &downlead_syntax::Number) -> bool {
    n.unit.is_some_and(|u| unit(u).dim == Dim::Power)
}

/// Names of connectors that join two families, of the files or the library.
pub(super) fn adapters(a: &str, b: &str, env: &Env) -> Vec<String> {
    let own = env.connectors.keys().map(AsRef::as_ref);
    let mut names: Vec<String> = own
        .chain(library().connector_names())
        .filter(|n| {
            let joins = env.connector(n).and_then(|c| c.families.as_ref());
            joins.is_some_and(|(x, y)| (&**x, &**y) == (a, b) || (&**x, &**y) == (b, a))
        })
        .map(str::to_owned)
        .collect();
    names.sort();
    names.dedup();
    names
}

/// Every line of the chains with the part it means.
fn each_line<'m>(meaning: &'m Meaning, f: &mut dyn FnMut(&'m Part, downlead_base::Loc)) {
    fn steps<'m>(
        list: &'m [Step],
        parts: &'m [Part],
        f: &mut dyn FnMut(&'m Part, downlead_base::Loc),
    ) {
        for x in list {
            match x {
                Step::Part { part, branches } => {
                    f(part, part.loc);
                    branches.iter().for_each(|b| steps(&b.steps, parts, f));
                }
                Step::Use {
                    tag, loc, branches, ..
                } => {
                    let named = |p: &&Part| p.tag.as_ref().is_some_and(|t| t.text == tag.text);
                    if let Some(part) = parts.iter().find(named) {
                        f(part, *loc);
                    }
                    branches.iter().for_each(|b| steps(&b.steps, parts, f));
                }
                _ => {}
            }
        }
    }
    match meaning {
        Meaning::Station(st) => st.chains.iter().for_each(|c| steps(&c.steps, &st.parts, f)),
        Meaning::Chain(c) => steps(&c.steps, &[], f),
        _ => {}
    }
}
