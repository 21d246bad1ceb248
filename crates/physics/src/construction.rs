//! Lines from their dimensions: impedance, capacitance, loss coefficients, cut-off of the next
//! mode, and the low-frequency limit of copper-clad steel.

use crate::bessel::{wire_ratio, wire_ratio_clad};
use crate::{C0, DB_PER_NEPER, ETA0, MU0, RHO_COPPER, TwoTerm};
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

/// Relative permittivity (effective) of a velocity factor.
#[must_use]
pub fn permittivity(velocity_factor: f64) -> f64 {
    1.0 / (velocity_factor * velocity_factor)
}

/// Capacitance in F/m of a line: `1/(c·VF·Z0)`.
#[must_use]
pub fn capacitance(z0_ohm: f64, velocity_factor: f64) -> f64 {
    1.0 / (C0 * velocity_factor * z0_ohm)
}

/// Inductance in H/m of a line: `Z0/(c·VF)`.
#[must_use]
pub fn inductance(z0_ohm: f64, velocity_factor: f64) -> f64 {
    z0_ohm / (C0 * velocity_factor)
}

/// Impedance in ohm from velocity factor and capacitance (F/m).
///
/// Source: MIL-DTL-28830E, 4.7.10.2 (there with the constant 101670 for percent and pF/ft).
#[must_use]
pub fn z0_from_capacitance(velocity_factor: f64, farad_per_m: f64) -> f64 {
    1.0 / (C0 * velocity_factor * farad_per_m)
}

/// Impedance in ohm of two parallel wires: `η0/(π√εr) · acosh(s/d)`, wire diameter and spacing
/// of the centres in metres.
///
/// Source: Pozar 4e, table 2.1.
#[must_use]
pub fn open_wire_z0(wire_m: f64, spacing_m: f64, permittivity: f64) -> f64 {
    ETA0 / (PI * libm::sqrt(permittivity)) * libm::acosh(spacing_m / wire_m)
}

/// Effective diameter of a stranded conductor relative to the diameter over the strands, for the
/// impedance; 1 for a single wire, `None` for a strand count the handbooks do not list.
///
/// Source: cable-handbook strand factors (from memory).
#[must_use]
pub fn strand_diameter_factor(strands: u32) -> Option<f64> {
    match strands {
        1 => Some(1.0),
        7 => Some(0.939),
        19 => Some(0.970),
        37 => Some(0.980),
        _ => None,
    }
}

/// Skin depth in metres: `√(ρ/(π f μ))`, resistivity in ohm·m.
///
/// Source: Pozar 4e, ch. 1 (section from memory).
#[must_use]
pub fn skin_depth(resistivity: f64, relative_permeability: f64, f_hz: f64) -> f64 {
    libm::sqrt(resistivity / (PI * f_hz * MU0 * relative_permeability))
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

/// Braid factor for a braid over `outer_m` metres: `1.62 + 2.0·D(inch)`.
///
/// A linear law fitted to four published cables of 1.5 mm to 7.3 mm over the dielectric; common
/// practice, no standard.
#[must_use]
pub fn braid_factor(outer_m: f64) -> f64 {
    1.62 + 2.0 * outer_m / crate::INCH_M
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

    /// Exact cut-off of the TE11 mode, Hz.
    #[must_use]
    pub fn te11_cutoff(&self) -> f64 {
        te11_cutoff(self.inner_m, self.outer_m, self.permittivity)
    }
}

/// Approximate cut-off in hertz of the TE11 mode of a coaxial line:
/// `c/(π√εr (d + D)/2)`; 2 to 3 % low.
///
/// Source: Pozar 4e, sec. 3.5.
#[must_use]
pub fn te11_cutoff_approx(inner_m: f64, outer_m: f64, permittivity: f64) -> f64 {
    C0 / (PI * libm::sqrt(permittivity) * 0.5 * (inner_m + outer_m))
}

/// Exact cut-off in hertz of the TE11 mode: first root of
/// `J1'(ka) Y1'(kb) = J1'(kb) Y1'(ka)`. NaN for impossible dimensions.
///
/// Source: Pozar 4e, sec. 3.5 (exact root).
#[must_use]
pub fn te11_cutoff(inner_m: f64, outer_m: f64, permittivity: f64) -> f64 {
    if !(inner_m > 0.0 && outer_m > inner_m && permittivity > 0.0) {
        return f64::NAN;
    }
    let (a, b) = (0.5 * inner_m, 0.5 * outer_m);
    let j1d = |x: f64| libm::j0(x) - libm::j1(x) / x;
    let y1d = |x: f64| libm::y0(x) - libm::y1(x) / x;
    let f = |k: f64| j1d(k * a) * y1d(k * b) - j1d(k * b) * y1d(k * a);
    // k(a + b)/2 is 1 for a thin gap and 0.92 at least for a thin wire: step up until the sign
    // changes, then halve
    let unit = 2.0 / (a + b);
    let (mut low, step) = (0.8 * unit, 0.02 * unit);
    let mut high = low + step;
    let mut tries = 0;
    while f(low) * f(high) > 0.0 {
        (low, high) = (high, high + step);
        tries += 1;
        if tries > 50 {
            return f64::NAN;
        }
    }
    for _ in 0..80 {
        let mid = 0.5 * (low + high);
        if f(low) * f(mid) > 0.0 {
            low = mid;
        } else {
            high = mid;
        }
    }
    0.5 * (low + high) * C0 / (2.0 * PI * libm::sqrt(permittivity))
}

/// Resistance of a solid copper wire over the skin-effect law `Rs/(πd)` (exact, Bessel
/// functions); tends to `1 + δ/d` for a thin skin.
#[must_use]
pub fn solid_wire_factor(diameter_m: f64, resistivity: f64, f_hz: f64) -> f64 {
    wire_ratio(diameter_m, resistivity, f_hz)
}

/// First-order form of [`solid_wire_factor`]: `1 + δ/d`.
#[must_use]
pub fn solid_wire_factor_first_order(diameter_m: f64, resistivity: f64, f_hz: f64) -> f64 {
    1.0 + skin_depth(resistivity, 1.0, f_hz) / diameter_m
}

/// A copper-clad steel wire.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CladWire {
    /// Outer diameter, m.
    pub diameter_m: f64,
    /// Thickness of the copper, m.
    pub copper_m: f64,
    /// Resistivity of the copper, ohm·m.
    pub copper_resistivity: f64,
    /// Resistivity of the steel, ohm·m.
    pub steel_resistivity: f64,
    /// Relative permeability of the steel.
    pub steel_permeability: f64,
}

impl CladWire {
    /// The usual composition: copper of 97 % IACS, steel of 9 % IACS and relative permeability
    /// 200 (common practice).
    #[must_use]
    pub fn usual(diameter_m: f64, copper_m: f64) -> Self {
        Self {
            diameter_m,
            copper_m,
            copper_resistivity: RHO_COPPER / 0.97,
            steel_resistivity: RHO_COPPER / 0.09,
            steel_permeability: 200.0,
        }
    }

    /// Resistance at `f_hz` over the skin-effect law of a solid wire of annealed copper: how far
    /// the square-root law is wrong at low frequency. Two-layer Bessel solution; tends to
    /// `√(ρ/ρ_annealed)`, 1.015 for the usual composition, at high frequency.
    #[must_use]
    pub fn factor(&self, f_hz: f64) -> f64 {
        wire_ratio_clad(self, f_hz)
    }
}

/// Copper thickness over diameter of a copper-clad steel wire of a conductivity class (percent
/// IACS), the direct current flowing through copper of 97 % and steel of 9 %: the copper area is
/// `(class − 9)/(97 − 9)`. NaN outside 9 to 97.
#[must_use]
pub fn clad_thickness(conductivity_percent: f64) -> f64 {
    let area = (conductivity_percent - 9.0) / 88.0;
    0.5 * (1.0 - libm::sqrt(1.0 - area))
}
