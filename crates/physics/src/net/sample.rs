//! Deterministic quasi-random points (JCGM 101:2008): a scrambled Sobol sequence of fixed seed,
//! kept as one permutation of the ranks per dimension.
//!
//! Every input takes the midpoints (k + ½)/n of its distribution, each once, so a single input is
//! sampled exactly; the same points on every platform and in every run.

use std::sync::OnceLock;

use super::input::Shape;

/// Points in a sample.
pub const POINTS: usize = 1024;

/// Dimensions made together.
const BLOCK: usize = 128;

/// Blocks of dimensions at most: 8,192 causes and phases, more than a chain may have.
const BLOCKS: usize = 64;

/// Ranks of the points, one permutation per dimension.
fn ranks(dimension: usize) -> &'static [u16] {
    static ALL: [OnceLock<Box<[u16]>>; BLOCKS] = [const { OnceLock::new() }; BLOCKS];
    // beyond the last block dimensions repeat: correlated, but a value all the same
    let block = (dimension / BLOCK) % BLOCKS;
    let table = ALL[block].get_or_init(|| {
        // the library scrambles 256 dimensions a seed
        let seed = u32::try_from(block / 2).unwrap_or(0) + 1;
        let first = (block % 2) * BLOCK;
        (first..first + BLOCK)
            .flat_map(|j| {
                (0..POINTS).map(move |k| {
                    let x = sobol_burley::sample(
                        u32::try_from(k).unwrap_or(0),
                        u32::try_from(j).unwrap_or(0),
                        seed,
                    );
                    #[allow(
                        clippy::cast_possible_truncation,
                        clippy::cast_sign_loss,
                        clippy::cast_precision_loss,
                        reason = "0 <= x < 1"
                    )]
                    let rank = (f64::from(x) * POINTS as f64) as u16;
                    rank
                })
            })
            .collect()
    });
    let at = (dimension % BLOCK) * POINTS;
    &table[at..at + POINTS]
}

struct Tables {
    normal: Vec<f64>,
    flat: Vec<f64>,
    turn: Vec<(f64, f64)>,
    half: Vec<f64>,
}

#[allow(clippy::cast_precision_loss, reason = "counts")]
fn tables() -> &'static Tables {
    static ONCE: OnceLock<Tables> = OnceLock::new();
    ONCE.get_or_init(|| {
        let middle = |k: usize| (k as f64 + 0.5) / POINTS as f64;
        let each = |f: &dyn Fn(f64) -> f64| (0..POINTS).map(|k| f(middle(k))).collect();
        Tables {
            normal: each(&normal_quantile),
            flat: each(&|p| (p - 0.5) * 2.0 * libm::sqrt(3.0)),
            turn: (0..POINTS)
                .map(|k| {
                    let (s, c) = libm::sincos(core::f64::consts::TAU * middle(k));
                    (c, s)
                })
                .collect(),
            half: each(&|p| libm::sin(core::f64::consts::PI * (p - 0.5))),
        }
    })
}

/// One dimension of the sample, looked up once for all its points.
#[derive(Clone, Copy)]
pub(super) struct Dimension {
    ranks: &'static [u16],
    tables: &'static Tables,
}

impl Dimension {
    pub(super) fn new(dimension: usize) -> Self {
        Dimension {
            ranks: ranks(dimension),
            tables: tables(),
        }
    }

    #[inline(always)]
    fn rank(&self, k: usize) -> usize {
        usize::from(self.ranks[k & (POINTS - 1)]) & (POINTS - 1)
    }

    /// Standardised value of point `k`.
    #[inline(always)]
    pub(super) fn value(&self, shape: Shape, k: usize) -> f64 {
        match shape {
            Shape::Rectangular => self.tables.flat[self.rank(k)],
            Shape::Normal => self.tables.normal[self.rank(k)],
        }
    }

    /// Cosine and sine of a free angle.
    #[inline(always)]
    pub(super) fn turn(&self, k: usize) -> (f64, f64) {
        self.tables.turn[self.rank(k)]
    }

    /// Sine of half of a free angle.
    #[inline(always)]
    pub(super) fn half_sine(&self, k: usize) -> f64 {
        self.tables.half[self.rank(k)]
    }
}

/// Standard normal quantile, by Newton's method on the complementary error function.
#[must_use]
pub fn normal_quantile(p: f64) -> f64 {
    let mut x = 0.0;
    for _ in 0..200 {
        let density = libm::exp(-0.5 * x * x) / libm::sqrt(core::f64::consts::TAU);
        let step =
            ((0.5 * libm::erfc(-x / core::f64::consts::SQRT_2) - p) / density).clamp(-0.5, 0.5);
        x -= step;
        if step.abs() < 1e-15 {
            break;
        }
    }
    x
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_input_is_sampled_exactly() {
        for j in [0, 1, 17, 127, 128, 300, 1000] {
            let mut seen = vec![false; POINTS];
            ranks(j).iter().for_each(|r| seen[usize::from(*r)] = true);
            assert!(seen.iter().all(|s| *s), "dimension {j}");
        }
    }

    #[test]
    fn quantiles_are_those_of_the_tables() {
        // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1: 97.5 % at 1.959964
        assert!((normal_quantile(0.975) - 1.959_963_985).abs() < 1e-8);
        assert!((normal_quantile(0.022_750_131_948_179) + 2.0).abs() < 1e-12);
        assert!(normal_quantile(0.5).abs() < 1e-15);
    }
}
