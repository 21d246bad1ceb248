//! The words and figures that text and Markdown share.

use downlead_quantity::{db, frequency, from_db, number, percent, power, power_dbm};

use crate::model::{
    BandReport, BudgetReport, ChainReport, LimitReport, LogReport, NodeReport, ReadingReport,
};
use crate::ui::{Style, printable};

/// One line of a table: a part with the joins before it taken in.
#[derive(Debug)]
pub(crate) struct Row<'a> {
    pub(crate) node: &'a NodeReport,
    /// Loss of the joins between the part before and this one, dB, where there are any; none inside
    /// if it is not known.
    pub(crate) joins_db: Option<Option<f64>>,
}

/// Said of a chain of which something could not be computed.
pub(crate) const INCOMPLETE: &str =
    "some parts could not be computed; what depends on them is not known";

/// Stands in a table for a loss that could not be had.
pub(crate) const NOT_KNOWN: &str = "not known";

/// Parts with their joins, in order. Joins after the last part stand as rows of their own.
pub(crate) fn rows(nodes: &[NodeReport]) -> Vec<Row<'_>> {
    let mut rows = Vec::new();
    let mut joins: Vec<&NodeReport> = Vec::new();
    for node in nodes {
        if joins.first().is_some_and(|j| j.branch != node.branch) {
            rows.extend(joins.drain(..).map(|node| Row {
                node,
                joins_db: None,
            }));
        }
        if node.kind == "join" {
            joins.push(node);
            continue;
        }
        let joins_db = (!joins.is_empty()).then(|| joins.drain(..).map(|j| j.loss_db).sum());
        rows.push(Row { node, joins_db });
    }
    rows.extend(joins.into_iter().map(|node| Row {
        node,
        joins_db: None,
    }));
    rows
}

/// Number of joins and their loss in all, where there are any.
pub(crate) fn all_joins(nodes: &[NodeReport]) -> Option<String> {
    let joins: Vec<Option<f64>> = nodes
        .iter()
        .filter(|n| n.kind == "join")
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
pub(crate) fn heading(chain: &ChainReport, band: &BandReport) -> String {
    let frequency = frequency(band.frequency_hz);
    let mut out = format!("{}, {}", chain.name, chain.direction);
    if band.band != frequency {
        out += &format!(" on {}", band.band);
    }
    if let Some(point) = band.point {
        out += match point {
            "low" => ", low edge",
            "high" => ", high edge",
            other => return format!("{out}, {other}, {frequency}"),
        };
    }
    format!("{out}, {frequency}")
}

/// `DU1.high`.
pub(crate) fn part(node: &NodeReport) -> String {
    match &node.port {
        Some(port) => format!("{}.{port}", node.part),
        None => node.part.clone(),
    }
}

/// Where the part's figures come from: basis, and the source where it says more.
pub(crate) fn source(node: &NodeReport) -> String {
    match &node.source {
        // "stated" says nothing that a source does not say better
        Some(source) if node.basis == "stated" || source.starts_with(node.basis) => source.clone(),
        Some(source) => format!("{}: {source}", node.basis),
        None => node.basis.to_owned(),
    }
}

/// At most `width` characters, with a mark where something is left off.
pub(crate) fn shorten(text: &str, width: usize) -> String {
    if text.chars().count() <= width {
        return text.to_owned();
    }
    let cut: String = text.chars().take(width - 1).collect();
    format!("{}…", cut.trim_end())
}

/// Decibels in a column whose head names the unit. Never `-0.00`.
pub(crate) fn db_cell(value: f64) -> String {
    let cell = format!("{value:.2}");
    if cell == "-0.00" {
        "0.00".to_owned()
    } else {
        cell
    }
}

/// The loss of a part in a column.
pub(crate) fn loss_cell(value: Option<f64>) -> String {
    value.map_or_else(|| NOT_KNOWN.to_owned(), db_cell)
}

/// The loss of joins in a column; nothing where there are none.
pub(crate) fn joins_cell(value: Option<Option<f64>>) -> String {
    value.map(loss_cell).unwrap_or_default()
}

/// An SWR that may not be known, in a column.
pub(crate) fn swr_cell(value: Option<f64>) -> String {
    value.map(swr).unwrap_or_default()
}

/// Decibels that may be missing where something is not known.
pub(crate) fn maybe_db_cell(value: Option<f64>) -> String {
    value.map(db_cell).unwrap_or_default()
}

/// SWR: two decimals, fewer where it is large.
pub(crate) fn swr(value: f64) -> String {
    if !value.is_finite() || value > 999.0 {
        "> 999".to_owned()
    } else if value >= 9.995 {
        format!("{value:.1}")
    } else {
        format!("{value:.2}")
    }
}

/// A power as somebody typed it: `30 W`.
fn typed(watts: f64) -> String {
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

/// The figures of a chain on a band, each with its name.
pub(crate) fn totals(chain: &ChainReport, band: &BandReport) -> Vec<(&'static str, String)> {
    let mut out = Vec::new();
    let receive = chain.direction == "receive";
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
    out.push((
        "loss",
        match band.total_loss_db {
            Some(loss) => {
                let share = if loss > 0.0 {
                    format!(", {} of the power", percent(1.0 - from_db(-loss)))
                } else {
                    String::new()
                };
                format!("{}{uncertainty}{share}{worst}", db(loss))
            }
            None => NOT_KNOWN.to_owned(),
        },
    ));
    if let Some(joins) = all_joins(&band.nodes) {
        out.push(("joins", joins));
    }
    if let Some(w) = band.antenna_w {
        let figure = if band.erp_w.is_none() {
            with_span(w, band.uncertainty_db)
        } else {
            power(w)
        };
        out.push(("at the antenna", format!("{figure}, {}", power_dbm(w))));
    }
    // full duty changes nothing and needs no line
    let same = |mean: f64| band.antenna_w.is_some_and(|w| (mean - w).abs() < 1e-6 * w);
    if let Some(w) = band.antenna_mean_w.filter(|mean| !same(*mean)) {
        let powers = powers([Some(w), band.erp_mean_w, band.eirp_mean_w]);
        out.push((
            "mean over time",
            format!("{powers}, after duty and key-down share"),
        ));
    }
    if let Some(w) = band.erp_w {
        out.push((
            "ERP",
            format!(
                "{}, over a half-wave dipole",
                with_span(w, band.uncertainty_db)
            ),
        ));
    }
    if let Some(w) = band.eirp_w {
        out.push((
            "EIRP",
            format!("{}, over isotropic", with_span(w, band.uncertainty_db)),
        ));
    }
    out.extend(interval(band).map(|words| ("95 % of cases", words)));
    if let Some(extra) = band.wet_extra_db {
        let there = band.wet.as_ref().map_or(String::new(), |w| {
            format!(": {}", powers([w.antenna_w, w.erp_w, w.eirp_w]))
        });
        out.push(("when wet", format!("{} more loss{there}", db(extra))));
    }
    for t in &band.taps {
        out.push((
            "also comes out",
            format!(
                "{:.1} dBm ± {} at {}.{}",
                t.power_dbm,
                db(t.uncertainty_db),
                t.part,
                t.port
            ),
        ));
    }
    if let Some(dbm) = band.sensitivity_dbm {
        let u = band.sensitivity_uncertainty_db.unwrap_or(0.0);
        out.push((
            "sensitivity",
            format!("{dbm:.1} dBm ± {} at the antenna", db(u)),
        ));
    }
    if let Some(nf) = band.noise_figure_db {
        out.push(("noise figure", format!("{} at the antenna", db(nf))));
    }
    if !receive {
        let worst = band
            .transmitter_swr_worst
            .map_or(String::new(), |w| format!(", {} at most", swr(w)));
        let mode = match band.power_mode {
            "tuner" => "a tuner makes the net power the rated one",
            _ => "no tuner: the mismatch there is a loss",
        };
        out.push((
            "transmitter sees",
            match band.transmitter_swr {
                Some(seen) => format!("SWR {}{worst}; {mode}", swr(seen)),
                None => format!("SWR {NOT_KNOWN}"),
            },
        ));
    }
    out
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

/// The interval that holds 95 % of cases, where `± U` does not say it: its ends lie otherwise by a
/// digit that is printed, or they were found by a sample.
fn interval(band: &BandReport) -> Option<String> {
    let ([low, high], u, loss) = (band.interval_db?, band.uncertainty_db?, band.total_loss_db?);
    let sampled = band.method != Some("derivatives");
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

/// A verdict with a sign that reads without colour.
pub(crate) fn verdict(word: &str, style: Style) -> String {
    match word {
        "met" | "agrees" => style.good(&format!("✓ {word}")),
        "not-met" => style.bad("✗ not met"),
        "differs" => style.bad("✗ differs"),
        "cannot-tell" => style.doubtful("? cannot tell"),
        other => other.to_owned(),
    }
}

/// `0.85 dB under`.
fn beside(margin_db: f64) -> String {
    let side = if margin_db < 0.0 { "over" } else { "under" };
    format!("{} {side}", db(margin_db.abs()))
}

/// A limit in one line.
pub(crate) fn limit(l: &LimitReport, style: Style) -> String {
    let quantity = match l.quantity {
        "erp" => "ERP",
        "eirp" => "EIRP",
        other => other,
    };
    let setting = match l.safe_setting_w {
        Some(w) if l.verdict != "met" => format!(
            "; {} from the transmitter would meet it beyond doubt",
            power(w)
        ),
        _ => String::new(),
    };
    let source = l
        .source
        .as_ref()
        .map_or(String::new(), |s| format!("; {}", printable(s)));
    let probability = match l.verdict {
        "cannot-tell" => format!(
            " (exceeded with a probability of {:.0} %)",
            100.0 * l.probability_exceeded
        ),
        _ => String::new(),
    };
    format!(
        "{} {quantity}: {}{probability}, {} is {}, doubt {}{setting}{source}",
        typed(l.limit_w),
        verdict(l.verdict, style),
        power(l.value_w),
        beside(l.margin_db),
        db(l.uncertainty_db),
    )
}

/// A log in words: what it holds, then a line for each trend.
pub(crate) fn log(l: &LogReport) -> Vec<String> {
    let of = |q: &str| l.rows.iter().filter(|r| r.quantity == q).count();
    let judged = |v: &str| l.rows.iter().filter(|r| r.verdict == Some(v)).count();
    let mut what = Vec::new();
    for (quantity, words) in [
        ("forward", "forward"),
        ("reflected", "reflected"),
        ("swr", "SWR"),
    ] {
        if of(quantity) > 0 {
            what.push(format!("{} {words}", of(quantity)));
        }
    }
    let mut dated = l.rows.iter().filter(|r| !r.date.is_empty());
    let (earliest, latest) = (dated.next(), dated.next_back());
    let dates = match (earliest, latest.or(earliest)) {
        (Some(a), Some(b)) if a.date != b.date => format!(", {} to {}", a.date, b.date),
        (Some(a), _) if !a.date.is_empty() => format!(", {}", a.date),
        _ => String::new(),
    };
    let mut verdicts = Vec::new();
    for (verdict, words) in [
        ("agrees", ["agrees", "agree"]),
        ("differs", ["differs", "differ"]),
        ("cannot-tell", ["cannot tell", "cannot tell"]),
    ] {
        let n = judged(verdict);
        if n > 0 {
            verdicts.push(format!("{n} {}", words[usize::from(n > 1)]));
        }
    }
    let mut first = format!("{}: {}{dates}", l.file, what.join(", "));
    if !verdicts.is_empty() {
        first += &format!("; of the forward ones {}", verdicts.join(", "));
    }
    let mut out = vec![first];
    for t in &l.trends {
        let (value, unit) = match (t.db_per_year, t.swr_per_year) {
            (Some(d), _) => (d, " dB"),
            (None, Some(s)) => (s, ""),
            (None, None) => continue,
        };
        let name = if t.quantity == "swr" {
            "SWR"
        } else {
            t.quantity
        };
        let (slope, u) =
            downlead_report::words::figure::with_uncertainty(value, t.uncertainty_per_year, 3);
        out.push(format!(
            "{name} {}: {}{slope}{unit} a year ± {u}{unit}, {} readings",
            match t.direction {
                "not-beyond-doubt" => "steady within the doubt",
                d => d,
            },
            if slope.starts_with('-') { "" } else { "+" },
            t.readings
        ));
    }
    out
}

/// A reading in one line.
pub(crate) fn reading(r: &ReadingReport, style: Style) -> String {
    let side = |less, more| if r.difference_db < 0.0 { less } else { more };
    let off = db(r.difference_db.abs());
    let (what, off) = match (r.read_w, r.read_swr) {
        (Some(w), _) => (
            format!("{} {}", typed(w), r.quantity),
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
        (None, None) => (r.quantity.to_owned(), None),
    };
    let date = r
        .date
        .as_ref()
        .map_or(String::new(), |d| format!(", {}", printable(d)));
    let with = r
        .instrument
        .as_ref()
        .map_or(String::new(), |i| format!(" with {}", printable(i)));
    let off = off.map_or(String::new(), |o| format!(", {o}"));
    format!(
        "{what}{date}{with}: {}{off}, doubt {}",
        verdict(r.verdict, style),
        db(r.uncertainty_db)
    )
}

/// The largest contributions to the doubt.
pub(crate) fn budget(all: &[BudgetReport], most: usize) -> Vec<String> {
    let mut out: Vec<String> = all
        .iter()
        .take(most)
        .map(|b| {
            format!(
                "{} {} ({:.0} %)",
                printable(&b.cause),
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
