//! Folding and selection ranges.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_station::keyword_of;
use downlead_syntax::{AtomKind, Expr, ExprKind, SyntaxKind};

use crate::resolve::statements;
use crate::view::{Doc, clamp, doc_text, item_at, path_at, to32, tree};

/// A range that can be folded.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Fold {
    /// From the first to behind the last byte.
    pub span: Span,
    /// What it is.
    pub kind: FoldKind,
}

/// What a fold is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FoldKind {
    /// A block.
    Block,
    /// Comment lines.
    Comment,
    /// `use` lines.
    Uses,
}

/// The blocks, comments and `use` lines of a document that span more than a line.
#[must_use]
pub fn folding_ranges(s: &Snapshot, doc: Doc) -> Vec<Fold> {
    let (Some(t), text) = (tree(s, doc), doc_text(s, doc)) else {
        return Vec::new();
    };
    let many = |span: Span| text.get(span.range()).is_some_and(|x| x.contains('\n'));
    let mut out = Vec::new();
    for p in t.items() {
        statements(&p.item, &mut |x| {
            if let Some(b) = x.block() {
                let span = Span::new(x.span().start, b.span().end).shift(p.start);
                if many(span) {
                    out.push(Fold {
                        span,
                        kind: FoldKind::Block,
                    });
                }
            }
        });
    }
    // runs of lines that hold nothing but a comment
    let mut run: Option<Span> = None;
    let mut lines = 0;
    let mut at = 0;
    let mut flush = |run: &mut Option<Span>, lines: &mut u32| {
        if let Some(span) = run.take().filter(|_| *lines > 1) {
            out.push(Fold {
                span,
                kind: FoldKind::Comment,
            });
        }
        *lines = 0;
    };
    for line in text.split_inclusive('\n') {
        let body = line.trim();
        if body.starts_with("//") {
            let start = at + to32(line.len() - line.trim_start().len());
            let end = start + to32(body.len());
            run = Some(run.map_or(Span::new(start, end), |r| Span::new(r.start, end)));
            lines += 1;
        } else {
            flush(&mut run, &mut lines);
        }
        at += to32(line.len());
    }
    flush(&mut run, &mut lines);
    let uses: Vec<Span> = t
        .items()
        .iter()
        .filter(|p| keyword_of(&p.item) == Some("use"))
        .filter_map(|p| Some(p.item.statement()?.span().shift(p.start)))
        .collect();
    if let [first, .., last] = uses[..] {
        out.push(Fold {
            span: first.join(last),
            kind: FoldKind::Uses,
        });
    }
    out.sort_by_key(|f| (f.span.start, std::cmp::Reverse(f.span.end)));
    out
}

/// Ever larger ranges around an offset: word, number, quantity, value with its uncertainty, group,
/// statement, block, item, file.
#[must_use]
pub fn selection_ranges(s: &Snapshot, doc: Doc, offset: u32) -> Vec<Span> {
    let text = doc_text(s, doc);
    let offset = clamp(text, offset);
    let mut out = vec![Span::new(0, to32(text.len()))];
    if let Some(p) = item_at(s, doc, offset) {
        out.push(p.span());
        let local = offset - p.start;
        for x in path_at(&p.item, local) {
            out.push(x.span().shift(p.start));
            if let Some(b) = x
                .block()
                .filter(|b| b.span().start < local && local < b.span().end)
            {
                let b = b.span();
                out.push(b.shift(p.start));
                let inner = Span::new(b.start + 1, b.end.saturating_sub(1).max(b.start + 1));
                out.push(inner.shift(p.start));
                continue;
            }
            out.push(x.head_span().shift(p.start));
            for g in x.groups() {
                let (Some(a), Some(b)) = (g.first(), g.last()) else {
                    continue;
                };
                let span = a.span.join(b.span);
                if !span.touches(local) {
                    continue;
                }
                out.push(span.shift(p.start));
                for a in g.iter().filter(|a| a.span.touches(local)) {
                    out.push(a.span.shift(p.start));
                    if let AtomKind::Value(_) = a.kind
                        && let Some(v) = x.value(*a)
                    {
                        let ends = [Some(v.expr()), v.tolerance().map(|t| t.0), v.upper()];
                        for e in ends.into_iter().flatten() {
                            expr(e, local, p.start, &mut out);
                        }
                    }
                }
            }
        }
        for (kind, span) in downlead_syntax::tokens(p.item.text()) {
            if span.touches(local) && !matches!(kind, SyntaxKind::Blank | SyntaxKind::Newline) {
                out.push(span.shift(p.start));
            }
        }
    }
    // from the largest to the smallest, each within the one before
    out.retain(|x| x.touches(offset));
    out.sort_by_key(|x| (std::cmp::Reverse(x.len()), x.start));
    let mut nested: Vec<Span> = Vec::new();
    for x in out {
        let fits = nested
            .last()
            .is_none_or(|l| l.start <= x.start && x.end <= l.end && *l != x);
        if fits {
            nested.push(x);
        }
    }
    nested.reverse();
    nested
}

fn expr(e: Expr<'_>, offset: u32, start: u32, out: &mut Vec<Span>) {
    if !e.span().touches(offset) {
        return;
    }
    out.push(e.span().shift(start));
    match e.kind() {
        ExprKind::Number(n) => out.push(n.digits.shift(start)),
        ExprKind::Name(_) => {}
        ExprKind::Neg(x) | ExprKind::Per(x, _) => expr(x, offset, start, out),
        ExprKind::Binary(_, l, r) => {
            expr(l, offset, start, out);
            expr(r, offset, start, out);
        }
    }
}
