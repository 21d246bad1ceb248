//! What a derivation consists of: which parts it names, and what it leaves out.

mod common;

use common::load;
use downlead_eval::{Derivation, Snapshot};

fn all(s: &Snapshot, text: &str, begins: &str) -> Vec<Derivation> {
    fn add(d: &Derivation, out: &mut Vec<Derivation>) {
        out.push(d.clone());
        d.steps.iter().for_each(|s| add(s, out));
    }
    let at = text
        .lines()
        .position(|l| l.trim_start().starts_with(begins));
    let line = u32::try_from(at.expect("the line") + 1).expect("a small file");
    let mut out = Vec::new();
    for d in s.explain_line(common::MAIN, line) {
        add(&d, &mut out);
    }
    assert!(!out.is_empty(), "nothing at `{begins}`");
    out
}

fn of(text: &str, begins: &str) -> Vec<Derivation> {
    all(&load(text), text, begins)
}

/// The numbers of a text, in order.
fn numbers(text: &str) -> Vec<f64> {
    text.split(|c: char| !(c.is_ascii_digit() || c == '.'))
        .filter_map(|n| n.parse().ok())
        .collect()
}

const BRANCHES: &str = "\
station s {
    transmitter T 50 W ± 5 % carrier
    jumper J0 2 m of rg-213
    divider D 2 way, excess 0.1 dB
    jumper J1 2 m of rg-213
    jumper J2 3 m of rg-213
    antenna A1 { gain 6 dBi; swr 1.5 }
    antenna A2 { gain 6 dBi; swr 1.2 }
    chain c on 145 MHz transmit {
        T
        J0
        D {
            branch {
                J1
                A1
            }
            branch {
                J2
                A2
            }
        }
    }
}
";

#[test]
fn the_loss_on_the_way_names_the_parts_that_lose() {
    let steps = of(BRANCHES, "chain c");
    let ways: Vec<&Derivation> = steps.iter().filter(|d| d.title == "loss so far").collect();
    assert_eq!(ways.len(), 2, "{steps:#?}");
    for (way, (own, other)) in ways.iter().zip([("J1", "J2"), ("J2", "J1")]) {
        let f = &way.formula;
        assert!(
            f.contains("J0") && f.contains(own) && !f.contains(other),
            "{f}"
        );
        // as many terms as parts, and one at most for the mean over what is uncertain
        let (parts, terms) = (f.split(", ").count(), numbers(&way.substituted).len());
        assert!(terms == parts || terms == parts + 1, "{way:#?}");
    }
}

#[test]
fn a_divider_in_front_of_a_divider_is_followed() {
    // four ways by three dividers: each arm has a quarter of the power, 6.02 dB and no more
    let text = "\
station s {
    transmitter T 40 W carrier
    divider D1 2 way
    divider D2 2 way
    divider D3 2 way
    antenna A1 { gain 6 dBi; swr 1 }
    antenna A2 { gain 6 dBi; swr 1 }
    antenna A3 { gain 6 dBi; swr 1 }
    antenna A4 { gain 6 dBi; swr 1 }
    chain c on 145 MHz transmit {
        T
        D1 {
            branch {
                D2 {
                    branch {
                        A1
                    }
                    branch {
                        A2
                    }
                }
            }
            branch {
                D3 {
                    branch {
                        A3
                    }
                    branch {
                        A4
                    }
                }
            }
        }
    }
}
";
    let steps = of(text, "chain c");
    let powers: Vec<f64> = steps
        .iter()
        .filter(|d| d.title.starts_with("power at A"))
        .map(|d| numbers(&d.value)[0])
        .collect();
    assert!(
        powers.len() >= 4 && powers.iter().all(|p| (p - 10.0).abs() < 0.01),
        "{steps:#?}"
    );
    for (begins, title) in [("D2 {", "loss of D2"), ("D3 {", "loss of D3")] {
        let steps = of(text, begins);
        let loss = steps.iter().find(|s| s.title == title);
        let loss = loss.unwrap_or_else(|| panic!("{steps:#?}"));
        assert!((numbers(&loss.value)[0] - 3.0103).abs() < 1e-3, "{loss:#?}");
        let into = steps
            .iter()
            .find(|s| s.title.starts_with("power into each branch"));
        let into = into.unwrap_or_else(|| panic!("{steps:#?}"));
        assert!((numbers(&into.value)[0] - 10.0).abs() < 0.01, "{into:#?}");
    }
}

#[test]
fn a_mean_that_differs_from_the_stated_value_says_by_how_much() {
    // unknown phases between two strong reflections move the mean
    let text = "chain c on 145 MHz {\n    transmitter 100 W carrier\n    filter F1 { loss 1 dB; swr 2 }\n    filter F2 { loss 1 dB; swr 2 }\n    antenna { gain 2 dBi; swr 3 }\n}\n";
    let mut seen = 0;
    for line in ["chain c", "filter F1", "filter F2", "antenna"] {
        for d in of(text, line) {
            if d.title == "M"
                || d.title
                    .starts_with("mean over the uncertainty less the loss")
            {
                let value = numbers(&d.value)[0];
                if value > 0.01 {
                    assert_eq!(d.formula, "mean - stated", "{d:#?}");
                    let of = numbers(&d.substituted);
                    assert!(((of[0] - of[1]).abs() - value).abs() < 0.001, "{d:#?}");
                    seen += 1;
                }
            }
        }
    }
    assert!(seen > 0, "no mean that differs");
}

#[test]
fn what_radiates_nothing_has_no_radiated_power() {
    let chain = |end: &str| {
        format!(
            "chain c on 145 MHz {{\n    transmitter 100 W ± 5 % carrier\n    pad 3 dB\n    {end}\n}}\n"
        )
    };
    let says = |end: &str| {
        let steps = of(&chain(end), "chain c");
        steps
            .iter()
            .any(|d| d.title.contains("ERP") || d.title.contains("EIRP"))
    };
    assert!(says("antenna 2 dBi"));
    assert!(!says("load, swr 1.1"));
}

#[test]
fn small_causes_stand_together() {
    // ± 20 % of the power is 0.50 dB; each pad's ± 0.0008 dB is 0.00046 dB, below what is shown
    let pads = "    pad 1 dB ± 0.0008 dB\n".repeat(6);
    let text = format!(
        "chain c on 145 MHz {{\n    transmitter 100 W ± 20 % carrier\n{pads}    antenna 2 dBi\n}}\n"
    );
    let steps = of(&text, "chain c");
    let rest = steps
        .iter()
        .find(|d| d.title.starts_with("causes below 1 %"));
    let rest = rest.unwrap_or_else(|| panic!("{steps:#?}"));
    // six of them: √6 · 0.0008/√3
    let want = (6.0_f64 / 3.0).sqrt() * 0.0008;
    assert!((numbers(&rest.value)[0] - want).abs() < 2e-5, "{rest:#?}");
    // without them nothing stands there
    let steps = of(&text.replace(" ± 0.0008 dB", ""), "chain c");
    assert!(
        !steps
            .iter()
            .any(|d| d.title.starts_with("causes below 1 %"))
    );
}

#[test]
fn a_line_shows_its_constants_one_by_one() {
    let text = "cable k {\n    impedance 50 ohm\n    velocity 0.8\n    loss 0.5 dB/100 m/sqrt(MHz) + 0.002 dB/100 m/MHz\n    source \"x\"\n}\nchain c on 144 MHz {\n    transmitter 100 W carrier\n    filter { loss 1 dB; swr 1.5 }\n    run 20 m of k, at 20 °C\n    antenna { gain 2 dBi; swr 2 }\n}\n";
    let steps = of(text, "run 20 m");
    // 12 · 0.5 + 144 · 0.002 = 6.288 dB/100 m
    let matched = steps.iter().find(|d| d.title.starts_with("matched loss"));
    let matched = matched.unwrap_or_else(|| panic!("{steps:#?}"));
    assert!(
        (numbers(&matched.value)[0] - 1.2576).abs() < 1e-3,
        "{matched:#?}"
    );
    let reflected = steps
        .iter()
        .filter(|d| d.formula.contains("Γ") || d.title.contains("Γ"));
    assert!(reflected.count() > 1, "{steps:#?}");
}

#[test]
fn a_reflecting_part_shows_what_its_networks_are_made_of() {
    let text = "chain c on 144 MHz {\n    transmitter 100 W carrier\n    filter F1 { loss 1 dB; swr 1.5 }\n    pad 1 dB\n    antenna { gain 2 dBi; swr 2 }\n}\n";
    let steps = of(text, "filter F1");
    let back = steps
        .iter()
        .find(|d| d.title == "reflected share before F1");
    let back = back.unwrap_or_else(|| panic!("{steps:#?}"));
    let size = back.steps.iter().find(|d| d.title == "|Γ|");
    let size = size.unwrap_or_else(|| panic!("{back:#?}"));
    assert_eq!(
        (&*size.formula, &*size.value),
        ("(SWR - 1) / (SWR + 1)", "0.2")
    );
    assert_eq!(size.substituted, "(1.5 - 1) / (1.5 + 1)");
    assert!(
        size.steps
            .iter()
            .any(|d| d.title == "SWR" && d.value == "1.5"),
        "{size:#?}"
    );
    // the matched loss is shown once
    assert!(
        !back
            .steps
            .iter()
            .any(|d| d.title.starts_with("matched loss")),
        "{back:#?}"
    );
}
