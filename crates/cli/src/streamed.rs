//! `check` of many files: set by set on all cores, each given back before the next, so that the memory
//! does not grow with the number of files. What is found is the same: a file sees only what it uses.

use std::collections::{HashMap, HashSet};

use crate::conclusion::Conclusion;
use crate::files::{Gathered, Group};
use crate::findings::{Finding, Findings, SourceFile, Spot};
use crate::loader::in_words;
use crate::model::Snapshot;
use crate::parallel::each;

/// From so many files on.
const MANY: usize = 512;
/// Files that are read together: those of one folder share what they use.
const TOGETHER: usize = 64;

/// What all files come to.
pub(crate) struct Streamed {
    pub(crate) findings: Findings,
    pub(crate) conclusion: Conclusion,
    /// Files named that could be read.
    pub(crate) files: usize,
    /// Files that could not be read, each in one sentence.
    pub(crate) unread: Vec<String>,
}

/// One set of files.
struct Part {
    findings: Findings,
    conclusion: Conclusion,
    files: usize,
    unread: Vec<String>,
    /// Whether a file that several sets use accepts findings: whether it needs to is known only when all
    /// are seen together.
    accepts: bool,
}

/// Checks the files where there are many. None where they are few, or must be seen together.
pub(crate) fn check(gathered: &Gathered, as_of: Option<&str>) -> Option<Streamed> {
    let count: usize = gathered.groups.iter().map(|g| g.files.len()).sum();
    if count < MANY || gathered.groups.iter().any(Group::has_input) {
        return None;
    }
    let sets: Vec<(&Group, &[String])> = gathered
        .groups
        .iter()
        .flat_map(|g| g.files.chunks(TOGETHER).map(move |c| (g, c)))
        .collect();
    let parts = each(&sets, |(group, files)| part(group, files, as_of));
    if parts.iter().any(|p| p.accepts) {
        return None;
    }
    let mut all = Streamed {
        findings: Findings::default(),
        conclusion: Conclusion::default(),
        files: 0,
        unread: Vec::new(),
    };
    let mut merged = Merged::default();
    for p in parts {
        all.files += p.files;
        all.unread.extend(p.unread);
        all.conclusion.append(p.conclusion);
        merged.add(p.findings, &mut all.findings);
    }
    Some(all)
}

fn part(group: &Group, files: &[String], as_of: Option<&str>) -> Part {
    let mut s = Snapshot::load(files, &group.loader());
    s.set_as_of(as_of.map(str::to_owned));
    let mut part = Part {
        findings: Findings::default(),
        conclusion: Conclusion::default(),
        files: 0,
        unread: Vec::new(),
        accepts: false,
    };
    for f in s.files() {
        match &f.error {
            Some(e) if f.root => {
                let shown = group.shown(&f.path);
                part.unread.push(format!("{shown}: {}", in_words(e)));
            }
            Some(_) => {}
            None => part.files += usize::from(f.root),
        }
        part.accepts |= !f.root && f.text().contains("accept ");
    }
    part.findings.add(group, &s);
    part.findings.drop_files_without();
    part.conclusion.add(group, &s);
    part
}

/// Findings of several sets as one list.
/// Place, code and message of a finding.
type Seen = (Option<(usize, usize)>, &'static str, String);

#[derive(Default)]
struct Merged {
    /// Files by the name shown.
    files: HashMap<String, usize>,
    /// What is in the list: a file that several sets use says the same in each.
    seen: HashSet<Seen>,
}

impl Merged {
    fn add(&mut self, from: Findings, to: &mut Findings) {
        let mut at: Vec<usize> = Vec::with_capacity(from.files.len());
        for f in from.files {
            let next = to.files.len();
            let known = *self.files.entry(f.shown.clone()).or_insert(next);
            if known == next {
                to.files.push(f);
            }
            at.push(known);
        }
        for mut f in from.list {
            f.each_spot(&mut |s| s.file = at[s.file]);
            if self.is_new(&f) {
                to.list.push(f);
            }
        }
        for mut a in from.accepted {
            a.finding.each_spot(&mut |s| s.file = at[s.file]);
            if let Some(by) = &mut a.by {
                by.file = at[by.file];
            }
            if self.is_new(&a.finding) {
                to.accepted.push(a);
            }
        }
    }

    fn is_new(&mut self, f: &Finding) -> bool {
        let place = f.spot.as_ref().map(|s| (s.file, s.bytes.start));
        self.seen.insert((place, f.code.id, f.message.clone()))
    }
}

impl Finding {
    /// Every place that it names.
    fn each_spot(&mut self, to: &mut dyn FnMut(&mut Spot)) {
        self.spot.iter_mut().for_each(&mut *to);
        self.related.iter_mut().for_each(|r| to(&mut r.0));
        let edits = self.changes.iter_mut().flat_map(|c| &mut c.edits);
        edits.for_each(|e| to(&mut e.0));
    }
}

impl Findings {
    /// Gives back the texts of files that no finding is in.
    fn drop_files_without(&mut self) {
        let mut used = vec![false; self.files.len()];
        let mut all: Vec<&mut Finding> = self.list.iter_mut().collect();
        all.extend(self.accepted.iter_mut().map(|a| &mut a.finding));
        for f in &mut all {
            f.each_spot(&mut |s| used[s.file] = true);
        }
        let by = self.accepted.iter().filter_map(|a| a.by.as_ref());
        by.for_each(|s| used[s.file] = true);
        let mut at = vec![0; used.len()];
        let mut kept: Vec<SourceFile> = Vec::new();
        for (i, f) in std::mem::take(&mut self.files).into_iter().enumerate() {
            at[i] = kept.len();
            if used[i] {
                kept.push(f);
            }
        }
        self.files = kept;
        let mut all: Vec<&mut Finding> = self.list.iter_mut().collect();
        all.extend(self.accepted.iter_mut().map(|a| &mut a.finding));
        for f in &mut all {
            f.each_spot(&mut |s| s.file = at[s.file]);
        }
        for a in &mut self.accepted {
            if let Some(s) = &mut a.by {
                s.file = at[s.file];
            }
        }
    }
}
