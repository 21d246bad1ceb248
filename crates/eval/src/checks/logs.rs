//! The tables that a station's chains take as logs: what cannot be read of them, and which rows no
//! statement takes.

use downlead_base::{Diagnostic, codes};
use downlead_quantity::frequency;
use downlead_station::attach::{ReadingsFile, Row};
use downlead_station::model::{BandRef, Chain, Direction, Name, Part, PartKind, Station};
use downlead_station::{Env, nearest};
use indexmap::IndexMap;
use rustc_hash::FxHashMap;

use crate::chain::holds;
use crate::log_place::{LogPlace, log_places, on_band};
use crate::point::{Point, band_named, points};
use crate::table::{lines_words, log_problems};
use crate::walk::{direction, walk};

/// At most so many bands are named in one finding.
const BANDS: usize = 4;

/// The frequencies a statement takes rows on; none if they could not all be had.
type On = Option<Vec<Point>>;

/// A table and the statements that take it.
struct Table<'m> {
    file: &'m Name,
    rows: &'m ReadingsFile,
    takers: Vec<(LogPlace<'m>, On)>,
}

/// Checks the tables of all logs of some chains, each table once.
pub(crate) fn logs(
    station: Option<&Station>,
    chains: &[Chain],
    env: &Env,
    out: &mut Vec<Diagnostic>,
) {
    let mut tables: IndexMap<&str, Table<'_>> = IndexMap::new();
    for c in chains {
        let places = log_places(&c.steps, station);
        if places.is_empty() {
            continue;
        }
        let mut sink = Vec::new();
        let dir = direction(c, &walk(&c.steps, station, &mut sink));
        // in a receive chain a log is misplaced, which is said there
        if dir == Direction::Receive {
            continue;
        }
        let on = frequencies(c, dir, env);
        for p in places {
            let Some(a) = env.attachments.at(p.file.loc) else {
                continue;
            };
            let Some(rows) = a.readings() else { continue };
            let taken = on.as_ref().map(|all| {
                let on = all.iter().filter(|x| holds(p.on, x, env));
                on.cloned().collect()
            });
            let table = tables.entry(&*a.path).or_insert_with(|| Table {
                file: p.file,
                rows,
                takers: Vec::new(),
            });
            table.takers.push((p, taken));
        }
    }
    let parts: Vec<(&str, &Part)> = station
        .map_or(&[][..], |s| &s.parts)
        .iter()
        .filter_map(|p| Some((&*p.tag.as_ref()?.text, p)))
        .collect();
    for t in tables.values() {
        let tags: Vec<&str> = parts.iter().map(|p| p.0).collect();
        log_problems(t.file, t.rows, &tags, out);
        not_taken(t, &parts, env, out);
    }
}

/// The frequencies of a chain, if its bands are all known.
fn frequencies(c: &Chain, dir: Direction, env: &Env) -> On {
    let mut wrong = Vec::new();
    let all = points(c, dir, env, &mut wrong);
    let known = |b: &BandRef| match b {
        BandRef::Named(n) => env.band(&n.text).is_some(),
        BandRef::Frequency(..) => true,
    };
    (wrong.is_empty() && !all.is_empty() && c.bands.iter().all(known)).then_some(all)
}

/// The rows that were read after a part of the station and that no statement takes.
fn not_taken(t: &Table<'_>, parts: &[(&str, &Part)], env: &Env, out: &mut Vec<Diagnostic>) {
    // after an unknown part a statement may be that of any row
    if t.takers.iter().any(|(p, _)| !p.certain) {
        return;
    }
    let mut by_tag: FxHashMap<&str, Vec<&On>> = FxHashMap::default();
    for (p, on) in &t.takers {
        if let Some(tag) = p.after {
            by_tag.entry(tag).or_default().push(on);
        }
    }
    let kinds: FxHashMap<&str, PartKind> = parts.iter().rev().map(|p| (p.0, p.1.kind)).collect();
    let mut left: IndexMap<&str, Vec<&Row>> = IndexMap::new();
    for row in &t.rows.rows {
        let Some(tag) = row.after.as_deref() else {
            continue;
        };
        let takes = |on: &&On| match on {
            Some(points) => points.iter().any(|p| on_band(row, p, env)),
            None => true,
        };
        let taken = by_tag.get(tag).is_some_and(|all| all.iter().any(takes));
        if !taken && kinds.contains_key(tag) {
            left.entry(tag).or_default().push(row);
        }
    }
    for (tag, rows) in left {
        let lines: Vec<u64> = rows.iter().map(|r| r.line).collect();
        let file = &t.file.text;
        let so = match rows.len() {
            1 => "the row is not used".to_owned(),
            n => format!("the {n} rows are not used"),
        };
        let kind = kinds[tag];
        let (why, help) = if matches!(kind, PartKind::Antenna | PartKind::Load) {
            (
                format!("Nothing is read after `{tag}`, {}", kind.with_article()),
                "Name the part before it in the column `after`.".to_owned(),
            )
        } else if by_tag.contains_key(tag) {
            other_band(tag, file, &rows, env)
        } else {
            (
                format!("No `readings from \"{file}\"` stands after `{tag}` in a transmit chain"),
                format!("Write `readings from \"{file}\"` below `{tag}` in its chain."),
            )
        };
        out.push(
            Diagnostic::new(
                &codes::READING_NOT_USED,
                t.file.loc,
                format!("In `{file}`, {}: {why}; {so}.", lines_words(&lines)),
            )
            .at("rows not used")
            .help(help),
        );
    }
}

/// Why rows on another band are not taken, and what to do.
fn other_band(tag: &str, file: &str, rows: &[&Row], env: &Env) -> (String, String) {
    let mut bands: Vec<String> = Vec::new();
    let mut unknown: Option<&str> = None;
    for r in rows {
        let band = match (&r.band, r.hz) {
            (Some(b), _) => {
                if band_named(b, env).is_none() {
                    unknown = unknown.or(Some(b));
                }
                format!("`{b}`")
            }
            (None, Some((hz, _))) => frequency(hz),
            (None, None) => continue,
        };
        if !bands.contains(&band) && bands.len() <= BANDS {
            bands.push(band);
        }
    }
    let more = if bands.len() > BANDS { " and on" } else { "" };
    bands.truncate(BANDS);
    let bands = bands.join(", ");
    let help = match unknown {
        Some(b) => {
            let near = nearest(b, env.bands.keys().map(AsRef::as_ref));
            let near = near.map_or_else(String::new, |n| format!(" Did you mean `{n}`?"));
            format!("Band `{b}` is not defined.{near}")
        }
        None => format!("Write `readings from \"{file}\"` below `{tag}` in a chain on that band."),
    };
    (
        format!("No chain with `readings from \"{file}\"` after `{tag}` is on {bands}{more}"),
        help,
    )
}
