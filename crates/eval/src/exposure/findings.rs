//! Findings about the exposure at spots.

use downlead_base::{Diagnostic, Severity, codes};
use downlead_quantity::{frequency, number};
use downlead_station::model::{RuleSet, Spot, SpotAt};

use super::sources::Radiator;
use super::{ExposureVerdict, Open, Refused, Source, SpotResult};

/// What must be said before anyone goes near an antenna.
const OFF_FIRST: &str =
    "Switch the transmitters off and lock them out before anyone goes there; or measure.";

fn percent(share: f64) -> String {
    format!("{} %", number(100.0 * share, 1))
}

/// Those above 5 % of their limit, which share a duty to act (47 CFR 1.1307(b)(5)).
fn above_five(r: &SpotResult) -> String {
    let all: Vec<String> = r
        .sources
        .iter()
        .filter_map(|s| Some((s, s.fraction.filter(|f| *f > 0.05)?)))
        .map(|(s, f)| format!("{} {}", s.who(), percent(f)))
        .collect();
    match all.is_empty() {
        true => "No transmitter is above 5 % of its limit there.".to_owned(),
        false => format!("Above 5 % of its limit: {}.", all.join(", ")),
    }
}

pub(super) fn of(r: &SpotResult, spot: &Spot, set: &RuleSet, out: &mut Vec<Diagnostic>) {
    let name = &spot.name.text;
    match r.verdict {
        ExposureVerdict::Met | ExposureVerdict::MetAlone => {}
        ExposureVerdict::NotMet | ExposureVerdict::CannotTell => {
            let (Some(sum), Some(upper)) = (r.sum, r.upper) else {
                return;
            };
            let over = r.verdict == ExposureVerdict::NotMet;
            let message = if over {
                format!(
                    "At `{name}` the fields are {} of the {} limits of {}, beyond the uncertainty.",
                    percent(sum),
                    spot.tier.word(),
                    set.name.text
                )
            } else {
                format!(
                    "At `{name}` the fields are {} of the {} limits of {}, with the uncertainty {}: cannot tell.",
                    percent(sum),
                    spot.tier.word(),
                    set.name.text,
                    percent(upper)
                )
            };
            let code = match over {
                true => &codes::EXPOSURE_EXCEEDED,
                false => &codes::EXPOSURE_CANNOT_TELL,
            };
            let mut d = Diagnostic::new(code, spot.name.loc, message)
                .at(if over { "over the limits" } else { "nearer than the uncertainty" })
                .help(above_five(r))
                .help(format!(
                    "All powers together may be {} of what they are, with the uncertainty allowed for; or keep people away from there.",
                    percent((1.0 / upper).min(1.0))
                ));
            // over by sure clauses alone it stays an error
            if over && r.sure_verdict() != ExposureVerdict::NotMet {
                d.severity = Severity::Warning;
                d = d.help("The text of a clause is of low confidence: read the rule before relying on this.");
            }
            if r.sources.iter().any(|s| s.refused.is_some()) {
                d = d.help("What is not judged there comes to it.");
            }
            out.push(d);
            unjudged(r, spot, set, out);
        }
        ExposureVerdict::Refused | ExposureVerdict::CannotJudge => {
            unjudged(r, spot, set, out);
            if r.sources.is_empty() {
                out.push(
                    Diagnostic::new(
                        &codes::EXPOSURE_CANNOT_JUDGE,
                        spot.name.loc,
                        format!("No transmit chain ends in an antenna, so nothing is judged at `{name}`."),
                    )
                    .at("nothing radiates"),
                );
            }
        }
    }
}

/// The sources of which no figure is computed.
fn unjudged(r: &SpotResult, spot: &Spot, set: &RuleSet, out: &mut Vec<Diagnostic>) {
    for s in r.sources.iter() {
        if let Some(why) = &s.refused {
            out.push(refused(spot, set, s, why));
        }
    }
}

fn refused(spot: &Spot, set: &RuleSet, s: &Source, why: &Refused) -> Diagnostic {
    let name = &spot.name.text;
    let (who, antenna) = (s.who(), &s.antenna);
    let d = |m: f64| format!("{} m", number(m, 2));
    let near = s.distance_m.map_or_else(String::new, d);
    let (code, message, help) = match why {
        Refused::WithinSize(size) => (
            &codes::EXPOSURE_CANNOT_JUDGE,
            format!(
                "`{name}` is {near} from `{antenna}`, closer than its own length of {}: no figure is computed for {who}.",
                d(*size)
            ),
            OFF_FIRST.to_owned(),
        ),
        Refused::Reactive(least) => (
            &codes::EXPOSURE_CANNOT_JUDGE,
            format!(
                "`{name}` is {near} from `{antenna}`, closer than λ/2π ({} at {}): no figure is computed for {who}.",
                d(*least),
                frequency(s.hz)
            ),
            if s.hz < 30e6 {
                format!("The electric and the magnetic field are to be measured there. {OFF_FIRST}")
            } else {
                OFF_FIRST.to_owned()
            },
        ),
        Refused::LowEfficiency => (
            &codes::EXPOSURE_CANNOT_JUDGE,
            format!(
                "`{antenna}` radiates less than half of its power: the fields near it are stronger than the formulas say, so nothing is computed for {who} at `{name}`."
            ),
            "Measure the electric and the magnetic field.".to_owned(),
        ),
        Refused::NoSize => (
            &codes::EXPOSURE_CANNOT_JUDGE,
            format!(
                "The length of `{antenna}` is not stated, so its distance from `{name}` is not known for {who}."
            ),
            format!("Add it to the antenna: `antenna {antenna} … size 2.7 m`."),
        ),
        Refused::NoHeight => (
            &codes::SPOT_WITHOUT_DISTANCE,
            format!(
                "The height of `{antenna}` is not stated, so its distance from `{name}` is not known for {who}."
            ),
            format!(
                "Add it to the antenna: `antenna {antenna} … height 26 m agl`; or say the distance: `… 12 m from {antenna}`."
            ),
        ),
        Refused::NoDistance => {
            let of = s
                .station
                .as_ref()
                .map_or_else(String::new, |st| format!(" of {st}"));
            (
                &codes::SPOT_WITHOUT_DISTANCE,
                format!("`{name}` says nothing of `{antenna}`{of}."),
                format!("Add `… m from {antenna}{of}`, or place the spot with `out` and `agl`."),
            )
        }
        Refused::NoEirp => (
            &codes::EXPOSURE_CANNOT_JUDGE,
            format!("The EIRP of {who} could not be computed, so nothing is judged at `{name}`."),
            "State what its chain lacks: the power, each loss, the antenna's gain.".to_owned(),
        ),
        Refused::NoClause => (
            &codes::EXPOSURE_CANNOT_JUDGE,
            format!(
                "{} says nothing of {} exposure at {}, so {who} is not judged at `{name}`. This is not \"met\".",
                set.name.text,
                spot.tier.word(),
                frequency(s.hz)
            ),
            "Put the station under rules that have a limit there.".to_owned(),
        ),
    };
    Diagnostic::new(code, spot.name.loc, message)
        .at("not judged")
        .help(help)
}

/// What may radiate on the site and is not known: said once for all spots, at the first.
pub(super) fn open(spots: &[Spot], open: &[Open], out: &mut Vec<Diagnostic>) {
    let Some(first) = spots.first() else { return };
    let names: Vec<String> = spots.iter().map(|s| format!("`{}`", s.name.text)).collect();
    let names = names.join(", ");
    for o in open {
        let (message, help) = match o {
            Open::Station(n) => (
                format!(
                    "`{n}` stands on the same site, and nothing of it is known to radiate: there is no sum at {names}."
                ),
                format!(
                    "Define the station with what is known of it, and a transmit chain that ends in its antenna; or remove `beside {n}`."
                ),
            ),
            Open::Text(n) => (
                format!(
                    "A line of `{n}` has an error, and what it sends may be missing: there is no sum at {names}."
                ),
                "Correct the lines of the station that are reported.".to_owned(),
            ),
            Open::Chain(c) => (
                format!("The chain `{c}` has no result, so there is no sum at {names}."),
                "Correct what the chain is reported for: its direction, its beginning, its band."
                    .to_owned(),
            ),
        };
        out.push(
            Diagnostic::new(&codes::EXPOSURE_CANNOT_JUDGE, first.name.loc, message)
                .at("not judged")
                .help(help),
        );
    }
}

/// Antennas that a spot names and that no transmit chain of the site ends in.
pub(super) fn unknown_antennas(spot: &Spot, all: &[Radiator<'_>], out: &mut Vec<Diagnostic>) {
    let SpotAt::From(named) = &spot.at else {
        return;
    };
    for (_, antenna, station) in named {
        let station = station.as_ref().map(|s| &*s.text);
        let radiates = all
            .iter()
            .any(|r| r.station == station && r.antennas.iter().any(|a| *a.tag == *antenna.text));
        if radiates {
            continue;
        }
        let of = station.map_or_else(String::new, |s| format!(" of {s}"));
        out.push(
            Diagnostic::new(
                &codes::SPOT_WITHOUT_DISTANCE,
                antenna.loc,
                format!(
                    "No transmit chain of the site ends in `{}`{of}; the distance is not used.",
                    antenna.text
                ),
            )
            .at("radiates nothing")
            .help(
                "Name the antennas of the transmit chains; one of a neighbour as `A9 of harbour`.",
            ),
        );
    }
}

/// A spot that no rules bear on.
pub(super) fn without_rules(spot: &Spot, out: &mut Vec<Diagnostic>) {
    out.push(
        Diagnostic::new(
            &codes::EXPOSURE_CANNOT_JUDGE,
            spot.name.loc,
            format!(
                "The station is under no rules with limits of exposure, so nothing is judged at `{}`.",
                spot.name.text
            ),
        )
        .at("not judged")
        .help("Put it under some: `under NAME`. The library has `us-exposure`, `icnirp-exposure`, `eu-exposure` and `ca-exposure`; your own are a block `rules NAME { limit 2 W/m2 on 30 MHz to 300 MHz, public, … }`."),
    );
}
