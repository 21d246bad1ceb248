//! Power delivered at eight settings of the open phases at once, for the search of bounds.
//!
//! A search turns one phase at a time. The elements that do not read it, and the reflections seen
//! after the last of those that do, are kept from the setting before: the same operations in the
//! same order, and so the same bits as a whole evaluation.

use super::Network;
use super::complex::C;
use super::element::El;
use super::evaluate::level_db;
use super::input::{Input, Reader, Spread, drawn};
use super::part::{Context, End, Part, Stretch};
use super::scalar::{Lanes, Real, WIDTH};
use super::solve::Tail;

/// Reader at nominal values with lanes of angles for the open phases, rad.
pub(super) struct Angles<'a>(pub(super) &'a [[f64; WIDTH]]);

impl Reader for Angles<'_> {
    type T = Lanes;
    fn get(&self, i: &Input) -> Lanes {
        drawn(i, |_| [0.0; WIDTH])
    }
    fn coherence(&self, phase: u32, _: Lanes, _: Spread) -> C<Lanes> {
        C::turn(Lanes::of(1.0), Lanes(self.0[phase as usize]))
    }
    fn half_sine(&self, phase: u32) -> Lanes {
        Lanes(self.0[phase as usize].map(|a| libm::sin(0.5 * a)))
    }
}

/// Reader that notes the phases it is asked for.
struct Noted<'a> {
    angles: Angles<'a>,
    phases: std::cell::RefCell<Vec<u32>>,
}

impl Reader for Noted<'_> {
    type T = Lanes;
    fn get(&self, i: &Input) -> Lanes {
        self.angles.get(i)
    }
    fn coherence(&self, phase: u32, round: Lanes, spread: Spread) -> C<Lanes> {
        self.phases.borrow_mut().push(phase);
        self.angles.coherence(phase, round, spread)
    }
    fn half_sine(&self, phase: u32) -> Lanes {
        self.phases.borrow_mut().push(phase);
        self.angles.half_sine(phase)
    }
}

/// Elements of one part, and whether a phase of it was turned since they were built.
struct Piece {
    first: usize,
    count: usize,
    turned: bool,
}

/// A network whose open phases are turned.
pub(super) struct Levels<'n> {
    net: &'n Network,
    cx: Context,
    level: Lanes,
    tail: Tail<Lanes>,
    /// One for each part, in order; none where the chain has branches.
    pieces: Vec<Piece>,
    /// The parts that read each phase.
    readers: Vec<Vec<u32>>,
    angles: Vec<[f64; WIDTH]>,
    /// Reflection (mean, incoherent power) after each element.
    after: Vec<(C<Lanes>, Lanes)>,
    scratch: Vec<El<Lanes>>,
    /// True if an element's power depends on the incoherent power of the reflection.
    tuned: bool,
}

impl<'n> Levels<'n> {
    pub(super) fn new(net: &'n Network, phases: usize) -> Self {
        let angles = vec![[0.0; WIDTH]; phases];
        let cx = Context {
            hz: net.hz,
            phased: false,
        };
        let mut new = Levels {
            net,
            cx,
            level: Angles(&angles).get(&net.level),
            tail: Tail::default(),
            pieces: Vec::new(),
            readers: vec![Vec::new(); phases],
            after: Vec::new(),
            scratch: Vec::new(),
            tuned: false,
            angles,
        };
        if matches!(net.feed.end, End::Load(..)) {
            new.divide(&net.feed);
        }
        new
    }

    /// Builds the parts of a chain without branches and notes which phases each reads.
    fn divide(&mut self, feed: &Stretch) {
        let mut els = Vec::with_capacity(4 * feed.parts.len() + 4);
        for (i, p) in feed.parts.iter().enumerate() {
            let r = Noted {
                angles: Angles(&self.angles),
                phases: std::cell::RefCell::default(),
            };
            let first = els.len();
            p.build(&self.cx, &r, &mut els);
            self.pieces.push(Piece {
                first,
                count: els.len() - first,
                turned: false,
            });
            for phase in r.phases.into_inner() {
                if let Some(readers) = self.readers.get_mut(phase as usize) {
                    readers.push(u32::try_from(i).unwrap_or(u32::MAX));
                }
            }
            els.push(El::Node);
        }
        self.tuned = els.iter().any(|e| matches!(e, El::Tuner { .. }));
        let end = Stretch {
            parts: Vec::new(),
            end: feed.end.clone(),
        };
        // the end's own phase turns what follows all parts
        let r = Noted {
            angles: Angles(&self.angles),
            phases: std::cell::RefCell::default(),
        };
        self.tail = end.build(&self.cx, &r);
        let own = r.phases.into_inner();
        if !own.is_empty() {
            let at = u32::try_from(self.pieces.len()).unwrap_or(u32::MAX);
            self.pieces.push(Piece {
                first: els.len(),
                count: self.tail.els.len(),
                turned: false,
            });
            for phase in own {
                if let Some(readers) = self.readers.get_mut(phase as usize) {
                    readers.push(at);
                }
            }
        }
        els.append(&mut self.tail.els);
        self.tail.els = els;
        let none = (C::zero(), Lanes::of(0.0));
        self.after = vec![none; self.tail.els.len()];
        if let Some(last) = self.tail.els.len().checked_sub(1) {
            self.inward(last);
        }
    }

    /// Level of the power delivered to all ends, dB over 1 W.
    pub(super) fn at(&mut self, x: &[[f64; WIDTH]]) -> [f64; WIDTH] {
        if self.pieces.is_empty() || !self.turn(x) {
            return self.whole(x);
        }
        let mut f = Lanes::of(1.0);
        for (e, (g, v)) in self.tail.els.iter().zip(&self.after) {
            f = e.passed(f, *g, *v);
        }
        let net = f * (Lanes::of(1.0) - self.tail.load.norm());
        level_db(Lanes::of(0.0) + net, self.level).0
    }

    /// Builds the parts again whose phases are not as before. False if that cannot be done.
    fn turn(&mut self, x: &[[f64; WIDTH]]) -> bool {
        for (phase, (old, new)) in self.angles.iter_mut().zip(x).enumerate() {
            if old.map(f64::to_bits) != new.map(f64::to_bits) {
                *old = *new;
                for piece in &self.readers[phase] {
                    self.pieces[*piece as usize].turned = true;
                }
            }
        }
        let r = Angles(&self.angles);
        let mut last = None;
        for (i, piece) in self.pieces.iter_mut().enumerate() {
            if !std::mem::take(&mut piece.turned) || piece.count == 0 {
                continue;
            }
            self.scratch.clear();
            match self.net.feed.parts.get(i) {
                Some(part) => Part::build(part, &self.cx, &r, &mut self.scratch),
                None => self.net.feed.end_elements(&r, &mut self.scratch),
            }
            let here = piece.first..piece.first + piece.count;
            if self.scratch.len() != piece.count {
                self.pieces.clear();
                return false;
            }
            self.tail.els[here.clone()].copy_from_slice(&self.scratch);
            last = Some(here.end - 1);
        }
        if let Some(last) = last {
            self.inward(last);
        }
        true
    }

    /// The reflections after the elements up to `last`, behind which nothing has changed.
    fn inward(&mut self, last: usize) {
        let zero = Lanes::of(0.0);
        let (mut g, mut v) = if last + 1 == self.tail.els.len() {
            (self.tail.load, zero)
        } else {
            self.after[last]
        };
        for (e, after) in self.tail.els[..=last]
            .iter()
            .zip(&mut self.after[..=last])
            .rev()
        {
            *after = (g, v);
            match e {
                El::Node => {}
                _ if self.tuned => (g, v) = e.seen(g, v),
                _ => g = e.seen_known(g),
            }
        }
    }

    /// The same by building and solving everything.
    fn whole(&self, x: &[[f64; WIDTH]]) -> [f64; WIDTH] {
        let s = self.net.feed.build(&self.cx, &Angles(x)).solve(false);
        let mut delivered = Lanes::of(0.0);
        for e in &s.ends {
            delivered = delivered + e.net;
        }
        level_db(delivered, self.level).0
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::net::Fields;
    use crate::net::input::{Inputs, Shape};
    use crate::net::part::{Length, Line, Load, Loss, Rate};

    fn chain(tuner: bool) -> (Network, usize) {
        let mut inputs = Inputs::default();
        let cause = inputs.cause(Shape::Rectangular);
        let exact = Input::exact;
        let line = |inputs: &mut Inputs, spread| {
            Part::Line(Box::new(Line {
                rate: Rate::TwoTerm {
                    k1: exact("k1", 0.0012),
                    k2: exact("k2", 1.2e-5),
                },
                scale: inputs.input("scale", 1.0, 0.04, cause),
                z0: Some(exact("z0", 75.0)),
                velocity: Some(exact("velocity", 0.88)),
                celsius: exact("celsius", 20.0),
                reference_c: 20.0,
                length: Length::Metres(exact("length", 17.3)),
                added: None,
                spread,
                phase: inputs.line_phase(spread),
                swr: None,
            }))
        };
        let device = |inputs: &mut Inputs| Part::Device {
            loss: Loss::Stated(exact("loss", 0.7)),
            swr: Some(exact("SWR", 1.4)),
            phase: inputs.phase(3),
        };
        let mut parts = vec![
            device(&mut inputs),
            line(&mut inputs, Spread::Free),
            device(&mut inputs),
            line(&mut inputs, Spread::Known),
        ];
        if tuner {
            parts.insert(
                1,
                Part::Tuner {
                    loss: exact("loss", 0.3),
                },
            );
        }
        let phase = inputs.phase(1);
        let phases = inputs.phases();
        let net = Network {
            hz: 146.9e6,
            level: exact("level", 14.0),
            inputs,
            feed: Stretch {
                parts,
                end: End::Load(
                    Load::Swr {
                        swr: exact("SWR", 2.1),
                        phase,
                    },
                    None,
                ),
            },
            phased: false,
            fields: Fields::InPhase,
        };
        (net, phases)
    }

    #[test]
    fn what_is_kept_between_settings_changes_no_bit() {
        for tuner in [false, true] {
            let (net, phases) = chain(tuner);
            let mut levels = Levels::new(&net, phases);
            let mut x = vec![[0.0; WIDTH]; phases];
            for step in 0..6 * phases {
                // phases in no order, sometimes two at once, sometimes none
                for p in [step * 5 % phases, step * 7 % phases] {
                    if step % 4 != 3 {
                        x[p] = core::array::from_fn(|k| ((step * 13 + k * 3) % 63) as f64 * 0.1);
                    }
                }
                let kept = levels.at(&x).map(f64::to_bits);
                assert_eq!(kept, levels.whole(&x).map(f64::to_bits), "step {step}");
                assert!(!levels.pieces.is_empty());
                // as all outputs of the network give it
                let all = net.levels(&Angles(&x)).1.0.map(f64::to_bits);
                assert_eq!(kept, all, "step {step}");
            }
        }
    }
}
