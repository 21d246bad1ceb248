//! Findings for other programs: JSON, SARIF 2.1.0, and the annotations of a hosted build.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::io::{self, Write};

use downlead_base::{Code, Severity};
use serde::{Serialize, Serializer};
use serde_json::{Value, json};

use crate::findings::{Accepted, Change, Finding, Findings, SourceFile, Spot};
use crate::ui::printable;

/// Name and version of the JSON shape of `check`.
const SCHEMA: &str = "downlead-check/1";

/// A list that is made one element at a time while it is written: with a hundred thousand
/// findings the tree of all of them would take gigabytes.
struct Lazy<'a, X>(&'a [X], &'a dyn Fn(&X) -> Value);

impl<X> Serialize for Lazy<'_, X> {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.collect_seq(self.0.iter().map(self.1))
    }
}

/// The whole of `check --format json`.
#[derive(Serialize)]
struct Whole<T, A> {
    schema: &'static str,
    errors: usize,
    warnings: usize,
    diagnostics: T,
    /// Findings that the text accepts, which count nowhere else.
    accepted: A,
}

/// Writes all findings with their offered changes. Lines and columns count from 1, columns in
/// characters; `start_byte` and `end_byte` count from 0.
pub(crate) fn json(findings: &Findings, out: &mut dyn Write) -> io::Result<()> {
    let whole = Whole {
        schema: SCHEMA,
        errors: findings.count(Severity::Error),
        warnings: findings.count(Severity::Warning),
        diagnostics: Lazy(&findings.list, &|f| json_one(f, &findings.files)),
        accepted: Lazy(&findings.accepted, &|a| json_accepted(a, &findings.files)),
    };
    serde_json::to_writer_pretty(&mut *out, &whole)?;
    out.write_all(b"\n")
}

fn json_one(f: &Finding, files: &[SourceFile]) -> Value {
    let mut one = json!({ "code": f.code.id, "severity": f.severity.name(), "message": f.message });
    extend(&mut one, f.spot.as_ref().map(|s| place(s, files)));
    let with_place = |mut object: Value, spot: &Spot| {
        extend(&mut object, Some(place(spot, files)));
        object
    };
    let related: Vec<Value> = f
        .related
        .iter()
        .map(|(spot, words)| with_place(json!({ "message": words }), spot))
        .collect();
    let fixes: Vec<Value> = f
        .changes
        .iter()
        .map(|c| {
            let edits: Vec<Value> = c
                .edits
                .iter()
                .map(|(spot, text)| with_place(json!({ "text": text }), spot))
                .collect();
            json!({ "title": c.title, "preferred": c.preferred, "edits": edits })
        })
        .collect();
    extend(
        &mut one,
        Some(json!({ "label": f.label, "help": f.help, "related": related, "fixes": fixes })),
    );
    one
}

/// A finding that is accepted: the finding itself, with the reason, the last day and the place of
/// the acceptance.
fn json_accepted(a: &Accepted, files: &[SourceFile]) -> Value {
    let mut one = json_one(&a.finding, files);
    let mut by = json!({ "reason": a.reason, "until": a.until });
    extend(&mut by, a.by.as_ref().map(|s| place(s, files)));
    extend(&mut one, Some(json!({ "acceptance": by })));
    one
}

fn extend(object: &mut Value, more: Option<Value>) {
    if let (Value::Object(fields), Some(Value::Object(more))) = (object, more) {
        fields.extend(more);
    }
}

fn place(spot: &Spot, files: &[SourceFile]) -> Value {
    json!({
        "file": files[spot.file].path,
        "line": spot.start.0,
        "column": spot.start.1,
        "end_line": spot.end.0,
        "end_column": spot.end.1,
        "start_byte": spot.bytes.start,
        "end_byte": spot.bytes.end,
    })
}

/// `FILE:LINE:COLUMN severity CODE: MESSAGE`, one line a finding.
pub(crate) fn short(findings: &[&Finding], files: &[SourceFile]) -> String {
    let mut out = String::new();
    for f in findings {
        if let Some(spot) = &f.spot {
            let (line, column) = spot.start;
            let name = printable(&files[spot.file].shown);
            let _ = write!(out, "{name}:{line}:{column} ");
        }
        let message = f.message.trim_end_matches('.').replace(['\n', '\r'], " ");
        let severity = f.severity.name();
        let _ = writeln!(out, "{severity} {}: {}", f.code.id, printable(&message));
    }
    out
}

/// `FILE:LINE:COLUMN accepted until DATE, "reason": CODE: MESSAGE`, one line a finding.
pub(crate) fn accepted(all: &[Accepted], files: &[SourceFile]) -> String {
    let mut out = String::new();
    for a in all {
        if let Some(spot) = &a.finding.spot {
            let (line, column) = spot.start;
            let name = printable(&files[spot.file].shown);
            let _ = write!(out, "{name}:{line}:{column} ");
        }
        let f = &a.finding;
        let message = f.message.trim_end_matches('.').replace(['\n', '\r'], " ");
        let (until, reason) = (printable(&a.until), printable(&a.reason));
        let _ = writeln!(
            out,
            "accepted until {until}, \"{reason}\": {}: {}",
            f.code.id,
            printable(&message)
        );
    }
    out
}

#[derive(Serialize)]
struct Log<T> {
    #[serde(rename = "$schema")]
    schema: &'static str,
    version: &'static str,
    runs: [Run<T>; 1],
}

#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
struct Run<T> {
    tool: Value,
    column_kind: &'static str,
    original_uri_base_ids: Value,
    results: T,
}

/// Writes SARIF 2.1.0 (OASIS standard, 27 March 2020).
pub(crate) fn sarif(findings: &Findings, out: &mut dyn Write) -> io::Result<()> {
    let mut rules: Vec<&'static Code> = Vec::new();
    let mut index: BTreeMap<&str, usize> = BTreeMap::new();
    // an accepted finding is a result too, which the text suppresses
    let mut all: Vec<(&Finding, Option<&Accepted>)> =
        findings.list.iter().map(|f| (f, None)).collect();
    all.extend(findings.accepted.iter().map(|a| (&a.finding, Some(a))));
    for (f, _) in &all {
        index.entry(f.code.id).or_insert_with(|| {
            rules.push(f.code);
            rules.len() - 1
        });
    }
    let rules: Vec<Value> = rules
        .iter()
        .map(|c| {
            json!({
                "id": c.id,
                "shortDescription": { "text": c.title },
                "help": { "text": c.page, "markdown": c.page },
                "defaultConfiguration": { "level": level(c.severity) },
            })
        })
        .collect();
    let driver =
        json!({ "name": "downlead", "version": env!("CARGO_PKG_VERSION"), "rules": rules });
    let root = json!({ "description": { "text": "The folder the paths are relative to." } });
    let run = Run {
        tool: json!({ "driver": driver }),
        column_kind: "unicodeCodePoints",
        original_uri_base_ids: json!({ "SRCROOT": root }),
        results: Lazy(&all, &|(f, accepted)| {
            let mut result = sarif_result(f, index[f.code.id], &findings.files);
            if let Some(a) = accepted {
                let words = format!("{} (until {})", a.reason, a.until);
                let one = json!([{ "kind": "inSource", "justification": words }]);
                extend(&mut result, Some(json!({ "suppressions": one })));
            }
            result
        }),
    };
    let log = Log {
        schema: "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json",
        version: "2.1.0",
        runs: [run],
    };
    serde_json::to_writer_pretty(&mut *out, &log)?;
    out.write_all(b"\n")
}

fn level(severity: Severity) -> &'static str {
    match severity {
        Severity::Error => "error",
        Severity::Warning => "warning",
        Severity::Info | Severity::Hint => "note",
    }
}

fn sarif_result(f: &Finding, rule: usize, files: &[SourceFile]) -> Value {
    let mut text = f.message.clone();
    for help in &f.help {
        let _ = write!(text, "\n{help}");
    }
    let mut result = json!({
        "ruleId": f.code.id,
        "ruleIndex": rule,
        "level": level(f.severity),
        "message": { "text": text },
    });
    let more = f
        .spot
        .as_ref()
        .map(|spot| json!({ "locations": [{ "physicalLocation": physical(spot, files) }] }));
    extend(&mut result, more);
    if !f.related.is_empty() {
        let related: Vec<Value> = f
            .related
            .iter()
            .map(|(spot, words)| json!({ "physicalLocation": physical(spot, files), "message": { "text": words } }))
            .collect();
        extend(&mut result, Some(json!({ "relatedLocations": related })));
    }
    if !f.changes.is_empty() {
        let fixes: Vec<Value> = f.changes.iter().map(|c| sarif_fix(c, files)).collect();
        extend(&mut result, Some(json!({ "fixes": fixes })));
    }
    result
}

/// One offered change; edits are grouped by file, as the standard asks.
fn sarif_fix(change: &Change, files: &[SourceFile]) -> Value {
    let mut by_file: BTreeMap<usize, Vec<Value>> = BTreeMap::new();
    for (spot, text) in &change.edits {
        by_file
            .entry(spot.file)
            .or_default()
            .push(json!({ "deletedRegion": region(spot), "insertedContent": { "text": text } }));
    }
    let changes: Vec<Value> = by_file
        .into_iter()
        .map(|(file, replacements)| json!({ "artifactLocation": artifact(&files[file]), "replacements": replacements }))
        .collect();
    json!({ "description": { "text": change.title }, "artifactChanges": changes })
}

fn physical(spot: &Spot, files: &[SourceFile]) -> Value {
    json!({ "artifactLocation": artifact(&files[spot.file]), "region": region(spot) })
}

fn artifact(file: &SourceFile) -> Value {
    json!({ "uri": uri(&file.path), "uriBaseId": "SRCROOT" })
}

fn region(spot: &Spot) -> Value {
    json!({
        "startLine": spot.start.0,
        "startColumn": spot.start.1,
        "endLine": spot.end.0,
        "endColumn": spot.end.1,
    })
}

/// A relative path as a URI reference (RFC 3986).
pub(crate) fn uri(path: &str) -> String {
    let mut out = String::with_capacity(path.len());
    for byte in path.bytes() {
        match byte {
            b'a'..=b'z' | b'A'..=b'Z' | b'0'..=b'9' | b'-' | b'.' | b'_' | b'~' | b'/' => {
                out.push(byte as char)
            }
            _ => {
                let _ = write!(out, "%{byte:02X}");
            }
        }
    }
    out
}

/// One workflow command a finding.
pub(crate) fn github(findings: &Findings) -> String {
    let mut out = String::new();
    for f in &findings.list {
        let level = match f.severity {
            Severity::Error => "error",
            Severity::Warning => "warning",
            Severity::Info | Severity::Hint => "notice",
        };
        let mut fields = Vec::new();
        if let Some(spot) = &f.spot {
            fields.push(format!(
                "file={}",
                property(&findings.files[spot.file].shown)
            ));
            fields.push(format!("line={}", spot.start.0));
            fields.push(format!("endLine={}", spot.end.0));
            // columns are only understood within one line
            if spot.start.0 == spot.end.0 {
                fields.push(format!("col={}", spot.start.1));
                fields.push(format!("endColumn={}", spot.end.1));
            }
        }
        fields.push(format!("title={}", property(f.code.id)));
        let text = std::iter::once(&f.message)
            .chain(&f.help)
            .cloned()
            .collect::<Vec<_>>()
            .join("\n");
        let _ = writeln!(out, "::{level} {}::{}", fields.join(","), data(&text));
    }
    out
}

pub(crate) fn data(text: &str) -> String {
    printable(text)
        .replace('%', "%25")
        .replace('\r', "%0D")
        .replace('\n', "%0A")
}

pub(crate) fn property(text: &str) -> String {
    data(text).replace(':', "%3A").replace(',', "%2C")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::findings::tests::made;
    use downlead_base::codes;

    fn found() -> Findings {
        let text = "// µ\nisolator IS1 -0.55 dB\n";
        let at = text.find("-0").unwrap();
        let mut all = made(
            text,
            &[(
                &codes::NEGATIVE_LOSS,
                at..at + 8,
                "loss is 5 %, negative\nso",
            )],
        );
        let spot = all.list[0].spot.clone().unwrap();
        all.list[0].related.push((spot.clone(), "also".to_owned()));
        all.list[0].changes.push(Change {
            title: "write 0.55 dB".to_owned(),
            preferred: true,
            edits: vec![(spot, "0.55 dB".to_owned())],
        });
        all.files[0].path = "a b/µ.downlead".to_owned();
        all
    }

    fn written(format: fn(&Findings, &mut dyn Write) -> io::Result<()>) -> Value {
        let mut out = Vec::new();
        format(&found(), &mut out).unwrap();
        serde_json::from_slice(&out).unwrap()
    }

    #[test]
    fn json_has_place_and_change() {
        let value: Value = written(json);
        let d = &value["diagnostics"][0];
        assert_eq!(
            (&d["line"], &d["column"], &d["end_column"]),
            (&json!(2), &json!(14), &json!(22))
        );
        assert_eq!(d["fixes"][0]["edits"][0]["text"], "0.55 dB");
        assert_eq!(value["errors"], 1);
    }

    #[test]
    fn sarif_names_the_rule_and_escapes_the_path() {
        let value: Value = written(sarif);
        let run = &value["runs"][0];
        let result = &run["results"][0];
        let rule = result["ruleIndex"].as_u64().unwrap() as usize;
        assert_eq!(run["tool"]["driver"]["rules"][rule]["id"], result["ruleId"]);
        let place = &result["locations"][0]["physicalLocation"];
        assert_eq!(place["artifactLocation"]["uri"], "a%20b/%C2%B5.downlead");
        assert_eq!(place["region"]["startColumn"], 14);
    }

    #[test]
    fn annotations_are_escaped() {
        let line = github(&found());
        assert_eq!(
            line,
            "::error file=a.downlead,line=2,endLine=2,col=14,endColumn=22,title=negative-loss::loss is 5 %25, negative%0Aso%0Asay which\n"
        );
    }
}
