//! Parts that two transmitters share (newcomer's case: a protector after a diplexer).

mod common;

use common::load;

fn text(rating: &str, meet: &str) -> String {
    format!(
        "station s {{\n    transmitter TX1 25 W carrier, fm\n    transmitter TX2 25 W carrier, fm\n    {meet}\n    protector SP {{\n        loss 0.1 dB ± 0.05 dB\n        {rating}\n    }}\n    antenna A1 2.15 dBi ± 0.5 dB, swr 1\n\n    chain one on 145 MHz transmit {{\n        TX1\n        X1.a\n        SP\n        A1\n    }}\n    chain two on 435 MHz transmit {{\n        TX2\n        X1.b\n        SP\n        A1\n    }}\n}}\n"
    )
}

const DIPLEXER: &str =
    "diplexer X1 {\n        port a 0.1 dB ± 0.05 dB\n        port b 0.1 dB ± 0.05 dB\n    }";
const SWITCH: &str =
    "switch X1 {\n        port a 0.1 dB ± 0.05 dB\n        port b 0.1 dB ± 0.05 dB\n    }";

fn found(text: &str, code: &str) -> Vec<String> {
    load(text)
        .diagnostics()
        .into_iter()
        .filter(|d| d.code.id == code)
        .map(|d| d.message)
        .collect()
}

#[test]
fn ratings_judge_the_sum_of_what_passes() {
    // by hand: 25 W less 0.1 dB are 24.43 W each, 48.9 W together
    let f = found(&text("rating 30 W", DIPLEXER), "rating-exceeded");
    assert_eq!(f.len(), 1, "{f:?}");
    assert!(
        f[0].contains("TX1 and TX2 together bring 48.9 W"),
        "{}",
        f[0]
    );
    assert!(found(&text("rating 50 W", DIPLEXER), "rating-exceeded").is_empty());
}

#[test]
fn a_switch_lets_only_one_through() {
    assert!(found(&text("rating 30 W", SWITCH), "rating-exceeded").is_empty());
}

#[test]
fn peak_voltages_add() {
    // by hand: 24.43 W in 50 ohm are 34.9 V rms, two of them 69.9 V where they meet
    let f = found(&text("voltage 60 V", DIPLEXER), "voltage-exceeded");
    assert_eq!(f.len(), 1, "{f:?}");
    assert!(f[0].contains("70 V rms"), "{}", f[0]);
    assert!(found(&text("voltage 71 V", DIPLEXER), "voltage-exceeded").is_empty());
}
