//! The same line twice in a row in a chain: a slip of the hand that adds a loss.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_syntax::{Block, Stmt};

use std::collections::BTreeSet;

use super::part;
use crate::cx::Cx;
use crate::model::PartKind;

/// Points out each line of the chains of an item that repeats the one above it. Silent about a line
/// that has a finding: what is wrong with it counts first.
pub(super) fn check<'a>(cx: &mut Cx<'a>, outer: Stmt<'a>) {
    let had: BTreeSet<u32> = cx.diags.iter().map(|d| d.primary.loc.span.start).collect();
    within(cx, outer, &had);
}

fn within<'a>(cx: &mut Cx<'a>, outer: Stmt<'a>, had: &BTreeSet<u32>) {
    let Some(block) = outer.block() else { return };
    let word = outer.keyword();
    if word == Some("chain") || word == Some("branch") {
        among(cx, block, had);
    }
    // branches stand in dividers, those in chains
    block.iter().for_each(|s| within(cx, s, had));
}

fn among<'a>(cx: &mut Cx<'a>, block: Block<'a>, had: &BTreeSet<u32>) {
    let mut above: Option<Stmt<'a>> = None;
    for s in block.iter() {
        // a part that is passed again by its tag has a finding of its own
        let kind = part::kind_of(s);
        // an adapter and its like turned round are written alike
        let span = s.span();
        let found = had.range(span.start..=span.end).next().is_some();
        let part = kind.is_some_and(|k| k != PartKind::Adapter) && !s.is_broken() && !found;
        if part && let Some(a) = above.filter(|a| same(*a, s)) {
            say(cx, a, s);
        }
        above = part.then_some(s);
    }
}

fn same(a: Stmt<'_>, b: Stmt<'_>) -> bool {
    a.slice(a.span())
        .split_whitespace()
        .eq(b.slice(b.span()).split_whitespace())
}

fn say<'a>(cx: &mut Cx<'a>, first: Stmt<'a>, again: Stmt<'a>) {
    let loc = cx.loc(again.head_span());
    let between = cx.text(downlead_base::Span::new(
        first.span().end,
        again.span().start,
    ));
    let d = Diagnostic::new(
        &codes::LINE_TWICE,
        loc,
        "A line of a chain repeats the one above it.",
    )
    .at("again here")
    .also(cx.loc(first.head_span()), "first here")
    .help("Remove one of them, or write both as one: `connector 2 of n-pair`, `pad 6 dB`.");
    // a comment between them may hold information
    let d = match between.contains("//") {
        true => d,
        false => d.fix(
            "remove the second one",
            Loc::new(
                loc.item,
                downlead_base::Span::new(first.span().end, again.span().end),
            ),
            "",
        ),
    };
    cx.push(d);
}
