//! `check --sheet PAPER`: whether a paper was printed from the files as they are now.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use downlead_base::sha256;

use crate::loader::{in_words, plain_io, read_regular};
use crate::ui::{Outcome, Ui, printable};

/// A paper is no longer than this.
const LARGEST: u64 = 16 << 20;
/// What stands before the digits of a hash.
const HASH: &str = ", SHA-256 ";

pub(crate) fn run(paper: &Path, ui: &mut Ui) -> io::Result<Outcome> {
    let shown = paper.display().to_string();
    let text = match fs::metadata(paper) {
        Ok(f) if f.len() > LARGEST => Err("it is too long for a paper".to_owned()),
        Ok(_) => read_regular(paper).map_err(|e| in_words(&e)),
        Err(e) => Err(plain_io(&e)),
    };
    let text = match text {
        Ok(bytes) => String::from_utf8_lossy(&bytes).into_owned(),
        Err(why) => {
            ui.complain(&format!("{shown}: {why}"));
            return Ok(Outcome::Trouble);
        }
    };
    let from = printed_from(&text);
    if from.is_empty() {
        ui.complain(&format!(
            "{shown}: it does not say from which files it was printed; `report --sheet`, `--materials` and `--coordination` print papers that do"
        ));
        return Ok(Outcome::Trouble);
    }
    let mut outcome = Outcome::Clean;
    let mut out = String::new();
    for (file, hash) in &from {
        let now = read_regular(&PathBuf::from(file)).map(|b| sha256(&b));
        let words = match now {
            Ok(now) if now.starts_with(hash.as_str()) => continue,
            Ok(now) => format!(
                "printed from {file} with SHA-256 {hash}…, and the file is another now, {}…",
                now.get(..hash.len()).unwrap_or(&now)
            ),
            Err(e) => format!(
                "printed from {file}, which cannot be read: {}",
                in_words(&e)
            ),
        };
        outcome = Outcome::Findings;
        out += &format!("{}: stale: {}\n", printable(&shown), printable(&words));
    }
    if outcome == Outcome::Clean && !ui.quiet {
        let n = downlead_report::words::figure::counted(from.len(), "file");
        out = format!("{}: printed from {n} as they are now\n", printable(&shown));
    }
    ui.print(&out)?;
    Ok(outcome)
}

/// The files that a paper names, with the digits of their hashes, in any of its formats.
fn printed_from(text: &str) -> Vec<(String, String)> {
    let mut out: Vec<(String, String)> = Vec::new();
    // a line of a terminal may be wrapped at any space
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    for (at, _) in text.match_indices(HASH) {
        let digits: String = text[at + HASH.len()..]
            .chars()
            .take_while(char::is_ascii_hexdigit)
            .collect();
        let before = &text[..at];
        let said = [
            ", revision ",
            ", changed since revision ",
            ", no revision is known",
        ];
        let ends = said.iter().filter_map(|s| before.rfind(s));
        let Some(end) = ends.max() else { continue };
        // before the path stands a tag, the name of the line, or the hash before it
        let begin = ["<dd>", "from ", "… ", "** ", ": "]
            .iter()
            .filter_map(|s| Some(before[..end].rfind(s)? + s.len()))
            .max()
            .unwrap_or(0);
        let path = before[begin..end].trim_matches(['`', ' ', '*', '|', '-']);
        let path = path
            .replace("&#39;", "'")
            .replace("&quot;", "\"")
            .replace("&lt;", "<")
            .replace("&gt;", ">")
            .replace("&amp;", "&");
        if digits.len() >= 8 && !path.is_empty() && !out.iter().any(|x| x.0 == path) {
            out.push((path, digits));
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::printed_from;

    #[test]
    fn names_and_hashes_are_found_in_each_format() {
        let want = vec![
            ("a/hill.downlead".to_owned(), "5196db2e944a9668".to_owned()),
            (
                "club & co.downlead".to_owned(),
                "0123456789abcdef".to_owned(),
            ),
        ];
        for text in [
            "<dt>from</dt><dd>a/hill.downlead, no revision is known, SHA-256 5196db2e944a9668…</dd>\n<dd>club &amp; co.downlead, revision abc of 2026-07-04, SHA-256 0123456789abcdef…</dd>",
            "  from     a/hill.downlead, changed since revision abc of 2026-07-04,\n           SHA-256 5196db2e944a9668…\n           club & co.downlead, no revision is known, SHA-256 0123456789abcdef…",
        ] {
            assert_eq!(printed_from(text), want, "{text}");
        }
        assert!(printed_from("no paper, SHA-256 of nothing").is_empty());
    }
}
