//! The types of the table.

use downlead_quantity::Dim;

/// Where a statement may stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Context {
    /// At the left margin.
    Top,
    /// In a band's block.
    Band,
    /// In a cable's block.
    Cable,
    /// In a cable's `construction` or `wires` block.
    Construction,
    /// In a connector's block.
    Connector,
    /// In an instrument's block.
    Instrument,
    /// In a station's block.
    Station,
    /// In a chain or branch.
    Chain,
    /// In a place's block.
    Place,
    /// In a device's block (also a device definition).
    Device,
    /// In a transmitter's block.
    Transmitter,
    /// In a receiver's block.
    Receiver,
    /// In a transceiver's block.
    Transceiver,
    /// In an antenna's or load's block.
    Antenna,
    /// In a bench session.
    Session,
    /// Among the readings of a bench session.
    Readings,
    /// In a licence or rules.
    Rules,
    /// In a clause of them.
    Clause,
    /// In a link.
    Link,
    /// In a variant of a station.
    Variant,
    /// In a block of frequencies and losses.
    Table,
}

impl Context {
    /// In words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Context::Top => "at the left margin",
            Context::Band => "in a band",
            Context::Cable => "in a cable",
            Context::Construction => "in a cable's construction",
            Context::Connector => "in a connector",
            Context::Instrument => "in an instrument",
            Context::Station => "in a station",
            Context::Chain => "in a chain",
            Context::Place => "in a place",
            Context::Device => "in a device",
            Context::Transmitter => "in a transmitter",
            Context::Receiver => "in a receiver",
            Context::Transceiver => "in a transceiver",
            Context::Antenna => "in an antenna",
            Context::Session => "in a session",
            Context::Readings => "among readings",
            Context::Rules => "in a licence or rules",
            Context::Link => "in a link",
            Context::Clause => "in a clause of rules",
            Context::Variant => "in a variant",
            Context::Table => "in a table",
        }
    }
}

/// What a name names.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum NameKind {
    /// A band.
    Band,
    /// A cable.
    Cable,
    /// A connector or adapter.
    Connector,
    /// A device definition.
    Device,
    /// An instrument.
    Instrument,
    /// A named value.
    Let,
    /// A station.
    Station,
    /// A bench session.
    Session,
    /// A chain.
    Chain,
    /// A part of a station, or a piece of a session.
    Tag,
    /// A port of a part.
    Port,
    /// A place of a station.
    Place,
    /// A branch of a chain.
    Branch,
    /// Who read something.
    Person,
    /// A connector family.
    Family,
    /// A cause of uncertainty that cables share.
    Shared,
    /// A licence or rules.
    Rules,
    /// A class, jurisdiction or service of rules.
    Class,
    /// A question of rules.
    Question,
    /// A link.
    Link,
    /// A place where people can be.
    Spot,
    /// A variant of a station.
    Variant,
    /// A finding, by its code.
    Finding,
}

impl NameKind {
    /// Defined by a top-level item, visible across files.
    #[must_use]
    pub const fn is_global(self) -> bool {
        use NameKind as N;
        matches!(
            self,
            N::Band
                | N::Let
                | N::Cable
                | N::Connector
                | N::Device
                | N::Instrument
                | N::Rules
                | N::Station
        )
    }

    /// Whether a use of it is held against what is defined.
    #[must_use]
    pub const fn is_checked(self) -> bool {
        self.is_global() || matches!(self, NameKind::Family)
    }

    /// In words.
    #[must_use]
    pub fn noun(self) -> &'static str {
        match self {
            NameKind::Band => "band",
            NameKind::Let => "named value",
            NameKind::Cable => "cable",
            NameKind::Connector => "connector",
            NameKind::Device => "device",
            NameKind::Instrument => "instrument",
            NameKind::Station => "station",
            NameKind::Session => "session",
            NameKind::Chain => "chain",
            NameKind::Tag => "part",
            NameKind::Port => "port",
            NameKind::Place => "place",
            NameKind::Branch => "branch",
            NameKind::Person => "person",
            NameKind::Family => "connector family",
            NameKind::Shared => "shared cause",
            NameKind::Rules => "licence or rules",
            NameKind::Class => "class",
            NameKind::Link => "link",
            NameKind::Question => "question",
            NameKind::Spot => "spot",
            NameKind::Variant => "variant",
            NameKind::Finding => "finding",
        }
    }

    /// How a place for it is called in a signature.
    #[must_use]
    pub fn hole(self) -> &'static str {
        match self {
            NameKind::Band => "BAND",
            NameKind::Cable => "CABLE",
            NameKind::Connector => "CONNECTOR",
            NameKind::Device => "DEVICE",
            NameKind::Instrument => "INSTRUMENT",
            NameKind::Tag | NameKind::Station => "TAG",
            NameKind::Place => "PLACE",
            NameKind::Person => "WHO",
            NameKind::Finding => "CODE",
            NameKind::Family => "FAMILY",
            _ => "NAME",
        }
    }
}

/// What a path in quotes leads to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FileKind {
    /// Another text of the language.
    Text,
    /// A network file of one port.
    OnePort,
    /// A network file of two ports.
    TwoPort,
    /// A table of readings.
    Readings,
    /// A calibration certificate, as a table or as XML.
    Certificate,
}

/// A quantity: in which kinds of value it may be written, and how it is called.
#[derive(Debug, PartialEq, Eq)]
pub struct Quantity {
    /// Kinds of value, the likeliest first.
    pub dims: &'static [Dim],
    /// With its article.
    pub noun: &'static str,
    /// Name of the place in a signature.
    pub hole: &'static str,
    /// What may be written.
    pub units: &'static str,
}

/// One word of a closed set; it may be two words.
#[derive(Debug, PartialEq, Eq)]
pub struct Word {
    /// The word.
    pub word: &'static str,
    /// The word of the set that says the same: this one is read and never offered.
    pub alike: Option<&'static str>,
    /// What it says.
    pub doc: &'static str,
}

/// A word of a closed set.
pub(super) const fn word(word: &'static str, doc: &'static str) -> Word {
    Word {
        word,
        alike: None,
        doc,
    }
}

/// Words of which one thing has one.
#[derive(Debug, PartialEq, Eq)]
pub struct Set {
    /// The words.
    pub words: &'static [Word],
    /// What has one of them, as a sentence.
    pub rule: &'static str,
    /// What to write where two are meant.
    pub instead: &'static str,
}

/// One operand after the word of a slot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Takes {
    /// A value of a quantity.
    Value(&'static Quantity),
    /// One or more values: `70 % 30 %`.
    Values(&'static Quantity),
    /// `144 MHz to 148 MHz`.
    Range(&'static Quantity),
    /// A name.
    Name(NameKind),
    /// One or two names in the same group: `n uhf`.
    Names(NameKind),
    /// `n to uhf`: two names, which the parser reads as one value.
    NamePair(NameKind),
    /// `2 of n-pair`, `n-pair`.
    Counted(NameKind),
    /// A band or a frequency.
    Band,
    /// Bands or frequencies, which follow each other directly.
    Bands,
    /// Names of bands, which follow each other directly.
    BandNames,
    /// One word of a set.
    OneOf(&'static [Word]),
    /// A text in quotes.
    Text,
    /// A date.
    Date,
    /// A path in quotes.
    File(FileKind),
    /// Words that may stand here and say nothing further (`figure`, `way`).
    Filler(&'static [&'static str]),
    /// May be missing.
    May(&'static Takes),
    /// A word with its operand, which may be missing together: `at 145 MHz`.
    Then(&'static str, &'static Takes),
    /// Free text, to the end of the group or to a word that says where the figure is from.
    Rest,
    /// `talk-out of hill to hear of car`: a chain of a station, and one of another.
    Hop,
    /// `A9 of harbour to A1`: two antennas, each of this station or of another.
    Antennas,
    /// `= 30 m`.
    Equals,
}

impl Takes {
    /// Whether the name of a definition can stand there.
    const fn names(&self) -> bool {
        match self {
            Takes::Name(k) | Takes::Names(k) | Takes::NamePair(k) | Takes::Counted(k) => {
                k.is_checked()
            }
            Takes::Band | Takes::Bands | Takes::BandNames | Takes::Hop | Takes::Antennas => true,
            Takes::May(t) | Takes::Then(_, t) => t.names(),
            _ => false,
        }
    }
}

/// How a slot is recognised.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Begins {
    /// By its word.
    Word(&'static str),
    /// By two words, where the first alone means something else (`with reactance`).
    Phrase(&'static str, &'static str),
    /// By one of the words of a set, which is also what it says (`fm`, `erp`).
    OneOf(&'static Set),
    /// By a value of this quantity without a word before it.
    Value(&'static Quantity),
    /// By a value of this quantity with this word after it: `20 dB coupled`.
    ValueAs(&'static Quantity, &'static str),
    /// By a place of the station.
    Place,
    /// By its operand, without a word before it.
    Bare(&'static Takes),
    /// By a text in quotes.
    Text,
    /// By a date.
    Date,
}

/// Where a slot may stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stands {
    /// Directly after the subject: the main figure.
    First,
    /// Before the main figure.
    Start,
    /// In the first group, before any comma.
    Head,
    /// Anywhere but at the beginning of a group.
    Within,
    /// Anywhere.
    Anywhere,
    /// Only after another slot, and why.
    After(u8, &'static str),
}

/// How often a slot may stand in one statement.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Many {
    /// Once.
    Once,
    /// Once for each kind of value: `at 15 °C`, `at 145 MHz`.
    OncePerKind,
    /// Any number of times.
    Each,
}

/// Something a statement may say.
#[derive(Debug)]
pub struct Slot {
    /// Its number in the statement.
    pub id: u8,
    /// How it is recognised.
    pub begins: Begins,
    /// What follows its word.
    pub takes: &'static [Takes],
    /// Where it may stand.
    pub stands: Stands,
    /// How often.
    pub many: Many,
    /// A figure with source and bands of its own, to the end of its group (`added 1.3 dB on 2m`).
    pub figure: bool,
    /// The word that says the same and is offered instead.
    pub alike: Option<&'static str>,
    /// Words of the trade that mean it: for search and "did you mean", never accepted.
    pub also: &'static [&'static str],
    /// What it says.
    pub doc: &'static str,
    /// How it is written.
    pub example: &'static str,
    /// Whether names of definitions can stand in it.
    pub names: bool,
    /// Whether a word of its set is two.
    pub(super) spaced: bool,
}

/// The first eight bytes of a word: one comparison of integers tells most words apart.
pub(super) fn pack(w: &str) -> u64 {
    let b = w.as_bytes();
    let mut k = [0; 8];
    let n = b.len().min(8);
    k[..n].copy_from_slice(&b[..n]);
    u64::from_le_bytes(k)
}

/// Whether one of some words is two.
const fn spaced(words: &[Word]) -> bool {
    let mut i = 0;
    while i < words.len() {
        let b = words[i].word.as_bytes();
        let mut j = 0;
        while j < b.len() {
            if b[j] == b' ' {
                return true;
            }
            j += 1;
        }
        i += 1;
    }
    false
}

impl Slot {
    const fn new(id: u8, begins: Begins) -> Slot {
        Slot {
            id,
            begins,
            takes: &[],
            stands: Stands::Anywhere,
            many: Many::Once,
            figure: false,
            alike: None,
            also: &[],
            doc: "",
            example: "",
            names: match begins {
                Begins::Bare(t) => t.names(),
                _ => false,
            },
            spaced: match begins {
                Begins::OneOf(set) => spaced(set.words),
                _ => false,
            },
        }
    }

    pub(super) const fn word(id: u8, w: &'static str, takes: &'static [Takes]) -> Slot {
        Slot::new(id, Begins::Word(w)).then(takes)
    }

    pub(super) const fn phrase(
        id: u8,
        a: &'static str,
        b: &'static str,
        takes: &'static [Takes],
    ) -> Slot {
        Slot::new(id, Begins::Phrase(a, b)).then(takes)
    }

    pub(super) const fn one_of(id: u8, set: &'static Set) -> Slot {
        Slot::new(id, Begins::OneOf(set))
    }

    pub(super) const fn value(id: u8, q: &'static Quantity) -> Slot {
        Slot::new(id, Begins::Value(q))
    }

    pub(super) const fn value_as(id: u8, q: &'static Quantity, word: &'static str) -> Slot {
        Slot::new(id, Begins::ValueAs(q, word))
    }

    pub(super) const fn bare(id: u8, takes: &'static Takes) -> Slot {
        Slot::new(id, Begins::Bare(takes))
    }

    pub(super) const fn place(id: u8) -> Slot {
        Slot::new(id, Begins::Place)
    }

    pub(super) const fn text(id: u8) -> Slot {
        Slot::new(id, Begins::Text)
    }

    pub(super) const fn date(id: u8) -> Slot {
        Slot::new(id, Begins::Date)
    }

    pub(super) const fn stands(mut self, s: Stands) -> Slot {
        self.stands = s;
        self
    }

    /// The main figure.
    pub(super) const fn first(self) -> Slot {
        self.stands(Stands::First)
    }

    pub(super) const fn after(self, id: u8, why: &'static str) -> Slot {
        self.stands(Stands::After(id, why))
    }

    pub(super) const fn then(mut self, t: &'static [Takes]) -> Slot {
        self.takes = t;
        let mut i = 0;
        while i < t.len() {
            self.names |= t[i].names();
            i += 1;
        }
        self
    }

    pub(super) const fn each(mut self) -> Slot {
        self.many = Many::Each;
        self
    }

    pub(super) const fn once_per_kind(mut self) -> Slot {
        self.many = Many::OncePerKind;
        self
    }

    pub(super) const fn figure(mut self) -> Slot {
        self.figure = true;
        self.many = Many::Each;
        self
    }

    pub(super) const fn also(mut self, a: &'static [&'static str]) -> Slot {
        self.also = a;
        self
    }

    pub(super) const fn alike(mut self, w: &'static str) -> Slot {
        self.alike = Some(w);
        self
    }

    pub(super) const fn says(mut self, doc: &'static str, example: &'static str) -> Slot {
        self.doc = doc;
        self.example = example;
        self
    }

    /// Its bit in a set of slots.
    #[must_use]
    pub const fn bit(&self) -> u64 {
        1 << self.id
    }

    /// The words it begins with, or after its operand.
    pub fn words(&self) -> impl Iterator<Item = &'static str> {
        let (one, set): (Option<&'static str>, &'static [Word]) = match self.begins {
            Begins::Word(w) | Begins::Phrase(w, _) | Begins::ValueAs(_, w) => (Some(w), &[]),
            Begins::OneOf(set) => (None, set.words),
            _ => (None, &[]),
        };
        one.into_iter().chain(set.iter().map(|w| w.word))
    }
}

/// What a statement is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Subject {
    /// Its keyword says it all.
    Nothing,
    /// It gives a name.
    New(NameKind),
    /// It may give a name.
    MayNew(NameKind),
    /// It gives a tag, which may be missing in a chain.
    Tag,
    /// The same, but a lone word is what it names, not a tag (`adapter n-to-uhf`).
    TagBefore,
    /// It names something that is defined elsewhere.
    Use(NameKind),
    /// The word itself is the name (`high` is a port).
    Itself(NameKind),
}

/// What stands in the block of a statement.
#[derive(Clone, Copy, Debug)]
pub enum Block {
    /// It has none.
    None,
    /// Statements of these forms.
    Lines(Context, &'static [&'static Form]),
    /// Rows without a word: `145 MHz 0.5 dB`.
    Rows(&'static Form),
}

/// Slots of which one statement has one at most.
#[derive(Debug)]
pub struct Exclusive {
    /// Their bits.
    pub slots: u64,
    /// What has one of them, as a sentence.
    pub rule: &'static str,
    /// What to write where two are meant.
    pub instead: &'static str,
}

/// Where one of `when` is there (always, if 0), one of `one_of` must be (bit 63: the block).
#[derive(Debug)]
pub struct Need {
    /// Bits of slots.
    pub when: u64,
    /// Bits of slots.
    pub one_of: u64,
    /// What follows or is missing, as the beginning of a sentence.
    pub what: &'static str,
}

/// One of these slots must be there.
pub(super) const fn need(one_of: u64, what: &'static str) -> Need {
    Need {
        when: 0,
        one_of,
        what,
    }
}

/// The block, in a set of slots.
pub const BLOCK: u64 = 1 << 63;

/// What may stand in a statement.
#[derive(Debug)]
pub struct Form {
    /// Its keyword; empty for a row, or a line that begins with a name.
    pub word: &'static str,
    /// Words of the trade that mean it: for search and "did you mean", never accepted.
    pub also: &'static [&'static str],
    /// With its article, as messages call it.
    pub noun: &'static str,
    /// What it says, in one sentence.
    pub doc: &'static str,
    /// How it is written; the first stands in messages.
    pub examples: &'static [&'static str],
    /// What it is about.
    pub subject: Subject,
    /// Own slots, then bundles shared with other statements.
    pub slots: &'static [&'static [Slot]],
    /// What excludes each other.
    pub exclusive: &'static [Exclusive],
    /// What must be there.
    pub needs: &'static [Need],
    /// What stands in its block.
    pub block: Block,
    /// A block has one such line at most.
    pub once: bool,
}

/// Whether two words are one, also while the crate is compiled.
pub(super) const fn same(a: &str, b: &str) -> bool {
    let (a, b) = (a.as_bytes(), b.as_bytes());
    if a.len() != b.len() {
        return false;
    }
    let mut i = 0;
    while i < a.len() {
        if a[i] != b[i] {
            return false;
        }
        i += 1;
    }
    true
}

/// Whether a word begins both slots.
const fn clash(a: &Begins, b: &Begins) -> bool {
    match (a, b) {
        (Begins::Word(x), Begins::Word(y)) => same(x, y),
        (Begins::Word(x), Begins::OneOf(set)) | (Begins::OneOf(set), Begins::Word(x)) => {
            let mut k = 0;
            while k < set.words.len() {
                if same(x, set.words[k].word) {
                    return true;
                }
                k += 1;
            }
            false
        }
        _ => false,
    }
}

impl Form {
    /// A form that says nothing.
    pub(super) const EMPTY: Form = Form {
        word: "",
        also: &[],
        noun: "",
        doc: "",
        examples: &[],
        subject: Subject::Nothing,
        slots: &[],
        exclusive: &[],
        needs: &[],
        block: Block::None,
        once: false,
    };

    /// All slots, own ones first.
    pub fn all_slots(&self) -> impl Iterator<Item = &'static Slot> + use<> {
        self.slots.iter().flat_map(|s| s.iter())
    }

    /// The slot of a number.
    #[must_use]
    pub fn slot(&self, id: u8) -> Option<&'static Slot> {
        self.all_slots().find(|s| s.id == id)
    }

    /// Whether its first slot is a figure directly after its word.
    #[must_use]
    pub fn has_plain_figure(&self) -> bool {
        let first = self.slots.first().and_then(|s| s.first());
        self.subject == Subject::Nothing
            && first.is_some_and(|s| {
                s.stands == Stands::First && matches!(s.begins, Begins::Value(_)) && !s.names
            })
    }

    /// Bits of the slots that are a main figure.
    #[must_use]
    pub fn main(&self) -> u64 {
        self.all_slots()
            .filter(|s| matches!(s.stands, Stands::First))
            .fold(0, |m, s| m | s.bit())
    }

    /// Checked while the crate is compiled: every number below 63 and given once, no word that
    /// begins two slots, exclusions and needs of slots that are there, a text for each.
    pub(super) const fn sound(&self) -> bool {
        let mut seen = 0u64;
        let mut i = 0;
        while i < self.slots.len() {
            let list = self.slots[i];
            let mut j = 0;
            while j < list.len() {
                let s = &list[j];
                if s.id >= 63 || seen & (1 << s.id) != 0 || s.doc.is_empty() || s.example.is_empty()
                {
                    return false;
                }
                seen |= 1 << s.id;
                if self.clashes(i, j) {
                    return false;
                }
                j += 1;
            }
            i += 1;
        }
        let mut i = 0;
        while i < self.slots.len() {
            let mut j = 0;
            while j < self.slots[i].len() {
                if let Stands::After(id, _) = self.slots[i][j].stands
                    && seen & (1 << id) == 0
                {
                    return false;
                }
                j += 1;
            }
            i += 1;
        }
        let mut i = 0;
        while i < self.exclusive.len() {
            if self.exclusive[i].slots & !(seen | BLOCK) != 0 {
                return false;
            }
            i += 1;
        }
        i = 0;
        while i < self.needs.len() {
            let n = &self.needs[i];
            if (n.one_of | n.when) & !(seen | BLOCK) != 0 || n.one_of == 0 {
                return false;
            }
            i += 1;
        }
        (self.word.is_empty() || !self.doc.is_empty()) && !self.noun.is_empty()
    }

    /// Whether a later slot begins with a word of this one.
    const fn clashes(&self, list: usize, at: usize) -> bool {
        let a = &self.slots[list][at].begins;
        let (mut m, mut n) = (list, at + 1);
        while m < self.slots.len() {
            while n < self.slots[m].len() {
                if clash(a, &self.slots[m][n].begins) {
                    return true;
                }
                n += 1;
            }
            m += 1;
            n = 0;
        }
        false
    }
}

/// The typed side of a form: an enum of its own slots.
macro_rules! slots {
    ($(#[$m:meta])* enum $name:ident { $($v:ident),+ $(,)? }) => {
        $(#[$m])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        #[repr(u8)]
        pub(crate) enum $name { $($v),+ }
        impl $name {
            /// Its number in the statement.
            pub(crate) const fn id(self) -> u8 { self as u8 }
            /// Its bit in a set of slots.
            #[allow(dead_code, reason = "not every form excludes or needs something")]
            pub(crate) const fn bit(self) -> u64 { 1 << (self as u8) }
        }
    };
}
pub(super) use slots;
