//! A chain with its tags resolved: the walk along the cable, and what is wrong with its shape.

use downlead_base::{Diagnostic, Edit, Fix, Loc, codes};
use downlead_station::model::{
    Branch, Chain, Direction, Name, Node, Part, PartData, PartKind, Station, Step,
};
use downlead_station::{Env, library, nearest};
use rustc_hash::FxHashMap;

/// One line of a walk.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Stop<'m> {
    /// A part.
    Part {
        /// The part.
        part: &'m Part,
        /// Port.
        port: Option<&'m Name>,
        /// The chain's line.
        loc: Loc,
        /// Branches of a divider.
        branches: &'m [Branch],
    },
    /// A statement at the node.
    Node(&'m Node, Loc),
    /// A line that could not be understood or resolved.
    Gap,
}

/// Resolves the steps of a chain or branch.
pub(crate) fn walk<'m>(
    steps: &'m [Step],
    station: Option<&'m Station>,
    out: &mut Vec<Diagnostic>,
) -> Vec<Stop<'m>> {
    let mut stops = Vec::with_capacity(steps.len());
    // a long chain asks by hash, a short one needs no table
    let by_tag: Option<FxHashMap<&str, &Part>> = station.filter(|_| steps.len() > 64).map(|s| {
        let tagged = |p: &'m Part| Some((&*p.tag.as_ref()?.text, p));
        // of two of one name the first counts
        s.parts.iter().rev().filter_map(tagged).collect()
    });
    let part_of = |tag: &str| match &by_tag {
        Some(table) => table.get(tag).copied(),
        None => find(station, tag),
    };
    for s in steps {
        stops.push(match s {
            Step::Node(n, loc) => Stop::Node(n, *loc),
            Step::Broken(_) => Stop::Gap,
            Step::Part { part, branches } => Stop::Part {
                part,
                port: None,
                loc: part.loc,
                branches,
            },
            Step::Use {
                tag,
                port,
                loc,
                branches,
            } => match part_of(&tag.text) {
                Some(part) => Stop::Part {
                    part,
                    port: port.as_deref(),
                    loc: *loc,
                    branches,
                },
                None => {
                    unknown(tag, station, out);
                    Stop::Gap
                }
            },
        });
    }
    stops
}

fn find<'m>(station: Option<&'m Station>, tag: &str) -> Option<&'m Part> {
    station?
        .parts
        .iter()
        .find(|p| p.tag.as_ref().is_some_and(|t| &*t.text == tag))
}

fn unknown(tag: &Name, station: Option<&Station>, out: &mut Vec<Diagnostic>) {
    let d = match station {
        None => Diagnostic::new(
            &codes::UNKNOWN_PART,
            tag.loc,
            format!(
                "`{}` is no part: a chain outside a station has its parts written into it.",
                tag.text
            ),
        )
        .at("neither a kind of part nor a tag")
        .help("Written for example `run 28 m of half-inch-foam`."),
        Some(st) => {
            let mut d = Diagnostic::new(
                &codes::UNKNOWN_PART,
                tag.loc,
                format!("Station `{}` has no part `{}`.", st.name.text, tag.text),
            )
            .at("not defined");
            let tags = st
                .parts
                .iter()
                .filter_map(|p| p.tag.as_ref())
                .map(|t| &*t.text);
            // a tag that is nearly spelt so, or a word for a kind of part
            let near = nearest(&tag.text, tags);
            if let Some(n) = near.or_else(|| PartKind::meant(&tag.text)) {
                d = d
                    .help(format!("Did you mean `{n}`?"))
                    .fix(format!("write `{n}`"), tag.loc, n);
            } else if let Some(n) = other_number(tag, st) {
                d = d
                    .help(format!("Did you mean `{n}`?"))
                    .fix(format!("write `{n}`"), tag.loc, n);
            } else {
                let example = PartKind::example_for(&tag.text);
                d = d.help(format!(
                    "Define it in the station, for example `{example}`."
                ));
            }
            d
        }
    };
    out.push(d);
}

/// The one part of the station whose tag has the same letters and another number, and which the
/// chain does not pass already.
fn other_number<'s>(tag: &Name, station: &'s Station) -> Option<&'s str> {
    let letters = |t: &str| t.trim_end_matches(|c: char| c.is_ascii_digit()).to_owned();
    let own = letters(&tag.text);
    let uses = |c: &Chain, is: &dyn Fn(&Name) -> bool| {
        let mut steps = c.steps.iter();
        steps.any(|s| matches!(s, Step::Use { tag, .. } if is(tag)))
    };
    let chain = (station.chains.iter()).find(|c| uses(c, &|t| t.loc == tag.loc))?;
    let alike = |t: &&str| letters(t) == own && !own.is_empty() && **t != *tag.text;
    let mut tags = (station.parts.iter()).filter_map(|p| Some(&*p.tag.as_ref()?.text));
    let near = tags.find(alike)?;
    let only = tags.find(alike).is_none();
    (only && !uses(chain, &|t| &*t.text == near)).then_some(near)
}

/// Direction of a chain: as stated, or from what it begins with.
pub(crate) fn direction(chain: &Chain, stops: &[Stop<'_>]) -> Direction {
    if let Some(d) = chain.direction {
        return d;
    }
    let first = stops.iter().find_map(|s| match s {
        Stop::Part { part, .. } => Some(part.kind),
        _ => None,
    });
    let last = stops.iter().rev().find_map(|s| match s {
        Stop::Part { part, .. } => Some(part.kind),
        _ => None,
    });
    match (first, last) {
        (Some(PartKind::Antenna), _) => Direction::Receive,
        // what a chain begins with counts when both of its ends could begin it
        (Some(first), Some(last)) if last.hears() && !first.sends() => Direction::Receive,
        _ => Direction::Transmit,
    }
}

/// Checks only with what a chain begins and ends.
pub(crate) fn ends(
    chain: &Chain,
    stops: &[Stop<'_>],
    direction: Direction,
    out: &mut Vec<Diagnostic>,
) {
    let gaps = stops.iter().any(|s| matches!(s, Stop::Gap));
    begin_and_end(chain, &rows(stops), direction, gaps, out);
}

/// The parts of a chain: each with its place, whether branches follow it, and its port.
fn rows<'a, 'm>(stops: &[Stop<'m>]) -> Vec<Row<'a, 'm>> {
    stops
        .iter()
        .filter_map(|s| match s {
            Stop::Part {
                part,
                loc,
                branches,
                port,
            } => Some((*part, *loc, !branches.is_empty(), *port)),
            _ => None,
        })
        .collect()
}

/// Checks the shape of a chain that does not depend on frequency.
pub(crate) fn shape(
    chain: &Chain,
    stops: &[Stop<'_>],
    direction: Direction,
    env: &Env,
    out: &mut Vec<Diagnostic>,
) {
    let parts = rows(stops);
    let gaps = stops.iter().any(|s| matches!(s, Stop::Gap));
    begin_and_end(chain, &parts, direction, gaps, out);
    loops(&parts, out);
    ports(&parts, env, out);
    families(stops, env, out);
    for (p, loc, ..) in &parts {
        let bad = match (p.kind, direction) {
            (PartKind::Preamplifier, Direction::Transmit) => {
                Some("A preamplifier in a transmit chain would get the transmitter's whole power.")
            }
            (PartKind::Amplifier, Direction::Receive) => {
                Some("A power amplifier does not work backwards in a receive chain.")
            }
            _ => None,
        };
        if let Some(why) = bad {
            out.push(
                Diagnostic::new(&codes::AMPLIFIER_BACKWARDS, *loc, why)
                    .at(format!("in a {} chain", direction.word()))
                    .help("Put a relay (`switch`) around it and leave it out of this chain, or make it another chain."),
            );
        }
    }
}

type Row<'a, 'm> = (&'m Part, Loc, bool, Option<&'m Name>);

fn begin_and_end(
    chain: &Chain,
    parts: &[Row<'_, '_>],
    direction: Direction,
    gaps: bool,
    out: &mut Vec<Diagnostic>,
) {
    let begin = |k: PartKind| match direction {
        Direction::Transmit => k.sends(),
        Direction::Receive => k == PartKind::Antenna,
    };
    let end = |k: PartKind| match direction {
        Direction::Transmit => k.ends_transmit(),
        Direction::Receive => k.hears() || k == PartKind::Load,
    };
    let (first_words, last_words, example) = match direction {
        Direction::Transmit => ("a transmitter", "an antenna or a load", "antenna 4.5 dBi"),
        Direction::Receive => ("an antenna", "a receiver", "receiver RX1"),
    };
    let starts = parts.first().is_some_and(|p| begin(p.0.kind));
    // a line that was not understood may be the beginning: that is said there
    let lost_in_gap = gaps && !parts.iter().any(|p| begin(p.0.kind));
    if !(starts || lost_in_gap) {
        let loc = parts.first().map_or(chain.loc, |p| p.1);
        out.push(
            Diagnostic::new(
                &codes::CHAIN_WITHOUT_START,
                loc,
                format!(
                    "Chain `{}` begins with no {}; no power can be computed.",
                    chain.name.text,
                    first_words[2..].trim()
                ),
            )
            .at(format!(
                "a {} chain begins with {first_words}",
                direction.word()
            ))
            .help("The lines of a chain stand in the order the power flows."),
        );
    }
    let ended = parts.iter().position(|p| end(p.0.kind) || p.2);
    match ended {
        None if !gaps => {
            let loc = parts.last().map_or(chain.loc, |p| p.1);
            out.push(
                Diagnostic::new(
                    &codes::CHAIN_WITHOUT_END,
                    loc,
                    format!("Chain `{}` ends in nothing.", chain.name.text),
                )
                .at(format!("{last_words} belongs after this"))
                .help(format!("Add the last line, for example `{example}`.")),
            );
        }
        Some(i) if i + 1 < parts.len() => {
            let reversed = i == 0 && parts.last().is_some_and(|p| begin(p.0.kind));
            let mut d = Diagnostic::new(
                &codes::PART_AFTER_END,
                parts[i + 1].1,
                format!(
                    "Nothing follows {}.",
                    if parts[i].2 {
                        "a divider with branches"
                    } else {
                        last_words
                    }
                ),
            )
            .at("after the end")
            .also(parts[i].1, "the chain ends here");
            if reversed {
                d = d.help("The lines stand in the order the power flows.");
                d.fixes
                    .extend(order(parts, "turn the order of the lines round"));
            } else if i + 2 == parts.len() {
                let two = &parts[i..];
                d.fixes
                    .extend(order(two, "let the two lines change places"));
            }
            out.push(d);
        }
        _ => {}
    }
    for p in parts.iter().skip(1) {
        if begin(p.0.kind) && direction == Direction::Transmit {
            out.push(
                Diagnostic::new(&codes::PART_AFTER_END, p.1, "A transmitter stands only at the beginning of a chain.")
                    .at("a second beginning")
                    .help("Several transmitters on one line have a chain each, through the ports of a combiner."),
            );
        }
    }
}

/// Parts of a chain in the reverse order; none unless every line of them names a part.
fn order(parts: &[Row<'_, '_>], title: &str) -> Option<Fix> {
    let line = |p: &Row<'_, '_>| {
        let tag = p.0.tag.as_ref().filter(|_| p.1 != p.0.loc && !p.2)?;
        Some(match p.3 {
            Some(port) => format!("{}.{}", tag.text, port.text),
            None => tag.text.to_string(),
        })
    };
    let lines: Vec<String> = parts.iter().map(line).collect::<Option<_>>()?;
    let from_the_end = lines.into_iter().rev();
    Some(Fix {
        title: title.to_owned(),
        edits: parts
            .iter()
            .zip(from_the_end)
            .filter(|(p, text)| line(p).as_ref() != Some(text))
            .map(|(p, text)| Edit { loc: p.1, text })
            .collect(),
        preferred: false,
    })
}

fn loops(parts: &[Row<'_, '_>], out: &mut Vec<Diagnostic>) {
    for (i, p) in parts.iter().enumerate() {
        let Some(tag) = &p.0.tag else { continue };
        if let Some(first) = parts[..i].iter().find(|q| std::ptr::eq(q.0, p.0)) {
            out.push(
                Diagnostic::new(
                    &codes::CHAIN_LOOP,
                    p.1,
                    format!("The chain passes `{}` twice.", tag.text),
                )
                .at("again here")
                .also(first.1, "first here")
                .help("Two pieces of one kind are two parts with two tags."),
            );
        }
    }
}

fn ports(parts: &[Row<'_, '_>], env: &Env, out: &mut Vec<Diagnostic>) {
    for (p, loc, _, port) in parts {
        let tag = p.tag.as_ref().map_or(p.kind.word(), |t| &t.text);
        let d = match &p.data {
            PartData::Device(d) => d,
            PartData::Broken => continue,
            _ => {
                if let Some(n) = port {
                    out.push(
                        Diagnostic::new(
                            &codes::UNKNOWN_PORT,
                            n.loc,
                            format!("`{tag}` is {} and has no ports.", p.kind.with_article()),
                        )
                        .at("not defined")
                        .also(p.loc, "the part"),
                    );
                }
                continue;
            }
        };
        let list = match &d.class {
            // a definition that is missing has been reported
            Some(n) if d.ports.is_empty() => match env.device(&n.text) {
                Some(c) => &c.device.ports,
                None => continue,
            },
            _ => &d.ports,
        };
        let named: Vec<&str> = list
            .iter()
            .map(|q| &*q.name.text)
            .filter(|n| !n.is_empty())
            .collect();
        match port {
            Some(n) if !list.iter().any(|q| q.name.text == n.text) => {
                let mut diag = Diagnostic::new(
                    &codes::UNKNOWN_PORT,
                    n.loc,
                    format!("`{tag}` has no port `{}`.", n.text),
                )
                .at("not defined");
                diag = match nearest(&n.text, named.iter().copied()) {
                    Some(near) => diag.fix(format!("write `{near}`"), n.loc, near),
                    None => diag,
                };
                if matches!(
                    &*n.text.to_lowercase(),
                    "tx" | "rx" | "transmit" | "receive"
                ) && named.contains(&"high")
                {
                    diag = diag.help("Legs are named by frequency: `high` is the leg of the higher one of the pair.");
                }
                if !named.is_empty() {
                    diag = diag.help(format!("Its ports: {}.", named.join(", ")));
                }
                out.push(diag.also(p.loc, "the part"));
            }
            None if named.len() > 1 => {
                let mut diag = Diagnostic::new(
                    &codes::PORT_NEEDED,
                    *loc,
                    format!(
                        "`{tag}` has the ports {}; which one does this chain take?",
                        named.join(" and ")
                    ),
                )
                .at("no port named")
                .also(p.loc, "the part");
                let end = Loc::new(
                    loc.item,
                    downlead_base::Span::new(loc.span.end, loc.span.end),
                );
                if p.loc == *loc {
                    diag = diag.help(format!(
                        "In a chain a part has one way through. Write it in the station, `{} DU1 {{ … }}`, and here the leg the chain takes: `DU1.{}`.",
                        p.kind.word(),
                        named[0]
                    ));
                } else {
                    for n in named.iter().take(4) {
                        diag = diag.fix(format!("write `{tag}.{n}`"), end, format!(".{n}"));
                    }
                }
                out.push(diag);
            }
            _ => {}
        }
    }
}

/// The name of an adapter between two families, of the files or the library.
fn adapter<'e>(a: &str, b: &str, env: &'e Env) -> Option<&'e str> {
    let own = env.connectors.keys().map(AsRef::as_ref);
    own.chain(library().connector_names())
        .filter(|n| {
            let joins = env.connector(n).and_then(|c| c.families.as_ref());
            joins.is_some_and(|(x, y)| (&**x, &**y) == (a, b) || (&**x, &**y) == (b, a))
        })
        .min()
}

fn families(stops: &[Stop<'_>], env: &Env, out: &mut Vec<Diagnostic>) {
    let mut before: Option<(&str, Loc)> = None;
    for s in stops {
        let Stop::Part { part, loc, .. } = s else {
            continue;
        };
        if let PartData::Connector(_, name) = &part.data {
            // what stands there is what joins the two, if it fits the first; which of several
            // connectors in a row comes first is not told by the text
            let joins = env.connector(&name.text).and_then(|c| c.families.as_ref());
            if let (Some((family, first)), Some((a, b))) = (before, joins)
                && family != &**a
                && family != &**b
            {
                out.push(
                    Diagnostic::new(
                        &codes::CONNECTOR_GAP,
                        *loc,
                        format!("An end of family `{family}` does not fit `{}`.", name.text),
                    )
                    .at(if a == b {
                        format!("of family `{a}`")
                    } else {
                        format!("from `{a}` to `{b}`")
                    })
                    .also(first, format!("ends in `{family}`"))
                    .help("Correct the connector, or the `ends` of the part."),
                );
            }
            before = None;
            continue;
        }
        if let (Some((family, first)), Some(ends)) = (before, &part.ends)
            && family != &*ends.0
        {
            out.push(
                Diagnostic::new(
                    &codes::CONNECTOR_GAP,
                    *loc,
                    format!(
                        "An end of family `{family}` meets one of family `{}`; nothing joins them.",
                        ends.0
                    ),
                )
                .at(format!("begins in `{}`", ends.0))
                .also(first, format!("ends in `{family}`"))
                .help(match adapter(family, &ends.0, env) {
                    Some(a) => format!("Put an adapter between: `adapter {a}`."),
                    None => format!(
                        "Put an adapter between; define it with `joins {family} to {}`.",
                        ends.0
                    ),
                }),
            );
        }
        before = part.ends.as_ref().map(|e| (&*e.1, *loc));
    }
}
