"""Which of two pieces is the better for a run: values for crates/cli/tests/cli/bench_run.rs.

    python3 tests/reference/run_of_pieces.py

The losses are fitted with numpy's least squares. Uncertainties come from a simulation: each reading has an error of linearity
(rectangular, half-width 1 %) and of repeatability (normal, 0.6 %). The two baselines of a band are read at one power, so they share the
error of linearity; the piece stands halfway between them, and all pieces of a band share the baseline. Nothing of the program is used.
"""

import numpy as np

MHZ = np.array([3.7, 14.2, 50.3, 145.3, 434.5])
BASE = 40.0
WATTS = {"A": np.array([36.2, 33.1, 28.0, 21.4, 13.2]), "B": np.array([36.9, 34.0, 29.2, 23.3, 15.6])}
METRES = {"A": 20.0, "B": 25.0}
AT = [145.3, 300.0]
RUN = 30.0
POWER = 50.0


def per_m(watts, base, metres):
    return 10.0 * np.log10(base / watts) / metres


def fitted(losses):
    columns = np.column_stack([np.sqrt(MHZ), MHZ])
    return np.linalg.lstsq(columns, losses, rcond=None)[0]


def run(k, mhz):
    return RUN * (k[0] * np.sqrt(mhz) + k[1] * mhz)


def simulated(trials=200_000):
    rng = np.random.default_rng(2026)
    n = len(MHZ)

    def error(readings=1):
        repeated = sum(rng.normal(0.0, 0.006, (trials, n)) for _ in range(readings)) / readings
        return 1.0 + rng.uniform(-0.01, 0.01, (trials, n)) + repeated

    base = BASE * error(2)
    out = {}
    for p, w in WATTS.items():
        losses = per_m(w * error(), base, METRES[p])
        columns = np.column_stack([np.sqrt(MHZ), MHZ])
        out[p] = np.linalg.pinv(columns) @ losses.T
    return out


def main():
    k = {p: fitted(per_m(w, BASE, METRES[p])) for p, w in WATTS.items()}
    many = simulated()
    for mhz in AT:
        loss = {p: run(k[p], mhz) for p in WATTS}
        spread = {p: run(many[p], mhz) for p in WATTS}
        left = {p: POWER * 10.0 ** (-spread[p] / 10.0) for p in WATTS}
        print(mhz, "MHz")
        for p in WATTS:
            print(f"  {p}: {loss[p]:.6f} dB, U {2 * spread[p].std():.4f} dB, {POWER * 10 ** (-loss[p] / 10):.5f} W, U {2 * left[p].std():.4f} W")
        print(f"  A - B: {loss['A'] - loss['B']:.6f} dB, U {2 * (spread['A'] - spread['B']).std():.4f} dB,"
              f" U {2 * (left['B'] - left['A']).std():.4f} W")


main()
