//! What is said about pieces, readings and their files.

use downlead_base::{Loc, Span};
use downlead_eval::Snapshot;
use downlead_eval::bench::result::{BenchRow, SessionResult};
use downlead_eval::result::measure::FitError;
use downlead_quantity::{db, decibel_signed, frequency, number, sig};
use downlead_station::Attachment;
use downlead_station::model::{Meaning, Name};
use downlead_station::session::{ReadingKind, Session};
use rustc_hash::FxHashSet;

use downlead_report::words::figure::with_uncertainty;

use super::words::{self, counted};
use crate::markdown::Writer;
use crate::view::{Doc, item_at, line_start};

/// The session that holds an offset, with its results.
pub(super) fn session_at(
    s: &Snapshot,
    doc: Doc,
    offset: u32,
) -> Option<(&Session, &SessionResult)> {
    let id = item_at(s, doc, offset)?.item.id;
    let items = s.scopes().iter().flat_map(|x| x.items());
    items
        .filter(|x| x.0.id == id)
        .find_map(|(_, low, result)| match &low.meaning {
            Meaning::Session(x) => Some((&**x, result.session.as_deref()?)),
            _ => None,
        })
}

/// The path of readings or of a network at an offset: its range and text.
pub(crate) fn file_at(s: &Snapshot, doc: Doc, offset: u32) -> Option<(Span, &Name)> {
    let placed = item_at(s, doc, offset)?;
    let items = s.scopes().iter().flat_map(|x| x.items());
    let (_, low, _) = items.into_iter().find(|x| x.0.id == placed.item.id)?;
    let touched = |n: &&Name| n.loc.span.shift(placed.start).touches(offset);
    let name = low.files.iter().find(touched)?;
    Some((name.loc.span.shift(placed.start), name))
}

/// What is said of a place in a session beside what the words mean. Whether the derivations of
/// the line are still of use.
pub(crate) fn in_session(
    w: &mut Writer<'_, '_>,
    s: &Snapshot,
    doc: Doc,
    offset: u32,
    tag: Option<&str>,
) -> bool {
    let (Some((session, r)), Some(placed)) = (session_at(s, doc, offset), item_at(s, doc, offset))
    else {
        return true;
    };
    let at = offset - placed.start;
    let text = placed.item.text();
    let line = |loc: Loc| {
        line_start(text, loc.span.start) == line_start(text, at) && loc.item == placed.item.id
    };
    if let Some(row) = r.rows.iter().find(|x| line(x.loc)) {
        baseline_words(w, r, row);
        row_words(w, row);
        return true;
    }
    if let Some(i) = session.imports.iter().find(|i| line(i.loc)) {
        let env = crate::view::env_of(s, doc);
        let a = env.and_then(|e| e.attachments.at(i.file.loc));
        file_words(w, &i.file.text, a.map(|a| &**a));
        return false;
    }
    let index = r
        .pieces
        .iter()
        .position(|p| tag.map_or_else(|| line(p.loc), |t| *p.name == *t));
    if let Some(i) = index {
        piece_words(w, r, i);
        if let Some(c) = r.pieces[i].worst.and_then(|c| r.cells.get(c)) {
            w.text("furthest off:");
            w.derivation(&r.derivation(c));
        }
        return false;
    }
    true
}

/// A session: how much was read, what came of it, and who loses least.
pub(crate) fn session_words(w: &mut Writer<'_, '_>, s: &Snapshot, doc: Doc, offset: u32) {
    let Some((_, r)) = session_at(s, doc, offset) else {
        return;
    };
    let lost = match r.lost {
        0 => String::new(),
        n => format!(", {} not taken", counted(n, "row")),
    };
    w.text(&format!(
        "{} on {}{lost}: {}",
        counted(r.readings, "reading"),
        counted(r.bands.len(), "band"),
        downlead_report::build::bench::counts(r.cells.iter()).words()
    ));
    let rows: Vec<Vec<String>> = (0..r.bands.len())
        .filter(|b| r.bands[*b].ranking.len() > 1)
        .map(|b| {
            let band = &r.bands[b];
            vec![
                words::band_in_words(&band.band, band.hz),
                words::ranking(r, b, true),
            ]
        })
        .collect();
    w.table(&["band", "dB per 100 m, least first (k = 2)"], &rows);
}

/// A piece: all its bands in a table, the whole, and its own two coefficients.
fn piece_words(w: &mut Writer<'_, '_>, r: &SessionResult, piece: usize) {
    let p = &r.pieces[piece];
    let rows: Vec<Vec<String>> = r
        .cells
        .iter()
        .filter(|c| c.piece == piece)
        .map(|c| {
            let b = &r.bands[c.band];
            vec![
                words::band_in_words(&b.band, b.hz),
                db(c.measured.db),
                c.expected.map_or_else(|| "–".to_owned(), |e| db(e.db)),
                words::judged(c),
                c.per_length
                    .map_or_else(|| "–".to_owned(), |x| db(100.0 * x.db_per_m)),
            ]
        })
        .collect();
    w.table(
        &["band", "measured", "expected", "difference", "per 100 m"],
        &rows,
    );
    if let Some(x) = &p.whole {
        w.text(&format!(
            "all bands: {}, χ² {:.1} for {}{}",
            words::whole(x),
            x.chi2,
            x.dof,
            words::scatters(x)
        ));
    }
    match &p.fit {
        Some(Ok(f)) => {
            let (k1, u1) = with_uncertainty(100.0 * f.coefficients.k1, 200.0 * f.u_k1, 6);
            let (k2, u2) = with_uncertainty(100.0 * f.coefficients.k2, 200.0 * f.u_k2, 6);
            w.text(&format!(
                "its own fit at {} °C: ({k1} ± {u1}) dB/100 m/sqrt(MHz) + ({k2} ± {u2}) dB/100 m/MHz, from {} to {}",
                number(f.celsius, 1),
                frequency(f.range_hz.0),
                frequency(f.range_hz.1)
            ));
        }
        Some(Err(e)) => w.text(&format!("no fit of its own: {}", refused(e))),
        None => {}
    }
}

fn refused(e: &FitError) -> String {
    let at = |hz: &f64| {
        if hz.is_finite() {
            format!("; read at {} too", frequency(round(*hz)))
        } else {
            String::new()
        }
    };
    match e {
        FitError::TooFew { add_hz, .. } => {
            format!("one frequency cannot give two coefficients{}", at(add_hz))
        }
        FitError::NotPositive(_) => {
            "a loss is not above zero once the joins are taken off".to_owned()
        }
        FitError::Singular { add_hz, .. } => format!(
            "the frequencies are too alike to tell the two coefficients apart{}",
            at(add_hz)
        ),
    }
}

/// A frequency to advise, with two digits.
fn round(hz: f64) -> f64 {
    sig(hz, 2).parse().unwrap_or(hz)
}

/// A baseline: against the first of its band, and how the band's drift.
fn baseline_words(w: &mut Writer<'_, '_>, r: &SessionResult, row: &BenchRow) {
    let b = &r.bands[row.band];
    if row.kind != ReadingKind::Baseline {
        return;
    }
    if let Some(d) = row.against_first_db {
        w.text(&format!(
            "baseline on {}: {} against the first",
            words::band_in_words(&b.band, b.hz),
            decibel_signed(d)
        ));
    }
    if let Some(d) = b.drift.filter(|_| b.baselines.len() > 1) {
        w.text(&format!(
            "{}, {:+.1} % in {} min; what is read between two of them is compared with the straight line between them",
            counted(b.baselines.len(), "baseline"),
            d.total_percent,
            number(d.minutes, 1)
        ));
    }
}

/// What the meter shows of reflections at a reading.
fn row_words(w: &mut Writer<'_, '_>, row: &BenchRow) {
    if let Some(s) = &row.swr {
        let high = if s.high.is_finite() {
            number(s.high, 2)
        } else {
            "∞".to_owned()
        };
        w.text(&format!(
            "{}: {} to {high} with the errors of the meter at both readings",
            words::swr(s),
            number(s.low, 2)
        ));
    }
}

/// What a file of readings or a network file holds.
pub(crate) fn file_words(w: &mut Writer<'_, '_>, path: &str, a: Option<&Attachment>) {
    let Some(a) = a else {
        w.title(path, "file that is not read");
        return;
    };
    if let Err(e) = &a.content {
        w.title(path, "file that cannot be read");
        w.text(&e.to_string());
    } else if let Some(t) = a.readings() {
        w.title(path, "table of readings");
        let mut facts = vec![counted(t.rows.len(), "row")];
        if t.lost > 0 {
            facts.push(format!("{} not taken", counted(t.lost, "row")));
        }
        let (mut bands, mut pieces, mut dates) = (Vec::new(), Vec::new(), Vec::new());
        let mut seen: FxHashSet<(u8, String)> = FxHashSet::default();
        for r in &t.rows {
            let band = match (&r.band, r.hz) {
                (Some(b), _) => Some(b.to_string()),
                (None, Some((hz, _))) => Some(frequency(hz)),
                (None, None) => None,
            };
            if let Some(b) = band
                && seen.insert((0, b.clone()))
            {
                bands.push(b);
            }
            if let Some(p) = r.piece.as_deref().or(r.after.as_deref())
                && seen.insert((1, p.to_owned()))
            {
                pieces.push(p);
            }
            dates.extend(r.date.as_deref());
        }
        if !bands.is_empty() {
            facts.push(format!(
                "{} ({})",
                counted(bands.len(), "band"),
                few(&bands)
            ));
        }
        if !pieces.is_empty() {
            facts.push(format!("of {}", few(&pieces)));
        }
        dates.sort_unstable();
        match (dates.first(), dates.last()) {
            (Some(a), Some(z)) if a != z => facts.push(format!("{a} to {z}")),
            (Some(a), _) => facts.push((*a).to_owned()),
            _ => {}
        }
        w.text(&facts.join(", "));
        for p in t.problems.iter().take(4) {
            w.text(&format!("line {}: {}", p.line, p.message));
        }
        if t.problems.len() > 4 {
            w.text(&format!("and {} more", t.problems.len() - 4));
        }
    } else if let Some(n) = a.network() {
        w.title(path, "network file");
        let f = n.frequencies_hz();
        let mut facts = vec![counted(n.ports(), "port"), counted(n.points(), "point")];
        if let (Some(a), Some(z)) = (f.first(), f.last()) {
            facts.push(format!("{} to {}", frequency(*a), frequency(*z)));
        }
        w.text(&facts.join(", "));
    }
}

/// At most six, then how many more.
fn few<T: AsRef<str>>(all: &[T]) -> String {
    const SHOWN: usize = 6;
    let shown: Vec<&str> = all.iter().take(SHOWN).map(AsRef::as_ref).collect();
    match all.len().saturating_sub(SHOWN) {
        0 => shown.join(", "),
        n => format!("{} and {n} more", shown.join(", ")),
    }
}
