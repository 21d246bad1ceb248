//! What is wrong with a table of readings that a session or a log takes.

use downlead_base::{Diagnostic, codes};
use downlead_station::attach::{Problem, ReadingsFile};
use downlead_station::model::Name;
use indexmap::IndexMap;
use rustc_hash::FxHashSet;

/// Most findings of one file that are reported one by one.
const TOLD: usize = 12;

/// At most so many lines of a file are named in one finding.
const NAMED: usize = 8;

/// Lines of a file in words: `line 4`, `lines 4, 5`, and so on up to eight.
pub(crate) fn lines_words(lines: &[u64]) -> String {
    let named: Vec<String> = lines.iter().take(NAMED).map(u64::to_string).collect();
    format!(
        "line{} {}{}",
        if lines.len() == 1 { "" } else { "s" },
        named.join(", "),
        if lines.len() > NAMED { " and on" } else { "" }
    )
}

/// Says what could not be read of a table of a log, and which rows name a part that is none of
/// `tags`: each such name once.
pub(crate) fn log_problems(
    file: &Name,
    table: &ReadingsFile,
    tags: &[&str],
    out: &mut Vec<Diagnostic>,
) {
    let mut said = Said::new(file, out);
    for p in &table.problems {
        said.problem(p);
    }
    let known: FxHashSet<&str> = tags.iter().copied().collect();
    let mut unknown: IndexMap<&str, Vec<u64>> = IndexMap::new();
    for row in &table.rows {
        if let Some(a) = row.after.as_deref().filter(|a| !known.contains(a)) {
            unknown.entry(a).or_default().push(row.line);
        }
    }
    for (tag, lines) in unknown {
        let mut help: Vec<String> = Vec::new();
        if let Some(n) = downlead_station::nearest(tag, tags.iter().copied()) {
            help.push(format!("Did you mean `{n}`?"));
        }
        if let [_, again @ ..] = &lines[..]
            && !again.is_empty()
        {
            help.push(format!("It is named in {} too.", lines_words(again)));
        }
        said.row(
            lines[0],
            "after",
            format!("The station has no part `{tag}`."),
            (!help.is_empty()).then(|| help.join(" ")),
        );
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
