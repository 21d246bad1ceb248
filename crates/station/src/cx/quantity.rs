//! The quantities of the trade: powers, losses, gains, SWR, frequencies, temperatures.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_quantity::{DB_PER_RELATIVE, Dim, Measure, Tolerance, number, to_db, unit};

use super::Cx;
use super::value::Val;
use super::word::capital;

/// How far below zero a `±` in dB may reach without a word: less than losses are rounded to.
const BELOW_ZERO_DB: f64 = 0.1;

/// A gain beyond it, either way, is a slip: the largest reflectors in use have some 80 dBi (common
/// practice).
const MOST_GAIN_DB: f64 = 100.0;

impl<'a> Cx<'a> {
    /// A power in W (dBm is converted) with its standard uncertainty in dB.
    pub(crate) fn power(&mut self, v: &Val, what: &str, example: &str) -> Option<Measure> {
        let Some(w) = v.q.watts() else {
            self.wrong_kind(v, &[Dim::Power, Dim::Level], what, example);
            return None;
        };
        if w <= 0.0 {
            self.push(
                Diagnostic::new(
                    &codes::IMPOSSIBLE_VALUE,
                    v.loc,
                    format!("{} must be above zero.", capital(what)),
                )
                .at("not a power that can flow"),
            );
            return None;
        }
        if !self.coverage_fits(v) {
            return None;
        }
        if let Some(up) = v.upper {
            let Some(w2) = up.watts() else {
                self.wrong_kind(&v.end(up), &[Dim::Power], what, example);
                return None;
            };
            let mid = 0.5 * (w + w2);
            return Some(Measure {
                value: mid,
                u: DB_PER_RELATIVE * 0.5 * (w2 - w).abs() / mid / libm::sqrt(3.0),
                ..Measure::default()
            });
        }
        Some(match v.half {
            None => Measure::exact(w),
            Some((h, shape)) => {
                let half_width = match h.dim {
                    Dim::Percent => DB_PER_RELATIVE * h.value,
                    Dim::Decibel => h.value,
                    Dim::Power if v.q.dim == Dim::Power => DB_PER_RELATIVE * h.value / w,
                    _ => {
                        self.tolerance_kind(v, h, v.q.dim);
                        return None;
                    }
                };
                let m = Tolerance { half_width, shape }.about(w);
                if h.dim != Dim::Decibel {
                    let share = m.scaled_u(1.0 / DB_PER_RELATIVE);
                    self.within_bounds(
                        v,
                        &Measure {
                            value: 1.0,
                            ..share
                        },
                        0.0,
                        what,
                    );
                }
                m
            }
        })
    }

    /// A loss in dB, not negative; percent of power lost is converted (second: true).
    pub(crate) fn loss(&mut self, v: &Val, what: &str) -> Option<(Measure, bool)> {
        if v.q.dim == Dim::Percent {
            let upper = v.upper.filter(|u| u.dim == Dim::Percent);
            if let Some(up) = v.upper.filter(|u| u.dim != Dim::Percent) {
                self.wrong_kind(&v.end(up), &[Dim::Percent], what, "4 % to 6 %");
                return None;
            }
            if !self.coverage_fits(v) {
                return None;
            }
            let top = upper.map_or(v.q.value, |u| u.value);
            if !(0.0..1.0).contains(&v.q.value) || !(0.0..1.0).contains(&top) {
                self.push(
                    Diagnostic::new(
                        &codes::IMPOSSIBLE_VALUE,
                        v.loc,
                        "A loss in percent lies between 0 % and 100 %.",
                    )
                    .at("cannot be"),
                );
                return None;
            }
            let db = -to_db(1.0 - v.q.value);
            if upper.is_some() {
                return Some((Measure::interval(db, -to_db(1.0 - top)), true));
            }
            let m = match v.half {
                Some((h, shape)) if h.dim == Dim::Percent => Tolerance {
                    half_width: DB_PER_RELATIVE * h.value / (1.0 - v.q.value),
                    shape,
                }
                .about(db),
                Some((h, shape)) if h.dim == Dim::Decibel => Tolerance {
                    half_width: h.value,
                    shape,
                }
                .about(db),
                Some((h, _)) => {
                    self.tolerance_kind(v, h, Dim::Percent);
                    return None;
                }
                None => Measure::exact(db),
            };
            self.within_bounds(v, &m, 0.0, what);
            return Some((m, true));
        }
        let m = self.measure(v, Dim::Decibel, what, "0.55 dB")?;
        if v.q.value < 0.0 {
            let n = number(-v.q.value, 6);
            let noise = what.contains("noise");
            let mut d = Diagnostic::new(
                &codes::NEGATIVE_LOSS,
                v.loc,
                match noise {
                    true => format!("A noise figure is never negative; -{n} dB would be less noise than no noise."),
                    false => format!(
                        "Losses are written as positive dB; -{n} dB of loss would be an amplifier."
                    ),
                },
            )
            .at("negative");
            if self.text(v.loc.span).starts_with('-') {
                let sign = Loc::new(
                    v.loc.item,
                    Span::new(v.loc.span.start, v.loc.span.start + 1),
                );
                d = d.fix(format!("write `{n} dB`"), sign, "").preferred();
            }
            if !noise {
                d = d.help("If it really amplifies, make it an `amplifier` with a gain.");
            }
            self.push(d);
            return None;
        }
        // sheets state small losses as `0.10 dB ± 0.15 dB`
        let rounded = v.half.is_some_and(|(h, _)| h.dim == Dim::Decibel);
        self.within_bounds(v, &m, if rounded { -BELOW_ZERO_DB } else { 0.0 }, what);
        Some((m, false))
    }

    /// An antenna gain in dBi; second: whether it was written in dBd.
    pub(crate) fn gain(&mut self, v: &Val) -> Option<(Measure, bool)> {
        if v.q.dbi().is_none() {
            self.wrong_kind(
                v,
                &[Dim::GainIsotropic, Dim::GainDipole],
                "an antenna's gain",
                "5.2 dBi",
            );
            return None;
        }
        let dim = v.q.dim;
        let m = self.measure(v, dim, "an antenna's gain", "5.2 dBi")?;
        let shift = if dim == Dim::GainDipole {
            downlead_quantity::DIPOLE_DBI
        } else {
            0.0
        };
        if m.value.abs() > MOST_GAIN_DB {
            self.push(
                Diagnostic::new(
                    &codes::IMPOSSIBLE_VALUE,
                    v.loc,
                    format!(
                        "No antenna has a gain of {} dB over a reference antenna.",
                        number(m.value, 3)
                    ),
                )
                .at(format!("beyond ±{MOST_GAIN_DB} dB"))
                .help("The largest reflectors have some 80 dBi. Written for example `5.2 dBi`."),
            );
            return None;
        }
        Some((
            Measure {
                value: m.value + shift,
                ..m
            },
            dim == Dim::GainDipole,
        ))
    }

    /// An SWR: a bare number of at least 1.
    pub(crate) fn swr(&mut self, v: &Val) -> Option<Measure> {
        if v.q.dim != Dim::Count {
            self.wrong_kind(v, &[Dim::Count], "an SWR", "swr 1.3");
            return None;
        }
        let m = self.measure(v, Dim::Count, "an SWR", "swr 1.3")?;
        if v.q.value < 1.0 || v.upper.is_some_and(|u| u.value < 1.0) {
            let mut d = Diagnostic::new(
                &codes::SWR_BELOW_ONE,
                v.loc,
                format!(
                    "An SWR is never below 1; {} cannot be.",
                    number(v.q.value, 3)
                ),
            )
            .at("below 1");
            let g = v.q.value;
            // `1:1.5`: the ratio the other way round
            let ratio = self.text(v.loc.span).split_once(':');
            if let Some((_, swr)) =
                ratio.filter(|(one, s)| one.trim() == "1" && s.parse::<f64>().is_ok())
            {
                d = d
                    .help(format!("Written so: `swr {swr}`."))
                    .fix(format!("write `{swr}`"), v.loc, swr)
                    .preferred();
            } else if g > 0.0 && g < 1.0 {
                d = d.help(format!(
                    "If it is a reflection coefficient, the SWR is {}.",
                    number((1.0 + g) / (1.0 - g), 2)
                ));
            }
            self.push(d);
            return None;
        }
        self.within_bounds(v, &m, 1.0, "an SWR");
        Some(m)
    }

    /// A frequency in Hz between 1 kHz and 300 GHz. It is what is set, and takes no uncertainty.
    pub(crate) fn frequency(&mut self, v: &Val, what: &str) -> Option<f64> {
        let v = &self.alone(v, what);
        let m = self.measure(v, Dim::Frequency, what, "145.3 MHz")?;
        if !super::kind::RADIO.contains(&m.value) {
            self.push(
                Diagnostic::new(
                    &codes::IMPOSSIBLE_VALUE,
                    v.loc,
                    format!(
                        "{} is no radio frequency this language computes (1 kHz to 300 GHz).",
                        downlead_quantity::frequency(m.value)
                    ),
                )
                .at("kHz, MHz or GHz?"),
            );
            return None;
        }
        Some(m.value)
    }

    /// A temperature in °C that matter on a mast can have.
    pub(crate) fn temperature(&mut self, v: &Val) -> Option<Measure> {
        let m = self.measure(v, Dim::Temperature, "a temperature", "15 °C")?;
        let (lo, hi) = (v.q.value, v.upper.map_or(v.q.value, |u| u.value));
        if lo.min(hi) < -273.15 || lo.max(hi) > 1000.0 {
            self.push(
                Diagnostic::new(
                    &codes::IMPOSSIBLE_VALUE,
                    v.loc,
                    "No cable has this temperature.",
                )
                .at("cannot be"),
            );
            return None;
        }
        if lo.min(hi) < -70.0 || lo.max(hi) > 120.0 {
            let c = if lo.min(hi) < -70.0 {
                lo.min(hi)
            } else {
                lo.max(hi)
            };
            let mut d = Diagnostic::new(
                &codes::TEMPERATURE_UNLIKELY,
                v.loc,
                format!("{} °C is outside what cables see.", number(c, 1)),
            )
            .at("unlikely");
            if v.unit.is_some_and(|u| unit(u).symbol() == "°C") {
                d = d
                    .help(format!(
                        "If °F is meant: {} °F are {} °C.",
                        number(c, 1),
                        number((c - 32.0) / 1.8, 1)
                    ))
                    .fix("write °F", v.unit_loc, "°F");
            }
            self.push(d);
        }
        Some(m)
    }
}
