//! Papers that are handed over.

pub mod form;
mod joins;
pub mod materials;
pub mod site_sheet;

use std::collections::BTreeSet;

use downlead_eval::{Scope, Snapshot};
use downlead_station::model::{Meaning, Station};
use downlead_station::normalise;

use crate::shape::paper::{FileReport, OriginReport};

/// What those who read files know of a paper.
#[derive(Clone, Copy)]
pub struct From<'f> {
    /// What a path below the root holds now, and its last commit.
    pub files: &'f dyn Fn(&str) -> FileReport,
    /// The variant that stands in the place of its station.
    pub variant: Option<&'f str>,
}

/// Said of figures that rest on a station.
pub const AID: &str = "An aid, not a legal opinion: the current text of the rule decides.";

/// The station of an item, by its tag; none for chains outside a station.
fn station_of<'s>(scope: &'s Scope, name: &str) -> Option<&'s Station> {
    scope
        .items()
        .iter()
        .find_map(|(_, low, _)| match &low.meaning {
            Meaning::Station(st) if *st.name.text == *name => Some(&**st),
            _ => None,
        })
}

/// The files that a scope rests on: its own, the texts it uses, and the tables and networks that
/// all of these name.
fn origin(s: &Snapshot, scope: &Scope, station: Option<&Station>, from: From<'_>) -> OriginReport {
    let mut texts = vec![scope.file()];
    let mut at = 0;
    while let Some(file) = texts.get(at).copied() {
        let used = s.uses(file).iter().map(|u| u.0);
        let new: Vec<usize> = used.filter(|u| !texts.contains(u)).collect();
        texts.extend(new);
        at += 1;
    }
    let path_of = |i: &usize| s.files().get(*i).map(|f| f.path.clone());
    let mut paths: Vec<String> = texts.iter().filter_map(path_of).collect();
    let own = paths.first().cloned().unwrap_or_default();
    let named = scope.items().iter().flat_map(|(_, low, _)| &low.files);
    let attached: BTreeSet<String> = named
        .filter_map(|n| normalise(&own, n.text.trim_matches('"')))
        .collect();
    paths.extend(attached);
    OriginReport {
        variant: from.variant.map(str::to_owned),
        version: env!("CARGO_PKG_VERSION"),
        files: paths.iter().map(|p| (from.files)(p)).collect(),
        newest_date: station
            .and_then(|st| st.newest.as_ref())
            .map(ToString::to_string),
    }
}
