//! Requests and notifications of the server. The sender does not block: a task passes them on.

use std::sync::Arc;
use std::sync::atomic::{AtomicBool, AtomicU64, Ordering};
use std::time::Duration;

use serde_json::{Value, json};
use tokio::sync::{Notify, mpsc};
use tower_lsp::Client;
use tower_lsp::jsonrpc::Request;
use tower_service::Service;

use crate::sink::Sink;

/// Work shorter than this shows no progress.
const PATIENCE: Duration = Duration::from_millis(200);

type Then = Box<dyn FnOnce(Option<Value>) + Send>;

enum Out {
    Notify {
        method: &'static str,
        params: Value,
    },
    Ask {
        method: &'static str,
        params: Value,
        then: Then,
    },
    Progress {
        title: String,
        done: Arc<Notify>,
    },
}

/// The sending side.
#[derive(Clone)]
pub(crate) struct Outbox {
    send: mpsc::UnboundedSender<Out>,
    refreshing: Arc<[AtomicBool; REFRESH.len()]>,
    sink: Sink,
}

/// Requests that ask the client to ask again; at most one of each is under way.
const REFRESH: [&str; 6] = [
    "workspace/inlayHint/refresh",
    "workspace/inlineValue/refresh",
    "workspace/codeLens/refresh",
    "workspace/semanticTokens/refresh",
    "workspace/diagnostic/refresh",
    "workspace/textDocumentContent/refresh",
];

/// A line of the client's log, or a message shown.
#[derive(Clone, Copy)]
pub(crate) enum Kind {
    Error = 1,
    Warning = 2,
    Info = 3,
}

impl Outbox {
    pub(crate) fn new(sink: Sink) -> (Outbox, Courier) {
        let (send, queue) = mpsc::unbounded_channel();
        (
            Outbox {
                send,
                refreshing: Arc::default(),
                sink,
            },
            Courier { queue },
        )
    }

    /// Diagnostics of a document; an older list not yet sent is dropped.
    pub(crate) fn publish(&self, uri: &str, params: &[u8]) {
        self.sink.publish(uri, params);
    }

    pub(crate) fn notify(&self, method: &'static str, params: Value) {
        _ = self.send.send(Out::Notify { method, params });
    }

    pub(crate) fn log(&self, kind: Kind, message: impl Into<String>) {
        self.notify(
            "window/logMessage",
            json!({ "type": kind as u8, "message": message.into() }),
        );
    }

    pub(crate) fn show(&self, kind: Kind, message: impl Into<String>) {
        self.notify(
            "window/showMessage",
            json!({ "type": kind as u8, "message": message.into() }),
        );
    }

    /// Sends a request. `then` gets the result, or none if the client refuses. Does not block.
    pub(crate) fn ask(
        &self,
        method: &'static str,
        params: Value,
        then: impl FnOnce(Option<Value>) + Send + 'static,
    ) {
        _ = self.send.send(Out::Ask {
            method,
            params,
            then: Box::new(then),
        });
    }

    /// Sends a refresh request, unless one of the same method is pending.
    pub(crate) fn refresh(&self, method: &'static str, params: Value) {
        let Some(i) = REFRESH.iter().position(|m| *m == method) else {
            return;
        };
        if self.refreshing[i].swap(true, Ordering::SeqCst) {
            return;
        }
        let flags = Arc::clone(&self.refreshing);
        self.ask(method, params, move |_| {
            flags[i].store(false, Ordering::SeqCst)
        });
    }

    /// Shows progress until the guard is dropped, if that takes long.
    pub(crate) fn progress(&self, title: impl Into<String>) -> Progress {
        let done = Arc::new(Notify::new());
        _ = self.send.send(Out::Progress {
            title: title.into(),
            done: Arc::clone(&done),
        });
        Progress(done)
    }
}

/// Work under way.
pub(crate) struct Progress(Arc<Notify>);

impl Drop for Progress {
    fn drop(&mut self) {
        self.0.notify_one();
    }
}

/// The task that passes messages on.
pub(crate) struct Courier {
    queue: mpsc::UnboundedReceiver<Out>,
}

impl Courier {
    pub(crate) async fn run(mut self, client: Client) {
        while let Some(out) = self.queue.recv().await {
            match out {
                Out::Notify { method, params } => tell(&client, method, params).await,
                Out::Ask {
                    method,
                    params,
                    then,
                } => {
                    let client = client.clone();
                    tokio::spawn(async move { then(ask(&client, method, params).await) });
                }
                Out::Progress { title, done } => {
                    tokio::spawn(show_progress(client.clone(), title, done));
                }
            }
        }
    }
}

async fn tell(client: &Client, method: &'static str, params: Value) {
    // fails only when the session is over
    _ = client
        .clone()
        .call(Request::build(method).params(params).finish())
        .await;
}

async fn ask(client: &Client, method: &'static str, params: Value) -> Option<Value> {
    let mut request = Request::build(method).id(client.next_request_id());
    if !params.is_null() {
        request = request.params(params);
    }
    let answer = client.clone().call(request.finish()).await.ok()??;
    answer.into_parts().1.ok()
}

async fn show_progress(client: Client, title: String, done: Arc<Notify>) {
    static NEXT: AtomicU64 = AtomicU64::new(1);
    tokio::select! {
        () = done.notified() => return,
        () = tokio::time::sleep(PATIENCE) => {}
    }
    let token = format!("downlead/{}", NEXT.fetch_add(1, Ordering::Relaxed));
    if ask(
        &client,
        "window/workDoneProgress/create",
        json!({ "token": token }),
    )
    .await
    .is_none()
    {
        return;
    }
    let begin = json!({ "kind": "begin", "title": title, "cancellable": false });
    tell(
        &client,
        "$/progress",
        json!({ "token": token, "value": begin }),
    )
    .await;
    done.notified().await;
    tell(
        &client,
        "$/progress",
        json!({ "token": token, "value": { "kind": "end" } }),
    )
    .await;
}
