//! Prints numbers in the customary form, with no more digits than their accuracy supports.

use crate::w_to_dbm;

/// A number with just so many decimals: what `format!("{value:.digits$}")` gives, in a fraction of
/// its time where the rounding is plain. Reports and tooltips of long files are numbers mostly.
fn fixed(value: f64, digits: usize) -> String {
    const TENS: [u64; 7] = [1, 10, 100, 1_000, 10_000, 100_000, 1_000_000];
    /// Below it a product is off by less than `NEAR`.
    const LARGE: f64 = 1e9;
    const NEAR: f64 = 1e-6;
    let scale = TENS.get(digits).copied().unwrap_or(0);
    // up to 1e6 each is a float without rounding
    let scaled = value.abs() * scale as f64;
    // not a number, infinite, large: all that is not below is left to the long way
    if scale > 0 && scaled < LARGE {
        let whole = scaled as u64;
        let rest = scaled - whole as f64;
        if (rest - 0.5).abs() > NEAR {
            let n = whole + u64::from(rest > 0.5);
            return in_decimal(n, digits, value.is_sign_negative());
        }
    }
    format!("{value:.digits$}")
}

/// `n` with a point before its last `digits` digits.
fn in_decimal(mut n: u64, digits: usize, negative: bool) -> String {
    // from the end: ten digits at most, a point, a sign
    let mut text = ['0'; 12];
    let mut at = text.len();
    let mut put = |c: char| {
        at -= 1;
        text[at] = c;
    };
    for place in 0.. {
        if place == digits && digits > 0 {
            put('.');
        }
        if n == 0 && place > digits {
            break;
        }
        put(char::from(b'0' + (n % 10) as u8));
        n /= 10;
    }
    if negative {
        put('-');
    }
    text[at..].iter().collect()
}

/// A number with at most `digits` decimals, trailing zeros dropped.
#[must_use]
pub fn number(value: f64, digits: usize) -> String {
    let mut s = fixed(value, digits);
    if s.contains('.') {
        s.truncate(s.trim_end_matches('0').trim_end_matches('.').len());
    }
    if s == "-0" { "0".to_owned() } else { s }
}

/// A number with `digits` significant digits, plain notation.
#[must_use]
pub fn sig(value: f64, digits: i32) -> String {
    if value == 0.0 || !value.is_finite() {
        return number(value, 0);
    }
    let magnitude = libm::floor(libm::log10(value.abs())) as i32;
    let mut decimals = (digits - 1 - magnitude).max(0) as usize;
    let s = fixed(value, decimals);
    // 9.996 with three digits rounds up to 10.00: one digit too many
    let rounded: f64 = s.parse().unwrap_or(value);
    if decimals > 0 && libm::floor(libm::log10(rounded.abs())) as i32 > magnitude {
        decimals -= 1;
        return fixed(value, decimals);
    }
    s
}

/// Decibels with two decimals: `4.18 dB`.
#[must_use]
pub fn db(value: f64) -> String {
    let s = fixed(value, 2) + " dB";
    if s == "-0.00 dB" {
        "0.00 dB".to_owned()
    } else {
        s
    }
}

/// Decibels with a sign: `+0.85 dB`.
#[must_use]
pub fn decibel_signed(value: f64) -> String {
    let s = format!("{value:+.2} dB");
    if s == "-0.00 dB" {
        "+0.00 dB".to_owned()
    } else {
        s
    }
}

/// Power with three significant digits in the fitting unit: `12.2 W`, `980 mW`, `1.50 kW`.
#[must_use]
pub fn power(watts: f64) -> String {
    let a = watts.abs();
    if a == 0.0 {
        return "0 W".to_owned();
    }
    // the rounded number decides the unit, so 999.96 W prints as 1.00 kW
    let (scale, unit) = if a < 0.999_5e-3 {
        (1e6, "µW")
    } else if a < 0.999_5 {
        (1e3, "mW")
    } else if a < 999.5 {
        (1.0, "W")
    } else {
        (1e-3, "kW")
    };
    if a < 0.999_5e-6 {
        return format!("{:.1} dBm", w_to_dbm(a));
    }
    // nothing real, but a slip of the hand must not fill the page
    if a >= 0.999_5e12 {
        return format!("{watts:.2e} W");
    }
    format!("{} {unit}", sig(watts * scale, 3))
}

/// Power level with one decimal: `41.1 dBm`.
#[must_use]
pub fn power_dbm(watts: f64) -> String {
    format!("{:.1} dBm", w_to_dbm(watts))
}

/// Frequency in MHz as people in the trade write it, without trailing zeros: `146.9137 MHz`.
#[must_use]
pub fn frequency(hz: f64) -> String {
    if hz.abs() >= 1e9 && (hz / 1e7).fract() == 0.0 {
        return format!("{} GHz", number(hz / 1e9, 6));
    }
    if hz.abs() < 1e6 {
        return format!("{} kHz", number(hz / 1e3, 6));
    }
    format!("{} MHz", number(hz / 1e6, 6))
}

/// Length in metres: `46 m`, `1.4 m`.
#[must_use]
pub fn length(metres: f64) -> String {
    format!("{} m", number(metres, 3))
}

/// A share in percent with one decimal.
#[must_use]
pub fn percent(share: f64) -> String {
    format!("{:.1} %", share * 100.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn short_way_and_long_way_give_the_same() {
        let check = |v: f64| {
            for digits in 0..9 {
                assert_eq!(fixed(v, digits), format!("{v:.digits$}"), "{v:e}");
                assert_eq!(fixed(-v, digits), format!("{:.digits$}", -v), "-{v:e}");
            }
        };
        for v in [0.0, 1e-320, 0.5, 0.05, 1e9, 1e300, f64::INFINITY, f64::MAX] {
            check(v);
        }
        // halves in decimal, the adjacent floats, and numbers of all sizes
        let mut x = 1u64;
        for i in 0..5_000_u32 {
            let half = (f64::from(i) + 0.5) / 1e3;
            for v in [half, half.next_up(), half.next_down(), half * 1e5] {
                check(v);
            }
            x = x.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
            check(f64::from((x >> 32) as u32) * 1e-3);
            check(f64::from_bits(x >> 1 & 0x7fef_ffff_ffff_ffff));
        }
        assert_eq!(fixed(f64::NAN, 2), format!("{:.2}", f64::NAN));
    }

    #[test]
    fn power_picks_its_unit() {
        assert_eq!(power(12.2), "12.2 W");
        assert_eq!(power(0.98), "980 mW");
        assert_eq!(power(999.96), "1.00 kW");
        assert_eq!(power(9.996), "10.0 W");
        assert_eq!(power(1e-15), "-120.0 dBm");
        assert_eq!(power(0.0), "0 W");
    }

    #[test]
    fn numbers_stay_short() {
        assert_eq!(number(46.0, 3), "46");
        assert_eq!(number(-0.0001, 2), "0");
        assert_eq!(frequency(146_913_700.0), "146.9137 MHz");
        assert_eq!(frequency(475e3), "475 kHz");
        assert_eq!(sig(0.012345, 3), "0.0123");
    }
}
