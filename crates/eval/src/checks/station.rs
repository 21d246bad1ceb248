//! Checks of a station as a whole: parts unused, ports shared, two paths.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::frequency;
use downlead_station::Env;
use downlead_station::model::{Chain, Direction, Part, PartData, PartKind, Role, Station};
use rustc_hash::FxHashMap;

use super::age::old_cables;
use crate::walk::{Stop, direction, walk};

/// Checks of a station as a whole.
pub(crate) fn station(st: &Station, env: &Env, out: &mut Vec<Diagnostic>) {
    if st.chains.is_empty() {
        return;
    }
    let mut used: FxHashMap<*const Part, ()> = FxHashMap::default();
    let mut edges: Vec<Edge<'_>> = Vec::new();
    let mut sink = Vec::new();
    for c in &st.chains {
        let stops = walk(&c.steps, Some(st), &mut sink);
        let dir = direction(c, &stops);
        mark(&stops, st, &mut used);
        let mut before: Option<(&Part, Option<&str>)> = None;
        for s in &stops {
            let Stop::Part {
                part, port, loc, ..
            } = s
            else {
                if matches!(s, Stop::Gap) {
                    before = None;
                }
                continue;
            };
            if part.kind.role() == Role::Join && part.tag.is_none() {
                continue;
            }
            let port = port.map(|p| &*p.text);
            if let Some((b, bp)) = before {
                // seen from the antenna, the radio side of a part is what comes before it on
                // transmit and after it on receive
                let (radio, mast, mast_port) = if dir == Direction::Transmit {
                    (b, *part, port)
                } else {
                    (*part, b, bp)
                };
                edges.push(Edge {
                    radio,
                    mast,
                    mast_port,
                    chain: c,
                    loc: *loc,
                    direction: dir,
                });
            }
            before = Some((part, port));
        }
        devices_and_bands(&stops, out);
    }
    for p in &st.parts {
        if let Some(t) = &p.tag {
            // the second of two parts of one name has its own finding
            let first = st
                .parts
                .iter()
                .find(|q| q.tag.as_ref().is_some_and(|x| x.text == t.text));
            if !used.contains_key(&std::ptr::from_ref(p))
                && first.is_some_and(|q| std::ptr::eq(q, p))
            {
                out.push(
                    Diagnostic::new(
                        &codes::PART_UNUSED,
                        t.loc,
                        format!("`{}` is on no chain of station `{}`.", t.text, st.name.text),
                    )
                    .at("not used")
                    .help("A part left out of a chain makes its loss too small."),
                );
            }
        }
    }
    joints(&edges, out);
    two_paths(st, out);
    old_cables(st, env, out);
}

struct Edge<'m> {
    radio: &'m Part,
    mast: &'m Part,
    mast_port: Option<&'m str>,
    chain: &'m Chain,
    loc: Loc,
    direction: Direction,
}

fn mark<'m>(stops: &[Stop<'m>], st: &'m Station, used: &mut FxHashMap<*const Part, ()>) {
    let mut sink = Vec::new();
    for s in stops {
        if let Stop::Part { part, branches, .. } = s {
            used.insert(std::ptr::from_ref(*part), ());
            for b in *branches {
                let inner = walk(&b.steps, Some(st), &mut sink);
                mark(&inner, st, used);
            }
        }
    }
}

/// Two different parts on the radio side of one part need a port each.
fn joints(edges: &[Edge<'_>], out: &mut Vec<Diagnostic>) {
    let mut seen: Vec<(&Edge<'_>, &Edge<'_>)> = Vec::new();
    // of one port one finding, however many feed it
    let mut crowds: Vec<Vec<&Edge<'_>>> = Vec::new();
    for (i, a) in edges.iter().enumerate() {
        for b in &edges[..i] {
            if !std::ptr::eq(a.mast, b.mast)
                || std::ptr::eq(a.radio, b.radio)
                || a.mast_port != b.mast_port
            {
                continue;
            }
            // one chain that passes a part twice is a loop, said as such
            if std::ptr::eq(a.chain, b.chain) {
                continue;
            }
            // receive-only and transmit-only copies of the same pair are one finding
            if seen.iter().any(|(x, y)| {
                std::ptr::eq(x.mast, a.mast)
                    && (std::ptr::eq(x.radio, a.radio) && std::ptr::eq(y.radio, b.radio)
                        || std::ptr::eq(x.radio, b.radio) && std::ptr::eq(y.radio, a.radio))
            }) {
                continue;
            }
            seen.push((a, b));
            let mixed = a.direction != b.direction;
            if mixed {
                out.push(Diagnostic::new(
                    &codes::SHARED_PORT,
                    a.loc,
                    format!(
                        "`{}` and `{}` both go straight to `{}`: a transmitter and a receiver share a line with nothing to part them.",
                        tag(a.radio),
                        tag(b.radio),
                        tag(a.mast)
                    ),
                )
                .at(format!("on chain `{}`", a.chain.name.text))
                .also(b.loc, format!("on chain `{}`", b.chain.name.text))
                .help("Put a duplexer, a circulator or a relay (`switch`) where they meet, and take one of its ports on each chain."));
                continue;
            }
            let at = |e: &&Edge<'_>| std::ptr::eq(e.mast, a.mast) && e.mast_port == a.mast_port;
            let known = crowds.iter().position(|c| c.first().is_some_and(at));
            let place = known.unwrap_or(crowds.len());
            if known.is_none() {
                crowds.push(Vec::new());
            }
            let crowd = &mut crowds[place];
            for e in [b, a] {
                if !crowd.iter().any(|x| std::ptr::eq(x.radio, e.radio)) {
                    crowd.push(e);
                }
            }
        }
    }
    out.extend(crowds.iter().filter_map(|c| crowded(c)));
}

/// Several parts that feed one port.
fn crowded(crowd: &[&Edge<'_>]) -> Option<Diagnostic> {
    let (last, before) = crowd.split_last()?;
    let mut names: Vec<String> = before.iter().map(|e| tag(e.radio)).collect();
    names.dedup();
    let mut d = Diagnostic::new(
        &codes::PORT_USED_TWICE,
        last.loc,
        format!(
            "`{}` and `{}` {} feed `{}` at one port.",
            names.join("`, `"),
            tag(last.radio),
            if names.len() == 1 { "both" } else { "all" },
            tag(last.mast)
        ),
    )
    .at(format!("on chain `{}`", last.chain.name.text))
    .help("Put a combiner, diplexer or switch where they meet, and take one of its ports on each chain.");
    for e in before {
        d = d.also(e.loc, format!("on chain `{}`", e.chain.name.text));
    }
    Some(d)
}

/// The tag of a part, else its kind.
fn tag(p: &Part) -> String {
    p.tag
        .as_ref()
        .map_or_else(|| p.kind.word().to_owned(), |t| t.text.to_string())
}

fn two_paths(st: &Station, out: &mut Vec<Diagnostic>) {
    let mut seen: Vec<(&str, &str, &Chain)> = Vec::new();
    let mut sink = Vec::new();
    for c in &st.chains {
        let stops = walk(&c.steps, Some(st), &mut sink);
        if direction(c, &stops) != Direction::Transmit {
            continue;
        }
        let tags: Vec<&Part> = stops
            .iter()
            .filter_map(|s| {
                if let Stop::Part { part, .. } = s {
                    Some(*part)
                } else {
                    None
                }
            })
            .collect();
        let (Some(tx), Some(ant)) = (tags.first(), tags.last()) else {
            continue;
        };
        if !tx.kind.sends() || ant.kind != PartKind::Antenna {
            continue;
        }
        let (Some(t), Some(a)) = (&tx.tag, &ant.tag) else {
            continue;
        };
        let same = |o: &&(&str, &str, &Chain)| {
            o.0 == &*t.text
                && o.1 == &*a.text
                && o.2
                    .bands
                    .iter()
                    .any(|b| c.bands.contains(b) || band_names_meet(b, &c.bands))
        };
        if let Some(o) = seen.iter().find(same) {
            out.push(
                Diagnostic::new(
                    &codes::TWO_PATHS,
                    c.name.loc,
                    format!("`{}` reaches `{}` by two chains on one band.", t.text, a.text),
                )
                .at("a second path")
                .also(o.2.name.loc, "the first path")
                .help("Say which is in use; a spare path belongs into another file or after a `switch`."),
            );
        }
        seen.push((&t.text, &a.text, c));
    }
}

fn band_names_meet(
    b: &downlead_station::model::BandRef,
    all: &[downlead_station::model::BandRef],
) -> bool {
    use downlead_station::model::BandRef;
    let key = |r: &BandRef| match r {
        BandRef::Named(n) => n.text.clone(),
        BandRef::Frequency(_, n) => n.text.clone(),
    };
    all.iter().any(|x| key(x) == key(b))
}

fn devices_and_bands(stops: &[Stop<'_>], out: &mut Vec<Diagnostic>) {
    for s in stops {
        let Stop::Part { part, .. } = s else { continue };
        let PartData::Device(d) = &part.data else {
            continue;
        };
        let centre = |r: &[(f64, f64)]| r.first().map(|(a, b)| 0.5 * (a + b));
        let centres: Vec<f64> = d.ports.iter().filter_map(|p| centre(&p.passes)).collect();
        let (Some(lo), Some(hi)) = (
            centres.iter().copied().reduce(f64::min),
            centres.iter().copied().reduce(f64::max),
        ) else {
            continue;
        };
        if centres.len() < 2 {
            continue;
        }
        let loc = part.tag.as_ref().map_or(part.loc, |t| t.loc);
        let ratio = hi / lo;
        if part.kind == PartKind::Duplexer && ratio > 1.5 {
            out.push(
                Diagnostic::new(
                    &codes::DUPLEXER_ACROSS_BANDS,
                    loc,
                    format!("A duplexer between {} and {}? Two bands on one line is usually a diplexer.", frequency(lo), frequency(hi)),
                )
                .at("a tuned pair lies within one band"),
            );
        }
        if part.kind == PartKind::Diplexer && ratio < 1.1 {
            out.push(
                Diagnostic::new(
                    &codes::DIPLEXER_FOR_PAIR,
                    loc,
                    format!("A diplexer between {} and {}? A duplexer separates transmit and receive of one band.", frequency(lo), frequency(hi)),
                )
                .at("both in one band"),
            );
        }
    }
}
