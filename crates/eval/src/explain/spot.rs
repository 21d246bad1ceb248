//! The exposure of people at a spot, step by step.

use downlead_quantity::{frequency, number, power, to_db};
use downlead_station::Env;
use downlead_station::model::{Confidence, Field, Spot, SpotAt, Station};

use super::Derivation;
use super::cx::Cx;
use super::node::watts_value;
use super::numbers::{op, term, value, watts};
use crate::exposure::{ExposureVerdict, KeepClear, Source, SpotResult};

/// Free space's impedance, ohm, as it is printed in steps.
const ETA0: f64 = downlead_physics::ETA0;

/// π as it is printed in steps.
const PI: &str = "3.1415926536";

/// What a derivation of a spot needs beside its result.
pub(super) struct Site<'a, 'b> {
    pub(super) station: &'a Station,
    pub(super) env: &'a Env,
    /// The chain of the station itself with that name, on that band and frequency.
    pub(super) chain: &'b dyn Fn(&Source) -> Option<Cx<'a>>,
}

/// A share of limits in percent.
fn percent(x: f64) -> String {
    format!("{} %", term(100.0 * x))
}

impl Site<'_, '_> {
    /// The sum at a spot under a set of rules.
    pub(super) fn spot(&self, r: &SpotResult) -> Derivation {
        let title = format!("exposure at {}, {}, by {}", r.name, r.tier.word(), r.set);
        let spot = self.station.spots.iter().find(|x| x.loc == r.loc);
        let (Some(sum), Some(upper)) = (r.sum, r.upper) else {
            let d = Derivation::of(title, r.verdict.words()).at(r.loc);
            return d.with_all(r.sources.iter().map(|s| self.source(s, r, spot)));
        };
        let counted = || r.sources.iter().filter(|s| s.counts);
        let shares: Vec<String> = counted()
            .filter_map(|s| Some(op(100.0 * s.fraction?)))
            .collect();
        let mut d = Derivation::of(
            title,
            format!("{} of the limits ({})", percent(sum), r.verdict.words()),
        )
        .at(r.loc);
        if !shares.is_empty() {
            d = d.by("sum of the shares of the limits", shares.join(" + "));
        }
        d.with_all(r.sources.iter().map(|s| self.source(s, r, spot)))
            .with(upper_value(sum, upper))
            .with(verdict(r.verdict))
    }

    /// The share of one transmitter.
    fn source(&self, s: &Source, r: &SpotResult, spot: Option<&Spot>) -> Derivation {
        let title = match s.counts {
            true => format!("share of {}", s.who()),
            false => format!(
                "share of {}, not counted: another band of it has more",
                s.who()
            ),
        };
        let (Some(fraction), Some(density), Some(limit)) =
            (s.fraction, s.density_w_m2, s.limit_w_m2)
        else {
            let why = s.refused.as_ref().map_or("not computed", |w| w.words());
            return Derivation::of(title, why).with_all(self.distance(s, spot));
        };
        Derivation::of(title, percent(fraction))
            .by(
                "100 × S/limit",
                format!("100 × {} / {}", op(density), op(limit)),
            )
            .with(self.density(s, r, spot))
            .with(self.limit(s, r))
    }

    fn density(&self, s: &Source, r: &SpotResult, spot: Option<&Spot>) -> Derivation {
        let (density, d) = (s.density_w_m2.unwrap_or(f64::NAN), s.distance_m);
        let zone = match (s.near, s.down_db > 0.0) {
            (_, true) => "by the antenna's pattern, beyond 2 D²/λ",
            (true, _) => "main beam; nearer than 2 D²/λ, where it is an upper estimate",
            _ => "main beam, beyond 2 D²/λ where the length is stated",
        };
        let (formula, toward) = match s.down_db > 0.0 {
            true => (
                "g² × EIRP × 10^(-down/10)/(4 π R²)",
                format!(" × {}", super::numbers::ratio_of_loss(s.down_db)),
            ),
            false => ("g² × EIRP/(4 π R²)", String::new()),
        };
        let mut out = Derivation::of("power density S", value(density, "W/m2"))
            .by(
                formula,
                format!(
                    "{}^2 × {}{toward} / (4 × {PI} × {}^2)",
                    op(r.reflection),
                    watts(s.eirp_w),
                    op(d.unwrap_or(f64::NAN))
                ),
            )
            .from(format!(
                "FCC OET Bulletin 65 (1997), section 2; {zone}; g is the factor of reflection on the field"
            ))
            .with(self.eirp(s))
            .with_all(self.distance(s, spot));
        if s.down_db > 0.0 {
            out = out.with(
                Derivation::of("down toward the spot", super::numbers::decibels(s.down_db)).from(
                    "least of the pattern over the angles from all parts of the antenna, at most 20 dB; between two rows the one with more gain",
                ),
            );
        }
        if let Some(c) = s.cylinder_w_m2 {
            out = out.with(
                Derivation::of("mean over a cylinder around the antenna", value(c, "W/m2"))
                    .from("less than S there, and not used"),
            );
        }
        out
    }

    fn eirp(&self, s: &Source) -> Derivation {
        let c = &s.counted;
        let what = if c.peak {
            "peak over the stated power, as the clause has no averaging time"
        } else {
            "mean over the stated power while keyed, by mode and duty"
        };
        let radiated = (self.chain)(s).and_then(|cx| cx.radiated_value(false));
        let radiated = radiated.unwrap_or_else(|| {
            Derivation::of(
                format!("EIRP of {} at {}", s.who(), frequency(s.hz)),
                watts_value(c.stated_w),
            )
            .at(c.chain)
        });
        Derivation::of(
            format!("EIRP of {} that counts", s.who()),
            watts_value(s.eirp_w),
        )
        .by(
            "EIRP × factor of the mode × share of the averaging time",
            format!("{} × {} × {}", watts(c.stated_w), op(c.factor), op(c.share)),
        )
        .with(radiated)
        .with(Derivation::of("factor of the mode", term(c.factor)).from(what))
        .with(
            Derivation::of("share of the averaging time", term(c.share))
                .from("keyed share whose window is not longer than the averaging time; else 1"),
        )
    }

    /// The limit as a power density.
    fn limit(&self, s: &Source, r: &SpotResult) -> Derivation {
        let limit = s.limit_w_m2.unwrap_or(f64::NAN);
        let density = || Derivation::of("limit", value(limit, "W/m2"));
        match s.limit {
            Some((x, Field::Electric)) => density()
                .by("E²/377 ohm", format!("{}^2 / {ETA0}", op(x)))
                .with(self.clause(x, s, r)),
            Some((x, Field::Magnetic)) => density()
                .by("377 ohm × H²", format!("{ETA0} × {}^2", op(x)))
                .with(self.clause(x, s, r)),
            Some((x, Field::Density)) => self.clause(x, s, r),
            None => density(),
        }
    }

    /// The limit as its clause states it.
    fn clause(&self, x: f64, s: &Source, r: &SpotResult) -> Derivation {
        let c = &s.counted;
        let (cite, confidence) = s
            .cite
            .as_ref()
            .map_or(("", Confidence::High), |c| (&*c.0, c.1));
        let unit = s.limit.map_or("W/m2", |l| l.1.unit());
        let mut d = Derivation::of(
            format!("limit at {}", frequency(c.limit_hz)),
            value(x, unit),
        )
        .from(format!(
            "{} {cite}, {}, confidence {}",
            r.set,
            r.tier.word(),
            confidence.word()
        ));
        let Some(loc) = c.clause else { return d };
        d = d.at(loc);
        let set = self.env.rule_set(&r.set);
        let clause = set.and_then(|s| s.exposure.iter().find(|x| x.loc == loc));
        let Some(law) = clause.map(|c| &c.law).filter(|l| !l.factors.is_empty()) else {
            return d;
        };
        let mut numbers = op(law.watts);
        for f in &law.factors {
            numbers += &format!(
                " × ({} / {})^{}",
                op(c.limit_hz / 1e6),
                op(f.reference / 1e6),
                op(f.exponent)
            );
        }
        d.by("its law, frequencies in MHz", numbers)
    }

    /// How far the nearest part of the antenna is.
    fn distance(&self, s: &Source, spot: Option<&Spot>) -> Option<Derivation> {
        let d = s.distance_m?;
        let title = format!("R, distance to the nearest part of {}", s.antenna);
        let all = Derivation::of(title, value(d, "m"));
        let SpotAt::Beside(out, agl) = &spot?.at else {
            return Some(all.from("as the spot states it").at(spot?.loc));
        };
        let ((low, high), size) = (s.counted.height_m?, s.counted.size_m?);
        let (above, below) = (low - size - agl, agl - high);
        let all = match (above > 0.0, below > 0.0) {
            (true, _) => all.by(
                "√(out² + (highest point - length - head)²)",
                format!(
                    "√({}^2 + ({} - {} - {})^2)",
                    op(*out),
                    op(low),
                    op(size),
                    op(*agl)
                ),
            ),
            (_, true) => all.by(
                "√(out² + (head - highest point)²)",
                format!("√({}^2 + ({} - {})^2)", op(*out), op(*agl), op(high)),
            ),
            _ => all.by("out: the head is between the ends of the antenna", op(*out)),
        };
        Some(all.at(spot?.loc))
    }
}

fn upper_value(sum: f64, upper: f64) -> Derivation {
    let u = to_db(upper / sum);
    Derivation::of("with the expanded uncertainty (k = 2)", percent(upper))
        .by(
            "sum × 10^(U/10)",
            format!("{} × 10^({}/10)", op(100.0 * sum), op(u)),
        )
        .with(
            Derivation::of("U", format!("{} dB", term(u))).from(
                "a cause that several transmitters share adds up linearly, different causes by their squares (JCGM 100, 5.2)",
            ),
        )
}

fn verdict(v: ExposureVerdict) -> Derivation {
    Derivation::of("verdict", v.words()).by(
        "not met where the sum less the uncertainty exceeds 100 %; met where the sum with it, and without the losses that are guesses or maxima, does not; else cannot tell",
        "",
    )
}

/// How far to stay away from an antenna.
pub(super) fn keep_clear(k: &KeepClear) -> Derivation {
    let title = format!("keep clear of {}, {}, by {}", k.tag, k.tier.word(), k.set);
    match &k.distance {
        Ok(d) => Derivation::of(title, format!("{} m", number(d.keep_m, 1)))
            .from(format!(
                "with the uncertainty {} m, rounded up and never within the antenna's own length or λ/2π",
                number(d.upper_m, 3)
            ))
            .at(k.antenna)
            .with(
                Derivation::of("distance at which the limits are reached", value(d.computed_m, "m"))
                    .from("√(sum of g² × EIRP/(4 π limit) over all that feeds it)"),
            ),
        Err(why) => Derivation::of(title, why.words()).at(k.antenna),
    }
}

/// What the transmitters of a neighbour add at the spots.
pub(super) fn beside(name: &str, spots: &[SpotResult]) -> Vec<Derivation> {
    spots
        .iter()
        .filter_map(|r| {
            let theirs = || {
                let own = |s: &&Source| s.station.as_deref() == Some(name) && s.counts;
                r.sources.iter().filter(own)
            };
            let shares: Vec<f64> = theirs().filter_map(|s| s.fraction).collect();
            if shares.is_empty() {
                return None;
            }
            let sum: f64 = shares.iter().sum();
            let all: Vec<String> = shares.iter().map(|x| op(100.0 * x)).collect();
            let title = format!("{name} adds at {}, {}, by {}", r.name, r.tier.word(), r.set);
            let d = Derivation::of(title, percent(sum)).by("sum of its shares", all.join(" + "));
            Some(d.at(r.loc).with_all(theirs().map(|s| {
                Derivation::of(
                    format!("share of {}", s.who()),
                    s.fraction.map_or_else(String::new, percent),
                )
                .from(format!("EIRP {}, at the spot's line", power(s.eirp_w)))
            })))
        })
        .collect()
}
