//! The pieces as a whole, and what is wrong with a session.

use std::collections::HashMap;

use downlead_base::{Diagnostic, Severity, codes};
use downlead_physics::measure::{
    FitPoint, FitRules, Length, NO_ONE_FACTOR, Source, Verdict, WholeCable, against_tape, fit,
    length_from_delay, length_from_phase_slope, length_from_spacing, normal_quantile, whole_cable,
};
use downlead_quantity::{db, decibel_signed, number};
use downlead_station::Env;
use downlead_station::session::{LengthBy, Piece, ReadingKind, Session};

use super::gather::Gathered;
use super::meters::Meters;
use super::result::{BenchBand, BenchCell, BenchPiece, Method};

/// A measured loss below this share of the expected one, by more than the uncertainty, is rather a
/// wrong length or type than a good cable (common practice).
const FAR_TOO_LOW: f64 = 0.6;

/// Up to so many bands are all named in a message; of more, the first [`NAMED_OF_MANY`].
const NAMED: usize = 12;
const NAMED_OF_MANY: usize = 4;

pub(super) fn pieces(
    s: &Session,
    env: &Env,
    cells: &[BenchCell],
    bands: &[BenchBand],
    out: &mut Vec<Diagnostic>,
) -> Vec<BenchPiece> {
    s.pieces
        .iter()
        .enumerate()
        .map(|(i, p)| piece(s, i, p, env, cells, bands, out))
        .collect()
}

fn piece(
    s: &Session,
    index: usize,
    p: &Piece,
    env: &Env,
    cells: &[BenchCell],
    bands: &[BenchBand],
    out: &mut Vec<Diagnostic>,
) -> BenchPiece {
    let mine: Vec<usize> = (0..cells.len())
        .filter(|c| cells[*c].piece == index && !cells[*c].slip)
        .collect();
    let metres = p.metres();
    let line = p.line();
    let celsius = line
        .and_then(|l| l.temperature.as_deref())
        .map_or(20.0, |t| t.value);
    // the same tape and the same sheet on all bands
    let shared = metres.map_or(0.0, |m| m.u / m.value);
    let with: Vec<usize> = mine
        .iter()
        .copied()
        .filter(|c| cells[*c].expected.is_some_and(|e| e.matched_db > 0.0))
        .collect();
    let points: Vec<downlead_physics::measure::Point> = with
        .iter()
        .filter_map(|c| {
            let x = &cells[*c];
            let e = x.expected?;
            Some(downlead_physics::measure::Point {
                measured_db: x.matched_db(),
                expected_db: e.matched_db,
                u_measured_db: x.u_matched_db(),
                // for the worst band only: in the mean it is one thing on all bands, added after
                u_expected_db: e.u_matched_db,
            })
        })
        .collect();
    let sheet = with
        .iter()
        .filter_map(|c| cells[*c].expected.map(|e| e.u_matched_db / e.matched_db))
        .fold(0.0_f64, f64::max);
    let measured: Vec<&BenchCell> = with.iter().map(|c| &cells[*c]).collect();
    let mut whole = whole_cable(
        &points,
        &common_causes(&measured),
        libm::hypot(shared, sheet),
    );
    if let Some(w) = &mut whole {
        w.verdict = judged(w, &measured);
    }
    let worst = whole.as_ref().and_then(|w| with.get(w.worst).copied());
    let joins_share = mine
        .iter()
        .map(|c| &cells[*c])
        .filter(|c| c.per_length.is_some_and(|p| p.trusted))
        .filter_map(|c| Some((c.expected?, c.matched_db())))
        .map(|(e, db)| e.u_joins_db / (db - e.joins_db))
        .filter(|share| share.is_finite())
        .fold(0.0, f64::max);
    // the same tape and the same joins on all bands: their uncertainty does not average out
    let common = libm::hypot(shared, joins_share);
    let (found, fit_bands) = fitted(s, metres, celsius, common, &mine, cells, bands);
    BenchPiece {
        name: p.name.text.clone(),
        tag: p.name.loc,
        loc: p.loc,
        cable: line
            .and_then(|l| l.cable.as_ref())
            .map_or_else(|| "".into(), |n| n.text.clone()),
        length_m: metres.map(|m| (m.value, m.u)),
        celsius,
        whole,
        worst,
        fit: found,
        joins_share,
        fit_bands: fit_bands.into(),
        lengths: lengths(s, p, env, out).into(),
    }
}

type Fitted =
    Option<Result<downlead_physics::measure::LossFit, downlead_physics::measure::FitError>>;

/// The verdict on a piece as a whole, with what its bands say each for itself.
fn judged(w: &WholeCable, measured: &[&BenchCell]) -> Verdict {
    let differs = measured
        .iter()
        .filter_map(|c| c.comparison.as_ref())
        .any(|x| x.verdict == Verdict::Differs);
    let left_out = measured.iter().any(|c| {
        c.matched_db() <= 0.0
            && c.comparison
                .as_ref()
                .is_some_and(|x| x.verdict == Verdict::Differs)
    });
    let maximum = measured
        .iter()
        .all(|c| c.expected.is_some_and(|e| e.maximum));
    match w.verdict {
        // less than a maximum is what the sheet promises, unless a band loses more
        Verdict::Differs if w.ln_ratio < 0.0 && maximum => match differs {
            true => Verdict::CannotTell,
            false => Verdict::Agrees,
        },
        // too much on one band and too little on another cancel in the mean
        Verdict::Agrees if differs && w.p < NO_ONE_FACTOR => Verdict::CannotTell,
        // a band without a loss above zero is in no mean, and off all the same
        Verdict::Agrees if left_out => Verdict::CannotTell,
        v => v,
    }
}

/// The two coefficients from the readings of a piece.
fn fitted(
    s: &Session,
    metres: Option<downlead_quantity::Measure>,
    celsius: f64,
    shared: f64,
    mine: &[usize],
    cells: &[BenchCell],
    bands: &[BenchBand],
) -> (Fitted, Vec<usize>) {
    let Some(m) = metres.filter(|m| m.value > 0.0) else {
        return (None, Vec::new());
    };
    let all: Vec<&BenchCell> = mine.iter().map(|c| &cells[*c]).collect();
    let (points, taken) = fit_points(&all, bands, m.value);
    let used: Vec<usize> = taken.iter().map(|c| c.band).collect();
    if points.len() < 2 {
        return (None, used);
    }
    let celsius = s.temperature.map_or(celsius, |t| t.value);
    let mut found = fit(&points, &FitRules { celsius, shared });
    if let Ok(f) = &mut found {
        let per_m = common_causes(&taken)
            .into_iter()
            .map(|c| c.into_iter().map(|db| db / m.value).collect());
        f.correlate(&points, &per_m.collect::<Vec<_>>());
    }
    (Some(found), used)
}

/// The points of the fit of one piece, `metres` long, from its cells, and the cells they are of.
pub(super) fn fit_points<'c>(
    mine: &[&'c BenchCell],
    bands: &[BenchBand],
    metres: f64,
) -> (Vec<FitPoint>, Vec<&'c BenchCell>) {
    mine.iter()
        .filter_map(|c| {
            let joins = c.expected.map_or(0.0, |e| e.joins_db);
            let point = FitPoint {
                f_hz: bands[c.band].hz,
                db_per_m: (c.matched_db() - joins) / metres,
                u_db_per_m: c.u_matched_db() / metres,
            };
            (point.db_per_m > 0.0 && c.measured.u_db > 0.0).then_some((point, *c))
        })
        .unzip()
}

/// The causes that act on more than one of these readings, each with its signed contribution to
/// every one of them, dB (standard).
#[must_use]
pub fn common_causes(cells: &[&BenchCell]) -> Vec<Vec<f64>> {
    // in one pass: at thousands of frequencies most causes act on one reading only
    let mut rows: HashMap<Source, usize> = HashMap::new();
    let mut causes: Vec<Vec<(usize, f64)>> = Vec::new();
    for (i, c) in cells.iter().enumerate() {
        for t in &c.budget {
            // how impedance and directivity meet the wave changes with frequency
            if matches!(t.source, Source::Other(_)) {
                continue;
            }
            let row = *rows.entry(t.source).or_insert_with(|| {
                causes.push(Vec::new());
                causes.len() - 1
            });
            match causes[row].last_mut() {
                Some((cell, db)) if *cell == i => *db += t.u_db,
                _ => causes[row].push((i, t.u_db)),
            }
        }
    }
    causes
        .into_iter()
        .filter(|acts| acts.iter().filter(|(_, db)| *db != 0.0).count() > 1)
        .map(|acts| {
            let mut row = vec![0.0; cells.len()];
            for (cell, db) in acts {
                row[cell] = db;
            }
            row
        })
        .collect()
}

fn lengths(
    s: &Session,
    p: &Piece,
    env: &Env,
    out: &mut Vec<Diagnostic>,
) -> Vec<(
    downlead_base::Loc,
    Length,
    Option<downlead_physics::measure::Tape>,
)> {
    let mut found = Vec::new();
    for r in s.lengths.iter().filter(|r| r.piece.text == p.name.text) {
        let cable = p.line().and_then(|l| l.cable.as_ref());
        // a cable that is missing or not known has its own finding
        let Some(cable) = cable.and_then(|n| env.cable(&n.text)) else {
            continue;
        };
        let velocity = cable.velocity;
        let Some(v) = velocity else {
            out.push(
                Diagnostic::new(
                    &codes::READING_NOT_USED,
                    r.loc,
                    format!(
                        "The length of `{}` by its waves needs a velocity factor, and none is known.",
                        p.name.text
                    ),
                )
                .at("takes no part")
                .help("State it in the cable's definition: `velocity 0.66`."),
            );
            continue;
        };
        let u = v.u / v.value;
        let electrical = match r.by {
            LengthBy::Resonance(m) => length_from_spacing(m.value, m.u, v.value, u),
            LengthBy::Delay(m) => length_from_delay(m.value, m.u, v.value, u),
            LengthBy::Phase(m) => length_from_phase_slope(m.value, m.u, v.value, u),
        };
        let tape = p.metres().map(|m| {
            against_tape(
                electrical,
                Length {
                    metres: m.value,
                    u_metres: m.u,
                },
                v.value,
                u,
            )
        });
        if let Some(t) = tape.filter(|t| t.verdict == Verdict::Differs) {
            out.push(
                Diagnostic::new(
                    &codes::LENGTH_DIFFERS,
                    r.loc,
                    format!(
                        "`{}` is {} m long by its waves and {} m by the tape: {} m apart, with an uncertainty of {} m.",
                        p.name.text,
                        number(electrical.metres, 2),
                        number(electrical.metres - t.difference_m, 2),
                        number(t.difference_m.abs(), 2),
                        number(t.expanded_m, 2)
                    ),
                )
                .at("longer or shorter than the tape says")
                .also(p.loc, "the piece")
                .help(format!(
                    "Either the tape or the type is wrong: the lengths agree with a velocity factor of {}.",
                    number(t.velocity_factor, 3)
                )),
            );
        }
        found.push((r.loc, electrical, tape));
    }
    found
}

/// What is missing or wrong in a session as a whole.
pub(super) fn session(
    s: &Session,
    g: &Gathered<'_>,
    meters: &Meters<'_>,
    out: &mut Vec<Diagnostic>,
) {
    if g.groups.iter().all(|x| x.taken.is_empty()) {
        return;
    }
    let own = |f: &dyn Fn(&super::gather::Taken<'_>) -> bool| {
        g.groups.iter().all(|x| x.taken.iter().all(f))
    };
    let mut lacks = Vec::new();
    if s.meta.date.is_none() {
        lacks.push("date");
    }
    if s.meta.instrument.is_none() && !own(&|t| t.instrument.is_some()) {
        lacks.push("instrument");
    }
    if s.meta.person.is_none() {
        lacks.push("person");
    }
    if !lacks.is_empty() {
        out.push(
            Diagnostic::new(
                &codes::READING_INCOMPLETE,
                s.meta_loc.unwrap_or(s.loc),
                format!(
                    "The readings of this session have no {}.",
                    lacks.join(", no ")
                ),
            )
            .at("who read them, when and with what?")
            .help("Written for example `read 2026-07-19 with W1 by QY5BEN`."),
        );
    }
    if let Some(date) = &s.meta.date {
        for i in meters.instruments() {
            crate::instrument::lapsed(i, date, s.meta_loc.unwrap_or(s.loc), out);
        }
    }
    families(s, g, out);
}

/// A piece whose ends are of another family than another's goes in with an adapter.
fn families(s: &Session, g: &Gathered<'_>, out: &mut Vec<Diagnostic>) {
    let ends = |p: &Piece| p.part.ends.as_ref().map(|e| e.0.clone());
    let mut first: Option<(Box<str>, &Piece)> = None;
    for (i, p) in s.pieces.iter().enumerate() {
        let Some(e) = ends(p) else { continue };
        match &first {
            None => first = Some((e, p)),
            Some((f, q)) if *f != e => {
                let alone = |i: usize| {
                    g.groups.iter().flat_map(|x| &x.taken).any(|t| {
                        t.kind == ReadingKind::Through
                            && t.piece == Some(i)
                            && t.adapters.is_empty()
                    })
                };
                let other = s.pieces.iter().position(|x| x.name.text == q.name.text);
                if alone(i) && other.is_some_and(alone) {
                    out.push(
                        Diagnostic::new(
                            &codes::BASELINE_PATH,
                            p.loc,
                            format!(
                                "`{}` has {e} ends and `{}` has {f} ends: one of them went in with adapters, and no reading says so.",
                                p.name.text, q.name.text
                            ),
                        )
                        .at(format!("{e} ends"))
                        .also(q.loc, format!("{f} ends"))
                        .help("Say it at the readings: `through A 22.8 W at 2 min, adapter 2 of n-to-uhf`; their loss is then taken off."),
                    );
                }
                return;
            }
            Some(_) => {}
        }
    }
}

/// Findings about the verdicts: one for each piece and kind.
pub(super) fn verdicts(
    pieces: &[BenchPiece],
    cells: &[BenchCell],
    bands: &[BenchBand],
    out: &mut Vec<Diagnostic>,
) {
    let family = Family::of(pieces, cells);
    for (i, p) in pieces.iter().enumerate() {
        let mine: Vec<&BenchCell> = cells.iter().filter(|c| c.piece == i).collect();
        let of = |v: Verdict| -> Vec<&BenchCell> {
            mine.iter()
                .copied()
                .filter(|c| c.comparison.as_ref().is_some_and(|x| x.verdict == v))
                .collect()
        };
        differs(p, &of(Verdict::Differs), bands, &family, out);
        cannot(p, &of(Verdict::CannotTell), mine.len(), bands, out);
    }
}

fn names(cells: &[&BenchCell], bands: &[BenchBand]) -> String {
    let all: Vec<&str> = cells.iter().map(|c| &*bands[c.band].band).collect();
    if all.len() > NAMED {
        let more = all.len() - NAMED_OF_MANY;
        return format!("{} and {more} more", all[..NAMED_OF_MANY].join(", "));
    }
    match all.split_last() {
        Some((last, [])) => (*last).to_owned(),
        Some((last, rest)) => format!("{} and {last}", rest.join(", ")),
        None => String::new(),
    }
}

/// What a piece is compared with: its cable, or the loss that stands in its line.
fn promised(p: &BenchPiece) -> String {
    if p.cable.is_empty() {
        "the loss stated for it".to_owned()
    } else {
        format!("`{}`", p.cable)
    }
}

/// Chance that a session of good pieces accuses one of them (common practice).
const FAMILY: f64 = 0.05;

/// How many comparisons a session makes: at 95 % each, of 36 good results about two are outside.
struct Family {
    /// Comparisons of one piece on one band.
    bands: usize,
    /// Pieces judged over all their bands.
    pieces: usize,
}

impl Family {
    fn of(pieces: &[BenchPiece], cells: &[BenchCell]) -> Self {
        Family {
            bands: cells.iter().filter(|c| c.comparison.is_some()).count(),
            pieces: pieces.iter().filter(|p| p.whole.is_some()).count(),
        }
    }

    /// So many times its `U` (k = 2) one of `n` results must be off before the family of them is
    /// wrong in no more than 5 % of sessions (Bonferroni's inequality).
    fn factor(n: usize) -> f64 {
        let n = n.max(1) as f64;
        (0.5 * normal_quantile(1.0 - 0.5 * FAMILY / n)).max(1.0)
    }

    /// Whether a piece is off by more than chance explains: as a whole or on one band.
    fn accuses(&self, p: &BenchPiece, excess: f64) -> bool {
        let whole = p.whole.as_ref().is_some_and(|w| {
            w.verdict == Verdict::Differs
                && w.ln_ratio.abs() > 2.0 * Self::factor(self.pieces) * w.u_ln
        });
        whole || excess > Self::factor(self.bands)
    }
}

fn differs(
    p: &BenchPiece,
    cells: &[&BenchCell],
    bands: &[BenchBand],
    family: &Family,
    out: &mut Vec<Diagnostic>,
) {
    let excess = |c: &BenchCell| {
        c.comparison
            .as_ref()
            .map_or(0.0, |x| x.difference_db.abs() / x.expanded_db)
    };
    // more through than without the piece is said as such
    let Some(worst) = cells
        .iter()
        .copied()
        .filter(|c| c.measured.db >= 0.0)
        .max_by(|a, b| excess(a).total_cmp(&excess(b)))
    else {
        return;
    };
    let (Some(x), Some(e)) = (&worst.comparison, worst.expected) else {
        return;
    };
    let too_low = worst.measured.db + x.expanded_db < FAR_TOO_LOW * e.db;
    let code = if too_low {
        &codes::LOSS_TOO_LOW
    } else {
        &codes::CABLE_DIFFERS
    };
    let mut d = Diagnostic::new(
        code,
        p.tag,
        format!(
            "`{}` differs from {} on {}: on {}, {} measured and {} expected, {} with an uncertainty of {}.",
            p.name,
            promised(p),
            names(cells, bands),
            bands[worst.band].band,
            db(worst.measured.db),
            db(e.db),
            decibel_signed(x.difference_db),
            db(x.expanded_db)
        ),
    )
    .at(if x.difference_db > 0.0 {
        "loses more than its sheet says"
    } else {
        "loses less than its sheet says"
    });
    if !family.accuses(p, excess(worst)) {
        d.severity = Severity::Info;
        out.push(d.help(format!(
            "Just outside, on {} of the {} comparisons of this session: of so many, about {} are outside by chance. As a whole the piece is not accused.",
            cells.len(),
            family.bands,
            number(0.05 * family.bands as f64, 1)
        )));
        return;
    }
    d = if too_low {
        d.help("No cable of this type is that good: look at its length and type, and at the joins.")
    } else if x.difference_db > 0.0 {
        d.help("Water, tired plugs, age, or another type than printed on it. Its own fit (`downlead fit`) describes it as it is.")
    } else {
        d.help("Look at its length and type, and at the joins of the baseline.")
    };
    out.push(d);
}

fn cannot(
    p: &BenchPiece,
    cells: &[&BenchCell],
    of: usize,
    bands: &[BenchBand],
    out: &mut Vec<Diagnostic>,
) {
    let Some(easiest) = cells.iter().copied().min_by(|a, b| {
        let f = |c: &BenchCell| {
            c.comparison
                .as_ref()
                .and_then(|x| x.meter_factor)
                .unwrap_or(f64::INFINITY)
        };
        f(a).total_cmp(&f(b))
    }) else {
        return;
    };
    let (Some(x), Some(e)) = (&easiest.comparison, easiest.expected) else {
        return;
    };
    let mut d = Diagnostic::new(
        &codes::READING_CANNOT_TELL,
        p.tag,
        format!(
            "Whether `{}` is as good as {} cannot be told on {} ({} of {of} bands): on {} the uncertainty of {} is more than half of the {} to be confirmed.",
            p.name,
            promised(p),
            names(cells, bands),
            cells.len(),
            bands[easiest.band].band,
            db(x.expanded_db),
            db(e.db)
        ),
    )
    .at("cannot tell");
    if let Some(f) = x.meter_factor.filter(|f| *f > 1.0) {
        d = d.help(format!(
            "On {}, an uncertainty {} times smaller would tell: a better meter, or more readings.",
            bands[easiest.band].band,
            number(libm::ceil(10.0 * f - 1e-9) / 10.0, 1)
        ));
    }
    if let (Some(f), Some((m, _))) = (easiest.length_factor, p.length_m) {
        d = d.help(format!(
            "A piece of {} m of the same cable would tell with this meter.",
            number(libm::ceil(f * m - 1e-9), 0)
        ));
    }
    if easiest.drift_prevails() {
        d = d.help(format!(
            "On {}, most of the uncertainty is how the baseline changed meanwhile. Read it directly before and after the piece; a baseline that was misread shows as such a change too.",
            bands[easiest.band].band
        ));
    }
    if easiest.method == (Method::OtherMeter { equalised: false })
        || easiest.method == (Method::TwoMeters { equalised: false })
    {
        d = d.help("With one meter for both readings its scale error cancels.");
    }
    out.push(d);
}
