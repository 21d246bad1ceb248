"""What each token of a text is, computed without any grammar.

A plain reading of the section "Text" of docs/language.md: cut into runs, decide what a run is by its
place and by the program's tables. The highlighters are compared with this, token by token.
"""

import json
import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
TABLES = json.loads((ROOT / "editors/grammar/tables.json").read_text(encoding="utf-8"))
KEYWORDS = {k["word"] for k in TABLES["keywords"]}
WORDS = set(TABLES["words"])
UNITS = {re.sub(r"\s", "", s) for s in TABLES["unit_symbols"]}
LENGTHS = set(TABLES["length_symbols"])
LETTERS = "A-Za-z0-9_µμΩ\u2126λ°"

RUN = re.compile(
    rf"""(?P<comment>//.*)
    |(?P<string>"[^"]*")
    |(?P<angle>[0-9]+°[ ]?[0-9]+(\.[0-9]+)?′([ ]?[0-9]+(\.[0-9]+)?″)?)
    |(?P<date>[0-9]{{4}}-[0-9]{{2}}(-[0-9]{{2}})?(?![{LETTERS}.-]))
    |(?P<number>[0-9]+(\.[0-9]+)?(:[0-9]+(\.[0-9]+)?|[eE][+-]?[0-9]+)?)
    |(?P<word>[A-Za-z_])
    |(?P<mark>.)""",
    re.X,
)
WORD = re.compile(r"[A-Za-z0-9_]+(?:[.-][A-Za-z0-9_]+)*")
# everything that could be a unit, the longest first; whether it is one the table says
UNIT = re.compile(
    rf"""[ \t]*(?P<unit>
    (?:dB|pF)[ \t]*/[ \t]*(?:100[ \t]*)?[a-z]+(?:[ \t]*/[ \t]*(?:sqrt\([A-Za-z]+\)|√?[A-Za-z]+))?
    |(?:m?W|V|A)[ \t]*/[ \t]*c?m2?(?![{LETTERS}])
    |dBc[ \t]*/[ \t]*Hz(?![{LETTERS}])
    |%|[A-Za-z{LETTERS[10:]}][{LETTERS}]*(?:-[A-Za-z]+)*)""",
    re.X,
)


def unit_after(line, at):
    """Start and end of the unit at `at`, or None."""
    m = UNIT.match(line, at)
    while m:
        text, end = m["unit"], m.end()
        follows = line[end : end + 2]
        if re.sub(r"\s", "", text) in UNITS and not re.match(r"[-.][A-Za-z0-9_]", follows):
            return m.start("unit"), end
        if "/" not in text:
            return None
        # `dB/100 m/x` may still be `dB/100 m`, or `dB` and a division
        cut = line.rfind("/", 0, end)
        m = UNIT.match(line[:cut].rstrip(), at) if cut > at else None
    return None


def tokens(text):
    """(line, start, end, class); class is one of keyword, word, number, unit, date, angle, string, comment, name."""
    for number, line in enumerate(re.split(r"\r?\n", text)):
        at, begins = 0, True
        while at < len(line):
            m = RUN.match(line, at)
            kind, end = m.lastgroup if m.lastgroup in RUN.groupindex else None, m.end()
            kind = next(k for k in ("comment", "string", "angle", "date", "number", "word", "mark") if m[k] is not None)
            if kind == "mark":
                if m[0] in "{};":
                    begins = True
                at = end
                continue
            if kind == "number":
                unit = unit_after(line, end)
                run = WORD.match(line, at)
                glued = unit and unit[0] == end and unit[1] >= run.end()
                if run.end() > end and not glued and re.search("[A-Za-z_-]", line[end : run.end()]):
                    kind, end = "name", run.end()
                else:
                    yield number, at, end, "number"
                    if unit:
                        yield number, *unit, "unit"
                        end = unit[1]
                    at, begins = end, False
                    continue
            if kind == "word":
                word = WORD.match(line, at)
                end = word.end()
                root = re.compile(r"sqrt\([A-Za-z]+\)").match(line, at)
                if root:
                    kind, end = "unit", root.end()
                elif word[0] in KEYWORDS or (word[0] in WORDS and not begins):
                    kind = "keyword" if begins else "word"
                else:
                    kind = "name"
            # in an expression (`7 m / haat`) a word is the name of a value: editors may show it as either
            operand = kind == "word" and line[:at].rstrip()[-1:] in ("(", "/", "*")
            if not operand:
                yield number, at, end, kind
            at, begins = end, begins and kind == "comment"


def utf16(line, column):
    """A column in characters as one in UTF-16 units."""
    return len(line[:column].encode("utf-16-le")) // 2


def texts():
    """Name and text of every example, library file and fenced example of the manual."""
    for folder in ("examples", "crates/catalogue/library"):
        for path in sorted((ROOT / folder).rglob("*.downlead")):
            yield str(path.relative_to(ROOT)), path.read_text(encoding="utf-8")
    manual = (ROOT / "docs/language.md").read_text(encoding="utf-8")
    for i, m in enumerate(re.finditer(r"^```downlead\n(.*?)^```", manual, re.M | re.S), 1):
        yield f"docs/language.md example {i}", m[1]


def every_word():
    """A text that is not in the examples: each keyword, word and unit of the tables once, in a place where it can stand."""
    lines = [f"{word} x" for word in sorted(KEYWORDS)]
    lines += ["station s {"] + [f"    {word} 1.5 dB" for word in sorted(KEYWORDS)] + ["}"]
    lines += [f"pad 1 dB, {word}" for word in sorted(WORDS)]
    lines += [f"let x{i} = 2.5 {symbol}" for i, symbol in enumerate(TABLES["unit_symbols"])]
    lines += [f"let y{i} = 2.5{symbol} - 1" for i, symbol in enumerate(TABLES["unit_symbols"])]
    lines += ["run M1 46m ± 0.5 m of 4.3-10-pair, since 2026-07 // 5 dB of it", "connector 2 of 7-16-pair", "TX1; DU1.high; 2m-fm",
              "pad -3 dB, 3 sheets, 2 mast, velocity 0.85 sheet \"3 m of run\"", "place a { temperature 10 °C }; divider 2 way",
              "loss 1 dB/100m/sqrt(MHz) + 0.1 dB / 100 m / MHz", "position 49°20′00″ S 123.1667° W, wgs84", "x 1e3 Hz 1.7e-8 ohm-m"]
    return "\n".join(lines) + "\n"
