//! Terrain between two antennas: single edges, Bullington's one edge, cascades of edges, Fresnel zones.

use super::EARTH_M;
use crate::C0;

/// How far an edge stands in the way: `ν = h √(2/λ · (1/d1 + 1/d2))`, all in m, `above_m` positive when the
/// edge is above the line between the antennas (ITU-R P.526, eq. 26).
#[must_use]
pub fn edge_nu(f_hz: f64, d1_m: f64, d2_m: f64, above_m: f64) -> f64 {
    above_m * libm::sqrt(2.0 * f_hz / C0 * (1.0 / d1_m + 1.0 / d2_m))
}

/// Loss in dB of a knife edge: an approximation good to about 0.1 dB; 0 below ν = −0.78.
///
/// Source: ITU-R P.526, eq. 31; ITU-R P.1812-6, eq. 12.
#[must_use]
pub fn knife_edge(nu: f64) -> f64 {
    if nu <= -0.78 {
        return 0.0;
    }
    let x = nu - 0.1;
    6.9 + 20.0 * libm::log10(libm::sqrt(x * x + 1.0) + x)
}

/// Radius in m of the first Fresnel zone `d1_m` and `d2_m` from the ends: `√(λ d1 d2/(d1 + d2))`.
#[must_use]
pub fn fresnel_radius_m(f_hz: f64, d1_m: f64, d2_m: f64) -> f64 {
    libm::sqrt(C0 / f_hz * d1_m * d2_m / (d1_m + d2_m))
}

/// A profile of the ground with an antenna at each end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Terrain<'a> {
    /// Distance from the first end and height above sea level of each point, m; distances rise from 0.
    pub points: &'a [(f64, f64)],
    /// Heights of both antennas above sea level, m.
    pub ends_m: (f64, f64),
    /// Effective radius of the earth over the real one.
    pub k: f64,
}

/// One edge between two others.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Edge {
    /// Its point of the profile, for a real one.
    pub point: Option<usize>,
    /// Distance from the first end, m.
    pub at_m: f64,
    /// Height above the line between what it stands between, curvature of the earth included, m.
    pub above_m: f64,
    /// See [`edge_nu`].
    pub nu: f64,
    /// Loss of it alone, dB.
    pub loss_db: f64,
}

/// What Bullington's construction gives.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bullington {
    /// The one edge in place of all: where the horizon lines of both ends cross, or the point that comes
    /// nearest to the line of sight.
    pub edge: Edge,
    /// Whether the ends see each other.
    pub in_sight: bool,
    /// Loss with the empirical correction, dB.
    pub loss_db: f64,
}

/// What a cascade of at most three edges gives.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cascade {
    /// The edge with the highest ν.
    pub main: Edge,
    /// The highest one between the first end and it.
    pub before: Option<Edge>,
    /// The highest one between it and the second end.
    pub after: Option<Edge>,
    /// Plain sum of the losses of the three, without a correction, dB.
    pub sum_db: f64,
    /// Loss with the correction, dB.
    pub loss_db: f64,
}

/// How far a point of the profile is below the line of sight.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Clearance {
    /// Distance from the first end, m.
    pub at_m: f64,
    /// Metres below the line; negative when it stands above.
    pub clear_m: f64,
    /// Radius of the first Fresnel zone there, m.
    pub fresnel_m: f64,
}

impl Clearance {
    /// Clearance as a share of the first Fresnel zone.
    #[must_use]
    pub fn share(&self) -> f64 {
        self.clear_m / self.fresnel_m
    }
}

impl Terrain<'_> {
    /// Distance between the ends, m; NaN without points.
    #[must_use]
    pub fn length_m(&self) -> f64 {
        self.points.last().map_or(f64::NAN, |p| p.0)
    }

    /// How far the earth bulges between two places `d1_m` and `d2_m` away, m.
    fn bulge_m(&self, d1_m: f64, d2_m: f64) -> f64 {
        d1_m * d2_m / (2.0 * self.k * EARTH_M)
    }

    fn inner(&self) -> impl Iterator<Item = (usize, f64, f64)> + '_ {
        let last = self.points.len().saturating_sub(1);
        let points = self.points.iter().enumerate();
        points
            .filter(move |(i, _)| *i > 0 && *i < last)
            .map(|(i, &(d, h))| (i, d, h))
    }

    /// Loss of the terrain by one equivalent edge with the empirical correction; `None` for a profile
    /// without a point between its ends.
    ///
    /// Source: ITU-R P.1812-6, section 4.3.1, eq. 13 to 21 (the part that is not smooth earth).
    #[must_use]
    pub fn bullington(&self, f_hz: f64) -> Option<Bullington> {
        let length = self.length_m();
        let (ht, hr) = self.ends_m;
        let rise = |d: f64, h: f64| h + self.bulge_m(d, length - d);
        // slopes towards the horizon of each end
        let steepest = |slope: &dyn Fn(f64, f64) -> f64| {
            let slopes = self.inner().map(|(_, d, h)| slope(d, h));
            slopes.fold(f64::NEG_INFINITY, f64::max)
        };
        let from_first = steepest(&|d, h| (rise(d, h) - ht) / d);
        let direct = (hr - ht) / length;
        let line = |d: f64| (ht * (length - d) + hr * d) / length;
        // grazing, both give the same, but the horizon lines cross nowhere when they lie in one
        let (edge, in_sight) = if from_first <= direct {
            let of = |(i, d, h): (usize, f64, f64)| {
                self.edge(f_hz, Some(i), (d, length - d), rise(d, h) - line(d))
            };
            (highest(self.inner().map(of))?, true)
        } else {
            let from_second = steepest(&|d, h| (rise(d, h) - hr) / (length - d));
            let d = (hr - ht + from_second * length) / (from_first + from_second);
            let above = ht + from_first * d - line(d);
            (self.edge(f_hz, None, (d, length - d), above), false)
        };
        if !edge.nu.is_finite() {
            return None;
        }
        let share = 1.0 - libm::exp(-edge.loss_db / 6.0);
        Some(Bullington {
            edge,
            in_sight,
            loss_db: edge.loss_db + share * (10.0 + 0.02 * length / 1000.0),
        })
    }

    /// Loss by the highest edge and the highest on each side of it, as seen from it; `None` for a profile
    /// without a point between its ends.
    ///
    /// Source: ITU-R P.526, cascaded knife edges (formula from memory): `J(p) + T (J(t) + J(r) + C)` with
    /// `T = 1 − exp(−J(p)/6)` and `C = 10 + 0.04 D` (km).
    #[must_use]
    pub fn cascade(&self, f_hz: f64) -> Option<Cascade> {
        let last = self.points.len().checked_sub(1)?;
        let (ht, hr) = self.ends_m;
        let between = |(a, ha): (usize, f64), (b, hb): (usize, f64)| {
            highest((a + 1..b).map(|i| {
                let (d, h) = self.points[i];
                let (d1, d2) = (d - self.points[a].0, self.points[b].0 - d);
                let line = (ha * d2 + hb * d1) / (d1 + d2);
                self.edge(f_hz, Some(i), (d1, d2), h + self.bulge_m(d1, d2) - line)
                    .moved_to(d)
            }))
        };
        let main = between((0, ht), (last, hr))?;
        let top = (main.point?, self.points[main.point?].1);
        let before = between((0, ht), top);
        let after = between(top, (last, hr));
        let sides = [before, after]
            .iter()
            .flatten()
            .map(|e| e.loss_db)
            .sum::<f64>();
        let share = 1.0 - libm::exp(-main.loss_db / 6.0);
        let correction = 10.0 + 0.04 * self.length_m() / 1000.0;
        Some(Cascade {
            main,
            before,
            after,
            sum_db: main.loss_db + sides,
            loss_db: main.loss_db + share * (sides + correction),
        })
    }

    /// How far each point between the ends stays below the line of sight.
    #[must_use]
    pub fn clearances(&self, f_hz: f64) -> Vec<Clearance> {
        let length = self.length_m();
        let (ht, hr) = self.ends_m;
        self.inner()
            .map(|(_, d, h)| Clearance {
                at_m: d,
                clear_m: (ht * (length - d) + hr * d) / length - h - self.bulge_m(d, length - d),
                fresnel_m: fresnel_radius_m(f_hz, d, length - d),
            })
            .collect()
    }

    fn edge(&self, f_hz: f64, point: Option<usize>, (d1, d2): (f64, f64), above_m: f64) -> Edge {
        let nu = edge_nu(f_hz, d1, d2, above_m);
        Edge {
            point,
            at_m: d1,
            above_m,
            nu,
            loss_db: knife_edge(nu),
        }
    }
}

impl Edge {
    fn moved_to(self, at_m: f64) -> Edge {
        Edge { at_m, ..self }
    }
}

fn highest(edges: impl Iterator<Item = Edge>) -> Option<Edge> {
    edges.max_by(|a, b| a.nu.total_cmp(&b.nu))
}
