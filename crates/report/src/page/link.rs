//! Links: for each hop what is radiated, the path, what arrives, what is needed and what is left.

use downlead_quantity::{db, frequency, number};

use super::note;
use crate::document::{Block, Document, Level, Place, Text};
use crate::shape::link::{HopNotJudged, HopReport, JudgedReport, LinkReport, Links, TerrainReport};
use crate::words::figure::counted;

/// The page.
#[must_use]
pub fn page(all: &Links) -> Document {
    let mut doc = Document {
        title: "Links".to_owned(),
        widest: None,
        blocks: Vec::new(),
    };
    if all.links.is_empty() {
        doc.push(Block::Paragraph(
            "No link in these files: nothing to judge.".into(),
        ));
        return doc;
    }
    let hops = all
        .links
        .iter()
        .flat_map(|l| l.hops.iter().map(move |h| (l, h)));
    let mut answers: Vec<Text> = hops
        .map(|(l, h)| format!("{}, {} to {}: {}", l.name, h.from, h.to, verdict(h)).into())
        .collect();
    let open = all
        .links
        .iter()
        .flat_map(|l| l.not_judged.iter().map(move |h| (l, h)));
    answers.extend(open.map(|(l, h)| format!("{}, {}: {}", l.name, h.hop, not_judged(h)).into()));
    let none = all
        .links
        .iter()
        .filter(|l| l.hops.is_empty() && l.not_judged.is_empty());
    answers.extend(none.map(|l| format!("{}: no hop could be computed", l.name).into()));
    doc.heading(1, counted(all.links.len(), "link"), None);
    doc.push(Block::List(answers));
    for l in &all.links {
        link(&mut doc, l);
    }
    doc
}

fn dbm(x: f64) -> String {
    format!("{} dBm", number(round(x), 6))
}

/// To a tenth.
fn round(x: f64) -> f64 {
    (x * 10.0).round() / 10.0
}

fn tenth(x: f64) -> String {
    format!("{:.1} dB", round(x) + 0.0)
}

fn km(m: f64) -> String {
    format!("{} km", number(m / 1e3, 1))
}

fn verdict(h: &HopReport) -> String {
    let word = h.verdict.words();
    match &h.judged {
        Some(j) => format!(
            "{word}, {} left ± {}{}",
            tenth(j.left_db),
            db(j.uncertainty_db),
            h.missing
                .iter()
                .map(|m| format!("; {m}"))
                .collect::<String>()
        ),
        None if h.missing.is_empty() => word,
        None => format!("{word}: {}", h.missing.join("; ")),
    }
}

fn not_judged(h: &HopNotJudged) -> String {
    format!("not judged: {}", h.why)
}

/// The section of one link.
pub fn link(doc: &mut Document, l: &LinkReport) {
    let at = Place::new(&l.file, l.line);
    let title = l.title.as_ref().map_or(String::new(), |t| format!(", {t}"));
    doc.heading(2, format!("{}{title}", l.name), Some(at));
    for h in &l.hops {
        hop(doc, l, h);
    }
    for h in &l.not_judged {
        let at = Place::new(&l.file, h.line);
        doc.heading(3, h.hop.clone(), Some(at));
        doc.push(Block::Note(Level::Warning, not_judged(h).into()));
    }
    let each = |word: &'static str, all: &[String]| -> Vec<(&'static str, Text)> {
        all.iter().map(|a| (word, a.as_str().into())).collect()
    };
    let mut facts = each("assumed", &l.assumed);
    facts.extend(each("left out", &l.left_out));
    doc.facts(facts);
}

fn hop(doc: &mut Document, l: &LinkReport, h: &HopReport) {
    let at = Place::new(&l.file, h.line);
    doc.heading(
        3,
        format!("{} to {}, {}", h.from, h.to, frequency(h.frequency_hz)),
        Some(at),
    );
    let mut facts: Vec<(&'static str, Text)> = Vec::new();
    if let (Some(e), Some(u)) = (h.eirp_dbm, h.eirp_uncertainty_db) {
        facts.push(("EIRP", format!("{} ± {}", dbm(e), db(u)).into()));
    }
    if let (Some(free), Some(slant)) = (h.free_space_db, h.slant_m) {
        let sight = match h.horizon_m {
            Some(far) => format!(", radio horizon of a smooth earth {}", km(far)),
            None => ", radio horizon not known: a height or the ground is missing".to_owned(),
        };
        facts.push((
            "free space",
            format!("{} over {}{sight}", tenth(free), km(slant)).into(),
        ));
    }
    if let Some(t) = &h.terrain {
        terrain(&mut facts, l, t);
    }
    path(&mut facts, h);
    let ends = ["sending", "receiving"].into_iter().zip(h.patterns_db);
    let taken: Vec<String> = ends
        .filter_map(|(end, db)| {
            Some(format!(
                "{} below the peak of the {end} antenna",
                tenth(db?)
            ))
        })
        .collect();
    if !taken.is_empty() {
        facts.push(("pattern", taken.join(", ").into()));
    }
    if let Some(level) = h.level_dbm {
        let gain = h
            .gain_dbi
            .map_or(String::new(), |g| format!("antenna {} dBi, ", number(g, 3)));
        let lost = h
            .receive_loss_db
            .map_or(String::new(), |x| format!("line {}, ", db(x)));
        facts.push((
            "arrives",
            format!(
                "{} at the receiver ({gain}{lost}half of the places)",
                dbm(level)
            )
            .into(),
        ));
    }
    if let Some(j) = &h.judged {
        needed(&mut facts, h, j);
    }
    facts.push(("verdict", verdict(h).into()));
    doc.facts(facts);
    if let Some(t) = &h.terrain {
        doc.push(picture(l, h, t));
    }
    if !h.coverage.is_empty() {
        let all: Vec<String> = h
            .coverage
            .iter()
            .map(|c| format!("{} at {}", tenth(c.margin_db), km(c.distance_m)))
            .collect();
        note(
            doc,
            format!(
                "margin in free space, so at most, at half of the places: {}",
                all.join(", ")
            ),
        );
    }
    if h.judged.is_none() && !h.missing.is_empty() {
        doc.push(Block::Note(Level::Warning, verdict(h).into()));
    }
}

fn terrain(facts: &mut Vec<(&'static str, Text)>, l: &LinkReport, t: &TerrainReport) {
    let edge = format!(
        "{} by one edge at {}, {} m {} the line, ν {}",
        tenth(t.loss_db),
        km(t.edge_m),
        number(t.above_m.abs(), 1),
        if t.above_m < 0.0 { "below" } else { "above" },
        number(t.nu, 2)
    );
    facts.push(("terrain", edge.into()));
    let close: Vec<String> = t
        .clearances_m
        .iter()
        .filter(|c| c[1] < 0.6 * c[2])
        .map(|c| format!("{} ({})", km(c[0]), number(c[1] / c[2], 2)))
        .collect();
    let clear = match close.len() {
        0 => "everywhere".to_owned(),
        _ => format!("not at {}", close.join(", ")),
    };
    facts.push(("clear of 0.6 F1", clear.into()));
    let other: Vec<String> = t
        .other_k
        .iter()
        .map(|k| format!("{} for k {}", tenth(k[1]), number(k[0], 2)))
        .collect();
    facts.push((
        "k factor",
        format!("{}; {}", number(l.k_factor, 2), other.join(", ")).into(),
    ));
}

fn path(facts: &mut Vec<(&'static str, Text)>, h: &HopReport) {
    let Some(loss) = h.path_loss_db else {
        let why = h.models.first().and_then(|m| m.refused.as_deref());
        if let Some(why) = why {
            facts.push(("path", format!("{} does not hold: {why}", h.model).into()));
        }
        return;
    };
    let others: Vec<String> = h
        .models
        .iter()
        .filter(|m| m.model != h.model)
        .filter_map(|m| Some(format!("{} {}", m.model, tenth(m.loss_db?))))
        .collect();
    let others = match others.len() {
        0 => String::new(),
        _ => format!("; beside it {}", others.join(", ")),
    };
    facts.push((
        "path",
        format!("{} by {}{others}", tenth(loss), h.model).into(),
    ));
}

fn needed(facts: &mut Vec<(&'static str, Text)>, h: &HopReport, j: &JudgedReport) {
    let noise = match (h.degradation_db, h.external_noise_db) {
        (Some(d), Some(e)) => format!(
            ", {} by noise from outside ({} above kT0b, ITU-R P.372)",
            tenth(d),
            tenth(e)
        ),
        (Some(d), None) => format!(", {} by noise from outside, as stated", tenth(d)),
        _ => String::new(),
    };
    facts.push((
        "needed",
        format!(
            "{} for {}: the receiver's {}{noise}",
            dbm(j.needed_dbm),
            j.criterion,
            dbm(j.receiver_dbm)
        )
        .into(),
    ));
    let places = match j.spread_db {
        Some(s) => format!(
            "; {} % of the places take {} ({} spread), left {} ± {}",
            number(100.0 * j.share, 3),
            tenth(j.places_db),
            db(s),
            tenth(j.left_db),
            db(j.uncertainty_db)
        ),
        None => format!(" ± {}", db(j.uncertainty_db)),
    };
    facts.push((
        "margin",
        format!("{} at half of the places{places}", tenth(j.margin_db)).into(),
    ));
}

/// Size of the picture, and the margins of its plot.
const WIDTH: f64 = 720.0;
const HEIGHT: f64 = 240.0;
const LEFT: f64 = 56.0;
const BELOW: f64 = 32.0;

/// The profile with the line of sight and the first Fresnel zone; the ground bulges with the earth.
fn picture(l: &LinkReport, h: &HopReport, t: &TerrainReport) -> Block {
    let length = h.distance_m.unwrap_or(1.0);
    let line = |d: f64| (t.ends_m[0] * (length - d) + t.ends_m[1] * d) / length;
    // ground at the ends, and between them what the clearances say
    let ground_at = |first: bool| {
        let (a, b) = (l.profile_m.first(), l.profile_m.last());
        let p = if first == t.turned { b } else { a };
        p.map_or(0.0, |p| p[1])
    };
    let mut ground = vec![(0.0, ground_at(true))];
    ground.extend(t.clearances_m.iter().map(|c| (c[0], line(c[0]) - c[1])));
    ground.push((length, ground_at(false)));
    let steps = 96;
    let zone = |sign: f64| {
        (0..=steps).map(move |i| {
            let d = length * f64::from(i) / f64::from(steps);
            let f1 = downlead_physics::path::fresnel_radius_m(h.frequency_hz, d, length - d);
            (d, line(d) + sign * f1)
        })
    };
    let upper: Vec<(f64, f64)> = zone(1.0).collect();
    let lower: Vec<(f64, f64)> = zone(-1.0).collect();
    let all = || ground.iter().chain(&upper).chain(&lower).map(|p| p.1);
    let low = all().fold(f64::INFINITY, f64::min).min(0.0);
    let high = all().fold(f64::NEG_INFINITY, f64::max).max(low + 1.0);
    let x = |d: f64| LEFT + d / length * (WIDTH - LEFT - 12.0);
    let y = |m: f64| 8.0 + (high - m) / (high - low) * (HEIGHT - BELOW - 8.0);
    let points = |all: &[(f64, f64)]| {
        let p: Vec<String> = all
            .iter()
            .map(|p| format!("{:.1},{:.1}", x(p.0), y(p.1)))
            .collect();
        p.join(" ")
    };
    let mut area = vec![(0.0, low)];
    area.extend(&ground);
    area.push((length, low));
    let mut ring = upper.clone();
    ring.extend(lower.iter().rev());
    let mut svg = format!(
        "<svg viewBox=\"0 0 {WIDTH} {HEIGHT}\" width=\"{WIDTH}\" height=\"{HEIGHT}\" role=\"img\" font-family=\"sans-serif\" font-size=\"11\">"
    );
    svg += &format!(
        "<polygon points=\"{}\" fill=\"#b9a77c\" stroke=\"#6e5f3a\"/><polygon points=\"{}\" fill=\"#4a7ebb\" fill-opacity=\"0.25\" stroke=\"#4a7ebb\"/>",
        points(&area),
        points(&ring)
    );
    svg += &format!(
        "<polyline points=\"{}\" fill=\"none\" stroke=\"#1c3f66\" stroke-dasharray=\"5 3\"/>",
        points(&[(0.0, t.ends_m[0]), (length, t.ends_m[1])])
    );
    for i in 0..=4 {
        let (d, m) = (
            length * f64::from(i) / 4.0,
            low + (high - low) * f64::from(i) / 4.0,
        );
        svg += &format!(
            "<text x=\"{:.1}\" y=\"{:.1}\" text-anchor=\"{}\">{}</text><text x=\"{:.1}\" y=\"{:.1}\" text-anchor=\"end\">{} m</text>",
            x(d),
            HEIGHT - BELOW + 16.0,
            if i == 4 { "end" } else { "middle" },
            km(d),
            LEFT - 6.0,
            y(m) + 4.0,
            number(m, 0)
        );
    }
    svg += "</svg>";
    Block::Figure {
        svg,
        lines: Vec::new(),
        alt: format!(
            "Ground from {} to {} with the curvature of the earth, the line between the antennas, and the first Fresnel zone at {}.",
            h.from,
            h.to,
            frequency(h.frequency_hz)
        ),
    }
}
