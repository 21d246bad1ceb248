//! Slips of typing in a text that is right: each must get a finding on its line, and a fix that is
//! offered must work. Every offered fix is applied and the text is checked again: the finding is gone
//! and no error is there that was not there before.

use downlead_base::{Severity, Span};
use downlead_eval::Snapshot;
use downlead_ide::{ActionKind, Config, Doc, code_actions, file_diagnostics};
use downlead_testkit::Files;

use crate::case::applied;

/// Findings about the station, not the text: another power or another leg has other consequences.
const OF_THE_STATION: [&str; 3] = ["rating-exceeded", "legs-swapped", "shared-port"];

/// A text without a finding of severity warning or error.
const RIGHT: &str = r#"use "cables.downlead"

band 2m {
    transmit 146.9137 MHz
    receive 146.3137 MHz
}
band 70cm 438.9 MHz

instrument W1 "directional wattmeter" {
    accuracy 5 % of reading
    scale 100 W
}

station hill "the hill" {
    place mast { temperature 10 °C }
    position 49.3333° N 12.1667° E, wgs84
    ground 430 m amsl
    joins n-pair
    transmitter TX1 32 W ± 5 % carrier, fm, keyed 100 %
    receiver RX1 -119 dBm for 12 dB sinad, noise figure 6 dB
    duplexer DU1 {
        high 1.45 dB ± 0.15 dB, passes 146.8 MHz to 147.0 MHz
        low 1.50 dB ± 0.15 dB, passes 146.2 MHz to 146.4 MHz
        low rejects 85 dB at 146.9137 MHz
    }
    run M1 46 m of club-foam, mast
    antenna A1 5.20 dBi ± 0.5 dB, swr 1.5

    chain out on 2m transmit {
        TX1
        DU1.high
        read 21.9 W forward, 2026-07-04 with W1 by QY2TEC
        M1
        A1
        limit 60 W erp, "TSO 14-0093 clause 4"
    }

    chain in on 2m receive {
        A1
        M1
        DU1.low
        RX1
    }
}

chain what-if on 145.3 MHz {
    transmitter 50 W
    run 28 m of half-inch-foam
    jumper 1.5 m of rg-400
    antenna 4.5 dBi
}
// file: cables.downlead
cable club-foam "seven-eighths foam" {
    impedance 50 ohm
    velocity 0.88
    loss 0.1216 dB/100 m/sqrt(MHz) + 0.001231 dB/100 m/MHz, typical
    accuracy 4 % k 2
    source "club sheet 1, invented"
}
"#;

/// What was typed in place of what.
struct Slip {
    from: &'static str,
    to: &'static str,
}

const fn slip(from: &'static str, to: &'static str) -> Slip {
    Slip { from, to }
}

const SLIPS: &[Slip] = &[
    // the statement that leads, or its order
    slip(
        "    run 28 m of half-inch-foam",
        "    run 28 meter of half-inch-foam",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    coax 28 m of half-inch-foam",
    ),
    slip("    run 28 m of half-inch-foam", "    coax 28 m"),
    slip(
        "    run 28 m of half-inch-foam",
        "    feedline 28 m of half-inch-foam",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    run 28' of half-inch-foam",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    run 28 of half-inch-foam",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    run 28 m half-inch-foam",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    run 28 m of half-inch-fom",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    rnu 28 m of half-inch-foam",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    run 28,0 m of half-inch-foam",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    run half-inch-foam 28 m",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "run 28 m of half-inch-foam",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    run 28 m of half-inch-foam\n    attenuator 3 dB",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    run 28 m +- 0.5 m of half-inch-foam",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    run 28 Meter of half-inch-foam",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    run 28 M of half-inch-foam",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    run 28 feet of half-inch-foam",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    run 28 m of Half-Inch-Foam",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    run 28 m of half-inch-foam at 20 C",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    run 28 m of half-inch-foam, at 20 C",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    run 28m of half-inch foam",
    ),
    slip(
        "    run 28 m of half-inch-foam",
        "    run 28 m off half-inch-foam",
    ),
    slip("jumper 1.5 m of rg-400", "jumper 1.5 m of rg400"),
    slip("jumper 1.5 m of rg-400", "jumper 1.5 m of RG-400"),
    // powers
    slip("transmitter 50 W", "transmitter 1 000 W"),
    slip("transmitter 50 W", "transmitter 1,000 W"),
    slip("transmitter 50 W", "transmitter 50 Watt"),
    slip("transmitter 50 W", "transmitter 50 watts"),
    slip("transmitter 50 W", "transmitter 50"),
    slip("transmitter 50 W", "transmitter 50 w"),
    slip("transmitter 50 W", "transmitter = 50 W"),
    slip("transmitter 50 W", "transmitter: 50 W"),
    slip("transmitter 50 W", "tx 50 W"),
    slip("transmitter 50 W", "transmiter 50 W"),
    slip("32 W ± 5 % carrier", "32 W ± 5% k2 carrier"),
    slip("32 W ± 5 % carrier", "32 W ± 5 % k2 carrier"),
    slip("32 W ± 5 % carrier", "32 W +- 5 % carrier"),
    slip("32 W ± 5 % carrier", "32 W ± 5 % carier"),
    // antennas
    slip("    antenna 4.5 dBi", "    antenna dBi 4.5"),
    slip("    antenna 4.5 dBi", "    antenna 4.5"),
    slip("    antenna 4.5 dBi", "    antenna 4.5 dB"),
    slip("    antenna 4.5 dBi", "    antenna 4.5 DBI"),
    slip("    antenna 4.5 dBi", "    antenna gain 4.5 dBi"),
    slip("    antenna 4.5 dBi", "    antena 4.5 dBi"),
    slip("swr 1.5", "swr 1:1.5"),
    slip("swr 1.5", "vswr 1.5"),
    slip("swr 1.5", "swr 0.5"),
    // limits
    slip("limit 60 W erp,", "limit 60 W ERP,"),
    slip("limit 60 W erp,", "limit 60 W,"),
    slip("limit 60 W erp,", "limit 60 W erp"),
    slip(
        "limit 60 W erp, \"TSO 14-0093 clause 4\"",
        "limit 60 W erp, TSO 14",
    ),
    // frequencies and bands
    slip("on 145.3 MHz", "on 145.3 Mhz"),
    slip("on 145.3 MHz", "on 145,3 MHz"),
    slip("on 145.3 MHz", "on 145.3"),
    slip("on 145.3 MHz", "on 2 m"),
    slip("on 145.3 MHz", "on 3m"),
    slip("on 145.3 MHz", "145.3 MHz"),
    slip("band 70cm 438.9 MHz", "band 70cm 438.9"),
    slip("band 70cm 438.9 MHz", "band 70cm 438.9 mhz"),
    slip("transmit 146.9137 MHz", "tx 146.9137 MHz"),
    // readings
    slip("2026-07-04", "04.07.2026"),
    slip("2026-07-04", "4/7/2026"),
    slip("2026-07-04", "2026-7-4"),
    slip("forward", "foward"),
    slip("forward", "fwd"),
    slip("with W1", "with W2"),
    slip("with W1", "W1"),
    // duplexer
    slip("        high 1.45 dB", "        tx 1.45 dB"),
    slip("        low 1.50 dB", "        rx 1.50 dB"),
    slip("DU1.high", "DU1.tx"),
    slip("DU1.high", "DU1"),
    slip("DU1.high", "DU.high"),
    slip("noise figure 6 dB", "noise figure -6 dB"),
    slip("noise figure 6 dB", "noise 6 dB"),
    slip("-119 dBm for", "119 dBm for"),
    // files and names
    slip("use \"cables.downlead\"", "use \"\""),
    slip("use \"cables.downlead\"", "use \"cabels.downlead\""),
    slip("use \"cables.downlead\"", "use \".\\cables.downlead\""),
    slip("use \"cables.downlead\"", "use cables.downlead"),
    slip("use \"cables.downlead\"", "include \"cables.downlead\""),
    slip(
        "place mast { temperature 10 °C }",
        "place mast { temperature 10 C }",
    ),
    slip(
        "place mast { temperature 10 °C }",
        "place mast { temperature 10 ° }",
    ),
    slip("of club-foam, mast", "of club-foam, mats"),
    slip(
        "position 49.3333° N 12.1667° E, wgs84",
        "position 49.3333 N 12.1667 E, wgs84",
    ),
    slip("ground 430 m amsl", "ground 430"),
    slip("ground 430 m amsl", "ground 430 m"),
    slip(
        "        M1\n        A1\n        limit",
        "        A1\n        M1\n        limit",
    ),
    slip(
        "        M1\n        A1\n        limit",
        "        M1\n        A2\n        limit",
    ),
    slip(
        "        M1\n        A1\n        limit",
        "        M1\n        limit",
    ),
    slip("        TX1\n        DU1.high", "        DU1.high"),
    slip("    antenna A1 5.20 dBi ± 0.5 dB, swr 1.5\n", ""),
];

/// Slips that get a finding on their line, and those of them with a fix that works: the level
/// reached. The others have no one answer (`swr 0.5`), or stand where the line is that is missing.
const ON_THE_LINE: usize = 88;
const FIXED: usize = 79;

fn load(text: &str) -> Snapshot {
    Snapshot::load(&["main.downlead".to_owned()], &Files::new(text))
}

struct Seen {
    line: usize,
    span: Span,
    code: &'static str,
    severity: Severity,
    message: String,
}

/// Findings of the main file that are warnings or errors.
fn findings(s: &Snapshot) -> Vec<Seen> {
    let text = s.files()[0].text();
    let config = Config::default();
    let all = file_diagnostics(s, 0, &config).into_iter();
    all.filter(|f| f.severity >= Severity::Warning)
        .map(|f| Seen {
            line: text[..f.span.start as usize].matches('\n').count(),
            span: f.span,
            code: f.code,
            severity: f.severity,
            message: f.message,
        })
        .collect()
}

/// What came of one slip.
#[derive(Default)]
struct Outcome {
    /// A finding stands on the line of the slip.
    on_line: bool,
    /// A fix took a finding away and brought no error.
    works: bool,
    /// A fix makes the text as it was before the slip.
    restores: bool,
    /// Fixes that leave the finding, or bring a new error.
    bad: Vec<String>,
    /// For people.
    told: String,
}

fn try_slip(slip: &Slip) -> Outcome {
    assert!(
        RIGHT.contains(slip.from),
        "`{}` is not in the text",
        slip.from
    );
    let at = RIGHT.find(slip.from).unwrap();
    let text = RIGHT.replacen(slip.from, slip.to, 1);
    let same = slip
        .from
        .bytes()
        .zip(slip.to.bytes())
        .take_while(|(a, b)| a == b)
        .count();
    let first = RIGHT[..at + same].matches('\n').count();
    let last = first + slip.to[same.min(slip.to.len())..].matches('\n').count();
    let s = load(&text);
    let found = findings(&s);
    let mut out = Outcome {
        on_line: found.iter().any(|f| (first..=last).contains(&f.line)),
        told: format!("--- `{}` for `{}`\n", slip.to.trim(), slip.from.trim()),
        ..Outcome::default()
    };
    let config = Config::default();
    for f in &found {
        out.told += &format!(
            "    line {} {} {}\n",
            f.line + 1,
            f.code,
            f.message.replace('\n', "\n        ")
        );
        for a in code_actions(&s, Doc::File(0), f.span, &config) {
            let mine = a.kind == ActionKind::QuickFix
                && a.finding == Some(f.span)
                && a.codes.contains(&f.code)
                && a.disabled.is_none();
            if !mine {
                continue;
            }
            let mut files = Files::default();
            for (i, file) in s.files().iter().enumerate() {
                let edits: Vec<_> = a
                    .edits
                    .iter()
                    .filter(|e| e.doc == Doc::File(i))
                    .cloned()
                    .collect();
                files.put(&file.path, applied(file.text(), &edits));
            }
            if files.text("cables.downlead").is_none() {
                files.put(
                    "cables.downlead",
                    Files::new(RIGHT).text("cables.downlead").unwrap(),
                );
            }
            let after = Snapshot::load(&["main.downlead".to_owned()], &files);
            let now = findings(&after);
            let same = |x: &Seen, y: &Seen| (x.code, &x.message) == (y.code, &y.message);
            let gone = now.iter().filter(|x| same(x, f)).count()
                < found.iter().filter(|x| same(x, f)).count();
            let worse: Vec<&Seen> = now
                .iter()
                .filter(|x| {
                    x.severity == Severity::Error
                        && !OF_THE_STATION.contains(&x.code)
                        && !found.iter().any(|y| same(x, y))
                })
                .collect();
            let whole = Files::new(RIGHT)
                .text("main.downlead")
                .is_some_and(|t| **t == *after.files()[0].text());
            let mark = if worse.is_empty() && gone {
                if whole { "restores" } else { "works" }
            } else {
                "BAD"
            };
            out.told += &format!("      fix {mark}: {}\n", a.title);
            if gone && worse.is_empty() {
                out.works = true;
                out.restores |= whole;
            } else {
                let why: Vec<&str> = worse.iter().map(|x| x.message.as_str()).collect();
                out.told += &format!("          then: {}\n", why.join(" / "));
                out.bad.push(format!(
                    "`{}` for `{}`: {} ({})",
                    slip.to,
                    slip.from,
                    a.title,
                    why.join(" / ")
                ));
            }
        }
    }
    out
}

#[test]
fn the_text_without_a_slip_has_no_finding() {
    let all = findings(&load(RIGHT));
    assert!(
        all.is_empty(),
        "{:?}",
        all.iter().map(|f| (f.line, &f.message)).collect::<Vec<_>>()
    );
}

#[test]
fn slips_are_found_on_their_line_and_fixes_work() {
    let (mut lines, mut works, mut bad, mut open) = (0, 0, Vec::new(), String::new());
    for x in SLIPS {
        let o = try_slip(x);
        lines += usize::from(o.on_line);
        works += usize::from(o.on_line && o.works);
        bad.extend(o.bad);
        if !(o.on_line && o.works) {
            open += &o.told;
        }
    }
    assert!(bad.is_empty(), "{}", bad.join("\n"));
    assert!(
        lines >= ON_THE_LINE,
        "{lines} of {} have a finding on their line\n{open}",
        SLIPS.len()
    );
    assert!(
        works >= FIXED,
        "{works} of {} have a fix that works\n{open}",
        SLIPS.len()
    );
}
