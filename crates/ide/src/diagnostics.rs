//! Findings of a file, ready to show: message with what was understood and what to write instead,
//! related places, fixes.

use downlead_base::{Diagnostic, Fix, Severity, Span, codes};
use downlead_eval::Snapshot;

use crate::config::Config;
use crate::view::{Action, ActionKind, Doc, Place, TextEdit, View, tidy};

/// A finding.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Finding {
    /// Where.
    pub span: Span,
    /// Code of the diagnostics table.
    pub code: &'static str,
    /// How bad.
    pub severity: Severity,
    /// What is wrong, what was understood there, what to write instead: a line each.
    pub message: String,
    /// Other places that matter.
    pub related: Vec<Related>,
    /// Whether the text does nothing.
    pub unnecessary: bool,
    /// Changes that mend it.
    pub fixes: Vec<Action>,
}

/// Another place with a few words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Related {
    /// Where.
    pub place: Place,
    /// What about it.
    pub message: String,
}

/// The findings of all files, by index of the file.
#[must_use]
pub fn diagnostics(s: &Snapshot, c: &Config) -> Vec<Vec<Finding>> {
    let view = View::new(s);
    let mut out: Vec<Vec<Finding>> = vec![Vec::new(); s.files().len()];
    for d in s.diagnostics() {
        let Some(Place {
            doc: Doc::File(f),
            span,
        }) = view.place(d.primary.loc)
        else {
            continue;
        };
        out[f].push(finding(&view, &d, span));
    }
    out.into_iter()
        .map(|list| capped(list, c.max_diagnostics))
        .collect()
}

/// The findings of one file.
#[must_use]
pub fn file_diagnostics(s: &Snapshot, file: usize, c: &Config) -> Vec<Finding> {
    diagnostics(s, c).into_iter().nth(file).unwrap_or_default()
}

/// The worst first when there are too many, then a word about the rest.
fn capped(mut list: Vec<Finding>, max: usize) -> Vec<Finding> {
    if max == 0 || list.len() <= max {
        return list;
    }
    let all = list.len();
    // stable: the order of the text stays within one severity
    list.sort_by_key(|f| std::cmp::Reverse(f.severity));
    list.truncate(max);
    if let Some(last) = list.last_mut() {
        last.message
            .push_str(&format!("\n({} more in this file)", all - max));
    }
    list.sort_by_key(|f| (f.span.start, f.span.end));
    list
}

fn finding(view: &View<'_>, d: &Diagnostic, span: Span) -> Finding {
    let mut message = d.message.clone();
    if tells(&d.primary.message, &d.message, &d.help) {
        message.push_str(&format!("\n({})", d.primary.message));
    }
    for h in &d.help {
        message.push('\n');
        message.push_str(h);
    }
    let related = d
        .related
        .iter()
        .filter_map(|l| {
            Some(Related {
                place: view.place(l.loc)?,
                message: l.message.clone(),
            })
        })
        .collect();
    let fixes = d
        .fixes
        .iter()
        .filter_map(|f| action(view, f, d, span))
        .collect();
    Finding {
        span,
        code: d.code.id,
        severity: d.severity,
        message,
        related,
        unnecessary: d.code.id == codes::PART_UNUSED.id,
        fixes,
    }
}

/// Whether the words for under the mark say more than the mark itself, the message and the help:
/// in an editor the place is seen, and "not defined" below "… is not defined." is said twice.
fn tells(label: &str, message: &str, help: &[String]) -> bool {
    let figure = |c: char| c == '`' || c.is_ascii_digit();
    if label.split_whitespace().count() < 4 && !label.contains(figure) {
        return false;
    }
    let words = |t: &str| -> Vec<String> {
        t.split(|c: char| !(c.is_alphanumeric() || c == '.'))
            .map(|w| w.trim_matches('.').to_lowercase())
            .filter(|w| (w.len() > 3 && w != "this") || w.contains(figure))
            .collect()
    };
    let mut said = words(message);
    help.iter().for_each(|h| said.extend(words(h)));
    words(label).iter().any(|w| !said.contains(w))
}

/// A fix as an action; none if it would change the library.
fn action(view: &View<'_>, f: &Fix, d: &Diagnostic, span: Span) -> Option<Action> {
    let mut edits = Vec::with_capacity(f.edits.len());
    for e in &f.edits {
        let place = view.place(e.loc)?;
        if matches!(place.doc, Doc::Library(_)) {
            return None;
        }
        edits.push(TextEdit {
            doc: place.doc,
            span: place.span,
            text: e.text.clone(),
        });
    }
    let mut title = f.title.clone();
    if let Some(first) = title.chars().next() {
        let len = first.len_utf8();
        title.replace_range(..len, &first.to_uppercase().to_string());
    }
    Some(Action {
        preferred: f.preferred,
        codes: vec![d.code.id],
        finding: Some(span),
        ..Action::new(title, ActionKind::QuickFix, tidy(edits))
    })
}

#[cfg(test)]
mod tests {
    use super::tells;

    #[test]
    fn nothing_is_said_twice() {
        let none: &[String] = &[];
        for (label, message, told) in [
            ("", "The antenna has no gain.", false),
            ("not defined", "The band `22m` is not defined.", false),
            ("not known", "`wat` is no unit.", false),
            (
                "this is a power",
                "A power stands where a loss belongs.",
                false,
            ),
            (
                "division by zero, or too large",
                "This comes to no finite number.",
                true,
            ),
            ("computed: 38.4 W", "ERP is not what is expected.", true),
            ("SWR 1.9", "The transmitter sees an SWR of 1.9.", false),
            (
                "understood as the text `run`",
                "The line cannot be read.",
                true,
            ),
            (
                "what stands in this block was not read",
                "`chin` is no statement.",
                true,
            ),
        ] {
            assert_eq!(tells(label, message, none), told, "{label}");
        }
        let help = ["An antenna or a load belongs at its end.".to_owned()];
        assert!(!tells(
            "an antenna or a load belongs at its end",
            "The chain ends in nothing.",
            &help
        ));
    }
}
