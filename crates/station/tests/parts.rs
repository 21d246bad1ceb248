//! What parts say beside their loss: which way they lie, what a balun
//! transforms, how a divider divides,
//! for which frequency a line is cut, what a leg rejects,
//! what lines and connectors reflect.

use downlead_base::Diagnostic;
use downlead_station::model::{Device, LineLength, Meaning, Mode, PartData, Sits, Step, When};
use downlead_station::{Lets, lower};
use downlead_syntax::File;

/// The first part of a station with these lines, and what is found.
fn part(lines: &str) -> (Option<Device>, Vec<Diagnostic>) {
    let tree = File::parse(format!("station s {{ {lines} }}"));
    let l = lower(&tree.items()[0].item, &Lets::default(), false);
    let Meaning::Station(st) = l.meaning else {
        panic!("{lines}: no station")
    };
    let device = st.parts.first().and_then(|p| match &p.data {
        PartData::Device(d) => Some((**d).clone()),
        _ => None,
    });
    (device, l.diagnostics)
}

fn device(lines: &str) -> Device {
    let (d, found) = part(lines);
    assert!(found.is_empty(), "{lines}: {found:?}");
    d.unwrap_or_else(|| panic!("{lines}: no device"))
}

fn code(lines: &str) -> (&'static str, String) {
    let (_, found) = part(lines);
    assert_eq!(found.len(), 1, "{lines}: {found:?}");
    (found[0].code.id, found[0].message.clone())
}

#[test]
fn parts_with_a_direction_can_be_reversed() {
    for line in [
        "isolator IS1 0.5 dB, isolation 25 dB, reversed",
        "isolator IS1 of club-isolator, reversed",
        "isolator IS1 { loss 0.5 dB; isolation 25 dB; reversed }",
        "circulator CI1 0.4 dB reversed",
        "coupler CP1 20 dB coupled, reversed",
        "amplifier PA1 13 dB gain, reversed",
        "preamplifier PR1 20 dB gain, noise figure 1 dB, reversed",
    ] {
        assert!(device(line).reversed, "{line}");
    }
    assert!(!device("isolator IS1 0.5 dB, isolation 25 dB").reversed);
    // with a file it belongs to the file, before or after it
    for line in [
        "isolator IS1 from \"i.s2p\" reversed",
        "isolator IS1 reversed from \"i.s2p\"",
        "filter F1 from \"f.s2p\" reversed",
    ] {
        let d = device(line);
        assert!(!d.reversed && d.ports[0].network[0].reversed, "{line}");
    }
}

#[test]
fn parts_without_a_direction_cannot_be_reversed() {
    for line in [
        "filter F1 0.5 dB, reversed",
        "pad P1 { loss 3 dB; reversed }",
    ] {
        let (id, words) = code(line);
        assert_eq!(id, "unexpected-word", "{line}");
        assert!(words.contains("network file"), "{words}");
    }
    // a definition lies nowhere
    let tree = File::parse("device x { kind isolator; loss 0.5 dB; reversed }");
    let found = lower(&tree.items()[0].item, &Lets::default(), false).diagnostics;
    assert_eq!(found.len(), 1, "{found:?}");
    assert!(found[0].message.contains("where it is installed"));
}

#[test]
fn a_balun_has_a_ratio_and_its_loss_sits_somewhere() {
    for (line, ratio, sits) in [
        (
            "balun BA1 0.1 dB series, ratio 4:1",
            Some(4.0),
            Some(Sits::Series),
        ),
        (
            "balun BA1 0.1 dB ± 0.05 dB shunt, ratio 1:4",
            Some(0.25),
            Some(Sits::Shunt),
        ),
        ("balun BA1 0.1 dB, ratio 1:1", Some(1.0), None),
        ("balun BA1 0.1 dB", None, None),
        (
            "balun BA1 { loss 0.1 dB series on 2m; ratio 4:1 }",
            Some(4.0),
            Some(Sits::Series),
        ),
        ("balun BA1 of b41, ratio 2.25:1", Some(2.25), None),
    ] {
        let d = device(line);
        assert_eq!((d.ratio.map(|r| r.value), d.sits), (ratio, sits), "{line}");
    }
    let spread = device("balun BA1 0.1 dB, ratio 4:1 ± 5 %")
        .ratio
        .expect("a ratio");
    assert!((spread.u - 0.2 / 3f64.sqrt()).abs() < 1e-12);
}

#[test]
fn only_a_balun_has_a_ratio() {
    for line in [
        "filter F1 0.5 dB, ratio 4:1",
        "pad P1 3 dB series",
        "pad P1 { loss 3 dB shunt }",
        "tuner TU1 { loss 0.3 dB; ratio 4:1 }",
    ] {
        let (id, words) = code(line);
        assert_eq!(id, "unexpected-word", "{line}");
        assert!(words.contains("is said of a balun"), "{words}");
    }
    assert_eq!(code("balun BA1 0.1 dB, ratio 0:1").0, "impossible-value");
    assert_eq!(code("balun BA1 0.1 dB, ratio 4 dB").0, "wrong-unit");
}

#[test]
fn a_divider_divides_unequally() {
    for (line, shares) in [
        ("divider DV1 2 way, split 70 % 30 %", &[0.7, 0.3][..]),
        ("divider DV1 split 70 % 30 %, excess 0.2 dB", &[0.7, 0.3]),
        ("divider DV1 split 50 % 25 % 12.5 %", &[0.5, 0.25, 0.125]),
        ("divider DV1 { ways 2; split 60 % 40 % }", &[0.6, 0.4]),
        // 10^(-1.55/10), 10^(-5.23/10)
        (
            "divider DV1 2 way, split 1.55 dB 5.23 dB",
            &[0.699_842, 0.299_916],
        ),
        // rounded halves are no more than all
        ("divider DV1 split 3.01 dB 3.01 dB", &[0.5, 0.5]),
    ] {
        let d = device(line);
        assert_eq!(d.ways, u32::try_from(shares.len()).ok(), "{line}");
        assert_eq!(d.split.len(), shares.len(), "{line}");
        for (a, b) in d.split.iter().zip(shares) {
            assert!((a.value - b).abs() < 1e-6, "{line}: {a:?}");
        }
    }
    // 0.5 dB of a half is 5.8 % of its power, each with its own
    let d = device("divider DV1 split 3.1 dB ± 0.5 dB 3.1 dB");
    let relative = d.split[0].u / d.split[0].value;
    assert!((relative - 0.5 / 3f64.sqrt() / 4.342_944_8).abs() < 1e-9);
    assert_eq!(d.split[1].u, 0.0);
}

#[test]
fn shares_of_a_divider_that_cannot_be_are_errors() {
    for (line, id, words) in [
        ("divider DV1 split 70 % 40 %", "impossible-value", "110.0 %"),
        ("divider DV1 split 3 dB 2 dB", "impossible-value", "113.2 %"),
        (
            "divider DV1 3 way, split 70 % 30 %",
            "impossible-value",
            "3 branches",
        ),
        (
            "divider DV1 { ways 3; split 70 % 30 % }",
            "impossible-value",
            "3 branches",
        ),
        (
            "divider DV1 2 way, split 70 %",
            "missing-value",
            "share of each branch",
        ),
        (
            "divider DV1 split 0.7 30 %",
            "missing-unit",
            "0.7 has no unit",
        ),
        (
            "divider DV1 tee, split 70 % 30 %",
            "unexpected-word",
            "junction",
        ),
        (
            "filter F1 1 dB, split 70 % 30 %",
            "unexpected-word",
            "divider",
        ),
        (
            "combiner C1 { port a 3 dB; port b 3 dB; tee }",
            "unexpected-word",
            "divider",
        ),
    ] {
        let (is, message) = code(line);
        assert_eq!(is, id, "{line}: {message}");
        assert!(message.contains(words), "{line}: {message}");
    }
}

#[test]
fn a_divider_may_be_a_plain_junction() {
    for (line, ways) in [
        ("divider T1 tee", 2),
        ("divider T1 3 way, tee", 3),
        ("divider T1 { ways 3; tee }", 3),
        ("divider T1 { tee }", 2),
    ] {
        let d = device(line);
        assert!(d.tee && d.split.is_empty(), "{line}");
        assert_eq!(d.ways, Some(ways), "{line}");
    }
    assert!(!device("divider DV1 2 way").tee);
    // in a chain it needs no tag, and these words are none
    for line in ["divider tee", "divider split 70 % 30 %"] {
        let text =
            format!("chain c on 145 MHz {{ transmitter 9 W; {line} {{ branch {{ load }} }} }}");
        let tree = File::parse(text);
        let l = lower(&tree.items()[0].item, &Lets::default(), false);
        assert!(l.diagnostics.is_empty(), "{line}: {:?}", l.diagnostics);
        let Meaning::Chain(c) = l.meaning else {
            panic!("{line}: no chain")
        };
        let Step::Part { part, branches } = &c.steps[1] else {
            panic!("{line}: no part")
        };
        assert!(part.tag.is_none() && branches.len() == 1, "{line}");
    }
}

/// The length of the first line in wavelengths, its frequency, and what is found.
fn cut(line: &str) -> (Option<(f64, Option<f64>)>, Vec<Diagnostic>) {
    let tree = File::parse(format!("station s {{ {line} }}"));
    let l = lower(&tree.items()[0].item, &Lets::default(), false);
    let Meaning::Station(st) = l.meaning else {
        panic!("{line}: no station")
    };
    let length = st.parts.first().and_then(|p| match &p.data {
        PartData::Line(l) => l.length,
        _ => None,
    });
    let waves = match length {
        Some(LineLength::Wavelengths { length, at_hz }) => Some((length.value, at_hz)),
        _ => None,
    };
    (waves, l.diagnostics)
}

#[test]
fn an_electrical_length_says_its_frequency() {
    for (line, waves, hz) in [
        ("run M1 3.5 wavelengths at 145 MHz of x", 3.5, Some(145e6)),
        ("jumper J1 180° at 145 MHz of x, at 15 °C", 0.5, Some(145e6)),
        (
            "tail T1 2.5 wavelengths ± 0.1 wavelengths at 435 MHz of x",
            2.5,
            Some(435e6),
        ),
        (
            "run M1 0.25 wavelengths of x, at 145 MHz",
            0.25,
            Some(145e6),
        ),
        ("run M1 0.25 wavelengths of x, at 15 °C", 0.25, None),
    ] {
        let (is, found) = cut(line);
        assert!(found.is_empty(), "{line}: {found:?}");
        assert_eq!(is, Some((waves, hz)), "{line}");
    }
    for (line, words) in [
        ("run M1 46 m at 145 MHz of x", "same at every frequency"),
        ("run M1 0.25 wavelengths at 15 °C of x", "follows the cable"),
        ("run M1 0.25 wavelengths at of x", "cut for follows"),
    ] {
        let (_, found) = cut(line);
        assert_eq!(found.len(), 1, "{line}: {found:?}");
        assert!(
            found[0].message.contains(words),
            "{line}: {}",
            found[0].message
        );
    }
}

#[test]
fn a_leg_says_what_it_rejects() {
    let d = device(
        "duplexer DU1 { high 1.45 dB ± 0.15 dB, passes 146.8 MHz to 147.0 MHz, rejects 85 dB ± 2 dB at 146.3 MHz, sheet \"p. 2\"; low 1.5 dB; low rejects 80 dB at 146.9 MHz, rejects 60 dB on 70cm 23cm }",
    );
    assert_eq!(d.ports.len(), 2);
    let [high] = &d.ports[0].rejects[..] else {
        panic!("{:?}", d.ports[0].rejects)
    };
    assert_eq!(high.when, When::At(146.3e6));
    assert!((high.value.value - 85.0).abs() < 1e-12);
    assert!((high.value.u - 2.0 / 3f64.sqrt()).abs() < 1e-12);
    // the leg's own loss holds everywhere, and has the sheet
    assert_eq!(d.ports[0].loss[0].when, When::Always);
    assert_eq!(d.ports[0].loss[0].meta.source.as_deref(), Some("p. 2"));
    let [at, on] = &d.ports[1].rejects[..] else {
        panic!("{:?}", d.ports[1].rejects)
    };
    assert_eq!(at.when, When::At(146.9e6));
    assert!(matches!(&on.when, When::Bands(b) if b.len() == 2));
    for line in [
        "switch SW1 { port a 0.1 dB, rejects 60 dB; port b 0.1 dB, rejects 60 dB }",
        "combiner C1 { port a { 145 MHz 3.3 dB; 146 MHz 3.4 dB }; port b 3.3 dB, rejects 30 dB on 2m; port a rejects 30 dB }",
        "diplexer DX1 { high from \"h.s2p\", rejects 50 dB on 2m; low from \"l.s2p\", rejects 50 dB on 70cm }",
    ] {
        let d = device(line);
        assert!(d.ports.iter().all(|p| p.rejects.len() == 1), "{line}");
    }
}

#[test]
fn one_isolation_of_several_legs_is_not_used() {
    for (line, words) in [
        (
            "duplexer DU1 { high 1.5 dB; low 1.5 dB; isolation 85 dB }",
            "`DU1` enters no number",
        ),
        (
            "diplexer DX1 { high 0.3 dB; low 0.2 dB; isolation 50 dB }",
            "which leg",
        ),
        (
            "switch SW1 { port a 0.1 dB; port b 0.1 dB; isolation 60 dB }",
            "which port",
        ),
        (
            "combiner C1 { port a 3.3 dB; port b 3.3 dB; isolation 30 dB }",
            "which port",
        ),
        ("switch SW1 0.1 dB, isolation 60 dB", "which port"),
    ] {
        let (id, message) = code(line);
        assert_eq!(id, "isolation-not-used", "{line}");
        assert!(message.contains(words), "{message}");
    }
    for line in [
        "isolator IS1 0.5 dB, isolation 25 dB",
        "circulator CI1 { loss 0.4 dB; isolation 20 dB }",
        "duplexer DU1 { high 1.5 dB, rejects 85 dB; low 1.5 dB, rejects 85 dB; isolation 85 dB }",
    ] {
        device(line);
    }
    let (id, message) = code("filter F1 { port a 1 dB, rejects 40 dB at 150 MHz }");
    assert_eq!(id, "unexpected-word");
    assert!(message.contains("this is a filter"), "{message}");
    assert_eq!(
        code("duplexer DU1 { high 1.5 dB, rejects 85 dB at 146.3 MHz; low 1.5 dB; high rejects 80 dB at 146.3 MHz }").0,
        "figure-twice"
    );
}

/// |Γ| and its standard uncertainty, from an SWR: |Γ| = (s − 1)/(s + 1), d|Γ|/ds = 2/(s + 1)².
fn reflection(swr: downlead_quantity::Measure) -> (f64, f64) {
    let s = swr.value;
    ((s - 1.0) / (s + 1.0), 2.0 / ((s + 1.0) * (s + 1.0)) * swr.u)
}

#[test]
fn a_line_says_what_its_ends_reflect() {
    let line = |text: &str| {
        let tree = File::parse(format!("station s {{ {text} }}"));
        let l = lower(&tree.items()[0].item, &Lets::default(), false);
        let Meaning::Station(st) = l.meaning else {
            panic!("{text}: no station")
        };
        let swr = match st.parts.first().map(|p| &p.data) {
            Some(PartData::Line(l)) => l.swr.to_vec(),
            other => panic!("{text}: {other:?}"),
        };
        (swr, l.diagnostics)
    };
    for text in [
        "jumper J1 0.4 dB, return-loss 20 dB ± 2 dB on 2m",
        "run M1 46 m of x, return-loss 20 dB ± 2 dB on 2m, at 15 °C",
        "tail T1 0.4 dB { return-loss 20 dB ± 2 dB on 2m }",
    ] {
        let (swr, found) = line(text);
        assert!(found.is_empty(), "{text}: {found:?}");
        assert_eq!(swr.len(), 1, "{text}");
        assert!(
            matches!(&swr[0].when, When::Bands(b) if &*b[0].text == "2m"),
            "{text}"
        );
        // 20 dB are |Γ| = 0.1; 2 dB of it are 0.1 ln(10)/20 x 2
        let (g, u) = reflection(swr[0].value);
        assert!((g - 0.1).abs() < 1e-12, "{g}");
        let expected = 0.1 * std::f64::consts::LN_10 / 20.0 * 2.0 / 3f64.sqrt();
        assert!((u - expected).abs() < 1e-12, "{u} {expected}");
    }
    let (swr, _) = line("jumper J1 0.4 dB, swr 1.1, swr 1.5 on 2m");
    assert_eq!(swr.len(), 2);
    let (_, found) = line("jumper J1 0.4 dB, swr 1.1, swr 1.5");
    assert_eq!(found[0].code.id, "figure-twice");
    let (_, found) = line("jumper J1 from \"j.s2p\", swr 1.1");
    assert_eq!(found[0].code.id, "figure-twice");
}

#[test]
fn a_connector_says_what_a_pair_reflects() {
    let connector = |lines: &str| {
        let tree = File::parse(format!("connector x {{ family n; loss 0.05 dB; {lines} }}"));
        let l = lower(&tree.items()[0].item, &Lets::default(), false);
        match l.meaning {
            Meaning::Connector(c) => (c.swr, l.diagnostics),
            other => panic!("{lines}: {other:?}"),
        }
    };
    let (swr, found) = connector("return-loss 32 dB ± 3 dB");
    assert!(found.is_empty(), "{found:?}");
    let (g, u) = reflection(swr.expect("an SWR"));
    assert!((g - 10f64.powf(-1.6)).abs() < 1e-12);
    assert!((u - g * std::f64::consts::LN_10 / 20.0 * 3f64.sqrt()).abs() < 1e-12);
    let (swr, found) = connector("swr 1.05");
    assert!(found.is_empty() && swr.is_some_and(|s| s.value == 1.05));
    let (swr, found) = connector("swr 1.05; bump 33 ohm 40 mm");
    assert_eq!(found[0].code.id, "figure-twice");
    assert!(swr.is_none());
}

#[test]
fn a_return_loss_of_nearly_nothing_stays_a_number() {
    let d = device("filter F1 { loss 3 dB; return-loss 0.0000000000000000000001 dB }");
    let m = d.swr[0].value;
    assert!(m.value.is_finite() && m.value > 1e6 && m.u.is_finite());
    let (d, _) = part("filter F1 { loss 3 dB; return-loss 0.001 dB ± 1 dB }");
    let m = d.expect("a device").swr[0].value;
    assert!(m.value.is_finite() && m.u.is_finite());
}

/// A word that begins something the statement says is no tag, if what follows fits it.
#[test]
fn a_word_with_a_meaning_is_no_tag() {
    let part = |line: &str| {
        let tree = File::parse(format!("chain c on 145 MHz {{\n    {line}\n}}\n"));
        let low = lower(&tree.items()[0].item, &Lets::default(), false);
        assert!(low.diagnostics.is_empty(), "{line}: {:?}", low.diagnostics);
        let Meaning::Chain(c) = low.meaning else {
            panic!("{line}")
        };
        match &c.steps[0] {
            Step::Part { part, .. } => (**part).clone(),
            other => panic!("{line}: {other:?}"),
        }
    };
    let tx = part("transmitter fm 32 W carrier");
    assert!(tx.tag.is_none());
    let PartData::Transmitter(t) = tx.data else {
        panic!("no transmitter")
    };
    assert_eq!(t.mode, Some(Mode::Fm));
    assert_eq!(t.power[0].0.value.value, 32.0);
    let load = part("load return-loss 40 dB");
    assert!(load.tag.is_none());
    let PartData::Antenna(a) = load.data else {
        panic!("no load")
    };
    // (1 + 0.01) / (1 - 0.01)
    assert!((a.swr[0].value.value - 1.01 / 0.99).abs() < 1e-12);
    let isolator = part("isolator reversed 0.5 dB, isolation 20 dB");
    assert!(isolator.tag.is_none());
    let PartData::Device(d) = isolator.data else {
        panic!("no isolator")
    };
    assert!(d.reversed);
    assert_eq!(d.ports[0].loss[0].value.value, 0.5);
    // what follows does not fit the word: then it is a tag
    for (line, tag) in [
        ("pad rating 1 dB", "rating"),
        ("antenna height 5 dBi", "height"),
        ("pad mean 3 dB", "mean"),
    ] {
        let p = part(line);
        assert_eq!(
            p.tag.map(|t| t.text.to_string()).as_deref(),
            Some(tag),
            "{line}"
        );
    }
}
