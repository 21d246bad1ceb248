//! The largest share of an uncertainty, in words.

use crate::cause::{Budget, Cause};

/// What to improve first.
pub(super) fn largest(b: &Budget<'_>) -> String {
    let total: f64 = b.terms.iter().map(|t| t.1 * t.1).sum();
    let Some(best) = b
        .terms
        .iter()
        .max_by(|x, y| x.1.abs().total_cmp(&y.1.abs()))
    else {
        return "No uncertainty is stated; the margin is exactly nothing.".to_owned();
    };
    let share = 100.0 * best.1 * best.1 / total;
    let what = match &best.0 {
        Cause::Power(_) => "the transmitter's power".to_owned(),
        Cause::Instrument(n) => format!("instrument {n}"),
        Cause::Cable(n) => format!("the loss table {n}"),
        Cause::Length(_) => "a length".to_owned(),
        Cause::Connector(n) => format!("the connectors of family {n}"),
        Cause::Device(_) => "a device's loss".to_owned(),
        Cause::Gain(_) => "the antenna's gain".to_owned(),
        Cause::Phase(_) | Cause::Phases => "reflections of unknown phase".to_owned(),
        Cause::Multiple => "second-order effects (several reflections together)".to_owned(),
        Cause::Velocity(n) => format!("the velocity factor of {n}"),
        Cause::Impedance(n) => format!("the impedance of {n}"),
        Cause::Construction(n, _) => format!("the dimensions of {n}"),
        Cause::Bump(n, "SWR") => format!("what the connectors {n} reflect"),
        Cause::Bump(n, _) => format!("the impedance bump of {n}"),
        Cause::Coupling(_) => "a coupling".to_owned(),
        Cause::Share(..) => "how a divider divides".to_owned(),
        Cause::Noise(_) => "a noise figure".to_owned(),
        Cause::Amplification(_) => "an amplifier's gain".to_owned(),
        Cause::Isolation(_) => "an isolation".to_owned(),
        Cause::Reflection(_) => "what a part reflects".to_owned(),
        Cause::Reactance(_) => "the antenna's reactance".to_owned(),
        Cause::Efficiency(_) => "the antenna's efficiency".to_owned(),
        Cause::Sits(_) => "where a balun's loss lies".to_owned(),
        Cause::OwnTemperature(_) => "a part's temperature".to_owned(),
        Cause::Temperature(n) => format!("the temperature of {n}"),
        Cause::Added(_) => "the added loss".to_owned(),
    };
    format!("The largest share of the uncertainty ({share:.0} %) is {what}.")
}
