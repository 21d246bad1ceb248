#!/usr/bin/env python3
"""The validator finds every fault that is planted in a sound log, and nothing in the sound one."""
import copy
import io
import json
import os
import sys
import tempfile
from contextlib import redirect_stdout

from validate import Log


def sound():
    """A short talk, as tee.py writes it."""
    at = {"start": {"line": 1, "character": 0}, "end": {"line": 1, "character": 4}}
    uri = "file:///a.downlead"
    ask = lambda i, method, params: {"d": ">", "m": {"jsonrpc": "2.0", "id": i, "method": method, "params": params}}
    answer = lambda i, result: {"d": "<", "m": {"jsonrpc": "2.0", "id": i, "result": result}}
    doc = {"textDocument": {"uri": uri}}
    return [
        {"pid": 1},
        ask(1, "initialize", {"processId": None, "rootUri": None, "capabilities": {"general": {"positionEncodings": ["utf-8", "utf-16"]}}}),
        answer(1, {"capabilities": {"positionEncoding": "utf-8", "hoverProvider": True, "inlayHintProvider": {"resolveProvider": False}}}),
        {"d": ">", "m": {"jsonrpc": "2.0", "method": "initialized", "params": {}}},
        {"d": "<", "m": {"jsonrpc": "2.0", "method": "textDocument/publishDiagnostics",
                         "params": {"uri": uri, "version": 1, "diagnostics": [{"range": at, "severity": 1, "code": "x", "message": "m"}]}}},
        ask(2, "textDocument/inlayHint", {**doc, "range": at}),
        answer(2, [{"position": at["end"], "label": [{"value": "12.8 W"}], "paddingLeft": True}]),
        ask(3, "textDocument/hover", {**doc, "position": at["start"]}),
        answer(3, {"contents": {"kind": "markdown", "value": "v"}, "range": at}),
        {"d": "<", "m": {"jsonrpc": "2.0", "id": 9, "method": "workspace/inlayHint/refresh"}},
        {"d": ">", "m": {"jsonrpc": "2.0", "id": 9, "result": None}},
        ask(4, "textDocument/foldingRange", doc),
        answer(4, [{"startLine": 1, "endLine": 2, "kind": "region"}]),
        {"d": ">", "m": {"jsonrpc": "2.0", "id": 5, "method": "shutdown"}},
        answer(5, None),
        {"d": ">", "m": {"jsonrpc": "2.0", "method": "exit"}},
        {"end": 0},
    ]


def verdict(records, err=""):
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "log")
        with open(path, "w", encoding="utf-8") as f:
            f.writelines(json.dumps(r) + "\n" for r in records)
        with open(path + ".err", "w", encoding="utf-8") as f:
            f.write(err)
        log = Log(path)
        with redirect_stdout(io.StringIO()):
            log.run()
        return log.failed


def result(i):
    return lambda r: next(x["m"] for x in r if x.get("d") == "<" and x["m"].get("id") == i and "method" not in x["m"])


def diagnostics(r):
    return next(x["m"]["params"] for x in r if x.get("d") == "<" and x.get("m", {}).get("method") == "textDocument/publishDiagnostics")


PLANTED = {
    "a position is missing": lambda r: result(2)(r)["result"][0].pop("position"),
    "a field is misspelt": lambda r: result(2)(r)["result"][0].__setitem__("padingLeft", True),
    "a line is negative": lambda r: result(2)(r)["result"][0]["position"].__setitem__("line", -1),
    "a line is a fraction": lambda r: result(2)(r)["result"][0]["position"].__setitem__("line", 1.5),
    "a severity is a word": lambda r: diagnostics(r)["diagnostics"][0].__setitem__("severity", "Error"),
    "a severity is out of range": lambda r: diagnostics(r)["diagnostics"][0].__setitem__("severity", 9),
    "a boolean is a string": lambda r: result(2)(r)["result"][0].__setitem__("paddingLeft", "yes"),
    "null where a field may be left out": lambda r: result(2)(r)["result"][0].__setitem__("kind", None),
    "a label part is a string": lambda r: result(2)(r)["result"][0].__setitem__("label", ["12.8 W"]),
    "markup of an unknown kind": lambda r: result(3)(r)["result"]["contents"].__setitem__("kind", "html"),
    "an answer that is a list": lambda r: result(3)(r).__setitem__("result", []),
    "result and error": lambda r: result(3)(r).__setitem__("error", {"code": 1, "message": "m"}),
    "neither result nor error": lambda r: result(3)(r).pop("result"),
    "an error without a message": lambda r: (result(3)(r).pop("result"), result(3)(r).__setitem__("error", {"code": 1})),
    "an answer to no question": lambda r: result(3)(r).__setitem__("id", 77),
    "an answer given twice": lambda r: r.insert(9, copy.deepcopy(r[8])),
    "a question without an answer": lambda r: r.remove(next(x for x in r if x.get("m") is result(4)(r))),
    "a client's method": lambda r: r.insert(8, {"d": "<", "m": {"jsonrpc": "2.0", "method": "textDocument/didSave", "params": {"textDocument": {"uri": "a"}}}}),
    "a method that is not in the protocol": lambda r: r.insert(8, {"d": "<", "m": {"jsonrpc": "2.0", "method": "downlead/hello", "params": {}}}),
    "an encoding that was not offered": lambda r: result(1)(r)["result"]["capabilities"].__setitem__("positionEncoding", "utf-32"),
    "another version of the envelope": lambda r: result(4)(r).__setitem__("jsonrpc", "1.0"),
    "a bad frame": lambda r: r.insert(4, {"d": "<", "bad": "no length"}),
    "a bad end": lambda r: r[-1].__setitem__("end", 101),
    "no end": lambda r: [r.pop() for _ in range(4)],
}
# what an editor may do to tee.py once `shutdown` was asked; the process is looked for by the session
SOUND = {
    "killed after exit": lambda r: r.pop(),
    "killed before exit": lambda r: (r.pop(), r.pop()),
}


def main():
    bad = verdict(sound()) != 0
    for what, cut in SOUND.items():
        records = sound()
        cut(records)
        if verdict(records) != 0:
            bad = True
            print("FAIL not sound:", what)
    print("FAIL" if bad else "ok  ", "a sound log is sound")
    failed = int(bad)
    missed = []
    for what, plant in PLANTED.items():
        records = sound()
        plant(records)
        if verdict(records) == 0:
            missed.append(what)
    if verdict(sound(), "thread panicked") == 0:
        missed.append("words on standard error")
    for what in missed:
        print("FAIL not found:", what)
    print("FAIL" if missed else "ok  ", f"{len(PLANTED) + 1 - len(missed)} of {len(PLANTED) + 1} planted faults are found")
    return failed + len(missed) > 0


sys.exit(main())
