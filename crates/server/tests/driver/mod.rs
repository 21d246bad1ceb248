//! A client for tests: speaks to a server in this process over two pipes, byte for byte as an
//! editor does, answers what the server asks, and keeps every message.

#![allow(dead_code, reason = "each test file uses its own part")]

use std::collections::VecDeque;
use std::io::{PipeReader, PipeWriter, Read, Write};
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::thread::JoinHandle;
use std::time::{Duration, Instant};

use downlead_server::{Faults, serve_with};
use serde_json::{Value, json};

/// Longer than any answer takes, however busy the machine.
const PATIENCE: Duration = Duration::from_secs(60);

pub(crate) struct Client {
    pub(crate) input: Option<PipeWriter>,
    messages: Receiver<Value>,
    server: Option<JoinHandle<u8>>,
    next: i64,
    /// Messages read and not yet asked for.
    pub(crate) inbox: VecDeque<Value>,
    /// All messages, for the check against the protocol's meta model.
    log: Vec<Value>,
    /// The client's answer to `workspace/configuration`.
    pub(crate) settings: Value,
    /// The answer to `initialize`.
    pub(crate) offered: Value,
}

/// Parameters of `initialize`.
pub(crate) fn capabilities() -> Value {
    serde_json::from_str(include_str!("../clients/neovim.json")).expect("a client's words")
}

/// The same with all findings sent at once, also those about what is being typed.
fn at_once(params: &Value) -> Value {
    let mut params = params.clone();
    let options = &mut params["initializationOptions"];
    let options = match options.get("downlead") {
        Some(_) => &mut options["downlead"],
        None => options,
    };
    if options.get("diagnostics").is_none() {
        options["diagnostics"] = json!({});
    }
    if options["diagnostics"].get("delay").is_none() {
        options["diagnostics"]["delay"] = json!(0);
    }
    params
}

impl Client {
    /// A server, not yet greeted.
    pub(crate) fn raw(faults: Faults) -> Client {
        let (server_in, input) = std::io::pipe().expect("pipe");
        let (output, server_out) = std::io::pipe().expect("pipe");
        let server = std::thread::spawn(move || serve_with(server_in, server_out, faults));
        let (send, messages) = channel();
        std::thread::spawn(move || {
            let mut output = output;
            while let Some(message) = read(&mut output) {
                if send.send(message).is_err() {
                    break;
                }
            }
        });
        Client {
            input: Some(input),
            messages,
            server: Some(server),
            next: 0,
            inbox: VecDeque::new(),
            log: Vec::new(),
            settings: Value::Null,
            offered: Value::Null,
        }
    }

    /// A session with these parameters of `initialize`.
    pub(crate) fn with(params: &Value) -> Client {
        Client::faulty(params, Faults::default())
    }

    pub(crate) fn faulty(params: &Value, faults: Faults) -> Client {
        Client::greeted(&at_once(params), faults)
    }

    /// With the parameters as they are: findings about what is being typed wait for a pause.
    pub(crate) fn patient(params: &Value) -> Client {
        Client::greeted(params, Faults::default())
    }

    fn greeted(params: &Value, faults: Faults) -> Client {
        let mut c = Client::raw(faults);
        c.offered = c.ask("initialize", params.clone());
        c.tell("initialized", json!({}));
        c
    }

    /// A session in UTF-8 with no folder.
    pub(crate) fn start() -> Client {
        let mut params = capabilities();
        params["workspaceFolders"] = Value::Null;
        params["rootUri"] = Value::Null;
        params["rootPath"] = Value::Null;
        Client::with(&params)
    }

    /// Drops what was kept of the conversation.
    pub(crate) fn forget(&mut self) {
        self.log.clear();
    }

    pub(crate) fn send_bytes(&mut self, bytes: &[u8]) {
        if let Some(input) = &mut self.input {
            // a server that has ended reads no more
            _ = input.write_all(bytes);
        }
    }

    pub(crate) fn send(&mut self, message: &Value) {
        self.log.push(json!({ "d": ">", "m": message }));
        let body = message.to_string();
        self.send_bytes(format!("Content-Length: {}\r\n\r\n{body}", body.len()).as_bytes());
    }

    pub(crate) fn tell(&mut self, method: &str, params: Value) {
        self.send(&json!({ "jsonrpc": "2.0", "method": method, "params": params }));
    }

    /// Asks and does not wait.
    pub(crate) fn begin(&mut self, method: &str, params: Value) -> i64 {
        self.next += 1;
        let id = self.next;
        self.send(&json!({ "jsonrpc": "2.0", "id": id, "method": method, "params": params }));
        id
    }

    /// The whole answer.
    pub(crate) fn answer(&mut self, id: i64) -> Value {
        self.wait(|m| m["id"] == id && m.get("method").is_none())
    }

    /// The result; fails the test if it is an error.
    pub(crate) fn ask(&mut self, method: &str, params: Value) -> Value {
        let id = self.begin(method, params);
        let mut answer = self.answer(id);
        assert!(answer.get("error").is_none(), "{method}: {answer}");
        answer["result"].take()
    }

    /// The error's code; fails the test if there is none.
    pub(crate) fn fails(&mut self, method: &str, params: Value) -> i64 {
        let id = self.begin(method, params);
        let answer = self.answer(id);
        answer["error"]["code"]
            .as_i64()
            .unwrap_or_else(|| panic!("{method}: {answer}"))
    }

    /// The first message, now or later, that fits. Others are kept.
    pub(crate) fn wait(&mut self, fits: impl Fn(&Value) -> bool) -> Value {
        self.within(PATIENCE, fits).expect("the server says it")
    }

    pub(crate) fn within(
        &mut self,
        time: Duration,
        fits: impl Fn(&Value) -> bool,
    ) -> Option<Value> {
        if let Some(i) = self.inbox.iter().position(&fits) {
            return self.inbox.remove(i);
        }
        let until = Instant::now() + time;
        loop {
            match self
                .messages
                .recv_timeout(until.saturating_duration_since(Instant::now()))
            {
                Ok(message) => {
                    self.log.push(json!({ "d": "<", "m": message }));
                    self.oblige(&message);
                    if fits(&message) {
                        return Some(message);
                    }
                    self.inbox.push_back(message);
                }
                Err(RecvTimeoutError::Timeout) => return None,
                Err(RecvTimeoutError::Disconnected) => return None,
            }
        }
    }

    /// Answers what the server asks.
    fn oblige(&mut self, message: &Value) {
        let (Some(id), Some(method)) = (
            message.get("id"),
            message.get("method").and_then(Value::as_str),
        ) else {
            return;
        };
        let result = match method {
            "workspace/configuration" => {
                let n = message["params"]["items"].as_array().map_or(0, Vec::len);
                json!(vec![self.settings.clone(); n])
            }
            "workspace/applyEdit" => json!({ "applied": true }),
            "window/showDocument" => json!({ "success": true }),
            _ => Value::Null,
        };
        let answer = json!({ "jsonrpc": "2.0", "id": id, "result": result });
        self.send(&answer);
    }

    pub(crate) fn open(&mut self, uri: &str, text: &str) {
        self.tell("textDocument/didOpen", json!({ "textDocument": { "uri": uri, "languageId": "downlead", "version": 1, "text": text } }));
    }

    pub(crate) fn change(&mut self, uri: &str, version: i64, changes: Value) {
        self.tell("textDocument/didChange", json!({ "textDocument": { "uri": uri, "version": version }, "contentChanges": changes }));
    }

    /// Diagnostics of that version.
    pub(crate) fn diagnostics(&mut self, uri: &str, version: i64) -> Vec<Value> {
        let mut m = self.wait(|m| {
            m["method"] == "textDocument/publishDiagnostics"
                && m["params"]["uri"] == uri
                && m["params"]["version"] == version
        });
        match m["params"]["diagnostics"].take() {
            Value::Array(all) => all,
            other => panic!("{other}"),
        }
    }

    pub(crate) fn at(&self, uri: &str, line: u32, character: u32) -> Value {
        json!({ "textDocument": { "uri": uri }, "position": { "line": line, "character": character } })
    }

    pub(crate) fn hints(&mut self, uri: &str) -> Value {
        let range = json!({ "start": { "line": 0, "character": 0 }, "end": { "line": 1_000_000, "character": 0 } });
        self.ask(
            "textDocument/inlayHint",
            json!({ "textDocument": { "uri": uri }, "range": range }),
        )
    }

    /// Says good-bye; the exit status.
    pub(crate) fn finish(mut self) -> u8 {
        let end = self.ask("shutdown", Value::Null);
        assert_eq!(end, Value::Null);
        self.send(&json!({ "jsonrpc": "2.0", "method": "exit" }));
        self.status()
    }

    /// Waits for the server's end, with its input left open.
    pub(crate) fn status(&mut self) -> u8 {
        let server = self.server.take().expect("still running");
        let begun = Instant::now();
        while !server.is_finished() {
            assert!(begun.elapsed() < PATIENCE, "the server does not end");
            std::thread::sleep(Duration::from_millis(2));
        }
        server.join().expect("no panic")
    }

    /// Closes the server's input, as an editor that is killed does.
    pub(crate) fn vanish(&mut self) {
        self.input = None;
    }
}

impl Drop for Client {
    /// With `DOWNLEAD_LSP_LOG` naming a folder, leaves the conversation there: `metamodel.py`
    /// checks it.
    fn drop(&mut self) {
        let Some(folder) = std::env::var_os("DOWNLEAD_LSP_LOG") else {
            return;
        };
        let name = std::thread::current()
            .name()
            .unwrap_or("session")
            .replace("::", "-");
        let lines: Vec<String> = self.log.iter().map(Value::to_string).collect();
        static NEXT: std::sync::atomic::AtomicU32 = std::sync::atomic::AtomicU32::new(1);
        let n = NEXT.fetch_add(1, std::sync::atomic::Ordering::Relaxed);
        let file =
            std::path::Path::new(&folder).join(format!("{name}.{}.{n}.jsonl", std::process::id()));
        std::fs::write(file, lines.join("\n") + "\n").expect("the log can be written");
    }
}

/// One message.
fn read(from: &mut PipeReader) -> Option<Value> {
    let mut head = Vec::new();
    let mut byte = [0];
    while !head.ends_with(b"\r\n\r\n") {
        from.read_exact(&mut byte).ok()?;
        head.push(byte[0]);
    }
    let head = String::from_utf8(head).expect("a header");
    let length = head
        .lines()
        .find_map(|l| l.strip_prefix("Content-Length: "))
        .expect("a length");
    let mut body = vec![0; length.parse().expect("a number")];
    from.read_exact(&mut body).ok()?;
    Some(serde_json::from_slice(&body).expect("JSON"))
}
