#!/usr/bin/env python3
"""Desense and isolation on the invented hill (examples/site/hill.downlead), computed by hand: losses of cables from
k1 sqrt(f) + k2 f of their definitions with 0.393 %/K of the conductor, connectors 0.05 dB sqrt(f/GHz), noise by ITU-R P.372.

Prints the numbers that crates/eval/tests/desense.rs compares with; `--check` first asserts the published form of the
requirement: 47 dBm with -140 dBc/Hz into a noise figure of 8 dB needs 78.8 dB for 1 dB, and 70 dB give 4.75 dB."""
import math
import sys

C = 299792458.0
KT = -173.975  # dBm/Hz at 290 K
TX, RX, H1 = 146.9137, 146.3137, 147.5137


def lin(db):
    return 10 ** (db / 10)


def db(x):
    return 10 * math.log10(x)


def dbm(w):
    return db(w) + 30


def desense(noise, floor):
    return db(1 + lin(noise - floor))


def cable(name, metres, mhz, celsius):
    k1, k2 = {
        "5mm-double": (1.3014, 0.004123),
        "quarter-flex": (0.6061, 0.002169),
        "seven-eighths": (0.1216, 0.001231),
    }[name]
    conductor = k1 * math.sqrt(mhz) * math.sqrt(1 + 0.00393 * (celsius - 20))
    return (conductor + k2 * mhz) * metres / 100


def pairs(n, mhz):
    return n * 0.05 * math.sqrt(mhz / 1000)


def before(mhz):
    """From TX1 to the duplexer."""
    return cable("5mm-double", 2.0, mhz, 15) + 0.55 + pairs(4, mhz)


def after(mhz):
    """From the duplexer to RX1."""
    return cable("5mm-double", 1.2, mhz, 15) + pairs(2, mhz)


def receive(mhz):
    """From the antenna to RX1."""
    return (
        cable("quarter-flex", 2.2, mhz, 10)
        + cable("seven-eighths", 46, mhz, 10)
        + 0.10
        + cable("quarter-flex", 3.0, mhz, 15)
        + 0.20
        + cable("5mm-double", 0.9, mhz, 15)
        + 1.50
        + cable("5mm-double", 1.2, mhz, 15)
        + pairs(12, mhz)
    )


def check():
    need = 47 - 140 - (KT + 8 + db(lin(1) - 1))
    assert abs(need - 78.84) < 0.01, need
    assert abs(desense(47 - 140 - 70, KT + 8) - 4.7478) < 1e-3


def main():
    if "--check" in sys.argv:
        check()
    floor = KT + 6
    noise = dbm(32) - 145 - before(RX) - 80 - 1.50 - after(RX)
    way = before(RX) + 80 + 1.50 + after(RX)
    spare = floor + db(lin(1) - 1) - noise
    print("TX1 noise %.2f dBm/Hz, way %.2f, desense %.3f, 80 - spare %.2f" % (noise, way, desense(noise, floor), 80 - spare))
    u = 2 * math.sqrt(3 + 4 / 3 + 0.125**2 + 2 * 0.0866**2)
    print("  U %.2f: %.3f to %.3f" % (u, desense(noise - u, floor), desense(noise + u, floor)))
    way = before(TX) + 1.45 + 82 + after(TX)
    carrier = dbm(32) - way
    print("TX1 carrier %.2f dBm, way %.2f, under -25 dBm by %.2f" % (carrier, way, -25 - carrier))
    lost = receive(RX)
    external = 67.2 - 27.7 * math.log10(RX)
    site = KT + db(lin(external) - 1 + lin(lost + 6)) - lost
    print("floor %.2f, rural %.2f dB at the antenna, with it %.2f" % (floor, external, site))
    h1 = dbm(25) - 150 - 48 - lost
    print("H1 noise %.2f, desense %.2f, on site %.2f" % (h1, desense(h1, floor), desense(h1, site)))
    wavelengths = 10.35 / (C / RX / 1e6)
    vertical = 28 + 40 * math.log10(wavelengths)
    print("10.35 m: %.2f wavelengths, %.2f dB, by it %.2f" % (wavelengths, vertical, desense(h1 + 48 - vertical, floor)))
    both = db(lin(h1) + lin(noise))
    need = h1 - db(lin(site) * (lin(1) - 1) - lin(noise))
    print("together %.2f, H1 needs %.2f" % (desense(both, site), need))
    for metres in (6, 25):
        w = metres / (C / H1 / 1e6)
        print("horizontal %g m: %.2f wavelengths, %.2f dB" % (metres, w, 22 + 20 * math.log10(w) - 7.35))


main()
