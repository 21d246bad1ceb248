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
