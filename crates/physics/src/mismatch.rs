//! Reflection, standing waves, mismatch loss, voltage on a line.

use crate::cx;
use downlead_quantity::to_db;
use num_complex::Complex64;

/// |Γ| of a standing-wave ratio: `(S − 1)/(S + 1)`; 1 for an infinite ratio.
#[must_use]
pub fn gamma_from_swr(swr: f64) -> f64 {
    if swr.is_infinite() {
        return 1.0;
    }
    (swr - 1.0) / (swr + 1.0)
}

/// Standing-wave ratio of |Γ|: `(1 + r)/(1 − r)`; infinite for r ≥ 1.
#[must_use]
pub fn swr_from_gamma(gamma: f64) -> f64 {
    if gamma >= 1.0 {
        return f64::INFINITY;
    }
    (1.0 + gamma) / (1.0 - gamma)
}

/// Return loss in dB of |Γ| (definition); infinite for no reflection.
#[must_use]
pub fn return_loss(gamma: f64) -> f64 {
    -20.0 * libm::log10(gamma)
}

/// Reflection coefficient of `z` at a line of impedance `z0`: `(Z − Z0)/(Z + Z0)`.
#[must_use]
pub fn reflection(z: Complex64, z0: Complex64) -> Complex64 {
    if z.re.is_infinite() || z.im.is_infinite() {
        return cx::real(1.0);
    }
    (z - z0) / (z + z0)
}

/// Size of the reflection that a whole line of another impedance shows in a matched system, where each
/// of its faces reflects `face`: both faces add up by the line's length. The root of the mean square
/// over a round-trip phase `phase` ± `u_phase` rad (standard, normal; infinite where it is not known)
/// with a one-way loss of `loss_db`.
///
/// `S11 = Γ (1 − x)/(1 − Γ² x)`, `x = A² exp(−jφ)`, with the mean of `cos φ`, which is
/// `cos(phase) exp(−u²/2)`, in numerator and denominator.
///
/// Source: Pozar, Microwave Engineering 4e, ch. 4, a line between two steps of impedance (section from
/// memory); checked by simulation.
#[must_use]
pub fn reflection_of_line(face: f64, loss_db: f64, phase: f64, u_phase: f64) -> f64 {
    let a = downlead_quantity::from_db(-loss_db);
    let cos = if u_phase.is_finite() {
        libm::cos(phase) * libm::exp(-0.5 * u_phase * u_phase)
    } else {
        0.0
    };
    let r = face * face;
    let over = |x: f64| 1.0 + x * x - 2.0 * x * cos;
    face * libm::sqrt(over(a) / over(r * a))
}

/// Mismatch loss in dB, `−10 log10(1 − |Γ|²)`: what a matched source does not deliver.
///
/// Source: Pozar, Microwave Engineering 4e, ch. 2 (section from memory).
#[must_use]
pub fn mismatch_loss(gamma: f64) -> f64 {
    -to_db(1.0 - gamma * gamma)
}

/// Largest rms voltage on a line, volt: `√(P Z0 S)`, P the net power at that place.
#[must_use]
pub fn max_voltage_rms(net_w: f64, z0_ohm: f64, swr: f64) -> f64 {
    libm::sqrt(net_w * z0_ohm * swr)
}
