//! Isolation between two antennas of a site: what was measured before what their distance gives.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::C0;
use downlead_physics::site::{
    ISOLATION_HALF_WIDTH_DB, Refused, horizontal_isolation, vertical_isolation,
};
use downlead_quantity::{db, frequency, number};
use downlead_station::model::{
    Antenna, AntennaOf, BandKind, Figure, Isolated, Isolation, PartData, PartKind, Station, When,
};
use downlead_station::{Env, nearest};

use super::gather::Line;
use crate::chain::gain_at;
use crate::point::Point;

/// A measured isolation holds at frequencies that differ by no more than this from those it was measured at (our choice:
/// about what the coupling of antennas of one band varies little over).
const HOLDS_WITHIN: f64 = 0.05;

/// An isolation at a frequency.
#[derive(Clone, Copy, Debug)]
pub(super) struct IsolationAt {
    pub(super) db: f64,
    /// Standard uncertainty, dB.
    pub(super) u: f64,
    /// Its figure or line.
    pub(super) loc: Loc,
    /// What the distance gives where it was measured too, dB.
    pub(super) by_distance: Option<f64>,
}

/// One stated isolation with what it comes to.
#[derive(Clone, Debug, PartialEq)]
pub struct IsolationResult {
    /// Its line.
    pub loc: Loc,
    /// `A9 of harbour`.
    pub from: Box<str>,
    /// `A1`.
    pub to: Box<str>,
    /// Hz.
    pub hz: f64,
    /// dB; none where the rule does not hold.
    pub db: Option<f64>,
    /// Expanded uncertainty, dB.
    pub u_db: f64,
    /// `measured`, `vertical`, `horizontal`.
    pub by: &'static str,
    /// Distance in wavelengths, where it is computed.
    pub wavelengths: Option<f64>,
}

/// The other station's name an end is of, seen from the station that is judged.
fn station_of<'a>(end: &'a AntennaOf, writer: &'a Station) -> &'a str {
    end.station
        .as_ref()
        .map_or(&*writer.name.text, |s| &*s.text)
}

fn is(end: &AntennaOf, writer: &Station, (line, tag): (&Line<'_>, &str)) -> bool {
    *end.antenna.text == *tag && station_of(end, writer) == &*line.station.name.text
}

/// The frequencies that a measured figure is stated for, Hz.
fn measured_at(f: &Figure, env: &Env) -> Vec<f64> {
    match &f.when {
        When::At(hz) => vec![*hz],
        When::Bands(names) => names
            .iter()
            .filter_map(|n| env.band(&n.text))
            .flat_map(|b| match b.kind {
                BandKind::Single(hz) => vec![hz],
                BandKind::Pair { transmit, receive } => {
                    [receive, transmit].into_iter().flatten().collect()
                }
                BandKind::Range(low, high) => vec![low, high],
            })
            .collect(),
        When::Always => Vec::new(),
    }
}

/// How far a frequency is from those of a measured figure, as a ratio; 0 between them.
fn apart(f: &Figure, hz: f64, env: &Env) -> f64 {
    let at = measured_at(f, env);
    let (low, high) = at
        .iter()
        .fold((f64::INFINITY, 0.0_f64), |(l, h), x| (l.min(*x), h.max(*x)));
    if (low..=high).contains(&hz)
        && matches!(f.when, When::Bands(_))
        && at.len() > 1
        && high < 1.1 * low
    {
        return 0.0;
    }
    at.iter()
        .map(|x| (hz / x - 1.0).abs())
        .fold(f64::INFINITY, f64::min)
}

/// What the distance of two antennas gives at a frequency, dB, with its standard uncertainty.
fn computed(
    by: &Isolated,
    hz: f64,
    gains_dbi: Option<(f64, f64)>,
) -> Option<Result<(f64, f64), Refused>> {
    let rule = ISOLATION_HALF_WIDTH_DB / libm::sqrt(3.0);
    let slope = |m: &downlead_quantity::Measure, decades: f64| {
        decades / core::f64::consts::LN_10 * m.u / m.value
    };
    Some(match by {
        Isolated::Measured(_) => return None,
        Isolated::Vertical(m) => {
            vertical_isolation(m.value, hz).map(|x| (x, libm::hypot(rule, slope(m, 40.0))))
        }
        Isolated::Horizontal(m) => {
            let (gains, u) = gains_dbi?;
            let rule = libm::hypot(rule, u);
            horizontal_isolation(m.value, hz, gains).map(|x| (x, libm::hypot(rule, slope(m, 20.0))))
        }
    })
}

/// Gains of the antennas of two chains together at a frequency, dBi, with their standard
/// uncertainty, dB. What a gain is stated for counts on the frequencies of its chain and next to
/// them; elsewhere only one that is stated without a band does.
fn gains(a: &Line<'_>, b: &Line<'_>, hz: f64, env: &Env) -> Option<(f64, f64)> {
    let of = |l: &Line<'_>| {
        let (_, antenna) = l.antenna()?;
        let near = |p: &&Point| (hz / p.hz - 1.0).abs() <= HOLDS_WITHIN;
        let elsewhere = Point {
            band: "".into(),
            part: None,
            hz,
            named: false,
        };
        let point = l.points.iter().find(near).unwrap_or(&elsewhere);
        let gain = gain_at(antenna, point, env)?;
        Some((gain.dbi, gain.u))
    };
    let ((ga, ua), (gb, ub)) = (of(a)?, of(b)?);
    Some((ga + gb, libm::hypot(ua, ub)))
}

/// The isolation between the antennas of two chains at a frequency; none where none is stated that holds there.
pub(super) fn between(
    (a, b): (&Line<'_>, &Line<'_>),
    hz: f64,
    (own, others): (&Station, &[&Station]),
    env: &Env,
) -> Option<IsolationAt> {
    let tags = [a, b].map(|l| Some(&*l.antenna()?.0.tag.as_ref()?.text));
    let [Some(ta), Some(tb)] = tags else {
        return None;
    };
    let writers = std::iter::once(own).chain(others.iter().copied());
    let mine: Vec<&Isolation> = writers
        .flat_map(|w| w.site.isolations.iter().map(move |i| (w, i)))
        .filter(|(w, i)| {
            let [x, y] = &i.ends;
            is(x, w, (a, ta)) && is(y, w, (b, tb)) || is(x, w, (b, tb)) && is(y, w, (a, ta))
        })
        .map(|x| x.1)
        .collect();
    let measured = mine
        .iter()
        .filter_map(|i| match &i.by {
            Isolated::Measured(f) => Some((apart(f, hz, env), f)),
            _ => None,
        })
        .filter(|x| x.0 <= HOLDS_WITHIN)
        .min_by(|x, y| x.0.total_cmp(&y.0));
    let distance = mine.iter().find_map(|i| {
        let (x, u) = computed(&i.by, hz, gains(a, b, hz, env))?.ok()?;
        Some((x, u, i.loc))
    });
    match (measured, distance) {
        (Some((_, f)), d) => Some(IsolationAt {
            db: f.value.value,
            u: f.value.u,
            loc: f.loc,
            by_distance: d.map(|d| d.0),
        }),
        (None, Some((db, u, loc))) => Some(IsolationAt {
            db,
            u,
            loc,
            by_distance: None,
        }),
        (None, None) => None,
    }
}

/// The antenna that an end of an isolation names, in its station; what is wrong with the name is reported.
fn antenna_of<'m>(
    end: &AntennaOf,
    own: &'m Station,
    others: &[&'m Station],
    env: &Env,
    out: &mut Vec<Diagnostic>,
) -> Option<(&'m Station, &'m Antenna)> {
    let station = match &end.station {
        None => own,
        Some(name) => {
            let Some(found) = others.iter().find(|o| o.name.text == name.text) else {
                // one that is not defined is reported where all names are
                if env.station(&name.text).is_some() {
                    out.push(
                        Diagnostic::new(
                            &codes::SITE_CONTRADICTS,
                            name.loc,
                            format!("`{}` does not stand on this site.", name.text),
                        )
                        .at("on another site")
                        .help(format!(
                            "If it does, say so in a line of its own: `beside {}`.",
                            name.text
                        )),
                    );
                }
                return None;
            };
            found
        }
    };
    let antennas = || station.parts.iter().filter(|p| p.kind == PartKind::Antenna);
    let named = |p: &&downlead_station::model::Part| {
        p.tag.as_ref().is_some_and(|t| t.text == end.antenna.text)
    };
    if let Some(p) = antennas().find(named)
        && let PartData::Antenna(a) = &p.data
    {
        return Some((station, a));
    }
    let tags: Vec<&str> = antennas()
        .filter_map(|p| Some(&*p.tag.as_ref()?.text))
        .collect();
    let mut d = Diagnostic::new(
        &codes::UNKNOWN_PART,
        end.antenna.loc,
        format!(
            "Station `{}` has no antenna `{}`.",
            station.name.text, end.antenna.text
        ),
    )
    .at("not an antenna there");
    d = match nearest(&end.antenna.text, tags.iter().copied()) {
        Some(n) => {
            d.help(format!("Did you mean `{n}`?"))
                .fix(format!("write `{n}`"), end.antenna.loc, n)
        }
        None if tags.is_empty() => d.help("It has no antenna with a tag."),
        None => d.help(format!("Its antennas: `{}`.", tags.join("`, `"))),
    };
    out.push(d);
    None
}

/// The lowest frequency on which one of two antennas of the site is used, Hz: the rules hold least there.
fn lowest(lines: &[Line<'_>], ends: &[AntennaOf; 2], writer: &Station) -> Option<f64> {
    let of = |l: &Line<'_>| {
        let tag = &*l.antenna()?.0.tag.as_ref()?.text;
        ends.iter().any(|e| is(e, writer, (l, tag))).then_some(())?;
        l.points.iter().map(|p| p.hz).min_by(f64::total_cmp)
    };
    lines.iter().filter_map(of).min_by(f64::total_cmp)
}

/// Points out names that are not there, rules beyond their range and figures that contradict each other; gives what each
/// line comes to.
pub(crate) fn check(st: &Station, env: &Env, out: &mut Vec<Diagnostic>) -> Vec<IsolationResult> {
    if st.site.isolations.is_empty() {
        return Vec::new();
    }
    let others = env.on_site_of(st);
    let mut lines = Line::of(st, false, env);
    for o in &others {
        lines.extend(Line::of(o, true, env));
    }
    let mut all: Vec<(&Isolation, IsolationResult)> = Vec::new();
    for i in &st.site.isolations {
        let [a, b] = &i.ends;
        let (fa, fb) = (
            antenna_of(a, st, &others, env, out),
            antenna_of(b, st, &others, env, out),
        );
        let (Some(_), Some(_)) = (fa, fb) else {
            continue;
        };
        if let Some(r) = one(i, st, &lines, env, out) {
            all.push((i, r));
        }
    }
    contradictions(&all, st, &lines, env, out);
    all.into_iter().map(|x| x.1).collect()
}

fn one(
    i: &Isolation,
    st: &Station,
    lines: &[Line<'_>],
    env: &Env,
    out: &mut Vec<Diagnostic>,
) -> Option<IsolationResult> {
    let name = |e: &AntennaOf| -> Box<str> {
        match &e.station {
            Some(s) => format!("{} of {}", e.antenna.text, s.text).into(),
            None => e.antenna.text.clone(),
        }
    };
    let mut r = IsolationResult {
        loc: i.loc,
        from: name(&i.ends[0]),
        to: name(&i.ends[1]),
        hz: 0.0,
        db: None,
        u_db: 0.0,
        by: "measured",
        wavelengths: None,
    };
    let (metres, by) = match &i.by {
        Isolated::Measured(f) => {
            r.hz = *measured_at(f, env).first()?;
            r.db = Some(f.value.value);
            r.u_db = 2.0 * f.value.u;
            return Some(r);
        }
        Isolated::Vertical(m) => (m.value, "vertical"),
        Isolated::Horizontal(m) => (m.value, "horizontal"),
    };
    r.by = by;
    r.hz = lowest(lines, &i.ends, st)?;
    r.wavelengths = Some(metres * r.hz / C0);
    let mut of_end = i.ends.iter().map(|e| {
        lines.iter().find(|l| {
            let tag = l.antenna().and_then(|a| a.0.tag.as_ref());
            tag.is_some_and(|t| is(e, st, (l, &t.text)))
        })
    });
    let pair = of_end.next().flatten().zip(of_end.next().flatten());
    let sum = pair.and_then(|(a, b)| gains(a, b, r.hz, env));
    match computed(&i.by, r.hz, sum)? {
        Ok((x, u)) => (r.db, r.u_db) = (Some(x), 2.0 * u),
        Err(Refused::CloserThan(least)) => out.push(beyond_range(i, metres, r.hz, least)),
        Err(Refused::NotPositive) => return None,
    }
    Some(r)
}

fn beyond_range(i: &Isolation, metres: f64, hz: f64, least: f64) -> Diagnostic {
    let lambda = C0 / hz;
    let from = match &i.by {
        Isolated::Vertical(_) => "one wavelength".to_owned(),
        _ => "10 wavelengths, and from 15 m".to_owned(),
    };
    Diagnostic::new(
        &codes::ISOLATION_BEYOND_RANGE,
        i.loc,
        format!(
            "{} m is {} wavelengths at {}; the rule holds from {from} on, here from {} m.",
            number(metres, 2),
            number(metres / lambda, 1),
            frequency(hz),
            number(least, 1)
        ),
    )
    .at("too near for this rule")
    .help(format!(
        "Measure it, and write the dB: `isolation {} to {} 40 dB ± 2 dB at {}`.",
        i.ends[0].antenna.text,
        i.ends[1].antenna.text,
        frequency(hz)
    ))
}

/// A measured figure and a distance of the same two antennas that cannot both be right.
fn contradictions(
    all: &[(&Isolation, IsolationResult)],
    st: &Station,
    lines: &[Line<'_>],
    env: &Env,
    out: &mut Vec<Diagnostic>,
) {
    let key = |i: &Isolation| {
        let mut k = i
            .ends
            .each_ref()
            .map(|e| (station_of(e, st).to_owned(), e.antenna.text.to_string()));
        k.sort();
        k
    };
    for (m, measured) in all.iter().filter(|x| x.1.by == "measured") {
        let same = all
            .iter()
            .find(|x| x.1.by != "measured" && key(x.0) == key(m));
        let Some((c, at)) = same else { continue };
        // at the frequency it was measured at
        let mut of_end = c.ends.iter().map(|e| {
            lines.iter().find(|l| {
                let tag = l.antenna().and_then(|a| a.0.tag.as_ref());
                tag.is_some_and(|t| is(e, st, (l, &t.text)))
            })
        });
        let pair = of_end.next().flatten().zip(of_end.next().flatten());
        let sum = pair.and_then(|(a, b)| gains(a, b, measured.hz, env));
        let Some(Ok((computed, u))) = computed(&c.by, measured.hz, sum) else {
            continue;
        };
        let Some(read) = measured.db else { continue };
        let difference = read - computed;
        if difference.abs() <= libm::hypot(2.0 * u, measured.u_db) {
            continue;
        }
        out.push(
            Diagnostic::new(
                &codes::ISOLATION_CONTRADICTS,
                m.loc,
                format!(
                    "{} was measured from {} to {}, {} {} than their distance gives ({}, {} wavelengths).",
                    db(read),
                    measured.from,
                    measured.to,
                    db(difference.abs()),
                    if difference < 0.0 { "less" } else { "more" },
                    db(computed),
                    number(at.wavelengths.unwrap_or(0.0), 1)
                ),
            )
            .at("what was measured is used")
            .also(c.loc, "the distance")
            .help("The antennas are not in line, the distance is another one, or lines and structure couple them."),
        );
    }
}
