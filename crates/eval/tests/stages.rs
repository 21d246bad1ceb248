//! Two stages of evaluation: what is shown first and completed later ends as what is computed at
//! once, and no verdict turns on the way.

mod common;

use std::cell::Cell;
use std::sync::Arc;

use common::everything;
use downlead_base::Span;
use downlead_eval::result::ItemResult;
use downlead_eval::{Snapshot, Stage};
use downlead_station::{LoadError, Loader};
use downlead_testkit::{Files, example_files, examples, large_file};

const ALL: Span = Span {
    start: 0,
    end: u32::MAX,
};
const ON: &dyn Fn() -> bool = &|| false;

/// The examples with another text in one of them.
struct Changed {
    path: String,
    text: String,
}

impl Loader for Changed {
    fn read(&self, path: &str) -> Result<Arc<str>, LoadError> {
        match path == self.path {
            true => Ok(self.text.as_str().into()),
            false => examples().read(path),
        }
    }
}

/// The verdicts of all limits and readings, in order.
fn verdicts(s: &Snapshot) -> Vec<String> {
    let of = |r: &ItemResult| -> Vec<String> {
        let bands = r.chains.iter().flat_map(|c| &c.bands);
        bands
            .flat_map(|b| {
                let limits = b
                    .limits
                    .iter()
                    .map(|l| format!("{:?}", (l.loc.span, l.verdict)));
                let readings = b.readings.iter();
                let readings = readings.map(|l| format!("{:?}", (l.loc.span, l.verdict)));
                limits.chain(readings).collect::<Vec<_>>()
            })
            .collect()
    };
    let items = s.scopes().iter().flat_map(|s| s.items());
    items.flat_map(|i| of(&i.2)).collect()
}

#[test]
fn an_example_in_two_stages_is_the_example_at_once() {
    let mut provisional = 0;
    let files = examples();
    for name in example_files() {
        let at_once = Snapshot::load(std::slice::from_ref(&name), &files);
        assert!(at_once.is_finished());
        let mut s = Snapshot::load_for_later(std::slice::from_ref(&name), &files);
        let file = s.files().iter().position(|f| f.path == name).expect("it");
        assert!(s.evaluate(file, ALL, Stage::First, ON));
        assert_eq!(verdicts(&s), verdicts(&at_once), "{name}");
        let first = s.is_provisional(file, ALL);
        provisional += usize::from(first);
        assert!(!(first && s.is_finished()), "{name}");
        assert!(s.finish(&files, ON));
        assert!(s.is_finished() && !s.is_provisional(file, ALL));
        assert_eq!(everything(&s), everything(&at_once), "{name}");
    }
    assert!(provisional > 5, "{provisional}");
}

/// Places of digits that an edit may change: every `step`th.
fn digits(text: &str, step: usize) -> Vec<u32> {
    let all = text.bytes().enumerate().filter(|b| b.1.is_ascii_digit());
    all.map(|b| b.0 as u32).step_by(step).collect()
}

#[test]
fn edits_in_two_stages_end_as_a_cold_start() {
    let files = examples();
    for name in example_files() {
        if !name.contains("pellgarrow") {
            continue;
        }
        let mut s = Snapshot::load_for_later(std::slice::from_ref(&name), &files);
        let file = s.files().iter().position(|f| f.path == name).expect("it");
        let text = s.files()[file].text().to_owned();
        for (n, at) in digits(&text, 61).into_iter().enumerate() {
            let digit = (b'1' + (n % 9) as u8) as char;
            let here = Span::new(at, at + 1);
            s.edit_for_later(file, &[(here, &digit.to_string())], &files);
            // what is looked at differs: here, everything, nothing; a newer edit comes before the rest
            match n % 3 {
                0 => assert!(s.evaluate(file, here, Stage::First, ON)),
                1 => assert!(s.evaluate(file, ALL, Stage::First, ON)),
                _ => {}
            }
            if n % 4 != 3 {
                continue;
            }
            assert!(s.evaluate(file, ALL, Stage::First, ON));
            let before = verdicts(&s);
            assert!(s.finish(&files, ON));
            let now = Changed {
                path: name.clone(),
                text: s.files()[file].text().to_owned(),
            };
            let cold = Snapshot::load(std::slice::from_ref(&name), &now);
            assert_eq!(before, verdicts(&s), "{name}, edit {n}");
            assert_eq!(everything(&s), everything(&cold), "{name}, edit {n}");
        }
    }
}

#[test]
fn what_is_looked_at_is_computed_first_and_the_rest_waits() {
    let text = large_file(1_000);
    let files = Files::default().with("main.downlead", text.as_str());
    let mut s = Snapshot::load_for_later(&["main.downlead".to_owned()], &files);
    let at = text.find("station hill-2 ").expect("a station") as u32;
    let here = Span::new(at, at + 40);
    let computed = |s: &Snapshot| {
        let items = s.scopes()[0].items().iter();
        items.filter(|i| !i.2.chains.is_empty()).count()
    };
    assert_eq!(computed(&s), 0);
    assert!(s.evaluate(0, here, Stage::First, ON));
    assert!((1..=2).contains(&computed(&s)), "{}", computed(&s));
    assert!(s.is_provisional(0, here) && !s.is_finished());
    assert!(s.evaluate(0, here, Stage::Whole, ON));
    assert!(!s.is_provisional(0, here) && !s.is_finished());
    // stopped at a question: what is computed until then is kept
    let questions = Cell::new(0);
    let stop = || questions.replace(questions.get() + 1) >= 5;
    assert!(!s.finish(&files, &stop));
    assert!(computed(&s) >= 1 && !s.is_finished());
    assert!(s.finish(&files, ON));
    let at_once = Snapshot::load(&["main.downlead".to_owned()], &files);
    assert_eq!(everything(&s), everything(&at_once));
}

#[test]
fn an_edit_drops_the_sample_that_waits() {
    let text = large_file(200);
    let files = Files::default().with("main.downlead", text.as_str());
    let mut s = Snapshot::load(&["main.downlead".to_owned()], &files);
    let length = text.find("run M1 ").expect("a run") as u32 + 7;
    let here = Span::new(length, length + 1);
    s.edit_for_later(0, &[(here, "7")], &files);
    assert!(s.evaluate(0, here, Stage::First, ON));
    assert!(s.is_provisional(0, here));
    // the second edit is evaluated again; nothing of the first is left to do
    s.edit_for_later(0, &[(here, "8")], &files);
    assert!(!s.is_provisional(0, here), "no result of this text yet");
    let questions = Cell::new(0);
    let count = || {
        questions.set(questions.get() + 1);
        false
    };
    assert!(s.finish(&files, &count));
    assert_eq!(questions.get(), 1, "one station, once");
    let mut other = Snapshot::load(&["main.downlead".to_owned()], &files);
    other.edit(0, here, "8", &files);
    assert_eq!(everything(&s), everything(&other));
}
