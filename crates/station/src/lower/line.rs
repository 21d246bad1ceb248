//! Parts that are lines: a length of cable, a stated loss, or the file of a measured line.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::{Dim, Measure, number, sig};
use downlead_syntax::{AtomKind, Stmt};

use super::device::none;
use super::head::meant;
use super::network::{self, Ports};
use super::part::{dated_loss, family_ends, one_place, place, unknown_place, unread};
use crate::cx::{Cur, Cx, Val};
use crate::model::{Figure, Line, LineLength, List, Name, Part, PartKind};
use crate::quals::{Quals, missing, twice};

/// What a line says, as it is read.
struct Draft<'p> {
    kind: PartKind,
    places: &'p [Name],
    line: Line,
    quals: Quals,
    /// A loss in the place of length and cable; whether it is a percentage, and its place.
    fixed: Option<(Measure, bool, Loc)>,
    /// Whether its figures may come from a file; a piece on the bench has readings of its own.
    from_file: bool,
    file: network::Draft,
    files: Vec<crate::model::NetworkFile>,
    losses: Vec<Figure>,
    swrs: Vec<Figure>,
    added: Vec<Figure>,
    wet: Vec<Figure>,
}

/// Length and cable of a line. `connectors` takes those that come with a piece on the bench.
pub(super) fn line<'a>(
    cx: &mut Cx<'a>,
    stmt: Stmt<'a>,
    skip: usize,
    kind: PartKind,
    places: &[Name],
    part: &mut Part,
    mut connectors: Option<&mut Vec<(u32, Name)>>,
) -> Option<Line> {
    let mut draft = Draft {
        kind,
        places,
        line: Line {
            length: None,
            length_loc: part.loc,
            imperial: false,
            cable: None,
            loss: List::default(),
            network: List::default(),
            place: None,
            temperature: None,
            swr: List::default(),
            added: List::default(),
            wet: List::default(),
            broken: false,
        },
        quals: Quals::warm(),
        fixed: None,
        from_file: kind != PartKind::Piece,
        file: network::Draft::default(),
        files: Vec::new(),
        losses: Vec::new(),
        swrs: Vec::new(),
        added: Vec::new(),
        wet: Vec::new(),
    };
    for (n, g) in stmt.groups().enumerate() {
        let mut cur = Cur::new(stmt, g);
        if n == 0 {
            cur.i = skip;
            draft.begin(cx, stmt, &mut cur)?;
        }
        while !cur.done() && draft.word(cx, stmt, &mut cur, part, connectors.as_deref_mut()) {}
    }
    for s in stmt.block().into_iter().flat_map(|b| b.iter()) {
        draft.inner(cx, s);
    }
    draft.finish(cx, part)
}

impl Draft<'_> {
    /// Length and cable, a loss, or neither where a file or the block states the figures.
    fn begin<'a>(&mut self, cx: &mut Cx<'a>, stmt: Stmt<'a>, cur: &mut Cur<'a>) -> Option<()> {
        let kind = self.kind;
        let had = cx.diags.len();
        let in_block = || {
            stmt.block().is_some_and(|b| {
                b.iter()
                    .any(|s| matches!(s.keyword(), Some("from" | "loss")))
            })
        };
        if self.from_file && (cur.word(cx) == Some("from") || cur.done() && in_block()) {
            return Some(());
        }
        if let Some(v) = cur.val(cx) {
            if matches!(
                v.q.dim,
                Dim::Decibel | Dim::Percent | Dim::GainDipole | Dim::GainIsotropic
            ) {
                let (m, p) = cx.loss(&v, &format!("the loss of {}", kind.with_article()))?;
                self.fixed = Some((m, p, v.loc));
                return Some(());
            }
            return self.length_of_cable(cx, cur, &v);
        }
        if self.from_file && from_misspelt(cx, cur) {
            cur.unexpected(cx, &kind.with_article(), &["from"]);
        } else if cx.diags.len() == had {
            missing(
                cx,
                cur,
                &format!("a {} needs a length and a cable, or a loss", kind.word()),
                &format!("{} M1 46 m of half-inch-foam", kind.word()),
            );
        }
        None
    }

    /// `28 m of half-inch-foam`, after its length was read.
    fn length_of_cable<'a>(&mut self, cx: &mut Cx<'a>, cur: &mut Cur<'a>, v: &Val) -> Option<()> {
        let l = &mut self.line;
        l.length = length(cx, v, self.kind);
        l.length_loc = v.loc;
        l.imperial = v.imperial;
        l.length?;
        if cur.word(cx) == Some("at") {
            cut_at(cx, cur, l);
        }
        if cur.eat(cx, "of") {
            l.cable = cur.name(cx);
        }
        if l.cable.is_none()
            && (cx.without_of(cur.atoms, cur.i, self.kind.word())
                || cx.cable_first(cur.atoms, cur.i - 1))
        {
            return None;
        }
        if l.cable.is_none() {
            missing(
                cx,
                cur,
                "`of` and the cable's name follow the length",
                &format!("{} 28 m of half-inch-foam", self.kind.word()),
            );
            return None;
        }
        Some(())
    }

    /// Reads what begins at the cursor; `false` if nothing that may stand there does.
    fn word<'a>(
        &mut self,
        cx: &mut Cx<'a>,
        stmt: Stmt<'a>,
        cur: &mut Cur<'a>,
        part: &mut Part,
        connectors: Option<&mut Vec<(u32, Name)>>,
    ) -> bool {
        let l = &mut self.line;
        if cur.eat(cx, "added") {
            let loss = dated_loss(cx, cur, "an added loss", "added 1.35 dB on 2m");
            l.broken |= loss.is_none();
            self.added.extend(loss);
        } else if cur.eat(cx, "wet") {
            self.wet
                .extend(dated_loss(cx, cur, "a loss when wet", "wet 0.5 dB"));
        } else if cur.eat(cx, "ends") {
            part.ends = family_ends(cx, cur).map(Box::new);
        } else if matches!(cur.word(cx), Some("swr" | "return-loss")) {
            let return_loss = cur.eat(cx, "return-loss") || !cur.eat(cx, "swr");
            let swr = dated_swr(cx, cur, return_loss);
            l.broken |= swr.is_none();
            self.swrs.extend(swr);
        } else if self.from_file && self.file.take(cx, cur, Ports::Two) {
            // the next word
        } else if let Some(list) = connectors
            && (cur.eat(cx, "connector") || cur.eat(cx, "adapter"))
        {
            list.extend(super::session::counted(cx, cur, "connector 2 of n-pair"));
        } else if let Some(p) = place(cx, cur, self.places) {
            one_place(cx, stmt, &mut l.place, p);
        } else if !self.quals.take(cx, cur) {
            l.broken |= unread(cur);
            l.broken |= unknown_place(cx, cur, self.places, self.kind, &self.quals);
            return false;
        }
        true
    }

    /// A line of the block.
    fn inner<'a>(&mut self, cx: &mut Cx<'a>, s: Stmt<'a>) {
        let broken = &mut self.line.broken;
        match s.keyword() {
            Some("loss") => {
                let loss = super::device::loss_figure(cx, s, 1, "a loss", &mut none);
                *broken |= loss.is_none();
                self.losses.extend(loss);
            }
            Some(w @ ("swr" | "return-loss")) => {
                let swr = super::device::swr_figure(cx, s, 1, w == "return-loss");
                *broken |= swr.is_none();
                self.swrs.extend(swr);
            }
            Some("from") if self.from_file => {
                let file = network::statement(cx, s, 0, "a line", Ports::Two, &mut none);
                *broken |= file.is_none();
                self.files.extend(file);
            }
            Some(w) => {
                *broken |= meant(w, &["loss", "swr", "return-loss", "from"]);
                super::unknown_statement(cx, s, w, crate::keywords::Context::Device);
            }
            None => super::no_keyword(cx, s, crate::keywords::Context::Device),
        }
    }

    fn finish(mut self, cx: &mut Cx<'_>, part: &mut Part) -> Option<Line> {
        // `run 0.25 wavelengths of rg-213, at 145 MHz` says the same
        if let Some(LineLength::Wavelengths { at_hz, .. }) = &mut self.line.length {
            *at_hz = at_hz.or(self.quals.at_frequency);
        }
        self.line.temperature = self.quals.at_temperature.map(Box::new);
        self.line.broken |= self.quals.broken;
        if let Some((m, percent, loc)) = self.fixed {
            self.losses.push(Figure {
                when: self.quals.when(),
                value: m,
                meta: self.quals.meta.clone().into(),
                loc,
                percent,
            });
        }
        if self.file.is_broken() {
            return None;
        }
        self.files
            .extend(std::mem::take(&mut self.file).finish(&self.quals));
        part.meta = std::mem::take(&mut self.quals.meta).into();
        let who = part.tag.as_ref().map_or(self.kind.word(), |t| &t.text);
        self.stated_twice(cx, who);
        let mut l = self.line;
        l.loss = self.losses.into();
        l.network = self.files.into();
        l.swr = self.swrs.into();
        l.added = self.added.into();
        l.wet = self.wet.into();
        Some(l)
    }

    /// Points out what is stated in two ways, and says which of them counts.
    fn stated_twice(&self, cx: &mut Cx<'_>, who: &str) {
        network::twice(
            cx,
            &format!("The loss of `{who}`"),
            &self.files,
            &self.losses,
        );
        network::twice(cx, &format!("The SWR of `{who}`"), &self.files, &self.swrs);
        twice(
            cx,
            &format!("The SWR of `{who}`"),
            &self.swrs,
            super::device::swr_words,
        );
        if self.line.length.is_some() {
            self.beside_a_cable(cx, who);
        }
        for (what, figures) in [
            ("loss", &self.losses),
            ("added loss", &self.added),
            ("loss when wet", &self.wet),
        ] {
            twice(
                cx,
                &format!("The {what} of `{who}`"),
                figures,
                downlead_quantity::db,
            );
        }
    }

    /// A file or a loss beside length and cable.
    fn beside_a_cable(&self, cx: &mut Cx<'_>, who: &str) {
        let cable = self.line.length_loc;
        if let Some(f) = self.files.first() {
            cx.push(
                Diagnostic::new(
                    &codes::FIGURE_TWICE,
                    cable,
                    format!("The loss of `{who}` is given twice, by its cable and by `{}`; the file is used.", f.path.text),
                )
                .at("not used")
                .also(f.path.loc, "the file")
                .help("Remove one of them."),
            );
        }
        if let Some(f) = self.losses.first() {
            cx.push(
                Diagnostic::new(
                    &codes::FIGURE_TWICE,
                    f.loc,
                    format!(
                        "The loss of `{who}` is given twice, by its cable and here; the cable is used."
                    ),
                )
                .at("not used")
                .also(cable, "the cable and its length")
                .help(
                    "Remove one of them. What a cable loses beyond its table is `added 1.35 dB on 2m`.",
                ),
            );
        }
    }
}

/// Whether a word that is nearly `from` and a path stand at the cursor.
pub(super) fn from_misspelt<'a>(cx: &Cx<'a>, cur: &Cur<'a>) -> bool {
    cur.word(cx)
        .is_some_and(|w| crate::cx::nearest(w, ["from"].into_iter()).is_some())
        && cur
            .atoms
            .get(cur.i + 1)
            .is_some_and(|a| a.kind == AtomKind::Str)
}

/// `1.3 on 2m` after `swr`, `20 dB on 2m` after `return-loss`, inside a group.
fn dated_swr<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>, return_loss: bool) -> Option<Figure> {
    let v = if return_loss {
        cur.need(cx, "a return loss follows", "return-loss 20 dB")?
    } else {
        cur.need(cx, "an SWR follows", "swr 1.3")?
    };
    let m = if return_loss {
        super::device::return_loss_to_swr(cx, &v)?
    } else {
        cx.swr(&v)?
    };
    let mut q = Quals::default();
    while !cur.done() && q.take(cx, cur) {}
    (!q.broken).then(|| q.figure(m, v.loc, false))
}

/// A feed line is at most so long, m: of the largest line 100 km lose more than 100 dB at 1 MHz already
/// (our choice).
const LONGEST_M: f64 = 100e3;

fn length(cx: &mut Cx<'_>, v: &Val, kind: PartKind) -> Option<LineLength> {
    let what = format!("a {}'s length", kind.word());
    let electrical = |length| LineLength::Wavelengths {
        length,
        at_hz: None,
    };
    match v.q.dim {
        Dim::Wavelengths => cx
            .positive(v, Dim::Wavelengths, &what, "0.25 wavelengths")
            .map(electrical),
        Dim::Angle => cx
            .positive(v, Dim::Angle, &what, "90°")
            .map(|m| electrical(m.scaled(1.0 / 360.0))),
        Dim::Length => {
            let m = cx.measure(v, Dim::Length, &what, "46 m")?;
            cx.within_bounds(v, &m, 0.0, &what);
            if m.value < 0.0 || v.q.value < 0.0 {
                let d =
                    Diagnostic::new(&codes::IMPOSSIBLE_VALUE, v.loc, "A length is not negative.")
                        .at("negative");
                cx.push(d);
                return None;
            }
            if m.value > LONGEST_M {
                let d = Diagnostic::new(
                    &codes::IMPOSSIBLE_VALUE,
                    v.loc,
                    format!(
                        "A {} of {} km is no feed line; one has at most {} km.",
                        kind.word(),
                        sig(m.value / 1e3, 3),
                        number(LONGEST_M / 1e3, 0)
                    ),
                )
                .at("cannot be")
                .help("Look at the unit of the length: `46 m`, `151 ft`.");
                cx.push(d);
                return None;
            }
            Some(LineLength::Metres(m))
        }
        _ => {
            cx.wrong_kind(
                v,
                &[Dim::Length],
                &what,
                &format!("{} 46 m of half-inch-foam", kind.word()),
            );
            None
        }
    }
}

/// `at 145 MHz` after a length: the frequency at which it is so many wavelengths.
fn cut_at<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>, l: &mut Line) {
    const EXAMPLE: &str = "jumper 0.25 wavelengths at 145 MHz of rg-213";
    let at = cx.loc(cur.next_span());
    cur.i += 1;
    let Some(v) = cur.need(cx, "the frequency it is cut for follows", EXAMPLE) else {
        l.broken = true;
        return;
    };
    // a temperature in its place is no more read than a wrong frequency
    l.broken |= v.q.dim == Dim::Temperature;
    if v.q.dim == Dim::Temperature {
        cx.push(
            Diagnostic::new(
                &codes::UNEXPECTED_WORD,
                v.loc,
                "A temperature follows the cable, after a comma.",
            )
            .at("not here")
            .help("Written for example `run 28 m of half-inch-foam, at 15 °C`."),
        );
        return;
    }
    let Some(hz) = cx.frequency(&v, "the frequency a line is cut for") else {
        l.broken = true;
        return;
    };
    match &mut l.length {
        Some(LineLength::Wavelengths { at_hz, .. }) => *at_hz = Some(hz),
        _ => {
            let loc = Loc::new(at.item, at.span.join(v.loc.span));
            cx.push(
                Diagnostic::new(
                    &codes::UNEXPECTED_WORD,
                    loc,
                    "This length is the same at every frequency; only one in wavelengths or degrees is cut for one.",
                )
                .at("not used")
                .fix("remove it", loc, ""),
            );
        }
    }
}
