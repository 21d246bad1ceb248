//! Antennas and loads at the end of a stretch: what comes back, and the gain.

use downlead_base::Loc;
use downlead_physics::net::part::{Gain, Load};
use downlead_station::Env;
use downlead_station::model::{Antenna, Basis, Part, When};

use crate::assume::Assumed;
use crate::cause::Cause;
use crate::element::Build;
use crate::network;
use crate::point::{Point, band_matches, pick, pick_by};

/// What comes back from an antenna or load; none if what says so could not be read, or a file
/// does not tell.
pub(crate) fn antenna_wave<'m>(
    b: &mut Build<'m, '_>,
    part: &'m Part,
    a: &'m Antenna,
    chain: Loc,
) -> Option<Load> {
    if a.broken_match {
        return None;
    }
    let who = part.tag.as_ref().map_or(part.loc, |t| t.loc);
    let of_band = a.impedance.iter().find(|z| match &z.resistance.when {
        When::Bands(n) => n.iter().any(|n| band_matches(&n.text, b.point, b.env)),
        _ => false,
    });
    let file = network::picked(&a.network, b.point, b.env)
        // what holds on this band comes before what holds on all
        .filter(|f| of_band.is_none() || f.figure.when != When::Always);
    if let Some(file) = file {
        let asked = network::Asked {
            file,
            chain,
            point: b.point,
        };
        let (gamma, phase_known) = network::one_port(&asked, part.kind, b.env, &mut b.diags)?;
        b.assumed.add(Assumed::FileExact, who);
        let phase = if phase_known {
            0
        } else {
            b.wiring.phase(1, who)
        };
        return Some(Load::Gamma {
            gamma,
            phase_known,
            phase,
        });
    }
    let best = of_band.or_else(|| {
        a.impedance
            .iter()
            .find(|z| z.resistance.when == When::Always)
    });
    if let Some(z) = best {
        let at = z.resistance.loc;
        return Some(Load::Impedance {
            resistance: b.wiring.positive(
                "resistance, ohm",
                &z.resistance.value,
                Cause::Reflection(at),
            ),
            reactance: b
                .wiring
                .figure("reactance, ohm", &z.reactance, Cause::Reactance(at)),
        });
    }
    if let Some(s) = pick(&a.swr, b.point, b.env) {
        let swr = b.wiring.swr(&s.value, Cause::Reflection(s.figure.loc));
        return Some(Load::Swr {
            swr,
            phase: b.load_phase(&s.value, who),
        });
    }
    b.assumed.add(Assumed::AntennaMatched, who);
    Some(Load::Matched)
}

/// Gain of an antenna at the point: dBi, its uncertainty, whether it includes the mismatch, where.
pub(crate) struct GainAt {
    pub(crate) dbi: f64,
    pub(crate) u: f64,
    pub(crate) normal: bool,
    pub(crate) realized: bool,
    pub(crate) directivity: bool,
    pub(crate) dipole: bool,
    pub(crate) loc: Loc,
    pub(crate) basis: Basis,
}

pub(crate) fn gain_at(a: &Antenna, point: &Point, env: &Env) -> Option<GainAt> {
    // gains are few; the choice rule is that of all figures
    let p = pick_by(&a.gain, |g| &g.figure, point, env)?;
    let g = a.gain.iter().find(|g| g.figure.loc == p.figure.loc)?;
    Some(GainAt {
        dbi: p.value.value,
        u: p.value.u,
        normal: p.value.normal,
        realized: g.realized,
        directivity: g.directivity,
        dipole: g.dipole,
        loc: g.figure.loc,
        basis: g.figure.meta.basis,
    })
}

/// The gain's inputs.
pub(super) fn gain<'m>(b: &mut Build<'m, '_>, a: &'m Antenna) -> Option<Gain> {
    let g = gain_at(a, b.point, b.env)?;
    let m = downlead_quantity::Measure {
        value: g.dbi,
        u: g.u,
        normal: g.normal,
        ..downlead_quantity::Measure::default()
    };
    Some(Gain {
        dbi: b.wiring.figure("gain, dBi", &m, Cause::Gain(g.loc)),
        efficiency: a.efficiency.filter(|_| g.directivity).map(|e| {
            b.wiring
                .figure("efficiency", &e, Cause::Efficiency(g.loc))
                .within(1e-6, 1.0)
        }),
        realized: g.realized,
    })
}
