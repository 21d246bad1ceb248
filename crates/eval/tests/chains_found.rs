//! Chains that were once computed wrongly, each against a reference of its own: chain matrices and
//! plain Monte Carlo in numpy (`tests/reference/net.py`, 100,000 draws, values in `net.json`).

mod common;

use common::report;
use downlead_testkit::project;
use serde_json::Value;

/// k1 and k2 per 100 m, velocity factor, impedance in ohm: as in `net.py`.
struct Cable(&'static str, f64, f64, f64, f64);

const RG6: Cable = Cable("rg6", 0.8679, 0.00428, 0.659, 75.0);
const RG11: Cable = Cable("rg11", 0.6416, 0.00428, 0.659, 75.0);
const RG213: Cable = Cable("rg213", 0.5674, 0.009661, 0.659, 50.0);
const C75: Cable = Cable("c75", 0.64, 0.0043, 0.66, 75.0);
const C52: Cable = Cable("c52", 0.6, 0.004, 0.66, 52.0);
const A50: Cable = Cable("a50", 1.42, 0.0046, 0.659, 50.0);
const WINDOW: Cable = Cable("window", 0.1761, 0.0, 0.905, 400.0);
const FLEX: Cable = Cable("flex", 1.2, 0.006, 0.66, 50.0);
const MAIN: Cable = Cable("main", 0.4, 0.0016, 0.85, 50.0);
const FOAM10: Cable = Cable("foam10", 0.392, 0.00165, 0.85, 50.0);
const HALF: Cable = Cable("half", 0.2195, 0.00078, 0.88, 50.0);
const OWN: Cable = Cable("own", 0.6, 0.004, 0.66, 50.0);
const OPEN600: Cable = Cable("open600", 0.06, 0.0, 0.99, 600.0);

impl Cable {
    /// Its definition with what is said of its velocity and accuracy.
    fn with(&self, velocity: &str, accuracy: &str) -> String {
        let Cable(name, k1, k2, v, z) = self;
        let accuracy = if accuracy.is_empty() {
            String::new()
        } else {
            format!("    accuracy {accuracy}\n")
        };
        format!(
            "cable {name} {{\n    impedance {z} ohm\n    velocity {v}{velocity}\n    loss {k1} dB/100 m/sqrt(MHz) + {k2} dB/100 m/MHz\n{accuracy}    source \"reference\"\n}}\n"
        )
    }
    fn exact(&self) -> String {
        self.with("", "")
    }
}

fn reference(name: &str) -> Value {
    let text = std::fs::read_to_string(project("tests/reference/net.json")).expect("the values");
    let all: Value = serde_json::from_str(&text).expect("JSON");
    let case = all["cases"][name].clone();
    assert!(case.is_object(), "no case `{name}` in net.json");
    case
}

fn number(v: &Value, key: &str) -> f64 {
    v[key].as_f64().unwrap_or_else(|| panic!("{key} in {v}"))
}

fn list(v: &Value, key: &str) -> Vec<f64> {
    let l = v[key].as_array().unwrap_or_else(|| panic!("{key} in {v}"));
    l.iter().map(|x| x.as_f64().expect("a number")).collect()
}

fn db(ratio: f64) -> f64 {
    10.0 * ratio.log10()
}

/// The only chain of a text as the report's JSON, after what holds of every chain.
fn evaluated(text: &str) -> Value {
    let all = serde_json::to_value(report(text)).expect("JSON");
    let chains = all["stations"][0]["chains"].as_array().expect("chains");
    let band = chains[0]["bands"][0].clone();
    assert_eq!(band["complete"], true, "{text}");
    sound(&band, text);
    band
}

/// What no result of a passive chain may break, and what each verdict is.
fn sound(band: &Value, text: &str) {
    let amplified = band["nodes"]
        .as_array()
        .is_some_and(|n| n.iter().any(|n| n["kind"] == "amplifier"));
    if !amplified {
        assert!(number(band, "total_loss_db") >= -1e-9, "gains\n{text}");
        assert!(number(band, "loss_floor_db") >= -1e-9, "gains\n{text}");
        if let Some(worst) = band["loss_worst_db"].as_array() {
            let least = worst[0].as_f64().expect("a number");
            let most = worst[1].as_f64().expect("a number");
            let total = number(band, "total_loss_db");
            assert!(
                least <= total + 1e-3 && total <= most + 1e-3,
                "{total} is not within {least} to {most}\n{text}"
            );
            assert!(
                least >= number(band, "loss_floor_db") - 1e-3,
                "gains\n{text}"
            );
        }
        for n in band["nodes"].as_array().expect("nodes") {
            if let Some(w) = n["heat_w"].as_f64() {
                assert!(w >= -1e-9, "{n}\n{text}");
            }
        }
    }
    for l in band["limits"].as_array().expect("limits") {
        let p = number(l, "probability_exceeded");
        let want = if p <= 0.022_751 {
            "met"
        } else if p >= 0.977_249 {
            "not-met"
        } else {
            "cannot-tell"
        };
        // an excess within 0.02 dB is one of the dipole's conventions
        if (-0.02..0.0).contains(&number(l, "margin_db")) {
            continue;
        }
        assert_eq!(l["verdict"], want, "{l}\n{text}");
    }
}

/// Mean and U of the loss to the antenna, from the EIRP: `lossless_w` is what a chain without any
/// loss would radiate.
fn agrees(name: &str, text: &str, lossless_w: f64) -> Value {
    let want = reference(name);
    let got = evaluated(text);
    let loss = db(lossless_w / number(&got, "eirp_w"));
    let (mean, u) = (number(&want, "mean"), number(&want, "u"));
    assert!(
        (loss - mean).abs() < 0.01 + 0.003 * u,
        "{name}: loss {loss}, reference {mean}"
    );
    let expanded = number(&got, "uncertainty_db");
    assert!(
        (expanded - u).abs() < (0.02 * u).max(0.003),
        "{name}: U {expanded}, reference {u}"
    );
    for (k, l) in got["limits"].as_array().expect("limits").iter().enumerate() {
        let p = want["p"][k][1].as_f64().expect("a probability");
        let found = number(l, "probability_exceeded");
        assert!(
            (found - p).abs() < 0.06,
            "{name}: exceeded with {found}, reference {p}"
        );
        let verdict = if p <= 0.022_75 {
            "met"
        } else if p >= 0.977_25 {
            "not-met"
        } else {
            "cannot-tell"
        };
        assert_eq!(l["verdict"], verdict, "{name}: {found}, reference {p}");
    }
    if let Some(swr) = want["swr"].as_f64() {
        let found = number(&got, "transmitter_swr");
        assert!(
            (found - swr).abs() < 0.01 * swr,
            "{name}: SWR {found}, reference {swr}"
        );
    }
    got
}

/// The ends of the interval of the loss are the reference's quantiles.
fn ends_agree(name: &str, got: &Value, lossless_w: f64) {
    let want = reference(name);
    let loss = db(lossless_w / number(got, "eirp_w"));
    let i = list(got, "interval_db");
    // EIRP is high where the loss is low
    let (low, high) = (loss - i[1], loss - i[0]);
    let u = number(&want, "u");
    for (end, key) in [(low, "low"), (high, "high")] {
        let away = (end - number(&want, key)).abs();
        assert!(
            away < 0.05 * u + 0.005,
            "{name}: {key} {end}, off by {away}, U {u}"
        );
    }
}

fn chain(mhz: f64, lines: &str) -> String {
    format!("chain c on {mhz} MHz {{\n{lines}\n}}\n")
}

const DIPOLE: f64 = 1.640_589_77; // 2.15 dBi

// --- structure 0.1, newcomer A1: lines that are not 50 ohm

#[test]
fn a_75_ohm_line_has_a_plain_uncertainty() {
    let text = RG6.with(" ± 0.007", "5 % k 1")
        + &chain(
            146.9,
            "    transmitter 100 W carrier\n    run 30 m of rg6, at 20 °C\n    antenna 6 dBi\n    limit 500 W eirp carrier, \"x\"",
        );
    let text = text.replace("    limit 500 W eirp carrier, \"x\"", "");
    agrees("line_75_ohm_30_m", &text, 100.0 * 10f64.powf(0.6));
}

#[test]
fn a_75_ohm_line_on_uhf() {
    let text = RG6.with(" ± 0.007", "5 % k 1")
        + &chain(
            434.5,
            "    transmitter 50 W carrier\n    run 20 m of rg6, at 20 °C\n    antenna 2.15 dBi",
        );
    agrees("line_75_ohm_20_m_uhf", &text, 50.0 * DIPOLE);
}

#[test]
fn a_75_ohm_line_of_any_length() {
    for metres in [5, 10, 18, 25] {
        for mhz in [144, 145, 146] {
            let text = RG6.with(" ± 0.007", "5 % k 1")
                + &chain(
                    f64::from(mhz),
                    &format!(
                        "    transmitter 50 W carrier\n    run {metres} m of rg6, at 20 °C\n    antenna 2.15 dBi"
                    ),
                );
            agrees(
                &format!("line_75_ohm_{metres}_m_{mhz}_mhz"),
                &text,
                50.0 * DIPOLE,
            );
        }
    }
}

#[test]
fn a_52_ohm_line_as_old_sheets_print_it() {
    let text = C52.with(" ± 0.007", "5 % k 1")
        + &chain(
            434.5,
            "    transmitter 50 W carrier\n    run 30 m of c52, at 20 °C\n    antenna 2.15 dBi",
        );
    agrees("line_52_ohm_30_m_uhf", &text, 50.0 * DIPOLE);
}

#[test]
fn a_75_ohm_line_before_an_antenna_of_swr_1_2() {
    let text = RG11.with(" ± 0.007", "5 % k 1")
        + &chain(
            146.9,
            "    transmitter 100 W carrier\n    run 30 m of rg11, at 20 °C\n    antenna 6 dBi, swr 1.2",
        );
    agrees("line_75_ohm_swr_1_2", &text, 100.0 * 10f64.powf(0.6));
}

#[test]
fn a_short_75_ohm_line_with_a_length_tolerance() {
    let text = RG6.with(" ± 0.007", "5 % k 1")
        + &chain(
            146.9,
            "    transmitter 100 W carrier\n    run 5 m ± 0.5 m of rg6, at 20 °C\n    antenna 6 dBi, swr 2",
        );
    agrees("line_75_ohm_5_m_swr_2", &text, 100.0 * 10f64.powf(0.6));
}

#[test]
fn a_50_ohm_line_in_the_same_place() {
    let text = RG213.with(" ± 0.007", "5 % k 1")
        + &chain(
            146.9,
            "    transmitter 100 W carrier\n    run 5 m ± 0.5 m of rg213, at 20 °C\n    antenna 6 dBi, swr 2",
        );
    agrees("line_50_ohm_swr_2", &text, 100.0 * 10f64.powf(0.6));
}

#[test]
fn a_window_line_on_vhf() {
    let text = WINDOW.with(" ± 0.02", "20 % k 1")
        + &chain(
            146.9,
            "    transmitter 100 W carrier\n    run 25 m ± 0.2 m of window, at 20 °C\n    antenna 6 dBi, swr 3",
        );
    agrees("window_line_vhf_swr_3", &text, 100.0 * 10f64.powf(0.6));
}

// --- newcomer A2, A3: length and velocity where waves stand; tuners

fn window(velocity: &str, accuracy: &str, length: &str) -> String {
    WINDOW.with(velocity, accuracy)
        + &chain(
            14.2,
            &format!(
                "    transmitter 100 W carrier\n    run {length} of window, at 20 °C\n    antenna {{ gain 2.15 dBi; impedance 120 ohm with reactance -60 ohm }}\n    limit 38 W erp carrier, \"licence\""
            ),
        )
}

#[test]
fn a_length_counts_where_waves_stand() {
    agrees(
        "window_length",
        &window("", "", "18.0 m ± 0.5 m"),
        100.0 * DIPOLE,
    );
}

#[test]
fn a_velocity_counts_where_waves_stand() {
    agrees(
        "window_velocity",
        &window(" ± 0.02", "", "18.0 m"),
        100.0 * DIPOLE,
    );
}

#[test]
fn length_velocity_and_loss_together() {
    agrees(
        "window_all",
        &window(" ± 0.02", "20 % k 1", "18.0 m ± 0.5 m"),
        100.0 * DIPOLE,
    );
}

#[test]
fn a_tuner_before_a_window_line_on_50_mhz() {
    let text = WINDOW.with(" ± 0.02", "20 % k 1")
        + &chain(
            50.0,
            "    transmitter 100 W carrier\n    tuner 0.2 dB\n    run 24 m of window, at 20 °C\n    antenna { gain 2.15 dBi; impedance 120 ohm with reactance -60 ohm }",
        );
    agrees("window_tuner_50_mhz", &text, 100.0 * DIPOLE);
}

#[test]
fn a_tuner_before_a_window_line_of_uncertain_length() {
    let text = WINDOW.with(" ± 0.02", "20 % k 1")
        + &chain(
            14.2,
            "    transmitter 100 W carrier\n    tuner 0.2 dB\n    run 18 m ± 1 m of window, at 20 °C\n    antenna { gain 2.15 dBi; impedance 120 ohm with reactance -60 ohm }",
        );
    agrees("window_tuner_length", &text, 100.0 * DIPOLE);
}

// --- chains 1: O24 and the four velocities

fn c75(velocity: &str, length: &str) -> String {
    C75.with(velocity, "")
        + &chain(
            145.3,
            &format!(
                "    transmitter 50 W carrier\n    run {length} of c75, at 20 °C\n    antenna {{ gain 2.15 dBi; impedance 38 ohm with reactance -12 ohm }}\n    limit 33 W erp carrier, \"x\""
            ),
        )
}

#[test]
fn five_centimetres_of_75_ohm_make_a_limit_uncertain() {
    agrees("c75_length", &c75("", "12.1 m ± 0.05 m"), 50.0 * DIPOLE);
}

#[test]
fn a_velocity_of_75_ohm_makes_a_limit_uncertain() {
    agrees("c75_velocity", &c75(" ± 0.002", "12.1 m"), 50.0 * DIPOLE);
}

#[test]
fn the_newcomers_75_ohm_line() {
    let text = C75.exact()
        + &chain(
            145.3,
            "    transmitter 50 W carrier\n    run 18.0 m ± 0.05 m of c75, at 20 °C\n    antenna 2.15 dBi",
        );
    agrees("c75_length_18_m", &text, 50.0 * DIPOLE);
}

#[test]
fn from_a_known_to_an_unknown_velocity() {
    for percent in [
        "0.1", "0.2", "0.3", "0.35", "0.4", "0.5", "0.6", "0.8", "1", "2", "4", "10",
    ] {
        let text = A50.exact()
            + &C75.with(&format!(" ± {percent} %"), "")
            + &chain(
                146.9,
                "    transmitter 50 W carrier\n    jumper 1.2 m of a50, at 20 °C\n    run 17.35 m of c75, at 20 °C\n    antenna { gain 0 dBi; impedance 38 ohm with reactance -12 ohm }",
            );
        agrees(&format!("velocity_{percent}_percent"), &text, 50.0);
    }
}

#[test]
fn an_unknown_load_angle() {
    let text = A50.exact()
        + &C75.exact()
        + &chain(
            146.9,
            "    transmitter 50 W carrier\n    jumper 1.2 m of a50, at 20 °C\n    run 17.35 m of c75, at 20 °C\n    antenna { gain 0 dBi; swr 1.6 }",
        );
    agrees("load_angle_unknown", &text, 50.0);
}

// --- chains 2: each ± that was dropped

fn ended(antenna: &str) -> String {
    chain(
        145.3,
        &format!("    transmitter 100 W carrier\n    antenna {{ {antenna} }}"),
    )
}

#[test]
fn the_uncertainty_of_an_swr_counts() {
    agrees("antenna_swr", &ended("gain 0 dBi; swr 2 ± 0.5"), 100.0);
    agrees("antenna_swr", &ended("gain 0 dBi; swr 1.5 to 2.5"), 100.0);
    agrees(
        "antenna_swr_interval",
        &ended("gain 0 dBi; swr 1.3 to 1.7"),
        100.0,
    );
}

#[test]
fn the_uncertainty_of_a_return_loss_counts() {
    agrees(
        "antenna_return_loss",
        &ended("gain 0 dBi; return-loss 9.5 dB ± 3 dB"),
        100.0,
    );
}

#[test]
fn the_uncertainty_of_a_resistance_counts() {
    agrees(
        "antenna_resistance",
        &ended("gain 0 dBi; impedance 80 ohm ± 30 ohm"),
        100.0,
    );
}

#[test]
fn the_uncertainty_of_a_reactance_counts() {
    agrees(
        "antenna_reactance",
        &ended("gain 0 dBi; impedance 50 ohm with reactance 30 ohm ± 50 ohm"),
        100.0,
    );
}

#[test]
fn the_uncertainty_of_a_cables_impedance_counts() {
    let text = OWN.exact().replace("50 ohm", "50 ohm ± 2 ohm")
        + &chain(
            145.3,
            "    transmitter 100 W carrier\n    run 20 m of own, at 20 °C\n    antenna { gain 0 dBi; impedance 100 ohm }",
        );
    agrees("cable_impedance", &text, 100.0);
}

#[test]
fn the_uncertainty_of_an_efficiency_counts() {
    agrees(
        "antenna_efficiency",
        &ended("directivity 0 dBi; efficiency 90 % ± 9 %"),
        100.0,
    );
}

#[test]
fn the_uncertainty_of_a_coupling_counts() {
    let text = chain(
        145.3,
        "    transmitter 100 W carrier\n    coupler 10 dB ± 1 dB coupled\n    antenna 0 dBi",
    );
    agrees("coupler_coupling", &text, 100.0);
}

#[test]
fn the_uncertainty_of_a_pads_return_loss_counts() {
    let text = chain(
        145.3,
        "    transmitter 100 W carrier\n    pad 1 dB, return-loss 20 dB ± 5 dB\n    antenna { gain 0 dBi; swr 2 }",
    );
    agrees("pad_return_loss", &text, 100.0);
}

// --- chains 5: powers at nodes between parts

fn nodes(name: &str, text: &str, watts: f64) {
    let want = reference(name);
    let got = agrees(name, text, watts);
    let rows = got["nodes"].as_array().expect("nodes");
    let (forward, net) = (list(&want, "forward"), list(&want, "net"));
    // the transmitter's row is the node at the source, the antenna's that before it
    assert_eq!(rows.len(), forward.len() + 1);
    for (k, row) in rows.iter().take(forward.len()).enumerate() {
        let f = row["forward_w"]
            .as_f64()
            .unwrap_or_else(|| number(row, "power_w"));
        for (what, got, want) in [
            ("forward", f, forward[k]),
            ("net", number(row, "power_w"), net[k]),
        ] {
            assert!(
                db(got / want).abs() < 0.005,
                "{name}, row {k}, {what}: {got} W, reference {want} W"
            );
        }
    }
}

#[test]
fn forward_power_between_parts_before_an_unknown_load() {
    let text = FLEX.exact()
        + &MAIN.exact()
        + &chain(
            435.0,
            "    transmitter 50 W carrier\n    jumper 3 m of flex, at 20 °C\n    run 25 m of main, at 20 °C\n    tail 2 m of flex, at 20 °C\n    antenna { gain 0 dBi; swr 3 }",
        );
    nodes("forward_at_nodes", &text, 50.0);
}

#[test]
fn forward_power_at_several_swr() {
    for swr in ["1.5", "2", "3", "5"] {
        let text = FLEX.exact()
            + &MAIN.exact()
            + &chain(
                434.5,
                &format!(
                    "    transmitter 50 W carrier\n    jumper 3 m of flex, at 20 °C\n    run 40 m of main, at 20 °C\n    tail 3 m of flex, at 20 °C\n    antenna {{ gain 0 dBi; swr {swr} }}"
                ),
            );
        nodes(&format!("forward_swr_{swr}"), &text, 50.0);
    }
}

#[test]
fn a_forward_reading_between_parts_agrees() {
    let text = "instrument W1 \"directional wattmeter\" {\n    accuracy 1 % of reading\n}\n"
        .to_owned()
        + &FLEX.exact()
        + &MAIN.exact()
        + &chain(
            435.0,
            "    transmitter 50 W ± 1 % carrier\n    jumper 3 m of flex, at 20 °C\n    read 41.3 W forward, 2026-07-04 with W1 by QY2TEC\n    run 25 m of main, at 20 °C\n    tail 2 m of flex, at 20 °C\n    antenna { gain 6 dBi; swr 3 }",
        );
    let got = evaluated(&text);
    let reading = &got["readings"][0];
    assert_eq!(reading["verdict"], "agrees", "{reading}");
    let want = list(&reference("forward_at_nodes"), "forward")[1];
    assert!(
        (number(reading, "expected_w") - want).abs() < 0.01,
        "{reading}"
    );
}

// --- chains 6: isolators

#[test]
fn an_isolator_hides_the_antenna() {
    let text = FOAM10.exact()
        + &chain(
            434.5,
            "    transmitter 35 W carrier\n    isolator { loss 0.5 dB; isolation 25 dB }\n    run 25 m of foam10, at 20 °C\n    antenna { gain 0 dBi; swr 3 }",
        );
    nodes("isolator_then_line", &text, 35.0);
    let text = chain(
        434.5,
        "    transmitter 35 W carrier\n    isolator { loss 0.5 dB; isolation 25 dB }\n    antenna { gain 0 dBi; swr 3 }",
    );
    agrees("isolator_alone", &text, 35.0);
}

#[test]
fn an_isolator_passed_backwards_loses_its_isolation() {
    let text = FOAM10.exact()
        + "station s {\n    transmitter TX1 35 W carrier\n    receiver RX1 -119 dBm\n    isolator IS1 { loss 0.5 dB; isolation 25 dB }\n    run M1 25 m of foam10, at 20 °C\n    switch SW1 { port a 0.1 dB; port b 0.1 dB }\n    antenna A1 5 dBi\n    chain out on 434.5 MHz transmit {\n        TX1\n        SW1.a\n        IS1\n        M1\n        A1\n    }\n    chain in on 434.5 MHz receive {\n        A1\n        M1\n        IS1\n        SW1.b\n        RX1\n    }\n}\n";
    let all = serde_json::to_value(report(&text)).expect("JSON");
    let chains = all["stations"][0]["chains"].as_array().expect("chains");
    let want = number(&reference("isolator_backwards"), "mean");
    let loss = number(&chains[1]["bands"][0], "total_loss_db");
    assert!((loss - want - 0.1).abs() < 0.01, "{loss}, reference {want}");
    let said = all["diagnostics"].as_array().expect("findings");
    assert!(
        said.iter().any(|d| d["code"] == "passed-backwards"),
        "{said:?}"
    );
}

#[test]
fn an_isolator_turned_round_in_its_own_line() {
    let text = FOAM10.exact()
        + &chain(
            434.5,
            "    transmitter 35 W carrier\n    isolator { loss 0.5 dB; isolation 25 dB; reversed }\n    run 25 m of foam10, at 20 °C\n    antenna 0 dBi",
        );
    agrees("isolator_backwards", &text, 35.0);
}

// --- chains 9, 10: three reflecting devices, tuners

fn three(before: &str) -> String {
    chain(
        145.3,
        &format!(
            "    transmitter 100 W carrier\n{before}    filter 0.35 dB, return-loss 30 dB\n    filter 1.5 dB, return-loss 18 dB\n    filter 2.4 dB, return-loss 26 dB\n    antenna {{ gain 0 dBi; swr 1.5 }}"
        ),
    )
}

#[test]
fn the_largest_swr_can_be_reached_and_is_not_exceeded() {
    let want = reference("three_devices");
    let got = agrees("three_devices", &three(""), 100.0);
    let (worst, reached) = (
        number(&got, "transmitter_swr_worst"),
        number(&want, "swr_worst"),
    );
    assert!(
        (worst - reached).abs() < 0.001,
        "SWR {worst} at most, {reached} reached"
    );
    let range = list(&got, "loss_worst_db");
    assert!(
        range[0] <= number(&want, "least") && range[1] >= number(&want, "most"),
        "{range:?}"
    );
}

#[test]
fn three_reflecting_devices_after_a_tuner() {
    let got = agrees("three_devices_tuner", &three("    tuner 0 dB\n"), 100.0);
    let want = reference("three_devices_tuner");
    let range = list(&got, "loss_worst_db");
    assert!(
        range[0] <= number(&want, "least") && range[1] >= number(&want, "most"),
        "{range:?}"
    );
}

#[test]
fn a_tuner_before_a_line_with_standing_waves() {
    let text = A50.exact()
        + &chain(
            3.6,
            "    transmitter 100 W carrier\n    tuner 0 dB\n    run 30 m of a50, at 20 °C\n    antenna { gain 0 dBi; swr 5 }",
        );
    agrees("hf_swr_5_tuner", &text, 100.0);
    let text = C75.exact()
        + &chain(
            146.9,
            "    transmitter 100 W carrier\n    tuner 0 dB\n    run 17.35 m of c75, at 20 °C\n    antenna { gain 0 dBi; swr 3 }",
        );
    agrees("c75_swr_3_tuner", &text, 100.0);
}

// --- chains 4, structure 0.4: dividers

fn two(before: &str, second: &str) -> String {
    OWN.exact()
        + &chain(
            145.0,
            &format!(
                "    transmitter 100 W carrier\n{before}    divider 2 way, excess 0.1 dB {{\n        branch {{\n            jumper 2 m of own, at 20 °C\n            antenna {{ gain 0 dBi; swr 3 }}\n        }}\n        branch {{\n            jumper 2 m of own, at 20 °C\n            antenna {{ gain 0 dBi; swr {second} }}\n        }}\n    }}\n    branches in phase"
            ),
        )
}

fn divider_row(got: &Value) -> Value {
    let rows = got["nodes"].as_array().expect("nodes");
    rows.iter()
        .find(|n| n["kind"] == "divider")
        .expect("a divider")
        .clone()
}

/// Heat of the divider, W; no field where it is 0.
fn heat_of(got: &Value) -> f64 {
    divider_row(got)["heat_w"].as_f64().unwrap_or(0.0)
}

#[test]
fn a_divider_gives_back_what_its_arms_reflect_alike() {
    let want = reference("divider_alike");
    let got = agrees("divider_alike", &two("", "3"), 100.0);
    assert!((number(&got, "total_loss_db") - number(&want, "delivered")).abs() < 0.01);
    let heat = heat_of(&got);
    assert!(
        (heat - 100.0 * number(&want, "heat")).abs() < 0.05,
        "{heat}"
    );
    // what was silent while nothing came back
    let fold = two("", "3").replace("100 W carrier", "100 W carrier, foldback swr 2");
    let said = serde_json::to_value(report(&fold)).expect("JSON")["diagnostics"].clone();
    assert!(
        said.as_array()
            .expect("findings")
            .iter()
            .any(|d| d["code"] == "foldback"),
        "{said}"
    );
}

#[test]
fn a_tuner_before_a_divider_sends_it_again() {
    let want = reference("divider_alike_tuner");
    let got = agrees("divider_alike_tuner", &two("    tuner 0 dB\n", "3"), 100.0);
    assert!((number(&got, "total_loss_db") - number(&want, "delivered")).abs() < 0.01);
    let heat = heat_of(&got);
    assert!(
        (heat - 100.0 * number(&want, "heat")).abs() < 0.05,
        "{heat}"
    );
}

#[test]
fn arms_of_unlike_angles_end_in_the_dividers_resistor() {
    // another SWR in the last digit: the angles are not the same
    for (name, before) in [
        ("divider_apart", ""),
        ("divider_apart_tuner", "    tuner 0 dB\n"),
    ] {
        let want = reference(name);
        let got = agrees(name, &two(before, "3.0001"), 100.0);
        assert!((number(&got, "total_loss_db") - number(&want, "delivered")).abs() < 0.01);
        // what goes in is, in the mean, heat and what is delivered
        let (heat, mean) = (heat_of(&got), 100.0 * number(&want, "heat"));
        assert!(
            (heat - mean).abs() < 0.005 * mean,
            "{heat}, reference {mean}"
        );
    }
}

#[test]
fn heat_of_a_divider_is_what_no_branch_gets() {
    let branch = "        branch {\n            jumper 3.2 m of foam10, at 20 °C\n            antenna 0 dBi\n        }\n";
    let text = HALF.exact()
        + &FOAM10.exact()
        + &chain(
            145.3,
            &format!(
                "    transmitter 100 W carrier\n    run 30 m of half, at 20 °C\n    divider 2 way, excess 0.25 dB {{\n{branch}{branch}    }}\n    branches in phase"
            ),
        );
    let got = agrees("divider_matched", &text, 100.0);
    let heat = heat_of(&got);
    let want = number(&reference("divider_matched"), "heat");
    assert!((heat - want).abs() < 0.01, "{heat}, reference {want}");

    let branch = "        branch { antenna 0 dBi }\n";
    let text = chain(
        145.0,
        &format!(
            "    transmitter 90 W carrier\n    divider 3 way {{\n{branch}{branch}{branch}    }}\n    branches in phase"
        ),
    );
    let got = agrees("divider_three_ways_lossless", &text, 90.0);
    assert!(heat_of(&got).abs() < 1e-6);
}

#[test]
fn one_arm_and_two_arms_after_a_divider() {
    let arm = "run 10 m of rg6, at 20 °C\n            antenna { gain 0 dBi; swr 1.5 }";
    let text = RG6.with(" ± 0.007", "5 % k 1")
        + &chain(146.9, &format!("    transmitter 100 W carrier\n    {arm}"));
    let one = agrees("one_arm", &text, 100.0);
    let text = RG6.with(" ± 0.007", "5 % k 1")
        + &chain(
            146.9,
            &format!(
                "    transmitter 100 W carrier\n    divider 2 way, excess 0.2 dB {{\n        branch {{\n            {arm}\n        }}\n        branch {{\n            {arm}\n        }}\n    }}\n    branches in phase"
            ),
        );
    let both = agrees("two_arms", &text, 100.0);
    // a divider with equal arms adds its excess to both ends of the range
    let (a, b) = (list(&one, "loss_worst_db"), list(&both, "loss_worst_db"));
    for k in 0..2 {
        assert!((b[k] - a[k] - 0.2).abs() < 0.01, "{a:?} {b:?}");
    }
}

fn two_jumpers(a: &str, b: &str) -> String {
    OWN.exact()
        + &chain(
            145.0,
            &format!(
                "    transmitter 100 W carrier\n    divider 2 way {{\n        branch {{\n            jumper {a} of own, at 20 °C\n            antenna 0 dBi\n        }}\n        branch {{\n            jumper {b} of own, at 20 °C\n            antenna 0 dBi\n        }}\n    }}"
            ),
        )
}

#[test]
fn fields_add_by_the_lengths_of_the_branches() {
    for (name, a, b) in [
        ("two_arms_of_uncertain_length", "2 m ± 0.3 m", "2 m ± 0.3 m"),
        (
            "two_arms_a_quarter_turn_apart",
            "2 m ± 0.1 m",
            "2.3 m ± 0.1 m",
        ),
    ] {
        let got = agrees(name, &two_jumpers(a, b), 100.0);
        ends_agree(name, &got, 100.0);
    }
}

#[test]
fn a_plain_junction_is_impedances_in_parallel() {
    let section = 0.25 * 299_792_458.0 / 145e6 * 0.66;
    let text = OWN.exact()
        + &C75.exact()
        + &chain(
            145.0,
            &format!(
                "    transmitter 100 W carrier\n    run 5 m of own, at 20 °C\n    divider tee {{\n        branch {{\n            jumper {section} m ± 0.02 m of c75, at 20 °C\n            antenna {{ gain 0 dBi; impedance 100 ohm with reactance 20 ohm }}\n        }}\n        branch {{\n            jumper {section} m ± 0.02 m of c75, at 20 °C\n            antenna {{ gain 0 dBi; impedance 50 ohm }}\n        }}\n    }}\n    branches in phase"
            ),
        );
    let got = agrees("junction_of_two_lines", &text, 100.0);
    let want = number(&reference("junction_of_two_lines"), "delivered");
    assert!((number(&got, "total_loss_db") - want).abs() < 0.01);
}

#[test]
fn a_divider_that_divides_unequally() {
    let text = OWN.exact()
        + &chain(
            145.0,
            "    transmitter 100 W carrier\n    divider split 70 % 30 % {\n        branch {\n            jumper 2 m of own, at 20 °C\n            antenna { gain 0 dBi; swr 2 }\n        }\n        branch {\n            jumper 2 m of own, at 20 °C\n            antenna { gain 0 dBi; swr 1.5 }\n        }\n    }\n    branches in phase",
        );
    let got = agrees("unequal_divider", &text, 100.0);
    let want = number(&reference("unequal_divider"), "delivered");
    assert!((number(&got, "total_loss_db") - want).abs() < 0.01);
}

#[test]
fn where_a_baluns_loss_sits() {
    for (name, word) in [
        ("balun_in_series", " series"),
        ("balun_across", " shunt"),
        ("balun_anywhere", ""),
    ] {
        let text = OPEN600.exact()
            + &chain(
                7.1,
                &format!(
                    "    transmitter 100 W carrier\n    tuner 0 dB\n    balun 0.3 dB ± 0.1 dB{word}, ratio 4:1\n    run 11 m of open600, at 20 °C\n    antenna {{ gain 0 dBi; impedance 1500 ohm with reactance 400 ohm }}"
                ),
            );
        agrees(name, &text, 100.0);
    }
}

#[test]
fn a_balun_with_an_swr_keeps_its_ratio() {
    let text = OWN.exact()
        + &RG6.exact()
        + &chain(
            50.1,
            "    transmitter 100 W carrier\n    run 3 m of own, at 20 °C\n    balun 0.3 dB, ratio 4:1, swr 1.3\n    run 2 m of rg6, at 20 °C\n    antenna { gain 0 dBi; impedance 150 ohm with reactance 30 ohm }",
        );
    agrees("balun_with_an_swr", &text, 100.0);
}

/// By reciprocity a chain of reciprocal parts loses the same from the antenna as to it: the
/// transmitter and the receiver are matched.
#[test]
fn receiving_loses_what_transmitting_does() {
    for (parts, through, antenna) in [
        (
            "run M1 12.3 m ± 0.05 m of rg6, at 20 °C",
            "M1",
            "gain 0 dBi; swr 2",
        ),
        (
            "run M1 12.3 m of rg6, at 20 °C; filter F1 1 dB ± 0.3 dB, swr 1.4",
            "F1; M1",
            "gain 0 dBi; swr 1.6 ± 0.3",
        ),
        (
            "run M1 7 m of window, at 20 °C; balun B1 0.2 dB, ratio 9:1",
            "B1; M1",
            "gain 0 dBi; impedance 90 ohm with reactance 40 ohm",
        ),
        (
            "jumper J1 2 m of own, at 20 °C; coupler C1 10 dB coupled; run M1 30 m of rg6, at 20 °C",
            "J1; C1; M1",
            "gain 0 dBi",
        ),
    ] {
        let steps = |all: &mut dyn Iterator<Item = &str>| {
            all.fold(String::new(), |text, s| text + "        " + s + "\n")
        };
        let there = steps(&mut ["TX1"].into_iter().chain(through.split("; ")).chain(["A1"]));
        let back = steps(
            &mut ["A1"]
                .into_iter()
                .chain(through.split("; ").collect::<Vec<_>>().into_iter().rev())
                .chain(["RX1"]),
        );
        let loss = |end: &str, chain: &str| {
            let text = RG6.with(" ± 0.007", "5 % k 1")
                + &WINDOW.with(" ± 0.02", "20 % k 1")
                + &OWN.exact()
                + &format!(
                    "station s {{\n    {end}\n    {parts}\n    antenna A1 {{ {antenna} }}\n    chain c on 145.3 MHz {chain}    }}\n}}\n"
                );
            (evaluated(&text), text)
        };
        let (out, text) = loss(
            "transmitter TX1 100 W carrier",
            &format!("transmit {{\n{there}"),
        );
        let (into, _) = loss("receiver RX1 -119 dBm", &format!("receive {{\n{back}"));
        for key in ["total_loss_db", "uncertainty_db"] {
            let (a, b) = (number(&out, key), number(&into, key));
            let u = number(&out, "uncertainty_db");
            assert!(
                (a - b).abs() < 0.002 + 0.01 * u,
                "{key}: {a} there, {b} back\n{text}"
            );
        }
    }
}

#[test]
fn nothing_changes_nothing() {
    let with = |line: &str, pieces: &str| {
        RG6.with(" ± 0.007", "5 % k 1")
            + &chain(
                145.3,
                &format!(
                    "    transmitter 100 W carrier\n{line}{pieces}    antenna {{ gain 0 dBi; swr 1.8 }}"
                ),
            )
    };
    let one = "    run 14 m of rg6, at 20 °C\n";
    let plain = evaluated(&with("", one));
    let u = number(&plain, "uncertainty_db");
    for (line, pieces) in [
        ("    pad 0 dB\n", one),
        ("    connector 3 of none-pair\n", one),
        (
            "",
            "    run 5.5 m of rg6, at 20 °C\n    run 8.5 m of rg6, at 20 °C\n",
        ),
    ] {
        let text = "connector none-pair { family n; loss 0 dB; source \"none\" }\n".to_owned()
            + &with(line, pieces);
        let other = evaluated(&text);
        for key in [
            "total_loss_db",
            "uncertainty_db",
            "eirp_w",
            "transmitter_swr",
        ] {
            let (a, b) = (number(&plain, key), number(&other, key));
            assert!((a - b).abs() < 0.01 * u, "{key}: {a} and {b}\n{text}");
        }
    }
}

/// EIRP's upper end is at most power times gain, each with its own ±.
#[test]
fn no_interval_goes_beyond_what_could_be_radiated() {
    for (line, antenna) in [
        ("run 5 m of rg6, at 20 °C", "gain 0 dBi ± 0.5 dB; swr 2"),
        (
            "run 10 m ± 0.5 m of rg6, at 20 °C",
            "gain 3 dBi; swr 1.5 ± 0.4",
        ),
        (
            "pad 0.1 dB ± 0.1 dB",
            "gain 3 dBi ± 1 dB; impedance 80 ohm ± 30 ohm",
        ),
        (
            "tuner 0.1 dB ± 0.1 dB",
            "gain 0 dBi; impedance 50 ohm with reactance 30 ohm ± 50 ohm",
        ),
        (
            "filter 0.2 dB, swr 1.2 ± 0.15",
            "gain 0 dBi ± 0.2 dB; swr 1.5 ± 0.4",
        ),
    ] {
        for power in ["100 W", "100 W ± 10 %"] {
            let text = RG6.with(" ± 0.007", "20 % k 1")
                + &chain(
                    146.9,
                    &format!(
                        "    transmitter {power} carrier\n    {line}\n    antenna {{ {antenna} }}"
                    ),
                );
            let got = evaluated(&text);
            let up = number(&got, "eirp_w")
                * 10f64.powf(list(&got, "interval_db").get(1).copied().unwrap_or(0.0) / 10.0);
            let gain: f64 = antenna
                .split(' ')
                .nth(1)
                .and_then(|g| g.parse().ok())
                .expect("a gain");
            let of_gain: f64 = match antenna.split_once("dBi ± ") {
                Some((_, rest)) => rest
                    .split(' ')
                    .next()
                    .and_then(|g| g.parse().ok())
                    .expect("a ±"),
                None => 0.0,
            };
            // a percentage of a power is one of its dB: 10 log10(e) x
            let of_power = if power.contains('±') {
                db(0.1f64.exp())
            } else {
                0.0
            };
            let most = 100.0 * 10f64.powf((gain + of_gain + of_power) / 10.0);
            assert!(up <= most * 1.000_001, "{up} W of {most} W\n{text}");
        }
    }
}

#[test]
fn no_result_of_the_library_gains_or_explodes() {
    for cable in [
        "rg-6a",
        "rg-11a",
        "rg-59b",
        "rg-213",
        "half-inch-foam",
        "window-line-450",
    ] {
        for metres in [2, 7, 13, 24, 30] {
            for mhz in ["14.2", "50", "146.9", "434.5"] {
                for end in [
                    "swr 1",
                    "swr 1.5",
                    "swr 3",
                    "impedance 120 ohm with reactance -60 ohm",
                ] {
                    for tuner in ["", "    tuner 0.2 dB\n"] {
                        let text = format!(
                            "chain c on {mhz} MHz {{\n    transmitter 100 W carrier\n{tuner}    run {metres} m of {cable}\n    antenna {{ gain 2.15 dBi; {end} }}\n    limit 170 W eirp carrier, \"x\"\n}}\n"
                        );
                        let got = evaluated(&text);
                        let up = number(&got, "eirp_w")
                            * 10f64.powf(got["interval_db"][1].as_f64().unwrap_or(0.0) / 10.0);
                        assert!(up <= 164.1, "{up} W\n{text}");
                        assert!(number(&got, "uncertainty_db") < 12.0, "{got}\n{text}");
                    }
                }
            }
        }
    }
}
