//! Workbooks hold the same readings as the text table (written by `tests/reference/workbooks.py`).

use downlead_station::ReadingsFile;
use downlead_station::attach::{Row, text_of};

const TEXT: &str = "band (W),baseline,A,B,baseline\ntime,14:00,14:02,14:04,14:06\n2m,44,28.9,24.2,43.7\n70cm,29.7,13.9,10.2,29.5\n";

#[test]
fn a_workbook_is_read_as_its_first_sheet() {
    let want = ReadingsFile::parse(TEXT);
    assert_eq!((want.rows.len(), want.problems.len()), (8, 0), "{want:?}");
    for (name, bytes) in [
        ("july.xlsx", &include_bytes!("data/wide.xlsx")[..]),
        ("july.ODS", &include_bytes!("data/wide.ods")[..]),
    ] {
        let text = text_of(name, bytes.to_vec()).unwrap_or_else(|e| panic!("{name}: {e}"));
        let got = ReadingsFile::parse(&text);
        assert_eq!(got.problems, [], "{name}: {text}");
        assert_eq!(got.rows, want.rows, "{name}: {text}");
    }
    let minutes: Vec<Option<f64>> = want
        .rows
        .iter()
        .map(|r: &Row| r.minutes.map(|m| m.0))
        .collect();
    assert_eq!(minutes[..4], [840.0, 842.0, 844.0, 846.0].map(Some));
}

/// A workbook cut short or with a byte changed is read or refused, and never a panic.
#[test]
fn broken_workbooks_are_refused() {
    for bytes in [
        &include_bytes!("data/wide.xlsx")[..],
        &include_bytes!("data/wide.ods")[..],
    ] {
        for n in (0..bytes.len()).step_by(37) {
            let _ = text_of("a.xlsx", bytes[..n].to_vec());
            let mut changed = bytes.to_vec();
            changed[n] ^= 0x55;
            let _ = text_of("a.ods", changed);
        }
        assert!(text_of("a.xlsx", bytes[..40].to_vec()).is_err());
    }
}
