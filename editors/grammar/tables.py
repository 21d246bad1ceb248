"""Reads the statement words out of statements.json, and the unit table out of the Rust source.

Nothing here knows a keyword or a unit. statements.json is written from the table of statements
(crates/station/src/forms) by `UPDATE=1 cargo test -p downlead-station --test tables`.
Each reader is strict. A line of a table that it cannot read is an error, never a line left out.
"""

import json
import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
STATEMENTS_JSON = ROOT / "editors/grammar/statements.json"
UNIT_RS = ROOT / "crates/quantity/src/unit.rs"

STRING = r'"((?:[^"\\]|\\.)*)"'


class TableError(Exception):
    """A source table that does not look as expected."""


def unescape(text):
    """A Rust string literal's content as text."""
    text = re.sub(r"\\u\{([0-9a-fA-F]+)\}", lambda m: chr(int(m[1], 16)), text)
    return re.sub(r"\\(.)", lambda m: {"n": "\n", "t": "\t"}.get(m[1], m[1]), text)


def body(source, opening, path):
    """The text between `opening` and the line that is a lone `}`."""
    start = source.find("\n" + opening)
    end = source.find("\n}", start)
    if start < 0 or end < 0:
        raise TableError(f"{path.name}: no `{opening}` block")
    return source[start + 1 + len(opening) : end]


def read_keywords(path=STATEMENTS_JSON):
    """Statement keywords (word, contexts) in the order of the table, and the words inside statements."""
    try:
        data = json.loads(path.read_text(encoding="utf-8"))
        keywords = [{"word": k["word"], "contexts": k["contexts"]} for k in data["keywords"]]
        words = data["words"]
    except (ValueError, KeyError, TypeError) as e:
        raise TableError(f"{path.name}: {e}") from e
    seen = [k["word"] for k in keywords]
    if not seen or not words or len(set(seen)) != len(seen):
        raise TableError(f"{path.name}: empty, or a keyword twice")
    return keywords, sorted(set(words))


def read_units(path=UNIT_RS):
    """Units (kind, name, spellings) in the order of the table."""
    source = path.read_text(encoding="utf-8")
    table = re.sub(r"//[^\n]*", "", body(source, "units! {", path))
    kind = re.compile(r"([A-Z]\w*)\s*\{([^{}]*)\}")
    entry = re.compile(rf"{STRING}\s*:\s*((?:{STRING}\s*\|?\s*)+)=>([^;]*);")
    # braces inside `\u{…}` would end a kind's block too early
    table = re.sub(r"\\u\{([0-9a-fA-F]+)\}", lambda m: chr(int(m[1], 16)), table)
    units = []
    for block in kind.finditer(table):
        for m in entry.finditer(block[2]):
            symbols = [unescape(s) for s in re.findall(STRING, m[2])]
            units.append({"kind": block[1], "name": m[1], "symbols": symbols})
        if entry.sub("", block[2]).strip():
            raise TableError(f"{path.name}: cannot read part of {block[1]}: {block[2]!r}")
    if kind.sub("", table).strip() or not units:
        raise TableError(f"{path.name}: cannot read this part of the unit table: {kind.sub('', table)[:200]!r}")
    return units


def groups(keywords):
    """Keywords by what they do, from the contexts alone; every keyword is in exactly one group."""
    out = {"definition": [], "part": [], "chain": [], "property": []}
    for k in keywords:
        cx = set(k["contexts"])
        if "Top" in cx:
            group = "definition"
        elif {"Station", "Chain"} <= cx and "Connector" not in cx:
            group = "part"
        elif "Chain" in cx:
            group = "chain"
        else:
            group = "property"
        out[group].append(k["word"])
    return {name: sorted(words) for name, words in out.items()}


def tables():
    """All lists that the highlighters need."""
    keywords, words = read_keywords()
    units = read_units()
    symbols = [s for u in units for s in u["symbols"]]
    if len(set(symbols)) != len(symbols):
        raise TableError("a unit's spelling stands twice")
    statement = {k["word"] for k in keywords}
    return {
        "comment": "Written by editors/grammar/generate.py from statements.json and unit.rs. Change those, not this file.",
        "keywords": keywords,
        "groups": groups(keywords),
        # words that mean something inside a statement: those of the table, and keywords named by others (`kind isolator`)
        "words": words,
        "inner_words": sorted(set(words) | statement),
        "only_words": sorted(set(words) - statement),
        "units": units,
        "unit_symbols": symbols,
        "length_symbols": [s for u in units if u["kind"] == "Length" for s in u["symbols"]],
    }


def unit_regex(symbol, escape=re.escape):
    """A pattern of one spelling; blanks around `/` and before what follows `100` are free, as in the language."""
    blanks = "[ \\t]*"
    parts = []
    for piece in re.split(r"(/100 |/)", symbol):
        if piece == "/":
            parts.append(f"{blanks}/{blanks}")
        elif piece == "/100 ":
            parts.append(f"{blanks}/{blanks}100{blanks}")
        else:
            parts.append(escape(piece))
    return "".join(parts)


def longest_first(words):
    """Longest first, so that an alternation never stops at a shorter word."""
    return sorted(words, key=lambda w: (-len(w), w))


def dump(data):
    """JSON as committed: one row of a list a line."""
    def value(v, depth):
        pad = "  " * depth
        if isinstance(v, dict) and depth < 2:
            rows = [f'{pad}  {json.dumps(k, ensure_ascii=False)}: {value(x, depth + 1)}' for k, x in v.items()]
            return "{\n" + ",\n".join(rows) + f"\n{pad}}}"
        if isinstance(v, list) and v and isinstance(v[0], dict):
            return "[\n" + ",\n".join(f"{pad}  {json.dumps(x, ensure_ascii=False)}" for x in v) + f"\n{pad}]"
        return json.dumps(v, ensure_ascii=False)
    return value(data, 0) + "\n"
