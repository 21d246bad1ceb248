//! Derivations: each step that prints arithmetic is done again from the printed numbers, and gives
//! the printed value.

mod arithmetic;
mod cases;

use arithmetic::{evaluate, printed};
use downlead_eval::{Derivation, Snapshot};
use downlead_testkit::{Files, example_files, examples, fences, project};

/// Relative difference allowed between a printed value and what its printed operands give.
const RELATIVE: f64 = 1e-4;

/// The row of a budget that stands for causes too small for one of their own.
const REST: &str = "causes below 1 %";

/// Does the arithmetic of a derivation and of its steps; counts what was done.
pub(crate) fn follow(d: &Derivation, at: &str, done: &mut usize, wrong: &mut Vec<String>) {
    let here = format!("{at} > {}", d.title);
    if !d.substituted.is_empty() {
        *done += 1;
        match (evaluate(&d.substituted), printed(&d.value)) {
            (Ok(have), Ok((want, half))) => {
                let near = (have - want).norm() <= (RELATIVE * want.norm()).max(1.000_001 * half);
                if !near {
                    wrong.push(format!(
                        "{here}: {} = {} gives {have}",
                        d.value, d.substituted
                    ));
                }
            }
            (Err(e), _) | (_, Err(e)) => {
                wrong.push(format!("{here}: {} = {}: {e}", d.value, d.substituted));
            }
        }
        if d.formula.is_empty() {
            wrong.push(format!("{here}: numbers without a formula"));
        }
    }
    for rest in d.steps.iter().filter(|s| s.title.starts_with(REST)) {
        let of = |d: &Derivation| printed(&d.value).map_or(f64::NAN, |v| v.0.re);
        if of(rest).is_nan() || of(rest) > 0.03 * of(d) {
            wrong.push(format!(
                "{here}: {} is no small rest of {}",
                rest.value, d.value
            ));
        }
    }
    for word in ["NaN", "inf ", "behind"] {
        for text in [&d.title, &d.value, &d.formula, &d.substituted] {
            if text.contains(word) {
                wrong.push(format!("{here}: `{word}` in `{text}`"));
            }
        }
    }
    for s in &d.steps {
        follow(s, &here, done, wrong);
    }
}

/// Follows every derivation of every line of all files of a snapshot; counts lines and steps.
fn follow_all(s: &Snapshot, name: &str, count: &mut (usize, usize), wrong: &mut Vec<String>) {
    for f in s.files() {
        for line in 1..=u32::try_from(f.text().lines().count()).expect("a small file") {
            let all = s.explain_line(&f.path, line);
            count.0 += usize::from(!all.is_empty());
            for d in &all {
                follow(d, &format!("{name}{}:{line}", f.path), &mut count.1, wrong);
            }
        }
    }
}

fn told(mut wrong: Vec<String>, count: (usize, usize)) {
    let total = wrong.len();
    wrong.truncate(40);
    assert!(
        wrong.is_empty(),
        "{total} of {count:?}:\n{}",
        wrong.join("\n")
    );
}

/// Every derivation of every line of every example, in all its chains and bands.
#[test]
fn each_printed_step_of_every_example_gives_its_value() {
    let (mut count, mut wrong) = ((0, 0), Vec::new());
    for file in example_files() {
        let s = Snapshot::load(std::slice::from_ref(&file), &examples());
        follow_all(&s, "", &mut count, &mut wrong);
    }
    told(wrong, count);
    // so that the test cannot pass by finding nothing
    assert!(count.0 > 300 && count.1 > 8_000, "{count:?}");
}

/// The same of the manual's examples, and of the texts that the pages of the findings show: they
/// hold each kind of part, and what is broken in all ways.
#[test]
fn each_printed_step_of_the_documents_gives_its_value() {
    let manual = std::fs::read_to_string(project("docs/language.md")).expect("the manual");
    let mut pages = vec![("manual".to_owned(), fences(&manual))];
    for c in downlead_base::CODES {
        pages.push((c.id.to_owned(), fences(c.page)));
    }
    let (mut count, mut wrong) = ((0, 0), Vec::new());
    for (page, fences) in &pages {
        let mut files = Files::default();
        for f in fences {
            if let Some(name) = f.info.strip_prefix("downlead ") {
                files = files.with(name, f.text.as_str());
            }
        }
        for f in fences.iter().filter(|f| f.info.starts_with("downlead")) {
            let name = format!("{page} {} ", f.line);
            let s = Snapshot::load(
                &["main.downlead".to_owned()],
                &files.clone().with("main.downlead", f.text.as_str()),
            );
            follow_all(&s, &name, &mut count, &mut wrong);
        }
    }
    told(wrong, count);
    assert!(count.0 > 500 && count.1 > 3_000, "{count:?}");
}
