//! Kinds of quantity and the arithmetic between them.

use crate::{DIPOLE_DBI, UnitId, unit};

/// Kind of a quantity. The unit of the stored value is given in brackets.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Dim {
    /// A bare number: counts, ratios, exponents (1).
    Count,
    /// A share or tolerance written in percent (1, so 5 % is 0.05).
    Percent,
    /// Length (m).
    Length,
    /// Electrical length in wavelengths in the line (wavelengths).
    Wavelengths,
    /// Angle, also electrical length (degrees).
    Angle,
    /// Frequency (Hz).
    Frequency,
    /// Power (W).
    Power,
    /// Absolute power level (dBm).
    Level,
    /// Loss, gain of a device, ratio of powers (dB).
    Decibel,
    /// Antenna gain over isotropic (dBi).
    GainIsotropic,
    /// Antenna gain over a half-wave dipole (dBd).
    GainDipole,
    /// Noise beside a carrier, in 1 Hz, over the carrier (dBc/Hz).
    SidebandNoise,
    /// Loss per length (dB/m).
    LossRate,
    /// Temperature (°C).
    Temperature,
    /// Impedance, resistance, reactance (ohm).
    Impedance,
    /// Voltage (V).
    Voltage,
    /// Current (A).
    Current,
    /// Time (s).
    Time,
    /// Capacitance per length (F/m).
    CapacitancePerLength,
    /// Resistivity (ohm m).
    Resistivity,
    /// Power density (W/m²).
    PowerDensity,
    /// Electric field strength (V/m).
    ElectricField,
    /// Magnetic field strength (A/m).
    MagneticField,
    /// Loss coefficient on the square root of frequency (dB/m per sqrt(MHz)).
    RootCoefficient,
    /// Loss coefficient on frequency (dB/m per MHz).
    LinearCoefficient,
}

impl Dim {
    /// The kind in words, with article, as messages use it.
    #[must_use]
    pub fn noun(self) -> &'static str {
        match self {
            Dim::Count => "a bare number",
            Dim::Percent => "a percentage",
            Dim::Length => "a length",
            Dim::Wavelengths => "a length in wavelengths",
            Dim::Angle => "an angle",
            Dim::Frequency => "a frequency",
            Dim::Power => "a power",
            Dim::Level => "a power level",
            Dim::Decibel => "a loss or ratio in dB",
            Dim::GainIsotropic => "an antenna gain over isotropic",
            Dim::GainDipole => "an antenna gain over a dipole",
            Dim::SidebandNoise => "a noise over the carrier",
            Dim::LossRate => "a loss per length",
            Dim::Temperature => "a temperature",
            Dim::Impedance => "an impedance",
            Dim::Voltage => "a voltage",
            Dim::Current => "a current",
            Dim::Time => "a time",
            Dim::CapacitancePerLength => "a capacitance per length",
            Dim::Resistivity => "a resistivity",
            Dim::PowerDensity => "a power density",
            Dim::ElectricField => "an electric field strength",
            Dim::MagneticField => "a magnetic field strength",
            Dim::RootCoefficient => "a coefficient on the root of frequency",
            Dim::LinearCoefficient => "a coefficient on frequency",
        }
    }
}

/// A value in the base unit of its kind (see [`Dim`]).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Quantity {
    /// Value in the base unit of `dim`.
    pub value: f64,
    /// Kind.
    pub dim: Dim,
}

/// Why two quantities cannot be combined.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ArithError {
    /// dBm + dBm and the like: adding two logarithms multiplies the powers.
    AddLevels,
    /// A power multiplied or divided by dB.
    PowerTimesDecibel,
    /// The kinds do not fit the operator.
    Mismatch(Dim, Dim),
    /// Division by zero or a result that is not a finite number.
    NotFinite,
}

impl Quantity {
    /// From a number as written and its unit.
    #[must_use]
    pub fn new(number: f64, unit_id: UnitId) -> Self {
        let u = unit(unit_id);
        Quantity {
            value: u.to_base(number),
            dim: u.dim,
        }
    }

    /// A bare number.
    #[must_use]
    pub fn count(value: f64) -> Self {
        Quantity {
            value,
            dim: Dim::Count,
        }
    }

    fn finite(value: f64, dim: Dim) -> Result<Self, ArithError> {
        if value.is_finite() {
            Ok(Quantity { value, dim })
        } else {
            Err(ArithError::NotFinite)
        }
    }

    /// Sum. Levels do not add; a level and dB do; a gain and dB do.
    ///
    /// # Errors
    /// [`ArithError`] when the kinds do not fit.
    #[allow(clippy::should_implement_trait, reason = "returns a Result")]
    pub fn add(self, o: Self) -> Result<Self, ArithError> {
        use Dim::{Decibel, GainDipole, GainIsotropic, Level, SidebandNoise};
        let v = self.value + o.value;
        match (self.dim, o.dim) {
            (Level, Level) | (SidebandNoise, SidebandNoise) => Err(ArithError::AddLevels),
            (Level | GainIsotropic | GainDipole | SidebandNoise, Decibel) => {
                Self::finite(v, self.dim)
            }
            (Decibel, Level | GainIsotropic | GainDipole | SidebandNoise) => Self::finite(v, o.dim),
            (GainIsotropic | GainDipole, GainIsotropic | GainDipole) => {
                Err(ArithError::Mismatch(self.dim, o.dim))
            }
            (a, b) if a == b => Self::finite(v, a),
            (a, b) => Err(ArithError::Mismatch(a, b)),
        }
    }

    /// Difference. Two levels or two gains differ by plain dB.
    ///
    /// # Errors
    /// [`ArithError`] when the kinds do not fit.
    #[allow(clippy::should_implement_trait, reason = "returns a Result")]
    pub fn sub(self, o: Self) -> Result<Self, ArithError> {
        use Dim::{Decibel, GainDipole, GainIsotropic, Level, SidebandNoise};
        let v = self.value - o.value;
        match (self.dim, o.dim) {
            (Level, Level)
            | (GainIsotropic, GainIsotropic)
            | (GainDipole, GainDipole)
            | (SidebandNoise, SidebandNoise) => Self::finite(v, Decibel),
            (GainIsotropic, GainDipole) => Self::finite(v - DIPOLE_DBI, Decibel),
            (GainDipole, GainIsotropic) => Self::finite(v + DIPOLE_DBI, Decibel),
            (Level | GainIsotropic | GainDipole | SidebandNoise, Decibel) => {
                Self::finite(v, self.dim)
            }
            (a, b) if a == b => Self::finite(v, a),
            (a, b) => Err(ArithError::Mismatch(a, b)),
        }
    }

    /// Product: one side must be a bare number or a percentage, or a loss rate times a length.
    ///
    /// # Errors
    /// [`ArithError`] when the kinds do not fit.
    #[allow(clippy::should_implement_trait, reason = "returns a Result")]
    pub fn mul(self, o: Self) -> Result<Self, ArithError> {
        use Dim::{
            Count, Decibel, Length, Level, LossRate, Percent, Power, SidebandNoise, Temperature,
        };
        let v = self.value * o.value;
        match (self.dim, o.dim) {
            (Power, Decibel) | (Decibel, Power) => Err(ArithError::PowerTimesDecibel),
            (Level | SidebandNoise | Temperature, Count | Percent)
            | (Count | Percent, Level | SidebandNoise | Temperature) => {
                Err(ArithError::Mismatch(self.dim, o.dim))
            }
            (LossRate, Length) | (Length, LossRate) => Self::finite(v, Decibel),
            (Count, d) => Self::finite(v, d),
            (d, Count) | (d, Percent) => Self::finite(v, d),
            (Percent, d) => Self::finite(v, d),
            (a, b) => Err(ArithError::Mismatch(a, b)),
        }
    }

    /// Quotient: by a bare number, or of two of one kind.
    ///
    /// # Errors
    /// [`ArithError`] when the kinds do not fit or the divisor is zero.
    #[allow(clippy::should_implement_trait, reason = "returns a Result")]
    pub fn div(self, o: Self) -> Result<Self, ArithError> {
        use Dim::{
            Count, Decibel, GainDipole, GainIsotropic, Length, Level, LossRate, Power,
            SidebandNoise, Temperature,
        };
        let v = self.value / o.value;
        match (self.dim, o.dim) {
            (Power, Decibel) => Err(ArithError::PowerTimesDecibel),
            (Level | Temperature | GainIsotropic | GainDipole | SidebandNoise, _) => {
                Err(ArithError::Mismatch(self.dim, o.dim))
            }
            (Decibel, Length) => Self::finite(v, LossRate),
            (d, Count) => Self::finite(v, d),
            (a, b) if a == b => Self::finite(v, Count),
            (a, b) => Err(ArithError::Mismatch(a, b)),
        }
    }

    /// The opposite number.
    #[must_use]
    pub fn negate(self) -> Self {
        Quantity {
            value: -self.value,
            dim: self.dim,
        }
    }

    /// Watts, if this is a power or a level.
    #[must_use]
    pub fn watts(self) -> Option<f64> {
        match self.dim {
            Dim::Power => Some(self.value),
            Dim::Level => Some(crate::dbm_to_w(self.value)),
            _ => None,
        }
    }

    /// dBi, if this is an antenna gain with a reference.
    #[must_use]
    pub fn dbi(self) -> Option<f64> {
        match self.dim {
            Dim::GainIsotropic => Some(self.value),
            Dim::GainDipole => Some(self.value + DIPOLE_DBI),
            _ => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::unit::units_of;

    fn q(n: f64, u: &str) -> Quantity {
        Quantity::new(n, UnitId::parse(u).unwrap())
    }

    #[test]
    fn levels_never_add() {
        assert_eq!(
            q(10.0, "dBm").add(q(10.0, "dBm")),
            Err(ArithError::AddLevels)
        );
        assert_eq!(
            q(10.0, "dBm").sub(q(4.0, "dBm")).unwrap(),
            Quantity {
                value: 6.0,
                dim: Dim::Decibel
            }
        );
        assert_eq!(
            q(50.0, "W").mul(q(5.0, "dB")),
            Err(ArithError::PowerTimesDecibel)
        );
    }

    #[test]
    fn gains_keep_their_reference() {
        assert!((q(8.15, "dBi").sub(q(6.0, "dBd")).unwrap().value).abs() < 1e-12);
        assert!(q(1.0, "dBi").add(q(1.0, "dBi")).is_err());
        assert!((q(6.0, "dBd").dbi().unwrap() - 8.15).abs() < 1e-12);
    }

    #[test]
    fn feet_equal_metres() {
        assert!((q(100.0, "ft").value - 30.48).abs() < 1e-12);
        // 5.63 dB/100 ft = 18.471 dB/100 m (feedline-checks C15: 1 ft = 0.3048 m exactly)
        assert!((q(5.63, "dB/100 ft").value * 100.0 - 18.4711).abs() < 1e-4);
        assert!(units_of(Dim::Length).count() >= 4);
    }
}
