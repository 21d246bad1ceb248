//! Parts taken out of chains and put into them.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_syntax::{Block, Stmt};

use super::{Cx, span};
use crate::model::{Name, PartKind, Passed};

/// Calls for the lines of a station and, with `true`, for those of its chains and branches.
pub(super) fn each<'a>(block: Block<'a>, f: &mut dyn FnMut(Stmt<'a>, bool)) {
    for s in block.iter() {
        match (s.keyword(), s.block()) {
            (Some("chain"), Some(b)) => of_chain(b, f),
            _ => f(s, false),
        }
    }
}

fn of_chain<'a>(block: Block<'a>, f: &mut dyn FnMut(Stmt<'a>, bool)) {
    for s in block.iter() {
        f(s, true);
        // the branches of a divider
        for b in s.block().into_iter().flat_map(Block::iter) {
            if let (Some("branch"), Some(inner)) = (b.keyword(), b.block()) {
                of_chain(inner, f);
            }
        }
    }
}

/// Leaves out what was read on the station, and what was expected of it. How many lines.
pub(super) fn without_readings(cx: &mut Cx<'_>) -> usize {
    let mut lines = Vec::new();
    each(cx.block, &mut |s, in_chain| {
        if in_chain && matches!(s.keyword(), Some("read" | "readings" | "expect")) {
            lines.push(s);
        }
    });
    let had = lines.len();
    lines.into_iter().for_each(|s| cx.remove(s, None));
    had
}

/// Whether a line of a chain is the part of that tag.
fn is_part(s: Stmt<'_>, tag: &str) -> bool {
    let Some(first) = s.atoms().first() else {
        return false;
    };
    let text = s.text(*first);
    if text.split('.').next() == Some(tag) {
        return true;
    }
    let kind = s.keyword().and_then(PartKind::from_word);
    kind.is_some() && s.atoms().get(1).is_some_and(|a| s.text(*a) == tag)
}

fn branches(s: Stmt<'_>) -> bool {
    let mut lines = s.block().into_iter().flat_map(Block::iter);
    lines.any(|b| b.keyword() == Some("branch"))
}

/// Takes a part out of the station and all its chains.
pub(super) fn take(cx: &mut Cx<'_>, tag: &Name, loc: Loc) {
    let mut lines = Vec::new();
    each(cx.block, &mut |s, in_chain| {
        let defined = s.keyword().and_then(PartKind::from_word).is_some();
        if (in_chain || defined) && is_part(s, &tag.text) {
            lines.push(s);
        }
    });
    if lines.is_empty() {
        return cx.unknown_part(&Passed::of(&tag.text, tag.loc));
    }
    if lines.iter().any(|s| branches(*s)) {
        return cx.say(
            Diagnostic::new(
                &codes::VARIANT_NOT_A_FIGURE,
                loc,
                format!(
                    "`take` cannot remove `{}`: its branches begin nowhere else.",
                    tag.text
                ),
            )
            .at("a divider with branches")
            .help("Copy the station and write its chains without the divider."),
        );
    }
    lines.into_iter().for_each(|s| cx.remove(s, Some(loc)));
}

/// Puts a part after another one in a chain.
pub(super) fn put(cx: &mut Cx<'_>, part: &Passed, after: &Passed, chain: &Name, loc: Loc) {
    let chains: Vec<(&str, Block<'_>)> = cx
        .block
        .iter()
        .filter(|s| s.keyword() == Some("chain"))
        .filter_map(|s| Some((s.text(*s.atoms().get(1)?), s.block()?)))
        .collect();
    let Some((_, block)) = chains.iter().find(|c| c.0 == &*chain.text) else {
        let names: Vec<&str> = chains.iter().map(|c| c.0).collect();
        return cx.unknown("chain", &chain.text, chain.loc, &names);
    };
    let mut found = Vec::new();
    of_chain(*block, &mut |s, _| {
        let port = |p: &str| {
            let first = s.atoms().first().map(|a| s.text(*a));
            first.is_some_and(|t| t.split_once('.').map(|x| x.1) == Some(p))
        };
        if is_part(s, &after.tag) && after.port.as_deref().is_none_or(port) {
            found.push(s);
        }
    });
    let Some(line) = found.first() else {
        if cx.part(&after.tag).is_none() {
            return cx.unknown_part(after);
        }
        let name = cx.variant.slice(after.loc.span).to_owned();
        return cx.say(
            Diagnostic::new(
                &codes::UNKNOWN_PART,
                after.loc,
                format!("The chain `{}` does not pass `{name}`.", chain.text),
            )
            .at("not in that chain")
            .help("`put` needs a part of the chain after which the new one comes."),
        );
    };
    let text = cx.variant.slice(part.loc.span).to_owned();
    let end = line.span().end as usize;
    cx.edit(span(end, end), format!("; {text}"), loc);
}
