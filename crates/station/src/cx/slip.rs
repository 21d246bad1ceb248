//! Slips of typing that are known: what was meant is clear, and the fix writes it.

use downlead_base::{Diagnostic, Span, codes};
use downlead_quantity::{Dim, similar_units, units_of};
use downlead_syntax::{Atom, AtomKind, Stmt, dates_meant};

use super::Cx;
use super::value::Val;

/// Blanks that begin a text, in bytes.
fn blanks(text: &str) -> usize {
    text.len() - text.trim_start_matches([' ', '\t']).len()
}

fn to32(n: usize) -> u32 {
    u32::try_from(n).unwrap_or(u32::MAX)
}

/// A unit as people write it without its sign: `20 C`, `49.3 N`.
pub(super) fn unit_without_sign(word: &str, want: &[Dim]) -> Option<&'static str> {
    if !want.contains(&Dim::Temperature) {
        return None;
    }
    match word {
        "C" | "c" | "degC" | "Celsius" | "celsius" => Some("°C"),
        "F" | "f" | "degF" | "Fahrenheit" | "fahrenheit" => Some("°F"),
        _ => None,
    }
}

impl<'a> Cx<'a> {
    /// A bare number in which a blank or the order of number and unit is the slip. True if it has been
    /// reported.
    pub(super) fn bare_number_slip(&mut self, v: &Val, want: &[Dim]) -> bool {
        let d = self
            .blank_in_number(v)
            .or_else(|| self.unit_in_front(v, want))
            .or_else(|| self.direction_after(v, want));
        d.map(|d| self.push(d)).is_some()
    }

    /// `1 000 W`: the blank of thousands.
    fn blank_in_number(&self, v: &Val) -> Option<Diagnostic> {
        let text = self.item.text();
        let number = text.get(v.loc.span.start as usize..v.unit_loc.span.start as usize)?;
        if number.len() > 3 || !number.bytes().all(|b| b.is_ascii_digit()) {
            return None;
        }
        let mut rest = text.get(v.unit_loc.span.end as usize..)?;
        let mut whole = number.to_owned();
        let mut end = v.unit_loc.span.end;
        while let Some(group) = rest.strip_prefix(' ') {
            let digits = group.bytes().take_while(u8::is_ascii_digit).count();
            if digits != 3 {
                break;
            }
            whole.push_str(&group[..3]);
            end += 4;
            rest = &group[3..];
        }
        if whole == number {
            return None;
        }
        let loc = self.loc(Span::new(v.loc.span.start, end));
        let written = self.text(loc.span);
        Some(
            Diagnostic::new(
                &codes::NOT_UNDERSTOOD,
                loc,
                format!("A blank stands inside the number `{written}`."),
            )
            .at("a blank ends a number")
            .help(format!("Thousands are not separated: `{whole}`."))
            .fix(format!("write `{whole}`"), loc, whole)
            .preferred(),
        )
    }

    /// `dBi 3`: the unit before its number.
    fn unit_in_front(&self, v: &Val, want: &[Dim]) -> Option<Diagnostic> {
        let text = self.item.text();
        let before = text
            .get(..v.loc.span.start as usize)?
            .trim_end_matches([' ', '\t']);
        let from = before
            .rfind(|c: char| c.is_whitespace() || c == ',' || c == ';')
            .map_or(0, |i| i + 1);
        let word = &before[from..];
        let unit = want
            .iter()
            .flat_map(|w| units_of(*w))
            .map(downlead_quantity::Unit::symbol)
            .find(|s| *s == word || similar_units(word).contains(s))?;
        let end = v.unit_loc.span.start;
        let number = text.get(v.loc.span.start as usize..end as usize)?;
        let loc = self.loc(Span::new(to32(from), end));
        let right = format!("{number} {unit}");
        Some(
            Diagnostic::new(
                &codes::MISSING_UNIT,
                loc,
                format!("The unit follows its number: `{right}`, not `{word} {number}`."),
            )
            .at("unit before the number")
            .fix(format!("write `{right}`"), loc, right)
            .preferred(),
        )
    }

    /// `49.33 N`: degrees without their sign.
    fn direction_after(&self, v: &Val, want: &[Dim]) -> Option<Diagnostic> {
        if !want.contains(&Dim::Angle) {
            return None;
        }
        let text = self.item.text();
        let end = v.unit_loc.span.end;
        let rest = text.get(end as usize..)?;
        let rest = &rest[blanks(rest)..];
        let word: &str = rest.split(|c: char| !c.is_alphanumeric()).next()?;
        if !matches!(
            word,
            "N" | "S" | "E" | "W" | "north" | "south" | "east" | "west"
        ) {
            return None;
        }
        let number = text.get(v.loc.span.start as usize..end as usize)?;
        let loc = self.loc(Span::new(v.loc.span.start, end));
        Some(
            Diagnostic::new(
                &codes::MISSING_UNIT,
                loc,
                format!("{number} has no unit; write degrees with their sign: `{number}° {word}`."),
            )
            .at("no unit")
            .fix(format!("write `{number}°`"), v.unit_loc, "°")
            .preferred(),
        )
    }

    /// What an atom that means nothing at its place was meant to be.
    pub(super) fn known_slip(
        &self,
        stmt: Stmt<'a>,
        atoms: &[Atom],
        i: usize,
        allowed: &[&str],
    ) -> Option<Diagnostic> {
        let a = atoms.get(i)?;
        let text = self.text(a.span);
        let loc = self.loc(a.span);
        let d = |message: String| Diagnostic::new(&codes::UNEXPECTED_WORD, loc, message);
        if text == "=" {
            return Some(
                d("A word is followed by its value directly, without `=`.".to_owned())
                    .at("not used")
                    .fix("remove `=`", loc, "")
                    .preferred(),
            );
        }
        // `± 5 % k2`
        if let Some(k) = text.strip_prefix(['k', 'K'])
            && k.parse::<f64>().is_ok_and(|k| k > 0.0)
            && i > 0
            && stmt
                .value(atoms[i - 1])
                .is_some_and(|v| v.tolerance().is_some())
        {
            return Some(
                d(format!(
                    "The coverage factor stands apart from its letter: `k {k}`."
                ))
                .at("no blank after `k`")
                .fix(format!("write `k {k}`"), loc, format!("k {k}"))
                .preferred(),
            );
        }
        if allowed.contains(&"with") || allowed.contains(&"since") {
            let dates = dates_meant(text);
            if let Some(first) = dates.first() {
                let x = d(format!(
                    "`{text}` is no date of this language: year, month and day stand in this order."
                ))
                .at("not a date")
                .help(format!("Write it so: `{}`.", dates.join("` or `")));
                debug_assert!(!first.is_empty());
                let many = dates.len() > 1;
                let x = dates
                    .into_iter()
                    .fold(x, |x, date| x.fix(format!("write `{date}`"), loc, date));
                return Some(if many { x } else { x.preferred() });
            }
        }
        // `limit 30 W erp, TSO 14`: a document without its quotes
        if stmt.keyword() == Some("limit")
            && a.kind == AtomKind::Word
            && !stmt.atoms().iter().any(|x| x.kind == AtomKind::Str)
            && super::nearest(text, allowed.iter().copied()).is_none()
            && text.starts_with(char::is_uppercase)
        {
            let end = stmt.atoms().last().map_or(a.span, |l| l.span);
            let loc = self.loc(a.span.join(end));
            let document = format!("\"{}\"", self.text(loc.span));
            return Some(
                d(format!(
                    "The document of a limit stands in quotes: `{document}`."
                ))
                .at("without quotes")
                .fix(format!("write `{document}`"), loc, document),
            );
        }
        // a frequency in a head before which `on` is missing
        if allowed.contains(&"on")
            && matches!(a.kind, AtomKind::Value(_))
            && stmt.keyword() == Some("chain")
        {
            let gap = self.loc(Span::new(a.span.start, a.span.start));
            return Some(
                d(format!(
                    "`on` stands before a chain's band or frequency: `on {text}`."
                ))
                .at("without `on`")
                .fix(format!("write `on {text}`"), gap, "on ")
                .preferred(),
            );
        }
        None
    }

    /// `28 m half-inch-foam`, `28 m off half-inch-foam`: the word that is no `of`, and where it stands.
    pub(crate) fn without_of(&mut self, atoms: &[Atom], i: usize, kind: &str) -> bool {
        let Some(a) = atoms.get(i).filter(|a| a.kind == AtomKind::Word) else {
            return false;
        };
        let word = self.text(a.span);
        let next = atoms.get(i + 1).filter(|a| a.kind == AtomKind::Word);
        let near_of = matches!(word, "off" | "fo" | "from" | "Of" | "OF" | "o" | "if");
        if let Some(n) = next.filter(|_| near_of) {
            let loc = self.loc(a.span);
            let cable = self.text(n.span);
            self.push(
                Diagnostic::new(
                    &codes::MISSING_VALUE,
                    loc,
                    "`of` and the cable's name follow the length.",
                )
                .at("not `of`")
                .help(format!("Written so: `of {cable}`."))
                .fix("write `of`", loc, "of")
                .preferred(),
            );
            return true;
        }
        if crate::keywords::is_word(word) || crate::keywords::keyword(word).is_some() {
            return false;
        }
        let gap = self.loc(Span::new(a.span.start, a.span.start));
        let loc = self.loc(a.span);
        self.push(
            Diagnostic::new(
                &codes::MISSING_VALUE,
                loc,
                "`of` stands between the length and the cable's name.",
            )
            .at("a cable's name?")
            .help(format!(
                "Written for example `{kind} 28 m of half-inch-foam`."
            ))
            .fix(format!("write `of {word}`"), gap, "of ")
            .preferred(),
        );
        true
    }

    /// `run half-inch-foam 28 m`: the cable before its length.
    pub(crate) fn cable_first(&mut self, atoms: &[Atom], i: usize) -> bool {
        let (Some(length), Some(cable)) = (
            atoms.get(i),
            i.checked_sub(1)
                .and_then(|b| atoms.get(b))
                .filter(|_| i > 1),
        ) else {
            return false;
        };
        let (name, m) = (self.text(cable.span), self.text(length.span));
        if i + 1 != atoms.len() || !name.contains('-') {
            return false;
        }
        let loc = self.loc(Span::new(cable.span.start, length.span.end));
        let right = format!("{m} of {name}");
        self.push(
            Diagnostic::new(
                &codes::MISSING_VALUE,
                loc,
                format!("The length comes first, then `of` and the cable: `{right}`."),
            )
            .at("the cable before its length")
            .fix(format!("write `{right}`"), loc, right),
        );
        true
    }
}
