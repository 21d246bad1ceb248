//! Text for hovers: Markdown, or the same in plain words.

use std::fmt::Write as _;

use downlead_eval::Derivation;

use crate::view::{Place, View};

/// About as long as a derivation is, bytes.
const DERIVATION: usize = 1024;

/// Writes Markdown or plain text.
pub(crate) struct Writer<'v, 's> {
    view: &'v View<'s>,
    markdown: bool,
    out: String,
    pub(crate) links: Vec<Place>,
}

impl<'v, 's> Writer<'v, 's> {
    pub(crate) fn new(view: &'v View<'s>, markdown: bool) -> Self {
        Writer {
            view,
            markdown,
            out: String::new(),
            links: Vec::new(),
        }
    }

    pub(crate) fn finish(mut self) -> (String, Vec<Place>) {
        self.out.truncate(self.out.trim_end().len());
        (self.out, self.links)
    }

    pub(crate) fn is_empty(&self) -> bool {
        self.out.is_empty()
    }

    fn gap(&mut self) {
        if !self.out.is_empty() {
            while self.out.ends_with('\n') {
                self.out.pop();
            }
            self.out.push_str("\n\n");
        }
    }

    /// A first line: a name in bold and what it is.
    pub(crate) fn title(&mut self, name: &str, rest: &str) {
        self.gap();
        let name = if self.markdown {
            format!("**{}**", escape(name))
        } else {
            name.to_owned()
        };
        self.out.push_str(&name);
        if !rest.is_empty() {
            self.out.push_str(" · ");
            let rest = if self.markdown {
                escape(rest)
            } else {
                rest.to_owned()
            };
            self.out.push_str(&rest);
        }
        self.out.push('\n');
    }

    /// A paragraph.
    pub(crate) fn text(&mut self, t: &str) {
        self.gap();
        let t = if self.markdown {
            escape(t)
        } else {
            t.to_owned()
        };
        self.out.push_str(&t);
        self.out.push('\n');
    }

    /// A paragraph with a link to a place.
    pub(crate) fn linked(&mut self, t: &str, words: &str, place: Place) {
        self.gap();
        let link = self.link(words, place);
        let t = if self.markdown {
            escape(t)
        } else {
            t.to_owned()
        };
        self.out.push_str(&format!("{t}{link}\n"));
    }

    /// Text of the language.
    pub(crate) fn code(&mut self, t: &str) {
        self.gap();
        if self.markdown {
            // longer than any run of backticks in the text, which could otherwise end it
            let run = t.split(|c| c != '`').map(str::len).max().unwrap_or(0);
            let fence = "`".repeat(3.max(run + 1));
            self.out
                .push_str(&format!("{fence}downlead\n{}\n{fence}\n", t.trim_end()));
        } else {
            self.out.push_str(t.trim_end());
            self.out.push('\n');
        }
    }

    /// A table.
    pub(crate) fn table(&mut self, head: &[&str], rows: &[Vec<String>]) {
        if rows.is_empty() {
            return;
        }
        self.gap();
        if self.markdown {
            self.out.push_str(&table(head, rows));
        } else {
            for r in rows {
                let cells: Vec<String> = head
                    .iter()
                    .zip(r)
                    .map(|(h, c)| format!("{h} {c}"))
                    .collect();
                self.out.push_str(&cells.join(", "));
                self.out.push('\n');
            }
        }
    }

    /// A derivation with its steps below it.
    pub(crate) fn derivation(&mut self, d: &Derivation) {
        // evaluation never nests deeper; a text as written cannot make it
        self.derivation_to(d, 8);
    }

    /// The same with steps of steps to a depth. Whether all were shown.
    pub(crate) fn derivation_to(&mut self, d: &Derivation, deepest: usize) -> bool {
        self.gap();
        self.out.reserve(DERIVATION);
        self.step(d, 0, deepest)
    }

    fn step(&mut self, d: &Derivation, depth: usize, deepest: usize) -> bool {
        if depth > deepest {
            return false;
        }
        let md = self.markdown;
        self.pad(depth);
        self.out.push_str("- ");
        match d.place.and_then(|l| self.view.place(l)) {
            Some(p) => self.put_link(&d.title, p),
            None => self.put(&d.title),
        }
        self.out.push_str(if md { ": **" } else { ": " });
        self.put(&d.value);
        self.out.push_str(if md { "**" } else { "" });
        if let Some(s) = &d.source {
            self.out.push_str(if md { " *(" } else { " (" });
            self.put(s);
            self.out.push_str(if md { ")*" } else { ")" });
        }
        let follows = !(d.formula.is_empty() && d.substituted.is_empty());
        self.out.push_str(if md && follows { "  \n" } else { "\n" });
        for (lead, f) in [("", &d.formula), ("= ", &d.substituted)] {
            if !f.is_empty() {
                // an indented paragraph of the same list entry
                self.pad(depth + 1);
                let parts: [&str; 4] = match md {
                    true => ["`", lead, f, "`  \n"],
                    false => [lead, f, "", "\n"],
                };
                parts.iter().for_each(|p| self.out.push_str(p));
            }
        }
        let mut all = true;
        for s in &d.steps {
            all &= self.step(s, depth + 1, deepest);
        }
        all
    }

    fn pad(&mut self, depth: usize) {
        (0..depth).for_each(|_| self.out.push_str("  "));
    }

    /// Words as they stand.
    fn put(&mut self, t: &str) {
        if self.markdown {
            escape_into(t, &mut self.out);
        } else {
            self.out.push_str(t);
        }
    }

    /// Words that lead to a place.
    pub(crate) fn link(&mut self, words: &str, place: Place) -> String {
        let before = self.out.len();
        self.put_link(words, place);
        self.out.split_off(before)
    }

    fn put_link(&mut self, words: &str, place: Place) {
        if !self.links.contains(&place) {
            self.links.push(place);
        }
        let line = self.view.line(place);
        let path = self.view.path(place.doc);
        let _ = if self.markdown {
            self.out.push('[');
            escape_into(words, &mut self.out);
            self.out.push_str("](downlead-place:");
            address_into(path, &mut self.out);
            write!(self.out, "#{line})")
        } else {
            write!(self.out, "{words} [{path}:{line}]")
        };
    }
}

/// The address of a line of a file, which the server replaces by that of its client.
pub(crate) fn place_link(path: &str, line: u32) -> String {
    let mut out = "downlead-place:".to_owned();
    address_into(path, &mut out);
    let _ = write!(out, "#{line}");
    out
}

/// A path as it may stand in a link: what would end the link or begin its line is encoded.
fn address_into(path: &str, out: &mut String) {
    for piece in path.split_inclusive([' ', '(', ')', '<', '>', '#', '%']) {
        match piece.char_indices().next_back() {
            Some((at, c @ (' ' | '(' | ')' | '<' | '>' | '#' | '%'))) => {
                out.push_str(&piece[..at]);
                let _ = write!(out, "%{:02X}", c as u32);
            }
            _ => out.push_str(piece),
        }
    }
}

/// A Markdown table that reads well as it stands: columns of one width, figures to the right.
pub(crate) fn table(head: &[&str], rows: &[Vec<String>]) -> String {
    let rows: Vec<Vec<String>> = rows
        .iter()
        .map(|r| r.iter().map(|c| escape(c)).collect())
        .collect();
    let cell = |r: &[String], i: usize| r.get(i).map_or(0, |c| width(c));
    // three at least: the line below the head needs them
    let widths: Vec<usize> = (0..head.len())
        .map(|i| {
            let longest = rows.iter().map(|r| cell(r, i)).max().unwrap_or(0);
            longest.max(width(head[i])).max(3)
        })
        .collect();
    let right: Vec<bool> = (0..head.len())
        .map(|i| {
            let mut cells = rows.iter().filter_map(|r| r.get(i)).peekable();
            cells.peek().is_some() && cells.all(|c| is_figure(c))
        })
        .collect();
    let line = |cells: &[&str]| {
        let mut out = String::from("|");
        for (i, w) in widths.iter().enumerate() {
            let text = cells.get(i).copied().unwrap_or("");
            let pad = " ".repeat(w - width(text));
            let (before, after) = if right[i] { (&*pad, "") } else { ("", &*pad) };
            out.push_str(&format!(" {before}{text}{after} |"));
        }
        out.push('\n');
        out
    };
    let rule: Vec<String> = widths
        .iter()
        .zip(&right)
        .map(|(w, right)| match right {
            true => format!("{}:", "-".repeat(w - 1)),
            false => "-".repeat(*w),
        })
        .collect();
    let mut out = line(head);
    out.push_str(&line(&rule.iter().map(String::as_str).collect::<Vec<_>>()));
    for r in &rows {
        out.push_str(&line(&r.iter().map(String::as_str).collect::<Vec<_>>()));
    }
    out
}

/// Columns a text takes in a fixed-width font. Signs that stand on the one before take none.
fn width(t: &str) -> usize {
    let combining = |c: &char| matches!(c, '\u{300}'..='\u{36f}');
    t.chars().filter(|c| !combining(c)).count()
}

/// Whether a cell is a number with its unit, or the dash for none.
fn is_figure(cell: &str) -> bool {
    let digits = cell.trim_start_matches(['-', '+', '−']);
    let rest = digits.trim_start_matches(|c: char| c.is_ascii_digit() || c == '.');
    // `2m` is a name
    cell == "–" || (rest.len() < digits.len() && (rest.is_empty() || rest.starts_with(' ')))
}

/// Text that Markdown must not read as its own signs.
pub(crate) fn escape(t: &str) -> String {
    let mut out = String::with_capacity(t.len());
    escape_into(t, &mut out);
    out
}

fn escape_into(t: &str, out: &mut String) {
    let own = |b: u8| {
        matches!(
            b,
            b'*' | b'_' | b'`' | b'[' | b']' | b'<' | b'>' | b'|' | b'\\' | b'#'
        )
    };
    let mut done = 0;
    for (at, _) in t.bytes().enumerate().filter(|(_, b)| own(*b)) {
        out.push_str(&t[done..at]);
        out.push('\\');
        done = at;
    }
    out.push_str(&t[done..]);
}

#[cfg(test)]
mod tests {
    use super::table;

    #[test]
    fn tables_stand_in_columns() {
        let rows = [
            vec!["J1|a".to_owned(), "0.75 dB".to_owned()],
            vec!["±".to_owned(), "–".to_owned()],
        ];
        assert_eq!(
            table(&["part", "loss"], &rows),
            "\
| part  |    loss |
| ----- | ------: |
| J1\\|a | 0.75 dB |
| ±     |       – |
"
        );
    }
}
