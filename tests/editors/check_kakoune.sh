#!/bin/bash
# Kakoune reads its file without a complaint, colours an example, and indents a block. KAK_BIN names the program if `kak` is not on the path.
set -uo pipefail
cd "$(dirname "$0")/../.."
kak="${KAK_BIN:-kak}"
command -v "$kak" > /dev/null || { echo "Kakoune: not installed, nothing checked"; exit 77; }
work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT
printf 'antenna A1 {' > "$work/a.downlead"
# the faults of a file and of hooks go to the debug buffer; braces do not balance here, so none may delimit
cat > "$work/steps" <<KAK
evaluate-commands %sh§ find "\$kak_runtime/" -name comment.kak -exec printf 'source "%s"\n' {} \; §
try %§ source "$PWD/editors/kakoune/downlead.kak" § catch %§ echo -debug FAULT %val{error} §
try %§
    edit "$work/a.downlead"
    execute-keys -with-hooks 'gjgla<ret>gain 5 dBi<ret>}<esc>'
    write "$work/out"
§ catch %§ echo -debug FAULT %val{error} §
buffer *debug*
write "$work/debug"
quit!
KAK
LC_ALL=C.UTF-8 timeout 20 "$kak" -n -ui dummy -e "source '$work/steps'" < /dev/null > "$work/said" 2>&1
[ -e "$work/debug" ] || { echo "Kakoune did not get through:"; cat "$work/said"; exit 1; }
if grep -qE 'FAULT|error' "$work/debug" || [ ! -s "$work/out" ]; then
    cat "$work/debug"
    exit 1
fi
printf 'antenna A1 {\n    gain 5 dBi\n}\n' | diff - "$work/out" || exit 1
echo "Kakoune: no complaint, a block is indented"
