//! `session NAME { … }`: cables on the bench.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::{Dim, Measure, number};
use downlead_syntax::Stmt;

use super::device::{return_loss_to_swr, swr_figure};
use super::head::{declared, first_group, no_keyword, unknown_statement};
use super::part;
use crate::cx::{Cur, Cx, Val, capital};
use crate::keywords::Context;
use crate::model::{BandRef, Meta, Name, Part, PartData, PartKind};
use crate::quals::{self, Quals, missing, rest};
use crate::session::{
    Import, LengthBy, LengthReading, Match, Piece, Reading, ReadingKind, Readings, Session, Shown,
};

pub(super) fn session<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, cur: &mut Cur<'a>) -> Option<Session> {
    let name = declared(cx, cur, "a session", "session reel-7 { … }")?;
    let mut s = Draft {
        session: Session {
            name,
            loc: cx.loc(stmt.head_span()),
            title: cur.string(cx),
            meta: Meta::default(),
            meta_loc: None,
            temperature: None,
            step_share: None,
            drift_per_minute: None,
            load: Match::default(),
            generator: Match::default(),
            pieces: Box::default(),
            groups: Box::default(),
            imports: Box::default(),
            lengths: Box::default(),
        },
        pieces: Vec::new(),
        groups: Vec::new(),
        imports: Vec::new(),
        lengths: Vec::new(),
        load: Vec::new(),
        generator: Vec::new(),
    };
    if !cur.done() {
        cur.unexpected(cx, "a session's head", &[]);
    }
    let Some(block) = stmt.block() else {
        missing(cx, cur, "a session has a block", "session reel-7 { … }");
        return None;
    };
    for st in block.iter() {
        s.statement(cx, st);
    }
    Some(s.finish(cx))
}

struct Draft {
    session: Session,
    pieces: Vec<Piece>,
    groups: Vec<Readings>,
    imports: Vec<Import>,
    lengths: Vec<LengthReading>,
    load: Vec<crate::model::Figure>,
    generator: Vec<crate::model::Figure>,
}

impl Draft {
    fn statement<'a>(&mut self, cx: &mut Cx<'a>, st: Stmt<'a>) {
        let Some(word) = st.keyword() else {
            no_keyword(cx, st, Context::Session);
            return;
        };
        let mut c = Cur::new(st, first_group(st));
        c.i = 1;
        match word {
            "read" => self.about(cx, st),
            "temperature" => {
                if let Some(v) = c.need(cx, "a temperature follows", "temperature 12 °C") {
                    self.session.temperature = bench_temperature(cx, &v);
                }
                rest(cx, st, &mut c, "a temperature");
            }
            "load" => ends(cx, st, &mut c, &mut self.load, &mut self.session.load),
            "generator" => ends(
                cx,
                st,
                &mut c,
                &mut self.generator,
                &mut self.session.generator,
            ),
            "drift" => super::drift::drift(cx, st, &mut self.session),
            "piece" => self.pieces.extend(piece(cx, st)),
            "readings" => {
                if c.eat(cx, "from") {
                    self.imports.extend(import(cx, st, &mut c));
                } else {
                    self.groups.extend(readings(cx, st, &mut c));
                }
            }
            "resonance" | "delay" | "phase" => self.lengths.extend(electrical_length(cx, st, word)),
            _ => unknown_statement(cx, st, word, Context::Session),
        }
    }

    /// `read DATE with INSTRUMENT by WHO`.
    fn about<'a>(&mut self, cx: &mut Cx<'a>, st: Stmt<'a>) {
        let mut q = Quals::of(Context::Session, "read");
        for (n, g) in st.groups().enumerate() {
            let mut c = Cur::new(st, g);
            c.i = usize::from(n == 0);
            while !c.done() {
                if !q.take(cx, &mut c) {
                    let (had, word) = (cx.diags.len(), c.word(cx));
                    q.unexpected(cx, &c, "what holds for all readings", &[]);
                    if word == Some("at") {
                        cx.help_if_new(
                            had,
                            "The temperature is a line of its own: `temperature 12 °C`.",
                        );
                    }
                    break;
                }
            }
        }
        if q.meta == Meta::default() {
            let c = Cur::new(st, &[]);
            missing(
                cx,
                &c,
                "when, with what and by whom the readings were taken follows",
                "read 2026-07-19 with W3 by QY5BEN",
            );
        }
        self.session.meta = q.meta;
        self.session.meta_loc = Some(cx.loc(st.head_span()));
    }

    fn finish(mut self, cx: &mut Cx<'_>) -> Session {
        let mut s = self.session;
        for p in &mut self.pieces {
            if let PartData::Line(l) = &mut p.part.data
                && l.temperature.is_none()
            {
                l.temperature = s.temperature.map(Box::new);
            }
        }
        for (i, p) in self.pieces.iter().enumerate() {
            if let Some(first) = self.pieces[..i].iter().find(|q| q.name.text == p.name.text) {
                cx.push(
                    Diagnostic::new(
                        &codes::DUPLICATE_NAME,
                        p.name.loc,
                        format!("`{}` is the name of two pieces.", p.name.text),
                    )
                    .at("again here")
                    .also(first.name.loc, "first here")
                    .help("Rename one of them."),
                );
            }
        }
        let known: Vec<&Name> = self.pieces.iter().map(|p| &p.name).collect();
        for n in self
            .groups
            .iter()
            .flat_map(|g| g.rows.iter().filter_map(|r| r.piece.as_ref()))
            .chain(self.lengths.iter().map(|l| &l.piece))
        {
            unknown_piece(cx, n, &known);
        }
        one_match(cx, "load", &self.load, s.load.file.as_ref());
        one_match(cx, "generator", &self.generator, s.generator.file.as_ref());
        s.load.swr = self.load.into();
        s.generator.swr = self.generator.into();
        s.pieces = self.pieces.into();
        s.groups = self.groups.into();
        s.imports = self.imports.into();
        s.lengths = self.lengths.into();
        s
    }
}

fn unknown_piece(cx: &mut Cx<'_>, n: &Name, known: &[&Name]) {
    if known.iter().any(|k| k.text == n.text) {
        return;
    }
    let mut d = Diagnostic::new(
        &codes::UNKNOWN_PIECE,
        n.loc,
        format!("`{}` is no piece of this session.", n.text),
    )
    .at("not defined");
    d = match crate::cx::nearest(&n.text, known.iter().map(|k| &*k.text)) {
        Some(near) => {
            d.help(format!("Did you mean `{near}`?"))
                .fix(format!("write `{near}`"), n.loc, near)
        }
        None => d.help(format!(
            "Say what it is: `piece {} 11.40 m of rg-213`.",
            n.text
        )),
    };
    cx.push(d);
}

/// `load return-loss 26 dB`, `load swr 1.1, maximum`, `load from "dummy.s1p"`.
fn ends<'a>(
    cx: &mut Cx<'a>,
    st: Stmt<'a>,
    c: &mut Cur<'a>,
    figures: &mut Vec<crate::model::Figure>,
    out: &mut Match,
) {
    let word = st.keyword().unwrap_or("load");
    let before = out.file.clone();
    if c.eat(cx, "return-loss") {
        figures.extend(swr_figure(cx, st, 2, true));
    } else if c.eat(cx, "swr") {
        figures.extend(swr_figure(cx, st, 2, false));
    } else if c.eat(cx, "from") {
        out.file = file(cx, c, "dummy.s1p");
        quals::ends(cx, st, c, &format!("a {word} from a file"));
    } else {
        missing(
            cx,
            c,
            "its match follows",
            &format!("{word} return-loss 26 dB"),
        );
    }
    if let (Some(first), Some(again)) = (before, &out.file)
        && first.loc != again.loc
    {
        cx.push(
            Diagnostic::new(
                &codes::FIGURE_TWICE,
                again.loc,
                format!(
                    "The match of the {word} is given twice, by `{}` and by `{}`; the first is used.",
                    first.text, again.text
                ),
            )
            .at("not used")
            .also(first.loc, "first here")
            .help("Remove one of them."),
        );
        out.file = Some(first);
    }
}

/// Points out a match of the bench that is given twice.
fn one_match(cx: &mut Cx<'_>, word: &str, figures: &[crate::model::Figure], file: Option<&Name>) {
    let what = format!("The match of the {word}");
    quals::twice(cx, &what, figures, super::device::swr_words);
    if let (Some(f), Some(figure)) = (file, figures.first()) {
        cx.push(
            Diagnostic::new(
                &codes::FIGURE_TWICE,
                figure.loc,
                format!(
                    "{what} is given twice, here and by `{}`; the file is used.",
                    f.text
                ),
            )
            .at("not used")
            .also(f.loc, "the file")
            .help("Remove one of them."),
        );
    }
}

/// The path behind `from`; noted as one of the item's files.
pub(super) fn file<'a>(cx: &mut Cx<'a>, c: &mut Cur<'a>, example: &str) -> Option<Name> {
    let loc = c.peek().map(|a| cx.loc(a.span));
    match (c.string(cx), loc) {
        (Some(text), Some(loc)) => {
            let n = Name { text, loc };
            cx.files.push(n.clone());
            Some(n)
        }
        _ => {
            missing(
                cx,
                c,
                "`from` is followed by a path in quotes",
                &format!("from \"{example}\""),
            );
            None
        }
    }
}

fn piece<'a>(cx: &mut Cx<'a>, st: Stmt<'a>) -> Option<Piece> {
    let mut cur = Cur::new(st, first_group(st));
    cur.i = 1;
    let name = declared(cx, &mut cur, "a piece", "piece A 11.40 m of rg-213")?;
    let loc = cx.loc(st.head_span());
    let mut p = Part {
        kind: PartKind::Piece,
        tag: Some(name.clone()),
        loc,
        ends: None,
        meta: crate::model::About::default(),
        data: PartData::Broken,
    };
    let mut connectors = Vec::new();
    // a piece whose line cannot be understood is still one: its readings are not strangers
    if let Some(line) = super::line::line(
        cx,
        st,
        cur.i,
        PartKind::Piece,
        &[],
        &mut p,
        Some(&mut connectors),
    ) {
        p.data = PartData::Line(Box::new(line));
    }
    Some(Piece {
        name,
        loc,
        part: p,
        connectors: connectors.into(),
    })
}

fn import<'a>(cx: &mut Cx<'a>, st: Stmt<'a>, c: &mut Cur<'a>) -> Option<Import> {
    let path = file(cx, c, "july.csv")?;
    let mut q = Quals::of(Context::Session, "readings");
    for (n, g) in st.groups().enumerate() {
        let mut own = Cur::new(st, g);
        let cur = if n == 0 { &mut *c } else { &mut own };
        while !cur.done() {
            if !q.take(cx, cur) {
                q.unexpected(cx, cur, "`readings from`", &[]);
                break;
            }
        }
    }
    Some(Import {
        file: path,
        instrument: q.meta.instrument.map(|n| *n),
        loc: cx.loc(st.head_span()),
    })
}

fn readings<'a>(cx: &mut Cx<'a>, st: Stmt<'a>, c: &mut Cur<'a>) -> Option<Readings> {
    c.eat(cx, "on");
    let mut bands: Vec<BandRef> = Vec::new();
    super::chain::band(cx, c, &mut bands);
    let on = bands.pop()?;
    let instrument = if c.eat(cx, "with") {
        let i = c.name(cx);
        if i.is_none() {
            missing(cx, c, "`with` is followed by the instrument", "with W1");
        }
        i
    } else {
        None
    };
    quals::ends(cx, st, c, "the head of `readings`");
    let Some(block) = st.block() else {
        missing(
            cx,
            c,
            "the readings follow in a block",
            "readings on 2m { baseline 44 W at 0 min }",
        );
        return None;
    };
    let mut rows = Vec::new();
    for s in block.iter() {
        let kind = s
            .keyword()
            .and_then(|w| ReadingKind::ALL.into_iter().find(|k| k.word() == w));
        match (kind, s.keyword()) {
            (Some(k), _) => rows.extend(reading(cx, s, k)),
            (None, Some(w)) => unknown_statement(cx, s, w, Context::Readings),
            (None, None) => no_keyword(cx, s, Context::Readings),
        }
    }
    // said once for all readings that do not say otherwise
    for r in &mut rows {
        if r.instrument.is_none() {
            r.instrument.clone_from(&instrument);
        }
    }
    Some(Readings {
        on,
        loc: cx.loc(st.head_span()),
        rows: rows.into(),
    })
}

fn example(kind: ReadingKind) -> &'static str {
    match kind {
        ReadingKind::Baseline => "baseline 44.0 W at 0 min",
        ReadingKind::Through => "through A 22.8 W at 2 min",
        ReadingKind::Open => "open A 4.1 dB",
        ReadingKind::Short => "short A 4.3 dB",
        ReadingKind::Equalise => "equalise 44.0 W with W1, against 43.6 W with W2",
    }
}

fn reading<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, kind: ReadingKind) -> Option<Reading> {
    let mut r = Reading {
        kind,
        piece: None,
        shown: Shown::Watts(0.0),
        value_loc: cx.loc(s.head_span()),
        reflected_w: None,
        input: None,
        minutes: None,
        adapters: Box::default(),
        instrument: None,
        loc: cx.loc(s.head_span()),
    };
    let mut adapters = Vec::new();
    let mut q = Quals::of(Context::Readings, kind.word());
    let mut shown = None;
    for (n, g) in s.groups().enumerate() {
        let mut c = Cur::new(s, g);
        if n == 0 {
            c.i = 1;
            if kind.of_piece() {
                let Some(p) = c.name(cx) else {
                    missing(cx, &c, "the piece's tag follows", example(kind));
                    return None;
                };
                r.piece = Some(p);
            }
            shown = Some(first_value(cx, &mut c, kind, &mut r)?);
        }
        while !c.done() {
            if c.eat(cx, "at") {
                r.minutes = at(cx, &mut c).or(r.minutes);
            } else if c.eat(cx, "adapter") {
                adapters.extend(counted(cx, &mut c, "adapter n-to-uhf"));
            } else if c.eat(cx, "input") || c.eat(cx, "against") {
                if let Some(v) = c.need(cx, "a power follows", "input 43.5 W with W1") {
                    let v = read_alone(cx, &v);
                    let w = cx.power(&v, "a reading", "43.5 W").map(|m| m.value);
                    let i = if c.eat(cx, "with") { c.name(cx) } else { None };
                    r.input = w.map(|w| (w, i));
                }
            } else if c.eat(cx, "forward") {
                // what a reading of a bench session is unless it says otherwise
            } else if c.at_value(cx) {
                reflected(cx, &mut c, &mut r);
            } else if !q.take(cx, &mut c) {
                let own = ["at", "adapter", "input", "forward", "reflected"];
                q.unexpected(cx, &c, "a reading", &own);
                break;
            }
        }
    }
    r.shown = shown?;
    r.adapters = adapters.into();
    r.instrument = q.meta.instrument.map(|n| *n);
    if r.kind == ReadingKind::Equalise && r.input.is_none() {
        let c = Cur::new(s, &[]);
        missing(
            cx,
            &c,
            "the other meter's reading follows",
            example(ReadingKind::Equalise),
        );
        return None;
    }
    Some(r)
}

/// What the instrument showed.
fn first_value<'a>(
    cx: &mut Cx<'a>,
    c: &mut Cur<'a>,
    kind: ReadingKind,
    r: &mut Reading,
) -> Option<Shown> {
    if c.eat(cx, "from") {
        let f = file(
            cx,
            c,
            if kind == ReadingKind::Through {
                "a.s2p"
            } else {
                "a-open.s1p"
            },
        )?;
        r.value_loc = f.loc;
        return Some(Shown::File(f));
    }
    let v = c.need(cx, "what was read follows", example(kind))?;
    r.value_loc = v.loc;
    let v = read_alone(cx, &v);
    let reflection = matches!(kind, ReadingKind::Open | ReadingKind::Short);
    if reflection {
        return match v.q.dim {
            // return_loss_to_swr checks kind and sign; what is kept is the figure in dB
            Dim::Decibel => return_loss_to_swr(cx, &v).map(|_| Shown::ReturnLoss(v.q.value)),
            _ => {
                cx.wrong_kind(&v, &[Dim::Decibel], "a return loss", "4.1 dB");
                None
            }
        };
    }
    match v.q.dim {
        Dim::Decibel => Some(Shown::Loss(v.q.value)),
        _ => cx
            .power(&v, "a reading", example(kind))
            .map(|m| Shown::Watts(m.value)),
    }
}

/// A figure that was read on the bench: what it is good for is said of its instrument.
fn read_alone(cx: &mut Cx<'_>, v: &Val) -> Val {
    cx.alone_or(
        v,
        "a reading on the bench",
        Some("How good readings are is said of the instrument: `linearity 1 %`, `repeatability 0.6 % k 1`."),
    )
}

/// `0.05 W reflected`.
fn reflected<'a>(cx: &mut Cx<'a>, c: &mut Cur<'a>, r: &mut Reading) {
    let start = c.next_span().start;
    let Some(v) = c.val(cx) else { return };
    let v = read_alone(cx, &v);
    if v.q.dim == Dim::Time {
        let before = Loc::new(v.loc.item, downlead_base::Span::new(start, start));
        cx.push(
            Diagnostic::new(
                &codes::UNEXPECTED_WORD,
                v.loc,
                "The time of a reading follows `at`.",
            )
            .at("when?")
            .fix("write `at`", before, "at ")
            .preferred(),
        );
        r.minutes = r.minutes.or(Some(v.q.value / 60.0));
        return;
    }
    if v.q.watts().is_none() && !c.eat(cx, "reflected") {
        let d = Diagnostic::new(
            &codes::UNEXPECTED_WORD,
            v.loc,
            format!(
                "A reading has no second figure of this kind: this is {}.",
                v.q.dim.noun()
            ),
        )
        .at("not used");
        cx.push(match v.q.dim {
            Dim::Temperature => d.help("The temperature is that of the session, in a line of its own: `temperature 12 °C`."),
            Dim::Frequency => d.help("The frequency stands in the head: `readings on 145.3 MHz { … }`."),
            _ => d.help("A reading has a power, a time and a reflected power: `through A 28.9 W at 2 min, 0.05 W reflected`."),
        });
        return;
    }
    if v.q.watts().is_some() && !c.eat(cx, "reflected") {
        cx.push(
            Diagnostic::new(
                &codes::UNEXPECTED_WORD,
                v.loc,
                "A second figure of a reading is reflected power.",
            )
            .at("reflected?")
            .fix("write `reflected`", end_of(v.loc), " reflected"),
        );
        return;
    }
    // a meter may well show no reflected power at all
    match v.q.watts() {
        Some(w) if w >= 0.0 => r.reflected_w = Some(w),
        Some(_) => cx.push(
            Diagnostic::new(
                &codes::IMPOSSIBLE_VALUE,
                v.loc,
                "Reflected power is not negative.",
            )
            .at("negative"),
        ),
        None => cx.wrong_kind(&v, &[Dim::Power], "reflected power", "0.05 W reflected"),
    }
}

fn end_of(loc: Loc) -> Loc {
    Loc::new(
        loc.item,
        downlead_base::Span::new(loc.span.end, loc.span.end),
    )
}

/// `at 2 min`: minutes.
fn at<'a>(cx: &mut Cx<'a>, c: &mut Cur<'a>) -> Option<f64> {
    let v = c.need(cx, "a time follows", "at 2 min")?;
    let v = cx.alone(&v, "the time of a reading");
    cx.measure(&v, Dim::Time, "the time of a reading", "at 2 min")
        .map(|m| m.value / 60.0)
}

/// `2 of n-pair` or `n-pair`: how many of what.
pub(super) fn counted<'a>(cx: &mut Cx<'a>, c: &mut Cur<'a>, example: &str) -> Option<(u32, Name)> {
    let mut count = 1;
    if c.at_value(cx) {
        let v = c.val(cx)?;
        count = part::count(cx, &v, example)?;
        if !c.eat(cx, "of") {
            missing(cx, c, "`of` and a name follow", example);
            return None;
        }
    } else {
        c.eat(cx, "of");
    }
    match c.name(cx) {
        Some(n) => Some((count, n)),
        None => {
            missing(cx, c, "a name follows", example);
            None
        }
    }
}

/// `resonance A 3.951 MHz`, `delay A 126.5 ns`, `phase A 911° over 10 MHz`.
fn electrical_length<'a>(cx: &mut Cx<'a>, st: Stmt<'a>, word: &str) -> Option<LengthReading> {
    let (example, dim) = match word {
        "resonance" => ("resonance A 3.951 MHz", Dim::Frequency),
        "delay" => ("delay A 126.5 ns", Dim::Time),
        _ => ("phase A 911° over 10 MHz", Dim::Angle),
    };
    let mut c = Cur::new(st, first_group(st));
    c.i = 1;
    let Some(piece) = c.name(cx) else {
        missing(cx, &c, "the piece's tag follows", example);
        return None;
    };
    let v = c.need(cx, &format!("{} follows", dim.noun()), example)?;
    let m = cx.positive(&v, dim, &format!("{} of a piece", dim.noun()), example)?;
    let by = match word {
        "resonance" => LengthBy::Resonance(m),
        "delay" => LengthBy::Delay(m),
        _ => {
            if !c.eat(cx, "over") {
                missing(cx, &c, "`over` and the span of frequency follow", example);
                return None;
            }
            let f = c.need(cx, "a span of frequency follows", example)?;
            let f = cx.alone(&f, "a span of frequency");
            let span = cx.positive(&f, Dim::Frequency, "a span of frequency", "10 MHz")?;
            LengthBy::Phase(m.scaled(1.0 / span.value))
        }
    };
    rest(cx, st, &mut c, &capital(word));
    Some(LengthReading {
        piece,
        by,
        loc: cx.loc(st.head_span()),
    })
}

/// Temperatures a bench may have, °C: what cables are rated for in storage and use (common practice).
const BENCH_C: (f64, f64) = (-60.0, 100.0);

/// The temperature of a bench; what no bench has is refused.
fn bench_temperature(cx: &mut Cx<'_>, v: &Val) -> Option<Measure> {
    let m = cx.temperature(v)?;
    if (BENCH_C.0..=BENCH_C.1).contains(&m.value) {
        return Some(m);
    }
    // what is outside of all cables has its finding already
    let said = |d: &Diagnostic| d.primary.loc == v.loc;
    if !cx.diags.iter().any(said) {
        let d = Diagnostic::new(
            &codes::IMPOSSIBLE_VALUE,
            v.loc,
            format!(
                "No bench is at {} °C; a session is read between {} °C and {} °C.",
                number(m.value, 1),
                BENCH_C.0,
                BENCH_C.1
            ),
        )
        .at("cannot be")
        .help("Without a temperature 20 °C is assumed. If °F is meant, write `°F`.");
        cx.push(d);
    }
    None
}
