"""Two small workbooks for the tests, written part by part as ECMA-376 and OASIS OpenDocument lay them out.

    python3 tests/reference/workbooks.py     writes crates/station/tests/data/wide.xlsx and wide.ods
"""

import pathlib
import zipfile

OUT = pathlib.Path(__file__).parents[2] / "crates/station/tests/data"
# a time is a share of a day: 14:00 is 0.58333...
TIMES = ["14:00", "14:02", "14:04", "14:06"]
ROWS = [("2m", [44, 28.9, 24.2, 43.7]), ("70cm", [29.7, 13.9, 10.2, 29.5])]
HEAD = ["band (W)", "baseline", "A", "B", "baseline"]


def pack(path, parts):
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as z:
        for name, text in parts:
            info = zipfile.ZipInfo(name, (2026, 11, 21, 0, 0, 0))
            info.compress_type = zipfile.ZIP_STORED if name == "mimetype" else zipfile.ZIP_DEFLATED
            z.writestr(info, text)


def minutes(t):
    h, m = t.split(":")
    return 60 * int(h) + int(m)


def xlsx():
    def text(ref, t):
        return f'<c r="{ref}" t="inlineStr"><is><t>{t}</t></is></c>'

    rows = ["".join(text(f"{c}1", t) for c, t in zip("ABCDE", HEAD))]
    rows.append(text("A2", "time") + "".join(f'<c r="{c}2" s="1"><v>{minutes(t) / 1440!r}</v></c>' for c, t in zip("BCDE", TIMES)))
    for n, (band, watts) in enumerate(ROWS, 3):
        rows.append(text(f"A{n}", band) + "".join(f'<c r="{c}{n}"><v>{w}</v></c>' for c, w in zip("BCDE", watts)))
    sheet = "".join(f'<row r="{i}">{r}</row>' for i, r in enumerate(rows, 1))
    main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
    rel = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
    kinds = "application/vnd.openxmlformats-officedocument.spreadsheetml"
    package = "http://schemas.openxmlformats.org/package/2006"
    pack(OUT / "wide.xlsx", [
        ("[Content_Types].xml", f'<Types xmlns="{package}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="{kinds}.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="{kinds}.worksheet+xml"/><Override PartName="/xl/styles.xml" ContentType="{kinds}.styles+xml"/></Types>'),
        ("_rels/.rels", f'<Relationships xmlns="{package}/relationships"><Relationship Id="r1" Type="{rel}/officeDocument" Target="xl/workbook.xml"/></Relationships>'),
        ("xl/workbook.xml", f'<workbook xmlns="{main}" xmlns:r="{rel}"><sheets><sheet name="July" sheetId="1" r:id="r1"/></sheets></workbook>'),
        ("xl/_rels/workbook.xml.rels", f'<Relationships xmlns="{package}/relationships"><Relationship Id="r1" Type="{rel}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="r2" Type="{rel}/styles" Target="styles.xml"/></Relationships>'),
        ("xl/styles.xml", f'<styleSheet xmlns="{main}"><cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="20" applyNumberFormat="1"/></cellXfs></styleSheet>'),
        ("xl/worksheets/sheet1.xml", f'<worksheet xmlns="{main}"><sheetData>{sheet}</sheetData></worksheet>'),
    ])


def ods():
    def text(t):
        return f'<table:table-cell office:value-type="string"><text:p>{t}</text:p></table:table-cell>'

    def number(w):
        return f'<table:table-cell office:value-type="float" office:value="{w}"><text:p>{w}</text:p></table:table-cell>'

    def time(t):
        h, m = t.split(":")
        return f'<table:table-cell office:value-type="time" office:time-value="PT{h}H{m}M00S"><text:p>{t}</text:p></table:table-cell>'

    rows = ["".join(map(text, HEAD)), text("time") + "".join(map(time, TIMES))]
    rows += [text(band) + "".join(map(number, watts)) for band, watts in ROWS]
    sheet = "".join(f"<table:table-row>{r}</table:table-row>" for r in rows)
    of = "urn:oasis:names:tc:opendocument:xmlns:"
    kind = "application/vnd.oasis.opendocument.spreadsheet"
    pack(OUT / "wide.ods", [
        ("mimetype", kind),
        ("META-INF/manifest.xml", f'<manifest:manifest xmlns:manifest="{of}manifest:1.0"><manifest:file-entry manifest:full-path="/" manifest:media-type="{kind}"/><manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/></manifest:manifest>'),
        ("content.xml", f'<office:document-content xmlns:office="{of}office:1.0" xmlns:table="{of}table:1.0" xmlns:text="{of}text:1.0"><office:body><office:spreadsheet><table:table table:name="July">{sheet}</table:table></office:spreadsheet></office:body></office:document-content>'),
    ])


xlsx()
ods()
