//! The crates depend on each other in one direction only (see DEVELOPERS.md).

use std::collections::{BTreeMap, BTreeSet};

/// Which of our crates each crate may use directly. What is not listed is forbidden.
const ALLOWED: &[(&str, &[&str])] = &[
    ("downlead-quantity", &[]),
    ("downlead-base", &[]),
    ("downlead-catalogue", &[]),
    ("downlead-physics", &["quantity"]),
    ("downlead-syntax", &["base", "quantity"]),
    ("downlead-station", &["base", "quantity", "syntax", "catalogue"]),
    ("downlead-eval", &["base", "quantity", "syntax", "station", "physics"]),
    ("downlead-ide", &["base", "quantity", "syntax", "station", "eval"]),
    ("downlead-server", &["base", "quantity", "syntax", "station", "eval", "ide"]),
    ("downlead-testkit", &["base", "quantity", "syntax", "station", "eval"]),
    ("downlead", &["base", "quantity", "syntax", "catalogue", "station", "eval", "ide", "server"]),
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
        .map(|(name, uses)| (*name, uses.iter().map(|u| format!("downlead-{u}")).collect()))
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
            if let Some((_, owners)) = RESERVED.iter().find(|(n, _)| *n == d.name) {
                if normal && !owners.contains(&package.name.as_str()) {
                    wrong.push(format!("{} must not use {}", package.name, d.name));
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}
