//! Input that must not end a server, and input that must.

mod driver;

use std::time::{Duration, Instant};

use downlead_server::Faults;
use driver::Client;
use serde_json::{Value, json};

const URI: &str = "file:///nowhere/hill.downlead";
const TEXT: &str = "chain q on 145.3 MHz {\n    transmitter 50 W\n    run 28 m of half-inch-foam\n    antenna 4.5 dBi\n}\n";

fn alive(c: &mut Client) {
    c.open(URI, TEXT);
    let hover = c.ask("textDocument/hover", c.at(URI, 2, 9));
    assert!(hover["contents"]["value"].is_string(), "{hover}");
}

#[test]
fn malformed_frames_cost_one_message() {
    let mut c = Client::start();
    let frame = |body: &str| format!("Content-Length: {}\r\n\r\n{body}", body.len()).into_bytes();
    let deep = format!(
        r#"{{"jsonrpc":"2.0","id":1,"method":"x","params":{}{}}}"#,
        "[".repeat(5000),
        "]".repeat(5000)
    );
    for broken in [
        frame("{"),
        frame("[1,2,3]"),
        frame(r#"[{"jsonrpc":"2.0","id":900,"method":"shutdown"}]"#),
        frame(r#"{"jsonrpc":"2.0","result":null}"#),
        frame(r#"{"jsonrpc":"2.0","id":12345,"result":null}"#),
        frame(r#"{"jsonrpc":"2.0","id":"unexpected","error":{"code":1,"message":"x"}}"#),
        frame(&deep),
        b"Content-Length: 12\r\n\r\n\xff\xfe\xfd\xfc\xff\xfe\xfd\xfc\xff\xfe\xfd\xfc".to_vec(),
        b"Content-Length: twelve\r\n\r\n".to_vec(),
        b"\r\n\r\n\r\n".to_vec(),
        b"Content-Length: 7\r\n\r\n{\"jsonrpc\":\"2.0\",\"method\":\"too short\"}\r\n".to_vec(),
        vec![b'x'; 200_000],
        b"\r\n".to_vec(),
    ] {
        c.send_bytes(&broken);
        alive(&mut c);
    }
    // an id that can be read is answered
    c.send_bytes(&frame(r#"{"jsonrpc":"2.0","id":901,"method":{}}"#));
    assert_eq!(c.answer(901)["error"]["code"], -32600);
    assert_eq!(c.finish(), 0);
}

#[test]
fn unknown_methods_and_wrong_parameters() {
    let mut c = Client::start();
    c.open(URI, TEXT);
    c.tell("downlead/nothing", json!({}));
    c.tell("$/whatever", json!({}));
    c.tell("$/setTrace", json!({ "value": "verbose" }));
    assert_eq!(c.fails("downlead/nothing", json!({})), -32601);
    for params in [
        json!(null),
        json!([]),
        json!(3),
        json!({}),
        json!({ "textDocument": 1, "position": "x" }),
    ] {
        assert_eq!(
            c.fails("textDocument/hover", params.clone()),
            -32602,
            "{params}"
        );
        // a notification has no answer
        c.tell("textDocument/didChange", params.clone());
        c.tell("textDocument/didOpen", params.clone());
        c.tell("workspace/didChangeConfiguration", params);
    }
    c.change("file:///never/opened", 1, json!([{ "text": "x" }]));
    c.tell(
        "textDocument/didClose",
        json!({ "textDocument": { "uri": "file:///never/opened" } }),
    );
    assert_eq!(
        c.ask("textDocument/hover", c.at("file:///never/opened", 0, 0)),
        Value::Null
    );
    // places outside the text
    for (line, character) in [
        (0, u32::MAX),
        (u32::MAX, 0),
        (u32::MAX, u32::MAX),
        (i32::MAX as u32, 7),
    ] {
        c.ask("textDocument/hover", c.at(URI, line, character));
        c.ask("textDocument/completion", c.at(URI, line, character));
        c.ask("textDocument/documentHighlight", c.at(URI, line, character));
    }
    alive(&mut c);
    assert_eq!(c.finish(), 0);
}

#[test]
fn before_initialize_and_after_shutdown() {
    let mut c = Client::raw(Faults::default());
    assert_eq!(c.fails("textDocument/hover", c.at(URI, 0, 0)), -32002);
    assert_eq!(c.fails("shutdown", Value::Null), -32002);
    // everything at once, as fast clients do: nothing of it is lost or refused
    let init = c.begin("initialize", driver::capabilities());
    c.tell("initialized", json!({}));
    c.open(URI, TEXT);
    let hover = c.begin("textDocument/hover", c.at(URI, 2, 9));
    assert!(c.answer(init)["result"]["capabilities"].is_object());
    assert!(c.answer(hover)["result"]["contents"].is_object());
    assert_eq!(c.fails("initialize", driver::capabilities()), -32600);
    // some clients give `shutdown` an object
    assert_eq!(c.ask("shutdown", json!({})), Value::Null);
    assert_eq!(c.fails("textDocument/hover", c.at(URI, 2, 9)), -32600);
    c.tell("exit", json!({}));
    assert_eq!(c.status(), 0);
}

/// Sent without waiting: `initialize` is answered first, and each request sees the changes before it,
/// also with a call between that the library answers.
#[test]
fn calls_sent_without_waiting_begin_in_order() {
    for _ in 0..20 {
        let mut c = Client::raw(Faults::default());
        let init = c.begin("initialize", driver::capabilities());
        c.tell("initialized", json!({}));
        c.open(URI, TEXT);
        let document = json!({ "textDocument": { "uri": URI } });
        let before = c.begin("textDocument/documentSymbol", document.clone());
        let unknown = c.begin("downlead/unknown", json!({}));
        c.change(URI, 2, json!([{ "text": "// empty\n" }]));
        let after = c.begin("textDocument/documentSymbol", document);
        assert_eq!(c.wait(|_| true)["id"], init);
        assert_ne!(c.answer(before)["result"], json!([]));
        assert_eq!(c.answer(unknown)["error"]["code"], -32601);
        assert_eq!(c.answer(after)["result"], json!([]));
        assert_eq!(c.finish(), 0);
    }
}

#[test]
fn exit_ends_with_the_input_open() {
    let mut c = Client::start();
    alive(&mut c);
    let begun = Instant::now();
    c.send(&json!({ "jsonrpc": "2.0", "method": "exit" }));
    assert_eq!(c.status(), 1, "no shutdown came before");
    assert!(begun.elapsed() < Duration::from_secs(5));
    // before `initialize`
    let mut c = Client::raw(Faults::default());
    c.send(&json!({ "jsonrpc": "2.0", "method": "exit" }));
    assert_eq!(c.status(), 1);
}

#[test]
fn a_client_that_is_killed_takes_the_server_along() {
    for greeted in [true, false] {
        let mut c = if greeted {
            Client::start()
        } else {
            Client::raw(Faults::default())
        };
        if greeted {
            alive(&mut c);
        }
        c.vanish();
        assert_eq!(c.status(), 1);
    }
    // in the middle of a message
    let mut c = Client::start();
    c.send_bytes(b"Content-Length: 1000\r\n\r\n{\"jsonrpc\"");
    c.vanish();
    assert_eq!(c.status(), 1);
}

#[test]
fn a_panic_is_an_error_of_its_own_request() {
    let faults = Faults {
        requests: true,
        text: None,
    };
    let mut c = Client::faulty(&driver::capabilities(), faults);
    c.open(URI, TEXT);
    for place in ["decode", "state"] {
        for _ in 0..5 {
            assert_eq!(c.fails("downlead/probe", json!({ "panic": place })), -32603);
            alive(&mut c);
        }
    }
    assert_eq!(c.finish(), 0);
}

#[test]
fn a_text_that_fails_is_said_and_left_behind() {
    let faults = Faults {
        requests: false,
        text: Some("STRIKE".to_owned()),
    };
    let mut c = Client::faulty(&driver::capabilities(), faults);
    c.open(URI, TEXT);
    c.diagnostics(URI, 1);
    for version in [10, 20, 30] {
        let here =
            json!({ "start": { "line": 0, "character": 0 }, "end": { "line": 0, "character": 0 } });
        c.change(
            URI,
            version,
            json!([{ "range": here, "text": "// STRIKE\n" }]),
        );
        let found = c.diagnostics(URI, version);
        assert!(
            found[0]["message"]
                .as_str()
                .is_some_and(|m| m.contains("failed")),
            "{found:?}"
        );
        assert_eq!(c.fails("textDocument/hover", c.at(URI, 3, 9)), -32603);
        let line =
            json!({ "start": { "line": 0, "character": 0 }, "end": { "line": 1, "character": 0 } });
        c.change(URI, version + 1, json!([{ "range": line, "text": "" }]));
        assert!(
            !c.diagnostics(URI, version + 1)
                .iter()
                .any(|d| d["message"].as_str().is_some_and(|m| m.contains("failed")))
        );
        assert!(!c.hints(URI).as_array().expect("hints").is_empty());
    }
    assert_eq!(c.finish(), 0);
}

#[test]
fn cancelled_requests_say_so_and_are_skipped() {
    let mut c = Client::start();
    let big: String = (0..400)
        .map(|i| TEXT.replace(" q ", &format!(" q{i} ")))
        .collect();
    c.open(URI, &big);
    let ids: Vec<i64> = (0..50)
        .map(|_| {
            c.begin(
                "textDocument/semanticTokens/full",
                json!({ "textDocument": { "uri": URI } }),
            )
        })
        .collect();
    for id in &ids {
        c.tell("$/cancelRequest", json!({ "id": id }));
    }
    let mut cancelled = 0;
    for id in ids.clone() {
        let answer = c.answer(id);
        match answer["error"]["code"].as_i64() {
            Some(-32800) => cancelled += 1,
            Some(other) => panic!("{other}"),
            None => {}
        }
    }
    // the text was evaluated first, so most were cancelled before their turn
    assert!(cancelled > 25, "{cancelled}");
    c.tell("$/cancelRequest", json!({ "id": 123_456 }));
    c.tell("$/cancelRequest", json!({ "id": "none" }));
    c.open("untitled:b", TEXT);
    assert!(c.ask("textDocument/hover", c.at("untitled:b", 2, 9))["contents"].is_object());
    // one answer each: the result, or that it was cancelled, and never both
    let more = c.inbox.iter().filter(|m| m.get("method").is_none());
    assert_eq!(more.count(), 0, "{:?}", c.inbox);
    assert_eq!(c.finish(), 0);
}

/// A request that is being worked on, one that is done, and one cancelled twice.
#[test]
fn a_cancelled_request_has_exactly_one_answer() {
    let mut c = Client::start();
    c.open(URI, TEXT);
    for round in 0..40 {
        let doc = json!({ "textDocument": { "uri": URI } });
        let id = c.begin("textDocument/codeLens", doc.clone());
        if round % 4 == 1 {
            // in the midst of it, if the machine will have it so
            std::thread::sleep(Duration::from_micros(300));
        }
        // done before it is cancelled
        let early = (round % 4 == 2).then(|| c.answer(id));
        c.tell("$/cancelRequest", json!({ "id": id }));
        if round % 4 == 3 {
            c.tell("$/cancelRequest", json!({ "id": id }));
        }
        let answer = early.unwrap_or_else(|| c.answer(id));
        let code = answer["error"]["code"].as_i64();
        assert!(matches!(code, None | Some(-32800)), "{answer}");
        assert_eq!(code.is_none(), answer["result"].is_array(), "{answer}");
        // the next answer is the next question's
        let after = c.begin("textDocument/codeLens", doc);
        c.answer(after);
        let more = c
            .inbox
            .iter()
            .filter(|m| m["id"] == id && m.get("method").is_none());
        assert_eq!(more.count(), 0, "round {round}");
    }
    assert_eq!(c.finish(), 0);
}

#[test]
fn one_answer_to_every_request_under_load() {
    let mut c = Client::start();
    c.open(URI, TEXT);
    let mut ids = Vec::new();
    for i in 0..300 {
        let start = json!({ "line": 0, "character": 0 });
        let change = if i % 2 == 0 {
            json!([{ "range": { "start": start, "end": start }, "text": "//°\n" }])
        } else {
            json!([{ "range": { "start": start, "end": { "line": 1, "character": 0 } }, "text": "" }])
        };
        c.change(URI, i + 2, change);
        let line = if i % 2 == 0 { 3 } else { 2 };
        ids.push((c.begin("textDocument/hover", c.at(URI, line, 9)), line));
    }
    for (id, line) in ids {
        let answer = c.answer(id);
        // each is answered for the text as it was when asked
        assert_eq!(answer["result"]["range"]["start"]["line"], line, "{answer}");
    }
    let left = c
        .inbox
        .iter()
        .filter(|m| m.get("id").is_some() && m.get("method").is_none())
        .count();
    assert_eq!(left, 0, "answers without a request");
    assert_eq!(c.finish(), 0);
}

#[test]
fn a_client_that_answers_nothing_is_served() {
    // the driver answers only while it waits for something: here it never does until the end
    let mut c = Client::with(
        &serde_json::from_str::<Value>(include_str!("clients/vscode.json")).expect("JSON"),
    );
    for i in 0..200 {
        c.tell(
            "workspace/didChangeConfiguration",
            json!({ "settings": null }),
        );
        c.open(&format!("untitled:{i}"), TEXT);
    }
    let id = c.begin("textDocument/hover", c.at("untitled:199", 2, 9));
    assert!(c.answer(id)["result"].is_object());
    assert_eq!(c.finish(), 0);
}

#[test]
fn odd_addresses_are_documents_like_others() {
    let mut c = Client::start();
    for uri in [
        "untitled:Untitled-1",
        "untitled:Untitled-2",
        "vscode-notebook-cell:/a/b#C1",
        "git:/x/hill.downlead?%7B%7D",
        "inmemory://model/1",
        "file:///a%20b/%C3%A9%5B1%5D.downlead",
    ] {
        c.open(uri, TEXT);
        c.diagnostics(uri, 1);
        assert!(
            c.ask("textDocument/hover", c.at(uri, 2, 9))["contents"].is_object(),
            "{uri}"
        );
        c.tell(
            "textDocument/didClose",
            json!({ "textDocument": { "uri": uri } }),
        );
        let wiped = c.wait(|m| {
            m["method"] == "textDocument/publishDiagnostics" && m["params"]["uri"] == uri
        });
        assert_eq!(wiped["params"]["diagnostics"], json!([]));
    }
    // not as the standard has it: answered under the encoded name
    c.open("file:///a b/é[1].downlead", TEXT);
    c.diagnostics("file:///a%20b/%C3%A9%5B1%5D.downlead", 1);
    assert!(
        c.ask(
            "textDocument/hover",
            c.at("file:///a b/é[1].downlead", 2, 9)
        )["contents"]
            .is_object()
    );
    assert_eq!(c.finish(), 0);
}
