//! Readings compared with their committed versions, in the editor.

mod driver;

use std::path::PathBuf;
use std::process::Command;
use std::time::Duration;

use driver::Client;
use serde_json::{Value, json};

const SESSION: &str = "session reel {\n    read 2026-07-19 by x\n    temperature 12 °C\n    piece A 22.60 m of rg-213\n    readings on 145.3 MHz {\n        baseline 44.0 W at 0 min\n        through A 28.9 W at 2 min\n        baseline 43.7 W at 4 min\n    }\n}\n";
const CHAIN: &str = "station hill {\n    transmitter TX1 30 W carrier\n    run M1 28 m of half-inch-foam\n    antenna A1 4.5 dBi\n    chain out on 145.3 MHz {\n        TX1\n        M1\n        readings from \"site.csv\"\n        A1\n    }\n}\n";
const LOG: &str = "after,date,forward_w\nM1,2024-07-01,26.1\nM1,2025-07-02,26.2\n";

struct Repository {
    _folder: tempfile::TempDir,
    top: PathBuf,
}

impl Repository {
    fn new() -> Repository {
        let folder = tempfile::tempdir().expect("a folder");
        let top = std::fs::canonicalize(folder.path()).expect("a path");
        let r = Repository {
            _folder: folder,
            top,
        };
        r.put("reel.downlead", SESSION);
        r.put("hill.downlead", CHAIN);
        r.put("site.csv", LOG);
        r.git(&["init", "--quiet"]);
        r.commit();
        r
    }

    fn git(&self, args: &[&str]) {
        let done = Command::new("git")
            .args(["-c", "user.name=QY5BEN", "-c", "user.email=x@example.org"])
            .args(["-c", "commit.gpgsign=false"])
            .args(args)
            .current_dir(&self.top)
            .env("GIT_CONFIG_GLOBAL", "/dev/null")
            .env("GIT_AUTHOR_DATE", "2026-07-19T20:00:00+0000")
            .output()
            .expect("this test needs git");
        assert!(done.status.success(), "{args:?}");
    }

    fn commit(&self) {
        self.git(&["add", "."]);
        self.git(&["commit", "--quiet", "--message", "x"]);
    }

    fn put(&self, path: &str, text: &str) {
        std::fs::write(self.top.join(path), text).expect("written");
    }

    fn uri(&self, path: &str) -> String {
        format!("file://{}", self.top.join(path).display())
    }

    fn session(&self, options: Value) -> Client {
        let mut params = driver::capabilities();
        let uri = format!("file://{}", self.top.display());
        params["rootUri"] = json!(uri);
        params["workspaceFolders"] = json!([{ "uri": uri, "name": "x" }]);
        if !options.is_null() {
            params["initializationOptions"] = options;
        }
        Client::with(&params)
    }
}

fn edited(message: &Value) -> impl Iterator<Item = &Value> {
    let all = message["params"]["diagnostics"].as_array();
    all.into_iter()
        .flatten()
        .filter(|d| d["code"] == "reading-edited")
}

/// The next diagnostics of the text that hold so many findings of the kind.
fn told(c: &mut Client, uri: &str, count: usize) -> Value {
    c.wait(|m| {
        m["method"] == "textDocument/publishDiagnostics"
            && m["params"]["uri"] == uri
            && edited(m).count() == count
    })
}

#[test]
fn a_changed_reading_is_told_while_it_is_typed() {
    let r = Repository::new();
    let uri = r.uri("reel.downlead");
    let mut c = r.session(Value::Null);
    // the text in the editor differs already from what was committed
    c.open(&uri, &SESSION.replace("28.9 W", "29.8 W"));
    let said = told(&mut c, &uri, 1);
    let d = edited(&said).next().expect("one").clone();
    assert!(
        d["message"]
            .as_str()
            .is_some_and(|m| m
                .starts_with("This reading was 28.9 W when QY5BEN recorded it on 2026-07-19 (")),
        "{d}"
    );
    assert_eq!(d["range"]["start"], json!({ "line": 6, "character": 18 }));
    // its fix
    let at = json!({ "textDocument": { "uri": uri }, "range": d["range"], "context": { "diagnostics": [d] } });
    let actions = c.ask("textDocument/codeAction", at);
    let titles: Vec<&str> = actions
        .as_array()
        .expect("a list")
        .iter()
        .filter_map(|a| a["title"].as_str())
        .collect();
    assert!(
        titles.contains(&"Write it as it was recorded"),
        "{titles:?}"
    );
    // back as it was, then another one
    let change = |line: u32, from: u32, to: u32, text: &str| json!([{ "range": { "start": { "line": line, "character": from }, "end": { "line": line, "character": to } }, "text": text }]);
    c.change(&uri, 2, change(6, 18, 22, "28.9"));
    told(&mut c, &uri, 0);
    c.change(&uri, 3, change(5, 17, 21, "44.4"));
    told(&mut c, &uri, 1);
    assert_eq!(c.finish(), 0);
}

#[test]
fn a_table_that_was_changed_is_told_where_it_is_named() {
    let r = Repository::new();
    r.put("site.csv", &LOG.replace("26.2", "25.2"));
    let uri = r.uri("hill.downlead");
    let mut c = r.session(Value::Null);
    c.open(&uri, CHAIN);
    let said = told(&mut c, &uri, 1);
    let d = edited(&said).next().expect("one");
    assert_eq!(d["range"]["start"]["line"], 7);
    assert!(d["message"].as_str().is_some_and(|m| {
        m.starts_with("The reading in line 3 was 26.2 W when QY5BEN recorded it")
    }));
    // the table is corrected on the disk
    r.put("site.csv", LOG);
    let change = json!({ "uri": r.uri("site.csv"), "type": 2 });
    c.tell(
        "workspace/didChangeWatchedFiles",
        json!({ "changes": [change] }),
    );
    told(&mut c, &uri, 0);
    assert_eq!(c.finish(), 0);
}

#[test]
fn what_is_committed_later_is_known_after_saving() {
    let r = Repository::new();
    let uri = r.uri("reel.downlead");
    let more = SESSION.replace(
        "        baseline 43.7 W",
        "        through A 28.8 W at 3 min\n        baseline 43.7 W",
    );
    let mut c = r.session(Value::Null);
    c.open(&uri, &more);
    r.put("reel.downlead", &more);
    r.commit();
    // another file is asked about after the commit; the first one is not forgotten by that
    c.open(&r.uri("hill.downlead"), CHAIN);
    std::thread::sleep(Duration::from_millis(400));
    c.tell(
        "textDocument/didSave",
        json!({ "textDocument": { "uri": uri } }),
    );
    // `git` runs on another thread: until its answer the reading counts as new
    let mut version = 1;
    let found = (0..100).any(|_| {
        std::thread::sleep(Duration::from_millis(50));
        version += 1;
        let figure = if version % 2 == 0 { "28.1" } else { "28.2" };
        let range = json!({ "start": { "line": 7, "character": 18 }, "end": { "line": 7, "character": 22 } });
        c.change(&uri, version, json!([{ "range": range, "text": figure }]));
        c.diagnostics(&uri, version)
            .iter()
            .any(|d| d["code"] == "reading-edited")
    });
    assert!(found);
    assert_eq!(c.finish(), 0);
}

#[test]
fn it_can_be_switched_off() {
    let r = Repository::new();
    let uri = r.uri("reel.downlead");
    let text = SESSION.replace("28.9 W", "29.8 W");
    let mut c = r.session(json!({ "downlead": { "diagnostics": { "history": false } } }));
    c.open(&uri, &text);
    let there = |c: &mut Client| {
        std::thread::sleep(Duration::from_millis(300));
        let range =
            json!({ "start": { "line": 0, "character": 0 }, "end": { "line": 0, "character": 0 } });
        c.change(&uri, 2, json!([{ "range": range, "text": "" }]));
        let all = c.diagnostics(&uri, 2);
        all.iter().any(|d| d["code"] == "reading-edited")
    };
    assert!(!there(&mut c));
    // and on again
    c.settings = json!({ "diagnostics": { "history": true } });
    c.tell(
        "workspace/didChangeConfiguration",
        json!({ "settings": null }),
    );
    told(&mut c, &uri, 1);
    assert_eq!(c.finish(), 0);
}
