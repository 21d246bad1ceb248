//! The renderers against a report put together by hand.

use downlead_eval::result::{CauseKind, Method, NodeKind};
use downlead_station::model::{Basis, Direction, LimitQuantity, PartKind};

use super::chain::{With, page};
use crate::document::Document;
use crate::shape::chain::*;
use crate::shape::word::{Cause, LimitVerdict, PowerMode, ReadingVerdict, Wave, Word};
use crate::sheet::{ChainTable as Table, chain as csv};
use crate::words::chain as words;
use crate::write::html::html;
use crate::write::json::{json, schema};
use crate::write::style::Style;
use crate::write::text::Look;
use crate::write::{markdown, text};

fn node(
    part: &str,
    kind: NodeKind,
    loss_db: f64,
    cumulative_loss_db: f64,
    power_w: f64,
) -> NodeReport {
    NodeReport {
        part: part.to_owned(),
        kind: Word(kind),
        port: None,
        branch: None,
        loss_db: Some(loss_db),
        cumulative_loss_db: Some(cumulative_loss_db),
        power_w: Some(power_w),
        power_dbm: Some(downlead_quantity::w_to_dbm(power_w)),
        forward_w: None,
        uncertainty_db: Some(0.25),
        forward_uncertainty_db: None,
        swr: Some(1.3),
        heat_w: None,
        impedance_ohm: None,
        velocity_factor: None,
        noise_figure_db: None,
        temperature_c: None,
        basis: Word(Basis::Sheet),
        source: Some("IS-2 p. 3".to_owned()),
        file: "rev4.downlead".to_owned(),
        line: 31,
        chain_line: 62,
    }
}

/// One chain on one band: a transmitter, two joins around a run, an antenna.
pub(crate) fn made() -> Report {
    let mut run = node("M1", NodeKind::Part(PartKind::Run), 0.76, 0.8, 26.6);
    run.source = Some("with | bar, and a text much too long for any column of a table".to_owned());
    let mut duplexer = node("DU1", NodeKind::Part(PartKind::Duplexer), 1.45, 2.25, 19.06);
    duplexer.port = Some("high".to_owned());
    let band = BandReport {
        band: "2m".to_owned(),
        point: None,
        frequency_hz: 146_913_700.0,
        complete: true,
        power_mode: PowerMode::FixedForward,
        nodes: vec![
            node("TX1", NodeKind::Part(PartKind::Transmitter), 0.0, 0.0, 32.0),
            node("join", NodeKind::Join, 0.02, 0.02, 31.9),
            node("join", NodeKind::Join, 0.02, 0.04, 31.7),
            run,
            duplexer,
            node("A1", NodeKind::Part(PartKind::Antenna), 0.0, 2.25, 19.06),
        ],
        total_loss_db: Some(2.25),
        antenna_w: Some(19.06),
        erp_w: Some(38.45),
        eirp_w: Some(63.1),
        uncertainty_db: Some(0.74),
        interval_db: Some([-0.3, 0.3]),
        method: Some(Word(Method::Derivatives)),
        loss_floor_db: Some(2.0),
        loss_worst_db: Some([2.1, 2.4]),
        wet_extra_db: None,
        wet: None,
        transmitter_swr: Some(1.2),
        transmitter_swr_worst: Some(f64::INFINITY),
        sensitivity_dbm: None,
        noise_figure_db: None,
        antenna_mean_w: None,
        erp_mean_w: None,
        eirp_mean_w: None,
        sensitivity_uncertainty_db: None,
        noise_figure_uncertainty_db: None,
        taps: Vec::new(),
        rules: Vec::new(),
        limits: vec![LimitReport {
            quantity: Word(LimitQuantity::Erp),
            limit_w: 30.0,
            value_w: 38.45,
            margin_db: -1.08,
            uncertainty_db: 0.74,
            probability_exceeded: 0.1,
            verdict: LimitVerdict::NotMet,
            safe_setting_w: Some(21.1),
            source: Some("TSO 14-0093 clause 4".to_owned()),
            line: 70,
            file: "rev4.downlead".to_owned(),
        }],
        limits_not_judged: Vec::new(),
        readings: vec![ReadingReport {
            quantity: Wave::Forward,
            read_w: Some(16.2),
            expected_w: Some(16.0),
            read_swr: None,
            expected_swr: None,
            difference_db: 0.05,
            uncertainty_db: 0.3,
            verdict: ReadingVerdict::CannotTell,
            date: Some("2026-07-04".to_owned()),
            instrument: Some("W1".to_owned()),
            line: 66,
        }],
        logs: Vec::new(),
        budget: ["gain of A1", "TX1", "joins", "M1"]
            .into_iter()
            .map(|cause| BudgetReport {
                cause: Cause {
                    kind: CauseKind::Gain,
                    name: String::new(),
                    words: cause.to_owned(),
                },
                standard_db: 0.1,
                share: 0.25,
            })
            .collect(),
        assumptions: vec!["20 °C for M1".to_owned()],
    };
    let chain = ChainReport {
        name: "talk-out-2m".to_owned(),
        direction: Word(Direction::Transmit),
        file: "rev4.downlead".to_owned(),
        line: 61,
        bands: vec![band],
    };
    let station = StationReport {
        name: "pellgarrow".to_owned(),
        title: Some("Pellgarrow *hill*".to_owned()),
        exposure: None,
        rules: None,
        site: None,
        chains: vec![chain],
    };
    Report {
        schema: SCHEMA,
        stations: vec![station],
        links: Vec::new(),
        diagnostics: Vec::new(),
    }
}

fn paged(report: &Report) -> Document {
    page(report, With { findings: true })
}

fn shown(report: &Report, colour: bool) -> String {
    let look = Look {
        style: Style { colour },
        ..Look::plain(Look::WIDTH)
    };
    text::text(&paged(report), look)
}

fn markdown(report: &Report) -> String {
    markdown::markdown(&paged(report), markdown::UNLINKED)
}

fn plain(report: &Report) -> String {
    shown(report, false)
}

#[test]
fn text_shows_every_part_and_the_verdict() {
    insta::assert_snapshot!("text", plain(&made()));
}

#[test]
fn markdown_escapes_what_would_be_markup() {
    insta::assert_snapshot!("markdown", markdown(&made()));
}

#[test]
fn columns_line_up_whatever_the_letters() {
    let mut report = made();
    report.stations[0].chains[0].bands[0].nodes[3].part = "Mast-Ω-塔".to_owned();
    let out = plain(&report);
    // display columns at which the last column begins
    let starts: Vec<usize> = out
        .lines()
        .skip_while(|l| !l.trim_start().starts_with("part "))
        .take(5)
        .map(|l| {
            let at = l.find("sheet:").or_else(|| l.find("from")).unwrap();
            unicode_width::UnicodeWidthStr::width(&l[..at])
        })
        .collect();
    assert!(starts.windows(2).all(|w| w[0] == w[1]), "{starts:?}\n{out}");
}

fn line(report: &Report, name: &str) -> Option<String> {
    let shown = plain(report);
    let found = shown
        .lines()
        .find(|l| l.trim_start().starts_with(name))?
        .trim_start()
        .strip_prefix(name)?;
    Some(found.trim().to_owned())
}

#[test]
fn an_interval_is_shown_where_the_uncertainty_does_not_say_it() {
    let mut report = made();
    let of = |report: &mut Report, interval: [f64; 2], method: Method| {
        let band = &mut report.stations[0].chains[0].bands[0];
        band.interval_db = Some(interval);
        band.method = Some(Word(method));
        line(report, "95 % of cases")
    };
    // 38.45 W ± 0.74 dB is 32.4 to 45.6 W: so far the two say the same
    assert_eq!(of(&mut report, [-0.74, 0.74], Method::Derivatives), None);
    assert_eq!(of(&mut report, [-0.741, 0.739], Method::Derivatives), None);
    let shown = of(&mut report, [-0.9, 0.6], Method::Derivatives);
    assert_eq!(shown.as_deref(), Some("ERP 31.3 W to 44.1 W"));
    for method in [Method::Sample, Method::Both] {
        let shown = of(&mut report, [-0.74, 0.74], method);
        assert_eq!(shown.as_deref(), Some("ERP 32.4 W to 45.6 W (sampled)"));
    }
    let band = &mut report.stations[0].chains[0].bands[0];
    (band.erp_w, band.eirp_w) = (None, None);
    let shown = of(&mut report, [-0.9, 0.6], Method::Derivatives);
    // 19.06 W less 0.9 and more 0.6 dB
    assert_eq!(shown.as_deref(), Some("at the antenna 15.5 W to 21.9 W"));
    report.stations[0].chains[0].bands[0].antenna_w = None;
    // what is delivered less is lost more
    let shown = of(&mut report, [-0.9, 0.6], Method::Derivatives);
    assert_eq!(shown.as_deref(), Some("loss 1.65 dB to 3.15 dB"));
    report.stations[0].chains[0].bands[0].total_loss_db = None;
    assert_eq!(of(&mut report, [-0.9, 0.6], Method::Sample), None);
}

#[test]
fn what_cannot_be_told_says_how_likely_it_is() {
    let mut report = made();
    assert!(!line(&report, "limit").unwrap().contains("probability"));
    let limit = &mut report.stations[0].chains[0].bands[0].limits[0];
    limit.verdict = LimitVerdict::CannotTell;
    limit.probability_exceeded = 0.384;
    let shown = line(&report, "limit").unwrap();
    let want = "? cannot tell (exceeded with a probability of 38 %), 38.5 W is";
    assert!(shown.contains(want), "{shown}");
    assert!(markdown(&report).contains("exceeded with a probability of 38 %"));
}

#[test]
fn wet_and_mean_powers_stand_beside_the_others() {
    let mut report = made();
    let band = &mut report.stations[0].chains[0].bands[0];
    band.wet_extra_db = Some(1.5);
    band.wet = Some(WetReport {
        antenna_w: Some(13.49),
        erp_w: Some(27.22),
        eirp_w: None,
    });
    band.antenna_mean_w = Some(1.906);
    band.erp_mean_w = Some(3.845);
    assert_eq!(
        line(&report, "when wet").as_deref(),
        Some("1.50 dB more loss: 13.5 W at the antenna, ERP 27.2 W")
    );
    assert_eq!(
        line(&report, "mean over time").as_deref(),
        Some("1.91 W at the antenna, ERP 3.85 W, after duty and key-down share")
    );
}

#[test]
fn losses_of_rows_add_up_to_the_column_beside() {
    let report = made();
    let band = &report.stations[0].chains[0].bands[0];
    let mut sum = 0.0;
    for row in words::rows(&band.nodes) {
        sum += row.joins_db.flatten().unwrap_or(0.0) + row.node.loss_db.unwrap();
        let so_far = row.node.cumulative_loss_db.unwrap();
        assert!((sum - so_far).abs() < 1e-9, "{row:?}");
    }
}

#[test]
fn behind_a_loss_that_is_not_known_no_figure_stands() {
    let mut report = made();
    let band = &mut report.stations[0].chains[0].bands[0];
    band.complete = false;
    band.nodes[3].loss_db = None;
    for n in &mut band.nodes[3..] {
        n.cumulative_loss_db = None;
        n.power_w = None;
        n.power_dbm = None;
        n.uncertainty_db = None;
    }
    let whole = plain(&report);
    let row = whole.lines().find(|l| l.contains("M1")).unwrap();
    assert!(row.contains("not known") && !row.contains(" W"), "{row}");
    let last = whole.lines().find(|l| l.contains("DU1.high")).unwrap();
    assert!(last.contains("1.45") && !last.contains("2.25"), "{last}");
    assert!(!last.contains("dBm"), "{last}");
    let marked = markdown(&report);
    let row = marked.lines().find(|l| l.starts_with("| M1")).unwrap();
    assert!(
        row.contains("| not known |               |        |"),
        "{row}"
    );
    let value: serde_json::Value = serde_json::from_str(&json(&report).unwrap()).unwrap();
    let node = &value["stations"][0]["chains"][0]["bands"][0]["nodes"][3];
    assert!(node.get("loss_db").is_none() && node.get("power_w").is_none());
}

#[test]
fn nothing_in_a_file_steers_the_terminal() {
    let mut report = made();
    let chain = &mut report.stations[0].chains[0];
    chain.name = "a\u{1b}[2J".to_owned();
    let band = &mut chain.bands[0];
    band.limits[0].source = Some("\u{1b}]0;x\u{7}".to_owned());
    band.assumptions[0] = "\u{9b}2J".to_owned();
    band.budget[0].cause.words = "\u{1b}c".to_owned();
    band.nodes[0].source = Some("\u{1b}c".to_owned());
    for colour in [false, true] {
        let out = shown(&report, colour);
        let others = out.matches('\u{1b}').count() - out.matches("\u{1b}[").count();
        assert_eq!(others, 0, "{out:?}");
        assert!(!out.contains("[2J") || !out.contains("\u{1b}[2J"));
        assert!(!out.contains(['\u{9b}', '\u{7}']));
    }
    assert!(!markdown(&report).contains('\u{1b}'));
    assert!(!html(&paged(&report)).contains('\u{1b}'));
}

#[test]
fn csv_tables_have_the_columns_they_say() {
    let report = made();
    for (table, rows) in [
        (Table::Nodes, 6),
        (Table::Limits, 1),
        (Table::Readings, 1),
        (Table::Budget, 4),
        (Table::Chains, 1),
    ] {
        let text = csv(&report, table).unwrap();
        // the reader refuses rows of unequal length
        let mut reader = ::csv::Reader::from_reader(text.as_bytes());
        let width = reader.headers().unwrap().len();
        let read: Vec<_> = reader.records().collect::<Result<_, _>>().unwrap();
        assert_eq!((read.len(), read[0].len()), (rows, width), "{table:?}");
        assert_eq!(&read[0][0], "pellgarrow");
    }
    let nodes = csv(&report, Table::Nodes).unwrap();
    assert!(nodes.starts_with(
        "station,chain,direction,band,point,frequency_hz,position,part,kind,port,branch,loss_db,"
    ));
    assert!(nodes.contains("\"with | bar, and a text"));
    // columns once there keep their place: new ones come at the end
    let head = nodes.lines().next().unwrap();
    assert!(
        head.ends_with(",chain_line,impedance_ohm,velocity_factor,noise_figure_db,temperature_c")
    );
    let chains = csv(&report, Table::Chains).unwrap();
    let head = chains.lines().next().unwrap();
    assert!(head.contains(",noise_figure_db,file,line,interval_low_db,interval_high_db,method,"));
}

#[test]
fn json_is_the_contract() {
    let value: serde_json::Value = serde_json::from_str(&json(&made()).unwrap()).unwrap();
    let band = &value["stations"][0]["chains"][0]["bands"][0];
    assert_eq!(value["schema"], "downlead-report/1");
    assert_eq!(band["nodes"][3]["loss_db"], 0.76);
    assert_eq!(band["limits"][0]["verdict"], "not-met");
    assert!(band["transmitter_swr_worst"].is_null());
    let schema: serde_json::Value = serde_json::from_str(&schema::<Report>().unwrap()).unwrap();
    assert_eq!(
        schema["$defs"]["NodeReport"]["properties"]["loss_db"]["type"],
        serde_json::json!(["number", "null"])
    );
}

#[test]
fn an_empty_report_says_so() {
    let empty = Report {
        schema: SCHEMA,
        stations: Vec::new(),
        links: Vec::new(),
        diagnostics: Vec::new(),
    };
    assert!(plain(&empty).starts_with("No chain"));
}
