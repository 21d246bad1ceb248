//! That a finding is accepted, until a day and for a reason.

use downlead_base::{Code, Loc, Span};

/// `accept CODE "reason" until DATE`.
#[derive(Clone, Debug)]
pub struct Accept {
    /// The code of the finding.
    pub code: &'static Code,
    /// The whole line.
    pub loc: Loc,
    /// Why it is accepted.
    pub reason: Box<str>,
    /// The last day, as written.
    pub until: Box<str>,
    /// Where the finding may be.
    pub covers: Covers,
}

/// Where the finding of an acceptance may be: on one line, never in a whole block.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Covers {
    /// On this line of the item.
    Line(Span),
    /// On the first line of the item above: the acceptance stands at the left margin.
    Above,
}

/// Whether a finding of this code may be accepted at all: an error is corrected, and a limit that is
/// exceeded stays exceeded.
#[must_use]
pub fn acceptable(code: &Code) -> bool {
    use downlead_base::{Severity, codes};
    code.severity < Severity::Error
        && ![&codes::ACCEPT_ENDED, &codes::ACCEPT_NOT_NEEDED].contains(&code)
}
