//! From what licences and rules say to its shape.

use downlead_eval::Places;
use downlead_eval::licence::{CAUTION, RuleResult, Said, StationRules};

use crate::shape::rules::{
    DutyReport, FixedReport, RuleReport, SaidReport, SetReport, StationRulesReport,
};
use crate::shape::word::Word;

/// A clause.
pub(super) fn rule(places: &Places<'_>, r: &RuleResult) -> RuleReport {
    let (file, _, line) = places.at(r.under);
    let clause = r.clause.map(|c| places.at(c));
    let j = r.judged.as_ref();
    let finite = |v: Option<f64>| v.filter(|v| v.is_finite()).map(|v| v + 0.0);
    RuleReport {
        set: r.set.to_string(),
        cite: r.clause.map(|_| r.cite.to_string()),
        quantity: r.counted.map(|c| c.word().to_owned()),
        kind: r.kind.map(|k| k.word().to_owned()),
        confidence: r.confidence.map(|c| c.word().to_owned()),
        verdict: Word(r.verdict),
        missing: r.why.iter().map(ToString::to_string).collect(),
        limit_w: finite(j.map(|j| j.limit_w)),
        value_w: finite(j.map(|j| j.value_w)),
        margin_db: finite(j.map(|j| j.margin_db)),
        uncertainty_db: finite(j.map(|j| j.uncertainty_db)),
        probability_exceeded: finite(j.map(|j| super::probability(j.exceeded))),
        safe_setting_w: finite(j.and_then(|j| j.safe_w)),
        file,
        line,
        clause_file: clause.as_ref().map(|c| c.0.clone()),
        clause_line: clause.map(|c| c.2),
    }
}

/// The station as a whole.
pub(super) fn station(r: &StationRules) -> StationRulesReport {
    let said = |all: &[Said]| {
        all.iter()
            .map(|s| SaidReport {
                set: s.set.to_string(),
                cite: s.cite.to_string(),
                text: s.text.to_string(),
            })
            .collect()
    };
    let text = |t: &Option<Box<str>>| t.as_ref().map(ToString::to_string);
    StationRulesReport {
        caution: CAUTION,
        sets: r
            .sets
            .iter()
            .map(|s| SetReport {
                name: s.name.to_string(),
                title: text(&s.title),
                edition: text(&s.edition),
                dated: text(&s.dated),
            })
            .collect(),
        fixed: r
            .fixed
            .iter()
            .map(|f| FixedReport {
                set: f.set.to_string(),
                cite: f.cite.to_string(),
                what: f.what.to_string(),
                verdict: Word(f.verdict),
                off: f.off,
                within: f.within,
                unit: if f.metres { "m" } else { "Hz" },
            })
            .collect(),
        duties: r
            .duties
            .iter()
            .map(|d| DutyReport {
                set: d.set.to_string(),
                cite: d.cite.to_string(),
                duty: d.text.to_string(),
                threshold_w: d.threshold_w,
                value_w: d.value_w,
                quantity: d.counted.word().to_owned(),
                reached: d.reached,
            })
            .collect(),
        questions: said(&r.questions),
        conditions: said(&r.conditions),
        unused: said(&r.unused),
    }
}
