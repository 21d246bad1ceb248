//! Words that exclude each other, and words that mean nothing where they stand.

mod common;

use common::load;
use downlead_base::{Diagnostic, Severity};

/// The errors of a text.
fn errors(text: &str) -> Vec<Diagnostic> {
    let mut all = load(text).diagnostics();
    all.retain(|d| d.severity == Severity::Error);
    all
}

/// A station with this line in it, and with this one at the antenna of its chain.
fn text(station: &str, node: &str) -> String {
    format!(
        "station s {{\n    place mast\n    place hut\n    {station}\n    chain c on 145 MHz {{\n        transmitter 25 W carrier\n        run 10 m of rg-213\n        antenna 2.15 dBi\n        {node}\n    }}\n}}\n"
    )
}

/// The one error of a text: its code, what it is about, and what it says.
fn error(t: &str) -> (&'static str, String, String) {
    let all = errors(t);
    assert_eq!(all.len(), 1, "{all:#?}\n{t}");
    let d = &all[0];
    let at = d.primary.loc.span;
    let s = load(t);
    let place = s
        .place(d.primary.loc)
        .map(|p| p.1.start)
        .unwrap_or(at.start) as usize;
    let about = t[place..place + (at.end - at.start) as usize].to_owned();
    (
        d.code.id,
        about,
        format!("{} {}", d.message, d.help.join(" ")),
    )
}

#[test]
fn words_that_exclude_each_other_are_an_error() {
    for (station, node, about, first) in [
        ("", "limit 50 W erp eirp, \"x\"", "eirp", "erp"),
        ("", "limit 50 W output, erp, \"x\"", "erp", "output"),
        ("", "limit 50 W erp carrier pep, \"x\"", "pep", "carrier"),
        ("", "limit 50 W erp, \"x\"eirp", "eirp", "erp"),
        ("transmitter TX1 25 W carrier pep", "", "pep", "carrier"),
        ("transmitter TX1 25 W carrier, fm, cw", "", "cw", "fm"),
        ("transmitter TX1 25 W, guess, rated", "", "rated", "guess"),
        (
            "isolator IS1 0.5 dB, typical maximum",
            "",
            "maximum",
            "typical",
        ),
        (
            "isolator IS1 0.5 dB, maximum, nominal",
            "",
            "nominal",
            "maximum",
        ),
        (
            "isolator IS1 0.5 dB, sheet \"p. 2\", guess",
            "",
            "guess",
            "sheet",
        ),
        ("isolator IS1 0.5 dB, mast, hut", "", "hut", "mast"),
        ("run M1 3 m of rg-213, mast hut", "", "hut", "mast"),
        (
            "protector SP1 { loss 0.1 dB, guess, sheet \"p. 2\" }",
            "",
            "sheet",
            "guess",
        ),
        (
            "antenna A1 { gain 5 dBi typical, maximum }",
            "",
            "maximum",
            "typical",
        ),
        ("", "read 15 W forward net, 2026-07-04", "net", "forward"),
    ] {
        let t = text(station, node);
        let all = errors(&t);
        let all: Vec<_> = all
            .iter()
            .filter(|d| d.code.id == "words-exclude")
            .collect();
        assert_eq!(all.len(), 1, "{station}{node}: {all:?}");
        let d = all[0];
        let message = &d.message;
        assert!(
            message.contains(&format!("`{first}` and `{about}` exclude each other")),
            "{message}"
        );
        // both places are shown, and a word that goes alone can be taken out by a fix
        assert_eq!(d.related.len(), 1, "{message}");
        assert!(!d.fixes.is_empty(), "{message}");
    }
}

/// By the law itself the two readings of such a line differ by a factor of 1.64: neither is
/// judged.
#[test]
fn a_limit_that_says_two_things_is_not_judged() {
    let judged = |node: &str| {
        let s = load(&text("", node));
        let found = s.diagnostics();
        let about = |d: &&Diagnostic| d.code.id.starts_with("limit-");
        found
            .iter()
            .filter(about)
            .map(|d| d.code.id)
            .collect::<Vec<_>>()
    };
    // 25 W less 10 m of cable into a dipole are far above 1 W
    assert_eq!(judged("limit 1 W erp, \"x\""), ["limit-not-met"]);
    assert_eq!(judged("limit 1 W erp eirp, \"x\""), [""; 0]);
    assert_eq!(judged("limit 1 W erp carrier mean, \"x\""), [""; 0]);
}

#[test]
fn the_first_word_counts_until_one_is_removed() {
    // 25 W carrier of an AM transmitter are 100 W PEP; stated as PEP they are 25 W PEP
    let radiated = |words: &str| {
        let t = format!(
            "chain c on 145 MHz {{\n    transmitter 25 W {words}, am\n    antenna 2.15 dBi\n    limit 60 W erp pep, \"x\"\n}}\n"
        );
        let found = load(&t).diagnostics();
        found.iter().any(|d| d.code.id == "limit-not-met")
    };
    assert!(radiated("carrier"));
    assert!(!radiated("pep"));
    assert!(radiated("carrier pep"));
    assert!(!radiated("pep carrier"));
}

#[test]
fn words_that_mean_nothing_are_an_error() {
    for (station, node, about, says) in [
        (
            "",
            "limit 50 W erp, \"x\", guess",
            "guess",
            "erp, carrier, pep",
        ),
        (
            "",
            "limit 50 W erp typical, \"x\"",
            "typical",
            "has no meaning in a limit",
        ),
        (
            "",
            "expect 20.7 W ± 1 dB, guess",
            "guess",
            "in an expectation",
        ),
        ("", "readings from \"x.csv\" guess", "guess", "with, on"),
        ("position 49° S 123° W, banana", "", "banana", "wgs84"),
        (
            "position 49° S 123° W, wsg84",
            "",
            "wsg84",
            "Did you mean `wgs84`?",
        ),
        (
            "position 49° S 123° W, wgs84, banana",
            "",
            "banana",
            "in a position",
        ),
        ("place attic banana", "", "banana", "temperature 10 °C"),
        (
            "transmitter TX1 { power 5 W; mode fm guess }",
            "",
            "guess",
            "`mode`",
        ),
        (
            "adapter AD1 n-to-uhf, banana",
            "",
            "banana",
            "in a connector",
        ),
    ] {
        let t = text(station, node);
        let mut all = errors(&t);
        all.retain(|d| d.code.id != "use-not-found");
        assert_eq!(all.len(), 1, "{station}{node}: {all:?}");
        let d = &all[0];
        assert_eq!(d.code.id, "unexpected-word", "{d:?}");
        let words = format!("{} {}", d.message, d.help.join(" "));
        assert!(
            words.contains(&format!("`{about}`")) && words.contains(says),
            "{words}"
        );
    }
    for head in [
        "band 2m 145 MHz, banana\n",
        "use \"x\", banana\n",
        "cable x, banana { loss 1 dB/100 m/sqrt(MHz) }\n",
        "cable x { loss 1 dB/100 m/sqrt(MHz); impedance 50 ohm, banana }\n",
        "cable x { loss 1 dB/100 m/sqrt(MHz); voltage 500 V, banana }\n",
        "device x \"t\" banana { kind pad; loss 3 dB }\n",
        "device x { kind pad banana; loss 3 dB }\n",
        "instrument W1 { accuracy 5 % of reading; linearity 1 % of banana }\n",
        "session r { piece A 3 m of rg-213; readings on 145 MHz banana { baseline 44 W at 0 min } }\n",
        "session r { read 2026-07-04 by X, banana }\n",
    ] {
        let mut all = errors(head);
        all.retain(|d| d.code.id == "unexpected-word");
        assert_eq!(all.len(), 1, "{head}: {all:?}");
        assert!(all[0].message.contains("`banana`"), "{all:?}");
    }
}

#[test]
fn a_share_says_of_what_in_full() {
    let t = |of: &str| format!("instrument W1 {{\n    accuracy 5 %{of}\n}}\n");
    for of in ["", " of", " of full", " of banana"] {
        let text = t(of);
        let all = errors(&text);
        assert_eq!(all.len(), 1, "{of}: {all:?}");
        assert_eq!(all[0].code.id, "accuracy-kind-missing");
        // whatever is written of it, either fix leaves a whole line
        for f in &all[0].fixes {
            let e = &f.edits[0];
            let mut corrected = text.clone();
            corrected.replace_range(e.loc.span.range(), &e.text);
            assert_eq!(errors(&corrected), [], "{corrected}");
        }
    }
    assert_eq!(errors(&t(" of full scale")), []);
}

#[test]
fn a_blank_stands_beside_a_text_in_quotes() {
    let (code, about, says) = error(&text("", "limit 50 W \"x\"erp"));
    assert_eq!((code, &*about), ("unexpected-word", "erp"));
    assert!(says.contains("a blank belongs between"), "{says}");
    let (code, about, _) = error(&text("antenna A1 5 dBi, sheet \"p. 1\"realized", ""));
    assert_eq!((code, &*about), ("unexpected-word", "realized"));
    let (code, about, _) = error(&text("", "limit 50 W erp\"x\""));
    assert_eq!((code, &*about), ("unexpected-word", "\"x\""));
    assert_eq!(errors(&text("", "limit 50 W \"x\" erp")), []);
    assert_eq!(errors("cable x \"t\"{ loss 1 dB/100 m/sqrt(MHz) }\n"), []);
}

#[test]
fn a_word_that_is_nearly_right_is_guessed() {
    for (station, node, meant) in [
        ("filter F1 form \"a.s2p\"", "", "from"),
        ("jumper J1 form \"a.s2p\"", "", "from"),
        ("", "run form \"a.s2p\"", "from"),
        ("transmitter TX1 25 W, typicl", "", "typical"),
        ("transmitter TX1 25 W, corected \"x\"", "", "corrected"),
        ("run M1 3 m of rg-213, corected \"x\"", "", "corrected"),
        ("run M1 3 m of rg-213, typicl", "", "typical"),
        ("receiver RX1 -119 dBm for 12 dB sinad, gues", "", "guess"),
        ("antenna A1 5 dBi, maximun", "", "maximum"),
        ("isolator IS1 { loss 0.5 dB, typicl }", "", "typical"),
        (
            "",
            "read 15 W forward, 2026-07-04, corected \"x\"",
            "corrected",
        ),
        ("", "limit 50 W erp, \"x\", carier", "carrier"),
    ] {
        let mut all = errors(&text(station, node));
        all.retain(|d| d.code.id == "unexpected-word");
        assert_eq!(all.len(), 1, "{station}{node}: {all:?}");
        let help = all[0].help.join(" ");
        assert!(
            help.contains(&format!("Did you mean `{meant}`?")),
            "{station}{node}: {help}"
        );
    }
}

/// What was right stays right.
#[test]
fn lines_that_say_one_thing_have_no_error() {
    for (station, node) in [
        ("", "limit 50 W erp pep on 145MHz, \"x\""),
        ("", "limit 50 W output carrier, sheet \"x\""),
        (
            "",
            "read 15 W forward, 2026-07-04 with W1 by X, corrected \"was 51 W\"",
        ),
        (
            "transmitter TX1 25 W ± 5 % carrier, fm, keyed 50 %, rated, \"TX-2 p. 1\"",
            "",
        ),
        (
            "transmitter TX1 { power 25 W carrier on 2m, guess; power 50 W pep on 6m, rated }",
            "",
        ),
        (
            "receiver RX1 { sensitivity -119 dBm for 12 dB sinad, guess; noise figure 6 dB, sheet \"x\" }",
            "",
        ),
        (
            "receiver RX1 -119 dBm for 12 dB sinad guess, noise figure 6 dB",
            "",
        ),
        (
            "isolator IS1 0.5 dB typical nominal, sheet \"x\", mast, since 2026-06",
            "",
        ),
        (
            "run M1 3 m of rg-213, mast, added 0.2 dB guess, wet 0.1 dB, rated",
            "",
        ),
        ("position 49° S 123° W, etrs89", ""),
        (
            "protector SP1 { loss 0.1 dB on 2m, guess; loss 0.2 dB on 6m, sheet \"x\" }",
            "",
        ),
    ] {
        let mut all = errors(&text(station, node));
        all.retain(|d| matches!(d.code.id, "unexpected-word" | "words-exclude"));
        assert_eq!(all, [], "{station}{node}");
    }
}

/// What is said twice is an error, also where lowering would take the last one.
#[test]
fn what_is_said_twice_is_an_error() {
    for (station, node, about) in [
        (
            "antenna A1 5 dBi, height 3 m agl, height 5 m agl",
            "",
            "height",
        ),
        ("pad P1 3 dB, rating 3 W, rating 4 W", "", "rating"),
        ("pad P1 3 dB, ends n, ends uhf", "", "ends"),
        ("transmitter TX1 30 W, duty 35 %, duty 50 %", "", "duty"),
        ("transmitter TX1 30 W, fm, fm", "", "fm"),
        (
            "receiver RX1 -119 dBm, noise figure 5 dB, noise figure 6 dB",
            "",
            "noise",
        ),
        ("antenna A1 5 dBi realized realized", "", "realized"),
        ("isolator IS1 0.5 dB, guess, guess", "", "guess"),
        (
            "",
            "read 15 W forward, with W1, with W2, 2026-07-04",
            "with",
        ),
        ("ground 3 m amsl\n    ground 4 m amsl", "", "ground"),
    ] {
        let t = text(station, node);
        let mut all = errors(&t);
        all.retain(|d| d.code.id == "said-twice");
        assert_eq!(all.len(), 1, "{station}{node}: {all:?}");
        assert!(
            all[0].message.contains(&format!("`{about}`")),
            "{}",
            all[0].message
        );
        assert_eq!(all[0].related.len(), 1);
    }
    let head = |t: &str| {
        let mut all = errors(t);
        all.retain(|d| d.code.id == "said-twice");
        all.len()
    };
    assert_eq!(
        head("cable x { loss 1 dB/100 m/sqrt(MHz); velocity 0.6; velocity 0.7 }\n"),
        1
    );
    assert_eq!(
        head(
            "cable x { loss 1 dB/100 m/sqrt(MHz); accuracy 5 % k 1 to 450 MHz; accuracy 9 % k 1 }\n"
        ),
        0
    );
}

/// Lines that only other statements have, and blocks of statements that have none.
#[test]
fn what_a_block_does_not_have_is_an_error() {
    for (station, about) in [
        ("duplexer D1 { high 1 dB; low 1 dB; reversed }", "reversed"),
        ("coupler C1 { coupled 20 dB; high 1 dB }", "high"),
        ("load DL1 { height 3 m agl }", "height"),
        ("run M1 3 m of rg-213 { rating 50 W }", "rating"),
    ] {
        let t = text(station, "");
        let all = errors(&t);
        assert_eq!(all.len(), 1, "{station}: {all:?}");
        assert!(
            all[0].message.contains(&format!("`{about}`")),
            "{}",
            all[0].message
        );
    }
    let all = errors(&text("", "limit 50 W erp, \"x\" { eirp }"));
    assert_eq!(all.len(), 1, "{all:?}");
    assert!(
        all[0].message.contains("has no block"),
        "{}",
        all[0].message
    );
}

/// A name that is not defined is found where it is written, whether or not a chain uses it.
#[test]
fn unknown_names_are_found_where_they_stand() {
    for (line, code) in [
        ("run M9 3 m of nonsense", "unknown-cable"),
        ("adapter AD9 nonsense", "unknown-connector"),
        ("isolator IS9 of nonsense", "unknown-device"),
        ("pad P9 3 dB on nonsense", "unknown-band"),
        (
            "pad P9 3 dB, read 2026-07-04 with nonsense",
            "unknown-instrument",
        ),
        ("joins nonsense", "unknown-connector"),
    ] {
        let (found, about, _) = error(&text(line, ""));
        assert_eq!((found, &*about), (code, "nonsense"), "{line}");
    }
    // a definition may be used with the bands of another file
    assert_eq!(
        errors("device x { kind pad; loss 3 dB on elsewhere }\n"),
        []
    );
}

/// A figure in the line of a part and again in its block: neither counts more than the other.
#[test]
fn a_figure_in_line_and_block() {
    for (line, word) in [
        ("pad P1 3 dB, rating 5 W { rating 500 W }", "rating"),
        (
            "isolator I1 0.5 dB, isolation 20 dB { isolation 30 dB }",
            "isolation",
        ),
    ] {
        let (code, about, message) = error(&text(line, ""));
        assert_eq!(
            (code, about.as_str()),
            ("said-twice", word),
            "{line}: {message}"
        );
    }
    let station = "transmitter T1 25 W carrier, keyed 100 % { keyed 40 % }";
    assert_eq!(error(&text(station, "")).0, "said-twice");
    // a part has one rating, at whatever frequency
    let line = "pad P1 3 dB, rating 5 W { rating 3 W at 435 MHz }";
    assert_eq!(error(&text(line, "")).0, "said-twice");
}

/// Each of linearity and repeatability that is taken because it is not stated is listed, also where
/// the other is: of the meter that set the transmitter and read further on.
#[test]
fn one_missing_figure_of_a_meter_is_listed() {
    let assumed = |figures: &str| {
        let t = format!(
            "instrument W1 {{\n    accuracy 5 % of reading\n{figures}}}\n\nchain c on 145 MHz {{\n    transmitter 25 W carrier, read 2026-07-04 with W1\n    run 10 m of rg-213\n    read 22 W forward, 2026-07-04 with W1\n    load swr 1.05\n}}\n"
        );
        let s = load(&t);
        let report = downlead_report::build::chain::report(&s);
        format!("{report:?}")
    };
    let linear = assumed("    linearity 1 %\n");
    assert!(
        linear.contains("repeatability 0.6 % for W1: none is stated"),
        "{linear}"
    );
    let repeats = assumed("    repeatability 0.6 % k 1\n");
    assert!(
        repeats.contains("linearity 1 % for W1: none is stated"),
        "{repeats}"
    );
}

/// A family of ends that no connector of the files or the library has.
#[test]
fn ends_of_an_unknown_family() {
    let of = |line: &str, more: &str| errors(&format!("{more}{}", text(line, "")));
    for line in ["run M1 20 m of rg-213, ends n foo", "pad P1 3 dB, ends foo"] {
        let found = of(line, "");
        assert_eq!(found.len(), 1, "{line}: {found:?}");
        assert!(found[0].message.contains("family `foo`"));
        let own = "connector foo-pair { family foo; loss 0.1 dB }\n\n";
        assert!(of(line, own).is_empty(), "{line}");
    }
    assert!(of("pad P1 3 dB, ends n uhf", "").is_empty());
}

/// A leg is named where the part stands by its tag; a part written into the chain has no way to.
#[test]
fn a_duplexer_in_a_chain_has_nothing_to_write() {
    let found = errors(&text("", "duplexer { high 1 dB; low 1 dB }"));
    let d = found
        .iter()
        .find(|d| d.code.id == "port-needed")
        .expect("asked");
    assert!(
        d.fixes.is_empty() && d.help[0].contains("DU1.high"),
        "{d:?}"
    );
}

/// An excess loss holds on its band.
#[test]
fn an_excess_loss_of_a_band() {
    let of = |excess: &str| {
        let t = format!(
            "band b1 145 MHz\n\nband b2 435 MHz\n\nchain c on b1, b2 {{\n    transmitter 25 W carrier\n    divider 2 way{excess} {{\n        branch {{ antenna 2.15 dBi }}\n        branch {{ antenna 2.15 dBi }}\n    }}\n}}\n"
        );
        let s = load(&t);
        let all = downlead_report::build::chain::report(&s);
        (errors(&t), format!("{:?}", all))
    };
    let (found, two) = of(", excess 0.5 dB on b1, excess 1 dB on b2");
    assert!(found.is_empty(), "{found:?}");
    let (_, one) = of(", excess 0.5 dB");
    assert_ne!(one, two);
    let (found, _) = of(", excess 0.5 dB on b1");
    assert_eq!(found[0].code.id, "no-figure-for-band");
}
