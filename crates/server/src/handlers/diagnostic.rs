//! `textDocument/diagnostic`: diagnostics for clients that pull them.

use crate::diagnostics::pulled;
use crate::state::State;
use ls_types::*;
use rustc_hash::FxHasher;
use std::hash::{Hash, Hasher};
use tower_lsp::jsonrpc::Result;

pub(crate) fn diagnostic(
    st: &mut State,
    p: DocumentDiagnosticParams,
) -> Result<DocumentDiagnosticReportResult> {
    let items = st
        .view(&p.text_document.uri)?
        .map(|v| pulled(&v))
        .unwrap_or_default();
    st.told(&p.text_document.uri, &items);
    let mut hasher = FxHasher::default();
    serde_json::to_string(&items)
        .unwrap_or_default()
        .hash(&mut hasher);
    let id = format!("{:016x}", hasher.finish());
    let report = if p.previous_result_id.as_deref() == Some(&*id) {
        DocumentDiagnosticReport::Unchanged(RelatedUnchangedDocumentDiagnosticReport {
            unchanged_document_diagnostic_report: UnchangedDocumentDiagnosticReport {
                result_id: id,
            },
            related_documents: None,
        })
    } else {
        DocumentDiagnosticReport::Full(RelatedFullDocumentDiagnosticReport {
            full_document_diagnostic_report: FullDocumentDiagnosticReport {
                result_id: Some(id),
                items,
            },
            related_documents: None,
        })
    };
    Ok(DocumentDiagnosticReportResult::Report(report))
}
