//! Network files in chains. Expected values: `tests/reference/networks.json` holds what scikit-rf, a
//! general network library, makes of the same files (script `networks.py` beside it); what else is
//! compared with names its source.

mod common;

use common::{MAIN, load_from};
use downlead_eval::result::{BandResult, ChainResult};
use downlead_eval::{Snapshot, cable_at, matched_loss};
use downlead_station::{Loader, library};
use downlead_testkit::{Files, examples, project};
use downlead_touchstone::{Complex64, Network, WriteOptions, write};
use serde_json::Value;

fn reference() -> Value {
    let text = std::fs::read_to_string(project("tests/reference/networks.json"))
        .expect("the reference values");
    serde_json::from_str(&text).expect("JSON")
}

/// The files of the example and of the reference.
fn files() -> Files {
    let mut files = Files::default();
    for name in [
        "is1.s2p",
        "du1-high.s2p",
        "du1-low.s2p",
        "a1.s1p",
        "reel-7.s2p",
    ] {
        let text = examples()
            .read(&format!("networks/{name}"))
            .expect("a file");
        files.put(name, &*text);
    }
    let all = reference();
    for (name, text) in all["files"].as_object().expect("files") {
        files.put(name, text.as_str().expect("text"));
    }
    files
}

fn chains(s: &Snapshot) -> Vec<&ChainResult> {
    s.scopes()
        .iter()
        .flat_map(|s| s.items())
        .flat_map(|i| &i.2.chains)
        .collect()
}

fn one(s: &Snapshot) -> &BandResult {
    &chains(s)[0].bands[0]
}

fn said(s: &Snapshot) -> Vec<(&'static str, String)> {
    s.diagnostics()
        .into_iter()
        .map(|d| (d.code.id, d.message))
        .collect()
}

/// Of one file with these parts and a further file.
fn with(text: &str, name: &str, file: &str) -> Snapshot {
    load_from(&files().with(MAIN, text).with(name, file))
}

fn number(v: &Value, key: &str) -> f64 {
    v[key].as_f64().unwrap_or_else(|| panic!("{key} in {v}"))
}

fn near(have: f64, want: f64, within: f64, what: &str) {
    assert!((have - want).abs() <= within, "{what}: {have} for {want}");
}

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
        near(b.total_db, number(c, "transmit_db"), 1e-9, &text);
        near(b.swr, number(c, "swr"), 1e-9, &text);
        // known phases leave no spread
        assert_eq!(b.worst_db, None, "{text}");
        let sum: f64 = b.nodes.iter().map(|n| n.loss_db).sum();
        near(sum, b.total_db, 1e-9, "rows and total");

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
        near(one(&s).total_db, number(c, "receive_db"), 1e-9, &text);
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
    near(b.total_db, want, 0.02, "insertion loss and mismatch");
    // of SWR 3 nothing is seen through 50 dB back
    near(b.swr, n.swr(k, 0), 0.01, "the isolator's own reflection");
    let worst = b.swr_worst.unwrap_or(b.swr);
    assert!(worst < 1.1, "{worst}");
    // a cable of unknown electrical length before it: the same
    let s = load_from(&files().with(
        MAIN,
        text("    run 46 m of rg-213\n    isolator from \"is1.s2p\"\n    run 60 m of rg-213\n"),
    ));
    assert!(one(&s).swr_worst.unwrap_or(one(&s).swr) < 1.1);
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
            one(&by_file).total_db,
            one(&stated).total_db,
            1e-9,
            "impedance",
        );
        near(one(&by_file).swr, one(&stated).swr, 1e-9, "SWR");
        // behind nothing, only the SWR counts
        let bare = |end: &str| {
            let text = format!(
                "chain c on {} MHz {{\n    transmitter 100 W carrier\n    {end}\n}}\n",
                c["mhz"]
            );
            load_from(&files().with(MAIN, text))
        };
        let a = bare(&format!("load D1 from {}", c["antenna"]));
        let b = bare(&format!("load D1, swr {}", one(&a).swr));
        near(one(&a).total_db, one(&b).total_db, 1e-9, "a load's SWR");
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
        one(&s).swr,
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
            one(&b).total_db,
            one(&a).total_db,
            within,
            "a run by a file",
        );
        near(one(&b).swr, one(&a).swr, 10.0 * within, "its SWR");
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
        assert_eq!(e.basis, "read");
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
        one(&stated).uncertainty_db,
        2.0 * 0.1 / 3.0_f64.sqrt(),
        1e-6,
        "rectangular",
    );
    let expanded = load_from(&files().with(MAIN, text(", accuracy 0.1 dB k 2")));
    near(one(&expanded).uncertainty_db, 0.1, 1e-6, "k = 2");
    let bare = load_from(&files().with(MAIN, text("")));
    let listed = |s: &Snapshot| common::everything(s).contains("the network file of IS1 is exact");
    assert!(listed(&bare) && !listed(&stated));
}

/// What is wrong with a file costs the part that is made of it, and no more.
#[test]
fn a_file_that_does_not_serve_costs_its_part() {
    let head = "chain c on 146.9 MHz {\n    transmitter TX1 100 W carrier\n    pad 1 dB ± 0.1 dB\n";
    let tail = "    antenna 2 dBi, swr 1.2\n}\n";
    let cases: &[(&str, &str, &str, &str)] = &[
        (
            "filter F1 from \"x.s2p\"",
            "# MHz S RI R 50\n1 0 0 .9 0 .9 0 0 0\n30 0 0 .9 0 .9 0 0 0\n",
            "network-file",
            "`x.s2p` reaches from 1 MHz to 30 MHz; 146.9 MHz lies outside, and nothing is extrapolated.",
        ),
        (
            "filter F1 from \"x.s1p\"",
            "# MHz S RI R 50\n100 0 0\n200 0 0\n",
            "network-file",
            "`x.s1p` has 1 port; two ports are needed here.",
        ),
        (
            "filter F1 from \"x.s3p\"",
            "# MHz S RI R 50\n100 0 0 0 0 0 0\n 0 0 0 0 0 0\n 0 0 0 0 0 0\n",
            "network-file",
            "`x.s3p` has 3 ports; two ports are needed here.",
        ),
        (
            "filter F1 from \"x.csv\"",
            "band,piece,forward_w\n",
            "network-file",
            "`x.csv` is no network file by its name.",
        ),
        (
            "filter F1 from \"x.s2p\"",
            "# MHz S RI R 50\n100 0 0 .9 0 zero 0 0 0\n",
            "network-file",
            "In `x.s2p`, line 2, column 14:",
        ),
        (
            "filter F1 from \"gone.s2p\"",
            "",
            "use-not-found",
            "`gone.s2p` cannot be used",
        ),
        (
            "filter F1 from \"../gone.s2p\"",
            "",
            "use-outside-root",
            "`../gone.s2p` lies outside the project's root.",
        ),
        (
            "filter F1 from \"x.s2p\" reversed",
            "# MHz S RI R 50\n100 0 0 .9 0 0 0 0 0\n200 0 0 .9 0 0 0 0 0\n",
            "network-file",
            "By `x.s2p` nothing passes from port 2 to port 1 at 146.9 MHz.",
        ),
    ];
    for (part, file, code, words) in cases {
        let name = part
            .split('"')
            .nth(1)
            .filter(|n| !n.contains("gone"))
            .unwrap_or("unused.s2p");
        let s = with(&format!("{head}    {part}\n{tail}"), name, file);
        let found = said(&s);
        assert!(
            found.iter().any(|(c, m)| c == code && m.contains(words)),
            "{part}: {found:?}"
        );
        assert!(found.iter().all(|(c, _)| c == code), "{part}: {found:?}");
        let b = one(&s);
        assert!(!b.complete, "{part}");
        let known: Vec<bool> = b.nodes.iter().map(|n| n.loss_known).collect();
        assert_eq!(known, [true, true, false, true], "{part}");
        // what stands before it keeps its figures
        near(b.nodes[1].loss_db, 1.0, 0.02, part);
        assert!(b.nodes[1].power_known && !b.nodes[3].power_known);
    }
}

#[test]
fn a_load_whose_file_does_not_serve_leaves_no_power_known() {
    for (file, words) in [
        (
            "# MHz S RI R 50\n1 .1 0\n30 .1 0\n",
            "146.9 MHz lies outside",
        ),
        (
            "# MHz S RI R 50\n100 0 1\n200 0 1\n",
            "everything comes back at 146.9 MHz: |S11| is 1",
        ),
    ] {
        let text = "chain c on 146.9 MHz {\n    transmitter TX1 100 W carrier\n    pad 1 dB ± 0.1 dB\n    load D1 from \"x.s1p\"\n}\n";
        let s = with(text, "x.s1p", file);
        assert!(said(&s)[0].1.contains(words), "{:?}", said(&s));
        assert!(!one(&s).complete);
        assert!(!one(&s).nodes[2].power_known);
        let text = "chain c on 146.9 MHz receive {\n    antenna 2 dBi, from \"x.s1p\"\n    pad 1 dB ± 0.1 dB\n    receiver -119 dBm\n}\n";
        let s = with(text, "x.s1p", file);
        assert!(said(&s)[0].1.contains(words), "{:?}", said(&s));
        assert!(!one(&s).complete);
    }
}

#[test]
fn what_looks_wrong_in_a_file_is_told() {
    let text = |part: &str| {
        format!(
            "chain c on 146 MHz {{\n    transmitter 100 W carrier\n    {part}\n    load, swr 1\n}}\n"
        )
    };
    let warned = |part: &str, file: &str, words: &str| {
        let s = with(&text(part), "x.s2p", file);
        let found = s.diagnostics();
        assert!(
            found
                .iter()
                .any(|d| d.code.id == "network-file" && d.message.contains(words)),
            "{words}: {found:#?}"
        );
        (one(&s).complete, found)
    };
    // more out than in
    let active = "# MHz S RI R 50\n100 .1 0 1.1 0 1.1 0 .1 0\n200 .1 0 .9 0 .9 0 .1 0\n";
    let (complete, found) = warned(
        "filter F1 from \"x.s2p\"",
        active,
        "By `x.s2p`, a filter gives out more power than it gets at 1 of 2 points, most at 100 MHz: 1.44 times as much.",
    );
    assert!(complete && found.len() == 1);
    // which an amplifier may
    let s = with(&text("amplifier from \"x.s2p\""), "x.s2p", active);
    assert!(said(&s).is_empty(), "{:?}", said(&s));
    assert!(one(&s).nodes[1].loss_db < -0.01);
    // decibels under MA
    let db = "# MHz S MA R 50\n100 -20 0 -0.5 0 -0.5 0 -20 0\n150 -21 0 -0.6 0 -0.6 0 -21 0\n200 -22 0 -0.7 0 -0.7 0 -22 0\n";
    warned("filter F1 from \"x.s2p\"", db, "In `x.s2p`, line ");
    // no unit: GHz, and the band lies outside
    let (complete, found) = warned(
        "filter F1 from \"x.s2p\"",
        "#\n100 .1 0 .9 0 .9 0 .1 0\n200 .1 0 .9 0 .9 0 .1 0\n",
        "`x.s2p` reaches from 100 GHz to 200 GHz",
    );
    assert!(!complete);
    assert!(
        found
            .iter()
            .any(|d| d.help.iter().any(|h| h.contains("write `# MHz`"))),
        "{found:#?}"
    );
}

/// Points so far apart that the phase between them is a guess: the loss counts, the phase not.
#[test]
fn sparse_points_give_sizes_only() {
    let rows: String = (0..5)
        .map(|k| {
            let mhz = 140 + 4 * k;
            format!(
                "{mhz} 0.05 {} 0.8 {} 0.8 {} 0.05 {}\n",
                170 * k,
                -85 * k,
                -85 * k,
                90 * k
            )
        })
        .collect();
    let file = format!("# MHz S MA R 50\n{rows}");
    let chain = |mhz: f64| {
        let text = format!(
            "chain c on {mhz} MHz {{\n    transmitter 100 W carrier\n    run M1 from \"x.s2p\"\n    antenna {{ gain 2 dBi; impedance 25 ohm }}\n}}\n"
        );
        with(&text, "x.s2p", &file)
    };
    let of_file = |s: &Snapshot| {
        let mut found = s.diagnostics();
        found.retain(|d| d.code.id == "network-file");
        found
    };
    let at_a_point = chain(144.0);
    assert!(of_file(&at_a_point).is_empty());
    assert_eq!(one(&at_a_point).worst_db, None);
    let between = chain(146.0);
    let found = of_file(&between);
    assert_eq!(found.len(), 1, "{found:#?}");
    assert_eq!(found[0].severity.name(), "information");
    assert!(
        found[0]
            .message
            .contains("points of `x.s2p` are 4 MHz apart")
    );
    // 0.8 is 1.938 dB; SWR 2 takes 0.512 dB more on average, and how they meet is not known
    near(
        one(&between).nodes[1].matched_db,
        1.938_20,
        1e-5,
        "its loss",
    );
    assert!(one(&between).worst_db.is_some());
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
            assert!(one(&s).swr > 1.1, "the load's reflection shows");
        } else {
            near(matched(&s), want, 1e-9, name);
        }
        let anew = load_from(&files);
        assert_eq!(common::everything(&s), common::everything(&anew), "{name}");
    }
    assert!(!s.refresh_attachment("other.s2p", &files));
}

/// What is written wrong around `from`, and what is said about it.
#[test]
fn slips_are_told_with_what_to_write() {
    let file = "# MHz S RI R 50\n100 0 0 .9 0 .9 0 0 0\n200 0 0 .9 0 .9 0 0 0\n";
    let cases: &[(&str, &[&str])] = &[
        (
            "filter F1 from",
            &["missing-value `from` is followed by a path in quotes."],
        ),
        ("filter from 0.3 dB ± 0.1 dB", &[]),
        ("filter from \"x.s2p\"", &[]),
        ("run { from \"x.s2p\" reversed }", &[]),
        ("coupler C1 from \"x.s2p\", rating 100 W, ends n", &[]),
        (
            "meter { from \"x.s2p\", accuracy 0.1 dB k 2, sheet \"MT-1 p. 2\" }",
            &[],
        ),
        (
            "filter F1 from \"x.s2p\" ± 0.1 dB",
            &["not-understood `±` stands where no value goes before it."],
        ),
        (
            "filter F1 0.3 dB ± 0.1 dB, accuracy 0.1 dB",
            &["unexpected-word `accuracy` is said of a network file, and none stands before it."],
        ),
        (
            "filter F1 from \"x.s2p\", accuracy 5 %",
            &["wrong-unit A percentage stands where the accuracy of a loss belongs."],
        ),
        (
            "filter F1 0.3 dB ± 0.1 dB, from \"x.s2p\"",
            &[
                "figure-twice The loss of `F1` is given twice, here and by `x.s2p`; the file is used.",
            ],
        ),
        (
            "run M1 10 m of rg-213, from \"x.s2p\"",
            &[
                "figure-twice The loss of `M1` is given twice, by its cable and by `x.s2p`; the file is used.",
            ],
        ),
        (
            "connector from \"x.s2p\"",
            &["unexpected-word A connector or adapter is named, not read from a file."],
        ),
        (
            "run M1 from \"x.s2p\" of 10 m",
            &["unexpected-word `of` has no meaning in a run."],
        ),
        (
            "filter F1 { loss 0.3 dB ± 0.1 dB on 2m; from \"x.s2p\" on 70cm }",
            &[],
        ),
        (
            "run M1 { from \"x.s2p\" on 70cm }",
            &["no-figure-for-band M1 has no file for 2m (146 MHz)."],
        ),
    ];
    for (part, want) in cases {
        let text = format!(
            "band 2m 146 MHz\nband 70cm 432 MHz\nchain c on 2m {{\n    transmitter 100 W carrier\n    {part}\n    load from \"y.s1p\"\n}}\n"
        );
        let s = load_from(
            &files()
                .with(MAIN, &text)
                .with("x.s2p", file)
                .with("y.s1p", "# MHz S RI R 50\n100 0 0\n200 0 0\n"),
        );
        let have: Vec<String> = said(&s).iter().map(|(c, m)| format!("{c} {m}")).collect();
        assert_eq!(have, *want, "{part}");
    }
}
