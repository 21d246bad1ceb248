//! Parts of a chain in two states.

use downlead_base::Span;
use downlead_eval::facts::{Differs, differs};
use downlead_eval::origin::parts_of;
use downlead_eval::result::{BandResult, NodeResult};
use downlead_eval::{Evaluated, Places};
use downlead_station::model::Part as Model;
use downlead_syntax::Stmt;

use crate::shape::compare::{Pair, PartChange, PartState, SAME_DB};

/// A part of a chain.
pub(super) struct Part<'s> {
    pub(super) name: String,
    text: String,
    line: u32,
    loss_db: Option<f64>,
    /// Its model; none of a join.
    model: Option<&'s Model>,
}

pub(super) fn parts<'s>(
    places: &'s Places<'s>,
    item: &'s Evaluated,
    b: &BandResult,
) -> Vec<Part<'s>> {
    let models = parts_of(&item.1.meaning);
    let mut out: Vec<Part<'s>> = Vec::new();
    for n in &b.nodes {
        let name = part_name(places, n);
        let again = out
            .iter()
            .filter(|p| p.name == name || p.name.starts_with(&format!("{name} (")))
            .count();
        let name = match again {
            0 => name,
            n => format!("{name} ({})", n + 1),
        };
        out.push(Part {
            name,
            text: written(places, item, n),
            line: places.line(n.def),
            loss_db: n.loss_known.then_some(n.loss_db),
            model: models.get(&n.def).copied().filter(|_| !n.kind.is_join()),
        });
    }
    out
}

fn part_name(places: &Places<'_>, n: &NodeResult) -> String {
    match (n.tag(), n.port()) {
        (Some(t), Some(p)) => format!("{}.{}", places.text(t), places.text(p)),
        (Some(t), None) => places.text(t).to_owned(),
        (None, _) if n.kind.is_join() => format!("join {}", places.text(n.def)),
        (None, _) => n.kind.word().to_owned(),
    }
}

/// The statement of a part with its block, on one line.
fn written(places: &Places<'_>, item: &Evaluated, n: &NodeResult) -> String {
    if n.kind.is_join() {
        // it has no statement of its own
        return "between neighbours".to_owned();
    }
    let found = (n.def.item == item.0.id)
        .then(|| item.0.statements().find_map(|s| innermost(s, n.def.span)))
        .flatten();
    match found {
        Some(s) => one_line(s.slice(s.span())),
        None => one_line(places.text(n.def)),
    }
}

/// The innermost statement that holds a place.
fn innermost(s: Stmt<'_>, span: Span) -> Option<Stmt<'_>> {
    let own = s.span();
    if own.start > span.start || span.end > own.end {
        return None;
    }
    let inside = s
        .block()
        .and_then(|b| b.iter().find_map(|x| innermost(x, span)));
    Some(inside.unwrap_or(s))
}

/// Without its comments, blanks made one.
pub(super) fn one_line(text: &str) -> String {
    let mut out = String::new();
    for line in text.lines() {
        let code = without_comment(line).trim();
        for word in code.split_whitespace() {
            if !out.is_empty() {
                out.push(' ');
            }
            out.push_str(word);
        }
        // lines of a block end in a semicolon, so that they do not run into each other
        if !code.is_empty() && !code.ends_with('{') && text.contains('\n') {
            out.push(';');
        }
    }
    out.replace("; }", " }").trim_end_matches(';').to_owned()
}

fn without_comment(line: &str) -> &str {
    let mut quoted = false;
    for (i, c) in line.char_indices() {
        match c {
            '"' => quoted = !quoted,
            '/' if !quoted && line[i..].starts_with("//") => return &line[..i],
            _ => {}
        }
    }
    line
}

/// How what two parts say differs, their names left out.
fn said(a: &Part<'_>, b: &Part<'_>) -> Differs {
    match (a.model, b.model) {
        (Some(x), Some(y)) => {
            // most parts are as they were, to the letter
            let tag = |p: &Part<'_>| p.name.split(['.', ' ']).next().unwrap_or("").to_owned();
            if a.text == b.text || a.text.replacen(&tag(a), &tag(b), 1) == b.text {
                return Differs::Not;
            }
            differs(&(x.kind, &x.data, &x.meta), &(y.kind, &y.data, &y.meta))
        }
        (None, None) if a.text == b.text => Differs::Not,
        _ => Differs::InValue,
    }
}

/// Which parts of then are which of now, in the order of now: by name, and what is left by what is
/// said but for the name.
pub(super) fn paired(was: &[Part<'_>], is: &[Part<'_>]) -> Vec<(usize, usize)> {
    let by_name = |b: &Part<'_>| was.iter().position(|a| a.name == b.name);
    let mut partners: Vec<Option<usize>> = is.iter().map(by_name).collect();
    for (j, now) in is.iter().enumerate() {
        if partners[j].is_some() {
            continue;
        }
        partners[j] = (0..was.len()).find(|i| {
            let free = !partners.contains(&Some(*i)) && is.iter().all(|n| n.name != was[*i].name);
            free && said(&was[*i], now) == Differs::Not
        });
    }
    let found = partners.into_iter().enumerate();
    found.filter_map(|(j, i)| Some((i?, j))).collect()
}

pub(super) fn part_changes(
    was: &[Part<'_>],
    is: &[Part<'_>],
    pairs: &[(usize, usize)],
) -> Vec<PartChange> {
    let state = |p: &Part<'_>| PartState {
        text: p.text.clone(),
        loss_db: p.loss_db,
        line: p.line,
    };
    let mut out = Vec::new();
    for (j, now) in is.iter().enumerate() {
        let then = pairs.iter().find(|p| p.1 == j).map(|p| &was[p.0]);
        let how = then.map_or(Differs::InValue, |t| said(t, now));
        let moved = then.is_some_and(|t| match t.loss_db.zip(now.loss_db) {
            Some((a, b)) => (a - b).abs() >= SAME_DB,
            None => t.loss_db != now.loss_db,
        });
        if how != Differs::Not || moved {
            out.push(PartChange {
                name: now.name.clone(),
                how,
                state: Pair {
                    old: then.map(state),
                    new: Some(state(now)),
                },
            });
        }
    }
    for (i, then) in was.iter().enumerate() {
        if pairs.iter().all(|p| p.0 != i) {
            out.push(PartChange {
                name: then.name.clone(),
                how: Differs::InValue,
                state: Pair {
                    old: Some(state(then)),
                    new: None,
                },
            });
        }
    }
    out
}
