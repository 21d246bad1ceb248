//! Every diagnostic: its page shows a text that triggers it and a mended form that does not.
//! Also that nothing else is said about those texts, and nothing about sound ones.
//!
//! In a page, a fence `downlead` holds the file `CODE.downlead`, `downlead-fixed` its mended form;
//! a fence `downlead NAME.downlead` holds a further file that both need.

mod common;

use std::collections::BTreeSet;

use downlead_base::{CODES, Code, Diagnostic, Severity};
use downlead_eval::{Places, Snapshot};
use downlead_station::Loader;
use downlead_testkit::{Files, example_files, examples};

/// A page taken apart.
struct Page {
    title: String,
    prose: String,
    bad: String,
    fixed: String,
    more: Vec<(String, String)>,
}

fn page(code: &Code) -> Page {
    let mut p = Page { title: String::new(), prose: String::new(), bad: String::new(), fixed: String::new(), more: Vec::new() };
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
                    _ => p.more.push((info.strip_prefix("downlead ").expect("a known fence").to_owned(), text)),
                }
            }
        }
    }
    assert!(fence.is_none(), "{}: a fence is open", code.id);
    p
}

fn load(code: &Code, text: &str, more: &[(String, String)]) -> Snapshot {
    let main = format!("{}.downlead", code.id);
    let mut files = Files::default().with(&main, text);
    for (name, text) in more {
        files = files.with(name, text.as_str());
    }
    Snapshot::load(&[main], &files)
}

fn words(s: &Snapshot, d: &Diagnostic) -> String {
    let places = Places::new(s);
    let (file, _, line) = places.at(d.primary.loc);
    format!("{file}:{line}: {} {}: {}", d.severity.name(), d.code.id, d.message)
}

#[test]
fn pages_have_the_tables_title_and_say_something() {
    for code in CODES {
        let p = page(code);
        assert_eq!(p.title, code.title, "{}", code.id);
        let sentences = p.prose.matches(['.', ':', ';']).count();
        assert!(sentences >= 2, "{}: hardly a word", code.id);
        assert!(!p.bad.is_empty() && !p.fixed.is_empty(), "{}: an example is missing", code.id);
        assert!(p.prose.len() < 1200, "{}: too long for a page on a screen", code.id);
    }
}

/// What an example cannot show without something else being said too, and why.
const ALSO: &[(&str, &str, &str)] =
    &[("foldback", "swr-not-added", "an SWR that makes a transmitter turn down is one whose cost is told")];

#[test]
fn every_example_triggers_its_code_and_no_other() {
    let mut wrong = Vec::new();
    for code in CODES {
        let p = page(code);
        let s = load(code, &p.bad, &p.more);
        let found = s.diagnostics();
        if !found.iter().any(|d| d.code.id == code.id) {
            wrong.push(format!("{} is not triggered", code.id));
        }
        for d in &found {
            let also = ALSO.iter().any(|(c, other, _)| *c == code.id && *other == d.code.id);
            if d.code.id != code.id && !also {
                wrong.push(format!("{} also gives: {}", code.id, words(&s, d)));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn every_mended_form_is_free_of_findings() {
    let mut wrong = Vec::new();
    for code in CODES {
        let p = page(code);
        let s = load(code, &p.fixed, &p.more);
        wrong.extend(s.diagnostics().iter().map(|d| format!("{} mended: {}", code.id, words(&s, d))));
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// A message is a sentence, names a place in a file, and what can be mended by one change offers it
/// in a form that really mends it.
#[test]
fn messages_are_sentences_and_preferred_fixes_mend() {
    let mut wrong = Vec::new();
    for code in CODES {
        let p = page(code);
        let s = load(code, &p.bad, &p.more);
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
                let mut edits: Vec<_> = f.edits.iter().filter_map(|e| Some((s.place(e.loc)?, &e.text))).collect();
                edits.sort_by_key(|e| std::cmp::Reverse(e.0.1.start));
                for ((file, span), with) in edits {
                    assert_eq!(s.files()[file].path, main, "{}", code.id);
                    text.replace_range(span.range(), with);
                }
                let mended = load(code, &text, &p.more);
                let still = mended.diagnostics().iter().filter(|x| x.code.id == d.code.id).count();
                let before = s.diagnostics().iter().filter(|x| x.code.id == d.code.id).count();
                if still >= before {
                    wrong.push(format!("{}: `{}` does not mend it:\n{text}", code.id, f.title));
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// What is rightly said about the examples: file, code, why.
const EXPECTED: &[(&str, &str, &str)] = &[];

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
        let found: Vec<String> =
            s.diagnostics().iter().filter(|d| d.code.id != "library-replaced").map(|d| words(&s, d)).collect();
        assert!(found.is_empty(), "{name}:\n{}", found.join("\n"));
    }
}

/// A typing error that leaves one line without meaning costs one finding, whatever follows.
#[test]
fn a_word_too_many_is_never_swallowed() {
    let mut texts: Vec<(String, String)> = example_files()
        .into_iter()
        .map(|n| (n.clone(), examples().read(&n).expect("a file").to_string()))
        .collect();
    for code in CODES {
        texts.push((format!("{} mended", code.id), page(code).fixed));
    }
    let mut wrong = BTreeSet::new();
    for (name, text) in &texts {
        // `use` lines reach other files, which are not loaded here: they only add findings that
        // both versions have
        let count = |t: &str| common::load(t).diagnostics().iter().filter(|d| d.severity >= Severity::Warning).count();
        let before = count(text);
        let lines: Vec<&str> = text.lines().collect();
        for (i, line) in lines.iter().enumerate() {
            let code = line.split("//").next().unwrap_or("").trim_end();
            if code.is_empty() || code.ends_with('}') || code.ends_with('"') && code.contains("use") {
                continue;
            }
            let (head, tail) = code.strip_suffix('{').map_or((code, ""), |h| (h.trim_end(), " {"));
            let mut changed: Vec<String> = lines.iter().map(|l| (*l).to_owned()).collect();
            changed[i] = format!("{head} xyzzy{tail}");
            let after = common::load(&changed.join("\n")).diagnostics();
            if !after.iter().any(|d| d.message.contains("xyzzy")) && after.iter().filter(|d| d.severity >= Severity::Warning).count() <= before {
                wrong.insert(format!("{name}:{}: {}", i + 1, changed[i].trim()));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.into_iter().collect::<Vec<_>>().join("\n"));
}
