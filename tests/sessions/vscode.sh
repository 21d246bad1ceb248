#!/usr/bin/env bash
# The session in VS Code: its server part with the packaged extension, its page in a headless browser.
# usage: vscode.sh FOLDER CODE_SERVER VSIX CHROMIUM [DRIVER]
set -uo pipefail
here="$(cd "$(dirname "$0")" && pwd)"
folder="$(realpath "$1")" code="$2" vsix="$3" chromium="$4" driver="${5:-$here/vscode.js}"
modules="$(dirname "$(dirname "$code")")"
export HOME="$folder/home" PATH="$folder/bin:$PATH"
unset XDG_CONFIG_HOME XDG_DATA_HOME VSCODE_IPC_HOOK_CLI
port="$(python3 -c 'import socket; s = socket.socket(); s.bind(("127.0.0.1", 0)); print(s.getsockname()[1])')"
places=(--user-data-dir "$folder/user" --extensions-dir "$folder/extensions")

mkdir -p "$folder/user/User" "$folder/user/Machine"
# The program is named by its path: the server part reads PATH anew from a login shell. It is a setting of the machine, and for a page
# the machine is the server's; among the person's own settings it holds only until the page has learnt that.
echo "{ \"downlead.server.path\": \"$folder/bin/downlead\" }" > "$folder/user/Machine/settings.json"
cat > "$folder/user/User/settings.json" << END
{
  "workbench.startupEditor": "none", "security.workspace.trust.enabled": false, "telemetry.telemetryLevel": "off",
  "editor.minimap.enabled": false, "editor.fontFamily": "DejaVu Sans Mono", "files.autoSave": "off", "workbench.tips.enabled": false,
  "workbench.colorTheme": "Default Light Modern", "chat.commandCenter.enabled": false, "editor.accessibilitySupport": "off"
}
END
if "$code" "${places[@]}" --install-extension "$vsix" > "$folder/install.txt" 2>&1; then echo "ok   the .vsix installs"; else
    echo "FAIL the .vsix installs"
    tail -n 5 "$folder/install.txt"
    exit 1
fi
"$code" --bind-addr "127.0.0.1:$port" --auth none --disable-telemetry --disable-update-check --disable-workspace-trust "${places[@]}" \
    > "$folder/server.txt" 2>&1 &
server=$!
trap 'kill "$server" 2> /dev/null; wait "$server" 2> /dev/null' EXIT
for _ in $(seq 150); do
    python3 -c "import urllib.request as u; u.urlopen('http://127.0.0.1:$port/healthz', timeout=1)" 2> /dev/null && break
    sleep 0.2
done
NODE_PATH="$modules" node "$driver" "$folder" "$port" "$chromium"
status=$?
# the server of the language ends with its editor
ended() { python3 -c 'import sys; sys.path.insert(0, sys.argv[1]); import story; sys.exit(not story.Story(sys.argv[2]).ended())' "$here" "$folder"; }
kill "$server" && wait "$server" 2> /dev/null
for _ in $(seq 50); do
    ended && break
    sleep 0.2
done
if ended; then echo "ok   the server ends with the editor"; else
    echo "FAIL the server ends with the editor"
    status=1
fi
exit $status
