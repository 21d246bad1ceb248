//! What an SWR costs.

use downlead_base::{Diagnostic, codes};
use downlead_quantity::{db, number};
use downlead_station::model::{Direction, PartKind};

use crate::result::NodeKind;

/// What an SWR costs, once a chain: with a tuner, without, and what a table would make of it.
pub(crate) fn swr_cost(c: &crate::result::ChainResult, out: &mut Vec<Diagnostic>) {
    use downlead_physics::mismatch::{gamma_from_swr, mismatch_loss};
    if c.direction != Direction::Transmit {
        return;
    }
    let mut worst: Option<(f64, Diagnostic)> = None;
    for b in c
        .bands
        .iter()
        .filter(|b| b.complete && b.branches.is_empty())
    {
        let end = b.nodes.last().and_then(|n| {
            let ends = matches!(n.kind, NodeKind::Part(PartKind::Antenna | PartKind::Load));
            Some((n, n.swr.filter(|s| ends && *s >= 1.5)?))
        });
        let (Some((end, end_swr)), Some(total), Some(first)) = (end, b.total_db, b.swr) else {
            continue;
        };
        let matched: f64 = b.nodes.iter().map(|n| n.matched_db).sum();
        let loss = |swr: f64| mismatch_loss(gamma_from_swr(swr));
        let swr = number(end_swr, if end_swr < 10.0 { 2 } else { 0 });
        let (difference, words) = if b.tuner {
            let summed = matched + loss(end_swr);
            (
                summed - total,
                format!(
                    "With SWR {swr} at the {}, {} of matched line become {} on {}, not {}: the tuner sends out again what comes back.",
                    end.kind,
                    db(matched),
                    db(total),
                    b.band,
                    db(summed)
                ),
            )
        } else {
            let tuned = total - loss(first);
            (
                total - tuned,
                format!(
                    "With SWR {swr} at the {}, {} of matched line become {} on {}; with a tuner at the transmitter it would be {}.",
                    end.kind,
                    db(matched),
                    db(total),
                    b.band,
                    db(tuned)
                ),
            )
        };
        if difference >= 0.05 && worst.as_ref().is_none_or(|w| difference > w.0) {
            let d =
                Diagnostic::new(&codes::SWR_NOT_ADDED, end.chain, words).at(format!("SWR {swr}"));
            worst = Some((difference, d));
        }
    }
    out.extend(worst.map(|w| w.1));
}
