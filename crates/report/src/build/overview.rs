//! Rows of an overview: a station on a band each.

use downlead_base::Severity;
use downlead_eval::dates::days_of;
use downlead_eval::licence::RuleVerdict;
use downlead_eval::result::{BandResult, ChainResult, LimitResult, Verdict};
use downlead_eval::{Evaluated, Places, Snapshot};
use downlead_station::model::{Basis, Chain, Direction, Meaning, Node, PartData, Station, Step};

use super::overview_more::{of_link, of_spots, of_station};
use crate::shape::overview::{OverviewRow, RowKind, Standing};

/// The rows of all named files of a snapshot. Names lead from its root to the files.
#[must_use]
pub fn rows(s: &Snapshot) -> Vec<OverviewRow> {
    let places = Places::new(s);
    let mut found: Vec<(String, u32, Severity, &'static str, String)> = Vec::new();
    for d in s.diagnostics().iter() {
        if d.severity >= Severity::Warning {
            let (file, _, line) = places.at(d.primary.loc);
            let message = d.message.lines().next().unwrap_or("").to_owned();
            found.push((file, line, d.severity, d.code.id, message));
        }
    }
    let mut out = Vec::new();
    for scope in s.scopes() {
        let Some(file) = s.files().get(scope.file()) else {
            continue;
        };
        let first = out.len();
        for item in scope.items() {
            let own = out.len();
            of_item(&places, &file.path, item, &mut out);
            of_spots(&places, &file.path, item, &mut out);
            of_station(scope.env(), item, &mut out[own..]);
            out.extend(of_link(&places, &file.path, item));
        }
        let own: Vec<_> = found.iter().filter(|f| f.0 == file.path).collect();
        let count = |least| own.iter().filter(|f| f.2 == least).count();
        let (errors, warnings) = (count(Severity::Error), count(Severity::Warning));
        let mut codes: Vec<&'static str> = own.iter().map(|f| f.3).collect();
        codes.sort_unstable();
        codes.dedup();
        let error = own.iter().find(|f| f.2 == Severity::Error);
        if let Some(why) = &file.error {
            out.push(broken(&file.path, 1, format!("cannot be read: {why}")));
        } else if out.len() == first
            && let Some((_, line, _, _, message)) = error
        {
            out.push(broken(&file.path, *line, message.clone()));
        }
        for row in &mut out[first..] {
            (row.errors, row.warnings) = (errors.max(row.errors), warnings);
            row.codes.clone_from(&codes);
            // what could not be computed has no verdict of its own
            if row.verdict == Standing::Error && row.message.is_none() {
                row.message = error.map(|e| e.4.clone());
            }
        }
    }
    out
}

fn broken(file: &str, line: u32, message: String) -> OverviewRow {
    OverviewRow {
        verdict: Standing::Error,
        errors: 1,
        message: Some(message),
        ..empty(file, line, RowKind::File)
    }
}

/// A row of which nothing is known yet.
pub(super) fn empty(file: &str, line: u32, kind: RowKind) -> OverviewRow {
    OverviewRow {
        file: file.to_owned(),
        line,
        station: String::new(),
        chain: String::new(),
        band: String::new(),
        frequency_hz: None,
        erp_w: None,
        limit_w: None,
        quantity: None,
        cite: None,
        verdict: Standing::NoLimit,
        margin_db: None,
        uncertainty_db: None,
        newest_reading: None,
        age_days: None,
        errors: 0,
        warnings: 0,
        codes: Vec::new(),
        message: None,
        kind,
        what: None,
        share: None,
        under: Vec::new(),
        classes: Vec::new(),
        beside: Vec::new(),
    }
}

fn of_item(places: &Places<'_>, file: &str, item: &Evaluated, out: &mut Vec<OverviewRow>) {
    let (station, models): (Option<&Station>, &[Chain]) = match &item.1.meaning {
        Meaning::Station(st) => (Some(st), &st.chains),
        Meaning::Chain(c) => (None, std::slice::from_ref(&**c)),
        _ => return,
    };
    let first = out.len();
    for direction in [Direction::Transmit, Direction::Receive] {
        for (c, model) in item.2.chains.iter().zip(models) {
            if c.direction != direction {
                continue;
            }
            let newest = newest(station, model, c);
            for b in &c.bands {
                // what is heard has a row where nothing is sent on the band
                let sent = out[first..].iter().any(|r| r.band == *b.band);
                if direction == Direction::Receive && sent {
                    continue;
                }
                let mut row = of_band(places, (file, item), c, b);
                row.station = station.map_or_else(String::new, |s| s.name.text.to_string());
                row.newest_reading.clone_from(&newest);
                out.push(row);
            }
        }
    }
}

fn of_band(
    places: &Places<'_>,
    (file, item): (&str, &Evaluated),
    c: &ChainResult,
    b: &BandResult,
) -> OverviewRow {
    let rank = |l: &LimitResult| match l.verdict {
        Verdict::No => 0,
        Verdict::CannotTell => 1,
        Verdict::Yes => 2,
    };
    let clauses = b
        .rules
        .iter()
        .filter_map(|r| Some((r.judged.as_ref()?, Some(r))));
    let limits = b.limits.iter().map(|l| (l, None)).chain(clauses);
    let worst = limits
        .min_by(|(x, _), (y, _)| (rank(x).cmp(&rank(y))).then(x.margin_db.total_cmp(&y.margin_db)));
    let is = |v: RuleVerdict| b.rules.iter().any(|r| r.verdict == v);
    let verdict = match worst.map(|l| l.0.verdict) {
        Some(Verdict::No) => Standing::NotMet,
        Some(Verdict::CannotTell) => Standing::CannotTell,
        // a clause that is met says nothing of one that could not be judged
        _ if is(RuleVerdict::CannotJudge) => Standing::NotJudged,
        _ if is(RuleVerdict::NoRule) => Standing::NoRule,
        _ if is(RuleVerdict::MetIfAllocated) => Standing::IfAllocated,
        Some(Verdict::Yes) => Standing::Met,
        None if !b.complete => Standing::Error,
        None => Standing::NoLimit,
    };
    let cite = worst.and_then(|(l, clause)| match clause {
        Some(r) => Some(r.source()),
        None => match item.1.meaning.node(l.loc) {
            Some(Node::Limit { source, .. }) => source.as_ref().map(ToString::to_string),
            _ => None,
        },
    });
    let worst = worst.map(|x| x.0);
    OverviewRow {
        chain: places.text(c.name).to_owned(),
        band: b.band.to_string(),
        frequency_hz: Some(b.hz),
        erp_w: b.erp_w().filter(|w| w.is_finite()),
        limit_w: worst.map(|l| l.limit_w),
        quantity: worst.map(|l| l.quantity.word()),
        cite,
        verdict,
        margin_db: worst.map(|l| l.margin_db),
        uncertainty_db: worst.map(|l| l.uncertainty_db).or(b.uncertainty_db),
        ..empty(file, places.line(c.loc), RowKind::Band)
    }
}

/// The newest date of a reading in a chain: its own readings, logs, and powers that were read.
fn newest(station: Option<&Station>, model: &Chain, c: &ChainResult) -> Option<String> {
    let mut dates: Vec<&str> = Vec::new();
    steps(station, &model.steps, &mut dates);
    let logs = c.bands.iter().flat_map(|b| &b.logs);
    dates.extend(logs.flat_map(|l| &l.rows).map(|r| &*r.date));
    let known = dates.into_iter().filter_map(|d| Some((days_of(d)?, d)));
    known
        .max_by(|a, b| a.0.total_cmp(&b.0))
        .map(|x| x.1.to_owned())
}

fn steps<'m>(station: Option<&'m Station>, all: &'m [Step], out: &mut Vec<&'m str>) {
    let read = |data: &'m PartData, out: &mut Vec<&'m str>| {
        if let Some(t) = data.transmitter() {
            let read = t.power.iter().filter(|p| p.0.meta.basis == Basis::Read);
            out.extend(read.filter_map(|p| p.0.meta.date.as_deref()));
        }
    };
    for s in all {
        match s {
            Step::Node(n, _) => {
                if let Node::Read { meta, .. } = &**n {
                    out.extend(meta.date.as_deref());
                }
            }
            Step::Part { part, branches } => {
                read(&part.data, out);
                branches.iter().for_each(|b| steps(station, &b.steps, out));
            }
            Step::Use { tag, branches, .. } => {
                let parts = station.into_iter().flat_map(|s| &s.parts);
                let named = parts.filter(|p| p.tag.as_ref().is_some_and(|t| t.text == tag.text));
                named.for_each(|p| read(&p.data, out));
                branches.iter().for_each(|b| steps(station, &b.steps, out));
            }
            Step::Broken(_) => {}
        }
    }
}
