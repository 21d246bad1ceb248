//! The laws: nothing panics, tokens cover every byte, an edit equals a full parse, formatting is
//! idempotent and keeps the tree.

use downlead_base::Span;
use downlead_syntax::{File, format, tokens};
use proptest::prelude::*;

/// A file that uses the whole language.
const SAMPLE: &str = include_str!("sample.downlead");

/// Pieces with a meaning for the lexer or the splitter.
const PIECES: &[&str] = &[
    "{",
    "}",
    "(",
    ")",
    ",",
    ";",
    "=",
    "+",
    "-",
    "*",
    "/",
    "±",
    "+/-",
    "%",
    " ",
    "\t",
    "\n",
    "\r\n",
    "\r",
    "//",
    "\"",
    "a",
    "run",
    "to",
    "k",
    "per",
    "sqrt(GHz)",
    "√GHz",
    "2m",
    "46 m",
    "-10 °C",
    "°",
    "′",
    "″",
    "49°20′00″",
    "2026-07-04",
    "2026-13",
    "7-16",
    "dB/100 m/sqrt(MHz)",
    "Ω",
    "µ",
    "\u{2126}",
    "1e999",
    "1e-9",
    "nan",
    ".",
    "0.5",
    "\u{85}",
    "\u{2028}",
    "\u{0B}",
    "\u{FEFF}",
    "−",
    "–",
    "é",
    "🜁",
    "\nstation s {\n",
    "\n}\n",
    "\n    ",
    "x.y",
    "_",
    "12",
];

fn pieces() -> impl Strategy<Value = String> {
    prop::collection::vec(prop::sample::select(PIECES), 0..40).prop_map(|p| p.concat())
}

/// The sample with some pieces put in and some ranges taken out.
fn mutated() -> impl Strategy<Value = String> {
    prop::collection::vec((0..SAMPLE.len(), 0..30usize, pieces()), 1..5).prop_map(|edits| {
        let mut text = SAMPLE.to_owned();
        for (at, cut, piece) in edits {
            let start = floor(&text, at.min(text.len()));
            let end = floor(&text, (start + cut).min(text.len())).max(start);
            let piece: String = piece.chars().take(12).collect();
            text.replace_range(start..end, &piece);
        }
        text
    })
}

fn any_text() -> impl Strategy<Value = String> {
    prop_oneof![
        pieces(),
        mutated(),
        any::<String>(),
        prop::collection::vec(any::<u8>(), 0..200)
            .prop_map(|b| String::from_utf8_lossy(&b).into_owned()),
    ]
}

fn floor(text: &str, mut at: usize) -> usize {
    while !text.is_char_boundary(at) {
        at -= 1;
    }
    at
}

fn check_tree(text: &str) {
    let file = File::parse(text);
    let mut at = 0;
    for placed in file.items() {
        assert_eq!(placed.start, at);
        assert!(placed.item.len > 0, "an item holds text");
        at += placed.item.len;
        for d in placed.item.diagnostics() {
            let locs = std::iter::once(d.primary.loc)
                .chain(d.related.iter().map(|l| l.loc))
                .chain(d.fixes.iter().flat_map(|f| f.edits.iter().map(|e| e.loc)));
            for loc in locs {
                assert_eq!(loc.item, placed.item.id);
                assert!(
                    placed.item.text().get(loc.span.range()).is_some(),
                    "{:?} in {text:?}",
                    loc.span
                );
            }
            assert!(!d.message.is_empty());
        }
    }
    assert_eq!(at as usize, text.len());
    assert_eq!(file.text(), text);
    // walks every view
    let _ = file.dump(true);
}

/// The content that formatting must keep.
fn meaning(text: &str) -> String {
    File::parse(text).dump(false)
}

/// `PROPTEST_CASES` asks for more; failures are printed, not kept in files.
fn config() -> ProptestConfig {
    let cases = std::env::var("PROPTEST_CASES")
        .ok()
        .and_then(|n| n.parse().ok())
        .unwrap_or(1000);
    ProptestConfig {
        cases,
        failure_persistence: None,
        ..ProptestConfig::default()
    }
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn tokens_cover_every_byte(text in any_text()) {
        let mut at = 0;
        for (_, span) in tokens(&text) {
            prop_assert_eq!(span.start, at);
            prop_assert!(span.end > span.start);
            prop_assert!(text.is_char_boundary(span.end as usize));
            at = span.end;
        }
        prop_assert_eq!(at as usize, text.len());
    }

    #[test]
    fn parsing_never_panics(text in any_text()) {
        check_tree(&text);
    }

    #[test]
    fn an_edit_equals_a_full_parse(
        text in any_text(),
        edits in prop::collection::vec((any::<u32>(), 0..60u32, pieces()), 1..6),
    ) {
        let mut file = File::parse(text.as_str());
        let mut text = text;
        for (at, len, piece) in edits {
            let at = at % (text.len() as u32 + 1);
            let range = Span::new(at, at + len);
            file = file.edit(range, &piece);
            let start = floor(&text, at as usize);
            let end = floor(&text, ((at + len) as usize).min(text.len())).max(start);
            text.replace_range(start..end, &piece);
            let full = File::parse(text.as_str());
            prop_assert_eq!(file.text(), text.as_str());
            prop_assert_eq!(file.dump(true), full.dump(true));
        }
    }

    #[test]
    fn formatting_is_idempotent_and_keeps_the_tree(text in any_text()) {
        let once = format(&text);
        prop_assert_eq!(meaning(&text), meaning(&once), "formatted: {:?}", once);
        prop_assert_eq!(&format(&once), &once);
        check_tree(&once);
    }
}

#[test]
fn the_sample_is_clean_and_formatted() {
    let file = File::parse(SAMPLE);
    let errors: Vec<_> = file.diagnostics().map(|d| d.message).collect();
    assert_eq!(errors, Vec::<String>::new());
    assert_eq!(format(SAMPLE), SAMPLE);
}
