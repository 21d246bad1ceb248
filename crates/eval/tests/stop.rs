//! An edit can be stopped between items, and finished later.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_report::Reports as _;
use downlead_testkit::{Files, large_file};

/// The cable of all stations is edited: stopped in the midst, the rest is
/// computed later, and nothing twice.
#[test]
fn a_stopped_edit_is_finished_later() {
    use std::cell::Cell;
    let files = Files::default().with("main.downlead", large_file(1_000));
    let mut s = Snapshot::load(&["main.downlead".to_owned()], &files);
    let at = s.files()[0].text().find("loss 0.1216").expect("the cable") as u32 + 7;
    let before = format!(
        "{:?}",
        s.report().stations[0].chains[0].bands[0]
            .total_loss_db
            .unwrap()
    );
    let asked = Cell::new(0);
    let stop = || {
        asked.set(asked.get() + 1);
        asked.get() > 3
    };
    assert!(!s.edit_until(0, Span::new(at, at + 1), "2", &files, &stop));
    assert_eq!(asked.get(), 4);
    assert!(s.files()[0].text().contains("loss 0.2216"));
    let count = Cell::new(0);
    assert!(s.finish(&files, &|| {
        count.set(count.get() + 1);
        false
    }));
    // three items were done before
    let stations = s.report().stations.len();
    assert!(
        count.get() + 3 <= stations + 1,
        "{} of {stations}",
        count.get()
    );
    let after = format!(
        "{:?}",
        s.report().stations[0].chains[0].bands[0]
            .total_loss_db
            .unwrap()
    );
    assert_ne!(before, after);
    let fresh = Files::default().with("main.downlead", s.files()[0].text());
    let again = Snapshot::load(&["main.downlead".to_owned()], &fresh);
    let json = |s: &Snapshot| serde_json::to_string(&s.report().stations).expect("json");
    assert_eq!(json(&s), json(&again));
}
