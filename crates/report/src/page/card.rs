//! Expected readings by test point, to take to the site and fill in.

use downlead_quantity::{frequency, number, power, sig};

use crate::document::{Block, Column, Document, Place, Run, Table, Text};
use crate::shape::card::{Card, CardFile, Earlier, TestPoint};

use crate::words::chain::{NOT_KNOWN, swr, wave};
use crate::words::verdict::Judged;

/// Stands on every card.
pub const SAFETY: [&str; 3] = [
    "Before anyone climbs or opens a line: transmitters off and locked off, mains off where it is opened.",
    "RF burns, and fields near an antenna can be above limits. Your local rules come first.",
    "Key a steady carrier and read when it has settled.",
];

fn heading(c: &Card) -> String {
    let mut out = if c.station.is_empty() {
        c.chain.clone()
    } else {
        format!("{}: {}", c.station, c.chain)
    };
    let f = frequency(c.frequency_hz);
    if c.band != f {
        out += &format!(", {}", c.band);
    }
    if let Some(p) = c.point {
        out += &format!(" {}", p.word());
    }
    format!("{out}, {f}")
}

/// What the spans hold.
fn footing(c: &Card) -> String {
    match &c.instrument {
        Some(m) if c.instrument_set_power => format!(
            "May read: 95 in 100 readings with {m} lie there if the text is right. It set the transmitter too, so \
             its scale cancels; with another meter, allow for both (--with METER)."
        ),
        Some(m) => format!(
            "May read: 95 in 100 readings with {m} lie there if the text is right; its own error is in it."
        ),
        None => "May read: 95 in 100 powers lie there if the text is right. No meter is known, so its own error \
                 is not in it; --with METER puts it in."
            .to_owned(),
    }
}

/// `30.4 to 33.6 W`: both ends in the same unit.
pub(super) fn span(p: &TestPoint) -> String {
    let (Some(low), Some(high)) = (p.low_w, p.high_w) else {
        return String::new();
    };
    // the unit of the upper end, as `power` would choose it
    let shown = power(high);
    let (scale, unit) = match shown.rsplit_once(' ') {
        Some((_, "kW")) => (1e-3, "kW"),
        Some((_, "mW")) => (1e3, "mW"),
        Some((_, "µW")) => (1e6, "µW"),
        _ => (1.0, "W"),
    };
    format!("{} to {} {unit}", sig(low * scale, 3), sig(high * scale, 3))
}

fn earlier(r: &Earlier) -> Text {
    let what = match (r.read_w, r.read_swr) {
        (Some(w), _) => format!("{} {}", power(w), wave(r.quantity)),
        (None, Some(s)) => format!("SWR {}", number(s, 2)),
        (None, None) => wave(r.quantity).to_owned(),
    };
    let date = r.date.as_ref().map_or(String::new(), |d| format!(", {d}"));
    let with = r
        .instrument
        .as_ref()
        .map_or(String::new(), |i| format!(" with {i}"));
    Text::from(format!("    {what}{date}{with}: ")).and(r.verdict.run())
}

static POINTS: &[Column<TestPoint>] = &[
    Column::left("at", |p: &TestPoint| (&p.at).into()).shrink(15),
    Column::right("forward", |p: &TestPoint| {
        p.forward_w.map_or_else(|| "-".to_owned(), power).into()
    }),
    Column::left("may read", |p: &TestPoint| match p.forward_w {
        Some(_) => span(p).into(),
        None => NOT_KNOWN.into(),
    }),
    Column::right("dBm", |p: &TestPoint| {
        p.forward_dbm
            .map(|d| format!("{d:.1}"))
            .unwrap_or_default()
            .into()
    })
    .drop(1),
    Column::right("SWR", |p: &TestPoint| {
        p.swr.map(swr).unwrap_or_default().into()
    }),
    Column::left("today W", |_: &TestPoint| "__________".into()),
    Column::left("SWR", |_: &TestPoint| "_________".into()).drop(2),
];

/// The page.
#[must_use]
pub fn page(file: &CardFile) -> Document {
    let mut doc = Document {
        title: "Expected readings".to_owned(),
        widest: Some(80),
        blocks: Vec::new(),
    };
    if file.cards.is_empty() {
        doc.push(Block::Paragraph(
            "No transmit chain in these files: there is no power to read.".into(),
        ));
        return doc;
    }
    for c in &file.cards {
        card(&mut doc, c);
    }
    doc.push(Block::List(SAFETY.iter().map(|s| (*s).into()).collect()));
    doc
}

fn card(doc: &mut Document, c: &Card) {
    doc.heading(1, heading(c), Some(Place::new(&c.file, c.line)));
    doc.push(Block::Paragraph(Text(vec![Run::Plain(
        "date ______________   who __________________   meter __________________".to_owned(),
    )])));
    let mut table = Table::new(POINTS);
    let mut branch: Option<&str> = None;
    for p in &c.points {
        if p.branch.as_deref() != branch {
            branch = p.branch.as_deref();
            table
                .title(branch.map_or_else(|| "all branches".to_owned(), |b| format!("branch {b}")));
        }
        table.row(POINTS, p, None);
        p.read.iter().for_each(|r| table.title(earlier(r)));
    }
    doc.table(table);
    doc.push(Block::Paragraph(footing(c).into()));
}
