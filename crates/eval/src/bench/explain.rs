//! A session's numbers back to readings and sheets, in steps a pocket calculator can follow.

use downlead_physics::measure::{BaselineUse, Comparison, Source, Term, Verdict};
use downlead_quantity::{db, decibel_signed, frequency, from_db, number, to_db};
use downlead_station::session::{LengthBy, LengthReading};

use super::result::{BenchCell, BenchPiece, Expected, Method, SessionResult};
use crate::explain::Derivation;
use crate::explain::numbers::{NOTHING_DB, decibels, op};

/// A contribution to a measured loss in words; `meters` are the instruments' names.
fn source_words(source: Source, meters: &[Box<str>]) -> String {
    let meter = |i: usize| match meters.get(i).map(|m| &**m) {
        Some("") | None => "the meter".to_owned(),
        Some(m) => m.to_owned(),
    };
    match source {
        Source::Scale(i) => format!("scale of {}", meter(i)),
        Source::Offset(i) => format!("error of full scale of {}", meter(i)),
        Source::Linearity(_) => "linearity of the readings".to_owned(),
        Source::Repeatability(_) => "repeatability of the readings".to_owned(),
        Source::Resolution(_) => "resolution of the readings".to_owned(),
        Source::Drift(_) => "drift between baselines".to_owned(),
        Source::Mismatch(_) => "mismatch".to_owned(),
        Source::Adapter(_) => "adapters".to_owned(),
        Source::Certificate(_) => "certificate of the meter".to_owned(),
        Source::Other(0) => "impedance of the cable".to_owned(),
        Source::Other(1) => "directivity".to_owned(),
        Source::Other(_) => "other".to_owned(),
    }
}

/// The verdict in words.
#[must_use]
pub fn verdict_word(v: Verdict) -> &'static str {
    match v {
        Verdict::Agrees => "agrees",
        Verdict::Differs => "differs",
        Verdict::CannotTell => "cannot tell",
    }
}

impl SessionResult {
    /// How a cell's numbers were come by.
    #[must_use]
    pub fn derivation(&self, cell: &BenchCell) -> Derivation {
        let piece = &self.pieces[cell.piece];
        let band = &self.bands[cell.band];
        let on = if band.named {
            format!("{}, {}", band.band, frequency(band.hz))
        } else {
            band.band.to_string()
        };
        let mut d = Derivation::leaf(
            format!("loss of {} on {on}", piece.name),
            format!(
                "{} ± {} ({:.1} % through)",
                db(cell.measured.db),
                db(cell.measured.expanded_db),
                cell.measured.through_percent
            ),
            Some(cell.method.words().to_owned()),
            cell.rows.first().copied(),
        );
        d = self.measured(cell, d);
        d.steps.extend(measured_uncertainty(cell, &self.meters));
        if let Some(e) = cell.expected {
            d.steps.push(expected(e, piece));
        }
        if let (Some(x), Some(e)) = (&cell.comparison, cell.expected) {
            d.steps.push(compared(cell, *x, e));
        }
        if let Some(p) = cell.per_length {
            let joins = cell.expected.map_or(0.0, |e| e.joins_db);
            let mismatch = cell.expected.map_or(0.0, |e| e.mismatch_db());
            d.steps.push(
                Derivation::leaf(
                    "per 100 m",
                    format!(
                        "{} ± {}{}",
                        db(100.0 * p.db_per_m),
                        db(200.0 * p.u_db_per_m),
                        if p.trusted {
                            ""
                        } else {
                            ", not to be relied on: the loss is less than five times its uncertainty"
                        }
                    ),
                    None,
                    Some(piece.loc),
                )
                .by(
                    if mismatch == 0.0 {
                        "100 (loss − joins) / length"
                    } else {
                        "100 (loss − reflections − joins) / length"
                    },
                    format!(
                        "100 × ({}{} − {}) / {}",
                        decibels(cell.measured.db),
                        if mismatch == 0.0 {
                            String::new()
                        } else {
                            format!(" − {}", decibels(mismatch))
                        },
                        decibels(joins),
                        length(piece.length_m)
                    ),
                ),
            );
        }
        d
    }

    fn measured(&self, cell: &BenchCell, d: Derivation) -> Derivation {
        if !cell.losses.is_empty() {
            return mean(cell, d);
        }
        match cell.method {
            Method::Substitution | Method::OtherMeter { .. } => {
                let (Some(b), Some((watts, minutes))) = (&cell.measured.baseline, cell.reading)
                else {
                    return d;
                };
                let base = &self.bands[cell.band].baselines;
                let step = Derivation::leaf("baseline then", watts_words(b.watts), None, None);
                let step = match b.how {
                    BaselineUse::Between { before, after, .. } => {
                        match (base.get(before), base.get(after)) {
                            (Some(a), Some(z)) => step.by(
                                "Pa + (Pb − Pa) (t − ta) / (tb − ta)",
                                format!(
                                    "{} + ({} − {}) × ({} − {}) / ({} − {})",
                                    watts_words(a.0),
                                    watts_words(z.0),
                                    watts_words(a.0),
                                    op(minutes),
                                    op(a.1),
                                    op(z.1),
                                    op(a.1)
                                ),
                            ),
                            _ => step,
                        }
                    }
                    BaselineUse::Nearest(_) => step.by("the nearest baseline", ""),
                    BaselineUse::Only(_) => step.by("the only baseline", ""),
                };
                let ratio = format!(
                    "10 log10({} / {})",
                    watts_words(b.watts),
                    watts_words(watts)
                );
                // adapters that were in one of the two states only
                let adapters = cell.measured.db - to_db(b.watts / watts);
                if adapters.abs() < NOTHING_DB {
                    return d.by("10 log10(P0 / P1)", ratio).with(step);
                }
                let sign = if adapters < 0.0 { "−" } else { "+" };
                d.by(
                    "10 log10(P0 / P1) and what adapters change",
                    format!("{ratio} {sign} {}", decibels(adapters.abs())),
                )
                .with(step)
                .with(Derivation::leaf(
                    "adapters in one of the two states only",
                    decibels(adapters),
                    None,
                    None,
                ))
            }
            Method::TwoMeters { .. } => two_meters(cell, d),
            Method::OpenShort => {
                let twice = 2.0 * cell.measured.db;
                let numbers = cell
                    .half_difference_db
                    .map(|x| format!("({} + {}) / 4", decibels(twice + x), decibels(twice - x)));
                d.by("(RL_open + RL_short) / 4", numbers.unwrap_or_default())
            }
            Method::OpenShortExact => d.by("tanh²(γ l) = Z_short / Z_open", ""),
            Method::OneEnd => d.by(
                "RL / 2",
                format!("{} / 2", decibels(2.0 * cell.measured.db)),
            ),
            Method::Network => d.by(
                "20 log10(1 / |S21|)",
                format!("20 log10(1 / {})", op(from_db(-0.5 * cell.measured.db))),
            ),
        }
    }

    /// The cells that a line of the text is about: those of a piece, or of a reading.
    pub fn cells_at(
        &self,
        on_line: impl Fn(downlead_base::Loc) -> bool,
    ) -> impl Iterator<Item = &BenchCell> {
        self.cells.iter().filter(move |c| {
            on_line(self.pieces[c.piece].loc) || c.rows.iter().any(|r| on_line(*r))
        })
    }
}

impl SessionResult {
    /// How a piece's electrical length was come by, from a reading of it.
    pub(crate) fn length_derivation(&self, r: &LengthReading) -> Option<Derivation> {
        let (piece, found) = self.pieces.iter().find_map(|p| {
            let found = p.lengths.iter().find(|l| l.0 == r.loc)?;
            Some((p, found))
        })?;
        let (_, l, tape) = found;
        // the time one way, s, and the law with what the instrument shows
        let (seconds, law, shown) = match &r.by {
            LengthBy::Resonance(m) => (
                0.5 / m.value,
                "149.896 × VF / spacing in MHz",
                ("149.896", " / ", m.value * 1e-6),
            ),
            LengthBy::Delay(m) => (
                m.value,
                "0.299792 × VF × delay in ns, one way",
                ("0.299792", " × ", m.value * 1e9),
            ),
            LengthBy::Phase(m) => (
                m.value.abs() / 720.0,
                "0.416378 × VF × slope in ° per MHz",
                ("0.416378", " × ", m.value.abs() * 1e6),
            ),
        };
        let velocity = l.metres / (LIGHT * seconds);
        let (factor, sign, value) = shown;
        let metres = |v: f64| format!("{} m", number(v, 3));
        let long = |v: f64| format!("{} m", op(v));
        let mut d = Derivation::leaf(
            format!("length of {} by its waves", piece.name),
            format!("{} ± {}", metres(l.metres), metres(2.0 * l.u_metres)),
            None,
            Some(r.loc),
        )
        .by(
            law,
            format!(
                "{factor} × {}{sign}{}",
                number(velocity, 4),
                number(value, 4)
            ),
        );
        if let Some(t) = tape {
            d.steps.push(
                Derivation::leaf(
                    "against the tape",
                    format!(
                        "{} with an uncertainty of {}: {}",
                        metres(t.difference_m),
                        metres(t.expanded_m),
                        verdict_word(t.verdict)
                    ),
                    None,
                    Some(piece.loc),
                )
                .by(
                    "waves − tape",
                    format!("{} − {}", long(l.metres), long(l.metres - t.difference_m)),
                ),
            );
        }
        Some(d)
    }
}

/// Speed of light, m/s (SI, exact).
const LIGHT: f64 = 299_792_458.0;

/// Watts as an operand.
fn watts_words(w: f64) -> String {
    format!("{} W", op(w))
}

fn length(l: Option<(f64, f64)>) -> String {
    l.map_or_else(|| "1 m".to_owned(), |(m, _)| format!("{} m", op(m)))
}

/// The mean of the losses of several readings of a piece; of two meters that were exchanged, the mean
/// of both ways.
fn mean(cell: &BenchCell, d: Derivation) -> Derivation {
    let way = |swapped: bool| -> Vec<String> {
        let of = cell.losses.iter().filter(|l| l.1 == swapped);
        of.map(|l| decibels(l.0)).collect()
    };
    let one = |losses: &[String]| match losses.len() {
        1 => losses[0].clone(),
        n if n > PRINTED => format!("the losses of {n} readings"),
        n => format!("({}) / {n}", losses.join(" + ")),
    };
    match (way(false), way(true)) {
        (a, b) if b.is_empty() => d.by("mean of the losses of its readings", one(&a)),
        (a, b) if a.is_empty() => d.by("mean of the losses of its readings", one(&b)),
        (a, b) => d.by(
            "mean of both ways, the meters exchanged",
            format!("({} + {}) / 2", one(&a), one(&b)),
        ),
    }
}

/// Up to so many readings are printed one by one.
const PRINTED: usize = 12;

/// Near over far, and what the two meters differ by in line and adapters change.
fn two_meters(cell: &BenchCell, d: Derivation) -> Derivation {
    const LAW: &str = "10 log10(P_near / P_far), less what the meters differ by in line";
    let Some((far, _)) = cell.reading else {
        return d.by(LAW, "");
    };
    let near = far * from_db(cell.measured.naive_db);
    let ratio = format!("10 log10({} / {})", watts_words(near), watts_words(far));
    let rest = cell.measured.db - cell.measured.naive_db;
    if rest.abs() < NOTHING_DB {
        return d.by("10 log10(P_near / P_far)", ratio);
    }
    let sign = if rest < 0.0 { "−" } else { "+" };
    d.by(LAW, format!("{ratio} {sign} {}", decibels(rest.abs())))
}

/// What the cable and its joins promise.
fn expected(e: Expected, piece: &BenchPiece) -> Derivation {
    let of = length_words(piece.length_m);
    let mismatch = e.mismatch_db();
    let own = e.matched_db - e.joins_db;
    let cable = Derivation::leaf(
        format!("{of} of {}", piece.cable),
        decibels(own),
        Some(format!("at {} °C", number(piece.celsius, 1))),
        Some(piece.loc),
    );
    let joins = Derivation::leaf("its joins", decibels(e.joins_db), None, Some(piece.loc));
    let d = Derivation::leaf(
        "expected loss",
        format!("{} ± {}", db(e.db), db(2.0 * e.u_db)),
        None,
        Some(piece.loc),
    );
    if mismatch == 0.0 {
        return d
            .by(
                "cable + joins",
                format!("{} + {}", decibels(own), decibels(e.joins_db)),
            )
            .with(cable)
            .with(joins);
    }
    d.by(
        "cable + joins + reflections at its ends",
        format!(
            "{} + {} + {}",
            decibels(own),
            decibels(e.joins_db),
            decibels(mismatch)
        ),
    )
    .with(cable)
    .with(joins)
    .with(Derivation::leaf(
        "reflections at its ends, 50 ohm before and after it",
        decibels(mismatch),
        None,
        Some(piece.loc),
    ))
}

fn length_words(l: Option<(f64, f64)>) -> String {
    l.map_or_else(
        || "its length".to_owned(),
        |(m, _)| format!("{} m", number(m, 3)),
    )
}

/// Measured against expected.
fn compared(cell: &BenchCell, x: Comparison, e: Expected) -> Derivation {
    let m = cell.measured.towards(e.db).expanded_db;
    let u = Derivation::leaf(
        "uncertainty of the difference",
        decibels(x.expanded_db),
        None,
        None,
    );
    let alone = libm::hypot(m, 2.0 * e.u_db);
    let u = if (alone / x.expanded_db - 1.0).abs() < 1e-6 {
        u.by(
            "√(U² measured + U² expected)",
            format!("√({}² + {}²)", op(m), op(2.0 * e.u_db)),
        )
    } else {
        // an instrument or a cable that both rest on counts once
        u.by(
            "√(U² measured + U² expected), with what both share taken once",
            "",
        )
    };
    Derivation::leaf(
        "measured less expected",
        format!(
            "{} with an uncertainty of {}: {}",
            decibel_signed(x.difference_db),
            db(x.expanded_db),
            verdict_word(x.verdict)
        ),
        None,
        None,
    )
    .by(
        "measured − expected; differs beyond its uncertainty, cannot tell where that is more than half of the expected loss",
        format!("{} − {}", decibels(cell.measured.db), decibels(e.db)),
    )
    .with(u)
}

/// The uncertainty of a measured loss from its causes; none where nothing is uncertain.
fn measured_uncertainty(cell: &BenchCell, meters: &[Box<str>]) -> Option<Derivation> {
    let parts: Vec<(String, f64)> = merged(&cell.budget, meters);
    if parts.is_empty() || cell.measured.expanded_db <= 0.0 {
        return None;
    }
    let squares: Vec<String> = parts.iter().map(|(_, u)| format!("{}²", op(*u))).collect();
    let mut d = Derivation::leaf(
        "uncertainty of the measured loss",
        format!(
            "{} (k = {})",
            db(cell.measured.expanded_db),
            number(cell.measured.k, 2)
        ),
        Some("GUM, JCGM 100:2008, 5.1.2".to_owned()),
        None,
    )
    .by(
        "k √(Σ u²)",
        format!("{} × √({})", op(cell.measured.k), squares.join(" + ")),
    );
    for (what, u) in parts {
        d.steps
            .push(Derivation::leaf(what, decibels(u), None, None));
    }
    Some(d)
}

/// Standard contributions by what they are, largest first; those of several readings together.
pub(crate) fn merged(terms: &[Term], meters: &[Box<str>]) -> Vec<(String, f64)> {
    let mut out: Vec<(String, f64)> = Vec::new();
    for t in terms {
        let words = source_words(t.source, meters);
        match out.iter_mut().find(|x| x.0 == words) {
            Some(x) => x.1 = libm::hypot(x.1, t.u_db),
            None => out.push((words, t.u_db.abs())),
        }
    }
    out.sort_by(|a, b| b.1.total_cmp(&a.1));
    out
}
