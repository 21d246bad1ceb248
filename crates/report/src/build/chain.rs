//! From results to the shape of a report: names, lines, words.

use downlead_base::Loc;
use downlead_eval::result::{
    BandResult, ChainResult, LimitResult, LogResult, LogRow, LogTrend, Logged, NodeResult,
    ReadingResult, TapResult,
};
use downlead_eval::{Places, Scope, Snapshot, origin};
use downlead_quantity::{from_db, w_to_dbm};
use downlead_station::model::{Meaning, Node, Part, ReadPower};
use rustc_hash::FxHashMap;

use super::unjudged::unjudged;
use crate::shape::chain::{
    BandReport, BudgetReport, ChainReport, DiagnosticReport, LimitReport, LogReport, LogRowReport,
    NodeReport, ReadingReport, Report, SCHEMA, StationReport, TapReport, TrendReport, WetReport,
};
use crate::shape::word::{Cause, Point, PowerMode, Slope, Wave, Word};

fn limit_source(meaning: &Meaning, loc: Loc) -> Option<Box<str>> {
    match meaning.node(loc)? {
        Node::Limit { source, .. } => source.clone(),
        _ => None,
    }
}
fn finite(v: f64) -> Option<f64> {
    v.is_finite().then_some(v + 0.0)
}

/// JSON has no infinity; a number that is none is left out or set to zero. Adding zero turns −0,
/// the sum of nothing, into 0.
fn number(v: f64) -> f64 {
    if v.is_finite() { v + 0.0 } else { 0.0 }
}
/// The report on all named files of a snapshot.
#[must_use]
pub fn report(s: &Snapshot) -> Report {
    let places = Places::new(s);
    let stations = s
        .scopes()
        .iter()
        .flat_map(|scope| stations(&places, scope, &|_, _| true))
        .collect();
    let diagnostics = s
        .diagnostics()
        .into_iter()
        .map(|d| {
            let (file, line, column) = places.line_col(d.primary.loc);
            DiagnosticReport {
                code: d.code.id,
                severity: Word(d.severity),
                message: d.message,
                help: d.help,
                file,
                line,
                column,
            }
        })
        .collect();
    Report {
        schema: SCHEMA,
        stations,
        links: super::link::links(s).links,
        diagnostics,
    }
}

/// The stations of a file with those chains that are wanted by the names of station and chain.
#[must_use]
pub fn stations(
    places: &Places<'_>,
    scope: &Scope,
    wanted: &dyn Fn(&str, &str) -> bool,
) -> Vec<StationReport> {
    let mut stations = Vec::new();
    let mut loose = StationReport {
        name: String::new(),
        title: None,
        chains: Vec::new(),
        rules: None,
        exposure: None,
        site: None,
    };
    for (_, low, result) in scope.items() {
        let chains = |station: &str| -> Vec<ChainReport> {
            result
                .chains
                .iter()
                .filter(|c| wanted(station, places.text(c.name)))
                .map(|c| chain(places, scope, &low.meaning, c))
                .collect()
        };
        match &low.meaning {
            Meaning::Station(st) => stations.push(StationReport {
                name: st.name.text.to_string(),
                title: st.title.as_ref().map(ToString::to_string),
                chains: chains(&st.name.text),
                rules: result.rules.as_deref().map(super::rules::station),
                exposure: result
                    .exposure
                    .as_deref()
                    .map(|e| super::exposure::exposure(places, st, e)),
                site: result.site.as_deref().map(|s| super::site::site(places, s)),
            }),
            _ => loose.chains.extend(chains("")),
        }
    }
    if !loose.chains.is_empty() {
        stations.push(loose);
    }
    stations
}

fn chain(places: &Places<'_>, scope: &Scope, meaning: &Meaning, c: &ChainResult) -> ChainReport {
    let parts = origin::parts_of(meaning);
    let (file, _, line) = places.at(c.loc);
    ChainReport {
        name: places.text(c.name).to_owned(),
        direction: Word(c.direction),
        file,
        line,
        bands: c
            .bands
            .iter()
            .map(|b| BandReport {
                limits_not_judged: unjudged(places, meaning, c, b),
                ..band(places, scope, meaning, &parts, b)
            })
            .collect(),
    }
}

/// A radiated power over time, where the mean power at the antenna is known.
fn over_time(b: &BandResult, watts: Option<f64>) -> Option<f64> {
    let (mean, while_keyed) = b.mean_w.zip(b.antenna_w)?;
    watts.map(|w| w * mean / while_keyed).and_then(finite)
}

fn band(
    places: &Places<'_>,
    scope: &Scope,
    meaning: &Meaning,
    parts: &FxHashMap<Loc, &Part>,
    b: &BandResult,
) -> BandReport {
    BandReport {
        band: b.band.to_string(),
        point: b.point.and_then(Point::of),
        frequency_hz: b.hz,
        complete: b.complete,
        power_mode: if b.tuner {
            PowerMode::Tuner
        } else {
            PowerMode::FixedForward
        },
        nodes: b
            .nodes
            .iter()
            .enumerate()
            .map(|(i, n)| node(places, scope, parts, b, (i, n)))
            .collect(),
        total_loss_db: b.total_db.and_then(finite),
        antenna_w: b.antenna_w.and_then(finite),
        erp_w: b.erp_w().and_then(finite),
        eirp_w: b.eirp_w.and_then(finite),
        uncertainty_db: b.uncertainty_db.and_then(finite),
        interval_db: b.interval_db.filter(|w| w.iter().all(|x| x.is_finite())),
        method: b.method.map(Word),
        loss_floor_db: b.floor_db.and_then(finite),
        loss_worst_db: b.worst_db.filter(|w| w.iter().all(|x| x.is_finite())),
        wet_extra_db: b.wet_db.and_then(finite),
        wet: b.wet_db.filter(|_| b.antenna_w.is_some()).map(|db| {
            let less = |w: Option<f64>| w.map(|w| w * from_db(-db)).and_then(finite);
            WetReport {
                antenna_w: less(b.antenna_w),
                erp_w: less(b.erp_w()),
                eirp_w: less(b.eirp_w),
            }
        }),
        transmitter_swr: b.swr,
        transmitter_swr_worst: b.swr_worst.and_then(finite),
        sensitivity_dbm: b.sensitivity_dbm.and_then(finite),
        noise_figure_db: b.noise_figure_db.and_then(finite),
        sensitivity_uncertainty_db: b.sensitivity_u_db.and_then(finite),
        noise_figure_uncertainty_db: b.noise_figure_u_db.and_then(finite),
        antenna_mean_w: b.mean_w.and_then(finite),
        erp_mean_w: over_time(b, b.erp_w()),
        eirp_mean_w: over_time(b, b.eirp_w),
        taps: b.taps.iter().map(|t| tap(places, t)).collect(),
        limits: b.limits.iter().map(|l| limit(places, meaning, l)).collect(),
        limits_not_judged: Vec::new(),
        rules: b
            .rules
            .iter()
            .map(|r| super::rules::rule(places, r))
            .collect(),
        readings: b
            .readings
            .iter()
            .map(|r| reading(places, meaning, r))
            .collect(),
        logs: b.logs.iter().map(|l| log(places, meaning, l)).collect(),
        budget: budget(places, parts, b),
        assumptions: b.assumptions(places),
    }
}

fn tap(places: &Places<'_>, t: &TapResult) -> TapReport {
    TapReport {
        part: origin::who(places, t.part),
        port: t.port.to_string(),
        power_w: number(t.power_w),
        power_dbm: number(w_to_dbm(t.power_w)),
        uncertainty_db: number(t.uncertainty_db),
        chain_line: places.line(t.chain),
    }
}

fn limit(places: &Places<'_>, meaning: &Meaning, l: &LimitResult) -> LimitReport {
    let (file, _, line) = places.at(l.loc);
    LimitReport {
        quantity: Word(l.quantity),
        limit_w: number(l.limit_w),
        value_w: number(l.value_w),
        margin_db: number(l.margin_db),
        uncertainty_db: number(l.uncertainty_db),
        probability_exceeded: super::probability(number(l.exceeded)),
        verdict: l.verdict.into(),
        safe_setting_w: l.safe_w.and_then(finite),
        source: limit_source(meaning, l.loc).map(Into::into),
        line,
        file,
    }
}

fn reading(places: &Places<'_>, meaning: &Meaning, r: &ReadingResult) -> ReadingReport {
    let meta = meaning.reading_meta(r.loc);
    let swr = r.power.is_none();
    ReadingReport {
        quantity: r.power.map_or(Wave::Swr, wave),
        read_w: (!swr).then_some(number(r.read)),
        expected_w: (!swr).then_some(number(r.expected)),
        read_swr: swr.then_some(number(r.read)),
        expected_swr: swr.then_some(number(r.expected)),
        difference_db: number(r.difference_db),
        uncertainty_db: number(r.uncertainty_db),
        verdict: r.verdict.into(),
        date: meta.and_then(|m| m.date.as_ref()).map(ToString::to_string),
        instrument: meta
            .and_then(|m| m.instrument.as_ref())
            .map(|i| i.text.to_string()),
        line: places.line(r.loc),
    }
}

fn budget(places: &Places<'_>, parts: &FxHashMap<Loc, &Part>, b: &BandResult) -> Vec<BudgetReport> {
    let total: f64 = b.budget.iter().map(|i| i.standard_db * i.standard_db).sum();
    b.budget
        .iter()
        .map(|i| BudgetReport {
            cause: Cause {
                kind: i.cause,
                name: origin::cause_name(places, parts, &i.name),
                words: origin::cause_words(places, parts, i.cause.words(), &i.name),
            },
            standard_db: number(i.standard_db),
            share: match total > 0.0 {
                true => i.standard_db * i.standard_db / total,
                false => 0.0,
            },
        })
        .collect()
}

fn log(places: &Places<'_>, meaning: &Meaning, l: &LogResult) -> LogReport {
    let file = match meaning.node(l.loc) {
        Some(Node::Log { file, .. }) => file.text.to_string(),
        _ => String::new(),
    };
    LogReport {
        file,
        rows: l.rows.iter().map(log_row).collect(),
        trends: l.trends.iter().map(log_trend).collect(),
        line: places.line(l.loc),
    }
}

fn log_row(r: &LogRow) -> LogRowReport {
    let swr = r.what == Logged::Swr;
    LogRowReport {
        log_line: r.line,
        date: r.date.to_string(),
        quantity: logged(r.what),
        read_w: (!swr).then_some(number(r.read)),
        expected_w: r.expected.filter(|_| !swr).and_then(finite),
        read_swr: swr.then_some(number(r.read)),
        expected_swr: r.expected.filter(|_| swr),
        difference_db: r.difference_db.and_then(finite),
        uncertainty_db: r.uncertainty_db.and_then(finite),
        verdict: r.verdict.map(Into::into),
        instrument: r.instrument.as_ref().map(ToString::to_string),
        older_than: r.older_than.as_ref().map(ToString::to_string),
    }
}

fn log_trend(l: &LogTrend) -> TrendReport {
    use downlead_physics::measure::Direction;
    let swr = l.what == Logged::Swr;
    TrendReport {
        quantity: logged(l.what),
        from: l.from.to_string(),
        to: l.to.to_string(),
        readings: l.count,
        db_per_year: (!swr).then_some(number(l.trend.per_year)),
        swr_per_year: swr.then_some(number(l.trend.per_year)),
        uncertainty_per_year: number(l.trend.k * l.trend.u_per_year),
        direction: match l.trend.direction {
            Direction::Rising => Slope::Rising,
            Direction::Falling => Slope::Falling,
            Direction::NotBeyondDoubt => Slope::NotSignificant,
        },
    }
}
fn node(
    places: &Places<'_>,
    scope: &Scope,
    parts: &FxHashMap<Loc, &Part>,
    b: &BandResult,
    (i, n): (usize, &NodeResult),
) -> NodeReport {
    let part = parts.get(&n.def).copied();
    let cable = part.and_then(|p| origin::line_of_cable(p, scope.env(), b));
    let noise = b.noise.get(i);
    let (file, _, line) = places.at(n.def);
    let known = |x: f64| finite(x).filter(|_| n.power_known);
    NodeReport {
        part: match n.tag() {
            Some(t) => places.text(t).to_owned(),
            None if n.kind.is_join() => format!("join {}", places.text(n.def)),
            None => n.kind.word().to_owned(),
        },
        kind: Word(n.kind),
        port: n.port().map(|p| places.text(p).to_owned()),
        branch: (n.branch > 0).then(|| b.branches[usize::from(n.branch) - 1].to_string()),
        loss_db: n.loss_known.then(|| number(n.loss_db)),
        cumulative_loss_db: n.power_known.then(|| number(n.cumulative_db)),
        power_w: known(n.power_w),
        power_dbm: known(w_to_dbm(n.power_w)),
        forward_w: finite(n.forward_w)
            .filter(|f| n.forward_known && (!n.power_known || (f / n.power_w - 1.0).abs() > 1e-3)),
        uncertainty_db: n.forward_known.then(|| number(n.uncertainty_db)),
        forward_uncertainty_db: n.forward_known.then(|| number(n.forward_uncertainty_db)),
        swr: n.swr,
        heat_w: known(n.heat_w).filter(|h| *h > 0.0),
        impedance_ohm: cable.map(|c| c.z0).and_then(finite),
        velocity_factor: cable.map(|c| c.velocity).and_then(finite),
        noise_figure_db: noise.and_then(|x| x.figure_db).and_then(finite),
        temperature_c: noise.and_then(|x| x.celsius).and_then(finite),
        basis: Word(n.basis),
        source: origin::source(places, scope.env(), part, n, b),
        file,
        line,
        chain_line: places.line(n.chain),
    }
}

fn wave(p: ReadPower) -> Wave {
    match p {
        ReadPower::Forward => Wave::Forward,
        ReadPower::Reflected => Wave::Reflected,
        ReadPower::Net => Wave::Net,
    }
}

fn logged(l: Logged) -> Wave {
    match l {
        Logged::Forward => Wave::Forward,
        Logged::Reflected => Wave::Reflected,
        Logged::Swr => Wave::Swr,
    }
}
