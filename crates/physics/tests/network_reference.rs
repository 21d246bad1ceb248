//! Lines and cascades against `tests/reference/network.json`, computed by scikit-rf and numpy
//! (`tests/reference/network.py`).

use downlead_physics::mismatch;
use downlead_physics::sweep::{self, Element};
use downlead_physics::{Complex64, LineParams, SMatrix, TwoTerm, connector, cx};
use serde_json::Value;

/// Largest difference in dB; the requirement is 1e-6.
const DB: f64 = 1e-9;

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
        let (length, load) = (number(v, "length_m"), complex(&v["load"]));
        let got = mismatch::total_loss(&line, f, length, load);
        close(got, number(v, "loss_db"), DB, &format!("line {i}"));
        let z = mismatch::input_impedance(&line, f, length, load);
        let want = complex(&v["input"]);
        let off = cx::abs(z - want) / cx::abs(want);
        assert!(off < 1e-9, "line {i}: {z} is not {want}");
        // the same loss out of the scattering matrix
        let s = SMatrix::line(&line, f, length, 50.0);
        let g = mismatch::reflection(load, cx::real(50.0));
        close(-s.operating_gain(g), got, DB, &format!("line {i} by S"));
    }
}

/// An element for the sweep, and the same at one frequency as a scattering matrix.
fn element(v: &Value, f: f64, r0: f64) -> (Element, SMatrix) {
    let omega = 2.0 * core::f64::consts::PI * f;
    match v["kind"].as_str().expect("a kind") {
        "line" => {
            let (length_m, velocity_factor) = (number(v, "length_m"), number(v, "vf"));
            let (r0_ohm, loss) = (number(v, "r0"), loss(v));
            let params = LineParams::two_term(r0_ohm, velocity_factor, loss, f);
            let line = Element::Line {
                length_m,
                r0_ohm,
                velocity_factor,
                loss,
            };
            (line, SMatrix::line(&params, f, length_m, r0))
        }
        "bump" => {
            let bump = connector::Bump {
                z_ohm: number(v, "z"),
                electrical_m: number(v, "m"),
            };
            let line = Element::Line {
                length_m: bump.electrical_m,
                r0_ohm: bump.z_ohm,
                velocity_factor: 1.0,
                loss: TwoTerm { k1: 0.0, k2: 0.0 },
            };
            (line, bump.network(f, r0))
        }
        "pad" => {
            let loss_db = number(v, "db");
            let element = Element::Attenuator { loss_db };
            (element, SMatrix::attenuator(loss_db))
        }
        "reflective" => {
            let s = SMatrix::reflective(number(v, "gamma"));
            (Element::Fixed(s), s)
        }
        "shunt_c" => {
            let farad = number(v, "farad");
            let element = Element::Shunt {
                siemens: 0.0,
                farad,
            };
            (element, SMatrix::shunt(cx::c(0.0, omega * farad), r0))
        }
        "series_l" => {
            let henry = number(v, "henry");
            let element = Element::Series { ohm: 0.0, henry };
            (element, SMatrix::series(cx::c(0.0, omega * henry), r0))
        }
        "fixed" => {
            let s = SMatrix {
                s11: complex(&v["s"][0]),
                s12: complex(&v["s"][1]),
                s21: complex(&v["s"][2]),
                s22: complex(&v["s"][3]),
            };
            (Element::Fixed(s), s)
        }
        other => panic!("no element {other}"),
    }
}

fn compare(got: &SMatrix, want: &[f64], what: &str) {
    let parts = [got.s11, got.s12, got.s21, got.s22];
    for (k, z) in parts.iter().enumerate() {
        let want = cx::c(want[2 * k], want[2 * k + 1]);
        // 1e-9 dB of a transmission, however small; reflections to 1e-10 of full
        let scale = if k == 1 || k == 2 { cx::abs(want) } else { 1.0 };
        let off = cx::abs(z - want);
        assert!(off <= 1e-10 * scale, "{what}, S {k}: {z} is not {want}");
    }
}

#[test]
fn cascades() {
    let file = reference();
    let r0 = number(&file, "reference_ohm");
    let cascades = file["cascades"].as_array().unwrap();
    assert_eq!(cascades.len(), 12);
    for (i, v) in cascades.iter().enumerate() {
        let list = v["elements"].as_array().unwrap();
        let reflection = |key: &str| mismatch::reflection(complex(&v[key]), cx::real(r0));
        let (source, load) = (reflection("source"), reflection("load"));
        let f = numbers(&v["f_hz"]);
        let (transducer, operating) = (numbers(&v["transducer_db"]), numbers(&v["operating_db"]));
        let mut swept = vec![SMatrix::IDENTITY; f.len()];
        let elements: Vec<Element> = list.iter().map(|e| element(e, f[0], r0).0).collect();
        assert_eq!(sweep::sweep(&elements, &f, r0, &mut swept), f.len());
        for (k, &f) in f.iter().enumerate() {
            let what = format!("cascade {i} at {f} Hz");
            let parts: Vec<SMatrix> = list.iter().map(|e| element(e, f, r0).1).collect();
            let s = SMatrix::cascade(&parts);
            let want = numbers(&v["s"][k]);
            compare(&s, &want, &what);
            compare(&swept[k], &want, &format!("{what}, swept"));
            close(s.transducer_gain(source, load), transducer[k], DB, &what);
            close(s.operating_gain(load), operating[k], DB, &what);
        }
    }
}
