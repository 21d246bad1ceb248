//! Antennas and loads at the end of a stretch: what comes back, and the gain.

use downlead_base::Loc;
use downlead_physics::cx as complex;
use downlead_physics::mismatch::{gamma_from_swr, reflection};
use downlead_quantity::to_db;
use downlead_station::Env;
use downlead_station::model::{Antenna, Basis, Part, When};
use num_complex::Complex64;

use crate::assume::Assumed;
use crate::cascade::{End, R0};
use crate::element::Build;
use crate::network;
use crate::point::{Point, band_matches, pick, pick_by};

/// What comes back from an antenna or load; none if the file that says so does not tell.
pub(super) fn antenna_wave<'m>(
    b: &mut Build<'m, '_>,
    part: &'m Part,
    a: &'m Antenna,
    chain: Loc,
) -> Option<End> {
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
        let (g, phase_known) = network::one_port(&asked, part.kind, b.env, &mut b.diags)?;
        b.assumed.add(Assumed::FileExact, who);
        return Some(if phase_known {
            End::Known(g)
        } else {
            End::Magnitude(complex::abs(g))
        });
    }
    let best = of_band.or_else(|| {
        a.impedance
            .iter()
            .find(|z| z.resistance.when == When::Always)
    });
    if let Some(z) = best {
        return Some(End::Known(reflection(
            Complex64::new(z.resistance.value.value, z.reactance.value),
            Complex64::new(R0, 0.0),
        )));
    }
    if let Some(s) = pick(&a.swr, b.point, b.env) {
        return Some(End::Magnitude(gamma_from_swr(s.value.value)));
    }
    b.assumed.add(Assumed::AntennaMatched, who);
    Some(End::Magnitude(0.0))
}

/// Gain of an antenna at the point: dBi with doubt, whether it includes the mismatch, where.
pub(crate) struct GainAt {
    pub(crate) dbi: f64,
    pub(crate) u: f64,
    pub(crate) realized: bool,
    pub(crate) dipole: bool,
    pub(crate) loc: Loc,
    pub(crate) basis: Basis,
}

pub(crate) fn gain_at(a: &Antenna, point: &Point, env: &Env) -> Option<GainAt> {
    // gains are few; the choice rule is that of all figures
    let p = pick_by(&a.gain, |g| &g.figure, point, env)?;
    let g = a.gain.iter().find(|g| g.figure.loc == p.figure.loc)?;
    let mut dbi = p.value.value;
    if g.directivity {
        dbi += a.efficiency.map_or(0.0, |e| to_db(e.value));
    }
    Some(GainAt {
        dbi,
        u: p.value.u,
        realized: g.realized,
        dipole: g.dipole,
        loc: g.figure.loc,
        basis: g.figure.meta.basis,
    })
}
