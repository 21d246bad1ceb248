//! Files typed key by key: how often an error stands on the very line that is being typed.
#![allow(clippy::print_stdout, reason = "the share is a figure to quote")]

mod driver;

use driver::{Client, capabilities};
use serde_json::{Value, json};

const REPEATER: &str = include_str!("../../../tests/sessions/repeater.downlead");
const BENCH: &str = include_str!("../../../tests/sessions/bench.downlead");
const QUICK: &str = include_str!("../../../examples/quick.downlead");
const URI: &str = "untitled:typed";

/// What was seen while files were typed.
#[derive(Clone, Copy, Debug, Default)]
struct Seen {
    keys: u32,
    /// Keys after which an error stood on the line being typed.
    here: u32,
    /// Keys after which an error stood on another line.
    elsewhere: u32,
    /// Keys after which a warning stood on another line.
    warned: u32,
    /// Errors that the last text of a file has.
    last: usize,
}

impl Seen {
    fn share(&self) -> f64 {
        100.0 * f64::from(self.here) / f64::from(self.keys)
    }
}

fn params() -> Value {
    let mut params = capabilities();
    for folder in ["workspaceFolders", "rootUri", "rootPath"] {
        params[folder] = Value::Null;
    }
    params
}

/// Types a text into an empty document, blanks at the beginning of a line together with the line
/// end before them, as editors insert them.
fn typed(c: &mut Client, text: &str, seen: &mut Seen) {
    c.open(URI, "");
    c.diagnostics(URI, 1);
    let (mut line, mut column, mut version) = (0, 0, 1);
    let mut all = Vec::new();
    let mut rest = text;
    while let Some(c0) = rest.chars().next() {
        let len = match c0 {
            '\n' => 1 + rest[1..].len() - rest[1..].trim_start_matches(' ').len(),
            c0 => c0.len_utf8(),
        };
        let (key, more) = rest.split_at(len);
        rest = more;
        version += 1;
        let at = json!({ "line": line, "character": column });
        let range = json!({ "start": at, "end": at });
        c.change(URI, version, json!([{ "range": range, "text": key }]));
        if c0 == '\n' {
            (line, column) = (line + 1, len - 1);
        } else {
            column += len;
        }
        all = c.diagnostics(URI, version);
        let first = |d: &Value| d["range"]["start"]["line"] == json!(line);
        let of = |severity: i32, here: bool| {
            let mut all = all.iter();
            u32::from(all.any(|d| d["severity"] == json!(severity) && first(d) == here))
        };
        seen.keys += 1;
        seen.here += of(1, true);
        seen.elsewhere += of(1, false);
        seen.warned += of(2, false);
    }
    seen.last += all.iter().filter(|d| d["severity"] == 1).count();
    c.forget();
    c.tell(
        "textDocument/didClose",
        json!({ "textDocument": { "uri": URI } }),
    );
}

fn typed_all(mut c: Client) -> Seen {
    let mut seen = Seen::default();
    for text in [REPEATER, BENCH, QUICK] {
        typed(&mut c, text, &mut seen);
    }
    c.finish();
    seen
}

/// Run with `--nocapture` to see the figures.
#[test]
fn no_error_stands_on_the_line_being_typed() {
    let before = typed_all(Client::with(&params()));
    let now = typed_all(Client::patient(&params()));
    println!("at once: {before:?}, {:.1} %", before.share());
    println!("after a pause: {now:?}, {:.1} %", now.share());
    // the texts are right, and half way through a line they are not
    assert_eq!(before.last, 0, "{before:?}");
    assert!(before.share() > 40.0, "{before:?}");
    assert!(now.share() < 3.0, "{now:?}");
    // nor does a line that is not finished spoil the others
    assert!(before.elsewhere > 1000, "{before:?}");
    assert!(now.elsewhere < now.keys / 50, "{now:?}");
}

/// The text of one chain, and a line of it left half way.
const CHAIN: &str = "chain c on 145.3 MHz {\n    transmitter 5 W\n    run 28 m of half-inch-foam\n    antenna 2.15 dBi\n}\n";

fn codes(all: &[Value]) -> Vec<&str> {
    all.iter().filter_map(|d| d["code"].as_str()).collect()
}

fn unit_removed(c: &mut Client, version: i64) {
    let range =
        json!({ "start": { "line": 2, "character": 10 }, "end": { "line": 2, "character": 12 } });
    c.change(URI, version, json!([{ "range": range, "text": "" }]));
}

#[test]
fn the_error_comes_after_a_pause() {
    let mut params = params();
    params["initializationOptions"] = json!({ "diagnostics": { "delay": 1000 } });
    let mut c = Client::patient(&params);
    let none: &[&str] = &[];
    c.open(URI, CHAIN);
    assert_eq!(codes(&c.diagnostics(URI, 1)), none);
    let begun = std::time::Instant::now();
    unit_removed(&mut c, 2);
    assert_eq!(codes(&c.diagnostics(URI, 2)), none);
    assert_eq!(codes(&c.diagnostics(URI, 2)), ["missing-unit"]);
    assert!(begun.elapsed().as_millis() >= 1000);
    c.finish();
}

#[test]
fn the_error_comes_when_the_line_is_left_or_the_file_saved() {
    let mut params = params();
    params["initializationOptions"] = json!({ "diagnostics": { "delay": 60_000 } });
    let none: &[&str] = &[];
    let mut c = Client::patient(&params);
    c.open(URI, CHAIN);
    c.diagnostics(URI, 1);
    unit_removed(&mut c, 2);
    assert_eq!(codes(&c.diagnostics(URI, 2)), none);
    let at = json!({ "line": 3, "character": 20 });
    let range = json!({ "start": at, "end": at });
    c.change(URI, 3, json!([{ "range": range, "text": " " }]));
    assert_eq!(codes(&c.diagnostics(URI, 3)), ["missing-unit"]);

    // it goes on being held back until the text is saved
    c.change(URI, 4, json!([{ "text": CHAIN }]));
    assert_eq!(codes(&c.diagnostics(URI, 4)), none);
    unit_removed(&mut c, 5);
    assert_eq!(codes(&c.diagnostics(URI, 5)), none);
    c.tell(
        "textDocument/didSave",
        json!({ "textDocument": { "uri": URI } }),
    );
    assert_eq!(codes(&c.diagnostics(URI, 5)), ["missing-unit"]);

    // a paste is not typing
    c.change(
        URI,
        6,
        json!([{ "text": CHAIN.replace(" m ", " ").replace('\n', "\n\n") }]),
    );
    assert_eq!(codes(&c.diagnostics(URI, 6)), ["missing-unit"]);
    c.finish();
}

#[test]
fn a_client_that_pulls_is_asked_to_pull_again() {
    let pull = json!({ "pull": true, "delay": 1000 });
    let pulled = |c: &mut Client| -> Vec<String> {
        let p = json!({ "textDocument": { "uri": URI } });
        let mut report = c.ask("textDocument/diagnostic", p);
        let items = report["items"].take();
        let codes = codes(items.as_array().expect("items"));
        codes.into_iter().map(str::to_owned).collect()
    };
    let none: &[&str] = &[];
    for refreshes in [true, false] {
        let mut params = params();
        params["initializationOptions"] = json!({ "diagnostics": pull });
        params["capabilities"]["textDocument"]["diagnostic"] = json!({});
        params["capabilities"]["workspace"]["diagnostics"] = json!({ "refreshSupport": refreshes });
        let mut c = Client::patient(&params);
        c.open(URI, CHAIN);
        assert_eq!(pulled(&mut c), none);
        unit_removed(&mut c, 2);
        if refreshes {
            assert_eq!(pulled(&mut c), none);
            c.wait(|m| m["method"] == "workspace/diagnostic/refresh");
        }
        // one that cannot be asked gets all at once
        assert_eq!(pulled(&mut c), ["missing-unit"]);
        c.finish();
    }
}
