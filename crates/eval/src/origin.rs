//! Where figures come from, in words: causes of uncertainty, assumptions, sources.

use downlead_base::Loc;
use downlead_station::Env;
use downlead_station::model::{Meaning, Part, PartData, Step};
use rustc_hash::FxHashMap;

use crate::assume::Assumed;
use crate::cable::CableAt;
use crate::places::Places;
use crate::result::{BandResult, CauseName, NodeResult};

/// All parts of an item by the place of their statement.
#[must_use]
pub fn parts_of(meaning: &Meaning) -> FxHashMap<Loc, &Part> {
    let mut m = FxHashMap::default();
    fn steps<'m>(s: &'m [Step], m: &mut FxHashMap<Loc, &'m Part>) {
        for s in s {
            match s {
                Step::Part { part, branches } => {
                    m.insert(part.loc, part);
                    branches.iter().for_each(|b| steps(&b.steps, m));
                }
                Step::Use { branches, .. } => branches.iter().for_each(|b| steps(&b.steps, m)),
                _ => {}
            }
        }
    }
    match meaning {
        Meaning::Station(st) => {
            for p in &st.parts {
                m.insert(p.loc, p);
            }
            st.chains.iter().for_each(|c| steps(&c.steps, &mut m));
        }
        Meaning::Chain(c) => steps(&c.steps, &mut m),
        _ => {}
    }
    m
}
impl BandResult {
    /// What was assumed, in sentences.
    #[must_use]
    pub fn assumptions(&self, places: &Places<'_>) -> Vec<String> {
        assumptions(places, &self.assumptions)
    }

    /// What was assumed, each with the place of the part it concerns.
    #[must_use]
    pub fn assumed(&self) -> &[(Assumed, Loc)] {
        &self.assumptions
    }

    /// Causes of the uncertainty in words, largest first, each with its standard uncertainty in dB.
    #[must_use]
    pub fn causes(&self, places: &Places<'_>, meaning: &Meaning) -> Vec<(String, f64)> {
        let parts = parts_of(meaning);
        self.budget
            .iter()
            .map(|i| {
                (
                    cause_words(places, &parts, i.cause.words(), &i.name),
                    i.standard_db,
                )
            })
            .collect()
    }
}

impl crate::bench::result::SessionResult {
    /// What was assumed, in sentences.
    #[must_use]
    pub fn assumptions(&self, places: &Places<'_>) -> Vec<String> {
        assumptions(places, &self.assumptions)
    }
}
/// The name of the part whose statement or figure is at a place.
fn owner(places: &Places<'_>, parts: &FxHashMap<Loc, &Part>, loc: Loc) -> String {
    // figures lie within their part's statement or block: the last part that begins before
    let part = parts
        .values()
        .filter(|p| p.loc.item == loc.item && p.loc.span.start <= loc.span.start)
        .max_by_key(|p| p.loc.span.start);
    match part {
        Some(p) => p.tag.as_ref().map_or_else(
            || format!("the {} of line {}", p.kind.word(), places.line(p.loc)),
            |t| t.text.to_string(),
        ),
        // a figure of a definition is that of all its examples
        None => places
            .definition(loc)
            .unwrap_or_else(|| places.text(loc))
            .to_owned(),
    }
}

/// A cause of uncertainty: `words` and the name of the part or definition.
#[must_use]
pub fn cause_words(
    places: &Places<'_>,
    parts: &FxHashMap<Loc, &Part>,
    words: &str,
    name: &CauseName,
) -> String {
    match cause_name(places, parts, name) {
        n if n.is_empty() => words.to_owned(),
        n => format!("{words} {n}"),
    }
}

/// Name of the part or definition a cause belongs to; empty if there is none.
#[must_use]
pub fn cause_name(places: &Places<'_>, parts: &FxHashMap<Loc, &Part>, name: &CauseName) -> String {
    match name {
        CauseName::At(l) => owner(places, parts, *l),
        CauseName::Named(n) => n.to_string(),
        CauseName::None => String::new(),
    }
}

/// Sentences, one a kind, with the parts it concerns.
#[must_use]
pub fn assumptions(places: &Places<'_>, list: &[(Assumed, Loc)]) -> Vec<String> {
    let mut kinds: Vec<Assumed> = list.iter().map(|a| a.0).collect();
    kinds.sort_unstable();
    kinds.dedup();
    kinds
        .into_iter()
        .map(|k| {
            let who: Vec<String> = list
                .iter()
                .filter(|a| a.0 == k)
                .map(|a| who(places, a.1))
                .collect();
            k.words(&who.join(", "))
        })
        .collect()
}

/// The text at a place where it is one word, else its first word with the line.
#[must_use]
pub fn who(places: &Places<'_>, loc: Loc) -> String {
    let text = places.text(loc).trim();
    if text.contains([' ', '\n']) {
        let first = text.split_whitespace().next().unwrap_or("part");
        return format!("the {first} of line {}", places.line(loc));
    }
    text.to_owned()
}
/// The cable of a part at a frequency, where its figures are those of the cable.
#[must_use]
pub fn line_of_cable(part: &Part, env: &Env, b: &BandResult) -> Option<CableAt> {
    let PartData::Line(l) = &part.data else {
        return None;
    };
    if l.broken || crate::network::file_of(part, None, &point(env, b), env).is_some() {
        return None;
    }
    let cable = env.cable(&l.cable.as_ref()?.text)?;
    // neither depends on the temperature
    crate::cable::at_in(cable, b.hz, cable.reference_c, &env.attachments)
}
fn point(env: &Env, b: &BandResult) -> crate::point::Point {
    crate::point::Point {
        band: b.band.clone(),
        part: b.point,
        hz: b.hz,
        named: env.band(&b.band).is_some(),
    }
}
/// Where the figure of a node comes from, in words.
#[must_use]
pub fn source(
    places: &Places<'_>,
    env: &Env,
    part: Option<&Part>,
    n: &NodeResult,
    b: &BandResult,
) -> Option<String> {
    if n.kind.is_join() {
        let name = places.text(n.def);
        return env
            .connector(name)
            .and_then(|c| c.meta.words())
            .map(|w| format!("{name}: {w}"));
    }
    let part = part?;
    let point = point(env, b);
    let port = n.port().map(|p| places.text(p));
    if let Some(f) = crate::network::file_of(part, port, &point, env) {
        return f.figure.meta.words();
    }
    match &part.data {
        PartData::Line(l) => match &l.cable {
            Some(name) => {
                let c = env.cable(&name.text)?;
                Some(match c.meta.words() {
                    Some(w) => format!("{}: {w}", name.text),
                    None => name.text.to_string(),
                })
            }
            None => part.meta.words(),
        },
        PartData::Connector(_, name) => env
            .connector(&name.text)
            .and_then(|c| c.meta.words())
            .map(|w| format!("{}: {w}", name.text)),
        PartData::Device(d) => {
            let figures = d
                .ports
                .iter()
                .find(|p| port.map_or(p.name.text.is_empty(), |q| *p.name.text == *q))
                .map_or(&[][..], |p| &p.loss);
            let own = crate::point::pick(figures, &point, env).and_then(|p| p.figure.meta.words());
            own.or_else(|| part.meta.words()).or_else(|| {
                let name = d.class.as_ref()?;
                Some(format!(
                    "{}: {}",
                    name.text,
                    env.device(&name.text)?.meta.words()?
                ))
            })
        }
        PartData::Antenna(a) => {
            let g = crate::chain::gain_at(a, &point, env)?;
            let own = a
                .gain
                .iter()
                .find(|x| x.figure.loc == g.loc)
                .and_then(|x| x.figure.meta.words());
            own.or_else(|| part.meta.words())
        }
        _ => part.meta.words(),
    }
}
