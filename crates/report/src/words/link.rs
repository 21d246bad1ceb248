//! Words of links.

use downlead_eval::link::{HopResult, LinkVerdict};
use downlead_quantity::db;

/// A level to a tenth of a decibel.
#[must_use]
pub fn dbm(x: f64) -> String {
    format!("{:.1} dBm", (x * 10.0).round() / 10.0 + 0.0)
}

/// A hop in a few words: `-87.6 dBm, 11.2 dB left ± 2.69 dB: met`.
#[must_use]
pub fn short(h: &HopResult) -> String {
    let level = h.level_dbm.map(dbm);
    let left = h.judged.as_ref().map(|j| {
        format!(
            "{:.1} dB left ± {}",
            (j.left_db * 10.0).round() / 10.0 + 0.0,
            db(j.u_db)
        )
    });
    let numbers: Vec<String> = level.into_iter().chain(left).collect();
    let verdict = match h.verdict {
        LinkVerdict::NoNeed => return numbers.join(", "),
        LinkVerdict::CannotJudge => "not judged".to_owned(),
        v => v.words(),
    };
    match numbers.is_empty() {
        true => verdict,
        false => format!("{}: {verdict}", numbers.join(", ")),
    }
}
