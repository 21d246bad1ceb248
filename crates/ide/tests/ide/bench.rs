//! Bench sessions and logs: hints, hover, lenses, reports, and cables made of what was read.

use downlead_base::Span;
use downlead_ide::{
    Config, HintKinds, code_actions, code_lenses, file_diagnostics, hint_at, hover, inlay_hints,
    report_markdown,
};

use crate::case::{Case, applied, changes};

const ALL: Span = Span {
    start: 0,
    end: u32::MAX,
};

/// A reel and an old piece, read in every way there is.
pub(crate) const BENCH: &str = r#"cable thin "a thin one" {
    impedance 50 ohm
    velocity 0.66 ± 0.01 k 2
    loss 1.7 dB/100 m/sqrt(MHz) + 0.02 dB/100 m/MHz, typical
    accuracy 5 % k 2
    source "sheet 4, invented"
}
instrument W1 "meter at the near end" {
    accuracy 5 % of reading
    scale 100 W
}
instrument W3 "directional wattmeter" {
    accuracy 5 % of reading
    linearity 1 % of reading
    repeatability 0.6 % k 1
    scale 100 W
    calibrated 2026-02-03
    due 2028-02-03
}

session reel-7 "A reel and an old piece" {
    read 2026-07-19 with W3 by QY5BEN
    temperature 20 °C
    load return-loss 30 dB
    generator return-loss 30 dB
    piece A 20.00 m ± 0.02 m of thin, connector 2 of n-pair
    piece B 10.00 m of thin
    resonance A 4.946 MHz ± 0.01 MHz
    readings on 145 MHz {
        baseline 44.0 W at 0 min
        through A 15.3 W, 0.05 W reflected at 2 min
        through B 23.7 W at 4 min
        baseline 43.0 W at 6 min
        equalise 44.0 W with W1, against 43.6 W with W3
    }
    readings on 29 MHz {
        baseline 60.0 W at 8 min
        through A 38.8 W at 9 min
        through A 38.6 W at 10 min
        through A 40.0 W with W1 at 11 min
        baseline 60.0 W at 12 min
    }
    readings on 50 MHz {
        open B 2.6 dB
        short B 2.8 dB
    }
    readings from "late.csv"
}
// file: late.csv
frequency_mhz,piece,time_min,forward_w
435,baseline,0,30.0
435,A,2,4.0
435,B,4,12.0
435,baseline,6,30.0
435,Q,7,12.0
435,A,8,much
"#;

pub(crate) const SITE: &str = r#"band 2m 145.3 MHz
band 70cm 433 MHz

instrument W3 "directional wattmeter" {
    accuracy 5 % of reading
}

station hill {
    transmitter TX1 30 W ± 5 % carrier, fm
    run M1 28 m of half-inch-foam, at 15 °C
    antenna A1 4.5 dBi ± 0.5 dB, swr 1.2

    chain talk-out on 2m, 70cm transmit {
        TX1
        connector 2 of n-pair
        M1
        readings from "site.csv"
        A1
    }
}
// file: site.csv
after,band,date,forward_w,reflected_w,instrument,person
M1,2m,2022-07-04,24.5,0.2,W3,QY2TEC
M1,2m,2023-07-06,23.4,0.2,W3,QY2TEC
M1,2m,2024-07-01,22.6,0.2,W3,QY2TEC
M1,70cm,2024-07-01,20.6,0.2,W3,QY2TEC
"#;

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

/// `BENCH` with the cursor behind the first place of a text.
fn at(text: &str, word: &str) -> Case {
    let i = text.find(word).expect("a text of the session") + word.len();
    Case::new(&format!("{}$0{}", &text[..i], &text[i..]))
}

#[test]
fn beside_every_reading() {
    let c = Case::new(BENCH);
    let shown = picture(&c, &Config::default());
    insta::assert_snapshot!(&shown[shown.find("session").unwrap()..]);
}

#[test]
fn beside_a_log() {
    let c = Case::new(SITE);
    let shown = picture(&c, &Config::default());
    insta::assert_snapshot!(&shown[shown.find("    chain").unwrap()..]);
    let line = c.text().find("readings from").unwrap();
    let end = line + c.text()[line..].find('\n').unwrap();
    let hint = hint_at(&c.s, c.doc, u32::try_from(end).unwrap(), &Config::default());
    insta::assert_snapshot!(hint.unwrap().tooltip);
}

#[test]
fn two_bands_of_a_log_are_shown_and_all_explained() {
    let text = SITE
        .replace("band 70cm 433 MHz", "band 70cm 433 MHz\nband 6m 50.3 MHz")
        .replace("on 2m, 70cm transmit", "on 2m, 70cm, 6m transmit")
        + "M1,6m,2024-07-01,26.6,0.2,W3,QY2TEC\n";
    let c = at(&text, "readings from \"site.csv\"");
    let hint = hint_at(&c.s, c.doc, c.cursor(), &Config::default()).unwrap();
    assert!(!hint.text().contains("26.6 W") && hint.text().contains("20.6 W"));
    assert!(hint.tooltip.contains("26.6 W"), "{}", hint.tooltip);
}

#[test]
fn a_reading_derives_its_loss() {
    let c = at(BENCH, "through A 15.3 W, 0.05 W reflected at 2 min");
    let hint = hint_at(&c.s, c.doc, c.cursor(), &Config::default()).unwrap();
    insta::assert_snapshot!(hint.tooltip);
    // the loss leads to the piece
    let to = hint.parts.iter().find_map(|p| p.target).unwrap();
    assert_eq!(c.show(to), "main.downlead:26 A");
}

#[test]
fn one_switch_for_all_of_them() {
    let c = Case::new(BENCH);
    let off = Config {
        hints: HintKinds {
            readings: false,
            cables: false,
            ..Config::default().hints
        },
        ..Config::default()
    };
    assert_eq!(inlay_hints(&c.s, c.doc, ALL, &off), []);
    let one_band = Config {
        bands: vec!["29 MHz".to_owned()],
        ..Config::default()
    };
    let shown = picture(&c, &one_band);
    let with = |word: &str| {
        let line = shown.lines().find(|l| l.trim_start().starts_with(word));
        line.expect(word).contains('⟦')
    };
    assert!(
        !with("through A 15.3 W") && with("through A 38.8 W"),
        "{shown}"
    );
}

#[test]
fn errors_elsewhere_hide_nothing() {
    let whole = Case::new(BENCH);
    let broken = Case::new(&BENCH.replace(
        "        through B 23.7 W at 4 min\n",
        "        through B 23.7 W ± ± (\n        throuhg B\n",
    ));
    let find = |c: &Case, word: &str| {
        let shown = picture(c, &Config::default());
        let line = shown.lines().find(|l| l.trim_start().starts_with(word));
        line.expect(word).to_owned()
    };
    for word in [
        "through A 15.3 W",
        "baseline 43.0 W",
        "open B",
        "readings from",
    ] {
        assert_eq!(find(&whole, word), find(&broken, word));
    }
}

#[test]
fn lenses_above_a_session() {
    let c = Case::new(BENCH);
    let out: Vec<String> = code_lenses(&c.s, c.doc, &Config::default())
        .into_iter()
        .map(|l| {
            format!(
                "{}: {} ({:?})",
                &c.text()[l.span.range()],
                l.title,
                l.command
            )
        })
        .collect();
    insta::assert_snapshot!(out.join("\n"));
}

#[test]
fn a_session_as_a_document() {
    let c = Case::new(BENCH);
    let one = report_markdown(&c.s, 0, Some("reel-7")).unwrap();
    insta::assert_snapshot!(one);
    assert_eq!(report_markdown(&c.s, 0, None), Some(one));
    assert_eq!(report_markdown(&c.s, 0, Some("reel-8")), None);
}

fn said(c: &Case) -> String {
    hover(&c.s, c.doc, c.cursor(), &Config::default())
        .expect("something is said here")
        .text
}

#[test]
fn about_pieces_readings_and_files() {
    let mut out = String::new();
    for word in [
        "session reel",
        "piece A",
        "        through B 23",
        "        through",
        "        baseline 43",
        "    readings from \"late",
        "    readin",
        "with W3",
        "    open B",
    ] {
        out.push_str(&format!(
            "### {}\n{}\n\n",
            word.trim(),
            said(&at(BENCH, word))
        ));
    }
    let site = at(SITE, "readings from \"site");
    out.push_str(&format!("### site\n{}\n", said(&site)));
    insta::assert_snapshot!(out);
}

fn titles(c: &Case) -> Vec<String> {
    code_actions(&c.s, c.doc, c.range(), &Config::default())
        .into_iter()
        .map(|a| a.title)
        .collect()
}

/// Files of a case after the action of that title.
fn after(c: &Case, title: &str) -> Case {
    let all = code_actions(&c.s, c.doc, c.range(), &Config::default());
    let a = all.iter().find(|a| a.title.starts_with(title));
    let a = a.unwrap_or_else(|| panic!("no `{title}` in {:?}", titles(c)));
    let mut out = String::new();
    for (i, f) in c.s.files().iter().enumerate() {
        let mine: Vec<_> = a
            .edits
            .iter()
            .filter(|e| e.doc == downlead_ide::Doc::File(i))
            .cloned()
            .collect();
        if i > 0 {
            out.push_str(&format!("// file: {}\n", f.path));
        }
        out.push_str(&applied(f.text(), &mine));
    }
    let rest = BENCH.find("// file: late.csv").unwrap();
    out.push_str(&BENCH[rest..]);
    Case::new(&out)
}

fn cable<'c>(c: &'c Case, name: &str) -> &'c downlead_station::model::Cable {
    c.s.scopes()[0].env().cable(name).expect("a cable")
}

/// The definition says what was read: parsed again it has no findings, and at the frequencies of
/// the readings it gives their loss within their uncertainty.
#[test]
fn a_fitted_cable_says_what_was_read() {
    let c = at(BENCH, "    piece A");
    let then = after(&c, "Put the cable as measured into this file");
    insta::assert_snapshot!(changes(c.text(), then.text()));
    let found = |c: &Case| {
        let mut all: Vec<String> = c.s.diagnostics().into_iter().map(|d| d.message).collect();
        all.sort();
        all
    };
    assert_eq!(found(&c), found(&then));
    let session = |c: &Case| {
        let items = c.s.scopes()[0].items().iter();
        items.filter_map(|x| x.2.session.clone()).next().unwrap()
    };
    let r = session(&then);
    let measured = cable(&then, "a-as-measured");
    let mut compared = 0;
    for x in r.cells.iter().filter(|x| x.piece == 0) {
        let p = x.per_length.unwrap();
        let now = downlead_eval::cable_at(measured, r.bands[x.band].hz, 20.0).unwrap();
        let off = (now.loss() - p.db_per_m).abs();
        assert!(off <= 2.0 * p.u_db_per_m, "{off} against {p:?}");
        compared += 1;
    }
    assert_eq!(compared, 3);
    // once more, there is nothing to bring up to date
    let table = &BENCH[BENCH.find("// file: late.csv").unwrap()..];
    let again = at(&format!("{}{table}", then.text()), "    piece A");
    assert!(!titles(&again).iter().any(|t| t.contains("as-measured")));
    // another reading is another cable
    let other = then.text().replace("through A 15.3 W", "through A 15.0 W");
    let other = at(&format!("{other}{table}"), "    piece A");
    let fresh = after(&other, "Bring `a-as-measured` up to date");
    let loss = |c: &Case| {
        downlead_eval::cable_at(cable(c, "a-as-measured"), 145e6, 20.0)
            .unwrap()
            .loss()
    };
    assert!(loss(&fresh) > loss(&then));
}

#[test]
fn a_run_takes_the_fit_of_its_cable() {
    let station = "station s {\n    transmitter TX1 30 W\n    run M1 28 m of thin\n    antenna A1 5 dBi\n    chain c on 145 MHz {\n        TX1\n        M1\n        A1\n    }\n}\n";
    let text = BENCH.replacen("session reel-7", &format!("{station}session reel-7"), 1);
    let c = at(&text, "    run M1");
    let then = after(&c, "Use `a-as-measured` here");
    assert!(then.text().contains("run M1 28 m of a-as-measured\n"));
    let a = cable(&then, "a-as-measured");
    assert_eq!(a.name.text.as_ref(), "a-as-measured");
    // the piece itself is still compared with its sheet
    assert!(then.text().contains("piece A 20.00 m ± 0.02 m of thin"));
    assert!(
        titles(&c)
            .iter()
            .any(|t| t.starts_with("Use `b-as-measured` here"))
    );
    // where it is defined already, only the name changes
    let twice = at(
        after(&at(&text, "    piece A"), "Put the cable").text(),
        "    run M1",
    );
    let names = code_actions(&twice.s, twice.doc, twice.range(), &Config::default());
    let a = names
        .iter()
        .find(|a| a.title.starts_with("Use `a-as-measured`"));
    assert_eq!(a.unwrap().edits.len(), 1);
}

/// Lines that a session lacks are put in with their places empty: what is in them is not guessed.
#[test]
fn missing_lines_are_put_in_to_be_filled() {
    let head = "instrument W1 {\n    accuracy 5 % of reading\n}\ninstrument W2 {\n    accuracy 5 % of reading\n}\n";
    let mut out = String::new();
    for (code, title, body) in [
        (
            "reading-incomplete",
            "Say when, with what, by whom",
            "    piece A 20 m of rg-213\n    readings on 145 MHz {\n        baseline 40 W\n        through A 20 W\n        baseline 40 W\n    }\n",
        ),
        (
            "reading-incomplete",
            "Say by whom",
            "    read 2026-07-19 with W1\n    piece A 20 m of rg-213\n    readings on 145 MHz {\n        baseline 40 W\n        through A 20 W\n        baseline 40 W\n    }\n",
        ),
        (
            "no-baseline",
            "Add a baseline",
            "    read 2026-07-19 with W1 by QY5BEN\n    piece A 20 m of rg-213\n    readings on 145 MHz {\n        through A 20 W\n    }\n",
        ),
        (
            "no-closing-baseline",
            "Add a closing",
            "    read 2026-07-19 with W1 by QY5BEN\n    piece A 20 m of rg-213\n    readings on 145 MHz {\n        baseline 40 W\n        through A 20 W\n    }\n",
        ),
        (
            "not-equalised",
            "Add the two meters",
            "    read 2026-07-19 with W1 by QY5BEN\n    piece A 20 m of rg-213\n    readings on 145 MHz {\n        through A 20 W, input 40 W with W2\n    }\n",
        ),
        (
            "one-end-only",
            "Add the reading with the far end shorted",
            "    read 2026-07-19 with W1 by QY5BEN\n    piece A 20 m of rg-213\n    readings on 145 MHz {\n        open A 3.4 dB\n    }\n",
        ),
        (
            "baseline-path",
            "Say that B went in with",
            "    read 2026-07-19 with W1 by QY5BEN\n    piece A 20 m of rg-213, ends n\n    piece B 20 m of rg-213, ends uhf\n    readings on 145 MHz {\n        baseline 40 W\n        through A 20 W\n        through B 20 W\n        baseline 40 W\n    }\n",
        ),
    ] {
        let text = format!("{head}session s {{\n{body}}}\n");
        let c = Case::new(&text);
        let list = file_diagnostics(&c.s, 0, &Config::default());
        let f = list.iter().find(|f| f.code == code);
        let f = f.unwrap_or_else(|| panic!("{code}: {list:#?}"));
        let all = code_actions(&c.s, c.doc, f.span, &Config::default());
        let a = all.iter().find(|a| a.title.starts_with(title));
        let a = a.unwrap_or_else(|| {
            panic!(
                "{code}: {:?}",
                all.iter().map(|a| &a.title).collect::<Vec<_>>()
            )
        });
        let then = applied(c.text(), &a.edits);
        let s = Case::new(&then).s;
        let errors: Vec<String> = s
            .diagnostics()
            .into_iter()
            .filter(|d| d.severity == downlead_base::Severity::Error)
            .map(|d| d.message)
            .collect();
        out.push_str(&format!(
            "{code}: {}\n{}{}\n",
            a.title,
            changes(c.text(), &then),
            errors.join("\n")
        ));
        // only what needs no figure is done with
        assert_eq!(errors.is_empty(), code == "baseline-path", "{then}");
        out.push('\n');
    }
    insta::assert_snapshot!(out);
}

/// A two-port that loses 3.01 dB (|S21|² = 1/2) and reflects nothing.
#[test]
fn a_reading_by_a_network_file() {
    let text = "instrument V1 {\n    accuracy 0.05 dB\n}\nsession s {\n    read 2026-07-19 with V1 by QY5BEN\n    piece B 40 m of rg-213\n    readings on 145 MHz {\n        through B from \"b.s$02p\"\n    }\n}\n// file: b.s2p\n# MHz S RI R 50\n140 0 0 0.70710678 0 0.70710678 0 0 0\n150 0 0 0.70710678 0 0.70710678 0 0 0\n";
    let c = Case::new(text);
    let shown = picture(&c, &Config::default());
    let line = shown.lines().find(|l| l.contains("through B")).unwrap();
    assert!(line.contains("⟦ 3.01 dB, "), "{line}");
    let text = said(&c);
    assert!(
        text.starts_with("**b.s2p** · network file\n\n2 ports, 2 points, 140 MHz to 150 MHz\n"),
        "{text}"
    );
    assert!(text.contains("loss of B on 145 MHz"), "{text}");
}
