//! Order of values with their uncertainty.

use std::cmp::Ordering;

/// A place in a ranking.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ranked {
    /// Index of the item as given.
    pub item: usize,
    /// Items of one group follow each other without a step beyond its uncertainty.
    pub group: usize,
    /// The step to the next item exceeds its uncertainty (true for the last).
    pub clear_of_next: bool,
}

/// True if two values (value, expanded uncertainty) differ by no more than the expanded
/// uncertainty of their difference.
#[must_use]
pub fn cannot_be_told_apart(a: (f64, f64), b: (f64, f64)) -> bool {
    (a.0 - b.0).abs() <= libm::hypot(a.1, b.1)
}

/// Values (value, expanded uncertainty) in ascending order, with the neighbours that cannot be
/// distinguished in one group. NaN comes last, on its own. First and last of a long
/// group may well differ beyond their uncertainty: use [`cannot_be_told_apart`].
#[must_use]
pub fn ranking(items: &[(f64, f64)]) -> Vec<Ranked> {
    ranking_with(items, |a, b| libm::hypot(items[a].1, items[b].1))
}

/// As [`ranking`], of values that share causes: `apart` gives the expanded uncertainty of the
/// difference of two items.
#[must_use]
pub fn ranking_with(items: &[(f64, f64)], apart: impl Fn(usize, usize) -> f64) -> Vec<Ranked> {
    let mut order: Vec<usize> = (0..items.len()).collect();
    order.sort_by(|&a, &b| {
        let nan = items[a].0.is_nan().cmp(&items[b].0.is_nan());
        nan.then(items[a].0.total_cmp(&items[b].0))
    });
    let mut group = 0;
    let mut out = Vec::with_capacity(order.len());
    for (place, &item) in order.iter().enumerate() {
        let clear_of_next = order.get(place + 1).is_none_or(|&next| {
            let step = (items[item].0 - items[next].0).abs();
            // a value that is no number is apart from all
            !matches!(
                step.partial_cmp(&apart(item, next)),
                Some(Ordering::Less | Ordering::Equal)
            )
        });
        out.push(Ranked {
            item,
            group,
            clear_of_next,
        });
        group += usize::from(clear_of_next);
    }
    out
}
