//! The conclusion of a report in a few lines: what is radiated, whether limits are met, what is
//! known worst.

use downlead_eval::site::desense::DesenseVerdict;
use downlead_quantity::{db, frequency, from_db, power, sig};
use downlead_station::model::Direction;

use super::chain::{NOT_KNOWN, quantity, typed};
use super::desense;
use super::exposure;
use super::figure::counted;
use super::rules;
use super::verdict::{Judged, text};
use crate::document::{Answer, Place, Run, Sign, Text};
use crate::shape::bench::VerdictCounts;
use crate::shape::chain::{BandReport, ChainReport, LimitReport, StationReport, UnjudgedReport};
use crate::shape::desense::DesenseReport;
use crate::shape::exposure::{SpotNotJudged, SpotReport};
use crate::shape::rules::RuleReport;
use crate::shape::word::{LimitVerdict, Point};

/// Lines of a conclusion, its heading and last line not counted.
pub const MOST: usize = 4;

/// One line with what it is ranked by.
struct Ranked {
    sign: Option<Sign>,
    margin_db: f64,
    answer: Answer,
}

/// The lines of a station's conclusion: at most [`MOST`], the worst where there are more.
#[must_use]
pub fn answers(station: &StationReport) -> Vec<Answer> {
    let mut all: Vec<Ranked> = Vec::new();
    for chain in &station.chains {
        for band in &chain.bands {
            all.extend(of_band(chain, band));
        }
    }
    let spots = station.exposure.iter().flat_map(|e| &e.spots);
    all.extend(spots.map(spot));
    let open = station.exposure.iter().flat_map(|e| &e.not_judged);
    all.extend(open.map(spot_not_judged));
    let channels = station.site.iter().flat_map(|s| &s.desense);
    all.extend(channels.filter_map(desensed));
    some(all)
}

fn some(mut all: Vec<Ranked>) -> Vec<Answer> {
    if all.len() <= MOST {
        return all.into_iter().map(|r| r.answer).collect();
    }
    // the worst first; the order of the text among equals
    all.sort_by(|a, b| (b.sign.cmp(&a.sign)).then(a.margin_db.total_cmp(&b.margin_db)));
    let rest = all.split_off(MOST - 1);
    let mut out: Vec<Answer> = all.into_iter().map(|r| r.answer).collect();
    let words = Text::from(format!("and {} more below{}", rest.len(), summed(&rest)));
    out.push(Answer {
        cells: vec![words.clone()],
        short: vec![words],
        at: None,
    });
    out
}

fn summed(rest: &[Ranked]) -> String {
    let of = |s: Option<Sign>| rest.iter().filter(|r| r.sign == s).count();
    let parts: Vec<String> = [
        (of(Some(Sign::Bad)), "not met"),
        (of(Some(Sign::Open)), "cannot tell"),
        (of(Some(Sign::Good)), "met"),
        (of(None), "without a limit"),
    ]
    .into_iter()
    .filter(|p| p.0 > 0)
    .map(|(n, words)| format!("{n} {words}"))
    .collect();
    match rest.iter().all(|r| r.sign.is_none()) {
        true => String::new(),
        false => format!(": {}", parts.join(", ")),
    }
}

/// A line a spot: the exposure of people there.
fn spot(s: &SpotReport) -> Ranked {
    let sum = match (s.sum, s.sum_with_uncertainty) {
        (Some(sum), Some(upper)) => format!(
            "{} of the limits, {} with U",
            exposure::share(sum),
            exposure::share(upper)
        ),
        _ => "no sum".to_owned(),
    };
    let verdict = Text(vec![s.verdict.0.run()]);
    Ranked {
        sign: Some(s.verdict.0.sign()),
        margin_db: s
            .sum_with_uncertainty
            .map_or(f64::NEG_INFINITY, |u| -downlead_quantity::to_db(u)),
        answer: Answer {
            cells: vec![
                s.name.clone().into(),
                s.tier.into(),
                sum.clone().into(),
                Text::default(),
                verdict.clone(),
                s.set.clone().into(),
            ],
            short: vec![
                format!("{} {}", s.name, s.tier).into(),
                sum.into(),
                verdict,
                s.set.clone().into(),
            ],
            at: Some(Place::new(&s.file, s.line)),
        },
    }
}

/// A line a receive channel with a limit of a desense, or whose receiver is blocked.
fn desensed(d: &DesenseReport) -> Option<Ranked> {
    if d.verdict.0 == DesenseVerdict::NoLimit {
        return None;
    }
    let allowed = match d.limit_db {
        Some(l) => format!("of {}", db(l)),
        None => String::new(),
    };
    let rise = match &d.together {
        Some(t) => desense::rise(t),
        None => "no noise known".to_owned(),
    };
    let verdict = Text(vec![d.verdict.0.run()]);
    let source = d.limit_source.clone().unwrap_or_default();
    let margin = d.limit_db.zip(d.together);
    Some(Ranked {
        sign: Some(d.verdict.0.sign()),
        margin_db: margin.map_or(f64::NEG_INFINITY, |(l, t)| l - t.high_db),
        answer: Answer {
            cells: vec![
                d.receiver.clone().into(),
                "desense".into(),
                format!("{rise} {allowed}").trim_end().into(),
                Text::default(),
                verdict.clone(),
                source.clone().into(),
            ],
            short: vec![
                format!("{} desense", d.receiver).into(),
                format!("{rise} {allowed}").trim_end().into(),
                verdict,
                source.into(),
            ],
            at: Some(Place::new(&d.file, d.line)),
        },
    })
}

/// A line a spot of which nothing can be said.
fn spot_not_judged(s: &SpotNotJudged) -> Ranked {
    let verdict = Text(vec![Run::Verdict(Sign::Open, "not judged")]);
    Ranked {
        sign: Some(Sign::Open),
        margin_db: f64::NEG_INFINITY,
        answer: Answer {
            cells: vec![
                exposure::called(s).into(),
                Text::default(),
                Text::default(),
                Text::default(),
                verdict.clone(),
                s.why.into(),
            ],
            short: vec![exposure::called(s).into(), s.why.into(), verdict],
            at: Some(Place::new(&s.file, s.line)),
        },
    }
}

/// A line a limit, or one for the band.
fn of_band(chain: &ChainReport, band: &BandReport) -> Vec<Ranked> {
    let judged = band.limits.iter().map(|l| Ranked {
        sign: Some(l.verdict.sign()),
        margin_db: l.margin_db,
        answer: limit(chain, band, l),
    });
    // after what is not met, before what cannot tell
    let open = band.limits_not_judged.iter().map(|l| Ranked {
        sign: Some(Sign::Open),
        margin_db: f64::NEG_INFINITY,
        answer: not_judged(chain, band, l),
    });
    let all: Vec<Ranked> = judged.chain(open).chain(of_rules(chain, band)).collect();
    if !all.is_empty() {
        return all;
    }
    vec![Ranked {
        sign: None,
        margin_db: 0.0,
        answer: figures(chain, band, Some(Place::new(&chain.file, chain.line))),
    }]
}

/// A line a licence or set of rules: its worst clause on the band.
fn of_rules(chain: &ChainReport, band: &BandReport) -> Vec<Ranked> {
    let mut seen: Vec<&str> = Vec::new();
    let mut out = Vec::new();
    for r in &band.rules {
        if seen.contains(&r.set.as_str()) {
            continue;
        }
        seen.push(&r.set);
        out.push(Ranked {
            sign: Some(r.verdict.sign()),
            margin_db: r.margin_db.unwrap_or(0.0),
            answer: rule(chain, band, r),
        });
    }
    out
}

fn rule(chain: &ChainReport, band: &BandReport, r: &RuleReport) -> Answer {
    let (on, own) = names(chain, band);
    let (what, verdict) = (rules::quantity(r), rules::verdict(r));
    let value = r.value_w.map_or(String::new(), |w| {
        format!("{what} {}", spanned(w, r.uncertainty_db))
    });
    let limit = r
        .limit_w
        .map_or(String::new(), |w| format!("limit {}", typed(w)));
    let u = r
        .uncertainty_db
        .map_or(String::new(), |u| format!(", U {}", db(u)));
    let left = match rules::margin(r) {
        m if m.is_empty() => String::new(),
        m => format!(", {m}{u}"),
    };
    let at = Some(Place::new(&r.file, r.line));
    Answer {
        cells: vec![
            on.clone().into(),
            own.clone().into(),
            value.into(),
            limit.into(),
            verdict.clone().plus(&left),
            rules::citation(r).into(),
        ],
        short: vec![
            format!("{on} {own}").into(),
            r.value_w
                .zip(r.limit_w)
                .map_or(String::new(), |(v, l)| {
                    format!("{} {what} of {}", power(v), typed(l))
                })
                .into(),
            verdict.plus(&match rules::margin(r) {
                m if m.is_empty() => String::new(),
                m => format!(", {m}"),
            }),
            rules::citation(r).into(),
        ],
        at,
    }
}

/// Names that open a line: band and chain. A chain's name that ends with its band's is shown
/// without it.
fn names(chain: &ChainReport, band: &BandReport) -> (String, String) {
    let own = chain
        .name
        .strip_suffix(&band.band)
        .and_then(|n| n.strip_suffix('-'))
        .filter(|n| !n.is_empty())
        .unwrap_or(&chain.name);
    (of_range(band), own.to_owned())
}

/// A band with the point of its range: `2m low`.
fn of_range(band: &BandReport) -> String {
    match band.point {
        Some(Point::Low) => format!("{} low", band.band),
        Some(Point::Middle) => format!("{} middle", band.band),
        Some(Point::High) => format!("{} high", band.band),
        Some(Point::Edge | Point::Gap) => {
            format!("{} at {}", band.band, frequency(band.frequency_hz))
        }
        None => band.band.clone(),
    }
}

/// `24.7 W (20.8 to 29.2)`.
#[must_use]
pub fn spanned(watts: f64, u_db: Option<f64>) -> String {
    let Some(u) = u_db.filter(|u| *u >= 0.005) else {
        return power(watts);
    };
    // ends in the unit of the value
    let shown = power(watts);
    let scale = match shown.rsplit_once(' ') {
        Some((_, "kW")) => 1e-3,
        Some((_, "mW")) => 1e3,
        Some((_, "µW")) => 1e6,
        Some((_, "W")) => 1.0,
        _ => return shown,
    };
    let end = |k: f64| sig(watts * from_db(k * u) * scale, 3);
    format!("{shown} ({} to {})", end(-1.0), end(1.0))
}

/// A limit without a verdict, because the figure it limits is not known.
fn not_judged(chain: &ChainReport, band: &BandReport, l: &UnjudgedReport) -> Answer {
    let (on, own) = names(chain, band);
    let what = quantity(*l.quantity);
    let verdict = Text(vec![Run::Verdict(Sign::Open, "not judged")]);
    Answer {
        cells: vec![
            on.clone().into(),
            own.clone().into(),
            format!("{what} {NOT_KNOWN}").into(),
            format!("limit {}", typed(l.limit_w)).into(),
            verdict.clone(),
        ],
        short: vec![
            format!("{on} {own}").into(),
            format!("{what} {NOT_KNOWN}, limit {}", typed(l.limit_w)).into(),
            verdict,
        ],
        at: Some(Place::new(&l.file, l.line)),
    }
}

fn limit(chain: &ChainReport, band: &BandReport, l: &LimitReport) -> Answer {
    let (on, own) = names(chain, band);
    let what = quantity(*l.quantity);
    let (margin, u) = (db(l.margin_db.abs()), db(l.uncertainty_db));
    let left = match (l.verdict, l.margin_db < 0.0) {
        (LimitVerdict::Met, false) => format!(", {margin} left, U {u}"),
        (_, true) => format!(", {margin} over, U {u}"),
        (_, false) => format!(", {margin} under, U {u}"),
    };
    let by = match l.verdict {
        LimitVerdict::CannotTell if l.margin_db < 0.0 => format!(", {margin} over"),
        LimitVerdict::CannotTell => format!(", {margin} under"),
        _ => format!(" by {margin}"),
    };
    Answer {
        cells: vec![
            on.clone().into(),
            own.clone().into(),
            format!("{what} {}", spanned(l.value_w, Some(l.uncertainty_db))).into(),
            format!("limit {}", typed(l.limit_w)).into(),
            text(l.verdict).plus(&left),
            l.source.as_deref().unwrap_or_default().into(),
        ],
        short: vec![
            format!("{on} {own}").into(),
            format!("{} {what} of {}", power(l.value_w), typed(l.limit_w)).into(),
            text(l.verdict).plus(&by),
            format!("U {u}").into(),
        ],
        at: Some(Place::new(&l.file, l.line)),
    }
}

/// A band without a limit: what is radiated, or what is needed.
fn figures(chain: &ChainReport, band: &BandReport, at: Option<Place>) -> Answer {
    let (on, own) = names(chain, band);
    let loss = band.total_loss_db.map(|l| format!("loss {}", db(l)));
    let u = band.uncertainty_db;
    let receive = chain.direction == Direction::Receive;
    let needs = band
        .sensitivity_dbm
        .filter(|_| receive)
        .map(|l| format!("needs {l:.1} dBm"));
    let main = match (&needs, band.erp_w, band.antenna_w) {
        (Some(n), ..) => format!("{n} at the antenna"),
        (None, Some(w), _) => format!("ERP {}", spanned(w, u)),
        (None, None, Some(w)) => format!("{} at the antenna", spanned(w, u)),
        _ if loss.is_none() => format!("{NOT_KNOWN}: a part could not be computed"),
        _ => String::new(),
    };
    let noise = band
        .noise_figure_db
        .map(|n| format!("system noise figure {}", db(n)));
    let rest: Vec<String> = loss.into_iter().chain(noise).collect();
    let short = match (needs, band.erp_w) {
        (Some(n), _) => n,
        (None, Some(w)) => format!("{} ERP", power(w)),
        _ => main.clone(),
    };
    Answer {
        cells: vec![
            on.clone().into(),
            own.clone().into(),
            main.into(),
            rest.join(", ").into(),
        ],
        short: vec![
            format!("{on} {own}").into(),
            short.into(),
            rest.join(", ").into(),
        ],
        at,
    }
}

/// The band whose uncertainty matters most: that of the worst limit; without limits, that of the
/// largest uncertainty.
fn decisive(station: &StationReport) -> Option<&BandReport> {
    let bands = || {
        let all = station.chains.iter().flat_map(|c| &c.bands);
        all.filter(|b| b.uncertainty_db.is_some_and(|u| u >= 0.05))
    };
    let limits = bands().flat_map(|b| b.limits.iter().map(move |l| (b, l)));
    let worst = limits.min_by(|(_, a), (_, b)| {
        let signs = b.verdict.sign().cmp(&a.verdict.sign());
        signs.then(a.margin_db.total_cmp(&b.margin_db))
    });
    let u = |b: &BandReport| b.uncertainty_db.unwrap_or(0.0);
    worst
        .map(|w| w.0)
        .or_else(|| bands().max_by(|a, b| u(a).total_cmp(&u(b))))
}

/// The last line of a conclusion: readings, what to know better, assumptions.
#[must_use]
pub fn closing(station: &StationReport) -> Option<String> {
    let bands = || station.chains.iter().flat_map(|c| &c.bands);
    let mut parts = Vec::new();
    let readings = bands().flat_map(|b| b.readings.iter().map(|r| r.verdict));
    let logged = bands()
        .flat_map(|b| &b.logs)
        .flat_map(|l| l.rows.iter().filter_map(|r| r.verdict));
    let n = VerdictCounts::of(readings.chain(logged));
    if n.all() > 0 {
        let listed = n.listed();
        // the first number says what is counted
        let (first, rest) = listed.split_once(' ').unwrap_or((&listed, ""));
        let what = if first == "1" { "reading" } else { "readings" };
        parts.push(format!("{first} {what} {rest}."));
    }
    if let Some((b, first)) = decisive(station).and_then(|b| Some((b, b.budget.first()?))) {
        parts.push(format!(
            "To know it better on {}: the {} ({:.0} % of the uncertainty).",
            of_range(b),
            first.cause.words,
            100.0 * first.share
        ));
    }
    let mut assumed: Vec<&String> = bands().flat_map(|b| &b.assumptions).collect();
    assumed.sort_unstable();
    assumed.dedup();
    match assumed.len() {
        0 => {}
        1 => parts.push("1 assumption below.".to_owned()),
        n => parts.push(format!("{} below.", counted(n, "assumption"))),
    }
    (!parts.is_empty()).then(|| parts.join(" "))
}
