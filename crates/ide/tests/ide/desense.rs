//! Isolation, noise, blocking and desense in the editor: hints, hover, completion, renaming.

use downlead_base::Span;
use downlead_ide::{Config, completion, hover, inlay_hints, rename};

use crate::case::{Case, applied};

/// A receiver beside a neighbour's transmitter; `@` is where a test puts its line.
const SITE: &str = "station harbour {
    transmitter H1 25 W carrier, fm, noise -150 dBc/Hz ± 3 dB at 1.2 MHz
    antenna A9 2.15 dBi
    chain data on 147.5137 MHz { H1; A9 }
}
station hill {
    beside harbour
    @
    receiver RX1 { noise figure 6 dB; blocking -25 dBm at 1.2 MHz }
    antenna A1 5.2 dBi
    chain in on 146.3137 MHz receive {
        A1
        limit 1 dB desense, \"club rule 5\"
        RX1
    }
}
";

const MEASURED: &str = "isolation A9 of harbour to A1 48 dB ± 1.5 dB at 146.9 MHz";

fn site(line: &str) -> Case {
    Case::new(&SITE.replace('@', line))
}

fn hint_at(c: &Case, line: &str) -> String {
    let all = inlay_hints(&c.s, c.doc, Span::new(0, u32::MAX), &Config::default());
    let at = c.text().find(line).expect(line) + line.len();
    let found = all.iter().find(|h| h.offset as usize == at);
    found.map_or_else(String::new, |h| h.text().trim().to_owned())
}

/// The numbers are those of the hill (`tests/reference/desense.py`), without its lines.
#[test]
fn lines_of_a_site_have_hints() {
    let c = site("isolation A9 of harbour to A1, 10.35 m vertical");
    assert_eq!(
        hint_at(&c, "10.35 m vertical"),
        "56.1 dB ± 6.9 dB at 146.3137 MHz, 5.1 wavelengths"
    );
    let near = site("isolation A9 of harbour to A1, 6 m horizontal");
    assert_eq!(
        hint_at(&near, "6 m horizontal"),
        "too near for the rule at 146.3137 MHz, 2.9 wavelengths"
    );
    let c = site(MEASURED);
    // what was measured stands there already
    assert_eq!(hint_at(&c, MEASURED), "");
    let limit = hint_at(&c, "limit 1 dB desense, \"club rule 5\"");
    // 44.0 - 150 - 48 is 14.0 over -168.0, and 10 log(1 + 10^1.4) is 14.1; 44.0 - 48 over -25
    assert_eq!(
        limit,
        "not met: noise 14.1 dB, carrier 21.0 dB over blocking"
    );
}

#[test]
fn the_pointer_shows_both_numbers() {
    let c = Case::new(
        &SITE
            .replace('@', MEASURED)
            .replace("limit 1 dB", "lim$0it 1 dB"),
    );
    let h = hover(&c.s, c.doc, c.cursor(), &Config::default()).expect("something to say");
    for part in [
        "not met: noise 14.1 dB, carrier 21.0 dB over blocking",
        "together 14.1 dB (10.5 to 17.9)",
        "H1 of harbour: noise -154.0 dBm/Hz, 14.0 dB over; carrier -4.0 dBm, 21.0 dB over",
    ] {
        assert!(h.text.contains(part), "{part}: {}", h.text);
    }
    let c = site("isola$0tion A9 of harbour to A1, 10.35 m vertical");
    let h = hover(&c.s, c.doc, c.cursor(), &Config::default()).expect("something to say");
    assert!(h.text.contains("56.1 dB ± 6.9 dB"), "{}", h.text);
}

#[test]
fn antennas_of_the_site_are_offered() {
    let labels = |line: &str| {
        let c = site(line);
        let all = completion(&c.s, c.doc, c.cursor(), &Config::default());
        all.into_iter().map(|x| x.label).collect::<Vec<_>>()
    };
    assert_eq!(labels("isolation $0"), ["A1", "A9 of harbour"]);
    assert_eq!(labels("isolation A9 $0"), ["to", "of"]);
    assert_eq!(
        labels("isolation A9 of $0"),
        ["hill", "harbour"]
            .map(str::to_owned)
            .into_iter()
            .rev()
            .collect::<Vec<_>>()
    );
    assert_eq!(
        labels("isolation A9 of harbour to $0"),
        ["A1", "A9 of harbour"]
    );
    let after = labels("isolation A9 of harbour to A1 48 dB $0");
    assert!(
        after.iter().any(|l| l == "at") && after.iter().any(|l| l == "on"),
        "{after:?}"
    );
}

#[test]
fn an_antenna_is_renamed_in_its_isolation() {
    let text = SITE
        .replace('@', MEASURED)
        .replace("antenna A1", "antenna A$01");
    let c = Case::new(&text);
    let edits = rename(&c.s, c.doc, c.cursor(), "A2").expect("a name");
    let new = applied(c.text(), &edits);
    assert!(new.contains("isolation A9 of harbour to A2 48 dB"), "{new}");
}
