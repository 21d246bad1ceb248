//! From the report to cards.

use downlead_eval::instrument::{between_readings_db, meter_of};
use downlead_eval::result::CauseKind;
use downlead_physics::measure::Meter;
use downlead_quantity::{DB_PER_RELATIVE, from_db, w_to_dbm};
use downlead_station::Env;
use downlead_station::model::{Direction, Instrument, PartKind};

use crate::shape::card::{Card, Earlier, TestPoint};
use crate::shape::chain::{
    BandReport, ChainReport, NodeReport, ReadingReport, Report, StationReport,
};
use crate::shape::word::Wave;

/// The instruments of the files, and the one the command line names.
pub struct Meters<'s> {
    /// What the files can see.
    pub envs: Vec<&'s Env>,
    /// Meter to be taken to the site.
    pub with: Option<&'s str>,
}

impl Meters<'_> {
    /// An instrument by name.
    pub fn named(&self, name: &str) -> Option<&Instrument> {
        self.envs.iter().find_map(|e| e.instrument(name))
    }
}

/// One card for every transmit chain and band.
pub fn cards(report: &Report, meters: &Meters<'_>) -> Vec<Card> {
    let mut out = Vec::new();
    for station in &report.stations {
        for chain in station
            .chains
            .iter()
            .filter(|c| c.direction == Direction::Transmit)
        {
            out.extend(chain.bands.iter().map(|b| card(station, chain, b, meters)));
        }
    }
    out
}

fn card(
    station: &StationReport,
    chain: &ChainReport,
    band: &BandReport,
    meters: &Meters<'_>,
) -> Card {
    let read_with = band.readings.iter().find_map(|r| r.instrument.as_deref());
    let meter = meters.with.or(read_with).and_then(|n| meters.named(n));
    // a meter that also set the transmitter errs alike at both, and that much of it cancels
    let set_db = band
        .budget
        .iter()
        .find(|b| {
            b.cause.kind == CauseKind::Instrument
                && meter.is_some_and(|m| *m.name.text == *b.cause.name)
        })
        .map_or(0.0, |b| b.standard_db);
    Card {
        station: station.name.clone(),
        title: station.title.clone(),
        chain: chain.name.clone(),
        band: band.band.clone(),
        point: band.point,
        frequency_hz: band.frequency_hz,
        file: chain.file.clone(),
        line: chain.line,
        instrument: meter.map(|i| i.name.text.to_string()),
        instrument_set_power: set_db > 0.0,
        points: points(band, meter, set_db),
        assumptions: band.assumptions.clone(),
    }
}

/// What is no place of its own: a join belongs to the gap it is in.
fn joins(node: &NodeReport) -> bool {
    node.kind.is_join() || node.kind.is(PartKind::Connector)
}

fn points(band: &BandReport, meter: Option<&Instrument>, set_db: f64) -> Vec<TestPoint> {
    let parts: Vec<&NodeReport> = band.nodes.iter().filter(|n| !joins(n)).collect();
    let mut out = Vec::new();
    for (i, part) in parts.iter().enumerate() {
        let name = part.name();
        let next = parts.get(i + 1).filter(|n| n.branch == part.branch);
        let end = |n: &NodeReport| n.kind.is(PartKind::Antenna) || n.kind.is(PartKind::Load);
        if end(part) {
            continue;
        }
        let at = match next {
            Some(n) if end(n) => format!("before {}", n.name()),
            _ => format!("after {name}"),
        };
        let here: Vec<&ReadingReport> = band
            .readings
            .iter()
            .filter(|r| belongs(r, &parts).is_some_and(|p| std::ptr::eq(p, *part)))
            .collect();
        out.push(point(at, part, &here, meter, set_db));
    }
    out
}

/// The part behind which a reading was taken: the last one above it. Where several stand on its
/// line, the one with the nearest power.
fn belongs<'a>(r: &ReadingReport, parts: &[&'a NodeReport]) -> Option<&'a NodeReport> {
    let off = |p: &NodeReport| match (forward(p), r.expected_w) {
        (Some(w), Some(e)) => downlead_quantity::to_db(w / e).abs(),
        _ => f64::INFINITY,
    };
    let on_line = parts.iter().copied().filter(|p| p.chain_line == r.line);
    on_line
        .min_by(|a, b| off(a).total_cmp(&off(b)))
        .or_else(|| parts.iter().copied().rfind(|p| p.chain_line < r.line))
}

fn forward(node: &NodeReport) -> Option<f64> {
    node.forward_w.or(node.power_w)
}

fn point(
    at: String,
    part: &NodeReport,
    here: &[&ReadingReport],
    meter: Option<&Instrument>,
    set_db: f64,
) -> TestPoint {
    // where the text reads, its own figures hold: the joins up to there are in them
    let own = here.iter().find(|r| {
        r.quantity == Wave::Forward
            && meter.is_none_or(|m| r.instrument.as_deref() == Some(&*m.name.text))
    });
    let (watts, u) = match own {
        Some(r) => (r.expected_w, Some(r.uncertainty_db)),
        None => {
            let watts = forward(part);
            let u = part.forward_uncertainty_db.zip(watts).map(|(u, w)| {
                let own = meter.map_or(0.0, |m| DB_PER_RELATIVE * errors(m).u_relative(w));
                let scatter = meter
                    .filter(|_| set_db > 0.0)
                    .map_or(0.0, |m| between_readings_db(m, w));
                let rest = (0.25 * u * u - set_db * set_db).max(0.0);
                2.0 * libm::sqrt(rest + (set_db - own) * (set_db - own) + scatter * scatter)
            });
            (watts, u)
        }
    };
    let watts = watts.filter(|w| *w > 0.0);
    let span = watts.zip(u);
    TestPoint {
        at,
        branch: part.branch.clone(),
        forward_w: watts,
        forward_dbm: watts.map(w_to_dbm),
        low_w: span.map(|(w, u)| w * from_db(-u)),
        high_w: span.map(|(w, u)| w * from_db(u)),
        uncertainty_db: watts.and(u),
        swr: part.swr,
        read: here
            .iter()
            .map(|r| Earlier {
                quantity: r.quantity,
                read_w: r.read_w,
                read_swr: r.read_swr,
                date: r.date.clone(),
                instrument: r.instrument.clone(),
                verdict: r.verdict,
            })
            .collect(),
    }
}

/// An instrument's errors for one lone reading.
fn errors(i: &Instrument) -> Meter {
    // a stated accuracy holds for one reading as it stands, its linearity and scatter with it
    Meter {
        u_linearity: 0.0,
        u_repeatability: 0.0,
        ..meter_of(i)
    }
}
