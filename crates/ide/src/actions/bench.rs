//! What was measured on the bench as a cable of its own, and the lines a session lacks.

use downlead_base::Span;
use downlead_eval::bench::result::SessionResult;
use downlead_eval::{Scope, Snapshot};
use downlead_station::keyword_of;
use downlead_station::model::{Meaning, Node};
use downlead_station::session::{Piece, Reading, ReadingKind, Session};
use downlead_syntax::{Placed, Stmt};

use super::local;
use super::mends::adapters;
use crate::bench::{MeasuredCable, cable_definition, fitted_cable, measured_cable};
use crate::diagnostics::Finding;
use crate::names::NameKind;
use crate::resolve::{global, owner, seen};
use crate::view::{
    Action, ActionKind, Doc, TextEdit, doc_path, doc_text, env_of, indent, item_at, line_end,
    line_start, newline, path_at, tidy, to32, tree,
};

/// The session an item is, with its results and the scope they hold in.
fn session_of<'s>(
    s: &'s Snapshot,
    placed: &Placed,
) -> Option<(&'s Session, &'s SessionResult, &'s Scope)> {
    s.scopes().iter().find_map(|scope| {
        let mut items = scope.items().iter().filter(|x| x.0.id == placed.item.id);
        items.find_map(|(_, low, result)| match &low.meaning {
            Meaning::Session(x) => Some((&**x, result.session.as_deref()?, scope)),
            _ => None,
        })
    })
}

/// At a piece of a session: its fitted cable into this file, or beside the one it is sold as. At a
/// cable of a station: the fit of a piece of that cable in its stead.
pub(super) fn fitted(s: &Snapshot, doc: Doc, offset: u32, out: &mut Vec<Action>) {
    let Some(placed) = item_at(s, doc, offset) else {
        return;
    };
    match keyword_of(&placed.item) {
        Some("session") => of_piece(s, doc, placed, offset, out),
        Some("station" | "chain") => of_run(s, doc, placed, offset, out),
        _ => {}
    }
}

fn of_piece(s: &Snapshot, doc: Doc, placed: &Placed, offset: u32, out: &mut Vec<Action>) {
    let Some((session, r, scope)) = session_of(s, placed) else {
        return;
    };
    let text = doc_text(s, doc);
    let line = line_start(text, offset);
    let on = |p: &Piece| line_start(text, p.loc.span.start + placed.start) == line;
    let Some(index) = session.pieces.iter().position(on) else {
        return;
    };
    let env = scope.env();
    let Some((mut c, fit)) = fitted_cable(session, r, env, index) else {
        if let Some(Err(_)) = r.pieces[index].fit {
            let name = measured_cable(session, r, env, index).name;
            let mut a = Action::new(
                format!("Put the cable as measured into this file, `{name}`"),
                ActionKind::Extract,
                Vec::new(),
            );
            a.disabled = Some(
                "its readings give no two coefficients; read it on another band too".to_owned(),
            );
            out.push(a);
        }
        return;
    };
    if let Some(old) = existing(s, doc, &mut c, session) {
        let new = cable_definition(&c, fit);
        let now = doc_text(s, old.doc).get(old.span.range());
        if now.is_some_and(|t| t.trim() != new.trim()) {
            out.push(Action::new(
                format!("Bring `{}` up to date with these readings", c.name),
                ActionKind::Rewrite,
                vec![TextEdit {
                    text: new.trim_end().to_owned(),
                    ..old
                }],
            ));
        }
        return;
    }
    let definition = cable_definition(&c, fit);
    out.push(Action::new(
        format!("Put the cable as measured into this file, `{}`", c.name),
        ActionKind::Extract,
        vec![behind(s, doc, placed, &definition)],
    ));
    if let Some(other) = cable_file(s, doc, &r.pieces[index].cable) {
        out.push(Action::new(
            format!(
                "Put the cable as measured into {}, `{}`",
                doc_path(s, other),
                c.name
            ),
            ActionKind::Extract,
            vec![at_end(s, other, &definition)],
        ));
    }
}

/// The definition of that name that is there already; of another piece's, the new one gets a name
/// of its own.
fn existing(s: &Snapshot, doc: Doc, c: &mut MeasuredCable, session: &Session) -> Option<TextEdit> {
    let find = |name: &str| global(s, doc, NameKind::Cable, name);
    let is_it = |d: &crate::resolve::Def<'_>, title: &str| {
        matches!(d.doc, Doc::File(_)) && d.title() == Some(title)
    };
    if find(&c.name).is_some_and(|d| !is_it(&d, &c.title)) {
        let stem = c.name.trim_end_matches("-as-measured").to_owned();
        c.name = format!("{stem}-of-{}-as-measured", session.name.text.to_lowercase());
    }
    let d = find(&c.name).filter(|d| is_it(d, &c.title))?;
    Some(TextEdit {
        doc: d.doc,
        span: d.stmt.span().shift(d.start),
        text: String::new(),
    })
}

/// A definition behind an item, on lines of its own.
fn behind(s: &Snapshot, doc: Doc, placed: &Placed, definition: &str) -> TextEdit {
    let text = doc_text(s, doc);
    let nl = newline(text);
    let end = placed
        .item
        .statement()
        .map_or(placed.start, |x| x.span().end + placed.start);
    let end = line_end(text, end);
    TextEdit {
        doc,
        span: Span::new(end, end),
        text: format!("{nl}{nl}{}", definition.trim_end().replace('\n', nl)),
    }
}

/// A definition at the end of a file.
fn at_end(s: &Snapshot, doc: Doc, definition: &str) -> TextEdit {
    let text = doc_text(s, doc);
    let nl = newline(text);
    let gap = if text.is_empty() {
        ""
    } else if text.ends_with('\n') {
        nl
    } else {
        &nl.repeat(2)
    };
    let end = to32(text.len());
    TextEdit {
        doc,
        span: Span::new(end, end),
        text: format!("{gap}{}", definition.replace('\n', nl)),
    }
}

/// Another file that defines cables: the one of `cable`, or the first in sight that has any.
fn cable_file(s: &Snapshot, doc: Doc, cable: &str) -> Option<Doc> {
    let own = global(s, doc, NameKind::Cable, cable).map(|d| d.doc);
    match own {
        Some(d @ Doc::File(_)) => return (d != doc).then_some(d),
        Some(Doc::Library(_)) | None => {}
    }
    let files = seen(s, doc).into_iter().map(Doc::File);
    files.filter(|d| *d != doc).find(|d| {
        let items = tree(s, *d).map_or(&[][..], |t| t.items());
        items.iter().any(|p| keyword_of(&p.item) == Some("cable"))
    })
}

fn of_run(s: &Snapshot, doc: Doc, placed: &Placed, offset: u32, out: &mut Vec<Action>) {
    let path = path_at(&placed.item, offset - placed.start);
    let Some(run) = path
        .iter()
        .rev()
        .find(|x| matches!(x.keyword(), Some("run" | "jumper" | "tail")))
    else {
        return;
    };
    let atoms = run.atoms();
    let of = atoms.iter().position(|a| run.text(*a) == "of");
    let Some(cable) = of.and_then(|i| atoms.get(i + 1)) else {
        return;
    };
    let old = run.text(*cable);
    let mut done: Vec<String> = Vec::new();
    for scope in s.scopes() {
        for (_, low, result) in scope.items() {
            let (Meaning::Session(session), Some(r)) = (&low.meaning, result.session.as_deref())
            else {
                continue;
            };
            for (i, p) in r.pieces.iter().enumerate() {
                if *p.cable != *old {
                    continue;
                }
                let Some((mut c, fit)) = fitted_cable(session, r, scope.env(), i) else {
                    continue;
                };
                let known = existing(s, doc, &mut c, session).is_some();
                if done.contains(&c.title) {
                    continue;
                }
                done.push(c.title.clone());
                let mut edits = vec![TextEdit {
                    doc,
                    span: cable.span.shift(placed.start),
                    text: c.name.clone(),
                }];
                if !known {
                    edits.push(behind(s, doc, placed, &cable_definition(&c, fit)));
                }
                out.push(Action::new(
                    format!(
                        "Use `{}` here: {old} as measured (piece {} of {})",
                        c.name, p.name, session.name.text
                    ),
                    ActionKind::Rewrite,
                    tidy(edits),
                ));
            }
        }
    }
}

/// Fixes of a finding in a session: the line that is missing, with its places to be filled in.
/// Unknown values are not guessed: such a place stays an error until it is filled in.
pub(super) fn mends(s: &Snapshot, doc: Doc, f: &Finding, out: &mut Vec<Action>) {
    let Some(placed) = item_at(s, doc, f.span.start) else {
        return;
    };
    let at = At { s, doc, placed, f };
    match f.code {
        "reading-incomplete" => at.incomplete(out),
        "no-baseline" => at.baseline(true, out),
        "no-closing-baseline" => at.baseline(false, out),
        "not-equalised" => at.equalise(out),
        "one-end-only" => at.other_end(out),
        "baseline-path" => at.adapters(out),
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
    /// A line to be filled in: it mends nothing until it is.
    fn offer(&self, title: impl Into<String>, edits: Vec<TextEdit>, out: &mut Vec<Action>) {
        if !edits.is_empty() {
            out.push(Action::new(title, ActionKind::Rewrite, tidy(edits)));
        }
    }

    fn session(&self) -> Option<(&'a Session, &'a SessionResult)> {
        session_of(self.s, self.placed).map(|x| (x.0, x.1))
    }

    /// The finding's range in its item.
    fn local(&self) -> Span {
        local(self.placed, self.f)
    }

    /// The `readings` block and the statement in it that hold the finding.
    fn row(&self) -> Option<(Stmt<'a>, Stmt<'a>)> {
        let path = path_at(&self.placed.item, self.local().start);
        let i = path.iter().position(|x| x.keyword() == Some("readings"))?;
        Some((*path.get(i)?, *path.get(i + 1)?))
    }

    /// The reading of the finding.
    fn reading(&self) -> Option<&'a Reading> {
        let (_, stmt) = self.row()?;
        let rows = self.session()?.0.groups.iter().flat_map(|g| g.rows.iter());
        let mut here = rows.filter(|r| r.loc.span == stmt.head_span());
        here.next()
    }

    /// A line before or behind a statement, if that has lines of its own.
    fn line(&self, stmt: Stmt<'_>, before: bool, words: &str) -> Option<TextEdit> {
        let text = doc_text(self.s, self.doc);
        let span = stmt.span().shift(self.placed.start);
        let start = line_start(text, span.start);
        let end = line_end(text, span.end);
        let alone = text.get(start as usize..span.start as usize)?.trim();
        let rest = text.get(span.end as usize..end as usize)?.trim();
        if !alone.is_empty() || !(rest.is_empty() || rest.starts_with("//")) {
            return None;
        }
        let (pad, nl) = (indent(text, span.start), newline(text));
        let (at, text) = match before {
            true => (start, format!("{pad}{words}{nl}")),
            false => (end, format!("{nl}{pad}{words}")),
        };
        Some(TextEdit {
            doc: self.doc,
            span: Span::new(at, at),
            text,
        })
    }

    /// Words behind a statement's head.
    fn append(&self, stmt: Stmt<'_>, words: &str) -> TextEdit {
        let end = stmt.head_span().end + self.placed.start;
        TextEdit {
            doc: self.doc,
            span: Span::new(end, end),
            text: words.to_owned(),
        }
    }

    fn incomplete(&self, out: &mut Vec<Action>) {
        match self.session() {
            Some((session, r)) => self.about_session(session, r, out),
            None => self.about_reading(out),
        }
    }

    /// `read DATE with INSTRUMENT by`, as far as it is missing.
    fn about_session(&self, session: &Session, r: &SessionResult, out: &mut Vec<Action>) {
        let m = &session.meta;
        let lacks = Lacks {
            date: m.date.is_none(),
            instrument: r.meters.iter().any(|m| m.is_empty()),
            person: m.person.is_none(),
        };
        let stmt = session
            .meta_loc
            .and_then(|loc| owner(&self.placed.item, loc.span));
        let edits = match stmt {
            Some(stmt) => {
                let mut edits = Vec::new();
                if lacks.date
                    && let Some(first) = stmt.atoms().first()
                {
                    let at = first.span.end + self.placed.start;
                    edits.push(TextEdit {
                        doc: self.doc,
                        span: Span::new(at, at),
                        text: " DATE".to_owned(),
                    });
                }
                let rest = lacks.rest();
                if !rest.is_empty() {
                    edits.push(self.append(stmt, &rest));
                }
                edits
            }
            None => {
                let top = self.placed.item.statement();
                let first = top.and_then(|t| t.block()).and_then(|b| b.iter().next());
                let date = if lacks.date { " DATE" } else { "" };
                let words = format!("read{date}{}", lacks.rest());
                first
                    .and_then(|x| self.line(x, true, &words))
                    .into_iter()
                    .collect()
            }
        };
        self.offer(lacks.title(), edits, out);
    }

    /// The same behind a reading of a chain.
    fn about_reading(&self, out: &mut Vec<Action>) {
        let Some(stmt) = owner(&self.placed.item, self.local()) else {
            return;
        };
        let id = self.placed.item.id;
        let loc = downlead_base::Loc::new(id, stmt.head_span());
        let items = self.s.scopes().iter().flat_map(|x| x.items());
        let meta = items
            .filter(|x| x.0.id == id)
            .find_map(|x| match x.1.meaning.node(loc) {
                Some(Node::Read { meta, .. }) => Some(meta),
                _ => None,
            });
        let Some(m) = meta else { return };
        let lacks = Lacks {
            date: m.date.is_none(),
            instrument: m.instrument.is_none(),
            person: m.person.is_none(),
        };
        let date = if lacks.date { ", DATE" } else { "" };
        let words = format!("{date}{}", lacks.rest());
        self.offer(lacks.title(), vec![self.append(stmt, &words)], out);
    }

    fn baseline(&self, opening: bool, out: &mut Vec<Action>) {
        let Some((block, _)) = self.row() else { return };
        let mut rows = block.block().into_iter().flat_map(|b| b.iter());
        let beside = if opening { rows.next() } else { rows.last() };
        let title = match opening {
            true => "Add a baseline before these readings",
            false => "Add a closing baseline",
        };
        let edit = beside.and_then(|x| self.line(x, opening, "baseline POWER at TIME"));
        self.offer(title, edit.into_iter().collect(), out);
    }

    fn equalise(&self, out: &mut Vec<Action>) {
        let (Some((_, stmt)), Some(r), Some((session, _))) =
            (self.row(), self.reading(), self.session())
        else {
            return;
        };
        let own = session.meta.instrument.as_deref();
        let Some((_, with)) = &r.input else { return };
        let (near, far) = (with.as_ref().or(own), r.instrument.as_ref().or(own));
        let (Some(near), Some(far)) = (near, far) else {
            return;
        };
        let words = format!(
            "equalise POWER with {}, against POWER with {}",
            near.text, far.text
        );
        let edit = self.line(stmt, true, &words);
        self.offer(
            "Add the two meters one after the other",
            edit.into_iter().collect(),
            out,
        );
    }

    fn other_end(&self, out: &mut Vec<Action>) {
        let (Some((_, stmt)), Some(r)) = (self.row(), self.reading()) else {
            return;
        };
        let other = match r.kind {
            ReadingKind::Open => ReadingKind::Short,
            ReadingKind::Short => ReadingKind::Open,
            _ => return,
        };
        let Some(piece) = &r.piece else { return };
        let words = format!("{} {} RETURN-LOSS", other.word(), piece.text);
        let edit = self.line(stmt, false, &words);
        self.offer(
            format!(
                "Add the reading with the far end {}",
                match other {
                    ReadingKind::Open => "open",
                    _ => "shorted",
                }
            ),
            edit.into_iter().collect(),
            out,
        );
    }

    /// A piece of another family goes in with adapters, one at each end that is.
    fn adapters(&self, out: &mut Vec<Action>) {
        let (Some((session, _)), Some(env)) = (self.session(), env_of(self.s, self.doc)) else {
            return;
        };
        let at = |p: &&Piece| p.loc.span.touches(self.local().start);
        let Some(piece) = session.pieces.iter().find(at) else {
            return;
        };
        // the other pieces go in as they are
        let family = session.pieces.iter().find_map(|p| {
            let ends = p.part.ends.as_deref().filter(|_| p.name != piece.name)?;
            Some(&ends.0)
        });
        let (Some(ends), Some(family)) = (piece.part.ends.as_deref(), family) else {
            return;
        };
        let count = [&ends.0, &ends.1].iter().filter(|e| **e != family).count();
        let lines: Vec<Stmt<'_>> = session
            .groups
            .iter()
            .flat_map(|g| g.rows.iter())
            .filter(|r| r.kind == ReadingKind::Through && r.adapters.is_empty())
            .filter(|r| r.piece.as_ref().is_some_and(|p| p.text == piece.name.text))
            .filter_map(|r| owner(&self.placed.item, r.loc.span))
            .collect();
        let many = match count {
            0 => return,
            1 => String::new(),
            n => format!("{n} of "),
        };
        for name in adapters(family, &ends.0, env).into_iter().take(3) {
            let words = format!(", adapter {many}{name}");
            let edits: Vec<TextEdit> = lines.iter().map(|x| self.append(*x, &words)).collect();
            if edits.is_empty() {
                return;
            }
            let title = format!("Say that {} went in with `{many}{name}`", piece.name.text);
            out.push(Action {
                codes: vec![self.f.code],
                finding: Some(self.f.span),
                ..Action::new(title, ActionKind::QuickFix, edits)
            });
        }
    }
}

/// What is not said about a reading.
struct Lacks {
    date: bool,
    instrument: bool,
    person: bool,
}

impl Lacks {
    /// The words after the date. No person is named: an invented name would pass for a real one.
    fn rest(&self) -> String {
        let with = if self.instrument {
            " with INSTRUMENT"
        } else {
            ""
        };
        let by = if self.person { " by" } else { "" };
        format!("{with}{by}")
    }

    fn title(&self) -> String {
        let words: Vec<&str> = [
            (self.date, "when"),
            (self.instrument, "with what"),
            (self.person, "by whom"),
        ]
        .into_iter()
        .filter(|x| x.0)
        .map(|x| x.1)
        .collect();
        format!("Say {} it was read", words.join(", "))
    }
}
