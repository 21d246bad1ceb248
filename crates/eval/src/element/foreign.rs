//! What a device does at a frequency that its chain is not made for: what a transmitter sends beside its carrier,
//! or a carrier that is not to be received.

use downlead_station::Env;
use downlead_station::model::{BandKind, Figure, PartKind, Port, When};

use super::Build;
use crate::point::{Picked, Point, band_matches, pick};

/// A rejection stated at one frequency holds within 0.2 % of it: notches are narrow (common
/// practice).
pub(crate) const NEAR: f64 = 1.002;

/// What a leg or path does at a frequency.
pub(crate) enum Leg<'m> {
    /// It has its usual loss there.
    Passes,
    /// It keeps this off: the whole loss from the port to the common one.
    Rejects(Picked<'m>),
    /// Nothing is said of it there.
    Unknown,
}

/// The figure that holds at a frequency, or on a band next to it: what distinguishes no frequencies loses nearly the
/// same a few per cent off (our choice: 5 %).
fn beside<'m>(figures: &'m [Figure], point: &Point, env: &Env) -> Option<Picked<'m>> {
    const BESIDE: f64 = 0.05;
    let off = |f: &Figure| {
        let When::Bands(names) = &f.when else {
            return f64::INFINITY;
        };
        let bands = names.iter().filter_map(|n| env.band(&n.text));
        let hertz = bands.flat_map(|b| match b.kind {
            BandKind::Single(hz) => [Some(hz), None],
            BandKind::Pair { transmit, receive } => [transmit, receive],
            BandKind::Range(low, high) => [Some(low), Some(high)],
        });
        let off = hertz.flatten().map(|hz| (point.hz / hz - 1.0).abs());
        off.fold(f64::INFINITY, f64::min)
    };
    pick(figures, point, env).or_else(|| {
        let near = figures.iter().min_by(|a, b| off(a).total_cmp(&off(b)))?;
        (off(near) <= BESIDE).then_some(Picked {
            value: near.value,
            figure: near,
            outside: 1.0,
        })
    })
}

/// What the text says of a leg at a frequency. Parts that are made to distinguish frequencies pass
/// only what they are said to pass.
pub(crate) fn leg<'m>(kind: PartKind, port: &'m Port, point: &Point, env: &Env) -> Leg<'m> {
    let inside = |(low, high): &(f64, f64)| (*low..=*high).contains(&point.hz);
    if port.passes.iter().any(inside) {
        return Leg::Passes;
    }
    // a rejection without a frequency is one between ports, and a relay has no other: what a port
    // itself does at this frequency it does not say
    let of_path = |p: &Picked<'_>| {
        p.outside <= NEAR && p.figure.when != When::Always && kind != PartKind::Switch
    };
    if let Some(p) = pick(&port.rejects, point, env).filter(of_path) {
        return Leg::Rejects(p);
    }
    let selective = matches!(
        kind,
        PartKind::Duplexer | PartKind::Diplexer | PartKind::Combiner | PartKind::Filter
    ) || !port.passes.is_empty();
    let stated = pick(&port.loss, point, env).is_some_and(|p| match &p.figure.when {
        When::Always => false,
        When::Bands(b) => b.iter().any(|n| band_matches(&n.text, point, env)),
        When::At(_) => p.outside <= NEAR,
    });
    match selective && !stated {
        true => Leg::Unknown,
        false => Leg::Passes,
    }
}

impl<'m> Build<'m, '_> {
    /// The loss that holds of a port at the frequency; none where nothing is said of what it does there.
    pub(super) fn loss_of(
        &self,
        kind: PartKind,
        port: Option<&'m Port>,
    ) -> Option<Option<Picked<'m>>> {
        let figures: &'m [Figure] = port.map_or(&[], |p| &p.loss);
        let Some(port) = port.filter(|_| self.foreign) else {
            return Some(pick(figures, self.point, self.env));
        };
        match leg(kind, port, self.point, self.env) {
            Leg::Passes => Some(beside(figures, self.point, self.env)),
            Leg::Rejects(p) => Some(Some(p)),
            Leg::Unknown => None,
        }
    }
}
