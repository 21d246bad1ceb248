//! A meter that set the transmitter and is read again further on.

use downlead_station::model::Instrument;

use crate::assume::Assumed;
use crate::cause::Cause;
use crate::chain::{NodeState, Run};
use crate::instrument::between_readings_db;

/// The meter that set the transmitter is off by the same at a reading further on, and that much
/// cancels. What does not is how it departs from a straight scale, and its scatter, at both
/// readings: standard, dB; 0 for another meter, whose accuracy holds for a lone reading as it is.
pub(crate) fn beside_scale<'m>(
    run: &mut Run<'m, '_>,
    instrument: Option<&'m Instrument>,
    state: &NodeState<'m>,
    watts: f64,
) -> f64 {
    let Some(i) = instrument else { return 0.0 };
    let set_it = Cause::Instrument(&i.name.text);
    if !state.forward.terms.iter().any(|t| t.0 == set_it) {
        return 0.0;
    }
    if i.accuracy.is_some() && i.linearity.is_none() && i.repeatability.is_none() {
        run.assumed.add(Assumed::MeterScatter, i.name.loc);
    }
    between_readings_db(i, watts)
}
