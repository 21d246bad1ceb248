//! Lines: cable by the metre, a stated loss, or a file.

use downlead_physics::line::{LineParams, conductor_temperature_ratio};
use downlead_physics::network::SMatrix;
use downlead_quantity::Measure;
use downlead_station::model::{Basis, CableLoss, Line, LineLength, Part, PartKind};

use super::{Build, Element, LineAt};
use crate::assume::Assumed;
use crate::cable::{self, CableAt};
use crate::cascade::{Piece, R0, Way};
use crate::cause::Cause;
use crate::network;
use crate::point::pick;

/// What a run outdoors may be on a winter night, °C (our choice).
pub(crate) const COLD_C: f64 = -20.0;

/// Above this uncertainty of its electrical length (two ways) a line's phase counts as unknown.
const PHASE_KNOWN_DEG: f64 = 20.0;

impl<'m> Build<'m, '_> {
    pub(super) fn line(&mut self, e: &mut Element<'m>, part: &'m Part, l: &'m Line, index: usize) {
        let (t, place, stated) = self.temperature(l.temperature.as_deref(), l.place.as_ref());
        e.celsius = t.value;
        let mut added = 0.0;
        if let Some(p) = pick(&l.added, self.point, self.env) {
            added = p.value.value;
            e.causes.push((Cause::Added(p.figure.loc), p.value.u));
        }
        if let Some(p) = pick(&l.wet, self.point, self.env) {
            e.wet_db = p.value.value;
            self.assumed.add(Assumed::DryCable, e.who);
        }
        if let Some(file) = network::picked(&l.network, self.point, self.env) {
            self.measured(e, part.kind, file, index);
            if added > 0.0 {
                e.loss_db += added;
                self.pieces.push(Piece::point_loss(added, index));
            }
            return;
        }
        let Some(length) = l.length else {
            if l.loss.is_empty() && l.cable.is_none() && !l.network.is_empty() {
                self.no_figure(e, "file");
                return;
            }
            self.lump(e, l, added, index);
            return;
        };
        let Some(name) = &l.cable else {
            e.complete = false;
            return;
        };
        let Some(cable) = self.env.cable(&name.text) else {
            self.unknown_cable(name);
            e.complete = false;
            return;
        };
        let Some(at) = cable::at_in(cable, self.point.hz, t.value, &self.env.attachments) else {
            if let Some(CableLoss::Network { file, .. }) = &cable.loss {
                let asked = network::Asked {
                    file,
                    chain: e.chain,
                    point: self.point,
                };
                network::why_no_rate(&asked, self.env, &mut self.diags);
            }
            e.complete = false;
            return;
        };
        if !stated {
            self.assumed.add(Assumed::Temperature20, e.who);
        }
        self.cable_notes(e, cable, &at, name);
        let length = match length {
            LineLength::Metres(m) => m,
            LineLength::Wavelengths { length, at_hz } => {
                let hz = at_hz.unwrap_or(self.point.hz);
                let wavelength = downlead_physics::line::wavelength(hz, at.velocity);
                if at.velocity_assumed {
                    self.assumed.add(Assumed::Velocity, e.who);
                }
                length.scaled(wavelength)
            }
        };
        let matched = at.loss() * length.value;
        e.loss_db = matched + added;
        // jumpers and tails are short, and often indoors
        if !stated && part.kind == PartKind::Run {
            let less = 1.0 - conductor_temperature_ratio(t.value, COLD_C);
            e.cold_db = at.alpha_c * length.value * less;
        }
        e.basis = if cable.built_in {
            Basis::Library
        } else {
            cable.meta.basis
        };
        e.meta = Some(&cable.meta);
        let cause: &str = cable.shared.as_ref().map_or(&cable.name.text, |s| &s.text);
        e.causes
            .push((Cause::Cable(cause), at.u_relative * matched));
        e.causes
            .push((Cause::Length(l.length_loc), at.loss() * length.u));
        if t.u > 0.0 {
            // d(loss)/dT of the conductor part: half the resistance coefficient over the factor
            let slope = 0.5 * downlead_physics::COPPER_TEMPCO
                / (1.0 + downlead_physics::COPPER_TEMPCO * (t.value - 20.0));
            let cause = place.map_or(Cause::Length(part.loc), Cause::Temperature);
            e.causes
                .push((cause, at.alpha_c * length.value * slope * t.u));
        }
        self.line_pieces(l, &at, length, matched, index);
        if added > 0.0 {
            self.pieces.push(Piece::point_loss(added, index));
        }
        e.line = Some(LineAt {
            cable,
            at,
            length_m: length.value,
            temperature: t,
        });
    }

    /// A line of which only the loss is given.
    fn lump(&mut self, e: &mut Element<'m>, l: &'m Line, added: f64, index: usize) {
        match pick(&l.loss, self.point, self.env) {
            Some(p) => {
                e.loss_db = p.value.value + added;
                e.causes.push((Cause::Device(p.figure.loc), p.value.u));
                self.picked(e, &p);
                self.pieces.push(if e.loss_db == 0.0 {
                    Piece::point_loss(0.0, index)
                } else {
                    Piece::unknown(e.loss_db, 0.0, 0.0, Way::Both, index)
                });
            }
            None => self.no_figure(e, "loss"),
        }
    }

    /// What the cascade is given of a line of cable: its two-port where the phase along it is
    /// known, else its loss and the steps of impedance at both ends.
    fn line_pieces(&mut self, l: &Line, at: &CableAt, length: Measure, matched: f64, index: usize) {
        let wavelength = downlead_physics::line::wavelength(self.point.hz, at.velocity);
        let params = LineParams {
            r0_ohm: at.z0,
            velocity_factor: at.velocity,
            alpha_c_db_per_m: at.alpha_c,
            alpha_d_db_per_m: at.alpha_d,
        };
        // an electrical length given as such is known, whatever the velocity factor
        let u_velocity = if matches!(l.length, Some(LineLength::Wavelengths { .. })) {
            0.0
        } else {
            at.u_velocity
        };
        let u_length = libm::hypot(length.u, length.value * u_velocity / at.velocity);
        let u_phase_deg = 2.0 * 360.0 * u_length / wavelength;
        if u_phase_deg <= PHASE_KNOWN_DEG && !at.velocity_assumed {
            self.pieces.push(Piece::known(
                SMatrix::line(&params, self.point.hz, length.value, R0),
                index,
            ));
        } else {
            // the electrical length is not known: the steps of impedance at both ends are, the
            // phase between them is not
            let zc = params.zc(self.point.hz);
            let z0 = num_complex::Complex64::new(at.z0, 0.0);
            let own = downlead_physics::cx::abs(downlead_physics::mismatch::reflection(zc, z0));
            let step = (at.z0 - R0).abs() > 1e-9;
            if step {
                self.pieces
                    .push(Piece::known(SMatrix::step(R0, at.z0), index));
            }
            self.pieces
                .push(Piece::unknown(matched, own, own, Way::Both, index));
            if step {
                self.pieces
                    .push(Piece::known(SMatrix::step(at.z0, R0), index));
            }
        }
    }
}
