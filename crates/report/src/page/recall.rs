//! What a recall does, for people: what flips first.

use downlead_quantity::{decibel_signed, number, power};

use super::note;
use crate::document::{Block, Column, Document, Place, Table, Text};
use crate::shape::recall::{Effect, RecallReport, RecallRow};
use crate::words::figure::counted;

static ROWS: &[Column<RecallRow>] = &[
    Column::left("of", |r: &RecallRow| {
        let parts = [&r.of, &r.chain, &r.band];
        let parts: Vec<&str> = parts.iter().map(|p| p.as_str()).collect();
        let parts: Vec<&str> = parts.into_iter().filter(|p| !p.is_empty()).collect();
        parts.join(" ").into()
    }),
    Column::left("what", |r: &RecallRow| {
        let what = match r.figure.as_deref() {
            Some("erp_w") if r.verdict.is_none() => "ERP",
            Some("antenna_w") if r.verdict.is_none() => "power at the antenna",
            Some("sensitivity_dbm") if r.verdict.is_none() => "sensitivity",
            Some("total_loss_db") if r.verdict.is_none() => "loss",
            Some("noise_figure_db") if r.verdict.is_none() => "noise figure",
            _ => &r.what,
        };
        match r.about.as_str() {
            "" => what.into(),
            about => format!("{what}, {about}").into(),
        }
    })
    .shrink(40),
    Column::left("was", |r: &RecallRow| state(r, &r.verdict, r.value)),
    Column::left("is", |r: &RecallRow| {
        state(r, &r.verdict_recalled, r.value_recalled)
    }),
    Column::right("line", |r: &RecallRow| {
        let place = Place::new(&r.file, u32::try_from(r.line).unwrap_or(0));
        Text::link(r.line.to_string(), place)
    }),
];

fn state(r: &RecallRow, verdict: &Option<String>, value: Option<f64>) -> Text {
    let figure = r.figure.as_deref().unwrap_or("");
    let shown = value.map(|v| match figure {
        "difference_db" | "margin_db" => decibel_signed(v),
        f if f.ends_with("_dbm") => format!("{v:.1} dBm"),
        f if f.ends_with("_db") => downlead_quantity::db(v),
        f if f.ends_with("_w") => power(v),
        _ => number(v, 3),
    });
    let verdict = verdict.as_ref().map(|v| v.replace('-', " "));
    let parts: Vec<String> = verdict.into_iter().chain(shown).collect();
    parts.join(", ").into()
}

/// The page.
#[must_use]
pub fn page(r: &RecallReport) -> Document {
    let how = match (r.kind, r.share_percent > 0.0) {
        ("cable", true) => "loses more than its sheet says",
        ("cable", false) => "loses less than its sheet says",
        (_, true) => "reads too high",
        (_, false) => "reads too low",
    };
    let since = r
        .since
        .as_ref()
        .map_or(String::new(), |d| format!(" since {d}"));
    let mut doc = Document {
        title: format!("Recall of {}", r.name),
        widest: None,
        blocks: Vec::new(),
    };
    doc.heading(
        1,
        format!(
            "{}: {how} by {} %{since}",
            r.name,
            number(r.share_percent.abs(), 3)
        ),
        None,
    );
    let of = |e: Effect| r.rows.iter().filter(|x| x.effect == e).count();
    let mut files: Vec<&str> = r.rows.iter().map(|x| x.file.as_str()).collect();
    files.sort_unstable();
    files.dedup();
    let verb = if of(Effect::Flips) == 1 {
        "flips"
    } else {
        "flip"
    };
    doc.push(Block::Paragraph(
        format!(
            "{} in {} {}: {} {verb}, {} move, {} where the error cancels.",
            counted(r.rows.len(), "result"),
            counted(files.len(), "file"),
            if r.rows.len() == 1 {
                "rests on it"
            } else {
                "rest on it"
            },
            of(Effect::Flips),
            of(Effect::Moves),
            counted(of(Effect::Cancels), "session"),
        )
        .into(),
    ));
    doc.facts(
        r.definitions
            .iter()
            .map(|d| ("defined in", d.into()))
            .collect(),
    );
    let mut rows: Vec<&RecallRow> = r.rows.iter().collect();
    // what flips first, file by file
    rows.sort_by_key(|x| x.effect);
    let mut table = Table::new(ROWS);
    let mut last = None;
    for x in rows {
        if last != Some((x.effect, &x.file)) {
            let effect = match x.effect {
                Effect::Flips => "flips",
                Effect::Moves => "moves",
                Effect::Cancels => "cancels",
            };
            table.title(format!("{effect}: {}", x.file));
            last = Some((x.effect, &x.file));
        }
        table.row(ROWS, x, None);
    }
    doc.table(table);
    if !r.rows.is_empty() {
        let line = match &r.since {
            Some(d) => format!("recalled {:+} % since {d}", r.share_percent),
            None => format!("recalled {:+} %", r.share_percent),
        };
        note(
            &mut doc,
            format!(
                "computed as if the definition said `{line}`; write that line into it to keep it. What was fitted earlier and written down as figures does not follow"
            ),
        );
    }
    doc
}
