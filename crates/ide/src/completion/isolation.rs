//! Inside `isolation A9 of harbour to A1 …`: `to` makes one value of the names about it, so the table cannot say what
//! follows a part of them.

use downlead_station::model::{PartKind, Station};
use downlead_syntax::SyntaxKind;

use super::{CompletionKind, List};
use crate::names::NameKind;
use crate::view::item_at;

impl List<'_> {
    /// The two antennas of an isolation; false where they stand already.
    pub(super) fn antennas(&mut self) -> bool {
        let names: Vec<&str> = self.at.head.iter().skip(1).map(|t| t.text).collect();
        let numbers = |k: SyntaxKind| matches!(k, SyntaxKind::Number | SyntaxKind::Comma);
        if self.at.head.iter().any(|t| numbers(t.kind)) {
            return false;
        }
        match names.last().copied() {
            None | Some("to") => self.antennas_of_site(),
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

    /// The antennas of the station, and those of its neighbours with their stations.
    fn antennas_of_site(&mut self) {
        let Some(env) = self.env else { return };
        let own = item_at(self.s, self.doc, self.at.replace.start).and_then(|p| {
            let name = p.item.statement()?.atoms().get(1)?.span;
            env.station(p.item.slice(name))
        });
        let Some(own) = own else { return };
        let tags = |st: &Station| -> Vec<String> {
            let antennas = st.parts.iter().filter(|p| p.kind == PartKind::Antenna);
            let tags = antennas.filter_map(|p| p.tag.as_ref());
            tags.map(|t| t.text.to_string()).collect()
        };
        for tag in tags(own) {
            self.add(1, CompletionKind::Tag, &tag, None);
        }
        for other in env.on_site_of(own) {
            for tag in tags(other) {
                let label = format!("{tag} of {}", other.name.text);
                self.add(2, CompletionKind::Tag, &label, None);
            }
        }
    }
}
