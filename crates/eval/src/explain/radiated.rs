//! What the lines of spots, neighbours and hops come to, and the distance to keep at an antenna's line.

use downlead_base::Loc;
use downlead_station::model::Meaning;

use super::cx::Cx;
use super::spot::Site;
use super::{Derivation, chains_of, hop, spot};
use crate::exposure::Source;
use crate::link::HopResult;
use crate::origin::parts_of;
use crate::places::Places;
use crate::snapshot::{Evaluated, Scope, Snapshot};

/// Derivations on a line of a station or of a link.
pub(super) fn of_line(
    s: &Snapshot,
    places: &Places<'_>,
    (scope, item): (&Scope, &Evaluated),
    (path, line): (&str, u32),
    out: &mut Vec<Derivation>,
) {
    let on_line = |loc: Loc| {
        let (file, _, at) = places.at(loc);
        file == path && at == line
    };
    let (_, low, result) = item;
    if let (Meaning::Station(st), Some(e)) = (&low.meaning, &result.exposure) {
        let parts = parts_of(&low.meaning);
        let chain = |x: &Source| {
            let own = result.chains.iter().zip(chains_of(&low.meaning));
            let (c, model) = own.into_iter().find(|(c, _)| c.name == x.counted.chain)?;
            let band = c.bands.iter().find(|b| b.band == x.band && b.hz == x.hz)?;
            Some(Cx::new(
                places,
                &scope.env,
                &low.meaning,
                &parts,
                (c, model),
                band,
            ))
        };
        let site = Site {
            station: st,
            env: &scope.env,
            chain: &chain,
        };
        let here = e.spots.iter().filter(|r| on_line(r.loc));
        out.extend(here.map(|r| site.spot(r)));
        for b in st.site.beside.iter().filter(|b| on_line(b.loc)) {
            out.extend(spot::beside(&b.station.text, &e.spots));
        }
        let antennas = e.keep_clear.iter().filter(|k| on_line(k.antenna));
        out.extend(antennas.map(spot::keep_clear));
    }
    if let Some(l) = &result.link {
        for h in l.hops.iter().filter(|h| on_line(h.loc)) {
            out.push(hop::hop(l, h, eirp(s, places, h)));
        }
    }
}

/// What the sending chain of a hop radiates.
fn eirp(s: &Snapshot, places: &Places<'_>, h: &HopResult) -> Option<Derivation> {
    let (w, _) = h.eirp?;
    for scope in &s.scopes {
        for (_, low, result) in &scope.items {
            let chains = result.chains.iter().zip(chains_of(&low.meaning));
            let Some((c, model)) = chains.into_iter().find(|(c, _)| c.name == h.places.0) else {
                continue;
            };
            let same = |b: &&crate::result::BandResult| b.hz == h.hz && b.eirp_w == Some(w);
            let band = c.bands.iter().find(same)?;
            let parts = parts_of(&low.meaning);
            let cx = Cx::new(places, &scope.env, &low.meaning, &parts, (c, model), band);
            return cx.radiated_value(false);
        }
    }
    None
}
