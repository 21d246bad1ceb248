#!/usr/bin/env python3
"""Writes the rule files of the built-in library from crates/catalogue/data/limits.csv and exposure.csv.

    make_rules.py           writes crates/catalogue/library/rules-*.downlead
    make_rules.py --check   compares instead; exit 1 when a file is not what it would write

One file a jurisdiction, one set of rules a service, one clause a row, with the row's citation and
confidence; what the row rests on stands in the comment above it. What a station's text cannot decide
becomes a question (`ask` and `if`). Rows that no clause can hold are counted and left out: the gain of
an amplifier, and rules that only point to those of another country. Only the standard library is used.
"""

import csv
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
OUT = ROOT / "crates/catalogue/library"
ROWS = list(csv.DictReader(open(ROOT / "crates/catalogue/data/limits.csv", newline="", encoding="utf-8")))
FIELDS = list(csv.DictReader(open(ROOT / "crates/catalogue/data/exposure.csv", newline="", encoding="utf-8")))
READ = "2026-11-25"  # the day on which the sources were read

KINDS = {
    "tx_output_pep": "output pep",
    "tx_output": "output",
    "tx_output_carrier": "output carrier",
    "dc_input": "dc-input",
    "erp": "erp",
    "erp_pep": "erp pep",
    "eirp": "eirp",
    "eirp_peak": "eirp pep",
    "eirp_mean": "eirp mean",
}
# a clause of power says nothing of whether a class may send on the frequency at all
ALLOCATED = 'condition "send only where the table of allocations lets this service and class send", "table of allocations"'
SETS = {  # jurisdiction and service: file, name, title
    ("US", "amateur"): ("us", "us-amateur", "United States, amateur service, 47 CFR 97"),
    ("US", "GMRS"): ("us", "us-gmrs", "United States, general mobile radio service, 47 CFR 95 E"),
    ("US", "FRS"): ("us", "us-frs", "United States, family radio service, 47 CFR 95 B"),
    ("US", "MURS"): ("us", "us-murs", "United States, multi-use radio service, 47 CFR 95 J"),
    ("US", "CBRS (27 MHz)"): ("us", "us-27mhz", "United States, citizens band at 27 MHz, 47 CFR 95 D"),
    ("US", "Part 90"): ("us", "us-part-90", "United States, private land mobile, 47 CFR 90"),
    ("US", "Part 22 BETRS"): ("us", "us-part-22", "United States, rural radiotelephone, 47 CFR 22"),
    ("US", "Part 74 aural STL"): ("us", "us-part-74", "United States, studio links, 47 CFR 74"),
    ("ITU", "amateur"): ("itu", "itu-amateur", "Radio Regulations, amateur service"),
    ("UK", "amateur"): ("uk", "uk-amateur", "United Kingdom, amateur service"),
    ("DE", "amateur"): ("de", "de-amateur", "Germany, amateur service"),
    ("DE", "fixed radio (not amateur)"): ("de", "de-fixed", "Germany, fixed radio other than amateur"),
    ("AU", "amateur"): ("au", "au-amateur", "Australia, amateur service"),
    ("CA", "amateur"): ("ca", "ca-amateur", "Canada, amateur service"),
    ("EU/CEPT", "SRD"): ("cept", "cept-srd", "CEPT, short-range devices"),
    ("EU/CEPT", "PMR446"): ("cept", "cept-pmr446", "CEPT, PMR 446"),
}
# what a row's conditions leave open: set, a piece of the conditions, name, question
ASKS = [
    ("us-amateur", "ITU Region 1 or 3", "region-1-or-3", "Is the station in ITU Region 1 or 3?"),
    ("us-amateur", "footnote US270", "us270-area", "Is the station in one of the areas of footnote US270 to 47 CFR 2.106?"),
    ("us-amateur", "White Sands", "white-sands", "Is the station within 241 km of the boundaries of the White Sands range?"),
    ("us-amateur", "spread-spectrum", "spread-spectrum", "Is the emission spread spectrum?"),
    ("uk-amateur", "MOST bands only", "general-power", "Does Schedule 1 of the licence give the class its general power on this band?"),
    ("uk-amateur", "PRIMARY bands only", "primary", "Is the amateur service primary on this band, by Schedule 1 of the licence?"),
    ("ca-amateur", "any kind of SSB", "ssb-emission", "Is the emission any kind of single sideband?"),
    ("ca-amateur", "all other emissions", "other-emission", "Is the emission other than single sideband?"),
    ("cept-srd", "duty cycle <= 10 % (band f)", "duty-10", "Is the duty cycle 10 % at most?"),
    ("cept-srd", "-13 dBm/10 kHz", "wide", "Is the duty cycle above 10 %, on a channel wider than 25 kHz?"),
    ("cept-srd", "channel spacing <= 25 kHz", "narrow", "Is the channel spacing 25 kHz at most, at any duty cycle?"),
    ("cept-srd", "duty 0.1 %", "duty-0.1", "Is the duty cycle 0.1 % at most, or is the channel listened to before transmission?"),
    ("cept-srd", "duty <= 0.1 %", "duty-0.1", "Is the duty cycle 0.1 % at most, or is the channel listened to before transmission?"),
    ("cept-srd", "duty <= 1 %", "duty-1", "Is the duty cycle 1 % at most, or is the channel listened to before transmission?"),
    ("cept-srd", "duty <= 10 %", "duty-10", "Is the duty cycle 10 % at most?"),
    ("cept-srd", "100 % duty", "always-on", "May the transmitter be keyed without a limit of duty?"),
]
CLASSES = {  # a row's class: the classes of the clause
    "General+": ["general", "advanced", "extra"],
    "earth/telecommand station": ["earth-station"],
    "AM/FM": ["am-fm"],
    "SSB": ["ssb"],
    "central office": ["central-office"],
    "remote/automatic": ["remote"],
    "all; airborne": ["airborne"],
    "Basic+Honours;Advanced": ["basic-honours", "advanced"],
    "any": [],
    "any fixed": [],
    "433": [],
    "868": [],
}
DUTIES = {
    "eirp_threshold_notify": "notify the authority before first operation; keep the safety distance inside the area under control",
    "eirp_threshold_certificate": "obtain a site certificate; single systems of 0.1 W EIRP at most are exempt",
    "eirp_threshold_emf": "keep a record that the general-public levels of exposure are met",
}
WIDE = 1.2  # a range of which the upper end is more than so many times the lower holds several allocations
SINCE = {"91 FR 1405": "2026-02-13"}


def number(text):
    return f"{float(text):.6f}".rstrip("0").rstrip(".")


def classes(row):
    of = row["class"]
    return CLASSES[of] if of in CLASSES else [c.strip().lower() for c in of.split(";")]


def cite(row):
    text = re.sub(r"\s*\[basis:.*", "", row["citation"]).replace('"', "'")
    return text if text != "same" else "Radiocommunications (Amateur Stations) Class Licence 2023 (F2023L01648)"


def on(row):
    low, high = float(row["f_low_mhz"]), float(row["f_high_mhz"])
    return "" if low == 0 else f" on {number(low)} MHz to {number(high)} MHz"


def comment(row):
    basis = re.search(r"\[basis: (.*)\]", row["citation"])
    parts = [row["conditions"], f"basis: {basis.group(1)}" if basis else ""]
    return "    // " + "; ".join(p for p in parts if p)


def allocated(row, ask):
    """Whether a row spans more than the service's own allocation, and says so by the word `allocated`.

    A question on the band's own schedule asks for the allocation already."""
    low, high = float(row["f_low_mhz"]), float(row["f_high_mhz"])
    wide = low == 0 or high / low > WIDE
    return wide and row["kind"] in KINDS and (ask is None or ask[2] not in ("general-power", "primary"))


def tail(row, name, extra=""):
    out = on(row)
    if name == "cept-srd":
        # a class would be a band here
        row_classes = []
    else:
        row_classes = classes(row)
    out += "".join(f", class {c}" for c in row_classes)
    ask = next((a for a in ASKS if a[0] == name and a[1] in row["conditions"]), None)
    if ask:
        out += f", if {ask[2]}"
    if allocated(row, ask):
        out += ", allocated"
    since = next((d for k, d in SINCE.items() if k in row["citation"]), None)
    if since:
        out += f", since {since}"
    return out + extra + f", \"{cite(row)}\", confidence {row['confidence']}"


def watts(row):
    if row["unit"] == "dBW":
        return f"{number(10 ** (float(row['limit']) / 10))} W"
    return f"{number(row['limit'])} W"


HAAT = re.compile(r"(?:HAAT|antenna height) (?:(\d+)-(\d+)|above (\d+)) m")
RADIUS = re.compile(r"service radius (\d+) km, reference HAAT (\d+) m")


def clauses(name, rows):
    """The clauses of a set; rows of steps are one clause."""
    out, steps = [], {}
    for r in rows:
        kind = r["kind"]
        haat, radius = HAAT.search(r["conditions"]), RADIUS.search(r["conditions"])
        if kind in DUTIES:
            then = f', then "{DUTIES[kind]}"'
            out += [comment(r), f"    threshold {watts(r)} eirp total{tail(r, name, then)}"]
        elif radius:
            steps.setdefault((cite(r), "radius"), []).append((r, radius))
        elif haat and "221-222" not in r["conditions"]:
            steps.setdefault((cite(r), "haat"), []).append((r, haat))
        else:
            out += [comment(r), f"    limit {watts(r)} {KINDS[kind]}{tail(r, name)}"]
            law = re.search(r"<= 557418/h\^2 W", r["conditions"])
            if law:
                out.append(f"    limit 557418 W * (1 m / haat)^2 {KINDS[kind]}{tail(r, name)}")
            if "221-222 MHz fixed" in r["conditions"]:
                fixed = f", class fixed, \"{cite(r)}\", confidence {r['confidence']}"
                out.append(f"    limit 50 W erp pep on 221 MHz to 222 MHz{fixed}")
                out.append(f"    limit 50 W * (7 m / haat)^2 erp pep above 7 m haat on 221 MHz to 222 MHz{fixed}")
            if "1 W EIRP in Alaska" in r["conditions"]:
                near = f" on {number(r['f_low_mhz'])} MHz to {number(r['f_high_mhz'])} MHz, if near-russia"
                out.append(f"    limit 1 W eirp pep{near}, \"{cite(r)}\", confidence {r['confidence']}")
    for (_, by), rows_of in steps.items():
        first = rows_of[0][0]
        head = f"    limit {KINDS[first['kind']]}{tail(first, name)} {{"
        out += [comment(first), head]
        if by == "haat":
            for r, m in rows_of:
                edge = f"above {m.group(3)} m" if m.group(3) else f"to {m.group(2)} m"
                out.append(f"        haat {edge} {watts(r)}")
            out.append("    }")
            continue
        for r, m in rows_of:
            out.append(f"        radius to {m.group(1)} km {watts(r)}")
        # above its reference height a row falls by a law; below it the rows above are the tighter
        out += ["    }", head]
        for r, m in rows_of:
            out.append(f"        radius to {m.group(1)} km {watts(r)} * ({m.group(2)} m / haat)^2")
        out.append("    }")
    return out


EXPOSURE = {  # jurisdiction: name, title
    "US": ("us-exposure", "United States, limits for maximum permissible exposure, 47 CFR 1.1310(e) Table 1"),
    "ICNIRP": ("icnirp-exposure", "ICNIRP 2020, reference levels for whole-body exposure, Table 5"),
    "EU;DE": ("eu-exposure", "Council Recommendation 1999/519/EC, reference levels, Annex III Table 2"),
    "CA": ("ca-exposure", "Canada, Health Canada Safety Code 6 (2015), reference levels"),
}
TIERS = {
    "occupational/controlled": "occupational",
    "general/uncontrolled": "public",
    "occupational": "occupational",
    "general public": "public",
    "uncontrolled": "public",
    "controlled": "occupational",
}


def field_law(row):
    """`9000/f^2`, `3*f^0.5`, `f/30` or a number; f in MHz."""
    text, unit = row["limit"], row["unit"]
    by = re.fullmatch(r"f/([0-9.]+)", text)
    if by:
        return f"1 {unit} * (frequency / {number(by.group(1))} MHz)"
    m = re.fullmatch(r"([0-9.]+)(?:([*/])f(?:\^([0-9.]+))?)?", text)
    value, sign, power = m.groups()
    if not sign:
        return f"{number(value)} {unit}"
    ratio = "frequency / 1 MHz" if sign == "*" else "1 MHz / frequency"
    return f"{number(value)} {unit} * ({ratio})" + (f"^{number(power)}" if power else "")


def exposure_sets():
    """Limits of fields: one set a jurisdiction. A level that holds at each instant has no averaging time."""
    out = []
    for jurisdiction, (name, title) in EXPOSURE.items():
        lines = [f"rules {name} \"{title}\" {{", f"    jurisdiction {name.split('-')[0]}", "    service exposure"]
        lines.append(f"    edition \"as read on {READ} from the sources named at each clause\"")
        lines.append(f"    dated {READ}")
        for r in FIELDS:
            if r["jurisdiction"] != jurisdiction:
                continue
            averaged = re.search(r"(?:avg|averaged) (\d+) min", r["conditions"])
            time = f", averaging {averaged.group(1)} min" if averaged else ""
            sure = f"\"{cite(r)}\", confidence {r['confidence']}"
            lines += [comment(r), f"    limit {field_law(r)}{on(r)}, {TIERS[r['class']]}{time}, {sure}"]
        out.append("\n".join(lines + ["}", ""]))
    return out


def files():
    texts, left = {"exposure": exposure_sets()}, 0
    for (jurisdiction, service), (file, name, title) in SETS.items():
        rows = [r for r in ROWS if (r["jurisdiction"], r["service"]) == (jurisdiction, service)]
        used = [r for r in rows if r["kind"] in KINDS or r["kind"] in DUTIES]
        left += len(rows) - len(used)
        all_classes = [] if name == "cept-srd" else [c for r in used for c in classes(r)]
        if any("221-222 MHz fixed" in r["conditions"] for r in used):
            all_classes.append("fixed")
        lines = [f"rules {name} \"{title}\" {{"]
        lines.append(f"    jurisdiction {file}")
        lines.append(f"    service {re.sub('[^a-z0-9]+', '-', service.lower()).strip('-')}")
        lines.append(f"    edition \"as read on {READ} from the sources named at each clause\"")
        lines.append(f"    dated {READ}")
        if all_classes:
            lines.append("    class " + ", ".join(dict.fromkeys(all_classes)))
        asked = dict.fromkeys((a[2], a[3]) for a in ASKS if a[0] == name)
        if name == "us-amateur":
            asked[("near-russia", "Is the station in Alaska within 800 km of Russia?")] = None
        lines += [f"    ask {q} \"{text}\"" for q, text in asked]
        lines.append(f"    {ALLOCATED}")
        lines += clauses(name, used) + ["}", ""]
        texts.setdefault(file, []).append("\n".join(lines))
    left += sum(1 for r in ROWS if (r["jurisdiction"], r["service"]) not in SETS)
    return {
        f"rules-{file}.downlead": "// Written by tests/tools/make_rules.py from data/limits.csv. An aid, not a legal opinion: the current\n"
        "// text of the rule decides, and some clauses are from memory (confidence low).\n\n" + "\n".join(parts)
        for file, parts in texts.items()
    }, left


def main():
    texts, left = files()
    stale = []
    for name, text in texts.items():
        path = OUT / name
        if "--check" in sys.argv:
            if not path.exists() or path.read_text(encoding="utf-8") != text:
                stale.append(name)
        else:
            path.write_text(text, encoding="utf-8")
    print(f"{len(texts)} files, {len(ROWS) - left} of {len(ROWS)} rows; left out: {left}")
    if stale:
        sys.exit(f"stale: {', '.join(stale)}")


main()
