//! A bench session's ranking, its written-down uncertainty, and what a meter's scale allows, against
//! figures computed by hand.

use downlead_eval::bench::result::SessionResult;
use downlead_eval::{Derivation, Scope, Snapshot};
use downlead_physics::measure::Verdict;
use downlead_testkit::Files;

const W1: &str = "instrument W1 {\n    accuracy 5 % of reading\n    linearity 1 %\n    repeatability 0.6 % k 1\n}\n";

fn load(instruments: &str, pieces: &str, readings: &str) -> (Snapshot, String) {
    let text = format!(
        "{instruments}band wide 144 MHz to 148 MHz\nband duo {{ transmit 145.3 MHz; receive 144.7 MHz }}\nsession s {{\n    read 2026-07-19 with W1 by QY5BEN\n    temperature 20 °C\n{pieces}{readings}}}\n"
    );
    let files = Files::default().with("main.downlead", text.as_str());
    (Snapshot::load(&["main.downlead".to_owned()], &files), text)
}

fn session(s: &Snapshot) -> SessionResult {
    let mut items = s.scopes().iter().flat_map(Scope::items);
    let found = items.find_map(|i| i.2.session.as_deref().cloned());
    found.unwrap_or_else(|| panic!("{:?}", s.diagnostics()))
}

fn codes(s: &Snapshot) -> Vec<&'static str> {
    s.diagnostics().iter().map(|d| d.code.id).collect()
}

fn near(got: f64, want: f64, within: f64) {
    assert!((got - want).abs() <= within, "{got}, not {want}");
}

/// All steps of the derivations of the line that begins so.
fn steps(s: &Snapshot, text: &str, begins: &str) -> Vec<Derivation> {
    fn all(d: &Derivation, out: &mut Vec<Derivation>) {
        out.push(d.clone());
        d.steps.iter().for_each(|s| all(s, out));
    }
    let at = text
        .lines()
        .position(|l| l.trim_start().starts_with(begins));
    let line = u32::try_from(at.expect("the line") + 1).expect("a small file");
    let mut out = Vec::new();
    for d in s.explain_line("main.downlead", line) {
        all(&d, &mut out);
    }
    out
}

const PIECES: &str =
    "    piece A 20 m of rg-213\n    piece B 20 m of rg-213\n    piece C 20 m of rg-213\n";

#[test]
fn pieces_are_ranked_where_their_losses_differ_by_more_than_their_uncertainty() {
    // 50 W in; 36 W, 35.9 W and 25 W out are 1.427, 1.439 and 3.010 dB of 20 m each; a difference of
    // two has U of about 2 · 4.343 · √2 · √(0.006² + 0.00577²) = 0.10 dB
    let rows = |w: [f64; 3]| {
        format!(
            "    readings on 145 MHz {{\n        baseline 50 W at 0 min\n        through A {} W at 1 min\n        through B {} W at 2 min\n        through C {} W at 3 min\n        baseline 50 W at 4 min\n    }}\n",
            w[0], w[1], w[2]
        )
    };
    let ranked = |w: [f64; 3]| {
        let r = session(&load(W1, PIECES, &rows(w)).0);
        let names = |i: usize| r.pieces[r.cells[i].piece].name.to_string();
        let ranking = r.bands[0].ranking.iter();
        ranking
            .map(|(i, group)| (names(*i), *group))
            .collect::<Vec<_>>()
    };
    let is = |got: &[(String, usize)], order: [&str; 3], same: [bool; 2]| {
        assert_eq!(
            got.iter().map(|g| &*g.0).collect::<Vec<_>>(),
            order,
            "{got:?}"
        );
        assert_eq!(
            [got[0].1 == got[1].1, got[1].1 == got[2].1],
            same,
            "{got:?}"
        );
    };
    is(&ranked([36.0, 35.9, 25.0]), ["A", "B", "C"], [true, false]);
    is(&ranked([25.0, 36.0, 35.9]), ["B", "C", "A"], [true, false]);
    is(&ranked([40.0, 36.0, 32.0]), ["A", "B", "C"], [false, false]);
    // 0.06 dB apart is within it, 0.18 dB is beyond
    is(&ranked([36.0, 35.5, 35.45]), ["A", "B", "C"], [true, true]);
    is(&ranked([36.0, 34.5, 33.1]), ["A", "B", "C"], [false, false]);
}

#[test]
fn the_uncertainty_of_a_difference_is_written_down_from_both() {
    let rows = "    readings on 145 MHz {\n        baseline 50 W at 0 min\n        through A 36 W at 1 min\n        baseline 50 W at 2 min\n    }\n";
    let (s, text) = load(W1, "    piece A 20 m of rg-213\n", rows);
    let r = session(&s);
    let c = &r.cells[0];
    let (e, x) = (
        c.expected.expect("promised"),
        c.comparison.expect("compared"),
    );
    let (m, e) = (c.measured.expanded_db, 2.0 * e.u_db);
    near(x.expanded_db, m.hypot(e), 1e-9);
    let all = steps(&s, &text, "through A");
    let d = all
        .iter()
        .find(|d| d.title == "uncertainty of the difference");
    let d = d.unwrap_or_else(|| panic!("{all:#?}"));
    assert_eq!(d.formula, "√(U² measured + U² expected)");
    let numbers: Vec<f64> = d
        .substituted
        .split(|c: char| !(c.is_ascii_digit() || c == '.'))
        .filter_map(|n| n.parse().ok())
        .collect();
    assert_eq!(numbers.len(), 2, "{}", d.substituted);
    near(numbers[0], m, 1e-3);
    near(numbers[1], e, 1e-3);
}

#[test]
fn few_readings_are_written_one_by_one_and_many_are_counted() {
    let of = |n: usize| {
        let through: String = (0..n)
            .map(|k| {
                format!(
                    "        through A {} W at {} min\n",
                    36.0 - 0.1 * (k % 3) as f64,
                    k + 1
                )
            })
            .collect();
        let rows = format!(
            "    readings on 145 MHz {{\n        baseline 50 W at 0 min\n{through}        baseline 50 W at {} min\n    }}\n",
            n + 1
        );
        let (s, text) = load(W1, "    piece A 20 m of rg-213\n", &rows);
        let all = steps(&s, &text, "piece A");
        let mean = all
            .iter()
            .find(|d| d.formula.starts_with("mean of the losses"));
        mean.unwrap_or_else(|| panic!("{all:#?}"))
            .substituted
            .clone()
    };
    // 10 log10(50/36) = 1.427, (50/35.9) = 1.439, (50/35.8) = 1.451
    let three = of(3);
    assert!(
        three.starts_with("(1.42") && three.ends_with(") / 3"),
        "{three}"
    );
    assert_eq!(three.matches(" + ").count(), 2, "{three}");
    let twelve = of(12);
    assert!(
        twelve.ends_with(") / 12") && twelve.matches(" + ").count() == 11,
        "{twelve}"
    );
    assert_eq!(of(13), "the losses of 13 readings");
}

#[test]
fn the_bench_measures_a_band_in_its_middle_or_where_it_transmits() {
    for (band, hz) in [("wide", 146e6), ("duo", 145.3e6), ("145 MHz", 145e6)] {
        let rows = format!(
            "    readings on {band} {{\n        baseline 50 W at 0 min\n        through A 36 W at 1 min\n        baseline 50 W at 2 min\n    }}\n"
        );
        let (s, _) = load(W1, "    piece A 20 m of rg-213\n", &rows);
        let bands = session(&s).bands;
        assert_eq!(bands.len(), 1, "{band}: {:?}", s.diagnostics());
        near(bands[0].hz, hz, 1.0);
    }
}

#[test]
fn a_meters_scale_says_what_may_be_read_on_it() {
    let class = "instrument W1 {\n    accuracy 5 % of full scale\n    scale 100 W\n    repeatability 0.6 % k 1\n}\n";
    let found = |meter: &str, through: &str| {
        let rows = format!(
            "    readings on 145 MHz {{\n        baseline 99 W at 0 min\n        through A {through} W at 1 min\n        baseline 99 W at 2 min\n    }}\n"
        );
        codes(&load(meter, "    piece A 20 m of rg-213\n", &rows).0)
    };
    let low = "reading-low-on-scale";
    // the lowest quarter of the scale of a class of full scale
    assert!(!found(class, "70").contains(&low));
    assert!(!found(class, "25").contains(&low));
    assert!(found(class, "24.9").contains(&low));
    assert!(found(class, "5").contains(&low));
    // of the reading, the error is as large everywhere
    let reading = class.replace("of full scale", "of reading");
    assert!(!found(&reading, "5").contains(&low));
    // and beyond the scale nothing is read
    let rows = |base: &str| {
        format!(
            "    readings on 145 MHz {{\n        baseline {base} W at 0 min\n        through A 70 W at 1 min\n        baseline 99 W at 2 min\n    }}\n"
        )
    };
    let off = |base: &str| {
        codes(&load(class, "    piece A 20 m of rg-213\n", &rows(base)).0)
            .contains(&"reading-impossible")
    };
    assert!(!off("100") && off("100.1"));
}

#[test]
fn a_return_loss_has_the_uncertainty_of_its_meter() {
    // ± 0.4 dB (k = 2) of a return loss is 0.1 dB (standard) of half of it, at both ends alike. A leak 40 dB
    // down beside a wave 5 dB down is off by up to 10^(-35/20) of it, arcsine distributed (JCGM 101:2008,
    // 6.4.6): its share of the loss is half of 8.686 dB times that over √2, once for each of two readings
    let of = |directivity: &str| {
        let meter = format!("instrument W1 {{\n    accuracy 0.4 dB k 2\n{directivity}}}\n");
        let rows = "    readings on 145 MHz {\n        open A 5 dB\n        short A 5 dB\n    }\n";
        let piece = "    piece A 20 m of rg-213\n";
        let r = session(&load(&meter, piece, rows).0);
        near(r.cells[0].measured.db, 2.5, 1e-9);
        r.cells[0].measured.u_db
    };
    near(of(""), 0.1, 1e-6);
    let leak = 0.5 * 8.685_889_638 * 10f64.powf(-35.0 / 20.0) / 2f64.sqrt() / 2f64.sqrt();
    near(of("    directivity 40 dB\n"), 0.1_f64.hypot(leak), 1e-6);
}

#[test]
fn a_piece_that_is_far_off_on_one_band_only_is_pointed_out() {
    // the cable's own figures: what it promises is what is read, but for one band
    let bands = [14.0, 50.0, 145.0, 435.0];
    let found = |factor: [f64; 4]| {
        let law = |mhz: f64| (0.5 * mhz.sqrt() + 0.002 * mhz) / 100.0 * 30.0;
        let rows: String = bands
            .iter()
            .zip(factor)
            .map(|(mhz, f)| {
                let w = 50.0 * 10f64.powf(-law(*mhz) * f / 10.0);
                format!(
                    "    readings on {mhz} MHz {{\n        baseline 50 W at 0 min\n        through A {w:.4} W at 1 min\n        baseline 50 W at 2 min\n    }}\n"
                )
            })
            .collect();
        let cable = format!(
            "{W1}cable k {{\n    impedance 50 ohm\n    velocity 0.8\n    loss 0.5 dB/100 m/sqrt(MHz) + 0.002 dB/100 m/MHz\n    accuracy 4 % k 2\n    source \"x\"\n}}\n"
        );
        let (s, _) = load(&cable, "    piece A 30 m of k\n", &rows);
        let differs = |d: &&downlead_base::Diagnostic| {
            d.code.id == "cable-differs" && d.severity == downlead_base::Severity::Warning
        };
        s.diagnostics().iter().filter(differs).count()
    };
    assert_eq!(found([1.0; 4]), 0);
    // up on one band and down on another, each by more than twice its uncertainty: the mean over all is
    // right, and the piece is accused all the same
    assert_eq!(found([1.0, 1.0, 1.15, 0.916]), 1);
}

#[test]
fn a_piece_is_as_much_longer_as_a_meter_of_full_scale_needs_to_tell() {
    // a class of full scale does not distinguish 5 m of a cable from a wet one; the session says how much
    // longer a piece must be, and one of that length, read as it promises, is distinguished
    let cable = "cable k {\n    impedance 50 ohm\n    velocity 0.8\n    loss 0.5 dB/100 m/sqrt(MHz) + 0.002 dB/100 m/MHz\n    accuracy 4 % k 2\n    source \"x\"\n}\n";
    let rate = (0.5 * 145_f64.sqrt() + 0.002 * 145.0) / 100.0;
    let session_of = |metres: f64| {
        let meter = "instrument W1 {\n    accuracy 1 % of full scale\n    scale 60 W\n    repeatability 0.2 % k 1\n}\n";
        let w = 50.0 * 10f64.powf(-rate * metres / 10.0);
        let rows = format!(
            "    readings on 145 MHz {{\n        baseline 50 W at 0 min\n        through A {w:.5} W at 1 min\n        baseline 50 W at 2 min\n    }}\n"
        );
        let (s, _) = load(
            &format!("{meter}{cable}"),
            &format!("    piece A {metres:.4} m of k\n"),
            &rows,
        );
        let r = session(&s);
        (
            r.cells[0].comparison.expect("compared").verdict,
            r.cells[0].length_factor,
        )
    };
    let (verdict, factor) = session_of(1.5);
    assert_eq!(verdict, Verdict::CannotTell);
    let factor = factor.expect("a longer one tells");
    assert!(factor > 1.1, "{factor}");
    assert_eq!(
        session_of(1.5 * factor * 0.97).0,
        Verdict::CannotTell,
        "{factor}"
    );
    assert_eq!(
        session_of(1.5 * factor * 1.03).0,
        Verdict::Agrees,
        "{factor}"
    );
}
