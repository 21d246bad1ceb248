//! A scalar that remembers how it was made: the derivation of a number is the computation of it.

use core::cell::RefCell;
use core::ops::{Add, Div, Mul, Neg, Sub};

use super::complex::C;
use super::input::{Input, Reader, Spread};
use super::scalar::Real;

/// A number on the tape.
#[derive(Clone, Copy, Debug)]
pub struct Rec {
    v: f64,
    id: u32,
}

#[derive(Clone, Debug)]
enum Made {
    Constant,
    Input { name: &'static str, source: u32 },
    Unary(&'static str, u32),
    Binary(char, u32, u32),
    Step(&'static str, u32),
}

thread_local! {
    static TAPE: RefCell<Vec<(f64, Made)>> = const { RefCell::new(Vec::new()) };
}

impl Rec {
    fn push(v: f64, made: Made) -> Rec {
        TAPE.with_borrow_mut(|t| {
            t.push((v, made));
            Rec {
                v,
                id: u32::try_from(t.len() - 1).unwrap_or(u32::MAX),
            }
        })
    }
    fn unary(self, v: f64, name: &'static str) -> Rec {
        Rec::push(v, Made::Unary(name, self.id))
    }
    fn binary(self, o: Rec, v: f64, op: char) -> Rec {
        Rec::push(v, Made::Binary(op, self.id, o.id))
    }

    /// Its value.
    #[must_use]
    pub fn value(self) -> f64 {
        self.v
    }
}

impl Add for Rec {
    type Output = Rec;
    fn add(self, o: Rec) -> Rec {
        self.binary(o, self.v + o.v, '+')
    }
}

impl Sub for Rec {
    type Output = Rec;
    fn sub(self, o: Rec) -> Rec {
        self.binary(o, self.v - o.v, '-')
    }
}

impl Mul for Rec {
    type Output = Rec;
    fn mul(self, o: Rec) -> Rec {
        self.binary(o, self.v * o.v, '×')
    }
}

impl Div for Rec {
    type Output = Rec;
    fn div(self, o: Rec) -> Rec {
        self.binary(o, self.v / o.v, '/')
    }
}

impl Neg for Rec {
    type Output = Rec;
    fn neg(self) -> Rec {
        self.unary(-self.v, "-")
    }
}

impl Real for Rec {
    fn of(x: f64) -> Rec {
        Rec::push(x, Made::Constant)
    }
    fn at_most(self, x: f64) -> Rec {
        if self.v > x { Rec::of(x) } else { self }
    }
    fn at_least(self, x: f64) -> Rec {
        if self.v < x { Rec::of(x) } else { self }
    }
    fn larger(self, o: Rec) -> Rec {
        if o.v > self.v { o } else { self }
    }
    fn exp_e(self) -> Rec {
        self.unary(libm::exp(self.v), "exp")
    }
    fn ln_e(self) -> Rec {
        self.unary(libm::log(self.v), "ln")
    }
    fn sqrt(self) -> Rec {
        self.unary(libm::sqrt(self.v), "√")
    }
    fn sin_cos(self) -> (Rec, Rec) {
        let (s, c) = libm::sincos(self.v);
        (self.unary(s, "sin"), self.unary(c, "cos"))
    }
    fn step(self, name: &'static str) -> Rec {
        Rec::push(self.v, Made::Step(name, self.id))
    }
}

/// A named step of a derivation.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// What it is.
    pub name: &'static str,
    /// Formula in names.
    pub formula: String,
    /// Formula with the numbers put in, to nine significant digits.
    pub numbers: String,
    /// Its value.
    pub value: f64,
    /// Inputs read: name, value, key of the source.
    pub inputs: Vec<(&'static str, f64, u32)>,
}

/// Reader of nominal values that notes what is read.
#[derive(Clone, Copy, Debug)]
pub struct Recording;

impl Reader for Recording {
    type T = Rec;
    fn get(&self, i: &Input) -> Rec {
        Rec::push(
            i.nominal(),
            Made::Input {
                name: i.name,
                source: i.source,
            },
        )
    }
    fn coherence(&self, _: u32, _: Rec, _: Spread) -> C<Rec> {
        C::one()
    }
    fn half_sine(&self, _: u32) -> Rec {
        Rec::of(0.0)
    }
}

/// Runs `f` on a clean tape and gives the named steps it made, in order. Several steps of one
/// name and value count once.
pub fn record<R>(f: impl FnOnce() -> R) -> (R, Vec<Step>) {
    TAPE.with_borrow_mut(Vec::clear);
    let result = f();
    let steps = TAPE.with_borrow(|t| {
        let mut out: Vec<Step> = Vec::new();
        for (value, made) in t {
            let Made::Step(name, of) = made else { continue };
            let mut inputs = Vec::new();
            let step = Step {
                name,
                formula: show(t, *of, 0, false, &mut inputs),
                numbers: show(t, *of, 0, true, &mut Vec::new()),
                value: *value,
                inputs,
            };
            if !out.contains(&step) {
                out.push(step);
            }
        }
        out
    });
    (result, steps)
}

/// A number to nine significant digits.
#[must_use]
pub fn digits(v: f64) -> String {
    if v == 0.0 || !v.is_finite() {
        return if v == 0.0 {
            "0".to_owned()
        } else {
            v.to_string()
        };
    }
    #[allow(clippy::cast_possible_truncation, reason = "an exponent")]
    let size = libm::floor(libm::log10(v.abs())) as i32;
    if !(-5..=11).contains(&size) {
        return format!("{v:.8e}").replace('e', "×10^");
    }
    let places = usize::try_from(8 - size).unwrap_or(0);
    let s = format!("{v:.places$}");
    if s.contains('.') {
        s.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        s
    }
}

fn show(
    t: &[(f64, Made)],
    id: u32,
    outer: u8,
    numbers: bool,
    inputs: &mut Vec<(&'static str, f64, u32)>,
) -> String {
    let Some((v, made)) = t.get(id as usize) else {
        return String::new();
    };
    match made {
        Made::Constant => digits(*v),
        Made::Input { name, source } => {
            let read = (*name, *v, *source);
            if !inputs.contains(&read) {
                inputs.push(read);
            }
            if numbers {
                digits(*v)
            } else {
                (*name).to_owned()
            }
        }
        Made::Step(name, _) => {
            if numbers {
                digits(*v)
            } else {
                (*name).to_owned()
            }
        }
        Made::Unary(op, a) => format!("{op}({})", show(t, *a, 0, numbers, inputs)),
        Made::Binary(op, a, b) => {
            let level = if matches!(op, '+' | '-') { 1 } else { 2 };
            let s = format!(
                "{} {op} {}",
                show(t, *a, level - 1, numbers, inputs),
                show(t, *b, level, numbers, inputs)
            );
            if level <= outer { format!("({s})") } else { s }
        }
    }
}
