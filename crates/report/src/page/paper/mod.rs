//! Papers that are handed over, for people. Each says where it comes from and what it is worth.

pub mod form;
pub mod materials;
pub mod site_sheet;

use super::note;
use crate::document::{Document, Text};
use crate::shape::paper::{FileReport, OriginReport};

/// Digits of a hash that are printed; JSON and CSV hold all.
const DIGITS: usize = 16;

/// Files, revisions, hashes and the date, and what the paper is worth: at the end of each station.
fn closing(doc: &mut Document, o: &OriginReport, caution: &str) {
    let mut facts: Vec<(&'static str, Text)> = vec![("aid", caution.into())];
    let date = match &o.newest_date {
        Some(d) => format!("{d}, the newest date in the station's text"),
        None => "the station's text holds no date".to_owned(),
    };
    facts.push(("as of", date.into()));
    facts.extend(o.files.iter().map(|f| ("from", file(f).into())));
    let made = format!("downlead {} with its built-in library", o.version);
    facts.push(("made by", made.into()));
    doc.facts(facts);
}

fn file(f: &FileReport) -> String {
    let hash = match &f.sha256 {
        Some(h) => format!("SHA-256 {}…", h.get(..DIGITS).unwrap_or(h)),
        None => "which could not be read".to_owned(),
    };
    let revision = match (&f.revision, &f.revised) {
        (Some(r), Some(d)) if f.changed => format!("changed since revision {r} of {d}"),
        (Some(r), Some(d)) => format!("revision {r} of {d}"),
        _ => "no revision is known".to_owned(),
    };
    format!("{}, {revision}, {hash}", f.file)
}

/// `pellgarrow: Pellgarrow hill`, with the variant that stands in its place.
fn heading(station: &str, title: Option<&String>, o: &OriginReport) -> String {
    let own = match (station, title) {
        ("", Some(t)) => t.clone(),
        ("", None) => "Chains outside a station".to_owned(),
        (s, Some(t)) => format!("{s}: {t}"),
        (s, None) => s.to_owned(),
    };
    match &o.variant {
        Some(v) => format!("{own}, variant {v} (not built)"),
        None => own,
    }
}

/// What there is when no file has a station or chain.
fn nothing(doc: &mut Document, what: &str) {
    note(
        doc,
        format!("No station and no chain in these files: there is no {what}."),
    );
}
