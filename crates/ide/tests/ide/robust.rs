//! Every feature at every place of whole and of broken texts: no panic, ranges within the text,
//! edits that can be applied.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_ide::*;
use downlead_testkit::Files;

use crate::case::{HILL, applied};

fn check(text: &str, step: usize) {
    let files = Files::default().with("main.downlead", text);
    let s = Snapshot::load(&["main.downlead".to_owned()], &files);
    let doc = Doc::File(0);
    let c = Config {
        swatches: true,
        ..Config::default()
    };
    let len = u32::try_from(text.len()).unwrap();
    let inside = |x: Span| assert!(text.get(x.range()).is_some(), "{x:?} of {text:?}");
    let editable = |edits: &[TextEdit]| {
        edits.iter().for_each(|e| inside(e.span));
        applied(text, edits);
    };
    for h in inlay_hints(&s, doc, Span::new(0, len), &c) {
        inside(Span::new(h.offset, h.offset));
        editable(&h.edits);
    }
    swatches(&s, doc, &c).iter().for_each(|x| inside(x.span));
    inline_values(&s, doc, Span::new(0, len), &c)
        .iter()
        .for_each(|x| inside(x.span));
    semantic_tokens(&s, doc, None)
        .iter()
        .for_each(|t| inside(t.span));
    folding_ranges(&s, doc).iter().for_each(|f| inside(f.span));
    document_symbols(&s, doc)
        .iter()
        .for_each(|f| inside(f.span));
    document_links(&s, doc).iter().for_each(|f| inside(f.span));
    code_lenses(&s, doc, &c).iter().for_each(|f| inside(f.span));
    for f in file_diagnostics(&s, 0, &c) {
        inside(f.span);
        f.fixes.iter().for_each(|a| editable(&a.edits));
    }
    editable(&format(&s, doc));
    editable(&fix_all(&s, 0, &c));
    let _ = (report_markdown(&s, 0, None), workspace_symbols(&s, "m1"));
    for at in (0..len + 3).step_by(step) {
        if let Some(h) = hover(&s, doc, at, &c) {
            inside(h.span);
        }
        completion(&s, doc, at, &c)
            .iter()
            .for_each(|x| inside(x.replace));
        let _ = signature_help(&s, doc, at);
        definition(&s, doc, at)
            .iter()
            .for_each(|l| inside(l.origin));
        let _ = type_definition(&s, doc, at);
        let _ = references(&s, doc, at, true);
        highlights(&s, doc, at).iter().for_each(|l| inside(l.span));
        linked_ranges(&s, doc, at).into_iter().for_each(inside);
        selection_ranges(&s, doc, at).into_iter().for_each(inside);
        if let Ok((span, _)) = prepare_rename(&s, doc, at) {
            inside(span);
        }
        for i in prepare_calls(&s, doc, at) {
            let _ = (incoming_calls(&s, i.focus), outgoing_calls(&s, i.focus));
        }
        for ch in ['\n', '}', ';'] {
            editable(&format_on_type(&s, doc, at, ch));
        }
        if (at as usize / step).is_multiple_of(11) {
            for a in code_actions(&s, doc, Span::new(at, at.min(len)), &c) {
                editable(&a.edits);
            }
        }
    }
    let _ = explain_markdown(&s, 0, 5);
}

#[test]
fn a_whole_text() {
    let main = HILL.split("// file:").next().unwrap();
    check(main, 3);
}

#[test]
fn texts_cut_off_anywhere() {
    let main = HILL.split("// file:").next().unwrap();
    for cut in (0..main.len()).step_by(97) {
        if main.is_char_boundary(cut) {
            check(&main[..cut], 29);
        }
    }
}

#[test]
fn texts_with_a_line_spoilt() {
    let main = HILL.split("// file:").next().unwrap();
    let lines: Vec<&str> = main.lines().collect();
    for spoilt in [
        "{",
        "}",
        "± ± (",
        "\"open",
        "46 m to",
        "DU1.",
        "é€ Ω ‖",
        "run M1 46 m ± ± of",
        "\u{FEFF}",
    ] {
        for at in (0..lines.len()).step_by(6) {
            let mut l = lines.clone();
            l[at] = spoilt;
            check(&l.join("\n"), 53);
            check(&l.join("\r\n"), 101);
        }
    }
}

#[test]
fn no_file_no_answer_no_panic() {
    let s = Snapshot::load(&[], &Files::default());
    let c = Config {
        swatches: true,
        ..Config::default()
    };
    for doc in [
        Doc::File(0),
        Doc::File(9),
        Doc::Library(0),
        Doc::Library(99),
    ] {
        let _ = (
            hover(&s, doc, 5, &c),
            completion(&s, doc, 5, &c),
            definition(&s, doc, 5),
            semantic_tokens(&s, doc, None),
        );
        let _ = (
            inlay_hints(&s, doc, Span::new(0, 9), &c),
            swatches(&s, doc, &c),
            inline_values(&s, doc, Span::new(0, 9), &c),
            code_actions(&s, doc, Span::new(0, 0), &c),
            format(&s, doc),
        );
        let _ = (
            document_links(&s, doc),
            document_symbols(&s, doc),
            folding_ranges(&s, doc),
            selection_ranges(&s, doc, 3),
        );
        let _ = (
            rename(&s, doc, 3, "x"),
            highlights(&s, doc, 3),
            prepare_calls(&s, doc, 3),
            code_lenses(&s, doc, &c),
        );
    }
    let _ = (
        file_diagnostics(&s, 3, &c),
        explain_markdown(&s, 3, 1),
        report_markdown(&s, 3, None),
        fix_all(&s, 3, &c),
    );
}
