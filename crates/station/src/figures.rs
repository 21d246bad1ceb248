//! Figures as stated in a text, each with a key that identifies it, so that they can be compared
//! with an earlier state of the same text. Lengths of cable ([`crate::lengths`]) and readings
//! ([`crate::evidence`]) are compared by rules of their own.

use downlead_base::Loc;
use downlead_syntax::{Atom, AtomKind, Item, Stmt};

/// A figure, as written.
#[derive(Clone, Debug)]
pub struct StatedFigure {
    /// What tells it from others: the statements around it, its own words, its place among their
    /// figures.
    pub key: Box<str>,
    /// Keyword and tag or name, `transmitter TX1`.
    pub name: Box<str>,
    /// As written, with its `±`.
    pub text: Box<str>,
    /// Its numbers with what follows each: `146.8 MHz to 147.0 MHz` has two.
    pub numbers: Box<[(Box<str>, Box<str>)]>,
    /// Where it stands.
    pub loc: Loc,
}

impl StatedFigure {
    /// Whether both are written alike, but for blanks.
    #[must_use]
    pub fn same(&self, other: &StatedFigure) -> bool {
        self.text == other.text
    }

    /// What is written before its `±`, and whether there is one.
    #[must_use]
    pub fn without_uncertainty(&self) -> (&str, bool) {
        match self.text.split_once('±') {
            Some((figure, _)) => (figure.trim_end(), true),
            None => (&self.text, false),
        }
    }
}

/// Statements at the left margin whose figures are compared: what a station is made of.
const ITEMS: [&str; 8] = [
    "band",
    "let",
    "cable",
    "connector",
    "device",
    "instrument",
    "station",
    "chain",
];

/// Lines of readings and of what is wanted, which change with every visit.
const NOT: [&str; 6] = ["read", "readings", "expect", "accept", "spot", "position"];

/// The figures written in one item.
#[must_use]
pub fn item_figures(item: &Item) -> Vec<StatedFigure> {
    let mut out = Vec::new();
    if let Some(s) = item.statement()
        && s.keyword().is_some_and(|w| ITEMS.contains(&w))
    {
        walk(item, s, "", &mut out);
    }
    out
}

fn walk(item: &Item, s: Stmt<'_>, path: &str, out: &mut Vec<StatedFigure>) {
    let word = s.keyword().unwrap_or("");
    if NOT.contains(&word) {
        return;
    }
    let words: Vec<&str> = s
        .atoms()
        .iter()
        .filter(|a| a.kind == AtomKind::Word)
        .map(|a| s.text(*a))
        .collect();
    // what was read is evidence, and has its own comparison
    if !s.is_broken() && !words.contains(&"read") {
        let name = head(s, path);
        let length = length_of(s, word);
        let values = s
            .atoms()
            .iter()
            .filter(|a| matches!(a.kind, AtomKind::Value(_)));
        for (n, a) in values.enumerate() {
            if length == Some(a.span) {
                continue;
            }
            let text = s.text(*a).split_whitespace().collect::<Vec<_>>().join(" ");
            let numbers = numbers(&text);
            if numbers.is_empty() {
                continue;
            }
            out.push(StatedFigure {
                key: format!("{path}/{name}/{}/{n}", words.join(" ")).into(),
                name: name.as_str().into(),
                numbers,
                text: text.into(),
                loc: Loc::new(item.id, a.span),
            });
        }
    }
    let path = format!("{path}/{}", head(s, path));
    for inner in s.block().into_iter().flat_map(|b| b.iter()) {
        walk(item, inner, &path, out);
    }
}

/// Keyword and tag or name. At the left margin the name follows the keyword, and may begin with a
/// digit (`band 2m`), which is read as a figure.
fn head(s: Stmt<'_>, path: &str) -> String {
    let named = |a: &&Atom| path.is_empty() || a.kind == AtomKind::Word;
    let words: Vec<&str> = s
        .atoms()
        .iter()
        .filter(named)
        .take(2)
        .map(|a| s.text(*a))
        .collect();
    words.join(" ")
}

/// The length of cable of a line, which stands before `of`, or that of a named length.
fn length_of(s: Stmt<'_>, word: &str) -> Option<downlead_base::Span> {
    let atoms = s.atoms();
    let is_length = |a: &&Atom| matches!(a.kind, AtomKind::Value(_));
    match word {
        "run" | "jumper" | "tail" | "piece" => {
            let of = atoms
                .iter()
                .position(|a| a.kind == AtomKind::Word && s.text(*a) == "of")?;
            atoms.get(..of)?.last().filter(is_length).map(|a| a.span)
        }
        "let" if !crate::lengths::item_lengths(s.item()).is_empty() => {
            atoms.iter().find(is_length).map(|a| a.span)
        }
        _ => None,
    }
}

/// The numbers of a text, each with what follows it up to the next one.
fn numbers(text: &str) -> Box<[(Box<str>, Box<str>)]> {
    let mut out: Vec<(Box<str>, Box<str>)> = Vec::new();
    let mut rest = text;
    while let Some(at) = rest.find(|c: char| c.is_ascii_digit()) {
        let tail = &rest[at..];
        let len = tail
            .find(|c: char| !(c.is_ascii_digit() || c == '.'))
            .unwrap_or(tail.len());
        let after = &tail[len..];
        let next = after
            .find(|c: char| c.is_ascii_digit())
            .unwrap_or(after.len());
        let unit = after[..next]
            .split(['±', '+', '*'])
            .next()
            .unwrap_or_default()
            .trim()
            .trim_end_matches(" to")
            .trim_end_matches(" k");
        out.push((tail[..len].trim_end_matches('.').into(), unit.into()));
        rest = after;
    }
    out.into()
}

#[cfg(test)]
mod tests {
    use super::{item_figures, numbers};
    use downlead_syntax::File;

    #[test]
    fn numbers_have_what_follows_them() {
        let of = |t: &str| {
            numbers(t)
                .iter()
                .map(|(d, u)| format!("{d}|{u}"))
                .collect::<Vec<_>>()
                .join(" ; ")
        };
        assert_eq!(of("146.8 MHz to 147.0 MHz"), "146.8|MHz ; 147.0|MHz");
        assert_eq!(of("0.55 dB ± 0.15 dB"), "0.55|dB ; 0.15|dB");
        assert_eq!(of("± 5 % k 2"), "5|% ; 2|");
        assert_eq!(of("tower"), "");
    }

    #[test]
    fn lengths_and_readings_are_left_to_their_own_rules() {
        let text = "station s {\n    transmitter TX1 25 W ± 5 % carrier\n    run M1 46 m ± 0.5 m of rg-213, added 0.3 dB\n    antenna A1 5.2 dBi\n    chain c on 145 MHz {\n        TX1\n        read 20 W forward\n        limit 30 W erp, \"L\"\n    }\n}\n";
        let tree = File::parse(text);
        let all = item_figures(&tree.items()[0].item);
        let texts: Vec<&str> = all.iter().map(|f| &*f.text).collect();
        assert_eq!(
            texts,
            ["25 W ± 5 %", "0.3 dB", "5.2 dBi", "145 MHz", "30 W"]
        );
        assert_eq!(&*all[0].name, "transmitter TX1");
    }
}
