//! Where output goes: standard output and error, colour, and how the program ends.

use std::io::{self, BufWriter, IsTerminal, Write};

pub(crate) use downlead_report::write::plain::printable;
pub(crate) use downlead_report::write::style::Style;

use downlead_report::write::text::Look;

use crate::args::ColourChoice;

/// How a run ended, in order of weight.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Outcome {
    /// Nothing to complain about.
    Clean = 0,
    /// Findings that fail.
    Findings = 1,
    /// Wrong usage, or files that cannot be read or written.
    Trouble = 2,
}

/// The program's two streams.
pub(crate) struct Ui {
    out: BufWriter<io::Stdout>,
    /// The reader of standard output has gone; whatever is still written is dropped.
    gone: bool,
    /// Style on standard output.
    pub(crate) style: Style,
    /// Columns of standard output.
    width: usize,
    /// Style on standard error.
    pub(crate) error_style: Style,
    /// Whether a person is watching standard error.
    pub(crate) watched: bool,
    /// Whether only the conclusion is wanted.
    pub(crate) quiet: bool,
}

impl Ui {
    pub(crate) fn new(choice: ColourChoice, quiet: bool) -> Ui {
        let plain = std::env::var_os("NO_COLOR").is_some_and(|v| !v.is_empty())
            || std::env::var_os("TERM").is_some_and(|v| v == "dumb");
        let wanted = |terminal: bool| match choice {
            ColourChoice::Auto => terminal && !plain,
            ColourChoice::Always => true,
            ColourChoice::Never => false,
        };
        let watched = io::stderr().is_terminal();
        Ui {
            style: Style {
                colour: wanted(io::stdout().is_terminal()),
            },
            error_style: Style {
                colour: wanted(watched),
            },
            width: width(),
            out: BufWriter::with_capacity(1 << 16, io::stdout()),
            gone: false,
            watched: watched && !quiet,
            quiet,
        }
    }

    /// How a document is to look on standard output.
    pub(crate) fn look(&self) -> Look {
        Look {
            width: self.width,
            ascii: wants_ascii(|name| std::env::var(name).ok()),
            style: self.style,
        }
    }

    /// Prints to standard output.
    pub(crate) fn print(&mut self, text: &str) -> io::Result<()> {
        self.write_all(text.as_bytes())
    }

    /// One line to standard error. A failure of that stream itself is ignored.
    pub(crate) fn note(&mut self, text: &str) {
        // what was printed before comes first on a shared terminal; a failure shows at the end
        let _ = self.flush();
        let _ = writeln!(io::stderr().lock(), "{text}");
    }

    /// A complaint to standard error.
    pub(crate) fn complain(&mut self, text: &str) {
        let head = self.error_style.bad("error:");
        self.note(&format!("{head} {text}"));
    }
}

impl Write for Ui {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        if self.gone {
            return Ok(bytes.len());
        }
        match self.out.write(bytes) {
            Err(e) if e.kind() == io::ErrorKind::BrokenPipe => {
                self.gone = true;
                Ok(bytes.len())
            }
            other => other,
        }
    }

    fn flush(&mut self) -> io::Result<()> {
        if self.gone {
            return Ok(());
        }
        match self.out.flush() {
            Err(e) if e.kind() == io::ErrorKind::BrokenPipe => {
                self.gone = true;
                Ok(())
            }
            other => other,
        }
    }
}

/// Columns of standard output: as `COLUMNS` says, as the terminal says, or the usual ones of paper.
fn width() -> usize {
    let said = std::env::var("COLUMNS").ok();
    said.and_then(|c| c.trim().parse().ok())
        .filter(|c| (MIN_WIDTH..=MAX_WIDTH).contains(c))
        .or_else(terminal_width)
        .unwrap_or(Look::WIDTH)
}

/// Widths that are taken for true.
const MIN_WIDTH: usize = 40;
const MAX_WIDTH: usize = 1000;

#[cfg(unix)]
fn terminal_width() -> Option<usize> {
    let out = io::stdout();
    if !out.is_terminal() {
        return None;
    }
    let size = rustix::termios::tcgetwinsize(out).ok()?;
    let columns = usize::from(size.ws_col);
    (columns > 0).then(|| columns.clamp(MIN_WIDTH, MAX_WIDTH))
}

#[cfg(not(unix))]
fn terminal_width() -> Option<usize> {
    None
}

/// Whether the locale has no UTF-8. The first variable that is set decides (POSIX, XBD 8.2); where
/// none is, nothing asks for ASCII.
fn wants_ascii(get: impl Fn(&str) -> Option<String>) -> bool {
    ["LC_ALL", "LC_CTYPE", "LANG"]
        .into_iter()
        .find_map(|name| get(name).filter(|v| !v.is_empty()))
        .is_some_and(|v| {
            let v = v.to_ascii_lowercase();
            !(v.contains("utf-8") || v.contains("utf8"))
        })
}

#[cfg(test)]
mod tests {
    use super::wants_ascii;

    #[test]
    fn the_first_locale_that_is_set_decides() {
        let of = |all: &[(&str, &str)]| {
            let all: Vec<(String, String)> = all
                .iter()
                .map(|(a, b)| ((*a).to_owned(), (*b).to_owned()))
                .collect();
            wants_ascii(move |name| all.iter().find(|x| x.0 == name).map(|x| x.1.clone()))
        };
        assert!(!of(&[]));
        assert!(of(&[("LANG", "C")]));
        assert!(of(&[("LANG", "de_AT.ISO-8859-1")]));
        assert!(!of(&[("LANG", "en_GB.UTF-8")]));
        assert!(!of(&[("LANG", "C"), ("LC_CTYPE", "C.utf8")]));
        assert!(of(&[("LANG", "C.UTF-8"), ("LC_ALL", "POSIX")]));
        assert!(!of(&[("LANG", "C.UTF-8"), ("LC_ALL", "")]));
    }
}
