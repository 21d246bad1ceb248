//! Checks of chains, stations and definitions that are not results: shape, plausibility, habits
//! that lead astray.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::table::fit_two_term;
use downlead_quantity::{db, frequency, number};
use downlead_station::Env;
use downlead_station::model::{
    BandKind, Bound, Cable, CableLoss, Chain, ConnectorLoss, Direction, Figure, Part, PartData,
    PartKind, Station, When,
};
use rustc_hash::FxHashMap;

use crate::chain::Cx;
use crate::point::Point;
use crate::walk::{Stop, direction, walk};

/// Checks of one chain over all its frequencies.
pub(crate) fn chain(cx: &Cx<'_>, stops: &[Stop<'_>], points: &[Point], out: &mut Vec<Diagnostic>) {
    let parts: Vec<(&Part, Option<&str>, Loc)> = stops
        .iter()
        .filter_map(|s| match s {
            Stop::Part {
                part, port, loc, ..
            } => Some((*part, port.map(|p| &*p.text), *loc)),
            _ => None,
        })
        .collect();
    lengths(cx.chain, &parts, out);
    percents(&parts, out);
    bases(cx, &parts, out);
    many_bands(&parts, points, out);
    adapters(cx.env, stops, points, out);
    let mut found = PerPoint::default();
    for p in points {
        let mut here = Vec::new();
        for (part, port, loc) in &parts {
            pass_band(cx.env, part, *port, *loc, p, &mut here);
            connectors(cx.env, part, *loc, p, &mut here);
        }
        if let Some(name) = cx.station.and_then(|s| s.joins.as_ref()) {
            connector_at(cx.env, &name.text, name.loc, p, &mut here);
        }
        found.add(p, here);
    }
    found.finish(out);
}

/// Findings of one chain over its frequencies: what is the same of one place on several is one
/// finding. Verdicts stay apart: each is a result of its own.
#[derive(Default)]
pub(crate) struct PerPoint {
    list: Vec<(Diagnostic, Vec<String>)>,
}

impl PerPoint {
    pub(crate) fn add(&mut self, point: &Point, found: Vec<Diagnostic>) {
        let merges = [
            &codes::BEYOND_RANGE,
            &codes::UHF_CONNECTOR_HIGH,
            &codes::CONNECTOR_LOSS_HIGH,
            &codes::OUTSIDE_PASS_BAND,
            &codes::LEGS_SWAPPED,
            &codes::NO_FIGURE_FOR_BAND,
            &codes::RATING_EXCEEDED,
            &codes::VOLTAGE_EXCEEDED,
            &codes::FOLDBACK,
        ];
        let words = match point.part {
            Some(p) => format!("{} ({p})", point.band),
            None => point.band.to_string(),
        };
        for d in found {
            let same = self.list.iter_mut().find(|(o, _)| {
                o.code.id == d.code.id
                    && o.primary.loc == d.primary.loc
                    && (o.message == d.message
                        || merges.contains(&o.code)
                        // of a file, one band after the other that it does not reach
                        || o.code.id == codes::NETWORK_FILE.id
                            && o.primary.message == d.primary.message)
            });
            match same {
                Some((o, _)) if o.message == d.message => {}
                Some((o, also)) => {
                    o.severity = o.severity.max(d.severity);
                    if also.last() != Some(&words) {
                        also.push(words.clone());
                    }
                }
                None => self.list.push((d, Vec::new())),
            }
        }
    }

    pub(crate) fn finish(self, out: &mut Vec<Diagnostic>) {
        out.extend(self.list.into_iter().map(|(d, also)| {
            if also.is_empty() {
                d
            } else {
                d.help(format!("The same on {}.", also.join(", ")))
            }
        }));
    }
}

fn adapters(env: &Env, stops: &[Stop<'_>], points: &[Point], out: &mut Vec<Diagnostic>) {
    let mut row: Vec<(&str, Loc)> = Vec::new();
    let end = [None];
    let kinds = stops
        .iter()
        .filter(|s| !matches!(s, Stop::Node(..)))
        .map(|s| match s {
            Stop::Part { part, loc, .. } if part.kind == PartKind::Adapter => match &part.data {
                PartData::Connector(_, n) => Some((&*n.text, *loc)),
                _ => None,
            },
            _ => None,
        });
    for a in kinds.chain(end) {
        if let Some(a) = a {
            row.push(a);
            continue;
        }
        if row.len() >= 3 {
            let hz = points.iter().map(|p| p.hz).fold(0.0, f64::max);
            let loss: f64 = row
                .iter()
                .filter_map(|(n, _)| match env.connector(n)?.loss? {
                    ConnectorLoss::Root(k) => Some(k * libm::sqrt(hz / 1e9)),
                    ConnectorLoss::Constant(l) => Some(l),
                })
                .sum();
            out.push(
                Diagnostic::new(
                    &codes::ADAPTERS_IN_SERIES,
                    row[2].1,
                    format!(
                        "{} adapters in a row lose {} at {}, and are {} pairs that can work loose.",
                        row.len(),
                        db(loss),
                        frequency(hz),
                        2 * row.len()
                    ),
                )
                .at("one after the other")
                .also(row[0].1, "the first")
                .help(
                    "A short `jumper` or `tail` with the right ends does the same with two pairs.",
                ),
            );
        }
        row.clear();
    }
}

/// What an SWR costs, once a chain: with a tuner, without, and what a table would make of it.
pub(crate) fn swr_cost(c: &crate::result::ChainResult, out: &mut Vec<Diagnostic>) {
    use downlead_physics::mismatch::{gamma_from_swr, mismatch_loss};
    if c.direction != Direction::Transmit {
        return;
    }
    let mut worst: Option<(f64, Diagnostic)> = None;
    for b in c
        .bands
        .iter()
        .filter(|b| b.complete && b.branches.is_empty())
    {
        let Some(end) = b
            .nodes
            .last()
            .filter(|n| matches!(n.kind, "antenna" | "load") && n.swr >= 1.5)
        else {
            continue;
        };
        let matched: f64 = b.nodes.iter().map(|n| n.matched_db).sum();
        let loss = |swr: f64| mismatch_loss(gamma_from_swr(swr));
        let swr = number(end.swr, if end.swr < 10.0 { 2 } else { 0 });
        let (difference, words) = if b.tuner {
            let summed = matched + loss(end.swr);
            (
                summed - b.total_db,
                format!(
                    "With SWR {swr} at the {}, {} of matched line become {} on {}, not {}: the tuner sends out again what comes back.",
                    end.kind,
                    db(matched),
                    db(b.total_db),
                    b.band,
                    db(summed)
                ),
            )
        } else {
            let tuned = b.total_db - loss(b.swr);
            (
                b.total_db - tuned,
                format!(
                    "With SWR {swr} at the {}, {} of matched line become {} on {}; with a tuner at the transmitter it would be {}.",
                    end.kind,
                    db(matched),
                    db(b.total_db),
                    b.band,
                    db(tuned)
                ),
            )
        };
        if difference >= 0.05 && worst.as_ref().is_none_or(|w| difference > w.0) {
            let d =
                Diagnostic::new(&codes::SWR_NOT_ADDED, end.chain, words).at(format!("SWR {swr}"));
            worst = Some((difference, d));
        }
    }
    out.extend(worst.map(|w| w.1));
}

/// A definition of one's own under a name of the library.
pub(crate) fn replaced(
    kind: &str,
    name: &downlead_station::model::Name,
    in_library: bool,
    out: &mut Vec<Diagnostic>,
) {
    if in_library {
        out.push(
            Diagnostic::new(
                &codes::LIBRARY_REPLACED,
                name.loc,
                format!("This {kind} takes the place of `{}` in the library, here and in files that use this one.", name.text),
            )
            .at("also in the library")
            .help("Give it a name of its own if that is not meant."),
        );
    }
}

fn lengths(chain: &Chain, parts: &[(&Part, Option<&str>, Loc)], out: &mut Vec<Diagnostic>) {
    let (mut feet, mut metres) = (None, None);
    for (p, ..) in parts {
        if let PartData::Line(l) = &p.data
            && l.length.is_some()
        {
            if l.imperial {
                feet = Some(l.length_loc);
            } else {
                metres = Some(l.length_loc);
            }
        }
    }
    if let (Some(f), Some(m)) = (feet, metres) {
        out.push(
            Diagnostic::new(
                &codes::MIXED_LENGTH_UNITS,
                f,
                format!(
                    "Chain `{}` has lengths in feet and in metres.",
                    chain.name.text
                ),
            )
            .at("in feet or inches")
            .also(m, "in metres"),
        );
    }
}

fn all_losses(p: &Part) -> Vec<&Figure> {
    match &p.data {
        PartData::Line(l) => l.loss.iter().chain(&l.added).collect(),
        PartData::Device(d) => d.ports.iter().flat_map(|q| q.loss.iter()).collect(),
        _ => Vec::new(),
    }
}

fn percents(parts: &[(&Part, Option<&str>, Loc)], out: &mut Vec<Diagnostic>) {
    let hits: Vec<&Figure> = parts
        .iter()
        .filter_map(|(p, ..)| all_losses(p).into_iter().find(|f| f.percent))
        .collect();
    if hits.len() < 2 {
        return;
    }
    let sum: f64 = hits
        .iter()
        .map(|f| 1.0 - downlead_quantity::from_db(-f.value.value))
        .sum();
    let total: f64 = hits.iter().map(|f| f.value.value).sum();
    let mut d = Diagnostic::new(
        &codes::PERCENT_ADDED,
        hits[1].loc,
        format!(
            "Percentages do not add along a chain: these {} come to {} % lost, not {} %.",
            hits.len(),
            number((1.0 - downlead_quantity::from_db(-total)) * 100.0, 1),
            number(sum * 100.0, 1)
        ),
    )
    .at(db(hits[1].value.value))
    .help("Write the losses in dB; those add.");
    for f in &hits {
        d = d.also(f.loc, db(f.value.value));
        d = d.fix(
            format!("write `{} dB`", number(f.value.value, 2)),
            f.loc,
            format!("{} dB", number(f.value.value, 2)),
        );
    }
    out.push(d);
}

fn bases(cx: &Cx<'_>, parts: &[(&Part, Option<&str>, Loc)], out: &mut Vec<Diagnostic>) {
    let (mut typical, mut maximum) = (None, None);
    let mut note = |bound: &Option<(Bound, Option<Loc>)>, fallback: Loc| match bound {
        Some((Bound::Typical, l)) => typical = typical.or(Some(l.unwrap_or(fallback))),
        Some((Bound::Maximum, l)) => maximum = maximum.or(Some(l.unwrap_or(fallback))),
        None => {}
    };
    for (p, _, loc) in parts {
        for f in all_losses(p) {
            note(&f.meta.bound, f.loc);
        }
        if let PartData::Line(l) = &p.data
            && let Some(c) = l.cable.as_ref().and_then(|n| cx.env.cable(&n.text))
        {
            let bound = c.meta.bound.map(|b| (b.0, None));
            note(&bound, *loc);
        }
    }
    if let (Some(t), Some(m)) = (typical, maximum) {
        out.push(
            Diagnostic::new(
                &codes::MIXED_BASIS,
                m,
                format!("Chain `{}` adds a maximum to typical figures: the sum is neither.", cx.chain.name.text),
            )
            .at("a maximum")
            .also(t, "typical")
            .help("For a limit the lowest credible loss counts; for coverage the highest. Use figures of one kind."),
        );
    }
}

fn many_bands(parts: &[(&Part, Option<&str>, Loc)], points: &[Point], out: &mut Vec<Diagnostic>) {
    let lo = points.iter().map(|p| p.hz).fold(f64::INFINITY, f64::min);
    let hi = points.iter().map(|p| p.hz).fold(0.0, f64::max);
    if hi <= 1.5 * lo {
        return;
    }
    for (p, ..) in parts {
        if let PartData::Device(d) = &p.data {
            device_many_bands(p, d, lo, hi, out);
        }
        let PartData::Line(l) = &p.data else { continue };
        if let Some(f) = l
            .loss
            .iter()
            .find(|f| f.when == When::Always && f.value.value > 0.0)
        {
            out.push(
                Diagnostic::new(
                    &codes::ONE_LOSS_MANY_BANDS,
                    f.loc,
                    format!(
                        "A cable cannot lose {} on both {} and {}: the loss grows at least with the root of frequency, here by {} times.",
                        db(f.value.value),
                        frequency(lo),
                        frequency(hi),
                        number(libm::sqrt(hi / lo), 1)
                    ),
                )
                .at("one loss for all bands")
                .help("Give the cable and its length, or a loss `on` each band."),
            );
        }
    }
}

/// A pad is flat by design, a pass band says where a figure holds, and a doubt can cover both.
fn device_many_bands(
    p: &Part,
    d: &downlead_station::model::Device,
    lo: f64,
    hi: f64,
    out: &mut Vec<Diagnostic>,
) {
    if matches!(
        p.kind,
        PartKind::Pad | PartKind::Divider | PartKind::Coupler
    ) {
        return;
    }
    let figures = d
        .ports
        .iter()
        .filter(|q| q.passes.is_empty())
        .flat_map(|q| q.loss.iter());
    for f in figures.filter(|f| f.when == When::Always && f.value.u == 0.0 && f.value.value >= 0.05)
    {
        let tag = p.tag.as_ref().map_or(p.kind.word(), |t| &t.text);
        let mut diag = Diagnostic::new(
            &codes::ONE_LOSS_MANY_BANDS,
            f.loc,
            format!(
                "`{tag}` is to lose {} on both {} and {}; the loss of a {} mostly grows with frequency.",
                db(f.value.value),
                frequency(lo),
                frequency(hi),
                p.kind.word()
            ),
        )
        .at("one loss for all bands")
        .help("Give a loss `on` each band, a table of frequencies, or a ± that covers all of them.");
        diag.severity = downlead_base::Severity::Info;
        out.push(diag);
    }
}

fn inside(ranges: &[(f64, f64)], hz: f64) -> bool {
    ranges.iter().any(|(lo, hi)| (*lo..=*hi).contains(&hz))
}

fn ranges_words(ranges: &[(f64, f64)]) -> String {
    ranges
        .iter()
        .map(|(a, b)| format!("{} to {}", frequency(*a), frequency(*b)))
        .collect::<Vec<_>>()
        .join(", ")
}

fn pass_band(
    env: &Env,
    part: &Part,
    port: Option<&str>,
    loc: Loc,
    point: &Point,
    out: &mut Vec<Diagnostic>,
) {
    let PartData::Device(d) = &part.data else {
        return;
    };
    let ports = if d.ports.is_empty() {
        d.class
            .as_ref()
            .and_then(|n| env.device(&n.text))
            .map_or(&[][..], |c| &c.device.ports)
    } else {
        &d.ports
    };
    let chosen = match port {
        Some(n) => ports.iter().find(|p| &*p.name.text == n),
        None => ports.iter().find(|p| p.name.text.is_empty()),
    };
    let Some(chosen) = chosen else { return };
    let tag = part.tag.as_ref().map_or(part.kind.word(), |t| &t.text);
    if !chosen.passes.is_empty() && !inside(&chosen.passes, point.hz) {
        let other = ports
            .iter()
            .find(|q| q.name.text != chosen.name.text && inside(&q.passes, point.hz));
        match other {
            Some(o) => {
                let mut diag = Diagnostic::new(
                    &codes::LEGS_SWAPPED,
                    loc,
                    format!(
                        "{} goes through `{tag}.{}`, which passes {}; it belongs through `{tag}.{}`.",
                        frequency(point.hz),
                        chosen.name.text,
                        ranges_words(&chosen.passes),
                        o.name.text
                    ),
                )
                .at("the wrong leg: this one stops the carrier")
                .also(part.loc, "the part");
                if port.is_some() {
                    diag = diag
                        .fix(
                            format!("write `{tag}.{}`", o.name.text),
                            loc,
                            format!("{tag}.{}", o.name.text),
                        )
                        .preferred();
                }
                out.push(diag);
            }
            None => out.push(
                Diagnostic::new(
                    &codes::OUTSIDE_PASS_BAND,
                    loc,
                    format!(
                        "`{tag}` passes {}; {} is outside.",
                        ranges_words(&chosen.passes),
                        frequency(point.hz)
                    ),
                )
                .at("outside the pass band")
                .also(part.loc, "the part")
                .help(
                    match [1e3, 1e-3, 1e6, 1e-6]
                        .iter()
                        .find(|k| inside(&chosen.passes, point.hz * **k))
                    {
                        Some(_) => {
                            "The frequency is off by a power of 1000: is it kHz, MHz or GHz?"
                        }
                        None => "Retune it, or correct the frequency; the loss there is not known.",
                    },
                ),
            ),
        }
        return;
    }
    // without pass bands, the names of the legs still say which is the higher one
    if matches!(part.kind, PartKind::Duplexer)
        && chosen.passes.is_empty()
        && let Some(BandKind::Pair {
            transmit: Some(t),
            receive: Some(r),
        }) = env.band(&point.band).map(|b| &b.kind)
    {
        let high = t.max(*r);
        let want = if (point.hz - high).abs() < 1.0 {
            "high"
        } else {
            "low"
        };
        let has = ports.iter().any(|q| &*q.name.text == want);
        if has
            && t != r
            && matches!(&*chosen.name.text, "high" | "low")
            && &*chosen.name.text != want
        {
            out.push(
                Diagnostic::new(
                    &codes::LEGS_SWAPPED,
                    loc,
                    format!(
                        "{} is the {} frequency of band `{}` but goes through `{tag}.{}`.",
                        frequency(point.hz),
                        if want == "high" { "higher" } else { "lower" },
                        point.band,
                        chosen.name.text
                    ),
                )
                .at("the wrong leg: this one stops the carrier")
                .fix(
                    format!("write `{tag}.{want}`"),
                    loc,
                    format!("{tag}.{want}"),
                )
                .preferred(),
            );
        }
    }
}

fn connectors(env: &Env, part: &Part, loc: Loc, point: &Point, out: &mut Vec<Diagnostic>) {
    if let PartData::Connector(_, name) = &part.data {
        connector_at(env, &name.text, loc, point, out);
    }
}

fn connector_at(env: &Env, name: &str, loc: Loc, point: &Point, out: &mut Vec<Diagnostic>) {
    let Some(c) = env.connector(name) else { return };
    if let Some((z, l)) = c.bump {
        if point.hz > 150e6 {
            let bump = downlead_physics::connector::Bump {
                z_ohm: z,
                electrical_m: l,
            };
            let g = bump.gamma(point.hz, 50.0);
            let mut d = Diagnostic::new(
                &codes::UHF_CONNECTOR_HIGH,
                loc,
                format!(
                    "`{name}` is a piece of line of {} ohm: SWR {} and {} reflected at {}.",
                    number(z, 1),
                    number(downlead_physics::mismatch::swr_from_gamma(g), 2),
                    db(bump.loss(point.hz, 50.0)),
                    frequency(point.hz)
                ),
            )
            .at("above 150 MHz")
            .help("Use N or another family of constant impedance.");
            if point.hz > 500e6 {
                d.severity = downlead_base::Severity::Error;
            }
            out.push(d);
        }
    } else if let Some(limit) = c.limit_hz.filter(|l| point.hz > *l) {
        out.push(
            Diagnostic::new(
                &codes::BEYOND_RANGE,
                loc,
                format!(
                    "`{name}` is made for up to {}; {} is above.",
                    frequency(limit),
                    frequency(point.hz)
                ),
            )
            .at("above its highest frequency"),
        );
    }
    if !c.built_in && point.hz < 500e6 {
        let one = match c.loss {
            Some(ConnectorLoss::Root(k)) => k * libm::sqrt(point.hz / 1e9),
            Some(ConnectorLoss::Constant(l)) => l,
            None => 0.0,
        };
        if one > 0.15 {
            out.push(
                Diagnostic::new(
                    &codes::CONNECTOR_LOSS_HIGH,
                    loc,
                    format!(
                        "{} for a pair of `{name}` at {} is {} times the usual {}; overstated loss hides an exceeded limit.",
                        db(one),
                        frequency(point.hz),
                        number(one / (0.05 * libm::sqrt(point.hz / 1e9)), 0),
                        db(0.05 * libm::sqrt(point.hz / 1e9))
                    ),
                )
                .at("more than a good pair loses"),
            );
        }
    }
}

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
            if matches!(part.kind, PartKind::Connector | PartKind::Adapter) && part.tag.is_none() {
                continue;
            }
            let port = port.map(|p| &*p.text);
            if let Some((b, bp)) = before {
                // seen from the antenna, the radio side of a part is what comes before it on
                // transmit and after it on receive
                let (radio, radio_port, mast, mast_port) = if dir == Direction::Transmit {
                    (b, bp, *part, port)
                } else {
                    (*part, port, b, bp)
                };
                edges.push(Edge {
                    radio,
                    radio_port,
                    mast,
                    mast_port,
                    chain: c,
                    loc: *loc,
                    direction: dir,
                });
            }
            before = Some((part, port));
        }
        devices_and_bands(c, &stops, env, out);
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
}

struct Edge<'m> {
    radio: &'m Part,
    radio_port: Option<&'m str>,
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
            let tag = |p: &Part| {
                p.tag
                    .as_ref()
                    .map_or_else(|| p.kind.word().to_owned(), |t| t.text.to_string())
            };
            let mixed = a.direction != b.direction;
            let d = if mixed {
                Diagnostic::new(
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
                .help("Put a duplexer, a circulator or a relay (`switch`) where they meet, and take one of its ports on each chain.")
            } else {
                Diagnostic::new(
                    &codes::PORT_USED_TWICE,
                    a.loc,
                    format!("`{}` and `{}` both feed `{}` at one port.", tag(a.radio), tag(b.radio), tag(a.mast)),
                )
                .at(format!("on chain `{}`", a.chain.name.text))
                .also(b.loc, format!("on chain `{}`", b.chain.name.text))
                .help("Put a combiner, diplexer or switch where they meet, and take one of its ports on each chain.")
            };
            out.push(d);
            let _ = a.radio_port;
        }
    }
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
        if tx.kind != PartKind::Transmitter || ant.kind != PartKind::Antenna {
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
                .help("Say which is in use; a spare path belongs into another file or behind a `switch`."),
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

fn devices_and_bands(c: &Chain, stops: &[Stop<'_>], env: &Env, out: &mut Vec<Diagnostic>) {
    let _ = (c, env);
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
                    format!("A diplexer between {} and {}? Transmit and receive of one band are parted by a duplexer.", frequency(lo), frequency(hi)),
                )
                .at("both in one band"),
            );
        }
    }
}

/// Checks of a cable's definition.
pub(crate) fn cable(c: &Cable, out: &mut Vec<Diagnostic>) {
    if c.meta.source.is_none() && c.loss.is_some() {
        out.push(
            Diagnostic::new(
                &codes::NO_SOURCE,
                c.name.loc,
                format!("Cable `{}` names no source.", c.name.text),
            )
            .at("where are its figures from?")
            .help("Add `source \"document, page\"` to its block."),
        );
    }
    if let Some(CableLoss::Table(points)) = &c.loss {
        let plain: Vec<(f64, f64)> = points.iter().map(|p| (p.0, p.1)).collect();
        if plain.len() >= 4 {
            outlier(c, points, &plain, out);
        }
    }
    implausible(c, out);
}

/// The point without which the others fit far better: most likely a slip of the pen.
fn outlier(c: &Cable, points: &[(f64, f64, Loc)], plain: &[(f64, f64)], out: &mut Vec<Diagnostic>) {
    let Ok(all) = fit_two_term(plain) else { return };
    if all.worst.1.abs() < 0.05 {
        return;
    }
    let mut best: Option<(usize, f64, f64)> = None;
    for i in 0..plain.len() {
        let mut rest = plain.to_vec();
        let gone = rest.remove(i);
        let Ok(fit) = fit_two_term(&rest) else {
            continue;
        };
        let off = gone.1 / fit.coefficients.at(gone.0) - 1.0;
        if best.is_none_or(|b| fit.rms < b.1) {
            best = Some((i, fit.rms, off));
        }
    }
    let Some((i, rms, off)) = best else { return };
    if off.abs() > 0.08 && off.abs() > 5.0 * rms && all.rms > 3.0 * rms {
        out.push(
            Diagnostic::new(
                &codes::SHEET_DOES_NOT_FIT,
                points[i].2,
                format!(
                    "At {} the table of `{}` is {} % {} what its other points say; those follow k1 √f + k2 f within {} %.",
                    frequency(plain[i].0),
                    c.name.text,
                    number(off.abs() * 100.0, 0),
                    if off > 0.0 { "above" } else { "below" },
                    number((rms * 100.0).max(0.1), 1)
                ),
            )
            .at("out of line")
            .help("Compare with the sheet: a digit may be wrong, or a unit."),
        );
    }
}

/// Loss at 100 MHz a good cable of that diameter has at least: copper and air with a thin
/// jacket. Coarse on purpose: only slips of a factor of two and more matter.
fn implausible(c: &Cable, out: &mut Vec<Diagnostic>) {
    let Some(size) = c.size else { return };
    let hz = match &c.loss {
        Some(CableLoss::Table(t)) => t[t.len() / 2].0,
        Some(_) => 100e6,
        None => return,
    };
    let Some(at) = crate::cable::at(c, hz, c.reference_c) else {
        return;
    };
    // 50 ohm, outer conductor 0.9 of the jacket, D/d = 2.3, smooth copper: 36.066/50 (1/d + 1/D)
    // dB/100 m per √MHz with diameters in mm (physics, construction)
    let outer_mm = 0.9 * size * 1e3;
    let floor = 36.066 / 50.0 * (2.3 / outer_mm + 1.0 / outer_mm) * libm::sqrt(hz / 1e6) / 100.0;
    let ratio = at.loss() / floor;
    let per100 = |x: f64| format!("{} dB/100 m", number(x * 100.0, 2));
    let said = if ratio > 5.0 {
        format!(
            "{} times what a cable of {} mm loses at least. Is it dB/100 m rather than dB/100 ft?",
            number(ratio, 1),
            number(size * 1e3, 1)
        )
    } else if ratio < 0.7 {
        format!(
            "less than copper of {} mm can do ({}). Is it dB/100 ft rather than dB/100 m?",
            number(size * 1e3, 1),
            per100(floor)
        )
    } else {
        return;
    };
    out.push(
        Diagnostic::new(
            &codes::LOSS_RATE_IMPLAUSIBLE,
            c.loss_loc,
            format!(
                "Cable `{}` loses {} at {}: {said}",
                c.name.text,
                per100(at.loss()),
                frequency(hz)
            ),
        )
        .at("cannot be right for this size"),
    );
}
