//! Code actions: quick fixes of findings, then what can be done with the text at the cursor.

mod accept;
mod assume;
mod bench;
mod convert;
mod inverse;
mod mends;
mod parts;
mod write;

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_syntax::Placed;

use crate::config::Config;
use crate::diagnostics::{Finding, file_diagnostics};
use crate::view::{Action, ActionKind, Doc, TextEdit, clamp, doc_text, tidy};

/// A finding's range in the item it is in.
fn local(placed: &Placed, f: &Finding) -> Span {
    Span::new(
        f.span.start.saturating_sub(placed.start),
        f.span.end.saturating_sub(placed.start),
    )
}

fn touches(f: &Finding, range: Span) -> bool {
    f.span.start <= range.end && range.start <= f.span.end
}

/// What can be done about a range of a document.
#[must_use]
pub fn code_actions(s: &Snapshot, doc: Doc, range: Span, c: &Config) -> Vec<Action> {
    let Doc::File(file) = doc else {
        return Vec::new();
    };
    if file >= s.files().len() {
        return Vec::new();
    }
    let text = doc_text(s, doc);
    let start = clamp(text, range.start);
    let range = Span::new(start, clamp(text, range.end).max(start));
    let all = file_diagnostics(
        s,
        file,
        &Config {
            max_diagnostics: 0,
            ..c.clone()
        },
    );
    let mut out: Vec<Action> = all
        .iter()
        .filter(|f| touches(f, range))
        .flat_map(|f| {
            let mut list = f.fixes.clone();
            mends::of(s, doc, f, &mut list);
            bench::mends(s, doc, f, &mut list);
            write::missing(s, doc, f, &mut list);
            list
        })
        .collect();
    inverse::questions(s, doc, range, &mut out);
    for f in all.iter().filter(|f| touches(f, range)) {
        accept::offer(s, doc, f, &mut out);
    }
    // a quick fix from the findings and one from here may be the same
    let mut seen: Vec<String> = Vec::new();
    out.retain(|a| {
        let new = !seen.contains(&a.title);
        seen.push(a.title.clone());
        new
    });
    convert::one(s, doc, range.start, &mut out);
    convert::file(s, doc, range.start, &mut out);
    parts::extract(s, doc, range.start, &mut out);
    parts::inline(s, doc, range.start, &mut out);
    parts::define(s, doc, range.start, &mut out);
    write::receive(s, doc, range.start, &mut out);
    write::at_node(s, doc, range.start, c, &mut out);
    assume::explicit(s, doc, range, &mut out);
    bench::fitted(s, doc, range.start, &mut out);
    let fixes = fix_all(s, file, c);
    if !fixes.is_empty() {
        out.push(Action::new(
            "Apply all clear fixes of this file",
            ActionKind::FixAll,
            fixes,
        ));
    }
    out
}

/// All fixes of a file that have one clear answer.
#[must_use]
pub fn fix_all(s: &Snapshot, file: usize, c: &Config) -> Vec<TextEdit> {
    let all = file_diagnostics(
        s,
        file,
        &Config {
            max_diagnostics: 0,
            ..c.clone()
        },
    );
    tidy(
        all.into_iter()
            .filter_map(|f| f.fixes.into_iter().find(|x| x.preferred))
            .flat_map(|a| a.edits)
            .collect(),
    )
}
