//! Words that a statement cannot use are pointed out once, and with something that mends them.

use downlead_base::Diagnostic;
use downlead_station::{Lets, lower};
use downlead_syntax::File;

fn found(text: &str) -> Vec<Diagnostic> {
    let tree = File::parse(text);
    let broken: Vec<_> = tree.diagnostics().collect();
    assert!(broken.is_empty(), "{text}: {broken:?}");
    let items = tree.items().iter();
    items
        .flat_map(|p| lower(&p.item, &Lets::default(), false).diagnostics)
        .collect()
}

fn chain(line: &str) -> String {
    format!("chain c on 2m transmit {{ transmitter 50 W carrier; {line}; antenna 5 dBi }}")
}

fn station(line: &str) -> String {
    format!("station s {{ place mast {{ temperature 5 °C }}; {line} }}")
}

/// The one finding of a text.
fn one(text: &str) -> Diagnostic {
    let all = found(text);
    assert_eq!(all.len(), 1, "{text}: {all:?}");
    all.into_iter().next().expect("a finding")
}

fn clean(text: &str) {
    let all = found(text);
    assert!(all.is_empty(), "{text}: {all:?}");
}

/// Applies a fix to a text of one item.
fn corrected(text: &str, d: &Diagnostic, fix: usize) -> String {
    let mut edits = d.fixes[fix].edits.clone();
    edits.sort_by_key(|e| std::cmp::Reverse(e.loc.span.start));
    let mut out = text.to_owned();
    for e in edits {
        out.replace_range(e.loc.span.range(), &e.text);
    }
    out
}

#[test]
fn a_second_figure_is_not_sent_to_another_block() {
    for (line, says) in [
        ("expect loss 3 dB loss 4 dB", "`loss` is said twice."),
        (
            "expect swr 1.2 loss 3 dB",
            "An expectation is of one figure.",
        ),
        ("expect 5 W swr 1.2", "An expectation is of one figure."),
        (
            "pad 3 dB gain",
            "`gain` is said of an amplifier, a preamplifier or an antenna, and this is a pad.",
        ),
    ] {
        let d = one(&chain(line));
        assert!(d.message.contains(says), "{line}: {}", d.message);
    }
    let d = one("session s { piece A 2 m of x; generator swr 1.1 swr 1.2 }");
    assert_eq!(d.message, "`swr` is said twice.");
    // what stands in the statement's own block is shown there
    let d = one(&station("balun BA1 0.1 dB voltage 400 V"));
    assert!(
        d.message.contains("in the block of the balun"),
        "{}",
        d.message
    );
}

#[test]
fn every_name_of_a_band_can_follow_another() {
    for text in [
        "station s { run M1 20 m of x, added 1 dB on b1 b2 wet 2 dB on b3 }",
        "station s { antenna A1 { gain 5 dBi on high low 2m } }",
        "chain c on b1 night, b3 145 MHz transmit { transmitter 50 W carrier; pad 1 dB on b1 night; load }",
        "chain c on b1 { transmitter 50 W carrier; limit 30 W output on b1 b2 \"x\"; load }",
    ] {
        clean(text);
    }
    // a place, a word of the statement and a named value are none
    clean("station s { place mast { temperature 5 °C }; pad P1 1 dB on b1 mast }");
    clean("station s { pad P1 1 dB on b1 guess }");
    let tree = File::parse("station s { pad P1 1 dB on b1 b2 b3, read 2026-07-04 }");
    let low = lower(&tree.items()[0].item, &Lets::default(), false);
    assert_eq!(low.names.len(), 3, "{:?}", low.names);
}

#[test]
fn a_band_that_is_said_twice_is_pointed_out() {
    for line in [
        "pad 1 dB on 2m 2m",
        "pad 1 dB on b1, on b1",
        "run 20 m of x, added 1 dB on 2m b1 2m",
        "read 20 W forward on b1 b1",
    ] {
        let d = one(&chain(line));
        assert_eq!(d.code.id, "said-twice", "{line}");
    }
    let d = one("chain c on 2m, 145 MHz, 2m { transmitter 5 W carrier; load }");
    assert_eq!(d.message, "`2m` is said twice.");
}

#[test]
fn a_figure_holds_at_one_temperature_and_one_frequency() {
    for (line, says) in [
        ("run 20 m of x, at 10 °C, at 30 °C", "`at` is said twice."),
        ("pad 1 dB, at 10 °C at 12 °C", "`at` is said twice."),
        (
            "pad { loss 1 dB at 145 MHz at 150 MHz }",
            "`at` is said twice.",
        ),
        (
            "pad { loss 1 dB at 145 MHz on 2m }",
            "on bands or at a frequency",
        ),
        (
            "pad { loss 1 dB on 2m at 145 MHz }",
            "on bands or at a frequency",
        ),
    ] {
        let d = one(&chain(line));
        assert!(d.message.contains(says), "{line}: {}", d.message);
    }
    // each figure has its own
    clean(&chain(
        "run 20 m of x, at 10 °C, added 1 dB at 145 MHz wet 1 dB at 150 MHz",
    ));
    clean(
        "station s { duplexer DU1 { high 1 dB, rejects 80 dB at 146 MHz, rejects 60 dB at 147 MHz; low 1 dB } }",
    );
}

#[test]
fn a_frequency_is_no_band_of_a_figure() {
    let text = "session s { piece A 2 m of x; load swr 1.3 on 100 MHz }";
    let d = one(text);
    assert!(
        d.message.contains("`100 MHz` is a frequency"),
        "{}",
        d.message
    );
    clean(&corrected(text, &d, 0));
}

#[test]
fn words_that_belong_together_are_asked_for() {
    for (text, write) in [
        (
            "station s { receiver RX1 -119 dBm, noise 3 dB }",
            "noise figure 3 dB",
        ),
        (
            "station s { receiver RX1 { sensitivity -119 dBm; noise 3 dB } }",
            "noise figure 3 dB",
        ),
        (
            "station s { preamplifier PR1 20 dB gain, noise 1 dB }",
            "noise figure 1 dB",
        ),
        (
            "device x { kind preamplifier; gain 20 dB; noise 1 dB }",
            "noise figure 1 dB",
        ),
        (
            "station s { transmitter TX1 50 W carrier, fm, foldback 2 }",
            "foldback swr 2",
        ),
        (
            "station s { transmitter TX1 { power 5 W carrier; foldback 2 } }",
            "foldback swr 2",
        ),
    ] {
        let d = one(text);
        let good = corrected(text, &d, 0);
        assert!(good.contains(write), "{good}");
        clean(&good);
    }
}

#[test]
fn a_criterion_is_said_once() {
    for line in [
        "receiver RX1 -119 dBm for 12 dB sinad for 12 dB sinad",
        "receiver RX1 -119 dBm for 12 dB sinad 12 dB sinad",
        "receiver RX1 -119 dBm for 12 dB sinad, for 20 dB quieting",
    ] {
        assert_eq!(one(&station(line)).code.id, "said-twice", "{line}");
    }
    clean(&station(
        "receiver RX1 -119 dBm for 20 dB noise quieting noise figure 5 dB",
    ));
}

#[test]
fn a_fix_mends_the_line() {
    for (text, writes) in [
        (
            chain("read 5 W erp"),
            &["read 5 W forward;", "read 5 W reflected;", "read 5 W net;"][..],
        ),
        (chain("read 5 W forwrd"), &["read 5 W forward;"]),
        (
            chain("read 5 W"),
            &["read 5 W forward;", "read 5 W reflected;", "read 5 W net;"],
        ),
        (
            chain("read 5 W, 2026-07-04"),
            &[
                "read 5 W forward, 2026",
                "read 5 W reflected, 2026",
                "read 5 W net, 2026",
            ],
        ),
        (
            chain("limit 30 W outpt, \"c\""),
            &["limit 30 W output, \"c\";"],
        ),
        (
            "device y { kind isolater; loss 1 dB }".to_owned(),
            &["kind isolator;"],
        ),
        (
            "device y { kind attenuator; loss 1 dB }".to_owned(),
            &["kind pad;"],
        ),
    ] {
        let d = one(&text);
        assert_eq!(d.fixes.len(), writes.len(), "{text}: {d:?}");
        for (i, w) in writes.iter().enumerate() {
            let good = corrected(&text, &d, i);
            assert!(good.contains(w), "{good}");
            clean(&good);
        }
    }
    // two readings in one line, and a figure that a reading does not have: nothing to write instead
    for (text, says) in [
        (chain("read 5 W swr 1.2"), "of a power or of an SWR"),
        (
            "session s { piece A 2 m of x; readings on 2m { baseline 4 W; through A 3 W at 2 min, 50 °C } }".to_owned(),
            "this is a temperature",
        ),
    ] {
        let d = one(&text);
        assert!(d.message.contains(says), "{}", d.message);
        assert!(d.fixes.is_empty());
    }
}

#[test]
fn readings_of_a_band_name_their_meter_once() {
    use downlead_station::model::Meaning;
    let text = "session s { piece A 2 m of x; readings on 2m with W2 { baseline 4 W; through A 3 W with W1 } }";
    clean(text);
    let tree = File::parse(text);
    let low = lower(&tree.items()[0].item, &Lets::default(), false);
    let Meaning::Session(s) = low.meaning else {
        panic!("a session")
    };
    let with: Vec<_> = s.groups[0]
        .rows
        .iter()
        .map(|r| r.instrument.as_ref().map(|i| &*i.text))
        .collect();
    assert_eq!(with, [Some("W2"), Some("W1")]);
}

#[test]
fn an_end_of_the_bench_has_one_match() {
    for lines in [
        "load swr 1.1; load swr 1.3",
        "load swr 1.1; load return-loss 12 dB",
        "generator swr 1.1 on 2m; generator swr 1.3 on 2m",
        "load from \"a.s1p\"; load swr 1.2",
        "load swr 1.2; load from \"a.s1p\"",
        "generator from \"a.s1p\"; generator from \"b.s1p\"",
    ] {
        let d = one(&format!("session s {{ piece A 2 m of x; {lines} }}"));
        assert_eq!(d.code.id, "figure-twice", "{lines}");
    }
    clean(
        "session s { piece A 2 m of x; load swr 1.1 on 2m; load swr 1.3 on b2; generator swr 1.2 }",
    );
}

#[test]
fn a_calibration_is_not_due_before_it_was_made() {
    let d = one("instrument w { accuracy 5 % of reading; calibrated 2026-01-10; due 2025-01-10 }");
    assert!(d.message.contains("before the last one"), "{}", d.message);
    clean("instrument w { accuracy 5 % of reading; due 2026-01; calibrated 2026-01-10 }");
}

#[test]
fn a_line_has_one_loss() {
    use downlead_station::model::{Meaning, PartData};
    for text in [
        "run M1 20 m of x { loss 2 dB }",
        "run M1 20 m of x { loss 2 dB on 2m }",
        "tail T1 1 m of x { loss 0.2 dB on 2m; loss 0.3 dB on 70cm }",
    ] {
        let d = one(&station(text));
        assert!(d.message.contains("the cable is used"), "{}", d.message);
    }
    let text = station("run M1 { loss 2 dB on 2m; loss 3 dB on 70cm }");
    clean(&text);
    let tree = File::parse(text);
    let low = lower(&tree.items()[0].item, &Lets::default(), false);
    let Meaning::Station(s) = low.meaning else {
        panic!("a station")
    };
    let PartData::Line(l) = &s.parts[0].data else {
        panic!("a line")
    };
    assert_eq!((l.length.is_none(), l.loss.len()), (true, 2));
}

#[test]
fn a_coupling_is_said_to_be_one() {
    for line in [
        "coupler 20 dB",
        "coupler 20 dB, rating 50 W",
        "coupler 20 dB ± 1 dB",
    ] {
        let d = one(&chain(line));
        assert!(d.message.contains("followed by `coupled`"), "{}", d.message);
        clean(&corrected(&chain(line), &d, 0));
    }
    for line in [
        "coupler 0.3 dB",
        "coupler 20 dB coupled",
        "coupler 20 dB coupled, 0.3 dB",
        "coupler 3 dB coupled, 3.2 dB",
        "coupler 3.2 dB { coupled 3 dB }",
        "coupler of hybrid",
    ] {
        clean(&chain(line));
    }
    let d = one(&chain("coupler 20 dB coupled, 0.3 dB, 0.4 dB"));
    assert_eq!(d.code.id, "said-twice");
}

#[test]
fn an_antenna_has_one_match() {
    for line in [
        "antenna A1 { gain 5 dBi; swr 1.3; impedance 50 ohm with reactance 10 ohm }",
        "antenna A1 { gain 5 dBi; impedance 50 ohm; return-loss 12 dB on 2m }",
        "antenna A1 5 dBi, swr 1.3 { impedance 50 ohm }",
        "load L1 { impedance 60 ohm on 2m; swr 1.2 on 2m }",
    ] {
        let d = one(&station(line));
        assert!(d.message.contains("the impedance is used"), "{}", d.message);
    }
    clean(&station(
        "antenna A1 { gain 5 dBi; swr 1.3; impedance 50 ohm on 2m }",
    ));
}

#[test]
fn a_cable_says_each_figure_once() {
    let cable = |lines: &str| format!("cable x {{ loss 0.4 dB/100 m/sqrt(MHz); {lines} }}");
    for lines in [
        "accuracy 5 %; accuracy 4 %",
        "accuracy 5 % to 450 MHz; accuracy 4 % to 450 MHz",
        "rating 100 W; rating 200 W",
        "rating 1 kW at 10 MHz; rating 2 kW at 10 MHz",
    ] {
        assert_eq!(one(&cable(lines)).code.id, "figure-twice", "{lines}");
    }
    clean(&cable(
        "accuracy 5 % to 450 MHz; accuracy 8 %; rating 1 kW at 10 MHz; rating 300 W at 145 MHz",
    ));
    // a part has one rating
    for text in [
        station("pad P1 { loss 3 dB; rating 10 W; rating 20 W at 145 MHz }"),
        station("antenna A1 5 dBi { rating 10 W; rating 20 W }"),
        station("pad P1 3 dB, rating 10 W { rating 20 W at 145 MHz }"),
        "connector x { family n; loss 0.1 dB; rating 10 W; rating 20 W }".to_owned(),
    ] {
        assert_eq!(one(&text).code.id, "said-twice", "{text}");
    }
}

#[test]
fn connectors_of_a_station_are_counted() {
    use downlead_station::model::{Meaning, PartData};
    let text = "station s { adapter X1 2 of n-to-uhf; connector X2 4 of n-pair; connector X3 n-pair; adapter X4 n-to-uhf }";
    clean(text);
    let tree = File::parse(text);
    let low = lower(&tree.items()[0].item, &Lets::default(), false);
    let Meaning::Station(s) = low.meaning else {
        panic!("a station")
    };
    let counts: Vec<_> = s
        .parts
        .iter()
        .map(|p| match &p.data {
            PartData::Connector(n, name) => (p.tag.as_ref().map(|t| &*t.text), *n, &*name.text),
            _ => panic!("a connector"),
        })
        .collect();
    assert_eq!(
        counts,
        [
            (Some("X1"), 2, "n-to-uhf"),
            (Some("X2"), 4, "n-pair"),
            (Some("X3"), 1, "n-pair"),
            (Some("X4"), 1, "n-to-uhf")
        ]
    );
    clean(&chain(
        "connector 4 of n-pair; connector n-pair; adapter 2 of n-to-uhf; adapter n-to-uhf",
    ));
}

#[test]
fn a_divider_says_how_it_divides() {
    let d = one(&station("divider X1 3.3 dB"));
    assert!(d.message.contains("into how many ways"), "{}", d.message);
    for line in [
        "divider X1 2 way, 3.3 dB",
        "divider X1 3.3 dB { ways 2 }",
        "divider X1 { ways 2; excess 0.1 dB on 2m; excess 0.2 dB on b2 }",
        "divider X1 2 way, excess 0.1 dB on 2m, excess 0.2 dB on b2",
    ] {
        clean(&station(line));
    }
    let d = one(&station("divider X1 2 way, excess 0.1 dB, excess 0.2 dB"));
    assert_eq!(d.code.id, "figure-twice");
}

#[test]
fn what_is_no_band_ends_the_list() {
    for text in [
        "chain c on 2m 5 dB transmit { load }",
        "chain c on 5 dB { load }",
        "chain c on 2m, 3 W { load }",
    ] {
        assert!(!found(text).is_empty(), "{text}");
    }
}

#[test]
fn a_linearity_is_of_the_reading_or_of_full_scale() {
    use downlead_station::model::Meaning;
    let of = |line: &str| {
        let tree = File::parse(format!(
            "instrument w {{ accuracy 5 % of reading; scale 100 W; {line} }}"
        ));
        let low = lower(&tree.items()[0].item, &Lets::default(), false);
        assert!(low.diagnostics.is_empty(), "{line}: {:?}", low.diagnostics);
        let Meaning::Instrument(i) = low.meaning else {
            panic!("an instrument")
        };
        (i.linearity.expect("a linearity"), i.linearity_of_scale)
    };
    assert_eq!(of("linearity 1 % k 2 of full scale"), (0.005, true));
    assert_eq!(of("linearity 1 % k 2 of reading"), (0.005, false));
    assert_eq!(of("linearity 1 % k 2"), (0.005, false));
    for line in [
        "linearity 1 % of full",
        "linearity 0.1 dB of full scale",
        "repeatability 1 % of full scale",
    ] {
        let d = found(&format!("instrument w {{ {line} }}"));
        assert!(!d.is_empty(), "{line}");
    }
}

#[test]
fn a_session_says_how_far_its_transmitter_drifts() {
    use downlead_station::model::Meaning;
    let of = |line: &str| {
        let text = format!("session s {{ piece A 2 m of x; {line} }}");
        let tree = File::parse(text.as_str());
        let low = lower(&tree.items()[0].item, &Lets::default(), false);
        assert!(low.diagnostics.is_empty(), "{line}: {:?}", low.diagnostics);
        let Meaning::Session(s) = low.meaning else {
            panic!("a session")
        };
        (s.drift_per_minute, s.step_share)
    };
    let (drift, bow) = of("drift 0.5 % in 10 min, bow 10 %");
    assert!((drift.expect("a drift") - 0.0005).abs() < 1e-12);
    assert_eq!(bow, Some(0.1));
    assert_eq!(of("drift bow 0 %"), (None, Some(0.0)));
    for line in [
        "drift",
        "drift 0.5 %",
        "drift 120 % in 1 min",
        "drift 1 dB in 1 min",
        "drift bow",
        "drift bow 1 % bow 2 %",
    ] {
        let d = found(&format!("session s {{ piece A 2 m of x; {line} }}"));
        assert_eq!(d.len(), 1, "{line}: {d:?}");
    }
}

#[test]
fn a_definition_is_of_a_kind_of_device() {
    for word in ["antenna", "run", "connector", "transmitter"] {
        let d = found(&format!("device y {{ kind {word}; loss 1 dB }}"));
        assert_eq!(d[0].message, format!("`{word}` is no kind of device."));
    }
}

#[test]
fn a_word_of_the_trade_finds_its_statement() {
    for (text, write) in [
        (chain("attenuator 3 dB"), "pad 3 dB"),
        (chain("splitter 2 way"), "divider 2 way"),
        (chain("arrester 0.1 dB"), "protector 0.1 dB"),
        (chain("feedline 20 m of x"), "run 20 m of x"),
        (station("aerial A1 5 dBi"), "antenna A1 5 dBi"),
        (station("lna PR1 20 dB gain"), "preamplifier PR1 20 dB gain"),
        (station("antenna A1 { gain 5 dBi; vswr 1.3 }"), "swr 1.3"),
        (
            "coax x { loss 0.4 dB/100 m/sqrt(MHz) }".to_owned(),
            "cable x",
        ),
    ] {
        let d = one(&text);
        let good = corrected(&text, &d, 0);
        assert!(good.contains(write), "{text}: {}", d.message);
        clean(&good);
    }
}

#[test]
fn a_figure_that_holds_always_takes_no_band() {
    for text in [
        station("isolator IS1 { loss 0.5 dB; isolation 25 dB on 2m }"),
        station("coupler CP1 { coupled 20 dB at 145 MHz }"),
        station("pad P1 { loss 1 dB; rating 5 W on 2m }"),
        station("pad P1 { loss 1 dB; voltage 500 V on 2m }"),
        station("receiver RX1 { sensitivity -119 dBm on 2m }"),
        station("antenna A1 { gain 5 dBi; height 26 m agl on 2m }"),
        station("transmitter TX1 { power 5 W carrier; duty 40 % on 2m }"),
        "cable x { loss 0.4 dB/100 m/sqrt(MHz); velocity 0.66 on 2m }".to_owned(),
        "connector x { family n; loss 0.1 dB on 2m }".to_owned(),
    ] {
        let d = one(&text);
        assert!(
            d.message.contains("has no meaning"),
            "{text}: {}",
            d.message
        );
    }
    clean(&station(
        "pad P1 { loss 1 dB on 2m; rating 5 W at 145 MHz, sheet \"p. 3\" }",
    ));
}

/// Figures that nothing can have, one sign or one key beside the right one.
#[test]
fn a_gain_or_a_sensitivity_that_nothing_has_is_an_error() {
    for (line, says) in [
        ("antenna A1 4000 dBi", "No antenna has a gain of 4000 dB"),
        ("antenna A1 -300 dBd", "No antenna has a gain of -300 dB"),
        (
            "receiver RX1 119 dBm for 12 dB sinad",
            "No receiver needs 119 dBm",
        ),
    ] {
        let all = found(&station(line));
        let d = all.iter().find(|d| d.code.id == "impossible-value");
        assert!(
            d.is_some_and(|d| d.message.contains(says)),
            "{line}: {all:?}"
        );
    }
    for line in ["antenna A1 45 dBi", "receiver RX1 -119 dBm for 12 dB sinad"] {
        let all = found(&station(line));
        assert!(
            all.iter().all(|d| d.code.id != "impossible-value"),
            "{line}: {all:?}"
        );
    }
}
