#!/usr/bin/env python3
"""Checks the `result` fences of docs/language.md against formulas written down here.

    manual_numbers.py           exit 1 when a printed number is not what the formula gives

The independent side of the executable manual: closed forms with the standard library, sharing no
code with the program. Sources: two-term cable law and RG-402 geometry (Pozar, Microwave
Engineering, ch. 2, from memory); loss with standing waves in a real-impedance line
10 log10((a^2 - r^2) / (a (1 - r^2))); mismatch loss -10 log10(1 - r^2); GUM for uncertainty.
Library figures are repeated here on purpose: a changed library must show up.
"""

import cmath
import math
import pathlib
import re

MANUAL = pathlib.Path(__file__).resolve().parents[2] / "docs/language.md"


def db(x):
    return 10 * math.log10(x)


def ratio(d):
    return 10 ** (d / 10)


def law(k1, k2, mhz):
    """dB/100 m at 20 deg C."""
    return k1 * math.sqrt(mhz) + k2 * mhz


def mismatch(return_loss):
    return -db(1 - ratio(-return_loss))


def pairs(n, mhz):
    return n * 0.05 * math.sqrt(mhz / 1000)


HALF_INCH = (0.2206, 0.00072)
SEVEN_EIGHTHS = (0.1144, 0.00072)
RG_213 = (0.5674, 0.009661)

want = {}


def put(chain, band, **values):
    for name, value in values.items():
        want[chain, band, name] = value


for f in (145.3, 434.5):
    loss = law(*HALF_INCH, f) * 0.28 + pairs(4, f)
    w = 50 / ratio(loss)
    put("what-if", f"{f} MHz", total_loss_db=loss, antenna_w=w, erp_w=w * ratio(4.5 - 2.15), eirp_w=w * ratio(4.5))

loss = law(*RG_213, 145) * 0.34 + mismatch(40)
put("arithmetic", "145 MHz", total_loss_db=loss, antenna_w=10 / ratio(loss))

# the law through (100 MHz, 4.50) and (200 MHz, 6.60)
k2 = (6.60 / math.sqrt(200) - 4.50 / math.sqrt(100)) / (math.sqrt(200) - math.sqrt(100))
k1 = 4.50 / math.sqrt(100) - k2 * math.sqrt(100)
put("printed", "100 MHz", total_loss_db=4.50 / 2 + mismatch(40))
put("printed", "145.3 MHz", total_loss_db=law(k1, k2, 145.3) / 2 + mismatch(40))

# smooth copper tube: A_c = (8.6859/2)(Rs/(pi Z0))(1/d + 1/D), A_d = 8.6859 pi f sqrt(er) tan d / c
hz, rho, er = 1e9, 1.7241e-8, 2.07
rs = math.sqrt(math.pi * hz * 4e-7 * math.pi * rho)
d, big_d = 0.0362 * 0.0254, 0.1175 * 0.0254
conductor = 8.685890 / 2 * rs / (math.pi * 50) * (1 / d + 1 / big_d)
dielectric = 8.685890 * math.pi * hz * math.sqrt(er) * 2e-4 / 299_792_458
put("one-gigahertz", "1000 MHz", total_loss_db=10 * (conductor + dielectric) + mismatch(40))

put("first", "145 MHz", total_loss_db=0.55 + mismatch(40))
put("second", "435 MHz", total_loss_db=0.55 + mismatch(40))

loss = 1.45 + law(*SEVEN_EIGHTHS, 146.9137) * 0.30 + pairs(3, 146.9137)
put("out", "2m", total_loss_db=loss, antenna_w=32 / ratio(loss), erp_w=32 / ratio(loss) * ratio(5.2 - 2.15))
put("in", "2m", total_loss_db=1.50 + law(*SEVEN_EIGHTHS, 146.3137) * 0.30 + pairs(3, 146.3137))

each = 100 / 2 / ratio(0.2)
put("two", "2m", antenna_w=2 * each, eirp_w=(2 * math.sqrt(each * ratio(12.1))) ** 2)

# of branches that look in different directions the strongest one counts; two of 50 ohm in
# parallel are 25 ohm
put("unequal", "145 MHz", eirp_w=100 * 0.68 / ratio(0.1) * ratio(8.0))
third = (25 - 50) / (25 + 50)
put("joined", "145 MHz", total_loss_db=-db(1 - third**2), transmitter_swr=(1 + abs(third)) / (1 - abs(third)))

run = law(*SEVEN_EIGHTHS, 145.3) * 0.46
loss = 0.55 + run
erp = 32 / ratio(loss) * ratio(5.2 - 2.15)
root3 = math.sqrt(3)
u = math.sqrt((0.05 * 10 / math.log(10) / root3) ** 2 + (0.15 / root3) ** 2 + (0.05 * run) ** 2 + (0.5 / root3) ** 2)
margin = db(60 / erp)
put(
    "talk-out", "145.3 MHz", total_loss_db=loss, erp_w=erp, margin_db=margin, uncertainty_db=2 * u,
    verdict="met" if margin > 2 * u else "not-met" if margin < -2 * u else "cannot-tell",
)  # fmt: skip

r, a = 0.5, ratio(1)
put("no-tuner", "14.2 MHz", total_loss_db=1 - db(1 - r * r), transmitter_swr=(1 + r / a) / (1 - r / a))
put("with-tuner", "14.2 MHz", total_loss_db=0.2 + db((a * a - r * r) / (a * (1 - r * r))))

# a two-port behind which a reflection is seen: S21 between matched ends, and the mismatch
polar = lambda db_, deg: 10 ** (db_ / 20) * cmath.exp(1j * math.radians(deg))
s11, s21, s22 = polar(-26, 110), polar(-0.62, -41), polar(-25, -160)
join = 10 ** (-pairs(1, 145) / 20)
g = join**2 * complex(0.12, 0.05)
loss = -db(abs(s21) ** 2 * join**2 * (1 - abs(complex(0.12, 0.05)) ** 2) / abs(1 - s22 * g) ** 2)
seen = abs(s11 + s21**2 * g / (1 - s22 * g))
put("measured", "145 MHz", total_loss_db=loss, antenna_w=30 / ratio(loss), transmitter_swr=(1 + seen) / (1 - seen))

# the piece's loss per length; its reflections of -60 dB are no part of it
put("of-a-reel", "145 MHz", total_loss_db=0.77 / 25 * 40 + mismatch(40))



def main():
    fences = re.findall(r"^```result\n(.*?)^```$", MANUAL.read_text(encoding="utf-8"), re.S | re.M)
    wrong, seen = [], 0
    for line in (line for fence in fences for line in fence.splitlines()):
        m = re.fullmatch(r"(\S+) (\S+(?: MHz)?) ([a-z_]+) (\S+)(?: W)?", line)
        key = m and m.group(1, 2, 3)
        if key not in want:
            wrong.append(f"{line}: nothing to compare with")
            continue
        seen += 1
        value, printed = want[key], m.group(4)
        if isinstance(value, str):
            if value != printed:
                wrong.append(f"{line}: {value}")
            continue
        digits = len(printed.partition(".")[2])
        if f"{value:.{digits}f}" != printed:
            wrong.append(f"{line}: {value:.{digits + 1}f}")
    if wrong or not seen:
        raise SystemExit("\n".join(wrong) or "no result fences found")


if __name__ == "__main__":
    main()
