//! Figures in words: decimals by their uncertainty, counts, bands.

use downlead_quantity::frequency;

/// A value and its expanded uncertainty with the decimals that two digits of the uncertainty
/// leave (GUM, JCGM 100:2008, 7.2.6), at most `most`.
#[must_use]
pub fn with_uncertainty(value: f64, u: f64, most: usize) -> (String, String) {
    let decimals = if u > 0.0 && u.is_finite() {
        let first = libm::floor(libm::log10(u)) as i32;
        usize::try_from((1 - first).max(0)).unwrap_or(0).min(most)
    } else {
        most.min(2)
    };
    let plain = format!("{value:.decimals$}");
    let zero = plain.trim_start_matches(['-', '0', '.']).is_empty();
    let value = if zero {
        plain.trim_start_matches('-').to_owned()
    } else {
        plain
    };
    (value, format!("{u:.decimals$}"))
}

/// `1 band`, `9 bands`.
#[must_use]
pub fn counted(n: usize, what: &str) -> String {
    match n {
        1 => format!("1 {what}"),
        n => format!("{n} {what}s"),
    }
}

/// `2m, 145.3 MHz`, or the frequency alone where the band has no name.
#[must_use]
pub fn band_in_words(name: &str, hz: f64) -> String {
    let f = frequency(hz);
    if name == f { f } else { format!("{name}, {f}") }
}
