//! What a change of the text means on the air: the chains of two states of a file compared, part by
//! part and band by band.

use downlead_base::Severity;
use downlead_eval::Snapshot;
use downlead_eval::result::{BandResult, ChainResult, LimitResult, NodeResult};
use downlead_report::page;
use downlead_report::shape::compare::SAME_DB;
pub use downlead_report::shape::compare::{
    BandChange, ChainChange, Comparison, DefinitionChange, Figures, FindingChange, LimitChange,
    LimitState, Pair, PartChange,
};
use downlead_report::write::markdown::{UNLINKED, markdown};
use downlead_station::model::{Meaning, PartKind};
use downlead_syntax::Stmt;

use crate::diagnostics::file_diagnostics;
use crate::resolve::statement_of;
use crate::view::{Doc, View, tree, visible};

/// The comparison as Markdown. `old` and `new` name the two states: `HEAD~2`, `the text as it is`.
#[must_use]
pub fn compare_markdown(c: &Comparison, path: &str, old: &str, new: &str) -> String {
    markdown(&page::compare::page(c, path, old, new), UNLINKED)
}

/// Compares a file as it was with the file as it is. `file` is its index in each.
#[must_use]
pub fn compare(old: (&Snapshot, usize), new: (&Snapshot, usize)) -> Comparison {
    let (was, is) = (chains(old.0, old.1), chains(new.0, new.1));
    let mut list = Vec::new();
    for now in &is {
        let then = was.iter().find(|c| c.name == now.name);
        list.push(chain(then, Some(now)));
    }
    for then in &was {
        if is.iter().all(|c| c.name != then.name) {
            list.push(chain(Some(then), None));
        }
    }
    Comparison {
        same_text: texts(old.0, old.1) == texts(new.0, new.1),
        chains: list,
        definitions: definitions(old, new),
        findings: findings(old, new),
    }
}

fn texts(s: &Snapshot, file: usize) -> Vec<(&str, &str)> {
    let files = visible(s, file)
        .into_iter()
        .filter_map(|i| s.files().get(i));
    files.map(|f| (f.path.as_str(), f.text())).collect()
}

/// A chain with what its names mean.
struct Named<'s> {
    name: String,
    result: &'s ChainResult,
    s: &'s Snapshot,
}

fn chains(s: &Snapshot, file: usize) -> Vec<Named<'_>> {
    let view = View::new(s);
    let mut out = Vec::new();
    for scope in s.scopes().iter().filter(|x| x.file() == file) {
        for (_, low, result) in scope.items() {
            for c in &result.chains {
                let own = view.text(c.name);
                let name = match &low.meaning {
                    Meaning::Station(st) => format!("{}/{own}", st.name.text),
                    _ => own.to_owned(),
                };
                out.push(Named { name, result: c, s });
            }
        }
    }
    out
}

fn chain(old: Option<&Named<'_>>, new: Option<&Named<'_>>) -> ChainChange {
    let name = new.or(old).map_or_else(String::new, |c| c.name.clone());
    let direction = Pair {
        old: old.map(|c| c.result.direction.word()),
        new: new.map(|c| c.result.direction.word()),
    };
    let of = |c: Option<&Named<'_>>| -> Vec<(String, Vec<Part>)> {
        c.map_or_else(Vec::new, |c| {
            let view = View::new(c.s);
            let bands = c.result.bands.iter();
            bands.map(|b| (band_name(b), parts(&view, b))).collect()
        })
    };
    let (was, is) = (of(old), of(new));
    let result = |c: Option<&Named<'_>>, name: &str| {
        c.and_then(|c| {
            c.result
                .bands
                .iter()
                .find(|b| band_name(b) == name)
                .cloned()
        })
    };
    let mut names: Vec<&String> = is.iter().map(|b| &b.0).collect();
    names.extend(
        was.iter()
            .map(|b| &b.0)
            .filter(|n| is.iter().all(|b| b.0 != **n)),
    );
    let bands = names.into_iter().map(|n| {
        let (a, b) = (result(old, n), result(new, n));
        let list = |all: &[(String, Vec<Part>)]| -> Vec<Part> {
            all.iter()
                .find(|x| x.0 == *n)
                .map_or_else(Vec::new, |x| x.1.clone())
        };
        band(n, a.as_ref(), b.as_ref(), &list(&was), &list(&is))
    });
    ChainChange {
        name,
        direction,
        bands: bands.collect(),
    }
}

fn band_name(b: &BandResult) -> String {
    match b.point {
        Some(p) => format!("{} {p}", b.band),
        None => b.band.to_string(),
    }
}

fn band(
    name: &str,
    old: Option<&BandResult>,
    new: Option<&BandResult>,
    was: &[Part],
    is: &[Part],
) -> BandChange {
    let pairs = paired(was, is);
    let apart = |(a, b): &&(usize, usize)| was[*a].name != is[*b].name;
    let names = |(a, b): &(usize, usize)| (was[*a].name.clone(), is[*b].name.clone());
    BandChange {
        band: name.to_owned(),
        figures: Pair {
            old: old.map(figures),
            new: new.map(figures),
        },
        parts: part_changes(was, is, &pairs),
        renamed: pairs.iter().filter(apart).map(names).collect(),
        reordered: !pairs.is_sorted(),
        limits: limits(
            old.map_or(&[], |b| &b.limits),
            new.map_or(&[], |b| &b.limits),
        ),
    }
}

fn figures(b: &BandResult) -> Figures {
    // the first element is the transmitter where there is one; what it loses is the mismatch it sees
    let first = b.nodes.first().filter(|n| n.kind.is(PartKind::Transmitter));
    Figures {
        hz: b.hz,
        complete: b.complete,
        loss_db: b.total_db,
        transmitter_w: first
            .map(|n| n.forward_w)
            .filter(|w| w.is_finite() && *w > 0.0),
        gain_dbi: b.gain_dbi,
        erp_w: b.erp_w(),
        eirp_w: b.eirp_w,
        sensitivity_dbm: b.sensitivity_dbm,
        swr: b.swr,
        uncertainty_db: b.uncertainty_db,
    }
}

#[derive(Clone)]
struct Part {
    name: String,
    text: String,
    loss_db: Option<f64>,
}

fn parts(view: &View<'_>, b: &BandResult) -> Vec<Part> {
    let mut out: Vec<Part> = Vec::new();
    for n in &b.nodes {
        let name = part_name(view, n);
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
            text: written(view, n),
            loss_db: n.loss_known.then_some(n.loss_db),
        });
    }
    out
}

fn part_name(view: &View<'_>, n: &NodeResult) -> String {
    match (n.tag(), n.port()) {
        (Some(t), Some(p)) => format!("{}.{}", view.text(t), view.text(p)),
        (Some(t), None) => view.text(t).to_owned(),
        (None, _) if n.kind.is_join() => format!("join {}", view.text(n.def)),
        (None, _) => n.kind.word().to_owned(),
    }
}

/// The statement of a part with its block, on one line.
fn written(view: &View<'_>, n: &NodeResult) -> String {
    let whole = statement_of(view, n.def).map(|(_, _, stmt)| one_line(&statement_text(stmt)));
    match whole {
        // it has no line of its own
        _ if n.kind.is_join() => "between neighbours".to_owned(),
        Some(text) => text,
        None => one_line(view.text(n.def)),
    }
}

fn statement_text(s: Stmt<'_>) -> String {
    s.slice(s.span()).to_owned()
}

/// Without its comments, blanks made one.
fn one_line(text: &str) -> String {
    let mut out = String::new();
    for line in text.lines() {
        let code = without_comment(line).trim();
        for word in code.split_whitespace() {
            if !out.is_empty() {
                out.push(' ');
            }
            out.push_str(word);
        }
        // separates the lines of a block
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

/// Which parts of then are which of now, in the order of now: by name, and what is left by what is
/// written but for the name.
fn paired(was: &[Part], is: &[Part]) -> Vec<(usize, usize)> {
    let bare = |p: &Part| {
        let tag = p.name.split(['.', ' ']).next().unwrap_or("");
        p.text.replacen(tag, "", 1)
    };
    let by_name = |b: &Part| was.iter().position(|a| a.name == b.name);
    let mut partners: Vec<Option<usize>> = is.iter().map(by_name).collect();
    for (j, now) in is.iter().enumerate() {
        if partners[j].is_some() {
            continue;
        }
        partners[j] = (0..was.len()).find(|i| {
            let free = !partners.contains(&Some(*i)) && is.iter().all(|n| n.name != was[*i].name);
            free && bare(&was[*i]) == bare(now)
        });
    }
    let found = partners.into_iter().enumerate();
    found.filter_map(|(j, i)| Some((i?, j))).collect()
}

fn part_changes(was: &[Part], is: &[Part], pairs: &[(usize, usize)]) -> Vec<PartChange> {
    let state = |p: &Part| (p.text.clone(), p.loss_db);
    let mut out = Vec::new();
    for (j, now) in is.iter().enumerate() {
        let then = pairs.iter().find(|p| p.1 == j).map(|p| &was[p.0]);
        let same = then.is_some_and(|t| {
            let apart = match t.loss_db.zip(now.loss_db) {
                Some((a, b)) => (a - b).abs() >= SAME_DB,
                None => t.loss_db != now.loss_db,
            };
            // another name alone changes nothing
            (t.text == now.text || t.name != now.name) && !apart
        });
        if !same {
            let state = Pair {
                old: then.map(state),
                new: Some(state(now)),
            };
            out.push(PartChange {
                name: now.name.clone(),
                state,
            });
        }
    }
    for (i, then) in was.iter().enumerate() {
        if pairs.iter().all(|p| p.0 != i) {
            let state = Pair {
                old: Some(state(then)),
                new: None,
            };
            out.push(PartChange {
                name: then.name.clone(),
                state,
            });
        }
    }
    out
}

/// Limits of the same quantity belong together in the order in which they stand.
fn limits(was: &[LimitResult], is: &[LimitResult]) -> Vec<LimitChange> {
    let state = |l: &LimitResult| LimitState {
        limit_w: l.limit_w,
        margin_db: l.margin_db,
        uncertainty_db: l.uncertainty_db,
        verdict: l.verdict,
    };
    let nth = |list: &[LimitResult], at: usize| {
        let q = list[at].quantity;
        list[..at].iter().filter(|l| l.quantity == q).count()
    };
    let twin = |from: &[LimitResult], at: usize, to: &[LimitResult]| {
        let q = from[at].quantity;
        to.iter()
            .filter(|l| l.quantity == q)
            .nth(nth(from, at))
            .map(state)
    };
    let mut out: Vec<LimitChange> = (0..is.len())
        .map(|i| LimitChange {
            quantity: is[i].quantity.word(),
            state: Pair {
                old: twin(is, i, was),
                new: Some(state(&is[i])),
            },
        })
        .collect();
    for i in (0..was.len()).filter(|i| twin(was, *i, is).is_none()) {
        let state = Pair {
            old: Some(state(&was[i])),
            new: None,
        };
        out.push(LimitChange {
            quantity: was[i].quantity.word(),
            state,
        });
    }
    out
}

/// Every definition of the file and of what it uses, without chains and parts: name and text.
fn defined(s: &Snapshot, file: usize) -> Vec<(String, String)> {
    let mut out = Vec::new();
    for f in visible(s, file) {
        let Some(tree) = tree(s, Doc::File(f)) else {
            continue;
        };
        for p in tree.items() {
            let Some(stmt) = p.item.statement() else {
                continue;
            };
            match stmt.keyword() {
                Some("use" | "chain") => {}
                Some("station") => in_station(stmt, &mut out),
                _ => out.push((heading(stmt), one_line(&statement_text(stmt)))),
            }
        }
    }
    out
}

fn in_station(station: Stmt<'_>, out: &mut Vec<(String, String)>) {
    let name = station.atoms().get(1).map_or("", |a| station.text(*a));
    for x in station.block().into_iter().flat_map(|b| b.iter()) {
        let word = x.keyword().unwrap_or("");
        if word == "chain" || downlead_station::model::PartKind::from_word(word).is_some() {
            continue;
        }
        let own = match word {
            "place" => heading(x),
            w => w.to_owned(),
        };
        out.push((format!("{name}: {own}"), one_line(&statement_text(x))));
    }
}

/// The first two words: `cable club-foam`.
fn heading(s: Stmt<'_>) -> String {
    let words = s.atoms().iter().take(2).map(|a| s.text(*a));
    words.collect::<Vec<_>>().join(" ")
}

fn definitions(old: (&Snapshot, usize), new: (&Snapshot, usize)) -> Vec<DefinitionChange> {
    let (was, is) = (defined(old.0, old.1), defined(new.0, new.1));
    let mut out = Vec::new();
    for (name, text) in &is {
        match was.iter().find(|d| d.0 == *name) {
            Some((_, then)) if then == text => {}
            then => out.push(DefinitionChange {
                name: name.clone(),
                was: then.is_some(),
                is: true,
            }),
        }
    }
    for (name, _) in was.iter().filter(|d| is.iter().all(|n| n.0 != d.0)) {
        out.push(DefinitionChange {
            name: name.clone(),
            was: true,
            is: false,
        });
    }
    out
}

fn findings(old: (&Snapshot, usize), new: (&Snapshot, usize)) -> Vec<FindingChange> {
    let all = crate::Config {
        max_diagnostics: 0,
        ..crate::Config::default()
    };
    let of = |(s, file): (&Snapshot, usize)| -> Vec<(&'static str, String)> {
        let list = file_diagnostics(s, file, &all).into_iter();
        list.filter(|f| f.severity >= Severity::Warning)
            .map(|f| (f.code, f.message.lines().next().unwrap_or("").to_owned()))
            .collect()
    };
    let (was, is) = (of(old), of(new));
    let mut out = Vec::new();
    for (list, other, new) in [(&is, &was, true), (&was, &is, false)] {
        for (code, message) in list.iter().filter(|f| !other.contains(f)) {
            out.push(FindingChange {
                new,
                code,
                message: message.clone(),
            });
        }
    }
    out
}
