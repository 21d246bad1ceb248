//! Laws of the evaluator over random stations (testkit's generator; seeds are fixed, so every run
//! tries the same ones).

mod common;

use common::{bands, load, report, without_lines};
use downlead_report::Reports as _;
use downlead_report::shape::chain::BandReport;
use downlead_report::shape::word::PowerMode;
use downlead_testkit::{AntennaPlan, ChainPlan, Length, PartPlan, Plan, Rng, plan};
use proptest::prelude::*;
use proptest::test_runner::{Config, RngSeed};

fn config(cases: u32) -> Config {
    Config {
        cases,
        rng_seed: RngSeed::Fixed(20_260_704),
        failure_persistence: None,
        max_shrink_iters: 40,
        ..Config::default()
    }
}

/// Largest difference of the figures of two results, by name.
fn difference(a: &BandReport, b: &BandReport) -> (&'static str, f64) {
    let level = |w: Option<f64>| w.map_or(0.0, |w| 10.0 * w.log10());
    let margin = |b: &BandReport| b.limits.first().map_or(0.0, |l| l.margin_db);
    let worst = |b: &BandReport| b.loss_worst_db.unwrap_or([b.total_loss_db.unwrap(); 2]);
    [
        ("loss", a.total_loss_db.unwrap() - b.total_loss_db.unwrap()),
        ("antenna", level(a.antenna_w) - level(b.antenna_w)),
        ("erp", level(a.erp_w) - level(b.erp_w)),
        // with standing waves the sensitivities come from differences: good to some 1e-6 dB
        (
            "uncertainty",
            1e-5 * (a.uncertainty_db.unwrap() - b.uncertainty_db.unwrap()),
        ),
        ("margin", margin(a) - margin(b)),
        (
            "swr",
            a.transmitter_swr.unwrap() - b.transmitter_swr.unwrap(),
        ),
        // found by a search, which may stop at another extreme nearby
        ("worst", 0.1 * (worst(a)[1] - worst(b)[1])),
        ("best", 0.1 * (worst(a)[0] - worst(b)[0])),
    ]
    .into_iter()
    .max_by(|x, y| x.1.abs().total_cmp(&y.1.abs()))
    .expect("figures")
}

/// That two plans give the same on every band of every chain, within `db`.
fn same(a: &Plan, b: &Plan, db: f64) {
    let (ta, tb) = (a.text(), b.text());
    let (ra, rb) = (report(&ta), report(&tb));
    let (ba, bb) = (bands(&ra), bands(&rb));
    assert_eq!(ba.len(), bb.len());
    for ((chain, x), (_, y)) in ba.iter().zip(&bb) {
        let (what, d) = difference(x, y);
        // two halves of a line of partly known phase are two phasors of one cause: the mean of
        // their product is taken as the product of the means, within a hundredth of U
        let db = db + 0.01 * x.uncertainty_db.unwrap();
        assert!(
            d.abs() <= db,
            "{chain} {} {:?}: {what} differs by {d:e}\n{ta}\n----\n{tb}",
            x.band,
            x.point
        );
    }
}

/// A plan without reflections but those the lines' own complex impedance makes.
fn matched(seed: u64) -> Plan {
    let mut p = plan(seed);
    p.cables.iter_mut().for_each(|c| c.ohm = 50.0);
    for c in &mut p.chains {
        c.antenna = AntennaPlan {
            swr: None,
            ohm: None,
            ..c.antenna.clone()
        };
        c.parts
            .retain(|p| !matches!(p, PartPlan::Device("protector", _)));
    }
    p
}

fn lines(c: &mut ChainPlan) -> Vec<usize> {
    (0..c.parts.len())
        .filter(|i| matches!(c.parts[*i], PartPlan::Line { .. }))
        .collect()
}

fn metres(p: &mut PartPlan) -> &mut f64 {
    match p {
        PartPlan::Line {
            length: Length::Metres(m),
            ..
        } => m,
        _ => panic!("a line in metres"),
    }
}

proptest! {
    #![proptest_config(config(160))]

    #[test]
    fn generated_stations_check_without_error(seed: u64) {
        let text = plan(seed).text();
        let r = report(&text);
        for (_, b) in bands(&r) {
            prop_assert!(b.complete, "{text}");
            prop_assert!(b.total_loss_db.unwrap().is_finite() && b.antenna_w.is_some_and(|w| w > 0.0), "{text}");
            // passive: no part gives power but as much as standing waves move about
            prop_assert!(b.total_loss_db.unwrap() >= -1e-9, "{text}");
            let heat: f64 = b.nodes.iter().filter_map(|n| n.heat_w).sum();
            // a row's power is that of its mean level, heat a mean power: what both come from
            // bounds them
            let first = &b.nodes[0];
            // the forward power is left out where it is the net power but for 0.1 %
            let near = first.power_w.map(|w| w * 1.001);
            let net = first.forward_w.or(near).unwrap_or(0.0);
            let antenna = b.antenna_w.unwrap_or(0.0);
            prop_assert!(heat + antenna <= net * (1.0 + 1e-6) + 1e-9 || b.power_mode == PowerMode::Tuner, "{heat} + {antenna} of {net}\n{text}");
        }
    }

    #[test]
    fn more_cable_never_raises_matched_power(seed: u64, metres_more in 0.1f64..80.0) {
        let mut r = Rng::new(seed);
        let a = matched(seed);
        let mut b = a.clone();
        for c in &mut b.chains {
            let at = lines(c);
            if !at.is_empty() {
                let i = *r.pick(&at);
                *metres(&mut c.parts[i]) += metres_more;
            }
        }
        let (ra, rb) = (report(&a.text()), report(&b.text()));
        for ((chain, x), (_, y)) in bands(&ra).iter().zip(&bands(&rb)) {
            let (x, y) = (x.antenna_w.unwrap_or(0.0), y.antenna_w.unwrap_or(0.0));
            prop_assert!(y <= x * (1.0 + 1e-12), "{chain}: {x} W became {y} W\n{}", a.text());
        }
    }

    #[test]
    fn splitting_a_run_changes_nothing(seed: u64, share in 0.05f64..0.95) {
        // without joins between the parts: a split with a join is a pair more
        let mut a = plan(seed);
        a.station = None;
        let mut b = a.clone();
        let mut r = Rng::new(seed);
        for c in &mut b.chains {
            let at = lines(c);
            if !at.is_empty() {
                let i = *r.pick(&at);
                let mut second = c.parts[i].clone();
                let whole = *metres(&mut c.parts[i]);
                *metres(&mut c.parts[i]) = whole * share;
                *metres(&mut second) = whole - whole * share;
                c.parts.insert(i + 1, second);
            }
        }
        same(&a, &b, 1e-9);
    }

    #[test]
    fn a_part_of_no_loss_changes_nothing(seed: u64) {
        let mut a = plan(seed);
        a.station = None;
        let mut b = a.clone();
        let mut r = Rng::new(seed);
        for c in &mut b.chains {
            let at = r.below(c.parts.len() + 1);
            c.parts.insert(at, PartPlan::Device("pad", "0 dB".to_owned()));
            let at = r.below(c.parts.len() + 1);
            c.parts.insert(at, PartPlan::Device("switch", "0 dB".to_owned()));
        }
        same(&a, &b, 1e-9);
    }

    #[test]
    fn feet_equal_metres(seed: u64) {
        let a = plan(seed);
        let mut b = a.clone();
        for c in &mut b.chains {
            for p in &mut c.parts {
                if let PartPlan::Line { length, .. } = p
                    && let Length::Metres(m) = *length
                {
                        // a foot is 0.3048 m exactly (ISO 80000-3)
                        *length = Length::Feet(m / 0.3048);
                    }
            }
        }
        same(&a, &b, 1e-9);
    }

    #[test]
    fn the_order_of_bands_is_irrelevant(seed: u64) {
        let a = plan(seed);
        let mut b = a.clone();
        b.bands.reverse();
        b.chains.iter_mut().for_each(|c| c.bands.reverse());
        let (ra, rb) = (without_lines(&report(&a.text())), without_lines(&report(&b.text())));
        for (x, y) in ra["stations"].as_array().unwrap().iter().zip(rb["stations"].as_array().unwrap()) {
            for (x, y) in x["chains"].as_array().unwrap().iter().zip(y["chains"].as_array().unwrap()) {
                let (x, y) = (x["bands"].as_array().unwrap(), y["bands"].as_array().unwrap());
                prop_assert_eq!(x.len(), y.len());
                for b in x {
                    let of = |l: &[serde_json::Value]| l.iter().filter(|o| *o == b).count();
                    prop_assert_eq!(of(x), of(y), "{} in {}", b["band"], a.text());
                }
            }
        }
    }

    #[test]
    fn formatting_keeps_meaning(seed: u64) {
        let mut r = Rng::new(seed);
        let text = plan(seed).text();
        // blanks at random, as typed in haste
        let mut messy = String::new();
        for line in text.lines() {
            let indent = line.len() - line.trim_start().len();
            if indent > 0 {
                messy.push_str(&" ".repeat(1 + r.below(9)));
            }
            messy.push_str(&line.trim_start().replace(", ", r.word(&[",", " , ", ",  "])).replace(" = ", r.word(&["=", "  = "])));
            messy.push_str(r.word(&["\n", "  \n", "\n\n", " // remark\n"]));
        }
        let formatted = downlead_syntax::format(&messy);
        prop_assert_eq!(downlead_syntax::format(&formatted), formatted.as_str());
        let (a, b) = (without_lines(&report(&messy)), without_lines(&report(&formatted)));
        prop_assert_eq!(a, b, "{}\n----\n{}", messy, formatted);
        prop_assert_eq!(without_lines(&report(&text)), without_lines(&load(&formatted).report()));
    }

    #[test]
    fn a_tagged_part_is_the_same_part(seed: u64) {
        // a chain of untagged parts, and the same parts defined in the station and named
        let mut a = plan(seed);
        a.station = Some("n-pair".to_owned());
        a.chains.truncate(1);
        let text = a.text();
        let tagged = tag_parts(&text);
        let (ra, rb) = (report(&text), report(&tagged));
        for ((_, x), (_, y)) in bands(&ra).iter().zip(&bands(&rb)) {
            let (what, d) = difference(x, y);
            prop_assert!(d.abs() <= 1e-12, "{what} differs by {d:e}\n{text}\n----\n{tagged}");
        }
    }
}

/// Moves the parts of the first chain (but for connectors) into the station, under tags.
fn tag_parts(text: &str) -> String {
    let (mut station, mut chain, mut head) = (String::new(), String::new(), String::new());
    let (mut n, mut inside, mut depth) = (0, false, 0i32);
    for line in text.lines() {
        let t = line.trim_start();
        if !inside {
            if t.starts_with("chain ") {
                inside = true;
                chain = format!("{line}\n");
            } else {
                head += &format!("{line}\n");
            }
            continue;
        }
        let stays = depth == 0 && ["connector", "limit", "}"].iter().any(|w| t.starts_with(w));
        if stays {
            chain += &format!("{line}\n");
        } else if depth == 0 {
            n += 1;
            let (word, rest) = t.split_once(' ').expect("keyword and figures");
            station += &format!("    {word} P{n} {rest}\n");
            chain += &format!("        P{n}\n");
        } else {
            station += &format!("    {t}\n");
        }
        depth += t.matches('{').count() as i32 - t.matches('}').count() as i32;
        if depth < 0 {
            depth = 0;
        }
    }
    let head = head.strip_suffix("}\n").unwrap_or(&head).to_owned();
    format!("{head}{station}{chain}")
}

#[test]
fn the_large_file_checks_without_error() {
    let text = downlead_testkit::large_file(1_000);
    let r = report(&text);
    assert!(bands(&r).len() >= 40 && bands(&r).iter().all(|b| b.1.complete));
    for line in [downlead_testkit::CABLE_LINE, downlead_testkit::RUN_LINE] {
        assert_eq!(text.matches(line).count(), 1, "{line}");
    }
}
