#!/usr/bin/env python3
"""The TextMate grammar over every example, token by token against oracle.py. Needs node and `npm ci` in editors/vscode."""

import json
import subprocess
import sys
from pathlib import Path

from oracle import every_word, texts, tokens, utf16

HERE = Path(__file__).resolve().parent
# class of a token -> beginnings of the scopes that say so
SCOPES = {
    "keyword": ("storage.type", "support.class.part", "keyword.control", "support.function.property"),
    "word": ("keyword.operator.word",),
    "number": ("constant.numeric",),
    "unit": ("keyword.other.unit",),
    "date": ("constant.numeric.date",),
    "angle": ("constant.numeric.angle",),
    "string": ("string.quoted.double",),
    "comment": ("comment.line.double-slash", "punctuation.definition.comment"),
    "name": ("variable.other", "entity.name"),
}


def faults(text, found, limit=5):
    """Tokens whose scope is another one than their class asks for."""
    lines = text.replace("\r\n", "\n").split("\n")
    scopes = {}
    for line, start, end, scope in found:
        for column in range(start, end):
            scopes[line, column] = scope
    out, count = [], 0
    for line, start, end, kind in tokens(text):
        count += 1
        for column in range(utf16(lines[line], start), utf16(lines[line], end)):
            scope = scopes.get((line, column), "nothing")
            band = kind in ("number", "unit") and scope.startswith("entity.name.type")
            named = kind == "word" and scope.startswith("entity.name.type")
            if not scope.startswith(SCOPES[kind]) and not band and not named:
                out.append(f"{line + 1}:{start + 1} `{lines[line][start:end]}` is a {kind}, shown as {scope}")
                break
    return out[:limit], count


def main():
    cases = [*texts(), ("every word of the tables", every_word())]
    run = subprocess.run(["node", HERE / "textmate_tokens.js"], input=json.dumps([t for _, t in cases]), capture_output=True, text=True)
    if run.returncode:
        print(run.stderr.strip())
        return 1
    total, bad = 0, 0
    for (name, text), found in zip(cases, json.loads(run.stdout), strict=True):
        wrong, count = faults(text, found)
        total += count
        bad += bool(wrong)
        for fault in wrong:
            print(f"{name}:{fault}")
    print(f"TextMate: {len(cases)} texts, {total} tokens, {bad} texts with faults")
    return 1 if bad or total < 1000 else 0


if __name__ == "__main__":
    sys.exit(main())
