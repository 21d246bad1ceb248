//! A reflection seen through a part: network by network, in complex numbers.

use downlead_physics::net::complex::C;
use downlead_physics::net::element::El;
use downlead_physics::net::part::Part as Net;
use downlead_physics::net::record::{Rec, Recording, record};
use downlead_physics::net::scalar::Real;
use downlead_physics::net::stated::StatedNode;
use downlead_quantity::number;

use super::Derivation;
use super::cx::Cx;
use super::numbers::{op, share, share_value};
use super::recorded::list;
use crate::element::Element;

/// A part of a complex number: decimals enough for differences of them.
fn part(x: f64) -> String {
    number(x, 10)
}

/// A complex number as an operand.
pub(super) fn complex(z: C<f64>) -> String {
    if z.im == 0.0 && z.re >= 0.0 {
        return part(z.re);
    }
    format!("({})", complex_value(z))
}

/// A complex number as a value.
pub(super) fn complex_value(z: C<f64>) -> String {
    if z.im == 0.0 {
        return part(z.re);
    }
    let sign = if z.im < 0.0 { '-' } else { '+' };
    format!("{} {sign} {} j", part(z.re), part(z.im.abs()))
}

/// The square of a magnitude.
fn square(z: C<f64>) -> String {
    if z.im == 0.0 {
        return format!("{}^2", part(z.re.abs()));
    }
    format!("({}^2 + {}^2)", part(z.re.abs()), part(z.im.abs()))
}

/// A reflected share of a mean reflection coefficient and a share of unknown phase.
pub(super) fn reflected(title: String, g: C<f64>, v: f64) -> Derivation {
    let d = Derivation::of(title, share_value(g.norm() + v));
    match (g.norm() > 0.0, v > 0.0) {
        (true, true) => d.by(
            "|Γ|² + v, Γ: mean reflection coefficient in 50 ohm, v: share of unknown phase",
            format!("{} + {}", square(g), share(v)),
        ),
        (true, false) => d.by("|Γ|², Γ: reflection coefficient in 50 ohm", square(g)),
        (false, true) => d.by("v, the share of unknown phase", share(v)),
        (false, false) => d,
    }
}

/// A part between a reflection after it and its source.
pub(super) struct Through {
    els: Vec<El<f64>>,
    /// Reflection (mean, share of unknown phase) after each network.
    after: Vec<(C<f64>, f64)>,
    /// What the networks are made of.
    made_of: Vec<Derivation>,
}

impl Cx<'_> {
    /// The networks of a part with the reflection after each of them.
    pub(super) fn through(
        &self,
        p: &Net,
        element: Option<&Element<'_>>,
        after: &StatedNode,
    ) -> Through {
        let cx = self.context();
        let (els, steps) = record(|| {
            let mut els: Vec<El<Rec>> = Vec::new();
            p.build(&cx, &Recording, &mut els);
            els.iter().map(|e| e.map(Rec::value)).collect::<Vec<_>>()
        });
        // the matched loss is shown beside
        let (_, elsewhere) = record(|| p.matched_loss(&cx, &Recording).step("matched loss, dB"));
        let mut seen = Vec::with_capacity(els.len());
        let (mut g, mut v) = (after.gamma, after.stray);
        for e in els.iter().rev() {
            seen.push((g, v));
            (g, v) = e.seen(g, v);
        }
        seen.reverse();
        Through {
            els,
            after: seen,
            made_of: list(&steps, &elsewhere, &|k, n| self.origin(k, n, element)),
        }
    }
}

impl Through {
    /// The share that comes back before the part.
    pub(super) fn seen(&self, name: &str) -> Derivation {
        let (g, v) = match (self.els.first(), self.after.first()) {
            (Some(e), Some((g, v))) => e.seen(*g, *v),
            _ => (C::zero(), 0.0),
        };
        let mut d = reflected(format!("reflected share before {name}"), g, v);
        let count = self.els.len();
        for (k, (e, (g, v))) in self.els.iter().zip(&self.after).enumerate().rev() {
            d.steps.extend(before(e, k + 1, count, *g, *v));
        }
        d.with_all(self.made_of.iter().cloned())
    }

    /// The forward power that the part passes on; with what its networks are made of where
    /// nothing else shows that.
    pub(super) fn passed(&self, made_of: bool) -> Derivation {
        let mut total = 1.0;
        let mut factors = Vec::new();
        for (e, (g, v)) in self.els.iter().zip(&self.after) {
            let f = e.passed(1.0, *g, *v);
            total *= f;
            match *e {
                _ if passes_all(e) => {}
                El::Two { s21, s22, .. } => {
                    let d = C::one() - s22 * *g;
                    if d.re == 1.0 && d.im == 0.0 {
                        factors.push(square(s21));
                    } else {
                        factors.push(format!("{} / {}", square(s21), square(d)));
                    }
                }
                El::Node => {}
                _ if f == 1.0 => {}
                _ => factors.push(op(f)),
            }
        }
        let mut d = Derivation::of("forward power passed on", op(total));
        if made_of {
            d.steps.extend(self.made_of.iter().cloned());
        }
        if factors.is_empty() {
            return d;
        }
        d.by(
            "product of |S21|²/|D|² of the networks, and of the power ratio of a matched one",
            factors.join(" × "),
        )
    }
}

/// Whether a network passes everything as it is: a step between equal impedances, say.
fn passes_all(e: &El<f64>) -> bool {
    match *e {
        El::Two { s11, back, s22, .. } => {
            s11.norm() == 0.0 && s22.norm() == 0.0 && back.re == 1.0 && back.im == 0.0
        }
        El::Shift {
            power,
            round,
            coherence,
            ..
        } => power == 1.0 && round.re == 1.0 && round.im == 0.0 && coherence == 1.0,
        El::Tuner { .. } => false,
        El::Node => true,
    }
}

/// What a network makes of the reflection after it.
fn before(e: &El<f64>, k: usize, count: usize, g: C<f64>, v: f64) -> Vec<Derivation> {
    let (g1, v1) = e.seen(g, v);
    if passes_all(e) {
        return Vec::new();
    }
    let name = |what: &str| {
        if count > 1 {
            format!("{what} before network {k} of {count}")
        } else {
            format!("{what} before it")
        }
    };
    let mut out = Vec::new();
    match *e {
        El::Two { s11, back, s22, .. } => {
            let d = C::one() - s22 * g;
            let mut gamma = Derivation::of(name("Γ"), complex_value(g1));
            if g.norm() > 0.0 {
                gamma = gamma
                    .by(
                        "S11 + S12 S21 Γ/D, D = 1 - S22 Γ",
                        format!(
                            "{} + {} × {} / {}",
                            complex(s11),
                            complex(back),
                            complex(g),
                            complex(d)
                        ),
                    )
                    .with(Derivation::of("D", complex_value(d)).by(
                        "1 - S22 Γ",
                        format!("1 - {} × {}", complex(s22), complex(g)),
                    ));
            } else {
                gamma = gamma.by(
                    "S11, nothing of known phase comes from after it",
                    complex(s11),
                );
            }
            out.push(gamma);
            if v > 0.0 {
                let over = if d.re == 1.0 && d.im == 0.0 {
                    String::new()
                } else {
                    format!(" / {}^2", square_in(d))
                };
                out.push(Derivation::of(name("v"), share_value(v1)).by(
                    "v |S12 S21|²/|D|⁴",
                    format!("{} × {}{over}", share(v), square(back)),
                ));
            }
        }
        El::Shift {
            power,
            round,
            coherence,
            ..
        } => {
            if g.norm() > 0.0 && coherence > 0.0 {
                out.push(Derivation::of(name("Γ"), complex_value(g1)).by(
                    "Γ × power ratio × E, E: phasor there and back",
                    format!("{} × {} × {}", complex(g), op(power), complex(round)),
                ));
            }
            let turned = g.norm() * (1.0 - coherence);
            if v > 0.0 || turned > 0.0 {
                let d = Derivation::of(name("v"), share_value(v1));
                out.push(if turned > 0.0 {
                    d.by(
                        "power ratio² × (v + |Γ|²): the phase is not known, so Γ becomes part of v and 0",
                        format!("{}^2 × ({} + {})", op(power), share(v), square(g)),
                    )
                } else {
                    d.by(
                        "power ratio² × v",
                        format!("{}^2 × {}", op(power), share(v)),
                    )
                });
            }
        }
        El::Tuner { .. } => {
            out.push(Derivation::of(name("Γ"), "0").by("a tuner takes up what comes back", ""))
        }
        El::Node => {}
    }
    out
}

/// A sum of squares in parentheses, to be squared once more.
fn square_in(z: C<f64>) -> String {
    let s = square(z);
    if s.starts_with('(') {
        s
    } else {
        format!("({s})")
    }
}
