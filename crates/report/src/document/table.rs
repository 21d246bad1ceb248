//! Tables: columns are declared once for a type of row, writers choose which of them fit.

use super::{Place, Text};

/// To which side a column is aligned.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Align {
    /// Words.
    Left,
    /// Figures.
    Right,
}

/// A column over rows of a type.
#[derive(Debug)]
pub struct Column<R> {
    /// What stands above it.
    pub head: Head,
    /// What stands in it.
    pub show: fn(&R) -> Text,
}

/// What a writer has to know of a column.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Head {
    /// Its words.
    pub words: &'static str,
    /// Its side.
    pub align: Align,
    /// How readily it is left out where the width does not suffice: 0 never, the highest first.
    pub drop: u8,
    /// Characters to which it is shortened before any column is left out; 0: not at all.
    pub shrink: u8,
}

impl<R> Column<R> {
    /// A column of words.
    pub const fn left(words: &'static str, show: fn(&R) -> Text) -> Self {
        Column {
            head: Head {
                words,
                align: Align::Left,
                drop: 0,
                shrink: 0,
            },
            show,
        }
    }

    /// A column of figures.
    pub const fn right(words: &'static str, show: fn(&R) -> Text) -> Self {
        let mut c = Self::left(words, show);
        c.head.align = Align::Right;
        c
    }

    /// Left out where there is no room.
    #[must_use]
    pub const fn drop(mut self, drop: u8) -> Self {
        self.head.drop = drop;
        self
    }

    /// Shortened where there is no room.
    #[must_use]
    pub const fn shrink(mut self, to: u8) -> Self {
        self.head.shrink = to;
        self
    }
}

/// A line of a table.
#[derive(Clone, Debug, PartialEq)]
pub enum Line {
    /// A cell a column, and where the line follows from.
    Cells(Vec<Text>, Option<Place>),
    /// Words across all columns.
    Title(Text),
}

/// Rows in columns.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Table {
    /// Heads of the columns.
    pub heads: Vec<Head>,
    /// Lines in order.
    pub lines: Vec<Line>,
}

impl Table {
    /// An empty table of some columns.
    #[must_use]
    pub fn new<R>(columns: &[Column<R>]) -> Table {
        Table {
            heads: columns.iter().map(|c| c.head).collect(),
            lines: Vec::new(),
        }
    }

    /// Adds a row.
    pub fn row<R>(&mut self, columns: &[Column<R>], row: &R, at: Option<Place>) {
        let cells = columns.iter().map(|c| (c.show)(row)).collect();
        self.lines.push(Line::Cells(cells, at));
    }

    /// Adds words across all columns.
    pub fn title(&mut self, words: impl Into<Text>) {
        self.lines.push(Line::Title(words.into()));
    }

    /// All rows, without columns in which nothing stands.
    #[must_use]
    pub fn of<R>(columns: &[Column<R>], rows: &[R], at: fn(&R) -> Option<Place>) -> Table {
        let mut t = Table::new(columns);
        for r in rows {
            t.row(columns, r, at(r));
        }
        t.without_empty()
    }

    /// Without columns in which nothing stands.
    #[must_use]
    pub fn without_empty(mut self) -> Table {
        let used: Vec<bool> = (0..self.heads.len())
            .map(|i| {
                self.lines.iter().any(|l| match l {
                    Line::Cells(cells, _) => cells.get(i).is_some_and(|c| !c.is_empty()),
                    Line::Title(_) => false,
                })
            })
            .collect();
        let mut at = 0..;
        self.heads.retain(|_| used[at.next().unwrap_or(0)]);
        for line in &mut self.lines {
            if let Line::Cells(cells, _) = line {
                let mut at = 0..;
                cells.retain(|_| used[at.next().unwrap_or(0)]);
            }
        }
        self
    }
}
