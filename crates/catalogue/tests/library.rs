//! The library's text against what others printed: documented loss points of nine public
//! sources (`data/cables.csv`), and rules every entry keeps.

use std::collections::HashSet;

use downlead_catalogue::{FILES, file};

/// `keyword name "title" {` at column 0, and the statements of its block.
struct Item {
    keyword: &'static str,
    name: &'static str,
    title: &'static str,
    lines: Vec<&'static str>,
}

/// Reads the plain shape the library is written in (not the language: that is crate syntax's job).
fn items() -> Vec<Item> {
    let mut out: Vec<Item> = Vec::new();
    // clauses of rules have a shape of their own and a test below
    for f in FILES.iter().filter(|f| !f.name.starts_with("rules-")) {
        for line in f.text.lines() {
            if line.starts_with("//") || line.is_empty() || line == "}" {
                continue;
            }
            if let Some(statement) = line.strip_prefix("    ") {
                out.last_mut()
                    .expect("a statement inside an item")
                    .lines
                    .push(statement);
            } else {
                let mut words = line.splitn(3, ' ');
                let (keyword, name) = (words.next().unwrap(), words.next().unwrap());
                let rest = words.next().unwrap();
                assert!(
                    rest.starts_with('"') && rest.ends_with("\" {"),
                    "{}: {line}",
                    f.name
                );
                out.push(Item {
                    keyword,
                    name,
                    title: &rest[1..rest.len() - 3],
                    lines: Vec::new(),
                });
            }
        }
    }
    out
}

impl Item {
    fn figure(&self, word: &str) -> Option<&'static str> {
        self.lines
            .iter()
            .find_map(|l| l.strip_prefix(word)?.strip_prefix(' '))
    }

    /// Matched loss in dB/100 m from the two coefficients.
    fn loss(&self, mhz: f64) -> f64 {
        let line = self.figure("loss").unwrap();
        let (root, rest) = line.split_once(" dB/100 m/sqrt(MHz) + ").unwrap();
        let linear = rest.strip_suffix(" dB/100 m/MHz, typical").unwrap();
        root.parse::<f64>().unwrap() * mhz.sqrt() + linear.parse::<f64>().unwrap() * mhz
    }

    /// Relative standard uncertainty at a frequency, by the first `accuracy` line that reaches it.
    fn accuracy(&self, mhz: f64) -> f64 {
        let line = self
            .lines
            .iter()
            .filter_map(|l| l.strip_prefix("accuracy "))
            .find(|l| {
                l.split_once(" to ")
                    .is_none_or(|(_, f)| mhz <= f.strip_suffix(" MHz").unwrap().parse().unwrap())
            })
            .unwrap();
        line.split_once(" % k 1").unwrap().0.parse::<f64>().unwrap() / 100.0
    }

    fn valid(&self, mhz: f64) -> bool {
        let (low, high) = self
            .figure("valid")
            .unwrap()
            .split_once(" MHz to ")
            .unwrap();
        let high: f64 = high.strip_suffix(" MHz").unwrap().parse().unwrap();
        (low.parse::<f64>().unwrap()..=high).contains(&mhz)
    }
}

#[test]
fn names_are_unique_and_every_item_has_a_source() {
    let mut seen = HashSet::new();
    for item in items() {
        assert!(seen.insert(item.name), "{} twice", item.name);
        assert!(
            ["cable", "connector", "device"].contains(&item.keyword),
            "{}",
            item.name
        );
        assert!(!item.title.is_empty());
        assert!(
            item.figure("source").is_some_and(|s| s.len() > 20),
            "{} has no source",
            item.name
        );
    }
    for name in [
        "rg-58c",
        "rg-213",
        "half-inch-foam",
        "foam-10mm",
        "window-line-450",
        "n-pair",
        "uhf-pair",
        "n-to-uhf",
    ] {
        assert!(seen.contains(name), "{name} is missing");
    }
    assert!(file("connectors.downlead").is_some() && file("none").is_none());
}

#[test]
fn no_figure_is_called_maximum() {
    for item in items() {
        for line in item.lines {
            assert!(
                !line.contains("maximum") && !line.contains(" max"),
                "{}: {line}",
                item.name
            );
        }
    }
}

/// Every documented typical point inside an entry's range is within three standard
/// uncertainties of the entry, save those that the sources themselves contradict.
#[test]
fn cables_agree_with_documented_points() {
    // designation in the data, name in the library
    let classes = [
        ("50-ohm foam 10.3 mm", "foam-10mm"),
        ("corrugated foam 1/2 in", "half-inch-foam"),
        ("corrugated foam 7/8 in", "seven-eighths-foam"),
        ("corrugated foam 1-5/8 in", "inch-and-five-eighths-foam"),
    ];
    let known_contradictions = [
        // printed to one digit (0.5 dB/100 ft), below the two other sources for the type
        ("RG-8A", "10"),
        // printed to one digit; at 150 MHz and above the same table agrees
        ("corrugated foam 1-5/8 in", "50"),
        // a book's figure in whole dB, a fifth above what the construction gives
        ("RG-142B", "1575"),
    ];
    let items = items();
    let mut checked = 0;
    for row in csv::Reader::from_reader(include_str!("../data/cables.csv").as_bytes()).records() {
        let row = row.unwrap();
        let (designation, mhz_text, kind, source) = (&row[0], &row[4], &row[7], &row[8]);
        if kind != "typical"
            || !source.starts_with('S')
            || known_contradictions.contains(&(designation, mhz_text))
        {
            continue;
        }
        let name = classes
            .iter()
            .find(|c| c.0 == designation)
            .map_or_else(|| designation.to_lowercase(), |c| c.1.to_owned());
        let Some(item) = items
            .iter()
            .find(|i| i.keyword == "cable" && i.name == name)
        else {
            continue;
        };
        let mhz: f64 = mhz_text.parse().unwrap();
        if !item.valid(mhz) {
            continue;
        }
        let printed =
            row[5].parse::<f64>().unwrap() / if &row[6] == "dB/100ft" { 0.3048 } else { 1.0 };
        let ratio = item.loss(mhz) / printed;
        let bound = 3.0 * item.accuracy(mhz);
        assert!(
            (ratio - 1.0).abs() <= bound,
            "{designation} at {mhz} MHz: {ratio:.3} of the printed {printed:.2} dB/100 m ({source})"
        );
        checked += 1;
    }
    assert!(checked >= 75, "only {checked} points compared");
}

/// Rows marked max are limits, not what a cable does; a typical figure must not exceed them.
/// The one second-hand limit that is below every typical value of its cable is left out.
#[test]
fn typical_figures_lie_below_the_documented_limits() {
    let items = items();
    let mut checked = 0;
    for row in csv::Reader::from_reader(include_str!("../data/cables.csv").as_bytes()).records() {
        let row = row.unwrap();
        let second_hand = &row[0] == "RG-213" && &row[4] == "50";
        if &row[7] != "max" || second_hand {
            continue;
        }
        let item = items
            .iter()
            .find(|i| i.name == row[0].to_lowercase())
            .unwrap();
        let mhz: f64 = row[4].parse().unwrap();
        assert!(
            item.loss(mhz) <= row[5].parse::<f64>().unwrap() / 0.3048,
            "{} at {mhz} MHz",
            &row[0]
        );
        checked += 1;
    }
    assert_eq!(checked, 7);
}

/// An adapter's loss is the sum of the two pairs named in its entry.
#[test]
fn adapters_are_the_sum_of_their_pairs() {
    let items = items();
    let db = |i: &Item| {
        i.figure("loss")
            .unwrap()
            .split_once(" dB ± 50 % at 1 GHz")
            .unwrap()
            .0
            .parse::<f64>()
            .unwrap()
    };
    let pair = |family: &str| {
        items
            .iter()
            .find(|i| i.figure("family") == Some(family))
            .map(db)
            .unwrap()
    };
    let mut adapters = 0;
    for item in items.iter().filter(|i| i.keyword == "connector") {
        if let Some((a, b)) = item.figure("joins").and_then(|j| j.split_once(" to ")) {
            assert!(
                (db(item) - pair(a) - pair(b)).abs() < 1e-12,
                "{}",
                item.name
            );
            adapters += 1;
        }
    }
    assert!(adapters >= 8);
}

/// Every row of the data that a clause can hold stands in a rule file with its power, its citation and
/// its confidence (`tests/tools/make_rules.py` writes them; this reads the data by itself).
#[test]
fn every_row_of_the_limits_is_a_clause() {
    let texts: String = FILES
        .iter()
        .filter(|f| f.name.starts_with("rules-"))
        .map(|f| f.text)
        .collect();
    let lines: Vec<&str> = texts.lines().collect();
    let data = include_str!("../data/limits.csv");
    let mut rows = 0;
    for line in data.lines().skip(1) {
        let confidence = line.rsplit(',').next().expect("a confidence");
        let left_out = line.contains(",amplifier_gain,") || line.contains(",host_rules,");
        if left_out {
            continue;
        }
        rows += 1;
        let limit = line.split(',').nth(5).expect("a limit");
        // 40 dBW is 10 kW; trailing zeros are not written
        let limit = if line.contains(",dBW,") {
            "10000"
        } else {
            limit
        };
        let of_line = |l: &&str| {
            let words: Vec<&str> = l.split_whitespace().collect();
            words.windows(2).any(|w| w[0] == limit && w[1] == "W")
        };
        let powers = lines.iter().filter(|l| of_line(l)).count();
        assert!(powers > 0, "no clause of {limit} W: {line}");
        let ends = format!("confidence {confidence}");
        assert!(
            lines
                .iter()
                .any(|l| l.trim_end_matches([' ', '{']).ends_with(&ends)),
            "{line}"
        );
    }
    assert_eq!(rows, 147);
    // no clause without citation and confidence
    for l in lines.iter().filter(|l| {
        l.trim_start().starts_with("limit ") || l.trim_start().starts_with("threshold ")
    }) {
        assert!(l.contains(", \"") && l.contains(", confidence "), "{l}");
    }
}
