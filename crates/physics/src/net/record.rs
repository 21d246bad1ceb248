//! A scalar that remembers how it was made: the derivation of a number is the computation of it.

use core::cell::RefCell;
use core::ops::{Add, Div, Mul, Neg, Sub};

use super::complex::C;
use super::element::NEPER_OF_POWER;
use super::input::{Input, Reader, Spread, mean_leaning};
use super::scalar::Real;

/// Significant digits of a computed number in a formula.
pub const DIGITS: usize = 7;

/// Significant digits of a constant or a stated number: it is shown as it is.
const EXACT: usize = 10;

/// A number on the tape.
#[derive(Clone, Copy, Debug)]
pub struct Rec {
    v: f64,
    id: u32,
    /// A plain constant: what is done to constants alone is no step of a derivation.
    constant: bool,
}

#[derive(Clone, Debug)]
enum Made {
    Constant,
    Named(&'static str),
    Input { name: &'static str, source: u32 },
    Unary(Op, u32),
    Binary(char, u32, u32),
    Step(&'static str, u32),
}

#[derive(Clone, Copy, Debug)]
enum Op {
    Neg,
    Of(&'static str),
    /// `10^(−x/10)`.
    Ratio,
    /// `−10 log10 x`.
    Loss,
}

thread_local! {
    static TAPE: RefCell<Vec<(f64, Made)>> = const { RefCell::new(Vec::new()) };
}

impl Rec {
    fn push(v: f64, made: Made) -> Rec {
        let constant = matches!(made, Made::Constant);
        TAPE.with_borrow_mut(|t| {
            t.push((v, made));
            Rec {
                v,
                id: u32::try_from(t.len() - 1).unwrap_or(u32::MAX),
                constant,
            }
        })
    }
    fn unary(self, v: f64, op: Op) -> Rec {
        if self.constant {
            return Rec::of(v);
        }
        Rec::push(v, Made::Unary(op, self.id))
    }
    fn binary(self, o: Rec, v: f64, op: char) -> Rec {
        if self.constant && o.constant {
            return Rec::of(v);
        }
        Rec::push(v, Made::Binary(op, self.id, o.id))
    }
    /// True if it is this constant, which has no effect and so is not shown.
    fn is(self, x: f64) -> bool {
        self.constant && self.v == x
    }

    /// Its value.
    #[must_use]
    pub fn value(self) -> f64 {
        self.v
    }

    /// A number of another derivation, by its name.
    #[must_use]
    pub fn given(name: &'static str, v: f64) -> Rec {
        if v == 0.0 {
            return Rec::of(0.0);
        }
        Rec::push(v, Made::Named(name))
    }
}

impl Add for Rec {
    type Output = Rec;
    fn add(self, o: Rec) -> Rec {
        if self.is(0.0) {
            return o;
        }
        if o.is(0.0) {
            return self;
        }
        self.binary(o, self.v + o.v, '+')
    }
}

impl Sub for Rec {
    type Output = Rec;
    fn sub(self, o: Rec) -> Rec {
        if o.is(0.0) {
            return self;
        }
        if self.is(0.0) {
            return -o;
        }
        self.binary(o, self.v - o.v, '-')
    }
}

impl Mul for Rec {
    type Output = Rec;
    fn mul(self, o: Rec) -> Rec {
        if self.is(0.0) || o.is(1.0) {
            return self;
        }
        if o.is(0.0) || self.is(1.0) {
            return o;
        }
        self.binary(o, self.v * o.v, '×')
    }
}

impl Div for Rec {
    type Output = Rec;
    fn div(self, o: Rec) -> Rec {
        if self.is(0.0) || o.is(1.0) {
            return self;
        }
        self.binary(o, self.v / o.v, '/')
    }
}

impl Neg for Rec {
    type Output = Rec;
    fn neg(self) -> Rec {
        self.unary(-self.v, Op::Neg)
    }
}

impl Real for Rec {
    fn of(x: f64) -> Rec {
        Rec::push(x, Made::Constant)
    }
    fn named(name: &'static str, x: f64) -> Rec {
        Rec::push(x, Made::Named(name))
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
        self.unary(libm::exp(self.v), Op::Of("exp"))
    }
    fn ln_e(self) -> Rec {
        self.unary(libm::log(self.v), Op::Of("ln"))
    }
    fn sqrt(self) -> Rec {
        self.unary(libm::sqrt(self.v), Op::Of("√"))
    }
    fn sin_cos(self) -> (Rec, Rec) {
        let (s, c) = libm::sincos(self.v);
        (self.unary(s, Op::Of("sin")), self.unary(c, Op::Of("cos")))
    }
    fn ratio_of_loss(self) -> Rec {
        self.unary(libm::exp(-self.v * NEPER_OF_POWER), Op::Ratio)
    }
    fn loss_of_ratio(self) -> Rec {
        self.unary(libm::log(self.v) * (-1.0 / NEPER_OF_POWER), Op::Loss)
    }
    fn step(self, name: &'static str) -> Rec {
        if self.constant {
            return self;
        }
        Rec::push(self.v, Made::Step(name, self.id))
    }
}

/// A named step of a derivation.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// Its name, with its unit after a comma.
    pub name: &'static str,
    /// Formula in names.
    pub formula: String,
    /// Formula with the numbers put in.
    pub numbers: String,
    /// Its value.
    pub value: f64,
    /// Inputs read.
    pub inputs: Vec<Read>,
    /// Steps named in the formula, as indices of the list.
    pub steps: Vec<usize>,
}

/// An input of a step.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Read {
    /// Its name, with its unit after a comma.
    pub name: &'static str,
    /// Its stated value.
    pub value: f64,
    /// Key of its source, `u32::MAX` for none.
    pub source: u32,
}

/// Reader of nominal values that notes what is read. Phases that are free have the mean phasor 0.
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
    fn coherence(&self, _: u32, _: Rec, spread: Spread) -> C<Rec> {
        match spread {
            Spread::Known => C::one(),
            Spread::Free => C::zero(),
        }
    }
    fn half_sine(&self, _: u32) -> Rec {
        Rec::of(0.0)
    }
    fn leaning(&self, _: u32, most: Rec) -> C<Rec> {
        mean_leaning(most)
    }
}

/// Runs `f` on a clean tape and gives the named steps it made, in order. Several steps of one
/// name and value count once.
pub fn record<R>(f: impl FnOnce() -> R) -> (R, Vec<Step>) {
    TAPE.with_borrow_mut(Vec::clear);
    let result = f();
    let steps = TAPE.with_borrow(|t| {
        let mut out: Vec<Step> = Vec::new();
        // index of the step that each number on the tape is
        let mut at: Vec<usize> = vec![usize::MAX; t.len()];
        for (id, (value, made)) in t.iter().enumerate() {
            let Made::Step(name, of) = made else { continue };
            let mut seen = Seen::default();
            let formula = show(t, *of, 0, false, &mut seen);
            let numbers = show(t, *of, 0, true, &mut Seen::default());
            let mut steps: Vec<usize> = Vec::new();
            for s in seen.steps {
                if let Some(k) = at.get(s as usize)
                    && !steps.contains(k)
                {
                    steps.push(*k);
                }
            }
            let step = Step {
                name,
                formula,
                numbers,
                value: *value,
                inputs: seen.inputs,
                steps,
            };
            at[id] = match out.iter().position(|s| *s == step) {
                Some(k) => k,
                None => {
                    out.push(step);
                    out.len() - 1
                }
            };
        }
        out
    });
    (result, steps)
}

/// A number to so many significant digits, without zeros at the end.
#[must_use]
pub fn digits(v: f64, significant: usize) -> String {
    if v == 0.0 {
        return "0".to_owned();
    }
    if !v.is_finite() {
        return v.to_string();
    }
    #[allow(clippy::cast_possible_truncation, reason = "an exponent")]
    let size = libm::floor(libm::log10(v.abs())) as i64;
    let more = significant.saturating_sub(1);
    let cut = |s: String| {
        if s.contains('.') {
            s.trim_end_matches('0').trim_end_matches('.').to_owned()
        } else {
            s
        }
    };
    if !(-5..12).contains(&size) {
        let s = format!("{v:.more$e}");
        let (m, e) = s.split_once('e').unwrap_or((&s, "0"));
        return format!("{}×10^{e}", cut(m.to_owned()));
    }
    let places = i64::try_from(more).unwrap_or(0) - size;
    cut(format!("{v:.*}", usize::try_from(places).unwrap_or(0)))
}

/// The same as an operand: anything but a plain positive number is put in parentheses.
#[must_use]
pub fn operand(v: f64, significant: usize) -> String {
    let s = digits(v, significant);
    if s.starts_with('-') || s.contains('^') {
        format!("({s})")
    } else {
        s
    }
}

/// Units that may follow the name of a step or input.
const UNITS: [&str; 14] = [
    "dB",
    "dB/m",
    "dB/m/√MHz",
    "dB/m/MHz",
    "dB/√GHz",
    "dBi",
    "dBW",
    "m",
    "ohm",
    "ohm m",
    "°C",
    "rad",
    "rad/m",
    "MHz",
];

/// The name of a step or input without its unit, and the unit.
#[must_use]
pub fn name_and_unit(name: &'static str) -> (&'static str, &'static str) {
    match name.rsplit_once(", ") {
        Some((n, u)) if UNITS.contains(&u) => (n, u),
        _ => (name, ""),
    }
}

#[derive(Default)]
struct Seen {
    inputs: Vec<Read>,
    steps: Vec<u32>,
}

fn show(t: &[(f64, Made)], id: u32, outer: u8, numbers: bool, seen: &mut Seen) -> String {
    let Some((v, made)) = t.get(id as usize) else {
        return String::new();
    };
    // a leading minus or a power of ten is put in parentheses after another operation
    let number = |significant: usize| {
        if outer == 0 {
            digits(*v, significant)
        } else {
            operand(*v, significant)
        }
    };
    let or_name = |name: &'static str, significant: usize| {
        if numbers {
            number(significant)
        } else {
            name_and_unit(name).0.to_owned()
        }
    };
    match made {
        Made::Constant => number(EXACT),
        Made::Named(name) => or_name(name, EXACT),
        Made::Input { name, source } => {
            let read = Read {
                name,
                value: *v,
                source: *source,
            };
            if !seen.inputs.contains(&read) {
                seen.inputs.push(read);
            }
            or_name(name, EXACT)
        }
        Made::Step(name, _) => {
            seen.steps.push(id);
            // an angle of many turns: what counts is what is left of the last one
            let angle = name_and_unit(name).1 == "rad";
            or_name(name, if angle { EXACT } else { DIGITS })
        }
        Made::Unary(op, a) => {
            // `10 log10 x`, not the negative of a loss
            let ratio = match (op, t.get(*a as usize)) {
                (Op::Neg, Some((_, Made::Unary(Op::Loss, x)))) => Some(*x),
                _ => None,
            };
            if let Some(x) = ratio {
                let s = format!("10 log10({})", show(t, x, 0, numbers, seen));
                return if outer >= 2 { format!("({s})") } else { s };
            }
            let (s, level) = match op {
                Op::Of(f) => (format!("{f}({})", show(t, *a, 0, numbers, seen)), 9),
                Op::Neg => (format!("-{}", show(t, *a, 3, numbers, seen)), 0),
                Op::Ratio => (format!("10^(-{}/10)", show(t, *a, 3, numbers, seen)), 2),
                Op::Loss => (format!("-10 log10({})", show(t, *a, 0, numbers, seen)), 0),
            };
            if level <= outer && outer > 0 {
                format!("({s})")
            } else {
                s
            }
        }
        Made::Binary(op, a, b) => {
            let level = if matches!(op, '+' | '-') { 1 } else { 2 };
            // `a × (b × c)` is `a × b × c`
            let product =
                |id: u32| matches!(t.get(id as usize), Some((_, Made::Binary('×' | '/', ..))));
            let right = if *op == '×' && product(*b) { 1 } else { level };
            let s = format!(
                "{} {op} {}",
                show(t, *a, level - 1, numbers, seen),
                show(t, *b, right, numbers, seen)
            );
            if level <= outer { format!("({s})") } else { s }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn only(f: impl FnOnce() -> Rec) -> Step {
        let (_, steps) = record(|| f().step("x, dB"));
        steps.into_iter().last().expect("a step")
    }

    #[test]
    fn operations_bind_as_they_are_written() {
        let n = |v: f64| Rec::given("n", v);
        let shown = |f: &dyn Fn() -> Rec| only(f).numbers;
        assert_eq!(shown(&|| n(2.0) - (n(3.0) - n(4.0))), "2 - (3 - 4)");
        assert_eq!(shown(&|| n(2.0) - n(3.0) - n(4.0)), "2 - 3 - 4");
        assert_eq!(shown(&|| n(2.0) / (n(3.0) * n(4.0))), "2 / (3 × 4)");
        assert_eq!(shown(&|| n(2.0) * (n(3.0) / n(-4.0))), "2 × 3 / (-4)");
        assert_eq!(shown(&|| n(2.0) * -n(3.0)), "2 × (-3)");
        assert_eq!(shown(&|| n(-2.0) * n(-3.0)), "(-2) × (-3)");
        assert_eq!(shown(&|| n(1e-9) * n(2.0)), "(1×10^-9) × 2");
        assert_eq!(
            shown(&|| n(2.0) - (n(3.0) + n(4.0)).ratio_of_loss()),
            "2 - 10^(-(3 + 4)/10)"
        );
        assert_eq!(
            shown(&|| n(2.0) / n(3.0).loss_of_ratio()),
            "2 / (-10 log10(3))"
        );
        assert_eq!(shown(&|| (n(2.0) + n(7.0)).sqrt() * n(3.0)), "√(2 + 7) × 3");
        assert_eq!(
            shown(&|| -n(2.0).loss_of_ratio() + n(3.0)),
            "10 log10(2) + 3"
        );
    }

    #[test]
    fn what_changes_nothing_is_not_shown() {
        let s = only(|| {
            Rec::given("a", 3.0) * Rec::of(1.0) + Rec::of(0.0) * Rec::given("b", 5.0)
                - (Rec::of(2.0) - Rec::of(2.0))
        });
        assert_eq!((s.formula.as_str(), s.value), ("a", 3.0));
    }

    #[test]
    fn steps_know_the_steps_and_inputs_they_name() {
        let length = Input::exact("length, m", 30.0).from_source(7);
        let (_, steps) = record(|| {
            let r = Recording;
            let rate = (Rec::given("a", 0.1) + Rec::given("b", 0.2)).step("rate, dB/m");
            (rate * r.get(&length)).step("loss, dB")
        });
        assert_eq!(steps.len(), 2);
        assert_eq!(steps[1].formula, "rate × length");
        assert_eq!(steps[1].numbers, "0.3 × 30");
        assert_eq!(steps[1].steps, [0]);
        assert_eq!(
            steps[1].inputs,
            [Read {
                name: "length, m",
                value: 30.0,
                source: 7
            }]
        );
    }

    #[test]
    fn digits_are_significant_ones() {
        assert_eq!(digits(0.691_234_567, 7), "0.6912346");
        assert_eq!(digits(299_792_458.0, 10), "299792458");
        assert_eq!(digits(1234.5, 7), "1234.5");
        assert_eq!(digits(2.5e-7, 7), "2.5×10^-7");
        assert_eq!(digits(-0.0, 7), "0");
        assert_eq!(operand(-2.5e-7, 7), "(-2.5×10^-7)");
    }
}
