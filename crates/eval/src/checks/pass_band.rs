//! Whether a carrier goes through the right port of a device.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::frequency;
use downlead_station::Env;
use downlead_station::model::{BandKind, Part, PartData, PartKind};

use crate::point::Point;

fn inside(ranges: &[(f64, f64)], hz: f64) -> bool {
    ranges.iter().any(|(lo, hi)| (*lo..=*hi).contains(&hz))
}

fn ranges_words(ranges: &[(f64, f64)]) -> String {
    ranges
        .iter()
        .map(|(a, b)| format!("{} to {}", frequency(*a), frequency(*b)))
        .collect::<Vec<_>>()
        .join(", ")
}

pub(super) fn pass_band(
    env: &Env,
    part: &Part,
    port: Option<&str>,
    loc: Loc,
    point: &Point,
    out: &mut Vec<Diagnostic>,
) {
    let PartData::Device(d) = &part.data else {
        return;
    };
    let ports = if d.ports.is_empty() {
        d.class
            .as_ref()
            .and_then(|n| env.device(&n.text))
            .map_or(&[][..], |c| &c.device.ports)
    } else {
        &d.ports
    };
    let chosen = match port {
        Some(n) => ports.iter().find(|p| &*p.name.text == n),
        None => ports.iter().find(|p| p.name.text.is_empty()),
    };
    let Some(chosen) = chosen else { return };
    let tag = part.tag.as_ref().map_or(part.kind.word(), |t| &t.text);
    if !chosen.passes.is_empty() && !inside(&chosen.passes, point.hz) {
        let other = ports
            .iter()
            .find(|q| q.name.text != chosen.name.text && inside(&q.passes, point.hz));
        match other {
            Some(o) => {
                let mut diag = Diagnostic::new(
                    &codes::LEGS_SWAPPED,
                    loc,
                    format!(
                        "{} goes through `{tag}.{}`, which passes {}; it belongs through `{tag}.{}`.",
                        frequency(point.hz),
                        chosen.name.text,
                        ranges_words(&chosen.passes),
                        o.name.text
                    ),
                )
                .at("the wrong leg: this one stops the carrier")
                .also(part.loc, "the part");
                if port.is_some() {
                    diag = diag
                        .fix(
                            format!("write `{tag}.{}`", o.name.text),
                            loc,
                            format!("{tag}.{}", o.name.text),
                        )
                        .preferred();
                }
                out.push(diag);
            }
            None => out.push(
                Diagnostic::new(
                    &codes::OUTSIDE_PASS_BAND,
                    loc,
                    format!(
                        "`{tag}` passes {}; {} is outside.",
                        ranges_words(&chosen.passes),
                        frequency(point.hz)
                    ),
                )
                .at("outside the pass band")
                .also(part.loc, "the part")
                .help(
                    match [1e3, 1e-3, 1e6, 1e-6]
                        .iter()
                        .find(|k| inside(&chosen.passes, point.hz * **k))
                    {
                        Some(_) => {
                            "The frequency is off by a power of 1000: is it kHz, MHz or GHz?"
                        }
                        None => "Retune it, or correct the frequency; the loss there is not known.",
                    },
                ),
            ),
        }
        return;
    }
    // without pass bands, the names of the legs still say which is the higher one
    if matches!(part.kind, PartKind::Duplexer)
        && chosen.passes.is_empty()
        && let Some(BandKind::Pair {
            transmit: Some(t),
            receive: Some(r),
        }) = env.band(&point.band).map(|b| &b.kind)
    {
        let high = t.max(*r);
        let want = if (point.hz - high).abs() < 1.0 {
            "high"
        } else {
            "low"
        };
        let has = ports.iter().any(|q| &*q.name.text == want);
        if has
            && t != r
            && matches!(&*chosen.name.text, "high" | "low")
            && &*chosen.name.text != want
        {
            out.push(
                Diagnostic::new(
                    &codes::LEGS_SWAPPED,
                    loc,
                    format!(
                        "{} is the {} frequency of band `{}` but goes through `{tag}.{}`.",
                        frequency(point.hz),
                        if want == "high" { "higher" } else { "lower" },
                        point.band,
                        chosen.name.text
                    ),
                )
                .at("the wrong leg: this one stops the carrier")
                .fix(
                    format!("write `{tag}.{want}`"),
                    loc,
                    format!("{tag}.{want}"),
                )
                .preferred(),
            );
        }
    }
}
