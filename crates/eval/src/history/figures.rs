//! Figures beside the state before: one that was mistyped looks like one that was changed, and only
//! the state before tells.

use std::sync::Arc;

use downlead_base::{Diagnostic, codes};
use downlead_quantity::UnitId;
use downlead_station::figures::{StatedFigure, item_figures};
use downlead_syntax::{File, Item};
use rustc_hash::FxHashMap;

use super::Recording;
use super::lengths::{aligned, swapped};

/// The figures of one file through the revisions.
#[derive(Clone, Debug, Default)]
pub(super) struct Figures {
    by_key: FxHashMap<Box<str>, Vec<State>>,
    newest: Option<Arc<Recording>>,
}

/// The figures of one key, in the order of the text, from one revision on.
#[derive(Clone, Debug)]
struct State {
    list: Vec<StatedFigure>,
    by: Arc<Recording>,
}

/// How a figure looks mistyped.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Slip {
    /// Two neighbouring digits changed places.
    Swapped,
    /// The number stayed and the unit is another.
    Unit,
    /// The point moved: so many times as much, or as little.
    Point(f64),
    /// The figure stayed and its uncertainty is gone.
    Sure,
}

impl Figures {
    pub(super) fn is_empty(&self) -> bool {
        self.by_key.is_empty()
    }

    /// Follows each figure into the next revision.
    pub(super) fn add(&mut self, tree: &File, revision: &Arc<Recording>) {
        let all = tree.items().iter().flat_map(|p| item_figures(&p.item));
        for (key, list) in by_key(all) {
            let mut states = self.by_key.remove(&key).unwrap_or_default();
            if !states.last().is_some_and(|s| all_same(&s.list, &list)) {
                states.push(State {
                    list,
                    by: Arc::clone(revision),
                });
            }
            self.by_key.insert(key, states);
        }
        self.newest = Some(Arc::clone(revision));
    }

    /// What looks mistyped in an item: beside the newest committed state; where that says the same
    /// and came with the newest commit of the file, beside the one before.
    pub(super) fn compare(&self, item: &Item) -> Vec<Diagnostic> {
        let mut out = Vec::new();
        for (key, list) in by_key(item_figures(item)) {
            let Some(states) = self.by_key.get(&key) else {
                continue;
            };
            let Some((before, earlier)) = self.state_before(states, &list) else {
                continue;
            };
            for (was, now) in changed(&before.list, &list) {
                // what goes back to an earlier figure mends a slip
                let back = earlier.iter().any(|s| s.list.iter().any(|e| e.same(now)));
                if let Some(slip) = slip(was, now).filter(|_| !back) {
                    out.push(finding(was, now, slip, &before.by));
                }
            }
        }
        out
    }

    fn state_before<'s>(
        &self,
        states: &'s [State],
        list: &[StatedFigure],
    ) -> Option<(&'s State, &'s [State])> {
        let (newest, earlier) = states.split_last()?;
        if !all_same(&newest.list, list) {
            return Some((newest, earlier));
        }
        let of_newest_commit = self
            .newest
            .as_ref()
            .is_some_and(|n| Arc::ptr_eq(n, &newest.by));
        let (before, earlier) = earlier.split_last()?;
        of_newest_commit.then_some((before, earlier))
    }
}

fn by_key(
    all: impl IntoIterator<Item = StatedFigure>,
) -> indexmap::IndexMap<Box<str>, Vec<StatedFigure>> {
    let mut out = indexmap::IndexMap::<Box<str>, Vec<StatedFigure>>::new();
    for f in all {
        out.entry(f.key.clone()).or_default().push(f);
    }
    out
}

fn all_same(a: &[StatedFigure], b: &[StatedFigure]) -> bool {
    a.len() == b.len() && a.iter().zip(b).all(|(a, b)| a.same(b))
}

/// The figures of one key that have changed. None where lines were added or removed: old and new
/// ones cannot be matched then.
fn changed<'f>(
    before: &'f [StatedFigure],
    now: &'f [StatedFigure],
) -> Vec<(&'f StatedFigure, &'f StatedFigure)> {
    if before.len() != now.len() {
        return Vec::new();
    }
    let mut left: Vec<&StatedFigure> = before.iter().collect();
    let mut moved = Vec::new();
    for n in now {
        match left.iter().position(|b| b.same(n)) {
            Some(i) => drop(left.remove(i)),
            None => moved.push(n),
        }
    }
    left.into_iter().zip(moved).collect()
}

/// Whether the change looks like a slip of the hand: one number of the figure, and nothing else.
fn slip(was: &StatedFigure, now: &StatedFigure) -> Option<Slip> {
    let ((a, had), (b, has)) = (was.without_uncertainty(), now.without_uncertainty());
    if had && !has && a == b {
        return Some(Slip::Sure);
    }
    if was.numbers.len() != now.numbers.len() {
        return None;
    }
    let mut differ = was.numbers.iter().zip(&now.numbers).filter(|(a, b)| a != b);
    let (one, None) = (differ.next()?, differ.next()) else {
        return None;
    };
    let ((was, old_unit), (now, new_unit)) = one;
    let (a, b) = aligned(was, now);
    if old_unit != new_unit {
        let same = UnitId::parse(old_unit).is_some_and(|u| UnitId::parse(new_unit) == Some(u));
        return (a == b && !same).then_some(Slip::Unit);
    }
    let (x, y) = (was.parse::<f64>().ok()?, now.parse::<f64>().ok()?);
    let point = [10.0, 100.0, 1000.0].into_iter().find_map(|k| {
        let is = |x: f64| (x / k - 1.0).abs() < 1e-9;
        (is(y / x) || is(x / y)).then_some(Slip::Point(k))
    });
    point.or(swapped(&a, &b).then_some(Slip::Swapped))
}

fn finding(was: &StatedFigure, now: &StatedFigure, slip: Slip, by: &Recording) -> Diagnostic {
    let looks = match slip {
        Slip::Swapped => "two digits changed places".to_owned(),
        Slip::Unit => "the number stayed and the unit changed".to_owned(),
        Slip::Point(k) => format!("the point moved, a factor of {k}"),
        Slip::Sure => "the uncertainty is gone".to_owned(),
    };
    Diagnostic::new(
        &codes::FIGURE_MISTYPED,
        now.loc,
        format!(
            "`{}` had {} when {} recorded it on {} ({}); now it has {}: {looks}.",
            now.name, was.text, by.author, by.date, by.revision, now.text
        ),
    )
    .at("looks mistyped")
    .help("Write it as it was. If it is meant, it is quiet from the commit after the one that brings it.")
    .fix(
        format!("write `{}` as before", was.text),
        now.loc,
        was.text.to_string(),
    )
}

#[cfg(test)]
mod tests {
    use super::{Figures, Recording};
    use downlead_syntax::File;
    use std::sync::Arc;

    fn text(line: &str) -> String {
        format!("station s {{\n    {line}\n    chain c on 145 MHz {{ A1 }}\n}}\n")
    }

    fn said(states: &[&str], now: &str) -> Vec<String> {
        let mut all = Figures::default();
        for (i, line) in states.iter().enumerate() {
            let by = Recording {
                revision: format!("r{i}").into(),
                date: "2026-07-19".into(),
                seconds: i as i64,
                author: "QY5BEN".into(),
            };
            all.add(&File::parse(text(line)), &Arc::new(by));
        }
        let tree = File::parse(text(now));
        let items = tree.items().iter();
        items
            .flat_map(|p| all.compare(&p.item))
            .map(|d| d.message)
            .collect()
    }

    #[test]
    fn slips_are_pointed_out_and_changes_are_not() {
        for (was, now, words) in [
            ("transmitter T 25 W", "transmitter T 52 W", "two digits"),
            ("antenna A1 5.20 dBi", "antenna A1 6.20 dBi", ""),
            ("antenna A1 5.20 dBi", "antenna A1 5.02 dBi", "two digits"),
            (
                "antenna A1 5.2 dBi",
                "antenna A1 5.2 dBd",
                "the unit changed",
            ),
            ("pad P 0.55 dB", "pad P 5.5 dB", "a factor of 10"),
            (
                "pad P 0.55 dB ± 0.15 dB",
                "pad P 0.55 dB",
                "the uncertainty is gone",
            ),
            (
                "pad P 0.55 dB ± 0.15 dB",
                "pad P 0.55 dB ± 1.5 dB",
                "a factor of 10",
            ),
            (
                "filter F 1 dB, passes 146.8 MHz to 147.0 MHz",
                "filter F 1 dB, passes 148.6 MHz to 147.0 MHz",
                "two digits",
            ),
            (
                "filter F 1 dB, passes 146.8 MHz to 147.0 MHz",
                "filter F 1 dB, passes 164.8 MHz to 147.0 MHz",
                "two digits",
            ),
            // another value, another layout, one unit in two spellings, more words
            ("transmitter T 25 W", "transmitter T 30 W", ""),
            ("transmitter T 25 W", "transmitter T 25  W", ""),
            ("transmitter T 25 W", "transmitter T 52 W carrier", ""),
            ("pad P 0.55 dB", "pad P 0.55 dB ± 0.1 dB", ""),
            ("pad P 0.55 dB ± 0.15 dB", "pad P 0.6 dB", ""),
        ] {
            let got = said(&[was], now);
            assert_eq!(got.len(), usize::from(!words.is_empty()), "{now}: {got:?}");
            assert!(got.iter().all(|g| g.contains(words)), "{now}: {got:?}");
        }
    }

    #[test]
    fn the_newest_commit_is_compared_until_the_next_and_going_back_is_quiet() {
        let [a, b] = ["pad P 1.25 dB", "pad P 1.52 dB"];
        for (states, now, n) in [
            (&[a, b][..], b, 1),
            (&[a, b, b], b, 0),
            (&[a, b], a, 0),
            (&[a], a, 0),
        ] {
            assert_eq!(said(states, now).len(), n, "{states:?} {now}");
        }
    }
}
