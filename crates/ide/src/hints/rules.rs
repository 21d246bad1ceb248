//! At `under` and at the clauses of a licence in the same file: what they say of the chains.

use std::collections::BTreeMap;

use downlead_base::Loc;
use downlead_eval::licence::{CAUTION, RuleResult};
use downlead_eval::result::{BandResult, ChainResult};
use downlead_quantity::power;

use super::lines::Hints;
use crate::words::{plus_minus, under_or_over};

/// Chains named at a clause at most.
const SHOWN: usize = 2;

/// A clause compared on a band.
type Row<'r> = (&'r BandResult, &'r RuleResult);

impl Hints<'_, '_> {
    pub(super) fn rules(&mut self, chains: &[ChainResult]) {
        let rows = || {
            chains
                .iter()
                .flat_map(|c| c.bands.iter())
                .filter(|b| self.c.shows(&b.band))
                .flat_map(|b| b.rules.iter().map(move |r| (b, r)))
        };
        let mut at: BTreeMap<u32, (bool, Vec<Row<'_>>)> = BTreeMap::new();
        let mut put = |end: Option<u32>, clause: bool, row| {
            if let Some(end) = end {
                at.entry(end).or_insert((clause, Vec::new())).1.push(row);
            }
        };
        for row in rows() {
            let end = |loc: Loc| self.end_of(loc);
            put(end(row.1.under), false, row);
            put(row.1.clause.and_then(end), true, row);
        }
        for (end, (clause, mut rows)) in at {
            let margin = |r: &Row<'_>| r.1.judged.as_ref().map_or(f64::INFINITY, |j| j.margin_db);
            rows.sort_by(|a, b| {
                a.1.verdict
                    .cmp(&b.1.verdict)
                    .then(margin(a).total_cmp(&margin(b)))
            });
            self.begin(end, "");
            let shown = if clause { SHOWN } else { 1 };
            for (i, row) in rows.iter().take(shown).enumerate() {
                let tip = self.tip(|| explained(&rows));
                let line = self.at(end);
                if i > 0 {
                    line.word(", ");
                }
                line.push(one(row, clause), tip, None);
            }
            if rows.len() > shown {
                let more = rows.len() - shown;
                self.at(end).word(format!(", {more} more"));
            }
            if self.explains(end) {
                let words = explained(&rows);
                self.at(end).tooltip.push(words);
            }
        }
    }
}

/// `2m met: 0.85 dB under ± 0.74 dB`; at `under` with the citation.
fn one((b, r): &Row<'_>, clause: bool) -> String {
    let numbers = r.judged.as_ref().map_or_else(
        || r.why.first().map_or(String::new(), |w| format!(": {w}")),
        |j| {
            format!(
                ": {}{}",
                under_or_over(j.margin_db),
                plus_minus(j.uncertainty_db)
            )
        },
    );
    let cite = match clause || r.cite.is_empty() {
        true => String::new(),
        false => format!(", {}", r.cite),
    };
    format!("{} {}{numbers}{cite}", b.place(), r.verdict.words())
}

/// All rows, and what they are worth.
fn explained(rows: &[Row<'_>]) -> String {
    let mut lines: Vec<String> = rows
        .iter()
        .map(|row| {
            let (_, r) = row;
            let limit = r.judged.as_ref().map_or(String::new(), |j| {
                format!(
                    " ({} of {} {})",
                    power(j.value_w),
                    power(j.limit_w),
                    j.quantity.word()
                )
            });
            format!("{} {}{limit}", r.set, one(row, false))
        })
        .collect();
    lines.push(CAUTION.to_owned());
    lines.join("  \n")
}
