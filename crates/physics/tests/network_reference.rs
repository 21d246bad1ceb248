//! Terminated lines against `tests/reference/network.json`, computed by scikit-rf and numpy
//! (`tests/reference/network.py`).

use downlead_physics::mismatch;
use downlead_physics::{Complex64, LineParams, SMatrix, TwoTerm, cx};
use serde_json::Value;

/// Largest difference in dB; the requirement is 1e-6.
const DB: f64 = 1e-9;

/// Reference impedance of the scattering matrices, ohm.
const R0: f64 = 50.0;

fn reference() -> Value {
    let text = include_str!("../../../tests/reference/network.json");
    serde_json::from_str(text).expect("the reference file is JSON")
}

fn number(v: &Value, key: &str) -> f64 {
    v[key].as_f64().unwrap_or_else(|| panic!("{key} in {v}"))
}

fn numbers(v: &Value) -> Vec<f64> {
    let list = v.as_array().expect("a list");
    list.iter().map(|x| x.as_f64().expect("a number")).collect()
}

fn complex(v: &Value) -> Complex64 {
    let n = numbers(v);
    cx::c(n[0], n[1])
}

fn loss(v: &Value) -> TwoTerm {
    TwoTerm {
        k1: number(v, "k1"),
        k2: number(v, "k2"),
    }
}

fn close(got: f64, want: f64, tolerance: f64, what: &str) {
    assert!(
        (got - want).abs() <= tolerance,
        "{what}: {got} is not {want} ± {tolerance}"
    );
}

#[test]
fn terminated_lines() {
    let file = reference();
    let lines = file["lines"].as_array().unwrap();
    assert_eq!(lines.len(), 40);
    for (i, v) in lines.iter().enumerate() {
        let f = number(v, "f_hz");
        let line = LineParams::two_term(number(v, "r0"), number(v, "vf"), loss(v), f);
        let s = SMatrix::line(&line, f, number(v, "length_m"), R0);
        let load = mismatch::reflection(complex(&v["load"]), cx::real(R0));
        let seen = s.s11 + s.s12 * s.s21 * load / (1.0 - s.s22 * load);
        let z = (1.0 + seen) / (1.0 - seen) * R0;
        let want = complex(&v["input"]);
        let off = cx::abs(z - want) / cx::abs(want);
        assert!(off < 1e-9, "line {i}: {z} is not {want}");
        // power into the load over power into the line
        let passed = s.s21.norm_sqr() * (1.0 - load.norm_sqr())
            / ((1.0 - s.s22 * load).norm_sqr() * (1.0 - seen.norm_sqr()));
        let got = -10.0 * libm::log10(passed);
        close(got, number(v, "loss_db"), DB, &format!("line {i}"));
    }
}
