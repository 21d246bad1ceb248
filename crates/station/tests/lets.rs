//! Named values keep their uncertainty in what is made of them (GUM, JCGM 100:2008, 5.1.2).

use downlead_station::{Lets, lower_let};
use downlead_syntax::File;

fn lets(text: &str) -> Lets {
    let mut out = Lets::default();
    for p in File::parse(text).items() {
        let (v, diags) = lower_let(&p.item, &out);
        assert!(diags.is_empty(), "{diags:?}");
        if let Some((name, v)) = v {
            out.insert(name.text, v);
        }
    }
    out
}

#[test]
fn sums_and_products_carry_the_doubt() {
    let l = lets(
        "let tower = 30 m ± 0.3 m\nlet spare = 2 m ± 0.1 m\nlet a = tower + 2 * spare\nlet twice = tower + tower\nlet gone = tower - tower + 1 m\nlet span = 1 m to 3 m\nlet half = span / 2\n",
    );
    let u = |n: &str| l[n].standard();
    let rect = |h: f64| h / 3f64.sqrt();
    assert!((l["a"].q.value - 34.0).abs() < 1e-12);
    assert!((u("a") - rect(0.3).hypot(2.0 * rect(0.1))).abs() < 1e-12);
    // one cause stays one
    assert!((u("twice") - 2.0 * rect(0.3)).abs() < 1e-12);
    assert_eq!(u("gone"), 0.0);
    // what one named value brings keeps its shape, several together are normal
    assert!(l["twice"].is_rectangular() && !l["a"].is_rectangular());
    // an interval enters by its middle and its width
    assert!((l["half"].q.value - 1.0).abs() < 1e-12);
    assert!((u("half") - 0.5 * rect(1.0)).abs() < 1e-12);
}

#[test]
fn a_level_made_of_named_values_has_its_uncertainty_in_db() {
    let l = lets("let p = 40 dBm ± 0.5 dB\nlet less = p - 1 dB\n");
    assert!((l["less"].standard() - 0.5 / 3f64.sqrt()).abs() < 1e-12);
    let (half, _) = l["less"].half.expect("a half-width");
    assert_eq!(half.dim, downlead_quantity::Dim::Decibel);
}

#[test]
fn a_stated_uncertainty_adds_to_that_of_the_named_values() {
    let l = lets(
        "let tower = 30 m ± 0.3 m\nlet sum = tower + 2 m ± 0.4 m\nlet p = 40 dBm ± 0.3 dB\nlet q = p + 1 dB ± 0.4 dB\n",
    );
    let rect = 3f64.sqrt();
    assert!((l["sum"].standard() - 0.5 / rect).abs() < 1e-12);
    assert!(!l["sum"].is_rectangular());
    assert!((l["q"].standard() - 0.5 / rect).abs() < 1e-12);
}

#[test]
fn ends_of_an_interval_have_no_uncertainty_of_their_own() {
    let mut lets = Lets::default();
    let mut found = Vec::new();
    for p in File::parse("let a = 1 m ± 0.1 m\nlet b = a to 3 m\nlet c = 0.5 m to a\n").items() {
        let (v, diags) = lower_let(&p.item, &lets);
        found.extend(diags.into_iter().map(|d| d.code.id));
        if let Some((name, v)) = v {
            lets.insert(name.text, v);
        }
    }
    assert_eq!(found, ["uncertainty-not-used", "uncertainty-not-used"]);
}
