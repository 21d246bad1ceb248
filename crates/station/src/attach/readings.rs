//! Readings from a text table: one row a reading, the units in the names of the columns.

use std::borrow::Cow;

use super::columns::{Column, Head, Trouble, clock, column_of, in_base, noun};
use super::records::{Record, Records};
use super::wide::WideTable;
use crate::session::ReadingKind;

/// Something that could not be understood. Rows it does not concern still count.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problem {
    /// Line in the file, from 1.
    pub line: u64,
    /// Column (field) in the line, from 1; 0 for the whole line.
    pub field: usize,
    /// Name of the column as the file has it.
    pub column: Box<str>,
    /// What is wrong, a sentence.
    pub message: String,
    /// What to write instead.
    pub help: Option<String>,
    /// Whether a row (or the file) is lost by it, or the columns may be others than were meant;
    /// otherwise the rest of the row counts.
    pub lost: bool,
}

/// A number of a row and the field it stands in, from 1.
pub type Cell = Option<(f64, usize)>;

/// One reading as read: base units (Hz, W, min, °C, m, dB).
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Row {
    /// Line in the file, from 1.
    pub line: u64,
    /// Band by name.
    pub band: Option<Box<str>>,
    /// Frequency, Hz.
    pub hz: Cell,
    /// What was in the line.
    pub kind: Option<ReadingKind>,
    /// Piece.
    pub piece: Option<Box<str>>,
    /// Time, min.
    pub minutes: Cell,
    /// Temperature, °C.
    pub celsius: Cell,
    /// Forward power, W.
    pub forward_w: Cell,
    /// Reflected power, W.
    pub reflected_w: Cell,
    /// Power at the near end, W.
    pub input_w: Cell,
    /// Loss against the instrument's reference, dB.
    pub loss_db: Cell,
    /// Return loss, dB.
    pub return_loss_db: Cell,
    /// SWR.
    pub swr: Cell,
    /// Length of the piece, m.
    pub length_m: Cell,
    /// Cable of the piece.
    pub cable: Option<Box<str>>,
    /// Instrument.
    pub instrument: Option<Box<str>>,
    /// Date as written.
    pub date: Option<Box<str>>,
    /// Who read it.
    pub person: Option<Box<str>>,
    /// Tag of the part behind which it was read.
    pub after: Option<Box<str>>,
    /// Why it is not as it was first recorded.
    pub corrected: Option<Box<str>>,
}

/// A file of readings.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadingsFile {
    /// What parts its fields.
    pub delimiter: char,
    /// The rows that could be read.
    pub rows: Vec<Row>,
    /// What could not.
    pub problems: Vec<Problem>,
    /// Number of rows that were left out.
    pub lost: usize,
}

impl ReadingsFile {
    /// Reads a table: a line of column names, then a row for each reading. What parts the
    /// fields (comma, semicolon, tab or bar) is found out from the first line; with another
    /// than the comma, decimal commas are understood. Lines that begin with `#` are comments.
    #[must_use]
    pub fn parse(text: &str) -> ReadingsFile {
        let text = text.strip_prefix('\u{feff}').unwrap_or(text);
        let delimiter = delimiter(text);
        let mut out = ReadingsFile {
            delimiter: char::from(delimiter),
            rows: Vec::new(),
            problems: Vec::new(),
            lost: 0,
        };
        let mut heads: Option<Vec<Option<Head>>> = None;
        let mut wide: Option<WideTable> = None;
        for record in Records::new(text, delimiter) {
            let Record { line, fields, .. } = &record;
            let line = *line;
            if fields.iter().all(|f| f.is_empty()) {
                continue;
            }
            if let Some(w) = &mut wide {
                w.line(&mut out, &record, delimiter != b',');
                continue;
            }
            match &heads {
                None if fields.len() == 1 => {
                    let shown: String = fields[0].chars().take(40).collect();
                    out.problem(line, 0, "", format!("The first line, `{shown}`, is one column only."), Some("It names the columns, separated by comma, semicolon, tab or bar, for example `frequency_mhz,piece,time_min,forward_w`.".to_owned()), true);
                    return out;
                }
                None => {
                    let found = out.heads(&record);
                    if let Some((table, unit_said)) = WideTable::of(&record, &found) {
                        out.problems.clear();
                        if !unit_said {
                            out.problem(line, 0, "", "A column for each piece, and none says its unit: watts were taken.", Some("Write `band (W)`, or the unit at a column: `A (dBm)`.".to_owned()), false);
                        }
                        wide = Some(table);
                        heads = Some(Vec::new());
                        continue;
                    }
                    if found.iter().all(Option::is_none) {
                        out.problems.clear();
                        out.problem(line, 0, "", "The first line names no column that is known.", Some("A table of readings begins for example with `frequency_mhz,piece,time_min,forward_w`.".to_owned()), true);
                        return out;
                    }
                    if !out.enough(line, &found) {
                        return out;
                    }
                    heads = Some(found);
                }
                Some(h) => out.row(h, &record, delimiter != b','),
            }
        }
        if heads.is_some() && out.rows.is_empty() && out.problems.is_empty() {
            out.problem(
                1,
                0,
                "",
                "No row of readings follows the names of the columns.",
                None,
                false,
            );
        }
        if heads.is_none() {
            out.problem(1, 0, "", "The file is empty.", Some("Its first line names the columns, for example `frequency_mhz,piece,time_min,forward_w`.".to_owned()), true);
        }
        out
    }

    pub(super) fn problem(
        &mut self,
        line: u64,
        field: usize,
        column: &str,
        message: impl Into<String>,
        help: Option<String>,
        lost: bool,
    ) {
        self.problems.push(Problem {
            line,
            field,
            column: column.chars().take(30).collect::<String>().into(),
            message: message.into(),
            help,
            lost,
        });
    }

    fn heads(&mut self, record: &Record<'_>) -> Vec<Option<Head>> {
        let Record { line, fields, open } = record;
        let line = *line;
        if let Some(i) = open {
            self.open_mark(line, *i, &fields[*i], "the names are read without it");
        }
        let mut out: Vec<Option<Head>> = Vec::with_capacity(fields.len());
        for (i, name) in fields.iter().enumerate() {
            let head = match column_of(name) {
                Ok(h) => Some(h),
                Err((message, help)) => {
                    self.problem(line, i + 1, name, message, help, false);
                    None
                }
            };
            let before = head
                .as_ref()
                .filter(|h| h.column != Column::Note)
                .and_then(|h| {
                    out.iter()
                        .flatten()
                        .find(|o: &&Head| o.column == h.column)
                        .map(|o| o.name.clone())
                });
            if let Some(first) = before {
                let message = if *first == *name {
                    format!("`{name}` occurs twice; the first is used.")
                } else {
                    format!("`{name}` says what `{first}` says already; `{first}` is used.")
                };
                self.problem(line, i + 1, name, message, None, false);
                out.push(None);
            } else {
                out.push(head);
            }
        }
        out
    }

    /// Says that a quotation mark in a field is not closed on its line, and what comes of it.
    fn open_mark(&mut self, line: u64, i: usize, column: &str, so: &str) {
        self.problem(
            line,
            i + 1,
            column,
            format!("A quotation mark is opened here and not closed on this line; {so}."),
            Some("Close it, or take it out.".to_owned()),
            true,
        );
    }

    /// Whether the columns carry a reading at all.
    fn enough(&mut self, line: u64, heads: &[Option<Head>]) -> bool {
        let has = |c: Column| heads.iter().flatten().any(|h| h.column == c);
        let value = [
            Column::Forward,
            Column::Loss,
            Column::ReturnLoss,
            Column::Swr,
        ]
        .into_iter()
        .any(has);
        let mut lacks = Vec::new();
        if !value {
            lacks.push("what was read (`forward_w`, `loss_db`, `return_loss_db` or `swr`)");
        }
        // at a station the chain says the band
        if !has(Column::Band) && !has(Column::Frequency) && !has(Column::After) {
            lacks.push("on which band (`band` or `frequency_mhz`)");
        }
        if !has(Column::Piece) && !has(Column::After) {
            lacks.push("of what (`piece` on the bench, `after` at a station)");
        }
        if lacks.is_empty() {
            return true;
        }
        self.problem(
            line,
            0,
            "",
            format!("No column says {}.", lacks.join(", nor ")),
            Some(format!(
                "Fields were read as separated by a {}.",
                said(self.delimiter)
            )),
            true,
        );
        false
    }

    fn row(&mut self, heads: &[Option<Head>], record: &Record<'_>, decimal_comma: bool) {
        let Record { line, fields, open } = record;
        let line = *line;
        let several_lines = |(i, f): (usize, &Cow<'_, str>)| {
            let head = heads.get(i).and_then(Option::as_ref);
            let counts = head.is_some_and(|h| h.column != Column::Note);
            (counts && f.contains(['\n', '\r'])).then_some(i)
        };
        // a field of several lines has a place in a note only
        if let Some(i) = open.or_else(|| fields.iter().enumerate().find_map(several_lines)) {
            let head = heads.get(i).and_then(Option::as_ref);
            let name = head.map_or("", |h| &h.name);
            self.open_mark(line, i, name, "the row is left out");
            self.lost += 1;
            return;
        }
        if fields.len() < heads.len() {
            self.problem(
                line,
                0,
                "",
                format!(
                    "The row ends after {} of {} columns.",
                    fields.len(),
                    heads.len()
                ),
                Some("If it is the last one, the file was cut off there.".to_owned()),
                true,
            );
            self.lost += 1;
            return;
        }
        if fields.len() > heads.len() {
            let comma = self.delimiter == ',';
            self.problem(
                line,
                heads.len() + 1,
                "",
                format!("The row has {} fields, the first line names {} columns.", fields.len(), heads.len()),
                comma.then(|| "A decimal comma would part a number in two; write decimal points, or part the fields by semicolons.".to_owned()),
                true,
            );
            self.lost += 1;
            return;
        }
        let mut row = Row {
            line,
            ..Row::default()
        };
        let had = self.problems.len();
        for (i, (head, cell)) in heads.iter().zip(fields.iter()).enumerate() {
            let Some(head) = head else { continue };
            if !cell.is_empty() {
                self.cell(&mut row, head, cell, i + 1, decimal_comma);
            }
        }
        if self.problems[had..].iter().any(|p| p.lost) {
            self.lost += 1;
            return;
        }
        kind(&mut row);
        self.rows.push(row);
    }

    pub(super) fn cell(
        &mut self,
        row: &mut Row,
        head: &Head,
        cell: &str,
        field: usize,
        decimal_comma: bool,
    ) {
        let text = || Some(Box::<str>::from(cell));
        let slot = match head.column {
            Column::Band => return row.band = text(),
            Column::Piece => return row.piece = text(),
            Column::Cable => return row.cable = text(),
            Column::Instrument => return row.instrument = text(),
            Column::Date => {
                let Some(message) = date_trouble(cell) else {
                    return row.date = text();
                };
                let help = "Write it as 2026-07-04; without it the row counts as not dated.";
                self.problem(
                    row.line,
                    field,
                    &head.name,
                    message,
                    Some(help.to_owned()),
                    false,
                );
                return;
            }
            Column::Person => return row.person = text(),
            Column::After => return row.after = text(),
            Column::Note => return,
            Column::Corrected => return row.corrected = text(),
            Column::Reading => {
                row.kind = ReadingKind::ALL.into_iter().find(|k| k.word() == cell);
                if row.kind.is_none() {
                    let words: Vec<&str> = ReadingKind::ALL.iter().map(|k| k.word()).collect();
                    let message = format!("`{cell}` is no kind of reading.");
                    let help = format!("One of {}.", words.join(", "));
                    self.problem(row.line, field, &head.name, message, Some(help), true);
                }
                return;
            }
            Column::Time if cell.contains(':') || head.unit.is_empty() => {
                return self.time(row, head, cell, field);
            }
            Column::Frequency => &mut row.hz,
            Column::Time => &mut row.minutes,
            Column::Temperature => &mut row.celsius,
            Column::Forward => &mut row.forward_w,
            Column::Reflected => &mut row.reflected_w,
            Column::Input => &mut row.input_w,
            Column::Loss => &mut row.loss_db,
            Column::ReturnLoss => &mut row.return_loss_db,
            Column::Swr => &mut row.swr,
            Column::Length => &mut row.length_m,
        };
        match figure(cell, decimal_comma).and_then(|n| {
            in_base(head, n)
                .ok_or_else(|| (format!("{cell} cannot be {}.", noun(head.column)), None))
        }) {
            Ok(v) => *slot = Some((v, field)),
            Err((message, help)) => self.problem(row.line, field, &head.name, message, help, true),
        }
    }
}

impl ReadingsFile {
    /// A time of the day, minutes since the midnight before the first row.
    fn time(&mut self, row: &mut Row, head: &Head, cell: &str, field: usize) {
        let Some(m) = clock(cell) else {
            let message = if cell.contains(':') {
                format!("`{cell}` is no time of the day.")
            } else {
                format!("`{cell}` is no time of the day, and the column says no unit.")
            };
            let help = "Write 14:02, or minutes in a column `time_min`.";
            self.problem(
                row.line,
                field,
                &head.name,
                message,
                Some(help.to_owned()),
                true,
            );
            return;
        };
        // past midnight a clock starts again at zero; a session that lasts less than half a day goes on
        const DAY: f64 = 24.0 * 60.0;
        let last = self.rows.iter().rev().find_map(|r| r.minutes);
        let days = last.map_or(0.0, |l| libm::floor(l.0 / DAY));
        let mut at = m + days * DAY;
        if last.is_some_and(|l| l.0 - at > 0.5 * DAY) {
            at += DAY;
        }
        row.minutes = Some((at, field));
    }
}

/// What kind of reading a row is that does not say: one of a piece is `through`.
fn kind(row: &mut Row) {
    if row.kind.is_some() {
        return;
    }
    row.kind = match row.piece.as_deref() {
        Some(p) if p.eq_ignore_ascii_case("baseline") => {
            row.piece = None;
            Some(ReadingKind::Baseline)
        }
        Some(_) => Some(ReadingKind::Through),
        None if row.after.is_none() => Some(ReadingKind::Baseline),
        None => None,
    };
}

/// The character that parts the fields of the first line.
pub(super) fn delimiter(text: &str) -> u8 {
    let first = text
        .split(['\n', '\r'])
        .map(str::trim)
        .find(|l| !l.is_empty() && !l.starts_with('#'))
        .unwrap_or("");
    // the most frequent one; the comma where none stands
    let count = |d: &&u8| first.bytes().filter(|b| b == *d).count();
    match b"|\t;,".iter().max_by_key(count) {
        Some(d) if count(&d) > 0 => *d,
        _ => b',',
    }
}

fn said(delimiter: char) -> &'static str {
    match delimiter {
        ';' => "semicolon",
        '\t' => "tab",
        '|' => "bar",
        _ => "comma",
    }
}

/// A finite number, with a decimal comma where that is allowed.
pub(super) fn figure(cell: &str, decimal_comma: bool) -> Result<f64, Trouble> {
    let plain: std::borrow::Cow<'_, str> = if decimal_comma && cell.contains(',') {
        cell.replacen(',', ".", 1).into()
    } else {
        cell.into()
    };
    let digits = plain
        .bytes()
        .all(|b| b.is_ascii_digit() || matches!(b, b'.' | b'-' | b'+' | b'e' | b'E'));
    match plain.parse::<f64>() {
        Ok(v) if digits && v.is_finite() => return Ok(v),
        Ok(_) => {
            return Err((
                format!("`{cell}` is no number that could be read off an instrument."),
                Some("Leave the field empty where nothing was read.".to_owned()),
            ));
        }
        Err(_) => {}
    }
    let number = cell.trim_end_matches(|c: char| !c.is_ascii_digit());
    if number != cell && number.trim().parse::<f64>().is_ok() {
        return Err((
            format!("`{cell}` is not a bare number."),
            Some("The unit stands in the name of the column, as in `forward_w`.".to_owned()),
        ));
    }
    Err((format!("`{cell}` is no number."), None))
}

/// What is wrong with a date: a day, a month or a year, as the language writes them.
fn date_trouble(text: &str) -> Option<String> {
    let shape: String = text
        .chars()
        .map(|c| if c.is_ascii_digit() { '0' } else { c })
        .collect();
    match &*shape {
        "0000-00-00" | "0000-00" | "0000" => downlead_syntax::date_fault(text),
        _ => Some(format!("`{text}` is no date.")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const GOOD: &str = "band,frequency_mhz,piece,time_min,forward_w\n2m,145.3,baseline,0,44.0\n2m,145.3,A,2,22.8\n";

    #[test]
    fn delimiters_decimal_commas_and_byte_order_mark_mean_the_same() {
        let want = ReadingsFile::parse(GOOD).rows;
        assert_eq!(want.len(), 2);
        assert_eq!(want[0].kind, Some(ReadingKind::Baseline));
        assert_eq!(want[1].forward_w.map(|x| x.0), Some(22.8));
        for other in [
            GOOD.replace(',', "\t"),
            GOOD.replace(',', "|"),
            GOOD.replace(',', ";").replace('.', ","),
            format!("\u{feff}# from the bench\n{GOOD}").replace('\n', "\r\n"),
        ] {
            let got = ReadingsFile::parse(&other);
            assert_eq!(got.problems, [], "{other:?}");
            let plain = |rows: &[Row]| {
                rows.iter()
                    .map(|r| Row {
                        line: 0,
                        ..r.clone()
                    })
                    .collect::<Vec<_>>()
            };
            assert_eq!(plain(&got.rows), plain(&want), "{other:?}");
        }
    }

    #[test]
    fn units_of_columns_are_converted() {
        // 1 ft = 0.3048 m, 0 dBm = 1 mW (definitions)
        let f = ReadingsFile::parse(
            "frequency_khz,piece,time_s,forward_dbm,length_ft,temperature_f\n145300,A,120,30,10,50\n",
        );
        let r = &f.rows[0];
        assert_eq!(r.hz.map(|x| x.0), Some(145_300_000.0));
        assert_eq!(r.minutes.map(|x| x.0), Some(2.0));
        assert!((r.forward_w.map_or(0.0, |x| x.0) - 1.0).abs() < 1e-12);
        assert!((r.length_m.map_or(0.0, |x| x.0) - 3.048).abs() < 1e-12);
        assert!((r.celsius.map_or(0.0, |x| x.0) - 10.0).abs() < 1e-12);
    }

    /// Line, field and message of each problem, and how many rows still count.
    fn said_of(text: &str) -> (Vec<(u64, usize, String)>, usize) {
        let f = ReadingsFile::parse(text);
        let p = f
            .problems
            .into_iter()
            .map(|p| (p.line, p.field, p.message))
            .collect();
        (p, f.rows.len())
    }

    #[test]
    fn a_bad_row_costs_that_row_and_says_where() {
        let text = "frequency_mhz,piece,time_min,forward_w\n145.3,baseline,0,44.0\n145.3,A,2,NaN\n145.3,B,4,32,3\n145.3,C,6,31.8 W\n145.3,D,8,-2\n145.3,E,10,31.9\n145.3,F,1";
        let (p, rows) = said_of(text);
        let places: Vec<(u64, usize)> = p.iter().map(|x| (x.0, x.1)).collect();
        assert_eq!(places, [(3, 4), (4, 5), (5, 4), (6, 4), (8, 0)], "{p:?}");
        assert_eq!(rows, 2);
    }

    #[test]
    fn lines_and_columns_are_the_same_whatever_ends_a_line() {
        let lines = [
            "# from the bench",
            "band,piece,time_min,forward_w,hue",
            "2m,baseline,0,44.0,",
            "",
            "2m,A,2,x,red",
            "2m,A,4,22.8",
            "2m,A,6,22.8,blue",
            "2m,A,8,\"22.9 W\",",
        ];
        let places = [(2, 5), (5, 4), (6, 0), (8, 4)];
        let mixed: String = lines
            .iter()
            .zip(["\n", "\r\n", "\r", "\r\n"].iter().cycle())
            .flat_map(|(l, end)| [*l, *end])
            .collect();
        for text in [
            lines.join("\n"),
            lines.join("\r\n") + "\r\n",
            lines.join("\r"),
            format!("\u{feff}{}", lines.join("\r\n")),
            mixed,
        ] {
            let f = ReadingsFile::parse(&text);
            let found: Vec<(u64, usize)> = f.problems.iter().map(|p| (p.line, p.field)).collect();
            assert_eq!(found, places, "{text:?}: {:?}", f.problems);
            let rows: Vec<u64> = f.rows.iter().map(|r| r.line).collect();
            assert_eq!((&rows[..], f.lost), (&[3, 7][..], 3), "{text:?}");
        }
    }

    #[test]
    fn dates_are_of_the_calendar_and_cost_no_row() {
        let text = "after,band,date,forward_w\nM1,2m,2026-15-01,20\nM1,2m,21.11.2026,20\nM1,2m,2024-02-29,20\nM1,2m,2026-02-29,20\nM1,2m,2026-07,20\n";
        let (p, rows) = said_of(text);
        let places: Vec<(u64, usize)> = p.iter().map(|x| (x.0, x.1)).collect();
        // 2024 is a leap year, 2026 is none
        assert_eq!(places, [(2, 3), (3, 3), (5, 3)], "{p:?}");
        assert_eq!(rows, 5);
        let f = ReadingsFile::parse(text);
        let dates: Vec<Option<&str>> = f.rows.iter().map(|r| r.date.as_deref()).collect();
        assert_eq!(
            dates,
            [None, None, Some("2024-02-29"), None, Some("2026-07")]
        );
        assert_eq!(f.lost, 0);
    }

    #[test]
    fn a_quotation_mark_left_open_costs_its_row() {
        let text = "band,piece,time_min,forward_w,note\n2m,baseline,0,44,\"two\nlines\"\n2m,A,2,\"22.8,x\n2m,A,4,22.9,y\n2m,A,6,22.9,\"z\n2m,A,8,22.9,\"w\"\n2m,\"A,8,22.9,\n2m,A,9,\"2\n3\",u\n2m,A,10,23,";
        for end in ["\n", "\r\n", "\r"] {
            let f = ReadingsFile::parse(&text.replace('\n', end));
            let rows: Vec<u64> = f.rows.iter().map(|r| r.line).collect();
            assert_eq!(rows, [2, 5, 7, 11], "{f:?}");
            assert_eq!(f.lost, 4);
            let places: Vec<(u64, usize, &str)> = f
                .problems
                .iter()
                .map(|p| (p.line, p.field, &*p.column))
                .collect();
            let want = [
                (4, 4, "forward_w"),
                (6, 5, "note"),
                (8, 2, "piece"),
                (9, 4, "forward_w"),
            ];
            assert_eq!(places, want);
            for p in &f.problems {
                assert!(p.lost && p.message.contains("not closed"), "{p:?}");
            }
        }
    }

    #[test]
    fn a_quotation_mark_left_open_in_the_names_costs_no_row() {
        let f = ReadingsFile::parse(
            "band,piece,time_min,\"forward_w,note\n2m,baseline,0,44,x\n2m,A,2,22.8,\"a, b\"\n",
        );
        assert_eq!((f.rows.len(), f.lost), (2, 0), "{f:?}");
        let [p] = &f.problems[..] else {
            panic!("{f:?}")
        };
        assert_eq!((p.line, p.field, &*p.column), (1, 4, "forward_w"), "{p:?}");
        assert!(p.lost && p.message.contains("not closed"), "{p:?}");
    }

    #[test]
    fn a_file_of_names_alone_and_times_no_session_lasts_are_told() {
        let (p, _) = said_of("band,piece,time_min,forward_w\n");
        assert!(p[0].2.contains("No row of readings"), "{p:?}");
        let (p, rows) = said_of("band,piece,time_min,forward_w\n2m,A,1e300,22\n2m,A,-4,22\n");
        assert_eq!((p.len(), rows), (1, 1), "{p:?}");
        let (p, _) = said_of("band,piece,forward_w,forward_dbm\n2m,A,22,43.4\n");
        assert!(
            p[0].2.contains("says what `forward_w` says already"),
            "{p:?}"
        );
    }

    #[test]
    fn a_file_without_what_is_needed_says_what() {
        let (p, rows) = said_of("frequency,piece,forward\n145,A,22\n");
        assert_eq!(rows, 0);
        assert!(p[0].2.contains("does not say its unit"), "{p:?}");
        let (p, _) = said_of("// a text, of some kind\nand, more\n");
        assert_eq!(p.len(), 1, "{p:?}");
        let (p, _) = said_of("frequency_mhz:piece:forward_w\n145:A:22\n");
        assert!(p[0].2.contains("one column only"), "{p:?}");
        let (p, _) = said_of("");
        assert_eq!(p[0].2, "The file is empty.");
    }
}
