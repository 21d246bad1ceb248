//! Inside `isolation A9 of harbour to A1 …`: `to` makes one value of the names about it, so the table cannot say what
//! follows a part of them.

use downlead_syntax::SyntaxKind;

use super::{CompletionKind, List};
use crate::names::NameKind;

impl List<'_> {
    /// The two antennas of an isolation; false where they stand already.
    pub(super) fn isolated(&mut self) -> bool {
        let names: Vec<&str> = self.at.head.iter().skip(1).map(|t| t.text).collect();
        let numbers = |k: SyntaxKind| matches!(k, SyntaxKind::Number | SyntaxKind::Comma);
        if self.at.head.iter().any(|t| numbers(t.kind)) {
            return false;
        }
        match names.last().copied() {
            None | Some("to") => self.antennas(),
            Some("of") => self.names(1, NameKind::Station, CompletionKind::File),
            Some(_) => {
                let to = names.iter().rposition(|n| *n == "to");
                let end = &names[to.map_or(0, |i| i + 1)..];
                if end.len() == 1 {
                    self.words(2, &["of"]);
                }
                if to.is_some() {
                    return false;
                }
                self.words(1, &["to"]);
            }
        }
        true
    }
}
