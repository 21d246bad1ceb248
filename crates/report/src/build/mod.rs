//! From results to shapes.

pub mod bench;
pub mod card;
pub mod chain;
pub mod compare;
pub mod desense;
pub mod diff;
pub mod exposure;
pub mod link;
pub mod overview;
mod overview_more;
pub mod paper;
pub mod recall;
pub mod remarks;
pub mod trends;
mod unjudged;
pub mod variants;
pub mod verify;

mod rules;
pub mod run;
mod site;

/// A probability nearer to 0 or 1 than this is 0 or 1.
const TAIL: f64 = 1e-9;

/// A probability for the JSON: what lies within 1e-9 of 0 or 1 is that. A tail of 9e-232 would say that the
/// shape of a distribution is known out to thirty deviations.
fn probability(p: f64) -> f64 {
    if p < TAIL {
        0.0
    } else if p > 1.0 - TAIL {
        1.0
    } else {
        p
    }
}

#[cfg(test)]
mod tests {
    use super::probability;

    #[test]
    fn a_tail_beyond_what_is_known_is_none() {
        for (p, shown) in [
            (9e-232, 0.0),
            (0.0, 0.0),
            (1.1e-9, 1.1e-9),
            (0.022_75, 0.022_75),
            (1.0 - 1e-12, 1.0),
            (1.0, 1.0),
        ] {
            assert_eq!(probability(p).to_bits(), f64::to_bits(shown), "{p}");
        }
    }
}
