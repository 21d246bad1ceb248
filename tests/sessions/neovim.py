#!/usr/bin/env python3
"""The session in Neovim, with the settings of editors/neovim installed as its README says.

usage: neovim.py FOLDER NVIM
"""
import os
import shutil
import subprocess
import sys
import time

from screen import Screen, main, wait
from story import ROOT, Story

story = Story(sys.argv[1])
NVIM = sys.argv[2]
SOCKET = os.path.join(story.folder, "nvim.sock")


def ask(expression):
    out = subprocess.run([NVIM, "--server", SOCKET, "--remote-expr", expression], capture_output=True, text=True, encoding="utf-8", timeout=20)
    return out.stdout


def buffer():
    return ask('join(getline(1, "$"), "\n")."\n"').rstrip("\n") + "\n"


def line(number):
    return ask(f"getline({number})").rstrip("\n")


def contrast(a, b):
    """Ratio of two colours (sRGB, 24 bits) by WCAG 2.1."""
    def luminance(colour):
        parts = ((colour >> shift & 255) / 255 for shift in (16, 8, 0))
        return sum(w * (p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4) for w, p in zip((0.2126, 0.7152, 0.0722), parts))
    light, dark = sorted((luminance(a), luminance(b)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def session(check):
    shutil.copytree(os.path.join(ROOT, "editors", "neovim"), os.path.join(story.home, ".local/share/nvim/site/pack/downlead/start/downlead"))
    s = check.screen = Screen("neovim", [NVIM, "--listen", SOCKET, "-c", "set number noswapfile termguicolors", story.file], story.environment(), story.ws)

    # hints
    if not check(s.wait(r"transmitter TX1"), "the file is open"):
        return
    s.keys(f"={story.antenna}G", "=zz")
    check(s.wait(rf"^ *{story.antenna} +A1 .*ERP {story.erp}, EIRP {story.eirp} ± {story.uncertainty}"), f"hint at the antenna: ERP {story.erp}, EIRP {story.eirp} ± {story.uncertainty}")
    check(s.wait(rf"^ *{story.use} +M1 .*0\.75 dB →\s+12\.8 W"), "hint at the run: its loss and the power behind it")
    check(s.wait(rf"^ *{story.limit} +limit .* met: {story.margin} under"), f"hint at the limit: met, {story.margin}")
    check(int(ask("luaeval('#vim.diagnostic.get(0)')") or -1) == 0, "no message", s.text())
    s.keep(story, "hints")

    # hints can be read, on both backgrounds
    for background in ("dark", "light"):
        s.keys(f"=:set background={background}", "Enter")
        fore, back = (int(ask(f"luaeval('vim.api.nvim_get_hl(0, {{ name = \"{g}\", link = false }}).{p}')") or 0) for g, p in (("LspInlayHint", "fg"), ("Normal", "bg")))
        check(contrast(fore, back) >= 4.5, f"{background}: contrast of hints {contrast(fore, back):.1f}, at least 4.5", f"{fore:06x} on {back:06x}")
    s.keys("=:set background=dark", "Enter")

    # hover
    s.keys(f"={story.use}G", "=^", "=K")
    check(s.wait(r"46 m of demo-seven-eighths-foam"), "hover: the statement of the tag")
    check(s.find(r"0\.7[0-9]* dB"), "hover: its loss")
    s.keep(story, "hover")
    s.keys("Escape", "=j")

    # break a line, see the message
    s.keys(f"={story.broken}G", "=0", "=/W1 by", "Enter", "=ea1", "Escape")
    check(line(story.broken) == story.line(story.broken).replace("with W1 ", "with W11 "), "the line is broken", line(story.broken))
    check(wait(lambda: ask("luaeval('#vim.diagnostic.get(0)')") not in ("", "0")), "a message has come")
    # it stands below the line of the cursor by itself
    check(s.wait(r"W11.* is not defined"), "the message names what is wrong")
    s.keys("C-w", "=d")
    s.keep(story, "message")
    check(s.wait(r"Did you mean `?W1`?"), "the message says what was meant")
    s.keys("Escape", "=h", "=l")

    # quick fix
    s.keys("=gra")
    choice = s.wait(r"^(\d+): .*`?W1`?\b(?!1)")
    if check(choice, "a quick fix is offered"):
        s.keys("=" + choice[1], "Enter")
    check(wait(lambda: line(story.broken) == story.line(story.broken)), "the fix mends the line, columns right behind ±", line(story.broken))
    check(wait(lambda: ask("luaeval('#vim.diagnostic.get(0)')") == "0"), "the message is gone")

    # rename
    s.keys("Escape", f"={story.use}G", "=^", "=grn")
    check(s.wait(r"New Name: M1"), "rename asks, the tag is the old name")
    s.keys("C-u", "=M9", "Enter")
    check(wait(lambda: line(story.definition).startswith("    run M9 ")), "rename changes the definition")
    check.same(buffer(), story.finished, "rename changes the five places and nothing else")
    check(s.find(rf"^ *{story.use} +M9 .*0\.75 dB"), "the hint stands beside the new name")

    # format
    s.keys(f"={story.untidy}G", "=0", "=f6", "=i    ", "Escape")
    check(line(story.untidy) != story.line(story.untidy), "the line is untidy")
    s.keys("=gggqG")
    check(wait(lambda: line(story.untidy) == story.line(story.untidy)), "gq formats", line(story.untidy))
    check.same(buffer(), story.finished, "formatting changes nothing else")
    s.keys(f"={story.untidy}G", "=0", "=f6", "=i    ", "Escape", "=:lua vim.lsp.buf.format()", "Enter")
    check(wait(lambda: line(story.untidy) == story.line(story.untidy)), "the whole file is formatted")

    # report beside the file
    s.keys("=:DownleadReport", "Enter")
    check(s.wait(r"│.*\bM9\b") and s.find(story.erp), "the report is beside the file, with the new name")

    # what the change since the last commit means on the air: a tag was renamed, nothing is lost or won by it
    s.keys("=:only", "Enter")
    story.commit()
    s.keys("=:DownleadCompare", "Enter")
    check(s.wait(r"│.*What changes on the air") and s.wait(r"│.*M1 is now M9"), "the comparison with the last commit is beside the file")
    check(s.find(r"│.*nothing changes on the air"), "a new name changes nothing on the air")
    s.keep(story, "compare")
    s.keys("=:DownleadCompare nowhere", "Enter")
    check(s.wait(r"│.*There is no revision"), "a revision that is not there is said")

    # definition into the built-in library, a text without a file
    s.keys("=:only", "Enter", "=/n-pair", "Enter", "C-]")
    check(s.wait(r"connector n-pair .*"), "definition of a built-in name opens its text")
    s.keys("C-o")

    # columns behind signs of four bytes
    s.keys(f"=:w | e {story.wide}", "Enter")
    check(wait(lambda: ask("luaeval('#vim.diagnostic.get(0)')") == "1"), "a message in the second file")
    s.keys("=4G", "=$", "=gra")
    choice = s.wait(r"^(\d+): .*half-inch-foam")
    if check(choice, "a quick fix for a word behind wide signs"):
        s.keys("=" + choice[1], "Enter")
    check(wait(lambda: buffer() == story.wide_finished), "it changes just that word", buffer())

    # a bench session: its verdicts beside the table, the ranking beside its name
    s.keys(f"=:w | e {story.bench}", "Enter")
    check(s.wait(rf"readings from .july.csv. .*{story.verdicts}"), f"hint at a table of readings: {story.verdicts}")
    check(s.wait(r"session four-cables .*D < C < B < A"), "hint at the session: the ranking per 100 m")
    check(wait(lambda: ask("luaeval('#vim.diagnostic.get(0, {severity = vim.diagnostic.severity.WARN})')") == "2"), "the wet cable and the drift are reported")
    s.keep(story, "bench")

    # whole files typed in: as shipped, and with completion while one types
    for completes in ("false", "true"):
        for file, text in ((story.typed, story.typed_text), (story.typed_bench, story.typed_bench_text)):
            open(file, "w").close()
            s.keys(f"=:lua require('downlead').setup({{ completion = {completes} }})", "Enter", f"=:e! {file}", "Enter")
            name = f"{os.path.basename(file)}{', lists open' if completes == 'true' else ''}"
            check(wait(lambda: ask("luaeval('#vim.lsp.get_clients({ bufnr = 0 })')") == "1"), f"{name}: the server is there")
            s.keys("=i")
            s.write(text)
            s.keys("Escape")
            check.same(buffer().rstrip("\n") + "\n", text, f"{name}: what was typed is in the file, a line for each Enter")
            # later than the pause after which findings about what is typed are shown
            time.sleep(2)
            check(ask("luaeval('#vim.diagnostic.get(0, {severity = vim.diagnostic.severity.ERROR})')") == "0", f"{name}: no error in it")
            if file == story.typed_bench:
                check(s.wait(r"session reel-7 .*A < B"), f"{name}: the ranking is beside the session")
            s.keys("=:bwipeout!", "Enter")

    s.keys("=:wqa!", "Enter")
    check(s.wait_end(), "the editor ends")
    check.same(story.on_disk(), story.finished, "what is on the disk")
    check(wait(story.ended, 10), "the server ends with the editor")
    time.sleep(0.1)


main(session)
