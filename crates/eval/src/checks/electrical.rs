//! A length in wavelengths on more than one frequency.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_quantity::{frequency, number};
use downlead_station::Env;
use downlead_station::model::{Chain, LineLength, Part, PartData, Station, Step};

use crate::point::points;
use crate::walk::{Stop, direction, walk};

/// At most so many frequencies are named and offered.
const NAMED: usize = 4;

/// Points out lines that are cut to a length in wavelengths, not saying at which frequency, and are
/// used on several: a cable has one length.
pub(crate) fn electrical(
    station: Option<&Station>,
    chains: &[Chain],
    env: &Env,
    out: &mut Vec<Diagnostic>,
) {
    let parts = station.map_or(&[][..], |s| &s.parts);
    if !parts.iter().any(|p| uncut(p).is_some()) && !chains.iter().any(|c| any_uncut(&c.steps)) {
        return;
    }
    let mut found: Vec<Uncut<'_>> = Vec::new();
    let mut sink = Vec::new();
    for c in chains {
        let stops = walk(&c.steps, station, &mut sink);
        let at: Vec<f64> = points(c, direction(c, &stops), env, &mut sink)
            .iter()
            .map(|p| p.hz)
            .collect();
        gather(&stops, station, &at, &mut found);
    }
    out.extend(found.iter().filter(|f| f.hz.len() > 1).map(finding));
}

/// A line whose length in wavelengths says no frequency.
struct Uncut<'m> {
    part: &'m Part,
    waves: f64,
    loc: Loc,
    /// Where it is used, Hz.
    hz: Vec<f64>,
}

fn uncut(part: &Part) -> Option<Uncut<'_>> {
    match &part.data {
        PartData::Line(l) => match l.length {
            Some(LineLength::Wavelengths {
                length,
                at_hz: None,
            }) => Some(Uncut {
                part,
                waves: length.value,
                loc: l.length_loc,
                hz: Vec::new(),
            }),
            _ => None,
        },
        _ => None,
    }
}

fn any_uncut(steps: &[Step]) -> bool {
    steps.iter().any(|s| match s {
        Step::Part { part, branches } => {
            uncut(part).is_some() || branches.iter().any(|b| any_uncut(&b.steps))
        }
        Step::Use { branches, .. } => branches.iter().any(|b| any_uncut(&b.steps)),
        _ => false,
    })
}

fn gather<'m>(
    stops: &[Stop<'m>],
    station: Option<&'m Station>,
    at: &[f64],
    found: &mut Vec<Uncut<'m>>,
) {
    for s in stops {
        let Stop::Part { part, branches, .. } = s else {
            continue;
        };
        if let Some(new) = uncut(part) {
            let i = found
                .iter()
                .position(|f| std::ptr::eq(f.part, *part))
                .unwrap_or_else(|| {
                    found.push(new);
                    found.len() - 1
                });
            for hz in at {
                if !found[i].hz.contains(hz) {
                    found[i].hz.push(*hz);
                }
            }
        }
        for b in *branches {
            let inner = walk(&b.steps, station, &mut Vec::new());
            gather(&inner, station, at, found);
        }
    }
}

fn finding(u: &Uncut<'_>) -> Diagnostic {
    let (p, at) = (u.part, &u.hz);
    let who = p.tag.as_ref().map_or(p.kind.word(), |t| &t.text);
    let named: Vec<String> = at.iter().take(NAMED).map(|f| frequency(*f)).collect();
    let more = if at.len() > NAMED {
        format!(" and {} more", at.len() - NAMED)
    } else {
        String::new()
    };
    let end = Loc::new(u.loc.item, Span::new(u.loc.span.end, u.loc.span.end));
    let mut d = Diagnostic::new(
        &codes::WAVELENGTHS_NEED_FREQUENCY,
        u.loc,
        format!(
            "`{who}` is {} wavelengths long at which frequency? It is used at {}{more}, and one piece of cable has another electrical length at each.",
            number(u.waves, 3),
            named.join(", ")
        ),
    )
    .at("cut for which frequency?")
    .help(format!("Say after the length which frequency it was cut for, for example `at {}`, or write its length in metres.", named[0]));
    for f in &named {
        d = d.fix(format!("write `at {f}`"), end, format!(" at {f}"));
    }
    d
}
