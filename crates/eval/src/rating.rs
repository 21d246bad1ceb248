//! Mean power against ratings, peak voltage against working voltage.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::mismatch::max_voltage_rms;
use downlead_physics::power::{ambient_factor, rating_by_attenuation, rating_by_sqrt, swr_factor};
use downlead_quantity::{number, power};
use downlead_station::Env;
use downlead_station::model::{Device, Part, PartData, PartKind, Rating};

use crate::assume::Assumed;
use crate::cable;
use crate::chain::{Ending, Feed, Run, Stretch};
use crate::element::Element;
use crate::shared::Load;
use crate::verdict::{mean_factor, pep_factor};
use downlead_physics::net::R0;

/// What is over a rating by less than this is rounding.
const ROUNDING: f64 = 1.0 + 1e-9;

/// Checks the elements of a stretch against the nodes computed for it (trunk only: after a
/// divider there is less of everything).
pub(crate) fn check<'m>(run: &mut Run<'m, '_>, s: &Stretch<'m>, f: &Feed<'m>) -> Vec<Load> {
    // the mode or duty is there but could not be read
    if f.data.broken_duty {
        return Vec::new();
    }
    let stated = mean_factor(f);
    let mut check = Check {
        mean: stated.unwrap_or(1.0),
        pep: pep_factor(f).unwrap_or(1.0),
        source: f.part.loc,
        compared: false,
        switched: Vec::new(),
        loads: Vec::new(),
    };
    let trunk: Vec<Option<(f64, f64)>> = run
        .nodes
        .iter()
        .filter(|n| n.branch == 0)
        .map(|n| Some((n.power_w, n.swr?)).filter(|_| n.power_known))
        .collect();
    for (i, e) in s.elements.iter().enumerate() {
        // power and SWR at the element's input: those after the element before it
        let Some(Some((net, swr))) = trunk.get(i).copied() else {
            break;
        };
        if !net.is_finite() {
            break;
        }
        check.element(run, e, net, swr);
    }
    if let Ending::Antenna(part, a, loc) = &s.end
        && let (Some(r), Some(Some((net, _)))) = (a.rating, trunk.last())
    {
        check.antenna(run, part, *loc, r, *net);
    }
    if check.compared && stated.is_none() {
        run.assumed.add(
            Assumed::FullDuty,
            f.part.tag.as_ref().map_or(f.part.loc, |t| t.loc),
        );
    }
    check.loads
}

/// The powers of one transmitter against the ratings they pass.
struct Check {
    /// Mean power and power at the peak of the envelope, over the stated power.
    mean: f64,
    pep: f64,
    /// The transmitter.
    source: Loc,
    /// Whether a rating was compared.
    compared: bool,
    /// Switches passed so far and the ports they stand at.
    switched: Vec<(Loc, Box<str>)>,
    loads: Vec<Load>,
}

impl Check {
    /// One element with the net power (W) and SWR at its input.
    fn element(&mut self, run: &mut Run<'_, '_>, e: &Element<'_>, net: f64, swr: f64) {
        if let Some(port) = e.port.filter(|_| e.kind.is(PartKind::Switch)) {
            self.switched.push((e.def, port.text.clone()));
        }
        let load = Load {
            def: e.def,
            chain: e.chain,
            source: self.source,
            switched: self.switched.clone().into(),
            mean: self.mean_power(run, e, net, swr),
            peak: self.peak_voltage(run, e, net, swr),
        };
        if load.mean.is_some() || load.peak.is_some() {
            self.loads.push(load);
        }
    }

    /// Mean power, its rating (W) and where this stands.
    fn mean_power(
        &mut self,
        run: &mut Run<'_, '_>,
        e: &Element<'_>,
        net: f64,
        swr: f64,
    ) -> Option<(f64, f64, Loc)> {
        let (limit, loc, temperatures) = rating(run.point.hz, e, run.cx.env)?;
        self.compared = true;
        if !temperatures {
            run.assumed.add(Assumed::RatingTemperatures, e.who);
        }
        let derated = match e.line {
            Some(_) => limit * swr_factor(swr, if run.point.hz > 30e6 { 1.0 } else { 0.0 }),
            None => limit,
        };
        let mean = net * self.mean;
        if mean > derated * ROUNDING {
            run.diags.push(
                Diagnostic::new(
                    &codes::RATING_EXCEEDED,
                    e.chain,
                    format!(
                        "{} gets {} mean power on {} and is good for {} there{}.",
                        e.subject(),
                        power(mean),
                        run.point.band,
                        power(derated),
                        if swr > 1.05 && e.line.is_some() {
                            format!(" at SWR {}", number(swr, 2))
                        } else {
                            String::new()
                        },
                    ),
                )
                .at(format!("{} too much", power(mean - derated)))
                .also(loc, "the rating"),
            );
        }
        Some((mean, derated, loc))
    }

    /// Peak voltage (V rms at the peak of the envelope), its rating and where this stands.
    fn peak_voltage(
        &self,
        run: &mut Run<'_, '_>,
        e: &Element<'_>,
        net: f64,
        swr: f64,
    ) -> Option<(f64, f64, Loc)> {
        let (volts, loc) = voltage(e, run.cx.env)?;
        let z0 = e.line.map_or(R0, |l| l.at.z0);
        let v = max_voltage_rms(net * self.pep, z0, swr);
        if v > volts * ROUNDING {
            run.diags.push(
                Diagnostic::new(
                    &codes::VOLTAGE_EXCEEDED,
                    e.chain,
                    format!(
                        "{} sees up to {} V rms at the peak of the envelope on {} (SWR {}) and is good for {} V.",
                        e.subject(),
                        number(v, 0),
                        run.point.band,
                        number(swr, 2),
                        number(volts, 0)
                    ),
                )
                .at("peak voltage")
                .also(loc, "the rating"),
            );
        }
        Some((v, volts, loc))
    }

    /// The antenna or load at the end, with the net power into it, W.
    fn antenna(&mut self, run: &mut Run<'_, '_>, part: &Part, chain: Loc, r: Rating, net: f64) {
        self.compared = true;
        let mean = net * self.mean;
        self.loads.push(Load {
            def: part.loc,
            chain,
            source: self.source,
            switched: std::mem::take(&mut self.switched).into(),
            mean: Some((mean, r.watts, r.loc)),
            peak: None,
        });
        if mean > r.watts * ROUNDING {
            run.diags.push(
                Diagnostic::new(
                    &codes::RATING_EXCEEDED,
                    chain,
                    format!(
                        "The {} gets {} mean power on {} and is good for {}.",
                        part.kind.word(),
                        power(mean),
                        run.point.band,
                        power(r.watts)
                    ),
                )
                .at("too much")
                .also(r.loc, "the rating"),
            );
        }
    }
}

/// Rating at the frequency and temperature of the element, where it stands, and whether its
/// temperatures were stated (or do not matter).
fn rating(hz: f64, e: &Element<'_>, env: &Env) -> Option<(f64, Loc, bool)> {
    if let Some(l) = &e.line {
        let r = l.cable.ratings.iter().min_by(|a, b| {
            let d = |r: &Rating| r.at_hz.map_or(0.0, |f| libm::fabs(libm::log(f / hz)));
            d(a).total_cmp(&d(b))
        })?;
        let mut w = r.watts;
        if let Some(f) = r.at_hz {
            let files = &env.attachments;
            let there = cable::at_in(l.cable, f, l.cable.reference_c, files)?.loss();
            let here = cable::at_in(l.cable, hz, l.cable.reference_c, files)?.loss();
            w = rating_by_attenuation(w, there, here);
        }
        // a cooler place is not credited: the sun may shine on the cable
        let ambient = l.temperature.value.max(r.ambient_c);
        w *= ambient_factor(r.conductor_c, r.ambient_c, ambient);
        return Some((w.max(0.0), r.loc, r.temperatures_stated || l.cable.built_in));
    }
    if let Some((c, _)) = e.connector {
        let r = c.rating?;
        let w = r.at_hz.map_or(r.watts, |f| rating_by_sqrt(r.watts, f, hz));
        return Some((w, r.loc, true));
    }
    match &e.part?.data {
        PartData::Device(d) => d
            .rating
            .as_deref()
            .or(class(d, env).and_then(|c| c.rating.as_deref()))
            .map(|r| {
                (
                    r.at_hz.map_or(r.watts, |f| rating_by_sqrt(r.watts, f, hz)),
                    r.loc,
                    true,
                )
            }),
        _ => None,
    }
}

/// The definition a device is an example of.
fn class<'m>(d: &Device, env: &'m Env) -> Option<&'m Device> {
    d.class
        .as_ref()
        .and_then(|n| env.device(&n.text))
        .map(|c| &c.device)
}

fn voltage(e: &Element<'_>, env: &Env) -> Option<(f64, Loc)> {
    if let Some(l) = &e.line {
        return l.cable.voltage.map(|v| (v, l.cable.name.loc));
    }
    if let Some((c, _)) = e.connector {
        return c.voltage.map(|v| (v, c.name.loc));
    }
    match &e.part?.data {
        PartData::Device(d) => d
            .voltage
            .or(class(d, env).and_then(|c| c.voltage))
            .map(|v| (v, e.def)),
        _ => None,
    }
}
