//! What several test programs share.
#![allow(dead_code, unreachable_pub, reason = "each test program uses its part")]

use downlead_base::{Diagnostic, Loc};
use downlead_eval::Snapshot;
use downlead_report::Reports as _;
use downlead_report::shape::chain::{BandReport, Report};
use downlead_station::Loader;
use downlead_testkit::Files;
use serde_json::Value;

pub const MAIN: &str = "main.downlead";

/// The snapshot of one text.
pub fn load(text: &str) -> Snapshot {
    load_from(&Files::default().with(MAIN, text))
}

/// The snapshot of `main.downlead` and what it uses.
pub fn load_from(files: &dyn Loader) -> Snapshot {
    Snapshot::load(&[MAIN.to_owned()], files)
}

/// The report on one text, which must be free of errors (an exceeded limit or rating is a result).
pub fn report(text: &str) -> Report {
    let r = load(text).report();
    let errors: Vec<_> = r
        .diagnostics
        .iter()
        .filter(|d| {
            d.severity.name() == "error"
                && !["limit-not-met", "rating-exceeded", "voltage-exceeded"].contains(&d.code)
        })
        .collect();
    assert!(errors.is_empty(), "{errors:#?}\n{text}");
    r
}

/// All bands of all chains, in order, with their chain.
pub fn bands(r: &Report) -> Vec<(&str, &BandReport)> {
    r.stations
        .iter()
        .flat_map(|s| &s.chains)
        .flat_map(|c| c.bands.iter().map(|b| (c.name.as_str(), b)))
        .collect()
}

/// The report without what depends on where the text stands: lines, columns and the messages that
/// name a line.
pub fn without_lines(r: &Report) -> Value {
    fn strip(v: &mut Value) {
        match v {
            Value::Object(m) => {
                for key in ["line", "chain_line", "column"] {
                    m.remove(key);
                }
                m.values_mut().for_each(strip);
            }
            Value::Array(a) => a.iter_mut().for_each(strip),
            Value::String(s) => {
                // `the pad of line 12`
                while let Some(i) = s.find(" of line ") {
                    let digits = s[i + 9..].bytes().take_while(u8::is_ascii_digit).count();
                    s.replace_range(i..i + 9 + digits, " of a line");
                }
            }
            _ => {}
        }
    }
    let mut v = serde_json::to_value(r).expect("JSON");
    strip(&mut v);
    v
}

/// What a bench session comes to, without places.
pub fn session(r: &downlead_eval::bench::result::SessionResult) -> String {
    let mut out = format!(
        "{} readings, {} lost, with {:?}",
        r.readings, r.lost, r.meters
    );
    for c in &r.cells {
        out += &format!(
            "\n{} {}: {:?} {:?} {:?} {:?} {:?}",
            r.pieces[c.piece].name,
            r.bands[c.band].band,
            c.method,
            c.measured,
            c.budget,
            c.expected,
            c.comparison
        );
    }
    for b in &r.bands {
        out += &format!("\n{} {:?} {:?}", b.band, b.drift, b.ranking);
    }
    for p in &r.pieces {
        let lengths: Vec<_> = p.lengths.iter().map(|l| (l.1, l.2)).collect();
        out += &format!("\n{} {:?} {:?} {lengths:?}", p.name, p.whole, p.fit);
    }
    out
}

/// Everything a snapshot says, as text: the report, and every finding with all its places.
pub fn everything(s: &Snapshot) -> String {
    let place = |l: Loc| match s.place(l) {
        Some((file, span)) => format!("{}:{}..{}", s.files()[file].path, span.start, span.end),
        None => "elsewhere".to_owned(),
    };
    let finding = |d: &Diagnostic| {
        let mut out = format!(
            "{} {:?} {} [{} {}]",
            d.code.id,
            d.severity,
            d.message,
            place(d.primary.loc),
            d.primary.message
        );
        for l in &d.related {
            out += &format!("\n  also {} {}", place(l.loc), l.message);
        }
        for h in &d.help {
            out += &format!("\n  help {h}");
        }
        for f in &d.fixes {
            out += &format!("\n  fix {} {}", f.title, f.preferred);
            for e in &f.edits {
                out += &format!(" {}={:?}", place(e.loc), e.text);
            }
        }
        out
    };
    let findings: Vec<String> = s.diagnostics().iter().map(finding).collect();
    let report = serde_json::to_string_pretty(&s.report()).expect("JSON");
    let sessions: Vec<String> = s
        .scopes()
        .iter()
        .flat_map(|x| x.items())
        .filter_map(|x| x.2.session.as_deref())
        .map(session)
        .collect();
    format!("{}\n{}\n{report}", findings.join("\n"), sessions.join("\n"))
}
