//! Findings as diagnostics of the protocol.

use downlead_base::Severity;
use downlead_ide::{Doc, Finding};
use ls_types::{
    CodeDescription, Diagnostic, DiagnosticRelatedInformation, DiagnosticSeverity, DiagnosticTag,
    NumberOrString,
};

use crate::uris;
use crate::view::View;

/// A finding as the protocol has it.
pub(crate) fn diagnostic(view: &View<'_>, f: &Finding) -> Diagnostic {
    let peer = &view.state.peer;
    let mut message = f.message.clone();
    let mut related = Vec::new();
    for r in &f.related {
        let Some(location) = view.location(r.place) else {
            continue;
        };
        if peer.related {
            related.push(DiagnosticRelatedInformation {
                location,
                message: r.message.clone(),
            });
        } else {
            let line = location.range.start.line + 1;
            let place = match r.place.doc == view.doc {
                true => format!("line {line}"),
                false => format!(
                    "{} line {line}",
                    downlead_ide::doc_path(view.snapshot, r.place.doc)
                ),
            };
            message.push_str(&format!("\n{place}: {}", r.message));
        }
    }
    let page =
        || uris::own(&format!("code/{}.md", f.code), None).map(|href| CodeDescription { href });
    Diagnostic {
        range: view.range(f.span),
        severity: Some(match f.severity {
            Severity::Error => DiagnosticSeverity::ERROR,
            Severity::Warning => DiagnosticSeverity::WARNING,
            Severity::Info => DiagnosticSeverity::INFORMATION,
            Severity::Hint => DiagnosticSeverity::HINT,
        }),
        code: Some(NumberOrString::String(f.code.to_owned())),
        code_description: (peer.code_pages && peer.virtual_documents)
            .then(page)
            .flatten(),
        source: Some("downlead".to_owned()),
        message,
        related_information: (!related.is_empty()).then_some(related),
        tags: (f.unnecessary && peer.unnecessary).then(|| vec![DiagnosticTag::UNNECESSARY]),
        data: None,
    }
}

/// Diagnostics of one document, for clients that pull.
pub(crate) fn pulled(view: &View<'_>) -> Vec<Diagnostic> {
    let Doc::File(file) = view.doc else {
        return Vec::new();
    };
    let found = downlead_ide::file_diagnostics(view.snapshot, file, &view.config);
    let found = match view.state.docs.get(view.uri) {
        Some(doc) => view.state.ripe(view.snapshot, doc, file, found),
        None => found,
    };
    found.iter().map(|f| diagnostic(view, f)).collect()
}
