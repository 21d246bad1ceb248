//! What a session says of a piece, in one plain sentence; and bands whose pieces stand in one order.

use downlead_quantity::number;

use crate::shape::bench::{BandReport, PieceReport, ResultReport, SessionReport};
use crate::shape::word::ReadingVerdict;

/// One sentence for a person who wants to use the piece. None where nothing was judged.
#[must_use]
pub fn sentence(s: &SessionReport, p: &PieceReport) -> Option<String> {
    let w = p.whole.as_ref()?;
    let u = 50.0 * (w.ratio_high - w.ratio_low);
    let more = 100.0 * (w.ratio - 1.0);
    let percent = |v: f64| number(libm::round(v.abs()).max(1.0), 0);
    let mut out = match w.verdict {
        ReadingVerdict::Differs if more > 0.0 => format!(
            "{} loses {} % ± {} % more than its sheet says",
            p.piece,
            percent(more),
            percent(u)
        ),
        ReadingVerdict::Differs => format!(
            "{} loses {} % ± {} % less than its sheet says: look at its length and type",
            p.piece,
            percent(more),
            percent(u)
        ),
        ReadingVerdict::Agrees => {
            format!("{} is as its sheet says, within {} %", p.piece, percent(u))
        }
        ReadingVerdict::CannotTell => format!(
            "Whether {} is as its sheet says cannot be told from these readings",
            p.piece
        ),
    };
    let mine = || s.results.iter().filter(|r| r.piece == p.piece);
    match w.verdict {
        ReadingVerdict::Differs => out += &worst(mine()).unwrap_or_default(),
        ReadingVerdict::Agrees => out += &open(mine()).unwrap_or_default(),
        ReadingVerdict::CannotTell => {}
    }
    if !p.slip_bands.is_empty() {
        out += &format!("; the slip on {} is left out", p.slip_bands.join(", "));
    }
    Some(out + ".")
}

/// `; on 70cm 29.3 W of 100 W arrive where 41.3 W should`, of the band that is furthest off.
fn worst<'r>(mine: impl Iterator<Item = &'r ResultReport>) -> Option<String> {
    let off = |r: &&ResultReport| r.en.map_or(0.0, f64::abs);
    let r = mine
        .filter(|r| r.verdict == Some(ReadingVerdict::Differs))
        .max_by(|a, b| off(a).total_cmp(&off(b)))?;
    let should = 100.0 * downlead_quantity::from_db(-r.expected_db?);
    Some(format!(
        "; on {} {:.1} W of 100 W arrive where {should:.1} W should",
        r.band, r.through_percent
    ))
}

/// `; on 160m and 80m it loses too little for this meter to tell`.
fn open<'r>(mine: impl Iterator<Item = &'r ResultReport>) -> Option<String> {
    let bands: Vec<&str> = mine
        .filter(|r| r.verdict == Some(ReadingVerdict::CannotTell))
        .map(|r| r.band.as_str())
        .collect();
    let on = match &bands[..] {
        [] => return None,
        [one] => (*one).to_owned(),
        [rest @ .., last] if rest.len() < 4 => format!("{} and {last}", rest.join(", ")),
        many => format!("{} bands", many.len()),
    };
    Some(format!("; on {on} the uncertainty is too large to tell"))
}

/// Bands in which the pieces stand in one order, one after the other: the first of each run of
/// bands with those that follow it unchanged, ranks and all.
#[must_use]
pub fn orders(bands: &[BandReport]) -> Vec<(&BandReport, Vec<&BandReport>)> {
    let order = |b: &BandReport| -> Vec<(usize, String)> {
        b.ranking
            .iter()
            .map(|r| (r.rank, r.piece.clone()))
            .collect()
    };
    let mut out: Vec<(&BandReport, Vec<&BandReport>)> = Vec::new();
    for b in bands.iter().filter(|b| b.ranking.len() > 1) {
        match out.last_mut() {
            Some((first, rest)) if order(first) == order(b) => rest.push(b),
            _ => out.push((b, Vec::new())),
        }
    }
    out
}
