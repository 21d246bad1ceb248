//! Cables by their dimensions, against the textbook's formulas written out here: Pozar, Microwave
//! Engineering 4e, table 2.1 (impedance and resistance of a coaxial line), sec. 1.7 (surface
//! resistance).

mod common;

use downlead_eval::{CableAt, cable_at};
use downlead_station::model::Meaning;
use downlead_station::{Lets, lower};
use std::f64::consts::PI;

/// A cable of copper unless stated, 1 mm in 3.5 mm, permittivity 2.1, at 100 MHz and 20 °C.
fn at(lines: &str) -> CableAt {
    let s = common::load(&format!(
        "cable x {{\n    construction {{\n        inner 1 mm\n        outer 3.5 mm\n        permittivity 2.1\n        {lines}\n    }}\n    accuracy 5 % k 1\n    source \"a\"\n}}\n"
    ));
    let found: Vec<String> = s.diagnostics().iter().map(|d| d.message.clone()).collect();
    assert!(found.is_empty(), "{lines}: {found:?}");
    let item = &s.files()[0].tree.items()[0].item;
    let Meaning::Cable(cable) = lower(item, &Lets::default(), false).meaning else {
        panic!("{lines}: no cable")
    };
    cable_at(&cable, 100e6, 20.0).expect("a loss")
}

/// √(π f μ0 ρ), ohm.
fn surface(resistivity: f64) -> f64 {
    (PI * 100e6 * 4e-7 * PI * resistivity).sqrt()
}

const COPPER: f64 = 1.7241e-8;
const ALUMINIUM: f64 = 2.82e-8;

/// Loss in dB/m: 8.686 R/(2 Z0) with R = Rs/(π d) + Rs/(π D), and Z0 = 59.96 ln(D/d)/√ε.
fn expected(inner: f64, outer: f64, diameter: f64) -> (f64, f64) {
    let z0 = 59.958 / 2.1f64.sqrt() * (3.5 / (1.0 * diameter)).ln();
    let r = surface(inner) / (PI * 1e-3) + surface(outer) / (PI * 3.5e-3);
    (z0, 8.685_889_6 * r / (2.0 * z0))
}

fn near((z0, loss): (f64, f64), is: &CableAt) {
    assert!((is.z0 / z0 - 1.0).abs() < 1e-4, "{} {z0}", is.z0);
    assert!(
        (is.loss() / loss - 1.0).abs() < 1e-4,
        "{} {loss}",
        is.loss()
    );
}

#[test]
fn the_two_conductors_may_be_of_different_metal() {
    near(expected(COPPER, COPPER, 1.0), &at(""));
    near(
        expected(ALUMINIUM, ALUMINIUM, 1.0),
        &at("resistivity 2.82e-8 ohm-m"),
    );
    near(
        expected(COPPER, ALUMINIUM, 1.0),
        &at("outer-resistivity 2.82e-8 ohm-m"),
    );
    near(
        expected(ALUMINIUM, COPPER, 1.0),
        &at("inner-resistivity 2.82e-8 ohm-m"),
    );
    // a line about one takes precedence over a line about both
    near(
        expected(COPPER, ALUMINIUM, 1.0),
        &at("inner-resistivity 1.7241e-8 ohm-m; resistivity 2.82e-8 ohm-m"),
    );
}

/// Strands are thinner for the impedance; their resistance is that over the strands.
#[test]
fn strands_have_an_effective_diameter() {
    near(
        expected(COPPER, COPPER, 0.939),
        &at("strand-diameter 0.939"),
    );
    assert!(at("strand-diameter 0.939").z0 > at("").z0 + 2.0);
}
