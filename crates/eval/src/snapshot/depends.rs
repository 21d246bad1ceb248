//! The names of definitions that an item uses: what its result rests on, and which are not defined.

use downlead_station::model::{Meaning, Name};
use downlead_station::{Env, Lowered, NameKind, RestsOn};
use downlead_syntax::Item;
use rustc_hash::FxHashSet;

use crate::result::ItemResult;
use crate::unknown::unknown;

/// Notes every name of a definition that the item uses, and points out those that are not defined.
pub(super) fn depends(item: &Item, low: &Lowered, env: &Env, r: &mut ItemResult) {
    // a definition may be used with the bands and instruments of the file that uses it
    let whole = matches!(
        low.meaning,
        Meaning::Station(_)
            | Meaning::Chain(_)
            | Meaning::Session(_)
            | Meaning::Rules(_)
            | Meaning::Link(_)
    );
    let mut names: FxHashSet<(NameKind, &str)> = FxHashSet::default();
    let mut stations: FxHashSet<&str> = FxHashSet::default();
    for m in &low.names {
        let text = item.slice(m.loc.span);
        names.insert((m.kind, text));
        if m.kind == NameKind::Device {
            // the figures of a device definition name bands too
            names.extend(env.used_by_device(text).iter().map(|(k, n)| (*k, &**n)));
        }
        if m.kind == NameKind::Rules {
            // clauses name bands
            names.extend(env.used_by_rules(text).iter().map(|(k, n)| (*k, &**n)));
        }
        if m.kind == NameKind::Station {
            // what a neighbour radiates rests on its cables and devices
            names.extend(env.used_by_station(text).iter().map(|(k, n)| (*k, &**n)));
        }
        // the lines about a site name its stations often: once is enough
        let again = m.kind == NameKind::Station && !stations.insert(text);
        if whole && !again && !env.defines(m.kind, text) {
            let name = Name {
                text: text.into(),
                loc: m.loc,
            };
            r.diagnostics.extend(unknown(m.kind, &name, env));
        }
    }
    if let Meaning::Variant(v) = &low.meaning {
        names.insert((NameKind::Station, &v.of.text));
        if let Some((base, used)) = env.base(&v.of.text) {
            names.extend(used.names.iter().map(|m| (m.kind, base.slice(m.loc.span))));
        }
    }
    if let Meaning::Station(st) = &low.meaning {
        // what stations radiate that say they are on this site
        for n in env.naming(&st.name.text) {
            names.insert((NameKind::Station, n));
            names.extend(env.used_by_station(n).iter().map(|(k, n)| (*k, &**n)));
        }
    }
    let mut list: Vec<_> = names
        .into_iter()
        .filter(|(kind, _)| *kind != NameKind::Let)
        .map(|(kind, n)| {
            let on = RestsOn::Name(kind);
            (on, Box::from(n), env.identity(on, n))
        })
        .collect();
    if let Meaning::Station(st) = &low.meaning {
        let own = &st.name.text;
        list.push((
            RestsOn::Beside,
            own.clone(),
            env.identity(RestsOn::Beside, own),
        ));
    }
    list.sort();
    r.depends = list;
}
