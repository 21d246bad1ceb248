//! A cable's figures at one frequency and temperature.

use downlead_base::Loc;
use downlead_physics::construction::{Coax, open_wire_k1, open_wire_z0, velocity_factor};
use downlead_physics::cx;
use downlead_physics::line::{TwoTerm, conductor_temperature_ratio};
use downlead_physics::table::{LossTable, fit_two_term};
use downlead_quantity::Measure;
use downlead_station::Attachments;
use downlead_station::model::{Cable, CableLoss, NetworkFile};
use downlead_touchstone::Network;
use num_complex::Complex64;

/// Velocity factor of a cable whose text states none (see the language reference, "What is
/// assumed").
pub(crate) const VELOCITY_ASSUMED: f64 = 0.66;

/// What a cable is at one frequency.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CableAt {
    /// Characteristic impedance, ohm.
    pub z0: f64,
    /// Velocity factor.
    pub velocity: f64,
    /// Standard uncertainty of the velocity factor.
    pub u_velocity: f64,
    /// Standard uncertainty of the impedance, ohm.
    pub u_z0: f64,
    /// Whether the impedance had to be assumed.
    pub z0_assumed: bool,
    /// Whether the velocity factor had to be assumed.
    pub velocity_assumed: bool,
    /// Conductor loss, dB/m, at the temperature.
    pub alpha_c: f64,
    /// Dielectric loss, dB/m.
    pub alpha_d: f64,
    /// Relative standard uncertainty of the loss; doubled outside the table.
    pub u_relative: f64,
    /// Whether that is normally distributed; else rectangular.
    pub normal: bool,
    /// Ratio of the frequency to the nearest end of the known range, 1 inside.
    pub outside: f64,
    /// Temperature factor on the conductor loss.
    pub temperature_factor: f64,
    /// The two coefficients at the reference temperature, if the loss is given that way.
    pub two_term: Option<(f64, f64)>,
}

impl CableAt {
    /// Matched loss, dB/m.
    #[must_use]
    pub fn loss(&self) -> f64 {
        self.alpha_c + self.alpha_d
    }
}

/// The cable at `hz` and a conductor temperature of `celsius`. None without a usable loss or with
/// a figure that could not be read; one whose loss stands in a network file needs [`at_in`].
#[must_use]
pub fn at(cable: &Cable, hz: f64, celsius: f64) -> Option<CableAt> {
    at_in(cable, hz, celsius, &Attachments::default())
}

/// The same with the network files at hand that a cable's loss may stand in.
#[must_use]
pub fn at_in(cable: &Cable, hz: f64, celsius: f64, files: &Attachments) -> Option<CableAt> {
    if cable.broken {
        return None;
    }
    let factor = conductor_temperature_ratio(cable.reference_c, celsius);
    let rate = rate(cable, hz, files)?;
    let mut outside = rate.outside;
    if let Some((lo, hi)) = cable.valid {
        outside = outside.max(lo / hz).max(hz / hi);
    }
    let (c, d) = rate.parts;
    if !(c.is_finite() && d.is_finite() && factor.is_finite()) {
        return None;
    }
    let step = cable
        .accuracy
        .iter()
        .find(|a| hz <= a.up_to_hz)
        .or(cable.accuracy.last());
    let mut u_relative = step.map_or(0.0, |a| a.u_relative);
    if outside > 1.0 {
        u_relative *= 2.0;
    }
    let (u_file, table) = (rate.u_file, rate.table);
    let u_relative = libm::hypot(libm::hypot(u_relative, u_file), table.u);
    Some(CableAt {
        z0: rate.z0.0,
        velocity: rate.velocity.0,
        u_velocity: cable.velocity.map_or(0.0, |v| v.u),
        u_z0: cable.impedance.map_or(0.0, |z| z.u),
        normal: match step {
            None if table.u > 0.0 => table.normal,
            None => true,
            Some(a) => a.normal || u_file > 0.0 || outside > 1.0 || table.u > 0.0,
        },
        z0_assumed: rate.z0.1,
        velocity_assumed: rate.velocity.1,
        alpha_c: c * factor,
        alpha_d: d,
        u_relative,
        outside,
        temperature_factor: factor,
        two_term: rate.two_term,
    })
}

/// A cable's loss at its reference temperature and what it is taken from.
struct CableRate {
    /// Loss of the conductors and of the dielectric, dB/m.
    parts: (f64, f64),
    /// Impedance in ohm, and whether it is assumed.
    z0: (f64, bool),
    /// Velocity factor, and whether it is assumed.
    velocity: (f64, bool),
    two_term: Option<(f64, f64)>,
    /// Ratio by which the frequency is outside what is stated; 1 within.
    outside: f64,
    /// Relative uncertainty of a file's loss and of the length of its piece.
    u_file: f64,
    /// Relative ± of a table's points.
    table: Measure,
}

/// The loss at `hz`; None without a usable one.
fn rate(cable: &Cable, hz: f64, files: &Attachments) -> Option<CableRate> {
    let mut r = CableRate {
        parts: (f64::NAN, f64::NAN),
        z0: cable.impedance.map_or((50.0, true), |z| (z.value, false)),
        velocity: cable
            .velocity
            .map_or((VELOCITY_ASSUMED, true), |v| (v.value, false)),
        two_term: None,
        outside: 1.0,
        u_file: 0.0,
        table: Measure::default(),
    };
    // what the construction gives takes the place of what is not stated
    let derived = |stated: &mut (f64, bool), value: f64| {
        if stated.1 {
            *stated = (value, false);
        }
    };
    r.parts = match cable.loss.as_ref()? {
        CableLoss::TwoTerm { k1, k2 } => {
            let (k1, k2) = (k1.value, k2.value);
            r.two_term = Some((k1, k2));
            TwoTerm { k1, k2 }.split(hz)
        }
        CableLoss::Table(points) => {
            let plain: Vec<(f64, f64)> = points.iter().map(|p| (p.0, p.1.value)).collect();
            let t = LossTable::new(&plain).ok()?.at(hz);
            r.outside = t.outside;
            r.table = of_points(points, hz);
            (t.alpha_c_db_per_m, t.alpha_d_db_per_m)
        }
        CableLoss::Construction(k) => {
            let coax = Coax {
                // the strands' own diameter counts for the impedance, the one over them for the loss
                inner_m: k.inner.value * k.strand_diameter.value,
                outer_m: k.outer.value,
                permittivity: k.permittivity.value,
                loss_tangent: k.loss_tangent.value,
                strand: k.strand.value * k.strand_diameter.value,
                // the resistance goes with the root of the resistivity
                braid: k.braid.value
                    * libm::sqrt(k.outer_resistivity.value / k.inner_resistivity.value),
                resistivity: k.inner_resistivity.value,
            };
            derived(&mut r.z0, coax.z0());
            derived(&mut r.velocity, coax.velocity_factor());
            let t = coax.loss(r.z0.0);
            r.two_term = Some((t.k1, t.k2));
            t.split(hz)
        }
        CableLoss::Wires(w) => {
            let z0 = open_wire_z0(w.diameter.value, w.spacing.value, w.permittivity.value);
            derived(&mut r.z0, z0);
            derived(&mut r.velocity, velocity_factor(w.permittivity.value));
            let k1 = open_wire_k1(r.z0.0, w.diameter.value, w.resistivity.value);
            r.two_term = Some((k1, 0.0));
            TwoTerm { k1, k2: 0.0 }.split(hz)
        }
        CableLoss::Network { file, length } => {
            let (c, d) = rate_of_file(file, length.value, hz, files)?;
            r.u_file = libm::hypot(
                file.figure.value.u / ((c + d) * length.value),
                length.u / length.value,
            );
            (c, d)
        }
    };
    Some(r)
}

/// Relative uncertainty that the points of a table give its loss at a frequency: the larger of the
/// two beside it, which may well be off together.
fn of_points(points: &[(f64, Measure, Loc)], hz: f64) -> Measure {
    let after = points.partition_point(|p| p.0 < hz);
    let beside = points.get(after).into_iter().chain(
        after
            .checked_sub(1)
            .and_then(|k| points.get(k))
            // a printed point is met as it is
            .filter(|_| points.get(after).is_none_or(|p| p.0 > hz)),
    );
    beside
        .map(|p| Measure {
            u: p.1.u / p.1.value,
            ..p.1
        })
        .fold(
            Measure::default(),
            |most, m| if m.u > most.u { m } else { most },
        )
}

/// The matched loss of a measured piece of cable at the points of its file, Hz and dB, rising in
/// frequency: the image transfer constant of the two-port, so that neither the reference nor the
/// steps of impedance at its ends count (`cosh² θ = A D` of its chain matrix).
///
/// Source: image parameters of a reciprocal two-port, Pozar 4e, ch. 8 (section from memory).
#[must_use]
pub fn matched_loss(n: &Network) -> Vec<(f64, f64)> {
    (0..n.points())
        .filter_map(|k| loss_of_point(n, k))
        .collect()
}

/// The same at one point of the file, Hz and dB. None where the file does not tell it, as one that
/// was measured in one direction only.
#[must_use]
pub fn loss_of_point(n: &Network, k: usize) -> Option<(f64, f64)> {
    if n.ports() != 2 {
        return None;
    }
    let one = Complex64::new(1.0, 0.0);
    let [s11, s12, s21, s22] = n.matrix(k)[..] else {
        return None;
    };
    let p = s12 * s21;
    let ad = ((one + s11) * (one - s22) + p) * ((one - s11) * (one + s22) + p) / (p * 4.0);
    let e = cx::sqrt(ad) + cx::sqrt(ad - one);
    // the two roots are each other's inverse
    let theta = 20.0 * libm::log10(cx::abs(e)).abs();
    // the loss between other impedances is never less than this much below
    let most =
        |r: Complex64| 10.0 * libm::log10((1.0 - r.norm_sqr()).max(1e-12) / cx::abs(p)) + SLACK_DB;
    let db = theta.min(most(s11)).min(most(s22));
    let hz = n.frequencies_hz()[k];
    (db.is_finite() && db > 0.0 && hz > 0.0).then_some((hz, db))
}

/// The characteristic impedance of a measured piece of cable, ohm, and its standard uncertainty by the
/// scatter over the points of its file: `Zc² = B / C` of the chain matrix. Points near a multiple of
/// half a wave, where both vanish, take no part. None where fewer than three points tell it.
///
/// Source: chain matrix of a line, Pozar 4e, table 4.1 (section from memory).
#[must_use]
pub fn characteristic_impedance(n: &Network) -> Option<(f64, f64)> {
    let [a, b] = n.z0()[..] else { return None };
    if a != b {
        return None;
    }
    let one = Complex64::new(1.0, 0.0);
    let mut found: Vec<f64> = (0..n.points())
        .filter_map(|k| {
            let [s11, s12, s21, s22] = n.matrix(k)[..] else {
                return None;
            };
            let p = s12 * s21;
            let (up, down) = ((one + s11) * (one + s22) - p, (one - s11) * (one - s22) - p);
            // sinh² of the transfer constant
            let sinh2 = up * down / (p * 4.0);
            let z = a * cx::sqrt(up / down).re.abs();
            (cx::abs(sinh2) > AWAY_FROM_HALF_WAVES && z.is_finite() && z > 0.0).then_some(z)
        })
        .collect();
    if found.len() < 3 {
        return None;
    }
    found.sort_by(f64::total_cmp);
    let median = found[found.len() / 2];
    let mut off: Vec<f64> = found.iter().map(|z| (z - median).abs()).collect();
    off.sort_by(f64::total_cmp);
    // 1.4826 times the median deviation is the standard deviation of a normal spread
    Some((median, 1.4826 * off[off.len() / 2]))
}

/// Least |sinh θ|² at which a point tells the impedance.
const AWAY_FROM_HALF_WAVES: f64 = 0.25;

/// A line's own impedance is not quite real, which makes its matched loss a little other than the
/// least loss between any ends, dB.
const SLACK_DB: f64 = 0.02;

/// Points that tell how a file's loss divides between conductors and dielectric.
const SAMPLE: usize = 64;

/// Loss of a cable that is known by a file, dB/m: conductors and dielectric. None outside the file.
///
/// The loss is a straight line in log-log between the points beside the frequency. How it divides
/// follows from the law `k1 √f + k2 f` through all points: ripple from one point to the next would
/// tell nothing.
fn rate_of_file(
    file: &NetworkFile,
    length_m: f64,
    hz: f64,
    files: &Attachments,
) -> Option<(f64, f64)> {
    let n = files.at(file.path.loc)?.network()?;
    let (lo, hi) = n.range_hz()?;
    // a unit's factor must not push a frequency out of the file
    if !(lo * (1.0 - 1e-9)..=hi * (1.0 + 1e-9)).contains(&hz) {
        return None;
    }
    let hz = hz.clamp(lo, hi);
    let above = n.frequencies_hz().partition_point(|f| *f < hz);
    let row = |k: usize| loss_of_point(n, k).map(|p| (p.0, p.1 / length_m));
    let after = (above..n.points()).find_map(row)?;
    let rate = if after.0 == hz {
        after.1
    } else {
        let before = (0..above).rev().find_map(row)?;
        let slope = libm::log(after.1 / before.1) / libm::log(after.0 / before.0);
        before.1 * libm::exp(slope * libm::log(hz / before.0))
    };
    let step = (n.points() / SAMPLE).max(1);
    let sample: Vec<_> = (0..n.points()).step_by(step).filter_map(row).collect();
    let conductor = fit_two_term(&sample).map_or(1.0, |fit| {
        let (c, d) = fit.coefficients.split(hz);
        c / (c + d)
    });
    Some((rate * conductor, rate * (1.0 - conductor)))
}

/// The law `k1 √f + k2 f` that passes through a cable's loss table.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TableFit {
    /// dB/m per √MHz.
    pub k1: f64,
    /// dB/m per MHz.
    pub k2: f64,
    /// Root mean square of the relative deviations.
    pub rms: f64,
    /// Frequency (Hz) of the point furthest off, and its relative deviation.
    pub worst: (f64, f64),
}

/// How well a table's points lie on one law. None for a cable without a table of two points or more.
#[must_use]
pub fn table_fit(cable: &Cable) -> Option<TableFit> {
    let CableLoss::Table(points) = cable.loss.as_ref()? else {
        return None;
    };
    let plain: Vec<(f64, f64)> = points.iter().map(|p| (p.0, p.1.value)).collect();
    let fit = fit_two_term(&plain).ok()?;
    Some(TableFit {
        k1: fit.coefficients.k1,
        k2: fit.coefficients.k2,
        rms: fit.rms,
        worst: (plain.get(fit.worst.0)?.0, fit.worst.1),
    })
}
