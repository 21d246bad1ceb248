//! `check --fix`: applies the offered changes that need no choice.

use std::cell::RefCell;
use std::collections::{BTreeMap, HashSet};
use std::fmt::Write as _;
use std::io;
use std::sync::Arc;

use downlead_base::Severity;
use downlead_report::words::figure::counted;

use crate::args::CheckArgs;
use crate::draw::{lines_of, rewritten};
use crate::files::{Gathered, Group};
use crate::findings::{Change, Findings};
use crate::loader::DiskLoader;
use crate::model::{LoadError, Loader, Snapshot};
use crate::ui::{Outcome, Ui, printable};
use crate::write::{self, Refusal};

/// One change may uncover the next; after so many rounds the rest is left.
const ROUNDS: usize = 20;
/// No more changes than this are tried one by one.
const TRIALS: usize = 200;

/// Files with the changes so far.
struct Changed {
    disk: DiskLoader,
    texts: RefCell<BTreeMap<String, Arc<str>>>,
}

impl Loader for Changed {
    fn read(&self, path: &str) -> Result<Arc<str>, LoadError> {
        match self.texts.borrow().get(path) {
            Some(text) => Ok(Arc::clone(text)),
            None => self.disk.read(path),
        }
    }

    fn root(&self) -> Option<String> {
        self.disk.root()
    }
}

/// Findings of one state of the files.
struct State {
    findings: Findings,
    errors: usize,
    all: usize,
}

impl State {
    fn of(group: &Group, loader: &Changed) -> State {
        let mut findings = Findings::default();
        findings.add(group, &Snapshot::load(&group.files, loader));
        let errors = findings.count(Severity::Error);
        State {
            errors,
            all: errors + findings.count(Severity::Warning),
            findings,
        }
    }
}

/// Applies the changes to the files that were named; with `dry_run` they are only shown. What was
/// done is printed.
pub(super) fn run(args: &CheckArgs, gathered: &Gathered, ui: &mut Ui) -> io::Result<Outcome> {
    let mut outcome = Outcome::Clean;
    let mut told = String::new();
    let mut done = 0;
    for group in &gathered.groups {
        let loader = Changed {
            disk: group.loader(),
            texts: RefCell::default(),
        };
        let mut before = BTreeMap::new();
        for file in &group.files {
            if let Ok(text) = loader.read(file) {
                before.insert(file.clone(), text);
            }
        }
        done += mend(group, &loader, &before, &mut told);
        if args.dry_run {
            continue;
        }
        for (file, text) in loader.texts.into_inner() {
            let Some(old) = before.get(&file).filter(|old| **old != text) else {
                continue;
            };
            if group.is_input(&file) {
                ui.print(&text)?;
                continue;
            }
            let why = match write::over(&group.root.join(&file), old, &text) {
                Ok(()) => continue,
                Err(Refusal::Changed) => "it was changed by something else meanwhile".to_owned(),
                Err(Refusal::Because(why)) => why,
            };
            let shown = group.shown(&file);
            ui.complain(&format!("{shown}: {why}; the file is as it was"));
            outcome = Outcome::Trouble;
        }
    }
    let words = match (done, args.dry_run) {
        (0, _) => "no change that can be made without a choice\n".to_owned(),
        (n, true) => format!("{} would be made\n", counted(n, "change")),
        (n, false) => format!("{} made\n", counted(n, "change")),
    };
    told += &words;
    if done > 0 && args.dry_run {
        outcome = outcome.max(Outcome::Findings);
    }
    if gathered.groups.iter().any(Group::has_input) {
        // standard output is the text's
        ui.note(told.trim_end());
    } else if !ui.quiet {
        ui.print(&told)?;
    }
    Ok(outcome)
}

/// Applies what can be applied in one group; how many changes.
fn mend(
    group: &Group,
    loader: &Changed,
    before: &BTreeMap<String, Arc<str>>,
    told: &mut String,
) -> usize {
    let mut done = 0;
    let mut refused: HashSet<String> = HashSet::new();
    let mut state = State::of(group, loader);
    let mut trials = 0;
    for _ in 0..ROUNDS {
        let chosen = choose(&state.findings, before, &refused);
        if chosen.is_empty() {
            break;
        }
        // all at once, and one by one where that makes something worse
        if let Some(better) = tried(group, loader, &state, &chosen) {
            done += tell(&state.findings, &chosen, told);
            state = better;
            continue;
        }
        let mut some = false;
        for change in &chosen {
            trials += 1;
            if trials > TRIALS {
                return done;
            }
            let one = [*change];
            if let Some(better) = tried(group, loader, &state, &one) {
                done += tell(&state.findings, &one, told);
                state = better;
                some = true;
                // the places of the others have moved
                break;
            }
            refused.insert(name(&state.findings, change));
        }
        if !some {
            break;
        }
    }
    done
}

/// The only preferred change of each finding, as far as they do not overlap and concern files that
/// were named.
fn choose<'a>(
    findings: &'a Findings,
    named: &BTreeMap<String, Arc<str>>,
    refused: &HashSet<String>,
) -> Vec<&'a Change> {
    let mut chosen: Vec<&Change> = Vec::new();
    let mut taken: Vec<(usize, std::ops::Range<usize>)> = Vec::new();
    for f in &findings.list {
        let mut preferred = f.changes.iter().filter(|c| c.preferred);
        let (Some(change), None) = (preferred.next(), preferred.next()) else {
            continue;
        };
        let clear = change.edits.iter().all(|(spot, _)| {
            let lines = whole_lines(&findings.files[spot.file].text, &spot.bytes);
            named.contains_key(&findings.files[spot.file].path)
                && !taken.iter().any(|(file, r)| {
                    *file == spot.file && r.start < lines.end && lines.start < r.end
                })
        });
        if !clear || refused.contains(&name(findings, change)) {
            continue;
        }
        for (spot, _) in &change.edits {
            let lines = whole_lines(&findings.files[spot.file].text, &spot.bytes);
            taken.push((spot.file, lines));
        }
        chosen.push(change);
    }
    chosen
}

/// The lines that a range touches: two changes of one line may mean the same.
fn whole_lines(text: &str, range: &std::ops::Range<usize>) -> std::ops::Range<usize> {
    let start = text[..range.start].rfind('\n').map_or(0, |i| i + 1);
    let end = text[range.end..]
        .find('\n')
        .map_or(text.len(), |i| range.end + i);
    start..end.max(start + 1)
}

/// What tells a change from others, wherever it has moved to.
fn name(findings: &Findings, change: &Change) -> String {
    let mut out = change.title.clone();
    for (spot, text) in &change.edits {
        let file = &findings.files[spot.file];
        let line = whole_lines(&file.text, &spot.bytes);
        let line = file.text.get(line).unwrap_or_default();
        let _ = write!(out, "\0{}\0{line}\0{text}", file.path);
    }
    out
}

/// The state after these changes if it is better, which is then kept.
fn tried(group: &Group, loader: &Changed, now: &State, changes: &[&Change]) -> Option<State> {
    let mut by_file: BTreeMap<usize, Vec<(std::ops::Range<usize>, &str)>> = BTreeMap::new();
    for change in changes {
        for (spot, text) in &change.edits {
            by_file
                .entry(spot.file)
                .or_default()
                .push((spot.bytes.clone(), text));
        }
    }
    let old = loader.texts.borrow().clone();
    for (file, mut edits) in by_file {
        let file = &now.findings.files[file];
        edits.sort_by_key(|(range, _)| std::cmp::Reverse((range.start, range.end)));
        let mut text = file.text.to_string();
        for (range, with) in edits {
            text.replace_range(range, with);
        }
        loader
            .texts
            .borrow_mut()
            .insert(file.path.clone(), text.into());
    }
    let then = State::of(group, loader);
    if then.errors <= now.errors && then.all < now.all + usize::from(then.errors < now.errors) {
        return Some(then);
    }
    *loader.texts.borrow_mut() = old;
    None
}

/// Says what was changed, as the line before and after.
fn tell(findings: &Findings, changes: &[&Change], told: &mut String) -> usize {
    for change in changes {
        let Some((spot, _)) = change.edits.first() else {
            continue;
        };
        let file = &findings.files[spot.file];
        let (name, line) = (printable(&file.shown), spot.start.0);
        let _ = writeln!(told, "{name}:{line}: {}", printable(&change.title));
        if let Some(new) = rewritten(change, &findings.files) {
            let old = lines_of(&file.text, spot);
            let _ = writeln!(
                told,
                "  - {}\n  + {}",
                printable(old.trim()),
                printable(&new)
            );
        }
    }
    changes.len()
}
