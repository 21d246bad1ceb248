//! A document: what is said, without how it is shown. Pages make documents, writers show them.
//!
//! Writers escape and measure; pages never do.

mod table;
mod text;

pub use table::{Align, Column, Head, Line, Table};
pub use text::{Place, Run, Sign, Text};

/// What is said, in order.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Document {
    /// What it is about, for the title of a window.
    pub title: String,
    /// Widest line, where it is to go on paper.
    pub widest: Option<usize>,
    /// Its blocks.
    pub blocks: Vec<Block>,
}

/// How much weight a note has.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Level {
    /// An explanation.
    Plain,
    /// Something is missing or does not hold.
    Warning,
}

/// A piece of a document.
#[derive(Clone, Debug, PartialEq)]
pub enum Block {
    /// A heading of level 1 to 3, with the place it is about.
    Heading(u8, Text, Option<Place>),
    /// The conclusion, one line each.
    Answers(Vec<Answer>),
    /// Running words.
    Paragraph(Text),
    /// Names with what is said of each; a name that repeats is shown once.
    Facts(Vec<(&'static str, Text)>),
    /// Rows in columns.
    Table(Table),
    /// Points.
    List(Vec<Text>),
    /// A picture (SVG), and the same as lines of characters.
    Figure {
        /// The picture, where there is one.
        svg: String,
        /// Lines of characters.
        lines: Vec<String>,
        /// What it shows, in words.
        alt: String,
    },
    /// A remark.
    Note(Level, Text),
    /// A text of the language.
    Code(String),
}

/// One line of a conclusion: cells where all lines fit the width, else the short form of the same
/// figures.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Answer {
    /// In columns.
    pub cells: Vec<Text>,
    /// The same in fewer columns.
    pub short: Vec<Text>,
    /// Where it follows from.
    pub at: Option<Place>,
}

impl Document {
    /// Adds a block.
    pub fn push(&mut self, block: Block) {
        self.blocks.push(block);
    }

    /// Adds a heading.
    pub fn heading(&mut self, level: u8, words: impl Into<Text>, at: Option<Place>) {
        self.push(Block::Heading(level, words.into(), at));
    }

    /// Its conclusion alone: the answers, each with the heading and the remark they stand between.
    /// A document without answers remains as it is.
    #[must_use]
    pub fn conclusion(self) -> Document {
        let answers = |b: Option<&Block>| matches!(b, Some(Block::Answers(_)));
        if !self.blocks.iter().any(|b| answers(Some(b))) {
            return self;
        }
        let kept = |at: usize| match &self.blocks[at] {
            Block::Answers(_) => true,
            Block::Heading(..) => answers(self.blocks.get(at + 1)),
            Block::Paragraph(_) => at > 0 && answers(self.blocks.get(at - 1)),
            _ => false,
        };
        Document {
            blocks: (0..self.blocks.len())
                .filter(|at| kept(*at))
                .map(|at| self.blocks[at].clone())
                .collect(),
            ..self
        }
    }

    /// Adds facts, where there are any.
    pub fn facts(&mut self, facts: Vec<(&'static str, Text)>) {
        if !facts.is_empty() {
            self.push(Block::Facts(facts));
        }
    }

    /// Adds a table, where it has rows.
    pub fn table(&mut self, table: Table) {
        if !table.lines.is_empty() {
            self.push(Block::Table(table));
        }
    }
}
