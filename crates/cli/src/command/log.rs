//! `downlead log`: each commit with what it did on the air.

use std::collections::BTreeSet;
use std::fmt::Write as _;
use std::io;

use downlead_git::{Commit, Repository, Tree};
use downlead_report::build::diff::diff;
use downlead_report::shape::diff::Diff;
use serde_json::json;

use crate::change::args::{LogArgs, LogFormat};
use crate::change::pairs::compared;
use crate::change::revisions::{
    State, before, below, folder_of, is_ours, other_files, pairs, read_all, wanted,
};
use crate::ui::{Outcome, Ui};

/// Commits that are looked through for those that changed the files.
const LOOKED_THROUGH: usize = 10_000;

pub(crate) fn run(args: &LogArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let done = log(args, ui)?;
    if let Err(why) = done {
        ui.complain(&why);
        return Ok(Outcome::Trouble);
    }
    Ok(Outcome::Clean)
}

fn log(args: &LogArgs, ui: &mut Ui) -> io::Result<Result<(), String>> {
    let paths = [args.path.clone()];
    let opened = Repository::find(&folder_of(&paths)).and_then(|r| {
        let within = below(r.top(), &paths)?;
        let tree = r.tree(&args.from)?;
        let commits = r.commits(&args.from, LOOKED_THROUGH)?;
        Ok((r, within, tree, commits))
    });
    let (repository, within, mut after, commits) = match opened {
        Ok(all) => all,
        Err(why) => return Ok(Err(why)),
    };
    let ours = |path: &str| is_ours(path);
    // the texts of all states at once
    let ids = commits
        .iter()
        .flat_map(|c| &c.changes)
        .filter(|c| ours(&c.0));
    let ids = ids.flat_map(|c| [&c.1, &c.2]).flatten();
    if let Err(why) = repository
        .read_all(ids)
        .and_then(|()| read_all(&repository, &after))
    {
        return Ok(Err(why));
    }
    let mut left = args.most;
    for commit in &commits {
        let old = before(&after, commit);
        if left == 0 {
            break;
        }
        if commit.changes.iter().any(|c| ours(&c.0)) {
            match one(&repository, &old, &after, &within) {
                Err(why) => ui.complain(&format!("{}: {why}", short(commit))),
                Ok(None) => {}
                Ok(Some(d)) => {
                    left -= 1;
                    if args.all || d.speaks {
                        ui.print(&shown(commit, &d, args.format))?;
                    }
                }
            }
        }
        after = old;
    }
    Ok(Ok(()))
}

/// What a commit did; none where it changed nothing below the paths.
fn one(
    repository: &Repository,
    old: &Tree,
    new: &Tree,
    within: &[String],
) -> Result<Option<Diff>, String> {
    let (old, new) = (State::Revision(old.clone()), State::Revision(new.clone()));
    let (a, b) = (old.source(repository), new.source(repository));
    let states = [(&old, &a), (&new, &b)];
    let others: BTreeSet<String> = other_files(states);
    let list = pairs(states, &others, within);
    if list.is_empty() && !others.iter().any(|p| wanted(p, within)) {
        return Ok(None);
    }
    let changes = compared(&list).map_err(|why| why.join("; "))?;
    Ok(Some(diff("", "", &changes)))
}

fn short(c: &Commit) -> &str {
    c.hash.get(..10).unwrap_or(&c.hash)
}

fn shown(c: &Commit, d: &Diff, format: LogFormat) -> String {
    match format {
        LogFormat::Text => {
            let mut out = format!("{} {} {}: {}\n", short(c), c.date, c.author, c.subject);
            for r in &d.remarks {
                let _ = writeln!(out, "    {}", r.message);
            }
            if d.remarks.is_empty() {
                out.push_str(
                    "    nothing on the air by more than the uncertainty of the difference\n",
                );
            }
            crate::ui::printable(&out).into_owned()
        }
        LogFormat::Jsonl => {
            let line = json!({
                "schema": "downlead-log/1",
                "commit": c.hash,
                "date": c.date,
                "author": c.author,
                "subject": c.subject,
                "worse": d.worse,
                "stations": d.stations,
                "remarks": d.remarks,
            });
            format!("{line}\n")
        }
    }
}
