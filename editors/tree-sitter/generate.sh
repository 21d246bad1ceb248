#!/bin/bash
# Writes src/ from grammar.js. Needs the tree-sitter command (any from 0.22 on); TREE_SITTER names it if it is not on the path.
set -euo pipefail
cd "$(dirname "$0")"
python3 ../grammar/generate.py
# language version 14 is what every editor of the last years reads
"${TREE_SITTER:-tree-sitter}" generate --abi 14 --no-bindings
