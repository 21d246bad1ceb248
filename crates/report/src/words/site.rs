//! What is said of a site, in words.

use downlead_eval::site::{HIGHEST_ORDER, LeftOut};
use downlead_quantity::{frequency, number};

use crate::shape::site::{HitReport, NotSearchedReport, SiteReport};

/// A width: `12.6 kHz`, or that of a line.
#[must_use]
pub fn width(hz: Option<f64>) -> String {
    match hz {
        Some(hz) if hz > 0.0 => frequency(hz),
        _ => "a line".to_owned(),
    }
}

/// How far a hit is off the middle of the channel.
#[must_use]
pub fn off(h: &HitReport) -> String {
    match h.off_hz.abs() < 0.5 {
        true => "on it".to_owned(),
        false => format!("{} kHz", number(h.off_hz * 1e-3, 4)),
    }
}

/// `carrier`, `order 3`.
#[must_use]
pub fn kind(h: &HitReport) -> String {
    match h.order {
        1 => "carrier".to_owned(),
        n => format!("order {n}"),
    }
}

/// What was searched: carriers and orders.
#[must_use]
pub fn searched(s: &SiteReport) -> Vec<String> {
    let mut out: Vec<String> = s
        .carriers
        .iter()
        .map(|c| match c.width_hz {
            Some(w) => format!("{} on {}, {} wide", c.name, frequency(c.hz), frequency(w)),
            None => format!(
                "{} on {}, width not stated: counted as a line",
                c.name,
                frequency(c.hz)
            ),
        })
        .collect();
    let lowered = match s.order_lowered {
        true => format!(
            "; orders up to {HIGHEST_ORDER} would be too many products, so a hit of a higher order is not found"
        ),
        false => String::new(),
    };
    if s.products > 0 {
        out.push(format!(
            "orders 2 to {}, {} products{lowered}",
            s.order, s.products
        ));
    }
    out
}

/// What was not searched, and why.
#[must_use]
pub fn not_searched(n: &NotSearchedReport) -> String {
    match *n.why {
        LeftOut::Range => format!("chain {}: its band is a range of frequencies", n.name),
        LeftOut::NoFrequency => format!("chain {}: its frequency is not known", n.name),
        LeftOut::NotDefined => format!("station {}: it is not defined", n.name),
    }
}

/// What the station says of its neighbours.
#[must_use]
pub fn neighbours(s: &SiteReport) -> String {
    match (&*s.beside, s.alone, &s.alone_by) {
        ([], true, Some(by)) => format!("no other station, says {by}"),
        ([], true, None) => "no other station".to_owned(),
        ([], false, _) => {
            "not stated: no `beside` and no `alone`, so only the station's own carriers were searched"
                .to_owned()
        }
        (names, ..) => names.join(", "),
    }
}

/// What these results leave open.
pub const CAUTION: &str = "Whether a product is heard depends on where it is made and on the isolation up to the receiver: levels are not judged. Products that joints, guys and masts make are of the same frequencies.";
