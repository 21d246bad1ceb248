//! The text of a station with the changes of a variant.

use downlead_station::model::Meaning;
use downlead_station::variant::{Applied, apply};
use downlead_station::{Lets, lower};
use downlead_syntax::File;

const HILL: &str = "\
station hill {
    place mast { temperature 10 °C }
    transmitter TX1 32 W ± 5 % carrier, fm, keyed 100 %, read 2026-07-04 with W1 by QY2TEC
    transmitter TX2 { power 10 W ± 5 % carrier on 70cm, rated; mode fm }
    duplexer DU1 { high 1.45 dB ± 0.15 dB, passes 145 MHz to 147 MHz, sheet \"DU-6 p. 2\"; low 1.5 dB }
    isolator IS1 0.55 dB ± 0.15 dB, sheet \"IS-2\" // the isolator
    run M1 46 m ± 0.5 m of half-inch-foam, mast, added 1.3 dB on 2m, since 2014-05
    antenna A1 { gain 5.2 dBi ± 0.5 dB on 2m 4m, sheet \"AN-7\"; gain 7.6 dBi ± 0.5 dB on 70cm; height 26 m agl }
    chain out on 2m {
        TX1
        IS1
        DU1.high // the transmit leg
        M1
        read 12 W forward, 2026-07-04 with W1 by QY2TEC
        A1
    }
    chain two on 70cm { TX2; M1; A1 }
}
";

fn applied(variant: &str) -> Applied {
    let (base, v) = (File::parse(HILL), File::parse(variant));
    let lets = Lets::default();
    let item = &v.items()[0].item;
    let low = lower(item, &lets, false);
    let Meaning::Variant(m) = &low.meaning else {
        panic!("{:#?}", low.diagnostics)
    };
    let mut a = apply(item, m, &base.items()[0].item, &lets);
    a.diagnostics.splice(0..0, low.diagnostics);
    a
}

/// The lines of the changed text that differ from the station's, without blanks around them.
fn lines(lines_of: &str) -> Vec<String> {
    let a = applied(&format!("variant x of hill {{ {lines_of} }}\n"));
    let codes: Vec<_> = a
        .diagnostics
        .iter()
        .map(|d| (d.code.id, &d.message))
        .collect();
    assert!(codes.is_empty(), "{codes:?}");
    let was: Vec<&str> = HILL.lines().map(str::trim).collect();
    let read = |l: &&str| l.starts_with("read ");
    let is = a.text.lines().map(str::trim);
    is.filter(|l| !was.contains(l) && !l.is_empty() && !read(l))
        .map(str::to_owned)
        .collect()
}

fn codes(lines: &str) -> Vec<&'static str> {
    let a = applied(&format!("variant x of hill {{ {lines} }}\n"));
    a.diagnostics.iter().map(|d| d.code.id).collect()
}

#[test]
fn a_figure_of_the_head_takes_its_uncertainty_and_source_and_leaves_the_rest() {
    assert_eq!(
        lines("TX1 25 W ± 4 %"),
        ["transmitter TX1 25 W ± 4 % carrier, fm, keyed 100 %"]
    );
    assert_eq!(
        lines("TX1 25 W ± 4 % pep, guess"),
        ["transmitter TX1 25 W ± 4 % pep, fm, keyed 100 %, guess"]
    );
    assert_eq!(
        lines("TX1 keyed 50 %"),
        ["transmitter TX1 32 W ± 5 % carrier, fm, keyed 50 %, read 2026-07-04 with W1 by QY2TEC"]
    );
    assert_eq!(
        lines("IS1 0.4 dB ± 0.1 dB"),
        ["isolator IS1 0.4 dB ± 0.1 dB // the isolator"]
    );
}

#[test]
fn a_line_of_a_block_is_replaced_with_what_it_says_besides() {
    assert_eq!(
        lines("TX2 8 W ± 3 %, guess"),
        ["transmitter TX2 { power 8 W ± 3 % carrier, guess; mode fm }"]
    );
    assert_eq!(
        lines("DU1.high 1.2 dB ± 0.1 dB"),
        ["duplexer DU1 { high 1.2 dB ± 0.1 dB, passes 145 MHz to 147 MHz; low 1.5 dB }"]
    );
    assert_eq!(
        lines("DU1.high 1.2 dB ± 0.1 dB, passes 140 MHz to 150 MHz"),
        ["duplexer DU1 { high 1.2 dB ± 0.1 dB, passes 140 MHz to 150 MHz; low 1.5 dB }"]
    );
}

#[test]
fn a_figure_on_a_band_replaces_that_of_the_band_only() {
    assert_eq!(
        lines("A1 gain 8 dBi ± 1 dB on 70cm, sheet \"AN-9\""),
        [
            "antenna A1 { gain 5.2 dBi ± 0.5 dB on 2m 4m, sheet \"AN-7\"; gain 8 dBi ± 1 dB on 70cm, sheet \"AN-9\"; height 26 m agl }"
        ]
    );
    assert_eq!(
        lines("A1 gain 8 dBi ± 1 dB on 2m"),
        [
            "antenna A1 { gain 5.2 dBi ± 0.5 dB on 4m, sheet \"AN-7\"; gain 8 dBi ± 1 dB on 2m; gain 7.6 dBi ± 0.5 dB on 70cm; height 26 m agl }"
        ]
    );
    // without a band it holds on all
    assert_eq!(
        lines("A1 gain 8 dBi ± 1 dB"),
        ["antenna A1 { gain 8 dBi ± 1 dB;  height 26 m agl }"]
    );
}

#[test]
fn a_line_takes_another_length_or_cable_and_keeps_the_rest() {
    assert_eq!(
        lines("M1 30 m ± 0.3 m"),
        ["run M1 30 m ± 0.3 m of half-inch-foam, mast, added 1.3 dB on 2m"]
    );
    assert_eq!(
        lines("M1 of rg-213"),
        ["run M1 46 m ± 0.5 m of rg-213, mast, added 1.3 dB on 2m"]
    );
    assert_eq!(
        lines("M1 40 m ± 0.5 m of rg-213, mast, added 0.5 dB on 2m"),
        ["run M1 40 m ± 0.5 m of rg-213, mast, added 0.5 dB on 2m"]
    );
    assert_eq!(
        lines("M1 3 dB ± 0.2 dB"),
        ["run M1 3 dB ± 0.2 dB, mast, added 1.3 dB on 2m"]
    );
}

#[test]
fn parts_go_and_come() {
    assert_eq!(lines("take IS1"), ["// the isolator"]);
    let a = applied("variant x of hill { take IS1 }\n");
    assert!(!a.text.contains("IS1"), "{}", a.text);
    assert_eq!(a.text.lines().count(), HILL.lines().count());
    let a =
        applied("variant x of hill { filter F9 0.6 dB ± 0.1 dB; put F9 after DU1.high in out }\n");
    assert!(
        a.text.contains("DU1.high; F9 // the transmit leg"),
        "{}",
        a.text
    );
    assert!(
        a.text.ends_with("    filter F9 0.6 dB ± 0.1 dB\n}\n"),
        "{}",
        a.text
    );
    assert!(!a.text.contains("read 12 W"));
}

#[test]
fn what_is_wrong_is_said() {
    assert_eq!(codes("TX1 25 W"), ["variant-drops-uncertainty"]);
    assert_eq!(codes("TX1 25 W ± 5 %; TX1 20 W ± 5 %"), ["variant-twice"]);
    assert_eq!(codes("take IS1; IS1 0.4 dB ± 0.1 dB"), ["variant-twice"]);
    assert_eq!(
        codes("TX1 32 W ± 5 % carrier, fm, keyed 100 %, read 2026-07-04 with W1 by QY2TEC"),
        ["variant-changes-nothing"]
    );
    assert_eq!(codes(""), ["variant-changes-nothing"]);
    assert_eq!(
        codes("limit 3 W erp"),
        ["variant-not-a-figure", "variant-changes-nothing"]
    );
    assert_eq!(codes("TX1 blue"), ["variant-not-a-figure"]);
    assert_eq!(codes("TX1 sheet \"x\""), ["variant-not-a-figure"]);
    assert_eq!(codes("TX9 3 W"), ["unknown-part"]);
    assert_eq!(codes("put IS1 after TX2 in out"), ["unknown-part"]);
    assert_eq!(codes("put IS1 after M1 in nowhere"), ["unknown-part"]);
    // a figure on one band beside one on others is no second one
    assert_eq!(
        codes("A1 gain 8 dBi ± 1 dB on 2m; A1 gain 9 dBi ± 1 dB on 70cm"),
        Vec::<&str>::new()
    );
}

#[test]
fn figures_of_the_head_on_bands_are_replaced_on_them() {
    assert_eq!(
        lines("M1 added 1 dB on 2m"),
        ["run M1 46 m ± 0.5 m of half-inch-foam, mast, added 1 dB on 2m, since 2014-05"]
    );
    assert_eq!(
        lines("M1 added 1 dB on 70cm"),
        [
            "run M1 46 m ± 0.5 m of half-inch-foam, mast, added 1.3 dB on 2m, since 2014-05, added 1 dB on 70cm"
        ]
    );
    assert_eq!(
        lines("A1 height 20 m agl"),
        [
            "antenna A1 { gain 5.2 dBi ± 0.5 dB on 2m 4m, sheet \"AN-7\"; gain 7.6 dBi ± 0.5 dB on 70cm; height 20 m agl }"
        ]
    );
}
