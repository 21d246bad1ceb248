//! Assumptions made explicit: the line that says what a result has assumed.

use downlead_base::{Loc, Span};
use downlead_eval::{Assumed, Snapshot};
use downlead_station::model::{Meaning, Part, Step};
use downlead_syntax::Stmt;
use rustc_hash::FxHashSet;

use crate::resolve::{Def, class_of, statement_of};
use crate::view::{
    Action, ActionKind, Doc, Place, TextEdit, View, doc_text, indent, line_end, line_start,
    newline, tree,
};

/// Assumptions about the parts and chains whose lines a range touches.
pub(super) fn explicit(s: &Snapshot, doc: Doc, range: Span, out: &mut Vec<Action>) {
    let Doc::File(file) = doc else { return };
    let view = View::new(s);
    let text = doc_text(s, doc);
    let lines = Span::new(line_start(text, range.start), line_end(text, range.end));
    let on = |loc: Loc| {
        view.place(loc)
            .is_some_and(|p| p.doc == doc && p.span.start <= lines.end && lines.start <= p.span.end)
    };
    let mut seen: FxHashSet<(Assumed, Loc)> = FxHashSet::default();
    for scope in s.scopes().iter().filter(|x| x.file() == file) {
        for (_, low, result) in scope.items() {
            for chain in &result.chains {
                let head = on(chain.loc);
                for b in &chain.bands {
                    // lines of the chain that name the part, for a cursor there
                    for (what, who) in b.assumed() {
                        let line = b
                            .nodes
                            .iter()
                            .find(|n| n.tag() == Some(*who) || n.def == *who || n.chain == *who)
                            .map(|n| n.chain);
                        if !(head || on(*who) || line.is_some_and(on))
                            || !seen.insert((*what, *who))
                        {
                            continue;
                        }
                        let at = At {
                            view: &view,
                            meaning: &low.meaning,
                            who: *who,
                            chain: chain.loc,
                        };
                        if let Some(a) = at.action(s, *what)
                            && !out.contains(&a)
                        {
                            out.push(a);
                        }
                    }
                }
            }
        }
    }
}

struct At<'a, 's> {
    view: &'a View<'s>,
    meaning: &'a Meaning,
    who: Loc,
    chain: Loc,
}

impl<'s> At<'_, 's> {
    fn action(&self, s: &'s Snapshot, what: Assumed) -> Option<Action> {
        let name = self.name();
        let (title, edit) = match what {
            Assumed::Temperature20 => (
                format!("State 20 °C for {name}"),
                self.append("at 20 °C", None)?,
            ),
            Assumed::AntennaMatched => (
                format!("State that {name} is matched, SWR 1"),
                self.append("swr 1", Some("swr 1"))?,
            ),
            Assumed::DeviceMatched | Assumed::DividerIdeal | Assumed::JunctionIdeal => (
                format!("State that {name} is matched, SWR 1"),
                self.append("swr 1", Some("swr 1"))?,
            ),
            Assumed::FullDuty => (
                format!("State full duty for {name}"),
                self.append("duty 100 %", Some("duty 100 %"))?,
            ),
            Assumed::AlwaysKeyed => (
                format!("State that {name} is keyed all the time"),
                self.append("keyed 100 %", Some("keyed 100 %"))?,
            ),
            Assumed::PowerKind => (
                format!("State that the power of {name} is carrier power"),
                self.carrier()?,
            ),
            Assumed::Impedance50 => self.cable(s, "impedance 50 ohm", "State 50 ohm for cable")?,
            Assumed::Velocity => self.cable(
                s,
                "velocity 0.66",
                "State a velocity factor of 0.66 for cable",
            )?,
            Assumed::SheetAt20 => self.sheet(s)?,
            Assumed::BranchesInPhase => (
                "State that the branches add in phase".to_owned(),
                self.phase()?,
            ),
            // an exact, lossless or unknown value cannot be stated without a figure that is not
            // known
            _ => return None,
        };
        Some(Action::new(title, ActionKind::Rewrite, vec![edit]))
    }

    fn part(&self) -> Option<&Part> {
        fn find(steps: &[Step], who: Loc) -> Option<&Part> {
            steps.iter().find_map(|x| match x {
                Step::Part { part, branches } => is(part, who)
                    .then_some(&**part)
                    .or_else(|| branches.iter().find_map(|b| find(&b.steps, who))),
                Step::Use { branches, .. } => branches.iter().find_map(|b| find(&b.steps, who)),
                _ => None,
            })
        }
        fn is(p: &Part, who: Loc) -> bool {
            p.loc == who || p.tag.as_ref().is_some_and(|t| t.loc == who)
        }
        match self.meaning {
            Meaning::Station(st) => st
                .parts
                .iter()
                .find(|p| is(p, self.who))
                .or_else(|| st.chains.iter().find_map(|c| find(&c.steps, self.who))),
            Meaning::Chain(c) => find(&c.steps, self.who),
            _ => None,
        }
    }

    fn name(&self) -> String {
        match self.part() {
            Some(p) => p
                .tag
                .as_ref()
                .map_or_else(|| format!("this {}", p.kind.word()), |t| t.text.to_string()),
            None => self.view.text(self.who).to_owned(),
        }
    }

    /// The statement of the part, with its place.
    fn statement(&self) -> Option<(Place, Stmt<'s>, u32)> {
        let loc = self.part()?.loc;
        let (place, item, stmt) = statement_of(self.view, loc)?;
        Some((place, stmt, item.start))
    }

    /// Behind the head as a group, or as the first line of the block where there is one.
    fn append(&self, group: &str, line: Option<&str>) -> Option<TextEdit> {
        let (place, stmt, start) = self.statement()?;
        let Doc::File(_) = place.doc else { return None };
        if let (Some(b), Some(line)) = (stmt.block(), line) {
            return Some(self.first_line(place.doc, b.span().shift(start), place.span.start, line));
        }
        let end = place.span.end;
        Some(TextEdit {
            doc: place.doc,
            span: Span::new(end, end),
            text: format!(", {group}"),
        })
    }

    fn first_line(&self, doc: Doc, block: Span, head: u32, line: &str) -> TextEdit {
        let text = doc_text(self.view.s, doc);
        let at = block.start + 1;
        let span = Span::new(at, at);
        if text.get(block.range()).is_some_and(|b| b.contains('\n')) {
            TextEdit {
                doc,
                span,
                text: format!("{}{}    {line}", newline(text), indent(text, head)),
            }
        } else {
            TextEdit {
                doc,
                span,
                text: format!(" {line};"),
            }
        }
    }

    fn carrier(&self) -> Option<TextEdit> {
        let t = self.part()?.data.transmitter()?;
        let figure = t.power.iter().find(|p| p.1.is_none())?;
        let p = self.view.place(figure.0.loc)?;
        Some(TextEdit {
            doc: p.doc,
            span: Span::new(p.span.end, p.span.end),
            text: " carrier".to_owned(),
        })
    }

    /// The cable of the part, if it stands in a file.
    fn cable_def(&self, s: &'s Snapshot) -> Option<Def<'s>> {
        let (place, stmt, start) = self.statement()?;
        let item = tree(s, place.doc)?
            .items()
            .iter()
            .find(|p| p.start == start)?;
        let d = Def {
            doc: place.doc,
            item: &item.item,
            start,
            stmt,
            name: stmt.head_span(),
        };
        let cable = class_of(s, &d)?;
        matches!(cable.doc, Doc::File(_)).then_some(cable)
    }

    fn cable(&self, s: &'s Snapshot, line: &str, title: &str) -> Option<(String, TextEdit)> {
        let c = self.cable_def(s)?;
        let b = c.stmt.block()?;
        let edit = self.first_line(c.doc, b.span().shift(c.start), c.full().span.start, line);
        Some((format!("{title} {}", c.text()), edit))
    }

    fn sheet(&self, s: &'s Snapshot) -> Option<(String, TextEdit)> {
        let c = self.cable_def(s)?;
        let loss = c
            .stmt
            .block()?
            .iter()
            .find(|x| x.keyword() == Some("loss"))?;
        let end = loss.head_span().shift(c.start).end;
        let text = " at 20 °C".to_owned();
        Some((
            format!("State that the table of {} holds at 20 °C", c.text()),
            TextEdit {
                doc: c.doc,
                span: Span::new(end, end),
                text,
            },
        ))
    }

    /// At the end of the chain's block.
    fn phase(&self) -> Option<TextEdit> {
        let (place, item, chain) = statement_of(self.view, self.chain)?;
        let last = chain.block()?.iter().last()?;
        let text = doc_text(self.view.s, place.doc);
        let end = last.span().shift(item.start);
        let pad = indent(text, end.start);
        Some(TextEdit {
            doc: place.doc,
            span: Span::new(end.end, end.end),
            text: format!("{}{pad}branches in phase", newline(text)),
        })
    }
}
