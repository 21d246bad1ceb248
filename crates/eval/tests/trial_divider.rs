//! What a trial found beside the examples: dividers and their branches, reversed parts, taps.

mod common;

use common::load;
use downlead_report::Reports as _;

fn found(text: &str) -> Vec<(&'static str, String)> {
    load(text)
        .diagnostics()
        .into_iter()
        .map(|d| (d.code.id, d.message))
        .collect()
}

fn divided(divider: &str, branches: &[&str], rest: &str) -> String {
    let inner: String = branches
        .iter()
        .map(|b| format!("        branch {{\n            {b}\n        }}\n"))
        .collect();
    format!(
        "chain c on 145 MHz {{\n    transmitter 100 W carrier, fm\n    divider {divider} {{\n{inner}    }}\n    {rest}\n}}\n"
    )
}

#[test]
fn branches_are_as_many_as_the_divider_has_ways() {
    let a = "antenna 3 dBi, swr 1";
    for (divider, n, right) in [
        ("2 way", 2, true),
        ("2 way", 3, false),
        ("4 way", 2, false),
        ("split 70 % 30 %", 2, true),
        ("split 70 % 30 %", 3, false),
        ("split 60 % 20 % 20 %", 2, false),
        ("tee", 2, true),
    ] {
        let text = divided(divider, &vec![a; n], "branches in phase");
        let told = found(&text).iter().any(|d| d.0 == "branch-count");
        assert_eq!(told, !right, "{divider}, {n} branches: {:?}", found(&text));
        let r = load(&text).report();
        assert_eq!(
            r.stations[0].chains[0].bands[0].complete, right,
            "{divider}, {n}"
        );
    }
}

#[test]
fn a_reversed_isolator_without_isolation_is_an_error() {
    let text = "chain r on 145 MHz {\n    transmitter 20 W ± 5 % carrier, fm\n    isolator 0.5 dB ± 0.1 dB, reversed\n    antenna 3 dBi ± 0.5 dB, swr 1.5\n    limit 30 W erp, \"lic\"\n}\n";
    let s = load(text);
    let errors = s
        .diagnostics()
        .into_iter()
        .filter(|d| d.code.id == "passed-backwards")
        .filter(|d| d.severity == downlead_base::Severity::Error)
        .count();
    assert_eq!(errors, 1);
    assert!(!s.report().stations[0].chains[0].bands[0].complete);
}

#[test]
fn a_limit_is_met_only_if_the_branches_in_phase_meet_it_too() {
    // feeds of half a wave and a whole one: the fields cancel where they are compared
    let cable = "cable q { impedance 50 ohm; velocity 0.8; loss 0.1 dB/100 m/sqrt(MHz) + 0 dB/100 m/MHz; source \"x\" }\n";
    let arm = |w: &str| {
        format!("run {w} wavelengths at 145 MHz of q, at 20 °C\n            antenna 10 dBi, swr 1")
    };
    let (a, b) = (arm("0.5"), arm("1"));
    let text = |how: &str, limit: &str| {
        format!(
            "{cable}\n{}",
            divided(
                "2 way",
                &[&a, &b],
                &format!("{how}\n    limit {limit} eirp, \"x\"")
            )
        )
    };
    let verdict = |t: &str| {
        let s = load(t);
        s.report().stations[0].chains[0].bands[0].limits[0]
            .verdict
            .word()
    };
    // in phase: 100 W times 20 are some 2 kW
    assert_eq!(verdict(&text("", "500 W")), "cannot-tell");
    assert_eq!(verdict(&text("", "2.5 kW")), "met");
    assert_eq!(verdict(&text("branches in phase", "500 W")), "not-met");
}

#[test]
fn the_share_that_is_uncertain_moves_the_others() {
    let text = divided(
        "split 70 % ± 2 % 30 %",
        &["antenna 3 dBi, swr 1", "antenna 3 dBi, swr 1"],
        "branches apart",
    );
    let r = load(&text).report();
    let b = &r.stations[0].chains[0].bands[0];
    let row = |branch: &str| {
        b.nodes
            .iter()
            .find(|n| {
                n.branch.as_deref().is_some_and(|x| x.ends_with(branch))
                    && n.kind.word() == "divider"
            })
            .and_then(|n| n.uncertainty_db)
            .expect("a row")
    };
    // by hand: ± 2 of 70 is 0.124 dB, of 30 it is 0.290 dB; U = 2/√3 of that
    assert!((row("1") - 0.1433).abs() < 0.004, "{}", row("1"));
    assert!((row("2") - 0.3344).abs() < 0.01, "{}", row("2"));
}

#[test]
fn a_reversed_coupler_shows_what_comes_back() {
    let text = |more: &str| {
        format!(
            "chain c on 145 MHz {{\n    transmitter 20 W carrier\n    coupler 20 dB coupled{more}\n    antenna 3 dBi, swr 1.5\n}}\n"
        )
    };
    let tap = |t: &str| load(t).report().stations[0].chains[0].bands[0].taps[0].power_dbm;
    assert!((tap(&text("")) - 23.01).abs() < 0.01);
    // 4 % of what goes forward after the main line's 0.044 dB, less 20 dB
    let want = 43.0103 - 0.0436 - 13.9794 - 20.0;
    assert!(
        (tap(&text(", reversed")) - want).abs() < 0.02,
        "{}",
        tap(&text(", reversed"))
    );
}

#[test]
fn a_rejection_holds_near_its_frequency_only() {
    let text = |f: &str| {
        format!(
            "station s {{\n    transmitter TX1 50 W carrier\n    duplexer DU1 {{\n        high 1.5 dB ± 0.2 dB\n        low 1.5 dB ± 0.2 dB, rejects 80 dB ± 2 dB at {f}\n    }}\n    antenna A1 2.15 dBi, swr 1\n\n    chain out on 146.9 MHz transmit {{\n        TX1\n        DU1.high\n        A1\n    }}\n}}\n"
        )
    };
    let taps = |f: &str| {
        load(&text(f)).report().stations[0].chains[0].bands[0]
            .taps
            .len()
    };
    assert_eq!(
        (taps("146.91 MHz"), taps("146.3 MHz"), taps("434 MHz")),
        (1, 0, 0)
    );
}
