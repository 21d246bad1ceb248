//! Network files in chains. Expected values: `tests/reference/networks.json` holds what scikit-rf, a
//! general network library, makes of the same files (script `networks.py` beside it); what else is
//! compared with names its source.

mod common;
#[path = "common/networks.rs"]
mod networks;

use common::{MAIN, load_from};
use downlead_eval::{Snapshot, cable_at, matched_loss};
use downlead_report::Reports as _;
use downlead_station::{Loader, library};
use downlead_testkit::{Files, examples};
use downlead_touchstone::{Complex64, Network, WriteOptions, write};
use networks::{chains, files, near, number, one, reference, said, with};
use serde_json::Value;

/// The parts of a reference chain, from the transmitter on, with their files.
fn parts(chain: &Value) -> Vec<String> {
    chain["parts"]
        .as_array()
        .expect("parts")
        .iter()
        .enumerate()
        .map(|(i, p)| {
            let file = p["file"].as_str().expect("a file");
            // any kind will do
            let kind = ["isolator", "filter", "run"][i];
            let turned = if p["reversed"] == true {
                " reversed"
            } else {
                ""
            };
            format!("    {kind} P{i} from \"{file}\"{turned}\n")
        })
        .collect()
}

#[test]
fn chains_of_files_are_what_the_network_library_makes_of_them() {
    let all = reference();
    let list = all["chains"].as_array().expect("chains");
    assert!(list.len() >= 8);
    for c in list {
        let mhz = number(c, "mhz");
        let text = format!(
            "chain c on {mhz} MHz {{\n    transmitter 100 W carrier\n{}    antenna {{ gain 2 dBi; impedance from {} }}\n}}\n",
            parts(c).concat(),
            c["antenna"]
        );
        let s = load_from(&files().with(MAIN, &text));
        assert!(said(&s).is_empty(), "{:?}\n{text}", said(&s));
        let b = one(&s);
        assert!(b.complete);
        near(b.total_db.unwrap(), number(c, "transmit_db"), 1e-9, &text);
        near(b.swr.unwrap(), number(c, "swr"), 1e-9, &text);
        // known phases leave no spread
        assert_eq!(b.worst_db, None, "{text}");
        let sum: f64 = b.nodes.iter().map(|n| n.loss_db).sum();
        near(sum, b.total_db.unwrap(), 1e-9, "rows and total");

        // the same parts on the way from the antenna
        let mut back = parts(c);
        back.reverse();
        let text = format!(
            "chain c on {mhz} MHz receive {{\n    antenna {{ gain 2 dBi; impedance from {} }}\n{}    receiver -119 dBm\n}}\n",
            c["antenna"],
            back.concat()
        );
        let s = load_from(&files().with(MAIN, &text));
        assert!(said(&s).is_empty(), "{:?}\n{text}", said(&s));
        near(
            one(&s).total_db.unwrap(),
            number(c, "receive_db"),
            1e-9,
            &text,
        );
    }
}

/// An isolator lets through what goes its way and stops what comes back, and it hides the antenna
/// from the transmitter.
#[test]
fn an_isolator_of_a_file_is_none_both_ways() {
    let text = |parts: &str| {
        format!(
            "chain c on 146 MHz {{\n    transmitter 100 W carrier\n{parts}    antenna 2 dBi, swr 3\n}}\n"
        )
    };
    let s = load_from(&files().with(MAIN, text("    isolator from \"is1.s2p\"\n")));
    let b = one(&s);
    let is1 = examples().read("networks/is1.s2p").expect("a file");
    let n = downlead_touchstone::read(is1.as_bytes(), Some(2))
        .network
        .expect("a network");
    let k = n
        .frequencies_hz()
        .iter()
        .position(|f| *f == 146e6)
        .expect("a point");
    // fixed forward power: what is lost is the insertion loss and, on average over the phase of
    // the antenna, its mismatch
    let want = -n.insertion_gain_db(k, 1, 0) - 10.0 * (1.0_f64 - 0.25).log10();
    near(
        b.total_db.unwrap(),
        want,
        0.02,
        "insertion loss and mismatch",
    );
    // of SWR 3 nothing is seen through 50 dB back
    near(
        b.swr.unwrap(),
        n.swr(k, 0),
        0.01,
        "the isolator's own reflection",
    );
    let worst = b.swr_worst.unwrap_or(b.swr.unwrap());
    assert!(worst < 1.1, "{worst}");
    // lines of unknown electrical length around it, which lose next to nothing: the same
    let low = "cable faint { impedance 50 ohm; loss 0.001 dB/100 m/sqrt(MHz) }\n";
    let between = "    run 9 m of faint\n    isolator from \"is1.s2p\"\n    run 9 m of faint\n";
    let s = load_from(&files().with(MAIN, format!("{low}{}", text(between))));
    assert!(
        one(&s).worst_db.is_some(),
        "how the reflections meet is not known"
    );
    assert!(one(&s).swr_worst.unwrap_or(one(&s).swr.unwrap()) < 1.1);
}

#[test]
fn an_antenna_by_its_file_is_one_by_its_impedance() {
    let all = reference();
    for c in all["chains"].as_array().expect("chains") {
        let (r, x) = (
            c["antenna_ohm"][0].as_f64().expect("ohm"),
            c["antenna_ohm"][1].as_f64().expect("ohm"),
        );
        let text = |impedance: &str| {
            format!(
                "chain c on {} MHz {{\n    transmitter 100 W carrier\n    run 3 m of rg-213\n    antenna {{ gain 2 dBi; impedance {impedance} }}\n}}\n",
                c["mhz"]
            )
        };
        let by_file = load_from(&files().with(MAIN, text(&format!("from {}", c["antenna"]))));
        let stated =
            load_from(&files().with(MAIN, text(&format!("{r} ohm with reactance {x} ohm"))));
        near(
            one(&by_file).total_db.unwrap(),
            one(&stated).total_db.unwrap(),
            1e-9,
            "impedance",
        );
        near(
            one(&by_file).swr.unwrap(),
            one(&stated).swr.unwrap(),
            1e-9,
            "SWR",
        );
        // behind nothing, only the SWR counts
        let bare = |end: &str| {
            let text = format!(
                "chain c on {} MHz {{\n    transmitter 100 W carrier\n    {end}\n}}\n",
                c["mhz"]
            );
            load_from(&files().with(MAIN, text))
        };
        let a = bare(&format!("load D1 from {}", c["antenna"]));
        let b = bare(&format!("load D1, swr {}", one(&a).swr.unwrap()));
        near(
            one(&a).total_db.unwrap(),
            one(&b).total_db.unwrap(),
            1e-9,
            "a load's SWR",
        );
    }
}

/// A point of a 50-ohm file, |S11| 0.2 at 90°, in a line of 75 ohm: SWR 1.78791.
#[test]
fn a_file_is_seen_in_the_reference_of_the_line() {
    let want = number(&reference(), "swr_in_75");
    near(
        want,
        1.787_91,
        1e-5,
        "worked by hand: Z = 50 (1 + Γ)/(1 − Γ)",
    );
    // a quarter wave of lossless line of 75 ohm turns the reflection seen in 75 ohm by half a
    // turn; in 50 ohm that is Z = 75²/Z
    let text = "cable l75 { impedance 75 ohm; velocity 0.66 ± 0.001; loss 0.000001 dB/100 m/sqrt(MHz) }\nchain c on 150 MHz {\n    transmitter 100 W carrier\n    run 0.25 wavelengths of l75\n    load from \"a06.s1p\"\n}\n";
    let s = load_from(&files().with(MAIN, text));
    let z = Complex64::new(50.0, 0.0) * (Complex64::new(1.0, 0.2) / Complex64::new(1.0, -0.2));
    let in_75 = (z - 75.0) / (z + 75.0);
    near(
        (1.0 + in_75.norm()) / (1.0 - in_75.norm()),
        want,
        1e-9,
        "the library's and ours",
    );
    let through = Complex64::new(75.0 * 75.0, 0.0) / z;
    let in_50 = ((through - 50.0) / (through + 50.0)).norm();
    near(
        one(&s).swr.unwrap(),
        (1.0 + in_50) / (1.0 - in_50),
        1e-6,
        "a quarter wave of 75 ohm",
    );
}

/// A run of a library cable, and the same written by the project's own writer.
#[test]
fn a_run_written_to_a_file_is_the_run() {
    let cable = library().cable("rg-213").expect("in the library");
    let (length, celsius) = (12.0, 20.0);
    let velocity = cable.velocity.expect("stated").value;
    let mhz: Vec<f64> = (0..41).map(|k| 140.0 + 0.25 * f64::from(k)).collect();
    let hz: Vec<f64> = mhz.iter().map(|m| m * 1e6).collect();
    let mut s = Vec::new();
    for f in &hz {
        let at = cable_at(cable, *f, celsius).expect("inside its range");
        let line = downlead_physics::LineParams {
            r0_ohm: at.z0,
            velocity_factor: at.velocity,
            alpha_c_db_per_m: at.alpha_c,
            alpha_d_db_per_m: at.alpha_d,
        };
        let m = downlead_physics::network::SMatrix::line(&line, *f, length, 50.0);
        s.extend([m.s11, m.s12, m.s21, m.s22]);
    }
    let network = Network::new(hz, s, vec![50.0; 2]).expect("a network");
    // the matched loss that comes out of the file is what went in
    for ((f, db), want) in matched_loss(&network).iter().zip(&mhz) {
        let at = cable_at(cable, want * 1e6, celsius).expect("inside its range");
        near(*f, want * 1e6, 0.0, "frequency");
        near(*db, at.loss() * length, 1e-9, "matched loss");
    }
    let file = write(&network, &WriteOptions::default()).expect("written");
    for (on, within) in [(145.0, 1e-9), (145.1, 2e-4)] {
        let text = |run: &str| {
            format!(
                "cable mine {{ impedance 50 ohm; velocity 0.66 ± 0.001; loss from \"run.s2p\" of 12 m at 20 °C }}\nchain c on {on} MHz {{\n    transmitter 100 W carrier\n    {run}\n    antenna {{ gain 2 dBi; impedance 30 ohm with reactance 40 ohm }}\n}}\n"
            )
        };
        // a length in wavelengths is one whose phase is known
        let waves = length * on * 1e6 / (299_792_458.0 * velocity);
        let stated = format!("run {waves} wavelengths of rg-213, at 20 °C");
        let a = with(&text(&stated), "run.s2p", &file);
        let b = with(&text("run from \"run.s2p\""), "run.s2p", &file);
        near(
            one(&b).total_db.unwrap(),
            one(&a).total_db.unwrap(),
            within,
            "a run by a file",
        );
        near(
            one(&b).swr.unwrap(),
            one(&a).swr.unwrap(),
            10.0 * within,
            "its SWR",
        );
        // and a cable by that file, of another length
        let matched = |length: &str, cable: &str| {
            let text = text(&format!("run {length} of {cable}, at 20 °C"))
                .replace("impedance 30 ohm with reactance 40 ohm", "swr 1");
            let s = with(&text, "run.s2p", &file);
            one(&s).nodes[1].matched_db
        };
        near(
            matched("30 m", "mine"),
            matched("30 m", "rg-213"),
            1e-6,
            "a cable by a file",
        );
    }
}

/// The reel of the example is a line between two plugs; of its loss the plugs' reflections are no
/// part.
#[test]
fn the_loss_of_a_reel_is_that_of_its_line() {
    let all = reference();
    let text = examples().read("networks/reel-7.s2p").expect("a file");
    let n = downlead_touchstone::read(text.as_bytes(), Some(2))
        .network
        .expect("a network");
    let list = matched_loss(&n);
    let want = all["reel"].as_array().expect("points");
    assert_eq!(list.len(), want.len());
    for ((f, db), r) in list.iter().zip(want) {
        near(*f / 1e6, number(r, "mhz"), 1e-9, "frequency");
        let per_m = db / 25.0;
        near(per_m, number(r, "image_db_per_m"), 1e-9, "image loss");
        // where the piece is a whole number of half waves long the plugs count most
        near(
            per_m / number(r, "model_db_per_m"),
            1.0,
            0.005,
            "loss of the line",
        );
    }
}

#[test]
fn a_port_of_a_duplexer_has_its_own_file() {
    let s = Snapshot::load(&["networks/measured.downlead".to_owned()], &examples());
    assert!(said(&s).is_empty(), "{:?}", said(&s));
    let r = s.report();
    for (chain, part, file) in [
        ("talk-out", "DU1", "file du1-high.s2p"),
        ("talk-in", "DU1", "file du1-low.s2p"),
        ("talk-out", "IS1", "file is1.s2p"),
    ] {
        let c = r.stations[0]
            .chains
            .iter()
            .find(|c| c.name == chain)
            .expect("the chain");
        let e = c.bands[0]
            .nodes
            .iter()
            .find(|e| e.part.starts_with(part))
            .expect("the part");
        assert_eq!(e.basis.word(), "read");
        let source = e.source.as_deref().unwrap_or("");
        assert!(source.contains(file), "{source}");
    }
}

#[test]
fn a_stated_accuracy_is_the_doubt_and_none_is_assumed() {
    let text = |accuracy: &str| {
        format!(
            "chain c on 146 MHz {{\n    transmitter 100 W ± 0.0001 dB carrier\n    isolator IS1 from \"is1.s2p\"{accuracy}\n    load, swr 1\n}}\n"
        )
    };
    let stated = load_from(&files().with(MAIN, text(", accuracy 0.1 dB")));
    // a half-width of 0.1 dB is a standard uncertainty of 0.1/√3 (GUM, JCGM 100:2008, 4.3.7)
    near(
        one(&stated).uncertainty_db.unwrap(),
        2.0 * 0.1 / 3.0_f64.sqrt(),
        1e-6,
        "rectangular",
    );
    let expanded = load_from(&files().with(MAIN, text(", accuracy 0.1 dB k 2")));
    near(one(&expanded).uncertainty_db.unwrap(), 0.1, 1e-6, "k = 2");
    let bare = load_from(&files().with(MAIN, text("")));
    // a cable's: 0.1 dB of the 2 dB of its piece, and 1 % of the length, of 30 m
    let file = "# MHz S DB R 50\n100 -80 0 -2 0 -2 0 -80 0\n200 -80 0 -2 0 -2 0 -80 0\n";
    let cable = "cable c { impedance 50 ohm; velocity 0.8 ± 0.0001; loss from \"x.s2p\" of 20 m ± 0.2 m k 1 at 20 °C, accuracy 0.1 dB k 1 }\nchain c on 146 MHz {\n    transmitter 100 W ± 0.0001 dB carrier\n    run 30 m of c, at 20 °C\n    load, swr 1\n}\n";
    let s = with(cable, "x.s2p", file);
    near(
        one(&s).uncertainty_db.unwrap(),
        2.0 * 3.0 * 0.05f64.hypot(0.01),
        2e-4,
        "of a cable",
    );
    let listed = |s: &Snapshot| common::everything(s).contains("the network file of IS1 is exact");
    assert!(listed(&bare) && !listed(&stated));
}

#[test]
fn another_text_of_a_file_is_another_result() {
    let text = "use \"lib.downlead\"\nchain c on 146 MHz {\n    transmitter 100 W carrier\n    filter F1 of f-class\n    run 25 m of reel, at 20 °C\n    load from \"d.s1p\"\n}\n";
    let lib = "device f-class { kind filter; from \"f.s2p\" }\ncable reel { impedance 50 ohm; velocity 0.88 ± 0.001; loss from \"r.s2p\" of 25 m at 20 °C }\n";
    let flat =
        |a: f64| format!("# MHz S RI R 50\n100 0 0 {a} 0 {a} 0 0 0\n200 0 0 {a} 0 {a} 0 0 0\n");
    let mut files = Files::default()
        .with(MAIN, text)
        .with("lib.downlead", lib)
        .with("f.s2p", flat(0.9))
        .with("r.s2p", flat(0.8))
        .with("d.s1p", "# MHz S RI R 50\n100 0 0\n200 0 0\n");
    let mut s = load_from(&files);
    assert!(
        said(&s).iter().all(|d| d.0 == "no-source"),
        "{:?}",
        said(&s)
    );
    let db = |x: f64| -20.0 * x.log10();
    let matched = |s: &Snapshot| -> f64 { one(s).nodes.iter().map(|n| n.matched_db).sum() };
    near(matched(&s), db(0.9) + db(0.8), 1e-9, "both");
    for (name, file, want) in [
        ("f.s2p", flat(0.7), db(0.7) + db(0.8)),
        ("r.s2p", flat(0.6), db(0.7) + db(0.6)),
        (
            "d.s1p",
            "# MHz S RI R 50\n100 0.5 0\n200 0.5 0\n".to_owned(),
            f64::NAN,
        ),
    ] {
        files.put(name, &file);
        assert!(s.refresh_attachment(name, &files));
        if want.is_nan() {
            assert!(one(&s).swr.unwrap() > 1.1, "the load's reflection shows");
        } else {
            near(matched(&s), want, 1e-9, name);
        }
        let fresh = load_from(&files);
        assert_eq!(common::everything(&s), common::everything(&fresh), "{name}");
    }
    assert!(!s.refresh_attachment("other.s2p", &files));
}

/// A session computes what a piece of such a cable should lose, at the temperature of the bench.
#[test]
fn a_piece_on_the_bench_is_of_a_cable_by_its_file() {
    let text = |celsius: f64| {
        format!(
            "cable reel-7 {{ impedance 50 ohm; velocity 0.878 ± 0.005; loss from \"reel-7.s2p\" of 25 m at 20 °C, accuracy 0.05 dB }}\ninstrument W3 {{ accuracy 5 % of reading }}\nsession s {{\n    read 2026-11-07 with W3 by QY5BEN\n    temperature {celsius} °C\n    piece A 50 m of reel-7\n    readings on 147 MHz {{\n        baseline 40 W at 0 min\n        through A 27.9 W at 2 min\n        baseline 40 W at 4 min\n    }}\n}}\n"
        )
    };
    let expected = |celsius: f64| {
        let s = load_from(&files().with(MAIN, text(celsius)));
        let errors: Vec<_> = s
            .diagnostics()
            .into_iter()
            .filter(|d| d.severity.name() == "error")
            .collect();
        assert!(errors.is_empty(), "{errors:#?}");
        let items = s.scopes()[0].items();
        let session = items.iter().find_map(|i| i.2.session.as_deref());
        let cell = &session.expect("a session").cells[0];
        cell.expected.as_ref().expect("expected").db
    };
    let all = reference();
    let row = all["reel"]
        .as_array()
        .and_then(|l| l.iter().find(|r| r["mhz"] == 147.0))
        .expect("a point");
    let image = 50.0 * number(row, "image_db_per_m");
    near(expected(20.0), image, 1e-9, "at 20 °C");
    // 60 K more raise the conductor's resistance by 0.393 % each (IEC 60028), its loss by the root,
    // and leave the dielectric's
    let k2 = 50.0 * 1.3e-5 * 147.0;
    let warm = (image - k2) * (1.0f64 + 0.003_93 * 60.0).sqrt() + k2;
    near(expected(80.0) / warm, 1.0, 0.001, "at 80 °C");
}

/// A switch whose two ways were measured: each port has its own loss, and the one without a file its
/// stated one.
#[test]
fn ports_of_a_switch_are_read_each_from_its_file() {
    let flat = |db: f64| {
        format!(
            "# MHz S DB R 50\n100 -80 0 {0} 0 {0} 0 -80 0\n200 -80 0 {0} 0 {0} 0 -80 0\n",
            -db
        )
    };
    let text = "station s {\n    transmitter TX1 50 W carrier\n    switch SW1 { port a from \"a.s2p\"; port b from \"b.s2p\", accuracy 0.1 dB; port c 0.3 dB ± 0.1 dB }\n    load DL1, swr 1\n    chain one on 146 MHz { TX1; SW1.a; DL1 }\n    chain two on 146 MHz { TX1; SW1.b; DL1 }\n    chain three on 146 MHz { TX1; SW1.c; DL1 }\n}\n";
    let s = load_from(
        &files()
            .with(MAIN, text)
            .with("a.s2p", flat(0.1))
            .with("b.s2p", flat(0.2)),
    );
    assert!(said(&s).is_empty(), "{:?}", said(&s));
    for (c, want) in chains(&s).iter().zip([0.1, 0.2, 0.3]) {
        near(c.bands[0].nodes[1].matched_db, want, 1e-9, "a port");
    }
}
