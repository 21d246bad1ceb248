//! The built program as a language server: how it ends, and what it leaves behind.

#![cfg(unix)]

use std::io::{BufRead, BufReader, Read, Write};
use std::path::Path;
use std::process::{Child, ChildStdin, ChildStdout, Command, ExitStatus, Stdio};
use std::time::{Duration, Instant};

use serde_json::{Value, json};

/// Longer than any end takes, however busy the machine.
const PATIENCE: Duration = Duration::from_secs(60);
const TEXT: &str = "chain q on 145 MHz {\n    transmitter 50 W\n    run 28 m of half-inch-foam\n    antenna 4.5 dBi\n}\n";

struct Server {
    process: Child,
    input: ChildStdin,
    output: BufReader<ChildStdout>,
    next: u64,
}

impl Server {
    /// In folders of its own for its cache and for passing files.
    fn start(home: &Path, path: Option<&str>) -> Server {
        let mut command = Command::new(assert_cmd::cargo::cargo_bin!("downlead"));
        std::fs::create_dir_all(home.join("tmp")).expect("made");
        command
            .arg("lsp")
            .env("HOME", home)
            .env("XDG_CACHE_HOME", home.join("cache"))
            .env("TMPDIR", home.join("tmp"))
            .stdin(Stdio::piped())
            .stdout(Stdio::piped());
        if let Some(path) = path {
            command.env("PATH", path);
        }
        let mut process = command.spawn().expect("the program starts");
        let input = process.stdin.take().expect("a pipe");
        let output = BufReader::new(process.stdout.take().expect("a pipe"));
        Server {
            process,
            input,
            output,
            next: 0,
        }
    }

    fn send(&mut self, message: &Value) {
        let body = message.to_string();
        let frame = format!("Content-Length: {}\r\n\r\n{body}", body.len());
        self.input.write_all(frame.as_bytes()).expect("it reads");
    }

    fn tell(&mut self, method: &str, params: Value) {
        self.send(&json!({ "jsonrpc": "2.0", "method": method, "params": params }));
    }

    /// The whole answer.
    fn ask(&mut self, method: &str, params: Value) -> Value {
        self.next += 1;
        let id = self.next;
        self.send(&json!({ "jsonrpc": "2.0", "id": id, "method": method, "params": params }));
        loop {
            let m = self.message();
            if m["id"] == id && m.get("method").is_none() {
                return m;
            }
        }
    }

    fn message(&mut self) -> Value {
        let mut length = 0;
        loop {
            let mut line = String::new();
            self.output.read_line(&mut line).expect("a header");
            match line.trim() {
                "" if length > 0 => break,
                "" => panic!("the server has ended"),
                l => {
                    if let Some(n) = l.strip_prefix("Content-Length: ") {
                        length = n.parse().expect("a number");
                    }
                }
            }
        }
        let mut body = vec![0; length];
        self.output.read_exact(&mut body).expect("a body");
        serde_json::from_slice(&body).expect("JSON")
    }

    fn greet(&mut self, process: Option<u32>) {
        let answer = self.ask(
            "initialize",
            json!({ "processId": process, "rootUri": null, "capabilities": {} }),
        );
        assert!(answer["result"]["capabilities"].is_object(), "{answer}");
        self.tell("initialized", json!({}));
    }

    /// Its status, with its input left open.
    fn end(mut self) -> ExitStatus {
        let begun = Instant::now();
        loop {
            if let Some(status) = self.process.try_wait().expect("a child") {
                return status;
            }
            if begun.elapsed() > PATIENCE {
                _ = self.process.kill();
                panic!("the server does not end");
            }
            std::thread::sleep(Duration::from_millis(5));
        }
    }

    fn signal(&self, name: &str) {
        let done = Command::new("kill")
            .args([&format!("-{name}"), &self.process.id().to_string()])
            .status();
        assert!(done.expect("kill").success());
    }

    /// Address of the library's file that defines the cable of the text.
    fn library(&mut self) -> String {
        let uri = "file:///nowhere/q.downlead";
        self.tell("textDocument/didOpen", json!({ "textDocument": { "uri": uri, "languageId": "downlead", "version": 1, "text": TEXT } }));
        let p =
            json!({ "textDocument": { "uri": uri }, "position": { "line": 2, "character": 20 } });
        let answer = self.ask("textDocument/definition", p);
        answer["result"][0]["uri"]
            .as_str()
            .unwrap_or_else(|| panic!("{answer}"))
            .to_owned()
    }
}

fn home() -> tempfile::TempDir {
    tempfile::tempdir().expect("a folder")
}

fn entries(folder: &Path) -> Vec<String> {
    let all = std::fs::read_dir(folder).into_iter().flatten().flatten();
    let mut names: Vec<String> = all
        .map(|e| e.file_name().to_string_lossy().into_owned())
        .collect();
    names.sort();
    names
}

#[test]
fn exit_ends_it_while_its_input_stays_open() {
    let home = home();
    for (shutdown, status) in [(true, 0), (false, 1)] {
        let mut s = Server::start(home.path(), None);
        s.greet(None);
        if shutdown {
            assert_eq!(s.ask("shutdown", Value::Null)["result"], Value::Null);
        }
        s.send(&json!({ "jsonrpc": "2.0", "method": "exit" }));
        assert_eq!(s.end().code(), Some(status));
    }
}

#[test]
fn the_end_of_its_input_ends_it() {
    let home = home();
    let mut s = Server::start(home.path(), None);
    s.greet(None);
    let Server {
        mut process, input, ..
    } = s;
    drop(input);
    assert_eq!(process.wait().expect("a child").code(), Some(1));
}

/// The editor was killed, and something else still holds the server's input.
#[cfg(target_os = "linux")]
#[test]
fn the_end_of_the_editor_ends_it() {
    let home = home();
    let mut editor = Command::new("sleep").arg("600").spawn().expect("sleep");
    let mut s = Server::start(home.path(), None);
    s.greet(Some(editor.id()));
    editor.kill().expect("killed");
    editor.wait().expect("a child");
    assert_eq!(s.end().code(), Some(1));
    // a process that is not to be seen here says nothing about the editor
    let mut s = Server::start(home.path(), None);
    s.greet(Some(editor.id()));
    assert!(!s.library().is_empty());
    assert_eq!(s.ask("shutdown", Value::Null)["result"], Value::Null);
}

#[test]
fn however_it_ends_nothing_piles_up() {
    let home = home();
    let mut seen = Vec::new();
    for (signal, number) in [("TERM", 15), ("HUP", 1), ("KILL", 9), ("INT", 2)] {
        // a shell in the background may leave it ignored, which the server inherits, as it should
        if ignored(number) {
            continue;
        }
        let mut s = Server::start(home.path(), None);
        s.greet(None);
        let uri = s.library();
        let path = uri.strip_prefix("file://").expect("a file").to_owned();
        let text = std::fs::read_to_string(&path).expect("it can be read");
        assert!(text.contains("half-inch-foam"));
        seen.push(path);
        s.signal(signal);
        assert!(!s.end().success());
        assert_eq!(entries(&home.path().join("tmp")), [""; 0], "{signal}");
        assert_eq!(
            entries(&home.path().join("cache/downlead")).len(),
            1,
            "{signal}"
        );
    }
    seen.dedup();
    assert_eq!(seen.len(), 1, "one file for all of them: {seen:?}");
    // an editor that opens it again at its next start: known as the library's
    let mut s = Server::start(home.path(), None);
    s.greet(None);
    let uri = format!("file://{}", seen[0]);
    let text = std::fs::read_to_string(&seen[0]).expect("it is still there");
    s.tell("textDocument/didOpen", json!({ "textDocument": { "uri": uri, "languageId": "downlead", "version": 1, "text": text } }));
    let doc = json!({ "textDocument": { "uri": uri } });
    let symbols = s.ask("textDocument/documentSymbol", doc);
    assert!(
        symbols["result"].as_array().is_some_and(|a| !a.is_empty()),
        "{symbols}"
    );
    // a library's text has no findings, and none are sent
    let lenses = s.ask(
        "textDocument/codeLens",
        json!({ "textDocument": { "uri": uri } }),
    );
    assert_eq!(lenses["result"], json!([]));
}

/// Whether this process, and so what it starts, ignores a signal.
fn ignored(number: u32) -> bool {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let mask = status.lines().find_map(|l| l.strip_prefix("SigIgn:"));
    let mask = mask.and_then(|m| u64::from_str_radix(m.trim(), 16).ok());
    mask.is_some_and(|m| m & (1 << (number - 1)) != 0)
}

/// Where the cache cannot be written: a folder for this process alone, gone with it.
#[test]
fn without_a_cache_the_files_pass() {
    let home = home();
    std::fs::write(
        home.path().join("cache"),
        "a file where the folder should be",
    )
    .expect("written");
    let mut s = Server::start(home.path(), None);
    s.greet(None);
    let uri = s.library();
    assert!(Path::new(uri.strip_prefix("file://").expect("a file")).exists());
    assert_eq!(entries(&home.path().join("tmp")).len(), 1);
    assert_eq!(s.ask("shutdown", Value::Null)["result"], Value::Null);
    s.send(&json!({ "jsonrpc": "2.0", "method": "exit" }));
    assert!(s.end().success());
    assert_eq!(entries(&home.path().join("tmp")), [""; 0]);
}

#[test]
fn a_comparison_without_git_says_what_is_missing() {
    let home = home();
    let empty = home.path().join("empty");
    std::fs::create_dir(&empty).expect("made");
    let mut s = Server::start(home.path(), empty.to_str());
    s.greet(None);
    let file = home.path().join("q.downlead");
    std::fs::write(&file, TEXT).expect("written");
    let uri = format!("file://{}", file.display());
    s.tell("textDocument/didOpen", json!({ "textDocument": { "uri": uri, "languageId": "downlead", "version": 1, "text": TEXT } }));
    let p = json!({ "command": "downlead.compare", "arguments": [{ "uri": uri }] });
    let answer = s.ask("workspace/executeCommand", p);
    let why = answer["error"]["message"]
        .as_str()
        .unwrap_or_else(|| panic!("{answer}"));
    assert!(
        why.contains("`git` was not found") && why.contains("Install it"),
        "{why}"
    );
}

/// An idle server uses no processor time while a station is open.
#[cfg(target_os = "linux")]
#[test]
fn at_rest_it_does_not_work() {
    let home = home();
    let mut s = Server::start(home.path(), None);
    s.greet(Some(std::process::id()));
    assert!(!s.library().is_empty());
    let ticks = |id: u32| -> u64 {
        let stat = std::fs::read_to_string(format!("/proc/{id}/stat")).expect("a process");
        // proc(5): after the name in brackets, fields 14 and 15 are user and system time
        let fields = stat.rsplit(')').next().expect("fields");
        let times = fields.split_whitespace().skip(11).take(2);
        times.map(|t| t.parse::<u64>().expect("a number")).sum()
    };
    // what was asked for at the start has settled
    std::thread::sleep(Duration::from_millis(1500));
    let before = ticks(s.process.id());
    std::thread::sleep(Duration::from_secs(3));
    let spent = ticks(s.process.id()) - before;
    assert!(spent <= 1, "{spent} ticks of 10 ms in 3 s");
    assert_eq!(s.ask("shutdown", Value::Null)["result"], Value::Null);
}
