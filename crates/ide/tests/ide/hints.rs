//! Hints beside each line.

use downlead_base::Span;
use downlead_ide::{Config, HintDetails, HintKinds, inlay_hints};

use crate::case::{Case, applied, changes};

const ALL: Span = Span {
    start: 0,
    end: u32::MAX,
};

fn picture(c: &Case, config: &Config) -> String {
    let mut out = String::new();
    let mut at = 0;
    for h in inlay_hints(&c.s, c.doc, ALL, config) {
        out.push_str(&c.text()[at..h.offset as usize]);
        out.push_str(&format!("   ⟦{}⟧", h.text().replace('\u{2007}', " ")));
        at = h.offset as usize;
    }
    out.push_str(&c.text()[at..]);
    out
}

#[test]
fn along_a_station() {
    let c = Case::hill("station hill", "station hill");
    insta::assert_snapshot!(picture(&c, &Config::default()));
}

#[test]
fn two_bands_and_many() {
    let text = "band forty 7.1 MHz\nchain two on 145 MHz, 435 MHz {\n    transmitter 50 W\n    run 28 m of half-inch-foam\n    antenna 4.5 dBi\n}\nchain many on forty, 14.2 MHz, 28.6 MHz {\n    transmitter 100 W\n    run 24 m of rg-213\n    antenna 2.15 dBi\n}\n";
    insta::assert_snapshot!(picture(&Case::new(text), &Config::default()));
}

#[test]
fn verdicts_and_expectations() {
    let text = "chain over on 145 MHz {\n    transmitter 50 W ± 5 % carrier\n    expect 50 W\n    pad 1 dB ± 0.2 dB\n    expect loss 1 dB\n    expect swr 1\n    antenna 5 dBi ± 0.5 dB\n    expect erp 70 W ± 1 dB\n    limit 30 W erp, \"clause 1\"\n    limit 77 W erp, \"clause 2\"\n    limit 51 W output, \"clause 3\"\n}\n";
    insta::assert_snapshot!(picture(&Case::new(text), &Config::default()));
}

#[test]
fn a_broken_line_leaves_the_others_theirs() {
    let c = Case::hill(
        "        M1\n        A1\n        limit",
        "        M1\n        pad 3 dB ± ± (\n        A1\n        limit",
    );
    insta::assert_snapshot!(picture(&c, &Config::default()));
}

#[test]
fn behind_an_unknown_cable_no_power_stands() {
    let c = Case::new(
        "chain x on 145 MHz {\n    transmitter 50 W\n    run 20 m of no-such-cable\n    pad 3 dB\n    antenna 2.15 dBi\n}\n",
    );
    let shown = picture(&c, &Config::default());
    let line = |word: &str| {
        let found = shown.lines().find(|l| l.trim_start().starts_with(word));
        found.expect(word).to_owned()
    };
    assert!(line("run").ends_with("⟦loss not known⟧"), "{}", line("run"));
    assert!(line("pad").ends_with("⟦ 3.00 dB⟧"), "{}", line("pad"));
    assert!(!line("antenna").contains('→'), "{}", line("antenna"));
    assert!(line("transmitter").contains("50.0 W"), "{shown}");
    let hints = inlay_hints(&c.s, c.doc, ALL, &Config::default());
    assert!(
        hints
            .iter()
            .all(|h| h.edits.is_empty() || h.text().contains("50.0 W"))
    );
}

#[test]
fn statements_on_one_line_are_told_apart() {
    let c = Case::new(
        "station s {\n    transmitter TX1 50 W\n    pad P1 3 dB; pad P2 1 dB\n    run M1 10 m of rg-213; run M2 20 m of rg-213\n    antenna A1 2.15 dBi\n    chain x on 145 MHz {\n        TX1\n        P1; P2\n        M1; M2\n        A1; limit 45 W erp, \"clause 4\"\n    }\n}\n",
    );
    let hints = inlay_hints(&c.s, c.doc, ALL, &Config::default());
    let mut places: Vec<u32> = hints.iter().map(|h| h.offset).collect();
    places.dedup();
    assert_eq!(places.len(), hints.len(), "one label a place");
    let shown = picture(&c, &Config::default());
    let hint = |line: &str| {
        let found = shown
            .lines()
            .find_map(|l| l.trim_start().strip_prefix(line));
        found.expect(line).trim().to_owned()
    };
    // 50 W less 3 dB and 1 dB
    assert_eq!(
        hint("P1; P2"),
        "⟦P1  3.00 dB →  25.1 W · P2  1.00 dB →  19.9 W⟧"
    );
    let runs = hint("run M1 10 m of rg-213; run M2 20 m of rg-213");
    assert!(
        runs.starts_with("⟦M1 145 MHz ") && runs.contains(" dB · M2 145 MHz "),
        "{runs}"
    );
    let last = hint("A1; limit 45 W erp, \"clause 4\"");
    assert!(last.contains(" · ") && last.contains("met: "), "{last}");
}

#[test]
fn kinds_can_be_switched_off() {
    let c = Case::hill("station hill", "station hill");
    let none = HintKinds {
        enabled: true,
        loss: false,
        power: false,
        radiated: false,
        limits: false,
        readings: false,
        cables: false,
    };
    assert_eq!(
        inlay_hints(
            &c.s,
            c.doc,
            ALL,
            &Config {
                hints: none,
                ..Config::default()
            }
        ),
        []
    );
    let only = Config {
        hints: HintKinds {
            limits: true,
            ..none
        },
        ..Config::default()
    };
    let hints = inlay_hints(&c.s, c.doc, ALL, &only);
    assert_eq!(hints.len(), 1);
    assert!(hints[0].text().starts_with("met: "), "{}", hints[0].text());
    let off = Config {
        hints: HintKinds {
            enabled: false,
            ..Config::default().hints
        },
        ..Config::default()
    };
    assert_eq!(inlay_hints(&c.s, c.doc, ALL, &off), []);
}

#[test]
fn only_the_lines_asked_for() {
    let c = Case::hill(
        "        M1\n        A1\n        limit",
        "        $0M1\n$0        A1\n        limit",
    );
    let hints = inlay_hints(&c.s, c.doc, c.range(), &Config::default());
    assert_eq!(hints.len(), 1);
    assert_eq!(
        hints[0].parts.iter().filter(|p| p.target.is_some()).count(),
        1
    );
}

#[test]
fn a_table_shows_how_it_fits() {
    let text = "cable sheet \"a sheet\" {\n    impedance 50 ohm\n    velocity 0.66\n    loss typical at 20 °C {\n        10 MHz 1.33 dB/100 m\n        100 MHz 4.50 dB/100 m\n        400 MHz 9.82 dB/100 m\n    }\n    source \"demo sheet\"\n}\nchain c on 100 MHz {\n    transmitter 25 W carrier\n    run 50 m of sheet\n    load, return-loss 40 dB\n}\n";
    let c = Case::new(text);
    let hints = inlay_hints(&c.s, c.doc, ALL, &Config::default());
    insta::assert_snapshot!(hints[0].text(), @"4.5 dB/100 m at 100 MHz, fits within 0.1 %");
}

/// The pinned value is an assertion that holds: written down, nothing is missed.
#[test]
fn a_pinned_value_holds() {
    let c = Case::hill("station hill", "station hill");
    let hints = inlay_hints(&c.s, c.doc, ALL, &Config::default());
    let edits: Vec<_> = hints.iter().flat_map(|h| h.edits.clone()).collect();
    assert_eq!(edits.len(), 4, "TX1, DU1.high, M1, A1");
    let after = applied(c.text(), &edits);
    insta::assert_snapshot!(changes(c.text(), &after));
    let again = Case::new(&format!(
        "{after}// file: cables.downlead\n{}",
        c.s.files()[1].text()
    ));
    assert!(
        again
            .s
            .diagnostics()
            .iter()
            .all(|d| d.code.id != "expectation-missed")
    );
    let hints = inlay_hints(&again.s, again.doc, ALL, &Config::default());
    assert!(
        hints.iter().all(|h| h.edits.is_empty()),
        "what is pinned is not offered again"
    );
}

#[test]
fn one_hint_a_line_at_its_end_and_of_stable_width() {
    let width = |m: &str| {
        let c = Case::hill("46 m", m);
        let h = inlay_hints(&c.s, c.doc, ALL, &Config::default());
        let mut last = 0;
        for x in &h {
            assert!(x.offset > last);
            assert!(c.text()[x.offset as usize..].starts_with('\n'));
            last = x.offset;
        }
        h.iter()
            .filter(|x| x.text().contains('→'))
            .map(|x| x.text().chars().count())
            .collect::<Vec<_>>()
    };
    // antenna lines end in figures of their own length; the part lines keep theirs
    let (a, b) = (width("46 m"), width("146 m"));
    assert_eq!(a[..3], b[..3]);
}

#[test]
fn without_details_the_words_are_the_same() {
    let c = Case::hill("station hill", "station hill");
    let bare = Config {
        hint_details: HintDetails::Never,
        ..Config::default()
    };
    let (a, b) = (
        inlay_hints(&c.s, c.doc, ALL, &bare),
        inlay_hints(&c.s, c.doc, ALL, &Config::default()),
    );
    assert_eq!(a.len(), b.len());
    for (x, y) in a.iter().zip(&b) {
        assert_eq!((x.offset, x.text()), (y.offset, y.text()));
        assert!(x.edits.is_empty());
        assert_eq!(
            downlead_ide::hint_at(&c.s, c.doc, x.offset, &bare).as_ref(),
            Some(y)
        );
    }
}

#[test]
fn details_left_for_later_are_where_they_would_be() {
    let c = Case::hill("station hill", "station hill");
    let later = Config {
        hint_details: HintDetails::Later,
        ..Config::default()
    };
    let (a, b) = (
        inlay_hints(&c.s, c.doc, ALL, &later),
        inlay_hints(&c.s, c.doc, ALL, &Config::default()),
    );
    assert_eq!(a.len(), b.len());
    for (x, y) in a.iter().zip(&b) {
        assert_eq!((x.offset, x.pad_left), (y.offset, y.pad_left));
        assert_eq!(x.more, !y.tooltip.is_empty() || !y.edits.is_empty());
        assert!(x.tooltip.is_empty() && x.edits.is_empty() && !y.more);
        let pieces = |h: &downlead_ide::InlayHint| -> Vec<_> {
            let parts = h.parts.iter();
            parts
                .map(|p| (p.text.clone(), p.target, p.tooltip.is_some()))
                .collect()
        };
        assert_eq!(pieces(x), pieces(y));
    }
}

/// Of every example, and of four bands in one chain.
#[test]
fn no_hint_is_long_and_no_band_is_lost() {
    let four = "band 6m 50.3 MHz\nband 2m 145.3 MHz\nband 70cm 434.5 MHz\nband 23cm 1296.2 MHz\nchain four on 6m, 2m, 70cm, 23cm {\n    transmitter 50 W ± 5 % carrier\n    run 28 m of half-inch-foam\n    antenna 4.5 dBi ± 0.5 dB\n    limit 60 W erp, \"a rule\"\n}\n";
    let c = Case::new(four);
    for h in inlay_hints(&c.s, c.doc, ALL, &Config::default()) {
        for band in ["6m", "2m", "70cm", "23cm"] {
            assert!(
                h.tooltip.contains(band),
                "{band}: {} / {}",
                h.text(),
                h.tooltip
            );
        }
    }
    insta::assert_snapshot!(picture(&c, &Config::default()));
    let mut long = Vec::new();
    let mut all = vec![c.s];
    for path in downlead_testkit::example_files() {
        all.push(downlead_eval::Snapshot::load(
            &[path],
            &downlead_testkit::examples(),
        ));
    }
    for s in &all {
        for h in inlay_hints(s, downlead_ide::Doc::File(0), ALL, &Config::default()) {
            if h.text().chars().count() > 60 {
                long.push(h.text());
            }
        }
    }
    assert!(long.is_empty(), "{long:#?}");
}

#[test]
fn hints_of_a_block_in_one_column() {
    let c = Case::hill("station hill", "station hill");
    let aligned = Config {
        aligned: true,
        ..Config::default()
    };
    let shown = picture(&c, &aligned).replace('\u{a0}', "_");
    let column = |line: &str| {
        let found = shown.lines().find(|l| l.trim_start().starts_with(line));
        let found = found.expect(line);
        let at = found.find('⟦').expect("a hint");
        let blanks = found[at..].chars().filter(|c| *c == '_').count();
        found[..at].chars().count() + blanks
    };
    assert_eq!(column("DU1.high "), column("TX1 "));
    assert_eq!(column("DU1.high "), column("limit "));
    // blocks do not move each other
    assert!(column("RX1 ") < column("TX1 "));
    assert_eq!(
        picture(&c, &Config::default()).replace('\u{a0}', ""),
        picture(&c, &Config::default())
    );
}

/// At `under` the worst clause, at each clause of a licence in the file what it says of the chains.
#[test]
fn along_a_licence() {
    let text = "licence l {\n    limit 10 W erp carrier, \"clause 4\"\n    limit 30 W erp carrier, \"clause 5\"\n}\nstation s {\n    under l\n    chain c on 146.9 MHz {\n        transmitter 20 W carrier, fm\n        pad 0 dB\n        antenna 2.15 dBi\n    }\n}\n";
    let shown = picture(&Case::new(text), &Config::default());
    let line = |with: &str| {
        let found = shown.lines().find(|l| l.contains(with));
        found.unwrap_or_default().to_owned()
    };
    assert!(
        line("clause 4\"").contains("not met: 3.01 dB over"),
        "{shown}"
    );
    assert!(line("clause 5\"").contains("met: 1.76 dB under"), "{shown}");
    assert!(line("under l").contains("not met: 3.01 dB over"), "{shown}");
    assert!(line("under l").contains("1 more"), "{shown}");
}
