//! The papers that `report` prints.

// No doc comment on the structure: it would become the command's.

#[derive(Debug, clap::Args)]
pub(crate) struct PaperArgs {
    /// Print one page a station for the wall of the site: chains, powers, limits and clauses, position,
    /// ground and heights, distances to keep, readings with blanks.
    #[arg(long, conflicts_with_all = ["plot", "table", "verify", "link", "site", "exposure"])]
    pub(crate) sheet: bool,
    /// Print the bill of materials: cable by type, connectors, parts.
    #[arg(long, conflicts_with_all = ["plot", "table", "verify", "link", "site", "exposure", "sheet"])]
    pub(crate) materials: bool,
    /// Fill in the form of these rules for each transmit chain, in its own units and rounding.
    #[arg(long, value_name = "FORM", conflicts_with_all = ["plot", "table", "verify", "link", "site", "exposure", "sheet", "materials"])]
    pub(crate) coordination: Option<String>,
    /// What to add to each length of cable, in percent.
    #[arg(long, requires = "materials", value_name = "PERCENT", value_parser = spare)]
    pub(crate) spare: Option<f64>,
    /// Put this variant in the place of its station.
    #[arg(long, value_name = "NAME")]
    pub(crate) variant: Option<String>,
}

/// A share from 0 to 100 %.
fn spare(text: &str) -> Result<f64, String> {
    let bare = text.trim().trim_end_matches('%').trim();
    match bare.parse::<f64>() {
        Ok(x) if (0.0..=100.0).contains(&x) => Ok(x),
        _ => Err("it is no share from 0 to 100 %; write for example `--spare 10`".to_owned()),
    }
}

impl PaperArgs {
    /// Whether a paper is asked for.
    pub(crate) fn any(&self) -> bool {
        self.sheet || self.materials || self.coordination.is_some()
    }
}
