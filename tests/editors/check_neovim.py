#!/usr/bin/env python3
"""Colours in the real Neovim, from syntax/downlead.vim and from tree-sitter, token by token against oracle.py.

NVIM_BIN names the program if `nvim` is not on the path. Exit status 77: no Neovim, nothing was checked.
"""

import json
import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

from oracle import ROOT, every_word, texts, tokens

HERE = Path(__file__).resolve().parent
SYNTAX = {
    "keyword": {"downleadDefinition", "downleadPart", "downleadStatement", "downleadProperty"},
    "word": {"downleadWord"},
    "number": {"downleadNumber"},
    "unit": {"downleadUnit", "downleadRoot"},
    "date": {"downleadDate"},
    "angle": {"downleadAngle"},
    "string": {"downleadText"},
    "comment": {"downleadComment"},
    "name": {"", "downleadName", "downleadTag"},
}
TREE = {
    "keyword": {"keyword.type", "keyword", "type.builtin", "property"},
    "word": {"keyword.operator", "type"},
    "number": {"number", "label", "type"},
    "unit": {"constant.builtin", "number", "label", "type"},
    "date": {"number"},
    "angle": {"number"},
    "string": {"string"},
    "comment": {"comment"},
    "name": {"variable", "type", "constant", "label"},
}


def main():
    nvim = os.environ.get("NVIM_BIN") or shutil.which("nvim")
    if not nvim:
        print("Neovim: not installed, nothing checked")
        return 77
    cases = [*texts(), ("every word of the tables", every_word())]
    payload, expected = [], []
    for _, text in cases:
        lines = text.split("\n")
        found = list(tokens(text))
        payload.append({"text": text, "tokens": [[n, len(lines[n][:a].encode()), k] for n, a, _, k in found]})
        expected.append([(n, a, lines[n][a:b], k) for n, a, b, k in found])
    status = 0
    with tempfile.TemporaryDirectory() as folder:
        listed = Path(folder, "tokens.json")
        listed.write_text(json.dumps(payload), encoding="utf-8")
        parser = Path(folder, "downlead.so")
        subprocess.run([ROOT / "editors/tree-sitter/build.sh", parser], check=True, capture_output=True)
        for what, allowed, more in (("syntax file", SYNTAX, []), ("tree-sitter", TREE, [parser])):
            run = subprocess.run([nvim, "--clean", "--headless", "-l", HERE / "neovim_colours.lua", listed, ROOT / "editors/neovim", *more],
                                 capture_output=True, text=True)
            if run.returncode or run.stderr.strip():
                print(f"Neovim, {what}: {run.stderr.strip()[-600:]}")
                status = 1
                continue
            bad = 0
            for (name, _), want, got in zip(cases, expected, json.loads(run.stdout.splitlines()[-1]), strict=True):
                wrong = [f"{name}:{n + 1}:{a + 1} `{s}` is a {k}, shown as {g or 'nothing'}" for (n, a, s, k), g in zip(want, got, strict=True) if g not in allowed[k]]
                bad += bool(wrong)
                for line in wrong[:4]:
                    print(line)
            print(f"Neovim, {what}: {len(cases)} texts, {sum(map(len, expected))} tokens, {bad} texts with faults")
            status |= bool(bad)
    return status


if __name__ == "__main__":
    sys.exit(main())
