//! A document as Markdown that reads well as it stands: columns of one width.

use std::fmt::Write as _;

use unicode_width::UnicodeWidthStr;

use super::plain::printable;
use crate::document::{Align, Answer, Block, Document, Level, Line, Place, Run, Table, Text};

/// Gives the address a place is linked to, where there is one.
pub type Linker<'a> = &'a dyn Fn(&Place) -> Option<String>;

/// Columns are made of one width up to this many characters.
const PADDED: usize = 60;

/// No links.
pub const UNLINKED: Linker<'static> = &|_| None;

/// The document as Markdown; `link` gives addresses.
#[must_use]
pub fn markdown(doc: &Document, link: Linker<'_>) -> String {
    let mut out = String::new();
    for block in &doc.blocks {
        if !out.is_empty() {
            out.push('\n');
        }
        put(block, link, &mut out);
    }
    out
}

fn put(block: &Block, link: Linker<'_>, out: &mut String) {
    let _ = match block {
        Block::Heading(level, words, at) => {
            let signs = "#".repeat(usize::from(*level));
            writeln!(
                out,
                "{signs} {}",
                linked(&run(words, link), at.as_ref(), link)
            )
        }
        Block::Answers(all) => {
            all.iter().for_each(|a| answer(a, link, out));
            Ok(())
        }
        Block::Paragraph(t) | Block::Note(Level::Plain, t) => writeln!(out, "{}", run(t, link)),
        Block::Note(Level::Warning, t) => writeln!(out, "**{}**", run(t, link)),
        Block::Facts(all) => {
            for (name, t) in all {
                let _ = writeln!(out, "- {name}: {}", run(t, link));
            }
            Ok(())
        }
        Block::List(all) => {
            for t in all {
                let _ = writeln!(out, "- {}", run(t, link));
            }
            Ok(())
        }
        Block::Table(t) => {
            table(t, link, out);
            Ok(())
        }
        Block::Figure { lines, .. } => writeln!(out, "```text\n{}\n```", lines.join("\n")),
        Block::Code(t) => writeln!(out, "```downlead\n{}\n```", t.trim_end()),
    };
}

fn answer(a: &Answer, link: Linker<'_>, out: &mut String) {
    let cells: Vec<String> = a
        .cells
        .iter()
        .filter(|c| !c.is_empty())
        .map(|c| run(c, link))
        .collect();
    let _ = writeln!(out, "- {}", cells.join(" · "));
}

fn linked(words: &str, at: Option<&Place>, link: Linker<'_>) -> String {
    match at.and_then(link) {
        Some(address) => format!("[{words}]({address})"),
        None => words.to_owned(),
    }
}

fn run(t: &Text, link: Linker<'_>) -> String {
    t.0.iter()
        .map(|r| match r {
            Run::Plain(s) => inline(s),
            Run::Verdict(sign, word) => format!("{} {word}", sign.sign()),
            Run::Link(s, p) => linked(&inline(s), Some(p), link),
            Run::Code(s) => format!("`{}`", s.replace('`', "'")),
        })
        .collect()
}

fn table(t: &Table, link: Linker<'_>, out: &mut String) {
    let rows: Vec<Vec<String>> = t
        .lines
        .iter()
        .map(|l| match l {
            Line::Cells(cells, at) => cells
                .iter()
                .enumerate()
                .map(|(i, c)| match i {
                    0 => linked(&run(c, link), at.as_ref(), link),
                    _ => run(c, link),
                })
                .collect(),
            // a blank after the sign would keep it from being emphasis
            Line::Title(words) => vec![format!("*{}*", run(words, link).trim())],
        })
        .collect();
    let cell = |r: &[String], i: usize| r.get(i).map_or(0, |c| c.width());
    // three at least: the line below the head needs them
    let widths: Vec<usize> = (0..t.heads.len())
        .map(|i| {
            let longest = rows.iter().map(|r| cell(r, i)).max().unwrap_or(0);
            longest.min(PADDED).max(t.heads[i].words.width()).max(3)
        })
        .collect();
    let mut line = |cells: &[&str]| {
        for (i, width) in widths.iter().enumerate() {
            let text = cells.get(i).copied().unwrap_or("");
            let pad = " ".repeat(width.saturating_sub(text.width()));
            out.push_str(if i == 0 { "| " } else { " | " });
            match t.heads[i].align {
                Align::Right => *out += &(pad + text),
                Align::Left => *out += &(text.to_owned() + &pad),
            }
        }
        out.push_str(" |\n");
    };
    line(&t.heads.iter().map(|h| h.words).collect::<Vec<_>>());
    let rule: Vec<String> = widths
        .iter()
        .zip(&t.heads)
        .map(|(w, h)| match h.align {
            Align::Right => format!("{}:", "-".repeat(w - 1)),
            Align::Left => "-".repeat(*w),
        })
        .collect();
    line(&rule.iter().map(String::as_str).collect::<Vec<_>>());
    for r in &rows {
        line(&r.iter().map(String::as_str).collect::<Vec<_>>());
    }
}

/// Text that stays text in Markdown, on one line.
#[must_use]
pub fn inline(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in printable(text).chars() {
        match c {
            '\n' | '\r' | '\t' => out.push(' '),
            '|' | '\\' | '`' | '*' | '_' | '<' | '>' | '[' | ']' | '#' | '&' => {
                out.push('\\');
                out.push(c);
            }
            c => out.push(c),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::document::Column;

    static COLUMNS: &[Column<(&str, &str)>] = &[
        Column::left("part", |r| r.0.into()),
        Column::right("loss", |r| r.1.into()),
    ];

    #[test]
    fn tables_stand_in_columns() {
        let mut d = Document::default();
        let rows = [("J1|a", "0.75 dB"), ("±", "–")];
        d.table(Table::of(COLUMNS, &rows, |_| Some(Place::new("a", 7))));
        assert_eq!(
            markdown(&d, UNLINKED),
            "\
| part  |    loss |
| ----- | ------: |
| J1\\|a | 0.75 dB |
| ±     |       – |
"
        );
        let mut table = Table::new(COLUMNS);
        table.title("    20 W forward, 2026-07-04");
        d.table(table);
        assert!(markdown(&d, UNLINKED).contains("| *20 W forward, 2026-07-04* |"));
        let link = markdown(&d, &|p| Some(format!("x#L{}", p.line)));
        assert!(link.contains("| [J1\\|a](x#L7) |"), "{link}");
    }
}
