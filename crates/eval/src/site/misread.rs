//! Whether the text of a station can be relied on for what it sends and hears: with a line that could
//! not be read, something that radiates may be missing from what it means.

use downlead_base::{Diagnostic, Severity, Span};
use downlead_station::Env;
use downlead_station::model::Station;

use crate::walk::{direction, ends, walk};

/// Lines of a station that say nothing of what it sends or hears.
const ASIDE: &[&str] = &["spot", "position", "ground", "form"];

/// Lines of a chain that say nothing of it.
const ASIDE_IN_CHAINS: &[&str] = &["expect", "read", "limit"];

/// Whether a line of a station that bears on what it sends or hears has an error, or a chain of it
/// has no beginning, no end or a part that is not there.
pub(crate) fn misread(st: &Station, env: &Env) -> bool {
    in_text(st, env) || in_chains(st)
}

fn in_text(st: &Station, env: &Env) -> bool {
    let Some((item, low)) = env.base(&st.name.text) else {
        return false;
    };
    let Some(statement) = item.statement() else {
        return false;
    };
    let aside = |at: Span| {
        let Some(block) = statement.block() else {
            return false;
        };
        let holds = |s: &downlead_syntax::Stmt<'_>| {
            let span = s.span();
            span.start <= at.start && at.end <= span.end
        };
        let Some(line) = block.iter().find(holds) else {
            return false;
        };
        let inner = line.block().and_then(|b| b.iter().find(holds));
        let is = |s: downlead_syntax::Stmt<'_>, words: &[&str]| {
            s.keyword().is_some_and(|w| words.contains(&w))
        };
        is(line, ASIDE)
            || line.keyword() == Some("chain") && inner.is_some_and(|s| is(s, ASIDE_IN_CHAINS))
    };
    low.diagnostics
        .iter()
        .filter(|d| d.severity == Severity::Error)
        .any(|d| !aside(d.primary.loc.span))
}

fn in_chains(st: &Station) -> bool {
    let mut found: Vec<Diagnostic> = Vec::new();
    for chain in &st.chains {
        let stops = walk(&chain.steps, Some(st), &mut found);
        ends(chain, &stops, direction(chain, &stops), &mut found);
    }
    found.iter().any(|d| d.severity == Severity::Error)
}
