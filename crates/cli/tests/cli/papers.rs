//! Papers that are handed over: `report --sheet` and `--materials`.

use std::path::Path;
use std::process::Command;

use serde_json::Value;

use crate::{BAD, GOOD, examples, folder, run};

fn json(dir: &Path, args: &[&str]) -> Value {
    let mut all = vec!["report", "--format", "json"];
    all.extend(args);
    let r = run(dir, &all);
    serde_json::from_str(&r.out).unwrap_or_else(|e| panic!("{e}: {} {}", r.out, r.err))
}

fn near(v: &Value, want: f64) {
    let x = v.as_f64().unwrap_or(f64::NAN);
    assert!((x - want).abs() < 0.02, "{v} {want}");
}

/// A station of which much is stated: licence, exposure, a neighbour.
const HILL: &str = r#"band 2m { transmit 146.9137 MHz; receive 146.3137 MHz }

licence tso-14-0093 "Licence of the hill" {
    authority "Thrennock Spectrum Office"
    holder QY4TRA
    dated 2014-03-02
    until 2029-03-01
    limit 30 W erp carrier on 2m, "clause 4"
    fixed height 26 m agl of A1, within 0.5 m, "clause 6"
    condition "identify every 15 min", "clause 9"
}

rules tso-exposure {
    dated 2026-01-15
    reflection 1.6
    limit 2 W/m2 on 30 MHz to 300 MHz, public, averaging 30 min, "7.1", confidence high
}

station hill "Pellgarrow hill" {
    under tso-14-0093
    under tso-exposure
    alone, "QY4TRA 2026-07-04"
    position 49.3333° S 123.1667° W, wgs84
    ground 612 m amsl
    joins n-pair
    transmitter TX1 18 W ± 5 % carrier, fm, keyed 100 %
    receiver RX1 -119 dBm for 12 dB sinad, noise figure 6 dB
    duplexer DU1 {
        high 1.45 dB ± 0.15 dB, rejects 85 dB at 146.3137 MHz
        low 1.50 dB ± 0.15 dB, rejects 85 dB at 146.9137 MHz
    }
    run M1 46 m of half-inch-foam, since 2026-07-04
    tail T2 0.1 dB ± 0.05 dB
    jumper J9 3 x of half-inch-foam
    antenna A1 { gain 5.2 dBi ± 0.5 dB; height 26 m agl; size 2.7 m }
    chain out-2m on 2m transmit { TX1; DU1.high; M1; T2; A1 }
    chain in-2m on 2m receive { A1; T2; connector 2 of n-pair; M1; DU1.low; RX1 }
}

variant no-run of hill { M1 20 m of half-inch-foam }
"#;

/// Figures of the example's independent script (`expected.json`).
#[test]
fn the_sheet_has_chains_powers_limits_place_and_heights() {
    let all = json(&examples(), &["--sheet", "pellgarrow/rev4.downlead"]);
    assert_eq!(all["schema"], "downlead-sheet/1");
    let s = &all["sheets"][0];
    near(&s["latitude_deg"], -49.3333);
    near(&s["longitude_deg"], -123.1667);
    near(&s["ground_m"], 612.0);
    near(&s["antennas"][0]["height_m"], 26.0);
    assert_eq!(s["datum"], "wgs84");
    let out = &s["chains"][0];
    near(&out["loss_db"], 4.18);
    near(&out["transmitter_w"], 32.0);
    near(&out["erp_w"], 24.67);
    near(&s["chains"][1]["loss_db"], 5.547);
    let limit = &s["limits"][0];
    assert_eq!(limit["verdict"], "met");
    near(&limit["margin_db"], 0.85);
    // after devices and runs only, in order; jumpers and tails are left to `card`
    let at: Vec<&str> = s["points"]
        .as_array()
        .unwrap()
        .iter()
        .map(|p| p["at"]["at"].as_str().unwrap())
        .collect();
    assert_eq!(
        at[..7],
        [
            "after TX1",
            "after IS1",
            "after DU1.high",
            "after DX1.low",
            "after SP1",
            "after M1",
            "before A1"
        ]
    );
    assert!(
        all["caution"]
            .as_str()
            .unwrap()
            .contains("the current text of the rule decides")
    );
}

#[test]
fn the_sheet_says_what_papers_fix_and_what_to_keep_clear_of() {
    let dir = folder(&[("hill.downlead", HILL)]);
    let r = run(dir.path(), &["report", "--sheet", "hill.downlead"]);
    for words in [
        "hill: Pellgarrow hill",
        "49.3333° S 123.1667° W, wgs84",
        "612 m above mean sea level",
        "A1: 26 m above ground, 2.7 m long",
        "holder QY4TRA, dated 2014-03-02, until",
        "m from A1, all its bands on, public (tso-exposure)",
        "no other station (QY4TRA 2026-07-04)",
        "height of A1: ✓ met, as in the paper; tso-14-0093 clause 6",
        "identify every 15 min",
        "An aid, not a legal opinion: the current text of the rule decides.",
        "2026-07-04, the newest date in the station's text",
        "no revision is known, SHA-256 ",
    ] {
        assert!(r.out.contains(words), "{words}: {}", r.out);
    }
}

#[test]
fn what_is_not_stated_is_named_and_never_filled() {
    let dir = folder(&[("a.downlead", GOOD)]);
    let all = json(dir.path(), &["--sheet", "a.downlead"]);
    let s = &all["sheets"][0];
    for absent in ["latitude_deg", "ground_m", "datum"] {
        assert!(s.get(absent).is_none(), "{absent}: {s}");
    }
    assert!(
        s["missing"][0]
            .as_str()
            .unwrap()
            .contains("has no position")
    );
    let station = GOOD.replace(
        "chain what-if",
        "station x { antenna A1 3 dBi\nchain what-if",
    ) + "}\n";
    let dir = folder(&[("a.downlead", &station)]);
    let out = run(dir.path(), &["report", "--sheet", "a.downlead"]).out;
    for words in [
        "position     not stated",
        "ground       not stated",
        "A1: height not stated",
        "No limit and no clause",
    ] {
        assert!(out.contains(words), "{words}: {out}");
    }
}

/// Counted by hand in the example's text: 14 pairs from TX1 to A1, six more from TX2 to the diplexer,
/// four to the receivers.
#[test]
fn materials_count_each_part_once_however_many_chains_pass_it() {
    let all = json(
        &examples(),
        &["--materials", "pellgarrow/rev4.downlead", "--spare", "10"],
    );
    let s = &all["stations"][0];
    let cable = |i: usize| &s["cables"][i];
    assert_eq!(cable(0)["cable"], "demo-5mm-double");
    near(&cable(0)["length_m"], 2.0 * (1.4 + 0.6 + 0.9 + 1.2));
    near(&cable(0)["with_spare_m"], 9.02);
    near(&cable(1)["length_m"], 5.2);
    near(&cable(2)["length_m"], 46.0);
    assert_eq!(s["connectors"][0]["count"], 24);
    let kinds: Vec<(&str, u64)> = s["devices"]
        .as_array()
        .unwrap()
        .iter()
        .map(|d| (d["kind"].as_str().unwrap(), d["count"].as_u64().unwrap()))
        .collect();
    // the two duplexers are of different sheets
    assert_eq!(
        kinds,
        [
            ("transmitter", 2),
            ("receiver", 2),
            ("isolator", 2),
            ("protector", 1),
            ("duplexer", 1),
            ("duplexer", 1),
            ("diplexer", 1),
            ("antenna", 1)
        ]
    );
    assert_eq!(s["notes"], Value::Array(Vec::new()));
}

#[test]
fn materials_name_what_the_text_lacks_and_where_chains_differ() {
    let dir = folder(&[("hill.downlead", HILL)]);
    let all = json(dir.path(), &["--materials", "hill.downlead"]);
    let s = &all["stations"][0];
    let notes = s["notes"].to_string();
    assert!(
        notes.contains("The length of T2 is not stated: a loss stands in its place, and no cable."),
        "{notes}"
    );
    assert!(notes.contains("J9 could not be read"), "{notes}");
    // one pair between M1 and T2 in one chain, two in the other
    assert!(
        notes.contains("2 n-pair in in-2m, but 1 n-pair in out-2m; the larger number is counted"),
        "{notes}"
    );
    near(&s["cables"][0]["length_m"], 46.0);
    // the tail states a loss and no cable
    assert_eq!(s["cables"][1]["without_length"], 1);
    assert!(s["cables"][1].get("cable").is_none());
    assert!(s["cables"][1]["pieces"][0].get("length_m").is_none());
    let csv = run(
        dir.path(),
        &["report", "--materials", "--format", "csv", "hill.downlead"],
    )
    .out;
    assert!(
        csv.starts_with("station,group,kind,type,count,length_m,"),
        "{csv}"
    );
    assert!(
        csv.contains("hill,cable,cable,half-inch-foam,1,46,,0,M1,"),
        "{csv}"
    );
}

/// Branches begin at their divider: two antennas on one tee are two joins there.
#[test]
fn branches_are_joined_to_their_divider() {
    let all = json(&examples(), &["--materials", "stacked.downlead"]);
    let s = &all["stations"][0];
    let places: Vec<(&str, &str, u64)> = s["connectors"]
        .as_array()
        .unwrap()
        .iter()
        .flat_map(|c| c["places"].as_array().unwrap())
        .map(|p| {
            (
                p["from"].as_str().unwrap(),
                p["to"].as_str().unwrap(),
                p["count"].as_u64().unwrap(),
            )
        })
        .collect();
    insta::assert_debug_snapshot!(places);
}

#[test]
fn a_page_prints_alone_and_is_built_for_readers_of_all_kinds() {
    let dir = folder(&[("hill.downlead", HILL), ("b.downlead", GOOD)]);
    for paper in ["--sheet", "--materials"] {
        let page = run(
            dir.path(),
            &[
                "report",
                paper,
                "--format",
                "html",
                "hill.downlead",
                "b.downlead",
            ],
        )
        .out;
        assert!(
            page.contains("<html lang=\"en\">") && page.contains("<th scope=\"col\""),
            "{page}"
        );
        // one page a station, and no heading is skipped
        assert_eq!(page.matches("<h1").count(), 2, "{page}");
        let levels = page
            .match_indices("<h")
            .filter_map(|(at, _)| page[at + 2..].chars().next()?.to_digit(10));
        let levels: Vec<u32> = levels.collect();
        assert!(levels.windows(2).all(|w| w[1] <= w[0] + 1), "{levels:?}");
        for outside in [
            "<script", "http:", "https:", "url(", "@import", "src=\"", "href=",
        ] {
            assert!(!page.contains(outside), "{outside}: {page}");
        }
        assert!(page.contains("the current text of the rule decides"));
        let markdown = run(
            dir.path(),
            &["report", paper, "--format", "markdown", "hill.downlead"],
        )
        .out;
        assert!(
            markdown.contains("SHA-256") && markdown.starts_with("# "),
            "{markdown}"
        );
    }
}

#[test]
fn the_revision_is_that_of_the_file_and_a_change_since_is_said() {
    let dir = folder(&[("hill.downlead", HILL)]);
    let git = |args: &[&str]| {
        let out = Command::new("git")
            .args(["-c", "commit.gpgSign=false", "-c", "core.autocrlf=false"])
            .args(args)
            .current_dir(dir.path())
            .env("GIT_CONFIG_GLOBAL", "/dev/null")
            .env("GIT_AUTHOR_NAME", "QY2TEC")
            .env("GIT_AUTHOR_EMAIL", "qy2tec@example.org")
            .env("GIT_AUTHOR_DATE", "2026-07-19T12:00:00+0000")
            .env("GIT_COMMITTER_NAME", "QY2TEC")
            .env("GIT_COMMITTER_EMAIL", "qy2tec@example.org")
            .output()
            .expect("git is there");
        String::from_utf8(out.stdout).expect("UTF-8")
    };
    git(&["init", "-q"]);
    git(&["add", "-A"]);
    git(&["commit", "-q", "-m", "x"]);
    let head = git(&["rev-parse", "HEAD"]);
    let first = |paper: &str| json(dir.path(), &[paper, "hill.downlead"]);
    let all = first("--materials");
    let file = &all["stations"][0]["origin"]["files"][0];
    assert_eq!(file["revision"], head[..10]);
    assert_eq!(
        (&file["revised"], &file["changed"]),
        (&"2026-07-19".into(), &false.into())
    );
    std::fs::write(
        dir.path().join("hill.downlead"),
        HILL.replace("18 W", "20 W"),
    )
    .unwrap();
    let all = first("--sheet");
    let file = &all["sheets"][0]["origin"]["files"][0];
    assert_eq!(
        (&file["revision"], &file["changed"]),
        (&head[..10].into(), &true.into())
    );
    let out = run(dir.path(), &["report", "--sheet", "hill.downlead"]).out;
    assert!(out.contains("changed since revision"), "{out}");
}

#[test]
fn a_variant_stands_in_the_place_of_its_station() {
    let dir = folder(&[("hill.downlead", HILL), ("b.downlead", GOOD)]);
    let all = json(
        dir.path(),
        &["--materials", "--variant", "no-run", "hill.downlead"],
    );
    near(&all["stations"][0]["cables"][0]["length_m"], 20.0);
    assert_eq!(all["stations"][0]["origin"]["variant"], "no-run");
    let sheet = run(
        dir.path(),
        &["report", "--sheet", "--variant", "no-run", "hill.downlead"],
    )
    .out;
    assert!(
        sheet.contains("hill: Pellgarrow hill, variant no-run (not built)"),
        "{sheet}"
    );
    let base = json(dir.path(), &["hill.downlead"]);
    let variant = json(dir.path(), &["--variant", "no-run", "hill.downlead"]);
    let loss = |v: &Value| {
        v["stations"][0]["chains"][0]["bands"][0]["total_loss_db"]
            .as_f64()
            .unwrap()
    };
    assert!(loss(&variant) < loss(&base));
    for (args, said) in [
        (["--variant", "none", "hill.downlead"], "there are no-run"),
        (
            ["--variant", "no-run", "b.downlead"],
            "these files have no variants",
        ),
    ] {
        let mut all = vec!["report"];
        all.extend(args);
        let r = run(dir.path(), &all);
        assert_eq!(r.code, Some(2));
        assert!(r.err.contains(said), "{}", r.err);
        assert_eq!(r.out, "");
    }
}

#[test]
fn a_broken_file_has_a_paper_that_says_so() {
    let dir = folder(&[("b.downlead", BAD)]);
    for paper in ["--sheet", "--materials"] {
        let r = run(dir.path(), &["report", paper, "b.downlead"]);
        assert_eq!(r.code, Some(1), "{}", r.err);
        assert!(r.err.contains("no-such-cable"), "{}", r.err);
    }
    let out = run(dir.path(), &["report", "--sheet", "b.downlead"]).out;
    assert!(out.contains("The text has 1 error"), "{out}");
    assert!(out.contains("not known"), "{out}");
    let r = run(
        dir.path(),
        &["report", "--materials", "--spare", "lots", "b.downlead"],
    );
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("no share from 0 to 100 %"), "{}", r.err);
}

/// A form of an office, in its own units and rounding.
const FORM: &str = r#"rules thrennock-notice "TSO form 7; invented" {
    edition "2026-01"
    field "Output TX" transmit-frequency in MHz, to 0.0001 MHz
    field "Input RX" receive-frequency in MHz, to 0.0001 MHz
    field "ERP" erp in W, to 1 W
    field "ERP low" erp in dBW, to 0.5 dB down
    field "Gain" gain in dBd, to 0.1 dB
    field "Losses TX" loss in dB, to 0.1 dB
    field "Latitude" latitude in dms
    field "Longitude" longitude in degrees, to 0.001°
    field "Height" height in ft, to 1 ft
    field "HAAT" haat in m, to 1 m
    field "Holder" holder
    field "Signature" blank
    field "Antenna" antenna on 70cm
}
"#;

fn on_a_form() -> tempfile::TempDir {
    let hill = HILL
        .replace("band 2m", "band 70cm 438.9137 MHz\nband 2m")
        .replace(
            "    under tso-exposure\n",
            "    under tso-exposure\n    under thrennock-notice\n",
        );
    // 24.9 W are allowed, and 24.7 W radiated
    let hill = hill.replace("limit 30 W", "limit 19.2 W");
    folder(&[
        ("hill.downlead", &format!("use \"form.downlead\"\n{hill}")),
        ("form.downlead", FORM),
    ])
}

/// 5.2 dBi is 3.05 dBd (ITU-R BS.561), 26 m is 85.3 ft, 49.3333° is 49° 19′ 59.88″; the rest follows from the
/// program's own unrounded figures beside them.
#[test]
fn a_form_has_its_own_units_and_rounding() {
    let dir = on_a_form();
    let all = json(
        dir.path(),
        &["--coordination", "thrennock-notice", "hill.downlead"],
    );
    assert_eq!(all["schema"], "downlead-form/1");
    let fields = all["stations"][0]["blocks"][0]["fields"]
        .as_array()
        .unwrap();
    let of = |label: &str| {
        fields
            .iter()
            .find(|f| f["label"] == label)
            .unwrap_or_else(|| panic!("{label}"))
    };
    let entry = |label: &str| of(label)["entry"].as_str().unwrap().to_owned();
    assert_eq!(entry("Output TX"), "146.9137 MHz");
    assert_eq!(entry("Input RX"), "146.3137 MHz");
    assert_eq!(entry("Latitude"), "49° 20′ 00″ S");
    assert_eq!(entry("Longitude"), "123.167° W");
    assert_eq!(entry("Height"), "85 ft");
    assert_eq!(entry("Holder"), "QY4TRA");
    near(&of("Gain")["exact"], 3.05);
    let report = json(dir.path(), &["hill.downlead"]);
    let band = &report["stations"][0]["chains"][0]["bands"][0];
    let erp = band["erp_w"].as_f64().unwrap();
    assert_eq!(entry("ERP"), format!("{:.0} W", erp));
    near(&of("ERP")["exact"], erp);
    near(
        &of("ERP")["uncertainty_db"],
        band["uncertainty_db"].as_f64().unwrap(),
    );
    near(
        &of("Losses TX")["rounded"],
        (band["total_loss_db"].as_f64().unwrap() * 10.0).round() / 10.0,
    );
    // 18.7 W is 12.7 dBW: 12.5 by steps of 0.5 dB downwards
    let dbw = 10.0 * erp.log10();
    near(&of("ERP low")["rounded"], (dbw * 2.0).floor() / 2.0);
    // by hand, and what is for another band only
    assert_eq!(of("Signature")["by_hand"], true);
    assert!(of("Signature").get("entry").is_none());
    assert!(!fields.iter().any(|f| f["label"] == "Antenna"));
}

#[test]
fn a_form_that_wants_what_the_text_lacks_says_so_and_fills_nothing() {
    let dir = on_a_form();
    let r = run(
        dir.path(),
        &[
            "report",
            "--coordination",
            "thrennock-notice",
            "hill.downlead",
        ],
    );
    assert_eq!(r.code, Some(1), "{}", r.err);
    assert!(
        r.out
            .contains("Not complete. \"HAAT\" (out-2m): the antenna states no `height … haat`."),
        "{}",
        r.out
    );
    assert!(
        r.out
            .contains("MISSING: the antenna states no `height … haat`"),
        "{}",
        r.out
    );
    let all = json(
        dir.path(),
        &["--coordination", "thrennock-notice", "hill.downlead"],
    );
    let fields = all["stations"][0]["blocks"][0]["fields"]
        .as_array()
        .unwrap();
    let haat = fields.iter().find(|f| f["label"] == "HAAT").unwrap();
    assert!(
        haat.get("entry").is_none() && haat.get("rounded").is_none(),
        "{haat}"
    );
    let check = run(dir.path(), &["check", "--format", "short", "hill.downlead"]).out;
    assert!(
        check.contains("form-lacks: The form of thrennock-notice wants \"HAAT\""),
        "{check}"
    );
    // the form says nothing of powers: it is no rule that is kept or not
    assert!(!check.contains("no-rule"), "{check}");
    for format in ["markdown", "csv", "html"] {
        let out = run(
            dir.path(),
            &[
                "report",
                "--coordination",
                "thrennock-notice",
                "--format",
                format,
                "hill.downlead",
            ],
        )
        .out;
        assert!(out.contains("haat"), "{format}: {out}");
    }
}

/// The rounding is the form's and never applied before a limit.
#[test]
fn rounding_that_passes_a_limit_is_pointed_out() {
    let dir = on_a_form();
    let erp = json(dir.path(), &["hill.downlead"])["stations"][0]["chains"][0]["bands"][0]["erp_w"]
        .as_f64()
        .unwrap();
    let limit = erp + 0.05;
    let path = dir.path().join("hill.downlead");
    let text = std::fs::read_to_string(&path).unwrap();
    std::fs::write(
        &path,
        text.replace("limit 19.2 W", &format!("limit {limit:.4} W")),
    )
    .unwrap();
    let form = FORM.replace("erp in W, to 1 W", "erp in W, to 1 W up");
    std::fs::write(dir.path().join("form.downlead"), form).unwrap();
    let all = json(
        dir.path(),
        &["--coordination", "thrennock-notice", "hill.downlead"],
    );
    let fields = all["stations"][0]["blocks"][0]["fields"]
        .as_array()
        .unwrap();
    let f = fields.iter().find(|f| f["label"] == "ERP").unwrap();
    assert_eq!(f["rounded"].as_f64(), Some(erp.ceil()));
    near(&f["over_w"], limit);
    let out = run(
        dir.path(),
        &[
            "report",
            "--coordination",
            "thrennock-notice",
            "hill.downlead",
        ],
    )
    .out;
    assert!(
        out.contains("rounding alone puts it over the limit of"),
        "{out}"
    );
}

#[test]
fn wrong_forms_are_refused_in_words() {
    let dir = on_a_form();
    let r = run(
        dir.path(),
        &["report", "--coordination", "other", "hill.downlead"],
    );
    assert_eq!(r.code, Some(2));
    assert!(
        r.err
            .contains("there is no such form; there are thrennock-notice"),
        "{}",
        r.err
    );
    let plain = folder(&[("a.downlead", GOOD)]);
    let r = run(
        plain.path(),
        &["report", "--coordination", "other", "a.downlead"],
    );
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("these files see no form"), "{}", r.err);
    let bad = folder(&[(
        "f.downlead",
        "rules f {\n    field \"ERP\" erp in dBd\n    field \"H\" height in ft, to 1 m\n    field \"M\" mode, to 1 W\n    field \"L\" latitude in dms, to 1 W\n    field \"P\" output in dBm, to 0 dB\n    field erp\n    field \"X\"\n    field \"Z\" erp eirp\n}\n",
    )]);
    let out = run(bad.path(), &["check", "--format", "short", "f.downlead"]).out;
    for words in [
        "f.downlead:2:24 error form-unit: \"ERP\" is a power, and `dBd` is no unit of that",
        "f.downlead:3:32 error form-unit: \"H\" is a length; it cannot be rounded to `1 m`",
        "f.downlead:4:24 error form-unit: \"M\" is words of the text; it cannot be rounded to `1 W`",
        "f.downlead:5:35 error form-unit: \"L\" is an angle; it cannot be rounded to `1 W`",
        "f.downlead:6:33 error form-unit: \"P\" is a power; it cannot be rounded to `0 dB`",
        "f.downlead:7:",
        "f.downlead:8:",
        "f.downlead:9:",
    ] {
        assert!(out.contains(words), "{words}: {out}");
    }
}

#[test]
fn a_paper_that_is_older_than_its_file_is_stale() {
    let dir = folder(&[("hill.downlead", HILL)]);
    for format in ["html", "markdown", "text"] {
        for paper in ["--sheet", "--materials"] {
            let page = run(
                dir.path(),
                &["report", paper, "--format", format, "hill.downlead"],
            )
            .out;
            std::fs::write(dir.path().join("page"), page).unwrap();
            let fresh = run(dir.path(), &["check", "--sheet", "page"]);
            assert_eq!(
                fresh.code,
                Some(0),
                "{format} {paper}: {}{}",
                fresh.out,
                fresh.err
            );
            assert!(
                fresh.out.contains("printed from 1 file as they are now"),
                "{}",
                fresh.out
            );
            std::fs::write(
                dir.path().join("hill.downlead"),
                HILL.replace("46 m", "45 m"),
            )
            .unwrap();
            let stale = run(dir.path(), &["check", "--sheet", "page"]);
            assert_eq!(stale.code, Some(1), "{format} {paper}");
            assert!(
                stale
                    .out
                    .contains("page: stale: printed from hill.downlead with SHA-256"),
                "{}",
                stale.out
            );
            std::fs::write(dir.path().join("hill.downlead"), HILL).unwrap();
        }
    }
    std::fs::remove_file(dir.path().join("hill.downlead")).unwrap();
    let gone = run(dir.path(), &["check", "--sheet", "page"]);
    assert_eq!(gone.code, Some(1));
    assert!(gone.out.contains("cannot be read"), "{}", gone.out);
    for (paper, said) in [
        ("none", "no such file"),
        (".", "folder"),
        ("other", "does not say from which files"),
    ] {
        std::fs::write(dir.path().join("other"), "nothing").unwrap();
        let r = run(dir.path(), &["check", "--sheet", paper]);
        assert_eq!(r.code, Some(2), "{paper}");
        assert!(r.err.contains(said), "{paper}: {}", r.err);
    }
}
