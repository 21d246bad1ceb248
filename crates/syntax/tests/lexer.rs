//! Tokens: the unit vocabulary, names that begin with digits, signs, characters that are not used.

use downlead_quantity::{UNITS, UnitId, unit};
use downlead_syntax::{AtomKind, ExprKind, File, SyntaxKind, tokens};
use proptest::prelude::*;

fn solid(text: &str) -> Vec<(SyntaxKind, &str)> {
    tokens(text)
        .filter(|(kind, _)| !kind.is_trivia())
        .map(|(kind, span)| (kind, &text[span.range()]))
        .collect()
}

/// The one number of `x NUMBER`: value and unit symbol.
fn number(text: &str) -> (f64, &'static str) {
    let file = File::parse(format!("x {text}"));
    let stmt = file.items()[0].item.statement().expect("a statement");
    assert!(!stmt.is_broken(), "{text}: {}", file.dump(true));
    assert_eq!(stmt.atoms().len(), 2, "{text}: {}", file.dump(true));
    let number = stmt
        .value(stmt.atoms()[1])
        .and_then(|v| v.number())
        .expect("a number");
    (number.value, number.unit.map_or("", |u| unit(u).symbol()))
}

#[test]
fn every_spelling_of_the_unit_table_is_a_unit_after_a_number() {
    for (i, u) in UNITS.iter().enumerate() {
        for symbol in u.symbols {
            for (text, glue) in [
                (format!("x 5 {symbol}"), "blank"),
                (format!("x 5{symbol}"), "glued"),
            ] {
                let found = solid(&text);
                let expected = [
                    (SyntaxKind::Word, "x"),
                    (SyntaxKind::Number, "5"),
                    (SyntaxKind::Unit, *symbol),
                ];
                assert_eq!(found, expected, "{glue}");
            }
            for after in [
                "", ", y", " + 3 m", " ± 5 %", ")", " // c", "; y", "}", " to 7 m",
            ] {
                let text = format!("x 5 {symbol}{after}");
                assert_eq!(solid(&text)[2], (SyntaxKind::Unit, *symbol), "{text}");
            }
            let file = File::parse(format!("x 5 {symbol}"));
            let stmt = file.items()[0].item.statement().unwrap();
            let number = stmt.value(stmt.atoms()[1]).unwrap().number().unwrap();
            assert_eq!(number.unit, Some(UnitId(i as u8)));
            assert_eq!(stmt.slice(number.unit_span), *symbol);
        }
    }
}

#[test]
fn blanks_inside_compound_units_do_not_matter() {
    for text in [
        "3 dB/100m",
        "3 dB/100 m",
        "3 dB / 100 m",
        "3dB/100m",
        "3 dB/ 100\tm",
    ] {
        assert_eq!(number(text), (3.0, "dB/100 m"), "{text}");
    }
    assert_eq!(
        number("1 dB / 100 ft / sqrt(MHz)"),
        (1.0, "dB/100 ft/sqrt(MHz)")
    );
}

#[test]
fn a_unit_is_a_whole_word() {
    let kinds = |text: &str| {
        solid(text)
            .into_iter()
            .map(|(kind, _)| kind)
            .collect::<Vec<_>>()
    };
    use SyntaxKind::{Minus, Number, Slash, Unit, Word};
    assert_eq!(kinds("x 4 of"), [Word, Number, Word]);
    assert_eq!(kinds("x 4 mast"), [Word, Number, Word]);
    assert_eq!(kinds("x 4 m-pair"), [Word, Number, Word]);
    assert_eq!(kinds("x 4 m.high"), [Word, Number, Word]);
    assert_eq!(
        kinds("x 8 m-2 m"),
        [Word, Number, Unit, Minus, Number, Unit]
    );
    assert_eq!(kinds("x 8 m/n"), [Word, Number, Unit, Slash, Word]);
    assert_eq!(kinds("x 8 dB/min"), [Word, Number, Unit, Slash, Word]);
    assert_eq!(kinds("x 8 m//n"), [Word, Number, Unit]);
    // case distinguishes units
    assert_eq!(kinds("x 8 mw"), [Word, Number, Word]);
}

#[test]
fn names_may_begin_with_digits() {
    for name in [
        "2m-fm",
        "7-16",
        "7-16-pair",
        "4.3-10",
        "4.3-10-pair",
        "5x",
        "2m-70cm",
        "1_000",
        "3rd.high",
        "2026-13",
    ] {
        assert_eq!(solid(&format!("x {name}"))[1], (SyntaxKind::Word, name));
    }
    for name in ["2m", "70cm"] {
        let file = File::parse(format!("band {name} x"));
        let stmt = file.items()[0].item.statement().unwrap();
        assert!(matches!(stmt.atoms()[1].kind, AtomKind::Value(_)));
        assert_eq!(stmt.text(stmt.atoms()[1]), name);
    }
}

#[test]
fn dates_and_angles_are_single_tokens() {
    use SyntaxKind::{Date, Dms, Number, Unit, Word};
    assert_eq!(
        solid("x 2026-07-04 2026-07 49°20′00″ 49°20.5′ 49.3333°"),
        [
            (Word, "x"),
            (Date, "2026-07-04"),
            (Date, "2026-07"),
            (Dms, "49°20′00″"),
            (Dms, "49°20.5′"),
            (Number, "49.3333"),
            (Unit, "°"),
        ]
    );
}

#[test]
fn a_ratio_is_one_number_without_a_unit() {
    use SyntaxKind::{Number, Word};
    assert_eq!(
        solid("ratio 4:1 1:4.5 4:1m"),
        [
            (Word, "ratio"),
            (Number, "4:1"),
            (Number, "1:4.5"),
            (Number, "4:1"),
            (Word, "m"),
        ]
    );
    assert_eq!(number("4:1"), (4.0, ""));
    assert_eq!(number("1:4"), (0.25, ""));
    assert_eq!(number("2.25:1.5"), (1.5, ""));
    let said = |text: &str| File::parse(text).diagnostics().next().map(|d| d.code.id);
    assert_eq!(said("ratio 4:0"), Some("not-a-number"));
    assert_eq!(said("ratio 0:0"), Some("not-a-number"));
    assert_eq!(said("ratio: 4"), Some("invalid-character"));
    assert_eq!(said("ratio 4: 1"), Some("invalid-character"));
}

#[test]
fn a_minus_is_a_sign_before_digits_where_no_value_ends() {
    let dump = |text: &str| File::parse(text).dump(false).trim().to_owned();
    assert_eq!(dump("x -10 °C"), "x [-10 °C]");
    assert_eq!(dump("x 2 m -3 m"), "x [2 m] [-3 m]");
    assert_eq!(dump("x 2 m - 3 m"), "x [(2 m - 3 m)]");
    assert_eq!(dump("x 2 m - -3 m"), "x [(2 m - -3 m)]");
    assert_eq!(dump("x (-3 m)"), "x [-3 m]");
    assert_eq!(dump("x (2 m)-3 m"), "x [(2 m - 3 m)]");
    assert_eq!(dump("x = -a"), "x = [-(a)]");
    assert_eq!(dump("x a - b"), "x [(a - b)]");
    assert_eq!(dump("x a-b"), "x a-b");
    assert_eq!(dump("x −10 °C"), "x [-10 °C]");
    assert_eq!(dump("x 2 m – 3 m"), "x [(2 m - 3 m)]");
}

#[test]
fn nothing_infinite_becomes_a_number() {
    for text in [
        "x 1e999",
        "x -1e999 m",
        "x nan",
        "x 5 m ± inf",
        "x = Infinity",
    ] {
        let file = File::parse(text);
        let codes: Vec<_> = file.diagnostics().map(|d| d.code.id).collect();
        assert_eq!(codes, ["not-a-number"], "{text}");
    }
    let long = format!("x {}", "9".repeat(400));
    assert_eq!(
        File::parse(long).diagnostics().next().unwrap().code.id,
        "not-a-number"
    );
    let huge = format!("x {} m", "9".repeat(100_000));
    assert_eq!(
        File::parse(huge).diagnostics().next().unwrap().code.id,
        "not-a-number"
    );
    assert_eq!(number(&format!("{}", f64::MAX)), (f64::MAX, ""));
}

#[test]
fn unused_characters_say_what_to_write() {
    let said = |text: &str| {
        let file = File::parse(text);
        let d = file
            .diagnostics()
            .next()
            .unwrap_or_else(|| panic!("{text:?} is an error"));
        assert_eq!(d.code.id, "invalid-character", "{text:?}");
        assert!(!d.help.is_empty(), "{text:?}");
        d.fixes
            .first()
            .and_then(|f| f.edits.first())
            .map(|e| e.text.clone())
    };
    assert_eq!(said("x 5\u{A0}m").as_deref(), Some(" "));
    assert_eq!(said("x “abc").as_deref(), Some("\""));
    assert_eq!(said("x 2 × 3").as_deref(), Some("*"));
    assert_eq!(said("x 20º").as_deref(), Some("°"));
    assert_eq!(said("x 49°20'").as_deref(), Some("′"));
    assert_eq!(said("x 20'").as_deref(), Some(" ft"));
    assert_eq!(said("x\u{FEFF} y").as_deref(), Some(""));
    for c in ['\u{85}', '\u{2028}', '\u{2029}', '\u{0B}', '\u{0C}', '\r'] {
        assert_eq!(said(&format!("x a{c}b")).as_deref(), Some("\n"), "{c:?}");
        assert!(said(&format!("x \"a{c}b\"")).is_some(), "{c:?}");
        assert!(said(&format!("x // a{c}b\ny")).is_some(), "{c:?}");
    }
    assert_eq!(said("x ж"), None);
    assert_eq!(said("x 1.2.3"), None);
    assert_eq!(said("x .5"), None);
}

#[test]
fn a_byte_order_mark_at_the_start_is_a_blank() {
    let file = File::parse("\u{FEFF}let a = 1 m\n");
    assert_eq!(file.diagnostics().count(), 0);
    assert_eq!(file.dump(false), "let a = [1 m]\n");
}

proptest! {
    /// Checked against the standard library's reading of the same digits.
    #[test]
    fn numbers_read_as_the_standard_library_does(text in r"[0-9]{1,20}(\.[0-9]{1,20})?([eE][+-]?[0-9]{1,2})?") {
        let expected: f64 = text.parse().unwrap();
        prop_assert_eq!(number(&text), (expected, ""));
        prop_assert_eq!(number(&format!("-{text} dB")), (-expected, "dB"));
        let with_unit = format!("{text}MHz");
        prop_assert_eq!(number(&with_unit), (expected, "MHz"));
    }
}

#[test]
fn precedence_is_that_of_arithmetic() {
    fn eval(e: downlead_syntax::Expr<'_>) -> f64 {
        use downlead_syntax::BinOp::{Add, Div, Mul, Pow, Sub};
        match e.kind() {
            ExprKind::Number(n) => n.value,
            ExprKind::Neg(e) => -eval(e),
            ExprKind::Binary(Add, a, b) => eval(a) + eval(b),
            ExprKind::Binary(Sub, a, b) => eval(a) - eval(b),
            ExprKind::Binary(Mul, a, b) => eval(a) * eval(b),
            ExprKind::Binary(Div, a, b) => eval(a) / eval(b),
            ExprKind::Binary(Pow, a, b) => eval(a).powf(eval(b)),
            ExprKind::Name(_) | ExprKind::Per(..) => f64::NAN,
        }
    }
    // worked by hand
    let cases = [
        ("1 + 2 * 3", 7.0),
        ("1 * 2 + 3", 5.0),
        ("10 - 2 - 3", 5.0),
        ("100 / 5 / 2", 10.0),
        ("2 + 12 / 3 * 2 - 1", 9.0),
        ("(1 + 2) * 3", 9.0),
        ("2 * (3 + 4) * 5", 70.0),
        ("-(2 + 3) * 2", -10.0),
        ("1 - (2 - (3 - 4))", -2.0),
        ("2 * -3", -6.0),
        ("50 * (6 / 3)^2", 200.0),
        ("2 * 3^2 * 4", 72.0),
        ("1 + 2^3", 9.0),
        ("(1 + 1)^-1", 0.5),
    ];
    for (text, expected) in cases {
        let file = File::parse(format!("let x = {text}"));
        let stmt = file.items()[0].item.statement().unwrap();
        let value = stmt.value(stmt.atoms()[3]).unwrap();
        assert_eq!(eval(value.expr()), expected, "{text}");
        assert_eq!(stmt.slice(value.expr().span()), text);
        assert_eq!(stmt.slice(value.span()), text);
    }
}
