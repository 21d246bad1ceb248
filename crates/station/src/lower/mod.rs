//! Lowering: from the uniform tree of one item to what it means.

mod cable;
mod chain;
mod connector;
mod device;
mod ends;
mod network;
mod part;
mod session;
mod station;

use downlead_base::{Diagnostic, codes};
use downlead_quantity::{Dim, Measure};
use downlead_syntax::{Item, Stmt};

use crate::cx::{Cur, Cx, Lets, Val, nearest};
use crate::keywords::{Context, KEYWORDS, keyword, keywords_in};
use crate::model::{Accuracy, Band, BandKind, Instrument, Meaning, Name, PartKind};
use crate::quals::{Quals, missing};

/// What lowering one item gives.
#[derive(Clone, Debug)]
pub struct Lowered {
    /// Its meaning.
    pub meaning: Meaning,
    /// What is wrong in it.
    pub diagnostics: Vec<Diagnostic>,
    /// Other files whose contents it takes part of (readings, networks), as written.
    pub files: Box<[Name]>,
    /// Number of this lowering in its cache; 0 outside one.
    pub stamp: u64,
}

/// Lowers one item with the named values of its scope.
#[must_use]
pub fn lower(item: &Item, lets: &Lets, built_in: bool) -> Lowered {
    let mut cx = Cx {
        item,
        lets,
        diags: Vec::new(),
        files: Vec::new(),
        built_in,
    };
    let mut statements = item.statements();
    let meaning = match statements.next() {
        Some(stmt) => meaning(&mut cx, stmt),
        None => Meaning::Nothing,
    };
    for s in statements {
        // a line of its own inside no block: the syntax has said so
        if item.text()[..s.head_span().start as usize]
            .trim_end_matches([' ', '\t'])
            .ends_with(['\n', '\r'])
        {
            continue;
        }
        let Some(word) = s.keyword() else {
            no_keyword(&mut cx, s, Context::Top);
            continue;
        };
        if keyword(word).is_some_and(|k| k.contexts.contains(&Context::Top)) {
            let loc = cx.loc(s.head_span());
            cx.push(
                Diagnostic::new(&codes::MISPLACED_STATEMENT, loc, format!("`{word}` begins something new and stands at the left margin, on a line of its own."))
                    .at("indented, or behind something else"),
            );
        } else {
            unknown_statement(&mut cx, s, word, Context::Top);
        }
    }
    Lowered {
        meaning,
        diagnostics: cx.diags,
        files: cx.files.into(),
        stamp: 0,
    }
}

/// Evaluates a `let`. `None` if it is none or has no value.
#[must_use]
pub fn lower_let(item: &Item, lets: &Lets) -> (Option<(Name, Val)>, Vec<Diagnostic>) {
    let mut cx = Cx {
        item,
        lets,
        diags: Vec::new(),
        files: Vec::new(),
        built_in: false,
    };
    let Some(stmt) = item.statement() else {
        return (None, Vec::new());
    };
    let mut cur = Cur::new(stmt, stmt.atoms());
    cur.i = 1;
    let out = let_value(&mut cx, &mut cur);
    (out, cx.diags)
}

fn let_value<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> Option<(Name, Val)> {
    let name = declared(cx, cur, "a named value", "let mast = 30 m")?;
    let had = cx.diags.len();
    if cur
        .peek()
        .is_some_and(|a| a.kind == downlead_syntax::AtomKind::Equals)
    {
        cur.i += 1;
    }
    match cur.val(cx) {
        Some(v) => {
            if !cur.done() {
                cur.unexpected(cx, "a named value", &[]);
            }
            Some((name, v))
        }
        None => {
            if cx.diags.len() == had {
                missing(
                    cx,
                    cur,
                    "a named value needs `=` and its value",
                    "let mast = 30 m",
                );
            }
            None
        }
    }
}

fn meaning<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>) -> Meaning {
    let Some(word) = stmt.keyword() else {
        return Meaning::Nothing;
    };
    let mut cur = Cur::new(stmt, first_group(stmt));
    cur.i = 1;
    match word {
        "use" => {
            let loc = cur.peek().map(|a| cx.loc(a.span));
            match loc.zip(cur.string(cx)) {
                Some((loc, text)) => {
                    if !cur.done() {
                        cur.unexpected(cx, "`use`", &[]);
                    }
                    Meaning::Use(Name { text, loc })
                }
                None => {
                    missing(
                        cx,
                        &cur,
                        "the path follows in quotes",
                        "use \"cables.downlead\"",
                    );
                    Meaning::Nothing
                }
            }
        }
        "band" => band(cx, stmt, &mut cur).map_or(Meaning::Nothing, Meaning::Band),
        "let" => {
            // the value itself is evaluated before everything else, see `lower_let`
            cur.name(cx).map_or(Meaning::Nothing, Meaning::Let)
        }
        "cable" => cable::cable(cx, stmt, &mut cur)
            .map_or(Meaning::Nothing, |c| Meaning::Cable(Box::new(c))),
        "connector" => connector::connector(cx, stmt, &mut cur)
            .map_or(Meaning::Nothing, |c| Meaning::Connector(Box::new(c))),
        "device" => device::class(cx, stmt, &mut cur)
            .map_or(Meaning::Nothing, |c| Meaning::Device(Box::new(c))),
        "instrument" => instrument(cx, stmt, &mut cur)
            .map_or(Meaning::Nothing, |c| Meaning::Instrument(Box::new(c))),
        "session" => session::session(cx, stmt, &mut cur)
            .map_or(Meaning::Nothing, |s| Meaning::Session(Box::new(s))),
        "station" => station::station(cx, stmt, &mut cur)
            .map_or(Meaning::Nothing, |s| Meaning::Station(Box::new(s))),
        "chain" => chain::chain(cx, stmt, &mut cur, &[])
            .map_or(Meaning::Nothing, |c| Meaning::Chain(Box::new(c))),
        _ => {
            unknown_statement(cx, stmt, word, Context::Top);
            Meaning::Nothing
        }
    }
}

pub(crate) fn first_group<'a>(stmt: Stmt<'a>) -> &'a [downlead_syntax::Atom] {
    stmt.groups().next().unwrap_or(&[])
}

/// Reports a statement whose first word means nothing there.
pub(crate) fn unknown_statement<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, word: &str, context: Context) {
    let Some(atom) = stmt.atoms().first() else {
        return;
    };
    let loc = cx.loc(atom.span);
    if let Some(k) = keyword(word) {
        let places: Vec<&str> = k.contexts.iter().map(|c| c.words()).collect();
        cx.push(
            Diagnostic::new(
                &codes::MISPLACED_STATEMENT,
                loc,
                format!(
                    "`{word}` has no meaning {}; it stands {}.",
                    context.words(),
                    places.join(" or ")
                ),
            )
            .at("not here")
            .help(if context == Context::Top {
                "A line inside a block is indented; a line at the left margin begins something new."
                    .to_owned()
            } else {
                format!("It is written `{}`.", k.signature)
            }),
        );
        return;
    }
    let allowed: Vec<&str> = keywords_in(context).map(|k| k.word).collect();
    let mut d = Diagnostic::new(
        &codes::UNKNOWN_STATEMENT,
        loc,
        format!("`{word}` is no statement {}.", context.words()),
    )
    .at("not known");
    match nearest(word, allowed.iter().copied()) {
        Some(n) => {
            d = d
                .help(format!("Did you mean `{n}`?"))
                .fix(format!("write `{n}`"), loc, n)
                .preferred()
        }
        None => d = d.help(format!("What can stand here: {}.", allowed.join(", "))),
    }
    cx.push(d);
}

/// Reports a line that does not even begin with a word.
pub(crate) fn no_keyword<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, context: Context) {
    if stmt.is_broken() {
        return;
    }
    let loc = cx.loc(stmt.head_span());
    let allowed: Vec<&str> = keywords_in(context).map(|k| k.word).collect();
    cx.push(
        Diagnostic::new(
            &codes::UNKNOWN_STATEMENT,
            loc,
            format!(
                "A line {} begins with a word that says what it is.",
                context.words()
            ),
        )
        .at("no word in front")
        .help(format!("What can stand here: {}.", allowed.join(", "))),
    );
}

/// The name something is given.
pub(crate) fn declared<'a>(
    cx: &mut Cx<'a>,
    cur: &mut Cur<'a>,
    what: &str,
    example: &str,
) -> Option<Name> {
    let Some(name) = cur.name(cx) else {
        missing(cx, cur, &format!("{what} needs a name"), example);
        return None;
    };
    if KEYWORDS.iter().any(|k| k.word == &*name.text) {
        cx.push(
            Diagnostic::new(
                &codes::NAME_IS_KEYWORD,
                name.loc,
                format!(
                    "`{}` is a word of the language and cannot name {what}.",
                    name.text
                ),
            )
            .at("taken")
            .help("Take another word, or the tag that is on the thing."),
        );
        return None;
    }
    Some(name)
}

fn band<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, cur: &mut Cur<'a>) -> Option<Band> {
    let name = declared(cx, cur, "a band", "band 2m 145.3 MHz")?;
    let kind = if let Some(block) = stmt.block() {
        let (mut transmit, mut receive) = (None, None);
        for s in block.iter() {
            let mut c = Cur::new(s, s.atoms());
            c.i = 1;
            match s.keyword() {
                Some(w @ ("transmit" | "receive")) => match c.val(cx) {
                    Some(v) => {
                        let f = cx.frequency(&v, "a band's frequency");
                        if w == "transmit" {
                            transmit = f
                        } else {
                            receive = f
                        }
                        if !c.done() {
                            c.unexpected(cx, "a band", &[]);
                        }
                    }
                    None => missing(cx, &c, "a frequency follows", "transmit 146.9 MHz"),
                },
                Some(w) => unknown_statement(cx, s, w, Context::Band),
                None => no_keyword(cx, s, Context::Band),
            }
        }
        if transmit.is_none() && receive.is_none() {
            if cx.diags.is_empty() {
                missing(
                    cx,
                    cur,
                    "a band needs a frequency",
                    "band 2m { transmit 146.9 MHz; receive 146.3 MHz }",
                );
            }
            return None;
        }
        BandKind::Pair { transmit, receive }
    } else {
        let had = cx.diags.len();
        let Some(v) = cur.val(cx) else {
            if cx.diags.len() == had {
                missing(cx, cur, "a band needs a frequency", "band 2m 145.3 MHz");
            }
            return None;
        };
        let low = cx.frequency(&Val { upper: None, ..v }, "a band's frequency")?;
        match v.upper {
            None => BandKind::Single(low),
            Some(u) => {
                let high = cx.frequency(
                    &Val {
                        q: u,
                        upper: None,
                        half: None,
                        ..v
                    },
                    "a band's frequency",
                )?;
                if high <= low {
                    cx.push(
                        Diagnostic::new(
                            &codes::IMPOSSIBLE_VALUE,
                            v.loc,
                            "A band's upper edge lies above its lower one.",
                        )
                        .at("the wrong way round"),
                    );
                    return None;
                }
                BandKind::Range(low, high)
            }
        }
    };
    if !cur.done() {
        cur.unexpected(cx, "a band", &[]);
    }
    Some(Band { name, kind })
}

/// `A to B` in Hz, rising.
pub(crate) fn frequency_range(cx: &mut Cx<'_>, v: &Val, what: &str) -> Option<(f64, f64)> {
    let Some(up) = v.upper else {
        cx.push(
            Diagnostic::new(
                &codes::MISSING_VALUE,
                v.loc,
                format!("{} is a range.", crate::cx::capital(what)),
            )
            .at("only one frequency")
            .help("Written for example `144 MHz to 148 MHz`."),
        );
        return None;
    };
    // zero is a fair lower edge here, so the radio-frequency check does not apply
    if v.q.dim != Dim::Frequency || up.dim != Dim::Frequency {
        let bad = if v.q.dim == Dim::Frequency { up } else { v.q };
        cx.wrong_kind(
            &Val { q: bad, ..*v },
            &[Dim::Frequency],
            what,
            "144 MHz to 148 MHz",
        );
        return None;
    }
    if up.value <= v.q.value || v.q.value < 0.0 {
        cx.push(
            Diagnostic::new(
                &codes::IMPOSSIBLE_VALUE,
                v.loc,
                format!(
                    "{} runs from the lower to the higher frequency.",
                    crate::cx::capital(what)
                ),
            )
            .at("the wrong way round"),
        );
        return None;
    }
    Some((v.q.value, up.value))
}

fn instrument<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, cur: &mut Cur<'a>) -> Option<Instrument> {
    let name = declared(
        cx,
        cur,
        "an instrument",
        "instrument W1 { accuracy 5 % of reading }",
    )?;
    let mut ins = Instrument {
        name,
        title: cur.string(cx),
        accuracy: None,
        scale_w: None,
        band: None,
        resolution_w: None,
        calibrated: None,
        due: None,
        linearity: None,
        repeatability: None,
        directivity_db: None,
    };
    if !cur.done() {
        cur.unexpected(cx, "an instrument", &[]);
    }
    for s in stmt.block().into_iter().flat_map(|b| b.iter()) {
        let mut c = Cur::new(s, s.atoms());
        c.i = 1;
        match s.keyword() {
            Some("accuracy") => {
                if let Some(v) = c.val(cx) {
                    ins.accuracy = accuracy(cx, &mut c, &v);
                } else {
                    missing(cx, &c, "the accuracy follows", "accuracy 5 % of reading");
                }
            }
            Some("scale") => {
                if let Some(v) = c.need(cx, "a power follows", "scale 100 W") {
                    ins.scale_w = cx.power(&v, "a full scale", "100 W").map(|m| m.value);
                }
            }
            Some("resolution") => {
                if let Some(v) = c.need(cx, "a power follows", "resolution 0.1 W") {
                    ins.resolution_w = cx.power(&v, "a resolution", "0.1 W").map(|m| m.value);
                }
            }
            Some("band") => {
                if let Some(v) = c.need(cx, "a range follows", "band 1.8 MHz to 500 MHz") {
                    ins.band = frequency_range(cx, &v, "an instrument's band");
                }
            }
            Some("calibrated") => match c.date(cx) {
                Some(d) => ins.calibrated = Some(d),
                None => missing(cx, &c, "a date follows", "calibrated 2026-01-10"),
            },
            Some("due") => match c.date(cx) {
                Some(d) => ins.due = Some(d),
                None => missing(cx, &c, "a date follows", "due 2028-01-10"),
            },
            Some(w @ ("linearity" | "repeatability")) => {
                let example = format!("{w} 1 %");
                if let Some(v) = c.need(cx, "a share of the reading follows", &example) {
                    let u = spread(cx, &v, w, &example);
                    if w == "linearity" {
                        ins.linearity = u;
                    } else {
                        ins.repeatability = u;
                    }
                    // the share is of the reading, and may say so
                    if c.eat(cx, "of") {
                        c.eat(cx, "reading");
                    }
                }
            }
            Some("directivity") => {
                if let Some(v) = c.need(cx, "a ratio follows", "directivity 40 dB") {
                    ins.directivity_db = cx
                        .positive(&v, Dim::Decibel, "a directivity", "40 dB")
                        .map(|m| m.value);
                }
            }
            Some("source") => {
                if c.string(cx).is_none() {
                    missing(
                        cx,
                        &c,
                        "the document follows in quotes",
                        "source \"certificate 4711\"",
                    );
                }
            }
            Some(w) => {
                unknown_statement(cx, s, w, Context::Instrument);
                continue;
            }
            None => {
                no_keyword(cx, s, Context::Instrument);
                continue;
            }
        }
        if !c.done() {
            c.unexpected(cx, "an instrument", &[]);
        }
    }
    Some(ins)
}

/// Standard uncertainty of one reading, relative, from a share: a half-width (rectangular), or
/// with `k` an expanded uncertainty.
fn spread(cx: &mut Cx<'_>, v: &Val, what: &str, example: &str) -> Option<f64> {
    let k = v.coverage.filter(|k| *k > 0.0);
    let standard = |half: f64| k.map_or(half / libm::sqrt(3.0), |k| half / k);
    match v.q.dim {
        Dim::Percent => Some(standard(v.q.value.abs())),
        Dim::Decibel => Some(standard(v.q.value.abs()) / downlead_quantity::DB_PER_RELATIVE),
        _ => {
            cx.wrong_kind(
                v,
                &[Dim::Percent, Dim::Decibel],
                &format!("the {what}"),
                example,
            );
            None
        }
    }
}

fn accuracy<'a>(cx: &mut Cx<'a>, c: &mut Cur<'a>, v: &Val) -> Option<Accuracy> {
    // `5 %` alone is a half-width (rectangular); `5 % k 2` an expanded uncertainty
    let k = v.coverage.filter(|k| *k > 0.0);
    let standard = |half: f64| k.map_or(half / libm::sqrt(3.0), |k| half / k);
    if v.q.dim == Dim::Decibel {
        return Some(Accuracy::Decibel(standard(v.q.value.abs())));
    }
    if v.q.dim != Dim::Percent {
        cx.wrong_kind(
            v,
            &[Dim::Percent, Dim::Decibel],
            "an accuracy",
            "5 % of reading",
        );
        return None;
    }
    let u = standard(v.q.value.abs());
    if c.eat(cx, "of") {
        if c.eat(cx, "reading") {
            return Some(Accuracy::OfReading(u));
        }
        if c.eat(cx, "full") {
            c.eat(cx, "scale");
            return Some(Accuracy::OfFullScale(u));
        }
    }
    let end = downlead_base::Loc::new(
        v.loc.item,
        downlead_base::Span::new(v.loc.span.end, v.loc.span.end),
    );
    cx.push(
        Diagnostic::new(
            &codes::ACCURACY_KIND_MISSING,
            v.loc,
            "5 % of what? Of the reading it is ±5 % everywhere; of full scale it is ±20 % at a quarter of the scale.".replacen(
                "5 %",
                &format!("{} %", downlead_quantity::number(v.q.value * 100.0, 3)),
                1,
            ),
        )
        .at("of reading or of full scale?")
        .fix("write `of reading`", end, " of reading")
        .fix("write `of full scale`", end, " of full scale"),
    );
    None
}

/// A mean power rating: `1.1 kW at 100 MHz, ambient 40 °C, conductor 80 °C` from the cursor's
/// statement.
pub(crate) fn rating<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    skip: usize,
) -> Option<crate::model::Rating> {
    let mut out = None;
    let (mut ambient, mut conductor, mut stated) = (40.0, 80.0, false);
    let mut q = Quals::default();
    let mut first = true;
    for g in s.groups() {
        let mut c = Cur::new(s, g);
        if first {
            c.i = skip;
            first = false;
            let Some(v) = c.val(cx) else {
                missing(cx, &c, "a power follows", "rating 300 W");
                return None;
            };
            let m = cx.power(&v, "a rating", "300 W")?;
            out = Some((m.value, v.loc));
        }
        while !c.done() {
            if c.eat(cx, "ambient") {
                if let Some(m) = c.val(cx).and_then(|v| cx.temperature(&v)) {
                    ambient = m.value;
                    stated = true;
                }
            } else if c.eat(cx, "conductor") {
                if let Some(m) = c
                    .val(cx)
                    .and_then(|v| cx.measure(&v, Dim::Temperature, "a temperature", "80 °C"))
                {
                    conductor = m.value;
                    stated = true;
                }
            } else if !q.take(cx, &mut c) {
                c.unexpected(cx, "a rating", &["at", "ambient", "conductor"]);
                break;
            }
        }
    }
    let (watts, loc) = out?;
    if conductor <= ambient {
        cx.push(
            Diagnostic::new(
                &codes::IMPOSSIBLE_VALUE,
                loc,
                "The conductor's highest temperature lies above the ambient one.",
            )
            .at("the wrong way round"),
        );
        return None;
    }
    Some(crate::model::Rating {
        watts,
        at_hz: q.at_frequency,
        ambient_c: ambient,
        conductor_c: conductor,
        temperatures_stated: stated,
        loc,
    })
}

/// A share between 0 and 1 written in percent.
pub(crate) fn share(cx: &mut Cx<'_>, v: &Val, what: &str) -> Option<Measure> {
    let m = cx.measure(v, Dim::Percent, what, "50 %")?;
    if m.value > 0.0 && m.value <= 1.0 {
        return Some(m);
    }
    cx.push(
        Diagnostic::new(
            &codes::IMPOSSIBLE_VALUE,
            v.loc,
            format!(
                "{} lies above 0 % and not above 100 %.",
                crate::cx::capital(what)
            ),
        )
        .at("cannot be"),
    );
    None
}

/// The kind of part a word names.
pub(crate) fn part_kind(word: &str) -> Option<PartKind> {
    PartKind::from_word(word)
}
