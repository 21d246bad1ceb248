//! Messages from a byte stream that may hold anything: what is not JSON-RPC never reaches the
//! server, and the next message is found again.
//!
//! The library's own reader ends at the first malformed frame. Here a wrong length, a broken
//! header, text that is not JSON or a message of a shape the library cannot take costs one
//! message, and if its `id` can be read it is answered.

use std::io::{ErrorKind, Read};

use serde::Deserialize;
use serde::de::IgnoredAny;
use serde_json::Value;
use tower_lsp::jsonrpc::{Id, Request, Response};

use crate::uris;

/// Longer bodies are read past, not kept.
const LONGEST: usize = 128 << 20;
/// Longer lengths are taken for a broken header.
const PLAUSIBLE: usize = 1 << 30;
/// Longer header lines are thrown away but for their end.
const LONGEST_LINE: usize = 8 << 10;
const HEADER: &[u8] = b"content-length:";

/// Reads messages.
pub(crate) struct Frames<R> {
    read: R,
    buffer: Vec<u8>,
    at: usize,
}

impl<R: Read> Frames<R> {
    pub(crate) fn new(read: R) -> Frames<R> {
        Frames {
            read,
            buffer: Vec::new(),
            at: 0,
        }
    }

    /// The next message the server can take; none at the end of input.
    pub(crate) fn next(&mut self) -> Option<Message> {
        loop {
            let length = self.header()?;
            if length > LONGEST {
                self.pass(length)?;
                continue;
            }
            let body = self.take(length)?;
            match judged(body) {
                Ok(message) => return Some(message),
                Err(body) => self.give_back(&body),
            }
        }
    }

    /// Reads header lines; the length of the body that follows.
    fn header(&mut self) -> Option<usize> {
        let mut length = None;
        loop {
            let line = self.line()?;
            let trimmed = line.trim_ascii();
            if trimmed.is_empty() {
                match length.take() {
                    Some(n) => return Some(n),
                    None => continue,
                }
            }
            // the rest of a body whose stated length was too short may precede it on its line
            if let Some(at) = find_last(trimmed, HEADER) {
                length = number(&trimmed[at + HEADER.len()..]).filter(|n| *n <= PLAUSIBLE);
            }
        }
    }

    fn line(&mut self) -> Option<Vec<u8>> {
        let mut from = self.at;
        loop {
            if let Some(n) = self.buffer[from..].iter().position(|b| *b == b'\n') {
                let line = self.buffer[self.at..from + n].to_vec();
                self.at = from + n + 1;
                return Some(line);
            }
            let over = (self.buffer.len() - self.at).saturating_sub(LONGEST_LINE);
            self.at += over;
            self.fill()?;
            // `fill` may have moved the rest to the front
            from = self.at;
        }
    }

    fn take(&mut self, n: usize) -> Option<Vec<u8>> {
        while self.buffer.len() - self.at < n {
            self.fill()?;
        }
        let body = self.buffer[self.at..self.at + n].to_vec();
        self.at += n;
        Some(body)
    }

    fn pass(&mut self, mut n: usize) -> Option<()> {
        loop {
            let here = (self.buffer.len() - self.at).min(n);
            self.at += here;
            n -= here;
            if n == 0 {
                return Some(());
            }
            self.fill()?;
        }
    }

    /// A length that was too long has swallowed the next header: look for it again.
    fn give_back(&mut self, body: &[u8]) {
        if let Some(at) = find_first(body, HEADER) {
            let mut rest = body[at..].to_vec();
            rest.extend_from_slice(&self.buffer[self.at..]);
            self.buffer = rest;
            self.at = 0;
        }
    }

    fn fill(&mut self) -> Option<()> {
        if self.at > 0 {
            self.buffer.drain(..self.at);
            self.at = 0;
        }
        let mut chunk = [0; 16 << 10];
        loop {
            match self.read.read(&mut chunk) {
                Ok(0) => return None,
                Ok(n) => {
                    self.buffer.extend_from_slice(&chunk[..n]);
                    if self.buffer.capacity() > 1 << 20 && self.buffer.len() < 64 << 10 {
                        self.buffer.shrink_to(64 << 10);
                    }
                    return Some(());
                }
                Err(e) if e.kind() == ErrorKind::Interrupted => {}
                Err(_) => return None,
            }
        }
    }
}

fn number(text: &[u8]) -> Option<usize> {
    std::str::from_utf8(text.trim_ascii()).ok()?.parse().ok()
}

fn find_last(text: &[u8], what: &[u8]) -> Option<usize> {
    text.windows(what.len())
        .rposition(|w| w.eq_ignore_ascii_case(what))
}

fn find_first(text: &[u8], what: &[u8]) -> Option<usize> {
    text.windows(what.len())
        .position(|w| w.eq_ignore_ascii_case(what))
}

/// A message. The library accepts each body that is kept here.
pub(crate) enum Message {
    /// A request or a notification.
    Call { request: Request, body: Vec<u8> },
    /// The client's answer to a request of the server.
    Answer(Vec<u8>),
    /// A request that is not valid JSON-RPC, with its id.
    Malformed(Id),
}

#[derive(Deserialize)]
struct Envelope {
    jsonrpc: Option<Value>,
    method: Option<Value>,
    #[serde(default, deserialize_with = "present")]
    id: Option<Value>,
    #[serde(default, deserialize_with = "present")]
    result: Option<IgnoredAny>,
    error: Option<IgnoredAny>,
}

/// Tells `null` from absence.
fn present<'de, T: Deserialize<'de>, D: serde::Deserializer<'de>>(
    d: D,
) -> Result<Option<T>, D::Error> {
    T::deserialize(d).map(Some)
}

/// The message of a body; the body itself if it holds none that can be answered.
fn judged(body: Vec<u8>) -> Result<Message, Vec<u8>> {
    let Ok(head) = serde_json::from_slice::<Envelope>(&body) else {
        return Err(body);
    };
    let id = head.id.as_ref().filter(|id| id.is_string() || id.is_i64());
    let versioned = head.jsonrpc.as_ref().and_then(Value::as_str) == Some("2.0");
    let is_call = head.result.is_none() && head.error.is_none();
    let is_valid = versioned && head.id.is_some() == id.is_some();
    match head.method {
        Some(Value::String(_)) if is_valid && is_call => {
            if let Ok(request) = serde_json::from_slice::<Request>(&body) {
                return Ok(match uris::encoded_request(&request) {
                    Some((request, body)) => Message::Call { request, body },
                    None => Message::Call { request, body },
                });
            }
        }
        None if is_valid && id.is_some() && (head.result.is_some() != head.error.is_some()) => {
            return match serde_json::from_slice::<Response>(&body) {
                Ok(_) => Ok(Message::Answer(body)),
                Err(_) => Err(body),
            };
        }
        _ => {}
    }
    match id.filter(|_| is_call).map(Id::deserialize) {
        Some(Ok(id)) => Ok(Message::Malformed(id)),
        _ => Err(body),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn frame(body: &str) -> String {
        format!("Content-Length: {}\r\n\r\n{body}", body.len())
    }

    fn read(input: &str) -> Vec<String> {
        let mut frames = Frames::new(input.as_bytes());
        std::iter::from_fn(|| frames.next()).map(text).collect()
    }

    fn text(message: Message) -> String {
        match message {
            Message::Call { body, .. } | Message::Answer(body) => String::from_utf8(body).unwrap(),
            Message::Malformed(id) => format!("malformed {id}"),
        }
    }

    const GOOD: &str = r#"{"jsonrpc":"2.0","id":1,"method":"x"}"#;

    #[test]
    fn good_messages_pass_unchanged() {
        let answer = r#"{"jsonrpc":"2.0","id":7,"result":null}"#;
        let failed = r#"{"jsonrpc":"2.0","id":"a","error":{"code":-1,"message":"no"}}"#;
        let all = [GOOD, answer, failed, r#"{"jsonrpc":"2.0","method":"é°𝄞"}"#];
        assert_eq!(read(&all.map(frame).concat()), all);
    }

    #[test]
    fn headers_may_vary() {
        let n = GOOD.len();
        for head in [
            format!("content-length:{n}\r\n\r\n"),
            format!(
                "Content-Type: application/vscode-jsonrpc; charset=utf-8\r\nContent-Length: {n}\r\n\r\n"
            ),
            format!("A: 1\r\nB: 2\r\nC: 3\r\nCONTENT-LENGTH:   {n}  \r\nD: 4\r\n\r\n"),
            format!("Content-Length: {n}\n\n"),
        ] {
            assert_eq!(read(&format!("{head}{GOOD}")), [GOOD], "{head}");
        }
    }

    #[test]
    fn what_is_broken_costs_one_message() {
        let broken = [
            "Content-Length: 5\r\n\r\nhello".to_owned(),
            frame("[]"),
            frame("null"),
            frame("{}"),
            frame(r#"{"jsonrpc":"2.0","method":"a","id":{}}"#),
            frame(r#"{"jsonrpc":"2.0","result":1,"error":{}}"#),
            frame(r#"{"jsonrpc":"2.0","method":"a","id":1.5}"#),
            "Content-Length: -3\r\n\r\n".to_owned(),
            "Content-Length: 99999999999999999999\r\n\r\n".to_owned(),
            "Content-Length: 5000000000\r\n\r\n".to_owned(),
            "rubbish\r\n\r\nmore rubbish\r\n".to_owned(),
            "Content-Length: 4\r\n\r\n{\"jsonrpc\":\"2.0\",\"method\":\"short\"}".to_owned(),
            format!(
                "Content-Length: 60\r\n\r\n{}",
                r#"{"jsonrpc":"2.0","method":"long"}"#
            ),
            "x".repeat(100_000),
            frame(&format!(
                r#"{{"jsonrpc":"2.0","method":"deep","params":{}{}}}"#,
                "[".repeat(1000),
                "]".repeat(1000)
            )),
        ];
        for b in broken {
            let got = read(&format!("{b}{}{}", frame(GOOD), frame(GOOD)));
            assert!(
                got.len() >= 2 && got[got.len() - 2..] == [GOOD, GOOD],
                "{b:.60}: {got:?}"
            );
        }
    }

    #[test]
    fn not_text_is_dropped() {
        let mut bytes = b"Content-Length: 4\r\n\r\n\xff\xfe\x00\x01".to_vec();
        bytes.extend_from_slice(frame(GOOD).as_bytes());
        let mut frames = Frames::new(&bytes[..]);
        assert_eq!(frames.next().map(text).as_deref(), Some(GOOD));
        assert!(frames.next().is_none());
    }

    #[test]
    fn a_readable_id_is_answered() {
        for body in [
            r#"{"jsonrpc":"2.0","id":3,"method":4}"#,
            r#"{"id":3,"method":"x"}"#,
            r#"{"jsonrpc":"1.0","id":3,"method":"x"}"#,
            r#"{"jsonrpc":"2.0","id":3}"#,
        ] {
            let got = read(&frame(body));
            assert_eq!(got, ["malformed 3"], "{body}");
        }
    }

    #[test]
    fn too_long_a_body_is_read_past() {
        let n = LONGEST + 1;
        let head = format!("Content-Length: {n}\r\n\r\n");
        let input = head
            .as_bytes()
            .chain(std::io::repeat(b' ').take(n as u64))
            .chain(std::io::Cursor::new(frame(GOOD)));
        let mut frames = Frames::new(input);
        assert_eq!(frames.next().map(text).as_deref(), Some(GOOD));
        assert!(frames.buffer.capacity() < 1 << 20);
    }
}
