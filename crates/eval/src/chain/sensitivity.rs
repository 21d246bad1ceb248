//! By how much the whole loss changes with that of one element.

use downlead_quantity::from_db;

use super::stretch::Stretch;
use crate::cascade::{Changes, Piece, R0, Solved};

/// By how many dB the whole loss changes for one dB more in each element (GUM, JCGM 100:2008,
/// 5.1.3, by differences). None where everything is matched and each dB counts as one: only
/// standing waves make a dB of line count for more or less.
pub(super) fn sensitivities(s: &Stretch<'_>, solved: &Solved, hz: f64) -> Option<Vec<f64>> {
    const STEP_DB: f64 = 0.01;
    let reflects = |g: f64| g > 0.02;
    if !solved.gamma_after.iter().any(|g| reflects(*g)) && !reflects(solved.gamma_in) {
        return None;
    }
    let changes = Changes::new(&s.pieces, s.end_wave, solved);
    let mut out = vec![1.0; s.elements.len()];
    let mut at = 0;
    for (i, e) in s.elements.iter().enumerate() {
        // the pieces stand in the order of their elements
        while s.pieces.get(at).is_some_and(|p| p.element < i) {
            at += 1;
        }
        if e.causes.iter().all(|c| c.1 == 0.0) {
            continue;
        }
        let Some(piece) = s.pieces.get(at).filter(|p| p.element == i) else {
            continue;
        };
        let changed = match &e.line {
            Some(l) if piece.phase_known && l.length_m > 0.0 => {
                let matched = l.at.loss() * l.length_m;
                let scale = 1.0 + STEP_DB / matched.max(1e-9);
                let params = downlead_physics::line::LineParams {
                    r0_ohm: l.at.z0,
                    velocity_factor: l.at.velocity,
                    alpha_c_db_per_m: l.at.alpha_c * scale,
                    alpha_d_db_per_m: l.at.alpha_d * scale,
                };
                Piece::known(
                    downlead_physics::network::SMatrix::line(&params, hz, l.length_m, R0),
                    i,
                )
            }
            _ => {
                let mut p = *piece;
                p.loss_db += STEP_DB;
                let f = from_db(-0.5 * STEP_DB);
                p.s.s21 *= f;
                p.s.s12 *= f;
                p
            }
        };
        out[i] = changes.total(at, &changed) / STEP_DB;
    }
    Some(out)
}
