//! One module a command.

mod bench;
mod card;
pub(crate) mod catalogue;
mod check;
mod compare;
mod diff;
mod explain;
mod fit;
mod fix;
mod fmt;
mod log;
mod manual;
mod new;
mod overview;
mod papers;
mod printed;
pub(crate) mod recall;
mod report;
mod solve;
mod stale;
mod varied;
mod watch;

use std::io;

use clap::CommandFactory;

use crate::args::{Args, Command};
use crate::files::{Gathered, Group};
use crate::findings::Findings;
use crate::loader::in_words;
use crate::model::Snapshot;
use crate::ui::{Outcome, Ui};

/// Runs the command. An error is one of writing to standard output.
pub(crate) fn run(args: &Args, ui: &mut Ui) -> io::Result<Outcome> {
    if args.watch {
        return watch::run(&args.command, ui, &|ui| once(&args.command, ui));
    }
    once(&args.command, ui)
}

fn once(command: &Command, ui: &mut Ui) -> io::Result<Outcome> {
    match command {
        Command::Check(args) => check::run(args, ui),
        Command::Report(args) => report::run(args, ui),
        Command::Bench(args) => bench::run(args, ui),
        Command::Fit(args) => fit::run(args, ui),
        Command::Card(args) => card::run(args, ui),
        Command::Explain(args) => explain::run(args, ui),
        Command::Diff(args) => diff::run(args, ui),
        Command::Log(args) => log::run(args, ui),
        Command::Compare(args) => compare::run(args, ui),
        Command::Overview(args) => overview::run(args, ui),
        Command::Solve(args) => solve::solve(args, ui),
        Command::Recall(args) => recall::run(args, ui),
        Command::Sweep(args) => solve::sweep(args, ui),
        Command::Fmt(args) => fmt::run(args, ui),
        Command::Catalogue(args) => catalogue::run(args, ui),
        Command::New(args) => new::run(args, ui),
        Command::Manual(args) => manual::run(args, ui),
        // taken before anything else, see `main`
        Command::Lsp { .. } => Ok(Outcome::Clean),
        Command::Completions { shell } => {
            let mut script = Vec::new();
            clap_complete::generate(*shell, &mut Args::command(), "downlead", &mut script);
            ui.print(&String::from_utf8_lossy(&script))?;
            Ok(Outcome::Clean)
        }
    }
}

/// Files loaded and evaluated, root by root.
struct Loaded {
    snapshots: Vec<Snapshot>,
    findings: Findings,
    /// Files named that could be read.
    files: usize,
    /// Trouble if a file could not be read.
    outcome: Outcome,
}

/// Evaluates what was gathered; complains about what cannot be read.
fn load(gathered: &Gathered, ui: &mut Ui) -> Loaded {
    load_with(gathered, ui, false, None)
}

/// The same; with `history`, readings are compared with the recorded ones. `as_of` is the day as of
/// which acceptances are judged.
fn load_with(gathered: &Gathered, ui: &mut Ui, history: bool, as_of: Option<&str>) -> Loaded {
    let mut loaded = Loaded {
        snapshots: Vec::new(),
        findings: Findings::default(),
        files: 0,
        outcome: Outcome::Clean,
    };
    for trouble in &gathered.trouble {
        ui.complain(trouble);
        loaded.outcome = Outcome::Trouble;
    }
    for group in &gathered.groups {
        let loader = group.loader();
        let mut snapshot = Snapshot::load(&group.files, &loader);
        snapshot.set_as_of(as_of.map(str::to_owned));
        if history && !recall(&mut snapshot, group, ui) {
            loaded.outcome = Outcome::Trouble;
        }
        for file in snapshot.files() {
            match &file.error {
                // a file that is only used has a finding where it is used
                Some(error) if file.root => {
                    ui.complain(&format!("{}: {}", group.shown(&file.path), in_words(error)));
                    loaded.outcome = Outcome::Trouble;
                }
                Some(_) => {}
                None => loaded.files += usize::from(file.root),
            }
        }
        loaded.findings.add(group, &snapshot);
        loaded.snapshots.push(snapshot);
    }
    loaded
}

/// Gives a snapshot the earlier states of its files. False if one could not be read.
fn recall(snapshot: &mut Snapshot, group: &Group, ui: &mut Ui) -> bool {
    let mut told: Vec<String> = Vec::new();
    let mut all = Vec::new();
    for path in snapshot.files_to_recall() {
        let file = group.root.join(&path);
        // a missing file has a finding where it is named
        if !file.is_file() {
            continue;
        }
        match downlead_git::recorded(&file) {
            Ok(Some(r)) => all.push((path, std::sync::Arc::new(r))),
            Ok(None) => {}
            Err(why) => {
                if !told.contains(&why) {
                    ui.complain(&why);
                    told.push(why);
                }
            }
        }
    }
    let shallow = !all.is_empty() && downlead_git::is_shallow(&group.root);
    if shallow {
        ui.complain("The repository was cloned without its history, so earlier states are not known. Fetch it whole: `git fetch --unshallow`.");
    }
    snapshot.set_all_recorded(all);
    told.is_empty() && !shallow
}

/// Whether the findings fail the run.
fn judged(findings: &Findings, strict: bool) -> Outcome {
    use downlead_base::{Severity, codes};
    let fails = |f: &crate::findings::Finding| match f.severity {
        Severity::Error => true,
        Severity::Warning => strict,
        Severity::Info | Severity::Hint => strict && f.code.id == codes::READING_CANNOT_TELL.id,
    };
    if findings.list.iter().any(fails) {
        Outcome::Findings
    } else {
        Outcome::Clean
    }
}
