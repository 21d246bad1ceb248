//! Measured against expected.

/// Conclusion of a comparison.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Verdict {
    /// The difference is within the uncertainty.
    Agrees,
    /// The difference exceeds the uncertainty.
    Differs,
    /// The uncertainty is too large for a conclusion.
    CannotTell,
}

/// A loss with its expanded uncertainty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Value {
    /// dB.
    pub db: f64,
    /// `k·u`, dB.
    pub expanded_db: f64,
}

/// A comparison.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Comparison {
    /// Measured less expected, dB.
    pub difference_db: f64,
    /// Expanded uncertainty of the difference, dB.
    pub expanded_db: f64,
    /// Difference over its expanded uncertainty: the En number (ISO/IEC 17043 B.4.1.1 e, ISO
    /// 13528; from memory).
    pub en: f64,
    /// The same with the measurement's uncertainty alone: a loose expectation hides nothing here.
    pub en_measurement: f64,
    /// The conclusion, by [`verdict`].
    pub verdict: Verdict,
    /// It agrees only because the expectation is loose: beyond the measurement's own uncertainty.
    pub beyond_measurement: bool,
    /// By what factor the measurement's uncertainty must shrink before the comparison can tell; 1
    /// when it can. None: no meter helps, the expectation is too loose (or the measurement has no
    /// upper limit to shrink).
    pub meter_factor: Option<f64>,
}

/// The rule: a difference beyond its uncertainty `Differs`; otherwise, an uncertainty of more than half the
/// expected loss makes it `CannotTell` (common practice), and the rest `Agrees`.
#[must_use]
pub fn verdict(difference_db: f64, expanded_db: f64, expected_db: f64) -> Verdict {
    if difference_db.abs() > expanded_db {
        Verdict::Differs
    } else if expanded_db <= 0.5 * expected_db {
        Verdict::Agrees
    } else {
        Verdict::CannotTell
    }
}

/// Compares two values that share no cause.
#[must_use]
pub fn compare(measured: Value, expected: Value) -> Comparison {
    let u = libm::hypot(measured.expanded_db, expected.expanded_db);
    compare_with(measured, expected, u)
}

/// Compares two values of which the difference has the expanded uncertainty given (found with
/// what they share taken into account).
#[must_use]
pub fn compare_with(measured: Value, expected: Value, expanded_difference_db: f64) -> Comparison {
    let difference_db = measured.db - expected.db;
    let u = expanded_difference_db;
    let verdict = verdict(difference_db, u, expected.db);
    let en_measurement = difference_db / measured.expanded_db;
    let meter_factor = if verdict == Verdict::CannotTell {
        let goal = 0.5 * expected.db;
        let rest = (u * u - measured.expanded_db * measured.expanded_db).max(0.0);
        let room = goal * goal - rest;
        let helps = goal > 0.0 && room > 0.0 && u.is_finite();
        helps.then(|| measured.expanded_db / libm::sqrt(room))
    } else {
        Some(1.0)
    };
    Comparison {
        difference_db,
        expanded_db: u,
        en: difference_db / u,
        en_measurement,
        verdict,
        beyond_measurement: verdict == Verdict::Agrees && en_measurement.abs() > 1.0,
        meter_factor,
    }
}

/// By what factor the part of a measurement's uncertainty that is the meter's must shrink before a
/// comparison can tell, where `rest_expanded_db` of the difference's uncertainty is not the meter's
/// (drift, mismatch, adapters, the expectation). None: no meter helps.
#[must_use]
pub fn meter_factor(
    meter_expanded_db: f64,
    rest_expanded_db: f64,
    expected_db: f64,
) -> Option<f64> {
    let goal = 0.5 * expected_db;
    let room = goal * goal - rest_expanded_db * rest_expanded_db;
    let helps = goal > 0.0 && room > 0.0 && meter_expanded_db.is_finite();
    helps.then(|| (meter_expanded_db / libm::sqrt(room)).max(1.0))
}

/// An expected loss, split into what grows with length and what does not.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Grows {
    /// Part that grows with length, dB.
    pub cable_db: f64,
    /// Part that stays (connectors), dB.
    pub fixed_db: f64,
    /// Expanded uncertainty of the part that grows; grows with it.
    pub cable_expanded_db: f64,
    /// Expanded uncertainty of the part that stays.
    pub fixed_expanded_db: f64,
}

/// The factor by which the piece must be longer before a comparison with this measurement
/// uncertainty has a conclusion (its uncertainty half the expected loss or less); 1 when it already has. None:
/// no length helps.
#[must_use]
pub fn length_factor(measured_expanded_db: f64, expected: &Grows) -> Option<f64> {
    let sq = |x: f64| x * x;
    // (x·cable + fixed)²/4 = U² + (x·Ucable)² + Ufixed², solved for x
    let a = 0.25 * sq(expected.cable_db) - sq(expected.cable_expanded_db);
    let b = 0.5 * expected.cable_db * expected.fixed_db;
    let c =
        0.25 * sq(expected.fixed_db) - sq(measured_expanded_db) - sq(expected.fixed_expanded_db);
    if a + b + c >= 0.0 {
        return Some(1.0);
    }
    let root = if a == 0.0 {
        -c / b
    } else {
        // for a < 0 this is the smaller root, where the loss overtakes the uncertainty
        let inside = b * b - 4.0 * a * c;
        if inside < 0.0 {
            return None;
        }
        (-b + libm::sqrt(inside)) / (2.0 * a)
    };
    (root > 1.0 && root.is_finite()).then_some(root)
}

/// As [`length_factor`], where the measurement's own uncertainty changes with the piece: after a longer
/// one the meter reads lower on its scale. `measured_expanded_db` gives it for a piece so many
/// times as long; looked for in steps of 1 %, up to a hundred times.
#[must_use]
pub fn length_factor_with(
    measured_expanded_db: impl Fn(f64) -> f64,
    expected: &Grows,
) -> Option<f64> {
    let tells = |x: &f64| {
        let u = libm::hypot(
            measured_expanded_db(*x),
            libm::hypot(x * expected.cable_expanded_db, expected.fixed_expanded_db),
        );
        u <= 0.5 * (x * expected.cable_db + expected.fixed_db)
    };
    core::iter::successors(Some(1.0), |x| Some(1.01 * x))
        .take_while(|x| *x <= 100.0)
        .find(tells)
}
