//! Links: the numbers of the invented scenario, recomputed in Python from the formulas of ITU-R P.1812-6, P.526 and P.372
//! and the cable coefficients (its checks are the published figures of `crates/physics/tests/path.rs`); what is
//! found wrong; that results follow the stations.

mod common;

use common::{MAIN, load_from};
use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_eval::link::{HopResult, LinkAssumed, LinkResult, LinkVerdict, Missing};
use downlead_station::model::Model;
use downlead_testkit::{Files, examples};

fn read(f: &str) -> String {
    std::fs::read_to_string(examples().0.join(f)).expect("an example")
}

/// The example with its files, one text of it changed.
fn files(change: &[(&str, &str)]) -> Files {
    let change = |text: String| change.iter().fold(text, |t, (a, b)| t.replace(a, b));
    let flat = |f: &str| {
        change(
            read(f)
                .replace("../thrennock/", "")
                .replace("../pellgarrow/", ""),
        )
    };
    Files::default()
        .with(MAIN, flat("link/quay.downlead"))
        .with("rev4.downlead", flat("pellgarrow/rev4.downlead"))
        .with("cables.downlead", flat("thrennock/cables.downlead"))
        .with(
            "instruments.downlead",
            flat("thrennock/instruments.downlead"),
        )
        .with("thrennock-harbour.csv", flat("link/thrennock-harbour.csv"))
        .with("harbour-thrennock.csv", flat("link/harbour-thrennock.csv"))
}

fn load(change: &[(&str, &str)]) -> Snapshot {
    load_from(&files(change))
}

fn links(s: &Snapshot) -> Vec<&LinkResult> {
    let items = s.scopes().iter().flat_map(downlead_eval::Scope::items);
    items.filter_map(|i| i.2.link.as_deref()).collect()
}

fn hop(s: &Snapshot) -> &HopResult {
    &links(s)[0].hops[0]
}

fn codes(s: &Snapshot) -> Vec<String> {
    s.diagnostics()
        .iter()
        .map(|d| format!("{}: {}", d.code.id, d.message))
        .collect()
}

#[track_caller]
fn close(got: f64, want: f64, within: f64) {
    assert!((got - want).abs() <= within, "{got} is not {want}");
}

/// The centre of the antenna, 1.35 m below its tip, as the recomputation takes it.
const CENTRE: (&str, &str) = ("height 26 m agl", "height 24.65 m agl");

#[test]
fn the_hill_to_the_quay_is_what_the_recomputation_gives() {
    let s = load(&[CENTRE]);
    assert!(codes(&s).is_empty(), "{:?}", codes(&s));
    let h = hop(&s);
    let (eirp, u) = h.eirp.expect("known");
    close(10.0 * eirp.log10() + 30.0, 46.1, 0.06);
    close(u, 0.74, 0.01);
    close(h.slant_m.expect("known") / 1e3, 38.405, 0.001);
    close(h.free_space_db.expect("known"), 107.5, 0.06);
    let t = h.terrain.as_ref().expect("a profile");
    close(t.loss_db, 27.6, 0.06);
    close(t.edge.at_m / 1e3, 26.0, 0.06);
    close(t.edge.above_m, 151.7, 0.06);
    close(t.edge.nu, 1.64, 0.006);
    close(t.other_k[0].1, 28.0, 0.06);
    close(t.other_k[1].1, 28.7, 0.06);
    let of = |m: Model| {
        let x = h.models.iter().find(|x| x.model == m).expect("computed");
        *x.loss_db.as_ref().expect("holds") - h.free_space_db.expect("known")
    };
    close(of(Model::Bullington), 27.6, 0.06);
    close(of(Model::OneEdge), 17.5, 0.06);
    close(of(Model::Cascade), 28.4, 0.06);
    // clearance over the first Fresnel zone at 14, 31 and 35 km
    let share = |km: f64| {
        let c = t
            .clearances
            .iter()
            .find(|c| (c.at_m - km * 1e3).abs() < 1.0);
        c.expect("a point").share()
    };
    close(share(14.0), 0.63, 0.006);
    close(share(31.0), 0.16, 0.006);
    close(share(35.0), 0.17, 0.006);
    close(h.receive_loss_db.expect("known"), 0.69, 0.006);
    close(h.level_dbm.expect("known"), -87.6, 0.06);
    let n = h.noise.expect("rural");
    close(n.external_db.expect("by P.372"), 7.2, 0.06);
    close(n.degradation_db, 2.0, 0.06);
    let j = h.judged.as_ref().expect("judged");
    close(j.needed_dbm, -109.0, 0.06);
    close(j.margin_db, 21.4, 0.06);
    close(j.places_db, 10.3, 0.06);
    close(j.left_db, 11.2, 0.06);
    close(j.u_db, 2.7, 0.06);
    assert_eq!(h.verdict, LinkVerdict::Met);
    for (got, want) in h.coverage.iter().zip([60.8, 54.8, 48.7, 42.7]) {
        close(got.1, want, 0.06);
    }
    assert_eq!(h.coverage.len(), 4);
    let assumed = &links(&s)[0].assumed;
    assert!(assumed.contains(&LinkAssumed::MainBeam) && assumed.contains(&LinkAssumed::NoClutter));
    assert!(!assumed.contains(&LinkAssumed::K43) && !assumed.contains(&LinkAssumed::NoSiteNoise));
}

#[test]
fn the_quay_to_the_hill_runs_the_other_way() {
    let s = load(&[CENTRE]);
    let h = &links(&s)[1].hops[0];
    close(h.level_dbm.expect("known"), -87.9, 0.06);
    close(h.noise.expect("rural").degradation_db, 1.7, 0.06);
    let b =
        |s: &Snapshot, i: usize, k: usize| links(s)[i].hops[k].terrain.clone().expect("a profile");
    // both hops of one link: the second takes the profile backwards
    let both = load(&[
        CENTRE,
        (
            "    profile from \"thrennock-harbour.csv\"",
            "    hop talk of car to talk-in-2m of pellgarrow\n    profile from \"thrennock-harbour.csv\"",
        ),
        ("20 dB sinad, 90 %", "12 dB sinad, 90 %"),
    ]);
    assert!(codes(&both).is_empty(), "{:?}", codes(&both));
    let (turned, own) = (b(&both, 0, 1), b(&s, 1, 0));
    assert!(turned.turned && !own.turned);
    close(turned.loss_db, own.loss_db, 1e-9);
    close(turned.edge.at_m, own.edge.at_m, 1e-6);
    assert_eq!(turned.ends_m, own.ends_m);
}

#[test]
fn results_follow_the_stations_and_the_tables() {
    let before = hop(&load(&[])).judged.clone().expect("judged").left_db;
    let mut files = files(&[]);
    let mut s = Snapshot::load(&[MAIN.to_owned()], &files);
    let file = s
        .files()
        .iter()
        .position(|f| f.path == "rev4.downlead")
        .expect("used");
    let text = files.text("rev4.downlead").expect("there").to_string();
    let at = u32::try_from(text.find("TX1 32 W").expect("there")).expect("short") + 4;
    s.edit(file, Span::new(at, at + 2), "16", &files);
    let after = hop(&s).judged.clone().expect("judged").left_db;
    // half of the power is 3.01 dB
    close(before - after, 3.0103, 1e-6);
    let table = files
        .text("thrennock-harbour.csv")
        .expect("there")
        .replace("26.0,342", "26.0,442");
    files.put("thrennock-harbour.csv", table);
    assert!(s.refresh_attachment("thrennock-harbour.csv", &files));
    let higher = hop(&s).judged.clone().expect("judged").left_db;
    assert!(higher < after - 1.0, "{higher} {after}");
}

/// Findings and the first hop's missing things after changes.
fn found(change: &[(&str, &str)]) -> (Vec<String>, Vec<Missing>) {
    let s = load(change);
    let missing = links(&s)[0]
        .hops
        .first()
        .map_or(Vec::new(), |h| h.missing.clone());
    (codes(&s), missing)
}

#[test]
fn profiles_that_cannot_be_used_are_found_and_nothing_is_guessed() {
    let of = |a: &str, b: &str| found(&[(a, b)]);
    for (a, b, code) in [
        ("5.5,268", "1.5,268", "profile-backwards"),
        (
            "distance_km,ground_m\n0,612",
            "distance_km,ground\n0,612",
            "profile-in-feet",
        ),
        (
            "distance_km,ground_m\n0,612",
            "distance_km,ground_m\n0.5,612",
            "profile-not-read",
        ),
        (
            "distance_km,ground_m\n0,612",
            "km,m\n0,612",
            "profile-not-read",
        ),
        ("9.0,214", "9.0,about 214", "profile-not-read"),
        ("0,612\n", "0,580\n", "profile-differs"),
    ] {
        let (codes, missing) = of(a, b);
        assert!(
            codes.iter().any(|c| c.starts_with(code)),
            "{code}: {codes:?}"
        );
        assert!(missing.contains(&Missing::Profile), "{code}: {missing:?}");
    }
}

#[test]
fn what_does_not_fit_is_found() {
    let (codes, missing) = found(&[("sensitivity -111 dBm ± 2 dB for 20 dB sinad", "")]);
    assert!(codes[0].starts_with("no-criterion: The link needs 20 dB sinad, and `TR1` of `car` states a sensitivity for 12 dB sinad only."), "{codes:?}");
    assert_eq!(missing, [Missing::Criterion]);
    let (codes, _) = found(&[("hear on 146.9137 MHz", "hear on 146.3137 MHz")]);
    assert!(
        codes[0].starts_with(
            "hop-mismatch: `talk-out-2m` sends on 146.9137 MHz and `hear` hears on 146.3137 MHz."
        ),
        "{codes:?}"
    );
    let (codes, _) = found(&[("hop talk-out-2m of", "hop talk-in-2m of")]);
    assert!(
        codes[0].starts_with("hop-mismatch: `talk-in-2m` is a receive chain"),
        "{codes:?}"
    );
    let (codes, _) = found(&[("to hear of car", "to here of car")]);
    assert!(
        codes
            .iter()
            .any(|c| c.starts_with("unknown-chain: Station `car` has no chain `here`.")),
        "{codes:?}"
    );
    let (codes, _) = found(&[("of pellgarrow to hear", "of pelgarrow to hear")]);
    assert!(
        codes
            .iter()
            .any(|c| c.starts_with("unknown-station") && c.contains("pelgarrow")),
        "{codes:?}"
    );
    let (codes, _) = found(&[("to talk-in-2m of pellgarrow", "to talk-in-2m of pelgarrow")]);
    assert!(
        codes.iter().any(|c| c.starts_with("unknown-station")),
        "{codes:?}"
    );
    let (codes, missing) = found(&[("site-noise rural", "site-noise quiet-rural")]);
    assert!(codes[0].starts_with("noise-beyond-range"), "{codes:?}");
    assert_eq!(missing, [Missing::NoiseRange]);
    let hata = (
        "k-factor 1.33333\n",
        "k-factor 1.33333\n    model hata-open\n",
    );
    let (codes, missing) = found(&[hata]);
    assert!(
        codes[0].contains("the frequency is 146.9137 MHz, and it holds from 150 MHz to 1.5 GHz"),
        "{codes:?}"
    );
    assert!(
        codes[0].contains("the height of the higher antenna is 634 m"),
        "{codes:?}"
    );
    assert_eq!(missing, [Missing::Model]);
    let (codes, _) = found(&[("k-factor 1.33333", "k-factor 0")]);
    assert!(codes[0].contains("k factor"), "{codes:?}");
    let (codes, _) = found(&[(", spread 8 dB", "")]);
    assert!(codes[0].starts_with("missing-value"), "{codes:?}");
    let (codes, _) = found(&[(
        "hop talk-out-2m of pellgarrow to hear of car",
        "hop talk-out-2m to hear",
    )]);
    assert!(
        codes[0].contains("A hop is a chain of a station `to` a chain of another"),
        "{codes:?}"
    );
}

#[test]
fn without_a_profile_the_horizon_and_the_distance_decide() {
    let plain = |line: &'static str| load(&[("    profile from \"thrennock-harbour.csv\"", line)]);
    let s = plain("    distance 38.4 km ± 0.2 km");
    let h = hop(&s);
    assert_eq!(h.model, Model::FreeSpace);
    // no ground is stated for the car: the horizon is not known, and free space is the least loss
    assert_eq!((h.horizon_m, h.verdict), (None, LinkVerdict::CannotTell));
    assert_eq!(h.missing, [Missing::Terrain]);
    assert!(h.judged.as_ref().expect("judged").left_db > 0.0);
    let far = load(&[
        (
            "    profile from \"thrennock-harbour.csv\"",
            "    distance 200 km",
        ),
        (
            "station car \"a car with 25 W\" {",
            "station car \"a car with 25 W\" {\n    ground 4 m amsl",
        ),
    ]);
    let h = hop(&far);
    // 4.1218 km (√638 + √5.5)
    close(h.horizon_m.expect("known") / 1e3, 113.8, 0.1);
    assert_eq!(
        (h.verdict, &h.missing[..]),
        (LinkVerdict::CannotJudge, &[Missing::Sight][..])
    );
    let s = plain("");
    assert_eq!(hop(&s).missing, [Missing::Distance]);
    assert_eq!(hop(&s).verdict, LinkVerdict::CannotJudge);
}

#[test]
fn too_little_power_is_not_met_and_a_narrow_margin_cannot_tell() {
    let s = load(&[("TX1 32 W", "TX1 32 mW")]);
    assert_eq!(hop(&s).verdict, LinkVerdict::NotMet);
    assert!(
        codes(&s).iter().any(|c| c.starts_with("link-not-met")),
        "{:?}",
        codes(&s)
    );
    let s = load(&[("TX1 32 W", "TX1 2.5 W")]);
    let j = hop(&s).judged.clone().expect("judged");
    assert!(j.left_db.abs() < j.u_db, "{j:?}");
    assert_eq!(hop(&s).verdict, LinkVerdict::CannotTell);
}

#[test]
fn a_cable_used_at_both_ends_is_one_cause() {
    // the same sheet under two names is two causes; one name at both ends is one, which adds twice
    let cable = "cable other { loss 1.3 dB/100 m/sqrt(MHz); accuracy 20 % }\ncable same { loss 1.3 dB/100 m/sqrt(MHz); accuracy 20 % }\nstation car";
    let long = |name: &'static str| {
        let s = load(&[
            ("station car", cable),
            ("jumper C1 4 m of demo-5mm-double, at 20 °C", name),
            (
                "run M1 46 m of demo-seven-eighths-foam, mast",
                "run M1 46 m of same, mast",
            ),
        ]);
        hop(&s).judged.clone().expect("judged").u_db
    };
    let apart = long("jumper C1 20 m of other, at 20 °C");
    let one = long("jumper C1 20 m of same, at 20 °C");
    // loss of 46 m and 20 m at 146.9 MHz, and 20 % of it with a rectangular distribution; the mast is at 10 °C
    let u = |m: f64| 0.01 * m * 1.3 * 146.9137f64.sqrt() * 0.2 / 3f64.sqrt();
    close(one * one - apart * apart, 8.0 * u(46.0) * u(20.0), 0.3);
}

#[test]
fn the_words_of_a_link_stay_names() {
    let s = common::load(
        "band link 145.3 MHz\nstation hop { chain link on link { transmitter 5 W carrier, fm; run 5 m of rg-213; antenna 2 dBi } }\nchain need on 145 MHz { transmitter 5 W carrier, fm; run 5 m of rg-213; antenna 2 dBi }\n",
    );
    let errors: Vec<String> = codes(&s)
        .into_iter()
        .filter(|c| c.contains("keyword") || c.contains("unknown"))
        .collect();
    assert!(errors.is_empty(), "{errors:?}");
}

/// Bullington and the cascade of edges are 0.8 dB apart on the way to the quay (27.6 and 28.4 dB): where
/// that turns the verdict, it cannot be told.
#[test]
fn a_verdict_that_another_model_turns_is_not_given() {
    let verdict = |spread: &str| {
        let spread: &'static str = Box::leak(format!("spread {spread} dB").into_boxed_str());
        let s = load(&[CENTRE, ("spread 8 dB", spread)]);
        let h = hop(&s);
        let left = h.judged.as_ref().expect("judged").left_db;
        let u = h.judged.as_ref().expect("judged").u_db;
        (h.verdict, left - u, h.missing.clone())
    };
    let (sure, room, _) = verdict("8");
    assert_eq!(sure, LinkVerdict::Met);
    assert!(room > 0.8, "{room}");
    // 90 % of the places take 1.2816 times the spread: 0.4 dB of room are left
    let spread = 8.0 + (room - 0.4) / 1.281_55;
    let (open, room, missing) = verdict(&format!("{spread:.4}"));
    close(room, 0.4, 0.01);
    assert_eq!(
        (open, missing),
        (LinkVerdict::CannotTell, vec![Missing::OneTerrain])
    );
}

/// An antenna with a length radiates from its middle.
#[test]
fn an_antenna_radiates_from_its_middle() {
    let tip = load(&[("height 26 m agl", "height 26 m agl; size 2.7 m")]);
    let middle = load(&[CENTRE]);
    let ends = |s: &Snapshot| hop(s).terrain.as_ref().expect("a profile").ends_m;
    assert_eq!(ends(&tip), ends(&middle));
}
