//! Decimal digits into a double, for the numbers that files are full of: up to 19 significant
//! digits, a fraction, a small exponent. Eight digits are taken at a time; the result is the
//! nearest double, or nothing where that takes more work (one number in a thousand), which the
//! general parser then does.

/// Powers of ten that doubles hold exactly.
const EXACT: [f64; 23] = [
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16,
    1e17, 1e18, 1e19, 1e20, 1e21, 1e22,
];

/// 10^k.
const TENS: [u64; 20] = {
    let mut out = [1u64; 20];
    let mut k = 1;
    while k < 20 {
        out[k] = out[k - 1] * 10;
        k += 1;
    }
    out
};

/// The largest power of five that is used.
const FIVES: usize = 27;

/// ⌊2^s / 5^k⌋ with its top bit set, and s.
const RECIPROCALS: [(u64, u32); FIVES + 1] = {
    let mut out = [(0u64, 0u32); FIVES + 1];
    let (mut k, mut five) = (1, 5u64);
    while k <= FIVES {
        let shift = 63 + (64 - five.leading_zeros());
        out[k] = (((1u128 << shift) / five as u128) as u64, shift);
        five = five.wrapping_mul(5);
        k += 1;
    }
    out
};

/// The value of eight digits, each in its byte, the first in the lowest.
fn eight(t: u64) -> u64 {
    const MASK: u64 = 0x0000_00FF_0000_00FF;
    let t = t.wrapping_mul(10).wrapping_add(t >> 8);
    let high = (t & MASK).wrapping_mul(100 + (1_000_000 << 32));
    let low = ((t >> 16) & MASK).wrapping_mul(1 + (10_000 << 32));
    high.wrapping_add(low) >> 32
}

/// Eight bytes less `0` each, and a bit in each that is not 0 to 9.
#[inline(always)]
fn split(bytes: [u8; 8]) -> (u64, u64) {
    let t = u64::from_le_bytes(bytes) ^ 0x3030_3030_3030_3030;
    let other = (t.wrapping_add(0x7676_7676_7676_7676) | t) & 0x8080_8080_8080_8080;
    (t, other)
}

/// Reads the digits from `at` on, after those of `w`: the resulting number and the count of digits.
/// Whole groups go by a branch that is nearly always foreseen, so that the next number can be
/// begun early; the rest by counting.
#[inline(always)]
fn fraction(text: &[u8], at: usize, w: u64) -> Option<(u64, usize)> {
    let [a, b, c]: [[u8; 8]; 3] = {
        let bytes: &[u8; 24] = text.get(at..)?.first_chunk()?;
        let (groups, _) = bytes.as_chunks::<8>();
        groups.try_into().ok()?
    };
    let (mut w, mut count) = (w, 0);
    let (mut t, mut other) = split(a);
    if other == 0 {
        let first = eight(t);
        (t, other) = split(b);
        if other == 0 {
            let both = first * TENS[8] + eight(t);
            (t, other) = split(c);
            if w >= TENS[3] || other == 0 {
                return None;
            }
            w = w * TENS[16] + both;
            count = 16;
        } else {
            if w >= TENS[11] {
                return None;
            }
            w = w * TENS[8] + first;
            count = 8;
        }
    }
    let more = (other.trailing_zeros() / 8) as usize;
    if w >= TENS[19 - more] {
        return None;
    }
    // in two steps, since there may be nothing to keep
    let gap = 32 - 4 * more;
    Some((w * TENS[more] + eight((t << gap) << gap), count + more))
}

/// `w`·10^-k to the nearest double. The product with the truncated reciprocal of 5^k is less
/// than 2^64 below the true one; where that leaves the rounding open the answer is `None`.
/// Written without branches on what is different from number to number.
#[inline(always)]
fn divided(w: u64, k: usize) -> Option<f64> {
    let lift = w.leading_zeros();
    let (reciprocal, shift) = RECIPROCALS[k];
    let product = u128::from(w << lift) * u128::from(reciprocal);
    #[expect(clippy::cast_possible_truncation, reason = "the two halves")]
    let (high, low) = ((product >> 64) as u64, product as u64);
    // both factors have their top bit, so the product has one of its two top bits: 53 bits stay
    let top = high >> 63;
    let dropped = 10 + top;
    let half = 1u64 << (dropped - 1);
    let rest = high & ((1 << dropped) - 1);
    if rest + 1 == half || rest == half && low == 0 {
        return None;
    }
    let mantissa = ((high >> (dropped - 1)) + 1) >> 1;
    // a carry to 2^53 moves on into the exponent by itself
    let biased = 1023 + 52 + 64 + dropped - u64::from(shift + lift) - k as u64;
    Some(f64::from_bits((biased << 52) + (mantissa - (1 << 52))))
}

/// `w`·10^`exponent`, `w` not zero.
#[inline(never)]
fn value(w: u64, exponent: i32) -> Option<f64> {
    let k = exponent.unsigned_abs() as usize;
    if exponent < 0 && k <= FIVES {
        let found = divided(w, k);
        if found.is_some() {
            return found;
        }
    }
    if w <= 1 << 53 && k <= 22 {
        #[expect(clippy::cast_precision_loss, reason = "at most 2^53")]
        let w = w as f64;
        return Some(if exponent < 0 {
            w / EXACT[k]
        } else {
            w * EXACT[k]
        });
    }
    None
}

/// The number that begins at `at` and where its digits end, if this way finds it.
#[inline(always)]
pub(crate) fn number(text: &[u8], at: usize) -> Option<(f64, usize)> {
    let negative = *text.get(at)? == b'-';
    let mut at = at + usize::from(negative);
    let start = at;
    let mut w = 0u64;
    while let Some(d) = text
        .get(at)
        .map(|b| b.wrapping_sub(b'0'))
        .filter(|d| *d < 10)
    {
        w = w.wrapping_mul(10).wrapping_add(u64::from(d));
        at += 1;
    }
    let whole = at - start;
    if whole > 18 {
        return None;
    }
    let mut decimals = 0;
    if text.get(at) == Some(&b'.') {
        at += 1;
        let (all, count) = fraction(text, at, w)?;
        w = all;
        decimals = count;
        at += count;
    }
    if whole + decimals == 0 {
        return None;
    }
    if !matches!(text.get(at), Some(b'e' | b'E')) && w != 0 && decimals != 0 {
        // nearly all numbers of nearly all files
        if let Some(size) = divided(w, decimals) {
            return Some((signed(size, negative), at));
        }
    }
    let mut exponent = -i32::try_from(decimals).ok()?;
    if matches!(text.get(at), Some(b'e' | b'E')) {
        let (e, end) = small_exponent(text, at + 1)?;
        exponent += e;
        at = end;
    }
    let size = if w == 0 { 0.0 } else { value(w, exponent)? };
    Some((
        f64::from_bits(size.to_bits() | u64::from(negative) << 63),
        at,
    ))
}

/// A size with its sign, without a branch.
#[inline(always)]
fn signed(size: f64, negative: bool) -> f64 {
    f64::from_bits(size.to_bits() | (u64::from(negative) << 63))
}

/// An exponent of at most three digits.
fn small_exponent(text: &[u8], at: usize) -> Option<(i32, usize)> {
    let sign = *text.get(at)?;
    let start = at + usize::from(matches!(sign, b'+' | b'-'));
    let (mut e, mut end) = (0, start);
    while let Some(d) = text
        .get(end)
        .map(|b| b.wrapping_sub(b'0'))
        .filter(|d| *d < 10)
    {
        e = e * 10 + i32::from(d);
        end += 1;
        if end > start + 3 {
            return None;
        }
    }
    (end > start).then_some((if sign == b'-' { -e } else { e }, end))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Against the parser of the standard library, which rounds correctly.
    fn check(word: &str, found: &mut usize) {
        let line = format!("{word} 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0");
        if let Some((got, end)) = number(line.as_bytes(), 0) {
            assert_eq!(end, word.len(), "{word}");
            let want: f64 = word.parse().expect(word);
            assert_eq!(got.to_bits(), want.to_bits(), "{word}: {got} is not {want}");
            *found += 1;
        }
    }

    #[test]
    fn nearest_doubles() {
        let (mut found, mut all) = (0, 0);
        let mut x = 88_172_645_463_325_252u64;
        let mut next = || {
            x ^= x << 13;
            x ^= x >> 7;
            x ^= x << 17;
            x
        };
        for _ in 0..40_000 {
            let (a, b) = (next(), next());
            let unit = (a >> 11) as f64 / (1u64 << 53) as f64 - 0.5;
            let digits = (b % 20) as usize;
            for word in [
                format!("{unit}"),
                format!("{:.digits$}", unit * 300.0),
                format!("{unit:.digits$e}"),
                format!("{:.digits$E}", unit * 1e-9),
                format!("{}.{}", a % 1000, b % 1_000_000_000_000),
                format!("0.{:018}", a % 1_000_000_000_000_000_000),
                // half-way between two doubles, and next to it
                format!("{}.5", (1u64 << 52) + (a >> 13)),
                format!("0.{}", 9_007_199_254_740_993u64 + b % 1000),
            ] {
                check(&word, &mut found);
                all += 1;
            }
        }
        // the ways that are left to the general parser are rare
        assert!(found * 10 > all * 8, "{found} of {all}");
    }

    #[test]
    fn odd_words() {
        let mut found = 0;
        for word in [
            "0", "-0", "-0.0", "5", "-12.5", "1.", ".5", "-.5", "00.5", "1e5", "1E-05", "0.1",
        ] {
            check(word, &mut found);
        }
        assert_eq!(found, 12);
        for word in [
            "",
            "-",
            ".",
            "e5",
            "1e",
            "1e+",
            "x",
            "+1",
            "1e9999",
            "99999999999999999999",
        ] {
            let line = format!("{word} 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0");
            assert_eq!(number(line.as_bytes(), 0), None, "{word}");
        }
        assert_eq!(
            number(b"0.5", 0),
            None,
            "the last bytes are the general parser's"
        );
    }
}
