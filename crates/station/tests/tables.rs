//! What is written from the table of statements: the grammars' list of words, and the tables of the
//! language reference. `UPDATE=1 cargo test -p downlead-station --test tables` writes them.

use std::fs;
use std::path::Path;

use downlead_station::forms::{self, Form};

fn path(p: &str) -> std::path::PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..").join(p)
}

fn same(p: &str, want: &str) {
    let p = path(p);
    let have = fs::read_to_string(&p).unwrap_or_default();
    if have == want {
        return;
    }
    if std::env::var_os("UPDATE").is_some() {
        fs::write(&p, want).expect("written");
        return;
    }
    panic!(
        "{} is not what the table says: `UPDATE=1 cargo test -p downlead-station --test tables` writes it",
        p.display()
    );
}

#[test]
fn the_grammars_have_the_words_of_the_table() {
    same("editors/grammar/statements.json", &forms::json());
}

/// Where a table of the reference begins and ends.
const BEGIN: &str = "<!-- statement ";
const END: &str = "<!-- end of statement -->";

/// The form that a marker names: a word, or a word and the block it stands in.
fn named(words: &str) -> &'static Form {
    let (block, word) = words.split_once(' ').unwrap_or(("", words));
    let mut found = None;
    forms::each(&mut |b, f| {
        let cx = b
            .context()
            .map_or(String::new(), |c| format!("{c:?}").to_lowercase());
        if found.is_none() && f.word == word && (block.is_empty() || cx == block) {
            found = Some(f);
        }
    });
    found.unwrap_or_else(|| panic!("no statement `{words}`"))
}

#[test]
fn the_reference_has_the_tables_of_the_table() {
    let text = fs::read_to_string(path("docs/language.md")).expect("the reference");
    let mut out = String::new();
    let mut rest = &*text;
    let mut tables = 0;
    while let Some((before, after)) = rest.split_once(BEGIN) {
        let (name, after) = after.split_once(" -->\n").expect("the end of a marker");
        let (_, after) = after.split_once(END).expect("the end of a table");
        let table = match name {
            "words" => forms::word_list(),
            name => forms::reference(named(name)),
        };
        out.push_str(&format!("{before}{BEGIN}{name} -->\n{table}{END}"));
        rest = after;
        tables += 1;
    }
    out.push_str(rest);
    assert!(tables > 20, "{tables}");
    same("docs/language.md", &out);
}
