//! Hints in two stages: the first answer is quick, and the client is asked to fetch the hints again
//! once, and only if the sample has changed what they say.

mod driver;

use std::time::Duration;

use downlead_testkit::large_file;
use driver::Client;
use serde_json::{Value, json};

const URI: &str = "untitled:stages";

/// A line whose reflections make derivatives too coarse: 75 ohm between an antenna of SWR 3 and a
/// filter that reflects.
const STRONG: &str = "cable odd {
    impedance 75 ohm
    velocity 0.66
    loss 1.5 dB/100 m/sqrt(MHz)
    accuracy 5 % k 1
    source \"invented\"
}
chain out on 14.2 MHz {
    transmitter TX1 100 W ± 5 %
    filter F1 0.5 dB ± 0.1 dB, swr 1.5
    run M1 12 m of odd
    antenna A1 {
        gain 2 dBi ± 0.5 dB
        swr 3
    }
}
";

/// A pad between matched ends: derivatives are all there is to say.
const PLAIN: &str = "chain x on 145 MHz {\n    transmitter 50 W ± 5 %\n    pad 3 dB ± 0.1 dB\n    antenna 2.15 dBi\n}\n";

fn is_refresh(m: &Value) -> bool {
    m["method"] == "workspace/inlayHint/refresh"
}

/// How often the client was asked to fetch hints until nothing more is said.
fn refreshes(c: &mut Client) -> usize {
    let mut count = 0;
    while c.within(Duration::from_millis(700), is_refresh).is_some() {
        count += 1;
    }
    count
}

fn client(text: &str) -> Client {
    let mut c = Client::start();
    c.open(URI, text);
    c.diagnostics(URI, 1);
    // refreshes that follow the opening
    refreshes(&mut c);
    c
}

/// Replaces the digit at the end of some words.
fn change(c: &mut Client, version: i64, text: &str, words: &str, digit: &str) {
    let line = text.lines().position(|l| l.contains(words)).expect("it");
    let at = text
        .lines()
        .nth(line)
        .expect("a line")
        .find(words)
        .expect("it")
        + words.len();
    let range = json!({ "start": { "line": line, "character": at - 1 }, "end": { "line": line, "character": at } });
    c.change(URI, version, json!([{ "range": range, "text": digit }]));
}

#[test]
fn hints_are_fetched_again_once_if_the_sample_changes_them() {
    let mut c = client(STRONG);
    change(&mut c, 2, STRONG, "run M1 12", "3");
    let first = c.hints(URI);
    c.wait(is_refresh);
    let second = c.hints(URI);
    assert_ne!(first, second, "the sample changes a digit");
    c.diagnostics(URI, 2);
    assert_eq!(refreshes(&mut c), 0, "asked once only");
    // cold, and for a client that cannot be asked, at once the same
    let mut params = driver::capabilities();
    params["capabilities"]["workspace"]["inlayHint"]["refreshSupport"] = json!(false);
    for key in ["workspaceFolders", "rootUri", "rootPath"] {
        params[key] = Value::Null;
    }
    let mut other = Client::with(&params);
    other.open(URI, &STRONG.replace("run M1 12", "run M1 13"));
    let labels = |hints: &Value| -> Vec<Value> {
        let all = hints.as_array().expect("hints").iter();
        all.map(|h| h["label"].clone()).collect()
    };
    assert_eq!(labels(&other.hints(URI)), labels(&second));
    assert_eq!(c.finish(), 0);
    assert_eq!(other.finish(), 0);
}

#[test]
fn hints_that_stay_are_not_fetched_again() {
    let mut c = client(PLAIN);
    change(&mut c, 2, PLAIN, "pad 3", "4");
    let first = c.hints(URI);
    c.diagnostics(URI, 2);
    assert_eq!(refreshes(&mut c), 0);
    assert_eq!(first, c.hints(URI));
    assert_eq!(c.finish(), 0);
}

#[test]
fn a_newer_edit_drops_the_sample_of_the_one_before() {
    let mut c = client(STRONG);
    let ask = |c: &mut Client| {
        let range = json!({ "start": { "line": 0, "character": 0 }, "end": { "line": 40, "character": 0 } });
        c.begin(
            "textDocument/inlayHint",
            json!({ "textDocument": { "uri": URI }, "range": range }),
        )
    };
    // a row of keys without a pause: each is answered
    let mut asked = Vec::new();
    for (version, digit) in (2..12).zip("3456789345".chars()) {
        change(&mut c, version, STRONG, "run M1 12", &digit.to_string());
        asked.push(ask(&mut c));
    }
    for id in asked {
        let answer = c.answer(id);
        // an answer that a newer change makes worthless may be refused
        assert!(
            answer["result"].is_array() || answer["error"]["code"] == -32801,
            "{answer}"
        );
    }
    c.diagnostics(URI, 11);
    refreshes(&mut c);
    let last = c.hints(URI);
    assert_eq!(refreshes(&mut c), 0, "nothing is left of the others");
    let mut cold = client(&STRONG.replace("run M1 12", "run M1 15"));
    let labels = |hints: &Value| -> Vec<Value> {
        let all = hints.as_array().expect("hints").iter();
        all.map(|h| h["label"].clone()).collect()
    };
    assert_eq!(labels(&last), labels(&cold.hints(URI)));
    assert_eq!(c.finish(), 0);
    assert_eq!(cold.finish(), 0);
}

#[test]
fn the_screen_of_a_long_file_is_what_the_whole_file_says() {
    let text = large_file(1_000);
    let mut c = client(&text);
    let line = text
        .lines()
        .position(|l| l.contains("loss 0.1216"))
        .expect("the cable");
    let range = json!({ "start": { "line": line, "character": 13 }, "end": { "line": line, "character": 14 } });
    c.change(URI, 2, json!([{ "range": range, "text": "7" }]));
    let screen = |c: &mut Client| {
        let range = json!({ "start": { "line": 120, "character": 0 }, "end": { "line": 180, "character": 0 } });
        c.ask(
            "textDocument/inlayHint",
            json!({ "textDocument": { "uri": URI }, "range": range }),
        )
    };
    let first = screen(&mut c);
    c.diagnostics(URI, 2);
    let last = screen(&mut c);
    let places = |hints: &Value| -> Vec<Value> {
        let all = hints.as_array().expect("hints").iter();
        all.map(|h| h["position"].clone()).collect()
    };
    assert_eq!(places(&first), places(&last));
    let mut cold = client(&text.replace("loss 0.1216", "loss 0.1276"));
    let label = |hints: &Value| -> Vec<Value> {
        let all = hints.as_array().expect("hints").iter();
        all.map(|h| h["label"].clone()).collect()
    };
    let of_cold = screen(&mut cold);
    assert_eq!(label(&last), label(&of_cold));
    assert_eq!(c.finish(), 0);
    assert_eq!(cold.finish(), 0);
}
