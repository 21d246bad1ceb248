//! Limits that are kept only while the runs are as warm as was assumed.

use downlead_base::{Diagnostic, Edit, Fix, Loc, Span, codes};
use downlead_physics::net::evaluate::Quantity;
use downlead_quantity::{db, from_db, number, power};

use super::rule::upper_limit;
use crate::chain::{Reached, Run, colder};
use crate::element::COLD_C;
use crate::result::{LimitResult, Verdict};

/// Cold copper conducts better: where a run's temperature is not stated, what it loses less on a
/// winter night may be more than the margin that is left.
pub(super) fn cold(run: &mut Run<'_, '_>, reached: &Reached<'_>, l: &LimitResult, what: &str) {
    let less = colder(reached);
    let output = run
        .evaluated
        .as_ref()
        .and_then(|e| e.output(Quantity::Eirp));
    let still_met = output.is_none_or(|o| {
        let margin = l.margin_db - less;
        upper_limit(margin, |db| o.above(db), o.mean + margin) == Verdict::Yes
    });
    if l.verdict != Verdict::Yes || less <= 0.0 || still_met {
        return;
    }
    let one = reached.cold.len() == 1;
    let mut d = Diagnostic::new(
        &codes::LIMIT_IN_THE_COLD,
        l.loc,
        format!(
            "The limit is met with the run{} at 20 °C, which is assumed; at {} °C {} less and {what} on {} is {} more: {} ± {}.",
            if one { "" } else { "s" },
            number(COLD_C, 0).replace('-', "−"),
            if one { "it loses" } else { "they lose" },
            run.point.band,
            db(less),
            power(l.value_w * from_db(less)),
            db(l.uncertainty_db)
        ),
    )
    .at("met while it is warm")
    .help("Say how cold and warm it gets, at the run or at its place; the interval then counts as uncertainty.");
    let mut edits = Vec::new();
    for (part, _) in &reached.cold {
        let end = part.loc.span.end;
        d = d.also(
            part.tag.as_ref().map_or(part.loc, |t| t.loc),
            "no temperature",
        );
        edits.push(Edit {
            loc: Loc::new(part.loc.item, Span::new(end, end)),
            text: format!(", at {} °C to 35 °C", number(COLD_C, 0)),
        });
    }
    d.fixes.push(Fix {
        title: format!(
            "give the run{} a range of temperature, {} °C to 35 °C to begin with",
            if one { "" } else { "s" },
            number(COLD_C, 0)
        ),
        edits,
        preferred: false,
    });
    run.diags.push(d);
}
