//! A pocket calculator: evaluates the arithmetic that derivations print, and reads their values.

use num_complex::Complex64;

/// Units that may stand after a number.
const UNITS: [&str; 7] = ["dBm", "dBi", "dB", "W", "min", "m", "ohm"];

struct Calculator<'t> {
    rest: &'t str,
}

/// What an expression of numbers, `+ − × / ^ √ log10 exp ln sin cos ( )` comes to; `j` after a
/// number makes it imaginary.
pub(crate) fn evaluate(text: &str) -> Result<Complex64, String> {
    let mut c = Calculator { rest: text };
    let v = c.sum()?;
    if c.rest.trim().is_empty() {
        Ok(v)
    } else {
        Err(format!("`{}` is left of `{text}`", c.rest))
    }
}

impl Calculator<'_> {
    fn take(&mut self, any: &[&str]) -> Option<usize> {
        let rest = self.rest.trim_start();
        let k = any.iter().position(|a| rest.starts_with(a))?;
        self.rest = &rest[any[k].len()..];
        Some(k)
    }

    fn sum(&mut self) -> Result<Complex64, String> {
        let mut v = self.product()?;
        while let Some(k) = self.take(&["+", "-", "−"]) {
            let b = self.product()?;
            v = if k == 0 { v + b } else { v - b };
        }
        Ok(v)
    }

    fn product(&mut self) -> Result<Complex64, String> {
        let mut v = self.signed()?;
        loop {
            if let Some(k) = self.take(&["×", "/"]) {
                let b = self.signed()?;
                v = if k == 0 { v * b } else { v / b };
            } else if self.function_follows() {
                // `10 log10(x)`
                v *= self.power()?;
            } else {
                return Ok(v);
            }
        }
    }

    fn function_follows(&self) -> bool {
        let rest = self.rest.trim_start();
        ["log10", "ln", "exp", "sin", "cos", "√"]
            .iter()
            .any(|f| rest.starts_with(f))
    }

    fn signed(&mut self) -> Result<Complex64, String> {
        if self.take(&["-", "−"]).is_some() {
            Ok(-self.signed()?)
        } else {
            self.power()
        }
    }

    fn power(&mut self) -> Result<Complex64, String> {
        let v = self.atom()?;
        if self.take(&["²"]).is_some() {
            return Ok(v * v);
        }
        if self.take(&["^"]).is_some() {
            let e = self.signed()?;
            return Ok(match real(v) {
                Ok(x) => x.powf(real(e)?).into(),
                Err(_) => v.powf(real(e)?),
            });
        }
        Ok(v)
    }

    fn atom(&mut self) -> Result<Complex64, String> {
        if let Some(k) = self.take(&["log10", "ln", "exp", "sin", "cos", "√"]) {
            let x = real(self.atom()?)?;
            let f = [f64::log10, f64::ln, f64::exp, f64::sin, f64::cos, f64::sqrt][k];
            return Ok(f(x).into());
        }
        if self.take(&["("]).is_some() {
            let v = self.sum()?;
            return match self.take(&[")"]) {
                Some(_) => Ok(v),
                None => Err(format!("no `)` before `{}`", self.rest)),
            };
        }
        let rest = self.rest.trim_start();
        let end = rest
            .find(|c: char| !c.is_ascii_digit() && c != '.')
            .unwrap_or(rest.len());
        let v: f64 = rest[..end]
            .parse()
            .map_err(|_| format!("no number at `{rest}`"))?;
        self.rest = &rest[end..];
        if self.take(&["°"]).is_some() {
            return Ok(v.to_radians().into());
        }
        let after = self.rest.trim_start();
        if let Some(u) = UNITS.iter().find(|u| after.starts_with(**u))
            && !after[u.len()..].starts_with(char::is_alphanumeric)
        {
            self.rest = &after[u.len()..];
        } else if let Some(rest) = after.strip_prefix('j') {
            self.rest = rest;
            return Ok(Complex64::new(0.0, v));
        }
        Ok(v.into())
    }
}

fn real(v: Complex64) -> Result<f64, String> {
    if v.im == 0.0 {
        Ok(v.re)
    } else {
        Err(format!("{v} is not real"))
    }
}

/// A printed value: the number, and half a unit of its last digit. Powers in watts.
pub(crate) fn printed(value: &str) -> Result<(Complex64, f64), String> {
    let text = value.replace('−', "-");
    let (re, half, rest) = number(&text).ok_or(format!("`{value}` begins with no number"))?;
    let rest = rest.trim_start();
    if let Some(im) = rest.strip_suffix('j') {
        let im = im.replace(' ', "");
        let (im, other, _) = number(&im).ok_or(format!("`{value}`"))?;
        return Ok((Complex64::new(re, im), half.max(other)));
    }
    let mut scale = 1.0;
    for (unit, factor) in [("kW", 1e3), ("mW", 1e-3), ("µW", 1e-6)] {
        if rest.starts_with(unit) {
            scale = factor;
        }
    }
    Ok(((re * scale).into(), half * scale))
}

/// The number a text begins with, half a unit of its last digit, and what follows.
fn number(text: &str) -> Option<(f64, f64, &str)> {
    let end = text
        .char_indices()
        .find(|(i, c)| !(c.is_ascii_digit() || *c == '.' || *i == 0 && matches!(c, '-' | '+')))
        .map_or(text.len(), |x| x.0);
    let number: f64 = text[..end].parse().ok()?;
    let decimals = text[..end].split_once('.').map_or(0, |x| x.1.len());
    let mut rest = &text[end..];
    let mut scale = 1.0;
    if let Some(e) = rest.strip_prefix("×10^") {
        let end = e
            .char_indices()
            .find(|(i, c)| !(c.is_ascii_digit() || *i == 0 && *c == '-'))
            .map_or(e.len(), |x| x.0);
        scale = 10f64.powi(e[..end].parse().ok()?);
        rest = &e[end..];
    }
    let decimals = i32::try_from(decimals).ok()?;
    Some((number * scale, 0.5 * scale * 10f64.powi(-decimals), rest))
}

#[test]
fn the_calculator_knows_its_sums() {
    let is = |t: &str, v: f64| {
        let have = evaluate(t).unwrap_or_else(|e| panic!("{e}"));
        assert!((have - v).norm() < 1e-12 * v.abs().max(1.0), "{t}: {have}");
    };
    is("2 - 3 - 4", -5.0);
    is("2 / (3 × 4)", 1.0 / 6.0);
    is("45 W × 10^(-0.3/10)", 45.0 * 10f64.powf(-0.03));
    is("-10 log10(0.1)", 10.0);
    is("10 log10(100 W / (1 W + 9 W)) + 1", 11.0);
    is("2 × √(3^2 + 4²)", 10.0);
    is("1×10^-3 × 2", 0.002);
    is("2 × cos(60°) + 137 / 360", 1.0 + 137.0 / 360.0);
    is("-2^2 + (-3)", -7.0);
    is("20.5 m − 0.5 m", 20.0);
    is("(1 + 2 j) × (1 - 2 j) / 5", 1.0);
    is("(3^2 + 4^2)^2", 625.0);
    for bad in ["", "2 +", "(2", "2 x", "loss", "2 3", "√(1 + 1 j)"] {
        assert!(evaluate(bad).is_err(), "{bad}");
    }
}

#[test]
fn values_are_read_with_their_last_digit() {
    let close = |have: Result<(Complex64, f64), String>, want: (f64, f64)| {
        let (v, half) = have.expect("a value");
        assert!((v - want.0).norm() < 1e-12 * want.0.abs(), "{v}");
        assert!((half / want.1 - 1.0).abs() < 1e-9, "{half}");
    };
    close(printed("38.4 W (45.8 dBm) ± 0.65 dB"), (38.4, 0.05));
    close(printed("1.69 kW ± 1.19 dB"), (1690.0, 5.0));
    close(printed("+0.85 dB"), (0.85, 0.005));
    close(printed("2.5×10^-7 dB"), (2.5e-7, 0.5e-8));
    let (z, half) = printed("0.945 - 0.1023 j").expect("a complex value");
    assert!((z - Complex64::new(0.945, -0.1023)).norm() < 1e-12);
    assert!((half - 0.0005).abs() < 1e-12);
    assert!(printed("not known").is_err());
}
