#!/usr/bin/env bash
# Sessions in real editors: the demo station is opened, its hints seen, a line broken, the message read, the quick fix taken, a tag
# renamed, the file formatted. Every message between editor and server is checked against the protocol.
#
# usage: tests/sessions/run.sh [neovim|emacs|helix|vscode]…
#
# DOWNLEAD: the program (else target/release/downlead, then target/debug/downlead). SESSION_TOOLS: where editors are kept.
# SESSION_OUT: where logs and pictures go (else target/sessions). What an editor needs is installed here (apt, pip, npm); one that
# cannot be had is a skip, with CI=true a failure for Neovim, VS Code, and Emacs and Helix when both are missing.
# SESSION_TRIES: how often an editor's session may be tried (else 3).
# Closes with `N passed, N failed`.
set -uo pipefail
cd "$(dirname "$0")/../.."
ROOT="$PWD" HERE="$PWD/tests/sessions"
OUT="${SESSION_OUT:-$ROOT/target/sessions}"
TRIES="${SESSION_TRIES:-3}"
passed=0 failed=0 terminals=0 again=
NEOVIM= EMACS= HELIX= CODE= VSIX= CHROMIUM= PYTHON=
export PYTHONDONTWRITEBYTECODE=1

if [ -z "${DOWNLEAD:-}" ]; then
    for program in target/release/downlead target/debug/downlead; do [ -x "$program" ] && DOWNLEAD="$program" && break; done
fi
[ -x "${DOWNLEAD:-}" ] || { echo "no program: build it, or say where it is with DOWNLEAD"; exit 2; }
DOWNLEAD="$(realpath "$DOWNLEAD")"
mkdir -p "$OUT"
. "$HERE/setup.sh"

# take FILE: adds the checks said in it
take() {
    passed=$((passed + $(grep -c '^ok ' "$1")))
    failed=$((failed + $(grep -c '^FAIL ' "$1")))
}

# once NAME COMMAND…: plays the session; what was counted is in p and f
once() {
    local name="$1" status logged
    shift
    python3 "$HERE/story.py" "$OUT/$name" "$DOWNLEAD" || exit 2
    timeout 420 "$@" 2>&1 | tee "$OUT/$name.txt"
    status=${PIPESTATUS[0]}
    # a driver that broke off has failed even if it said nothing
    if [ "$status" != 0 ] && ! grep -q '^FAIL ' "$OUT/$name.txt"; then echo "FAIL $name: the driver ended with $status" | tee -a "$OUT/$name.txt"; fi
    "$PYTHON" "$HERE/validate.py" "$OUT/$name/protocol.jsonl" > "$OUT/$name.protocol.txt" 2>&1
    cat "$OUT/$name.protocol.txt"
    p=$(grep -c '^ok ' "$OUT/$name.txt") f=$(grep -c '^FAIL ' "$OUT/$name.txt")
    read -r logged _ status _ < <(tail -n 1 "$OUT/$name.protocol.txt")
    case "$logged$status" in
    '' | *[!0-9]*) echo "FAIL $name: no verdict on the protocol" && f=$((f + 1)) ;;
    *) p=$((p + logged)) f=$((f + status)) ;;
    esac
}

# session NAME COMMAND…: an editor driven from outside now and then loses a key or a click on a busy machine. What fails is tried
# again, and said; what fails each time has failed.
session() {
    local try p f
    for try in $(seq "$TRIES"); do
        echo "== $1$([ "$try" = 1 ] || echo ", try $try of $TRIES")"
        once "$@"
        [ "$f" != 0 ] || break
        rm -rf "$OUT/$1.failed-$try"
        mkdir "$OUT/$1.failed-$try" && cp -r "$OUT/$1/pictures" "$OUT/$1/protocol.jsonl" "$OUT/$1.txt" "$OUT/$1.failed-$try/"
    done
    if [ "$try" != 1 ] && [ "$f" = 0 ]; then again="$again $1"; fi
    passed=$((passed + p)) failed=$((failed + f))
}

# missing NAME REQUIRED
missing() {
    if [ "${CI:-}" = true ] && [ "$2" = required ]; then
        echo "FAIL $1 cannot be had" && failed=$((failed + 1))
    else
        echo "skipped: $1 cannot be had"
    fi
    tail -n 5 "$OUT/setup.txt" | sed 's/^/     /'
}

wanted() { [ -z "$selection" ] || [[ " $selection " = *" $1 "* ]]; }
selection="$*"
setup_python > "$OUT/setup.txt" 2>&1 || { cat "$OUT/setup.txt"; echo "no Python environment"; exit 2; }

echo "== the validator"
"$PYTHON" "$HERE/test_validate.py" | tee "$OUT/validator.txt"
take "$OUT/validator.txt"

if wanted neovim; then
    if setup_neovim > "$OUT/setup.txt" 2>&1 && [ -n "$NEOVIM" ]; then session neovim python3 "$HERE/neovim.py" "$OUT/neovim" "$NEOVIM"; else missing Neovim required; fi
fi
if wanted emacs; then
    if setup_emacs > "$OUT/setup.txt" 2>&1 && [ -n "$EMACS" ]; then
        terminals=$((terminals + 1))
        session emacs python3 "$HERE/emacs.py" "$OUT/emacs" "$EMACS"
    else missing Emacs optional; fi
fi
if wanted helix; then
    if setup_helix > "$OUT/setup.txt" 2>&1 && [ -n "$HELIX" ]; then
        terminals=$((terminals + 1))
        session helix python3 "$HERE/helix.py" "$OUT/helix" "$HELIX"
    else missing Helix optional; fi
fi
if { wanted emacs || wanted helix; } && [ "$terminals" = 0 ]; then missing "Emacs or Helix" required; fi
if wanted vscode; then
    if setup_vscode > "$OUT/setup.txt" 2>&1 && [ -n "$VSIX" ]; then
        session vscode "$HERE/vscode.sh" "$OUT/vscode" "$CODE" "$VSIX" "$CHROMIUM"
    else missing "VS Code" required; fi
fi

[ -z "$again" ] || echo "passed only when tried again:$again"
echo "$passed passed, $failed failed"
[ "$failed" = 0 ]
