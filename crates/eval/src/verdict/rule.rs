//! The three-way verdicts themselves.

use crate::result::Verdict;

/// Two conventions of the dipole's gain in law differ by this much (2.14, 2.1484, 2.15 dB); no
/// limit is called exceeded inside it.
const CONVENTION_DB: f64 = 0.02;

/// The smallest fault in dB a reading should be able to show (common practice).
pub(super) const SMALLEST_FAULT_DB: f64 = 1.0;

/// The verdict on an upper limit: the margin must exceed the doubt.
pub(super) fn upper_limit(margin_db: f64, u_db: f64) -> Verdict {
    if margin_db >= u_db && margin_db >= 0.0 {
        Verdict::Yes
    } else if margin_db < -u_db.max(CONVENTION_DB) {
        Verdict::No
    } else {
        Verdict::CannotTell
    }
}

/// The verdict on a reading: `differs` beyond the doubt; `cannot-tell` where the doubt is more
/// than half of what the reading is to show.
pub(super) fn agreement(difference_db: f64, u_db: f64, to_show_db: f64) -> Verdict {
    if difference_db.abs() > u_db {
        Verdict::No
    } else if u_db > 0.5 * to_show_db {
        Verdict::CannotTell
    } else {
        Verdict::Yes
    }
}
