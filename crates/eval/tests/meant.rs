//! "Did you mean": by the words of the trade and by a beginning. What is offered is right as it
//! stands: the changed text has no error.

mod common;

use common::load;
use downlead_base::{Diagnostic, Severity};

fn errors(text: &str) -> Vec<Diagnostic> {
    let mut all = load(text).diagnostics();
    all.retain(|d| d.severity == Severity::Error);
    all
}

/// The text after the fix at this place among those of its only error.
fn after(text: &str, n: usize) -> String {
    let s = load(text);
    let mut found = s.diagnostics();
    found.retain(|d| d.severity == Severity::Error);
    assert_eq!(found.len(), 1, "{text}\n{found:#?}");
    let Some(fix) = found[0].fixes.get(n) else {
        panic!("{text}\n{found:#?}")
    };
    let (_, at) = s.place(fix.edits[0].loc).expect("a place");
    let mut out = text.to_owned();
    out.replace_range(at.range(), &fix.edits[0].text);
    out
}

#[test]
fn words_of_the_trade_find_the_statement() {
    for (typed, meant) in [
        ("coax M1 28 m of rg-213", "run"),
        ("feedline M1 28 m of rg-213", "run"),
        ("patch-lead M1 1 m of rg-213", "jumper"),
        ("attenuator P1 3 dB", "pad"),
        ("splitter D1 2 way, 3.3 dB", "divider"),
        ("hybrid D1 2 way, 3.3 dB", "divider"),
        ("arrester S1 0.1 dB", "protector"),
        ("lightning-arrester S1 0.1 dB", "protector"),
        ("surge S1 0.1 dB", "protector"),
        ("tx T1 5 W", "transmitter"),
        ("rx R1 -110 dBm for 12 dB sinad", "receiver"),
        ("cavity F1 1 dB", "filter"),
        ("notch F1 1 dB", "filter"),
        ("bandpass F1 1 dB", "filter"),
        ("dummy-load L1 swr 1.1", "load"),
        ("dipole A1 2.15 dBi", "antenna"),
        ("swr-meter W1 0.1 dB", "meter"),
        ("amp PA1 10 dB gain", "amplifier"),
        ("preamp PA1 10 dB gain, noise figure 1 dB", "preamplifier"),
        // by the beginning alone
        ("con C1 2 of n-pair", "connector"),
        ("rec R1 -110 dBm for 12 dB sinad", "receiver"),
        ("term L1 swr 1.1", "load"),
        ("attenu P1 3 dB", "pad"),
    ] {
        let text = format!(
            "station s {{\n    {typed}\n    chain c on 145 MHz {{ transmitter 5 W; antenna 2 dBi }}\n}}\n"
        );
        let changed = after(&text, 0);
        let line = changed.lines().nth(1).unwrap_or_default().trim();
        assert!(line.starts_with(&format!("{meant} ")), "{typed}: {line}");
        assert!(
            errors(&changed).is_empty(),
            "{typed}: {:#?}",
            errors(&changed)
        );
    }
}

#[test]
fn a_beginning_of_several_words_offers_each() {
    let text = "station s {\n    tra T1 5 W\n    chain c on 145 MHz { transmitter 5 W; antenna 2 dBi }\n}\n";
    let found = errors(text);
    let titles: Vec<&str> = found[0].fixes.iter().map(|f| &*f.title).collect();
    assert_eq!(titles, ["write `transceiver`", "write `transmitter`"]);
    assert!(errors(&after(text, 1)).is_empty());
    // two letters are the beginning of too much
    let short = text.replace("tra ", "tr ");
    assert!(errors(&short)[0].fixes.is_empty());
}

#[test]
fn plugs_and_names_by_their_beginning_find_what_is_defined() {
    for (line, wants) in [
        ("connector 2 of pl-259", "uhf-pair"),
        ("connector 2 of so-239", "uhf-pair"),
        ("connector 2 of type-n", "n-pair"),
        ("connector 2 of bnc", "bnc-pair"),
        ("run 3 m of half-inch", "half-inch-foam"),
    ] {
        let text = format!(
            "chain c on 145 MHz {{\n    transmitter 5 W\n    {line}\n    antenna 2 dBi\n}}\n"
        );
        let changed = after(&text, 0);
        assert!(changed.contains(wants), "{line}: {changed}");
        assert!(errors(&changed).is_empty(), "{line}");
    }
}
