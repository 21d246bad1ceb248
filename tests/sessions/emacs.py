#!/usr/bin/env python3
"""The session in Emacs with its own Eglot, with the lines of editors/emacs/README.md as the init file.

usage: emacs.py FOLDER EMACS
"""
import os
import re
import shutil
import sys
import time

from screen import Screen, main, wait
from story import ROOT, Story

story = Story(sys.argv[1])
EMACS = sys.argv[2]

# what a person who works in a terminal may have set, so that the screen says all
TERMINAL = """
(setq inhibit-startup-screen t make-backup-files nil create-lockfiles nil auto-save-default nil)
(global-display-line-numbers-mode 1)
(setq eldoc-echo-area-use-multiline-p 12)
"""


def session(check):
    source = os.path.join(ROOT, "editors", "emacs")
    folder = os.path.join(story.home, ".emacs.d")
    os.makedirs(os.path.join(folder, "lisp"))
    shutil.copy(os.path.join(source, "downlead-mode.el"), os.path.join(folder, "lisp"))
    with open(os.path.join(source, "README.md"), encoding="utf-8") as f:
        readme = re.search(r"```elisp\n(.*?)```", f.read(), re.S)[1]
    with open(os.path.join(folder, "init.el"), "w", encoding="utf-8") as f:
        f.write(readme.replace("\n   ", "\n") + TERMINAL)
    s = check.screen = Screen("emacs", [EMACS, "-nw", story.file], story.environment(), story.ws, columns=160)

    def goto(number):
        s.keys("M-g", "g", f"={number}", "Enter", "C-a")

    def command(name, *rest):
        s.keys("M-x", "=" + name, "Enter")
        time.sleep(0.2)
        s.keys(*rest)

    def saved():
        s.keys("C-x", "C-s")
        time.sleep(0.2)
        return story.on_disk()

    # hints
    if not check(s.wait(r"transmitter TX1"), "the file is open"):
        return
    check(s.wait(r"eglot:"), "Eglot is attached")
    goto(story.antenna)
    s.keys("C-l")
    check(s.wait(rf"^ *{story.antenna} +A1 .*ERP {story.erp}, EIRP {story.eirp} ± {story.uncertainty}"), f"hint at the antenna: ERP {story.erp}, EIRP {story.eirp} ± {story.uncertainty}")
    check(s.wait(rf"^ *{story.use} +M1 .*0\.75 dB →\s+12\.8 W"), "hint at the run: its loss and the power behind it")
    check(s.wait(rf"^ *{story.limit} +limit .* met: {story.margin} under"), f"hint at the limit: met, {story.margin}")
    s.keep(story, "hints")

    # hover
    goto(story.use)
    s.keys("M-m")
    # Emacs asks by itself after half a second of rest; before that there is nothing to show
    check(wait(lambda: s.keys("C-h", "=.") or s.wait(r"46 m of demo-seven-eighths-foam", 1), 10), "hover: the statement of the tag")
    check(s.find(r"0\.7[0-9]* dB"), "hover: its loss")
    s.keep(story, "hover")
    s.keys("C-x", "1")

    # break a line, see the message
    goto(story.broken)
    s.keys("C-s", "=with W1", "Enter", "=1")
    check(s.wait(r"with W11 by"), "the line is broken")
    s.keys("C-b")
    command("flymake-show-buffer-diagnostics")
    check(s.wait(r"W11.* is not defined"), "the message names what is wrong")
    s.keep(story, "message")
    s.keys("C-x", "1")

    # quick fix
    command("eglot-code-action-quickfix")
    # with a single one Eglot takes it without a question
    if not s.wait(r"with W1 by", 3):
        s.keys("Enter")
    check(s.wait(r"with W1 by"), "the fix mends the line")
    check(wait(lambda: saved() == story.original, 5), "columns right behind ±, all else as it was")

    # rename
    goto(story.use)
    s.keys("M-m")
    command("eglot-rename")
    check(s.wait(r"Rename .*M1.* to"), "rename asks, the tag is the old name")
    s.keys("C-a", "C-k", "=M9", "Enter")
    check(s.wait(rf"^ *{story.use} +M9 .*0\.75 dB"), "the hint stands beside the new name")
    check.same(saved(), story.finished, "rename changes the five places and nothing else")

    # format
    goto(story.untidy)
    s.keys("C-s", "=ground", "Enter", "=    ")
    check(s.wait(r"ground     612 m"), "the line is untidy")
    command("eglot-format-buffer")
    check(s.wait(r"ground 612 m"), "the file is formatted")
    check(wait(lambda: saved() == story.finished, 5), "formatting changes nothing else")
    check.same(story.on_disk(), story.finished, "what is on the disk")

    # report
    command("downlead-report")
    check(s.wait(rf"M9.*\n(.*\n)*.*{story.erp}") or s.find(story.erp), "the report is beside the file")

    # whole files typed in
    s.keys("C-x", "1")
    for file, text in ((story.typed, story.typed_text), (story.typed_bench, story.typed_bench_text)):
        name = os.path.basename(file)
        s.keys("C-x", "C-f", "C-a", "C-k", f"={file}", "Enter")
        check(s.wait(rf"{name} .*eglot:"), f"{name}: the server is there")
        s.write(text)
        s.keys("C-x", "C-s")
        wait(lambda: story.on_disk(file) == text, 5)
        check.same(story.on_disk(file), text, f"{name}: what was typed is in the file, a line for each Enter")
        if file == story.typed_bench:
            check(s.wait(r"session reel-7 .*A < B"), f"{name}: the ranking is beside the session")

    s.keys("C-x", "C-c")
    if s.wait(r"[Aa]ctive processes exist|anyway", 2):
        s.keys("=yes", "Enter")
    check(s.wait_end(), "the editor ends")
    check(wait(story.ended, 10), "the server ends with the editor")


main(session)
