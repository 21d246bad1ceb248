//! Expectations, and what a receive chain can say of its statements.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::{db, number, power, to_db};
use downlead_station::model::{Expect, LimitQuantity, Node};

use super::limit::no_gain;
use crate::chain::{NodeState, Run, holds};
use crate::result::BandResult;

/// A statement at a node of a receive chain: there is no transmitter, so only the loss is known.
pub(crate) fn receive_statement(
    run: &mut Run<'_, '_>,
    loc: Loc,
    node: &Node,
    loss_db: f64,
    complete: bool,
) {
    let what = match node {
        Node::Expect {
            expect: Expect::Loss(l, half),
            on,
        } => {
            if complete && holds(on, run.point, run.cx.env) && (loss_db - l).abs() > half + 1e-9 {
                run.diags.push(missed(
                    &run.point.band,
                    loc,
                    &db(loss_db),
                    &format!("{} ± {}", db(*l), db(*half)),
                ));
            }
            return;
        }
        // which is judged of the site
        Node::Desense { .. } if run.cx.station.is_some() => return,
        Node::Desense { .. } => {
            run.diags.push(outside_station(loc));
            return;
        }
        Node::Expect { .. } => "This expectation",
        Node::Log { .. } => "A log of readings",
        Node::Read { .. } => "A reading",
        Node::Limit { .. } => "A limit",
    };
    run.diags.push(
        Diagnostic::new(
            &codes::MISPLACED_STATEMENT,
            loc,
            format!("{what} needs a transmitter, and this is a receive chain."),
        )
        .at("not compared")
        .help("In a receive chain only `expect loss` and `limit … desense` can be compared."),
    );
}

/// A limit of a desense in a chain that stands by itself.
fn outside_station(loc: Loc) -> Diagnostic {
    Diagnostic::new(
        &codes::MISPLACED_STATEMENT,
        loc,
        "A desense is judged with the transmitters of a station, and this chain stands in none.",
    )
    .at("not judged")
    .help("Put the chain into a `station`, with its transmitters and those it is `beside`.")
}

fn missed(band: &str, loc: Loc, got: &str, want: &str) -> Diagnostic {
    Diagnostic::new(
        &codes::EXPECTATION_MISSED,
        loc,
        format!("On {band}: {want} is expected here and {got} computed."),
    )
    .at(format!("computed: {got}"))
}

pub(super) fn expectation(
    run: &mut Run<'_, '_>,
    result: &BandResult,
    loc: Loc,
    e: &Expect,
    state: &NodeState<'_>,
) {
    let mut other = None;
    let (ok, got, want) = match *e {
        Expect::Power(w, half) => {
            let Some(net) = state.net_w else { return };
            let d = to_db(net / w);
            (
                d.abs() <= half + 1e-9,
                power(net),
                format!("{} ± {}", power(w), db(half)),
            )
        }
        Expect::Loss(l, half) => {
            let Some(loss) = state.loss_db else { return };
            (
                (loss - l).abs() <= half + 1e-9,
                db(loss),
                format!("{} ± {}", db(l), db(half)),
            )
        }
        Expect::Swr(s, half) => {
            let Some(swr) = state.swr else { return };
            (
                (swr - s).abs() <= half + 1e-9,
                format!("SWR {}", number(swr, 2)),
                format!("SWR {} ± {}", number(s, 2), number(half, 2)),
            )
        }
        Expect::Radiated(q, w, half, word) => {
            let v = if q == LimitQuantity::Eirp {
                result.eirp_w
            } else {
                result.erp_w()
            };
            let Some(v) = v else {
                if result.complete {
                    no_gain(run, result, q, loc);
                }
                return;
            };
            let name = q.word().to_uppercase();
            // 2.15 dB off: the other of the two was meant
            let (wrong, right) = if q == LimitQuantity::Eirp {
                (result.erp_w(), LimitQuantity::Erp)
            } else {
                (result.eirp_w, LimitQuantity::Eirp)
            };
            if wrong.is_some_and(|x| to_db(x / w).abs() < 0.05) {
                let said = right.word().to_uppercase();
                let help = format!("{} is the {said}; {name} is {}.", power(w), power(v));
                other = Some((help, word, right.word()));
            }
            (
                to_db(v / w).abs() <= half + 1e-9,
                format!("{name} {}", power(v)),
                format!("{name} {} ± {}", power(w), db(half)),
            )
        }
    };
    if !ok {
        let mut d = missed(&run.point.band, loc, &got, &want);
        if let Some((help, word, right)) = other {
            d = d.help(help).fix(format!("write `{right}`"), word, right);
        }
        run.diags.push(d);
    }
}
