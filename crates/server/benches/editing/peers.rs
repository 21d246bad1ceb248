//! The languages measured: a text of a given length, a place to edit, what an editor asks.

use std::path::{Path, PathBuf};

use downlead_testkit::{RUN_LINE, large_file};

/// A language with its server.
pub(crate) struct Language {
    pub(crate) name: &'static str,
    pub(crate) ours: bool,
    /// Program and arguments.
    program: (&'static str, &'static [&'static str]),
    pub(crate) id: &'static str,
    pub(crate) file: &'static str,
    /// Method whose answer is shown next to the text: hints, or where there are none, symbols.
    pub(crate) beside: &'static str,
    /// True if that request takes a range.
    pub(crate) ranges: bool,
    /// True if diagnostics are pulled rather than pushed.
    pub(crate) pull: bool,
    pub(crate) text: fn(usize) -> String,
    /// Lines to edit.
    pub(crate) places: fn(&str) -> Vec<usize>,
    /// The column of the digit that is replaced.
    pub(crate) column: usize,
}

const HINTS: &str = "textDocument/inlayHint";
const SYMBOLS: &str = "textDocument/documentSymbol";

pub(crate) fn languages() -> Vec<Language> {
    vec![
        Language {
            name: "downlead (hints)",
            ours: true,
            program: ("downlead", &["lsp"]),
            id: "downlead",
            file: "main.downlead",
            beside: HINTS,
            ranges: true,
            pull: false,
            text: large_file,
            places: |t| beginning(t, RUN_LINE.trim_end_matches("46.5 m")),
            column: "    run M1 ".len(),
        },
        Language {
            name: "Python, `ty` (hints)",
            ours: false,
            program: ("ty", &["server"]),
            id: "python",
            file: "main.py",
            beside: HINTS,
            ranges: true,
            pull: true,
            text: python,
            places: |t| beginning(t, "    loss = "),
            column: "    loss = ".len(),
        },
        Language {
            name: "Python, `ruff` (diagnostics only)",
            ours: false,
            program: ("ruff", &["server"]),
            id: "python",
            file: "main.py",
            beside: "",
            ranges: false,
            pull: true,
            text: python,
            places: |t| beginning(t, "    loss = "),
            column: "    loss = ".len(),
        },
        Language {
            name: "TOML, `tombi` (symbols)",
            ours: false,
            program: ("tombi", &["lsp", "--offline"]),
            id: "toml",
            file: "main.toml",
            beside: SYMBOLS,
            ranges: false,
            pull: true,
            text: toml,
            places: |t| beginning(t, "loss = "),
            column: "loss = ".len(),
        },
        Language {
            name: "JSON, `vscode-json-language-server` (symbols)",
            ours: false,
            program: ("vscode-json-language-server", &["--stdio"]),
            id: "json",
            file: "main.json",
            beside: SYMBOLS,
            ranges: false,
            pull: true,
            text: json,
            places: |t| beginning(t, "    \"loss\": "),
            column: "    \"loss\": ".len(),
        },
        Language {
            name: "YAML, `yaml-language-server` (symbols)",
            ours: false,
            program: ("yaml-language-server", &["--stdio"]),
            id: "yaml",
            file: "main.yaml",
            beside: SYMBOLS,
            ranges: false,
            pull: false,
            text: yaml,
            places: |t| beginning(t, "  loss: "),
            column: "  loss: ".len(),
        },
    ]
}

impl Language {
    /// Program and arguments, if the program is found.
    pub(crate) fn command(&self) -> Option<Vec<String>> {
        let (name, arguments) = self.program;
        let mut places: Vec<PathBuf> = Vec::new();
        if self.ours {
            places.extend(std::env::var_os("DOWNLEAD").map(PathBuf::from));
            let beside = std::env::current_exe().ok()?;
            places.extend(beside.ancestors().nth(2).map(|p| p.join(name)));
        } else {
            let project = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../target/peers");
            let given = std::env::var_os("DOWNLEAD_PEERS").map(PathBuf::from);
            for root in given.into_iter().chain([project]) {
                places.push(root.join("py/bin").join(name));
                places.push(root.join("js/node_modules/.bin").join(name));
            }
            let path = std::env::var_os("PATH").unwrap_or_default();
            places.extend(std::env::split_paths(&path).map(|p| p.join(name)));
        }
        let found = places.into_iter().find(|p| p.is_file())?;
        let mut command = vec![found.to_str()?.to_owned()];
        command.extend(arguments.iter().map(|a| (*a).to_owned()));
        Some(command)
    }
}

fn beginning(text: &str, with: &str) -> Vec<usize> {
    text.lines()
        .enumerate()
        .filter(|(_, l)| l.starts_with(with))
        .map(|(i, _)| i)
        .collect()
}

/// Pieces until there are enough lines.
fn filled(lines: usize, mut out: String, piece: impl Fn(usize) -> String) -> String {
    let mut have = out.lines().count();
    for n in 1.. {
        if have >= lines {
            break;
        }
        let p = piece(n);
        have += p.lines().count();
        out.push_str(&p);
    }
    out
}

fn python(lines: usize) -> String {
    filled(lines, "import math\n\n".to_owned(), |n| {
        format!(
            "def chain_{n}(power: float):\n    loss = {}.25\n    cable = loss * 46.5 / 100\n    mast = {{\"height\": {n}, \"name\": \"hill {n}\"}}\n    after = power * math.pow(10, -cable / 10)\n    label = \"hill {n}\".upper()\n    return after, label, mast\n\n\nresult_{n} = chain_{n}(32.0)\n\n",
            n % 9 + 1
        )
    })
}

fn toml(lines: usize) -> String {
    filled(lines, "title = \"hills\"\n\n".to_owned(), |n| {
        format!(
            "[station.hill-{n}]\nloss = {}.25\nname = \"hill {n}\"\nbands = [\"2m\", \"70cm\"]\nmast = {{ height = {n}, temperature = -10 }}\nread = 2026-07-04\npower = 32.0\nkeyed = true\n\n",
            n % 9 + 1
        )
    })
}

fn json(lines: usize) -> String {
    let body = filled(lines, "{\n".to_owned(), |n| {
        format!(
            "  \"hill-{n}\": {{\n    \"loss\": {}.25,\n    \"name\": \"hill {n}\",\n    \"bands\": [\"2m\", \"70cm\"],\n    \"mast\": {{ \"height\": {n}, \"temperature\": -10 }},\n    \"power\": 32.0,\n    \"keyed\": true\n  }},\n",
            n % 9 + 1
        )
    });
    body + "  \"end\": null\n}\n"
}

fn yaml(lines: usize) -> String {
    filled(lines, "title: hills\n".to_owned(), |n| {
        format!(
            "hill-{n}:\n  loss: {}.25\n  name: hill {n}\n  bands: [2m, 70cm]\n  mast:\n    height: {n}\n    temperature: -10\n  power: 32.0\n  keyed: true\n",
            n % 9 + 1
        )
    })
}
