#!/usr/bin/env python3
"""The tree-sitter grammar over every example: no error, and the same tokens as oracle.py.

Needs a C compiler and the Python package `tree-sitter` (0.23 or later). Exit status 77: not there, nothing was checked.
"""

import ctypes
import subprocess
import sys
import tempfile
import warnings
from pathlib import Path

from oracle import ROOT, every_word, texts, tokens

try:
    import tree_sitter
except ImportError:
    print("tree-sitter: the Python package is missing, nothing checked")
    sys.exit(77)

SOURCE = ROOT / "editors/tree-sitter"
KINDS = {
    "keyword": {"keyword"},
    # `k`, `to` and `per` belong to the value they stand in
    "word": {"word", "only_word", "range", "coverage", "quantity", "name"},
    "number": {"number", "quantity"},
    "unit": {"unit", "quantity"},
    "date": {"date"},
    "angle": {"dms"},
    "string": {"string"},
    "comment": {"comment"},
    "name": {"name"},
}
# what highlights.scm may say of it; names have a colour by their place
CAPTURES = {
    "keyword": {"keyword", "type.builtin", "property"},
    "word": {"keyword.operator", "type"},
    "number": {"number", "label", "type"},
    "unit": {"constant.builtin"},
    "date": {"number"},
    "angle": {"number"},
    "string": {"string"},
    "comment": {"comment"},
    "name": {"variable", "type", "constant", "label"},
}


def language():
    """Builds the committed parser and loads it."""
    out = Path(tempfile.mkdtemp()) / "downlead.so"
    subprocess.run([SOURCE / "build.sh", out], check=True, capture_output=True)
    symbol = ctypes.CDLL(str(out)).tree_sitter_downlead
    symbol.restype = ctypes.c_void_p
    capsule = ctypes.pythonapi.PyCapsule_New
    capsule.restype = ctypes.py_object
    capsule.argtypes = (ctypes.c_void_p, ctypes.c_char_p, ctypes.c_void_p)
    return tree_sitter.Language(capsule(symbol(), b"tree_sitter.Language", None))


def nodes(root):
    """All nodes below, without recursion."""
    stack = [root]
    while stack:
        node = stack.pop()
        yield node
        stack.extend(node.children)


def faults(tree, text):
    """What the tree says other than the oracle."""
    for node in nodes(tree.root_node):
        if node.is_error or node.is_missing:
            yield f"{node.start_point.row + 1}:{node.start_point.column + 1} error node"
    lines = text.split("\n")
    for line, start, end, kind in tokens(text):
        first = len(lines[line][:start].encode())
        last = len(lines[line][:end].encode())
        node = tree.root_node.descendant_for_point_range((line, first), (line, last))
        if not node.is_named:
            node = node.parent
        # a tag that is spelt like a keyword of another place, and a name that is a word, are distinguished by place only
        if node.type not in KINDS[kind]:
            yield f"{line + 1}:{start + 1} `{lines[line][start:end]}` is a {kind}, parsed as {node.type}"


def check_queries(lang):
    """Every query of every editor names nodes that exist."""
    bad = 0
    files = [f for e in ("tree-sitter/queries", "neovim/queries/downlead", "helix/queries/downlead") for f in sorted((ROOT / "editors" / e).glob("*.scm"))]
    for file in files:
        try:
            tree_sitter.Query(lang, file.read_text(encoding="utf-8"))
        except Exception as e:  # noqa: BLE001 the package has no common error type
            print(f"{file.relative_to(ROOT)}: {e}")
            bad += 1
    return len(files), bad


def uncoloured(lang, tree, text):
    """Tokens whose innermost capture by highlights.scm is another one than their class asks for."""
    query = tree_sitter.Query(lang, (SOURCE / "queries/highlights.scm").read_text(encoding="utf-8"))
    captures = tree_sitter.QueryCursor(query).captures(tree.root_node) if hasattr(tree_sitter, "QueryCursor") else query.captures(tree.root_node)
    innermost = {}
    for name, found in captures.items():
        if name.startswith("_"):
            continue
        for node in found:
            size = node.end_byte - node.start_byte
            for at in range(node.start_byte, node.end_byte):
                best = innermost.setdefault(at, (size, set()))
                if size < best[0]:
                    innermost[at] = (size, {name})
                elif size == best[0]:
                    best[1].add(name)
    lines, starts = text.split("\n"), [0]
    for line in lines:
        starts.append(starts[-1] + len(line.encode()) + 1)
    for line, start, end, kind in tokens(text):
        at = starts[line] + len(lines[line][:start].encode())
        names = innermost.get(at, (0, {"no colour"}))[1]
        glued = kind == "unit" and lines[line][start - 1].isdigit()
        if not names & (CAPTURES[kind] | (CAPTURES["number"] if glued else set())):
            yield f"{line + 1}:{start + 1} `{lines[line][start:end]}` is a {kind}, coloured as {sorted(names)}"


def main():
    warnings.simplefilter("ignore")
    lang = language()
    parser = tree_sitter.Parser(lang)
    cases = [*texts(), ("every word of the tables", every_word())]
    bad = 0
    for name, text in cases:
        tree = parser.parse(text.encode())
        wrong = [*faults(tree, text), *uncoloured(lang, tree, text)]
        bad += bool(wrong)
        for fault in wrong[:5]:
            print(f"{name}:{fault}")
    files, broken = check_queries(lang)
    print(f"tree-sitter: {len(cases)} texts, {bad} with faults; {files} query files, {broken} with faults")
    return 1 if bad or broken else 0


if __name__ == "__main__":
    sys.exit(main())
