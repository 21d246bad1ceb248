//! `downlead diff`: what changed on the air between two states of files.

use std::io;

use downlead_git::Repository;
use downlead_report::build::diff::{FileChange, diff};
use downlead_report::page::diff::{Said, page};
use downlead_report::shape::diff::Diff;
use downlead_report::write::json::{json, schema};
use downlead_report::write::markdown::{UNLINKED, markdown};
use downlead_report::write::text::text;

use crate::change::args::{DiffArgs, DiffFormat};
use crate::change::formats;
use crate::change::pairs::{Named, Pair, Side, compared, from_driver, paired};
use crate::change::revisions::{
    Range, State, below, disk, folder_of, other_files, pairs, read_all,
};
use crate::ui::{Outcome, Ui};

pub(crate) fn run(args: &DiffArgs, ui: &mut Ui) -> io::Result<Outcome> {
    if args.shape.schema {
        ui.print(&schema::<Diff>()?)?;
        return Ok(Outcome::Clean);
    }
    let found = if args.driver {
        of_driver(args)
    } else if let Some(range) = &args.git {
        of_revisions(args, range)
    } else {
        of_paths(args)
    };
    let d = match found {
        Ok(d) => d,
        Err(why) => {
            why.iter().for_each(|w| ui.complain(w));
            // `git` takes any other end for a broken driver
            return Ok(if args.driver {
                Outcome::Clean
            } else {
                Outcome::Trouble
            });
        }
    };
    print(&d, args, ui)?;
    let footprint = |s: &downlead_report::shape::diff::StationDiff| s.class.is_footprint();
    let fails = d.worse || args.strict && d.stations.iter().any(footprint);
    Ok(if fails && !args.driver {
        Outcome::Findings
    } else {
        Outcome::Clean
    })
}

fn print(d: &Diff, args: &DiffArgs, ui: &mut Ui) -> io::Result<()> {
    let said = |quiet| if args.all { Said::All } else { quiet };
    let out = match args.format {
        DiffFormat::Text => text(&page(d, said(Said::Speaking)), ui.look()),
        DiffFormat::Markdown => markdown(&page(d, said(Said::OnlySpeaking)), UNLINKED),
        DiffFormat::Json => json(d)?,
        DiffFormat::Github => formats::github(d),
        DiffFormat::Sarif => serde_json::to_string_pretty(&formats::sarif(d))? + "\n",
    };
    ui.print(&out)
}

type Found = Result<Diff, Vec<String>>;

fn one(why: String) -> Vec<String> {
    vec![why]
}

fn of_paths(args: &DiffArgs) -> Found {
    let [old, new] = &args.paths[..] else {
        return Err(one(
            "name two files or two folders, OLD and NEW; or revisions with --git REV..REV"
                .to_owned(),
        ));
    };
    let root = args.within.root.as_deref();
    let (a, b) = (Named::of(old, root)?, Named::of(new, root)?);
    let list = paired(&a, &b).map_err(one)?;
    let changes = compared(&list)?;
    Ok(diff(
        &old.display().to_string(),
        &new.display().to_string(),
        &changes,
    ))
}

fn of_driver(args: &DiffArgs) -> Found {
    let (shown, [old, new]) = from_driver(&args.paths).map_err(one)?;
    let side = |x| -> Option<Side<'_>> {
        let x: &crate::change::pairs::Overlay = x;
        Some(Side {
            loader: x,
            path: x.path.clone(),
        })
    };
    let pair = Pair {
        shown: shown.clone(),
        old: old.as_ref().and_then(side),
        new: new.as_ref().and_then(side),
    };
    let changes: Vec<FileChange> = compared(&[pair])?;
    Ok(diff(&format!("a/{shown}"), &format!("b/{shown}"), &changes))
}

fn of_revisions(args: &DiffArgs, range: &str) -> Found {
    let repository = Repository::find(&folder_of(&args.paths)).map_err(one)?;
    let range = Range::of(range, &repository).map_err(one)?;
    let within = below(repository.top(), &args.paths).map_err(one)?;
    let revision = |name: &str| -> Result<State, Vec<String>> {
        let tree = repository.tree(name).map_err(one)?;
        read_all(&repository, &tree).map_err(one)?;
        Ok(State::Revision(tree))
    };
    let old = revision(&range.old)?;
    let new = match &range.new {
        Some(name) => revision(name)?,
        None => {
            if let Some(first) = repository.unmerged().map_err(one)?.first() {
                return Err(one(format!(
                    "The repository is in the middle of a merge ({first} is not decided); name two revisions, such as `--git HEAD..MERGE_HEAD`."
                )));
            }
            disk(repository.top())
        }
    };
    let (a, b) = (old.source(&repository), new.source(&repository));
    let states = [(&old, &a), (&new, &b)];
    for path in &within {
        let there = |s: &State| s.holds(path);
        if !there(&old) && !there(&new) {
            return Err(one(format!("{path}: it is in neither of the two states")));
        }
    }
    let list = pairs(states, &other_files(states), &within);
    let changes = compared(&list)?;
    let name = |s: &State, said: &str| match s {
        State::Revision(t) => format!("{said} ({})", t.short()),
        State::Disk(..) => "the files as they are".to_owned(),
    };
    let new_name = range.new.as_deref().unwrap_or_default();
    Ok(diff(
        &name(&old, &range.old),
        &name(&new, new_name),
        &changes,
    ))
}
