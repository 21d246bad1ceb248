"""Times the sweep of one 12-element cascade in scikit-rf and in this project, in one run.

    cargo build --release -p downlead-physics --example sweep
    python3 tests/reference/sweep_bench.py [--points 10001] [--runs 20]

Two scikit-rf times are printed: the cascade of ready-made element networks alone, and with the
making of the element networks, which is what the Rust time contains. Fails when the results
differ by more than 1e-9 dB in S21 or S12, or 1e-10 in S11 or S22.
"""

import argparse
import json
import os
import pathlib
import subprocess
import sys
import time

import numpy as np
import skrf

from network import C0, element_network, fixed_network

HERE = pathlib.Path(__file__).parent
ROOT = HERE.parent.parent


def network_of(e, f):
    kind = e["kind"]
    if kind == "fixed":
        t = 10 ** (-e["loss_db"] / 20)
        return fixed_network([[e["s11"], t], [t, e["s22"]]], f)
    if kind == "sqrt":
        t = 10 ** (-e["k_db"] * np.sqrt(f / 1e9) / 20)
        s = np.zeros((len(f), 2, 2), complex)
        s[:, 0, 1] = s[:, 1, 0] = t
        return skrf.Network(frequency=skrf.Frequency.from_f(f, unit="hz"), s=s, z0=50.0)
    frequency = skrf.Frequency.from_f(f, unit="hz")
    if kind in ("series", "shunt"):
        free = skrf.media.DefinedGammaZ0(frequency, z0_port=50.0, z0=50.0, gamma=2j * np.pi * f / C0)
        if kind == "series":
            return free.resistor(e["ohm"]) ** free.inductor(e["henry"])
        return free.shunt_capacitor(e["farad"])
    if kind == "line":
        mhz = f / 1e6
        np_per_db = np.log(10) / 20
        ac, ad = e["k1"] * np.sqrt(mhz) * np_per_db, e["k2"] * mhz * np_per_db
        beta = 2 * np.pi * f / (C0 * e["vf"])
        media = skrf.media.DefinedGammaZ0(
            frequency, z0_port=50.0, z0=e["r0"] * (1 - 1j * (ac - ad) / beta), gamma=ac + ad + 1j * beta
        )
        return media.line(e["length_m"], "m")
    return element_network(e, f)


def best_of(runs, work):
    best, result = float("inf"), None
    for _ in range(runs):
        start = time.perf_counter()
        result = work()
        best = min(best, time.perf_counter() - start)
    return best, result


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--points", type=int, default=10001)
    parser.add_argument("--runs", type=int, default=20)
    options = parser.parse_args()

    target = pathlib.Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target"))
    binary = target / "release" / "examples" / "sweep"
    text = subprocess.run(
        [str(binary), str(options.points), str(options.runs)], check=True, capture_output=True, text=True
    ).stdout.splitlines()
    rust_time = float(text[0])
    rows = np.array([[float(x) for x in line.split()] for line in text[1:]])
    rust = rows[:, 0::2] + 1j * rows[:, 1::2]

    elements = json.loads((HERE / "sweep_chain.json").read_text())["elements"]
    f = 100e6 + np.arange(options.points) * (400e6 / (options.points - 1))
    make_time, networks = best_of(options.runs, lambda: [network_of(e, f) for e in elements])
    cascade_time, network = best_of(options.runs, lambda: skrf.network.cascade_list(networks))
    s = network.s

    reference = np.stack([s[:, 0, 0], s[:, 0, 1], s[:, 1, 0], s[:, 1, 1]], axis=1)
    db = np.abs(20 * np.log10(np.abs(rust[:, 1:3]) / np.abs(reference[:, 1:3]))).max()
    reflection = np.abs(rust[:, [0, 3]] - reference[:, [0, 3]]).max()
    print(f"{len(elements)} elements, {options.points} points, fastest of {options.runs} runs")
    print(f"this project              {rust_time * 1e3:9.3f} ms")
    print(f"scikit-rf, cascade alone  {cascade_time * 1e3:9.3f} ms  ({cascade_time / rust_time:.0f} times)")
    total = make_time + cascade_time
    print(f"scikit-rf, with elements  {total * 1e3:9.3f} ms  ({total / rust_time:.0f} times)")
    print(f"largest difference        {db:.1e} dB in transmission, {reflection:.1e} in reflection")
    sys.exit(0 if db <= 1e-9 and reflection <= 1e-10 else 1)


if __name__ == "__main__":
    main()
