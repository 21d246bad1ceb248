//! Where the points of a fit come from.

use downlead_eval::bench::common_causes;
use downlead_eval::bench::result::SessionResult;
use downlead_ide::{MeasuredCable, brought, measured_cable};
use downlead_physics::measure::{FitPoint, FitRules, LossFit, fit, phase_slope};
use downlead_quantity::{Measure, db, frequency, length, number, sig};
use downlead_station::Env;
use downlead_station::model::{Cable, CableLoss};
use downlead_station::session::Session;
use downlead_touchstone::{Network, measures};

use super::{Sample, Subject};

/// Speed of light in vacuum, m/s (exact, SI).
const C0: f64 = 299_792_458.0;
/// At most so many points of a network file take part.
const POINTS: usize = 200;
/// A network that reflects more than this makes the loss of the cable unclear, dB return loss.
const REFLECTS: f64 = 20.0;

/// A piece of a session; `without` names bands that are left out.
pub(crate) fn piece(
    s: &Session,
    r: &SessionResult,
    env: &Env,
    index: usize,
    without: &[String],
) -> Subject {
    let p = &r.pieces[index];
    let metres = p.length_m.map_or(f64::NAN, |l| l.0);
    let mut notes = Vec::new();
    let (mut samples, mut cells) = (Vec::new(), Vec::new());
    let mut all = 0;
    for band in &p.fit_bands {
        let (Some(c), b) = (r.cell(index, *band), &r.bands[*band]) else {
            continue;
        };
        let Some(per) = c.per_length else { continue };
        all += 1;
        if without.iter().any(|w| *w == *b.band) {
            notes.push(format!("{} is left out as asked", b.band));
            continue;
        }
        cells.push(c);
        samples.push(Sample {
            label: b.band.to_string(),
            hz: b.hz,
            db_per_m: per.db_per_m,
            u_db_per_m: c.measured.u_db / metres,
        });
    }
    let read = r.cells.iter().filter(|c| c.piece == index).count();
    if read > all {
        let n = read - all;
        let s = if n == 1 { "" } else { "s" };
        notes.push(format!(
            "{n} reading{s} not above zero once the joins are taken off took no part"
        ));
    }
    let celsius = s.temperature.map_or(p.celsius, |t| t.value);
    let length_share = p.length_m.map_or(0.0, |l| l.1 / l.0);
    let rules = FitRules {
        celsius,
        shared: libm::hypot(length_share, p.joins_share),
    };
    let fit = match &p.fit {
        Some(whole) if samples.len() == all => whole.clone(),
        _ => {
            let points = points(&samples);
            let common = common_causes(&cells).into_iter();
            let per_m = common.map(|c| c.into_iter().map(|db| db / metres).collect());
            let per_m: Vec<Vec<f64>> = per_m.collect();
            fit(&points, &rules).map(|mut f| {
                f.correlate(&points, &per_m);
                f
            })
        }
    };
    if fit.is_ok() && p.joins_share > 0.0 {
        notes.push(format!(
            "the uncertainty of the joins, up to {} % of the loss (k = 2), is common to all points",
            sig(200.0 * p.joins_share, 2)
        ));
    }
    let session = &s.name.text;
    Subject {
        title: format!(
            "{} of {session}: {} of {}, {} °C",
            p.name,
            p.length_m
                .map_or_else(|| "no length".to_owned(), |l| length(l.0)),
            if p.cable.is_empty() {
                "no cable"
            } else {
                &p.cable
            },
            number(celsius, 1)
        ),
        samples,
        fit,
        from_scatter: false,
        notes,
        cable: measured_cable(s, r, env, index),
    }
}

fn points(samples: &[Sample]) -> Vec<FitPoint> {
    samples
        .iter()
        .map(|s| FitPoint {
            f_hz: s.hz,
            db_per_m: s.db_per_m,
            u_db_per_m: s.u_db_per_m,
        })
        .collect()
}

/// The table of a data sheet. Its figures are rounded by about the same share, so all weigh
/// alike; their uncertainty is found from their scatter, and the sheet's accuracy is common to them.
pub(crate) fn sheet(c: &Cable) -> Result<Subject, String> {
    let name = &c.name.text;
    let Some(CableLoss::Table(table)) = &c.loss else {
        return Err(format!(
            "`{name}` has no table: its loss is stated as coefficients or a construction, and there is nothing to fit"
        ));
    };
    let mut samples: Vec<Sample> = table
        .iter()
        .map(|p| Sample {
            label: frequency(p.0),
            hz: p.0,
            db_per_m: p.1.value,
            u_db_per_m: 0.01 * p.1.value,
        })
        .collect();
    let shared = c.accuracy.iter().map(|a| a.u_relative).fold(0.0, f64::max);
    let rules = FitRules {
        celsius: c.reference_c,
        shared,
    };
    // a table of three digits is good to 0.05 % to 0.5 %
    let fit = by_scatter(&mut samples, &rules, 0.001 / 0.01);
    let source = c.meta.words().map_or(String::new(), |w| format!(", {w}"));
    Ok(Subject {
        title: format!("table of {name}, {} °C", number(c.reference_c, 1)),
        samples,
        fit,
        from_scatter: true,
        notes: vec![
            "all figures of the table weigh alike; their uncertainty is found from their scatter, at least 0.1 %".to_owned(),
        ],
        cable: MeasuredCable {
            name: format!("{name}-fitted"),
            title: format!("{name}, fitted"),
            impedance: c.impedance,
            velocity: c.velocity.map(|v| (v.value, v.u)),
            source: format!("fitted to the table of {name}{source}, {}", brought(c.reference_c)),
        },
    })
}

/// Fits with equal weights and scales the uncertainty to the scatter, not below `least` times the first
/// guess; the uncertainties of the samples are scaled alike.
fn by_scatter(
    samples: &mut [Sample],
    rules: &FitRules,
    least: f64,
) -> Result<LossFit, downlead_physics::measure::FitError> {
    let first = fit(&points(samples), rules)?;
    let scale = if first.dof > 0 {
        libm::sqrt(first.chi2 / first.dof as f64).max(least)
    } else {
        // two points say nothing about scatter
        1.0
    };
    samples.iter_mut().for_each(|s| s.u_db_per_m *= scale);
    let points = points(samples);
    let mut found = fit(&points, rules)?;
    found.outlier = found.outlier_by_scatter(&points);
    Ok(found)
}

/// What the command line says about a network file.
pub(crate) struct NetworkFacts<'a> {
    /// File as named.
    pub(crate) file: &'a str,
    pub(crate) length: Measure,
    pub(crate) celsius: f64,
    /// Whether the temperature was stated.
    pub(crate) celsius_stated: bool,
    /// Standard uncertainty of a loss, dB.
    pub(crate) u_db: Option<f64>,
}

/// The losses of the chosen points of a network file that are above zero: between matched ends,
/// whatever the cable's impedance, or the insertion loss of a file of one direction.
fn losses(n: &Network, chosen: &[usize], one_way: bool, facts: &NetworkFacts<'_>) -> Vec<Sample> {
    let metres = facts.length.value;
    let loss = |i: usize| match one_way {
        true => -n.insertion_gain_db(i, 1, 0),
        false => downlead_eval::loss_of_point(n, i).map_or(f64::NAN, |p| p.1),
    };
    chosen
        .iter()
        .map(|i| (*i, loss(*i)))
        .filter(|(_, db)| *db > 0.0 && db.is_finite())
        .map(|(i, db)| Sample {
            label: frequency(n.frequencies_hz()[i]),
            hz: n.frequencies_hz()[i],
            db_per_m: db / metres,
            u_db_per_m: facts.u_db.unwrap_or(0.01) / metres,
        })
        .collect()
}

/// What a fit of a network file rests on that the command line states or leaves open.
fn assumed(facts: &NetworkFacts<'_>) -> Vec<String> {
    let mut notes = Vec::new();
    match facts.u_db {
        Some(u) => notes.push(format!("each loss is taken as good to ± {} (k = 2)", db(2.0 * u))),
        None => notes.push(
            "no --accuracy is stated: the uncertainty is found from the scatter, at least 0.001 dB; what is wrong \
             with all points alike is not in it"
                .to_owned(),
        ),
    }
    if !facts.celsius_stated {
        notes.push("20 °C is assumed: no --temperature is stated".to_owned());
    }
    notes
}

/// The transmission of a two-port.
pub(crate) fn network(n: &Network, facts: &NetworkFacts<'_>) -> Result<Subject, String> {
    if n.ports() != 2 {
        return Err(format!(
            "{}: it has {} port{}; the loss of a cable needs a network of two",
            facts.file,
            n.ports(),
            if n.ports() == 1 { "" } else { "s" }
        ));
    }
    let metres = facts.length.value;
    let mut notes = Vec::new();
    let chosen = thinned(n);
    if chosen.len() < n.points() {
        notes.push(format!(
            "{} of its {} points take part, evenly spaced on a logarithmic scale",
            chosen.len(),
            n.points()
        ));
    }
    // a file of one direction does not tell the loss between matched ends
    let one_way = chosen
        .iter()
        .all(|i| downlead_eval::loss_of_point(n, *i).is_none());
    let mut samples = losses(n, &chosen, one_way, facts);
    if samples.len() < chosen.len() {
        notes.push(format!(
            "{} points without a loss above zero took no part",
            chosen.len() - samples.len()
        ));
    }
    let rules = FitRules {
        celsius: facts.celsius,
        shared: facts.length.u / metres,
    };
    let mut fit = match facts.u_db {
        Some(_) => fit(&points(&samples), &rules),
        None => by_scatter(&mut samples, &rules, 0.001 / 0.01),
    };
    notes.extend(assumed(facts));
    if let Ok(f) = &mut fit {
        notes.extend(alike(f, samples.len()));
    }
    let impedance = if one_way {
        notes.push(
            "the file tells one direction only: what reflections add to the loss is in the figures"
                .to_owned(),
        );
        notes.extend(reflecting(n, &chosen));
        None
    } else {
        downlead_eval::characteristic_impedance(n)
    };
    let velocity = velocity(n, &facts.length);
    if velocity.is_none() {
        notes.push("the phase is too coarse for a velocity factor; none is stated".to_owned());
    }
    let file = facts.file.rsplit(['/', '\\']).next().unwrap_or(facts.file);
    let base = file.rsplit_once('.').map_or(file, |(b, _)| b);
    Ok(Subject {
        title: format!(
            "{}: {} of cable, {} °C",
            facts.file,
            length(metres),
            number(facts.celsius, 1)
        ),
        samples,
        fit,
        from_scatter: facts.u_db.is_none(),
        notes,
        cable: MeasuredCable {
            name: format!("{}-as-measured", name_of(base)),
            title: format!("{file}, as measured"),
            impedance: impedance.map(|(ohm, u)| Measure {
                // how well the analyser itself was calibrated does not show in the scatter
                u: u.max(0.005 * ohm),
                normal: true,
                ..Measure::exact(ohm)
            }),
            velocity,
            source: format!(
                "network file {file}, {} of it, {}",
                length(metres),
                brought(facts.celsius)
            ),
        },
    })
}

/// A file's name as a name of the language.
fn name_of(base: &str) -> String {
    let safe = |c: char| {
        if c.is_ascii_alphanumeric() {
            c.to_ascii_lowercase()
        } else {
            '-'
        }
    };
    let out: String = base.chars().map(safe).collect();
    let out = out.trim_matches('-');
    if out.is_empty() {
        "cable".to_owned()
    } else {
        out.to_owned()
    }
}

/// Points nearest to an even spacing on a logarithmic scale, each once. A point at 0 Hz is left
/// out.
fn thinned(n: &Network) -> Vec<usize> {
    let f = n.frequencies_hz();
    let first = f.iter().position(|x| *x > 0.0).unwrap_or(f.len());
    let above: Vec<usize> = (first..f.len()).collect();
    if above.len() <= POINTS {
        return above;
    }
    let (low, high) = (f[first], f[f.len() - 1]);
    let mut out = Vec::with_capacity(POINTS);
    for i in 0..POINTS {
        let wanted = low * libm::exp(libm::log(high / low) * i as f64 / (POINTS - 1) as f64);
        let after = f.partition_point(|x| *x < wanted).clamp(first, f.len() - 1);
        let before = after.saturating_sub(1).max(first);
        let nearest = if (wanted - f[before]).abs() <= (f[after] - wanted).abs() {
            before
        } else {
            after
        };
        if out.last() != Some(&nearest) {
            out.push(nearest);
        }
    }
    out
}

/// Neighbours on a sweep err alike: the uncertainty of the coefficients is that of as many points as
/// there are octaves (common practice), not of all.
fn alike(f: &mut LossFit, count: usize) -> Option<String> {
    let octaves = libm::ceil(libm::log2(f.range_hz.1 / f.range_hz.0)) + 1.0;
    let wider = count as f64 / octaves.max(2.0);
    if wider <= 1.0 {
        return None;
    }
    f.u_k1 *= libm::sqrt(wider);
    f.u_k2 *= libm::sqrt(wider);
    Some(format!(
        "points within an octave are taken to err alike: the uncertainty is that of {octaves:.0} points, not of {count} (common practice)"
    ))
}

fn reflecting(n: &Network, chosen: &[usize]) -> Option<String> {
    let (at, worst) = chosen
        .iter()
        .flat_map(|i| [(*i, n.return_loss_db(*i, 0)), (*i, n.return_loss_db(*i, 1))])
        .min_by(|a, b| a.1.total_cmp(&b.1))?;
    (worst < REFLECTS).then(|| {
        let share = downlead_quantity::from_db(-worst);
        format!(
            "return loss falls to {} dB at {}: up to {} of the loss there is reflection and not the cable",
            number(worst, 1),
            frequency(n.frequencies_hz()[at]),
            db(-downlead_quantity::to_db(1.0 - share.min(0.999)))
        )
    })
}

/// Velocity factor from the slope of the transmission's phase, with its standard uncertainty;
/// none where the points are too far apart to follow the phase, or the slope makes no sense.
fn velocity(n: &Network, tape: &Measure) -> Option<(f64, f64)> {
    let f = n.frequencies_hz();
    let widest = f.windows(2).map(|w| w[1] - w[0]).fold(0.0, f64::max);
    // half a turn between two points would be ambiguous; air is the fastest there is
    let slowest = 0.5;
    if f.len() < 4 || widest * tape.value / (slowest * C0) > 0.45 {
        return None;
    }
    let points: Vec<(f64, f64)> = (0..n.points())
        .map(|i| (f[i], measures::angle_deg(n.at(i, 1, 0))))
        .collect();
    let slope = phase_slope(&points)?;
    let delay = slope.deg_per_hz.abs() / 360.0;
    let v = tape.value / (C0 * delay);
    let u = v * libm::hypot(slope.u_deg_per_hz / slope.deg_per_hz, tape.u / tape.value);
    (v.is_finite() && (0.4..=1.0).contains(&v) && u.is_finite()).then_some((v, u))
}
