//! What changed on the air, for people: a terminal, a pull request.

use downlead_quantity::{db, decibel_signed, frequency, power};

use super::note;
use crate::document::{Block, Column, Document, Level, Table, Text};
use crate::shape::diff::{
    ChainDiff, Class, DefinitionDiff, Diff, FindingDiff, How, LimitDiff, PartDiff, Redo, State,
    StationDiff, StepDiff,
};
use crate::words::chain::under_or_over;
use crate::words::exposure;
use crate::words::figure::counted;

/// A result: chain, band, what, then, now, change, limit.
type Row = [String; 7];

static RESULTS: &[Column<Row>] = &[
    Column::left("chain", |r| (&r[0]).into()),
    Column::left("band", |r| (&r[1]).into()),
    Column::left("what", |r| (&r[2]).into()),
    Column::right("then", |r| (&r[3]).into()),
    Column::right("now", |r| (&r[4]).into()),
    Column::right("change", |r| (&r[5]).into()),
    Column::left("limit", |r| (&r[6]).into()),
];

static PARTS: &[Column<[String; 4]>] = &[
    Column::left("part", |r| (&r[0]).into()),
    Column::left("then", |r| (&r[1]).into()),
    Column::left("now", |r| (&r[2]).into()),
    Column::right("loss", |r| (&r[3]).into()),
];

/// How much is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Said {
    /// What exceeds its uncertainty, in a few words where nothing does.
    Speaking,
    /// Nothing at all where nothing exceeds its uncertainty.
    OnlySpeaking,
    /// Also what lies within the uncertainty.
    All,
}

/// The page; without blocks where there is nothing to say.
#[must_use]
pub fn page(d: &Diff, said: Said) -> Document {
    let title = "What changes on the air".to_owned();
    let mut doc = Document {
        title: title.clone(),
        widest: None,
        blocks: Vec::new(),
    };
    let stations: Vec<&StationDiff> = d
        .stations
        .iter()
        .filter(|s| s.speaks || said == Said::All)
        .collect();
    let errors = d.findings.iter().any(|f| f.state == State::New);
    if !d.speaks && said != Said::All {
        if said == Said::Speaking {
            quiet(d, &mut doc);
        }
        return doc;
    }
    if stations.is_empty() && d.definitions.is_empty() && !errors {
        return doc;
    }
    doc.heading(1, title, None);
    note(&mut doc, format!("Then: {}. Now: {}.", d.old, d.new));
    for s in stations {
        station(s, said, &mut doc);
    }
    definitions(&d.definitions, &mut doc);
    findings(&d.findings, &mut doc);
    doc
}

/// One line where something differs and nothing moves by more than its uncertainty.
fn quiet(d: &Diff, doc: &mut Document) {
    let classes = d.stations.iter().filter(|s| s.class < Class::Clerical);
    let names: Vec<String> = classes
        .map(|s| {
            let parts: Vec<&str> = s.parts.iter().map(|p| p.name.as_str()).take(4).collect();
            let parts = if parts.is_empty() {
                String::new()
            } else {
                format!(" ({})", parts.join(", "))
            };
            format!("{}{parts}", called(s))
        })
        .chain(d.definitions.iter().map(|x| x.name.clone()).take(4))
        .collect();
    if !names.is_empty() {
        note(
            doc,
            format!(
                "Changed: {}. Nothing moves by more than the uncertainty of the difference; --all shows it.",
                names.join("; ")
            ),
        );
    }
}

fn called(s: &StationDiff) -> String {
    if s.name.is_empty() {
        s.file.clone()
    } else {
        s.name.clone()
    }
}

fn station(s: &StationDiff, said: Said, doc: &mut Document) {
    let state = match s.state {
        State::Changed => String::new(),
        other => format!(", {}", other.words()),
    };
    doc.heading(
        2,
        format!("{}: {}{state}", called(s), s.class.words()),
        None,
    );
    for c in &s.chains {
        for l in c.limits.iter().filter(|l| l.worse) {
            let words = format!("{} on {}: {}.", c.name, c.band, limit(l));
            doc.push(Block::Note(Level::Warning, words.into()));
        }
    }
    for spot in &s.spots {
        let words = format!("Exposure at {}.", exposure::step(spot));
        match spot.worse {
            true => doc.push(Block::Note(Level::Warning, words.into())),
            false => note(doc, words),
        }
    }
    if !s.placed.is_empty() {
        note(doc, format!("Changed: {}.", s.placed.join(", ")));
    }
    let shown = s.chains.iter().filter(|c| c.speaks || said == Said::All);
    let list: Vec<Row> = shown.flat_map(rows).collect();
    doc.table(Table::of(RESULTS, &list, |_| None));
    let list: Vec<[String; 4]> = s.parts.iter().filter(|p| tells(p)).map(part).collect();
    doc.table(Table::of(PARTS, &list, |_| None));
    readings(s, doc);
    if !s.renamed.is_empty() {
        let all: Vec<String> = s
            .renamed
            .iter()
            .map(|[a, b]| format!("{a} is now {b}"))
            .collect();
        note(doc, format!("Renamed: {}.", all.join(", ")));
    }
    redo(s, doc);
}

fn rows(c: &ChainDiff) -> Vec<Row> {
    let mut out: Vec<Row> = Vec::new();
    let limits: Vec<String> = c
        .limits
        .iter()
        .map(limit)
        .filter(|l| !l.is_empty())
        .collect();
    let mut row = |what: &str, old: String, new: String, change: String| {
        let first = out.is_empty();
        let name = |s: &str| if first { s.to_owned() } else { String::new() };
        let limits = if first {
            limits.join("; ")
        } else {
            String::new()
        };
        out.push([
            name(&c.name),
            name(&c.band),
            what.to_owned(),
            old,
            new,
            change,
            limits,
        ]);
    };
    let shown =
        |x: Option<f64>, show: &dyn Fn(f64) -> String| x.map_or_else(|| "–".to_owned(), show);
    let both =
        |[a, b]: [Option<f64>; 2], show: &dyn Fn(f64) -> String| (shown(a, show), shown(b, show));
    let come = |change: String| match c.state {
        State::Changed => change,
        other => other.words().to_owned(),
    };
    if c.frequency_hz[0] != c.frequency_hz[1] && c.state == State::Changed {
        let (a, b) = both(c.frequency_hz, &frequency);
        row("frequency", a, b, String::new());
    }
    if c.erp_w.iter().any(Option::is_some) {
        let (a, b) = both(c.erp_w, &power);
        row("ERP", a, b, come(step(c.radiated)));
    }
    let loss_moves = c.loss.is_none_or(|s| s.change_db.abs() >= 0.005);
    if c.loss_db.iter().any(Option::is_some) && (loss_moves || c.erp_w == [None, None]) {
        let (a, b) = both(c.loss_db, &db);
        row("loss", a, b, come(step(c.loss)));
    }
    if let [Some(a), Some(b)] = c.sensitivity_dbm
        && (b - a).abs() >= 0.05
    {
        let level = |l: f64| format!("{l:.1} dBm");
        row("sensitivity", level(a), level(b), decibel_signed(b - a));
    }
    out
}

fn step(s: Option<StepDiff>) -> String {
    s.map_or_else(String::new, |s| {
        let words = format!("{} ± {}", decibel_signed(s.change_db), db(s.uncertainty_db));
        match s.speaks || s.change_db.abs() < 0.005 {
            true => words,
            false => format!("{words}, within it"),
        }
    })
}

/// `TSO 14-0093 clause 4: cannot tell -> met, 0.85 dB under 30 W`.
fn limit(l: &LimitDiff) -> String {
    let source = l.source[1].as_ref().or(l.source[0].as_ref());
    let name = source.map_or_else(
        || format!("{} limit", l.quantity.to_uppercase()),
        Clone::clone,
    );
    let plain = |v: &str| v.replace('-', " ");
    let verdict = match l.verdict {
        [Some(a), Some(b)] if a == b => plain(b),
        [Some(a), Some(b)] => format!("{} → {}", plain(a), plain(b)),
        [None, Some(b)] => format!("new, {}", plain(b)),
        [Some(_), None] => return format!("{name}: gone"),
        [None, None] => return String::new(),
    };
    let margin = l.margin_db[1]
        .zip(l.limit_w[1])
        .map_or_else(String::new, |(m, w)| {
            format!(", {} {}", under_or_over(m), power(w))
        });
    format!("{name}: {verdict}{margin}")
}

/// Whether a line about a part says something: what only follows from another is in the results.
fn tells(p: &PartDiff) -> bool {
    p.how != How::Follows || p.text.iter().any(Option::is_some)
}

fn part(p: &PartDiff) -> [String; 4] {
    let text = |t: &Option<String>| t.clone().unwrap_or_else(|| "–".to_owned());
    let loss = match p.loss_db {
        [Some(a), Some(b)] if (a - b).abs() >= 0.005 => format!("{} → {}", db(a), db(b)),
        [Some(a), None] => db(a),
        [None, Some(b)] => db(b),
        _ => String::new(),
    };
    [p.name.clone(), text(&p.text[0]), text(&p.text[1]), loss]
}

fn readings(s: &StationDiff, doc: &mut Document) {
    let all = || s.chains.iter().flat_map(|c| &c.readings);
    let words = |v: &str| v.replace('-', " ");
    let mut said: Vec<String> = Vec::new();
    for (verdict, shown) in [
        ("agrees", "agree"),
        ("differs", "differ"),
        ("cannot-tell", "cannot tell"),
    ] {
        let new = all().filter(|r| r.verdict == [None, Some(verdict)]).count();
        if new > 0 {
            said.push(format!("{} ({shown})", counted(new, "new reading")));
        }
    }
    for r in all() {
        if let [Some(a), Some(b)] = r.verdict {
            said.push(format!("{} reading: {} → {}", r.what, words(a), words(b)));
        }
    }
    let gone = all().filter(|r| r.verdict[1].is_none()).count();
    if gone > 0 {
        said.push(format!("{} gone", counted(gone, "reading")));
    }
    if !said.is_empty() {
        note(doc, format!("Readings: {}.", said.join(", ")));
    }
}

fn redo(s: &StationDiff, doc: &mut Document) {
    let words = |r: &Redo| match r {
        Redo::Exposure => "exposure record (power, gain, height or time keyed changed)",
        Redo::Coordination => {
            "coordination (more is radiated, or frequency, place or height changed)"
        }
        Redo::Readings => "readings (taken on other parts)",
    };
    if !s.redo.is_empty() {
        let all: Vec<&str> = s.redo.iter().map(words).collect();
        note(doc, format!("To be done again: {}.", all.join("; ")));
    }
}

fn definitions(all: &[DefinitionDiff], doc: &mut Document) {
    let named = |x: &DefinitionDiff| match (x.state, x.how) {
        (State::Changed, How::Evidence) => format!("{} (evidence)", x.name),
        (State::Changed, _) => x.name.clone(),
        (other, _) => format!("{} ({})", x.name, other.words()),
    };
    let mut names: Vec<String> = Vec::new();
    for n in all.iter().map(named) {
        if !names.contains(&n) {
            names.push(n);
        }
    }
    if !names.is_empty() {
        note(doc, format!("Definitions changed: {}.", names.join(", ")));
    }
}

fn findings(all: &[FindingDiff], doc: &mut Document) {
    let list: Vec<Text> = all
        .iter()
        .map(|f| {
            let text = Text::from(format!("{} ", f.state.words()));
            text.and(crate::document::Run::Code(f.code.to_owned()))
                .plus(&format!(", {}:{}: {}", f.file, f.line, f.message))
        })
        .collect();
    if !list.is_empty() {
        doc.heading(2, "Errors and warnings", None);
        doc.push(Block::List(list));
    }
}
