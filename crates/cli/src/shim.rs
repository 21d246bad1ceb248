//! TEMPORARY: stands in for station and eval until they land.
#![allow(missing_docs, unreachable_pub, dead_code)]
use downlead_base::{Diagnostic, Loc, Span};
use std::sync::Arc;
#[path = "../../eval/src/report.rs"]
pub mod report;
use downlead_station::{LoadError, Loader};
pub struct FileEntry {
    pub path: String,
    pub text: Arc<str>,
    pub error: Option<LoadError>,
}
pub struct Snapshot(Vec<FileEntry>, Vec<downlead_syntax::File>);
impl Snapshot {
    pub fn load(roots: &[String], loader: &dyn Loader) -> Snapshot {
        let files: Vec<FileEntry> = roots
            .iter()
            .map(|p| match loader.read(p) {
                Ok(text) => FileEntry {
                    path: p.clone(),
                    text,
                    error: None,
                },
                Err(e) => FileEntry {
                    path: p.clone(),
                    text: "".into(),
                    error: Some(e),
                },
            })
            .collect();
        let parsed = files
            .iter()
            .map(|f| downlead_syntax::File::parse(f.text.clone()))
            .collect();
        Snapshot(files, parsed)
    }
    pub fn report(&self) -> report::Report {
        report::Report {
            schema: report::SCHEMA,
            stations: vec![],
            diagnostics: vec![],
        }
    }
    pub fn diagnostics(&self) -> Vec<Diagnostic> {
        self.1.iter().flat_map(|f| f.diagnostics()).collect()
    }
    pub fn files(&self) -> &[FileEntry] {
        &self.0
    }
    pub fn place(&self, loc: Loc) -> Option<(usize, Span)> {
        self.1.iter().enumerate().find_map(|(i, f)| {
            // ids grow with place in a freshly parsed file
            let at = f
                .items()
                .binary_search_by_key(&loc.item, |p| {
                    p.item.statement().map_or(loc.item, |s| s.item_id())
                })
                .ok()?;
            Some((i, loc.span.shift(f.items()[at].span().start)))
        })
    }
    pub fn explain_line(&self, _: &str, _: u32) -> Vec<Derivation> {
        vec![]
    }
}
pub struct Derivation {
    pub title: String,
    pub value: String,
    pub formula: String,
    pub substituted: String,
    pub source: Option<String>,
    pub place: Option<Loc>,
    pub steps: Vec<Derivation>,
}
pub mod catalogue {
    pub struct Entry {
        pub name: String,
        pub kind: &'static str,
        pub title: String,
        pub source: Option<String>,
        pub file: String,
        pub line: u32,
        pub text: String,
    }
    pub fn entries() -> Vec<Entry> {
        vec![]
    }
    pub struct CableFacts {
        pub z0_ohm: f64,
        pub velocity_factor: f64,
        pub valid_hz: Option<(f64, f64)>,
        pub rating: Option<(f64, f64)>,
    }
    pub fn cable_points(_: &str, _: &[f64]) -> Option<(CableFacts, Vec<CablePoint>)> {
        None
    }
    pub struct CablePoint {
        pub frequency_hz: f64,
        pub loss_db_per_100m: f64,
        pub u_db_per_100m: f64,
        pub inside: bool,
    }
}
