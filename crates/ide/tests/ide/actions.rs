//! Code actions: what they offer, what they change, and that the change holds.

use downlead_ide::{Action, ActionKind, Config, Doc, code_actions, fix_all};
use downlead_report::Reports as _;

use crate::case::{Case, applied, changes};

fn offered(c: &Case) -> Vec<Action> {
    code_actions(&c.s, c.doc, c.range(), &Config::default())
}

fn titles(c: &Case) -> String {
    offered(c)
        .iter()
        .map(|a| {
            let mut t = format!("{}: {}", a.kind.name(), a.title);
            if a.preferred {
                t.push_str(" (preferred)");
            }
            if let Some(why) = &a.disabled {
                t.push_str(&format!(" (not now: {why})"));
            }
            t
        })
        .collect::<Vec<_>>()
        .join("\n")
}

/// The file after the action whose title begins so.
fn taken(c: &Case, title: &str) -> String {
    let all = offered(c);
    let a = all
        .iter()
        .find(|a| a.title.starts_with(title))
        .unwrap_or_else(|| panic!("`{title}` is not among:\n{}", titles(c)));
    assert_eq!(a.disabled, None, "{}", a.title);
    let mine: Vec<_> = a.edits.iter().filter(|e| e.doc == c.doc).cloned().collect();
    applied(c.text(), &mine)
}

fn again(c: &Case, text: &str) -> Case {
    let rest: String =
        c.s.files()
            .iter()
            .skip(1)
            .map(|f| format!("// file: {}\n{}", f.path, f.text()))
            .collect();
    Case::new(&format!("{text}{rest}"))
}

fn codes(c: &Case) -> Vec<&'static str> {
    c.s.diagnostics().iter().map(|d| d.code.id).collect()
}

#[test]
fn fixes_of_findings_take_the_finding_away() {
    for (from, to, title, code) in [
        (
            "A1 5.20 dBi ± 0.5 dB",
            "A1 5.20$0 dB",
            "Write `dBi`",
            "gain-without-reference",
        ),
        (
            "        M1\n        A1\n        limit",
            "        MM$01\n        A1\n        limit",
            "Write `M1`",
            "unknown-part",
        ),
        (
            "of club-foam",
            "of club$0-fom",
            "Write `club-foam`",
            "unknown-cable",
        ),
        ("DU1.high", "DU1.$0low", "Write `DU1.high`", "legs-swapped"),
        (
            "on 2m transmit",
            "on 22$0m transmit",
            "Write `2m`",
            "unknown-band",
        ),
    ] {
        let c = Case::hill(from, to);
        assert!(codes(&c).contains(&code), "{code}: {:?}", codes(&c));
        let all = offered(&c);
        let fix = all
            .iter()
            .find(|a| a.codes.contains(&code) && a.kind == ActionKind::QuickFix);
        let fix = fix.unwrap_or_else(|| panic!("{code}, {title}: {}", titles(&c)));
        assert!(fix.finding.is_some());
        let after = again(&c, &applied(c.text(), &fix.edits));
        assert!(!codes(&after).contains(&code), "{}", fix.title);
    }
}

#[test]
fn all_clear_fixes_at_once() {
    let c = Case::new(
        "station s {\n    ground 612 m\n    chin c on 145 MHz {\n        transmitter 5 W\n        load\n    }\n}\n",
    );
    let after = applied(c.text(), &fix_all(&c.s, 0, &Config::default()));
    insta::assert_snapshot!(changes(c.text(), &after), @r"
    -    ground 612 m
    -    chin c on 145 MHz {
    +    ground 612 m amsl
    +    chain c on 145 MHz {
    ");
}

#[test]
fn units_in_place() {
    let mut out = String::new();
    for (from, to, title) in [
        ("46 m of", "4$06 m of", "Convert to `151 ft`"),
        ("32 W ±", "32 $0W ±", "Convert to"),
        ("5.20 dBi", "5.2$00 dBi", "Convert to"),
        ("temperature 10 °C", "temperature 1$00 °C", "Convert to"),
        ("-119 dBm", "3$03 dBm", "Convert to"),
        ("438.9 MHz", "438$0.9 MHz", "Convert to"),
    ] {
        let c = Case::hill(from, to);
        out.push_str(&changes(c.text(), &taken(&c, title)));
    }
    insta::assert_snapshot!(out);
}

/// Converting changes no result beyond the digits written.
#[test]
fn units_of_the_whole_file() {
    let c = Case::hill("46 m of", "4$06 m ± 0.5 m of");
    let c2 = again(
        &c,
        &c.text().replace(
            "    antenna A1",
            "    tail T2 2.20 m of club-foam\n    antenna A1",
        ),
    );
    let c2 = Case {
        at: c.at.clone(),
        ..c2
    };
    let after = taken(&c2, "Convert all");
    insta::assert_snapshot!(changes(c2.text(), &after));
}

#[test]
fn a_doubt_in_the_same_unit_stands_against_it() {
    let c = Case::hill("32 W ± 5 %", "32$0 W ± 1 W");
    assert!(
        titles(&c).contains("(not now: its uncertainty is in W)"),
        "{}",
        titles(&c)
    );
}

#[test]
fn a_band_named_like_a_length_is_left_alone() {
    let c = Case::hill("on 2m transmit", "on 2$0m transmit");
    assert!(!titles(&c).contains("Convert"), "{}", titles(&c));
}

#[test]
fn a_part_moves_to_the_station_and_back() {
    let text = "station s {\n    transmitter TX1 5 W ± 5 % carrier\n\n    chain c on 145 MHz {\n        TX1\n        jump$0er 2 m of rg-213\n        antenna {\n            gain 5 dBi\n            swr 1.2\n        }\n    }\n}\n";
    let c = Case::new(text);
    let out = taken(&c, "Move this jumper to the station as `J1`");
    insta::assert_snapshot!(out);
    let before = c.s.report();
    let moved = Case::new(&out.replace("        J1\n", "        J$01\n"));
    assert_eq!(
        moved.s.report().stations[0].chains[0].bands[0].erp_w,
        before.stations[0].chains[0].bands[0].erp_w
    );
    assert_eq!(taken(&moved, "Write `J1` into this chain"), c.text());
}

#[test]
fn a_block_moves_with_its_indentation() {
    let c = Case::new(
        "station s {\n    chain c on 145 MHz {\n        transmitter 5 W\n        ante$0nna {\n            gain 5 dBi\n        }\n    }\n}\n",
    );
    insta::assert_snapshot!(taken(&c, "Move this antenna"));
}

#[test]
fn a_device_becomes_a_definition() {
    let c = Case::hill("duplexer DU1 {", "duplexer D$0U1 {");
    let out = taken(&c, "Move what is said of DU1 to a device `du1`");
    insta::assert_snapshot!(changes(c.text(), &out), @r"
    +device du1 {
    +    kind duplexer
    +    high 1.45 dB ± 0.15 dB, passes 146.8 MHz to 147.0 MHz
    +    low 1.50 dB ± 0.15 dB, passes 146.2 MHz to 146.4 MHz
    +    low rejects 85 dB at 146.9137 MHz
    +}
    +
    -    duplexer DU1 {
    -        high 1.45 dB ± 0.15 dB, passes 146.8 MHz to 147.0 MHz
    -        low 1.50 dB ± 0.15 dB, passes 146.2 MHz to 146.4 MHz
    -        low rejects 85 dB at 146.9137 MHz
    -    }
    +    duplexer DU1 of du1
    ");
    // the same on the air, and another one can be made of it
    let now = again(&c, &out);
    assert_eq!(codes(&now), codes(&c));
    let erp = |c: &Case| c.s.report().stations[0].chains[0].bands[0].erp_w;
    assert_eq!(erp(&now), erp(&c));
    // a transmitter is no device
    let c =
        Case::new("station s {\n    transmitter TX$01 {\n        power 5 W carrier\n    }\n}\n");
    assert!(!titles(&c).contains("Move what"), "{}", titles(&c));
}

#[test]
fn what_cannot_be_moved_says_why() {
    let mut out = String::new();
    for (from, to) in [
        (
            "        M1\n        A1\n        limit",
            "        M$01\n        A1\n        limit",
        ),
        ("        DU1.high", "        DU$01.high"),
    ] {
        out.push_str(&format!("{}\n", titles(&Case::hill(from, to))));
    }
    let loose =
        Case::new("chain c on 145 MHz {\n    transmitter 5 W\n    pa$0d 1 dB\n    load\n}\n");
    out.push_str(&titles(&loose));
    insta::assert_snapshot!(out);
}

#[test]
fn assumptions_made_explicit_go_and_change_nothing() {
    let text = "band b 145 MHz\nstation s {\n    transmitter TX1 5 W ± 5 %\n    run M1 20 m of mine\n    protector SP1 0.2 dB ± 0.1 dB\n    divider DV1 2 way, excess 0.2 dB ± 0.1 dB\n    antenna A1 {\n        gain 5 dBi ± 0.5 dB\n    }\n    antenna A2 5 dBi ± 0.5 dB\n\n    cha$0in c on b {\n        TX1\n        M1\n        SP1\n        DV1 {\n            branch { A1 }\n            branch { A2 }\n        }\n        limit 30 W erp, \"clause\"\n    }\n}\ncable mine {\n    loss typical {\n        100 MHz 4 dB/100 m\n        200 MHz 6 dB/100 m\n    }\n    accuracy 5 %\n    source \"sheet\"\n}\n";
    let c = Case::new(text);
    let before = c.s.report();
    let b = |r: &downlead_report::shape::chain::Report| {
        (
            r.stations[0].chains[0].bands[0].erp_w,
            r.stations[0].chains[0].bands[0].assumptions.len(),
        )
    };
    let all: Vec<Action> = offered(&c)
        .into_iter()
        .filter(|a| a.title.starts_with("State "))
        .collect();
    let mut out = String::new();
    for a in &all {
        let after = applied(c.text(), &a.edits);
        let now = Case::new(&after);
        let r = now.s.report();
        assert_eq!(b(&r).0, b(&before).0, "{} changes the result", a.title);
        out.push_str(&format!("{}\n{}", a.title, changes(c.text(), &after)));
    }
    insta::assert_snapshot!(out);
    // all of them together leave fewer assumptions
    let mut edits: Vec<_> = all.iter().flat_map(|a| a.edits.clone()).collect();
    edits.sort_by_key(|e| e.span);
    let now = Case::new(&applied(c.text(), &edits));
    assert!(b(&now.s.report()).1 < b(&before).1);
    assert_eq!(b(&now.s.report()).0, b(&before).0);
}

#[test]
fn the_largest_power_that_keeps_a_limit() {
    let c = Case::hill("limit 45 W", "limit$0 20 W");
    let after = taken(&c, "Turn TX1 down to");
    let now = again(&c, &after);
    let l = |c: &Case| c.s.report().stations[0].chains[0].bands[0].limits[0].clone();
    assert_ne!(l(&c).verdict.word(), "met");
    assert_eq!(l(&now).verdict.word(), "met");
    // a hundredth of the setting more would not be
    assert!(
        l(&now).margin_db - l(&now).uncertainty_db < 0.05,
        "{:?}",
        l(&now)
    );
    insta::assert_snapshot!(changes(c.text(), &after));
    let c = Case::hill("limit 45 W", "limit$0 4500 W");
    let now = again(&c, &taken(&c, "Turn TX1 up to"));
    assert_eq!(l(&now).verdict.word(), "met");
}

#[test]
fn the_longest_cable_that_keeps_an_expectation() {
    let c = Case::hill(
        "        limit",
        "        expect$0 erp 36.5 W ± 0.1 dB\n        limit",
    );
    assert!(codes(&c).contains(&"expectation-missed"), "{:?}", codes(&c));
    let after = taken(&c, "Make M1");
    insta::assert_snapshot!(changes(c.text(), &after));
    let now = again(&c, &after);
    assert!(!codes(&now).contains(&"expectation-missed"));
}

#[test]
fn what_was_read_in_place_of_the_sheet() {
    let text = "instrument W1 {\n    accuracy 2 % of reading\n}\nband b 145 MHz\nstation s {\n    isolator IS1 0.5 dB ± 0.1 dB, sheet \"IS-2 p. 3\"\n    run M1 40 m of rg-213\n    chain c on b {\n        transmitter 32 W carrier\n        read 32 W forward, 2026-07-04 with W1 by QY2TEC\n        IS$01\n        read 27 W forward, 2026-07-04 with W1 by QY2TEC\n        M1\n        read 10 W forward, 2026-07-05 with W1 by QY2TEC\n        load, return-loss 40 dB\n    }\n}\n";
    let c = Case::new(text);
    let mut out = changes(c.text(), &taken(&c, "Replace the loss of IS1"));
    let c = Case::new(&text.replace("$0", "").replace("        M1", "        M$01"));
    out.push_str(&changes(c.text(), &taken(&c, "Add ")));
    insta::assert_snapshot!(out);
}

#[test]
fn the_library_is_never_changed() {
    let c = Case::new(
        "chain c on 145 MHz {\n    transmitter 5 W\n    run 3 m of rg-213\n    load\n}\n",
    );
    for offset in 0..u32::try_from(c.text().len()).unwrap() {
        for a in code_actions(
            &c.s,
            c.doc,
            downlead_base::Span::new(offset, offset),
            &Config::default(),
        ) {
            assert!(a.edits.iter().all(|e| matches!(e.doc, Doc::File(_))));
        }
    }
    assert_eq!(
        code_actions(
            &c.s,
            Doc::Library(0),
            downlead_base::Span::new(3, 3),
            &Config::default()
        ),
        []
    );
}
