#!/usr/bin/env python3
"""Checks every message of the server in recorded conversations against the protocol's types.

usage: metamodel.py FOLDER     (written by the tests with DOWNLEAD_LSP_LOG=FOLDER)
needs: pip install lsprotocol==2025.0.0, whose types are generated from the protocol's published
meta model. A message is taken in and given out again: a missing or ill-typed field cannot be taken
in, an unknown one does not come out. Exit status 1 if a message fails.
"""
import json
import pathlib
import sys

from lsprotocol import converters
from lsprotocol import types as T

CONVERTER = converters.get_converter()
OWN = {"downlead/virtualDocumentChanged"}


def bare(x):
    if isinstance(x, dict):
        return {k: bare(v) for k, v in x.items() if v is not None}
    return [bare(v) for v in x] if isinstance(x, list) else x


def lost(a, b, at=""):
    if isinstance(a, dict):
        if not isinstance(b, dict):
            return [at]
        return [f for k, v in a.items() for f in ([f"{at}.{k}"] if k not in b else lost(v, b[k], f"{at}.{k}"))]
    if isinstance(a, list):
        if not isinstance(b, list) or len(a) != len(b):
            return [at]
        return [f for i, v in enumerate(a) for f in lost(v, b[i], f"{at}[{i}]")]
    return [] if a == b else [at]


def check(message, kind):
    try:
        back = CONVERTER.unstructure(CONVERTER.structure(message, kind))
        # what a client may extend freely
        faults = [f for f in lost(bare(message), bare(json.loads(json.dumps(back)))) if ".experimental" not in f and ".data" not in f]
    except Exception as e:  # the converter's errors are of many kinds
        faults = [f"{type(e).__name__}: {str(e)[:200]}"] + [str(x)[:160] for x in getattr(e, "exceptions", [])[:4]]
    return faults


def main(folder):
    good = bad = errors = 0
    unknown = set()
    for path in sorted(pathlib.Path(folder).glob("*.jsonl")):
        asked = {}
        for line in path.open(encoding="utf-8"):
            if not line.strip():
                continue
            entry = json.loads(line)
            way, m = entry["d"], entry["m"]
            if way == ">":
                if "id" in m and "method" in m:
                    asked[str(m["id"])] = m["method"]
                continue
            if "method" in m:
                kind, what = T.METHOD_TO_TYPES.get(m["method"], [None])[0], m["method"]
                if kind is None and m["method"] not in OWN:
                    unknown.add(m["method"])
            elif "error" in m:
                kind, what = T.ResponseErrorMessage, "error to " + str(asked.get(str(m.get("id"))))
                errors += 1
            else:
                method = asked.get(str(m.get("id")))
                kind, what = T.METHOD_TO_TYPES.get(method, [None, None])[1], f"answer to {method}"
            if kind is None:
                continue
            faults = check(m, kind)
            if faults:
                bad += 1
                print(f"BAD  {path.name}: {what}: {faults[:5]}")
            else:
                good += 1
    for method in sorted(unknown):
        print("unknown method", method)
    print(f"{good} passed ({errors} of them errors), {bad} failed")
    return 1 if bad or unknown or not good else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
