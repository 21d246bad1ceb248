//! Radio noise from outside, and what it does to a receiver.

use downlead_quantity::{from_db, to_db};

/// What makes the noise around an antenna.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Surroundings {
    /// City (business area).
    City,
    /// Residential.
    Residential,
    /// Rural.
    Rural,
    /// Quiet rural.
    QuietRural,
    /// The galaxy, where nothing made by people is louder.
    Galactic,
}

/// Median of the noise from outside and how it spreads from time to time and place to place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ExternalNoise {
    /// Median of the noise figure of a lossless antenna, dB above kT0b.
    pub median_db: f64,
    /// How far the upper and the lower decile are from the median, dB.
    pub deciles_db: (f64, f64),
}

/// The range of frequencies in which the noise of a kind is given, Hz.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NoiseRange {
    /// Lowest.
    pub low_hz: f64,
    /// Highest.
    pub high_hz: f64,
}

impl Surroundings {
    /// Constants c and d of the median, dB above kT0b: `c - d log10(f/MHz)`.
    #[must_use]
    pub fn median(self) -> (f64, f64) {
        let row = self.row();
        (row.0, row.1)
    }

    /// Constants c and d, deciles, range (ITU-R P.372, table of the man-made noise; its galactic noise).
    fn row(self) -> (f64, f64, (f64, f64), NoiseRange) {
        let range = |low: f64, high: f64| NoiseRange {
            low_hz: low * 1e6,
            high_hz: high * 1e6,
        };
        match self {
            Surroundings::City => (76.8, 27.7, (11.0, 6.7), range(0.3, 250.0)),
            Surroundings::Residential => (72.5, 27.7, (10.6, 5.3), range(0.3, 250.0)),
            Surroundings::Rural => (67.2, 27.7, (9.2, 4.6), range(0.3, 250.0)),
            Surroundings::QuietRural => (53.6, 28.6, (9.2, 4.6), range(0.3, 30.0)),
            Surroundings::Galactic => (52.0, 23.0, (2.0, 2.0), range(10.0, 250.0)),
        }
    }

    /// Where its noise is given.
    #[must_use]
    pub fn range(self) -> NoiseRange {
        self.row().3
    }
}

/// Noise from outside: `Fam = c − d log10 f(MHz)` dB above kT0b.
///
/// Source: ITU-R P.372.
///
/// # Errors
/// The range in which the recommendation gives it, when `f_hz` is outside.
pub fn external_noise(around: Surroundings, f_hz: f64) -> Result<ExternalNoise, NoiseRange> {
    let (c, d, deciles_db, range) = around.row();
    if !(range.low_hz..=range.high_hz).contains(&f_hz) {
        return Err(range);
    }
    Ok(ExternalNoise {
        median_db: c - d * libm::log10(f_hz / 1e6),
        deciles_db,
    })
}

/// Noise figure in dB of a system at the terminals of its antenna: `f = fa − 1 + fc·fr` with noise from
/// outside, and the receiver after a line, everything but the outside at 290 K.
///
/// Source: ITU-R P.372, eq. 2 and 3.
#[must_use]
pub fn system_noise_figure(external_db: f64, line_db: f64, receiver_db: f64) -> f64 {
    to_db(from_db(external_db) - 1.0 + from_db(line_db + receiver_db))
}

/// By how many dB noise from outside raises the noise of such a system over that of an antenna at 290 K.
#[must_use]
pub fn degradation(external_db: f64, line_db: f64, receiver_db: f64) -> f64 {
    system_noise_figure(external_db, line_db, receiver_db) - (line_db + receiver_db)
}
