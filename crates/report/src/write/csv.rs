//! Tables as CSV: all digits, columns in their documented order.

use super::plain::printable;

/// What stands in a cell.
#[derive(Clone, Debug, PartialEq)]
pub enum Value {
    /// Nothing.
    None,
    /// The shortest digits that give back the same number; nothing where it is not finite.
    Number(f64),
    /// A whole number.
    Whole(u64),
    /// Words.
    Words(String),
}

impl Value {
    fn cell(&self) -> String {
        match self {
            Value::Number(v) if v.is_finite() => v.to_string(),
            Value::None | Value::Number(_) => String::new(),
            Value::Whole(n) => n.to_string(),
            Value::Words(s) => tame(s),
        }
    }
}

/// Words that no program takes for anything else: spreadsheets compute what begins like a formula,
/// and terminals obey control characters. Such a cell begins with an apostrophe.
fn tame(words: &str) -> String {
    let shown = printable(words);
    let formula = shown.starts_with(['=', '+', '-', '@', '\t']) && shown.parse::<f64>().is_err();
    match formula {
        true => format!("'{shown}"),
        false => shown.into_owned(),
    }
}

impl From<f64> for Value {
    fn from(v: f64) -> Value {
        Value::Number(v)
    }
}

impl From<u32> for Value {
    fn from(v: u32) -> Value {
        Value::Whole(v.into())
    }
}

impl From<u64> for Value {
    fn from(v: u64) -> Value {
        Value::Whole(v)
    }
}

impl From<usize> for Value {
    fn from(v: usize) -> Value {
        Value::Whole(v as u64)
    }
}

impl From<bool> for Value {
    fn from(v: bool) -> Value {
        Value::Words(v.to_string())
    }
}

impl From<&str> for Value {
    fn from(v: &str) -> Value {
        Value::Words(v.to_owned())
    }
}

impl From<&String> for Value {
    fn from(v: &String) -> Value {
        Value::Words(v.clone())
    }
}

impl<T: Into<Value>> From<Option<T>> for Value {
    fn from(v: Option<T>) -> Value {
        v.map_or(Value::None, Into::into)
    }
}

/// A column: its name, and what stands in it of a row.
pub type Field<R> = (&'static str, fn(&R) -> Value);

/// A table of all rows.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub fn csv<R>(fields: &[Field<R>], rows: &[R]) -> Result<String, csv::Error> {
    let mut out = csv::Writer::from_writer(Vec::new());
    out.write_record(fields.iter().map(|f| f.0))?;
    for row in rows {
        out.write_record(fields.iter().map(|f| (f.1)(row).cell()))?;
    }
    let bytes = out
        .into_inner()
        .map_err(|e| csv::Error::from(e.into_error()))?;
    Ok(String::from_utf8_lossy(&bytes).into_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_are_no_formula_and_steer_no_terminal() {
        let cell = |s: &str| Value::from(s).cell();
        assert_eq!(cell("=cmd|calc!A0"), "'=cmd|calc!A0");
        assert_eq!(cell("+1+1"), "'+1+1");
        assert_eq!(cell("@SUM(1)"), "'@SUM(1)");
        assert_eq!(cell("\t=1"), "'\t=1");
        assert_eq!(cell("-3.5"), "-3.5");
        assert_eq!(cell("a \u{1b}[2J \u{202e}"), "a ?[2J \u{fffd}");
        assert_eq!(cell("AN-7 p. 2"), "AN-7 p. 2");
    }

    #[test]
    fn numbers_keep_their_digits_and_words_are_quoted() {
        let fields: &[Field<(f64, &str)>] = &[("loss_db", |r| r.0.into()), ("a", |r| r.1.into())];
        let rows = [(0.1 + 0.2, "x, \"y\""), (f64::INFINITY, "")];
        assert_eq!(
            csv(fields, &rows).unwrap(),
            "loss_db,a\n0.30000000000000004,\"x, \"\"y\"\"\"\n,\n"
        );
    }
}
