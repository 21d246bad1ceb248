//! The bill of materials, for people.

use downlead_quantity::number;

use super::{closing, heading, nothing};
use crate::document::{Block, Column, Document, Level, Place, Table};
use crate::shape::paper::materials::{
    CableItem, ConnectorItem, DeviceItem, Materials, MaterialsFile, PieceItem,
};

static CABLES: &[Column<CableItem>] = &[
    Column::left("cable", |c| {
        c.cable.as_deref().unwrap_or("not stated").into()
    }),
    Column::left("what", |c: &CableItem| {
        c.title.clone().unwrap_or_default().into()
    })
    .drop(2),
    Column::right("pieces", |c| c.pieces.len().to_string().into()),
    Column::right("length m", |c| total(c).into()),
    Column::right("with spare m", |c| {
        c.with_spare_m
            .filter(|_| has_length(c))
            .map(metres)
            .unwrap_or_default()
            .into()
    }),
    Column::left("which", |c| {
        let all: Vec<String> = c.pieces.iter().map(piece).collect();
        all.join(", ").into()
    }),
];

fn has_length(c: &CableItem) -> bool {
    c.without_length < c.pieces.len()
}

fn total(c: &CableItem) -> String {
    match (has_length(c), c.without_length) {
        (false, _) => "not stated".to_owned(),
        (true, 0) => metres(c.length_m),
        (true, n) => format!("{} and {n} not stated", metres(c.length_m)),
    }
}

fn metres(m: f64) -> String {
    number(m, 2)
}

fn piece(p: &PieceItem) -> String {
    match p.length_m {
        Some(m) => format!("{} {}", p.tag, metres(m)),
        None => format!("{} (length not stated)", p.tag),
    }
}

static CONNECTORS: &[Column<ConnectorItem>] = &[
    Column::left("connector", |c| (&c.connector).into()),
    Column::left("what", |c: &ConnectorItem| {
        c.title.clone().unwrap_or_default().into()
    })
    .drop(2),
    Column::right("pairs", |c| c.count.to_string().into()),
    Column::left("between", |c| {
        let all = c.places.iter().map(|p| {
            let side = |s: &str| if s.is_empty() { "the end" } else { s }.to_owned();
            let times = if p.count > 1 {
                format!(" ({})", p.count)
            } else {
                String::new()
            };
            format!("{}–{}{times}", side(&p.from), side(&p.to))
        });
        all.collect::<Vec<_>>().join(", ").into()
    }),
];

static DEVICES: &[Column<DeviceItem>] = &[
    Column::left("part", |d| d.kind.into()),
    Column::right("count", |d| d.count.to_string().into()),
    Column::left("type", |d| d.class.clone().unwrap_or_default().into()),
    Column::left("tags", |d| d.tags.join(", ").into()),
    Column::left("figures from", |d| {
        d.source.clone().unwrap_or_default().into()
    }),
];

/// The page.
#[must_use]
pub fn page(file: &MaterialsFile) -> Document {
    let names: Vec<&str> = file.stations.iter().map(|s| s.station.as_str()).collect();
    let mut doc = Document {
        title: format!("Bill of materials: {}", names.join(", ")),
        widest: None,
        blocks: Vec::new(),
    };
    for s in &file.stations {
        station(&mut doc, s, file.caution);
    }
    if file.stations.is_empty() {
        nothing(&mut doc, "bill of materials");
    }
    doc
}

fn station(doc: &mut Document, s: &Materials, caution: &str) {
    doc.heading(
        1,
        format!(
            "Bill of materials, {}",
            heading(&s.station, s.title.as_ref(), &s.origin)
        ),
        None,
    );
    for n in &s.notes {
        doc.push(Block::Note(Level::Warning, n.into()));
    }
    let at = |file: &str, line: u32| Some(Place::new(file, line));
    if !s.cables.is_empty() {
        doc.heading(2, "Cable", None);
        let first = |c: &CableItem| c.pieces.first().and_then(|p| at(&p.file, p.line));
        let mut t = Table::new(CABLES);
        s.cables.iter().for_each(|c| t.row(CABLES, c, first(c)));
        doc.table(t.without_empty());
        let spare = match s.spare_percent {
            Some(p) => format!("{} % to spare is added to each length.", number(p, 1)),
            None => "Lengths are those of the text, with nothing to spare.".to_owned(),
        };
        doc.push(Block::Paragraph(spare.into()));
    }
    if !s.connectors.is_empty() {
        doc.heading(2, "Connectors", None);
        doc.table(Table::of(CONNECTORS, &s.connectors, |_| None));
        doc.push(Block::Paragraph(
            "A pair is a plug and its socket. What several chains pass counts once.".into(),
        ));
    }
    if !s.devices.is_empty() {
        doc.heading(2, "Parts", None);
        doc.table(Table::of(DEVICES, &s.devices, |d| {
            Some(Place::new(&d.file, d.line))
        }));
    }
    closing(doc, &s.origin, caution);
}
