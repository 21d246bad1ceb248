#!/usr/bin/env python3
"""Writes the cable files of the built-in library from its data files.

    make_catalogue.py           writes crates/catalogue/library/cables-*.downlead
    make_catalogue.py --check   compares instead; exit 1 when a file is not what it would write

Data: crates/catalogue/data/types.csv (construction and derived coefficients of the RG types),
crates/catalogue/data/cables.csv (documented and derived loss points). Only the standard library
is used, so the script runs wherever Python 3.9 does. No computation is left to the Rust crate.
"""

import csv
import math
import pathlib
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
DATA = ROOT / "crates/catalogue/data"
OUT = ROOT / "crates/catalogue/library"
FT = 0.3048  # m, exact
C = 299_792_458.0  # m/s
IN = 25.4e-3  # m

# ---------------------------------------------------------------- data


def read(name):
    with open(DATA / name, newline="", encoding="utf-8") as f:
        return list(csv.DictReader(f))


POINTS = read("cables.csv")
TYPES = read("types.csv")


def db_100m(row):
    a = float(row["attenuation"])
    return a / FT if row["unit"] == "dB/100ft" else a


def documented(designation):
    """(MHz, dB/100 m) of the typical points somebody printed, without our own derived rows."""
    return [
        (float(r["freq_mhz"]), db_100m(r), r["source"].split(":")[0])
        for r in POINTS
        if r["designation"] == designation and r["kind"] == "typical" and r["source"][:1] == "S"
    ]


def fit_points(designation):
    return [p for p in documented(designation) if p[2] not in ("S4m", "S6")]


def top_point(designation):
    return max(float(r["freq_mhz"]) for r in POINTS if r["designation"] == designation)


def fit(points):
    """Least squares of the relative error of k1 sqrt(f) + k2 f, both >= 0. Returns k1, k2, rms, worst."""
    rows = [(math.sqrt(f) / a, f / a) for f, a, _ in points]
    xx = sum(x * x for x, _ in rows)
    xy = sum(x * y for x, y in rows)
    yy = sum(y * y for _, y in rows)
    sx, sy = sum(x for x, _ in rows), sum(y for _, y in rows)
    det = xx * yy - xy * xy
    k1, k2 = (sx * yy - sy * xy) / det, (sy * xx - sx * xy) / det
    if k2 < 0:
        k1, k2 = sx / xx, 0.0
    if k1 < 0:
        k1, k2 = 0.0, sy / yy
    residuals = [k1 * x + k2 * y - 1 for x, y in rows]
    rms = math.sqrt(sum(r * r for r in residuals) / len(residuals))
    return k1, k2, rms, max(residuals, key=abs)


# ---------------------------------------------------------------- writing numbers


def sig(x, digits=4):
    """At most `digits` significant digits, no exponent, no trailing zeros."""
    if x == 0:
        return "0"
    s = f"{x:.{max(0, digits - 1 - math.floor(math.log10(abs(x))))}f}"
    return s.rstrip("0").rstrip(".") if "." in s else s


def floor2(x):
    """Rounded down to two significant digits."""
    step = 10 ** (math.floor(math.log10(x)) - 1)
    return int(math.floor(x / step + 1e-9) * step)


def te11_mhz(d_m, big_d_m, velocity):
    """Cut-off of the first higher mode, c vf / (pi (d + D) / 2), some 2 % below the exact root."""
    return C * velocity / (math.pi * (d_m + big_d_m) / 2) / 1e6


def watts(x):
    return f"{sig(x / 1000, 3)} kW" if x >= 1000 else f"{sig(x, 3)} W"


# ---------------------------------------------------------------- one cable

PE_STEPS = ["5 % k 1 to 450 MHz", "10 % k 1 to 1300 MHz", "20 % k 1"]
WIDE_STEPS = ["10 % k 1 to 1300 MHz", "20 % k 1"]


def cable(name, title, z0, vf, vf_pm, k1, k2, steps, valid, source, rating=None, voltage=None, size=None, clad=False):
    lines = [f'cable {name} "{title}" {{']
    lines.append(f"    impedance {z0} ohm")
    lines.append(f"    velocity {vf} ± {vf_pm}")
    lines.append(f"    loss {sig(k1)} dB/100 m/sqrt(MHz) + {sig(k2)} dB/100 m/MHz, typical")
    lines.append(f"    valid {valid}")
    lines += [f"    accuracy {s}" for s in steps]
    if rating:
        lines.append(f"    rating {rating}")
    if voltage:
        lines.append(f"    voltage {voltage} V")
    if size:
        lines.append(f"    size {size}")
    if clad:
        lines.append("    conductor clad")
    assert '"' not in source
    lines.append(f'    source "{source}"')
    lines.append("}")
    return "\n".join(lines) + "\n"


# ---------------------------------------------------------------- RG types

# slash sheets whose number was read in a document; the other numbers are from memory
SEEN_SHEETS = {"28", "74", "112", "113", "127", "128"}
# lowest frequency at which the square-root law holds, MHz (thin copper on steel; see below)
FLOORS = {"RG-174": 30, "RG-188A": 30, "RG-316": 30, "RG-178B": 100, "RG-179B": 100, "RG-196A": 100, "RG-59B": 4, "RG-6A": 4}
# consensus fit: whose documented points are used. S4m (one measurement) and S6 (figures rounded to
# whole dB) stay out, so the fit can be held against a published one (self_test).
CONSENSUS = {"RG-58C": "RG-58C", "RG-213": "RG-213", "RG-8A": "RG-213"}
# published sheets disagree on the working voltage of these cores: the lower one (V rms)
LOWER_VOLTAGE = {"RG-58C": 1400, "RG-223": 1400, "RG-213": 3700, "RG-214": 3700, "RG-8A": 3700}
WIDE_15 = {"RG-188A", "RG-178B", "RG-179B", "RG-196A"}
WIDE_10 = {"RG-217", "RG-218"}
SEMI_RIGID = {"RG-401", "RG-402", "RG-405"}


def rg(t):
    des = t["designation"]
    d, big_d, jacket = (float(t[k]) for k in ("inner_in", "outer_in", "jacket_in"))
    vf = float(t["velocity"])
    ptfe = vf > 0.68
    clad = "CCS" in t["inner_conductor"]
    k1, k2 = float(t["k1_db_100m"]), float(t["k2_db_100m"])
    sheet = t["slash_sheet"]
    notes = []
    if sheet.startswith("M17/"):
        number = sheet.split("/")[1].split("-")[0]
        where = f"MIL-DTL-17/{number}" + ("" if number in SEEN_SHEETS else " (number from memory)")
    else:
        where = sheet.strip("()")
    if des in CONSENSUS:
        base = CONSENSUS[des]
        points = fit_points(base)
        k1, k2, rms, worst = fit(points)
        sources = len({s for _, _, s in points})
        how = f"least squares over {len(points)} points of {sources} public sources"
        how += "" if base == des else f" for {base}, the same core"
        how += f", rms {100 * rms:.1f} %, worst {100 * worst:+.0f} %"
    else:
        how = "derived from the construction, checked against public tables of nine sources where they list it"
    notes.append(f"typical: {how}")
    if des == "RG-188A":
        notes.append("one public table reads 13 to 40 % more")
    if des in WIDE_15:
        steps = ["15 % k 1"]
    elif des in WIDE_10:
        steps = WIDE_STEPS
        notes.append("outside the sizes the derivation was calibrated on")
    elif ptfe:
        steps = ["5 % k 1"]
    else:
        steps = PE_STEPS
    # copper on steel of 40 % conductivity is 0.098 d thick; the root law needs 1.3 skin depths of it
    low = FLOORS.get(des, 0.5)
    if clad and des not in FLOORS:
        layer_um = 0.098 * d * 25_400
        low = max(low, math.ceil((1.3 * 66.08 / layer_um) ** 2))
    high = min(floor2(0.9 * te11_mhz(d * IN, big_d * IN, vf)), floor2((1 if des == "RG-58C" else 2) * top_point(des)))
    rating = None
    if t["rating_144mhz_40c_w"]:
        p = float(t["rating_144mhz_40c_w"])
        hot = 200 if ptfe else 80
        if des in SEMI_RIGID:
            p, hot = 0.53 * p, 125  # the published table is for 200 °C; the assembly stands 125 °C
        rating = f"{watts(p)} at 144 MHz, ambient 40 °C, conductor {hot} °C"
        notes.append("rating from a heat model, within 30 %")
    voltage = LOWER_VOLTAGE.get(des, int(t["v_rms"]))
    notes.append(
        "voltage: the lower of two that are in circulation" if des in LOWER_VOLTAGE else "voltage from memory"
    )
    core = "PTFE" if ptfe else "solid polyethylene"
    outer = t["outer_conductor"]
    braid = "copper tube" if "tube" in outer else {"1": "one braid", "2": "two braids"}[outer[0]]
    title = f"{des}, {core}, {braid}"
    vf_pm = "0.007"  # 1 % of 0.659 and 0.695
    return cable(
        des.lower(), title, t["z0_ohm"], t["velocity"], vf_pm, k1, k2, steps, f"{low} MHz to {high} MHz",
        f"{where}; " + "; ".join(notes), rating, voltage, f"{sig(jacket)} in", clad,
    )  # fmt: skip


# ---------------------------------------------------------------- generic classes


def class_row(designation):
    """k1, k2 written into the derived rows of a generic class, and its top frequency."""
    for r in POINTS:
        if r["designation"].startswith(designation) and "DERIVED" in r["source"] and "k1=" in r["source"]:
            s = r["source"]
            k1 = float(s.split("k1=")[1].split()[0])
            k2 = float(s.split("k2=")[1].split()[0])
            return k1, k2, top_point(r["designation"])
    raise SystemExit(f"no derived rows for {designation}")


def check_rows(designation, k1, k2):
    """The data file's own derived points must be what the coefficients give."""
    for r in POINTS:
        if r["designation"] == designation and "DERIVED" in r["source"]:
            f = float(r["freq_mhz"])
            a = k1 * math.sqrt(f) + k2 * f
            if abs(a - db_100m(r)) > 0.003 * a + 0.001:
                raise SystemExit(f"{designation} at {f} MHz: {a:.4f}, data say {db_100m(r):.4f}")


def derived_class(des, name, title, d_mm, big_d_mm, z0, vf, vf_pm, steps, size, note, low="0.5", cap=None):
    k1, k2, top = class_row(des)
    check_rows(des, k1, k2)
    high = floor2(2 * top)
    if d_mm:
        high = min(high, floor2(0.9 * te11_mhz(d_mm / 1000, big_d_mm / 1000, vf)))
    if cap:
        high = cap
    return cable(name, title, z0, vf, vf_pm, k1, k2, steps, f"{low} MHz to {high} MHz", note, None, None, size)


def foam():
    note = "generic class, no maker; typical, derived from {} (solid copper centre, foil and braid, loss tangent 1.5e-4); public tables of like sizes lie within 5 % at 150 to 450 MHz"
    steps = PE_STEPS
    rows = [
        ("50-ohm foam 5 mm", "foam-5mm", 1.08, 2.95, 0.83, "5 mm"),
        ("50-ohm foam 7 mm", "foam-7mm", 1.79, 4.83, 0.84, "7 mm"),
        ("50-ohm foam 10 mm", "foam-10mm", 2.71, 7.24, 0.85, "10.3 mm"),
        ("50-ohm foam 13 mm", "foam-13mm", 3.64, 9.60, 0.86, "13 mm"),
    ]
    return [
        derived_class(des, name, f"foam polyethylene, {des.split('foam ')[1]} class", d, D, 50, vf, "0.017", steps, size, note.format(f"d {d} mm, D {D} mm"))
        for des, name, d, D, vf, size in rows
    ]


def corrugated():
    note = "generic class, no maker; typical, derived from d {} mm, D {} mm ({} inner, corrugated copper outer, loss tangent 7e-5){}; jacket size from memory"
    rows = [
        ("corrugated foam 1/2 in", "half-inch-foam", "half-inch", 4.80, 12.3, "16 mm", "smooth", "; a public table lies within 7 %"),
        ("corrugated foam 7/8 in", "seven-eighths-foam", "seven-eighths inch", 9.30, 23.5, "28 mm", "tube", "; a public table lies within 7 %"),
        ("corrugated foam 1-1/4 in", "inch-and-quarter-foam", "inch-and-a-quarter", 13.1, 33.0, "39 mm", "tube", ""),
        ("corrugated foam 1-5/8 in", "inch-and-five-eighths-foam", "inch-and-five-eighths", 17.3, 43.5, "51 mm", "tube", "; a public table with few digits reads 5 % less to 28 % more"),
    ]
    return [
        derived_class(des, name, f"{words} foam, corrugated outer", d, D, 50, 0.88, "0.018", PE_STEPS[:1] + ["10 % k 1"], size, note.format(d, D, inner, more))
        for des, name, words, d, D, size, inner, more in rows
    ]


def rigid():
    note = "EIA 50 ohm rigid line, d {} in, D {} in; typical, derived for smooth copper with 6 % added for joints and supports"
    rows = [
        ("EIA rigid 7/8 in", "eia-rigid-7-8", "7/8 inch", 0.341, 0.785, "0.875 in"),
        ("EIA rigid 1-5/8 in", "eia-rigid-1-5-8", "1-5/8 inch", 0.664, 1.527, "1.625 in"),
        ("EIA rigid 3-1/8 in", "eia-rigid-3-1-8", "3-1/8 inch", 1.315, 3.027, "3.125 in"),
    ]
    return [
        derived_class(des, name, f"EIA rigid line, {words}", d * 25.4, D * 25.4, 50, 0.998, "0.002", ["5 % k 1"], size, note.format(d, D))
        for des, name, words, d, D, size in rows
    ]


def open_wire():
    dry = "dry line only: wet or iced it loses several times as much; how much is not known"
    return [
        derived_class(
            "window line nominal 450 ohm, 18 AWG", "window-line-450", "window line, nominal 450 ohm, two 18 AWG wires", None, None,
            400, 0.905, "0.02", ["50 % k 1 to 10 MHz", "20 % k 1"], None,
            "typical, derived from the copper of two 1.024 mm wires; measured impedance is 360 to 405 ohm; below 10 MHz stranded or thinly clad wire reads up to 2.3 times this; " + dry, "1.8", 50,
        ),
        derived_class(
            "window line nominal 450 ohm, 14 AWG", "window-line-450-14awg", "window line, nominal 450 ohm, two 14 AWG wires", None, None,
            360, 0.93, "0.02", ["20 % k 1"], None,
            "typical, derived from the copper of two 1.63 mm wires; " + dry, "1.8", 50,
        ),
        derived_class(
            "open wire 600 ohm", "open-wire-600", "open wire, 600 ohm, 2 mm wires 150 mm apart", None, None,
            600, 0.99, "0.01", ["10 % k 1"], None,
            "typical, derived from the copper of two 2 mm wires, insulators left out; " + dry, "1.8", 50,
        ),
    ]  # fmt: skip


# ---------------------------------------------------------------- files

GENERATED = "// Written by tests/tools/make_catalogue.py from crates/catalogue/data. Change those, not this file.\n"

RG_HEAD = """// Cables of the RG types (MIL-DTL-17). All losses are typical figures at 20 °C: a guide for
// planning, no guarantee. A type printed on a jacket is no specification; cable sold under one
// name differs by 10 to 25 % in public charts. A cable that was measured is better than any of these.
//
// Loss by two coefficients: A = k1 sqrt(f) + k2 f. Ranges: from where copper on steel follows the
// root law up to the lower of 0.9 times the first higher mode and twice the highest point of the data.
//
// The data file has 8 rows marked max. They are left out: four are a second-hand reading of two
// slash sheets (one of them lies below every typical value), four follow from run lengths in an
// avionics manual and may hold connectors. The sheets themselves were not read.
"""

FOAM_HEAD = """// Foam polyethylene cables with foil and braid, by size class. Typical figures at 20 °C, derived.
"""

CORRUGATED_HEAD = """// Foam cables with a corrugated copper outer, by size class. Typical figures at 20 °C, derived.
"""

RIGID_HEAD = """// Rigid air line of the EIA sizes. Typical figures at 20 °C, derived from the dimensions.
"""

OPEN_HEAD = """// Parallel-wire lines. Typical figures at 20 °C for dry line, derived from the copper alone.
"""


def self_test():
    """Published fits this script must reproduce (least squares over the same rows, rounded)."""
    for des, k1, k2 in (("RG-58C", 1.4099, 0.01388), ("RG-213", 0.5674, 0.00966)):
        a, b, _, _ = fit(fit_points(des))
        assert abs(a / k1 - 1) < 2e-3 and abs(b / k2 - 1) < 5e-3, (des, a, b)
    for t in TYPES:
        check_rows(t["designation"], float(t["k1_db_100m"]), float(t["k2_db_100m"]))


def files():
    self_test()
    order = sorted(TYPES, key=lambda t: int("".join(c for c in t["designation"] if c.isdigit())))
    return {
        "cables-rg.downlead": (RG_HEAD, [rg(t) for t in order]),
        "cables-foam.downlead": (FOAM_HEAD, foam()),
        "cables-corrugated.downlead": (CORRUGATED_HEAD, corrugated()),
        "cables-rigid.downlead": (RIGID_HEAD, rigid()),
        "cables-open-wire.downlead": (OPEN_HEAD, open_wire()),
    }


def main():
    check = sys.argv[1:] == ["--check"]
    if sys.argv[1:] and not check:
        raise SystemExit(__doc__)
    stale = []
    for name, (head, items) in files().items():
        text = head + "//\n" + GENERATED + "\n" + "\n".join(items)
        path = OUT / name
        if check:
            if not path.exists() or path.read_text(encoding="utf-8") != text:
                stale.append(name)
        else:
            OUT.mkdir(parents=True, exist_ok=True)
            path.write_text(text, encoding="utf-8", newline="\n")
    if stale:
        raise SystemExit("not what the data give: " + ", ".join(stale))


if __name__ == "__main__":
    main()
