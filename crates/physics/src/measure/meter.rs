//! Power meters and what was read on them.

use super::stats::chi_square_survival;
use crate::uncertainty::rectangular;

/// Accuracy of a power meter, as standard uncertainties (k = 1). The builder methods take
/// the figures as data sheets give them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Meter {
    /// Relative, of the reading: an error of scale, the same at every reading of this meter. It
    /// cancels between two readings.
    pub u_of_reading: f64,
    /// In W: an offset, the same at every reading of this meter. In dB it weighs more the lower
    /// the reading, so it does not cancel.
    pub u_full_scale_w: f64,
    /// Relative, of each reading on its own: what two readings of one meter do not share.
    pub u_linearity: f64,
    /// In W, of each reading on its own: the same where a class of full scale is an error that
    /// changes along the scale.
    pub u_linearity_w: f64,
    /// Relative, of each reading on its own: scatter of repeated readings.
    pub u_repeatability: f64,
    /// In W, of each reading on its own.
    pub u_resolution_w: f64,
}

impl Meter {
    /// A meter without error.
    pub const PERFECT: Self = Self {
        u_of_reading: 0.0,
        u_full_scale_w: 0.0,
        u_linearity: 0.0,
        u_linearity_w: 0.0,
        u_repeatability: 0.0,
        u_resolution_w: 0.0,
    };

    /// Good to ± `half_width` (a fraction) of the reading, rectangular (GUM 4.3.7).
    #[must_use]
    pub fn of_reading(self, half_width: f64) -> Self {
        Self {
            u_of_reading: rectangular(half_width),
            ..self
        }
    }

    /// Good to ± `half_width` (a fraction) of `full_scale_w`, rectangular.
    #[must_use]
    pub fn of_full_scale(self, half_width: f64, full_scale_w: f64) -> Self {
        Self {
            u_full_scale_w: rectangular(half_width * full_scale_w),
            ..self
        }
    }

    /// Linear to ± `half_width` (a fraction) at each reading, rectangular.
    #[must_use]
    pub fn linearity(self, half_width: f64) -> Self {
        Self {
            u_linearity: rectangular(half_width),
            ..self
        }
    }

    /// Readings repeat within `sigma` (a fraction, one standard deviation).
    #[must_use]
    pub fn repeatability(self, sigma: f64) -> Self {
        Self {
            u_repeatability: sigma,
            ..self
        }
    }

    /// Read in steps of `step_w`: rectangular, half a step either way.
    #[must_use]
    pub fn resolution(self, step_w: f64) -> Self {
        Self {
            u_resolution_w: rectangular(0.5 * step_w),
            ..self
        }
    }

    /// Relative standard uncertainty of a lone reading of `watts`: everything counts.
    #[must_use]
    pub fn u_relative(&self, watts: f64) -> f64 {
        let w = watts.abs();
        crate::uncertainty::rss([
            self.u_of_reading,
            self.u_full_scale_w / w,
            self.u_linearity,
            self.u_linearity_w / w,
            self.u_repeatability,
            self.u_resolution_w / w,
        ])
    }

    /// Standard uncertainty in W of a lone reading, defined at 0 W too.
    #[must_use]
    pub fn u_watts(&self, watts: f64) -> f64 {
        crate::uncertainty::rss([
            self.u_of_reading * watts,
            self.u_full_scale_w,
            self.u_linearity * watts,
            self.u_linearity_w,
            self.u_repeatability * watts,
            self.u_resolution_w,
        ])
    }

    /// Worst case in W of a lone reading: limits added, repeatability as two standard deviations.
    #[must_use]
    pub fn limits_w(&self, watts: f64) -> f64 {
        let limits = (self.u_of_reading + self.u_linearity) * watts.abs()
            + self.u_full_scale_w
            + self.u_linearity_w
            + self.u_resolution_w;
        libm::sqrt(3.0) * limits + 2.0 * self.u_repeatability * watts.abs()
    }
}

/// One reading, or the mean of several readings of the same thing on one meter.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Level {
    /// Which reading this is: unique in a session, the identity of the errors that are its own.
    pub id: usize,
    /// Number of the meter, an index into the meters given along.
    pub meter: usize,
    /// Power in W (the mean).
    pub watts: f64,
    /// When, in minutes (the mean).
    pub minutes: f64,
    /// Number of readings.
    pub count: usize,
    /// Standard deviation of the readings in W; 0 for one.
    pub spread_w: f64,
    /// What a calibration certificate says of the meter there; `watts` is corrected by it.
    pub calibration: Option<Calibration>,
}

/// How well a corrected reading is known by the certificate of its meter.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Calibration {
    /// The points of the certificate between which the correction was interpolated: number of the point,
    /// and its share times its relative standard uncertainty. Readings that rest on one point share
    /// its error.
    pub terms: [(usize, f64); 4],
    /// The certificate holds: it takes the place of the scale, offset and linearity of the meter,
    /// which count as well otherwise.
    pub holds: bool,
}

impl Calibration {
    /// Relative standard uncertainty of a lone reading by the certificate.
    #[must_use]
    pub fn u_relative(&self) -> f64 {
        crate::uncertainty::rss(self.terms.iter().map(|t| t.1))
    }
}

impl Level {
    /// A single reading.
    #[must_use]
    pub fn one(id: usize, meter: usize, watts: f64, minutes: f64) -> Self {
        Self {
            id,
            meter,
            watts,
            minutes,
            count: 1,
            spread_w: 0.0,
            calibration: None,
        }
    }

    /// Mean and standard deviation of readings (W, minutes) of the same thing (GUM 4.2.1,
    /// 4.2.2). None without readings, or when one is not positive and finite.
    #[must_use]
    pub fn mean(id: usize, meter: usize, readings: &[(f64, f64)]) -> Option<Self> {
        let good = |r: &(f64, f64)| r.0 > 0.0 && r.0.is_finite() && r.1.is_finite();
        if readings.is_empty() || !readings.iter().all(good) {
            return None;
        }
        let n = readings.len() as f64;
        let watts = readings.iter().map(|r| r.0).sum::<f64>() / n;
        let minutes = readings.iter().map(|r| r.1).sum::<f64>() / n;
        let squares: f64 = readings.iter().map(|r| (r.0 - watts) * (r.0 - watts)).sum();
        let spread_w = if readings.len() > 1 {
            libm::sqrt(squares / (n - 1.0))
        } else {
            0.0
        };
        Some(Self {
            id,
            meter,
            watts,
            minutes,
            count: readings.len(),
            spread_w,
            calibration: None,
        })
    }

    /// True if power and time are usable.
    pub(super) fn good(&self) -> bool {
        self.watts > 0.0 && self.watts.is_finite() && self.minutes.is_finite()
    }

    /// Relative standard uncertainty by scatter, and its degrees of freedom.
    ///
    /// A single reading has the repeatability of the meter. Of several, the known repeatability
    /// over √n counts while the scatter seen is no more than it explains (χ² test, 5 %): it rests
    /// on more readings than these (GUM 4.2.4). Otherwise the scatter itself counts, `s/√n` with
    /// n − 1 degrees of freedom (GUM 4.2.3).
    #[must_use]
    pub fn u_scatter(&self, meter: &Meter) -> (f64, f64) {
        let known = meter.u_repeatability;
        if self.count < 2 {
            return (known, f64::INFINITY);
        }
        let n = self.count as f64;
        let seen = self.spread_w / self.watts;
        if known > 0.0 {
            let chi2 = (n - 1.0) * seen * seen / (known * known);
            if chi_square_survival(chi2, n - 1.0) > 0.05 {
                return (known / libm::sqrt(n), f64::INFINITY);
            }
        }
        (seen / libm::sqrt(n), n - 1.0)
    }
}
