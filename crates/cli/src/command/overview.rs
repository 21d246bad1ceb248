//! `downlead overview`: any number of files, one row a station and band.

use std::cmp::Ordering;
use std::io;

use downlead_eval::dates::days_of;
use downlead_report::build::overview::rows;
use downlead_report::page::overview::page;
use downlead_report::shape::overview::{Overview, OverviewRow, SCHEMA};
use downlead_report::sheet;
use downlead_report::write::html::html;
use downlead_report::write::markdown::{UNLINKED, markdown};
use downlead_report::write::text::text;
use serde_json::json;

use crate::change::args::{OverviewArgs, OverviewFormat, Sort};
use crate::files::{Gathered, gather};
use crate::model::Snapshot;
use crate::parallel::each;
use crate::ui::{Outcome, Ui};

/// Files that are read together: files of one folder share what they use.
const TOGETHER: usize = 64;

pub(crate) fn run(args: &OverviewArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let asked = match Asked::of(args) {
        Ok(asked) => asked,
        Err(why) => {
            ui.complain(&why);
            return Ok(Outcome::Trouble);
        }
    };
    let gathered = gather(&args.paths, args.within.root.as_deref());
    let mut outcome = Outcome::Clean;
    for trouble in &gathered.trouble {
        ui.complain(trouble);
        outcome = Outcome::Trouble;
    }
    let mut all = collect(&gathered);
    let as_of = args.as_of.clone().or_else(|| newest(&all));
    let today = as_of.as_deref().and_then(days_of);
    for r in &mut all {
        let read = r.newest_reading.as_deref().and_then(days_of);
        #[allow(clippy::cast_possible_truncation, reason = "days")]
        let age = today.zip(read).map(|(a, b)| (a - b).round() as i64);
        r.age_days = age;
    }
    if all.iter().any(|r| r.errors > 0) {
        outcome = outcome.max(Outcome::Findings);
    }
    let before = all.len();
    all.retain(|r| asked.keeps(r));
    all.sort_by(|a, b| ordered(args.sort, a, b));
    let o = Overview {
        as_of,
        given: args.as_of.is_some(),
        left_out: before - all.len(),
        rows: all,
    };
    if before > 0 || outcome == Outcome::Clean {
        print(&o, args.format, ui)?;
    }
    Ok(outcome)
}

fn print(o: &Overview, format: OverviewFormat, ui: &mut Ui) -> io::Result<()> {
    let out = match format {
        OverviewFormat::Text => text(&page(o), ui.look()),
        OverviewFormat::Markdown => markdown(&page(o), UNLINKED),
        OverviewFormat::Html => html(&page(o)),
        OverviewFormat::Csv => sheet::overview(o).map_err(io::Error::other)?,
        OverviewFormat::Jsonl => {
            let mut out = String::new();
            for r in &o.rows {
                let mut line = json!({ "schema": SCHEMA, "as_of": o.as_of });
                if let (Some(line), Ok(serde_json::Value::Object(row))) =
                    (line.as_object_mut(), serde_json::to_value(r))
                {
                    line.extend(row);
                }
                out.push_str(&line.to_string());
                out.push('\n');
            }
            out
        }
    };
    ui.print(&out)
}

/// The rows of all files, on all processors; each set of files is given back before the next.
fn collect(gathered: &Gathered) -> Vec<OverviewRow> {
    let sets: Vec<(usize, &[String])> = gathered
        .groups
        .iter()
        .enumerate()
        .flat_map(|(g, group)| group.files.chunks(TOGETHER).map(move |c| (g, c)))
        .collect();
    each(&sets, |(g, files)| {
        let group = &gathered.groups[*g];
        let snapshot = Snapshot::load(files, &group.loader());
        let mut found = rows(&snapshot);
        found.iter_mut().for_each(|r| r.file = group.shown(&r.file));
        found
    })
    .into_iter()
    .flatten()
    .collect()
}

fn newest(rows: &[OverviewRow]) -> Option<String> {
    let dates = rows.iter().filter_map(|r| r.newest_reading.as_deref());
    let known = dates.filter_map(|d| Some((days_of(d)?, d)));
    known
        .max_by(|a, b| a.0.total_cmp(&b.0))
        .map(|x| x.1.to_owned())
}

/// What is shown.
struct Asked<'a> {
    args: &'a OverviewArgs,
    margin_db: Option<f64>,
    days: Option<f64>,
}

impl<'a> Asked<'a> {
    fn of(args: &'a OverviewArgs) -> Result<Self, String> {
        if let Some(d) = args.as_of.as_deref()
            && days_of(d).is_none()
        {
            return Err(format!(
                "--as-of {d}: it is no date; write it as 2026-07-04 or 2026-07"
            ));
        }
        let margin_db = match args.margin_below.as_deref() {
            None => None,
            Some(text) => {
                let bare = text.trim().trim_end_matches("dB").trim();
                let Ok(db) = bare.parse::<f64>() else {
                    return Err(format!(
                        "--margin-below {text}: it is no figure in dB; write it as \"1 dB\""
                    ));
                };
                Some(db)
            }
        };
        let days = match args.older_than.as_deref() {
            None => None,
            Some(text) => Some(days_in(text).ok_or_else(|| {
                format!(
                    "--older-than {text}: it is no span of time; write it as `24mo`, `2y` or `90d`"
                )
            })?),
        };
        Ok(Asked {
            args,
            margin_db,
            days,
        })
    }

    fn keeps(&self, r: &OverviewRow) -> bool {
        let a = self.args;
        #[allow(clippy::cast_precision_loss, reason = "days")]
        let older = |days: f64| r.age_days.is_some_and(|age| age as f64 > days);
        let any = |asked: &[String], has: &[String]| {
            asked.is_empty() || asked.iter().any(|x| has.contains(x))
        };
        let on_site =
            |station: &str| *station == *r.station || r.beside.iter().any(|b| b == station);
        any(&a.under, &r.under)
            && any(&a.class, &r.classes)
            && (a.beside.is_empty() || a.beside.iter().any(|s| on_site(s)))
            && (a.kind.is_empty() || a.kind.iter().any(|k| k == r.kind.word()))
            && (a.verdict.is_empty() || a.verdict.iter().any(|v| v == r.verdict.word()))
            && (a.band.is_empty() || a.band.contains(&r.band))
            && self
                .margin_db
                .is_none_or(|db| r.margin_db.is_some_and(|m| m < db))
            && self.days.is_none_or(older)
            && a.has_code
                .as_ref()
                .is_none_or(|c| r.codes.contains(&c.as_str()))
    }
}

/// `24mo`, `2y`, `90d` in days.
fn days_in(text: &str) -> Option<f64> {
    let text = text.trim();
    let end = text.find(|c: char| !(c.is_ascii_digit() || c == '.'))?;
    let (number, unit) = text.split_at(end);
    let n: f64 = number.parse().ok()?;
    match unit.trim() {
        "d" => Some(n),
        "mo" => Some(n * 365.25 / 12.0),
        "y" | "a" => Some(n * 365.25),
        _ => None,
    }
}

/// What is to be looked at first comes first; of equals the order of the files.
fn ordered(sort: Sort, a: &OverviewRow, b: &OverviewRow) -> Ordering {
    fn rising(x: Option<f64>, y: Option<f64>) -> Ordering {
        // what is not known comes last
        match (x, y) {
            (Some(x), Some(y)) => x.total_cmp(&y),
            (x, y) => y.is_some().cmp(&x.is_some()),
        }
    }
    let margin = || rising(a.margin_db, b.margin_db);
    match sort {
        Sort::Verdict => a.verdict.cmp(&b.verdict).then_with(margin),
        Sort::Margin => margin(),
        Sort::Age => {
            #[allow(clippy::cast_precision_loss, reason = "days")]
            let age = |r: &OverviewRow| r.age_days.map(|d| -(d as f64));
            rising(age(a), age(b))
        }
        Sort::Station => a.station.cmp(&b.station).then_with(|| a.band.cmp(&b.band)),
        Sort::Erp => rising(a.erp_w.map(|w| -w), b.erp_w.map(|w| -w)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ages_are_read_in_days_and_months() {
        assert_eq!(days_in("24mo"), Some(730.5));
        assert_eq!(
            (days_in("90d"), days_in("x"), days_in("24")),
            (Some(90.0), None, None)
        );
    }
}
