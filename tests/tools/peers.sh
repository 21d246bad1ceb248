#!/usr/bin/env bash
# Language servers of other languages, for `cargo bench -p downlead-server --bench editing` to run
# beside ours: into target/peers, or the folder given. Needs python3 with venv, and npm.
set -euo pipefail
cd "$(dirname "$0")/../.."
to="${1:-target/peers}"
mkdir -p "$to"
if command -v python3 >/dev/null; then
    [ -x "$to/py/bin/python" ] || python3 -m venv "$to/py"
    "$to/py/bin/python" -m pip install --quiet --disable-pip-version-check tombi ty ruff
else
    echo "no python3 here: tombi, ty and ruff are left out"
fi
if command -v npm >/dev/null; then
    npm install --silent --prefix "$to/js" vscode-langservers-extracted yaml-language-server
else
    echo "no npm here: the servers of JSON and YAML are left out"
fi
echo "in $to"
