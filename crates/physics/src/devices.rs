//! Couplers, dividers, combiners, pads and what limits their readings.

use downlead_quantity::{from_db, to_db};

/// Main-line loss in dB of an ideal directional coupler of `coupling_db`:
/// `−10 log10(1 − 10^(−C/10))` (energy conservation).
#[must_use]
pub fn coupler_main_loss(coupling_db: f64) -> f64 {
    -to_db(1.0 - from_db(-coupling_db))
}

/// Loss in dB from the input to each output of an ideal N-way divider: `10 log10 N`.
#[must_use]
pub fn divider_loss(ways: u32) -> f64 {
    to_db(f64::from(ways))
}

/// Loss in dB of each transmitter in a combiner of 3 dB hybrids, transmitters on different
/// frequencies: `stages · 10 log10 2`, the rest goes to the dump loads.
#[must_use]
pub fn hybrid_combiner_loss(stages: u32) -> f64 {
    f64::from(stages) * to_db(2.0)
}

/// Gain in dB (≤ 0) of combining two coherent signals in a hybrid, amplitudes differing by
/// `amplitude_db` and phases by `phase_rad`, over ideal combining: `cos²(φ/2)` for equal
/// amplitudes.
#[must_use]
pub fn coherent_combining(phase_rad: f64, amplitude_db: f64) -> f64 {
    let a = from_db(0.5 * amplitude_db);
    // |1 + a e^jφ|² / (2 (1 + a²))
    let sum = 1.0 + a * a + 2.0 * a * libm::cos(phase_rad);
    to_db(sum / (2.0 * (1.0 + a * a)))
}

/// Range of |Γ| behind a reading of |Γ| with a coupler of finite directivity (dB):
/// `|Γ| ± 10^(−D/20)`, kept between 0 and 1.
#[must_use]
pub fn directivity_range(gamma: f64, directivity_db: f64) -> (f64, f64) {
    let d = from_db(-0.5 * directivity_db);
    ((gamma - d).max(0.0), (gamma + d).min(1.0))
}

/// Error in dB of a forward reading by finite directivity with |Γ| at the load: most above, most
/// below (both ≥ 0).
#[must_use]
pub fn directivity_forward_error(gamma: f64, directivity_db: f64) -> (f64, f64) {
    let x = gamma * from_db(-0.5 * directivity_db);
    (20.0 * libm::log10(1.0 + x), -20.0 * libm::log10(1.0 - x))
}

/// Return loss in dB seen through an ideal attenuator: twice its loss better.
#[must_use]
pub fn return_loss_through_pad(return_loss_db: f64, pad_db: f64) -> f64 {
    return_loss_db + 2.0 * pad_db
}

/// Coupled-arm reading to main-line power: dB to add to what the coupled port shows.
#[must_use]
pub fn coupled_to_main(coupling_db: f64) -> f64 {
    coupling_db - coupler_main_loss(coupling_db)
}
