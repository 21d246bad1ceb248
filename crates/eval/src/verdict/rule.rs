//! The three-way verdicts themselves.

use downlead_physics::net::evaluate::TAIL;

use crate::result::Verdict;

/// Two conventions of the dipole's gain in law differ by this much (2.14, 2.1484, 2.15 dB); no
/// limit is called exceeded inside it.
const CONVENTION_DB: f64 = 0.02;

/// The smallest fault in dB a reading should be able to show (common practice).
pub(crate) const SMALLEST_FAULT_DB: f64 = 1.0;

/// The verdict on an upper limit `level_db`: met where it is exceeded with less than 2.275 %, not
/// met where it is kept with less than that. `above` is the probability that the output lies above
/// a level. Where derivatives suffice that is the margin against U.
pub(super) fn upper_limit(margin_db: f64, above: impl Fn(f64) -> f64, level_db: f64) -> Verdict {
    // rounding of a margin that equals U to the last digit
    const SLACK: f64 = 1e-9;
    if margin_db >= 0.0 && above(level_db) <= TAIL + SLACK {
        Verdict::Yes
    } else if margin_db < -CONVENTION_DB && above(level_db) >= 1.0 - TAIL - SLACK {
        Verdict::No
    } else {
        Verdict::CannotTell
    }
}

/// The verdict on a reading: `differs` by more than the uncertainty; `cannot-tell` where the
/// uncertainty is more than half of what the reading is to show.
pub(super) fn agreement(difference_db: f64, u_db: f64, to_show_db: f64) -> Verdict {
    if difference_db.abs() > u_db {
        Verdict::No
    } else if u_db > 0.5 * to_show_db {
        Verdict::CannotTell
    } else {
        Verdict::Yes
    }
}
