//! Workbooks hold the same readings as the text table (written by `tests/reference/workbooks.py`).

use std::io::{Cursor, Write};

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

/// A packed file of a few hundred kilobytes that unpacks to 300 MB, also where it says it is small.
#[test]
fn a_workbook_that_unpacks_to_too_much_is_refused() {
    let mut z = zip::ZipWriter::new(Cursor::new(Vec::new()));
    let packed = zip::write::SimpleFileOptions::default()
        .compression_method(zip::CompressionMethod::Deflated);
    z.start_file("xl/worksheets/sheet1.xml", packed).unwrap();
    let block = vec![b' '; 1 << 20];
    for _ in 0..300 {
        z.write_all(&block).unwrap();
    }
    let bomb = z.finish().unwrap().into_inner();
    assert!(bomb.len() < 1 << 20, "{}", bomb.len());
    // sizes in the headers: little-endian, of 300 MB and of 3 kB
    let (honest, small) = ((300_u32 << 20).to_le_bytes(), 3000_u32.to_le_bytes());
    let mut lying = bomb.clone();
    let mut found = 0;
    for at in 0..lying.len() - 3 {
        if lying[at..at + 4] == honest {
            lying[at..at + 4].copy_from_slice(&small);
            found += 1;
        }
    }
    assert!(found > 0);
    assert!(text_of("a.xlsx", lying).is_err());
    for (name, bytes) in [("a.xlsx", &bomb), ("a.ods", &bomb)] {
        let e = text_of(name, bytes.clone())
            .expect_err("refused")
            .to_string();
        assert!(e.contains("larger than 64 MB"), "{name}: {e}");
    }
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
