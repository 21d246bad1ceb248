#!/usr/bin/env python3
"""Computes the figures of the invented example stations from their description alone.

    scenario_numbers.py           writes examples/*/expected.json
    scenario_numbers.py --check   compares instead; exit 1 when a file is not what it would write

This is the independent side of the end-to-end tests: plain arithmetic with the standard library,
sharing no code with the program. Cable loss A = (k1 sqrt(f) sqrt(1 + 0.00393 (T - 20)) + k2 f) l / 100
with f in MHz, l in m, T in deg C (copper, IEC 60028); a mated pair loses 0.05 sqrt(f/GHz) dB;
ERP = EIRP - 2.15 dB; uncertainties by GUM (JCGM 100:2008): a rectangular half-width a counts
a / sqrt(3), a stated U / k; a relative power error counts 10 / ln 10 dB.

It stops when a figure differs from the story's printed one by more than its rounding allows.
"""

import json
import math
import pathlib
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]

CABLES = {  # dB/100 m per sqrt(MHz), dB/100 m per MHz, at 20 deg C
    "5mm-tinned": (1.5284, 0.004123),
    "5mm-double": (1.3014, 0.004123),
    "14mm-solid": (0.4084, 0.004123),
    "half-foam": (0.2380, 0.001241),
    "seven-eighths-foam": (0.1216, 0.001231),
    "quarter-flex": (0.6061, 0.002169),
}
DIPOLE = 2.15
PER_RELATIVE = 10 / math.log(10)
ROOT3 = math.sqrt(3)


def cable_db(name, mhz, metres, celsius):
    k1, k2 = CABLES[name]
    return (k1 * math.sqrt(mhz) * math.sqrt(1 + 0.00393 * (celsius - 20)) + k2 * mhz) * metres / 100


def pairs_db(n, mhz):
    return n * 0.05 * math.sqrt(mhz / 1000)


def ratio(db):
    return 10 ** (db / 10)


def close(what, got, printed, within):
    if abs(got - printed) > within:
        raise SystemExit(f"{what}: {got:.4f}, the story says {printed}")


# ---------------------------------------------------------------- the hill

INDOOR, OUTDOOR = 15, 10
BANDS = {
    "2m": {
        "tx_mhz": 146.9137, "rx_mhz": 146.3137,
        "isolator": 0.55, "tx_leg": 1.45, "rx_leg": 1.50, "diplexer": 0.20, "protector": 0.10,
        "gain_dbi": 5.20, "limit_w": 30, "wet_db": 1.35,
    },
    "70cm": {
        "tx_mhz": 438.9137, "rx_mhz": 431.3137,
        "isolator": 0.60, "tx_leg": 1.10, "rx_leg": 1.15, "diplexer": 0.30, "protector": 0.15,
        "gain_dbi": 7.60, "limit_w": 20, "wet_db": 2.60,
    },
}  # fmt: skip
REVISIONS = [
    # file, main run, wet, watts on 2 m and 70 cm
    ("rev1", "half-foam", False, {"2m": 40, "70cm": 23}),
    ("rev2", "half-foam", True, {"2m": 40, "70cm": 35}),
    ("rev3", "seven-eighths-foam", False, {"2m": 40, "70cm": 35}),
    ("rev4", "seven-eighths-foam", False, {"2m": 32, "70cm": 16}),
]
PRINTED = {  # loss dB, ERP W, margin dB, verdict as the story prints them
    ("rev1", "2m"): (4.82, 26.6, 0.52, "cannot-tell"),
    ("rev1", "70cm"): (6.65, 17.5, 0.59, "cannot-tell"),
    ("rev2", "2m"): (6.17, 19.5, None, "met"),
    ("rev2", "70cm"): (9.25, 14.6, None, "met"),
    ("rev3", "2m"): (4.18, 30.8, -0.12, "cannot-tell"),
    ("rev3", "70cm"): (5.55, 34.2, -2.33, "not-met"),
    ("rev4", "2m"): (4.18, 24.7, 0.85, "met"),
    ("rev4", "70cm"): (5.55, 15.6, 1.07, "met"),
}


def talk_out(band, main, wet, watts):
    b, f = BANDS[band], BANDS[band]["tx_mhz"]
    shared = cable_db("quarter-flex", f, 3.0, INDOOR)  # T1
    jumpers = cable_db("5mm-double", f, 1.4 + 0.6 + 0.9, INDOOR)  # J1 J2 J3
    run = cable_db(main, f, 46, OUTDOOR)
    tail = cable_db("quarter-flex", f, 2.2, OUTDOOR)
    cables = jumpers + shared + run + tail
    devices = b["isolator"] + b["tx_leg"] + b["diplexer"] + b["protector"]
    connectors = pairs_db(14, f)
    loss = cables + devices + connectors + (b["wet_db"] if wet else 0)
    # 9 joins, then 2 + 3 pairs: all but the last (M1 to T2) and T2 to A1 lie before the run's end
    entry = loss - run - tail - pairs_db(2, f) - (b["wet_db"] if wet else 0)
    budget = {
        "transmitter": 0.05 * PER_RELATIVE / ROOT3,
        "cables": 0.04 / 2 * cables,  # one sheet: fully correlated
        "connectors": 0.50 * connectors / ROOT3,  # one family: fully correlated
        "devices": math.sqrt(4) * 0.15 / ROOT3,
        "antenna_gain": 0.5 / ROOT3,
    }
    u = math.sqrt(sum(x * x for x in budget.values()))
    antenna = watts / ratio(loss)
    eirp = antenna * ratio(b["gain_dbi"])
    erp = antenna * ratio(b["gain_dbi"] - DIPOLE)
    margin = 10 * math.log10(b["limit_w"] / erp)
    verdict = "met" if margin > 2 * u else "not-met" if margin < -2 * u else "cannot-tell"
    return {
        "chain": f"talk-out-{band}",
        "band": band,
        "frequency_hz": round(f * 1e6),
        "transmitter_w": watts,
        "total_loss_db": loss,
        "cable_entry_w": watts / ratio(entry),
        "antenna_w": antenna,
        "erp_w": erp,
        "eirp_w": eirp,
        "uncertainty_db": 2 * u,
        "budget_u_db": budget,
        "limit_w": b["limit_w"],
        "margin_db": margin,
        "verdict": verdict,
    }


def talk_in(band, main, wet):
    b, f = BANDS[band], BANDS[band]["rx_mhz"]
    cables = (
        cable_db("quarter-flex", f, 2.2, OUTDOOR)
        + cable_db(main, f, 46, OUTDOOR)
        + cable_db("quarter-flex", f, 3.0, INDOOR)
        + cable_db("5mm-double", f, 0.9 + 1.2, INDOOR)  # J3, then J4 to the receiver
    )
    loss = cables + b["protector"] + b["diplexer"] + b["rx_leg"] + pairs_db(12, f) + (b["wet_db"] if wet else 0)
    return {"chain": f"talk-in-{band}", "band": band, "frequency_hz": round(f * 1e6), "total_loss_db": loss}


def pellgarrow():
    out = {}
    for name, main, wet, watts in REVISIONS:
        chains = []
        for band in BANDS:
            c = talk_out(band, main, wet, watts[band])
            loss, erp, margin, verdict = PRINTED[name, band]
            close(f"{name} {band} loss", c["total_loss_db"], loss, 0.0051)
            close(f"{name} {band} ERP", c["erp_w"], erp, 0.051)
            if margin is not None:
                close(f"{name} {band} margin", c["margin_db"], margin, 0.0051)
            if c["verdict"] != verdict:
                raise SystemExit(f"{name} {band}: {c['verdict']}, the story says {verdict}")
            chains.append(c)
        for band in BANDS:
            chains.append(talk_in(band, main, wet))
        out[name] = {"station": "pellgarrow", "chains": chains}
    last = out["rev4"]["chains"]
    for c, uncertainty in ((last[0], 0.74), (last[1], 0.78)):
        close(f"rev4 {c['band']} U", c["uncertainty_db"], uncertainty, 0.0051)
    for c, loss in ((last[2], 3.51), (last[3], 4.67)):
        close(f"rev4 {c['chain']} loss", c["total_loss_db"], loss, 0.0051)
    for c, antenna in ((last[0], 12.2), (last[1], 4.5)):
        close(f"rev4 {c['band']} antenna", c["antenna_w"], antenna, 0.051)
    # the traps: what the wrong reading of a line would give
    c = out["rev1"]["chains"][0]
    traps = {
        "gain_read_as_dbd_erp_w": 40 / ratio(c["total_loss_db"]) * ratio(5.20),
        "protector_forgotten_erp_w": c["erp_w"] * ratio(0.10),
        "legs_swapped_loss_db": c["total_loss_db"] + 0.05,
    }
    close("trap dBd", traps["gain_read_as_dbd_erp_w"], 43.7, 0.051)
    close("trap SP1", traps["protector_forgotten_erp_w"], 27.2, 0.061)  # the story counts from 26.6 W
    out["rev1"]["traps"] = traps
    return out


# ---------------------------------------------------------------- the shack

SHACK_HF = [  # band, MHz, printed loss
    ("160m", 1.9, 0.30),
    ("80m", 3.7, 0.36),
    ("40m", 7.1, 0.44),
    ("20m", 14.2, 0.57),
    ("15m", 21.2, 0.66),
    ("10m", 28.6, 0.75),
]
SHACK_VU = [  # band, MHz, W, dBi; printed loss, W at the antenna, ERP W
    ("2m", 145.3, 50, 4.5, 1.02, 39.6, 68.0),
    ("70cm", 434.5, 35, 7.2, 1.74, 23.5, 75.1),
]


def shack():
    chains = []
    for band, f, printed in SHACK_HF:
        loss = cable_db("14mm-solid", f, 24, INDOOR) + pairs_db(6, f) + 0.15
        close(f"shack {band} loss", loss, printed, 0.0051)
        chains.append({"chain": "hf", "band": band, "frequency_hz": round(f * 1e6), "total_loss_db": loss, "antenna_w": 100 / ratio(loss)})
    close("shack HF power, best", chains[0]["antenna_w"], 93, 0.51)
    close("shack HF power, worst", chains[-1]["antenna_w"], 84, 0.51)
    for band, f, watts, gain, loss_printed, w_printed, radiated in SHACK_VU:
        loss = cable_db("half-foam", f, 19, INDOOR) + cable_db("quarter-flex", f, 2.5, INDOOR) + pairs_db(8, f) + 0.10
        antenna = watts / ratio(loss)
        erp = antenna * ratio(gain - DIPOLE)
        close(f"shack {band} loss", loss, loss_printed, 0.0051)
        close(f"shack {band} power", antenna, w_printed, 0.051)
        close(f"shack {band} ERP", erp, radiated, 0.051)
        chains.append({
            "chain": "vu", "band": band, "frequency_hz": round(f * 1e6), "total_loss_db": loss,
            "antenna_w": antenna, "erp_w": erp, "eirp_w": antenna * ratio(gain),
        })  # fmt: skip
    return {"shack": {"station": "shack", "chains": chains}}


def rounded(x):
    if isinstance(x, float):
        return round(x, 6)
    if isinstance(x, dict):
        return {k: rounded(v) for k, v in x.items()}
    if isinstance(x, list):
        return [rounded(v) for v in x]
    return x


def main():
    check = sys.argv[1:] == ["--check"]
    if sys.argv[1:] and not check:
        raise SystemExit(__doc__)
    stale = []
    for folder, value in (("pellgarrow", pellgarrow()), ("shack", shack())):
        text = json.dumps(rounded(value), indent=2, ensure_ascii=False) + "\n"
        path = ROOT / "examples" / folder / "expected.json"
        if check:
            if not path.exists() or path.read_text(encoding="utf-8") != text:
                stale.append(str(path.relative_to(ROOT)))
        else:
            path.write_text(text, encoding="utf-8", newline="\n")
    if stale:
        raise SystemExit("not what the description gives: " + ", ".join(stale))


if __name__ == "__main__":
    main()
