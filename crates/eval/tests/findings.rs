//! Findings by what they say: numbers that can be checked by hand, places, severities, and cases in
//! which nothing is to be said.

mod common;

use common::load;
use downlead_base::{Diagnostic, Severity};
use downlead_report::Reports as _;

fn find(text: &str, code: &str) -> Vec<Diagnostic> {
    load(text)
        .diagnostics()
        .into_iter()
        .filter(|d| d.code.id == code)
        .collect()
}

fn one(text: &str, code: &str) -> Diagnostic {
    let mut found = find(text, code);
    assert_eq!(found.len(), 1, "{code}: {found:#?}\n{text}");
    found.remove(0)
}

fn none(text: &str, code: &str) {
    let found = find(text, code);
    assert!(found.is_empty(), "{found:#?}\n{text}");
}

fn says(d: &Diagnostic, words: &[&str]) {
    let all = format!("{} {} {}", d.message, d.primary.message, d.help.join(" "));
    for w in words {
        assert!(all.contains(w), "`{w}` is not in: {all}");
    }
}

/// A chain at 145 MHz with these lines between transmitter and end.
fn chain(transmitter: &str, lines: &str, end: &str) -> String {
    format!("chain c on 145 MHz {{\n    transmitter {transmitter}\n    {lines}\n    {end}\n}}\n")
}

#[test]
fn arithmetic_says_the_numbers() {
    // 20 dBm + 20 dBm: 100 mW and 100 mW are 200 mW, 23.01 dBm
    says(
        &one("let x = 20 dBm + 20 dBm\n", "levels-added"),
        &["23.01 dBm", "not 40 dBm"],
    );
    // 50 W by 5 dB is 158 W; divided, 15.8 W
    says(
        &one("let x = 50 W * 5 dB\n", "power-times-decibel"),
        &["3.162", "158 W"],
    );
    says(
        &one("let x = 50 W / 5 dB\n", "power-times-decibel"),
        &["-5 dB", "0.316", "15.8 W"],
    );
}

#[test]
fn percent_is_multiplied_along_the_chain() {
    // 0.92 × 0.85 × 0.96 = 0.7507
    let d = one(
        &chain(
            "25 W carrier",
            "jumper 8 %\n    isolator 15 %\n    protector 4 %",
            "antenna 1 dBi",
        ),
        "percent-added",
    );
    says(&d, &["24.9 %", "27 %"]);
    none(
        &chain("25 W carrier", "jumper 8 %", "antenna 1 dBi"),
        "percent-added",
    );
}

#[test]
fn output_limit_is_the_power_at_its_node() {
    // 10 W through 10 dB of gain are 100 W
    let t = chain(
        "10 W carrier",
        "limit 20 W output, \"a\"\n    amplifier 10 dB gain\n    limit 90 W output, \"b\"",
        "antenna 1 dBi",
    );
    let d = one(&t, "limit-not-met");
    says(&d, &["100 W", "90.0 W", "0.46 dB"]);
    // what lies behind its point does not matter to it
    let t = chain(
        "10 W carrier",
        "limit 20 W output, \"a\"\n    protector 0.1 dB, guess",
        "antenna 1 dBi, guess",
    );
    none(&t, "guess-in-limit");
    let t = chain(
        "10 W carrier",
        "protector 0.1 dB, guess\n    limit 20 W output, \"a\"",
        "antenna 1 dBi, guess",
    );
    assert_eq!(one(&t, "guess-in-limit").related.len(), 1);
}

#[test]
fn limit_that_cannot_be_compared_is_said() {
    says(
        &one(
            &chain("10 W carrier", "limit 20 W erp, \"a\"", "antenna"),
            "missing-value",
        ),
        &["no gain", "ERP"],
    );
    says(
        &one(
            &chain("10 W carrier", "limit 20 W erp, \"a\"", "load"),
            "missing-value",
        ),
        &["load", "radiates nothing"],
    );
    says(
        &one(
            &chain("10 W carrier", "expect eirp 20 W", "antenna"),
            "missing-value",
        ),
        &["EIRP"],
    );
    none(
        &chain("10 W carrier", "limit 20 W output, \"a\"", "load"),
        "missing-value",
    );
}

#[test]
fn conversions_of_a_limit_are_said() {
    // 0 dBd: ERP is the power, EIRP 1.64 times as much
    let d = one(
        &chain("10 W carrier", "limit 20 W eirp, \"a\"", "antenna 0 dBd"),
        "limit-converted",
    );
    says(&d, &["ERP 10.0 W", "EIRP 16.4 W", "2.15 dB"]);
    none(
        &chain("10 W carrier", "limit 20 W eirp, \"a\"", "antenna 0 dBi"),
        "limit-converted",
    );
    none(
        &chain("10 W carrier", "limit 20 W erp, \"a\"", "antenna 0 dBi"),
        "limit-converted",
    );
    // single sideband: the mean is a fifth of the peak; full sine modulation: the peak four times the carrier
    let d = one(
        &chain(
            "100 W pep, ssb",
            "limit 90 W output mean, \"a\"",
            "antenna 0 dBi",
        ),
        "limit-converted",
    );
    says(&d, &["100 W pep is 20.0 W mean"]);
    let d = one(
        &chain(
            "100 W carrier, am",
            "limit 500 W output pep, \"a\"",
            "antenna 0 dBi",
        ),
        "limit-converted",
    );
    says(&d, &["100 W carrier is 400 W pep"]);
    none(
        &chain(
            "100 W pep, fm",
            "limit 500 W output mean, \"a\"",
            "antenna 0 dBi",
        ),
        "limit-converted",
    );
}

#[test]
fn kind_of_power_is_asked_for_only_where_it_matters() {
    let d = one(
        &chain("100 W", "limit 90 W output mean, \"a\"", "antenna 0 dBi"),
        "power-kind-missing",
    );
    // another kind than that of the limit needs the mode, so it alone mends nothing
    assert_eq!(d.fixes.len(), 1);
    assert_eq!(d.fixes[0].title, "write `mean`");
    // the kind is there, the mode is not: other advice, and no fix that would write a second kind
    let d = one(
        &chain(
            "100 W pep",
            "limit 90 W output mean, \"a\"",
            "antenna 0 dBi",
        ),
        "power-kind-missing",
    );
    says(&d, &["100 W pep", "mode"]);
    assert!(d.fixes.is_empty());
    none(
        &chain("100 W", "limit 90 W output, \"a\"", "antenna 0 dBi"),
        "power-kind-missing",
    );
}

#[test]
fn maxima_in_a_limit_warn_where_they_decide() {
    // 10 W, 3 dB at most, 2.15 dBi: 5.01 W ERP, and 10 W if nothing is lost
    let t = |limit: &str| {
        chain(
            "10 W carrier",
            &format!("isolator 3 dB, maximum\n    limit {limit} erp, \"a\""),
            "antenna 2.15 dBi",
        )
    };
    let d = one(&t("12 W"), "low-edge-used");
    says(&d, &["3.00 dB", "10.0 W instead of 5.01 W"]);
    assert_eq!(d.severity, Severity::Info);
    assert_eq!(one(&t("8 W"), "low-edge-used").severity, Severity::Warning);
    none(
        &chain(
            "10 W carrier",
            "isolator 3 dB, typical\n    limit 12 W erp, \"a\"",
            "antenna 2.15 dBi",
        ),
        "low-edge-used",
    );
}

#[test]
fn a_run_that_may_be_colder_is_told_where_it_decides() {
    // conductors only: 3.95 dB per 100 m at 100 MHz and 20 °C; copper at −20 °C has
    // √(1 − 0.00393 · 40) = 0.9180 of that (IEC 60028), 0.324 dB less
    let text = |run: &str, limit: &str| {
        format!(
            "cable only {{\n    impedance 50 ohm\n    velocity 0.8\n    loss 0.395 dB/100 m/sqrt(MHz) + 0 dB/100 m/MHz\n    source \"x\"\n}}\n\nchain c on 100 MHz {{\n    transmitter 10 W carrier, fm\n    {run}\n    antenna 2.15 dBi, swr 1\n    limit {limit}, \"x\"\n}}\n"
        )
    };
    let bare = "run 100 m of only";
    // 10 W − 3.95 dB = 4.027 W; in the cold 4.34 W
    let d = one(&text(bare, "4.2 W erp"), "limit-in-the-cold");
    assert_eq!(d.severity, Severity::Info);
    says(
        &d,
        &["at −20 °C it loses less and ERP on 100 MHz is 0.32 dB more: 4.34 W ± 0.00 dB."],
    );
    for (run, limit) in [
        // margin enough; not met anyway; nothing radiated; stated; a short cable
        (bare, "4.4 W erp"),
        (bare, "3.9 W erp"),
        (bare, "4.2 W output"),
        ("run 100 m of only, at 20 °C", "4.2 W erp"),
        ("tail 100 m of only", "4.2 W erp"),
        ("run 3.95 dB", "4.2 W erp"),
    ] {
        none(&text(run, limit), "limit-in-the-cold");
    }
}

#[test]
fn cost_of_an_swr_with_and_without_a_tuner() {
    // SWR 3: |Γ| = 0.5, mismatch loss 1.25 dB. Behind 1 dB of line: 1.50 dB with a tuner (line
    // equations, |Γ|² = 0.25), 2.25 dB of the forward power without
    let d = one(
        &chain("100 W carrier", "pad 1 dB", "antenna { gain 0 dBi; swr 3 }"),
        "swr-not-added",
    );
    says(&d, &["1.00 dB of matched line become 2.25 dB", "1.50 dB"]);
    let d = one(
        &chain(
            "100 W carrier",
            "tuner 0 dB\n    pad 1 dB",
            "antenna { gain 0 dBi; swr 3 }",
        ),
        "swr-not-added",
    );
    says(
        &d,
        &["1.00 dB of matched line become 1.50 dB", "not 2.25 dB"],
    );
    none(
        &chain(
            "100 W carrier",
            "pad 1 dB",
            "antenna { gain 0 dBi; swr 1.4 }",
        ),
        "swr-not-added",
    );
    none(
        &chain("100 W carrier", "pad 1 dB", "antenna 0 dBi"),
        "swr-not-added",
    );
}

#[test]
fn readings_of_a_reflection() {
    const W1: &str = "instrument W1 {\n    accuracy 5 % of reading\n}\n";
    let t = |lines: &str, swr: &str| {
        W1.to_owned()
            + &chain(
                "100 W ± 5 % carrier",
                lines,
                &format!("antenna {{ gain 0 dBi{swr} }}"),
            )
    };
    let by = ", 2026-07-04 with W1 by QY2TEC";
    // SWR 3 through 3 dB is |Γ| 0.5 / 2 = 0.25 (10^(-0.6) of the power): SWR 1.67
    none(
        &t(&format!("read swr 1.67{by}\n    pad 3 dB"), "; swr 3"),
        "reading-contradicts",
    );
    none(
        &t(&format!("read swr 1.67{by}\n    pad 3 dB"), "; swr 3"),
        "swr-at-shack",
    );
    let d = one(
        &t(&format!("read swr 3{by}"), "; swr 1.2"),
        "reading-contradicts",
    );
    assert_eq!(d.severity, Severity::Warning);
    says(&d, &["SWR 3 read", "SWR 1.2 expected"]);
    // nothing known of the antenna: what the loss hides is said
    says(
        &one(
            &t(&format!("read swr 1.3{by}\n    pad 6 dB"), ""),
            "swr-at-shack",
        ),
        &["through 6.00 dB", "about 3.2"],
    );
    none(&t(&format!("read swr 1.3{by}"), ""), "swr-at-shack");
    // an open end behind 3 dB sends back a quarter of the power: SWR 3, and 25 W of 100 W
    says(
        &one(
            &t(&format!("read swr 4{by}\n    pad 3 dB"), ""),
            "reading-impossible",
        ),
        &["no more than 3"],
    );
    says(
        &one(
            &t(&format!("read 30 W reflected{by}\n    pad 3 dB"), ""),
            "reading-impossible",
        ),
        &["25.1 W"],
    );
    none(
        &t(&format!("read 20 W reflected{by}\n    pad 3 dB"), ""),
        "reading-impossible",
    );
    // a quarter of the power back is |Γ| 0.5
    none(
        &t(&format!("read 25 W reflected{by}"), "; swr 3"),
        "reading-contradicts",
    );
    one(
        &t(&format!("read 4 W reflected{by}"), "; swr 3"),
        "reading-contradicts",
    );
}

#[test]
fn what_stands_before_the_protector_is_told() {
    let t = |order: &str, receive: bool| {
        let (head, order) = if receive {
            let back: Vec<&str> = order.split(' ').rev().collect();
            ("receive", format!("A1 {} RX1", back.join(" ")))
        } else {
            ("transmit", format!("TX1 {order} A1"))
        };
        format!(
            "station s {{\n    transmitter TX1 5 W carrier\n    receiver RX1 -119 dBm for 12 dB sinad\n    protector SP1 0.1 dB\n    protector SP2 0.1 dB\n    filter F1 0.5 dB\n    jumper J1 1 m of rg-58c\n    meter W1 0.1 dB\n    preamplifier PR1 20 dB gain\n    run M1 30 m of rg-213\n    antenna A1 5 dBi\n    chain c on 145 MHz {head} {{\n        {}\n    }}\n}}\n",
            order.replace(' ', "\n        ")
        )
    };
    for (order, told) in [
        ("SP1 F1 M1", &["`F1`"][..]),
        ("SP1 J1 F1 W1 M1", &["`F1`", "`W1`"]),
        ("F1 SP1 M1", &[]),
        ("SP1 J1 M1", &[]),
        ("SP2 F1 SP1 M1", &[]),
        ("SP1 F1 M1 SP2", &[]),
        // at the mast, or with no run at all
        ("F1 SP1 M1 PR1", &[]),
        ("F1 M1 SP1 PR1", &[]),
        ("SP1 F1", &[]),
        ("F1 M1", &[]),
    ] {
        for receive in [false, true] {
            let found = find(&t(order, receive), "protector-behind");
            let mut names: Vec<&str> = found.iter().map(|d| &d.message[..4]).collect();
            names.sort_unstable();
            assert_eq!(names, told, "{order} {receive}");
            let swaps = order == "SP1 F1 M1";
            assert!(found.iter().all(|d| d.fixes.len() == usize::from(swaps)));
        }
    }
}

#[test]
fn an_old_cable_wants_a_reading_behind_it() {
    let t = |run: &str, behind: &str, before: &str| {
        format!(
            "band 2m 145.3 MHz\n\nstation s {{\n    transmitter TX1 30 W ± 5 % carrier, read 2026-07-04\n    run M1 {run}\n    antenna A1 5 dBi\n    chain c on 2m {{\n        TX1\n        {before}\n        M1\n        {behind}\n        A1\n    }}\n}}\n"
        )
    };
    let old = "28 m of half-inch-foam, since 2012-05";
    let d = one(&t(old, "", ""), "old-cable");
    assert_eq!(d.severity, Severity::Info);
    says(
        &d,
        &[
            "since 2012-05",
            "no power was read after it",
            "by 2026-07-04",
            "14 years old.",
        ],
    );
    let read = |date: &str| format!("read 25 W forward, {date}");
    says(
        &one(&t(old, &read("2021-07-01"), ""), "old-cable"),
        &["last read after it on 2021-07-01"],
    );
    // before the cable, or a reflection: neither shows its loss
    one(&t(old, "", &read("2026-07-04")), "old-cable");
    one(&t(old, "read swr 1.2, 2026-07-04", ""), "old-cable");
    // ten years to the month, five years to the month
    one(
        &t("28 m of half-inch-foam, since 2016-07", "", ""),
        "old-cable",
    );
    none(
        &t("28 m of half-inch-foam, since 2016-08", "", ""),
        "old-cable",
    );
    none(&t(old, &read("2021-08-01"), ""), "old-cable");
    none(
        &t(
            old,
            &format!("{}\n        {}", read("2026-01-01"), read("2014-01-01")),
            "",
        ),
        "old-cable",
    );
    for run in [
        "28 m of half-inch-foam",
        "28 m of half-inch-foam, since 2012-05, added 0.4 dB",
        "28 m of half-inch-foam, since 2012-05, read 2013-01-01",
        "0.9 dB, since 2012-05",
    ] {
        none(&t(run, "", ""), "old-cable");
    }
    none(&t(old, "readings from \"site.csv\"", ""), "old-cable");
    // its cable was measured: lately, or as long ago as a reading behind it may be
    let reel = |date: &str| {
        let cable = format!(
            "cable reel-7 {{\n    impedance 50 ohm\n    velocity 0.88\n    loss 0.24 dB/100 m/sqrt(MHz), read {date}\n}}\n\n"
        );
        cable + &t("28 m of reel-7, since 2012-05", "", "")
    };
    none(&reel("2025-11-07"), "old-cable");
    one(&reel("2021-07-01"), "old-cable");
    // the newest date is that of the measured cable
    says(&one(&reel("2012-01-01"), "old-cable"), &["by 2026-07-04"]);
    // no power can be read behind what is only received through
    let receive = t(old, "", "")
        .replace("on 2m {", "on 2m receive {")
        .replace(
            "transmitter TX1 30 W ± 5 % carrier, read 2026-07-04",
            "receiver TX1 -119 dBm for 12 dB sinad\n    pad P1 3 dB, read 2026-07-04",
        );
    none(&receive, "old-cable");
}

#[test]
fn the_cold_of_the_branch_that_decides_counts() {
    // two equal arms of 3.95 dB at 100 MHz (conductors only, see above); one states its temperature
    let text = |how: &str, a1: &str, a2: &str, limit: &str| {
        format!(
            "cable only {{\n    impedance 50 ohm\n    velocity 0.8\n    loss 0.395 dB/100 m/sqrt(MHz) + 0 dB/100 m/MHz\n    source \"x\"\n}}\n\nchain c on 100 MHz {{\n    transmitter 10 W carrier, fm\n    divider 2 way {{\n        branch {{\n            run 100 m of only\n            antenna {a1}, swr 1\n        }}\n        branch {{\n            run 100 m of only, at 20 °C\n            antenna {a2}, swr 1\n        }}\n    }}\n    branches {how}\n    limit {limit} eirp, \"x\"\n}}\n"
        )
    };
    // 5 W − 3.95 dB into 6 dBi are 8.02 W, whatever the other arm does in the cold; the arm that
    // radiates most is warm, or it is not: then 0.324 dB more
    none(
        &text("apart", "0 dBi", "6 dBi", "8.3 W"),
        "limit-in-the-cold",
    );
    says(
        &one(
            &text("apart", "6 dBi", "0 dBi", "8.3 W"),
            "limit-in-the-cold",
        ),
        &["0.32 dB more: 8.64 W"],
    );
    // in phase half of the field is of the arm without: 20 lg((1 + 10^(0.324/20)) / 2) = 0.16 dB
    says(
        &one(
            &text("in phase", "6 dBi", "6 dBi", "32.5 W"),
            "limit-in-the-cold",
        ),
        &["it loses less and EIRP on 100 MHz is 0.16 dB more"],
    );
}

#[test]
fn an_swr_agrees_with_the_watts_beside_it() {
    const BY: &str = "2026-07-04 with W1 by QY2TEC";
    let t = |lines: &[&str]| {
        let lines: Vec<String> = lines
            .iter()
            .map(|l| match l.contains("pad") || l.contains("2026") {
                true => (*l).to_owned(),
                false => format!("read {l}, {BY}"),
            })
            .collect();
        "instrument W1 {\n    accuracy 5 % of reading\n}\n".to_owned()
            + &chain(
                "100 W ± 5 % carrier",
                &lines.join("\n    "),
                "antenna 0 dBi",
            )
    };
    // 4 W of 100 W is |Γ| = 0.2, SWR 1.5
    let d = one(
        &t(&["100 W forward", "4 W reflected", "swr 2"]),
        "swr-beside-watts",
    );
    says(
        &d,
        &["SWR 2 was read with 100 W forward and 4.00 W reflected, which are SWR 1.5."],
    );
    // net and reflected are forward: 96 W + 4 W
    says(
        &one(
            &t(&["96 W net", "4 W reflected", "swr 2"]),
            "swr-beside-watts",
        ),
        &["which are SWR 1.5."],
    );
    for lines in [
        &["100 W forward", "4 W reflected", "swr 1.5"][..],
        // 1.6 is |Γ| 0.231, 1.3 is 0.130: within 0.056 and 0.070
        &["100 W forward", "4 W reflected", "swr 1.6"],
        &["100 W forward", "4 W reflected", "swr 1.35"],
        // with uncertainties of its own
        &["100 W forward", "4 W reflected", "swr 2 ± 0.4"],
        &["100 W forward", "4 W ± 3 W reflected", "swr 2"],
        // at another point, on another day, alone, two of a kind
        &["100 W forward", "4 W reflected", "pad 0 dB", "swr 2"],
        &[
            "100 W forward",
            "4 W reflected",
            "read swr 2, 2026-07-05 with W1 by QY2TEC",
        ],
        &["4 W reflected", "swr 2"],
        &["100 W forward", "4 W reflected", "5 W reflected", "swr 2"],
    ] {
        none(&t(lines), "swr-beside-watts");
    }
}

#[test]
fn a_meter_that_reads_coarsely_contradicts_no_swr() {
    let said = |meter: &str, forward: &str, reflected: &str, swr: &str| {
        let text = format!(
            "band 2m 145.3 MHz\n\ninstrument W1 {{\n    {meter}\n}}\n\nstation hill {{\n    transmitter TX1 50 W ± 5 % carrier, fm\n    pad P1 3 dB ± 0.1 dB\n    antenna A1 4.5 dBi ± 0.5 dB, swr 1.2\n\n    chain out on 2m transmit {{\n        TX1\n        P1\n        readings from \"site.csv\" with W1\n        A1\n    }}\n}}\n"
        );
        let row = format!("P1,2m,2024-07-01,{forward},{reflected},{swr}\n");
        let log = format!(
            "after,band,date,forward_w,reflected_w,swr\n{}",
            row.repeat(3)
        );
        let s = common::load_from(
            &downlead_testkit::Files::default()
                .with("main.downlead", text)
                .with("site.csv", log),
        );
        let all = s.diagnostics();
        let found: Vec<_> = all
            .iter()
            .filter(|d| d.code.id == "swr-beside-watts")
            .map(|d| d.help.join(" "))
            .collect();
        // the same finding in every row is reported once
        assert!(found.len() <= 1, "{found:?}");
        found.into_iter().next()
    };
    let coarse = "accuracy 5 % of reading\n    resolution 0.5 W";
    let scale = "accuracy 5 % of full scale\n    scale 100 W";
    for (meter, forward, reflected, swr) in [
        (coarse, "25.4", "0", "1.2"),
        ("accuracy 5 % of reading", "25.4", "0", "1.2"),
        ("accuracy 5 % of reading", "25.4", "0.1", "1.0"),
        (scale, "25.4", "0.2", "1.6"),
    ] {
        assert_eq!(said(meter, forward, reflected, swr), None, "{meter} {swr}");
    }
    // 0.25 W unseen of 25.4 W is |Γ| 0.1, with the directivity SWR 1.4
    for meter in [coarse, "accuracy 5 % of reading"] {
        let help = said(meter, "25.4", "0", "2.5").expect(meter);
        assert!(
            help.contains("2 more of its rows, in lines 3, 4."),
            "{help}"
        );
    }
}

#[test]
fn slips_by_a_thousand_are_named() {
    let t = "instrument W1 {\n    accuracy 5 % of reading\n}\n".to_owned()
        + &chain(
            "25 W ± 5 % carrier",
            "read 25 mW forward, 2026-07-04 with W1 by QY2TEC",
            "antenna 0 dBi",
        );
    says(&one(&t, "reading-contradicts"), &["factor of 1000"]);
    // the unit that is meant is offered, unless a ± hangs on the one that stands there
    for (read, meant) in [
        ("25 mW", Some("W")),
        ("25 kW", Some("W")),
        ("25000 W", Some("mW")),
        ("0.025 W", Some("kW")),
        ("25 mW ± 3 %", Some("W")),
        ("25 mW ± 1 mW", None),
        ("14 dBm", None),
        ("5 W", None),
    ] {
        let t = t.replace("25 mW", read);
        let d = one(&t, "reading-contradicts");
        let Some(meant) = meant else {
            assert!(d.fixes.is_empty(), "{read}");
            continue;
        };
        let edit = &d.fixes[0].edits[0];
        assert_eq!(edit.text, meant, "{read}");
        let mut corrected = t.clone();
        let from = corrected.find("chain c").expect("the chain");
        let span = edit.loc.span;
        corrected.replace_range(from + span.start as usize..from + span.end as usize, meant);
        none(&corrected, "reading-contradicts");
    }
    let t = "chain c on 145 kHz {\n    transmitter 25 W carrier\n    filter 0.5 dB, passes 144 MHz to 146 MHz\n    antenna 0 dBi\n}\n";
    says(&one(t, "outside-pass-band"), &["power of 1000"]);
}

#[test]
fn an_erp_that_is_the_eirp_is_named() {
    let d = one(
        &chain("10 W carrier", "expect erp 10 W ± 0.1 dB", "antenna 0 dBi"),
        "expectation-missed",
    );
    says(&d, &["10.0 W is the EIRP", "ERP is 6.10 W"]);
    let text = chain("10 W carrier", "expect erp 10 W ± 0.1 dB", "antenna 0 dBi");
    let edit = &d.fixes[0].edits[0];
    assert_eq!((&text[edit.loc.span.range()], &*edit.text), ("erp", "eirp"));
    // another figure is no other name's
    let d = one(
        &chain("10 W carrier", "expect erp 9 W ± 0.1 dB", "antenna 0 dBi"),
        "expectation-missed",
    );
    assert!(d.fixes.is_empty());
}

#[test]
fn a_receive_chain_compares_its_loss_only() {
    let t = |line: &str| {
        format!(
            "chain c on 145 MHz receive {{\n    antenna 0 dBi\n    pad 3 dB\n    {line}\n    receiver -119 dBm for 12 dB sinad\n}}\n"
        )
    };
    none(&t("expect loss 3 dB ± 0.1 dB"), "expectation-missed");
    says(
        &one(&t("expect loss 2 dB ± 0.1 dB"), "expectation-missed"),
        &["3.00 dB computed"],
    );
    for line in [
        "expect 3 W",
        "limit 30 W erp, \"a\"",
        "read 3 W forward, 2026-07-04 with W1 by X",
    ] {
        assert!(!find(&t(line), "misplaced-statement").is_empty(), "{line}");
    }
}

#[test]
fn figures_given_twice() {
    let d = one(
        &chain(
            "1 W carrier",
            "protector { loss 0.1 dB; loss 0.2 dB }",
            "antenna 0 dBi",
        ),
        "figure-twice",
    );
    says(&d, &["0.10 dB and 0.20 dB", "first"]);
    let t = "band 2m 145 MHz\nband 70cm 435 MHz\n".to_owned()
        + &chain(
            "1 W carrier",
            "protector { loss 0.1 dB on 2m; loss 0.2 dB on 70cm; loss 0.3 dB on 2m }",
            "antenna 0 dBi",
        );
    says(&one(&t, "figure-twice"), &["0.10 dB and 0.30 dB"]);
    // a return loss of 14 dB is SWR 1.5
    none(
        &chain(
            "1 W carrier",
            "",
            "antenna { gain 0 dBi; swr 1.5; return-loss 14 dB }",
        ),
        "figure-twice",
    );
    one(
        &chain("1 W carrier", "", "antenna { gain 0 dBi; gain 3 dBi }"),
        "figure-twice",
    );
    one(
        "station s {\n    transmitter T {\n        power 5 W\n        power 50 W\n    }\n}\n",
        "figure-twice",
    );
}

#[test]
fn names_in_figures_must_exist() {
    let t = "band 2m 145 MHz\n".to_owned()
        + "chain c on 2m {\n    transmitter 10 W carrier\n    run 10 m of rg-213, added 1 dB on 2n\n    antenna 0 dBi\n}\n";
    says(&one(&t, "unknown-band"), &["2n", "not defined"]);
    let t = chain(
        "10 W carrier",
        "isolator 0.5 dB, read 2026-07-04 with W9 by X",
        "antenna 0 dBi",
    );
    says(&one(&t, "unknown-instrument"), &["W9"]);
}

#[test]
fn ratings_and_ports_come_from_the_definition_too() {
    let device = "device club-protector {\n    kind protector\n    loss 0.1 dB\n    rating 20 W\n    voltage 30 V\n    source \"a\"\n}\n";
    let t = device.to_owned()
        + &chain(
            "25 W carrier, fm",
            "protector of club-protector",
            "antenna 0 dBi",
        );
    says(&one(&t, "rating-exceeded"), &["25.0 W", "20.0 W"]);
    // 25 W into 50 ohm are 35.4 V
    says(&one(&t, "voltage-exceeded"), &["35 V", "30 V"]);
    let t = device.to_owned()
        + &chain(
            "1 W carrier, fm",
            "isolator of club-protector",
            "antenna 0 dBi",
        );
    says(&one(&t, "unknown-device"), &["a protector", "an isolator"]);
    let t = "station s {\n    duplexer D of duplexer-vhf\n    run M 3 m of rg-213\n    chain c on 145 MHz {\n        transmitter 1 W\n        D.tx\n        M.high\n        antenna 0 dBi\n    }\n}\n";
    let found = find(t, "unknown-port");
    assert_eq!(found.len(), 2, "{found:#?}");
}

#[test]
fn assumptions_are_made_only_where_they_take_part() {
    let assumed = |t: &str| {
        load(t).report().stations[0].chains[0].bands[0]
            .assumptions
            .join("\n")
    };
    let cable =
        "cable x {\n    impedance 50 ohm\n    loss 0.4 dB/100 m/sqrt(MHz)\n    source \"a\"\n}\n";
    // the velocity factor: an electrical length needs it, a length in metres between matched ends does not
    let t = cable.to_owned() + &chain("1 W", "run 0.25 wavelengths of x", "antenna 0 dBi");
    assert!(assumed(&t).contains("velocity factor of 0.66"));
    let t = cable.to_owned() + &chain("1 W", "run 2 m of x", "antenna 0 dBi");
    assert!(!assumed(&t).contains("velocity"));
    // the duty: where something has a rating
    let t = chain(
        "1 W carrier",
        "protector { loss 0.1 dB; rating 50 W }",
        "antenna 0 dBi",
    );
    assert!(assumed(&t).contains("full duty"));
    let t = chain(
        "1 W carrier, fm",
        "protector { loss 0.1 dB; rating 50 W }",
        "antenna 0 dBi",
    );
    assert!(!assumed(&t).contains("full duty"));
    let t = chain("1 W carrier", "protector 0.1 dB", "antenna 0 dBi");
    assert!(!assumed(&t).contains("full duty"));
}

#[test]
fn one_place_on_several_bands_is_one_finding() {
    let t = "band hf 1.9 MHz to 30 MHz\nchain c on hf, 145 MHz {\n    transmitter 100 W carrier, fm\n    pad { loss 3 dB; rating 10 W }\n    antenna 0 dBi\n}\n";
    let d = one(t, "rating-exceeded");
    says(&d, &["mean power on hf", "The same on 145 MHz."]);
    // verdicts are results of their own
    let t = "chain c on 145 MHz, 435 MHz {\n    transmitter 100 W carrier\n    antenna 0 dBi\n    limit 10 W erp, \"a\"\n}\n";
    assert_eq!(find(t, "limit-not-met").len(), 2);
}

#[test]
fn one_loss_for_far_bands_unless_a_doubt_covers_it() {
    let t = |part: &str| {
        format!(
            "chain c on 7 MHz, 145 MHz {{\n    transmitter 100 W carrier\n    {part}\n    antenna 0 dBi\n}}\n"
        )
    };
    assert_eq!(
        one(&t("run 2 dB"), "one-loss-many-bands").severity,
        Severity::Warning
    );
    assert_eq!(
        one(&t("protector 0.2 dB"), "one-loss-many-bands").severity,
        Severity::Info
    );
    for quiet in [
        "protector 0.2 dB ± 0.1 dB",
        "pad 3 dB",
        "filter 0.5 dB, passes 1 MHz to 500 MHz",
        "coupler 20 dB coupled",
        "jumper 10 m of rg-213",
    ] {
        none(&t(quiet), "one-loss-many-bands");
    }
}

#[test]
fn ends_and_connectors_must_fit() {
    let t = |between: &str| {
        chain(
            "1 W",
            &format!(
                "jumper 1 m of rg-213, ends n uhf\n    {between}\n    run 9 m of rg-213, ends n n"
            ),
            "antenna 0 dBi",
        )
    };
    says(&one(&t(""), "connector-gap"), &["n-to-uhf"]);
    none(&t("adapter n-to-uhf"), "connector-gap");
    says(
        &one(&t("connector n-pair"), "connector-gap"),
        &["uhf", "n-pair"],
    );
    none(&t("connector uhf-pair"), "connector-gap");
}

#[test]
fn parallel_lines_are_meant() {
    one(
        &chain("1 W", "run 9 m of rg-11a", "antenna 0 dBi"),
        "impedance-jump",
    );
    none(
        &chain("1 W", "run 9 m of open-wire-600", "antenna 0 dBi"),
        "impedance-jump",
    );
}

#[test]
fn a_load_with_a_power_is_told_of_its_rating() {
    let d = one(&chain("1 W", "", "load 300 W"), "wrong-unit");
    says(&d, &["rating"]);
    assert!(d.fixes[0].preferred);
}

#[test]
fn unknown_instrument_compares_nothing() {
    let t = chain(
        "25 W ± 5 % carrier",
        "read 3 W forward, 2026-07-04 with W1 by X",
        "antenna 0 dBi",
    );
    one(&t, "unknown-instrument");
    none(&t, "reading-contradicts");
}

#[test]
fn statements_behind_a_divider_are_judged() {
    // two antennas of 12 dBi in phase: 100 W and 15 dB are 3.16 kW
    let t = "chain c on 144 MHz {\n    transmitter 100 W\n    divider 2 way {\n        branch { antenna 12 dBi }\n        branch { antenna 12 dBi }\n    }\n    limit 3 kW eirp, \"a\"\n}\n";
    says(&one(t, "limit-not-met"), &["3.17 kW"]);
}

#[test]
fn a_reading_at_the_antenna_does_not_doubt_its_gain() {
    let t = "instrument W1 {\n    accuracy 5 % of reading\n}\n".to_owned()
        + &chain(
            "25 W carrier, read 2026-07-04 with W1 by X",
            "pad 3 dB\n    read 12.53 W forward, 2026-07-04 with W1 by X",
            "antenna 5 dBi ± 3 dB",
        );
    none(&t, "reading-cannot-tell");
}

/// Between two readings of one meter its scale cancels; its linearity (half-width) and its
/// repeatability count at both (GUM, JCGM 100:2008, 5.1.2). By hand, in relative terms:
/// u = √2 · √((0.01/√3)² + 0.006²) = 1.1776 %, so U (k = 2) is 2.355 % of power, 0.102 dB.
#[test]
fn one_meter_at_both_ends_leaves_its_linearity_and_scatter() {
    let stated = "    linearity 1 %\n    repeatability 0.6 % k 1\n";
    for own in ["", stated] {
        let text = |watts: &str| {
            format!(
                "instrument W1 {{\n    accuracy 5 % of reading\n{own}}}\n\n{}",
                chain(
                    "30 W carrier, fm, read 2026-07-04 with W1 by QY2TEC",
                    &format!("read {watts} W forward, 2026-07-04 with W1 by QY2TEC"),
                    "load, return-loss 60 dB",
                )
            )
        };
        // 10 log10(30.6 / 30) = 0.086 dB, 10 log10(30.8 / 30) = 0.114 dB
        none(&text("30.6"), "reading-contradicts");
        says(
            &one(&text("30.8"), "reading-contradicts"),
            &["+0.11 dB", "an uncertainty of 0.10 dB"],
        );
        let r = common::report(&text("30.6"));
        let band = common::bands(&r)[0].1;
        let u = band.readings[0].uncertainty_db;
        assert!((u - 2.0 * 4.342_944_8 * 0.011_776).abs() < 5e-4, "{u}");
        let told = band.assumptions.iter().any(|a| a.contains("linearity 1 %"));
        assert_eq!(told, own.is_empty(), "{:?}", band.assumptions);
    }
}

/// Rows of a log that cannot be placed are reported once; what is not dated still counts.
#[test]
fn rows_of_a_log_without_a_band_or_a_date_are_told() {
    let text = "band 2m 145.3 MHz\n\nband 70cm 434.5 MHz\n\ninstrument W1 {\n    accuracy 5 % of reading\n}\n\nstation hill {\n    transmitter TX1 30 W ± 5 % carrier, fm\n    pad P1 3 dB ± 0.1 dB\n    antenna A1 4.5 dBi ± 0.5 dB, swr 1.2\n\n    chain out on 2m, 70cm transmit {\n        TX1\n        P1\n        readings from \"site.csv\" with W1\n        A1\n    }\n}\n";
    let log = "after,band,date,forward_w\nP1,2m,2024-07-01,15.0\nP1,2m,,30.0\nP1,2m,2026-13-01,15.1\nP1,,2025-07-01,15.0\n";
    let s = common::load_from(
        &downlead_testkit::Files::default()
            .with("main.downlead", text)
            .with("site.csv", log),
    );
    let said = |code: &str, words: &str| {
        let all = s.diagnostics();
        let n = all
            .iter()
            .filter(|d| d.code.id == code && d.message.contains(words))
            .count();
        assert_eq!(n, 1, "{code} {words}: {all:#?}");
    };
    said(
        "readings-not-read",
        "line 5 (`band`): The row names no band",
    );
    said(
        "readings-not-read",
        "line 4, column 3 (`date`): There is no month 13",
    );
    // 3 dB below 30 W are 15.04 W: the row without a date contradicts, and is reported without one
    said("reading-contradicts", "In line 3, on 2m: 30.0 W read");
}

#[test]
fn a_row_with_watts_and_swr_says_one_thing() {
    let text = "band 2m 145.3 MHz\n\ninstrument W1 {\n    accuracy 5 % of reading\n}\n\nstation hill {\n    transmitter TX1 30 W ± 5 % carrier, fm\n    pad P1 3 dB ± 0.1 dB\n    antenna A1 4.5 dBi ± 0.5 dB, swr 1.2\n\n    chain out on 2m transmit {\n        TX1\n        P1\n        readings from \"site.csv\" with W1\n        A1\n    }\n}\n";
    // 0.15 W of 15 W is |Γ| = 0.1, SWR 1.22
    let log = "after,band,date,forward_w,reflected_w,swr\nP1,2m,2024-07-01,15.0,0.15,1.2\nP1,2m,2025-07-01,15.0,0.15,2.1\n";
    let s = common::load_from(
        &downlead_testkit::Files::default()
            .with("main.downlead", text)
            .with("site.csv", log),
    );
    let all = s.diagnostics();
    let found: Vec<&str> = all
        .iter()
        .filter(|d| d.code.id == "swr-beside-watts")
        .map(|d| d.message.as_str())
        .collect();
    assert_eq!(
        found,
        [
            "In line 3: SWR 2.1 was read with 15.0 W forward and 150 mW reflected, which are SWR 1.22."
        ]
    );
}

/// A piece of cable is cut once: 2.25 wavelengths at 3.75 MHz with a velocity factor of 0.66 are
/// 2.25 x 0.66 x 299 792 458 / 3.75e6 = 118.718 m, on 3.5 and on 4.0 MHz too.
#[test]
fn a_length_in_wavelengths_is_cut_for_one_frequency() {
    let file = |length: &str| {
        format!(
            "band 80m 3.5 MHz to 4.0 MHz\ncable q {{\n    impedance 75 ohm\n    velocity 0.66\n    loss 0.5 dB/100 m/sqrt(MHz)\n    source \"a\"\n}}\nchain c on 80m {{\n    transmitter 100 W carrier\n    jumper {length} of q\n    antenna {{ gain 2 dBi; impedance 112.5 ohm }}\n}}\n"
        )
    };
    let numbers = |length: &str| -> Vec<(f64, f64)> {
        let s = load(&file(length));
        let r = s.report();
        let bands = &r.stations[0].chains[0].bands;
        assert_eq!(bands.len(), 3);
        bands
            .iter()
            .map(|b| (b.total_loss_db.unwrap(), b.transmitter_swr.unwrap()))
            .collect()
    };
    let (waves, metres) = (
        numbers("2.25 wavelengths at 3.75 MHz"),
        numbers("118.717813 m"),
    );
    for (a, b) in waves.iter().zip(&metres) {
        assert!(
            (a.0 - b.0).abs() < 1e-6 && (a.1 - b.1).abs() < 1e-6,
            "{a:?} {b:?}"
        );
    }
    // 810° at 3.75 MHz are the same
    assert_eq!(numbers("810° at 3.75 MHz"), waves);
    none(
        &file("2.25 wavelengths at 3.75 MHz"),
        "wavelengths-need-frequency",
    );
    let d = one(&file("2.25 wavelengths"), "wavelengths-need-frequency");
    says(
        &d,
        &["`jumper` is 2.25 wavelengths", "3.5 MHz, 3.75 MHz, 4 MHz"],
    );
    assert_eq!(d.fixes.len(), 3);
    // on one frequency it is clear
    let single = file("2.25 wavelengths").replace("3.5 MHz to 4.0 MHz", "3.75 MHz");
    none(&single, "wavelengths-need-frequency");
}

#[test]
fn a_part_of_several_chains_is_one_piece() {
    let file = |receive: &str, length: &str| {
        format!(
            "band 2m {{\n    transmit 146.9 MHz\n    receive {receive}\n}}\nstation s {{\n    jumper J1 {length} of rg-213\n    divider T1 tee\n    chain out on 2m transmit {{\n        transmitter 1 W\n        T1 {{\n            branch {{ J1; antenna 0 dBi }}\n            branch {{ load }}\n        }}\n    }}\n    chain in on 2m receive {{\n        antenna 0 dBi\n        J1\n        receiver -119 dBm for 12 dB sinad\n    }}\n}}\n"
        )
    };
    let d = one(
        &file("146.3 MHz", "0.25 wavelengths"),
        "wavelengths-need-frequency",
    );
    says(&d, &["`J1` is 0.25 wavelengths", "146.9 MHz, 146.3 MHz"]);
    none(
        &file("146.9 MHz", "0.25 wavelengths"),
        "wavelengths-need-frequency",
    );
    none(
        &file("146.3 MHz", "0.25 wavelengths at 146.6 MHz"),
        "wavelengths-need-frequency",
    );
}

/// |Γ|² + |S21|² of a part without a supply is at most 1 (Pozar, Microwave Engineering 4e, sec. 4.3,
/// from memory): SWR 1.8 is |Γ| = 0.8/2.8, so at least −10 log10(1 − 0.0816) = 0.370 dB are lost.
#[test]
fn a_part_gives_out_no_more_than_it_gets() {
    let file = |part: &str| chain("1 W", part, "antenna 0 dBi");
    let d = one(&file("filter 0.20 dB, swr 1.8"), "not-passive");
    says(&d, &["SWR of 1.8", "8.16 %", "95.5 %"]);
    assert!(d.help[0].contains("0.37 dB"), "{:?}", d.help);
    for part in [
        "filter 0.36 dB, swr 1.8",
        "circulator { loss 0.1 dB; return-loss 15 dB }",
        "jumper 0.05 dB, return-loss 15 dB",
        "switch of s",
        "connector 2 of c",
    ] {
        let text = file(part)
            + "device s {\n    kind switch\n    loss 0.05 dB\n    swr 1.4\n    source \"a\"\n}\nconnector c {\n    loss 0.01 dB\n    swr 1.2\n    source \"a\"\n}\n";
        one(&text, "not-passive");
    }
    for part in [
        "filter 0.38 dB, swr 1.8",
        "protector 0.1 dB, return-loss 20 dB",
        "isolator 0.5 dB, swr 1.3, isolation 25 dB",
        "amplifier 13 dB gain, swr 1.8",
        "jumper 0.2 dB, return-loss 20 dB",
    ] {
        none(&file(part), "not-passive");
    }
    // on the band where it is so
    let d = one(
        "band 2m 145 MHz\nband 70cm 435 MHz\nchain c on 2m, 70cm {\n    transmitter 1 W\n    filter { loss 0.4 dB on 2m; loss 0.1 dB on 70cm; swr 1.5 }\n    antenna 0 dBi\n}\n",
        "not-passive",
    );
    says(&d, &["0.10 dB"]);
}

/// The name of a device where a tag may stand: the part gets no figure of it, and the finding
/// says how it does.
#[test]
fn a_device_named_as_a_tag_is_pointed_out_with_a_fix_that_mends() {
    let text = "device entry-protector \"at the wall\" {\n    kind protector\n    loss 0.1 dB ± 0.05 dB\n}\n\nchain c on 145 MHz {\n    transmitter 25 W carrier\n    protector entry-protector\n    antenna 4.5 dBi\n}\n";
    let s = load(text);
    let found = s
        .diagnostics()
        .into_iter()
        .find(|d| d.code.id == "lossless-part")
        .expect("it has no loss");
    assert!(
        found.help[0].contains("protector of entry-protector"),
        "{found:?}"
    );
    let edit = &found.fixes[0].edits[0];
    let corrected = text.replacen(
        "protector entry-protector",
        &format!("protector {}", edit.text),
        1,
    );
    let s = load(&corrected);
    let codes: Vec<_> = s.diagnostics().iter().map(|d| d.code.id).collect();
    assert!(!codes.contains(&"lossless-part"), "{codes:?}");
}

#[test]
fn the_same_line_twice_in_a_row_is_pointed_out() {
    let twice = chain(
        "5 W",
        "connector 2 of n-pair\n    connector 2 of n-pair",
        "antenna 2 dBi",
    );
    let d = one(&twice, "line-twice");
    assert_eq!(d.fixes.len(), 1);
    for lines in [
        "connector 2 of n-pair\n    connector 1 of n-pair",
        "connector 2 of n-pair\n    pad 3 dB\n    connector 2 of n-pair",
        "expect loss 0 dB\n    expect loss 0 dB",
    ] {
        none(&chain("5 W", lines, "antenna 2 dBi"), "line-twice");
    }
    // in a branch too
    let branch = "chain c on 145 MHz {\n    transmitter 5 W\n    divider 2 way, 3.3 dB {\n        branch a { pad 1 dB; pad 1 dB; antenna 2 dBi }\n        branch b { pad 1 dB; antenna 2 dBi }\n    }\n}\n";
    one(branch, "line-twice");
}
