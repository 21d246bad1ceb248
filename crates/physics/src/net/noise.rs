//! Noise of a receiving chain over any scalar.

use super::element::NEPER_OF_POWER;
use super::input::{Input, Reader};
use super::part::{Context, Part};
use super::scalar::Real;
use crate::noise::T0_K;

/// One stage from the antenna on.
#[derive(Clone, Debug)]
pub struct Stage {
    /// Its loss or gain.
    pub part: Part,
    /// Noise figure of an active part, dB; none of a passive one, whose loss at its temperature
    /// makes the noise.
    pub figure: Option<Input>,
    /// Temperature of a passive part, °C.
    pub celsius: Input,
    /// Loss by reflections at its place beyond its own loss, dB (negative for a gain).
    pub reflected_db: f64,
}

/// A receiving chain.
#[derive(Clone, Debug)]
pub struct Receiving {
    /// Loss by reflections at the antenna, dB: signal and noise of the antenna alike, so it makes
    /// no noise of its own.
    pub reflected_db: f64,
    /// Stages in the order the signal passes.
    pub stages: Vec<Stage>,
    /// Noise figure of the receiver, dB.
    pub receiver: Input,
}

/// 0 °C, K.
pub const ZERO_C_K: f64 = 273.15;

/// Power ratio of dB.
fn ratio<T: Real>(db: T) -> T {
    (db * T::of(NEPER_OF_POWER)).exp_e()
}

impl Receiving {
    /// Noise figure of the whole at the antenna, dB: `F = F1 + Σ (F − 1)/G` of the stages (Friis,
    /// Proc. IRE 1944), a passive stage having `F = 1 + (L − 1) T/290 K`.
    pub fn noise_figure<R: Reader>(&self, cx: &Context, r: &R) -> R::T {
        let one = R::T::of(1.0);
        let mut factor = one;
        for (own, lost) in self.factors(cx, r) {
            factor = factor + (own - one) * lost;
        }
        factor.ln_e() * R::T::of(1.0 / NEPER_OF_POWER)
    }

    /// Noise factor of each stage and of the receiver, with the loss of all before it as a power
    /// ratio.
    pub fn factors<R: Reader>(&self, cx: &Context, r: &R) -> Vec<(R::T, R::T)> {
        let of = R::T::of;
        let one = of(1.0);
        let mut out = Vec::with_capacity(self.stages.len() + 1);
        let mut lost = ratio(of(self.reflected_db));
        for s in &self.stages {
            let loss = ratio(s.part.matched_loss(cx, r));
            let own = match &s.figure {
                Some(f) => ratio(r.get(f)),
                None => one + (loss - one) * (r.get(&s.celsius) + of(ZERO_C_K)) / of(T0_K),
            };
            out.push((own, lost));
            lost = lost * loss * ratio(of(s.reflected_db));
        }
        out.push((ratio(r.get(&self.receiver)), lost));
        out
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::net::evaluate::noise_figure;
    use crate::net::input::{Inputs, Shape};
    use crate::net::part::Loss;

    fn pad(inputs: &mut Inputs, db: f64, u: f64) -> Part {
        let cause = inputs.cause(Shape::Normal);
        let loss = inputs.input("loss, dB", db, u, cause);
        Part::Device {
            loss: Loss::Stated(loss),
            swr: None,
            phase: inputs.phase(1),
        }
    }

    #[test]
    fn friis_by_hand() {
        // 2 dB at 290 K, a preamplifier of 20 dB and 1 dB, 3 dB at 290 K, a receiver of 6 dB
        let mut inputs = Inputs::default();
        let gain = inputs.cause(Shape::Normal);
        let own = inputs.cause(Shape::Normal);
        let amplifier = Part::OneWay {
            forward: inputs.input("loss forward, dB", -20.0, 0.5, gain),
            backward: None,
            swr: None,
            turned: false,
            phase: inputs.phase(2),
        };
        let figure = inputs.input("noise figure, dB", 1.0, 0.2, own);
        let passive = |part| Stage {
            part,
            figure: None,
            celsius: Input::exact("temperature, °C", 290.0 - ZERO_C_K),
            reflected_db: 0.0,
        };
        let first = passive(pad(&mut inputs, 2.0, 0.1));
        let last = passive(pad(&mut inputs, 3.0, 0.1));
        let chain = Receiving {
            reflected_db: 0.0,
            stages: vec![
                first,
                Stage {
                    part: amplifier,
                    figure: Some(figure),
                    celsius: Input::exact("temperature, °C", 290.0 - ZERO_C_K),
                    reflected_db: 0.0,
                },
                last,
            ],
            receiver: Input::exact("noise figure, dB", 6.0),
        };
        let [(nf, u), (over, _)] = noise_figure(&chain, 145e6, &inputs);
        let p = |db: f64| 10f64.powf(db / 10.0);
        let f = |gain: f64, own: f64, lost: f64, behind: f64| {
            let f = p(lost)
                + (p(own) - 1.0) * p(lost)
                + (p(behind) - 1.0) * p(lost - gain)
                + (p(6.0) - 1.0) * p(lost - gain + behind);
            10.0 * f.log10()
        };
        let want = f(20.0, 1.0, 2.0, 3.0);
        assert!((nf - want).abs() < 1e-9, "{nf} {want}");
        assert!((over - (want - 6.0)).abs() < 1e-9);
        // central differences of each figure by its standard uncertainty
        let d = [
            f(20.5, 1.0, 2.0, 3.0) - f(19.5, 1.0, 2.0, 3.0),
            f(20.0, 1.2, 2.0, 3.0) - f(20.0, 0.8, 2.0, 3.0),
            f(20.0, 1.0, 2.1, 3.0) - f(20.0, 1.0, 1.9, 3.0),
            f(20.0, 1.0, 2.0, 3.1) - f(20.0, 1.0, 2.0, 2.9),
        ];
        let by_hand = d.iter().map(|d| d * d / 4.0).sum::<f64>().sqrt();
        assert!((u - by_hand).abs() < 1e-3 * by_hand, "{u} {by_hand}");
    }
}
