//! Licences and rules: what trials by others found.

mod common;

use common::load;
use downlead_eval::Snapshot;
use downlead_eval::licence::{RuleResult, RuleVerdict};
use downlead_eval::result::BandResult;

/// All clause results of a snapshot, each with its frequency.
fn rules(s: &Snapshot) -> Vec<(BandResult, RuleResult)> {
    let mut out = Vec::new();
    for scope in s.scopes() {
        for (_, _, r) in scope.items() {
            for b in r.chains.iter().flat_map(|c| c.bands.iter()) {
                out.extend(b.rules.iter().map(|x| (b.clone(), x.clone())));
            }
        }
    }
    out
}

fn verdicts(s: &Snapshot) -> Vec<(f64, RuleVerdict)> {
    let all = rules(s);
    all.iter().map(|(b, r)| (b.hz / 1e6, r.verdict)).collect()
}

fn messages(s: &Snapshot, code: &str) -> Vec<String> {
    let all = s.diagnostics();
    let mine = all.iter().filter(|d| d.code.id == code);
    mine.map(|d| d.message.clone()).collect()
}

/// A transmitter into an antenna of 2.15 dBi, so that the ERP is its power, on a band that is a range.
fn band(clauses: &str, class: &str) -> Snapshot {
    load(&format!(
        "band wide 3.5 MHz to 4 MHz\nrules r {{\n    dated 2026-01-15\n    class a, b\n    {clauses}\n}}\n\
         station s {{\n    under r{class}\n    chain c on wide {{\n        transmitter 100 W pep\n        \
         pad 0 dB\n        antenna 2.15 dBi\n    }}\n}}\n"
    ))
}

const HIGH: &str = "confidence high";

/// A clause between the low end and the middle of the band, which neither of the two is in.
#[test]
fn a_clause_inside_a_band_is_judged_at_its_edges() {
    let s = band(
        &format!(
            "limit 400 W output pep, \"x\", {HIGH}\n    limit 5 W output pep on 3.6 MHz to 3.65 MHz, \"y\", {HIGH}"
        ),
        "",
    );
    let not_met: Vec<f64> = verdicts(&s)
        .into_iter()
        .filter(|v| v.1 == RuleVerdict::NotMet)
        .map(|v| v.0)
        .collect();
    assert_eq!(not_met, [3.6, 3.65]);
    let said = messages(&s, "limit-not-met");
    assert!(
        said.iter().any(|m| m.contains("wide at 3.6 MHz")),
        "{said:?}"
    );
    let points: Vec<_> = rules(&s).iter().filter_map(|(b, _)| b.point).collect();
    assert!(points.contains(&"edge"), "{points:?}");
    // of another class it bears on nothing, and the band has its three frequencies
    let s = band(
        &format!(
            "limit 400 W output pep, \"x\", {HIGH}\n    limit 5 W output pep on 3.6 MHz to 3.65 MHz, class b, \"y\", {HIGH}"
        ),
        ", class a",
    );
    assert_eq!(
        verdicts(&s),
        [3.5, 3.75, 4.0].map(|f| (f, RuleVerdict::Met))
    );
}

/// Clauses at the low end, the middle and the high end, and none between: that is not "met".
#[test]
fn a_gap_between_clauses_is_no_rule() {
    let s = band(
        &format!(
            "limit 400 W output pep on 3.5 MHz to 3.6 MHz, \"x\", {HIGH}\n    limit 400 W output pep on 3.7 MHz to 4 MHz, \"y\", {HIGH}"
        ),
        "",
    );
    let all = verdicts(&s);
    let gaps: Vec<f64> = all
        .iter()
        .filter(|v| v.1 == RuleVerdict::NoRule)
        .map(|v| v.0)
        .collect();
    assert_eq!(gaps.len(), 1, "{all:?}");
    assert!((gaps[0] - 3.65).abs() < 1e-9);
    assert!(messages(&s, "no-rule")[0].contains("3.65 MHz"));
    // a row without a clause has no text that could be sure
    let none = rules(&s);
    let none = none.iter().find(|r| r.1.verdict == RuleVerdict::NoRule);
    assert_eq!(none.expect("it").1.confidence, None);
}

/// A receive chain is under no clause: nothing is added to its frequencies.
#[test]
fn a_band_has_three_frequencies_where_no_clause_asks_for_more() {
    let s = load(&format!(
        "band wide 3.5 MHz to 4 MHz\nrules r {{ limit 5 W output pep on 3.6 MHz to 3.65 MHz, \"y\", {HIGH} }}\n\
         station s {{\n    under r\n    chain c on wide receive {{\n        antenna 2.15 dBi\n        pad 1 dB\n        \
         receiver sensitivity 0.2 uV sinad\n    }}\n}}\n"
    ));
    let bands: Vec<_> = s.scopes()[0]
        .items()
        .iter()
        .flat_map(|(_, _, r)| &r.chains)
        .flat_map(|c| c.bands.iter())
        .map(|b| b.point)
        .collect();
    assert_eq!(bands, [Some("low"), Some("middle"), Some("high")]);
}

/// A transmitter at one frequency under one clause.
fn one(clause: &str, power: &str) -> Snapshot {
    load(&format!(
        "rules r {{ {clause}, \"x\", {HIGH} }}\nstation s {{\n    under r\n    chain c on 146.9 MHz {{\n        \
         transmitter {power}\n        pad 0 dB\n        antenna 2.15 dBi\n    }}\n}}\n"
    ))
}

/// A clause that says no kind counts the peak envelope: it is judged where the same clause with `pep` is.
#[test]
fn a_clause_without_a_kind_is_judged_as_one_of_peak_envelope() {
    for power in [
        "20 W",
        "20 W, ssb",
        "20 W, fm",
        "20 W carrier",
        "20 W carrier, am",
        "20 W carrier, ssb",
        "20 W mean, ssb",
        "20 W pep",
        "20 W mean",
    ] {
        let of = |clause: &str| {
            let s = one(clause, power);
            let r = rules(&s).remove(0).1;
            (r.verdict, r.judged.map(|j| j.value_w))
        };
        assert_eq!(
            of("limit 30 W output"),
            of("limit 30 W output pep"),
            "{power}"
        );
    }
    // the envelope of AM may reach four times its carrier: without a mode nothing is met
    let s = one("limit 30 W output", "20 W carrier");
    assert_eq!(rules(&s)[0].1.verdict, RuleVerdict::CannotJudge);
}

/// Single sideband has no carrier; the mode is there.
#[test]
fn a_mode_without_a_carrier_is_not_called_a_missing_mode() {
    let s = one("limit 100 W output carrier", "60 W mean, ssb");
    let said = messages(&s, "power-kind-missing");
    assert!(said[0].contains("no carrier"), "{said:?}");
    assert!(!said[0].contains("without the mode"), "{said:?}");
    let s = one("limit 100 W output pep", "60 W carrier, ssb");
    let said = messages(&s, "power-kind-missing");
    assert!(said[0].contains("no carrier"), "{said:?}");
    // 60 W mean of speech are 300 W of peak envelope (the duty factor 0.2 of the reference)
    let s = one("limit 100 W output pep", "60 W mean, ssb");
    let j = rules(&s)[0].1.judged.clone().expect("judged");
    assert!((j.value_w - 300.0).abs() < 1e-9);
}

/// The output has no antenna, so it is not the dipole that is rounded.
#[test]
fn at_the_limit_of_the_output_speaks_of_no_dipole() {
    let said = |clause: &str| messages(&one(clause, "20 W pep"), "limit-cannot-tell").remove(0);
    let output = said("limit 20 W output pep");
    assert!(output.contains("at the 20.0 W"), "{output}");
    assert!(!output.contains("dipole"), "{output}");
    assert!(said("limit 20 W erp pep").contains("dipole"));
}

/// The built-in clause of 1500 W spans everything from 135.7 kHz on: "met" is said only where the
/// station says that the service is allocated.
#[test]
fn a_catch_all_is_met_only_where_the_service_is_allocated() {
    let at = |under: &str, mhz: &str| {
        let s = load(&format!(
            "station s {{\n    under us-amateur, class general {under}\n    chain c on {mhz} MHz {{\n        \
             transmitter 100 W pep\n        pad 0 dB\n        antenna 2.15 dBi\n    }}\n}}\n"
        ));
        rules(&s).remove(0).1
    };
    // 120 MHz is an aeronautical frequency
    let r = at("", "120");
    assert_eq!(r.verdict, RuleVerdict::MetIfAllocated);
    assert!(r.why[0].contains("allocated"), "{:?}", r.why);
    let said = "{ allocated 144 MHz to 148 MHz, \"47 CFR 97.301(a), QY4TRA 2026-05-02\" }";
    assert_eq!(at(said, "146.9").verdict, RuleVerdict::Met);
    assert_eq!(at(said, "120").verdict, RuleVerdict::MetIfAllocated);
    // what is exceeded is exceeded, allocated or not
    let s = load(
        "station s {\n    under us-amateur, class general\n    chain c on 120 MHz {\n        \
         transmitter 2000 W pep\n        pad 0 dB\n        antenna 2.15 dBi\n    }\n}\n",
    );
    assert_eq!(rules(&s)[0].1.verdict, RuleVerdict::NotMet);
}

/// Every clause of the library that spans several allocations carries the word: a band of the trade is
/// never a fifth of its frequency wide.
#[test]
fn wide_clauses_of_the_library_say_so() {
    use downlead_station::model::Frequencies;
    let s = load("station s {\n}\n");
    let env = s.scopes()[0].env();
    let mut seen = 0;
    for name in [
        "us-amateur",
        "au-amateur",
        "ca-amateur",
        "de-amateur",
        "uk-amateur",
        "us-part-90",
    ] {
        let set = env.rule_set(name).expect("a set of the library");
        for c in set.clauses.iter().filter(|c| c.is_limit()) {
            let wide = match &c.on {
                Frequencies::All => true,
                Frequencies::Range(low, high) => high / low > 1.2,
                Frequencies::Bands(_) => false,
            };
            // these questions ask for the schedule of the licence itself
            let asked = c
                .asks
                .as_ref()
                .is_some_and(|q| matches!(&*q.text, "general-power" | "primary"));
            assert_eq!(c.allocated, wide && !asked, "{name} {}", c.citation());
            seen += usize::from(c.allocated);
        }
    }
    assert!(seen >= 14, "{seen}");
}

/// A band of which a part is said to be allocated: the rest is not "met".
#[test]
fn the_edges_of_what_is_allocated_are_judged_too() {
    let s = load(&format!(
        "band wide 3.5 MHz to 4 MHz\nrules r {{ limit 400 W output pep, allocated, \"x\", {HIGH} }}\n\
         station s {{\n    under r {{\n        allocated 3.5 MHz to 3.6 MHz\n        allocated 3.7 MHz to 4 MHz\n    }}\n    \
         chain c on wide {{\n        transmitter 100 W pep\n        pad 0 dB\n        antenna 2.15 dBi\n    }}\n}}\n"
    ));
    let open: Vec<f64> = verdicts(&s)
        .into_iter()
        .filter(|v| v.1 == RuleVerdict::MetIfAllocated)
        .map(|v| v.0)
        .collect();
    assert_eq!(open.len(), 1, "{:?}", verdicts(&s));
    assert!((open[0] - 3.65).abs() < 1e-9);
}

/// A clause of the set on a segment, which bears on the station's class, shows that the service is there.
#[test]
fn a_clause_on_a_segment_shows_the_allocation() {
    let s = load(
        "station s {\n    under us-amateur, class general\n    chain c on 10.12 MHz {\n        \
         transmitter 100 W pep\n        pad 0 dB\n        antenna 2.15 dBi\n    }\n}\n",
    );
    // the 200 W of 10.1 MHz to 10.15 MHz, and the 1500 W of everything
    assert_eq!(
        verdicts(&s),
        [(10.12, RuleVerdict::Met), (10.12, RuleVerdict::Met)]
    );
}

/// A clause with an error is not there to be judged, and may be the one that decides.
#[test]
fn a_clause_with_an_error_is_said_where_the_station_is_under_it() {
    let fine = format!("limit 400 W output pep, \"x\", {HIGH}");
    assert!(messages(&band(&fine, ""), "cannot-judge").is_empty());
    let s = band(
        &format!("{fine}\n    limt 15 W output pep, \"y\", {HIGH}"),
        "",
    );
    let said = messages(&s, "cannot-judge");
    assert_eq!(
        said,
        ["A line of `r` has an error, so a clause of it may not be judged. This is not \"met\"."]
    );
}
