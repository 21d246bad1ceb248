//! One figure of a text varied: its place, and the results with other numbers there.
//!
//! The number is replaced in the text itself and evaluated as any text, so a value that is found
//! gives the same result when it is typed.

use downlead_base::{Loc, Span};
use downlead_station::Loader;
use downlead_station::model::{Figure, Meaning, Part, PartData, When};

use crate::snapshot::Snapshot;

/// A number in a text.
#[derive(Clone, Debug, PartialEq)]
pub struct Varied {
    file: usize,
    start: u32,
    /// The number as typed.
    typed: String,
    /// Length of what stands there now, bytes.
    len: u32,
    /// Its value, in its unit.
    pub value: f64,
    /// Its unit as typed.
    pub unit: String,
}

impl Varied {
    /// The figure `TAG.WHAT[@BAND]` of a file: `TX1.power`, `A1.gain@2m`, `M1.length`, `IS1.loss`,
    /// `DU1.high`.
    ///
    /// # Errors
    /// Why there is none, in words for people.
    pub fn find(s: &Snapshot, file: usize, path: &str) -> Result<Varied, String> {
        let (path, band) = match path.split_once('@') {
            Some((p, b)) => (p, Some(b)),
            None => (path, None),
        };
        let Some((tag, what)) = path.split_once('.') else {
            return Err(format!(
                "`{path}` names no figure; write the tag of a part and what of it: `TX1.power`, `A1.gain@2m`, `M1.length`."
            ));
        };
        let parts = parts_of(s, file);
        let named = parts
            .iter()
            .find(|p| p.tag.as_ref().is_some_and(|t| &*t.text == tag));
        let Some(part) = named else {
            let tags: Vec<&str> = parts
                .iter()
                .filter_map(|p| Some(&*p.tag.as_ref()?.text))
                .collect();
            return Err(format!(
                "There is no part `{tag}`; the parts are {}.",
                tags.join(", ")
            ));
        };
        let loc = figure(part, what, band)?;
        let place = s.place(loc).filter(|p| p.0 == file);
        let text = place.and_then(|(_, span)| s.files()[file].text().get(span.range()));
        let (Some((_, span)), Some(text)) = (place, text) else {
            return Err(format!("`{path}` does not stand in this file."));
        };
        let end = text
            .find(|c: char| !(c.is_ascii_digit() || c == '.' || c == '-'))
            .unwrap_or(text.len());
        let (typed, rest) = text.split_at(end);
        let Ok(value) = typed.parse::<f64>() else {
            return Err(format!(
                "`{path}` is not typed as a number (`{text}`), so it cannot be varied."
            ));
        };
        let unit = rest
            .split(['±', ',', ';', '\n'])
            .next()
            .unwrap_or("")
            .trim();
        let unit = unit.split_whitespace().next().unwrap_or("").to_owned();
        Ok(Varied {
            file,
            start: span.start,
            typed: typed.to_owned(),
            len: u32::try_from(end).unwrap_or(0),
            value,
            unit,
        })
    }

    /// Puts a number in its place and evaluates what depends on it.
    pub fn set(&mut self, s: &mut Snapshot, x: f64, loader: &dyn Loader) {
        // the shortest digits that give back the same number, and as typed where it is that
        let text = if x == self.value {
            self.typed.clone()
        } else {
            format!("{x}")
        };
        let span = Span::new(self.start, self.start + self.len);
        s.edit(self.file, span, &text, loader);
        self.len = u32::try_from(text.len()).unwrap_or(0);
    }
}

fn parts_of(s: &Snapshot, file: usize) -> Vec<&Part> {
    let scopes = s.scopes().iter().filter(|x| x.file() == file);
    scopes
        .flat_map(|x| x.items())
        .flat_map(|i| match &i.1.meaning {
            Meaning::Station(st) => &st.parts[..],
            _ => &[],
        })
        .collect()
}

/// Where a figure of a part stands.
fn figure(part: &Part, what: &str, band: Option<&str>) -> Result<Loc, String> {
    let figures: Vec<&Figure> = match (&part.data, what) {
        (PartData::Transceiver(both), "power") => both.0.power.iter().map(|p| &p.0).collect(),
        (PartData::Transmitter(t), "power") => t.power.iter().map(|p| &p.0).collect(),
        (PartData::Antenna(a), "gain") => a.gain.iter().map(|g| &g.figure).collect(),
        (PartData::Line(l), "length") if l.length.is_some() => return Ok(l.length_loc),
        (PartData::Line(l), "loss") => l.loss.iter().collect(),
        (PartData::Device(d), what) => {
            let port = |p: &&downlead_station::model::Port| match &*p.name.text {
                "" => what == "loss",
                name => name == what,
            };
            let port = d.ports.iter().find(port);
            port.map_or_else(Vec::new, |p| p.loss.iter().collect())
        }
        _ => Vec::new(),
    };
    let holds = |f: &&&Figure| match (&f.when, band) {
        (_, None) | (When::Always, _) => true,
        (When::Bands(names), Some(b)) => names.iter().any(|n| &*n.text == b),
        (When::At(_), Some(_)) => false,
    };
    let found: Vec<&&Figure> = figures.iter().filter(holds).collect();
    match found[..] {
        [f] => Ok(f.loc),
        [] => Err(format!(
            "This {} states no `{what}`{}.",
            part.kind.word(),
            band.map_or_else(String::new, |b| format!(" on {b}"))
        )),
        _ => Err(format!(
            "This {} states `{what}` several times; say for which band: `{what}@BAND`.",
            part.kind.word()
        )),
    }
}
