//! Links in the server's answers: addresses that every client can follow.

mod driver;

use driver::Client;
use serde_json::{Value, json};

const NEOVIM: &str = include_str!("clients/neovim.json");
const BARE: &str = include_str!("clients/bare.json");

/// Links of hovers and explanations: addresses every client can follow, also where names are odd.
#[test]
fn links_lead_to_files() {
    let folder = tempfile::tempdir().expect("a folder");
    let root = std::fs::canonicalize(folder.path()).expect("a path");
    let name = "my cables (old) #2.downlead";
    let cable = "cable thin { impedance 50 ohm; velocity 0.66; loss typical { 100 MHz 10 dB/100 m; 500 MHz 25 dB/100 m }; accuracy 5 %; source \"sheet\" }\n";
    std::fs::write(root.join(name), cable).expect("written");
    let text = format!(
        "use \"{name}\"\nchain out on 145 MHz {{\n    transmitter 50 W\n    run 28 m of thin\n    run 2 m of rg-213\n    antenna 4.5 dBi\n}}\n"
    );
    let file = root.join("hill.downlead");
    std::fs::write(&file, &text).expect("written");
    let uri = format!("file://{}", file.display());
    for (words, options, library) in [
        (NEOVIM, Value::Null, "](file:///"),
        (
            NEOVIM,
            json!({ "virtualDocuments": true }),
            "](downlead:/library/",
        ),
        (BARE, Value::Null, ""),
    ] {
        let mut params: Value = serde_json::from_str(words).expect("JSON");
        let top = format!("file://{}", root.display());
        params["rootUri"] = json!(top);
        params["workspaceFolders"] = json!([{ "uri": top, "name": "x" }]);
        params["initializationOptions"] = options;
        let mut c = Client::with(&params);
        c.open(&uri, &text);
        let said = |v: &Value| v["contents"]["value"].as_str().expect("words").to_owned();
        let own = said(&c.ask("textDocument/hover", c.at(&uri, 3, 17)));
        let built_in = said(&c.ask("textDocument/hover", c.at(&uri, 4, 16)));
        for text in [&own, &built_in] {
            assert!(!text.contains("downlead-place:"), "{text}");
        }
        if words == BARE {
            assert!(own.contains(&format!("[{name}:1]")), "{own}");
            assert!(!own.contains("]("), "{own}");
        } else {
            // RFC 3986: blanks, brackets and the hash are encoded in a path
            let at = format!("file://{}/my%20cables%20", root.display());
            assert!(
                own.contains(&at) && own.contains("%232.downlead#L1)"),
                "{own}"
            );
            assert!(built_in.contains(library), "{built_in}");
        }
        let explain =
            json!({ "command": "downlead.explain", "arguments": [{ "uri": uri, "line": 4 }] });
        let why = c.ask("workspace/executeCommand", explain);
        let why = why.as_str().expect("a text");
        assert!(
            why.contains("](file://") && !why.contains("downlead-place:"),
            "{why}"
        );
        assert_eq!(c.finish(), 0);
    }
}

/// Paths lead to files: what is used, and what was read.
#[test]
fn paths_are_links() {
    let folder = tempfile::tempdir().expect("a folder");
    let root = std::fs::canonicalize(folder.path()).expect("a path");
    std::fs::create_dir(root.join("bench")).expect("made");
    std::fs::write(root.join("cables.downlead"), "// none\n").expect("written");
    let uri = format!("file://{}", root.join("bench/four.downlead").display());
    let text = "use \"../cables.downlead\"\nsession four {\n    piece A 3 m of rg-213\n    readings from \"july 26.csv\"\n    load from \"../load.s1p\"\n}\n";
    let mut params: Value = serde_json::from_str(NEOVIM).expect("JSON");
    let top = format!("file://{}", root.display());
    params["rootUri"] = json!(top);
    params["workspaceFolders"] = json!([{ "uri": top, "name": "x" }]);
    let mut c = Client::with(&params);
    c.open(&uri, text);
    let links = c.ask(
        "textDocument/documentLink",
        json!({ "textDocument": { "uri": uri } }),
    );
    let seen: Vec<(u64, &str)> = links
        .as_array()
        .expect("links")
        .iter()
        .map(|l| {
            let line = l["range"]["start"]["line"].as_u64().expect("a line");
            let target = l["target"].as_str().expect("an address");
            (line, target.strip_prefix(&top).expect("below"))
        })
        .collect();
    let want = [
        (0, "/cables.downlead"),
        (3, "/bench/july%2026.csv"),
        (4, "/load.s1p"),
    ];
    assert_eq!(seen, want);
    assert_eq!(c.finish(), 0);
}
