//! Long answers as the bytes they are sent as.
//!
//! The library keeps every answer as a tree of values and writes that out afterwards; for the hints
//! of a whole file that costs more than to find them. So a handler writes its answer itself, the
//! library carries a short stand-in for it, and the stand-in is replaced on the way out.

use std::sync::atomic::{AtomicU64, AtomicUsize, Ordering};
use std::sync::{Mutex, PoisonError};

use rustc_hash::FxHashMap;
use serde_json::Value;

/// Answers on their way out.
#[derive(Default)]
pub(crate) struct Raws {
    next: AtomicU64,
    count: AtomicUsize,
    bytes: Mutex<FxHashMap<u64, Vec<u8>>>,
}

/// How a stand-in begins on the wire. No text a user wrote looks so: there the quotes before and
/// behind `result` would be escaped.
const MARK: &[u8] = b"\"result\":\"\\u0001";

impl Raws {
    /// The stand-in of an answer. Only for an answer that is sent for sure: what is never sent
    /// stays here.
    pub(crate) fn stand_in(&self, json: Vec<u8>) -> Value {
        let n = self.next.fetch_add(1, Ordering::Relaxed);
        let mut bytes = self.bytes.lock().unwrap_or_else(PoisonError::into_inner);
        bytes.insert(n, json);
        self.count.store(bytes.len(), Ordering::Release);
        Value::String(format!("\u{1}{n}"))
    }

    fn take(&self, n: u64) -> Option<Vec<u8>> {
        let mut bytes = self.bytes.lock().unwrap_or_else(PoisonError::into_inner);
        let found = bytes.remove(&n);
        self.count.store(bytes.len(), Ordering::Release);
        found
    }

    /// Whole frames with the answers in place of their stand-ins.
    pub(crate) fn fill(&self, chunk: &[u8]) -> Vec<u8> {
        if self.count.load(Ordering::Acquire) == 0 {
            return chunk.to_vec();
        }
        let mut out = Vec::with_capacity(chunk.len());
        let mut rest = chunk;
        while let Some((body, after)) = split(rest) {
            match self.filled(body) {
                Some(new) => {
                    out.extend_from_slice(
                        format!("Content-Length: {}\r\n\r\n", new.len()).as_bytes(),
                    );
                    out.extend_from_slice(&new);
                }
                None => out.extend_from_slice(&rest[..rest.len() - after.len()]),
            }
            rest = after;
        }
        out.extend_from_slice(rest);
        out
    }

    fn filled(&self, body: &[u8]) -> Option<Vec<u8>> {
        let at = body.windows(MARK.len()).position(|w| w == MARK)?;
        let digits = &body[at + MARK.len()..];
        let end = digits.iter().position(|b| *b == b'"')?;
        let n = std::str::from_utf8(&digits[..end]).ok()?.parse().ok()?;
        let answer = self.take(n)?;
        let mut out = Vec::with_capacity(body.len() + answer.len());
        out.extend_from_slice(&body[..at]);
        out.extend_from_slice(b"\"result\":");
        out.extend_from_slice(&answer);
        out.extend_from_slice(&digits[end + 1..]);
        Some(out)
    }
}

/// The body of the first frame, and what stands behind it.
fn split(chunk: &[u8]) -> Option<(&[u8], &[u8])> {
    let end = chunk.windows(4).position(|w| w == b"\r\n\r\n")?;
    let head = std::str::from_utf8(&chunk[..end]).ok()?;
    let length = head.lines().find_map(|l| {
        let (name, value) = l.split_once(':')?;
        name.eq_ignore_ascii_case("content-length")
            .then(|| value.trim().parse::<usize>().ok())?
    })?;
    let body = chunk.get(end + 4..end + 4 + length)?;
    Some((body, &chunk[end + 4 + length..]))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn frame(body: &str) -> String {
        format!("Content-Length: {}\r\n\r\n{body}", body.len())
    }

    #[test]
    fn the_answer_takes_the_place_of_its_stand_in() {
        let raws = Raws::default();
        let one = raws.stand_in(b"[1,2]".to_vec());
        let two = raws.stand_in(b"{\"a\":null}".to_vec());
        let said = |id: u32, v: &Value| {
            serde_json::json!({ "jsonrpc": "2.0", "result": v, "id": id }).to_string()
        };
        let text = serde_json::json!({ "message": "\"result\":\"\u{1}0\"" }).to_string();
        let sent = [
            said(7, &two),
            text.clone(),
            said(8, &one),
            said(9, &Value::Null),
        ];
        let chunk: String = sent.iter().map(|b| frame(b)).collect();
        let got = String::from_utf8(raws.fill(chunk.as_bytes())).unwrap();
        let want = [
            r#"{"jsonrpc":"2.0","result":{"a":null},"id":7}"#,
            &text,
            r#"{"jsonrpc":"2.0","result":[1,2],"id":8}"#,
            r#"{"jsonrpc":"2.0","result":null,"id":9}"#,
        ];
        assert_eq!(got, want.map(frame).concat());
        assert_eq!(raws.count.load(Ordering::Relaxed), 0);
        assert_eq!(raws.fill(b"not a frame"), b"not a frame");
    }
}
