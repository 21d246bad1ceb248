//! Numbers in words, for hints and hovers.

pub(crate) use downlead_report::words::chain::under_or_over;

use downlead_quantity::{
    Dim, Quantity, db, frequency, length, number, percent, power, sig, units_of, w_to_dbm,
};

/// A power in watts with its level: `28.2 W (44.5 dBm)`.
pub(crate) fn both(watts: f64) -> String {
    let level = format!("{:.1} dBm", w_to_dbm(watts));
    let main = power(watts);
    if main == level {
        main
    } else {
        format!("{main} ({level})")
    }
}

/// A quantity in words, a power with its level.
pub(crate) fn in_units(q: Quantity) -> String {
    match q.dim {
        Dim::Power => both(q.value),
        Dim::Frequency => frequency(q.value),
        Dim::Length => length(q.value),
        Dim::Count => number(q.value, 6),
        Dim::Percent => percent(q.value),
        d => {
            let u = units_of(d).next().map_or("", |u| u.symbol());
            let value = units_of(d).next().map_or(q.value, |u| u.from_base(q.value));
            format!("{} {u}", sig(value, 6))
        }
    }
}

/// A loss in dB with two digits behind the point; nothing lost has no sign.
pub(crate) fn two_places(db: f64) -> String {
    let s = format!("{db:.2}");
    if s == "-0.00" { "0.00".to_owned() } else { s }
}

/// Padded on the left with figure spaces, so that a hint keeps its width while digits change.
pub(crate) fn padded(text: &str, width: usize) -> String {
    let have = text.chars().count();
    let mut out = String::new();
    out.extend(std::iter::repeat_n('\u{2007}', width.saturating_sub(have)));
    out.push_str(text);
    out
}

/// What could not be computed is said to be so.
pub(crate) fn or_not_known(words: Option<String>) -> String {
    words.unwrap_or_else(|| "not known".to_owned())
}

/// `± 0.74 dB`; empty without an uncertainty.
pub(crate) fn plus_minus(u_db: f64) -> String {
    if u_db.is_finite() && u_db >= 0.005 {
        format!(" ± {}", db(u_db))
    } else {
        String::new()
    }
}

/// Loss per 100 m.
pub(crate) fn per_100m(db_per_m: f64) -> String {
    format!("{} dB/100 m", number(db_per_m * 100.0, 2))
}
