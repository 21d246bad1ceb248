//! Begins every message of the client, on the reading thread and in the order of the wire.
//!
//! A call in the table of routes becomes a job of the state at once. Any other call (`initialize`,
//! `initialized`, `shutdown`, `exit`, unknown methods) goes to the library, and the next message
//! waits until the library has begun it: by then its job is queued and its answer written. So jobs
//! are queued in the order of the wire, and the state runs them in this order.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::Arc;
use std::sync::atomic::Ordering;
use std::sync::mpsc::Receiver;

use serde::Deserialize;
use serde_json::Value;
use tokio::sync::mpsc::Sender;
use tower_lsp::jsonrpc::{Error, Id, Request, Result};

use crate::frames::Message;
use crate::jobs::{Ahead, Jobs};
use crate::requests::Requests;
use crate::routes::{Ask, Route, Routes};
use crate::session::Session;
use crate::sink::Sink;
use crate::state::State;

/// The dispatcher.
pub(crate) struct Dispatcher {
    pub(crate) routes: Routes,
    pub(crate) session: Arc<Session>,
    pub(crate) jobs: Jobs<State>,
    pub(crate) ahead: Arc<Ahead>,
    pub(crate) requests: Requests,
    pub(crate) sink: Sink,
    /// Whole frames for the library.
    pub(crate) library: Sender<Vec<u8>>,
    /// One signal for each call that the library has begun.
    pub(crate) begun: Receiver<()>,
}

#[derive(Deserialize)]
struct CancelParams {
    id: Id,
}

impl Dispatcher {
    /// Begins a message. False if the library has ended.
    pub(crate) fn begin(&self, message: Message) -> bool {
        let (request, body) = match message {
            Message::Call { request, body } => (request, body),
            Message::Answer(body) => return self.to_library(&body),
            Message::Malformed(id) => {
                self.sink.answer(&id, Err(Error::invalid_request()));
                return true;
            }
        };
        if request.method() == "$/cancelRequest" && request.id().is_none() {
            let params = request.params().map(CancelParams::deserialize);
            if let Some(Ok(p)) = params {
                self.requests.cancel(&p.id);
            }
            return true;
        }
        match self.routes.get(request.method()) {
            Some(route) => {
                self.call(route, request);
                true
            }
            None => self.to_library(&body) && self.begun.recv().is_ok(),
        }
    }

    fn to_library(&self, body: &[u8]) -> bool {
        let mut frame = format!("Content-Length: {}\r\n\r\n", body.len()).into_bytes();
        frame.extend_from_slice(body);
        self.library.blocking_send(frame).is_ok()
    }

    fn call(&self, route: &Route, request: Request) {
        let (_, id, params) = request.into_parts();
        if let Some(why) = self.session.refusal() {
            if let Some(id) = id {
                self.sink.answer(&id, Err(why));
            }
            return;
        }
        match (route, id) {
            (Route::Request(decode), Some(id)) => match decoded(decode, params) {
                Ok(ask) => self.ask(id, ask),
                Err(e) => self.sink.answer(&id, Err(e)),
            },
            (Route::Notification(decode), None) => {
                if let Ok(job) = decoded(decode, params) {
                    self.jobs.send(job);
                }
            }
            (Route::Change(decode), None) => {
                if let Ok(job) = decoded(decode, params) {
                    self.ahead.changes.fetch_add(1, Ordering::SeqCst);
                    self.jobs.send(move |st| {
                        st.ahead.changes.fetch_sub(1, Ordering::SeqCst);
                        job(st);
                    });
                }
            }
            (Route::Request(_), None) => {}
            (_, Some(id)) => self.sink.answer(&id, Err(Error::invalid_request())),
        }
    }

    fn ask(&self, id: Id, ask: Ask) {
        let Some(cancel) = self.requests.begin(&id) else {
            self.sink.answer(&id, Err(Error::invalid_request()));
            return;
        };
        self.ahead.requests.fetch_add(1, Ordering::SeqCst);
        let requests = self.requests.clone();
        self.jobs.send(move |st| {
            st.ahead.requests.fetch_sub(1, Ordering::SeqCst);
            if !cancel.is_set() {
                requests.finish(&id, st.run_request(cancel, ask));
            }
        });
    }
}

/// Decodes parameters; a panic is an error of this call only.
fn decoded<T>(decode: &dyn Fn(Option<Value>) -> Result<T>, params: Option<Value>) -> Result<T> {
    catch_unwind(AssertUnwindSafe(|| decode(params)))
        .unwrap_or_else(|_| Err(Error::internal_error()))
}
