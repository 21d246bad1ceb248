//! Completion and signature help.

use downlead_ide::{Config, completion, signature_help};

use crate::case::{Case, HILL};

fn plain() -> Config {
    Config {
        snippets: false,
        ..Config::default()
    }
}

/// The first labels, and how many there are.
fn list(c: &Case) -> String {
    let all = completion(&c.s, c.doc, c.cursor(), &plain());
    let labels: Vec<&str> = all.iter().take(12).map(|x| x.label.as_str()).collect();
    let more = if all.len() > 12 {
        format!(" … {} in all", all.len())
    } else {
        String::new()
    };
    format!("{}{more}", labels.join(", "))
}

#[test]
fn what_may_stand_where() {
    let mut out = String::new();
    for (from, to) in [
        // the beginning of lines
        ("band 70cm 438.9 MHz", "$0"),
        ("band 70cm 438.9 MHz", "ca$0"),
        ("    joins n-pair\n", "    joins n-pair\n    $0\n"),
        ("        A1\n        limit", "        $0\n        limit"),
        ("        DU1.high", "        DU1.$0"),
        (
            "        low rejects 85 dB at 146.9137 MHz",
            "        low rejects 85 dB at 146.9137 MHz\n        $0",
        ),
        ("    accuracy 5 % of reading", "    $0"),
        ("    impedance 50 ohm", "    $0"),
        // inside of lines
        ("of club-foam", "of $0"),
        ("46 m of", "46 $0 of"),
        ("46 m of", "46$0 of"),
        ("46 m of club-foam, mast", "46 m of club-foam, $0"),
        (
            "46 m of club-foam, mast",
            "46 m of club-foam, added 1.35 $0",
        ),
        ("32 W ± 5 %", "32 $0"),
        ("32 W ± 5 %", "32 W ± 5 $0"),
        ("5.20 dBi", "5.20 $0"),
        ("fm, keyed", "$0"),
        ("on 2m transmit", "on $0"),
        ("on 2m transmit", "on 2m, $0"),
        ("on 2m transmit", "on 2m $0"),
        ("joins n-pair", "joins $0"),
        ("with W1", "with $0"),
        ("by QY2TEC", "by $0"),
        ("of reading", "of $0"),
        ("22.5 W forward", "22.5 W $0"),
        ("45 W erp", "45 W $0"),
        ("passes 146.8 MHz", "passes 146.8 $0"),
        ("to 147.0 MHz", "to 147.0 $0"),
        ("temperature 10 °C", "temperature 10 $0"),
        (
            "velocity 0.88",
            "velocity 0.88\n    loss typical { 100 MHz 4 $0 }",
        ),
    ] {
        out.push_str(&format!(
            "{:<45} {}\n",
            to.replace('\n', "⏎"),
            list(&Case::hill(from, to))
        ));
    }
    insta::assert_snapshot!(out);
}

#[test]
fn broken_lines_around_it_do_not_matter() {
    let c = Case::hill(
        "        M1\n        A1\n        limit",
        "        pad ± {{\n        }}\n        DU1.$0\n        limit",
    );
    assert_eq!(list(&c), "high, low");
    let c = Case::hill(
        "    run M1 46 m of club-foam, mast",
        "    run M1 of of 46 ± of cl$0",
    );
    assert!(list(&c).starts_with("club-foam"), "{}", list(&c));
}

#[test]
fn nothing_in_comments_and_texts() {
    assert_eq!(
        list(&Case::hill("joins n-pair", "joins n-pair // of $0")),
        ""
    );
    assert_eq!(list(&Case::hill("clause 4\"", "clause $0\"")), "");
}

#[test]
fn files_in_a_use() {
    let c = Case::new(
        "use \"shared/cables.downlead\"\nuse \"$0\n// file: shared/cables.downlead\nlet x = 3 m\n",
    );
    assert_eq!(list(&c), "shared/cables.downlead");
}

#[test]
fn the_edit_replaces_the_word_at_the_cursor() {
    let c = Case::hill("of club-foam", "of clu$0b-xx");
    let all = completion(&c.s, c.doc, c.cursor(), &plain());
    let first = &all[0];
    assert_eq!(
        (
            &c.text()[first.replace.range()],
            first.insert.as_str(),
            first.preselect
        ),
        ("club-xx", "club-foam", true)
    );
    let c = Case::hill("        DU1.high", "        DU1.hi$0");
    let all = completion(&c.s, c.doc, c.cursor(), &plain());
    assert_eq!(
        (&c.text()[all[0].replace.range()], all[0].insert.as_str()),
        ("hi", "high")
    );
}

#[test]
fn what_a_chain_has_already_comes_last() {
    let c = Case::hill("        RX1\n", "        RX1\n        $0\n");
    let all = completion(&c.s, c.doc, c.cursor(), &plain());
    let at = |l: &str| {
        all.iter()
            .position(|x| x.label == l)
            .unwrap_or_else(|| panic!("{l} is missing"))
    };
    assert!(at("TX1") < at("M1"));
}

/// All that is offered at the end of a line of a chain.
fn after(line: &str) -> Vec<String> {
    let c = Case::new(&format!(
        "station s {{\n    place mast\n    place hut\n    chain c on 145 MHz {{\n        {line}$0\n    }}\n}}\n"
    ));
    let all = completion(&c.s, c.doc, c.cursor(), &plain());
    all.into_iter().map(|x| x.label).collect()
}

#[test]
fn words_that_exclude_what_is_there_are_not_offered() {
    for (line, out) in [
        ("limit 30 W erp, ", "eirp output"),
        (
            "limit 30 W erp pep, \"clause 4\", ",
            "erp eirp carrier mean",
        ),
        (
            "limit 30 W erp, \"clause 4\", ",
            "guess typical maximum read since",
        ),
        ("transmitter 25 W carrier, fm, ", "pep mean cw ssb am"),
        ("isolator 0.5 dB, typical, ", "maximum nominal"),
        ("isolator 0.5 dB, guess, ", "sheet read rated displayed"),
        ("read 5 W forward ", "reflected net guess typical sheet"),
        ("expect 5 W ", "erp loss guess typical"),
        ("run 3 m of rg-213, mast, ", "hut mast"),
        // no part of these has a place
        ("transmitter 25 W, ", "mast hut"),
        ("antenna 5 dBi, ", "mast hut"),
    ] {
        let all = after(line);
        for w in out.split(' ') {
            assert!(!all.iter().any(|l| l == w), "{w} after `{line}`: {all:?}");
        }
        assert!(!all.is_empty(), "{line}");
    }
    for (line, there) in [
        ("limit 30 W ", "erp eirp output carrier pep mean"),
        ("limit 30 W erp, ", "pep on"),
        ("transmitter 25 W carrier, ", "fm cw keyed guess"),
        ("isolator 0.5 dB, typical, ", "guess sheet mast hut"),
        ("read 5 W ", "forward reflected net"),
        ("read 5 W forward, ", "with by on corrected"),
    ] {
        let all = after(line);
        for w in there.split(' ') {
            assert!(all.iter().any(|l| l == w), "no {w} after `{line}`: {all:?}");
        }
    }
}

/// What is offered is understood: no word of the list is an error where it stands.
#[test]
fn what_is_offered_is_understood() {
    use downlead_ide::{Config, diagnostics};
    let station = |line: &str| format!("station s {{\n    place mast\n    {line}\n}}\n");
    let chain = |line: &str| station(&format!("chain c on 145 MHz {{\n        {line}\n    }}"));
    let block = |head: &str, line: &str| format!("{head} {{\n    {line}\n}}\n");
    let mut texts = Vec::new();
    for line in [
        "transmitter 25 W ",
        "transmitter 25 W carrier, fm, ",
        "receiver -119 dBm ",
        "receiver -119 dBm for 12 dB sinad, ",
        "run ",
        "run 3 m ",
        "run 3 m of rg-213, ",
        "run from \"a.s2p\" ",
        "jumper 0.2 dB, ",
        "isolator ",
        "isolator 0.5 dB ",
        "isolator 0.5 dB, ",
        "filter 0.5 dB, passes 144 MHz to 146 MHz, ",
        "coupler ",
        "coupler 20 dB ",
        "divider 2 ",
        "divider 2 way, ",
        "amplifier 13 dB ",
        "preamplifier 13 dB gain, ",
        "load ",
        "load, ",
        "antenna 5 dBi ",
        "antenna 5 dBi, height 20 m ",
        "read ",
        "read 5 W ",
        "read 5 W forward, ",
        "expect ",
        "expect 5 W ",
        "limit 5 W ",
        "limit 5 W erp, ",
    ] {
        texts.push(chain(&format!("{line}$0")));
    }
    texts.push(station("position 49.3° S 123.1° W, $0"));
    texts.push(station("ground 20 m $0"));
    for (head, line) in [
        ("cable x", "impedance 50 ohm, "),
        ("cable x", "loss typical at 20 °C, "),
        ("cable x", "accuracy 5 % k 1, "),
        ("cable x", "rating 300 W, "),
        ("connector x", "loss 0.05 dB ± 50 % "),
        ("connector x", "family n "),
        ("device x", "kind isolator "),
        ("device x", "loss 0.5 dB, "),
        ("device x", "high 0.5 dB, "),
        ("device x", "isolation 30 dB, "),
        ("instrument x", "accuracy 5 % "),
        ("instrument x", "linearity 1 % "),
        ("instrument x", "scale 5 W "),
        ("band x", "transmit 145 MHz "),
        ("session x", "read 2026-07-19 "),
        ("session x", "piece A 3 m of rg-213, "),
        ("session x", "load "),
        ("session x", "readings from \"x.csv\" "),
        ("session x", "readings on 145 MHz "),
    ] {
        texts.push(block(head, &format!("{line}$0")));
    }
    let (mut offered, mut wrongs) = (0, Vec::<String>::new());
    for text in &texts {
        let c = Case::new(text);
        let mut all = completion(&c.s, c.doc, c.cursor(), &plain());
        // these belong to a value together with the number that follows them
        all.retain(|x| x.label != "to" && x.label != "k");
        for x in all {
            offered += 1;
            let written = text.replace("$0", &x.label);
            let all = diagnostics(&Case::new(&written).s, &Config::default());
            let wrong = all[0].iter().find(|f| {
                matches!(f.code, "unexpected-word" | "words-exclude")
                    && f.span.start >= c.cursor()
                    && f.span.end <= c.cursor() + u32::try_from(x.label.len()).unwrap()
            });
            let line = text.lines().find(|l| l.contains("$0")).unwrap_or("");
            wrongs.extend(wrong.map(|f| format!("{line}{}: {}", x.label, f.message)));
        }
    }
    assert!(wrongs.is_empty(), "{wrongs:#?}");
    assert!(offered > 400, "{offered}");
}

/// Whatever the table of statements says is read from a file is offered so.
#[test]
fn a_file_is_offered_wherever_a_part_can_be_one() {
    use downlead_station::forms::{Slot, Takes};
    use downlead_station::keywords::{Context, keywords_in};
    let mut asked = 0;
    for k in keywords_in(Context::Station) {
        let file = |f: &downlead_station::forms::Form| {
            // a spot is so far `from` an antenna
            let path = |t: &Takes| matches!(t, Takes::File(_));
            let from = |s: &Slot| s.words().any(|w| w == "from") && s.takes.iter().any(path);
            f.word != "chain" && f.all_slots().any(from)
        };
        if k.forms.iter().any(|f| file(f)) {
            let all = after(&format!("{} ", k.word));
            assert!(all.iter().any(|l| l == "from"), "{}: {all:?}", k.word);
            asked += 1;
        }
    }
    assert!(asked >= 16, "{asked}");
    assert!(!after("divider ").iter().any(|l| l == "from"));
}

fn signature(c: &Case) -> String {
    let Some(h) = signature_help(&c.s, c.doc, c.cursor()) else {
        return "none".to_owned();
    };
    let s = &h.signatures[h.active];
    match s.active {
        Some(i) => {
            let p = &s.parameters[i];
            let span = p.label.range();
            format!(
                "{}«{}»{} — {}",
                &s.label[..span.start],
                &s.label[span.clone()],
                &s.label[span.end..],
                p.documentation
            )
        }
        None => s.label.clone(),
    }
}

#[test]
fn signatures_follow_the_cursor() {
    let mut out = String::new();
    for (from, to) in [
        ("run M1 46 m of club-foam, mast", "run $0"),
        ("run M1 46 m of club-foam, mast", "run M1 $0"),
        ("run M1 46 m of club-foam, mast", "run M1 46 m of $0"),
        (
            "run M1 46 m of club-foam, mast",
            "run M1 46 m of club-foam, $0",
        ),
        ("limit 45 W erp", "limit $0"),
        ("read 22.5 W forward, 2026-07-04", "read 22.5 W forward, $0"),
        (
            "read 22.5 W forward, 2026-07-04 with W1",
            "read 22.5 W forward, 2026-07-04 with $0",
        ),
        ("receiver RX1 -119 dBm", "receiver RX1 $0"),
        ("    impedance 50 ohm", "    impedance $0"),
        ("expect", "expect"),
    ]
    .into_iter()
    .filter(|(f, _)| crate::case::HILL.contains(f))
    {
        out.push_str(&format!("{to:<50} {}\n", signature(&Case::hill(from, to))));
    }
    insta::assert_snapshot!(out);
    assert_eq!(
        signature(&Case::hill("        DU1.high", "        DU1.high $0")),
        "none"
    );
}

/// Every word of every example is offered where it stands: with the cursor before it, and the rest
/// of the line gone.
#[test]
fn every_word_of_the_examples_is_offered() {
    use downlead_ide::{Doc, TokenKind, semantic_tokens};
    let mut missed = std::collections::BTreeSet::new();
    // the hill's earlier revisions say nothing the last one does not
    // inside the clauses of a paper not every word is offered yet (laws, ranges, steps)
    let earlier = |p: &String| {
        ["rev1", "rev3", "licence/papers"]
            .iter()
            .any(|r| p.contains(r))
    };
    for path in downlead_testkit::example_files()
        .into_iter()
        .filter(|p| !earlier(p))
    {
        let files = downlead_testkit::examples();
        let mut s = downlead_eval::Snapshot::load(std::slice::from_ref(&path), &files);
        let doc = Doc::File(0);
        let text = s.files()[0].text().to_owned();
        for t in semantic_tokens(&s, doc, None) {
            let word = &text[t.span.range()];
            let declared = t.modifiers & 1 == 1;
            if declared
                || matches!(
                    t.kind,
                    TokenKind::Number
                        | TokenKind::Text
                        | TokenKind::Comment
                        | TokenKind::Operator
                        | TokenKind::Person
                )
            {
                continue;
            }
            let end = text[t.span.start as usize..]
                .find('\n')
                .map_or(text.len(), |i| t.span.start as usize + i);
            let gone = text[t.span.start as usize..end].to_owned();
            // a block that opens on the line stays open
            let stays = if gone.trim_end().ends_with('{') {
                " {"
            } else {
                ""
            };
            let cut = downlead_base::Span::new(t.span.start, u32::try_from(end).unwrap());
            s.edit(0, cut, stays, &files);
            let all = completion(&s, doc, t.span.start, &plain());
            let offered = all
                .iter()
                .any(|x| x.label == word || x.label.split([' ', '.']).any(|w| w == word));
            if !offered {
                let line = text[..end]
                    .rsplit('\n')
                    .next()
                    .unwrap_or("")
                    .trim()
                    .to_owned();
                if !GAPS.iter().any(|g| line.starts_with(g)) {
                    missed.insert(format!("{word} in `{line}`"));
                }
            }
            let back = downlead_base::Span::new(
                t.span.start,
                t.span.start + u32::try_from(stays.len()).unwrap(),
            );
            s.edit(0, back, &gone, &files);
        }
    }
    assert!(missed.is_empty(), "{missed:#?}");
}

/// Statements within which completion does not offer all words yet.
const GAPS: &[&str] = &[];

/// A word of the trade finds the word of the language, which takes its place.
#[test]
fn a_word_of_the_trade_is_completed() {
    for (typed, label) in [
        ("atten$0", "pad"),
        ("aeri$0", "antenna"),
        ("feedl$0", "run"),
    ] {
        let c = Case::hill(
            "        A1\n        limit",
            &format!("        {typed}\n        limit"),
        );
        let all = completion(&c.s, c.doc, c.cursor(), &plain());
        let found = all.iter().find(|x| x.label == label).expect(label);
        let typed = typed.trim_end_matches("$0");
        assert!(
            found.filter.is_some_and(|w| w.starts_with(typed)),
            "{label}"
        );
        assert!(all.iter().filter(|x| x.filter.is_some()).count() <= 2);
    }
}

/// In a variant the tags and chains of its station are offered, and of a part what it may say.
#[test]
fn a_variant_offers_what_its_station_has() {
    let station = "band 2m 145 MHz\nstation hill {\n    place mast { temperature 10 °C }\n    run M1 46 m of half-inch-foam, mast\n    transmitter TX1 { power 30 W on 2m; mode fm }\n    duplexer DU1 { high 1 dB; low 1 dB }\n    chain out on 2m { TX1; M1 }\n}\nvariant x of hill {\n    ";
    let offered = |typed: &str| -> Vec<String> {
        let text = format!("{station}{typed}");
        let files = downlead_testkit::Files::default().with("a.downlead", text.clone());
        let s = downlead_eval::Snapshot::load(&["a.downlead".to_owned()], &files);
        let at = u32::try_from(text.len()).unwrap();
        completion(&s, downlead_ide::Doc::File(0), at, &plain())
            .into_iter()
            .map(|c| c.label)
            .collect()
    };
    for (typed, wanted) in [
        ("", "M1"),
        ("", "DU1.high"),
        ("", "take"),
        ("take ", "TX1"),
        ("put M1 after ", "DU1.low"),
        ("put M1 after TX1 in ", "out"),
        ("M1 46 ", "m"),
        ("M1 46 m ", "of"),
        ("M1 46 m of ", "rg-213"),
        ("M1 46 m of rg-213, ", "mast"),
        ("TX1 ", "power"),
        ("TX1 power 3 ", "W"),
        ("TX1 power 3 W on ", "2m"),
        ("DU1.high 1 ", "dB"),
        ("TX1 { ", "mode"),
    ] {
        let all = offered(typed);
        assert!(
            all.iter().any(|l| l == wanted),
            "{typed}: {wanted} in {all:?}"
        );
    }
}

#[test]
fn a_cable_shows_what_it_loses_on_the_bands_of_its_chain() {
    // 0.1216 sqrt(146.9137) + 0.001231 * 146.9137 = 1.6548 dB/100 m by hand
    let of_rule = |sections: &str, label: &str| {
        let c = Case::new(sections);
        let all = completion(&c.s, c.doc, c.cursor(), &Config::default());
        let i = all.iter().find(|i| i.label == label).expect(label);
        (
            i.detail.clone().unwrap_or_default(),
            i.documentation.clone(),
        )
    };
    let chain = HILL.replace(
        "        M1\n        A1\n",
        "        run 3 m of $0\n        A1\n",
    );
    let (detail, source) = of_rule(&chain, "club-foam");
    assert_eq!(detail, "1.65 dB/100 m at 2m");
    assert_eq!(
        source.as_deref(),
        Some("seven-eighths foam, cables.downlead")
    );
    // in the station all bands in use count
    let part = HILL.replace(
        "    run M1 46 m of club-foam, mast\n",
        "    run M1 46 m of $0\n",
    );
    assert!(of_rule(&part, "rg-213").0.contains("dB/100 m at 2m"));
    let both = chain.replace("out on 2m transmit", "out on 2m, 70cm transmit");
    assert_eq!(
        of_rule(&both, "club-foam").0,
        "1.65 dB/100 m at 2m | 3.09 dB/100 m at 70cm"
    );
}
