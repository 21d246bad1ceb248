//! The transmitter drifts: baselines before and after, a straight line between them.

use super::meter::{Level, Meter};
use crate::uncertainty::{rectangular, rss};

/// Assumptions about drift.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rules {
    /// With two baselines: how much of the step between them a straight line may miss halfway, a
    /// fraction (half-width, rectangular). Half of the step covers a transmitter that jumped once,
    /// at an unknown time; with three baselines or more their second differences tell.
    pub step_share: f64,
    /// With one baseline: relative drift a minute that is thought possible (half-width).
    pub unknown_per_minute: f64,
}

impl Default for Rules {
    /// Half of the step of two baselines; nothing for the drift of a single one.
    fn default() -> Self {
        Self {
            step_share: HALF_STEP,
            unknown_per_minute: 0.0,
        }
    }
}

/// Share of the step between two baselines that a straight line may miss (common practice: the
/// error of a single jump halfway).
pub const HALF_STEP: f64 = 0.5;

/// Standard uncertainty halfway between two of three or more baselines, as a share of the second
/// difference beside them that the meter's own errors do not explain: so much covers 95 % of the
/// results of transmitters that drift along a straight line, along a bow, or in one jump
/// (`tests/reference/drift.py` simulates them).
const OF_SECOND_DIFFERENCE: f64 = 0.35;

/// Why baselines cannot be used.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BaselineError {
    /// No baseline.
    Empty,
    /// A power that is not positive and finite, or a time that is no number; index as given.
    NotPositive(usize),
    /// No such meter; index as given.
    UnknownMeter(usize),
    /// Another meter than the first one's; index as given.
    MixedMeters(usize),
}

impl core::fmt::Display for BaselineError {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self {
            Self::Empty => write!(f, "no baseline"),
            Self::NotPositive(i) => write!(f, "baseline {} has no positive power", i + 1),
            Self::UnknownMeter(i) => write!(f, "the meter of baseline {} is not known", i + 1),
            Self::MixedMeters(i) => write!(f, "baseline {} was read on another meter", i + 1),
        }
    }
}

impl core::error::Error for BaselineError {}

/// Which baselines (indices in order of time) a piece is held against.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum BaselineUse {
    /// Between two; `fraction` of the way from the first to the second.
    Between {
        /// The one before.
        before: usize,
        /// The one after.
        after: usize,
        /// 0 at the first, 1 at the second.
        fraction: f64,
    },
    /// Before the first or after the last one: the nearest as it is.
    Nearest(usize),
    /// The only one there is: drift cannot be corrected.
    Only(usize),
}

/// Drift over a whole session.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Drift {
    /// Slope in percent of the first baseline a minute (least squares with three or more); NaN
    /// with one baseline or all at one time.
    pub percent_per_minute: f64,
    /// From the first to the last, in percent of the first.
    pub total_percent: f64,
    /// From the first to the last, minutes.
    pub minutes: f64,
    /// Standard deviation about the straight line in percent, with three baselines or more.
    pub scatter_percent: Option<f64>,
}

/// The baseline that would have been read at one time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Baseline {
    /// Power in W.
    pub watts: f64,
    /// The readings it was computed from.
    pub how: BaselineUse,
    /// Drift there in percent a minute; NaN when not known.
    pub percent_per_minute: f64,
    /// Relative standard uncertainty by what is left of the drift.
    pub u_leftover: f64,
}

/// The baselines of a session, in order of time.
#[derive(Debug, Clone, PartialEq)]
pub struct Baselines {
    levels: Vec<Level>,
    drift: Drift,
    /// For each pair of neighbours, relative standard uncertainty halfway between them by what
    /// interpolation may miss.
    halfway: Vec<f64>,
    /// The same for two baselines as a share of 1 of their step; NaN where there are more.
    step: f64,
}

impl Baselines {
    /// Takes baselines in any order.
    ///
    /// # Errors
    /// None given, one without a positive power, an unknown meter, or different meters.
    pub fn new(levels: &[Level], meters: &[Meter]) -> Result<Self, BaselineError> {
        let first = levels.first().ok_or(BaselineError::Empty)?;
        for (i, l) in levels.iter().enumerate() {
            if !l.good() {
                return Err(BaselineError::NotPositive(i));
            }
            if l.meter >= meters.len() {
                return Err(BaselineError::UnknownMeter(i));
            }
            if l.meter != first.meter {
                return Err(BaselineError::MixedMeters(i));
            }
        }
        let meter = &meters[first.meter];
        let mut levels = levels.to_vec();
        levels.sort_by(|a, b| a.minutes.total_cmp(&b.minutes));
        let drift = drift(&levels);
        let own: Vec<f64> = levels.iter().map(|l| own_variance(l, meter)).collect();
        let halfway = halfway(&levels, &own);
        let step = match &levels[..] {
            [a, b] => beyond((b.watts - a.watts) / a.watts, own[0] + own[1]),
            _ => f64::NAN,
        };
        Ok(Self {
            levels,
            drift,
            halfway,
            step,
        })
    }

    /// The baselines in order of time.
    #[must_use]
    pub fn levels(&self) -> &[Level] {
        &self.levels
    }

    /// The first in time.
    #[must_use]
    pub fn first(&self) -> &Level {
        &self.levels[0]
    }

    /// Drift over the session.
    #[must_use]
    pub fn drift(&self) -> Drift {
        self.drift
    }

    /// The baseline at a time: on the straight line between its neighbours.
    #[must_use]
    pub fn at(&self, minutes: f64, rules: &Rules) -> Baseline {
        let n = self.levels.len();
        if n == 1 {
            let away = (minutes - self.levels[0].minutes).abs();
            return self.as_it_is(
                BaselineUse::Only(0),
                0,
                f64::NAN,
                rules.unknown_per_minute * away,
            );
        }
        let after = self.levels.partition_point(|l| l.minutes <= minutes);
        if after > 0 && after < n {
            return self.between(after - 1, minutes, rules);
        }
        let i = if after == 0 { 0 } else { n - 1 };
        let l = &self.levels[i];
        if l.minutes == minutes {
            // exactly at the last one
            return self.as_it_is(
                BaselineUse::Between {
                    before: i,
                    after: i,
                    fraction: 0.0,
                },
                i,
                self.drift.percent_per_minute,
                0.0,
            );
        }
        let rate = self.drift.percent_per_minute;
        let missed = 0.01 * rate.abs() * (minutes - l.minutes).abs();
        let missed = if missed.is_nan() { 0.0 } else { missed };
        self.as_it_is(BaselineUse::Nearest(i), i, rate, missed)
    }

    fn as_it_is(&self, how: BaselineUse, i: usize, rate: f64, half_width: f64) -> Baseline {
        Baseline {
            watts: self.levels[i].watts,
            how,
            percent_per_minute: rate,
            u_leftover: rectangular(half_width),
        }
    }

    fn between(&self, before: usize, minutes: f64, rules: &Rules) -> Baseline {
        let (a, b) = (&self.levels[before], &self.levels[before + 1]);
        let span = b.minutes - a.minutes;
        let w = (minutes - a.minutes) / span;
        let watts = a.watts + w * (b.watts - a.watts);
        // a jump at an unknown time leaves a deviation of √(w (1 − w)) of its step
        let shape = 2.0 * libm::sqrt(w * (1.0 - w));
        let halfway = if self.levels.len() == 2 {
            rectangular(rules.step_share * self.step)
        } else {
            self.halfway[before]
        };
        Baseline {
            watts,
            how: BaselineUse::Between {
                before,
                after: before + 1,
                fraction: w,
            },
            percent_per_minute: 100.0 * (b.watts - a.watts) / a.watts / span,
            u_leftover: shape * halfway,
        }
    }
}

/// Relative variance of a level by what it does not share with the others: at about one power the
/// meter's linearity is one error, and no step.
fn own_variance(l: &Level, meter: &Meter) -> f64 {
    let u = rss([l.u_scatter(meter).0, meter.u_resolution_w / l.watts]);
    u * u
}

/// For each pair of neighbours among three baselines or more, relative standard uncertainty halfway
/// between them.
///
/// A baseline off the line through its neighbours shows a step or a bow in one of the two intervals
/// beside it. The step that would explain it is taken for both, no larger than the largest step
/// there.
fn halfway(levels: &[Level], own: &[f64]) -> Vec<f64> {
    let n = levels.len();
    if n < 3 {
        return Vec::new();
    }
    let mut out = vec![0.0_f64; n - 1];
    for i in 1..n - 1 {
        let (a, m, b) = (&levels[i - 1], &levels[i], &levels[i + 1]);
        let span = b.minutes - a.minutes;
        if span <= 0.0 {
            continue;
        }
        // share of the way at which the middle one was read
        let s = (m.minutes - a.minutes) / span;
        let off = (a.watts + s * (b.watts - a.watts) - m.watts) / m.watts;
        let noise = own[i] + (1.0 - s) * (1.0 - s) * own[i - 1] + s * s * own[i + 1];
        let off = beyond(off, noise);
        // a step of D after the middle one puts it s D off the line, one before it (1 − s) D
        for (interval, share) in [(i - 1, 1.0 - s), (i, s)] {
            let step = if share > 0.0 {
                off / share
            } else {
                f64::INFINITY
            };
            let most = (m.watts - a.watts).abs().max((b.watts - m.watts).abs()) / m.watts;
            out[interval] = out[interval].max(OF_SECOND_DIFFERENCE * step.min(most));
        }
    }
    out
}

/// The size of a difference beyond a known variance of it.
fn beyond(difference: f64, variance: f64) -> f64 {
    libm::sqrt((difference * difference - variance).max(0.0))
}

fn drift(levels: &[Level]) -> Drift {
    let (first, last) = (&levels[0], &levels[levels.len() - 1]);
    let minutes = last.minutes - first.minutes;
    let n = levels.len() as f64;
    let t0 = levels.iter().map(|l| l.minutes).sum::<f64>() / n;
    let p0 = levels.iter().map(|l| l.watts).sum::<f64>() / n;
    let (mut tt, mut tp) = (0.0, 0.0);
    for l in levels {
        tt += (l.minutes - t0) * (l.minutes - t0);
        tp += (l.minutes - t0) * (l.watts - p0);
    }
    let slope = if tt > 0.0 { tp / tt } else { f64::NAN };
    let scatter_percent = (levels.len() > 2 && tt > 0.0).then(|| {
        let squares: f64 = levels
            .iter()
            .map(|l| {
                let r = l.watts - p0 - slope * (l.minutes - t0);
                r * r
            })
            .sum();
        100.0 * libm::sqrt(squares / (n - 2.0)) / p0
    });
    Drift {
        percent_per_minute: 100.0 * slope / first.watts,
        total_percent: 100.0 * (last.watts - first.watts) / first.watts,
        minutes,
        scatter_percent,
    }
}
