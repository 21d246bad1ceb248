//! Readings beside what was recorded follow every edit: a snapshot that was edited says what a
//! fresh one says. What a real repository gives is tested where `git` is asked.

use std::sync::Arc;

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_eval::history::{Recorded, Recording};
use downlead_testkit::{Files, Rng, change};

const MAIN: &str = "main.downlead";
const TEXT: &str = "instrument W3 \"meter\" { accuracy 5 % of reading }\n\nsession reel {\n    read 2026-07-19 with W3 by x\n    piece A 22.60 m of rg-213\n    piece 2B 11.4 m of rg-58\n    readings on 145.3 MHz {\n        baseline 44.0 W at 0 min\n        through A 28.9 W, 0.05 W reflected at 2 min\n        through 2B 31.4 W at 3 min\n        through 2B 31.3 W at 3 min\n        baseline 43.7 W at 4 min\n    }\n    readings from \"july.csv\"\n    resonance A 4.378 MHz ± 0.01 MHz\n}\n\nstation hill {\n    transmitter TX1 32 W carrier, read 2026-07-04 with W3\n    isolator IS1 0.5 dB ± 0.1 dB, read 2026-07-04 with W3 by x\n    run M1 28 m of half-inch-foam\n    antenna A1 4.5 dBi\n    chain out on 145.3 MHz {\n        TX1\n        IS1\n        read 28.4 W forward, 2026-07-04 with W3 by x\n        read 0.3 W reflected, 2026-07-04 with W3 by x\n        M1\n        A1\n    }\n}\n";
const JULY: &str = "frequency_mhz,piece,time_min,forward_w\n434.5,baseline,6,29.7\n434.5,A,8,13.9\n434.5,baseline,10,29.5\n";

fn recorded(path: &str, text: &str) -> Arc<Recorded> {
    let when = Recording {
        revision: "3f2a9c1".into(),
        date: "2026-07-19".into(),
        seconds: 1_784_480_400,
        author: "x".into(),
    };
    Arc::new(Recorded::of(path, [(when, text)]))
}

fn with_history(s: &mut Snapshot) {
    s.set_recorded(MAIN, recorded(MAIN, TEXT));
    s.set_recorded("july.csv", recorded("july.csv", JULY));
}

fn found(s: &Snapshot) -> Vec<String> {
    let places = downlead_eval::Places::new(s);
    s.diagnostics()
        .iter()
        .filter(|d| d.code.id == "reading-edited")
        .map(|d| format!("{}: {}", places.line(d.primary.loc), d.message))
        .collect()
}

#[test]
fn every_kind_of_reading_is_evidence() {
    let edits = [
        ("44.0 W", "44.4 W", 8),
        ("28.9 W,", "28.7 W,", 9),
        ("0.05 W", "0.06 W", 9),
        ("31.3 W", "31.2 W", 11),
        ("4.378 MHz", "4.387 MHz", 15),
        ("± 0.01", "± 0.02", 15),
        ("32 W", "35 W", 19),
        ("0.5 dB", "0.4 dB", 20),
        ("28.4 W", "24.8 W", 26),
        ("0.3 W", "0.2 W", 27),
    ];
    for (old, new, line) in edits {
        let text = TEXT.replacen(old, new, 1);
        assert_ne!(text, TEXT, "{old}");
        let files = Files::default().with(MAIN, &text).with("july.csv", JULY);
        let mut s = Snapshot::load(&[MAIN.to_owned()], &files);
        assert_eq!(found(&s), [""; 0]);
        with_history(&mut s);
        let all = found(&s);
        assert!(
            all.len() == 1 && all[0].starts_with(&format!("{line}: ")),
            "{old}: {all:#?}"
        );
    }
    let files = Files::default()
        .with(MAIN, TEXT)
        .with("july.csv", JULY.replace("13.9", "19.3"));
    let mut s = Snapshot::load(&[MAIN.to_owned()], &files);
    with_history(&mut s);
    assert_eq!(
        found(&s),
        [
            "14: The reading in line 3 was 13.9 W when x recorded it on 2026-07-19 (3f2a9c1); now it is 19.3 W."
        ]
    );
}

#[test]
fn an_edited_snapshot_says_what_a_fresh_one_says() {
    let mut r = Rng::new(20_261_125);
    let mut told = 0;
    for _ in 0..40 {
        let files = Files::default().with(MAIN, TEXT).with("july.csv", JULY);
        let mut s = Snapshot::load(&[MAIN.to_owned()], &files);
        with_history(&mut s);
        let mut text = TEXT.to_owned();
        for _ in 0..12 {
            let c = change(&mut r, &text);
            text = c.apply(&text);
            s.edit(0, Span::new(c.start as u32, c.end as u32), &c.text, &files);
            let now = Files::default().with(MAIN, &text).with("july.csv", JULY);
            let mut fresh = Snapshot::load(&[MAIN.to_owned()], &now);
            with_history(&mut fresh);
            assert_eq!(found(&s), found(&fresh), "{text}");
            told += found(&s).len();
        }
    }
    assert!(told > 50, "hardly a reading was touched: {told}");
}

/// The demo station through its true revisions: nothing in them is a slip.
#[test]
fn the_revisions_of_the_demo_are_quiet() {
    use downlead_eval::history::{Recorded, Recording};
    let texts: Vec<String> = (1..=4)
        .map(|n| {
            let path = format!("examples/pellgarrow/rev{n}.downlead");
            std::fs::read_to_string(downlead_testkit::project(&path)).expect("a revision")
        })
        .collect();
    for n in 1..4 {
        let before = texts[..n].iter().enumerate().map(|(i, t)| {
            let when = Recording {
                revision: format!("r{i}").into(),
                date: format!("202{i}-07-04").into(),
                seconds: 31_536_000 * i as i64,
                author: "QY2TEC".into(),
            };
            (when, t.as_str())
        });
        let recorded = Recorded::of("main.downlead", before);
        let files = downlead_testkit::Files::default().with("main.downlead", texts[n].as_str());
        let mut s = downlead_eval::Snapshot::load(&["main.downlead".to_owned()], &files);
        s.set_recorded("main.downlead", std::sync::Arc::new(recorded));
        let found: Vec<String> = s
            .diagnostics()
            .into_iter()
            .filter(|d| d.code.id.ends_with("mistyped"))
            .map(|d| d.message)
            .collect();
        assert_eq!(found, [""; 0], "revision {}", n + 1);
    }
}
