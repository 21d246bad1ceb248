//! Fields of a form that an office wants filled in: which figure, in which unit, how rounded.

use downlead_base::Loc;
use downlead_quantity::{Dim, UnitId, unit};

use super::Name;

/// What kind of entry a field has.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FieldKind {
    /// Hz.
    Frequency,
    /// W.
    Power,
    /// A ratio, dB.
    Decibel,
    /// A gain over isotropic, dB.
    Gain,
    /// m.
    Length,
    /// Degrees.
    Angle,
    /// Words of the text.
    Words,
    /// A line to be filled in by hand.
    Blank,
}

impl FieldKind {
    /// Units it may be wanted in; the first where none is said.
    #[must_use]
    pub fn units(self) -> &'static [&'static str] {
        match self {
            FieldKind::Frequency => &["MHz", "Hz", "kHz", "GHz"],
            FieldKind::Power => &["W", "mW", "kW", "dBm", "dBW"],
            FieldKind::Decibel => &["dB"],
            FieldKind::Gain => &["dBi", "dBd"],
            FieldKind::Length => &["m", "km", "ft"],
            FieldKind::Angle => &["degrees", "dms"],
            FieldKind::Words | FieldKind::Blank => &[],
        }
    }

    /// With its article.
    #[must_use]
    pub fn noun(self) -> &'static str {
        match self {
            FieldKind::Frequency => "a frequency",
            FieldKind::Power => "a power",
            FieldKind::Decibel => "a ratio in dB",
            FieldKind::Gain => "a gain",
            FieldKind::Length => "a length",
            FieldKind::Angle => "an angle",
            FieldKind::Words => "words of the text",
            FieldKind::Blank => "a line to be filled in by hand",
        }
    }
}

macro_rules! whats {
    ($($v:ident $word:literal $kind:ident $doc:literal;)+) => {
        /// What a field of a form asks for.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum FieldWhat {
            $(#[doc = $doc] $v,)+
        }

        impl FieldWhat {
            /// All of them.
            pub const ALL: &'static [FieldWhat] = &[$(FieldWhat::$v),+];

            /// Word of the language.
            #[must_use]
            pub const fn word(self) -> &'static str {
                match self { $(FieldWhat::$v => $word,)+ }
            }

            /// What it is, in words.
            #[must_use]
            pub const fn doc(self) -> &'static str {
                match self { $(FieldWhat::$v => $doc,)+ }
            }

            /// Its kind of entry.
            #[must_use]
            pub const fn kind(self) -> FieldKind {
                match self { $(FieldWhat::$v => FieldKind::$kind,)+ }
            }
        }
    };
}

whats! {
    TransmitFrequency "transmit-frequency" Frequency "the frequency that the chain sends on";
    ReceiveFrequency "receive-frequency" Frequency "the frequency that the station hears on, of the same band";
    Offset "offset" Frequency "receive less transmit frequency";
    Output "output" Power "the power at the transmitter";
    Delivered "delivered" Power "the power into the antenna";
    Erp "erp" Power "radiated power over a half-wave dipole";
    Eirp "eirp" Power "radiated power over an isotropic radiator";
    Loss "loss" Decibel "the loss from the transmitter to the antenna";
    ReceiveLoss "receive-loss" Decibel "the loss from the antenna to the receiver, of the same band";
    Gain "gain" Gain "the gain of the antenna";
    Height "height" Length "height of the antenna's highest point above ground";
    Haat "haat" Length "height of the antenna above average terrain";
    Ground "ground" Length "the ground above mean sea level";
    HeightAmsl "height-amsl" Length "the antenna's highest point above mean sea level";
    Latitude "latitude" Angle "the latitude of the station";
    Longitude "longitude" Angle "the longitude of the station";
    Datum "datum" Words "the datum of the position";
    Bandwidth "bandwidth" Frequency "the width of what is sent";
    Mode "mode" Words "the mode of the transmitter";
    Station "station" Words "the tag of the station";
    Title "title" Words "the title of the station";
    Holder "holder" Words "the holder of the station's licence";
    Licence "licence" Words "the licences that the station is under";
    Transmitter "transmitter" Words "the tag of the transmitter";
    Antenna "antenna" Words "the tag of the antenna";
    Date "date" Words "the newest date of the station's text";
    Blank "blank" Blank "a line to be filled in by hand, such as a signature";
}

impl FieldWhat {
    /// The field of a word.
    #[must_use]
    pub fn from_word(word: &str) -> Option<FieldWhat> {
        FieldWhat::ALL.iter().copied().find(|w| w.word() == word)
    }
}

/// To which side a form rounds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Rounding {
    /// To the nearest step, halves away from zero.
    #[default]
    Nearest,
    /// To the next step above.
    Up,
    /// To the next step below.
    Down,
}

impl Rounding {
    /// Word of the language; none for the nearest, which is what is meant where none is said.
    #[must_use]
    pub fn word(self) -> Option<&'static str> {
        match self {
            Rounding::Nearest => None,
            Rounding::Up => Some("up"),
            Rounding::Down => Some("down"),
        }
    }
}

/// A field of a form.
#[derive(Clone, Debug, PartialEq)]
pub struct FormField {
    /// How the form calls it.
    pub label: Box<str>,
    /// What it asks for.
    pub what: FieldWhat,
    /// Bands it is for; empty: each.
    pub on: Box<[Name]>,
    /// Unit it is wanted in; of words, none.
    pub unit: Option<&'static str>,
    /// Step it is rounded to, in that unit; none: not rounded.
    pub step: Option<f64>,
    /// To which side.
    pub rounding: Rounding,
    /// Its line.
    pub loc: Loc,
}

impl FormField {
    /// A value in the base unit of its kind (Hz, W, dB, dBi, m, degrees) in the unit that the form wants.
    #[must_use]
    pub fn in_unit(&self, value: f64) -> f64 {
        match self.unit {
            Some("dBm") => downlead_quantity::w_to_dbm(value),
            Some("dBW") => downlead_quantity::w_to_dbm(value) - 30.0,
            Some("dBd") => value - downlead_quantity::DIPOLE_DBI,
            Some(u) => match UnitId::parse(u).map(unit) {
                Some(known) if known.dim != Dim::GainIsotropic => known.from_base(value),
                _ => value,
            },
            None => value,
        }
    }

    /// A value of its unit back in the base unit of its kind.
    #[must_use]
    pub fn to_base(&self, value: f64) -> f64 {
        match self.unit {
            Some("dBm") => downlead_quantity::dbm_to_w(value),
            Some("dBW") => downlead_quantity::dbm_to_w(value + 30.0),
            Some("dBd") => value + downlead_quantity::DIPOLE_DBI,
            Some(u) => match UnitId::parse(u).map(unit) {
                Some(known) if known.dim != Dim::GainIsotropic => known.to_base(value),
                _ => value,
            },
            None => value,
        }
    }

    /// A value in the field's unit, rounded as the form wants it.
    #[must_use]
    pub fn rounded(&self, value: f64) -> f64 {
        let Some(step) = self.step else { return value };
        let n = value / step;
        // what is a whole number of steps but for the last bits stays one
        let near = n.round();
        let n = match self.rounding {
            _ if (n - near).abs() < 1e-9 * n.abs().max(1.0) => near,
            Rounding::Nearest => near,
            Rounding::Up => n.ceil(),
            Rounding::Down => n.floor(),
        };
        n * step
    }

    /// Decimals that its step has; none where it is not rounded.
    #[must_use]
    pub fn decimals(&self) -> Option<usize> {
        let step = self.step?;
        let whole = |d: &usize| {
            let x = step * libm::pow(10.0, *d as f64);
            (x - x.round()).abs() < 1e-9 * x.abs()
        };
        Some((0..9).find(whole).unwrap_or(9))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use downlead_base::{ItemId, Span};

    fn field(what: FieldWhat, unit: &'static str, step: f64, rounding: Rounding) -> FormField {
        FormField {
            label: "x".into(),
            what,
            on: Box::default(),
            unit: Some(unit),
            step: Some(step),
            rounding,
            loc: Loc::new(ItemId::fresh(), Span::default()),
        }
    }

    /// 5.20 dBi is 3.05 dBd (ITU-R BS.561: 2.15 dB), which a form in tenths takes as 3.1 (halves away
    /// from zero) and 24.67 W as 25 W.
    #[test]
    fn values_take_unit_and_rounding_of_the_form() {
        let g = field(FieldWhat::Gain, "dBd", 0.1, Rounding::Nearest);
        assert!((g.in_unit(5.2) - 3.05).abs() < 1e-12);
        assert!((g.rounded(3.051) - 3.1).abs() < 1e-12);
        let w = |r| field(FieldWhat::Erp, "W", 1.0, r);
        assert_eq!(w(Rounding::Nearest).rounded(24.67), 25.0);
        assert_eq!(w(Rounding::Down).rounded(24.67), 24.0);
        assert_eq!(w(Rounding::Up).rounded(24.1), 25.0);
        assert_eq!(w(Rounding::Up).rounded(24.0 + 1e-12), 24.0);
        let f = field(
            FieldWhat::TransmitFrequency,
            "MHz",
            0.0001,
            Rounding::Nearest,
        );
        assert_eq!(f.decimals(), Some(4));
        assert!((f.in_unit(146_913_700.0) - 146.9137).abs() < 1e-12);
        // 26 m in feet
        let h = field(FieldWhat::Height, "ft", 1.0, Rounding::Nearest);
        assert_eq!(h.rounded(h.in_unit(26.0)), 85.0);
        let d = field(FieldWhat::Output, "dBW", 0.5, Rounding::Nearest);
        assert!((d.in_unit(10.0) - 10.0).abs() < 1e-12 && (d.to_base(10.0) - 10.0).abs() < 1e-9);
        assert_eq!(d.decimals(), Some(1));
    }
}
