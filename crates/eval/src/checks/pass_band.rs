//! Whether a carrier goes through the right port of a device.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::frequency;
use downlead_station::Env;
use downlead_station::model::{BandKind, Part, PartData, PartKind, Port};

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
    let way = Way {
        part,
        ports,
        chosen,
        named: port.is_some(),
        loc,
        point,
    };
    if !chosen.passes.is_empty() {
        if !inside(&chosen.passes, point.hz) {
            out.push(way.outside());
        }
    } else if part.kind == PartKind::Duplexer {
        // without pass bands, the names of the legs still say which is the higher one
        out.extend(way.higher_or_lower(env));
    }
}

/// The way of a carrier through a device.
struct Way<'a> {
    part: &'a Part,
    ports: &'a [Port],
    chosen: &'a Port,
    /// Whether the chain names the port.
    named: bool,
    loc: Loc,
    point: &'a Point,
}

impl Way<'_> {
    fn tag(&self) -> &str {
        self.part
            .tag
            .as_ref()
            .map_or(self.part.kind.word(), |t| &t.text)
    }

    /// The finding about a carrier outside the pass bands of the chosen port.
    fn outside(&self) -> Diagnostic {
        let (tag, hz, chosen) = (self.tag(), self.point.hz, self.chosen);
        let other = self
            .ports
            .iter()
            .find(|q| q.name.text != chosen.name.text && inside(&q.passes, hz));
        let Some(o) = other else {
            let scaled = [1e3, 1e-3, 1e6, 1e-6]
                .iter()
                .any(|k| inside(&chosen.passes, hz * k));
            return Diagnostic::new(
                &codes::OUTSIDE_PASS_BAND,
                self.loc,
                format!(
                    "`{tag}` passes {}; {} is outside.",
                    ranges_words(&chosen.passes),
                    frequency(hz)
                ),
            )
            .at("outside the pass band")
            .also(self.part.loc, "the part")
            .help(if scaled {
                "The frequency is off by a power of 1000: is it kHz, MHz or GHz?"
            } else {
                "Retune it, or correct the frequency; the loss there is not known."
            });
        };
        let d = Diagnostic::new(
            &codes::LEGS_SWAPPED,
            self.loc,
            format!(
                "{} goes through `{tag}.{}`, which passes {}; it belongs through `{tag}.{}`.",
                frequency(hz),
                chosen.name.text,
                ranges_words(&chosen.passes),
                o.name.text
            ),
        )
        .at("the wrong leg: this one stops the carrier")
        .also(self.part.loc, "the part");
        if self.named {
            self.through(d, &o.name.text)
        } else {
            d
        }
    }

    /// The finding about the leg of the other frequency of the band, by the names of the legs.
    fn higher_or_lower(&self, env: &Env) -> Option<Diagnostic> {
        let BandKind::Pair {
            transmit: Some(t),
            receive: Some(r),
        } = &env.band(&self.point.band)?.kind
        else {
            return None;
        };
        let chosen = &*self.chosen.name.text;
        let (want, which) = if (self.point.hz - t.max(*r)).abs() < 1.0 {
            ("high", "higher")
        } else {
            ("low", "lower")
        };
        let has = self.ports.iter().any(|q| &*q.name.text == want);
        if !has || t == r || !matches!(chosen, "high" | "low") || chosen == want {
            return None;
        }
        let d = Diagnostic::new(
            &codes::LEGS_SWAPPED,
            self.loc,
            format!(
                "{} is the {which} frequency of band `{}` but goes through `{}.{chosen}`.",
                frequency(self.point.hz),
                self.point.band,
                self.tag()
            ),
        )
        .at("the wrong leg: this one stops the carrier");
        Some(self.through(d, want))
    }

    /// With the fix that takes another port.
    fn through(&self, d: Diagnostic, port: &str) -> Diagnostic {
        let through = format!("{}.{port}", self.tag());
        d.fix(format!("write `{through}`"), self.loc, through)
            .preferred()
    }
}
