//! The meaning of a run of letters, digits, dots and dashes that begins with a digit.

use super::units::unit_at;

/// The meaning of a run.
pub(super) enum Run {
    /// A number up to `end`, which may be beyond the run (`1e+9`); a unit may follow.
    /// `long`: it may exceed an `f64` or be a ratio to nothing.
    Number { end: usize, long: bool },
    /// A name such as `7-16`, `7-16-pair` or `2m-fm`.
    Word,
    /// `2026-07-04` or `2026-07`.
    Date,
    /// `1.2.3`: neither number nor name.
    Malformed,
}

/// Classifies `text[start..end]`, where `end` is the end of the run as logos sees it.
pub(super) fn classify(text: &str, start: usize, end: usize) -> Run {
    let bytes = text.as_bytes();
    let run = &bytes[start..end];
    if is_date(run) {
        return Run::Date;
    }
    let (stop, exponent) = number_end(bytes, start);
    let number = Run::Number {
        end: stop,
        long: exponent || stop - start > 300,
    };
    match bytes.get(stop) {
        _ if stop >= end => number,
        // `46m`, but `5x` and `2m-fm` are names
        Some(byte) if byte.is_ascii_alphabetic() => match unit_at(text, stop) {
            Some((unit_end, _)) if unit_end >= end => number,
            _ => Run::Word,
        },
        // a glued dash belongs to a name, also in `7-16`; a subtraction has blanks around it
        Some(b'-') => Run::Word,
        _ if bytes[stop..end]
            .iter()
            .any(|b| b.is_ascii_alphabetic() || *b == b'_') =>
        {
            Run::Word
        }
        _ => Run::Malformed,
    }
}

/// The end of the number that begins at `pos`, and whether its value may be none that is finite: it
/// has an exponent, or is a ratio.
fn number_end(bytes: &[u8], pos: usize) -> (usize, bool) {
    let digits = |mut at: usize| {
        while bytes.get(at).is_some_and(u8::is_ascii_digit) {
            at += 1;
        }
        at
    };
    let mut at = digits(pos);
    if bytes.get(at) == Some(&b'.') {
        let end = digits(at + 1);
        if end > at + 1 {
            at = end;
        }
    }
    // a ratio is one number, `4:1`
    if bytes.get(at) == Some(&b':') && bytes.get(at + 1).is_some_and(u8::is_ascii_digit) {
        let end = digits(at + 1);
        return match bytes.get(end..end + 2) {
            Some([b'.', d]) if d.is_ascii_digit() => (digits(end + 1), true),
            _ => (end, true),
        };
    }
    if matches!(bytes.get(at), Some(b'e' | b'E')) {
        let sign = usize::from(matches!(bytes.get(at + 1), Some(b'+' | b'-')));
        let end = digits(at + 1 + sign);
        if end > at + 1 + sign {
            return (end, true);
        }
    }
    (at, false)
}

/// The shape of a date; four digits and two are one only when the two can be a month.
fn is_date(run: &[u8]) -> bool {
    let shape = |run: &[u8]| {
        run.iter().enumerate().all(|(i, b)| {
            if i % 3 == 1 {
                *b == b'-'
            } else {
                b.is_ascii_digit()
            }
        })
    };
    match run.len() {
        10 => shape(&run[3..]) && run[..3].iter().all(u8::is_ascii_digit),
        7 => {
            shape(&run[3..])
                && run[..3].iter().all(u8::is_ascii_digit)
                && matches!(&run[5..], [b'0', b'1'..=b'9'] | [b'1', b'0'..=b'2'])
        }
        _ => false,
    }
}
