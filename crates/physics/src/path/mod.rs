//! The way between two stations: free space, horizon, two rays; edges, terrain, built-up land and
//! noise from outside in the modules below.
//!
//! Losses are positive, in dB, between isotropic antennas (basic transmission loss of ITU-R P.341).

mod hata;
mod outside;
mod terrain;

pub use hata::{HATA_LIMITS, HataForm, HataLimit, Outside, hata};
pub use outside::{
    ExternalNoise, NoiseRange, Surroundings, degradation, external_noise, system_noise_figure,
};
pub use terrain::{
    Bullington, Cascade, Clearance, Edge, Terrain, edge_nu, fresnel_radius_m, knife_edge,
};

use crate::C0;
use core::f64::consts::PI;
use downlead_quantity::to_db;

/// Radius of the earth, m (ITU-R P.1812-6, section 4.1).
pub const EARTH_M: f64 = 6_371_000.0;

/// Ratio of the effective to the real radius of the earth of a refractivity gradient: 157/(157 − ΔN).
///
/// `gradient` is the median fall of refractivity in the lowest kilometre, N-units per km, positive.
/// Source: ITU-R P.1812-6, eq. 6. At 157 the ray follows the earth: infinity.
#[must_use]
pub fn k_factor(gradient: f64) -> f64 {
    157.0 / (157.0 - gradient)
}

/// Loss of free space in dB over `distance_m` at `f_hz`: `20 log10(4πd/λ)`, with the exact constant
/// (32.4478 dB at 1 MHz and 1 km; ITU-R P.525 prints 32.4).
#[must_use]
pub fn free_space(f_hz: f64, distance_m: f64) -> f64 {
    20.0 * libm::log10(4.0 * PI * distance_m * f_hz / C0)
}

/// Distance in m between two antennas `along_m` apart whose heights differ by `rise_m`
/// (ITU-R P.1812-6, eq. 8a).
#[must_use]
pub fn slant_m(along_m: f64, rise_m: f64) -> f64 {
    libm::hypot(along_m, rise_m)
}

/// Distance in m at which two antennas still see each other over a smooth earth: `√(2 k a h1) + √(2 k a h2)`,
/// heights in m above that earth (4.1218 km per √m for k = 4/3). Below the earth counts as on it.
#[must_use]
pub fn radio_horizon_m(h1_m: f64, h2_m: f64, k: f64) -> f64 {
    let one = |h: f64| libm::sqrt(2.0 * k * EARTH_M * h.max(0.0));
    one(h1_m) + one(h2_m)
}

/// Loss in dB over flat ground that reflects all, with reversed phase: the sum of the direct and the
/// reflected ray, heights in m above the ground (theory; what each antenna does with direction is left out).
#[must_use]
pub fn two_ray(f_hz: f64, distance_m: f64, h1_m: f64, h2_m: f64) -> f64 {
    let wave = 2.0 * PI * f_hz / C0;
    let direct = slant_m(distance_m, h1_m - h2_m);
    let reflected = slant_m(distance_m, h1_m + h2_m);
    let turn = wave * (reflected - direct);
    let (a, b) = (1.0 / direct, 1.0 / reflected);
    // |a − b·e^(−j turn)|², in a form that keeps its digits for small angles
    let half = libm::sin(0.5 * turn);
    let square = (a - b) * (a - b) + 4.0 * a * b * half * half;
    -to_db(square / (4.0 * wave * wave))
}

/// Where the loss over flat ground begins to follow [`plane_earth`]: `4 h1 h2/λ`, m.
#[must_use]
pub fn two_ray_begins_m(f_hz: f64, h1_m: f64, h2_m: f64) -> f64 {
    4.0 * h1_m * h2_m * f_hz / C0
}

/// Loss in dB over flat ground far beyond [`two_ray_begins_m`]: `40 log10 d − 20 log10(h1 h2)`, m (theory).
#[must_use]
pub fn plane_earth(distance_m: f64, h1_m: f64, h2_m: f64) -> f64 {
    40.0 * libm::log10(distance_m) - 20.0 * libm::log10(h1_m * h2_m)
}

/// Margin in dB that a share of all places takes when levels spread log-normally with `spread_db`
/// (one standard deviation) from place to place: `σ Φ⁻¹(share)`; 0 at a half.
#[must_use]
pub fn margin_of_places(share: f64, spread_db: f64) -> f64 {
    spread_db * crate::measure::normal_quantile(share)
}

/// Share of the places whose margin is above 0 when the margin at half of the places is `median_db`.
#[must_use]
pub fn share_of_places(median_db: f64, spread_db: f64) -> f64 {
    0.5 * libm::erfc(-median_db / spread_db / core::f64::consts::SQRT_2)
}
