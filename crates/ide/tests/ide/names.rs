//! Definition, references, rename, highlights, linked editing, calls, links.

use downlead_ide::{
    HighlightKind, declaration, definition, document_links, highlights, implementation,
    incoming_calls, linked_ranges, outgoing_calls, prepare_calls, prepare_rename, references,
    rename, type_definition,
};
use downlead_report::Reports as _;

use crate::case::{Case, applied, changes, marked_lines};

#[test]
fn where_names_lead() {
    let mut out = String::new();
    for (from, to) in [
        (
            "        M1\n        A1\n        limit",
            "        M$01\n        A1\n        limit",
        ),
        ("        DU1.high", "        DU$01.high"),
        ("        DU1.high", "        DU1.hi$0gh"),
        ("of club-foam", "of club$0-foam"),
        ("joins n-pair", "joins n$0-pair"),
        ("on 2m transmit", "on $02m transmit"),
        ("with W1", "with $0W1"),
        ("club-foam, mast", "club-foam, mast$0"),
        ("\"cables", "\"cab$0les"),
        ("cable club-foam", "cable club$0-foam"),
        ("46 m", "46$0 m"),
    ] {
        let c = Case::hill(from, to);
        let at = c.cursor();
        let name = |l: &downlead_ide::Link| {
            c.show(downlead_ide::Place {
                doc: l.target.doc,
                span: l.focus,
            })
        };
        let d: Vec<String> = definition(&c.s, c.doc, at).iter().map(name).collect();
        let t: Vec<String> = type_definition(&c.s, c.doc, at).iter().map(name).collect();
        let i = implementation(&c.s, c.doc, at).len();
        assert_eq!(definition(&c.s, c.doc, at), declaration(&c.s, c.doc, at));
        out.push_str(&format!(
            "{:<60} defined {}; type {}; used {i} times\n",
            to.replace('\n', "⏎").trim(),
            d.join(" "),
            t.join(" ")
        ));
    }
    insta::assert_snapshot!(out);
}

#[test]
fn the_definition_of_a_catalogue_name_is_in_the_library() {
    let c = Case::hill("joins n-pair", "joins n$0-pair");
    let l = definition(&c.s, c.doc, c.cursor())[0];
    assert_eq!(
        downlead_ide::doc_path(&c.s, l.target.doc),
        "library/connectors.downlead"
    );
    assert_eq!(
        downlead_ide::doc_of_path(&c.s, "library/connectors.downlead"),
        Some(l.target.doc)
    );
    assert!(
        downlead_ide::doc_text(&c.s, l.target.doc)[l.target.span.range()]
            .starts_with("connector n-pair")
    );
}

#[test]
fn all_places_of_a_name() {
    let mut out = String::new();
    for (from, to) in [
        ("run M1", "run M$01"),
        ("of club-foam", "of club-f$0oam"),
        ("on 2m transmit", "on 2$0m transmit"),
        ("DU1.high", "DU1.h$0igh"),
    ] {
        let c = Case::hill(from, to);
        out.push_str(&format!("=== {to}\n"));
        for p in references(&c.s, c.doc, c.cursor(), true) {
            out.push_str(&format!("{}\n", c.show(p)));
        }
    }
    insta::assert_snapshot!(out);
}

/// Two stations have each their own `M1`.
#[test]
fn tags_belong_to_their_station() {
    let one = "station a {\n    run M1 3 m of rg-213\n    chain x on 145 MHz {\n        transmitter 5 W\n        M1\n        load\n    }\n}\n";
    let both = format!(
        "{one}{}",
        one.replace("station a", "station b")
            .replacen("M1", "M$01", 1)
    );
    let c = Case::new(&both);
    let found = references(&c.s, c.doc, c.cursor(), true);
    assert_eq!(found.len(), 2);
    assert!(
        found
            .iter()
            .all(|p| p.span.start > c.text().find("station b").unwrap() as u32)
    );
}

#[test]
fn highlights_of_a_name_and_of_a_signal_path() {
    let mut out = String::new();
    for (from, to) in [("run M1", "run M$01"), ("chain out", "chain o$0ut")] {
        let c = Case::hill(from, to);
        let list = highlights(&c.s, c.doc, c.cursor());
        let spans: Vec<_> = list
            .iter()
            .map(|h| {
                (
                    h.span,
                    match h.kind {
                        HighlightKind::Text => "",
                        HighlightKind::Read => "r",
                        HighlightKind::Write => "w",
                    },
                )
            })
            .collect();
        out.push_str(&format!("=== {to}\n{}", marked_lines(c.text(), &spans)));
    }
    insta::assert_snapshot!(out);
}

#[test]
fn rename_across_files() {
    let c = Case::hill("of club-foam", "of club$0-foam");
    assert_eq!(
        prepare_rename(&c.s, c.doc, c.cursor()).unwrap().1,
        "club-foam"
    );
    let edits = rename(&c.s, c.doc, c.cursor(), "new-foam").unwrap();
    let files: Vec<_> = edits
        .iter()
        .map(|e| (downlead_ide::doc_path(&c.s, e.doc), e.text.as_str()))
        .collect();
    assert_eq!(
        files,
        [
            ("main.downlead".to_owned(), "new-foam"),
            ("cables.downlead".to_owned(), "new-foam")
        ]
    );
}

#[test]
fn rename_keeps_what_everything_comes_to() {
    for (from, to, new) in [
        ("run M1", "run M$01", "MAIN"),
        ("band 2m", "band $02m", "two"),
        ("band 2m", "band $02m", "144"),
        ("place mast", "place ma$0st", "tower"),
        ("chain out", "chain ou$0t", "talk-out"),
        ("instrument W1", "instrument W$01", "W2"),
        ("station hill", "station hi$0ll", "top"),
        ("by QY2TEC", "by QY2$0TEC", "QY4TRA"),
    ] {
        let c = Case::hill(from, to);
        let before = c.s.report();
        match rename(&c.s, c.doc, c.cursor(), new) {
            Ok(edits) => {
                let after = applied(c.text(), &edits);
                let again = Case::new(&format!(
                    "{after}// file: cables.downlead\n{}",
                    c.s.files()[1].text()
                ));
                let r = again.s.report();
                assert_eq!(
                    r.diagnostics.len(),
                    before.diagnostics.len(),
                    "{to} → {new}: {:?}",
                    r.diagnostics
                );
                assert_eq!(
                    r.stations[0].chains[0].bands[0].erp_w,
                    before.stations[0].chains[0].bands[0].erp_w
                );
            }
            Err(why) => assert_eq!(new, "144", "{why}"),
        }
    }
}

#[test]
fn what_stands_against_a_rename() {
    let mut out = String::new();
    for (from, to, new) in [
        ("run M1", "run M$01", "A1"),
        ("run M1", "run M$01", "limit"),
        ("run M1", "run M$01", "a b"),
        ("run M1", "run M$01", "46 m"),
        ("run M1", "run M$01", "M.1"),
        ("run M1", "run M$01", "mast"),
        ("run M1", "run M$01", ""),
        ("band 2m", "band $02m", "70cm"),
        ("of club-foam", "of club$0-foam", "rg-213"),
        ("joins n-pair", "joins n-$0pair", "x"),
        ("DU1.high", "DU1.hi$0gh", "up"),
        ("    limit", "    li$0mit", "x"),
        ("chain out", "chain ou$0t", "talk-in"),
    ] {
        let c = Case::new(
            &crate::case::HILL
                .replacen(from, to, 1)
                .replace("chain in ", "chain talk-in "),
        );
        let why = rename(&c.s, c.doc, c.cursor(), new)
            .map(|_| String::new())
            .unwrap_err();
        out.push_str(&format!("{to} → {new}: {why}\n"));
    }
    insta::assert_snapshot!(out);
}

#[test]
fn linked_editing_is_for_tags_and_places() {
    let count = |from: &str, to: &str| {
        let c = Case::hill(from, to);
        linked_ranges(&c.s, c.doc, c.cursor()).len()
    };
    assert_eq!(count("run M1", "run M$01"), 3);
    assert_eq!(count("        DU1.high", "        DU$01.high"), 3);
    assert_eq!(count("place mast", "place ma$0st"), 2);
    assert_eq!(count("DU1.high", "DU1.hi$0gh"), 0);
    assert_eq!(count("band 2m", "band $02m"), 0);
}

#[test]
fn calls_follow_the_power() {
    let c = Case::hill(
        "        M1\n        A1\n        limit",
        "        M$01\n        A1\n        limit",
    );
    let items = prepare_calls(&c.s, c.doc, c.cursor());
    assert_eq!(items.len(), 1);
    let mut out = format!("{}: {}\n", items[0].name, items[0].detail);
    for call in incoming_calls(&c.s, items[0].focus) {
        out.push_str(&format!(
            "  from {} {}",
            call.item.name,
            marked_lines(
                c.text(),
                &call.spans.iter().map(|s| (*s, "")).collect::<Vec<_>>()
            )
            .trim_start()
        ));
    }
    for call in outgoing_calls(&c.s, items[0].focus) {
        out.push_str(&format!(
            "  to {} {}",
            call.item.name,
            marked_lines(
                c.text(),
                &call.spans.iter().map(|s| (*s, "")).collect::<Vec<_>>()
            )
            .trim_start()
        ));
    }
    insta::assert_snapshot!(out);
}

#[test]
fn calls_into_branches() {
    let c = Case::new(
        "station s {\n    divider DV1 2 way, excess 0.2 dB\n    antenna A1 12 dBi\n    antenna A2 12 dBi\n    chain two on 144 MHz {\n        transmitter 9 W\n        D$0V1 {\n            branch { A1 }\n            branch { A2 }\n        }\n    }\n}\n",
    );
    let item = &prepare_calls(&c.s, c.doc, c.cursor())[0];
    let to: Vec<String> = outgoing_calls(&c.s, item.focus)
        .into_iter()
        .map(|x| x.item.name)
        .collect();
    let from: Vec<String> = incoming_calls(&c.s, item.focus)
        .into_iter()
        .map(|x| x.item.name)
        .collect();
    assert_eq!(
        (from, to),
        (
            vec!["transmitter".to_owned()],
            vec!["A1".to_owned(), "A2".to_owned()]
        )
    );
}

#[test]
fn used_files_are_links() {
    let c = Case::hill("station hill", "station hill");
    let l = document_links(&c.s, c.doc);
    assert_eq!(l.len(), 1);
    assert_eq!(
        (&c.text()[l[0].span.range()], l[0].tooltip.as_str()),
        ("\"cables.downlead\"", "open cables.downlead")
    );
}

#[test]
fn a_changed_text_is_shown_as_lines() {
    // the helper itself
    assert_eq!(changes("a\nb\nc\n", "a\nx\nc\nd\n"), "-b\n+x\n+d\n");
}
