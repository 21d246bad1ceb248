//! Every finding that has a quick fix: what is offered for the example of its page in the
//! diagnostics table, and that the fix takes the finding away.

use downlead_base::CODES;
use downlead_eval::Snapshot;
use downlead_ide::{Config, Doc, code_actions, file_diagnostics};
use downlead_testkit::{Files, fences};

use crate::case::applied;

/// What is offered for the examples of the pages.
const FIXES: [&str; 43] = [
    r#"invalid-character: Write `"` (preferred)"#,
    r"unclosed-string: Close the text here",
    r"unclosed-block: Close the block",
    r"unmatched-brace: Remove it",
    r"not-understood: Write `28.5`",
    r"unknown-statement: Write `run` (preferred)",
    r"unexpected-word: Write `added`",
    r"duplicate-name: Name this one `M2`",
    r"unknown-name: Write `tower`",
    r"unknown-cable: Write `rg-213`",
    r"unknown-connector: Write `n-pair`",
    r"unknown-device: Write `isolator-single`",
    r"unknown-place: Define place `maast` | Write `mast`",
    r"missing-unit: Write `28 cm` | Write `28 km` | Write `28 m` | Write `28 mm`",
    r"unknown-unit: Write `W` (preferred)",
    r"levels-added: Write the powers in watts",
    r"power-times-decibel: Write a level plus decibels",
    r"gain-without-reference: Write `6 dBd` | Write `6 dBi`",
    r"reference-on-loss: Write plain dB (preferred)",
    r"negative-loss: Write `1.5 dB` (preferred)",
    r"height-without-datum: Write `agl` (preferred)",
    r"position-without-datum: Write `, wgs84`",
    r"figure-twice: Remove the first one | Remove this figure",
    r"power-kind-missing: Write `mean`",
    r"accuracy-kind-missing: Write `of full scale` | Write `of reading`",
    r"loss-rate-implausible: Write the losses in `dB/100 ft`",
    r"percent-added: Write them in dB",
    r"excess-digits: Write `30.8 W`",
    r"frequency-off-band: Write `145.3 MHz`",
    r"temperature-unlikely: Write °F",
    r"mixed-length-units: Write all lengths here in feet | Write all lengths here in metres",
    r"chain-without-end: End it in a dummy load",
    r"part-unused: Remove `SP1`",
    r"port-needed: Write `DU1.high` | Write `DU1.low`",
    r"connector-gap: Put `adapter n-to-uhf` between",
    r"legs-swapped: Write `DU1.high` (preferred)",
    r"duplexer-across-bands: Make it a diplexer",
    r"diplexer-for-pair: Make it a duplexer",
    r"protector-behind: Let `SP1` and `DU1.high` change places",
    r"limit-not-met: Turn the transmitter down to `18.0 W`, the most that keeps the limit with its uncertainty",
    r"limit-cannot-tell: Turn the transmitter down to `18.0 W`, the most that keeps the limit with its uncertainty",
    r"limit-in-the-cold: Give the run a range of temperature, -20 °C to 35 °C to begin with",
    r"limit-without-kind: Write `eirp` | Write `erp` | Write `output`",
];

fn load(sections: &str) -> Snapshot {
    Snapshot::load(&["main.downlead".to_owned()], &Files::new(sections))
}

/// All texts of a snapshot in sections again, with edits.
fn edited(s: &Snapshot, edits: &[downlead_ide::TextEdit]) -> Snapshot {
    let mut files = Files::default();
    for (i, f) in s.files().iter().enumerate() {
        let mine: Vec<_> = edits
            .iter()
            .filter(|e| e.doc == Doc::File(i))
            .cloned()
            .collect();
        files.put(&f.path, applied(f.text(), &mine));
    }
    Snapshot::load(&["main.downlead".to_owned()], &files)
}

/// How often a code finds something with these words.
fn count(s: &Snapshot, code: &str, message: &str) -> usize {
    let all = s.diagnostics();
    all.iter()
        .filter(|d| d.code.id == code && message.starts_with(&d.message))
        .count()
}

/// What is offered for the findings of a code in a text.
fn offered(s: &Snapshot, code: &'static str) -> Vec<String> {
    let config = Config::default();
    let mut titles = Vec::new();
    for (file, _) in s.files().iter().enumerate() {
        for f in file_diagnostics(s, file, &config)
            .iter()
            .filter(|f| f.code == code)
        {
            let list = code_actions(s, Doc::File(file), f.span, &config);
            let mine = list.iter().filter(|a| {
                a.codes.contains(&code)
                    && a.disabled.is_none()
                    && a.finding.is_none_or(|x| x == f.span)
            });
            for a in mine {
                let after = edited(s, &a.edits);
                assert!(
                    count(&after, code, &f.message) < count(s, code, &f.message),
                    "{code}: `{}` leaves it there:\n{}",
                    a.title,
                    after.files()[0].text()
                );
                let mark = if a.preferred { " (preferred)" } else { "" };
                titles.push(format!("{}{mark}", a.title));
            }
        }
    }
    titles.sort();
    titles.dedup();
    titles
}

#[test]
fn what_is_offered_for_each_code() {
    let mut found = Vec::new();
    for code in CODES {
        let page = fences(code.page);
        // some are shown by files beside a station, which this test has not
        let Some(example) = page.iter().find(|f| f.info == "downlead") else {
            continue;
        };
        let titles = offered(&load(&example.text), code.id);
        if !titles.is_empty() {
            found.push(format!("{}: {}", code.id, titles.join(" | ")));
        }
    }
    for want in FIXES {
        assert!(
            found.iter().any(|f| f == want),
            "{want}\nis not among\n{}",
            found.join("\n")
        );
    }
}

/// The corrected text of a page's example is, where there is one clear answer, what the fix writes.
#[test]
fn fixes_write_what_the_pages_recommend() {
    for (id, title) in [
        ("levels-added", "Write the powers in watts"),
        ("power-times-decibel", "Write a level plus decibels"),
        ("figure-twice", "Remove this figure"),
        ("excess-digits", "Write `30.8 W`"),
        ("loss-rate-implausible", "Write the losses in"),
        ("mixed-length-units", "Write all lengths here in metres"),
        ("connector-gap", "Put `adapter n-to-uhf` between"),
        ("duplexer-across-bands", "Make it a diplexer"),
    ] {
        let code = downlead_base::code_named(id).unwrap();
        let page = fences(code.page);
        let text = |info: &str| &page.iter().find(|f| f.info == info).unwrap().text;
        let s = load(text("downlead"));
        let f = file_diagnostics(&s, 0, &Config::default());
        let f = f.iter().find(|f| f.code == id).unwrap();
        let list = code_actions(&s, Doc::File(0), f.span, &Config::default());
        let a = list
            .iter()
            .find(|a| a.title.starts_with(title))
            .unwrap_or_else(|| panic!("{id}: {list:?}"));
        let after = edited(&s, &a.edits);
        let fixed = load(text("downlead-fixed"));
        let mut want = fixed.files()[0].text().to_owned();
        // the pages round: 10 lg 50000 = 46.99, and a foot is 0.3048 m exactly
        want = want.replace("47 dBm", "46.99 dBm");
        want = want.replace(
            "jumper 1.5 m of rg-213\n    run 28 m of half-inch-foam\n",
            "jumper 1.524 m of rg-213\n    run 28 m of half-inch-foam\n",
        );
        assert_eq!(after.files()[0].text(), want, "{id}");
    }
}

#[test]
fn the_rest_of_a_statement_stays() {
    let text = "band b 145 MHz\nstation s {\n    transmitter TX1 5 W carrier\n    antenna A1 5 dBi, swr 1.3, return-loss 9.5 dB, sheet \"x\"\n    pad P9 1 dB // spare\n    pad P8 {\n        loss 1 dB\n    }\n    chain c on b {\n        TX1\n        A1\n    }\n}\n";
    let s = load(text);
    let take = |code: &str, title: &str| {
        let f = file_diagnostics(&s, 0, &Config::default());
        f.iter()
            .filter(|f| f.code == code)
            .flat_map(|f| code_actions(&s, Doc::File(0), f.span, &Config::default()))
            .find(|a| a.title == title)
            .map(|a| applied(text, &a.edits))
    };
    assert_eq!(
        take("figure-twice", "Remove this figure"),
        Some(text.replace(", return-loss 9.5 dB", ""))
    );
    assert_eq!(
        take("figure-twice", "Remove the first one"),
        Some(text.replace(", swr 1.3", ""))
    );
    assert_eq!(
        take("part-unused", "Remove `P8`"),
        Some(text.replace("    pad P8 {\n        loss 1 dB\n    }\n", ""))
    );
    // a comment at the line may hold information
    assert_eq!(take("part-unused", "Remove `P9`"), None);
}

/// A snapshot that knows an earlier state of its text.
fn recalled(mut s: Snapshot, earlier: &str) -> Snapshot {
    use downlead_eval::history::{Recorded, Recording};
    let when = Recording {
        revision: "3f2a9c1".into(),
        date: "2026-07-19".into(),
        seconds: 1_784_480_400,
        author: "QY5BEN".into(),
    };
    let all = Recorded::of("main.downlead", [(when, earlier)]);
    s.set_recorded("main.downlead", std::sync::Arc::new(all));
    s
}

/// The length goes back, or stays with a reason.
#[test]
fn a_length_that_looks_mistyped_is_put_back_or_explained() {
    let code = downlead_base::code_named("length-mistyped").unwrap();
    let page = fences(code.page);
    let text = |info: &str| &*page.iter().find(|f| f.info == info).unwrap().text;
    let earlier = text("downlead-recorded");
    let c = Config::default();
    let of = |s: &Snapshot| -> Vec<_> {
        let all = file_diagnostics(s, 0, &c).into_iter();
        all.filter(|f| f.code == "length-mistyped").collect()
    };
    let s = recalled(load(text("downlead")), earlier);
    let f = of(&s);
    assert_eq!(f.len(), 1);
    let list = code_actions(&s, Doc::File(0), f[0].span, &c);
    let after = |title: &str| {
        let a = list.iter().find(|a| a.title == title);
        let done = edited(&s, &a.unwrap_or_else(|| panic!("{list:#?}")).edits);
        let text = done.files()[0].text().to_owned();
        assert!(of(&recalled(done, earlier)).is_empty(), "{title}");
        text
    };
    assert_eq!(after("Write `46 m ± 0.5 m` as before"), earlier);
    let kept = after("Keep the new length and say what it was");
    assert!(
        kept.contains("half-inch-foam, corrected \"was 46 m ± 0.5 m\"\n"),
        "{kept}"
    );
}

/// A reading that differs from its history: the figure is put back, or stays with a reason.
#[test]
fn a_reading_that_was_changed_is_put_back_or_explained() {
    let code = downlead_base::code_named("reading-edited").unwrap();
    let page = fences(code.page);
    let text = |info: &str| &page.iter().find(|f| f.info == info).unwrap().text;
    let recall = |s: Snapshot| recalled(s, text("downlead-recorded"));
    let s = recall(load(text("downlead")));
    let c = Config::default();
    let f = file_diagnostics(&s, 0, &c);
    assert_eq!(f.len(), 1, "{f:#?}");
    let list = code_actions(&s, Doc::File(0), f[0].span, &c);
    let mut after = Vec::new();
    for title in [
        "Write it as it was recorded",
        "Keep the new figure and say what it was",
    ] {
        let a = list.iter().find(|a| a.title == title);
        let done = edited(&s, &a.unwrap_or_else(|| panic!("{list:#?}")).edits);
        after.push(done.files()[0].text().to_owned());
        assert!(file_diagnostics(&recall(done), 0, &c).is_empty(), "{title}");
    }
    assert_eq!(after[0], *text("downlead-recorded"));
    assert!(
        after[1].contains("through A 28.9 W at 2 min, corrected \"was 29.8 W\"\n"),
        "{}",
        after[1]
    );
    // and the finding follows the text
    let mut s = recall(load(text("downlead-recorded")));
    assert!(file_diagnostics(&s, 0, &c).is_empty());
    let at = s.files()[0].text().find("44.0 W").unwrap() as u32;
    struct Nothing;
    impl downlead_station::Loader for Nothing {
        fn read(&self, _: &str) -> Result<std::sync::Arc<str>, downlead_station::LoadError> {
            Err(downlead_station::LoadError::NotFound)
        }
    }
    s.edit(0, downlead_base::Span::new(at, at + 4), "44.4", &Nothing);
    let f = file_diagnostics(&s, 0, &c);
    let said = "This reading was 44.0 W when QY5BEN recorded it on 2026-07-19 (3f2a9c1); now it is 44.4 W.";
    assert!(f.iter().any(|f| f.message.starts_with(said)), "{f:#?}");
}
