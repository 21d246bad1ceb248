//! Text for hovers: Markdown, or the same in plain words.

use downlead_eval::Derivation;

use crate::view::{Place, View, doc_path, doc_text, line_number};

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

    pub(crate) fn finish(self) -> (String, Vec<Place>) {
        (self.out.trim_end().to_owned(), self.links)
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
            self.out
                .push_str(&format!("```downlead\n{}\n```\n", t.trim_end()));
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
        self.gap();
        self.step(d, 0);
    }

    fn step(&mut self, d: &Derivation, depth: usize) {
        // evaluation never nests deeper; a text as written cannot make it
        if depth > 8 {
            return;
        }
        let pad = "  ".repeat(depth);
        let md = self.markdown;
        let place = d.place.and_then(|l| self.view.place(l));
        let title = match place {
            Some(p) => self.link(&d.title, p),
            None if md => escape(&d.title),
            None => d.title.clone(),
        };
        let value = if md {
            format!("**{}**", escape(&d.value))
        } else {
            d.value.clone()
        };
        self.out.push_str(&format!("{pad}- {title}: {value}"));
        if let Some(s) = &d.source {
            let s = if md {
                format!(" *({})*", escape(s))
            } else {
                format!(" ({s})")
            };
            self.out.push_str(&s);
        }
        let follows = !(d.formula.is_empty() && d.substituted.is_empty());
        self.out.push_str(if md && follows { "  \n" } else { "\n" });
        for (lead, f) in [("", &d.formula), ("= ", &d.substituted)] {
            if !f.is_empty() {
                let f = if md {
                    format!("`{lead}{f}`")
                } else {
                    format!("{lead}{f}")
                };
                // an indented paragraph of the same list entry
                self.out
                    .push_str(&format!("{pad}  {f}{}\n", if md { "  " } else { "" }));
            }
        }
        for s in &d.steps {
            self.step(s, depth + 1);
        }
    }

    /// Words that lead to a place.
    pub(crate) fn link(&mut self, words: &str, place: Place) -> String {
        if !self.links.contains(&place) {
            self.links.push(place);
        }
        let path = doc_path(self.view.s, place.doc);
        let line = line_number(doc_text(self.view.s, place.doc), place.span.start);
        if self.markdown {
            format!(
                "[{}](downlead-place:{}#{line})",
                escape(words),
                address(&path)
            )
        } else {
            format!("{words} [{path}:{line}]")
        }
    }
}

/// A path as it may stand in a link: what would end the link or begin its line is encoded.
fn address(path: &str) -> String {
    let mut out = String::with_capacity(path.len());
    for c in path.chars() {
        match c {
            ' ' | '(' | ')' | '<' | '>' | '#' | '%' => out.push_str(&format!("%{:02X}", c as u32)),
            c => out.push(c),
        }
    }
    out
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
    for c in t.chars() {
        if matches!(
            c,
            '*' | '_' | '`' | '[' | ']' | '<' | '>' | '|' | '\\' | '#'
        ) {
            out.push('\\');
        }
        out.push(c);
    }
    out
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
