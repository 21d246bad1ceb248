//! Variants of the demo station: the brief's numbers, and that a variant is what the edited copy is.

mod common;

use common::{MAIN, bands, load, load_from, without_lines};
use downlead_eval::{Snapshot, Tried};
use downlead_report::Reports as _;
use downlead_report::shape::chain::Report;
use downlead_testkit::{Files, examples};

fn read(path: &str) -> String {
    std::fs::read_to_string(examples().0.join(path)).expect("an example")
}

/// The demo station with these variants in the same file.
fn station_with(variants: &str) -> String {
    format!(
        "{}\n{variants}",
        read("pellgarrow/rev4.downlead").replace("../thrennock/", "thrennock/")
    )
}

fn files(text: String) -> Files {
    Files::default()
        .with(MAIN, text)
        .with(
            "thrennock/cables.downlead",
            read("thrennock/cables.downlead"),
        )
        .with(
            "thrennock/instruments.downlead",
            read("thrennock/instruments.downlead"),
        )
}

fn tried(variants: &str, name: &str) -> Tried {
    let s = load_from(&files(station_with(variants)));
    s.try_variant(0, name).expect("a variant of a station")
}

fn variants() -> String {
    let text = read("variants/proposals.downlead");
    text[text.find("\nvariant ").expect("variants")..].to_owned()
}

/// Loss (dB), ERP (W) and margin (dB) of a chain.
fn result(r: &Report, chain: &str) -> (f64, f64, f64) {
    let (_, b) = bands(r)
        .into_iter()
        .find(|b| b.0 == chain)
        .expect("a chain");
    let limit = b.limits.first().expect("a limit");
    (
        b.total_loss_db.expect("a loss"),
        b.erp_w.expect("an ERP"),
        limit.margin_db,
    )
}

fn near(a: f64, b: f64, within: f64, what: &str) {
    assert!((a - b).abs() <= within, "{what}: {a} is not {b}");
}

/// The numbers were computed from the coefficients of the cables by a script of its own, from
/// k1 sqrt(f) sqrt(1 + 0.00393 (T - 20)) + k2 f for each cable and 0.05 dB per sqrt(GHz) for each
/// of the 14 pairs of connectors.
#[test]
fn variants_of_the_demo_station_have_the_expected_loss_power_and_margin() {
    let expected = [
        ("half-inch", (4.817, 21.31, 1.486), (6.648, 12.14, 2.167)),
        (
            "new-antenna",
            (4.180, 48.66, -2.101),
            (5.547, 27.51, -1.384),
        ),
        ("no-isolator", (3.611, 28.13, 0.280), (5.547, 15.65, 1.066)),
    ];
    for (name, two, seventy) in expected {
        let r = tried(&variants(), name).variant.report();
        for (chain, (loss, erp, margin)) in [("talk-out-2m", two), ("talk-out-70cm", seventy)] {
            let is = result(&r, chain);
            // the sums leave out what the parts reflect
            near(is.0, loss, 0.005, name);
            near(is.1, erp, 0.03, name);
            near(is.2, margin, 0.005, name);
        }
    }
}

#[test]
fn a_variant_is_to_the_last_bit_what_the_edited_copy_is() {
    let by_hand = [
        (
            "half-inch",
            "run M1 46 m of demo-seven-eighths-foam, mast, since 2026-06",
            "run M1 46 m of demo-half-foam, mast",
        ),
        ("no-isolator", "        IS1\n", ""),
        (
            "extra-filter",
            "        DU1.low\n",
            "        DU1.low\n        filter F9 0.6 dB ± 0.1 dB, passes 145 MHz to 147 MHz\n",
        ),
    ];
    for (name, was, is) in by_hand {
        let text = station_with("");
        assert!(text.contains(was), "{was}");
        let mut copy = text.replace(was, is);
        if name == "no-isolator" {
            let line = copy
                .lines()
                .find(|l| l.trim_start().starts_with("isolator IS1 "))
                .expect("IS1")
                .to_owned();
            copy = copy.replace(&line, "");
        }
        let copy: String = copy
            .lines()
            .filter(|l| !l.trim_start().starts_with("read "))
            .map(|l| format!("{l}\n"))
            .collect();
        let of_copy = load_from(&files(copy)).report();
        let of_variant = tried(&variants(), name).variant.report();
        let strip = |r: &Report| {
            let mut v = without_lines(r);
            // a tag is the only thing that differs where the filter has none
            let text = v.to_string().replace("\"tag\":\"F9\"", "\"tag\":null");
            v = serde_json::from_str(&text).expect("JSON");
            v.get("stations").expect("stations").clone()
        };
        if name == "extra-filter" {
            let numbers = |r: &Report| -> Vec<u64> {
                bands(r)
                    .iter()
                    .flat_map(|(_, b)| {
                        b.nodes
                            .iter()
                            .map(|n| n.cumulative_loss_db.unwrap_or(0.0).to_bits())
                            .collect::<Vec<_>>()
                    })
                    .collect()
            };
            assert_eq!(numbers(&of_copy), numbers(&of_variant), "{name}");
        } else {
            assert_eq!(strip(&of_copy), strip(&of_variant), "{name}");
        }
    }
}

#[test]
fn a_variant_of_a_station_in_another_file_is_the_same() {
    let own = tried(&variants(), "half-inch").variant.report();
    let files = Files::default()
        .with("p/main.downlead", read("variants/proposals.downlead"))
        .with("pellgarrow/rev4.downlead", read("pellgarrow/rev4.downlead"))
        .with(
            "thrennock/cables.downlead",
            read("thrennock/cables.downlead"),
        )
        .with(
            "thrennock/instruments.downlead",
            read("thrennock/instruments.downlead"),
        );
    let s = Snapshot::load(&["p/main.downlead".to_owned()], &files);
    let codes: Vec<_> = s.diagnostics().iter().map(|d| d.code.id).collect();
    assert!(codes.is_empty(), "{codes:?}");
    let t = s.try_variant(0, "half-inch").expect("a variant");
    assert_eq!(
        result(&own, "talk-out-2m"),
        result(&t.variant.report(), "talk-out-2m")
    );
    near(
        result(&t.base.report(), "talk-out-2m").0,
        4.180,
        5e-3,
        "the base",
    );
}

#[test]
fn a_variant_follows_its_station() {
    let text = |gain: &str| {
        format!(
            "band 2m 145.3 MHz\nstation hill {{\n    transmitter TX1 32 W ± 5 % carrier, fm\n    antenna A1 {gain}\n    chain out on 2m {{ TX1; A1 }}\n}}\nvariant x of hill {{ A1 6 dBi ± 0.5 dB }}\n"
        )
    };
    let codes = |s: &Snapshot| -> Vec<_> { s.diagnostics().iter().map(|d| d.code.id).collect() };
    let before = text("5 dBi ± 0.5 dB");
    let mut s = load(&before);
    assert_eq!(codes(&s), Vec::<&str>::new());
    let at = before.find("5 dBi").expect("there") as u32;
    s.edit(
        0,
        downlead_base::Span::new(at, at + 1),
        "6",
        &Files::default(),
    );
    assert_eq!(codes(&s), ["variant-changes-nothing"]);
}
