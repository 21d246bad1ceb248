//! Texts typed key by key: at the end of a complete line Enter makes a new line, whatever an
//! editor has opened by then.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_ide::{Completion, Config, Doc, completion, doc_text};
use downlead_testkit::{Files, example_files, examples};

/// The text that the session in VS Code types, too.
const REPEATER: &str = include_str!("../../../../tests/sessions/repeater.downlead");

/// Characters at which an editor asks: the server's `triggerCharacters`.
const TRIGGERS: [char; 3] = ['.', ' ', '"'];

/// A text as it grows, and the list an editor holds open over it.
struct Typist {
    s: Snapshot,
    files: Files,
    at: u32,
    list: Vec<Completion>,
    /// Whether the editor writes closing braces and quotes itself, and steps over them.
    closing: bool,
}

impl Typist {
    fn new(closing: bool) -> Typist {
        let files = Files::default().with("main.downlead", "");
        Typist {
            s: Snapshot::load(&["main.downlead".to_owned()], &files),
            files,
            at: 0,
            list: Vec::new(),
            closing,
        }
    }

    fn text(&self) -> &str {
        doc_text(&self.s, Doc::File(0))
    }

    fn ask(&self) -> Vec<Completion> {
        completion(&self.s, Doc::File(0), self.at, &Config::default())
    }

    fn insert(&mut self, text: &str, step: usize) {
        let here = Span::new(self.at, self.at);
        self.s.edit(0, here, text, &self.files);
        self.at += u32::try_from(step).unwrap();
    }

    /// The character in the text, or the cursor after the one that stands there already.
    fn write(&mut self, c: char) {
        let there = self.closing
            && matches!(c, '"' | '}')
            && self.text()[self.at as usize..].starts_with(c);
        match c {
            _ if there => self.at += 1,
            '"' if self.closing => self.insert("\"\"", 1),
            '{' if self.closing => self.insert("{}", 1),
            _ => self.insert(c.encode_utf8(&mut [0; 4]), c.len_utf8()),
        }
    }

    /// What stands between the beginning of what an entry replaces and the cursor.
    fn typed(&self, x: &Completion) -> &str {
        &self.text()[x.replace.start as usize..self.at as usize]
    }

    /// One key. The list opens at trigger characters and at words. What is open already is narrowed
    /// by the client, which asks again only when nothing is left.
    fn key(&mut self, c: char) {
        self.write(c);
        if TRIGGERS.contains(&c) {
            self.list = self.ask();
            return;
        }
        self.narrow();
        let word = self.word();
        if self.list.is_empty() && word.ends_with(c) && word.parse::<f64>().is_err() {
            self.list = self.ask();
            self.narrow();
        }
    }

    fn narrow(&mut self) {
        let mut list = std::mem::take(&mut self.list);
        list.retain(|x| fits(self.typed(x), x));
        self.list = list;
    }

    /// The word before the cursor.
    fn word(&self) -> &str {
        let before = &self.text()[..self.at as usize];
        let part = |c: char| c.is_alphanumeric() || "-_.°%µ±".contains(c);
        &before[before.trim_end_matches(part).len()..]
    }

    /// What Enter would make of the list that is open: the first entry that fits best is the one
    /// in focus, and it is taken if it changes the text (`acceptSuggestionOnEnter: smart`).
    fn enter(&self) -> Option<String> {
        let best = self.list.iter().max_by_key(|x| {
            let typed = self.typed(x);
            let exact = x.label == typed;
            (
                exact,
                x.label.starts_with(typed),
                std::cmp::Reverse(x.sort.clone()),
            )
        })?;
        (best.snippet || best.insert != self.typed(best)).then(|| best.label.clone())
    }

    /// What Enter would make of an answer given now, in an editor that asks at every key and takes
    /// the entry that is marked as the likeliest or begins with what is typed, changed text or not.
    fn enter_anew(&self) -> Option<String> {
        let all = self.ask();
        let taken = all.iter().find(|x| {
            let typed = self.typed(x);
            x.preselect || !typed.is_empty() && x.label.starts_with(typed)
        });
        taken.map(|x| x.label.clone())
    }
}

/// Whether an entry stays in a list while this is typed: its letters in order, the first one at
/// the beginning of a part of the label.
fn fits(typed: &str, x: &Completion) -> bool {
    let mut label = x.label.chars().flat_map(char::to_lowercase).peekable();
    let mut typed = typed.chars().flat_map(char::to_lowercase);
    let Some(first) = typed.next() else {
        return true;
    };
    let mut before = ' ';
    while label
        .peek()
        .is_some_and(|c| *c != first || before.is_alphanumeric())
    {
        before = label.next().unwrap_or(' ');
    }
    label.next() == Some(first) && typed.all(|c| label.any(|l| l == c))
}

/// The lines of a text that Enter does not end, each with what it would become.
fn swallowed(text: &str, closing: bool) -> Vec<String> {
    let mut out = Vec::new();
    let mut t = Typist::new(closing);
    for line in text.lines() {
        // the editor writes the blanks in front
        let content = line.trim_start();
        let indent = &line[..line.len() - content.len()];
        t.insert(indent, indent.len());
        for c in content.chars() {
            t.key(c);
        }
        for taken in [t.enter(), t.enter_anew()].into_iter().flatten() {
            out.push(format!("{content} → {taken}"));
        }
        t.list.clear();
        t.insert("\n", 1);
    }
    assert_eq!(t.text(), text);
    out
}

#[test]
fn enter_ends_every_line_of_a_repeater() {
    for closing in [false, true] {
        let lines = swallowed(REPEATER, closing);
        assert!(lines.is_empty(), "{lines:#?}");
    }
}

#[test]
fn enter_ends_every_line_of_the_examples() {
    let mut lines = Vec::new();
    for path in example_files() {
        let s = Snapshot::load(std::slice::from_ref(&path), &examples());
        let mut t = Typist::new(false);
        t.s = s;
        let text = t.text().to_owned();
        for line in text.lines() {
            t.at += u32::try_from(line.len()).unwrap();
            if let Some(taken) = t.enter_anew() {
                lines.push(format!("{path}: {} → {taken}", line.trim()));
            }
            t.at += 1;
        }
        assert_eq!(t.at as usize, text.len(), "{path}");
    }
    assert!(lines.is_empty(), "{lines:#?}");
}

/// What is offered where the cursor stands.
fn offered(before: &str) -> Vec<String> {
    let mut t = Typist::new(false);
    t.insert(before, before.len());
    t.ask().into_iter().map(|x| x.label).collect()
}

#[test]
fn a_name_that_is_new_is_not_guessed() {
    let none: &[String] = &[];
    for keyword in ["run", "transmitter", "isolator", "place", "chain"] {
        assert_eq!(
            offered(&format!("station s {{\n    {keyword} ")),
            none,
            "{keyword}"
        );
    }
    for keyword in ["band", "cable", "device", "let", "station"] {
        assert_eq!(offered(&format!("{keyword} ")), none, "{keyword}");
    }
    // in a chain a tag is not needed
    assert!(!offered("chain c on 2 MHz {\n    isolator ").is_empty());
}

#[test]
fn values_and_quotes_are_not_followed_by_words() {
    let none: &[String] = &[];
    for text in [
        "run 28 m ± ",
        "isolator 0.5 dB, sheet \"p. 2\"",
        "limit 5 W erp, \"clause 4\"",
    ] {
        assert_eq!(
            offered(&format!("chain c on 2 MHz {{\n    {text}")),
            none,
            "{text}"
        );
    }
    assert_eq!(
        offered("let a = 3 m\nchain c on 2 MHz {\n    run 2 m + "),
        ["a"]
    );
    // inside quotes a file stands only where one is named
    let text = "use \"x.downlead\"\nchain c on 2 MHz {\n    isolator from \"";
    assert_eq!(offered(text), none);
    assert_eq!(offered("chain c on 2 MHz {\n    isolator from "), ["\"…\""]);
}

#[test]
fn nothing_is_marked_before_its_first_letter() {
    let marked = |before: &str| {
        let mut t = Typist::new(false);
        t.insert(before, before.len());
        let all = t.ask();
        assert!(!all.is_empty(), "{before}");
        let marked: Vec<String> = all
            .into_iter()
            .filter(|x| x.preselect)
            .map(|x| x.label)
            .collect();
        marked
    };
    let none: &[String] = &[];
    assert_eq!(marked("chain c on 2 MHz {\n    "), none);
    assert_eq!(marked("chain c on 2 MHz {\n    pad 3 "), none);
    assert_eq!(marked("chain c on 2 MHz {\n    pad 3 d"), ["dB"]);
    // an entry that is written out is not marked either, here the line goes on
    assert_eq!(marked("chain c on 2 MHz {\n    run 3 m of"), none);
}
