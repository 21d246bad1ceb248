//! Special functions against `tests/reference/functions.json`, computed by scipy
//! (`tests/reference/functions.py`).

use downlead_physics::{radiated, uncertainty};
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
fn coverage_factor() {
    for row in rows("student") {
        let k = uncertainty::coverage_factor(number(&row, "dof"));
        close(k, number(&row, "k"), 1e-9, &row);
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
