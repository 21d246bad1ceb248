//! What trial users found on the sheets of exposure and of links: lines that vanished, advice that was wrong.

mod common;

use common::{MAIN, load, load_from};
use downlead_base::{Diagnostic, Severity};
use downlead_eval::Snapshot;
use downlead_eval::exposure::{Exposure, ExposureAssumed, ExposureVerdict, WhyNotJudged};
use downlead_eval::link::{LinkResult, LinkVerdict, Missing, WhyHop};
use downlead_testkit::Files;

const RULES: &str = "rules order \"the office's order\" {
    dated 2026-01-15
    reflection 1.6
    limit 2 W/m2 on 30 MHz to 300 MHz, public, averaging 30 min, \"7.1\", confidence high
}
";

/// One transmitter of 32 W, what lies before its antenna, and a spot 5 m from it.
fn hill(transmitter: &str, part: &str, spots: &str) -> String {
    format!(
        "{RULES}station hill {{
    under order
    alone, \"walked down by QY4TRA 2026-07-04\"
    {spots}
    transmitter TX1 {transmitter}
    {part}
    antenna A1 5.2 dBi ± 0.5 dB, swr 1.3, height 26 m agl, size 2.7 m
    chain out-2m on 146.9137 MHz {{
        TX1
        P1
        A1
    }}
}}
"
    )
}

const TX: &str = "32 W ± 5 % carrier, fm";
const GATE: &str = "spot gate 5 m from A1, public";

fn exposure(text: &str) -> Exposure {
    let s = load(text);
    let items = s.scopes()[0].items().iter();
    let mut found = items.filter_map(|(_, _, r)| r.exposure.as_deref());
    found.next().cloned().expect("an exposure")
}

fn find(text: &str, code: &str) -> Vec<Diagnostic> {
    let all = load(text).diagnostics().into_iter();
    all.filter(|d| d.code.id == code).collect()
}

#[track_caller]
fn one(text: &str, code: &str) -> Diagnostic {
    let mut found = find(text, code);
    assert_eq!(found.len(), 1, "{code}: {:#?}", load(text).diagnostics());
    found.remove(0)
}

#[test]
fn a_spot_that_cannot_be_read_is_on_the_sheet() {
    for bad in [
        "spot porch 5 out, 2 m agl, public",
        "spot porch 5 m out, 2 m agl",
        "spot porch 5 m out, public",
        "spot porch 5 m out, 2 m agl, public, occupational",
        "spot porch -5 m out, 2 m agl, public",
        "spot gate 9 m from A1, public",
    ] {
        let e = exposure(&hill(TX, "filter P1 0.5 dB", &format!("{GATE}\n    {bad}")));
        assert_eq!(e.spots.len(), 1, "{bad}");
        assert_eq!(e.not_judged.len(), 1, "{bad}: {:?}", e.not_judged);
        assert_eq!(e.not_judged[0].why, WhyNotJudged::LineHasError, "{bad}");
        let name = if bad.contains("gate") {
            "gate"
        } else {
            "porch"
        };
        assert_eq!(&*e.not_judged[0].name, name);
    }
    // one without a spot that can be read, and one without a name
    let e = exposure(&hill(
        TX,
        "filter P1 0.5 dB",
        "spot 5 m out, 2 m agl, public",
    ));
    assert_eq!((e.spots.len(), e.not_judged.len()), (0, 1));
}

#[test]
fn losses_that_are_guesses_or_maxima_are_pointed_out_at_a_spot() {
    for (part, word) in [
        ("filter P1 1 dB, guess", "a guess"),
        ("filter P1 1 dB, maximum", "a maximum"),
    ] {
        let text = hill(TX, part, GATE);
        let d = one(&text, "low-edge-used");
        assert_eq!(d.severity, Severity::Info, "{part}");
        assert!(
            d.message.contains(word) && d.message.contains("1.03 dB more"),
            "{}",
            d.message
        );
        let e = exposure(&text);
        assert_eq!(e.spots[0].verdict, ExposureVerdict::Met, "{part}");
        assert!(e.spots[0].assumed.contains(&ExposureAssumed::LossTaken));
        // the distance to keep counts the loss as nothing
        let without = exposure(&hill(TX, "filter P1 0 dB", GATE));
        let upper = |e: &Exposure| {
            e.keep_clear[0]
                .distance
                .as_ref()
                .expect("a distance")
                .upper_m
        };
        let (a, b) = (upper(&e), upper(&without));
        assert!((a / b - 1.0).abs() < 2e-2, "{part}: {a} and {b}");
    }
    // a typical loss with its ± says nothing of the kind
    let text = hill(TX, "filter P1 1 dB ± 0.2 dB", GATE);
    assert!(find(&text, "low-edge-used").is_empty());
    assert!(
        !exposure(&text).spots[0]
            .assumed
            .contains(&ExposureAssumed::LossTaken)
    );
}

#[test]
fn a_verdict_that_rests_on_a_guessed_loss_is_not_met() {
    // about 60 % of the limit with 3 dB lost, above all of it without
    let spot = "spot gate 3 m from A1, public";
    let e = |part: &str| exposure(&hill(TX, part, spot)).spots[0].verdict;
    assert_eq!(e("filter P1 3 dB ± 0.1 dB"), ExposureVerdict::Met);
    assert_eq!(e("filter P1 3 dB, guess"), ExposureVerdict::CannotTell);
    let d = one(&hill(TX, "filter P1 3 dB, guess", spot), "low-edge-used");
    assert_eq!(d.severity, Severity::Warning);
}

#[test]
fn a_keyed_share_with_its_window_stands_in_the_block_too() {
    let part = "filter P1 0.5 dB ± 0.1 dB";
    let line = hill("32 W ± 5 % carrier, fm, keyed 50 % in 6 min", part, GATE);
    let block = hill(
        "{ power 32 W ± 5 % carrier; mode fm; keyed 50 % in 6 min }",
        part,
        GATE,
    );
    assert_eq!(load(&line).diagnostics(), []);
    assert_eq!(load(&block).diagnostics(), []);
    assert_eq!(exposure(&line).spots[0].sum, exposure(&block).spots[0].sum);
    let all = exposure(&hill(TX, part, GATE)).spots[0].sum.expect("a sum");
    let half = exposure(&block).spots[0].sum.expect("a sum");
    assert!((half / all - 0.5).abs() < 1e-9);
}

#[test]
fn a_range_has_its_unit_on_both_ends() {
    let low = "limit 2 W/m2 on 400 to 2000 MHz, public, \"x\", confidence high";
    let high = "limit 2 W/m2 on 400 MHz to 2000, public, \"x\", confidence high";
    let power = "limit 30 W erp on 400 to 2000 MHz, \"x\", confidence high";
    for line in [low, high, power] {
        let text = format!("rules r {{\n    {line}\n}}\n");
        let d = one(&text, "missing-unit");
        assert_eq!(load(&text).diagnostics().len(), 1, "{line}");
        assert_eq!(d.message, "Both ends of a range have their unit.");
        assert_eq!(d.fixes[0].edits[0].text, "400 MHz to 2000 MHz", "{line}");
    }
    let d = one("band q 400 to 2000 MHz\n", "missing-unit");
    assert_eq!(d.fixes[0].edits[0].text, "400 MHz to 2000 MHz");
    let d = one(
        "station s { duplexer DU1 { high 1.5 dB, passes 146.2 to 146.4 MHz; low 1.5 dB } }\n",
        "missing-unit",
    );
    assert_eq!(d.fixes[0].edits[0].text, "146.2 MHz to 146.4 MHz");
}

#[test]
fn a_rejection_asks_for_a_frequency() {
    let text = "station s { duplexer DU1 { high 1.5 dB, rejects 80 dB at 439.275; low 1.5 dB } }\n";
    let d = one(text, "missing-unit");
    assert!(d.message.contains("frequency"), "{}", d.message);
    assert_eq!(d.fixes[0].edits[0].text.trim(), "MHz");
    assert!(d.fixes.iter().all(|f| !f.edits[0].text.contains('C')));
    // of a cable's loss a temperature may be meant too
    let warm = one(
        "chain c on 145 MHz { transmitter 5 W\n run 10 m of rg-213, at 20\n load }\n",
        "missing-unit",
    );
    assert!(warm.message.contains("temperature"), "{}", warm.message);
}

#[test]
fn a_root_in_a_limit_is_a_power() {
    for law in [
        "1.375 * sqrt(f) V/m",
        "sqrt(f) V/m",
        "1.375 V/m * sqrt(frequency / 1 MHz)",
        "3 V/m per sqrt(MHz)",
    ] {
        let text = format!(
            "rules r {{\n    limit {law} on 400 MHz to 2000 MHz, public, \"x\", confidence high\n}}\n"
        );
        let all = load(&text).diagnostics();
        assert_eq!(all.len(), 1, "{law}: {all:#?}");
        let help = all[0].help.join(" ");
        assert!(help.contains("(frequency / 1 MHz)^0.5"), "{law}: {all:#?}");
    }
    // and what is advised can be read
    let good = "rules r {\n    limit 1.375 V/m * (frequency / 1 MHz)^0.5 on 400 MHz to 2000 MHz, public, averaging 6 min, \"x\", confidence high\n}\n";
    assert_eq!(load(good).diagnostics(), []);
}

#[test]
fn a_word_in_a_clause_that_means_nothing_is_named() {
    let all =
        load("rules r {\n    limit 40 W erp foo \"cite\", confidence high\n}\n").diagnostics();
    assert_eq!(all.len(), 1, "{all:#?}");
    assert_eq!(all[0].code.id, "unexpected-word");
    assert!(all[0].message.contains("`foo`"), "{}", all[0].message);
}

const ENDS: &str = "station hill {
    POSITION_A
    chain talk on 145.3 MHz transmit {
        transmitter 25 W ± 10 % carrier, fm
        run 28 m of half-inch-foam, at 15 °C
        antenna 4.5 dBi ± 0.5 dB, swr 1.2, height 20 m agl
    }
}
station car {
    POSITION_B
    receiver RX1 -117 dBm ± 2 dB for 12 dB sinad, noise figure 8 dB
    chain hear on 145.3 MHz receive {
        antenna 2.15 dBi ± 1 dB, swr 1.2, height 1.5 m agl
        jumper 4 m of rg-213, at 20 °C
        RX1
    }
    chain other on 146.3 MHz receive {
        antenna 2.15 dBi ± 1 dB, swr 1.2, height 1.5 m agl
        RX1
    }
}
";

fn linked(positions: [&str; 2], lines: &str) -> Snapshot {
    let ends = ENDS
        .replace("POSITION_A", positions[0])
        .replace("POSITION_B", positions[1]);
    let profile = "distance_km,ground_m\n0,120\n3,60\n6,40\n8,35\n";
    let text = format!("{ends}link l {{\n    {lines}\n    need 12 dB sinad\n}}\n");
    load_from(&Files::default().with(MAIN, text).with("path.csv", profile))
}

fn link(s: &Snapshot) -> &LinkResult {
    let items = s.scopes().iter().flat_map(downlead_eval::Scope::items);
    items
        .filter_map(|i| i.2.link.as_deref())
        .next()
        .expect("a link")
}

#[test]
fn a_hop_that_cannot_be_computed_is_on_the_sheet() {
    for (hop, why) in [
        ("hop talk of hill to hear car", WhyHop::LineHasError),
        ("hop", WhyHop::LineHasError),
        ("hop talk of hill to hear of cart", WhyHop::UnknownEnd),
        ("hop talk of hill to her of car", WhyHop::UnknownEnd),
        ("hop hear of car to talk of hill", WhyHop::Direction),
        ("hop talk of hill to other of car", WhyHop::Frequency),
    ] {
        let s = linked(
            ["", ""],
            &format!("hop talk of hill to hear of car\n    {hop}\n    distance 8 km"),
        );
        let l = link(&s);
        assert_eq!(l.hops.len(), 1, "{hop}");
        assert_eq!(l.not_judged.len(), 1, "{hop}: {:?}", l.not_judged);
        assert_eq!(l.not_judged[0].why, why, "{hop}");
        assert!(
            hop.ends_with(&*l.not_judged[0].hop),
            "{hop}: {:?}",
            l.not_judged
        );
    }
}

/// 0.01° of latitude near 45° are 1.1113 km on the ellipsoid (`physics::position`).
#[test]
fn lengths_of_a_path_that_contradict_each_other_judge_nothing() {
    let at = |lat: &str| format!("position {lat}° N 9.0000° E, wgs84");
    // 0.072° are 8.00 km
    let (a, near, far) = (at("45.0000"), at("45.0720"), at("45.0990"));
    let hop = "hop talk of hill to hear of car";
    let profile = format!("{hop}\n    profile from \"path.csv\"");
    for (b, lines, differ) in [
        (&near, profile.clone(), false),
        (&far, profile.clone(), true),
        (&near, format!("{hop}\n    distance 8.1 km"), false),
        (&near, format!("{hop}\n    distance 8.5 km"), true),
        (&near, format!("{hop}\n    distance 8.5 km ± 0.4 km"), false),
        (&near, format!("{profile}\n    distance 9 km"), true),
    ] {
        let s = linked([&a, b], &lines);
        let found: Vec<Diagnostic> = s
            .diagnostics()
            .into_iter()
            .filter(|d| d.code.id == "profile-differs")
            .collect();
        assert_eq!(found.len(), usize::from(differ), "{lines}: {found:#?}");
        let h = &link(&s).hops[0];
        assert_eq!(h.missing.contains(&Missing::Lengths), differ, "{lines}");
        if differ {
            assert_eq!(h.verdict, LinkVerdict::CannotJudge, "{lines}");
            assert!(found[0].message.contains("km long"), "{}", found[0].message);
        }
    }
}

/// A hill with a pattern, and where its verdicts come from.
fn patterned(pattern: &str, spots: &str) -> String {
    format!(
        "{RULES}band 2m 146.9137 MHz\nband 70cm 438.9137 MHz\nstation hill {{\n    under order\n    alone, \"QY4TRA 2026-07-04\"\n    {spots}\n    transmitter TX1 32 W ± 5 % carrier, fm\n    antenna A1 {{\n        gain 5.2 dBi ± 0.5 dB\n        {pattern}\n        height 26 m agl\n        size 2.7 m\n    }}\n    chain out on 2m transmit {{\n        TX1\n        A1\n    }}\n}}\n"
    )
}

const PATTERN: &str = "pattern elevation { 0° 0 dB; -30° 9 dB; -60° 14 dB; -90° 26 dB }";

/// By hand: from 5 m out and 2 m up the ends of the antenna are at -76.8° and -78.2°, between the rows of 14 dB and
/// 26 dB: 14 dB count. From 30 m out the angles are -35.4° and -38.7°: 9 dB.
#[test]
fn a_pattern_counts_with_the_row_that_has_more_gain() {
    for (spot, down) in [
        ("spot gate 5 m out, 2 m agl, public", 14.0),
        ("spot gate 30 m out, 2 m agl, public", 9.0),
        // straight below: capped at 20 dB
        ("spot gate 0 m out, 2 m agl, public", 20.0),
        // above the horizon the pattern says nothing
        ("spot gate 30 m out, 28 m agl, public", 0.0),
        // within the height of the antenna 0° is among the angles
        ("spot gate 30 m out, 25 m agl, public", 0.0),
        // nearer than 2 D²/λ (7.1 m) no pattern has formed
        ("spot gate 5 m out, 20 m agl, public", 0.0),
        // a straight distance has no angle
        ("spot gate 22 m from A1, public", 0.0),
    ] {
        let e = exposure(&patterned(PATTERN, spot));
        let plain = exposure(&patterned("", spot));
        let of = |e: &Exposure| e.spots[0].sources[0].clone();
        assert_eq!(of(&e).down_db, down, "{spot}");
        let ratio = of(&e).fraction.expect("a share") / of(&plain).fraction.expect("a share");
        assert!(
            (-10.0 * ratio.log10() - down).abs() < 1e-9,
            "{spot}: {ratio}"
        );
        let assumed = match down > 0.0 {
            true => ExposureAssumed::Pattern,
            false => ExposureAssumed::MainBeam,
        };
        assert!(e.spots[0].assumed.contains(&assumed), "{spot}");
        // the distance to keep is that of the main beam
        let keep = |e: &Exposure| e.keep_clear[0].distance.clone();
        assert_eq!(keep(&e), keep(&plain), "{spot}");
    }
}

#[test]
fn what_is_wrong_with_a_pattern_is_said_and_nothing_is_credited() {
    for (pattern, code) in [
        (
            "pattern elevation { -30° 9 dB; -60° 14 dB }",
            "missing-value",
        ),
        ("pattern elevation { 0° 0 dB }", "missing-value"),
        (
            "pattern elevation { 0° 0 dB; -95° 9 dB }",
            "impossible-value",
        ),
        (
            "pattern elevation { 0° 0 dB; -30° -9 dB }",
            "impossible-value",
        ),
        (
            "pattern elevation { 0° 0 dB; -30° 9 dB; -30° 8 dB }",
            "said-twice",
        ),
        ("pattern elevation { 0° 0 dB; -30° }", "missing-value"),
        ("pattern { 0° 0 dB; -30° 9 dB }", "missing-value"),
        ("pattern elevation", "missing-value"),
        ("pattern elevation { 0° 0 dB; -30 9 dB }", "missing-unit"),
        (
            "pattern elevation { 0° 0 dB; -90° 9 dB }\n        pattern elevation { 0° 0 dB; -90° 8 dB }",
            "said-twice",
        ),
    ] {
        let text = patterned(pattern, "spot gate 30 m out, 2 m agl, public");
        let mut all = load(&text).diagnostics();
        // with a line that has an error no sum is whole
        all.retain(|d| d.code.id != "exposure-cannot-judge");
        assert!(all.iter().any(|d| d.code.id == code), "{pattern}: {all:#?}");
        assert_eq!(all.len(), 1, "{pattern}: {all:#?}");
        assert_eq!(
            exposure(&text).spots[0].sources[0].down_db,
            0.0,
            "{pattern}"
        );
    }
    // of an antenna with a gain by band it says which
    let text = patterned(PATTERN, "spot gate 30 m out, 2 m agl, public").replace(
        "gain 5.2 dBi ± 0.5 dB",
        "gain 5.2 dBi ± 0.5 dB on 2m\n        gain 7.6 dBi ± 0.5 dB on 70cm",
    );
    let d = one(&text, "missing-value");
    assert!(d.message.contains("which band"), "{}", d.message);
    assert_eq!(exposure(&text).spots[0].sources[0].down_db, 0.0);
    let on = text.replace("elevation {", "elevation on 2m {");
    assert_eq!(load(&on).diagnostics(), []);
    assert_eq!(exposure(&on).spots[0].sources[0].down_db, 9.0);
    let other = text.replace("elevation {", "elevation on 70cm {");
    assert_eq!(exposure(&other).spots[0].sources[0].down_db, 0.0);
}

/// By hand: 118.5 m down over 8 km are -0.849°, and the earth falls off by 0.027° (k = 4/3): -0.876° lies between the
/// rows of 0 dB and 6 dB at 0° and -2°: 2.63 dB, ± 3 dB at most.
#[test]
fn a_pattern_counts_in_a_hop_toward_the_other_end() {
    let plain = linked(
        ["ground 120 m amsl", "ground 20 m amsl"],
        "hop talk of hill to hear of car\n    distance 8 km",
    );
    let text = plain.files()[0].text().replace(
        "antenna 4.5 dBi ± 0.5 dB, swr 1.2, height 20 m agl",
        "antenna 4.5 dBi ± 0.5 dB, swr 1.2, height 20 m agl { pattern elevation { 2° 6 dB; 0° 0 dB; -2° 6 dB } }",
    );
    let s = load(&text);
    let (a, b) = (&link(&plain).hops[0], &link(&s).hops[0]);
    let taken = b.patterns.0.expect("a pattern");
    assert!((taken.angle_deg + 0.876).abs() < 2e-3, "{taken:?}");
    assert!((taken.down_db - 2.63).abs() < 0.01, "{taken:?}");
    assert!((taken.u_db - 3.0 / 3f64.sqrt()).abs() < 1e-9, "{taken:?}");
    assert_eq!(b.patterns.1, None);
    let level = |h: &downlead_eval::link::HopResult| h.level_dbm.expect("a level");
    assert!((level(a) - level(b) - taken.down_db).abs() < 1e-9);
    let u = |h: &downlead_eval::link::HopResult| h.judged.as_ref().expect("judged").u_db;
    let more = (u(b).powi(2) - u(a).powi(2)).sqrt();
    assert!((more - 2.0 * taken.u_db).abs() < 1e-9, "{more}");
    use downlead_eval::link::LinkAssumed;
    assert!(link(&s).assumed.contains(&LinkAssumed::PatternOrMainBeam));
    assert!(link(&plain).assumed.contains(&LinkAssumed::MainBeam));
}

#[test]
fn distances_that_cannot_both_be_judge_nothing() {
    let text = |spot: &str| {
        hill(TX, "filter P1 0.5 dB ± 0.1 dB", spot)
            .replace("    chain out-2m", "    transmitter TX2 5 W ± 5 % carrier, fm\n    antenna A2 2.15 dBi ± 0.5 dB, height 15 m agl, size 1.4 m\n    chain second on 147.5 MHz {\n        TX2\n        A2\n    }\n    chain out-2m")
    };
    // A1 reaches down to 23.3 m, A2 up to 15 m: 8.3 m apart
    let bad = text("spot gate 5 m from A1, 3.2 m from A2, public");
    let d = one(&bad, "spot-impossible");
    assert!(
        d.message
            .contains("5 m from A1 and 3.2 m from A2, but these are 8.3 m apart"),
        "{}",
        d.message
    );
    let e = exposure(&bad);
    assert_eq!(
        (e.spots[0].sum, e.spots[0].verdict),
        (None, ExposureVerdict::CannotJudge)
    );
    let good = text("spot gate 5 m from A1, 3.3 m from A2, public");
    assert!(find(&good, "spot-impossible").is_empty());
    assert!(exposure(&good).spots[0].sum.is_some());
}

#[test]
fn a_limit_of_a_field_says_nothing_of_a_power() {
    let line = |l: &str| {
        format!("rules r {{\n    dated 2026-01-15\n    limit {l}, \"7\", confidence high\n}}\n")
    };
    for (limit, code) in [
        (
            "2 W/m2 pep on 30 MHz to 300 MHz, public, averaging 30 min",
            "pep-against-mean",
        ),
        (
            "2 W/m2 carrier on 30 MHz to 300 MHz, public, averaging 30 min",
            "pep-against-mean",
        ),
        (
            "2 W/m2 erp on 30 MHz to 300 MHz, public, averaging 30 min",
            "unexpected-word",
        ),
        (
            "2 W/m2 total on 30 MHz to 300 MHz, public",
            "unexpected-word",
        ),
    ] {
        let all = load(&line(limit)).diagnostics();
        assert_eq!(all.len(), 1, "{limit}: {all:#?}");
        assert_eq!(all[0].code.id, code, "{limit}");
    }
    for limit in [
        "2 W/m2 mean on 30 MHz to 300 MHz, public, averaging 30 min",
        "2 W/m2 pep on 30 MHz to 300 MHz, public",
    ] {
        assert_eq!(load(&line(limit)).diagnostics(), [], "{limit}");
    }
}

/// The margin of question E4D12 of the published US question pool (2024 to 2028): 40 dBm, 10 dBi, 3 dB of line, 136 dB
/// of path; -103 dBm and 6 dB of signal over noise are needed: +8 dB.
#[test]
fn a_margin_of_the_question_pool() {
    let ends = "station hill {\n    transmitter TX1 10 W carrier, fm\n    filter P1 3 dB\n    antenna A1 10 dBi\n    chain talk on 145 MHz transmit {\n        TX1\n        P1\n        A1\n    }\n}\nstation far {\n    receiver RX1 -97 dBm for 6 dB snr\n    chain hear on 145 MHz receive {\n        antenna 0 dBi\n        RX1\n    }\n}\n";
    // 136 dB of free space at 145 MHz: 10^((136 - 32.4477832 - 20 log10 145)/20) km
    let km = 10f64.powf((136.0 - 32.447_783_2 - 20.0 * 145f64.log10()) / 20.0);
    let s = load(&format!(
        "{ends}link l {{\n    hop talk of hill to hear of far\n    distance {km:.6} km\n    need 6 dB snr\n}}\n"
    ));
    let j = link(&s).hops[0].judged.as_ref().expect("judged");
    assert!((j.margin_db - 8.0).abs() < 1e-3, "{j:?}");
}

/// A second transmitter whose line or chain has an error cannot be left out of a sum that looks whole.
#[test]
fn a_line_with_an_error_leaves_the_sum_open() {
    let second = |line: &str, chain: &str| {
        let text = hill(TX, "pad P1 1 dB", GATE);
        let end = text.rfind('}').expect("the end of the station");
        format!(
            "{}    {line}\n    antenna A2 8 dBi ± 0.5 dB, swr 1.3, height 20 m agl, size 1 m\n    {chain}\n}}\n",
            &text[..end]
        )
        .replace(GATE, "spot gate 15 m out, 2 m agl, public")
    };
    let whole = "chain out-4m on 70.2 MHz { TX2; A2 }";
    let known = exposure(&second("transmitter TX2 40 W carrier, fm", whole));
    assert!(known.spots[0].sum.is_some());
    for (line, chain) in [
        ("transmiter TX2 40 W carrier, fm", whole),
        (
            "transmitter TX2 40 W carrier, fm",
            "chian out-4m on 70.2 MHz { TX2; A2 }",
        ),
        (
            "transmitter TX2 40 W carrier, fm",
            "chain out-4m on 70.2 MHz { tx2; A2 }",
        ),
        (
            "transmitter TX2 40 W carrier, fm",
            "chain out-4m on 70.2 MHz { TX2 A2 }",
        ),
        (
            "transmitter TX2 40 W carrier, fm",
            "chain out-4m on 70.2 MHz { TX2 }",
        ),
        (
            "transmitter TX2 40 W carrier, fm",
            "chain out-4m on 70.2 MHz { A2; TX2 }",
        ),
        (
            "transmitter TX2 40 W carrier, fm",
            "chain out-2m on 70.2 MHz { TX2; A2 }",
        ),
    ] {
        let e = exposure(&second(line, chain));
        assert_eq!(e.spots[0].sum, None, "{line} {chain}");
        assert_eq!(
            e.spots[0].verdict,
            ExposureVerdict::CannotJudge,
            "{line} {chain}"
        );
    }
    // a line that says nothing of what is sent changes no sum
    let aside = second("transmitter TX2 40 W carrier, fm", whole)
        .replace("    alone,", "    position 50.1 north\n    alone,");
    assert!(!load(&aside).diagnostics().is_empty());
    assert_eq!(exposure(&aside).spots[0].sum, known.spots[0].sum);
}

/// A loss that is added as a guess is one: neither an exposure nor a limit rests on it in silence.
#[test]
fn a_guess_added_to_a_line_is_pointed_out() {
    let text = |guess: &str| {
        hill(
            TX,
            &format!("run P1 46 m of half-inch-foam, at 20 °C, added 3 dB{guess}"),
            GATE,
        )
        .replace(
            "        A1\n",
            "        A1\n        limit 50 W erp, \"1\"\n",
        )
    };
    for code in ["low-edge-used", "guess-in-limit"] {
        assert!(find(&text(""), code).is_empty(), "{code}");
        assert_eq!(find(&text(", guess"), code).len(), 1, "{code}");
    }
}

/// What cannot be computed can only add to a share that is over the limits by itself.
#[test]
fn a_share_over_the_limits_counts_beside_one_that_is_refused() {
    let text = "rules exo \"an order\" {
    dated 2026-01-15
    reflection 1.6
    limit 28 V/m on 10 MHz to 400 MHz, public, averaging 6 min, \"7.1\", confidence high
    limit 2 W/m2 * (frequency / 400 MHz) on 400 MHz to 2000 MHz, public, averaging 6 min, \"7.2\", confidence high
}
station e {
    under exo
    alone, \"me 2026-01-01\"
    spot garden 3 m out, 1.8 m agl, public
    transmitter T1 10 W ± 10 % carrier, fm
    transmitter T2 2000 W ± 10 % carrier, fm
    antenna A1 2.15 dBi ± 0.5 dB, swr 1, height 8.5 m agl, size 5 m
    antenna A2 8 dBi ± 0.5 dB, swr 1, height 11 m agl, size 1 m
    chain a on 28.5 MHz { T1; A1 }
    chain b on 432.2 MHz { T2; A2 }
}
";
    let e = exposure(text);
    assert_eq!(e.spots[0].verdict, ExposureVerdict::NotMet);
    // the far field of 2000 W, 8 dBi: E = √(30 P G)/d with the field of reflection 1.6
    let (d, eirp) = (
        libm::hypot(3.0, 11.0 - 1.0 - 1.8),
        2000.0 * libm::pow(10.0, 0.8),
    );
    let density = 1.6 * 1.6 * eirp / (4.0 * core::f64::consts::PI * d * d);
    let share = density / (2.0 * 432.2 / 400.0);
    let sum = e.spots[0].sum.expect("at least that");
    assert!((sum / share - 1.0).abs() < 0.01, "{sum} {share}");
    let over = one(text, "exposure-exceeded");
    assert_eq!(over.severity, Severity::Error);
    assert_eq!(find(text, "exposure-cannot-judge").len(), 1);
}
