#!/usr/bin/env python3
"""Stands between an editor and its language server and writes down what they say.

usage: tee.py LOG PROGRAM ARGS…

Bytes pass through untouched and at once. LOG gets one JSON object a line: first `{"pid": of the server}`, then
`{"t": seconds, "d": ">" or "<", "m": message}` (">" is from the editor), `{"bad": what}` for a frame that cannot be read,
`{"signal": number}` for one that was passed on, at the end `{"end": exit status}` of the server. What the server writes to standard
error goes to LOG with `.err` behind it.
"""
import json
import os
import signal
import subprocess
import sys
import threading
import time


class Frames:
    """Reads `Content-Length` frames out of a stream of bytes."""

    def __init__(self, direction, write):
        self.direction, self.write, self.data = direction, write, b""

    def feed(self, data):
        self.data += data
        while (end := self.data.find(b"\r\n\r\n")) >= 0:
            fields = dict(line.split(b":", 1) for line in self.data[:end].split(b"\r\n") if b":" in line)
            length = next((v for k, v in fields.items() if k.strip().lower() == b"content-length"), None)
            if length is None or not length.strip().isdigit():
                self.write({"d": self.direction, "bad": "no length: " + repr(self.data[:end])})
                self.data = self.data[end + 4:]
                continue
            start, size = end + 4, int(length)
            if len(self.data) < start + size:
                return
            body, self.data = self.data[start:start + size], self.data[start + size:]
            try:
                self.write({"d": self.direction, "m": json.loads(body.decode("utf-8"))})
            except ValueError as e:
                self.write({"d": self.direction, "bad": f"{e}: {body[:200]!r}"})

    def close(self):
        if self.data:
            self.write({"d": self.direction, "bad": f"{len(self.data)} bytes after the last frame"})


def main():
    log_path, command = sys.argv[1], sys.argv[2:]
    start, lock = time.monotonic(), threading.Lock()
    log = open(log_path, "a", encoding="utf-8", buffering=1)

    def write(record):
        with lock:
            log.write(json.dumps({"t": round(time.monotonic() - start, 6), **record}, ensure_ascii=False) + "\n")

    server = subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=open(log_path + ".err", "ab"))
    write({"pid": server.pid})
    for number in (signal.SIGTERM, signal.SIGINT, signal.SIGHUP):
        signal.signal(number, lambda n, _: (write({"signal": n}), server.send_signal(n)))

    def pump(source, target, direction):
        frames = Frames(direction, write)
        while data := os.read(source, 1 << 16):
            # noted before it is passed on, so that an answer never stands before its question
            frames.feed(data)
            try:
                while data:
                    data = data[os.write(target, data):]
            except OSError:
                break
        frames.close()

    def up():
        pump(0, server.stdin.fileno(), ">")
        try:
            server.stdin.close()
        except OSError:
            pass

    threading.Thread(target=up, daemon=True).start()
    pump(server.stdout.fileno(), 1, "<")
    status = server.wait()
    write({"end": status})
    os._exit(status if status >= 0 else 128 - status)


main()
