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
        "band,piece,time_min,forward_w,note\n2m,baseline,0,44,ok\n2m,A,1,29,\"half-open\n2m,A,2,29,ok\n2m,A,3,29,ok\n2m,baseline,4,44,ok",
    ) {
        let s = session(&table);
        assert_eq!(said(&s), [mark("line 3, column 5 (`note`)")], "{table:?}");
        let items = s.scopes()[0].items();
        let r = items.iter().find_map(|i| i.2.session.as_deref());
        let r = r.expect("a session");
        assert_eq!((r.readings, r.lost, r.cells.len()), (4, 1, 1), "{table:?}");
    }
}
