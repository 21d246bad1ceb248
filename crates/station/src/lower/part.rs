//! Parts: in a station with a tag, or written straight into a chain.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::{Dim, Measure};
use downlead_syntax::{AtomKind, Stmt};

use super::device::{Draft, contradictions, device_line, noise_figure, ways};
use super::ends as chain_ends;
use super::network::{self, Ports};
use super::rating::plain_rating;
use super::unused::unused;
use super::{kinds, line};
use crate::cx::{Cur, Cx, Val};
use crate::forms::{self, Known, Reader};
use crate::keywords::Context;
use crate::model::{Device, Figure, Name, Part, PartData, PartKind, Role};
use crate::quals::{Quals, ends, exclusive, missing};
use crate::words::{OF_FIGURES, own};

/// Lowers a statement whose first word is a kind of part. `places` are the station's places.
pub(super) fn part<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, kind: PartKind, places: &[Name]) -> Part {
    let loc = cx.loc(stmt.head_span());
    let group = super::head::first_group(stmt);
    let mut cur = Cur::new(stmt, group);
    cur.i = 1;
    let tag = tag(cx, &mut cur, kind);
    let mut part = Part {
        kind,
        tag,
        loc,
        ends: None,
        meta: crate::model::About::default(),
        data: PartData::Broken,
    };
    if stmt.is_broken() {
        return part;
    }
    let skip = cur.i;
    match kind.role() {
        Role::Transmitter => {
            let (t, meta) = chain_ends::transmitter(cx, stmt, skip);
            part.meta = meta.into();
            if let Some(t) = t {
                part.data = PartData::Transmitter(Box::new(t));
            }
        }
        Role::Receiver => {
            let (r, meta) = chain_ends::receiver(cx, stmt, skip);
            part.meta = meta.into();
            part.data = PartData::Receiver(Box::new(r));
        }
        Role::Transceiver => {
            let (both, meta) = chain_ends::transceiver(cx, stmt, skip);
            part.meta = meta.into();
            if let Some(both) = both {
                part.data = PartData::Transceiver(Box::new(both));
            }
        }
        Role::End => {
            let (a, meta) = chain_ends::antenna(cx, stmt, skip, kind == PartKind::Load);
            part.meta = meta.into();
            part.data = PartData::Antenna(Box::new(a));
        }
        Role::Line => {
            if let Some(l) = line::line(cx, stmt, skip, kind, places, &mut part, None) {
                part.data = PartData::Line(Box::new(l));
            }
        }
        Role::Join => connector(cx, &mut cur, kind, &mut part),
        Role::Through | Role::Directed | Role::Active | Role::Legs | Role::Divider => {
            if let Some(d) = device(cx, stmt, skip, kind, places, &mut part) {
                part.data = PartData::Device(Box::new(d));
            }
        }
    }
    part
}

/// The tag: a word after the keyword that begins nothing else.
fn tag<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>, kind: PartKind) -> Option<Name> {
    let atom = cur.peek()?;
    if !matches!(atom.kind, AtomKind::Word) {
        return None;
    }
    let word = cx.text(atom.span);
    // the table says which words begin something else than a tag
    let known = Known {
        lets: cx.lets,
        places: &[],
    };
    let tag = Reader::new(forms::of_part(kind), cur.stmt, known).has_tag();
    if !tag || line::from_misspelt(cx, cur) {
        return None;
    }
    cur.i += 1;
    // `antenna gain 4.5 dBi`: the word of a line of its block, which the head does without
    let own = matches!(word, "gain" | "power") && {
        let lines = forms::of_part(kind).block.lines();
        lines.iter().any(|l| l.word == word)
    };
    if own || word == kind.word() {
        let what = kind.with_article();
        let loc = cx.loc(atom.span);
        cx.push(
            Diagnostic::new(
                &codes::NAME_IS_KEYWORD,
                loc,
                format!("`{word}` is a word of the language and cannot be the tag of {what}."),
            )
            .at("taken")
            .help(format!(
                "Leave it out: the figure follows `{}` or its tag directly.",
                kind.word()
            )),
        );
        return None;
    }
    if word.contains('.') {
        let loc = cx.loc(atom.span);
        cx.push(
            Diagnostic::new(
                &codes::UNEXPECTED_WORD,
                loc,
                format!("A tag has no dot; `{word}` would name a port of a part."),
            )
            .at("not a tag"),
        );
        return None;
    }
    Some(cx.name_at(atom.span))
}

fn connector<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>, kind: PartKind, part: &mut Part) {
    let mut count = 1;
    if network::refused(
        cx,
        cur,
        "A connector or adapter is named, not read from a file.",
        "A join that was measured is a part of its own: `jumper J1 from \"j1.s2p\"`.",
    ) {
        return;
    }
    let example = match kind {
        PartKind::Connector => "connector 4 of n-pair",
        _ => "adapter 2 of n-to-uhf",
    };
    // `2m-adapter` is a name, `2 of` a number
    let counted = cur.at_value(cx)
        && (cur.atoms.get(cur.i + 1)).is_some_and(|a| cx.text(a.span) == "of")
        || kind == PartKind::Connector && cur.at_value(cx);
    if counted {
        let Some(v) = cur.val(cx) else { return };
        let Some(n) = self::count(cx, &v, example) else {
            return;
        };
        count = n;
        if !cur.eat(cx, "of") {
            missing(cx, cur, "`of` and the connector's name follow", example);
            return;
        }
    } else {
        cur.eat(cx, "of");
    }
    let Some(name) = cur.name(cx) else {
        missing(cx, cur, "the connector's name follows", example);
        return;
    };
    ends(cx, cur.stmt, cur, "a connector");
    part.data = PartData::Connector(count, Box::new(name));
}

/// A whole number of connectors or adapters.
pub(super) fn count(cx: &mut Cx<'_>, v: &Val, example: &str) -> Option<u32> {
    let v = &cx.alone(v, "a number of connectors");
    let m = cx.measure(v, Dim::Count, "a number of connectors", example)?;
    if m.value.fract() != 0.0 || !(0.0..=100.0).contains(&m.value) {
        cx.push(
            Diagnostic::new(
                &codes::IMPOSSIBLE_VALUE,
                v.loc,
                "A number of connectors is a whole number up to 100.",
            )
            .at("cannot be")
            .help(format!("Written for example `{example}`.")),
        );
        return None;
    }
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "checked to be 0 to 100"
    )]
    Some(m.value as u32)
}

/// `1.35 dB on 2m` inside a group.
pub(super) fn dated_loss<'a>(
    cx: &mut Cx<'a>,
    cur: &mut Cur<'a>,
    what: &str,
    example: &str,
) -> Option<Figure> {
    let Some(v) = cur.val(cx) else {
        missing(cx, cur, &format!("{what} follows"), example);
        return None;
    };
    let (m, percent) = cx.loss(&v, what)?;
    let mut q = Quals::default();
    while !cur.done() && q.take(cx, cur) {}
    (!q.broken).then(|| q.figure(m, v.loc, percent))
}

pub(super) fn place<'a>(cx: &Cx<'a>, cur: &mut Cur<'a>, places: &[Name]) -> Option<Name> {
    let w = cur.word(cx)?;
    places.iter().find(|p| &*p.text == w)?;
    cur.name(cx)
}

/// Takes the place of a part, which has one.
pub(super) fn one_place<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, place: &mut Option<Name>, p: Name) {
    match place {
        Some(first) if first.text != p.text => exclusive(
            cx,
            stmt,
            p.loc.span,
            (&first.text, first.loc),
            (
                "A part is in one place.",
                "If it runs through both, write one part for each place.",
            ),
        ),
        _ => *place = Some(p),
    }
}

/// Whether a figure stands in what is left of a group that could not be read.
pub(super) fn unread(cur: &Cur<'_>) -> bool {
    cur.atoms
        .get(cur.i..)
        .unwrap_or(&[])
        .iter()
        .any(|a| matches!(a.kind, AtomKind::Value(_)))
}

/// Reports a word that is neither a place nor anything else a part can have; whether it was most
/// likely meant as a place.
pub(super) fn unknown_place<'a>(
    cx: &mut Cx<'a>,
    cur: &Cur<'a>,
    places: &[Name],
    kind: PartKind,
    q: &Quals,
) -> bool {
    let own = own(Context::Chain, kind.word());
    let words: Vec<&str> = own.iter().chain(OF_FIGURES.iter()).copied().collect();
    // a lone word in its own group is most likely a place
    if cur.i == 0
        && cur.atoms.len() == 1
        && cur
            .word(cx)
            .is_some_and(|w| crate::cx::nearest(w, words.iter().copied()).is_none())
    {
        let loc = cx.loc(cur.next_span());
        let w = cx.text(loc.span);
        let message = format!("`{w}` is no place of this station.");
        // one missing place is one finding, however many parts are there
        if let Some(d) = cx
            .diags
            .iter_mut()
            .find(|d| d.code.id == codes::UNKNOWN_PLACE.id && d.message == message)
        {
            d.related.push(downlead_base::Label {
                loc,
                message: "also here".to_owned(),
            });
            return true;
        }
        let mut d = Diagnostic::new(&codes::UNKNOWN_PLACE, loc, message).at("not defined");
        d = match crate::cx::nearest(w, places.iter().map(|p| &*p.text)) {
            Some(n) => d
                .help(format!("Did you mean `{n}`?"))
                .fix(format!("write `{n}`"), loc, n),
            None => d.help(format!(
                "Define it in the station: `place {w} {{ temperature 15 °C }}`."
            )),
        };
        cx.push(d);
        return true;
    }
    let mut all = own.to_vec();
    all.extend(places.iter().map(|p| &*p.text));
    q.unexpected(cx, cur, &kind.with_article(), &all);
    false
}

pub(super) fn family_ends<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> Option<(Box<str>, Box<str>)> {
    let Some(a) = cur.name(cx) else {
        missing(
            cx,
            cur,
            "`ends` is followed by connector families",
            "ends n uhf",
        );
        return None;
    };
    let b = cur.name(cx).unwrap_or_else(|| a.clone());
    Some((a.text, b.text))
}

/// The first figure of a device, which means what its kind says.
fn main_figure<'a>(
    cx: &mut Cx<'a>,
    cur: &mut Cur<'a>,
    kind: PartKind,
    v: &Val,
    d: &mut Draft,
    figure: &mut Option<(Measure, bool, Loc)>,
) -> Option<()> {
    match kind {
        PartKind::Divider if v.q.dim == Dim::Count => {
            d.device.ways = ways(cx, v);
            d.broken |= d.device.ways.is_none();
            if !cur.eat(cx, "way") {
                cur.eat(cx, "ways");
            }
        }
        _ if kind.role() == Role::Active => {
            let m = cx.measure(v, Dim::Decibel, "an amplifier's gain", "13 dB gain")?;
            d.gain.push(Figure::always(m, v.loc));
            cur.eat(cx, "gain");
        }
        PartKind::Coupler if cur.word(cx) == Some("coupled") => {
            cur.i += 1;
            d.device.coupling = cx.loss(v, "a coupling").map(|m| m.0);
            d.broken |= d.device.coupling.is_none();
        }
        _ => {
            let (m, p) = cx.loss(v, &format!("the loss of {}", kind.with_article()))?;
            *figure = Some((m, p, v.loc));
        }
    }
    Some(())
}

/// Whether a loss can follow what the kind states first: the coupling, the number of ways.
fn second_loss(kind: PartKind, d: &Draft) -> bool {
    match kind {
        PartKind::Coupler => d.device.coupling.is_some(),
        PartKind::Divider => d.device.ways.is_some() || d.split.is_some() || d.device.tee,
        _ => false,
    }
}

/// A main line that loses half of the power, dB: of a coupler that does not say so, the figure is
/// its coupling (our choice).
const HALF_DB: f64 = 3.0;

/// Points out a coupling that is not said to be one: without `coupled` it is the loss of the main
/// line.
fn coupling_or_loss(cx: &mut Cx<'_>, d: &Draft, figure: Option<&(Measure, bool, Loc)>) {
    let Some((m, _, loc)) = figure.filter(|f| f.0.value >= HALF_DB) else {
        return;
    };
    if d.device.coupling.is_some() || d.device.class.is_some() {
        return;
    }
    let end = Loc::new(
        loc.item,
        downlead_base::Span::new(loc.span.end, loc.span.end),
    );
    let text = downlead_quantity::db(m.value);
    cx.push(
        Diagnostic::new(
            &codes::MISSING_VALUE,
            *loc,
            format!("A coupler's coupling is followed by `coupled`; without it {text} is what the main line loses."),
        )
        .at("coupled?")
        .help("Written for example `coupler CP1 20 dB coupled, 0.3 dB`. A main line that loses as much states its coupling too.")
        .fix("write `coupled`", end, " coupled")
        .preferred(),
    );
}

/// What the words of a device say so far.
struct Words<'p> {
    kind: PartKind,
    places: &'p [Name],
    d: Draft,
    q: Quals,
    file: network::Draft,
    /// The first figure: its value, whether it is in percent, and where it is written. Its meaning
    /// depends on the kind.
    figure: Option<(Measure, bool, Loc)>,
}

fn device<'a>(
    cx: &mut Cx<'a>,
    stmt: Stmt<'a>,
    skip: usize,
    kind: PartKind,
    places: &[Name],
    part: &mut Part,
) -> Option<Device> {
    let mut w = Words {
        kind,
        places,
        d: Draft {
            part: true,
            ..Draft::default()
        },
        q: Quals::warm(),
        file: network::Draft::default(),
        figure: None,
    };
    for (n, g) in stmt.groups().enumerate() {
        let mut cur = Cur::new(stmt, g);
        let first = n == 0;
        if first {
            cur.i = skip;
            w.head(cx, &mut cur)?;
        }
        while !cur.done() {
            if first && w.figure.is_none() && w.d.has_no_figure() && cur.at_value(cx) {
                // the main figure after a word: `isolator reversed 0.5 dB`
                let v = cur.val(cx)?;
                main_figure(cx, &mut cur, kind, &v, &mut w.d, &mut w.figure)?;
            } else if !w.next(cx, stmt, &mut cur, part) {
                w.d.broken |= unread(&cur);
                w.d.broken |= unknown_place(cx, &cur, places, kind, &w.q);
                break;
            }
        }
    }
    for s in stmt.block().into_iter().flat_map(|b| b.iter()) {
        // branch blocks belong to the chain, see `chain`
        if s.keyword() != Some("branch") {
            device_line(cx, s, &mut w.d, Some(kind));
        }
    }
    w.finish(cx, stmt, part)
}

impl Words<'_> {
    /// Reads `of NAME` and the main figure. None if the figure cannot be read.
    fn head<'a>(&mut self, cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> Option<()> {
        let had = cx.diags.len();
        if cur.eat(cx, "of") {
            self.d.device.class = cur.name(cx);
        }
        if let Some(v) = cur.val(cx) {
            main_figure(cx, cur, self.kind, &v, &mut self.d, &mut self.figure)
        } else {
            (cx.diags.len() == had).then_some(())
        }
    }

    /// Reads one word and what belongs to it. False if it is none of a device.
    fn next<'a>(
        &mut self,
        cx: &mut Cx<'a>,
        stmt: Stmt<'a>,
        cur: &mut Cur<'a>,
        part: &mut Part,
    ) -> bool {
        // a divider is no two-port
        let measured = self.kind != PartKind::Divider;
        if cur.eat(cx, "ends") {
            part.ends = family_ends(cx, cur).map(Box::new);
        } else if super::device::passes(cx, cur, &mut self.d.passes)
            || self.quantity(cx, cur)
            || self.of_kind(cx, cur)
        {
            // the next word
        } else if self.kind.has_direction() && !self.file.has_path() && cur.eat(cx, "reversed") {
            self.d.device.reversed = true;
        } else if (measured && self.file.take(cx, cur, Ports::Two))
            || network::refused(
                cx,
                cur,
                "A divider has more ports than a file of a chain can have.",
                "Say into how many ways it divides: `divider DV1 2 way, excess 0.3 dB`.",
            )
        {
            // the next word
        } else if self.figure.is_none() && second_loss(self.kind, &self.d) && cur.at_value(cx) {
            if let Some(v) = cur.val(cx) {
                let what = format!("the loss of {}", self.kind.with_article());
                self.figure = cx.loss(&v, &what).map(|(m, p)| (m, p, v.loc));
            }
            self.d.broken |= self.figure.is_none();
        } else if let Some(p) = place(cx, cur, self.places) {
            one_place(cx, stmt, &mut self.d.device.place, p);
        } else {
            return self.q.take(cx, cur);
        }
        true
    }

    /// Reads a figure that its word names.
    fn quantity<'a>(&mut self, cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> bool {
        let d = &mut self.d;
        if cur.eat(cx, "swr") {
            let v = cur.need(cx, "an SWR follows", "swr 1.3");
            let swr = v.and_then(|v| Some(Figure::always(cx.swr(&v)?, v.loc)));
            d.broken |= swr.is_none();
            d.swr.extend(swr);
        } else if cur.eat(cx, "return-loss") {
            let v = cur.need(cx, "a return loss follows", "return-loss 20 dB");
            let swr = v.and_then(|v| {
                let m = super::device::return_loss_to_swr(cx, &v)?;
                Some(Figure::always(m, v.loc))
            });
            d.broken |= swr.is_none();
            d.swr.extend(swr);
        } else if cur.eat(cx, "rating") {
            if let Some(v) = cur.need(cx, "a power follows", "rating 300 W") {
                d.device.rating = plain_rating(cx, &v).map(Box::new);
            }
        } else if cur.eat(cx, "isolation") {
            if let Some(v) = cur.need(cx, "an isolation follows", "isolation 40 dB") {
                d.device.isolation = cx.loss(&v, "an isolation").map(|m| m.0);
                d.isolation = Some(v.loc);
            }
            d.broken |= d.device.isolation.is_none();
        } else if cur.eat(cx, "excess") {
            d.excess
                .extend(dated_loss(cx, cur, "an excess loss", "excess 0.3 dB"));
        } else if cur.eat(cx, "noise") {
            d.device.noise_figure = noise_figure(cx, cur);
            d.broken |= d.device.noise_figure.is_none();
        } else {
            return false;
        }
        true
    }

    /// Reads what only some kinds have: the ratio of a balun, the split or tee of a divider, the
    /// place of a loss.
    fn of_kind<'a>(&mut self, cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> bool {
        let d = &mut self.d;
        let Some(w @ ("ratio" | "split" | "tee")) = cur.word(cx) else {
            return kinds::sits(cx, cur, &mut d.only, &mut d.device);
        };
        let at = cx.loc(cur.next_span());
        cur.i += 1;
        match w {
            "ratio" => kinds::ratio(cx, cur, at, d),
            "split" => kinds::split(cx, cur, at, d),
            _ => kinds::tee(at, d),
        }
        true
    }

    /// The device that the words describe; None if its file cannot be read.
    fn finish<'a>(mut self, cx: &mut Cx<'a>, stmt: Stmt<'a>, part: &mut Part) -> Option<Device> {
        let (kind, mut d, q) = (self.kind, self.d, self.q);
        d.device.temperature = q.at_temperature.map(Box::new);
        d.broken |= q.broken;
        if self.file.is_broken() {
            return None;
        }
        if self.file.has_path() && std::mem::take(&mut d.device.reversed) {
            self.file.reverse();
        }
        d.network.extend(self.file.finish(&q));
        if kind == PartKind::Coupler {
            coupling_or_loss(cx, &d, self.figure.as_ref());
        }
        let who = part.tag.as_ref().map_or(kind.word(), |t| &t.text);
        kinds::only_of_kind(cx, &mut d, kind, who);
        if kind == PartKind::Divider && d.device.ways.is_none() && d.device.class.is_none() {
            missing(
                cx,
                &Cur::new(stmt, super::head::first_group(stmt)),
                "a divider says into how many ways it divides",
                "divider DV1 2 way, excess 0.3 dB",
            );
        }
        if let Some((m, percent, loc)) = self.figure {
            d.loss.insert(
                0,
                Figure {
                    when: q.when(),
                    value: m,
                    meta: q.meta.clone().into(),
                    loc,
                    percent,
                },
            );
        } else if !q.on.is_empty() {
            for f in &mut d.gain {
                f.when = q.when();
            }
        }
        part.meta = q.meta.into();
        if d.meta.source.is_some() && part.meta.source.is_none() {
            part.meta = crate::model::Meta {
                source: d.meta.source.take(),
                ..(*part.meta).clone()
            }
            .into();
        }
        let head = Name {
            text: kind.word().into(),
            loc: part.loc,
        };
        let device = d.finish(head);
        contradictions(cx, &device, who);
        unused(cx, &device, kind, part.loc);
        Some(device)
    }
}

/// The kind of part a statement is, if it is one.
pub(super) fn kind_of(stmt: Stmt<'_>) -> Option<PartKind> {
    stmt.keyword().and_then(PartKind::from_word)
}
