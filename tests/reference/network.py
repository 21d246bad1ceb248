"""Reference values for lines and chains, from numpy and scikit-rf (a general network library).

    python3 tests/reference/network.py           writes network.json beside this file
    python3 tests/reference/network.py --check   recomputes and compares with the committed file

The line model is that of the project (propagation constant from conductor and dielectric loss,
complex characteristic impedance R0 (1 - j (ac - ad)/beta)); what is checked independently is
everything built on it: terminated lines, renormalisation, cascading, gains. Lines go through
scikit-rf's media (S-parameters, renormalised to 50 ohm) and are also compared here with chain
matrices from numpy's cosh and sinh.
"""

import json
import pathlib
import sys

import numpy as np
import skrf

HERE = pathlib.Path(__file__).parent
C0 = 299_792_458.0
DB_PER_NEPER = 20.0 / np.log(10.0)
FOOT = 0.3048
REFERENCE = 50.0


def line_model(spec, f):
    """Propagation constant and characteristic impedance of a two-term line."""
    mhz = f / 1e6
    ac = spec["k1"] * np.sqrt(mhz) / DB_PER_NEPER
    ad = spec["k2"] * mhz / DB_PER_NEPER
    beta = 2 * np.pi * f / (C0 * spec["vf"])
    return ac + ad + 1j * beta, spec["r0"] * (1 - 1j * (ac - ad) / beta)


def chain_matrix(spec, f):
    gamma, zc = line_model(spec, f)
    gl = gamma * spec["length_m"]
    a = np.empty((len(f), 2, 2), complex)
    a[:, 0, 0] = a[:, 1, 1] = np.cosh(gl)
    a[:, 0, 1] = zc * np.sinh(gl)
    a[:, 1, 0] = np.sinh(gl) / zc
    return a


def line_network(spec, f):
    gamma, zc = line_model(spec, f)
    frequency = skrf.Frequency.from_f(f, unit="hz")
    media = skrf.media.DefinedGammaZ0(
        frequency, z0_port=REFERENCE, z0=zc, gamma=gamma
    )
    network = media.line(spec["length_m"], "m")
    by_chain = skrf.network.a2s(chain_matrix(spec, f), REFERENCE)
    assert np.abs(network.s - by_chain).max() < 1e-9, "media and chain matrix disagree"
    return network


def fixed_network(s, f):
    return skrf.Network(
        frequency=skrf.Frequency.from_f(f, unit="hz"),
        s=np.repeat(np.array(s, complex)[None], len(f), axis=0),
        z0=REFERENCE,
    )


def element_network(e, f):
    kind = e["kind"]
    frequency = skrf.Frequency.from_f(f, unit="hz")
    free = skrf.media.DefinedGammaZ0(
        frequency, z0_port=REFERENCE, z0=REFERENCE, gamma=1j * 2 * np.pi * f / C0
    )
    if kind == "line":
        return line_network(e, f)
    if kind == "bump":
        spec = dict(length_m=e["m"], r0=e["z"], vf=1.0, k1=0.0, k2=0.0)
        return line_network(spec, f)
    if kind == "pad":
        t = 10 ** (-e["db"] / 20)
        return fixed_network([[0, t], [t, 0]], f)
    if kind == "reflective":
        g = e["gamma"]
        t = np.sqrt(1 - g * g)
        return fixed_network([[g, t], [t, -g]], f)
    if kind == "shunt_c":
        return free.shunt_capacitor(e["farad"])
    if kind == "series_l":
        return free.inductor(e["henry"])
    if kind == "fixed":
        s = [complex(*x) for x in e["s"]]
        return fixed_network([[s[0], s[1]], [s[2], s[3]]], f)
    raise ValueError(kind)


def line_case(spec, mhz, load):
    f = np.array([mhz * 1e6])
    a = skrf.network.s2a(line_network(spec, f).s, REFERENCE)[0]
    v = a[0, 0] * load + a[0, 1]
    i = a[1, 0] * load + a[1, 1]
    loss = 10 * np.log10((v * np.conj(i)).real / load.real)
    z_in = v / i
    return dict(
        spec,
        f_hz=mhz * 1e6,
        load=[load.real, load.imag],
        loss_db=float(loss),
        input=[float(z_in.real), float(z_in.imag)],
    )


def lines(rng):
    """The ten lines of rows M01 to M10 and thirty random ones."""
    hundred = 100 * FOOT
    known = [
        (0.19, 0.00139, 0.659, 50, 14.2, 30, 150 + 0j),
        (0.19, 0.00139, 0.659, 50, 145, 30, 100 + 0j),
        (0.444, 0.00126, 0.659, 50, 145, 30, 150 + 0j),
        (0.444, 0.00126, 0.659, 50, 3.6, 3, 5 + 0j),
        (0.444, 0.00126, 0.659, 50, 3.6, 3, 2000 + 0j),
        (0.444, 0.00126, 0.659, 50, 1.85, 10, 12 - 900j),
        (0.826, 0.00125, 0.659, 50, 0.475, 20, 1000 + 0j),
        (0.19, 0.00139, 0.659, 50, 3.6, 30, 15 - 650j),
        (0.053, 0.0, 0.902, 400, 3.6, 30, 12 - 1000j),
        (0.444, 0.00126, 0.659, 50, 432, 10, 75 + 25j),
    ]
    out = []
    for k1, k2, vf, r0, mhz, length, load in known:
        spec = dict(k1=k1 / hundred, k2=k2 / hundred, vf=vf, r0=float(r0), length_m=float(length))
        out.append(line_case(spec, mhz, load))
    for _ in range(30):
        spec = dict(
            k1=float(10 ** rng.uniform(-3.3, -1.5)),
            k2=float(10 ** rng.uniform(-5.3, -3.8)),
            vf=float(rng.uniform(0.65, 0.95)),
            r0=float(rng.choice([35.0, 50.0, 75.0, 93.0, 300.0, 450.0])),
            length_m=float(10 ** rng.uniform(-0.5, 2.0)),
        )
        mhz = float(10 ** rng.uniform(-0.3, 3.1))
        load = complex(10 ** rng.uniform(0, 3.3), rng.normal() * 10 ** rng.uniform(0, 3))
        out.append(line_case(spec, mhz, load))
    return out


def random_element(rng):
    kind = rng.choice(["line", "line", "line", "pad", "reflective", "bump", "shunt_c", "series_l"])
    if kind == "line":
        return dict(
            kind="line",
            k1=float(10 ** rng.uniform(-3.3, -1.6)),
            k2=float(10 ** rng.uniform(-5.3, -4.0)),
            vf=float(rng.uniform(0.65, 0.95)),
            r0=float(rng.choice([35.0, 48.0, 50.0, 52.0, 75.0, 300.0])),
            length_m=float(10 ** rng.uniform(-0.7, 1.7)),
        )
    if kind == "pad":
        return dict(kind="pad", db=float(rng.uniform(0.2, 6)))
    if kind == "reflective":
        return dict(kind="reflective", gamma=float(rng.uniform(0.02, 0.4)))
    if kind == "bump":
        return dict(kind="bump", z=float(rng.uniform(30, 70)), m=float(rng.uniform(0.02, 0.06)))
    if kind == "shunt_c":
        return dict(kind="shunt_c", farad=float(rng.uniform(0.5e-12, 20e-12)))
    return dict(kind="series_l", henry=float(rng.uniform(1e-9, 50e-9)))


def cascade_case(elements, f, source, load):
    network = element_network(elements[0], f)
    for e in elements[1:]:
        network = network ** element_network(e, f)
    a = skrf.network.s2a(network.s, REFERENCE)
    # power in the load for an open-circuit source of one volt, by circuit theory
    i2 = 1 / (
        a[:, 0, 0] * load + a[:, 0, 1] + a[:, 1, 0] * source * load + a[:, 1, 1] * source
    )
    p_load = np.abs(i2) ** 2 * load.real
    i1 = i2 * (a[:, 1, 0] * load + a[:, 1, 1])
    z_in = (a[:, 0, 0] * load + a[:, 0, 1]) / (a[:, 1, 0] * load + a[:, 1, 1])
    p_in = np.abs(i1) ** 2 * z_in.real
    available = 1 / (4 * source.real)
    s = network.s
    order = [s[:, 0, 0], s[:, 0, 1], s[:, 1, 0], s[:, 1, 1]]
    return dict(
        elements=elements,
        f_hz=f.tolist(),
        source=[source.real, source.imag],
        load=[load.real, load.imag],
        s=[[part for x in order for part in (float(x[k].real), float(x[k].imag))] for k in range(len(f))],
        transducer_db=(10 * np.log10(p_load / available)).tolist(),
        operating_db=(10 * np.log10(p_load / p_in)).tolist(),
    )


def cascades(rng):
    f = np.array([1.0, 1.85, 3.6, 7.1, 14.2, 28.5, 50.2, 100.0, 144.3, 145.0, 222.0, 432.1, 435.0, 902.0, 1296.2]) * 1e6
    out = []
    for number in range(12):
        elements = [random_element(rng) for _ in range(int(rng.integers(3, 12)))]
        if number == 3:  # an isolator: not reciprocal
            elements.insert(1, dict(kind="fixed", s=[[0.05, 0.01], [0.08, -0.02], [0.6, 0.74], [0.03, -0.04]]))
        if number == 7:  # a very lossy chain
            elements.append(dict(kind="line", k1=0.05, k2=1e-4, vf=0.66, r0=75.0, length_m=60.0))
        source = complex(rng.uniform(20, 120), rng.uniform(-40, 40))
        load = complex(10 ** rng.uniform(0.7, 2.5), rng.uniform(-150, 150))
        out.append(cascade_case(elements, f, source, load))
    return out


def chain_element(rng):
    """An element the language can say: a line, a pad, a connector's bump."""
    element = random_element(rng)
    while element["kind"] not in ("line", "pad", "bump"):
        element = random_element(rng)
    return element


def chains(rng):
    f = np.array([1.85, 7.1, 28.5, 145.0, 435.0]) * 1e6
    out = []
    for _ in range(12):
        elements = [chain_element(rng) for _ in range(int(rng.integers(2, 9)))]
        load = complex(10 ** rng.uniform(0.7, 2.5), rng.uniform(-150, 150))
        out.append(cascade_case(elements, f, 50 + 0j, load))
    return out


def build():
    rng = np.random.default_rng(20260704)
    fixed_lines = lines(rng)
    # the chains were drawn after these; they are drawn still, so that the chains stay as they are
    cascades(rng)
    return dict(
        comment="written by network.py; numpy %s, scikit-rf %s; S in 50 ohm" % (np.__version__, skrf.__version__),
        reference_ohm=REFERENCE,
        lines=fixed_lines,
        chains=chains(rng),
    )


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
        if not abs(a - b) <= 1e-9 * max(1.0, abs(a), abs(b)):
            yield f"{where}: {a} and {b}"
    elif a != b and not where.endswith(".comment"):
        yield f"{where}: {a} and {b}"


def main():
    path = HERE / "network.json"
    new = build()
    if "--check" in sys.argv[1:]:
        wrong = list(differences(json.loads(path.read_text()), new))
        print("\n".join(wrong) or "network.json: %d lines, %d chains agree" % (len(new["lines"]), len(new["chains"])))
        sys.exit(1 if wrong else 0)
    path.write_text(json.dumps(new, indent=1) + "\n")


if __name__ == "__main__":
    main()
