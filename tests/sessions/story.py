#!/usr/bin/env python3
"""What every session does to the same file, and what must come of it.

usage: story.py FOLDER SERVER: makes FOLDER anew with `ws` (a copy of the hill's files), `home`, `bin/downlead` (the server behind
tee.py, so that an editor runs it with the settings as shipped), and `story.json` for drivers in other languages.

The numbers to be seen are those of examples/pellgarrow/expected.json, which do not come from this program.
"""
import json
import os
import re
import shutil
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(os.path.dirname(HERE))
CHAIN = "talk-out-2m"
# one sign of these takes four bytes, or two units of UTF-16; the fault stands behind them on the same line
WIDE = """band 2m 145 MHz

chain wide on 2m transmit {
    transmitter 5 W, sheet "\U0001f6f0 \U0001d11e p. 1"; run 10 m of half-inch-foan
    antenna 2.15 dBi
}
"""


class Story:
    def __init__(self, folder):
        self.folder = os.path.abspath(folder)
        self.ws = os.path.join(self.folder, "ws")
        self.home = os.path.join(self.folder, "home")
        self.file = os.path.join(self.ws, "pellgarrow", "rev4.downlead")
        self.wide = os.path.join(self.ws, "wide.downlead")
        self.typed = os.path.join(self.ws, "typed.downlead")
        with open(os.path.join(HERE, "repeater.downlead"), encoding="utf-8") as f:
            self.typed_text = f.read()
        self.typed_bench = os.path.join(self.ws, "typed-bench.downlead")
        with open(os.path.join(HERE, "bench.downlead"), encoding="utf-8") as f:
            self.typed_bench_text = f.read()
        # its verdicts were computed apart from the program: crates/physics/tests/data/bench_results.csv
        self.bench = os.path.join(self.ws, "bench", "four-cables.downlead")
        self.verdicts = "24 agree, 5 differ, 7 cannot tell"
        self.wide_finished = WIDE.replace("foan", "foam")
        self.log = os.path.join(self.folder, "protocol.jsonl")
        with open(os.path.join(ROOT, "examples", "pellgarrow", "rev4.downlead"), encoding="utf-8") as f:
            self.original = f.read()
        self.lines = self.original.split("\n")
        with open(os.path.join(ROOT, "examples", "pellgarrow", "expected.json"), encoding="utf-8") as f:
            chain = next(c for c in json.load(f)["rev4"]["chains"] if c["chain"] == CHAIN)
        self.erp = f"{chain['erp_w']:.1f} W"
        self.eirp = f"{chain['eirp_w']:.1f} W"
        self.uncertainty = f"{chain['uncertainty_db']:.2f} dB"
        self.margin = f"{chain['margin_db']:.2f} dB"
        # 1-based lines
        self.head = self.number(f"    chain {CHAIN} ")
        self.use = self.number("        M1", self.head)
        self.antenna = self.number("        A1", self.head)
        self.limit = self.number("        limit ", self.head)
        self.definition = self.number("    run M1 ")
        # the line to break has signs of several bytes before the place
        self.broken = self.number("    transmitter TX1 ")
        self.wrong, self.right = "W11", "W1"
        self.untidy = self.number("    ground ")
        self.column = self.line(self.broken).index("with W1") + len("with W1")
        assert self.line(self.broken).isascii() is False

    def commit(self):
        """Makes the workspace a git repository with what is on the disk as its one commit."""
        for args in (["init", "-q"], ["add", "."], ["-c", "user.name=x", "-c", "user.email=x@example.org", "commit", "-q", "-m", "as found"]):
            subprocess.run(["git", *args], cwd=self.ws, check=True, env={**os.environ, "HOME": self.home})

    def number(self, start, after=0):
        return next(i + 1 for i, line in enumerate(self.lines) if i >= after and line.startswith(start))

    def line(self, number):
        return self.lines[number - 1]

    @property
    def finished(self):
        """The text after the whole session: the tag renamed wherever it is one, all else as it was."""
        renamed = [line if line.lstrip().startswith("//") else re.sub(r"\bM1\b", "M9", line) for line in self.lines]
        changed = sum(a != b for a, b in zip(self.lines, renamed))
        assert changed == 5 and "SP1 to M1" in "\n".join(renamed), changed
        return "\n".join(renamed)

    def log_lines(self):
        try:
            with open(self.log, encoding="utf-8") as f:
                return [json.loads(line) for line in f if line.endswith("\n")]
        except FileNotFoundError:
            return []

    def ended(self):
        """Whether every server has ended. An editor may kill tee.py before it notes that, so the processes are looked for."""
        pids = [r["pid"] for r in self.log_lines() if "pid" in r]
        return bool(pids) and not any(os.path.exists(f"/proc/{p}") for p in pids)

    def on_disk(self, path=None):
        with open(path or self.file, encoding="utf-8") as f:
            return f.read()

    def environment(self):
        return {"HOME": self.home, "PATH": os.path.join(self.folder, "bin") + ":" + os.environ["PATH"],
                "XDG_CONFIG_HOME": os.path.join(self.home, ".config"), "XDG_DATA_HOME": os.path.join(self.home, ".local", "share"),
                "XDG_STATE_HOME": os.path.join(self.home, ".local", "state"), "XDG_CACHE_HOME": os.path.join(self.home, ".cache")}

    def prepare(self, server):
        shutil.rmtree(self.folder, ignore_errors=True)
        for name in ("pellgarrow", "thrennock", "bench"):
            shutil.copytree(os.path.join(ROOT, "examples", name), os.path.join(self.ws, name))
        # what editors take for the root of a project
        if subprocess.run(["git", "init", "-q", self.ws], capture_output=True).returncode != 0:
            os.makedirs(os.path.join(self.ws, ".git"))
        with open(self.wide, "w", encoding="utf-8") as f:
            f.write(WIDE)
        for file in (self.typed, self.typed_bench):
            open(file, "w").close()
        for name in ("home", "bin", "pictures"):
            os.makedirs(os.path.join(self.folder, name))
        program = os.path.join(self.folder, "bin", "downlead")
        with open(program, "w", encoding="utf-8") as f:
            f.write(f'#!/bin/sh\nexec "{sys.executable}" "{HERE}/tee.py" "{self.log}" "{os.path.abspath(server)}" "$@"\n')
        os.chmod(program, 0o755)
        facts = {k: v for k, v in vars(self).items() if k != "lines"}
        facts["finished"] = self.finished
        facts["broken_text"], facts["untidy_text"] = self.line(self.broken), self.line(self.untidy)
        with open(os.path.join(self.folder, "story.json"), "w", encoding="utf-8") as f:
            json.dump(facts, f, ensure_ascii=False, indent=1)


if __name__ == "__main__":
    Story(sys.argv[1]).prepare(sys.argv[2])
