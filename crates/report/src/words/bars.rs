//! A ranking as bars of text, the uncertainty drawn as an interval at their ends.

use crate::shape::bench::RankReport;

/// Characters of the longest bar.
const WIDTH: usize = 40;

/// The bar of each entry on one linear scale from zero, so that lengths compare as losses do:
/// `━━━━━├──●──┤`, with `○` where the value is not to be trusted.
#[must_use]
pub fn bars(ranking: &[RankReport]) -> Vec<String> {
    let top = ranking
        .iter()
        .map(|r| r.loss_db_per_m + r.uncertainty_db_per_m)
        .filter(|v| v.is_finite())
        .fold(0.0_f64, f64::max);
    ranking.iter().map(|r| bar(r, top)).collect()
}

fn bar(r: &RankReport, top: f64) -> String {
    let (value, u) = (r.loss_db_per_m, r.uncertainty_db_per_m);
    if !(top > 0.0 && value.is_finite() && u.is_finite()) {
        return String::new();
    }
    let cell = |v: f64| {
        let share = (v / top).clamp(0.0, 1.0);
        libm::round(share * (WIDTH - 1) as f64) as usize
    };
    let (low, mid, high) = (cell(value - u), cell(value), cell(value + u));
    let mut line = vec![' '; WIDTH];
    line[..low].fill('━');
    line[low..=high].fill('─');
    if low < mid && value - u >= 0.0 {
        line[low] = '├';
    }
    if high > mid {
        line[high] = '┤';
    }
    line[mid] = if r.trusted { '●' } else { '○' };
    line.into_iter().collect::<String>().trim_end().to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn entry(value: f64, u: f64, trusted: bool) -> RankReport {
        RankReport {
            rank: 1,
            sharing: 1,
            piece: "A".to_owned(),
            loss_db_per_m: value,
            uncertainty_db_per_m: u,
            trusted,
        }
    }

    #[test]
    fn bars_are_to_scale() {
        let drawn = bars(&[
            entry(0.1, 0.05, true),
            entry(0.3, 0.09, false),
            entry(0.001, 0.1, false),
            entry(f64::NAN, 0.1, false),
        ]);
        // 39 steps for 0.39: one step is 0.01
        assert_eq!(drawn[0], "━━━━━├────●────┤");
        assert_eq!(drawn[1].chars().position(|c| c == '├'), Some(21));
        assert_eq!(drawn[1].chars().position(|c| c == '○'), Some(30));
        assert_eq!(drawn[1].chars().count(), 40);
        assert_eq!(drawn[2], "○─────────┤");
        assert_eq!(drawn[3], "");
        assert_eq!(bars(&[]), Vec::<String>::new());
    }
}
