//! `downlead catalogue`: the built-in library, listed, shown and drawn.

mod beside;

use std::fmt::Write as _;
use std::io;

use downlead_quantity::{Dim, UnitId, frequency, number, sig, unit};
use downlead_report::document::{Column, Table};
use downlead_report::write::text::{self, Look};

use crate::args::{CatalogueArgs, Kind};
use crate::fit::options;
use crate::model::catalogue::{self, CableFacts, CablePoint, Entry};
use crate::plot::{Labels, Point, log_log};
use crate::ui::{Outcome, Style, Ui};

/// Frequencies people ask for, Hz; those within a cable's range make its table.
const USUAL: [f64; 14] = [
    1e6, 1.8e6, 3.5e6, 7e6, 10e6, 14e6, 28e6, 50e6, 100e6, 145e6, 435e6, 1e9, 1.3e9, 2.4e9,
];

pub(crate) fn run(args: &CatalogueArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let mut frequencies = Vec::new();
    for text in &args.at {
        match frequency_of(text) {
            Some(hz) => frequencies.push(hz),
            None => {
                ui.complain(&format!(
                    "--at {text}: not a frequency; write it as `145 MHz`"
                ));
                return Ok(Outcome::Trouble);
            }
        }
    }
    let entries = catalogue::entries();
    let kind = args.kind.map(word);
    if args.length.is_some() || args.names.len() > 1 {
        return match beside::compared(args, &entries, frequencies, ui.look()) {
            Ok(out) => ui.print(&out).map(|()| Outcome::Clean),
            Err(why) => {
                ui.complain(&why);
                Ok(Outcome::Trouble)
            }
        };
    }
    let Some(name) = args.names.first().map(String::as_str) else {
        if !frequencies.is_empty() {
            ui.complain("--at needs the name of a cable");
            return Ok(Outcome::Trouble);
        }
        let list = list(&entries, kind, ui.look());
        ui.print(&list)?;
        return Ok(Outcome::Clean);
    };
    let wanted = |e: &&Entry| e.name.eq_ignore_ascii_case(name) && kind.is_none_or(|k| k == e.kind);
    let Some(entry) = entries.iter().find(wanted) else {
        ui.complain(&unknown(name, &entries));
        return Ok(Outcome::Trouble);
    };
    if entry.kind != "cable" && (args.plot || args.network.is_some() || !frequencies.is_empty()) {
        ui.complain(&format!(
            "{name} is of the kind {}; --at, --plot and --network are for cables",
            entry.kind
        ));
        return Ok(Outcome::Trouble);
    }
    if let Some(length) = &args.network {
        let made = network(
            &entry.name,
            length,
            args.temperature.as_deref(),
            frequencies,
        );
        return match made {
            Ok(text) => {
                ui.print(&text)?;
                Ok(Outcome::Clean)
            }
            Err(why) => {
                ui.complain(&why);
                Ok(Outcome::Trouble)
            }
        };
    }
    let mut out = show(entry, ui.style);
    if entry.kind == "cable" {
        cable(&entry.name, &frequencies, args.plot, ui.look(), &mut out);
    }
    ui.print(&out)?;
    Ok(Outcome::Clean)
}

/// A length of a cable as the text of a two-port file.
fn network(
    name: &str,
    length: &str,
    temperature: Option<&str>,
    mut frequencies: Vec<f64>,
) -> Result<String, String> {
    const STEPS: u32 = 200;
    // the same words are read for the same option of `fit`
    let metres = options::length(length).map_err(|e| e.replace("--length", "--network"))?;
    let celsius = temperature.map_or(Ok(20.0), options::temperature)?;
    if frequencies.is_empty() {
        let valid = catalogue::cable_points(name, &[]).and_then(|(facts, _)| facts.valid);
        let (low, high) = valid.unwrap_or((1e6, 1e9));
        let step = libm::log(high / low) / f64::from(STEPS);
        frequencies = (0..=STEPS)
            .map(|i| low * libm::exp(step * f64::from(i)))
            .collect();
    }
    frequencies.sort_by(f64::total_cmp);
    frequencies.dedup();
    let made = catalogue::cable_network(name, metres.value, celsius, &frequencies)
        .ok_or_else(|| format!("{name} has no loss at these frequencies"))?;
    let comments = vec![format!(
        "{} m of {name} at {} °C, computed from the library's figures",
        number(metres.value, 4),
        number(celsius, 1)
    )];
    downlead_touchstone::write(
        &made,
        &downlead_touchstone::WriteOptions {
            comments,
            ..downlead_touchstone::WriteOptions::default()
        },
    )
    .map_err(|e| e.to_string())
}

fn word(kind: Kind) -> &'static str {
    match kind {
        Kind::Cable => "cable",
        Kind::Connector => "connector",
        Kind::Device => "device",
        Kind::Rules => "rules",
    }
}

fn list(entries: &[Entry], kind: Option<&str>, look: Look) -> String {
    let all: Vec<&Entry> = entries
        .iter()
        .filter(|e| kind.is_none_or(|k| k == e.kind))
        .collect();
    let columns: [Column<&Entry>; 3] = [
        Column::left("name", |e| (&e.name).into()),
        Column::left("kind", |e| e.kind.into()),
        Column::left("what it is", |e| (&e.title).into()),
    ];
    text::table(Table::of(&columns, &all, |_| None), look)
}

fn unknown(name: &str, entries: &[Entry]) -> String {
    let mut near: Vec<(f64, &str)> = entries
        .iter()
        .map(|e| (strsim::jaro_winkler(name, &e.name), e.name.as_str()))
        .filter(|(score, _)| *score > 0.8)
        .collect();
    near.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(b.1)));
    let near: Vec<&str> = near.into_iter().take(3).map(|(_, n)| n).collect();
    let near = if near.is_empty() {
        String::new()
    } else {
        format!("; near it: {}", near.join(", "))
    };
    format!("{name} is not in the catalogue{near} (downlead catalogue lists it)")
}

/// The entry as it is written in the library.
fn show(entry: &Entry, style: Style) -> String {
    let mut out = format!(
        "{}\n\n",
        style.faint(&format!("built-in {}:{}", entry.file, entry.line))
    );
    for line in entry.text.trim_end().lines() {
        let _ = writeln!(out, "    {line}");
    }
    if entry.source.is_none() {
        out.push_str("\n  source: none is given\n");
    }
    out
}

/// Facts, loss table and plot of a cable.
fn cable(name: &str, at: &[f64], plot: bool, look: Look, out: &mut String) {
    let Some((facts, _)) = catalogue::cable_points(name, &[]) else {
        return;
    };
    let inside = |f: f64| {
        facts
            .valid
            .is_none_or(|(low, high)| (low..=high).contains(&f))
    };
    let frequencies: Vec<f64> = if at.is_empty() {
        USUAL.into_iter().filter(|f| inside(*f)).collect()
    } else {
        at.to_vec()
    };
    let points = catalogue::cable_points(name, &frequencies)
        .map(|(_, p)| p)
        .unwrap_or_default();
    out.push('\n');
    out.push_str(&facts_line(&facts));
    out.push('\n');
    let points = Table::of(POINTS, &points, |_| None);
    out.push_str(&text::table(points, look));
    if plot {
        out.push('\n');
        out.push_str(&picture(name, &facts));
    }
}

fn facts_line(facts: &CableFacts) -> String {
    let mut out = format!(
        "  {} ohm, velocity factor {}",
        number(facts.z0, 2),
        number(facts.velocity_factor, 3)
    );
    if let Some((low, high)) = facts.valid {
        let _ = write!(out, ", valid {} to {}", frequency(low), frequency(high));
    }
    for (w, hz) in &facts.ratings {
        let at = hz.map_or(String::new(), |hz| format!(" at {}", frequency(hz)));
        let _ = write!(out, ", {} mean{at}", downlead_quantity::power(*w));
    }
    if let Some(v) = facts.voltage {
        let _ = write!(out, ", {} V rms", number(v, 0));
    }
    out + "\n"
}

static POINTS: &[Column<CablePoint>] = &[
    Column::right("frequency", |p| frequency(p.frequency_hz).into()),
    Column::right("dB/100 m", |p| sig(p.loss_db_per_100m, 3).into()),
    Column::right("± (k = 2)", |p| sig(p.u_db_per_100m, 2).into()),
    // 1 ft = 0.3048 m exactly
    Column::right("dB/100 ft", |p| sig(p.loss_db_per_100m * 0.3048, 3).into()),
    Column::left("", |p| match p.inside {
        true => "".into(),
        false => "outside the valid range".into(),
    }),
];

/// Loss against frequency from half the lowest known frequency to twice the highest.
fn picture(name: &str, facts: &CableFacts) -> String {
    const STEPS: u32 = 256;
    let (low, high) = facts.valid.unwrap_or((1e6, 1e9));
    let (from, to) = (low / 2.0, high * 2.0);
    let step = libm::log(to / from) / f64::from(STEPS);
    let frequencies: Vec<f64> = (0..=STEPS)
        .map(|i| from * libm::exp(step * f64::from(i)))
        .collect();
    let points = catalogue::cable_points(name, &frequencies)
        .map(|(_, p)| p)
        .unwrap_or_default();
    let points: Vec<Point> = points
        .iter()
        .map(|p| Point {
            x: p.frequency_hz,
            y: p.loss_db_per_100m,
            inside: p.inside,
        })
        .collect();
    log_log(
        &points,
        Labels {
            y: "loss, dB/100 m",
            x: &frequency,
            range: "valid",
        },
    )
}

/// `145 MHz`, `145MHz`, or a bare number of MHz.
pub(crate) fn frequency_of(text: &str) -> Option<f64> {
    let text = text.trim();
    let split = text
        .find(|c: char| !c.is_ascii_digit() && c != '.')
        .unwrap_or(text.len());
    let (digits, spelling) = text.split_at(split);
    let value: f64 = digits.parse().ok()?;
    let hz = match spelling.trim() {
        "" => value * 1e6,
        spelling => {
            let unit = unit(UnitId::parse(spelling)?);
            if unit.dim != Dim::Frequency {
                return None;
            }
            unit.to_base(value)
        }
    };
    // from mains hum to light: beyond that no line is a line
    (hz.is_finite() && (1.0..1e15).contains(&hz)).then_some(hz)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn frequencies_are_read_as_people_write_them() {
        for (text, hz) in [
            ("145 MHz", 145e6),
            ("145MHz", 145e6),
            ("145.5", 145.5e6),
            ("2.4 GHz", 2.4e9),
            ("500 kHz", 5e5),
        ] {
            let got = frequency_of(text).unwrap();
            assert!((got / hz - 1.0).abs() < 1e-12, "{text}: {got}");
        }
        for text in [
            "",
            "MHz",
            "-5 MHz",
            "5 m",
            "1e9",
            "NaN",
            "inf",
            "0",
            "1.2.3 MHz",
        ] {
            assert_eq!(frequency_of(text), None, "{text}");
        }
    }
}
