//! A table with a row for each band and a column for each piece, as a spreadsheet has it:
//! `band, baseline, A, B, C, baseline`.

use super::columns::{Column, Head, column_of, in_base, plain_name};
use super::readings::{ReadingsFile, Row, figure};
use super::records::Record;
use crate::session::ReadingKind;

/// What a column of such a table holds.
enum Wide {
    /// Of the whole row: band, frequency, temperature, date, …
    Row(Head),
    /// A reading: none of a piece is a baseline; with the unit it is in.
    Reading(Option<Box<str>>, Head),
    /// Nothing that is read.
    Nothing,
}

/// The columns of a wide table, with the times of a row of times.
pub(super) struct WideTable {
    columns: Vec<Wide>,
    minutes: Vec<Option<f64>>,
}

/// Words for readings without a piece.
fn is_baseline(name: &str) -> bool {
    let plain = plain_name(name);
    let word = plain.trim_end_matches(|c: char| c.is_ascii_digit() || c == '_');
    matches!(
        word,
        "baseline" | "base" | "reference" | "direct" | "without"
    )
}

/// Words of a row that says when each column was read.
fn is_time(name: &str) -> bool {
    matches!(
        &*plain_name(name),
        "time" | "time_min" | "minutes" | "min" | "at" | "at_min" | "t_min"
    )
}

/// Units a column of readings may carry, and how they follow its name.
const UNITS: &[&str] = &["dbm", "dbw", "mw", "kw", "w"];

/// Name and unit of a column of readings: `A (W)`, `A W`, `A_dbm`; without one none.
fn named(name: &str) -> (&str, Option<&'static str>) {
    let lower = name.trim_end_matches([')', ']']);
    for unit in UNITS {
        let cut = lower.len().saturating_sub(unit.len());
        let Some((before, after)) = lower.split_at_checked(cut) else {
            continue;
        };
        if after.eq_ignore_ascii_case(unit) && before.ends_with([' ', '(', '[', '_', ',']) {
            let bare = before.trim_end_matches([' ', '(', '[', '_', ',']);
            if !bare.is_empty() {
                return (bare, Some(unit));
            }
        }
    }
    (name.trim(), None)
}

impl WideTable {
    /// The columns of a line of names, if it is that of a wide table: it has a band or a frequency,
    /// a baseline, and no column that says what was read. `known` are what the narrow reading of it
    /// understood.
    pub(super) fn of(record: &Record<'_>, known: &[Option<Head>]) -> Option<(Self, bool)> {
        let has = |c: Column| known.iter().flatten().any(|h| h.column == c);
        let narrow = [
            Column::Piece,
            Column::Forward,
            Column::Loss,
            Column::ReturnLoss,
            Column::Swr,
            Column::After,
            Column::Reading,
        ];
        let of_band = |name: &str| {
            column_of(name)
                .or_else(|_| column_of(named(name).0))
                .is_ok_and(|h| matches!(h.column, Column::Band | Column::Frequency))
        };
        if narrow.into_iter().any(has) || !record.fields.iter().any(|f| of_band(f)) {
            return None;
        }
        let mut columns = Vec::with_capacity(record.fields.len());
        let (mut bases, mut pieces, mut unit_said) = (0, 0, false);
        // `band (W)` or a unit at one column is that of all
        let common = record.fields.iter().find_map(|f| named(f).1);
        for name in &record.fields {
            let (bare, unit) = named(name);
            if name.is_empty() {
                columns.push(Wide::Nothing);
                continue;
            }
            if let Ok(head) = column_of(name) {
                columns.push(Wide::Row(head));
                continue;
            }
            if let Ok(head) = column_of(bare)
                && matches!(head.column, Column::Band)
            {
                columns.push(Wide::Row(head));
                unit_said |= unit.is_some();
                continue;
            }
            unit_said |= unit.is_some();
            let head = Head {
                column: Column::Forward,
                unit: unit.or(common).unwrap_or("w"),
                name: (&**name).into(),
            };
            let piece = if is_baseline(bare) {
                bases += 1;
                None
            } else {
                pieces += 1;
                Some(bare.into())
            };
            columns.push(Wide::Reading(piece, head));
        }
        if bases == 0 || pieces == 0 {
            return None;
        }
        let minutes = vec![None; columns.len()];
        Some((WideTable { columns, minutes }, unit_said))
    }

    /// Takes a line: a row of times, or the readings of a band in the order of its columns.
    pub(super) fn line(
        &mut self,
        out: &mut ReadingsFile,
        record: &Record<'_>,
        decimal_comma: bool,
    ) {
        let line = record.line;
        // what a spreadsheet leaves empty at the end of a line says nothing
        let named = |c: &Wide| !matches!(c, Wide::Nothing);
        let want = self.columns.iter().rposition(named).map_or(0, |i| i + 1);
        let got = record.fields.len();
        let more = record.fields.iter().skip(want).any(|f| !f.is_empty());
        if got < want || more {
            out.problem(
                line,
                0,
                "",
                format!("The row has {got} fields, the first line names {want} columns."),
                None,
                true,
            );
            out.lost += 1;
            return;
        }
        let first = self.columns.iter().position(
            |c| matches!(c, Wide::Row(h) if matches!(h.column, Column::Band | Column::Frequency)),
        );
        if first
            .and_then(|i| record.fields.get(i))
            .is_some_and(|f| is_time(f))
        {
            self.times(out, record, decimal_comma);
            return;
        }
        let mut of_row = Row {
            line,
            ..Row::default()
        };
        let had = out.problems.len();
        for (i, c) in self.columns.iter().enumerate() {
            if let (Wide::Row(head), Some(cell)) = (c, record.fields.get(i))
                && !cell.is_empty()
            {
                out.cell(&mut of_row, head, cell, i + 1, decimal_comma);
            }
        }
        if out.problems[had..].iter().any(|p| p.lost) {
            out.lost += 1;
            return;
        }
        let start = of_row.minutes.take();
        for (i, c) in self.columns.iter().enumerate() {
            let (Wide::Reading(piece, head), Some(cell)) = (c, record.fields.get(i)) else {
                continue;
            };
            if cell.is_empty() {
                continue;
            }
            let mut row = Row {
                piece: piece.clone(),
                kind: Some(match piece {
                    Some(_) => ReadingKind::Through,
                    None => ReadingKind::Baseline,
                }),
                ..of_row.clone()
            };
            let had = out.problems.len();
            out.cell(&mut row, head, cell, i + 1, decimal_comma);
            if out.problems[had..].iter().any(|p| p.lost) {
                out.lost += 1;
                continue;
            }
            // without a row of times the order is all there is
            row.minutes = self.minutes[i]
                .map(|m| (m + start.map_or(0.0, |s| s.0), start.map_or(i + 1, |s| s.1)));
            out.rows.push(row);
        }
    }

    fn times(&mut self, out: &mut ReadingsFile, record: &Record<'_>, decimal_comma: bool) {
        let head = Head {
            column: Column::Time,
            unit: "min",
            name: "time".into(),
        };
        for (i, c) in self.columns.iter().enumerate() {
            let (Wide::Reading(..), Some(cell)) = (c, record.fields.get(i)) else {
                continue;
            };
            if cell.is_empty() {
                continue;
            }
            let found = match super::columns::clock(cell) {
                Some(m) => Some(m),
                None => figure(cell, decimal_comma)
                    .ok()
                    .and_then(|n| in_base(&head, n)),
            };
            match found {
                Some(m) => self.minutes[i] = Some(m),
                None => out.problem(
                    record.line,
                    i + 1,
                    "time",
                    format!("`{cell}` is no time in minutes, nor one of the day as 14:02."),
                    None,
                    false,
                ),
            }
        }
    }
}
