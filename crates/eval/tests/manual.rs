//! The executable manual: every example of `docs/language.md` checks without error, and every
//! `result` fence says what the report gives. The printed numbers themselves were computed
//! independently (`tests/tools/manual_numbers.py`).
//!
//! A fence `downlead NAME` holds a further file, which all examples can name.

use downlead_eval::Snapshot;
use downlead_report::Reports as _;
use downlead_report::shape::chain::{BandReport, Report};
use downlead_testkit::{Fence, Files, fences, project};

fn manual() -> Vec<Fence> {
    let page = std::fs::read_to_string(project("docs/language.md")).expect("docs/language.md");
    fences(&page)
}

fn report(text: &str) -> Report {
    let mut files = Files::default().with("main.downlead", text);
    for f in manual() {
        if let Some(name) = f.info.strip_prefix("downlead ") {
            files = files.with(name, f.text.as_str());
        }
    }
    Snapshot::load(&["main.downlead".to_owned()], &files).report()
}

/// A value as the manual prints it: the number, or a word.
fn printed(band: &BandReport, quantity: &str, digits: usize) -> Option<String> {
    let number = |v: f64| format!("{v:.digits$}");
    Some(match quantity {
        "total_loss_db" => number(band.total_loss_db?),
        "antenna_w" => number(band.antenna_w?),
        "erp_w" => number(band.erp_w?),
        "eirp_w" => number(band.eirp_w?),
        "uncertainty_db" => number(band.uncertainty_db?),
        "transmitter_swr" => number(band.transmitter_swr?),
        "margin_db" => number(band.limits.first()?.margin_db),
        "verdict" => band.limits.first()?.verdict.word().to_owned(),
        other => panic!("quantity `{other}` is not known to this test"),
    })
}

#[test]
fn examples_check_without_error() {
    let fences = manual();
    let examples: Vec<&Fence> = fences.iter().filter(|f| f.info == "downlead").collect();
    assert!(examples.len() >= 10, "the manual lost its examples");
    let mut wrong = Vec::new();
    for f in examples {
        for d in report(&f.text)
            .diagnostics
            .iter()
            .filter(|d| d.severity.name() == "error")
        {
            wrong.push(format!(
                "docs/language.md:{}: {} {}",
                f.line + d.line as usize,
                d.code,
                d.message
            ));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn results_are_what_the_report_gives() {
    let fences = manual();
    let mut seen = 0;
    let mut wrong = Vec::new();
    for (i, f) in fences.iter().enumerate().filter(|f| f.1.info == "result") {
        let example = fences[..i]
            .iter()
            .rfind(|f| f.info == "downlead")
            .expect("an example before its results");
        let report = report(&example.text);
        for (n, line) in f.text.lines().enumerate() {
            seen += 1;
            let found = result_line(&report, line);
            if found.as_deref() != Ok("") {
                wrong.push(format!(
                    "docs/language.md:{}: {line}: {found:?}",
                    f.line + n + 1
                ));
            }
        }
    }
    assert!(seen >= 20, "the manual lost its results");
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Nothing when a line `CHAIN BAND QUANTITY VALUE` is true, else what the report gives.
fn result_line(report: &Report, line: &str) -> Result<String, String> {
    let (chain, rest) = line.split_once(' ').ok_or("no chain")?;
    let chain = report
        .stations
        .iter()
        .flat_map(|s| &s.chains)
        .find(|c| c.name == chain)
        .ok_or("no such chain")?;
    for band in &chain.bands {
        let Some(rest) = rest.strip_prefix(&format!("{} ", band.band)) else {
            continue;
        };
        let (quantity, value) = rest.split_once(' ').ok_or("no value")?;
        let value = value.strip_suffix(" W").unwrap_or(value);
        let digits = value.split_once('.').map_or(0, |d| d.1.len());
        let have = printed(band, quantity, digits).ok_or("the report has no such figure")?;
        return Ok(if have == value { String::new() } else { have });
    }
    Err("no such band".to_owned())
}
