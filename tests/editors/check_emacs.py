#!/usr/bin/env python3
"""Faces in the real Emacs token by token against oracle.py, and indentation of the examples.

EMACS_BIN names the program if `emacs` is not on the path. Exit status 77: no Emacs, nothing was checked.
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
FACES = {
    "keyword": {"font-lock-keyword-face", "font-lock-type-face", "font-lock-variable-name-face"},
    "word": {"font-lock-preprocessor-face"},
    "number": {"font-lock-constant-face"},
    "unit": {"font-lock-builtin-face"},
    "date": {"font-lock-constant-face"},
    "angle": {"font-lock-constant-face"},
    "string": {"font-lock-string-face"},
    "comment": {"font-lock-comment-face", "font-lock-comment-delimiter-face"},
    "name": {"", "font-lock-constant-face"},
}


def main():
    emacs = os.environ.get("EMACS_BIN") or shutil.which("emacs")
    if not emacs:
        print("Emacs: not installed, nothing checked")
        return 77
    cases = [*texts(), ("every word of the tables", every_word())]
    found = [list(tokens(text)) for _, text in cases]
    payload = [{"text": text, "tokens": [[n, a, k] for n, a, _, k in f]} for (_, text), f in zip(cases, found, strict=True)]
    with tempfile.NamedTemporaryFile("w", suffix=".json", encoding="utf-8") as file:
        json.dump(payload, file, ensure_ascii=False)
        file.flush()
        run = subprocess.run([emacs, "-Q", "--batch", "-l", ROOT / "editors/emacs/downlead-mode.el", "-l", HERE / "emacs_colours.el", file.name],
                             capture_output=True, text=True)
    if run.returncode or "indentation differs" in run.stderr:
        print(run.stderr.strip()[-1500:])
        return 1
    bad = 0
    for (name, text), want, got in zip(cases, found, json.loads(run.stdout), strict=True):
        lines = text.split("\n")
        wrong = [f"{name}:{n + 1}:{a + 1} `{lines[n][a:b]}` is a {k}, shown as {g or 'nothing'}"
                 for (n, a, b, k), g in zip(want, got, strict=True) if g not in FACES[k]]
        bad += bool(wrong)
        for line in wrong[:4]:
            print(line)
    print(f"Emacs: {len(cases)} texts, {sum(map(len, found))} tokens, {bad} texts with faults")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
