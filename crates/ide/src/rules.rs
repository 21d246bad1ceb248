//! What an editor shows of licences and rules.

use downlead_eval::licence::CAUTION;
use downlead_station::model::{Amount, Clause, Counted, RuleSet};

use crate::markdown::Writer;

/// Clauses shown in a hover at most.
const SHOWN: usize = 8;

/// The hover of a licence or of rules: who issued it, its date, its clauses in short.
pub(crate) fn hover(w: &mut Writer<'_, '_>, set: &RuleSet) {
    let mut about: Vec<String> = Vec::new();
    about.extend(set.authority.as_ref().map(ToString::to_string));
    about.extend(set.edition.as_ref().map(ToString::to_string));
    about.extend(set.dated.as_ref().map(|d| format!("dated {d}")));
    about.extend(set.until.as_ref().map(|d| format!("until {d}")));
    if !about.is_empty() {
        w.text(&about.join(", "));
    }
    let limits = set.clauses.iter().filter(|c| c.is_limit()).count();
    w.text(&format!(
        "{limits} limits, {} thresholds, {} questions, {} fixed, {} conditions",
        set.clauses.len() - limits,
        set.asks.len(),
        set.fixed.len(),
        set.conditions.len()
    ));
    for c in set.clauses.iter().take(SHOWN) {
        w.text(&clause(c));
    }
    w.text(CAUTION);
}

/// A clause in a few words: `30 W ERP carrier, clause 4, confidence high`.
fn clause(c: &Clause) -> String {
    let amount = match &c.amount {
        Amount::Law(law) if law.factors.is_empty() => downlead_quantity::power(law.watts),
        Amount::Law(law) => {
            let of: Vec<&str> = law.factors.iter().map(|f| f.variable.word()).collect();
            format!("by a law of {}", of.join(", "))
        }
        Amount::Steps(v, rows) => format!("{} steps of {}", rows.len(), v.word()),
    };
    let counted = match c.counted {
        Counted::Power(q) => q.word().to_uppercase(),
        Counted::DcInput => "DC input".to_owned(),
    };
    let kind = c.kind.map_or(String::new(), |k| format!(" {}", k.word()));
    let confidence = c
        .confidence
        .map_or(String::new(), |k| format!(", confidence {}", k.word()));
    format!("{amount} {counted}{kind}, {}{confidence}", c.citation())
}
