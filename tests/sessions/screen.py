"""An editor in a terminal: starts it under tmux on a socket of its own, types keys, reads the screen."""
import os
import re
import shlex
import subprocess
import sys
import time


class Checks:
    """Counts and prints; `status` is for `sys.exit`."""

    def __init__(self, screen=None):
        self.failed, self.screen = 0, screen

    def __call__(self, ok, what, seen=""):
        print(("ok   " if ok else "FAIL ") + what, flush=True)
        if not ok:
            self.failed += 1
            if seen:
                print("     " + str(seen).replace("\n", "\n     "), flush=True)
            if self.screen:
                print(self.screen.framed(), flush=True)
        return ok

    def same(self, got, wanted, what):
        """Two texts; the first lines that differ are shown."""
        differ = [f"line {i + 1}: {g!r}, should be {w!r}" for i, (g, w) in enumerate(zip(got.split("\n"), wanted.split("\n"))) if g != w]
        if got.count("\n") != wanted.count("\n"):
            differ.append(f"{got.count(chr(10))} lines, should be {wanted.count(chr(10))}")
        return self(got == wanted, what, "\n".join(differ[:6]))

    @property
    def status(self):
        return 1 if self.failed else 0


class Screen:
    def __init__(self, name, command, env, cwd, columns=150, rows=46):
        self.tmux = ["tmux", "-L", f"session-{name}-{os.getpid()}", "-f", "/dev/null"]
        self.rows = rows
        line = "exec env " + " ".join(f"{k}={shlex.quote(v)}" for k, v in {"TERM": "tmux-256color", "LC_ALL": "C.UTF-8", **env}.items()) \
            + " " + " ".join(map(shlex.quote, command))
        self.run("start-server", ";", "set-option", "-g", "escape-time", "0", ";", "set-option", "-ga", "terminal-features", ",*:RGB", ";",
                 "new-session", "-d", "-x", str(columns), "-y", str(rows), "-c", cwd, line)

    def run(self, *args):
        return subprocess.run([*self.tmux, *args], capture_output=True, text=True, encoding="utf-8")

    def keys(self, *names):
        """Named keys (`Enter`, `C-w`, `Escape`), or text that is typed as it stands when it begins with `=`."""
        for n in names:
            # a semicolon at the end would end tmux' own command
            text = n[1:-1] + "\\;" if n.endswith(";") else n[1:]
            self.run("send-keys", "-l", text) if n.startswith("=") else self.run("send-keys", n)
            # Escape and the next key within this time would be one key with Alt
            time.sleep(0.35 if n == "Escape" else 0.03)
            self.settle()

    def write(self, text):
        """Types a text key by key, with the end of each line as Enter; blanks before a line are the editor's. A rest before each
        Enter, in which a list of completions could open."""
        for line in text.rstrip("\n").split("\n"):
            for key in line.strip():
                # a semicolon at the end would end tmux' own command
                self.run("send-keys", "-l", "\\;" if key == ";" else key)
            time.sleep(0.1)
            self.settle(0.5)
            self.run("send-keys", "Enter")
        self.settle()

    def settle(self, seconds=2):
        """Waits until the screen stays the same for a moment: a key that comes while an editor is busy with the last one may be lost."""
        end, last = time.monotonic() + seconds, None
        while time.monotonic() < end and (now := self.run("display-message", "-p", "#{cursor_x} #{cursor_y}").stdout + self.text()) != last:
            last = now
            time.sleep(0.06)

    def text(self):
        return self.run("capture-pane", "-p").stdout

    def coloured(self):
        return self.run("capture-pane", "-p", "-e").stdout

    def framed(self):
        return "".join(f"     | {line}\n" for line in self.text().rstrip().split("\n"))

    def keep(self, story, name):
        """Leaves the screen as it is now in the story's pictures, plain and with its colours."""
        for end, text in (("txt", self.text()), ("ansi", self.coloured())):
            with open(os.path.join(story.folder, "pictures", f"{name}.{end}"), "w", encoding="utf-8") as f:
                f.write(text)

    def find(self, pattern):
        return re.search(pattern, self.text(), re.M)

    def wait(self, pattern, seconds=20):
        """The match of a pattern on the screen (`^` and `$` are line ends), or nothing after a while."""
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            if m := self.find(pattern):
                return m
            time.sleep(0.05)
        return None

    def wait_gone(self, pattern, seconds=20):
        return wait(lambda: not self.find(pattern), seconds)

    def alive(self):
        return self.run("has-session").returncode == 0

    def wait_end(self, seconds=10):
        return wait(lambda: not self.alive(), seconds)

    def close(self):
        self.run("kill-server")


def wait(condition, seconds=20):
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        if result := condition():
            return result
        time.sleep(0.05)
    return None


def main(session):
    """`session(checks)` with the exit status of the program."""
    checks = Checks()
    try:
        session(checks)
    finally:
        if checks.screen:
            checks.screen.close()
    sys.exit(checks.status)
