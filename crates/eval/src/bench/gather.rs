//! The readings of a session in one list, by band: those of the text and those of other files.

use std::collections::BTreeMap;

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::{frequency, number};
use downlead_station::attach::Row;
use downlead_station::model::{BandKind, BandRef, Name};
use downlead_station::session::{Import, Piece, Reading, ReadingKind, Session, Shown};
use downlead_station::{Attachment, Env};

use crate::point::band_named;
use crate::table::Said;

/// Two frequencies closer than this are one band.
const SAME_BAND: f64 = 1e-6;

/// A reading is taken on a band when its frequency is off by no more than this share: the band may
/// be defined by any frequency on it, and the widest of the amateur bands in relative terms, 3.5 to
/// 4.0 MHz, is 14 % from end to end (ITU Radio Regulations, article 5, Region 2; from memory). A
/// band's name beside a frequency further off is a slip.
const NEAR_BAND: f64 = 0.15;

/// The same for a band that is defined by its ends, which say themselves how wide it is.
const NEAR_ENDS: f64 = 0.05;

/// Temperatures closer than this make no difference on a bench, K: 0.2 % of a conductor's loss
/// each (common practice).
const SAME_CELSIUS: f64 = 2.0;

/// Why a row cannot be taken: its column, what is wrong, what to write.
type Refused = (&'static str, String, Option<String>);

/// One reading, wherever it stood.
#[derive(Clone, Debug)]
pub(super) struct Taken<'m> {
    pub(super) kind: ReadingKind,
    /// Index of the piece.
    pub(super) piece: Option<usize>,
    pub(super) shown: TakenValue<'m>,
    pub(super) reflected_w: Option<f64>,
    /// Power at the near end and its meter.
    pub(super) input: Option<(f64, Option<&'m str>)>,
    pub(super) minutes: Option<f64>,
    pub(super) adapters: &'m [(u32, Name)],
    pub(super) instrument: Option<&'m str>,
    /// The line in the text.
    pub(super) loc: Loc,
    /// Where the value stands.
    pub(super) value_loc: Loc,
    /// File and line of an imported one.
    pub(super) from: Option<(&'m str, u64)>,
}

#[derive(Clone, Debug)]
pub(super) enum TakenValue<'m> {
    Watts(f64),
    Loss(f64),
    ReturnLoss(f64),
    File(&'m Attachment),
}

impl Taken<'_> {
    /// Where it stands, in words, for a finding: nothing for one in the text.
    pub(super) fn place(&self) -> String {
        match self.from {
            Some((file, line)) => format!("In `{file}`, line {line}: "),
            None => String::new(),
        }
    }
}

/// The readings on one band.
pub(super) struct Group<'m> {
    pub(super) band: Box<str>,
    pub(super) named: bool,
    pub(super) hz: f64,
    pub(super) taken: Vec<Taken<'m>>,
}

/// All of them.
pub(super) struct Gathered<'m> {
    pub(super) groups: Vec<Group<'m>>,
    pub(super) lost: usize,
    /// Groups by the bits of their frequency.
    by_hz: BTreeMap<u64, usize>,
}

pub(super) fn gather<'m>(s: &'m Session, env: &'m Env, out: &mut Vec<Diagnostic>) -> Gathered<'m> {
    let mut g = Gathered {
        groups: Vec::new(),
        lost: 0,
        by_hz: BTreeMap::new(),
    };
    for r in &s.groups {
        let Some((band, named, hz)) = of_band(&r.on, env) else {
            continue;
        };
        let at = g.group(&band, named, hz);
        for row in &r.rows {
            if let Some(t) = of_text(row, s, env) {
                g.groups[at].taken.push(t);
            }
        }
    }
    for i in &s.imports {
        g.import(i, s, env, out);
    }
    g
}

impl<'m> Gathered<'m> {
    fn group(&mut self, band: &str, named: bool, hz: f64) -> usize {
        let same = |g: &Group<'_>| (g.hz / hz - 1.0).abs() < SAME_BAND;
        // imported rows mostly follow each other band by band
        let last = self.groups.last().is_some_and(same);
        let near = match last {
            true => Some(self.groups.len() - 1),
            // the bits of positive numbers are in their order
            false => {
                let (low, high) = (hz * (1.0 - 2.0 * SAME_BAND), hz * (1.0 + 2.0 * SAME_BAND));
                let around = self.by_hz.range(low.to_bits()..=high.to_bits());
                around
                    .map(|(_, i)| *i)
                    .filter(|i| same(&self.groups[*i]))
                    .max()
            }
        };
        if let Some(i) = near {
            if named && !self.groups[i].named {
                self.groups[i].band = band.into();
                self.groups[i].named = true;
            }
            return i;
        }
        self.groups.push(Group {
            band: band.into(),
            named,
            hz,
            taken: Vec::new(),
        });
        self.by_hz.insert(hz.to_bits(), self.groups.len() - 1);
        self.groups.len() - 1
    }

    fn import(&mut self, i: &'m Import, s: &'m Session, env: &'m Env, out: &mut Vec<Diagnostic>) {
        let Some(a) = env.attachments.at(i.file.loc) else {
            return;
        };
        let Some(file) = a.readings() else {
            // that it cannot be read at all is said where it is loaded
            if a.content.is_ok() {
                out.push(
                    Diagnostic::new(
                        &codes::READINGS_NOT_READ,
                        i.file.loc,
                        format!(
                            "`{}` is a network file, not a table of readings.",
                            i.file.text
                        ),
                    )
                    .at("not a table")
                    .help("A network file belongs to one reading: `through A from \"a.s2p\"`."),
                );
            }
            return;
        };
        let mut said = Said::new(&i.file, out);
        for p in &file.problems {
            said.problem(p);
        }
        self.lost += file.lost;
        temperatures(&file.rows, s, &mut said);
        let logged = |r: &Row| r.kind.is_none() && r.after.is_some();
        if let Some(row) = file.rows.iter().find(|r| logged(r))
            && file.rows.iter().all(logged)
        {
            said.row(
                row.line,
                "after",
                "The rows say after which part of a station they were read; none is of a piece of this session.".to_owned(),
                Some("A log of a station stands in a chain, between two of its parts.".to_owned()),
            );
        }
        for row in &file.rows {
            match self.row(row, i, s, env) {
                Ok(()) => {}
                Err(None) => self.lost += 1,
                Err(Some((field, message, help))) => {
                    self.lost += 1;
                    said.row(row.line, field, message, help);
                }
            }
        }
        said.finish();
    }

    /// Takes one imported row. `Err(None)`: left out without a word.
    fn row(
        &mut self,
        row: &'m Row,
        i: &'m Import,
        s: &'m Session,
        env: &'m Env,
    ) -> Result<(), Option<Refused>> {
        let Some(kind) = row.kind else {
            // a row of a station's log
            return Err(None);
        };
        let (band, named, hz) = band(row, env)?;
        let piece = piece(row, kind, s)?;
        if let Some(p) = piece {
            same_piece(row, &s.pieces[p])?;
        }
        let shown = shown(row, kind)?;
        let at = self.group(&band, named, hz);
        self.groups[at].taken.push(Taken {
            kind,
            piece,
            shown,
            reflected_w: row.reflected_w.map(|x| x.0),
            input: row.input_w.map(|x| (x.0, None)),
            minutes: row.minutes.map(|x| x.0),
            adapters: &[],
            instrument: row
                .instrument
                .as_deref()
                .or(i.instrument.as_ref().map(|n| &*n.text)),
            loc: i.loc,
            value_loc: i.file.loc,
            from: Some((&i.file.text, row.line)),
        });
        Ok(())
    }
}

/// Band of a row, whether the text defines it, and frequency, Hz.
fn band(row: &Row, env: &Env) -> Result<(Box<str>, bool, f64), Refused> {
    match (&row.hz, &row.band) {
        (Some((hz, _)), Some(b)) => {
            if let Some(defined) = env.band(b)
                && !near_band(*hz, &defined.kind)
            {
                return Err((
                    "frequency",
                    format!(
                        "Band `{b}` is {} in the text, and {} is not on it.",
                        of_kind(&defined.kind),
                        frequency(*hz)
                    ),
                    Some("One of the two is wrong; the row is left out.".to_owned()),
                ));
            }
            Ok((b.clone(), true, *hz))
        }
        (Some((hz, _)), None) => Ok((frequency(*hz).into_boxed_str(), false, *hz)),
        (None, Some(b)) => {
            if let Some((name, hz)) = band_of(b, env) {
                return Ok((name, true, hz));
            }
            let mut names: Vec<&str> = env.bands.keys().map(AsRef::as_ref).collect();
            names.sort_unstable();
            let near = downlead_station::nearest(b, names.iter().copied());
            let help = match near {
                Some(n) => format!("Did you mean `{n}`?"),
                None => format!(
                    "Define it at the left margin, `band {b}` with its frequency, or add a column `frequency_mhz`."
                ),
            };
            Err(("band", format!("Band `{b}` is not defined."), Some(help)))
        }
        (None, None) => Err((
            "",
            "The row names no band and no frequency.".to_owned(),
            None,
        )),
    }
}

/// The piece a row is of, among those of the session.
fn piece(row: &Row, kind: ReadingKind, s: &Session) -> Result<Option<usize>, Refused> {
    let Some(p) = &row.piece else {
        if kind.of_piece() {
            return Err((
                "piece",
                "The row does not say of which piece it is.".to_owned(),
                None,
            ));
        }
        return Ok(None);
    };
    if let Some(at) = s.pieces.iter().position(|q| q.name.text == *p) {
        return Ok(Some(at));
    }
    let near = downlead_station::nearest(p, s.pieces.iter().map(|q| &*q.name.text));
    let help = match near {
        Some(n) => format!("Did you mean `{n}`?"),
        None => format!("Say what it is: `piece {p} 11.40 m of rg-213`."),
    };
    Err((
        "piece",
        format!("`{p}` is no piece of this session."),
        Some(help),
    ))
}

/// Refuses a row whose length or cable is not that of its piece in the session.
fn same_piece(row: &Row, piece: &Piece) -> Result<(), Refused> {
    const LEFT_OUT: &str = "One of the two is wrong; the row is left out.";
    if let Some((m, _)) = row.length_m
        && let Some(text) = piece.metres()
        && (text.value - m).abs() > f64::max(2.0 * text.u, 0.005)
    {
        return Err((
            "length",
            format!(
                "`{}` is {} m long here and {} m in the session.",
                piece.name.text,
                number(m, 3),
                number(text.value, 3)
            ),
            Some(LEFT_OUT.to_owned()),
        ));
    }
    if let Some(c) = &row.cable
        && let Some(text) = piece.line().and_then(|l| l.cable.as_ref())
        && text.text != *c
    {
        return Err((
            "cable",
            format!(
                "`{}` is of `{c}` here and of `{}` in the session.",
                piece.name.text, text.text
            ),
            Some(LEFT_OUT.to_owned()),
        ));
    }
    Ok(())
}

/// What the instrument showed.
fn shown<'m>(row: &Row, kind: ReadingKind) -> Result<TakenValue<'m>, Refused> {
    Ok(match (row.forward_w, row.loss_db, row.return_loss_db) {
        (Some((w, _)), _, _) => TakenValue::Watts(w),
        (None, Some((l, _)), _) => TakenValue::Loss(l),
        (None, None, Some(_)) if !matches!(kind, ReadingKind::Open | ReadingKind::Short) => {
            return Err((
                "return_loss",
                "A return loss gives a loss only with the far end open or shorted, and the row says neither.".to_owned(),
                Some("Add a column `reading` with `open` or `short`.".to_owned()),
            ));
        }
        (None, None, Some((l, _))) => TakenValue::ReturnLoss(l),
        _ if row.swr.is_some() => {
            return Err((
                "swr",
                "An SWR alone says nothing of the loss of a piece.".to_owned(),
                Some("Write the power after the piece (`forward_w`), or the return loss with its far end open and shorted (`return_loss_db`).".to_owned()),
            ));
        }
        _ => return Err(("", "Nothing was read in this row.".to_owned(), None)),
    })
}

fn of_text<'m>(r: &'m Reading, s: &'m Session, env: &'m Env) -> Option<Taken<'m>> {
    let piece = match &r.piece {
        Some(n) => Some(s.pieces.iter().position(|p| p.name.text == n.text)?),
        None => None,
    };
    let shown = match &r.shown {
        Shown::Watts(w) => TakenValue::Watts(*w),
        Shown::Loss(l) => TakenValue::Loss(*l),
        Shown::ReturnLoss(l) => TakenValue::ReturnLoss(*l),
        Shown::File(n) => TakenValue::File(env.attachments.at(n.loc)?),
    };
    Some(Taken {
        kind: r.kind,
        piece,
        shown,
        reflected_w: r.reflected_w,
        input: r
            .input
            .as_ref()
            .map(|(w, i)| (*w, i.as_ref().map(|n| &*n.text))),
        minutes: r.minutes,
        adapters: &r.adapters,
        instrument: r.instrument.as_ref().map(|n| &*n.text),
        loc: r.loc,
        value_loc: r.value_loc,
        from: None,
    })
}

/// Name, whether it is one, and frequency of a band of a session.
fn of_band(b: &BandRef, env: &Env) -> Option<(Box<str>, bool, f64)> {
    match b {
        BandRef::Frequency(hz, n) => Some((n.text.clone(), false, *hz)),
        BandRef::Named(n) => match env.band(&n.text) {
            Some(band) => Some((n.text.clone(), true, middle(&band.kind)?)),
            None => {
                // which is said where it is named
                None
            }
        },
    }
}

/// Rows at another temperature than the session's, or with one where the session states none: what
/// a piece should lose holds at one temperature of the bench.
fn temperatures(rows: &[Row], s: &Session, said: &mut Said<'_>) {
    let off = |c: f64| match &s.temperature {
        Some(t) => (c - t.value).abs() > f64::max(2.0 * t.u, SAME_CELSIUS),
        None => true,
    };
    let mut other = rows
        .iter()
        .filter(|r| r.kind.is_some())
        .filter_map(|r| Some((r.line, r.celsius?.0)))
        .filter(|(_, c)| off(*c));
    let Some((line, c)) = other.next() else {
        return;
    };
    let more = match other.count() {
        0 => String::new(),
        n => format!(" ({} rows in all)", n + 1),
    };
    let c = number(c, 1);
    let (message, help) = match &s.temperature {
        Some(t) => (
            format!(
                "{c} °C here and {} °C in the session{more}; what is expected holds at the session's.",
                number(t.value, 1)
            ),
            "Put what was read at another temperature into a session of its own.".to_owned(),
        ),
        None => (
            format!("{c} °C here, and the session states none{more}."),
            format!(
                "Write `temperature {c} °C` into the session: what is expected then holds there."
            ),
        ),
    };
    said.mild(line, "temperature", message, Some(help));
}

/// The band of a table's name for it, and where the bench measures on it, Hz.
fn band_of(name: &str, env: &Env) -> Option<(Box<str>, f64)> {
    let name = band_named(name, env)?;
    Some((name.into(), middle(&env.band(name)?.kind)?))
}

/// Whether a frequency may be meant by a band: on it, or not far from it.
fn near_band(hz: f64, k: &BandKind) -> bool {
    let near = |f: f64| (hz / f - 1.0).abs() <= NEAR_BAND;
    match k {
        BandKind::Single(f) => near(*f),
        BandKind::Pair { transmit, receive } => {
            [transmit, receive].into_iter().flatten().any(|f| near(*f))
        }
        BandKind::Range(lo, hi) => (lo * (1.0 - NEAR_ENDS)..=hi * (1.0 + NEAR_ENDS)).contains(&hz),
    }
}

/// A band's frequencies in words.
fn of_kind(k: &BandKind) -> String {
    match k {
        BandKind::Single(f) => frequency(*f),
        BandKind::Pair { transmit, receive } => [transmit, receive]
            .into_iter()
            .flatten()
            .map(|f| frequency(*f))
            .collect::<Vec<_>>()
            .join(" and "),
        BandKind::Range(lo, hi) => format!("{} to {}", frequency(*lo), frequency(*hi)),
    }
}

/// Where on a band the bench measures: at the transmit frequency of a pair, in the middle of a
/// range.
fn middle(k: &BandKind) -> Option<f64> {
    match k {
        BandKind::Single(f) => Some(*f),
        BandKind::Pair { transmit, receive } => transmit.or(*receive),
        BandKind::Range(lo, hi) => Some(0.5 * (lo + hi)),
    }
}
