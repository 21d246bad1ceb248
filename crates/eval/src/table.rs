//! What is wrong with a table of readings that a session or a log takes.

use downlead_base::{Diagnostic, codes};
use downlead_station::attach::{Problem, ReadingsFile, Row};
use downlead_station::model::Name;

/// At most so many findings of one file are told one by one.
const TOLD: usize = 12;

/// Says what could not be read of a table, which rows name a part that is none of `tags`, and
/// which could be of any of the chain's bands.
pub(crate) fn table_problems(
    file: &Name,
    table: &ReadingsFile,
    tags: &[&str],
    of_any_band: &dyn Fn(&Row) -> bool,
    out: &mut Vec<Diagnostic>,
) {
    let mut said = Said::new(file, out);
    for p in &table.problems {
        said.problem(p);
    }
    for row in &table.rows {
        if let Some(a) = row.after.as_deref().filter(|a| !tags.contains(a)) {
            let help = downlead_station::nearest(a, tags.iter().copied())
                .map(|n| format!("Did you mean `{n}`?"));
            said.row(
                row.line,
                "after",
                format!("The station has no part `{a}`."),
                help,
            );
        }
        if of_any_band(row) {
            said.row(
                row.line,
                "band",
                "The row names no band, and the chain has several; it is left out.".to_owned(),
                None,
            );
        }
    }
    said.finish();
}

/// Findings about one imported file, the first ones told one by one.
pub(crate) struct Said<'o> {
    file: &'o Name,
    out: &'o mut Vec<Diagnostic>,
    told: usize,
    /// Findings not told that cost a row, and those that cost none.
    more: usize,
    more_mild: usize,
}

impl<'o> Said<'o> {
    pub(crate) fn new(file: &'o Name, out: &'o mut Vec<Diagnostic>) -> Self {
        Said {
            file,
            out,
            told: 0,
            more: 0,
            more_mild: 0,
        }
    }

    pub(crate) fn problem(&mut self, p: &Problem) {
        let place = match (p.field, &*p.column) {
            (0, _) => format!("line {}", p.line),
            (n, "") => format!("line {}, column {n}", p.line),
            (n, c) => format!("line {}, column {n} (`{c}`)", p.line),
        };
        self.push(
            &codes::READINGS_NOT_READ,
            &place,
            &p.message,
            p.help.clone(),
            !p.lost,
        );
    }

    pub(crate) fn row(&mut self, line: u64, field: &str, message: String, help: Option<String>) {
        self.told_of(line, field, message, help, false);
    }

    /// What does not cost the row.
    pub(crate) fn mild(&mut self, line: u64, field: &str, message: String, help: Option<String>) {
        self.told_of(line, field, message, help, true);
    }

    fn told_of(
        &mut self,
        line: u64,
        field: &str,
        message: String,
        help: Option<String>,
        mild: bool,
    ) {
        let place = match field {
            "" => format!("line {line}"),
            f => format!("line {line} (`{f}`)"),
        };
        let code = match field {
            "length" | "cable" | "frequency" | "temperature" => &codes::READINGS_DISAGREE,
            _ => &codes::READINGS_NOT_READ,
        };
        self.push(code, &place, &message, help, mild);
    }

    fn push(
        &mut self,
        code: &'static downlead_base::Code,
        place: &str,
        message: &str,
        help: Option<String>,
        mild: bool,
    ) {
        if self.told >= TOLD {
            if mild {
                self.more_mild += 1;
            } else {
                self.more += 1;
            }
            return;
        }
        self.told += 1;
        let file = self.file;
        let mut d = Diagnostic::new(
            code,
            file.loc,
            format!("In `{}`, {place}: {message}", file.text),
        )
        .at(place.to_owned());
        if mild {
            d.severity = downlead_base::Severity::Warning;
        }
        if let Some(h) = help {
            d = d.help(h);
        }
        self.out.push(d);
    }

    pub(crate) fn finish(self) {
        let Some(d) = self.out.last_mut() else { return };
        if self.more > 0 {
            d.help.push(format!(
                "{} more of its rows could not be taken.",
                self.more
            ));
        }
        match self.more_mild {
            0 => {}
            1 => d
                .help
                .push("One more finding of this kind costs no row.".to_owned()),
            n => d
                .help
                .push(format!("{n} more findings of this kind cost no row.")),
        }
    }
}
