//! The phase of the session and its end.

use std::sync::atomic::{AtomicBool, Ordering};

use tokio::sync::Notify;
use tower_lsp::jsonrpc::{Error, ErrorCode};

/// The session. Its phase changes when the library has answered `initialize` or `shutdown`.
#[derive(Default)]
pub(crate) struct Session {
    initialized: AtomicBool,
    shut_down: AtomicBool,
    pub(crate) over: Notify,
}

impl Session {
    pub(crate) fn initialized(&self) {
        self.initialized.store(true, Ordering::SeqCst);
    }

    pub(crate) fn shut_down(&self) {
        self.shut_down.store(true, Ordering::SeqCst);
    }

    /// Why a document method is refused in this phase, if it is.
    pub(crate) fn refusal(&self) -> Option<Error> {
        if !self.initialized.load(Ordering::SeqCst) {
            // `ServerNotInitialized` of the protocol
            return Some(Error {
                code: ErrorCode::ServerError(-32002),
                message: "Server not initialized".into(),
                data: None,
            });
        }
        let shut_down = self.shut_down.load(Ordering::SeqCst);
        shut_down.then(Error::invalid_request)
    }

    /// Exit status: 0 after `shutdown`, else 1, as the protocol requires.
    pub(crate) fn status(&self) -> u8 {
        u8::from(!self.shut_down.load(Ordering::SeqCst))
    }

    /// Ends the session, whatever is still pending.
    pub(crate) fn end(&self) {
        self.over.notify_one();
    }
}
