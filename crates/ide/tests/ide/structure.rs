//! Symbols, colours, folding, selection.

use downlead_ide::{
    Symbol, TOKEN_MODIFIERS, document_symbols, folding_ranges, selection_ranges, semantic_tokens,
    workspace_symbols,
};

use crate::case::{Case, HILL};

#[test]
fn the_tree_of_symbols() {
    fn show(list: &[Symbol], depth: usize, out: &mut String) {
        for x in list {
            out.push_str(&format!(
                "{}{:?} {} · {}\n",
                "  ".repeat(depth),
                x.kind,
                x.name,
                x.detail
            ));
            assert!(x.span.start <= x.focus.start && x.focus.end <= x.span.end);
            show(&x.children, depth + 1, out);
        }
    }
    let c = Case::new(HILL);
    let mut out = String::new();
    show(&document_symbols(&c.s, c.doc), 0, &mut out);
    insta::assert_snapshot!(out);
}

#[test]
fn symbols_by_a_few_letters() {
    let c = Case::new(HILL);
    let names = |q: &str| {
        workspace_symbols(&c.s, q)
            .into_iter()
            .take(5)
            .map(|x| x.name)
            .collect::<Vec<_>>()
            .join(", ")
    };
    assert_eq!(names("du1"), "DU1");
    assert!(names("clf").starts_with("club-foam"), "{}", names("clf"));
    assert!(names("213").contains("rg-213"), "{}", names("213"));
    assert_eq!(names("zzz"), "");
    assert!(names("").starts_with("2m"));
}

#[test]
fn colours() {
    let c = Case::new(HILL);
    let tokens = semantic_tokens(&c.s, c.doc, None);
    let mut last = 0;
    let mut out = String::new();
    let mut line = 0;
    for t in &tokens {
        assert!(
            t.span.start >= last && t.span.start < t.span.end,
            "sorted, apart, not empty"
        );
        last = t.span.end;
        let n = c.text()[..t.span.start as usize].matches('\n').count();
        out.push_str(if n == line { " " } else { "\n" });
        line = n;
        let mods: Vec<&str> = TOKEN_MODIFIERS
            .iter()
            .enumerate()
            .filter(|(i, _)| t.modifiers >> i & 1 == 1)
            .map(|x| *x.1)
            .collect();
        let mods = if mods.is_empty() {
            String::new()
        } else {
            format!(".{}", mods.join("."))
        };
        out.push_str(&format!(
            "{}:{}{mods}",
            &c.text()[t.span.range()],
            t.kind.name()
        ));
    }
    insta::assert_snapshot!(out.trim());
}

#[test]
fn colours_of_a_range_are_those_of_the_whole() {
    let c = Case::hill("    run M1", "    $0run M1");
    let end = c.cursor() + 40;
    let part = semantic_tokens(&c.s, c.doc, Some(downlead_base::Span::new(c.cursor(), end)));
    let whole = semantic_tokens(&c.s, c.doc, None);
    let cut: Vec<_> = whole
        .into_iter()
        .filter(|t| t.span.end >= c.cursor() && t.span.start <= end)
        .collect();
    assert_eq!(part, cut);
}

#[test]
fn folds() {
    let c = Case::new(
        "// one\n// two\nuse \"a\"\nuse \"b\"\nband x 1 MHz\nstation s {\n    place p { temperature 1 °C }\n    place q {\n        temperature 1 °C\n    }\n}\n",
    );
    let list: Vec<String> = folding_ranges(&c.s, c.doc)
        .into_iter()
        .map(|f| {
            let line = |o: u32| c.text()[..o as usize].matches('\n').count() + 1;
            format!("{:?} {}-{}", f.kind, line(f.span.start), line(f.span.end))
        })
        .collect();
    assert_eq!(
        list.join(", "),
        "Comment 1-2, Uses 3-4, Block 6-11, Block 8-10"
    );
}

#[test]
fn selections_grow() {
    let mut out = String::new();
    for (from, to) in [
        ("32 W ± 5 %", "3$02 W ± 5 %"),
        ("DU1.high", "DU1.hi$0gh"),
        ("temperature 10", "tem$0perature 10"),
    ] {
        let c = Case::hill(from, to);
        let list = selection_ranges(&c.s, c.doc, c.cursor());
        for w in list.windows(2) {
            assert!(w[1].start <= w[0].start && w[0].end <= w[1].end && w[0] != w[1]);
        }
        let shown: Vec<String> = list
            .iter()
            .map(|s| {
                let t = &c.text()[s.range()];
                if t.contains('\n') {
                    format!("{} lines", t.lines().count())
                } else {
                    t.to_owned()
                }
            })
            .collect();
        out.push_str(&format!("{}\n", shown.join(" ⊂ ")));
    }
    insta::assert_snapshot!(out);
}
