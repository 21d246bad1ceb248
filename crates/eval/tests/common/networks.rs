//! Chains of network files, for the tests of both their numbers and their findings.
#![allow(dead_code, unreachable_pub, reason = "each test program uses its part")]

use downlead_eval::Snapshot;
use downlead_eval::result::{BandResult, ChainResult};
use downlead_station::Loader;
use downlead_testkit::{Files, examples, project};
use serde_json::Value;

use crate::common::{MAIN, load_from};

pub fn reference() -> Value {
    let text = std::fs::read_to_string(project("tests/reference/networks.json"))
        .expect("the reference values");
    serde_json::from_str(&text).expect("JSON")
}

/// The files of the example and of the reference.
pub fn files() -> Files {
    let mut files = Files::default();
    for name in [
        "is1.s2p",
        "du1-high.s2p",
        "du1-low.s2p",
        "a1.s1p",
        "reel-7.s2p",
    ] {
        let text = examples()
            .read(&format!("networks/{name}"))
            .expect("a file");
        files.put(name, &*text);
    }
    let all = reference();
    for (name, text) in all["files"].as_object().expect("files") {
        files.put(name, text.as_str().expect("text"));
    }
    files
}

pub fn chains(s: &Snapshot) -> Vec<&ChainResult> {
    s.scopes()
        .iter()
        .flat_map(|s| s.items())
        .flat_map(|i| &i.2.chains)
        .collect()
}

pub fn one(s: &Snapshot) -> &BandResult {
    &chains(s)[0].bands[0]
}

pub fn said(s: &Snapshot) -> Vec<(&'static str, String)> {
    s.diagnostics()
        .into_iter()
        .map(|d| (d.code.id, d.message))
        .collect()
}

/// Of one file with these parts and a further file.
pub fn with(text: &str, name: &str, file: &str) -> Snapshot {
    load_from(&files().with(MAIN, text).with(name, file))
}

pub fn number(v: &Value, key: &str) -> f64 {
    v[key].as_f64().unwrap_or_else(|| panic!("{key} in {v}"))
}

pub fn near(have: f64, want: f64, within: f64, what: &str) {
    assert!((have - want).abs() <= within, "{what}: {have} for {want}");
}
