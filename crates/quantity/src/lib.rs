//! Numbers with a unit and a kind: the unit table, arithmetic that refuses nonsense,
//! uncertainty, and how numbers are printed.
//!
//! Everything here is pure. Transcendental functions go through [`libm`], so the same
//! text gives the same bits on every platform.

mod dim;
mod format;
mod measure;
mod unit;

pub use dim::{ArithError, Dim, Quantity};
pub use format::{db, decibel_signed, frequency, length, number, percent, power, power_dbm, sig};
pub use measure::{Measure, Shape, Tolerance};
pub use unit::{UNITS, Unit, UnitId, similar_units, unit, units_of};

/// Decibels of a power ratio: `10 log10(ratio)`.
#[must_use]
pub fn to_db(ratio: f64) -> f64 {
    10.0 * libm::log10(ratio)
}

/// Power ratio of a level difference in dB.
#[must_use]
pub fn from_db(db: f64) -> f64 {
    // exp(x ln10/10) keeps libm's bit-for-bit results and is faster than pow
    libm::exp(db * (core::f64::consts::LN_10 / 10.0))
}

/// Watts to dBm (0 dBm = 1 mW).
#[must_use]
pub fn w_to_dbm(watts: f64) -> f64 {
    to_db(watts) + 30.0
}

/// dBm to watts.
#[must_use]
pub fn dbm_to_w(dbm: f64) -> f64 {
    from_db(dbm - 30.0)
}

/// Gain of a half-wave dipole over isotropic as licences round it, in dB: dBi = dBd + 2.15
/// (ITU-R BS.561; the exact thin dipole is 2.15088 dBi).
pub const DIPOLE_DBI: f64 = 2.15;

/// 10 / ln 10: decibels per neper of power; turns a small relative deviation into dB.
pub const DB_PER_RELATIVE: f64 = 4.342_944_819_032_518;
