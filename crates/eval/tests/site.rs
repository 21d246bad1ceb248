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
