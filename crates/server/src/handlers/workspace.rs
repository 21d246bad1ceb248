//! Folders, settings, files on the disk.

use downlead_ide as ide;
use downlead_station::normalise;
use ls_types::*;
use serde_json::{Value, json};
use tower_lsp::jsonrpc::Result;

use crate::space::Key;
use crate::state::{Job, State};
use crate::uris;

/// The session has begun: asks for what must be asked for. Nobody waits for the answers.
pub(crate) fn initialized(st: &mut State, jobs: &std::sync::mpsc::Sender<Job>) {
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
    ask_settings(st, jobs);
}

/// Asks for the settings, of every folder if there are several.
fn ask_settings(st: &State, jobs: &std::sync::mpsc::Sender<Job>) {
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
    let jobs = jobs.clone();
    st.out.ask(
        "workspace/configuration",
        json!({ "items": items }),
        move |answer| {
            let Some(Value::Array(all)) = answer else {
                return;
            };
            _ = jobs.send(Box::new(move |st: &mut State| {
                for (i, value) in all.iter().enumerate() {
                    let folder = i.checked_sub(1).and_then(|i| folders.get(i));
                    if i == 0 || folder.is_some() {
                        st.configure(folder, value);
                    }
                }
            }));
        },
    );
}

pub(crate) fn configuration(
    st: &mut State,
    p: DidChangeConfigurationParams,
    jobs: &std::sync::mpsc::Sender<Job>,
) {
    if st.peer.configuration {
        // what is sent along may be anything; the client says itself what holds
        ask_settings(st, jobs);
    } else {
        st.configure(None, &p.settings);
    }
}

pub(crate) fn folders(st: &mut State, p: DidChangeWorkspaceFoldersParams) {
    st.peer
        .folders
        .retain(|f| !p.event.removed.iter().any(|r| r.uri == *f));
    for added in p.event.added {
        if !st.peer.folders.contains(&added.uri) {
            st.peer.folders.push(added.uri);
        }
    }
    st.rehome();
    st.due.refresh_soon();
}

/// Files were made, changed or removed outside the editor.
pub(crate) fn watched(st: &mut State, p: DidChangeWatchedFilesParams) {
    let mut found = false;
    for change in p.changes {
        let Some(path) = uris::to_path(&change.uri) else {
            continue;
        };
        if st.docs.get(&change.uri).is_some() {
            // what is open is what the editor says
            continue;
        }
        for space in st.spaces.values_mut() {
            if space.root().is_some_and(|r| path.starts_with(r)) {
                space.rearranged();
                found = true;
            }
        }
    }
    if found {
        st.due.publish_now();
        st.due.refresh_soon();
    }
}

/// The edits that keep every `use` of a file pointing at it when it is renamed.
pub(crate) fn will_rename(st: &mut State, p: RenameFilesParams) -> Result<Option<WorkspaceEdit>> {
    let moves: Vec<(std::path::PathBuf, std::path::PathBuf)> = p
        .files
        .iter()
        .filter_map(|f| {
            let path = |s: &str| s.parse::<Uri>().ok().as_ref().and_then(uris::to_path);
            Some((path(&f.old_uri)?, path(&f.new_uri)?))
        })
        .collect();
    let keys: Vec<Key> = st.spaces.keys().cloned().collect();
    let mut whole: Option<WorkspaceEdit> = None;
    for key in &keys {
        let Key::Root(root) = key else { continue };
        st.sync_wide(key)?;
        let Some(snapshot) = st.spaces.get(key).and_then(|s| s.wide()) else {
            continue;
        };
        let Some(v) = st.space_view(key, snapshot) else {
            continue;
        };
        let moved = |path: &str| {
            moves
                .iter()
                .find(|(old, _)| uris::below(root, old).as_deref() == Some(path))
                .and_then(|(_, new)| uris::below(root, new))
        };
        let mut edits = Vec::new();
        for (i, file) in snapshot.files().iter().enumerate() {
            let from = moved(&file.path).unwrap_or_else(|| file.path.clone());
            for (used, loc) in snapshot.uses(i) {
                let old = &snapshot.files()[*used].path;
                let to = moved(old).unwrap_or_else(|| old.clone());
                if to == *old && from == file.path {
                    continue;
                }
                let Some((_, span)) = snapshot.place(*loc) else {
                    continue;
                };
                let written = file.text().get(span.range()).unwrap_or("");
                let bare = written.trim_matches('"');
                let relative = relative(&from, &to);
                if normalise(&from, bare).as_deref() == Some(&*to) {
                    continue;
                }
                let text = if bare.len() == written.len() {
                    relative
                } else {
                    format!("\"{relative}\"")
                };
                edits.push(ide::TextEdit {
                    doc: ide::Doc::File(i),
                    span,
                    text,
                });
            }
        }
        if edits.is_empty() {
            continue;
        }
        let edit = v.workspace_edit(&edits);
        whole = Some(match whole {
            None => edit,
            Some(w) => merged(w, edit),
        });
    }
    Ok(whole)
}

fn merged(mut a: WorkspaceEdit, b: WorkspaceEdit) -> WorkspaceEdit {
    match (&mut a.document_changes, b.document_changes) {
        (Some(DocumentChanges::Edits(a)), Some(DocumentChanges::Edits(b))) => a.extend(b),
        _ => {
            if let (Some(a), Some(b)) = (&mut a.changes, b.changes) {
                a.extend(b);
            }
        }
    }
    a
}

/// The path of `to` as a `use` in `from` writes it.
fn relative(from: &str, to: &str) -> String {
    let mut base: Vec<&str> = from.split('/').collect();
    base.pop();
    let parts: Vec<&str> = to.split('/').collect();
    let same = base
        .iter()
        .zip(&parts[..parts.len() - 1])
        .take_while(|(a, b)| a == b)
        .count();
    let up = std::iter::repeat_n("..", base.len() - same);
    up.chain(parts[same..].iter().copied())
        .collect::<Vec<_>>()
        .join("/")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn relative_paths_come_back() {
        for (from, to, want) in [
            ("a.downlead", "b.downlead", "b.downlead"),
            ("x/a.downlead", "b.downlead", "../b.downlead"),
            ("x/y/a.downlead", "x/z/b.downlead", "../z/b.downlead"),
            ("a.downlead", "x/b.downlead", "x/b.downlead"),
        ] {
            assert_eq!(relative(from, to), want);
            assert_eq!(normalise(from, want).as_deref(), Some(to));
        }
    }
}
