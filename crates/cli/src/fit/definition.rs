//! A fitted cable as a definition in the language.

use downlead_physics::measure::LossFit;
use downlead_station::model::Meaning;

use super::Subject;
use super::options::{TEXT, Text, first_error};
use crate::model::Snapshot;

/// The definition, ending in a newline.
pub(crate) fn of(s: &Subject, f: &LossFit) -> String {
    downlead_ide::cable_definition(&s.cable, f)
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
            cable: downlead_ide::MeasuredCable {
                name: name.to_owned(),
                title: "a \"quoted\" }\n title".to_owned(),
                impedance: Some(downlead_quantity::Measure::exact(50.0)),
                velocity: Some((0.66, 0.0035)),
                source: "read \\ with W3".to_owned(),
            },
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
}
