//! The cascade of `tests/reference/sweep_chain.json` and the grid it is swept over, shared by
//! the benchmark and the example.

use downlead_physics::sweep::Element;
use downlead_physics::{SMatrix, TwoTerm};
use serde_json::Value;

/// Elements and reference impedance in ohm.
pub(crate) fn chain() -> Result<(Vec<Element>, f64), String> {
    let text = include_str!("../../../../tests/reference/sweep_chain.json");
    let file: Value = serde_json::from_str(text).map_err(|e| e.to_string())?;
    let list = file["elements"].as_array().ok_or("no elements")?;
    let elements = list.iter().map(element).collect::<Result<_, _>>()?;
    Ok((elements, number(&file, "reference_ohm")?))
}

/// `points` frequencies from 100 to 500 MHz, evenly spaced; hertz.
pub(crate) fn grid(points: u32) -> Vec<f64> {
    let step = 400e6 / f64::from(points.max(2) - 1);
    (0..points).map(|i| 100e6 + f64::from(i) * step).collect()
}

fn number(v: &Value, key: &str) -> Result<f64, String> {
    v[key].as_f64().ok_or_else(|| format!("no {key} in {v}"))
}

fn element(v: &Value) -> Result<Element, String> {
    Ok(match v["kind"].as_str() {
        Some("line") => Element::Line {
            length_m: number(v, "length_m")?,
            r0_ohm: number(v, "r0")?,
            velocity_factor: number(v, "vf")?,
            loss: TwoTerm {
                k1: number(v, "k1")?,
                k2: number(v, "k2")?,
            },
        },
        Some("pad") => Element::Attenuator {
            loss_db: number(v, "db")?,
        },
        Some("sqrt") => Element::SqrtLoss {
            k_db: number(v, "k_db")?,
        },
        Some("series") => Element::Series {
            ohm: number(v, "ohm")?,
            henry: number(v, "henry")?,
        },
        Some("shunt") => Element::Shunt {
            siemens: number(v, "siemens")?,
            farad: number(v, "farad")?,
        },
        Some("fixed") => Element::Fixed(SMatrix::device(
            number(v, "loss_db")?,
            number(v, "s11")?,
            number(v, "s22")?,
        )),
        _ => return Err(format!("no element {v}")),
    })
}
