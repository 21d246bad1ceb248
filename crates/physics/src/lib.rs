//! The formulas of a feed line: pure functions of numbers in SI units.
//!
//! Frequencies are in hertz, lengths in metres, impedances in ohm, powers in watts, levels and
//! losses in dB, temperatures in degrees Celsius, unless a name has another unit. Attenuation
//! coefficients are named `k1` (dB per metre per square root of MHz, conductors) and `k2`
//! (dB per metre per MHz, dielectric).
//!
//! Nothing here parses, prints, reads a file or asks the time. Out-of-domain input gives NaN
//! (or infinity where that is the limit), never a panic; constructors that take data give a
//! `Result`. Transcendental functions go through [`libm`], also for complex numbers ([`cx`]), so
//! results are bit-equal on every platform.

pub mod connector;
pub mod construction;
pub mod cx;
pub mod exposure;
mod lanes;
pub mod line;
pub mod measure;
pub mod mismatch;
pub mod net;
pub mod network;
pub mod noise;
pub mod path;
pub mod pattern;
pub mod position;
pub mod power;
pub mod radiated;
pub mod site;
pub mod table;
pub mod uncertainty;

pub use line::{LineParams, TwoTerm};
pub use network::SMatrix;
pub use num_complex::Complex64;

/// Speed of light in vacuum, m/s (exact by definition of the metre).
pub const C0: f64 = 299_792_458.0;
/// Vacuum permeability, H/m (CODATA 2018; differs from 4π·10⁻⁷ by 5·10⁻¹⁰).
pub const MU0: f64 = 1.256_637_062_12e-6;
/// Impedance of free space, ohm (CODATA 2018).
pub const ETA0: f64 = 376.730_313_668;
/// Resistivity of annealed copper at 20 °C, ohm·m (100 % IACS, IEC 60028).
pub const RHO_COPPER: f64 = 1.7241e-8;
/// Temperature coefficient of the resistance of copper at 20 °C, 1/K (IEC 60028, from memory).
pub const COPPER_TEMPCO: f64 = 0.003_93;
/// Decibels per neper, 20 / ln 10.
pub const DB_PER_NEPER: f64 = 8.685_889_638_065_037;
/// One foot in metres (exact).
pub const FOOT_M: f64 = 0.3048;
/// One inch in metres (exact).
pub const INCH_M: f64 = 0.0254;
/// One dB per 100 ft in dB per metre.
pub const DB_PER_100FT: f64 = 1.0 / 30.48;
/// Boltzmann constant, J/K (exact, SI 2019).
pub const BOLTZMANN: f64 = 1.380_649e-23;
