"""Touchstone files and conversions of parameters, checked with scikit-rf (a general network library).

    python3 tests/reference/touchstone.py           writes what is described below
    python3 tests/reference/touchstone.py --check   recomputes all and compares with what is committed

In crates/touchstone/tests/data:

* theirs/       files scikit-rf wrote, and hand-made ones it reads (the texts are in this script)
* reference.json  what scikit-rf reads from theirs/; random networks; conversions of random matrices
* ours/         files our writer made of those networks (a Rust test fails when the writer makes
                others; UPDATE=1 renews them). Here scikit-rf reads them again.
"""

import json
import pathlib
import sys
import tempfile
import warnings

import numpy as np
import skrf

HERE = pathlib.Path(__file__).parent
DATA = HERE.parents[1] / "crates" / "touchstone" / "tests" / "data"
SCALE = {"hz": 1.0, "khz": 1e3, "mhz": 1e6, "ghz": 1e9}

# Texts by hand which scikit-rf reads: name, text.
BY_HAND = {
    "order_12_21.ts": (
        "[Version] 2.0\n# MHz S RI R 50\n[Number of Ports] 2\n[Two-Port Data Order] 12_21\n"
        "[Number of Frequencies] 2\n[Network Data]\n"
        "100 .1 .01 .9 .02 .2 .03 .3 .04\n200 .11 .01 .8 .02 .21 .03 .31 .04\n[End]\n"
    ),
    "lower.ts": (
        "[Version] 2.0\n# GHz S MA R 50\n[Number of Ports] 4\n[Number of Frequencies] 2\n"
        "[Reference] 50 75\n 10 100\n[Matrix Format] Lower\n[Network Data]\n"
        "1 .5 10\n.1 -20 .4 30\n.2 -40 .15 50 .3 -60\n.12 7 .13 8 .14 9 .35 -10 ! four\n"
        "2 .51 10\n.11 -20 .41 30\n.21 -40 .16 50 .31 -60\n.121 7 .131 8 .141 9 .351 -10\n[End]\n"
    ),
    "upper.ts": (
        "! first\n[Version] 2.0\n#\tHz S DB R 75\n"
        "[Number of Ports] 3\n[Number of Frequencies] 1\n[Matrix Format] Upper\n[Network Data]\n"
        "1000 -10 10 -20 20 -30 30\n-11 -170 -21 170\n-12 -90\n[End]\n"
    ),
    "bare.s1p": "#\n0.145 0.2 90\n0.146 0.25 91\n",
    "comments.s2p": (
        "! a\n\n# kHz S DB R 75 ! after\n\n100\t-10 5\t-1 6 -2 7 -20 8 ! S\n! between\n"
        "  200 -11 15 -1.1 16 -2.1 17 -21 18\n"
    ),
    "noise.s2p": (
        "# MHz S RI R 50\n100 .1 0 .9 0 .2 0 .3 0\n200 .1 0 .8 0 .2 0 .3 0\n"
        "50 0.7 0.64 69 0.38\n150 0.8 0.6 70 0.4\n"
    ),
    "normalised.s3p": (
        "# GHz Z RI R 75\n1 1 .1 .2 .3 .1 .1\n.2 .3 1.5 -.2 .3 .4\n.1 .1 .3 .4 2 .5\n"
    ),
}


def pairs(z):
    """A complex array as a flat list of real and imaginary parts."""
    z = np.ascontiguousarray(z, dtype=complex).ravel()
    return [float(x) for x in z.view(float)]


def complex_array(flat, shape):
    return np.array(flat, dtype=float).view(complex).reshape(shape)


def random_network(rng, ports, points, z0):
    """Passive, not reciprocal, with a few awkward numbers."""
    s = rng.normal(size=(points, ports, ports)) + 1j * rng.normal(size=(points, ports, ports))
    s /= 1.05 * np.linalg.svd(s, compute_uv=False).max(axis=1)[:, None, None]
    f = np.cumsum(10 ** rng.uniform(4, 8, points)).round(3)
    return dict(ports=ports, f_hz=f.tolist(), s=pairs(s), z0=[float(z) for z in z0])


def networks(rng):
    out = {}
    for ports in (1, 2, 3, 4, 5, 9):
        out[f"n{ports}"] = random_network(rng, ports, 4, [50.0] * ports)
    out["unequal2"] = random_network(rng, 2, 3, [50.0, 75.0])
    out["unequal3"] = random_network(rng, 3, 3, [50.0, 12.5, 93.0])
    return out


def as_skrf(spec, unit="hz"):
    n = spec["ports"]
    f = np.array(spec["f_hz"])
    network = skrf.Network(
        frequency=skrf.Frequency.from_f(f / SCALE[unit], unit=unit),
        s=complex_array(spec["s"], (len(f), n, n)),
        z0=np.tile(np.array(spec["z0"]), (len(f), 1)),
    )
    return network


def written_by_skrf(nets):
    """Files of scikit-rf's writer: name to text."""
    out = {}
    forms = ["ri", "ma", "db", "ri", "ma", "db"]
    units = ["hz", "khz", "mhz", "ghz", "mhz", "ghz"]
    for (name, spec), form, unit in zip(list(nets.items())[:6], forms, units):
        text = as_skrf(spec, unit).write_touchstone("x", form=form, return_string=True)
        out[f"{name}_{form}.s{spec['ports']}p"] = text
    for parameter in "ZYHG":
        spec = nets["n2"]
        text = as_skrf(spec).write_touchstone(
            "x", form="ri", parameter=parameter, version="2.0", return_string=True
        )
        out[f"n2_{parameter.lower()}.ts"] = text
    text = as_skrf(nets["n3"]).write_touchstone("x", form="ma", parameter="Z", return_string=True)
    out["n3_z.s3p"] = text
    for name in ("unequal2", "unequal3", "n5"):
        text = as_skrf(nets[name], "mhz").write_touchstone("x", form="ri", version="2.0", return_string=True)
        out[f"{name}.ts"] = text
    # scikit-rf says which version of it wrote the file: not of interest here
    return {k: "".join(l for l in v.splitlines(True) if "Created with" not in l) for k, v in out.items()}


def read_by_skrf(name, text):
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / name
        path.write_text(text)
        with warnings.catch_warnings():
            warnings.simplefilter("error")
            touchstone = skrf.io.Touchstone(str(path))
    z0 = np.broadcast_to(touchstone.z0, touchstone.s.shape[:2])
    noise = touchstone.noise
    return dict(
        ports=int(touchstone.rank),
        f_hz=touchstone.f.tolist(),
        s=pairs(touchstone.s),
        z0=z0[0].real.tolist(),
        noise=[] if noise is None else noise.tolist(),
    )


def conversions(rng):
    """Random S-matrices with other parameters, in other references, and their gains."""
    out = []
    for k in range(24):
        n = 1 + k % 5
        s = rng.normal(size=(1, n, n)) + 1j * rng.normal(size=(1, n, n))
        s *= rng.uniform(0.1, 1.5) / np.linalg.norm(s)
        z0 = np.array([[float(rng.choice([12.5, 50.0, 75.0, 93.0, 300.0])) for _ in range(n)]], complex)
        if k % 3 == 0:
            z0[:] = 50.0
        to = 10 ** rng.uniform(0.5, 3, (1, n)) + 0j
        case = dict(
            ports=n,
            z0=z0[0].real.tolist(),
            s=pairs(s),
            Z=pairs(skrf.network.s2z(s, z0, s_def="power")),
            Y=pairs(skrf.network.s2y(s, z0, s_def="power")),
            to=to[0].real.tolist(),
            re_referenced=pairs(skrf.network.renormalize_s(s, z0, to, s_def="power")),
            largest_gain=float(np.linalg.svd(s[0], compute_uv=False)[0]),
        )
        if n == 2:
            case["H"] = pairs(skrf.network.s2h(s, z0))
            case["G"] = pairs(skrf.network.s2g(s, z0))
        out.append(case)
    return out


def build():
    rng = np.random.default_rng(20260705)
    nets = networks(rng)
    theirs = {**written_by_skrf(nets), **BY_HAND}
    reference = dict(
        comment="written by touchstone.py; numpy %s, scikit-rf %s" % (np.__version__, skrf.__version__),
        networks=nets,
        files={name: read_by_skrf(name, text) for name, text in theirs.items()},
        conversions=conversions(rng),
    )
    return theirs, reference


def differences(a, b, where=""):
    if isinstance(a, dict):
        if a.keys() != b.keys():
            yield f"{where}: keys {sorted(a)} and {sorted(b)}"
            return
        for key in a:
            yield from differences(a[key], b[key], f"{where}.{key}")
    elif isinstance(a, list):
        if len(a) != len(b):
            yield f"{where}: length {len(a)} and {len(b)}"
            return
        for k, (x, y) in enumerate(zip(a, b)):
            yield from differences(x, y, f"{where}[{k}]")
    elif isinstance(a, float) or isinstance(b, float):
        if not abs(a - b) <= 1e-10 * max(1.0, abs(a), abs(b)):
            yield f"{where}: {a} and {b}"
    elif a != b and not where.endswith(".comment"):
        yield f"{where}: {a} and {b}"


def normalised_to_one(text):
    """A version 1 file with Y, H or G as one in 1 ohm, where normalised and plain are the same.

    scikit-rf 2.2.0 multiplies all of them by R when it reads, which is right for Z only: it does
    not read back what it writes. S-parameters do not depend on R in such a file.
    """
    lines = text.splitlines(True)
    k = next(k for k, l in enumerate(lines) if l.startswith("#"))
    lines[k] = lines[k].split(" R ")[0] + " R 1\n"
    return "".join(lines)


def ours(nets):
    """What scikit-rf reads differently from the network our writer was given."""
    wrong, count = [], 0
    for path in sorted((DATA / "ours").iterdir()):
        text = path.read_text()
        option = next(l for l in text.splitlines() if l.startswith("#")).split()
        plain = path.suffix != ".ts" and option[2] in "YHG"
        got = read_by_skrf(path.name, normalised_to_one(text) if plain else text)
        want = dict(nets[path.name.split("_")[0]], noise=[])
        if plain:
            got["z0"] = want["z0"]
        wrong += differences(want, got, path.name)
        count += 1
    if not count:
        wrong.append("no files of ours: UPDATE=1 cargo test -p downlead-touchstone --test reference")
    return wrong, count


def main():
    theirs, reference = build()
    if "--check" in sys.argv[1:]:
        committed = json.loads((DATA / "reference.json").read_text())
        wrong = list(differences(committed, reference, "reference.json"))
        for name in theirs:
            got = read_by_skrf(name, (DATA / "theirs" / name).read_text())
            wrong += differences(committed["files"][name], got, f"theirs/{name}")
        more, count = ours(committed["networks"])
        wrong += more
        print(
            "\n".join(wrong)
            or "touchstone: %d files of theirs, %d of ours, %d conversions agree"
            % (len(theirs), count, len(reference["conversions"]))
        )
        sys.exit(1 if wrong else 0)
    (DATA / "theirs").mkdir(parents=True, exist_ok=True)
    for name, text in theirs.items():
        (DATA / "theirs" / name).write_text(text)
    (DATA / "reference.json").write_text(json.dumps(reference) + "\n")


if __name__ == "__main__":
    main()
