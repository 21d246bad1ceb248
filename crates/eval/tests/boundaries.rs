//! Figures and verdicts at the edges where a slip of the program would not show elsewhere.

mod common;

use common::load;
use downlead_eval::bench::result::SessionResult;
use downlead_eval::difference::Step;
use downlead_eval::instrument::between_readings_db;
use downlead_eval::{Snapshot, cable_at};
use downlead_station::model::Meaning;

fn near(what: &str, got: f64, want: f64, within: f64) {
    assert!((got - want).abs() <= within, "{what}: {got}, not {want}");
}

fn codes(s: &Snapshot) -> Vec<&'static str> {
    s.diagnostics().iter().map(|d| d.code.id).collect()
}

/// A step speaks when its interval does not hold zero and it is more than rounding.
#[test]
fn a_step_speaks_beyond_its_uncertainty() {
    let step = |db: f64, u: f64| Step {
        db,
        uncertainty_db: u,
        interval_db: [db - u, db + u],
    };
    for (db, u, speaks) in [
        (0.5, 0.4, true),
        (-0.5, 0.4, true),
        (0.5, 0.6, false),
        (-0.5, 0.6, false),
        (0.004, 0.001, false),
        (-0.004, 0.001, false),
    ] {
        assert_eq!(step(db, u).speaks(0.005), speaks, "{db} ± {u}");
    }
}

/// 1 % and 0.6 % (k = 1), each of both readings: 4.343 dB · √2 · √(0.01²/3 + 0.006²) where the class is
/// of the reading; of full scale the linearity grows as the reading gets smaller.
#[test]
fn between_two_readings_a_share_of_full_scale_grows() {
    let s = load(
        "instrument W1 {\n    accuracy 5 % of reading\n    linearity 1 %\n    repeatability 0.6 % k 1\n}\ninstrument W2 {\n    scale 100 W\n    accuracy 5 % of full scale\n    linearity 1 % of full scale\n    repeatability 0 %\n}\n",
    );
    let of = |name: &str, w: f64| {
        let env = s.scopes()[0].env();
        between_readings_db(env.instrument(name).expect("an instrument"), w)
    };
    let both = 4.342_944_819 * 2_f64.sqrt();
    let want = both * (1e-4_f64 / 3.0 + 36e-6).sqrt();
    near("of reading", of("W1", 40.0), want, 1e-9);
    near("at another power", of("W1", 10.0), want, 1e-9);
    // the step of a display is none here: what is of full scale is in inverse proportion to the reading
    let (all, half) = (of("W2", 80.0), of("W2", 40.0));
    near("of full scale", half / all, 2.0, 0.02);
}

/// A readings' row far from the band that it names is asked for; one within its ends is not.
#[test]
fn a_bands_ends_and_five_percent_beyond_are_near() {
    for (band, mhz, found) in [
        ("144 MHz to 148 MHz", 151.0, false),
        ("144 MHz to 148 MHz", 137.5, false),
        ("144 MHz to 148 MHz", 160.0, true),
        ("144 MHz to 148 MHz", 130.0, true),
        ("146 MHz", 160.0, false),
        ("146 MHz", 180.0, true),
    ] {
        let s = common::load_from(
            &downlead_testkit::Files::default()
                .with(
                    common::MAIN,
                    format!("band b {band}\ninstrument W1 {{ accuracy 5 % of reading }}\nsession s {{\n    read 2026-11-21 with W1 by QY5BEN\n    temperature 20 °C\n    piece A 20 m of rg-213\n    readings from \"t.csv\"\n}}\n"),
                )
                .with(
                    "t.csv",
                    format!("band,frequency_mhz,piece,time_min,forward_w\nb,{mhz},baseline,0,44\nb,{mhz},A,1,30\nb,{mhz},baseline,2,44\n"),
                ),
        );
        let said: Vec<String> = s
            .diagnostics()
            .iter()
            .filter(|d| d.code.id == "readings-disagree")
            .map(|d| d.message.clone())
            .collect();
        assert_eq!(!said.is_empty(), found, "{band} {mhz}: {said:?}");
    }
}

fn session(text: &str) -> SessionResult {
    let s = load(text);
    let items = s.scopes()[0].items();
    let found = items.iter().find_map(|(_, _, r)| r.session.as_deref());
    found
        .cloned()
        .unwrap_or_else(|| panic!("{:?}", s.diagnostics()))
}

/// Two bands suffice for two coefficients; one does not.
#[test]
fn two_bands_make_a_fit() {
    let of = |bands: &[f64]| {
        let mut text = "instrument W1 { accuracy 5 % of reading }\nsession s {\n    read 2026-11-21 with W1 by QY5BEN\n    temperature 20 °C\n    piece A 20 m of rg-213\n".to_owned();
        for mhz in bands {
            let watts = 44.0 * 10_f64.powf(-0.02 * (0.65 * mhz.sqrt() + 0.006 * mhz));
            text.push_str(&format!("    readings on {mhz} MHz {{\n        baseline 44 W at 0 min\n        through A {watts} W at 1 min\n        baseline 44 W at 2 min\n    }}\n"));
        }
        session(&(text + "}\n")).pieces[0].fit.clone()
    };
    let fit = of(&[28.5, 145.3]).expect("two bands").expect("a fit");
    near("k1", 100.0 * fit.coefficients.k1, 0.65, 0.01);
    near("k2", 100.0 * fit.coefficients.k2, 0.006, 0.001);
    assert!(of(&[145.3]).is_none());
}

/// Outside the range a cable's loss is known in, its uncertainty is doubled and taken as normal.
#[test]
fn beyond_its_range_a_cable_is_less_sure() {
    let s = load(
        "cable c {\n    impedance 50 ohm\n    velocity 0.66\n    loss {\n        10 MHz 2 dB/100 m\n        100 MHz 7 dB/100 m\n    }\n    accuracy 6 %\n    source \"made up\"\n}\n",
    );
    let item = &s.scopes()[0].items()[0];
    let Meaning::Cable(c) = &item.1.meaning else {
        panic!("a cable");
    };
    let at = |hz: f64| cable_at(c, hz, 20.0).expect("a loss");
    let (inside, outside) = (at(50e6), at(400e6));
    assert!(inside.outside == 1.0 && outside.outside > 1.0);
    assert!(outside.u_relative > 1.5 * inside.u_relative);
    assert!(outside.normal);
}

/// A rating holds for a matched line; with a standing wave less power passes (the sum of the squares of
/// both waves' shares: at SWR 3 and below 30 MHz 2·3/(3² + 1) = 0.6 of it).
#[test]
fn a_standing_wave_takes_of_a_lines_rating() {
    let text = |watts: u32, swr: &str| {
        format!(
            "cable c {{\n    impedance 50 ohm\n    velocity 0.66\n    loss 0.65 dB/100 m/sqrt(MHz)\n    rating 100 W at 14.2 MHz, ambient 20 °C, conductor 80 °C\n    source \"made up\"\n}}\nchain x on 14.2 MHz {{\n    transmitter {watts} W carrier, fm, keyed 100 %\n    run 3 m of c, at 20 °C\n    antenna 2 dBi{swr}\n}}\n"
        )
    };
    let over = |watts: u32, swr: &str| codes(&load(&text(watts, swr))).contains(&"rating-exceeded");
    assert!(!over(90, ""), "{:?}", load(&text(90, "")).diagnostics());
    assert!(over(130, ""));
    assert!(over(90, ", swr 3"));
}
