//! Measuring on the bench: readings of power meters turned into losses with their uncertainty, and what
//! can be concluded from them.
//!
//! Rules of the GUM (JCGM 100:2008; section numbers from memory). Losses are positive dB. `u` is
//! a standard uncertainty (k = 1), `expanded` is `k·u` for 95.45 %. Contributions carry their
//! source, so that two results that share one can be compared without counting it twice.
//!
//! ```
//! use downlead_physics::measure::*;
//! let meters = [Meter::PERFECT.of_reading(0.05).linearity(0.01).repeatability(0.006)];
//! let baselines = [Level::one(0, 0, 44.0, 0.0), Level::one(1, 0, 42.5, 10.0)];
//! let baselines = Baselines::new(&baselines, &meters).unwrap();
//! let piece = Level::one(2, 0, 31.9, 8.0);
//! let mut budget = Budget::new();
//! let loss = substitution(&baselines, &piece, &meters, &Rules::default(), &Around::default(), &mut budget).unwrap();
//! assert!((loss.db - 1.2765).abs() < 1e-4); // the drift is taken out: 1.3966 dB without
//! assert!(loss.expanded_db < 0.13); // 0.35 dB if the 5 % did not cancel
//! ```

mod baseline;
mod budget;
mod cable;
mod compare;
mod correlated;
mod fit;
mod length;
mod meter;
mod odd;
mod one_port;
mod per_length;
mod ranking;
pub mod stats;
mod substitution;
mod swr;
mod trend;

pub use baseline::{Baseline, BaselineError, BaselineUse, Baselines, Drift, HALF_STEP, Rules};
pub use budget::{Budget, Source, Term};
pub use cable::{NO_ONE_FACTOR, Point, WholeCable, whole_cable};
pub use compare::{
    Comparison, Grows, Value, Verdict, compare, compare_with, length_factor, length_factor_with,
    meter_factor, verdict,
};
pub use fit::{Advice, Clamped, FitError, FitPoint, FitRules, LossFit, Outlier, Prediction, fit};
pub use length::{
    Length, Slope, Tape, against_tape, length_from_delay, length_from_phase_slope,
    length_from_spacing, phase_slope,
};
pub use meter::{Calibration, Level, Meter};
pub use odd::{APART, Explained, Odd, Seen, Slip, odd_one_out, slip, without};
pub use one_port::{OnePort, OpenShort, directivity_u, impedance, one_port, open_short};
pub use per_length::{PerLength, per_length};
pub use ranking::{Ranked, cannot_be_told_apart, ranking, ranking_with};
pub use stats::{chi_square_survival, normal_quantile, student_two_sided};
pub use substitution::{
    Adapter, Around, Ends, Loss, MeasureError, Single, in_line, mean_loss, substitution, two_meters,
};
pub use swr::{SwrReading, swr};
pub use trend::{Direction, Trend, TrendPoint, trend};
