//! The report as CSV: one table at a time, units in the column names, full precision.

use super::cells::{maybe, number, table, text};
use crate::args::Table;
use crate::model::{BandReport, ChainReport, Report, StationReport, WetReport};

/// One table. Column names stay; new columns are added at the end.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub(crate) fn csv(report: &Report, which: Table) -> Result<String, csv::Error> {
    let mut head: Vec<&str> = KEYS.to_vec();
    head.extend(match which {
        Table::Nodes => NODES,
        Table::Limits => LIMITS,
        Table::Readings => READINGS,
        Table::Budget => BUDGET,
        Table::Chains => CHAINS,
    });
    let mut all = Vec::new();
    for station in &report.stations {
        for chain in &station.chains {
            for band in &chain.bands {
                let keys = keys(station, chain, band);
                let of = rows(chain, band, which);
                all.extend(
                    of.into_iter()
                        .map(|row| keys.iter().cloned().chain(row).collect()),
                );
            }
        }
    }
    table(&head, all)
}

const KEYS: [&str; 6] = [
    "station",
    "chain",
    "direction",
    "band",
    "point",
    "frequency_hz",
];

const NODES: &[&str] = &[
    "position",
    "part",
    "kind",
    "port",
    "branch",
    "loss_db",
    "cumulative_loss_db",
    "power_w",
    "power_dbm",
    "forward_w",
    "uncertainty_db",
    "swr",
    "heat_w",
    "basis",
    "source",
    "file",
    "line",
    "chain_line",
    "impedance_ohm",
    "velocity_factor",
    "noise_figure_db",
    "temperature_c",
];

const LIMITS: &[&str] = &[
    "quantity",
    "limit_w",
    "value_w",
    "margin_db",
    "uncertainty_db",
    "verdict",
    "safe_setting_w",
    "source",
    "line",
    "probability_exceeded",
];

const READINGS: &[&str] = &[
    "quantity",
    "read_w",
    "expected_w",
    "read_swr",
    "expected_swr",
    "difference_db",
    "uncertainty_db",
    "verdict",
    "date",
    "instrument",
    "line",
];

const BUDGET: &[&str] = &["position", "cause", "standard_db", "share"];

const CHAINS: &[&str] = &[
    "complete",
    "power_mode",
    "total_loss_db",
    "antenna_w",
    "antenna_mean_w",
    "erp_w",
    "eirp_w",
    "uncertainty_db",
    "loss_worst_low_db",
    "loss_worst_high_db",
    "wet_extra_db",
    "transmitter_swr",
    "transmitter_swr_worst",
    "sensitivity_dbm",
    "noise_figure_db",
    "file",
    "line",
    "interval_low_db",
    "interval_high_db",
    "method",
    "loss_floor_db",
    "wet_antenna_w",
    "wet_erp_w",
    "wet_eirp_w",
    "erp_mean_w",
    "eirp_mean_w",
];

fn keys(station: &StationReport, chain: &ChainReport, band: &BandReport) -> [String; 6] {
    [
        station.name.clone(),
        chain.name.clone(),
        chain.direction.to_owned(),
        band.band.clone(),
        band.point.unwrap_or_default().to_owned(),
        number(band.frequency_hz),
    ]
}

fn rows(chain: &ChainReport, band: &BandReport, which: Table) -> Vec<Vec<String>> {
    match which {
        Table::Nodes => nodes(band),
        Table::Limits => limits(band),
        Table::Readings => readings(band),
        Table::Budget => budget(band),
        Table::Chains => vec![totals(chain, band)],
    }
}

fn nodes(band: &BandReport) -> Vec<Vec<String>> {
    band.nodes
        .iter()
        .enumerate()
        .map(|(i, n)| {
            vec![
                (i + 1).to_string(),
                n.part.clone(),
                n.kind.to_owned(),
                text(n.port.as_ref()),
                text(n.branch.as_ref()),
                maybe(n.loss_db),
                maybe(n.cumulative_loss_db),
                maybe(n.power_w),
                maybe(n.power_dbm),
                maybe(n.forward_w),
                maybe(n.uncertainty_db),
                maybe(n.swr),
                maybe(n.heat_w),
                n.basis.to_owned(),
                text(n.source.as_ref()),
                n.file.clone(),
                n.line.to_string(),
                n.chain_line.to_string(),
                maybe(n.impedance_ohm),
                maybe(n.velocity_factor),
                maybe(n.noise_figure_db),
                maybe(n.temperature_c),
            ]
        })
        .collect()
}

fn limits(band: &BandReport) -> Vec<Vec<String>> {
    band.limits
        .iter()
        .map(|l| {
            vec![
                l.quantity.to_owned(),
                number(l.limit_w),
                number(l.value_w),
                number(l.margin_db),
                number(l.uncertainty_db),
                l.verdict.to_owned(),
                maybe(l.safe_setting_w),
                text(l.source.as_ref()),
                l.line.to_string(),
                number(l.probability_exceeded),
            ]
        })
        .collect()
}

fn readings(band: &BandReport) -> Vec<Vec<String>> {
    let here = band.readings.iter().map(|r| {
        vec![
            r.quantity.to_owned(),
            maybe(r.read_w),
            maybe(r.expected_w),
            maybe(r.read_swr),
            maybe(r.expected_swr),
            number(r.difference_db),
            number(r.uncertainty_db),
            r.verdict.to_owned(),
            text(r.date.as_ref()),
            text(r.instrument.as_ref()),
            r.line.to_string(),
        ]
    });
    // rows of a log are readings too, each at the line of its statement
    let logged = band.logs.iter().flat_map(|l| {
        l.rows.iter().map(|r| {
            vec![
                r.quantity.to_owned(),
                maybe(r.read_w),
                maybe(r.expected_w),
                maybe(r.read_swr),
                maybe(r.expected_swr),
                maybe(r.difference_db),
                maybe(r.uncertainty_db),
                r.verdict.unwrap_or_default().to_owned(),
                r.date.clone(),
                text(r.instrument.as_ref()),
                l.line.to_string(),
            ]
        })
    });
    here.chain(logged).collect()
}

fn budget(band: &BandReport) -> Vec<Vec<String>> {
    band.budget
        .iter()
        .enumerate()
        .map(|(i, b)| {
            vec![
                (i + 1).to_string(),
                b.cause.clone(),
                number(b.standard_db),
                number(b.share),
            ]
        })
        .collect()
}

fn totals(chain: &ChainReport, b: &BandReport) -> Vec<String> {
    let [low, high] = b
        .loss_worst_db
        .map_or([None, None], |[low, high]| [Some(low), Some(high)]);
    let [from, to] = b
        .interval_db
        .map_or([None, None], |[from, to]| [Some(from), Some(to)]);
    let wet = |of: fn(&WetReport) -> Option<f64>| maybe(b.wet.as_ref().and_then(of));
    vec![
        b.complete.to_string(),
        b.power_mode.to_owned(),
        maybe(b.total_loss_db),
        maybe(b.antenna_w),
        maybe(b.antenna_mean_w),
        maybe(b.erp_w),
        maybe(b.eirp_w),
        maybe(b.uncertainty_db),
        maybe(low),
        maybe(high),
        maybe(b.wet_extra_db),
        maybe(b.transmitter_swr),
        maybe(b.transmitter_swr_worst),
        maybe(b.sensitivity_dbm),
        maybe(b.noise_figure_db),
        chain.file.clone(),
        chain.line.to_string(),
        maybe(from),
        maybe(to),
        b.method.unwrap_or_default().to_owned(),
        maybe(b.loss_floor_db),
        wet(|w| w.antenna_w),
        wet(|w| w.erp_w),
        wet(|w| w.eirp_w),
        maybe(b.erp_mean_w),
        maybe(b.eirp_mean_w),
    ]
}
