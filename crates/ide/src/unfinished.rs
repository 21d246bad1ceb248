//! Findings that are premature: they concern what is still being written.

use downlead_base::{Severity, Span, codes};
use downlead_eval::Snapshot;

use crate::diagnostics::Finding;
use crate::view::{Doc, clamp, doc_text, item_at, line_end, line_start, path_at};

/// What the next lines of a block usually settle, wherever in the block it is reported.
const SETTLED_BY_MORE: [&str; 13] = [
    codes::CHAIN_WITHOUT_END.id,
    codes::CHAIN_WITHOUT_START.id,
    codes::PART_UNUSED.id,
    codes::UNCLOSED_BLOCK.id,
    codes::MISSING_VALUE.id,
    codes::BRANCH_COUNT.id,
    codes::NO_SOURCE.id,
    codes::NO_BASELINE.id,
    codes::NO_CLOSING_BASELINE.id,
    codes::CONNECTOR_GAP.id,
    codes::READINGS_NOT_READ.id,
    codes::PORT_NEEDED.id,
    codes::BAND_NOT_PAIRED.id,
];

/// Whether each finding of a file is premature while its text is being written at `at`, where the
/// last change ends. Premature are
///
/// * all findings of that line;
/// * in the blocks around it, findings of their opening lines and those that more lines settle;
/// * anywhere in the file, findings that came with a line that cannot be read yet.
///
/// Findings outside the line that the reader has seen already (`seen`) stay.
#[must_use]
pub fn premature(
    s: &Snapshot,
    file: usize,
    findings: &[Finding],
    at: u32,
    seen: &dyn Fn(&Finding) -> bool,
) -> Vec<bool> {
    let text = doc_text(s, Doc::File(file));
    let at = clamp(text, at);
    let (first, last) = (line_start(text, at), line_end(text, at));
    let on_line = |f: &Finding| first <= f.span.start && f.span.start <= last;
    let broken = findings
        .iter()
        .any(|f| on_line(f) && f.severity == Severity::Error);
    let around = Around::of(s, file, at);
    findings
        .iter()
        .map(|f| on_line(f) || !seen(f) && (broken || around.awaits(f)))
        .collect()
}

/// The blocks around a place.
struct Around {
    /// From the outermost block's statement to its end.
    whole: Option<Span>,
    /// The opening lines.
    heads: Vec<Span>,
}

impl Around {
    fn of(s: &Snapshot, file: usize, at: u32) -> Around {
        let mut around = Around {
            whole: None,
            heads: Vec::new(),
        };
        let Some(placed) = item_at(s, Doc::File(file), at) else {
            return around;
        };
        let within = at.saturating_sub(placed.start);
        for stmt in path_at(&placed.item, within) {
            let Some(block) = stmt.block() else { continue };
            let span = block.span();
            if within <= span.start || block.is_closed() && within >= span.end {
                continue;
            }
            around
                .whole
                .get_or_insert_with(|| stmt.span().shift(placed.start));
            around.heads.push(stmt.head_span().shift(placed.start));
        }
        around
    }

    /// Whether more lines may settle a finding.
    fn awaits(&self, f: &Finding) -> bool {
        let at = f.span.start;
        let within = |s: &Span| s.start <= at && at <= s.end;
        self.heads.iter().any(within)
            || self.whole.as_ref().is_some_and(within) && SETTLED_BY_MORE.contains(&f.code)
    }
}
