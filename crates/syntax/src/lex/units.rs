//! Finds the unit after a number. The vocabulary is the unit table, so no spelling is repeated here.

use downlead_quantity::UnitId;

/// The longest unit that begins at `pos`: its end and id.
///
/// A word that merely begins like a unit (`m-pair`, `m2`, `m.x`) is none; `m-2` is the unit and a subtraction.
pub(crate) fn unit_at(text: &str, pos: usize) -> Option<(usize, UnitId)> {
    let bytes = text.as_bytes();
    if bytes.get(pos) == Some(&b'%') {
        return UnitId::parse("%").map(|id| (pos + 1, id));
    }
    let word = segment_end(text, pos);
    if word == pos {
        return None;
    }
    let slash = skip_blanks(bytes, word);
    match bytes.get(slash) {
        Some(b'/') if bytes.get(slash + 1) != Some(&b'/') => {
            let mut ends = [0; 4];
            let mut count = 0;
            let mut at = slash;
            while count < ends.len()
                && let Some(end) = denominator_end(text, at)
            {
                ends[count] = end;
                count += 1;
                at = skip_blanks(bytes, end);
            }
            for &end in ends[..count].iter().rev() {
                if let Some(id) = UnitId::parse(&text[pos..end]) {
                    return Some((end, id));
                }
            }
        }
        _ => {}
    }
    match (bytes.get(word), bytes.get(word + 1)) {
        (Some(b'-'), Some(next)) if next.is_ascii_alphabetic() => {
            // `ohm-m`, or the name `n-pair`
            let end = segment_end(text, word + 1);
            if bytes.get(end) == Some(&b'-')
                && bytes.get(end + 1).is_some_and(u8::is_ascii_alphanumeric)
            {
                return None;
            }
            UnitId::parse(&text[pos..end]).map(|id| (end, id))
        }
        (Some(b'.'), Some(next)) if next.is_ascii_alphanumeric() => None,
        _ => UnitId::parse(&text[pos..word]).map(|id| (word, id)),
    }
}

/// The end of `/ 100 m`, `/sqrt(MHz)`, `/√MHz` or `/MHz` beginning at `pos`.
fn denominator_end(text: &str, pos: usize) -> Option<usize> {
    let bytes = text.as_bytes();
    if bytes.get(pos) != Some(&b'/') {
        return None;
    }
    let mut at = skip_blanks(bytes, pos + 1);
    if bytes[at..].starts_with(b"100") {
        at = skip_blanks(bytes, at + 3);
    }
    let rest = &text[at..];
    if let Some(inner) = rest.strip_prefix("sqrt(") {
        let end = segment_end(inner, 0);
        return (end > 0 && inner[end..].starts_with(')')).then(|| at + 5 + end + 1);
    }
    if rest.starts_with('√') {
        at += '√'.len_utf8();
    }
    let end = segment_end(text, at);
    if end > at {
        return Some(end);
    }
    // `/m2`, `/cm2`: an area
    let letters = rest.bytes().take_while(u8::is_ascii_alphabetic).count();
    if letters == 0 || !rest[letters..].starts_with('2') {
        return None;
    }
    let end = at + letters + 1;
    let goes_on = |b: &u8| b.is_ascii_alphanumeric() || *b == b'_';
    (!bytes.get(end).is_some_and(goes_on)).then_some(end)
}

/// The end of the run of letters and unit signs from `pos`. A name with digits in it is no such run.
fn segment_end(text: &str, pos: usize) -> usize {
    let bytes = text.as_bytes();
    let mut at = pos;
    while let Some(&byte) = bytes.get(at) {
        if byte.is_ascii_alphabetic() {
            at += 1;
        } else if byte < 0x80 {
            break;
        } else {
            match text[at..].chars().next() {
                Some(c @ ('µ' | 'μ' | 'Ω' | '\u{2126}' | 'λ' | '°')) => at += c.len_utf8(),
                _ => break,
            }
        }
    }
    let name = at > pos
        && bytes[at - 1].is_ascii_alphabetic()
        && bytes
            .get(at)
            .is_some_and(|b| b.is_ascii_digit() || *b == b'_');
    if name { pos } else { at }
}

pub(crate) fn skip_blanks(bytes: &[u8], mut pos: usize) -> usize {
    while matches!(bytes.get(pos), Some(b' ' | b'\t')) {
        pos += 1;
    }
    pos
}
