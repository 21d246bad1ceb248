//! The words: what is wrong, what was understood, what to write.

use downlead_base::{Diagnostic, ItemId, Loc, Span, codes};

use crate::SyntaxKind as S;
use crate::lex::Tok;

/// Characters that are not accepted anywhere, not even in comments: controls, and line ends that
/// only some programs take for one.
pub(super) fn is_forbidden(c: char) -> bool {
    (c.is_control() && c != '\t') || matches!(c, '\u{2028}' | '\u{2029}') || turns(c)
}

/// Characters that change the direction in which a text is shown, so that a reader sees another
/// text than the program.
fn turns(c: char) -> bool {
    matches!(c, '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}')
}

/// Words that other languages take for numbers.
pub(super) fn is_infinite(word: &str) -> bool {
    ["nan", "inf", "infinity"]
        .iter()
        .any(|w| word.eq_ignore_ascii_case(w))
}

/// The name of a character, and what to write for it.
fn instead(c: char) -> (String, Option<&'static str>) {
    let name = match c {
        '\u{85}' => "the next-line control (U+0085)",
        '\u{2028}' => "the line separator (U+2028)",
        '\u{2029}' => "the paragraph separator (U+2029)",
        '\u{0B}' => "the vertical tab (U+000B)",
        '\u{0C}' => "the form feed (U+000C)",
        '\r' => "a carriage return without a line feed (U+000D)",
        '\u{A0}' => "the no-break space (U+00A0)",
        '\u{FEFF}' => "a byte order mark inside the text (U+FEFF)",
        _ if turns(c) || c.is_control() || c.is_whitespace() => {
            return (format!("U+{:04X}", c as u32), None);
        }
        _ => return (format!("`{c}` (U+{:04X})", c as u32), replacement(c)),
    };
    (name.to_owned(), replacement(c))
}

fn replacement(c: char) -> Option<&'static str> {
    Some(match c {
        '\u{85}' | '\u{2028}' | '\u{2029}' | '\u{0B}' | '\u{0C}' | '\r' => "\n",
        '\u{A0}' | '\u{2007}' | '\u{2009}' | '\u{202F}' => " ",
        '\u{FEFF}' | '\u{200B}' => "",
        '“' | '”' | '„' | '«' | '»' => "\"",
        '‐' | '‑' | '—' => "-",
        '×' | '·' => "*",
        '÷' => "/",
        'º' | '˚' => "°",
        '\'' | '’' | '´' => "′",
        '，' => ",",
        '；' => ";",
        '#' => "//",
        ':' => "",
        // an area: `W/m2`
        '²' => "2",
        _ => return None,
    })
}

/// A character the language does not use; `inside` a comment or text it breaks nothing else.
pub(super) fn invalid(loc: Loc, text: &str, inside: bool) -> Diagnostic {
    let mut chars = text.chars();
    let first = chars.next().unwrap_or('\u{FFFD}');
    let many = chars.next().is_some();
    let (name, other) = instead(first);
    let message = if turns(first) {
        format!(
            "{name} changes the direction in which the text is shown; it is not allowed anywhere."
        )
    } else if inside && other != Some("\n") {
        format!(
            "{name} is a control character; it is not allowed anywhere, not even in a text or comment."
        )
    } else if inside {
        format!("{name} is not allowed here: programs disagree about whether it ends the line.")
    } else if first == '.' {
        "This `.` belongs to no number and no name.".to_owned()
    } else if first.is_ascii_digit() {
        format!("`{}` is neither a number nor a name.", shorten(text))
    } else if many {
        format!("These characters are not used by the language, beginning with {name}.")
    } else {
        format!("The language does not use {name}.")
    };
    let mut d = Diagnostic::new(&codes::INVALID_CHARACTER, loc, message)
        .at("from here the line was not read");
    if inside {
        d.primary.message.clear();
    }
    match (first, other) {
        ('.', _) => d.help("Write digits on both sides of a decimal point: 0.5; names join a port with it: DU1.high."),
        ('0'..='9', _) if !dates_meant(text).is_empty() => {
            let dates = dates_meant(text);
            let d = d.help(format!("A date is written as year, month and day: `{}`.", dates.join("` or `")));
            let one = dates.len() == 1;
            let d = dates.into_iter().fold(d, |d, date| d.fix(format!("write `{date}`"), loc, date));
            if one { d.preferred() } else { d }
        }
        ('0'..='9', _) => d.help("A number has one decimal point at most; put other marks into a text in quotes."),
        ('\'', _) => d.help("Write minutes of arc with a prime: 49°20′00″. Texts stand in straight double quotes.").fix("write `′`", loc, "′"),
        (':', _) => d.help("Leave the colon out: a keyword is followed by its value directly.").fix("remove the colon", loc, ""),
        ('#', _) => d.help("A comment begins with `//`."),
        (c, None) if turns(c) || (inside && !many) => d.help("Remove it.").fix("remove it", loc, ""),
        (_, Some("\n")) => {
            let title = if inside { "put a line feed" } else { "end the line there" };
            d.help("Write a line feed (U+000A), alone or after a carriage return.").fix(title, loc, if inside { "\n// " } else { "\n" })
        }
        (_, Some("")) => d.help("Remove it.").fix("remove it", loc, "").preferred(),
        (_, Some(" ")) if !many => d.help("Write a space.").fix("write a space", loc, " ").preferred(),
        (_, Some(text)) if !many => {
            d.help(format!("Write `{text}`.")).fix(format!("write `{text}`"), loc, text).preferred()
        }
        _ => d.help("Put it into a text in quotes or a comment, or write it in letters."),
    }
}

/// A prime after a number that is no angle: feet. `line` is the line before it.
pub(super) fn feet(loc: Loc, text: &str, line: &str) -> Option<Diagnostic> {
    let prime = matches!(text, "'" | "’" | "´" | "′");
    if !prime || line.contains('°') || !line.ends_with(|c: char| c.is_ascii_digit()) {
        return None;
    }
    Some(
        Diagnostic::new(
            &codes::INVALID_CHARACTER,
            loc,
            format!("The language does not use `{text}` for feet."),
        )
        .at("from here the line was not read")
        .help("Write feet as `ft` and inches as `in`. Minutes of arc follow degrees: 49°20′00″.")
        .fix("write `ft`", loc, " ft"),
    )
}

/// Characters of a number that are read; the lexer keeps their count in 16 bits.
const MOST_DIGITS: usize = u16::MAX as usize;

pub(super) fn infinite(loc: Loc, text: &str) -> Diagnostic {
    let d = if is_infinite(text) {
        Diagnostic::new(&codes::NOT_A_NUMBER, loc, format!("`{text}` is not a number of this language."))
            .help("Write a finite number, or leave the statement out; `nan` and `inf` are no names either.")
    } else if text.contains(':') {
        Diagnostic::new(
            &codes::NOT_A_NUMBER,
            loc,
            format!("`{text}` is a ratio to nothing."),
        )
        .help("Written for example `4:1`.")
    } else if text.len() > MOST_DIGITS {
        Diagnostic::new(
            &codes::NOT_A_NUMBER,
            loc,
            format!(
                "This number has {} characters; at most {MOST_DIGITS} are read.",
                text.len()
            ),
        )
        .help("More than 17 digits make no difference.")
    } else {
        let shown: String = text.chars().take(20).collect();
        let dots = if text.chars().count() > 20 { "…" } else { "" };
        Diagnostic::new(
            &codes::NOT_A_NUMBER,
            loc,
            format!("`{shown}{dots}` is too large to compute with."),
        )
        .help("Numbers reach up to about 1.8e308.")
    };
    d.at("from here the line was not read")
}

pub(super) fn decimal_comma(loc: Loc, text: &str) -> Diagnostic {
    let point = text.replace(',', ".");
    let d = Diagnostic::new(
        &codes::NOT_UNDERSTOOD,
        loc,
        format!("A comma stands inside the number `{text}`."),
    )
    .at("a comma ends a group of the statement");
    if let Some((before, after)) = text.split_once(',')
        && after.len() == 3
        && !before.trim_start_matches(['-', '+', '0']).is_empty()
    {
        // thousands or thousandths: a factor of a thousand that only the author knows
        let whole = text.replace(',', "");
        return d
            .help(format!(
                "Thousands are not separated: `{whole}`; a decimal point is a point: `{point}`."
            ))
            .fix(format!("write `{whole}`"), loc, whole)
            .fix(format!("write `{point}`"), loc, point);
    }
    d
        .help(format!("Write a decimal point: `{point}`; thousands are not separated at all. Where two groups are meant, write a blank after the comma."))
        .fix(format!("write `{point}`"), loc, point)
}

pub(super) fn unclosed_string(loc: Loc, text: &str) -> Diagnostic {
    let end = Loc::new(
        loc.item,
        Span {
            start: loc.span.end,
            end: loc.span.end,
        },
    );
    // a brace at the end of the line opens the block: it is no part of the text
    let inside = text.strip_suffix(['\r', '\n']).unwrap_or(text).trim_end();
    let inside = inside.strip_suffix('{').map_or(text, str::trim_end);
    let cut = u32::try_from(text.len() - inside.len()).unwrap_or(0);
    let end = Loc::new(
        loc.item,
        Span {
            start: end.span.start - cut,
            end: end.span.end - cut,
        },
    );
    let words = text.trim_start_matches('"').trim_end();
    let shown: String = words.chars().take(30).collect();
    let d = Diagnostic::new(
        &codes::UNCLOSED_STRING,
        loc,
        "This text in quotes does not end on its line.",
    )
    .at(format!("understood as the text `{shown}`"));
    d.help("Close it with `\"` where the text ends; a text cannot hold a `\"` itself.")
        .fix("close the text here", end, "\"")
}

pub(super) fn unclosed_block(brace: Loc, end: Loc) -> Diagnostic {
    Diagnostic::new(&codes::UNCLOSED_BLOCK, brace, "This block is not closed.")
        .at("opened here")
        .also(end, "it was taken to end here")
        .help("Write `}` on a line of its own after the block's last line; lines inside a block are indented, since a letter in column 0 begins a new top-level statement.")
        .fix("close the block", end, "\n}")
}

pub(super) fn unmatched(brace: Loc) -> Diagnostic {
    Diagnostic::new(&codes::UNMATCHED_BRACE, brace, "This `}` closes no block.")
        .help("Remove it, or write the `{` that is missing at the end of the line that opens the block; lines inside a block are indented, since a letter in column 0 begins a new top-level statement.")
        .fix("remove it", brace, "")
}

pub(super) fn lone_brace(brace: Loc, gap: Option<Loc>) -> Diagnostic {
    let d = Diagnostic::new(&codes::NOT_UNDERSTOOD, brace, "This `{` stands alone.");
    match gap {
        Some(gap) => {
            let d = d.at("taken as the block of the statement before it");
            let d = d.help("Write `{` at the end of the line whose block it opens.");
            if gap.span.is_empty() {
                d
            } else {
                d.fix("join it to the line above", gap, " ").preferred()
            }
        }
        None => d.help("Write before it, on the same line, the statement whose block it opens."),
    }
}

pub(super) fn after_brace(loc: Loc) -> Diagnostic {
    let before = Loc::new(
        loc.item,
        Span {
            start: loc.span.start,
            end: loc.span.start,
        },
    );
    Diagnostic::new(
        &codes::NOT_UNDERSTOOD,
        loc,
        "Nothing can follow the `}` of a block on its line.",
    )
    .at("read as a statement of its own")
    .help("Begin a new line, or write `;` between the two.")
    .fix("write `;`", before, "; ")
}

pub(super) fn misplaced(loc: Loc, blanks: Loc, word: bool) -> Diagnostic {
    if !blanks.span.is_empty() && word {
        return Diagnostic::new(
            &codes::MISPLACED_STATEMENT,
            loc,
            "This line is indented but stands inside no block.",
        )
        .at("read as a top-level statement")
        .help("Begin it in column 0, or check that the block above is still open here.")
        .fix("remove the indentation", blanks, "");
    }
    Diagnostic::new(
        &codes::MISPLACED_STATEMENT,
        loc,
        "This line stands inside no block.",
    )
    .at("a top-level statement begins with a word in column 0")
    .help("Move it into the block it belongs to, and indent it.")
}

pub(super) fn too_deep(loc: Loc, brackets: bool) -> Diagnostic {
    let message = if brackets {
        "Brackets are nested more than 64 deep here."
    } else {
        "This expression has more than 64 operators."
    };
    Diagnostic::new(&codes::TOO_DEEP, loc, message)
        .at("this line was not read")
        .help("Give parts of it a name with `let` and write the names.")
}

pub(super) fn too_deep_block(loc: Loc) -> Diagnostic {
    Diagnostic::new(&codes::TOO_DEEP, loc, "Blocks are nested more than 64 deep here.")
        .at("what stands in this block was not read")
        .help("No statement of the language needs more than a few levels; look for a `}` that is missing above.")
}

pub(super) fn bad_date(loc: Loc, text: &str) -> Option<Diagnostic> {
    Some(
        Diagnostic::new(&codes::NOT_UNDERSTOOD, loc, date_fault(text)?)
            .help("Write the date as 2026-07-04, or the month as 2026-07."),
    )
}

/// Why no calendar has the date `text`, which is written `2026-07-04` or `2026-07`; none if one has.
#[must_use]
pub fn date_fault(text: &str) -> Option<String> {
    let number = |from: usize, to: usize| text.get(from..to).and_then(|s| s.parse::<u32>().ok());
    let (year, month) = (number(0, 4)?, number(5, 7)?);
    let leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
    let last = match month {
        2 => 28 + u32::from(leap),
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    };
    match number(8, 10) {
        _ if !(1..=12).contains(&month) => Some(format!(
            "There is no month {month:02}: dates are year-month-day."
        )),
        Some(day) if day == 0 || day > last => {
            Some(format!("There is no day {day:02} in {year}-{month:02}."))
        }
        _ => None,
    }
}

/// The dates that a text such as `19.07.2026`, `4/7/2026` or `2026-7-4` may mean, as the language
/// writes them; none if it is no date. Where day and month could be exchanged both are given, the
/// day first with points, as the countries that write points do.
#[must_use]
pub fn dates_meant(text: &str) -> Vec<String> {
    let separator = ['.', '/', '-'].into_iter().find(|c| text.contains(*c));
    let Some(separator) = separator else {
        return Vec::new();
    };
    let parts: Vec<&str> = text.split(separator).collect();
    let [a, b, c] = parts[..] else {
        return Vec::new();
    };
    let number = |t: &str| {
        let digits = !t.is_empty() && t.len() <= 4 && t.bytes().all(|b| b.is_ascii_digit());
        digits.then(|| t.parse::<u32>().ok()).flatten()
    };
    let (Some(x), Some(y), Some(z)) = (number(a), number(b), number(c)) else {
        return Vec::new();
    };
    let orders: &[(u32, u32, u32)] = match (a.len(), c.len()) {
        (4, _) => &[(x, y, z)],
        (_, 4) if separator == '.' => &[(z, y, x)],
        (_, 4) => &[(z, y, x), (z, x, y)],
        _ => &[],
    };
    let mut out: Vec<String> = Vec::new();
    for (year, month, day) in orders {
        let date = format!("{year:04}-{month:02}-{day:02}");
        if date_fault(&date).is_none() && date != text && !out.contains(&date) {
            out.push(date);
        }
    }
    out
}

/// The diagnostic of a line that cannot be parsed beyond token `stop`.
pub(super) fn not_understood(item: ItemId, text: &str, toks: &[Tok], stop: usize) -> Diagnostic {
    let before = stop.checked_sub(1).and_then(|i| toks.get(i));
    let found = toks.get(stop);
    let end = toks.last().map_or(0, |t| t.end);
    let span = found
        .or(before)
        .map_or(Span { start: end, end }, |t| t.span());
    let loc = Loc::new(item, span);
    let Some(tok) = found else {
        return match before {
            Some(last) => incomplete(loc, text, toks, last),
            None => Diagnostic::new(&codes::NOT_UNDERSTOOD, loc, "This line cannot be read."),
        };
    };
    let d = unexpected(loc, text, &toks[..stop], tok);
    let first = toks.first().map_or(0, |t| t.start);
    let read = text[first as usize..span.start as usize].trim_end();
    if read.is_empty() {
        return d;
    }
    let skipped = read.chars().count().saturating_sub(40);
    let last: String = read.chars().skip(skipped).collect();
    let dots = if skipped > 0 { "…" } else { "" };
    d.at(format!("understood up to here: `{dots}{last}`"))
}

fn is_operator(t: &Tok) -> bool {
    matches!(
        t.kind,
        S::Plus | S::Minus | S::Star | S::Slash | S::Caret | S::PlusMinus
    )
}

/// The line ends after `last`, where more must follow.
fn incomplete(loc: Loc, text: &str, toks: &[Tok], last: &Tok) -> Diagnostic {
    let slice = |t: &Tok| &text[t.span().range()];
    let new = |message: String| Diagnostic::new(&codes::NOT_UNDERSTOOD, loc, message);
    match last.kind {
        S::Comma => new("Nothing follows the comma.".to_owned())
            .help("Remove the comma, or write the qualifier it announces: `, typical`.")
            .fix("remove the comma", loc, ""),
        _ if is_operator(last) => new(format!("`{}` needs a value after it.", slice(last))).help(
            format!("Write a number with its unit after `{}`.", slice(last)),
        ),
        S::LParen => new("Nothing follows the bracket.".to_owned())
            .help("Write the expression and `)` on the same line."),
        _ => {
            let open = unclosed_paren(toks);
            let d = new("A bracket is not closed on its line.".to_owned());
            let end = last.end;
            let close = Loc::new(loc.item, Span { start: end, end });
            let d = match open {
                Some(open) => d.also(Loc::new(loc.item, open.span()), "opened here"),
                None => d,
            };
            d.help("Write `)` where the expression ends; an expression does not go on in the next line.").fix("close the bracket", close, ")")
        }
    }
}

/// `tok` does not fit after the tokens `read`.
fn unexpected(loc: Loc, text: &str, read: &[Tok], tok: &Tok) -> Diagnostic {
    let slice = |t: &Tok| &text[t.span().range()];
    let new = |message: String| Diagnostic::new(&codes::NOT_UNDERSTOOD, loc, message);
    let before = read.last();
    match tok.kind {
        S::Comma if before.is_none() => new("A statement cannot begin with a comma.".to_owned())
            .help("Join this line to the one above: a statement does not go on in the next line."),
        S::Comma if before.is_some_and(|b| b.kind == S::Comma) => {
            new("Two commas follow each other.".to_owned()).help("Remove one.").fix("remove one comma", loc, "").preferred()
        }
        S::Comma | S::Semicolon => new("A value is missing before this comma.".to_owned())
            .help("Write the value, or remove what announces it."),
        S::RParen if unclosed_paren(read).is_none() => {
            new("This `)` closes nothing.".to_owned()).help("Remove it, or write the `(` that is missing.").fix("remove it", loc, "")
        }
        S::RParen => new("A value is missing before this bracket.".to_owned())
            .help("Write the value, or remove the operator before it."),
        S::Unit => new(format!("The unit `{}` has no number before it.", slice(tok)))
            .help(format!("Write the number first: `5 {}`.", slice(tok))),
        S::Root if read.first().is_some_and(|t| slice(t) == "limit") => {
            new(format!("A limit has no `{}`: a root is the power 0.5.", slice(tok)))
                .help("Write it so: `1.375 V/m * (frequency / 1 MHz)^0.5`.")
        }
        S::Root => new(format!("`{}` is allowed only after a value and `per`.", slice(tok)))
            .help("Write it so: `loss 0.05 dB per sqrt(GHz)`."),
        _ if unclosed_paren(read).is_some() && !before.is_some_and(is_operator) => {
            new(format!("`{}` is not allowed here inside the brackets.", slice(tok)))
                .help("Brackets hold values with + - * / between them; write `)` before it if the expression ends there.")
        }
        _ if is_operator(tok) && before.is_some_and(is_operator) => {
            new(format!("`{}` and `{}` have no value between them.", before.map_or("", slice), slice(tok)))
                .help("Write the value between them, or remove one.")
        }
        S::PlusMinus => new("`±` stands where no value precedes it.".to_owned())
            .help("Write the value first (`46 m ± 0.5 m`); an accuracy is written without it: `accuracy 5 %`."),
        _ if is_operator(tok) => new(format!("`{}` has no value on its left.", slice(tok)))
            .help("A sign directly precedes its digits; between two values write blanks on both sides of the operator."),
        _ => new(format!("`{}` does not fit here.", shorten(slice(tok)))).help(match before {
            Some(b) if is_operator(b) => "A value must follow the operator: a number with its unit, or a name.",
            _ => "Write a word, a value, a date or a text in quotes.",
        }),
    }
}

fn shorten(text: &str) -> String {
    let mut short: String = text.chars().take(30).collect();
    if short.len() < text.len() {
        short.push('…');
    }
    short
}

/// The last `(` that has no `)`.
fn unclosed_paren(toks: &[Tok]) -> Option<&Tok> {
    let mut open = Vec::new();
    for tok in toks {
        match tok.kind {
            S::LParen => open.push(tok),
            S::RParen => {
                open.pop();
            }
            _ => {}
        }
    }
    open.pop()
}
