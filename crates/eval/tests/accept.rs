//! Findings that the text accepts: one line, one code, a reason and an end; nothing more.

mod common;

use common::load;
use downlead_eval::Snapshot;

/// A station whose limit lies within the uncertainty, with a part that no chain passes.
const HILL: &str = "band 2m 145.3 MHz
station hill {
    protector SP1 0.10 dB ± 0.05 dB
    protector SP2 0.10 dB ± 0.05 dB
    run M1 28 m of half-inch-foam, since 2026-04-12
    chain out on 2m {
        transmitter 25 W ± 10 % carrier
        M1
        antenna 4.5 dBi ± 0.5 dB
        limit 36 W erp, \"L\"
    }
}
";

/// The hill with a line below the first line that begins so.
fn with(after: &str, line: &str) -> String {
    let at = HILL.find(after).expect("a line");
    let end = at + HILL[at..].find('\n').expect("a line's end");
    format!("{}\n{line}{}", &HILL[..end], &HILL[end..])
}

/// `code@line` of what is found, and of what is accepted.
fn found(s: &Snapshot) -> (Vec<String>, Vec<String>) {
    let text = s.files()[0].text();
    let shown = |d: &downlead_base::Diagnostic| {
        let (_, at) = s.place(d.primary.loc).expect("a place");
        let line = text[..at.start as usize].matches('\n').count() + 1;
        format!("{}@{line}", d.code.id)
    };
    let f = s.found();
    let wanted = |d: &&downlead_base::Diagnostic| d.severity >= downlead_base::Severity::Warning;
    (
        f.diagnostics.iter().filter(wanted).map(shown).collect(),
        f.accepted.iter().map(|a| shown(&a.finding)).collect(),
    )
}

fn of(text: &str) -> (Vec<String>, Vec<String>) {
    found(&load(text))
}

#[test]
fn a_finding_of_the_line_above_is_accepted_and_no_other() {
    let (left, accepted) = of(HILL);
    assert_eq!(
        left,
        ["part-unused@3", "part-unused@4", "limit-cannot-tell@10"]
    );
    assert!(accepted.is_empty());
    let line = "    accept part-unused \"spare, kept in the hut\" until 2027-06-30";
    let (left, accepted) = of(&with("protector SP1", line));
    assert_eq!(left, ["part-unused@5", "limit-cannot-tell@11"]);
    assert_eq!(accepted, ["part-unused@3"]);
    // in a chain, beside the line, and two of them
    let beside = HILL.replace(
        "\"L\"\n",
        "\"L\"; accept limit-cannot-tell \"sweep booked\" until 2027-03-01\n",
    );
    let (left, accepted) = of(&beside);
    assert_eq!(left, ["part-unused@3", "part-unused@4"]);
    assert_eq!(accepted, ["limit-cannot-tell@10"]);
}

#[test]
fn the_result_is_the_same_to_the_last_bit() {
    let erp = |text: &str| {
        let s = load(text);
        let (_, _, r) = &s.scopes()[0].items()[1];
        format!("{:?}", r.chains[0].bands[0].limits[0].margin_db)
    };
    let line = "        accept limit-cannot-tell \"sweep booked\" until 2027-03-01";
    assert_eq!(erp(HILL), erp(&with("limit 36 W", line)));
}

#[test]
fn the_first_line_of_a_block_is_about_the_line_that_opens_it() {
    let text = "band 2m 145.3 MHz
station s {
    protector SP1 {
        accept part-unused \"spare\" until 2027-01-01
        loss 0.1 dB
    }
    chain c on 2m { transmitter 5 W; antenna 2 dBi }
}
";
    let (left, accepted) = of(text);
    assert_eq!(accepted, ["part-unused@3"]);
    assert!(left.is_empty(), "{left:?}");
    // after the block it is about the head, never about all lines in it
    let after = "band 2m 145.3 MHz
station s {
    chain c on 2m {
        transmitter 25 W ± 10 % carrier
        antenna 2.15 dBi ± 1 dB
        limit 25 W erp, \"L\"
    }
    accept limit-cannot-tell \"all of the chain\" until 2027-01-01
}
";
    let (left, accepted) = of(after);
    assert_eq!(left, ["limit-cannot-tell@6", "accept-not-needed@8"]);
    assert!(accepted.is_empty());
}

#[test]
fn at_the_left_margin_the_item_above_is_meant() {
    let text = "band 2m 433 MHz\naccept frequency-off-band \"the club calls it so\" until 2027-01-01\n\nchain c on 2m {\n    transmitter 5 W\n    antenna 2 dBi\n}\n";
    let (left, accepted) = of(text);
    assert_eq!(
        (left, accepted),
        (vec![], vec!["frequency-off-band@1".to_owned()])
    );
}

#[test]
fn without_reason_or_end_nothing_is_accepted() {
    for (line, message) in [
        (
            "accept part-unused until 2027-01-01",
            "The reason follows in quotes.",
        ),
        (
            "accept part-unused \" \" until 2027-01-01",
            "The reason stands in the quotes.",
        ),
        (
            "accept part-unused \"spare\"",
            "`until` and its last day follow",
        ),
        (
            "accept part-unused \"spare\" until",
            "The last day follows `until`.",
        ),
        ("accept", "The code of the finding follows."),
        (
            "accept part-unused \"spare\" until 2027-01-01 today",
            "`today` has no meaning",
        ),
    ] {
        let s = load(&with("protector SP1", &format!("    {line}")));
        let all = s.diagnostics();
        let errors: Vec<&str> = all
            .iter()
            .filter(|d| d.severity == downlead_base::Severity::Error)
            .map(|d| &*d.message)
            .collect();
        assert_eq!(errors.len(), 1, "{line}: {errors:?}");
        assert!(errors[0].starts_with(message), "{line}: {errors:?}");
        assert!(all.iter().any(|d| d.code.id == "part-unused"), "{line}");
        assert!(s.found().accepted.is_empty(), "{line}");
    }
}

#[test]
fn an_error_and_an_exceeded_limit_stay() {
    let over = HILL.replace("limit 36 W", "limit 10 W");
    let line = "\"L\"\n        accept limit-not-met \"we know\" until 2027-01-01\n";
    let (left, accepted) = of(&over.replace("\"L\"\n", line));
    assert!(left.contains(&"limit-not-met@10".to_owned()), "{left:?}");
    assert!(left.contains(&"accept-refused@11".to_owned()), "{left:?}");
    assert!(accepted.is_empty());
    let typo = with(
        "protector SP1",
        "    accept part-unsed \"x\" until 2027-01-01",
    );
    let d = load(&typo).diagnostics();
    let d = d
        .iter()
        .find(|d| d.code.id == "accept-refused")
        .expect("said");
    assert_eq!(d.fixes[0].title, "write `part-unused`");
}

#[test]
fn after_its_last_day_the_finding_is_back() {
    // the newest date of the text is that of the run
    let line = "    accept part-unused \"spare\" until 2026-04-11";
    let (left, accepted) = of(&with("protector SP1", line));
    assert_eq!(left[..2], ["part-unused@3", "accept-ended@4"]);
    assert!(accepted.is_empty());
    // on the day itself it holds
    let (_, accepted) = of(&with("protector SP1", &line.replace("-11", "-12")));
    assert_eq!(accepted, ["part-unused@3"]);
    // a given day counts instead
    let mut s = load(&with(
        "protector SP1",
        &line.replace("2026-04-11", "2027-01-01"),
    ));
    s.set_as_of(Some("2027-01-02".to_owned()));
    assert_eq!(found(&s).0[..2], ["part-unused@3", "accept-ended@4"]);
    s.set_as_of(Some("2027-01-01".to_owned()));
    assert_eq!(found(&s).1, ["part-unused@3"]);
}

#[test]
fn what_nothing_needs_is_said_and_can_be_removed() {
    let line = "    accept part-unused \"spare\" until 2027-01-01";
    let text = with("run M1", line);
    let s = load(&text);
    let all = s.diagnostics();
    let d = all
        .iter()
        .find(|d| d.code.id == "accept-not-needed")
        .expect("said");
    let e = &d.fixes[0].edits[0];
    let (_, at) = s.place(e.loc).expect("a place");
    let mut fixed = text.clone();
    fixed.replace_range(at.range(), &e.text);
    assert_eq!(fixed, HILL);
    // while the item has an error nothing is known of its findings
    let broken = text.replace("antenna 4.5 dBi", "antenna 4.5 dBx");
    assert!(
        !found(&load(&broken))
            .0
            .iter()
            .any(|f| f.starts_with("accept-not-needed"))
    );
    // findings of the history are judged where the history is known
    let history = with("run M1", &line.replace("part-unused", "length-mistyped"));
    assert!(
        !found(&load(&history))
            .0
            .iter()
            .any(|f| f.starts_with("accept-not-needed"))
    );
}

#[test]
fn editing_gives_what_loading_gives() {
    let line = "    accept part-unused \"spare\" until 2027-01-01";
    let text = with("protector SP1", line);
    let mut s = load(&text);
    struct None;
    impl downlead_station::Loader for None {
        fn read(&self, _: &str) -> Result<std::sync::Arc<str>, downlead_station::LoadError> {
            Err(downlead_station::LoadError::NotFound)
        }
    }
    let at = text.find("accept").expect("there") as u32;
    s.edit(0, downlead_base::Span::new(at, at + 6), "acept", &None);
    assert_eq!(found(&s), found(&load(&text.replace("accept", "acept"))));
    s.edit(0, downlead_base::Span::new(at, at + 5), "accept", &None);
    assert_eq!(found(&s), found(&load(&text)));
}
