//! From the two states of each variant to their comparison. The differences are those of `diff`.

use downlead_eval::difference::Step;
use downlead_eval::licence::RuleVerdict;
use downlead_eval::result::{BandResult, Verdict};
use downlead_eval::{Places, Scope, Snapshot};
use downlead_station::model::{Meaning, Node, Variant};

use super::compare::compare;
use crate::shape::compare::{BandChange, Comparison, SAME_DB};
use crate::shape::diff::StepDiff;
use crate::shape::variants::{
    ASSUMED, ClauseState, SCHEMA, StateReport, VariantChain, VariantReport, Variants,
};
use crate::shape::word::Word;

/// Compares the variants of a file with their stations; of all, or of those with these names.
#[must_use]
pub fn variants(s: &Snapshot, file: usize, shown: &str, names: &[String]) -> Variants {
    let places = Places::new(s);
    let mut list = Vec::new();
    for (item, v) in s.variants(file) {
        if names.is_empty() || names.iter().any(|n| **n == *v.name.text) {
            list.push(one(s, file, (item, v), &places));
        }
    }
    list.extend(unread(s, file, names, &places));
    list.sort_by_key(|v| v.line);
    let chains = || list.iter().flat_map(|v: &VariantReport| &v.chains);
    let spots = || list.iter().flat_map(|v: &VariantReport| &v.spots);
    let not_met = |c: &VariantChain| {
        c.variant.as_ref().is_some_and(|x| {
            !x.complete || x.limits.iter().any(|l| l.verdict.0 == RuleVerdict::NotMet)
        })
    };
    Variants {
        schema: SCHEMA,
        file: shown.to_owned(),
        assumed: ASSUMED,
        not_met: chains().any(not_met)
            || spots().any(|s| s.over)
            || list.iter().any(|v| v.refused.is_some()),
        worse: chains().any(|c| c.worse)
            || spots().any(|s| s.worse)
            || list.iter().any(|v| v.refused.is_some()),
        variants: list,
    }
}

/// Variants that could not be read: they are not left out silently.
fn unread(s: &Snapshot, file: usize, names: &[String], places: &Places<'_>) -> Vec<VariantReport> {
    let scope = s.scopes().iter().find(|x| x.file() == file);
    let items = scope.into_iter().flat_map(Scope::items);
    let broken = items.filter(|(item, low, _)| {
        let word = item.statement().and_then(|s| s.keyword());
        word == Some("variant") && low.meaning == Meaning::Nothing
    });
    broken
        .filter_map(|(item, ..)| {
            let stmt = item.statement()?;
            let name = stmt.atoms().get(1).map_or("", |a| stmt.text(*a));
            let asked = names.is_empty() || names.iter().any(|n| n == name);
            asked.then(|| VariantReport {
                name: name.to_owned(),
                title: None,
                of: String::new(),
                line: places.line(downlead_base::Loc::new(item.id, stmt.head_span())),
                refused: Some("it cannot be read; `downlead check` says why".to_owned()),
                chains: Vec::new(),
                spots: Vec::new(),
            })
        })
        .collect()
}

fn one(
    s: &Snapshot,
    file: usize,
    (item, v): (&downlead_syntax::Item, &Variant),
    places: &Places<'_>,
) -> VariantReport {
    let mut out = VariantReport {
        name: v.name.text.to_string(),
        title: v.title.as_ref().map(ToString::to_string),
        of: v.of.text.to_string(),
        line: places.line(v.name.loc),
        refused: None,
        chains: Vec::new(),
        spots: Vec::new(),
    };
    let scope = s.scopes().iter().find(|x| x.file() == file);
    let evaluated = scope.and_then(|x| x.items().iter().find(|i| i.0.id == item.id));
    let errors = evaluated.map_or(0, |(item, low, r)| {
        let all = item
            .diagnostics()
            .iter()
            .chain(&low.diagnostics)
            .chain(&r.diagnostics);
        all.filter(|d| d.severity == downlead_base::Severity::Error)
            .count()
    });
    if errors > 0 {
        out.refused = Some(
            "it has errors, which `downlead check` lists; nothing of it is computed".to_owned(),
        );
        return out;
    }
    let Some(t) = s.try_variant(file, &v.name.text) else {
        out.refused = Some(format!("there is no station `{}`", v.of.text));
        return out;
    };
    let exposure = |s: &Snapshot| {
        let scope = s.scopes().first();
        scope.and_then(|x| super::exposure::of_station(x, &v.of.text).cloned())
    };
    out.spots = super::exposure::steps(exposure(&t.base).as_ref(), exposure(&t.variant).as_ref());
    let c: Comparison = compare((&t.base, 0), (&t.variant, 0));
    let (p, q) = (Places::new(&t.base), Places::new(&t.variant));
    for chain in c.chains.iter().filter(|x| *x.station == *v.of.text) {
        let name = chain
            .name
            .rsplit_once('/')
            .map_or(chain.name.as_str(), |n| n.1);
        for b in &chain.bands {
            let base = state(&t.base, &p, (&v.of.text, name), b);
            let variant = state(&t.variant, &q, (&v.of.text, name), b);
            out.chains.push(VariantChain {
                name: name.to_owned(),
                band: b.band.clone(),
                worse: worse(base.as_ref(), variant.as_ref()),
                base,
                variant,
                radiated: step(b.moved.radiated),
                loss: step(b.moved.loss),
            });
        }
    }
    out
}

fn step(s: Option<Step>) -> Option<StepDiff> {
    s.map(|s| StepDiff {
        change_db: s.db,
        uncertainty_db: s.uncertainty_db,
        interval_db: s.interval_db,
        speaks: s.speaks(SAME_DB),
    })
}

/// A chain on a band of the comparison in one of its states.
fn state(
    s: &Snapshot,
    places: &Places<'_>,
    (station, chain): (&str, &str),
    change: &BandChange,
) -> Option<StateReport> {
    for item in s.scopes().iter().flat_map(Scope::items) {
        let Meaning::Station(st) = &item.1.meaning else {
            continue;
        };
        if *st.name.text != *station {
            continue;
        }
        let found = item
            .2
            .chains
            .iter()
            .find(|c| places.text(c.name) == chain)?;
        let name = |b: &BandResult| match b.point {
            Some(p) => format!("{} {p}", b.band),
            None => b.band.to_string(),
        };
        let b = found.bands.iter().find(|b| name(b) == change.band)?;
        return Some(StateReport {
            complete: b.complete,
            loss_db: b.total_db,
            erp_w: b.erp_w(),
            sensitivity_dbm: b.sensitivity_dbm,
            uncertainty_db: b.uncertainty_db.or(b.sensitivity_u_db),
            limits: clauses(&item.1.meaning, b),
        });
    }
    None
}

fn clauses(m: &Meaning, b: &BandResult) -> Vec<ClauseState> {
    let of = |v: Verdict| match v {
        Verdict::Yes => RuleVerdict::Met,
        Verdict::No => RuleVerdict::NotMet,
        Verdict::CannotTell => RuleVerdict::CannotTell,
    };
    let limits = b.limits.iter().map(|l| ClauseState {
        cite: match m.node(l.loc) {
            Some(Node::Limit {
                source: Some(s), ..
            }) => s.to_string(),
            _ => String::new(),
        },
        limit_w: Some(l.limit_w),
        quantity: Some(l.quantity.word()),
        margin_db: Some(l.margin_db),
        uncertainty_db: Some(l.uncertainty_db),
        verdict: Word(of(l.verdict)),
        missing: Vec::new(),
    });
    let rules = b.rules.iter().map(|r| ClauseState {
        cite: r.source(),
        limit_w: r.judged.as_ref().map(|j| j.limit_w),
        quantity: r.judged.as_ref().map(|j| j.quantity.word()),
        margin_db: r.judged.as_ref().map(|j| j.margin_db),
        uncertainty_db: r.judged.as_ref().map(|j| j.uncertainty_db),
        verdict: Word(r.verdict),
        missing: r.why.iter().map(ToString::to_string).collect(),
    });
    limits.chain(rules).collect()
}

/// Whether a verdict of the variant is worse than the station's on the same clause.
fn worse(base: Option<&StateReport>, variant: Option<&StateReport>) -> bool {
    let (Some(base), Some(variant)) = (base, variant) else {
        return base.is_some();
    };
    if base.complete && !variant.complete {
        return true;
    }
    variant.limits.iter().any(|now| {
        let was = base
            .limits
            .iter()
            .find(|l| l.cite == now.cite && l.quantity.is_some() == now.quantity.is_some())
            .or_else(|| base.limits.iter().find(|l| l.cite == now.cite));
        match was {
            // the worst comes first
            Some(was) => now.verdict.0 < was.verdict.0,
            None => now.verdict.0 == RuleVerdict::NotMet,
        }
    })
}
