//! Swatches of status at what is judged.

use downlead_base::Span;
use downlead_ide::{Config, HintKinds, Status, Swatch, inlay_hints, swatches};

use crate::bench::{BENCH, SITE};
use crate::case::{Case, marked_lines};

fn on() -> Config {
    Config {
        swatches: true,
        ..Config::default()
    }
}

fn picture(c: &Case, config: &Config) -> String {
    let found = swatches(&c.s, c.doc, config);
    let note = |s: &Swatch| match s.status {
        Status::Good => "●good",
        Status::Unclear => "◐unclear",
        Status::Bad => "○bad",
    };
    let spans: Vec<(Span, &str)> = found.iter().map(|s| (s.span, note(s))).collect();
    marked_lines(c.text(), &spans)
}

#[test]
fn nothing_unless_wanted() {
    let c = Case::hill("station hill", "station hill");
    assert!(!Config::default().swatches);
    assert_eq!(swatches(&c.s, c.doc, &Config::default()), []);
    assert_eq!(swatches(&c.s, c.doc, &on()).len(), 2);
}

/// 50 W less 1 dB into 5 dBi are 76.7 W ERP: beyond 30 W, within 0.1 dB of 77 W, below 200 W.
#[test]
fn at_limits_and_readings_of_a_chain() {
    let c = Case::new(
        "let legal 30 W\nchain over on 145 MHz {\n    transmitter 50 W ± 5 % carrier\n    read 50 W ± 5 % forward, 2026-07-04\n    pad 1 dB ± 0.2 dB\n    read 20 W ± 5 % forward, 2026-07-04\n    expect loss 1 dB\n    antenna 5 dBi ± 0.5 dB\n    limit 30 W erp, \"clause 1\"\n    limit 77 W ± 1 % erp, \"clause 2\"; limit 200 W eirp\n    limit legal erp\n}\n",
    );
    insta::assert_snapshot!(picture(&c, &on()));
}

/// Where a hint judges a line of the chain there is a swatch, and its colour is that of the word.
#[test]
fn where_the_hints_judge() {
    for c in [
        Case::hill("station hill", "station hill"),
        Case::new(BENCH),
        Case::new(SITE),
    ] {
        let all = Span::new(0, u32::MAX);
        let found = swatches(&c.s, c.doc, &on());
        let mut judging = 0;
        for h in inlay_hints(&c.s, c.doc, all, &Config::default()) {
            let line = c.text()[..h.offset as usize].rfind('\n').unwrap_or(0);
            let here = found
                .iter()
                .filter(|s| (line..h.offset as usize).contains(&(s.span.start as usize)));
            let here: Vec<Status> = here.map(|s| s.status).collect();
            let text = h.text();
            let says = |words: &[&str]| words.iter().any(|w| text.contains(w));
            let wanted = if says(&["not met", "differ"]) {
                Some(Status::Bad)
            } else if says(&["cannot tell", "cannot-tell"]) {
                Some(Status::Unclear)
            } else if says(&["met: ", "agree"]) {
                Some(Status::Good)
            } else {
                None
            };
            // the head of a session sums up, and a log of several bands shows two
            if text.starts_with("per 100 m") {
                continue;
            }
            assert_eq!(here, wanted.into_iter().collect::<Vec<_>>(), "{text}");
            judging += usize::from(wanted.is_some());
        }
        assert_eq!(judging, found.len());
    }
}

#[test]
fn on_the_bench() {
    insta::assert_snapshot!(picture(&Case::new(BENCH), &on()));
}

/// A tag that begins with a digit is not taken for what was read.
#[test]
fn at_pieces_named_by_a_number() {
    let text = BENCH
        .replace("piece B", "piece 7m")
        .replace("through B", "through 7m")
        .replace("open B", "open 7m")
        .replace("short B", "short 7m");
    let c = Case::new(&text);
    let found = swatches(&c.s, c.doc, &on());
    let shown: Vec<&str> = found.iter().map(|s| &c.text()[s.span.range()]).collect();
    assert!(
        shown.contains(&"7m") && shown.contains(&"23.7 W"),
        "{shown:?}"
    );
    let pieces = shown.iter().filter(|s| **s == "7m").count();
    assert_eq!(pieces, 1, "at its own line only: {shown:?}");
}

#[test]
fn at_a_log() {
    insta::assert_snapshot!(picture(&Case::new(SITE), &on()));
}

/// 10 W into a dipole and into 3 dB less are 10 W and 5 W ERP: 8 W is kept by the one only.
#[test]
fn of_several_bands_the_worst_counts() {
    let case = |gains: [&str; 2], limit: &str| {
        let [a, b] = gains;
        Case::new(&format!(
            "band 2m 145 MHz\nband 70cm 435 MHz\nchain x on 2m, 70cm {{\n    transmitter 10 W ± 1 %\n    antenna {{\n        gain {a} on 2m\n        gain {b} on 70cm\n    }}\n    limit 8 W erp{limit}\n}}\n"
        ))
    };
    let of = |c: &Case, config: &Config| -> Vec<Status> {
        let found = swatches(&c.s, c.doc, config);
        found.iter().map(|s| s.status).collect()
    };
    const DIPOLE: &str = "2.15 dBi";
    const LESS: &str = "-0.85 dBi";
    for gains in [[DIPOLE, LESS], [LESS, DIPOLE]] {
        assert_eq!(of(&case(gains, ""), &on()), [Status::Bad], "{gains:?}");
    }
    let c = case([LESS, DIPOLE], " on 2m");
    assert_eq!(of(&c, &on()), [Status::Good]);
    // bands that are not shown do not count
    let c = case([LESS, DIPOLE], "");
    let one = Config {
        bands: vec!["2m".to_owned()],
        ..on()
    };
    assert_eq!(of(&c, &one), [Status::Good]);
    assert!(Status::Bad > Status::Unclear && Status::Unclear > Status::Good);
}

#[test]
fn whichever_hints_are_shown() {
    let c = Case::hill("station hill", "station hill");
    let off = Config {
        hints: HintKinds {
            enabled: false,
            ..on().hints
        },
        ..on()
    };
    assert_eq!(swatches(&c.s, c.doc, &off), swatches(&c.s, c.doc, &on()));
}

/// The colours stay apart for who sees no red, no green or no blue: simulated by the matrices of
/// G. M. Machado, M. M. Oliveira and L. A. F. Fernandes, "A Physiologically-based Model for
/// Simulation of Color Vision Deficiency" (2009), severity 1, in linear sRGB (IEC 61966-2-1), and
/// compared in CIELAB (ISO/CIE 11664-4, difference of 1976); matrices and constants from memory.
/// A difference of 2.3 is just seen (common practice); a swatch is small, more than ten times that
/// is asked.
#[test]
fn the_colours_stay_apart_for_everyone() {
    type Matrix = [[f64; 3]; 3];
    const SIGHTS: [Matrix; 4] = [
        [[1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]],
        [
            [0.152_286, 1.052_583, -0.204_868],
            [0.114_503, 0.786_281, 0.099_216],
            [-0.003_882, -0.048_116, 1.051_998],
        ],
        [
            [0.367_322, 0.860_646, -0.227_968],
            [0.280_085, 0.672_501, 0.047_413],
            [-0.011_820, 0.042_940, 0.968_881],
        ],
        [
            [1.255_528, -0.076_749, -0.178_779],
            [-0.078_411, 0.930_809, 0.147_602],
            [0.004_733, 0.691_367, 0.303_900],
        ],
    ];
    const XYZ: Matrix = [
        [0.4124, 0.3576, 0.1805],
        [0.2126, 0.7152, 0.0722],
        [0.0193, 0.1192, 0.9505],
    ];
    /// The product of a matrix and a column.
    fn by(m: &Matrix, v: [f64; 3]) -> [f64; 3] {
        m.map(|row| row.iter().zip(v).map(|(a, b)| a * b).sum())
    }
    fn lab(colour: [u8; 3], sight: &Matrix) -> [f64; 3] {
        let linear = colour.map(|c| {
            let c = f64::from(c) / 255.0;
            match c <= 0.04045 {
                true => c / 12.92,
                false => ((c + 0.055) / 1.055).powf(2.4),
            }
        });
        let seen = by(sight, linear).map(|c| c.clamp(0.0, 1.0));
        let [x, y, z] = by(&XYZ, seen);
        // white of D65
        let f = [x / 0.9505, y, z / 1.089].map(|t: f64| match t > 0.008_856 {
            true => t.cbrt(),
            false => 7.787 * t + 16.0 / 116.0,
        });
        [
            116.0 * f[1] - 16.0,
            500.0 * (f[0] - f[1]),
            200.0 * (f[1] - f[2]),
        ]
    }
    let apart = |a: [u8; 3], b: [u8; 3], sight: &Matrix| {
        let (a, b) = (lab(a, sight), lab(b, sight));
        let squares = a.iter().zip(b).map(|(x, y)| (x - y) * (x - y));
        squares.sum::<f64>().sqrt()
    };
    let [good, unclear, bad] = [Status::Good, Status::Unclear, Status::Bad].map(Status::colour);
    for sight in &SIGHTS {
        for (a, b) in [(good, unclear), (good, bad), (unclear, bad)] {
            let d = apart(a, b, sight);
            assert!(d > 30.0, "{a:?} and {b:?}: {d:.1}");
        }
    }
    // what traffic lights show would not do
    let (green, red) = ([46, 160, 67], [203, 36, 49]);
    assert!(apart(green, red, &SIGHTS[0]) > 30.0 && apart(green, red, &SIGHTS[2]) < 30.0);
}
