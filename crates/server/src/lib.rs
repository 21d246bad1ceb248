//! The language server: protocol in, protocol out, over any two byte streams.
//!
//! How a message goes: `frames` drops what is none and finds the next; `direct` hands what comes
//! with every key to the state, and its answers to `sink`. Of all else the library decodes it;
//! `guard` begins every call in the order read and lets no panic pass; `backend` sends it as a job
//! to `state`, the one thread that owns documents and snapshots; handlers ask `downlead_ide` and
//! convert. What the server says unasked goes through `outbox`; nobody waits for the client.

use std::io::{Read, Write};
use std::process::ExitCode;
use std::sync::{Arc, Mutex, PoisonError, mpsc};
use std::time::Duration;

use tower_lsp::{LspService, Server};

mod backend;
mod capabilities;
mod config;
mod direct;
mod disk;
mod docs;
mod frames;
mod guard;
mod handlers;
mod library;
mod outbox;
mod peer;
mod positions;
mod publish;
mod raw;
mod recall;
mod sink;
mod space;
mod state;
mod unopened;
mod uris;
mod view;
mod wire;

use backend::Backend;
use direct::{Asked, Direct, Ways};
use guard::{End, Guard};
use outbox::Outbox;
use peer::FirstWords;
use raw::Raws;
use sink::Sink;
use space::Fault;
use state::{Ahead, Job, State};

/// Requests under way at once. Far more than any client sends, so that a cancel never waits.
const CONCURRENT: usize = 64;
/// How long answers still under way are waited for after `exit`.
const GRACE: Duration = Duration::from_millis(500);
/// How often the editor's process is looked for.
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
    let end = Arc::new(End::default());
    let raws = Arc::new(Raws::default());
    let ways = Arc::new(Ways::default());
    let (sink, asked) = (Sink::default(), Asked::default());
    let (jobs, queue) = mpsc::channel::<Job>();
    let ahead = Arc::new(Ahead::default());
    let direct = Arc::new(Mutex::new(Some(Direct {
        jobs: jobs.clone(),
        ahead: Arc::clone(&ahead),
        ways: Arc::clone(&ways),
        sink: sink.clone(),
        asked: asked.clone(),
    })));
    // each fails only when the system gives no thread, and then nothing can be served
    let Ok(incoming) = wire::incoming(read, Arc::clone(&ways), Arc::clone(&direct)) else {
        return 1;
    };
    let sent = wire::outgoing(write, sink.clone(), Arc::clone(&end), Arc::clone(&raws));
    let Ok((outgoing, written)) = sent else {
        return 1;
    };
    let Ok(runtime) = tokio::runtime::Builder::new_current_thread()
        .enable_time()
        .build()
    else {
        return 1;
    };
    let (out, courier) = Outbox::new(sink.clone());
    let fault = Fault(faults.text);
    let state_ahead = Arc::clone(&ahead);
    let back = recall::Back(Arc::clone(&direct));
    let state = std::thread::Builder::new()
        .name("state".to_owned())
        .stack_size(STACK)
        .spawn(move || State::new(out, fault, state_ahead, back).run(&queue));
    let Ok(state) = state else { return 1 };

    runtime.block_on(async {
        let first = Arc::new(FirstWords::default());
        let backend_first = Arc::clone(&first);
        let parent_end = Arc::clone(&end);
        let handle = tokio::runtime::Handle::current();
        let watch_parent = Box::new(move |id| {
            handle.spawn(follow_parent(id, Arc::clone(&parent_end)));
        });
        let (service, socket) = LspService::build(|client| {
            tokio::spawn(courier.run(client));
            Backend {
                jobs,
                first: backend_first,
                watch_parent,
                faulty: faults.requests,
                raws,
                ahead,
            }
        })
        .custom_method("downlead/virtualDocument", Backend::virtual_document)
        .custom_method("workspace/textDocumentContent", Backend::content)
        .custom_method("downlead/probe", Backend::probe)
        .custom_method(guard::raw::HINTS, Backend::hints)
        .custom_method(guard::raw::LENSES, Backend::lenses)
        .custom_method(guard::raw::SYMBOLS, Backend::symbols)
        .custom_method(guard::raw::FOLDS, Backend::folds)
        .custom_method(guard::raw::TOKENS, Backend::tokens)
        .custom_method(guard::raw::TOKENS_CHANGED, Backend::tokens_changed)
        .finish();
        let guard = Guard::new(service, Arc::clone(&end), first, ways);
        let server = async {
            Server::new(incoming, outgoing, socket)
                .concurrency_level(CONCURRENT)
                .serve(guard)
                .await;
            // the library waits for the answers it carries; these go past it
            while !asked.is_empty() {
                tokio::time::sleep(Duration::from_millis(1)).await;
            }
        };
        tokio::pin!(server);
        tokio::select! {
            () = &mut server => {}
            () = end.over.notified() => {
                _ = tokio::time::timeout(GRACE, server).await;
            }
        }
    });
    // what is queued is written; a client that no longer reads is not waited for
    runtime.shutdown_background();
    direct.lock().unwrap_or_else(PoisonError::into_inner).take();
    sink.close();
    _ = written.recv_timeout(GRACE);
    wait_for(state);
    end.status()
}

/// The state ends when all senders of jobs are gone; one that is stuck is left behind.
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
async fn follow_parent(id: u32, end: Arc<End>) {
    let process = std::path::PathBuf::from(format!("/proc/{id}"));
    if !process.exists() {
        return;
    }
    loop {
        tokio::time::sleep(PARENT).await;
        if !process.exists() {
            end.end();
            return;
        }
    }
}
