//! What is computed from one item.

use downlead_base::{Diagnostic, codes};
use downlead_station::model::{Direction, Meaning, Station};
use downlead_station::{Env, Lowered, library};
use downlead_syntax::Item;
use rustc_hash::FxHashSet;

use super::depends::depends;
use crate::chain::{self, Cx};
use crate::checks;
use crate::network;
use crate::point::points;
use crate::result::{ChainResult, ItemResult};
use crate::stage::Stage;
use crate::walk;

/// Computes the chains of one item.
pub(super) fn evaluate_item(item: &Item, low: &Lowered, env: &Env, stage: Stage) -> ItemResult {
    let mut r = ItemResult::default();
    match &low.meaning {
        Meaning::Station(st) => {
            r.chains = chains_of(st, env, stage, &mut r.diagnostics);
            r.rules = crate::licence::station(st, &r.chains, env, &mut r.diagnostics).map(Box::new);
            crate::form::check(st, &r.chains, env, &mut r.diagnostics);
            crate::site::alone(st, env, &mut r.diagnostics);
            r.exposure = crate::exposure::station(st, &r.chains, env, stage, &mut r.diagnostics)
                .map(Box::new);
            if stage == Stage::Whole {
                r.site = crate::site::plan(st, &r.chains, env, &mut r.diagnostics).map(Box::new);
            }
            crate::shared::check(st, &mut r.chains, &mut r.diagnostics);
            checks::station(st, env, &mut r.diagnostics);
            checks::logs(Some(st), &st.chains, env, &mut r.diagnostics);
            checks::electrical(Some(st), &st.chains, env, &mut r.diagnostics);
        }
        Meaning::Chain(c) => {
            let mut chain = chain_of(
                None,
                c,
                env,
                (stage, &mut { MOST_ROWS }),
                &mut r.diagnostics,
            );
            // a chain by itself has one transmitter
            chain
                .bands
                .iter_mut()
                .for_each(|b| b.loads = Box::default());
            r.chains.push(chain);
            checks::logs(None, std::slice::from_ref(c), env, &mut r.diagnostics);
            checks::electrical(None, std::slice::from_ref(c), env, &mut r.diagnostics);
        }
        Meaning::Session(s) => {
            let found = crate::bench::evaluate(s, env, &mut r.diagnostics);
            r.session = Some(Box::new(found));
        }
        Meaning::Rules(set) => {
            crate::licence::examples(set, env, &mut r.diagnostics);
            checks::replaced(
                "set of rules",
                &set.name,
                library().rules(&set.name.text).is_some(),
                &mut r.diagnostics,
            );
        }
        Meaning::Instrument(i) => crate::certificate::files(i, env, &mut r.diagnostics),
        Meaning::Link(l) => {
            r.link = Some(Box::new(crate::link::link(l, env, &mut r.diagnostics)));
        }
        Meaning::Variant(v) => crate::variant::check(item, v, env, &mut r.diagnostics),
        Meaning::Cable(c) => {
            checks::cable(c, &mut r.diagnostics);
            checks::replaced(
                "cable",
                &c.name,
                library().cable(&c.name.text).is_some(),
                &mut r.diagnostics,
            );
        }
        Meaning::Connector(c) => {
            checks::replaced(
                "connector",
                &c.name,
                library().connector(&c.name.text).is_some(),
                &mut r.diagnostics,
            );
        }
        Meaning::Device(c) => {
            checks::replaced(
                "device",
                &c.name,
                library().device(&c.name.text).is_some(),
                &mut r.diagnostics,
            );
        }
        _ => {}
    }
    r.provisional = stage == Stage::First && !r.chains.is_empty();
    depends(item, low, env, &mut r);
    network::notes(low, env, &mut r.diagnostics);
    network::depends(low, env, &mut r);
    dedup(&mut r.diagnostics);
    // kept for long: no room that is not used
    r.diagnostics.shrink_to_fit();
    r.chains.shrink_to_fit();
    r.depends.shrink_to_fit();
    r
}

/// The chains of a station, in the order of its text.
pub(crate) fn chains_of(
    st: &Station,
    env: &Env,
    stage: Stage,
    out: &mut Vec<Diagnostic>,
) -> Vec<ChainResult> {
    let mut rows = MOST_ROWS;
    st.chains
        .iter()
        .map(|c| chain_of(Some(st), c, env, (stage, &mut rows), out))
        .collect()
}

/// Parts at frequencies that are computed for one station or chain at most: each takes room and time,
/// and bands times chains times parts grow quickly.
const MOST_ROWS: usize = 50_000;

fn too_many(c: &downlead_station::model::Chain, asked: usize) -> Diagnostic {
    Diagnostic::new(
        &codes::CHAIN_TOO_LONG,
        c.name.loc,
        format!(
            "This chain asks for {asked} parts at its frequencies, and with the chains before it that is more than the {MOST_ROWS} that are computed for one station; it is left out."
        ),
    )
    .at("left out")
    .help("Take fewer bands for each chain (a range counts as three frequencies), or divide the station among files.")
}

/// One finding for several bands is one finding.
fn dedup(d: &mut Vec<Diagnostic>) {
    let mut seen = FxHashSet::default();
    d.retain(|d| seen.insert((d.code.id, d.primary.loc, d.message.clone())));
}

fn chain_of(
    station: Option<&Station>,
    c: &downlead_station::model::Chain,
    env: &Env,
    (stage, rows): (Stage, &mut usize),
    out: &mut Vec<Diagnostic>,
) -> ChainResult {
    let stops = walk::walk(&c.steps, station, out);
    let direction: Direction = walk::direction(c, &stops);
    walk::shape(c, &stops, direction, env, out);
    let cx = Cx {
        station,
        chain: c,
        env,
        direction,
        stage,
    };
    let points = points(c, direction, env, out);
    let mut points = crate::licence::with_edges(points, station, direction, env);
    let asked = points.len() * stops.len();
    match rows.checked_sub(asked) {
        Some(left) => *rows = left,
        None => {
            out.push(too_many(c, asked));
            points.clear();
        }
    }
    checks::chain(&cx, &stops, &points, out);
    let mut found = checks::PerPoint::default();
    let mut bands = Vec::with_capacity(points.len());
    for p in &points {
        let mut here = Vec::new();
        bands.push(chain::evaluate(&cx, &stops, p, &mut here));
        found.add(p, here);
    }
    found.finish(out);
    let result = ChainResult {
        name: c.name.loc,
        loc: c.loc,
        direction,
        bands: bands.into(),
    };
    checks::swr_cost(&result, out);
    result
}
