//! Lenses, reports, explanations, findings.

use downlead_ide::{Config, code_lenses, explain_markdown, file_diagnostics, report_markdown};

use crate::case::{Case, HILL};

#[test]
fn lenses() {
    let c = Case::new(HILL);
    let out: Vec<String> = code_lenses(&c.s, c.doc, &Config::default())
        .into_iter()
        .map(|l| {
            format!(
                "{}: {} ({:?})",
                &c.text()[l.span.range()],
                l.title,
                l.command
            )
        })
        .collect();
    insta::assert_snapshot!(out.join("\n"));
    assert_eq!(
        code_lenses(
            &c.s,
            c.doc,
            &Config {
                lenses: false,
                ..Config::default()
            }
        ),
        []
    );
}

#[test]
fn a_report_as_a_document() {
    let c = Case::new(HILL);
    let one = report_markdown(&c.s, 0, Some("hill/out")).unwrap();
    insta::assert_snapshot!(one);
    let all = report_markdown(&c.s, 0, None).unwrap();
    assert!(all.contains("## [out, transmit on ") && all.contains("## [in, receive on "));
    assert_eq!(report_markdown(&c.s, 0, Some("hill")), Some(all));
    assert_eq!(report_markdown(&c.s, 0, Some("nowhere")), None);
    assert_eq!(report_markdown(&c.s, 7, None), None);
}

#[test]
fn an_explanation() {
    let c = Case::hill("    limit", "    $0limit");
    let line = u32::try_from(c.text()[..c.cursor() as usize].matches('\n').count() + 1).unwrap();
    insta::assert_snapshot!(explain_markdown(&c.s, 0, line).unwrap());
    assert_eq!(explain_markdown(&c.s, 0, 2), None);
}

#[test]
fn findings_say_what_to_write() {
    let c = Case::hill("A1 5.20 dBi ± 0.5 dB", "A1 5.20 dB");
    let list = file_diagnostics(&c.s, 0, &Config::default());
    let out: Vec<String> = list
        .iter()
        .map(|f| {
            let fixes: Vec<&str> = f.fixes.iter().map(|x| x.title.as_str()).collect();
            let related: Vec<String> = f
                .related
                .iter()
                .map(|r| format!("{} ({})", c.show(r.place), r.message))
                .collect();
            format!(
                "«{}» {:?} {}\n{}\nrelated: {}\nfixes: {}",
                &c.text()[f.span.range()],
                f.severity,
                f.code,
                f.message,
                related.join("; "),
                fixes.join(" | ")
            )
        })
        .collect();
    insta::assert_snapshot!(out.join("\n---\n"));
}

#[test]
fn too_many_findings_are_cut_after_the_worst() {
    let text = "band a\n".repeat(20);
    let c = Case::new(&text);
    let all = file_diagnostics(&c.s, 0, &Config::default());
    let some = file_diagnostics(
        &c.s,
        0,
        &Config {
            max_diagnostics: 5,
            ..Config::default()
        },
    );
    assert_eq!(some.len(), 5);
    assert!(some.iter().any(|f| {
        f.message
            .contains(&format!("({} more in this file)", all.len() - 5))
    }));
}

#[test]
fn unused_parts_are_marked() {
    let c = Case::hill("    joins n-pair", "    pad P9 1 dB\n    joins n-pair");
    let list = file_diagnostics(&c.s, 0, &Config::default());
    assert!(
        list.iter()
            .any(|f| f.unnecessary && f.code == "part-unused")
    );
}

/// The editor and the command line show one document.
#[test]
fn a_report_is_the_same_in_an_editor_and_in_a_terminal() {
    use downlead_report::page::chain::{With, page};
    let c = Case::new(HILL);
    let shown = downlead_ide::report_document(&c.s, 0, None).unwrap();
    let printed = page(
        &downlead_report::build::chain::report(&c.s),
        With::default(),
    );
    assert_eq!(shown, printed);
    assert!(shown.blocks.len() > 4);
}

/// Each known level is a step of its own, lower where power is lost, and leads to its line.
#[test]
fn level_diagrams_follow_the_power() {
    let c = Case::hill("station hill", "station hill");
    let doc = downlead_ide::illustrated_report(&c.s, 0, None).expect("a report");
    let page = downlead_report::write::html::html(&doc);
    assert_eq!(page.matches("<svg").count(), 2, "a picture of each chain");
    assert!(!page.contains("<script") && !page.contains("http"));
    let first = page.split("<svg").nth(1).expect("a picture");
    let svg = first.split("</svg>").next().expect("its end");
    let steps: Vec<f64> = svg
        .split("<path d=\"")
        .skip(1)
        .map(|p| {
            let path = p.split("h64").next().expect("a step");
            let y = path.rsplit(' ').next().expect("its height");
            y.parse().expect("a number")
        })
        .collect();
    // TX1, DU1, M1, A1 and the joins between them
    assert!(steps.len() >= 4, "{svg}");
    assert!(steps.windows(2).all(|w| w[0] <= w[1]), "{steps:?}");
    // 32 W are 45.05 dBm
    assert!(svg.contains(">45.1<"), "{svg}");
    let line = |word: &str| {
        let at = c.text().find(word).expect(word);
        c.text()[..at].lines().count()
    };
    assert!(
        svg.contains(&format!("main.downlead:{}\"", line("TX1\n"))),
        "{svg}"
    );
}

/// Above a licence: what its clauses come to here, and which questions are open.
#[test]
fn a_licence_has_a_lens() {
    let text = "band 2m 145.3 MHz\n\
        licence tso-14-0093 { dated 2014-03-02; limit 30 W erp carrier on 2m, \"clause 4\"; limit 10 W erp carrier on 2m, \"clause 5\" }\n\
        licence unused { limit 5 W erp, \"1\" }\n\
        rules tso { ask isle \"On an island?\"; limit 9 W erp on 2m, if isle, \"2\", confidence high }\n\
        station hill {\n    under tso-14-0093\n    under tso\n    chain out on 2m { transmitter 15 W ± 5 % carrier, fm; run 28 m of half-inch-foam; antenna 4.5 dBi ± 0.5 dB }\n}\n";
    let c = Case::new(text);
    let lens = |name: &str| {
        let all = code_lenses(&c.s, c.doc, &Config::default());
        let mut of = all
            .into_iter()
            .filter(|l| &c.text()[l.span.range()] == name);
        of.next().map(|l| l.title)
    };
    assert_eq!(
        lens("tso-14-0093").as_deref(),
        Some("clauses: 1 not met, 1 met")
    );
    assert_eq!(
        lens("tso").as_deref(),
        Some("clauses: 1 cannot judge, 1 open question")
    );
    assert_eq!(lens("unused"), None);
}
