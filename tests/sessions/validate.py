#!/usr/bin/env python3
"""Checks a log of tee.py against the protocol.

usage: validate.py LOG…

The types are those of the PyPI package `lsprotocol`, which its authors generate from the meta model published with the
protocol; this walks the messages along them and is strict: a missing, unknown, ill-typed or needlessly null field is a fault.
Faults of the editors are noted, faults of the server count. Beside the types: every request has one answer, with a result or an
error and not both; no answer without a request; directions; the position encoding is one that was offered; the server writes
nothing to standard error and ends with status 0 unless the editor
sends it a signal. Closes with `N passed, N failed`.
"""
import enum
import json
import os
import sys
import typing

import attrs
from lsprotocol import types as T

NAMES = {}


def camel(cls, name):
    """Name of a field on the wire."""
    name = name.rstrip("_")
    head, *rest = name.split("_")
    return head + "".join(part.capitalize() for part in rest)


def fields(cls):
    """Wire name → (type, required, validator, may be null)."""
    if cls not in NAMES:
        hints = typing.get_type_hints(cls, vars(T))
        NAMES[cls] = {
            camel(cls, f.name): (hints[f.name], f.default is attrs.NOTHING or f.name == "kind" and f.default is not None,
                                 f.validator, T.is_special_property(cls, f.name))
            for f in attrs.fields(cls)
        }
    return NAMES[cls]


def none_of(hint):
    return hint is type(None) or typing.get_origin(hint) is typing.Union and type(None) in typing.get_args(hint)


def faults(value, hint, at):
    """What is wrong with a value, as a list of strings."""
    if hint is typing.Any or hint is object:
        return []
    origin, args = typing.get_origin(hint), typing.get_args(hint)
    if origin is typing.Union:
        if typing.Any in args:
            return []
        tried = [faults(value, a, at) for a in args]
        # the alternative that comes nearest says it best
        return [] if [] in tried else min((t for t, a in zip(tried, args) if a is not type(None)), key=len)
    if origin is typing.Literal:
        return [] if value in args else [f"{at}: {value!r} is none of {args}"]
    if origin is tuple:
        if not isinstance(value, list) or len(value) != len(args):
            return [f"{at}: not {len(args)} elements"]
        return [f for i, (v, a) in enumerate(zip(value, args)) for f in faults(v, a, f"{at}[{i}]")]
    if origin is not None and isinstance(origin, type) and issubclass(origin, typing.Mapping | dict):
        if not isinstance(value, dict):
            return [f"{at}: no object"]
        return [f for k, v in value.items() for f in faults(v, args[1], f"{at}.{k}")]
    if origin is not None:
        if not isinstance(value, list):
            return [f"{at}: no array"]
        return [f for i, v in enumerate(value) for f in faults(v, args[0], f"{at}[{i}]")]
    if hint is type(None):
        return [] if value is None else [f"{at}: should be null"]
    if hint is bool:
        return [] if isinstance(value, bool) else [f"{at}: {value!r} is no boolean"]
    if hint is int:
        return [] if isinstance(value, int) and not isinstance(value, bool) else [f"{at}: {value!r} is no integer"]
    if hint is float:
        return [] if isinstance(value, (int, float)) and not isinstance(value, bool) else [f"{at}: {value!r} is no number"]
    if hint is str:
        return [] if isinstance(value, str) else [f"{at}: {value!r} is no string"]
    if isinstance(hint, type) and issubclass(hint, enum.Enum):
        known = [m.value for m in hint]
        return [] if any(value == k and type(value) is type(k) for k in known) else [f"{at}: {value!r} is no {hint.__name__}"]
    if attrs.has(hint):
        return of_class(value, hint, at)
    return [f"{at}: no rule for {hint}"]


def of_class(value, cls, at):
    if not isinstance(value, dict):
        return [f"{at}: no object ({cls.__name__})"]
    known, out = fields(cls), []
    for name in value.keys() - known.keys():
        out.append(f"{at}.{name}: {cls.__name__} has no such field")
    for name, (hint, required, validator, nullable) in known.items():
        if name not in value:
            if required:
                out.append(f"{at}.{name}: missing ({cls.__name__})")
            continue
        v = value[name]
        if v is None and not nullable and typing.Any not in typing.get_args(hint):
            out.append(f"{at}.{name}: null is no value of it, it may only be left out")
            continue
        out += faults(v, hint, f"{at}.{name}")
        if validator and not (v is None and nullable):
            try:
                validator(None, type("Field", (), {"name": name, "type": hint})(), float(v) if hint is float and isinstance(v, int) else v)
            except Exception as e:
                out.append(f"{at}.{name}: {str(e)[:120]}")
    return out


class Log:
    def __init__(self, path):
        self.path, self.passed, self.failed, self.notes = path, 0, 0, {}
        self.pending = {">": {}, "<": {}}
        self.offered, self.seen = None, {}

    def count(self, what, found):
        if found:
            self.failed += 1
            print(f"BAD  {os.path.basename(self.path)}: {what}: " + "; ".join(found[:4]) + (f" and {len(found) - 4} more" if len(found) > 4 else ""))
        else:
            self.passed += 1

    def note(self, what):
        self.notes[what] = self.notes.get(what, 0) + 1

    def message(self, d, m):
        mine = d == "<"
        if m.get("jsonrpc") != "2.0":
            self.count("message", ["jsonrpc is not 2.0"])
        method = m.get("method")
        if method is not None:
            if "id" in m:
                self.pending[d][json.dumps(m["id"])] = method
            if mine and ("result" in m or "error" in m):
                self.count(method, ["a question with an answer in it"])
            if method not in T.METHOD_TO_TYPES:
                # names that begin with $/ may be sent and ignored by either side
                self.count(method, ["not in the protocol"]) if mine and not method.startswith("$/") else self.note(f"custom {method}")
                return
            # a call without parameters may leave them out
            typ = T.METHOD_TO_TYPES[method][0]
            found = faults(m, typ, method) if "params" in m or "params" not in fields(typ) or fields(typ)["params"][1] else []
            if mine:
                direction = T.message_direction(method)
                self.count(method, found + ([] if direction in ("serverToClient", "both") else ["a client's method"]))
                self.seen[method] = self.seen.get(method, 0) + 1
            elif found:
                self.note(f"editor's {method}: {found[0][:100]}")
            if method == "initialize":
                self.offered = m["params"].get("capabilities", {}).get("general", {}).get("positionEncodings", ["utf-16"])
            return
        other = ">" if mine else "<"
        asked = self.pending[other].pop(json.dumps(m.get("id")), None)
        if asked is None:
            self.count("answer", [f"to no question: {str(m)[:80]}"]) if mine else self.note("editor answers what was not asked")
            return
        if ("result" in m) == ("error" in m):
            found = ["needs a result or an error, not both, not neither"]
        elif "error" in m:
            found = faults(m["error"], T.ResponseError, f"{asked} error")
            self.note(f"error {m['error'].get('code')} to {asked}")
        else:
            found = faults(m["result"], typing.get_type_hints(T.METHOD_TO_TYPES[asked][1], vars(T)).get("result", typing.Any), f"{asked} answer") \
                if asked in T.METHOD_TO_TYPES else []
        if mine:
            self.count(f"{asked} answer", found)
            self.seen[asked + " answer"] = self.seen.get(asked + " answer", 0) + 1
            if asked == "initialize" and "result" in m:
                chosen = m["result"]["capabilities"].get("positionEncoding", "utf-16")
                self.count("position encoding", [] if chosen in self.offered else [f"{chosen} was not offered: {self.offered}"])
                self.note(f"positions in {chosen}")
        elif found:
            self.note(f"editor's answer to {asked}: {found[0][:100]}")

    def run(self):
        servers, ended, signals, left = 0, [], [], False
        for line in open(self.path, encoding="utf-8"):
            if not line.endswith("\n"):
                continue  # tee.py was killed while it wrote
            r = json.loads(line)
            if "pid" in r:
                servers += 1
            elif "end" in r:
                ended.append(r["end"])
            elif "signal" in r:
                signals.append(-r["signal"])
                self.note(f"the editor sends the server signal {r['signal']}")
            elif "bad" in r:
                self.count("frame", [r["bad"]]) if r["d"] == "<" else self.note("editor's bad frame: " + r["bad"][:80])
            elif isinstance(r["m"], list):
                self.count("batch", ["the protocol has no batches"]) if r["d"] == "<" else self.note("editor's batch")
            else:
                self.message(r["d"], r["m"])
                left = left or r["d"] == ">" and r["m"].get("method") in ("shutdown", "exit")
        open_ = [m for m in self.pending[">"].values()]
        self.count("questions without an answer", open_)
        bad = [f"status {e}" for e in ended if e not in (0, *signals)]
        if len(ended) < servers:
            # An editor may kill its child as soon as shutdown is answered, before tee.py has seen `exit` (Helix does); tee.py cannot
            # note what comes after that. Whether the process is gone is for the session to see.
            self.note("tee.py was killed after shutdown") if left else bad.append("still running")
        self.count("end of the server", bad)
        err = self.path + ".err"
        text = open(err, encoding="utf-8", errors="replace").read() if os.path.exists(err) else ""
        self.count("standard error", [text.strip()[:300]] if text.strip() else [])
        for n, c in sorted(self.notes.items()):
            print(f"note {os.path.basename(self.path)}: {n}" + (f" ({c} times)" if c > 1 else ""))
        kinds = sum(1 for k in self.seen)
        print(f"     {os.path.basename(self.path)}: {self.passed} checks of {kinds} kinds of messages")
        if not any(k.startswith("initialize") for k in self.seen):
            self.count("log", ["nothing was said"])


def main():
    logs = [Log(p) for p in sys.argv[1:]]
    for log in logs:
        log.run()
    failed = sum(x.failed for x in logs)
    print(f"{sum(x.passed for x in logs)} passed, {failed} failed")
    return failed > 0


if __name__ == "__main__":
    sys.exit(main())
