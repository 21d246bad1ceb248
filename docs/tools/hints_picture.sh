#!/usr/bin/env bash
# Makes docs/images/hints.png: the demo station in VS Code, with the server's own hints.
# usage: docs/tools/hints_picture.sh [PROGRAM]
# Installs what it needs as tests/sessions/run.sh does.
set -euo pipefail
cd "$(dirname "$0")/../.."
ROOT="$PWD"
program="$(realpath "${1:-target/release/downlead}")"
folder="${SESSION_OUT:-$ROOT/target/sessions}/picture"
CODE='' VSIX='' CHROMIUM='' PYTHON=''
. tests/sessions/setup.sh
setup_vscode > /dev/null
python3 tests/sessions/story.py "$folder" "$program"
tests/sessions/vscode.sh "$folder" "$CODE" "$VSIX" "$CHROMIUM" "$ROOT/docs/tools/hints_picture.js"
cp "$folder/pictures/hints.png" docs/images/hints.png
