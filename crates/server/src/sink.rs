//! Outgoing queue. Producers enqueue complete frames and never block.

use std::collections::VecDeque;
use std::io::Write;
use std::sync::{Arc, Condvar, Mutex, MutexGuard, PoisonError};

use serde_json::Value;
use tower_lsp::jsonrpc::{Error, Id};

/// Largest write of several pieces together.
const CHUNK: usize = 64 << 10;

#[derive(Default)]
struct Queue {
    pieces: VecDeque<Piece>,
    closed: bool,
    /// The writer sleeps.
    idle: bool,
}

struct Piece {
    /// The document whose diagnostics it holds, if it holds diagnostics.
    of: Option<String>,
    bytes: Vec<u8>,
}

/// The queue.
#[derive(Clone, Default)]
pub(crate) struct Sink(Arc<(Mutex<Queue>, Condvar)>);

impl Sink {
    fn queue(&self) -> MutexGuard<'_, Queue> {
        self.0.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Enqueues complete frames. False if the writer has ended.
    pub(crate) fn push(&self, bytes: Vec<u8>) -> bool {
        self.put(Piece { of: None, bytes })
    }

    /// Enqueues one message.
    pub(crate) fn message(&self, body: &[u8]) -> bool {
        self.push(framed(&[body]))
    }

    /// Diagnostics of a document: an older list that still waits is dropped.
    pub(crate) fn publish(&self, uri: &str, params: &[u8]) {
        let of = Some(uri.to_owned());
        self.queue().pieces.retain(|p| p.of != of);
        let bytes = framed(&[
            br#"{"jsonrpc":"2.0","method":"textDocument/publishDiagnostics","params":"#,
            params,
            b"}",
        ]);
        self.put(Piece { of, bytes });
    }

    /// The answer to a request: JSON, or an error.
    pub(crate) fn answer(&self, id: &Id, answer: Result<Vec<u8>, Error>) {
        let id = serde_json::to_vec(id).unwrap_or_else(|_| b"null".to_vec());
        let bytes = match answer {
            Ok(json) => framed(&[
                br#"{"jsonrpc":"2.0","result":"#,
                &json,
                br#","id":"#,
                &id,
                b"}",
            ]),
            Err(e) => {
                let e = serde_json::to_value(e).unwrap_or(Value::Null).to_string();
                let e = e.as_bytes();
                framed(&[br#"{"jsonrpc":"2.0","error":"#, e, br#","id":"#, &id, b"}"])
            }
        };
        self.push(bytes);
    }

    fn put(&self, piece: Piece) -> bool {
        let mut q = self.queue();
        if q.closed {
            return false;
        }
        q.pieces.push_back(piece);
        let wake = std::mem::take(&mut q.idle);
        drop(q);
        if wake {
            self.0.1.notify_one();
        }
        true
    }

    /// Closes the queue. Messages already queued are still written.
    pub(crate) fn close(&self) {
        self.queue().closed = true;
        self.0.1.notify_one();
    }

    /// Writes until the queue is closed and empty. False if the client has closed the stream.
    pub(crate) fn drain(&self, mut write: impl Write) -> bool {
        while let Some(bytes) = self.take() {
            if write
                .write_all(&bytes)
                .and_then(|()| write.flush())
                .is_err()
            {
                let mut q = self.queue();
                q.closed = true;
                q.pieces.clear();
                return false;
            }
        }
        true
    }

    fn take(&self) -> Option<Vec<u8>> {
        let mut q = self.queue();
        loop {
            if let Some(first) = q.pieces.pop_front() {
                let mut bytes = first.bytes;
                while let Some(next) = q.pieces.front()
                    && bytes.len() + next.bytes.len() <= CHUNK
                {
                    bytes.extend_from_slice(&next.bytes);
                    q.pieces.pop_front();
                }
                return Some(bytes);
            }
            if q.closed {
                return None;
            }
            q.idle = true;
            q = self.0.1.wait(q).unwrap_or_else(PoisonError::into_inner);
        }
    }
}

/// One frame of several pieces.
fn framed(pieces: &[&[u8]]) -> Vec<u8> {
    let length: usize = pieces.iter().map(|p| p.len()).sum();
    let mut out = Vec::with_capacity(length + 32);
    out.extend_from_slice(format!("Content-Length: {length}\r\n\r\n").as_bytes());
    pieces.iter().for_each(|p| out.extend_from_slice(p));
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_older_list_that_waits_is_dropped() {
        let sink = Sink::default();
        sink.publish("a", b"{\"n\":1}");
        sink.publish("b", b"{\"n\":2}");
        sink.answer(&Id::Number(7), Ok(b"[]".to_vec()));
        sink.publish("a", b"{\"n\":3}");
        sink.answer(&Id::Number(8), Err(Error::request_cancelled()));
        sink.close();
        assert!(!sink.push(b"late".to_vec()));
        let mut out = Vec::new();
        assert!(sink.drain(&mut out));
        let all: Vec<Value> = String::from_utf8(out)
            .unwrap()
            .split("Content-Length: ")
            .skip(1)
            .map(|frame| serde_json::from_str(frame.split_once("\r\n\r\n").unwrap().1).unwrap())
            .collect();
        assert_eq!(all.len(), 4);
        assert_eq!(all[0]["params"]["n"], 2);
        assert_eq!(
            all[1],
            serde_json::json!({ "jsonrpc": "2.0", "id": 7, "result": [] })
        );
        assert_eq!(all[2]["params"]["n"], 3);
        assert_eq!(
            (&all[3]["id"], &all[3]["error"]["code"]),
            (&8.into(), &(-32800).into())
        );
    }
}
