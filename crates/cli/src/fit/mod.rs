//! A cable's two coefficients from readings, a network file or a data sheet.

mod build;
pub(crate) mod definition;
pub(crate) mod options;
pub(crate) mod source;

pub(crate) use build::of;

use downlead_ide::MeasuredCable;
use downlead_physics::measure::{FitError, LossFit};

/// One attenuation that takes part.
#[derive(Clone, Debug)]
pub(crate) struct Sample {
    /// Band, or the frequency in words.
    pub(crate) label: String,
    /// Hz.
    pub(crate) hz: f64,
    /// dB/m.
    pub(crate) db_per_m: f64,
    /// Standard uncertainty, dB/m, without what all share.
    pub(crate) u_db_per_m: f64,
}

/// What is fitted, and what came of it.
#[derive(Clone, Debug)]
pub(crate) struct Subject {
    /// What it is, in words.
    pub(crate) title: String,
    /// Points that take part.
    pub(crate) samples: Vec<Sample>,
    /// The fit.
    pub(crate) fit: Result<LossFit, FitError>,
    /// Whether the uncertainty of the points was found from their scatter, so that χ² says nothing.
    pub(crate) from_scatter: bool,
    /// What else there is to say: what was left out or assumed.
    pub(crate) notes: Vec<String>,
    /// The cable that is defined, but for its loss.
    pub(crate) cable: MeasuredCable,
}

impl Subject {
    /// What a point is called.
    pub(crate) fn point(&self, index: usize) -> String {
        self.samples
            .get(index)
            .map_or_else(|| format!("point {}", index + 1), |s| s.label.clone())
    }
}
