#!/usr/bin/env python3
"""Turns a terminal program's coloured output into an SVG picture.

usage: ansi_to_svg.py TITLE < output.ansi > picture.svg

Knows the SGR codes for bold, dim, underline and the 16 colours; everything else is dropped.
No dependency beyond the standard library, so the README's pictures can be made anywhere.
"""
import html
import re
import sys
import unicodedata

SGR = re.compile(r"\x1b\[([0-9;]*)m")
OTHER = re.compile(r"\x1b\[[0-9;?]*[A-Za-ln-z]|\x1b\][^\x07]*\x07|\x1b[()][A-Z0-9]")
COLOURS = ["#1b1b1b", "#b3261e", "#2e6b34", "#8a5a00", "#1f4e9e", "#7a3e9d", "#0f6a78", "#444444"]
CELL, LINE, PAD = 8.4, 19, 14


def width(text):
    return sum(0 if unicodedata.combining(c) else 2 if unicodedata.east_asian_width(c) in "WF" else 1 for c in text)


def runs(line, state):
    out, last = [], 0
    for m in SGR.finditer(line):
        if m.start() > last:
            out.append((line[last:m.start()], dict(state)))
        last = m.end()
        for code in (int(c) if c else 0 for c in m.group(1).split(";")):
            if code == 0:
                state.clear()
            elif code == 1:
                state["bold"] = True
            elif code == 2:
                state["dim"] = True
            elif code == 4:
                state["underline"] = True
            elif 30 <= code <= 37:
                state["colour"] = COLOURS[code - 30]
            elif 90 <= code <= 97:
                state["colour"] = COLOURS[code - 90]
            elif code == 39:
                state.pop("colour", None)
            elif code == 22:
                state.pop("bold", None)
                state.pop("dim", None)
    if last < len(line):
        out.append((line[last:], dict(state)))
    return out


def main():
    title = sys.argv[1] if len(sys.argv) > 1 else ""
    text = OTHER.sub("", sys.stdin.read()).rstrip("\n")
    lines, state = [], {}
    for raw in text.split("\n"):
        lines.append(runs(raw.rstrip("\r"), state))
    columns = max((sum(width(t) for t, _ in line) for line in lines), default=1)
    w, h = columns * CELL + 2 * PAD, len(lines) * LINE + 2 * PAD + 22
    print(f'<svg xmlns="http://www.w3.org/2000/svg" width="{w:.0f}" height="{h:.0f}" viewBox="0 0 {w:.0f} {h:.0f}" role="img">')
    print(f"<title>{html.escape(title)}</title>")
    print(f'<rect width="100%" height="100%" rx="6" fill="#fbfaf7" stroke="#c9c4b8"/>')
    print(f'<text x="{PAD}" y="20" font-family="DejaVu Sans Mono, Menlo, Consolas, monospace" font-size="13" fill="#777">$ {html.escape(title)}</text>')
    for i, line in enumerate(lines):
        y, x = PAD + 22 + (i + 0.75) * LINE, 0
        for t, s in line:
            if t.strip():
                lead = len(t) - len(t.lstrip(" "))
                body = t.strip(" ")
                px = PAD + (x + lead) * CELL
                style = f' fill="{s.get("colour", "#222222")}"'
                if s.get("bold"):
                    style += ' font-weight="bold"'
                if s.get("dim"):
                    style += ' opacity="0.65"'
                if s.get("underline"):
                    style += ' text-decoration="underline"'
                print(
                    f'<text x="{px:.1f}" y="{y:.1f}" xml:space="preserve" textLength="{width(body) * CELL:.1f}" '
                    f'font-family="DejaVu Sans Mono, Menlo, Consolas, monospace" font-size="14"{style}>{html.escape(body)}</text>'
                )
            x += width(t)
    print("</svg>")


main()
