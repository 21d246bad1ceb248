//! The stations that stand on the site of another, with what their chains come to.

use downlead_base::Diagnostic;
use downlead_station::Env;
use downlead_station::model::Station;

use crate::result::ChainResult;
use crate::stage::Stage;

/// A station on the site of another, with what its chains come to.
pub(crate) struct Neighbour<'m> {
    /// The station.
    pub(crate) station: &'m Station,
    /// Its chains, in the order of its text.
    pub(crate) chains: Vec<ChainResult>,
}

/// The stations that a station is `beside`, or that say so of themselves, as far as they are defined. What is wrong in them is
/// reported where they are written, so their findings are left out.
pub(crate) fn neighbours<'m>(st: &Station, env: &'m Env, stage: Stage) -> Vec<Neighbour<'m>> {
    env.on_site_of(st)
        .into_iter()
        .map(|station| Neighbour {
            station,
            chains: crate::snapshot::chains_of(station, env, stage, &mut Vec::<Diagnostic>::new()),
        })
        .collect()
}
