//! `fit`: from a session, a network file, a sheet; definitions that can be used at once.

use std::fs;

use serde_json::Value;

use crate::report::fits;
use crate::{examples, folder, run};

const FILE: &str = "bench/four-cables.downlead";
const SESSION: &str = include_str!("../../../../examples/bench/four-cables.downlead");
const READINGS: &str = include_str!("../../../../examples/bench/july.csv");
const CABLES: &str = include_str!("../../../../examples/thrennock/cables.downlead");

fn bench(session: &str, readings: &str) -> tempfile::TempDir {
    folder(&[
        ("bench/four-cables.downlead", session),
        ("bench/july.csv", readings),
        ("thrennock/cables.downlead", CABLES),
        (".downlead-root", ""),
    ])
}

fn json(out: &str) -> Value {
    serde_json::from_str(out).unwrap_or_else(|e| panic!("{e}: {out}"))
}

/// A sweep of a matched line by its closed form: `points` from 1 to 500 MHz, dB/m k1 √f + k2 f.
fn sweep(k1: f64, k2: f64, metres: f64, velocity: f64, points: u32) -> String {
    let mut out = "! made by formula\n# MHz S DB R 50\n".to_owned();
    for i in 0..points {
        let mhz = 1.0 + 499.0 * f64::from(i) / f64::from(points - 1);
        let db = -metres * (k1 * mhz.sqrt() + k2 * mhz);
        let turns = mhz * 1e6 * metres / (velocity * 299_792_458.0);
        let deg = -360.0 * turns.fract();
        out += &format!("{mhz:.6} -60 0 {db:.8} {deg:.6} {db:.8} {deg:.6} -60 0\n");
    }
    out
}

#[test]
fn text_and_json_of_a_piece() {
    let r = run(&examples(), &["fit", FILE, "--piece", "A"]);
    assert_eq!(r.code, Some(0), "{}", r.err);
    insta::assert_snapshot!("fit-text", r.out);
    let schema = json(&run(&examples(), &["fit", "--schema"]).out);
    let all = json(&run(&examples(), &["fit", FILE, "--format", "json"]).out);
    fits(&all, &schema, &schema, "fit");
    assert_eq!(all["fits"].as_array().unwrap().len(), 4);
}

#[test]
fn a_definition_is_used_at_once_and_gives_the_readings_back() {
    let dir = bench(SESSION, READINGS);
    let r = run(
        dir.path(),
        &["fit", FILE, "--write", "thrennock/measured.downlead"],
    );
    assert_eq!(r.code, Some(0), "{}", r.err);
    let r = run(dir.path(), &["check", "-q", "thrennock/measured.downlead"]);
    assert_eq!((r.code, r.out.as_str()), (Some(0), ""), "{}", r.err);
    // the same readings against the cables as they are
    let mut text = SESSION.replace(
        "use \"../thrennock/cables.downlead\"",
        "use \"../thrennock/measured.downlead\"",
    );
    for (piece, cable) in [
        ("A", "demo-5mm-tinned"),
        ("B", "demo-5mm-double"),
        ("C", "demo-14mm-solid"),
        ("D", "demo-half-foam"),
    ] {
        text = text.replace(
            &format!("of {cable},"),
            &format!("of {}-as-measured,", piece.to_lowercase()),
        );
    }
    fs::write(dir.path().join("bench/again.downlead"), text).unwrap();
    let r = run(
        dir.path(),
        &["bench", "bench/again.downlead", "--format", "json"],
    );
    let again = json(&r.out);
    assert_eq!(again["sessions"][0]["verdicts"]["differs"], 0, "{}", r.out);
    for p in again["sessions"][0]["pieces"].as_array().unwrap() {
        let ratio = p["whole"]["ratio"].as_f64().unwrap();
        assert!((ratio - 1.0).abs() < 0.01, "{}: {ratio}", p["piece"]);
    }
}

/// A lossy line of 75 ohm between ports of 50 ohm (Pozar, Microwave Engineering, 2.1 and 4.4: its
/// chain matrix; own code of this test).
fn sweep_of_75(k1: f64, k2: f64, metres: f64, one_way: bool) -> String {
    use std::fmt::Write as _;
    let mut out = "# MHz S RI R 50\n".to_owned();
    let mul = |a: (f64, f64), b: (f64, f64)| (a.0 * b.0 - a.1 * b.1, a.0 * b.1 + a.1 * b.0);
    let over = |a: (f64, f64), b: (f64, f64)| {
        let d = b.0 * b.0 + b.1 * b.1;
        mul(a, (b.0 / d, -b.1 / d))
    };
    for i in 0..401 {
        let mhz = 1.0 + 499.0 * f64::from(i) / 400.0;
        let a = metres * (k1 * mhz.sqrt() + k2 * mhz) / 8.685_889_638;
        let b = std::f64::consts::TAU * mhz * 1e6 * metres / (0.66 * 299_792_458.0);
        let cosh = (a.cosh() * b.cos(), a.sinh() * b.sin());
        let sinh = (a.sinh() * b.cos(), a.cosh() * b.sin());
        // B / 50 and 50 C of a line of 75 ohm
        let (bb, cc) = ((1.5 * sinh.0, 1.5 * sinh.1), (sinh.0 / 1.5, sinh.1 / 1.5));
        let down = (2.0 * cosh.0 + bb.0 + cc.0, 2.0 * cosh.1 + bb.1 + cc.1);
        let s11 = over((bb.0 - cc.0, bb.1 - cc.1), down);
        let s21 = over((2.0, 0.0), down);
        let (s12, s22) = if one_way {
            ((0.0, 0.0), (0.0, 0.0))
        } else {
            (s21, s11)
        };
        let all = [s11, s21, s12, s22].map(|z| format!("{:.9} {:.9}", z.0, z.1));
        writeln!(out, "{mhz:.6} {}", all.join(" ")).unwrap();
    }
    out
}

/// A reel of 75 ohm is fitted by its matched loss, and its definition has its impedance.
#[test]
fn a_network_of_75_ohm_gives_its_cable_back() {
    let (k1, k2) = (0.0042, 0.000_035);
    let dir = folder(&[
        ("reel75.s2p", &sweep_of_75(k1, k2, 25.0, false)),
        ("one-way.s2p", &sweep_of_75(k1, k2, 25.0, true)),
    ]);
    let args = [
        "fit",
        "reel75.s2p",
        "--length",
        "25 m",
        "--accuracy",
        "0.05 dB",
    ];
    let r = run(dir.path(), &[&args[..], &["--format", "json"]].concat());
    assert_eq!(r.code, Some(0), "{}", r.err);
    let c = &json(&r.out)["fits"][0]["coefficients"];
    for (name, due) in [
        ("k1_db_per_m_per_sqrt_mhz", k1),
        ("k2_db_per_m_per_mhz", k2),
    ] {
        let got = c[name].as_f64().unwrap();
        assert!((got / due - 1.0).abs() < 0.01, "{name}: {got}, not {due}");
    }
    let text = run(dir.path(), &args).out;
    assert!(
        text.contains("impedance 75.00 ohm ± 0.75 ohm k 2"),
        "{text}"
    );
    let args = [
        "fit",
        "one-way.s2p",
        "--length",
        "25 m",
        "--accuracy",
        "0.05 dB",
    ];
    let text = run(dir.path(), &args).out;
    assert!(text.contains("one direction only"), "{text}");
    assert!(!text.contains("impedance"), "{text}");
}

#[test]
fn a_network_gives_its_cable_back() {
    // about RG-58: 0.0127 dB/m/√MHz and 5e-5 dB/m/MHz, 25 m, velocity factor 0.66
    let dir = folder(&[("Reel 7.s2p", &sweep(0.0127, 5e-5, 25.0, 0.66, 401))]);
    let args = ["fit", "Reel 7.s2p", "--length", "25.00 m ± 0.02 m"];
    let r = run(
        dir.path(),
        &[&args[..], &["--accuracy", "0.05 dB", "--format", "json"]].concat(),
    );
    assert_eq!(r.code, Some(0), "{}", r.err);
    let f = &json(&r.out)["fits"][0];
    let c = &f["coefficients"];
    let near = |name: &str, due: f64, share: f64| {
        let got = c[name].as_f64().unwrap();
        assert!((got / due - 1.0).abs() < share, "{name}: {got}");
    };
    near("k1_db_per_m_per_sqrt_mhz", 0.0127, 1e-5);
    near("k2_db_per_m_per_mhz", 5e-5, 1e-4);
    let definition = f["definition"].as_str().unwrap();
    assert!(
        definition.starts_with("cable reel-7-as-measured \""),
        "{definition}"
    );
    assert!(definition.contains("velocity 0.6600"), "{definition}");
    assert!(f["points"].as_array().unwrap().len() <= 200);

    // read at 12 °C, copper is 3.1 % less lossy there (0.393 %/K, half of it): brought to 20 °C
    let r = run(
        dir.path(),
        &[&args[..], &["--temperature", "12 °C", "--format", "json"]].concat(),
    );
    let c = &json(&r.out)["fits"][0]["coefficients"];
    let at_20 = c["k1_at_20c_db_per_m_per_sqrt_mhz"].as_f64().unwrap();
    let factor = (1.0 - 0.00393 * 8.0f64).sqrt();
    assert!((at_20 * factor / 0.0127 - 1.0).abs() < 1e-5, "{at_20}");
    let text = run(dir.path(), &args);
    assert!(text.out.contains("20 °C is assumed"), "{}", text.out);
    assert!(
        text.out
            .contains("the uncertainty is found from the scatter"),
        "{}",
        text.out
    );
}

#[test]
fn networks_that_cannot_do_are_refused() {
    let dir = folder(&[
        ("a.s2p", &sweep(0.0127, 5e-5, 25.0, 0.66, 401)),
        ("one.s1p", "# MHz S RI R 50\n145 0.0 0.2\n"),
        ("bad.s2p", "# MHz S RI R 50\nnothing here\n"),
        ("coarse.s2p", &sweep(0.0127, 5e-5, 25.0, 0.66, 12)),
        (
            "gain.s2p",
            "# MHz S DB R 50\n10 -60 0 1 0 1 0 -60 0\n20 -60 0 1 0 1 0 -60 0\n",
        ),
        (
            "narrow.s2p",
            "# MHz S DB R 50\n145.00 -60 0 -3 0 -3 0 -60 0\n145.01 -60 0 -3 0 -3 0 -60 0\n145.02 -60 0 -3 0 -3 0 -60 0\n",
        ),
    ]);
    let said = |args: &[&str], code: i32, words: &str| {
        let r = run(dir.path(), &[&["fit"][..], args].concat());
        assert_eq!(r.code, Some(code), "{args:?}: {}{}", r.out, r.err);
        // lines are broken for a terminal
        let all: Vec<&str> = r
            .out
            .split_whitespace()
            .chain(r.err.split_whitespace())
            .collect();
        let all = all.join(" ");
        assert!(all.contains(words), "{args:?}: {all}");
    };
    said(&["a.s2p"], 2, "how long is the cable?");
    said(&["a.s2p", "--length", "25"], 2, "25 has no unit");
    said(&["a.s2p", "--length", "25 kg"], 2, "--length \"25 kg\"");
    said(
        &["a.s2p", "--length", "25 m", "--accuracy", "5 %"],
        2,
        "--accuracy \"5 %\"",
    );
    said(
        &["a.s2p", "--length", "25 m", "--temperature", "-5"],
        2,
        "--temperature \"-5\"",
    );
    said(
        &["a.s2p", "--length", "25 m", "--piece", "A"],
        2,
        "--piece goes with a .downlead file",
    );
    said(
        &["a.s2p", "--length", "25 m", "--name", "two words"],
        2,
        "`two words` cannot name a cable",
    );
    said(&["one.s1p", "--length", "25 m"], 2, "it has 1 port");
    said(
        &["bad.s2p", "--length", "25 m"],
        2,
        "no point of it could be read",
    );
    said(
        &["none.s2p", "--length", "25 m"],
        2,
        "there is no such file",
    );
    said(
        &["gain.s2p", "--length", "25 m"],
        1,
        "no frequency cannot give two coefficients",
    );
    said(
        &["narrow.s2p", "--length", "25 m"],
        1,
        "too alike to tell the two coefficients apart; read at 15 MHz too",
    );
    said(
        &["coarse.s2p", "--length", "25 m"],
        0,
        "too coarse for a velocity factor",
    );
}

#[test]
fn too_few_bands_are_refused_with_what_to_add() {
    let one_band: Vec<&str> = READINGS
        .lines()
        .filter(|l| l.starts_with("band") || l.starts_with("2m,"))
        .collect();
    let dir = bench(SESSION, &one_band.join("\n"));
    let r = run(dir.path(), &["fit", FILE, "--piece", "B"]);
    assert_eq!(r.code, Some(1), "{}", r.out);
    assert!(!r.out.contains("cable b-as-measured"), "{}", r.out);
    assert!(
        r.out
            .contains("one frequency cannot give two coefficients; read at 15 MHz too"),
        "{}",
        r.out
    );
}

#[test]
fn an_outlier_is_named_and_can_be_left_out() {
    // C on 6 m read 8 % low: 0.36 dB more loss than there is
    let bad = READINGS.replacen("6m,50.3,C,22.6,6,12,51.2", "6m,50.3,C,22.6,6,12,47.1", 1);
    assert_ne!(bad, READINGS);
    let dir = bench(SESSION, &bad);
    let r = run(dir.path(), &["fit", FILE, "--piece", "C"]);
    assert!(r.out.contains("6m does not fit"), "{}", r.out);
    assert!(
        r.out
            .contains("p < 0.001: more scatter than the uncertainty explains"),
        "{}",
        r.out
    );
    let r = run(
        dir.path(),
        &["fit", FILE, "--piece", "C", "--without", "6m"],
    );
    assert_eq!(r.code, Some(0));
    assert!(!r.out.contains("does not fit"), "{}", r.out);
    assert!(r.out.contains("6m is left out as asked"), "{}", r.out);
}

const SHEET: &str = "\
cable s14 \"13.8 mm solid polyethylene\" {
    impedance 50 ohm
    velocity 0.66
    loss typical at 20 °C {
        10 MHz 1.33 dB/100 m
        100 MHz 4.50 dB/100 m
        200 MHz 6.60 dB/100 m
        400 MHz 9.82 dB/100 m
    }
    accuracy 4 % k 2
    source \"demo sheet 2, invented\"
}
";

#[test]
fn a_sheet_is_fitted_and_added_once() {
    let dir = folder(&[("s.downlead", SHEET), ("own.downlead", "// my cables")]);
    let args = [
        "fit",
        "s.downlead",
        "--cable",
        "s14",
        "--format",
        "definition",
    ];
    let r = run(dir.path(), &args);
    assert_eq!(r.code, Some(0), "{}", r.err);
    // the table was rounded from 0.4084 and 0.004123, about
    assert!(r.out.contains("loss 0.4076"), "{}", r.out);
    let write = [&args[..], &["--write", "own.downlead"]].concat();
    assert_eq!(run(dir.path(), &write).code, Some(0));
    let text = fs::read_to_string(dir.path().join("own.downlead")).unwrap();
    assert_eq!(text, format!("// my cables\n\n{}", r.out));
    let again = run(dir.path(), &write);
    assert_eq!(again.code, Some(2));
    assert!(
        again.err.contains("there is a cable `s14-fitted` already"),
        "{}",
        again.err
    );
    assert_eq!(
        fs::read_to_string(dir.path().join("own.downlead")).unwrap(),
        text
    );
    // under another name it goes in
    let other = [&write[..], &["--name", "s14-mine"]].concat();
    assert_eq!(run(dir.path(), &other).code, Some(0));
    let text = fs::read_to_string(dir.path().join("own.downlead")).unwrap();
    assert_eq!(text.matches("\ncable ").count(), 2);
    assert_eq!(run(dir.path(), &["check", "own.downlead"]).code, Some(0));
}

/// Several at once, into a file that is not there yet and into one that others change: each
/// definition is in it, or its program has said that it is not.
#[test]
fn writers_at_once_lose_nothing() {
    let dir = folder(&[("s.downlead", SHEET)]);
    let fit = |name: &str| {
        run(
            dir.path(),
            &[
                "fit",
                "s.downlead",
                "--cable",
                "s14",
                "--name",
                name,
                "--write",
                "own.downlead",
            ],
        )
    };
    for round in 0..4 {
        let names: Vec<String> = (0..8).map(|i| format!("c{round}-{i}")).collect();
        let runs: Vec<_> = std::thread::scope(|s| {
            let all: Vec<_> = names.iter().map(|n| s.spawn(|| fit(n))).collect();
            // the layout is put in order meanwhile
            let tidy = s.spawn(|| run(dir.path(), &["fmt", "."]));
            let runs = all.into_iter().map(|t| t.join().unwrap()).collect();
            let tidy = tidy.join().unwrap();
            assert!(matches!(tidy.code, Some(0 | 2)), "{tidy:?}");
            runs
        });
        let text = fs::read_to_string(dir.path().join("own.downlead")).unwrap();
        for (name, r) in names.iter().zip(&runs) {
            let there = text.matches(&format!("cable {name} ")).count();
            match r.code {
                Some(0) => assert_eq!(there, 1, "{name}: {r:?}"),
                Some(2) => assert_eq!(there, 0, "{name}: {r:?}"),
                _ => panic!("{name}: {r:?}"),
            }
        }
        // they wait for each other rather than give up
        assert!(runs.iter().all(|r| r.code == Some(0)), "{runs:#?}");
        // a line that is out of order gives `fmt` something to do in the next round
        fs::write(
            dir.path().join("own.downlead"),
            format!("{text}   // {round}\n"),
        )
        .unwrap();
    }
    assert_eq!(run(dir.path(), &["check", "own.downlead"]).code, Some(0));
    // one name is given once
    let runs: Vec<_> = std::thread::scope(|s| {
        let all: Vec<_> = (0..6).map(|_| s.spawn(|| fit("one"))).collect();
        all.into_iter().map(|t| t.join().unwrap()).collect()
    });
    assert_eq!(runs.iter().filter(|r| r.code == Some(0)).count(), 1);
    let refused = |r: &&crate::Run| r.code == Some(2) && r.err.contains("a cable `one` already");
    assert_eq!(runs.iter().filter(refused).count(), 5, "{runs:#?}");
    let left = fs::read_dir(dir.path()).unwrap().count();
    assert_eq!(left, 2, "no temporary file is left");
}

#[cfg(unix)]
#[test]
fn files_that_cannot_be_added_to_stay_as_they_are() {
    use std::os::unix::fs::{MetadataExt, PermissionsExt, symlink};
    let own = "// my cables\n";
    let dir = folder(&[("s.downlead", SHEET), ("own.downlead", own)]);
    let at = |name: &str| dir.path().join(name);
    let refused = |target: &str, words: &str| {
        let args = ["fit", "s.downlead", "--cable", "s14", "--write", target];
        let r = run(dir.path(), &args);
        assert_eq!(r.code, Some(2), "{target}: {r:?}");
        assert!(r.err.contains(words), "{target}: {}", r.err);
        assert!(r.err.contains("nothing was added"), "{target}: {}", r.err);
    };
    fs::set_permissions(at("own.downlead"), fs::Permissions::from_mode(0o444)).unwrap();
    refused("own.downlead", "read-only");
    assert_eq!(fs::read_to_string(at("own.downlead")).unwrap(), own);
    fs::set_permissions(at("own.downlead"), fs::Permissions::from_mode(0o644)).unwrap();

    fs::hard_link(at("own.downlead"), at("other.downlead")).unwrap();
    refused("own.downlead", "2 names (hard links)");
    assert_eq!(fs::read_to_string(at("own.downlead")).unwrap(), own);
    assert_eq!(fs::metadata(at("other.downlead")).unwrap().nlink(), 2);

    symlink("none.downlead", at("link.downlead")).unwrap();
    refused("link.downlead", "a link that leads nowhere");
    assert!(!at("none.downlead").exists());

    fs::write(at("latin.downlead"), b"// caf\xe9\n").unwrap();
    refused("latin.downlead", "not UTF-8 text");
    assert_eq!(fs::read(at("latin.downlead")).unwrap(), b"// caf\xe9\n");
}

#[test]
fn a_text_that_cannot_be_read_is_not_added_to() {
    for (own, line, words) in [
        ("station x {\n", 1, "This block is not closed"),
        (
            "// a\n\nstation x {\n    run M1 28 m of rg-213\n",
            3,
            "This block is not closed",
        ),
        ("band b 145 MHz\n}\n", 2, "This `}` closes no block"),
        (
            "cable y \"half",
            1,
            "This text in quotes does not end on its line",
        ),
        ("+\n", 1, "`+` has no value on its left"),
        (
            "band b 145 MHz\nlet a = (1 m\n",
            2,
            "A bracket is not closed on its line",
        ),
    ] {
        let dir = folder(&[("s.downlead", SHEET), ("own.downlead", own)]);
        let args = [
            "fit",
            "s.downlead",
            "--cable",
            "s14",
            "--write",
            "own.downlead",
        ];
        let r = run(dir.path(), &args);
        assert_eq!(r.code, Some(2), "{own}: {r:?}");
        let said = format!(
            "own.downlead: line {line} must be corrected first: {words}; nothing was added"
        );
        assert!(r.err.contains(&said), "{own}: {}", r.err);
        let after = fs::read_to_string(dir.path().join("own.downlead")).unwrap();
        assert_eq!(after, own);
    }
    // what is wrong in its meaning only is no hindrance
    let own = "// mine\ncable y\nstation x {\n    run M1 28 m of no-such-cable\n}\n";
    let dir = folder(&[("s.downlead", SHEET), ("own.downlead", own)]);
    let args = [
        "fit",
        "s.downlead",
        "--cable",
        "s14",
        "--write",
        "own.downlead",
    ];
    let r = run(dir.path(), &args);
    assert_eq!(r.code, Some(0), "{r:?}");
    let after = fs::read_to_string(dir.path().join("own.downlead")).unwrap();
    assert!(
        after.starts_with(own) && after.contains("\ncable s14-fitted "),
        "{after}"
    );
}

#[test]
fn lines_end_as_in_the_file_they_are_added_to() {
    for (own, end) in [
        ("// my cables\r\n\r\n// more\r\n", "\r\n"),
        ("// my cables\r\n// more", "\r\n"),
        ("// my cables\n// more", "\n"),
        ("", "\n"),
    ] {
        let dir = folder(&[("s.downlead", SHEET), ("own.downlead", own)]);
        let args = [
            "fit",
            "s.downlead",
            "--cable",
            "s14",
            "--format",
            "definition",
            "--write",
            "own.downlead",
        ];
        let r = run(dir.path(), &args);
        assert_eq!(r.code, Some(0), "{r:?}");
        let after = fs::read_to_string(dir.path().join("own.downlead")).unwrap();
        let added = after.strip_prefix(own).unwrap();
        assert_eq!(added.trim_start(), r.out.replace('\n', end));
        assert_eq!(
            after.matches('\r').count(),
            if end == "\n" {
                0
            } else {
                after.matches('\n').count()
            }
        );
        // in the usual layout, with one empty line between
        assert_eq!(
            run(dir.path(), &["fmt", "--check", "own.downlead"]).code,
            Some(0)
        );
    }
}

#[test]
fn definitions_go_into_files_of_the_language_only() {
    let dir = folder(&[("s.downlead", SHEET), ("july.csv", READINGS)]);
    for target in [
        "july.csv",
        "new.txt",
        "new",
        ".downlead",
        "new.downlead.bak",
    ] {
        let r = run(
            dir.path(),
            &["fit", "s.downlead", "--cable", "s14", "--write", target],
        );
        assert_eq!((r.code, r.out.as_str()), (Some(2), ""), "{target}");
        let words =
            format!("--write {target}: a definition goes into a file that ends in .downlead");
        assert!(r.err.contains(&words), "{}", r.err);
    }
    assert_eq!(
        fs::read_to_string(dir.path().join("july.csv")).unwrap(),
        READINGS
    );
    assert_eq!(fs::read_dir(dir.path()).unwrap().count(), 2);
}

#[test]
fn what_is_not_there_is_told_with_what_is() {
    let dir = bench(SESSION, READINGS);
    let said = |args: &[&str], words: &str| {
        let r = run(dir.path(), &[&["fit", FILE][..], args].concat());
        assert_eq!(r.code, Some(2), "{args:?}: {}", r.out);
        assert!(r.err.contains(words), "{args:?}: {}", r.err);
    };
    said(
        &["--piece", "Z"],
        "there is no piece `Z` in session `four-cables`; there are: A, B, C, D",
    );
    said(
        &["--session", "x"],
        "there is no session `x`; there are: four-cables",
    );
    said(&["--without", "1m"], "--without 1m: there is no such band");
    said(&["--cable", "zzz"], "there is no cable `zzz`");
    said(&["--cable", "demo-half-foam"], "has no table");
    said(&["--length", "3 m"], "--length goes with a network file");
    said(&["--name", "x"], "--name is for one cable");
    let r = run(dir.path(), &["fit", "bench/july.csv"]);
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("readings alone do not say"), "{}", r.err);
    let r = run(&examples(), &["fit", "bench/three-years.downlead"]);
    assert!(r.err.contains("which session?"), "{}", r.err);
    let r = run(&examples(), &["fit", "quick.downlead"]);
    assert!(
        r.err.contains("there is no bench session in it"),
        "{}",
        r.err
    );
}
