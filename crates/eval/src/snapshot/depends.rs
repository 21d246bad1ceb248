//! The names of definitions that took part in an item.

use downlead_base::Diagnostic;
use downlead_station::Env;
use downlead_station::model::Station;
use rustc_hash::FxHashSet;

use crate::instrument::unknown_instrument;
use crate::point::unknown_band;
use crate::result::ItemResult;

/// Notes every name of a definition that took part.
pub(super) fn depends(
    station: Option<&Station>,
    chains: &[downlead_station::model::Chain],
    env: &Env,
    r: &mut ItemResult,
) {
    use downlead_station::model::{BandRef, Figure, Name, PartData, Step, When};
    let mut names: FxHashSet<(u8, Box<str>)> = FxHashSet::default();
    // a figure on a band that is not defined would never hold, and nobody would see it
    let mut unknown: Vec<Diagnostic> = Vec::new();
    let mut add = |k: u8, n: &Name| {
        match k {
            1 if env.band(&n.text).is_none() => unknown.extend(unknown_band(n, env)),
            5 if env.instrument(&n.text).is_none() && !env.is_broken(&n.text) => {
                unknown.push(unknown_instrument(n, env))
            }
            _ => {}
        }
        names.insert((k, n.text.clone()));
    };
    fn figures(f: &[Figure], add: &mut dyn FnMut(u8, &Name)) {
        for f in f {
            if let When::Bands(b) = &f.when {
                b.iter().for_each(|n| add(1, n));
            }
            if let Some(i) = &f.meta.instrument {
                add(5, i);
            }
        }
    }
    fn files(f: &[downlead_station::model::NetworkFile], add: &mut dyn FnMut(u8, &Name)) {
        f.iter()
            .for_each(|n| figures(std::slice::from_ref(&n.figure), add));
    }
    fn device(d: &downlead_station::model::Device, add: &mut dyn FnMut(u8, &Name)) {
        d.class.iter().for_each(|n| add(4, n));
        d.ports.iter().for_each(|q| {
            figures(&q.loss, add);
            figures(&q.rejects, add);
            files(&q.network, add);
        });
        figures(&d.swr, add);
        figures(&d.gain, add);
        d.excess
            .iter()
            .for_each(|x| figures(std::slice::from_ref(x), add));
    }
    fn part(p: &downlead_station::model::Part, add: &mut dyn FnMut(u8, &Name)) {
        match &p.data {
            PartData::Line(l) => {
                l.cable.iter().for_each(|n| add(2, n));
                for f in [&l.loss, &l.swr, &l.added, &l.wet] {
                    figures(f, add);
                }
                files(&l.network, add);
            }
            PartData::Connector(_, n) => add(3, n),
            PartData::Device(d) => device(d, add),
            PartData::Antenna(a) => {
                a.gain
                    .iter()
                    .for_each(|g| figures(std::slice::from_ref(&g.figure), add));
                figures(&a.swr, add);
                files(&a.network, add);
                a.impedance
                    .iter()
                    .for_each(|z| figures(std::slice::from_ref(&z.resistance), add));
            }
            PartData::Transmitter(t) => t
                .power
                .iter()
                .for_each(|x| figures(std::slice::from_ref(&x.0), add)),
            PartData::Receiver(_) | PartData::Broken => {}
        }
    }
    fn steps(s: &[Step], add: &mut dyn FnMut(u8, &Name)) {
        use downlead_station::model::Node;
        for s in s {
            match s {
                Step::Part { part: p, branches } => {
                    part(p, add);
                    branches.iter().for_each(|b| steps(&b.steps, add));
                }
                Step::Use { branches, .. } => branches.iter().for_each(|b| steps(&b.steps, add)),
                Step::Node(n, _) => {
                    let on = match &**n {
                        Node::Read { on, meta, .. } => {
                            meta.instrument.iter().for_each(|i| add(5, i));
                            on
                        }
                        Node::Log { on, instrument, .. } => {
                            instrument.iter().for_each(|i| add(5, i));
                            on
                        }
                        Node::Expect { on, .. } | Node::Limit { on, .. } => on,
                    };
                    on.iter().for_each(|b| add(1, b));
                }
                Step::Broken(_) => {}
            }
        }
    }
    if let Some(st) = station {
        st.joins.iter().for_each(|n| add(3, n));
        st.parts.iter().for_each(|p| part(p, &mut add));
    }
    for c in chains {
        for b in &c.bands {
            if let BandRef::Named(n) = b {
                add(1, n);
            }
        }
        steps(&c.steps, &mut add);
    }
    r.diagnostics.append(&mut unknown);
    // the figures of a device definition name bands too
    let classes: Vec<Box<str>> = names
        .iter()
        .filter(|n| n.0 == 4)
        .map(|n| n.1.clone())
        .collect();
    for c in classes.iter().filter_map(|n| env.device(n)) {
        let mut add = |k: u8, n: &Name| {
            names.insert((k, n.text.clone()));
        };
        device(&c.device, &mut add);
    }
    let mut list: Vec<_> = names
        .into_iter()
        .map(|(k, n)| {
            let id = env.identity(k, &n);
            (k, n, id)
        })
        .collect();
    list.sort();
    r.depends = list;
}
