//! Papers as tables.

use crate::shape::paper::OriginReport;
use crate::shape::paper::form::{FieldReport, FormBlock, FormFile, FormStation};
use crate::shape::paper::materials::MaterialsFile;
use crate::shape::paper::site_sheet::{SheetChain, SheetFile, SheetLimit, SiteSheet};
use crate::write::csv::{Field, Value, csv};

/// Hash and revision of the station's own file, and the newest date of its text.
fn of_origin(o: &OriginReport) -> [Value; 3] {
    let first = o.files.first();
    [
        first.and_then(|f| f.sha256.as_ref()).into(),
        first
            .and_then(|f| f.revision.as_ref().map(|r| (r, f.changed)))
            .map(|(r, changed)| {
                if changed {
                    format!("{r} and changes")
                } else {
                    r.clone()
                }
            })
            .map_or(Value::None, Value::Words),
        o.newest_date.as_ref().into(),
    ]
}

/// One row an item of the bill of materials.
struct Item<'a> {
    station: &'a str,
    group: &'static str,
    item: String,
    kind: &'a str,
    count: usize,
    length_m: Option<f64>,
    with_spare_m: Option<f64>,
    without_length: Option<usize>,
    tags: String,
    source: Option<&'a String>,
    origin: &'a OriginReport,
}

/// The bill of materials: one row an item.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub fn materials(file: &MaterialsFile) -> Result<String, csv::Error> {
    let mut rows: Vec<Item<'_>> = Vec::new();
    for s in &file.stations {
        let base = |group, item, kind, count| Item {
            station: &s.station,
            group,
            item,
            kind,
            count,
            length_m: None,
            with_spare_m: None,
            without_length: None,
            tags: String::new(),
            source: None,
            origin: &s.origin,
        };
        rows.extend(s.cables.iter().map(|c| {
            Item {
                length_m: (c.without_length < c.pieces.len()).then_some(c.length_m),
                with_spare_m: c.with_spare_m.filter(|_| c.without_length < c.pieces.len()),
                without_length: Some(c.without_length),
                tags: c
                    .pieces
                    .iter()
                    .map(|p| p.tag.as_str())
                    .collect::<Vec<_>>()
                    .join(" "),
                ..base(
                    "cable",
                    c.cable.clone().unwrap_or_default(),
                    "cable",
                    c.pieces.len(),
                )
            }
        }));
        rows.extend(s.connectors.iter().map(|c| {
            Item {
                tags: c
                    .places
                    .iter()
                    .map(|p| format!("{}-{}", p.from, p.to))
                    .collect::<Vec<_>>()
                    .join(" "),
                ..base("connector", c.connector.clone(), "pair", c.count as usize)
            }
        }));
        rows.extend(s.devices.iter().map(|d| Item {
            tags: d.tags.join(" "),
            source: d.source.as_ref(),
            ..base("part", d.class.clone().unwrap_or_default(), d.kind, d.count)
        }));
    }
    let fields: &[Field<Item<'_>>] = &[
        ("station", |r| r.station.into()),
        ("group", |r| r.group.into()),
        ("kind", |r| r.kind.into()),
        ("type", |r| (&r.item).into()),
        ("count", |r| r.count.into()),
        ("length_m", |r| r.length_m.into()),
        ("with_spare_m", |r| r.with_spare_m.into()),
        ("without_length", |r| r.without_length.into()),
        ("tags", |r| (&r.tags).into()),
        ("source", |r| r.source.into()),
        ("file", |r| r.origin.files.first().map(|f| &f.file).into()),
        ("sha256", |r| of_origin(r.origin)[0].clone()),
        ("revision", |r| of_origin(r.origin)[1].clone()),
        ("newest_date", |r| of_origin(r.origin)[2].clone()),
    ];
    csv(fields, &rows)
}

type Row<'a> = (&'a SiteSheet, &'a SheetChain, Option<&'a SheetLimit>);

/// The sheets: one row a chain, band and limit.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub fn site_sheet(file: &SheetFile) -> Result<String, csv::Error> {
    let mut rows: Vec<Row<'_>> = Vec::new();
    for s in &file.sheets {
        for c in &s.chains {
            let of = |l: &&SheetLimit| {
                l.chain == c.chain
                    && l.band == c.band
                    && l.frequency_hz.total_cmp(&c.frequency_hz).is_eq()
            };
            let first = rows.len();
            rows.extend(s.limits.iter().filter(of).map(|l| (s, c, Some(l))));
            if rows.len() == first {
                rows.push((s, c, None));
            }
        }
    }
    let fields: &[Field<Row<'_>>] = &[
        ("station", |r| (&r.0.station).into()),
        ("title", |r| r.0.title.as_ref().into()),
        ("latitude_deg", |r| r.0.latitude_deg.into()),
        ("longitude_deg", |r| r.0.longitude_deg.into()),
        ("datum", |r| r.0.datum.as_ref().into()),
        ("ground_m", |r| r.0.ground_m.into()),
        ("antennas", |r| {
            let all = r.0.antennas.iter().map(|a| match a.height_m {
                Some(m) => format!("{} {m} m agl", a.antenna),
                None => a.antenna.clone(),
            });
            Value::Words(all.collect::<Vec<_>>().join("; "))
        }),
        ("chain", |r| (&r.1.chain).into()),
        ("direction", |r| r.1.direction.word().into()),
        ("band", |r| (&r.1.band).into()),
        ("frequency_hz", |r| r.1.frequency_hz.into()),
        ("transmitter_w", |r| r.1.transmitter_w.into()),
        ("loss_db", |r| r.1.loss_db.into()),
        ("antenna_w", |r| r.1.antenna_w.into()),
        ("erp_w", |r| r.1.erp_w.into()),
        ("eirp_w", |r| r.1.eirp_w.into()),
        ("uncertainty_db", |r| r.1.uncertainty_db.into()),
        ("sensitivity_dbm", |r| r.1.sensitivity_dbm.into()),
        ("cite", |r| r.2.and_then(|l| l.cite.as_ref()).into()),
        ("quantity", |r| r.2.and_then(|l| l.quantity.as_ref()).into()),
        ("limit_w", |r| r.2.and_then(|l| l.limit_w).into()),
        ("value_w", |r| r.2.and_then(|l| l.value_w).into()),
        ("margin_db", |r| r.2.and_then(|l| l.margin_db).into()),
        ("margin_uncertainty_db", |r| {
            r.2.and_then(|l| l.uncertainty_db).into()
        }),
        ("verdict", |r| r.2.map(|l| l.verdict.0.word()).into()),
        ("missing", |r| {
            Value::Words(r.2.map_or_else(String::new, |l| l.missing.join("; ")))
        }),
        ("file", |r| (&r.0.file).into()),
        ("line", |r| r.1.line.into()),
        ("sha256", |r| of_origin(&r.0.origin)[0].clone()),
        ("revision", |r| of_origin(&r.0.origin)[1].clone()),
        ("newest_date", |r| of_origin(&r.0.origin)[2].clone()),
    ];
    csv(fields, &rows)
}

type Entry<'a> = (
    &'a FormFile,
    &'a FormStation,
    &'a FormBlock,
    &'a FieldReport,
);

/// A form filled in: one row a field.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub fn form(file: &FormFile) -> Result<String, csv::Error> {
    let blocks = file
        .stations
        .iter()
        .flat_map(|s| s.blocks.iter().map(move |b| (s, b)));
    let rows: Vec<Entry<'_>> = blocks
        .flat_map(|(s, b)| b.fields.iter().map(move |f| (file, s, b, f)))
        .collect();
    let fields: &[Field<Entry<'_>>] = &[
        ("form", |r| (&r.0.form).into()),
        ("station", |r| (&r.1.station).into()),
        ("chain", |r| (&r.2.chain).into()),
        ("band", |r| (&r.2.band).into()),
        ("frequency_hz", |r| r.2.frequency_hz.into()),
        ("label", |r| (&r.3.label).into()),
        ("what", |r| r.3.what.into()),
        ("entry", |r| r.3.entry.as_ref().into()),
        ("unit", |r| r.3.unit.into()),
        ("exact", |r| r.3.exact.into()),
        ("rounded", |r| r.3.rounded.into()),
        ("rounding", |r| r.3.rounding.as_ref().into()),
        ("uncertainty_db", |r| r.3.uncertainty_db.into()),
        ("over_w", |r| r.3.over_w.into()),
        ("by_hand", |r| r.3.by_hand.into()),
        ("missing", |r| r.3.missing.into()),
        ("file", |r| (&r.2.file).into()),
        ("line", |r| r.2.line.into()),
        ("sha256", |r| of_origin(&r.1.origin)[0].clone()),
        ("revision", |r| of_origin(&r.1.origin)[1].clone()),
        ("newest_date", |r| of_origin(&r.1.origin)[2].clone()),
    ];
    csv(fields, &rows)
}
