//! From results to the report: names, lines, words.

use downlead_base::{ItemId, LineIndex, Loc, Span};
use downlead_quantity::{from_db, w_to_dbm};
use downlead_station::Env;
use downlead_station::model::{Meaning, Node, Part, PartData, Step};
use rustc_hash::FxHashMap;

use crate::assume::Assumed;
use crate::cable::CableAt;
use crate::report::{
    BandReport, BudgetReport, ChainReport, DiagnosticReport, LimitReport, LogReport, LogRowReport,
    NodeReport, ReadingReport, Report, SCHEMA, StationReport, TapReport, TrendReport, WetReport,
};
use crate::result::{
    BandResult, CauseName, ChainResult, LogResult, LogRow, LogTrend, Logged, NodeResult,
};
use crate::snapshot::{Scope, Snapshot};

/// Lines and texts of places, for those who put results into words.
pub struct Places<'s> {
    snapshot: &'s Snapshot,
    index: FxHashMap<ItemId, (usize, u32)>,
    library: FxHashMap<ItemId, (usize, u32)>,
    lines: Vec<LineIndex>,
    library_lines: Vec<LineIndex>,
}

impl<'s> Places<'s> {
    /// Of a snapshot.
    #[must_use]
    pub fn new(snapshot: &'s Snapshot) -> Self {
        let lib = downlead_station::library();
        let mut library = FxHashMap::default();
        for (i, (_, f)) in lib.files.iter().enumerate() {
            for p in f.items() {
                library.insert(p.item.id, (i, p.start));
            }
        }
        Places {
            snapshot,
            index: snapshot.index(),
            library,
            lines: snapshot
                .files()
                .iter()
                .map(|f| LineIndex::new(f.text()))
                .collect(),
            library_lines: lib
                .files
                .iter()
                .map(|(_, f)| LineIndex::new(f.text()))
                .collect(),
        }
    }

    /// File (path; of the library `library/NAME`), byte range and line from 1.
    #[must_use]
    pub fn at(&self, loc: Loc) -> (String, Span, u32) {
        if let Some((f, start)) = self.index.get(&loc.item) {
            let span = loc.span.shift(*start);
            return (
                self.snapshot.files()[*f].path.clone(),
                span,
                line_of(&self.lines[*f], span.start),
            );
        }
        if let Some((f, start)) = self.library.get(&loc.item) {
            let span = loc.span.shift(*start);
            let name = downlead_station::library().files[*f].0;
            return (
                format!("library/{name}"),
                span,
                line_of(&self.library_lines[*f], span.start),
            );
        }
        (String::new(), loc.span, 0)
    }

    /// Line from 1.
    #[must_use]
    pub fn line(&self, loc: Loc) -> u32 {
        match self.index.get(&loc.item) {
            Some((f, start)) => line_of(&self.lines[*f], loc.span.start + start),
            None => self.at(loc).2,
        }
    }

    /// The source text there.
    #[must_use]
    pub fn text(&self, loc: Loc) -> &str {
        if let Some((f, start)) = self.index.get(&loc.item) {
            return self.snapshot.files()[*f]
                .text()
                .get(loc.span.shift(*start).range())
                .unwrap_or("");
        }
        if let Some((f, start)) = self.library.get(&loc.item) {
            return downlead_station::library().files[*f]
                .1
                .text()
                .get(loc.span.shift(*start).range())
                .unwrap_or("");
        }
        ""
    }

    /// The name of the definition a place is in.
    fn definition(&self, loc: Loc) -> Option<&str> {
        let head = self.text(Loc::new(loc.item, Span::new(0, loc.span.start)));
        let mut words = head.split_whitespace();
        let word = words.next()?;
        matches!(word, "device" | "cable" | "connector" | "instrument")
            .then(|| words.next())
            .flatten()
    }

    fn line_col(&self, loc: Loc) -> (String, u32, u32) {
        let (file, span, line) = self.at(loc);
        let text = match self.index.get(&loc.item) {
            Some((f, _)) => self.snapshot.files()[*f].text(),
            None => "",
        };
        let start = span.start as usize;
        let begin = text
            .get(..start)
            .and_then(|t| t.rfind('\n'))
            .map_or(0, |i| i + 1);
        let column = text.get(begin..start).map_or(1, |t| t.chars().count() + 1);
        (file, line, u32::try_from(column).unwrap_or(u32::MAX))
    }
}

fn line_of(index: &LineIndex, offset: u32) -> u32 {
    index
        .try_line_col(offset.into())
        .map_or(0, |lc| lc.line + 1)
}

/// All parts of an item by the place of their statement.
pub(crate) fn parts_of(meaning: &Meaning) -> FxHashMap<Loc, &Part> {
    let mut m = FxHashMap::default();
    fn steps<'m>(s: &'m [Step], m: &mut FxHashMap<Loc, &'m Part>) {
        for s in s {
            match s {
                Step::Part { part, branches } => {
                    m.insert(part.loc, part);
                    branches.iter().for_each(|b| steps(&b.steps, m));
                }
                Step::Use { branches, .. } => branches.iter().for_each(|b| steps(&b.steps, m)),
                _ => {}
            }
        }
    }
    match meaning {
        Meaning::Station(st) => {
            for p in &st.parts {
                m.insert(p.loc, p);
            }
            st.chains.iter().for_each(|c| steps(&c.steps, &mut m));
        }
        Meaning::Chain(c) => steps(&c.steps, &mut m),
        _ => {}
    }
    m
}

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

impl BandResult {
    /// What was assumed, in sentences.
    #[must_use]
    pub fn assumptions(&self, places: &Places<'_>) -> Vec<String> {
        assumptions(places, &self.assumptions)
    }

    /// What was assumed, each with the place of the part it concerns.
    #[must_use]
    pub fn assumed(&self) -> &[(Assumed, Loc)] {
        &self.assumptions
    }

    /// The causes of the doubt in words, largest first, each with its standard uncertainty in dB.
    #[must_use]
    pub fn causes(&self, places: &Places<'_>, meaning: &Meaning) -> Vec<(String, f64)> {
        let parts = parts_of(meaning);
        self.budget
            .iter()
            .map(|i| {
                (
                    cause_words(places, &parts, i.cause.words(), &i.name),
                    i.standard_db,
                )
            })
            .collect()
    }
}

impl crate::bench::result::SessionResult {
    /// What was assumed, in sentences.
    #[must_use]
    pub fn assumptions(&self, places: &Places<'_>) -> Vec<String> {
        assumptions(places, &self.assumptions)
    }
}

impl Snapshot {
    /// The report on all named files.
    #[must_use]
    pub fn report(&self) -> Report {
        let places = Places::new(self);
        let mut stations = Vec::new();
        for scope in &self.scopes {
            let mut loose = StationReport {
                name: String::new(),
                title: None,
                chains: Vec::new(),
            };
            for (_, low, result) in &scope.items {
                let chains = || {
                    result
                        .chains
                        .iter()
                        .map(|c| chain(&places, scope, &low.meaning, c))
                };
                match &low.meaning {
                    Meaning::Station(st) => stations.push(StationReport {
                        name: st.name.text.to_string(),
                        title: st.title.as_ref().map(ToString::to_string),
                        chains: chains().collect(),
                    }),
                    _ => loose.chains.extend(chains()),
                }
            }
            if !loose.chains.is_empty() {
                stations.push(loose);
            }
        }
        let diagnostics = self
            .diagnostics()
            .into_iter()
            .map(|d| {
                let (file, line, column) = places.line_col(d.primary.loc);
                DiagnosticReport {
                    code: d.code.id,
                    severity: d.severity.name(),
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
            diagnostics,
        }
    }
}

fn chain(places: &Places<'_>, scope: &Scope, meaning: &Meaning, c: &ChainResult) -> ChainReport {
    let parts = parts_of(meaning);
    let (file, _, line) = places.at(c.loc);
    ChainReport {
        name: places.text(c.name).to_owned(),
        direction: c.direction.word(),
        file,
        line,
        bands: c
            .bands
            .iter()
            .map(|b| band(places, scope, meaning, &parts, b))
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
    let total: f64 = b.budget.iter().map(|i| i.standard_db * i.standard_db).sum();
    BandReport {
        band: b.band.to_string(),
        point: b.point,
        frequency_hz: b.hz,
        complete: b.complete,
        power_mode: if b.tuner { "tuner" } else { "fixed-forward" },
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
        method: b.method.map(|m| m.word()),
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
        taps: b
            .taps
            .iter()
            .map(|t| TapReport {
                part: who(places, t.part),
                port: t.port.to_string(),
                power_w: number(t.power_w),
                power_dbm: number(w_to_dbm(t.power_w)),
                uncertainty_db: number(t.uncertainty_db),
                chain_line: places.line(t.chain),
            })
            .collect(),
        limits: b
            .limits
            .iter()
            .map(|l| LimitReport {
                quantity: l.quantity.word(),
                limit_w: number(l.limit_w),
                value_w: number(l.value_w),
                margin_db: number(l.margin_db),
                uncertainty_db: number(l.uncertainty_db),
                probability_exceeded: number(l.exceeded),
                verdict: l.verdict.limit_word(),
                safe_setting_w: l.safe_w.and_then(finite),
                source: limit_source(meaning, l.loc).map(Into::into),
                line: places.line(l.loc),
            })
            .collect(),
        readings: b
            .readings
            .iter()
            .map(|r| {
                let meta = meaning.reading_meta(r.loc);
                let swr = r.power.is_none();
                ReadingReport {
                    quantity: r.power.map_or("swr", |p| p.word()),
                    read_w: (!swr).then_some(number(r.read)),
                    expected_w: (!swr).then_some(number(r.expected)),
                    read_swr: swr.then_some(number(r.read)),
                    expected_swr: swr.then_some(number(r.expected)),
                    difference_db: number(r.difference_db),
                    uncertainty_db: number(r.uncertainty_db),
                    verdict: r.verdict.reading_word(),
                    date: meta.and_then(|m| m.date.as_ref()).map(ToString::to_string),
                    instrument: meta
                        .and_then(|m| m.instrument.as_ref())
                        .map(|i| i.text.to_string()),
                    line: places.line(r.loc),
                }
            })
            .collect(),
        logs: b.logs.iter().map(|l| log(places, meaning, l)).collect(),
        budget: b
            .budget
            .iter()
            .map(|i| BudgetReport {
                cause: cause_words(places, parts, i.cause.words(), &i.name),
                standard_db: number(i.standard_db),
                share: if total > 0.0 {
                    i.standard_db * i.standard_db / total
                } else {
                    0.0
                },
            })
            .collect(),
        assumptions: assumptions(places, &b.assumptions),
    }
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
        quantity: r.what.word(),
        read_w: (!swr).then_some(number(r.read)),
        expected_w: r.expected.filter(|_| !swr).and_then(finite),
        read_swr: swr.then_some(number(r.read)),
        expected_swr: r.expected.filter(|_| swr),
        difference_db: r.difference_db.and_then(finite),
        uncertainty_db: r.uncertainty_db.and_then(finite),
        verdict: r.verdict.map(|v| v.reading_word()),
        instrument: r.instrument.as_ref().map(ToString::to_string),
    }
}

fn log_trend(l: &LogTrend) -> TrendReport {
    use downlead_physics::measure::Direction;
    let swr = l.what == Logged::Swr;
    TrendReport {
        quantity: l.what.word(),
        from: l.from.to_string(),
        to: l.to.to_string(),
        readings: l.count,
        db_per_year: (!swr).then_some(number(l.trend.per_year)),
        swr_per_year: swr.then_some(number(l.trend.per_year)),
        uncertainty_per_year: number(l.trend.k * l.trend.u_per_year),
        direction: match l.trend.direction {
            Direction::Rising => "rising",
            Direction::Falling => "falling",
            Direction::NotBeyondDoubt => "not-beyond-doubt",
        },
    }
}

/// The name of the part whose statement or figure is at a place.
fn owner(places: &Places<'_>, parts: &FxHashMap<Loc, &Part>, loc: Loc) -> String {
    // figures lie within their part's statement or block: the last part that begins before
    let part = parts
        .values()
        .filter(|p| p.loc.item == loc.item && p.loc.span.start <= loc.span.start)
        .max_by_key(|p| p.loc.span.start);
    match part {
        Some(p) => p.tag.as_ref().map_or_else(
            || format!("the {} of line {}", p.kind.word(), places.line(p.loc)),
            |t| t.text.to_string(),
        ),
        // a figure of a definition is that of all its examples
        None => places
            .definition(loc)
            .unwrap_or_else(|| places.text(loc))
            .to_owned(),
    }
}

pub(crate) fn cause_words(
    places: &Places<'_>,
    parts: &FxHashMap<Loc, &Part>,
    words: &str,
    name: &CauseName,
) -> String {
    match name {
        CauseName::At(l) => format!("{words} {}", owner(places, parts, *l)),
        CauseName::Named(n) => format!("{words} {n}"),
        CauseName::None => words.to_owned(),
    }
}

/// Sentences, one a kind, with the parts it concerns.
pub(crate) fn assumptions(places: &Places<'_>, list: &[(Assumed, Loc)]) -> Vec<String> {
    let mut kinds: Vec<Assumed> = list.iter().map(|a| a.0).collect();
    kinds.sort_unstable();
    kinds.dedup();
    kinds
        .into_iter()
        .map(|k| {
            let who: Vec<String> = list
                .iter()
                .filter(|a| a.0 == k)
                .map(|a| who(places, a.1))
                .collect();
            k.words(&who.join(", "))
        })
        .collect()
}

fn who(places: &Places<'_>, loc: Loc) -> String {
    let text = places.text(loc).trim();
    if text.contains([' ', '\n']) {
        let first = text.split_whitespace().next().unwrap_or("part");
        return format!("the {first} of line {}", places.line(loc));
    }
    text.to_owned()
}

fn node(
    places: &Places<'_>,
    scope: &Scope,
    parts: &FxHashMap<Loc, &Part>,
    b: &BandResult,
    (i, n): (usize, &NodeResult),
) -> NodeReport {
    let part = parts.get(&n.def).copied();
    let cable = part.and_then(|p| line_of_cable(p, &scope.env, b));
    let noise = b.noise.get(i);
    let (file, _, line) = places.at(n.def);
    let known = |x: f64| finite(x).filter(|_| n.power_known);
    NodeReport {
        part: match n.tag() {
            Some(t) => places.text(t).to_owned(),
            None if n.kind.is_join() => format!("join {}", places.text(n.def)),
            None => n.kind.word().to_owned(),
        },
        kind: n.kind.word(),
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
        basis: n.basis.word(),
        source: source(places, &scope.env, part, n, b),
        file,
        line,
        chain_line: places.line(n.chain),
    }
}

/// The cable of a part at a frequency, where its figures are those of the cable.
fn line_of_cable(part: &Part, env: &Env, b: &BandResult) -> Option<CableAt> {
    let PartData::Line(l) = &part.data else {
        return None;
    };
    if l.broken || crate::network::file_of(part, None, &point(env, b), env).is_some() {
        return None;
    }
    let cable = env.cable(&l.cable.as_ref()?.text)?;
    // neither depends on the temperature
    crate::cable::at_in(cable, b.hz, cable.reference_c, &env.attachments)
}

fn point(env: &Env, b: &BandResult) -> crate::point::Point {
    crate::point::Point {
        band: b.band.clone(),
        part: b.point,
        hz: b.hz,
        named: env.band(&b.band).is_some(),
    }
}

/// Where the figure of a node comes from, in words.
pub(crate) fn source(
    places: &Places<'_>,
    env: &Env,
    part: Option<&Part>,
    n: &NodeResult,
    b: &BandResult,
) -> Option<String> {
    if n.kind.is_join() {
        let name = places.text(n.def);
        return env
            .connector(name)
            .and_then(|c| c.meta.words())
            .map(|w| format!("{name}: {w}"));
    }
    let part = part?;
    let point = point(env, b);
    let port = n.port().map(|p| places.text(p));
    if let Some(f) = crate::network::file_of(part, port, &point, env) {
        return f.figure.meta.words();
    }
    match &part.data {
        PartData::Line(l) => match &l.cable {
            Some(name) => {
                let c = env.cable(&name.text)?;
                Some(match c.meta.words() {
                    Some(w) => format!("{}: {w}", name.text),
                    None => name.text.to_string(),
                })
            }
            None => part.meta.words(),
        },
        PartData::Connector(_, name) => env
            .connector(&name.text)
            .and_then(|c| c.meta.words())
            .map(|w| format!("{}: {w}", name.text)),
        PartData::Device(d) => {
            let figures = d
                .ports
                .iter()
                .find(|p| port.map_or(p.name.text.is_empty(), |q| *p.name.text == *q))
                .map_or(&[][..], |p| &p.loss);
            let own = crate::point::pick(figures, &point, env).and_then(|p| p.figure.meta.words());
            own.or_else(|| part.meta.words()).or_else(|| {
                let name = d.class.as_ref()?;
                Some(format!(
                    "{}: {}",
                    name.text,
                    env.device(&name.text)?.meta.words()?
                ))
            })
        }
        PartData::Antenna(a) => {
            let g = crate::chain::gain_at(a, &point, env)?;
            let own = a
                .gain
                .iter()
                .find(|x| x.figure.loc == g.loc)
                .and_then(|x| x.figure.meta.words());
            own.or_else(|| part.meta.words())
        }
        _ => part.meta.words(),
    }
}
