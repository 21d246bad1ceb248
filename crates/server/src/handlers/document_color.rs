//! `textDocument/documentColor`: a swatch that shows the status of a judged value.

use crate::state::State;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

pub(crate) fn colors(st: &mut State, p: DocumentColorParams) -> Result<Vec<ColorInformation>> {
    let uri = &p.text_document.uri;
    // requested on every keystroke: nothing is evaluated where swatches are switched off
    if !st.config_of(uri).swatches {
        return Ok(Vec::new());
    }
    let Some(v) = st.view(uri)? else {
        return Ok(Vec::new());
    };
    let found = ide::swatches(v.snapshot, v.doc, &v.config);
    let swatch = |s: &ide::Swatch| ColorInformation {
        range: v.range(s.span),
        color: color(s.status),
    };
    Ok(found.iter().map(swatch).collect())
}

fn color(status: ide::Status) -> Color {
    let [red, green, blue] = status.colour().map(|c| f32::from(c) / 255.0);
    Color {
        red,
        green,
        blue,
        alpha: 1.0,
    }
}

/// None. A swatch shows a result. A client offers to pick another colour and to write it over the
/// text; no text makes a limit met, so there is nothing to offer.
pub(crate) fn presentations(
    _: &mut State,
    _: ColorPresentationParams,
) -> Result<Vec<ColorPresentation>> {
    Ok(Vec::new())
}
