//! What the stations of one site do to each other.

mod common;

use common::load;
use downlead_base::Diagnostic;

fn find(text: &str, code: &str) -> Vec<Diagnostic> {
    load(text)
        .diagnostics()
        .into_iter()
        .filter(|d| d.code.id == code)
        .collect()
}

/// A station with one chain, and further lines.
fn station(name: &str, lines: &str, mhz: &str) -> String {
    format!(
        "station {name} {{\n    {lines}\n    chain out on {mhz} MHz {{\n        transmitter 15 W ± 5 % carrier, fm\n        run 28 m of half-inch-foam\n        antenna 4.5 dBi ± 0.5 dB\n    }}\n}}\n"
    )
}

#[test]
fn a_neighbour_must_be_defined() {
    let with = |name: &str| {
        station("hill", &format!("beside {name}"), "145.3") + &station("harbour", "", "147.5")
    };
    assert!(find(&with("harbour"), "unknown-station").is_empty());
    let found = find(&with("harbor"), "unknown-station");
    assert_eq!(found.len(), 1, "{found:#?}");
    assert_eq!(found[0].message, "Station `harbor` is not defined.");
    assert_eq!(found[0].fixes[0].edits[0].text, "harbour");
}

#[test]
fn two_lines_about_the_site_cannot_contradict() {
    let other = station("harbour", "", "147.5");
    let both = station(
        "hill",
        "beside harbour\n    alone, \"QY4TRA 2026-07-04\"",
        "145.3",
    );
    assert_eq!(find(&(both + &other), "site-contradicts").len(), 1);
    assert_eq!(
        find(&station("hill", "beside hill", "145.3"), "site-contradicts").len(),
        1
    );
    let twice = station("hill", "beside harbour\n    beside harbour", "145.3");
    assert_eq!(find(&(twice + &other), "said-twice").len(), 1);
}

/// The words are reserved at the beginning of their own lines only.
#[test]
fn chains_and_bands_may_have_the_words_as_names() {
    let text = "band alone 145.3 MHz\nstation s {\n    chain beside on alone {\n        transmitter 15 W ± 5 % carrier, fm\n        antenna 4.5 dBi ± 0.5 dB\n    }\n}\n";
    let all = load(text).diagnostics();
    assert!(
        all.iter()
            .all(|d| d.severity != downlead_base::Severity::Error),
        "{all:#?}"
    );
}

/// A repeater with a neighbour whose carrier is one split above its own.
fn repeater(bandwidths: (&str, &str), neighbour_mhz: &str) -> String {
    format!(
        "station hill {{
    beside harbour
    transmitter TX1 {{ power 15 W ± 5 % carrier; mode fm; {} }}
    receiver RX1 {{ sensitivity -119 dBm for 12 dB sinad; {} }}
    antenna A1 4.5 dBi ± 0.5 dB
    antenna A2 4.5 dBi ± 0.5 dB
    chain out on 146.9137 MHz {{ TX1; run 28 m of half-inch-foam; A1 }}
    chain in on 146.3137 MHz receive {{ A2; run 28 m of half-inch-foam; RX1 }}
}}
",
        bandwidths.0, bandwidths.1
    ) + &station("harbour", "", neighbour_mhz)
}

fn site_of(text: &str) -> downlead_eval::site::SiteResult {
    let s = load(text);
    let items = s.scopes()[0].items();
    let results = items.iter().find_map(|(_, _, r)| r.site.clone());
    *results.expect("a station with a receive channel")
}

#[test]
fn a_product_of_third_order_is_pointed_out() {
    let text = repeater(("", ""), "147.5137");
    let found = find(&text, "frequency-plan");
    assert_eq!(found.len(), 1, "{found:#?}");
    assert_eq!(
        found[0].message,
        "RX1 is received on 146.3137 MHz, and 2 TX1 - out of harbour falls on 146.3137 MHz."
    );
    // both chains of the carriers are shown
    assert_eq!(found[0].related.len(), 2, "{found:#?}");
    assert!(find(&repeater(("", ""), "147.3787"), "frequency-plan").is_empty());
    // with no neighbour named: only its own carrier, which makes no product alone
    let alone = text.replace("    beside harbour\n", "");
    assert!(find(&alone, "frequency-plan").is_empty());
    assert_eq!(site_of(&alone).carriers.len(), 1);
}

#[test]
fn the_width_of_a_product_counts_where_it_is_stated() {
    // 15 kHz off: 2 · 146.9137 − 147.4987
    let near = |bandwidths| find(&repeater(bandwidths, "147.4987"), "frequency-plan").len();
    assert_eq!(near(("", "")), 0);
    // half of 2 · 11 kHz and of 12.6 kHz reach 17.3 kHz
    assert_eq!(near(("bandwidth 11 kHz", "bandwidth 12.6 kHz")), 1);
    // half of 12.6 kHz does not
    assert_eq!(near(("", "bandwidth 12.6 kHz")), 0);
    let site = site_of(&repeater(
        ("bandwidth 11 kHz", "bandwidth 12.6 kHz"),
        "147.4987",
    ));
    assert_eq!(site.carriers[0].width_hz, Some(11e3));
    assert_eq!(site.carriers[1].width_hz, None);
    assert_eq!(site.channels[0].width_hz, Some(12.6e3));
    assert_eq!((site.order, site.hits[0].order()), (7, 3));
}

#[test]
fn carriers_and_harmonics_in_a_channel_are_found() {
    let carrier = find(&repeater(("", ""), "146.3137"), "frequency-plan");
    assert!(
        carrier[0]
            .message
            .contains("and the carrier out of harbour falls on 146.3137 MHz."),
        "{carrier:#?}"
    );
    // the third harmonic of 146.3137 MHz by hand
    let seventy = repeater(("", ""), "146.3137").replace("in on 146.3137", "in on 438.9411");
    let harmonic = find(&seventy, "frequency-plan");
    assert!(
        harmonic[0]
            .message
            .contains("and 3 out of harbour falls on 438.9411 MHz."),
        "{harmonic:#?}"
    );
    // a station that sends where it receives is simplex
    let simplex = repeater(("", ""), "150").replace("146.3137", "146.9137");
    assert!(find(&simplex, "frequency-plan").is_empty());
}

#[test]
fn what_is_not_searched_is_listed() {
    use downlead_eval::site::{LeftOut, Neighbours};
    let text = repeater(("", ""), "147.5137").replace("on 147.5137 MHz", "on vhf")
        + "band vhf 144 MHz to 148 MHz\n";
    let site = site_of(&text);
    assert_eq!(site.carriers.len(), 1, "{site:#?}");
    assert_eq!(*site.left_out, [("out of harbour".into(), LeftOut::Range)]);
    assert_eq!(
        site.neighbours,
        Neighbours::Beside(["harbour".into()].into())
    );
    let undefined = repeater(("", ""), "147.5137").replace("beside harbour", "beside nowhere");
    let left = site_of(&undefined).left_out;
    assert_eq!(*left, [("nowhere".into(), LeftOut::NotDefined)]);
}

#[test]
fn a_bandwidth_is_a_frequency_by_itself() {
    let bad = |line: &str| {
        let all = load(&repeater(("", line), "147.5137")).diagnostics();
        let errors = all
            .into_iter()
            .filter(|d| d.severity == downlead_base::Severity::Error);
        errors.map(|d| d.code.id).collect::<Vec<_>>()
    };
    assert!(bad("bandwidth 12.6 kHz, sheet \"RR-1 p. 3\"").is_empty());
    assert_eq!(bad("bandwidth").len(), 1);
    assert_eq!(bad("bandwidth 12 dB").len(), 1);
    assert_eq!(bad("bandwidth 12.6 kHz; bandwidth 25 kHz").len(), 1);
}

/// Its own carrier on the receive frequency is simplex, and its width holds both ways.
#[test]
fn a_transceiver_is_a_carrier_and_a_channel() {
    let text = "station hill {
    transceiver TR1 { power 25 W ± 10 % carrier; mode fm; bandwidth 11 kHz }
    antenna A1 4.5 dBi ± 0.5 dB
    chain out on 145.5 MHz { TR1; run 28 m of half-inch-foam; A1 }
    chain in on 145.5 MHz receive { A1; run 28 m of half-inch-foam; TR1 }
}
";
    let site = site_of(text);
    assert_eq!(site.carriers[0].width_hz, Some(11e3));
    assert_eq!(site.channels[0].width_hz, Some(11e3));
    assert!(find(text, "frequency-plan").is_empty());
}

/// A station that says it is beside this one contradicts `alone`, and its carriers are searched.
#[test]
fn a_neighbour_that_names_this_station_is_on_the_site() {
    let other = station("harbour", "beside hill", "147.5");
    let alone = station("hill", "alone, \"QY4TRA 2026-07-04\"", "145.3");
    assert_eq!(find(&(alone.clone() + &other), "site-contradicts").len(), 1);
    assert!(
        find(
            &(alone + &station("harbour", "", "147.5")),
            "site-contradicts"
        )
        .is_empty()
    );
}
