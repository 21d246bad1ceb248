#!/usr/bin/env python3
"""Kate's syntax file in Kate's own highlighter, token by token against oracle.py.

A colour scheme made here gives each style a colour of its own, so the output says which style a token has.
Needs `kate-syntax-highlighter` or `ksyntaxhighlighter6`; KATE_HIGHLIGHTER names another. Exit status 77: not there.
"""

import html
import json
import os
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

from oracle import ROOT, every_word, texts, tokens

STYLES = ["Normal", "Keyword", "Function", "Variable", "ControlFlow", "Operator", "BuiltIn", "Extension", "Preprocessor", "Attribute", "Char",
          "SpecialChar", "String", "VerbatimString", "SpecialString", "Import", "DataType", "DecVal", "BaseN", "Float", "Constant", "Comment",
          "Documentation", "Annotation", "CommentVar", "RegionMarker", "Information", "Warning", "Alert", "Others", "Error"]
WANTED = {
    "keyword": {"Keyword", "DataType", "ControlFlow", "Attribute"},
    "word": {"Extension"},
    "number": {"Float"},
    "unit": {"BuiltIn"},
    "date": {"Constant"},
    "angle": {"Float"},
    "string": {"String"},
    "comment": {"Comment"},
    "name": {"Normal", "Variable"},
}


def theme():
    """A colour scheme in which the colour is the number of the style."""
    styles = {s: {"text-color": f"#{i + 1:06x}", "selected-text-color": f"#{i + 1:06x}"} for i, s in enumerate(STYLES)}
    colours = ["BackgroundColor", "CodeFolding", "BracketMatching", "CurrentLine", "IconBorder", "IndentationLine", "LineNumbers", "CurrentLineNumber",
               "MarkBookmark", "MarkBreakpointActive", "MarkBreakpointReached", "MarkBreakpointDisabled", "MarkExecution", "MarkWarning", "MarkError",
               "ModifiedLines", "ReplaceHighlight", "SavedLines", "SearchHighlight", "TextSelection", "Separator", "SpellChecking", "TabMarker",
               "TemplateBackground", "TemplatePlaceholder", "TemplateFocusedPlaceholder", "TemplateReadOnlyPlaceholder", "WordWrapMarker"]
    return {"metadata": {"name": "check", "revision": 1}, "text-styles": styles, "editor-colors": dict.fromkeys(colours, "#ffffff")}


def styles_of(page):
    """Each line as a list with the style of each character."""
    body = re.search(r"<pre>\n?(.*?)</pre>", page, re.S)[1]
    lines, style = [[]], "Normal"
    for part in re.findall(r"<span[^>]*>|</span>|&[^;]+;|[^<&]", body):
        if part.startswith("<span"):
            style = STYLES[int(re.search(r"color:#([0-9a-f]{6})", part)[1], 16) - 1]
        elif part == "</span>":
            style = "Normal"
        elif part == "\n":
            lines.append([])
        else:
            lines[-1] += [style] * len(html.unescape(part))
    return lines


def main():
    names = ("kate-syntax-highlighter", "ksyntaxhighlighter6")
    tool = os.environ.get("KATE_HIGHLIGHTER") or next(filter(None, map(shutil.which, names)), None)
    if not tool:
        print("Kate: its highlighter is not installed, nothing checked")
        return 77
    bad = count = 0
    cases = [*texts(), ("every word of the tables", every_word())]
    with tempfile.TemporaryDirectory() as folder:
        data = Path(folder, "org.kde.syntax-highlighting")
        (data / "syntax").mkdir(parents=True)
        (data / "themes").mkdir()
        shutil.copy(ROOT / "editors/kate/downlead.xml", data / "syntax")
        (data / "themes/check.theme").write_text(json.dumps(theme()))
        environment = {**os.environ, "XDG_DATA_HOME": folder, "QT_QPA_PLATFORM": "offscreen", "LC_ALL": "C.UTF-8"}
        for name, text in cases:
            file = Path(folder, "x.downlead")
            file.write_text(text, encoding="utf-8")
            run = subprocess.run([tool, "--syntax", "Downlead", "--theme", "check", file], env=environment, capture_output=True, text=True)
            if run.returncode or run.stderr.strip():
                print(f"{name}: {run.stderr.strip()[:500]}")
                return 1
            shown, lines, wrong = styles_of(run.stdout), text.split("\n"), []
            for n, a, b, kind in tokens(text):
                count += 1
                # the blank before a unit belongs to it there
                style = shown[n][a]
                if style not in WANTED[kind]:
                    wrong.append(f"{name}:{n + 1}:{a + 1} `{lines[n][a:b]}` is a {kind}, shown as {style}")
            bad += bool(wrong)
            for line in wrong[:4]:
                print(line)
    print(f"Kate: {len(cases)} texts, {count} tokens, {bad} texts with faults")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
