//! A fitted cable as a definition in the language.

use std::fmt::Write as _;

use downlead_physics::measure::LossFit;
use downlead_quantity::{number, sig};
use downlead_station::model::Meaning;

use super::Subject;
use super::options::{TEXT, Text, first_error};
use crate::model::Snapshot;

/// Accuracy is stated by these ranges, Hz: the doubt of a fit is least in the middle of its
/// points.
const ENDS: [f64; 3] = [10e6, 100e6, 1e9];

/// The definition, ending in a newline.
pub(crate) fn of(s: &Subject, f: &LossFit) -> String {
    let mut out = format!("cable {} {} {{\n", s.name, quoted(&s.definition_title));
    let mut line = |words: String| {
        let _ = writeln!(out, "    {words}");
    };
    if let Some(z) = s.impedance {
        line(format!("impedance {} ohm", number(z, 2)));
    }
    match s.velocity {
        Some((v, u)) if u > 1e-6 => {
            let (v, u) = crate::bench::words::with_doubt(v, 2.0 * u, 6);
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
    line(format!("source {}", quoted(&s.source)));
    out + "}\n"
}

/// The largest relative doubt in each range, percent at k = 2, rounded up to a tenth; ranges that
/// are as good as the next are one.
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

/// What is wrong with a definition, if anything: it must be one cable of that name.
pub(crate) fn wrong(name: &str, definition: &str) -> Option<String> {
    let snapshot = Snapshot::load(&[TEXT.to_owned()], &Text(definition));
    if let Some(message) = first_error(&snapshot) {
        return Some(message);
    }
    let cables = cables(&snapshot);
    let items = snapshot
        .scopes()
        .iter()
        .map(|s| s.items().len())
        .sum::<usize>();
    if cables.len() == 1 && items == 1 && cables[0] == name {
        None
    } else {
        Some("it is not one name; letters, digits and `-` make one".to_owned())
    }
}

/// Names of the cables that the named files define.
pub(crate) fn cables(snapshot: &Snapshot) -> Vec<String> {
    snapshot
        .scopes()
        .iter()
        .flat_map(|s| s.items())
        .filter_map(|(_, low, _)| match &low.meaning {
            Meaning::Cable(c) => Some(c.name.text.to_string()),
            _ => None,
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use downlead_physics::measure::{FitPoint, FitRules, fit};

    fn subject(name: &str) -> (Subject, LossFit) {
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
        let s = Subject {
            title: String::new(),
            samples: Vec::new(),
            fit: Ok(f.clone()),
            from_scatter: false,
            notes: Vec::new(),
            name: name.to_owned(),
            definition_title: "a \"quoted\" }\n title".to_owned(),
            impedance: Some(50.0),
            velocity: Some((0.66, 0.0035)),
            source: "read \\ with W3".to_owned(),
        };
        (s, f)
    }

    #[test]
    fn a_definition_is_one_cable_without_findings() {
        let (s, f) = subject("a-as-measured");
        let text = of(&s, &f);
        assert_eq!(wrong("a-as-measured", &text), None, "{text}");
        let snapshot = Snapshot::load(&[TEXT.to_owned()], &Text(&text));
        let said: Vec<String> = snapshot
            .diagnostics()
            .into_iter()
            .map(|d| d.message)
            .collect();
        assert!(said.is_empty(), "{said:?}\n{text}");
    }

    #[test]
    fn a_name_that_is_none_is_told() {
        for name in ["two words", "a {", "", "\"x\"", "a\ncable b"] {
            let (s, f) = subject(name);
            assert!(wrong(name, &of(&s, &f)).is_some(), "{name:?}");
        }
    }

    #[test]
    fn accuracies_cover_the_doubt_of_the_fit() {
        let (_, f) = subject("x");
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
