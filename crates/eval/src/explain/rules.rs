//! The verdict of a clause, step by step.

use downlead_quantity::power;
use downlead_station::model::Confidence;

use super::Derivation;
use super::cx::Cx;
use crate::licence::{CAUTION, RuleResult, RuleVerdict};

impl Cx<'_> {
    /// Why a clause is met, not met, or cannot be told or judged.
    pub(super) fn rule(&self, r: &RuleResult) -> Derivation {
        let name = match r.clause {
            Some(_) => format!("{} {}", r.set, r.cite),
            None => r.set.to_string(),
        };
        let d = Derivation::of(self.title(&format!("verdict by {name}")), r.verdict.words())
            .at(r.under);
        let d = match &r.judged {
            Some(j) => d
                .from(format!(
                    "{} of {} counts against {}; confidence {}. {CAUTION}",
                    j.quantity.word(),
                    power(j.value_w),
                    power(j.limit_w),
                    r.confidence.map_or("high", Confidence::word)
                ))
                .with(self.limit(j)),
            None if r.verdict == RuleVerdict::NoRule => d.from(format!(
                "no clause of it bears on this frequency and class, which is not \"met\". {CAUTION}"
            )),
            None => d.from(format!("not judged. {CAUTION}")),
        };
        d.with_all(
            r.why
                .iter()
                .map(|w| Derivation::of("what is open", w.to_string())),
        )
    }
}
