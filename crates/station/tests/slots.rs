//! Every slot of the language that holds a figure, and what becomes of an uncertainty there: it is
//! kept in the model, or it is refused. Nothing is dropped.

#[path = "common/slots.rs"]
mod table;

use downlead_base::{Diagnostic, Severity};
use downlead_station::keywords::{KEYWORDS, WORDS};
use downlead_station::model::Meaning;
use downlead_station::{Lets, lower, lower_let};
use downlead_syntax::File;
use table::Slot::{Bounds, Kept, KeptNoInterval, OwnK, Range, Refused};
use table::{Row, SLOTS};

/// The lines that a block needs besides this one.
fn others(line: &str, needed: &[&str]) -> String {
    let word = |l: &str| l.split(' ').next().map(str::to_owned);
    needed
        .iter()
        .filter(|l| word(l) != word(line))
        .map(|l| format!("{l}; "))
        .collect()
}

fn wrap(place: &str, line: &str) -> String {
    match place {
        "" => line.to_owned(),
        "band" => format!("band b {{ {line} }}"),
        "cable" => format!("cable x {{ loss 0.4 dB/100 m/sqrt(MHz); {line} }}"),
        "bare cable" => format!("cable x {{ {line} }}"),
        "coax" => {
            let rest = others(line, &["inner 1 mm", "outer 4 mm", "permittivity 2.1"]);
            format!("cable x {{ construction {{ {rest}{line} }} }}")
        }
        "wires" => {
            let rest = others(line, &["diameter 2 mm", "spacing 150 mm"]);
            format!("cable x {{ wires {{ {rest}{line} }} }}")
        }
        "connector" => {
            let rest = others(line, &["family n", "loss 0.1 dB"]);
            format!("connector x {{ {rest}{line} }}")
        }
        "rules" => format!("licence l {{ {line} }}"),
        "steps" => format!("licence l {{ limit erp, \"x\" {{ {line} }} }}"),
        "examples" => format!("licence l {{ limit 30 W erp, \"x\" {{ {line} }} }}"),
        "instrument" => format!("instrument x {{ {line} }}"),
        "device" => {
            let kind = match line.split(' ').next() {
                Some("gain" | "noise") => "preamplifier",
                Some("isolation") => "isolator",
                Some("excess" | "ways") => "divider",
                Some("coupled") => "coupler",
                _ => "filter",
            };
            format!("device x {{ kind {kind}; {line} }}")
        }
        "duplexer" => format!("device x {{ kind duplexer; low 1 dB; {line} }}"),
        "divider" => format!("device x {{ kind divider; {line} }}"),
        "balun" => format!("device x {{ kind balun; loss 0.1 dB; {line} }}"),
        "station" => format!("station s {{ {line} }}"),
        "place" => format!("station s {{ place mast {{ {line} }} }}"),
        "link" => format!("link l {{ hop a of b to c of d; {line} }}"),
        "tx" => format!("station s {{ transmitter TX1 {{ power 9 W; {line} }} }}"),
        "rx" => format!("station s {{ receiver RX1 {{ {line} }} }}"),
        "line" => format!("station s {{ jumper J1 from \"a.s2p\" on b {{ {line} }} }}"),
        "antenna" => format!("station s {{ antenna A1 {{ {line} }} }}"),
        "chain" => format!("chain c on 145 MHz {{ transmitter 9 W; {line}; load }}"),
        "session" => format!("session s {{ piece A 20 m of x; {line} }}"),
        "readings" => {
            format!("session s {{ piece A 20 m of x; readings on 145 MHz {{ {line} }} }}")
        }
        other => panic!("no place {other}"),
    }
}

/// What the text means without places, and its errors.
fn lowered(text: &str) -> (String, Vec<Diagnostic>) {
    let tree = File::parse(text);
    let (mut out, mut diags) = (String::new(), Vec::new());
    let broken: Vec<Diagnostic> = tree.diagnostics().collect();
    assert!(broken.is_empty(), "{text}: {broken:?}");
    for p in tree.items() {
        let l = lower(&p.item, &Lets::default(), false);
        diags.extend(l.diagnostics);
        if matches!(l.meaning, Meaning::Let(_)) {
            let (v, d) = lower_let(&p.item, &Lets::default());
            out += &format!(
                "{:?}",
                v.map(|(_, v)| (v.middle(), v.standard(), !v.is_rectangular()))
            );
            out = out.replace(", true)", ", normal: true)");
            diags.extend(d);
        } else {
            out += &format!("{:?}", l.meaning);
        }
    }
    diags.retain(|d| d.severity == Severity::Error);
    let out = without(&without(&out, "Span {", '}'), "ItemId(", ')');
    (out, diags)
}

/// The debug form of a meaning without what stands between `from` and `to`.
fn without(text: &str, from: &str, to: char) -> String {
    let mut pieces = text.split(from);
    let mut out = pieces.next().unwrap_or("").to_owned();
    for p in pieces {
        out += p.split_once(to).map_or("", |p| p.1);
    }
    out
}

/// A figure a fifth larger (nearer to zero below zero): the upper end of an interval.
fn larger(figure: &str) -> String {
    let at = figure
        .find(|c: char| !(c.is_ascii_digit() || "-.".contains(c)))
        .filter(|at| !figure[*at..].starts_with('e'))
        .unwrap_or(match figure.find(' ') {
            Some(at) => at,
            None => figure.len(),
        });
    let n: f64 = figure[..at].parse().expect(figure);
    let n = if n < 0.0 { n / 1.2 } else { n * 1.2 };
    format!("{n:e}{}", &figure[at..])
}

#[test]
fn an_uncertainty_is_kept_or_refused() {
    let mut wrong = Vec::new();
    for row in SLOTS {
        if let Err(why) = one(row) {
            wrong.push(format!(
                "{}: `{}` of {} ± {}: {why}",
                row.0, row.1, row.2, row.3
            ));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

type Lowered = (String, Vec<Diagnostic>);

fn taken((_, d): &Lowered, what: &str) -> Result<(), String> {
    match d.first() {
        None => Ok(()),
        Some(d) => Err(format!("{what}: {}", d.message)),
    }
}

fn refused((_, d): &Lowered, what: &str) -> Result<(), String> {
    if d.iter().any(|d| d.code.id == "uncertainty-not-used") {
        return Ok(());
    }
    Err(format!(
        "{what} is not refused: {:?}",
        d.first().map(|d| &d.message)
    ))
}

fn noticed((_, d): &Lowered, what: &str) -> Result<(), String> {
    if d.is_empty() {
        return Err(format!("{what} is dropped"));
    }
    Ok(())
}

fn differ(a: &Lowered, b: &Lowered, what: &str) -> Result<(), String> {
    if a.0 == b.0 {
        return Err(format!("{what} is dropped"));
    }
    Ok(())
}

fn one(&(place, line, figure, unit, slot): &Row) -> Result<(), String> {
    let of = |tail: &str| {
        let figure = format!("{figure}{tail}");
        lowered(&wrap(place, &line.replace('@', &figure)))
    };
    let plain = of("");
    let (small, large) = (
        of(&format!(" ± 0.01 {unit}")),
        of(&format!(" ± 0.02 {unit}")),
    );
    let with_k = of(&format!(" ± 0.02 {unit} k 2"));
    let interval = of(&format!(" to {}", larger(figure)));
    let k = of(" k 2");
    match slot {
        Kept | KeptNoInterval => {
            taken(&plain, "alone")?;
            taken(&small, "±")?;
            differ(&small, &plain, "±")?;
            differ(&small, &large, "the size of ±")?;
            taken(&with_k, "± with k")?;
            if !with_k.0.contains("normal: true") || small.0.contains("normal: true") {
                return Err("its distribution is lost".to_owned());
            }
            // a named `5 % k 2` may be an accuracy
            if !line.starts_with("let ") {
                noticed(&k, "k")?;
            }
        }
        Bounds => {
            taken(&small, "±")?;
            differ(&small, &large, "the size of ±")?;
            refused(&with_k, "± with k")?;
        }
        OwnK => {
            taken(&plain, "alone")?;
            refused(&small, "±")?;
            taken(&k, "k")?;
            differ(&k, &plain, "k")?;
        }
        Range => noticed(&small, "±")?,
        Refused => {
            taken(&plain, "alone")?;
            refused(&small, "±")?;
            refused(&k, "k")?;
            if small.0 != plain.0 {
                return Err("the figure itself is lost".to_owned());
            }
        }
    }
    match slot {
        Kept | Bounds => {
            taken(&interval, "an interval")?;
            differ(&interval, &plain, "an interval")
        }
        Range => taken(&interval, "a range"),
        _ => noticed(&interval, "an interval"),
    }
}

/// Keywords whose statement holds no figure of its own.
const WITHOUT_FIGURES: &[&str] = &[
    "use",
    "cable",
    "adapter",
    "device",
    "instrument",
    "session",
    "station",
    "place",
    "joins",
    "circulator",
    "protector",
    "switch",
    "meter",
    "tuner",
    "duplexer",
    "diplexer",
    "combiner",
    "branch",
    "branches",
    "construction",
    "wires",
    "conductor",
    "source",
    "family",
    "calibrated",
    "due",
    "kind",
    "mode",
    "reversed",
    "tee",
    "licence",
    "rules",
    "under",
    "beside",
    "alone",
    "variant",
    "take",
    "put",
    "authority",
    "jurisdiction",
    "service",
    "edition",
    "dated",
    "until",
    "holder",
    "class",
    "ask",
    "condition",
    "link",
    "hop",
    "profile",
    "model",
    "variant",
    "put",
    "take",
    "accept",
    "recalled",
    "certificate",
    "field",
    "pattern",
];

#[test]
fn no_statement_is_left_out_of_the_table() {
    for k in KEYWORDS.iter() {
        let there = SLOTS.iter().any(|r| r.1.split(' ').next() == Some(k.word));
        assert_eq!(
            there,
            !WITHOUT_FIGURES.contains(&k.word),
            "`{}` is in the table of slots or takes no figure of its own",
            k.word
        );
    }
    assert!(
        WORDS.contains(&"added"),
        "words inside a statement are listed"
    );
}

#[test]
fn an_interval_the_wrong_way_round_is_an_error_with_its_ends_swapped() {
    for (line, write) in [
        ("protector P1 0.2 dB to 0.1 dB", "0.1 dB to 0.2 dB"),
        ("run M1 46 m of x, at 10 °C to -20 °C", "-20 °C to 10 °C"),
        ("transmitter TX1 30 W to 20 W", "20 W to 30 W"),
    ] {
        let (back, d) = lowered(&wrap("station", line));
        let [d] = &d[..] else { panic!("{line}: {d:?}") };
        assert_eq!(d.code.id, "impossible-value");
        assert_eq!(d.fixes[0].edits[0].text, write);
        let (_, at) = line.split_once(" to ").map_or(("", ""), |p| p);
        let from = write.split_once(" to ").expect("an interval").0;
        let right = line.replace(&format!("{at} to {from}"), write);
        let first = line.split(" to ").next().expect("a start");
        let start = first.len() - write.split(" to ").nth(1).expect("an end").len();
        let right = if right == line {
            format!("{}{write}", &line[..start])
        } else {
            right
        };
        let (good, none) = lowered(&wrap("station", &right));
        assert!(none.is_empty(), "{right}: {none:?}");
        assert_eq!(back, good, "{line}");
    }
}

#[test]
fn an_uncertainty_larger_than_its_figure_is_pointed_out() {
    let found = |place: &str, line: &str| {
        let tree = File::parse(wrap(place, line));
        let item = &tree.items()[0].item;
        let d = lower(item, &Lets::default(), false).diagnostics;
        d.iter().any(|d| d.code.id == "uncertainty-too-large")
    };
    for (place, line) in [
        ("station", "pad P1 0.1 dB ± 0.3 dB"),
        ("station", "pad P1 0.1 dB ± 200 %"),
        // twice the standard uncertainty
        ("station", "pad P1 1 dB ± 0.6 dB k 1"),
        ("station", "run M1 1 m ± 2 m of x"),
        ("station", "filter F1 1 dB, swr 1.2 ± 0.3"),
        ("station", "filter F1 1 dB, return-loss 3 dB ± 4 dB"),
        ("station", "transmitter TX1 10 W ± 120 %"),
        ("station", "transmitter TX1 10 W ± 12 W"),
        ("cable", "velocity 0.66 ± 200 %"),
        ("cable", "accuracy 60 % k 1"),
        ("coax", "inner 1 mm ± 2 mm"),
        ("antenna", "efficiency 50 % ± 60 %"),
        ("bare cable", "loss { 100 MHz 4 dB/100 m ± 5 dB/100 m }"),
        ("connector", "loss 0.05 dB ± 120 % at 1 GHz"),
    ] {
        assert!(found(place, line), "{line}");
    }
    for (place, line) in [
        ("station", "pad P1 0.1 dB ± 0.1 dB"),
        ("station", "pad P1 1 dB ± 1 dB k 2"),
        // as sheets round small losses
        ("station", "pad P1 0.10 dB ± 0.15 dB"),
        ("station", "pad P1 0 dB to 0.2 dB"),
        ("station", "filter F1 1 dB, swr 1.2 ± 0.2"),
        ("station", "transmitter TX1 10 W ± 3 dB"),
        ("antenna", "gain 1 dBi ± 3 dB"),
        ("antenna", "impedance 50 ohm with reactance 5 ohm ± 30 ohm"),
        ("cable", "accuracy 50 % k 1"),
    ] {
        assert!(!found(place, line), "{line}");
    }
}

#[test]
fn a_percentage_of_a_level_or_gain_is_one_of_its_power() {
    // 10 log10(1 + x) ≈ 4.343 x (ISO 80000-15)
    let u = |place: &str, line: &str| {
        let (m, _) = lowered(&wrap(place, line));
        let at = m.find(" u: ").expect("an uncertainty") + 4;
        let text: String = m[at..]
            .chars()
            .take_while(|c| !",} ".contains(*c))
            .collect();
        text.parse::<f64>().expect("a number")
    };
    let expected = 4.342_944_8 * 0.10 / 3f64.sqrt();
    assert!((u("station", "receiver RX1 -119 dBm ± 10 %") - expected).abs() < 1e-6);
    assert!((u("antenna", "gain 5.2 dBi ± 10 %") - expected).abs() < 1e-6);
    // a voltage counts twice
    assert!((u("station", "receiver RX1 0.25 uV ± 5 %") - expected).abs() < 1e-6);
}

#[test]
fn a_temperature_that_no_result_uses_is_refused() {
    for line in [
        "antenna A1 4.5 dBi, at 15 °C ± 5 °C",
        "transmitter TX1 9 W carrier, at 25 °C",
        "load DL1, return-loss 30 dB, at 15 °C",
        "run M1 46 m of x, added 1 dB at 10 °C",
        "protector P1 { loss 0.1 dB at 15 °C }",
        "protector P1 { loss 0.1 dB; voltage 400 V at 40 °C }",
        "protector P1 { loss 0.1 dB; rating 400 W at 40 °C }",
    ] {
        let (_, d) = lowered(&wrap("station", line));
        assert_eq!(d.len(), 1, "{line}: {d:?}");
        assert!(d[0].message.contains("temperature"), "{}", d[0].message);
    }
    for line in [
        "run M1 46 m of x, added 1 dB, at 10 °C",
        "protector P1 0.1 dB, at 15 °C",
    ] {
        let (_, d) = lowered(&wrap("station", line));
        assert!(d.is_empty(), "{line}: {d:?}");
    }
}

/// Figures that may be negative, so that no `±` is too large for them.
const OF_EITHER_SIGN: &[&str] = &[
    "let a = @",
    "antenna A1 4.5 dBi, height @ agl",
    "height @ agl",
    "impedance 80 ohm with reactance @",
    "amplifier PA1 @ gain",
    "gain @",
    "directivity @",
];

/// A figure that has a least value, with a `±` that reaches below it.
#[test]
fn a_tolerance_that_cannot_be_is_pointed_out() {
    let mut wrong = Vec::new();
    let mut count = 0;
    for (place, line, figure, unit, slot) in SLOTS {
        let free = OF_EITHER_SIGN.contains(line) || figure.contains('°') && *unit == "°C";
        if !matches!(slot, Kept | KeptNoInterval) || *unit == "°C" || free {
            continue;
        }
        count += 1;
        let text = wrap(place, &line.replace('@', &format!("{figure} ± 260 %")));
        let tree = File::parse(&*text);
        let said = tree.items().iter().any(|p| {
            let mut found = lower(&p.item, &Lets::default(), false).diagnostics;
            found.extend(lower_let(&p.item, &Lets::default()).1);
            found.iter().any(|d| d.code.id == "uncertainty-too-large")
        });
        if !said {
            wrong.push(text);
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(count > 80, "{count}");
}
