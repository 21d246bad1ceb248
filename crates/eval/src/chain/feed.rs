//! The transmitter of a chain at a point: its power, what that counts, and its uncertainty.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::mismatch::swr_from_gamma;
use downlead_quantity::number;
use downlead_station::Env;
use downlead_station::model::{Instrument, Mode, Part, Transmitter};

use super::Run;
use super::stretch::Stretch;
use crate::assume::{Assumed, Assumptions};
use crate::cause::Cause;
use crate::point::{Point, pick_by};
use crate::verdict;
use crate::walk::Stop;

/// The mode as physics names it.
pub(crate) fn physics_mode(m: Mode) -> downlead_physics::power::Mode {
    use downlead_physics::power::Mode as P;
    match m {
        Mode::Fm => P::Fm,
        Mode::Data => P::Data,
        Mode::Cw => P::Cw,
        Mode::Ssb => P::Ssb,
        Mode::SsbProcessed => P::SsbProcessed,
        Mode::Am => P::Am,
    }
}

/// The transmitter at the point.
pub(crate) struct Feed<'m> {
    pub(crate) part: &'m Part,
    pub(crate) data: &'m Transmitter,
    pub(crate) loc: Loc,
    /// Corrected, where it was read on an instrument.
    pub(crate) watts: f64,
    /// Standard uncertainty of that by the instrument, dB.
    pub(crate) read_db: f64,
    pub(crate) figure: &'m downlead_station::model::Figure,
    pub(crate) kind: Option<downlead_station::model::PowerKind>,
    pub(crate) instrument: Option<&'m Instrument>,
}

pub(super) fn feed<'m>(
    stops: &[Stop<'m>],
    point: &Point,
    env: &'m Env,
    out: &mut Vec<Diagnostic>,
) -> Option<Feed<'m>> {
    let Stop::Part { part, loc, .. } = stops
        .iter()
        .find(|s| matches!(s, Stop::Part { part, .. } if part.kind.sends()))?
    else {
        return None;
    };
    let t = part.data.transmitter()?;
    let chosen = pick_by(&t.power, |p| &p.0, point, env).map(|p| p.figure.loc);
    let Some((figure, kind)) = t.power.iter().find(|p| Some(p.0.loc) == chosen) else {
        out.push(
            Diagnostic::new(
                &codes::NO_FIGURE_FOR_BAND,
                part.tag.as_ref().map_or(part.loc, |t| t.loc),
                format!(
                    "The transmitter has no power for {} ({}).",
                    point.band,
                    downlead_quantity::frequency(point.hz)
                ),
            )
            .at("no power for this band")
            .also(*loc, "the chain that needs it"),
        );
        return None;
    };
    let instrument = figure.meta.instrument.as_ref();
    let instrument = instrument.and_then(|n| env.instrument(&n.text));
    // by how much a power is off that was read with a meter of which that is not known, is not
    // known either
    let read_with = figure.meta.instrument.is_some() && figure.value.u == 0.0;
    if read_with && instrument.is_none_or(|i| i.broken) {
        return None;
    }
    let stated = figure.value.value;
    let (factor, read_db) = instrument.map_or((1.0, 0.0), |i| {
        let date = figure.meta.date.as_deref();
        crate::certificate::read(i, env, date, (point.hz, stated))
    });
    Some(Feed {
        part,
        data: t,
        loc: *loc,
        watts: factor * stated,
        read_db,
        figure,
        kind: *kind,
        instrument,
    })
}

/// Uncertainty of the transmitter's power: its cause, standard in dB, and whether it is normal.
pub(super) fn feed_cause<'m>(f: &Feed<'m>, assumed: &mut Assumptions) -> (Cause<'m>, f64, bool) {
    let who = f.part.tag.as_ref().map_or(f.part.loc, |t| t.loc);
    let own = f.figure.value.u;
    match (f.instrument, own > 0.0) {
        (Some(i), true) => (Cause::Instrument(&i.name.text), own, f.figure.value.normal),
        (Some(i), false) => (Cause::Instrument(&i.name.text), f.read_db, true),
        (None, true) => (Cause::Power(f.figure.loc), own, f.figure.value.normal),
        (None, false) => {
            assumed.add(Assumed::PowerExact, who);
            (Cause::Power(f.figure.loc), 0.0, false)
        }
    }
}

impl<'m> Run<'m, '_> {
    pub(super) fn foldback(&mut self, f: &Feed<'m>, gamma: f64) {
        let swr = swr_from_gamma(gamma);
        if let Some(limit) = f.data.foldback_swr.filter(|l| swr > *l) {
            self.diags.push(
                Diagnostic::new(
                    &codes::FOLDBACK,
                    f.loc,
                    format!(
                        "The transmitter sees an SWR of {} and turns itself down above {}; the powers here are those without.",
                        number(swr, 2),
                        number(limit, 2)
                    ),
                )
                .at(format!("{} on {}", number(swr, 2), self.point.band)),
            );
        }
    }

    pub(super) fn mean(&mut self, f: &Feed<'m>, antenna_w: Option<f64>) -> Option<f64> {
        let who = f.part.tag.as_ref().map_or(f.part.loc, |t| t.loc);
        let (watts, factor) = antenna_w.zip(verdict::mean_factor(f))?;
        let keyed = f.data.keyed.unwrap_or_else(|| {
            self.assumed.add(Assumed::AlwaysKeyed, who);
            1.0
        });
        Some(watts * factor * keyed)
    }

    /// Mean power against ratings, peak voltage against working voltage.
    pub(super) fn ratings(
        &mut self,
        s: &Stretch<'m>,
        feed: Option<&Feed<'m>>,
    ) -> Vec<crate::shared::Load> {
        feed.map_or_else(Vec::new, |f| crate::rating::check(self, s, f))
    }
}
