//! Bench sessions: the demo session's 36 verdicts with both meters, in the language.
//!
//! The demo data are invented (see `examples/bench`); what they must come to was worked out
//! beside the project, and `crates/physics/tests/data/bench_results.csv` holds it.

use downlead_eval::Snapshot;
use downlead_eval::bench::result::SessionResult;
use downlead_physics::measure::Verdict;
use downlead_testkit::Files;

const CABLES: &str = include_str!("../../../examples/thrennock/cables.downlead");
const READINGS: &str = include_str!("../../../examples/bench/july.csv");
const SESSION: &str = include_str!("../../../examples/bench/four-cables.downlead");
const EXPECTED: &str = include_str!("../../physics/tests/data/bench_results.csv");

struct Row {
    cable: String,
    band: String,
    measured: f64,
    naive: f64,
    expected: f64,
    difference: f64,
    u_independent: f64,
    u_same: f64,
    independent: String,
    same: String,
    per100: f64,
}

fn rows() -> Vec<Row> {
    let mut lines = EXPECTED.lines().filter(|l| !l.starts_with('#'));
    let head: Vec<&str> = lines.next().unwrap_or("").split(',').collect();
    lines
        .map(|l| {
            let cells: Vec<&str> = l.split(',').collect();
            let text = |name: &str| {
                let i = head.iter().position(|h| *h == name);
                i.and_then(|i| cells.get(i)).map_or("", |c| c).to_owned()
            };
            let n = |name: &str| text(name).parse::<f64>().unwrap_or(f64::NAN);
            Row {
                cable: text("cable"),
                band: text("band"),
                measured: n("meas_dB"),
                naive: n("naive_dB"),
                expected: n("exp_dB"),
                difference: n("diff_dB"),
                u_independent: n("U_5pct"),
                u_same: n("U_same"),
                independent: text("verdict_5pct"),
                same: text("verdict_same"),
                per100: n("per100"),
            }
        })
        .collect()
}

fn computed(session: &str, readings: &str) -> (SessionResult, Vec<String>) {
    // the table takes the ± 50 % of a join's loss as its standard uncertainty
    let joins = "connector demo-pair { family n; loss 0.05 dB ± 50 % k 1 at 1 GHz }\n\n";
    let session = &session
        .replace("2 of n-pair", "2 of demo-pair")
        .replace("instrument W3", &format!("{joins}instrument W3"));
    let s = Snapshot::load(
        &["bench/four-cables.downlead".to_owned()],
        &Files::default()
            .with("bench/four-cables.downlead", session)
            .with("bench/july.csv", readings)
            .with("thrennock/cables.downlead", CABLES),
    );
    let said = s
        .diagnostics()
        .iter()
        .map(|d| format!("{}: {}", d.code.id, d.message))
        .collect();
    let result = s.scopes()[0]
        .items()
        .iter()
        .find_map(|(_, _, r)| r.session.as_deref().cloned());
    match result {
        Some(r) => (r, said),
        None => panic!("no session: {said:?}"),
    }
}

fn word(v: Verdict) -> &'static str {
    match v {
        Verdict::Agrees => "agrees",
        Verdict::Differs => "differs",
        Verdict::CannotTell => "cannot tell",
    }
}

fn compare(r: &SessionResult, verdict: impl Fn(&Row) -> &str, u: impl Fn(&Row) -> f64) {
    let rows = rows();
    assert_eq!(rows.len(), 36);
    let mut wrong = Vec::new();
    for row in &rows {
        let cell = r
            .cells
            .iter()
            .find(|c| *r.pieces[c.piece].name == *row.cable && *r.bands[c.band].band == *row.band);
        let Some(c) = cell else {
            wrong.push(format!("{} {}: no result", row.cable, row.band));
            continue;
        };
        let (Some(e), Some(x)) = (c.expected, &c.comparison) else {
            wrong.push(format!("{} {}: nothing expected", row.cable, row.band));
            continue;
        };
        let mut check = |what: &str, got: f64, want: f64, within: f64| {
            if (got - want).abs() > within {
                wrong.push(format!(
                    "{} {} {what}: {got:.4}, not {want:.4}",
                    row.cable, row.band
                ));
            }
        };
        check("measured", c.measured.db, row.measured, 0.0006);
        check("naive", c.measured.naive_db, row.naive, 0.0006);
        check("expected", e.db, row.expected, 0.0006);
        check("difference", x.difference_db, row.difference, 0.001);
        check("U", x.expanded_db, u(row), 0.003);
        // the table divides by the length with the joins in it
        let length = r.pieces[c.piece].length_m.map_or(f64::NAN, |l| l.0);
        check(
            "per 100 m",
            c.measured.db / length * 100.0,
            row.per100,
            0.01,
        );
        if word(x.verdict) != verdict(row) {
            wrong.push(format!(
                "{} {}: {}, not {}",
                row.cable,
                row.band,
                word(x.verdict),
                verdict(row)
            ));
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn one_meter_tells_which_cable_is_wet() {
    let (r, said) = computed(SESSION, READINGS);
    compare(&r, |row| &row.same, |row| row.u_same);
    let differs: Vec<&String> = said
        .iter()
        .filter(|m| m.starts_with("cable-differs"))
        .collect();
    assert_eq!(differs.len(), 1, "{said:?}");
    assert!(differs[0].contains("`A`"), "{said:?}");
}

#[test]
fn two_meters_of_five_percent_mostly_cannot() {
    // the baseline read with one meter, the pieces with another of the same class
    let text = SESSION
        .replace("    linearity 1 % of reading\n", "")
        .replace("    repeatability 0.6 % k 1\n", "    linearity 0 %\n");
    let other = text[text.find("instrument W3").unwrap_or(0)..text.find("session").unwrap_or(0)]
        .replace("W3", "W4");
    let text = text.replace("session four", &format!("{other}session four"));
    let readings: String = READINGS
        .lines()
        .enumerate()
        .map(|(i, l)| {
            let with = if i == 0 {
                "instrument"
            } else if l.contains("baseline") {
                "W3"
            } else {
                "W4"
            };
            format!("{l},{with}\n")
        })
        .collect();
    let (r, _) = computed(&text, &readings);
    compare(&r, |row| &row.independent, |row| row.u_independent);
    let cannot = rows()
        .iter()
        .filter(|r| r.independent == "cannot tell")
        .count();
    assert_eq!(cannot, 22);
}
