//! Requests that are not answered yet. The thread that removes a request from here answers it, so
//! each gets exactly one answer.

use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use rustc_hash::FxHashMap;
use tower_lsp::jsonrpc::{Error, Id, Result};

use crate::jobs::Cancel;
use crate::sink::Sink;

/// The pending requests by id.
#[derive(Clone)]
pub(crate) struct Requests {
    pending: Arc<Mutex<FxHashMap<Id, Cancel>>>,
    sink: Sink,
}

impl Requests {
    pub(crate) fn new(sink: Sink) -> Requests {
        Requests {
            pending: Arc::default(),
            sink,
        }
    }

    fn pending(&self) -> MutexGuard<'_, FxHashMap<Id, Cancel>> {
        self.pending.lock().unwrap_or_else(PoisonError::into_inner)
    }

    pub(crate) fn is_empty(&self) -> bool {
        self.pending().is_empty()
    }

    /// Registers a request. None if a pending one has the same id.
    pub(crate) fn begin(&self, id: &Id) -> Option<Cancel> {
        let mut pending = self.pending();
        if pending.contains_key(id) {
            return None;
        }
        let cancel = Cancel::default();
        pending.insert(id.clone(), cancel.clone());
        Some(cancel)
    }

    /// Sends the answer, unless the request was cancelled.
    pub(crate) fn finish(&self, id: &Id, answer: Result<Vec<u8>>) {
        if self.pending().remove(id).is_some() {
            self.sink.answer(id, answer);
        }
    }

    /// Answers a pending request with an error; its job is stopped or skipped.
    pub(crate) fn cancel(&self, id: &Id) {
        if let Some(cancel) = self.pending().remove(id) {
            cancel.set();
            self.sink.answer(id, Err(Error::request_cancelled()));
        }
    }

    pub(crate) fn cancel_all(&self) {
        let ids: Vec<Id> = self.pending().keys().cloned().collect();
        ids.iter().for_each(|id| self.cancel(id));
    }
}
