//! Radiated power and field, and the gain of simple antennas.

use crate::ETA0;
use core::f64::consts::PI;
use downlead_quantity::{from_db, to_db};

/// Convention of licences for the conversion of effective radiated power into equivalent isotropic radiated power.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum DipoleConvention {
    /// 2.15 dB: ITU-R and CEPT texts, the usual one.
    #[default]
    Itu215,
    /// Ratio 1.64 (2.1484 dB): 47 CFR 97.3(b).
    Ratio164,
    /// 2.14 dB: the pair 611 W ERP = 1 kW EIRP printed in 47 CFR 97.313(f).
    Db214,
}

impl DipoleConvention {
    /// Gain of the reference dipole, dBi.
    #[must_use]
    pub fn dbi(self) -> f64 {
        match self {
            Self::Itu215 => downlead_quantity::DIPOLE_DBI,
            Self::Ratio164 => to_db(1.64),
            Self::Db214 => 2.14,
        }
    }

    /// EIRP over ERP as a power ratio.
    #[must_use]
    pub fn ratio(self) -> f64 {
        match self {
            Self::Ratio164 => 1.64,
            other => from_db(other.dbi()),
        }
    }

    /// EIRP in W of an ERP in W.
    #[must_use]
    pub fn eirp(self, erp_w: f64) -> f64 {
        erp_w * self.ratio()
    }

    /// ERP in W of an EIRP in W.
    #[must_use]
    pub fn erp(self, eirp_w: f64) -> f64 {
        eirp_w / self.ratio()
    }
}

/// EIRP over EMRP: gain 3 of a short vertical over perfect ground (RR 1.163, ITU-R BS.561 Annex
/// 1).
pub const EMRP_RATIO: f64 = 3.0;

/// EIRP in W of an EMRP in W.
#[must_use]
pub fn eirp_from_emrp(emrp_w: f64) -> f64 {
    emrp_w * EMRP_RATIO
}

/// Gain in dBi of one in dBd (2.15 dB).
#[must_use]
pub fn dbi_from_dbd(dbd: f64) -> f64 {
    dbd + downlead_quantity::DIPOLE_DBI
}

/// Gain in dBd of one in dBi (2.15 dB).
#[must_use]
pub fn dbd_from_dbi(dbi: f64) -> f64 {
    dbi - downlead_quantity::DIPOLE_DBI
}

/// EIRP in W of power at the transmitter, loss to the antenna and its gain in dBi.
#[must_use]
pub fn eirp(transmitter_w: f64, loss_db: f64, gain_dbi: f64) -> f64 {
    transmitter_w * from_db(gain_dbi - loss_db)
}

/// Gain of an antenna in dB from its directivity (dB) and efficiency (0 to 1) (IEEE 145, from
/// memory).
#[must_use]
pub fn gain(directivity_db: f64, efficiency: f64) -> f64 {
    directivity_db + to_db(efficiency)
}

/// Realized gain in dB: gain less the mismatch loss of |Γ| (IEEE 145, from memory).
#[must_use]
pub fn realized_gain(gain_db: f64, gamma: f64) -> f64 {
    gain_db - crate::mismatch::mismatch_loss(gamma)
}

/// Modified cosine integral `Cin(x) = ∫₀ˣ (1 − cos t)/t dt` by its power series, for |x| up to
/// about 20.
#[must_use]
pub fn cin(x: f64) -> f64 {
    let x2 = x * x;
    let mut term = -1.0; // (−1)^k x^2k/(2k)!, with the sign turned
    let mut sum = 0.0;
    for k in 1..100_u32 {
        let n = f64::from(2 * k);
        term *= -x2 / (n * (n - 1.0));
        let add = term / n;
        sum += add;
        if add.abs() < 1e-18 * (1.0 + sum.abs()) {
            break;
        }
    }
    sum
}

/// Directivity of a thin half-wave dipole: `4/Cin(2π)` = 1.6409.
///
/// Source: Balanis, Antenna Theory, ch. 4 (section from memory).
#[must_use]
pub fn half_wave_dipole() -> f64 {
    4.0 / cin(2.0 * PI)
}

/// Gain in dBi of a thin half-wave dipole, 2.1509.
#[must_use]
pub fn half_wave_dipole_dbi() -> f64 {
    to_db(half_wave_dipole())
}

/// Directivity of a short dipole: 1.5 (1.761 dBi).
pub const SHORT_DIPOLE: f64 = 1.5;

/// Gain in dBi of a quarter-wave monopole over perfect ground: the dipole's plus 3.01 dB.
#[must_use]
pub fn quarter_wave_monopole_dbi() -> f64 {
    to_db(2.0 * half_wave_dipole())
}

/// Directivity in dBi of `count` collinear half-wave dipoles fed alike, centres
/// `spacing_wavelengths` apart, broadside; no coupling, no harness loss. `None` for no element or
/// more than 64, or a spacing that is not between 0 and 4 wavelengths.
///
/// Numeric integration of the pattern.
#[must_use]
pub fn collinear_dbi(count: u32, spacing_wavelengths: f64) -> Option<f64> {
    if count == 0 || count > 64 || !(spacing_wavelengths > 0.0 && spacing_wavelengths <= 4.0) {
        return None;
    }
    let n = f64::from(count);
    // D = 2/∫ F² sin θ dθ with F = cos(π/2 cos θ)/sin θ · sin(Nψ/2)/(N sin(ψ/2)); with u = cos θ
    // the integrand is cos²(πu/2)/(1 − u²) · AF²(u), even in u
    let power = |u: f64| {
        let rest = 1.0 - u * u;
        let element = if rest < 1e-12 {
            0.0
        } else {
            let c = libm::cos(0.5 * PI * u);
            c * c / rest
        };
        let half = PI * spacing_wavelengths * u;
        let s = libm::sin(half);
        let array = if s.abs() < 1e-9 {
            1.0
        } else {
            let a = libm::sin(n * half) / (n * s);
            a * a
        };
        element * array
    };
    // composite Simpson over u = 0..1, fine enough for 64 elements
    let steps = 4000_u32;
    let h = 1.0 / f64::from(steps);
    let mut sum = power(0.0) + power(1.0);
    for i in 1..steps {
        let weight = if i % 2 == 1 { 4.0 } else { 2.0 };
        sum += weight * power(f64::from(i) * h);
    }
    Some(to_db(1.0 / (sum * h / 3.0)))
}

/// Spacing in wavelengths of two bays whose first nulls are at ± half of a beamwidth
/// `beamwidth_rad`: `1/(2 sin(θ/2))` (stacking distance, from memory).
#[must_use]
pub fn stacking_distance(beamwidth_rad: f64) -> f64 {
    0.5 / libm::sin(0.5 * beamwidth_rad)
}

/// Field strength in V/m (rms, free space) at `distance_m` of an EIRP in W: `√(30·EIRP)/d`.
///
/// Source: ITU-R P.525. The 30 is the rounded η0/(4π) = 29.979 ohm.
#[must_use]
pub fn field_strength(eirp_w: f64, distance_m: f64) -> f64 {
    cymomotive_force(eirp_w) / distance_m
}

/// The same with the exact impedance of free space, `√(η0·EIRP/(4π))/d`.
#[must_use]
pub fn field_strength_exact(eirp_w: f64, distance_m: f64) -> f64 {
    libm::sqrt(ETA0 * eirp_w / (4.0 * PI)) / distance_m
}

/// Cymomotive force in V: field times distance, `√(30·EIRP)` (ITU-R BS.561).
#[must_use]
pub fn cymomotive_force(eirp_w: f64) -> f64 {
    libm::sqrt(30.0 * eirp_w)
}

/// dBµV/m of a field in V/m.
#[must_use]
pub fn dbuv_per_m(v_per_m: f64) -> f64 {
    20.0 * libm::log10(v_per_m) + 120.0
}
