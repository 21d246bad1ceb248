//! The crates depend on each other in one direction only (see DEVELOPERS.md).

use std::collections::{BTreeMap, BTreeSet};

/// Which of our crates each crate may use directly. What is not listed is forbidden.
const ALLOWED: &[(&str, &[&str])] = &[
    ("downlead-quantity", &[]),
    ("downlead-base", &[]),
    ("downlead-catalogue", &[]),
    ("downlead-physics", &["quantity"]),
    ("downlead-touchstone", &[]),
    ("downlead-syntax", &["base", "quantity"]),
    (
        "downlead-station",
        &["base", "quantity", "syntax", "catalogue", "touchstone"],
    ),
    (
        "downlead-eval",
        &[
            "base",
            "quantity",
            "syntax",
            "station",
            "physics",
            "touchstone",
        ],
    ),
    (
        "downlead-report",
        &["base", "quantity", "physics", "station", "eval"],
    ),
    (
        "downlead-ide",
        &["base", "quantity", "syntax", "station", "eval", "report"],
    ),
    ("downlead-git", &["syntax", "station", "eval"]),
    (
        "downlead-server",
        &[
            "base", "quantity", "syntax", "station", "eval", "report", "ide", "git",
        ],
    ),
    (
        "downlead-testkit",
        &["base", "quantity", "syntax", "station", "eval"],
    ),
    (
        "downlead",
        &[
            "base",
            "quantity",
            "physics",
            "touchstone",
            "syntax",
            "catalogue",
            "station",
            "eval",
            "report",
            "ide",
            "git",
            "server",
        ],
    ),
];

/// General crates that only one of ours may use: the others stay free of protocols and terminals.
const RESERVED: &[(&str, &[&str])] = &[
    ("tower-lsp", &["downlead-server"]),
    ("tower-lsp-server", &["downlead-server"]),
    ("ls-types", &["downlead-server"]),
    ("lsp-types", &["downlead-server"]),
    ("tokio", &["downlead-server"]),
    ("ariadne", &["downlead"]),
    ("clap", &["downlead"]),
];

fn metadata() -> cargo_metadata::Metadata {
    cargo_metadata::MetadataCommand::new()
        .manifest_path(concat!(env!("CARGO_MANIFEST_DIR"), "/Cargo.toml"))
        .no_deps()
        .other_options(vec!["--offline".to_owned()])
        .exec()
        .expect("cargo metadata runs")
}

#[test]
fn crates_depend_in_one_direction() {
    let allowed: BTreeMap<&str, BTreeSet<String>> = ALLOWED
        .iter()
        .map(|(name, uses)| {
            (
                *name,
                uses.iter().map(|u| format!("downlead-{u}")).collect(),
            )
        })
        .collect();
    let meta = metadata();
    let mut wrong = Vec::new();
    for package in &meta.packages {
        let name = package.name.as_str();
        let Some(may) = allowed.get(name) else {
            wrong.push(format!("{name} is not in the table of directions"));
            continue;
        };
        for d in &package.dependencies {
            let normal = d.kind == cargo_metadata::DependencyKind::Normal;
            if normal && d.name.starts_with("downlead") && !may.contains(&d.name) {
                wrong.push(format!("{name} must not depend on {}", d.name));
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn reserved_crates_stay_where_they_belong() {
    let meta = metadata();
    let mut wrong = Vec::new();
    for package in &meta.packages {
        for d in &package.dependencies {
            let normal = d.kind == cargo_metadata::DependencyKind::Normal;
            if let Some((_, owners)) = RESERVED.iter().find(|(n, _)| *n == d.name)
                && normal
                && !owners.contains(&package.name.as_str())
            {
                wrong.push(format!("{} must not use {}", package.name, d.name));
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// Crates that read no file, clock or environment.
const PURE: &[&str] = &[
    "quantity",
    "base",
    "physics",
    "touchstone",
    "syntax",
    "catalogue",
    "station",
    "eval",
    "report",
    "ide",
];

/// Calls that are forbidden in those crates.
const IMPURE: &[&str] = &[
    "std::fs",
    "std::env::",
    "std::net",
    "std::process",
    "Instant::now",
    "SystemTime",
    "std::thread",
];

/// Methods of floating-point numbers whose last bit differs between platforms; `libm` has its own.
const UNSTABLE: &[&str] = &[
    ".ln()", ".log10()", ".log2()", ".log(", ".exp()", ".exp2()", ".powf(", ".sin()", ".cos()",
    ".tan()", ".asin()", ".acos()", ".atan()", ".atan2(", ".sinh()", ".cosh()", ".tanh()",
    ".hypot(", ".cbrt()",
];

fn sources(name: &str) -> Vec<(String, String)> {
    fn walk(dir: &std::path::Path, out: &mut Vec<(String, String)>) {
        for entry in std::fs::read_dir(dir).expect("a source folder") {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                walk(&path, out);
            } else if path.extension().is_some_and(|e| e == "rs") {
                out.push((
                    path.display().to_string(),
                    std::fs::read_to_string(&path).expect("a source file"),
                ));
            }
        }
    }
    let mut out = Vec::new();
    walk(
        &std::path::Path::new(env!("CARGO_MANIFEST_DIR"))
            .join("..")
            .join(name)
            .join("src"),
        &mut out,
    );
    out
}

/// The code of a file without its comments and its tests at the end.
fn code(text: &str) -> impl Iterator<Item = (usize, &str)> {
    text.lines()
        .take_while(|l| !l.starts_with("#[cfg(test)]"))
        .enumerate()
        .filter(|(_, l)| !l.trim_start().starts_with("//"))
}

#[test]
fn pure_crates_touch_nothing_outside() {
    let mut wrong = Vec::new();
    for name in PURE {
        for (path, text) in sources(name) {
            for (i, line) in code(&text) {
                for bad in IMPURE
                    .iter()
                    .chain(if *name == "ide" { &[][..] } else { UNSTABLE })
                {
                    if line.contains(bad) {
                        wrong.push(format!("{path}:{}: {bad}", i + 1));
                    }
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn every_module_says_what_it_is_for_and_stays_readable() {
    let mut wrong = Vec::new();
    for name in PURE.iter().chain(&["server", "cli", "testkit"]) {
        for (path, text) in sources(name) {
            if !text.starts_with("//!") {
                wrong.push(format!("{path}: no `//!` line"));
            }
            let lines = text.lines().count();
            if lines > 1500 {
                wrong.push(format!("{path}: {lines} lines"));
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// Verdicts and kinds are enums until they are printed: code that compares their words breaks when
/// the words change.
#[test]
fn no_code_compares_words_of_results() {
    const WORDS: &[&str] = &[
        "met",
        "not-met",
        "not met",
        "cannot-tell",
        "cannot tell",
        "agrees",
        "differs",
        "rising",
        "falling",
        "not-beyond-doubt",
        "fixed-forward",
        "derivatives",
        "sample",
    ];
    let mut wrong = Vec::new();
    for name in ["report", "ide", "server", "cli"] {
        for (path, text) in sources(name) {
            // those of the JSON are made there
            if path.ends_with("shape/word.rs") || path.ends_with("tests.rs") {
                continue;
            }
            for (i, line) in code(&text) {
                for word in WORDS {
                    let compared = ["==", "!=", "Some("].iter().any(|op| {
                        line.contains(&format!("{op} \"{word}\""))
                            || line.contains(&format!("{op}\"{word}\""))
                    });
                    if compared || line.trim_start().starts_with(&format!("\"{word}\" =>")) {
                        wrong.push(format!("{path}:{}: {word}", i + 1));
                    }
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// Crates whose modules form no circle.
const ACYCLIC: &[&str] = &[
    "base",
    "git",
    "ide",
    "physics",
    "quantity",
    "server",
    "syntax",
    "touchstone",
];

/// The modules of a crate that each module uses: by paths that begin with `crate` or `super`, and
/// by calls of methods that another module adds to a type it does not define.
fn module_edges(name: &str) -> BTreeMap<String, BTreeSet<String>> {
    let root = format!("{name}/src/");
    let modules: BTreeMap<String, String> = sources(name)
        .into_iter()
        .filter_map(|(path, text)| {
            let at = path.rfind(&root)? + root.len();
            let module = path[at..].trim_end_matches(".rs").replace('/', "::");
            let module = module.trim_end_matches("::mod").to_owned();
            let code: Vec<&str> = code(&text).map(|(_, l)| l).collect();
            (module != "lib" && module != "main").then_some((module, code.join("\n")))
        })
        .collect();
    let mut added: Vec<(&str, String)> = Vec::new();
    for (module, text) in &modules {
        for body in text.split("\nimpl ").skip(1) {
            let (head, rest) = body.split_once('{').unwrap_or((body, ""));
            let of = head.split(['<', ' ']).next().unwrap_or("");
            let own = ["struct", "enum", "type"]
                .iter()
                .any(|k| text.contains(&format!("{k} {of}")));
            if head.contains(" for ") || own {
                continue;
            }
            let block = rest.split("\n}").next().unwrap_or(rest);
            for f in block.split("pub(crate) fn ").skip(1) {
                let method = f.split(['(', '<']).next().unwrap_or("");
                added.push((module, format!(".{method}(")));
            }
        }
    }
    let mut edges = BTreeMap::new();
    for (module, text) in &modules {
        let mut used: BTreeSet<String> = paths(module, text)
            .into_iter()
            .filter_map(|path| {
                let mut path = path.as_str();
                while !modules.contains_key(path) {
                    path = path.rsplit_once("::")?.0;
                }
                Some(path.to_owned())
            })
            .collect();
        let called = added.iter().filter(|(_, call)| text.contains(call));
        used.extend(called.map(|(m, _)| (*m).to_owned()));
        used.remove(module);
        edges.insert(module.clone(), used);
    }
    edges
}

/// The absolute paths within the crate that a text names, `crate::` left out; `a::{b, c}` is two.
fn paths(module: &str, text: &str) -> Vec<String> {
    fn tree(prefix: &str, text: &str, out: &mut Vec<String>) -> usize {
        let end = text
            .find(|c: char| !(c.is_alphanumeric() || c == '_' || c == ':' || c == '*'))
            .unwrap_or(text.len());
        let path = format!("{prefix}{}", &text[..end]);
        if !text[end..].starts_with('{') {
            out.push(path);
            return end;
        }
        let mut at = end + 1;
        while let Some(rest) = text.get(at..).filter(|r| !r.starts_with('}')) {
            let space = rest.len() - rest.trim_start_matches([' ', '\n', ',']).len();
            at += space.max(usize::from(rest.is_empty()));
            if rest[space..].starts_with('}') {
                break;
            }
            let used = tree(&path, &rest[space..], out);
            if space + used == 0 {
                break;
            }
            at += used;
        }
        at + 1
    }
    let parent = module.rsplit_once("::").map_or("", |(p, _)| p);
    let mut out = Vec::new();
    for (start, prefix) in [
        ("crate::", String::new()),
        ("super::", format!("{parent}::")),
    ] {
        for (at, _) in text.match_indices(start) {
            tree(
                prefix.trim_start_matches("::"),
                &text[at + start.len()..],
                &mut out,
            );
        }
    }
    out
}

/// Modules that reach themselves.
fn circles(edges: &BTreeMap<String, BTreeSet<String>>) -> Vec<&str> {
    let reaches_itself = |start: &String| {
        let mut seen: BTreeSet<&String> = BTreeSet::new();
        let mut next: Vec<&String> = edges[start].iter().collect();
        while let Some(m) = next.pop() {
            if m == start {
                return true;
            }
            if seen.insert(m) {
                next.extend(&edges[m]);
            }
        }
        false
    };
    edges
        .keys()
        .filter(|m| reaches_itself(m))
        .map(String::as_str)
        .collect()
}

#[test]
fn modules_form_no_circle() {
    for name in ACYCLIC {
        let edges = module_edges(name);
        assert!(edges.len() > 2, "{name}: {edges:#?}");
        assert_eq!(circles(&edges), [""; 0], "{name}: {edges:#?}");
    }
}

#[test]
fn a_circle_is_found() {
    let found = paths(
        "a::b",
        "use crate::{c::{D, e}, f};\nuse super::g::H;\nlet x = crate::i::j();",
    );
    assert_eq!(found, ["c::D", "c::e", "f", "i::j", "a::g::H"]);
    let set = |names: &[&str]| names.iter().map(|n| (*n).to_owned()).collect();
    let edges = BTreeMap::from([
        ("a".to_owned(), set(&["b"])),
        ("b".to_owned(), set(&["c"])),
        ("c".to_owned(), set(&["b"])),
    ]);
    assert_eq!(circles(&edges), ["b", "c"]);
}
