//! `bench`: every format on the example session, against snapshots, its schema, and what the
//! session must come to; bad input; pictures.

use std::collections::HashMap;
use std::fs;
use std::path::Path;

use serde_json::Value;

use crate::report::fits;
use crate::{examples, folder, run, run_with};

const FILE: &str = "bench/four-cables.downlead";
const SESSION: &str = include_str!("../../../../examples/bench/four-cables.downlead");
const READINGS: &str = include_str!("../../../../examples/bench/july.csv");
const CABLES: &str = include_str!("../../../../examples/thrennock/cables.downlead");
/// Computed independently of the project, from the readings and the sheet.
const EXPECTED: &str = include_str!("../../../physics/tests/data/bench_results.csv");

/// The example with other readings.
fn with_readings(readings: &str) -> tempfile::TempDir {
    folder(&[
        ("bench/four-cables.downlead", SESSION),
        ("bench/july.csv", readings),
        ("thrennock/cables.downlead", CABLES),
        (".downlead-root", ""),
    ])
}

/// Rows of a CSV by the names of its columns; lines that begin with `#` are remarks.
fn rows(text: &str) -> Vec<HashMap<String, String>> {
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_reader(text.as_bytes());
    reader.deserialize().map(|r| r.unwrap()).collect()
}

fn number(row: &HashMap<String, String>, column: &str) -> f64 {
    row[column]
        .parse()
        .unwrap_or_else(|_| panic!("{column}: {}", row[column]))
}

#[test]
fn text_markdown_and_tables() {
    for (name, args) in [
        ("text", &["--format", "text"][..]),
        ("markdown", &["--format", "markdown"]),
        ("results", &["--format", "csv"]),
        ("pieces", &["--format", "csv", "--table", "pieces"]),
        ("bands", &["--format", "csv", "--table", "bands"]),
        ("ranking", &["--format", "csv", "--table", "ranking"]),
        ("budget", &["--format", "csv", "--table", "budget"]),
        ("swr", &["--format", "csv", "--table", "swr"]),
    ] {
        let r = run(&examples(), &[&["bench", FILE], args].concat());
        assert_eq!(r.code, Some(0), "{name}: {}", r.err);
        insta::assert_snapshot!(format!("bench-{name}"), r.out);
    }
    let trends = [
        "bench",
        "bench/three-years.downlead",
        "--format",
        "csv",
        "--table",
        "trends",
    ];
    insta::assert_snapshot!("bench-trends", run(&examples(), &trends).out);
    let r = run(&examples(), &["bench", "bench/three-years.downlead"]);
    insta::assert_snapshot!("bench-three-years", r.out);
}

#[test]
fn the_session_comes_to_what_was_worked_out() {
    let r = run(&examples(), &["bench", FILE, "--format", "csv"]);
    let ours = rows(&r.out);
    let mut compared = 0;
    for due in rows(EXPECTED) {
        let one = ours
            .iter()
            .find(|o| o["piece"] == due["cable"] && o["band"] == due["band"])
            .unwrap_or_else(|| panic!("{} on {}", due["cable"], due["band"]));
        let place = format!("{} on {}", due["cable"], due["band"]);
        // at the edge in the table; half of the step between two baselines takes them over it
        let verdict = match place.as_str() {
            "A on 40m" => "agrees".to_owned(),
            "C on 40m" => "cannot-tell".to_owned(),
            _ => due["verdict_same"].to_lowercase().replace(' ', "-"),
        };
        assert_eq!(one["verdict"], verdict, "{place}");
        for (ours, theirs) in [
            ("loss_db", "meas_dB"),
            ("uncorrected_loss_db", "naive_dB"),
            ("expected_db", "exp_dB"),
            ("difference_db", "diff_dB"),
        ] {
            // the table has three decimals
            assert!(
                (number(one, ours) - number(&due, theirs)).abs() < 0.001,
                "{place}: {ours}"
            );
        }
        compared += 1;
    }
    assert_eq!(compared, 36);
}

#[test]
fn json_fits_its_schema_and_holds_the_counts() {
    let schema: Value =
        serde_json::from_str(&run(&examples(), &["bench", "--schema"]).out).unwrap();
    let r = run(&examples(), &["bench", "bench", "--format", "json"]);
    let json: Value = serde_json::from_str(&r.out).unwrap();
    fits(&json, &schema, &schema, "bench");
    assert_eq!(json["schema"], "downlead-bench/1");
    let four = json["sessions"]
        .as_array()
        .unwrap()
        .iter()
        .find(|s| s["name"] == "four-cables")
        .unwrap();
    assert_eq!(
        four["verdicts"],
        serde_json::json!({ "agrees": 24, "differs": 5, "cannot_tell": 7 })
    );
    assert_eq!(four["results"].as_array().unwrap().len(), 36);
    // the uncertainty of each comparison is the root of the sum of its causes, twice
    for r in four["results"].as_array().unwrap() {
        let sum: f64 = r["budget"]
            .as_array()
            .unwrap()
            .iter()
            .map(|c| c["standard_db"].as_f64().unwrap().powi(2))
            .sum();
        let u = r["uncertainty_db"].as_f64().unwrap();
        assert!((2.0 * sum.sqrt() - u).abs() < 1e-6, "{r}");
    }
}

#[test]
fn lines_fit_a_terminal() {
    use unicode_width::UnicodeWidthStr;
    for columns in [60, 80, 132] {
        let width = columns.to_string();
        for args in [
            ["bench", FILE],
            ["bench", "bench"],
            ["report", "pellgarrow/rev1.downlead"],
            ["report", "shack/shack.downlead"],
            ["report", "stacked.downlead"],
            ["card", "pellgarrow/rev4.downlead"],
        ] {
            let r = run_with(&examples(), &args, &[("COLUMNS", &width)]);
            for line in r.out.lines() {
                let wide = line.width();
                // a path has no blank to be broken at
                let broken = line.trim_start().contains(' ');
                assert!(
                    wide <= columns || !broken,
                    "{args:?}, {wide} of {columns}: {line}"
                );
            }
        }
    }
}

#[test]
fn all_is_ascii_where_the_locale_asks_for_it() {
    for args in [
        ["bench", FILE],
        ["report", "pellgarrow/rev1.downlead"],
        ["card", "pellgarrow/rev4.downlead"],
        ["fit", FILE],
    ] {
        let r = run_with(&examples(), &args, &[("LC_ALL", "C")]);
        let bad: Vec<&str> = r.out.lines().filter(|l| !l.is_ascii()).collect();
        assert!(bad.is_empty() && !r.out.is_empty(), "{args:?}: {bad:#?}");
        let r = run_with(&examples(), &args, &[("LC_ALL", "C.UTF-8")]);
        assert!(r.out.contains(['±', '✓', '°']), "{args:?}: {}", r.out);
    }
    let r = run_with(&examples(), &["bench", FILE], &[("LANG", "C")]);
    assert!(
        r.out.contains("+ agrees") && r.out.contains("x differs"),
        "{}",
        r.out
    );
}

#[test]
fn verdicts_have_colours_where_they_are_asked_for() {
    let r = run(&examples(), &["bench", FILE, "--color", "always"]);
    assert!(r.out.contains("\u{1b}[32m✓ agrees\u{1b}[0m"), "{}", r.out);
    assert!(
        r.out.contains("\u{1b}[1;31m✗ differs\u{1b}[0m"),
        "{}",
        r.out
    );
    assert!(!run(&examples(), &["bench", FILE]).out.contains('\u{1b}'));
}

#[test]
fn strict_lets_a_piece_that_differs_or_cannot_be_told_fail() {
    assert_eq!(run(&examples(), &["bench", FILE]).code, Some(0));
    assert_eq!(run(&examples(), &["bench", FILE, "--strict"]).code, Some(1));
    // B alone on 2 m agrees
    let text = "use \"thrennock/cables.downlead\"\n\
        instrument W3 {\n    accuracy 5 % of reading\n    linearity 1 % of reading\n    repeatability 0.6 % k 1\n}\n\
        session s {\n    read 2026-07-19 with W3 by QY5BEN\n    temperature 12 °C\n    load return-loss 40 dB\n    \
        generator return-loss 40 dB\n    piece B 7.85 m of demo-5mm-double, connector 2 of n-pair\n    \
        readings on 145.3 MHz {\n        baseline 44.0 W at 0 min\n        through B 32.7 W at 4 min\n        \
        baseline 43.8 W at 10 min\n    }\n}\n";
    let dir = folder(&[("a.downlead", text), ("thrennock/cables.downlead", CABLES)]);
    let r = run(dir.path(), &["bench", "a.downlead", "--strict"]);
    assert_eq!(r.code, Some(0), "{}{}", r.out, r.err);
    assert!(r.out.contains("✓ agrees"), "{}", r.out);
}

#[test]
fn a_file_without_sessions_says_so_and_wrong_use_is_told() {
    let dir = folder(&[("a.downlead", "let mast = 30 m\n")]);
    let r = run(dir.path(), &["bench", "a.downlead"]);
    assert_eq!(r.code, Some(0));
    assert!(r.out.starts_with("No bench session"), "{}", r.out);
    let r = run(dir.path(), &["bench", "a.downlead", "--table", "bands"]);
    assert_eq!(r.code, Some(2));
    assert!(
        r.err.contains("--table goes with --format csv"),
        "{}",
        r.err
    );
    assert_eq!(run(dir.path(), &["bench", "none.downlead"]).code, Some(2));
    let r = run(dir.path(), &["bench", "a.downlead", "--plot", "p"]);
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("no reading to draw"), "{}", r.err);
}

#[test]
fn a_missing_table_is_told_where_it_is_named() {
    let dir = folder(&[
        ("bench/four-cables.downlead", SESSION),
        ("thrennock/cables.downlead", CABLES),
        (".downlead-root", ""),
    ]);
    let r = run(dir.path(), &["bench", FILE]);
    assert_eq!(r.code, Some(1));
    assert!(
        r.err
            .contains("`july.csv` cannot be used: there is no such file"),
        "{}",
        r.err
    );
    assert!(
        r.err.contains("bench/four-cables.downlead:20:19"),
        "{}",
        r.err
    );
    assert!(r.out.contains("0 readings"), "{}", r.out);
}

#[test]
fn half_a_table_gives_half_the_results() {
    // cut in the middle of a number on 15 m
    let cut = READINGS.find("15m,21.2,A").unwrap() + 27;
    let dir = with_readings(&READINGS[..cut]);
    let r = run(dir.path(), &["bench", FILE, "--format", "csv"]);
    let whole = rows(&run(&examples(), &["bench", FILE, "--format", "csv"]).out);
    let half = rows(&r.out);
    assert!((16..=17).contains(&half.len()), "{}", r.out);
    for h in half.iter().filter(|h| h["band"] != "15m") {
        let w = whole
            .iter()
            .find(|w| w["piece"] == h["piece"] && w["band"] == h["band"]);
        assert_eq!(w.unwrap()["loss_db"], h["loss_db"]);
    }
    assert!(r.err.contains("[no-closing-baseline]"), "{}", r.err);
}

#[test]
fn rows_that_are_no_readings_are_told_and_the_others_count() {
    // A, B and C on 160 m
    let bad = READINGS
        .replacen(",57.7,", ",NaN,", 1)
        .replacen(",59.6,", ",-59.6,", 1)
        .replacen(",59.0,", ",1e400,", 1);
    let dir = with_readings(&bad);
    let r = run(dir.path(), &["bench", FILE]);
    assert_eq!(r.code, Some(1));
    assert!(
        r.out
            .contains("51 readings on 9 bands; 3 rows of other files could not be"),
        "{}",
        r.out
    );
    for line in [3, 4, 5] {
        let place = format!("`july.csv`, line {line}, column 7 (`forward_w`)");
        assert!(r.err.contains(&place), "{place}: {}", r.err);
    }
    assert!(r.err.contains("`NaN` is no number"), "{}", r.err);
    let csv = rows(&run(dir.path(), &["bench", FILE, "--format", "csv"]).out);
    assert_eq!(csv.len(), 33);
}

#[test]
fn delimiters_and_decimal_commas_are_found_out() {
    let plain = run(&examples(), &["bench", FILE, "--format", "csv"]).out;
    let pipes = READINGS.replace(',', "|");
    let semicolons = READINGS.replace(',', ";").replace('.', ",");
    let tabs = READINGS.replace(',', "\t").replace('\n', "\r\n");
    for readings in [pipes, semicolons, tabs] {
        let dir = with_readings(&readings);
        let r = run(dir.path(), &["bench", FILE, "--format", "csv"]);
        assert_eq!(r.out, plain, "{}", readings.lines().next().unwrap());
    }
}

#[test]
fn a_wrong_delimiter_loses_no_session() {
    // blanks part nothing
    let dir = with_readings(&READINGS.replace(',', " "));
    let r = run(dir.path(), &["bench", FILE]);
    assert_eq!(r.code, Some(1), "{}", r.out);
    assert!(r.err.contains("[readings-not-read]"), "{}", r.err);
    assert!(r.out.contains("0 readings"), "{}", r.out);
}

#[test]
fn the_same_session_gives_the_same_bytes() {
    for format in ["text", "json", "csv", "markdown"] {
        let args = ["bench", FILE, "--format", format];
        let (one, two) = (run(&examples(), &args), run(&examples(), &args));
        assert!(one.out == two.out && !one.out.is_empty(), "{format}");
    }
}

/// All pictures of the examples, by name.
fn pictures(folder: &Path) -> HashMap<String, String> {
    for file in [FILE, "bench/three-years.downlead"] {
        let out = folder.to_str().unwrap();
        let r = run(&examples(), &["bench", file, "--plot", out]);
        assert_eq!(r.code, Some(0), "{}", r.err);
    }
    fs::read_dir(folder)
        .unwrap()
        .map(|e| e.unwrap().path())
        .map(|p| {
            let name = p.file_name().unwrap().to_str().unwrap().to_owned();
            (name, fs::read_to_string(p).unwrap())
        })
        .collect()
}

#[test]
fn pictures_are_whole_and_the_same_each_time() {
    let dir = tempfile::tempdir().unwrap();
    let (one, two) = (
        pictures(&dir.path().join("a")),
        pictures(&dir.path().join("b/c")),
    );
    assert_eq!(one, two);
    for piece in ["A", "B", "C", "D"] {
        assert!(one.contains_key(&format!("four-cables-loss-{piece}.svg")));
    }
    assert!(one.contains_key("trend-J7.svg"));
    for (name, svg) in &one {
        well_formed(name, svg);
        assert!(
            svg.contains("<title id=\"title\">") && svg.contains("<desc id=\"desc\">"),
            "{name}"
        );
        assert!(svg.contains("viewBox=\"0 0 "), "{name}");
        // black, white and greys only
        for colour in svg.split('#').skip(1) {
            let digits: String = colour.chars().take_while(char::is_ascii_hexdigit).collect();
            let grey = digits.chars().all(|c| digits.starts_with(c));
            assert!(grey, "{name}: #{digits}");
        }
    }
    // the picture of piece A has a mark for each of its nine readings, and one in the key of each kind
    let a = &one["four-cables-loss-A.svg"];
    assert_eq!(a.matches("<circle").count(), 9 + 2);
}

/// Every element that opens closes, in order.
fn well_formed(name: &str, svg: &str) {
    let mut open: Vec<&str> = Vec::new();
    for tag in svg.split('<').skip(1) {
        let (inside, _) = tag
            .split_once('>')
            .unwrap_or_else(|| panic!("{name}: <{tag}"));
        assert_eq!(inside.matches('"').count() % 2, 0, "{name}: <{inside}>");
        let word = inside.split([' ', '/']).find(|w| !w.is_empty()).unwrap();
        if inside.starts_with('/') {
            assert_eq!(open.pop(), Some(word), "{name}");
        } else if !inside.ends_with('/') {
            open.push(word);
        }
    }
    assert!(open.is_empty(), "{name}: {open:?}");
}

/// `UPDATE=1` rewrites them.
#[test]
fn the_pictures_of_the_documents_are_what_the_program_draws() {
    let dir = tempfile::tempdir().unwrap();
    let drawn = pictures(dir.path());
    let images = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../docs/images");
    for (shown, name) in [
        ("bench-loss.svg", "four-cables-loss-A.svg"),
        ("bench-difference.svg", "four-cables-difference.svg"),
        ("bench-ranking.svg", "four-cables-ranking.svg"),
        ("bench-trend.svg", "trend-J7.svg"),
    ] {
        let path = images.join(shown);
        if std::env::var_os("UPDATE").is_some() {
            fs::write(&path, &drawn[name]).unwrap();
        }
        assert!(
            fs::read_to_string(&path).unwrap() == drawn[name],
            "{shown}: UPDATE=1 rewrites it"
        );
    }
}

#[cfg(unix)]
#[test]
fn a_folder_that_cannot_be_written_is_trouble() {
    let dir = folder(&[("file", "")]);
    let under = dir.path().join("file/below");
    let r = run(
        &examples(),
        &["bench", FILE, "--plot", under.to_str().unwrap()],
    );
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("file/below"), "{}", r.err);
}
