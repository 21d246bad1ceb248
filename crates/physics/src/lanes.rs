//! Exponential, logarithm, sine and cosine without branches.
//!
//! A loop over an array calls them for every element, and the compiler turns it into vector
//! instructions. Additions, multiplications and divisions in a fixed order only, so the bits do not
//! depend on the platform.

/// Adding and subtracting this rounds to a whole number (1.5 · 2⁵²).
const ROUND: f64 = 6_755_399_441_055_744.0;

/// `e^x` for x ≤ 0; below −700 the value at −700. Taylor series after taking out powers of two.
#[inline(always)]
pub(crate) fn exp_negative(x: f64) -> f64 {
    // ln 2 in two parts, the first exact in few bits (as in fdlibm's e_exp.c)
    const LN2_HIGH: f64 = 6.931_471_803_691_238e-1;
    const LN2_LOW: f64 = 1.908_214_929_270_587_7e-10;
    let x = if x < -700.0 { -700.0 } else { x };
    let shifted = x * core::f64::consts::LOG2_E + ROUND;
    let n = shifted - ROUND;
    let r = (x - n * LN2_HIGH) - n * LN2_LOW;
    let mut p = 1.0 / 6_227_020_800.0;
    for k in [
        479_001_600.0,
        39_916_800.0,
        3_628_800.0,
        362_880.0,
        40_320.0,
        5_040.0,
        720.0,
        120.0,
        24.0,
        6.0,
        2.0,
    ] {
        p = p * r + 1.0 / k;
    }
    let p = 1.0 + (r + r * r * p);
    // the low bits of the shifted number are n: move them to the exponent of 1.0
    let power = f64::from_bits(
        shifted
            .to_bits()
            .wrapping_shl(52)
            .wrapping_add(1.0_f64.to_bits()),
    );
    p * power
}

/// Natural logarithm of a positive normal number: fdlibm's `e_log.c` without its branches.
#[inline(always)]
pub(crate) fn ln(x: f64) -> f64 {
    const HALF_ROOT: u64 = 0x3fe6_a09e_0000_0000; // about √½
    const LN2_HIGH: f64 = 6.931_471_803_691_238e-1;
    const LN2_LOW: f64 = 1.908_214_929_270_587_7e-10;
    let b = x.to_bits().wrapping_sub(HALF_ROOT);
    #[allow(
        clippy::cast_possible_wrap,
        clippy::cast_precision_loss,
        reason = "an exponent"
    )]
    let k = ((b as i64) >> 52) as f64;
    let f = f64::from_bits((b & 0x000f_ffff_ffff_ffff).wrapping_add(HALF_ROOT)) - 1.0;
    let s = f / (2.0 + f);
    let (z, h) = (s * s, 0.5 * f * f);
    let w = z * z;
    let t = w
        * (0.399_999_999_994_094_2 + w * (0.222_221_984_321_497_84 + w * 0.153_138_376_992_093_73))
        + z * (0.666_666_666_666_673_5
            + w * (0.285_714_287_436_623_9
                + w * (0.181_835_721_616_180_5 + w * 0.147_981_986_051_165_86)));
    k * LN2_HIGH - ((h - (s * (h + t) + k * LN2_LOW)) - f)
}

/// Sine and cosine of `x`, 0 ≤ x ≤ [`1e6`]. Polynomials of fdlibm (`k_sin.c`, `k_cos.c`).
#[inline(always)]
pub(crate) fn sin_cos(x: f64) -> (f64, f64) {
    // π/2 in three parts of 33 bits, so that n times the first two is exact
    const PIO2_1: f64 = 1.570_796_326_734_125_6;
    const PIO2_2: f64 = 6.077_100_506_303_966e-11;
    const PIO2_3: f64 = 2.022_266_248_795_950_6e-21;
    let shifted = x * core::f64::consts::FRAC_2_PI + ROUND;
    let n = shifted - ROUND;
    let r = ((x - n * PIO2_1) - n * PIO2_2) - n * PIO2_3;
    let z = r * r;
    let s = -2.505_076_025_340_686_3e-8 + z * 1.589_690_995_211_55e-10;
    let s = 2.755_731_370_707_006_8e-6 + z * s;
    let s = -1.984_126_982_985_795e-4 + z * s;
    let s = 8.333_333_333_322_49e-3 + z * s;
    let s = -1.666_666_666_666_663_2e-1 + z * s;
    let sin = r + r * z * s;
    let c = 2.087_572_321_298_175e-9 - z * 1.135_964_755_778_819_5e-11;
    let c = -2.755_731_435_139_066_3e-7 + z * c;
    let c = 2.480_158_728_947_673e-5 + z * c;
    let c = -1.388_888_888_887_411e-3 + z * c;
    let c = 4.166_666_666_666_66e-2 + z * c;
    let cos = 1.0 - (0.5 * z - z * z * c);
    // quadrant: swap in the odd ones; signs from the two low bits
    let quadrant = shifted.to_bits();
    let odd = 0_u64.wrapping_sub(quadrant & 1);
    let (sin, cos) = (sin.to_bits(), cos.to_bits());
    let swap = (sin ^ cos) & odd;
    let sin_sign = (quadrant & 2) << 62;
    let cos_sign = (quadrant.wrapping_add(1) & 2) << 62;
    (
        f64::from_bits((sin ^ swap) ^ sin_sign),
        f64::from_bits((cos ^ swap) ^ cos_sign),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn functions_agree_with_libm() {
        for i in 0..200_000_u32 {
            let x = f64::from(i) * 0.003_517;
            let (sin, cos) = sin_cos(x);
            assert!((sin - libm::sin(x)).abs() < 3e-16, "sin {x}");
            assert!((cos - libm::cos(x)).abs() < 3e-16, "cos {x}");
            let y = -x;
            let want = libm::exp(y);
            assert!(
                (exp_negative(y) - want).abs() <= 4e-16 * want || y < -700.0,
                "exp {y}"
            );
        }
        for x in [0.0, 1e5, 654_321.987, 1e6] {
            let (sin, cos) = sin_cos(x);
            assert!((sin - libm::sin(x)).abs() < 3e-16, "sin {x}");
            assert!((cos - libm::cos(x)).abs() < 3e-16, "cos {x}");
        }
        assert!(exp_negative(0.0) == 1.0);
        assert!(exp_negative(-1e9) < 1e-300);
    }

    #[test]
    fn the_logarithm_agrees_with_libm() {
        // both ends of the range, about 1, and all exponents
        for i in 0..200_000_u32 {
            let x = libm::exp((f64::from(i) - 100_000.0) * 0.007);
            let want = libm::log(x);
            assert!(
                (ln(x) - want).abs() <= 3e-16 * want.abs() + 2e-19,
                "ln {x}: {} not {want}",
                ln(x)
            );
            let near = 1.0 + (f64::from(i) - 100_000.0) * 1e-6;
            assert!((ln(near) - libm::log(near)).abs() <= 2e-16, "ln {near}");
        }
        assert!(ln(1.0) == 0.0);
    }

    #[test]
    fn far_below_zero_the_exponential_stays_at_its_end() {
        let end = libm::exp(-700.0);
        for x in [-700.0, -700.5, -745.0, -1e6] {
            assert!((exp_negative(x) / end - 1.0).abs() < 1e-15, "exp {x}");
        }
        assert!((exp_negative(-699.5) / libm::exp(-699.5) - 1.0).abs() < 1e-15);
    }
}
