//! A file that is not there: the one that is nearly named so.

use downlead_base::{Diagnostic, codes};
use downlead_station::model::Name;
use downlead_station::{LoadError, Loader, nearest};

/// The ending of the language's files.
const ENDING: &str = ".downlead";

/// Says that the file at `path`, which a `use` names, is not read.
pub(super) fn not_read(
    name: &Name,
    path: &str,
    why: &LoadError,
    loader: &dyn Loader,
) -> Diagnostic {
    let text = &name.text;
    let new = |message: String| Diagnostic::new(&codes::USE_NOT_FOUND, name.loc, message);
    if text.is_empty() {
        return new("`use` names no file.".to_owned())
            .at("empty")
            .help("Write the path relative to this file: `use \"cables.downlead\"`.");
    }
    let d = new(format!("`{text}` cannot be used: {why}.")).at("not read");
    if *why != LoadError::NotFound {
        return d;
    }
    let d = d.help(format!(
        "Looked for `{path}` below the root. The path is relative to this file."
    ));
    let (folder, own) = text.rsplit_once('/').map_or(("", &**text), |(f, n)| (f, n));
    let beside = loader.beside(path);
    let stem = own.trim_end_matches(ENDING);
    let stems = beside.iter().filter_map(|n| n.strip_suffix(ENDING));
    let Some(near) = nearest(stem, stems) else {
        return d;
    };
    let slash = if folder.is_empty() && !text.starts_with('/') {
        ""
    } else {
        "/"
    };
    let right = format!("{folder}{slash}{near}{ENDING}");
    d.help(format!("Did you mean `{right}`?")).fix(
        format!("write `{right}`"),
        name.loc,
        format!("\"{right}\""),
    )
}
