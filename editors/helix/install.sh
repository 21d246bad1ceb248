#!/bin/bash
# Installs grammar and queries for Helix, and adds the language to languages.toml unless it is there already.
# Needs a C compiler. XDG_CONFIG_HOME is respected.
set -euo pipefail
here="$(cd "$(dirname "$0")" && pwd)"
config="${XDG_CONFIG_HOME:-$HOME/.config}/helix"

mkdir -p "$config/runtime/queries/downlead" "$config/runtime/grammars"
cp "$here"/queries/downlead/*.scm "$config/runtime/queries/downlead/"
"$here/../tree-sitter/build.sh" "$config/runtime/grammars/downlead.so" > /dev/null
if grep -qs '^name = "downlead"' "$config/languages.toml"; then
    echo "languages.toml knows the language already, left as it is"
else
    sed "s|TREE_SITTER_FOLDER|$(cd "$here/../tree-sitter" && pwd)|" "$here/languages.toml" >> "$config/languages.toml"
fi
echo "installed in $config"
