//! The frequency plan of a site: which carriers, harmonics and products fall into the receive
//! channels of a station.

use downlead_base::{Diagnostic, Severity, codes};
use downlead_physics::site as physics;
use downlead_quantity::frequency;
use downlead_station::Env;
use downlead_station::model::Station;

use super::carriers::Gathered;
use super::desense;
use super::{HIGHEST_ORDER, Hit, LISTED_HITS, LeftOut, Neighbours, SiteResult};
use crate::result::ChainResult;

/// Products searched of a site at most: about half a second.
const MOST_PRODUCTS: u64 = 50_000_000;

/// Products up to this order have a finding, higher ones are listed only.
const POINTED_OUT: u32 = 3;

/// Frequencies that are as good as equal, Hz.
const EQUAL_HZ: f64 = 1e-3;

/// Searches the site of a station; none where it has no receive channel, or nothing sends, and no desense is limited.
pub(crate) fn plan(
    st: &Station,
    chains: &[ChainResult],
    env: &Env,
    out: &mut Vec<Diagnostic>,
) -> Option<SiteResult> {
    let isolations = desense::check_isolations(st, env, out);
    desense::offsets(st, env, out);
    let mut all = Gathered::default();
    all.station(st, false, env);
    let desense = desense::desense(st, chains, env);
    // a limit has its verdict also where nothing sends, or may send anywhere
    let limited = desense.iter().any(|d| d.limit.is_some());
    if all.channels.is_empty() && !limited {
        return None;
    }
    let others = env.on_site_of(st);
    for other in &others {
        all.station(other, true, env);
    }
    for b in &st.site.beside {
        if env.station(&b.station.text).is_none() {
            let name = b.station.text.clone();
            all.left_out.push((name, LeftOut::NotDefined));
        }
    }
    if all.carriers.is_empty() && !limited {
        return None;
    }
    let named = st.site.beside.iter().map(|b| &b.station.text);
    let naming = others
        .iter()
        .map(|o| &o.name.text)
        .filter(|n| st.site.beside.iter().all(|b| b.station.text != **n));
    let beside: Box<[_]> = named.chain(naming).cloned().collect();
    let neighbours = match &st.site.alone {
        _ if !beside.is_empty() => Neighbours::Beside(beside),
        Some(a) => Neighbours::Alone(a.by.clone()),
        None => Neighbours::NotStated,
    };
    let count = all.carriers.len();
    let orders = physics::orders_within(count, HIGHEST_ORDER, MOST_PRODUCTS);
    let mut site = SiteResult {
        neighbours,
        order: *orders.end(),
        products: orders.map(|o| physics::count_products(count, o)).sum(),
        carriers: all.carriers.into(),
        channels: all.channels.into(),
        left_out: all.left_out.into(),
        hits: Box::default(),
        isolations,
        desense,
    };
    desense::findings(&site.desense, out);
    desense::guesses(st, env, &site.desense, out);
    search(&mut site);
    findings(&site, out);
    Some(site)
}

fn search(site: &mut SiteResult) {
    let width = |w: Option<f64>| w.unwrap_or(0.0);
    let carriers: Vec<physics::Channel> = site
        .carriers
        .iter()
        .map(|c| physics::Channel {
            hz: c.hz,
            width_hz: width(c.width_hz),
        })
        .collect();
    let channels: Vec<physics::Channel> = site
        .channels
        .iter()
        .map(|c| physics::Channel {
            hz: c.hz,
            width_hz: width(c.width_hz),
        })
        .collect();
    let mut found = vec![0_u64; channels.len()];
    let mut hits = Vec::new();
    let mut note = |channel: usize, terms: &[(usize, i32)], hz: f64, width_hz: f64| {
        found[channel] += 1;
        if found[channel] <= LISTED_HITS {
            hits.push(Hit {
                channel,
                terms: terms.into(),
                hz,
                width_hz,
            });
        }
    };
    for (i, c) in carriers.iter().enumerate() {
        for (k, r) in channels.iter().enumerate() {
            for n in 1..=HIGHEST_ORDER as i32 {
                let (hz, width_hz) = (f64::from(n) * c.hz, f64::from(n) * c.width_hz);
                let off = (hz - r.hz).abs();
                // one's own carrier on the receive frequency is simplex
                let simplex = n == 1 && off <= EQUAL_HZ && site.carriers[i].station.is_none();
                if off <= 0.5 * (width_hz + r.width_hz) + EQUAL_HZ && !simplex {
                    note(k, &[(i, n)], hz, width_hz);
                }
            }
        }
    }
    physics::products_in_channels(&carriers, &channels, 2..=site.order, |channel, p| {
        note(channel, p.terms, p.hz, p.width_hz);
    });
    hits.sort_by_key(|h| (h.channel, h.terms.len() > 1, h.order()));
    site.hits = hits.into();
    for (channel, found) in site.channels.iter_mut().zip(found) {
        channel.found = found;
    }
}

/// One finding for each channel that a carrier, a harmonic or a product of low order falls into.
fn findings(site: &SiteResult, out: &mut Vec<Diagnostic>) {
    for (k, channel) in site.channels.iter().enumerate() {
        let hits: Vec<&Hit> = site
            .hits
            .iter()
            .filter(|h| h.channel == k && (h.terms.len() == 1 || h.order() <= POINTED_OUT))
            .collect();
        let Some(first) = hits.first() else { continue };
        let mut what = site.formula(first);
        if let [(_, 1)] = *first.terms {
            what = format!("the carrier {what}");
        }
        let others = match channel.found - 1 {
            0 => String::new(),
            1 => " One more falls into it.".to_owned(),
            n => format!(" {n} more fall into it."),
        };
        let message = format!(
            "{} is received on {}, and {what} falls on {}.{others}",
            channel.name,
            frequency(channel.hz),
            frequency(first.hz),
        );
        let mut d = Diagnostic::new(&codes::FREQUENCY_PLAN, channel.chain, message)
            .at("this receive channel");
        // a product or harmonic may be too weak to be heard; a carrier in the channel is not
        if first.order() > 1 {
            d.severity = Severity::Info;
        }
        for (index, _) in &*first.terms {
            let c = &site.carriers[*index];
            d = d.also(c.chain, format!("{} on {}", c.words(), frequency(c.hz)));
        }
        out.push(d.help(
            "Choose another frequency, or see by level whether filters and isolators keep it out: how strong it is at the receiver is not judged here.",
        ));
    }
}
