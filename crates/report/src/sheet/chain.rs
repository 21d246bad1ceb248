//! Tables of chains.

use crate::shape::chain::{
    BandReport, BudgetReport, ChainReport, LimitReport, LogReport, LogRowReport, NodeReport,
    ReadingReport, Report, StationReport, WetReport,
};
use crate::write::csv::{Field, Value, csv};

/// Which table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ChainTable {
    /// Parts.
    Nodes,
    /// Limits.
    Limits,
    /// Readings, rows of logs among them.
    Readings,
    /// Causes of the uncertainty.
    Budget,
    /// Totals.
    Chains,
}

/// A chain on a band.
#[derive(Clone, Copy)]
struct Band<'a> {
    station: &'a StationReport,
    chain: &'a ChainReport,
    band: &'a BandReport,
}

/// A row: of which band, and what.
type Row<'a, T> = (Band<'a>, T);

/// One table.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub fn chain(report: &Report, which: ChainTable) -> Result<String, csv::Error> {
    let bands = report.stations.iter().flat_map(|station| {
        station.chains.iter().flat_map(move |chain| {
            let bands = chain.bands.iter();
            bands.map(move |band| Band {
                station,
                chain,
                band,
            })
        })
    });
    match which {
        ChainTable::Nodes => of(bands, nodes(), |b| b.nodes.iter().enumerate().collect()),
        ChainTable::Limits => of(bands, limits(), |b| b.limits.iter().collect()),
        ChainTable::Readings => of(bands, readings(), all_readings),
        ChainTable::Budget => of(bands, budget(), |b| b.budget.iter().enumerate().collect()),
        ChainTable::Chains => of(bands, totals(), |_| vec![()]),
    }
}

fn of<'a, T>(
    bands: impl Iterator<Item = Band<'a>>,
    own: Vec<Field<Row<'a, T>>>,
    rows: fn(&'a BandReport) -> Vec<T>,
) -> Result<String, csv::Error> {
    let mut fields = keys();
    fields.extend(own);
    let rows: Vec<Row<'a, T>> = bands
        .flat_map(|b| rows(b.band).into_iter().map(move |t| (b, t)))
        .collect();
    csv(&fields, &rows)
}

fn keys<'a, T>() -> Vec<Field<Row<'a, T>>> {
    vec![
        ("station", |r| (&r.0.station.name).into()),
        ("chain", |r| (&r.0.chain.name).into()),
        ("direction", |r| r.0.chain.direction.word().into()),
        ("band", |r| (&r.0.band.band).into()),
        ("point", |r| r.0.band.point.map(|p| p.word()).into()),
        ("frequency_hz", |r| r.0.band.frequency_hz.into()),
    ]
}

fn nodes<'a>() -> Vec<Field<Row<'a, (usize, &'a NodeReport)>>> {
    vec![
        ("position", |r| (r.1.0 + 1).into()),
        ("part", |r| (&r.1.1.part).into()),
        ("kind", |r| r.1.1.kind.word().into()),
        ("port", |r| r.1.1.port.as_ref().into()),
        ("branch", |r| r.1.1.branch.as_ref().into()),
        ("loss_db", |r| r.1.1.loss_db.into()),
        ("cumulative_loss_db", |r| r.1.1.cumulative_loss_db.into()),
        ("power_w", |r| r.1.1.power_w.into()),
        ("power_dbm", |r| r.1.1.power_dbm.into()),
        ("forward_w", |r| r.1.1.forward_w.into()),
        ("uncertainty_db", |r| r.1.1.uncertainty_db.into()),
        ("swr", |r| r.1.1.swr.into()),
        ("heat_w", |r| r.1.1.heat_w.into()),
        ("basis", |r| r.1.1.basis.word().into()),
        ("source", |r| r.1.1.source.as_ref().into()),
        ("file", |r| (&r.1.1.file).into()),
        ("line", |r| r.1.1.line.into()),
        ("chain_line", |r| r.1.1.chain_line.into()),
        ("impedance_ohm", |r| r.1.1.impedance_ohm.into()),
        ("velocity_factor", |r| r.1.1.velocity_factor.into()),
        ("noise_figure_db", |r| r.1.1.noise_figure_db.into()),
        ("temperature_c", |r| r.1.1.temperature_c.into()),
    ]
}

fn limits<'a>() -> Vec<Field<Row<'a, &'a LimitReport>>> {
    vec![
        ("quantity", |r| r.1.quantity.word().into()),
        ("limit_w", |r| r.1.limit_w.into()),
        ("value_w", |r| r.1.value_w.into()),
        ("margin_db", |r| r.1.margin_db.into()),
        ("uncertainty_db", |r| r.1.uncertainty_db.into()),
        ("verdict", |r| r.1.verdict.word().into()),
        ("safe_setting_w", |r| r.1.safe_setting_w.into()),
        ("source", |r| r.1.source.as_ref().into()),
        ("line", |r| r.1.line.into()),
        ("probability_exceeded", |r| r.1.probability_exceeded.into()),
        ("file", |r| (&r.1.file).into()),
    ]
}

/// A reading, alone or as a row of a log, which is at the line of its statement.
enum Read<'a> {
    Alone(&'a ReadingReport),
    Logged(&'a LogReport, &'a LogRowReport),
}

fn all_readings(b: &BandReport) -> Vec<Read<'_>> {
    let logged = b
        .logs
        .iter()
        .flat_map(|l| l.rows.iter().map(move |r| Read::Logged(l, r)));
    b.readings.iter().map(Read::Alone).chain(logged).collect()
}

fn readings<'a>() -> Vec<Field<Row<'a, Read<'a>>>> {
    vec![
        ("quantity", |r| match &r.1 {
            Read::Alone(x) => x.quantity.word().into(),
            Read::Logged(_, x) => x.quantity.word().into(),
        }),
        ("read_w", |r| match &r.1 {
            Read::Alone(x) => x.read_w.into(),
            Read::Logged(_, x) => x.read_w.into(),
        }),
        ("expected_w", |r| match &r.1 {
            Read::Alone(x) => x.expected_w.into(),
            Read::Logged(_, x) => x.expected_w.into(),
        }),
        ("read_swr", |r| match &r.1 {
            Read::Alone(x) => x.read_swr.into(),
            Read::Logged(_, x) => x.read_swr.into(),
        }),
        ("expected_swr", |r| match &r.1 {
            Read::Alone(x) => x.expected_swr.into(),
            Read::Logged(_, x) => x.expected_swr.into(),
        }),
        ("difference_db", |r| match &r.1 {
            Read::Alone(x) => x.difference_db.into(),
            Read::Logged(_, x) => x.difference_db.into(),
        }),
        ("uncertainty_db", |r| match &r.1 {
            Read::Alone(x) => x.uncertainty_db.into(),
            Read::Logged(_, x) => x.uncertainty_db.into(),
        }),
        ("verdict", |r| match &r.1 {
            Read::Alone(x) => x.verdict.word().into(),
            Read::Logged(_, x) => x.verdict.map(|v| v.word()).into(),
        }),
        ("date", |r| match &r.1 {
            Read::Alone(x) => x.date.as_ref().into(),
            Read::Logged(_, x) => (&x.date).into(),
        }),
        ("instrument", |r| match &r.1 {
            Read::Alone(x) => x.instrument.as_ref().into(),
            Read::Logged(_, x) => x.instrument.as_ref().into(),
        }),
        ("line", |r| match &r.1 {
            Read::Alone(x) => x.line.into(),
            Read::Logged(l, _) => l.line.into(),
        }),
        ("file", |r| (&r.0.chain.file).into()),
        ("older_than", |r| match &r.1 {
            Read::Alone(_) => None::<&String>.into(),
            Read::Logged(_, x) => x.older_than.as_ref().into(),
        }),
    ]
}

fn budget<'a>() -> Vec<Field<Row<'a, (usize, &'a BudgetReport)>>> {
    vec![
        ("position", |r| (r.1.0 + 1).into()),
        ("cause", |r| (&r.1.1.cause.words).into()),
        ("standard_db", |r| r.1.1.standard_db.into()),
        ("share", |r| r.1.1.share.into()),
        ("file", |r| (&r.0.chain.file).into()),
    ]
}

fn wet(b: &BandReport, of: fn(&WetReport) -> Option<f64>) -> Value {
    b.wet.as_ref().and_then(of).into()
}

fn totals<'a>() -> Vec<Field<Row<'a, ()>>> {
    vec![
        ("complete", |r| r.0.band.complete.into()),
        ("power_mode", |r| r.0.band.power_mode.word().into()),
        ("total_loss_db", |r| r.0.band.total_loss_db.into()),
        ("antenna_w", |r| r.0.band.antenna_w.into()),
        ("antenna_mean_w", |r| r.0.band.antenna_mean_w.into()),
        ("erp_w", |r| r.0.band.erp_w.into()),
        ("eirp_w", |r| r.0.band.eirp_w.into()),
        ("uncertainty_db", |r| r.0.band.uncertainty_db.into()),
        ("loss_worst_low_db", |r| {
            r.0.band.loss_worst_db.map(|w| w[0]).into()
        }),
        ("loss_worst_high_db", |r| {
            r.0.band.loss_worst_db.map(|w| w[1]).into()
        }),
        ("wet_extra_db", |r| r.0.band.wet_extra_db.into()),
        ("transmitter_swr", |r| r.0.band.transmitter_swr.into()),
        ("transmitter_swr_worst", |r| {
            r.0.band.transmitter_swr_worst.into()
        }),
        ("sensitivity_dbm", |r| r.0.band.sensitivity_dbm.into()),
        ("noise_figure_db", |r| r.0.band.noise_figure_db.into()),
        ("file", |r| (&r.0.chain.file).into()),
        ("line", |r| r.0.chain.line.into()),
        ("interval_low_db", |r| {
            r.0.band.interval_db.map(|w| w[0]).into()
        }),
        ("interval_high_db", |r| {
            r.0.band.interval_db.map(|w| w[1]).into()
        }),
        ("method", |r| r.0.band.method.map(|m| m.word()).into()),
        ("loss_floor_db", |r| r.0.band.loss_floor_db.into()),
        ("wet_antenna_w", |r| wet(r.0.band, |w| w.antenna_w)),
        ("wet_erp_w", |r| wet(r.0.band, |w| w.erp_w)),
        ("wet_eirp_w", |r| wet(r.0.band, |w| w.eirp_w)),
        ("erp_mean_w", |r| r.0.band.erp_mean_w.into()),
        ("eirp_mean_w", |r| r.0.band.eirp_mean_w.into()),
    ]
}
