//! `explain`: pages and derivations.

use crate::{GOOD, folder, run};

#[test]
fn every_code_has_its_page() {
    let dir = folder(&[]);
    let list = run(dir.path(), &["explain"]);
    assert_eq!(list.code, Some(0));
    for code in downlead_base::CODES {
        assert!(list.out.contains(&format!("  {} ", code.id)), "{}", code.id);
    }
    let r = run(dir.path(), &["explain", "limit-not-met"]);
    assert_eq!(r.code, Some(0));
    assert!(r.out.starts_with("limit-not-met (error)\n"), "{}", r.out);
    assert!(!r.out.contains("```"));
}

#[test]
fn what_is_not_known_is_helped() {
    let dir = folder(&[("a.downlead", GOOD)]);
    let r = run(dir.path(), &["explain", "unknown-cabel"]);
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("is unknown-cable meant?"), "{}", r.err);
    assert_eq!(
        run(dir.path(), &["explain", "none.downlead:3"]).code,
        Some(2)
    );
    let beyond = run(dir.path(), &["explain", "a.downlead:4000000000"]);
    assert_eq!(beyond.code, Some(1));
    assert!(beyond.err.contains("no number is computed from this line"));
}

#[test]
fn a_run_leads_to_its_cable_and_source() {
    let dir = folder(&[("a.downlead", GOOD)]);
    let r = run(dir.path(), &["explain", "a.downlead:3"]);
    assert_eq!(r.code, Some(0), "{}", r.err);
    assert!(r.out.contains("28 m"), "{}", r.out);
    assert!(r.out.contains("from "), "{}", r.out);
    // the cable's own coefficient, as the library states it
    assert!(r.out.contains("0.002206 dB/m"), "{}", r.out);
}
