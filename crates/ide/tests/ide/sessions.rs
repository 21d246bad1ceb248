//! Bench sessions: their names are names, and their lines complete.

use downlead_ide::{Config, completion, definition, rename, subtypes, supertypes};
use downlead_ide::{Place, prepare_types, references};

use crate::case::{Case, applied};

const BENCH: &str = "\
cable thin { impedance 50 ohm; velocity 0.66; loss typical { 100 MHz 10 dB/100 m; 500 MHz 25 dB/100 m }; accuracy 5 %; source \"sheet\" }
instrument W3 {
    accuracy 5 % of reading
}
session four \"Two cables\" {
    read 2026-07-19 with W3 by QY5BEN
    piece A 11.40 m of thin, connector 2 of n-pair
    piece B 7.85 m of thin
    resonance A 9.1 MHz
    readings on 145 MHz {
        baseline 20 W
        through A 15 W
        through B 17 W
    }
}
";

fn at(word: &str, by: usize) -> Case {
    let i = BENCH.find(word).unwrap() + by;
    Case::new(&format!("{}$0{}", &BENCH[..i], &BENCH[i..]))
}

#[test]
fn a_piece_and_its_readings() {
    let c = at("through A", 8);
    let found: Vec<String> = references(&c.s, c.doc, c.cursor(), true)
        .into_iter()
        .map(|p| c.show(p))
        .collect();
    assert_eq!(
        found,
        [
            "main.downlead:7 A",
            "main.downlead:9 A",
            "main.downlead:12 A"
        ]
    );
    let to = definition(&c.s, c.doc, c.cursor());
    assert_eq!(to.len(), 1);
    let edits = rename(&c.s, c.doc, c.cursor(), "C7").unwrap();
    let want = BENCH
        .replace("piece A", "piece C7")
        .replace("resonance A", "resonance C7")
        .replace("through A", "through C7");
    assert_eq!(applied(c.text(), &edits), want);
}

#[test]
fn cables_and_connectors_of_pieces() {
    let c = at("cable thin", 6);
    let edits = rename(&c.s, c.doc, c.cursor(), "thinner").unwrap();
    assert_eq!(applied(c.text(), &edits), BENCH.replace("thin", "thinner"));
    let cable = prepare_types(&c.s, c.doc, c.cursor()).unwrap();
    let parts = subtypes(&c.s, cable.focus);
    let names: Vec<&str> = parts.iter().map(|p| p.name.as_str()).collect();
    assert_eq!(names, ["A", "B"]);
    let above = supertypes(&c.s, parts[0].focus);
    assert_eq!(above[0].name, "thin");
    let c = at("n-pair", 2);
    let to = definition(&c.s, c.doc, c.cursor());
    let text = c.show(Place {
        doc: to[0].target.doc,
        span: to[0].focus,
    });
    assert!(text.ends_with("n-pair"), "{text}");
}

#[test]
fn what_may_stand_in_a_session() {
    let offered = |word: &str, by: usize| -> Vec<String> {
        let c = at(word, by);
        completion(&c.s, c.doc, c.cursor(), &Config::default())
            .into_iter()
            .map(|x| x.label)
            .collect()
    };
    assert!(offered("m of thin", 5).contains(&"thin".to_owned()));
    assert!(offered("2 of n-pair", 5).contains(&"n-pair".to_owned()));
    assert_eq!(offered("through B", 8), ["A", "B"]);
    let lines = offered("    resonance", 4);
    assert!(
        ["piece", "readings", "delay"]
            .iter()
            .all(|w| lines.contains(&(*w).to_owned())),
        "{lines:?}"
    );
    let rows = offered("        through B", 8);
    assert!(
        rows.contains(&"baseline".to_owned()) && !rows.contains(&"piece".to_owned()),
        "{rows:?}"
    );
}

/// Everything a session consists of is offered where it may stand, and nothing else first.
#[test]
fn what_is_offered_along_a_session() {
    let text = BENCH.replace(
        "        through B 17 W\n",
        "        through B 17 W at 2 min, adapter n-to-uhf\n        open A 4 dB\n        equalise 20 W with W3, against 19 W with W3\n",
    ) + "session more {\n    read 2026-07-19 with W3 by QY5BEN\n    piece C 3 m of thin\n    readings from \"more.csv\"\n    readings from \"july.csv\"\n    phase C 90° over 10 MHz\n    delay C 90 ns\n}\nband 6m 50.3 MHz\n// file: more.csv\npiece,forward_w\n// file: july.csv\npiece,forward_w\n";
    let mut out = String::new();
    for (word, keep) in [
        ("    piece A", "    "),
        ("    piece A 11.40 m of thin", "    piece A 11.40 "),
        ("    piece A 11.40 m of thin", "    piece A 11.40 m of "),
        (
            "    piece A 11.40 m of thin",
            "    piece A 11.40 m of thin, ",
        ),
        ("    resonance A 9.1 MHz", "    resonance "),
        ("    resonance A 9.1 MHz", "    resonance A 9.1 "),
        ("    readings on 145 MHz {", "    readings "),
        ("    readings on 145 MHz {", "    readings on "),
        ("    readings on 145 MHz {", "    readings on 145 "),
        ("        baseline 20 W", "        "),
        ("        baseline 20 W", "        baseline 20 "),
        ("        through B 17 W", "        through "),
        ("        through B 17 W", "        through B 17 W at 2 "),
        ("        through B 17 W", "        through B 17 W "),
        ("        through B 17 W", "        through B 17 W, 0.05 W "),
        (
            "        through B 17 W",
            "        through B 17 W at 2 min, ",
        ),
        (
            "        through B 17 W",
            "        through B 17 W at 2 min, adapter ",
        ),
        ("        through B 17 W", "        through B 17 W with "),
        ("        open A 4 dB", "        open "),
        ("        open A 4 dB", "        open A 4 "),
        ("        equalise 20 W", "        equalise 20 W with "),
        ("        equalise 20 W", "        equalise 20 W with W3, "),
        ("    readings from \"more.csv\"", "    readings from \""),
        ("    phase C 90° over 10 MHz", "    phase C 90 "),
        ("    phase C 90° over 10 MHz", "    phase C 90° over 10 "),
        ("    delay C 90 ns", "    delay C 90 "),
        (
            "    read 2026-07-19 with W3 by QY5BEN",
            "    read 2026-07-19 with ",
        ),
        (
            "    read 2026-07-19 with W3 by QY5BEN",
            "    read 2026-07-19 with W3 by ",
        ),
    ] {
        let at = text.find(word).expect(word);
        let end = at + text[at..].find('\n').unwrap();
        let close = if text[at..end].ends_with('{') {
            " {"
        } else {
            ""
        };
        let c = Case::new(&format!("{}{keep}$0{close}{}", &text[..at], &text[end..]));
        let all: Vec<String> = completion(&c.s, c.doc, c.cursor(), &Config::default())
            .into_iter()
            .map(|x| x.label)
            .collect();
        let more = if all.len() > 8 {
            format!(" … {} in all", all.len())
        } else {
            String::new()
        };
        let shown: Vec<&str> = all.iter().take(8).map(String::as_str).collect();
        out.push_str(&format!(
            "{:<42}{}{more}\n",
            keep.trim_start(),
            shown.join(", ")
        ));
    }
    insta::assert_snapshot!(out);
}

#[test]
fn signatures_folds_and_symbols() {
    use downlead_ide::{document_symbols, folding_ranges, selection_ranges, signature_help};
    let mut out = String::new();
    for (word, by) in [
        ("piece A ", 8),
        ("through A ", 10),
        ("through A 15 W", 14),
        ("read 2026", 5),
    ] {
        let c = at(word, by);
        let help = signature_help(&c.s, c.doc, c.cursor()).expect(word);
        let s = &help.signatures[help.active];
        let active = s.active.and_then(|i| s.parameters.get(i));
        let active = active.map_or("–", |p| &s.label[p.label.range()]);
        out.push_str(&format!("{word}| {} «{active}»\n", s.label));
    }
    let c = at("through A 15", 11);
    for f in folding_ranges(&c.s, c.doc) {
        let text = &c.text()[f.span.range()];
        out.push_str(&format!(
            "fold {} … {} lines\n",
            text.lines().next().unwrap(),
            text.lines().count()
        ));
    }
    for s in selection_ranges(&c.s, c.doc, c.cursor()) {
        let text = c.text()[s.range()].trim();
        out.push_str(&format!("select {}\n", text.lines().next().unwrap()));
    }
    fn show(list: &[downlead_ide::Symbol], depth: usize, out: &mut String) {
        for x in list {
            let pad = "  ".repeat(depth);
            out.push_str(&format!("{pad}{:?} {} · {}\n", x.kind, x.name, x.detail));
            show(&x.children, depth + 1, out);
        }
    }
    show(&document_symbols(&c.s, c.doc), 0, &mut out);
    insta::assert_snapshot!(out);
}

#[test]
fn a_piece_that_a_table_names_keeps_its_name() {
    let text = BENCH.replace(
        "    readings on 145",
        "    readings from \"more.csv\"\n    readings on 145",
    ) + "// file: more.csv\nfrequency_mhz,piece,forward_w\n50,baseline,20\n50,A,18\n50,A,18\n";
    let text = text.replacen("piece A", "piece A$0", 1);
    let c = Case::new(&text);
    assert_eq!(
        rename(&c.s, c.doc, c.cursor(), "C7").unwrap_err(),
        "`more.csv` names `A` in 2 rows, and a table is not changed from here; rename it there first."
    );
    // what it does not name is renamed
    let c = Case::new(&text.replace("A$0", "A").replacen("piece B", "piece B$0", 1));
    assert!(rename(&c.s, c.doc, c.cursor(), "C7").is_ok());
}
