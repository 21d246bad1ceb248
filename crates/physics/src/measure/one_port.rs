//! Loss of a line from one end: far end open, then shorted.

use crate::uncertainty::u_shaped;
use crate::{DB_PER_NEPER, cx};
use num_complex::Complex64;

/// Loss from two return losses.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OnePort {
    /// Half of the return loss with the far end open, dB.
    pub open_db: f64,
    /// Half of the return loss with the far end shorted, dB.
    pub short_db: f64,
    /// One-way loss, dB: their mean.
    pub loss_db: f64,
    /// Half of their difference (open less short), dB. Much of it means that the line's impedance
    /// is not the instrument's; the mean hardly suffers from that, either alone does.
    pub half_difference_db: f64,
}

/// One-way loss from the return losses (dB) with the far end open and shorted.
///
/// Right to a few thousandths of a dB in a line near the instrument's impedance. Where the near
/// end reflects as much as comes back from the far end (a 75 ohm line of 8 dB in 50 ohm), it is
/// wrong by more than 1 dB: use [`open_short`].
#[must_use]
pub fn one_port(open_return_loss_db: f64, short_return_loss_db: f64) -> OnePort {
    let (open_db, short_db) = (0.5 * open_return_loss_db, 0.5 * short_return_loss_db);
    OnePort {
        open_db,
        short_db,
        loss_db: 0.5 * (open_db + short_db),
        half_difference_db: 0.5 * (open_db - short_db),
    }
}

/// Standard uncertainty in dB of a one-way loss by directivity, its phase not known (U-shaped).
#[must_use]
pub fn directivity_u(return_loss_db: f64, directivity_db: f64) -> f64 {
    u_shaped(0.5 * DB_PER_NEPER * relative(return_loss_db, directivity_db))
}

fn relative(return_loss_db: f64, directivity_db: f64) -> f64 {
    downlead_quantity::from_db(0.5 * (return_loss_db - directivity_db))
}

/// A line from its input impedances.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OpenShort {
    /// Matched one-way loss, dB.
    pub loss_db: f64,
    /// Characteristic impedance, ohm.
    pub zc_ohm: Complex64,
    /// Phase of the line in radians, known but for multiples of π: 0 to π.
    pub phase_rad: f64,
}

/// Exact loss (never negative), impedance and phase from the input impedances (ohm) with the far end open and
/// shorted: `tanh²(γl) = Zsc/Zoc`, `Zc = √(Zsc·Zoc)`.
///
/// Source: input impedance of a terminated line, Pozar, Microwave Engineering 4e, sec. 2.3 (from
/// memory). Infinite impedance gives NaN.
#[must_use]
pub fn open_short(z_open: Complex64, z_short: Complex64) -> OpenShort {
    let one = cx::c(1.0, 0.0);
    // the root with a real part ≥ 0 is the line with loss, and its impedance: tanh of it has one too
    let t = cx::sqrt(z_short / z_open);
    let twice = cx::ln((one + t) / (one - t));
    let phase = 0.5 * twice.im;
    OpenShort {
        loss_db: 0.5 * DB_PER_NEPER * twice.re,
        zc_ohm: cx::sqrt(z_short * z_open),
        phase_rad: if phase < 0.0 {
            phase + core::f64::consts::PI
        } else {
            phase
        },
    }
}

/// Impedance in ohm of a reflection coefficient measured in `z0_ohm`.
#[must_use]
pub fn impedance(gamma: Complex64, z0_ohm: f64) -> Complex64 {
    let one = cx::c(1.0, 0.0);
    (one + gamma) / (one - gamma) * z0_ohm
}
