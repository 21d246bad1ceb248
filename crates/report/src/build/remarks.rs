//! What of a difference is to be pointed out one by one, with fingerprints that stay the same over
//! commits.

use downlead_base::{Code, codes};
use downlead_quantity::{db, decibel_signed, power};

use super::diff::FileChange;
use crate::shape::diff::{ChainDiff, Diff, Remark, State, StationDiff, Weight};
use crate::words::chain::under_or_over;
use crate::words::exposure;

/// The rules of the remarks, each with what it says.
pub const RULES: &[(&str, &str)] = &[
    (
        "verdict-fell",
        "A limit that was met is in question, or not met",
    ),
    ("verdict-rose", "A limit stands better than before"),
    (
        "reading-contradicts",
        "A reading began to contradict what is computed",
    ),
    (
        "radiated-power-moved",
        "The radiated power moved by more than the uncertainty of the difference",
    ),
    (
        "loss-moved",
        "The loss moved by more than the uncertainty of the difference",
    ),
    (
        "chain-changed",
        "A chain came, went, or is computed at another frequency",
    ),
    (
        "exposure-moved",
        "The exposure of people at a spot moved, or a spot came or went",
    ),
    ("not-computed", "A chain that was computed can no longer be"),
    ("station-changed", "A station came, went, or was moved"),
    ("new-error", "The text has a new error"),
];

pub(super) fn remarks(d: &Diff, files: &[FileChange]) -> Vec<Remark> {
    let mut out = Vec::new();
    for s in d.stations.iter().filter(|s| s.speaks) {
        station(s, &mut out);
    }
    for f in files {
        new_errors(f, &mut out);
    }
    out
}

/// Codes of findings that the verdicts themselves carry.
const VERDICTS: &[&Code] = &[
    &codes::LIMIT_NOT_MET,
    &codes::READING_CONTRADICTS,
    &codes::EXPOSURE_EXCEEDED,
];

/// Errors of a code of which there are more than before. A number within a message may be another.
fn new_errors(f: &FileChange, out: &mut Vec<Remark>) {
    let all = &f.comparison.findings;
    let count = |code: &str, new: bool| {
        let like = all
            .iter()
            .filter(|x| x.error && x.new == new && x.code == code);
        like.count()
    };
    for x in all.iter().filter(|x| x.error && x.new) {
        let verdict = VERDICTS.iter().any(|v| v.id == x.code);
        if verdict || count(x.code, true) <= count(x.code, false) {
            continue;
        }
        out.push(Remark {
            rule: "new-error",
            weight: Weight::Error,
            message: format!("{}: {}", x.code, x.message),
            file: f.path.clone(),
            line: x.line.max(1),
            fingerprint: fingerprint(&["new-error", &f.path, x.code, &x.message]),
        });
    }
}

fn station(s: &StationDiff, out: &mut Vec<Remark>) {
    let mut add = |rule: &'static str, weight, message: String, key: &[&str]| {
        let line = s.parts.first().map_or(1, |p| p.line.max(1));
        let mut all = vec![rule, s.name.as_str()];
        all.extend(key);
        out.push(Remark {
            rule,
            weight,
            message,
            file: s.file.clone(),
            line,
            fingerprint: fingerprint(&all),
        });
    };
    if s.state != State::Changed {
        let message = format!("The station {} is {}.", s.name, s.state.words());
        add(
            "station-changed",
            Weight::Warning,
            message,
            &[s.state.words()],
        );
    }
    for what in &s.placed {
        let message = format!("{}: the {what} was changed.", called(s));
        add("station-changed", Weight::Warning, message, &[what]);
    }
    for spot in &s.spots {
        let (rule, weight) = match (spot.worse, spot.over) {
            (true, true) => ("verdict-fell", Weight::Error),
            (true, false) => ("verdict-fell", Weight::Warning),
            (false, _) => ("exposure-moved", Weight::Warning),
        };
        let message = format!("{}: exposure at {}.", called(s), exposure::step(spot));
        add(rule, weight, message, &[&spot.name, &spot.set]);
    }
    for c in s.chains.iter().filter(|c| c.speaks) {
        for (rule, weight, message, key) in chain(s, c) {
            let key: Vec<&str> = key.iter().map(String::as_str).collect();
            add(rule, weight, message, &key);
        }
    }
}

fn called(s: &StationDiff) -> &str {
    if s.name.is_empty() {
        "the file"
    } else {
        &s.name
    }
}

type Said = (&'static str, Weight, String, Vec<String>);

fn chain(s: &StationDiff, c: &ChainDiff) -> Vec<Said> {
    let mut out: Vec<Said> = Vec::new();
    let at = format!("{}/{} on {}", called(s), c.name, c.band);
    let key = |more: &[&str]| -> Vec<String> {
        let own = [c.name.as_str(), c.band.as_str()];
        own.iter().chain(more).map(|x| (*x).to_owned()).collect()
    };
    for l in &c.limits {
        let [Some(old), Some(new)] = l.verdict else {
            if l.worse {
                let message = format!("{at}: a new limit{} is not met.", cited(&l.source[1]));
                let weight = if l.warns {
                    Weight::Warning
                } else {
                    Weight::Error
                };
                out.push(("verdict-fell", weight, message, key(&["new"])));
            }
            continue;
        };
        if old == new {
            continue;
        }
        let figures = l.margin_db[1]
            .zip(l.limit_w[1])
            .map_or_else(String::new, |(m, w)| {
                format!(": {} {}", under_or_over(m), power(w))
            });
        let message = format!(
            "{at}: the limit{} was {}, and is {}{figures}.",
            cited(&l.source[1].as_ref().or(l.source[0].as_ref()).cloned()),
            old.replace('-', " "),
            new.replace('-', " "),
        );
        let rule = if l.worse {
            "verdict-fell"
        } else {
            "verdict-rose"
        };
        let weight = match (l.worse, new) {
            (true, "not-met") if !l.warns => Weight::Error,
            (true, _) => Weight::Warning,
            _ => Weight::Note,
        };
        let source = l.source[1].clone().unwrap_or_default();
        out.push((rule, weight, message, key(&[l.quantity, &source, old, new])));
    }
    for r in c.readings.iter().filter(|r| r.worse) {
        let message = format!(
            "{at}: a reading ({}) contradicts what is computed now.",
            r.what
        );
        out.push((
            "reading-contradicts",
            Weight::Error,
            message,
            key(&[r.what]),
        ));
    }
    if c.state != State::Changed {
        let message = format!("{at}: the chain is {}.", c.state.words());
        out.push((
            "chain-changed",
            Weight::Warning,
            message,
            key(&[c.state.words()]),
        ));
        return out;
    }
    if c.worse && c.loss_db[0].is_some() && c.loss_db[1].is_none() {
        let message = format!("{at}: the chain can no longer be computed.");
        out.push(("not-computed", Weight::Error, message, key(&[])));
    }
    if let Some(step) = c.radiated.filter(|x| x.speaks) {
        let watts = c.erp_w.map(|w| w.map_or_else(String::new, power));
        let message = format!(
            "{at}: ERP {} → {}, {} ± {}.",
            watts[0],
            watts[1],
            decibel_signed(step.change_db),
            db(step.uncertainty_db)
        );
        let way = if step.change_db > 0.0 { "more" } else { "less" };
        out.push(("radiated-power-moved", Weight::Note, message, key(&[way])));
    } else if let Some(step) = c.loss.filter(|x| x.speaks && c.radiated.is_none()) {
        let message = format!(
            "{at}: loss {} ± {}.",
            decibel_signed(step.change_db),
            db(step.uncertainty_db)
        );
        let way = if step.change_db > 0.0 { "more" } else { "less" };
        out.push(("loss-moved", Weight::Note, message, key(&[way])));
    }
    out
}

fn cited(source: &Option<String>) -> String {
    source
        .as_ref()
        .map_or_else(String::new, |s| format!(" of {s}"))
}

/// FNV-1a, 64 bits (Fowler, Noll, Vo), of words with a separator.
fn fingerprint(words: &[&str]) -> String {
    let mut h: u64 = 0xcbf2_9ce4_8422_2325;
    for byte in words.join("\u{1f}").bytes() {
        h = (h ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3);
    }
    format!("{h:016x}")
}

#[cfg(test)]
mod tests {
    use super::fingerprint;

    #[test]
    fn the_fingerprint_is_the_published_hash() {
        // test vectors of the authors (draft-eastlake-fnv)
        assert_eq!(fingerprint(&[""]), "cbf29ce484222325");
        assert_eq!(fingerprint(&["a"]), "af63dc4c8601ec8c");
        assert_eq!(fingerprint(&["foobar"]), "85944171f73967e8");
    }
}
