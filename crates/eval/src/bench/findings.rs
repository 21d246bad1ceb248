//! What is wrong with readings on the bench.

use downlead_base::{Diagnostic, Loc, Severity, codes};
use downlead_physics::measure::{Drift, Loss};
use downlead_quantity::{db, decibel_signed, frequency, number, power};
use downlead_station::Attachment;
use downlead_station::model::{Accuracy, Instrument};
use downlead_station::session::ReadingKind;
use downlead_touchstone::Network;
use num_complex::Complex64;

use super::cells::InLine;
use super::gather::{Group, Taken};
use super::result::BenchBand;
use crate::instrument::instrument_db;
use crate::point::Point;

/// Drift between baselines worth a word, percent (common practice).
const DRIFT_PERCENT: f64 = 1.0;

/// Where a reading stands, in the text or in another file.
pub(super) struct Place {
    pub(super) loc: Loc,
    words: String,
    band: Box<str>,
}

impl Place {
    pub(super) fn new(t: &Taken<'_>, point: &Point) -> Self {
        Place {
            loc: t.value_loc,
            words: t.place(),
            band: point.band.clone(),
        }
    }

    fn finding(
        &self,
        code: &'static downlead_base::Code,
        message: impl AsRef<str>,
        label: &str,
    ) -> Diagnostic {
        Diagnostic::new(
            code,
            self.loc,
            format!("{}{}", self.words, message.as_ref()),
        )
        .at(label.to_owned())
    }
}

pub(super) fn outside_band(
    i: &Instrument,
    place: &Place,
    point: &Point,
    out: &mut Vec<Diagnostic>,
) -> bool {
    let Some((lo, hi)) = i.band else { return false };
    if (lo..=hi).contains(&point.hz) {
        return false;
    }
    out.push(
        place
            .finding(
                &codes::INSTRUMENT_OUTSIDE_BAND,
                format!(
                    "`{}` is good from {} to {}; {} lies outside, and the reading does not count.",
                    i.name.text,
                    frequency(lo),
                    frequency(hi),
                    frequency(point.hz)
                ),
                "outside the instrument's band",
            )
            .also(i.name.loc, "the instrument"),
    );
    true
}

/// Whether a reading lies above the instrument's scale and does not count.
pub(super) fn outside_scale(
    i: &Instrument,
    watts: f64,
    place: &Place,
    out: &mut Vec<Diagnostic>,
) -> bool {
    let Some(scale) = i.scale_w else { return false };
    if watts > scale {
        out.push(
            place
                .finding(
                    &codes::READING_IMPOSSIBLE,
                    format!(
                        "{} is more than the instrument's full scale of {}; the reading does not count.",
                        power(watts),
                        power(scale)
                    ),
                    "off the scale",
                )
                .also(i.name.loc, "the instrument"),
        );
        return true;
    }
    let of_scale = matches!(
        i.accuracy,
        Some(downlead_station::model::Accuracy::OfFullScale(_))
    );
    if of_scale && watts < 0.25 * scale {
        out.push(
            place
                .finding(
                    &codes::READING_LOW_ON_SCALE,
                    format!(
                        "{} on the {} range: the meter's error there is {} (k = 2).",
                        power(watts),
                        power(scale),
                        db(2.0 * instrument_db(i, watts))
                    ),
                    "lowest quarter of the scale",
                )
                .help("Use a lower range."),
        );
    }
    false
}

pub(super) fn time_backwards(place: &Place, now: f64, before: f64, out: &mut Vec<Diagnostic>) {
    out.push(
        place
            .finding(
                &codes::TIME_BACKWARDS,
                format!(
                    "On {}, a reading at {} min follows one at {} min.",
                    place.band,
                    number(now, 2),
                    number(before, 2)
                ),
                "earlier than the line above",
            )
            .help("Readings stand in the order they were taken, with the time since the session began. They are used at the times written."),
    );
}

pub(super) fn no_baseline(g: &Group<'_>, point: &Point, out: &mut Vec<Diagnostic>) {
    // a piece read with a meter at each end needs none
    let Some(t) = g.taken.iter().find(|t| {
        t.kind == ReadingKind::Through
            && t.input.is_none()
            && !matches!(t.shown, super::gather::TakenValue::File(_))
    }) else {
        return;
    };
    out.push(
        Place::new(t, point)
            .finding(
                &codes::NO_BASELINE,
                format!(
                    "On {}, there is no reading without the piece; power after it alone is no loss.",
                    with_frequency(point)
                ),
                "compared with what?",
            )
            .help("Add what the meter shows with the piece left out, before and after: `baseline 44.0 W at 0 min`."),
    );
}

pub(super) fn one_baseline(g: &Group<'_>, point: &Point, out: &mut Vec<Diagnostic>) {
    let base = g.taken.iter().find(|t| t.kind == ReadingKind::Baseline);
    let Some(t) = base else { return };
    let d = Place::new(t, point)
        .finding(
            &codes::NO_CLOSING_BASELINE,
            format!(
                "On {}, the baseline was read once: what the transmitter drifted meanwhile counts as loss.",
                point.band
            ),
            "read once",
        )
        .help("Read it again after the last piece, and give the times; drift between the two is then taken out.");
    // once for the band, however many pieces hang on it
    if !out.contains(&d) {
        out.push(d);
    }
}

pub(super) fn not_between(place: &Place, out: &mut Vec<Diagnostic>) {
    out.push(
        place
            .finding(
                &codes::NO_CLOSING_BASELINE,
                format!(
                    "On {}, this reading does not lie between two baselines; the nearest is taken as it is.",
                    place.band
                ),
                "no baseline after it, or none before",
            )
            .help("Read the baseline again after the last piece."),
    );
}

pub(super) fn drift(g: &Group<'_>, point: &Point, d: &Drift, out: &mut Vec<Diagnostic>) {
    if d.total_percent.is_nan() || d.total_percent.abs() <= DRIFT_PERCENT {
        return;
    }
    let Some(t) = g.taken.iter().rfind(|t| t.kind == ReadingKind::Baseline) else {
        return;
    };
    // what rows of a table share is one finding, told at its line
    let finding = Place::new(t, point)
        .finding(
            &codes::BASELINE_DRIFT,
            format!(
                "On {}, the baseline drifted by {} % in {} min ({} dB); it is taken out along a straight line in time.",
                point.band,
                number(d.total_percent, 1),
                number(d.minutes, 0),
                number(downlead_quantity::to_db(1.0 + d.total_percent / 100.0), 2),
            ),
            "drift",
        )
        .help("Let the transmitter warm up, or read the baseline more often.");
    if let Some(before) = out.iter_mut().find(|x| {
        t.from.is_some() && x.code.id == finding.code.id && x.primary.loc == finding.primary.loc
    }) {
        before.help.push(format!(
            "On {} it was {} %.",
            point.band,
            number(d.total_percent, 1)
        ));
        return;
    }
    out.push(finding);
}

/// A band with its frequency: readings of one band may lie apart.
fn with_frequency(point: &Point) -> String {
    let hz = frequency(point.hz);
    if *point.band == *hz {
        hz
    } else {
        format!("{}, {hz}", point.band)
    }
}

/// An error of full scale is one of watts on that scale; of a reading in dB it says nothing.
pub(super) fn decibel_on_a_scale(i: &Instrument, place: &Place, out: &mut Vec<Diagnostic>) -> bool {
    if !matches!(i.accuracy, Some(Accuracy::OfFullScale(_))) {
        return false;
    }
    out.push(
        place
            .finding(
                &codes::READING_IMPOSSIBLE,
                format!(
                    "`{}` is accurate to a share of its full scale in watts, of which a reading in dB tells nothing; the reading does not count.",
                    i.name.text
                ),
                "dB on a scale of watts",
            )
            .help("Write the power that was read, or name the instrument that shows dB: `with V1`."),
    );
    true
}

/// In what a reading was made in another way than the first of its piece.
pub(super) struct OtherWay {
    pub(super) meter: bool,
    /// Whether the first was read at both ends, where the two are not alike in that.
    pub(super) first_at_both_ends: Option<bool>,
}

/// A piece read once more in another way: with another meter, or at both ends.
pub(super) fn not_used(place: &Place, piece: &str, how: &OtherWay, out: &mut Vec<Diagnostic>) {
    let mut ways = Vec::new();
    if how.meter {
        ways.push("with another meter");
    }
    match how.first_at_both_ends {
        Some(true) => ways.push("at both ends"),
        Some(false) => ways.push("after it only, not at both ends"),
        None => {}
    }
    out.push(
        place
            .finding(
                &codes::READING_NOT_USED,
                format!(
                    "On {}, `{piece}` was read before {}; this reading takes no part.",
                    place.band,
                    ways.join(" and ")
                ),
                "takes no part",
            )
            .help("Readings of one piece made in one way (one meter after it, or the same two at its ends, either way round) are taken together. Put the others into a session of their own."),
    );
}

/// A pause before a reading that is far longer than all others of the band together, minutes.
pub(super) fn long_pause(place: &Place, pause: f64, others: f64, out: &mut Vec<Diagnostic>) {
    out.push(
        place
            .finding(
                &codes::READING_SLIP,
                format!(
                    "On {}, this reading was taken {} min after the one before, and all others within {} min: is the unit of its time right?",
                    place.band,
                    number(pause, 1),
                    number(others, 1)
                ),
                "minutes or hours?",
            )
            .help("A baseline tells the power at its time: between two that are hours apart nothing is known of the drift."),
    );
}

/// Losses of one piece that are further apart than anything but a slip explains: the least and the
/// largest, dB.
pub(super) fn far_apart(
    place: &Place,
    piece: &str,
    (least, most): (f64, f64),
    out: &mut Vec<Diagnostic>,
) {
    out.push(
        place
            .finding(
                &codes::READING_SLIP,
                format!(
                    "On {}, `{piece}` was read several times, and the losses are {} apart: {} and {}.",
                    place.band,
                    db(most - least),
                    db(least),
                    db(most)
                ),
                "a slip?",
            )
            .help("A mean of the two says nothing. Look at what was written down and at the plugs, and read it again."),
    );
}

/// A baseline with other adapters than the first of its band.
pub(super) fn other_adapters(place: &Place, out: &mut Vec<Diagnostic>) {
    out.push(
        place
            .finding(
                &codes::READING_NOT_USED,
                format!(
                    "On {}, this baseline was read with other adapters than the first; it takes no part.",
                    place.band
                ),
                "takes no part",
            )
            .help("Read all baselines of a band with the same adapters. What a piece has beside them is taken off."),
    );
}

/// Adapters at a reading that does not take them off.
pub(super) fn adapters_not_counted(place: &Place, out: &mut Vec<Diagnostic>) {
    out.push(
        place
            .finding(
                &codes::READING_NOT_USED,
                format!(
                    "On {}, the adapters of this reading are not taken off: that is done where power passes through a piece.",
                    place.band
                ),
                "its adapters do not count",
            )
            .help("Take their loss off by hand, or read the piece with a meter after it (`through`)."),
    );
}

/// A reading of an open or shorted end that another reading of the piece replaces.
pub(super) fn end_not_used(place: &Place, why: &str, out: &mut Vec<Diagnostic>) {
    out.push(
        place
            .finding(
                &codes::READING_NOT_USED,
                format!(
                    "On {}, this reading of an open or shorted end takes no part: {why}.",
                    place.band
                ),
                "takes no part",
            )
            .help("Put it into a session of its own to have it compared."),
    );
}

/// An open and a shorted end that give no loss: the same file twice, or the ends exchanged.
pub(super) fn no_loss(place: &Place, out: &mut Vec<Diagnostic>) {
    out.push(
        place
            .finding(
                &codes::READING_IMPOSSIBLE,
                format!(
                    "On {}, what comes back with the end open and shorted gives no loss: the two are the same, or no line's.",
                    place.band
                ),
                "gives no loss",
            )
            .help("Look whether both are of the same piece, one open and one shorted, and not one file twice."),
    );
}

/// A loss in dB among powers in W, or the reverse: the two have no reference in common.
pub(super) fn other_unit(place: &Place, t: &Taken<'_>, out: &mut Vec<Diagnostic>) {
    let in_db = matches!(t.shown, super::gather::TakenValue::Loss(_));
    let (this, other) = if in_db { ("dB", "W") } else { ("W", "dB") };
    let message = if t.kind == ReadingKind::Baseline {
        format!(
            "On {}, the baseline before is in {other} and this one in {this}; it takes no part.",
            place.band
        )
    } else {
        format!(
            "On {}, {} is in {other} and this reading in {this}; it takes no part.",
            place.band,
            if t.input.is_some() {
                "the power at the near end"
            } else {
                "the baseline"
            }
        )
    };
    out.push(
        place
            .finding(&codes::READING_NOT_USED, message, "takes no part")
            .help("A loss in dB is one against the instrument's own reference, and its baseline is in dB too; a power in W needs a baseline in W."),
    );
}

/// As much comes back as goes forward, or more.
pub(super) fn more_back(place: &Place, forward_w: f64, back_w: f64, out: &mut Vec<Diagnostic>) {
    out.push(
        place
            .finding(
                &codes::READING_IMPOSSIBLE,
                format!(
                    "On {}, {} reflected of {} forward: no more can come back than goes there.",
                    place.band,
                    power(back_w),
                    power(forward_w)
                ),
                "more comes back than goes forward",
            )
            .help("Look whether forward and reflected are in each other's place."),
    );
}

pub(super) fn above_baseline(place: &Place, loss: &Loss, out: &mut Vec<Diagnostic>) {
    out.push(
        place
            .finding(
                &codes::ABOVE_BASELINE,
                format!(
                    "On {}, more comes through than without the piece: a loss of {}.",
                    place.band,
                    decibel_signed(loss.db)
                ),
                "above the baseline",
            )
            .help("Look at the order of the readings, the range of the meter, and the joins of the baseline."),
    );
}

pub(super) fn not_equalised(place: &Place, out: &mut Vec<Diagnostic>) {
    out.push(
        place
            .finding(
                &codes::NOT_EQUALISED,
                format!("On {}, two meters are compared that were not read in line one after the other: their errors count in full.", place.band),
                "two meters",
            )
            .help("Put both in line with nothing between and add `equalise 44.0 W with W1, against 43.6 W with W2`."),
    );
}

/// Two meters read in line on one band only: how they differ is taken from there on others.
pub(super) fn equalised_elsewhere(
    pairs: &[InLine<'_>],
    used: &[(usize, usize)],
    bands: &[BenchBand],
    out: &mut Vec<Diagnostic>,
) {
    let mut done = Vec::new();
    for (from, _) in used {
        let Some(pair) = pairs.iter().find(|p| p.band == *from) else {
            continue;
        };
        if done.contains(from) {
            continue;
        }
        done.push(*from);
        let on: Vec<&str> = used
            .iter()
            .filter(|u| u.0 == *from)
            .map(|u| &*bands[u.1].band)
            .collect();
        let on = match &on[..] {
            [one] => (*one).to_owned(),
            [rest @ .., last] if on.len() <= 4 => format!("{} and {last}", rest.join(", ")),
            many => format!("{} bands", many.len()),
        };
        let mut d = Diagnostic::new(
            &codes::NOT_EQUALISED,
            pair.loc,
            format!(
                "The two meters were read in line on {} only; on {on} they are taken to differ by the same, which meters do only about.",
                bands[*from].band
            ),
        )
        .at("used on other bands too")
        .help("Read both in line on each band: `equalise 44.0 W with W1, against 43.6 W with W2`.");
        d.severity = Severity::Info;
        out.push(d);
    }
}

pub(super) fn one_end(place: &Place, out: &mut Vec<Diagnostic>) {
    out.push(
        place
            .finding(
                &codes::ONE_END_ONLY,
                format!("On {}, return loss was read with one end only: the cable's impedance makes it read too high with one and too low with the other, for which ± 0.1 dB is in the uncertainty (common practice).", place.band),
                "open or short only",
            )
            .help("Read the other one too; the mean of the two is right to some thousandths of a dB."),
    );
}

/// A figure of a network file at the frequency; says why there is none.
pub(super) fn of_network(
    a: &Attachment,
    ports: usize,
    point: &Point,
    place: &Place,
    out: &mut Vec<Diagnostic>,
    figure: impl Fn(&[Complex64]) -> f64,
) -> Option<f64> {
    if a.content.is_err() {
        return None;
    }
    let why = match a.network() {
        None => format!("`{}` holds no network that could be read.", a.path),
        Some(n) if n.ports() != ports => format!(
            "`{}` has {} port{}; {} here.",
            a.path,
            n.ports(),
            if n.ports() == 1 { "" } else { "s" },
            if ports == 1 {
                "one is needed".to_owned()
            } else {
                format!("{ports} are needed")
            }
        ),
        Some(n) => {
            let fifty = n
                .z0()
                .iter()
                .all(|z| (z - downlead_physics::net::R0).abs() < 1e-9);
            // what passes is read by magnitude and phase between the points of the file
            let at = n.between_hz(point.hz).map(|b| {
                if fifty {
                    return b.matrix;
                }
                Network::new(vec![point.hz], b.matrix, n.z0().to_vec())
                    .and_then(|one| one.re_referenced(&vec![downlead_physics::net::R0; ports]))
                    .map_or_else(|_| Vec::new(), |r| r.s().to_vec())
            });
            match at {
                Ok(s) if s.len() == ports * ports => {
                    let v = figure(&s);
                    if v.is_finite() {
                        return Some(v);
                    }
                    format!(
                        "`{}` has no finite figure at {}.",
                        a.path,
                        frequency(point.hz)
                    )
                }
                Ok(_) => format!("`{}` cannot be brought to 50 ohm.", a.path),
                Err(_) => {
                    let (lo, hi) = n.range_hz().unwrap_or((0.0, 0.0));
                    format!(
                        "`{}` reaches from {} to {}; {} lies outside.",
                        a.path,
                        frequency(lo),
                        frequency(hi),
                        frequency(point.hz)
                    )
                }
            }
        }
    };
    out.push(place.finding(&codes::NETWORK_FILE, why, "no figure from it"));
    None
}
