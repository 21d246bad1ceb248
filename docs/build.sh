#!/usr/bin/env bash
# Makes the documentation one static site: target/site/index.html. It brings mdbook when it is not
# there. The pages load nothing from a network.
set -euo pipefail
cd "$(dirname "$0")/.."
tools=target/docs-tools
book="$tools/bin/mdbook"
if [ ! -x "$book" ]; then
    cargo install mdbook --version 0.5.4 --locked --no-default-features --features search --root "$tools"
fi
"$book" build docs
echo "target/site/index.html"
