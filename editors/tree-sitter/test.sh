#!/bin/bash
# Corpus tests, then every example and the library: no ERROR node. Needs the tree-sitter command (see generate.sh).
set -euo pipefail
cd "$(dirname "$0")"
ts="${TREE_SITTER:-tree-sitter}"
"$ts" test
mapfile -t files < <(find ../../examples ../../crates/catalogue/library -name '*.downlead' | sort)
"$ts" parse --quiet "${files[@]}" 2>/dev/null || { echo "an example does not parse" >&2; exit 1; }
echo "${#files[@]} files parse without error"
