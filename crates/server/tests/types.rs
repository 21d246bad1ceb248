//! Part families: from a part to what it is made of and back, across files that are not open.

mod driver;

use driver::Client;
use serde_json::{Value, json};

const CABLES: &str = "cable thin { impedance 50 ohm; velocity 0.66; loss typical { 100 MHz 10 dB/100 m; 500 MHz 25 dB/100 m }; accuracy 5 %; source \"sheet\" }\n";

fn chain(name: &str) -> String {
    format!(
        "use \"cables.downlead\"\nchain {name} on 145 MHz {{\n    transmitter 50 W\n    run 28 m of thin\n    jumper 1 m of rg-213\n    antenna 4.5 dBi\n}}\n"
    )
}

#[test]
fn a_cable_and_all_that_is_made_of_it() {
    let folder = tempfile::tempdir().expect("a folder");
    let root = std::fs::canonicalize(folder.path()).expect("a path");
    for (path, text) in [
        ("cables.downlead", CABLES.to_owned()),
        ("a.downlead", chain("a")),
        ("b.downlead", chain("b")),
    ] {
        std::fs::write(root.join(path), text).expect("written");
    }
    let uri = |path: &str| format!("file://{}", root.join(path).display());
    let mut params: Value =
        serde_json::from_str(include_str!("clients/vscode.json")).expect("JSON");
    params["rootUri"] = json!(uri(""));
    params["workspaceFolders"] = json!([{ "uri": uri(""), "name": "x" }]);
    let mut c = Client::with(&params);
    c.open(&uri("a.downlead"), &chain("a"));
    // from the line of an untagged part, at its keyword
    let at = c.at(&uri("a.downlead"), 3, 5);
    let part = c.ask("textDocument/prepareTypeHierarchy", at)[0].take();
    assert_eq!(part["name"], "run");
    assert_eq!(part["detail"], "run 28 m of thin");
    let above = c.ask("typeHierarchy/supertypes", json!({ "item": part }));
    assert_eq!(above.as_array().expect("a list").len(), 1);
    assert_eq!(above[0]["name"], "thin");
    assert_eq!(above[0]["uri"], uri("cables.downlead"));
    assert_eq!(
        above[0]["selectionRange"]["start"],
        json!({ "line": 0, "character": 6 })
    );
    // and down again: the parts of both files, though only one is open
    let below = c.ask("typeHierarchy/subtypes", json!({ "item": above[0] }));
    let mut files: Vec<&str> = below
        .as_array()
        .expect("a list")
        .iter()
        .map(|i| i["uri"].as_str().expect("an address"))
        .collect();
    files.sort_unstable();
    assert_eq!(files, [uri("a.downlead"), uri("b.downlead")]);
    let none = c.ask("typeHierarchy/supertypes", json!({ "item": above[0] }));
    assert_eq!(none, json!([]));
    // into the library and back
    let at = c.at(&uri("a.downlead"), 4, 20);
    let cable = c.ask("textDocument/prepareTypeHierarchy", at)[0].take();
    assert_eq!(cable["name"], "rg-213");
    let below = c.ask("typeHierarchy/subtypes", json!({ "item": cable }));
    assert_eq!(below.as_array().expect("a list").len(), 2, "{below}");
    // nothing is made of a figure
    let at = c.at(&uri("a.downlead"), 0, 1);
    assert_eq!(c.ask("textDocument/prepareTypeHierarchy", at), Value::Null);
    assert_eq!(c.finish(), 0);
}
