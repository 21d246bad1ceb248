//! Lines from their dimensions: impedance, velocity factor, loss coefficients.

use crate::{C0, DB_PER_NEPER, ETA0, MU0, TwoTerm};
use core::f64::consts::PI;

/// Impedance in ohm of a coaxial line: `η0/(2π√εr) · ln(D/d)`, diameters in metres (inner
/// conductor; inside of the outer conductor).
///
/// Source: Pozar, Microwave Engineering 4e, sec. 2.2, table 2.1.
#[must_use]
pub fn coax_z0(inner_m: f64, outer_m: f64, permittivity: f64) -> f64 {
    ETA0 / (2.0 * PI * libm::sqrt(permittivity)) * libm::log(outer_m / inner_m)
}

/// Velocity factor of a relative permittivity: `1/√εr`.
#[must_use]
pub fn velocity_factor(permittivity: f64) -> f64 {
    1.0 / libm::sqrt(permittivity)
}

/// Impedance in ohm of two parallel wires: `η0/(π√εr) · acosh(s/d)`, wire diameter and spacing
/// of the centres in metres.
///
/// Source: Pozar 4e, table 2.1.
#[must_use]
pub fn open_wire_z0(wire_m: f64, spacing_m: f64, permittivity: f64) -> f64 {
    ETA0 / (PI * libm::sqrt(permittivity)) * libm::acosh(spacing_m / wire_m)
}

/// Surface resistance in ohm: `√(π f μ ρ)`.
///
/// Source: Pozar 4e, ch. 1 (section from memory).
#[must_use]
pub fn surface_resistance(resistivity: f64, relative_permeability: f64, f_hz: f64) -> f64 {
    libm::sqrt(PI * f_hz * MU0 * relative_permeability * resistivity)
}

/// Conductor coefficient `k1` in dB/m/√MHz of a coaxial line: `R'/(2 Z0)` with
/// `R' = (Rs/π)(Ks/d + Kb/D)`.
///
/// `strand` (Ks) is 1 for a solid wire, 1.25 common for strands; `braid` (Kb) is 1 for a smooth
/// tube, about 1.2 corrugated copper, 1.3 foil and braid, 1.7 to 2.6 braid.
///
/// Source: Pozar 4e, ch. 2, low-loss line (section from memory); the factors are handbook values
/// (from memory), checked against published cable data.
#[must_use]
pub fn conductor_k1(
    z0_ohm: f64,
    inner_m: f64,
    outer_m: f64,
    strand: f64,
    braid: f64,
    resistivity: f64,
) -> f64 {
    let rs = surface_resistance(resistivity, 1.0, 1e6);
    rs / PI * (strand / inner_m + braid / outer_m) / (2.0 * z0_ohm) * DB_PER_NEPER
}

/// Conductor coefficient `k1` in dB/m/√MHz of two parallel wires of `wire_m` diameter.
#[must_use]
pub fn open_wire_k1(z0_ohm: f64, wire_m: f64, resistivity: f64) -> f64 {
    let rs = surface_resistance(resistivity, 1.0, 1e6);
    2.0 * rs / (PI * wire_m) / (2.0 * z0_ohm) * DB_PER_NEPER
}

/// Dielectric coefficient `k2` in dB/m/MHz: `π f tan δ/(c·VF)`; the geometry does not enter.
///
/// Source: Pozar 4e, ch. 3, TEM dielectric loss (section from memory).
#[must_use]
pub fn dielectric_k2(velocity_factor: f64, loss_tangent: f64) -> f64 {
    PI * 1e6 * loss_tangent / (C0 * velocity_factor) * DB_PER_NEPER
}

/// A coaxial line by its construction, SI units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Coax {
    /// Diameter over the inner conductor, m.
    pub inner_m: f64,
    /// Inner diameter of the outer conductor, m.
    pub outer_m: f64,
    /// Relative permittivity (effective) of the dielectric.
    pub permittivity: f64,
    /// Loss tangent of the dielectric.
    pub loss_tangent: f64,
    /// Loss factor of the inner conductor (1 solid).
    pub strand: f64,
    /// Loss factor of the outer conductor (1 smooth tube).
    pub braid: f64,
    /// Resistivity, ohm·m.
    pub resistivity: f64,
}

impl Coax {
    /// Impedance from the nominal dimensions, ohm.
    #[must_use]
    pub fn z0(&self) -> f64 {
        coax_z0(self.inner_m, self.outer_m, self.permittivity)
    }

    /// Velocity factor.
    #[must_use]
    pub fn velocity_factor(&self) -> f64 {
        velocity_factor(self.permittivity)
    }

    /// Attenuation coefficients for a line of impedance `z0_ohm` (nominal dimensions give an
    /// impedance some per cent off, so take the stated one where there is one).
    #[must_use]
    pub fn loss(&self, z0_ohm: f64) -> TwoTerm {
        TwoTerm {
            k1: conductor_k1(
                z0_ohm,
                self.inner_m,
                self.outer_m,
                self.strand,
                self.braid,
                self.resistivity,
            ),
            k2: dielectric_k2(self.velocity_factor(), self.loss_tangent),
        }
    }
}
