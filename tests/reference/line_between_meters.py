#!/usr/bin/env python3
"""Insertion loss of a 75-ohm line between a generator and a load of 50 ohm that reflect a little, by simulation.

Substitution: a through connection, then the line. The phases of the two ends' reflections are not known
(uniform, independent); the line's own two faces add up by its length. Prints, for each line, the standard
deviation of the measured insertion loss from that between matched ends in dB, and the root mean square of the line's |S11|. The values stand in
crates/physics/tests/figures.rs and crates/eval/tests/bench_shared.rs.

    python3 line_between_meters.py
"""

import numpy as np

N = 1_000_000
FACE = (75 - 50) / (75 + 50)
GENERATOR = 0.2 / 2.2  # SWR 1.2
LOAD = 10 ** (-26 / 20)  # return loss 26 dB
VELOCITY, METRES, K1, K2 = 0.66, 20.0, 0.9, 0.002


def simulate(mhz, u_relative, rng):
    loss_db = (K1 * np.sqrt(mhz) + K2 * mhz) * METRES / 100
    phase = 2 * np.pi * mhz * 1e6 * METRES / (299_792_458 * VELOCITY) * (1 + u_relative * rng.standard_normal(N))
    generator = GENERATOR * np.exp(2j * np.pi * rng.random(N))
    load = LOAD * np.exp(2j * np.pi * rng.random(N))
    p = 10 ** (-loss_db / 20) * np.exp(-1j * phase)
    s11 = FACE * (1 - p * p) / (1 - FACE * FACE * p * p)
    s21 = p * (1 - FACE * FACE) / (1 - FACE * FACE * p * p)
    through = 1 / np.abs(1 - generator * load) ** 2
    line = np.abs(s21) ** 2 / np.abs((1 - generator * s11) * (1 - load * s11) - generator * load * s21 * s21) ** 2
    # what the ends add to the loss between matched ends
    error = 10 * np.log10(through / line) + 20 * np.log10(np.abs(s21))
    return loss_db, error.std(), np.sqrt(np.mean(np.abs(s11) ** 2))


def main():
    rng = np.random.default_rng(75)
    for mhz in (3.6, 7.1, 14.2, 50.1, 145.3, 434.5):
        for u in (0.0, 0.1):
            loss, deviation, s11 = simulate(mhz, u, rng)
            print(f"{mhz:6} MHz, length ± {100 * u:.0f} %: loss {loss:.4f} dB, u {deviation:.4f} dB, |S11| {s11:.4f}")


main()
