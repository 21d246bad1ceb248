#!/usr/bin/env python3
"""The session in Helix, with the settings of editors/helix installed by its install.sh.

usage: helix.py FOLDER HX
"""
import os
import shutil
import subprocess
import sys

from screen import Screen, main, wait
from story import ROOT, Story

story = Story(sys.argv[1])
HX = sys.argv[2]


def session(check):
    folder = os.path.join(ROOT, "editors", "helix")
    env = {**os.environ, **story.environment()}
    installed = subprocess.run([os.path.join(folder, "install.sh")], env=env, capture_output=True, text=True)
    check(installed.returncode == 0, "install.sh", installed.stdout + installed.stderr)
    shutil.copy(os.path.join(folder, "config.toml"), os.path.join(story.home, ".config", "helix", "config.toml"))
    health = subprocess.run([HX, "--health", "downlead"], env=env, capture_output=True, text=True)
    check("✓" in health.stdout and "downlead" in health.stdout, "hx --health knows the server", health.stdout)

    s = check.screen = Screen("helix", [HX, story.file], story.environment(), story.ws)

    def saved():
        s.keys("Escape", "=:w!", "Enter")
        return story.on_disk()

    # hints come with the first key
    if not check(s.wait(r"transmitter TX1"), "the file is open"):
        return
    s.keys(f"=:{story.antenna}", "Enter", "=zz", "=k", "=j")
    check(s.wait(rf"^ *{story.antenna} .*A1 .*ERP {story.erp}, EIRP {story.eirp} ± {story.uncertainty}"), f"hint at the antenna: ERP {story.erp}, EIRP {story.eirp} ± {story.uncertainty}")
    check(s.wait(rf"^ *{story.use} .*M1 .*0\.75 dB →\s+12\.8 W"), "hint at the run: its loss and the power behind it")
    check(s.wait(rf"^ *{story.limit} .*limit .* met: {story.margin} under"), f"hint at the limit: met, {story.margin}")
    s.keep(story, "hints")

    # hover
    s.keys(f"=:{story.use}", "Enter", "=gs", "Space", "=k")
    check(s.wait(r"46 m of demo-seven-eighths-foam"), "hover: the statement of the tag")
    check(s.wait(r"0\.7[0-9]* dB", 5), "hover: its loss")
    s.keep(story, "hover")
    s.keys("Escape")

    # break a line, see the message: `/` searches forward from the line before
    s.keys(f"=:{story.broken}", "Enter", "=gh", "=/W1 by", "Enter", "Escape", "=;", "=gh", "=/with W1", "Enter", "=a1", "Escape")
    check(s.wait(r"with W11 by"), "the line is broken")
    check(s.wait(r"W11.* is not defined"), "the message is beside the line")
    s.keep(story, "message")

    # quick fix
    s.keys("Space", "=a")
    if check(s.wait(r"(?i)(write|change|replace|mean|use) .*W1\b"), "a quick fix is offered"):
        s.keys("Enter")
    check(s.wait(r"with W1 by") and wait(lambda: story.line(story.broken) in saved()), "the fix mends the line, columns right behind ±")
    check(s.wait_gone(r"is not defined"), "the message is gone")

    # rename
    s.keys("Escape", f"=:{story.use}", "Enter", "=gs", "Space", "=r")
    check(s.wait(r"rename"), "rename asks")
    s.keys("C-u", "=M9", "Enter")
    check(s.wait(rf"^ *{story.use} .*M9 .*0\.75 dB"), "the hint stands beside the new name")
    check.same(saved(), story.finished, "rename changes the five places and nothing else")

    # format
    # one by one: Helix 25.01 may send changes that come at once out of their order (version 7 before 6)
    s.keys(f"=:{story.untidy}", "Enter", "=gh", "=f6", "=;", "=i", "= ", "= ", "= ", "= ", "Escape")
    check(s.wait(r"ground +    612 m"), "the line is untidy")
    s.keys("=:format", "Enter")
    check(s.wait(r"ground 612 m"), ":format formats")
    check(wait(lambda: saved() == story.finished, 5), "formatting changes nothing else")
    check.same(story.on_disk(), story.finished, "what is on the disk")

    s.keys("Escape", "=:q!", "Enter")
    check(s.wait_end(), "the editor ends")
    check(wait(story.ended, 10), "the server ends with the editor")


main(session)
