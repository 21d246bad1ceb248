//! Capabilities offered to real editors, and that each of them works.

mod driver;

use driver::Client;
use serde_json::{Value, json};

const PROFILES: [(&str, &str); 6] = [
    ("vscode", include_str!("clients/vscode.json")),
    ("neovim", include_str!("clients/neovim.json")),
    ("helix", include_str!("clients/helix.json")),
    ("emacs-eglot", include_str!("clients/emacs-eglot.json")),
    ("kate", include_str!("clients/kate.json")),
    ("bare", include_str!("clients/bare.json")),
];

const URI: &str = "untitled:Untitled-1";
const TEXT: &str = "\
cable thin \"a cable\" { impedance 50 ohm; velocity 0.66; loss { 100 MHz 10 dB/100 m; 500 MHz 25 dB/100 m } }
chain what-if on 145.3 MHz {
    transmitter 50 W
    run 28 m of thin
    antenna 4.5 dBi
}
";

fn profile(words: &str) -> Value {
    serde_json::from_str(words).expect("JSON")
}

#[test]
fn answers_to_initialize() {
    for (name, words) in PROFILES {
        let client = Client::with(&profile(words));
        // the legend is long and is checked where the tokens are
        let mut shown = client.offered.clone();
        shown["serverInfo"]["version"] = json!("[version]");
        if let Some(legend) = shown.pointer_mut("/capabilities/semanticTokensProvider/legend") {
            *legend = json!("[legend]");
        }
        insta::assert_snapshot!(name, serde_json::to_string_pretty(&shown).expect("JSON"));
        assert_eq!(client.finish(), 0, "{name}");
    }
}

/// Requests for everything that a capability promises.
fn promised(capability: &str) -> Vec<(&'static str, Value)> {
    let doc = json!({ "uri": URI });
    let at = json!({ "textDocument": doc, "position": { "line": 3, "character": 16 } });
    let range =
        json!({ "start": { "line": 0, "character": 0 }, "end": { "line": 6, "character": 0 } });
    let whole = json!({ "textDocument": doc });
    let with = |key: &str, value: Value| {
        let mut v = at.clone();
        v[key] = value;
        v
    };
    let ranged = |key: &str, value: Value| {
        let mut v = json!({ "textDocument": doc, "range": range });
        v[key] = value;
        v
    };
    let item =
        json!({ "name": "x", "kind": 12, "uri": URI, "range": range, "selectionRange": range });
    let options = json!({ "tabSize": 4, "insertSpaces": true });
    match capability {
        "positionEncoding" | "textDocumentSync" | "experimental" => vec![],
        "hoverProvider" => vec![("textDocument/hover", at)],
        "completionProvider" => vec![("textDocument/completion", at)],
        "signatureHelpProvider" => vec![("textDocument/signatureHelp", at)],
        "definitionProvider" => vec![("textDocument/definition", at)],
        "declarationProvider" => vec![("textDocument/declaration", at)],
        "typeDefinitionProvider" => vec![("textDocument/typeDefinition", at)],
        "implementationProvider" => vec![("textDocument/implementation", at)],
        "referencesProvider" => vec![(
            "textDocument/references",
            with("context", json!({ "includeDeclaration": true })),
        )],
        "documentHighlightProvider" => vec![("textDocument/documentHighlight", at)],
        "documentSymbolProvider" => vec![("textDocument/documentSymbol", whole)],
        "workspaceSymbolProvider" => vec![("workspace/symbol", json!({ "query": "" }))],
        "codeActionProvider" => vec![
            (
                "textDocument/codeAction",
                ranged("context", json!({ "diagnostics": [] })),
            ),
            ("codeAction/resolve", json!({ "title": "x" })),
        ],
        "codeLensProvider" => vec![("textDocument/codeLens", whole)],
        "documentFormattingProvider" => vec![(
            "textDocument/formatting",
            json!({ "textDocument": doc, "options": options }),
        )],
        "documentRangeFormattingProvider" => {
            vec![("textDocument/rangeFormatting", ranged("options", options))]
        }
        "documentOnTypeFormattingProvider" => {
            let mut v = with("ch", json!("\n"));
            v["options"] = options;
            vec![("textDocument/onTypeFormatting", v)]
        }
        "renameProvider" => vec![
            ("textDocument/rename", with("newName", json!("thinner"))),
            ("textDocument/prepareRename", at),
        ],
        "documentLinkProvider" => vec![("textDocument/documentLink", whole)],
        "foldingRangeProvider" => vec![("textDocument/foldingRange", whole)],
        "selectionRangeProvider" => {
            vec![(
                "textDocument/selectionRange",
                json!({ "textDocument": doc, "positions": [at["position"]] }),
            )]
        }
        "linkedEditingRangeProvider" => vec![("textDocument/linkedEditingRange", at)],
        "callHierarchyProvider" => vec![
            ("textDocument/prepareCallHierarchy", at),
            ("callHierarchy/incomingCalls", json!({ "item": item })),
            ("callHierarchy/outgoingCalls", json!({ "item": item })),
        ],
        "semanticTokensProvider" => vec![
            ("textDocument/semanticTokens/full", whole),
            (
                "textDocument/semanticTokens/full/delta",
                json!({ "textDocument": doc, "previousResultId": "none" }),
            ),
            (
                "textDocument/semanticTokens/range",
                json!({ "textDocument": doc, "range": range }),
            ),
        ],
        "inlayHintProvider" => vec![
            (
                "textDocument/inlayHint",
                json!({ "textDocument": doc, "range": range }),
            ),
            (
                "inlayHint/resolve",
                json!({ "position": { "line": 3, "character": 20 }, "label": "x" }),
            ),
        ],
        "colorProvider" => {
            let color = json!({ "red": 0.0, "green": 0.5, "blue": 0.7, "alpha": 1.0 });
            vec![
                ("textDocument/documentColor", whole),
                ("textDocument/colorPresentation", ranged("color", color)),
            ]
        }
        "inlineValueProvider" => vec![(
            "textDocument/inlineValue",
            ranged("context", json!({ "frameId": 0, "stoppedLocation": range })),
        )],
        "diagnosticProvider" => vec![("textDocument/diagnostic", whole)],
        "executeCommandProvider" => vec![(
            "workspace/executeCommand",
            json!({ "command": "downlead.report", "arguments": [{ "uri": URI }] }),
        )],
        "workspace" => vec![("workspace/willRenameFiles", json!({ "files": [] }))],
        other => panic!("a capability this test does not know: {other}"),
    }
}

/// Requests for everything that is announced after the start.
fn announced(method: &str) -> Vec<(&'static str, Value)> {
    let range =
        json!({ "start": { "line": 0, "character": 6 }, "end": { "line": 0, "character": 10 } });
    let data = json!({ "uri": URI, "path": "untitled:Untitled-1", "start": 6, "end": 10 });
    let item = json!({ "name": "x", "kind": 5, "uri": URI, "range": range, "selectionRange": range, "data": data });
    match method {
        // pushed, not pulled
        "workspace/didChangeWatchedFiles" | "workspace/didChangeConfiguration" => vec![],
        "workspace/textDocumentContent" => vec![(
            "workspace/textDocumentContent",
            json!({ "uri": "downlead:/code/unknown-cable.md" }),
        )],
        "textDocument/prepareTypeHierarchy" => vec![
            (
                "textDocument/prepareTypeHierarchy",
                json!({ "textDocument": { "uri": URI }, "position": range["start"] }),
            ),
            ("typeHierarchy/supertypes", json!({ "item": item })),
            ("typeHierarchy/subtypes", json!({ "item": item })),
        ],
        other => panic!("an announcement this test does not know: {other}"),
    }
}

/// Everything a client may ask, and nothing else is offered.
const ALL: [&str; 28] = [
    "hoverProvider",
    "completionProvider",
    "signatureHelpProvider",
    "definitionProvider",
    "declarationProvider",
    "typeDefinitionProvider",
    "implementationProvider",
    "referencesProvider",
    "documentHighlightProvider",
    "documentSymbolProvider",
    "workspaceSymbolProvider",
    "codeActionProvider",
    "codeLensProvider",
    "documentFormattingProvider",
    "documentRangeFormattingProvider",
    "documentOnTypeFormattingProvider",
    "renameProvider",
    "documentLinkProvider",
    "foldingRangeProvider",
    "selectionRangeProvider",
    "linkedEditingRangeProvider",
    "callHierarchyProvider",
    "semanticTokensProvider",
    "inlayHintProvider",
    "colorProvider",
    "inlineValueProvider",
    "executeCommandProvider",
    "workspace",
];

#[test]
fn what_is_offered_is_there() {
    for (name, words) in PROFILES {
        let mut client = Client::with(&profile(words));
        client.open(URI, TEXT);
        let offered = client.offered["capabilities"]
            .as_object()
            .expect("an object")
            .clone();
        for wanted in ALL {
            assert!(
                offered.contains_key(wanted),
                "{name}: {wanted} is not offered"
            );
        }
        for capability in offered.keys() {
            for (method, params) in promised(capability) {
                let id = client.begin(method, params);
                let answer = client.answer(id);
                // "cannot be renamed" is an answer; "no such method" and "failed" are none
                let code = answer["error"]["code"].as_i64();
                assert!(
                    matches!(code, None | Some(-32803)),
                    "{name}: {method}: {answer}"
                );
            }
        }
        let later: Vec<String> = client
            .inbox
            .iter()
            .filter(|m| m["method"] == "client/registerCapability")
            .flat_map(|m| m["params"]["registrations"].as_array().expect("a list"))
            .map(|r| r["method"].as_str().expect("a method").to_owned())
            .collect();
        let hierarchy = "/capabilities/textDocument/typeHierarchy/dynamicRegistration";
        assert_eq!(
            later
                .iter()
                .any(|m| m == "textDocument/prepareTypeHierarchy"),
            profile(words).pointer(hierarchy) == Some(&json!(true)),
            "{name}"
        );
        for (method, params) in later.iter().flat_map(|m| announced(m)) {
            let id = client.begin(method, params);
            let answer = client.answer(id);
            assert!(answer.get("error").is_none(), "{name}: {method}: {answer}");
            assert!(!answer["result"].is_null(), "{name}: {method}: {answer}");
        }
        for command in offered["executeCommandProvider"]["commands"]
            .as_array()
            .expect("a list")
        {
            let code = client.fails(
                "workspace/executeCommand",
                json!({ "command": command, "arguments": [] }),
            );
            assert_eq!(code, -32602, "{command} is known and wants an argument");
        }
        assert_eq!(client.finish(), 0);
    }
}

#[test]
fn what_is_not_offered_is_refused() {
    let mut client = Client::start();
    client.open(URI, TEXT);
    let offered = client.offered["capabilities"].clone();
    assert_eq!(offered["completionProvider"]["resolveProvider"], false);
    for (method, params) in [
        ("completionItem/resolve", json!({ "label": "x" })),
        (
            "codeLens/resolve",
            json!({ "range": { "start": { "line": 0, "character": 0 }, "end": { "line": 0, "character": 0 } } }),
        ),
        (
            "documentLink/resolve",
            json!({ "range": { "start": { "line": 0, "character": 0 }, "end": { "line": 0, "character": 0 } } }),
        ),
        ("textDocument/moniker", client.at(URI, 0, 0)),
        (
            "textDocument/willSaveWaitUntil",
            json!({ "textDocument": { "uri": URI }, "reason": 1 }),
        ),
        ("textDocument/prepareTypeHierarchy", client.at(URI, 0, 0)),
        ("workspace/diagnostic", json!({ "previousResultIds": [] })),
        ("downlead/nonsense", json!({})),
    ] {
        assert_eq!(client.fails(method, params), -32601, "{method}");
    }
}

#[test]
fn pull_is_offered_only_to_who_wants_it_and_then_nothing_is_pushed() {
    let mut words = profile(PROFILES[0].1);
    assert!(
        words
            .pointer("/capabilities/textDocument/diagnostic")
            .is_some()
    );
    words["initializationOptions"]["downlead"]["diagnostics"] = json!({ "pull": true });
    let mut client = Client::with(&words);
    assert!(client.offered["capabilities"]["diagnosticProvider"].is_object());
    client.open(URI, "chain x on nowhere { transmitter 5 }\n");
    let doc = json!({ "uri": URI });
    let first = client.ask("textDocument/diagnostic", json!({ "textDocument": doc }));
    assert_eq!(first["kind"], "full");
    assert!(!first["items"].as_array().expect("a list").is_empty());
    let again = client.ask(
        "textDocument/diagnostic",
        json!({ "textDocument": doc, "previousResultId": first["resultId"] }),
    );
    assert_eq!(again["kind"], "unchanged");
    client.change(URI, 2, json!([{ "text": "" }]));
    let third = client.ask(
        "textDocument/diagnostic",
        json!({ "textDocument": doc, "previousResultId": first["resultId"] }),
    );
    assert_eq!(third["items"], json!([]));
    let pushed = client.within(std::time::Duration::from_millis(300), |m| {
        m["method"] == "textDocument/publishDiagnostics"
    });
    assert_eq!(pushed, None);
}
