//! One server process, spoken to over its standard streams. Every message carries the moment it
//! was whole; nothing is parsed before that.

use std::io::{BufRead, BufReader, Read, Write};
use std::process::{Child, ChildStdin, Command, Stdio};
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::time::{Duration, Instant};

use serde::Deserialize;
use serde::de::IgnoredAny;
use serde_json::{Value, json};

use crate::peers::Language;

/// Longer than any answer takes.
const PATIENCE: Duration = Duration::from_secs(30);

pub(crate) struct Session {
    child: Child,
    input: ChildStdin,
    messages: Receiver<(Instant, Vec<u8>)>,
    uri: String,
    language: &'static str,
    beside: &'static str,
    pull: bool,
    version: i64,
    next: i64,
    /// When diagnostics of the present version, or without a version, came last.
    found: Option<Instant>,
    _folder: tempfile::TempDir,
}

#[derive(Deserialize)]
struct Head {
    id: Option<Value>,
    method: Option<String>,
}

#[derive(Deserialize)]
struct Whole {
    params: Params,
}

#[derive(Deserialize)]
struct Params {
    /// Of diagnostics.
    version: Option<i64>,
    /// Of a question for settings.
    items: Option<Vec<IgnoredAny>>,
}

impl Session {
    pub(crate) fn start(command: &[String], language: &Language) -> Result<Session, String> {
        let folder = tempfile::tempdir().map_err(|e| e.to_string())?;
        let mut child = Command::new(&command[0])
            .args(&command[1..])
            .current_dir(folder.path())
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .map_err(|e| e.to_string())?;
        let input = child.stdin.take().ok_or("no input")?;
        let output = child.stdout.take().ok_or("no output")?;
        let (send, messages) = channel();
        std::thread::spawn(move || {
            let mut output = BufReader::new(output);
            while let Some(body) = frame(&mut output) {
                if send.send((Instant::now(), body)).is_err() {
                    break;
                }
            }
        });
        let root = format!("file://{}", folder.path().display());
        let mut s = Session {
            child,
            input,
            messages,
            uri: format!("{root}/{}", language.file),
            language: language.id,
            beside: language.beside,
            pull: language.pull,
            version: 1,
            next: 0,
            found: None,
            _folder: folder,
        };
        let mut capabilities: Value =
            serde_json::from_str(include_str!("../../tests/clients/vscode.json"))
                .map_err(|e| e.to_string())?;
        capabilities["workspaceFolders"] = json!([{ "uri": root, "name": "root" }]);
        capabilities["rootUri"] = json!(root);
        capabilities["processId"] = json!(std::process::id());
        if let Some(options) = capabilities.as_object_mut() {
            options.remove("initializationOptions");
        }
        let id = s.begin("initialize", &capabilities);
        s.answer(id)?;
        s.send(&json!({ "jsonrpc": "2.0", "method": "initialized", "params": {} }));
        s.version = 1;
        Ok(s)
    }

    pub(crate) fn open(&mut self, text: &str) {
        self.tell(
            "textDocument/didOpen",
            &json!({ "textDocument": { "uri": self.uri, "languageId": self.language, "version": 1, "text": text } }),
        );
    }

    /// Replaces the digit of a line.
    pub(crate) fn change(&mut self, line: usize, language: &Language, n: usize) {
        self.version += 1;
        self.found = None;
        let column = language.column;
        let digit = (n % 9 + 1).to_string();
        let range = json!({ "start": { "line": line, "character": column }, "end": { "line": line, "character": column + 1 } });
        self.tell(
            "textDocument/didChange",
            &json!({
                "textDocument": { "uri": self.uri, "version": self.version },
                "contentChanges": [{ "range": range, "text": digit }],
            }),
        );
    }

    /// Requests the hints or symbols of some lines; gives the time of the answer.
    pub(crate) fn ask_beside(&mut self, from: usize, to: usize) -> Result<Instant, String> {
        if self.beside.is_empty() {
            return self.wait_diagnostics();
        }
        let to = to.min(1_000_000);
        let id = self.begin(
            self.beside,
            &json!({
                "textDocument": { "uri": self.uri },
                "range": { "start": { "line": from, "character": 0 }, "end": { "line": to, "character": 0 } },
            }),
        );
        self.answer(id)
    }

    /// When the refusal of a request that no server knows was there: what the way there and back
    /// costs, the threads of this program included.
    pub(crate) fn ask_nothing(&mut self) -> Result<Instant, String> {
        let id = self.begin("bench/nothing", &json!({}));
        self.answer(id)
    }

    /// When the diagnostics of the present version were there.
    pub(crate) fn wait_diagnostics(&mut self) -> Result<Instant, String> {
        if self.pull {
            let params = json!({ "textDocument": { "uri": self.uri } });
            let id = self.begin("textDocument/diagnostic", &params);
            return self.answer(id);
        }
        let end = Instant::now() + PATIENCE;
        while self.found.is_none() {
            self.read(end)?;
        }
        self.found.ok_or_else(|| "no diagnostics".to_owned())
    }

    /// Reads until the server has been silent for a while.
    pub(crate) fn settle(&mut self) {
        while self
            .read(Instant::now() + Duration::from_millis(1500))
            .is_ok()
        {}
    }

    /// User and system time used, in ticks of the system (usually 10 ms); 0 where it is not available.
    pub(crate) fn ticks(&self) -> u64 {
        let stat = std::fs::read_to_string(format!("/proc/{}/stat", self.child.id()));
        let stat = stat.unwrap_or_default();
        let fields = stat.rsplit(')').next().unwrap_or("").split_whitespace();
        // the fields 14 and 15 of proc(5), two of which precede the parenthesis
        fields
            .skip(11)
            .take(2)
            .filter_map(|f| f.parse::<u64>().ok())
            .sum()
    }

    /// Resident memory, MB; 0 where it is not available.
    pub(crate) fn memory(&self) -> f64 {
        let status = std::fs::read_to_string(format!("/proc/{}/status", self.child.id()));
        let status = status.unwrap_or_default();
        let line = status.lines().find_map(|l| l.strip_prefix("VmRSS:"));
        let kb = line.and_then(|l| l.split_whitespace().next()?.parse::<f64>().ok());
        kb.unwrap_or(0.0) / 1024.0
    }

    pub(crate) fn finish(mut self) {
        let id = self.begin("shutdown", &Value::Null);
        _ = self.answer(id);
        self.tell("exit", &Value::Null);
        let end = Instant::now() + Duration::from_secs(5);
        while Instant::now() < end && matches!(self.child.try_wait(), Ok(None)) {
            std::thread::sleep(Duration::from_millis(10));
        }
        _ = self.child.kill();
        _ = self.child.wait();
    }

    fn send(&mut self, message: &Value) {
        let body = message.to_string();
        // in one piece, or the server wakes for each
        let frame = format!("Content-Length: {}\r\n\r\n{body}", body.len());
        _ = self.input.write_all(frame.as_bytes());
        _ = self.input.flush();
    }

    fn tell(&mut self, method: &str, params: &Value) {
        let mut message = json!({ "jsonrpc": "2.0", "method": method });
        if !params.is_null() {
            message["params"] = params.clone();
        }
        self.send(&message);
    }

    fn begin(&mut self, method: &str, params: &Value) -> i64 {
        self.next += 1;
        let mut message = json!({ "jsonrpc": "2.0", "id": self.next, "method": method });
        if !params.is_null() {
            message["params"] = params.clone();
        }
        self.send(&message);
        self.next
    }

    fn answer(&mut self, id: i64) -> Result<Instant, String> {
        let end = Instant::now() + PATIENCE;
        loop {
            let (at, answered) = self.read(end)?;
            if answered == Some(id) {
                return Ok(at);
            }
        }
    }

    /// One message: when it came, and which request it answers. The server's own requests are
    /// answered with nothing.
    fn read(&mut self, until: Instant) -> Result<(Instant, Option<i64>), String> {
        let left = until.saturating_duration_since(Instant::now());
        let (at, body) = self.messages.recv_timeout(left).map_err(|e| match e {
            RecvTimeoutError::Timeout => "no answer".to_owned(),
            RecvTimeoutError::Disconnected => "ended".to_owned(),
        })?;
        let head: Head = serde_json::from_slice(&body).map_err(|e| e.to_string())?;
        match (&head.method, &head.id) {
            (Some(method), Some(id)) => {
                let result = match method.as_str() {
                    "workspace/configuration" => {
                        let whole: Whole =
                            serde_json::from_slice(&body).map_err(|e| e.to_string())?;
                        json!(vec![Value::Null; whole.params.items.map_or(1, |i| i.len())])
                    }
                    _ => Value::Null,
                };
                let answer = json!({ "jsonrpc": "2.0", "id": id, "result": result });
                self.send(&answer);
                Ok((at, None))
            }
            (Some(method), None) => {
                if method == "textDocument/publishDiagnostics" {
                    let whole: Whole = serde_json::from_slice(&body).map_err(|e| e.to_string())?;
                    if whole.params.version.is_none_or(|v| v == self.version) {
                        self.found = Some(at);
                    }
                }
                Ok((at, None))
            }
            (None, id) => Ok((at, id.as_ref().and_then(Value::as_i64))),
        }
    }
}

fn frame(from: &mut BufReader<impl Read>) -> Option<Vec<u8>> {
    let mut length = 0;
    loop {
        let mut line = String::new();
        if from.read_line(&mut line).ok()? == 0 {
            return None;
        }
        let line = line.trim_end();
        if line.is_empty() {
            break;
        }
        if let Some((name, value)) = line.split_once(':')
            && name.eq_ignore_ascii_case("content-length")
        {
            length = value.trim().parse().ok()?;
        }
    }
    let mut body = vec![0; length];
    from.read_exact(&mut body).ok()?;
    Some(body)
}
