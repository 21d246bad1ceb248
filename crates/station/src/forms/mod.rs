//! One table of what may stand in a statement.
//!
//! Lowering checks by it, and completion, signature help, hover of words, "did you mean", the
//! grammars and the reference's tables are made from it. A block lists its own lines, so the same
//! word can mean different things in different blocks.

mod accept;
mod bundle;
mod cable;
mod chain;
mod dump;
mod ends;
pub(crate) mod exposure;
pub(crate) mod form;
mod instrument;
mod link;
mod offer;
mod parts;
pub(crate) mod pattern;
mod quantity;
mod reader;
mod recalled;
pub(crate) mod rules;
mod session;
pub(crate) mod site;
mod text;
mod top;
mod types;
pub(crate) mod variant;
mod words;

pub use dump::{inner, json, reference, word_list};
pub use offer::{Offer, offers, open_slot};
pub use reader::name_of;
pub use reader::{Known, Met, Problem, Reader, Refusal, Role, Scope};
pub use text::{begun, mean, meant_statement, meant_word, signature};
pub use types::{
    BLOCK, Begins, Block, Context, Exclusive, FileKind, Form, Many, NameKind, Need, Quantity, Set,
    Slot, Stands, Subject, Takes, Word,
};

pub(crate) use bundle::{ABOUT, ABOUT_FIGURE, AT as AT_SLOT, ON as ON_SLOT, ONE_ORIGIN};
pub(crate) use words::{DATUMS, MODES, SETS};

use cable::CABLE;
use chain::{CHAIN, CHAIN_LINES};
use instrument::{CONNECTOR_DEFINITION, INSTRUMENT};
use parts::DEVICE_DEFINITION;
use session::SESSION;

use std::sync::LazyLock;

use downlead_syntax::Stmt;
use rustc_hash::FxHashMap;

use crate::model::PartKind;

/// Lines of a station.
static STATION_LINES: &[&Form] = &[
    &parts::CONNECTOR,
    &parts::ADAPTER,
    &CHAIN,
    &top::POSITION,
    &top::GROUND,
    &top::PLACE,
    &top::JOINS,
    &rules::UNDER,
    &site::BESIDE,
    &exposure::SPOT,
    &site::ALONE,
    &site::ISOLATION,
    &site::SITE_NOISE,
    &ends::TRANSMITTER,
    &ends::RECEIVER,
    &ends::TRANSCEIVER,
    &parts::RUN,
    &parts::JUMPER,
    &parts::TAIL,
    &parts::PAD,
    &parts::FILTER,
    &parts::ISOLATOR,
    &parts::CIRCULATOR,
    &parts::PROTECTOR,
    &parts::SWITCH,
    &parts::COUPLER,
    &parts::METER,
    &parts::BALUN,
    &parts::TUNER,
    &parts::DUPLEXER,
    &parts::DIPLEXER,
    &parts::COMBINER,
    &parts::DIVIDER,
    &parts::AMPLIFIER,
    &parts::PREAMPLIFIER,
    &ends::LOAD,
    &ends::ANTENNA,
    &accept::ACCEPT,
];

/// The statements at the left margin.
#[must_use]
pub fn top() -> Block {
    Block::Lines(Context::Top, top::TOP)
}

/// The form of a statement, which the blocks around it decide.
#[must_use]
pub fn form_of(stmt: Stmt<'_>) -> Option<&'static Form> {
    let at = stmt.span();
    let mut outer = stmt.item().statement()?;
    let mut form = top().form(outer.keyword())?;
    while outer.span() != at {
        outer = outer
            .block()?
            .iter()
            .find(|s| s.span().start <= at.start && at.end <= s.span().end)?;
        form = form.block.form(outer.keyword())?;
    }
    Some(form)
}

/// The statement of a kind of part.
#[must_use]
pub const fn of_part(kind: PartKind) -> &'static Form {
    match kind {
        PartKind::Transmitter => &ends::TRANSMITTER,
        PartKind::Receiver => &ends::RECEIVER,
        PartKind::Transceiver => &ends::TRANSCEIVER,
        PartKind::Run => &parts::RUN,
        PartKind::Jumper => &parts::JUMPER,
        PartKind::Tail => &parts::TAIL,
        PartKind::Connector => &parts::CONNECTOR,
        PartKind::Adapter => &parts::ADAPTER,
        PartKind::Pad => &parts::PAD,
        PartKind::Filter => &parts::FILTER,
        PartKind::Isolator => &parts::ISOLATOR,
        PartKind::Circulator => &parts::CIRCULATOR,
        PartKind::Protector => &parts::PROTECTOR,
        PartKind::Switch => &parts::SWITCH,
        PartKind::Coupler => &parts::COUPLER,
        PartKind::Meter => &parts::METER,
        PartKind::Balun => &parts::BALUN,
        PartKind::Tuner => &parts::TUNER,
        PartKind::Duplexer => &parts::DUPLEXER,
        PartKind::Diplexer => &parts::DIPLEXER,
        PartKind::Combiner => &parts::COMBINER,
        PartKind::Divider => &parts::DIVIDER,
        PartKind::Amplifier => &parts::AMPLIFIER,
        PartKind::Preamplifier => &parts::PREAMPLIFIER,
        PartKind::Load => &ends::LOAD,
        PartKind::Antenna => &ends::ANTENNA,
        PartKind::Piece => &parts::PIECE,
    }
}

/// In a block of fewer lines they are compared one by one.
const FEW: usize = 16;

/// The form of a word in a long list of lines.
fn among_many(lines: &'static [&'static Form], word: &str) -> Option<&'static Form> {
    type Entry = (&'static [&'static Form], &'static Form);
    static BY_WORD: LazyLock<FxHashMap<&'static str, Vec<Entry>>> = LazyLock::new(|| {
        let mut all: FxHashMap<&'static str, Vec<Entry>> = FxHashMap::default();
        each(&mut |block, form| {
            if let Block::Lines(_, lines) = block
                && lines.len() >= FEW
            {
                all.entry(form.word).or_default().push((lines, form));
            }
        });
        all
    });
    let same = |e: &&Entry| std::ptr::eq(e.0, lines);
    BY_WORD.get(word)?.iter().find(same).map(|e| e.1)
}

impl Block {
    /// The form of a line whose first word is this one; none if no line begins so.
    #[must_use]
    pub fn form(&self, word: Option<&str>) -> Option<&'static Form> {
        // a finding can be accepted in every block, also among rows and in a variant
        if word == Some(accept::ACCEPT.word) && !matches!(self, Block::None) {
            return Some(&accept::ACCEPT);
        }
        match self {
            Block::Lines(cx, lines) => {
                let word = word?;
                let found = match lines.len() {
                    ..FEW => lines.iter().find(|f| f.word == word).copied(),
                    _ => among_many(lines, word),
                };
                found
                    // a part of the station, by its tag
                    .or(match cx {
                        Context::Chain => Some(&chain::TAG_LINE),
                        Context::Variant => Some(&variant::CHANGE),
                        _ => None,
                    })
            }
            Block::Rows(row) => Some(row),
            Block::None => None,
        }
    }

    /// Where its lines stand.
    #[must_use]
    pub fn context(&self) -> Option<Context> {
        match self {
            Block::Lines(cx, _) => Some(*cx),
            Block::Rows(_) => Some(Context::Table),
            Block::None => None,
        }
    }

    /// Its lines.
    #[must_use]
    pub fn lines(&self) -> &'static [&'static Form] {
        match self {
            Block::Lines(_, lines) => lines,
            _ => &[],
        }
    }
}

/// Calls for every form, with the block it stands in; a form that stands in several blocks comes
/// several times.
pub fn each(f: &mut dyn FnMut(Block, &'static Form)) {
    let mut seen: Vec<*const Form> = Vec::new();
    let mut open = vec![
        top(),
        Block::Lines(Context::Chain, TAG_LINES),
        Block::Lines(Context::Variant, CHANGE_LINES),
    ];
    let mut at = 0;
    while at < open.len() {
        let block = open[at];
        at += 1;
        let rows: &[&'static Form] = match &block {
            Block::Lines(_, lines) => lines,
            Block::Rows(row) => std::slice::from_ref(row),
            Block::None => &[],
        };
        for form in rows {
            f(block, form);
            if !seen.contains(&std::ptr::from_ref(*form)) {
                seen.push(*form);
                open.push(form.block);
            }
        }
    }
}

static TAG_LINES: &[&Form] = &[&chain::TAG_LINE];

static CHANGE_LINES: &[&Form] = &[&variant::CHANGE];

/// Whether a list has a line with this word.
const fn has(lines: &[&Form], word: &str) -> bool {
    let mut i = 0;
    while i < lines.len() {
        if types::same(lines[i].word, word) {
            return true;
        }
        i += 1;
    }
    false
}

/// Every kind of part stands in stations and in chains, and its form has its word.
const _: () = {
    let mut i = 0;
    while i < PartKind::ALL.len() {
        let kind = PartKind::ALL[i];
        let word = kind.word();
        assert!(
            types::same(of_part(kind).word, word),
            "the form of another kind"
        );
        assert!(
            has(STATION_LINES, word),
            "a kind of part that no station takes"
        );
        assert!(has(CHAIN_LINES, word), "a kind of part that no chain takes");
        assert!(
            has(variant::LINES, word),
            "a kind of part that no variant takes"
        );
        i += 1;
    }
};

/// Every form once is checked while the crate is compiled.
const _: () = {
    let mut i = 0;
    let all: &[&[&Form]] = &[
        top::TOP,
        STATION_LINES,
        CHAIN_LINES,
        TAG_LINES,
        CHANGE_LINES,
    ];
    while i < all.len() {
        sound(all[i], 0);
        i += 1;
    }
};

const fn sound(forms: &[&Form], depth: u8) {
    let mut i = 0;
    while i < forms.len() {
        assert!(forms[i].sound(), "a form of the table contradicts itself");
        // chains contain branches, which contain what chains do
        if depth < 3 {
            match forms[i].block {
                Block::Lines(Context::Chain, _) | Block::None => {}
                Block::Lines(_, lines) => sound(lines, depth + 1),
                Block::Rows(row) => assert!(row.sound(), "a row of the table contradicts itself"),
            }
        }
        i += 1;
    }
}
