//! The conclusion of `check`: what was compared in each file, and what there is to mend.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use downlead_base::Severity;
use downlead_eval::exposure::ExposureVerdict;
use downlead_eval::licence::RuleVerdict;
use downlead_eval::link::LinkVerdict;
use downlead_eval::result::Verdict;
use downlead_eval::site::desense::DesenseVerdict;
use downlead_report::shape::bench::VerdictCounts;
use downlead_report::words::figure::counted;
use downlead_station::model::Meaning;

use crate::files::Group;
use crate::findings::{Finding, Findings};
use crate::model::Snapshot;
use crate::ui::printable;

/// No more files than this are named one by one.
const NAMED: usize = 20;

/// What was compared and found in one file, or in all.
#[derive(Clone, Debug, Default)]
struct Sum {
    chains: usize,
    sessions: usize,
    definitions: usize,
    met: usize,
    not_met: usize,
    cannot_tell: usize,
    /// Clauses that are met only where the service is allocated.
    if_allocated: usize,
    /// Clauses that something is missing for.
    not_judged: usize,
    /// Chains on a band that no clause of their licence or rules bears on.
    no_rule: usize,
    /// Spots by what is said of the exposure there: met, not met, cannot tell, not judged.
    spots: [usize; 4],
    /// Hops by what is said of them: met, not met, cannot tell, not judged.
    hops: [usize; 4],
    /// Receive channels with a limit of desense by what is said of them: met, not met, cannot tell, not judged.
    desense: [usize; 4],
    readings: VerdictCounts,
    errors: usize,
    warnings: usize,
    notes: usize,
    /// Findings that the text accepts.
    accepted: usize,
}

/// What was compared and found, file by file.
#[derive(Debug, Default)]
pub(crate) struct Conclusion {
    /// By the name shown.
    files: BTreeMap<String, Sum>,
    /// Findings of each code.
    codes: BTreeMap<&'static str, usize>,
}

impl Conclusion {
    /// Whether something that is asked is left open without a finding: a hop that cannot tell or is
    /// not judged.
    pub(crate) fn leaves_open(&self) -> bool {
        self.files
            .values()
            .any(|s| s.hops[2..].iter().any(|n| *n > 0))
    }

    /// Adds what was compared in the files that were named.
    pub(crate) fn add(&mut self, group: &Group, snapshot: &Snapshot) {
        for scope in snapshot.scopes() {
            let Some(file) = snapshot.files().get(scope.file()) else {
                continue;
            };
            if !file.root || file.error.is_some() {
                continue;
            }
            let sum = self.files.entry(group.shown(&file.path)).or_default();
            for (_, lowered, result) in scope.items() {
                let stated = !matches!(lowered.meaning, Meaning::Nothing | Meaning::Use(_));
                sum.definitions += usize::from(stated);
                sum.sessions += usize::from(result.session.is_some());
                if let Some(l) = &result.link {
                    sum.hops(l.hops.iter().map(|h| h.verdict));
                    sum.hops[3] += l.not_judged.len();
                }
                if let Some(s) = &result.site {
                    sum.desense(s.desense.iter().map(|d| d.verdict));
                }
                if let Some(e) = &result.exposure {
                    sum.spots(e.spots.iter().map(|s| s.verdict));
                    sum.spots[3] += e.not_judged.len();
                }
                for chain in &result.chains {
                    sum.chains += 1;
                    for band in &chain.bands {
                        sum.limits(band.limits.iter().map(|l| l.verdict));
                        sum.clauses(band.rules.iter().map(|r| r.verdict));
                        sum.readings(band.readings.iter().map(|r| r.verdict));
                        let rows = band.logs.iter().flat_map(|l| &l.rows);
                        sum.readings(rows.filter_map(|r| r.verdict));
                    }
                }
            }
        }
    }

    /// Adds what was compared in other files.
    pub(crate) fn append(&mut self, other: Conclusion) {
        self.files.extend(other.files);
    }

    /// Counts the findings.
    pub(crate) fn count(&mut self, findings: &Findings) {
        for f in &findings.list {
            if f.severity >= Severity::Warning {
                *self.codes.entry(f.code.id).or_default() += 1;
            }
            // a finding in a file that is only used counts in the total alone
            let file = f
                .spot
                .as_ref()
                .map(|s| findings.files[s.file].shown.clone());
            let sum = self.files.entry(file.unwrap_or_default()).or_default();
            match f.severity {
                Severity::Error => sum.errors += 1,
                Severity::Warning => sum.warnings += 1,
                Severity::Info | Severity::Hint => sum.notes += 1,
            }
        }
        for a in &findings.accepted {
            let file = a.finding.spot.as_ref().map(|s| s.file);
            let shown = file.map(|f| findings.files[f].shown.clone());
            self.files
                .entry(shown.unwrap_or_default())
                .or_default()
                .accepted += 1;
        }
    }

    /// Whether there is nothing to correct.
    fn clean(&self) -> bool {
        self.files.values().all(|s| s.weight() == (0, 0, 0))
    }

    /// The lines: one for each file with something to mend, the worst first, and one for all files
    /// where there are several. `quiet`: nothing where there is nothing to correct. `notes`: these are
    /// shown already.
    pub(crate) fn lines(&self, files: usize, quiet: bool, notes: bool) -> String {
        let mut out = String::new();
        if self.files.is_empty() || (quiet && self.clean()) {
            return out;
        }
        if files == 1 && self.files.len() == 1 {
            for (name, sum) in &self.files {
                let _ = writeln!(out, "{}: {}", printable(name), sum.words(notes));
            }
        } else {
            let mut worst: Vec<(&String, &Sum)> = self
                .files
                .iter()
                .filter(|(name, s)| s.weight() > (0, 0, 0) && !name.is_empty())
                .collect();
            worst.sort_by_key(|x| std::cmp::Reverse(x.1.weight()));
            for (name, sum) in worst.iter().take(NAMED) {
                let _ = writeln!(out, "{}: {}", printable(name), sum.words(notes));
            }
            if worst.len() > NAMED {
                let _ = writeln!(out, "and {} more", counted(worst.len() - NAMED, "file"));
            }
            let mut all = Sum::default();
            self.files.values().for_each(|s| all.merge(s));
            let _ = writeln!(out, "{}: {}", counted(files, "file"), all.words(notes));
        }
        if self.codes.values().sum::<usize>() > 1 {
            let _ = writeln!(out, "by code: {}", self.by_code());
        }
        out
    }

    /// `84 limit-cannot-tell, 3 unknown-cable`, the most frequent first.
    fn by_code(&self) -> String {
        let mut all: Vec<(&str, usize)> = self.codes.iter().map(|(c, n)| (*c, *n)).collect();
        all.sort_by_key(|(_, n)| std::cmp::Reverse(*n));
        let words: Vec<String> = all.iter().map(|(c, n)| format!("{n} {c}")).collect();
        words.join(", ")
    }
}

impl Sum {
    fn limits(&mut self, verdicts: impl Iterator<Item = Verdict>) {
        for v in verdicts {
            match v {
                Verdict::Yes => self.met += 1,
                Verdict::No => self.not_met += 1,
                Verdict::CannotTell => self.cannot_tell += 1,
            }
        }
    }

    fn clauses(&mut self, verdicts: impl Iterator<Item = RuleVerdict>) {
        for v in verdicts {
            match v {
                RuleVerdict::Met => self.met += 1,
                RuleVerdict::MetIfAllocated => self.if_allocated += 1,
                RuleVerdict::NotMet => self.not_met += 1,
                // both sides of the limit are possible
                RuleVerdict::CannotTell | RuleVerdict::AtLimit => self.cannot_tell += 1,
                RuleVerdict::CannotJudge => self.not_judged += 1,
                RuleVerdict::NoRule => self.no_rule += 1,
            }
        }
    }

    fn hops(&mut self, verdicts: impl Iterator<Item = LinkVerdict>) {
        for v in verdicts {
            let at = match v {
                LinkVerdict::Met => 0,
                LinkVerdict::NotMet => 1,
                LinkVerdict::CannotTell | LinkVerdict::AtLimit => 2,
                LinkVerdict::CannotJudge | LinkVerdict::NoNeed => 3,
            };
            self.hops[at] += 1;
        }
    }

    fn desense(&mut self, verdicts: impl Iterator<Item = DesenseVerdict>) {
        for v in verdicts {
            let at = match v {
                DesenseVerdict::NoLimit => continue,
                DesenseVerdict::Met | DesenseVerdict::MetAlone => 0,
                DesenseVerdict::NotMet => 1,
                DesenseVerdict::CannotTell | DesenseVerdict::AtLimit => 2,
                DesenseVerdict::CannotJudge => 3,
            };
            self.desense[at] += 1;
        }
    }

    fn spots(&mut self, verdicts: impl Iterator<Item = ExposureVerdict>) {
        for v in verdicts {
            let at = match v {
                ExposureVerdict::Met | ExposureVerdict::MetAlone => 0,
                ExposureVerdict::NotMet => 1,
                ExposureVerdict::CannotTell => 2,
                ExposureVerdict::CannotJudge | ExposureVerdict::Refused => 3,
            };
            self.spots[at] += 1;
        }
    }

    fn readings(&mut self, verdicts: impl Iterator<Item = Verdict>) {
        for v in verdicts {
            match v {
                Verdict::Yes => self.readings.agrees += 1,
                Verdict::No => self.readings.differs += 1,
                Verdict::CannotTell => self.readings.cannot_tell += 1,
            }
        }
    }

    fn merge(&mut self, other: &Sum) {
        self.chains += other.chains;
        self.sessions += other.sessions;
        self.definitions += other.definitions;
        self.met += other.met;
        self.if_allocated += other.if_allocated;
        self.not_met += other.not_met;
        self.cannot_tell += other.cannot_tell;
        self.not_judged += other.not_judged;
        self.no_rule += other.no_rule;
        for (own, more) in self.spots.iter_mut().zip(other.spots) {
            *own += more;
        }
        for (own, more) in self.desense.iter_mut().zip(other.desense) {
            *own += more;
        }
        for (own, more) in self.hops.iter_mut().zip(other.hops) {
            *own += more;
        }
        self.readings.agrees += other.readings.agrees;
        self.readings.differs += other.readings.differs;
        self.readings.cannot_tell += other.readings.cannot_tell;
        self.errors += other.errors;
        self.warnings += other.warnings;
        self.notes += other.notes;
        self.accepted += other.accepted;
    }

    /// What files are ranked by.
    fn weight(&self) -> (usize, usize, usize) {
        let open = self.not_met
            + self.cannot_tell
            + self.not_judged
            + self.no_rule
            + self.if_allocated
            + self.spots[1..].iter().sum::<usize>()
            + self.hops[1..].iter().sum::<usize>()
            + self.desense[1..].iter().sum::<usize>();
        (self.errors, self.warnings, open)
    }

    fn words(&self, notes_shown: bool) -> String {
        let mut parts = Vec::new();
        let limits = [
            (self.not_met, "not met"),
            (self.cannot_tell, "cannot tell"),
            (self.not_judged, "not judged"),
            (self.if_allocated, "met if allocated"),
            (self.met, "met"),
        ];
        for (n, words) in limits.into_iter().filter(|l| l.0 > 0) {
            parts.push(format!("{} {words}", counted(n, "limit")));
        }
        if self.no_rule > 0 {
            parts.push(format!("{} under no rule", counted(self.no_rule, "chain")));
        }
        let kinds = [
            (1, "not met"),
            (2, "cannot tell"),
            (3, "not judged"),
            (0, "met"),
        ];
        for (at, words) in kinds.into_iter().filter(|(at, _)| self.spots[*at] > 0) {
            let n = counted(self.spots[at], "spot");
            parts.push(format!("exposure at {n} {words}"));
        }
        for (at, words) in kinds.into_iter().filter(|(at, _)| self.hops[*at] > 0) {
            parts.push(format!("{} {words}", counted(self.hops[at], "hop")));
        }
        for (at, words) in kinds.into_iter().filter(|(at, _)| self.desense[*at] > 0) {
            let n = counted(self.desense[at], "receiver");
            parts.push(format!("desense of {n} {words}"));
        }
        if self.readings.all() > 0 {
            let listed = self.readings.listed();
            // the first number says what is counted
            let (first, rest) = listed.split_once(' ').unwrap_or((&listed, ""));
            let what = if first == "1" { "reading" } else { "readings" };
            parts.push(format!("{first} {what} {rest}"));
        }
        if self.sessions > 0 {
            parts.push(counted(self.sessions, "bench session"));
        }
        if parts.is_empty() {
            parts.push(match self.chains {
                0 if self.definitions == 0 => "no statement".to_owned(),
                0 => format!("no chain, {}", counted(self.definitions, "definition")),
                n => format!("{}, no limit and no reading", counted(n, "chain")),
            });
        }
        let mut line = format!("{}; {}", parts.join(", "), self.to_mend());
        if self.accepted > 0 {
            let _ = write!(line, ", {} accepted", self.accepted);
        }
        if self.notes > 0 {
            let lead = if notes_shown { "" } else { ": --notes" };
            let _ = write!(line, " ({}{lead})", counted(self.notes, "note"));
        }
        line
    }

    fn to_mend(&self) -> String {
        match (self.errors, self.warnings) {
            (0, 0) => "nothing to correct".to_owned(),
            (e, 0) => counted(e, "error"),
            (0, w) => counted(w, "warning"),
            (e, w) => format!("{}, {}", counted(e, "error"), counted(w, "warning")),
        }
    }
}

/// Of each kind of finding the first `most`, and how many more of which there are.
pub(crate) fn capped<'a>(
    findings: impl Iterator<Item = &'a Finding>,
    most: usize,
) -> (Vec<&'a Finding>, Vec<(&'static str, usize)>) {
    let mut seen: BTreeMap<&'static str, usize> = BTreeMap::new();
    let mut kept = Vec::new();
    for f in findings {
        let n = seen.entry(f.code.id).or_default();
        *n += 1;
        if *n <= most {
            kept.push(f);
        }
    }
    let more = seen
        .into_iter()
        .filter(|(_, n)| *n > most)
        .map(|(code, n)| (code, n - most));
    (kept, more.collect())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::findings::tests::made;

    #[test]
    fn of_each_kind_some_are_kept_and_the_rest_is_counted() {
        use downlead_base::codes::{UNKNOWN_CABLE, WRONG_UNIT};
        let mut at = vec![(&UNKNOWN_CABLE, 0..1, "u")];
        at.extend((0..7).map(|_| (&WRONG_UNIT, 0..1, "w")));
        let found = made("abc", &at);
        let (kept, more) = capped(found.list.iter(), 5);
        assert_eq!((kept.len(), more), (6, vec![("wrong-unit", 2)]));
        let (kept, more) = capped(found.list.iter(), 7);
        assert_eq!((kept.len(), more), (8, Vec::new()));
    }
}
