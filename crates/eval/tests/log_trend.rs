//! What a log's readings come to over the years: each point's scatter by the figures of its meter (GUM),
//! and the straight line by least squares.

mod common;

use common::{MAIN, load_from};
use downlead_eval::Scope;
use downlead_eval::result::LogTrend;
use downlead_testkit::Files;

const ROWS: [(&str, f64); 4] = [
    ("2022-07-04", 24.9),
    ("2023-07-06", 24.4),
    ("2024-07-01", 23.9),
    ("2025-07-05", 23.4),
];

/// The trend of the rows, read with these instruments in turn, `meters` being their blocks.
fn trend(meters: &str, with: [&str; 4]) -> (LogTrend, Vec<String>) {
    let rows: Vec<String> = ROWS
        .iter()
        .zip(with)
        .map(|((date, w), meter)| format!("M1,{date},{w},{meter},QY2TEC"))
        .collect();
    let log = format!(
        "after,date,forward_w,instrument,person\n{}\n",
        rows.join("\n")
    );
    let text = format!(
        "{meters}station hill {{\n    transmitter TX1 30 W ± 5 % carrier, fm\n    run M1 28 m of half-inch-foam, at 15 °C\n    antenna A1 4.5 dBi ± 0.5 dB, swr 1.2\n    chain talk-out on 145.3 MHz transmit {{\n        TX1\n        connector 2 of n-pair\n        M1\n        readings from \"log.csv\"\n        A1\n    }}\n}}\n"
    );
    let s = load_from(
        &Files::default()
            .with(MAIN, text.as_str())
            .with("log.csv", log.as_str()),
    );
    let found: Vec<LogTrend> = s
        .scopes()
        .iter()
        .flat_map(Scope::items)
        .flat_map(|i| &i.2.chains)
        .flat_map(|c| &c.bands)
        .flat_map(|b| &b.logs)
        .flat_map(|l| l.trends.iter().cloned())
        .collect();
    assert_eq!(found.len(), 1, "{:?}", s.diagnostics());
    let codes = s
        .diagnostics()
        .iter()
        .map(|d| d.code.id.to_owned())
        .collect();
    (found[0].clone(), codes)
}

/// 10/ln 10: dB of a small relative error.
const DB: f64 = 4.342_944_819;

fn scatter_is(t: &LogTrend, relative: impl Fn(f64) -> f64) {
    assert_eq!(t.count, 4);
    for ((_, p), (_, watts)) in t.points.iter().zip(ROWS) {
        let want = DB * relative(watts);
        assert!((p.u - want).abs() < 1e-6, "{} W: {} not {want}", watts, p.u);
        let value = 10.0 * (watts / 24.9_f64).log10();
        assert!((p.value - value).abs() < 1e-9);
    }
}

#[test]
fn readings_of_one_meter_scatter_by_what_is_their_own() {
    let flat = 1.0 / 3f64.sqrt();
    // linearity of the reading, repeatability, and half a step of the display; the accuracy is one
    // error in all of them
    let (t, codes) = trend(
        "instrument W1 {\n    accuracy 5 % of reading\n    linearity 0.4 %\n    repeatability 0.3 % k 1\n    resolution 0.1 W\n}\n",
        ["W1"; 4],
    );
    scatter_is(&t, |w| (0.004 * flat).hypot(0.003).hypot(0.05 / w * flat));
    assert!(codes.contains(&"loss-rising".to_owned()), "{codes:?}");
    // a class of full scale of which no linearity is known: each reading's own error, in watts
    let class = "instrument W1 {\n    accuracy 2 % of full scale\n    scale 50 W\n    repeatability 0.3 % k 1\n}\n";
    let (t, codes) = trend(class, ["W1"; 4]);
    scatter_is(&t, |w| (1.0 / w * flat).hypot(0.003));
    assert!(!codes.contains(&"loss-rising".to_owned()), "{codes:?}");
}

#[test]
fn readings_of_several_meters_have_all_of_their_errors() {
    let flat = 1.0 / 3f64.sqrt();
    let two = "instrument W1 {\n    accuracy 5 % of reading\n    repeatability 0.3 % k 1\n}\ninstrument W2 {\n    accuracy 5 % of reading\n    repeatability 0.3 % k 1\n}\n";
    let (t, codes) = trend(two, ["W1", "W1", "W2", "W1"]);
    scatter_is(&t, |_| 0.05 * flat);
    assert!(!codes.contains(&"loss-rising".to_owned()), "{codes:?}");
    // nothing is known of the meter: 1.2 % (common practice)
    let (t, _) = trend("", [""; 4]);
    scatter_is(&t, |_| 0.012);
}

#[test]
fn the_line_is_that_of_least_squares() {
    let (t, _) = trend(
        "instrument W1 {\n    accuracy 5 % of reading\n    linearity 0 %\n    repeatability 0.3 % k 1\n}\n",
        ["W1"; 4],
    );
    // days from 2022-07-04 by the calendar: 367, 728 and 1097
    let days = [0.0, 367.0, 728.0, 1097.0].map(|d: f64| d / 365.25);
    let y = ROWS.map(|r| 10.0 * (r.1 / 24.9_f64).log10());
    let (dm, ym) = (days.iter().sum::<f64>() / 4.0, y.iter().sum::<f64>() / 4.0);
    let dd: f64 = days.iter().map(|d| (d - dm).powi(2)).sum();
    let slope = days
        .iter()
        .zip(y)
        .map(|(d, y)| (d - dm) * (y - ym))
        .sum::<f64>()
        / dd;
    assert!(
        (t.trend.per_year - slope).abs() < 1e-9,
        "{} {slope}",
        t.trend.per_year
    );
    let u = DB * 0.003 / dd.sqrt();
    assert!(
        (t.trend.u_per_year - u).abs() < 1e-9,
        "{} {u}",
        t.trend.u_per_year
    );
    assert_eq!((&*t.from, &*t.to), ("2022-07-04", "2025-07-05"));
}
