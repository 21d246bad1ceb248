//! Writes the acceptance of a finding: the reason is left to the person.

use downlead_base::{Severity, Span, code_named};
use downlead_eval::Snapshot;
use downlead_station::forms::{self, Block};
use downlead_station::model::acceptable;
use downlead_syntax::Stmt;

use crate::diagnostics::Finding;
use crate::view::{
    Action, ActionKind, Doc, TextEdit, doc_text, indent, item_at, line_end, line_start, newline,
    path_at,
};

/// Offers to accept a finding; nothing for an error.
pub(super) fn offer(s: &Snapshot, doc: Doc, f: &Finding, out: &mut Vec<Action>) {
    let Doc::File(file) = doc else { return };
    if f.severity == Severity::Error || !code_named(f.code).is_some_and(acceptable) {
        return;
    }
    let Some(placed) = item_at(s, doc, f.span.start) else {
        return;
    };
    let at = f.span.start - placed.start;
    let path = path_at(&placed.item, at);
    let Some((stmt, outer)) = path
        .iter()
        .enumerate()
        .rev()
        .find(|(_, x)| x.head_span().start <= at && at < x.head_span().end)
        .map(|(i, x)| (*x, i > 0))
    else {
        return;
    };
    let until = s.newest_date(file).as_deref().and_then(a_year_after);
    let line = format!(
        "accept {} \"\" until {}",
        f.code,
        until.as_deref().unwrap_or("")
    );
    let title = match &until {
        Some(day) => format!("Accept `{}` until {day}, and write why", f.code),
        None => format!("Accept `{}`, and write why and until when", f.code),
    };
    let text = doc_text(s, doc);
    let (at, put) = below(text, stmt, placed.start, outer, line.trim_end());
    let edit = TextEdit {
        doc,
        span: Span::new(at, at),
        text: put,
    };
    out.push(Action {
        finding: Some(f.span),
        ..Action::new(title, ActionKind::QuickFix, vec![edit])
    });
}

/// Where a line that belongs to a statement goes, and its text with what separates it.
fn below(text: &str, stmt: Stmt<'_>, from: u32, outer: bool, line: &str) -> (u32, String) {
    let head = stmt.head_span().shift(from);
    let pad = indent(text, head.start);
    let end_of_line = newline(text);
    if let Some(b) = stmt.block().filter(|_| takes_lines(stmt)) {
        let open = b.span().start + from + 1;
        let rest = &text[open as usize..line_end(text, open) as usize];
        // what follows the brace on its line is in the block already
        let rest = rest.split("//").next().unwrap_or_default();
        if !rest.trim().is_empty() {
            return (open, format!(" {line};"));
        }
        let at = line_end(text, open);
        return (at, format!("{end_of_line}{pad}    {line}"));
    }
    let end = line_end(text, head.end);
    let start = line_start(text, head.start);
    let before = text[start as usize..head.start as usize].trim();
    let after = text[head.end as usize..end as usize].split("//").next();
    let alone = before.is_empty() && after.is_none_or(|a| a.trim().is_empty());
    if alone && (outer || pad.is_empty()) {
        return (end, format!("{end_of_line}{pad}{line}"));
    }
    (head.end, format!("; {line}"))
}

/// Whether lines can stand in the block of a statement.
fn takes_lines(stmt: Stmt<'_>) -> bool {
    forms::form_of(stmt).is_none_or(|f| !matches!(f.block, Block::None))
}

/// The same day of the next year; none of what is no whole date.
fn a_year_after(date: &str) -> Option<String> {
    let (year, rest) = date.split_at_checked(4)?;
    let year: u32 = year.parse().ok()?;
    let rest = match rest {
        "-02-29" => "-02-28",
        r if r.len() == 6 => r,
        _ => return None,
    };
    Some(format!("{:04}{rest}", year + 1))
}

#[cfg(test)]
mod tests {
    use super::a_year_after;

    #[test]
    fn a_year_is_a_year() {
        for (from, to) in [
            ("2026-07-04", Some("2027-07-04")),
            ("2028-02-29", Some("2029-02-28")),
            ("2026-07", None),
            ("", None),
        ] {
            assert_eq!(a_year_after(from).as_deref(), to);
        }
    }
}
