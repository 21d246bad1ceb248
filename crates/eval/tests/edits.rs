//! A snapshot that was edited says what a snapshot loaded from the new texts says: report and all
//! findings with their places. Broken texts end in findings, never in a panic.

mod common;

use downlead_report::Reports as _;
use std::sync::Arc;

use common::{MAIN, everything, load, load_from};
use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_station::Loader;
use downlead_testkit::{Change, Files, Folder, Rng, change, example_files, examples, mutate, plan};
use proptest::prelude::*;
use proptest::test_runner::{Config, RngSeed};

fn config(cases: u32) -> Config {
    Config {
        cases,
        rng_seed: RngSeed::Fixed(20_260_704),
        failure_persistence: None,
        max_shrink_iters: 200,
        ..Config::default()
    }
}

/// A project of several files that uses names across them.
fn project_files() -> Files {
    Files::new(
        r#"use "parts/cables.downlead"
use "parts/bands.downlead"
let tower = 30 m ± 0.2 m
let spare = tower / 10

instrument W1 { accuracy 5 % of reading; scale 100 W }
instrument W2 { accuracy 4 % of reading }
device club-isolator { kind isolator; loss 0.5 dB ± 0.1 dB on 2m; loss 0.8 dB on 70cm }

station hill "Hill" {
    place mast { temperature 5 °C to 25 °C }
    joins club-n
    transmitter TX1 { power 32 W carrier on 2m, read 2026-07-04 with W1; power 16 W carrier on 70cm; mode fm; keyed 50 % }
    isolator IS1 of club-isolator
    run M1 tower + 2 * spare of foam, mast, since 2026-06
    antenna A1 { gain 5.2 dBi ± 0.5 dB on 2m; gain 7.6 dBi on 70cm; swr 1.3 }
    receiver RX1 -119 dBm for 12 dB sinad, noise figure 6 dB
    chain out on 2m, 70cm {
        TX1
        IS1
        read 28.4 W forward, 2026-07-04 with W1
        M1
        readings from "parts/site.csv"
        A1
        limit 30 W erp on 2m, "invented"
    }
    chain in on 2m receive { A1; M1; RX1 }
}

chain what-if on 2m {
    transmitter 50 W
    run spare of thin
    connector 2 of n-pair
    antenna 4.5 dBi
}

session reel "Reel" {
    read 2026-07-19 with W1 by QY5BEN
    temperature 12 °C
    load return-loss 26 dB on 2m
    piece A spare of foam, connector 2 of club-n
    piece B 12 m ± 0.1 m of thin
    readings on 2m {
        baseline 44 W at 0 min
        through A 43 W at 1 min
        through B 29 W, 0.1 W reflected at 2 min
        baseline 43.5 W at 4 min
    }
    readings on 434 MHz {
        open B 7 dB
        short B 7.2 dB
    }
    readings from "parts/july.csv"
    resonance B 8.2 MHz ± 0.1 MHz
}
// file: parts/site.csv
after,band,date,forward_w,swr,instrument
M1,2m,2024-07-01,24.5,1.3,W2
M1,2m,2025-07-01,24.4,1.3,W2
M1,2m,2026-07-01,24.6,1.3,W2
// file: parts/july.csv
band,piece,time_min,forward_w
70cm,baseline,0,40
70cm,A,1,38
70cm,B,2,20
70cm,baseline,3,39
// file: parts/cables.downlead
use "more.downlead"
let rate = 0.395 dB/100 m/sqrt(MHz)
cable foam { impedance 50 ohm; velocity 0.85; loss 0.395 dB/100 m/sqrt(MHz) + 0.0016 dB/100 m/MHz, typical; accuracy 5 % k 1; source "invented" }
connector club-n { family n; loss 0.06 dB ± 50 % at 1 GHz; source "invented" }
// file: parts/more.downlead
cable thin { impedance 50 ohm; velocity 0.66; loss 1.5 dB/100 m/sqrt(MHz) + 0.004 dB/100 m/MHz; accuracy 5 %; source "invented" }
// file: parts/bands.downlead
band 2m { transmit 146.9 MHz; receive 146.3 MHz }
band 70cm 434.5 MHz
"#,
    )
}

/// Makes one change in a snapshot and in the texts, and compares with loading the texts from
/// scratch.
fn step(s: &mut Snapshot, files: &mut Files, file: usize, c: &Change) -> Result<(), TestCaseError> {
    let path = s.files()[file].path.clone();
    let before = files.text(&path).expect("a text").clone();
    let after = c.apply(&before);
    files.put(&path, after.as_str());
    s.edit(
        file,
        Span::new(c.start as u32, c.end as u32),
        &c.text,
        files,
    );
    prop_assert_eq!(s.files()[file].text(), after.as_str());
    let fresh = load_from(files);
    let (have, want) = (everything(s), everything(&fresh));
    if have != want {
        let n = have
            .lines()
            .zip(want.lines())
            .take_while(|(a, b)| a == b)
            .count();
        let line = |t: &str| t.lines().nth(n).unwrap_or("the end").to_owned();
        prop_assert!(
            false,
            "{path} {c:?}\nedited: {}\nloaded: {}\n{after}",
            line(&have),
            line(&want)
        );
    }
    Ok(())
}

proptest! {
    #![proptest_config(config(120))]

    #[test]
    fn an_edit_is_a_load(seed: u64) {
        let mut r = Rng::new(seed);
        let mut files = project_files();
        let mut s = load_from(&files);
        for _ in 0..4 {
            let file = r.below(s.files().len());
            let Some(text) = files.text(&s.files()[file].path).cloned() else { continue };
            let c = change(&mut r, &text);
            step(&mut s, &mut files, file, &c)?;
        }
    }

    #[test]
    fn an_edit_of_a_generated_station_is_a_load(seed: u64) {
        let mut r = Rng::new(seed);
        let mut files = Files::default().with(MAIN, plan(seed).text());
        let mut s = load_from(&files);
        for _ in 0..4 {
            let c = change(&mut r, files.text(MAIN).expect("a text"));
            step(&mut s, &mut files, 0, &c)?;
        }
    }

    #[test]
    fn broken_examples_end_in_findings(seed: u64, changes in 1usize..12) {
        let mut r = Rng::new(seed);
        let names = example_files();
        let name = r.pick(&names);
        let text = examples().read(name).expect("an example");
        let over = Over(name, mutate(&mut r, &text, changes).into());
        let s = Snapshot::load(std::slice::from_ref(name), &over);
        let _ = everything(&s);
    }

    #[test]
    fn words_in_any_order_end_in_findings(seed: u64, words in 1usize..60) {
        let mut r = Rng::new(seed);
        let text = plan(seed).text();
        let all: Vec<&str> = text.split_inclusive([' ', '\n']).collect();
        let mixed: String = (0..words).map(|_| *r.pick(&all)).collect();
        let _ = everything(&load(&format!("chain c on 145 MHz {{\n{mixed}\n}}\n{mixed}")));
    }
}

/// A meter that only the rows of a log name is what the log's results rest on too.
#[test]
fn a_meter_named_in_a_log_counts() {
    let mut files = project_files();
    let mut s = load_from(&files);
    let text = files.text(MAIN).expect("a text").clone();
    let at = text.find("4 % of reading").expect("the meter");
    let before = everything(&s);
    let c = Change {
        start: at,
        end: at + 1,
        text: "9".to_owned(),
    };
    step(&mut s, &mut files, 0, &c).expect("an edit is a load");
    assert_ne!(
        everything(&s),
        before,
        "the uncertainty of the log's rows follows the meter"
    );
}

/// A table of readings damaged anywhere never brings the program down, and a changed one is used
/// as if it had been loaded.
#[test]
fn broken_tables_end_in_findings() {
    let mut r = Rng::new(20_260_719);
    let table = "parts/july.csv";
    let mut files = project_files();
    let good = files.text(table).expect("the table").clone();
    let mut s = load_from(&files);
    let cells = |s: &Snapshot| {
        let items = s.scopes()[0].items().iter();
        items
            .filter_map(|x| x.2.session.as_ref())
            .map(|r| r.cells.len())
            .sum::<usize>()
    };
    assert_eq!(cells(&s), 5, "{}", everything(&s));
    for n in 0..300 {
        let text = match n % 3 {
            0 => mutate(&mut r, &good, 1 + n % 7),
            1 => good.chars().take(r.below(good.len())).collect(),
            _ => good.replacen(
                r.word(&["40", "A", ",", "\n", "piece"]),
                r.word(&["NaN", "1e999", "\u{feff}", ";", "\"", "-0", "\t", ""]),
                1 + r.below(4),
            ),
        };
        files.put(table, text.as_str());
        assert!(s.refresh_attachment(table, &files));
        assert_eq!(everything(&s), everything(&load_from(&files)), "{text:?}");
    }
}

/// The examples with one text replaced.
struct Over<'a>(&'a str, Arc<str>);

impl Loader for Over<'_> {
    fn read(&self, path: &str) -> Result<Arc<str>, downlead_station::LoadError> {
        if path == self.0 {
            Ok(Arc::clone(&self.1))
        } else {
            examples().read(path)
        }
    }
}

/// Named edits whose reach goes beyond their item.
#[test]
fn edits_with_a_reach() {
    let edits: &[(&str, &str, &str)] = &[
        // a named value that runs use, directly and through another
        (MAIN, "let tower = 30 m ± 0.2 m", "let tower = 45 m ± 2 m"),
        (MAIN, "let spare = tower / 10\n", ""),
        (MAIN, "let spare", "let spore"),
        // a value's uncertainty alone
        (MAIN, "± 0.2 m", "± 2 m"),
        // definitions: a cable, the joins, the band behind a device's figure, an instrument
        (
            "parts/cables.downlead",
            "loss 0.395 dB/100 m/sqrt(MHz) +",
            "loss 0.8 dB/100 m/sqrt(MHz) +",
        ),
        ("parts/cables.downlead", "cable foam", "cable foam-x"),
        (
            "parts/cables.downlead",
            "connector club-n",
            "connector n-pair",
        ),
        (
            "parts/bands.downlead",
            "band 70cm 434.5 MHz",
            "band 70cm 439 MHz",
        ),
        ("parts/bands.downlead", "band 70cm", "band 23cm"),
        (
            MAIN,
            "on 2m; loss 0.8 dB on 70cm",
            "on 23cm; loss 0.8 dB on 70cm",
        ),
        (MAIN, "accuracy 5 % of reading", "accuracy 20 % of reading"),
        (MAIN, "instrument W1", "instrument W2"),
        // a definition of one's own under a library name, and away again
        (
            MAIN,
            "chain what-if",
            "connector n-pair { family n; loss 0.4 dB; source \"x\" }\nchain what-if",
        ),
        // what is used
        (MAIN, "use \"parts/cables.downlead\"\n", ""),
        (
            MAIN,
            "use \"parts/bands.downlead\"",
            "use \"parts/none.downlead\"",
        ),
        (
            "parts/cables.downlead",
            "use \"more.downlead\"",
            "use \"../main.downlead\"",
        ),
        (
            "parts/more.downlead",
            "cable thin",
            "use \"cables.downlead\"\ncable thin",
        ),
        // a second definition of a name, in front of the first
        (
            MAIN,
            "let tower",
            "cable foam { impedance 50 ohm; loss 9 dB/100 m/sqrt(MHz); source \"x\" }\nlet tower",
        ),
        // only a comment
        (MAIN, "station hill", "// a remark\nstation hill"),
    ];
    for (path, from, to) in edits {
        let mut files = project_files();
        let mut s = load_from(&files);
        let first = everything(&s);
        let file = s
            .files()
            .iter()
            .position(|f| f.path == *path)
            .expect("the file");
        let text = files.text(path).expect("a text").clone();
        let start = text
            .find(from)
            .unwrap_or_else(|| panic!("`{from}` in {path}"));
        let there = Change {
            start,
            end: start + from.len(),
            text: (*to).to_owned(),
        };
        if let Err(e) = step(&mut s, &mut files, file, &there) {
            panic!("`{from}` to `{to}`: {e}");
        }
        assert_ne!(
            everything(&s),
            first,
            "`{from}` to `{to}` changes something"
        );
        // and back; the files may stand in another order now
        let file = s.files().iter().position(|f| f.path == *path);
        let Some(file) = file else { continue };
        let back = Change {
            start,
            end: start + to.len(),
            text: (*from).to_owned(),
        };
        if let Err(e) = step(&mut s, &mut files, file, &back) {
            panic!("`{from}` to `{to}` and back: {e}");
        }
    }
}

#[test]
fn bad_input_ends() {
    let deep = format!(
        "chain c on 145 MHz {}{}",
        "{".repeat(100_000),
        "}".repeat(100_000)
    );
    let open = "(".repeat(50_000);
    let branches = {
        let mut t = String::from("chain c on 145 MHz {\n    transmitter 1 W\n");
        for _ in 0..200 {
            t += "divider 2 way {\nbranch {\n";
        }
        t + "antenna 1 dBi\n" + &"}\n}\n".repeat(200) + "}\n"
    };
    let long_chain = {
        let mut t = String::from("chain c on 145 MHz, 435 MHz {\n    transmitter 1 W\n");
        for i in 0..5000 {
            t += &format!("    run {}.5 m of rg-213\n", i % 50);
        }
        t + "    antenna { gain 3 dBi; swr 2 }\n}\n"
    };
    let lets = {
        let mut t = String::from("let a0 = 1 m\n");
        for i in 1..3000 {
            t += &format!("let a{i} = a{} + a{}\n", i - 1, i - 1);
        }
        t + "chain c on 145 MHz {\n    transmitter 1 W\n    run a2999 of rg-213\n    antenna 3 dBi\n}\n"
    };
    let extremes = "chain c on 1e-300 MHz, 1e300 MHz, 0 MHz, 145 MHz {\n    transmitter 1e300 W\n    run 1e300 m of rg-213\n    run 1e-300 m of rg-213\n    pad 1e300 dB\n    antenna { gain -1e300 dBi; swr 1e300; impedance 0 ohm with reactance 1e300 ohm }\n    limit 0 W erp\n    read 0 W forward\n}\n".to_owned();
    let nan = "chain c on nan MHz, 145 MHz {\n    transmitter inf W\n    run -5 m of rg-213\n    pad -3 dB\n    antenna { gain nan dBi; swr 0.5 }\n}\n".to_owned();
    let itself =
        "use \"main.downlead\"\nuse \"../x.downlead\"\nuse \"/etc/x\"\nuse \"\"\n".to_owned();
    let empty = String::new();
    for text in [
        deep, open, branches, long_chain, lets, extremes, nan, itself, empty,
    ] {
        let start = std::time::Instant::now();
        let s = load(&text);
        let r = s.report();
        let json = serde_json::to_string(&r).expect("JSON");
        assert!(!json.contains(":null"), "no number that is none");
        assert!(
            start.elapsed().as_secs() < 20,
            "{} bytes took {:?}",
            text.len(),
            start.elapsed()
        );
    }
}

#[test]
fn many_files() {
    // a chain of files longer than allowed, and one file used a thousand times
    let mut files = Files::default();
    for i in 0..200 {
        files.put(
            &format!("f{i}.downlead"),
            format!("use \"f{}.downlead\"\n", i + 1),
        );
    }
    files.put("f200.downlead", "band b 145 MHz\n");
    let s = Snapshot::load(&["f0.downlead".to_owned()], &files);
    assert!(
        s.diagnostics()
            .iter()
            .any(|d| d.message.contains("64 files"))
    );
    let wide = Files::default()
        .with(MAIN, "use \"one.downlead\"\n".repeat(1000))
        .with("one.downlead", "band b 145 MHz\n");
    let s = load_from(&wide);
    assert_eq!(s.files().len(), 2);
    assert!(s.diagnostics().is_empty(), "{:?}", s.diagnostics().first());
    // a folder that is not there
    let s = Snapshot::load(
        &["gone.downlead".to_owned()],
        &Folder("does-not-exist".into()),
    );
    assert!(s.files()[0].error.is_some());
}
