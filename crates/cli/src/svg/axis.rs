//! Scales from figures to pixels, with ticks where people look for them.

use downlead_quantity::number;

use super::{Anchor, Picture, Stroke, text_width};

/// Linear or logarithmic.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Scale {
    Linear,
    Log,
}

/// A scale from figures onto pixels.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Axis {
    scale: Scale,
    /// Figures at the ends; both positive on a logarithmic scale.
    pub(crate) low: f64,
    pub(crate) high: f64,
    /// Pixels at the ends.
    pub(crate) from: f64,
    pub(crate) to: f64,
}

impl Axis {
    /// A scale; ends that coincide are moved apart.
    pub(crate) fn new(scale: Scale, low: f64, high: f64, from: f64, to: f64) -> Axis {
        let (mut low, mut high) = (low, high);
        if !(low.is_finite() && high.is_finite()) {
            (low, high) = (1.0, 10.0);
        }
        if scale == Scale::Log {
            low = low.max(1e-12);
            high = high.max(low * 1.001);
        } else if high - low < 1e-9 {
            (low, high) = (low - 0.5, high + 0.5);
        }
        Axis {
            scale,
            low,
            high,
            from,
            to,
        }
    }

    /// Pixel of a figure, held within the ends.
    pub(crate) fn at(&self, value: f64) -> f64 {
        let share = match self.scale {
            Scale::Linear => (value - self.low) / (self.high - self.low),
            Scale::Log if value <= self.low => 0.0,
            Scale::Log => libm::log(value / self.low) / libm::log(self.high / self.low),
        };
        let share = if share.is_nan() {
            0.0
        } else {
            share.clamp(0.0, 1.0)
        };
        self.from + share * (self.to - self.from)
    }

    /// Whether a figure lies within the ends.
    pub(crate) fn holds(&self, value: f64) -> bool {
        value >= self.low && value <= self.high
    }

    /// Figures for ticks: 1, 2 and 5 of each decade, or round steps.
    pub(crate) fn ticks(&self) -> Vec<f64> {
        match self.scale {
            Scale::Log => self.log_ticks(),
            Scale::Linear => self.linear_ticks(),
        }
    }

    fn log_ticks(&self) -> Vec<f64> {
        let decades = libm::log10(self.high / self.low);
        let steps: &[f64] = if decades > 3.6 {
            &[1.0]
        } else {
            &[1.0, 2.0, 5.0]
        };
        let first = libm::floor(libm::log10(self.low)) as i32;
        let last = libm::ceil(libm::log10(self.high)) as i32;
        (first..=last)
            .flat_map(|e| steps.iter().map(move |s| s * libm::pow(10.0, f64::from(e))))
            .filter(|t| *t >= self.low * 0.999 && *t <= self.high * 1.001)
            .collect()
    }

    fn linear_ticks(&self) -> Vec<f64> {
        let room = ((self.to - self.from).abs() / 22.0).max(2.0);
        let raw = (self.high - self.low) / room;
        let decade = libm::pow(10.0, libm::floor(libm::log10(raw)));
        let step = [1.0, 2.0, 5.0, 10.0]
            .iter()
            .map(|s| s * decade)
            .find(|s| *s >= raw)
            .unwrap_or(10.0 * decade);
        let first = libm::ceil(self.low / step - 1e-9) as i64;
        let last = libm::floor(self.high / step + 1e-9) as i64;
        (first..=last.min(first + 40))
            .map(|i| i as f64 * step)
            .collect()
    }

    /// Draws it along the bottom of a frame from `top` to `bottom`, with its grid and words.
    pub(crate) fn along_bottom(&self, p: &mut Picture, top: f64, bottom: f64, words: &str) {
        let mut end = f64::NEG_INFINITY;
        for t in self.ticks() {
            let x = self.at(t);
            p.line((x, top), (x, bottom), Stroke::Grid);
            p.line((x, bottom), (x, bottom + 5.0), Stroke::Thin);
            let label = number(t, 4);
            let half = 0.5 * text_width(&label);
            if x - half > end + 4.0 {
                p.small((x, bottom + 18.0), Anchor::Middle, &label);
                end = x + half;
            }
        }
        let middle = 0.5 * (self.from + self.to);
        p.text((middle, bottom + 36.0), Anchor::Middle, words);
    }

    /// Draws it along the left of a frame from `left` to `right`; labels are kept apart.
    pub(crate) fn along_left(&self, p: &mut Picture, left: f64, right: f64, sign: bool) {
        let mut last = f64::INFINITY;
        let ticks = self.ticks();
        // on a linear scale all labels have as many decimals
        let decimals = |t: &f64| number(*t, 4).split_once('.').map_or(0, |(_, d)| d.len());
        let most = match self.scale {
            Scale::Linear => ticks.iter().map(decimals).max(),
            Scale::Log => None,
        };
        for t in ticks {
            let y = self.at(t);
            p.line((left, y), (right, y), Stroke::Grid);
            p.line((left - 5.0, y), (left, y), Stroke::Thin);
            if (last - y).abs() >= 13.0 {
                let label = match most {
                    Some(d) if t != 0.0 => format!("{t:.d$}"),
                    _ => number(t, 4),
                };
                let label = if sign && t > 0.0 {
                    format!("+{label}")
                } else {
                    label.replace('-', "−")
                };
                p.small((left - 8.0, y + 4.0), Anchor::End, &label);
                last = y;
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_fall_where_they_should() {
        let a = Axis::new(Scale::Log, 1.0, 100.0, 0.0, 200.0);
        assert!((a.at(10.0) - 100.0).abs() < 1e-9);
        assert_eq!(
            (a.at(0.0), a.at(-3.0), a.at(1e9), a.at(f64::NAN)),
            (0.0, 0.0, 200.0, 0.0)
        );
        assert_eq!(a.ticks(), [1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0]);
        let a = Axis::new(Scale::Linear, -0.25, 0.25, 100.0, 0.0);
        assert!((a.at(0.0) - 50.0).abs() < 1e-9);
        assert_eq!(a.ticks(), [-0.2, 0.0, 0.2]);
    }

    #[test]
    fn ends_that_make_no_sense_still_make_a_scale() {
        for (low, high) in [
            (f64::NAN, 1.0),
            (1.0, 1.0),
            (5.0, 1.0),
            (0.0, 0.0),
            (0.0, f64::INFINITY),
        ] {
            for scale in [Scale::Linear, Scale::Log] {
                let a = Axis::new(scale, low, high, 0.0, 100.0);
                assert!(a.at(1.0).is_finite(), "{low} {high}");
                assert!(a.ticks().len() < 100);
            }
        }
    }
}
