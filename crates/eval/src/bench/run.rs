//! Which piece is the best for a run of some length: the fits of the pieces carried to that length
//! and frequency, with the uncertainty of their differences.
//!
//! Only the law `k1 √f + k2 f` that was fitted to a piece's own readings is used, never a single
//! reading scaled up.

use std::collections::HashMap;

use downlead_physics::measure::{FitPoint, LossFit, Source, ranking_with};
use downlead_quantity::Measure;
use downlead_station::session::Session;

use super::result::{BenchCell, SessionResult};
use super::summary::fit_points;

/// The law is not carried on further than this ratio beyond the readings, either way (common
/// practice).
const MOST_BEYOND: f64 = 2.0;

/// Why a piece has no answer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NoRun {
    /// Its readings give no fit.
    NoFit,
    /// The frequency is too far from those it was read at, Hz.
    TooFar {
        /// Lowest frequency of the readings.
        low: f64,
        /// Highest frequency of the readings.
        high: f64,
    },
}

/// A run of the cable of one piece.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Run {
    /// Index of the piece.
    pub piece: usize,
    /// Index of the first run it cannot be distinguished from, itself included: its rank from 0.
    pub rank: usize,
    /// How many share that rank.
    pub sharing: usize,
    /// Loss of the cable without joins, dB.
    pub db: f64,
    /// Its standard uncertainty, dB.
    pub u_db: f64,
    /// Loss beyond that of the best, dB; 0 of the best.
    pub more_db: f64,
    /// Standard uncertainty of that difference, dB: what the two pieces share counts once.
    pub u_more_db: f64,
    /// Ratio of the frequency to the nearest of the readings' range; 1 inside.
    pub beyond: f64,
}

/// The pieces as runs at one frequency.
#[derive(Clone, Debug, PartialEq)]
pub struct RunsAt {
    /// Hz.
    pub hz: f64,
    /// By loss, least first.
    pub runs: Vec<Run>,
    /// Pieces without an answer.
    pub refused: Vec<(usize, NoRun)>,
}

/// One piece and what its fit was made from.
struct Fitted<'r> {
    piece: usize,
    fit: &'r LossFit,
    points: Vec<FitPoint>,
    cells: Vec<&'r BenchCell>,
    metres: f64,
    /// Relative standard uncertainty by its joins, and their kind where there is one.
    joins: Option<(f64, &'r str)>,
}

/// Temperature the runs are computed for, °C: that of the bench, else 20.
#[must_use]
pub fn celsius(s: &Session) -> f64 {
    s.temperature.map_or(20.0, |t| t.value)
}

/// The pieces of a session as runs of `length` at `hz`, at the temperature of the bench.
#[must_use]
pub fn runs(s: &Session, r: &SessionResult, length: Measure, hz: f64) -> RunsAt {
    let mut refused = Vec::new();
    let mut all = Vec::new();
    for piece in 0..r.pieces.len() {
        match fitted(s, r, piece) {
            None => refused.push((piece, NoRun::NoFit)),
            Some(f) => {
                let (low, high) = f.fit.range_hz;
                if hz > MOST_BEYOND * high || hz * MOST_BEYOND < low {
                    refused.push((piece, NoRun::TooFar { low, high }));
                } else {
                    all.push(f);
                }
            }
        }
    }
    let at = At {
        hz,
        length,
        celsius: celsius(s),
    };
    RunsAt {
        hz,
        runs: at.ranked(&all),
        refused,
    }
}

fn fitted<'r>(s: &'r Session, r: &'r SessionResult, piece: usize) -> Option<Fitted<'r>> {
    let p = &r.pieces[piece];
    let fit = p.fit.as_ref()?.as_ref().ok()?;
    let metres = p.length_m?.0;
    let mine: Vec<&BenchCell> = r
        .cells
        .iter()
        .filter(|c| c.piece == piece && !c.slip)
        .collect();
    let (points, cells) = fit_points(&mine, &r.bands, metres);
    let joins = match &s.pieces.get(piece)?.connectors[..] {
        [(_, name)] => Some((p.joins_share, &*name.text)),
        _ => None,
    };
    Some(Fitted {
        piece,
        fit,
        points,
        cells,
        metres,
        joins,
    })
}

/// Where the runs are compared.
struct At {
    hz: f64,
    length: Measure,
    celsius: f64,
}

impl At {
    fn ranked(&self, all: &[Fitted<'_>]) -> Vec<Run> {
        let per_m: Vec<_> = all
            .iter()
            .map(|f| f.fit.predict_at(self.hz, self.celsius))
            .collect();
        let causes: Vec<HashMap<Source, f64>> = all.iter().map(|f| self.causes(f)).collect();
        // standard uncertainty of the difference of two runs, dB
        let apart = |a: usize, b: usize| -> f64 {
            let (ua, ub) = (per_m[a].u_db_per_m, per_m[b].u_db_per_m);
            let readings: f64 = causes[a]
                .iter()
                .filter_map(|(s, u)| Some(u * causes[b].get(s)?))
                .sum();
            // joins of one kind are off alike
            let joins = match (all[a].joins, all[b].joins) {
                (Some((x, of)), Some((y, kind))) if of == kind => {
                    x * per_m[a].db_per_m * y * per_m[b].db_per_m
                }
                _ => 0.0,
            };
            let square = (ua * ua + ub * ub - 2.0 * (readings + joins)).max(0.0);
            let difference = per_m[a].db_per_m - per_m[b].db_per_m;
            libm::hypot(
                self.length.value * libm::sqrt(square),
                self.length.u * difference,
            )
        };
        let values: Vec<(f64, f64)> = per_m
            .iter()
            .map(|p| {
                let own = self.length.value * p.u_db_per_m;
                let u = libm::hypot(own, self.length.u * p.db_per_m);
                (self.length.value * p.db_per_m, u)
            })
            .collect();
        let order = ranking_with(&values, |a, b| 2.0 * apart(a, b));
        let Some(best) = order.first().map(|o| o.item) else {
            return Vec::new();
        };
        order
            .iter()
            .map(|o| {
                let (db, u_db) = values[o.item];
                let same = |x: &&downlead_physics::measure::Ranked| x.group == o.group;
                Run {
                    piece: all[o.item].piece,
                    rank: order.iter().take_while(|x| !same(x)).count(),
                    sharing: order.iter().filter(same).count(),
                    db,
                    u_db,
                    more_db: db - values[best].0,
                    u_more_db: if o.item == best {
                        0.0
                    } else {
                        apart(o.item, best)
                    },
                    beyond: beyond(all[o.item].fit, self.hz),
                }
            })
            .collect()
    }

    /// What each cause of the readings does to the loss per length at this frequency, dB/m
    /// (standard, signed).
    fn causes(&self, f: &Fitted<'_>) -> HashMap<Source, f64> {
        let follows = f.fit.sensitivities(&f.points, self.hz, self.celsius);
        let mut out = HashMap::new();
        for (c, g) in f.cells.iter().zip(follows) {
            for t in &c.budget {
                // how impedance and directivity meet the wave is another matter for each piece
                if !matches!(t.source, Source::Other(_)) {
                    *out.entry(t.source).or_insert(0.0) += g * t.u_db / f.metres;
                }
            }
        }
        out
    }
}

/// Ratio of a frequency to the nearest end of the readings' range, 1 inside.
fn beyond(fit: &LossFit, hz: f64) -> f64 {
    let (low, high) = fit.range_hz;
    (low / hz).max(hz / high).max(1.0)
}
