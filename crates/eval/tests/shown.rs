//! What a report says beside its totals: constants of lines, wet and mean powers, noise by stage.

mod common;

use common::report;
use downlead_report::shape::chain::BandReport;

fn only(text: &str) -> BandReport {
    report(text).stations[0].chains[0].bands[0].clone()
}

#[test]
fn a_line_says_its_impedance_and_velocity() {
    let b = only(
        "cable mine {\n    velocity 0.8\n    loss 0.4 dB/100 m/sqrt(MHz)\n    source \"x\"\n}\ncable tube {\n    construction {\n        inner 1 mm\n        outer 3.5 mm\n        permittivity 2.07\n    }\n    source \"x\"\n}\nchain c on 145 MHz {\n    transmitter 50 W\n    run 3 m of mine\n    run 3 m of tube\n    jumper 0.3 dB\n    pad 1 dB\n    load, swr 1\n}\n",
    );
    let of = |i: usize| (b.nodes[i].impedance_ohm, b.nodes[i].velocity_factor);
    // none stated: 50 ohm, which is listed
    assert_eq!(of(1), (Some(50.0), Some(0.8)));
    assert!(
        b.assumptions
            .iter()
            .any(|a| a.starts_with("50 ohm for the cable"))
    );
    // Pozar, Microwave Engineering: Z0 = 59.96/√ε ln(D/d), v = 1/√ε
    let (z0, velocity) = of(2);
    assert!((z0.unwrap() - 59.96 / 2.07_f64.sqrt() * 3.5_f64.ln()).abs() < 0.01);
    assert!((velocity.unwrap() - 1.0 / 2.07_f64.sqrt()).abs() < 1e-9);
    for i in [0, 3, 4, 5] {
        assert_eq!(of(i), (None, None), "{i}");
    }
}

#[test]
fn wet_powers_are_those_with_the_extra_loss() {
    let text = |wet: &str| {
        format!(
            "chain c on 145 MHz {{\n    transmitter 50 W\n    run 20 m of rg-213, at 15 °C{wet}\n    antenna 3 dBd\n}}\n"
        )
    };
    let b = only(&text(", wet 2 dB"));
    let wet = b.wet.unwrap();
    let less = 10f64.powf(-0.2);
    for (dry, wet) in [
        (b.antenna_w, wet.antenna_w),
        (b.erp_w, wet.erp_w),
        (b.eirp_w, wet.eirp_w),
    ] {
        assert!((wet.unwrap() / dry.unwrap() - less).abs() < 1e-12);
    }
    // the same as a chain that has the loss always
    let added = only(&text(", added 2 dB"));
    assert!((added.erp_w.unwrap() / wet.erp_w.unwrap() - 1.0).abs() < 1e-6);
    assert!(only(&text("")).wet.is_none());
}

#[test]
fn mean_powers_follow_the_share_of_the_time() {
    let text = |transmitter: &str| {
        format!(
            "chain c on 145 MHz {{\n    transmitter {transmitter}\n    pad 1 dB\n    antenna 3 dBd\n}}\n"
        )
    };
    let b = only(&text("100 W pep, duty 35 %, keyed 40 %"));
    for (mean, full) in [
        (b.antenna_mean_w, b.antenna_w),
        (b.erp_mean_w, b.erp_w),
        (b.eirp_mean_w, b.eirp_w),
    ] {
        assert!((mean.unwrap() / full.unwrap() - 0.35 * 0.4).abs() < 1e-9);
    }
    let b = only(&text("100 W"));
    assert!(b.antenna_mean_w.is_none() && b.erp_mean_w.is_none());
}

#[test]
fn the_stages_of_a_receive_chain_make_its_noise_figure() {
    let b = only(
        "chain c on 145 MHz receive {\n    antenna { gain 2 dBi; swr 1.8 }\n    run 30 m of rg-213, at 60 °C\n    connector 2 of n-pair\n    preamplifier 15 dB gain, noise figure 1.2 dB\n    run 10 m of rg-213, at -10 °C\n    receiver -119 dBm, noise figure 6 dB\n}\n",
    );
    let celsius: Vec<Option<f64>> = b.nodes.iter().map(|n| n.temperature_c).collect();
    assert_eq!(
        celsius,
        [None, Some(60.0), Some(20.0), None, Some(-10.0), None]
    );
    assert_eq!(b.nodes[3].noise_figure_db, Some(1.2));
    assert_eq!(b.nodes[5].noise_figure_db, Some(6.0));
    // Friis, Proc. IRE 1944: each stage counts with the loss so far before it
    let power = |db: f64| 10f64.powf(0.1 * db);
    let (mut factor, mut lost) = (1.0, 0.0);
    for n in &b.nodes {
        if let Some(nf) = n.noise_figure_db {
            factor += (power(nf) - 1.0) * power(lost);
        }
        lost = n.cumulative_loss_db.unwrap();
    }
    // a matched loss L at T has F = 1 + (L - 1) T/290 K (Pozar 4e, sec. 10.1); two pairs at 20 °C
    let pairs = b.nodes[2].loss_db.unwrap();
    let want = 10.0 * (1.0 + (power(pairs) - 1.0) * 293.15 / 290.0).log10();
    assert!((b.nodes[2].noise_figure_db.unwrap() - want).abs() < 1e-3);
    assert!((10.0 * factor.log10() - b.noise_figure_db.unwrap()).abs() < 1e-9);
}
