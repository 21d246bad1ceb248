//! Differences for other programs: annotations of a hosted build, SARIF 2.1.0.

use std::fmt::Write as _;

use downlead_report::build::remarks::RULES;
use downlead_report::shape::diff::{Diff, Weight};
use serde_json::{Value, json};

use crate::formats::{data, property, uri};

/// One workflow command a remark.
pub(crate) fn github(d: &Diff) -> String {
    let mut out = String::new();
    for r in &d.remarks {
        let level = match r.weight {
            Weight::Error => "error",
            Weight::Warning => "warning",
            Weight::Note => "notice",
        };
        let _ = writeln!(
            out,
            "::{level} file={},line={},title={}::{}",
            property(&r.file),
            r.line,
            property(r.rule),
            data(&r.message)
        );
    }
    out
}

/// SARIF 2.1.0 (OASIS standard, 27 March 2020).
pub(crate) fn sarif(d: &Diff) -> Value {
    let rules: Vec<Value> = RULES
        .iter()
        .map(|(id, words)| json!({ "id": id, "shortDescription": { "text": words } }))
        .collect();
    let results: Vec<Value> = d
        .remarks
        .iter()
        .map(|r| {
            let level = match r.weight {
                Weight::Error => "error",
                Weight::Warning => "warning",
                Weight::Note => "note",
            };
            let rule = RULES.iter().position(|x| x.0 == r.rule);
            json!({
                "ruleId": r.rule,
                "ruleIndex": rule,
                "level": level,
                "message": { "text": r.message },
                "locations": [{ "physicalLocation": {
                    "artifactLocation": { "uri": uri(&r.file), "uriBaseId": "SRCROOT" },
                    "region": { "startLine": r.line.max(1) },
                }}],
                "partialFingerprints": { "downleadDiff/v1": r.fingerprint },
            })
        })
        .collect();
    json!({
        "$schema": "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json",
        "version": "2.1.0",
        "runs": [{
            "tool": { "driver": {
                "name": "downlead",
                "version": env!("CARGO_PKG_VERSION"),
                "rules": rules,
            }},
            "columnKind": "unicodeCodePoints",
            "originalUriBaseIds": { "SRCROOT": { "description": { "text": "The folder the paths are relative to." } } },
            "results": results,
        }],
    })
}
