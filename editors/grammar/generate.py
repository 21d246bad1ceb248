#!/usr/bin/env python3
"""Writes tables.json and every list of keywords and units under editors/ from the Rust sources.

    generate.py            write what changed
    generate.py --check    write nothing; fail when a file is stale
"""

import json
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent))
import lists  # noqa: E402
import queries  # noqa: E402
import sections  # noqa: E402
import textmate  # noqa: E402
from tables import TableError, dump, tables  # noqa: E402

EDITORS = Path(__file__).resolve().parents[1]


def outputs(t):
    """Path and text of every generated file."""
    def part(path, *parts):
        text = (EDITORS / path).read_text(encoding="utf-8")
        for name, content in parts:
            text = sections.replace(text, name, content, path)
        return path, text

    yield "grammar/tables.json", dump(t)
    yield "vscode/syntaxes/downlead.tmLanguage.json", textmate.text(t)
    yield part("tree-sitter/grammar.js", ("tables", sections.tree_sitter(t)))
    yield part("kakoune/downlead.kak", ("lists", lists.kakoune(t)))
    yield part("kate/downlead.xml", ("lists", lists.kate_lists(t)),
               ("quantity", lists.kate_quantity(t)), ("units", lists.kate_units(t)))
    yield part("emacs/downlead-mode.el", ("lists", lists.emacs(t)))
    yield part("neovim/syntax/downlead.vim", ("lists", lists.vim(t)))
    yield "tree-sitter/queries/highlights.scm", queries.highlights(t, queries.OWN)
    yield "neovim/queries/downlead/highlights.scm", queries.highlights(t, queries.NEOVIM)
    for editor, names in (("neovim", ("folds", "indents", "injections", "locals")), ("helix", ("injections",))):
        for name in names:
            copied = (EDITORS / f"tree-sitter/queries/{name}.scm").read_text(encoding="utf-8")
            yield f"{editor}/queries/downlead/{name}.scm", copied
    yield "helix/queries/downlead/highlights.scm", queries.highlights(t, queries.HELIX)


def parser_is_stale(t):
    """Whether the committed parser was made from other lists than today's. Seen without the tree-sitter command."""
    rules = json.loads((EDITORS / "tree-sitter/src/grammar.json").read_text(encoding="utf-8"))["rules"]

    def values(rule):
        return {m["value"] for m in rules[rule]["members"] if m["type"] == "STRING"}

    return (
        values("keyword") != {k["word"] for k in t["keywords"]}
        or values("word") != set(t["inner_words"])
        or values("unit") != {s for s in t["unit_symbols"] if "/" not in s}
        or len(rules["unit"]["members"]) != len(t["unit_symbols"])
    )


def main(args):
    if args not in ([], ["--check"]):
        print(__doc__, file=sys.stderr)
        return 2
    try:
        data = tables()
        files = list(outputs(data))
    except TableError as e:
        print(f"error: {e}", file=sys.stderr)
        return 1
    stale = []
    for path, text in files:
        file = EDITORS / path
        if not file.exists() or file.read_text(encoding="utf-8") != text:
            stale.append(path)
            if not args:
                file.parent.mkdir(parents=True, exist_ok=True)
                file.write_text(text, encoding="utf-8")
    if args:
        for path in stale:
            print(f"stale: editors/{path} (run editors/grammar/generate.py)")
        if parser_is_stale(data):
            stale.append("tree-sitter/src")
            print("stale: editors/tree-sitter/src (run editors/tree-sitter/generate.sh)")
        return 1 if stale else 0
    for path in stale:
        print(f"wrote editors/{path}")
    print(f"{len(files)} files, {len(stale)} written")
    if parser_is_stale(data):
        print("the tree-sitter parser is stale: run editors/tree-sitter/generate.sh")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
