#!/bin/bash
# Checks of everything under editors/ that needs no server. What is not installed is skipped and said;
# with --strict a skip is a failure, with CI=true one of what can be brought here. Closes with `N passed, N failed, N skipped`.
#
# Always: python3, node. VS Code's part: `npm ci` in editors/vscode is run here when node_modules is missing.
# Brought here by tools.sh when missing: Python's tree-sitter package, the tree-sitter command (TREE_SITTER), Neovim (NVIM_BIN).
# If there: a C compiler, Emacs (EMACS_BIN), Kate's highlighter (KATE_HIGHLIGHTER), Kakoune.
set -uo pipefail
cd "$(dirname "$0")/../.."
strict=0
[ "${1:-}" = --strict ] && strict=1
passed=0 failed=0 skipped=0
log="$(mktemp)"
trap 'rm -f "$log"' EXIT

# run NAME COMMAND…: exit status 77 is a skip
run() {
    local name="$1" status
    shift
    "$@" > "$log" 2>&1
    status=$?
    if [ $status = 0 ]; then
        passed=$((passed + 1))
        echo "ok      $name: $(tail -n 1 "$log")"
    elif [ $status = 77 ] && [ $strict = 0 ] && ! { [ "${CI:-}" = true ] && [[ $name =~ ^(tree-sitter|Neovim) ]]; }; then
        skipped=$((skipped + 1))
        echo "skipped $name: $(tail -n 1 "$log")"
    else
        failed=$((failed + 1))
        echo "FAILED  $name"
        sed 's/^/        /' "$log" | tail -n 40
    fi
}

vscode_tests() { (cd editors/vscode && node --test test/); }

vscode_package() {
    (cd editors/vscode && npm run --silent package && [ -s downlead.vsix ]) || return 1
    python3 - editors/vscode/downlead.vsix <<'PY'
import json, sys, zipfile
with zipfile.ZipFile(sys.argv[1]) as z:
    names = z.namelist()
    manifest = json.loads(z.read("extension/package.json"))
for wanted in (manifest["main"], manifest["contributes"]["grammars"][0]["path"], manifest["contributes"]["languages"][0]["configuration"]):
    assert "extension/" + wanted.removeprefix("./") in names, wanted
extra = [n for n in names if "node_modules" in n or "/test/" in n or "/src/" in n]
assert not extra, extra
print(f"{len(names)} files in the package")
PY
}

tree_sitter_cli() {
    command -v "${TREE_SITTER:-tree-sitter}" > /dev/null || { echo "no tree-sitter command"; return 77; }
    editors/tree-sitter/test.sh
}

# the committed parser is what grammar.js gives
tree_sitter_fresh() {
    command -v "${TREE_SITTER:-tree-sitter}" > /dev/null || { echo "no tree-sitter command"; return 77; }
    local copy
    copy="$(mktemp -d)"
    cp -r editors/tree-sitter/grammar.js editors/tree-sitter/package.json "$copy"
    (cd "$copy" && "${TREE_SITTER:-tree-sitter}" generate --abi 14 --no-bindings) || return 1
    # parser.c differs between versions of the command, grammar.json by its first line only
    diff <(grep -v '"$schema"' editors/tree-sitter/src/grammar.json) <(grep -v '"$schema"' "$copy/src/grammar.json") > /dev/null || { echo "src/grammar.json is stale"; return 1; }
    rm -rf "$copy"
    echo "src/ is what grammar.js gives"
}

kate_xml() {
    python3 -c 'import sys, xml.dom.minidom as d; n = len(d.parse(sys.argv[1]).getElementsByTagName("item")); assert n > 100; print(n, "items")' editors/kate/downlead.xml &&
        python3 -m json.tool editors/kate/lspclient-settings.json > /dev/null
}

# settings files name the same hints and other settings of the server as package.json
same_hints() {
    python3 - <<'PY'
import json, re
declared = json.load(open("editors/vscode/package.json"))["contributes"]["configuration"]["properties"]
names = {k.removeprefix("downlead.hints.") for k in declared if ".hints." in k}
others = {k.removeprefix("downlead.") for k in declared if not re.match(r"downlead\.(hints|server|trace|diagnostics)\.", k)}
assert others
files = ["neovim/lsp/downlead.lua", "helix/languages.toml", "kakoune/kak-lsp.kak", "kate/lspclient-settings.json", "emacs/downlead-mode.el"]
for file in files:
    text = open(f"editors/{file}", encoding="utf-8").read()
    block = text[text.index("hints"):]
    missing = [n for n in names if not re.search(rf'[":]?\b{n}\b"?\s*[:=t\[]', block)]
    missing += [n for n in others if not re.search(rf'\b{n}\b"?\s*[:=]', text)]
    assert not missing, (file, missing)
print(f"{len(names) + len(others)} settings in {len(files)} files")
PY
}

emacs_compiles() {
    local emacs="${EMACS_BIN:-emacs}" out
    command -v "$emacs" > /dev/null || { echo "no Emacs"; return 77; }
    out="$(mktemp -d)"
    cp editors/emacs/downlead-mode.el "$out"
    "$emacs" -Q --batch --eval '(setq byte-compile-error-on-warn t)' -f batch-byte-compile "$out/downlead-mode.el" && echo "compiles without a warning"
    local status=$?
    rm -rf "$out"
    return $status
}

. tests/editors/tools.sh > "$log" 2>&1 || sed 's/^/tools: /' "$log" | tail -n 5
[ -d editors/vscode/node_modules ] || (cd editors/vscode && npm ci --no-audit --no-fund > /dev/null 2>&1)

run "generated files are fresh" editors/grammar/generate.py --check
run "settings agree" same_hints
run "TextMate scopes" python3 tests/editors/check_textmate.py
run "VS Code unit tests" vscode_tests
run "VS Code package" vscode_package
run "tree-sitter parser and queries" "$PYTHON" tests/editors/check_tree_sitter.py
run "tree-sitter corpus and examples" tree_sitter_cli
run "tree-sitter parser is fresh" tree_sitter_fresh
run "Neovim colours" "$PYTHON" tests/editors/check_neovim.py
run "Emacs compiles" emacs_compiles
run "Emacs colours and indentation" python3 tests/editors/check_emacs.py
run "Kate's XML" kate_xml
run "Kate colours" python3 tests/editors/check_kate.py
run "Kakoune" tests/editors/check_kakoune.sh

if [ $skipped = 0 ]; then
    echo "$passed passed, $failed failed"
else
    echo "$passed passed, $failed failed, $skipped skipped"
fi
[ $failed = 0 ]
