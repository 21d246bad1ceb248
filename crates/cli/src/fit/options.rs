//! Lengths, temperatures and accuracies of the command line, read as the language reads them.

use std::sync::Arc;

use downlead_base::Severity;
use downlead_quantity::Measure;
use downlead_station::model::{Accuracy, Meaning};

use crate::model::{LoadError, Loader, Snapshot};

/// One text that is not on the disk.
pub(crate) struct Text<'a>(pub(crate) &'a str);

/// Its path.
pub(crate) const TEXT: &str = "text.downlead";

impl Loader for Text<'_> {
    fn read(&self, path: &str) -> Result<Arc<str>, LoadError> {
        if path == TEXT {
            Ok(self.0.into())
        } else {
            Err(LoadError::NotFound)
        }
    }
}

/// The first error of a text of the language, with its advice.
pub(crate) fn first_error(snapshot: &Snapshot) -> Option<String> {
    let d = snapshot
        .diagnostics()
        .into_iter()
        .find(|d| d.severity == Severity::Error)?;
    Some(match d.help.first() {
        Some(help) => format!("{} {help}", d.message),
        None => d.message,
    })
}

/// The first error without the advice, which is for those who write in the language.
fn first_message(snapshot: &Snapshot) -> Option<String> {
    let all = snapshot.diagnostics();
    let d = all.into_iter().find(|d| d.severity == Severity::Error)?;
    Some(d.message)
}

/// Evaluates `text`, in which `value` of the command line stands; refuses a value that would not
/// stay where it is put.
fn evaluated(option: &str, value: &str, text: &str, example: &str) -> Result<Snapshot, String> {
    let steers = |c: char| matches!(c, '{' | '}' | ';' | '"' | ',' | '/') || c.is_control();
    let refused = |why: &str| format!("{option} \"{value}\": {why} Write it as \"{example}\".");
    if value.trim().is_empty() || value.contains(steers) {
        return Err(refused("One quantity with its unit is due here."));
    }
    let snapshot = Snapshot::load(&[TEXT.to_owned()], &Text(text));
    match first_message(&snapshot) {
        Some(message) => Err(refused(&message)),
        None => Ok(snapshot),
    }
}

fn meanings(snapshot: &Snapshot) -> impl Iterator<Item = &Meaning> {
    snapshot
        .scopes()
        .iter()
        .flat_map(|s| s.items())
        .map(|(_, low, _)| &low.meaning)
}

/// A length such as `25.00 m ± 0.02 m`, in m.
pub(crate) fn length(value: &str) -> Result<Measure, String> {
    let text = format!(
        "cable x {{ loss 1 dB/100 m/sqrt(MHz); source \"x\" }}\nsession s {{\n    piece p {value} of x\n}}\n"
    );
    let snapshot = evaluated("--length", value, &text, "25.00 m")?;
    let metres = meanings(&snapshot).find_map(|m| match m {
        Meaning::Session(s) => s.pieces.first()?.metres(),
        _ => None,
    });
    metres.filter(|m| m.value > 0.0).ok_or_else(|| {
        format!("--length \"{value}\": not a length above zero; write it as `25.00 m`")
    })
}

/// A power such as `50 W`, in W.
pub(crate) fn power(value: &str) -> Result<f64, String> {
    let text = format!("instrument i {{\n    scale {value}\n}}\n");
    let snapshot = evaluated("--power", value, &text, "50 W")?;
    let found = meanings(&snapshot).find_map(|m| match m {
        Meaning::Instrument(i) => i.scale_w,
        _ => None,
    });
    found
        .filter(|w| *w > 0.0)
        .ok_or_else(|| format!("--power \"{value}\": not a power above zero; write it as `50 W`"))
}

/// A temperature such as `12 °C`, in °C.
pub(crate) fn temperature(value: &str) -> Result<f64, String> {
    let text = format!("session s {{\n    temperature {value}\n}}\n");
    let snapshot = evaluated("--temperature", value, &text, "12 °C")?;
    meanings(&snapshot)
        .find_map(|m| match m {
            Meaning::Session(s) => Some(s.temperature?.value),
            _ => None,
        })
        .ok_or_else(|| format!("--temperature \"{value}\": not a temperature; write it as `12 °C`"))
}

/// An accuracy in dB such as `0.05 dB`, as standard uncertainty in dB.
pub(crate) fn accuracy(value: &str) -> Result<f64, String> {
    let text = format!("instrument i {{\n    accuracy {value}\n}}\n");
    let snapshot = evaluated("--accuracy", value, &text, "0.05 dB")?;
    let found = meanings(&snapshot).find_map(|m| match m {
        Meaning::Instrument(i) => i.accuracy,
        _ => None,
    });
    match found {
        Some(Accuracy::Decibel(u)) if u > 0.0 => Ok(u),
        _ => Err(format!(
            "--accuracy \"{value}\": not an error in dB above zero; write it as `0.05 dB`"
        )),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantities_are_read_as_the_language_reads_them() {
        let m = length("25.00 m ± 0.02 m").unwrap();
        assert!((m.value - 25.0).abs() < 1e-12);
        assert!((m.u - 0.02 / 3f64.sqrt()).abs() < 1e-12);
        // 1 ft = 0.3048 m exactly
        assert!((length("100 ft").unwrap().value - 30.48).abs() < 1e-12);
        assert!((temperature("68 °F").unwrap() - 20.0).abs() < 1e-9);
        assert!((accuracy("0.05 dB").unwrap() - 0.05 / 3f64.sqrt()).abs() < 1e-12);
        assert!((accuracy("0.05 dB k 2").unwrap() - 0.025).abs() < 1e-12);
    }

    #[test]
    fn what_is_no_quantity_is_refused_in_words() {
        for bad in [
            "",
            "25",
            "25 kg",
            "25 m }",
            "-3 m",
            "1 m\n2 m",
            "0 m",
            "5 m of y, connector 2 of z",
            "25 m // x",
        ] {
            let e = length(bad).unwrap_err();
            assert!(e.starts_with("--length "), "{e}");
        }
        assert!(temperature("12 m").is_err());
        assert!(accuracy("5 %").is_err());
        assert!(accuracy("0 dB").is_err());
    }
}
