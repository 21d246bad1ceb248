//! Where an uncertainty may stand, and how large it can be.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_quantity::{Dim, Measure, number};

use super::Cx;
use super::value::Val;
use super::word::capital;

impl Cx<'_> {
    /// The value alone, for a figure in which an uncertainty would not be used: says so of a `±`,
    /// an interval or a `k` that stands there. Of an interval the middle is kept.
    pub(crate) fn alone(&mut self, v: &Val, what: &str) -> Val {
        self.alone_or(v, what, None)
    }

    /// The same, with what to do instead.
    pub(crate) fn alone_or(&mut self, v: &Val, what: &str, instead: Option<&str>) -> Val {
        if v.half.is_some() || v.upper.is_some() || v.coverage.is_some() {
            self.not_used(v, what, instead);
        }
        Val {
            q: v.middle(),
            half: None,
            upper: None,
            coverage: None,
            ..*v
        }
    }

    fn not_used(&mut self, v: &Val, what: &str, instead: Option<&str>) {
        let text = self.text(v.loc.span);
        let interval = v.upper.is_some();
        let mut d = Diagnostic::new(
            &codes::UNCERTAINTY_NOT_USED,
            v.loc,
            if interval {
                format!("{} is one figure, not an interval.", capital(what))
            } else {
                format!("{} takes no ±: no result would use it.", capital(what))
            },
        )
        .at(if interval { "an interval" } else { "not used" });
        if let Some(at) = first_of(text, &["±", "+/-", " k "]) {
            let start = v.loc.span.start + u32::try_from(text[..at].trim_end().len()).unwrap_or(0);
            let tail = Loc::new(v.loc.item, Span::new(start, v.loc.span.end));
            d = d.fix("remove the ±", tail, "").preferred();
        } else if !interval {
            d = d.help("It comes from a named value; write the figure itself here.");
        }
        if let Some(h) = instead {
            d = d.help(h);
        }
        self.push(d);
    }

    /// Says that a `k` stands without a `±`. False if it does.
    pub(super) fn coverage_fits(&mut self, v: &Val) -> bool {
        let Some(k) = v.coverage.filter(|_| v.half.is_none()) else {
            return true;
        };
        self.push(
            Diagnostic::new(
                &codes::UNCERTAINTY_NOT_USED,
                v.loc,
                format!(
                    "`k {}` says how a ± was stated, and no ± stands before it.",
                    number(k, 3)
                ),
            )
            .at("no ±")
            .help("Written for example `0.55 dB ± 0.1 dB k 2`."),
        );
        false
    }

    /// Points out a `±` that reaches below the least value that can be, `least`.
    pub(crate) fn within_bounds(&mut self, v: &Val, m: &Measure, least: f64, what: &str) {
        if v.half.is_none() || m.reach() <= (m.value - least) * (1.0 + 1e-9) {
            return;
        }
        self.too_large(v.loc, what, v.q.dim == Dim::Decibel);
    }

    /// Says that a `±` is larger than its figure can be off.
    pub(crate) fn too_large(&mut self, loc: Loc, what: &str, decibels: bool) {
        self.push(
            Diagnostic::new(
                &codes::UNCERTAINTY_TOO_LARGE,
                loc,
                format!(
                    "The ± of {what} reaches to values that cannot be: it is larger than the figure itself."
                ),
            )
            .at("± too large")
            .help(if decibels {
                "Write the bounds as an interval instead, for example `0.1 dB to 0.6 dB`."
            } else {
                "Write the bounds as an interval instead: the lower value, `to`, and the higher one."
            }),
        );
    }
}

/// Where the first of some signs stands in a text.
pub(crate) fn first_of(text: &str, signs: &[&str]) -> Option<usize> {
    signs.iter().filter_map(|s| text.find(s)).min()
}
