//! A meter that set the transmitter and is read again further on.

use downlead_station::model::Instrument;

use crate::cause::Cause;
use crate::chain::{NodeState, Run};
use crate::instrument::{between_readings_db, note_scatter};

/// The meter that set the transmitter is off by the same at a reading further on, and that much
/// cancels. What does not is how it departs from a straight scale, and its scatter, at both
/// readings: standard, dB; 0 for another meter, whose accuracy holds for a lone reading as it is.
pub(crate) fn beside_scale<'m>(
    run: &mut Run<'m, '_>,
    instrument: Option<&'m Instrument>,
    state: &NodeState<'m>,
) -> f64 {
    if let Some(i) = instrument.filter(|i| set_it(i, state)) {
        note_scatter(i, &mut run.assumed);
    }
    scatter_db(instrument, state)
}

/// Whether the instrument is the one that set the transmitter.
fn set_it(i: &Instrument, state: &NodeState<'_>) -> bool {
    let scale = Cause::Instrument(&i.name.text);
    state.forward.terms.iter().any(|t| t.0 == scale)
}

/// The scatter that [`beside_scale`] counts: standard, dB.
pub(crate) fn scatter_db(instrument: Option<&Instrument>, state: &NodeState<'_>) -> f64 {
    instrument
        .filter(|i| set_it(i, state))
        .zip(state.forward_w)
        .map_or(0.0, |(i, watts)| between_readings_db(i, watts))
}
