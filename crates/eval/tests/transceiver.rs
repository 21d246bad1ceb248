//! A radio that sends and receives on one line: first in one chain, last in the other.

mod common;

use common::load;
use downlead_eval::Snapshot;
use downlead_eval::result::BandResult;

const CAR: &str = "band 2m { transmit 146.3137 MHz; receive 146.9137 MHz }
station car {
    joins n-pair
    jumper C1 4 m of rg-213
    antenna CA 2.15 dBi ± 1 dB, height 1.5 m agl
";

const RADIO: &str = "    transceiver R {
        power 25 W ± 10 % carrier
        mode fm
        sensitivity -117 dBm for 12 dB sinad
        sensitivity -111 dBm for 20 dB sinad
        noise figure 8 dB
    }
    chain talk on 2m transmit { R; C1; CA }
    chain hear on 2m { CA; C1; R }
}
";

/// The same as two parts, with ports that lose nothing to keep them off each other.
const TWO: &str = "    transmitter T 25 W ± 10 % carrier, fm
    receiver R -117 dBm for 12 dB sinad, noise figure 8 dB
    chain talk on 2m transmit { T; C1; CA }
    chain hear on 2m receive { CA; C1; R }
}
";

fn bands(s: &Snapshot) -> Vec<&BandResult> {
    let items = s.scopes().iter().flat_map(downlead_eval::Scope::items);
    items
        .flat_map(|i| i.2.chains.iter().flat_map(|c| &c.bands))
        .collect()
}

#[test]
fn a_transceiver_is_a_transmitter_and_a_receiver() {
    let one = load(&format!("{CAR}{RADIO}"));
    assert!(one.diagnostics().is_empty(), "{:?}", one.diagnostics());
    let two = load(&format!("{CAR}{TWO}"));
    let (a, b) = (bands(&one), bands(&two));
    assert_eq!((a.len(), b.len()), (2, 2));
    assert!(a[0].eirp_w.is_some() && a[1].sensitivity_dbm.is_some());
    for (a, b) in a.iter().zip(b) {
        assert_eq!(a.hz, b.hz);
        assert_eq!(a.total_db, b.total_db);
        assert_eq!(a.eirp_w, b.eirp_w);
        assert_eq!(a.sensitivity_dbm, b.sensitivity_dbm);
        assert_eq!(a.noise_figure_db, b.noise_figure_db);
        assert_eq!(a.uncertainty_db, b.uncertainty_db);
    }
}

#[test]
fn it_shares_no_line_with_another_but_two_radios_do() {
    let two = load(&format!("{CAR}{TWO}"));
    let codes: Vec<&str> = two.diagnostics().iter().map(|d| d.code.id).collect();
    assert_eq!(codes, ["shared-port"]);
}

/// The findings of a radio with this line more.
fn found(line: &str) -> Vec<String> {
    let text = format!("{CAR}{RADIO}").replace("        mode fm\n", line);
    let s = load(&text);
    let all = s.diagnostics();
    all.iter()
        .map(|d| format!("{}: {}", d.code.id, d.message))
        .collect()
}

#[test]
fn what_is_said_twice_or_is_none_of_its_words_is_found() {
    let again = found("        sensitivity -110 dBm for 20 dB sinad\n");
    assert_eq!(
        again,
        ["said-twice: The sensitivity of this receiver for 20 dB sinad is said already."]
    );
    let mode = found("        mode fm\n        mode ssb\n");
    assert!(mode[0].starts_with("words-exclude"), "{mode:?}");
    let none = found("        gain 3 dB\n");
    assert!(none[0].contains("in a transceiver"), "{none:?}");
    let lame = load("station car { transceiver R { mode fm } }\n");
    let all = lame.diagnostics();
    assert!(
        all.iter().any(|d| d.message.contains("needs its power")),
        "{all:?}"
    );
}

#[test]
fn a_transceiver_is_where_no_transmit_chain_may_end_twice() {
    let s = load(&format!("{CAR}{RADIO}").replace("{ R; C1; CA }", "{ R; C1; R; CA }"));
    let codes: Vec<&str> = s.diagnostics().iter().map(|d| d.code.id).collect();
    assert!(codes.contains(&"part-after-end"), "{codes:?}");
    assert!(codes.contains(&"chain-loop"), "{codes:?}");
}
