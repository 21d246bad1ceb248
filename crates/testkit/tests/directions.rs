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
    ("downlead-git", &["station", "eval"]),
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

/// General crates that only one of ours may use: the rest keeps free of what they stand for.
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

/// What those crates must not call.
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
