//! Every ± that the language takes moves something that is reported: an uncertainty, an interval, a
//! budget, a verdict; or a finding says why not. The slots are those of
//! `crates/station/tests/common/slots.rs`, each here in a chain or session where it matters.

mod common;
#[path = "../../station/tests/common/slots.rs"]
mod table;

use common::{MAIN, load_from, session};
use downlead_eval::Snapshot;
use downlead_report::Reports as _;
use downlead_testkit::Files;
use serde_json::Value;
use table::Slot::{Bounds, Kept, KeptNoInterval, OwnK};
use table::{Row, SLOTS};

/// Figures of which nothing is computed, and why; what is added here is a gap.
const NOTHING_COMPUTED: &[(&str, &str)] = &[
    // no result of a chain depends on a height
    ("antenna A1 4.5 dBi, height @ agl", "height"),
    ("height @ agl", "height"),
    // shown beside the loss as it is stated
    ("run M1 46 m of x, wet @", "wet loss"),
];

/// A measured piece of line: −3 dB, little reflection.
const FILE: &str = "# MHz S MA R 50\n100 0.05 20 0.75 -100 0.75 -100 0.04 -30\n145 0.05 40 0.7 -140 0.7 -140 0.05 -20\n200 0.06 60 0.65 170 0.65 170 0.05 -10\n";

const CABLE: &str =
    "cable x { impedance 50 ohm; velocity 0.66; loss 0.4 dB/100 m/sqrt(MHz); source \"s\" }\n";

/// Another impedance in between.
const Q: &str =
    "cable q { impedance 75 ohm; velocity 0.66; loss 0.6 dB/100 m/sqrt(MHz); source \"s\" }\n";

/// An end that reflects, so that everything about a line counts.
const END: &str = "antenna A9 { gain 2 dBi; impedance 100 ohm with reactance 20 ohm }";

/// A line of cable `x` before that end.
fn line_chain(definition: &str) -> String {
    format!(
        "{definition}\n{Q}chain c on 145 MHz {{\n    transmitter 100 W carrier\n    jumper 2.3 m of q, at 20 °C\n    run 20 m of x, at 20 °C\n    {END}\n    limit 60 W eirp carrier, \"x\"\n}}\n"
    )
}

/// The statements of `all` but those whose keyword the line has.
fn others(all: &[&str], line: &str) -> String {
    let word = line.split(' ').next();
    let kept = all.iter().filter(|s| s.split(' ').next() != word);
    kept.fold(String::new(), |text, s| text + s + "; ")
}

/// A station with parts and a transmit chain through `through`.
fn station(parts: &str, through: &str) -> String {
    format!(
        "{CABLE}{Q}band b 145 MHz\nstation s {{\n    {parts}\n    chain c on b transmit {{\n{}    limit 60 W eirp carrier, \"x\"\n    }}\n}}\n",
        steps(through)
    )
}

fn steps(through: &str) -> String {
    through
        .split("; ")
        .fold(String::new(), |text, s| text + "        " + s + "\n")
}

/// A station with parts and a receive chain.
fn receiving(parts: &str, through: &str) -> String {
    format!(
        "{CABLE}{Q}band b 145 MHz\nstation s {{\n    {parts}\n    chain c on b receive {{\n{}    }}\n}}\n",
        steps(through)
    )
}

/// One part in the line of a transmitter, before a line that reflects.
fn one_part(part: &str, used: &str) -> String {
    station(
        &format!("transmitter TX9 100 W carrier; {part}; run M9 20 m of x, at 20 °C; {END}"),
        &format!("TX9; {used}; M9; A9"),
    )
}

fn divided(divider: &str) -> String {
    format!(
        "{CABLE}station s {{\n    transmitter TX9 100 W carrier\n    {divider}\n    antenna A7 2 dBi\n    antenna A8 2 dBi\n    chain c on 145 MHz transmit {{\n        TX9\n        DV1 {{\n            branch {{ A7 }}\n            branch {{ A8 }}\n        }}\n    }}\n}}\n"
    )
}

fn bench(lines: &str) -> String {
    format!(
        "instrument W9 {{ accuracy 5 % of reading }}\n{CABLE}session s {{\n    read 2026-07-19 with W9 by QY5BEN\n    piece A 20 m of x\n{lines}\n    readings on 145 MHz {{\n        baseline 44.0 W at 0 min\n        through A 34 W at 1 min\n        through B 33 W at 2 min\n        baseline 43.7 W at 4 min\n    }}\n}}\n"
    )
}

/// A transmitter beside a receiver, each on its antenna, with the line among them.
fn desense(line: &str) -> String {
    let word = line.split(' ').next().unwrap_or("");
    let own = |kind: &str, default: &str| match word == kind {
        true => line.to_owned(),
        false => default.to_owned(),
    };
    let noise = if line.contains("dBc/Hz") {
        ""
    } else {
        "; noise -150 dBc/Hz at 600 kHz"
    };
    let blocking = if line.contains("blocking") {
        ""
    } else {
        "; blocking -25 dBm at 600 kHz"
    };
    let tx = match (line.contains("dBc/Hz"), word) {
        (true, "noise") => format!("transmitter TX1 {{ power 9 W carrier; {line} }}"),
        (true, "transceiver") => line.replace("TR1", "TX1").replace("25 W", "25 W carrier"),
        (true, _) => line.to_owned(),
        _ => format!("transmitter TX1 {{ power 9 W carrier{noise} }}"),
    };
    let rx = match (line.contains("blocking"), word) {
        (true, "blocking") => {
            format!("receiver RX1 {{ sensitivity -119 dBm; noise figure 6 dB; {line} }}")
        }
        (true, "transceiver") => line
            .replace("TR1", "RX1")
            .replace('{', "{ noise figure 6 dB;"),
        (true, _) => format!("{line}, noise figure 6 dB"),
        _ => format!("receiver RX1 {{ noise figure 6 dB{blocking} }}"),
    };
    let isolation = own("isolation", "isolation A9 of near to A1 40 dB on b");
    let site = own("site-noise", "");
    format!(
        "band b 145 MHz\nstation near {{\n    {tx}\n    antenna A9 2 dBi\n    chain out on 145.6 MHz transmit {{\n        TX1\n        A9\n    }}\n}}\nstation s {{\n    beside near\n    {isolation}\n    {site}\n    {rx}\n    antenna A1 2 dBi\n    chain c on b receive {{\n        A1\n        limit 1 dB desense, \"x\"\n        RX1\n    }}\n}}\n"
    )
}

/// The line in a text where its figure matters. None: this test does not know the slot.
fn whole(place: &str, line: &str) -> Option<String> {
    let mut words = line.split([' ', ',']);
    let word = words.next()?;
    let tag = words.next().unwrap_or("");
    let of_site = place == "station" && matches!(word, "isolation" | "site-noise");
    if of_site || line.contains("dBc/Hz") || line.contains("blocking") {
        return Some(desense(line));
    }
    Some(match place {
        "" => format!(
            "{line}\n{}",
            line_chain(CABLE).replace("20 m of x", "a of x")
        ),
        "cable" | "bare cable" => {
            let base = ["impedance 50 ohm", "velocity 0.66"];
            let loss = if place == "cable" {
                "loss 0.4 dB/100 m/sqrt(MHz); "
            } else {
                ""
            };
            let line = line.replace(" }", "; 200 MHz 6 dB/100 m }");
            line_chain(&format!(
                "cable x {{ {loss}{}{line}; source \"s\" }}",
                others(&base, &line)
            ))
        }
        "coax" => {
            let base = [
                "inner 1 mm",
                "outer 4 mm",
                "permittivity 2.1",
                "loss-tangent 0.0002",
            ];
            line_chain(&format!(
                "cable x {{ construction {{ {}{line} }}; source \"s\" }}",
                others(&base, line)
            ))
        }
        "wires" => {
            let base = ["diameter 2 mm", "spacing 20 mm"];
            line_chain(&format!(
                "cable x {{ wires {{ {}{line} }}; source \"s\" }}",
                others(&base, line)
            ))
        }
        "connector" => {
            let base = ["loss 0.1 dB at 1 GHz"];
            format!(
                "connector x {{ family n; {}{line}; source \"s\" }}\nchain c on 145 MHz {{\n    transmitter 100 W carrier\n    connector 2 of x\n    antenna 2 dBi, swr 2\n}}\n",
                others(&base, line)
            )
        }
        "instrument" if word == "accuracy" => format!(
            "instrument x {{ {line} }}\nchain c on 145 MHz {{\n    transmitter 32 W carrier, read 2026-07-04 with x\n    antenna 2 dBi\n}}\n"
        ),
        "instrument" => format!(
            "instrument x {{ accuracy 5 % of reading; {line} }}\n{}",
            bench("    piece B 20 m of x")
                .replace("with W9", "with x")
                .replace("cable x", "cable y")
                .replace("of x", "of y")
        ),
        "place" => station(
            &format!(
                "place mast {{ {line} }}; transmitter TX9 100 W carrier; run M9 20 m of x, mast; {END}"
            ),
            "TX9; M9; A9",
        ),
        "tx" => station(&format!("transmitter TX1 {{ {line} }}; {END}"), "TX1; A9"),
        "rx" => receiving(
            &format!(
                "receiver RX1 {{ {}{line} }}; run M9 20 m of x, at 20 °C; antenna A9 2 dBi",
                others(&["sensitivity -119 dBm"], line)
            ),
            "A9; M9; RX1",
        ),
        // the file holds on another band
        "line" => format!(
            "band b2 100 MHz\n{}",
            one_part(
                &format!(
                    "jumper J1 from \"a.s2p\" on b2 {{ {}{line} }}",
                    others(&["loss 0.4 dB"], line)
                ),
                "J1",
            )
        ),
        "station" => match word {
            "transmitter" => station(&format!("{line}; {END}"), &format!("{tag}; A9")),
            "transceiver" if line.contains('{') => receiving(
                &format!("{line}; run M9 20 m of x, at 20 °C; antenna A9 2 dBi"),
                &format!("A9; M9; {tag}"),
            ),
            "transceiver" => station(&format!("{line}; {END}"), &format!("{tag}; A9")),
            "receiver" => receiving(
                &format!("{line}; run M9 20 m of x, at 20 °C; antenna A9 2 dBi"),
                &format!("A9; M9; {tag}"),
            ),
            "load" => format!(
                "station s {{\n    transmitter TX9 100 W carrier\n    {line}\n    chain c on 145 MHz transmit {{\n        TX9\n        {tag}\n    }}\n}}\n"
            ),
            "antenna" => station(
                &format!("transmitter TX9 100 W carrier; {line}"),
                &format!("TX9; {tag}"),
            ),
            "divider" => divided(line),
            "preamplifier" => receiving(
                &format!("{line}; receiver RX9 -119 dBm, noise figure 6 dB; antenna A9 2 dBi"),
                &format!("A9; {tag}; RX9"),
            ),
            // its temperature makes noise
            "filter" if line.contains(", at ") => receiving(
                &format!("{line}; receiver RX9 -119 dBm, noise figure 2 dB; antenna A9 2 dBi"),
                &format!("A9; {tag}; RX9"),
            ),
            // passed backwards it loses its isolation
            "isolator" => one_part(&format!("{line}, reversed"), tag),
            _ => one_part(line, tag),
        },
        "device" => {
            let (kind, figures, port): (&str, &[&str], &str) = match word {
                "gain" => ("amplifier", &[], ""),
                "noise" => ("preamplifier", &["gain 20 dB"], ""),
                "high" | "low" => ("duplexer", &["high 1 dB", "low 1 dB"], word),
                "port" => ("switch", &[], "a"),
                "isolation" => ("isolator", &["loss 0.5 dB"], ""),
                "excess" => ("divider", &["ways 2"], ""),
                "coupled" => ("coupler", &[], ""),
                "swr" | "return-loss" => ("filter", &["loss 0.5 dB"], ""),
                _ => ("filter", &[], ""),
            };
            let definition = format!(
                "device y {{ kind {kind}; {}{line}; source \"s\" }}\n",
                others(figures, line)
            );
            let used = if port.is_empty() {
                "D1".to_owned()
            } else {
                format!("D1.{port}")
            };
            let text = match kind {
                "divider" => divided("divider DV1 of y"),
                "preamplifier" => receiving(
                    "preamplifier D1 of y; receiver RX9 -119 dBm, noise figure 6 dB; antenna A9 2 dBi",
                    "A9; D1; RX9",
                ),
                "isolator" => one_part("isolator D1 of y, reversed", &used),
                _ => one_part(&format!("{kind} D1 of y"), &used),
            };
            definition + &text
        }
        "duplexer" => {
            let base = if line.starts_with("low ") {
                // the other leg's loss, and what the used one is
                "high 1 dB, passes 144.9 MHz to 145.1 MHz; low 1 dB, passes 145.9 MHz to 146.1 MHz"
            } else {
                "low 1 dB, passes 144.9 MHz to 145.1 MHz"
            };
            let used = if line.starts_with("low ") {
                "high"
            } else {
                "low"
            };
            let line = line
                .replace(
                    "high 1.5 dB,",
                    "high 1.5 dB, passes 145.9 MHz to 146.1 MHz,",
                )
                .replace("at 146 MHz", "at 145 MHz");
            format!("device y {{ kind duplexer; {base}; {line}; source \"s\" }}\n")
                + &one_part("duplexer D1 of y", &format!("D1.{used}"))
        }
        "divider" => {
            format!("device y {{ kind divider; {line}; source \"s\" }}\n")
                + &divided("divider DV1 of y")
        }
        "balun" => {
            format!("device y {{ kind balun; loss 0.1 dB; {line}; source \"s\" }}\n")
                + &one_part("balun BA1 of y", "BA1")
        }
        "antenna" => {
            let base: &[&str] = match word {
                "efficiency" => &["directivity 8 dBi"],
                "directivity" => &["efficiency 80 %"],
                "gain" => &["swr 1.5"],
                _ => &["gain 2 dBi"],
            };
            station(
                &format!(
                    "transmitter TX9 100 W carrier; jumper J9 2.3 m of q, at 20 °C; antenna A1 {{ {}{line} }}",
                    others(base, line)
                ),
                "TX9; J9; A1",
            )
        }
        "chain" => format!(
            "chain c on 145 MHz {{\n    transmitter 28 W ± 1 % carrier\n    {line}\n    antenna 0 dBi, swr 1.7\n}}\n"
        ),
        "session" => {
            let b = if word == "piece" {
                format!("    {line}")
            } else {
                let ends = others(&["load return-loss 20 dB", "generator swr 1.3"], line);
                format!("    piece B 20 m of x\n    {ends}{line}")
            };
            bench(&b)
        }
        _ => return None,
    })
}

/// What an uncertainty may move: numbers of the report, sessions, findings without their places.
#[derive(PartialEq, Debug)]
struct Effects {
    numbers: Vec<String>,
    sessions: Vec<String>,
    findings: Vec<String>,
}

const KEYS: &[&str] = &[
    "uncertainty",
    "interval",
    "worst",
    "budget",
    "probability",
    "verdict",
    "safe_setting",
    "low_db",
    "high_db",
];

fn numbers(v: &Value, path: &str, counts: bool, out: &mut Vec<String>) {
    match v {
        Value::Object(m) => {
            for (k, v) in m {
                let counts = counts || KEYS.iter().any(|key| k.contains(key));
                numbers(v, &format!("{path}.{k}"), counts, out);
            }
        }
        Value::Array(a) => a
            .iter()
            .enumerate()
            .for_each(|(i, v)| numbers(v, &format!("{path}[{i}]"), counts, out)),
        Value::Number(n) if counts => {
            // what shows in some digit
            let x = n.as_f64().unwrap_or(0.0);
            out.push(format!("{path} {x:.5}"));
        }
        Value::String(s) if counts && path.contains("verdict") => out.push(format!("{path} {s}")),
        _ => {}
    }
}

fn effects(text: &str) -> Result<Effects, String> {
    let s: Snapshot = load_from(&Files::default().with(MAIN, text).with("a.s2p", FILE));
    let report = s.report();
    let errors: Vec<_> = report
        .diagnostics
        .iter()
        .filter(|d| {
            d.severity.name() == "error"
                && ![
                    "limit-not-met",
                    "expectation-missed",
                    "reading-contradicts",
                    "desense-not-met",
                ]
                .contains(&d.code)
        })
        .map(|d| format!("{}: {}", d.code, d.message))
        .collect();
    if !errors.is_empty() {
        return Err(format!("{errors:#?}\n{text}"));
    }
    let v = serde_json::to_value(&report).expect("JSON");
    let mut out = Vec::new();
    numbers(&v["stations"], "", false, &mut out);
    Ok(Effects {
        numbers: out,
        sessions: s
            .scopes()
            .iter()
            .flat_map(|x| x.items())
            .filter_map(|x| x.2.session.as_deref())
            .map(session)
            .collect(),
        findings: report
            .diagnostics
            .iter()
            .map(|d| d.code.to_owned())
            .collect(),
    })
}

/// The row's line without and with its ±; of a figure that is an uncertainty itself, once and
/// twice as large.
fn pair(&(_, line, figure, unit, slot): &Row) -> (String, String) {
    let half = match unit {
        // wide enough for what is there
        "%" if slot == Bounds => "60 %",
        "dB" if slot == Bounds => "3 dB",
        "%" => "8 %",
        "dB" => "0.4 dB",
        "ohm" => "3 ohm",
        "°C" => "15 °C",
        "W" => "3 W",
        "km" => "2 km",
        "dB/100 m/sqrt(MHz)" => "0.05 dB/100 m/sqrt(MHz)",
        other => panic!("no ± in {other}"),
    };
    let with = |f: &str| line.replace('@', f);
    match slot {
        OwnK => {
            let (n, rest) = figure.split_once(' ').expect("a unit");
            let n: f64 = n.parse().expect("a number");
            (with(figure), with(&format!("{} {rest}", 2.0 * n)))
        }
        _ => (with(figure), with(&format!("{figure} ± {half}"))),
    }
}

#[test]
fn every_uncertainty_moves_something() {
    let mut wrong = Vec::new();
    let mut count = 0;
    for row in SLOTS {
        let (place, line, _, _, slot) = *row;
        // what enters a link is tried in tests/link.rs
        if !matches!(slot, Kept | KeptNoInterval | OwnK | Bounds) || place == "link" {
            continue;
        }
        let (without, with) = pair(row);
        let (Some(a), Some(b)) = (whole(place, &without), whole(place, &with)) else {
            wrong.push(format!("{place}: no chain for `{line}`"));
            continue;
        };
        count += 1;
        let (a, b) = match (effects(&a), effects(&b)) {
            (Ok(x), Ok(y)) => (x, y),
            (Err(e), _) | (_, Err(e)) => {
                wrong.push(format!("{place}: `{with}`: {e}"));
                continue;
            }
        };
        let same = a == b;
        let known = NOTHING_COMPUTED.iter().any(|n| n.0 == line);
        if same != known {
            let what = if same {
                "moves nothing"
            } else {
                "moves something after all"
            };
            wrong.push(format!("{place}: `{with}` {what}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(count > 90, "{count}");
}

/// Takes out the lists of what is assumed: that a line makes an assumption go is no effect.
fn without_assumptions(v: &mut Value) {
    match v {
        Value::Object(m) => {
            m.remove("assumptions");
            m.values_mut().for_each(without_assumptions);
        }
        Value::Array(a) => a.iter_mut().for_each(without_assumptions),
        _ => {}
    }
}

/// All that is reported of a text but the assumptions, findings included.
fn everything(text: &str) -> String {
    let s: Snapshot = load_from(&Files::default().with(MAIN, text).with("a.s2p", FILE));
    let report = s.report();
    let mut v = serde_json::to_value(&report).expect("JSON");
    without_assumptions(&mut v);
    let mut out = v["stations"].to_string();
    for d in &report.diagnostics {
        out += &format!("\n{}: {}", d.code, d.message);
    }
    let scopes = s.scopes();
    let sessions = scopes.iter().flat_map(|x| x.items());
    for x in sessions.filter_map(|x| x.2.session.as_deref()) {
        out += &session(x);
    }
    out
}

/// Device kinds, with what makes each one complete.
const KINDS: &[(&str, &str)] = &[
    ("pad", "loss 0.5 dB"),
    ("filter", "loss 0.5 dB"),
    ("isolator", "loss 0.5 dB"),
    ("circulator", "loss 0.5 dB"),
    ("protector", "loss 0.5 dB"),
    ("switch", "loss 0.5 dB"),
    ("coupler", "coupled 20 dB"),
    ("coupler", "loss 0.5 dB"),
    ("meter", "loss 0.5 dB"),
    ("balun", "loss 0.5 dB"),
    ("balun", "loss 0.5 dB; swr 1.2"),
    ("tuner", "loss 0.5 dB"),
    ("duplexer", "high 0.5 dB; low 0.5 dB"),
    ("diplexer", "high 0.5 dB; low 0.5 dB"),
    ("combiner", "port high 0.5 dB; port b 0.5 dB"),
    ("divider", "ways 2"),
    ("divider", "tee"),
    ("divider", "split 70 % 30 %"),
    ("divider", "ways 2; loss 3.5 dB"),
    ("amplifier", "gain 10 dB"),
    ("preamplifier", "gain 10 dB"),
    ("isolator", "from \"a.s2p\""),
    ("balun", "from \"a.s2p\""),
    ("filter", "from \"a.s2p\""),
    ("tuner", "from \"a.s2p\""),
];

/// Lines a device can have.
const LINES: &[&str] = &[
    "swr 1.4",
    "return-loss 12 dB",
    "isolation 18 dB",
    "gain 7 dB",
    "noise figure 3 dB",
    "excess 0.3 dB",
    "ways 3",
    "coupled 15 dB",
    "ratio 4",
    "tee",
    "split 60 % 40 %",
    "loss 1.5 dB",
    "loss 1.5 dB series",
    "loss 1.5 dB shunt",
];

/// A figure that a device states either counts, or a finding says that it does not.
#[test]
fn no_figure_of_a_device_is_dropped() {
    let mut wrong = Vec::new();
    for (kind, base) in KINDS {
        for line in LINES {
            let word = line.split(' ').next();
            // the same figure twice is another matter
            if base.split("; ").any(|b| b.split(' ').next() == word) {
                continue;
            }
            let text = |lines: &str| {
                let legs = base.contains("high ");
                let used = if legs { "D1.high" } else { "D1" };
                match *kind {
                    "divider" => divided(&format!("divider DV1 {{ {lines} }}")),
                    "preamplifier" => receiving(
                        &format!(
                            "preamplifier D1 {{ {lines} }}; receiver RX9 -119 dBm, noise figure 6 dB; {END}"
                        ),
                        "A9; D1; RX9",
                    ),
                    // its noise counts on receive
                    "amplifier" if line.starts_with("noise") => receiving(
                        &format!(
                            "amplifier D1 {{ {lines} }}; receiver RX9 -119 dBm, noise figure 6 dB; {END}"
                        ),
                        "A9; D1; RX9",
                    ),
                    _ => one_part(&format!("{kind} D1 {{ {lines} }}"), used),
                }
            };
            // as long as the line, so that places stay where they are
            let (without, with) = (text(base), text(&format!("{base}; {line}")));
            if everything(&without) == everything(&with) {
                wrong.push(format!("{kind} {{ {base}; {line} }}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Slots that no result depends on; what is added here is a gap.
const NO_RESULT: &[&str] = &["antenna A1 4.5 dBi, height @ agl", "height @ agl"];

/// The figure a fifth larger.
fn larger(figure: &str) -> Option<String> {
    let end = figure
        .find(|c: char| !(c.is_ascii_digit() || "-.".contains(c)))
        .unwrap_or(figure.len());
    let n: f64 = figure[..end].parse().ok()?;
    Some(format!("{}{}", n * 1.2, &figure[end..]))
}

/// A figure that counts is not dropped: another one gives another result.
#[test]
fn every_value_moves_something() {
    let mut wrong = Vec::new();
    let mut count = 0;
    for (place, line, figure, _, slot) in SLOTS {
        if !matches!(slot, Kept | KeptNoInterval | OwnK | Bounds) {
            continue;
        }
        let Some(more) = larger(figure) else { continue };
        let (Some(a), Some(b)) = (
            whole(place, &line.replace('@', figure)),
            whole(place, &line.replace('@', &more)),
        ) else {
            continue;
        };
        count += 1;
        let known = NO_RESULT.contains(line);
        if (everything(&a) == everything(&b)) != known {
            wrong.push(format!("{place}: `{line}` with {figure} and {more}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(count > 90, "{count}");
}
