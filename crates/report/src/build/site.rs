//! What the carriers of a site do to the receive channels of a station.

use downlead_eval::Places;
use downlead_eval::site::{HIGHEST_ORDER, Neighbours, SiteResult};

use crate::shape::site::{ChannelReport, HitReport, NotSearchedReport, ReceiverReport, SiteReport};
use crate::shape::word::Word;

/// The site of a station.
pub(super) fn site(places: &Places<'_>, s: &SiteResult) -> SiteReport {
    let (mut beside, mut alone_by) = (Vec::new(), None);
    match &s.neighbours {
        Neighbours::Beside(names) => beside.extend(names.iter().map(ToString::to_string)),
        Neighbours::Alone(by) => alone_by = by.as_ref().map(ToString::to_string),
        Neighbours::NotStated => {}
    }
    let hits = s.hits.iter().map(|h| {
        let channel = &s.channels[h.channel];
        HitReport {
            receiver: channel.name.to_string(),
            receiver_hz: channel.hz,
            product: s.formula(h),
            order: h.order(),
            hz: h.hz,
            off_hz: h.hz - channel.hz,
            width_hz: h.width_hz,
        }
    });
    SiteReport {
        beside,
        alone: matches!(s.neighbours, Neighbours::Alone(_)),
        alone_by,
        carriers: s
            .carriers
            .iter()
            .map(|c| ChannelReport {
                name: c.words(),
                hz: c.hz,
                width_hz: c.width_hz,
            })
            .collect(),
        receivers: s
            .channels
            .iter()
            .map(|c| ReceiverReport {
                name: c.name.to_string(),
                hz: c.hz,
                width_hz: c.width_hz,
                found: c.found,
            })
            .collect(),
        not_searched: s
            .left_out
            .iter()
            .map(|(name, why)| NotSearchedReport {
                name: name.to_string(),
                why: Word(*why),
            })
            .collect(),
        order: s.order,
        order_lowered: s.order < HIGHEST_ORDER,
        products: s.products,
        intermodulation: hits.collect(),
        isolations: super::desense::isolations(places, s),
        desense: super::desense::desense(places, s),
    }
}
