//! Colours of a terminal.

/// ANSI styles, or nothing at all.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Style {
    /// Whether there is colour.
    pub colour: bool,
}

impl Style {
    /// Without colours.
    pub const PLAIN: Style = Style { colour: false };

    fn paint(self, code: &str, text: &str) -> String {
        if self.colour && !text.is_empty() {
            format!("\u{1b}[{code}m{text}\u{1b}[0m")
        } else {
            text.to_owned()
        }
    }

    /// In bold.
    #[must_use]
    pub fn bold(self, text: &str) -> String {
        self.paint("1", text)
    }

    /// Fainter than the rest.
    #[must_use]
    pub fn faint(self, text: &str) -> String {
        self.paint("2", text)
    }

    /// Met, or agrees.
    #[must_use]
    pub fn good(self, text: &str) -> String {
        self.paint("32", text)
    }

    /// Cannot tell.
    #[must_use]
    pub fn unclear(self, text: &str) -> String {
        self.paint("33", text)
    }

    /// Not met, or differs.
    #[must_use]
    pub fn bad(self, text: &str) -> String {
        self.paint("1;31", text)
    }
}

#[cfg(test)]
mod tests {
    use super::Style;

    #[test]
    fn no_codes_without_colour() {
        assert_eq!(Style { colour: false }.bad("x"), "x");
        assert_eq!(Style { colour: true }.bad("x"), "\u{1b}[1;31mx\u{1b}[0m");
    }
}
