//! Numbers in a row: a fast path for well-formed ones, a slow path that diagnoses the others.

use crate::decimal;

/// Why a word is not a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Fault {
    /// `NaN`, `inf`, `1.#QNAN` and their like, or beyond the range of a double.
    NotFinite,
    /// `0,5`.
    DecimalComma,
    /// Anything else.
    Word,
}

/// True if a number may end before this byte.
pub(crate) fn ends(byte: Option<&u8>) -> bool {
    matches!(
        byte,
        None | Some(b' ' | b'\t' | b'\n' | b'\r' | b'!' | 0x0B | 0x0C)
    )
}

/// Where the word that begins at `at` ends.
pub(crate) fn word_end(text: &[u8], at: usize) -> usize {
    let rest = text.get(at..).unwrap_or_default();
    at + rest
        .iter()
        .position(|b| ends(Some(b)))
        .unwrap_or(rest.len())
}

/// The number that begins at `at`, and where it ends.
#[inline(always)]
pub(crate) fn number(text: &[u8], at: usize) -> Result<(f64, usize), (Fault, usize)> {
    if let Some((value, end)) = decimal::number(text, at)
        && ends(text.get(end))
    {
        return Ok((value, end));
    }
    general(text, at)
}

/// Any number, by a parser that knows all forms.
#[cold]
#[inline(never)]
fn general(text: &[u8], at: usize) -> Result<(f64, usize), (Fault, usize)> {
    if let Ok((value, length)) = fast_float2::parse_partial::<f64, _>(&text[at..])
        && ends(text.get(at + length))
        && value.is_finite()
    {
        return Ok((value, at + length));
    }
    slow(text, at)
}

fn slow(text: &[u8], at: usize) -> Result<(f64, usize), (Fault, usize)> {
    let end = word_end(text, at);
    let word = &text[at..end];
    // Fortran programs write 1.5D-03
    let plain: Vec<u8> = word
        .iter()
        .map(|b| match b {
            b'd' | b'D' => b'e',
            b => *b,
        })
        .collect();
    match fast_float2::parse::<f64, _>(&plain) {
        Ok(value) if value.is_finite() => return Ok((value, end)),
        Ok(_) => return Err((Fault::NotFinite, end)),
        Err(_) => {}
    }
    let lower = word.to_ascii_lowercase();
    if [&b"nan"[..], b"inf", b"#ind", b"#qn", b"#sn"]
        .iter()
        .any(|s| lower.windows(s.len()).any(|w| w == *s))
    {
        return Err((Fault::NotFinite, end));
    }
    let dotted: Vec<u8> = plain
        .iter()
        .map(|b| if *b == b',' { b'.' } else { *b })
        .collect();
    if dotted != plain && fast_float2::parse::<f64, _>(&dotted).is_ok() {
        return Err((Fault::DecimalComma, end));
    }
    Err((Fault::Word, end))
}

/// The number written as `word`, times ten to the power of `exponent`, rounded once: `145.3`
/// with 6 is the double nearest to 145 300 000. `value` is what the word gave unscaled.
pub(crate) fn scaled(word: &[u8], value: f64, exponent: i32) -> f64 {
    const ROOM: usize = 64;
    if exponent == 0 {
        return value;
    }
    let (mantissa, own) = match word
        .iter()
        .position(|b| matches!(b, b'e' | b'E' | b'd' | b'D'))
    {
        None => (word, 0),
        Some(e) => {
            let own = std::str::from_utf8(&word[e + 1..]).ok();
            match own.and_then(|t| t.parse::<i16>().ok()) {
                Some(own) => (&word[..e], i32::from(own)),
                None => return value * libm::exp10(f64::from(exponent)),
            }
        }
    };
    let mut buffer = [0u8; ROOM + 8];
    if mantissa.len() > ROOM {
        return value * libm::exp10(f64::from(exponent));
    }
    buffer[..mantissa.len()].copy_from_slice(mantissa);
    let mut at = mantissa.len();
    let sum = own + exponent;
    buffer[at] = b'e';
    buffer[at + 1] = if sum < 0 { b'-' } else { b'+' };
    at += 2;
    let mut digits = [0u8; 6];
    let (mut rest, mut count) = (sum.unsigned_abs(), 0);
    while count == 0 || rest > 0 {
        digits[count] = b'0' + u8::try_from(rest % 10).unwrap_or(0);
        rest /= 10;
        count += 1;
    }
    for d in digits[..count].iter().rev() {
        buffer[at] = *d;
        at += 1;
    }
    fast_float2::parse(&buffer[..at]).unwrap_or(value * libm::exp10(f64::from(exponent)))
}

/// Room for the text of one number.
#[derive(Default)]
struct Short {
    bytes: [u8; 32],
    used: usize,
}

impl Short {
    fn as_str(&self) -> &str {
        std::str::from_utf8(&self.bytes[..self.used]).unwrap_or_default()
    }
}

impl std::fmt::Write for Short {
    fn write_str(&mut self, s: &str) -> std::fmt::Result {
        let end = self.used + s.len();
        let room = self.bytes.get_mut(self.used..end).ok_or(std::fmt::Error)?;
        room.copy_from_slice(s.as_bytes());
        self.used = end;
        Ok(())
    }
}

/// A number as the shortest text that reads back the same, with ten to the power of `shift`
/// taken out of it (exactly, by moving the point).
pub(crate) fn shortest(out: &mut String, value: f64, shift: i32) {
    use std::fmt::Write as _;
    let mut text = Short::default();
    let _ = write!(text, "{value:e}");
    let text = text.as_str();
    let Some((mantissa, exponent)) = text.split_once('e') else {
        out.push_str(text);
        return;
    };
    let exponent = exponent.parse::<i32>().unwrap_or(0) - shift;
    let (sign, mantissa) = match mantissa.strip_prefix('-') {
        Some(m) => ("-", m),
        None => ("", mantissa),
    };
    let (first, rest) = (&mantissa[..1], mantissa.get(2..).unwrap_or(""));
    out.push_str(sign);
    if first == "0" {
        out.push_str("0.0");
        return;
    }
    match exponent {
        -5..=-1 => {
            out.push_str("0.");
            for _ in exponent..-1 {
                out.push('0');
            }
            out.push_str(first);
            out.push_str(rest);
        }
        0..=15 => {
            let whole = usize::try_from(exponent).unwrap_or(0);
            out.push_str(first);
            out.push_str(&rest[..whole.min(rest.len())]);
            for _ in rest.len()..whole {
                out.push('0');
            }
            if rest.len() > whole {
                out.push('.');
                out.push_str(&rest[whole..]);
            }
        }
        _ => {
            out.push_str(first);
            if !rest.is_empty() {
                out.push('.');
                out.push_str(rest);
            }
            let _ = write!(out, "e{exponent}");
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn written(value: f64, shift: i32) -> String {
        let mut out = String::new();
        shortest(&mut out, value, shift);
        out
    }

    #[test]
    fn words_that_are_numbers() {
        for (word, value) in [
            ("1", 1.0),
            ("+.5", 0.5),
            ("-2.", -2.0),
            ("1e3", 1e3),
            ("1.5D-03", 1.5e-3),
            ("1.5d+3", 1500.0),
        ] {
            assert_eq!(number(word.as_bytes(), 0), Ok((value, word.len())));
        }
        for (word, fault) in [
            ("nan", Fault::NotFinite),
            ("-inf", Fault::NotFinite),
            ("1.#QNAN", Fault::NotFinite),
            ("-1.#IND", Fault::NotFinite),
            ("1e999", Fault::NotFinite),
            ("0,5", Fault::DecimalComma),
            ("1e", Fault::Word),
            (".", Fault::Word),
            ("1.2.3", Fault::Word),
            ("50j", Fault::Word),
        ] {
            assert_eq!(number(word.as_bytes(), 0), Err((fault, word.len())));
        }
        assert_eq!(number(b"1!2", 0), Ok((1.0, 1)));
    }

    #[test]
    fn scaling_rounds_once() {
        assert_eq!(scaled(b"145.3", 145.3, 6), 145_300_000.0);
        assert_eq!(scaled(b"1.453E2", 145.3, 6), 145_300_000.0);
        assert_eq!(scaled(b"0.1453", 0.1453, 9), 145_300_000.0);
        assert_eq!(scaled(b"1.1e-3", 1.1e-3, 3), 1.1);
        assert_eq!(scaled(b"7", 7.0, 0), 7.0);
        assert_eq!(scaled(b"0", 0.0, 9), 0.0);
    }

    #[test]
    fn shortest_texts() {
        assert_eq!(written(145_300_000.0, 6), "145.3");
        assert_eq!(written(145_300_000.0, 9), "0.1453");
        assert_eq!(written(145_300_000.0, 0), "145300000");
        assert_eq!(written(-0.25, 0), "-0.25");
        assert_eq!(written(0.0, 6), "0.0");
        assert_eq!(written(-0.0, 0), "-0.0");
        assert_eq!(written(1e-9, 0), "1e-9");
        assert_eq!(written(1.5e300, 0), "1.5e300");
        assert_eq!(written(0.00012, 0), "0.00012");
        assert_eq!(written(1.0, 9), "1e-9");
    }
}
