//! Hints: with all they have for a screen, as plain texts for a whole long file.

use std::hash::Hasher as _;
use std::sync::Arc;

use downlead_base::{ItemId, Span};
use downlead_eval::{Evaluated, Stage};
use downlead_ide as ide;
use ls_types::*;
use rustc_hash::FxHasher;
use serde_json::json;
use tower_lsp::jsonrpc::{Error, Result};

use crate::docs::FirstHints;
use crate::kept_hints::{Kept, KeptHints, Written};
use crate::state::State;
use crate::view::{View, origin};

/// More hints than this in one answer are plain texts: a client that asks for a whole long file
/// has use for nothing else, and the rest is in the hover.
const MANY: usize = 500;

/// Prepares the hints of a long document until `stop` returns true. True if they are complete.
pub(crate) fn prepare(v: &View<'_>, stop: &dyn Fn() -> bool) -> bool {
    let Some(doc) = v.state.docs.get(v.uri) else {
        return true;
    };
    let few = doc.lines.count() <= MANY;
    few || doc.hints.borrow_mut().prepare(v, stop)
}

/// The fields left out of a hint until the client resolves it.
#[derive(Clone, Copy)]
struct Late {
    tooltip: bool,
    edits: bool,
    /// Of the parts.
    targets: bool,
}

/// The hints of a range: from the first stage of evaluation, for a client that can be asked to
/// fetch them again once the sample has been taken.
pub(crate) fn inlay_hints(st: &mut State, p: InlayHintParams) -> Result<Vec<u8>> {
    let stage = match st.peer.refresh_hints {
        true => Stage::First,
        false => Stage::Whole,
    };
    let Some(v) = st.view_first(&p.text_document.uri, p.range, stage)? else {
        return Ok(b"null".to_vec());
    };
    let out = written(&v, &p)?;
    if let (ide::Doc::File(file), Some(doc)) = (v.doc, v.state.docs.get(v.uri))
        && v.snapshot.is_provisional(file, v.span(p.range))
    {
        doc.show(FirstHints {
            change: doc.change,
            range: p.range,
            digest: digest(&out),
        });
    }
    Ok(out)
}

/// Whether the hints of a range, all of it computed to the last stage now, are others than those
/// that were shown.
pub(crate) fn differ(v: &View<'_>, shown: &FirstHints) -> bool {
    let p = InlayHintParams {
        text_document: TextDocumentIdentifier::new(v.uri.clone()),
        range: shown.range,
        work_done_progress_params: WorkDoneProgressParams::default(),
    };
    written(v, &p).is_ok_and(|out| digest(&out) != shown.digest)
}

fn digest(out: &[u8]) -> u64 {
    let mut h = FxHasher::default();
    h.write(out);
    h.finish()
}

fn written(v: &View<'_>, p: &InlayHintParams) -> Result<Vec<u8>> {
    // one a line
    if p.range.end.line.saturating_sub(p.range.start.line) as usize > MANY
        && let Some(doc) = v.state.docs.get(v.uri)
        && let Some(answer) = doc.hints.borrow_mut().answer(v, p.range)
    {
        return Ok(answer);
    }
    let resolved = &v.state.peer.hint_resolve;
    let says = |what: &str| {
        resolved.iter().any(|w| {
            // one client names the parts' fields without the word before them
            w == what || w.strip_prefix("label.") == Some(what)
        })
    };
    let late = Late {
        tooltip: says("tooltip"),
        edits: says("textEdits"),
        targets: says("location"),
    };
    let config = ide::Config {
        hint_details: match late.tooltip && late.edits {
            true => ide::HintDetails::Later,
            false => ide::HintDetails::Now,
        },
        ..v.config.clone()
    };
    let found = ide::inlay_hints(v.snapshot, v.doc, v.span(p.range), &config);
    let data = json!({ "uri": v.uri, "version": v.version }).to_string();
    let mut out = Vec::with_capacity(found.len() * 256 + 2);
    for (i, h) in found.iter().enumerate() {
        out.push(if i == 0 { b'[' } else { b',' });
        write_hint(&mut out, v, h, late, &data)?;
    }
    if found.is_empty() {
        out.push(b'[');
    }
    out.push(b']');
    Ok(out)
}

/// A hint as JSON. A screen of hints is requested on every keystroke, and a tree of values costs
/// more than the hints.
fn write_hint(
    out: &mut Vec<u8>,
    v: &View<'_>,
    h: &ide::InlayHint,
    late: Late,
    data: &str,
) -> Result<()> {
    let (whole, left) = hint(v, h, late);
    serde_json::to_writer(&mut *out, &whole).map_err(|_| Error::internal_error())?;
    if left && !v.state.peer.hint_resolve.is_empty() {
        out.pop();
        out.extend_from_slice(b",\"data\":");
        out.extend_from_slice(data.as_bytes());
        out.push(b'}');
    }
    Ok(())
}

/// A hint, and true if fields were left out of it.
fn hint(v: &View<'_>, h: &ide::InlayHint, late: Late) -> (InlayHint, bool) {
    let mut left = h.more;
    let bare = h
        .parts
        .iter()
        .all(|p| p.target.is_none() && p.tooltip.is_none());
    let label = if bare {
        InlayHintLabel::String(h.text())
    } else {
        let part = |p: &ide::LabelPart| {
            left |= (late.targets && p.target.is_some()) || (late.tooltip && p.tooltip.is_some());
            let target = p.target.filter(|_| !late.targets);
            let tooltip = p.tooltip.as_ref().filter(|_| !late.tooltip);
            InlayHintLabelPart {
                value: p.text.clone(),
                location: target.and_then(|t| v.location(t)),
                tooltip: tooltip.map(|t| InlayHintLabelPartTooltip::MarkupContent(v.markup(t))),
                ..InlayHintLabelPart::default()
            }
        };
        InlayHintLabel::LabelParts(h.parts.iter().map(part).collect())
    };
    let tooltip = (!h.tooltip.is_empty()).then_some(&h.tooltip);
    let tooltip_now = tooltip.filter(|_| !late.tooltip);
    let edits_now = !h.edits.is_empty() && !late.edits;
    left |= tooltip.is_some() != tooltip_now.is_some() || (!h.edits.is_empty() && !edits_now);
    let whole = InlayHint {
        position: v.position(h.offset),
        label,
        kind: None,
        tooltip: tooltip_now.map(|t| InlayHintTooltip::MarkupContent(v.markup(t))),
        text_edits: edits_now.then(|| v.own_edits(&h.edits)),
        padding_left: Some(h.pad_left),
        padding_right: None,
        data: None,
    };
    (whole, left)
}

/// Adds the fields left out. A hint of another version of the text stays as it is.
pub(crate) fn resolve(st: &mut State, mut old: InlayHint) -> Result<InlayHint> {
    let Some((uri, version)) = origin(old.data.as_ref()) else {
        return Ok(old);
    };
    let Some(v) = st.view(&uri)? else {
        return Ok(old);
    };
    if version != v.version {
        return Ok(old);
    }
    let at = v.offset(old.position);
    let found = ide::inlay_hints(v.snapshot, v.doc, Span::new(at, at), &v.config);
    if let Some(h) = found.iter().find(|h| v.position(h.offset) == old.position) {
        let now = Late {
            tooltip: false,
            edits: false,
            targets: false,
        };
        let (whole, _) = hint(&v, h, now);
        old.tooltip = whole.tooltip;
        old.text_edits = whole.text_edits;
        old.label = whole.label;
    }
    Ok(old)
}

impl Written {
    /// `first`: the line that lines are counted from.
    fn new(v: &View<'_>, first: u32, hints: &[ide::InlayHint]) -> Written {
        let mut out = Written::default();
        for h in hints {
            let at = v.position(h.offset);
            let label = serde_json::to_string(&h.text()).unwrap_or_default();
            let pad = h.pad_left;
            out.text.push_str(&format!(
                "{}}},\"label\":{label},\"paddingLeft\":{pad}",
                at.character
            ));
            out.ends
                .push((at.line - first, at.character, out.text.len() as u32));
        }
        out.text.shrink_to_fit();
        out.ends.shrink_to_fit();
        out
    }
}

impl KeptHints {
    /// Forgets what was made for other settings.
    fn fit(&mut self, v: &View<'_>) {
        let plain = ide::Config {
            hint_details: ide::HintDetails::Never,
            ..v.config.clone()
        };
        let made_for = Some((plain, v.state.peer.encoding));
        if self.made_for != made_for {
            self.items.clear();
            self.made_for = made_for;
        }
    }

    fn prepare(&mut self, v: &View<'_>, stop: &dyn Fn() -> bool) -> bool {
        self.fit(v);
        let Some((config, _)) = self.made_for.clone() else {
            return true;
        };
        let source = ide::HintsByItem::new(v.snapshot, v.doc, &config);
        let items: Vec<(u32, &Evaluated)> = source.items().collect();
        self.write(v, &source, &items, stop)
    }

    /// Writes the hints of all items that are missing or out of date, until `stop` returns true.
    /// True if all are written.
    fn write(
        &mut self,
        v: &View<'_>,
        source: &ide::HintsByItem<'_>,
        items: &[(u32, &Evaluated)],
        stop: &dyn Fn() -> bool,
    ) -> bool {
        for (start, item) in items {
            let known = self.items.get(&item.0.id).is_some_and(|k| {
                Arc::ptr_eq(&k.made_of.1, &item.1) && Arc::ptr_eq(&k.made_of.2, &item.2)
            });
            if known {
                continue;
            }
            if stop() {
                return false;
            }
            let own = Span::new(*start, start + item.0.len);
            let hints = Written::new(v, v.line(*start), &source.of_item(item, own));
            let made_of = (*item).clone();
            self.items.insert(item.0.id, Kept { made_of, hints });
        }
        if self.items.len() > items.len() {
            let alive: rustc_hash::FxHashSet<ItemId> = items.iter().map(|i| i.1.0.id).collect();
            self.items.retain(|id, _| alive.contains(id));
        }
        true
    }

    /// The answer for a range; none if there are so few that each can have all its details.
    fn answer(&mut self, v: &View<'_>, range: Range) -> Option<Vec<u8>> {
        self.fit(v);
        let config = self.made_for.as_ref()?.0.clone();
        let source = ide::HintsByItem::new(v.snapshot, v.doc, &config);
        let items: Vec<(u32, &Evaluated)> = source.items().collect();
        self.write(v, &source, &items, &|| false);
        let cables = Written::new(v, 0, &source.of_cables(v.span(range)));
        let mut all: Vec<(u32, &str)> = cables.within(0, range).collect();
        for (start, item) in &items {
            if let Some(kept) = self.items.get(&item.0.id) {
                all.extend(kept.hints.within(v.line(*start), range));
            }
        }
        if all.len() <= MANY {
            return None;
        }
        all.sort_by_key(|(line, _)| *line);
        let data = match v.state.peer.hint_resolve.is_empty() {
            true => String::new(),
            false => format!(
                ",\"data\":{}",
                json!({ "uri": v.uri, "version": v.version })
            ),
        };
        let size = all.iter().map(|(_, t)| t.len() + data.len() + 40).sum();
        let mut out = String::with_capacity(size);
        let mut digits = String::new();
        for (i, (line, text)) in all.into_iter().enumerate() {
            use std::fmt::Write as _;
            digits.clear();
            _ = write!(digits, "{line}");
            out.push(if i == 0 { '[' } else { ',' });
            for piece in [
                "{\"position\":{\"line\":",
                &digits,
                ",\"character\":",
                text,
                &data,
                "}",
            ] {
                out.push_str(piece);
            }
        }
        out.push(']');
        Some(out.into_bytes())
    }
}
