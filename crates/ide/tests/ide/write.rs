//! Actions that write code: what they write, and that it holds.

use downlead_base::Severity;
use downlead_eval::Snapshot;
use downlead_ide::{Action, Config, code_actions};
use downlead_testkit::Files;

use crate::case::{Case, HILL, applied};

fn offered(c: &Case) -> Vec<Action> {
    code_actions(&c.s, c.doc, c.range(), &Config::default())
}

/// The text of the file after the action, and the errors that there are then.
fn after(c: &Case, title: &str) -> (String, Vec<String>) {
    let all = offered(c);
    let a = all
        .iter()
        .find(|a| a.title.starts_with(title))
        .unwrap_or_else(|| {
            panic!(
                "{title}: {:#?}",
                all.iter().map(|a| &a.title).collect::<Vec<_>>()
            )
        });
    assert_eq!(a.disabled, None);
    let mut files = Files::default();
    for (i, f) in c.s.files().iter().enumerate() {
        let mine: Vec<_> = a
            .edits
            .iter()
            .filter(|e| e.doc == downlead_ide::Doc::File(i))
            .cloned()
            .collect();
        files.put(&f.path, applied(f.text(), &mine));
    }
    let roots: Vec<String> =
        c.s.files()
            .iter()
            .filter(|f| f.root)
            .map(|f| f.path.clone())
            .collect();
    let s = Snapshot::load(&roots, &files);
    let errors = s
        .diagnostics()
        .into_iter()
        .filter(|d| d.severity == Severity::Error)
        .map(|d| d.message)
        .collect();
    let file = s
        .files()
        .iter()
        .find(|f| f.path == "main.downlead")
        .expect("the file");
    (file.text().to_owned(), errors)
}

#[test]
fn the_receive_chain_is_the_way_back() {
    // without the chain that is there
    let (head, _) = HILL.split_once("    chain in on").expect("the chain");
    let (_, tail) = HILL.split_once("RX1\n    }\n").expect("its end");
    let text = format!("{head}{tail}")
        .replace("chain out on", "chain out $0on")
        .replace("    }\n\n}", "    }\n}");
    let (text, errors) = after(&Case::new(&text), "Write the receive chain back");
    assert_eq!(errors, [""; 0]);
    assert!(
        text.contains(
            "    }\n\n    chain in on 2m receive {\n        A1\n        M1\n        DU1.low\n        RX1\n    }\n}\n"
        ),
        "{text}"
    );
    // on a band without a receive frequency it is not offered
    let c = Case::new(&text.replace("chain out on 2m", "chain out $0on 70cm"));
    let a = offered(&c)
        .into_iter()
        .find(|a| a.title.starts_with("Write the receive chain"));
    assert!(a.is_some_and(|a| a.disabled.is_some()));
}

#[test]
fn what_a_line_comes_to_is_written_below_it() {
    // 32 W less 1.45 dB, less 46 m of 1.6548 dB/100 m, less three pairs of 0.01 dB: 19.1 W
    let c = Case::hill("        M1\n        A1", "        M1$0\n        A1");
    let (text, errors) = after(&c, "Write `expect ");
    assert_eq!(errors, [""; 0]);
    assert!(
        text.contains("        M1\n        expect 19.1 W\n        A1"),
        "{text}"
    );
    let (text, errors) = after(&c, "Write a `read` line");
    assert!(
        text.contains("        M1\n        read  W forward with W1\n        A1"),
        "{text}"
    );
    // the reading is the person's to fill in
    assert_eq!(errors.len(), 1, "{errors:?}");
}

#[test]
fn a_missing_part_and_place_are_defined() {
    let c = Case::hill("        TX1\n", "        TX1\n        J1$0\n");
    let (text, errors) = after(&c, "Define jumper `J1`");
    assert_eq!(errors, [""; 0]);
    assert!(
        text.contains("\n    jumper J1 1.5 m of rg-213, guess\n"),
        "{text}"
    );
    let c = Case::hill("club-foam, mast", "club-foam, attic$0");
    let (text, errors) = after(&c, "Define place `attic`");
    assert_eq!(errors, [""; 0]);
    assert!(
        text.contains("{ temperature 10 °C }\n    place attic\n"),
        "{text}"
    );
}

#[test]
fn a_name_of_another_file_brings_its_use() {
    let sections = "chain c on 145 MHz {\n    transmitter 5 W\n    run 3 m of shed-foam$0\n    antenna 2 dBi\n}\n// file: lib/shed.downlead\ncable shed-foam {\n    loss 0.12 dB/100 m/sqrt(MHz) + 0.001 dB/100 m/MHz\n    source \"invented\"\n}\n";
    let mut files = Files::new(sections);
    let marked = downlead_testkit::marked(files.text("main.downlead").expect("the file"));
    files.put("main.downlead", marked.text.clone());
    let roots = ["main.downlead".to_owned(), "lib/shed.downlead".to_owned()];
    let c = Case {
        s: Snapshot::load(&roots, &files),
        doc: downlead_ide::Doc::File(0),
        at: marked.at,
    };
    let (text, errors) = after(&c, "Write `use \"lib/shed.downlead\"`");
    assert_eq!(errors, [""; 0]);
    assert!(
        text.starts_with("use \"lib/shed.downlead\"\n\nchain c"),
        "{text}"
    );
}
