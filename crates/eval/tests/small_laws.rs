//! Rules that decide on one figure each: both sides of every limit, with the figures computed by hand.

mod common;

use common::load;
use downlead_base::Diagnostic;
use downlead_eval::Snapshot;
use downlead_report::Reports as _;
use downlead_report::shape::chain::BandReport;

fn found(text: &str, code: &str) -> Vec<Diagnostic> {
    let mut all = load(text).diagnostics();
    all.retain(|d| d.code.id == code);
    all
}

fn band(s: &Snapshot) -> BandReport {
    s.report().stations[0].chains[0].bands[0].clone()
}

fn near(got: f64, want: f64, within: f64) {
    assert!((got - want).abs() <= within, "{got}, not {want}");
}

#[test]
fn an_antenna_is_rated_by_its_mean_power() {
    let exceeded = |power: &str, rating: &str| {
        let text = format!(
            "chain c on 145 MHz {{\n    transmitter {power}\n    antenna {{ gain 2 dBi; rating {rating} }}\n}}\n"
        );
        let all = found(&text, "rating-exceeded");
        all.first()
            .map(|d| (d.message.clone(), d.primary.message.clone()))
    };
    assert_eq!(exceeded("100 W carrier, fm", "100 W"), None);
    let (message, label) = exceeded("100 W carrier, fm", "99 W").expect("1 W too much");
    assert!(message.contains("100 W mean power"), "{message}");
    assert!(
        message.contains("good for 99.0 W") && label == "too much",
        "{message} {label}"
    );
    // telephony by single sideband has far less mean power than peak power
    assert_eq!(exceeded("100 W pep, ssb", "60 W"), None);
    assert!(exceeded("100 W pep, ssb", "5 W").is_some());
}

#[test]
fn an_amplifier_may_reflect_and_amplify() {
    let with = |part: &str| {
        let text = format!(
            "chain c on 145 MHz {{\n    transmitter 10 W carrier, fm\n    {part}\n    antenna 2 dBi\n}}\n"
        );
        found(&text, "not-passive").len()
    };
    // |Γ|² = 1/9 of SWR 2 and 0.2 dB of loss (95.5 %) are more than all power: no filter does that
    assert_eq!(with("filter { loss 0.2 dB; swr 2 }"), 1);
    assert_eq!(with("filter { loss 1 dB; swr 2 }"), 0);
    assert_eq!(with("amplifier { gain 10 dB; swr 2 }"), 0);
    assert_eq!(with("amplifier { gain 0.1 dB; swr 3 }"), 0);
}

#[test]
fn a_tag_of_another_number_is_offered_where_only_one_can_be_meant() {
    let help = |parts: &str, used: &str| {
        let text = format!(
            "station s {{\n    transmitter TX1 10 W carrier, fm\n{parts}    antenna A1 2 dBi\n    chain c on 145 MHz transmit {{\n        TX1\n{used}        A1\n    }}\n}}\n"
        );
        let all = found(&text, "unknown-part");
        assert_eq!(all.len(), 1, "{text}");
        all[0].help.join(" ")
    };
    let one = "    run LINE10 20 m of rg-213\n";
    let two = "    run LINE10 20 m of rg-213\n    run LINE20 20 m of rg-213\n";
    assert!(help(one, "        LINE345\n").contains("Did you mean `LINE10`?"));
    // of two either may be meant, and one that the chain passes already is not
    assert!(!help(two, "        LINE345\n").contains("Did you mean"));
    assert!(!help(one, "        LINE10\n        LINE345\n").contains("Did you mean"));
    // two of them, one of which is passed already
    assert!(!help(two, "        LINE10\n        LINE345\n").contains("Did you mean"));
    assert!(!help("    run CABLE10 20 m of rg-213\n", "        LINE345\n").contains("CABLE10"));
}

#[test]
fn the_tighter_of_two_clauses_is_named() {
    let message = |a: &str, b: &str| {
        let text = format!(
            "rules r {{\n    dated 2026-01-15\n    limit {a} output pep, \"3.1\", confidence high\n    limit {b} output pep, \"3.2\", confidence high\n}}\nstation hill {{\n    under r\n    chain out on 145.3 MHz {{\n        transmitter 5 W carrier, fm\n        antenna 4.5 dBi ± 0.5 dB\n    }}\n}}\n"
        );
        let all = found(&text, "rules-overlap");
        all.first().map(|d| d.message.clone())
    };
    let first = message("10 W", "100 W").expect("they differ");
    assert!(first.contains("3.1 is the tighter"), "{first}");
    let second = message("100 W", "10 W").expect("they differ");
    assert!(second.contains("3.2 is the tighter"), "{second}");
    assert_eq!(message("10 W", "10 W"), None);
}

/// One chain with a reading before an antenna whose SWR has a ±, and the reading's ± of the result.
fn read(what: &str, antenna: &str) -> (f64, f64) {
    let text = format!(
        "instrument W1 {{\n    accuracy 2 % of reading\n}}\nchain c on 145 MHz {{\n    transmitter 50 W ± 5 % carrier, fm\n    pad 1 dB ± 0.1 dB, swr 1\n    read {what}, 2026-01-01 with W1 by QY2TEC\n    antenna {{ gain 2 dBi; {antenna} }}\n}}\n"
    );
    let b = band(&load(&text));
    assert_eq!(b.readings.len(), 1, "{text}");
    let r = &b.readings[0];
    (r.expected_w.expect("a power"), r.uncertainty_db)
}

#[test]
fn a_net_power_has_the_uncertainty_of_the_reflection() {
    // U = 2 √((4.343 · 5 %)² + 0.1² + (4.343 · 2 %)²)/√3
    let flat = 3f64.sqrt();
    let (power, pad, meter) = (4.342_94 * 0.05 / flat, 0.1 / flat, 4.342_94 * 0.02 / flat);
    let forward = 2.0 * (power * power + pad * pad + meter * meter).sqrt();
    let watts = 50.0 * 10f64.powf(-0.1);
    let antenna = "swr 3 ± 0.3";
    let (want, u) = read("39 W forward", antenna);
    near(want, watts, 0.01);
    near(u, forward, 0.005);
    // of an SWR s a share 4 s/(1 + s)² is taken, which changes by (1 − s)/(s (1 + s)) ds of itself
    let (want, u) = read("30 W net", antenna);
    near(want, watts * 0.75, 0.3);
    let net = 4.342_94 * 2.0 / (3.0 * 4.0) * 0.3 / flat;
    near(u, (forward * forward + 4.0 * net * net).sqrt(), 0.01);
    // without a reflection both are alike
    let (_, u) = read("39 W net", "swr 1");
    near(u, forward, 0.005);
}

#[test]
fn a_limit_that_repeats_its_clause_does_not_disagree() {
    let found = |limit: &str| {
        let text = format!(
            "licence tso-14-0093 {{\n    limit 30 W erp carrier on 2m, \"clause 4\"\n}}\nband 2m 145.3 MHz\nstation hill {{\n    under tso-14-0093\n    chain out on 2m {{\n        transmitter 5 W ± 5 % carrier, fm\n        run 28 m of half-inch-foam\n        antenna 4.5 dBi ± 0.5 dB\n        limit {limit}\n    }}\n}}\n"
        );
        found(&text, "limit-disagrees").len()
    };
    assert_eq!(found("25 W erp carrier, \"TSO 14-0093 clause 4\""), 1);
    assert_eq!(found("30 W erp carrier, \"TSO 14-0093 clause 4\""), 0);
    assert_eq!(found("30.001 W erp carrier, \"TSO 14-0093 clause 4\""), 1);
    // another clause, or another quantity
    assert_eq!(found("25 W erp carrier, \"TSO 14-0093 clause 41\""), 0);
    assert_eq!(found("25 W output carrier, \"TSO 14-0093 clause 4\""), 0);
}

#[test]
fn exact_figures_have_no_interval() {
    let text = |pad: &str| {
        format!(
            "chain c on 145 MHz {{\n    transmitter 100 W carrier\n    pad {pad}\n    antenna 2 dBi\n}}\n"
        )
    };
    let of = |pad: &str| {
        let s = load(&text(pad));
        let items = s.scopes().iter().flat_map(downlead_eval::Scope::items);
        let mut bands = items.flat_map(|i| &i.2.chains).flat_map(|c| &c.bands);
        let b = bands.next().expect("a band");
        (b.uncertainty_db, b.interval_db)
    };
    assert_eq!(of("3 dB"), (Some(0.0), None));
    let (u, interval) = of("3 dB ± 0.3 dB");
    near(u.expect("known"), 2.0 * 0.3 / 3f64.sqrt(), 1e-6);
    // 2 u is more than the ± of 0.3 dB, which no loss falls below: the interval ends there
    let [low, high] = interval.expect("an interval");
    near(high - low, 0.3 + 2.0 * 0.3 / 3f64.sqrt(), 1e-6);
}

#[test]
fn one_finding_of_several_bands_is_said_once() {
    let text = "chain c on 145 MHz, 146 MHz, 147 MHz {\n    transmitter 100 W carrier\n    run 30 m of nope\n    antenna 2 dBi\n}\n";
    assert_eq!(found(text, "unknown-cable").len(), 1);
}

/// A receiver on 145 MHz beside a transmitter on this frequency.
fn heard(mhz: &str) -> Vec<Diagnostic> {
    found(
        &format!(
            "station s {{\n    transmitter TX1 10 W carrier, fm\n    receiver RX1 {{ sensitivity -120 dBm for 12 dB sinad }}\n    antenna A1 2 dBi\n    antenna A2 2 dBi\n    chain out on {mhz} MHz transmit {{\n        TX1\n        A1\n    }}\n    chain in on 145 MHz receive {{\n        A2\n        RX1\n    }}\n}}\n"
        ),
        "frequency-plan",
    )
}

#[test]
fn harmonics_of_every_order_are_pointed_out() {
    for (mhz, n) in [("72.5", 2), ("36.25", 4), ("29", 5)] {
        let all = heard(mhz);
        assert_eq!(all.len(), 1, "{mhz}: {all:#?}");
        assert!(
            all[0].message.contains(&format!("{n} TX1")),
            "{}",
            all[0].message
        );
    }
    assert!(heard("29.1").is_empty());
}

#[test]
fn a_cut_in_wavelengths_needs_no_velocity() {
    let exact = |run: &str| {
        let text = format!(
            "cable k {{ impedance 75 ohm ± 1 ohm; velocity 0.66; loss 0.5 dB/100 m/sqrt(MHz); source \"x\" }}\nchain c on 145 MHz {{\n    transmitter 100 W carrier\n    run R {run} of k, at 20 °C\n    antenna {{ gain 2 dBi; impedance 120 ohm }}\n}}\n"
        );
        let r = load(&text).report();
        let json = serde_json::to_string(&r).expect("JSON");
        json.contains("the velocity factor of the cable of")
    };
    // where waves stand an exact velocity matters to a length in metres, and none to one in waves
    assert!(exact("3 m"));
    assert!(!exact("1.5 wavelengths at 145 MHz"));
}

#[test]
fn an_swr_that_is_read_has_the_reflection_of_its_whole_uncertainty() {
    // the antenna of SWR 1.5 is read as 1.9 ± 0.3: 1.6 to 2.2, and |Γ| from 0.231 to 0.375 about 0.310;
    // the difference of 0.11 is within ± 0.065 twice, not once
    let verdict = |swr: &str, pm: &str| {
        let text = format!(
            "chain c on 145 MHz {{\n    transmitter 50 W carrier, fm\n    read swr {swr} ± {pm}, 2026-01-01 by QY2TEC\n    antenna {{ gain 2 dBi; swr 1.5 ± 0.001 }}\n}}\n"
        );
        let b = band(&load(&text));
        assert_eq!(b.readings.len(), 1, "{:?}", load(&text).diagnostics());
        b.readings[0].verdict.word()
    };
    assert_eq!(verdict("1.5", "0.1"), "agrees");
    assert_eq!(verdict("1.9", "0.1"), "differs");
    assert_ne!(verdict("1.9", "0.5"), "differs");
}

#[test]
fn a_reflected_power_has_the_reflection_of_half_of_its_uncertainty_in_decibels() {
    // SWR 1.5 sends back 0.04 of 50 W; |Γ| is the root of the share, and changes by half of its dB
    let read = |pm: f64| {
        let text = format!(
            "chain c on 145 MHz {{\n    transmitter 50 W carrier, fm\n    read 6 W ± {pm} % reflected, 2026-01-01 by QY2TEC\n    antenna {{ gain 2 dBi; swr 1.5 ± 0.001 }}\n}}\n"
        );
        let b = band(&load(&text));
        assert_eq!(b.readings.len(), 1, "{:?}", load(&text).diagnostics());
        let r = b.readings[0].clone();
        near(r.difference_db, 10.0 * (2.0_f64 / 6.0).log10(), 1e-9);
        // what may be added to |Γ| = 0.2
        (
            0.2 * (10f64.powf(r.uncertainty_db / 20.0) - 1.0),
            r.verdict.word(),
        )
    };
    let ((small, differs), (large, agrees)) = (read(15.0), read(60.0));
    let half = |pm: f64| (6.0_f64 / 50.0).sqrt() * 10f64.powf(4.342_945 * pm / 20.0);
    near(large - small, half(0.6) - half(0.15), 1e-6);
    assert_eq!((differs, agrees), ("differs", "agrees"));
}
