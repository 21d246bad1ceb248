//! How far the gain of an antenna is below its peak, by the angle above the horizon.
//!
//! A table of angles says nothing between its rows: where the figure must be safe, the row with the
//! most gain counts, and outside of the table the peak.

/// Most that is credited of a pattern, dB: below, reflections of the mast decide (common practice).
pub const MOST_DB: f64 = 20.0;

/// Least attenuation, dB, anywhere between two angles, degrees, by rows of angle and attenuation in
/// rising order of the angle; at most [`MOST_DB`], and 0 where an angle is outside of the rows.
#[must_use]
pub fn least_db(rows: &[(f64, f64)], from_deg: f64, to_deg: f64) -> f64 {
    let (low, high) = (from_deg.min(to_deg), from_deg.max(to_deg));
    let first = rows.iter().rposition(|r| r.0 <= low);
    let last = rows.iter().position(|r| r.0 >= high);
    let (Some(first), Some(last)) = (first, last) else {
        return 0.0;
    };
    let (first, last) = (first.min(last), first.max(last));
    let least = rows[first..=last].iter().map(|r| r.1);
    least.fold(MOST_DB, f64::min).max(0.0)
}

/// Attenuation at an angle, dB, on the straight line between the rows, and half of what these differ;
/// at most [`MOST_DB`]. None outside of the rows.
#[must_use]
pub fn between_db(rows: &[(f64, f64)], deg: f64) -> Option<(f64, f64)> {
    let next = rows.iter().position(|r| r.0 >= deg)?;
    let b = rows[next];
    if b.0 <= deg {
        return Some((b.1.min(MOST_DB), 0.0));
    }
    let a = *rows.get(next.checked_sub(1)?)?;
    let (x, y) = (a.1.min(MOST_DB), b.1.min(MOST_DB));
    let share = (deg - a.0) / (b.0 - a.0);
    Some((x + share * (y - x), 0.5 * (y - x).abs()))
}

/// Angle above the horizon, degrees, of the point at `at_m` along a path and `above_m` over sea level,
/// seen from `from_m` over sea level, over an earth of `radius_m`; the height counts with the bulge of
/// the earth over a path of `length_m`.
#[must_use]
pub fn elevation_deg(
    from_m: f64,
    (at_m, above_m): (f64, f64),
    length_m: f64,
    radius_m: f64,
) -> f64 {
    let slope = (above_m - from_m) / at_m - length_m / (2.0 * radius_m);
    libm::atan(slope).to_degrees()
}

#[cfg(test)]
mod tests {
    use super::*;

    const ROWS: [(f64, f64); 4] = [(-90.0, 26.0), (-60.0, 14.0), (-30.0, 9.0), (0.0, 0.0)];

    /// By hand from the rows.
    #[test]
    fn the_row_with_the_most_gain_counts() {
        assert_eq!(least_db(&ROWS, -45.0, -45.0), 9.0);
        assert_eq!(least_db(&ROWS, -60.0, -60.0), 14.0);
        assert_eq!(least_db(&ROWS, -70.0, -61.0), 14.0);
        // a span over several rows
        assert_eq!(least_db(&ROWS, -80.0, -20.0), 0.0);
        assert_eq!(least_db(&ROWS, -20.0, -80.0), 0.0);
        // capped, and nothing outside
        assert_eq!(least_db(&ROWS, -90.0, -90.0), 20.0);
        assert_eq!(least_db(&ROWS, 1.0, 2.0), 0.0);
        assert_eq!(least_db(&ROWS, -30.0, 1.0), 0.0);
        assert_eq!(least_db(&[], -30.0, -30.0), 0.0);
    }

    #[test]
    fn between_rows_a_line_and_half_their_difference() {
        assert_eq!(between_db(&ROWS, -45.0), Some((11.5, 2.5)));
        assert_eq!(between_db(&ROWS, -30.0), Some((9.0, 0.0)));
        assert_eq!(between_db(&ROWS, -75.0), Some((17.0, 3.0)));
        assert_eq!(between_db(&ROWS, 0.1), None);
        assert_eq!(between_db(&ROWS, -90.1), None);
    }

    /// 600 m down over 38.4 km are -0.895°, and the earth (k = 4/3) falls off by 0.130° more: by hand.
    #[test]
    fn the_earth_falls_away() {
        let flat = elevation_deg(630.0, (38_400.0, 30.0), 38_400.0, f64::INFINITY);
        assert!((flat + 0.895).abs() < 1e-3, "{flat}");
        let round = elevation_deg(630.0, (38_400.0, 30.0), 38_400.0, 6_371_000.0 * 4.0 / 3.0);
        assert!((round - flat + 0.1295).abs() < 1e-3, "{round}");
    }
}
