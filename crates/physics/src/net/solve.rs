//! One solver for chains and trees: reflections from the ends inwards, power outwards.
//!
//! A reflection is a mean and an incoherent power: with phases partly known E|Γ|² is more than
//! |EΓ|². In exact scalars (value, lanes) every coherence is 1 and the incoherent power 0.
//! The source is matched to 50 ohm and sends 1 W.

use super::complex::C;
use super::element::El;
use super::scalar::Real;

/// Networks from a source to an end, or to the port 0 of an n-port with arms.
#[derive(Clone, Debug)]
pub struct Tail<T> {
    /// Elements from the source on.
    pub els: Vec<El<T>>,
    /// Reflection of the end; without arms.
    pub load: C<T>,
    /// Gain of the antenna at the end, nepers of power; none where nothing radiates.
    pub gain: Option<T>,
    /// True if the gain already includes the mismatch and so starts from the forward power.
    pub realized: bool,
    /// Scattering matrix of the n-port that the arms hang on, port 0 towards the source.
    pub ports: Vec<Vec<C<T>>>,
    /// The branches at ports 1 and up.
    pub arms: Vec<Tail<T>>,
    /// Waves into the arms for a wave of 1 into port 0.
    into: Vec<C<T>>,
    /// Reflection (mean, incoherent power) after each element.
    after: Vec<(C<T>, T)>,
}

/// State at a boundary between parts.
#[derive(Clone, Copy, Debug)]
pub struct Node<T> {
    /// Forward power, W.
    pub forward: T,
    /// Reflected over forward power.
    pub back: T,
}

impl<T: Real> Node<T> {
    /// Net power, W.
    pub fn net(&self) -> T {
        self.forward * (T::of(1.0) - self.back)
    }
}

/// The wave that arrives at an end.
#[derive(Clone, Copy, Debug)]
pub struct Arrived<T> {
    /// Net power, W.
    pub net: T,
    /// The power that the gain multiplies, W.
    pub driving: T,
    /// Gain, nepers of power.
    pub gain: Option<T>,
    /// Phasor of the wave, magnitude 1; 1 where phases were not asked for.
    pub phasor: C<T>,
}

/// A network solved.
#[derive(Clone, Debug)]
pub struct Solved<T> {
    /// Node before the first element, then one for each [`El::Node`], trunk before arms, each arm
    /// to its end before the next.
    pub nodes: Vec<Node<T>>,
    /// Ends in the same order.
    pub ends: Vec<Arrived<T>>,
}

impl<T: Real> Default for Tail<T> {
    fn default() -> Self {
        Tail {
            els: Vec::new(),
            load: C::zero(),
            gain: None,
            realized: false,
            ports: Vec::new(),
            arms: Vec::new(),
            into: Vec::new(),
            after: Vec::new(),
        }
    }
}

impl<T: Real> Tail<T> {
    /// Reflection seen at the beginning: mean and incoherent power.
    pub fn inward(&mut self) -> (C<T>, T) {
        let (mut g, mut v) = (self.load, T::of(0.0));
        if !self.arms.is_empty() {
            let seen: Vec<(C<T>, T)> = self.arms.iter_mut().map(Tail::inward).collect();
            (g, v, self.into) = joined(&self.ports, &seen);
        }
        self.after.clear();
        for e in self.els.iter().rev() {
            self.after.push((g, v));
            (g, v) = e.seen(g, v);
        }
        self.after.reverse();
        (g, v)
    }

    /// Follows a forward wave of power `f` and phasor `a` outwards; after [`Tail::inward`].
    fn outward(&self, mut f: T, mut a: C<T>, phased: bool, out: &mut Solved<T>) {
        let one = T::of(1.0);
        let mut turn = |by: C<T>| {
            if phased {
                let z = a * by;
                a = z.scale(one / z.norm().sqrt());
            }
        };
        for (e, (g, v)) in self.els.iter().zip(&self.after) {
            match *e {
                El::Two { s21, s22, .. } if phased => turn(s21 / (C::one() - s22 * *g)),
                El::Shift { way, .. } => turn(way),
                _ => {}
            }
            f = e.passed(f, *g, *v);
            if let El::Node = e {
                out.nodes.push(Node {
                    forward: f,
                    back: g.norm() + *v,
                });
            }
        }
        if self.arms.is_empty() {
            // the load itself is known but for its phase
            let net = f * (one - self.load.norm());
            out.ends.push(Arrived {
                net,
                driving: if self.realized { f } else { net },
                gain: self.gain,
                phasor: a,
            });
        }
        for (arm, b) in self.arms.iter().zip(&self.into) {
            let mut z = a;
            if phased {
                let w = a * *b;
                z = w.scale(one / w.norm().sqrt());
            }
            arm.outward(f * b.norm(), z, phased, out);
        }
    }

    /// Reflections (mean, incoherent power) at its nodes, in the order of [`Solved::nodes`] but
    /// for the first; after [`Tail::inward`].
    pub(super) fn reflections(&self, out: &mut Vec<(C<T>, T)>) {
        for (e, seen) in self.els.iter().zip(&self.after) {
            if let El::Node = e {
                out.push(*seen);
            }
        }
        self.arms.iter().for_each(|a| a.reflections(out));
    }

    /// Solves the network for 1 W from a matched source.
    pub fn solve(&mut self, phased: bool) -> Solved<T> {
        let (g, v) = self.inward();
        let mut out = Solved {
            nodes: Vec::with_capacity(self.els.len() / 2 + 1),
            ends: Vec::new(),
        };
        out.nodes.push(Node {
            forward: T::of(1.0),
            back: g.norm() + v,
        });
        self.outward(T::of(1.0), C::one(), phased, &mut out);
        out
    }
}

/// Reflection at port 0 of an n-port whose arms reflect as `seen` (mean, incoherent power), and
/// the waves into the arms for a wave of 1 into port 0.
pub fn joined<T: Real>(ports: &[Vec<C<T>>], seen: &[(C<T>, T)]) -> (C<T>, T, Vec<C<T>>) {
    // waves out of the arms' ports for one into port 0, and what a wave out of each arm adds to
    // port 0
    let out = waves(ports, seen, false);
    let back = waves(ports, seen, true);
    let (mut g, mut v) = (ports[0][0], T::of(0.0));
    for (i, (gi, vi)) in seen.iter().enumerate() {
        g = g + ports[0][i + 1] * *gi * out[i];
        v = v + (out[i] * back[i]).norm() * *vi;
    }
    (g, v, out)
}

/// Solves `(I − S_LL Γ) b = S_L0`, or transposed `(I − S_LLᵀ Γ) w = S_0L`, by elimination without
/// pivoting: the diagonal rules wherever the n-port is passive.
fn waves<T: Real>(s: &[Vec<C<T>>], seen: &[(C<T>, T)], transposed: bool) -> Vec<C<T>> {
    let n = seen.len();
    let at = |i: usize, j: usize| if transposed { s[j][i] } else { s[i][j] };
    let mut m: Vec<Vec<C<T>>> = (0..n)
        .map(|i| {
            (0..n)
                .map(|j| {
                    let x = -(at(i + 1, j + 1) * seen[j].0);
                    if i == j { C::one() + x } else { x }
                })
                .chain([at(i + 1, 0)])
                .collect()
        })
        .collect();
    for k in 0..n {
        let (above, below) = m.split_at_mut(k + 1);
        let pivot = &above[k];
        for row in below {
            let q = row[k] / pivot[k];
            for (x, p) in row[k..].iter_mut().zip(&pivot[k..]) {
                *x = *x - q * *p;
            }
        }
    }
    let mut x = vec![C::zero(); n];
    for k in (0..n).rev() {
        let mut r = m[k][n];
        for j in k + 1..n {
            r = r - m[k][j] * x[j];
        }
        x[k] = r / m[k][k];
    }
    x
}
