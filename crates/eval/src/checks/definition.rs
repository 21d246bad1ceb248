//! Checks of definitions: names of the library, and whether a cable can be true.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::table::fit_two_term;
use downlead_quantity::{Measure, frequency, number};
use downlead_station::model::{Cable, CableLoss};

/// A definition of one's own under a name of the library.
pub(crate) fn replaced(
    kind: &str,
    name: &downlead_station::model::Name,
    in_library: bool,
    out: &mut Vec<Diagnostic>,
) {
    if in_library {
        out.push(
            Diagnostic::new(
                &codes::LIBRARY_REPLACED,
                name.loc,
                format!("This {kind} takes the place of `{}` in the library, here and in files that use this one.", name.text),
            )
            .at("also in the library")
            .help("Give it a name of its own if that is not meant."),
        );
    }
}

/// Checks of a cable's definition.
pub(crate) fn cable(c: &Cable, out: &mut Vec<Diagnostic>) {
    if c.meta.source.is_none() && c.loss.is_some() {
        out.push(
            Diagnostic::new(
                &codes::NO_SOURCE,
                c.name.loc,
                format!("Cable `{}` names no source.", c.name.text),
            )
            .at("where are its figures from?")
            .help("Add `source \"document, page\"` to its block."),
        );
    }
    if let Some(CableLoss::Table(points)) = &c.loss {
        let plain: Vec<(f64, f64)> = points.iter().map(|p| (p.0, p.1.value)).collect();
        if plain.len() >= 4 {
            outlier(c, points, &plain, out);
        }
    }
    implausible(c, out);
}

/// The point without which the others fit far better: most likely a slip of the pen.
fn outlier(
    c: &Cable,
    points: &[(f64, Measure, Loc)],
    plain: &[(f64, f64)],
    out: &mut Vec<Diagnostic>,
) {
    let Ok(all) = fit_two_term(plain) else { return };
    if all.worst.1.abs() < 0.05 {
        return;
    }
    let mut best: Option<(usize, f64, f64)> = None;
    for i in 0..plain.len() {
        let mut rest = plain.to_vec();
        let gone = rest.remove(i);
        let Ok(fit) = fit_two_term(&rest) else {
            continue;
        };
        let off = gone.1 / fit.coefficients.at(gone.0) - 1.0;
        if best.is_none_or(|b| fit.rms < b.1) {
            best = Some((i, fit.rms, off));
        }
    }
    let Some((i, rms, off)) = best else { return };
    if off.abs() > 0.08 && off.abs() > 5.0 * rms && all.rms > 3.0 * rms {
        out.push(
            Diagnostic::new(
                &codes::SHEET_DOES_NOT_FIT,
                points[i].2,
                format!(
                    "At {} the table of `{}` is {} % {} what its other points say; those follow k1 √f + k2 f within {} %.",
                    frequency(plain[i].0),
                    c.name.text,
                    number(off.abs() * 100.0, 0),
                    if off > 0.0 { "above" } else { "below" },
                    number((rms * 100.0).max(0.1), 1)
                ),
            )
            .at("out of line")
            .help("Compare with the sheet: a digit may be wrong, or a unit."),
        );
    }
}

/// Loss at 100 MHz a good cable of that diameter has at least: copper and air with a thin
/// jacket. Coarse on purpose: only slips of a factor of two and more matter.
fn implausible(c: &Cable, out: &mut Vec<Diagnostic>) {
    let Some(size) = c.size else { return };
    let hz = match &c.loss {
        Some(CableLoss::Table(t)) => t[t.len() / 2].0,
        Some(_) => 100e6,
        None => return,
    };
    let Some(at) = crate::cable::at(c, hz, c.reference_c) else {
        return;
    };
    // 50 ohm, outer conductor 0.9 of the jacket, D/d = 2.3, smooth copper: 36.066/50 (1/d + 1/D)
    // dB/100 m per √MHz with diameters in mm (physics, construction)
    let outer_mm = 0.9 * size * 1e3;
    let floor = 36.066 / 50.0 * (2.3 / outer_mm + 1.0 / outer_mm) * libm::sqrt(hz / 1e6) / 100.0;
    let ratio = at.loss() / floor;
    let per100 = |x: f64| format!("{} dB/100 m", number(x * 100.0, 2));
    let said = if ratio > 5.0 {
        format!(
            "{} times what a cable of {} mm loses at least. Is it dB/100 m rather than dB/100 ft?",
            number(ratio, 1),
            number(size * 1e3, 1)
        )
    } else if ratio < 0.7 {
        format!(
            "less than copper of {} mm can do ({}). Is it dB/100 ft rather than dB/100 m?",
            number(size * 1e3, 1),
            per100(floor)
        )
    } else {
        return;
    };
    out.push(
        Diagnostic::new(
            &codes::LOSS_RATE_IMPLAUSIBLE,
            c.loss_loc,
            format!(
                "Cable `{}` loses {} at {}: {said}",
                c.name.text,
                per100(at.loss()),
                frequency(hz)
            ),
        )
        .at("cannot be right for this size"),
    );
}
