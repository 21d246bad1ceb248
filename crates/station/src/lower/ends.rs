//! What a chain begins and ends with: transmitters, receivers, antennas, loads.

use downlead_base::{Diagnostic, codes};
use downlead_quantity::{DB_PER_RELATIVE, Dim, Measure, number};
use downlead_syntax::Stmt;

use super::device::{noise_figure, none, return_loss_to_swr, second_word, swr_figure, swr_words};
use super::head::{meant, no_keyword, unknown_statement};
use super::network::{self, Ports};
use super::part::unread;
use super::rating::{plain_rating, rating, share};
use crate::cx::{Cur, Cx};
use crate::keywords::Context;
use crate::model::{
    Antenna, Figure, Gain, Impedance, Meta, Mode, PowerKind, Receiver, Sensitivity, Transmitter,
    When,
};
use crate::quals::{Quals, Said, ends, missing, rest, twice};
use crate::words::{MODES, OF_FIGURES, is_one_of, own};

/// The power kind at the cursor.
pub(super) fn power_kind<'a>(cx: &Cx<'a>, cur: &mut Cur<'a>) -> Option<PowerKind> {
    [PowerKind::Carrier, PowerKind::Pep, PowerKind::Mean]
        .into_iter()
        .find(|&k| cur.eat(cx, k.word()))
}

fn mode<'a>(cx: &Cx<'a>, cur: &mut Cur<'a>) -> Option<Mode> {
    for (w, m) in [
        ("fm", Mode::Fm),
        ("data", Mode::Data),
        ("cw", Mode::Cw),
        ("ssb", Mode::Ssb),
        ("ssb-processed", Mode::SsbProcessed),
        ("am", Mode::Am),
    ] {
        if cur.eat(cx, w) {
            return Some(m);
        }
    }
    None
}

/// A qualifier that only transmitters have. `modes` are those stated so far.
fn transmitter_word<'a>(
    cx: &mut Cx<'a>,
    cur: &mut Cur<'a>,
    t: &mut Transmitter,
    modes: &mut Said,
) -> bool {
    let word = cur.next_span();
    if let Some(m) = mode(cx, cur) {
        if modes.note(cx, cur.stmt, word) {
            t.mode = Some(m);
        }
        return true;
    }
    if cur.eat(cx, "duty") {
        match cur.val(cx) {
            Some(v) => {
                let v = cx.alone(&v, "a duty");
                t.duty = share(cx, &v, "a duty").map(|m| m.value);
            }
            None => missing(cx, cur, "`duty` is followed by a percentage", "duty 35 %"),
        }
        t.broken_duty |= t.duty.is_none();
        return true;
    }
    if cur.eat(cx, "keyed") {
        match cur.val(cx) {
            Some(v) => {
                let v = cx.alone(&v, "the share keyed");
                t.keyed = share(cx, &v, "the share keyed").map(|m| m.value);
                if cur.eat(cx, "in") {
                    t.keyed_in_s = super::exposure::window(cx, cur);
                    t.broken_duty |= t.keyed_in_s.is_none();
                }
            }
            None => missing(cx, cur, "`keyed` is followed by a percentage", "keyed 50 %"),
        }
        t.broken_duty |= t.keyed.is_none();
        return true;
    }
    if cur.eat(cx, "noise") {
        let what = super::isolation::What::Noise;
        super::isolation::in_line(cx, cur, what, &mut t.noise, &mut t.broken_noise);
        return true;
    }
    if cur.eat(cx, "foldback") {
        second_word(cx, cur, "foldback", "swr", "foldback swr 2");
        match cur.val(cx) {
            Some(v) => {
                let v = cx.alone(&v, "the SWR of a foldback");
                t.foldback_swr = cx.swr(&v).map(|m| m.value);
            }
            None => missing(
                cx,
                cur,
                "`foldback` is followed by an SWR",
                "foldback swr 2",
            ),
        }
        return true;
    }
    false
}

fn power_line<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    skip: usize,
    (t, modes): (&mut Transmitter, &mut Said),
    powers: &mut Vec<(Figure, Option<PowerKind>)>,
) -> Option<Meta> {
    let mut q = Quals::default();
    let mut value = None;
    let mut broken = false;
    let mut kind = None;
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        if n == 0 {
            cur.i = skip;
            broken = cur.at_value(cx) || s.keyword() == Some("power");
            match cur.val(cx) {
                Some(v) => {
                    value = cx
                        .power(&v, "a transmitter's power", "32 W")
                        .map(|m| (m, v.loc))
                }
                None if s.keyword() == Some("power") => {
                    missing(cx, &cur, "a power follows", "power 32 W carrier on 2m")
                }
                None => {}
            }
        }
        while !cur.done() {
            let word = cur.next_span();
            // the power after a word: `transmitter fm 32 W`
            if n == 0
                && !broken
                && cur.at_value(cx)
                && let Some(v) = cur.val(cx)
            {
                broken = true;
                value = cx
                    .power(&v, "a transmitter's power", "32 W")
                    .map(|m| (m, v.loc));
            } else if let Some(k) = power_kind(cx, &mut cur) {
                if q.said.note(cx, s, word) {
                    kind = Some(k);
                }
            } else if !transmitter_word(cx, &mut cur, t, modes) && !q.take(cx, &mut cur) {
                let own = own(Context::Transmitter, "power");
                t.broken_duty |= unread(&cur) || cur.word(cx).is_some_and(|w| meant(w, &MODES));
                q.unexpected(cx, &cur, "a transmitter", own);
                break;
            }
        }
    }
    let meta = q.meta.clone();
    match value.filter(|_| !q.broken) {
        Some((m, loc)) => powers.push((q.figure(m, loc, false), kind)),
        None if broken || q.broken => return None,
        None => {}
    }
    Some(meta)
}

/// What is gathered of a transmitter, line by line.
#[derive(Default)]
struct Sending {
    t: Transmitter,
    modes: Said,
    powers: Vec<(Figure, Option<PowerKind>)>,
    /// Whether a power is there but could not be read.
    broken: bool,
    /// Whether it is part of a radio that also receives.
    both: bool,
}

impl Sending {
    /// The head of its statement.
    fn head<'a>(&mut self, cx: &mut Cx<'a>, stmt: Stmt<'a>, skip: usize) -> Meta {
        let into = (&mut self.t, &mut self.modes);
        let meta = power_line(cx, stmt, skip, into, &mut self.powers);
        self.broken = meta.is_none();
        meta.unwrap_or_default()
    }

    /// A line of its block; false when it begins with no word of a transmitter.
    fn line<'a>(&mut self, cx: &mut Cx<'a>, s: Stmt<'a>, word: &str) -> bool {
        let mut c = Cur::new(s, s.atoms());
        match word {
            "power" => {
                let into = (&mut self.t, &mut self.modes);
                self.broken |= power_line(cx, s, 1, into, &mut self.powers).is_none();
            }
            "mode" => {
                c.i = 1;
                let word = c.next_span();
                if let Some(m) = mode(cx, &mut c) {
                    if self.modes.note(cx, s, word) {
                        self.t.mode = Some(m);
                    }
                } else {
                    if c.done() {
                        missing(cx, &c, "the mode follows", "mode fm");
                    }
                    self.t.broken_duty = true;
                    c.unexpected(cx, "`mode`", &MODES);
                    return true;
                }
                ends(cx, s, &c, "`mode`");
            }
            "duty" | "keyed" | "foldback" => {
                transmitter_word(cx, &mut c, &mut self.t, &mut self.modes);
                rest(cx, s, &mut c, "this line");
            }
            "bandwidth" => self.t.bandwidth_hz = super::site::bandwidth(cx, s),
            // `noise figure` is the receiver's
            "noise" if !(self.both && noise_figure_line(cx, s)) => {
                super::isolation::sideband_noise(cx, s, self.both, &mut self.t);
            }
            _ => return false,
        }
        true
    }

    /// A line that begins with a word which is none of its block.
    fn unknown(&mut self, word: &str) {
        self.broken |= meant(word, &["power"]);
        self.t.broken_duty |= meant(word, &["mode", "duty", "keyed"]);
    }

    /// The whole; none where a power is there but could not be read, or none is there. `had` is how many
    /// findings there were before it.
    fn finish(
        mut self,
        cx: &mut Cx<'_>,
        stmt: Stmt<'_>,
        had: usize,
        (what, example): (&str, &str),
    ) -> Option<Transmitter> {
        if self.powers.is_empty() && cx.diags.len() == had && !stmt.is_broken() {
            let cur = Cur::new(stmt, stmt.atoms());
            missing(cx, &cur, &format!("{what} needs its power"), example);
        }
        // a kind said once holds for all
        if let Some(k) = self.powers.iter().find_map(|p| p.1) {
            for p in &mut self.powers {
                p.1 = p.1.or(Some(k));
            }
        }
        twice(
            cx,
            "The power of this transmitter",
            self.powers.iter().map(|p| &p.0),
            downlead_quantity::power,
        );
        let none = self.powers.is_empty();
        self.t.power = self.powers.into();
        (!self.broken && !none).then_some(self.t)
    }
}

/// A transmitter; `skip` atoms of the first group are read already. None where a power is there
/// but could not be read, or none is there.
pub(super) fn transmitter<'a>(
    cx: &mut Cx<'a>,
    stmt: Stmt<'a>,
    skip: usize,
) -> (Option<Transmitter>, Meta) {
    let had = cx.diags.len();
    let mut sending = Sending::default();
    let meta = sending.head(cx, stmt, skip);
    for s in stmt.block().into_iter().flat_map(|b| b.iter()) {
        match s.keyword() {
            Some(w) if sending.line(cx, s, w) => {}
            Some(w) => {
                sending.unknown(w);
                unknown_statement(cx, s, w, Context::Transmitter);
            }
            None => no_keyword(cx, s, Context::Transmitter),
        }
    }
    let words = ("a transmitter", "transmitter TX1 32 W carrier, fm");
    (sending.finish(cx, stmt, had, words), meta)
}

/// A receiver.
pub(super) fn receiver<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, skip: usize) -> (Receiver, Meta) {
    let mut r = Receiver::default();
    let mut q = Quals::default();
    receiver_groups(cx, stmt, skip, &mut r, &mut q);
    for s in stmt.block().into_iter().flat_map(|b| b.iter()) {
        match s.keyword() {
            Some(w) if receiver_line(cx, s, w, &mut r, &mut q) => {}
            Some(w) => unknown_statement(cx, s, w, Context::Receiver),
            None => no_keyword(cx, s, Context::Receiver),
        }
    }
    (r, q.meta)
}

/// A line of a receiver's block; false when it begins with no word of a receiver.
fn receiver_line<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    word: &str,
    r: &mut Receiver,
    q: &mut Quals,
) -> bool {
    let skip = match word {
        "sensitivity" => 1,
        "noise" => 0,
        "bandwidth" => {
            r.bandwidth_hz = super::site::bandwidth(cx, s);
            return true;
        }
        "blocking" => {
            super::isolation::blocking(cx, s, &mut r.blocking);
            return true;
        }
        _ => return false,
    };
    // each line is a figure of its own
    q.said = Said::default();
    receiver_groups(cx, s, skip, r, q);
    true
}

/// A radio that sends and receives on one line; none where its power could not be read, or none is there.
pub(super) fn transceiver<'a>(
    cx: &mut Cx<'a>,
    stmt: Stmt<'a>,
    skip: usize,
) -> (Option<(Transmitter, Receiver)>, Meta) {
    let had = cx.diags.len();
    let mut sending = Sending {
        both: true,
        ..Sending::default()
    };
    let meta = sending.head(cx, stmt, skip);
    let (mut r, mut q) = (Receiver::default(), Quals::default());
    for s in stmt.block().into_iter().flat_map(|b| b.iter()) {
        match s.keyword() {
            Some(w) if sending.line(cx, s, w) || receiver_line(cx, s, w, &mut r, &mut q) => {}
            Some(w) => {
                sending.unknown(w);
                unknown_statement(cx, s, w, Context::Transceiver);
            }
            None => no_keyword(cx, s, Context::Transceiver),
        }
    }
    let words = ("a transceiver", "transceiver TR1 25 W carrier, fm");
    let sent = sending.finish(cx, stmt, had, words);
    let both = sent.map(|t| {
        // it hears as wide as it sends
        r.bandwidth_hz = t.bandwidth_hz;
        (t, r)
    });
    (both, meta)
}

/// Whether a line is `noise figure …`.
fn noise_figure_line(cx: &Cx<'_>, s: Stmt<'_>) -> bool {
    s.atoms()
        .get(1)
        .is_some_and(|a| cx.text(a.span) == "figure")
}

fn receiver_groups<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, skip: usize, r: &mut Receiver, q: &mut Quals) {
    let mut level = None;
    let mut why = None;
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        if n == 0 {
            cur.i = skip;
            if let Some(v) = cur.val(cx) {
                level = sensitivity(cx, &v).map(|m| (m, v.loc));
            }
        }
        while !cur.done() {
            if cur.eat(cx, "for") {
                let start = cur.next_span();
                let mut end = start;
                // the criterion is free text, what is said about the figure is not
                while !cur.done() && !ends_criterion(cx, &cur) {
                    end = cur.next_span();
                    cur.i += 1;
                }
                why = criterion(cx, start.join(end));
            } else if cur.eat(cx, "noise") {
                r.noise_figure = noise_figure(cx, &mut cur);
            } else if cur.eat(cx, "blocking") {
                let what = super::isolation::What::Blocking;
                super::isolation::in_line(cx, &mut cur, what, &mut r.blocking, &mut false);
            } else if !q.take(cx, &mut cur) {
                let own = own(Context::Receiver, "sensitivity");
                q.unexpected(cx, &cur, "a receiver", own);
                break;
            }
        }
    }
    let Some((level, loc)) = level else { return };
    let again = r.sensitivities.iter().any(|s| s.criterion == why);
    if again {
        let what = why
            .as_deref()
            .map_or_else(String::new, |w| format!(" for {w}"));
        cx.push(
            Diagnostic::new(
                &codes::SAID_TWICE,
                loc,
                format!("The sensitivity of this receiver{what} is said already."),
            )
            .at("again here")
            .help("Remove one of the two; a receiver may have several sensitivities, each for a criterion of its own."),
        );
        return;
    }
    r.sensitivities.push(Sensitivity {
        level,
        criterion: why,
    });
}

/// Whether the criterion of a sensitivity ends before the cursor: at another one, at a noise
/// figure, or at a word that says where the figure comes from.
fn ends_criterion<'a>(cx: &Cx<'a>, cur: &Cur<'a>) -> bool {
    let next = cur.atoms.get(cur.i + 1).map(|a| cx.text(a.span));
    match cur.word(cx) {
        Some("for") => true,
        Some("noise") => next == Some("figure"),
        Some("blocking") => cur
            .atoms
            .get(cur.i + 1)
            .is_some_and(|a| matches!(a.kind, downlead_syntax::AtomKind::Value(_))),
        Some(w) => is_one_of(w) && OF_FIGURES.contains(&w),
        None => false,
    }
}

/// The criterion of a sensitivity, which is no text that repeats itself.
fn criterion(cx: &mut Cx<'_>, span: downlead_base::Span) -> Option<Box<str>> {
    let text = cx.text(span);
    let words: Vec<&str> = text.split_whitespace().collect();
    let (first, second) = words.split_at(words.len() / 2);
    if first != second || first.is_empty() {
        return Some(text.into());
    }
    cx.push(
        Diagnostic::new(
            &codes::SAID_TWICE,
            cx.loc(span),
            format!("`{}` is said twice.", first.join(" ")),
        )
        .at("the same again")
        .help("Remove one of them."),
    );
    Some(first.join(" ").into())
}

fn sensitivity(cx: &mut Cx<'_>, v: &crate::cx::Val) -> Option<Measure> {
    match v.q.dim {
        Dim::Level => {
            let m = cx.measure(v, Dim::Level, "a sensitivity", "-119 dBm")?;
            // a milliwatt at its input is what damages a receiver, not what it hears
            if m.value > 0.0 {
                cx.push(
                    Diagnostic::new(
                        &codes::IMPOSSIBLE_VALUE,
                        v.loc,
                        format!(
                            "No receiver needs {} dBm: a sensitivity is far below 0 dBm.",
                            number(m.value, 3)
                        ),
                    )
                    .at("without its minus?")
                    .help("Written for example `-119 dBm`.")
                    .fix(
                        format!("write `-{}`", cx.text(v.loc.span)),
                        downlead_base::Loc::new(
                            v.loc.item,
                            downlead_base::Span::new(v.loc.span.start, v.loc.span.start),
                        ),
                        "-",
                    ),
                );
                return None;
            }
            Some(m)
        }
        // microvolts across 50 ohm (potential difference), the usual way sheets give it
        Dim::Voltage if v.q.value > 0.0 => {
            let m = cx.measure(v, Dim::Voltage, "a sensitivity", "0.25 uV")?;
            cx.within_bounds(v, &m, 0.0, "a sensitivity");
            Some(Measure {
                value: downlead_quantity::w_to_dbm(m.value * m.value / 50.0),
                // power goes with the square of the voltage
                u: 2.0 * DB_PER_RELATIVE * m.u / m.value,
                ..m
            })
        }
        Dim::Power => cx.power(v, "a sensitivity", "-119 dBm").map(|m| Measure {
            value: downlead_quantity::w_to_dbm(m.value),
            ..m
        }),
        _ => {
            cx.wrong_kind(v, &[Dim::Level, Dim::Voltage], "a sensitivity", "-119 dBm");
            None
        }
    }
}

/// An antenna (or a load, which has no gain).
pub(super) fn antenna<'a>(
    cx: &mut Cx<'a>,
    stmt: Stmt<'a>,
    skip: usize,
    load: bool,
) -> (Antenna, Meta) {
    let mut a = Antenna::default();
    let (mut gains, mut swrs, mut impedances) = (Vec::new(), Vec::new(), Vec::new());
    let mut q = Quals::default();
    let mut first_gain = None;
    let (mut file, mut files) = (network::Draft::default(), Vec::new());
    for (n, g) in stmt.groups().enumerate() {
        let mut cur = Cur::new(stmt, g);
        if n == 0 {
            cur.i = skip;
            let stated = !load && cur.at_value(cx);
            if let Some(v) = cur.val(cx) {
                if load {
                    load_value(cx, &v);
                } else {
                    first_gain = cx.gain(&v).map(|(m, dipole)| (m, dipole, v.loc, false));
                }
            }
            a.broken_gain = stated && first_gain.is_none();
        }
        while !cur.done() {
            if cur.eat(cx, "realized") {
                if let Some(f) = &mut first_gain {
                    f.3 = true;
                }
            } else if cur.eat(cx, "swr") {
                let v = cur.need(cx, "an SWR follows", "swr 1.3");
                let swr = v.and_then(|v| Some(Figure::always(cx.swr(&v)?, v.loc)));
                a.broken_match |= swr.is_none();
                swrs.extend(swr);
            } else if cur.eat(cx, "return-loss") {
                let v = cur.need(cx, "a return loss follows", "return-loss 20 dB");
                let swr = v.and_then(|v| Some(Figure::always(return_loss_to_swr(cx, &v)?, v.loc)));
                a.broken_match |= swr.is_none();
                swrs.extend(swr);
            } else if cur.eat(cx, "height") {
                a.height_agl = height(cx, &mut cur);
            } else if !load && cur.eat(cx, "size") {
                a.size = super::exposure::size(cx, &mut cur);
            } else if cur.eat(cx, "rating") {
                if let Some(v) = cur.need(cx, "a power follows", "rating 300 W") {
                    a.rating = plain_rating(cx, &v);
                }
            } else if !file.take(cx, &mut cur, Ports::One) && !q.take(cx, &mut cur) {
                let (what, word) = if load {
                    ("a load", "load")
                } else {
                    ("an antenna", "antenna")
                };
                a.broken_match |= unread(&cur);
                q.unexpected(cx, &cur, what, own(Context::Chain, word));
                break;
            }
        }
    }
    let meta = q.meta.clone();
    a.broken_match |= file.is_broken();
    files.extend(file.finish(&q));
    a.broken_gain |= q.broken;
    if let Some((m, dipole, loc, realized)) = first_gain {
        gains.push(Gain {
            figure: q.figure(m, loc, false),
            dipole,
            realized,
            directivity: false,
        });
    }
    for s in stmt.block().into_iter().flat_map(|b| b.iter()) {
        let mut cur = Cur::new(s, super::head::first_group(s));
        cur.i = 1;
        match s.keyword() {
            Some(w @ ("gain" | "directivity")) if !load => {
                let figure = gain(cx, s, w == "directivity");
                a.broken_gain |= figure.is_none();
                gains.extend(figure);
            }
            Some(w @ ("swr" | "return-loss")) => {
                let figure = swr_figure(cx, s, 1, w == "return-loss");
                a.broken_match |= figure.is_none();
                swrs.extend(figure);
            }
            Some("impedance") if cur.word(cx) == Some("from") => {
                let file = network::statement(cx, s, 1, "an impedance", Ports::One, &mut none);
                a.broken_match |= file.is_none();
                files.extend(file);
            }
            Some("impedance") => {
                let z = impedance(cx, s);
                a.broken_match |= z.is_none();
                impedances.extend(z);
            }
            Some("from") => {
                let what = if load {
                    "a load's file"
                } else {
                    "an antenna's file"
                };
                let file = network::statement(cx, s, 0, what, Ports::One, &mut none);
                a.broken_match |= file.is_none();
                files.extend(file);
            }
            Some("efficiency") if !load => {
                if let Some(v) = cur.need(cx, "a share follows", "efficiency 90 %") {
                    a.efficiency = share(cx, &v, "an efficiency");
                }
                a.broken_gain |= a.efficiency.is_none();
                rest(cx, s, &mut cur, "an efficiency");
            }
            Some("height") if !load && has_word(cx, s, "haat") => {
                a.height_haat = haat(cx, &mut cur);
                rest(cx, s, &mut cur, "a height");
            }
            Some("height") if !load => {
                let again = a.height_agl.is_some();
                a.height_agl = height(cx, &mut cur);
                if again {
                    height_twice(cx, s);
                }
                rest(cx, s, &mut cur, "a height");
            }
            Some("size") if !load => {
                a.size = super::exposure::size(cx, &mut cur);
                rest(cx, s, &mut cur, "a size");
            }
            Some("pattern") if !load => {}
            Some("rating") => a.rating = rating(cx, s, 1),
            Some(w) => {
                a.broken_match |= meant(w, &["swr", "return-loss", "impedance", "from"]);
                a.broken_gain |= meant(w, &["gain", "directivity", "efficiency"]);
                unknown_statement(cx, s, w, Context::Antenna);
            }
            None => no_keyword(cx, s, Context::Antenna),
        }
    }
    let dbi = |g: f64| format!("{} dBi", downlead_quantity::number(g, 2));
    twice(
        cx,
        "The gain of this antenna",
        gains.iter().map(|g| &g.figure),
        dbi,
    );
    twice(
        cx,
        if load {
            "The SWR of this load"
        } else {
            "The SWR of this antenna"
        },
        &swrs,
        swr_words,
    );
    network::twice(
        cx,
        if load {
            "The SWR of this load"
        } else {
            "The SWR of this antenna"
        },
        &files,
        &swrs,
    );
    beside_impedance(
        cx,
        if load { "load" } else { "antenna" },
        &impedances,
        &swrs,
    );
    let stated: Vec<Figure> = impedances.iter().map(|z| z.resistance.clone()).collect();
    network::twice(cx, "The impedance", &files, &stated);
    a.pattern = super::pattern::of_antenna(cx, stmt, &gains);
    a.network = files.into();
    a.gain = gains.into();
    a.swr = swrs.into();
    a.impedance = impedances.into();
    (a, meta)
}

/// Points out an SWR that no result uses, since an impedance says the same: the one of its band, or
/// one that holds always.
fn beside_impedance(cx: &mut Cx<'_>, what: &str, impedances: &[Impedance], swrs: &[Figure]) {
    for s in swrs {
        let holds = |z: &&Impedance| {
            z.resistance.when == When::Always || crate::quals::meet(&z.resistance.when, &s.when)
        };
        let Some(z) = impedances.iter().find(holds) else {
            continue;
        };
        cx.push(
            Diagnostic::new(
                &codes::FIGURE_TWICE,
                s.loc,
                format!("The match of this {what} is given twice, by its impedance and here; the impedance is used."),
            )
            .at("not used")
            .also(z.resistance.loc, "the impedance")
            .help("Remove one of them, or say with `on` on which band each holds."),
        );
    }
}

/// `load DL1 300 W`: a load has no figure of its own in front.
fn load_value(cx: &mut Cx<'_>, v: &crate::cx::Val) {
    let mut d = Diagnostic::new(
        &codes::WRONG_UNIT,
        v.loc,
        "A load has no power or gain of its own; what it may carry is its rating.",
    )
    .at("not here")
    .help("Written for example `load DL1, return-loss 30 dB, rating 300 W`.");
    if v.q.watts().is_some() {
        let before = cx
            .text(downlead_base::Span::new(0, v.loc.span.start))
            .trim_end()
            .len();
        let gap = downlead_base::Span::new(
            u32::try_from(before).unwrap_or(v.loc.span.start),
            v.loc.span.start,
        );
        d = d
            .fix("make it the rating", cx.loc(gap), ", rating ")
            .preferred();
    }
    cx.push(d);
}

fn gain<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, directivity: bool) -> Option<Gain> {
    let mut q = Quals::default();
    let mut value = None;
    let mut realized = false;
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        if n == 0 {
            cur.i = 1;
            let Some(v) = cur.val(cx) else {
                missing(cx, &cur, "a gain follows", "gain 5.2 dBi on 2m");
                return None;
            };
            value = cx.gain(&v).map(|(m, dipole)| (m, dipole, v.loc));
        }
        while !cur.done() {
            if cur.eat(cx, "realized") {
                realized = true;
            } else if !q.take(cx, &mut cur) {
                q.unexpected(cx, &cur, "a gain", own(Context::Antenna, "gain"));
                break;
            }
        }
    }
    let (m, dipole, loc) = value.filter(|_| !q.broken)?;
    Some(Gain {
        figure: q.figure(m, loc, false),
        dipole,
        realized,
        directivity,
    })
}

fn impedance<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) -> Option<Impedance> {
    let mut q = Quals::default();
    let (mut r, mut x) = (None, Measure::default());
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        if n == 0 {
            cur.i = 1;
            let Some(v) = cur.val(cx) else {
                missing(
                    cx,
                    &cur,
                    "a resistance follows",
                    "impedance 12 ohm with reactance -900 ohm on 80m",
                );
                return None;
            };
            r = cx
                .positive(&v, Dim::Impedance, "a feed-point resistance", "12 ohm")
                .map(|m| (m, v.loc));
        }
        while !cur.done() {
            let at = cur.i;
            cur.eat(cx, "with");
            if cur.eat(cx, "reactance") {
                match cur.val(cx) {
                    Some(v) => x = cx.measure(&v, Dim::Impedance, "a reactance", "-900 ohm")?,
                    None => {
                        missing(
                            cx,
                            &cur,
                            "`reactance` is followed by ohms",
                            "with reactance -900 ohm",
                        );
                        return None;
                    }
                }
                continue;
            }
            cur.i = at;
            if !q.take(cx, &mut cur) {
                let own = own(Context::Antenna, "impedance");
                q.unexpected(cx, &cur, "an impedance", own);
                break;
            }
        }
    }
    let (m, loc) = r.filter(|_| !q.broken)?;
    Some(Impedance {
        resistance: q.figure(m, loc, false),
        reactance: x,
    })
}

/// Whether a word stands in a line.
fn has_word(cx: &Cx<'_>, s: Stmt<'_>, word: &str) -> bool {
    s.atoms().iter().any(|a| cx.text(a.span) == word)
}

/// Height above average terrain, which rules go by.
fn haat<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> Option<Measure> {
    let v = cur.need(cx, "a height follows", "height 312 m haat")?;
    let m = cx.measure(&v, Dim::Length, "a height", "312 m haat")?;
    if !cur.eat(cx, "haat") {
        cur.unexpected(cx, "a height", &["haat"]);
        return None;
    }
    Some(m)
}

/// Two heights of one antenna above the same.
fn height_twice(cx: &mut Cx<'_>, s: Stmt<'_>) {
    let d = Diagnostic::new(
        &codes::SAID_TWICE,
        cx.loc(s.head_span()),
        "The height of this antenna above ground is said already.",
    )
    .at("again here")
    .help(
        "Remove one of the two lines; `height 312 m haat` is another height, and an antenna may have both.",
    );
    cx.push(d);
}

fn height<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> Option<Measure> {
    let v = match cur.val(cx) {
        Some(v) => v,
        None => {
            missing(cx, cur, "a height follows", "height 26 m agl");
            return None;
        }
    };
    let m = cx.measure(&v, Dim::Length, "a height", "26 m agl")?;
    if cur.eat(cx, "agl") {
        return Some(m);
    }
    let end = downlead_base::Loc::new(
        v.loc.item,
        downlead_base::Span::new(v.loc.span.end, v.loc.span.end),
    );
    let found = cur.word(cx).map(str::to_owned);
    if matches!(found.as_deref(), Some("amsl" | "haat")) {
        cur.i += 1;
        let d = Diagnostic::new(
            &codes::HEIGHT_WITHOUT_DATUM,
            v.loc,
            format!("An antenna's height is needed above ground (agl), not `{}`.", found.unwrap_or_default()),
        )
        .at("the wrong datum")
        .help("The station's `ground 612 m amsl` gives the height of the ground above mean sea level.");
        cx.push(d);
        return None;
    }
    let d = Diagnostic::new(
        &codes::HEIGHT_WITHOUT_DATUM,
        v.loc,
        "A height above what? Above ground is `agl`.",
    )
    .at("no datum")
    .fix("write `agl`", end, " agl")
    .preferred();
    cx.push(d);
    None
}
