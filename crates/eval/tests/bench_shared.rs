//! Bench sessions: what two sides of a comparison share, meters read in line, what would help.

use downlead_base::{Diagnostic, Severity};
use downlead_eval::bench::result::SessionResult;
use downlead_eval::{Places, Snapshot};
use downlead_physics::measure::Verdict;
use downlead_testkit::Files;

const METERS: &str = "instrument W1 {\n    accuracy 5 % of reading\n    linearity 1 %\n    repeatability 0.6 % k 1\n}\n\ninstrument W2 {\n    accuracy 5 % of reading\n    linearity 1 %\n    repeatability 0.6 % k 1\n}\n\ncable c {\n    impedance 50 ohm\n    velocity 0.66\n    loss 0.7 dB/100 m/sqrt(MHz)\n    accuracy 2 % k 2\n    source \"made up\"\n}\n\n";

/// The first session of meters, a cable and these lines of a session, and what is said of it.
fn session(lines: &str) -> (SessionResult, Vec<Diagnostic>) {
    let text = format!(
        "{METERS}session s {{\n    read 2026-11-21 with W1 by QY5BEN\n    temperature 20 °C\n{lines}}}\n"
    );
    let s = Snapshot::load(
        &["main.downlead".to_owned()],
        &Files::default().with("main.downlead", text.as_str()),
    );
    let said = s.diagnostics();
    let result = s.scopes()[0]
        .items()
        .iter()
        .find_map(|(_, _, r)| r.session.as_deref().cloned());
    (result.unwrap_or_else(|| panic!("{said:?}")), said)
}

fn on(mhz: f64, rows: &str) -> String {
    let rows: String = rows.lines().map(|l| format!("        {l}\n")).collect();
    format!("    readings on {mhz} MHz {{\n{rows}    }}\n")
}

fn near(what: &str, got: f64, want: f64, within: f64) {
    assert!((got - want).abs() <= within, "{what}: {got}, not {want}");
}

fn of<'d>(said: &'d [Diagnostic], code: &str) -> Vec<&'d Diagnostic> {
    said.iter().filter(|d| d.code.id == code).collect()
}

/// A join in the baseline and two with the piece: the difference holds one of them, and its
/// uncertainty is that of one. With u the standard uncertainty of one join (the library's, at this
/// frequency), the measured loss and the expected one counted apart would hold u² + 4 u², and their
/// difference holds (2 − 1)² u² (GUM, JCGM 100:2008, 5.2.2).
#[test]
fn a_kind_of_join_on_both_sides_counts_once() {
    let rows = |base: &str| {
        on(
            145.0,
            &format!(
                "baseline 44 W at 0 min{base}\nthrough A 29 W at 1 min\nbaseline 44 W at 2 min{base}"
            ),
        )
    };
    let piece = "    piece A 20 m of c, connector 2 of n-pair\n";
    let (with, _) = session(&format!("{piece}{}", rows(", adapter n-pair")));
    let (without, _) = session(&format!("{piece}{}", rows("")));
    let (a, b) = (&with.cells[0], &without.cells[0]);
    let joins = b.expected.map_or(f64::NAN, |e| e.u_joins_db);
    let one = 0.5 * joins;
    assert!(one > 0.0);
    let u2 = |c: &downlead_eval::bench::result::BenchCell| {
        c.comparison
            .map_or(f64::NAN, |x| 0.25 * x.expanded_db * x.expanded_db)
    };
    // without it: 4 u² of the two joins; with it: u² of the one that came
    near("variance", u2(b) - u2(a), 3.0 * one * one, 1e-9);
    let per = |c: &downlead_eval::bench::result::BenchCell| {
        c.per_length
            .map_or(f64::NAN, |p| p.u_db_per_m * p.u_db_per_m)
    };
    near("per length", per(b) - per(a), 3.0 * one * one / 400.0, 1e-9);
}

/// An adapter between the two meters when they are read in line is in their difference: with the same
/// one at the piece nothing is taken off.
#[test]
fn an_adapter_of_meters_in_line_cancels() {
    let loss = |equalise: &str, through: &str| {
        let rows = format!(
            "equalise 44 W with W1, against 43 W with W2{equalise}\nthrough A 29 W with W2, input 44 W with W1{through}"
        );
        let (r, said) = session(&format!("    piece A 20 m of c\n{}", on(145.0, &rows)));
        assert!(of(&said, "reading-not-used").is_empty(), "{said:?}");
        r.cells[0].measured.db
    };
    let plain = loss("", "");
    near(
        "44/29 less 44/43",
        plain,
        10.0 * (43.0_f64 / 29.0).log10(),
        1e-9,
    );
    near(
        "in both",
        loss(", adapter n-to-bnc", ", adapter n-to-bnc"),
        plain,
        1e-9,
    );
    // the library's N to BNC adapter loses 0.165 dB at 1 GHz, by the root of frequency
    let one = 0.165 * 0.145_f64.sqrt();
    near(
        "at the piece",
        plain - loss("", ", adapter n-to-bnc"),
        one,
        1e-9,
    );
    near("in line", loss(", adapter n-to-bnc", "") - plain, one, 1e-9);
}

/// Baselines with one meter and the piece with another: told, unless the two were read in line; then
/// their scales cancel (here 43/44).
#[test]
fn a_piece_read_on_another_meter_than_its_baselines() {
    let rows = |more: &str| {
        let rows = format!(
            "{more}baseline 44 W at 0 min\nthrough A 29 W with W2 at 1 min\nbaseline 44 W at 2 min"
        );
        session(&format!("    piece A 20 m of c\n{}", on(145.0, &rows)))
    };
    let (apart, said) = rows("");
    assert_eq!(of(&said, "not-equalised").len(), 1, "{said:?}");
    near(
        "loss",
        apart.cells[0].measured.db,
        10.0 * (44.0_f64 / 29.0).log10(),
        1e-9,
    );
    let (equal, said) = rows("equalise 44 W with W1, against 43 W with W2\n");
    assert!(of(&said, "not-equalised").is_empty(), "{said:?}");
    near(
        "loss",
        equal.cells[0].measured.db,
        10.0 * (43.0_f64 / 29.0).log10(),
        1e-9,
    );
    // the scales of 5 % each (rectangular) are gone
    let scales = 2.0 * 4.342_944_8_f64.powi(2) * 0.05_f64.powi(2) / 3.0;
    let u2 = |r: &SessionResult| r.cells[0].measured.u_db.powi(2);
    assert!(
        u2(&apart) > scales && u2(&equal) < 0.2 * scales,
        "{equal:?}"
    );
    assert_eq!(
        equal.cells[0].method.words(),
        "substitution, two meters, equalised"
    );
}

/// Meters read in line on one band and used on others: said once, and listed as assumed.
#[test]
fn meters_in_line_on_one_band_only() {
    let pair = "equalise 44 W with W1, against 43 W with W2";
    let row = "through A 29 W with W2, input 44 W with W1";
    let (_, said) = session(&format!(
        "    piece A 20 m of c\n{}{}{}",
        on(145.0, &format!("{pair}\n{row}")),
        on(28.5, row),
        on(50.3, row)
    ));
    let told = of(&said, "not-equalised");
    assert_eq!(told.len(), 1, "{said:?}");
    assert_eq!(told[0].severity, Severity::Info);
    assert!(
        told[0].message.contains("on 28.5 MHz and 50.3 MHz"),
        "{}",
        told[0].message
    );
    let (_, said) = session(&format!(
        "    piece A 20 m of c\n{}{}",
        on(145.0, &format!("{pair}\n{row}")),
        on(28.5, &format!("{pair}\n{row}"))
    ));
    assert!(of(&said, "not-equalised").is_empty(), "{said:?}");
}

/// Where the step between the baselines makes the uncertainty, no meter is advised.
#[test]
fn no_better_meter_is_advised_against_drift() {
    let rows = "baseline 44 W at 0 min\nthrough A 29 W at 5 min\nbaseline 28 W at 10 min";
    let (r, said) = session(&format!("    piece A 6 m of c\n{}", on(145.0, rows)));
    let x = r.cells[0].comparison.expect("compared");
    assert_eq!(x.verdict, Verdict::CannotTell, "{x:?}");
    assert_eq!(x.meter_factor, None);
    let told = of(&said, "reading-cannot-tell");
    let help = told[0].help.join(" ");
    assert!(
        help.contains("how the baseline changed") && !help.contains("better meter"),
        "{help}"
    );
    // a quiet transmitter and a poor meter: the meter is what helps
    let rows = "baseline 44 W at 0 min\nthrough A 43 W at 5 min\nbaseline 44 W at 10 min";
    let (r, _) = session(&format!("    piece A 1 m of c\n{}", on(145.0, rows)));
    let x = r.cells[0].comparison.expect("compared");
    assert!(x.meter_factor.is_some_and(|f| f > 1.0), "{x:?}");
}

/// The worst band counts the sheet's uncertainty too: En as in the comparison of that band.
#[test]
fn the_worst_band_counts_the_sheet() {
    let rows = "baseline 44 W at 0 min\nthrough A 26 W at 1 min\nbaseline 44 W at 2 min";
    let (r, _) = session(&format!("    piece A 20 m of c\n{}", on(145.0, rows)));
    let w = r.pieces[0].whole.expect("a whole");
    let x = r.cells[0].comparison.expect("compared");
    near("En", w.worst_en, x.en, 1e-9);
}

/// A piece that is not 50 ohm depends on where its reflections add: what is exact there is listed.
#[test]
fn an_exact_velocity_is_listed_off_50_ohm() {
    let listed = |z: &str, v: &str| {
        let lines = format!(
            "    piece A 20 m of c\n{}",
            on(
                145.0,
                "baseline 44 W at 0 min\nthrough A 29 W at 1 min\nbaseline 44 W at 2 min"
            )
        );
        let text = format!(
            "{}session s {{\n    read 2026-11-21 with W1 by QY5BEN\n    temperature 20 °C\n{lines}}}\n",
            METERS.replace("50 ohm", z).replace("velocity 0.66", v)
        );
        let s = Snapshot::load(
            &["main.downlead".to_owned()],
            &Files::default().with("main.downlead", text.as_str()),
        );
        let scope = &s.scopes()[0];
        let r = scope
            .items()
            .iter()
            .find_map(|(_, _, r)| r.session.as_deref());
        let places = Places::new(&s);
        let said = r.map(|r| r.assumptions(&places)).unwrap_or_default();
        said.join("\n").contains("velocity factor of the cable")
    };
    assert!(listed("75 ohm", "velocity 0.66"));
    assert!(!listed("75 ohm", "velocity 0.66 ± 0.01"));
    assert!(!listed("50 ohm", "velocity 0.66"));
}

/// Standard uncertainty by mismatch (Harris and Warner 1981, as in accreditation guides): 8.686/√2 ·
/// √(Γg² (s11² + 0) + Γl² (s22² + 0) + Γg² Γl² (1 + s21⁴)), all reflections as sizes.
fn mismatch_db(source: f64, load: f64, own: f64, loss_db: f64) -> f64 {
    let through = 10_f64.powf(-loss_db / 10.0).powi(2);
    let sum =
        (source * own).powi(2) + (load * own).powi(2) + (source * load).powi(2) * (1.0 + through);
    8.685_889_638 * (0.5 * sum).sqrt()
}

/// The mismatch term of a piece's loss with these words in its line and these connectors defined.
fn mismatch_of(definitions: &str, piece: &str) -> (f64, f64, Vec<String>) {
    let text = format!(
        "{definitions}{METERS}session s {{\n    read 2026-11-21 with W1 by QY5BEN\n    temperature 20 °C\n    load return-loss 26 dB\n    generator swr 1.2\n    {piece}\n{}}}\n",
        on(
            145.0,
            "baseline 44 W at 0 min\nthrough A 29 W at 1 min\nbaseline 44 W at 2 min"
        )
    );
    let s = Snapshot::load(
        &["main.downlead".to_owned()],
        &Files::default().with("main.downlead", text.as_str()),
    );
    let said = s.diagnostics();
    let scope = &s.scopes()[0];
    let r = scope
        .items()
        .iter()
        .find_map(|(_, _, r)| r.session.as_deref());
    let r = r.unwrap_or_else(|| panic!("{said:?}"));
    assert!(
        said.iter().all(|d| d.severity != Severity::Error),
        "{said:?}"
    );
    let c = &r.cells[0];
    let term = c
        .budget
        .iter()
        .find(|t| matches!(t.source, downlead_physics::measure::Source::Mismatch(_)));
    (
        term.map_or(0.0, |t| t.u_db),
        c.measured.db,
        r.assumptions(&Places::new(&s)),
    )
}

/// What a piece reflects by itself counts in the mismatch of its measured loss.
#[test]
fn a_pieces_own_return_loss_counts() {
    let (source, load) = (0.2 / 2.2, 10_f64.powf(-26.0 / 20.0));
    let nothing = "reflect nothing where they are of 50 ohm";
    let (u, loss, assumed) = mismatch_of("", "piece A 20 m of c");
    near("matched", u, mismatch_db(source, load, 0.0, loss), 1e-9);
    assert!(assumed.iter().any(|a| a.contains(nothing)), "{assumed:?}");
    let (u, loss, assumed) = mismatch_of("", "piece A 20 m of c, return-loss 20 dB");
    near("20 dB", u, mismatch_db(source, load, 0.1, loss), 1e-9);
    assert!(!assumed.iter().any(|a| a.contains(nothing)), "{assumed:?}");
    let (u, loss, _) = mismatch_of("", "piece A 20 m of c, swr 1.5");
    near("SWR 1.5", u, mismatch_db(source, load, 0.2, loss), 1e-9);
    let (u, loss, _) = mismatch_of(
        "band 70cm 435 MHz\n\n",
        "piece A 20 m of c, swr 1.5 on 70cm",
    );
    near(
        "of another band",
        u,
        mismatch_db(source, load, 0.0, loss),
        1e-9,
    );
}

/// A short line of 35 ohm and 20 mm in vacuum reflects |Γ| by the input impedance of a line ended in
/// 50 ohm (Pozar, Microwave Engineering, 2.3): Z (50 + jZ tan βl) / (Z + j50 tan βl).
#[test]
fn the_bumps_of_a_pieces_joins_count() {
    let (source, load) = (0.2 / 2.2, 10_f64.powf(-26.0 / 20.0));
    let t = (std::f64::consts::TAU * 145e6 / 299_792_458.0 * 0.020).tan();
    // |Γ| of a line of z = 0.7 in units of the reference: t |z² − 1| / √(4 z² + t² (z² + 1)²)
    let z2 = 0.49_f64;
    let one = t * (1.0 - z2) / (4.0 * z2 + (t * (z2 + 1.0)).powi(2)).sqrt();
    let plug = "connector plug { bump 35 ohm 20 mm; loss 0.01 dB }\n\n";
    // one pair at each end; of four, two, whose phases are not known. What the far end reflects comes
    // back through the piece twice
    let loss_db = 20.0 * 0.007 * 145_f64.sqrt();
    for (count, near_end) in [(2, one), (4, one * 2_f64.sqrt())] {
        let back = 10_f64.powf(-(loss_db + 0.01 * f64::from(count)) / 10.0);
        let own = near_end * (1.0 + back * back).sqrt();
        let (u, loss, _) = mismatch_of(
            plug,
            &format!("piece A 20 m of c, connector {count} of plug"),
        );
        near("bump", u, mismatch_db(source, load, own, loss), 1e-5);
    }
}

/// A line of 75 ohm reflects at both its ends, and the meters see the sum by its length. Deviations by a
/// simulation of a million phases (tests/reference/line_between_meters.py); the usual form for
/// mismatch is of first order, so 5 %.
#[test]
fn a_line_of_75_ohm_is_seen_with_both_its_ends() {
    for (mhz, u) in [
        (3.6, 0.1886),
        (7.1, 0.2343),
        (14.2, 0.0996),
        (50.1, 0.0965),
        (145.3, 0.1901),
        (434.5, 0.1130),
    ] {
        let found = of_75(mhz, "velocity 0.66", "20 m");
        near(&format!("{mhz} MHz"), found / u, 1.0, 0.05);
    }
    // a length that is known to 10 % (standard)
    for (mhz, u) in [
        (7.1, 0.2163),
        (14.2, 0.1576),
        (50.1, 0.1601),
        (145.3, 0.1505),
        (434.5, 0.1401),
    ] {
        let found = of_75(mhz, "velocity 0.66", "20 m ± 2 m k 1");
        near(&format!("{mhz} MHz, length"), found / u, 1.0, 0.05);
    }
    // without a velocity the phase is any
    let (any, half) = (
        of_75(14.2, "", "20 m"),
        of_75(14.2, "velocity 0.66", "20 m ± 2 m k 1"),
    );
    near("any phase", any / half, 1.0, 0.08);
}

/// Standard uncertainty by mismatch of a piece of 75 ohm between a generator of SWR 1.2 and a load of
/// 26 dB return loss.
fn of_75(mhz: f64, velocity: &str, length: &str) -> f64 {
    // what comes through is made up: its size enters only by the square of both ends
    let watts = 44.0 * 10_f64.powf(-0.1 * 0.2 * (0.9 * mhz.sqrt() + 0.002 * mhz));
    let text = format!(
        "{METERS}cable coax {{\n    impedance 75 ohm\n    {velocity}\n    loss 0.9 dB/100 m/sqrt(MHz) + 0.002 dB/100 m/MHz\n    accuracy 4 % k 2\n    source \"made up\"\n}}\nsession s {{\n    read 2026-11-21 with W1 by QY5BEN\n    temperature 20 °C\n    load return-loss 26 dB\n    generator swr 1.2\n    piece A {length} of coax\n{}}}\n",
        on(
            mhz,
            &format!(
                "baseline 44 W at 0 min\nthrough A {watts:.4} W at 1 min\nbaseline 44 W at 2 min"
            )
        )
    );
    let s = Snapshot::load(
        &["main.downlead".to_owned()],
        &Files::default().with("main.downlead", text.as_str()),
    );
    let said = s.diagnostics();
    let r = s.scopes()[0]
        .items()
        .iter()
        .find_map(|(_, _, r)| r.session.as_deref())
        .unwrap_or_else(|| panic!("{said:?}"));
    let budget = r.cells.first().map(|c| &c.budget);
    let budget = budget.unwrap_or_else(|| panic!("{said:?}"));
    let term = budget
        .iter()
        .find(|t| matches!(t.source, downlead_physics::measure::Source::Mismatch(_)));
    term.map_or(0.0, |t| t.u_db)
}
