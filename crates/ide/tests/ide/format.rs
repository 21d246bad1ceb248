//! Formatting as minimal edits.

use downlead_ide::{Doc, format, format_on_type, format_range, minimal_edits};
use downlead_testkit::example_files;

use crate::case::{Case, applied};

const UNTIDY: &str = "band   2m 145 MHz\nstation s   {\n  run M1  46 m   of rg-213 // a\n\n\n\n\tchain c on 2m {\n M1\n    }\n}\n";

#[test]
fn edits_give_what_the_formatter_gives() {
    let c = Case::new(UNTIDY);
    let edits = format(&c.s, c.doc);
    assert_eq!(applied(UNTIDY, &edits), downlead_syntax::format(UNTIDY));
    // only blanks are touched
    assert!(
        edits
            .iter()
            .all(|e| e.text.trim().is_empty() && c.text()[e.span.range()].trim().is_empty())
    );
}

#[test]
fn crlf_stays() {
    let text = UNTIDY.replace('\n', "\r\n");
    let c = Case::new(&text);
    let after = applied(&text, &format(&c.s, c.doc));
    assert_eq!(after, downlead_syntax::format(&text));
    assert_eq!(after.matches('\n').count(), after.matches("\r\n").count());
}

#[test]
fn a_range_touches_its_lines_only() {
    let c = Case::new(&UNTIDY.replace("  run", "  r$0un"));
    let edits = format_range(&c.s, c.doc, c.range());
    let after = applied(c.text(), &edits);
    assert_eq!(
        after,
        UNTIDY.replace("  run M1  46 m   of", "    run M1 46 m of")
    );
}

#[test]
fn examples_need_no_edits() {
    for path in example_files() {
        let text =
            std::fs::read_to_string(downlead_testkit::project("examples").join(&path)).unwrap();
        let edits = minimal_edits(Doc::File(0), &text, &downlead_syntax::format(&text));
        assert_eq!(edits, [], "{path}");
    }
}

fn typed(text: &str, ch: char) -> String {
    let c = Case::new(text);
    applied(c.text(), &format_on_type(&c.s, c.doc, c.cursor(), ch))
}

#[test]
fn while_typing() {
    // a new line gets its depth, the one before its blanks
    assert_eq!(
        typed("station s {\n  run  M1 3 m of x\n$0\n}\n", '\n'),
        "station s {\n    run M1 3 m of x\n    \n}\n"
    );
    assert_eq!(typed("station s {\n$0}\n", '\n'), "station s {\n}\n");
    assert_eq!(
        typed(
            "station s {\n    chain c on 1 MHz {\n        M1\n        }$0\n}\n",
            '}'
        ),
        "station s {\n    chain c on 1 MHz {\n        M1\n    }\n}\n"
    );
    assert_eq!(
        typed("station s {\n    place p {temperature 1 °C ;$0}\n}\n", ';'),
        "station s {\n    place p { temperature 1 °C; }\n}\n"
    );
}

#[test]
fn any_two_texts() {
    for (a, b) in [
        ("", "x"),
        ("x", ""),
        ("a\nb\n", "b\n"),
        ("ä", "äö"),
        ("a b", "a  c b"),
        ("one\ntwo\n", "one\n2\ntwo\n"),
    ] {
        assert_eq!(
            applied(a, &minimal_edits(Doc::File(0), a, b)),
            b,
            "{a:?} to {b:?}"
        );
    }
}

/// A range gives those edits of the whole that lie in its lines, wherever the range is.
#[test]
fn ranges_agree_with_the_whole() {
    let text = "// a\n\n\nband   a 1 MHz\n\n\nband  b 2 MHz // x\nstation s   {\n  place p {\n}\n\n}\n\n\n";
    let c = Case::new(text);
    let whole = format(&c.s, c.doc);
    let len = text.len() as u32;
    for start in 0..=len {
        for end in start..=len {
            let range = downlead_base::Span::new(start, end);
            for e in format_range(&c.s, c.doc, range) {
                assert!(whole.contains(&e), "{range:?}: {e:?}\n{whole:?}");
            }
        }
    }
}

#[test]
fn no_line_end_comes_after_a_brace_that_ends_the_text() {
    assert_eq!(
        typed("band 2m {\n    transmit 145 MHz\n    }$0", '}'),
        "band 2m {\n    transmit 145 MHz\n}"
    );
    assert_eq!(
        typed("station s { joins n-pair;$0", ';'),
        "station s { joins n-pair;"
    );
}
