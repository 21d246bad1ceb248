//! Chains in words: figures, limits, readings, logs, uncertainty.

use downlead_eval::result::Method;
use downlead_quantity::{db, frequency, from_db, number, percent, power, power_dbm};
use downlead_station::model::{Basis, Direction, LimitQuantity};

use super::figure::with_uncertainty;
use super::verdict::{Judged, text};
use crate::document::{Run, Sign, Text};
use crate::shape::bench::VerdictCounts;
use crate::shape::chain::{
    BandReport, BudgetReport, ChainReport, LimitReport, LogReport, NodeReport, ReadingReport,
    TrendReport, UnjudgedReport,
};
use crate::shape::word::{LimitVerdict, Point, PowerMode, Slope, Wave};

/// Said of a chain of which something could not be computed.
pub const INCOMPLETE: &str = "some parts could not be computed; what depends on them is not known";

/// What is printed for a figure that is not known.
pub const NOT_KNOWN: &str = "not known";

/// One line of a table: a part with the joins before it taken in.
#[derive(Debug)]
pub struct Row<'a> {
    /// The part.
    pub node: &'a NodeReport,
    /// Loss of the joins between the part before and this one, dB, where there are any; none inside
    /// if it is not known.
    pub joins_db: Option<Option<f64>>,
}

/// Parts with their joins, in order. Joins after the last part are rows of their own.
#[must_use]
pub fn rows(nodes: &[NodeReport]) -> Vec<Row<'_>> {
    let mut rows = Vec::new();
    let mut joins: Vec<&NodeReport> = Vec::new();
    let alone = |node| Row {
        node,
        joins_db: None,
    };
    for node in nodes {
        if joins.first().is_some_and(|j| j.branch != node.branch) {
            rows.extend(joins.drain(..).map(alone));
        }
        if node.kind.is_join() {
            joins.push(node);
            continue;
        }
        let joins_db = (!joins.is_empty()).then(|| joins.drain(..).map(|j| j.loss_db).sum());
        rows.push(Row { node, joins_db });
    }
    rows.extend(joins.into_iter().map(alone));
    rows
}

/// Number of joins and their loss in all, where there are any.
#[must_use]
pub fn all_joins(nodes: &[NodeReport]) -> Option<String> {
    let joins: Vec<Option<f64>> = nodes
        .iter()
        .filter(|n| n.kind.is_join())
        .map(|n| n.loss_db)
        .collect();
    let total: Option<f64> = joins.iter().copied().sum();
    match (joins.len(), total) {
        (0, _) => None,
        (1, Some(total)) => Some(format!("1 join, {}", db(total))),
        (1, None) => Some(format!("1 join, loss {NOT_KNOWN}")),
        (n, Some(total)) => Some(format!("{n} joins, {} in all", db(total))),
        (n, None) => Some(format!("{n} joins, loss {NOT_KNOWN}")),
    }
}

/// `talk-out-2m, transmit on 2m, 146.9137 MHz`.
#[must_use]
pub fn heading(chain: &ChainReport, band: &BandReport) -> String {
    of_band(
        format!("{}, {}", chain.name, chain.direction.word()),
        &band.band,
        band.point,
        band.frequency_hz,
    )
}

/// What is on a band: `… on 2m, low edge, 144 MHz`.
#[must_use]
pub fn of_band(what: String, band: &str, point: Option<Point>, hz: f64) -> String {
    let frequency = frequency(hz);
    let mut out = what;
    if band != frequency {
        out += &format!(" on {band}");
    }
    out += match point {
        Some(Point::Low) => ", low edge",
        Some(Point::Middle) => ", middle",
        Some(Point::High) => ", high edge",
        Some(Point::Edge) => ", edge of a clause",
        Some(Point::Gap) => ", between clauses",
        None => "",
    };
    format!("{out}, {frequency}")
}

/// Where the part's figures come from: basis, and the source where it says more.
#[must_use]
pub fn source(node: &NodeReport) -> String {
    match &node.source {
        // "stated" says nothing that a source does not say better
        Some(s) if node.basis == Basis::Stated || s.starts_with(node.basis.word()) => s.clone(),
        // who hands a report to an office wants to know what was verified, not what from
        Some(s) if node.basis == Basis::Library => {
            format!("library: {}", s.replace("from memory", "unverified"))
        }
        Some(s) => format!("{}: {s}", node.basis.word()),
        None => node.basis.word().to_owned(),
    }
}

/// Decibels in a column whose head names the unit. Never `-0.00`.
#[must_use]
pub fn db_cell(value: f64) -> String {
    let cell = format!("{value:.2}");
    match cell.as_str() {
        "-0.00" => "0.00".to_owned(),
        _ => cell,
    }
}

/// The loss of a part in a column.
#[must_use]
pub fn loss_cell(value: Option<f64>) -> String {
    value.map_or_else(|| NOT_KNOWN.to_owned(), db_cell)
}

/// SWR: two decimals, fewer where it is large.
#[must_use]
pub fn swr(value: f64) -> String {
    if !value.is_finite() || value > 999.0 {
        "> 999".to_owned()
    } else if value >= 9.995 {
        format!("{value:.1}")
    } else {
        format!("{value:.2}")
    }
}

/// A power as it would be typed: `30 W`.
#[must_use]
pub fn typed(watts: f64) -> String {
    if (0.001..10_000.0).contains(&watts) {
        format!("{} W", number(watts, 3))
    } else {
        power(watts)
    }
}

/// `± 0.74 dB (20.8 W to 29.3 W)`.
fn with_span(watts: f64, u_db: Option<f64>) -> String {
    let Some(u_db) = u_db else {
        return power(watts);
    };
    let (low, high) = (watts * from_db(-u_db), watts * from_db(u_db));
    format!(
        "{} ± {} ({} to {})",
        power(watts),
        db(u_db),
        power(low),
        power(high)
    )
}

/// A fact: its name and what is said.
pub type Fact = (&'static str, Text);

/// The figures of a chain on a band, each with its name.
#[must_use]
pub fn totals(chain: &ChainReport, band: &BandReport) -> Vec<Fact> {
    let mut out: Vec<Fact> = vec![("loss", loss(chain, band).into())];
    if let Some(joins) = all_joins(&band.nodes) {
        out.push(("joins", joins.into()));
    }
    out.extend(powers_of(band));
    for t in &band.taps {
        let there = format!(
            "{:.1} dBm ± {} at {}.{}",
            t.power_dbm,
            db(t.uncertainty_db),
            t.part,
            t.port
        );
        out.push(("also comes out", there.into()));
    }
    if let Some(dbm) = band.sensitivity_dbm {
        let u = band.sensitivity_uncertainty_db.unwrap_or(0.0);
        let words = format!("{dbm:.1} dBm ± {} at the antenna", db(u));
        out.push(("sensitivity", words.into()));
    }
    if let Some(nf) = band.noise_figure_db {
        out.push(("noise figure", format!("{} at the antenna", db(nf)).into()));
    }
    if chain.direction != Direction::Receive {
        out.push(("transmitter sees", seen(band).into()));
    }
    out
}

fn loss(chain: &ChainReport, band: &BandReport) -> String {
    let receive = chain.direction == Direction::Receive;
    let worst = match band.loss_worst_db {
        Some([low, high]) if db(low) != db(high) => format!(
            "; {} to {} over all phases of reflections",
            db(low),
            db(high)
        ),
        _ => String::new(),
    };
    let uncertainty = match band.uncertainty_db {
        Some(u) if receive || (band.antenna_w.is_none() && band.erp_w.is_none()) => {
            format!(" ± {}", db(u))
        }
        _ => String::new(),
    };
    let Some(loss) = band.total_loss_db else {
        return NOT_KNOWN.to_owned();
    };
    let share = match loss > 0.0 {
        true => format!(", {} of the power", percent(1.0 - from_db(-loss))),
        false => String::new(),
    };
    format!("{}{uncertainty}{share}{worst}", db(loss))
}

fn powers_of(band: &BandReport) -> Vec<Fact> {
    let mut out: Vec<Fact> = Vec::new();
    if let Some(w) = band.antenna_w {
        let figure = match band.erp_w {
            None => with_span(w, band.uncertainty_db),
            Some(_) => power(w),
        };
        let words = format!("{figure}, {}", power_dbm(w));
        out.push(("at the antenna", words.into()));
    }
    // full duty changes nothing and needs no line
    let same = |mean: f64| band.antenna_w.is_some_and(|w| (mean - w).abs() < 1e-6 * w);
    if let Some(w) = band.antenna_mean_w.filter(|mean| !same(*mean)) {
        let powers = powers([Some(w), band.erp_mean_w, band.eirp_mean_w]);
        let words = format!("{powers}, after duty and key-down share");
        out.push(("mean over time", words.into()));
    }
    for (name, watts, over) in [
        ("ERP", band.erp_w, "a half-wave dipole"),
        ("EIRP", band.eirp_w, "isotropic"),
    ] {
        if let Some(w) = watts {
            let words = format!("{}, over {over}", with_span(w, band.uncertainty_db));
            out.push((name, words.into()));
        }
    }
    out.extend(interval(band).map(|words| ("95 % of cases", words.into())));
    if let Some(extra) = band.wet_extra_db {
        let there = band.wet.as_ref().map_or(String::new(), |w| {
            format!(": {}", powers([w.antenna_w, w.erp_w, w.eirp_w]))
        });
        let words = format!("{} more loss{there}", db(extra));
        out.push(("when wet", words.into()));
    }
    out
}

fn seen(band: &BandReport) -> String {
    let Some(nominal) = band.transmitter_swr else {
        return format!("SWR {NOT_KNOWN}");
    };
    let worst = band
        .transmitter_swr_worst
        .map_or(String::new(), |w| format!(", {} at most", swr(w)));
    let mode = match band.power_mode {
        PowerMode::Tuner => "a tuner makes the net power the rated one",
        PowerMode::FixedForward => "no tuner: the mismatch there is a loss",
    };
    format!("SWR {}{worst}; {mode}", swr(nominal))
}

/// `12.2 W at the antenna, ERP 20.1 W, EIRP 33.0 W`: those of the three that are known.
fn powers([antenna_w, erp_w, eirp_w]: [Option<f64>; 3]) -> String {
    let known = [
        antenna_w.map(|w| format!("{} at the antenna", power(w))),
        erp_w.map(|w| format!("ERP {}", power(w))),
        eirp_w.map(|w| format!("EIRP {}", power(w))),
    ];
    let known: Vec<String> = known.into_iter().flatten().collect();
    known.join(", ")
}

/// The interval that holds 95 % of cases, where `± U` does not say it: its ends differ by a digit
/// that is printed, or they were found by a sample.
fn interval(band: &BandReport) -> Option<String> {
    let ([low, high], u, loss) = (band.interval_db?, band.uncertainty_db?, band.total_loss_db?);
    let sampled = band.method.is_none_or(|m| m != Method::Derivatives);
    let (name, figure) = match (band.erp_w, band.antenna_w) {
        (Some(w), _) => ("ERP", Some(w)),
        (None, Some(w)) => ("at the antenna", Some(w)),
        (None, None) => ("loss", None),
    };
    let ends = |low: f64, high: f64| match figure {
        Some(w) => [power(w * from_db(low)), power(w * from_db(high))],
        None => [db(loss - high), db(loss - low)],
    };
    let [from, to] = ends(low, high);
    (sampled || [&from, &to] != ends(-u, u).each_ref()).then(|| {
        let how = if sampled { " (sampled)" } else { "" };
        format!("{name} {from} to {to}{how}")
    })
}

/// `ERP`.
#[must_use]
pub fn quantity(q: LimitQuantity) -> &'static str {
    match q {
        LimitQuantity::Erp => "ERP",
        LimitQuantity::Eirp => "EIRP",
        LimitQuantity::Output => "output",
    }
}

/// How a margin reads: `0.85 dB under`.
#[must_use]
pub fn under_or_over(margin_db: f64) -> String {
    let side = if margin_db < 0.0 { "over" } else { "under" };
    format!("{} {side}", db(margin_db.abs()))
}

/// A limit in one line.
#[must_use]
pub fn limit(l: &LimitReport) -> Text {
    let setting = match l.safe_setting_w {
        Some(w) if l.verdict != LimitVerdict::Met => format!(
            "; {} from the transmitter would meet it with its uncertainty",
            power(w)
        ),
        _ => String::new(),
    };
    let source = l
        .source
        .as_ref()
        .map_or(String::new(), |s| format!("; {s}"));
    let probability = match l.verdict {
        LimitVerdict::CannotTell => format!(
            " (exceeded with a probability of {:.0} %)",
            100.0 * l.probability_exceeded
        ),
        _ => String::new(),
    };
    Text::from(format!("{} {}: ", typed(l.limit_w), quantity(*l.quantity)))
        .with(text(l.verdict))
        .plus(&format!(
            "{probability}, {} is {}, uncertainty {}{setting}{source}",
            power(l.value_w),
            under_or_over(l.margin_db),
            db(l.uncertainty_db),
        ))
}

/// A limit that could not be judged, in one line.
#[must_use]
pub fn not_judged(l: &UnjudgedReport) -> Text {
    let what = quantity(*l.quantity);
    Text::from(format!("{} {what}: ", typed(l.limit_w)))
        .and(Run::Verdict(Sign::Open, "not judged"))
        .plus(&format!(", {what} is {NOT_KNOWN}"))
}

/// A wave in words.
#[must_use]
pub fn wave(w: Wave) -> &'static str {
    match w {
        Wave::Swr => "SWR",
        w => w.word(),
    }
}

/// A log in words: what it holds, then a line for each trend.
#[must_use]
pub fn log(l: &LogReport) -> Vec<String> {
    let of = |q: Wave| l.rows.iter().filter(|r| r.quantity == q).count();
    let what: Vec<String> = [Wave::Forward, Wave::Reflected, Wave::Swr]
        .into_iter()
        .filter(|q| of(*q) > 0)
        .map(|q| format!("{} {}", of(q), wave(q)))
        .collect();
    let mut dated = l.rows.iter().filter(|r| !r.date.is_empty());
    let (earliest, latest) = (dated.next(), dated.next_back());
    let dates = match (earliest, latest.or(earliest)) {
        (Some(a), Some(b)) if a.date != b.date => format!(", {} to {}", a.date, b.date),
        (Some(a), _) if !a.date.is_empty() => format!(", {}", a.date),
        _ => String::new(),
    };
    let verdicts = VerdictCounts::of(l.rows.iter().filter_map(|r| r.verdict)).listed();
    let mut first = format!("{}: {}{dates}", l.file, what.join(", "));
    if !verdicts.is_empty() {
        first += &format!("; of the forward ones {verdicts}");
    }
    first += &older(l);
    let mut out = vec![first];
    out.extend(l.trends.iter().filter_map(trend));
    out
}

/// `; 3 older than `IS1` are not judged`.
fn older(l: &LogReport) -> String {
    let mut lines: Vec<u64> = Vec::new();
    let mut tag = "";
    for r in &l.rows {
        if let Some(t) = &r.older_than {
            tag = t;
            if !lines.contains(&r.log_line) {
                lines.push(r.log_line);
            }
        }
    }
    match lines.len() {
        0 => String::new(),
        1 => format!("; 1 row is older than {tag} and is not judged"),
        n => format!("; {n} rows are older than {tag} and are not judged"),
    }
}

fn trend(t: &TrendReport) -> Option<String> {
    let (value, unit) = match (t.db_per_year, t.swr_per_year) {
        (Some(d), _) => (d, " dB"),
        (None, Some(s)) => (s, ""),
        (None, None) => return None,
    };
    let (slope, u) = with_uncertainty(value, t.uncertainty_per_year, 3);
    Some(format!(
        "{} {}: {}{slope}{unit} a year ± {u}{unit}, {} readings",
        wave(t.quantity),
        match t.direction {
            Slope::NotSignificant => "steady within the uncertainty",
            Slope::Rising => "rising",
            Slope::Falling => "falling",
        },
        if slope.starts_with('-') { "" } else { "+" },
        t.readings
    ))
}

/// A reading in one line.
#[must_use]
pub fn reading(r: &ReadingReport) -> Text {
    let side = |less, more| if r.difference_db < 0.0 { less } else { more };
    let off = db(r.difference_db.abs());
    let (what, off) = match (r.read_w, r.read_swr) {
        (Some(w), _) => (
            format!("{} {}", typed(w), wave(r.quantity)),
            r.expected_w
                .map(|e| format!("{off} {} the expected {}", side("below", "above"), power(e))),
        ),
        (None, Some(s)) => (
            format!("SWR {}", number(s, 2)),
            r.expected_swr.map(|e| {
                format!(
                    "return loss {off} {} that of the expected {}",
                    side("below", "above"),
                    swr(e)
                )
            }),
        ),
        (None, None) => (wave(r.quantity).to_owned(), None),
    };
    let date = r.date.as_ref().map_or(String::new(), |d| format!(", {d}"));
    let with = r
        .instrument
        .as_ref()
        .map_or(String::new(), |i| format!(" with {i}"));
    let off = off.map_or(String::new(), |o| format!(", {o}"));
    Text::from(format!("{what}{date}{with}: "))
        .and(r.verdict.run())
        .plus(&format!("{off}, uncertainty {}", db(r.uncertainty_db)))
}

/// The largest contributions to the uncertainty.
#[must_use]
pub fn budget(all: &[BudgetReport], most: usize) -> Vec<String> {
    let mut out: Vec<String> = all
        .iter()
        .take(most)
        .map(|b| {
            format!(
                "{} {} ({:.0} %)",
                b.cause.words,
                db(b.standard_db),
                b.share * 100.0
            )
        })
        .collect();
    if all.len() > most {
        let rest: f64 = all[most..].iter().map(|b| b.share).sum();
        out.push(format!("{} more ({:.0} %)", all.len() - most, rest * 100.0));
    }
    out
}
