//! Texts with marked places, for what a test asks about a cursor or a selection.

use downlead_base::Span;

/// A text without its markers, and their positions.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Marked {
    /// The text.
    pub text: String,
    /// Byte offsets of the markers, in order.
    pub at: Vec<u32>,
}

impl Marked {
    /// The only marker.
    ///
    /// # Panics
    /// When there is none or more than one.
    #[must_use]
    pub fn cursor(&self) -> u32 {
        assert_eq!(self.at.len(), 1, "one `$0` is wanted");
        self.at[0]
    }

    /// Between the two markers.
    ///
    /// # Panics
    /// When there are not two.
    #[must_use]
    pub fn selection(&self) -> Span {
        assert_eq!(self.at.len(), 2, "two `$0` are wanted");
        Span::new(self.at[0], self.at[1])
    }
}

/// Takes the markers `$0` out of a text. (`$` is no character of the language.)
#[must_use]
pub fn marked(text: &str) -> Marked {
    let mut out = Marked {
        text: String::with_capacity(text.len()),
        at: Vec::new(),
    };
    let mut parts = text.split("$0");
    out.text.push_str(parts.next().unwrap_or_default());
    for part in parts {
        out.at
            .push(u32::try_from(out.text.len()).expect("a short text"));
        out.text.push_str(part);
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn markers_are_taken_out() {
        let m = marked("run $0M1$0 46 m");
        assert_eq!(m.text, "run M1 46 m");
        assert_eq!(m.selection(), Span::new(4, 6));
        assert_eq!(marked("é$0").cursor(), 2);
    }
}
