//! Nothing a file can hold makes the reader panic, and what it gives is always sound. Bytes are
//! pseudo-random from fixed seeds, so every run is the same.

use downlead_touchstone::{Touchstone, WriteOptions, read, write};

/// Marsaglia's xorshift, Journal of Statistical Software 8(14), 2003.
struct Bytes(u64);

impl Bytes {
    fn next(&mut self) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        self.0
    }

    fn below(&mut self, n: usize) -> usize {
        usize::try_from(self.next() >> 11).unwrap_or(0) % n.max(1)
    }
}

/// Reads, and checks what holds for any file.
fn sound(text: &[u8], ports: Option<usize>) -> Touchstone {
    let file = read(text, ports);
    let usable = file.network.is_some();
    let said = file
        .notes
        .iter()
        .any(|n| n.severity == downlead_touchstone::Severity::Error);
    assert!(
        usable || said,
        "no network and no error: {:?}",
        String::from_utf8_lossy(text)
    );
    for note in &file.notes {
        assert!(
            note.bytes.start <= note.bytes.end && note.bytes.end <= text.len(),
            "{note:?}"
        );
        assert!(
            note.line >= 1 && note.column >= 1 && !note.message.is_empty(),
            "{note:?}"
        );
        let lines = text.iter().filter(|b| matches!(b, b'\n' | b'\r')).count() + 1;
        assert!(note.line <= lines, "{note:?}");
    }
    if let Some(network) = &file.network {
        assert!(network.points() > 0);
        assert!(
            network
                .s()
                .iter()
                .all(|z| z.re.is_finite() && z.im.is_finite())
        );
        assert!(network.frequencies_hz().windows(2).all(|w| w[0] < w[1]));
        assert_eq!(file.header.ports, Some(network.ports()));
        let text = write(network, &WriteOptions::default()).expect("S always writes");
        let again = read(text.as_bytes(), Some(network.ports()));
        assert_eq!(again.network.as_ref(), Some(network), "{text}");
    }
    file
}

#[test]
fn random_bytes() {
    let mut r = Bytes(0x9E37_79B9_7F4A_7C15);
    // bytes of which files are made, and any other
    let usual = b"0123456789.-+eE \t\r\n!#[]RMHzGSIDBA,_";
    for round in 0..6000 {
        let length = r.below(300);
        let text: Vec<u8> = (0..length)
            .map(|_| match r.below(if round % 2 == 0 { 40 } else { 3 }) {
                0 => u8::try_from(r.below(256)).unwrap_or(0),
                _ => usual[r.below(usual.len())],
            })
            .collect();
        let ports = [None, Some(0), Some(1), Some(2), Some(3), Some(usize::MAX)][r.below(6)];
        sound(&text, ports);
    }
}

/// Words of the format in any order.
#[test]
fn random_words() {
    let words = [
        "[Version]",
        "2.0",
        "1.0",
        "[Number of Ports]",
        "1",
        "2",
        "3",
        "[Two-Port Data Order]",
        "12_21",
        "21_12",
        "[Reference]",
        "50",
        "75",
        "[Matrix Format]",
        "Lower",
        "Upper",
        "Full",
        "[Network Data]",
        "[Noise Data]",
        "[End]",
        "[Begin Information]",
        "[End Information]",
        "[Number of Frequencies]",
        "[Number of Noise Frequencies]",
        "[Mixed-Mode Order]",
        "D1,2",
        "#",
        "MHz",
        "GHz",
        "S",
        "Z",
        "Y",
        "H",
        "G",
        "RI",
        "MA",
        "DB",
        "R",
        "0.5",
        "-1",
        "1e3",
        "0",
        "nan",
        "1e308",
        "-400",
        "! x",
        "! Port Impedance 50 0",
        "\n",
        "\n",
        "\n",
        "\n",
        "\n",
        "\r\n",
        "\n1 .1 0\n",
        "\n2 .2 0\n3 .3 0\n",
        "\n1 .1 0 .2 0 .3 0 .4 0\n",
        "\n2 .1 0 .2 0 .3 0 .4 0\n",
    ];
    let mut r = Bytes(0x0123_4567_89AB_CDEF);
    let mut usable = 0;
    for _ in 0..12_000 {
        let count = r.below(60);
        let text: Vec<&str> = (0..count).map(|_| words[r.below(words.len())]).collect();
        let ports = [None, Some(1), Some(2), Some(3)][r.below(4)];
        // without an option line nothing can be used
        let head = ["", "# MHz S RI R 50\n"][r.below(2)];
        let text = format!("{head}{}", text.join(" "));
        usable += usize::from(sound(text.as_bytes(), ports).network.is_some());
    }
    assert!(usable > 100, "the words make {usable} files with data");
}

/// Good files with bytes changed, cut out, doubled, or cut off.
#[test]
fn mutated_files() {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/data/theirs");
    let mut files: Vec<_> = std::fs::read_dir(folder)
        .expect("the folder of files")
        .map(|e| e.expect("an entry").path())
        .collect();
    files.sort();
    let mut r = Bytes(0xDEAD_BEEF_CAFE_F00D);
    for path in files {
        let good = std::fs::read(&path).expect("a file");
        let name = path.to_string_lossy();
        let ports = downlead_touchstone::ports_from_name(&name);
        for _ in 0..120 {
            let mut text = good.clone();
            for _ in 0..=r.below(4) {
                let at = r.below(text.len());
                let end = (at + r.below(20)).min(text.len());
                match r.below(5) {
                    0 => text[at] = u8::try_from(r.below(256)).unwrap_or(0),
                    1 => drop(text.drain(at..end)),
                    2 => {
                        let piece = text[at..end].to_vec();
                        drop(text.splice(at..at, piece));
                    }
                    3 => text[at] = b"\n .!#[-e,"[r.below(9)],
                    _ => text.truncate(at.max(1)),
                }
                if text.is_empty() {
                    break;
                }
            }
            sound(&text, ports);
        }
    }
}

/// Sizes that only a mistake or malice writes.
#[test]
fn absurd_sizes() {
    let long = "9".repeat(100_000);
    for text in [
        format!(
            "[Version] 2.0\n# MHz S RI R 50\n[Number of Ports] {long}\n[Network Data]\n1 0 0\n"
        ),
        "[Version] 2.0\n# MHz S RI R 50\n[Number of Ports] 1024\n[Network Data]\n1 0 0\n"
            .to_owned(),
        format!("# MHz S RI R 50\n1 {long} 0\n"),
        format!("# MHz S RI R 50\n0.{long} 0.{long} 0\n"),
        format!("# MHz S RI R 50\n1e-{long} 0 0\n"),
        format!("# {long}\n[{long}]\n[{long}\n1 0 0"),
        format!("# MHz S RI R {}\n1 0 0\n", "50 ".repeat(10_000)),
        format!("# MHz S RI R 50\n{}\n", "1 ".repeat(100_001)),
    ] {
        sound(text.as_bytes(), Some(1));
        sound(text.as_bytes(), None);
    }
}
