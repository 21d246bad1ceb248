//! `catalogue`: list, entry, table, plot.

use crate::{folder, run};

#[test]
fn the_list_can_be_narrowed() {
    let dir = folder(&[]);
    let all = run(dir.path(), &["catalogue"]);
    assert_eq!(all.code, Some(0));
    assert!(
        all.out.contains("half-inch-foam") && all.out.contains("n-pair"),
        "{}",
        all.out
    );
    let pairs = run(dir.path(), &["catalogue", "--kind", "connector"]);
    assert!(!pairs.out.contains("half-inch-foam") && pairs.out.contains("n-pair"));
}

#[test]
fn an_entry_shows_its_text_source_and_table() {
    let dir = folder(&[]);
    let r = run(
        dir.path(),
        &[
            "catalogue",
            "half-inch-foam",
            "--at",
            "100 MHz",
            "400",
            "9 GHz",
        ],
    );
    assert_eq!(r.code, Some(0), "{}", r.err);
    assert!(r.out.contains("source \""), "{}", r.out);
    // by hand from the entry's text: 0.2206 * 10 + 0.00072 * 100 = 2.278 dB/100 m; per 100 ft times 0.3048 = 0.694
    let row = r
        .out
        .lines()
        .find(|l| l.trim_start().starts_with("100 MHz"))
        .unwrap();
    assert!(row.contains("2.28") && row.contains("0.694"), "{row}");
    // U (k = 2) of 5 % (k = 1): 0.228
    assert!(row.contains("0.23"), "{row}");
    let out = r
        .out
        .lines()
        .find(|l| l.trim_start().starts_with("9 GHz"))
        .unwrap();
    assert!(out.contains("outside"), "{out}");
}

#[test]
fn the_plot_is_plain_characters() {
    let dir = folder(&[]);
    let r = run(dir.path(), &["catalogue", "half-inch-foam", "--plot"]);
    assert!(
        r.out.contains("valid") && r.out.contains('⠤') && r.out.contains("100 MHz"),
        "{}",
        r.out
    );
    assert!(!r.out.contains('\u{1b}'));
    assert!(
        r.out
            .lines()
            .all(|l| l.chars().count() < 100 || l.contains("source") || l.contains("//"))
    );
}

#[test]
fn names_are_helped_and_kinds_kept_apart() {
    let dir = folder(&[]);
    let r = run(dir.path(), &["catalogue", "half-inch-foma"]);
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("near it: half-inch-foam"), "{}", r.err);
    let r = run(dir.path(), &["catalogue", "n-pair", "--plot"]);
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("for cables"), "{}", r.err);
    assert_eq!(
        run(dir.path(), &["catalogue", "half-inch-foam", "--at", "NaN"]).code,
        Some(2)
    );
}

#[test]
fn a_length_of_cable_is_a_network_file_that_fits_back() {
    let dir = tempfile::tempdir().unwrap();
    let r = run(dir.path(), &["catalogue", "rg-213", "--network", "25 m"]);
    assert_eq!(r.code, Some(0), "{}", r.err);
    assert!(r.out.starts_with("! 25 m of rg-213 at 20 °C"), "{}", r.out);
    let read = downlead_touchstone::read(r.out.as_bytes(), Some(2));
    let n = read.network.expect("a network");
    assert_eq!(n.points(), 201);
    // 100 m of it lose what the catalogue's own table says
    let facts = downlead_eval::catalogue::cable_points("rg-213", n.frequencies_hz()).unwrap();
    for (i, p) in facts.1.iter().enumerate() {
        let matched = p.loss_db_per_100m / 4.0;
        let got = -n.insertion_gain_db(i, 1, 0);
        // below some MHz the impedance is complex, which costs a little more
        assert!(
            (got - matched).abs() < 0.01 + 0.02 * matched,
            "{} Hz: {got} {matched}",
            p.frequency_hz
        );
    }
    std::fs::write(dir.path().join("reel.s2p"), &r.out).unwrap();
    let fit = run(dir.path(), &["fit", "reel.s2p", "--length", "25 m"]);
    assert_eq!(fit.code, Some(0), "{}", fit.err);
    for bad in [
        &["catalogue", "rg-213", "--network", "25"][..],
        &["catalogue", "n-pair", "--network", "25 m"],
        &[
            "catalogue",
            "rg-213",
            "--network",
            "25 m",
            "--temperature",
            "hot",
        ],
    ] {
        assert_eq!(run(dir.path(), bad).code, Some(2), "{bad:?}");
    }
}
