//! Electrical length, and whether a tape agrees.

use super::compare::{Verdict, verdict};
use crate::C0;

/// A length with its uncertainty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Length {
    /// m.
    pub metres: f64,
    /// Standard uncertainty, m.
    pub u_metres: f64,
}

fn length(seconds: f64, u_relative: f64, velocity_factor: f64, u_velocity: f64) -> Length {
    let metres = seconds * C0 * velocity_factor;
    Length {
        metres,
        u_metres: metres.abs() * libm::hypot(u_relative, u_velocity),
    }
}

/// Length from a one-way delay in s. `u_velocity` is the relative standard uncertainty of the
/// velocity factor here and below.
#[must_use]
pub fn length_from_delay(
    one_way_s: f64,
    u_s: f64,
    velocity_factor: f64,
    u_velocity: f64,
) -> Length {
    length(one_way_s, u_s / one_way_s, velocity_factor, u_velocity)
}

/// Length from the slope of the phase of S11 of a line with an open or shorted end, degrees per
/// Hz (the sign is ignored): `|slope|·c·VF/720`.
#[must_use]
pub fn length_from_phase_slope(
    deg_per_hz: f64,
    u_deg_per_hz: f64,
    velocity_factor: f64,
    u_velocity: f64,
) -> Length {
    let slope = deg_per_hz.abs();
    length(
        slope / 720.0,
        u_deg_per_hz / slope,
        velocity_factor,
        u_velocity,
    )
}

/// Length from the spacing in Hz of like resonances of a line with an open or shorted end:
/// `c·VF/(2·spacing)`.
#[must_use]
pub fn length_from_spacing(hz: f64, u_hz: f64, velocity_factor: f64, u_velocity: f64) -> Length {
    length(0.5 / hz, u_hz / hz, velocity_factor, u_velocity)
}

/// Slope of a phase over frequency.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slope {
    /// Degrees per Hz.
    pub deg_per_hz: f64,
    /// Standard uncertainty by the scatter about the line; NaN with two points.
    pub u_deg_per_hz: f64,
}

/// Least-squares slope of a phase (Hz, degrees) in order of frequency. Jumps of 360° are taken
/// out, so neighbours must be less than half a turn apart: for S11 of a line, closer than
/// `c·VF/(4l)`. None with fewer than two frequencies.
#[must_use]
pub fn phase_slope(points: &[(f64, f64)]) -> Option<Slope> {
    let n = points.len() as f64;
    let f0 = points.iter().map(|p| p.0).sum::<f64>() / n;
    let unwrapped = unwrap(points);
    let y0 = unwrapped.iter().sum::<f64>() / n;
    let (mut ff, mut fy) = (0.0, 0.0);
    for (p, y) in points.iter().zip(&unwrapped) {
        ff += (p.0 - f0) * (p.0 - f0);
        fy += (p.0 - f0) * (y - y0);
    }
    if points.len() < 2 || ff.is_nan() || ff <= 0.0 {
        return None;
    }
    let deg_per_hz = fy / ff;
    let squares: f64 = points
        .iter()
        .zip(&unwrapped)
        .map(|(p, y)| {
            let r = y - y0 - deg_per_hz * (p.0 - f0);
            r * r
        })
        .sum();
    let u_deg_per_hz = if points.len() > 2 {
        libm::sqrt(squares / (n - 2.0) / ff)
    } else {
        f64::NAN
    };
    Some(Slope {
        deg_per_hz,
        u_deg_per_hz,
    })
}

fn unwrap(points: &[(f64, f64)]) -> Vec<f64> {
    let mut turns = 0.0;
    let mut before = f64::NAN;
    points
        .iter()
        .map(|p| {
            if !before.is_nan() {
                turns -= 360.0 * libm::round((p.1 - before) / 360.0);
            }
            before = p.1;
            p.1 + turns
        })
        .collect()
}

/// Electrical length against a tape.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tape {
    /// Electrical less tape, m.
    pub difference_m: f64,
    /// Expanded uncertainty of that (k = 2), m.
    pub expanded_m: f64,
    /// By the rule of [`verdict`]. `Differs`: the velocity factor or the type of the cable is not
    /// what it was taken for, or the tape is wrong.
    pub verdict: Verdict,
    /// Velocity factor that would make both equal.
    pub velocity_factor: f64,
    /// Its standard uncertainty, from the electrical measurement and the tape.
    pub u_velocity_factor: f64,
}

/// Compares an electrical length found with `velocity_factor` (relative standard uncertainty
/// `u_velocity`, contained in the length's) with a tape.
#[must_use]
pub fn against_tape(
    electrical: Length,
    tape: Length,
    velocity_factor: f64,
    u_velocity: f64,
) -> Tape {
    let difference_m = electrical.metres - tape.metres;
    let expanded_m = 2.0 * libm::hypot(electrical.u_metres, tape.u_metres);
    let implied = velocity_factor * tape.metres / electrical.metres;
    let whole = electrical.u_metres / electrical.metres;
    let timing = libm::sqrt((whole * whole - u_velocity * u_velocity).max(0.0));
    Tape {
        difference_m,
        expanded_m,
        verdict: verdict(difference_m, expanded_m, tape.metres),
        velocity_factor: implied,
        u_velocity_factor: implied * libm::hypot(timing, tape.u_metres / tape.metres),
    }
}
