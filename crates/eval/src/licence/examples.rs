//! Worked examples in clauses: a clause that does not agree with its own examples was copied wrongly.

use downlead_base::{Diagnostic, codes};
use downlead_quantity::power;
use downlead_station::Env;
use downlead_station::model::{RuleSet, Variable};

use super::matching::in_range;
use crate::point::Point;

/// Runs the worked examples of a set.
pub(crate) fn examples(set: &RuleSet, env: &Env, out: &mut Vec<Diagnostic>) {
    for c in &set.clauses {
        for e in &c.examples {
            let point = Point {
                band: "".into(),
                part: None,
                hz: e.hz,
                named: false,
            };
            let known = |v: Variable| match v {
                Variable::Frequency => Some((e.hz, e.hz)),
                v => e.known.iter().find(|k| k.0 == v).map(|k| (k.1, k.1)),
            };
            let wrong = if in_range(c, &point, env) {
                match c.amount.candidates(&known) {
                    Err(v) => Some(format!(
                        "The clause goes by {}, and this example does not say it.",
                        v.noun()
                    )),
                    Ok(limits) => limits.first().and_then(|limit| {
                        // "must not exceed": equality passes, to the digits of an example
                        let passes = e.watts <= limit * (1.0 + 1e-9);
                        (passes != e.passes).then(|| {
                            format!(
                                "By the clause {} is allowed here, so {} {}.",
                                power(*limit),
                                power(e.watts),
                                if passes { "passes" } else { "fails" }
                            )
                        })
                    }),
                }
            } else {
                Some(format!(
                    "The clause does not hold at {}.",
                    downlead_quantity::frequency(e.hz)
                ))
            };
            if let Some(message) = wrong {
                out.push(
                    Diagnostic::new(&codes::RULE_EXAMPLE, e.loc, message)
                        .at("the example says otherwise")
                        .also(c.loc, "the clause")
                        .help(
                            "One of the two was copied wrongly: read the text of the rule again.",
                        ),
                );
            }
        }
    }
}
