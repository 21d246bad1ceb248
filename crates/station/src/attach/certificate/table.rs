//! A certificate as a text table: a row for each point, the units in the names of the columns.

use downlead_quantity::{DB_PER_RELATIVE, dbm_to_w, from_db};

use super::super::columns::plain_name;
use super::super::readings::{delimiter, figure};
use super::super::records::Records;
use super::{Certificate, CertificatePoint};

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Column {
    Frequency,
    Level,
    Factor,
    Correction,
    Error,
    Uncertainty,
    K,
}

/// The columns with their units; the first unit is named in advice.
const COLUMNS: &[(&str, Column, &[&str])] = &[
    ("frequency", Column::Frequency, &["mhz", "hz", "khz", "ghz"]),
    ("level", Column::Level, &["w", "mw", "kw", "dbm", "dbw"]),
    ("factor", Column::Factor, &[""]),
    ("correction", Column::Correction, &["percent", "db", "w"]),
    ("error", Column::Error, &["percent", "db", "w"]),
    ("uncertainty", Column::Uncertainty, &["percent", "db", "w"]),
    ("k", Column::K, &[""]),
];

const HEADS: &str = "A certificate names its columns, for example `frequency_mhz,level_w,correction_percent,uncertainty_percent,k`.";

type Head = (Column, &'static str);

/// Reads a table; none where no column is a correction of readings.
pub(super) fn read(text: &str) -> Option<Certificate> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let delimiter = delimiter(text);
    let mut records = Records::new(text, delimiter);
    let head = records.find(|r| r.fields.iter().any(|f| !f.is_empty()))?;
    let names: Vec<String> = head.fields.iter().map(|f| plain_name(f)).collect();
    let begins = |word: &str| {
        names
            .iter()
            .any(|n| n == word || n.starts_with(&format!("{word}_")))
    };
    if !(begins("correction") || begins("factor") || begins("error")) {
        return None;
    }
    let mut out = Certificate::default();
    remarks(text, &mut out);
    let mut heads: Vec<Option<Head>> = Vec::new();
    for (name, shown) in names.iter().zip(&head.fields) {
        heads.push(column(name));
        if heads.last() == Some(&None) && !matches!(name.as_str(), "note" | "") {
            out.problem(
                head.line,
                format!("The column `{shown}` is none of a certificate."),
                Some(HEADS),
            );
        }
    }
    let has = |c: Column| heads.iter().flatten().any(|h| h.0 == c);
    for (column, word) in [
        (Column::Frequency, "frequency_mhz"),
        (Column::Uncertainty, "uncertainty_percent"),
        (Column::K, "k"),
    ] {
        if !has(column) {
            let message = format!("The column `{word}` is missing.");
            out.problem(head.line, message, Some(HEADS));
        }
    }
    if out.problems.is_empty() {
        for r in records {
            if r.fields.iter().any(|f| !f.is_empty()) {
                let cells: Vec<&str> = r.fields.iter().map(AsRef::as_ref).collect();
                row(r.line, &cells, &heads, delimiter != b',', &mut out);
            }
        }
    }
    Some(out)
}

fn column(name: &str) -> Option<Head> {
    COLUMNS.iter().find_map(|(word, column, units)| {
        let rest = name.strip_prefix(word)?;
        let unit = match rest {
            "" => "",
            _ => rest.strip_prefix('_')?,
        };
        let unit = units.iter().find(|u| **u == unit)?;
        Some((*column, *unit))
    })
}

/// `# valid from 2026-02-03`, `# valid until 2028-02-03`, `# certificate 4711`.
fn remarks(text: &str, out: &mut Certificate) {
    for line in text.lines() {
        let Some(words) = line.trim().strip_prefix('#') else {
            continue;
        };
        let words = words.trim();
        let after = |word: &str| {
            let rest = words.strip_prefix(word)?.trim_start_matches([':', ' ']);
            let rest = rest.split([' ', ',', ';']).next()?;
            (!rest.is_empty()).then(|| Box::from(rest))
        };
        if let Some(d) = after("valid from").or_else(|| after("calibrated")) {
            out.from = Some(d);
        } else if let Some(d) = after("valid until").or_else(|| after("due")) {
            out.until = Some(d);
        } else if let Some(n) = after("certificate") {
            out.number = Some(n);
        }
    }
}

fn row(line: u64, cells: &[&str], heads: &[Option<Head>], comma: bool, out: &mut Certificate) {
    let mut figures: Vec<(Head, f64)> = Vec::new();
    for (cell, head) in cells.iter().zip(heads) {
        let Some(head) = head else { continue };
        match figure(cell, comma) {
            Ok(v) => figures.push((*head, v)),
            Err((message, help)) => return out.problem(line, message, help.as_deref()),
        }
    }
    let of = |c: Column| figures.iter().find(|f| f.0.0 == c).copied();
    let hz = of(Column::Frequency).map(|((_, unit), v)| match unit {
        "mhz" => v * 1e6,
        "khz" => v * 1e3,
        "ghz" => v * 1e9,
        _ => v,
    });
    let level_w = of(Column::Level).map(|((_, unit), v)| match unit {
        "mw" => v * 1e-3,
        "kw" => v * 1e3,
        "dbm" => dbm_to_w(v),
        "dbw" => from_db(v),
        _ => v,
    });
    let (Some(hz), Some(u), Some((_, k))) = (hz, of(Column::Uncertainty), of(Column::K)) else {
        return out.problem(
            line,
            "A row of a certificate has a figure in each column.",
            None,
        );
    };
    let share = |((_, unit), v): (Head, f64), sign: f64| -> Option<f64> {
        Some(match unit {
            "percent" => 1.0 + 0.01 * sign * v,
            "db" => from_db(sign * v),
            "w" => 1.0 + sign * v / level_w?,
            _ => v,
        })
    };
    let factor = of(Column::Factor)
        .map(|(_, v)| Some(v))
        .or_else(|| of(Column::Correction).map(|c| share(c, 1.0)))
        .or_else(|| of(Column::Error).map(|c| share(c, -1.0)))
        .flatten();
    // of the true power, a share of the power that is shown
    let relative = factor.and_then(|f| {
        Some(match u.0.1 {
            "percent" => 0.01 * u.1 / f,
            "db" => u.1 / DB_PER_RELATIVE,
            _ => u.1 / (level_w? * f),
        })
    });
    let (Some(factor), Some(expanded)) = (factor, relative) else {
        return out.problem(
            line,
            "A figure in W needs the level it holds at.",
            Some("Add a column `level_w`."),
        );
    };
    point(line, (hz, level_w), factor, (expanded, k), out);
}

/// Takes a point whose figures can be.
pub(super) fn point(
    line: u64,
    (hz, level_w): (f64, Option<f64>),
    factor: f64,
    (expanded, k): (f64, f64),
    out: &mut Certificate,
) {
    let message = if !(1e3..=300e9).contains(&hz) {
        "Its frequency is no radio frequency (1 kHz to 300 GHz)."
    } else if level_w.is_some_and(|w| !(w > 0.0 && w.is_finite())) {
        "Its level is not above zero."
    } else if !(0.5..=2.0).contains(&factor) {
        "The correction is more than a factor of two: no meter is that far off."
    } else if !(expanded > 0.0 && expanded < 1.0) {
        "The uncertainty is not above zero, or more than the power itself."
    } else if !(1.0..=4.0).contains(&k) {
        "The coverage factor k is from 1 to 4."
    } else {
        out.points.push(CertificatePoint {
            hz,
            level_w,
            factor,
            u: expanded / k,
            line,
        });
        return;
    };
    out.problem(line, message, None);
}
