//! The tree: what statements look like, and that an accident stays where it happened.

use downlead_syntax::{AtomKind, ExprKind, File, Stmt};

fn codes(file: &File) -> Vec<&'static str> {
    file.diagnostics().map(|d| d.code.id).collect()
}

fn dump(text: &str) -> String {
    File::parse(text).dump(false)
}

#[test]
fn statements_of_the_language() {
    let lines = [
        ("use \"a/b.downlead\"", "use \"a/b.downlead\""),
        ("let mast = 30 m", "let mast = [30 m]"),
        (
            "run M1 46 m ± 0.5 m of C, mast, since 2026-06",
            "run M1 [46 m ± 0.5 m] of C , mast , since date:2026-06",
        ),
        (
            "t TX1 32 W +/- 5 % k 2 carrier",
            "t TX1 [32 W ± 5 % k 2] carrier",
        ),
        (
            "accuracy 5 % k 1 to 450 MHz",
            "accuracy [5 % k 1] to [450 MHz]",
        ),
        ("accuracy 5 % to 450 MHz", "accuracy [5 % to 450 MHz]"),
        ("joins n to 7-16", "joins [n to 7-16]"),
        ("chain k on b, c transmit", "chain k on b , c transmit"),
        ("swr x k", "swr x k"),
        (
            "loss 0.05 dB per sqrt(GHz) ± 50 %",
            "loss [0.05 dB per sqrt(GHz) ± 50 %]",
        ),
        ("loss 0.05 dB per √GHz", "loss [0.05 dB per √GHz]"),
        (
            "read 2026-07-04 with W1 by QY2TEC",
            "read date:2026-07-04 with W1 by QY2TEC",
        ),
        (
            "position 49°20′00″ S 123.1667° W, wgs84",
            "position dms:49°20′00″ S [123.1667 °] W , wgs84",
        ),
        (
            "length a * 2 + b to 3 * c",
            "length [((a * 2) + b) to (3 * c)]",
        ),
        ("DU1.high", "DU1.high"),
        (
            "temperature -10 °C to 35 °C",
            "temperature [-10 °C to 35 °C]",
        ),
    ];
    for (text, tree) in lines {
        let file = File::parse(text);
        assert_eq!(codes(&file), Vec::<&str>::new(), "{text}");
        assert_eq!(file.dump(false).trim_end(), tree);
    }
}

#[test]
fn views_of_one_statement() {
    let file = File::parse(
        "// head\nrun M1 46m ± 0.5 m k 2 of C, \"a, b\", since 2026-06 {\n  x 1\n  y\n}\n",
    );
    let item = &file.items()[1].item;
    assert_eq!(file.items()[1].start, 8);
    let stmt: Stmt<'_> = item.statement().unwrap();
    assert_eq!(stmt.item_id(), item.id);
    assert_eq!(stmt.keyword(), Some("run"));
    assert_eq!(
        stmt.slice(stmt.head_span()),
        "run M1 46m ± 0.5 m k 2 of C, \"a, b\", since 2026-06"
    );
    assert_eq!(stmt.slice(stmt.span()).lines().last(), Some("}"));
    let groups: Vec<usize> = stmt.groups().map(<[_]>::len).collect();
    assert_eq!(groups, [5, 1, 2]);
    let atoms = stmt.atoms();
    assert_eq!(stmt.string(atoms[5]), Some("a, b"));
    assert_eq!(atoms[7].kind, AtomKind::Date);
    let value = stmt.value(atoms[2]).unwrap();
    let (half, k) = value.tolerance().unwrap();
    assert_eq!((half.text(), k), ("0.5 m", Some(2.0)));
    let ExprKind::Number(number) = value.expr().kind() else {
        panic!("a number")
    };
    assert_eq!(
        (stmt.slice(number.digits), stmt.slice(number.unit_span)),
        ("46", "m")
    );
    assert_eq!(stmt.slice(value.span()), "46m ± 0.5 m k 2");
    assert_eq!(stmt.slice(atoms[2].span), "46m ± 0.5 m k 2");
    let block = stmt.block().unwrap();
    assert!(block.is_closed());
    let inner: Vec<_> = block.iter().map(|s| s.keyword().unwrap()).collect();
    assert_eq!(inner, ["x", "y"]);
}

#[test]
fn a_broken_line_costs_that_line_only() {
    let bad = [
        "x ± ± 3",
        "x (4 m",
        "x , ,",
        "x 4 m *",
        "x % 3",
        "x 0,5 dB",
        "x 1e999",
        "x #",
        "x ) y",
        "x (1 m 2 m)",
        ", x",
        "= * 3",
    ];
    for line in bad {
        let text =
            format!("station s {{\n    a 1 m\n    {line}\n    b 2 m {{ c }}\n}}\nlet x = 1\n");
        let file = File::parse(text.as_str());
        assert_eq!(file.diagnostics().count(), 1, "{line}: {}", file.dump(true));
        let d = file.diagnostics().next().unwrap();
        assert!(!d.help.is_empty() && !d.message.is_empty(), "{line}");
        let item = &file.items()[0].item;
        let stmts: Vec<_> = item.statement().unwrap().block().unwrap().iter().collect();
        assert_eq!(stmts.len(), 3, "{line}");
        assert_eq!(
            stmts.iter().map(|s| s.is_broken()).collect::<Vec<_>>(),
            [false, true, false],
            "{line}"
        );
        assert_eq!(
            stmts[1].atoms().last().map(|a| a.kind),
            Some(AtomKind::Error),
            "{line}"
        );
        assert_eq!(stmts[2].block().unwrap().iter().count(), 1);
        assert!(file.dump(false).ends_with("let x = [1]\n"));
    }
}

#[test]
fn what_was_understood_before_the_error_is_kept() {
    let file = File::parse("run M1 46 m of, , x");
    let stmt = file.items()[0].item.statement().unwrap();
    assert!(stmt.is_broken());
    let words: Vec<_> = stmt.atoms().iter().map(|a| stmt.text(*a)).collect();
    assert_eq!(words, ["run", "M1", "46 m", "of", "x"]);
}

#[test]
fn an_open_text_is_still_a_text() {
    let file = File::parse("use \"a b\nlet x = 1");
    assert_eq!(codes(&file), ["unclosed-string"]);
    let stmt = file.items()[0].item.statement().unwrap();
    assert!(stmt.is_broken());
    assert_eq!(stmt.string(stmt.atoms()[1]), Some("a b"));
    assert_eq!(file.items().len(), 2);
}

#[test]
fn a_stray_brace_costs_one_item() {
    let good = "let a = 1\nstation t {\n    x 2 m\n}\n";
    for stray in [
        "station s {\n    run M1 3 m {\n}\n",
        "cable c { {\n",
        "use x {\n",
        "let y = 3 }\n",
        "}\n",
    ] {
        let text = format!("{good}{stray}{good}");
        let file = File::parse(text.as_str());
        let faulty = file
            .items()
            .iter()
            .filter(|p| !p.item.diagnostics().is_empty())
            .count();
        assert_eq!(faulty, 1, "{stray}: {}", file.dump(true));
        assert!(file.dump(false).ends_with(&dump(good)), "{stray}");
        assert!(file.dump(false).starts_with(&dump(good)), "{stray}");
    }
}

#[test]
fn indentation_tells_which_block_is_open() {
    let text = "station s {\n    run M1 3 m {\n    run M2 4 m\n    place p {\n        y\n    }\n    z\n}\n";
    let file = File::parse(text);
    assert_eq!(codes(&file), ["unclosed-block"]);
    let d = file.diagnostics().next().unwrap();
    assert_eq!(&text[d.primary.loc.span.range()], "{");
    assert_eq!(
        d.primary.loc.span.start as usize,
        text.find("3 m {").unwrap() + 4
    );
}

#[test]
fn a_brace_on_its_own_line_belongs_to_the_line_above() {
    let file = File::parse("station s\n{\n    a\n}\n");
    assert_eq!(codes(&file), ["not-understood"]);
    assert_eq!(file.dump(false), "station s {\n  a\n}\n");
    assert_eq!(file.diagnostics().next().unwrap().fixes.len(), 1);
}

#[test]
fn indented_lines_outside_a_block_are_misplaced_but_read() {
    let file = File::parse("let a = 1\n  let b = 2\nlet c = 3; let d = 4\n");
    assert_eq!(codes(&file), ["misplaced-statement"]);
    assert_eq!(
        file.dump(false),
        "let a = [1]\nlet b = [2]\nlet c = [3]\nlet d = [4]\n"
    );
    assert_eq!(file.items().len(), 2);
}

#[test]
fn dates_are_those_of_a_calendar() {
    for good in ["2024-02-29", "2000-02-29", "2026-12-31", "2026-04-30"] {
        assert_eq!(
            codes(&File::parse(format!("x {good}"))),
            Vec::<&str>::new(),
            "{good}"
        );
    }
    for bad in [
        "2026-02-29",
        "1900-02-29",
        "2026-13-01",
        "2026-00-10",
        "2026-04-31",
        "2026-01-00",
    ] {
        assert_eq!(
            codes(&File::parse(format!("x {bad}"))),
            ["not-understood"],
            "{bad}"
        );
    }
}

#[test]
fn depth_is_capped() {
    let braces = format!("a {}\nlet b = 1\n", "{ a ".repeat(100_000));
    let file = File::parse(braces);
    assert!(codes(&file).contains(&"too-deep"));
    assert!(codes(&file).len() <= 70);
    assert!(file.dump(false).ends_with("let b = [1]\n"));

    let closed = format!("a {}{}\n", "{\n a ".repeat(100_000), "}\n ".repeat(100_000));
    assert_eq!(codes(&File::parse(closed)), ["too-deep"]);

    let brackets = format!(
        "a {}1{}\nlet b = 1\n",
        "(".repeat(100_000),
        ")".repeat(100_000)
    );
    let file = File::parse(brackets);
    assert_eq!(codes(&file), ["too-deep"]);
    assert!(file.items()[0].item.statement().unwrap().is_broken());

    let sum = format!("let a = 1{}\n", " + 1".repeat(100_000));
    assert_eq!(codes(&File::parse(sum)), ["too-deep"]);
    let allowed = format!(
        "let a = {}1{}{}\n",
        "(".repeat(64),
        ")".repeat(64),
        " + 1".repeat(64)
    );
    assert_eq!(codes(&File::parse(allowed)), Vec::<&str>::new());
}

#[test]
fn a_million_lines_in_one_item_and_in_many() {
    let one = format!(
        "station s {{\n{}}}\n",
        "    run M1 3 m of x\n".repeat(1_000_000)
    );
    let file = File::parse(one);
    assert_eq!(file.items().len(), 1);
    assert_eq!(
        file.items()[0]
            .item
            .statement()
            .unwrap()
            .block()
            .unwrap()
            .iter()
            .count(),
        1_000_000
    );
    drop(file);
    let file = File::parse("let a = 1 }\n".repeat(200_000));
    assert_eq!(file.items().len(), 200_000);
    assert_eq!(file.diagnostics().count(), 200_000);
}

/// Shapes that a careless parser takes quadratic time for; each is a few hundred kilobytes.
#[test]
fn hostile_shapes_take_linear_time() {
    let n = 30_000;
    let shapes = [
        "1.".repeat(n),
        format!("x {}", "1.1.1".repeat(n)),
        format!("x {}", "1-".repeat(n)),
        format!("x {}", "1°1".repeat(n)),
        format!("x {}", "5 dB/".repeat(n)),
        format!("x 5{}", " ".repeat(3 * n)),
        format!("x {}", "5 m/a/a/a/a/a".repeat(n)),
        format!("x {}", "sqrt(a".repeat(n)),
        format!("x {}", "\"".repeat(n)),
        format!("a {{\n{}}}", "# x\n".repeat(n)),
        format!("a {{\n{}}}", "x 1e999\n".repeat(n)),
        format!("a {{ {}\n{}", "a { ".repeat(n), "}\n".repeat(n)),
        format!("a {{ {}\n{}", "x;".repeat(n), "b {\n}\n".repeat(n)),
        format!("x {}", "(".repeat(n)),
        format!("x {}", ",".repeat(n)),
        format!("x {}", "- ".repeat(n)),
        format!("x {}", "\r".repeat(n)),
        format!("x {}", "a ± ".repeat(n)),
        format!("x {}", "a to ".repeat(n)),
        "}".repeat(n),
        "{".repeat(n),
        "\n}".repeat(n),
        format!("// {}", "é".repeat(n)),
    ];
    for text in shapes {
        let start = std::time::Instant::now();
        let file = File::parse(text.as_str());
        assert_eq!(file.text().len(), text.len());
        let _ = downlead_syntax::format(&text);
        let taken = start.elapsed();
        assert!(
            taken.as_secs() < 10,
            "{:?}… took {taken:?}",
            text.chars().take(20).collect::<String>()
        );
    }
}
