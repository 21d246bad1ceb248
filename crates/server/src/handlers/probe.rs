//! `downlead/probe`: only in sessions that tests start. Gives the text of a document as the server
//! has it, or panics.

use ls_types::Uri;
use serde_json::Value;
use tower_lsp::jsonrpc::{Error, Result};

use crate::state::State;

/// Panics here with `{"panic": "decode"}`, when it is run with any other `panic`.
#[allow(
    clippy::type_complexity,
    reason = "the table of routes names this type"
)]
pub(crate) fn decode(
    params: Option<Value>,
) -> Result<Box<dyn FnOnce(&mut State) -> Result<Vec<u8>> + Send>> {
    let params = params.unwrap_or_default();
    let word = |name: &str| params.get(name).and_then(Value::as_str);
    assert!(word("panic") != Some("decode"), "injected");
    let uri = word("text").and_then(|u| u.parse::<Uri>().ok());
    Ok(Box::new(move |st| {
        let uri = uri.expect("injected");
        let text = st.docs.get(&uri).map(|d| d.text.as_str());
        serde_json::to_vec(&text).map_err(|_| Error::internal_error())
    }))
}
