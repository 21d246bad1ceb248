//! The command that compares the text in the editor with a revision, over real repositories.

mod driver;

use std::path::{Path, PathBuf};
use std::process::Command;

use driver::Client;
use serde_json::{Value, json};

const CABLE: &str = "cable thin { impedance 50 ohm; velocity 0.66; loss typical { 100 MHz 10 dB/100 m; 500 MHz 25 dB/100 m }; accuracy 5 %; source \"sheet\" }\n";
const HILL: &str = "use \"cables.downlead\"\nchain out on 145 MHz {\n    transmitter TX1 50 W\n    run M1 28 m of thin\n    antenna A1 4.5 dBi\n    limit 40 W erp, \"clause\"\n}\n";

/// A repository in a folder of its own, with the hill in its folder `isle`.
struct Repository {
    _folder: tempfile::TempDir,
    top: PathBuf,
}

impl Repository {
    fn new() -> Repository {
        let folder = tempfile::tempdir().expect("a folder");
        let top = std::fs::canonicalize(folder.path())
            .expect("a path")
            .join("repo");
        std::fs::create_dir_all(top.join("isle")).expect("made");
        let r = Repository {
            _folder: folder,
            top,
        };
        r.git(&["init", "--quiet"]);
        r.put("isle/hill.downlead", HILL);
        r.put("isle/cables.downlead", CABLE);
        r.commit("first");
        r
    }

    fn git(&self, args: &[&str]) {
        let done = Command::new("git")
            .args([
                "-c",
                "user.name=x",
                "-c",
                "user.email=x@example.org",
                "-c",
                "commit.gpgsign=false",
            ])
            .args(args)
            .current_dir(&self.top)
            .env("GIT_CONFIG_GLOBAL", "/dev/null")
            .status()
            .expect("this test needs git");
        assert!(done.success(), "{args:?}");
    }

    fn put(&self, path: &str, text: &str) {
        std::fs::write(self.top.join(path), text).expect("written");
    }

    fn commit(&self, tag: &str) {
        self.git(&["add", "."]);
        self.git(&["commit", "--quiet", "--message", tag]);
        self.git(&["tag", tag]);
    }

    fn uri(&self, path: &str) -> String {
        format!("file://{}", self.top.join(path).display())
    }
}

fn session(root: &Path, options: Value) -> Client {
    let words = include_str!("clients/vscode.json");
    let mut params: Value = serde_json::from_str(words).expect("JSON");
    let uri = format!("file://{}", root.display());
    params["rootUri"] = json!(uri);
    params["workspaceFolders"] = json!([{ "uri": uri, "name": "x" }]);
    if !options.is_null() {
        params["initializationOptions"] = options;
    }
    Client::with(&params)
}

fn compared(c: &mut Client, uri: &str, revision: &str) -> String {
    let argument = json!({ "uri": uri, "revision": revision });
    let p = json!({ "command": "downlead.compare", "arguments": [argument] });
    let text = c.ask("workspace/executeCommand", p);
    text.as_str().expect("a text").to_owned()
}

/// The reason is the error of a failed request, not of an internal error.
fn refused(c: &mut Client, uri: &str, revision: &str) -> String {
    let argument = json!({ "uri": uri, "revision": revision });
    let p = json!({ "command": "downlead.compare", "arguments": [argument] });
    let id = c.begin("workspace/executeCommand", p);
    let answer = c.answer(id);
    assert_eq!(answer["error"]["code"], -32803, "{answer}");
    answer["error"]["message"]
        .as_str()
        .expect("words")
        .to_owned()
}

/// True if a row of a table holds these cells in this order.
fn has_row(text: &str, cells: &[&str]) -> bool {
    text.lines().any(|l| {
        let mut row = l.split('|').map(str::trim);
        cells.iter().all(|c| row.any(|x| x == *c))
    })
}

#[test]
fn the_text_in_the_editor_with_what_was_committed() {
    let r = Repository::new();
    // a root that is the repository, one below it, one above it
    for root in [
        r.top.clone(),
        r.top.join("isle"),
        r.top.parent().expect("a folder").to_owned(),
    ] {
        let mut c = session(&root, Value::Null);
        let uri = r.uri("isle/hill.downlead");
        c.open(&uri, HILL);
        assert!(compared(&mut c, &uri, "HEAD").contains("The texts are the same."));
        // not saved: what counts is what the editor shows
        c.change(
            &uri,
            2,
            json!([{ "text": HILL.replace("28 m", "38 m").replace("50 W", "40 W") }]),
        );
        let text = compared(&mut c, &uri, "first");
        assert!(text.contains("revision first ("), "{text}");
        // 10 lg (40/50) = -0.97 dB
        assert!(
            has_row(&text, &["transmitter", "50.0 W", "40.0 W", "-0.97 dB"]),
            "{text}"
        );
        assert!(
            has_row(&text, &["M1", "run M1 28 m of thin", "run M1 38 m of thin"]),
            "{text}"
        );
        assert!(
            text.contains("the transmitter gives 0.97 dB less, the chain loses"),
            "{text}"
        );
        // the address alone, and the last commit
        let p = json!({ "command": "downlead.compare", "arguments": [uri] });
        let plain = c.ask("workspace/executeCommand", p);
        assert!(
            plain
                .as_str()
                .is_some_and(|t| t.contains("revision HEAD (")),
            "{plain}"
        );
        assert_eq!(c.finish(), 0);
    }
}

#[test]
fn used_files_are_read_at_the_revision_too() {
    let r = Repository::new();
    // the sheet's law was wrong: half the loss, committed later
    let new = CABLE
        .replace("10 dB/100 m", "5 dB/100 m")
        .replace("25 dB", "12.5 dB");
    r.put("isle/cables.downlead", &new);
    r.commit("second");
    let mut c = session(&r.top, Value::Null);
    let uri = r.uri("isle/hill.downlead");
    c.open(&uri, HILL);
    assert!(compared(&mut c, &uri, "second").contains("The texts are the same."));
    let text = compared(&mut c, &uri, "first");
    assert!(
        has_row(&text, &["M1", "run M1 28 m of thin", "as before"]),
        "{text}"
    );
    assert!(has_row(&text, &["cable thin", "changed"]), "{text}");
    assert_eq!(c.finish(), 0);
}

#[test]
fn shown_as_a_document_that_follows_the_text() {
    let r = Repository::new();
    let mut c = session(&r.top, json!({ "downlead": { "virtualDocuments": true } }));
    let uri = r.uri("isle/hill.downlead");
    c.open(&uri, HILL);
    let argument = json!({ "uri": uri, "revision": "first", "show": true });
    let text = c.ask(
        "workspace/executeCommand",
        json!({ "command": "downlead.compare", "arguments": [argument] }),
    );
    let shown = c.wait(|m| m["method"] == "window/showDocument");
    let made = shown["params"]["uri"].clone();
    assert!(
        made.as_str()
            .is_some_and(|u| u.starts_with("downlead:/compare/")),
        "{made}"
    );
    assert_eq!(
        c.ask("downlead/virtualDocument", json!({ "uri": made })),
        text
    );
    c.change(&uri, 2, json!([{ "text": HILL.replace("28 m", "38 m") }]));
    let told = c.wait(|m| m["method"] == "downlead/virtualDocumentChanged");
    assert_eq!(told["params"]["uri"], made);
    let now = c.ask("downlead/virtualDocument", json!({ "uri": made }));
    assert!(now.as_str().is_some_and(|t| t.contains("38 m")), "{now}");
    assert_eq!(c.finish(), 0);
}

#[test]
fn why_there_is_nothing_to_compare_with() {
    let r = Repository::new();
    let mut c = session(&r.top, Value::Null);
    let uri = r.uri("isle/hill.downlead");
    c.open(&uri, HILL);
    for revision in [
        "nowhere",
        "HEAD~7",
        "first:isle",
        "--output=x",
        "",
        "first^{tree}",
    ] {
        let why = refused(&mut c, &uri, revision);
        assert!(why.contains(&format!("`{revision}`")), "{why}");
    }
    assert!(!r.top.join("isle/x").exists() && !r.top.join("x").exists());
    let late = r.uri("isle/late.downlead");
    c.open(&late, HILL);
    assert_eq!(
        refused(&mut c, &late, "HEAD"),
        "isle/late.downlead is not in revision `HEAD`."
    );
    c.open("untitled:Untitled-1", HILL);
    assert!(refused(&mut c, "untitled:Untitled-1", "HEAD").contains("in no file"));
    assert!(refused(&mut c, &r.uri("isle/other.downlead"), "HEAD").contains("not open"));
    assert_eq!(c.finish(), 0);
    // no repository at all
    let plain = tempfile::tempdir().expect("a folder");
    let top = std::fs::canonicalize(plain.path()).expect("a path");
    std::fs::write(top.join("hill.downlead"), HILL).expect("written");
    let mut c = session(&top, Value::Null);
    let uri = format!("file://{}", top.join("hill.downlead").display());
    c.open(&uri, HILL);
    assert!(refused(&mut c, &uri, "HEAD").contains("is in no git repository"));
    assert_eq!(c.finish(), 0);
}
