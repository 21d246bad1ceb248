//! What is wrong with network files, and with what is written about them: what it costs, and what is
//! said.

mod common;
#[path = "common/networks.rs"]
mod networks;

use common::{MAIN, load_from};
use downlead_eval::Snapshot;
use networks::{chains, files, near, one, said, with};

/// What is wrong with a file costs the part that is made of it, and no more.
#[test]
fn a_file_that_does_not_serve_costs_its_part() {
    let head = "chain c on 146.9 MHz {\n    transmitter TX1 100 W carrier\n    pad 1 dB ± 0.1 dB\n";
    let tail = "    antenna 2 dBi, swr 1.2\n}\n";
    let cases: &[(&str, &str, &str, &str)] = &[
        (
            "filter F1 from \"x.s2p\"",
            "# MHz S RI R 50\n1 0 0 .9 0 .9 0 0 0\n30 0 0 .9 0 .9 0 0 0\n",
            "network-file",
            "`x.s2p` reaches from 1 MHz to 30 MHz; 146.9 MHz lies outside, and nothing is extrapolated.",
        ),
        (
            "filter F1 from \"x.s1p\"",
            "# MHz S RI R 50\n100 0 0\n200 0 0\n",
            "network-file",
            "`x.s1p` has 1 port; two ports are needed here.",
        ),
        (
            "filter F1 from \"x.s3p\"",
            "# MHz S RI R 50\n100 0 0 0 0 0 0\n 0 0 0 0 0 0\n 0 0 0 0 0 0\n",
            "network-file",
            "`x.s3p` has 3 ports; two ports are needed here.",
        ),
        (
            "filter F1 from \"x.csv\"",
            "band,piece,forward_w\n",
            "network-file",
            "`x.csv` is no network file by its name.",
        ),
        (
            "filter F1 from \"x.s2p\"",
            "# MHz S RI R 50\n100 0 0 .9 0 zero 0 0 0\n",
            "network-file",
            "In `x.s2p`, line 2, column 14:",
        ),
        (
            "filter F1 from \"gone.s2p\"",
            "",
            "use-not-found",
            "`gone.s2p` cannot be used",
        ),
        (
            "filter F1 from \"../gone.s2p\"",
            "",
            "use-outside-root",
            "`../gone.s2p` lies outside the project's root.",
        ),
        (
            "filter F1 from \"x.s2p\" reversed",
            "# MHz S RI R 50\n100 0 0 .9 0 0 0 0 0\n200 0 0 .9 0 0 0 0 0\n",
            "network-file",
            "By `x.s2p` nothing passes from port 2 to port 1 at 146.9 MHz.",
        ),
    ];
    for (part, file, code, words) in cases {
        let name = part
            .split('"')
            .nth(1)
            .filter(|n| !n.contains("gone"))
            .unwrap_or("unused.s2p");
        let s = with(&format!("{head}    {part}\n{tail}"), name, file);
        let found = said(&s);
        assert!(
            found.iter().any(|(c, m)| c == code && m.contains(words)),
            "{part}: {found:?}"
        );
        assert!(found.iter().all(|(c, _)| c == code), "{part}: {found:?}");
        let b = one(&s);
        assert!(!b.complete, "{part}");
        let known: Vec<bool> = b.nodes.iter().map(|n| n.loss_known).collect();
        // what comes back to the transmitter is not known, and so not what it loses there
        assert_eq!(known, [false, true, false, true], "{part}");
        // what stands before it keeps its figures
        near(b.nodes[1].loss_db, 1.0, 0.02, part);
        assert!(b.nodes[1].forward_known && !b.nodes[3].forward_known);
        near(b.nodes[1].forward_w, 79.4, 0.05, "100 W less 1 dB");
        assert!(b.nodes.iter().all(|n| !n.power_known));
    }
}

/// In a receive chain the wave passes from port 2 to port 1: an analyser that measures in one
/// direction only writes 0 for it, which is not a part without loss.
#[test]
fn a_file_that_passes_nothing_to_the_receiver_costs_its_part() {
    let one_path = "# MHz S RI R 50\n140 .03 0 .9 .1 0 0 0 0\n150 .03 0 .9 .1 0 0 0 0\n";
    let other_path = "# MHz S RI R 50\n140 0 0 0 0 .9 .1 .03 0\n150 0 0 0 0 .9 .1 .03 0\n";
    let receive = |part: &str| {
        format!(
            "chain c on 145 MHz receive {{\n    antenna 2 dBi, swr 1.2\n    pad 1 dB ± 0.1 dB\n    {part}\n    receiver -119 dBm\n}}\n"
        )
    };
    for (part, file, ports) in [
        ("filter F1 from \"x.s2p\"", one_path, "port 2 to port 1"),
        ("jumper J1 from \"x.s2p\"", one_path, "port 2 to port 1"),
        (
            "filter F1 from \"x.s2p\" reversed",
            other_path,
            "port 1 to port 2",
        ),
    ] {
        let s = with(&receive(part), "x.s2p", file);
        let found = s.diagnostics();
        assert_eq!(found.len(), 1, "{part}: {found:#?}");
        let d = &found[0];
        assert_eq!(d.code.id, "network-file");
        assert_eq!(d.severity, downlead_base::Severity::Error);
        assert_eq!(
            d.message,
            format!("By `x.s2p` nothing passes from {ports} at 145 MHz.")
        );
        assert!(
            d.help.iter().any(|h| h.contains("in one direction only")),
            "{d:#?}"
        );
        let b = one(&s);
        assert!(!b.complete, "{part}");
        let known: Vec<bool> = b.nodes.iter().map(|n| n.loss_known).collect();
        assert_eq!(known, [false, true, false, true], "{part}");
        assert!(b.nodes.iter().all(|n| !n.power_known), "{part}");
        let exact = downlead_eval::Assumed::FileExact;
        assert!(b.assumed().iter().all(|a| a.0 != exact), "{part}");
    }
    // what the text adds to the part tells nothing of its loss
    let s = with(
        &receive("jumper J1 from \"x.s2p\", added 0.5 dB"),
        "x.s2p",
        one_path,
    );
    assert!(!one(&s).nodes[2].loss_known && !one(&s).complete);
    // the other direction is of no matter to the chain that does not use it, and an amplifier
    // passes nothing back by nature
    let transmit = "chain c on 145 MHz {\n    transmitter 100 W carrier\n    filter F1 from \"x.s2p\"\n    load, swr 1\n}\n";
    let s = with(transmit, "x.s2p", one_path);
    assert!(said(&s).is_empty() && one(&s).complete, "{:?}", said(&s));
    let s = with(
        &receive("preamplifier PR1 from \"x.s2p\""),
        "x.s2p",
        &one_path.replace(".9", "9"),
    );
    assert!(one(&s).complete, "{:?}", said(&s));
}

#[test]
fn a_load_whose_file_does_not_serve_leaves_no_power_known() {
    for (file, words) in [
        (
            "# MHz S RI R 50\n1 .1 0\n30 .1 0\n",
            "146.9 MHz lies outside",
        ),
        (
            "# MHz S RI R 50\n100 0 1\n200 0 1\n",
            "everything comes back at 146.9 MHz: |S11| is 1",
        ),
    ] {
        let text = "chain c on 146.9 MHz {\n    transmitter TX1 100 W carrier\n    pad 1 dB ± 0.1 dB\n    load D1 from \"x.s1p\"\n}\n";
        let s = with(text, "x.s1p", file);
        assert!(said(&s)[0].1.contains(words), "{:?}", said(&s));
        assert!(!one(&s).complete);
        assert!(one(&s).nodes.iter().all(|n| !n.power_known));
        assert!(one(&s).nodes.iter().all(|n| n.swr.is_none()));
        let text = "chain c on 146.9 MHz receive {\n    antenna 2 dBi, from \"x.s1p\"\n    pad 1 dB ± 0.1 dB\n    receiver -119 dBm\n}\n";
        let s = with(text, "x.s1p", file);
        assert!(said(&s)[0].1.contains(words), "{:?}", said(&s));
        assert!(!one(&s).complete);
    }
}

#[test]
fn what_looks_wrong_in_a_file_is_told() {
    let text = |part: &str| {
        format!(
            "chain c on 146 MHz {{\n    transmitter 100 W carrier\n    {part}\n    load, swr 1\n}}\n"
        )
    };
    let warned = |part: &str, file: &str, words: &str| {
        let s = with(&text(part), "x.s2p", file);
        let found = s.diagnostics();
        assert!(
            found
                .iter()
                .any(|d| d.code.id == "network-file" && d.message.contains(words)),
            "{words}: {found:#?}"
        );
        (one(&s).complete, found)
    };
    // more out than in
    let active = "# MHz S RI R 50\n100 .1 0 1.1 0 1.1 0 .1 0\n200 .1 0 .9 0 .9 0 .1 0\n";
    let (complete, found) = warned(
        "filter F1 from \"x.s2p\"",
        active,
        "By `x.s2p`, a filter gives out more power than it gets at 1 of 2 points, most at 100 MHz: 1.44 times as much.",
    );
    assert!(complete && found.len() == 1);
    // which an amplifier may
    let one_way = active
        .replace("1.1 0 1.1", "1.1 0 .01")
        .replace(".9 0 .9", ".9 0 .01");
    let s = with(&text("amplifier from \"x.s2p\""), "x.s2p", &one_way);
    assert!(said(&s).is_empty(), "{:?}", said(&s));
    assert!(one(&s).nodes[1].loss_db < -0.01);
    // far more out than in is no matter of noise
    let twice = active.replace("1.1 0 1.1", "2.1 0 2.1");
    let (complete, _) = warned(
        "filter F1 from \"x.s2p\"",
        &twice,
        "By `x.s2p`, a filter gives out",
    );
    assert!(!complete);
    // an amplifier with so much feedback that a load can make it oscillate
    let s = with(
        &text("amplifier from \"x.s2p\""),
        "x.s2p",
        "# MHz S RI R 50\n100 .5 0 4 0 .2 0 .5 0\n200 .5 0 4 0 .2 0 .5 0\n",
    );
    assert!(said(&s)[0].1.contains("not stable with every load"));
    near(
        one(&s).total_db.unwrap(),
        -20.0 * 4.0f64.log10(),
        1e-9,
        "its gain",
    );
    let s = with(
        &text("amplifier from \"x.s2p\""),
        "x.s2p",
        "# MHz S RI R 50\n100 1.5 0 4 0 .2 0 .5 0\n200 1.5 0 4 0 .2 0 .5 0\n",
    );
    assert!(said(&s)[0].1.contains("it oscillates"));
    // decibels under MA
    let db = "# MHz S MA R 50\n100 -20 0 -0.5 0 -0.5 0 -20 0\n150 -21 0 -0.6 0 -0.6 0 -21 0\n200 -22 0 -0.7 0 -0.7 0 -22 0\n";
    warned("filter F1 from \"x.s2p\"", db, "In `x.s2p`, line ");
    // no unit: GHz, and the band lies outside
    let (complete, found) = warned(
        "filter F1 from \"x.s2p\"",
        "#\n100 .1 0 .9 0 .9 0 .1 0\n200 .1 0 .9 0 .9 0 .1 0\n",
        "`x.s2p` reaches from 100 GHz to 200 GHz",
    );
    assert!(!complete);
    assert!(
        found
            .iter()
            .any(|d| d.help.iter().any(|h| h.contains("write `# MHz`"))),
        "{found:#?}"
    );
}

/// Points so far apart that the phase between them is a guess: the loss counts, the phase not.
#[test]
fn sparse_points_give_sizes_only() {
    let rows: String = (0..5)
        .map(|k| {
            let mhz = 140 + 4 * k;
            format!(
                "{mhz} 0.05 {} 0.8 {} 0.8 {} 0.05 {}\n",
                170 * k,
                -85 * k,
                -85 * k,
                90 * k
            )
        })
        .collect();
    let file = format!("# MHz S MA R 50\n{rows}");
    let chain = |mhz: f64| {
        let text = format!(
            "chain c on {mhz} MHz {{\n    transmitter 100 W carrier\n    run M1 from \"x.s2p\"\n    antenna {{ gain 2 dBi; impedance 25 ohm }}\n}}\n"
        );
        with(&text, "x.s2p", &file)
    };
    let of_file = |s: &Snapshot| {
        let mut found = s.diagnostics();
        found.retain(|d| d.code.id == "network-file");
        found
    };
    let at_a_point = chain(144.0);
    assert!(of_file(&at_a_point).is_empty());
    assert_eq!(one(&at_a_point).worst_db, None);
    let between = chain(146.0);
    let found = of_file(&between);
    assert_eq!(found.len(), 1, "{found:#?}");
    assert_eq!(found[0].severity.name(), "information");
    assert!(
        found[0]
            .message
            .contains("points of `x.s2p` are 4 MHz apart")
    );
    // 0.8 is 1.938 dB; SWR 2 takes 0.512 dB more on average, and how they meet is not known
    near(
        one(&between).nodes[1].matched_db,
        1.938_20,
        1e-5,
        "its loss",
    );
    assert!(one(&between).worst_db.is_some());
}

/// What is written wrong around `from`, and what is said about it.
#[test]
fn slips_are_told_with_what_to_write() {
    let file = "# MHz S RI R 50\n100 0 0 .9 0 .9 0 0 0\n200 0 0 .9 0 .9 0 0 0\n";
    let cases: &[(&str, &[&str])] = &[
        (
            "filter F1 from",
            &["missing-value `from` is followed by a path in quotes."],
        ),
        ("filter from 0.3 dB ± 0.1 dB", &[]),
        ("filter from \"x.s2p\"", &[]),
        ("run { from \"x.s2p\" reversed }", &[]),
        ("coupler C1 from \"x.s2p\", rating 100 W, ends n", &[]),
        (
            "meter { from \"x.s2p\", accuracy 0.1 dB k 2, sheet \"MT-1 p. 2\" }",
            &[],
        ),
        (
            "filter F1 from \"x.s2p\" ± 0.1 dB",
            &["not-understood `±` stands where no value precedes it."],
        ),
        (
            "filter F1 0.3 dB ± 0.1 dB, accuracy 0.1 dB",
            &["unexpected-word `accuracy` is said of a network file, and none stands before it."],
        ),
        (
            "filter F1 from \"x.s2p\", accuracy 5 %",
            &["wrong-unit A percentage stands where the accuracy of a loss belongs."],
        ),
        (
            "filter F1 0.3 dB ± 0.1 dB, from \"x.s2p\"",
            &[
                "figure-twice The loss of `F1` is given twice, here and by `x.s2p`; the file is used.",
            ],
        ),
        (
            "run M1 10 m of rg-213, from \"x.s2p\"",
            &[
                "figure-twice The loss of `M1` is given twice, by its cable and by `x.s2p`; the file is used.",
            ],
        ),
        (
            "connector from \"x.s2p\"",
            &["unexpected-word A connector or adapter is named, not read from a file."],
        ),
        (
            "run M1 from \"x.s2p\" of 10 m",
            &["unexpected-word `of` has no meaning in a run."],
        ),
        (
            "filter F1 { loss 0.3 dB ± 0.1 dB on 2m; from \"x.s2p\" on 70cm }",
            &[],
        ),
        (
            "run M1 { from \"x.s2p\" on 70cm }",
            &["no-figure-for-band M1 has no file for 2m (146 MHz)."],
        ),
    ];
    for (part, want) in cases {
        let text = format!(
            "band 2m 146 MHz\nband 70cm 432 MHz\nchain c on 2m {{\n    transmitter 100 W carrier\n    {part}\n    load from \"y.s1p\"\n}}\n"
        );
        let s = load_from(
            &files()
                .with(MAIN, &text)
                .with("x.s2p", file)
                .with("y.s1p", "# MHz S RI R 50\n100 0 0\n200 0 0\n"),
        );
        let have: Vec<String> = said(&s).iter().map(|(c, m)| format!("{c} {m}")).collect();
        assert_eq!(have, *want, "{part}");
    }
}

/// Whatever stands in a file, results are numbers or not known, never the sum of waves that grow.
#[test]
fn any_numbers_give_numbers() {
    let mut x = 0x2545_F491_4F6C_DD1Du64;
    let mut next = || {
        x ^= x << 13;
        x ^= x >> 7;
        x ^= x << 17;
        f64::from(u32::try_from(x >> 40).expect("24 bits")) / f64::from(1u32 << 23) - 1.0
    };
    let kinds = ["filter", "isolator", "amplifier", "run"];
    for round in 0..400 {
        // from deep stop bands to plainly impossible figures
        let size = [0.7, 1.0, 1.01, 3.0][round % 4];
        let mut cell = || format!("{} {}", size * next(), size * next());
        let row = [cell(), cell(), cell(), cell()].join(" ");
        let end = [cell(), cell()];
        let text = format!(
            "chain c on 146 MHz {{\n    transmitter 100 W carrier\n    run 7 m of rg-213\n    {} from \"x.s2p\"\n    run 1 m of rg-58\n    load from \"y.s1p\"\n}}\nchain r on 146 MHz receive {{\n    antenna 2 dBi, from \"y.s1p\"\n    {} from \"x.s2p\"\n    receiver -119 dBm\n}}\n",
            kinds[round / 4 % 4],
            kinds[round / 16 % 4]
        );
        let s = load_from(
            &files()
                .with(MAIN, &text)
                .with("x.s2p", format!("# MHz S RI R 75\n100 {row}\n200 {row}\n"))
                .with(
                    "y.s1p",
                    format!("# MHz S RI R 50\n100 {}\n200 {}\n", end[0], end[1]),
                ),
        );
        for c in chains(&s) {
            let b = &c.bands[0];
            let figures = [b.total_db, b.swr.or(Some(1.0)), b.uncertainty_db];
            assert!(
                !b.complete || figures.iter().all(|f| f.is_some_and(f64::is_finite)),
                "{figures:?}\n{row}\n{end:?}\n{text}"
            );
            for n in &b.nodes {
                assert!(
                    !b.complete || n.loss_db.is_finite() && n.swr.is_some_and(|s| s >= 1.0),
                    "{n:?}\n{row}\n{end:?}\n{text}"
                );
            }
        }
    }
}

#[test]
fn a_file_without_definitions_is_not_used() {
    for (path, words, help) in [
        ("is1.s2p", "a network file", "`filter F1 from \"is1.s2p\"`"),
        ("a1.s1p", "a network file", "`load DL1 from \"a1.s1p\"`"),
        ("july.csv", "a table", "`readings from \"july.csv\"`"),
    ] {
        let s = load_from(&files().with(MAIN, format!("use \"{path}\"\n")));
        let found = s.diagnostics();
        assert_eq!(found.len(), 1, "{found:#?}");
        assert!(found[0].message.contains(words) && found[0].help[0].contains(help));
    }
}
