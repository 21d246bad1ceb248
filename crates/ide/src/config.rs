//! What the reader wants to see.

/// Kinds of inlay hints.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(clippy::struct_excessive_bools, reason = "one switch a kind")]
pub struct HintKinds {
    /// Master switch.
    pub enabled: bool,
    /// Loss of a part.
    pub loss: bool,
    /// Net power after a part.
    pub power: bool,
    /// ERP and EIRP at the antenna.
    pub radiated: bool,
    /// Verdict and margin of limits.
    pub limits: bool,
    /// What readings and expectations come to.
    pub readings: bool,
    /// Loss at a cable's definition.
    pub cables: bool,
}

/// Whether hints come with their tooltips and edits, which cost more than the hints.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HintDetails {
    /// With all of them.
    Now,
    /// The pieces as they are with all of them, but empty tooltips where there are some:
    /// [`hint_at`](crate::hint_at) gives the rest.
    Later,
    /// Text only.
    Never,
}

/// Settings of all features.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Config {
    /// Hints shown.
    pub hints: HintKinds,
    /// Bands shown in hints and lenses, by name or frequency as written; empty: all.
    pub bands: Vec<String>,
    /// Hints of a block begin in one column.
    pub aligned: bool,
    /// Code lenses.
    pub lenses: bool,
    /// Swatches of status at what is judged.
    pub swatches: bool,
    /// Hover and documentation in Markdown rather than plain text.
    pub markdown: bool,
    /// Completions with places to fill in.
    pub snippets: bool,
    /// Tooltips and edits of hints.
    pub hint_details: HintDetails,
    /// Findings shown of a file before "N more"; 0 for all.
    pub max_diagnostics: usize,
}

impl Default for Config {
    fn default() -> Self {
        Config {
            hints: HintKinds {
                enabled: true,
                loss: true,
                power: true,
                radiated: true,
                limits: true,
                readings: true,
                cables: true,
            },
            bands: Vec::new(),
            aligned: false,
            lenses: true,
            // an editor that shows colours takes them for the text's own
            swatches: false,
            markdown: true,
            snippets: true,
            hint_details: HintDetails::Now,
            max_diagnostics: 0,
        }
    }
}

impl Config {
    /// Whether a band is to be shown.
    pub(crate) fn shows(&self, band: &str) -> bool {
        self.bands.is_empty() || self.bands.iter().any(|b| b == band)
    }
}
