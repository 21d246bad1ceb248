//! Tables of readings as files come: what each row costs and where it is said to stand, in a
//! station's log and on the bench alike.

mod common;

use common::{MAIN, load_from};
use downlead_eval::Snapshot;
use downlead_testkit::Files;

const METER: &str =
    "band 2m 145.3 MHz\n\ninstrument W1 \"meter\" {\n    accuracy 5 % of reading\n}\n\n";

/// 3 dB below 30 W are 15.04 W.
fn log(table: &str) -> Snapshot {
    let text = format!(
        "{METER}station hill {{\n    transmitter TX1 30 W ± 5 % carrier, fm\n    pad P1 3 dB ± 0.1 dB\n    antenna A1 4.5 dBi ± 0.5 dB, swr 1.2\n\n    chain out on 2m transmit {{\n        TX1\n        P1\n        readings from \"t.csv\" with W1\n        A1\n    }}\n}}\n"
    );
    load_from(&Files::default().with(MAIN, text).with("t.csv", table))
}

fn session(table: &str) -> Snapshot {
    let text = format!(
        "{METER}session s {{\n    read 2026-07-19 with W1 by QY5BEN\n    temperature 12 °C\n    piece A 20 m of rg-213\n    readings from \"t.csv\"\n}}\n"
    );
    load_from(&Files::default().with(MAIN, text).with("t.csv", table))
}

fn said(s: &Snapshot) -> Vec<String> {
    let all = s.diagnostics().into_iter();
    let mut all: Vec<String> = all
        .map(|d| format!("{}: {}", d.code.id, d.message))
        .collect();
    all.sort();
    all
}

/// A table whose lines end in LF, in CR LF, in a lone CR, and in all three by turns.
fn ended(table: &str) -> [String; 4] {
    let mut ends = ["\r\n", "\r", "\r\n", "\n"].iter().cycle();
    let mixed = table
        .lines()
        .flat_map(|l| [l, ends.next().expect("endless")])
        .collect();
    [
        table.to_owned(),
        table.replace('\n', "\r\n"),
        table.replace('\n', "\r"),
        mixed,
    ]
}

#[test]
fn what_is_said_of_a_row_names_its_line_whatever_ends_the_lines() {
    for table in ended(
        "after,band,date,forward_w\n# the first year\nP1,2m,2024-07-01,15.0\nP1,2m,2025-07-01,x\nP1,2m,2026-07-01,30.0\n",
    ) {
        let found = said(&log(&table));
        assert_eq!(found.len(), 2, "{table:?}: {found:#?}");
        assert_eq!(
            found[1],
            "readings-not-read: In `t.csv`, line 4, column 4 (`forward_w`): `x` is no number.",
            "{table:?}"
        );
        assert!(
            found[0].starts_with("reading-contradicts: In line 5 (2026-07-01)"),
            "{table:?}: {found:#?}"
        );
    }
    for table in ended(
        "band,piece,time_min,forward_w\n2m,baseline,0,44\n2m,none,1,29\n2m,A,1,x\n2m,A,2,29\n2m,baseline,4,44\n",
    ) {
        let found = said(&session(&table));
        assert_eq!(
            found,
            [
                "readings-not-read: In `t.csv`, line 3 (`piece`): `none` is no piece of this session.",
                "readings-not-read: In `t.csv`, line 4, column 4 (`forward_w`): `x` is no number.",
            ],
            "{table:?}"
        );
    }
}

/// One stray mark costs its row, is said at its line and column, and hides nothing below it.
#[test]
fn a_quotation_mark_that_is_not_closed_hides_no_rows() {
    let mark = |place: &str| {
        format!(
            "readings-not-read: In `t.csv`, {place}: A quotation mark is opened here and not closed on this line; the row is left out."
        )
    };
    for table in ended(
        "after,date,forward_w,instrument,note\nP1,2022-07-04,15.0,W1,ok\nP1,2023-07-06,15.1,W1,\"half-open\nP1,2024-07-01,7.0,W1,contradicts\n",
    ) {
        let found = said(&log(&table));
        assert_eq!(found.len(), 2, "{table:?}: {found:#?}");
        assert!(
            found[0].starts_with("reading-contradicts: In line 4 (2024-07-01), on 2m: 7.00 W read"),
            "{table:?}: {found:#?}"
        );
        assert_eq!(found[1], mark("line 3, column 5 (`note`)"), "{table:?}");
    }
    for table in ended(
        "band,piece,time_min,forward_w,note\n2m,baseline,0,44,ok\n2m,A,1,29,\"half-open\n2m,A,2,30,ok\n2m,A,3,30,ok\n2m,baseline,4,44,ok",
    ) {
        let s = session(&table);
        assert_eq!(said(&s), [mark("line 3, column 5 (`note`)")], "{table:?}");
        let items = s.scopes()[0].items();
        let r = items.iter().find_map(|i| i.2.session.as_deref());
        let r = r.expect("a session");
        assert_eq!((r.readings, r.lost, r.cells.len()), (4, 1, 1), "{table:?}");
    }
}

/// A station with two test points on two bands; `at` holds the lines after SP1, DX1 and A1.
fn two_points(at: [&str; 3], more: &str, table: &str) -> Snapshot {
    let [sp1, dx1, a1] = at;
    let text = format!(
        "{METER}band 70cm 434.5 MHz\n\nstation hill {{\n    transmitter TX1 30 W ± 5 % carrier, fm\n    protector SP1 0.2 dB ± 0.1 dB\n    diplexer DX1 {{\n        low 0.3 dB ± 0.1 dB, passes 144 MHz to 148 MHz\n        high 0.4 dB ± 0.1 dB, passes 430 MHz to 440 MHz\n    }}\n    antenna A1 4.5 dBi ± 0.5 dB, swr 1.2\n\n    chain out on 2m transmit {{\n        TX1\n        SP1\n        {sp1}\n        DX1.low\n        {dx1}\n        A1\n        {a1}\n    }}\n{more}}}\n"
    );
    load_from(&Files::default().with(MAIN, text).with("log.csv", table))
}

const LOG: &str = "readings from \"log.csv\" with W1";

/// Findings about the log, with their help.
fn of_log(s: &Snapshot) -> Vec<String> {
    let all = s.diagnostics().into_iter();
    all.filter(|d| d.code.id.starts_with("reading"))
        .map(|d| {
            assert_eq!(
                d.severity == downlead_base::Severity::Warning,
                d.code.id == "reading-not-used",
                "{d:#?}"
            );
            format!("{} {}", d.message, d.help.join(" "))
        })
        .collect()
}

#[test]
fn rows_that_no_statement_takes_are_reported_once_for_each_tag() {
    // 0.2 dB and 0.5 dB below 30 W
    let table = "after,band,date,forward_w\nSP1,2m,2024-07-01,28.6\nDX1,2m,2024-07-01,26.7\nSP1,2m,2025-07-01,28.6\nDX1,2m,2025-07-01,26.7\nTX1,2m,2025-07-01,30\n";
    assert_eq!(
        of_log(&two_points([LOG, "", ""], "", table)),
        [
            "In `log.csv`, lines 3, 5: No `readings from \"log.csv\"` stands after `DX1` in a transmit chain; the 2 rows are not used. Write `readings from \"log.csv\"` below `DX1` in its chain.",
            "In `log.csv`, line 6: No `readings from \"log.csv\"` stands after `TX1` in a transmit chain; the row is not used. Write `readings from \"log.csv\"` below `TX1` in its chain.",
        ]
    );
    // at every point that is named, and past what cannot be resolved
    let gap = format!("GONE1\n        {LOG}");
    let table = &table[..table.rfind("TX1").expect("a row")];
    for at in [[LOG, LOG, ""], [LOG, "", LOG], ["", &gap, ""]] {
        let found = of_log(&two_points(at, "", table));
        assert!(found.is_empty(), "{at:?}: {found:#?}");
    }
    // many rows
    let rows = "DX1,2m,2024-07-01,26.7\n".repeat(20);
    let table = format!("after,band,date,forward_w\nSP1,2m,2024-07-01,28.6\n{rows}");
    let found = of_log(&two_points([LOG, "", ""], "", &table));
    assert!(
        found[0].starts_with("In `log.csv`, lines 3, 4, 5, 6, 7, 8, 9, 10 and on: ")
            && found[0].contains("the 20 rows are not used"),
        "{found:#?}"
    );
    // what was read at the end is read before it
    let table = "after,band,date,forward_w\nSP1,2m,2024-07-01,28.6\nA1,2m,2024-07-01,26.7\n";
    assert_eq!(
        of_log(&two_points([LOG, "", LOG], "", table)),
        [
            "In `log.csv`, line 3: Nothing is read after `A1`, an antenna; the row is not used. Name the part before it in the column `after`."
        ]
    );
}

#[test]
fn rows_of_a_log_on_a_band_without_a_statement_are_reported() {
    let table = "after,band,frequency_mhz,date,forward_w\nSP1,2m,,2024-07-01,28.6\nSP1,70cm,,2024-07-01,28.6\nSP1,,434.5,2025-07-01,28.6\n";
    let high = |log: &str| {
        format!(
            "    chain upper on 70cm transmit {{\n        TX1\n        SP1\n        {log}\n        DX1.high\n        A1\n    }}\n"
        )
    };
    assert_eq!(
        of_log(&two_points([LOG, "", ""], &high(""), table)),
        [
            "In `log.csv`, lines 3, 4: No chain with `readings from \"log.csv\"` after `SP1` is on `70cm`, 434.5 MHz; the 2 rows are not used. Write `readings from \"log.csv\"` below `SP1` in a chain on that band."
        ]
    );
    let none: [&str; 0] = [];
    assert_eq!(of_log(&two_points([LOG, "", ""], &high(LOG), table)), none);
    // a statement on other bands than the row's, and a band that is not defined
    let only = format!("{LOG}, on 70cm");
    let found = of_log(&two_points([LOG, "", ""], &high(&only), table));
    assert_eq!(found, none);
    let found = of_log(&two_points([&only, "", ""], &high(LOG), table));
    assert!(
        found.len() == 1
            && found[0].contains("line 2: No chain")
            && found[0].contains("is on `2m`"),
        "{found:#?}"
    );
    let typo = table
        .replace("SP1,70cm", "SP1,70dm")
        .replace("434.5", "145.3");
    let found = of_log(&two_points([LOG, "", ""], "", &typo));
    assert!(
        found.len() == 1
            && found[0].contains("line 3: No chain")
            && found[0].ends_with("Band `70dm` is not defined. Did you mean `70cm`?"),
        "{found:#?}"
    );
    // a chain on a band that is not defined has its own finding
    let unknown = high(LOG).replace("on 70cm", "on 70dm");
    assert_eq!(of_log(&two_points(["", "", ""], &unknown, table)), none);
}

/// What is wrong with a table is reported once, however many statements take it.
#[test]
fn a_tag_that_is_not_of_the_station_is_reported_once() {
    let table = "after,band,date,forward_w\nSP1,2m,2024-07-01,28.6\nDX9,2m,2024-07-01,26.7\nDX1,2m,2024-07-01,x\nDX9,2m,2025-07-01,26.7\nSP1,2m,2025-07-01,28.6\nDX9,2m,2026-07-01,26.7\n";
    let high = format!(
        "    chain upper on 70cm transmit {{\n        TX1\n        SP1\n        {LOG}\n        DX1.high\n        A1\n    }}\n"
    );
    for (at, more) in [
        ([LOG, "", ""], ""),
        ([LOG, LOG, ""], ""),
        ([LOG, LOG, LOG], &*high),
    ] {
        assert_eq!(
            of_log(&two_points(at, more, table)),
            [
                "In `log.csv`, line 4, column 4 (`forward_w`): `x` is no number. ",
                "In `log.csv`, line 3 (`after`): The station has no part `DX9`. Did you mean `DX1`? It is named in lines 5, 7 too.",
            ],
            "{at:?}"
        );
    }
}

/// A statement at the beginning of a branch is after the divider, not after the end of the branch
/// before it.
#[test]
fn a_branch_begins_after_its_divider() {
    let text = format!(
        "{METER}station hill {{\n    transmitter TX1 30 W ± 5 % carrier, fm\n    divider D1 2 way\n    pad P1 1 dB ± 0.1 dB\n    antenna A1 4.5 dBi ± 0.5 dB, swr 1\n    antenna A2 4.5 dBi ± 0.5 dB, swr 1\n\n    chain out on 2m transmit {{\n        TX1\n        D1 {{\n            branch a {{ P1; A1 }}\n            branch b {{\n                {LOG}\n                A2\n            }}\n        }}\n    }}\n}}\n"
    );
    // half of 30 W
    let table = "after,band,date,forward_w\nD1,2m,2024-07-01,15.0\n";
    let s = load_from(&Files::default().with(MAIN, text).with("log.csv", table));
    assert_eq!(s.diagnostics().len(), 0, "{:#?}", s.diagnostics());
    let items = s.scopes()[0].items();
    let logs = items.iter().flat_map(|i| &i.2.chains);
    let logs: Vec<_> = logs.flat_map(|c| c.bands[0].logs.iter()).collect();
    assert_eq!(logs.len(), 1);
    assert_eq!(logs[0].after.as_deref(), Some("D1"));
    assert_eq!(logs[0].rows.len(), 1);
}

#[test]
fn many_bands_without_a_statement_are_counted_in_short() {
    let table = |n: u32| {
        let rows = (0..n).map(|k| format!("SP1,,{},2024-07-01,28.6\n", 430 + k));
        format!(
            "after,band,frequency_mhz,date,forward_w\nSP1,2m,,2024-07-01,28.6\n{}",
            rows.collect::<String>()
        )
    };
    let said = |n: u32| of_log(&two_points([LOG, "", ""], "", &table(n)))[0].clone();
    let four = "is on 430 MHz, 431 MHz, 432 MHz, 433 MHz";
    assert!(said(4).contains(&format!("{four};")), "{}", said(4));
    assert!(said(5).contains(&format!("{four} and on;")), "{}", said(5));
    assert!(said(7).contains(&format!("{four} and on;")), "{}", said(7));
}
