//! Every diagnostic: its page shows a text that triggers it and a corrected form that does not.
//! Also that nothing else is said about those texts, and nothing about sound ones.
//!
//! In a page, a fence `downlead` holds the file `CODE.downlead`, `downlead-fixed` its corrected
//! form; a fence `downlead NAME.downlead` holds a further file that both need, `downlead-recorded`
//! the state of the file that was committed first.

mod common;

use downlead_report::Reports as _;
use std::collections::BTreeSet;
use std::sync::Arc;

use downlead_base::{CODES, Code, Diagnostic};
use downlead_eval::history::{Recorded, Recording};
use downlead_eval::{Places, Snapshot};
use downlead_station::Loader;
use downlead_testkit::{Files, example_files, examples};

/// A page taken apart.
struct Page {
    title: String,
    prose: String,
    bad: String,
    fixed: String,
    recorded: Option<String>,
    more: Vec<(String, String)>,
}

fn page(code: &Code) -> Page {
    let mut p = Page {
        title: String::new(),
        prose: String::new(),
        bad: String::new(),
        fixed: String::new(),
        recorded: None,
        more: Vec::new(),
    };
    let mut fence: Option<(String, String)> = None;
    for line in code.page.lines() {
        match (&mut fence, line.strip_prefix("```")) {
            (None, Some(info)) => fence = Some((info.trim().to_owned(), String::new())),
            (None, None) => match line.strip_prefix("# ") {
                Some(t) if p.title.is_empty() => p.title = t.to_owned(),
                _ => p.prose += &format!("{line}\n"),
            },
            (Some(f), None) => f.1 += &format!("{line}\n"),
            (Some(_), Some(_)) => {
                let (info, text) = fence.take().unwrap();
                match info.as_str() {
                    "downlead" => p.bad += &text,
                    "downlead-fixed" => p.fixed += &text,
                    "downlead-recorded" => p.recorded = Some(text),
                    _ => p.more.push((
                        info.strip_prefix("downlead ")
                            .expect("a known fence")
                            .to_owned(),
                        text,
                    )),
                }
            }
        }
    }
    assert!(fence.is_none(), "{}: a fence is open", code.id);
    p
}

fn load(code: &Code, text: &str, page: &Page) -> Snapshot {
    let main = format!("{}.downlead", code.id);
    let mut files = Files::default().with(&main, text);
    for (name, text) in &page.more {
        files = files.with(name, text.as_str());
    }
    let mut s = Snapshot::load(std::slice::from_ref(&main), &files);
    if let Some(recorded) = &page.recorded {
        let when = Recording {
            revision: "3f2a9c1".into(),
            date: "2026-07-19".into(),
            seconds: 1_784_480_400,
            author: "QY5BEN".into(),
        };
        let all = Recorded::of(&main, [(when, recorded.as_str())]);
        s.set_recorded(&main, Arc::new(all));
    }
    s
}

fn words(s: &Snapshot, d: &Diagnostic) -> String {
    let places = Places::new(s);
    let (file, _, line) = places.at(d.primary.loc);
    format!(
        "{file}:{line}: {} {}: {}",
        d.severity.name(),
        d.code.id,
        d.message
    )
}

#[test]
fn pages_have_the_tables_title_and_say_something() {
    for code in CODES {
        let p = page(code);
        assert_eq!(p.title, code.title, "{}", code.id);
        let sentences = p.prose.matches(['.', ':', ';']).count();
        assert!(sentences >= 2, "{}: hardly a word", code.id);
        assert!(
            !p.bad.is_empty() && !p.fixed.is_empty(),
            "{}: an example is missing",
            code.id
        );
        assert!(
            p.prose.len() < 1200,
            "{}: too long for a page on a screen",
            code.id
        );
    }
}

/// What an example cannot show without something else being said too, and why.
const ALSO: &[(&str, &str, &str)] = &[
    (
        "foldback",
        "swr-not-added",
        "an SWR that makes a transmitter reduce its power, with the cost",
    ),
    (
        "accept-refused",
        "part-unused",
        "what is not accepted is shown",
    ),
    (
        "accept-ended",
        "part-unused",
        "what is no longer accepted is shown",
    ),
];

#[test]
fn every_example_triggers_its_code_and_no_other() {
    let mut wrong = Vec::new();
    for code in CODES {
        let p = page(code);
        let s = load(code, &p.bad, &p);
        let found = s.diagnostics();
        if !found.iter().any(|d| d.code.id == code.id) {
            wrong.push(format!("{} is not triggered", code.id));
        }
        for d in &found {
            let also = ALSO
                .iter()
                .any(|(c, other, _)| *c == code.id && *other == d.code.id);
            if d.code.id != code.id && !also {
                wrong.push(format!("{} also gives: {}", code.id, words(&s, d)));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn every_corrected_form_is_free_of_findings() {
    let mut wrong = Vec::new();
    for code in CODES {
        let p = page(code);
        let s = load(code, &p.fixed, &p);
        wrong.extend(
            s.diagnostics()
                .iter()
                .map(|d| format!("{} corrected: {}", code.id, words(&s, d))),
        );
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// A message is a sentence, names a place in a file, and what can be corrected by one change offers
/// it in a form that really mends it.
#[test]
fn messages_are_sentences_and_preferred_fixes_mend() {
    let mut wrong = Vec::new();
    for code in CODES {
        let p = page(code);
        let s = load(code, &p.bad, &p);
        for d in s.diagnostics() {
            let m = &d.message;
            if !m.ends_with(['.', '?']) || m.starts_with(char::is_lowercase) {
                wrong.push(format!("{}: not a sentence: {m}", code.id));
            }
            for h in &d.help {
                if !h.ends_with(['.', '?', '`']) || h.starts_with(char::is_lowercase) {
                    wrong.push(format!("{}: not a sentence: {h}", code.id));
                }
            }
            if s.place(d.primary.loc).is_none() {
                wrong.push(format!("{}: the place is in no file: {m}", code.id));
            }
            for f in d.fixes.iter().filter(|f| f.preferred) {
                let main = format!("{}.downlead", code.id);
                let mut text = s.files()[0].text().to_owned();
                let mut edits: Vec<_> = f
                    .edits
                    .iter()
                    .filter_map(|e| Some((s.place(e.loc)?, &e.text)))
                    .collect();
                edits.sort_by_key(|e| std::cmp::Reverse(e.0.1.start));
                for ((file, span), with) in edits {
                    assert_eq!(s.files()[file].path, main, "{}", code.id);
                    text.replace_range(span.range(), with);
                }
                let corrected = load(code, &text, &p);
                let still = corrected
                    .diagnostics()
                    .iter()
                    .filter(|x| x.code.id == d.code.id)
                    .count();
                let before = s
                    .diagnostics()
                    .iter()
                    .filter(|x| x.code.id == d.code.id)
                    .count();
                if still >= before {
                    wrong.push(format!(
                        "{}: `{}` does not mend it:\n{text}",
                        code.id, f.title
                    ));
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Findings of results: a corrected line can bring them, since more is computed.
const OF_RESULTS: &[&str] = &["limit-not-met", "expectation-missed", "reading-contradicts"];

/// Where a fix is a choice of which the next finding says whether it was right.
const CHOICES: &[(&str, &str)] = &[("port-needed", "legs-swapped")];

/// The fixes of each finding of a text that do not mend it: after the fix the finding is gone, and
/// no error is there that was not there before.
fn useless_fixes(read: &dyn Fn(&str) -> Snapshot, main: &str, bad: &str) -> Vec<String> {
    let errors = |s: &Snapshot| -> BTreeSet<String> {
        let list = s.diagnostics().into_iter();
        list.filter(|d| d.severity == downlead_base::Severity::Error)
            .filter(|d| !OF_RESULTS.contains(&d.code.id))
            .map(|d| d.code.id.to_owned())
            .collect()
    };
    let s = read(bad);
    let (before, had) = (errors(&s), s.diagnostics());
    let mut wrong = Vec::new();
    for d in &had {
        for f in &d.fixes {
            let mut text = bad.to_owned();
            let mut edits: Vec<_> = f
                .edits
                .iter()
                .filter_map(|e| Some((s.place(e.loc)?, &e.text)))
                .collect();
            edits.sort_by_key(|e| std::cmp::Reverse(e.0.1.start));
            if edits.iter().any(|e| s.files()[e.0.0].path != main) {
                continue;
            }
            for ((_, span), with) in edits {
                text.replace_range(span.range(), with);
            }
            let corrected = read(&text);
            let same = |list: &[Diagnostic]| list.iter().filter(|x| x.code.id == d.code.id).count();
            let mut new = errors(&corrected);
            new.retain(|n| !before.contains(n) && !CHOICES.contains(&(d.code.id, n)));
            if same(&corrected.diagnostics()) >= same(&had) || !new.is_empty() {
                wrong.push(format!(
                    "{}: `{}` does not mend it, new: {new:?}\n{text}",
                    d.code.id, f.title
                ));
            }
        }
    }
    wrong
}

/// Lines with a slip, each in place of a sound line of a chain.
const SLIPS: &[(&str, &str)] = &[
    ("transmitter", "transmitter 25 W carrier ± 5 %"),
    ("transmitter", "transmitter 25 W carrier ± 1 W, fm"),
    ("transmitter", "transmitter 25 W, fm ± 5 %"),
    ("transmitter", "transmitter 25 carrier"),
    ("run", "run 28 m of half-inch-foam ± 0.5 m"),
    (
        "run",
        "run 28 m of half-inch-foam, added 0.3 dB on 2m ± 0.1 dB",
    ),
    ("run", "run 28 m of half-inch-foam velocity 0.66"),
    ("run", "run 28 metres of half-inch-foam"),
    ("filter", "filter 0.5 dBi"),
    ("filter", "filter 0.5 dB typical ± 0.1 dB"),
    ("filter", "filter -0.5 dB"),
    ("filter", "filter 0.7 dB to 0.3 dB"),
    ("read", "read 22 W forward ± 5 %, 2026-07-04"),
    ("read", "read 22 W net ± 0.3 dB, 2026-07-04 with W1"),
    ("read", "read 22 W, 2026-07-04 with W1"),
    ("read", "read swr 1.1, 2026-07-04 with W7"),
    ("expect", "expect erp 60 W"),
    ("antenna", "antenna 4.5 dB"),
    ("antenna", "antenna 4.5 dBi realized ± 0.5 dB"),
    ("antenna", "antenna 4.5 dBi, swr 1.3 on 2m ± 0.1"),
    ("limit", "limit 90 W"),
    ("limit", "limit 90 W erp ± 0.5 dB"),
    ("limit", "limit 90 W ± 0.5 dB erp, \"x\""),
    ("limit", "limit 90 W erp eirp, \"x\""),
    ("limit", "limit 90 W erp k 2, \"x\""),
];

#[test]
fn every_fix_that_is_offered_mends() {
    let mut wrong = Vec::new();
    for code in CODES {
        let p = page(code);
        let read = |text: &str| load(code, text, &p);
        let bad = read(&p.bad).files()[0].text().to_owned();
        wrong.extend(useless_fixes(&read, &format!("{}.downlead", code.id), &bad));
    }
    let sound = [
        "transmitter 25 W ± 5 % carrier",
        "run 28 m of half-inch-foam",
        "filter 0.5 dB ± 0.1 dB",
        "read 22 W forward, 2026-07-04 with W1 by QY2TEC",
        "expect erp 60 W ± 3 dB",
        "antenna 4.5 dBi ± 0.5 dB",
        "limit 90 W erp, \"x\"",
    ];
    for (word, slip) in SLIPS {
        let lines: Vec<&str> = sound
            .iter()
            .map(|l| if l.starts_with(word) { *slip } else { *l })
            .collect();
        let text = format!(
            "band 2m 145 MHz\ninstrument W1 {{ accuracy 5 % of reading }}\nchain c on 2m {{\n    {}\n}}\n",
            lines.join("\n    ")
        );
        let read = |text: &str| common::load(text);
        assert!(
            !read(&text).diagnostics().is_empty(),
            "nothing is said of `{slip}`"
        );
        wrong.extend(useless_fixes(&read, common::MAIN, &text));
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// A `±` after a word is one matter, and the fix puts it after the figure.
#[test]
fn a_tolerance_after_a_word_goes_to_its_figure() {
    for (line, corrected) in [
        ("read 22 W forward ± 5 %", "read 22 W ± 5 % forward"),
        ("limit 90 W erp ± 0.5 dB, \"x\"", "limit 90 W erp, \"x\""),
    ] {
        let text = format!(
            "chain c on 145 MHz {{\n    transmitter 25 W ± 5 % carrier\n    {line}\n    antenna 4.5 dBi ± 0.5 dB\n}}\n"
        );
        let s = common::load(&text);
        let found = s.diagnostics();
        let d: Vec<_> = found
            .iter()
            .filter(|d| d.severity == downlead_base::Severity::Error)
            .filter(|d| !OF_RESULTS.contains(&d.code.id))
            .collect();
        assert_eq!(d.len(), 1, "{line}: {d:?}");
        let mut out = text.clone();
        let mut edits = d[0].fixes[0].edits.clone();
        edits.sort_by_key(|e| std::cmp::Reverse(e.loc.span.start));
        for e in edits {
            let (_, span) = s.place(e.loc).expect("a place");
            out.replace_range(span.range(), &e.text);
        }
        assert!(out.contains(&format!("    {corrected}\n")), "{out}");
    }
}

/// What is rightly said about the examples: file, code, why.
const EXPECTED: &[(&str, &str, &str)] = &[
    (
        "bench/four-cables.downlead",
        "cable-differs",
        "the scenario: A is wet",
    ),
    (
        "bench/four-cables.downlead",
        "reading-cannot-tell",
        "the scenario: short pieces of good cable on the lowest bands",
    ),
    (
        "bench/four-cables.downlead",
        "baseline-drift",
        "the scenario: a transmitter that sags",
    ),
    (
        "hf-multiband.downlead",
        "swr-not-added",
        "a doublet far off resonance is what the tuner is for",
    ),
    (
        "pellgarrow/rev1.downlead",
        "limit-cannot-tell",
        "the scenario: both bands nearer to the limit than the uncertainty",
    ),
    (
        "pellgarrow/rev3.downlead",
        "limit-cannot-tell",
        "the scenario: 2 m after the cable was renewed",
    ),
    (
        "pellgarrow/rev3.downlead",
        "limit-not-met",
        "the scenario: 70 cm after the cable was renewed",
    ),
    (
        "bench/three-years.downlead",
        "cable-differs",
        "the scenario: the jumper gets worse from year to year",
    ),
    (
        "licence/hill.downlead",
        "rule-duty",
        "the scenario: both transmitters together radiate more than 10 W EIRP",
    ),
    (
        "site-log/hill.downlead",
        "swr-falling",
        "the scenario: the main run takes in water",
    ),
    (
        "site/hill.downlead",
        "exposure-cannot-judge",
        "the scenario: the platform is within the length of the antenna",
    ),
    (
        "site/hill.downlead",
        "frequency-plan",
        "the scenario: the tenant is one split above the transmitter",
    ),
    (
        "site/hill.downlead",
        "isolation-contradicts",
        "the scenario: the antennas are not exactly in line",
    ),
    (
        "site/hill.downlead",
        "desense-not-met",
        "the scenario: the tenant's noise falls on the repeater's input",
    ),
    (
        "shack/shack.downlead",
        "one-loss-many-bands",
        "both protectors are guessed by one figure for all bands",
    ),
];

#[test]
fn examples_give_no_false_alarm() {
    let names = example_files();
    assert!(names.len() >= 10, "the examples are there: {names:?}");
    let mut unused: BTreeSet<(&str, &str)> = EXPECTED.iter().map(|e| (e.0, e.1)).collect();
    let mut wrong = Vec::new();
    for name in &names {
        let s = Snapshot::load(std::slice::from_ref(name), &examples());
        for d in s.diagnostics() {
            match EXPECTED.iter().find(|e| e.0 == name && e.1 == d.code.id) {
                Some(e) => drop(unused.remove(&(e.0, e.1))),
                None => wrong.push(words(&s, &d)),
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(unused.is_empty(), "expected and not found: {unused:?}");
}

/// The library read as a user's own file. That its names take the library's place is then true.
#[test]
fn library_gives_no_false_alarm() {
    for f in &downlead_station::library().files {
        let (name, f) = f;
        let s = common::load(f.text());
        let found: Vec<String> = s
            .diagnostics()
            .iter()
            .filter(|d| d.code.id != "library-replaced")
            .map(|d| words(&s, d))
            .collect();
        assert!(found.is_empty(), "{name}:\n{}", found.join("\n"));
    }
}

/// The texts of the examples and of all corrected forms.
fn sound_texts() -> Vec<(String, String)> {
    let mut texts: Vec<(String, String)> = example_files()
        .into_iter()
        .map(|n| (n.clone(), examples().read(&n).expect("a file").to_string()))
        .collect();
    for code in CODES {
        texts.push((format!("{} corrected", code.id), page(code).fixed));
    }
    texts
}

/// Findings of one text, by code and message. Files it uses are not there; that adds the same to
/// both sides of a comparison.
fn said(text: &str) -> Vec<(&'static str, String)> {
    common::load(text)
        .diagnostics()
        .into_iter()
        .map(|d| (d.code.id, d.message))
        .collect()
}

/// Changes one line after the other; reports where nothing new is said about it.
fn lines_in_silence(change: impl Fn(&str) -> Option<String>) -> BTreeSet<String> {
    let mut silent = BTreeSet::new();
    for (name, text) in sound_texts() {
        // its station stands in a file that is not there: `words_too_many_in_variants` looks at them
        if name.starts_with("variants/") {
            continue;
        }
        let before = said(&text);
        let lines: Vec<&str> = text.lines().collect();
        for (i, line) in lines.iter().enumerate() {
            let code = line.split("//").next().unwrap_or("").trim_end();
            let Some(changed) = change(code) else {
                continue;
            };
            let mut all = lines.clone();
            all[i] = &changed;
            if said(&all.join("\n")).iter().all(|d| before.contains(d)) {
                silent.insert(format!("{name}:{}: {}", i + 1, changed.trim()));
            }
        }
    }
    silent
}

const PARTS: &[&str] = &[
    "antenna",
    "protector",
    "divider",
    "load",
    "receiver",
    "transceiver",
    "isolator",
    "transmitter",
    "duplexer",
    "diplexer",
    "switch",
    "tuner",
];

#[test]
fn a_word_too_many_is_never_swallowed() {
    let silent = lines_in_silence(|code| {
        let (head, tail) = code
            .strip_suffix('{')
            .map_or((code, ""), |h| (h.trim_end(), " {"));
        let words: Vec<&str> = head.split_whitespace().collect();
        let free = words.is_empty()
            || head.trim_start().starts_with("use ")
            || code.ends_with('}')
            // a tag, the name of a branch, the criterion of a sensitivity
            || words.len() == 1 && (PARTS.contains(&words[0]) || words[0] == "branch")
            || head.contains(" for ");
        (!free).then(|| format!("{head} xyzzy{tail}"))
    });
    assert!(
        silent.is_empty(),
        "{}",
        silent.into_iter().collect::<Vec<_>>().join("\n")
    );
}

#[test]
fn a_line_without_its_value_is_never_passed_over() {
    let silent = lines_in_silence(|code| {
        let indent = code.len() - code.trim_start().len();
        let words: Vec<&str> = code.split_whitespace().collect();
        // what may stand alone: an antenna without a gain, a load without a rating, a receiver of
        // which nothing is known; and `in` the station its block
        let free = words.len() < 2
            || code.contains(['{', '}'])
            || matches!(words[0], "antenna" | "load" | "receiver" | "use");
        (!free).then(|| format!("{}{}", &code[..indent], words[0]))
    });
    assert!(
        silent.is_empty(),
        "{}",
        silent.into_iter().collect::<Vec<_>>().join("\n")
    );
}

/// Half a line, cut behind each of its words, never brings the program down and, where it breaks
/// the line, costs few findings: one slip is one matter.
#[test]
fn one_slip_is_no_flood() {
    let mut worst = (0, String::new());
    for (name, text) in sound_texts() {
        let before = said(&text);
        let lines: Vec<&str> = text.lines().collect();
        for (i, line) in lines.iter().enumerate() {
            for (cut, _) in line
                .match_indices(' ')
                .filter(|(c, _)| !line[..*c].trim().is_empty())
            {
                let mut all = lines.clone();
                all[i] = &line[..cut];
                let new: Vec<String> = said(&all.join("\n"))
                    .into_iter()
                    .filter(|d| !before.contains(d))
                    .map(|d| format!("{}: {}", d.0, d.1))
                    .collect();
                if new.len() > worst.0 {
                    worst = (
                        new.len(),
                        format!("{name}:{}: {}\n{}", i + 1, &line[..cut], new.join("\n")),
                    );
                }
            }
        }
    }
    // a name whose definition is gone is missing at each of its uses
    assert!(worst.0 <= 8, "{} findings for {}", worst.0, worst.1);
}

/// However many transmitters feed one port, that is one finding.
#[test]
fn one_port_that_many_feed_is_one_finding() {
    let chain = |n: u32| {
        format!("    chain c{n} on 14{n} MHz {{\n        TX{n}\n        M1\n        A1\n    }}\n")
    };
    let text = format!(
        "station s {{\n    transmitter TX4 9 W carrier\n    transmitter TX5 9 W carrier\n    transmitter TX6 9 W carrier\n    run M1 9 m of rg-213\n    antenna A1 2 dBi\n{}{}{}}}\n",
        chain(4),
        chain(5),
        chain(6)
    );
    let s = common::load(&text);
    let found = s.diagnostics();
    let of: Vec<_> = found
        .iter()
        .filter(|d| d.code.id == "port-used-twice")
        .collect();
    assert_eq!(of.len(), 1, "{of:?}");
    assert_eq!(
        of[0].message,
        "`TX4`, `TX5` and `TX6` all feed `M1` at one port."
    );
}

/// What is uncertain is named by what it is and whose: no two rows of a budget read alike.
#[test]
fn causes_are_named_apart() {
    let text = "cable c4 { construction { inner 1 mm ± 2 %; outer 3.5 mm ± 1 %; permittivity 2.1 ± 0.1; loss-tangent 0.0002 }; source \"s\" }
station s {
    receiver RX1 -119 dBm for 12 dB sinad, noise figure 6 dB ± 1 dB
    preamplifier PR1 20 dB ± 1 dB gain, noise figure 1 dB ± 0.3 dB
    antenna A1 4.5 dBi ± 0.5 dB
    chain in on 145 MHz receive {
        A1
        run 20 m ± 1 m of c4
        PR1
        isolator 0.4 dB ± 0.1 dB, isolation 20 dB ± 3 dB, swr 1.3 ± 0.1, reversed
        RX1
    }
}
";
    let s = common::load(text);
    let v = serde_json::to_value(s.report()).expect("JSON");
    let band = &v["stations"][0]["chains"][0]["bands"][0];
    let causes: Vec<&str> = band["budget"]
        .as_array()
        .expect("a budget")
        .iter()
        .filter_map(|b| b["cause"].as_str())
        .collect();
    let distinct: BTreeSet<&&str> = causes.iter().collect();
    assert_eq!(distinct.len(), causes.len(), "{causes:?}");
    assert!(causes.contains(&"gain of PR1"), "{causes:?}");
    assert!(!causes.contains(&"loss of PR1"), "{causes:?}");
    assert!(
        causes.contains(&"dimensions of c4, permittivity"),
        "{causes:?}"
    );
}

/// A figure of a definition is named by the definition.
#[test]
fn a_cause_in_a_definition_has_its_name() {
    let s = common::load(
        "device club-isolator { kind isolator; loss 0.55 dB ± 0.15 dB; source \"s\" }
chain c on 435 MHz {
    transmitter 10 W carrier
    isolator of club-isolator
    antenna 2 dBi
}
",
    );
    let v = serde_json::to_value(s.report()).expect("JSON");
    let band = &v["stations"][0]["chains"][0]["bands"][0];
    assert_eq!(band["budget"][0]["cause"], "loss of club-isolator");
}
