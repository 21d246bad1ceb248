//! Slips: a reading whose digits are swapped or whose point is lost, a baseline that does not belong
//! to its band, a jump of the transmitter's power.
//!
//! On each band every reading tells the transmitter's power at its time: a baseline as it is, a
//! piece with the loss put back that it has by its other bands. One that does not fit the others is
//! named with the figure that would.

use downlead_base::{Diagnostic, codes};
use downlead_physics::measure::{Explained, Odd, Seen, Slip, odd_one_out, slip, without};
use downlead_quantity::{number, power};
use downlead_station::session::{ReadingKind, Session};

use super::gather::Taken;
use super::result::{BenchBand, BenchCell, Method};

/// Of a session's healthy bands one in a hundred sessions may look as if it had a slip.
const UNLIKELY: f64 = 0.01;
/// What a piece's loss may do on one band beside its other bands: relative, standard (our choice).
const SHAPE: f64 = 0.03;
/// Drift of a transmitter of which no other band tells, and the least: relative, standard (our
/// choice).
const DRIFT: f64 = 0.05;
const LEAST_DRIFT: f64 = 0.015;
/// A reading of a piece is asked for a slip where it is off by so much, dB, and by so much of the
/// loss; less is the cable's (our choice).
const GROSS_DB: f64 = 1.0;
const GROSS_SHARE: f64 = 0.35;
/// So many slips of a session are named at most; a session with more is none.
const MOST: usize = 12;
/// What a piece loses beside its sheet where too few other bands tell: ln, standard (our choice). With it
/// only a lost decimal point can be told from a bad cable.
const UNKNOWN: f64 = 0.25;
/// A piece whose other band is off by more than this, ln, may be bad on all of them (our choice).
const HEALTHY: f64 = 0.5;
/// Up to so many bands the one that is judged is left out of what is known of the others.
const FEW: usize = 12;

/// A reading of power that took part, with what is its own of the uncertainty.
pub(super) struct Kept<'g, 'm> {
    pub(super) taken: &'g Taken<'m>,
    pub(super) band: usize,
    pub(super) watts: f64,
    pub(super) minutes: f64,
    /// Relative, standard.
    pub(super) u: f64,
}

/// A band whose readings hold a slip; with a piece only that one's.
pub(super) type Slipped = (usize, Option<usize>);

/// Names slips; returns where they are, so that no cable is accused of one.
pub(super) fn slips(
    s: &Session,
    kept: &[Kept<'_, '_>],
    cells: &[BenchCell],
    bands: &[BenchBand],
    out: &mut Vec<Diagnostic>,
) -> Vec<Slipped> {
    let drifts: Vec<f64> = bands
        .iter()
        .map(|b| match (b.baselines.first(), b.baselines.last()) {
            (Some(a), Some(z)) if b.baselines.len() > 1 => libm::log(z.0 / a.0).abs(),
            _ => f64::NAN,
        })
        .collect();
    // of many bands the one at hand does not matter
    let usual = (drifts.len() > FEW).then(|| usual_drift(&drifts, usize::MAX));
    let mut found: Vec<Slipped> = Vec::new();
    // the plainest first: while it counts, its piece looks wrong on all other bands
    while found.len() < MOST {
        let losses = Losses::of(s.pieces.len(), cells, &found);
        let mut best: Option<(f64, Slipped, Diagnostic)> = None;
        for of_band in kept.chunk_by(|a, b| a.band == b.band) {
            let Some(band) = of_band.first().map(|k| k.band) else {
                continue;
            };
            if found.iter().any(|f| f.0 == band) {
                continue;
            }
            let mut rows: Vec<(&Kept<'_, '_>, Seen)> = of_band
                .iter()
                .filter_map(|k| Some((k, losses.seen(k, cells)?)))
                .collect();
            rows.sort_by(|a, b| a.1.minutes.total_cmp(&b.1.minutes));
            let seen: Vec<Seen> = rows.iter().map(|r| r.1).collect();
            let drift = usual.unwrap_or_else(|| usual_drift(&drifts, band));
            let Some(e) = odd_one_out(&seen, drift, UNLIKELY / bands.len() as f64) else {
                continue;
            };
            let gain = e.chi2 - e.candidates.first().map_or(0.0, |c| c.1);
            if best.as_ref().is_some_and(|b| b.0 >= gain) {
                continue;
            }
            let told = Told {
                s,
                rows: &rows,
                seen: &seen,
                drift,
                band,
                bands,
                kept,
                losses: &losses,
            };
            if let Some((slipped, d)) = told.explain(&e) {
                best = Some((gain, slipped, d));
            }
        }
        let Some((_, slipped, d)) = best else { break };
        found.push(slipped);
        out.push(d);
    }
    found
}

/// Takes what rests on a slip out of the verdicts: the finding says what is wrong with the reading, and
/// the piece is judged by its other bands.
pub(super) fn set_apart(slipped: &[Slipped], cells: &mut [BenchCell], bands: &mut [BenchBand]) {
    for c in cells.iter_mut() {
        let mine = |f: &Slipped| f.0 == c.band && f.1.is_none_or(|p| p == c.piece);
        if slipped.iter().any(mine) {
            c.slip = true;
            c.comparison = None;
            c.per_length = None;
            c.length_factor = None;
        }
    }
    for b in bands {
        b.ranking = b
            .ranking
            .iter()
            .copied()
            .filter(|r| !cells[r.0].slip)
            .collect();
    }
}

/// What transmitters of the other bands drift by, relative.
fn usual_drift(all: &[f64], band: usize) -> f64 {
    let few = all.len() <= FEW;
    let mut others: Vec<f64> = all
        .iter()
        .enumerate()
        .filter(|(i, d)| d.is_finite() && !(few && *i == band))
        .map(|(_, d)| *d)
        .collect();
    others.sort_by(f64::total_cmp);
    match others.get(others.len() / 2) {
        // the median of sizes of a normal distribution is 0.6745 of its deviation
        Some(m) => (m / 0.6745).max(LEAST_DRIFT),
        None => DRIFT,
    }
}

/// What each piece loses by its bands: ln(measured/expected), weight, cell.
struct Losses {
    of: Vec<Vec<(f64, f64, usize)>>,
    /// Median over all bands, by piece.
    of_all: Vec<Option<(f64, f64)>>,
    /// Cell of a piece on a band, by band and piece.
    at: std::collections::HashMap<(usize, usize), usize>,
}

impl Losses {
    fn of(pieces: usize, cells: &[BenchCell], slipped: &[Slipped]) -> Self {
        let mut of = vec![Vec::new(); pieces];
        let mut at = std::collections::HashMap::new();
        for (i, c) in cells.iter().enumerate() {
            let Some(e) = c.expected.filter(|e| e.matched_db > 0.0) else {
                continue;
            };
            at.insert((c.band, c.piece), i);
            if slipped
                .iter()
                .any(|f| f.0 == c.band && f.1.is_none_or(|p| p == c.piece))
            {
                continue;
            }
            let u = libm::hypot(c.u_matched_db() / e.matched_db, SHAPE);
            if c.matched_db() > 0.0 && u.is_finite() {
                let ln = libm::log(c.matched_db() / e.matched_db);
                of[c.piece].push((ln, 1.0 / (u * u), i));
            }
        }
        for list in &mut of {
            list.sort_by(|a, b| a.0.total_cmp(&b.0));
        }
        let of_all = of
            .iter()
            .map(|list| median(&list.iter().map(|x| (x.0, x.1)).collect::<Vec<_>>()))
            .collect();
        Self { of, of_all, at }
    }

    /// The power a reading tells of; none where nothing is expected of its piece, or it was read
    /// with other adapters than the baseline.
    fn seen(&self, k: &Kept<'_, '_>, cells: &[BenchCell]) -> Option<Seen> {
        let Some(piece) = k.taken.piece else {
            return Some(Seen {
                minutes: k.minutes,
                ln_w: libm::log(k.watts),
                u: k.u,
            });
        };
        let at = *self.at.get(&(k.band, piece))?;
        let c = &cells[at];
        let e = c.expected?;
        if c.method != Method::Substitution {
            return None;
        }
        let (ratio, u_ln) = self.by_others(piece, at).unwrap_or((0.0, UNKNOWN));
        let matched = e.matched_db * libm::exp(ratio);
        let u_db = matched.max(e.matched_db)
            * libm::hypot(libm::hypot(u_ln, SHAPE), e.u_matched_db / e.matched_db);
        let per_db = core::f64::consts::LN_10 / 10.0;
        Some(Seen {
            minutes: k.minutes,
            ln_w: libm::log(k.watts) + per_db * (matched + e.mismatch_db()),
            u: libm::hypot(k.u, per_db * u_db),
        })
    }

    /// Whether too few other bands tell what a piece loses.
    fn few(&self, piece: usize, cell: usize) -> bool {
        self.by_others(piece, cell).is_none()
    }

    /// Whether another band says that a piece loses about what its sheet says.
    fn healthy_elsewhere(&self, piece: usize, cell: usize) -> bool {
        let others = self.of[piece].iter().filter(|x| x.2 != cell);
        let mut off = others.map(|x| x.0.abs());
        off.any(|o| o < HEALTHY)
    }

    /// Median of ln(measured/expected) over the other bands by weight, and its standard uncertainty,
    /// with what they differ among themselves; none with fewer than two.
    fn by_others(&self, piece: usize, cell: usize) -> Option<(f64, f64)> {
        let list = &self.of[piece];
        if list.len() > FEW {
            return self.of_all[piece];
        }
        let others: Vec<(f64, f64)> = list
            .iter()
            .filter(|x| x.2 != cell)
            .map(|x| (x.0, x.1))
            .collect();
        median(&others)
    }
}

/// Weighted median of values (value, weight) in rising order, and its standard uncertainty: by the
/// weights, and by how far the values lie from it.
fn median(values: &[(f64, f64)]) -> Option<(f64, f64)> {
    if values.len() < 2 {
        return None;
    }
    let all: f64 = values.iter().map(|x| x.1).sum();
    let mut sum = 0.0;
    let middle = values
        .iter()
        .find(|x| {
            sum += x.1;
            sum >= 0.5 * all
        })
        .map_or(0.0, |x| x.0);
    let mut off: Vec<f64> = values.iter().map(|x| (x.0 - middle).abs()).collect();
    off.sort_by(f64::total_cmp);
    // the median of sizes of a normal distribution is 0.6745 of its deviation, and a median scatters
    // by √(π/2) of a mean
    let apart = off[off.len() / 2] / 0.6745 / libm::sqrt(values.len() as f64);
    let by_weight = 1.0 / libm::sqrt(all);
    Some((middle, 1.2533 * apart.max(by_weight)))
}

/// What is said about a band.
struct Told<'t, 'g, 'm> {
    s: &'t Session,
    rows: &'t [(&'t Kept<'g, 'm>, Seen)],
    seen: &'t [Seen],
    drift: f64,
    band: usize,
    bands: &'t [BenchBand],
    kept: &'t [Kept<'g, 'm>],
    losses: &'t Losses,
}

impl Told<'_, '_, '_> {
    /// Whether pieces of the band are compared with their sheets, because too few other bands tell.
    fn by_sheets(&self) -> bool {
        self.rows.iter().any(|(k, _)| {
            let cell = k
                .taken
                .piece
                .and_then(|p| Some((p, *self.losses.at.get(&(k.band, p))?)));
            cell.is_some_and(|(p, c)| self.losses.few(p, c))
        })
    }

    fn explain(&self, e: &Explained) -> Option<(Slipped, Diagnostic)> {
        if e.candidates.iter().any(|c| c.0 == Odd::Drift) {
            // drift has its own finding
            return None;
        }
        let (best, _) = *e.candidates.first()?;
        let band = &*self.bands[self.band].band;
        let (index, mut d, slipped) = match best {
            Odd::Drift => return None,
            // a cable that is not as its sheet says looks like a jump
            Odd::Jump(..) if self.by_sheets() => return None,
            Odd::Jump(n, by) => {
                let (after, before) = (self.rows.get(n)?.0, self.rows.get(n - 1)?.0);
                let percent = 100.0 * (libm::exp(by) - 1.0);
                let d = Diagnostic::new(
                    &codes::READING_SLIP,
                    after.taken.value_loc,
                    format!(
                        "{}On {band}, the power changed by {} % at once between {} and {}: what was read before fits the baseline before it, and what was read after fits the one after.",
                        after.taken.place(),
                        number(percent, 1),
                        self.name(before),
                        self.name(after),
                    ),
                )
                .at("from here on another power")
                .help("Taken along a straight line, both sides are wrong. Read the band again, or read a baseline between the two.");
                (None, d, (self.band, None))
            }
            Odd::Reading(i) => {
                let (d, slipped) = self.reading(i)?;
                (Some(i), d, slipped)
            }
        };
        for (other, _) in e.candidates.iter().skip(1) {
            if let Odd::Reading(i) = other
                && Some(*i) != index
                && let Some((fits, _)) = self.fits(*i)
            {
                let k = self.rows[*i].0;
                d = d.help(format!(
                    "The readings cannot tell whether it is this or {}: {} in its place of {} would fit as well.",
                    self.name(k),
                    power(fits),
                    power(k.watts)
                ));
            }
        }
        Some((slipped, d))
    }

    /// The figure that would fit in place of a reading, W, and its relative uncertainty.
    fn fits(&self, i: usize) -> Option<(f64, f64)> {
        let (ln, u) = without(self.seen, i, self.drift)?;
        let (k, seen) = self.rows.get(i)?;
        Some((k.watts * libm::exp(ln - seen.ln_w), libm::hypot(u, seen.u)))
    }

    fn name(&self, k: &Kept<'_, '_>) -> String {
        match k.taken.piece.and_then(|p| self.s.pieces.get(p)) {
            Some(p) => format!("`{}`", p.name.text),
            None => match k.taken.minutes {
                Some(m) => format!("the baseline at {} min", number(m, 2)),
                None => "a baseline".to_owned(),
            },
        }
    }

    fn reading(&self, i: usize) -> Option<(Diagnostic, Slipped)> {
        let k = self.rows.get(i)?.0;
        let (fits, u) = self.fits(i)?;
        let written = slip(k.watts, fits, u);
        let off_db = downlead_quantity::to_db(fits / k.watts);
        let band = &*self.bands[self.band].band;
        let baseline = k.taken.kind == ReadingKind::Baseline;
        if self.by_sheets() {
            let cell = k
                .taken
                .piece
                .and_then(|p| Some((p, *self.losses.at.get(&(k.band, p))?)));
            let healthy = cell.is_none_or(|(p, c)| self.losses.healthy_elsewhere(p, c));
            if !healthy || !matches!(written, Some((Slip::Point, _))) {
                return None;
            }
        }
        let loss_db = 10.0 * (self.rows[i].1.ln_w - libm::log(k.watts)) / core::f64::consts::LN_10;
        if !baseline && off_db.abs() < GROSS_DB.max(GROSS_SHARE * loss_db) {
            return None;
        }
        let of_others = if baseline {
            "the pieces and the other baselines of the band"
        } else {
            "the other readings of the band and of this piece"
        };
        let d = Diagnostic::new(
            &codes::READING_SLIP,
            k.taken.value_loc,
            format!(
                "{}On {band}, {} was read as {}; {} would fit {of_others}.",
                k.taken.place(),
                self.name(k),
                power(k.watts),
                power(fits),
            ),
        )
        .at("a slip?");
        let d = d.help(match (written, self.of_another_band(k, fits, u)) {
            (_, Some(other)) => {
                format!("It is nearly the baseline of {other}: are the two exchanged?")
            }
            (Some((Slip::Swapped, v)), _) => {
                format!("{} with two digits swapped?", power(v))
            }
            (Some((Slip::Point, v)), _) => {
                format!("{} with the decimal point in the wrong place?", power(v))
            }
            (None, None) => "Look at what was written down, and read it again.".to_owned(),
        });
        let slipped = (self.band, k.taken.piece);
        Some((d, slipped))
    }

    /// Another band whose baseline is what would fit here, while this one would fit there.
    fn of_another_band(&self, k: &Kept<'_, '_>, fits: f64, u: f64) -> Option<&str> {
        if k.taken.piece.is_some() {
            return None;
        }
        let near = |a: f64, b: f64| libm::log(a / b).abs() < (3.0 * u).max(DRIFT);
        let other = self.kept.iter().find(|o| {
            let there = &self.bands[o.band].baselines;
            o.band != self.band
                && o.taken.piece.is_none()
                && near(o.watts, fits)
                && there.iter().any(|b| near(b.0, k.watts))
        })?;
        Some(&self.bands[other.band].band)
    }
}
