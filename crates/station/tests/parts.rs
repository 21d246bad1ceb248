//! What parts say beside their loss: which way they lie, what a balun
//! transforms.

use downlead_base::Diagnostic;
use downlead_station::model::{Device, Meaning, PartData, Sits};
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
    // of a file it is said of the file, before or behind it
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
