//! A cable as its readings say it is, as a definition in the language.

use std::fmt::Write as _;

use downlead_eval::bench::result::SessionResult;
use downlead_eval::result::measure::LossFit;
use downlead_quantity::{Measure, number, sig};
use downlead_station::Env;
use downlead_station::session::Session;

use downlead_report::words::figure::with_uncertainty;

/// Accuracy is stated by these ranges, Hz: the uncertainty of a fit is least in the middle of its
/// points.
const ENDS: [f64; 3] = [10e6, 100e6, 1e9];

/// What a definition says of a cable beside its loss.
#[derive(Clone, Debug, PartialEq)]
pub struct MeasuredCable {
    /// Its name.
    pub name: String,
    /// Its title.
    pub title: String,
    /// Impedance, ohm, where known.
    pub impedance: Option<Measure>,
    /// Velocity factor and its standard uncertainty, where known.
    pub velocity: Option<(f64, f64)>,
    /// Where its figures are from.
    pub source: String,
}

/// A piece of a session as a cable of its own, with the fit of its loss; none where there is no
/// fit.
#[must_use]
pub fn fitted_cable<'r>(
    s: &Session,
    r: &'r SessionResult,
    env: &Env,
    piece: usize,
) -> Option<(MeasuredCable, &'r LossFit)> {
    let fit = r.pieces.get(piece)?.fit.as_ref()?.as_ref().ok()?;
    Some((measured_cable(s, r, env, piece), fit))
}

/// What a piece is called as a cable of its own and whence it is known, whether or not there is a
/// fit.
#[must_use]
pub fn measured_cable(s: &Session, r: &SessionResult, env: &Env, piece: usize) -> MeasuredCable {
    let p = &r.pieces[piece];
    let celsius = s.temperature.map_or(p.celsius, |t| t.value);
    let cable = env.cable(&p.cable);
    let session = &s.name.text;
    MeasuredCable {
        name: format!("{}-as-measured", p.name.to_lowercase()),
        title: format!("{} of {session}, as measured", p.name),
        impedance: cable.and_then(|c| c.impedance),
        velocity: cable.and_then(|c| c.velocity).map(|v| (v.value, v.u)),
        source: format!(
            "{}, session {session} piece {}, {}",
            read_words(s),
            p.name,
            brought(celsius)
        ),
    }
}

/// `read 2026-07-19 with W3 by QY5BEN`.
fn read_words(s: &Session) -> String {
    let mut out = "read".to_owned();
    if let Some(d) = &s.meta.date {
        out += &format!(" {d}");
    }
    if let Some(i) = &s.meta.instrument {
        out += &format!(" with {}", i.text);
    }
    if let Some(p) = &s.meta.person {
        out += &format!(" by {p}");
    }
    out
}

/// At what temperature a loss was found: `at 12 °C brought to 20 °C`.
#[must_use]
pub fn brought(celsius: f64) -> String {
    if (celsius - 20.0).abs() < 0.05 {
        "at 20 °C".to_owned()
    } else {
        format!("at {} °C brought to 20 °C", number(celsius, 1))
    }
}

/// The definition, ending in a newline.
#[must_use]
pub fn cable_definition(c: &MeasuredCable, f: &LossFit) -> String {
    let mut out = format!("cable {} {} {{\n", c.name, quoted(&c.title));
    let mut line = |words: String| {
        let _ = writeln!(out, "    {words}");
    };
    if let Some(z) = c.impedance {
        if z.u > 1e-6 {
            let (v, u) = with_uncertainty(z.value, 2.0 * z.u, 6);
            line(format!("impedance {v} ohm ± {u} ohm k 2"));
        } else {
            line(format!("impedance {} ohm", number(z.value, 2)));
        }
    }
    match c.velocity {
        Some((v, u)) if u > 1e-6 => {
            let (v, u) = with_uncertainty(v, 2.0 * u, 6);
            line(format!("velocity {v} ± {u} k 2"));
        }
        Some((v, _)) => line(format!("velocity {}", number(v, 4))),
        None => {}
    }
    let per_100 = |k: f64| sig(100.0 * k, 6);
    let (k1, k2) = (f.at_20.k1, f.at_20.k2);
    let mut terms = Vec::new();
    if k1 > 0.0 {
        terms.push(format!("{} dB/100 m/sqrt(MHz)", per_100(k1)));
    }
    if k2 > 0.0 {
        terms.push(format!("{} dB/100 m/MHz", per_100(k2)));
    }
    line(format!("loss {}, typical", terms.join(" + ")));
    let (low, high) = f.range_hz;
    line(format!(
        "valid {} MHz to {} MHz",
        number(low / 1e6, 6),
        number(high / 1e6, 6)
    ));
    for (percent, up_to) in accuracies(f) {
        let to = up_to.map_or(String::new(), |hz| {
            format!(" to {} MHz", number(hz / 1e6, 0))
        });
        line(format!("accuracy {} % k 2{to}", number(percent, 1)));
    }
    line(format!("source {}", quoted(&c.source)));
    out + "}\n"
}

/// The largest relative uncertainty in each range, percent at k = 2, rounded up to a tenth; ranges
/// that are as good as the next are one.
fn accuracies(f: &LossFit) -> Vec<(f64, Option<f64>)> {
    const STEPS: u32 = 24;
    let (low, high) = f.range_hz;
    let worst = |from: f64, to: f64| {
        let step = libm::log(to / from) / f64::from(STEPS);
        let at = |i: u32| f.predict_at(from * libm::exp(step * f64::from(i)), 20.0);
        let all = (0..=STEPS).map(at).map(|p| p.u_db_per_m / p.db_per_m);
        let most = 200.0 * all.filter(|u| u.is_finite()).fold(0.0, f64::max);
        // nothing is known to better than a thousandth
        (libm::ceil(most * 10.0 - 1e-6) / 10.0).max(0.1)
    };
    let mut out: Vec<(f64, Option<f64>)> = Vec::new();
    let mut from = low;
    for end in ENDS.into_iter().filter(|e| *e > low && *e < high) {
        out.push((worst(from, end), Some(end)));
        from = end;
    }
    out.push((worst(from, high), None));
    // a range that is within a fifth of the next takes the larger of the two
    let mut i = 0;
    while i + 1 < out.len() {
        let (a, b) = (out[i].0, out[i + 1].0);
        if a.max(b) <= 1.2 * a.min(b) {
            out[i + 1].0 = a.max(b);
            out.remove(i);
        } else {
            i += 1;
        }
    }
    out
}

/// A text in quotes; what would end it is replaced.
fn quoted(text: &str) -> String {
    let safe = |c: char| match c {
        '"' => '\'',
        '\\' => '/',
        c if c.is_control() => ' ',
        c => c,
    };
    format!("\"{}\"", text.chars().map(safe).collect::<String>())
}

#[cfg(test)]
mod tests {
    use super::*;
    use downlead_eval::result::measure::{FitPoint, FitRules, fit};

    #[test]
    fn accuracies_cover_the_doubt_of_the_fit() {
        let points: Vec<FitPoint> = [2.0, 14.0, 50.0, 145.0, 435.0]
            .iter()
            .map(|mhz: &f64| FitPoint {
                f_hz: mhz * 1e6,
                db_per_m: 0.017 * mhz.sqrt() + 0.00025 * mhz,
                u_db_per_m: 0.004,
            })
            .collect();
        let rules = FitRules {
            celsius: 12.0,
            shared: 0.002,
        };
        let f = fit(&points, &rules).unwrap();
        let steps = accuracies(&f);
        assert_eq!(steps.last().unwrap().1, None);
        for mhz in [2.0, 5.0, 9.9, 30.0, 99.0, 200.0, 435.0] {
            let p = f.predict_at(mhz * 1e6, 20.0);
            let stated = steps
                .iter()
                .find(|s| s.1.is_none_or(|end| mhz * 1e6 <= end))
                .unwrap()
                .0;
            let needed = 200.0 * p.u_db_per_m / p.db_per_m;
            assert!(stated >= needed - 1e-9, "{mhz} MHz: {stated} < {needed}");
        }
    }
}
