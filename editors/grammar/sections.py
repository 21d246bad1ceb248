"""Generated parts of files that are otherwise written by hand.

A part lies between a line holding `BEGIN generated: NAME` and one holding `END generated: NAME`;
the two lines themselves belong to the hand-written file, in its own comment syntax.
"""

import json
import re

from tables import longest_first


def replace(text, name, content, path):
    """The text with the content of one part replaced."""
    begin, end = f"BEGIN generated: {name}", f"END generated: {name}"
    lines = text.split("\n")
    at = [i for i, line in enumerate(lines) if line.rstrip(" ->*/").endswith(begin)]
    to = [i for i, line in enumerate(lines) if line.rstrip(" ->*/").endswith(end)]
    if len(at) != 1 or len(to) != 1 or to[0] < at[0]:
        raise SystemExit(f"{path}: needs one `{begin}` and one `{end}` after it")
    return "\n".join(lines[: at[0] + 1] + content.rstrip("\n").split("\n") + lines[to[0] :])


def wrap(items, indent, width=110, end=""):
    """Items with blanks between them, in lines; an item is never broken."""
    lines = [indent.rstrip("\n")]
    fresh = True
    for item in items:
        if not fresh and len(lines[-1]) + 1 + len(item) > width:
            lines.append(indent)
            fresh = True
        lines[-1] += item if fresh else " " + item
        fresh = False
    return "\n".join(lines) + end


def quoted(words):
    """Words as literals that C-like languages, Lisp and tree-sitter queries share."""
    return [json.dumps(w, ensure_ascii=False) for w in words]


def tree_sitter(t):
    """The lists of grammar.js."""
    def array(name, items):
        return f"const {name} = [\n" + wrap([i + "," for i in items], "  ") + "\n];"

    units = longest_first(t["unit_symbols"])
    # only these can be one token with their number: the others are distinguished from names by their sign
    glued = [s for s in units if re.match(r"[A-Za-z]", s)]
    return "\n\n".join([
        array("KEYWORDS", quoted(k["word"] for k in t["keywords"])),
        array("WORDS", quoted(t["only_words"])),
        array("INNER_WORDS", quoted(t["inner_words"])),
        array("UNITS", quoted(units)),
        array("GLUED_UNITS", quoted(glued)),
    ])
