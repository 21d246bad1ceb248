//! Rows of spots and hops in `overview`, its filters, and goals and variants in `solve`, `sweep` and `explain`;
//! cables of the library beside each other.

use serde_json::Value;

use crate::{examples, folder, run};

/// Two stations on a site, with licence, rules of exposure and a spot.
const SITE: &str = r#"band 2m 146.9137 MHz

licence tso-14-0093 {
    dated 2014-03-02
    limit 30 W erp carrier on 2m, "clause 4"
}
rules tso-exposure {
    dated 2026-01-15
    class wide, narrow
    reflection 1.6
    limit 2 W/m2 on 30 MHz to 300 MHz, public, averaging 30 min, "7.1", confidence high
}
station hill {
    under tso-14-0093
    under tso-exposure, class wide
    beside harbour
    spot gate 5 m out, 2 m agl, public
    joins n-pair
    transmitter TX1 18 W ± 5 % carrier, fm, keyed 100 %
    run M1 46 m of half-inch-foam
    antenna A1 { gain 5.2 dBi ± 0.5 dB; height 26 m agl; size 2.7 m }
    chain out on 2m transmit { TX1; M1; A1 }
}
station harbour {
    transmitter H1 25 W ± 10 % carrier, fm, keyed 100 %
    antenna A9 { gain 2.15 dBi ± 1 dB; height 15 m agl; size 1.4 m }
    chain data on 147.5137 MHz transmit { H1; A9 }
}
variant less-run of hill { M1 20 m of half-inch-foam }
"#;

fn rows(args: &[&str]) -> Vec<Value> {
    let dir = folder(&[("site.downlead", SITE)]);
    let mut all = vec!["overview", "--format", "jsonl", "site.downlead"];
    all.extend(args);
    let r = run(dir.path(), &all);
    let lines = r.out.lines();
    lines.map(|l| serde_json::from_str(l).unwrap()).collect()
}

#[test]
fn spots_and_hops_are_rows() {
    let all = rows(&[]);
    let kinds: Vec<&str> = all.iter().map(|r| r["kind"].as_str().unwrap()).collect();
    assert_eq!(kinds.len(), 3, "{all:?}");
    let spot = all.iter().find(|r| r["kind"] == "spot").unwrap();
    assert_eq!(
        (&spot["what"], &spot["cite"]),
        (&"gate".into(), &"tso-exposure".into())
    );
    // the margin of a share is that of a power: what is left to 100 %
    let share = spot["share"].as_f64().unwrap();
    let margin = spot["margin_db"].as_f64().unwrap();
    assert!((margin + 10.0 * share.log10()).abs() < 1e-9, "{spot}");
    assert_eq!(spot["verdict"], "met");
    let page = run(
        &examples(),
        &["overview", "link/quay.downlead", "--format", "csv"],
    );
    let hop = page
        .out
        .lines()
        .find(|l| l.contains("talk-out-2m of pellgarrow to hear of car"));
    let hop = hop.unwrap_or_else(|| panic!("{}", page.out));
    assert!(hop.contains(",met,11.2") && hop.contains(",hop,"), "{hop}");
    let text = run(
        &examples(),
        &["overview", "link/quay.downlead", "--kind", "hop"],
    )
    .out;
    assert!(text.contains("hop talk of car to talk-in-2m"), "{text}");
    assert!(
        !text.contains("NOT KNOWN") && text.contains("2 rows"),
        "{text}"
    );
}

#[test]
fn filters_go_by_papers_classes_site_and_kind() {
    for (args, count) in [
        (&["--under", "tso-14-0093"][..], 2),
        (&["--under", "other"], 0),
        (&["--class", "wide"], 2),
        (&["--class", "narrow"], 0),
        // the station itself and those on its site, whichever of them says so
        (&["--beside", "hill"], 3),
        (&["--beside", "harbour"], 3),
        (&["--beside", "no-such"], 0),
        (&["--kind", "spot"], 1),
        (&["--kind", "band", "--kind", "spot"], 3),
        (
            &["--under", "tso-14-0093", "--kind", "band", "--band", "2m"],
            1,
        ),
    ] {
        assert_eq!(rows(args).len(), count, "{args:?}");
    }
}

/// The least margin is at once that of the largest number: a share goes with the power.
#[test]
fn goals_reach_beyond_the_chain() {
    let dir = folder(&[("site.downlead", SITE)]);
    let solve = |args: &[&str]| {
        let mut all = vec!["solve", "site.downlead", "--format", "json"];
        all.extend(args);
        let r = run(dir.path(), &all);
        (
            r.code,
            r.err.clone(),
            serde_json::from_str::<Value>(&r.out).unwrap_or(Value::Null),
        )
    };
    let report = run(dir.path(), &["report", "--format", "json", "site.downlead"]).out;
    let report: Value = serde_json::from_str(&report).unwrap();
    let spot = &report["stations"][0]["exposure"]["spots"][0];
    let own = spot["sources"]
        .as_array()
        .unwrap()
        .iter()
        .find(|s| s["transmitter"] == "TX1")
        .unwrap();
    let (own, sum) = (
        own["share"].as_f64().unwrap(),
        spot["sum"].as_f64().unwrap(),
    );
    let (_, _, v) = solve(&["--vary", "TX1.power", "--for", "exposure at gate"]);
    // the neighbour's share stays: own share times a factor fills what it leaves
    let want = 18.0 * (1.0 - (sum - own)) / own;
    let just = v["just"].as_f64().unwrap();
    assert!((just / want - 1.0).abs() < 1e-6, "{just} {want}");
    assert_eq!(v["binding"], "tso-exposure at gate of hill");
    let (_, _, all) = solve(&["--vary", "TX1.power", "--for", "exposure"]);
    assert_eq!(all["just"], v["just"]);
    let (code, err, _) = solve(&["--vary", "TX1.power", "--for", "exposure at nowhere"]);
    assert_eq!(code, Some(1));
    assert!(
        err.contains("Nothing of `exposure at nowhere` depends on TX1.power"),
        "{err}"
    );
    let (code, err, _) = solve(&["--vary", "TX1.power", "--for", "margin of what"]);
    assert_eq!(code, Some(2));
    assert!(
        err.contains("is no goal") && err.contains("margin >= 0 dB in"),
        "{err}"
    );
}

/// 11.2 dB ± 2.7 dB are left (`report --link`): a receiving antenna with as much less gain just suffices.
#[test]
fn what_is_left_of_a_link_is_a_goal() {
    let r = run(
        &examples(),
        &[
            "solve",
            "link/quay.downlead",
            "--vary",
            "CA.gain",
            "--for",
            "margin >= 0 dB in hill-to-quay",
            "--format",
            "json",
        ],
    );
    let v: Value = serde_json::from_str(&r.out).unwrap_or_else(|e| panic!("{e} {}", r.err));
    let links = run(
        &examples(),
        &["report", "--link", "link/quay.downlead", "--format", "json"],
    )
    .out;
    let links: Value = serde_json::from_str(&links).unwrap();
    let left = links["links"][0]["hops"][0]["judged"]["left_db"]
        .as_f64()
        .unwrap();
    let just = v["just"].as_f64().unwrap();
    assert!((just - (2.15 - left)).abs() < 1e-6, "{just} {left}");
    assert!(
        v["binding"]
            .as_str()
            .unwrap()
            .starts_with("hill-to-quay: talk-out-2m of pellgarrow")
    );
}

#[test]
fn a_variant_is_solved_swept_and_explained() {
    let dir = folder(&[("site.downlead", SITE)]);
    let just = |args: &[&str]| {
        let mut all = vec![
            "solve",
            "site.downlead",
            "--vary",
            "TX1.power",
            "--format",
            "json",
        ];
        all.extend(args);
        let r = run(dir.path(), &all);
        let v: Value = serde_json::from_str(&r.out).unwrap_or_else(|e| panic!("{e} {}", r.err));
        v["just"].as_f64().unwrap()
    };
    // less cable, less loss: less power is allowed, by the loss of 26 m
    let (base, variant) = (just(&[]), just(&["--variant", "less-run"]));
    let db = 10.0 * (base / variant).log10();
    // half-inch-foam at 146.9137 MHz: 0.2206 √f + 0.00072 f dB/100 m, its entry in the library
    let want = 0.26 * (0.2206 * 146.9137_f64.sqrt() + 0.00072 * 146.9137);
    assert!((db - want).abs() < 0.01, "{db} {want}");
    let sweep = |args: &[&str]| {
        let mut all = vec![
            "sweep",
            "site.downlead",
            "--over",
            "TX1.power",
            "--from",
            "18",
            "--to",
            "20",
            "--steps",
            "2",
        ];
        all.extend(args);
        run(dir.path(), &all).out
    };
    assert_ne!(sweep(&[]), sweep(&["--variant", "less-run"]));
    // the line of M1
    let line = SITE.lines().position(|l| l.contains("run M1")).unwrap() + 1;
    let at = format!("site.downlead:{line}");
    let explained = |args: &[&str]| {
        let mut all = vec!["explain", at.as_str()];
        all.extend(args);
        run(dir.path(), &all)
    };
    assert!(explained(&[]).out.contains("46"), "{}", explained(&[]).out);
    assert!(explained(&["--variant", "less-run"]).out.contains("20"));
    for args in [
        &[
            "solve",
            "site.downlead",
            "--vary",
            "TX1.power",
            "--variant",
            "none",
        ][..],
        &[
            "sweep",
            "site.downlead",
            "--over",
            "TX1.power",
            "--from",
            "1",
            "--to",
            "2",
            "--variant",
            "none",
        ],
        &["explain", at.as_str(), "--variant", "none"],
    ] {
        let r = run(dir.path(), args);
        assert_eq!(r.code, Some(2), "{args:?}");
        assert!(r.err.contains("there are less-run"), "{}", r.err);
    }
}

/// Half-inch foam loses 0.2206 √f + 0.00072 f dB/100 m (its entry): 2.278 dB/100 m at 100 MHz, so 0.911 dB
/// in 40 m, and 100 W become 81.1 W.
#[test]
fn cables_stand_beside_each_other_at_a_length() {
    let dir = folder(&[]);
    let table = |args: &[&str]| {
        let mut all = vec!["catalogue"];
        all.extend(args);
        run(dir.path(), &all)
    };
    let r = table(&[
        "half-inch-foam",
        "seven-eighths-foam",
        "--length",
        "40 m",
        "--at",
        "100 MHz",
    ]);
    assert_eq!(r.code, Some(0), "{}", r.err);
    let row = |name: &str| {
        r.out
            .lines()
            .find(|l| l.contains(name))
            .unwrap_or_else(|| panic!("{}", r.out))
            .to_owned()
    };
    let first = row("half-inch-foam");
    assert!(
        first.contains("0.91 dB ± 0.09 dB") && first.contains("81.1 W"),
        "{first}"
    );
    let second = row("seven-eighths-foam");
    assert!(
        second.contains(" dB ± ") && second.contains('-'),
        "{second}"
    );
    assert!(r.out.contains("100 W into the cable"), "{}", r.out);
    let half = table(&[
        "half-inch-foam",
        "--length",
        "40 m",
        "--power",
        "50 W",
        "--at",
        "100 MHz",
    ])
    .out;
    assert!(half.contains("40.5 W"), "{half}");
    // one cable beside itself has one error
    let twice = table(&[
        "half-inch-foam",
        "half-inch-foam",
        "--length",
        "40 m",
        "--at",
        "100 MHz",
    ])
    .out;
    assert!(twice.contains("0.00 dB ± 0.00 dB"), "{twice}");
    for (args, said) in [
        (
            &["half-inch-foam", "seven-eighths-foam"][..],
            "add for example --length",
        ),
        (
            &["half-inch-foam", "no-such", "--length", "40 m"],
            "not in the catalogue",
        ),
        (
            &["half-inch-foam", "n-pair", "--length", "40 m"],
            "losses are compared of cables",
        ),
        (&["--length", "40 m"], "needs the names of cables"),
        (
            &["half-inch-foam", "--length", "40 m", "--power", "5 m"],
            "not a power above zero",
        ),
        (&["half-inch-foam", "--length", "long"], "--length"),
    ] {
        let r = table(args);
        assert_eq!(r.code, Some(2), "{args:?} {}", r.out);
        assert!(r.err.contains(said), "{args:?}: {}", r.err);
    }
}

#[test]
fn rule_sets_are_listed() {
    let dir = folder(&[]);
    let r = run(dir.path(), &["catalogue", "--kind", "rules"]);
    assert_eq!(r.code, Some(0), "{}", r.err);
    assert!(
        r.out.contains("us-amateur") && !r.out.contains("half-inch-foam"),
        "{}",
        r.out
    );
    let one = run(dir.path(), &["catalogue", "cept-pmr446"]).out;
    assert!(
        one.contains("jurisdiction cept") && !one.contains("source: none"),
        "{one}"
    );
}
