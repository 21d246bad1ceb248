//! Every slot of the language that holds a figure, and what becomes of an uncertainty there: it is
//! kept in the model, or it is refused. Nothing is dropped.

use downlead_base::{Diagnostic, Severity};
use downlead_station::keywords::{KEYWORDS, WORDS};
use downlead_station::model::Meaning;
use downlead_station::{Lets, lower, lower_let};
use downlead_syntax::File;

/// What becomes of an uncertainty.
#[derive(Clone, Copy, PartialEq, Debug)]
enum Slot {
    /// `±`, `k` and `a to b` are kept, with their distribution.
    Kept,
    /// `±` and `k` are kept; `a to b` is no interval here.
    KeptNoInterval,
    /// A bound of what may be: `±` is kept, a `k` is refused.
    Bounds,
    /// The figure is an uncertainty itself: `k` belongs to it, `±` is refused.
    OwnK,
    /// `a to b` is a range; `±` is refused.
    Range,
    /// All refused.
    Refused,
}
use Slot::{Bounds, Kept, KeptNoInterval, OwnK, Range, Refused};

/// Where the line stands, the line with its figure at `@`, the figure, the unit of its `±`.
type Row = (&'static str, &'static str, &'static str, &'static str, Slot);

#[rustfmt::skip]
const SLOTS: &[Row] = &[
    // bands, ranges
    ("",           "band b @",                                        "145 MHz", "%", Range),
    ("band",       "transmit @",                                      "145 MHz", "%", Refused),
    ("band",       "receive @",                                       "145 MHz", "%", Refused),
    ("",           "let a = @",                                       "30 m", "%", Kept),
    ("",           "chain c on @ { transmitter 9 W; load }",           "145 MHz", "%", Refused),
    // cables
    ("cable",      "impedance @",                                     "50 ohm", "%", Kept),
    ("cable",      "impedance @",                                     "50 ohm", "ohm", Kept),
    ("cable",      "velocity @",                                      "0.7", "%", Kept),
    ("cable",      "velocity @",                                      "70 %", "%", Kept),
    ("bare cable", "loss @",                                          "0.4 dB/100 m/sqrt(MHz)", "dB/100 m/sqrt(MHz)", Kept),
    ("bare cable", "loss @",                                          "0.4 dB/100 m/sqrt(MHz)", "%", Kept),
    ("bare cable", "loss 0.4 dB/100 m/sqrt(MHz) + @",                 "0.1 dB/100 m/MHz", "%", KeptNoInterval),
    ("bare cable", "loss at @ { 100 MHz 4 dB/100 m }",                "20 °C", "°C", Refused),
    ("bare cable", "loss { @ 4 dB/100 m }",                           "100 MHz", "%", Refused),
    ("bare cable", "loss { 100 MHz @ }",                              "4 dB/100 m", "%", Kept),
    ("bare cable", "loss from \"a.s2p\" of @",                        "25 m", "%", Kept),
    ("bare cable", "loss from \"a.s2p\" of 25 m, accuracy @",         "0.1 dB", "%", OwnK),
    ("cable",      "accuracy @",                                      "5 %", "%", OwnK),
    ("cable",      "accuracy 5 % k 1 to @",                           "450 MHz", "%", Refused),
    ("cable",      "valid @",                                         "1 MHz", "%", Range),
    ("cable",      "rating @ at 145 MHz",                             "700 W", "%", Refused),
    ("cable",      "rating 700 W at @",                               "145 MHz", "%", Refused),
    ("cable",      "rating 700 W, ambient @",                         "40 °C", "°C", Refused),
    ("cable",      "rating 700 W, conductor @",                       "80 °C", "°C", Refused),
    ("cable",      "voltage @",                                       "1000 V", "%", Refused),
    ("cable",      "size @",                                          "10 mm", "%", Refused),
    ("coax",       "inner @",                                         "1 mm", "%", Kept),
    ("coax",       "outer @",                                         "4 mm", "%", Kept),
    ("coax",       "permittivity @",                                  "2.1", "%", Kept),
    ("coax",       "loss-tangent @",                                  "0.0002", "%", Kept),
    ("coax",       "strand @",                                        "1.25", "%", Kept),
    ("coax",       "braid @",                                         "1.9", "%", Kept),
    ("coax",       "strand-diameter @",                               "0.8", "%", Kept),
    ("coax",       "inner-resistivity @",                             "1.8e-8 ohm-m", "%", Kept),
    ("coax",       "outer-resistivity @",                             "2.8e-8 ohm-m", "%", Kept),
    ("coax",       "resistivity @",                                   "1.8e-8 ohm-m", "%", Kept),
    ("wires",      "diameter @",                                      "2 mm", "%", Kept),
    ("wires",      "spacing @",                                       "150 mm", "%", Kept),
    ("wires",      "permittivity @",                                  "1.1", "%", Kept),
    ("wires",      "resistivity @",                                   "1.8e-8 ohm-m", "%", Kept),
    // connectors
    ("connector",  "loss @ at 1 GHz",                                 "0.1 dB", "%", Kept),
    ("connector",  "loss @",                                          "0.1 dB", "dB", Kept),
    ("connector",  "loss 0.1 dB at @",                                "1 GHz", "%", Refused),
    ("connector",  "bump @ 49 mm",                                    "33 ohm", "%", Kept),
    ("connector",  "bump 33 ohm @",                                   "49 mm", "%", Kept),
    ("connector",  "limit @",                                         "300 MHz", "%", Refused),
    ("connector",  "rating @",                                        "700 W", "%", Refused),
    ("connector",  "voltage @",                                       "500 V", "%", Refused),
    // instruments: how good they are is their accuracy
    ("instrument", "accuracy @ of reading",                           "5 %", "%", OwnK),
    ("instrument", "accuracy @",                                      "0.2 dB", "dB", OwnK),
    ("instrument", "linearity @",                                     "1 %", "%", OwnK),
    ("instrument", "repeatability @",                                 "1 %", "%", OwnK),
    ("instrument", "scale @",                                         "100 W", "%", Refused),
    ("instrument", "resolution @",                                    "0.1 W", "%", Refused),
    ("instrument", "band @",                                          "1 MHz", "%", Range),
    ("instrument", "directivity @",                                   "40 dB", "%", Refused),
    // stations
    ("station",    "position @ S 123.2° W, wgs84",                    "49.3°", "%", Refused),
    ("station",    "ground @ amsl",                                   "612 m", "%", Refused),
    ("place",      "temperature @",                                   "15 °C", "°C", Kept),
    // transmitters, receivers
    ("station",    "transmitter TX1 @ carrier",                       "32 W", "%", Kept),
    ("station",    "transmitter TX1 @ carrier",                       "32 W", "W", Kept),
    ("station",    "transmitter TX1 @ carrier",                       "45 dBm", "dB", Kept),
    ("tx",         "power @ carrier",                                 "32 W", "%", Kept),
    ("tx",         "duty @",                                          "35 %", "%", Refused),
    ("tx",         "keyed @",                                         "50 %", "%", Refused),
    ("tx",         "foldback swr @",                                  "2", "%", Refused),
    ("station",    "receiver RX1 @ for 12 dB sinad",                  "-119 dBm", "dB", Kept),
    ("station",    "receiver RX1 @ for 12 dB sinad",                  "-119 dBm", "%", Kept),
    ("station",    "receiver RX1 @ for 12 dB sinad",                  "0.25 uV", "%", Kept),
    ("station",    "receiver RX1 -119 dBm, noise figure @",           "6 dB", "%", Kept),
    ("rx",         "sensitivity @",                                   "-119 dBm", "dB", Kept),
    ("rx",         "noise figure @",                                  "6 dB", "dB", Kept),
    // lines
    ("station",    "run M1 @ of x",                                   "46 m", "%", Kept),
    ("station",    "jumper J1 @ of x",                                "2.5 wavelengths", "%", Kept),
    ("station",    "jumper J1 2.5 wavelengths at @ of x",              "145 MHz", "%", Refused),
    ("station",    "tail T1 @ of x",                                  "90°", "%", Kept),
    ("station",    "run M1 46 m of x, at @",                          "15 °C", "°C", Kept),
    ("station",    "run M1 46 m of x, added @",                       "1.3 dB", "%", Kept),
    ("station",    "run M1 46 m of x, wet @",                         "0.5 dB", "%", Kept),
    ("station",    "jumper J1 @",                                     "0.4 dB", "%", Kept),
    ("station",    "jumper J1 @",                                     "8 %", "%", Kept),
    ("station",    "jumper J1 0.4 dB, return-loss @",                 "26 dB", "%", Kept),
    ("station",    "run M1 46 m of x, swr @ on b",                    "1.1", "%", Kept),
    ("line",       "swr @",                                           "1.1", "%", Kept),
    ("line",       "return-loss @",                                   "26 dB", "%", Kept),
    ("connector",  "swr @",                                           "1.1", "%", Kept),
    ("connector",  "return-loss @",                                   "26 dB", "%", Kept),
    ("station",    "run M1 from \"a.s2p\", accuracy @",               "0.1 dB", "dB", OwnK),
    ("line",       "loss @",                                          "0.4 dB", "%", Kept),
    // connectors in a chain
    ("chain",      "connector @ of n-pair",                           "4", "%", Refused),
    // devices
    ("station",    "pad P1 @",                                        "3 dB", "%", Kept),
    ("station",    "pad P1 @",                                        "8 %", "%", Kept),
    ("station",    "filter F1 0.5 dB, passes @",                      "144 MHz", "%", Range),
    ("station",    "filter F1 0.5 dB, at @",                          "15 °C", "°C", Kept),
    ("station",    "filter F1 0.5 dB, swr @",                         "1.3", "%", Kept),
    ("station",    "filter F1 0.5 dB, return-loss @",                 "20 dB", "%", Kept),
    ("station",    "filter F1 0.5 dB, rating @",                      "100 W", "%", Refused),
    ("station",    "filter F1 from \"a.s2p\", accuracy @",            "0.1 dB", "dB", OwnK),
    ("station",    "isolator IS1 0.5 dB, isolation @",                "40 dB", "%", Kept),
    ("station",    "coupler CP1 @ coupled",                           "10 dB", "%", Kept),
    ("station",    "coupler CP1 10 dB coupled, @",                    "0.5 dB", "%", Kept),
    ("station",    "divider DV1 @ way",                               "2", "%", Refused),
    ("station",    "divider DV1 2 way, excess @",                     "0.3 dB", "%", Kept),
    ("station",    "balun BA1 0.1 dB, ratio @",                       "4", "%", Kept),
    ("balun",      "ratio @",                                         "4", "%", Kept),
    ("station",    "divider DV1 2 way, split @ 30 %",                 "50 %", "%", Kept),
    ("station",    "divider DV1 2 way, split 3.01 dB @",              "3.1 dB", "dB", Kept),
    ("divider",    "split @ 10 %",                                    "50 %", "%", Kept),
    ("station",    "amplifier PA1 @ gain",                            "13 dB", "%", Kept),
    ("station",    "preamplifier PR1 20 dB gain, noise figure @",     "1 dB", "%", Kept),
    ("device",     "loss @",                                          "0.5 dB", "%", Kept),
    ("device",     "loss { @ 0.5 dB }",                               "145 MHz", "%", Refused),
    ("device",     "loss { 145 MHz @ }",                              "0.5 dB", "%", Kept),
    ("device",     "high @",                                          "1.5 dB", "%", Kept),
    ("device",     "low @",                                           "1.5 dB", "%", Kept),
    ("device",     "port a @",                                        "1.5 dB", "%", Kept),
    ("device",     "port a 1.5 dB, passes @",                         "144 MHz", "%", Range),
    ("duplexer",   "high 1.5 dB, rejects @ at 146 MHz",              "85 dB", "%", Kept),
    ("duplexer",   "high 1.5 dB, rejects 85 dB at @",                 "146 MHz", "%", Refused),
    ("duplexer",   "low rejects @",                                   "85 dB", "%", Kept),
    ("device",     "isolation @",                                     "85 dB", "%", Kept),
    ("device",     "return-loss @",                                   "20 dB", "%", Kept),
    ("device",     "swr @",                                           "1.3", "%", Kept),
    ("device",     "rating @",                                        "100 W", "%", Refused),
    ("device",     "voltage @",                                       "400 V", "%", Refused),
    ("device",     "passes @",                                        "144 MHz", "%", Range),
    ("device",     "gain @",                                          "13 dB", "%", Kept),
    ("device",     "noise figure @",                                  "1 dB", "%", Kept),
    ("device",     "excess @",                                        "0.3 dB", "%", Kept),
    ("device",     "ways @",                                          "2", "%", Refused),
    ("device",     "coupled @",                                       "10 dB", "%", Kept),
    ("device",     "from \"a.s2p\", accuracy @",                      "0.1 dB", "dB", OwnK),
    // antennas, loads
    ("station",    "antenna A1 @",                                    "4.5 dBi", "dB", Kept),
    ("station",    "antenna A1 @",                                    "4.5 dBd", "%", Kept),
    ("station",    "antenna A1 4.5 dBi, swr @",                       "1.3", "%", Kept),
    ("station",    "antenna A1 4.5 dBi, return-loss @",               "20 dB", "%", Kept),
    ("station",    "antenna A1 4.5 dBi, height @ agl",                "26 m", "%", Kept),
    ("station",    "antenna A1 4.5 dBi, rating @",                    "500 W", "%", Refused),
    ("station",    "load DL1, swr @",                                 "1.1", "%", Kept),
    ("antenna",    "gain @",                                          "4.5 dBi", "dB", Kept),
    ("antenna",    "directivity @",                                   "8 dBi", "dB", Kept),
    ("antenna",    "efficiency @",                                    "80 %", "%", Kept),
    ("antenna",    "swr @",                                           "1.3", "%", Kept),
    ("antenna",    "return-loss @",                                   "20 dB", "%", Kept),
    ("antenna",    "impedance @",                                     "80 ohm", "%", Kept),
    ("antenna",    "impedance 80 ohm with reactance @",               "-30 ohm", "%", Kept),
    ("antenna",    "height @ agl",                                    "26 m", "%", Kept),
    ("antenna",    "rating @",                                        "500 W", "%", Refused),
    // statements at a node
    ("chain",      "read @ forward",                                  "20 W", "%", Kept),
    ("chain",      "read swr @",                                      "1.3", "%", Kept),
    ("chain",      "expect @",                                        "20 W", "%", Bounds),
    ("chain",      "expect loss @",                                   "2 dB", "dB", Bounds),
    ("chain",      "expect swr @",                                    "1.3", "%", Bounds),
    ("chain",      "expect erp @",                                    "20 W", "%", Bounds),
    ("chain",      "limit @ erp, \"x\"",                              "20 W", "%", Refused),
    // the bench
    ("session",    "temperature @",                                   "12 °C", "°C", Kept),
    ("session",    "load return-loss @",                              "26 dB", "%", Kept),
    ("session",    "generator swr @",                                 "1.2", "%", Kept),
    ("session",    "piece B @ of x",                                  "22 m", "%", Kept),
    ("session",    "piece B 22 m of x, at @",                         "15 °C", "°C", Kept),
    ("session",    "piece B 22 m of x, added @",                      "1 dB", "%", Kept),
    ("session",    "piece B 22 m of x, connector @ of n-pair",        "2", "%", Refused),
    ("session",    "resonance A @",                                   "4.4 MHz", "%", Kept),
    ("session",    "delay A @",                                       "126 ns", "%", Kept),
    ("session",    "phase A @ over 10 MHz",                           "911°", "%", Kept),
    ("session",    "phase A 911° over @",                             "10 MHz", "%", Refused),
    ("session",    "readings on @ { baseline 44 W }",                 "145 MHz", "%", Refused),
    ("readings",   "baseline @",                                      "44 W", "%", Refused),
    ("readings",   "baseline 44 W at @",                              "2 min", "%", Refused),
    ("readings",   "baseline 44 W, adapter @ of n-to-uhf",            "2", "%", Refused),
    ("readings",   "through A @",                                     "29 W", "%", Refused),
    ("readings",   "through A @",                                     "2.8 dB", "%", Refused),
    ("readings",   "through A 29 W, @ reflected",                     "0.05 W", "%", Refused),
    ("readings",   "through A 29 W, input @",                         "44 W", "%", Refused),
    ("readings",   "open A @",                                        "4.1 dB", "%", Refused),
    ("readings",   "short A @",                                       "4.3 dB", "%", Refused),
    ("readings",   "equalise @, against 44 W",                        "44 W", "%", Refused),
    ("readings",   "equalise 44 W, against @",                        "44 W", "%", Refused),
];

fn wrap(place: &str, line: &str) -> String {
    match place {
        "" => line.to_owned(),
        "band" => format!("band b {{ {line} }}"),
        "cable" => format!("cable x {{ loss 0.4 dB/100 m/sqrt(MHz); {line} }}"),
        "bare cable" => format!("cable x {{ {line} }}"),
        "coax" => {
            format!(
                "cable x {{ construction {{ inner 1 mm; outer 4 mm; permittivity 2.1; {line} }} }}"
            )
        }
        "wires" => format!("cable x {{ wires {{ diameter 2 mm; spacing 150 mm; {line} }} }}"),
        "connector" => format!("connector x {{ family n; loss 0.1 dB; {line} }}"),
        "instrument" => format!("instrument x {{ {line} }}"),
        "device" => format!("device x {{ kind filter; {line} }}"),
        "duplexer" => format!("device x {{ kind duplexer; low 1 dB; {line} }}"),
        "divider" => format!("device x {{ kind divider; {line} }}"),
        "balun" => format!("device x {{ kind balun; loss 0.1 dB; {line} }}"),
        "station" => format!("station s {{ {line} }}"),
        "place" => format!("station s {{ place mast {{ {line} }} }}"),
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
];

#[test]
fn no_statement_is_left_out_of_the_table() {
    for k in KEYWORDS {
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
