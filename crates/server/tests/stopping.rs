//! Long evaluations: stopped when their result is no longer needed, shown as progress if it is. They are
//! made long by an injected fault, so that nothing here depends on how fast the machine is.

mod driver;

use downlead_server::Faults;
use driver::Client;
use serde_json::{Value, json};

const URI: &str = "untitled:long";
const TEXT: &str =
    "chain x on 145 MHz {\n    transmitter 50 W\n    pad 3 dB\n    antenna 2.15 dBi\n}\n";

fn client() -> Client {
    let faults = Faults {
        requests: false,
        text: Some("STRIKE".to_owned()),
    };
    let mut params = driver::capabilities();
    params["capabilities"]["window"]["workDoneProgress"] = json!(true);
    let mut c = Client::faulty(&params, faults);
    c.open(URI, TEXT);
    c.diagnostics(URI, 1);
    c
}

/// Replaces the pad's value.
fn figure(c: &mut Client, version: i64, old: &str, new: &str) {
    let range = json!({ "start": { "line": 2, "character": 8 }, "end": { "line": 2, "character": 8 + old.len() } });
    c.change(URI, version, json!([{ "range": range, "text": new }]));
}

fn begin_hints(c: &mut Client) -> i64 {
    let range =
        json!({ "start": { "line": 0, "character": 0 }, "end": { "line": 9, "character": 0 } });
    let params = json!({ "textDocument": { "uri": URI }, "range": range });
    c.begin("textDocument/inlayHint", params)
}

fn answer_to(c: &mut Client, id: i64) -> Value {
    c.wait(|m| m["id"] == id && m.get("method").is_none())
}

#[test]
fn a_newer_change_stops_what_was_begun() {
    let mut c = client();
    // stopped, or the fault panics after 20 s and the answer below is an error
    figure(&mut c, 2, "3 dB", "4 dB // STRIKE-WAITS");
    let first = begin_hints(&mut c);
    figure(&mut c, 3, "4 dB // STRIKE-WAITS", "6 dB");
    let answer = answer_to(&mut c, first);
    if answer.get("error").is_some() {
        assert_eq!(answer["error"]["code"], -32801, "{answer}");
    }
    let second = begin_hints(&mut c);
    let answer = answer_to(&mut c, second);
    assert!(answer["result"].to_string().contains("6.00 dB"), "{answer}");
    c.diagnostics(URI, 3);
    assert_eq!(c.finish(), 0);
}

#[test]
fn a_cancelled_request_ends_with_one_answer() {
    let mut c = client();
    figure(&mut c, 2, "3 dB", "4 dB // STRIKE-WAITS");
    let id = begin_hints(&mut c);
    c.tell("$/cancelRequest", json!({ "id": id }));
    assert_eq!(answer_to(&mut c, id)["error"]["code"], -32800);
    figure(&mut c, 3, "4 dB // STRIKE-WAITS", "6 dB");
    let next = begin_hints(&mut c);
    let answer = answer_to(&mut c, next);
    assert!(answer["result"].to_string().contains("6.00 dB"), "{answer}");
    assert!(
        !c.inbox
            .iter()
            .any(|m| m["id"] == id && m.get("method").is_none())
    );
    assert_eq!(c.finish(), 0);
}

#[test]
fn long_work_is_shown_and_short_work_is_not() {
    let mut c = client();
    let shown = |m: &Value| m["method"] == "window/workDoneProgress/create";
    assert!(!c.inbox.iter().any(shown));
    // the first time teaches that this text takes long
    figure(&mut c, 2, "3 dB", "4 dB // STRIKE-PAUSES");
    c.diagnostics(URI, 2);
    figure(&mut c, 3, "4 dB", "5 dB");
    c.wait(|m| m["params"]["value"]["kind"] == "begin");
    c.wait(|m| m["params"]["value"]["kind"] == "end");
    c.diagnostics(URI, 3);
    assert_eq!(c.finish(), 0);
}
