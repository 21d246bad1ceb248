//! Cables of the library beside each other, at a length and frequencies.

use downlead_eval::catalogue::{Entry, LengthPoint, length_beside};
use downlead_quantity::{
    Dim, UnitId, db, dbm_to_w, decibel_signed, frequency, from_db, number, power, unit,
};
use downlead_report::document::{Column, Table};
use downlead_report::write::text::{self, Look};

use crate::args::CatalogueArgs;
use crate::fit::options;

/// Power into the cables where none is named, W.
const POWER_W: f64 = 100.0;
/// Frequencies where none is named, Hz: those people ask for first.
const AT: [f64; 5] = [7e6, 28e6, 145e6, 435e6, 1.3e9];

/// A cable at a frequency.
struct Row {
    hz: Option<f64>,
    name: String,
    point: Option<LengthPoint>,
    power_w: f64,
    first: bool,
}

static ROWS: &[Column<Row>] = &[
    Column::right("frequency", |r| {
        r.hz.map(frequency).unwrap_or_default().into()
    }),
    Column::left("cable", |r| (&r.name).into()),
    Column::right("loss", |r| {
        let loss = r
            .point
            .map(|p| format!("{} ± {}", db(p.loss_db), db(p.u_db)));
        loss.unwrap_or_else(|| "not known".to_owned()).into()
    }),
    Column::right("delivered", |r| {
        let out = |p: LengthPoint| {
            let at = |loss: f64| power(r.power_w * from_db(-loss));
            format!(
                "{} ({} to {})",
                at(p.loss_db),
                at(p.loss_db + p.u_db),
                at((p.loss_db - p.u_db).max(0.0))
            )
        };
        r.point.map(out).unwrap_or_default().into()
    }),
    Column::right("against the first", |r| {
        let p = r.point.filter(|_| !r.first);
        let all = p.map(|p| {
            let more = format!(
                "{} ± {}",
                decibel_signed(p.difference_db),
                db(p.u_difference_db)
            );
            match p.difference_db.abs() > p.u_difference_db {
                true => more,
                false => format!("{more}, within the uncertainty"),
            }
        });
        all.unwrap_or_default().into()
    }),
    Column::left("", |r| match r.point {
        Some(p) if !p.inside => "outside the valid range".into(),
        _ => "".into(),
    }),
];

/// The table.
pub(super) fn compared(
    args: &CatalogueArgs,
    entries: &[Entry],
    mut frequencies: Vec<f64>,
    look: Look,
) -> Result<String, String> {
    let mut names: Vec<&str> = Vec::new();
    for name in &args.names {
        let entry = entries.iter().find(|e| e.name.eq_ignore_ascii_case(name));
        let Some(entry) = entry else {
            return Err(super::unknown(name, entries));
        };
        if entry.kind != "cable" {
            return Err(format!(
                "{name} is of the kind {}; losses are compared of cables",
                entry.kind
            ));
        }
        names.push(&entry.name);
    }
    let Some(first) = names.first().copied() else {
        return Err("--length needs the names of cables".to_owned());
    };
    let Some(length) = &args.length else {
        return Err(format!(
            "losses of {} are compared at a length: add for example --length \"40 m\"",
            names.join(", ")
        ));
    };
    let metres = options::length(length)?.value;
    let watts = args.power.as_deref().map_or(Ok(POWER_W), watts_of)?;
    if frequencies.is_empty() {
        frequencies = AT.to_vec();
    }
    let mut rows = Vec::new();
    for hz in frequencies {
        for (i, name) in names.iter().enumerate() {
            rows.push(Row {
                hz: (i == 0).then_some(hz),
                name: (*name).to_owned(),
                point: length_beside(name, first, metres, hz),
                power_w: watts,
                first: i == 0,
            });
        }
    }
    let mut out = format!(
        "{} m, matched ends, 20 °C; {} into the cable. ± is k = 2.\n\n",
        number(metres, 3),
        power(watts)
    );
    out.push_str(&text::table(Table::of(ROWS, &rows, |_| None), look));
    if names.len() > 1 {
        out.push_str("\nAn error that two cables share counts once in their difference. Connectors, reflections and temperature are not in it: a chain has them.\n");
    }
    Ok(out)
}

/// `50 W`, `47 dBm`.
fn watts_of(text: &str) -> Result<f64, String> {
    let wrong = || format!("--power {text}: not a power above zero; write it as `50 W`");
    let split = text
        .find(|c: char| !c.is_ascii_digit() && c != '.')
        .unwrap_or(text.len());
    let (digits, spelling) = text.trim().split_at(split.min(text.trim().len()));
    let value: f64 = digits.parse().map_err(|_| wrong())?;
    let known = UnitId::parse(spelling.trim()).map(unit).ok_or_else(wrong)?;
    let watts = match known.dim {
        Dim::Power => known.to_base(value),
        Dim::Level => dbm_to_w(known.to_base(value)),
        _ => return Err(wrong()),
    };
    match watts.is_finite() && watts > 0.0 {
        true => Ok(watts),
        false => Err(wrong()),
    }
}
