//! What costs more than it can be worth is refused with a limit that is named.

mod common;

use common::load;
use downlead_report::Reports as _;

#[test]
fn more_bands_chains_and_parts_than_are_computed_are_named() {
    use std::fmt::Write;
    let n = 60;
    let mut t = String::new();
    for i in 0..n {
        let _ = writeln!(t, "band b{i} {}.5 MHz to {}.6 MHz", 100 + i, 100 + i);
    }
    t += "station s {\n    transmitter TX 1 W\n    antenna A1 3 dBi\n";
    for i in 0..n {
        let _ = writeln!(t, "    run M{i} 1 m of rg-213");
    }
    let bands: Vec<String> = (0..n).map(|i| format!("b{i}")).collect();
    for k in 0..8 {
        let _ = writeln!(
            t,
            "    chain c{k} on {} transmit {{\n        TX",
            bands.join(", ")
        );
        for i in 0..n {
            let _ = writeln!(t, "        M{i}");
        }
        t += "        A1\n    }\n";
    }
    t += "}\n";
    // 180 frequencies times 62 parts are 11,160: four chains of eight
    let s = load(&t);
    let told = s
        .diagnostics()
        .iter()
        .filter(|d| d.code.id == "chain-too-long")
        .count();
    assert_eq!(told, 4);
    let with_bands = s.report().stations[0]
        .chains
        .iter()
        .filter(|c| !c.bands.is_empty())
        .count();
    assert_eq!(with_bands, 4);
}

#[test]
fn a_chain_of_very_many_parts_is_refused() {
    let pads = "    pad 0.01 dB ± 0.001 dB\n".repeat(30_000);
    let s = load(&format!(
        "chain c on 145 MHz {{\n    transmitter 1 W\n{pads}    antenna 3 dBi\n}}\n"
    ));
    let d = s.diagnostics();
    assert!(
        d.iter().any(|d| d.code.id == "chain-too-long"),
        "{}",
        d.len()
    );
    assert!(
        s.report().stations[0].chains[0]
            .bands
            .iter()
            .all(|b| !b.complete)
    );
}
