//! Bench sessions as CSV: one table at a time, units in the column names, full precision.

use crate::args::BenchTable;
use crate::report::cells::{maybe, number, table, text};
use downlead_report::shape::bench::*;

/// One table. Column names stay; new columns are added at the end.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub(crate) fn csv(report: &BenchReport, which: BenchTable) -> Result<String, csv::Error> {
    let head: &[&str] = match which {
        BenchTable::Swr => SWR,
        BenchTable::Trends => TRENDS,
        BenchTable::Results => RESULTS,
        BenchTable::Pieces => PIECES,
        BenchTable::Bands => BANDS,
        BenchTable::Ranking => RANKING,
        BenchTable::Budget => &[
            "piece",
            "band",
            "frequency_hz",
            "position",
            "cause",
            "standard_db",
        ],
    };
    if which == BenchTable::Trends {
        return table(TRENDS, report.trends.iter().flat_map(trend).collect());
    }
    let mut all = vec!["session", "date"];
    all.extend(head);
    let mut rows = Vec::new();
    for s in &report.sessions {
        let keys = [s.name.clone(), text(s.date.as_ref())];
        let of = match which {
            BenchTable::Results => s.results.iter().map(result).collect(),
            BenchTable::Pieces => s.pieces.iter().map(piece).collect(),
            BenchTable::Bands => s.bands.iter().map(band).collect(),
            BenchTable::Swr => s.reflections.iter().map(swr).collect(),
            // of no one session, see above
            BenchTable::Trends => Vec::new(),
            BenchTable::Ranking => s.bands.iter().flat_map(ranks).collect(),
            BenchTable::Budget => s
                .results
                .iter()
                .flat_map(budget)
                .collect::<Vec<Vec<String>>>(),
        };
        rows.extend(
            of.into_iter()
                .map(|r| keys.iter().cloned().chain(r).collect()),
        );
    }
    table(&all, rows)
}

const RESULTS: &[&str] = &[
    "piece",
    "band",
    "frequency_hz",
    "method",
    "readings",
    "loss_db",
    "loss_uncertainty_db",
    "through_percent",
    "uncorrected_loss_db",
    "expected_db",
    "expected_uncertainty_db",
    "joins_db",
    "difference_db",
    "uncertainty_db",
    "en",
    "verdict",
    "better_meter_factor",
    "longer_piece_m",
    "loss_db_per_m",
    "loss_uncertainty_db_per_m",
    "trusted",
];

fn result(r: &ResultReport) -> Vec<String> {
    vec![
        r.piece.clone(),
        r.band.clone(),
        number(r.frequency_hz),
        r.method.to_owned(),
        r.readings.to_string(),
        number(r.loss_db),
        number(r.loss_uncertainty_db),
        number(r.through_percent),
        number(r.uncorrected_loss_db),
        maybe(r.expected_db),
        maybe(r.expected_uncertainty_db),
        maybe(r.joins_db),
        maybe(r.difference_db),
        maybe(r.uncertainty_db),
        maybe(r.en),
        r.verdict.unwrap_or_default().to_owned(),
        maybe(r.better_meter_factor),
        maybe(r.longer_piece_m),
        maybe(r.loss_db_per_m),
        maybe(r.loss_uncertainty_db_per_m),
        r.trusted.map(|t| t.to_string()).unwrap_or_default(),
    ]
}

const PIECES: &[&str] = &[
    "piece",
    "cable",
    "length_m",
    "length_uncertainty_m",
    "temperature_c",
    "agrees",
    "differs",
    "cannot_tell",
    "ratio",
    "ratio_low",
    "ratio_high",
    "chi_square",
    "degrees_of_freedom",
    "p",
    "worst_band",
    "worst_en",
    "verdict",
    "k1_db_per_m_per_sqrt_mhz",
    "k1_uncertainty_db_per_m_per_sqrt_mhz",
    "k2_db_per_m_per_mhz",
    "k2_uncertainty_db_per_m_per_mhz",
    "k1_at_20c_db_per_m_per_sqrt_mhz",
    "correlation",
    "fit_chi_square",
    "fit_p",
    "outlier_band",
    "line",
];

fn piece(p: &PieceReport) -> Vec<String> {
    let (w, f) = (p.whole.as_ref(), p.fit.as_ref());
    let law = f.map(|f| &f.law);
    vec![
        p.piece.clone(),
        p.cable.clone(),
        maybe(p.length_m),
        maybe(p.length_uncertainty_m),
        number(p.temperature_c),
        p.verdicts.agrees.to_string(),
        p.verdicts.differs.to_string(),
        p.verdicts.cannot_tell.to_string(),
        maybe(w.map(|w| w.ratio)),
        maybe(w.map(|w| w.ratio_low)),
        maybe(w.map(|w| w.ratio_high)),
        maybe(w.map(|w| w.chi_square)),
        w.map(|w| w.degrees_of_freedom.to_string())
            .unwrap_or_default(),
        maybe(w.and_then(|w| w.p)),
        text(w.and_then(|w| w.worst_band.as_ref())),
        maybe(w.map(|w| w.worst_en)),
        w.map(|w| w.verdict).unwrap_or_default().to_owned(),
        maybe(law.map(|l| l.k1_db_per_m_per_sqrt_mhz)),
        maybe(law.map(|l| l.k1_uncertainty_db_per_m_per_sqrt_mhz)),
        maybe(law.map(|l| l.k2_db_per_m_per_mhz)),
        maybe(law.map(|l| l.k2_uncertainty_db_per_m_per_mhz)),
        maybe(law.map(|l| l.k1_at_20c_db_per_m_per_sqrt_mhz)),
        maybe(law.map(|l| l.correlation)),
        maybe(f.map(|f| f.chi_square)),
        maybe(f.and_then(|f| f.p)),
        text(f.and_then(|f| f.outlier_band.as_ref())),
        p.line.to_string(),
    ]
}

const BANDS: &[&str] = &[
    "band",
    "frequency_hz",
    "drift_percent",
    "drift_percent_per_minute",
    "drift_minutes",
    "drift_scatter_percent",
];

fn band(b: &BandReport) -> Vec<String> {
    vec![
        b.band.clone(),
        number(b.frequency_hz),
        maybe(b.drift_percent),
        maybe(b.drift_percent_per_minute),
        maybe(b.drift_minutes),
        maybe(b.drift_scatter_percent),
    ]
}

const RANKING: &[&str] = &[
    "band",
    "frequency_hz",
    "rank",
    "sharing",
    "piece",
    "loss_db_per_m",
    "uncertainty_db_per_m",
    "trusted",
];

fn ranks(b: &BandReport) -> Vec<Vec<String>> {
    b.ranking
        .iter()
        .map(|r| {
            vec![
                b.band.clone(),
                number(b.frequency_hz),
                r.rank.to_string(),
                r.sharing.to_string(),
                r.piece.clone(),
                number(r.loss_db_per_m),
                number(r.uncertainty_db_per_m),
                r.trusted.to_string(),
            ]
        })
        .collect()
}

fn budget(r: &ResultReport) -> Vec<Vec<String>> {
    r.budget
        .iter()
        .enumerate()
        .map(|(i, c)| {
            vec![
                r.piece.clone(),
                r.band.clone(),
                number(r.frequency_hz),
                (i + 1).to_string(),
                c.cause.clone(),
                number(c.standard_db),
            ]
        })
        .collect()
}

const SWR: &[&str] = &[
    "band",
    "frequency_hz",
    "reading",
    "piece",
    "swr",
    "swr_low",
    "swr_high",
    "decimals",
    "line",
    "imported_from",
    "imported_line",
];

fn swr(s: &SwrReport) -> Vec<String> {
    let whole = |n: Option<u64>| n.map(|n| n.to_string()).unwrap_or_default();
    vec![
        s.band.clone(),
        number(s.frequency_hz),
        s.reading.to_owned(),
        text(s.piece.as_ref()),
        number(s.swr),
        number(s.swr_low),
        number(s.swr_high),
        whole(s.decimals.map(|d| d as u64)),
        s.line.to_string(),
        text(s.imported_from.as_ref()),
        whole(s.imported_line),
    ]
}

const TRENDS: &[&str] = &[
    "piece",
    "cable",
    "date",
    "ratio",
    "ratio_uncertainty",
    "ratio_per_year",
    "ratio_per_year_uncertainty",
    "direction",
];

fn trend(t: &TrendReport) -> Vec<Vec<String>> {
    t.points
        .iter()
        .map(|p| {
            vec![
                t.piece.clone(),
                t.cable.clone(),
                p.date.clone(),
                number(p.ratio),
                number(p.ratio_uncertainty),
                maybe(t.ratio_per_year),
                maybe(t.ratio_per_year_uncertainty),
                t.direction.unwrap_or_default().to_owned(),
            ]
        })
        .collect()
}
