//! Figures and verdicts of a bench session in words.

use downlead_eval::bench::result::{BenchCell, SessionResult};
use downlead_eval::bench::{source_words, verdict_word};
use downlead_eval::result::measure::{SwrReading, Verdict, WholeCable};
use downlead_quantity::{db, decibel_signed};

use downlead_report::words::figure::with_uncertainty;
pub(crate) use downlead_report::words::figure::{band_in_words, counted};

use crate::status::Status;

/// `+0.03 dB ± 0.10 dB: agrees`; the loss's own doubt where nothing is expected.
pub(crate) fn judged(c: &BenchCell) -> String {
    match &c.comparison {
        Some(x) => format!(
            "{} ± {}: {}",
            decibel_signed(x.difference_db),
            db(x.expanded_db),
            verdict_word(x.verdict)
        ),
        None => format!("± {}, nothing to compare with", db(c.measured.expanded_db)),
    }
}

/// SWR with no digit more than the meter carries (`SWR 1.1`, `SWR above 12.3`).
pub(crate) fn swr(s: &SwrReading) -> String {
    let shown = |v: f64, d: usize| {
        if v.is_finite() && v < 1000.0 {
            format!("{v:.d$}")
        } else {
            "∞".to_owned()
        }
    };
    match s.decimals {
        Some(d) => format!("SWR {}", shown(s.swr, d)),
        None => format!("SWR above {}", shown(s.low, 1)),
    }
}

/// How many comparisons came to which verdict.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Counts {
    pub(crate) agrees: usize,
    pub(crate) differs: usize,
    pub(crate) cannot: usize,
}

impl Counts {
    pub(crate) fn of<'c>(cells: impl Iterator<Item = &'c BenchCell>) -> Counts {
        let mut n = Counts::default();
        cells.for_each(|c| n.add(c));
        n
    }

    pub(crate) fn add(&mut self, c: &BenchCell) {
        match c.comparison.as_ref().map(|x| x.verdict) {
            Some(Verdict::Agrees) => self.agrees += 1,
            Some(Verdict::Differs) => self.differs += 1,
            Some(Verdict::CannotTell) => self.cannot += 1,
            None => {}
        }
    }

    pub(crate) fn all(self) -> usize {
        self.agrees + self.differs + self.cannot
    }

    /// The worst of them; none if nothing was compared.
    pub(crate) fn worst(self) -> Option<Status> {
        [
            (self.differs, Status::Bad),
            (self.cannot, Status::Doubtful),
            (self.agrees, Status::Good),
        ]
        .into_iter()
        .find_map(|(n, status)| (n > 0).then_some(status))
    }

    /// `24 agree, 6 differ, 6 cannot tell`.
    pub(crate) fn words(self) -> String {
        let verb = |n: usize, one: &str, many: &str| match n {
            0 => None,
            1 => Some(format!("1 {one}")),
            n => Some(format!("{n} {many}")),
        };
        let parts: Vec<String> = [
            verb(self.agrees, "agrees", "agree"),
            verb(self.differs, "differs", "differ"),
            verb(self.cannot, "cannot tell", "cannot tell"),
        ]
        .into_iter()
        .flatten()
        .collect();
        if parts.is_empty() {
            "nothing compared".to_owned()
        } else {
            parts.join(", ")
        }
    }
}

/// `× 1.02 ± 0.03 of its sheet`: measured over expected over all bands.
pub(crate) fn whole(w: &WholeCable) -> String {
    let edge = |k: f64| libm::exp(w.ln_ratio + k * w.u_ln);
    let (ratio, u) = with_uncertainty(w.ratio, 0.5 * (edge(2.0) - edge(-2.0)), 3);
    format!("× {ratio} ± {u} of its sheet")
}

/// Said where the bands scatter about that factor beyond their doubt (χ² test, 5 %).
pub(crate) fn scatters(w: &WholeCable) -> &'static str {
    if w.p < 0.05 {
        "; one factor does not hold on all bands"
    } else {
        ""
    }
}

/// `24.6 ± 0.5 dB/100 m`.
pub(crate) fn per_100m(db_per_m: f64, u_db_per_m: f64) -> String {
    let (v, u) = with_uncertainty(100.0 * db_per_m, 200.0 * u_db_per_m, 2);
    format!("{v} ± {u} dB/100 m")
}

/// The ranking of a band, least loss per length first: `D < C < A = B`; pieces that cannot be
/// told apart are equal. `figures` gives the loss per 100 m with each.
pub(crate) fn ranking(r: &SessionResult, band: usize, figures: bool) -> String {
    let mut out = String::new();
    let mut last = None;
    for (cell, group) in &r.bands[band].ranking {
        let Some(c) = r.cells.get(*cell) else {
            continue;
        };
        out.push_str(match last {
            None => "",
            Some(g) if g == *group => " = ",
            Some(_) => " < ",
        });
        out.push_str(&r.pieces[c.piece].name);
        if let Some(p) = c.per_length.filter(|_| figures) {
            let (v, u) = with_uncertainty(100.0 * p.db_per_m, 200.0 * p.u_db_per_m, 2);
            out.push_str(&format!(" {v} ± {u}"));
            if !p.trusted {
                out.push_str(" (not to be scaled up)");
            }
        }
        last = Some(*group);
    }
    out
}

/// The band that ranks most pieces, of these the highest: there cables differ most.
pub(crate) fn telling_band(r: &SessionResult) -> Option<usize> {
    (0..r.bands.len())
        .filter(|b| r.bands[*b].ranking.len() > 1)
        .max_by(|a, b| {
            let (x, y) = (&r.bands[*a], &r.bands[*b]);
            (x.ranking.len().cmp(&y.ranking.len())).then(x.hz.total_cmp(&y.hz))
        })
}

/// What the doubt of all comparisons consists of: cause and its share of the variance, largest
/// first.
pub(crate) fn causes(r: &SessionResult) -> Vec<(String, f64)> {
    let mut sums: Vec<(String, f64)> = Vec::new();
    let mut total = 0.0;
    let mut add = |cause: &str, u: f64| {
        if u == 0.0 {
            return;
        }
        total += u * u;
        match sums.iter_mut().find(|s| s.0 == cause) {
            Some(s) => s.1 += u * u,
            None => sums.push((cause.to_owned(), u * u)),
        }
    };
    for c in r.cells.iter().filter(|c| c.comparison.is_some()) {
        for t in &c.budget {
            let words = source_words(t.source, &r.meters);
            match words.strip_suffix("a reading") {
                Some(w) => add(&format!("{w}the readings"), t.u_db),
                None => add(&words, t.u_db),
            }
        }
        if let Some(e) = c.expected {
            let cable = (e.u_db * e.u_db - e.u_joins_db * e.u_joins_db).max(0.0);
            add("the sheets of the cables", libm::sqrt(cable));
            add("the joins", e.u_joins_db);
        }
    }
    if total > 0.0 {
        sums.iter_mut().for_each(|s| s.1 /= total);
    }
    sums.sort_by(|a, b| b.1.total_cmp(&a.1).then(a.0.cmp(&b.0)));
    sums
}
