//! Cells and tables of CSV, shared by all commands that print it.

/// A table of a head and rows.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub(crate) fn table(head: &[&str], rows: Vec<Vec<String>>) -> Result<String, csv::Error> {
    let mut out = csv::Writer::from_writer(Vec::new());
    out.write_record(head)?;
    for row in rows {
        out.write_record(&row)?;
    }
    let bytes = out
        .into_inner()
        .map_err(|e| csv::Error::from(e.into_error()))?;
    Ok(String::from_utf8_lossy(&bytes).into_owned())
}

/// The shortest digits that give back the same number; an empty cell where it is not finite.
pub(crate) fn number(value: f64) -> String {
    if value.is_finite() {
        value.to_string()
    } else {
        String::new()
    }
}

/// The same, or an empty cell.
pub(crate) fn maybe(value: Option<f64>) -> String {
    value.map(number).unwrap_or_default()
}

/// A text, or an empty cell.
pub(crate) fn text(value: Option<&String>) -> String {
    value.cloned().unwrap_or_default()
}
