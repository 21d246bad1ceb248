//! Tables as people have them: a row a band, times of day, units in brackets, names in capitals.

use downlead_eval::Snapshot;
use downlead_eval::bench::result::SessionResult;
use downlead_testkit::Files;

const HEAD: &str = "band 2m 145.3 MHz\nband 70cm 434.5 MHz\n\ninstrument W1 {\n    accuracy 5 % of reading\n    linearity 1 %\n    repeatability 0.6 % k 1\n}\n\nsession s {\n    read 2026-11-21 with W1 by QY5BEN\n    temperature 20 °C\n    piece A 20 m of rg-213\n    piece B 30 m of rg-213\n    readings from \"t.csv\"\n}\n";

const NARROW: &str = "band,piece,time_min,forward_w\n2m,baseline,0,44\n2m,A,2,30.1\n2m,B,4,24.9\n2m,baseline,6,43\n70cm,baseline,0,30\n70cm,A,2,16\n70cm,B,4,12\n70cm,baseline,6,29.5\n";

fn computed(table: &str) -> (SessionResult, Vec<String>) {
    let s = Snapshot::load(
        &["main.downlead".to_owned()],
        &Files::default()
            .with("main.downlead", HEAD)
            .with("t.csv", table),
    );
    let said = s
        .diagnostics()
        .iter()
        .filter(|d| d.code.id.starts_with("readings-") || d.code.id.starts_with("time-"))
        .map(|d| format!("{} {}", d.message, d.help.join(" ")))
        .collect();
    let result = s.scopes()[0]
        .items()
        .iter()
        .find_map(|(_, _, r)| r.session.as_deref().cloned());
    (result.unwrap_or_else(|| panic!("{said:?}")), said)
}

fn losses(r: &SessionResult) -> Vec<(usize, usize, f64, f64)> {
    let of = |c: &downlead_eval::bench::result::BenchCell| {
        (c.piece, c.band, c.measured.db, c.measured.u_db)
    };
    r.cells.iter().map(of).collect()
}

/// A row a band and a column a piece is the same as a row a reading.
#[test]
fn a_wide_table_is_read_as_it_stands() {
    let (want, said) = computed(NARROW);
    assert!(said.is_empty(), "{said:?}");
    assert_eq!(want.cells.len(), 4);
    let times =
        "band (W),baseline,A,B,baseline\ntime,0,2,4,6\n2m,44,30.1,24.9,43\n70cm,30,16,12,29.5\n";
    for table in [
        times.to_owned(),
        times.replace("time,0,2,4,6", "time,14:00,14:02,14:04,14:06"),
        times.replace("band (W),baseline,A,B", "Band,Baseline W,A (W),B [W]"),
        times.replace(',', ";"),
        times
            .replace("baseline\n", "baseline,,\n")
            .replace("\n2m,44,30.1,24.9,43", "\n2m,44,30.1,24.9,43,,"),
        times.replace("2m,", "2M,").replace("70cm", "70 CM"),
    ] {
        let (got, said) = computed(&table);
        assert!(said.is_empty(), "{table}: {said:?}");
        assert_eq!(losses(&got), losses(&want), "{table}");
        assert_eq!(got.readings, 8);
    }
    // without times the order counts, at equal steps
    let (got, said) = computed(&times.replace("time,0,2,4,6\n", ""));
    assert!(said.is_empty(), "{said:?}");
    let close = losses(&got)
        .iter()
        .zip(losses(&want))
        .all(|(a, b)| (a.2 - b.2).abs() < 1e-9);
    assert!(close, "{got:?}");
    // the unit is not guessed without a word
    let (got, said) = computed(&times.replace(" (W)", ""));
    assert_eq!(losses(&got), losses(&want));
    assert!(
        said.iter().any(|m| m.contains("watts were taken")),
        "{said:?}"
    );
    // a level of 46.43 dBm is 44 W (definition of the dBm)
    let dbm = "band,baseline (dBm),A (dBm),baseline (dBm)\n2m,46.4345,44.7857,46.4345\n";
    let (got, _) = computed(dbm);
    assert!((got.cells[0].measured.db - 1.6488).abs() < 1e-9, "{got:?}");
    // an empty field was not read, a wrong one costs itself
    let (got, said) =
        computed("band (W),baseline,A,B,baseline\n2m,44,,24.9,43\n70cm,30,x,12,29.5\n");
    assert_eq!((got.cells.len(), got.lost), (2, 1), "{said:?}");
}

/// Names of columns with their units in brackets, times of day across midnight.
#[test]
fn units_in_brackets_and_times_of_day() {
    let (want, _) = computed(NARROW);
    let table = NARROW
        .replace(
            "band,piece,time_min,forward_w",
            "Band,Piece,Time [min],Forward (W)",
        )
        .replace("2m,", "2M,");
    let (got, said) = computed(&table);
    assert!(said.is_empty(), "{said:?}");
    assert_eq!(losses(&got), losses(&want));
    // 23:58 to 00:04, and 70cm after it
    let clock = "band,piece,time,forward_w\n2m,baseline,23:58,44\n2m,A,00:00,30.1\n2m,B,00:02,24.9\n2m,baseline,00:04,43\n70cm,baseline,00:06,30\n70cm,A,00:08,16\n70cm,B,00:10,12\n70cm,baseline,00:12,29.5\n";
    let (got, said) = computed(clock);
    assert!(said.is_empty(), "{said:?}");
    for (a, b) in losses(&got).iter().zip(losses(&want)) {
        assert!(
            (a.2 - b.2).abs() < 1e-9 && (a.3 - b.3).abs() < 1e-9,
            "{a:?} {b:?}"
        );
    }
    let (_, said) = computed(&clock.replace("00:08", "8"));
    assert!(
        said.iter().any(|m| m.contains("no time of the day")),
        "{said:?}"
    );
}

/// One cause is one finding, with its lines; a name people use for a column offers the right one.
#[test]
fn one_cause_is_said_once() {
    let wrong = NARROW.replace("70cm", "71cm");
    let (_, said) = computed(&wrong);
    assert_eq!(said.len(), 1, "{said:?}");
    assert!(
        said[0].contains("Did you mean `70cm`?") && said[0].contains("(4 in all)"),
        "{said:?}"
    );
    for (head, want) in [
        ("watts", "forward_w"),
        ("MHz", "frequency_mhz"),
        ("comment", "note"),
        ("forwrd_w", "forward_w"),
    ] {
        let (_, said) = computed(&NARROW.replace("forward_w\n", &format!("forward_w,{head}\n")));
        let offer = format!("Did you mean `{want}`?");
        assert!(said.iter().any(|m| m.contains(&offer)), "{head}: {said:?}");
    }
}

/// A log of a station takes the names of bands as people write them, as sessions do.
#[test]
fn a_log_takes_bands_as_people_write_them() {
    let text = |hz: &str| {
        format!(
            "band 2m {hz}\nstation st {{\n  transmitter TX1 18 W carrier\n  chain talk on 2m {{\n    TX1\n    readings from \"log.csv\"\n    \
             run 10 m of rg-213\n    antenna 4.5 dBi\n  }}\n}}\n"
        )
    };
    let rows = |s: &Snapshot| -> Vec<f64> {
        let items = s.scopes()[0].items().iter();
        let bands = items.flat_map(|i| &i.2.chains).flat_map(|c| &c.bands);
        let logs = bands.flat_map(|b| &b.logs).flat_map(|l| &l.rows);
        logs.map(|r| r.read).collect()
    };
    for name in ["2m", "2M", " 2 m ", "2-M"] {
        let log = format!("after,band,date,forward_w\nTX1,{name},2026-07-04,18.3\n");
        let files = Files::default()
            .with("main.downlead", text("145.3 MHz"))
            .with("log.csv", &log);
        let s = Snapshot::load(&["main.downlead".to_owned()], &files);
        assert_eq!(rows(&s), [18.3], "{name}: {:?}", s.diagnostics());
        assert!(
            !s.diagnostics()
                .iter()
                .any(|d| d.code.id == "reading-not-used"),
            "{name}"
        );
    }
}
