//! Many stations in one table, for people.

use downlead_quantity::{db, power};

use super::note;
use crate::document::{Block, Column, Document, Level, Place, Run, Sign, Table, Text};
use crate::shape::overview::{Overview, OverviewRow, RowKind, Standing};
use crate::words::exposure::share;
use crate::words::figure::counted;

static ROWS: &[Column<OverviewRow>] = &[
    Column::left("station", |r| name(r).into()),
    Column::left("band", |r| subject(r).into()).shrink(24),
    Column::right("MHz", |r: &OverviewRow| {
        let mhz = r.frequency_hz.map(|f| format!("{}", f / 1e6));
        mhz.unwrap_or_default().into()
    })
    .drop(3),
    Column::right("ERP", |r| r.erp_w.map(power).unwrap_or_default().into()),
    Column::left("limit", |r: &OverviewRow| limit(r).into()).shrink(12),
    Column::left("verdict", verdict),
    Column::right("margin", |r: &OverviewRow| {
        r.margin_db.map(signed).unwrap_or_default().into()
    }),
    Column::right("uncertainty", |r: &OverviewRow| {
        r.uncertainty_db.map(db).unwrap_or_default().into()
    })
    .drop(4),
    Column::left("newest reading", |r: &OverviewRow| {
        r.newest_reading.clone().unwrap_or_default().into()
    })
    .drop(1),
    Column::right("age", |r: &OverviewRow| {
        r.age_days.map(age).unwrap_or_default().into()
    })
    .drop(2),
    Column::left("open", |r| open(r).into()),
    Column::left("file", |r| {
        let place = Place::new(&r.file, r.line);
        Text::link(place.to_string(), place)
    }),
];

fn name(r: &OverviewRow) -> String {
    match r.station.as_str() {
        "" if r.chain.is_empty() => "–".to_owned(),
        "" => r.chain.clone(),
        s => s.to_owned(),
    }
}

/// The band; of a spot or a hop what it is.
fn subject(r: &OverviewRow) -> String {
    match &r.what {
        Some(what) => format!("{} {what}", r.kind.word()),
        None => r.band.clone(),
    }
}

fn limit(r: &OverviewRow) -> String {
    match (r.kind, &r.cite) {
        (RowKind::Spot, Some(set)) => {
            let sum = r.share.map_or_else(|| "no sum".to_owned(), share);
            return format!("{sum} of {set}");
        }
        (RowKind::Hop, Some(criterion)) => return criterion.clone(),
        _ => {}
    }
    let Some(w) = r.limit_w else {
        return r.message.clone().unwrap_or_default();
    };
    let quantity = r.quantity.unwrap_or("").to_uppercase();
    match &r.cite {
        Some(cite) => format!("{} {quantity}, {cite}", power(w)),
        None => format!("{} {quantity}", power(w)),
    }
}

fn verdict(r: &OverviewRow) -> Text {
    let sign = match r.verdict {
        Standing::Met => Sign::Good,
        Standing::CannotTell
        | Standing::NotJudged
        | Standing::NoRule
        | Standing::IfAllocated
        | Standing::MetAlone => Sign::Open,
        Standing::NotMet | Standing::Error => Sign::Bad,
        Standing::NoLimit => return r.verdict.words().into(),
    };
    Text(vec![Run::Verdict(sign, r.verdict.words())])
}

fn signed(x: f64) -> String {
    format!("{x:+.2} dB")
}

fn age(days: i64) -> String {
    match days {
        0..60 => counted(usize::try_from(days).unwrap_or(0), "day"),
        60.. => format!("{} mo", days * 12 / 365),
        _ => "in the future".to_owned(),
    }
}

fn open(r: &OverviewRow) -> String {
    let of = |n: usize, what: &str| (n > 0).then(|| format!("{n} {what}"));
    let all = [of(r.errors, "E"), of(r.warnings, "W")];
    all.into_iter().flatten().collect::<Vec<_>>().join(" ")
}

/// The page.
#[must_use]
pub fn page(o: &Overview) -> Document {
    let mut doc = Document {
        title: "Overview".to_owned(),
        widest: None,
        blocks: Vec::new(),
    };
    doc.heading(1, "Overview", None);
    doc.table(Table::of(ROWS, &o.rows, |r| {
        Some(Place::new(&r.file, r.line))
    }));
    let count = |s: Standing| o.rows.iter().filter(|r| r.verdict == s).count();
    let sums: Vec<String> = Standing::ALL
        .into_iter()
        .filter(|s| count(*s) > 0)
        .map(|s| format!("{} {}", count(s), s.words()))
        .collect();
    let mut words = counted(o.rows.len(), "row");
    if !sums.is_empty() {
        words = format!("{words}: {}", sums.join(", "));
    }
    if o.left_out > 0 {
        words = format!("{words}; {} left out by the filters", o.left_out);
    }
    let as_of = match (&o.as_of, o.given) {
        (Some(d), true) => format!("Ages as of {d}."),
        (Some(d), false) => {
            format!("Ages as of {d}, the newest date in the files; --as-of names another.")
        }
        (None, _) => "No date stands in the files, so ages are not known.".to_owned(),
    };
    note(&mut doc, format!("{words}. {as_of}"));
    if count(Standing::Error) > 0 {
        let words = "Rows with errors are not judged.";
        doc.push(Block::Note(Level::Warning, words.into()));
    }
    doc
}
