//! The one helper: texts with a cursor, and pictures of answers.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_ide::{Doc, Place, TextEdit, doc_path, doc_text};
use downlead_testkit::{Files, marked};

/// A small station that most pictures use.
pub(crate) const HILL: &str = r#"use "cables.downlead"

band 2m {
    transmit 146.9137 MHz
    receive 146.3137 MHz
}
band 70cm 438.9 MHz

instrument W1 "directional wattmeter" {
    accuracy 5 % of reading
    scale 100 W
}

station hill "the hill" {
    place mast { temperature 10 °C }
    joins n-pair
    transmitter TX1 32 W ± 5 % carrier, fm, keyed 100 %
    receiver RX1 -119 dBm for 12 dB sinad, noise figure 6 dB
    duplexer DU1 {
        high 1.45 dB ± 0.15 dB, passes 146.8 MHz to 147.0 MHz
        low 1.50 dB ± 0.15 dB, passes 146.2 MHz to 146.4 MHz
        low rejects 85 dB at 146.9137 MHz
    }
    run M1 46 m of club-foam, mast
    antenna A1 5.20 dBi ± 0.5 dB

    chain out on 2m transmit {
        TX1
        DU1.high
        read 22.5 W forward, 2026-07-04 with W1 by QY2TEC
        M1
        A1
        limit 45 W erp, "TSO 14-0093 clause 4"
    }

    chain in on 2m receive {
        A1
        M1
        DU1.low
        RX1
    }
}
// file: cables.downlead
cable club-foam "seven-eighths foam" {
    impedance 50 ohm
    velocity 0.88
    loss 0.1216 dB/100 m/sqrt(MHz) + 0.001231 dB/100 m/MHz, typical
    accuracy 4 % k 2
    source "club sheet 1, invented"
}
"#;

/// Files with a cursor.
pub(crate) struct Case {
    pub(crate) s: Snapshot,
    pub(crate) doc: Doc,
    pub(crate) at: Vec<u32>,
}

impl Case {
    /// Texts in sections (`// file: PATH`), one with `$0` in it (else the first file is asked).
    pub(crate) fn new(sections: &str) -> Case {
        let files = Files::new(sections);
        let mut clean = Files::default();
        let mut found: Option<(String, Vec<u32>)> = None;
        for path in files.paths() {
            let m = marked(files.text(path).expect("a listed file"));
            if !m.at.is_empty() {
                found = Some((path.to_owned(), m.at.clone()));
            }
            clean.put(path, m.text);
        }
        let (path, at) = found.unwrap_or_else(|| ("main.downlead".to_owned(), Vec::new()));
        let s = Snapshot::load(&["main.downlead".to_owned()], &clean);
        let doc = s
            .files()
            .iter()
            .position(|f| f.path == path)
            .map_or(Doc::File(0), Doc::File);
        Case { s, doc, at }
    }

    /// `HILL` with one piece of text replaced, usually to put the cursor there.
    pub(crate) fn hill(from: &str, to: &str) -> Case {
        assert!(HILL.contains(from), "`{from}` is no text of the hill");
        Case::new(&HILL.replacen(from, to, 1))
    }

    pub(crate) fn cursor(&self) -> u32 {
        assert_eq!(self.at.len(), 1, "one `$0` is wanted");
        self.at[0]
    }

    /// The selection, or the cursor as an empty range.
    pub(crate) fn range(&self) -> Span {
        match self.at[..] {
            [one] => Span::new(one, one),
            [a, b] => Span::new(a, b),
            _ => panic!("one or two `$0` are wanted"),
        }
    }

    pub(crate) fn text(&self) -> &str {
        doc_text(&self.s, self.doc)
    }

    /// `PATH:LINE text` of a place.
    pub(crate) fn show(&self, p: Place) -> String {
        let text = doc_text(&self.s, p.doc);
        let line = text[..p.span.start as usize].matches('\n').count() + 1;
        format!(
            "{}:{line} {}",
            doc_path(&self.s, p.doc),
            text[p.span.range()].lines().next().unwrap_or("")
        )
    }
}

/// The lines in which ranges lie, each range in «…».
pub(crate) fn marked_lines(text: &str, spans: &[(Span, &str)]) -> String {
    let mut inserts: Vec<(u32, u8, String)> = Vec::new();
    for (s, note) in spans {
        inserts.push((s.start, 1, "«".to_owned()));
        inserts.push((s.end, 0, format!("»{note}")));
    }
    inserts.sort_by_key(|i| (i.0, i.1));
    let mut out = String::new();
    let mut at = 0;
    for line in text.split_inclusive('\n') {
        let end = at + line.len();
        let here: Vec<_> = inserts
            .iter()
            .filter(|i| at <= i.0 as usize && (i.0 as usize) < end.max(at + 1))
            .collect();
        if !here.is_empty() {
            let mut from = at;
            for (pos, _, mark) in here {
                out.push_str(&text[from..*pos as usize]);
                out.push_str(mark);
                from = *pos as usize;
            }
            out.push_str(text[from..end].trim_end_matches('\n'));
            out.push('\n');
        }
        at = end;
    }
    out
}

/// A text after edits, which must be sorted and must not overlap.
pub(crate) fn applied(text: &str, edits: &[TextEdit]) -> String {
    let mut out = text.to_owned();
    for w in edits.windows(2) {
        assert!(
            w[0].doc != w[1].doc || w[0].span.end <= w[1].span.start,
            "edits overlap or are not sorted: {w:?}"
        );
    }
    for e in edits.iter().rev() {
        out.replace_range(e.span.range(), &e.text);
    }
    out
}

/// The lines that differ: `-` before, `+` after.
pub(crate) fn changes(before: &str, after: &str) -> String {
    let (a, b): (Vec<&str>, Vec<&str>) = (before.lines().collect(), after.lines().collect());
    let start = a.iter().zip(&b).take_while(|(x, y)| x == y).count();
    let end = a[start..]
        .iter()
        .rev()
        .zip(b[start..].iter().rev())
        .take_while(|(x, y)| x == y)
        .count();
    let mut out = String::new();
    // lines in the middle that are the same stand once
    let (a, b) = (&a[start..a.len() - end], &b[start..b.len() - end]);
    let (mut i, mut j) = (0, 0);
    while i < a.len() || j < b.len() {
        if i < a.len() && j < b.len() && a[i] == b[j] {
            i += 1;
            j += 1;
        } else if j < b.len() && i < a.len() && !a[i..].contains(&b[j]) && b[j..].contains(&a[i]) {
            out.push_str(&format!("+{}\n", b[j]));
            j += 1;
        } else if i < a.len() && !b[j..].contains(&a[i]) {
            out.push_str(&format!("-{}\n", a[i]));
            i += 1;
        } else if j < b.len() {
            out.push_str(&format!("+{}\n", b[j]));
            j += 1;
        } else {
            out.push_str(&format!("-{}\n", a[i]));
            i += 1;
        }
    }
    out
}
