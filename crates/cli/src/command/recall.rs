//! `downlead recall W1 +6 % since 2026-01`: what rests on an instrument or the sheet of a cable.

use std::io;
use std::path::PathBuf;

use clap::ValueEnum;
use downlead_eval::{NoRecall, Places};
use downlead_report::build::recall::{compared, states};
use downlead_report::page::recall::page;
use downlead_report::shape::recall::{Effect, RecallReport, RecallRow, SCHEMA};
use downlead_report::sheet;
use downlead_report::write::json::json;
use downlead_report::write::markdown::{UNLINKED, markdown};
use downlead_report::write::text::text;
use downlead_station::{NameKind, nearest};

use crate::args::Within;
use crate::files::{Group, gather};
use crate::model::Snapshot;
use crate::parallel::each;
use crate::ui::{Outcome, Ui};

/// Files that are read together: files of one folder share what they use.
const TOGETHER: usize = 32;

#[derive(Debug, clap::Args)]
pub(crate) struct RecallArgs {
    /// What was found out, such as `W1 +6 % since 2026-01`, then files or folders; without, the folder at hand.
    #[arg(required = true, num_args = 2.., allow_negative_numbers = true, value_name = "NAME SHARE % [since DATE] [PATH]")]
    pub(crate) words: Vec<String>,
    /// How to print it.
    #[arg(long, value_enum, default_value_t = RecallFormat::Text)]
    pub(crate) format: RecallFormat,
    #[command(flatten)]
    pub(crate) within: Within,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum RecallFormat {
    Text,
    Markdown,
    Json,
    Csv,
}

/// What is asked.
#[derive(Debug, PartialEq)]
struct Asked {
    name: String,
    percent: f64,
    since: Option<String>,
    paths: Vec<PathBuf>,
}

impl Asked {
    fn of(words: &[String]) -> Result<Asked, String> {
        const LIKE: &str = "write it as `downlead recall W1 +6 % since 2026-01`";
        // a path may hold blanks
        let apart = |w: &str| w.contains('%') || w.starts_with("since ");
        let parts: Vec<&str> = words
            .iter()
            .flat_map(|w| match apart(w) {
                true => w.split_whitespace().collect(),
                false => vec![w.as_str()],
            })
            .collect();
        let mut parts = parts.into_iter().peekable();
        let name = parts.next().unwrap_or_default().to_owned();
        let share = parts
            .next()
            .ok_or_else(|| format!("a share follows the name; {LIKE}"))?;
        let figure = share.trim_end_matches('%');
        if figure == share && parts.next_if_eq(&"%").is_none() {
            return Err(format!("`{share}` is no share in percent; {LIKE}"));
        }
        let percent: f64 = figure
            .replace('−', "-")
            .parse()
            .map_err(|_| format!("`{share}` is no share in percent; {LIKE}"))?;
        if !(-50.0..=100.0).contains(&percent) || percent == 0.0 {
            return Err(format!("{share}: from -50 % to +100 %, and not 0; {LIKE}"));
        }
        let mut since = None;
        if parts.next_if_eq(&"since").is_some() {
            let date = parts.next().unwrap_or_default();
            if downlead_eval::dates::days_of(date).is_none() {
                return Err(format!("since `{date}`: no date; {LIKE}"));
            }
            since = Some(date.to_owned());
        }
        let mut paths: Vec<PathBuf> = parts.map(PathBuf::from).collect();
        if paths.is_empty() {
            paths.push(PathBuf::from("."));
        }
        Ok(Asked {
            name,
            percent,
            since,
            paths,
        })
    }

    /// The line that says so.
    fn line(&self) -> String {
        let since = self
            .since
            .as_ref()
            .map_or(String::new(), |d| format!(" since {d}"));
        format!("recalled {:+} %{since}", self.percent)
    }
}

/// What one set of files has to say.
#[derive(Default)]
struct Found {
    instrument: bool,
    cable: bool,
    names: Vec<String>,
    definitions: Vec<String>,
    rows: Vec<RecallRow>,
    trouble: Option<String>,
}

pub(crate) fn run(args: &RecallArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let asked = match Asked::of(&args.words) {
        Ok(asked) => asked,
        Err(why) => {
            ui.complain(&why);
            return Ok(Outcome::Trouble);
        }
    };
    let gathered = gather(&asked.paths, args.within.root.as_deref());
    let mut outcome = Outcome::Clean;
    for trouble in &gathered.trouble {
        ui.complain(trouble);
        outcome = Outcome::Trouble;
    }
    let sets: Vec<(&Group, &[String])> = gathered
        .groups
        .iter()
        .flat_map(|g| g.files.chunks(TOGETHER).map(move |c| (g, c)))
        .collect();
    let found = each(&sets, |(group, files)| of_files(group, files, &asked));
    if let Some(why) = found.iter().find_map(|f| f.trouble.as_ref()) {
        ui.complain(why);
        return Ok(Outcome::Trouble);
    }
    let kind = match (
        found.iter().any(|f| f.instrument),
        found.iter().any(|f| f.cable),
    ) {
        (true, _) => "instrument",
        (false, true) => "cable",
        (false, false) => {
            let names = found.iter().flat_map(|f| &f.names).map(String::as_str);
            let hint = nearest(&asked.name, names);
            let hint = hint.map_or(String::new(), |n| format!("; did you mean `{n}`?"));
            ui.complain(&format!(
                "no instrument or cable `{}` in these files{hint}",
                asked.name
            ));
            return Ok(Outcome::Trouble);
        }
    };
    if kind == "cable" && asked.since.is_some() {
        ui.complain("a sheet holds whenever the cable was bought: leave `since` out");
        return Ok(Outcome::Trouble);
    }
    let mut report = RecallReport {
        schema: SCHEMA,
        name: asked.name.clone(),
        kind,
        share_percent: asked.percent,
        since: asked.since.clone(),
        definitions: found.iter().flat_map(|f| f.definitions.clone()).collect(),
        rows: found.into_iter().flat_map(|f| f.rows).collect(),
    };
    report.definitions.sort();
    report.definitions.dedup();
    let out = match args.format {
        RecallFormat::Text => text(&page(&report), ui.look()),
        RecallFormat::Markdown => markdown(&page(&report), UNLINKED),
        RecallFormat::Json => json(&report)?,
        RecallFormat::Csv => sheet::recall(&report).map_err(io::Error::other)?,
    };
    ui.print(&out)?;
    if report.rows.iter().any(|r| r.effect == Effect::Flips) {
        outcome = outcome.max(Outcome::Findings);
    }
    Ok(outcome)
}

fn of_files(group: &Group, files: &[String], asked: &Asked) -> Found {
    let loader = group.loader();
    let mut s = Snapshot::load_for_later(files, &loader);
    let mut out = Found::default();
    for scope in s.scopes() {
        let env = scope.env();
        out.instrument |= env.instrument(&asked.name).is_some();
        out.cable |= env.cable(&asked.name).is_some();
        for kind in [NameKind::Instrument, NameKind::Cable] {
            out.names
                .extend(env.names_of(kind).into_iter().map(str::to_owned));
        }
    }
    out.names.sort_unstable();
    out.names.dedup();
    let kind = match (out.instrument, out.cable) {
        (true, _) => NameKind::Instrument,
        (false, true) => NameKind::Cable,
        (false, false) => return out,
    };
    let places = Places::new(&s);
    for scope in s.scopes() {
        let env = scope.env();
        let loc = match kind {
            NameKind::Instrument => env.instrument(&asked.name).map(|i| i.name.loc),
            _ => env
                .cable(&asked.name)
                .filter(|c| !c.built_in)
                .map(|c| c.name.loc),
        };
        if let Some(loc) = loc {
            let (file, _, line) = places.at(loc);
            out.definitions
                .push(format!("{}:{line}", group.shown(&file)));
        }
    }
    let items = s.resting_on(kind, &asked.name);
    if items.is_empty() {
        return out;
    }
    s.evaluate_items(&items);
    let before = states(&s, &items);
    if let Err(why) = s.recall(kind, &asked.name, &asked.line(), &loader) {
        out.trouble = Some(match why {
            NoRecall::Already(file) => format!(
                "{}: `{}` says already that it was recalled; change that line",
                group.shown(&file),
                asked.name
            ),
            NoRecall::Broken(file) => format!(
                "{}: the definition of `{}` is not closed",
                group.shown(&file),
                asked.name
            ),
        });
        return out;
    }
    s.evaluate_items(&items);
    let after = states(&s, &items);
    let read_with = (kind == NameKind::Instrument).then_some(asked.name.as_str());
    out.rows = compared(&before, &after, read_with, asked.since.as_deref());
    for r in &mut out.rows {
        r.file = group.shown(&r.file);
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    fn asked(words: &[&str]) -> Result<Asked, String> {
        let words: Vec<String> = words.iter().map(|w| (*w).to_owned()).collect();
        Asked::of(&words)
    }

    #[test]
    fn a_recall_is_read_as_people_write_it() {
        for words in [
            &["W1", "+6", "%", "since", "2026-01", "sites"][..],
            &["W1", "+6 %", "since", "2026-01", "sites"],
            &["W1", "6%", "since 2026-01", "sites"],
            &["W1 +6 % since", "2026-01", "sites"],
        ] {
            let a = asked(words).unwrap_or_else(|e| panic!("{words:?}: {e}"));
            assert_eq!((a.name.as_str(), a.percent), ("W1", 6.0), "{words:?}");
            assert_eq!(a.since.as_deref(), Some("2026-01"), "{words:?}");
            assert_eq!(a.paths, [PathBuf::from("sites")], "{words:?}");
            assert_eq!(a.line(), "recalled +6 % since 2026-01");
        }
        let a = asked(&["foam", "-2.5", "%"]).unwrap();
        assert_eq!((a.percent, a.since.is_none()), (-2.5, true));
        assert_eq!(a.paths, [PathBuf::from(".")]);
        for bad in [
            &["W1", "six"][..],
            &["W1", "+6"],
            &["W1", "+6", "sites"],
            &["W1", "0", "%"],
            &["W1", "300 %"],
            &["W1", "+6", "%", "since", "spring"],
            &["W1", "+6", "%", "since"],
        ] {
            assert!(asked(bad).is_err(), "{bad:?}");
        }
    }
}
