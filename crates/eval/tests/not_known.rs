//! What could not be computed is in no output: no loss of 0 dB, no SWR of 1, no default that "is
//! not stated" for a figure that is there and could not be read.

mod common;

use common::{MAIN, load, load_from};
use downlead_report::Reports as _;
use downlead_report::shape::chain::BandReport;
use downlead_testkit::Files;

fn only(text: &str) -> BandReport {
    let r = load(text).report();
    r.stations[0].chains[0].bands[0].clone()
}

/// A chain whose line `part` stands between parts that are known.
fn chain(part: &str) -> String {
    format!(
        "chain c on 145 MHz {{\n    transmitter 50 W carrier, fm\n    pad 1 dB ± 0.1 dB, swr 1\n    {part}\n    pad 2 dB, swr 1\n    antenna 3 dBd, swr 1.4\n    limit 30 W erp carrier, \"x\"\n    limit 60 W output carrier, \"x\"\n}}\n"
    )
}

fn no_totals(b: &BandReport, what: &str) {
    assert!(!b.complete, "{what}");
    let totals = [
        b.total_loss_db,
        b.antenna_w,
        b.antenna_mean_w,
        b.erp_w,
        b.eirp_w,
        b.uncertainty_db,
        b.transmitter_swr,
        b.transmitter_swr_worst,
        b.loss_floor_db,
        b.wet_extra_db,
    ];
    assert!(totals.iter().all(Option::is_none), "{what}: {totals:?}");
    assert!(b.interval_db.is_none() && b.loss_worst_db.is_none());
    assert!(b.method.is_none() && b.budget.is_empty(), "{what}");
    assert!(
        b.limits.iter().all(|l| l.quantity.word() == "output"),
        "{what}"
    );
}

#[test]
fn an_unknown_part_leaves_no_totals() {
    for part in [
        "run 30 m of nope",
        "connector 2 of nope",
        "filter of nope",
        "filter from \"nope.s2p\"",
        "run 30 m of",
        "pad 3 dB ± ± (",
        "# @",
    ] {
        let b = only(&chain(part));
        no_totals(&b, part);
        // what goes forward is known up to there, what comes back from there on
        let forward: Vec<Option<f64>> = b.nodes.iter().map(|n| n.forward_w.or(n.power_w)).collect();
        assert_eq!(forward[0], Some(50.0), "{part}");
        // 50 W less 1 dB
        assert!((forward[1].unwrap() - 39.72).abs() < 0.01, "{part}");
        assert!(
            forward[2..].iter().all(Option::is_none),
            "{part}: {forward:?}"
        );
        assert!(b.nodes.iter().all(|n| n.power_w.is_none()), "{part}");
        assert!(
            b.nodes.iter().all(|n| n.cumulative_loss_db.is_none()),
            "{part}"
        );
        assert!(
            b.nodes[0].swr.is_none() && b.nodes[1].swr.is_none(),
            "{part}"
        );
        let end = b.nodes.last().unwrap().swr.unwrap();
        assert!((end - 1.4).abs() < 1e-9, "{part}");
        assert_eq!(b.nodes[0].loss_db, None, "{part}");
        assert_eq!(b.nodes[1].loss_db, Some(1.0), "{part}");
    }
}

#[test]
fn what_goes_forward_is_judged_up_to_the_unknown_part_and_no_further() {
    let text = |before: &str, after: &str| {
        format!(
            "instrument W1 {{\n    accuracy 2 % of reading\n}}\nchain c on 145 MHz {{\n    transmitter 50 W ± 1 % carrier, fm\n    pad 1 dB ± 0.1 dB\n    {before}\n    run 30 m of nope\n    {after}\n    antenna 3 dBd, swr 1.4\n}}\n"
        )
    };
    let read = |w: &str| format!("read {w}, 2026-01-01 with W1 by QY2TEC");
    let b = only(&text(&read("39.7 W forward"), &read("10 W forward")));
    assert_eq!(b.readings.len(), 1);
    assert_eq!(b.readings[0].verdict.word(), "agrees");
    let b = only(&text(&read("swr 1.5"), "expect 20 W"));
    assert!(b.readings.is_empty());
    let b = only(&text(
        "limit 30 W output carrier, \"x\"",
        "limit 30 W output carrier, \"x\"",
    ));
    assert_eq!(b.limits.len(), 1);
    assert_eq!(b.limits[0].verdict.word(), "not-met");
    // a rating is compared with no power that leaves something out
    let rated = "filter { loss 1 dB; rating 1 W }";
    let found = |text: &str| {
        let all = load(text).diagnostics();
        all.iter().any(|d| d.code.id == "rating-exceeded")
    };
    assert!(!found(&text("", rated)));
    // after a part that sends out again what comes back, not even that is known
    for part in [
        "filter { loss 1 dB; swr 1.5 }",
        "run 3 m of rg-59",
        "tuner 0.2 dB",
        "balun 0.2 dB, ratio 4:1",
    ] {
        let b = only(&text(part, ""));
        assert!(b.nodes[2].forward_w.is_none(), "{part}: {:?}", b.nodes[2]);
    }
}

#[test]
fn a_branch_does_not_know_of_another() {
    let b = only(
        "chain c on 145 MHz {\n    transmitter 50 W carrier, fm\n    pad 1 dB\n    divider DV1 2 way {\n        branch up {\n            pad 1 dB\n            antenna 3 dBd, swr 1.4\n        }\n        branch down {\n            run 3 m of nope\n            antenna 3 dBd\n        }\n    }\n}\n",
    );
    no_totals(&b, "a branch");
    let up = b
        .nodes
        .iter()
        .find(|n| n.kind.word() == "pad" && n.branch.is_some())
        .unwrap();
    // 50 W less 1 + 3.01 + 1 dB goes forward there, less what the SWR sends back
    let net = 50.0 * 10f64.powf(-0.501_03) * (1.0 - (0.4_f64 / 2.4).powi(2));
    assert!((up.power_w.unwrap() - net).abs() < 0.01, "{up:?}");
    let down = b
        .nodes
        .iter()
        .filter(|n| n.branch.as_deref() == Some("DV1/down"));
    assert!(down.clone().all(|n| n.power_w.is_none()), "{down:?}");
}

#[test]
fn what_comes_back_from_a_file_that_fails_is_not_known() {
    let text = "chain c on 145 MHz {\n    transmitter 50 W carrier, fm\n    pad 1 dB\n    antenna 3 dBd, from \"nope.s1p\"\n}\n";
    let b = only(text);
    no_totals(&b, "a file");
    assert!(b.nodes.iter().all(|n| n.swr.is_none()));
    // with a tuner the transmitter sees a match, whatever the antenna is
    let b = only(&text.replace("pad 1 dB", "tuner 0.2 dB\n    pad 1 dB"));
    assert_eq!(b.transmitter_swr, Some(1.0));
    assert_eq!(b.total_loss_db, None);
    let receive = "chain c on 145 MHz receive {\n    antenna 3 dBd, from \"nope.s1p\"\n    pad 1 dB\n    receiver -119 dBm\n}\n";
    let b = only(receive);
    no_totals(&b, "on receive");
    assert_eq!(b.nodes[0].loss_db, None);
    assert!(b.sensitivity_dbm.is_none());
}

#[test]
fn a_gain_that_is_missing_leaves_the_power() {
    for antenna in [
        "antenna A1 {\n        gain 3 dBd on 70cm\n    }",
        "antenna 3 dBx",
        "antenna {\n        gain 3 W\n    }",
        "antenna {\n        directivity 5 dBi\n        efficiency 90 W\n    }",
        "antenna {\n        gian 3 dBi\n    }",
    ] {
        let b = only(&format!(
            "band 70cm 435 MHz\nchain c on 145 MHz {{\n    transmitter 50 W carrier, fm\n    pad 1 dB\n    {antenna}\n    limit 30 W erp carrier, \"x\"\n}}\n"
        ));
        assert!(!b.complete, "{antenna}");
        assert!((b.total_loss_db.unwrap() - 1.0).abs() < 1e-9, "{antenna}");
        assert!(
            b.antenna_w.is_some() && b.erp_w.is_none() && b.eirp_w.is_none(),
            "{antenna}"
        );
        assert!(b.limits.is_empty(), "{antenna}");
        let s = load(&format!(
            "chain c on 145 MHz {{\n    transmitter 50 W carrier, fm\n    {antenna}\n    limit 30 W erp carrier, \"x\"\n}}\n"
        ));
        let said = s.diagnostics();
        assert!(
            said.iter().all(|d| !d.message.contains("has no gain, so")),
            "{said:#?}"
        );
    }
}

/// A figure that is there but could not be read costs the result of the chains that need it, and
/// no sentence says that it was not stated.
#[test]
fn no_default_stands_in_for_a_broken_figure() {
    let cable = |line: &str| {
        format!(
            "cable odd {{\n    impedance 50 ohm\n    velocity 0.66\n    loss 0.4 dB/100 m/sqrt(MHz) + 0.001 dB/100 m/MHz\n    accuracy 5 %\n    source \"x\"\n}}\n{}",
            chain("run 30 m of odd, at 15 °C")
        )
        .replacen(&format!("    {}", line.split_once(" -> ").unwrap().0), &format!("    {}", line.split_once(" -> ").unwrap().1), 1)
    };
    let texts = [
        cable("impedance 50 ohm -> impedance 0 ohm"),
        cable("impedance 50 ohm -> impedance 50 \u{460}"),
        cable("impedance 50 ohm -> impedence 50 ohm"),
        cable("velocity 0.66 -> velocity 1.66"),
        cable("accuracy 5 % -> accuracy 5 W"),
        cable(
            "loss 0.4 dB/100 m/sqrt(MHz) + 0.001 dB/100 m/MHz -> loss 0.4 dB/100 m/sqrt(MHz) + 0.001 dB/100 m/MHz, at 20 C",
        ),
        chain("run 30 m of rg-213, at -300 °C"),
        chain("run 30 m of rg-213, at 20 °C * 2"),
        chain("run 30 m of rg-213, at 20 C"),
        chain("run 30 m of rg-213, att 20 °C"),
        chain("run 30 m of rg-213, nowhere"),
        chain("run 30 m of rg-213, added 3 W"),
        chain("run 30 m of rg-213, swr 0.5"),
        chain("filter 1 dB, return-loss -20 dB"),
        chain("filter 1 dB, swr 1.3 at 145 C"),
        chain("filter {\n        loss 1 W\n    }"),
        chain("filter {\n        loss 1 dB\n        srw 1.3\n    }"),
        chain("isolator 1 dB, isolation 20 W"),
        chain("balun 1 dB, ratio 0"),
        chain("coupler 20 W coupled"),
        chain("pad 2 dB, swr 1").replace("swr 1.4", "swr 0.4"),
        chain("pad 2 dB, swr 1").replace("swr 1.4", "srw 1.4"),
        chain("pad 2 dB, swr 1").replace("swr 1.4", "from"),
        chain("pad 2 dB, swr 1").replace(
            "antenna 3 dBd, swr 1.4",
            "antenna 3 dBd {\n        impedance 0 ohm\n    }",
        ),
        chain("pad 2 dB, swr 1").replace(
            "antenna 3 dBd, swr 1.4",
            "antenna 3 dBd {\n        impedance 50 ohm with reactance 3 W\n    }",
        ),
        format!(
            "connector odd {{\n    family n\n    loss 0.05 W at 1 GHz\n    source \"x\"\n}}\n{}",
            chain("connector 2 of odd")
        ),
        format!(
            "connector odd {{\n    family n\n    loss 0.05 dB at 1 GHx\n    source \"x\"\n}}\n{}",
            chain("connector 2 of odd")
        ),
        format!(
            "device odd {{\n    kind filter\n    loss 1 dB\n    return-loss 20 W\n    source \"x\"\n}}\n{}",
            chain("filter of odd")
        ),
    ];
    for text in &texts {
        let s = load(text);
        let said = s.diagnostics();
        assert!(
            said.iter()
                .any(|d| d.severity == downlead_base::Severity::Error),
            "{text}"
        );
        let b = s.report().stations[0].chains[0].bands[0].clone();
        no_totals(&b, text);
        for word in [
            "no impedance is stated",
            "no place or temperature",
            "no SWR or impedance",
            "no return loss",
            "is exact: no accuracy",
        ] {
            assert!(
                !b.assumptions.iter().any(|a| a.contains(word)),
                "{word}: {text}"
            );
        }
        let connectors = text.contains("connector 2");
        let lossless = |a: &String| connectors && a.contains("no connectors are stated");
        assert!(!b.assumptions.iter().any(lossless), "{text}");
    }
}

#[test]
fn a_place_whose_temperature_is_broken_counts_where_it_matters() {
    let station = |part: &str| {
        format!(
            "station s {{\n    place mast {{\n        temperature 20 C\n    }}\n    {part}, mast\n    transmitter TX 50 W carrier, fm\n    antenna A1 3 dBd\n    chain c on 145 MHz {{\n        TX\n        X1\n        A1\n    }}\n}}\n"
        )
    };
    no_totals(&only(&station("run X1 3 m of rg-213")), "a run");
    assert!(only(&station("filter X1 1 dB")).complete);
}

#[test]
fn a_mode_that_is_broken_leaves_mean_powers_out() {
    for mode in ["fmm", "duty 30 W", "keyed 50 m"] {
        let text = format!(
            "chain c on 145 MHz {{\n    transmitter 50 W carrier, {mode}\n    pad {{\n        loss 1 dB\n        rating 60 W\n    }}\n    antenna 3 dBd\n    limit 30 W erp mean, \"x\"\n    limit 30 W erp carrier, \"x\"\n}}\n"
        );
        let b = only(&text);
        assert!(b.complete && b.antenna_w.is_some(), "{mode}");
        assert!(b.antenna_mean_w.is_none(), "{mode}");
        assert_eq!(b.limits.len(), 1, "{mode}");
        for word in ["no mode is stated", "no share is stated"] {
            assert!(
                !b.assumptions.iter().any(|a| a.contains(word)),
                "{mode}: {word}"
            );
        }
    }
}

/// A power read with a meter of which nothing can be read is no exact power.
#[test]
fn a_meter_that_is_broken_leaves_the_power_out() {
    for (accuracy, within) in [
        ("accuracy 5 W of reading", false),
        ("accuracy 5 %", false),
        ("acuracy 5 % of reading", false),
        ("accuracy 5 % of reading", true),
    ] {
        let text = format!(
            "instrument W1 {{\n    {accuracy}\n}}\nchain c on 145 MHz {{\n    transmitter 50 W carrier, fm, read 2026-01-01 with W1 by QY2TEC\n    pad 1 dB\n    read 30 W forward, 2026-01-01 with W1 by QY2TEC\n    antenna 3 dBd\n    limit 30 W erp carrier, \"x\"\n}}\n"
        );
        let b = only(&text);
        assert_eq!(b.complete, within, "{accuracy}");
        assert_eq!(b.erp_w.is_some(), within, "{accuracy}");
        assert_eq!(
            b.limits.len() + b.readings.len(),
            if within { 2 } else { 0 }
        );
        assert!(
            !b.assumptions
                .iter()
                .any(|a| a.contains("no tolerance or instrument"))
        );
        // what the chain loses does not depend on it
        assert!((b.total_loss_db.unwrap() - 1.0).abs() < 1e-9);
    }
}

/// An amplifier that states no noise figure is no part without noise.
#[test]
fn without_an_amplifiers_noise_figure_the_systems_is_not_known() {
    let text = |noise: &str| {
        format!(
            "chain c on 145 MHz receive {{\n    antenna 3 dBd\n    pad 2 dB\n    preamplifier 13 dB gain{noise}\n    receiver -119 dBm, noise figure 6 dB\n}}\n"
        )
    };
    let s = load(&text(""));
    let said = s.diagnostics();
    let about = said.iter().find(|d| d.message.contains("no noise figure"));
    assert_eq!(
        about.map(|d| d.severity),
        Some(downlead_base::Severity::Warning)
    );
    let b = only(&text(""));
    assert!(b.complete && b.noise_figure_db.is_none() && b.sensitivity_dbm.is_none());
    // Friis, by hand: F = 1.5849 × 1.2589 + 1.5849 (3.9811 − 1)/19.953 = 2.232, at 290 K; the pad is
    // taken to be at 20 °C, 1.1 % warmer
    let b = only(&text(", noise figure 1 dB"));
    assert!(
        (b.noise_figure_db.unwrap() - 3.486).abs() < 0.02,
        "{:?}",
        b.noise_figure_db
    );
    assert!(b.sensitivity_dbm.is_some());
}

/// Without a broken line nothing of the above is left out.
#[test]
fn what_is_known_is_there() {
    for part in [
        "run 30 m of rg-213, at 15 °C",
        "filter { loss 1 dB; swr 1.3 }",
        "connector 2 of n-pair",
    ] {
        let s = load_from(&Files::default().with(MAIN, chain(part)));
        let b = s.report().stations[0].chains[0].bands[0].clone();
        assert!(b.complete && b.limits.len() == 2, "{part}");
        assert!(b.total_loss_db.is_some() && b.transmitter_swr.is_some());
        assert!(b.uncertainty_db.is_some() && b.method.is_some());
        assert!(
            b.nodes
                .iter()
                .all(|n| n.power_w.is_some() && n.swr.is_some())
        );
    }
}
