//! What a change of the text means on the air, as the editor shows it.

pub use downlead_report::build::compare::compare;
use downlead_report::page;
pub use downlead_report::shape::compare::{
    BandChange, ChainChange, Comparison, DefinitionChange, Figures, FindingChange, LimitChange,
    LimitState, Pair, PartChange,
};
use downlead_report::write::markdown::{UNLINKED, markdown};

/// The comparison as Markdown. `old` and `new` name the two states: `HEAD~2`, `the text as it is`.
#[must_use]
pub fn compare_markdown(c: &Comparison, path: &str, old: &str, new: &str) -> String {
    markdown(&page::compare::page(c, path, old, new), UNLINKED)
}
