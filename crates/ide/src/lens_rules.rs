//! The lens above a licence or rules: what its clauses come to in the stations of the file.

use std::collections::BTreeMap;

use downlead_base::Span;
use downlead_eval::Scope;
use downlead_eval::licence::RuleVerdict;
use downlead_report::words::figure::counted;
use downlead_station::model::{Meaning, RuleSet};

use crate::view::View;

/// Where the lens stands, what it says, and the first station that is under the set; a set that no station of the file
/// is under has none.
pub(crate) fn lens(
    view: &View<'_>,
    scope: &Scope,
    set: &RuleSet,
) -> Option<(Span, String, String)> {
    let mut verdicts: BTreeMap<RuleVerdict, usize> = BTreeMap::new();
    let mut questions = 0;
    let mut first = None;
    for (_, low, result) in scope.items() {
        let Meaning::Station(st) = &low.meaning else {
            continue;
        };
        if !st.under.iter().any(|u| u.name.text == set.name.text) {
            continue;
        }
        first.get_or_insert(st);
        let bands = result.chains.iter().flat_map(|c| &c.bands);
        for r in bands
            .flat_map(|b| &b.rules)
            .filter(|r| *r.set == *set.name.text)
        {
            *verdicts.entry(r.verdict).or_default() += 1;
        }
        let site = result.rules.iter().flat_map(|r| &r.questions);
        questions += site.filter(|q| *q.set == *set.name.text).count();
    }
    let (st, place) = (first?, view.place(set.name.loc)?);
    let mut parts: Vec<String> = verdicts
        .iter()
        .map(|(v, n)| format!("{n} {}", v.words()))
        .collect();
    if parts.is_empty() {
        parts.push("no clause bears on a chain".to_owned());
    }
    if questions > 0 {
        parts.push(counted(questions, "open question"));
    }
    let title = format!("clauses: {}", parts.join(", "));
    Some((place.span, title, st.name.text.to_string()))
}
