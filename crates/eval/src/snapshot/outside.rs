//! What to say of a path that leads out of the root folder.

use downlead_base::{Diagnostic, codes};
use downlead_station::Loader;
use downlead_station::model::Name;

/// How a root folder is found, in one sentence.
const RULE: &str = "The root folder is the git repository, or the nearest folder with a file named `.downlead-root`; without either it is the file's own folder, with those of its `use` lines below the home folder.";

/// The finding about a path that climbs above the root, is absolute, or is a link that leads out.
pub(super) fn outside(name: &Name, loader: &dyn Loader) -> Diagnostic {
    let text = &name.text;
    let new = |message: String| Diagnostic::new(&codes::USE_OUTSIDE_ROOT, name.loc, message);
    if text.contains('\\') {
        let slashes = text.replace('\\', "/");
        return new(format!(
            "`{text}` has backslashes; folders are separated by `/`."
        ))
        .at("write `/`")
        .fix(
            format!("write `{slashes}`"),
            name.loc,
            format!("\"{slashes}\""),
        )
        .preferred();
    }
    if text.starts_with('/') || text.contains(':') {
        return new(format!("`{text}` is an absolute path."))
            .at("not below the root folder")
            .help("Write the path relative to this file, so that the text means the same on every computer.");
    }
    let of = loader.root().map_or(String::new(), |r| format!(" {r}"));
    new(format!("`{text}` lies outside the root folder{of}."))
        .at("leads out")
        .help("Nothing outside the root folder is read.")
        .help(RULE)
}
