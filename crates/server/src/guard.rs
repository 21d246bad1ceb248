//! A layer around the library's service: begins each call when the library reads it, writes its
//! answer, keeps panics within the call, and ends the session at `exit`.

use std::future::Future;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::pin::Pin;
use std::sync::Arc;
use std::sync::mpsc::Sender;
use std::task::{Context, Poll, Waker};

use serde_json::{Value, json};
use tower_lsp::ExitedError;
use tower_lsp::jsonrpc::{Error, Id, Request, Response};
use tower_service::Service;

use crate::peer::FirstWords;
use crate::requests::Requests;
use crate::session::Session;
use crate::sink::Sink;

type Answer = Result<Option<Response>, ExitedError>;
type Pending = Pin<Box<dyn Future<Output = Answer> + Send>>;

/// The wrapped service.
pub(crate) struct Guard<S> {
    pub(crate) inner: S,
    pub(crate) session: Arc<Session>,
    pub(crate) first: Arc<FirstWords>,
    pub(crate) requests: Requests,
    pub(crate) sink: Sink,
    /// Receives one signal for each call begun.
    pub(crate) begun: Sender<()>,
}

/// Works around parameters that the library refuses. Those of `initialize` are kept as sent: a
/// kind that the library does not know would otherwise fail the whole session.
fn admitted(request: Request, first: &FirstWords) -> Request {
    let params = match request.method() {
        "initialize" => {
            first.set(request.params().cloned().unwrap_or(Value::Null));
            Some(json!({ "capabilities": {} }))
        }
        "initialized" => Some(json!({})),
        "shutdown" | "exit" => None,
        _ => return request,
    };
    let (method, id, _) = request.into_parts();
    let mut built = Request::build(method);
    if let Some(p) = params {
        built = built.params(p);
    }
    match id {
        Some(id) => built.id(id).finish(),
        None => built.finish(),
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
        // fails only when reading has ended
        _ = self.begun.send(());
        pending
    }
}

impl<S> Guard<S>
where
    S: Service<Request, Response = Option<Response>, Error = ExitedError, Future = Pending>,
{
    fn begin(&mut self, request: Request) -> Pending {
        let id = request.id().cloned();
        let request = admitted(request, &self.first);
        let method = request.method().to_owned();
        let begun = catch_unwind(AssertUnwindSafe(|| self.inner.call(request)));
        let Ok(future) = begun else {
            return ready(Ok(failed(id)));
        };
        let exits = method == "exit" && id.is_none();
        let mut task = Caught { future, id };
        // the library polls a pending future again, with a real waker
        let first = Pin::new(&mut task).poll(&mut Context::from_waker(Waker::noop()));
        if exits {
            self.requests.cancel_all();
            self.session.end();
        }
        match first {
            Poll::Ready(Ok(Some(response))) => {
                match method.as_str() {
                    "initialize" if response.is_ok() => self.session.initialized(),
                    "shutdown" if response.is_ok() => self.session.shut_down(),
                    _ => {}
                }
                // written before the next message is begun: nothing overtakes it
                if let Ok(body) = serde_json::to_vec(&response) {
                    self.sink.message(&body);
                }
                ready(Ok(None))
            }
            Poll::Ready(answer) => ready(answer),
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
