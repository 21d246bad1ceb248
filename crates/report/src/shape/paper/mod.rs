//! Papers that are handed over: what every one of them says of where it comes from.

pub mod form;
pub mod materials;
pub mod site_sheet;

use schemars::JsonSchema;
use serde::Serialize;

/// Where a paper comes from: with the same files and the same version it has the same bytes.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct OriginReport {
    /// Version of this program, which holds the built-in library.
    pub version: &'static str,
    /// The variant that stands in the place of the station.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub variant: Option<String>,
    /// The station's file first, then what it uses: texts, tables, networks.
    pub files: Vec<FileReport>,
    /// The newest date in the station's text; there is no clock.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub newest_date: Option<String>,
}

/// A file that a paper rests on.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct FileReport {
    /// Path.
    pub file: String,
    /// SHA-256 of its bytes, hexadecimal; absent where it could not be read.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sha256: Option<String>,
    /// Commit that changed it last, shortened; absent where it was never committed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub revision: Option<String>,
    /// Date of that commit.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub revised: Option<String>,
    /// Whether the file differs from what is committed.
    pub changed: bool,
}
