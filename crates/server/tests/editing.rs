//! After any edits the server knows what a fresh one would: the text, the diagnostics, the hints.

mod driver;

use downlead_server::Faults;
use driver::Client;
use serde_json::{Value, json};

/// The numbers of "Numerical Recipes"' quick generator: the same edits on every machine.
struct Dice(u64);

impl Dice {
    fn roll(&mut self, n: usize) -> usize {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        ((self.0 >> 33) as usize) % n.max(1)
    }
}

/// Lines that mean something, lines that are broken, and letters of every width.
const PIECES: [&str; 36] = [
    "\n",
    "\r\n",
    " ",
    "    ",
    "}",
    "{",
    "}\n",
    "°",
    "µ",
    "Ω",
    "𝄞",
    "é",
    "±",
    "",
    "",
    "",
    "    run 28 m of half-inch-foam\n",
    "    connector 2 of n-pair\r\n",
    "    antenna 4.5 dBi\n",
    "    transmitter 50 W ± 5 %\r\n",
    "chain b on 434.5 MHz {\n",
    "let mast = 30 m\n",
    "band x { transmit 145 MHz; receive 144.4 MHz }\n",
    "// café µ 𝄞\r\n",
    "    limit 30 W erp, \"a rule\"\n",
    "    read 16 W forward, 2026-07-04\n",
    "dB",
    " 3.5 dB",
    " m",
    "\"",
    "1",
    "99999999",
    "    pad 3 dB\n",
    " on x",
    "cable thin { impedance 50 ohm; velocity 0.66; loss { 100 MHz 10 dB/100 m } }\n",
    "use \"other.downlead\"\n",
];

const START: &str = "\
// µ 𝄞
band x { transmit 145 MHz; receive 144.4 MHz }\r
let mast = 30 m ± 0.5 m
cable thin \"a thin cable\" { impedance 50 ohm; velocity 0.66; loss { 100 MHz 10 dB/100 m; 500 MHz 25 dB/100 m }; source \"°Ω\" }\r
chain a on x {
    transmitter 50 W
    run mast of half-inch-foam\r
    connector 4 of n-pair
    jumper 2 m of thin
    antenna 4.5 dBi
    limit 30 W erp, \"a rule\"
}
";

const URI: &str = "untitled:text";

/// Byte offset to line and column; lines end at LF, CR LF and CR.
fn place(text: &str, offset: usize, encoding: &str) -> Value {
    let bytes = text.as_bytes();
    let (mut line, mut start, mut i) = (0, 0, 0);
    while i < offset {
        match bytes[i] {
            b'\r' if bytes.get(i + 1) == Some(&b'\n') => {
                if i + 2 > offset {
                    break;
                }
                i += 2;
                line += 1;
                start = i;
            }
            b'\r' | b'\n' => {
                i += 1;
                line += 1;
                start = i;
            }
            _ => i += 1,
        }
    }
    let column = &text[start..offset];
    let character = match encoding {
        "utf-8" => column.len(),
        "utf-16" => column.encode_utf16().count(),
        "utf-32" => column.chars().count(),
        other => panic!("{other}"),
    };
    json!({ "line": line, "character": character })
}

/// A place an editor can name: at a character, not between CR and LF.
fn spot(text: &str, dice: &mut Dice) -> usize {
    loop {
        let i = dice.roll(text.len() + 1);
        let split =
            text[..].as_bytes().get(i) == Some(&b'\n') && i > 0 && text.as_bytes()[i - 1] == b'\r';
        if text.is_char_boundary(i) && !split {
            return i;
        }
    }
}

/// One change, made to `text` too.
fn change(text: &mut String, dice: &mut Dice, encoding: &str) -> Value {
    if dice.roll(150) == 0 {
        *text = START.to_owned();
        return json!({ "text": START });
    }
    let a = spot(text, dice);
    // mostly short, now and then anything
    let b = if dice.roll(12) == 0 {
        spot(text, dice)
    } else {
        let mut b = (a + dice.roll(6)).min(text.len());
        while !text.is_char_boundary(b)
            || (text.as_bytes().get(b) == Some(&b'\n') && b > 0 && text.as_bytes()[b - 1] == b'\r')
        {
            b += 1;
        }
        b
    };
    let new: String = (0..dice.roll(3))
        .map(|_| PIECES[dice.roll(PIECES.len())])
        .collect();
    let (mut from, mut to) = (place(text, a, encoding), place(text, b, encoding));
    // beyond the end is the end
    if b.max(a) == text.len() && dice.roll(4) == 0 {
        let far = json!({ "line": 1_000_000, "character": 7 });
        if b >= a { to = far } else { from = far }
    }
    // the wrong way round is the same range
    if dice.roll(5) == 0 {
        std::mem::swap(&mut from, &mut to);
    }
    text.replace_range(a.min(b)..a.max(b), &new);
    if text.len() > 6000 {
        *text = START.to_owned();
        return json!({ "text": START });
    }
    json!({ "range": { "start": from, "end": to }, "text": new })
}

/// The answers that a client gets for a text.
fn seen(c: &mut Client, uri: &str, version: i64) -> [Value; 5] {
    let doc = json!({ "textDocument": { "uri": uri } });
    let diagnostics = Value::Array(c.diagnostics(uri, version));
    let bare =
        |v: Value| serde_json::from_str::<Value>(&v.to_string().replace(uri, "URI")).expect("JSON");
    let mut hints = c.hints(uri);
    for hint in hints.as_array_mut().expect("hints") {
        if let Some(data) = hint.get_mut("data") {
            data["version"] = Value::Null;
        }
    }
    let tokens = c.ask("textDocument/semanticTokens/full", doc.clone())["data"].take();
    let symbols = c.ask("textDocument/documentSymbol", doc.clone());
    let lenses = c.ask("textDocument/codeLens", doc);
    [diagnostics, hints, tokens, symbols, lenses].map(bare)
}

/// The first elements that differ.
fn unlike(got: &Value, want: &Value) -> String {
    let none = Vec::new();
    let (a, b) = (
        got.as_array().unwrap_or(&none),
        want.as_array().unwrap_or(&none),
    );
    let i = a.iter().zip(b).take_while(|(x, y)| x == y).count();
    format!(
        "{} and {} of them; at {i}:\n{:?}\n{:?}",
        a.len(),
        b.len(),
        a.get(i),
        b.get(i)
    )
}

fn edits(count: usize, every: usize, words: &str, encoding: &str, seed: u64) {
    let mut params: Value = serde_json::from_str(words).expect("JSON");
    params["capabilities"]["general"]["positionEncodings"] = json!([encoding]);
    params["workspaceFolders"] = Value::Null;
    params["rootUri"] = Value::Null;
    params["rootPath"] = Value::Null;
    let mut c = Client::faulty(
        &params,
        Faults {
            requests: true,
            text: None,
        },
    );
    let mut fresh = Client::with(&params);
    assert_eq!(c.offered["capabilities"]["positionEncoding"], encoding);
    let mut dice = Dice(seed);
    let mut text = START.to_owned();
    c.open(URI, &text);
    let mut done = 0;
    let mut version = 1;
    while done < count {
        version += 1;
        let several = 1 + if dice.roll(4) == 0 { dice.roll(5) } else { 0 };
        let changes: Vec<Value> = (0..several)
            .map(|_| change(&mut text, &mut dice, encoding))
            .collect();
        done += several;
        c.change(URI, version, json!(changes));
        if version % 7 == 0 {
            // asked in between, answered and forgotten
            c.begin(
                "textDocument/hover",
                c.at(URI, dice.roll(14) as u32, dice.roll(20) as u32),
            );
        }
        if version % every as i64 == 0 || done >= count {
            let kept = c.ask("downlead/probe", json!({ "text": URI }));
            assert_eq!(
                kept.as_str(),
                Some(&*text),
                "the text after {done} edits (seed {seed})"
            );
            let got = seen(&mut c, URI, version);
            let uri = format!("untitled:fresh-{version}");
            fresh.open(&uri, &text);
            let want = seen(&mut fresh, &uri, 1);
            for (what, (got, want)) in ["diagnostics", "hints", "tokens", "symbols", "lenses"]
                .iter()
                .zip(got.iter().zip(&want))
            {
                assert!(
                    got == want,
                    "{what} after {done} edits (seed {seed}) of\n{text}\n{}",
                    unlike(got, want)
                );
            }
            fresh.tell(
                "textDocument/didClose",
                json!({ "textDocument": { "uri": uri } }),
            );
            c.inbox.clear();
            fresh.inbox.clear();
        }
    }
    assert_eq!(c.finish(), 0);
    assert_eq!(fresh.finish(), 0);
}

fn wanted() -> usize {
    std::env::var("DOWNLEAD_EDITS")
        .ok()
        .and_then(|n| n.parse().ok())
        .unwrap_or(2000)
}

#[test]
fn random_edits_utf8() {
    edits(
        wanted() / 2,
        10,
        include_str!("clients/neovim.json"),
        "utf-8",
        1,
    );
}

#[test]
fn random_edits_utf16() {
    edits(
        wanted() / 2,
        10,
        include_str!("clients/vscode.json"),
        "utf-16",
        2,
    );
}

#[test]
fn random_edits_utf32() {
    let words = include_str!("clients/emacs-eglot.json");
    edits(wanted() / 2, 10, words, "utf-32", 3);
}

/// The same word after the same characters, in each encoding of positions; and the one chosen when
/// several are offered.
#[test]
fn columns_are_counted_as_agreed() {
    // ° is 2 bytes and one unit; 𝄞 4 bytes, two units, one character
    let text = "// 𝄞°µ\nchain x on 145 MHz { transmitter 5 W, sheet \"𝄞°µ𝄞\"; run 3 m of half-inch-fom; load }\n";
    let (word, length) = ("half-inch-fom", 13);
    for (offered, agreed) in [
        (json!(["utf-16", "utf-32", "utf-8"]), "utf-8"),
        (json!(["utf-32", "utf-16", "utf-8"]), "utf-8"),
        (json!(["utf-16", "utf-32"]), "utf-32"),
        (json!(["utf-32", "utf-16"]), "utf-32"),
        (json!(["utf-32"]), "utf-32"),
        (json!(["utf-16"]), "utf-16"),
        (json!([]), "utf-16"),
        (Value::Null, "utf-16"),
    ] {
        let mut params = driver::capabilities();
        for key in ["workspaceFolders", "rootUri", "rootPath"] {
            params[key] = Value::Null;
        }
        params["capabilities"]["general"]["positionEncodings"] = offered;
        let mut c = Client::with(&params);
        assert_eq!(c.offered["capabilities"]["positionEncoding"], agreed);
        c.open(URI, text);
        // a finding after the characters
        let at = text.find(word).expect("it stands there");
        let found = c.diagnostics(URI, 1);
        let wanted = place(text, at, agreed);
        assert!(
            found.iter().any(|d| d["range"]["start"] == wanted),
            "{agreed}: {wanted} {found:?}"
        );
        // a position after the characters: the hover's range is the word's
        let range =
            json!({ "start": place(text, at, agreed), "end": place(text, at + length, agreed) });
        let p = json!({ "textDocument": { "uri": URI }, "position": place(text, at + 3, agreed) });
        let hover = c.ask("textDocument/hover", p);
        assert_eq!(hover["range"], range, "{agreed}");
        // an edit after the characters
        c.change(
            URI,
            2,
            json!([{ "range": range, "text": "half-inch-foam" }]),
        );
        let after = c.diagnostics(URI, 2);
        assert!(
            after.iter().all(|d| d["severity"] != 1),
            "{agreed}: {after:?}"
        );
        assert_eq!(c.finish(), 0);
    }
}

#[test]
fn a_file_that_is_used_is_read_from_the_buffer_first() {
    let folder = tempfile::tempdir().expect("a folder");
    let root = std::fs::canonicalize(folder.path()).expect("a path");
    std::fs::write(root.join("cables.downlead"), "cable thin { impedance 50 ohm; velocity 0.66; loss { 100 MHz 10 dB/100 m; 500 MHz 25 dB/100 m } }\n").expect("written");
    let uri = |name: &str| format!("file://{}", root.join(name).display());
    let mut params = driver::capabilities();
    params["workspaceFolders"] =
        json!([{ "uri": format!("file://{}", root.display()), "name": "x" }]);
    let mut c = Client::with(&params);
    let main = uri("main.downlead");
    let text = "use \"cables.downlead\"\nchain a on 145 MHz {\n    transmitter 50 W\n    run 100 m of thin\n    antenna 0 dBi\n}\n";
    c.open(&main, text);
    let loss = |c: &mut Client| {
        let hints = c.hints(&main);
        let line = hints
            .as_array()
            .expect("hints")
            .iter()
            .find(|h| h["position"]["line"] == 3)
            .expect("a hint beside the run")
            .clone();
        match &line["label"] {
            Value::String(s) => s.clone(),
            parts => parts
                .as_array()
                .expect("parts")
                .iter()
                .map(|p| p["value"].as_str().expect("text"))
                .collect(),
        }
    };
    let disk = loss(&mut c);
    // the buffer comes before the disk
    let cables = uri("cables.downlead");
    c.open(&cables, "cable thin { impedance 50 ohm; velocity 0.66; loss { 100 MHz 5 dB/100 m; 500 MHz 12 dB/100 m } }\n");
    let buffer = loss(&mut c);
    assert_ne!(disk, buffer);
    // an edit of it takes effect at once where it is used, and the client is asked to refresh
    let ten =
        json!({ "start": { "line": 0, "character": 62 }, "end": { "line": 0, "character": 63 } });
    c.change(&cables, 2, json!([{ "range": ten, "text": "7" }]));
    let edited = loss(&mut c);
    assert!(
        edited != buffer && edited != disk,
        "{disk} {buffer} {edited}"
    );
    c.tell(
        "textDocument/didClose",
        json!({ "textDocument": { "uri": cables } }),
    );
    assert_eq!(loss(&mut c), disk);
    // changed on the disk: read when the client notifies
    std::fs::write(root.join("cables.downlead"), "cable thin { impedance 50 ohm; velocity 0.66; loss { 100 MHz 1 dB/100 m; 500 MHz 3 dB/100 m } }\n").expect("written");
    c.tell(
        "workspace/didChangeWatchedFiles",
        json!({ "changes": [{ "uri": cables, "type": 2 }] }),
    );
    assert_ne!(loss(&mut c), disk);
    assert_eq!(c.finish(), 0);
}
