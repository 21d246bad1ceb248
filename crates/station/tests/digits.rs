//! Values with more digits than their uncertainty supports, and others (GUM, JCGM 100:2008, 7.2.6:
//! two digits of the uncertainty).

use downlead_station::{Lets, lower};
use downlead_syntax::File;

fn found(line: &str) -> Option<(String, Option<String>)> {
    let text = format!("chain c on 145 MHz {{\n    {line}\n}}\n");
    let tree = File::parse(text);
    let item = &tree.items().iter().next().expect("an item").item;
    let all = lower(item, &Lets::default(), false).diagnostics;
    let mut fine = all.into_iter().filter(|d| d.code.id == "excess-digits");
    let first = fine.next()?;
    assert!(fine.next().is_none(), "{line}");
    let written = first.fixes.first().map(|f| f.edits[0].text.clone());
    Some((first.message, written))
}

#[test]
fn digits_beyond_the_doubt_are_told() {
    for (line, words, write) in [
        // 18 % of 30.8417 W are 5.55 W: known to a tenth
        (
            "transmitter 30.8417 W ± 18 % carrier",
            "The uncertainty of 30.8417 W is 5.6 W: the last digits are not significant; write `30.8 W`.",
            "30.8",
        ),
        // a standard uncertainty of 0.25 m is an expanded one of 0.5 m: known to 0.01 m
        (
            "run 46.2531 m ± 0.25 m k 1 of rg-213",
            "write `46.25 m`",
            "46.25",
        ),
        (
            "run 46.2531 m ± 50 cm of rg-213",
            "write `46.25 m`",
            "46.25",
        ),
        ("antenna 5.2041 dBi ± 0.5 dB", "write `5.20 dBi`", "5.20"),
        (
            "transmitter 44.9012 dBm ± 0.2 dB",
            "write `44.90 dBm`",
            "44.90",
        ),
        // 1 dB of 31.2345 W is 8.1 W
        ("transmitter 31.2345 W ± 1 dB", "write `31.2 W`", "31.2"),
        // 5 % of a power are 0.22 dB (10 / ln 10 · 0.05)
        (
            "transmitter 43.4561 dBm ± 5 %",
            "The uncertainty of 43.4561 dBm is 0.22 dBm",
            "43.46",
        ),
        (
            "run 1234.56 m ± 234.5 m of rg-213",
            "The uncertainty of 1234.56 m is 230 m: the last digits are not significant; write `1235 m`.",
            "1235",
        ),
        ("pad 0.1534 dB ± 0.15 dB", "write `0.15 dB`", "0.15"),
        ("transmitter 312.25 W ± 20 %", "write `312 W`", "312"),
    ] {
        let (said, fix) = found(line).expect(line);
        assert!(said.contains(words), "{said}");
        assert_eq!(fix.as_deref(), Some(write), "{line}");
    }
}

#[test]
fn what_its_doubt_covers_is_left_alone() {
    for line in [
        "transmitter 30.84 W ± 18 % carrier",
        "run 46.253 m ± 0.5 m of rg-213",
        "run 45.72 m ± 0.5 m of rg-213",
        "run 46.2531 m of rg-213",
        "run 46.2500 m ± 0.5 m of rg-213",
        "run 46 m ± 5000 mm of rg-213",
        "pad 0.165 dB ± 50 %",
        "read 28.4137 W ± 5 % forward, 2026-07-04 with W3 by x",
        "transmitter 30.8417 W ± 18 % carrier, read 2026-07-04 with W3",
        "run 46.2531 m to 46.9 m of rg-213",
        "run 46.2531 m ± 0 m of rg-213",
        "run 46.2531 m ± 1e300 m of rg-213",
        "transmitter 43.456 dBm ± 5 %",
    ] {
        assert_eq!(found(line), None, "{line}");
    }
}
