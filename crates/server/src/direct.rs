//! The short way: what an editor sends with every key goes from the reading thread to the state
//! and from there to the writer, without the library between. Everything else goes the long way,
//! and so does this while something that was read before it is still on the long way: the order
//! of the wire is kept.

use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::mpsc::Sender;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use ls_types::DidChangeTextDocumentParams;
use rustc_hash::FxHashMap;
use serde::Deserialize;
use serde::de::DeserializeOwned;
use tower_lsp::jsonrpc::{Error, Id, Result};

use crate::backend::{self, written};
use crate::handlers::{hints, marks, reading, structure, tokens};
use crate::sink::Sink;
use crate::state::{Ahead, Cancel, Job, State};

/// What the two ways tell each other.
#[derive(Default)]
pub(crate) struct Ways {
    /// Calls read that have not yet passed the guard.
    pub(crate) long: AtomicUsize,
    /// `initialize` was answered.
    pub(crate) greeted: AtomicBool,
    /// `shutdown` or `exit` was read.
    over: AtomicBool,
}

/// Requests on the short way. Who takes one out answers it.
#[derive(Clone, Default)]
pub(crate) struct Asked(Arc<Mutex<FxHashMap<Id, Cancel>>>);

impl Asked {
    fn map(&self) -> MutexGuard<'_, FxHashMap<Id, Cancel>> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    pub(crate) fn is_empty(&self) -> bool {
        self.map().is_empty()
    }
}

/// The short way.
pub(crate) struct Direct {
    pub(crate) jobs: Sender<Job>,
    pub(crate) ahead: Arc<Ahead>,
    pub(crate) ways: Arc<Ways>,
    pub(crate) sink: Sink,
    pub(crate) asked: Asked,
}

#[derive(Deserialize)]
struct Params<P> {
    params: P,
}

#[derive(Deserialize)]
struct OfCancel {
    id: Id,
}

fn params<P: DeserializeOwned>(body: &[u8]) -> Option<P> {
    let read = serde_json::from_slice::<Params<P>>(body).ok()?;
    Some(read.params)
}

type Answer = Box<dyn FnOnce(&mut State) -> Result<Vec<u8>> + Send>;

/// What is asked with every key.
fn answer(method: &str, body: &[u8]) -> Option<Answer> {
    macro_rules! by {
        ($handler:path) => {{
            let p = params(body)?;
            Box::new(move |st: &mut State| written(&$handler(st, p)?))
        }};
    }
    Some(match method {
        "textDocument/inlayHint" => {
            let p = params(body)?;
            Box::new(move |st: &mut State| hints::hints(st, p))
        }
        "textDocument/documentColor" => by!(marks::swatches),
        "textDocument/codeLens" => by!(reading::lenses),
        "textDocument/documentSymbol" => by!(structure::symbols),
        "textDocument/foldingRange" => by!(structure::folds),
        "textDocument/semanticTokens/full" => by!(tokens::full),
        "textDocument/semanticTokens/full/delta" => by!(tokens::delta),
        _ => return None,
    })
}

impl Direct {
    /// Whether the call is on its way; if not, it has to go the long one.
    pub(crate) fn take(&self, method: &str, id: Option<&Id>, body: &[u8]) -> bool {
        if matches!(method, "shutdown" | "exit") {
            self.ways.over.store(true, Ordering::SeqCst);
        }
        let ways = &self.ways;
        if !ways.greeted.load(Ordering::SeqCst) || ways.over.load(Ordering::SeqCst) {
            return false;
        }
        if method == "$/cancelRequest" && id.is_none() {
            return params::<OfCancel>(body).is_some_and(|p| self.cancel(&p.id));
        }
        if ways.long.load(Ordering::SeqCst) > 0 {
            return false;
        }
        match id {
            None if method == "textDocument/didChange" => {
                let Some(p) = params::<DidChangeTextDocumentParams>(body) else {
                    return false;
                };
                // fails only when the session is over
                _ = self.jobs.send(backend::change(&self.ahead, p));
                true
            }
            Some(id) => answer(method, body).is_some_and(|a| self.ask(id, a)),
            None => false,
        }
    }

    fn ask(&self, id: &Id, job: Answer) -> bool {
        let cancel = Cancel::default();
        if self.asked.map().contains_key(id) {
            return false;
        }
        self.asked.map().insert(id.clone(), cancel.clone());
        self.ahead.requests.fetch_add(1, Ordering::SeqCst);
        let (asked, sink, id) = (self.asked.clone(), self.sink.clone(), id.clone());
        _ = self.jobs.send(Box::new(move |st| {
            st.ahead.requests.fetch_sub(1, Ordering::SeqCst);
            if cancel.is_set() {
                return;
            }
            let answer = st.run_asked(cancel, job);
            if asked.map().remove(&id).is_some() {
                sink.answer(&id, answer);
            }
        }));
        true
    }

    fn cancel(&self, id: &Id) -> bool {
        let Some(cancel) = self.asked.map().remove(id) else {
            return false;
        };
        cancel.set();
        self.sink.answer(id, Err(Error::request_cancelled()));
        true
    }
}
