//! Accepting a finding from the editor: where the line goes, and what completion knows of it.

use downlead_eval::Snapshot;
use downlead_ide::{Config, Doc, code_actions, completion, file_diagnostics};
use downlead_testkit::Files;

use crate::case::{Case, applied};

/// The text after accepting the first finding of a code, with a reason written.
fn accepted(text: &str, code: &str) -> (String, String) {
    let files = |t: &str| Files::default().with("main.downlead", t);
    let s = Snapshot::load(&["main.downlead".to_owned()], &files(text));
    let config = Config::default();
    let all = file_diagnostics(&s, 0, &config);
    let f = all.iter().find(|f| f.code == code).expect(code);
    let list = code_actions(&s, Doc::File(0), f.span, &config);
    let a = list
        .iter()
        .find(|a| a.title.starts_with("Accept `"))
        .unwrap_or_else(|| panic!("{code}: {list:#?}"));
    let after = applied(text, &a.edits);
    // without a reason nothing is accepted
    let s = Snapshot::load(&["main.downlead".to_owned()], &files(&after));
    assert!(s.diagnostics().iter().any(|d| d.code.id == code));
    let mut whole = after.replace("\"\"", "\"looked at\"");
    if whole.contains("until\n") || whole.contains("until;") || whole.contains("until }") {
        whole = whole.replacen("until", "until 2027-01-01", 1);
    }
    let s = Snapshot::load(&["main.downlead".to_owned()], &files(&whole));
    assert!(
        s.diagnostics()
            .iter()
            .all(|d| !d.code.id.starts_with("accept")),
        "{whole}\n{:#?}",
        s.diagnostics()
    );
    assert_eq!(s.found().accepted.len(), 1, "{whole}");
    (a.title.clone(), after)
}

#[test]
fn the_line_goes_below_the_finding() {
    let lines = "station s {\n    pad P1 1 dB // spare\n    run M1 3 m of rg-213, since 2026-04-12\n    chain c on 145 MHz { transmitter 5 W; M1; antenna 2 dBi }\n}\n";
    let (title, after) = accepted(lines, "part-unused");
    assert_eq!(
        title,
        "Accept `part-unused` until 2027-04-12, and write why"
    );
    assert_eq!(
        after,
        lines.replace(
            "// spare\n",
            "// spare\n    accept part-unused \"\" until 2027-04-12\n"
        )
    );
    let block = lines.replace("pad P1 1 dB // spare", "pad P1 {\n        loss 1 dB\n    }");
    let (_, after) = accepted(&block, "part-unused");
    assert_eq!(
        after,
        block.replace(
            "P1 {\n",
            "P1 {\n        accept part-unused \"\" until 2027-04-12\n"
        )
    );
    let one = lines.replace("pad P1 1 dB // spare", "pad P1 { loss 1 dB }");
    let (_, after) = accepted(&one, "part-unused");
    assert_eq!(
        after,
        one.replace("P1 {", "P1 { accept part-unused \"\" until 2027-04-12;")
    );
}

#[test]
fn on_one_line_it_stands_after_a_semicolon_and_at_the_margin_on_its_own_line() {
    let text = "station s { pad P1 1 dB; chain c on 145 MHz { transmitter 5 W; antenna 2 dBi } }\n";
    let (title, after) = accepted(text, "part-unused");
    assert_eq!(title, "Accept `part-unused`, and write why and until when");
    assert_eq!(
        after,
        text.replace("1 dB;", "1 dB; accept part-unused \"\" until;")
    );
    let text = "band 2m 433 MHz\nchain c on 2m {\n    transmitter 5 W\n    antenna 2 dBi\n}\n";
    let (_, after) = accepted(text, "frequency-off-band");
    assert!(
        after.starts_with("band 2m 433 MHz\naccept frequency-off-band \"\" until\nchain"),
        "{after}"
    );
}

#[test]
fn an_error_is_not_offered() {
    let c = Case::new("chain c on 145 MHz {\n    transmitter 5 W$0\n    run 3 m of rg-2133\n}\n");
    let all = code_actions(&c.s, c.doc, c.range(), &Config::default());
    assert!(
        !all.iter().any(|a| a.title.starts_with("Accept")),
        "{all:#?}"
    );
}

#[test]
fn codes_are_completed() {
    let c = Case::hill(
        "        limit 45 W",
        "        accept part-$0\n        limit 45 W",
    );
    let all = completion(&c.s, c.doc, c.cursor(), &Config::default());
    assert!(all.iter().any(|i| i.label == "part-unused"), "{all:#?}");
    assert!(!all.iter().any(|i| i.label == "limit-not-met"));
}
