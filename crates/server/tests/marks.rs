//! Swatches and inline values, over the wire.

mod driver;

use std::time::Duration;

use driver::Client;
use serde_json::{Value, json};

const URI: &str = "untitled:marks";

/// 40 W less 1 dB into a dipole: 31.8 W ERP, which the uncertainty lets be 32 W. The sheet's
/// name is one character, two units of UTF-16 and four bytes.
const TEXT: &str = "\
let legal 25 W
chain x on 145 MHz {
    transmitter TX1 40 W ± 5 % carrier
    pad P1 1 dB
    antenna A1 2.15 dBi, sheet \"𝄞\"; limit 60 W erp, \"clause 1\"; limit 32 W erp, \"clause 2\"
    limit legal erp, \"clause 3\"
}
";

/// Blue, orange and dark vermilion.
const GOOD: [u8; 3] = [0, 114, 178];
const UNSURE: [u8; 3] = [230, 159, 0];
const BAD: [u8; 3] = [178, 60, 0];

fn vscode() -> Value {
    serde_json::from_str(include_str!("clients/vscode.json")).expect("JSON")
}

fn swatches(c: &mut Client) -> Vec<(u64, u64, u64, [u8; 3])> {
    let answer = c.ask(
        "textDocument/documentColor",
        json!({ "textDocument": { "uri": URI } }),
    );
    let number = |v: &Value| v.as_u64().expect("a number");
    let all = answer.as_array().expect("a list");
    all.iter()
        .map(|s| {
            let (start, end) = (&s["range"]["start"], &s["range"]["end"]);
            assert_eq!(start["line"], end["line"]);
            assert_eq!(s["color"]["alpha"], 1.0);
            let part = |name: &str| {
                let share = s["color"][name].as_f64().expect("a share");
                assert!((0.0..=1.0).contains(&share));
                (share * 255.0).round() as u8
            };
            (
                number(&start["line"]),
                number(&start["character"]),
                number(&end["character"]),
                ["red", "green", "blue"].map(part),
            )
        })
        .collect()
}

fn set(c: &mut Client, settings: Value) {
    c.tell(
        "workspace/didChangeConfiguration",
        json!({ "settings": { "downlead": settings } }),
    );
}

#[test]
fn swatches_come_and_go_with_the_setting() {
    let mut words = vscode();
    words["capabilities"]["workspace"]["configuration"] = json!(false);
    let mut c = Client::with(&words);
    c.open(URI, TEXT);
    assert_eq!(swatches(&mut c), [], "off by default");
    set(&mut c, json!({ "swatches": true }));
    assert_eq!(
        swatches(&mut c),
        [(4, 43, 47, GOOD), (4, 71, 75, UNSURE), (5, 10, 15, BAD)]
    );
    // they follow the text
    let range =
        json!({ "start": { "line": 2, "character": 20 }, "end": { "line": 2, "character": 22 } });
    c.change(URI, 2, json!([{ "range": range, "text": "99" }]));
    let found = swatches(&mut c);
    assert!(found.iter().all(|s| s.3 == BAD), "{found:?}");
    // hints off, swatches on
    set(&mut c, json!({ "swatches": true, "hints": false }));
    assert_eq!(swatches(&mut c), found);
    // no other colour makes a limit met
    let color = json!({ "red": 0.0, "green": 0.0, "blue": 1.0, "alpha": 1.0 });
    let offered = c.ask(
        "textDocument/colorPresentation",
        json!({ "textDocument": { "uri": URI }, "color": color, "range": range }),
    );
    assert_eq!(offered, json!([]));
    // a wrong setting changes nothing and is reported
    set(&mut c, json!({ "swatches": "red" }));
    assert_eq!(swatches(&mut c), found);
    c.wait(|m| {
        m["method"] == "window/showMessage"
            && m["params"]["message"]
                .as_str()
                .is_some_and(|t| t.contains("downlead.swatches"))
    });
    set(&mut c, json!({ "swatches": false }));
    assert_eq!(swatches(&mut c), []);
    assert_eq!(c.finish(), 0);
}

#[test]
fn swatches_can_be_wanted_from_the_start() {
    let mut words = vscode();
    words["initializationOptions"]["downlead"]["swatches"] = json!(true);
    words["capabilities"]["workspace"]["configuration"] = json!(false);
    let mut c = Client::with(&words);
    c.open(URI, TEXT);
    assert_eq!(swatches(&mut c).len(), 3);
    assert_eq!(c.finish(), 0);
}

#[test]
fn inline_values_are_texts_at_names() {
    let mut c = Client::start();
    c.open(URI, TEXT);
    let all =
        json!({ "start": { "line": 0, "character": 0 }, "end": { "line": 5, "character": 30 } });
    let ask = |c: &mut Client, range: &Value| {
        let stopped = json!({ "start": { "line": 5, "character": 0 }, "end": { "line": 5, "character": 30 } });
        let context = json!({ "frameId": 1, "stoppedLocation": stopped });
        let answer = c.ask(
            "textDocument/inlineValue",
            json!({ "textDocument": { "uri": URI }, "range": range, "context": context }),
        );
        let list = answer.as_array().expect("a list").clone();
        list.iter()
            .map(|v| {
                let start = &v["range"]["start"];
                let line = start["line"].as_u64().expect("a line");
                let column = start["character"].as_u64().expect("a column");
                (line, column, v["text"].as_str().expect("a text").to_owned())
            })
            .collect::<Vec<_>>()
    };
    // 25 W in dBm: 10 log10 of milliwatts; 1 dB less than 40 W are 31.8 W
    let found = ask(&mut c, &all);
    let found: Vec<_> = found.iter().map(|v| (v.0, v.1, v.2.as_str())).collect();
    assert_eq!(
        found,
        [
            (0, 4, "legal = 25.0 W (44.0 dBm)"),
            (2, 16, "TX1 → 40.0 W"),
            (3, 8, "P1 1.00 dB → 31.8 W"),
            (4, 12, "A1 → 31.8 W"),
            (5, 10, "legal = 25.0 W (44.0 dBm)"),
        ]
    );
    let one =
        json!({ "start": { "line": 3, "character": 0 }, "end": { "line": 3, "character": 15 } });
    assert_eq!(ask(&mut c, &one).len(), 1);
    // asked of a text that is not open
    let none = c.ask(
        "textDocument/inlineValue",
        json!({ "textDocument": { "uri": "untitled:none" }, "range": one, "context": { "frameId": 1, "stoppedLocation": one } }),
    );
    assert_eq!(none, Value::Null);
    assert_eq!(c.finish(), 0);
}

/// A refresh of hints comes with one of inline values, if the client supports it.
#[test]
fn inline_values_are_asked_for_again() {
    for offered in [true, false] {
        let mut words = vscode();
        let support = "/capabilities/workspace/inlineValue/refreshSupport";
        *words.pointer_mut(support).expect("offered") = json!(offered);
        let mut c = Client::with(&words);
        c.open(URI, TEXT);
        c.settings = json!({ "hints": { "loss": false } });
        c.tell(
            "workspace/didChangeConfiguration",
            json!({ "settings": null }),
        );
        c.wait(|m| m["method"] == "workspace/inlayHint/refresh");
        let asked = c.within(Duration::from_millis(400), |m| {
            m["method"] == "workspace/inlineValue/refresh"
        });
        assert_eq!(asked.is_some(), offered);
        assert_eq!(c.finish(), 0);
    }
}
