//! Slips planted in simulated sessions are named with the figure that was meant, and healthy
//! sessions hear nothing of slips.
//!
//! Four pieces on nine bands; readings have the errors that the meter states: one of linearity at
//! each power, scatter at each reading.

use downlead_base::{Diagnostic, Severity};
use downlead_eval::Snapshot;
use downlead_testkit::Files;

const PIECES: [(&str, f64); 4] = [("A", 10.0), ("B", 16.0), ("C", 23.0), ("D", 31.0)];
const MHZ: [f64; 9] = [1.9, 3.7, 7.1, 14.2, 21.2, 28.5, 50.3, 145.3, 434.5];

/// SplitMix64 (Steele, Lea and Flood 2014).
struct Random(u64);

impl Random {
    fn unit(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn normal(&mut self) -> f64 {
        (-2.0 * (1.0 - self.unit()).ln()).sqrt() * (std::f64::consts::TAU * self.unit()).cos()
    }
}

/// Readings of a band: baseline, the pieces, baseline.
type Band = [f64; 6];

/// A session of cables that lose `factor(piece, MHz)` times what their sheet says, with a drift of
/// -2 % (standard deviation 1 %) on each band; readings rounded to 0.1 W.
fn readings(
    r: &mut Random,
    factor: impl Fn(usize, f64) -> f64,
    jump: Option<(usize, usize, f64)>,
) -> [Band; 9] {
    let mut out = [[0.0; 6]; 9];
    for (b, mhz) in MHZ.iter().enumerate() {
        let start = 44.0 + 6.0 * r.unit();
        let drift = -0.02 + 0.01 * r.normal();
        let at_base = 1.0 + 0.01 * (2.0 * r.unit() - 1.0);
        for (i, slot) in out[b].iter_mut().enumerate() {
            let mut w = start * (1.0 + drift * i as f64 / 5.0);
            if let Some((band, from, by)) = jump
                && band == b
                && i >= from
            {
                w *= 1.0 + by;
            }
            let mut linear = at_base;
            if (1..5).contains(&i) {
                let loss = factor(i - 1, *mhz) * 0.007 * PIECES[i - 1].1 * mhz.sqrt();
                w *= 10_f64.powf(-0.1 * loss);
                linear = 1.0 + 0.01 * (2.0 * r.unit() - 1.0);
            }
            let read = w * linear * (1.0 + 0.006 * r.normal());
            *slot = (10.0 * read).round() / 10.0;
        }
    }
    out
}

fn found(bands: &[Band; 9]) -> Vec<Diagnostic> {
    let mut text = "instrument W1 {\n    accuracy 5 % of reading\n    linearity 1 %\n    repeatability 0.6 % k 1\n}\n\ncable c {\n    impedance 50 ohm\n    velocity 0.66\n    loss 0.7 dB/100 m/sqrt(MHz)\n    accuracy 2 % k 2\n    source \"made up\"\n}\n\nsession s {\n    read 2026-11-21 with W1 by QY5BEN\n    temperature 20 °C\n".to_owned();
    for (name, metres) in PIECES {
        text.push_str(&format!("    piece {name} {metres} m of c\n"));
    }
    for (b, mhz) in bands.iter().zip(MHZ) {
        text.push_str(&format!(
            "    readings on {mhz} MHz {{\n        baseline {} W at 0 min\n",
            b[0]
        ));
        for (i, (name, _)) in PIECES.iter().enumerate() {
            text.push_str(&format!(
                "        through {name} {} W at {} min\n",
                b[i + 1],
                i + 1
            ));
        }
        text.push_str(&format!("        baseline {} W at 5 min\n    }}\n", b[5]));
    }
    text.push_str("}\n");
    let s = Snapshot::load(
        &["main.downlead".to_owned()],
        &Files::default().with("main.downlead", text.as_str()),
    );
    s.diagnostics()
}

fn slips(bands: &[Band; 9]) -> Vec<String> {
    found(bands)
        .iter()
        .filter(|d| d.code.id == "reading-slip")
        .map(|d| format!("{} {}", d.message, d.help.join(" ")))
        .collect()
}

fn accused(bands: &[Band; 9]) -> Vec<String> {
    found(bands)
        .iter()
        .filter(|d| d.code.id == "cable-differs" && d.severity == Severity::Warning)
        .map(|d| d.message.clone())
        .collect()
}

/// Of 200 healthy sessions at most one in twenty hears of a slip or of a bad cable.
#[test]
fn healthy_sessions_have_no_slips() {
    let mut r = Random(11);
    let (mut slipped, mut bad) = (0, 0);
    for _ in 0..200 {
        let bands = readings(&mut r, |_, _| 1.0, None);
        slipped += usize::from(!slips(&bands).is_empty());
        bad += usize::from(!accused(&bands).is_empty());
    }
    assert!(slipped <= 10, "{slipped} of 200");
    assert!(bad <= 14, "{bad} of 200");
}

/// A cable that is really bad on two bands is accused, and no slip is made of it.
#[test]
fn a_bad_cable_is_no_slip() {
    let mut r = Random(12);
    let (mut slipped, mut bad) = (0, 0);
    for _ in 0..40 {
        let bands = readings(
            &mut r,
            |p, mhz| if p == 3 && mhz > 100.0 { 1.2 } else { 1.0 },
            None,
        );
        slipped += usize::from(!slips(&bands).is_empty());
        bad += usize::from(accused(&bands).iter().any(|m| m.starts_with("`D`")));
    }
    assert!(slipped <= 2, "{slipped} of 40");
    assert!(bad >= 38, "{bad} of 40");
}

/// Digits swapped and points lost at a piece, wherever that moves the figure by more than the cable
/// may: named with the figure that was meant, and the cable is not accused.
#[test]
fn a_slip_at_a_piece_is_named() {
    let mut r = Random(13);
    let (mut planted, mut named) = (0, 0);
    for n in 0..60_usize {
        let mut bands = readings(&mut r, |_, _| 1.0, None);
        let (b, i) = (5 + n % 4, 1 + n / 4 % 4);
        let meant = bands[b][i];
        let digits = format!("{meant:.1}");
        let wrong: f64 = if n % 2 == 0 {
            10.0 * meant
        } else {
            let mut c: Vec<char> = digits.chars().collect();
            c.swap(0, 1);
            c.into_iter().collect::<String>().parse().unwrap_or(meant)
        };
        if (wrong / meant).ln().abs() < 0.25 || wrong < 10.0 {
            continue;
        }
        bands[b][i] = wrong;
        planted += 1;
        let said = slips(&bands);
        let how = if n % 2 == 0 {
            "decimal point"
        } else {
            "two digits swapped"
        };
        let figure = downlead_quantity::power(meant);
        let right = said.len() == 1 && said[0].contains(how) && said[0].contains(&figure);
        let on = format!("on {} MHz", MHZ[b]);
        let right = right && accused(&bands).iter().all(|m| !m.contains(&on));
        named += usize::from(right);
    }
    assert!(planted >= 40, "{planted}");
    assert!(named * 100 >= planted * 95, "{named} of {planted}");
}

/// The closing baselines of two bands exchanged: the pieces of both say so.
#[test]
fn exchanged_baselines_are_named() {
    let mut r = Random(14);
    let mut named = 0;
    for _ in 0..20 {
        let mut bands = readings(&mut r, |_, _| 1.0, None);
        let (a, b) = (6, 8);
        for w in &mut bands[b] {
            *w = (*w * 7.0).round() / 10.0;
        }
        let (x, y) = (bands[a][5], bands[b][5]);
        (bands[a][5], bands[b][5]) = (y, x);
        let said = slips(&bands);
        let both = ["50.3 MHz", "434.5 MHz"].iter().all(|on| {
            said.iter()
                .any(|m| m.contains(&format!("On {on}, the baseline at 5 min")))
        });
        let right = both && said.iter().all(|m| m.contains("exchanged"));
        named += usize::from(right);
    }
    assert!(named >= 19, "{named} of 20");
}

/// A jump of -6 % between two pieces is named as one, with its size; no cable is accused for it.
#[test]
fn a_jump_of_the_power_is_named() {
    let mut r = Random(15);
    let mut named = 0;
    for _ in 0..40 {
        let bands = readings(&mut r, |_, _| 1.0, Some((6, 3, -0.08)));
        let said = slips(&bands);
        named += usize::from(
            said.len() == 1
                && said[0].contains("at once between `B` and `C`")
                && accused(&bands).is_empty(),
        );
    }
    assert!(named >= 30, "{named} of 40");
}

/// A session of the first bands only, as text.
fn first_bands(bands: &[Band; 9], which: &[usize]) -> String {
    let mut text = "instrument W1 {\n    accuracy 5 % of reading\n    linearity 1 %\n    repeatability 0.6 % k 1\n}\n\ncable c {\n    impedance 50 ohm\n    velocity 0.66\n    loss 0.7 dB/100 m/sqrt(MHz)\n    accuracy 2 % k 2\n    source \"made up\"\n}\n\nsession s {\n    read 2026-11-21 with W1 by QY5BEN\n    temperature 20 °C\n".to_owned();
    for (name, metres) in PIECES {
        text.push_str(&format!("    piece {name} {metres} m of c\n"));
    }
    for b in which {
        let w = &bands[*b];
        text.push_str(&format!(
            "    readings on {} MHz {{\n        baseline {} W at 0 min\n",
            MHZ[*b], w[0]
        ));
        for (i, (name, _)) in PIECES.iter().enumerate() {
            let (w, at) = (w[i + 1], i + 1);
            text.push_str(&format!("        through {name} {w} W at {at} min\n"));
        }
        text.push_str(&format!("        baseline {} W at 5 min\n    }}\n", w[5]));
    }
    text + "}\n"
}

fn of_text(text: &str) -> Vec<Diagnostic> {
    let files = Files::default().with("main.downlead", text);
    Snapshot::load(&["main.downlead".to_owned()], &files).diagnostics()
}

fn with_code<'d>(all: &'d [Diagnostic], code: &str) -> Vec<&'d Diagnostic> {
    all.iter().filter(|d| d.code.id == code).collect()
}

/// Two bands only: a lost decimal point in a baseline or at a piece is named, and no cable is accused.
#[test]
fn a_lost_point_in_two_bands_is_named() {
    let mut r = Random(31);
    let (mut planted, mut named, mut wrong) = (0, 0, 0);
    for n in 0..24_usize {
        let mut bands = readings(&mut r, |_, _| 1.0, None);
        let (b, i) = ([6, 7][n % 2], n / 2 % 6);
        let meant = bands[b][i];
        bands[b][i] = if n % 3 == 0 {
            meant * 10.0
        } else {
            meant / 10.0
        };
        let all = of_text(&first_bands(&bands, &[6, 7]));
        planted += 1;
        let slips = with_code(&all, "reading-slip");
        let words: Vec<String> = slips
            .iter()
            .map(|d| format!("{} {}", d.message, d.help.join(" ")))
            .collect();
        let figure = downlead_quantity::power(meant);
        named += usize::from(words.len() == 1 && words[0].contains(&figure));
        let bad = with_code(&all, "cable-differs");
        wrong += bad
            .iter()
            .filter(|d| d.severity == Severity::Warning)
            .count();
    }
    assert!(named >= 22, "{named} of {planted}");
    assert!(wrong <= 1, "{wrong} accused");
}

/// In two bands a cable that really loses much more on both is accused, and healthy sessions hear nothing.
#[test]
fn two_bands_make_no_slip_of_a_bad_cable() {
    let mut r = Random(32);
    let (mut slips, mut bad) = (0, 0);
    for n in 0..40_usize {
        let factor = [1.0, 1.3, 2.0, 4.0][n % 4];
        let bands = readings(&mut r, |p, _| if p == 3 { factor } else { 1.0 }, None);
        let all = of_text(&first_bands(&bands, &[6, 7]));
        slips += with_code(&all, "reading-slip").len();
        let accused = with_code(&all, "cable-differs");
        bad += usize::from(n % 4 != 0 && accused.iter().any(|d| d.message.starts_with("`D`")));
    }
    assert_eq!(slips, 0);
    assert_eq!(bad, 30);
}

/// After a named slip its row has no verdict, and the piece is judged by the other bands.
#[test]
fn a_slip_is_not_judged_and_the_piece_is() {
    let mut r = Random(33);
    let mut bands = readings(&mut r, |_, _| 1.0, None);
    bands[7][2] /= 10.0;
    let text = first_bands(&bands, &[0, 1, 2, 3, 4, 5, 6, 7, 8]);
    let files = Files::default().with("main.downlead", text.as_str());
    let s = Snapshot::load(&["main.downlead".to_owned()], &files);
    let (stated, result, env) = downlead_report::build::bench::sessions(&s)
        .next()
        .expect("a session");
    let places = downlead_eval::Places::new(&s);
    let session = downlead_report::build::bench::session(&places, stated, result, env);
    let rows: Vec<_> = session.results.iter().filter(|r| r.piece == "B").collect();
    let (slip, rest): (Vec<_>, Vec<_>) = rows.into_iter().partition(|r| r.slip);
    assert_eq!((slip.len(), rest.len()), (1, 8));
    assert_eq!(slip[0].band, "145.3 MHz");
    assert!(slip[0].verdict.is_none() && rest.iter().all(|r| r.verdict.is_some()));
    let piece = session.pieces.iter().find(|p| p.piece == "B").expect("it");
    assert_eq!(piece.slip_bands, ["145.3 MHz"]);
    let whole = piece.whole.as_ref().expect("judged");
    assert_eq!(whole.bands_used, 8);
    assert!((whole.ratio - 1.0).abs() < 0.1, "{}", whole.ratio);
}

/// A piece read twice with 10 dB between the two: no mean of them says anything.
#[test]
fn two_readings_of_a_piece_far_apart_are_found() {
    let text = |second: &str| {
        format!(
            "instrument W1 {{\n    accuracy 5 % of reading\n}}\nsession s {{\n    read 2026-11-21 with W1 by QY5BEN\n    temperature 20 °C\n    piece A 20 m of rg-213\n    readings on 145.3 MHz {{\n        baseline 44 W at 0 min\n        through A 30.1 W at 1 min\n        through A {second} W at 2 min\n        baseline 44 W at 3 min\n    }}\n}}\n"
        )
    };
    let all = of_text(&text("3.0"));
    let found = with_code(&all, "reading-slip");
    assert_eq!(found.len(), 1, "{all:#?}");
    assert!(found[0].message.contains("`A`"), "{}", found[0].message);
    assert!(
        found[0].message.contains("10.01 dB apart"),
        "{}",
        found[0].message
    );
    assert!(with_code(&of_text(&text("29.6")), "reading-slip").is_empty());
}

/// `14 h` among minutes: the drift would be spread over 14 hours.
#[test]
fn hours_among_minutes_are_found() {
    let text = |last: &str| {
        format!(
            "instrument W1 {{\n    accuracy 5 % of reading\n}}\nsession s {{\n    read 2026-11-21 with W1 by QY5BEN\n    temperature 20 °C\n    piece A 20 m of rg-213\n    readings on 145.3 MHz {{\n        baseline 44 W at 10 min\n        through A 30.1 W at 12 min\n        baseline 43 W at {last}\n    }}\n}}\n"
        )
    };
    let all = of_text(&text("14 h"));
    let found = with_code(&all, "reading-slip");
    assert!(found[0].message.contains("828 min"), "{}", found[0].message);
    for fine in ["14 min", "2 h"] {
        assert!(
            with_code(&of_text(&text(fine)), "reading-slip").is_empty(),
            "{fine}"
        );
    }
    // the same in a table
    let table = "band,piece,time_min,forward_w\n145.3 MHz,baseline,10,44\n145.3 MHz,A,12,30.1\n145.3 MHz,baseline,840,43\n";
    let main = "band b 145.3 MHz\ninstrument W1 {\n    accuracy 5 % of reading\n}\nsession s {\n    read 2026-11-21 with W1 by QY5BEN\n    temperature 20 °C\n    piece A 20 m of rg-213\n    readings from \"t.csv\"\n}\n";
    let table = table.replace("145.3 MHz", "b");
    let files = Files::default()
        .with("main.downlead", main)
        .with("t.csv", table.as_str());
    let all = Snapshot::load(&["main.downlead".to_owned()], &files).diagnostics();
    assert_eq!(with_code(&all, "reading-slip").len(), 1, "{all:#?}");
}

/// What no bench and no line is, is refused with what may be.
#[test]
fn impossible_temperatures_and_lengths_are_refused() {
    let text = |c: &str, run: &str| {
        format!(
            "session s {{\n    temperature {c}\n    piece A 20 m of rg-213\n}}\nchain x on 145.3 MHz {{\n    transmitter 5 W carrier\n    run {run} of rg-213\n    antenna 2 dBi\n}}\n"
        )
    };
    for (c, run, words) in [
        ("120 °C", "20 m", "between -60 °C and 100 °C"),
        ("-65 °C", "20 m", "between -60 °C and 100 °C"),
        ("20 °C", "300 km", "at most 100 km"),
        ("20 °C", "1e300 m", "at most 100 km"),
    ] {
        let all = of_text(&text(c, run));
        let found = with_code(&all, "impossible-value");
        assert_eq!(found.len(), 1, "{c} {run}: {all:#?}");
        assert!(found[0].message.contains(words), "{}", found[0].message);
    }
    for (c, run) in [("-40 °C", "20 m"), ("85 °C", "20 m"), ("20 °C", "30 km")] {
        let all = of_text(&text(c, run));
        assert!(with_code(&all, "impossible-value").is_empty(), "{c} {run}");
    }
}
