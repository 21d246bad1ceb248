//! Calibration certificates: corrected readings and their uncertainty, against
//! `tests/reference/certificate.py` (numpy); days, ranges, and files that cannot be read.

use downlead_eval::Snapshot;
use downlead_eval::bench::result::BenchCell;
use downlead_testkit::Files;

const CSV: &str = include_str!("certificates/w1-2026.csv");
const XML: &str = include_str!("certificates/w1-2026.xml");

struct Case {
    cell: BenchCell,
    said: Vec<(String, String)>,
    assumed: Vec<String>,
}

impl Case {
    fn has(&self, code: &str) -> Option<&str> {
        self.said.iter().find(|s| s.0 == code).map(|s| &*s.1)
    }
}

/// A session of one piece with an instrument of these lines.
fn computed(lines: &str, date: &str, mhz: &str, files: &[(&str, &str)]) -> Case {
    let text = format!(
        "cable c {{ loss 2.5 dB/100 m/sqrt(MHz); accuracy 20 %; source \"invented\" }}\n\
         instrument W1 {{\n    accuracy 5 % of reading\n    repeatability 0.6 % k 1\n{lines}}}\n\
         session s {{\n    read {date} with W1 by QY5BEN\n    temperature 20 °C\n    piece A 12 m of c\n    readings on {mhz} MHz {{\n        \
         baseline 44.0 W at 0 min\n        through A 18.3 W at 2 min\n        baseline 44.0 W at 4 min\n    }}\n}}\n"
    );
    let mut all = Files::default().with("main.downlead", &text);
    for (name, text) in files {
        all = all.with(name, text);
    }
    let s = Snapshot::load(&["main.downlead".to_owned()], &all);
    let said = s
        .diagnostics()
        .iter()
        .map(|d| {
            (
                d.code.id.to_owned(),
                format!("{} {}", d.message, d.help.join(" ")),
            )
        })
        .collect();
    let session = s.scopes()[0]
        .items()
        .iter()
        .find_map(|(_, _, r)| r.session.as_deref())
        .expect("a session");
    let places = downlead_eval::Places::new(&s);
    Case {
        cell: session.cells[0].clone(),
        said,
        assumed: session.assumptions(&places),
    }
}

const LINE: &str = "    certificate from \"w1.csv\"\n";

fn plain() -> f64 {
    10.0 * (44.0_f64 / 18.3).log10()
}

/// Loss and U of certificate.py, from a table and from XML in both forms of D-SI.
#[test]
fn readings_are_corrected_and_known_as_the_certificate_says() {
    let older = XML
        .replace("si:measurementUncertaintyUnivariateXMLList", "si:outer")
        .replace("si:expandedMUXMLList", "si:expandedUncXMLList")
        .replace("si:valueExpandedMUXMLList", "si:uncertaintyXMLList");
    // what a reference showed, in milliwatts, beside what the meter showed
    let reference = XML
        .replace("basic_correction", "basic_referenceValue")
        .replace("1.6 -0.8 2.9 2.2", "10160 99200 10290 102200")
        .replace("<si:unitXMLList>\\percent", "<si:unitXMLList>\\milli\\watt")
        .replace("1.2 1.0 1.4 1.2", "120 1000 140 1200");
    // an error is a correction with the other sign
    let error = XML
        .replace("basic_correction", "basic_measurementError")
        .replace("1.6 -0.8 2.9 2.2", "-1.6 0.8 -2.9 -2.2");
    let semicolons = CSV.replace(',', ";").replace('.', ",");
    let shown = CSV.replace("correction_percent", "Correction (percent)");
    for (file, text) in [
        ("w1.csv", CSV),
        ("w1.csv", &semicolons),
        ("w1.csv", &shown),
        ("w1.xml", XML),
        ("w1.xml", &older),
        ("w1.xml", &reference),
        ("w1.xml", &error),
    ] {
        let line = format!("    certificate from \"{file}\"\n");
        let c = computed(&line, "2026-07-19", "145.3", &[(file, text)]);
        let m = &c.cell.measured;
        assert!(
            (m.db - 3.784_492_081).abs() < 1e-8,
            "{file}: {} {:?}",
            m.db,
            c.said
        );
        assert!(
            (m.expanded_db - 0.066_768_4).abs() < 1e-6,
            "{file}: {}",
            m.expanded_db
        );
        assert_eq!(
            c.said
                .iter()
                .filter(|s| s.0.starts_with("certificate"))
                .count(),
            0
        );
        // its linearity is in the certificate, and nothing is assumed of it
        assert!(
            !c.assumed.iter().any(|a| a.contains("linearity")),
            "{:?}",
            c.assumed
        );
    }
}

#[test]
fn a_certificate_holds_on_its_days() {
    let of = |date: &str| computed(LINE, date, "145.3", &[("w1.csv", CSV)]);
    let good = of("2026-07-19");
    for (date, words) in [
        (
            "2028-02-04",
            "held until 2028-02-03; it was used on 2028-02-04",
        ),
        (
            "2026-01",
            "before its certificate `w1.csv` was made on 2026-02-03",
        ),
    ] {
        let c = of(date);
        let said = c
            .has("certificate-not-valid")
            .unwrap_or_else(|| panic!("{date}: {:?}", c.said));
        assert!(said.contains(words), "{said}");
        // corrected all the same, and less well known: linearity 1 % of both readings
        assert!((c.cell.measured.db - good.cell.measured.db).abs() < 1e-9);
        let more = 2.0 * 4.342_944_8 * 0.01 / 3_f64.sqrt() * 2_f64.sqrt();
        let due = good.cell.measured.expanded_db.hypot(more);
        assert!((c.cell.measured.expanded_db - due).abs() < 1e-6, "{date}");
        assert!(
            c.assumed.iter().any(|a| a.contains("linearity 1 %")),
            "{:?}",
            c.assumed
        );
    }
    // of two certificates the one of the day counts
    let older = CSV.replace("2028", "2026").replace(
        "2026-02-03\n# valid until 2026",
        "2024-02-03\n# valid until 2026",
    );
    let older = older.replace(",1.6,", ",3.6,");
    let both = format!("{LINE}    certificate from \"w1-2024.csv\"\n");
    let files = [("w1.csv", CSV), ("w1-2024.csv", &*older)];
    let c = computed(&both, "2026-07-19", "145.3", &files);
    assert!((c.cell.measured.db - good.cell.measured.db).abs() < 1e-12);
    let c = computed(&both, "2025-07-19", "145.3", &files);
    assert_eq!(c.has("certificate-not-valid"), None);
    assert!((c.cell.measured.db - good.cell.measured.db).abs() > 1e-3);
    // the instrument's own dates stand for those a table does not state
    let bare = CSV
        .replace("# valid from", "# from")
        .replace("# valid until", "# until");
    let dated = format!("{LINE}    calibrated 2026-02-03\n    due 2028-02-03\n");
    let c = computed(&dated, "2026-07-19", "145.3", &[("w1.csv", &bare)]);
    assert_eq!(c.has("certificate-not-valid"), None);
    let c = computed(LINE, "2026-07-19", "145.3", &[("w1.csv", &bare)]);
    assert!(c.has("certificate-not-valid").is_some());
}

#[test]
fn nothing_is_carried_on_beyond_the_points() {
    let c = computed(LINE, "2026-07-19", "1296", &[("w1.csv", CSV)]);
    let said = c.has("certificate-range").expect("a finding");
    assert!(said.contains("44.0 W at 1296 MHz"), "{said}");
    assert!(
        said.contains("from 50 MHz to 440 MHz, from 10.0 W to 100 W, 3 readings in all"),
        "{said}"
    );
    assert!((c.cell.measured.db - plain()).abs() < 1e-12);
    assert!(
        c.assumed.iter().any(|a| a.contains("linearity 1 %")),
        "{:?}",
        c.assumed
    );
    // only the piece is below the lowest level: the baseline alone is corrected
    let high = CSV.replace(",10,", ",20,");
    let c = computed(LINE, "2026-07-19", "145.3", &[("w1.csv", &high)]);
    assert!(
        c.has("certificate-range")
            .is_some_and(|s| s.contains("18.3 W"))
    );
    assert!((c.cell.measured.db - plain()).abs() > 0.01);
    assert!(
        c.cell.measured.expanded_db > 0.2,
        "the scale of the piece's reading does not cancel"
    );
}

#[test]
fn files_that_cannot_be_read_are_not_applied() {
    let laughs = "<?xml version=\"1.0\"?><!DOCTYPE l [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;\">]><l>&b;</l>";
    for (file, text, words) in [
        (
            "w1.csv",
            CSV.replace(",1.2,2\n50", ",x,2\n50"),
            "line 5: `x`",
        ),
        (
            "w1.csv",
            CSV.replace("uncertainty_percent,k", "uncertainty_percent,q"),
            "column `q`",
        ),
        (
            "w1.csv",
            CSV.replace("50,10,1.6", "50,10,160"),
            "factor of two",
        ),
        ("w1.csv", CSV.replace("440,100", "440,10"), "twice"),
        (
            "w1.csv",
            "frequency_mhz,piece,forward_w\n145.3,A,3\n".to_owned(),
            "no calibration certificate",
        ),
        (
            "w1.xml",
            XML.replace("1.6 -0.8 2.9 2.2", "1.6 -0.8 2.9"),
            "A list has 3 values, and others 4",
        ),
        (
            "w1.xml",
            XML.replace("\\mega\\hertz", "\\metre"),
            "no list of frequencies",
        ),
        (
            "w1.xml",
            XML.replace("</dcc:results>", ""),
            "no XML that can be read",
        ),
        (
            "w1.xml",
            XML.replace(
                "<si:coverageFactorXMLList>2<",
                "<si:coverageFactorXMLList>two<",
            ),
            "`two` are no numbers",
        ),
        (
            "w1.xml",
            XML.replace("digitalCalibrationCertificate", "other"),
            "its root is `other`",
        ),
        ("w1.xml", laughs.to_owned(), "no XML that can be read"),
        (
            "w1.xml",
            XML.replace("basic_correction", "basic_other"),
            "no correction",
        ),
    ] {
        let line = format!("    certificate from \"{file}\"\n");
        let c = computed(&line, "2026-07-19", "145.3", &[(file, &text)]);
        let said = c
            .has("certificate-file")
            .unwrap_or_else(|| panic!("{words}: {:?}", c.said));
        assert!(said.contains(words), "{words}: {said}");
        assert!((c.cell.measured.db - plain()).abs() < 1e-12, "{words}");
    }
}

/// A reading of a station, its log and the power of its transmitter are corrected alike.
#[test]
fn readings_of_a_station_are_corrected() {
    let text = "instrument W1 {\n    accuracy 5 % of reading\n    certificate from \"w1.csv\"\n}\n\
         band 2m 145.3 MHz\nstation st {\n  transmitter TX1 18 W carrier\n  chain talk on 2m {\n    TX1\n    read 18.3 W forward, 2026-07-04 with W1 by QY2TEC\n    \
         readings from \"log.csv\"\n    run 10 m of half-inch-foam\n    antenna 4.5 dBi\n  }\n}\n\
         chain measured on 145.3 MHz {\n    transmitter 18.3 W carrier, 2026-07-04 with W1 by QY2TEC\n    run 10 m of half-inch-foam\n    antenna 4.5 dBi\n}\n";
    let files = Files::default()
        .with("main.downlead", text)
        .with("w1.csv", CSV)
        .with(
            "log.csv",
            "after,band,date,instrument,forward_w\nTX1,2m,2026-07-04,W1,18.3\n",
        );
    let s = Snapshot::load(&["main.downlead".to_owned()], &files);
    let scope = &s.scopes()[0];
    assert!(
        !s.diagnostics()
            .iter()
            .any(|d| d.code.id.starts_with("readings")),
        "{:?}",
        s.diagnostics()
    );
    let bands: Vec<_> = scope.items().iter().flat_map(|i| &i.2.chains).collect();
    // certificate.py: the factor at 18.3 W, and U of one reading
    let factor = 1.018_266_619_f64;
    let due = 10.0 * (18.3 * factor / 18.0).log10();
    let r = &bands[0].bands[0].readings[0];
    assert!((r.difference_db - due).abs() < 1e-8, "{}", r.difference_db);
    let row = bands[0].bands[0].logs[0].rows[0].clone();
    assert!((row.difference_db.unwrap() - due).abs() < 1e-8);
    assert_eq!(row.read, 18.3);
    assert!((row.corrected - 18.3 * factor).abs() < 1e-6);
    // the power of the transmitter itself
    let p = bands[1].bands[0]
        .budget
        .iter()
        .find(|b| format!("{:?}", b.name).contains("W1"));
    let p = p.unwrap_or_else(|| panic!("{:?}", bands[1].bands[0].budget));
    assert!(
        (2.0 * p.standard_db - 0.030_206_99).abs() < 1e-5,
        "{}",
        p.standard_db
    );
    let of = |c: usize| bands[c].bands[0].eirp_w.expect("an EIRP");
    assert!((of(1) / of(0) - 18.3 * factor / 18.0).abs() < 1e-6);
}
