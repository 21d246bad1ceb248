//! Findings about desense: limits that are not kept or cannot be judged, and offsets that no pair has.

use downlead_base::{Diagnostic, Loc, Severity, codes};
use downlead_quantity::{db, frequency, number};
use downlead_station::Env;
use downlead_station::model::{AtOffset, Basis, Station};

use super::gather::Line;
use super::offset::used_at;
use super::{DesenseResult, DesenseVerdict, Missing, Source};

/// Points out what each receive channel comes to.
pub(crate) fn findings(all: &[DesenseResult], out: &mut Vec<Diagnostic>) {
    for r in all {
        match (r.verdict, &r.limit) {
            (DesenseVerdict::NotMet, _) => out.push(not_met(r)),
            (DesenseVerdict::CannotTell | DesenseVerdict::AtLimit, Some(l)) => {
                let t = r.together.as_ref();
                let range = t.map_or_else(String::new, |t| {
                    format!(
                        " of {} ({} to {})",
                        db(t.db),
                        number(t.low_db, 2),
                        number(t.high_db, 2)
                    )
                });
                out.push(
                    Diagnostic::new(
                        &codes::DESENSE_CANNOT_TELL,
                        l.loc,
                        format!(
                            "Whether {} keeps its limit of {} cannot be told: the uncertainty of the desense{range}, or of a carrier at it, is larger than the margin.",
                            r.receiver,
                            db(l.db)
                        ),
                    )
                    .at("cannot tell")
                    .help("`downlead report FILE --site` shows each transmitter with its two figures."),
                );
            }
            // what has a finding of its own needs no second one here
            (DesenseVerdict::CannotJudge, Some(l)) if !reported(r) => {
                out.push(cannot_judge(r, l.loc));
            }
            _ => {}
        }
    }
}

/// What is missing of one channel, each once: first of the noise, then of the carriers.
#[must_use]
pub fn missing_of(r: &DesenseResult) -> Vec<String> {
    let mut all: Vec<String> = Vec::new();
    let of_sources = r.sources.iter().flat_map(|s| {
        let in_channel = |m: &Missing| match m {
            Missing::InChannel => format!("{}: {}", s.words(), m.words()),
            m => m.words(),
        };
        let all = s.noise_missing.iter().chain(&s.carrier_missing);
        all.map(in_channel).collect::<Vec<_>>()
    });
    for m in r.missing.iter().map(Missing::words).chain(of_sources) {
        if !all.contains(&m) {
            all.push(m);
        }
    }
    all
}

/// Whether what is missing is an error elsewhere in the text.
fn reported(r: &DesenseResult) -> bool {
    let of_sources = r
        .sources
        .iter()
        .flat_map(|s| s.noise_missing.iter().chain(&s.carrier_missing));
    r.missing.iter().chain(of_sources).any(|m| {
        matches!(
            m,
            Missing::NotDefined(_)
                | Missing::Line(_)
                | Missing::Broken(_)
                | Missing::NoFrequency(_)
                | Missing::Power(_)
        )
    })
}

fn cannot_judge(r: &DesenseResult, loc: downlead_base::Loc) -> Diagnostic {
    let missing = missing_of(r);
    let shown = missing
        .iter()
        .take(4)
        .cloned()
        .collect::<Vec<_>>()
        .join("; ");
    let more = match missing.len().saturating_sub(4) {
        0 => String::new(),
        n => format!("; and {n} more"),
    };
    Diagnostic::new(
        &codes::DESENSE_CANNOT_JUDGE,
        loc,
        format!(
            "The desense of {} is not judged: {shown}{more}.",
            r.receiver
        ),
    )
    .at("cannot judge")
    .help("Noise and blocking are figures of the radios at an offset, and are not guessed: `noise -145 dBc/Hz at 600 kHz`, `blocking -25 dBm at 600 kHz`. What a filter keeps off is said of its leg: `rejects 80 dB at 146.3137 MHz`.")
}

/// The transmitter that adds most to the noise.
fn loudest(r: &DesenseResult) -> Option<&Source> {
    let noise = |s: &&Source| s.noise.as_ref().map_or(f64::NEG_INFINITY, |n| n.dbm_hz);
    let worst = r
        .sources
        .iter()
        .max_by(|a, b| noise(a).total_cmp(&noise(b)));
    worst.filter(|s| s.noise.is_some())
}

fn not_met(r: &DesenseResult) -> Diagnostic {
    let at = r.limit.as_ref().map_or(r.chain, |l| l.loc);
    let mut what = Vec::new();
    let mut help = Vec::new();
    if let (Some(t), Some(l)) = (&r.together, &r.limit)
        && t.low_db > l.db
        && let Some(worst) = loudest(r)
    {
        what.push(format!(
            "the noise of the transmitters raises its floor by {} ({} to {}), {} is allowed, and most of it is {}'s",
            db(t.db),
            number(t.low_db, 1),
            number(t.high_db, 1),
            db(l.db),
            worst.words()
        ));
        match worst.noise.as_ref().and_then(|n| n.needs_db) {
            Some(n) => help.push(format!(
                "{} needs {} more at {}, by a filter or by isolation.",
                worst.words(),
                db(n),
                frequency(r.hz)
            )),
            None => help.push(format!(
                "Without {} the others still exceed it: each needs more rejection at {}.",
                worst.words(),
                frequency(r.hz)
            )),
        }
        if let Some(d) = worst.by_distance.filter(|d| *d > l.db) {
            help.push(format!(
                "With the isolation that the distance of the antennas gives, the receiver alone would still lose {}.",
                db(d)
            ));
        }
    }
    for s in &r.sources {
        if let Some(c) = s
            .carrier
            .as_ref()
            .filter(|c| c.verdict == DesenseVerdict::NotMet)
        {
            what.push(format!(
                "the carrier of {} arrives with {} dBm, {} over what the receiver withstands",
                s.words(),
                number(c.dbm, 1),
                db(-c.under_db)
            ));
            help.push(format!(
                "The carrier of {} must be kept off by {} more at {}: on the receiver's side.",
                s.words(),
                db(-c.under_db),
                frequency(s.hz)
            ));
        }
    }
    Diagnostic::new(
        &codes::DESENSE_NOT_MET,
        at,
        format!("{} is desensitised: {}.", r.receiver, what.join("; ")),
    )
    .at("not met")
    .help(help.join(" "))
}

/// Points out that a limit which is kept rests on guesses: isolations, noise and blocking of the site.
pub(crate) fn guesses(st: &Station, env: &Env, all: &[DesenseResult], out: &mut Vec<Diagnostic>) {
    let mut guessed: Vec<Loc> = Vec::new();
    for station in std::iter::once(st).chain(env.on_site_of(st)) {
        let isolations = station.site.isolations.iter();
        guessed.extend(
            isolations
                .filter(|i| i.meta.basis == Basis::Guess)
                .map(|i| i.loc),
        );
        for part in &station.parts {
            let noise = part.data.transmitter().map(|t| &t.noise[..]);
            let blocking = part.data.receiver().map(|r| &r.blocking[..]);
            let figures = noise.into_iter().chain(blocking).flatten();
            guessed.extend(
                figures
                    .filter(|f| f.figure.meta.basis == Basis::Guess)
                    .map(|f| f.figure.loc),
            );
        }
    }
    if guessed.is_empty() {
        return;
    }
    for r in all {
        let sure = !matches!(
            r.verdict,
            DesenseVerdict::NotMet | DesenseVerdict::CannotJudge
        );
        let Some(limit) = r.limit.as_ref().filter(|_| sure) else {
            continue;
        };
        let message = match guessed.len() {
            1 => "One guessed figure of the site takes part in this limit of desense.".to_owned(),
            n => format!("{n} guessed figures of the site take part in this limit of desense."),
        };
        let d = Diagnostic::new(&codes::GUESS_IN_LIMIT, limit.loc, message).at("rests on a guess");
        out.push(guessed.iter().take(4).fold(d, |d, g| d.also(*g, "guessed")));
    }
}

/// Offsets of a station's figures that are the distance of no transmitter and receiver of its site.
pub(crate) fn offsets(st: &Station, env: &Env, out: &mut Vec<Diagnostic>) {
    let others = env.on_site_of(st);
    let mut lines = Line::of(st, false, env);
    for o in &others {
        lines.extend(Line::of(o, true, env));
    }
    let hertz = |l: &Line<'_>| l.points.iter().map(|p| p.hz).collect::<Vec<_>>();
    // what is on a range, or not known, may be anywhere
    let open = |l: &&Line<'_>| l.ranged || l.unknown;
    let tx: Vec<&Line<'_>> = lines.iter().filter(|l| l.transmitter().is_some()).collect();
    let rx: Vec<&Line<'_>> = lines.iter().filter(|l| l.receiver().is_some()).collect();
    if tx.iter().chain(&rx).any(open) {
        return;
    }
    for l in lines.iter().filter(|l| !l.other) {
        let (list, far, what): (&[AtOffset], _, _) = match (l.transmitter(), l.receiver()) {
            (Some((_, t)), _) => (&t.noise, &rx, "noise"),
            (_, Some((_, r))) => (&r.blocking, &tx, "blocking"),
            _ => continue,
        };
        if list.is_empty() || far.is_empty() {
            continue;
        }
        let own = hertz(l);
        // of a transmitter on several chains each may use it
        let same = |x: &&&Line<'_>| x.end_name() == l.end_name() && !x.other;
        let alike = if what == "noise" { &tx } else { &rx };
        let own: Vec<f64> = alike
            .iter()
            .filter(same)
            .flat_map(|x| hertz(x))
            .chain(own)
            .collect();
        let apart: Vec<(f64, Box<str>)> = far
            .iter()
            .flat_map(|x| {
                hertz(x)
                    .into_iter()
                    .map(|f| (f, x.of_station(&x.end_name())))
            })
            .flat_map(|(f, name)| own.iter().map(move |o| ((f - o).abs(), name.clone())))
            .filter(|x| x.0 > 1.0)
            .collect();
        for one in list {
            if apart.is_empty() || apart.iter().any(|x| used_at(list, one, x.0)) {
                continue;
            }
            let nearest = apart.iter().min_by(|a, b| {
                let d = |x: f64| libm::log(x / one.offset_hz).abs();
                d(a.0).total_cmp(&d(b.0))
            });
            let Some((hz, name)) = nearest else { continue };
            let mut d = Diagnostic::new(
                &codes::OFFSET_DIFFERS,
                one.figure.loc,
                format!(
                    "The {what} of {} is stated at {}, but {name} is {} away.",
                    l.end_name(),
                    frequency(one.offset_hz),
                    frequency(*hz)
                ),
            )
            .at("enters no result")
            .help(format!(
                "State the figure at {}: what holds at one offset says nothing of another. One that holds further off too is written `beyond {}`.",
                frequency(*hz),
                frequency(one.offset_hz)
            ));
            d.severity = Severity::Error;
            out.push(d);
        }
    }
}
