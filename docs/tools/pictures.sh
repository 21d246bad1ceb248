#!/usr/bin/env bash
# Makes the README's pictures from real output. usage: docs/tools/pictures.sh [PROGRAM]
set -euo pipefail
cd "$(dirname "$0")/../.."
program="${1:-target/release/downlead}"
shot() { # NAME LINES ARGS…
    local name="$1" lines="$2"
    shift 2
    # a pseudo-terminal, since the program colours only on one
    { script -qec "stty cols 132; TERM=xterm-256color $program $*" /dev/null || true; } | tr -d "\r" | sed -n "1,${lines}p" |
        python3 docs/tools/ansi_to_svg.py "downlead $*" >"docs/images/$name.svg"
}
shot report 34 report examples/pellgarrow/rev4.downlead
shot check 40 check examples/pellgarrow/rev3.downlead
shot bench 34 bench examples/bench/four-cables.downlead
shot bench-card 24 card examples/pellgarrow/rev4.downlead
# the plots are checked by the tests of the program; UPDATE=1 writes them anew
UPDATE=1 cargo test -q -p downlead --test cli the_pictures_of_the_documents
