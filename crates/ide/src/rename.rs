//! Rename, with what stands against it.

use std::sync::Arc;

use downlead_base::{ItemId, Severity, Span};
use downlead_eval::{FileEntry, Snapshot};
use downlead_station::keywords::{is_word, keyword};
use downlead_station::{LoadError, Loader, keyword_of};
use downlead_syntax::{Placed, SyntaxKind, tokens};
use rustc_hash::FxHashMap;

use crate::names::{Class, NameKind};
use crate::references::occurrences;
use crate::resolve::{Named, global, local, name_at, pieces_of, resolve};
use crate::view::{Doc, TextEdit, doc_path, doc_text, env_of, line_number, tidy};

/// The name at an offset, if it can be renamed.
///
/// # Errors
/// Why it cannot, in words.
pub fn prepare_rename(s: &Snapshot, doc: Doc, offset: u32) -> Result<(Span, String), String> {
    let (_, n) = target(s, doc, offset)?;
    Ok((n.span, n.text))
}

fn target(s: &Snapshot, doc: Doc, offset: u32) -> Result<(&Placed, Named), String> {
    if matches!(doc, Doc::Library(_)) {
        return Err(
            "The built-in library cannot be changed; copy the definition into a file of your own."
                .to_owned(),
        );
    }
    let Some((placed, n)) = name_at(s, doc, offset) else {
        return Err("There is no name here.".to_owned());
    };
    if n.kind == NameKind::Port && matches!(n.text.as_str(), "high" | "low") {
        return Err(format!(
            "`{}` is a word of the language and cannot be renamed.",
            n.text
        ));
    }
    if n.kind == NameKind::Family {
        return Err(
            "Connector families are shared with the built-in library and keep their names."
                .to_owned(),
        );
    }
    if let Some(d) = resolve(s, doc, placed, &n) {
        if matches!(d.doc, Doc::Library(_)) {
            return Err(format!(
                "`{}` is a definition of the built-in library; copy it into a file of your own to rename it.",
                n.text
            ));
        }
    } else if !matches!(n.kind, NameKind::Person | NameKind::Shared) {
        return Err(format!(
            "`{}` is not defined, so there is nothing to rename.",
            n.text
        ));
    }
    if n.kind == NameKind::Tag {
        in_tables(s, doc, placed, &n.text)?;
    }
    Ok((placed, n))
}

/// A tag that a table of readings names keeps its name: the table is no text of the language, and
/// its rows would be lost.
fn in_tables(s: &Snapshot, doc: Doc, placed: &Placed, tag: &str) -> Result<(), String> {
    let Some(env) = env_of(s, doc) else {
        return Ok(());
    };
    let mut items = s.scopes().iter().flat_map(|x| x.items());
    let Some((_, low, _)) = items.find(|x| x.0.id == placed.item.id) else {
        return Ok(());
    };
    for file in &low.files {
        let Some(t) = env.attachments.at(file.loc).and_then(|a| a.readings()) else {
            continue;
        };
        let named = |x: &Option<Box<str>>| x.as_deref() == Some(tag);
        let rows = t.rows.iter().filter(|r| named(&r.piece) || named(&r.after));
        let count = rows.count();
        if count > 0 {
            let rows = if count == 1 { "row" } else { "rows" };
            return Err(format!(
                "`{}` names `{tag}` in {count} {rows}, and a table is not changed from here; rename it there first.",
                file.text
            ));
        }
    }
    Ok(())
}

/// The edits that give the name at an offset another name everywhere.
///
/// # Errors
/// Why it cannot be done, in words: no name there, a name that is taken, a text that is no name.
pub fn rename(
    s: &Snapshot,
    doc: Doc,
    offset: u32,
    new_name: &str,
) -> Result<Vec<TextEdit>, String> {
    let (placed, n) = target(s, doc, offset)?;
    let new_name = new_name.trim();
    if new_name == n.text {
        return Ok(Vec::new());
    }
    check_name(n.kind, new_name)?;
    conflicts(s, doc, placed, &n, new_name)?;
    let edits: Vec<TextEdit> = occurrences(s, doc, placed, &n)
        .into_iter()
        .filter(|o| matches!(o.place.doc, Doc::File(_)))
        .map(|o| TextEdit {
            doc: o.place.doc,
            span: o.place.span,
            text: new_name.to_owned(),
        })
        .collect();
    let edits = tidy(edits);
    // the proof: nothing that was understood before is misunderstood afterwards
    let after = with_edits(s, &edits);
    // the check has no files of readings: without them before, too
    let bare = s.attachments().next().map(|_| with_edits(s, &[]));
    let before = bare.as_ref().unwrap_or(s);
    let errors = |x: &Snapshot| {
        x.diagnostics()
            .iter()
            .filter(|d| d.severity == Severity::Error)
            .count()
    };
    if errors(&after) > errors(before) {
        return Err(format!(
            "With `{new_name}` something would be understood otherwise than now; choose another name."
        ));
    }
    Ok(edits)
}

/// Whether a text is a name of that kind.
fn check_name(kind: NameKind, name: &str) -> Result<(), String> {
    if name.is_empty() {
        return Err("A name has at least one character.".to_owned());
    }
    let toks: Vec<SyntaxKind> = tokens(name).map(|t| t.0).collect();
    let word = toks == [SyntaxKind::Word];
    // a band may look like a length: `2m`
    let glued = toks == [SyntaxKind::Number, SyntaxKind::Unit]
        && !name.contains(' ')
        && kind == NameKind::Band;
    if !word && !glued {
        return Err(format!(
            "`{name}` is no name: letters, digits, - and _, beginning so that it is not read as a number."
        ));
    }
    if keyword(name).is_some() || is_word(name) {
        return Err(format!("`{name}` is a word of the language."));
    }
    if name.contains('.') && matches!(kind, NameKind::Tag | NameKind::Port | NameKind::Place) {
        return Err("A tag has no dot; the dot parts it from a port.".to_owned());
    }
    Ok(())
}

fn conflicts(
    s: &Snapshot,
    doc: Doc,
    placed: &Placed,
    n: &Named,
    new_name: &str,
) -> Result<(), String> {
    let at = |doc: Doc, span: Span| {
        format!(
            "{}:{}",
            doc_path(s, doc),
            line_number(doc_text(s, doc), span.start)
        )
    };
    match n.kind {
        k if k.is_global() => {
            // every file that sees the definition would see both
            let mine = resolve(s, doc, placed, n).map(|d| d.focus());
            for doc in (0..s.files().len()).map(Doc::File) {
                if global(s, doc, k, &n.text).map(|d| d.focus()) != mine {
                    continue;
                }
                if let Some(d) = global(s, doc, k, new_name) {
                    return Err(match d.doc {
                        Doc::Library(_) => format!(
                            "`{new_name}` is the name of {} of the built-in library.",
                            a(k.noun())
                        ),
                        Doc::File(_) => format!(
                            "`{new_name}` is the name of {} already ({}).",
                            a(k.noun()),
                            at(d.doc, d.focus().span)
                        ),
                    });
                }
                if k == NameKind::Let {
                    // a named value of a tag's or place's name would be read in its stead
                    for p in s.files()[file_of(doc)].tree.items() {
                        for kind in [NameKind::Tag, NameKind::Place] {
                            if let Some(d) = local(s, doc, p, kind, new_name) {
                                return Err(format!(
                                    "`{new_name}` is the name of {} already ({}).",
                                    a(kind.noun()),
                                    at(doc, d.focus().span)
                                ));
                            }
                        }
                    }
                }
            }
        }
        NameKind::Tag | NameKind::Place => {
            for kind in [NameKind::Tag, NameKind::Place] {
                if let Some(d) = local(s, doc, placed, kind, new_name) {
                    return Err(format!(
                        "`{new_name}` is the name of {} already ({}).",
                        a(kind.noun()),
                        at(doc, d.focus().span)
                    ));
                }
            }
            if let Some(d) = global(s, doc, NameKind::Let, new_name) {
                return Err(format!(
                    "`{new_name}` is a named value already ({}).",
                    at(d.doc, d.focus().span)
                ));
            }
        }
        NameKind::Chain | NameKind::Station | NameKind::Session => {
            for p in s.files()[file_of(doc)].tree.items() {
                for x in pieces_of(s, doc, &p.item) {
                    let same_scope = matches!(n.kind, NameKind::Station | NameKind::Session)
                        || p.start == placed.start
                        || p.item.statement().and_then(|s| s.keyword()) == Some("chain");
                    if matches!(
                        x.class,
                        Class::Name(
                            NameKind::Chain | NameKind::Station | NameKind::Session,
                            true
                        )
                    ) && same_scope
                        && p.item.slice(x.span) == new_name
                    {
                        return Err(format!(
                            "`{new_name}` is taken already ({}).",
                            at(doc, x.span.shift(p.start))
                        ));
                    }
                }
            }
        }
        _ => {}
    }
    Ok(())
}

fn file_of(doc: Doc) -> usize {
    match doc {
        Doc::File(f) | Doc::Library(f) => f,
    }
}

struct Texts(FxHashMap<String, Arc<str>>);

impl Loader for Texts {
    fn read(&self, path: &str) -> Result<Arc<str>, LoadError> {
        self.0.get(path).cloned().ok_or(LoadError::NotFound)
    }
}

/// The snapshot as it would be after some edits.
pub(crate) fn with_edits(s: &Snapshot, edits: &[TextEdit]) -> Snapshot {
    let roots: Vec<String> = s
        .files()
        .iter()
        .filter(|f| f.root)
        .map(|f| f.path.clone())
        .collect();
    reload(s, edits, &roots, &|_, f| f.text().to_owned())
}

/// The same for one station or chain of a file: all others are left out, so that the answer comes
/// at once in a long file too. Offsets stay.
pub(crate) fn item_with_edits(
    s: &Snapshot,
    file: usize,
    item: ItemId,
    edits: &[TextEdit],
) -> Snapshot {
    let Some(path) = s.files().get(file).map(|f| f.path.clone()) else {
        return with_edits(s, edits);
    };
    reload(s, edits, &[path], &|i, f| {
        if i != file {
            return f.text().to_owned();
        }
        let mut text = String::with_capacity(f.text().len());
        for p in f.tree.items() {
            let other =
                p.item.id != item && matches!(keyword_of(&p.item), Some("station" | "chain"));
            if other {
                text.extend(
                    p.item
                        .text()
                        .bytes()
                        .map(|b| if b == b'\n' { '\n' } else { ' ' }),
                );
            } else {
                text.push_str(p.item.text());
            }
        }
        text
    })
}

fn reload(
    s: &Snapshot,
    edits: &[TextEdit],
    roots: &[String],
    text_of: &dyn Fn(usize, &FileEntry) -> String,
) -> Snapshot {
    let mut texts = FxHashMap::default();
    for (i, f) in s.files().iter().enumerate() {
        if f.error.is_some() {
            continue;
        }
        let mut text = text_of(i, f);
        let mut mine: Vec<&TextEdit> = edits.iter().filter(|e| e.doc == Doc::File(i)).collect();
        mine.sort_by_key(|e| std::cmp::Reverse((e.span.start, e.span.end)));
        for e in mine {
            if text.get(e.span.range()).is_some() {
                text.replace_range(e.span.range(), &e.text);
            }
        }
        texts.insert(f.path.clone(), Arc::from(text));
    }
    Snapshot::load(roots, &Texts(texts))
}

/// A noun with its article.
fn a(noun: &str) -> String {
    let vowel = noun.starts_with(['a', 'e', 'i', 'o', 'u']);
    format!("{} {noun}", if vowel { "an" } else { "a" })
}
