"""Highlight queries. One list of patterns, from the general to the special; each editor's capture names.

Where two patterns take the same node, the last one wins in Neovim and the first one in Helix and in
tree-sitter's own highlighter, so the list is written forwards for the one and backwards for the others.
"""

import re

from sections import quoted, wrap

# our class: (tree-sitter's own, Neovim, Helix)
CAPTURES = {
    "name": ("variable", "variable", "variable"),
    "word": ("keyword.operator", "keyword.operator", "keyword.operator"),
    "property": ("property", "property", "variable.other.member"),
    "part": ("type.builtin", "type.builtin", "type.builtin"),
    "statement": ("keyword", "keyword", "keyword"),
    "definition": ("keyword", "keyword.type", "keyword.storage.type"),
    "defined": ("type", "type", "type"),
    "tag": ("constant", "constant", "constant"),
    "band": ("label", "label", "label"),
    "number": ("number", "number", "constant.numeric"),
    "unit": ("constant.builtin", "constant.builtin", "constant.builtin"),
    "string": ("string", "string", "string"),
    "comment": ("comment", "comment", "comment.line"),
    "operator": ("operator", "operator", "operator"),
    "bracket": ("punctuation.bracket", "punctuation.bracket", "punctuation.bracket"),
    "delimiter": ("punctuation.delimiter", "punctuation.delimiter", "punctuation.delimiter"),
}
OWN, NEOVIM, HELIX = range(3)


def patterns(t):
    """(comment, pattern) pairs; `@@class` stands for the class's capture."""
    def words(group, *more):
        listed = quoted(sorted([*t["groups"][group], *more]))
        return "[\n" + wrap(listed, "    ", 100) + "\n  ]"

    return [
        ("names, words, values", "(name) @@name\n(word) @@word\n(string) @@string\n(comment) @@comment"),
        ("", "(number) @@number\n(date) @@number\n(dms) @@number\n(unit) @@unit"),
        ("a number glued to its unit", "(quantity) @@number"),
        ("", '["{" "}" "(" ")"] @@bracket\n["," ";"] @@delimiter\n'
             '["=" "+" "-" "−" "–" "*" "/" "^" "±" "+/-"] @@operator\n'
             '(range "to" @@word)\n(coverage "k" @@word)\n(quantity "per" @@word)'),
        ("lines inside a block", "(keyword) @@property"),
        ("parts of a station", f"(keyword {words('part')} @@part)"),
        ("statements of a chain", f"(keyword {words('chain')} @@statement)"),
        ("definitions", f"(keyword {words('definition')} @@definition)"),
        ("a tag in a chain", "(statement . (name) @@tag)"),
        ("the tag of a part", f"(statement\n  . (keyword {words('part')})\n  . (name) @@tag)"),
        ("what is defined", f"(statement\n  . (keyword {words('definition', 'place')})\n  . [(name) (word)] @@defined)"),
        ("bands; their names may look like lengths",
         '(statement . (keyword "band") . (quantity) @@defined)\n'
         '((word) @@word . (quantity) @@band (#eq? @@word "on") (#match? @@band "^[0-9.]+[a-z]+$"))\n'
         '((word) @@word . (name) @@band (#eq? @@word "on"))\n'
         '(statement . (keyword "chain") "," . (quantity) @@band (#match? @@band "^[0-9.]+[a-z]+$"))'),
        ("what a part is an example of", '((word) @@word . (name) @@defined (#eq? @@word "of"))'),
    ]


def highlights(t, editor):
    """A whole highlights.scm."""
    listed = patterns(t)
    if editor != NEOVIM:
        listed = [(c, p) for c, p in reversed(listed)]
    out = ["; Written by editors/grammar/generate.py. Change queries.py there, not this file."]
    for comment, pattern in listed:
        for name, captures in CAPTURES.items():
            pattern = replace_class(pattern, name, captures[editor])
        out.append((f"; {comment}\n" if comment else "") + pattern)
    return "\n\n".join(out) + "\n"


def replace_class(pattern, name, capture):
    return re.sub(rf"@@{name}\b", f"@{capture}", pattern)
