//! Logs over the years: what is older than a part it passes through, and readings of no known meter.

use downlead_base::Severity;
use downlead_eval::Snapshot;
use downlead_eval::result::{LogResult, Verdict};
use downlead_testkit::Files;

/// A station whose isolator was replaced, with a log of each autumn.
fn hill(since: &str, table: &str) -> Snapshot {
    let text = format!(
        "band 2m 145.3 MHz

instrument W1 {{ accuracy 5 % of reading }}

station hill {{
    transmitter TX1 50 W ± 5 % carrier, fm
    isolator IS1 0.5 dB ± 0.1 dB{since}
    pad P1 3 dB ± 0.1 dB
    antenna A1 4.5 dBi ± 0.5 dB, swr 1.2

    chain out on 2m transmit {{
        TX1
        IS1
        P1
        readings from \"site.csv\" with W1
        A1
    }}
}}
"
    );
    let files = Files::default()
        .with("main.downlead", text)
        .with("site.csv", table);
    Snapshot::load(&["main.downlead".to_owned()], &files)
}

/// 50 W less 3.5 dB is 22.33 W; before the change the old isolator lost a decibel more.
const YEARS: &str = "after,date,forward_w
P1,2022-10-01,18.2
P1,2023-10-01,17.9
P1,2024-10-01,17.6
P1,2026-10-01,22.4
P1,2027-10-01,22.3
P1,2028-10-01,22.4
";

fn log(s: &Snapshot) -> LogResult {
    let items = s.scopes()[0].items();
    let r = &items.last().expect("the station").2;
    r.chains[0].bands[0].logs[0].clone()
}

fn errors(s: &Snapshot) -> Vec<String> {
    let all = s.diagnostics().into_iter();
    all.filter(|d| d.severity == Severity::Error)
        .map(|d| d.message)
        .collect()
}

#[test]
fn rows_from_before_a_part_are_shown_and_not_judged() {
    let s = hill(", since 2026-09-12", YEARS);
    assert_eq!(errors(&s), [""; 0]);
    let l = log(&s);
    let old: Vec<bool> = l
        .rows
        .iter()
        .map(|r| r.older_than.as_deref() == Some("IS1"))
        .collect();
    assert_eq!(old, [true, true, true, false, false, false]);
    for r in &l.rows[..3] {
        assert_eq!((r.verdict, r.difference_db, r.expected), (None, None, None));
        assert!(r.read > 17.0);
    }
    assert!(l.rows[3..].iter().all(|r| r.verdict == Some(Verdict::Yes)));
    // the straight line begins after the change: 22.4, 22.3, 22.4 W is level
    let t = &l.trends[0];
    assert_eq!((&*t.from, t.count), ("2026-10-01", 3));
    assert!(t.trend.per_year.abs() < 0.02, "{t:?}");
    // without a date of the part all rows are of the station as it is
    let s = hill("", YEARS);
    // one finding for the three years
    assert_eq!(errors(&s).len(), 1);
    assert_eq!(log(&s).trends[0].count, 6);
}

#[test]
fn a_part_of_the_year_of_the_row_is_no_older() {
    // to the digits that both have: a row of the month of the change may be from after it
    let s = hill(", since 2026-10", YEARS);
    let old = log(&s)
        .rows
        .iter()
        .filter(|r| r.older_than.is_some())
        .count();
    assert_eq!(old, 3);
    let s = hill(", since 2028-06", YEARS);
    let old = log(&s)
        .rows
        .iter()
        .filter(|r| r.older_than.is_some())
        .count();
    assert_eq!(old, 5);
}

#[test]
fn the_report_says_how_many_rows_are_older() {
    use downlead_report::Reports as _;
    let report = hill(", since 2026-09-12", YEARS).report();
    let band = &report.stations[0].chains[0].bands[0];
    let words = downlead_report::words::chain::log(&band.logs[0]);
    assert_eq!(
        words[0],
        "site.csv: 6 forward, 2022-10-01 to 2028-10-01; of the forward ones 3 agree; 3 rows are older than IS1 and are not judged"
    );
    assert_eq!(band.logs[0].rows[0].older_than.as_deref(), Some("IS1"));
}

#[test]
fn a_reading_of_no_known_meter_contradicts_nothing() {
    let chain = |read: &str| {
        let text = format!(
            "instrument W1 {{ accuracy 5 % of reading }}\nchain c on 145 MHz {{\n    transmitter 50 W ± 5 %\n    pad 3 dB\n    read {read}\n    antenna 4.5 dBi\n}}\n"
        );
        let files = Files::default().with("main.downlead", text);
        let s = Snapshot::load(&["main.downlead".to_owned()], &files);
        let codes: Vec<&str> = s.diagnostics().iter().map(|d| d.code.id).collect();
        let items = s.scopes()[0].items();
        let r = items.last().expect("the chain").2.chains[0].bands[0].readings[0].clone();
        (codes.join(" "), r.verdict)
    };
    // 50 W less 3 dB is 25.06 W
    let (codes, verdict) = chain("20 W forward");
    assert_eq!(verdict, Verdict::CannotTell);
    assert!(codes.contains("reading-cannot-tell"), "{codes}");
    assert!(!codes.contains("reading-contradicts"), "{codes}");
    for known in ["20 W forward with W1", "20 W ± 5 % forward"] {
        let (codes, verdict) = chain(known);
        assert_eq!(verdict, Verdict::No, "{known}");
        assert!(codes.contains("reading-contradicts"), "{known}: {codes}");
    }
    assert_eq!(chain("25 W forward").1, Verdict::Yes);
}

#[test]
fn a_row_of_no_known_meter_contradicts_nothing() {
    let table = "after,date,forward_w\nP1,2026-10-01,18.0\n";
    let text = "band 2m 145.3 MHz\nstation s {\n    transmitter TX1 50 W ± 5 %\n    pad P1 3 dB\n    antenna A1 4 dBi\n    chain out on 2m {\n        TX1\n        P1\n        readings from \"site.csv\"\n        A1\n    }\n}\n";
    let files = Files::default()
        .with("main.downlead", text)
        .with("site.csv", table);
    let s = Snapshot::load(&["main.downlead".to_owned()], &files);
    assert_eq!(errors(&s), [""; 0]);
    assert_eq!(log(&s).rows[0].verdict, Some(Verdict::CannotTell));
}
