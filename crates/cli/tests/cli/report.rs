//! `report`: every format on the examples, against snapshots and against itself.

use serde_json::Value;

use crate::{GOOD, examples, folder, run, run_with};

#[test]
fn text_of_the_quick_question() {
    let dir = folder(&[("a.downlead", GOOD)]);
    let r = run(dir.path(), &["report", "a.downlead"]);
    assert_eq!(r.code, Some(0), "{}", r.err);
    insta::assert_snapshot!("quick-text", r.out);
    let r = run(
        dir.path(),
        &["report", "a.downlead", "--format", "markdown"],
    );
    insta::assert_snapshot!("quick-markdown", r.out);
}

#[test]
fn text_of_the_hill() {
    for file in ["rev3", "rev4"] {
        let r = run(
            &examples(),
            &["report", &format!("pellgarrow/{file}.downlead")],
        );
        assert_ne!(r.code, Some(2), "{}", r.err);
        insta::assert_snapshot!(format!("{file}-text"), r.out);
    }
}

#[test]
fn json_and_tables_of_the_hill() {
    let file = "pellgarrow/rev4.downlead";
    insta::assert_snapshot!(
        "rev4-json",
        run(&examples(), &["report", file, "--format", "json"]).out
    );
    for table in ["nodes", "limits", "readings", "budget", "chains"] {
        let r = run(
            &examples(),
            &["report", file, "--format", "csv", "--table", table],
        );
        insta::assert_snapshot!(format!("rev4-{table}"), r.out);
    }
}

#[test]
fn all_examples_fit_the_schema() {
    let schema: Value =
        serde_json::from_str(&run(&examples(), &["report", "--schema"]).out).unwrap();
    let r = run(&examples(), &["report", ".", "--format", "json"]);
    let report: Value = serde_json::from_str(&r.out).unwrap();
    assert!(report["stations"].as_array().unwrap().len() > 3);
    fits(&report, &schema, &schema, "report");
}

/// Whether `value` has the fields and types of `schema`: the part of JSON Schema our schema uses.
pub(crate) fn fits(value: &Value, schema: &Value, whole: &Value, at: &str) {
    if let Some(target) = schema["$ref"].as_str() {
        let target = whole
            .pointer(target.trim_start_matches('#'))
            .unwrap_or_else(|| panic!("{at}: {target}"));
        return fits(value, target, whole, at);
    }
    if let Some(any) = schema["anyOf"].as_array() {
        let null = value.is_null() && any.iter().any(|s| s["type"] == "null");
        if !null {
            fits(value, &any[0], whole, at);
        }
        return;
    }
    let types: Vec<&str> = match &schema["type"] {
        Value::String(one) => vec![one.as_str()],
        Value::Array(all) => all.iter().filter_map(Value::as_str).collect(),
        other => panic!("{at}: a schema without a type: {other}"),
    };
    let kind = match value {
        Value::Null => "null",
        Value::Bool(_) => "boolean",
        Value::Number(n) if n.is_u64() && types.contains(&"integer") => "integer",
        Value::Number(_) => "number",
        Value::String(_) => "string",
        Value::Array(_) => "array",
        Value::Object(_) => "object",
    };
    assert!(types.contains(&kind), "{at}: {kind} where {types:?} is due");
    if let Value::Object(fields) = value {
        for required in schema["required"].as_array().into_iter().flatten() {
            assert!(
                fields.contains_key(required.as_str().unwrap()),
                "{at}: no {required}"
            );
        }
        for (name, field) in fields {
            let known = &schema["properties"][name];
            assert!(!known.is_null(), "{at}.{name}: not in the schema");
            fits(field, known, whole, &format!("{at}.{name}"));
        }
    }
    if let Value::Array(items) = value
        && !schema["items"].is_null()
    {
        for (i, item) in items.iter().enumerate() {
            fits(item, &schema["items"], whole, &format!("{at}[{i}]"));
        }
    }
}

#[test]
fn the_same_file_gives_the_same_bytes() {
    for format in ["text", "json", "csv", "markdown", "html"] {
        let one = run(
            &examples(),
            &["report", "pellgarrow/rev4.downlead", "--format", format],
        );
        let two = run(
            &examples(),
            &["report", "pellgarrow/rev4.downlead", "--format", format],
        );
        assert!(one.out == two.out && !one.out.is_empty(), "{format}");
    }
}

#[test]
fn a_broken_line_costs_that_line_only() {
    let text = GOOD.replace(
        "    connector 4 of n-pair",
        "    connector 4 of of n-pair £",
    );
    let dir = folder(&[("a.downlead", &text)]);
    let r = run(dir.path(), &["report", "a.downlead"]);
    assert_eq!(r.code, Some(1));
    // the parts around it keep their losses, and no total pretends that it is not there
    assert!(
        r.out.contains("half-inch-foam") && !r.out.contains("EIRP"),
        "{}",
        r.out
    );
    assert!(r.out.contains("loss              not known"), "{}", r.out);
    assert!(r.err.contains("a.downlead:4:"), "{}", r.err);
}

/// Whatever the format, nothing is said of what depends on a part that could not be computed.
#[test]
fn no_total_leaves_an_unknown_part_out() {
    let text = "chain what-if on 145.3 MHz {\n    transmitter 32 W carrier, fm\n    run 30 m of nope\n    antenna 4.9 dBi, swr 1.3\n    limit 30 W erp carrier, \"x\"\n}\n";
    let dir = folder(&[("a.downlead", text)]);
    let of = |args: &[&str]| run(dir.path(), &[args, &["a.downlead"]].concat()).out;
    let shown = of(&["report"]);
    assert!(shown.contains("loss              not known"), "{shown}");
    assert!(shown.contains("transmitter sees  SWR not known"), "{shown}");
    for format in ["text", "markdown"] {
        let shown = of(&["report", "--format", format]);
        for word in ["ERP", "EIRP", "1.00", "limit", "uncertainty", "± 0"] {
            let told = shown
                .lines()
                .filter(|l| l.contains(word) && !l.contains("SWR 1:1"))
                .filter(|l| !l.contains("not judged"));
            assert_eq!(told.count(), 0, "{word}: {shown}");
        }
        // the first lines say that the limit has no verdict, and why
        let top: Vec<&str> = shown.lines().take(6).collect();
        let top = top.join("\n");
        assert!(top.contains("? not judged"), "{shown}");
        assert!(top.contains("1 error in a.downlead"), "{shown}");
    }
    let value: serde_json::Value =
        serde_json::from_str(&of(&["report", "--format", "json"])).unwrap();
    let band = &value["stations"][0]["chains"][0]["bands"][0];
    assert_eq!(band["complete"], false);
    assert_eq!(
        band["limits_not_judged"],
        serde_json::json!([{ "quantity": "erp", "limit_w": 30.0, "file": "a.downlead", "line": 5 }])
    );
    for field in [
        "total_loss_db",
        "uncertainty_db",
        "transmitter_swr",
        "antenna_w",
        "erp_w",
        "eirp_w",
        "method",
        "loss_floor_db",
    ] {
        assert!(band.get(field).is_none(), "{field}: {band}");
    }
    let table = of(&["report", "--format", "csv", "--table", "chains"]);
    let row = table.lines().nth(1).unwrap();
    assert!(
        row.contains(",false,fixed-forward,,,,,,,,,,,,,,a.downlead,1"),
        "{row}"
    );
    let card = of(&["card"]);
    let at = card
        .lines()
        .find(|l| l.trim_start().starts_with("before antenna"))
        .unwrap();
    assert!(at.contains("not known") && !at.contains('W'), "{card}");
    let told = run(dir.path(), &["explain", "a.downlead:1"]).out;
    assert!(told.contains("not known") && !told.contains("dB"), "{told}");
}

#[test]
fn each_result_stands_beside_random_draws() {
    let verify = |more: &[&str]| {
        let args = [
            "report",
            "--verify",
            "--draws",
            "20000",
            "hf-multiband.downlead",
        ];
        run(&examples(), &[&args, more].concat())
    };
    let shown = verify(&[]);
    assert_eq!(shown.code, Some(0), "{}", shown.err);
    insta::assert_snapshot!("verify-text", shown.out);
    let value: Value = serde_json::from_str(&verify(&["--format", "json"]).out).unwrap();
    assert_eq!(value["schema"], "downlead-verify/1");
    let first = &value["chains"][0]["compared"];
    let (report, drawn) = (&first["reported"], &first["drawn"]);
    let mean = |x: &Value| x["mean"].as_f64().unwrap();
    assert!((mean(report) / mean(drawn) - 1.0).abs() < 0.002, "{first}");
    let table = verify(&["--format", "csv"]).out;
    let rows: Vec<&str> = table.lines().collect();
    assert_eq!(
        rows.len(),
        1 + 3 * value["chains"].as_array().unwrap().len()
    );
    assert!(rows[3].contains(",draws,draws,20000,"), "{table}");
    let markdown = verify(&["--format", "markdown"]).out;
    assert!(markdown.contains("| 20000 random draws "), "{markdown}");
    let schema: Value =
        serde_json::from_str(&run(&examples(), &["report", "--verify", "--schema"]).out).unwrap();
    fits(&value, &schema, &schema, "verify");
    // what it cannot go with, and too few draws
    for args in [
        vec!["--draws", "5000"],
        vec!["--verify", "--table", "nodes"],
        vec!["--verify", "--draws", "10"],
    ] {
        let refused = run(
            &examples(),
            &[vec!["report", "quick.downlead"], args].concat(),
        );
        assert_eq!(refused.code, Some(2), "{}", refused.out);
    }
}

#[test]
fn a_file_without_chains_says_so() {
    let dir = folder(&[("a.downlead", "let mast = 30 m\n")]);
    let r = run(dir.path(), &["report", "a.downlead"]);
    assert_eq!(r.code, Some(0));
    assert!(r.out.starts_with("No chain"), "{}", r.out);
}

#[test]
fn trends_of_a_log_are_drawn() {
    let dir = tempfile::tempdir().unwrap();
    let hill = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/../../examples/site-log/hill.downlead"
    );
    let plots = dir.path().join("plots");
    let r = run(
        dir.path(),
        &["report", hill, "--plot", plots.to_str().unwrap()],
    );
    assert_eq!(r.code, Some(0), "{}", r.err);
    let mut names: Vec<String> = std::fs::read_dir(&plots)
        .unwrap()
        .map(|f| f.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    assert_eq!(names, ["log-SP1-70cm-forward.svg", "log-SP1-70cm-swr.svg"]);
    let swr = std::fs::read_to_string(plots.join(&names[1])).unwrap();
    assert!(swr.contains("SWR after SP1 on 70cm"), "{swr}");
    assert!(swr.contains("falling"), "{swr}");
    let none = run(
        dir.path(),
        &[
            "report",
            hill.replace("site-log/hill", "quick").as_str(),
            "--plot",
            "p",
        ],
    );
    assert_eq!(none.code, Some(2), "{}", none.err);
}

/// A page of HTML is complete in itself, and each of its rows leads to a line that exists.
#[test]
fn pages_load_nothing_and_lead_to_lines_that_exist() {
    for args in [
        ["report", "pellgarrow/rev4.downlead"],
        ["report", "stacked.downlead"],
        ["bench", "bench/four-cables.downlead"],
        ["card", "pellgarrow/rev4.downlead"],
    ] {
        let page = run(&examples(), &[&args[..], &["--format", "html"]].concat()).out;
        assert!(page.starts_with("<!DOCTYPE html>"), "{args:?}");
        for bad in [
            "<script", "http:", "https:", "url(", "@import", "src=", "href=",
        ] {
            assert!(!page.contains(bad), "{args:?}: {bad}");
        }
        // what is opened is closed again
        for tag in ["table", "tr", "td", "th", "dl", "h1", "h2", "div", "p", "b"] {
            let opened = page.matches(&format!("<{tag}>")).count()
                + page.matches(&format!("<{tag} ")).count();
            assert_eq!(opened, page.matches(&format!("</{tag}>")).count(), "{tag}");
        }
        let places: Vec<&str> = page
            .split("data-at=\"")
            .skip(1)
            .filter_map(|p| p.split('"').next())
            .collect();
        assert!(places.len() > 1, "{args:?}: {places:?}");
        for place in places {
            let (file, line) = place.rsplit_once(':').unwrap();
            let text = std::fs::read_to_string(examples().join(file))
                .or_else(|_| {
                    // a used file is named from the folder of the file that uses it
                    let folder = std::path::Path::new(args[1]).parent().unwrap();
                    std::fs::read_to_string(examples().join(folder).join(file))
                })
                .unwrap_or_else(|e| panic!("{place}: {e}"));
            let line: usize = line.parse().unwrap();
            assert!(line >= 1 && line <= text.lines().count(), "{place}");
        }
    }
}

/// Whatever is asked, the first lines say how it ends.
#[test]
fn every_page_opens_with_its_conclusion() {
    let opening = |args: &[&str]| -> String {
        let out = run(&examples(), args).out;
        out.lines().take(6).collect::<Vec<_>>().join("\n")
    };
    let report = opening(&["report", "pellgarrow/rev4.downlead"]);
    for words in [
        "limit 30 W  ✓ met, 0.85 dB left",
        "needs -115.5 dBm",
        "2 readings agree",
    ] {
        assert!(report.contains(words), "{words}: {report}");
    }
    let report = opening(&["report", "pellgarrow/rev1.downlead"]);
    assert!(report.contains("? cannot tell, 0.52 dB under"), "{report}");
    let bench = opening(&["bench", "bench/four-cables.downlead"]);
    for words in ["loses 1.33 ± 0.06 times", "D < C < B < A", "✗ differs"] {
        assert!(bench.contains(words), "{words}: {bench}");
    }
    // of many bands the first few, and how many more there are
    let many = opening(&["report", "shack/shack.downlead"]);
    assert!(many.contains("and 5 more below"), "{many}");
    let narrow = run_with(
        &examples(),
        &["report", "pellgarrow/rev4.downlead"],
        &[("COLUMNS", "60")],
    );
    let line = narrow.out.lines().nth(1).unwrap();
    assert_eq!(
        line,
        "  2m talk-out    24.7 W ERP of 30 W  ✓ met by 0.85 dB"
    );
    // below 50 columns a conclusion wraps and keeps all of its words
    for columns in ["45", "40"] {
        let args = ["report", "pellgarrow/rev4.downlead"];
        let r = run_with(&examples(), &args, &[("COLUMNS", columns)]);
        let top = r.out.split("\n\n").next().unwrap();
        let top = top.split_whitespace().collect::<Vec<_>>().join(" ");
        assert_eq!(top.matches("✓ met").count(), 2, "{columns}: {top}");
        assert!(
            top.contains("limit 20 W ✓ met, 1.07 dB left, U 0.78 dB TSO 14-0093 clause 5"),
            "{columns}: {top}"
        );
        assert!(!r.out.contains('…'), "{columns}: {}", r.out);
    }
}

/// A rating that is exceeded is said before the tables.
#[test]
fn a_rating_that_is_exceeded_is_said_first() {
    let text = "station s {\n    transmitter TX1 100 W carrier, fm\n    pad P1 1 dB, rating 20 W\n    antenna A1 4.9 dBi, swr 1.3\n    chain out on 145.3 MHz {\n        TX1\n        P1\n        A1\n    }\n}\n";
    let dir = folder(&[("a.downlead", text)]);
    let out = run(dir.path(), &["report", "a.downlead"]).out;
    let top = out.split("part ").next().unwrap();
    assert!(top.contains("! "), "{out}");
    assert!(
        top.contains(
            "P1 gets 98.9 W mean power on 145.3 MHz and is good for 20.0 W there. a.downlead:7"
        ),
        "{out}"
    );
    // the same finding is no error of the text
    assert!(!top.contains("1 error in"), "{out}");
}

/// A repeater whose neighbour is one split above it, by hand: 2 · 146.9137 − 147.5137 = 146.3137.
const SITE: &str = "station hill {
    beside harbour
    transmitter TX1 { power 15 W ± 5 % carrier; mode fm; bandwidth 11 kHz }
    receiver RX1 { sensitivity -119 dBm for 12 dB sinad; bandwidth 12.6 kHz }
    antenna A1 4.5 dBi ± 0.5 dB
    antenna A2 4.5 dBi ± 0.5 dB
    chain out on 146.9137 MHz { TX1; run 28 m of half-inch-foam; A1 }
    chain in on 146.3137 MHz receive { A2; run 28 m of half-inch-foam; RX1 }
}
station harbour {
    chain data on 147.5137 MHz {
        transmitter H1 25 W ± 10 % carrier, fm, guess
        run 12 m of half-inch-foam
        antenna 2.15 dBi ± 1 dB
    }
    chain wide on vhf {
        transmitter H2 5 W ± 10 % carrier, fm, guess
        run 12 m of half-inch-foam
        antenna 2.15 dBi ± 1 dB
    }
}
band vhf 144 MHz to 148 MHz
";

#[test]
fn the_site_lists_what_was_searched() {
    let dir = folder(&[("a.downlead", SITE)]);
    let r = run(dir.path(), &["report", "a.downlead", "--site"]);
    assert_eq!(r.code, Some(0), "{}", r.err);
    insta::assert_snapshot!("site-text", r.out);
    let json = run(dir.path(), &["report", "a.downlead", "--format", "json"]);
    let json: Value = serde_json::from_str(&json.out).unwrap();
    let site = &json["stations"][0]["site"];
    assert_eq!(site["carriers"].as_array().unwrap().len(), 2);
    assert_eq!(site["not_searched"][0]["why"], "range");
    let hit = &site["intermodulation"][0];
    assert_eq!(hit["product"], "2 TX1 - H1 of harbour");
    assert_eq!(hit["order"], 3);
    assert_eq!(hit["width_hz"], 22e3);
    let csv = run(
        dir.path(),
        &["report", "a.downlead", "--site", "--format", "csv"],
    );
    assert_eq!(csv.code, Some(0), "{}", csv.err);
    insta::assert_snapshot!("site-csv", csv.out);
}
