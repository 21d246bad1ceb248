//! From comparisons of files to what changed on the air.

use downlead_eval::difference::Step;
use downlead_eval::facts::Differs;
use downlead_eval::licence::RuleVerdict;
use downlead_eval::result::Verdict;

use super::compare::badness;
use crate::shape::compare::{
    BandChange, ChainChange, Comparison, LimitChange, LimitState, Pair, PartChange, ReadingChange,
    SAME_DB, StationChange,
};
use crate::shape::diff::{
    ChainDiff, Class, DefinitionDiff, Diff, FindingDiff, How, LimitDiff, PartDiff, ReadingDiff,
    Redo, SCHEMA, State, StationDiff, StepDiff,
};

/// A file in both states.
#[derive(Clone, Debug)]
pub struct FileChange {
    /// Its path; where it is gone, the path it had.
    pub path: String,
    /// What differs.
    pub comparison: Comparison,
}

/// What changed. `old` and `new` name the states.
#[must_use]
pub fn diff(old: &str, new: &str, files: &[FileChange]) -> Diff {
    let mut d = Diff {
        schema: SCHEMA,
        old: old.to_owned(),
        new: new.to_owned(),
        speaks: false,
        worse: false,
        stations: Vec::new(),
        definitions: Vec::new(),
        findings: Vec::new(),
        remarks: Vec::new(),
    };
    for f in files {
        file(f, &mut d);
    }
    d.remarks = super::remarks::remarks(&d, files);
    let broke = d.remarks.iter().any(|r| r.rule == "new-error");
    d.speaks = broke || d.stations.iter().any(|s| s.speaks);
    d.worse = broke || d.stations.iter().any(|s| s.worse);
    d
}

fn file(f: &FileChange, d: &mut Diff) {
    let c = &f.comparison;
    let mut names: Vec<&str> = Vec::new();
    let all = c.stations.iter().map(|s| s.name.as_str());
    for name in all.chain(c.chains.iter().map(|x| x.station.as_str())) {
        if !names.contains(&name) {
            names.push(name);
        }
    }
    let stations = names.into_iter().filter_map(|n| station(&f.path, n, c));
    d.stations.extend(stations);
    d.definitions
        .extend(c.definitions.iter().map(|x| DefinitionDiff {
            file: f.path.clone(),
            name: x.name.clone(),
            state: State::of(x.was, x.is),
            how: how(x.how),
        }));
    d.findings.extend(c.findings.iter().map(|x| FindingDiff {
        file: f.path.clone(),
        line: x.line,
        code: x.code,
        state: State::of(!x.new, x.new),
        message: x.message.clone(),
    }));
}

fn how(d: Differs) -> How {
    match d {
        Differs::InValue => How::Value,
        Differs::InEvidence => How::Evidence,
        Differs::Not => How::Follows,
    }
}

/// What differs in a station; none where nothing does.
fn station(file: &str, name: &str, c: &Comparison) -> Option<StationDiff> {
    let chains: Vec<&ChainChange> = c.chains.iter().filter(|x| x.station == name).collect();
    let bands = || {
        chains
            .iter()
            .flat_map(|x| x.bands.iter().map(move |b| (*x, b)))
    };
    let facts = c.stations.iter().find(|s| s.name == name);
    let mut placed: Vec<String> = facts.map_or_else(Vec::new, |s| s.placed.clone());
    let list: Vec<ChainDiff> = bands().filter_map(|(x, b)| chain(x, b)).collect();
    if list.iter().any(|x| {
        let [a, b] = x.frequency_hz;
        x.state == State::Changed && x.erp_w[1].is_some() && a != b
    }) {
        placed.push("frequency".to_owned());
    }
    let parts = parts(bands().map(|x| x.1));
    let renamed = renamed(bands().map(|x| x.1));
    let reordered = bands().any(|(_, b)| b.reordered);
    let state = facts.map_or(State::Changed, |s| State::of(s.was, s.is));
    let own = format!("{name}: ");
    let around = c
        .definitions
        .iter()
        .filter(|x| x.name.starts_with(&own))
        .map(|x| x.how);
    let spots = facts.map_or_else(Vec::new, |s| s.spots.clone());
    let class = class(&list, &placed, &parts, reordered, around.max(), state)
        // limits of exposure or what a neighbour radiates
        .or((!spots.is_empty()).then_some(Class::Paper))
        .or((!renamed.is_empty()).then_some(Class::Clerical))?;
    let speaks = state != State::Changed
        || !placed.is_empty()
        || !spots.is_empty()
        || list.iter().any(|x| x.speaks);
    Some(StationDiff {
        file: file.to_owned(),
        name: name.to_owned(),
        state,
        class,
        speaks,
        worse: list.iter().any(|x| x.worse) || spots.iter().any(|s| s.worse),
        redo: redo(&list, &placed, &parts, class, facts),
        placed,
        spots,
        parts,
        renamed,
        chains: list,
    })
}

/// The weightiest kind of change.
fn class(
    chains: &[ChainDiff],
    placed: &[String],
    parts: &[PartDiff],
    reordered: bool,
    around: Option<Differs>,
    state: State,
) -> Option<Class> {
    let radiated = |c: &ChainDiff| match (c.state, c.radiated) {
        (State::New, _) if c.eirp_w[1].is_some() => 1.0,
        (State::Gone, _) if c.eirp_w[0].is_some() => -1.0,
        (_, Some(s)) if s.change_db.abs() >= SAME_DB => s.change_db,
        _ => 0.0,
    };
    let moves: Vec<f64> = chains.iter().map(radiated).collect();
    if moves.iter().any(|m| *m > 0.0) {
        return Some(Class::FootprintLarger);
    }
    if moves.iter().any(|m| *m < 0.0) {
        return Some(Class::FootprintSmaller);
    }
    if !placed.is_empty() || state != State::Changed {
        return Some(Class::FootprintOther);
    }
    let value = |p: &PartDiff| p.how != How::Evidence;
    let loss = |c: &ChainDiff| {
        c.state != State::Changed || c.loss.is_some_and(|s| s.change_db.abs() >= SAME_DB)
    };
    if reordered
        || parts.iter().any(value)
        || around == Some(Differs::InValue)
        || chains.iter().any(loss)
    {
        return Some(Class::Inside);
    }
    let paper = |l: &LimitDiff| l.source[0] != l.source[1] || l.limit_w[0] != l.limit_w[1];
    if chains.iter().flat_map(|c| &c.limits).any(paper) {
        return Some(Class::Paper);
    }
    let any = !parts.is_empty() || !chains.is_empty() || around.is_some_and(|d| d != Differs::Not);
    any.then_some(Class::Evidence)
}

fn redo(
    chains: &[ChainDiff],
    placed: &[String],
    parts: &[PartDiff],
    class: Class,
    facts: Option<&StationChange>,
) -> Vec<Redo> {
    let mut out = Vec::new();
    if !facts.is_none_or(|s| s.was && s.is) {
        return out;
    }
    let radiated = |c: &ChainDiff| c.radiated.is_some_and(|s| s.change_db.abs() >= SAME_DB);
    let spots = facts.is_some_and(|s| !s.spots.is_empty());
    if spots || chains.iter().any(radiated) || placed.iter().any(|p| p != "frequency") {
        out.push(Redo::Exposure);
    }
    if class == Class::FootprintLarger || !placed.is_empty() {
        out.push(Redo::Coordination);
    }
    // a reading that stayed was taken on the parts as they were
    let changed = parts.iter().any(|p| p.how == How::Value);
    let stayed = |r: &ReadingDiff| r.verdict[0].is_some() && r.verdict[1].is_some();
    if changed && chains.iter().flat_map(|c| &c.readings).any(stayed) {
        out.push(Redo::Readings);
    }
    out
}

/// What differs in a chain on a band; none where nothing does.
fn chain(x: &ChainChange, b: &BandChange) -> Option<ChainDiff> {
    let pair = |get: &dyn Fn(&crate::shape::compare::Figures) -> Option<f64>| {
        [
            b.figures.old.as_ref().and_then(get),
            b.figures.new.as_ref().and_then(get),
        ]
    };
    let state = State::of(b.figures.old.is_some(), b.figures.new.is_some());
    let limits: Vec<LimitDiff> = b.limits.iter().map(limit).collect();
    let readings: Vec<ReadingDiff> = b.readings.iter().map(reading).collect();
    let step = |s: Option<Step>| {
        s.map(|s| StepDiff {
            change_db: s.db,
            uncertainty_db: s.uncertainty_db,
            interval_db: s.interval_db,
            speaks: s.speaks(SAME_DB),
        })
    };
    let (radiated, loss) = (step(b.moved.radiated), step(b.moved.loss));
    let complete = b
        .figures
        .both()
        .is_none_or(|(old, new)| old.complete == new.complete);
    let hz = pair(&|f| Some(f.hz));
    let retuned = hz[0]
        .zip(hz[1])
        .is_some_and(|(a, b)| (a - b).abs() > 1e-9 * a.abs());
    let quieter = sensitivity(b);
    let speaks = state != State::Changed
        || !complete
        || retuned
        || radiated.or(loss).is_some_and(|s| s.speaks)
        || quieter.is_some_and(|(db, u)| db.abs() > u.max(0.05))
        || limits.iter().any(limit_speaks)
        || readings.iter().any(|r| r.worse)
        || x.direction.both().is_some_and(|(a, b)| a != b);
    let fell = b
        .figures
        .both()
        .is_some_and(|(old, new)| old.complete && !new.complete);
    let worse =
        fell || limits.iter().any(|l| l.worse && !l.warns) || readings.iter().any(|r| r.worse);
    let moved = |s: Option<StepDiff>| s.is_some_and(|s| s.change_db.abs() >= SAME_DB);
    let u = pair(&|f| f.uncertainty_db);
    let surer = u[0]
        .zip(u[1])
        .is_some_and(|(a, b)| (a - b).abs() >= SAME_DB);
    let paper = |l: &LimitDiff| l.source[0] != l.source[1] || l.limit_w[0] != l.limit_w[1];
    let differs = speaks
        || moved(radiated)
        || moved(loss)
        || surer
        || quieter.is_some_and(|(db, _)| db.abs() >= SAME_DB)
        || limits.iter().any(paper)
        || !readings.is_empty();
    differs.then(|| ChainDiff {
        name: x
            .name
            .rsplit_once('/')
            .map_or(x.name.as_str(), |n| n.1)
            .to_owned(),
        band: b.band.clone(),
        state,
        speaks,
        worse,
        frequency_hz: hz,
        loss_db: pair(&|f| f.loss_db),
        erp_w: pair(&|f| f.erp_w),
        eirp_w: pair(&|f| f.eirp_w),
        antenna_w: pair(&|f| f.antenna_w),
        sensitivity_dbm: pair(&|f| f.sensitivity_dbm),
        uncertainty_db: u,
        radiated,
        loss,
        limits,
        readings,
    })
}

/// By how much the sensitivity at the antenna moved, and the uncertainty of that, dB. What the
/// receiver needs cancels where the sensitivity moved as the loss did.
fn sensitivity(b: &BandChange) -> Option<(f64, f64)> {
    let (old, new) = b.figures.both()?;
    let (a, z) = old.sensitivity_dbm.zip(new.sensitivity_dbm)?;
    let loss = b.moved.loss?;
    let db = z - a;
    if (db - loss.db).abs() < SAME_DB {
        return Some((db, loss.uncertainty_db));
    }
    let u = [old.sensitivity_u_db, new.sensitivity_u_db].map(|u| u.unwrap_or(0.0));
    Some((db, libm::hypot(u[0], u[1])))
}

fn limit_speaks(l: &LimitDiff) -> bool {
    l.verdict[0] != l.verdict[1]
        || l.limit_w[0]
            .zip(l.limit_w[1])
            .is_some_and(|(a, b)| (a - b).abs() > 1e-9 * a.abs())
}

fn limit(l: &LimitChange) -> LimitDiff {
    let both = |get: &dyn Fn(&LimitState) -> Option<f64>| {
        [&l.state.old, &l.state.new].map(|s| s.as_ref().and_then(get))
    };
    let verdicts = [&l.state.old, &l.state.new].map(|s| s.as_ref().map(|s| s.verdict));
    let source = |s: &Option<LimitState>| s.as_ref().and_then(|s| s.source.clone());
    LimitDiff {
        quantity: l.quantity,
        source: [source(&l.state.old), source(&l.state.new)],
        limit_w: both(&|s| s.limit_w),
        margin_db: both(&|s| s.margin_db),
        uncertainty_db: both(&|s| s.uncertainty_db),
        verdict: verdicts.map(|v| v.map(RuleVerdict::word)),
        worse: fell(verdicts),
        warns: l.state.new.as_ref().is_some_and(|s| s.warns),
    }
}

/// Whether a verdict is worse than before; one that is new is worse where it is not met. What can no
/// longer be judged is worse whatever it was: a fault that is hidden is still there.
fn fell([old, new]: [Option<RuleVerdict>; 2]) -> bool {
    let unjudged = |v| matches!(v, RuleVerdict::CannotJudge | RuleVerdict::NoRule);
    match (old, new) {
        (Some(a), Some(b)) if unjudged(b) && !unjudged(a) => true,
        (Some(a), Some(b)) => badness(b) > badness(a),
        (None, Some(b)) => b == RuleVerdict::NotMet,
        _ => false,
    }
}

fn reading(r: &ReadingChange) -> ReadingDiff {
    let Pair { old, new } = &r.verdict;
    ReadingDiff {
        what: r.what,
        read: r.read,
        verdict: [old, new].map(|v| v.map(Verdict::reading_word)),
        worse: *new == Some(Verdict::No) && *old != Some(Verdict::No),
    }
}

fn renamed<'b>(bands: impl Iterator<Item = &'b BandChange>) -> Vec<[String; 2]> {
    let mut out: Vec<[String; 2]> = Vec::new();
    for (a, b) in bands.flat_map(|b| &b.renamed) {
        let pair = [a.clone(), b.clone()];
        if !out.contains(&pair) {
            out.push(pair);
        }
    }
    out
}

/// The parts that differ, each once; joins follow from their neighbours.
fn parts<'b>(bands: impl Iterator<Item = &'b BandChange>) -> Vec<PartDiff> {
    let mut out: Vec<PartDiff> = Vec::new();
    for p in bands.flat_map(|b| &b.parts) {
        let join = p.name.starts_with("join ");
        if join || out.iter().any(|x| x.name == p.name) {
            continue;
        }
        out.push(part(p));
    }
    out
}

fn part(p: &PartChange) -> PartDiff {
    let (old, new) = (&p.state.old, &p.state.new);
    let text = match (old, new) {
        (Some(a), Some(b)) if a.text != b.text => {
            let (a, b) = shorter(&a.text, &b.text);
            [Some(a), Some(b)]
        }
        (Some(_), Some(_)) => [None, None],
        (a, b) => [a, b].map(|x| x.as_ref().map(|x| x.text.clone())),
    };
    let line = new.as_ref().or(old.as_ref()).map_or(0, |s| s.line);
    PartDiff {
        name: p.name.clone(),
        how: how(p.how),
        text,
        loss_db: [old, new].map(|s| s.as_ref().and_then(|s| s.loss_db)),
        line,
    }
}

/// Two statements without the groups that both have, and without keyword and tag.
fn shorter(old: &str, new: &str) -> (String, String) {
    let groups = |t: &str| -> Vec<String> {
        let t = t.replace(['{', '}'], ";");
        let all = t.split([',', ';']).map(|g| g.trim().to_owned());
        all.filter(|g| !g.is_empty()).collect()
    };
    let (a, b) = (groups(old), groups(new));
    // keyword and tag, where both begin with them
    let lead = |x: &str| x.split(' ').take(2).collect::<Vec<_>>().join(" ");
    let common = match (a.first(), b.first()) {
        (Some(x), Some(y)) if lead(x) == lead(y) => lead(x),
        _ => String::new(),
    };
    let left = |mine: &[String], other: &[String]| {
        let kept = mine.iter().filter(|g| !other.contains(g));
        kept.map(|g| g.strip_prefix(&common).unwrap_or(g).trim())
            .filter(|g| !g.is_empty())
            .collect::<Vec<_>>()
            .join(", ")
    };
    (left(&a, &b), left(&b, &a))
}
