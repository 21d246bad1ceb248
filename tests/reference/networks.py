"""Chains of measured two-ports, from scikit-rf (a general network library).

    python3 tests/reference/networks.py           writes what is described below
    python3 tests/reference/networks.py --check   recomputes all and compares with what is committed

* examples/networks/*.s1p, *.s2p   the files of the example: invented parts, computed here
* networks.json beside this script   losses and standing-wave ratios of chains made of them, with
  further files (another reference, ports the other way round), as scikit-rf cascades and
  renormalises them. Between two points of a file transmissions are taken by magnitude and phase,
  reflections by real and imaginary part, as the project does.
"""

import json
import pathlib
import sys
import warnings

import numpy as np
import skrf

warnings.filterwarnings("ignore")
HERE = pathlib.Path(__file__).parent
EXAMPLE = HERE.parents[1] / "examples" / "networks"
C0 = 299_792_458.0
DB_PER_NEPER = 20.0 / np.log(10.0)
MATCHED = np.zeros((1, 2, 2), complex)


def polar(db, degrees):
    return 10 ** (np.asarray(db) / 20) * np.exp(1j * np.deg2rad(degrees))


def network(mhz, s, z0=50.0):
    frequency = skrf.Frequency.from_f(np.asarray(mhz), unit="MHz")
    return skrf.Network(frequency=frequency, s=s, z0=z0)


def two_port(mhz, s11, s12, s21, s22, z0=50.0):
    one = np.ones(len(mhz))
    s = np.array([[s11 * one, s12 * one], [s21 * one, s22 * one]])
    return network(mhz, np.moveaxis(s, 2, 0), z0)


def from_chain(mhz, a):
    return network(mhz, skrf.network.a2s(a, 50.0))


def matrix(mhz, a, b, c, d):
    one = np.ones(len(mhz), complex)
    return np.moveaxis(np.array([[a * one, b * one], [c * one, d * one]]), 2, 0)


def line(mhz, metres, k1, k2, velocity, r0=50.0):
    """k1 in dB/m per root MHz, k2 in dB/m per MHz."""
    f = np.asarray(mhz) * 1e6
    ac, ad = k1 * np.sqrt(mhz) / DB_PER_NEPER, k2 * np.asarray(mhz) / DB_PER_NEPER
    beta = 2 * np.pi * f / (C0 * velocity)
    zc = r0 * (1 - 1j * (ac - ad) / beta)
    gl = (ac + ad + 1j * beta) * metres
    return matrix(mhz, np.cosh(gl), zc * np.sinh(gl), np.sinh(gl) / zc, np.cosh(gl))


def isolator():
    mhz = np.arange(140.0, 153.0)
    x = (mhz - 146.0) / 6.0
    phase = 30 - 4.5 * (mhz - 140)
    return two_port(
        mhz,
        polar(-28 + 3 * x**2, 40 + 60 * x),
        polar(-52 + 8 * x**2, -70 - 20 * x),
        polar(-0.55 - 0.25 * x**2, phase),
        polar(-26 + 2 * x, -110 + 50 * x),
    )


def leg(centre):
    """Three cavities with quarter-wave lines between them, at 0.0125 MHz steps."""
    mhz = np.round(centre + 0.0125 * np.arange(-8, 9), 6)
    cavity = matrix(mhz, 1, 4.6 * (1 + 1j * 900 * (mhz / centre - centre / mhz)), 0, 1)
    quarter = line(mhz, C0 * 0.66 / centre / 4e6, 0.013, 4e-5, 0.66)
    return from_chain(mhz, cavity @ quarter @ cavity @ quarter @ cavity)


def antenna():
    mhz = np.round(146.0 + 0.1 * np.arange(16), 6)
    z = 43.0 + 1j * (11.0 * (mhz - 147.1) + 6.0)
    return network(mhz, ((z - 50) / (z + 50)).reshape(-1, 1, 1))


def reel():
    """25 m of cable between two plugs that are 20 mm of 46 ohm."""
    mhz = np.array([1, 2, 5, 10, 20, 30, 50, 70, 100, 120, 140, 147, 150, 170, 200, 300, 400, 450])
    plug = line(mhz, 0.02, 1e-4, 0, 1.0, 46.0)
    return from_chain(mhz, plug @ line(mhz, 25.0, 0.00243, 1.3e-5, 0.878) @ plug)


def touchstone(n, title):
    """The text of a file: magnitudes in dB to five decimals, angles to four."""
    out = [f"! {title}", "! Invented, computed by tests/reference/networks.py", "# MHz S DB R 50"]
    for f, s in zip(n.f / 1e6, n.s):
        cells = s.T.ravel() if n.nports == 2 else s.ravel()
        numbers = [f"{20 * np.log10(abs(z)):.5f} {np.rad2deg(np.angle(z)):.4f}" for z in cells]
        out.append(f"{f:.6f}".rstrip("0").rstrip(".") + "  " + "  ".join(numbers))
    return "\n".join(out) + "\n"


def example_files():
    return {
        "is1.s2p": touchstone(isolator(), "IS1, dual isolator, port 1 on the side of the transmitter"),
        "du1-high.s2p": touchstone(leg(146.9), "DU1, high leg, port 2 on the side of the antenna"),
        "du1-low.s2p": touchstone(leg(146.3), "DU1, low leg, port 2 on the side of the antenna"),
        "a1.s1p": touchstone(antenna(), "A1, at its own connector"),
        "reel-7.s2p": touchstone(reel(), "Reel 7, 25.0 m with a plug at each end"),
    }


def more_files():
    """Files of the tests only: another format, another reference."""
    is1 = isolator().copy()
    is1.renormalize(75.0)
    rows = ["# GHz S RI R 75"]
    for f, s in zip(is1.f / 1e9, is1.s):
        rows.append(f"{f:.6f} " + " ".join(f"{z.real:.12g} {z.imag:.12g}" for z in s.T.ravel()))
    quarter = ["# MHz S MA R 50", "100 0.2 90", "200 0.2 90"]
    return {"is75.s2p": "\n".join(rows) + "\n", "a06.s1p": "\n".join(quarter) + "\n"}


def read(name, texts, folder):
    path = folder / name
    path.write_text(texts[name])
    return skrf.Network(str(path))


def at(n, hz):
    """A matrix between the points, in 50 ohm."""
    k = int(np.searchsorted(n.f, hz, side="right")) - 1
    exact = np.isclose(n.f[k], hz, rtol=1e-12, atol=0)
    s = n.s[k].copy()
    if not exact:
        t = (hz - n.f[k]) / (n.f[k + 1] - n.f[k])
        a, b = n.s[k], n.s[k + 1]
        size = abs(a) + (abs(b) - abs(a)) * t
        turn = np.angle(b * a.conj())
        s = size * np.exp(1j * (np.angle(a) + turn * t))
        for i in range(n.nports):
            s[i, i] = a[i, i] + (b[i, i] - a[i, i]) * t
    one = skrf.Network(frequency=skrf.Frequency.from_f([hz], unit="Hz"), s=s[None], z0=n.z0[k][None])
    one.renormalize(50.0)
    return one


# Chains by their parts: a file, whether it is reversed; and the antenna. On receive the signal
# goes the other way through the same parts.
CHAINS = [
    ("filter", 146.9, [("du1-high.s2p", False)], "a1.s1p"),
    ("three", 147.0, [("is1.s2p", False), ("du1-high.s2p", False), ("reel-7.s2p", False)], "a1.s1p"),
    ("between", 146.9137, [("is1.s2p", False), ("du1-high.s2p", False)], "a1.s1p"),
    ("turned", 146.9137, [("du1-high.s2p", True), ("is1.s2p", False)], "a1.s1p"),
    ("backwards", 146.9, [("is1.s2p", True)], "a1.s1p"),
    ("of75", 146.0, [("is75.s2p", False)], "a1.s1p"),
    ("mixed", 147.0, [("is75.s2p", False), ("is1.s2p", False), ("is75.s2p", False)], "a1.s1p"),
    ("low", 146.3137, [("du1-low.s2p", False)], "a1.s1p"),
]


def chains(texts, folder):
    out = []
    for name, mhz, parts, antenna_file in CHAINS:
        hz = round(mhz * 1e6, 3)
        whole = None
        for file, reversed_ in parts:
            n = at(read(file, texts, folder), hz)
            if reversed_:
                n = n.flipped()
            whole = n if whole is None else whole ** n
        end = at(read(antenna_file, texts, folder), hz)
        g, s = end.s[0, 0, 0], whole.s[0]
        gamma_in = (whole ** end).s[0, 0, 0]
        transducer = abs(s[1, 0]) ** 2 * (1 - abs(g) ** 2) / abs(1 - s[1, 1] * g) ** 2
        back = abs(s[0, 1]) ** 2 * (1 - abs(g) ** 2) / abs(1 - s[1, 1] * g) ** 2
        out.append(
            dict(
                name=name,
                mhz=mhz,
                parts=[dict(file=f, reversed=r) for f, r in parts],
                antenna=antenna_file,
                transmit_db=-10 * np.log10(transducer),
                receive_db=-10 * np.log10(back),
                swr=(1 + abs(gamma_in)) / (1 - abs(gamma_in)),
                antenna_ohm=[float(50 * ((1 + g) / (1 - g)).real), float(50 * ((1 + g) / (1 - g)).imag)],
            )
        )
    return out


def cable(texts, folder):
    """Matched loss of the reel, dB/m: the line alone, without its plugs, from the model."""
    n = read("reel-7.s2p", texts, folder)
    a = skrf.network.s2a(n.s, n.z0)
    theta = np.arccosh(np.sqrt(a[:, 0, 0] * a[:, 1, 1]))
    model = 0.00243 * np.sqrt(n.f / 1e6) + 1.3e-5 * n.f / 1e6
    return [
        dict(mhz=float(f / 1e6), image_db_per_m=float(abs(t.real) * DB_PER_NEPER / 25), model_db_per_m=float(m))
        for f, t, m in zip(n.f, theta, model)
    ]


def compute():
    texts = {**example_files(), **more_files()}
    folder = HERE.parents[1] / "target" / "reference-networks"
    folder.mkdir(parents=True, exist_ok=True)
    # the standing-wave ratio of a 50-ohm point seen in 75 ohm
    one = read("a06.s1p", texts, folder)
    one.renormalize(75.0)
    g = abs(one.s[0, 0, 0])
    return dict(
        files=more_files(),
        chains=chains(texts, folder),
        reel=cable(texts, folder),
        swr_in_75=(1 + g) / (1 - g),
    )


def same(a, b):
    if isinstance(a, dict):
        return a.keys() == b.keys() and all(same(a[k], b[k]) for k in a)
    if isinstance(a, list):
        return len(a) == len(b) and all(same(x, y) for x, y in zip(a, b))
    if isinstance(a, float):
        return abs(a - b) <= 1e-10 * max(1.0, abs(a))
    return a == b


def main():
    out = HERE / "networks.json"
    have = json.loads(json.dumps(compute()))
    if "--check" in sys.argv:
        assert same(have, json.loads(out.read_text())), "networks.json is out of date"
        for name, text in example_files().items():
            assert (EXAMPLE / name).read_text() == text, f"{name} is out of date"
        print(f"networks: {len(have['chains'])} chains agree")
        return
    EXAMPLE.mkdir(exist_ok=True)
    for name, text in example_files().items():
        (EXAMPLE / name).write_text(text)
    out.write_text(json.dumps(have, indent=1) + "\n")


if __name__ == "__main__":
    main()
