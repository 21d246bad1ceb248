//! `recall`: planted dependencies are all found, and no others; what flips is what arithmetic says.

use std::collections::BTreeSet;

use serde_json::Value;

use crate::{folder, run};

const METERS: &str = "\
instrument W1 \"wattmeter\" {
    accuracy 5 % of reading
}
instrument W2 { accuracy 5 % of reading }
instrument W3 { accuracy 5 % of reading }
cable own-foam { loss 0.4 dB/100 m/sqrt(MHz) + 0.0016 dB/100 m/MHz; accuracy 5 % k 2; source \"club sheet 12\" }
cable other { loss 0.5 dB/100 m/sqrt(MHz) + 0.0016 dB/100 m/MHz; accuracy 5 % k 2; source \"club sheet 13\" }
";

/// What is planted in a station.
#[derive(Clone, Copy, PartialEq)]
enum Planted {
    /// A reading with W1 after the day, W.
    Reading(u32),
    /// One before the day.
    Early,
    /// The power of the transmitter was read with W1.
    Power,
    /// A row of a log with W1, and one before the day.
    Log,
    /// All with W2, and W1 only in a title.
    Other,
}

fn station(i: usize, p: Planted) -> (String, Option<String>) {
    let cable = if i.is_multiple_of(4) {
        "own-foam"
    } else {
        "other"
    };
    let (power, line, log) = match p {
        Planted::Reading(w) => ("20 W ± 5 %", format!("read {w} W forward, 2026-03-04 with W1 by QY2TEC"), None),
        Planted::Early => ("20 W ± 5 %", "read 20 W forward, 2025-12-31 with W1 by QY2TEC".to_owned(), None),
        Planted::Power => ("20 W", "read 20 W forward, 2026-03-04 with W2 by QY2TEC".to_owned(), None),
        Planted::Log => (
            "20 W ± 5 %",
            format!("readings from \"log{i}.csv\""),
            Some("after,band,date,forward_w,instrument,person\nTX1,2m,2025-06-11,20.1,W1,QY2TEC\nTX1,2m,2026-02-11,20.4,W1,QY2TEC\n".to_owned()),
        ),
        Planted::Other => ("20 W ± 5 %", "read 24 W forward, 2026-03-04 with W2 by QY2TEC".to_owned(), None),
    };
    let from = if p == Planted::Power {
        ", 2026-03-01 with W1 by QY2TEC"
    } else {
        ""
    };
    let text = format!(
        "use \"../meters.downlead\"\nband 2m 145.3 MHz\nstation site{i} \"Site {i}, seen with W1\" {{\n    transmitter TX1 {power} carrier{from}\n    \
         run M1 28 m of {cable}\n    antenna A1 4.5 dBi ± 0.5 dB\n    chain talk{i} on 2m {{\n        TX1\n        {line}\n        M1\n        A1\n        \
         limit 60 W erp, \"TSO 14\"\n    }}\n}}\n"
    );
    (text, log)
}

fn planted(i: usize) -> Planted {
    match i % 7 {
        0 => Planted::Reading(24),
        1 => Planted::Early,
        2 => Planted::Power,
        3 => Planted::Log,
        4 => Planted::Other,
        5 => Planted::Reading(20),
        _ => Planted::Reading(40),
    }
}

fn files(n: usize) -> Vec<(String, String)> {
    let mut out = vec![
        (".downlead-root".to_owned(), String::new()),
        ("meters.downlead".to_owned(), METERS.to_owned()),
    ];
    for i in 0..n {
        let (text, log) = station(i, planted(i));
        out.push((format!("s/site{i:03}.downlead"), text));
        out.extend(log.map(|l| (format!("s/log{i}.csv"), l)));
    }
    // one meter: its error cancels; two: it does not; before the day: it does not rest on it
    for (name, date, head, row) in [
        ("one", "2026-05-01", "W1", "through A 30.1 W at 2 min"),
        (
            "two",
            "2026-05-01",
            "W2",
            "through A 30.1 W with W1 at 2 min",
        ),
        (
            "early",
            "2025-05-01",
            "W2",
            "through A 30.1 W with W1 at 2 min",
        ),
    ] {
        let text = format!(
            "use \"../meters.downlead\"\nsession {name} {{\n    read {date} with {head} by QY5BEN\n    temperature 20 °C\n    piece A 20 m of other\n    \
             readings on 145.3 MHz {{\n        baseline 44.0 W at 0 min\n        {row}\n        baseline 44.0 W at 4 min\n    }}\n}}\n"
        );
        out.push((format!("b/{name}.downlead"), text));
    }
    out
}

fn recalled(n: usize, args: &[&str]) -> Value {
    let all = files(n);
    let all: Vec<(&str, &str)> = all.iter().map(|(a, b)| (a.as_str(), b.as_str())).collect();
    let dir = folder(&all);
    let r = run(
        dir.path(),
        &[&["recall"], args, &["--format", "json"]].concat(),
    );
    assert!(r.code == Some(0) || r.code == Some(1), "{}", r.err);
    serde_json::from_str(&r.out).unwrap()
}

fn of(rows: &Value, pick: impl Fn(&Value) -> bool) -> BTreeSet<String> {
    let rows = rows["rows"].as_array().unwrap().iter();
    rows.filter(|r| pick(r))
        .map(|r| r["of"].as_str().unwrap().to_owned())
        .collect()
}

const N: usize = 84;

#[test]
fn planted_dependencies_are_all_found_and_no_others() {
    let got = recalled(N, &["W1", "+20", "%", "since", "2026-01"]);
    let due = |pick: &dyn Fn(Planted) -> bool| -> BTreeSet<String> {
        (0..N)
            .filter(|i| pick(planted(*i)))
            .map(|i| format!("site{i}"))
            .collect()
    };
    let sites = |pick: &dyn Fn(&Value) -> bool| {
        of(&got, |r| {
            r["of"].as_str().unwrap().starts_with("site") && pick(r)
        })
    };
    let rests = |p: Planted| matches!(p, Planted::Reading(_) | Planted::Power | Planted::Log);
    assert_eq!(sites(&|_| true), due(&rests));
    // one row a reading, no more; of a log the row after the day only
    let readings = got["rows"].as_array().unwrap().iter();
    let readings: Vec<&Value> = readings
        .filter(|r| ["reading", "log reading"].contains(&r["what"].as_str().unwrap()))
        .collect();
    let expected = (0..N).filter(|i| rests(planted(*i))).count();
    assert_eq!(readings.len(), expected);
    for r in &readings {
        if r["what"] == "log reading" {
            assert_eq!(r["about"], "forward, 2026-02-11");
        }
    }
    // 24 W: +0.79 dB, then 0; 20 W: 0, then -0.79; 40 W: +3.0, then +2.2; U is about 0.4 dB
    let flips = sites(&|r| r["effect"] == "flips" && r["what"] == "reading");
    let flipping = |p: Planted| matches!(p, Planted::Reading(24 | 20) | Planted::Power);
    assert_eq!(flips, due(&flipping));
    for r in &readings {
        let site: usize = r["of"].as_str().unwrap()[4..].parse().unwrap();
        let Planted::Reading(w) = planted(site) else {
            continue;
        };
        let w = f64::from(w);
        for (key, watts) in [("value", w), ("value_recalled", w / 1.2)] {
            let due = 10.0 * (watts / 20.0).log10();
            assert!((r[key].as_f64().unwrap() - due).abs() < 1e-9, "{r}");
        }
    }
    // a power that was read moves what is radiated and its limit: 20 W less 20 %
    let limits = sites(&|r| r["what"] == "limit");
    assert_eq!(limits, due(&|p| p == Planted::Power));
    let sessions = of(&got, |r| !r["of"].as_str().unwrap().starts_with("site"));
    assert_eq!(sessions, ["one", "two"].map(str::to_owned).into());
    assert_eq!(
        of(&got, |r| r["effect"] == "cancels"),
        ["one".to_owned()].into()
    );
    let mut two = got["rows"].as_array().unwrap().iter();
    let two = two
        .find(|r| r["of"] == "two" && r["what"] == "result")
        .unwrap();
    let more = two["value_recalled"].as_f64().unwrap() - two["value"].as_f64().unwrap();
    assert!((more - 10.0 * 1.2_f64.log10()).abs() < 1e-9);
}

#[test]
fn a_sheet_reaches_the_stations_of_its_cable() {
    let got = recalled(N, &["own-foam", "+6", "%"]);
    let due: BTreeSet<String> = (0..N)
        .filter(|i| i % 4 == 0)
        .map(|i| format!("site{i}"))
        .collect();
    assert_eq!(of(&got, |_| true), due);
    // 28 m of 0.4 √f + 0.0016 f dB/100 m, 6 % more: the ERP falls by that
    let loss = 0.28 * (0.4 * 145.3_f64.sqrt() + 0.0016 * 145.3);
    let rows = got["rows"].as_array().unwrap();
    let erp: Vec<&Value> = rows.iter().filter(|r| r["figure"] == "erp_w").collect();
    assert_eq!(erp.len(), due.len());
    for r in erp {
        let fall =
            10.0 * (r["value"].as_f64().unwrap() / r["value_recalled"].as_f64().unwrap()).log10();
        assert!(
            (fall - 0.06 * loss).abs() < 2e-3,
            "{fall} for {}",
            0.06 * loss
        );
    }
    // of the library too
    let dir = folder(&[(
        "a.downlead",
        "chain c on 145.3 MHz {\n    transmitter 20 W carrier\n    run 28 m of rg-213\n    antenna 4 dBi\n}\n",
    )]);
    let r = run(
        dir.path(),
        &["recall", "rg-213", "+6", "%", "--format", "csv"],
    );
    assert_eq!(r.out.lines().count(), 2, "{} {}", r.out, r.err);
}

#[test]
fn what_cannot_be_recalled_is_said() {
    let dir = folder(&[(
        "a.downlead",
        "instrument W1 {\n    accuracy 5 % of reading\n    recalled +2 %\n}\nchain c on 145.3 MHz {\n    transmitter 20 W carrier\n    read 20 W forward, 2026-01-01 with W1 by QY2TEC\n    antenna 4 dBi\n}\n",
    )]);
    for (args, words) in [
        (&["rg-2133", "+6", "%"][..], "did you mean `rg-213`?"),
        (&["W1", "+6", "%"], "says already that it was recalled"),
        (&["W1", "six"], "no share in percent"),
        (&["W1", "+6", "%", "since", "spring"], "no date"),
        (
            &["rg-213", "+6", "%", "since", "2026-01"],
            "leave `since` out",
        ),
    ] {
        let r = run(dir.path(), &[&["recall"], args].concat());
        assert_eq!(r.code, Some(2), "{args:?}: {}", r.out);
        assert!(r.err.contains(words), "{args:?}: {}", r.err);
    }
}
