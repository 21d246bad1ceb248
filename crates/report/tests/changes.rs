//! Comparisons of random stations: with themselves, and there and back.

use downlead_eval::Snapshot;
use downlead_report::build::compare::compare;
use downlead_report::build::diff::{FileChange, diff};
use downlead_report::page::diff::{Said, page};
use downlead_report::shape::compare::Comparison;
use downlead_testkit::{Files, Plan, Rng, mutate, plan};

fn load(text: &str) -> Snapshot {
    let files = Files::default().with("a.downlead", text);
    Snapshot::load(&["a.downlead".to_owned()], &files)
}

fn between(old: &str, new: &str) -> Comparison {
    let (a, b) = (load(old), load(new));
    compare((&a, 0), (&b, 0))
}

/// Lists in one order; lines stand for one state only.
fn sorted(mut c: Comparison) -> Comparison {
    for s in &mut c.stations {
        s.line = 0;
    }
    c.stations.sort_by(|a, b| a.name.cmp(&b.name));
    c.definitions.sort_by(|a, b| a.name.cmp(&b.name));
    c.findings
        .sort_by(|a, b| (a.code, &a.message, a.new).cmp(&(b.code, &b.message, b.new)));
    c.chains.sort_by(|a, b| a.name.cmp(&b.name));
    for x in &mut c.chains {
        x.bands.sort_by(|a, b| a.band.cmp(&b.band));
        for b in &mut x.bands {
            b.parts.sort_by(|a, b| a.name.cmp(&b.name));
            b.renamed.sort();
            // equal but for the order in which squares are added
            for s in [
                &mut b.moved.radiated,
                &mut b.moved.delivered,
                &mut b.moved.loss,
            ]
            .into_iter()
            .flatten()
            {
                let round = |x: f64| (x * 1e9).round() / 1e9 + 0.0;
                s.db = round(s.db);
                s.uncertainty_db = round(s.uncertainty_db);
                s.interval_db = s.interval_db.map(round);
            }
        }
    }
    c
}

fn other(seed: u64, old: &Plan) -> String {
    let mut new = old.clone();
    let mut r = Rng::new(seed);
    let c = &mut new.chains[0];
    match r.below(4) {
        0 => c.antenna.dbi += 1.5,
        1 => c.transmitter = "7 W ± 5 % carrier, fm".to_owned(),
        2 => {
            c.parts.remove(r.below(c.parts.len()));
        }
        _ => {
            new.cables[0].k1 *= 1.3;
            new.chains.truncate(1);
        }
    }
    new.text()
}

#[test]
fn a_state_beside_itself_says_nothing() {
    for seed in 0..30 {
        let text = plan(seed).text();
        // not to the letter: the texts are compared in full
        let c = between(&text, &format!("// again\n{text}"));
        let d = diff(
            "a",
            "b",
            &[FileChange {
                path: "a.downlead".to_owned(),
                comparison: c,
            }],
        );
        assert!(
            !d.speaks && !d.worse && d.stations.is_empty(),
            "{seed}: {d:?}"
        );
        assert!(page(&d, Said::Speaking).blocks.is_empty(), "{seed}");
        assert!(page(&d, Said::OnlySpeaking).blocks.is_empty(), "{seed}");
    }
}

#[test]
fn there_and_back_is_the_same() {
    let mut moved = 0;
    for seed in 0..40 {
        let first = plan(seed);
        let (a, b) = (first.text(), other(seed, &first));
        let (there, back) = (between(&a, &b), between(&b, &a));
        moved += usize::from(
            there
                .chains
                .iter()
                .flat_map(|c| &c.bands)
                .any(|b| !b.parts.is_empty()),
        );
        assert_eq!(sorted(there), sorted(back.reversed()), "{seed}");
    }
    assert!(moved > 25, "{moved}");
}

#[test]
fn broken_texts_are_compared_as_far_as_they_go() {
    let mut rng = Rng::new(23);
    let text = plan(3).text();
    for _ in 0..40 {
        let broken = mutate(&mut rng, &text, 6);
        for (a, b) in [(&text, &broken), (&broken, &text)] {
            let change = FileChange {
                path: "a.downlead".to_owned(),
                comparison: between(a, b),
            };
            let d = diff("a", "b", &[change]);
            let _ = page(&d, Said::All);
        }
    }
}
