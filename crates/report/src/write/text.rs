//! A document as text for a terminal or a printer, at any width.
//!
//! Words wrap with a hanging indent. Columns of a table are shortened, then left out; where that
//! does not suffice, or the width is below `NARROW`, each row becomes wrapped words and keeps all
//! of its cells.

use unicode_width::UnicodeWidthStr;

use super::plain::{ascii, printable, shorten, wrapped};
use super::style::Style;
use crate::document::{
    Align, Answer, Block, Document, Head, Level, Line, Place, Run, Sign, Table, Text,
};

/// How a text is to look.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Look {
    /// Columns of the terminal or paper.
    pub width: usize,
    /// Whether all characters are to be ASCII.
    pub ascii: bool,
    /// Whether there is colour.
    pub style: Style,
}

impl Look {
    /// Width where none is known.
    pub const WIDTH: usize = 132;

    /// Without colours, for a width.
    #[must_use]
    pub const fn plain(width: usize) -> Look {
        Look {
            width,
            ascii: false,
            style: Style::PLAIN,
        }
    }
}

/// Widest line of running words, for reading.
const READABLE: usize = 96;

/// Below this width nothing is shortened or left out.
const NARROW: usize = 50;

/// Widest line of a fact.
const FACTS: usize = 120;

/// Characters by which blocks are indented below a heading.
const INDENT: usize = 2;

/// The document as text. Lines end in a newline.
#[must_use]
pub fn text(doc: &Document, look: Look) -> String {
    let mut w = Writer {
        look: Look {
            width: doc.widest.map_or(look.width, |w| w.min(look.width)),
            ..look
        },
        out: String::new(),
    };
    let mut before: Option<&Block> = None;
    for block in &doc.blocks {
        if before.is_some_and(|b| apart(b, block)) {
            w.out.push('\n');
        }
        w.block(block);
        before = Some(block);
    }
    w.out
}

/// A table alone.
#[must_use]
pub fn table(table: Table, look: Look) -> String {
    let mut doc = Document::default();
    doc.table(table);
    text(&doc, look)
}

/// Whether an empty line parts two blocks.
fn apart(before: &Block, block: &Block) -> bool {
    !matches!(
        (before, block),
        (Block::Heading(..), Block::Answers(_))
            | (Block::Answers(_), Block::Answers(_) | Block::Note(..))
            | (Block::Table(_) | Block::Note(..), Block::Note(..))
            | (Block::Heading(3, ..), _)
    )
}

struct Writer {
    look: Look,
    out: String,
}

impl Writer {
    fn style(&self) -> Style {
        self.look.style
    }

    /// Words as they are printed, without colour.
    fn words(&self, t: &str) -> String {
        let t = printable(t).replace(['\n', '\t'], " ");
        match self.look.ascii {
            true => ascii(&t).into_owned(),
            false => t,
        }
    }

    /// At most `width` columns, with a mark where something is left off.
    fn cut(&self, t: &str, width: usize) -> String {
        match self.look.ascii && t.width() > width {
            true => {
                let kept: String = t.chars().take(width.saturating_sub(3)).collect();
                format!("{}...", kept.trim_end())
            }
            false => shorten(t, width).into_owned(),
        }
    }

    fn plain(&self, t: &Text) -> String {
        self.words(&t.plain())
    }

    /// With verdicts in colour.
    fn painted(&self, t: &Text) -> String {
        let style = self.style();
        t.0.iter()
            .map(|r| match r {
                Run::Plain(s) | Run::Link(s, _) | Run::Code(s) => self.words(s),
                Run::Verdict(sign, word) => {
                    let words = self.words(&format!("{} {word}", sign.sign()));
                    match sign {
                        Sign::Good => style.good(&words),
                        Sign::Open => style.unclear(&words),
                        Sign::Bad => style.bad(&words),
                    }
                }
            })
            .collect()
    }

    fn line(&mut self, line: &str) {
        self.out.push_str(line.trim_end());
        self.out.push('\n');
    }

    fn block(&mut self, block: &Block) {
        match block {
            Block::Heading(level, words, at) => self.heading(*level, words, at.as_ref()),
            Block::Answers(all) => self.answers(all),
            Block::Paragraph(t) => self.paragraph(&self.painted(t), 0),
            Block::Facts(all) => self.facts(all),
            Block::Table(t) => self.table(t),
            Block::List(all) => {
                for t in all {
                    let room = self.look.width.min(FACTS);
                    let words = wrapped(&self.painted(t), room, INDENT + 2);
                    self.line(&format!("  - {words}"));
                }
            }
            Block::Figure { lines, .. } => {
                for l in lines {
                    let l = self.words(l);
                    self.line(&format!("  {}", self.cut(&l, self.look.width - INDENT)));
                }
            }
            Block::Note(level, t) => {
                let words = self.painted(t);
                let style = self.style();
                let room = self.look.width.min(FACTS);
                match level {
                    Level::Plain => {
                        self.line(&format!("  {}", wrapped(&words, room, INDENT)));
                    }
                    Level::Warning => {
                        let words = style.unclear(&format!("! {words}"));
                        self.line(&format!("  {}", wrapped(&words, room, INDENT)));
                    }
                }
            }
            Block::Code(t) => {
                let t = printable(t).into_owned();
                let t = match self.look.ascii {
                    // what is to be copied into a file stays as it is in the language
                    true if !t.is_ascii() => t.replace('±', "+-").replace('°', "deg"),
                    _ => t,
                };
                self.out.push_str(t.trim_end());
                self.out.push('\n');
            }
        }
    }

    fn paragraph(&mut self, words: &str, indent: usize) {
        let words = wrapped(words, self.look.width.min(READABLE), indent);
        let faint = self.style().faint(&words);
        self.line(&format!("{}{faint}", " ".repeat(indent)));
    }

    fn heading(&mut self, level: u8, words: &Text, at: Option<&Place>) {
        let indent = if level > 2 { "  " } else { "" };
        let words = self.plain(words);
        let place = at.map(|p| self.words(&p.to_string())).unwrap_or_default();
        let style = self.style();
        let whole = words.width() + 2 + place.width() + indent.len();
        let shown = match words.width() + indent.len() <= self.look.width {
            true => words,
            false => wrapped(&words, self.look.width, indent.len() + INDENT),
        };
        let shown: Vec<String> = shown.lines().map(|l| style.bold(l)).collect();
        let shown = format!("{indent}{}", shown.join("\n"));
        if place.is_empty() || whole <= self.look.width {
            let gap = if place.is_empty() { "" } else { "  " };
            return self.line(&format!("{shown}{gap}{}", style.faint(&place)));
        }
        self.line(&shown);
        // the place goes to a line of its own where all of the text is kept
        if self.look.width < NARROW {
            self.line(&format!("{indent}  {}", style.faint(&place)));
        }
    }

    fn facts(&mut self, all: &[(&'static str, Text)]) {
        let width = all.iter().map(|f| self.words(f.0).width()).max();
        let width = width.unwrap_or(0);
        let mut before = "";
        for (name, words) in all {
            // a name that repeats is printed once
            let shown = if *name == before { "" } else { name };
            before = name;
            let shown = self.words(shown);
            let room = self.look.width.min(FACTS);
            let words = wrapped(&self.painted(words), room, width + 4);
            let gap = " ".repeat(width - shown.width());
            self.line(&format!("  {shown}{gap}  {words}"));
        }
    }

    fn answers(&mut self, all: &[Answer]) {
        let cells: Vec<Vec<&Text>> = all.iter().map(|a| shown(&a.cells)).collect();
        let room = self.look.width.saturating_sub(INDENT);
        let widths = self.before_last(&cells);
        if cells.iter().all(|r| self.length(r, &widths) <= room) {
            return self.laid_out(&cells, &widths);
        }
        if self.look.width < NARROW {
            return self.flowing(&cells);
        }
        let mut short: Vec<Vec<&Text>> = all.iter().map(|a| shown(&a.short)).collect();
        loop {
            let widths = self.before_last(&short);
            let long = |r: &Vec<&Text>| r.len() > 1 && self.length(r, &widths) > room;
            if !short.iter().any(long) {
                return self.laid_out(&short, &widths);
            }
            // cells are left out from the right, a verdict never
            let mut left_out = false;
            for row in &mut short {
                let spare = row.len() > 1
                    && self.length(row, &widths) > room
                    && !row.last().is_some_and(|c| judges(c));
                if spare {
                    row.pop();
                    left_out = true;
                }
            }
            if !left_out {
                break;
            }
        }
        self.flowing(&short);
    }

    /// Rows as wrapped words.
    fn flowing(&mut self, rows: &[Vec<&Text>]) {
        let room = self.look.width.saturating_sub(INDENT);
        for row in rows {
            let cells = row.iter().filter(|c| !c.is_empty());
            let cells: Vec<String> = cells.map(|c| self.painted(c)).collect();
            let words = wrapped(&cells.join("  "), room, INDENT + 2);
            self.line(&format!("{}{words}", " ".repeat(INDENT)));
        }
    }

    /// Widths of the cells that another follows in their row.
    fn before_last(&self, rows: &[Vec<&Text>]) -> Vec<usize> {
        let rows: Vec<Vec<String>> = rows
            .iter()
            .map(|r| {
                let before = &r[..r.len().saturating_sub(1)];
                before.iter().map(|c| self.plain(c)).collect()
            })
            .collect();
        widths(&rows)
    }

    fn length(&self, row: &[&Text], widths: &[usize]) -> usize {
        let Some((last, before)) = row.split_last() else {
            return 0;
        };
        let before: usize = widths.iter().take(before.len()).map(|w| w + 2).sum();
        before + self.plain(last).width()
    }

    fn laid_out(&mut self, rows: &[Vec<&Text>], widths: &[usize]) {
        let room = self.look.width.saturating_sub(INDENT);
        for row in rows {
            if let [one] = row[..]
                && self.plain(one).width() > room
            {
                self.flowing(&[vec![one]]);
                continue;
            }
            let mut line = " ".repeat(INDENT);
            for (i, cell) in row.iter().enumerate() {
                line += &self.painted(cell);
                if i + 1 < row.len() {
                    let gap = widths[i].saturating_sub(self.plain(cell).width());
                    line += &" ".repeat(gap + 2);
                }
            }
            self.line(&line);
        }
    }

    fn table(&mut self, t: &Table) {
        let mut keep: Vec<usize> = (0..t.heads.len()).collect();
        let mut cells: Vec<Option<Vec<String>>> = t
            .lines
            .iter()
            .map(|l| match l {
                Line::Cells(cells, _) => Some(cells.iter().map(|c| self.plain(c)).collect()),
                Line::Title(_) => None,
            })
            .collect();
        let mut shrunk = false;
        loop {
            let widths = column_widths(self, &t.heads, &keep, &cells);
            let whole = widths.iter().map(|w| w + 2).sum::<usize>();
            if whole <= self.look.width {
                return self.rows(t, &keep, &widths, &cells);
            }
            if self.look.width < NARROW {
                return self.records(t);
            }
            if !shrunk {
                shrunk = true;
                shrink(self, &t.heads, &widths, whole - self.look.width, &mut cells);
                continue;
            }
            let droppable = keep.iter().copied().filter(|i| t.heads[*i].drop > 0);
            match droppable.max_by_key(|i| t.heads[*i].drop) {
                Some(i) => keep.retain(|k| *k != i),
                None => return self.records(t),
            }
        }
    }

    /// Each row as wrapped words: its first cell, then each other cell after the words of its head.
    fn records(&mut self, t: &Table) {
        let room = self.look.width;
        for line in &t.lines {
            let words = match line {
                Line::Title(words) => self.painted(words).trim().to_owned(),
                Line::Cells(cells, _) => {
                    let cells = cells.iter().zip(&t.heads).enumerate();
                    let cells: Vec<String> = cells
                        .filter(|(_, (c, _))| !c.is_empty())
                        .map(|(i, (c, head))| match (i, self.words(head.words)) {
                            (0, _) => self.painted(c),
                            (_, head) if head.is_empty() => self.painted(c),
                            (_, head) => format!("{head} {}", self.painted(c)),
                        })
                        .collect();
                    cells.join(", ")
                }
            };
            let words = wrapped(&words, room, INDENT + 2);
            self.line(&format!("{}{words}", " ".repeat(INDENT)));
        }
    }

    fn rows(&mut self, t: &Table, keep: &[usize], widths: &[usize], cells: &[Option<Vec<String>>]) {
        let heads: Vec<String> = keep.iter().map(|i| self.words(t.heads[*i].words)).collect();
        let plain = |s: &str, _: usize| s.to_owned();
        let head = self.one_line(&t.heads, keep, widths, &heads, &plain);
        let head = self.style().faint(head.trim_end());
        if heads.iter().any(|h| !h.is_empty()) {
            self.line(&head);
        }
        for (line, cells) in t.lines.iter().zip(cells) {
            match (line, cells) {
                (Line::Title(words), _) => {
                    let words = self.plain(words);
                    let before = words.len() - words.trim_start().len() + INDENT;
                    let words = wrapped(words.trim_start(), self.look.width, before);
                    self.line(&format!("{}{words}", " ".repeat(before)));
                }
                (Line::Cells(texts, _), Some(cells)) => {
                    let kept: Vec<String> = keep.iter().map(|i| cells[*i].clone()).collect();
                    // what was shortened has no colour
                    let painted = |s: &str, at: usize| match self.plain(&texts[keep[at]]) == s {
                        true => self.painted(&texts[keep[at]]),
                        false => s.to_owned(),
                    };
                    let line = self.one_line(&t.heads, keep, widths, &kept, &painted);
                    self.line(&line);
                }
                (Line::Cells(..), None) => {}
            }
        }
    }

    fn one_line(
        &self,
        heads: &[Head],
        keep: &[usize],
        widths: &[usize],
        cells: &[String],
        paint: &dyn Fn(&str, usize) -> String,
    ) -> String {
        let mut line = String::new();
        for (i, (cell, width)) in cells.iter().zip(widths).enumerate() {
            let gap = " ".repeat(width.saturating_sub(cell.width()));
            let shown = paint(cell, i);
            line.push_str("  ");
            match heads[keep[i]].align {
                Align::Right => line += &(gap + &shown),
                Align::Left => line += &(shown + &gap),
            }
        }
        line
    }
}

/// Whether a cell holds a verdict.
fn judges(cell: &Text) -> bool {
    cell.0.iter().any(|r| matches!(r, Run::Verdict(..)))
}

/// The cells up to the last that is not empty.
fn shown(cells: &[Text]) -> Vec<&Text> {
    let last = cells.iter().rposition(|c| !c.is_empty());
    cells[..last.map_or(0, |l| l + 1)].iter().collect()
}

fn widths(rows: &[Vec<String>]) -> Vec<usize> {
    let count = rows.iter().map(Vec::len).max().unwrap_or(0);
    (0..count)
        .map(|i| {
            let cells = rows.iter().filter_map(|r| r.get(i));
            cells.map(|c| c.width()).max().unwrap_or(0)
        })
        .collect()
}

fn column_widths(
    w: &Writer,
    heads: &[Head],
    keep: &[usize],
    rows: &[Option<Vec<String>>],
) -> Vec<usize> {
    keep.iter()
        .map(|i| {
            let cells = rows.iter().flatten().filter_map(|r| r.get(*i));
            let widest = cells.map(|c| c.width()).max().unwrap_or(0);
            widest.max(w.words(heads[*i].words).width())
        })
        .collect()
}

/// Shortens columns that may be by as much as is too much, from widths that are all columns'.
fn shrink(
    w: &Writer,
    heads: &[Head],
    widths: &[usize],
    excess: usize,
    rows: &mut [Option<Vec<String>>],
) {
    for row in rows.iter_mut().flatten() {
        for ((cell, head), width) in row.iter_mut().zip(heads).zip(widths) {
            if head.shrink > 0 {
                let least = usize::from(head.shrink);
                let to = width.saturating_sub(excess).max(least);
                *cell = w.cut(cell, to);
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::document::Column;

    struct Row(&'static str, f64, &'static str);

    static COLUMNS: &[Column<Row>] = &[
        Column::left("part", |r: &Row| r.0.into()),
        Column::right("loss dB", |r: &Row| format!("{:.2}", r.1).into()),
        Column::left("from", |r: &Row| r.2.into())
            .drop(9)
            .shrink(12),
    ];

    fn made() -> Document {
        let mut d = Document::default();
        d.heading(1, "hill", Some(Place::new("a.downlead", 3)));
        d.push(Block::Answers(vec![Answer {
            cells: vec![
                "2m".into(),
                "ERP 24.7 W (20.8 to 29.2)".into(),
                Text::default().and(Run::Verdict(Sign::Good, "met")),
            ],
            short: vec![
                "2m 24.7 W".into(),
                Text(vec![Run::Verdict(Sign::Good, "met")]),
            ],
            at: None,
        }]));
        d.heading(2, "chain", None);
        let rows = [
            Row("塔", 0.5, "a source much longer than its column"),
            Row("M1", 12.25, "± sheet"),
        ];
        d.table(Table::of(COLUMNS, &rows, |_| None));
        d.facts(vec![("loss", "1 dB and more words than fit".into())]);
        d
    }

    #[test]
    fn columns_line_up_at_any_width() {
        assert_eq!(
            text(&made(), Look::plain(80)),
            "\
hill  a.downlead:3
  2m  ERP 24.7 W (20.8 to 29.2)  ✓ met

chain

  part  loss dB  from
  塔       0.50  a source much longer than its column
  M1      12.25  ± sheet

  loss  1 dB and more words than fit
"
        );
        let narrow = text(
            &made(),
            Look {
                ascii: true,
                ..Look::plain(51)
            },
        );
        assert_eq!(
            narrow,
            "\
hill  a.downlead:3
  2m  ERP 24.7 W (20.8 to 29.2)  + met

chain

  part  loss dB  from
  ?        0.50  a source much longer than its c...
  M1      12.25  +/- sheet

  loss  1 dB and more words than fit
"
        );
    }

    #[test]
    fn a_narrow_text_wraps_and_loses_nothing() {
        let least = text(&made(), Look::plain(20));
        assert_eq!(
            least,
            "\
hill  a.downlead:3
  2m  ERP 24.7 W
    (20.8 to 29.2)
    ✓ met

chain

  塔, loss dB
    0.50, from a
    source much
    longer than its
    column
  M1, loss dB
    12.25, from ±
    sheet

  loss  1 dB and
        more words
        than fit
"
        );
        let mut long = made();
        long.heading(
            1,
            "a heading that is too long",
            Some(Place::new("b.downlead", 4)),
        );
        let all = text(&long, Look::plain(20));
        let end = "a heading that is\n  too long\n  b.downlead:4\n";
        assert!(all.ends_with(end), "{all}");
    }
}
