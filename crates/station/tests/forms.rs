//! The table of statements against the texts of the project: its own examples, the demo stations,
//! the manual, the library, and the pages of the diagnostics.

use std::fs;
use std::path::{Path, PathBuf};

use downlead_base::Diagnostic;
use downlead_station::forms::{self, Block, Form, Known, Met, Problem, Reader};
use downlead_station::{Lets, lower, lower_let};
use downlead_syntax::{File, Item, Stmt};

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn files(dir: &Path, ext: &str, out: &mut Vec<PathBuf>) {
    let mut all: Vec<PathBuf> = fs::read_dir(dir)
        .expect("a folder")
        .map(|e| e.expect("an entry").path())
        .collect();
    all.sort();
    for p in all {
        if p.is_dir() {
            files(&p, ext, out);
        } else if p.extension().is_some_and(|e| e == ext) {
            out.push(p);
        }
    }
}

/// The texts fenced with the language's name.
fn fenced(text: &str) -> Vec<String> {
    let mut out = Vec::new();
    let mut open: Option<String> = None;
    for line in text.lines() {
        match &mut open {
            Some(t) if line.starts_with("```") => out.extend(Some(std::mem::take(t))),
            Some(t) => {
                t.push_str(line);
                t.push('\n');
                continue;
            }
            None => {}
        }
        open = match open {
            Some(_) => None,
            None => (line.starts_with("```downlead") && !line.contains('.')).then(String::new),
        };
    }
    out
}

/// The texts that are right, and those of the diagnostics' pages, each with where it is from.
fn corpus(broken: bool) -> Vec<(String, String)> {
    let mut out = Vec::new();
    let mut add = |p: &Path| {
        let text = fs::read_to_string(p).expect("a text");
        let name = p.display().to_string();
        if p.extension().is_some_and(|e| e == "md") {
            out.extend(fenced(&text).into_iter().map(|t| (name.clone(), t)));
        } else {
            out.push((name, text));
        }
    };
    let mut list = Vec::new();
    if broken {
        files(&root().join("crates/base/codes"), "md", &mut list);
    } else {
        files(&root().join("examples"), "downlead", &mut list);
        files(
            &root().join("crates/catalogue/library"),
            "downlead",
            &mut list,
        );
        list.push(root().join("docs/language.md"));
    }
    list.iter().for_each(|p| add(p));
    out
}

fn lets(tree: &File) -> Lets {
    let mut lets = Lets::default();
    for p in tree.items() {
        if let (Some((name, v)), _) = lower_let(&p.item, &lets) {
            lets.insert(name.text, v);
        }
    }
    lets
}

fn places(item: &Item) -> Vec<&str> {
    item.statement()
        .and_then(Stmt::block)
        .into_iter()
        .flat_map(|b| b.iter())
        .filter(|s| s.keyword() == Some("place"))
        .filter_map(|s| s.atoms().get(1).map(|a| s.text(*a)))
        .collect()
}

/// The statements of an item with their forms.
fn walk<'a>(s: Stmt<'a>, block: Block, f: &mut dyn FnMut(Stmt<'a>, &'static Form)) {
    let Some(form) = block.form(s.keyword()) else {
        return;
    };
    f(s, form);
    for inner in s.block().into_iter().flat_map(|b| b.iter()) {
        walk(inner, form.block, f);
    }
}

fn problems<'a>(s: Stmt<'a>, form: &'static Form, known: Known<'_>) -> Vec<Problem<'a>> {
    let mut r = Reader::new(form, s, known);
    let mut out = Vec::new();
    while let Some(m) = r.next() {
        if let Met::Problem(p) = m {
            out.push(p);
        }
    }
    out
}

#[test]
fn every_example_of_the_table_is_read() {
    let mut wrong = Vec::new();
    let lets = Lets::default();
    forms::each(&mut |_, form| {
        assert!(
            form.word.is_empty() || !form.examples.is_empty(),
            "`{}` has no example",
            form.word
        );
        for e in form.examples {
            // a row stands in a block
            let row = form.word.is_empty() && !form.noun.contains("chain");
            let text = if row {
                format!("x {{ {e} }}")
            } else {
                (*e).to_owned()
            };
            let tree = File::parse(text);
            let broken: Vec<Diagnostic> = tree.diagnostics().collect();
            assert!(broken.is_empty(), "{e}: {broken:?}");
            let item = &tree.items()[0].item;
            let outer = item.statement().expect("a statement");
            let inner = outer.block().and_then(|b| b.iter().next());
            let stmt = if row { inner.expect("a row") } else { outer };
            let known = Known {
                lets: &lets,
                places: &["mast"],
            };
            let mut one = |s: Stmt<'_>, form: &'static Form| {
                let p = problems(s, form, known);
                if !p.is_empty() {
                    wrong.push(format!("{e}: {p:?}"));
                }
            };
            one(stmt, form);
            for inner in stmt.block().into_iter().flat_map(|b| b.iter()) {
                walk(inner, form.block, &mut one);
            }
        }
        for s in form.all_slots() {
            let mut words = s.words().peekable();
            assert!(
                words.peek().is_none() || words.any(|w| s.example.contains(w)),
                "`{}`: `{}`",
                form.word,
                s.example
            );
        }
    });
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// What the loop finds and lowering does not, and the reverse.
fn beside(text: &str, name: &str, lax: &mut Vec<String>) -> Vec<String> {
    let tree = File::parse(text);
    let lets = lets(&tree);
    let mut out = Vec::new();
    for p in tree.items() {
        let item = &p.item;
        let mut diags = lower(item, &lets, false).diagnostics;
        diags.extend(lower_let(item, &lets).1);
        let places = places(item);
        let known = Known {
            lets: &lets,
            places: &places,
        };
        let mut odd: Vec<Stmt<'_>> = Vec::new();
        for s in item.statements() {
            walk(s, forms::top(), &mut |s, form| {
                let p = problems(s, form, known);
                if p.is_empty() {
                    return;
                }
                odd.push(s);
                let line = s.head_span();
                let said = diags.iter().any(|d| {
                    line.start <= d.primary.loc.span.start && d.primary.loc.span.end <= line.end
                });
                if !said && !s.is_broken() {
                    out.push(format!("{name}: {}: {p:?}", s.slice(line)));
                }
            });
        }
        for d in diags {
            let at = d.primary.loc.span;
            if matches!(d.code.id, "unexpected-word" | "words-exclude")
                && !odd
                    .iter()
                    .any(|s| s.head_span().start <= at.start && at.end <= s.head_span().end)
            {
                lax.push(format!("{name}: {}", d.message));
            }
        }
    }
    out
}

/// What is written right is read without a problem, also in the built-in library, which is not
/// checked when it is loaded.
#[test]
fn right_texts_are_read_without_a_problem() {
    let mut wrong = Vec::new();
    for (name, text) in corpus(false) {
        let tree = File::parse(&*text);
        let lets = lets(&tree);
        for p in tree.items() {
            let places = places(&p.item);
            let known = Known {
                lets: &lets,
                places: &places,
            };
            for s in p.item.statements() {
                walk(s, forms::top(), &mut |s, form| {
                    let p = problems(s, form, known);
                    if !p.is_empty() {
                        wrong.push(format!("{name}: {}: {p:?}", s.slice(s.head_span())));
                    }
                });
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn the_table_finds_what_lowering_finds() {
    let (mut wrong, mut lax) = (Vec::new(), Vec::new());
    for (name, text) in corpus(true) {
        wrong.extend(beside(&text, &name, &mut lax));
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(lax.is_empty(), "{}", lax.join("\n"));
}
