//! Qualifiers: what follows a figure, joined by commas or plain words.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_quantity::{Dim, Measure};
use downlead_syntax::{AtomKind, Stmt};

use crate::cx::{Cur, Cx, Val};
use crate::keywords::Context;
use crate::lower::check::names_band;
use crate::model::{Basis, Bound, Figure, Meta, Name, When};
use crate::words::{OF_FIGURES, excludes, is_one_of, of_figures};

/// Common qualifiers as gathered from a statement.
pub(crate) struct Quals {
    pub(crate) meta: Meta,
    pub(crate) on: Vec<Name>,
    pub(crate) at_temperature: Option<Measure>,
    temperature: Option<Val>,
    /// Whether a temperature is used here.
    warm: bool,
    pub(crate) at_frequency: Option<f64>,
    /// Whether what follows `at` could not be read.
    pub(crate) broken: bool,
    pub(crate) said: Said,
    /// The words that have a meaning in the statement.
    takes: &'static [&'static str],
}

impl Default for Quals {
    fn default() -> Self {
        Quals {
            meta: Meta::default(),
            on: Vec::new(),
            at_temperature: None,
            temperature: None,
            warm: false,
            at_frequency: None,
            broken: false,
            said: Said::default(),
            takes: &OF_FIGURES,
        }
    }
}

impl Quals {
    /// Of something whose temperature takes part.
    pub(crate) fn warm() -> Self {
        Quals {
            warm: true,
            ..Quals::default()
        }
    }

    /// Those of a statement that does not take all that figures can have.
    pub(crate) fn of(context: Context, word: &str) -> Quals {
        Quals {
            takes: of_figures(context, word),
            ..Quals::default()
        }
    }

    /// Reads one qualifier at the cursor. False if there is none that the statement takes. One
    /// that an earlier word excludes is reported and left out.
    pub(crate) fn take<'a>(&mut self, cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> bool {
        let Some(atom) = cur.peek() else { return false };
        let word = match atom.kind {
            AtomKind::Str => "source",
            AtomKind::Date => "read",
            AtomKind::Word => cx.text(atom.span),
            _ => return false,
        };
        if !self.takes.contains(&word) {
            return false;
        }
        let excluded = atom.kind == AtomKind::Word && !self.said.note(cx, cur.stmt, atom.span);
        let kept = excluded.then(|| self.meta.clone());
        let taken = self.read(cx, cur);
        if let Some(meta) = kept {
            self.meta = meta;
        }
        taken
    }

    /// Says that what follows is not understood, with what may stand there: `own` words of the
    /// statement, and qualifiers.
    pub(crate) fn unexpected<'a>(
        &self,
        cx: &mut Cx<'a>,
        cur: &Cur<'a>,
        in_what: &str,
        own: &[&str],
    ) {
        let mut all: Vec<&str> = own.to_vec();
        all.extend(self.takes.iter().filter(|w| !own.contains(w)));
        all.retain(|w| !self.said.excluded(w));
        cur.unexpected(cx, in_what, &all);
    }

    fn read<'a>(&mut self, cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> bool {
        let Some(atom) = cur.peek() else { return false };
        match atom.kind {
            AtomKind::Str => self.meta.source = cur.string(cx),
            AtomKind::Date => self.meta.date = cur.date(cx),
            AtomKind::Word => return self.word(cx, cur, cx.text(atom.span)),
            _ => return false,
        }
        true
    }

    /// Reads what begins with this word; `false` if it is no qualifier.
    fn word<'a>(&mut self, cx: &mut Cx<'a>, cur: &mut Cur<'a>, word: &str) -> bool {
        match word {
            "on" | "typical" | "nominal" | "maximum" | "at" => self.when_it_holds(cx, cur, word),
            "rated" => self.basis(cur, Basis::Rated),
            "displayed" => self.basis(cur, Basis::Displayed),
            "guess" => self.basis(cur, Basis::Guess),
            "read" | "with" | "by" | "sheet" | "source" | "since" => {
                self.where_from(cx, cur, word);
            }
            // for the reader, and for the check of recorded readings (`evidence`)
            crate::evidence::CORRECTED => {
                cur.i += 1;
                if cur.string(cx).is_none_or(|s| s.trim().is_empty()) {
                    missing(
                        cx,
                        cur,
                        "the reason follows in quotes",
                        "corrected \"was 28.9 W: digits swapped\"",
                    );
                }
            }
            _ => return false,
        }
        true
    }

    /// Bands, conditions and bounds of the figure.
    fn when_it_holds<'a>(&mut self, cx: &mut Cx<'a>, cur: &mut Cur<'a>, word: &str) {
        let loc = cur.peek().map(|a| cx.loc(a.span));
        cur.i += 1;
        match word {
            "on" => self.on_bands(cx, cur),
            "maximum" => self.meta.bound = Some((Bound::Maximum, loc)),
            "at" => self.at(cx, cur),
            _ => self.meta.bound = Some((Bound::Typical, loc)),
        }
    }

    fn on_bands<'a>(&mut self, cx: &mut Cx<'a>, cur: &mut Cur<'a>) {
        let before = self.on.len();
        while let Some(n) = cur.name(cx) {
            self.on_band(cx, n);
            // `on 2m 70cm`: further names follow directly
            if !cur.peek().is_some_and(|a| match a.kind {
                AtomKind::Value(_) => !cx.text(a.span).contains(' '),
                AtomKind::Word => names_band(cx, cur.stmt, a),
                _ => false,
            }) {
                break;
            }
        }
        if self.on.len() == before && !frequency_after_on(cx, cur) {
            missing(cx, cur, "`on` is followed by a band", "on 2m");
        }
    }

    /// The temperature or frequency after `at`.
    fn at<'a>(&mut self, cx: &mut Cx<'a>, cur: &mut Cur<'a>) {
        match cur.val(cx) {
            Some(v) if v.q.dim == Dim::Frequency => {
                self.at_frequency = cx.frequency(&v, "a frequency");
                self.broken |= self.at_frequency.is_none();
            }
            Some(v) if !self.warm && v.q.dim == Dim::Temperature => {
                cold(cx, &v);
            }
            Some(v) if !self.warm && v.q.dim == Dim::Count => {
                // of what no temperature changes only a frequency is meant
                self.at_frequency = cx.frequency(&v, "a frequency");
                self.broken = true;
            }
            Some(v) => {
                self.at_temperature = cx.temperature(&v);
                self.broken |= self.at_temperature.is_none();
                self.temperature = self.at_temperature.map(|_| v);
            }
            None => {
                self.broken = true;
                missing(
                    cx,
                    cur,
                    "`at` is followed by a temperature or frequency",
                    "at 20 °C",
                );
            }
        }
    }

    /// Who read the figure, with what, when; or the document that states it.
    fn where_from<'a>(&mut self, cx: &mut Cx<'a>, cur: &mut Cur<'a>, word: &str) {
        cur.i += 1;
        match word {
            "read" => {
                self.meta.basis = Basis::Read;
                if let Some(d) = cur.date(cx) {
                    self.meta.date = Some(d);
                }
            }
            "with" => match cur.name(cx) {
                Some(n) => self.meta.instrument = Some(Box::new(n)),
                None => missing(cx, cur, "`with` is followed by the instrument", "with W1"),
            },
            "by" => match cur.name(cx).map(|n| n.text).or_else(|| cur.string(cx)) {
                Some(person) => self.meta.person = Some(person),
                None => missing(cx, cur, "`by` is followed by who read it", "by QY2TEC"),
            },
            "since" => match cur.date(cx) {
                Some(d) => self.meta.since = Some(d),
                None => missing(cx, cur, "`since` is followed by a date", "since 2026-06"),
            },
            _ => {
                if word == "sheet" {
                    self.meta.basis = Basis::Sheet;
                }
                match cur.string(cx) {
                    Some(s) => self.meta.source = Some(s),
                    None => missing(
                        cx,
                        cur,
                        "the document and page follow in quotes",
                        "sheet \"AN-7 p. 2\"",
                    ),
                }
            }
        }
    }

    /// Adds a band on which the figure holds.
    fn on_band(&mut self, cx: &mut Cx<'_>, band: Name) {
        if let Some(first) = self.on.iter().find(|b| b.text == band.text) {
            return said_twice(cx, &band, first.loc);
        }
        self.on.push(band);
    }

    fn basis(&mut self, cur: &mut Cur<'_>, b: Basis) {
        cur.i += 1;
        self.meta.basis = b;
    }

    /// The temperature as one figure, °C, where an uncertainty of it would not be used.
    pub(crate) fn at_temperature_alone(&self, cx: &mut Cx<'_>, what: &str) -> Option<f64> {
        let v = cx.alone(&self.temperature?, what);
        Some(v.q.value)
    }

    /// Where the figure holds.
    pub(crate) fn when(&self) -> When {
        if let Some(f) = self.at_frequency {
            When::At(f)
        } else if self.on.is_empty() {
            When::Always
        } else {
            When::Bands(self.on.clone().into())
        }
    }

    /// A figure of this value.
    pub(crate) fn figure(self, value: Measure, loc: Loc, percent: bool) -> Figure {
        Figure {
            when: self.when(),
            value,
            meta: self.meta.into(),
            loc,
            percent,
        }
    }
}

/// Words read so far of which a figure, or a statement, has one.
#[derive(Default)]
pub(crate) struct Said(Vec<(Box<str>, Loc)>);

impl Said {
    /// Notes a word. False, and reported, if an earlier one excludes it.
    pub(crate) fn note<'a>(&mut self, cx: &mut Cx<'a>, stmt: Stmt<'a>, word: Span) -> bool {
        let text = cx.text(word);
        let first = self
            .0
            .iter()
            .find_map(|(w, loc)| Some((w.clone(), *loc, excludes(w, text)?)));
        let Some((earlier, loc, group)) = first else {
            if is_one_of(text) {
                self.0.push((text.into(), cx.loc(word)));
            }
            return true;
        };
        exclusive(cx, stmt, word, (&earlier, loc), (group.rule, group.instead));
        false
    }

    /// Whether a word read so far excludes this one.
    pub(crate) fn excluded(&self, word: &str) -> bool {
        self.0.iter().any(|(w, _)| excludes(w, word).is_some())
    }
}

/// Reports a word that an earlier one excludes: `rule` says why, `instead` what to write.
pub(crate) fn exclusive<'a>(
    cx: &mut Cx<'a>,
    stmt: Stmt<'a>,
    word: Span,
    (earlier, first): (&str, Loc),
    (rule, instead): (&str, &str),
) {
    let text = cx.text(word);
    let loc = cx.loc(word);
    let mut d = Diagnostic::new(
        &codes::WORDS_EXCLUDE,
        loc,
        format!("{rule} `{earlier}` and `{text}` exclude each other."),
    )
    .at(format!("excluded by `{earlier}`"))
    .also(first, format!("`{earlier}` stands here"))
    .help(format!("Remove one of them. {instead}"));
    for (w, at) in [(text, loc), (earlier, first)] {
        // with `sheet` and `read` goes what follows them: that is for the author to decide
        if !matches!(w, "sheet" | "read")
            && let Some(gone) = without(stmt, at.span)
        {
            d = d.fix(format!("remove `{w}`"), cx.loc(gone), "");
        }
    }
    cx.push(d);
}

/// What goes with a word that is removed from a statement: the blank or comma before it, or the
/// blank after it where it begins a group. None if it says what the statement is about.
fn without(stmt: Stmt<'_>, word: Span) -> Option<Span> {
    let atoms = stmt.atoms();
    let i = atoms
        .iter()
        .position(|a| a.span == word)
        .filter(|i| *i > 1)?;
    let comma = |a: usize| {
        let gap = Span::new(atoms[a].span.end, atoms[a + 1].span.start);
        stmt.slice(gap).contains(',')
    };
    Some(match atoms.get(i + 1) {
        Some(next) if comma(i - 1) && !comma(i) => Span::new(word.start, next.span.start),
        _ => Span::new(atoms[i - 1].span.end, word.end),
    })
}

/// Says that a name stands in a list already.
pub(crate) fn said_twice(cx: &mut Cx<'_>, again: &Name, first: Loc) {
    cx.push(
        Diagnostic::new(
            &codes::SAID_TWICE,
            again.loc,
            format!("`{}` is said twice.", again.text),
        )
        .at("again here")
        .also(first, "first here")
        .help("Remove one of them."),
    );
}

/// `on 100 MHz`: a figure holds on bands, or at a frequency. False if no frequency stands there.
fn frequency_after_on<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> bool {
    let at = cur.i;
    let had = cx.diags.len();
    let hertz = cur.val(cx).filter(|v| v.q.dim == Dim::Frequency);
    let Some(v) = hertz else {
        cx.diags.truncate(had);
        cur.i = at;
        return false;
    };
    let text = cx.text(v.loc.span);
    let word = cx.loc(cur.atoms[at - 1].span);
    cx.push(
        Diagnostic::new(
            &codes::UNEXPECTED_WORD,
            v.loc,
            format!("`on` is followed by the name of a band, and `{text}` is a frequency."),
        )
        .at("no band")
        .help(format!("Name it: `band b1 {text}`, and write `on b1`. At a frequency a figure is one of a table, `at {text}`."))
        .fix("write `at`", word, "at"),
    );
    true
}

/// Says that a temperature is not used.
fn cold(cx: &mut Cx<'_>, v: &Val) {
    cx.push(
        Diagnostic::new(
            &codes::UNEXPECTED_WORD,
            v.loc,
            "No result would use this temperature.",
        )
        .at("not used")
        .help("A run, a jumper, a tail, a device and the loss of a cable have one; a rating says `ambient 40 °C`."),
    );
}

/// Points out figures of one thing that hold at once and differ: only the first is used.
pub(crate) fn twice<'f>(
    cx: &mut Cx<'_>,
    what: &str,
    figures: impl IntoIterator<Item = &'f Figure>,
    show: fn(f64) -> String,
) {
    let figures: Vec<&Figure> = figures.into_iter().collect();
    for (i, f) in figures.iter().enumerate() {
        let Some(first) = figures[..i].iter().find(|g| meet(&g.when, &f.when)) else {
            continue;
        };
        let (a, b) = (first.value.value, f.value.value);
        // a rounded return loss and a rounded SWR that mean the same are no contradiction
        if (a - b).abs() <= 0.02 * a.abs().max(b.abs()) {
            continue;
        }
        cx.push(
            Diagnostic::new(
                &codes::FIGURE_TWICE,
                f.loc,
                format!(
                    "{what} is given twice, {} and {}; the first is used.",
                    show(a),
                    show(b)
                ),
            )
            .at("again here")
            .also(first.loc, "first here")
            .help("Remove one of them, or say with `on` on which band each holds."),
        );
    }
}

/// Whether two figures hold at once.
pub(crate) fn meet(a: &When, b: &When) -> bool {
    match (a, b) {
        (When::Always, When::Always) => true,
        (When::Bands(x), When::Bands(y)) => x.iter().any(|n| y.iter().any(|m| n.text == m.text)),
        (When::At(x), When::At(y)) => x == y,
        _ => false,
    }
}

/// Says what is left over of a line behind its value; of qualifiers, those that every figure can
/// have may stand there.
pub(crate) fn rest<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, cur: &mut Cur<'a>, what: &str) {
    let mut q = Quals::default();
    let mut left = |cx: &mut Cx<'a>, cur: &mut Cur<'a>| {
        while !cur.done() {
            if !q.take(cx, cur) {
                q.unexpected(cx, cur, what, &[]);
                return;
            }
        }
    };
    left(cx, cur);
    // a cursor over the whole line has seen the other groups
    if cur.atoms.len() < s.atoms().len() {
        for g in s.groups().skip(1) {
            left(cx, &mut Cur::new(s, g));
        }
    }
}

/// Says what is left over of a line that ends at the cursor, which is over its first group or all
/// of it.
pub(crate) fn ends<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, cur: &Cur<'a>, what: &str) {
    if !cur.done() {
        cur.unexpected(cx, what, &[]);
    } else if cur.atoms.len() < s.atoms().len()
        && let Some(g) = s.groups().nth(1)
    {
        Cur::new(s, g).unexpected(cx, what, &[]);
    }
}

/// Says that a figure or name is missing at the cursor.
pub(crate) fn missing(cx: &mut Cx<'_>, cur: &Cur<'_>, what: &str, example: &str) {
    // a broken line has its own message already, and so has one whose value cannot be computed
    let line = cur.stmt.head_span();
    let said = |d: &Diagnostic| {
        line.start <= d.primary.loc.span.start && d.primary.loc.span.end <= line.end
    };
    if cur.stmt.is_broken()
        || cur.atoms.iter().any(|a| matches!(a.kind, AtomKind::Error))
        || cx.diags.iter().any(said)
    {
        return;
    }
    let loc = cx.loc(cur.next_span());
    let loc = if loc.span.is_empty() && loc.span.start > 0 {
        cx.loc(cur.stmt.head_span())
    } else {
        loc
    };
    cx.push(
        Diagnostic::new(
            &codes::MISSING_VALUE,
            loc,
            format!("{}.", crate::cx::capital(what)),
        )
        .at("something is missing")
        .help(format!("Written for example `{example}`.")),
    );
}
