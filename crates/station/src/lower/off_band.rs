//! Whether the frequencies of a band can be meant: beside its name, and beside each other.

use downlead_base::{Diagnostic, codes};
use downlead_quantity::{frequency, number, sig};

use crate::cx::{Cx, Val};
use crate::model::Name;

/// Speed of light in vacuum, m/s (exact, SI).
const LIGHT: f64 = 299_792_458.0;

/// A name and the wavelength differ by no more than this factor (our choice: the amateur bands
/// from 2200 m to 1 mm stay within 1.25).
const NAME_FITS: f64 = 1.5;

/// The wavelength a band's name says, m: `2m`, `70cm`, `1.25m`. None for other
/// names, `70cm-if` too: their meaning is not known.
fn wavelength(name: &str) -> Option<f64> {
    let unit = name.find(|c: char| c.is_ascii_alphabetic())?;
    let (digits, unit) = name.split_at(unit);
    let metres = match unit {
        "m" => 1.0,
        "cm" => 0.01,
        "mm" => 0.001,
        _ => return None,
    };
    let n: f64 = digits.parse().ok()?;
    (n > 0.0).then_some(n * metres)
}

fn near(a: f64, b: f64) -> bool {
    (1.0 / NAME_FITS..=NAME_FITS).contains(&(a / b))
}

/// The power of 1000 that makes a frequency fit another.
fn slip(hz: f64, like: f64) -> Option<f64> {
    let powers = [1e3, 1e-3, 1e6, 1e-6];
    powers.into_iter().find(|k| near(hz * k, like))
}

/// A band called `2m` has waves of about 2 m.
pub(super) fn off_the_name(cx: &mut Cx<'_>, name: &Name, hz: f64, v: &Val) {
    let Some(metres) = wavelength(&name.text) else {
        return;
    };
    if near(LIGHT / hz, metres) {
        return;
    }
    let k = slip(hz, LIGHT / metres);
    let long = |hz: f64| wave(LIGHT / hz);
    let d = Diagnostic::new(
        &codes::FREQUENCY_OFF_BAND,
        v.loc,
        match k {
            Some(k) => format!(
                "Band `{}`: a wave of {} is {} long, one of {} is {}.",
                name.text,
                frequency(hz),
                long(hz),
                frequency(hz * k),
                long(hz * k)
            ),
            None => format!(
                "Band `{}`: a wave of {} is {} long.",
                name.text,
                frequency(hz),
                long(hz)
            ),
        },
    )
    .at("not what the name says")
    .also(name.loc, "the name");
    cx.push(match k {
        Some(k) => scaled(d, v, k),
        None => d.help("Correct the frequency, or give the band another name."),
    });
}

/// Transmit and receive lie in one band, or a few bands apart; never a thousand times.
pub(super) fn off_the_pair(cx: &mut Cx<'_>, name: &Name, pair: [Option<(f64, Val)>; 2]) {
    let [Some((tx, tv)), Some((rx, rv))] = pair else {
        let Some((hz, v)) = pair.into_iter().flatten().next() else {
            return;
        };
        return off_the_name(cx, name, hz, &v);
    };
    let Some(k) = slip(rx, tx) else {
        // of two frequencies the name may mean either
        if wavelength(&name.text).is_none_or(|m| !near(LIGHT / rx, m)) {
            off_the_name(cx, name, tx, &tv);
        }
        return;
    };
    let apart = if tx > rx { tx / rx } else { rx / tx };
    let d = Diagnostic::new(
        &codes::FREQUENCY_OFF_BAND,
        rv.loc,
        format!(
            "Band `{}` transmits on {} and receives on {}: {} times apart.",
            name.text,
            frequency(tx),
            frequency(rx),
            sig(apart, 4)
        ),
    )
    .at("kHz, MHz or GHz?")
    .also(tv.loc, "transmit");
    // without a name that tells, the lower one: kHz stands for MHz more often than the reverse
    let receive = match wavelength(&name.text) {
        Some(m) => near(LIGHT / tx, m),
        None => rx < tx,
    };
    cx.push(if receive {
        scaled(d, &rv, k)
    } else {
        scaled(d, &tv, 1.0 / k)
    });
}

/// Offers the frequency times a power of 1000.
fn scaled(d: Diagnostic, v: &Val, k: f64) -> Diagnostic {
    let mut text = frequency(v.q.value * k);
    if let Some(up) = v.upper {
        text = format!("{text} to {}", frequency(up.value * k));
    }
    d.fix(format!("write `{text}`"), v.loc, text)
}

/// A wavelength as bands are called by it: `2.06 m`, `69 cm`.
fn wave(metres: f64) -> String {
    if metres >= 1.0 {
        format!("{} m", number(metres, if metres < 10.0 { 2 } else { 0 }))
    } else {
        format!(
            "{} cm",
            number(metres * 100.0, if metres < 0.1 { 2 } else { 0 })
        )
    }
}

#[cfg(test)]
mod tests {
    use super::{LIGHT, near, slip, wavelength};

    #[test]
    fn names_of_bands_fit_their_frequencies() {
        // edges of the amateur and short-wave broadcast bands, MHz (ITU Radio Regulations, from memory)
        for (name, lo, hi) in [
            ("2200m", 0.1357, 0.1378),
            ("630m", 0.472, 0.479),
            ("160m", 1.8, 2.0),
            ("120m", 2.3, 2.495),
            ("80m", 3.5, 4.0),
            ("75m", 3.9, 4.0),
            ("60m", 5.25, 5.45),
            ("49m", 5.9, 6.2),
            ("40m", 7.0, 7.3),
            ("31m", 9.4, 9.9),
            ("30m", 10.1, 10.15),
            ("20m", 14.0, 14.35),
            ("17m", 18.068, 18.168),
            ("15m", 21.0, 21.45),
            ("12m", 24.89, 24.99),
            ("10m", 28.0, 29.7),
            ("8m", 40.66, 40.7),
            ("6m", 50.0, 54.0),
            ("4m", 70.0, 70.5),
            ("2m", 144.0, 148.0),
            ("1.25m", 219.0, 225.0),
            ("70cm", 420.0, 450.0),
            ("33cm", 902.0, 928.0),
            ("23cm", 1240.0, 1300.0),
            ("13cm", 2300.0, 2450.0),
            ("9cm", 3300.0, 3500.0),
            ("6cm", 5650.0, 5925.0),
            ("3cm", 10_000.0, 10_500.0),
            ("1.2cm", 24_000.0, 24_250.0),
            ("6mm", 47_000.0, 47_200.0),
            ("4mm", 76_000.0, 81_500.0),
            ("2mm", 134_000.0, 141_000.0),
            ("1mm", 241_000.0, 250_000.0),
        ] {
            let m = wavelength(name).expect(name);
            for mhz in [lo, hi] {
                let ratio = LIGHT / (mhz * 1e6) / m;
                assert!(
                    (1.0 / 1.25..=1.25).contains(&ratio),
                    "{name} {mhz}: {ratio}"
                );
                assert!(near(LIGHT / (mhz * 1e6), m));
                assert_eq!(slip(mhz * 1e3, LIGHT / m), Some(1e3), "{name} in kHz");
                assert_eq!(slip(mhz * 1e9, LIGHT / m), Some(1e-3), "{name} in GHz");
            }
        }
    }

    #[test]
    fn other_names_say_nothing() {
        for name in [
            "hf80", "70cm-if", "2m.fm", "aprs", "m", "cm", "6meters", "0m", "2M",
        ] {
            assert_eq!(wavelength(name), None, "{name}");
        }
    }
}
