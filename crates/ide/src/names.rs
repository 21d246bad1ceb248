//! What every word of an item is: keyword, qualifier, or the name of something, and whether the
//! name is given or used there. By position alone, so broken lines have their names too.

use std::sync::OnceLock;

use downlead_base::Span;
use downlead_station::keywords::{Context, KEYWORDS, WORDS};
use downlead_station::model::PartKind;
use downlead_syntax::{Atom, AtomKind, Expr, ExprKind, Item, Stmt};
use rustc_hash::FxHashMap;

/// What a name names.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(crate) enum NameKind {
    Band,
    Let,
    Cable,
    Connector,
    Device,
    Instrument,
    Station,
    Session,
    Chain,
    Tag,
    Port,
    Place,
    Branch,
    Person,
    Family,
    Shared,
}

impl NameKind {
    /// In words.
    pub(crate) fn noun(self) -> &'static str {
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
        }
    }

    /// Defined by a top-level item, visible across files.
    pub(crate) fn is_global(self) -> bool {
        use NameKind as N;
        matches!(
            self,
            N::Band | N::Let | N::Cable | N::Connector | N::Device | N::Instrument
        )
    }
}

/// What a piece of text is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Class {
    /// Begins a statement, in this context.
    Keyword(Context),
    /// A word inside a statement.
    Word,
    /// A name; `true` where it is given.
    Name(NameKind, bool),
    /// Path of `use`.
    Path,
    /// The port name that is a keyword: `high`, `low` in a device's block.
    Leg,
}

/// A piece of text with what it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Piece {
    /// Relative to the item.
    pub(crate) span: Span,
    pub(crate) class: Class,
}

/// Context inside the block of a statement that begins with `word`, given the statement's own.
pub(crate) fn inner_context(word: &str, cx: Context) -> Option<Context> {
    Some(match (cx, word) {
        (Context::Top, "band") => Context::Band,
        (Context::Top, "cable") => Context::Cable,
        (Context::Top, "connector") => Context::Connector,
        (Context::Top, "device") => Context::Device,
        (Context::Top, "instrument") => Context::Instrument,
        (Context::Top, "station") => Context::Station,
        (Context::Top | Context::Station, "chain") | (_, "branch") => Context::Chain,
        (Context::Station, "place") => Context::Place,
        (Context::Top, "session") => Context::Session,
        (Context::Session, "readings") => Context::Readings,
        (Context::Cable, "construction" | "wires") => Context::Construction,
        (Context::Cable | Context::Device | Context::Connector, _) => Context::Table,
        (_, "transmitter") => Context::Transmitter,
        (_, "receiver") => Context::Receiver,
        (_, "antenna" | "load") => Context::Antenna,
        (Context::Station | Context::Chain, w) if vocabulary(w).part => Context::Device,
        // `DV1 { branch { … } }`
        (Context::Chain, _) => Context::Chain,
        _ => return None,
    })
}

/// What the language's tables say of a word.
#[derive(Clone, Copy, Default)]
struct Vocabulary {
    /// Begins a statement somewhere.
    keyword: bool,
    /// Stands inside statements.
    word: bool,
    /// Is a kind of part.
    part: bool,
}

/// Looks a word up; every word of a text is, so the tables are hashed.
fn vocabulary(word: &str) -> Vocabulary {
    static TABLE: OnceLock<FxHashMap<&'static str, Vocabulary>> = OnceLock::new();
    let table = TABLE.get_or_init(|| {
        let mut m: FxHashMap<&'static str, Vocabulary> = FxHashMap::default();
        for k in KEYWORDS.iter() {
            m.entry(k.word).or_default().keyword = true;
        }
        for w in WORDS.iter() {
            m.entry(w).or_default().word = true;
        }
        for k in PartKind::ALL {
            m.entry(k.word()).or_default().part = true;
        }
        m
    });
    table.get(word).copied().unwrap_or_default()
}

/// Place names of the station an item is.
pub(crate) fn places_of(item: &Item) -> Vec<&str> {
    let Some(st) = item.statement().filter(|s| s.keyword() == Some("station")) else {
        return Vec::new();
    };
    st.block()
        .into_iter()
        .flat_map(|b| b.iter())
        .filter(|s| s.keyword() == Some("place"))
        .filter_map(|s| s.atoms().get(1).map(|a| s.text(*a)))
        .collect()
}

/// The pieces of an item, in the order of the text. `lets` knows the named values.
pub(crate) fn pieces(item: &Item, lets: &dyn Fn(&str) -> bool) -> Vec<Piece> {
    let mut w = Walk {
        out: Vec::new(),
        places: places_of(item),
        lets,
    };
    for s in item.statements() {
        w.statement(s, Context::Top);
    }
    w.out.sort_by_key(|p| (p.span.start, p.span.end));
    w.out
}

struct Walk<'a> {
    out: Vec<Piece>,
    places: Vec<&'a str>,
    lets: &'a dyn Fn(&str) -> bool,
}

impl<'a> Walk<'a> {
    fn put(&mut self, span: Span, class: Class) {
        self.out.push(Piece { span, class });
    }

    fn statement(&mut self, s: Stmt<'a>, cx: Context) {
        self.head(s, cx);
        if let Some(b) = s.block() {
            let inner = s.keyword().and_then(|w| inner_context(w, cx));
            for x in b.iter() {
                self.statement(x, inner.unwrap_or(Context::Table));
            }
        }
    }

    fn head(&mut self, s: Stmt<'a>, cx: Context) {
        let atoms = s.atoms();
        let Some(first) = atoms.first() else { return };
        let Some(word) = s.keyword() else {
            // a row of a table, or a line without a word
            self.rest(s, cx, "", atoms);
            return;
        };
        if !vocabulary(word).keyword {
            if cx == Context::Chain {
                self.tag_use(s, *first, word);
                self.rest(s, cx, "", &atoms[1..]);
            }
            return;
        }
        if cx == Context::Device && matches!(word, "high" | "low") {
            self.put(first.span, Class::Leg);
        } else {
            self.put(first.span, Class::Keyword(cx));
        }
        let rest = &atoms[1..];
        let named = match (cx, word) {
            (Context::Top, "band") => Some(NameKind::Band),
            (Context::Top, "let") => Some(NameKind::Let),
            (Context::Top, "cable") => Some(NameKind::Cable),
            (Context::Top, "connector") => Some(NameKind::Connector),
            (Context::Top, "device") => Some(NameKind::Device),
            (Context::Top, "instrument") => Some(NameKind::Instrument),
            (Context::Top, "station") => Some(NameKind::Station),
            (Context::Top, "session") => Some(NameKind::Session),
            (_, "chain") => Some(NameKind::Chain),
            (Context::Station, "place") => Some(NameKind::Place),
            (Context::Chain, "branch") => Some(NameKind::Branch),
            (Context::Device, "port") => Some(NameKind::Port),
            _ => None,
        };
        if let Some(kind) = named {
            let Some((name, rest)) = rest.split_first() else {
                return;
            };
            if matches!(name.kind, AtomKind::Word | AtomKind::Value(_)) {
                self.put(name.span, Class::Name(kind, true));
                self.rest(s, cx, word, rest);
            } else {
                self.rest(s, cx, word, &atoms[1..]);
            }
            return;
        }
        match (cx, word) {
            (Context::Top, "use") => {
                for a in rest {
                    if a.kind == AtomKind::Str {
                        self.put(a.span, Class::Path);
                    }
                }
            }
            (Context::Connector, "joins") => self.families(s, rest),
            (_, "joins") => {
                self.names(rest.first(), NameKind::Connector);
            }
            (Context::Connector, "family") => self.families(s, rest),
            (Context::Device, "kind") => {
                for a in rest {
                    self.put(a.span, Class::Word);
                }
            }
            (Context::Session, "piece") => self.part(s, cx, "run", rest),
            (Context::Session, "resonance" | "delay" | "phase")
            | (Context::Readings, "through" | "open" | "short") => {
                let tagged = self.names(rest.first(), NameKind::Tag);
                self.rest(s, cx, word, &rest[usize::from(tagged)..]);
            }
            _ if vocabulary(word).part && matches!(cx, Context::Station | Context::Chain) => {
                self.part(s, cx, word, rest)
            }
            _ => self.rest(s, cx, word, rest),
        }
    }

    fn names(&mut self, atom: Option<&Atom>, kind: NameKind) -> bool {
        match atom {
            Some(a) if matches!(a.kind, AtomKind::Word | AtomKind::Value(_)) => {
                self.put(a.span, Class::Name(kind, false));
                true
            }
            _ => false,
        }
    }

    /// `n`, or `n to uhf`.
    fn families(&mut self, s: Stmt<'a>, atoms: &'a [Atom]) {
        for a in atoms {
            match s.value(*a) {
                Some(v) => {
                    self.put(v.expr().span(), Class::Name(NameKind::Family, false));
                    if let Some(u) = v.upper() {
                        self.put(u.span(), Class::Name(NameKind::Family, false));
                    }
                }
                None if a.kind == AtomKind::Word && s.text(*a) != "to" => {
                    self.put(a.span, Class::Name(NameKind::Family, false))
                }
                None => {}
            }
        }
    }

    fn tag_use(&mut self, s: Stmt<'a>, atom: Atom, word: &str) {
        let _ = s;
        match word.split_once('.') {
            Some((tag, _)) => {
                let dot = atom.span.start + crate::view::to32(tag.len());
                self.put(
                    Span::new(atom.span.start, dot),
                    Class::Name(NameKind::Tag, false),
                );
                if dot + 1 < atom.span.end {
                    self.put(
                        Span::new(dot + 1, atom.span.end),
                        Class::Name(NameKind::Port, false),
                    );
                }
            }
            None => self.put(atom.span, Class::Name(NameKind::Tag, false)),
        }
    }

    fn part(&mut self, s: Stmt<'a>, cx: Context, word: &str, atoms: &'a [Atom]) {
        let joint = matches!(word, "connector" | "adapter");
        let mut atoms = atoms;
        if let Some((first, rest)) = atoms.split_first() {
            let text = s.text(*first);
            let tag = first.kind == AtomKind::Word
                && text != "of"
                && !first.comma_before
                && !(self.lets)(text)
                && !(joint && (word == "connector" || rest.is_empty()))
                && (!vocabulary(text).word || text.chars().any(char::is_uppercase));
            if tag {
                self.put(first.span, Class::Name(NameKind::Tag, true));
                atoms = rest;
            }
        }
        if joint {
            // what it is stands last: `4 of n-pair`, `n-pair`, `of n-pair`
            if let Some((last, before)) = atoms.split_last() {
                self.rest(s, cx, word, before);
                if s.text(*last) == "of"
                    || matches!(last.kind, AtomKind::Value(_))
                        && s.value(*last).is_some_and(|v| v.number().is_some())
                {
                    self.rest(s, cx, "", std::slice::from_ref(last));
                } else {
                    self.names(Some(last), NameKind::Connector);
                }
            }
            return;
        }
        self.rest(s, cx, word, atoms);
    }

    /// Words and values after what a statement begins with.
    fn rest(&mut self, s: Stmt<'a>, cx: Context, word: &str, atoms: &'a [Atom]) {
        let chain_head = word == "chain";
        let mut i = 0;
        let mut in_bands = false;
        // `piece A 3 m of CABLE, connector 2 of CONNECTOR`
        let mut word = word;
        while i < atoms.len() {
            let a = atoms[i];
            i += 1;
            if a.comma_before && matches!(s.text(a), "connector" | "adapter") {
                word = s.text(a);
                if word == "adapter" && self.names(atoms.get(i), NameKind::Connector) {
                    self.put(a.span, Class::Word);
                    i += 1;
                    continue;
                }
            }
            if chain_head && in_bands && a.comma_before {
                self.band(s, a);
                continue;
            }
            match a.kind {
                AtomKind::Value(_) => self.value(s, a),
                AtomKind::Word => {
                    let text = s.text(a);
                    match text {
                        "of" => {
                            self.put(a.span, Class::Word);
                            let kind = match word {
                                "run" | "jumper" | "tail" => NameKind::Cable,
                                "connector" | "adapter" => NameKind::Connector,
                                // a length of it was measured
                                "accuracy" | "loss" => continue,
                                _ => NameKind::Device,
                            };
                            if atoms.get(i).is_some_and(|n| !n.comma_before) {
                                i += usize::from(self.names(atoms.get(i), kind));
                            }
                        }
                        "on" => {
                            self.put(a.span, Class::Word);
                            in_bands = true;
                            while let Some(n) = atoms.get(i).filter(|n| !n.comma_before) {
                                let glued = matches!(n.kind, AtomKind::Value(_))
                                    && !s.text(*n).contains(' ');
                                let first = i > 0 && s.text(atoms[i - 1]) == "on";
                                let is_word = n.kind == AtomKind::Word
                                    && !matches!(s.text(*n), "transmit" | "receive");
                                if !(glued
                                    || first && (is_word || matches!(n.kind, AtomKind::Value(_))))
                                {
                                    break;
                                }
                                self.band(s, *n);
                                i += 1;
                            }
                        }
                        "with" => {
                            self.put(a.span, Class::Word);
                            i += usize::from(self.names(atoms.get(i), NameKind::Instrument));
                        }
                        "by" => {
                            self.put(a.span, Class::Word);
                            i += usize::from(self.names(atoms.get(i), NameKind::Person));
                        }
                        "shared" => {
                            self.put(a.span, Class::Word);
                            i += usize::from(self.names(atoms.get(i), NameKind::Shared));
                        }
                        "ends" => {
                            self.put(a.span, Class::Word);
                            while let Some(n) = atoms.get(i).filter(|n| !n.comma_before) {
                                if !self.names(Some(n), NameKind::Family) {
                                    break;
                                }
                                i += 1;
                            }
                        }
                        t if self.places.contains(&t) => {
                            self.put(a.span, Class::Name(NameKind::Place, false))
                        }
                        t if (self.lets)(t) => self.put(a.span, Class::Name(NameKind::Let, false)),
                        t if vocabulary(t).word
                            || vocabulary(t).keyword
                            || matches!(t, "N" | "S" | "E" | "W" | "ways") =>
                        {
                            self.put(a.span, Class::Word);
                        }
                        // a lone word in its own group of a part is a place nobody defined
                        _ if a.comma_before && matches!(cx, Context::Station | Context::Chain) => {
                            self.put(a.span, Class::Name(NameKind::Place, false));
                        }
                        _ => {}
                    }
                }
                _ => {}
            }
        }
    }

    fn band(&mut self, s: Stmt<'a>, a: Atom) {
        let text = s.text(a);
        if a.kind == AtomKind::Word || matches!(a.kind, AtomKind::Value(_)) && !is_frequency(text) {
            if matches!(text, "transmit" | "receive") {
                self.put(a.span, Class::Word);
            } else {
                self.put(a.span, Class::Name(NameKind::Band, false));
            }
        } else {
            self.value(s, a);
        }
    }

    fn value(&mut self, s: Stmt<'a>, a: Atom) {
        let Some(v) = s.value(a) else { return };
        self.expr(v.expr());
        if let Some((t, _)) = v.tolerance() {
            self.expr(t);
        }
        if let Some(u) = v.upper() {
            self.expr(u);
        }
    }

    fn expr(&mut self, e: Expr<'a>) {
        match e.kind() {
            ExprKind::Name(span) => self.put(span, Class::Name(NameKind::Let, false)),
            ExprKind::Neg(x) | ExprKind::Per(x, _) => self.expr(x),
            ExprKind::Binary(_, l, r) => {
                self.expr(l);
                self.expr(r);
            }
            ExprKind::Number(_) => {}
        }
    }
}

/// Whether a text such as `145.3 MHz` is a frequency rather than a band's name such as `2m`.
fn is_frequency(text: &str) -> bool {
    ["MHz", "kHz", "GHz", "Hz"]
        .iter()
        .any(|u| text.trim_end().ends_with(u))
}

/// The piece that an offset touches, names before words.
pub(crate) fn piece_at(pieces: &[Piece], offset: u32) -> Option<Piece> {
    let touching = pieces.iter().filter(|p| p.span.touches(offset));
    touching
        .max_by_key(|p| {
            (
                matches!(p.class, Class::Name(..) | Class::Path),
                p.span.start,
            )
        })
        .copied()
}
