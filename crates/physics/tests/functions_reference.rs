//! Special functions against `tests/reference/functions.json`, computed by scipy
//! (`tests/reference/functions.py`).

use downlead_physics::mismatch as mm;
use downlead_physics::{
    Complex64, DB_PER_100FT, LineParams, TwoTerm, bessel, construction, cx, radiated, uncertainty,
};
use serde_json::Value;

fn rows(section: &str) -> Vec<Value> {
    let text = include_str!("../../../tests/reference/functions.json");
    let file: Value = serde_json::from_str(text).expect("the reference file is JSON");
    let list = file[section].as_array().expect("a section").clone();
    assert!(list.len() >= 5, "{section} is short");
    list
}

fn number(v: &Value, key: &str) -> f64 {
    v[key].as_f64().unwrap_or_else(|| panic!("{key} in {v}"))
}

fn close(got: f64, want: f64, tolerance: f64, what: &Value) {
    let off = (got - want).abs();
    assert!(
        off <= tolerance,
        "{what}: {got} is not {want} ± {tolerance}"
    );
}

#[test]
fn modified_bessel_functions() {
    for row in rows("bessel") {
        let z = cx::polar(number(&row, "size"), std::f64::consts::FRAC_PI_4);
        let m = bessel::modified(z);
        for (k, got) in [m.i0, m.i1, m.k0, m.k1].iter().enumerate() {
            let pair = &row["values"][k];
            let want: Complex64 = cx::c(pair[0].as_f64().unwrap(), pair[1].as_f64().unwrap());
            let off = cx::abs(got - want) / cx::abs(want);
            assert!(off < 2e-8, "function {k} of {z}: off by {off:e}");
        }
    }
}

#[test]
fn coverage_factor() {
    for row in rows("student") {
        let k = uncertainty::coverage_factor(number(&row, "dof"));
        close(k, number(&row, "k"), 1e-9, &row);
    }
}

#[test]
fn te11_cutoff() {
    for row in rows("te11") {
        let (inner, outer) = (number(&row, "inner_m"), number(&row, "outer_m"));
        let got = construction::te11_cutoff(inner, outer, number(&row, "er"));
        let want = number(&row, "hz");
        close(got, want, 1e-9 * want, &row);
    }
}

#[test]
fn cosine_integral() {
    for row in rows("cin") {
        let want = number(&row, "value");
        close(radiated::cin(number(&row, "x")), want, 1e-10, &row);
    }
}

#[test]
fn collinear_stacks() {
    for row in rows("collinear") {
        let count = row["count"].as_u64().unwrap();
        let got = radiated::collinear_dbi(u32::try_from(count).unwrap(), number(&row, "spacing"));
        close(got.unwrap(), number(&row, "dbi"), 1e-8, &row);
    }
}

/// A numeric scan of angle and length against the closed form over the angle.
#[test]
fn worst_error_of_the_classic_formula() {
    let loss = TwoTerm {
        k1: 0.444 * DB_PER_100FT,
        k2: 0.00126 * DB_PER_100FT,
    };
    for row in rows("classic_error") {
        let f = number(&row, "f_hz");
        let line = LineParams::two_term(50.0, 0.659, loss, f);
        let wavelength = downlead_physics::line::wavelength(f, 0.659);
        let gamma = mm::gamma_from_swr(number(&row, "swr"));
        let worst = (1..=400)
            .map(|i| mm::loss_range(&line, f, wavelength * f64::from(i) / 400.0, gamma))
            .map(|range| range.worst_error_db())
            .fold(0.0, f64::max);
        // half a degree of angle: the scan falls short by some 1e-5
        close(worst, number(&row, "db"), 2e-5, &row);
    }
}
