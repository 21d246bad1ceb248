//! The reading that does not fit: against a plain search over all explanations, written for this test.

use downlead_physics::line::wavelength;
use downlead_physics::measure::{Odd, Seen, Slip, odd_one_out, phase_slope, slip, without};

const DRIFT: f64 = 0.02;

fn seen(minutes: f64, ln_w: f64, u: f64) -> Seen {
    Seen { minutes, ln_w, u }
}

/// χ² of readings about the best line whose change is zero ± `DRIFT`, by a search over its slope; the
/// level is then the weighted mean (GUM, least squares).
fn about_a_line(
    all: &[Seen],
    ends: (f64, f64),
    skip: Option<usize>,
    prior: bool,
) -> (f64, f64, f64) {
    let used: Vec<Seen> = (0..all.len())
        .filter(|i| Some(*i) != skip)
        .map(|i| all[i])
        .collect();
    let x = |s: &Seen| (s.minutes - ends.0) / (ends.1 - ends.0);
    let of = |slope: f64| {
        let w: f64 = used.iter().map(|s| s.u.powi(-2)).sum();
        let mean = used
            .iter()
            .map(|s| (s.ln_w - slope * x(s)) * s.u.powi(-2))
            .sum::<f64>()
            / w;
        let chi2: f64 = used
            .iter()
            .map(|s| ((s.ln_w - mean - slope * x(s)) / s.u).powi(2))
            .sum();
        let of_drift = if prior { (slope / DRIFT).powi(2) } else { 0.0 };
        (chi2 + of_drift, mean)
    };
    // χ² is a parabola of the slope: the least is found by halving the interval
    let (mut low, mut high) = (-5.0_f64, 5.0_f64);
    for _ in 0..200 {
        let (a, b) = (low + (high - low) / 3.0, high - (high - low) / 3.0);
        if of(a).0 < of(b).0 {
            high = b;
        } else {
            low = a;
        }
    }
    let slope = 0.5 * (low + high);
    let (chi2, level) = of(slope);
    (chi2, level, slope)
}

/// χ² about two levels, the second from number `n` on, and by how much it is higher.
fn about_two_levels(all: &[Seen], n: usize) -> (f64, f64) {
    let level = |part: &[Seen]| {
        let w: f64 = part.iter().map(|s| s.u.powi(-2)).sum();
        let mean = part.iter().map(|s| s.ln_w * s.u.powi(-2)).sum::<f64>() / w;
        let chi2: f64 = part.iter().map(|s| ((s.ln_w - mean) / s.u).powi(2)).sum();
        (mean, chi2)
    };
    let (a, b) = (level(&all[..n]), level(&all[n..]));
    (a.1 + b.1, b.0 - a.0)
}

fn off_by(at: usize, by: f64) -> Vec<Seen> {
    let ln = [3.780, 3.776, 3.783, 3.778, 3.774, 3.781];
    let u = [0.010, 0.014, 0.012, 0.009, 0.011, 0.010];
    let mut all: Vec<Seen> = (0..6)
        .map(|i| seen([0.0, 1.0, 2.5, 4.0, 5.0, 7.0][i], ln[i], u[i]))
        .collect();
    all[at].ln_w += by;
    all
}

#[test]
fn the_odd_reading_is_the_one_without_which_the_rest_fits_best() {
    for at in 0..6 {
        let all = off_by(at, 0.25);
        let e = odd_one_out(&all, DRIFT, 0.01).expect("one is off");
        let (chi2, _, _) = about_a_line(&all, (0.0, 7.0), None, true);
        assert!((e.chi2 - chi2).abs() < 1e-6 * chi2, "{} {chi2}", e.chi2);
        assert_eq!(e.candidates[0].0, Odd::Reading(at), "{e:?}");
        for (odd, left) in &e.candidates {
            let want = match odd {
                Odd::Reading(i) => about_a_line(&all, (0.0, 7.0), Some(*i), true).0,
                Odd::Drift => about_a_line(&all, (0.0, 7.0), None, false).0,
                Odd::Jump(n, by) => {
                    let (chi2, step) = about_two_levels(&all, *n);
                    assert!((by - step).abs() < 1e-9, "{by} {step}");
                    chi2
                }
            };
            assert!(
                (left - want).abs() < 1e-5 * (1.0 + want),
                "{odd:?}: {left} {want}"
            );
        }
        // what it should have been, by the line through the others
        let (ln, u) = without(&all, at, DRIFT).expect("the others tell");
        let (_, level, slope) = about_a_line(&all, (0.0, 7.0), Some(at), true);
        let want = level + slope * all[at].minutes / 7.0;
        assert!((ln - want).abs() < 1e-7, "{ln} {want}");
        // the others are six of about 1 %: their line is known to less than that, and to more than 1 % / √5
        assert!((0.004..0.03).contains(&u), "{u}");
    }
    assert!(odd_one_out(&off_by(2, 0.0), DRIFT, 0.01).is_none());
}

#[test]
fn a_jump_is_two_levels() {
    for n in 2..5 {
        let mut all = off_by(0, 0.0);
        all[n..].iter_mut().for_each(|s| s.ln_w += 0.3);
        let e = odd_one_out(&all, DRIFT, 0.01).expect("it jumped");
        let (Odd::Jump(at, by), left) = e.candidates[0] else {
            panic!("{e:?}");
        };
        let (chi2, step) = about_two_levels(&all, n);
        assert_eq!(at, n);
        assert!((by - step).abs() < 1e-12, "{by} {step}");
        assert!((left - chi2).abs() < 1e-9, "{left} {chi2}");
    }
}

#[test]
fn readings_at_one_time_tell_no_line() {
    let all = [
        seen(3.0, 1.0, 0.01),
        seen(3.0, 1.1, 0.01),
        seen(3.0, 2.0, 0.01),
    ];
    assert_eq!(without(&all, 0, DRIFT), None);
    assert!(odd_one_out(&all, DRIFT, 0.01).is_none());
    assert_eq!(without(&all[..1], 0, DRIFT), None);
}

/// Through two points a line goes exactly: nothing is known of its scatter.
#[test]
fn two_points_have_no_scatter() {
    for i in 1..40 {
        let f = 1e6 * f64::from(i);
        let points = [(f / 3.0, 10.1 + f * 1e-7), (f / 0.7, -17.3)];
        let s = phase_slope(&points).expect("a slope");
        assert!(s.u_deg_per_hz.is_nan(), "{points:?}: {}", s.u_deg_per_hz);
    }
}

/// 299.792458 m in a vacuum at 1 MHz (definition of the metre), two thirds of it in solid polyethylene.
#[test]
fn a_wave_is_shorter_on_a_line() {
    assert!((wavelength(1e6, 1.0) - 299.792_458).abs() < 1e-9);
    assert!((wavelength(145e6, 0.66) - 1.364_573).abs() < 1e-6);
}

#[test]
fn a_slip_makes_the_figure_that_fits() {
    let of = |written: f64, fits: f64, u: f64| slip(written, fits, u);
    // two digits exchanged, the point lost or moved by one place or two
    assert_eq!(of(31.8, 38.1, 0.001), Some((Slip::Swapped, 38.1)));
    assert_eq!(of(217.0, 21.7, 0.001), Some((Slip::Point, 217.0 * 0.1)));
    assert_eq!(of(2.17, 21.7, 0.001), Some((Slip::Point, 2.17 * 10.0)));
    assert_eq!(of(2170.0, 21.7, 0.001), Some((Slip::Point, 2170.0 * 0.01)));
    assert_eq!(of(0.217, 21.7, 0.001), Some((Slip::Point, 0.217 * 100.0)));
    // within 2 % of what fits, or three standard uncertainties
    assert_eq!(of(31.8, 38.1 * 1.019, 0.001), Some((Slip::Swapped, 38.1)));
    assert_eq!(of(31.8, 38.1 * 1.021, 0.001), None);
    assert_eq!(of(31.8, 38.1 * 1.021, 0.01), Some((Slip::Swapped, 38.1)));
    assert_eq!(of(31.8, 38.1 / 1.029, 0.01), Some((Slip::Swapped, 38.1)));
    assert_eq!(of(31.8, 38.1 / 1.032, 0.01), None);
    // the nearest of several: 12.1 to 12.2 or 1.21 of what was written as 21.1
    assert_eq!(of(21.1, 12.0, 0.2), Some((Slip::Swapped, 12.1)));
    assert_eq!(of(21.1, 2.2, 0.5), Some((Slip::Point, 21.1 * 0.1)));
    // no slip makes it
    assert_eq!(of(12.0, 13.0, 0.001), None);
    assert_eq!(of(50.0, 20.0, 0.001), None);
}

/// A transmitter that is known to be constant cannot have drifted: nothing is left to explain.
#[test]
fn a_drift_of_zero_explains_nothing() {
    for drift in [1e-6, 1e-9, 1e-12] {
        let e = odd_one_out(&off_by(2, 0.25), drift, 0.01).expect("one is off");
        assert_eq!(e.candidates[0].0, Odd::Reading(2), "{e:?}");
        let near = |c: &(Odd, f64)| c.1.is_finite() && c.1 > -1e-6;
        assert!(e.chi2.is_finite() && e.candidates.iter().all(near), "{e:?}");
    }
}
