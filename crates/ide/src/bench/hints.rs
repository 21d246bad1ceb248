//! Hints in sessions and at logs: what each reading, piece and table comes to.

use downlead_base::Loc;
use downlead_eval::bench::result::{BenchCell, BenchRow, SessionResult};
use downlead_eval::result::measure::{Direction, Trend};
use downlead_eval::result::{BandResult, LogResult, LogRow, LogTrend, Logged, Verdict};
use downlead_quantity::{db, decibel_signed, number, power, to_db};
use downlead_station::Env;
use downlead_station::session::{Import, ReadingKind, Session};
use rustc_hash::{FxHashMap, FxHashSet};

use downlead_report::words::figure::with_uncertainty;

use downlead_report::shape::bench::VerdictCounts;

use super::words::{self, counted};
use crate::config::{Config, HintDetails};
use crate::inlay::LabelPart;
use crate::markdown::Writer;
use crate::status::Status;
use crate::view::View;
use crate::words::{or_not_known, padded, plus_minus, two_places};

/// What is shown at the end of a line.
pub(crate) struct Shown {
    /// The statement.
    pub(crate) loc: Loc,
    /// The hint.
    pub(crate) parts: Vec<LabelPart>,
    /// More about it, as far as it is wanted now; empty if later.
    pub(crate) tooltip: Option<String>,
    /// What it says of the statement, if it judges.
    pub(crate) status: Option<Status>,
}

/// A session, seen for its hints.
struct Look<'a, 's> {
    view: &'a View<'s>,
    c: &'a Config,
    s: &'a Session,
    r: &'a SessionResult,
    env: Option<&'a Env>,
    /// Readings that count, of cells that have more than one.
    counting: FxHashSet<(usize, Loc)>,
}

/// The hints at the lines of a session for which `wanted` holds, in the order of the text.
pub(crate) fn of_session(
    view: &View<'_>,
    c: &Config,
    s: &Session,
    r: &SessionResult,
    env: Option<&Env>,
    wanted: &dyn Fn(Loc) -> bool,
) -> Vec<Shown> {
    let rows: Vec<&BenchRow> = r
        .rows
        .iter()
        .filter(|x| wanted(x.loc) && c.shows(&r.bands[x.band].band))
        .collect();
    let cells: FxHashSet<usize> = rows.iter().filter_map(|x| x.cell).collect();
    let several = cells
        .into_iter()
        .filter_map(|i| Some((i, r.cells.get(i).filter(|c| c.rows.len() > 1)?)));
    let look = Look {
        view,
        c,
        s,
        r,
        env,
        counting: several
            .flat_map(|(i, c)| c.rows.iter().map(move |l| (i, *l)))
            .collect(),
    };
    let mut out = Vec::new();
    if wanted(r.loc) {
        out.extend(look.head());
    }
    for (i, p) in r.pieces.iter().enumerate() {
        if wanted(p.loc) {
            out.extend(look.piece(i));
        }
        for (loc, length, tape) in &p.lengths {
            if wanted(*loc) {
                out.push(look.length(*loc, length.metres, length.u_metres, tape.as_ref()));
            }
        }
    }
    out.extend(rows.into_iter().filter_map(|row| look.row(row)));
    look.groups(wanted, &mut out);
    let shown: Vec<&Import> = s.imports.iter().filter(|i| wanted(i.loc)).collect();
    if !shown.is_empty() {
        let by_import = look.by_import();
        out.extend(shown.into_iter().filter_map(|i| look.import(i, &by_import)));
    }
    out.sort_by_key(|x| x.loc.span.start);
    out
}

/// Words of a tooltip, as far as they are wanted now.
fn tip(c: &Config, words: impl FnOnce() -> String) -> Option<String> {
    match c.hint_details {
        HintDetails::Now => Some(words()),
        HintDetails::Later => Some(String::new()),
        HintDetails::Never => None,
    }
}

fn part(text: String, tooltip: Option<String>) -> LabelPart {
    LabelPart {
        text,
        tooltip,
        target: None,
    }
}

impl Look<'_, '_> {
    fn derived(&self, c: &BenchCell) -> Option<String> {
        tip(self.c, || {
            let mut w = Writer::new(self.view, self.c.markdown);
            w.derivation(&self.r.derivation(c));
            w.finish().0
        })
    }

    fn lines(&self, all: impl FnOnce() -> Vec<String>) -> Option<String> {
        tip(self.c, || {
            all().join(if self.c.markdown { "  \n" } else { "\n" })
        })
    }

    /// A label that leads to a piece.
    fn to_piece(&self, text: String, piece: usize) -> LabelPart {
        LabelPart {
            target: self.view.place(self.r.pieces[piece].tag),
            ..part(text, None)
        }
    }

    /// At the session's head: who loses least.
    fn head(&self) -> Option<Shown> {
        let r = self.r;
        let band = words::telling_band(r)?;
        let b = &r.bands[band];
        let mut parts = vec![part(format!("per 100 m on {}: ", b.band), None)];
        let mut last = None;
        for (cell, group) in &b.ranking {
            let between = match last {
                None => "",
                Some(g) if g == *group => " = ",
                Some(_) => " < ",
            };
            if !between.is_empty() {
                parts.push(part(between.to_owned(), None));
            }
            let piece = r.cells[*cell].piece;
            parts.push(self.to_piece(r.pieces[piece].name.to_string(), piece));
            last = Some(*group);
        }
        Some(Shown {
            loc: r.loc,
            parts,
            tooltip: self.lines(|| {
                let mut lines = vec![
                    format!(
                        "{} in all",
                        downlead_report::build::bench::counts(r.cells.iter()).words()
                    ),
                    "loss per 100 m, dB, least first; pieces that cannot be distinguished are equal:"
                        .to_owned(),
                ];
                lines.extend((0..r.bands.len()).filter_map(|i| {
                    let list = words::ranking(r, i, true);
                    (!list.is_empty()).then(|| format!("{}: {list}", r.bands[i].band))
                }));
                lines
            }),
            status: None,
        })
    }

    /// At a piece: what it is over all bands, and what 100 m of it lose.
    fn piece(&self, index: usize) -> Option<Shown> {
        let (r, p) = (self.r, &self.r.pieces[index]);
        let cells = || r.cells.iter().filter(move |c| c.piece == index);
        let n = downlead_report::build::bench::counts(cells());
        let mut text = Vec::new();
        // the verdict first: what does not fit is in the tooltip
        if n.all() > 0 {
            text.push(of_bands(n));
        }
        if let Some(w) = &p.whole {
            text.push(words::whole(w));
        }
        let best = cells().filter(|c| c.per_length.is_some()).max_by(|a, b| {
            let key = |c: &BenchCell| (c.per_length.is_some_and(|x| x.trusted), r.bands[c.band].hz);
            let (x, y) = (key(a), key(b));
            x.0.cmp(&y.0).then(x.1.total_cmp(&y.1))
        });
        if let Some((c, x)) = best.and_then(|c| Some((c, c.per_length?))) {
            text.push(format!(
                "{} on {}",
                words::per_100m(x.db_per_m, x.u_db_per_m),
                r.bands[c.band].band
            ));
        }
        if text.is_empty() {
            return None;
        }
        Some(Shown {
            loc: p.loc,
            // pieces, so that the last ones can be left out where the line is long
            parts: (text.iter().enumerate())
                .map(|(i, t)| part(format!("{}{t}", if i > 0 { "; " } else { "" }), None))
                .collect(),
            tooltip: self.lines(|| {
                let whole = p.whole.as_ref();
                let whole = whole.map(|w| format!("{}{}", words::whole(w), words::scatters(w)));
                whole
                    .into_iter()
                    .chain(cells().map(|c| {
                        format!(
                            "{}: {} measured, {}",
                            words::band_in_words(&r.bands[c.band].band, r.bands[c.band].hz),
                            db(c.measured.db),
                            words::judged(c)
                        )
                    }))
                    .collect()
            }),
            status: n.worst().map(Into::into),
        })
    }

    /// At a reading of electrical length.
    fn length(
        &self,
        loc: Loc,
        metres: f64,
        u: f64,
        tape: Option<&downlead_eval::result::measure::Tape>,
    ) -> Shown {
        let (m, u) = with_uncertainty(metres, 2.0 * u, 3);
        let mut text = format!("{m} m ± {u} m");
        if let Some(t) = tape {
            let (d, u) = with_uncertainty(t.difference_m, t.expanded_m, 3);
            let sign = if d.starts_with('-') { "" } else { "+" };
            text.push_str(&format!(
                ", {sign}{d} m ± {u} m against the tape: {}",
                downlead_report::words::verdict::reading(t.verdict)
            ));
        }
        Shown {
            loc,
            parts: vec![part(text, None)],
            tooltip: tape.and_then(|t| {
                self.lines(|| {
                    let (v, u) = with_uncertainty(t.velocity_factor, 2.0 * t.u_velocity_factor, 4);
                    vec![format!(
                        "with a velocity factor of {v} ± {u} it is as long as the tape says"
                    )]
                })
            }),
            status: tape.map(|t| t.verdict.into()),
        }
    }

    /// At a reading.
    fn row(&self, row: &BenchRow) -> Option<Shown> {
        let mut parts = Vec::new();
        let mut tooltip = None;
        let mut status = None;
        let cell = row.cell.and_then(|i| Some((i, self.r.cells.get(i)?)));
        if let Some((i, c)) = cell {
            let counts = c.rows.first() == Some(&row.loc) || self.counting.contains(&(i, row.loc));
            let piece = &self.r.pieces[c.piece];
            if counts {
                let loss = format!("{} dB", padded(&two_places(c.measured.db), 5));
                parts.push(self.to_piece(loss, c.piece));
                parts.push(part(format!(", {}", words::judged(c)), None));
                if c.count > 1 && row.kind == ReadingKind::Through {
                    parts.push(part(format!(" ({} readings)", c.count), None));
                }
                tooltip = self.derived(c);
                status = c.comparison.as_ref().map(|x| x.verdict.into());
            } else {
                let text = format!("takes no part: {} was read another way too", piece.name);
                parts.push(part(text, None));
            }
        }
        if let Some(d) = row.against_first_db.filter(|d| *d != 0.0) {
            parts.push(part(
                format!("{} against the first", decibel_signed(d)),
                None,
            ));
            tooltip = self.lines(|| self.drift(row.band).into_iter().collect());
        }
        if let Some(s) = &row.swr {
            let sep = if parts.is_empty() { "" } else { ", " };
            let range = tip(self.c, || {
                let high = match s.high.is_finite() {
                    true => number(s.high, 2),
                    false => "∞".to_owned(),
                };
                let low = number(s.low, 2);
                format!("{low} to {high} with the errors of the meter")
            });
            parts.push(part(format!("{sep}{}", words::swr(s)), range));
        }
        (!parts.is_empty()).then_some(Shown {
            loc: row.loc,
            parts,
            tooltip,
            status,
        })
    }

    /// How the baselines of a band move.
    fn drift(&self, band: usize) -> Option<String> {
        let d = self.r.bands[band].drift?;
        if !(d.total_percent.is_finite() && d.minutes.is_finite()) || self.one(band) {
            return None;
        }
        let over = match d.minutes > 0.0 {
            true => format!(" in {} min", number(d.minutes, 1)),
            false => String::new(),
        };
        let scatter = d
            .scatter_percent
            .map_or_else(String::new, |s| format!(", {s:.1} % off a straight line"));
        Some(format!("baseline {:+.1} %{over}{scatter}", d.total_percent))
    }

    fn one(&self, band: usize) -> bool {
        self.r.bands[band].baselines.len() < 2
    }

    /// At the heads of readings by band: drift; at meters read one behind the other: by what they
    /// differ.
    fn groups(&self, wanted: &dyn Fn(Loc) -> bool, out: &mut Vec<Shown>) {
        // a row knows its band, a head is known by its rows
        let bands: FxHashMap<Loc, usize> = match self.s.groups.iter().any(|g| wanted(g.loc)) {
            true => self.r.rows.iter().map(|r| (r.loc, r.band)).collect(),
            false => FxHashMap::default(),
        };
        for g in &self.s.groups {
            if wanted(g.loc)
                && let Some(band) = g.rows.iter().find_map(|r| bands.get(&r.loc))
                && self.c.shows(&self.r.bands[*band].band)
                && let Some(text) = self.drift(*band)
            {
                out.push(Shown {
                    loc: g.loc,
                    parts: vec![part(text, None)],
                    tooltip: None,
                    status: None,
                });
            }
            for r in g.rows.iter().filter(|r| r.kind == ReadingKind::Equalise) {
                let (downlead_station::session::Shown::Watts(w), Some((other, with))) =
                    (&r.shown, &r.input)
                else {
                    continue;
                };
                if !wanted(r.loc) || *w <= 0.0 || *other <= 0.0 {
                    continue;
                }
                let name = |n: Option<&downlead_station::model::Name>| {
                    n.map_or_else(|| "the other".to_owned(), |n| n.text.to_string())
                };
                let one = r.instrument.as_ref().or(self.s.meta.instrument.as_deref());
                let text = format!(
                    "{} shows {} against {}",
                    name(one),
                    decibel_signed(to_db(w / other)),
                    name(with.as_ref())
                );
                out.push(Shown {
                    loc: r.loc,
                    parts: vec![part(text, None)],
                    tooltip: self.lines(|| {
                        vec!["that much is taken off where these two are compared".to_owned()]
                    }),
                    status: None,
                });
            }
        }
    }

    /// Bands and verdicts by the line of the import.
    fn by_import(&self) -> FxHashMap<Loc, (FxHashSet<usize>, VerdictCounts)> {
        let mut out: FxHashMap<Loc, (FxHashSet<usize>, VerdictCounts)> = FxHashMap::default();
        for i in &self.s.imports {
            out.insert(i.loc, Default::default());
        }
        for c in &self.r.cells {
            // a cell rests on few tables, though on many of their rows
            let mut seen: Vec<Loc> = Vec::new();
            for loc in &c.rows {
                if seen.contains(loc) {
                    continue;
                }
                if let Some((bands, n)) = out.get_mut(loc) {
                    seen.push(*loc);
                    bands.insert(c.band);
                    if let Some(x) = &c.comparison {
                        n.add(x.verdict.into());
                    }
                }
            }
        }
        out
    }

    /// At `readings from`: what the table gave.
    fn import(
        &self,
        i: &Import,
        by_import: &FxHashMap<Loc, (FxHashSet<usize>, VerdictCounts)>,
    ) -> Option<Shown> {
        let (bands, n) = by_import.get(&i.loc)?;
        let table = self.env?.attachments.at(i.file.loc)?.readings()?;
        let lost = match &*self.s.imports {
            [_] => self.r.lost,
            _ => table.lost,
        };
        let taken = (table.rows.len() + table.lost).saturating_sub(lost);
        let mut text = format!(
            "{} on {}: {}",
            counted(taken, "reading"),
            counted(bands.len(), "band"),
            n.words()
        );
        if lost > 0 {
            text.push_str(&format!("; {} not taken", counted(lost, "row")));
        }
        Some(Shown {
            loc: i.loc,
            parts: vec![part(text, None)],
            tooltip: self.lines(|| {
                (0..self.r.bands.len())
                    .filter(|b| bands.contains(b))
                    .map(|b| {
                        let drift = self.drift(b).map_or_else(String::new, |d| format!(": {d}"));
                        let band = &self.r.bands[b];
                        format!("{}{drift}", words::band_in_words(&band.band, band.hz))
                    })
                    .collect()
            }),
            status: n.worst().map(Into::into),
        })
    }
}

/// `6 of 9 bands agree, 1 differs, 2 cannot tell`; `9 bands agree`, `9 bands differ` if all do.
fn of_bands(n: VerdictCounts) -> String {
    let bands = counted(n.all(), "band");
    let verb = |n: usize, word: &str| format!("{word}{}", if n == 1 { "s" } else { "" });
    if n.agrees == n.all() {
        return format!("{bands} {}", verb(n.agrees, "agree"));
    }
    if n.differs == n.all() {
        return format!("{bands} {}", verb(n.differs, "differ"));
    }
    let mut out = format!("{} of {bands} {}", n.agrees, verb(n.agrees, "agree"));
    if n.differs > 0 {
        out.push_str(&format!(", {} {}", n.differs, verb(n.differs, "differ")));
    }
    if n.cannot_tell > 0 {
        out.push_str(&format!(", {} cannot tell", n.cannot_tell));
    }
    out
}

/// At `readings from` in a chain: how many, from when to when, the last one against what is
/// expected, and where they go. `label` names the band where there are several.
pub(crate) fn of_log(label: &str, b: &BandResult, log: &LogResult, c: &Config) -> Shown {
    let count = {
        let mut lines: Vec<u64> = log.rows.iter().map(|r| r.line).collect();
        lines.sort_unstable();
        lines.dedup();
        lines.len()
    };
    let dates: Vec<&str> = log
        .rows
        .iter()
        .map(|r| &*r.date)
        .filter(|d| !d.is_empty())
        .collect();
    let mut text = counted(count, "reading");
    match (dates.first(), dates.last()) {
        (Some(a), Some(z)) if a != z => text.push_str(&format!(" {a} to {z}")),
        (Some(a), _) => text.push_str(&format!(" {a}")),
        _ => {}
    }
    let of = |what: Logged| log.rows.iter().rfind(|r| r.what == what);
    // the verdict first: what does not fit is in the tooltip
    let mut parts = vec![part(label.to_owned(), None)];
    parts.retain(|p| !p.text.is_empty());
    let mut status = None;
    if let Some(last) = of(Logged::Forward).or_else(|| of(Logged::Swr)) {
        // the latest row decides: an earlier error may have been corrected
        status = last.verdict.map(Status::from);
        let note = last.verdict.and_then(|v| tip(c, || note(v)));
        let said = match (last.difference_db, last.verdict) {
            // beside another band there is room for the verdict only
            (Some(d), Some(v)) if !label.is_empty() => {
                format!("{}: {}", decibel_signed(d), v.reading_word())
            }
            _ => format!("last {}", against(last)),
        };
        parts.push(part(said, note));
    }
    // significant trends come first
    let moving = log
        .trends
        .iter()
        .find(|t| t.trend.direction != Direction::NotBeyondDoubt);
    let forward = || log.trends.iter().find(|t| t.what == Logged::Forward);
    let trend = moving.or_else(forward).or(log.trends.first());
    let more = [trend.map(moves), Some(text)];
    if label.is_empty() || parts.len() < 2 {
        for t in more.into_iter().flatten() {
            let after = if parts.is_empty() { "" } else { "; " };
            parts.push(part(format!("{after}{t}"), None));
        }
    }
    Shown {
        loc: log.loc,
        parts,
        tooltip: tip(c, || {
            log_lines(b, log).join(if c.markdown { "  \n" } else { "\n" })
        }),
        status,
    }
}

/// The trends of a log, and its latest readings.
fn log_lines(b: &BandResult, log: &LogResult) -> Vec<String> {
    // the latest are of most interest; a log may be long
    const SHOWN: usize = 12;
    let mut lines: Vec<String> = log
        .trends
        .iter()
        .map(|t| {
            format!(
                "{}: {}, {} from {} to {}",
                b.band,
                moves(t),
                counted(t.count, "reading"),
                t.from,
                t.to
            )
        })
        .collect();
    for r in log.rows.iter().rev().take(SHOWN) {
        let with = r
            .instrument
            .as_ref()
            .map_or_else(String::new, |i| format!(" with {i}"));
        lines.push(format!("line {}, {}{with}: {}", r.line, r.date, against(r)));
    }
    if log.rows.len() > SHOWN {
        lines.push(format!("and {} earlier", log.rows.len() - SHOWN));
    }
    lines
}

fn note(v: Verdict) -> String {
    match v {
        Verdict::Yes => "the meter could have told a fault of 1 dB",
        Verdict::No => "further off than the uncertainty of both",
        Verdict::CannotTell => "the uncertainty is too large for the meter to have told",
    }
    .to_owned()
}

/// `24.6 W, +0.02 dB ± 0.34 dB: agrees`.
fn against(r: &LogRow) -> String {
    if let Some(tag) = &r.older_than {
        let read = match r.what {
            Logged::Swr => format!("SWR {}", number(r.read, 2)),
            _ => format!("{} {}", power(r.read), r.what.word()),
        };
        return format!("{read}, older than {tag}: not judged");
    }
    match (r.what, r.difference_db, r.uncertainty_db, r.verdict) {
        (Logged::Swr, ..) => format!(
            "SWR {}, expected {}",
            number(r.read, 2),
            or_not_known(r.expected.map(|e| number(e, 2)))
        ),
        (_, Some(d), Some(u), Some(v)) => format!(
            "{} {}, {}{}: {}",
            power(r.read),
            r.what.word(),
            decibel_signed(d),
            plus_minus(u),
            v.reading_word()
        ),
        _ => format!(
            "{} {}, expected {}",
            power(r.read),
            r.what.word(),
            or_not_known(r.expected.map(power))
        ),
    }
}

/// `forward -0.20 dB ± 0.09 dB a year: falling`.
fn moves(t: &LogTrend) -> String {
    let Trend {
        per_year,
        u_per_year,
        k,
        direction,
        ..
    } = t.trend;
    let (v, u) = with_uncertainty(per_year, k * u_per_year, 2);
    let sign = if v.starts_with('-') { "" } else { "+" };
    let unit = if t.what == Logged::Swr { "" } else { " dB" };
    let word = match direction {
        Direction::Rising => "rising",
        Direction::Falling => "falling",
        Direction::NotBeyondDoubt => "steady within the uncertainty",
    };
    format!(
        "{} {sign}{v}{unit} ± {u}{unit} a year: {word}",
        t.what.word()
    )
}
