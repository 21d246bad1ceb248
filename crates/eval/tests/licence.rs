//! Licences and rules: the verdicts of the demo scenario under its licence, published check values,
//! and what is never called met.

mod common;

use common::{MAIN, load, load_from};
use downlead_eval::Snapshot;
use downlead_eval::licence::{RuleResult, RuleVerdict, StationRules};
use downlead_report::Reports as _;
use downlead_testkit::{Files, examples};

/// All clause results of a snapshot, with chain and band.
fn rules(s: &Snapshot) -> Vec<(String, &RuleResult)> {
    let mut out = Vec::new();
    for scope in s.scopes() {
        for (_, _, r) in scope.items() {
            for c in &r.chains {
                for b in &c.bands {
                    out.extend(b.rules.iter().map(|x| (b.band.to_string(), x)));
                }
            }
        }
    }
    out
}

fn site(s: &Snapshot) -> &StationRules {
    s.scopes()
        .iter()
        .flat_map(downlead_eval::Scope::items)
        .find_map(|(_, _, r)| r.rules.as_deref())
        .expect("a station under rules")
}

fn codes(s: &Snapshot) -> Vec<&'static str> {
    s.diagnostics().iter().map(|d| d.code.id).collect()
}

/// A revision of the demo station under its licence, without its `limit` lines.
fn revision(n: u8) -> Snapshot {
    let read = |f: &str| std::fs::read_to_string(examples().0.join(f)).expect("an example");
    let text: String = read(&format!("pellgarrow/rev{n}.downlead"))
        .lines()
        .filter(|l| !l.trim_start().starts_with("limit"))
        .map(|l| format!("{}\n", l.replace("../thrennock/", "thrennock/")))
        .collect();
    let papers = read("licence/papers.downlead");
    let licence = papers
        .split("\nlicence ")
        .nth(1)
        .and_then(|t| t.split("\nrules ").next())
        .expect("the licence");
    let text = text.replacen(
        "    ground 612 m amsl\n",
        "    ground 612 m amsl\n    under tso-14-0093\n",
        1,
    );
    load_from(
        &Files::default()
            .with(MAIN, format!("{text}\nlicence {licence}"))
            .with(
                "thrennock/cables.downlead",
                read("thrennock/cables.downlead"),
            )
            .with(
                "thrennock/instruments.downlead",
                read("thrennock/instruments.downlead"),
            ),
    )
}

/// Verdicts and margins of the four revisions, computed apart from the program (the margins of
/// `examples/pellgarrow/expected.json`, which `tests/tools/scenario_numbers.py` writes).
#[test]
fn the_four_revisions_under_their_licence() {
    use RuleVerdict::{CannotTell, Met, NotMet};
    let text = std::fs::read_to_string(examples().0.join("pellgarrow/expected.json")).expect("it");
    let expected: serde_json::Value = serde_json::from_str(&text).expect("JSON");
    let want = [
        (1, [CannotTell, CannotTell]),
        (2, [Met, Met]),
        (3, [CannotTell, NotMet]),
        (4, [Met, Met]),
    ];
    for (n, verdicts) in want {
        let s = revision(n);
        let all = rules(&s);
        assert_eq!(all.len(), 2, "rev {n}: {all:#?}");
        for ((band, verdict), cite) in ["2m", "70cm"]
            .into_iter()
            .zip(verdicts)
            .zip(["clause 4", "clause 5"])
        {
            let found = all.iter().find(|r| r.0 == band).expect("the band").1;
            assert_eq!(found.verdict, verdict, "rev {n} {band}: {found:?}");
            assert_eq!(&*found.cite, cite);
            let chains = expected[format!("rev{n}")]["chains"]
                .as_array()
                .expect("chains");
            let chain = chains
                .iter()
                .find(|c| c["band"] == band && c.get("margin_db").is_some())
                .expect("the chain");
            let margin = chain["margin_db"].as_f64().expect("a margin");
            let j = found.judged.as_ref().expect("judged");
            assert!(
                (j.margin_db - margin).abs() < 0.02,
                "{} {margin}",
                j.margin_db
            );
        }
        let fixed: Vec<_> = site(&s).fixed.iter().map(|f| f.verdict).collect();
        assert_eq!(fixed, [Met, Met], "rev {n}");
        assert_eq!(site(&s).conditions.len(), 1);
        assert!(site(&s).unused.is_empty());
    }
}

/// The same engine as a `limit` in a chain: same numbers, same probability, same words.
#[test]
fn a_clause_agrees_with_a_limit_in_the_chain() {
    for n in [1, 2, 3, 4] {
        let s = Snapshot::load(&[format!("pellgarrow/rev{n}.downlead")], &examples());
        let under = revision(n);
        let limits = s.scopes()[0]
            .items()
            .iter()
            .flat_map(|(_, _, r)| &r.chains)
            .flat_map(|c| &c.bands)
            .flat_map(|b| b.limits.iter().map(|l| (b.band.to_string(), l)));
        let mut seen = 0;
        for (band, l) in limits {
            let all = rules(&under);
            let r = all.iter().find(|r| r.0 == band).expect("the band").1;
            let j = r.judged.as_ref().expect("judged");
            assert_eq!(
                (
                    j.value_w,
                    j.margin_db,
                    j.uncertainty_db,
                    j.exceeded,
                    j.safe_w
                ),
                (
                    l.value_w,
                    l.margin_db,
                    l.uncertainty_db,
                    l.exceeded,
                    l.safe_w
                )
            );
            assert_eq!(r.verdict.word(), l.verdict.limit_word());
            seen += 1;
        }
        assert_eq!(seen, 2);
    }
}

/// The rules of the example at a height whose uncertainty spans a step: both rows are judged.
#[test]
fn a_height_that_spans_a_step_is_judged_by_both_rows() {
    let s = Snapshot::load(&["licence/hill.downlead".to_owned()], &examples());
    let all = rules(&s);
    let step = all
        .iter()
        .find(|r| &*r.1.cite == "3.5")
        .expect("the steps")
        .1;
    assert_eq!(step.verdict, RuleVerdict::Met);
    assert_eq!(step.judged.as_ref().map(|j| j.limit_w), Some(30.0));
    // 30 W cannot be told at 40 W of transmitter power, 45 W is met: the height decides
    let read = |f: &str| std::fs::read_to_string(examples().0.join(f)).expect("an example");
    let text = read("licence/hill.downlead")
        .replace("transmitter TX1 32 W", "transmitter TX1 38 W")
        .replace("../thrennock/", "thrennock/");
    let s = load_from(
        &Files::default()
            .with(MAIN, text)
            .with("papers.downlead", read("licence/papers.downlead"))
            .with(
                "thrennock/cables.downlead",
                read("thrennock/cables.downlead"),
            )
            .with(
                "thrennock/instruments.downlead",
                read("thrennock/instruments.downlead"),
            ),
    );
    let all = rules(&s);
    let step = all
        .iter()
        .find(|r| &*r.1.cite == "3.5")
        .expect("the steps")
        .1;
    assert_eq!(step.verdict, RuleVerdict::CannotTell);
    assert!(step.why[0].contains("HAAT"), "{:?}", step.why);
    // 40.5 W and 25.7 W of EIRP together are above 10 W
    let duty = &site(&s).duties[0];
    assert!(duty.reached && duty.threshold_w == 10.0, "{duty:?}");
}

/// One transmitter with a lossless pad of 0 dB and an antenna of 2.15 dBi, under one clause.
fn one(clause: &str, watts: &str, under: &str, antenna: &str) -> Snapshot {
    load(&format!(
        "rules r {{\n    dated 2026-01-15\n    class a, b\n    ask q \"Is it so?\"\n    {clause}\n}}\n\
         station s {{\n    under r, class a {under}\n    chain c on 146.9 MHz {{\n        transmitter {watts}\n        \
         pad 0 dB\n        antenna {{\n            gain 2.15 dBi\n            {antenna}\n        }}\n    }}\n}}\n"
    ))
}

fn only(s: &Snapshot) -> RuleResult {
    let all = rules(s);
    assert_eq!(all.len(), 1, "{all:#?}\n{:#?}", s.diagnostics());
    all[0].1.clone()
}

/// 47 CFR 22.759(b): 557418/h² W; at 150 m 24.77413 W. 47 CFR 90.729(b): 50 W less 20 log(h/7) dB; at
/// 30 m 2.722222 W. 47 CFR 90.205: ERPmax (ref/actual)², 500 W, 33 m, 60 m: 151.25 W.
#[test]
fn laws_give_the_published_values() {
    for (clause, height, want) in [
        (
            "limit 557418 W * (1 m / haat)^2 erp, \"x\", confidence high",
            "150 m",
            24.774_13,
        ),
        (
            "limit 50 W * (7 m / haat)^2 erp above 7 m haat, \"x\", confidence high",
            "30 m",
            2.722_222,
        ),
        (
            "limit 500 W * (33 m / haat)^2 erp above 33 m haat, \"x\", confidence high",
            "60 m",
            151.25,
        ),
    ] {
        let s = one(
            clause,
            "1 W carrier, fm",
            "",
            &format!("height {height} haat"),
        );
        let j = only(&s).judged.expect("judged");
        assert!((j.limit_w - want).abs() < 1e-4, "{} {want}", j.limit_w);
    }
}

/// 9.15 W ERP is 15 W EIRP (91 FR 1405), 10 W EIRP is 6.1 W ERP (German and British licences), and 611 W
/// ERP is printed as 1 kW EIRP (47 CFR 97.313(f)): within 0.02 dB the verdict is `at the limit`.
#[test]
fn pairs_printed_in_law_are_at_the_limit_of_each_other() {
    for (limit, power, verdict) in [
        // an antenna of 2.15 dBi: ERP is the power itself
        ("15 W eirp", "9.15 W", RuleVerdict::AtLimit),
        ("6.1 W erp", "6.1 W", RuleVerdict::AtLimit),
        ("10 W eirp", "6.1 W", RuleVerdict::AtLimit),
        ("1 kW eirp", "611 W", RuleVerdict::AtLimit),
        ("15 W eirp", "9.0 W", RuleVerdict::Met),
        ("15 W eirp", "9.3 W", RuleVerdict::NotMet),
    ] {
        let s = one(
            &format!("limit {limit} carrier, \"x\", confidence high"),
            &format!("{power} carrier, fm"),
            "",
            "",
        );
        assert_eq!(only(&s).verdict, verdict, "{limit} at {power}");
    }
}

/// A class with 10 W ERP radiates 16.4 W EIRP, so the threshold of 10 W EIRP of the same country fires.
#[test]
fn a_small_class_reaches_the_threshold() {
    let s = one(
        "limit 10 W erp, \"x\", confidence high\n    threshold 10 W eirp total, \"y\", then \"notify\", confidence high",
        "9 W carrier, fm",
        "",
        "",
    );
    assert_eq!(only(&s).verdict, RuleVerdict::Met);
    assert!(site(&s).duties[0].reached);
    assert!((site(&s).duties[0].value_w - 9.0 * 1.64).abs() < 0.01);
}

/// AM of 4 W carrier is 16 W PEP (DEF15), and its mean 6 W (DEF16).
#[test]
fn the_kind_of_power_is_that_of_the_clause() {
    for (kind, want) in [("carrier", 4.0), ("pep", 16.0), ("mean", 6.0)] {
        let s = one(
            &format!("limit 100 W output {kind}, \"x\", confidence high"),
            "4 W carrier, am",
            "",
            "",
        );
        let j = only(&s).judged.expect("judged");
        assert!((j.value_w - want).abs() < 1e-9, "{kind} {}", j.value_w);
    }
    // `output` is the power at the transmitter, whatever the line loses
    let text = "rules r { limit 100 W output, \"x\", confidence high }\nstation s {\n    under r\n    chain c on 146.9 MHz {\n        \
                transmitter 80 W pep\n        pad 3 dB\n        antenna 2.15 dBi\n    }\n}\n";
    let s = load(text);
    assert!((only(&s).judged.expect("judged").value_w - 80.0).abs() < 1e-9);
}

#[test]
fn what_is_not_stated_is_not_judged() {
    let high = "confidence high";
    // no height
    let s = one(
        &format!("limit 50 W * (7 m / haat)^2 erp, \"x\", {high}"),
        "1 W carrier, fm",
        "",
        "",
    );
    assert_eq!(only(&s).verdict, RuleVerdict::CannotJudge);
    assert!(codes(&s).contains(&"cannot-judge"));
    // DC input
    let s = one(
        &format!("limit 250 W dc-input, \"x\", {high}"),
        "1 W carrier, fm",
        "",
        "",
    );
    assert_eq!(only(&s).verdict, RuleVerdict::CannotJudge);
    // its alternative is judged instead
    let s = one(
        &format!("limit 250 W dc-input, \"x\", {high}\n    limit 560 W output pep, \"y\", {high}"),
        "1 W carrier, fm",
        "",
        "",
    );
    assert_eq!(&*only(&s).cite, "y");
    // another frequency, another class
    for clause in [
        "limit 5 W erp on 430 MHz to 440 MHz, \"x\", confidence high",
        "limit 5 W erp, class b, \"x\", confidence high",
    ] {
        let s = one(clause, "1 W carrier, fm", "", "");
        assert_eq!(only(&s).verdict, RuleVerdict::NoRule, "{clause}");
        assert!(codes(&s).contains(&"no-rule"));
    }
    // the edges of a range belong to it
    let s = one(
        "limit 5 W erp on 146.9 MHz to 148 MHz, \"x\", confidence high",
        "1 W carrier, fm",
        "",
        "",
    );
    assert_eq!(only(&s).verdict, RuleVerdict::Met);
}

#[test]
fn a_question_is_asked_where_it_changes_a_verdict() {
    let clause = "limit 5 W erp carrier, if q, \"x\", confidence high\n    limit 50 W erp carrier, \"y\", confidence high";
    let s = one(clause, "20 W carrier, fm", "", "");
    assert_eq!(rules(&s)[0].1.verdict, RuleVerdict::CannotJudge);
    assert_eq!(&*site(&s).questions[0].text, "Is it so?");
    let s = one(
        clause,
        "20 W carrier, fm",
        "{ q no, \"QY4TRA 2026-05-02\" }",
        "",
    );
    assert_eq!(only(&s).verdict, RuleVerdict::Met);
    let s = one(
        clause,
        "20 W carrier, fm",
        "{ q yes, \"QY4TRA 2026-05-02\" }",
        "",
    );
    assert_eq!(rules(&s)[0].1.verdict, RuleVerdict::NotMet);
    // at 1 W it is met either way
    let s = one(clause, "1 W carrier, fm", "", "");
    assert!(rules(&s).iter().all(|r| r.1.verdict == RuleVerdict::Met));
}

#[test]
fn only_a_clause_that_bears_here_replaces_another() {
    let two = |on: &str| {
        format!(
            "limit 5 W erp carrier, \"x\", confidence high\n    limit 50 W erp carrier on {on}, \"y\", instead of \"x\", confidence high"
        )
    };
    let s = one(&two("144 MHz to 148 MHz"), "20 W carrier, fm", "", "");
    assert_eq!(only(&s).verdict, RuleVerdict::Met);
    let s = one(&two("430 MHz to 440 MHz"), "20 W carrier, fm", "", "");
    assert_eq!(only(&s).verdict, RuleVerdict::NotMet);
}

#[test]
fn a_clause_of_low_confidence_only_warns() {
    let s = one(
        "limit 5 W erp carrier, \"x\", confidence low",
        "20 W carrier, fm",
        "",
        "",
    );
    assert_eq!(only(&s).verdict, RuleVerdict::NotMet);
    let d = s.diagnostics();
    let d = d.iter().find(|d| d.code.id == "limit-not-met").expect("it");
    assert_eq!(d.severity.name(), "warning");
}

#[test]
fn dates_come_from_the_text() {
    let of = |until: &str| {
        load(&format!(
            "licence l {{\n    dated 2014-03-02\n    until {until}\n    limit 30 W erp carrier, \"4\"\n}}\nstation s {{\n    under l\n    \
             chain c on 146.9 MHz {{\n        transmitter 20 W carrier, fm, read 2026-07-04\n        pad 0 dB\n        antenna 2.15 dBi\n    }}\n}}\n"
        ))
    };
    let ended = of("2026-07-03");
    let r = only(&ended);
    assert_eq!(r.verdict, RuleVerdict::CannotJudge);
    assert!(r.why[0].contains("ended on 2026-07-03"));
    assert_eq!(only(&of("2026-07-04")).verdict, RuleVerdict::Met);
    assert_eq!(only(&of("2026-07")).verdict, RuleVerdict::Met);
}

/// New words stand for themselves at the beginning of their own lines only: names that were legal
/// stay so.
#[test]
fn the_new_words_are_still_names() {
    let s = load(
        "band class 145.3 MHz\nchain under on class {\n    transmitter 5 W\n    pad limit-x 1 dB\n    antenna 2 dBi\n}\n\
         chain licence on class {\n    transmitter 5 W\n    antenna 2 dBi\n}\n",
    );
    let errors: Vec<_> = s
        .diagnostics()
        .into_iter()
        .filter(|d| d.severity.name() == "error")
        .map(|d| d.message)
        .collect();
    assert!(errors.is_empty(), "{errors:#?}");
}

/// What a station rests on: an edit of the licence in another file changes its verdict.
#[test]
fn an_edit_of_the_licence_reaches_the_station() {
    let of = |w: u32| format!("licence l {{ limit {w} W erp carrier, \"4\" }}\n");
    let station = "use \"l.downlead\"\nstation s {\n    under l\n    chain c on 146.9 MHz {\n        transmitter 20 W carrier, fm\n        pad 0 dB\n        antenna 2.15 dBi\n    }\n}\n";
    let files = Files::default()
        .with(MAIN, station)
        .with("l.downlead", of(30));
    let mut s = load_from(&files);
    assert_eq!(only(&s).verdict, RuleVerdict::Met);
    let file = s
        .files()
        .iter()
        .position(|f| f.path == "l.downlead")
        .expect("it");
    let at = u32::try_from(of(30).find("30").expect("a figure")).expect("short");
    s.edit(file, downlead_base::Span::new(at, at + 2), "10", &files);
    assert_eq!(only(&s).verdict, RuleVerdict::NotMet);
}

/// Every set of the library loads, has an edition and a date, and each of its clauses a citation and a
/// confidence; each can be named by a station.
#[test]
fn the_rules_of_the_library_load_cite_and_date() {
    use downlead_station::model::Meaning;
    let lib = downlead_station::library();
    let mut clauses = 0;
    let mut sets = 0;
    for (.., low) in &lib.items {
        let Meaning::Rules(set) = &low.meaning else {
            continue;
        };
        sets += 1;
        assert!(low.diagnostics.is_empty(), "{:?}", low.diagnostics);
        assert!(set.edition.is_some() && set.jurisdiction.is_some() && set.service.is_some());
        assert!(
            set.dated.as_deref().is_some_and(|d| d.len() == 10),
            "{}",
            set.name.text
        );
        for c in &set.clauses {
            assert!(
                c.cite.is_some() && c.confidence.is_some(),
                "{}",
                set.name.text
            );
            clauses += 1;
        }
        let s = load(&format!(
            "station s {{\n    under {}\n    chain c on 146.9 MHz {{\n        transmitter 0.001 W carrier, fm\n        pad 0 dB\n        \
             antenna 2.15 dBi\n    }}\n}}\n",
            set.name.text
        ));
        assert!(!codes(&s).contains(&"unknown-rules"), "{}", set.name.text);
        assert_eq!(&*site(&s).sets[0].name, &*set.name.text);
    }
    // 147 rows; rows of steps are one clause, two where a law goes with them
    assert_eq!((sets, clauses), (20, 121));
}

/// The German class N at its full 10 W ERP on 10 m radiates 16.4 W EIRP, so the threshold of the same
/// country, 10 W EIRP, is reached (AFuV Anlage 1, BEMFV § 9).
#[test]
fn class_n_on_ten_metres_must_notify() {
    let s = load(
        "station s {\n    under de-amateur, class n\n    chain c on 28.5 MHz {\n        transmitter 10 W pep\n        pad 0 dB\n        \
         antenna 2.15 dBi\n    }\n}\n",
    );
    let r = only(&s);
    assert_eq!(r.verdict, RuleVerdict::AtLimit);
    let duty = &site(&s).duties[0];
    assert!(
        duty.reached && (duty.value_w - 16.4).abs() < 0.01,
        "{duty:?}"
    );
    assert!(duty.text.contains("notify"));
}

/// The American limit of 9.15 W ERP holds since 13 February 2026 (91 FR 1405).
#[test]
fn sixty_metres_in_the_united_states() {
    let of = |w: &str| {
        load(&format!(
            "station s {{\n    under us-amateur, class general\n    chain c on 5.36 MHz {{\n        transmitter {w} pep\n        pad 0 dB\n        \
             antenna 2.15 dBi\n    }}\n}}\n"
        ))
    };
    let worst = |s: &Snapshot| rules(s)[0].1.clone();
    assert_eq!(worst(&of("9.0 W")).verdict, RuleVerdict::Met);
    let r = worst(&of("20 W"));
    assert_eq!(r.verdict, RuleVerdict::NotMet);
    assert!(r.cite.contains("91 FR 1405"), "{}", r.cite);
}

/// The words of the verdicts of all clauses of the first station, chain by chain.
fn verdicts(text: &str) -> Vec<&'static str> {
    let report = load(text).report();
    let bands = report.stations[0].chains.iter().flat_map(|c| &c.bands);
    let rules = bands.flat_map(|b| &b.rules);
    rules.map(|r| r.verdict.word()).collect()
}

/// Rules whose clauses go by classes, and a station that states none: every class might forbid what
/// the clause without a class allows.
#[test]
fn a_class_that_is_not_stated_cannot_be_judged() {
    let text = |class: &str| {
        format!(
            "rules r1 {{\n    dated 2026-01-15\n    class a, b\n    limit 200 W output carrier on 140 MHz to 150 MHz, \"1\", confidence high\n    limit 10 W output carrier on 140 MHz to 150 MHz, class b, \"2\", confidence high\n}}\nstation s {{\n    under r1{class}\n    chain c on 145.3 MHz transmit {{\n        transmitter 90 W carrier, fm\n        antenna 2.15 dBi\n    }}\n}}\n"
        )
    };
    assert!(verdicts(&text("")).contains(&"cannot-judge"));
    assert!(!verdicts(&text(", class a")).contains(&"cannot-judge"));
    assert!(verdicts(&text(", class b")).contains(&"not-met"));
}

/// 133 W and 109 W of EIRP are more than 150 W together, though each is less.
#[test]
fn a_total_of_several_transmitters_is_not_said_to_be_met() {
    let text = |more: &str| {
        format!(
            "licence l1 {{\n    limit 150 W eirp carrier total on 140 MHz to 450 MHz, \"tot\"\n}}\nstation s {{\n    under l1\n    chain c2 on 145.3 MHz transmit {{\n        transmitter 50 W carrier, fm\n        antenna 3 dBi\n    }}\n{more}}}\n"
        )
    };
    assert_eq!(verdicts(&text("")), ["met"]);
    let more = "    chain c70 on 433 MHz transmit {\n        transmitter 50 W carrier, fm\n        antenna 3 dBi\n    }\n";
    assert_eq!(verdicts(&text(more)), ["cannot-judge", "cannot-judge"]);
}

/// A name that is near none: the names of the library, and nothing that invents a clause.
#[test]
fn unknown_rules_list_those_of_the_library() {
    let s = load(
        "station s {\n    under national-rules\n    chain c on 145.3 MHz transmit {\n        transmitter 9 W carrier, fm\n        antenna 2.15 dBi\n    }\n}\n",
    );
    let found = s.diagnostics();
    let d = found
        .iter()
        .find(|d| d.code.id == "unknown-rules")
        .expect("it is not defined");
    assert!(
        d.help[0].contains("`us-amateur`") && d.help[0].contains("`de-amateur`"),
        "{d:?}"
    );
    assert!(d.help.iter().all(|h| !h.contains("30 W")), "{d:?}");
}

/// A clause of power does not say that a class may send on the frequency; every set of the library
/// lists that as not judged.
#[test]
fn rules_of_the_library_say_that_allocations_are_not_judged() {
    let s = load(
        "station s {\n    under us-amateur, class novice\n    chain c on 27.2 MHz transmit {\n        transmitter 9 W carrier, fm\n        antenna 2.15 dBi\n    }\n}\n",
    );
    let report = s.report();
    let rules = report.stations[0]
        .rules
        .as_ref()
        .expect("it is under rules");
    assert!(
        rules
            .conditions
            .iter()
            .any(|c| c.text.contains("allocations")),
        "{:?}",
        rules.conditions
    );
}

/// A range written backwards holds nowhere: it is an error, as in a band.
#[test]
fn a_clauses_range_runs_upwards() {
    let s =
        load("licence l {\n    limit 30 W erp carrier on 150 MHz to 140 MHz, \"clause 1\"\n}\n");
    let found = s.diagnostics();
    let d = found
        .iter()
        .find(|d| d.code.id == "impossible-value")
        .expect("it is backwards");
    assert!(
        d.message.contains("from the lower to the higher frequency"),
        "{d:?}"
    );
}

/// Every frequency that is sent must be one that the paper fixes; one that it fixes need not be used.
#[test]
fn a_frequency_beside_the_fixed_ones_is_found() {
    let text = |second: &str, more: &str| {
        format!(
            "licence l {{\n    limit 50 W erp carrier, \"1\"\n    fixed frequency 145.3 MHz, within 1 kHz, \"2\"\n{more}}}\nstation s {{\n    under l\n    chain a on 145.3 MHz transmit {{\n        transmitter 9 W carrier, fm\n        antenna 2.15 dBi\n    }}\n    chain b on {second} transmit {{\n        transmitter 9 W carrier, fm\n        antenna 2.15 dBi\n    }}\n}}\n"
        )
    };
    let moved = |t: &str| {
        load(t)
            .diagnostics()
            .iter()
            .any(|d| d.code.id == "fixed-moved")
    };
    assert!(moved(&text("145.302 MHz", "")));
    assert!(!moved(&text("145.3 MHz", "")));
    let further = "    fixed frequency 433.1 MHz, within 1 kHz, \"3\"\n";
    assert!(!moved(&text("145.3 MHz", further)));
    assert!(moved(&text("433.2 MHz", further)));
}
