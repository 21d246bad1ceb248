//! Hints of a whole long file are the same as those of its screens, whatever was edited before.

mod driver;

use downlead_testkit::{CABLE_LINE, RUN_LINE, large_file};
use driver::Client;
use serde_json::{Value, json};

const URI: &str = "untitled:large";

fn ask(c: &mut Client, from: usize, to: usize) -> Vec<(u64, u64, String)> {
    let range =
        json!({ "start": { "line": from, "character": 0 }, "end": { "line": to, "character": 0 } });
    let answer = c.ask(
        "textDocument/inlayHint",
        json!({ "textDocument": { "uri": URI }, "range": range }),
    );
    let hints = answer.as_array().expect("hints").clone();
    let label = |l: &Value| match l {
        Value::String(text) => text.clone(),
        parts => parts
            .as_array()
            .expect("parts")
            .iter()
            .map(|p| p["value"].as_str().expect("a value"))
            .collect(),
    };
    hints
        .iter()
        .map(|h| {
            let at = &h["position"];
            let number = |v: &Value| v.as_u64().expect("a number");
            assert_eq!(h["paddingLeft"], true);
            (
                number(&at["line"]),
                number(&at["character"]),
                label(&h["label"]),
            )
        })
        .collect()
}

fn by_screens(c: &mut Client, lines: usize) -> Vec<(u64, u64, String)> {
    // a range ends before its last line
    (0..lines)
        .step_by(100)
        .flat_map(|top| ask(c, top, top + 100))
        .collect()
}

#[test]
fn a_whole_file_has_the_hints_of_its_screens() {
    let text = large_file(2_000);
    let lines = text.lines().count();
    let mut c = Client::start();
    c.open(URI, &text);
    c.diagnostics(URI, 1);
    let place = |begin: &str, nth: usize| {
        let mut all = text
            .lines()
            .enumerate()
            .filter(|(_, l)| l.starts_with(begin));
        all.nth(nth).expect("a line").0
    };
    let edits = [
        (
            place(RUN_LINE.split(" 46").next().expect("a run"), 3),
            "    run M1 ".len(),
            "3",
        ),
        (
            place(CABLE_LINE, 0),
            CABLE_LINE.find("0.").expect("a figure") + 2,
            "4",
        ),
        // a line more, and one that is broken
        (
            place("        IS1", 2),
            0,
            "        IS1\n        pad 1 dB ± ± (\n",
        ),
        (0, 0, "// Ω 𝄞\n"),
    ];
    let first = ask(&mut c, 0, lines + 10);
    assert!(first.len() > 500, "{}", first.len());
    assert_eq!(first, by_screens(&mut c, lines + 10));
    let mut seen = vec![first];
    for (i, (line, column, new)) in edits.into_iter().enumerate() {
        let end = column + usize::from(new.len() == 1);
        let range = json!({ "start": { "line": line, "character": column }, "end": { "line": line, "character": end } });
        c.change(URI, i as i64 + 2, json!([{ "range": range, "text": new }]));
        // with the sample in them
        c.diagnostics(URI, i as i64 + 2);
        let whole = ask(&mut c, 0, lines + 10);
        assert_eq!(whole, by_screens(&mut c, lines + 10), "edit {i}");
        assert_ne!(Some(&whole), seen.last(), "edit {i} shows");
        seen.push(whole);
    }
    assert_eq!(c.finish(), 0);
}

#[test]
fn a_plain_hint_can_be_looked_at() {
    let text = large_file(2_000);
    let mut c = Client::start();
    c.open(URI, &text);
    let range =
        json!({ "start": { "line": 0, "character": 0 }, "end": { "line": 9999, "character": 0 } });
    let params = json!({ "textDocument": { "uri": URI }, "range": range });
    let all = c.ask("textDocument/inlayHint", params);
    let all = all.as_array().expect("hints");
    let hint = all.iter().find(|h| {
        let label = h["label"].as_str();
        label.is_some_and(|l| l.contains("dB") && l.contains('W'))
    });
    let whole = c.ask("inlayHint/resolve", hint.expect("a part").clone());
    assert!(whole["tooltip"].is_object(), "{whole}");
    assert!(whole["label"].is_array(), "{whole}");
    assert_eq!(c.finish(), 0);
}

/// At the end of a line a lens follows a hint; above it, it begins the line.
#[test]
fn lenses_after_hints_begin_with_a_divider() {
    let text = "chain c on 145 MHz {\n    transmitter 5 W ± 5 %\n    antenna 2.15 dBi\n}\n";
    for above in [false, true] {
        let mut params = driver::capabilities();
        params["initializationOptions"] = json!({ "downlead": {}, "lensesAbove": above });
        let mut c = Client::with(&params);
        c.open("untitled:c", text);
        let p = json!({ "textDocument": { "uri": "untitled:c" } });
        let all = c.ask("textDocument/codeLens", p);
        let all = all.as_array().expect("lenses");
        assert!(!all.is_empty());
        for lens in all {
            let title = lens["command"]["title"].as_str().expect("a title");
            assert_eq!(title.starts_with("· "), !above, "{title}");
        }
        c.finish();
    }
}
