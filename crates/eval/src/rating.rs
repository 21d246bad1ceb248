//! Mean power against ratings, peak voltage against working voltage.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::mismatch::max_voltage_rms;
use downlead_physics::power::{ambient_factor, rating_by_attenuation, rating_by_sqrt, swr_factor};
use downlead_quantity::{number, power};
use downlead_station::Env;
use downlead_station::model::{Device, PartData, PartKind, Rating};

use crate::assume::Assumed;
use crate::cable;
use crate::chain::{Ending, Feed, Run, Stretch};
use crate::element::Element;
use crate::shared::Load;
use crate::verdict::{mean_factor, pep_factor};
use downlead_physics::net::R0;

/// What is over a rating by less than this is rounding.
const ROUNDING: f64 = 1.0 + 1e-9;

/// Checks the elements of a stretch against the nodes computed for it (trunk only: behind a
/// divider there is less of everything).
pub(crate) fn check<'m>(run: &mut Run<'m, '_>, s: &Stretch<'m>, f: &Feed<'m>) -> Vec<Load> {
    let stated = mean_factor(f);
    let mean = stated.unwrap_or(1.0);
    let mut compared = false;
    let pep = pep_factor(f).unwrap_or(1.0);
    let mut found = Vec::new();
    let mut notes = Vec::new();
    let mut loads = Vec::new();
    let mut switched = Vec::new();
    let trunk: Vec<(f64, f64)> = run
        .nodes
        .iter()
        .filter(|n| n.branch == 0)
        .map(|n| (n.power_w, n.swr))
        .collect();
    for (i, e) in s.elements.iter().enumerate() {
        // power and SWR at the element's input: those behind the one before
        let Some((net, swr)) = trunk.get(i).copied() else {
            break;
        };
        if !net.is_finite() {
            break;
        }
        let z0 = e.line.map_or(R0, |l| l.at.z0);
        if let Some(port) = e.port.filter(|_| e.kind.is(PartKind::Switch)) {
            switched.push((e.def, port.text.clone()));
        }
        let mut load = Load {
            def: e.def,
            chain: e.chain,
            source: f.part.loc,
            switched: switched.clone().into(),
            mean: None,
            peak: None,
        };
        if let Some((limit, loc, temperatures)) = rating(run.point.hz, e, run.cx.env) {
            compared = true;
            if !temperatures {
                notes.push((Assumed::RatingTemperatures, e.who));
            }
            let derated = limit
                * if e.line.is_some() {
                    swr_factor(swr, if run.point.hz > 30e6 { 1.0 } else { 0.0 })
                } else {
                    1.0
                };
            load.mean = Some((net * mean, derated, loc));
            if net * mean > derated * ROUNDING {
                found.push(
                    Diagnostic::new(
                        &codes::RATING_EXCEEDED,
                        e.chain,
                        format!(
                            "{} gets {} mean power on {} and is good for {} there{}.",
                            e.subject(),
                            power(net * mean),
                            run.point.band,
                            power(derated),
                            if swr > 1.05 && e.line.is_some() {
                                format!(" at SWR {}", number(swr, 2))
                            } else {
                                String::new()
                            },
                        ),
                    )
                    .at(format!("{} too much", power(net * mean - derated)))
                    .also(loc, "the rating"),
                );
            }
        }
        if let Some((volts, loc)) = voltage(e, run.cx.env) {
            let v = max_voltage_rms(net * pep, z0, swr);
            load.peak = Some((v, volts, loc));
            if v > volts * ROUNDING {
                found.push(
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
        }
        if load.mean.is_some() || load.peak.is_some() {
            loads.push(load);
        }
    }
    if let Ending::Antenna(part, a, loc) = &s.end
        && let (Some(r), Some((net, _))) = (a.rating, trunk.last())
    {
        compared = true;
        loads.push(Load {
            def: part.loc,
            chain: *loc,
            source: f.part.loc,
            switched: switched.into(),
            mean: Some((net * mean, r.watts, r.loc)),
            peak: None,
        });
        if net * mean > r.watts * ROUNDING {
            found.push(
                Diagnostic::new(
                    &codes::RATING_EXCEEDED,
                    *loc,
                    format!(
                        "The {} gets {} mean power on {} and is good for {}.",
                        part.kind.word(),
                        power(net * mean),
                        run.point.band,
                        power(r.watts)
                    ),
                )
                .at("too much")
                .also(r.loc, "the rating"),
            );
        }
    }
    if compared && stated.is_none() {
        notes.push((
            Assumed::FullDuty,
            f.part.tag.as_ref().map_or(f.part.loc, |t| t.loc),
        ));
    }
    run.diags.append(&mut found);
    for (a, l) in notes {
        run.assumed.add(a, l);
    }
    loads
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
