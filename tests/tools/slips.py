#!/usr/bin/env python3
"""The slip score: of the single slips of the hand that move a result, how many are pointed out.

    slips.py PROGRAM [--stations N] [--most M] [--unseen] [--at-least PERCENT]

PROGRAM is the built `downlead`. The slips are made by rule in each example station and in N generated
ones: the digits of a figure swapped, its point moved, its unit exchanged, its ± lost, the leg of a
duplexer exchanged, a line lost or written twice. Each slip is a file of its own beside the committed
text. It counts where it moves the loss, the ERP or the uncertainty of a band by more than 0.05 dB, or
takes one of these away. It is pointed out when `check` has an error or warning that the text without
the slip has not; `check --history` knows the committed text too.

Standard library only. It prints the table of docs/how-sure.md.
"""

import argparse
import collections
import difflib
import json
import math
import os
import pathlib
import random
import re
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parents[2]
MOVES = 0.05  # dB
EXAMPLES = ["pellgarrow/rev4", "shack/shack", "quick", "hf-multiband", "stacked", "site/hill"]

NUMBER = re.compile(r"(?<![\w.\-\"])(\d+(?:\.\d+)?) (m|ft|dB|dBi|dBd|W|MHz|ohm)\b(?!/)")
UNIT = {"m": "ft", "ft": "m", "dBi": "dBd", "dBd": "dBi", "W": "mW", "MHz": "kHz"}
LEG = {".high": ".low", ".low": ".high"}


def slips(text):
    """All single slips of a text: (kind, text)."""
    out = []
    lines = text.split("\n")
    at = 0
    for n, line in enumerate(lines):
        code = line.split("//")[0]
        if not code.strip() or code.lstrip().startswith(("use ", "source")):
            at += len(line) + 1
            continue
        for m in NUMBER.finditer(code):
            digits, unit = m.group(1), m.group(2)
            here = at + m.start(1), at + m.end(1)
            put = lambda new: text[: here[0]] + new + text[here[1] :]
            for i in range(len(digits) - 1):
                a, b = digits[i], digits[i + 1]
                if a.isdigit() and b.isdigit() and a != b:
                    out.append(("digits swapped", put(digits[:i] + b + a + digits[i + 2 :])))
            if "." in digits:
                i = digits.index(".")
                bare = digits.replace(".", "")
                for j in (i - 1, i + 1):
                    if 0 < j < len(bare):
                        out.append(("point moved", put(bare[:j] + "." + bare[j:])))
            if unit in UNIT:
                start, end = at + m.start(2), at + m.end(2)
                out.append(("other unit", text[:start] + UNIT[unit] + text[end:]))
        for m in re.finditer(r" ± \S+(?: [A-Za-zΩ%°]+)?", code):
            out.append(("uncertainty lost", text[: at + m.start()] + text[at + m.end() :]))
        for m in re.finditer(r"\.(high|low)\b", code):
            leg = LEG[m.group(0)]
            out.append(("other leg", text[: at + m.start()] + leg + text[at + m.end() :]))
        if "{" not in code and "}" not in code:
            out.append(("line lost", "\n".join(lines[:n] + lines[n + 1 :])))
            out.append(("line twice", "\n".join(lines[: n + 1] + lines[n:])))
        at += len(line) + 1
    return [(kind, new) for kind, new in out if new != text]


def generated(rng, n):
    """A station as people have them, from a seed."""
    two = rng.random() < 0.5
    power, run = rng.choice([10, 25, 32, 50, 100]), rng.randrange(12, 80)
    gain = rng.choice([2.15, 4.65, 5.2, 6.5, 8.15])
    cable = rng.choice(["rg-213", "half-inch-foam", "seven-eighths-foam"])
    lines = [
        f"band 2m {{\n    transmit 146.9137 MHz\n    receive 146.3137 MHz\n}}\n",
        f"station site-{n} {{",
        "    joins n-pair",
        f"    transmitter TX1 {power} W ± 5 % carrier, fm",
    ]
    chain = ["TX1"]
    if rng.random() < 0.6:
        lines.append(f"    isolator IS1 {rng.uniform(0.4, 0.8):.2f} dB ± 0.15 dB, isolation 25 dB")
        chain.append("IS1")
    lines.append(f"    jumper J1 {rng.uniform(0.8, 2.4):.1f} m of rg-213")
    chain.append("J1")
    if two:
        loss = rng.uniform(1.2, 1.6)
        lines += [
            "    duplexer DU1 {",
            f"        high {loss:.2f} dB ± 0.15 dB, passes 146.8 MHz to 147.0 MHz, rejects 85 dB at 146.3137 MHz",
            f"        low {loss + 0.05:.2f} dB ± 0.15 dB, passes 146.2 MHz to 146.4 MHz, rejects 85 dB at 146.9137 MHz",
            "    }",
            "    receiver RX1 -119 dBm for 12 dB sinad",
        ]
        chain.append("DU1.high")
    elif rng.random() < 0.5:
        lines.append(f"    filter F1 {rng.uniform(0.3, 0.9):.2f} dB ± 0.1 dB")
        chain.append("F1")
    lines.append(f"    protector SP1 {rng.uniform(0.05, 0.15):.2f} dB ± 0.05 dB")
    lines.append(f"    run M1 {run} m ± 0.5 m of {cable}")
    lines.append(f"    antenna A1 {gain} dBi ± 0.5 dB, swr {rng.uniform(1.1, 1.5):.1f}")
    chain += ["SP1", "M1", "A1"]
    lines += ["", "    chain talk-out on 2m transmit {"] + [f"        {c}" for c in chain]
    lines += [f"        limit {rng.choice([50, 100, 200])} W erp, \"TSO 14-0093 clause 4\"", "    }"]
    if two:
        back = ["A1", "M1", "SP1", "DU1.low", "RX1"]
        lines += ["", "    chain talk-in on 2m receive {"] + [f"        {c}" for c in back] + ["    }"]
    return "\n".join(lines + ["}", ""])


def run(program, folder, *args):
    done = subprocess.run([program, *args, "."], cwd=folder, capture_output=True, text=True)
    if done.returncode not in (0, 1):
        sys.exit(f"{args}: {done.stderr}")
    return json.loads(done.stdout)


def commit(folder):
    day = "2026-01-10T12:00:00+0000"
    env = os.environ | {"GIT_AUTHOR_DATE": day, "GIT_COMMITTER_DATE": day, "GIT_CONFIG_GLOBAL": "/dev/null"}
    who = ["-c", "user.name=QY5BEN", "-c", "user.email=qy5ben@example.org"]
    for args in (["init", "-q"], ["add", "."], ["commit", "-q", "-m", "as it is"]):
        subprocess.run(["git", *who, *args], cwd=folder, env=env, check=True)


def results(report):
    """By file: the figures of each chain and band."""
    out = collections.defaultdict(dict)
    for station in report["stations"]:
        for chain in station["chains"]:
            for band in chain["bands"]:
                key = chain["name"], band["band"], chain["direction"]
                out[chain["file"]][key] = [band.get(k) for k in ("total_loss_db", "erp_w", "uncertainty_db")]
    return out


def moved(old, new):
    for key, before in old.items():
        after = new.get(key)
        if after is None:
            return True
        for i, (a, b) in enumerate(zip(before, after)):
            if a is None:
                continue
            if b is None:
                return True
            if i == 1:
                a, b = 10 * math.log10(max(a, 1e-12)), 10 * math.log10(max(b, 1e-12))
            if abs(a - b) > MOVES:
                return True
    return False


def findings(check, beyond_notes=("error", "warning")):
    out = collections.defaultdict(collections.Counter)
    for d in check["diagnostics"]:
        if d["severity"] in beyond_notes and "file" in d:
            out[d["file"]][d["code"], re.sub(r"s\d{4}", "", d["message"])] += 1
    return out


def score(program, name, text, others, most, rng, show):
    """(kind, pointed out without history, with history) of each slip that moves a result."""
    all_slips = slips(text)
    if len(all_slips) > most:
        all_slips = rng.sample(all_slips, most)
    with tempfile.TemporaryDirectory() as top:
        top = pathlib.Path(top)
        for path, content in others.items():
            (top / path).parent.mkdir(parents=True, exist_ok=True)
            (top / path).write_text(content)
        home = top / pathlib.Path(name).parent
        home.mkdir(parents=True, exist_ok=True)
        paths = [home / f"s{i:04}.downlead" for i in range(len(all_slips) + 1)]
        for p in paths:
            p.write_text(text)
        commit(top)
        for p, (_, new) in zip(paths[1:], all_slips):
            p.write_text(new)
        figures = results(run(program, top, "report", "--format", "json"))
        plain = findings(run(program, top, "check", "--format", "json"))
        history = findings(run(program, top, "check", "--history", "--format", "json"))
    shown = [str(p.relative_to(top)) for p in paths]
    base, out = shown[0], []
    texts = {file: new for file, (_, new) in zip(shown[1:], all_slips)}
    for file, (kind, _) in zip(shown[1:], all_slips):
        if not moved(figures[base], figures[file]):
            continue
        new = lambda f: bool(f[file] - f[base])
        seen = new(plain), new(plain) or new(history)
        if show and not seen[1]:
            changed = [x for x in difflib.ndiff(text.split("\n"), texts[file].split("\n")) if x[0] in "+-"]
            print(f"{name}: {kind}: {' '.join(changed)}")
        out.append((kind, *seen))
    return out


def main():
    args = argparse.ArgumentParser()
    args.add_argument("program")
    args.add_argument("--stations", type=int, default=20)
    args.add_argument("--most", type=int, default=10_000)
    args.add_argument("--unseen", action="store_true", help="print each slip that is not pointed out")
    args.add_argument("--at-least", type=float, default=0, help="exit 1 below so many percent with history")
    args = args.parse_args()
    program, rng = str(pathlib.Path(args.program).resolve()), random.Random(7)
    texts = []
    for name in EXAMPLES:
        path = ROOT / "examples" / f"{name}.downlead"
        others = {}
        for sub in ("thrennock", "networks"):
            for p in (ROOT / "examples" / sub).glob("*"):
                others[f"{sub}/{p.name}"] = p.read_text()
        texts.append((f"{name}.downlead", path.read_text(), others))
    texts += [(f"made/{n}.downlead", generated(rng, n), {}) for n in range(args.stations)]
    found = []
    for name, text, others in texts:
        one = score(program, name, text, others, args.most, rng, args.unseen)
        found += one
        print(f"{name}: {sum(x[2] for x in one)} of {len(one)}", file=sys.stderr)
    print("| slip | move a result | pointed out | with history |")
    print("|---|---:|---:|---:|")
    kinds = sorted({x[0] for x in found})
    for kind in [*kinds, None]:
        mine = [x for x in found if kind in (None, x[0])]
        plain, history = sum(x[1] for x in mine), sum(x[2] for x in mine)
        share = lambda n: f"{n} ({100 * n / max(len(mine), 1):.0f} %)"
        print(f"| {kind or '**all**'} | {len(mine)} | {share(plain)} | {share(history)} |")
    if 100 * history < args.at_least * len(found):
        sys.exit(1)


main()
