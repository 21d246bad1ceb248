//! Findings that wait while a text is being written.

use downlead_ide::{Config, Doc, Finding, doc_text, file_diagnostics, premature};

use crate::case::Case;

/// Findings of the text with the cursor, `held` or not, by line from 1 and code.
fn held(text: &str, seen: &dyn Fn(&Finding) -> bool) -> Vec<String> {
    let c = Case::new(&format!("// file: main.downlead\n{text}"));
    let all = file_diagnostics(&c.s, 0, &Config::default());
    let waits = premature(&c.s, 0, &all, c.at[0], seen);
    let line = |f: &Finding| {
        let before = &doc_text(&c.s, Doc::File(0))[..f.span.start as usize];
        before.lines().count().max(1)
    };
    let tell = |(f, w): (&Finding, bool)| {
        let state = if w { "waits" } else { "shown" };
        format!("{} {} {state}", line(f), f.code)
    };
    all.iter().zip(waits).map(tell).collect()
}

fn new(text: &str) -> Vec<String> {
    held(text, &|_| false)
}

#[test]
fn the_line_being_written_waits_and_others_do_not() {
    let chain = "chain c on 145 MHz {\n    transmitter 5 W\n    run 3 of rg-213$0\n    pad 3 db\n    antenna 2 dBi\n}\n";
    // what came with a line that cannot be read waits, too
    assert_eq!(new(chain), ["3 missing-unit waits", "4 unknown-unit waits"]);
    assert_eq!(
        held(chain, &|f| f.code == "unknown-unit"),
        ["3 missing-unit waits", "4 unknown-unit shown"]
    );
    // the line was left
    let left = chain.replace("$0\n    pad", "\n    $0\n    pad");
    assert_eq!(new(&left), ["3 missing-unit shown", "5 unknown-unit shown"]);
}

#[test]
fn a_block_being_written_is_not_complete_yet() {
    let station = "station s {\n    run M1 3 m of rg-213\n    chain c on 145 MHz {\n        M1\n        $0\n    }\n}\n";
    let inside = new(station);
    assert!(
        inside
            .iter()
            .any(|f| f.ends_with("chain-without-end waits")),
        "{inside:?}"
    );
    assert!(inside.iter().all(|f| f.ends_with("waits")), "{inside:?}");
    let left = new(&station
        .replace("        $0\n", "")
        .replace("}\n}", "}\n}\n$0"));
    assert!(
        !left.is_empty() && left.iter().all(|f| f.ends_with("shown")),
        "{left:?}"
    );
}

#[test]
fn opening_lines_wait_for_their_blocks() {
    let text =
        "cable thin {\n    $0\n}\nchain c on 145 MHz {\n    transmitter 5 W\n    antenna 2 dB\n}\n";
    let all = new(text);
    assert!(
        all.iter()
            .any(|f| f.starts_with("1 ") && f.ends_with(" waits")),
        "{all:?}"
    );
    assert!(
        all.iter()
            .any(|f| f.starts_with("6 ") && f.ends_with(" shown")),
        "{all:?}"
    );
}
