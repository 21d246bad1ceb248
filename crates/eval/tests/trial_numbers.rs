//! What a trial with code of its own (numpy, 100,000 draws) found wrong: expected figures are its.

mod common;

use common::load;
use downlead_report::Reports as _;
use downlead_report::shape::chain::BandReport;

fn band(text: &str) -> BandReport {
    load(text)
        .report()
        .stations
        .remove(0)
        .chains
        .remove(0)
        .bands
        .remove(0)
}

fn apart(n: u32, gain: &str, excess: &str, limit: &str) -> BandReport {
    let branch =
        format!("        branch {{\n            antenna 6 dBi ± {gain}, swr 1\n        }}\n");
    band(&format!(
        "chain c on 145 MHz {{\n    transmitter 100 W carrier\n    divider D1 {n} way, excess {excess} {{\n{}    }}\n    branches apart\n    limit {limit} eirp carrier, \"x\"\n}}\n",
        branch.repeat(n as usize)
    ))
}

#[test]
fn of_antennas_apart_the_strongest_counts_in_every_case() {
    let b = apart(4, "0.5 dB k 1", "0.3 dB", "118 W");
    let l = &b.limits[0];
    assert!(
        (b.eirp_w.unwrap_or(0.0) / 104.6 - 1.0).abs() < 0.005,
        "{:?}",
        b.eirp_w
    );
    assert!(
        (b.uncertainty_db.unwrap() - 0.703).abs() < 0.03,
        "{}",
        b.uncertainty_db.unwrap()
    );
    assert!(
        (l.probability_exceeded - 0.0736).abs() < 0.02,
        "{}",
        l.probability_exceeded
    );
    assert_eq!(l.verdict.word(), "cannot-tell");
}

const C52: &str = "cable c52 {\n    impedance 52 ohm\n    velocity 0.66 ± 0.02\n    loss 0.5 dB/100 m/sqrt(MHz) + 0.003 dB/100 m/MHz\n    accuracy 5 %\n    source \"t\"\n}\n";

fn two_feeds(second: &str) -> BandReport {
    band(&format!(
        "{C52}chain c on 144 MHz {{\n    transmitter 50 W ± 5 % carrier\n    divider D1 2 way, excess 0.2 dB ± 0.1 dB {{\n        branch {{\n            run 6.0 m ± 0.05 m of c52, at 20 °C\n            antenna {{ gain 9 dBi ± 0.5 dB; impedance 45 ohm }}\n        }}\n        branch {{\n            run {second} m ± 0.05 m of c52, at 20 °C\n            antenna {{ gain 9 dBi ± 0.5 dB; impedance 55 ohm }}\n        }}\n    }}\n}}\n"
    ))
}

#[test]
fn the_range_of_the_loss_of_branches_is_one_of_losses() {
    for (second, low, high) in [
        ("6.6", 0.6126, 0.6266),
        ("6.5", 0.6075, 0.6250),
        ("6.2", 0.5990, 0.6165),
    ] {
        let b = two_feeds(second);
        let [have_low, have_high] = b.loss_worst_db.expect("open phases");
        assert!(
            have_low <= low + 0.004 && have_high >= high - 0.004,
            "{second}: {have_low} to {have_high}"
        );
        assert!(
            have_low > low - 0.03 && have_high < high + 0.03,
            "{second}: {have_low} to {have_high}"
        );
    }
}

#[test]
fn the_interval_of_added_fields_is_not_cut() {
    // feeds of 6.0 and 6.5 m: the fields nearly cancel, and may add to much more
    let b = two_feeds("6.5");
    let [low, high] = b.interval_db.expect("uncertain");
    assert!((high - 3.107).abs() < 0.25, "{high}");
    assert!((low + 4.54).abs() < 0.5, "{low}");
}

#[test]
fn the_interval_behind_an_amplifier_is_not_cut() {
    let b = band(
        "chain c on 145 MHz receive {\n    antenna 2 dBi, swr 1\n    pad 2 dB ± 0.1 dB\n    preamplifier 18 dB ± 0.5 dB gain, noise figure 1 dB ± 0.3 dB\n    receiver -119 dBm for 12 dB sinad, noise figure 6 dB\n}\n",
    );
    let [low, high] = b.interval_db.expect("uncertain");
    assert!((low + high).abs() < 0.02, "{low} {high}");
    assert!(b.noise_figure_uncertainty_db.is_some_and(|u| u > 0.1));
    assert!(b.sensitivity_uncertainty_db.is_some_and(|u| u > 0.1));
}

#[test]
fn a_mismatch_after_a_preamplifier_counts_there() {
    let text = |z: &str| {
        format!(
            "cable cx {{\n    impedance {z} ohm\n    velocity 0.83\n    loss 0.0007 dB/100 m/sqrt(MHz) + 0 dB/100 m/MHz\n    source \"t\"\n}}\nchain p on 432 MHz receive {{\n    antenna {{ gain 8 dBi; impedance 50 ohm }}\n    preamplifier 18 dB gain, noise figure 0.9 dB\n    run 12.01 m of cx, at 20 °C\n    receiver -119 dBm for 12 dB sinad, noise figure 0.001 dB\n}}\n"
        )
    };
    for z in ["50", "75"] {
        let nf = band(&text(z)).noise_figure_db.unwrap_or(0.0);
        assert!((nf - 0.900).abs() < 0.003, "{z}: {nf}");
    }
}

#[test]
fn a_junction_without_loss_has_no_heat() {
    let b = band(&format!(
        "{C52}chain c on 144 MHz {{\n    transmitter 50 W carrier\n    run 1.3 m ± 0.3 m of c52, at 20 °C\n    divider T2 tee {{\n        branch {{\n            antenna {{ gain 3 dBi; impedance 150 ohm }}\n        }}\n        branch {{\n            antenna {{ gain 3 dBi; impedance 80 ohm with reactance 30 ohm }}\n        }}\n    }}\n    branches in phase\n}}\n"
    ));
    let row = b.nodes.iter().find(|n| n.part == "T2").expect("a row");
    assert!(
        row.heat_w.unwrap_or(0.0) < 1e-9 && row.loss_db.unwrap_or(9.0).abs() < 1e-9,
        "{row:?}"
    );
}
