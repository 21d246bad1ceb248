//! Where a station's chains take the rows of a log: after which part each `readings from` stands.

use downlead_base::Loc;
use downlead_station::Env;
use downlead_station::attach::Row;
use downlead_station::model::{Name, Node, PartKind, Station, Step};

use crate::point::{Point, band_matches, band_named};
use crate::walk::{Stop, walk};

/// A `readings from` of a transmit chain.
pub(crate) struct LogPlace<'m> {
    /// The statement.
    pub(crate) loc: Loc,
    /// Its file.
    pub(crate) file: &'m Name,
    /// Bands it holds on (empty: all).
    pub(crate) on: &'m [Name],
    /// Tag of the part before it.
    pub(crate) after: Option<&'m str>,
    /// Whether no line that could not be understood stands between the two.
    pub(crate) certain: bool,
}

/// The logs of a transmit chain, those of its branches included.
pub(crate) fn log_places<'m>(steps: &'m [Step], station: Option<&'m Station>) -> Vec<LogPlace<'m>> {
    let mut out = Vec::new();
    // most chains have none
    if any(steps) {
        gather(steps, station, (None, true), &mut out);
    }
    out
}

fn any(steps: &[Step]) -> bool {
    steps.iter().any(|s| match s {
        Step::Node(n, _) => matches!(**n, Node::Log { .. }),
        Step::Part { branches, .. } | Step::Use { branches, .. } => {
            branches.iter().any(|b| any(&b.steps))
        }
        Step::Broken(_) => false,
    })
}

fn gather<'m>(
    steps: &'m [Step],
    station: Option<&'m Station>,
    mut before: (Option<&'m str>, bool),
    out: &mut Vec<LogPlace<'m>>,
) {
    // findings about the lines are made where the chain is evaluated
    for stop in walk(steps, station, &mut Vec::new()) {
        match stop {
            Stop::Gap => before.1 = false,
            Stop::Node(Node::Log { file, on, .. }, loc) => out.push(LogPlace {
                loc,
                file,
                on,
                after: before.0,
                certain: before.1,
            }),
            Stop::Node(..) => {}
            Stop::Part { part, branches, .. } => {
                // a statement after the end of a chain is about the power into it
                let ends = matches!(part.kind, PartKind::Antenna | PartKind::Load);
                if let (Some(tag), false) = (&part.tag, ends) {
                    let parts = station.map_or(&[][..], |s| &s.parts);
                    let of_station = parts.iter().any(|p| std::ptr::eq(p, part));
                    before = (of_station.then_some(&*tag.text), true);
                }
                for b in branches {
                    gather(&b.steps, station, before, out);
                }
            }
        }
    }
}

/// Whether a row was read on the band of a point, or names none.
pub(crate) fn on_band(row: &Row, point: &Point, env: &Env) -> bool {
    match (&row.band, row.hz) {
        (Some(b), _) => band_matches(band_named(b, env).unwrap_or(b), point, env),
        (None, Some((hz, _))) => (hz / point.hz - 1.0).abs() < 1e-4,
        (None, None) => true,
    }
}
