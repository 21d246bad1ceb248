#!/bin/bash
# Compiles the committed parser: build.sh [OUT], by default downlead.so beside this file. Needs only a C compiler.
set -euo pipefail
here="$(cd "$(dirname "$0")" && pwd)"
out="${1:-$here/downlead.so}"
mkdir -p "$(dirname "$out")"
"${CC:-cc}" -O2 -shared -fPIC -I "$here/src" "$here/src/parser.c" -o "$out"
echo "$out"
