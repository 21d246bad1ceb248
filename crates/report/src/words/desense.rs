//! What is said of isolation and desense, in words.

use downlead_eval::site::desense::DesenseVerdict;
use downlead_quantity::{db, frequency, number};

use super::verdict::Judged;
use crate::document::{Run, Sign, Text};
use crate::shape::desense::{
    CarrierReport, DesenseReport, IsolationReport, NoiseReport, RiseReport, SourceReport,
};

impl Judged for DesenseVerdict {
    fn sign(self) -> Sign {
        match self {
            DesenseVerdict::NotMet => Sign::Bad,
            DesenseVerdict::Met => Sign::Good,
            _ => Sign::Open,
        }
    }

    fn words(self) -> &'static str {
        match self {
            DesenseVerdict::NotMet => "not met",
            DesenseVerdict::CannotJudge => "cannot judge",
            DesenseVerdict::CannotTell => "cannot tell",
            DesenseVerdict::AtLimit => "at the limit",
            DesenseVerdict::NoLimit => "no limit",
            DesenseVerdict::MetAlone => "met by what is stated",
            DesenseVerdict::Met => "met",
        }
    }
}

/// One decimal: levels and margins are known no better.
pub(crate) fn tenth(x: f64) -> String {
    // no minus before a zero
    let x = (x * 10.0).round() / 10.0 + 0.0;
    format!("{x:.1}")
}

/// A desense: a tenth where it is above 1 dB, a hundredth below.
pub(crate) fn some(x: f64) -> String {
    match x >= 0.995 {
        true => tenth(x),
        false => format!("{x:.2}"),
    }
}

/// `9.3 dB (6.1 to 12.9)`.
#[must_use]
pub fn rise(r: &RiseReport) -> String {
    match r.high_db - r.low_db < 0.005 {
        true => format!("{} dB", some(r.db)),
        false => format!(
            "{} dB ({} to {})",
            some(r.db),
            some(r.low_db),
            some(r.high_db)
        ),
    }
}

const CANNOT: &str = "cannot judge";

/// A noise that is known, or at most so much as does no harm.
fn told(s: &SourceReport) -> Option<&NoiseReport> {
    s.noise
        .as_ref()
        .filter(|n| !n.at_most || n.over_floor_db < 0.0)
}

/// The same of a carrier.
fn told_carrier(s: &SourceReport) -> Option<&CarrierReport> {
    let cannot = DesenseVerdict::CannotJudge;
    s.carrier.as_ref().filter(|c| c.verdict.0 != cannot)
}

fn most(at_most: bool) -> &'static str {
    if at_most { "at most " } else { "" }
}

/// Noise of a transmitter at the receiver: `-182.6 dBm/Hz`.
#[must_use]
pub fn noise(s: &SourceReport) -> String {
    match told(s) {
        Some(n) => format!("{}{} dBm/Hz", most(n.at_most), tenth(n.dbm_hz)),
        None => CANNOT.to_owned(),
    }
}

/// How that is to the receiver's own noise: `14.7 dB under`.
#[must_use]
pub fn to_floor(s: &SourceReport) -> String {
    told(s).map_or_else(String::new, |n| over(n.over_floor_db))
}

/// Carrier of a transmitter at the receiver: `-39.6 dBm`.
#[must_use]
pub fn carrier(s: &SourceReport) -> String {
    match told_carrier(s) {
        Some(c) => format!("{}{} dBm", most(c.at_most), tenth(c.dbm)),
        None => CANNOT.to_owned(),
    }
}

/// What the receiver withstands at that offset.
#[must_use]
pub fn blocking(s: &SourceReport) -> String {
    let dbm = |c: &CarrierReport| format!("{} dBm", tenth(c.blocking_dbm));
    s.carrier.as_ref().map_or_else(String::new, dbm)
}

/// By how much the carrier is under that: `14.6 dB under ± 4.2 dB`.
#[must_use]
pub fn to_blocking(s: &SourceReport) -> String {
    told_carrier(s).map_or_else(String::new, |c| match c.uncertainty_db > 0.0 {
        true => format!("{} ± {} dB", over(-c.under_db), tenth(c.uncertainty_db)),
        false => over(-c.under_db),
    })
}

/// On which side of another level one is: `14.6 dB under`.
pub(crate) fn over(db_over: f64) -> String {
    let side = if db_over < 0.0 { "under" } else { "over" };
    format!("{} dB {side}", tenth(db_over.abs()))
}

/// Desense of the receiver alone by one transmitter.
#[must_use]
pub fn alone(s: &SourceReport) -> String {
    told(s).map_or_else(String::new, |n| {
        format!("{}{}", most(n.at_most), rise(&n.desense))
    })
}

/// The same over the noise of the site.
#[must_use]
pub fn on_site(s: &SourceReport) -> String {
    let n = told(s).and_then(|n| Some((n.at_most, n.desense_on_site.as_ref()?)));
    n.map_or_else(String::new, |(m, r)| format!("{}{}", most(m), rise(r)))
}

/// Whether a noise or a carrier of it is known.
#[must_use]
pub fn says_something(r: &DesenseReport) -> bool {
    r.sources
        .iter()
        .any(|s| told(s).is_some() || told_carrier(s).is_some())
}

/// Whether a carrier is under the blocking.
#[must_use]
pub fn blocked(s: &SourceReport) -> Text {
    match told_carrier(s) {
        Some(c) => Text(vec![c.verdict.0.run()]),
        None => Text::default(),
    }
}

/// `RX1 on 146.3137 MHz, allowed 1.00 dB (club rule 5)`.
#[must_use]
pub fn channel(r: &DesenseReport) -> String {
    let limit = match (r.limit_db, &r.limit_source) {
        (Some(l), Some(source)) => format!(", allowed {} ({source})", db(l)),
        (Some(l), None) => format!(", allowed {}", db(l)),
        (None, _) => ", no limit stated".to_owned(),
    };
    match r.hz > 0.0 {
        true => format!("{} on {}{limit}", r.receiver, frequency(r.hz)),
        false => format!("{}{limit}", r.receiver),
    }
}

/// The noise of the receiver, alone and on its site.
#[must_use]
pub fn floor(r: &DesenseReport) -> Option<String> {
    let alone = format!("{} dBm/Hz", tenth(r.floor_dbm_hz?));
    let on_site = match (r.floor_on_site_dbm_hz, &r.surroundings, r.external_noise_db) {
        (Some(f), Some(around), Some(e)) => format!(
            "; with {around} noise of {} dB over kT0b at the antenna (ITU-R P.372) {} dBm/Hz",
            tenth(e),
            tenth(f)
        ),
        (Some(f), ..) => format!("; with the noise that was read {} dBm/Hz", tenth(f)),
        _ => String::new(),
    };
    Some(alone + &on_site)
}

/// What all do together.
#[must_use]
pub fn together(r: &DesenseReport) -> Text {
    let words = match (&r.together, r.sources.len()) {
        (Some(t), _) => {
            let over = match r.floor_on_site_dbm_hz {
                Some(_) => "over the noise of the site",
                None => "of the receiver alone",
            };
            let known = |s: &SourceReport| s.noise.as_ref().is_some_and(|n| !n.at_most);
            let which = match r.sources.iter().all(known) {
                true => "",
                false => ", by those whose noise is known",
            };
            format!("{} {over}{which}: ", rise(t))
        }
        (None, 0) => "no transmitter: ".to_owned(),
        (None, _) => "no noise is known: ".to_owned(),
    };
    Text::from(words).and(r.verdict.0.run())
}

/// What would do, or what is needed, of one transmitter: a line of noise, one of the carrier.
#[must_use]
pub fn cures(r: &DesenseReport, s: &SourceReport) -> Vec<String> {
    let mut out = Vec::new();
    if let Some(n) = s.noise.as_ref().filter(|n| !n.at_most) {
        out.extend(noise_cure(r, s, n));
    }
    if let Some(c) = s.carrier.as_ref().filter(|c| !c.at_most) {
        out.extend(carrier_cure(s, c));
    }
    out
}

fn noise_cure(r: &DesenseReport, s: &SourceReport, n: &NoiseReport) -> Option<String> {
    let who = &s.transmitter;
    let at = frequency(r.hz);
    let mut words = match (n.needs_db, n.spare_db) {
        (Some(x), _) if x > 0.0 => {
            format!(
                "noise of {who}: {} dB more at {at}, by a filter or by isolation",
                tenth(x)
            )
        }
        (_, Some(spare)) if spare > 0.0 => {
            let needed = n.way_db - spare;
            let leg = match (&n.leg, n.rejects_db) {
                (Some(leg), Some(x)) => {
                    format!(
                        "; of the {} dB of {leg} {} dB would do",
                        tenth(x),
                        tenth(x - spare)
                    )
                }
                _ => String::new(),
            };
            format!(
                "noise of {who}: {} dB on the way, {} dB needed by itself{leg}",
                tenth(n.way_db),
                tenth(needed)
            )
        }
        (None, Some(spare)) => format!(
            "noise of {who}: at least {} dB more at {at}; the others exceed the limit without it",
            tenth(-spare)
        ),
        _ => return None,
    };
    if let Some(x) = n.desense_by_distance_db
        && let Some(i) = s.isolation_by_distance_db
    {
        words += &format!(
            "; with the {} dB of isolation that the distance gives the receiver alone would lose {} dB",
            tenth(i),
            tenth(x)
        );
    }
    Some(words)
}

fn carrier_cure(s: &SourceReport, c: &CarrierReport) -> Option<String> {
    let who = &s.transmitter;
    if c.verdict.0 == DesenseVerdict::Met {
        let leg = match (&c.leg, c.rejects_db) {
            (Some(leg), Some(x)) => format!(
                "; of the {} dB of {leg} {} dB would do",
                tenth(x),
                tenth(x - c.under_db)
            ),
            _ => String::new(),
        };
        return Some(format!(
            "carrier of {who}: {} dB on the way, {} dB needed{leg}",
            tenth(c.way_db),
            tenth(c.way_db - c.under_db)
        ));
    }
    (c.under_db < 0.0).then(|| {
        format!(
            "carrier of {who}: {} dB more at {}, before the receiver",
            tenth(-c.under_db),
            frequency(s.hz)
        )
    })
}

/// How a stated isolation was found.
#[must_use]
pub fn isolated(i: &IsolationReport) -> String {
    match i.wavelengths {
        Some(w) => format!("{} distance, {} wavelengths", i.by, number(w, 1)),
        None => i.by.clone(),
    }
}

/// The isolation with its uncertainty.
#[must_use]
pub fn isolation(i: &IsolationReport) -> String {
    match i.db {
        Some(x) if i.uncertainty_db > 0.0 => {
            format!("{} ± {} dB", db(x), number(i.uncertainty_db, 1))
        }
        Some(x) => db(x),
        None => "too near for the rule".to_owned(),
    }
}

/// A run of the verdict, for lists.
#[must_use]
pub fn verdict(r: &DesenseReport) -> Run {
    r.verdict.0.run()
}

/// What these results leave open.
pub const CAUTION: &str = "Noise and carriers are followed through the stated parts, the isolation of the antennas included. What leaks between cabinets and lines beside each other is not in it, and neither is noise that a receiver's own oscillator makes of a carrier, nor what overloads a preamplifier.";
