//! Hover.

use downlead_ide::{Config, hover};

use crate::case::Case;

fn md(c: &Case) -> String {
    let h = hover(&c.s, c.doc, c.cursor(), &Config::default()).expect("something to say");
    format!("[{}]\n{}", &c.text()[h.span.range()], h.text)
}

#[test]
fn a_line_of_a_chain() {
    insta::assert_snapshot!(md(&Case::hill(
        "        M1\n        A1\n        limit",
        "        M$01\n        A1\n        limit"
    )));
}

#[test]
fn the_same_in_plain_words() {
    let c = Case::hill("        DU1.high", "        DU$01.high");
    let h = hover(
        &c.s,
        c.doc,
        c.cursor(),
        &Config {
            markdown: false,
            ..Config::default()
        },
    )
    .expect("something to say");
    insta::assert_snapshot!(h.text);
    assert!(!h.text.contains("**") && !h.text.contains('`'));
}

#[test]
fn names_units_and_words() {
    let mut out = String::new();
    for (from, to) in [
        ("of club-foam", "of club$0-foam"),
        ("joins n-pair", "joins n-$0pair"),
        ("with W1", "with W$01"),
        ("on 2m transmit", "on 2$0m transmit"),
        ("46 m", "4$06 m"),
        ("32 W", "32 $0W"),
        ("5.20 dBi", "5.20 d$0Bi"),
        ("low rejects", "low rej$0ects"),
        ("keyed 100", "key$0ed 100"),
        ("club-foam, mast", "club-foam, ma$0st"),
        ("    limit", "    lim$0it"),
        ("chain in", "chain i$0n"),
        ("DU1.low", "DU1.l$0ow"),
        ("by QY2TEC", "by QY2$0TEC"),
    ] {
        out.push_str(&format!("=== {to}\n{}\n\n", md(&Case::hill(from, to))));
    }
    insta::assert_snapshot!(out);
}

#[test]
fn nothing_on_blanks_and_comments() {
    let c = Case::hill("        RX1\n", "        RX1 // rece$0iver\n");
    assert_eq!(hover(&c.s, c.doc, c.cursor(), &Config::default()), None);
}

/// A statement says which other words find it.
#[test]
fn a_statement_is_found_by_other_words() {
    let c = Case::hill("    run M1 46 m", "    r$0un M1 46 m");
    let h = hover(&c.s, c.doc, c.cursor(), &Config::default()).expect("something to say");
    assert!(
        h.text.contains("Found also by: feeder, feedline"),
        "{}",
        h.text
    );
}
