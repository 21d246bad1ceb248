//! `--watch`: a command run again whenever a file it read changes.

use std::collections::BTreeMap;
use std::io::{self, IsTerminal};
use std::path::PathBuf;
use std::time::{Duration, SystemTime};

use crate::args::Command;
use crate::files::files_of;
use crate::loader;
use crate::stdin;
use crate::ui::{Outcome, Ui};

/// Files are looked at this often. A few hundred of them cost about a millisecond.
const PAUSE: Duration = Duration::from_millis(250);

/// Time and size of a file; none if there is none.
type Stamp = Option<(SystemTime, u64)>;

/// The files as they are now: those that were read, and those the command line leads to.
fn stamps(paths: &[PathBuf]) -> BTreeMap<PathBuf, Stamp> {
    let mut all = loader::read_so_far();
    // what cannot be read is said by the command itself
    let mut trouble = Vec::new();
    all.extend(paths.iter().flat_map(|p| files_of(p, &mut trouble)));
    all.into_iter()
        .map(|path| {
            let facts = std::fs::metadata(&path).ok();
            let stamp = facts.and_then(|f| Some((f.modified().ok()?, f.len())));
            (path, stamp)
        })
        .collect()
}

/// Runs `once` for ever, each time after something has changed. It returns only when it cannot.
pub(super) fn run(
    command: &Command,
    ui: &mut Ui,
    once: &dyn Fn(&mut Ui) -> io::Result<Outcome>,
) -> io::Result<Outcome> {
    let paths = match command {
        Command::Check(args) => &args.paths,
        Command::Report(args) => &args.inputs.paths,
        Command::Bench(args) => &args.inputs.paths,
        Command::Card(args) => &args.inputs.paths,
        _ => {
            ui.complain("--watch goes with check, report, bench and card");
            return Ok(Outcome::Trouble);
        }
    };
    if paths.iter().any(|p| p.as_os_str() == stdin::DASH) {
        ui.complain("--watch: standard input is read once; name a file");
        return Ok(Outcome::Trouble);
    }
    ui.repeats = true;
    loop {
        loader::note_what_is_read();
        // before the run: what changes during it is noticed
        let begun = stamps(paths);
        once(ui)?;
        io::Write::flush(ui)?;
        if ui.gone() {
            return Ok(Outcome::Clean);
        }
        let read = stamps(paths);
        let before: BTreeMap<PathBuf, Stamp> = read.into_iter().chain(begun).collect();
        if ui.watched {
            ui.note(&format!("watching {} files; Ctrl-C ends", before.len()));
        }
        while stamps(paths) == before {
            std::thread::sleep(PAUSE);
        }
        if io::stdout().is_terminal() {
            // an empty screen, as for the first run
            ui.print("\u{1b}[2J\u{1b}[H")?;
        }
    }
}
