//! `initialized` and `workspace/didChangeConfiguration`: registrations and settings.

use crate::state::State;
use crate::uris;
use ls_types::*;
use serde_json::{Value, json};

/// Registers capabilities and requests the settings. The answers arrive as jobs.
pub(crate) fn initialized(st: &mut State) {
    let mut registrations = Vec::new();
    if st.peer.watch {
        // stations, readings, network files
        let glob = "**/*.{downlead,csv,ts,s1p,s2p,s3p,s4p}";
        let watchers = json!({ "watchers": [{ "globPattern": glob }] });
        registrations.push(json!({ "id": "watch", "method": "workspace/didChangeWatchedFiles", "registerOptions": watchers }));
    }
    if st.peer.configuration_news {
        let section = json!({ "section": "downlead" });
        registrations.push(json!({ "id": "settings", "method": "workspace/didChangeConfiguration", "registerOptions": section }));
    }
    if st.peer.fetches_content {
        let schemes = json!({ "schemes": [uris::SCHEME] });
        registrations.push(json!({ "id": "content", "method": "workspace/textDocumentContent", "registerOptions": schemes }));
    }
    if st.peer.type_hierarchy {
        let selector = json!({ "documentSelector": [{ "language": "downlead" }] });
        registrations.push(json!({ "id": "types", "method": "textDocument/prepareTypeHierarchy", "registerOptions": selector }));
    }
    if !registrations.is_empty() {
        st.out.ask(
            "client/registerCapability",
            json!({ "registrations": registrations }),
            |_| {},
        );
    }
    ask_settings(st);
}

/// Asks for the settings, of every folder if there are several.
fn ask_settings(st: &State) {
    if !st.peer.configuration {
        return;
    }
    let folders: Vec<Uri> = if st.peer.folders.len() > 1 {
        st.peer.folders.clone()
    } else {
        Vec::new()
    };
    let mut items = vec![json!({ "section": "downlead" })];
    items.extend(
        folders
            .iter()
            .map(|f| json!({ "section": "downlead", "scopeUri": f })),
    );
    let jobs = st.jobs.clone();
    st.out.ask(
        "workspace/configuration",
        json!({ "items": items }),
        move |answer| {
            let Some(Value::Array(all)) = answer else {
                return;
            };
            jobs.send(move |st: &mut State| {
                for (i, value) in all.iter().enumerate() {
                    let folder = i.checked_sub(1).and_then(|i| folders.get(i));
                    if i == 0 || folder.is_some() {
                        st.configure(folder, value);
                    }
                }
            });
        },
    );
}

pub(crate) fn changed(st: &mut State, p: DidChangeConfigurationParams) {
    if st.peer.configuration {
        // the parameters are not reliable from a client that supports `workspace/configuration`
        ask_settings(st);
    } else {
        st.configure(None, &p.settings);
    }
}
