//! Inline values: what names stand for just now.

use downlead_base::Span;
use downlead_ide::{Config, HintKinds, inlay_hints, inline_values};

use crate::case::{Case, marked_lines};

const ALL: Span = Span {
    start: 0,
    end: u32::MAX,
};

/// Values of every kind; the chains share parts as no station may, which is said elsewhere.
const STATION: &str = r#"let rated 50 W
let legal rated / 2
let reach 2 * 14 m
band 2m 144.3 MHz
band 70cm 435 MHz

station s {
    transmitter TX1 rated carrier
    divider DV1 2 way, excess 0.2 dB
    run M1 reach of rg-213
    run M2 20 m of no-such-cable
    antenna A1 2.15 dBi
    antenna A2 2.15 dBi
    receiver RX1 -119 dBm for 12 dB sinad, noise figure 6 dB
    chain out on 2m, 70cm transmit {
        TX1
        pad 1 dB
        M1
        DV1 {
            branch { A1 }
            branch { A2 }
        }
        limit legal erp
    }
    chain lost on 2m transmit {
        TX1; M2
        A1
    }
    chain in on 70cm receive {
        A1
        M1
        RX1
    }
}
"#;

fn picture(c: &Case, range: Span, config: &Config) -> String {
    let found = inline_values(&c.s, c.doc, range, config);
    let notes: Vec<(Span, String)> = found
        .iter()
        .map(|v| (v.span, format!(" ⟦{}⟧", v.text)))
        .collect();
    let spans: Vec<(Span, &str)> = notes.iter().map(|(s, n)| (*s, n.as_str())).collect();
    marked_lines(c.text(), &spans)
}

#[test]
fn of_named_values_and_of_tags_in_chains() {
    insta::assert_snapshot!(picture(&Case::new(STATION), ALL, &Config::default()));
}

#[test]
fn of_ports_and_of_names_in_another_file() {
    let c = Case::hill("TX1 32 W ± 5 %", "TX1 ours ± 5 %");
    let with = format!(
        "{}let ours 32 W\n",
        crate::case::HILL.replacen("TX1 32 W", "TX1 ours", 1)
    );
    let c = Case {
        s: Case::new(&with).s,
        ..c
    };
    insta::assert_snapshot!(picture(&c, ALL, &Config::default()));
}

#[test]
fn only_in_the_range() {
    let text = STATION
        .replacen("        M1\n", "        $0M1\n", 1)
        .replacen(
            "            branch { A2 }",
            "            br$0anch { A2 }",
            1,
        );
    let c = Case::new(&text);
    insta::assert_snapshot!(picture(&c, c.range(), &Config::default()));
}

/// The numbers are those of the hints, of the first band that is shown, whichever hints there are.
#[test]
fn as_the_hints_have_it() {
    let c = Case::new(STATION);
    for band in ["2m", "70cm"] {
        let one = Config {
            bands: vec![band.to_owned()],
            ..Config::default()
        };
        let plain = |t: String| t.replace(['\u{2007}', ' '], "");
        let hints: Vec<String> = inlay_hints(&c.s, c.doc, ALL, &one)
            .iter()
            .map(|h| plain(h.text()))
            .collect();
        let found = inline_values(&c.s, c.doc, ALL, &one);
        let run = found
            .iter()
            .find(|v| v.text.starts_with("M1 "))
            .expect("M1");
        let figures = plain(run.text.replacen("M1 ", "", 1));
        assert!(figures.contains("dB→"), "{figures}");
        // two bands in the chain: the hint names which
        assert!(
            hints.iter().any(|h| h.strip_prefix(band) == Some(&figures)),
            "{figures} in {hints:?}"
        );
        let off = Config {
            hints: HintKinds {
                enabled: false,
                ..one.hints
            },
            ..one
        };
        assert_eq!(inline_values(&c.s, c.doc, ALL, &off), found);
    }
    let first = inline_values(&c.s, c.doc, ALL, &Config::default());
    let low = Config {
        bands: vec!["2m".to_owned()],
        ..Config::default()
    };
    let of =
        |v: &[downlead_ide::InlineValue]| v.iter().find(|v| v.text.starts_with("M1 ")).cloned();
    assert_eq!(of(&first), of(&inline_values(&c.s, c.doc, ALL, &low)));
}
