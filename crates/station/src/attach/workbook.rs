//! Workbooks of spreadsheets as text tables: the first sheet that holds anything.

use std::io::{Cursor, Read};
use std::sync::Arc;

use calamine::{Data, Reader, open_workbook_auto_from_rs};
use zip::ZipArchive;

use crate::scope::LoadError;

/// Larger workbooks are refused: they are packed, and a table of readings is a thousandth of this.
const LARGEST: usize = 8 << 20;
/// All parts of a workbook together, unpacked.
const MOST_UNPACKED: u64 = 64 << 20;
/// More parts than these are none of a table of readings.
const MOST_PARTS: usize = 2000;
/// More cells than these are none of a table of readings.
const MOST_CELLS: usize = 4_000_000;

/// The text of a file: as it is, or a workbook's first sheet with fields separated by commas.
///
/// # Errors
/// Bytes that are no text, or a workbook that cannot be read.
pub fn text_of(path: &str, bytes: Vec<u8>) -> Result<Arc<str>, LoadError> {
    let workbook = path.rsplit_once('.').is_some_and(|(_, e)| {
        ["xlsx", "ods"]
            .iter()
            .any(|known| e.eq_ignore_ascii_case(known))
    });
    if workbook {
        return sheet(bytes).map(Into::into).map_err(LoadError::Unreadable);
    }
    match String::from_utf8(bytes) {
        Ok(text) => Ok(text.into()),
        Err(e) => Err(LoadError::not_utf8(e.as_bytes()).unwrap_or(LoadError::NotFound)),
    }
}

/// Refuses a workbook that is far larger unpacked than it says or than a table of readings is. The
/// sizes that stand in the file are not trusted: each part is unpacked and counted, and nothing kept.
fn unpacks(bytes: &[u8]) -> Result<(), String> {
    let no_workbook = || "it is no workbook that can be read".to_owned();
    let mut packed = ZipArchive::new(Cursor::new(bytes)).map_err(|_| no_workbook())?;
    if packed.len() > MOST_PARTS {
        return Err(format!("the workbook has more than {MOST_PARTS} parts"));
    }
    let mut left = MOST_UNPACKED;
    for i in 0..packed.len() {
        // what cannot be unpacked is refused where it is read
        let Ok(part) = packed.by_index(i) else {
            continue;
        };
        let mut part = part.take(left + 1);
        let _ = std::io::copy(&mut part, &mut std::io::sink());
        let taken = left + 1 - part.limit();
        if taken > left {
            return Err(format!(
                "unpacked, the workbook is larger than {} MB: no table of readings is",
                MOST_UNPACKED >> 20
            ));
        }
        left -= taken;
    }
    Ok(())
}

/// The first sheet that holds anything, a line a row, so that lines are the rows of the sheet.
fn sheet(bytes: Vec<u8>) -> Result<String, String> {
    if bytes.len() > LARGEST {
        return Err("the workbook is larger than 8 MB".to_owned());
    }
    unpacks(&bytes)?;
    let mut book = open_workbook_auto_from_rs(Cursor::new(bytes))
        .map_err(|_| "it is no workbook that can be read".to_owned())?;
    for name in book.sheet_names() {
        let range = book
            .worksheet_range(&name)
            .map_err(|_| format!("its sheet `{name}` cannot be read"))?;
        let Some((top, left)) = range.start() else {
            continue;
        };
        // empty columns before the first count too: they are written as commas
        let width = range.width().saturating_add(left as usize);
        if range.height().saturating_mul(width) > MOST_CELLS {
            return Err(format!(
                "its sheet `{name}` is too large for a table of readings"
            ));
        }
        let mut out = "\n".repeat(top as usize);
        let empty = ",".repeat(left as usize);
        for row in range.rows() {
            if row.iter().any(|c| !matches!(c, Data::Empty)) {
                out.push_str(&empty);
                for (i, c) in row.iter().enumerate() {
                    if i > 0 {
                        out.push(',');
                    }
                    out.push_str(&field(c));
                }
            }
            out.push('\n');
        }
        return Ok(out);
    }
    Err("the workbook holds no cells".to_owned())
}

/// A cell as a field of a text table.
fn field(c: &Data) -> String {
    match c {
        Data::Empty | Data::Error(_) => String::new(),
        Data::Int(n) => n.to_string(),
        Data::Float(n) => n.to_string(),
        Data::Bool(b) => b.to_string(),
        Data::DateTime(d) if d.is_datetime() => day_and_time(d.as_f64()),
        Data::DateTime(d) => time(d.as_f64()),
        Data::DateTimeIso(t) => t.split('T').next().unwrap_or(t).to_owned(),
        Data::DurationIso(t) => iso_time(t),
        Data::String(t) => quoted(t),
    }
}

fn quoted(t: &str) -> String {
    let t = t.trim();
    if t.contains([',', '"', '\n', '\r']) {
        format!("\"{}\"", t.replace('"', "\"\""))
    } else {
        t.to_owned()
    }
}

/// A spreadsheet's serial number: days since the day before 1900-01-00, which is 1899-12-30 for
/// every day after February 1900; below 1 a time of the day.
fn day_and_time(serial: f64) -> String {
    if (0.0..1.0).contains(&serial) {
        return time(serial);
    }
    if !(60.0..3_000_000.0).contains(&serial) {
        return serial.to_string();
    }
    // civil date from days since 0000-03-01 (H. Hinnant, days from civil, the inverse; from memory)
    let days = libm::floor(serial) as i64 - 25_569 + 719_468;
    let era = days.div_euclid(146_097);
    let of_era = days.rem_euclid(146_097);
    let year = (of_era - of_era / 1460 + of_era / 36_524 - of_era / 146_096) / 365;
    let of_year = of_era - (365 * year + year / 4 - year / 100);
    let month = (5 * of_year + 2) / 153;
    let day = of_year - (153 * month + 2) / 5 + 1;
    let month = if month < 10 { month + 3 } else { month - 9 };
    let year = year + era * 400 + i64::from(month <= 2);
    format!("{year:04}-{month:02}-{day:02}")
}

/// A share of a day as a time of the day.
fn time(day: f64) -> String {
    let seconds = libm::round((day - libm::floor(day)) * 86_400.0) as i64 % 86_400;
    let (h, m, s) = (seconds / 3600, seconds / 60 % 60, seconds % 60);
    match s {
        0 => format!("{h:02}:{m:02}"),
        s => format!("{h:02}:{m:02}:{s:02}"),
    }
}

/// `PT14H02M00S` as a time of the day.
fn iso_time(t: &str) -> String {
    let part = |mark: char| -> Option<u32> {
        let before = t.split(mark).next().filter(|b| b.len() < t.len())?;
        let digits: String = before
            .chars()
            .rev()
            .take_while(char::is_ascii_digit)
            .collect::<Vec<_>>()
            .into_iter()
            .rev()
            .collect();
        digits.parse().ok()
    };
    let (h, m) = (part('H').unwrap_or(0), part('M').unwrap_or(0));
    format!("{h:02}:{m:02}")
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Serial numbers of days as spreadsheets count them: 1 March 1900 is 61, 1 January 2000 36526
    /// and 21 November 2026 46347 (Python's datetime: days since 1899-12-30).
    #[test]
    fn serial_numbers_are_dates() {
        assert_eq!(day_and_time(61.0), "1900-03-01");
        assert_eq!(day_and_time(36_526.0), "2000-01-01");
        assert_eq!(day_and_time(46_347.25), "2026-11-21");
        assert_eq!(day_and_time(0.584_722_222_222), "14:02");
        assert_eq!(iso_time("PT14H02M00S"), "14:02");
    }

    #[test]
    fn what_is_no_workbook_is_refused_with_a_reason() {
        for bytes in [&b""[..], b"PK\x03\x04nothing", b"band,piece\n"] {
            let found = text_of("a.xlsx", bytes.to_vec());
            assert!(matches!(found, Err(LoadError::Unreadable(_))), "{found:?}");
        }
        assert_eq!(text_of("a.csv", b"x".to_vec()).as_deref().ok(), Some("x"));
    }
}
