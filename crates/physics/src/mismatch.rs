//! Reflection, standing waves, and the loss of a line that is not terminated in its own
//! impedance.

use crate::{LineParams, cx};
use downlead_quantity::{from_db, to_db};
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

/// |Γ| of a return loss in dB.
#[must_use]
pub fn gamma_from_return_loss(return_loss_db: f64) -> f64 {
    from_db(-0.5 * return_loss_db)
}

/// Return loss in dB of a standing-wave ratio.
#[must_use]
pub fn return_loss_from_swr(swr: f64) -> f64 {
    return_loss(gamma_from_swr(swr))
}

/// Reflection coefficient of `z` at a line of impedance `z0`: `(Z − Z0)/(Z + Z0)`.
#[must_use]
pub fn reflection(z: Complex64, z0: Complex64) -> Complex64 {
    if z.re.is_infinite() || z.im.is_infinite() {
        return cx::real(1.0);
    }
    (z - z0) / (z + z0)
}

/// Impedance of a reflection coefficient in the reference `r0_ohm`: `R0 (1 + Γ)/(1 − Γ)`.
#[must_use]
pub fn impedance(gamma: Complex64, r0_ohm: f64) -> Complex64 {
    (cx::real(1.0) + gamma) / (cx::real(1.0) - gamma) * r0_ohm
}

/// A reflection coefficient measured in `from_ohm` seen from a line of `to_ohm`.
#[must_use]
pub fn rereference(gamma: Complex64, from_ohm: f64, to_ohm: f64) -> Complex64 {
    // |Γ| of the step first: an impedance would overflow at Γ = 1
    let step = (to_ohm - from_ohm) / (to_ohm + from_ohm);
    (gamma - step) / (cx::real(1.0) - gamma * step)
}

/// Standing-wave ratio of an impedance on a line of real impedance `r0_ohm`.
#[must_use]
pub fn swr_of(z: Complex64, r0_ohm: f64) -> f64 {
    swr_from_gamma(cx::abs(reflection(z, cx::real(r0_ohm))))
}

/// Mismatch loss in dB, `−10 log10(1 − |Γ|²)`: what a matched source does not deliver.
///
/// Source: Pozar, Microwave Engineering 4e, ch. 2 (section from memory).
#[must_use]
pub fn mismatch_loss(gamma: f64) -> f64 {
    -to_db(1.0 - gamma * gamma)
}

/// Power delivered relative to the available power, dB (≤ 0), for a source and a load that both
/// reflect: `(1 − |Γs|²)(1 − |ΓL|²)/|1 − Γs ΓL|²`.
///
/// Source: Pozar 4e, ch. 2, generator and load mismatches (section from memory).
#[must_use]
pub fn delivered(source: Complex64, load: Complex64) -> f64 {
    let one = cx::real(1.0);
    to_db((1.0 - source.norm_sqr()) * (1.0 - load.norm_sqr()) / (one - source * load).norm_sqr())
}

/// Least and most power delivered, dB relative to available, when only the magnitudes of the
/// two reflections are known.
#[must_use]
pub fn delivered_bounds(source: f64, load: f64) -> (f64, f64) {
    let x = source * load;
    let matched = (1.0 - source * source) * (1.0 - load * load);
    (
        to_db(matched / ((1.0 + x) * (1.0 + x))),
        to_db(matched / ((1.0 - x) * (1.0 - x))),
    )
}

/// |Γ| at the near end of a line with `matched_loss_db`, from |Γ| at the load.
#[must_use]
pub fn gamma_at_input(gamma_load: f64, matched_loss_db: f64) -> f64 {
    gamma_load * from_db(-matched_loss_db)
}

/// |Γ| at the load from |Γ| read at the near end. Above 1 when the reading and the loss
/// contradict each other.
#[must_use]
pub fn gamma_at_load(gamma_input: f64, matched_loss_db: f64) -> f64 {
    gamma_input * from_db(matched_loss_db)
}

/// Standing-wave ratio at the transmitter end of a line.
#[must_use]
pub fn swr_at_input(swr_load: f64, matched_loss_db: f64) -> f64 {
    swr_from_gamma(gamma_at_input(gamma_from_swr(swr_load), matched_loss_db))
}

/// Standing-wave ratio at the antenna from the one read at the transmitter; infinite when the
/// reading and the loss contradict each other.
#[must_use]
pub fn swr_at_load(swr_input: f64, matched_loss_db: f64) -> f64 {
    swr_from_gamma(gamma_at_load(gamma_from_swr(swr_input), matched_loss_db))
}

/// Total loss in dB of a mismatched line by the classic formula, net power in to power in the
/// load: `10 log10((a² − r²)/(a (1 − r²)))`, a the matched loss as a power ratio.
///
/// Exact for a real characteristic impedance, whatever the length; see [`total_loss`] for when
/// it is not.
#[must_use]
pub fn total_loss_classic(matched_loss_db: f64, gamma_load: f64) -> f64 {
    let a = from_db(matched_loss_db);
    let r2 = gamma_load * gamma_load;
    to_db((a * a - r2) / (a * (1.0 - r2)))
}

/// Total loss in dB of power that leaves a matched source: matched loss plus the mismatch loss
/// of the load (no tuner; a transmitter held to its forward power).
#[must_use]
pub fn total_loss_fixed_forward(matched_loss_db: f64, gamma_load: f64) -> f64 {
    matched_loss_db + mismatch_loss(gamma_load)
}

/// Input impedance in ohm of a line ending in `z_load`:
/// `Zc (ZL + Zc tanh γl)/(Zc + ZL tanh γl)`.
#[must_use]
pub fn input_impedance(
    line: &LineParams,
    f_hz: f64,
    length_m: f64,
    z_load: Complex64,
) -> Complex64 {
    let zc = line.zc(f_hz);
    let (sh, ch) = cx::sinh_cosh_scaled(line.gamma(f_hz) * length_m);
    zc * (z_load * ch + zc * sh) / (zc * ch + z_load * sh)
}

/// Total loss in dB, net power into the line to power in the load, exact for the complex
/// characteristic impedance of [`LineParams::zc`]:
/// `10 log10((R_in/R_L)·|cosh γl + (Z_L/Zc) sinh γl|²)`.
///
/// May lie below the matched loss: a load of high impedance draws little current through the
/// resistance of a short line. Infinite for a load without resistance.
#[must_use]
pub fn total_loss(line: &LineParams, f_hz: f64, length_m: f64, z_load: Complex64) -> f64 {
    let gl = line.gamma(f_hz) * length_m;
    let zc = line.zc(f_hz);
    let (sh, ch) = cx::sinh_cosh_scaled(gl);
    // voltage and current at the input for one ampere in the load, both scaled by e^(−αl)
    let v = z_load * ch + zc * sh;
    let i = ch + z_load / zc * sh;
    let p_in = v.re * i.re + v.im * i.im;
    to_db(p_in / z_load.re) + 20.0 * core::f64::consts::LOG10_E * gl.re
}

/// The loss of a line when only the size of the load's reflection is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LossRange {
    /// Least loss over all angles of the load, dB.
    pub min_db: f64,
    /// Largest loss over all angles of the load, dB.
    pub max_db: f64,
    /// What the classic formula says, dB.
    pub classic_db: f64,
}

impl LossRange {
    /// Largest error of the classic formula, dB.
    #[must_use]
    pub fn worst_error_db(&self) -> f64 {
        (self.max_db - self.classic_db).max(self.classic_db - self.min_db)
    }
}

/// Least and largest exact loss over the angle of a load whose |Γ| in `r0_ohm` of the line is
/// `gamma_load` (0 ≤ |Γ| < 1), net power in to power in the load.
///
/// Closed form: with one watt in the forward wave at the load the input power is a constant plus
/// a sinusoid of the load's angle, because voltage and current are linear in Γ.
#[must_use]
pub fn loss_range(line: &LineParams, f_hz: f64, length_m: f64, gamma_load: f64) -> LossRange {
    let r = gamma_load;
    let gl = line.gamma(f_hz) * length_m;
    let z = line.zc(f_hz) / line.r0_ohm; // normalised to R0
    let (sh, ch) = cx::sinh_cosh_scaled(gl);
    // V_in = a + b Γ, I_in = c + d Γ  (in units of √R0 and 1/√R0)
    let (a, b) = (ch + z * sh, ch - z * sh);
    let (c, d) = (ch + sh / z, sh / z - ch);
    let mean = (a * c.conj()).re + r * r * (b * d.conj()).re;
    let swing = r * cx::abs(a.conj() * d + b * c.conj());
    let scale = 20.0 * core::f64::consts::LOG10_E * gl.re;
    let p_load = 1.0 - r * r;
    LossRange {
        min_db: to_db((mean - swing) / p_load) + scale,
        max_db: to_db((mean + swing) / p_load) + scale,
        classic_db: total_loss_classic(line.matched_loss(length_m), r),
    }
}

/// Largest rms voltage on a line, volt: `√(P Z0 S)`, P the net power at that place.
#[must_use]
pub fn max_voltage_rms(net_w: f64, z0_ohm: f64, swr: f64) -> f64 {
    libm::sqrt(net_w * z0_ohm * swr)
}

/// Largest crest voltage on a line, volt; give the PEP as `net_w`.
#[must_use]
pub fn max_voltage_crest(net_w: f64, z0_ohm: f64, swr: f64) -> f64 {
    core::f64::consts::SQRT_2 * max_voltage_rms(net_w, z0_ohm, swr)
}

/// Largest rms current on a line, ampere: `√(P S/Z0)`.
#[must_use]
pub fn max_current_rms(net_w: f64, z0_ohm: f64, swr: f64) -> f64 {
    libm::sqrt(net_w * swr / z0_ohm)
}

/// Conductor heating relative to a matched line with the same net power, averaged along the
/// line: `(S² + 1)/(2S)`. The local extremes are S and 1/S.
#[must_use]
pub fn mean_heating(swr: f64) -> f64 {
    (swr * swr + 1.0) / (2.0 * swr)
}
