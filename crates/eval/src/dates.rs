//! Dates of the text.

/// Days since 0000-03-01 of a date written `2026-07-04`, `2026-07` or `2026` (the middle of the
/// month or year); none where it is no date. Civil calendar, proleptic Gregorian.
#[must_use]
pub fn days_of(date: &str) -> Option<f64> {
    crate::verdict::days(date)
}
