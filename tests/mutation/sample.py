#!/usr/bin/env python3
"""Runs the tests of the physics and evaluator crates against a sample of mutants.

    sample.py --seed N --count N       draw, build, run, write the results
    sample.py --seed N --count N --retry
                                       run only what was not caught before, after tests were added

Needs `cargo-mutants` (https://mutants.rs), which lists the mutants. See README.md.

A mutant of its own build takes half a minute. So all mutants of the sample are built at once: the
body of a function gets, before its first statement, one branch for each of its mutants, which holds
the mutated body and is taken when the environment variable MUTANT says so. One run of each test
without a mutant records which mutants it reaches; a mutant is then run against those tests only,
the fastest first, until one fails. What cannot be switched (a `const fn`, a function that returns
`impl Trait`) is built alone.
"""

import argparse
import collections
import concurrent.futures
import hashlib
import json
import os
import pathlib
import random
import re
import shutil
import subprocess
import sys
import time

ROOT = pathlib.Path(__file__).resolve().parents[2]
WORK = ROOT / "target" / "mutation"
TREE = WORK / "tree"
# seconds: tests that take longer than FAST run last, for what no other test catches; one is stopped after
# SLOW without a mutant, after PATIENCE with one
FAST, SLOW, PATIENCE = 5, 40, 600
CRATES = ["downlead-physics", "downlead-eval"]

SWITCH = """
pub(crate) mod mutation_switch {
    use std::sync::OnceLock;
    use std::sync::atomic::{AtomicBool, AtomicU32, Ordering::Relaxed};
    static ACTIVE: AtomicU32 = AtomicU32::new(u32::MAX);
    static SEEN: [AtomicBool; %d] = [const { AtomicBool::new(false) }; %d];
    static REACH: OnceLock<Option<String>> = OnceLock::new();
    #[inline]
    pub(crate) fn on(k: u32) -> bool {
        let active = ACTIVE.load(Relaxed);
        if active == k { return true; }
        if SEEN[k as usize].load(Relaxed) { return false; }
        first(k)
    }
    #[cold]
    #[inline(never)]
    fn first(k: u32) -> bool {
        SEEN[k as usize].store(true, Relaxed);
        if ACTIVE.load(Relaxed) == u32::MAX {
            let said = std::env::var("MUTANT").ok().and_then(|x| x.parse().ok());
            ACTIVE.store(said.unwrap_or(u32::MAX - 1), Relaxed);
        }
        if let Some(path) = REACH.get_or_init(|| std::env::var("MUTANT_REACH").ok()) {
            use std::io::Write as _;
            let file = std::fs::OpenOptions::new().append(true).create(true).open(path);
            if let Ok(mut file) = file { let _ = file.write_all(format!("{k}\\n").as_bytes()); }
        }
        ACTIVE.load(Relaxed) == k
    }
}
"""


def say(*words):
    print(time.strftime("%H:%M:%S"), *words, flush=True)


def run(args, **more):
    return subprocess.run(args, cwd=TREE, text=True, capture_output=True, **more)


def environment(**more):
    env = dict(os.environ, CARGO_TARGET_DIR=str(WORK / "target"), INSTA_UPDATE="no", CI="1")
    env.update(more)
    return env


def copy_tree():
    """What git tracks, copied without touching files that are the same (mtimes drive cargo)."""
    TREE.mkdir(parents=True, exist_ok=True)
    listed = subprocess.run(
        ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"],
        cwd=ROOT, capture_output=True, text=True, check=True,
    ).stdout.split("\0")
    keep = {x for x in listed if x and (ROOT / x).is_file()}
    for name in keep:
        write(TREE / name, (ROOT / name).read_bytes())
    for old in TREE.rglob("*"):
        if old.is_file() and str(old.relative_to(TREE)) not in keep:
            old.unlink()


def write(path, data):
    if not path.exists() or path.read_bytes() != data:
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(data)


# ---- drawing

def draw(seed, count):
    """A sample of `count`, each crate with the share it has of all mutants."""
    out = subprocess.run(
        [os.environ.get("CARGO_MUTANTS", "cargo-mutants"), "mutants", "--list", "--json"]
        + [x for c in CRATES for x in ("-p", c)],
        cwd=ROOT, capture_output=True, text=True, check=True,
    )
    mutants = sorted(json.loads(out.stdout), key=lambda m: m["name"])
    rng, drawn = random.Random(seed), []
    for crate in CRATES:
        of = [m for m in mutants if m["package"] == crate]
        drawn += rng.sample(of, round(count * len(of) / len(mutants)))
    return [
        {k: m[k] for k in ("name", "file", "package", "span", "replacement", "function", "genre")}
        | {"text": text_of((ROOT / m["file"]).read_text(), m), "all": len(mutants)}
        for m in drawn
    ]


# ---- the text of a mutant

def offset(text, at):
    """The place in `text` of a line and a column, both from 1."""
    lines = text.split("\n")
    return sum(len(x) + 1 for x in lines[: at["line"] - 1]) + at["column"] - 1


def text_of(text, mutant):
    """What stands where the mutant is, to see later whether the file has moved under it."""
    span = (mutant["function"] or mutant)["span"]
    return text[offset(text, span["start"]) : offset(text, span["end"])]


def found_again(text, mutant):
    """The mutant where its function is now; None if the function has changed."""
    if text_of(text, mutant) == mutant["text"]:
        return mutant
    if text.count(mutant["text"]) != 1:
        return None
    was = (mutant["function"] or mutant)["span"]["start"]["line"]
    down = text[: text.index(mutant["text"])].count("\n") + 1 - was
    moved = json.loads(json.dumps(mutant))
    for span in [moved["span"]] + ([moved["function"]["span"]] if moved["function"] else []):
        for end in span.values():
            end["line"] += down
    return moved if text_of(text, moved) == mutant["text"] else None


def body_start(text, start):
    """The opening brace of the body of the function that begins at `start`."""
    skip = re.compile(
        r'//[^\n]*|/\*.*?\*/|#\[[^\]]*\]|"(?:\\.|[^"\\])*"|\'(?:\\.|[^\'\\])\'', re.S
    )
    at = start
    while text[at] != "{":
        hit = skip.match(text, at)
        at = hit.end() if hit else at + 1
    return at


def mutated(text, mutant):
    a, b = offset(text, mutant["span"]["start"]), offset(text, mutant["span"]["end"])
    return text[:a] + mutant["replacement"] + " " + text[b:], len(mutant["replacement"]) + 1 - (b - a)


def with_switches(text, mutants):
    """`text` with a branch for each of `mutants` (number, mutant) at the start of its function."""
    inserts = collections.defaultdict(str)
    for k, m in mutants:
        span = m["function"]["span"]
        start, end = offset(text, span["start"]), offset(text, span["end"])
        brace = body_start(text, start)
        changed, longer = mutated(text, m)
        body = changed[brace + 1 : end - 1 + longer]
        inserts[brace + 1] += (
            f"\n/*begin {k}*/ if crate::mutation_switch::on({k}) {{ return {{{body}}}; }} /*end {k}*/\n"
        )
    for at in sorted(inserts, reverse=True):
        text = text[:at] + inserts[at] + text[at:]
    return text


def originals():
    return {p: (ROOT / p).read_text() for p in
            (str(x.relative_to(ROOT)) for c in ("physics", "eval")
             for x in (ROOT / "crates" / c / "src").rglob("*.rs"))}


def write_sources(texts, mutants):
    """Writes the tree with the switches of `mutants`: {number: mutant}."""
    of = collections.defaultdict(list)
    for k, m in mutants.items():
        of[m["file"]].append((k, m))
    size = max(mutants, default=0) + 1
    for path, text in texts.items():
        if path in of:
            text = with_switches(text, of[path])
        # a function with many bodies is not to be copied into every caller
        text = text.replace("#[inline(always)]", "#[inline]")
        if path in ("crates/physics/src/lib.rs", "crates/eval/src/lib.rs") and mutants:
            text += SWITCH % (size, size)
        write(TREE / path, text.encode())


# ---- building

CHECK, UNIT_TESTS, TESTS = ["check", "--lib"], ["test", "--no-run", "--lib"], ["test", "--no-run", "--tests"]


def build(packages, what=TESTS):
    """Test programs of `packages` as (crate, name, path, folder), or the compiler's errors."""
    out = run(
        ["cargo"] + what
        # mutated bodies of generic code take long to optimise
        + ["--config", "profile.dev.package.downlead-physics.opt-level=1"]
        + ["--message-format=json"] + [x for p in packages for x in ("-p", p)],
        env=environment(),
    )
    programs, errors = [], []
    for line in out.stdout.splitlines():
        m = json.loads(line)
        if m["reason"] == "compiler-artifact" and m.get("executable") and m["profile"]["test"]:
            programs.append((m["package_id"], m["target"]["name"], m["executable"],
                             str(pathlib.Path(m["manifest_path"]).parent)))
        if m["reason"] == "compiler-message" and m["message"]["level"] == "error":
            errors.append(m["message"])
    if out.returncode and not errors:
        sys.exit(out.stderr)
    return programs, errors


def spans(message):
    yield from message["spans"]
    for child in message["children"]:
        yield from spans(child)


def blamed(errors, mutants):
    """The mutants whose branches the compiler refuses."""
    ranges = collections.defaultdict(list)
    for path in {m["file"] for m in mutants.values()}:
        begun = {}
        for i, line in enumerate((TREE / path).read_text().split("\n"), 1):
            for k in re.findall(r"/\*begin (\d+)\*/", line):
                begun[k] = i
            for k in re.findall(r"/\*end (\d+)\*/", line):
                ranges[path].append((begun[k], i, int(k)))
    out = set()
    for e in errors:
        # the place of the error first: only if that is no branch, the places it refers to
        places = list(spans(e))
        for chosen in ([s for s in places if s["is_primary"]], places):
            found = {k for s in chosen for a, b, k in ranges.get(s["file_name"], ())
                     if a <= s["line_start"] <= b}
            if found:
                out |= found
                break
    return out


def can_switch(text, mutant):
    """False where a second body has another type or a call is not allowed."""
    if not mutant["function"]:
        return False
    start = offset(text, mutant["function"]["span"]["start"])
    head = text[start : body_start(text, start)]
    return not re.search(r"\bconst fn\b|->\s*impl\b", head)


def build_switched(texts, mutants):
    """The test programs with all mutants that can be switched, and the numbers of the others."""
    here = {k: m for k, m in mutants.items() if can_switch(texts[m["file"]], m)}
    while True:
        write_sources(texts, here)
        _, errors = build(CRATES, CHECK)
        if not errors:
            programs, errors = build(CRATES)
        if not errors:
            return programs, here
        wrong = blamed(errors, here)
        say("cannot be switched:", sorted(wrong))
        if not wrong:
            sys.exit("\n".join(e["rendered"] for e in errors[:5]))
        here = {k: m for k, m in here.items() if k not in wrong}


# ---- running

def one(test, env, limit):
    """Runs one test by itself: whether it passed in time, and the seconds."""
    program, cwd, name = test
    begin = time.monotonic()
    try:
        done = subprocess.run([program, "--exact", name, "--test-threads=1", "-q"], cwd=cwd, env=env,
                              timeout=limit, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        ok = done.returncode == 0
    except subprocess.TimeoutExpired:
        ok = False
    return ok, time.monotonic() - begin


def tests_of(programs):
    out = []
    for _, _, path, cwd in programs:
        listed = subprocess.run([path, "--list", "--format=terse"], cwd=cwd, text=True,
                                capture_output=True, check=True).stdout
        ignored = subprocess.run([path, "--list", "--format=terse", "--ignored"], cwd=cwd, text=True,
                                 capture_output=True, check=True).stdout
        names = [x.removesuffix(": test") for x in listed.splitlines() if x.endswith(": test")]
        out += [(path, cwd, n) for n in names if f"{n}: test" not in ignored]
    return out


def reached(tests, pool, cache_path, numbers):
    """For each test: its seconds and the mutants it reaches. A test that fails is left out; one that
    takes longer than SLOW is stopped, and comes with None for its seconds."""
    cache = json.loads(cache_path.read_text()) if cache_path.exists() else {}
    digest = {p: hashlib.sha256(pathlib.Path(p).read_bytes()).hexdigest() for p in {t[0] for t in tests}}
    notes = WORK / "reach"
    shutil.rmtree(notes, ignore_errors=True)
    notes.mkdir(parents=True)

    def look(i):
        test = tests[i]
        key = f"{digest[test[0]]} {test[2]}"
        if key not in cache:
            env = environment(MUTANT_REACH=str(notes / str(i)))
            env.pop("MUTANT", None)
            ok, seconds = one(test, env, SLOW)
            path = notes / str(i)
            hit = sorted({int(x) for x in path.read_text().split()}) if path.exists() else []
            cache[key] = [ok or seconds >= SLOW, None if seconds >= SLOW else seconds, hit]
        return cache[key]

    looked = list(pool.map(look, range(len(tests))))
    cache_path.write_text(json.dumps({f"{digest[t[0]]} {t[2]}": x for t, x in zip(tests, looked)}))
    for t, (ok, _, _) in zip(tests, looked):
        if not ok:
            say("fails without a mutant, left out:", label(t))
    return [(t, s, set(hit) & numbers) for t, (ok, s, hit) in zip(tests, looked) if ok]


def label(test):
    program = re.sub(r"-[0-9a-f]+$", "", pathlib.Path(test[0]).name)
    return f"{program}: {test[2]}"


def fate(k, looked, slow):
    """The test that fails under mutant `k`, or None, and how many reach it."""
    mine = [x for x in looked if k in x[2]]
    for test, seconds, _ in sorted((x for x in mine if is_slow(x) == slow), key=lambda x: x[1] or SLOW):
        limit = PATIENCE if seconds is None else 20 + 10 * seconds
        ok, took = one(test, environment(MUTANT=str(k)), limit)
        # of a test that was stopped without a mutant only a failure counts
        if not ok and (seconds is not None or took < limit):
            # twice, so that no test that depends on the load of the machine counts
            ok, _ = one(test, environment(MUTANT=str(k)), limit)
            if not ok:
                return label(test), len(mine)
    return None, len(mine)


def is_slow(looked):
    return looked[1] is None or looked[1] > FAST


def alone(mutant, texts):
    """A mutant that cannot be switched, built and run by itself: what becomes of it, and by what test."""
    write_sources(texts, {})
    write(TREE / mutant["file"], mutated(texts[mutant["file"]], mutant)[0].encode())
    _, errors = build(CRATES, CHECK)
    if errors:
        return "unviable", errors[0]["message"]
    for what in (UNIT_TESTS, TESTS):
        programs, errors = build([mutant["package"]], what)
        if errors:
            sys.exit("\n".join(e["rendered"] for e in errors[:5]))
        for test in tests_of(programs):
            ok, _ = one(test, environment(), PATIENCE)
            if not ok:
                return "caught", label(test)
    return "missed", None


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--seed", type=int, required=True)
    parser.add_argument("--count", type=int, required=True)
    parser.add_argument("--retry", action="store_true")
    parser.add_argument("--jobs", type=int, default=2)
    given = parser.parse_args()
    WORK.mkdir(parents=True, exist_ok=True)
    kept = WORK / f"{given.seed}-{given.count}.json"
    copy_tree()
    texts = originals()
    if given.retry:
        results = json.loads(kept.read_text())
    else:
        results = [{"mutant": m, "fate": None, "by": None} for m in draw(given.seed, given.count)]
    every = {k: found_again(texts[r["mutant"]["file"]], r["mutant"])
             for k, r in enumerate(results) if r["fate"] != "unviable"}
    todo = {k for k, r in enumerate(results) if r["fate"] in (None, "missed")}
    changed = [results[k]["mutant"]["name"] for k, m in every.items() if m is None]
    if changed:
        say("the function has changed, left as they are:", ", ".join(changed))
        every = {k: m for k, m in every.items() if m}
        todo &= set(every)
    say(len(results), "drawn,", len(todo), "to run")
    # all of them again, so that programs whose tests are the same stay the same
    programs, switched = build_switched(texts, every)
    say("built", len(programs), "test programs")
    with concurrent.futures.ThreadPoolExecutor(given.jobs) as pool:
        looked = reached(tests_of(programs), pool, WORK / f"reach-{given.seed}.json", set(switched))
        say(len(looked), "tests run without a mutant")

        def judge(k, slow):
            by, tests = fate(k, looked, slow)
            results[k].update(fate="caught" if by else "missed", by=by, tests=tests)
            if not by and slow:
                say("missed", f"({tests} tests reach it)", results[k]["mutant"]["name"])
            kept.write_text(json.dumps(results, indent=1))

        todo_here = sorted(todo & set(switched))
        list(pool.map(lambda k: judge(k, slow=False), todo_here))
        left = [k for k in todo_here if not results[k]["by"]]
        say(len(left), "left for the slow tests")
        list(pool.map(lambda k: judge(k, slow=True), left))
    for k in sorted(todo - set(switched)):
        what, by = alone(every[k], texts)
        results[k].update(fate=what, by=by)
        say(what, every[k]["name"], by or "")
    kept.write_text(json.dumps(results, indent=1))
    for crate in CRATES:
        fates = collections.Counter(r["fate"] for r in results if r["mutant"]["package"] == crate)
        viable = fates["caught"] + fates["missed"]
        say(crate, dict(fates), f"caught {fates['caught']} of {viable} viable")


if __name__ == "__main__":
    main()
