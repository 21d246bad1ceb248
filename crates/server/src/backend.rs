//! The methods of the session's life cycle, which the library serves.

use std::sync::Arc;

use ls_types::{InitializeParams, InitializeResult, InitializedParams};
use tower_lsp::LanguageServer;
use tower_lsp::jsonrpc::Result;

use crate::capabilities::offer;
use crate::handlers::configuration;
use crate::jobs::Jobs;
use crate::peer::{FirstWords, Peer};
use crate::state::State;

/// The methods.
pub(crate) struct Backend {
    pub(crate) jobs: Jobs<State>,
    pub(crate) first: Arc<FirstWords>,
    pub(crate) watch_parent: Box<dyn Fn(u32) + Send + Sync>,
}

impl LanguageServer for Backend {
    async fn initialize(&self, _: InitializeParams) -> Result<InitializeResult> {
        let peer = Peer::read(&self.first.take());
        let answer = offer(&peer);
        if let Some(id) = peer.process {
            (self.watch_parent)(id);
        }
        self.jobs.send(move |st| st.begin(peer));
        Ok(answer)
    }

    async fn initialized(&self, _: InitializedParams) {
        self.jobs.send(configuration::initialized);
    }

    async fn shutdown(&self) -> Result<()> {
        Ok(())
    }
}
