//! Numbers of derivations: operands to enough digits, values that are operands elsewhere.

use downlead_physics::net::record::{DIGITS, digits, operand};
use downlead_quantity::number;

/// A term of a sum of decibels that is smaller is none: it shows in no digit of a power.
pub(crate) const NOTHING_DB: f64 = 1e-6;

/// A small difference of larger numbers is shown in numbers from here on: below, the digits of
/// the numbers do not give it.
pub(crate) const SHOWN_DB: f64 = 1e-5;

/// A number as an operand.
pub(crate) fn op(x: f64) -> String {
    operand(x, DIGITS)
}

/// A share of power as an operand: what is left beside 1 has as many digits as the share.
pub(crate) fn share(x: f64) -> String {
    if x.abs() < 1e-6 { op(x) } else { number(x, 10) }
}

/// A share of power as a value.
pub(crate) fn share_value(x: f64) -> String {
    if x.abs() < 1e-6 {
        digits(x, DIGITS)
    } else {
        number(x, 10)
    }
}

/// Watts as an operand.
pub(crate) fn watts(x: f64) -> String {
    format!("{} W", op(x))
}

/// A value with its unit, to the digits of an operand.
pub(crate) fn value(x: f64, unit: &str) -> String {
    if unit.is_empty() {
        digits(x, DIGITS)
    } else {
        format!("{} {unit}", digits(x, DIGITS))
    }
}

/// Decibels as an operand of a sum.
pub(crate) fn term(db: f64) -> String {
    digits(db, DIGITS)
}

/// Decibels that are an operand elsewhere.
pub(crate) fn decibels(db: f64) -> String {
    format!("{} dB", term(db))
}

/// `a + b − c`: terms with their signs.
pub(crate) fn sum(terms: &[f64]) -> String {
    signed(terms, term)
}

/// The same where little is left of large terms.
pub(crate) fn difference(terms: &[f64]) -> String {
    signed(terms, |x| number(x, 10))
}

fn signed(terms: &[f64], term: impl Fn(f64) -> String) -> String {
    let mut out = String::new();
    for (i, t) in terms.iter().enumerate() {
        match (i, *t < 0.0) {
            (0, _) => out.push_str(&term(*t)),
            (_, true) => {
                out.push_str(" - ");
                out.push_str(&term(-t));
            }
            (_, false) => {
                out.push_str(" + ");
                out.push_str(&term(*t));
            }
        }
    }
    out
}

/// The numbers of a small difference, where their digits give it.
pub(crate) fn shown(difference_db: f64, numbers: String) -> String {
    if difference_db.abs() < SHOWN_DB {
        String::new()
    } else {
        numbers
    }
}

/// `10^(−x/10)`: the power ratio of a loss in dB.
pub(crate) fn ratio_of_loss(db: f64) -> String {
    if db < 0.0 {
        format!("10^({}/10)", term(-db))
    } else {
        format!("10^(-{}/10)", term(db))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn terms_keep_their_signs() {
        assert_eq!(sum(&[0.5, -0.25, 0.125]), "0.5 - 0.25 + 0.125");
        assert_eq!(sum(&[-0.5, 0.000_001_25]), "-0.5 + 1.25×10^-6");
        assert_eq!(ratio_of_loss(-15.0), "10^(15/10)");
        assert_eq!(ratio_of_loss(0.25), "10^(-0.25/10)");
    }

    #[test]
    fn a_small_share_keeps_its_digits() {
        assert_eq!(share(0.25), "0.25");
        assert_eq!(share(1.25e-9), "(1.25×10^-9)");
    }
}
