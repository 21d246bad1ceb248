//! Figures and verdicts of a bench session in words.

use downlead_eval::bench::result::{BenchCell, SessionResult};
use downlead_eval::result::measure::{SwrReading, WholeCable};
use downlead_quantity::{db, decibel_signed};
use downlead_report::words::verdict;

use downlead_report::words::figure::with_uncertainty;
pub(crate) use downlead_report::words::figure::{band_in_words, counted};

/// `+0.03 dB ± 0.10 dB: agrees`; the loss's own uncertainty where nothing is expected.
pub(crate) fn judged(c: &BenchCell) -> String {
    match &c.comparison {
        Some(x) => format!(
            "{} ± {}: {}",
            decibel_signed(x.difference_db),
            db(x.expanded_db),
            verdict::reading(x.verdict)
        ),
        None if c.slip => format!("± {}, a slip? not judged", db(c.measured.expanded_db)),
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

/// `× 1.02 ± 0.03 of its sheet`: measured over expected over all bands.
pub(crate) fn whole(w: &WholeCable) -> String {
    let edge = |k: f64| libm::exp(w.ln_ratio + k * w.u_ln);
    let (ratio, u) = with_uncertainty(w.ratio, 0.5 * (edge(2.0) - edge(-2.0)), 3);
    format!("× {ratio} ± {u} of its sheet")
}

/// Said where the bands scatter about that factor by more than their uncertainty (χ² test, 5 %).
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
/// distinguished are equal. `figures` gives the loss per 100 m with each.
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
