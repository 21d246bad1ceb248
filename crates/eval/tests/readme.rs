//! The README's examples check clean: no error, no warning, no limit or reading that cannot tell.

use downlead_eval::Snapshot;
use downlead_report::Reports as _;
use downlead_testkit::{Files, fences, project};

#[test]
fn readme_examples_check_clean() {
    let page = std::fs::read_to_string(project("README.md")).expect("README.md");
    let examples: Vec<_> = fences(&page)
        .into_iter()
        .filter(|f| f.info == "downlead")
        .collect();
    assert_eq!(
        examples.len(),
        3,
        "the README shows the quick question, a station and a bench session"
    );
    for f in examples {
        let mut files = Files::default().with("pellgarrow/readme.downlead", &f.text);
        for used in [
            "thrennock/cables.downlead",
            "thrennock/instruments.downlead",
        ] {
            let text = std::fs::read_to_string(project("examples").join(used)).expect(used);
            files = files.with(used, &text);
        }
        let s = Snapshot::load(&["pellgarrow/readme.downlead".to_owned()], &files);
        let report = s.report();
        let bad: Vec<_> = report
            .diagnostics
            .iter()
            .filter(|d| d.severity.name() != "information" && d.severity.name() != "hint")
            .collect();
        assert!(bad.is_empty(), "README.md:{}: {bad:#?}", f.line);
        let agree = |r: &downlead_eval::bench::result::SessionResult| {
            let agrees = |c: &downlead_eval::bench::result::BenchCell| {
                c.comparison.as_ref().map(|x| x.verdict)
                    == Some(downlead_physics::measure::Verdict::Agrees)
            };
            !r.cells.is_empty() && r.cells.iter().all(agrees)
        };
        let sessions = s.scopes()[0].items();
        assert!(
            !report.stations.is_empty()
                || sessions
                    .iter()
                    .filter_map(|x| x.2.session.as_deref())
                    .any(agree)
        );
    }
}
