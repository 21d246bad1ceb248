//! The language server: protocol in, protocol out, over any two byte streams.
//!
//! The way of a message: `frames` reads it and drops what is not JSON-RPC; `dispatch` looks up its
//! method in the table of `routes` and queues a job. One thread, `actor`, owns the `state` and runs
//! the jobs in the order of the wire; a handler asks `downlead_ide` and converts, and the answer goes
//! through `sink` to the writing thread. The library serves the life cycle of the session
//! (`backend`, `guard`) and carries requests of the server to the client (`outbox`). No thread waits
//! for the client.

use std::io::{Read, Write};
use std::process::ExitCode;
use std::sync::{Arc, mpsc};
use std::time::Duration;

use tower_lsp::{LspService, Server};

mod actor;
mod backend;
mod capabilities;
mod config;
mod diagnostics;
mod disk;
mod dispatch;
mod docs;
mod due;
mod frames;
mod guard;
mod handlers;
mod held;
mod history;
mod jobs;
mod kept_hints;
mod library;
mod outbox;
mod peer;
mod positions;
mod publish;
mod recall;
mod release;
mod requests;
mod routes;
mod session;
mod sink;
mod space;
mod state;
mod typing;
mod unopened;
mod uris;
mod view;
mod wire;

use backend::Backend;
use dispatch::Dispatcher;
use guard::Guard;
use jobs::{Ahead, Jobs};
use outbox::Outbox;
use peer::FirstWords;
use requests::Requests;
use routes::Routes;
use session::Session;
use sink::Sink;
use space::Fault;
use state::State;

/// Longest wait for pending answers after `exit`.
const GRACE: Duration = Duration::from_millis(500);
/// Interval of the checks that the editor's process is alive.
const PARENT: Duration = Duration::from_secs(5);
/// Deep trees are walked with recursion of bounded depth; this holds it with a margin.
const STACK: usize = 64 << 20;

/// Faults to be injected: for tests of what then happens.
#[derive(Clone, Debug, Default)]
#[doc(hidden)]
pub struct Faults {
    /// The request `downlead/probe` is there, which can panic.
    pub requests: bool,
    /// Evaluation of a text that holds this panics.
    pub text: Option<String>,
}

/// Serves on standard input and output until `exit`, the end of input, or the end of the editor.
/// Status 0 after `shutdown`, else 1.
#[must_use]
pub fn run_stdio() -> ExitCode {
    ExitCode::from(match unbuffered() {
        Some((input, output)) => serve(input, output),
        None => serve(std::io::stdin(), std::io::stdout()),
    })
}

/// The standard streams as files. Those of the library keep whole lines apart: a message would go
/// out in two writes, header and body, and wake its reader twice.
#[cfg(unix)]
fn unbuffered() -> Option<(std::fs::File, std::fs::File)> {
    use std::os::fd::AsFd;
    let input = std::io::stdin().as_fd().try_clone_to_owned().ok()?;
    let output = std::io::stdout().as_fd().try_clone_to_owned().ok()?;
    Some((input.into(), output.into()))
}

#[cfg(windows)]
fn unbuffered() -> Option<(std::fs::File, std::fs::File)> {
    use std::os::windows::io::AsHandle;
    let input = std::io::stdin().as_handle().try_clone_to_owned().ok()?;
    let output = std::io::stdout().as_handle().try_clone_to_owned().ok()?;
    Some((input.into(), output.into()))
}

#[cfg(not(any(unix, windows)))]
fn unbuffered() -> Option<(std::fs::File, std::fs::File)> {
    None
}

/// Serves on two streams. The exit status the process should have: 0 after `shutdown`, else 1.
#[must_use]
pub fn serve(read: impl Read + Send + 'static, write: impl Write + Send + 'static) -> u8 {
    serve_with(read, write, Faults::default())
}

/// [`serve`] with injected faults.
#[doc(hidden)]
#[must_use]
pub fn serve_with(
    read: impl Read + Send + 'static,
    write: impl Write + Send + 'static,
    faults: Faults,
) -> u8 {
    let session = Arc::new(Session::default());
    let sink = Sink::default();
    let requests = Requests::new(sink.clone());
    let (jobs, queue) = Jobs::new();
    let ahead = Arc::new(Ahead::default());
    let (library, incoming) = wire::Incoming::new();
    let (begun, begun_calls) = mpsc::channel();
    let dispatcher = Dispatcher {
        routes: Routes::new(faults.requests),
        session: Arc::clone(&session),
        jobs: jobs.clone(),
        ahead: Arc::clone(&ahead),
        requests: requests.clone(),
        sink: sink.clone(),
        library,
        begun: begun_calls,
    };
    // each fails only when the system gives no thread, and then nothing can be served
    if wire::read_all(read, dispatcher).is_err() {
        return 1;
    }
    let sent = wire::write_all(write, sink.clone(), Arc::clone(&session));
    let Ok((outgoing, written)) = sent else {
        return 1;
    };
    let (out, courier) = Outbox::new(sink.clone());
    let state_jobs = jobs.clone();
    let state = std::thread::Builder::new()
        .name("state".to_owned())
        .stack_size(STACK)
        .spawn(move || State::new(out, Fault(faults.text), ahead, state_jobs).run(&queue));
    let Ok(state) = state else { return 1 };
    let library = Library {
        jobs: jobs.clone(),
        begun,
        requests,
        session: Arc::clone(&session),
        sink: sink.clone(),
        incoming,
        outgoing,
        courier,
    };
    if library.serve().is_err() {
        return 1;
    }
    jobs.close();
    // queued messages are written; a client that no longer reads is not waited for
    sink.close();
    _ = written.recv_timeout(GRACE);
    wait_for(state);
    session.status()
}

/// The library's part of a session, on the calling thread.
struct Library {
    jobs: Jobs<State>,
    begun: mpsc::Sender<()>,
    requests: Requests,
    session: Arc<Session>,
    sink: Sink,
    incoming: wire::Incoming,
    outgoing: wire::Outgoing,
    courier: outbox::Courier,
}

impl Library {
    /// Serves until `exit` or the end of input, and until pending requests are answered.
    fn serve(self) -> std::io::Result<()> {
        let runtime = tokio::runtime::Builder::new_current_thread()
            .enable_time()
            .build()?;
        runtime.block_on(async {
            let session = Arc::clone(&self.session);
            let server = self.until_answered();
            tokio::pin!(server);
            tokio::select! {
                () = &mut server => {}
                () = session.over.notified() => {
                    _ = tokio::time::timeout(GRACE, server).await;
                }
            }
        });
        runtime.shutdown_background();
        Ok(())
    }

    async fn until_answered(self) {
        let first = Arc::new(FirstWords::default());
        let handle = tokio::runtime::Handle::current();
        let session = Arc::clone(&self.session);
        let watch_parent = Box::new(move |id| {
            // looked for before `initialize` is answered: the editor may end right after the answer
            let process = std::path::PathBuf::from(format!("/proc/{id}"));
            if process.exists() {
                handle.spawn(follow_parent(process, Arc::clone(&session)));
            }
        });
        let (inner, socket) = LspService::new(|client| {
            tokio::spawn(self.courier.run(client));
            Backend {
                jobs: self.jobs,
                first: Arc::clone(&first),
                watch_parent,
            }
        });
        let guard = Guard {
            inner,
            session: self.session,
            first,
            requests: self.requests.clone(),
            sink: self.sink,
            begun: self.begun,
        };
        Server::new(self.incoming, self.outgoing, socket)
            .serve(guard)
            .await;
        while !self.requests.is_empty() {
            tokio::time::sleep(Duration::from_millis(1)).await;
        }
    }
}

/// Waits until the thread of the state has ended, but not for one that is stuck.
fn wait_for(state: std::thread::JoinHandle<()>) {
    let begun = std::time::Instant::now();
    while !state.is_finished() && begun.elapsed() < GRACE {
        std::thread::sleep(Duration::from_millis(1));
    }
    if state.is_finished() {
        _ = state.join();
    }
}

/// Ends the session when the editor's process is gone. A process that cannot be seen from here at
/// the start (another machine's, another container's) is not followed.
async fn follow_parent(process: std::path::PathBuf, session: Arc<Session>) {
    loop {
        tokio::time::sleep(PARENT).await;
        if !process.exists() {
            session.end();
            return;
        }
    }
}
