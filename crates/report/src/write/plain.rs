//! Plain characters: what is safe to print, how wide it is, and what stands for it in ASCII.

use std::borrow::Cow;

use unicode_width::UnicodeWidthStr;

/// Text from files made safe to print: control characters, line separators other than `\n`
/// and direction overrides are replaced by marks of the same byte length, so that byte
/// offsets stay true and nothing in a file can steer a terminal.
#[must_use]
pub fn printable(text: &str) -> Cow<'_, str> {
    let bytes = text.as_bytes();
    let steering = |c: char| matches!(c, '\u{80}'..='\u{9f}' | '\u{200e}' | '\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}');
    let bad = |i: usize, c: char| match c {
        '\n' | '\t' => false,
        '\r' => bytes.get(i + 1) != Some(&b'\n'),
        c if c.is_ascii() => c.is_ascii_control(),
        c => steering(c),
    };
    let Some((first, _)) = text.char_indices().find(|&(i, c)| bad(i, c)) else {
        return text.into();
    };
    let mut out = String::with_capacity(text.len());
    out.push_str(&text[..first]);
    for (i, c) in text[first..].char_indices().map(|(i, c)| (i + first, c)) {
        out.push(match (bad(i, c), c.len_utf8()) {
            (false, _) => c,
            (true, 1) => '?',
            (true, 2) => '¿',
            (true, _) => '\u{fffd}',
        });
    }
    out.into()
}

/// Text broken at blanks so that no line is wider than `width`, lines after the first indented;
/// the first is taken to begin at that column too. What has no blank is not broken.
#[must_use]
pub fn wrapped(text: &str, width: usize, indent: usize) -> String {
    let mut out = String::with_capacity(text.len() + 16);
    let mut at = indent;
    for word in whole_figures(text) {
        let word = word.as_str();
        let long = seen(word).width();
        if at > indent {
            if at + 1 + long > width {
                out.push('\n');
                out.push_str(&" ".repeat(indent));
                at = indent;
            } else {
                out.push(' ');
                at += 1;
            }
        }
        out.push_str(word);
        at += long;
    }
    out
}

/// Words, a figure and its unit as one.
fn whole_figures(text: &str) -> Vec<String> {
    const UNITS: [&str; 8] = ["%", "dB", "MHz", "GHz", "°C", "m", "min", "u"];
    let mut out: Vec<String> = Vec::new();
    for word in text.split(' ') {
        let bare = word.trim_end_matches([',', ';', '.', ':', ')']);
        match out.last_mut() {
            Some(last)
                if last.ends_with(['<', '='])
                    || UNITS.contains(&bare) && last.ends_with(|c: char| c.is_ascii_digit()) =>
            {
                last.push(' ');
                last.push_str(word);
            }
            _ => out.push(word.to_owned()),
        }
    }
    out
}

/// The text without its colours, for measuring.
fn seen(text: &str) -> Cow<'_, str> {
    if !text.contains('\u{1b}') {
        return text.into();
    }
    let mut out = String::with_capacity(text.len());
    let mut code = false;
    for c in text.chars() {
        match (code, c) {
            (false, '\u{1b}') => code = true,
            (true, 'm') => code = false,
            (true, _) => {}
            (false, c) => out.push(c),
        }
    }
    out.into()
}

/// The text in ASCII: signs by what is written for them, other characters as `?`.
#[must_use]
pub fn ascii(text: &str) -> Cow<'_, str> {
    if text.is_ascii() {
        return text.into();
    }
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        out.push_str(match c {
            c if c.is_ascii() => {
                out.push(c);
                continue;
            }
            '±' => "+/-",
            '°' => "deg",
            'µ' | 'μ' => "u",
            '…' => "...",
            '✓' => "+",
            '✗' | '×' => "x",
            '√' => "sqrt ",
            'χ' => "chi",
            'λ' => "lambda",
            'Γ' => "Gamma",
            'α' => "alpha",
            'β' => "beta",
            'η' => "eta",
            'π' => "pi",
            'Δ' => "delta ",
            'Ω' => "ohm",
            '²' => "^2",
            '³' => "^3",
            '₀' => "0",
            '₁' => "1",
            '₂' => "2",
            '½' => "1/2",
            '–' | '−' | '─' | '·' => "-",
            '∞' => "inf",
            '≤' => "<=",
            '≥' => ">=",
            '≈' => "~",
            '→' => "->",
            '━' => "=",
            '├' => "[",
            '┤' => "]",
            '●' => "O",
            '○' => "o",
            '“' | '”' => "\"",
            '‘' | '’' => "'",
            '\u{a0}' | '\u{2007}' | '\u{202f}' => " ",
            _ => "?",
        });
    }
    out.into()
}

/// At most `width` columns, with a mark where something is left off.
#[must_use]
pub fn shorten(text: &str, width: usize) -> Cow<'_, str> {
    if text.width() <= width {
        return text.into();
    }
    let mut out = String::new();
    let mut at = 0;
    for c in text.chars() {
        let wide = unicode_width::UnicodeWidthChar::width(c).unwrap_or(0);
        if at + wide + 1 > width {
            break;
        }
        at += wide;
        out.push(c);
    }
    format!("{}…", out.trim_end()).into()
}

#[cfg(test)]
mod tests {
    use super::super::style::Style;
    use super::*;

    #[test]
    fn printable_keeps_offsets() {
        let wild = "a\u{1b}[2Jb\u{85}c\u{202e}d\re\r\nf\u{feff}";
        let tame = printable(wild);
        assert_eq!(tame.len(), wild.len());
        assert_eq!(tame, "a?[2Jb¿c\u{fffd}d?e\r\nf\u{fffd}");
        assert!(matches!(
            printable("±, µΩ\t\r\n"),
            std::borrow::Cow::Borrowed(_)
        ));
    }

    #[test]
    fn lines_are_broken_at_blanks() {
        assert_eq!(wrapped("one two three", 9, 2), "one two\n  three");
        assert_eq!(wrapped("unbreakable", 4, 0), "unbreakable");
        let red = Style { colour: true }.bad("two");
        assert_eq!(wrapped(&format!("one {red}"), 7, 0), format!("one {red}"));
        assert_eq!(wrapped("", 4, 2), "");
        assert_eq!(wrapped("loses 3.2 dB, then", 11, 0), "loses\n3.2 dB,\nthen");
    }

    #[test]
    fn signs_have_words_in_ascii() {
        assert_eq!(
            ascii("24.7 W ± 0.74 dB, ✓ met"),
            "24.7 W +/- 0.74 dB, + met"
        );
        assert_eq!(ascii("12 °C, µW, Mast-塔"), "12 degC, uW, Mast-?");
        assert!(matches!(ascii("plain"), Cow::Borrowed(_)));
    }

    #[test]
    fn what_is_cut_off_is_marked() {
        assert_eq!(shorten("abc", 3), "abc");
        assert_eq!(shorten("abcd", 3), "ab…");
        assert_eq!(shorten("塔塔塔", 5), "塔塔…");
    }
}
