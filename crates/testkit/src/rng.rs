//! A small seeded generator (SplitMix64), the same on every platform.

/// Numbers from a seed.
#[derive(Clone, Debug)]
pub struct Rng(u64);

impl Rng {
    /// From a seed.
    #[must_use]
    pub fn new(seed: u64) -> Self {
        Rng(seed)
    }

    /// The next 64 bits (Steele, Lea, Flood: Fast splittable pseudorandom number generators, 2014).
    pub fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// A whole number below `n`; 0 for 0.
    pub fn below(&mut self, n: usize) -> usize {
        if n == 0 {
            0
        } else {
            (self.bits() % n as u64) as usize
        }
    }

    /// A number in `0..1`.
    pub fn unit(&mut self) -> f64 {
        (self.bits() >> 11) as f64 / (1u64 << 53) as f64
    }

    /// A number in `lo..hi`, rounded to `digits` decimals, as in a text written by hand.
    pub fn number(&mut self, lo: f64, hi: f64, digits: u32) -> f64 {
        let scale = 10f64.powi(digits as i32);
        ((lo + (hi - lo) * self.unit()) * scale).round() / scale
    }

    /// True once in `n` times.
    pub fn once_in(&mut self, n: usize) -> bool {
        self.below(n) == 0
    }

    /// One of some things.
    ///
    /// # Panics
    /// When there are none.
    pub fn pick<'a, T>(&mut self, of: &'a [T]) -> &'a T {
        &of[self.below(of.len())]
    }

    /// One of some words.
    ///
    /// # Panics
    /// When there are none.
    pub fn word<'a>(&mut self, of: &[&'a str]) -> &'a str {
        of[self.below(of.len())]
    }
}
