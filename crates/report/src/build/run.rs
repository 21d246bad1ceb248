//! Pieces as runs of one length, as they are printed.

use downlead_eval::bench::result::SessionResult;
use downlead_eval::bench::run::{NoRun, Run, RunsAt, celsius, runs};
use downlead_quantity::{Measure, frequency, from_db};
use downlead_station::session::Session;

use crate::shape::run::{NoRunReport, RunReport, RunsAtReport, RunsReport};

/// What is asked: a run of this length, with this power at its near end, at these frequencies.
#[derive(Clone, Debug, PartialEq)]
pub struct Asked {
    /// m.
    pub length: Measure,
    /// W.
    pub power_w: f64,
    /// Hz.
    pub hz: Vec<f64>,
}

/// The answer of one session.
#[must_use]
pub fn report(s: &Session, r: &SessionResult, asked: &Asked) -> RunsReport {
    RunsReport {
        length_m: asked.length.value,
        length_uncertainty_m: 2.0 * asked.length.u,
        power_w: asked.power_w,
        temperature_c: celsius(s),
        frequencies: asked
            .hz
            .iter()
            .map(|hz| at(r, &runs(s, r, asked.length, *hz), asked.power_w))
            .collect(),
    }
}

fn at(r: &SessionResult, found: &RunsAt, power_w: f64) -> RunsAtReport {
    let name = |piece: usize| r.pieces[piece].name.to_string();
    let best = found.runs.first();
    RunsAtReport {
        frequency_hz: found.hz,
        ranking: found
            .runs
            .iter()
            .map(|x| one(name(x.piece), x, best, power_w))
            .collect(),
        refused: found
            .refused
            .iter()
            .map(|(piece, why)| NoRunReport {
                piece: name(*piece),
                why: words(*why),
            })
            .collect(),
    }
}

fn one(piece: String, x: &Run, best: Option<&Run>, power_w: f64) -> RunReport {
    let watts = |x: &Run| power_w * from_db(-x.db);
    // dP = P ln 10 / 10 dx
    let per_db = core::f64::consts::LN_10 / 10.0;
    let against = best.filter(|b| b.piece != x.piece);
    let less = against.map(|b| {
        let covariance = 0.5 * (x.u_db * x.u_db + b.u_db * b.u_db - x.u_more_db * x.u_more_db);
        let (own, theirs) = (watts(x) * x.u_db, watts(b) * b.u_db);
        let square = own * own + theirs * theirs - 2.0 * watts(x) * watts(b) * covariance;
        (
            watts(b) - watts(x),
            2.0 * per_db * libm::sqrt(square.max(0.0)),
        )
    });
    RunReport {
        rank: x.rank + 1,
        sharing: x.sharing,
        piece,
        loss_db: x.db,
        uncertainty_db: 2.0 * x.u_db,
        power_w: watts(x),
        power_uncertainty_w: 2.0 * per_db * watts(x) * x.u_db,
        more_db: against.map(|_| x.more_db),
        more_uncertainty_db: against.map(|_| 2.0 * x.u_more_db),
        less_w: less.map(|l| l.0),
        less_uncertainty_w: less.map(|l| l.1),
        inside: x.beyond <= 1.0 + 1e-9,
    }
}

fn words(why: NoRun) -> String {
    match why {
        NoRun::NoFit => "its readings give no fit, and one reading is not scaled up".to_owned(),
        NoRun::TooFar { low, high } => format!(
            "it was read from {} to {}; the fitted law is not carried on by more than a factor of two",
            frequency(low),
            frequency(high)
        ),
    }
}
