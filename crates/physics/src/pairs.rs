//! Chains whose reflections have unknown phase: mean, spread and extremes of the loss.

use crate::DB_PER_NEPER;
use crate::mismatch::{mismatch_loss, swr_from_gamma};
use downlead_quantity::from_db;

/// One element of a chain: loss between matched ends and the size of its reflections.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Block {
    /// Insertion loss between matched ends, dB.
    pub loss_db: f64,
    /// |S11|, on the side of the source.
    pub s11: f64,
    /// |S22|, on the side of the load.
    pub s22: f64,
}

/// Loss of a chain with unknown phases.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChainLoss {
    /// Sum of the losses plus the mismatch losses of source and load, dB: the mean.
    pub sum_db: f64,
    /// Standard deviation over random phases, dB.
    pub sigma_db: f64,
    /// Most the loss can lie above the sum, dB (≥ 0), first order.
    pub worst_high_db: f64,
    /// Most the loss can lie below the sum, dB (≥ 0; infinite when the reflections could resonate
    /// without limit), first order.
    pub worst_low_db: f64,
    /// Like [`Self::worst_high_db`], with multiple reflections: no phases exceed it, some reach
    /// it.
    pub extreme_high_db: f64,
    /// Like [`Self::worst_low_db`], with multiple reflections.
    pub extreme_low_db: f64,
}

/// The pair rule: every reflector a backward wave meets (the source, each output port) with
/// every reflector a forward wave meets further on (each input port, the load). With
/// `x = r_i r_j · 10^(−A_between/10)` one sigma is `8.686 √(Σx²/2)`; the loss lies at most
/// `20 log10(1 + Σx)` above and `−20 log10(1 − Σx)` below the sum.
///
/// The sigma and the two `worst` figures are first order in x; derived, and checked by simulation
/// of random phases. The two `extreme` figures are exact: `|1 − Γ s|` lies between `1 ∓ |Γ||s|`,
/// and the reflection looking back through a block is at most `s22 + t |Γ|/(1 − s11 |Γ|)`, both
/// reached by the same phases. `source` and `load` are |Γ|.
#[must_use]
pub fn chain_loss(source: f64, blocks: &[Block], load: f64) -> ChainLoss {
    // A backward reflector's weight falls by each block's loss on its way to a forward one (the
    // wave passes twice, so the amplitude product falls by the loss as a power ratio). Two running
    // sums make the double loop over pairs a single one.
    let (mut near, mut near2) = (source, source * source);
    let (mut sum, mut sum2) = (0.0, 0.0);
    let (mut most, mut least) = (source, source); // reflection looking back, all in phase
    let (mut shrink, mut grow) = (1.0, 1.0);
    let mut loss = 0.0;
    for block in blocks {
        sum += near * block.s11;
        sum2 += near2 * block.s11 * block.s11;
        let t = from_db(-block.loss_db);
        let (shrunk, grown) = (1.0 - most * block.s11, 1.0 + least * block.s11);
        shrink *= shrunk.max(0.0);
        grow *= grown;
        most = block.s22 + t * most / shrunk;
        least = block.s22 + t * least / grown;
        near = near * t + block.s22;
        near2 = near2 * t * t + block.s22 * block.s22;
        loss += block.loss_db;
    }
    sum += near * load;
    sum2 += near2 * load * load;
    shrink *= (1.0 - most * load).max(0.0);
    grow *= 1.0 + least * load;
    ChainLoss {
        sum_db: loss + mismatch_loss(source) + mismatch_loss(load),
        sigma_db: DB_PER_NEPER * libm::sqrt(0.5 * sum2),
        worst_high_db: 20.0 * libm::log10(1.0 + sum),
        // + 0.0 turns the −0 of a chain without reflections into 0
        worst_low_db: if sum < 1.0 {
            -20.0 * libm::log10(1.0 - sum) + 0.0
        } else {
            f64::INFINITY
        },
        extreme_high_db: 20.0 * libm::log10(grow),
        extreme_low_db: -20.0 * libm::log10(shrink) + 0.0,
    }
}

/// What the source sees of a chain with unknown phases.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Seen {
    /// Root-sum-square |Γ|.
    pub rms_gamma: f64,
    /// Sum of all |Γ|, at most 1.
    pub worst_gamma: f64,
    /// Like [`Self::worst_gamma`], with multiple reflections: no phases exceed it.
    pub extreme_gamma: f64,
}

impl Seen {
    /// Standing-wave ratio of the root-sum-square.
    #[must_use]
    pub fn rms_swr(&self) -> f64 {
        swr_from_gamma(self.rms_gamma)
    }

    /// Largest standing-wave ratio.
    #[must_use]
    pub fn worst_swr(&self) -> f64 {
        swr_from_gamma(self.worst_gamma)
    }
}

/// Reflection seen by the source: every forward-facing reflector, less twice the loss before it.
#[must_use]
pub fn seen_by_source(blocks: &[Block], load: f64) -> Seen {
    let (mut sum, mut sum2) = (0.0, 0.0);
    let mut loss = 0.0;
    let mut add = |r: f64, loss: f64| {
        let x = r * from_db(-loss);
        sum += x;
        sum2 += x * x;
    };
    for block in blocks {
        add(block.s11, loss);
        loss += block.loss_db;
    }
    add(load, loss);
    let extreme = blocks.iter().rev().fold(load, |g, block| {
        let rest = 1.0 - block.s22 * g;
        if rest > 0.0 {
            (block.s11 + from_db(-block.loss_db) * g / rest).min(1.0)
        } else {
            1.0
        }
    });
    Seen {
        extreme_gamma: extreme.min(1.0),
        rms_gamma: libm::sqrt(sum2).min(1.0),
        worst_gamma: sum.min(1.0),
    }
}

/// Limits of the standing-wave ratio of two lossless discontinuities: best `S1/S2` (≥ 1) and
/// worst `S1·S2`.
#[must_use]
pub fn two_discontinuities(swr_a: f64, swr_b: f64) -> (f64, f64) {
    let q = swr_a / swr_b;
    (q.max(1.0 / q), swr_a * swr_b)
}

/// Ripple of the loss in dB by two reflections with a matched attenuator between them: most
/// below the mean, `−20 log10(1 − x)`, and most above it, `20 log10(1 + x)` (both ≥ 0).
#[must_use]
pub fn ripple(gamma_a: f64, gamma_b: f64, between_db: f64) -> (f64, f64) {
    let x = gamma_a * gamma_b * from_db(-between_db);
    (-20.0 * libm::log10(1.0 - x), 20.0 * libm::log10(1.0 + x))
}
