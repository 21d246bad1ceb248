//! Power ratings, deratings, and which power is meant: peak envelope, carrier, mean.

/// Average-power rating at `f` from one stated at another frequency: in inverse proportion to
/// the attenuation (both in the same unit).
#[must_use]
pub fn rating_by_attenuation(rating_w: f64, attenuation_rated: f64, attenuation: f64) -> f64 {
    rating_w * attenuation_rated / attenuation
}

/// Rating in W that falls with the square root of frequency from `rating_w` at `rated_hz`
/// (connectors; common practice).
#[must_use]
pub fn rating_by_sqrt(rating_w: f64, rated_hz: f64, f_hz: f64) -> f64 {
    rating_w * libm::sqrt(rated_hz / f_hz)
}

/// Factor on a thermal rating at `ambient` instead of `reference` °C when the conductor may reach
/// `conductor` °C: `(Tmax − Ta)/(Tmax − Tref)`, never below 0.
#[must_use]
pub fn ambient_factor(conductor: f64, reference: f64, ambient: f64) -> f64 {
    ((conductor - ambient) / (conductor - reference)).max(0.0)
}

/// Factor on a thermal rating for a standing wave, net power:
/// `1/[(S² + 1)/(2S) + F (S² − 1)/(2S)]`. `hot_spot` F is 0 where heat spreads along the line and
/// 1 where the current maxima heat by themselves (take 1 above 30 MHz).
///
/// Both limits derived; the form between them from memory.
#[must_use]
pub fn swr_factor(swr: f64, hot_spot: f64) -> f64 {
    if swr.is_infinite() {
        return 0.0;
    }
    let s2 = swr * swr;
    2.0 * swr / (s2 + 1.0 + hot_spot * (s2 - 1.0))
}

/// A transmission mode.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Mode {
    /// Frequency modulation and any continuous carrier.
    Fm,
    /// Frequency-shift keying and audio-shifted data.
    Data,
    /// Morse, conversational.
    Cw,
    /// Single-sideband speech without processing.
    Ssb,
    /// Single-sideband speech with processing.
    SsbProcessed,
    /// Amplitude modulation, full carrier, fully modulated by a sine.
    Am,
}

/// Mean over peak envelope power of a mode while transmitting, and the source.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Duty {
    /// The mode.
    pub mode: Mode,
    /// Mean power over peak envelope power, in a transmission.
    pub factor: f64,
    /// Source, readable.
    pub source: &'static str,
}

/// Duty factors while transmitting; the share of time on the air is a separate factor.
pub const DUTY: [Duty; 6] = [
    Duty {
        mode: Mode::Fm,
        factor: 1.0,
        source: "constant envelope",
    },
    Duty {
        mode: Mode::Data,
        factor: 1.0,
        source: "constant envelope",
    },
    Duty {
        mode: Mode::Cw,
        factor: 0.4,
        source: "duty table of a national amateur society, as quoted publicly",
    },
    Duty {
        mode: Mode::Ssb,
        factor: 0.2,
        source: "duty table of a national amateur society, as quoted publicly",
    },
    Duty {
        mode: Mode::SsbProcessed,
        factor: 0.5,
        source: "FCC OET 65 Supplement B (from memory); other tables say 0.4",
    },
    Duty {
        mode: Mode::Am,
        factor: 0.375,
        source: "(1 + m²/2)/(1 + m)² at m = 1, from RR 1.157 to 1.159",
    },
];

/// Duty factor of a mode.
#[must_use]
pub fn duty(mode: Mode) -> Duty {
    match mode {
        Mode::Fm => DUTY[0],
        Mode::Data => DUTY[1],
        Mode::Cw => DUTY[2],
        Mode::Ssb => DUTY[3],
        Mode::SsbProcessed => DUTY[4],
        Mode::Am => DUTY[5],
    }
}

/// Mean power in W from peak envelope power, duty factor of the mode and share of time on.
#[must_use]
pub fn mean_power(pep_w: f64, duty: f64, on_time: f64) -> f64 {
    pep_w * duty * on_time
}

/// Peak envelope over carrier power of AM with modulation index `m`: `(1 + m)²`.
///
/// Source: derived from Radio Regulations 1.157, 1.159 (numbers from memory).
#[must_use]
pub fn am_pep_over_carrier(m: f64) -> f64 {
    (1.0 + m) * (1.0 + m)
}

/// Mean over carrier power of AM by a sine of index `m`: `1 + m²/2`.
///
/// Source: derived from Radio Regulations 1.158, 1.159 (numbers from memory).
#[must_use]
pub fn am_mean_over_carrier(m: f64) -> f64 {
    1.0 + 0.5 * m * m
}

/// Which power a figure states.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum PowerKind {
    /// Peak envelope power.
    Pep,
    /// Power without modulation.
    Carrier,
    /// Mean power during a transmission.
    Mean,
}

/// Factor from peak envelope power to `kind` in a mode. For single sideband there is no carrier:
/// `None`.
#[must_use]
pub fn from_pep(mode: Mode, kind: PowerKind) -> Option<f64> {
    match (kind, mode) {
        (PowerKind::Pep, _) => Some(1.0),
        (PowerKind::Mean, _) => Some(duty(mode).factor),
        (PowerKind::Carrier, Mode::Am) => Some(1.0 / am_pep_over_carrier(1.0)),
        (PowerKind::Carrier, Mode::Ssb | Mode::SsbProcessed) => None,
        // key down or unmodulated, the carrier is the peak envelope
        (PowerKind::Carrier, Mode::Fm | Mode::Data | Mode::Cw) => Some(1.0),
    }
}

/// A power in W of one kind as another kind in the same mode; `None` where a mode has no carrier.
#[must_use]
pub fn convert(watts: f64, mode: Mode, from: PowerKind, to: PowerKind) -> Option<f64> {
    Some(watts / from_pep(mode, from)? * from_pep(mode, to)?)
}
