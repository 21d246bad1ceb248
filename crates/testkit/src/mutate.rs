//! Changes to texts: small ones as a person makes them, and damage.

use crate::Rng;

/// A replacement of a byte range by a text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Change {
    /// First byte.
    pub start: usize,
    /// One past the last byte.
    pub end: usize,
    /// The new text.
    pub text: String,
}

impl Change {
    /// The text with the change made.
    #[must_use]
    pub fn apply(&self, to: &str) -> String {
        format!("{}{}{}", &to[..self.start], self.text, &to[self.end..])
    }
}

/// Pieces put in: marks, values, words and whole statements of the language.
const PIECES: &[&str] = &[
    "{",
    "}",
    "(",
    ")",
    ",",
    ";",
    "=",
    "+",
    "-",
    "*",
    "/",
    "±",
    "%",
    " ",
    "\n",
    "\n\n",
    "//",
    "\"",
    "0",
    "1e9",
    "1e-30",
    "-1",
    "0 m",
    "46 m",
    "5 %",
    "k 2",
    "2m",
    "3 dB",
    "5 dBi",
    "5 dBd",
    "1 W",
    "0 W",
    "145 MHz",
    "0 MHz",
    "50 ohm",
    "0 ohm",
    "20 °C",
    "of",
    "on",
    "to",
    "transmit",
    "receive",
    "sqrt(MHz)",
    "\nlet tower = 12 m\n",
    "\nlet spare = 99 dB\n",
    "\nuse \"main.downlead\"\n",
    "\nuse \"gone.downlead\"\n",
    "\nband 2m 145 MHz\n",
    "\nconnector n-pair { family n; loss 0.3 dB }\n",
    "\ncable rg-213 { impedance 75 ohm; loss 9 dB/100 m/sqrt(MHz) }\n",
    "\nstation s {\n",
    "\n}\n",
    "\n    ",
    "run 3 m of rg-213\n",
    "isolator 0.5 dB\n",
    "branch { antenna 3 dBi }\n",
    "limit 3 W erp\n",
    "read 3 W forward\n",
    "baseline 40 W at 3 min\n",
    "through A 20 W at 1 min, adapter 2 of n-to-bnc\n",
    "open A 3 dB\n",
    "piece A 1 m of rg-213\n",
    "readings from \"july.csv\"\n",
    "with W1",
    "at 0 min",
    "é",
    "🜁",
];

/// One change somewhere in a text: a digit, a piece, a line taken out, doubled or moved.
pub fn change(r: &mut Rng, text: &str) -> Change {
    let digits: Vec<usize> = text
        .bytes()
        .enumerate()
        .filter(|(_, b)| b.is_ascii_digit())
        .map(|x| x.0)
        .collect();
    match r.below(6) {
        0 | 1 if !digits.is_empty() => {
            let at = *r.pick(&digits);
            Change {
                start: at,
                end: at + 1,
                text: r.below(10).to_string(),
            }
        }
        2 => {
            let (start, end) = line(r, text);
            Change {
                start,
                end,
                text: String::new(),
            }
        }
        3 => {
            let (start, end) = line(r, text);
            let (at, _) = line(r, text);
            Change {
                start: at,
                end: at,
                text: text[start..end].to_owned(),
            }
        }
        4 => {
            let start = boundary(text, r.below(text.len() + 1));
            let end = boundary(text, start + r.below(12));
            Change {
                start,
                end,
                text: String::new(),
            }
        }
        _ => {
            let at = boundary(text, r.below(text.len() + 1));
            Change {
                start: at,
                end: at,
                text: r.word(PIECES).to_owned(),
            }
        }
    }
}

/// A text after some changes.
pub fn mutate(r: &mut Rng, text: &str, changes: usize) -> String {
    (0..changes).fold(text.to_owned(), |t, _| change(r, &t).apply(&t))
}

fn line(r: &mut Rng, text: &str) -> (usize, usize) {
    let at = boundary(text, r.below(text.len() + 1));
    let start = text[..at].rfind('\n').map_or(0, |i| i + 1);
    let end = text[at..].find('\n').map_or(text.len(), |i| at + i + 1);
    (start, end)
}

fn boundary(text: &str, at: usize) -> usize {
    let mut at = at.min(text.len());
    while !text.is_char_boundary(at) {
        at -= 1;
    }
    at
}
