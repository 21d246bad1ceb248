//! Figures beside the state before: one that was mistyped looks like one that was changed, and only
//! the state before tells.

use std::sync::Arc;

use downlead_base::{Diagnostic, codes};
use downlead_quantity::UnitId;
use downlead_station::figures::{StatedFigure, item_figures};
use downlead_syntax::{File, Item};

use super::Recording;
use super::lengths::{aligned, swapped};
use super::states::{Stated, States};

/// The figures of one file through the revisions.
#[derive(Clone, Debug, Default)]
pub(super) struct Figures(States<StatedFigure>);

impl Stated for StatedFigure {
    fn key(&self) -> &str {
        &self.key
    }

    fn same(&self, other: &Self) -> bool {
        StatedFigure::same(self, other)
    }
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
        self.0.is_empty()
    }

    /// Follows each into the next revision.
    pub(super) fn add(&mut self, tree: &File, revision: &Arc<Recording>) {
        let all = tree.items().iter().flat_map(|p| item_figures(&p.item));
        self.0.add(all, revision);
    }

    /// What looks mistyped in an item.
    pub(super) fn compare(&self, item: &Item) -> Vec<Diagnostic> {
        let changed = self.0.changed(item_figures(item)).into_iter();
        changed
            .filter_map(|c| {
                let slip = slip(c.was, &c.now)?;
                Some(finding(c.was, &c.now, slip, c.by))
            })
            .collect()
    }
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
