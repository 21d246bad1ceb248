//! Around the library's service: every call is begun in the order read, no panic passes, and
//! `exit` ends.

use std::future::Future;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::pin::Pin;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::task::{Context, Poll, Waker};

use serde_json::{Value, json};
use tokio::sync::Notify;
use tower_lsp::ExitedError;
use tower_lsp::jsonrpc::{Error, Id, Request, Response};
use tower_service::Service;

use crate::direct::Ways;
use crate::frames::REFUSED;
use crate::peer::FirstWords;

/// Methods with long answers, under the names they have behind the guard: the library's own
/// handlers can give trees of values only.
pub(crate) mod raw {
    pub(crate) const HINTS: &str = "downlead/raw/inlayHint";
    pub(crate) const LENSES: &str = "downlead/raw/codeLens";
    pub(crate) const SYMBOLS: &str = "downlead/raw/documentSymbol";
    pub(crate) const FOLDS: &str = "downlead/raw/foldingRange";
    pub(crate) const TOKENS: &str = "downlead/raw/semanticTokens/full";
    pub(crate) const TOKENS_CHANGED: &str = "downlead/raw/semanticTokens/full/delta";

    /// The name behind the guard.
    pub(crate) fn behind(method: &str) -> Option<&'static str> {
        let inner = method.strip_prefix("textDocument/")?;
        [HINTS, LENSES, SYMBOLS, FOLDS, TOKENS, TOKENS_CHANGED]
            .into_iter()
            .find(|m| m.strip_prefix("downlead/raw/") == Some(inner))
    }
}

type Answer = Result<Option<Response>, ExitedError>;
type Pending = Pin<Box<dyn Future<Output = Answer> + Send>>;

/// How the session ends.
#[derive(Default)]
pub(crate) struct End {
    shut_down: AtomicBool,
    pub(crate) over: Notify,
}

impl End {
    /// Exit status: 0 after `shutdown`, else 1, as the protocol says.
    pub(crate) fn status(&self) -> u8 {
        u8::from(!self.shut_down.load(Ordering::SeqCst))
    }

    /// Ends the session whatever is still open.
    pub(crate) fn end(&self) {
        self.over.notify_one();
    }
}

/// The wrapped service.
pub(crate) struct Guard<S> {
    inner: S,
    end: Arc<End>,
    first: Arc<FirstWords>,
    ways: Arc<Ways>,
}

impl<S> Guard<S> {
    pub(crate) fn new(
        inner: S,
        end: Arc<End>,
        first: Arc<FirstWords>,
        ways: Arc<Ways>,
    ) -> Guard<S> {
        Guard {
            inner,
            end,
            first,
            ways,
        }
    }

    /// Small mercies: what clients send beside the protocol, and the client's own words at
    /// `initialize`, which are kept as they are (a kind the library does not know would otherwise
    /// fail the whole session).
    fn admit(&self, request: Request) -> Request {
        if let Some(method) = raw::behind(request.method()) {
            let (_, id, params) = request.into_parts();
            let mut built = Request::build(method);
            if let Some(p) = params {
                built = built.params(p);
            }
            return match id {
                Some(id) => built.id(id).finish(),
                None => built.finish(),
            };
        }
        let plain = |params: Option<Value>| {
            let id = request.id().cloned();
            let mut built = Request::build(request.method().to_owned());
            if let Some(p) = params {
                built = built.params(p);
            }
            match id {
                Some(id) => built.id(id).finish(),
                None => built.finish(),
            }
        };
        match request.method() {
            "initialize" => {
                self.first
                    .set(request.params().cloned().unwrap_or(Value::Null));
                plain(Some(json!({ "capabilities": {} })))
            }
            "initialized" => plain(Some(json!({}))),
            "shutdown" | "exit" => plain(None),
            _ => request,
        }
    }
}

impl<S> Service<Request> for Guard<S>
where
    S: Service<Request, Response = Option<Response>, Error = ExitedError, Future = Pending>,
{
    type Response = Option<Response>;
    type Error = ExitedError;
    type Future = Pending;

    fn poll_ready(&mut self, _: &mut Context<'_>) -> Poll<Result<(), ExitedError>> {
        Poll::Ready(Ok(()))
    }

    fn call(&mut self, request: Request) -> Pending {
        let pending = self.begin(request);
        // what it had to say to the state is said
        let count = &self.ways.long;
        _ = count.fetch_update(Ordering::SeqCst, Ordering::SeqCst, |n| n.checked_sub(1));
        pending
    }
}

impl<S> Guard<S>
where
    S: Service<Request, Response = Option<Response>, Error = ExitedError, Future = Pending>,
{
    fn begin(&mut self, request: Request) -> Pending {
        let id = request.id().cloned();
        if request.method() == REFUSED {
            return ready(Ok(
                id.map(|id| Response::from_error(id, Error::invalid_request()))
            ));
        }
        let request = self.admit(request);
        let shutdown = request.method() == "shutdown";
        let initialize = request.method() == "initialize";
        let exit = request.method() == "exit" && id.is_none();
        let begun = catch_unwind(AssertUnwindSafe(|| self.inner.call(request)));
        let Ok(future) = begun else {
            return ready(Ok(failed(id)));
        };
        let mut task = Caught { future, id };
        // begun here, in the order read; whoever takes the future polls it again with a real waker
        let first = Pin::new(&mut task).poll(&mut Context::from_waker(Waker::noop()));
        if exit {
            self.end.end();
        }
        match first {
            Poll::Ready(answer) => {
                if shutdown && matches!(&answer, Ok(Some(r)) if r.is_ok()) {
                    self.end.shut_down.store(true, Ordering::SeqCst);
                }
                if initialize && matches!(&answer, Ok(Some(r)) if r.is_ok()) {
                    self.ways.greeted.store(true, Ordering::SeqCst);
                }
                ready(answer)
            }
            Poll::Pending => Box::pin(task),
        }
    }
}

fn ready(answer: Answer) -> Pending {
    Box::pin(std::future::ready(answer))
}

fn failed(id: Option<Id>) -> Option<Response> {
    id.map(|id| Response::from_error(id, Error::internal_error()))
}

/// A future whose panic is an error of its own request.
struct Caught {
    future: Pending,
    id: Option<Id>,
}

impl Future for Caught {
    type Output = Answer;

    fn poll(mut self: Pin<&mut Self>, cx: &mut Context<'_>) -> Poll<Answer> {
        let future = self.future.as_mut();
        match catch_unwind(AssertUnwindSafe(move || future.poll(cx))) {
            Ok(polled) => polled,
            Err(_) => Poll::Ready(Ok(failed(self.id.take()))),
        }
    }
}
