//! The protocol layer: positions, versions, forms that depend on the client. The content of the
//! features is tested in their own crate.

mod driver;

use std::path::{Path, PathBuf};
use std::time::Duration;

use driver::Client;
use serde_json::{Value, json};

/// A copy of the examples that a test may change.
struct Examples {
    _folder: tempfile::TempDir,
    root: PathBuf,
}

impl Examples {
    fn new() -> Examples {
        let folder = tempfile::tempdir().expect("a folder");
        let root = std::fs::canonicalize(folder.path()).expect("a path");
        copy(
            &Path::new(env!("CARGO_MANIFEST_DIR")).join("../../examples"),
            &root,
        );
        Examples {
            _folder: folder,
            root,
        }
    }

    fn uri(&self, path: &str) -> String {
        format!("file://{}", self.root.join(path).display())
    }

    fn text(&self, path: &str) -> String {
        std::fs::read_to_string(self.root.join(path)).expect("an example")
    }

    /// A session of that client in this folder.
    fn session(&self, words: &str, options: Value) -> Client {
        let mut params: Value = serde_json::from_str(words).expect("JSON");
        params["rootUri"] = json!(self.uri(""));
        params["workspaceFolders"] = json!([{ "uri": self.uri(""), "name": "examples" }]);
        if !options.is_null() {
            params["initializationOptions"] = options;
        }
        Client::with(&params)
    }
}

fn copy(from: &Path, to: &Path) {
    for entry in std::fs::read_dir(from).expect("a folder") {
        let path = entry.expect("an entry").path();
        let target = to.join(path.file_name().expect("a name"));
        if path.is_dir() {
            std::fs::create_dir(&target).expect("made");
            copy(&path, &target);
        } else {
            std::fs::copy(&path, &target).expect("copied");
        }
    }
}

const NEOVIM: &str = include_str!("clients/neovim.json");
const HELIX: &str = include_str!("clients/helix.json");
const VSCODE: &str = include_str!("clients/vscode.json");
const BARE: &str = include_str!("clients/bare.json");
const HILL: &str = "pellgarrow/rev4.downlead";

/// Line and column (in bytes) of the first `what`, moved on by `by`.
fn find(text: &str, what: &str, by: usize) -> (u32, u32) {
    let at = text
        .find(what)
        .unwrap_or_else(|| panic!("{what} stands there"))
        + by;
    let line = text[..at].matches('\n').count();
    let start = text[..at].rfind('\n').map_or(0, |i| i + 1);
    (line as u32, (at - start) as u32)
}

/// Applies edits in UTF-8 columns.
fn apply(text: &str, edits: &Value) -> String {
    let mut starts = vec![0];
    starts.extend(text.match_indices('\n').map(|(i, _)| i + 1));
    let byte = |p: &Value| {
        let line = p["line"].as_u64().expect("a line") as usize;
        starts.get(line).map_or(text.len(), |s| {
            s + p["character"].as_u64().expect("a column") as usize
        })
    };
    let mut all: Vec<(usize, usize, &str)> = edits
        .as_array()
        .expect("edits")
        .iter()
        .map(|e| {
            (
                byte(&e["range"]["start"]),
                byte(&e["range"]["end"]),
                e["newText"].as_str().expect("text"),
            )
        })
        .collect();
    all.sort_unstable();
    let mut out = text.to_owned();
    for (a, b, new) in all.into_iter().rev() {
        out.replace_range(a..b, new);
    }
    out
}

#[test]
fn the_demo_station_in_every_profile() {
    let ex = Examples::new();
    for words in [
        NEOVIM,
        VSCODE,
        BARE,
        HELIX,
        include_str!("clients/emacs-eglot.json"),
        include_str!("clients/kate.json"),
    ] {
        let mut c = ex.session(words, Value::Null);
        let (uri, text) = (ex.uri(HILL), ex.text(HILL));
        c.open(&uri, &text);
        let found = c.diagnostics(&uri, 1);
        assert!(
            found.iter().all(|d| d["severity"] != 1),
            "the demo has no errors: {found:?}"
        );
        let hints = c.hints(&uri);
        assert!(hints.as_array().is_some_and(|h| h.len() > 30), "{hints}");
        let (line, column) = find(&text, "        M1\n", 9);
        let hover = c.ask("textDocument/hover", c.at(&uri, line, column));
        assert!(
            hover["contents"]["value"]
                .as_str()
                .is_some_and(|v| v.contains("dB")),
            "{hover}"
        );
        assert!(
            !hover.to_string().contains("downlead-place:"),
            "no link only we understand: {hover}"
        );
        assert_eq!(c.finish(), 0);
    }
}

#[test]
fn names_lead_across_files_and_into_the_library() {
    let ex = Examples::new();
    let (uri, text) = (ex.uri(HILL), ex.text(HILL));
    let (line, column) = find(&text, "demo-seven-eighths-foam", 3);
    let quick = "chain x on 145 MHz {\n    transmitter 5 W\n    run 10 m of half-inch-foam\n    antenna 0 dBi\n}\n";

    // a client that takes links
    let mut c = ex.session(NEOVIM, Value::Null);
    c.open(&uri, &text);
    let link = c.ask("textDocument/definition", c.at(&uri, line, column));
    assert_eq!(link[0]["targetUri"], ex.uri("thrennock/cables.downlead"));
    assert!(link[0]["originSelectionRange"].is_object());
    // the library as a read-only file, which is a document of its own when opened
    c.open("untitled:q", quick);
    let link = c.ask("textDocument/definition", c.at("untitled:q", 2, 20));
    let library = link[0]["targetUri"]
        .as_str()
        .expect("an address")
        .to_owned();
    let path = PathBuf::from(library.strip_prefix("file://").expect("a file"));
    let there = std::fs::read_to_string(&path).expect("readable");
    assert!(
        std::fs::metadata(&path)
            .expect("there")
            .permissions()
            .readonly()
    );
    let at = &link[0]["targetSelectionRange"]["start"];
    let named = there
        .lines()
        .nth(at["line"].as_u64().expect("a line") as usize)
        .expect("the line");
    assert!(named.starts_with("cable half-inch-foam"), "{named}");
    c.open(&library, &there);
    let symbols = c.ask(
        "textDocument/documentSymbol",
        json!({ "textDocument": { "uri": library } }),
    );
    assert!(symbols.as_array().is_some_and(|s| !s.is_empty()));
    assert_eq!(c.finish(), 0);

    // one that takes plain places, and one that opens the server's own scheme
    let mut c = ex.session(BARE, Value::Null);
    c.open(&uri, &text);
    let place = c.ask("textDocument/definition", c.at(&uri, line, column));
    assert_eq!(place[0]["uri"], ex.uri("thrennock/cables.downlead"));
    assert_eq!(c.finish(), 0);
    let mut c = ex.session(NEOVIM, json!({ "virtualDocuments": true }));
    c.open("untitled:q", quick);
    let link = c.ask("textDocument/definition", c.at("untitled:q", 2, 20));
    let own = link[0]["targetUri"].clone();
    assert!(
        own.as_str()
            .is_some_and(|u| u.starts_with("downlead:/library/")),
        "{own}"
    );
    assert_eq!(
        c.ask("downlead/virtualDocument", json!({ "uri": own })),
        json!(there)
    );
    assert_eq!(c.finish(), 0);
}

#[test]
fn a_rename_reaches_files_that_are_not_open_with_versions() {
    let ex = Examples::new();
    let mut c = ex.session(HELIX, Value::Null);
    let cables = "thrennock/cables.downlead";
    let (uri, text) = (ex.uri(cables), ex.text(cables));
    c.open(&uri, &text);
    c.change(&uri, 7, json!([{ "text": format!("// µ\n{text}") }]));
    let text = format!("// µ\n{text}");
    let (line, column) = find(&text, "cable demo-seven-eighths-foam", 8);
    let prepared = c.ask("textDocument/prepareRename", c.at(&uri, line, column));
    assert_eq!(prepared["placeholder"], "demo-seven-eighths-foam");
    let places = {
        let mut p = c.at(&uri, line, column);
        p["context"] = json!({ "includeDeclaration": true });
        c.ask("textDocument/references", p)
    };
    let mut p = c.at(&uri, line, column);
    p["newName"] = json!("demo-big-foam");
    let edit = c.ask("textDocument/rename", p.clone());
    let changes = edit["documentChanges"]
        .as_array()
        .expect("versioned changes");
    let mut count = 0;
    let mut files = Vec::new();
    for change in changes {
        let to = change["textDocument"]["uri"].as_str().expect("an address");
        let (old, version) = if to == uri {
            (text.clone(), json!(7))
        } else {
            (
                ex.text(to.strip_prefix(&ex.uri("")).expect("below")),
                Value::Null,
            )
        };
        assert_eq!(change["textDocument"]["version"], version, "{to}");
        let new = apply(&old, &change["edits"]);
        assert_eq!(
            new.matches("demo-big-foam").count(),
            old.matches("demo-seven-eighths-foam").count(),
            "{to}"
        );
        count += change["edits"].as_array().expect("edits").len();
        files.push(to.to_owned());
    }
    assert!(files.contains(&ex.uri(HILL)), "{files:?}");
    assert_eq!(
        places.as_array().expect("places").len(),
        count,
        "references and rename agree"
    );
    p["newName"] = json!("no good name");
    assert_eq!(c.fails("textDocument/rename", p), -32803);
    assert_eq!(c.finish(), 0);
}

#[test]
fn a_file_renamed_keeps_its_uses() {
    let ex = Examples::new();
    let mut c = ex.session(HELIX, Value::Null);
    c.open(&ex.uri(HILL), &ex.text(HILL));
    let files = json!([{ "oldUri": ex.uri("thrennock/cables.downlead"), "newUri": ex.uri("lines.downlead") }]);
    let edit = c.ask("workspace/willRenameFiles", json!({ "files": files }));
    let changes = edit["documentChanges"].as_array().expect("changes");
    let hill = changes
        .iter()
        .find(|e| e["textDocument"]["uri"] == ex.uri(HILL))
        .expect("the hill is changed");
    let new = apply(&ex.text(HILL), &hill["edits"]);
    assert!(
        new.contains("use \"../lines.downlead\"")
            && new.contains("use \"../thrennock/instruments.downlead\""),
        "{}",
        &new[..300]
    );
    assert_eq!(c.finish(), 0);
}

#[test]
fn formatting_is_small_and_keeps_line_ends() {
    let mut c = Client::start();
    let options = json!({ "tabSize": 4, "insertSpaces": true });
    let doc = json!({ "uri": "untitled:f" });
    let bad = "chain x on 145 MHz {\r\n  transmitter 5   W\r\n    run 10 m of half-inch-foam\r\n antenna 0 dBi\r\n}\r\n";
    c.open("untitled:f", bad);
    let edits = c.ask(
        "textDocument/formatting",
        json!({ "textDocument": doc, "options": options }),
    );
    let good = apply(bad, &edits);
    assert_eq!(
        good,
        "chain x on 145 MHz {\r\n    transmitter 5 W\r\n    run 10 m of half-inch-foam\r\n    antenna 0 dBi\r\n}\r\n"
    );
    let touched: Vec<u64> = edits
        .as_array()
        .expect("edits")
        .iter()
        .filter_map(|e| e["range"]["start"]["line"].as_u64())
        .collect();
    assert!(
        !touched.contains(&2) && !touched.contains(&0),
        "lines that are right stay: {edits}"
    );
    c.change("untitled:f", 2, json!([{ "text": good }]));
    assert_eq!(
        c.ask(
            "textDocument/formatting",
            json!({ "textDocument": doc, "options": options })
        ),
        json!([])
    );
    assert_eq!(c.finish(), 0);
}

#[test]
fn tokens_by_difference_make_the_whole() {
    let ex = Examples::new();
    let mut c = ex.session(NEOVIM, Value::Null);
    let uri = ex.uri("sheet.downlead");
    let doc = json!({ "uri": uri });
    c.open(&uri, &ex.text("sheet.downlead"));
    let first = c.ask(
        "textDocument/semanticTokens/full",
        json!({ "textDocument": doc }),
    );
    let mut have: Vec<u64> = serde_json::from_value(first["data"].clone()).expect("numbers");
    assert!(have.len() > 100);
    let mut id = first["resultId"].clone();
    for (version, (line, text)) in [(3, "// µ 𝄞\n"), (0, "let a = 3 m\n"), (5, "}\n"), (2, "")]
        .into_iter()
        .enumerate()
    {
        let here = json!({ "start": { "line": line, "character": 0 }, "end": { "line": line + u32::from(text.is_empty()), "character": 0 } });
        c.change(
            &uri,
            version as i64 + 2,
            json!([{ "range": here, "text": text }]),
        );
        let delta = c.ask(
            "textDocument/semanticTokens/full/delta",
            json!({ "textDocument": doc, "previousResultId": id }),
        );
        for e in delta["edits"].as_array().expect("a difference") {
            let start = e["start"].as_u64().expect("a place") as usize;
            let gone = e["deleteCount"].as_u64().expect("a count") as usize;
            let new: Vec<u64> = e.get("data").map_or(Vec::new(), |d| {
                serde_json::from_value(d.clone()).expect("numbers")
            });
            have.splice(start..start + gone, new);
        }
        id = delta["resultId"].clone();
        let whole = c.ask("textDocument/semanticTokens/range", json!({ "textDocument": doc, "range": { "start": { "line": 0, "character": 0 }, "end": { "line": 9999, "character": 0 } } }));
        assert_eq!(json!(have), whole["data"]);
    }
    // an answer that is not remembered: everything
    let all = c.ask(
        "textDocument/semanticTokens/full/delta",
        json!({ "textDocument": doc, "previousResultId": "gone" }),
    );
    assert_eq!(all["data"], json!(have));
    assert_eq!(c.finish(), 0);
}

#[test]
fn fixes_and_refactorings() {
    for words in [HELIX, BARE] {
        let mut params: Value = serde_json::from_str(words).expect("JSON");
        params["rootPath"] = Value::Null;
        params["rootUri"] = Value::Null;
        params["workspaceFolders"] = Value::Null;
        params["capabilities"]["workspace"]["applyEdit"] = json!(true);
        let mut c = Client::with(&params);
        let text = "chain x on 145 MHz {\n    transmitter 5 W\n    run 10 m of half-inch-fom\n    antenna 0 dBi\n}\n";
        c.open("untitled:a", text);
        let found = c.diagnostics("untitled:a", 1);
        let wrong = found
            .iter()
            .find(|d| d["code"] == "unknown-cable")
            .expect("the slip is found")
            .clone();
        let ask = |only: Value| json!({ "textDocument": { "uri": "untitled:a" }, "range": wrong["range"], "context": { "diagnostics": [wrong], "only": only } });
        let offered = c.ask("textDocument/codeAction", ask(Value::Null));
        let fix = offered
            .as_array()
            .expect("actions")
            .iter()
            .find(|a| {
                a["title"]
                    .as_str()
                    .is_some_and(|t| t.contains("half-inch-foam"))
            })
            .expect("a fix")
            .clone();
        if words == BARE {
            // no literals: a command that makes the server ask for the edit
            assert_eq!(fix["command"], "downlead.apply");
            c.ask(
                "workspace/executeCommand",
                json!({ "command": fix["command"], "arguments": fix["arguments"] }),
            );
            let asked = c.wait(|m| m["method"] == "workspace/applyEdit");
            assert!(
                asked["params"]["edit"]["changes"]["untitled:a"].is_array(),
                "{asked}"
            );
        } else {
            assert_eq!(fix["kind"], "quickfix");
            assert_eq!(fix["diagnostics"][0], wrong);
            let edits = &fix["edit"]["documentChanges"][0]["edits"];
            assert_eq!(
                apply(text, edits),
                text.replace("half-inch-fom", "half-inch-foam")
            );
            // refactorings come without their edit, which is added when one is chosen
            let others = c.ask("textDocument/codeAction", {
                let mut a = ask(json!(["refactor"]));
                a["range"] = json!({ "start": { "line": 1, "character": 17 }, "end": { "line": 1, "character": 17 } });
                a
            });
            let other = others
                .as_array()
                .expect("actions")
                .iter()
                .find(|a| a.get("disabled").is_none())
                .expect("a refactoring")
                .clone();
            assert!(
                other["kind"]
                    .as_str()
                    .is_some_and(|k| k.starts_with("refactor"))
                    && other.get("edit").is_none(),
                "{other}"
            );
            let whole = c.ask("codeAction/resolve", other);
            assert!(whole["edit"]["documentChanges"].is_array(), "{whole}");
            let all = c.ask("textDocument/codeAction", ask(json!(["source.fixAll"])));
            assert!(
                all.as_array()
                    .expect("actions")
                    .iter()
                    .all(|a| a["kind"] == "source.fixAll.downlead"),
                "{all}"
            );
        }
        assert_eq!(c.finish(), 0);
    }
}

#[test]
fn hints_are_completed_when_looked_at() {
    let ex = Examples::new();
    let mut c = ex.session(VSCODE, Value::Null);
    let uri = ex.uri(HILL);
    c.open(&uri, &ex.text(HILL));
    let hints = c.hints(&uri);
    let late = hints
        .as_array()
        .expect("hints")
        .iter()
        .find(|h| h.get("data").is_some())
        .expect("a hint with more to say")
        .clone();
    assert!(late.get("tooltip").is_none() && late.get("textEdits").is_none());
    let whole = c.ask("inlayHint/resolve", late.clone());
    assert!(
        whole.get("tooltip").is_some() || whole.get("textEdits").is_some(),
        "{whole}"
    );
    // of another version of the text: as it was
    c.change(&uri, 2, json!([{ "range": { "start": { "line": 0, "character": 0 }, "end": { "line": 0, "character": 0 } }, "text": "\n" }]));
    assert_eq!(c.ask("inlayHint/resolve", late.clone()), late);
    assert_eq!(c.finish(), 0);
}

#[test]
fn a_whole_long_file_has_plain_hints_of_the_same_words() {
    let mut c = Client::start();
    let text = downlead_testkit::large_file(1500);
    c.open("untitled:long", &text);
    // with the sample in them
    c.diagnostics("untitled:long", 1);
    let words = |h: &Value| match &h["label"] {
        Value::String(s) => s.clone(),
        parts => {
            let parts = parts.as_array().expect("parts");
            parts
                .iter()
                .map(|p| p["value"].as_str().expect("text"))
                .collect()
        }
    };
    let all = c.hints("untitled:long");
    let all = all.as_array().expect("hints");
    assert!(all.len() > 500 && all.iter().all(|h| h["label"].is_string()));
    let range =
        json!({ "start": { "line": 100, "character": 0 }, "end": { "line": 140, "character": 0 } });
    let some = c.ask(
        "textDocument/inlayHint",
        json!({ "textDocument": { "uri": "untitled:long" }, "range": range }),
    );
    let some = some.as_array().expect("hints");
    assert!(some.iter().any(|h| h["label"].is_array()));
    for h in some {
        let same = all
            .iter()
            .find(|o| o["position"] == h["position"])
            .expect("the same place");
        assert_eq!(words(h), words(same));
    }
    assert_eq!(c.finish(), 0);
}

#[test]
fn settings_switch_hints_and_wrong_ones_keep_the_old() {
    let ex = Examples::new();
    let uri = ex.uri(HILL);
    // notified directly
    let mut c = ex.session(BARE, Value::Null);
    c.open(&uri, &ex.text(HILL));
    let all = c.hints(&uri).as_array().expect("hints").len();
    c.tell(
        "workspace/didChangeConfiguration",
        json!({ "settings": { "downlead": { "hints": { "bands": ["70cm"] } } } }),
    );
    let some = c.hints(&uri).as_array().expect("hints").len();
    assert!(some < all, "{some} of {all}");
    c.tell(
        "workspace/didChangeConfiguration",
        json!({ "settings": { "downlead": { "hints": { "bands": 3 }, "colour": 1 } } }),
    );
    assert_eq!(c.hints(&uri).as_array().expect("hints").len(), some);
    c.wait(|m| {
        m["method"] == "window/showMessage"
            && m["params"]["message"]
                .as_str()
                .is_some_and(|t| t.contains("downlead.colour"))
    });
    c.tell(
        "workspace/didChangeConfiguration",
        json!({ "settings": { "downlead": { "hints": false } } }),
    );
    assert_eq!(c.hints(&uri), json!([]));
    assert_eq!(c.finish(), 0);
    // requested by the server, which then asks the client to refresh
    let mut c = ex.session(VSCODE, Value::Null);
    c.open(&uri, &ex.text(HILL));
    c.wait(|m| m["method"] == "workspace/configuration");
    assert_eq!(c.hints(&uri).as_array().expect("hints").len(), all);
    c.settings = json!({ "hints": { "enabled": false } });
    c.tell(
        "workspace/didChangeConfiguration",
        json!({ "settings": null }),
    );
    c.wait(|m| m["method"] == "workspace/inlayHint/refresh");
    assert_eq!(c.hints(&uri), json!([]));
    assert_eq!(c.finish(), 0);
}

#[test]
fn reports_are_given_shown_and_followed() {
    let ex = Examples::new();
    let uri = ex.uri(HILL);
    let mut c = ex.session(VSCODE, json!({ "downlead": { "virtualDocuments": true } }));
    c.open(&uri, &ex.text(HILL));
    let lenses = c.ask(
        "textDocument/codeLens",
        json!({ "textDocument": { "uri": uri } }),
    );
    let lens = lenses
        .as_array()
        .expect("lenses")
        .iter()
        .find(|l| l["command"]["command"] == "downlead.report")
        .expect("a lens")
        .clone();
    let text = c.ask(
        "workspace/executeCommand",
        json!({ "command": "downlead.report", "arguments": lens["command"]["arguments"] }),
    );
    assert!(
        text.as_str().is_some_and(|t| t.contains("talk-out")),
        "{text}"
    );
    let shown = c.wait(|m| m["method"] == "window/showDocument");
    let made = shown["params"]["uri"].clone();
    assert_eq!(
        c.ask("downlead/virtualDocument", json!({ "uri": made })),
        text
    );
    // it follows the text
    let source = ex.text(HILL);
    let (line, column) = find(&source, "run M1 46 m", 7);
    let range = json!({ "start": { "line": line, "character": column }, "end": { "line": line, "character": column + 2 } });
    c.change(&uri, 2, json!([{ "range": range, "text": "96" }]));
    let told = c.wait(|m| m["method"] == "downlead/virtualDocumentChanged");
    assert_eq!(told["params"]["uri"], made);
    assert_ne!(
        c.ask("downlead/virtualDocument", json!({ "uri": made })),
        text
    );
    // as data, and the page of a code
    let data = c.ask(
        "workspace/executeCommand",
        json!({ "command": "downlead.export", "arguments": [{ "uri": uri, "format": "json" }] }),
    );
    assert!(data.is_object());
    let page = c.ask(
        "workspace/executeCommand",
        json!({ "command": "downlead.export", "arguments": [{ "uri": uri, "format": "html" }] }),
    );
    let page = page.as_str().unwrap();
    assert!(page.starts_with("<!DOCTYPE html>") && page.contains("data-at="));
    let page = c.ask(
        "downlead/virtualDocument",
        json!({ "uri": "downlead:/code/unknown-cable.md" }),
    );
    assert!(page.as_str().is_some_and(|p| p.contains("cable")));
    let line = find(&source, "        M1\n", 9).0 + 1;
    let why = c.ask(
        "workspace/executeCommand",
        json!({ "command": "downlead.explain", "arguments": [{ "uri": uri, "line": line }] }),
    );
    assert!(why.as_str().is_some_and(|t| t.contains("dB")), "{why}");
    assert_eq!(c.finish(), 0);
}

#[test]
fn what_is_used_elsewhere_refreshes_when_it_settles() {
    let ex = Examples::new();
    let mut c = ex.session(VSCODE, Value::Null);
    c.wait(|m| m["method"] == "client/registerCapability");
    let cables = ex.uri("thrennock/cables.downlead");
    c.open(&ex.uri(HILL), &ex.text(HILL));
    c.open(&cables, &ex.text("thrennock/cables.downlead"));
    c.diagnostics(&cables, 1);
    c.within(Duration::from_millis(600), |_| false);
    c.inbox.clear();
    let start = json!({ "line": 0, "character": 0 });
    for version in 2..6 {
        c.change(
            &cables,
            version,
            json!([{ "range": { "start": start, "end": start }, "text": "\n" }]),
        );
    }
    c.wait(|m| m["method"] == "workspace/inlayHint/refresh");
    c.within(Duration::from_millis(600), |_| false);
    let more = c
        .inbox
        .iter()
        .filter(|m| m["method"] == "workspace/inlayHint/refresh")
        .count();
    assert_eq!(more, 0, "one for all of them");
    // nothing uses the hill: its edits need no refresh
    c.inbox.clear();
    c.change(
        &ex.uri(HILL),
        2,
        json!([{ "range": { "start": start, "end": start }, "text": "\n" }]),
    );
    let none = c.within(Duration::from_millis(700), |m| {
        m["method"] == "workspace/inlayHint/refresh"
    });
    assert_eq!(none, None);
    assert_eq!(c.finish(), 0);
}

#[test]
fn folders_come_and_go() {
    let ex = Examples::new();
    let other = Examples::new();
    // with the marker the root would be the same wherever the folder is opened
    std::fs::remove_file(other.root.join(".downlead-root")).expect("a marker");
    let mut c = ex.session(NEOVIM, Value::Null);
    // a file of another folder, whose `use` climbs: allowed only below a root that holds both
    let uri = other.uri(HILL);
    c.open(&uri, &other.text(HILL));
    let outside = |found: &[Value]| {
        found
            .iter()
            .any(|d| d["code"] == "use-outside-root" || d["code"] == "use-not-found")
    };
    assert!(outside(&c.diagnostics(&uri, 1)));
    let event = json!({ "added": [{ "uri": other.uri(""), "name": "other" }], "removed": [] });
    c.tell(
        "workspace/didChangeWorkspaceFolders",
        json!({ "event": event }),
    );
    assert!(!outside(&c.diagnostics(&uri, 1)));
    let event = json!({ "added": [], "removed": [{ "uri": other.uri(""), "name": "other" }] });
    c.tell(
        "workspace/didChangeWorkspaceFolders",
        json!({ "event": event }),
    );
    assert!(outside(&c.diagnostics(&uri, 1)));
    assert_eq!(c.finish(), 0);
}

/// Files that no text names yet are offered from the disk, each kind where it is allowed.
#[test]
fn paths_are_offered_from_the_disk() {
    let folder = tempfile::tempdir().expect("a folder");
    let root = std::fs::canonicalize(folder.path()).expect("a path");
    for path in [
        "bench/july.csv",
        "bench/june.TSV",
        "bench/reel.s2p",
        "notes.md",
        "lib/cables.downlead",
        ".hidden/x.csv",
    ] {
        let path = root.join(path);
        std::fs::create_dir_all(path.parent().expect("a parent")).expect("made");
        std::fs::write(path, "").expect("written");
    }
    let uri = format!("file://{}", root.join("bench/a.downlead").display());
    let mut params = driver::capabilities();
    let here = format!("file://{}", root.display());
    params["rootUri"] = json!(here);
    params["workspaceFolders"] = json!([{ "uri": here, "name": "x" }]);
    let mut c = Client::with(&params);
    let text = "use \"\nsession s {\n    readings from \"\n    load from \"\n}\n";
    c.open(&uri, text);
    let mut offered = |line: u32, character: u32| -> Vec<String> {
        let all = c.ask("textDocument/completion", c.at(&uri, line, character));
        let items = all["items"].as_array().expect("items").clone();
        let label = |i: &Value| {
            i["textEdit"]["newText"]
                .as_str()
                .expect("a text")
                .to_owned()
        };
        items.iter().map(label).collect()
    };
    assert_eq!(offered(0, 5), ["../lib/cables.downlead"]);
    assert_eq!(offered(2, 19), ["july.csv", "june.TSV"]);
    assert_eq!(offered(3, 15), ["reel.s2p"]);
}

/// A proposal at the end of a complete line would be accepted by Enter.
#[test]
fn nothing_is_offered_at_the_end_of_a_whole_line() {
    let mut c = Client::start();
    let text = include_str!("../../../tests/sessions/repeater.downlead");
    c.open("file:///r.downlead", text);
    let mut offered = |line: usize, character: usize, typed: Option<&str>| -> Vec<String> {
        let mut p = c.at(
            "file:///r.downlead",
            u32::try_from(line).expect("a line"),
            u32::try_from(character).expect("a column"),
        );
        p["context"] = match typed {
            Some(key) => json!({ "triggerKind": 2, "triggerCharacter": key }),
            None => json!({ "triggerKind": 1 }),
        };
        let all = c.ask("textDocument/completion", p);
        let items = all["items"].as_array().expect("items");
        assert!(items.iter().all(|i| i.get("preselect").is_none()), "{line}");
        items.iter().map(|i| i["label"].to_string()).collect()
    };
    let none: &[String] = &[];
    for (i, line) in text.lines().enumerate() {
        let word = line.trim_start().split(' ').next_back().unwrap_or("");
        let ends_with_word = word.ends_with(|c: char| c.is_alphanumeric());
        if line.ends_with('"') {
            assert_eq!(offered(i, line.len(), Some("\"")), none, "{line}");
        } else if ends_with_word && line.is_ascii() && word.parse::<f64>().is_err() {
            assert_eq!(offered(i, line.len(), None), none, "{line}");
        }
    }
    // one key earlier something is
    let unit = text.lines().position(|l| l.ends_with("145.7125 MHz"));
    let end = "    transmit 145.7125 MHz".len();
    assert!(!offered(unit.expect("the line"), end - 3, Some(" ")).is_empty());
}
