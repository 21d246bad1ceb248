//! Against general-purpose libraries: `data/measure.json` is written by
//! `tests/reference/measure.py` (scipy, scikit-rf).

use downlead_physics::measure::*;
use downlead_physics::{Complex64, cx};
use serde_json::Value as Json;

fn rows(section: &str) -> Vec<Json> {
    let file: Json = serde_json::from_str(include_str!("data/measure.json")).expect("JSON");
    let list = file[section].as_array().expect("a section").clone();
    assert!(list.len() >= 2, "{section} is short");
    list
}

fn number(v: &Json, key: &str) -> f64 {
    v[key].as_f64().unwrap_or_else(|| panic!("{key} in {v}"))
}

fn numbers(v: &Json, key: &str) -> Vec<f64> {
    let list = v[key].as_array().unwrap_or_else(|| panic!("{key} in {v}"));
    list.iter().map(|x| x.as_f64().unwrap()).collect()
}

/// Relative to the larger of `want` and `scale`.
fn close(got: f64, want: f64, tolerance: f64, scale: f64, what: &Json) {
    let limit = tolerance * want.abs().max(scale);
    assert!((got - want).abs() <= limit, "{got} is not {want}: {what}");
}

#[test]
fn distributions() {
    for row in rows("chi_square") {
        let p = chi_square_survival(number(&row, "x"), number(&row, "dof"));
        close(p, number(&row, "p"), 1e-11, 0.0, &row);
    }
    for row in rows("normal") {
        let z = normal_quantile(number(&row, "p"));
        close(z, number(&row, "z"), 1e-11, 0.01, &row);
    }
    for row in rows("student") {
        let t = student_two_sided(number(&row, "outside"), number(&row, "dof"));
        close(t, number(&row, "t"), 1e-9, 0.0, &row);
    }
    assert!(chi_square_survival(1.0, 0.0).is_nan());
    assert_eq!(chi_square_survival(-1.0, 3.0), 1.0);
    assert!(normal_quantile(1.5).is_nan() && normal_quantile(f64::NAN).is_nan());
}

/// Points of a reference set; dB/100 m there.
fn points(row: &Json) -> Vec<FitPoint> {
    let (mhz, a, u) = (numbers(row, "mhz"), numbers(row, "a"), numbers(row, "u"));
    (0..mhz.len())
        .map(|i| FitPoint {
            f_hz: mhz[i] * 1e6,
            db_per_m: a[i] / 100.0,
            u_db_per_m: u[i] / 100.0,
        })
        .collect()
}

/// scipy.optimize.nnls and curve_fit.
#[test]
fn least_squares() {
    for row in rows("fits") {
        let points = points(&row);
        let condition = number(&row, "condition");
        let fit = match fit(&points, &FitRules::default()) {
            Ok(fit) => fit,
            Err(FitError::Singular {
                condition: ours,
                add_hz,
            }) => {
                close(ours, condition, 1e-6, 0.0, &row);
                assert!(condition > 1000.0, "refused {row}");
                assert!((add_hz - 14.8e6).abs() < 1.0, "a tenth of the highest");
                continue;
            }
            Err(e) => panic!("{e}: {row}"),
        };
        assert!(condition < 1000.0, "not refused {row}");
        close(fit.condition, condition, 1e-9, 0.0, &row);
        close(
            100.0 * fit.coefficients.k1,
            number(&row, "k1"),
            1e-9,
            1e-3,
            &row,
        );
        close(
            100.0 * fit.coefficients.k2,
            number(&row, "k2"),
            1e-9,
            1e-5,
            &row,
        );
        let cov = &row["cov"];
        // scipy's uncertainties are those of the points alone; larger scatter widens them
        let (chi2, dof) = (number(&row, "chi2"), number(&row, "dof"));
        let unlikely = row["p"].as_f64().is_some_and(|p| p < 0.05);
        let wider = if unlikely { (chi2 / dof).sqrt() } else { 1.0 };
        close(fit.widened, wider, 1e-8, 0.0, &row);
        let cov = |i: usize, j: usize| cov[i][j].as_f64().unwrap() * wider * wider;
        close(1e4 * fit.u_k1 * fit.u_k1, cov(0, 0), 1e-6, 1e-12, &row);
        close(1e4 * fit.u_k2 * fit.u_k2, cov(1, 1), 1e-6, 1e-15, &row);
        let off = 1e4 * fit.correlation * fit.u_k1 * fit.u_k2;
        close(off, cov(0, 1), 1e-6, 1e-12, &row);
        close(fit.chi2, number(&row, "chi2"), 1e-8, 1e-6, &row);
        assert_eq!(fit.dof as f64, number(&row, "dof"));
        match row["p"].as_f64() {
            Some(p) => close(fit.p, p, 1e-8, 0.0, &row),
            None => assert!(fit.p.is_nan() && fit.outlier.is_none()),
        }
        for (got, want) in fit.residuals.iter().zip(numbers(&row, "residuals")) {
            close(*got, want, 1e-7, 1e-3, &row);
        }
        let at = numbers(&row, "at_mhz");
        for (i, mhz) in at.iter().enumerate() {
            let got = fit.predict(mhz * 1e6);
            close(
                100.0 * got.db_per_m,
                numbers(&row, "predicted")[i],
                1e-9,
                0.0,
                &row,
            );
            close(
                100.0 * got.u_db_per_m,
                wider * numbers(&row, "u_predicted")[i],
                1e-6,
                0.0,
                &row,
            );
        }
        if let Some(o) = fit.outlier {
            close(
                o.residual,
                numbers(&row, "studentised")[o.index],
                1e-6,
                0.0,
                &row,
            );
        }
        let (outlier, clamped, weak) = match row["name"].as_str().unwrap() {
            "an outlier" => (Some(4), None, false),
            "no conductor" => (Some(0), Some(Clamped::K1), false),
            "no dielectric" => (None, Some(Clamped::K2), false),
            "two bands" => (None, None, true),
            "repeated frequencies" => (None, None, false),
            _ => (None, None, false),
        };
        assert_eq!(fit.outlier.map(|o| o.index), outlier, "{row}");
        assert_eq!(fit.clamped, clamped, "{row}");
        assert_eq!(fit.advice.is_some(), weak, "{row}");
    }
}

/// The bound of the outlier is the normal quantile scipy gives for 1 − 0.05/14.
#[test]
fn outlier_bound() {
    let row = rows("fits")
        .into_iter()
        .find(|r| r["name"] == "an outlier")
        .unwrap();
    let outlier = fit(&points(&row), &FitRules::default())
        .unwrap()
        .outlier
        .unwrap();
    assert!(
        (outlier.bound - 2.690_109_527).abs() < 1e-8,
        "{}",
        outlier.bound
    );
}

#[test]
fn trends() {
    for row in rows("trends") {
        let points: Vec<TrendPoint> = row["points"]
            .as_array()
            .unwrap()
            .iter()
            .map(|p| TrendPoint {
                days: p[0].as_f64().unwrap(),
                value: p[1].as_f64().unwrap(),
                u: p[2].as_f64().unwrap(),
            })
            .collect();
        let t = trend(&points).expect("two dates");
        close(t.per_year, number(&row, "per_year"), 1e-9, 0.01, &row);
        close(t.chi2, number(&row, "chi2"), 1e-9, 1e-6, &row);
        let p = row["p"].as_f64();
        assert_eq!(t.widened, p.is_some_and(|p| p < 0.05));
        let wider = if t.widened {
            (t.chi2 / t.dof as f64).sqrt()
        } else {
            1.0
        };
        close(
            t.u_per_year,
            wider * number(&row, "u_per_year"),
            1e-6,
            0.0,
            &row,
        );
        // 4.53 for two and 3.31 for three degrees of freedom (GUM table G.2, 95.45 %, from memory)
        match (t.widened, t.dof) {
            (false, _) => assert_eq!(t.k, 2.0),
            (true, 2) => close(t.k, 4.53, 0.002, 0.0, &row),
            (true, 3) => close(t.k, 3.31, 0.002, 0.0, &row),
            (true, dof) => panic!("no table value for {dof}"),
        }
        let (value, u) = t.at(2000.0);
        close(value, number(&row, "at_2000"), 1e-9, 0.0, &row);
        close(u, wider * number(&row, "u_at_2000"), 1e-9, 0.0, &row);
        let beyond = t.per_year.abs() > t.k * t.u_per_year;
        assert_eq!(t.direction != Direction::NotBeyondDoubt, beyond);
        if beyond {
            assert_eq!(t.direction == Direction::Rising, t.per_year > 0.0);
            let days = t.reaches(t.at_mean + t.per_year).unwrap();
            assert!((days - t.mean_days - 365.25).abs() < 1e-6);
        }
    }
}

/// scipy.stats.linregress on phases wrapped to ± 180°.
#[test]
fn phase_slopes() {
    for row in rows("phases") {
        let points: Vec<(f64, f64)> = row["points"]
            .as_array()
            .unwrap()
            .iter()
            .map(|p| (p[0].as_f64().unwrap(), p[1].as_f64().unwrap()))
            .collect();
        let s = phase_slope(&points).expect("a slope");
        close(s.deg_per_hz, number(&row, "slope"), 1e-8, 0.0, &row);
        close(s.u_deg_per_hz, number(&row, "u"), 1e-6, 0.0, &row);
    }
}

/// Lossy lines of 49 to 75 ohm measured in 50 ohm, by scikit-rf.
#[test]
fn lines_from_one_end() {
    for row in rows("lines") {
        let z = |key: &str| -> Complex64 {
            let v = numbers(&row, key);
            cx::c(v[0], v[1])
        };
        let got = open_short(z("open"), z("short"));
        close(got.loss_db, number(&row, "loss_db"), 1e-8, 0.0, &row);
        close(got.phase_rad, number(&row, "phase"), 1e-8, 0.0, &row);
        assert!(cx::abs(got.zc_ohm - z("zc")) < 1e-6, "{row}");
        // half return losses: either misses, the mean much less; but neither is right in a line far
        // from 50 ohm of which the far end comes back weaker than its near end reflects
        let rl = numbers(&row, "return_loss");
        let halves = one_port(rl[0], rl[1]);
        let off = (halves.loss_db - number(&row, "loss_db")).abs();
        if z("zc").re < 70.0 {
            assert!(off < 0.05 * halves.half_difference_db.abs(), "{off} {row}");
        } else {
            assert!(off > 1.0, "{off} {row}");
        }
    }
}
