//! Two states of a text compared.

use downlead_eval::Snapshot;
use downlead_ide::{Comparison, compare, compare_markdown};

use crate::case::{Case, HILL};

fn between(old: &str, new: &str) -> Comparison {
    let (a, b) = (Case::new(old), Case::new(new));
    compare((&a.s, 0), (&b.s, 0))
}

fn words(c: &Comparison) -> String {
    compare_markdown(c, "hill.downlead", "HEAD~1", "the text as it is")
}

#[test]
fn a_longer_run_and_more_power() {
    let new = HILL.replace("46 m", "64 m").replace("TX1 32 W", "TX1 40 W");
    let c = between(HILL, &new);
    insta::assert_snapshot!(words(&c));
    // what is said adds up: power in, less what is lost, plus gain
    let (old, new) = c.chains[0].bands[0].figures.both().unwrap();
    let step = |a: f64, b: f64| 10.0 * (b / a).log10();
    let radiated = step(old.eirp_w.unwrap(), new.eirp_w.unwrap());
    let given = step(old.transmitter_w.unwrap(), new.transmitter_w.unwrap());
    let lost = new.loss_db.unwrap() - old.loss_db.unwrap();
    assert!((radiated - (given - lost)).abs() < 1e-9);
    // 10 lg (40/32), and 18 m of 1.65 dB/100 m by the sheet's law at 146.9 MHz
    assert!((given - 0.969).abs() < 0.001, "{given}");
    let rate = 0.1216 * 146.9137_f64.sqrt() + 0.001231 * 146.9137;
    assert!((lost - 0.18 * rate).abs() < 0.01, "{lost}, {rate}");
    let parts: f64 = c.chains[0].bands[0]
        .parts
        .iter()
        .map(|p| p.added_db().unwrap())
        .sum();
    assert!((parts - lost).abs() < 0.02, "{parts}");
}

#[test]
fn what_came_and_what_went() {
    let new = HILL
        .replace("        A1\n        limit 45 W erp, \"TSO 14-0093 clause 4\"\n", "        pad 3 dB\n        A1\n        limit 20 W erp, \"TSO 14-0093 clause 4\"\n        limit 30 W eirp, \"TSO 14-0093 clause 5\"\n")
        .replace("chain in on", "chain listen on")
        .replace("band 70cm 438.9 MHz\n", "")
        .replace("0.1216 dB", "0.1316 dB")
        .replace("temperature 10 °C", "temperature 25 °C");
    insta::assert_snapshot!(words(&between(HILL, &new)));
}

#[test]
fn what_changes_nothing_is_said_to() {
    let c = between(HILL, HILL);
    assert!(c.same_text);
    assert!(
        words(&c).contains("The texts are the same."),
        "{}",
        words(&c)
    );
    let c = between(
        HILL,
        &HILL.replace("    joins n-pair", "    // by day\n    joins   n-pair"),
    );
    assert!(!c.same_text);
    assert!(c.definitions.is_empty() && c.findings.is_empty(), "{c:?}");
    assert!(
        words(&c).contains("nothing changes on the air"),
        "{}",
        words(&c)
    );
    // a comment within a part is none of its text
    let block = HILL.replace(
        "low rejects 85 dB at 146.9137 MHz",
        "low rejects 85 dB at 146.9137 MHz // by the maker's \"sheet\"",
    );
    assert!(between(HILL, &block).chains[0].bands[0].parts.is_empty());
    let c = between("", "");
    assert!(words(&c).contains("The texts are the same."));
    let c = between("", "let a = 3 m\n");
    assert!(
        words(&c).contains("There is no chain in either."),
        "{}",
        words(&c)
    );
}

#[test]
fn another_name_changes_nothing() {
    let c = between(HILL, &HILL.replace("M1", "M9").replace("DU1", "DU7"));
    let text = words(&c);
    assert!(text.contains("nothing changes on the air"), "{text}");
    assert!(
        text.contains("Renamed: DU1.high is now DU7.high, M1 is now M9, DU1.low is now DU7.low."),
        "{text}"
    );
    // longer as well: then the part itself is another
    let c = between(HILL, &HILL.replace("M1", "M9").replace("46 m", "47 m"));
    let parts: Vec<&str> = c.chains[0].bands[0]
        .parts
        .iter()
        .map(|p| p.name.as_str())
        .collect();
    assert_eq!(parts, ["M9", "M1"]);
}

#[test]
fn parts_in_another_order() {
    let new = HILL.replace(
        "        DU1.low\n        RX1",
        "        DU1.low\n        pad 1 dB\n        pad 2 dB\n        RX1",
    );
    let swapped = new
        .replace(
            "        A1\n        M1\n        DU1.low",
            "        A1\n        DU1.low\n        M1",
        )
        .replace("        DU1.low\n        pad", "        pad");
    let c = between(&new, &swapped);
    assert!(c.chains[1].bands[0].reordered, "{c:?}");
    assert!(words(&c).contains("in another order"));
}

/// The example's revisions: in the fourth both transmitters were turned down and nothing else on
/// the air was changed.
#[test]
fn two_revisions_of_the_demo_station() {
    let load = |path: &str| Snapshot::load(&[path.to_owned()], &downlead_testkit::examples());
    let (old, new) = (
        load("pellgarrow/rev3.downlead"),
        load("pellgarrow/rev4.downlead"),
    );
    let c = compare((&old, 0), (&new, 0));
    let talk_out = c
        .chains
        .iter()
        .find(|x| x.name == "pellgarrow/talk-out-2m")
        .unwrap();
    let (a, b) = talk_out.bands[0].figures.both().unwrap();
    // as both files write it: 40 W, 32 W
    assert!(
        (a.transmitter_w.unwrap() - 40.0).abs() < 1e-9
            && (b.transmitter_w.unwrap() - 32.0).abs() < 1e-9
    );
    insta::assert_snapshot!(compare_markdown(
        &c,
        "rev4.downlead",
        "revision 3",
        "revision 4"
    ));
}

#[test]
fn broken_texts_are_compared_as_far_as_they_go() {
    let mut rng = downlead_testkit::Rng::new(11);
    for _ in 0..60 {
        let broken = downlead_testkit::mutate(&mut rng, HILL, 6);
        _ = words(&between(HILL, &broken));
        _ = words(&between(&broken, HILL));
    }
}
