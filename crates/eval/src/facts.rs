//! What a definition says, field by field, without places: two of them are the same when every
//! figure and word is, however they are laid out and in whatever unit they were typed.
//!
//! The fields are read from the model's own debug form, so a field that is added to the model
//! counts at once: none can be left out of a comparison.

use std::fmt::Debug;

/// How two states of a definition differ, the weightiest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum Differs {
    /// In nothing.
    #[default]
    Not,
    /// In what is said of a figure: its uncertainty, source, date, instrument or person.
    InEvidence,
    /// In a value.
    InValue,
}

/// Numbers closer than this (relative) are one number in two units.
const SAME: f64 = 1e-9;

/// How two states of a definition differ.
#[must_use]
pub fn differs<T: Debug + ?Sized>(old: &T, new: &T) -> Differs {
    compare(&Node::of(old), &Node::of(new))
}

/// A value of the model as its debug form has it.
#[derive(Clone, Debug, PartialEq)]
enum Node {
    Number(f64),
    Word(String),
    List(Vec<Node>),
    Struct(String, Vec<(String, Node)>),
}

/// Fields that say how something was typed or where it stands.
const TYPED: &[&str] = &[
    "loc",
    "length_loc",
    "unit_loc",
    "unit",
    "imperial",
    "percent",
    "dipole",
];

/// Fields that are evidence for a figure.
const EVIDENCE: &[&str] = &[
    "u",
    "normal",
    "basis",
    "bound",
    "source",
    "date",
    "since",
    "person",
    "instrument",
];

fn compare(a: &Node, b: &Node) -> Differs {
    match (a, b) {
        (Node::Number(x), Node::Number(y)) => {
            let same = x == y || (x - y).abs() <= SAME * x.abs().max(y.abs());
            if same { Differs::Not } else { Differs::InValue }
        }
        (Node::List(x), Node::List(y)) => lists(x, y),
        (Node::Struct(n, _), Node::Struct(m, _)) if n == "Loc" && m == "Loc" => Differs::Not,
        (Node::Struct(n, x), Node::Struct(m, y)) if n == m && x.len() == y.len() => {
            let fields = x.iter().zip(y).map(|((name, p), (other, q))| {
                if name != other {
                    return Differs::InValue;
                }
                if TYPED.contains(&name.as_str()) {
                    return Differs::Not;
                }
                match compare(p, q) {
                    Differs::InValue if EVIDENCE.contains(&name.as_str()) => Differs::InEvidence,
                    d => d,
                }
            });
            fields.max().unwrap_or_default()
        }
        _ if a == b => Differs::Not,
        _ => Differs::InValue,
    }
}

/// Entries count in any order.
fn lists(a: &[Node], b: &[Node]) -> Differs {
    if a.len() != b.len() {
        return Differs::InValue;
    }
    let mut left: Vec<&Node> = b.iter().collect();
    let mut worst = Differs::Not;
    for x in a {
        let best = left
            .iter()
            .enumerate()
            .map(|(i, y)| (compare(x, y), i))
            .min();
        let Some((d, i)) = best else {
            return Differs::InValue;
        };
        worst = worst.max(d);
        left.remove(i);
    }
    worst
}

impl Node {
    fn of<T: Debug + ?Sized>(x: &T) -> Node {
        let text = format!("{x:?}");
        Reader { rest: &text }.value()
    }
}

/// Reads the debug form.
struct Reader<'t> {
    rest: &'t str,
}

impl Reader<'_> {
    fn blank(&mut self) {
        self.rest = self.rest.trim_start_matches([' ', ',']);
    }

    fn eat(&mut self, c: char) -> bool {
        self.blank();
        match self.rest.strip_prefix(c) {
            Some(rest) => {
                self.rest = rest;
                true
            }
            None => false,
        }
    }

    fn value(&mut self) -> Node {
        self.blank();
        match self.rest.chars().next() {
            Some('"') => Node::Word(self.string()),
            Some('[') => {
                self.eat('[');
                Node::List(self.until(']'))
            }
            Some('(') => {
                self.eat('(');
                let all = self.until(')');
                Node::Struct(String::new(), numbered(all))
            }
            Some(_) => self.named(),
            None => Node::Word(String::new()),
        }
    }

    /// A number, a word, or a word with fields.
    fn named(&mut self) -> Node {
        let end = self
            .rest
            .find([' ', ',', '(', ')', '{', '}', '[', ']'])
            .unwrap_or(self.rest.len());
        let (word, rest) = self.rest.split_at(end);
        self.rest = rest;
        if let Ok(x) = word.parse::<f64>() {
            return Node::Number(x);
        }
        let word = word.to_owned();
        if self.rest.starts_with('(') {
            self.eat('(');
            let all = self.until(')');
            return Node::Struct(word, numbered(all));
        }
        if !self.rest.starts_with(" {") {
            if end == 0 {
                // a sign that begins nothing: passed over, so that reading always ends
                let mut chars = self.rest.chars();
                chars.next();
                self.rest = chars.as_str();
            }
            return Node::Word(word);
        }
        self.eat('{');
        let mut fields = Vec::new();
        while !self.eat('}') && !self.rest.is_empty() {
            let Some((name, rest)) = self.rest.split_once(": ") else {
                self.rest = "";
                break;
            };
            self.rest = rest;
            let name = name.to_owned();
            fields.push((name, self.value()));
        }
        Node::Struct(word, fields)
    }

    fn until(&mut self, end: char) -> Vec<Node> {
        let mut all = Vec::new();
        while !self.eat(end) && !self.rest.is_empty() {
            all.push(self.value());
        }
        all
    }

    /// Between quotes, escapes left as they are.
    fn string(&mut self) -> String {
        let mut escaped = false;
        for (i, c) in self.rest.char_indices().skip(1) {
            match c {
                _ if escaped => escaped = false,
                '\\' => escaped = true,
                '"' => {
                    let word = self.rest[1..i].to_owned();
                    self.rest = &self.rest[i + 1..];
                    return word;
                }
                _ => {}
            }
        }
        let word = self.rest.to_owned();
        self.rest = "";
        word
    }
}

fn numbered(all: Vec<Node>) -> Vec<(String, Node)> {
    all.into_iter().map(|x| (String::new(), x)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use downlead_station::model::Meaning;
    use downlead_station::{Lets, lower};

    fn meaning(text: &str) -> Meaning {
        let file = downlead_syntax::File::parse(text);
        let placed = file.items().iter().find(|p| p.item.statement().is_some());
        lower(&placed.expect("an item").item, &Lets::default(), false).meaning
    }

    fn between(old: &str, new: &str) -> Differs {
        let whole =
            |t: &str| format!("device d \"x, \\\"y\\\" (z\" {{\n    kind protector\n{t}\n}}\n");
        differs(&meaning(&whole(old)), &meaning(&whole(new)))
    }

    #[test]
    fn layout_units_and_order_are_no_difference() {
        let old = "    loss 0.10 dB ± 0.15 dB on 2m, sheet \"SP-1 p. 1\"\n    loss 0.2 dB on 70cm\n    swr 1.2";
        assert_eq!(between(old, old), Differs::Not);
        let new = "    swr 1.20 // as measured\n    loss 0.2 dB on 70cm\n    loss 0.1 dB ± 0.15 dB on 2m,   sheet \"SP-1 p. 1\"";
        assert_eq!(between(old, new), Differs::Not);
        let run = |t: &str| {
            meaning(&format!(
                "station s {{\n    run M1 {t} of half-inch-foam\n}}\n"
            ))
        };
        assert_eq!(differs(&run("46 m"), &run("4600 cm")), Differs::Not);
        assert_eq!(differs(&run("10 ft"), &run("3.048 m")), Differs::Not);
        assert_eq!(differs(&run("46 m"), &run("46.1 m")), Differs::InValue);
    }

    #[test]
    fn evidence_is_told_from_values() {
        let old = "    loss 0.10 dB ± 0.15 dB, sheet \"SP-1 p. 1\"";
        for new in [
            "    loss 0.10 dB ± 0.2 dB, sheet \"SP-1 p. 1\"",
            "    loss 0.10 dB, sheet \"SP-1 p. 1\"",
            "    loss 0.10 dB ± 0.15 dB, sheet \"SP-1 p. 2\"",
            "    loss 0.10 dB ± 0.15 dB",
        ] {
            assert_eq!(between(old, new), Differs::InEvidence, "{new}");
        }
        for new in [
            "    loss 0.11 dB ± 0.15 dB, sheet \"SP-1 p. 1\"",
            "    loss 0.10 dB ± 0.15 dB on 2m, sheet \"SP-1 p. 1\"",
            "    loss 0.10 dB ± 0.15 dB, sheet \"SP-1 p. 1\"\n    swr 1.2",
        ] {
            assert_eq!(between(old, new), Differs::InValue, "{new}");
        }
    }
}
