//! Findings of files that are used and not open.

mod driver;

use std::path::PathBuf;
use std::time::Duration;

use driver::Client;
use serde_json::{Value, json};

const HILL: &str = "use \"cables.downlead\"\nchain out on 145 MHz {\n    transmitter 50 W\n    run 28 m of thin\n    antenna 4.5 dBi\n}\n";
const CABLES: &str = "cable thin { impedance 50 ohm; velocity 0.66; loss typical { 100 MHz 10 dB/100 m; 500 MHz 25 dB/100 m }; accuracy 5 %; source \"sheet\" }\n";
/// A slip in the used file: a unit that does not exist. And a chain over its limit, which does not
/// concern the file that uses the cable.
const SLIP: &str = "cable thin { impedance 50 ohm; velocity 0.66; loss typical { 100 MHz 10 dB/100 m; 500 MHz 25 dB/100 m }; accuracy 5 %; source \"sheet\" }\ncable other { impedance 50 oms }\nchain own on 145 MHz {\n    transmitter 50 W\n    run 2 m of thin\n    antenna 4.5 dBi\n    limit 1 W erp, \"clause\"\n}\n";

struct Place {
    _folder: tempfile::TempDir,
    root: PathBuf,
}

impl Place {
    fn new(cables: &str) -> Place {
        let folder = tempfile::tempdir().expect("a folder");
        let root = std::fs::canonicalize(folder.path()).expect("a path");
        let p = Place {
            _folder: folder,
            root,
        };
        p.put("hill.downlead", HILL);
        p.put("cables.downlead", cables);
        p
    }

    fn put(&self, path: &str, text: &str) {
        std::fs::write(self.root.join(path), text).expect("written");
    }

    fn uri(&self, path: &str) -> String {
        format!("file://{}", self.root.join(path).display())
    }

    fn session(&self, options: Value) -> Client {
        let mut params = driver::capabilities();
        let uri = format!("file://{}", self.root.display());
        params["rootUri"] = json!(uri);
        params["workspaceFolders"] = json!([{ "uri": uri, "name": "x" }]);
        if !options.is_null() {
            params["initializationOptions"] = options;
        }
        Client::with(&params)
    }

    /// The file was changed by another program, and the client notifies.
    fn changed(&self, c: &mut Client, path: &str, kind: u32) {
        let change = json!({ "uri": self.uri(path), "type": kind });
        c.tell(
            "workspace/didChangeWatchedFiles",
            json!({ "changes": [change] }),
        );
    }
}

/// The next findings sent for a file; no version, since no client has opened it.
fn closed(c: &mut Client, uri: &str) -> Vec<Value> {
    let m = c.wait(|m| {
        m["method"] == "textDocument/publishDiagnostics"
            && m["params"]["uri"] == uri
            && m["params"].get("version").is_none_or(Value::is_null)
    });
    m["params"]["diagnostics"]
        .as_array()
        .expect("a list")
        .clone()
}

fn silent(c: &mut Client, uri: &str) -> bool {
    c.within(Duration::from_millis(400), |m| {
        m["method"] == "textDocument/publishDiagnostics" && m["params"]["uri"] == uri
    })
    .is_none()
}

fn codes(found: &[Value]) -> Vec<&str> {
    found
        .iter()
        .map(|d| d["code"].as_str().expect("a code"))
        .collect()
}

#[test]
fn they_come_and_go_with_the_file() {
    let p = Place::new(SLIP);
    let (hill, cables) = (p.uri("hill.downlead"), p.uri("cables.downlead"));
    let mut c = p.session(Value::Null);
    c.open(&hill, HILL);
    let found = closed(&mut c, &cables);
    assert_eq!(
        codes(&found),
        ["unknown-unit"],
        "its chain is not evaluated here: {found:?}"
    );
    // line and columns are those of the file
    assert_eq!(found[0]["range"]["start"]["line"], 1);
    // typing elsewhere repeats nothing
    c.change(&hill, 2, json!([{ "text": HILL.replace("28 m", "29 m") }]));
    c.diagnostics(&hill, 2);
    assert!(silent(&mut c, &cables));
    // fixed on the disk
    p.put("cables.downlead", CABLES);
    p.changed(&mut c, "cables.downlead", 2);
    assert_eq!(closed(&mut c, &cables), [] as [Value; 0]);
    // broken again, then removed
    p.put("cables.downlead", SLIP);
    p.changed(&mut c, "cables.downlead", 2);
    assert_eq!(closed(&mut c, &cables).len(), 1);
    std::fs::remove_file(p.root.join("cables.downlead")).expect("removed");
    p.changed(&mut c, "cables.downlead", 3);
    assert_eq!(closed(&mut c, &cables), [] as [Value; 0]);
    // there again, and then used no more
    p.put("cables.downlead", SLIP);
    p.changed(&mut c, "cables.downlead", 1);
    assert_eq!(closed(&mut c, &cables).len(), 1);
    c.change(&hill, 3, json!([{ "text": "// nothing\n" }]));
    assert_eq!(closed(&mut c, &cables), [] as [Value; 0]);
    assert_eq!(c.finish(), 0);
}

#[test]
fn an_open_file_speaks_for_itself() {
    let p = Place::new(SLIP);
    let (hill, cables) = (p.uri("hill.downlead"), p.uri("cables.downlead"));
    let mut c = p.session(Value::Null);
    c.open(&hill, HILL);
    assert_eq!(closed(&mut c, &cables).len(), 1);
    // opened: all its findings, of its chain too, and its hints
    c.open(&cables, SLIP);
    let own = c.diagnostics(&cables, 1);
    assert!(codes(&own).contains(&"limit-not-met"), "{own:?}");
    assert!(!c.hints(&cables).as_array().expect("hints").is_empty());
    assert!(silent(&mut c, &cables), "and it is not wiped");
    // fixed in the editor, not on the disk
    c.change(&cables, 2, json!([{ "text": CABLES }]));
    assert_eq!(c.diagnostics(&cables, 2), [] as [Value; 0]);
    // closed without saving: wiped, then what the disk has
    let doc = json!({ "textDocument": { "uri": cables } });
    c.tell("textDocument/didClose", doc);
    while closed(&mut c, &cables).is_empty() {}
    // the last open file closed: nothing is left
    c.tell(
        "textDocument/didClose",
        json!({ "textDocument": { "uri": hill } }),
    );
    assert_eq!(closed(&mut c, &cables), [] as [Value; 0]);
    assert_eq!(c.finish(), 0);
}

#[test]
fn a_client_that_pulls_gets_none() {
    let p = Place::new(SLIP);
    let mut c = p.session(json!({ "downlead": { "diagnostics": { "pull": true } } }));
    assert!(c.offered["capabilities"]["diagnosticProvider"].is_object());
    c.open(&p.uri("hill.downlead"), HILL);
    assert!(silent(&mut c, &p.uri("cables.downlead")));
    assert_eq!(c.finish(), 0);
}

/// A file of readings is watched like a station's.
#[test]
fn readings_that_come_later() {
    let p = Place::new(CABLES);
    let hill = p.uri("hill.downlead");
    let bench = "use \"cables.downlead\"\ninstrument W3 {\n    accuracy 5 % of reading\n}\nsession four {\n    read 2026-07-19 with W3 by QY5BEN\n    piece A 11.40 m of thin\n    readings from \"july.csv\"\n}\n";
    let mut c = p.session(Value::Null);
    c.open(&hill, bench);
    let missing = |found: &[Value]| {
        found
            .iter()
            .any(|d| d["code"] == "use-not-found" && d["range"]["start"]["line"] == 7)
    };
    let found = c.diagnostics(&hill, 1);
    assert!(missing(&found), "{found:?}");
    p.put(
        "july.csv",
        "band,frequency_mhz,piece,length_m,time_min,temperature_c,forward_w,reflected_w\n2m,145.3,baseline,,0,12,20.0,0.02\n2m,145.3,A,11.4,2,12,15.0,0.02\n2m,145.3,baseline,,4,12,20.0,0.02\n",
    );
    p.changed(&mut c, "july.csv", 1);
    let found = c.diagnostics(&hill, 1);
    assert!(found.iter().all(|d| d["severity"] != 1), "{found:?}");
    assert_eq!(c.finish(), 0);
}
