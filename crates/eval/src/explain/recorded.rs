//! From the steps of the recording scalar to derivations.

use downlead_physics::net::record::{Read, Step, name_and_unit};

use super::Derivation;
use super::numbers::value;
use super::origin::Origin;

/// What an input is a figure of, by its key and name.
type Sources<'s> = &'s dyn Fn(u32, &'static str) -> Origin;

/// The last of the steps with the steps it is made of below it, each once.
pub(super) fn tree(steps: &[Step], origin: Sources<'_>) -> Option<Derivation> {
    let mut shown = Shown {
        steps: vec![false; steps.len()],
        inputs: Vec::new(),
    };
    Some(one(steps, steps.len().checked_sub(1)?, origin, &mut shown))
}

/// The steps in the order they were made, but for those of `elsewhere` and those that only give
/// another name.
pub(super) fn list(steps: &[Step], elsewhere: &[Step], origin: Sources<'_>) -> Vec<Derivation> {
    let mut read: Vec<Read> = elsewhere.iter().flat_map(|s| s.inputs.clone()).collect();
    let mut out = Vec::new();
    for s in steps {
        let known = |e: &Step| e.name == s.name && e.value.to_bits() == s.value.to_bits();
        let alias = s.inputs.len() + s.steps.len() == 1
            && (s
                .inputs
                .iter()
                .any(|i| name_and_unit(i.name).0 == s.formula)
                || s.steps
                    .iter()
                    .any(|k| name_and_unit(steps[*k].name).0 == s.formula));
        if alias || elsewhere.iter().any(known) {
            continue;
        }
        let mut step = bare(s);
        for i in &s.inputs {
            if !read.contains(i) {
                read.push(*i);
                step.steps.push(input(i, origin));
            }
        }
        out.push(step);
    }
    out
}

fn bare(s: &Step) -> Derivation {
    let (name, unit) = name_and_unit(s.name);
    // sine and cosine of whole turns are 0 but for the rounding of the angle
    let v = if unit.is_empty() && s.value.abs() < 1e-9 {
        0.0
    } else {
        s.value
    };
    Derivation::of(name, value(v, unit)).by(s.formula.clone(), s.numbers.clone())
}

fn input(i: &Read, origin: Sources<'_>) -> Derivation {
    let (name, unit) = name_and_unit(i.name);
    let from = origin(i.source, i.name);
    let mut d = Derivation::leaf(name, value(i.value, unit), from.words, from.place);
    if let Some((formula, numbers)) = from.by {
        d = d.by(formula, numbers);
    }
    d.with_all(from.steps)
}

/// What a tree has shown already.
struct Shown {
    steps: Vec<bool>,
    inputs: Vec<Read>,
}

fn one(steps: &[Step], at: usize, origin: Sources<'_>, shown: &mut Shown) -> Derivation {
    let s = &steps[at];
    shown.steps[at] = true;
    let (name, _) = name_and_unit(s.name);
    // a step that only gives another name
    if let ([only], []) = (&s.steps[..], &s.inputs[..])
        && s.formula == name_and_unit(steps[*only].name).0
    {
        let mut d = one(steps, *only, origin, shown);
        name.clone_into(&mut d.title);
        return d;
    }
    if let ([], [only]) = (&s.steps[..], &s.inputs[..])
        && s.formula == name_and_unit(only.name).0
    {
        let mut d = input(only, origin);
        name.clone_into(&mut d.title);
        return d;
    }
    let mut d = bare(s);
    for k in &s.steps {
        if !shown.steps[*k] {
            d.steps.push(one(steps, *k, origin, shown));
        }
    }
    for i in &s.inputs {
        if !shown.inputs.contains(i) {
            shown.inputs.push(*i);
            d.steps.push(input(i, origin));
        }
    }
    d
}
