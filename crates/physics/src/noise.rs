//! Noise: passive losses, cascades, receiver floor, desensing, receiver voltages.

use crate::BOLTZMANN;
use downlead_quantity::{from_db, to_db};

/// Standard noise temperature, kelvin (IEEE definition of noise figure).
pub const T0_K: f64 = 290.0;

/// Noise figure in dB of a matched passive loss `loss_db` at `kelvin`: `F = 1 + (L − 1) Tp/290`.
#[must_use]
pub fn passive_noise_figure(loss_db: f64, kelvin: f64) -> f64 {
    to_db(1.0 + (from_db(loss_db) - 1.0) * kelvin / T0_K)
}

/// One stage of a receiving chain.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stage {
    /// Gain in dB; negative for a loss.
    pub gain_db: f64,
    /// Noise figure in dB.
    pub noise_figure_db: f64,
}

impl Stage {
    /// A passive loss at `kelvin`.
    #[must_use]
    pub fn passive(loss_db: f64, kelvin: f64) -> Self {
        Self {
            gain_db: -loss_db,
            noise_figure_db: passive_noise_figure(loss_db, kelvin),
        }
    }
}

/// Noise figure in dB of stages in the order the signal passes (Friis); 0 for none.
///
/// Source: Friis, Proc. IRE 1944; Pozar 4e, ch. 10 (section from memory).
#[must_use]
pub fn cascade_noise_figure(stages: &[Stage]) -> f64 {
    let mut factor = 1.0;
    let mut gain_db = 0.0;
    for stage in stages {
        factor += (from_db(stage.noise_figure_db) - 1.0) * from_db(-gain_db);
        gain_db += stage.gain_db;
    }
    to_db(factor)
}

/// Thermal noise power in dBm in `bandwidth_hz` at `kelvin`: `kTB`.
#[must_use]
pub fn thermal_noise(bandwidth_hz: f64, kelvin: f64) -> f64 {
    to_db(BOLTZMANN * kelvin * bandwidth_hz) + 30.0
}

/// Rise in dB of a receiver's noise by interference of ratio `i_over_n_db` to it:
/// `10 log10(1 + I/N)`.
#[must_use]
pub fn noise_rise(i_over_n_db: f64) -> f64 {
    to_db(1.0 + from_db(i_over_n_db))
}

/// Rejection in dB a transmitter's noise in the receive channel needs for a wanted `i_over_n_db`:
/// `P_tx + noise − (kTB + NF + I/N)`; power in dBm, noise in dB relative to the carrier in the
/// channel.
#[must_use]
pub fn needed_noise_rejection(
    tx_dbm: f64,
    noise_dbc: f64,
    bandwidth_hz: f64,
    noise_figure_db: f64,
    i_over_n_db: f64,
) -> f64 {
    tx_dbm + noise_dbc - (thermal_noise(bandwidth_hz, T0_K) + noise_figure_db + i_over_n_db)
}

/// Level in dBm of a voltage across a matched load (potential difference), volts rms.
#[must_use]
pub fn dbm_from_pd(volts: f64, ohm: f64) -> f64 {
    to_db(volts * volts / ohm) + 30.0
}

/// Level in dBm of an electromotive force (open-circuit voltage), volts rms: half of it appears
/// across a matched load.
#[must_use]
pub fn dbm_from_emf(volts: f64, ohm: f64) -> f64 {
    dbm_from_pd(0.5 * volts, ohm)
}

/// Level in dBm of dBµV across a matched load.
#[must_use]
pub fn dbm_from_dbuv_pd(dbuv: f64, ohm: f64) -> f64 {
    dbuv - 120.0 - to_db(ohm) + 30.0
}

/// Level in dBm of dBµV electromotive force.
#[must_use]
pub fn dbm_from_dbuv_emf(dbuv: f64, ohm: f64) -> f64 {
    dbm_from_dbuv_pd(dbuv, ohm) + to_db(0.25)
}

/// Voltage (rms, potential difference) in volt of a level in dBm.
#[must_use]
pub fn pd_from_dbm(dbm: f64, ohm: f64) -> f64 {
    libm::sqrt(from_db(dbm - 30.0) * ohm)
}
