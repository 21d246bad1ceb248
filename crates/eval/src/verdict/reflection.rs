//! Readings of what comes back: reflected power and SWR.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::mismatch::{gamma_from_swr, return_loss, swr_from_gamma};
use downlead_quantity::{db, from_db, number, power};
use downlead_station::model::{Read, ReadPower};

use super::reading::read_reflection;
use crate::chain::{NodeState, Run};
use crate::result::{ReadingResult, Verdict};

/// By how much a directional wattmeter may misread a reflection coefficient: a directivity of 25 dB
/// (common practice for such meters).
pub(crate) const METER_GAMMA: f64 = 0.056_234_132_519_034_91;

pub(super) fn reflected_reading<'m>(
    run: &mut Run<'m, '_>,
    loc: Loc,
    (read, m): (&Read, &downlead_quantity::Measure),
    state: &NodeState<'m>,
) -> Option<ReadingResult> {
    let forward = state.forward_w?;
    let expected = forward - state.net_w?;
    let most = forward * from_db(-2.0 * state.ahead_db.max(0.0));
    if m.value > most * 1.001 {
        run.diags.push(
            Diagnostic::new(
                &codes::READING_IMPOSSIBLE,
                loc,
                format!(
                    "{} reflected cannot be: {} goes forward here and at most {} of it can come back through {} each way.",
                    power(m.value),
                    power(forward),
                    power(most),
                    db(state.ahead_db.max(0.0))
                ),
            )
            .at("more than is there"),
        );
        return Some(undecided(
            loc,
            Some(ReadPower::Reflected),
            m.value,
            expected,
        ));
    }
    let (g, u) = read_reflection(read, state)?;
    let words = format!(
        "{} reflected read, {} expected",
        power(m.value),
        power(expected)
    );
    reflection(
        run,
        loc,
        Some(ReadPower::Reflected),
        (m.value, expected),
        (g, u),
        &words,
        state,
    )
}

fn undecided(loc: Loc, power: Option<ReadPower>, read: f64, expected: f64) -> ReadingResult {
    ReadingResult {
        loc,
        power,
        read,
        expected,
        difference_db: 0.0,
        uncertainty_db: 0.0,
        verdict: Verdict::CannotTell,
    }
}

/// Compares a reflection read (`g` with its half-width) with that of the text; none where that
/// could not be computed.
pub(super) fn reflection<'m>(
    run: &mut Run<'m, '_>,
    loc: Loc,
    power: Option<ReadPower>,
    (read, expected): (f64, f64),
    (g, u): (f64, f64),
    words: &str,
    state: &NodeState<'m>,
) -> Option<ReadingResult> {
    let there = gamma_from_swr(state.swr?);
    let ahead = state.ahead_db.max(0.0);
    // even a full reflection comes back weakened by the loss both ways
    let most = from_db(-ahead);
    if g > most + METER_GAMMA {
        run.diags.push(
            Diagnostic::new(
                &codes::READING_IMPOSSIBLE,
                loc,
                format!(
                    "SWR {} cannot be read through {}: even an open end would give no more than {}.",
                    number(swr_from_gamma(g), 2),
                    db(ahead),
                    number(swr_from_gamma(most), 2)
                ),
            )
            .at("cannot be"),
        );
        return Some(undecided(loc, power, read, expected));
    }
    // the text knows no reflection here: nothing to compare with
    let unknown = there < 1e-4;
    let uncertainty = METER_GAMMA + u + state.gamma_spread;
    let verdict = match (unknown, (g - there).abs() > uncertainty) {
        (true, _) => Verdict::CannotTell,
        (_, true) => Verdict::No,
        _ => Verdict::Yes,
    };
    // loss still ahead hides the antenna's SWR: what is read here is better than what is there
    let antenna = swr_from_gamma((g / most).min(0.99));
    if verdict != Verdict::Yes && ahead > 1.0 && antenna > 1.5 * swr_from_gamma(g) && antenna > 2.0
    {
        run.diags.push(
            Diagnostic::new(
                &codes::SWR_AT_SHACK,
                loc,
                format!(
                    "SWR {} read here through {} means about {} at the antenna.",
                    number(swr_from_gamma(g), 2),
                    db(ahead),
                    number(antenna, 1)
                ),
            )
            .at("what comes back goes through the loss twice"),
        );
    } else if verdict == Verdict::No {
        let mut d = Diagnostic::new(
            &codes::READING_CONTRADICTS,
            loc,
            format!("On {}: {words}.", run.point.band),
        )
        .at("differs by more than a meter's directivity")
        .help(if g < there {
            "More loss than the text says, or a better antenna, makes a reflection look smaller."
        } else {
            "The antenna or something before it reflects more than the text says."
        });
        d.severity = downlead_base::Severity::Warning;
        run.diags.push(d);
    }
    if unknown {
        return Some(undecided(loc, power, read, expected));
    }
    Some(ReadingResult {
        loc,
        power,
        read,
        expected,
        difference_db: return_loss(g.max(1e-3)) - return_loss(there),
        uncertainty_db: return_loss(there) - return_loss((there + uncertainty).min(1.0)),
        verdict,
    })
}
