//! The bill of materials: the stable shape of `report --materials`.

use schemars::JsonSchema;
use serde::Serialize;

use super::OriginReport;

/// Name and version of the JSON shape.
pub const SCHEMA: &str = "downlead-materials/1";

/// Bills of all stations.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct MaterialsFile {
    /// Always `downlead-materials/1`.
    pub schema: &'static str,
    /// What the bill is worth.
    pub caution: &'static str,
    /// One a station.
    pub stations: Vec<Materials>,
}

/// What a station consists of: each physical part once, however many chains pass it.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Materials {
    /// Tag; empty for chains outside a station.
    pub station: String,
    /// Title.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// Where it comes from.
    pub origin: OriginReport,
    /// What is added to each total length, %; absent where none was asked for.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub spare_percent: Option<f64>,
    /// Cable by type.
    pub cables: Vec<CableItem>,
    /// Connector pairs and adapters by type.
    pub connectors: Vec<ConnectorItem>,
    /// Everything else, by kind and type.
    pub devices: Vec<DeviceItem>,
    /// What the text does not say, and what was decided for the count.
    pub notes: Vec<String>,
}

/// Cable of one type.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct CableItem {
    /// Its name; absent for lines that state a loss instead of a cable.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cable: Option<String>,
    /// Title of its definition.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// Pieces of it.
    pub pieces: Vec<PieceItem>,
    /// Length of all pieces whose length is stated, m.
    pub length_m: f64,
    /// The same with what is to spare, m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub with_spare_m: Option<f64>,
    /// Pieces whose length the text does not state: they are not in the sum.
    pub without_length: usize,
}

/// A piece of cable.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct PieceItem {
    /// Tag, or the kind where it has none.
    pub tag: String,
    /// `run`, `jumper` or `tail`.
    pub kind: &'static str,
    /// m; absent where it is not stated.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub length_m: Option<f64>,
    /// Place.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub place: Option<String>,
    /// File.
    pub file: String,
    /// Line, from 1.
    pub line: u32,
}

/// Connector pairs of one type.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ConnectorItem {
    /// Name of the connector or adapter.
    pub connector: String,
    /// Title of its definition.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// Mated pairs, or adapters.
    pub count: u32,
    /// Where they are: parts on both sides and how many.
    pub places: Vec<JoinItem>,
}

/// Pairs between two parts.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct JoinItem {
    /// Part on one side; empty at the end of a chain.
    pub from: String,
    /// Part on the other side.
    pub to: String,
    /// Pairs there.
    pub count: u32,
}

/// Parts of one kind and type.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct DeviceItem {
    /// Keyword: `duplexer`, `antenna`, …
    pub kind: &'static str,
    /// Definition it is an example of.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub class: Option<String>,
    /// Where its figures come from.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub source: Option<String>,
    /// How many.
    pub count: usize,
    /// Tags, those without one by their kind.
    pub tags: Vec<String>,
    /// File of the first.
    pub file: String,
    /// Line of the first, from 1.
    pub line: u32,
}
