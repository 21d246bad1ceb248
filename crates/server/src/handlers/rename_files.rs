//! `workspace/willRenameFiles`: keeps each `use` of a renamed file valid.

use crate::docs::Key;
use crate::state::State;
use crate::uris;
use downlead_ide as ide;
use downlead_station::normalise;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

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
