//! The unit table: the only definition of spellings, kinds and factors.

use crate::Dim;

/// One unit: its spellings (the first is the one printed), kind, and the way to the base unit.
#[derive(Debug)]
pub struct Unit {
    /// Spellings that mean this unit; the first is the canonical one.
    pub symbols: &'static [&'static str],
    /// The name in words.
    pub name: &'static str,
    /// Kind of quantity.
    pub dim: Dim,
    /// Base value = (number + `offset`) * `factor`.
    pub factor: f64,
    /// Added before scaling (only for dBW and degrees Fahrenheit).
    pub offset: f64,
}

impl Unit {
    /// The number as written to the base unit of its kind.
    #[must_use]
    pub fn to_base(&self, number: f64) -> f64 {
        (number + self.offset) * self.factor
    }

    /// From the base unit back to this unit.
    #[must_use]
    pub fn from_base(&self, value: f64) -> f64 {
        value / self.factor - self.offset
    }

    /// The canonical spelling.
    #[must_use]
    pub fn symbol(&self) -> &'static str {
        self.symbols[0]
    }
}

/// Index into [`UNITS`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct UnitId(pub u8);

const FT: f64 = 0.3048;

macro_rules! units {
    ($($dim:ident { $($name:literal: $($sym:literal)|+ => $factor:expr $(, offset $off:expr)?;)+ })+) => {
        /// All units of the language.
        pub static UNITS: &[Unit] = ALL;
        const ALL: &[Unit] = &[
            $($(Unit {
                symbols: &[$($sym),+],
                name: $name,
                dim: Dim::$dim,
                factor: $factor,
                offset: 0.0 $(+ $off)?,
            },)+)+
        ];
    };
}

units! {
    Percent { "percent": "%" => 0.01; }
    Length {
        "metre": "m" => 1.0;
        "millimetre": "mm" => 0.001;
        "centimetre": "cm" => 0.01;
        "kilometre": "km" => 1000.0;
        "foot": "ft" => FT;
        "inch": "in" => 0.0254;
        "yard": "yd" => 0.9144;
        "mile": "mi" => 1609.344;
    }
    Wavelengths { "wavelength": "wavelengths" | "wavelength" | "λ" => 1.0; }
    Angle { "degree": "°" | "deg" => 1.0; }
    Frequency {
        "megahertz": "MHz" => 1e6;
        "kilohertz": "kHz" => 1e3;
        "gigahertz": "GHz" => 1e9;
        "hertz": "Hz" => 1.0;
    }
    Power {
        "watt": "W" => 1.0;
        "milliwatt": "mW" => 1e-3;
        "microwatt": "µW" | "uW" | "μW" => 1e-6;
        "kilowatt": "kW" => 1e3;
    }
    Level { "dB over a milliwatt": "dBm" => 1.0; "dB over a watt": "dBW" => 1.0, offset 30.0; }
    Decibel { "decibel": "dB" => 1.0; }
    SidebandNoise { "dB over the carrier in a hertz": "dBc/Hz" => 1.0; }
    GainIsotropic { "dB over isotropic": "dBi" => 1.0; }
    GainDipole { "dB over a half-wave dipole": "dBd" => 1.0; }
    LossRate {
        "dB per 100 metres": "dB/100 m" => 0.01;
        "dB per metre": "dB/m" => 1.0;
        "dB per kilometre": "dB/km" => 0.001;
        "dB per 100 feet": "dB/100 ft" => 0.01 / FT;
        "dB per foot": "dB/ft" => 1.0 / FT;
    }
    Temperature {
        "degree Celsius": "°C" | "degC" => 1.0;
        "degree Fahrenheit": "°F" | "degF" => 5.0 / 9.0, offset -32.0;
    }
    Impedance { "ohm": "ohm" | "Ω" | "\u{2126}" | "ohms" => 1.0; }
    Voltage { "volt": "V" => 1.0; "kilovolt": "kV" => 1e3; "microvolt": "µV" | "uV" | "μV" => 1e-6; }
    Current { "ampere": "A" => 1.0; }
    Time {
        "second": "s" => 1.0;
        "minute": "min" => 60.0;
        "hour": "h" => 3600.0;
        "millisecond": "ms" => 1e-3;
        "microsecond": "µs" | "us" | "μs" => 1e-6;
        "nanosecond": "ns" => 1e-9;
    }
    CapacitancePerLength { "picofarad per metre": "pF/m" => 1e-12; "picofarad per foot": "pF/ft" => 1e-12 / FT; }
    Resistivity { "ohm metre": "ohm-m" | "Ωm" | "\u{2126}m" => 1.0; }
    PowerDensity { "watt per square metre": "W/m2" => 1.0; "milliwatt per square centimetre": "mW/cm2" => 10.0; }
    ElectricField { "volt per metre": "V/m" => 1.0; }
    MagneticField { "ampere per metre": "A/m" => 1.0; }
    RootCoefficient {
        "dB per 100 m per root megahertz": "dB/100 m/sqrt(MHz)" | "dB/100 m/√MHz" => 0.01;
        "dB per 100 ft per root megahertz": "dB/100 ft/sqrt(MHz)" | "dB/100 ft/√MHz" => 0.01 / FT;
    }
    LinearCoefficient {
        "dB per 100 m per megahertz": "dB/100 m/MHz" => 0.01;
        "dB per 100 ft per megahertz": "dB/100 ft/MHz" => 0.01 / FT;
    }
}

/// The unit of an id.
#[must_use]
pub fn unit(id: UnitId) -> &'static Unit {
    &UNITS[usize::from(id.0)]
}

/// All units of a kind, canonical spelling first.
pub fn units_of(dim: Dim) -> impl Iterator<Item = &'static Unit> {
    UNITS.iter().filter(move |u| u.dim == dim)
}

impl UnitId {
    /// Reads a unit as spelt in the text. Blanks inside compound units are ignored
    /// (`dB/100m` is `dB/100 m`); case does, because `mW` and `MW` differ.
    #[must_use]
    pub fn parse(text: &str) -> Option<UnitId> {
        if let Some(id) = UnitId::exact(text) {
            return Some(id);
        }
        // blanks can differ only where there are some, or in `dB/100m`
        if !text.contains(['/', ' ', '\t']) {
            return None;
        }
        let bare = |s: &'static str| s.chars().filter(|c| !c.is_whitespace());
        UNITS
            .iter()
            .position(|u| {
                u.symbols
                    .iter()
                    .any(|s| bare(s).eq(text.chars().filter(|c| !c.is_whitespace())))
            })
            .map(|i| UnitId(u8::try_from(i).expect("fewer than 256 units")))
    }

    /// Reads a unit spelt letter for letter as in the table.
    fn exact(text: &str) -> Option<UnitId> {
        let mut slot = slot_of(text.as_bytes());
        loop {
            let (unit, symbol) = SLOTS[slot];
            let known = ALL.get(usize::from(unit))?;
            if known.symbols[usize::from(symbol)] == text {
                return Some(UnitId(unit));
            }
            slot = (slot + 1) % SLOTS.len();
        }
    }
}

/// Hash table over the spellings, filled while compiling: (unit, symbol), or (255, 0) for an empty slot.
/// The lexer asks after every number, so a search through the table would be felt.
static SLOTS: [(u8, u8); 512] = {
    let mut slots = [(u8::MAX, 0); 512];
    let mut unit = 0;
    while unit < ALL.len() {
        let mut symbol = 0;
        while symbol < ALL[unit].symbols.len() {
            let mut slot = slot_of(ALL[unit].symbols[symbol].as_bytes());
            while slots[slot].0 != u8::MAX {
                slot = (slot + 1) % slots.len();
            }
            slots[slot] = (unit as u8, symbol as u8);
            symbol += 1;
        }
        unit += 1;
    }
    assert!(
        ALL.len() < 255,
        "a unit's index fits a byte, and 255 means none"
    );
    slots
};

const fn slot_of(bytes: &[u8]) -> usize {
    let mut hash = bytes.len() as u32;
    let mut i = 0;
    while i < bytes.len() {
        hash = (hash ^ bytes[i] as u32).wrapping_mul(0x0100_0193);
        i += 1;
    }
    (hash ^ (hash >> 15)) as usize % 512
}

/// Units that look like a misspelt one (other case, look-alike, a letter off), best first.
#[must_use]
pub fn similar_units(text: &str) -> Vec<&'static str> {
    let lower = text.to_lowercase();
    let mut hits: Vec<&'static str> = UNITS
        .iter()
        .flat_map(|u| u.symbols.iter().copied())
        .filter(|s| s.to_lowercase() == lower)
        .collect();
    if hits.is_empty() {
        let singular = lower.trim_end_matches('s');
        hits = UNITS
            .iter()
            .filter(|u| {
                let n = u.name.to_lowercase();
                n == singular
                    || n.starts_with(singular) && singular.len() >= 3
                    || (singular == "feet" && n == "foot")
                    || (singular == "meter" && n == "metre")
                    || (singular == "inche" && n == "inch")
            })
            .map(Unit::symbol)
            .collect();
    }
    hits
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_spelling_reads_back() {
        for (i, u) in UNITS.iter().enumerate() {
            for s in u.symbols {
                assert_eq!(UnitId::parse(s), Some(UnitId(i as u8)), "{s}");
            }
            assert!((u.from_base(u.to_base(3.25)) - 3.25).abs() < 1e-12);
        }
    }

    #[test]
    fn compound_units_ignore_blanks_and_case_matters() {
        assert_eq!(UnitId::parse("dB/100m"), UnitId::parse("dB/100 m"));
        assert_eq!(UnitId::parse("db"), None);
        assert_eq!(similar_units("db"), ["dB"]);
        assert_eq!(similar_units("mhz"), ["MHz"]);
        assert_eq!(similar_units("feet"), ["ft"]);
        assert!((unit(UnitId::parse("°F").unwrap()).to_base(50.0) - 10.0).abs() < 1e-12);
    }
}
