//! Tables of bench sessions.

use crate::shape::bench::*;
use crate::shape::run::{RunReport, RunsAtReport, RunsReport};
use crate::write::csv::{Field, csv};

/// Which table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BenchTable {
    /// One row a piece and band.
    Results,
    /// Pieces as a whole.
    Pieces,
    /// Drift by band.
    Bands,
    /// Pieces by loss per length.
    Ranking,
    /// Causes of the uncertainty.
    Budget,
    /// SWR at the meter.
    Swr,
    /// Pieces over the years.
    Trends,
    /// Pieces as runs of the length that was asked for.
    Runs,
}

/// A row: of which session, and what.
type Row<'a, T> = (&'a SessionReport, T);

/// One table.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub fn bench(report: &BenchReport, which: BenchTable) -> Result<String, csv::Error> {
    match which {
        BenchTable::Results => of(report, results(), |s| s.results.iter().collect()),
        BenchTable::Pieces => of(report, pieces(), |s| s.pieces.iter().collect()),
        BenchTable::Bands => of(report, bands(), |s| s.bands.iter().collect()),
        BenchTable::Ranking => of(report, ranking(), |s| {
            let bands = s.bands.iter();
            bands
                .flat_map(|b| b.ranking.iter().map(move |r| (b, r)))
                .collect()
        }),
        BenchTable::Budget => of(report, budget(), |s| {
            let results = s.results.iter();
            results
                .flat_map(|r| r.budget.iter().enumerate().map(move |(i, c)| (r, i, c)))
                .collect()
        }),
        BenchTable::Swr => of(report, swr(), |s| s.reflections.iter().collect()),
        BenchTable::Runs => of(report, runs(), |s| {
            let all = s
                .runs
                .iter()
                .flat_map(|r| r.frequencies.iter().map(move |f| (r, f)));
            all.flat_map(|(r, f)| f.ranking.iter().map(move |x| (r, f, x)))
                .collect()
        }),
        BenchTable::Trends => {
            let all = report.trends.iter();
            let rows: Vec<_> = all
                .flat_map(|t| t.points.iter().map(move |p| (t, p)))
                .collect();
            csv(&trends(), &rows)
        }
    }
}

fn of<'a, T>(
    report: &'a BenchReport,
    own: Vec<Field<Row<'a, T>>>,
    rows: fn(&'a SessionReport) -> Vec<T>,
) -> Result<String, csv::Error> {
    let mut fields: Vec<Field<Row<'a, T>>> = vec![
        ("session", |r| (&r.0.name).into()),
        ("date", |r| r.0.date.as_ref().into()),
    ];
    fields.extend(own);
    fields.push(("file", |r| (&r.0.file).into()));
    let rows: Vec<Row<'a, T>> = report
        .sessions
        .iter()
        .flat_map(|s| rows(s).into_iter().map(move |t| (s, t)))
        .collect();
    csv(&fields, &rows)
}

fn results<'a>() -> Vec<Field<Row<'a, &'a ResultReport>>> {
    vec![
        ("piece", |r| (&r.1.piece).into()),
        ("band", |r| (&r.1.band).into()),
        ("frequency_hz", |r| r.1.frequency_hz.into()),
        ("method", |r| r.1.method.into()),
        ("readings", |r| r.1.readings.into()),
        ("loss_db", |r| r.1.loss_db.into()),
        ("loss_uncertainty_db", |r| r.1.loss_uncertainty_db.into()),
        ("through_percent", |r| r.1.through_percent.into()),
        ("uncorrected_loss_db", |r| r.1.uncorrected_loss_db.into()),
        ("expected_db", |r| r.1.expected_db.into()),
        ("expected_uncertainty_db", |r| {
            r.1.expected_uncertainty_db.into()
        }),
        ("joins_db", |r| r.1.joins_db.into()),
        ("difference_db", |r| r.1.difference_db.into()),
        ("uncertainty_db", |r| r.1.uncertainty_db.into()),
        ("en", |r| r.1.en.into()),
        ("verdict", |r| r.1.verdict.map(|v| v.word()).into()),
        ("better_meter_factor", |r| r.1.better_meter_factor.into()),
        ("longer_piece_m", |r| r.1.longer_piece_m.into()),
        ("loss_db_per_m", |r| r.1.loss_db_per_m.into()),
        ("loss_uncertainty_db_per_m", |r| {
            r.1.loss_uncertainty_db_per_m.into()
        }),
        ("trusted", |r| r.1.trusted.into()),
    ]
}

fn whole(p: &PieceReport) -> Option<&WholeReport> {
    p.whole.as_ref()
}

fn fit(p: &PieceReport) -> Option<&FitReport> {
    p.fit.as_ref()
}

fn pieces<'a>() -> Vec<Field<Row<'a, &'a PieceReport>>> {
    vec![
        ("piece", |r| (&r.1.piece).into()),
        ("cable", |r| (&r.1.cable).into()),
        ("length_m", |r| r.1.length_m.into()),
        ("length_uncertainty_m", |r| r.1.length_uncertainty_m.into()),
        ("temperature_c", |r| r.1.temperature_c.into()),
        ("agrees", |r| r.1.verdicts.agrees.into()),
        ("differs", |r| r.1.verdicts.differs.into()),
        ("cannot_tell", |r| r.1.verdicts.cannot_tell.into()),
        ("ratio", |r| whole(r.1).map(|w| w.ratio).into()),
        ("ratio_low", |r| whole(r.1).map(|w| w.ratio_low).into()),
        ("ratio_high", |r| whole(r.1).map(|w| w.ratio_high).into()),
        ("chi_square", |r| whole(r.1).map(|w| w.chi_square).into()),
        ("degrees_of_freedom", |r| {
            whole(r.1).map(|w| w.degrees_of_freedom).into()
        }),
        ("p", |r| whole(r.1).and_then(|w| w.p).into()),
        ("worst_band", |r| {
            whole(r.1).and_then(|w| w.worst_band.as_ref()).into()
        }),
        ("worst_en", |r| whole(r.1).map(|w| w.worst_en).into()),
        ("verdict", |r| whole(r.1).map(|w| w.verdict.word()).into()),
        ("k1_db_per_m_per_sqrt_mhz", |r| {
            fit(r.1).map(|f| f.law.k1_db_per_m_per_sqrt_mhz).into()
        }),
        ("k1_uncertainty_db_per_m_per_sqrt_mhz", |r| {
            fit(r.1)
                .map(|f| f.law.k1_uncertainty_db_per_m_per_sqrt_mhz)
                .into()
        }),
        ("k2_db_per_m_per_mhz", |r| {
            fit(r.1).map(|f| f.law.k2_db_per_m_per_mhz).into()
        }),
        ("k2_uncertainty_db_per_m_per_mhz", |r| {
            fit(r.1)
                .map(|f| f.law.k2_uncertainty_db_per_m_per_mhz)
                .into()
        }),
        ("k1_at_20c_db_per_m_per_sqrt_mhz", |r| {
            fit(r.1)
                .map(|f| f.law.k1_at_20c_db_per_m_per_sqrt_mhz)
                .into()
        }),
        ("correlation", |r| {
            fit(r.1).map(|f| f.law.correlation).into()
        }),
        ("fit_chi_square", |r| fit(r.1).map(|f| f.chi_square).into()),
        ("fit_p", |r| fit(r.1).and_then(|f| f.p).into()),
        ("outlier_band", |r| {
            fit(r.1).and_then(|f| f.outlier_band.as_ref()).into()
        }),
        ("line", |r| r.1.line.into()),
    ]
}

fn bands<'a>() -> Vec<Field<Row<'a, &'a BandReport>>> {
    vec![
        ("band", |r| (&r.1.band).into()),
        ("frequency_hz", |r| r.1.frequency_hz.into()),
        ("drift_percent", |r| r.1.drift_percent.into()),
        ("drift_percent_per_minute", |r| {
            r.1.drift_percent_per_minute.into()
        }),
        ("drift_minutes", |r| r.1.drift_minutes.into()),
        ("drift_scatter_percent", |r| {
            r.1.drift_scatter_percent.into()
        }),
    ]
}

fn ranking<'a>() -> Vec<Field<Row<'a, (&'a BandReport, &'a RankReport)>>> {
    vec![
        ("band", |r| (&r.1.0.band).into()),
        ("frequency_hz", |r| r.1.0.frequency_hz.into()),
        ("rank", |r| r.1.1.rank.into()),
        ("sharing", |r| r.1.1.sharing.into()),
        ("piece", |r| (&r.1.1.piece).into()),
        ("loss_db_per_m", |r| r.1.1.loss_db_per_m.into()),
        ("uncertainty_db_per_m", |r| {
            r.1.1.uncertainty_db_per_m.into()
        }),
        ("trusted", |r| r.1.1.trusted.into()),
    ]
}

/// A cause of a result, with its position.
type Of<'a> = (&'a ResultReport, usize, &'a CauseReport);

fn budget<'a>() -> Vec<Field<Row<'a, Of<'a>>>> {
    vec![
        ("piece", |r| (&r.1.0.piece).into()),
        ("band", |r| (&r.1.0.band).into()),
        ("frequency_hz", |r| r.1.0.frequency_hz.into()),
        ("position", |r| (r.1.1 + 1).into()),
        ("cause", |r| (&r.1.2.cause).into()),
        ("standard_db", |r| r.1.2.standard_db.into()),
    ]
}

fn swr<'a>() -> Vec<Field<Row<'a, &'a SwrReport>>> {
    vec![
        ("band", |r| (&r.1.band).into()),
        ("frequency_hz", |r| r.1.frequency_hz.into()),
        ("reading", |r| r.1.reading.word().into()),
        ("piece", |r| r.1.piece.as_ref().into()),
        ("swr", |r| r.1.swr.into()),
        ("swr_low", |r| r.1.swr_low.into()),
        ("swr_high", |r| r.1.swr_high.into()),
        ("decimals", |r| r.1.decimals.into()),
        ("line", |r| r.1.line.into()),
        ("imported_from", |r| r.1.imported_from.as_ref().into()),
        ("imported_line", |r| r.1.imported_line.into()),
    ]
}

/// A run, with what was asked.
type RunOf<'a> = (&'a RunsReport, &'a RunsAtReport, &'a RunReport);

fn runs<'a>() -> Vec<Field<Row<'a, RunOf<'a>>>> {
    vec![
        ("length_m", |r| r.1.0.length_m.into()),
        ("frequency_hz", |r| r.1.1.frequency_hz.into()),
        ("rank", |r| r.1.2.rank.into()),
        ("sharing", |r| r.1.2.sharing.into()),
        ("piece", |r| (&r.1.2.piece).into()),
        ("loss_db", |r| r.1.2.loss_db.into()),
        ("uncertainty_db", |r| r.1.2.uncertainty_db.into()),
        ("power_w", |r| r.1.2.power_w.into()),
        ("power_uncertainty_w", |r| r.1.2.power_uncertainty_w.into()),
        ("more_db", |r| r.1.2.more_db.into()),
        ("more_uncertainty_db", |r| r.1.2.more_uncertainty_db.into()),
        ("less_w", |r| r.1.2.less_w.into()),
        ("less_uncertainty_w", |r| r.1.2.less_uncertainty_w.into()),
        ("inside", |r| r.1.2.inside.into()),
    ]
}

fn trends<'a>() -> Vec<Field<(&'a TrendReport, &'a DatedReport)>> {
    vec![
        ("piece", |r| (&r.0.piece).into()),
        ("cable", |r| (&r.0.cable).into()),
        ("date", |r| (&r.1.date).into()),
        ("ratio", |r| r.1.ratio.into()),
        ("ratio_uncertainty", |r| r.1.ratio_uncertainty.into()),
        ("ratio_per_year", |r| r.0.ratio_per_year.into()),
        ("ratio_per_year_uncertainty", |r| {
            r.0.ratio_per_year_uncertainty.into()
        }),
        ("direction", |r| r.0.direction.map(|d| d.word()).into()),
    ]
}
