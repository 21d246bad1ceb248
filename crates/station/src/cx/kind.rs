//! Whether a value is of the kind that stands here, and what to say if not.

use downlead_base::{Diagnostic, Span, codes};
use downlead_quantity::{
    DB_PER_RELATIVE, Dim, Measure, Quantity, Tolerance, UnitId, number, similar_units, unit,
    units_of,
};

use super::Cx;
use super::slip::unit_without_sign;
use super::value::Val;
use super::word::capital;

/// Frequencies that are computed, in Hz.
pub(super) const RADIO: std::ops::RangeInclusive<f64> = 1e3..=300e9;

impl<'a> Cx<'a> {
    /// `400 to 2000 MHz`, `400 MHz to 2000`: says that the unit belongs to both ends. False where that is not
    /// what is wrong.
    pub(crate) fn unit_on_one_end(&mut self, v: &Val, want: &[Dim]) -> bool {
        let Some(up) = v.upper else { return false };
        let bare = |d: Dim| d == Dim::Count;
        let first = bare(v.q.dim) && want.contains(&up.dim);
        let last = bare(up.dim) && want.contains(&v.q.dim);
        if !(first || last) {
            return false;
        }
        let text = self.text(v.loc.span);
        let Some((low, high)) = text.split_once(" to ") else {
            return false;
        };
        let (low, high) = (low.trim().to_owned(), high.trim().to_owned());
        let unit = |s: &str| {
            let n = s.find(|c: char| !(c.is_ascii_digit() || "+-.eE".contains(c)));
            n.map_or(String::new(), |n| s[n..].trim().to_owned())
        };
        let right = match first {
            true => format!("{low} {} to {high}", unit(&high)),
            false => format!("{low} to {high} {}", unit(&low)),
        };
        let d = Diagnostic::new(
            &codes::MISSING_UNIT,
            v.loc,
            "Both ends of a range have their unit.",
        )
        .at(format!("`{}` has no unit", if first { low } else { high }))
        .fix(format!("write `{right}`"), v.loc, right)
        .preferred();
        self.push(d);
        true
    }

    /// Says that `v` is not what stands here. `what` is "a run's length", `example` "46 m".
    pub(crate) fn wrong_kind(&mut self, v: &Val, want: &[Dim], what: &str, example: &str) {
        let got = v.q.dim;
        if self.unit_on_one_end(v, want) {
            return;
        }
        if got == Dim::Count && v.unit.is_none() {
            if self.bare_number_slip(v, want) || self.misspelt_unit(v, want) {
                return;
            }
            // as it is written: rounded, a small number would read as 0
            let written = Span::new(v.loc.span.start, v.unit_loc.span.start);
            let n = match self.item.text().get(written.range()) {
                Some(t) if t.parse::<f64>().is_ok() => t.to_owned(),
                _ => number(v.q.value, 6),
            };
            let mut d = Diagnostic::new(
                &codes::MISSING_UNIT,
                v.loc,
                format!("{n} has no unit; {what} needs one."),
            )
            .at("no unit")
            .help(format!("Written for example `{example}`."));
            let units: Vec<&str> = want
                .iter()
                .flat_map(|w| units_of(*w))
                .map(downlead_quantity::Unit::symbol)
                .take(6)
                .collect();
            let datum = self.datum_missing(v, example);
            let could_be = |u: &&&str| {
                !want.contains(&Dim::Frequency)
                    || UnitId::parse(u).is_none_or(|u| RADIO.contains(&unit(u).to_base(v.q.value)))
            };
            for u in units.iter().filter(could_be).take(4) {
                d = d.fix(
                    format!("write `{n} {u}{datum}`"),
                    v.unit_loc,
                    format!(" {u}{datum}"),
                );
            }
            if units.len() > 1 {
                d = d.help(format!("Units that fit here: {}.", units.join(", ")));
            }
            self.push(d);
            return;
        }
        if matches!(got, Dim::GainDipole | Dim::GainIsotropic) && want.contains(&Dim::Decibel) {
            let d = Diagnostic::new(
                &codes::REFERENCE_ON_LOSS,
                v.loc,
                format!(
                    "{what} is plain dB; dBi and dBd compare an antenna with a reference antenna.",
                    what = capital(what)
                ),
            )
            .at("a reference belongs to antenna gains only")
            .fix("write plain dB", v.unit_loc, "dB")
            .preferred();
            self.push(d);
            return;
        }
        if got == Dim::Decibel
            && want
                .iter()
                .any(|w| matches!(w, Dim::GainDipole | Dim::GainIsotropic))
        {
            self.gain_without_reference(v);
            return;
        }
        let mut d = Diagnostic::new(
            &codes::WRONG_UNIT,
            v.loc,
            format!("{} stands where {what} belongs.", capital(got.noun())),
        )
        .at(format!("this is {}", got.noun()))
        .help(format!("Written for example `{example}`."));
        if got == Dim::Angle && want.contains(&Dim::Temperature) {
            for u in ["°C", "°F"] {
                d = d.fix(format!("write `{u}`"), v.unit_loc, u);
            }
        }
        self.push(d);
    }

    /// The words after a height without which it says nothing, as the example has them; empty if
    /// they are there.
    fn datum_missing(&self, v: &Val, example: &str) -> String {
        let rest = self.item.text().get(v.unit_loc.span.end as usize..);
        let next = rest.and_then(|t| t.split_whitespace().next()).unwrap_or("");
        let datum = example.rsplit(' ').next().unwrap_or("");
        let heights = ["amsl", "agl", "haat"];
        if heights.contains(&datum) && !heights.iter().any(|h| next.starts_with(h)) {
            return format!(" {datum}");
        }
        String::new()
    }

    /// A word right behind a bare number that nothing else explains is meant as its unit.
    fn misspelt_unit(&mut self, v: &Val, want: &[Dim]) -> bool {
        let end = v.unit_loc.span.end;
        let rest = self.item.text().get(end as usize..).unwrap_or("");
        let blanks = rest.len() - rest.trim_start_matches([' ', '\t']).len();
        let word: &str = rest[blanks..]
            .split(|c: char| !(c.is_alphanumeric() || "°µμΩ%/".contains(c)))
            .next()
            .unwrap_or("");
        // another number is none
        if word.is_empty() || word.starts_with(|c: char| c.is_ascii_digit()) {
            return false;
        }
        let fits = |s: &&str| {
            want.iter()
                .flat_map(|w| units_of(*w))
                .any(|u| u.symbol() == *s)
        };
        // `meter` is a word of the language, and what people write for m
        let taken = crate::keywords::is_word(word) || crate::keywords::keyword(word).is_some();
        if self.lets.contains_key(word) || taken && !similar_units(word).iter().any(fits) {
            return false;
        }
        let start = end + u32::try_from(blanks).unwrap_or(0);
        let loc = self.loc(Span::new(
            start,
            start + u32::try_from(word.len()).unwrap_or(0),
        ));
        let fitting: Vec<&str> = want
            .iter()
            .flat_map(|w| units_of(*w))
            .map(downlead_quantity::Unit::symbol)
            .collect();
        let near = similar_units(word);
        let near = near
            .iter()
            .find(|u| fitting.contains(u))
            .or(near.first())
            .copied()
            .or_else(|| unit_without_sign(word, want));
        let mut d = Diagnostic::new(&codes::UNKNOWN_UNIT, loc, format!("`{word}` is no unit."))
            .at("not known");
        d = match near {
            Some(u) => d
                .help(format!("Did you mean `{u}`?"))
                .fix(format!("write `{u}`"), loc, u)
                .preferred(),
            None => d.help(format!("Units that fit here: {}.", fitting.join(", "))),
        };
        self.push(d);
        true
    }

    fn gain_without_reference(&mut self, v: &Val) {
        let n = number(v.q.value, 3);
        let d = Diagnostic::new(
            &codes::GAIN_WITHOUT_REFERENCE,
            v.loc,
            format!(
                "{n} dB of antenna gain over what? {n} dBi and {n} dBd differ by 2.15 dB, a factor of 1.64 in radiated power."
            ),
        )
        .at("no reference")
        .help(format!("Write `{n} dBi` (over isotropic) or `{n} dBd` (over a half-wave dipole), as the sheet says."))
        .fix(format!("write `{n} dBi`"), v.unit_loc, "dBi")
        .fix(format!("write `{n} dBd`"), v.unit_loc, "dBd");
        self.push(d);
    }

    /// Value and standard uncertainty in the base unit of `dim`; says what is wrong otherwise.
    pub(crate) fn measure(
        &mut self,
        v: &Val,
        dim: Dim,
        what: &str,
        example: &str,
    ) -> Option<Measure> {
        if v.q.dim != dim {
            self.wrong_kind(v, &[dim], what, example);
            return None;
        }
        if !self.coverage_fits(v) {
            return None;
        }
        if let Some(law) = v.per {
            self.push(
                Diagnostic::new(&codes::UNEXPECTED_WORD, law, format!("{} does not follow a law of frequency.", capital(what)))
                    .at("no law stands here")
                .help("A connector's loss is stated at one frequency, `loss 0.05 dB at 1 GHz`, and grows with its root."),
            );
            return None;
        }
        if let Some(up) = v.upper {
            if up.dim != dim {
                self.wrong_kind(&v.end(up), &[dim], what, example);
                return None;
            }
            return Some(Measure::interval(v.q.value, up.value));
        }
        Some(match v.half {
            None => Measure::exact(v.q.value),
            Some((h, shape)) => {
                let half_width = match h.dim {
                    d if d == dim => h.value,
                    // a percentage of a level or gain is one of its power
                    Dim::Percent
                        if matches!(
                            dim,
                            Dim::GainIsotropic | Dim::GainDipole | Dim::Level | Dim::SidebandNoise
                        ) =>
                    {
                        let share = Tolerance {
                            half_width: h.value,
                            shape,
                        };
                        self.within_bounds(v, &share.about(1.0), 0.0, what);
                        DB_PER_RELATIVE * h.value
                    }
                    Dim::Percent if dim != Dim::Temperature => h.value * v.q.value.abs(),
                    Dim::Decibel
                        if matches!(
                            dim,
                            Dim::GainIsotropic | Dim::GainDipole | Dim::Level | Dim::SidebandNoise
                        ) =>
                    {
                        h.value
                    }
                    Dim::Count if matches!(dim, Dim::Count) => h.value,
                    _ => {
                        self.tolerance_kind(v, h, dim);
                        return None;
                    }
                };
                Tolerance { half_width, shape }.about(v.q.value)
            }
        })
    }

    pub(super) fn tolerance_kind(&mut self, v: &Val, h: Quantity, dim: Dim) {
        self.push(
            Diagnostic::new(
                &codes::WRONG_UNIT,
                v.loc,
                format!(
                    "The tolerance is {}, but it belongs to {}.",
                    h.dim.noun(),
                    dim.noun()
                ),
            )
            .at("tolerance does not fit")
            .help("Give it in the unit of the value, or in percent."),
        );
    }

    /// A positive value of a kind.
    pub(crate) fn positive(
        &mut self,
        v: &Val,
        dim: Dim,
        what: &str,
        example: &str,
    ) -> Option<Measure> {
        let m = self.measure(v, dim, what, example)?;
        // of an interval the lower end counts
        if m.value > 0.0 && v.q.value >= 0.0 {
            self.within_bounds(v, &m, 0.0, what);
            return Some(m);
        }
        self.push(
            Diagnostic::new(
                &codes::IMPOSSIBLE_VALUE,
                v.loc,
                format!("{} must be above zero.", capital(what)),
            )
            .at("zero or negative"),
        );
        None
    }
}
