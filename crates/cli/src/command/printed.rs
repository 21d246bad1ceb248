//! What the commands share that print one value in four formats: `report`, `bench` and `card`.

use std::collections::HashMap;
use std::io;
use std::ops::ControlFlow;
use std::path::Path;

use downlead_base::Severity;
use downlead_report::document::Document;
use downlead_report::write::html::html;
use downlead_report::write::json::{json, schema};
use downlead_report::write::markdown::{UNLINKED, markdown};
use downlead_report::write::text::text;
use schemars::JsonSchema;
use serde::Serialize;

use super::{Loaded, load};
use crate::args::{Inputs, ReportFormat, Shape};
use crate::bench::plots::Plot;
use crate::draw::{DRAWN, draw};
use crate::files::{Gathered, gather};
use crate::findings::Findings;
use crate::loader::plain_io;
use crate::ui::{Outcome, Ui};
use crate::write;

/// Prints the schema of `T` where it is asked for; else loads the files. `table` says that one is
/// named with --table.
pub(super) fn begin<T: JsonSchema>(
    shape: &Shape,
    inputs: &Inputs,
    format: ReportFormat,
    table: bool,
    ui: &mut Ui,
) -> io::Result<ControlFlow<Outcome, (Gathered, Loaded)>> {
    if shape.schema {
        ui.print(&schema::<T>()?)?;
        return Ok(ControlFlow::Break(Outcome::Clean));
    }
    if table && format != ReportFormat::Csv {
        ui.complain("--table goes with --format csv; the other formats hold all tables");
        return Ok(ControlFlow::Break(Outcome::Trouble));
    }
    let gathered = gather(&inputs.paths, inputs.within.root.as_deref());
    let loaded = load(&gathered, ui);
    Ok(if loaded.files == 0 {
        ControlFlow::Break(loaded.outcome)
    } else {
        ControlFlow::Continue((gathered, loaded))
    })
}

/// How a `T` is shown; JSON needs no more than its shape.
pub(super) struct Forms<'a, T> {
    pub(super) page: &'a dyn Fn(&T) -> Document,
    pub(super) csv: &'a dyn Fn(&T) -> Result<String, csv::Error>,
}

/// Whether a format carries the findings itself.
pub(super) fn holds_findings(format: ReportFormat) -> bool {
    match format {
        ReportFormat::Json | ReportFormat::Markdown | ReportFormat::Html => true,
        ReportFormat::Text | ReportFormat::Csv => false,
    }
}

/// Prints a value in the format asked for.
pub(super) fn print<T: Serialize>(
    value: &T,
    format: ReportFormat,
    forms: &Forms<'_, T>,
    ui: &mut Ui,
) -> io::Result<()> {
    let page = || match ui.quiet {
        true => (forms.page)(value).conclusion(),
        false => (forms.page)(value),
    };
    let out = match format {
        ReportFormat::Text => text(&page(), ui.look()),
        ReportFormat::Json => json(value)?,
        ReportFormat::Markdown => markdown(&page(), UNLINKED),
        ReportFormat::Html => html(&page()),
        ReportFormat::Csv => (forms.csv)(value).map_err(io::Error::other)?,
    };
    ui.print(&out)
}

/// Puts the findings from `least` upwards beside what was printed.
pub(super) fn beside(findings: &Findings, least: Severity, ui: &mut Ui) {
    if ui.quiet {
        return;
    }
    let drawing = ui.drawing(ui.error_style);
    let kept = findings.list.iter().filter(|f| f.severity >= least);
    let drawn = draw(&findings.files, kept.collect(), DRAWN, drawing);
    if !drawn.is_empty() {
        ui.note(drawn.trim_end());
    }
}

/// Writes the pictures; a name taken twice gets a number.
pub(super) fn write_plots(folder: &Path, plots: &[Plot], ui: &mut Ui) -> Outcome {
    write_files(folder, ("--plot", "svg"), plots, ui)
}

/// Files of one kind, each with a name of its own.
pub(super) fn write_files(
    folder: &Path,
    (option, extension): (&str, &str),
    plots: &[Plot],
    ui: &mut Ui,
) -> Outcome {
    if plots.is_empty() {
        let what = if extension == "svg" { "draw" } else { "write" };
        ui.complain(&format!("{option}: there is no reading to {what}"));
        return Outcome::Trouble;
    }
    let mut taken: HashMap<&str, usize> = HashMap::new();
    for plot in plots {
        let times = taken.entry(&plot.name).or_insert(0);
        *times += 1;
        let again = if *times > 1 {
            format!("-{times}")
        } else {
            String::new()
        };
        let path = folder.join(format!("{}{again}.{extension}", plot.name));
        if let Err(e) = write::replace(&path, &plot.text) {
            ui.complain(&format!("{}: {}", path.display(), plain_io(&e)));
            return Outcome::Trouble;
        }
        if ui.watched {
            ui.note(&format!("wrote {}", path.display()));
        }
    }
    Outcome::Clean
}
