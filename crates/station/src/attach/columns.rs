//! The columns of a table of readings: their names, units, and what a figure in them may be.

use downlead_quantity::{dbm_to_w, from_db};

use crate::cx::nearest;

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "named after the columns")]
pub enum Column {
    Band,
    Frequency,
    Reading,
    Piece,
    Time,
    Temperature,
    Forward,
    Reflected,
    Input,
    Loss,
    ReturnLoss,
    Swr,
    Length,
    Cable,
    Instrument,
    Date,
    Person,
    After,
    Note,
    Corrected,
}

/// The columns by name, with the units each may carry behind an underscore (empty: none).
pub const COLUMNS: &[(&str, Column, &[&str])] = &[
    ("band", Column::Band, &[]),
    ("frequency", Column::Frequency, &["hz", "khz", "mhz", "ghz"]),
    ("reading", Column::Reading, &[]),
    ("piece", Column::Piece, &[]),
    ("time", Column::Time, &["min", "s", "h"]),
    ("temperature", Column::Temperature, &["c", "f"]),
    ("forward", Column::Forward, POWERS),
    ("reflected", Column::Reflected, POWERS),
    ("input", Column::Input, POWERS),
    ("loss", Column::Loss, &["db"]),
    ("return_loss", Column::ReturnLoss, &["db"]),
    ("swr", Column::Swr, &[]),
    ("length", Column::Length, &["m", "ft", "in"]),
    ("cable", Column::Cable, &[]),
    ("instrument", Column::Instrument, &[]),
    ("date", Column::Date, &[]),
    ("person", Column::Person, &[]),
    ("after", Column::After, &[]),
    ("note", Column::Note, &[]),
    ("corrected", Column::Corrected, &[]),
];

const POWERS: &[&str] = &["w", "mw", "kw", "dbm", "dbw"];

/// A column of the file at hand.
pub(super) struct Head {
    pub(super) column: Column,
    pub(super) unit: &'static str,
    pub(super) name: Box<str>,
}

/// What is wrong, and what to write instead.
pub(super) type Trouble = (String, Option<String>);

/// No session lasts longer, min: a year.
const LONGEST_MIN: f64 = 366.0 * 24.0 * 60.0;

/// A name without what people set units off with: `Forward (W)`, `forward w` and `forward_w` are one.
pub(super) fn plain_name(name: &str) -> String {
    let lower = name.to_lowercase().replace("°", "");
    let words: Vec<&str> = lower
        .split(|c: char| !c.is_alphanumeric())
        .filter(|w| !w.is_empty())
        .collect();
    words.join("_")
}

/// What people write for a column, and its name here.
const GUESSES: &[(&str, &str)] = &[
    ("watts", "forward_w"),
    ("watt", "forward_w"),
    ("w", "forward_w"),
    ("power", "forward_w"),
    ("power_w", "forward_w"),
    ("p_w", "forward_w"),
    ("fwd", "forward_w"),
    ("fwd_w", "forward_w"),
    ("forward_watts", "forward_w"),
    ("forward_power", "forward_w"),
    ("dbm", "forward_dbm"),
    ("level", "forward_dbm"),
    ("level_dbm", "forward_dbm"),
    ("rev", "reflected_w"),
    ("ref", "reflected_w"),
    ("refl", "reflected_w"),
    ("reverse_w", "reflected_w"),
    ("reflected_power", "reflected_w"),
    ("mhz", "frequency_mhz"),
    ("f", "frequency_mhz"),
    ("f_mhz", "frequency_mhz"),
    ("freq", "frequency_mhz"),
    ("freq_mhz", "frequency_mhz"),
    ("qrg", "frequency_mhz"),
    ("min", "time_min"),
    ("minutes", "time_min"),
    ("t", "time_min"),
    ("t_min", "time_min"),
    ("clock", "time"),
    ("utc", "time"),
    ("db", "loss_db"),
    ("attenuation", "loss_db"),
    ("attenuation_db", "loss_db"),
    ("rl", "return_loss_db"),
    ("rl_db", "return_loss_db"),
    ("vswr", "swr"),
    ("sample", "piece"),
    ("item", "piece"),
    ("tag", "piece"),
    ("cable_no", "piece"),
    ("meter", "instrument"),
    ("temp", "temperature_c"),
    ("temp_c", "temperature_c"),
    ("day", "date"),
    ("operator", "person"),
    ("by", "person"),
    ("who", "person"),
    ("name", "person"),
    ("comment", "note"),
    ("comments", "note"),
    ("remark", "note"),
    ("remarks", "note"),
    ("notes", "note"),
];

/// Minutes since midnight of a time of the day: `14:02`, `14:02:30`.
pub(super) fn clock(text: &str) -> Option<f64> {
    let mut parts = text.split(':');
    let (h, m) = (parts.next()?, parts.next()?);
    let s = parts.next();
    if parts.next().is_some() {
        return None;
    }
    let whole = |t: &str, most: u32| -> Option<f64> {
        let digits = (1..=2).contains(&t.len()) && t.bytes().all(|b| b.is_ascii_digit());
        let n: u32 = t.parse().ok().filter(|_| digits)?;
        (n <= most).then(|| f64::from(n))
    };
    let seconds = s.map_or(Some(0.0), |s| whole(s, 59))?;
    Some(60.0 * whole(h, 23)? + whole(m, 59)? + seconds / 60.0)
}

/// What a column of that name holds.
pub(super) fn column_of(name: &str) -> Result<Head, Trouble> {
    let lower = plain_name(name);
    let head = |column, unit| Head {
        column,
        unit,
        name: name.into(),
    };
    for (word, column, units) in COLUMNS {
        if lower == *word {
            // a time of the day needs no unit
            if units.is_empty() || *column == Column::Time {
                return Ok(head(*column, ""));
            }
            return Err((
                format!("The column `{name}` does not say its unit."),
                Some(format!(
                    "Write `{word}_{}`.",
                    units.join(&format!("` or `{word}_"))
                )),
            ));
        }
        let Some(unit) = lower.strip_prefix(word).and_then(|r| r.strip_prefix('_')) else {
            continue;
        };
        if let Some(u) = units.iter().find(|u| **u == unit) {
            return Ok(head(*column, u));
        }
        if !units.is_empty() {
            return Err((
                format!("`{unit}` is no unit of the column `{word}`."),
                Some(format!(
                    "Write `{word}_{}`.",
                    units.join(&format!("` or `{word}_"))
                )),
            ));
        }
    }
    let names: Vec<String> = COLUMNS
        .iter()
        .flat_map(|(w, _, units)| {
            let plain = units.is_empty().then(|| (*w).to_owned());
            plain
                .into_iter()
                .chain(units.iter().map(move |u| format!("{w}_{u}")))
        })
        .collect();
    let guess = GUESSES.iter().find(|g| g.0 == lower).map(|g| g.1);
    let help = guess
        .or_else(|| nearest(&lower, names.iter().map(String::as_str)))
        .map(|n| format!("Did you mean `{n}`?"))
        .or_else(|| Some("A column for remarks is called `note`.".to_owned()));
    Err((
        format!("The column `{name}` is not known and is not read."),
        help,
    ))
}

/// The figure in the base unit of its column; none if it cannot be.
pub(super) fn in_base(head: &Head, n: f64) -> Option<f64> {
    let v = match (head.column, head.unit) {
        (Column::Frequency, "khz") => n * 1e3,
        (Column::Frequency, "mhz") => n * 1e6,
        (Column::Frequency, "ghz") => n * 1e9,
        (Column::Time, "s") => n / 60.0,
        (Column::Time, "h") => n * 60.0,
        (Column::Temperature, "f") => (n - 32.0) / 1.8,
        (_, "mw") => n * 1e-3,
        (_, "kw") => n * 1e3,
        (_, "dbm") => dbm_to_w(n),
        (_, "dbw") => from_db(n),
        (Column::Length, "ft") => n * 0.3048,
        (Column::Length, "in") => n * 0.0254,
        _ => n,
    };
    let fits = match head.column {
        Column::Frequency => (1e3..=300e9).contains(&v),
        Column::Forward | Column::Input | Column::Length => v > 0.0,
        Column::Reflected => v >= 0.0,
        Column::ReturnLoss => v > 0.0,
        Column::Swr => v >= 1.0,
        Column::Temperature => (-70.0..=120.0).contains(&v),
        Column::Time => v.abs() <= LONGEST_MIN,
        _ => true,
    };
    (fits && v.is_finite()).then_some(v)
}

/// What a figure of a column is, for a sentence.
pub(super) fn noun(c: Column) -> &'static str {
    match c {
        Column::Frequency => {
            "a radio frequency (1 kHz to 300 GHz); look at the unit in the column's name"
        }
        Column::Forward | Column::Input => "a forward power, which is above zero",
        Column::Reflected => "a reflected power, which is not negative",
        Column::Length => "a length, which is above zero",
        Column::ReturnLoss => "a return loss, which is above zero",
        Column::Swr => "an SWR, which is never below 1",
        Column::Temperature => "the temperature of a bench",
        Column::Time => "the time since a session began, which lasts a year at most",
        _ => "that",
    }
}
