//! Where output goes: standard output and error, colour, and how the program ends.

use std::io::{self, BufWriter, IsTerminal, Write};

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

/// ANSI styles, or nothing at all.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Style {
    pub(crate) colour: bool,
}

impl Style {
    /// Without colours.
    pub(crate) const PLAIN: Style = Style { colour: false };

    fn paint(self, code: &str, text: &str) -> String {
        if self.colour && !text.is_empty() {
            format!("\u{1b}[{code}m{text}\u{1b}[0m")
        } else {
            text.to_owned()
        }
    }

    pub(crate) fn bold(self, text: &str) -> String {
        self.paint("1", text)
    }

    pub(crate) fn faint(self, text: &str) -> String {
        self.paint("2", text)
    }

    pub(crate) fn good(self, text: &str) -> String {
        self.paint("32", text)
    }

    pub(crate) fn doubtful(self, text: &str) -> String {
        self.paint("33", text)
    }

    pub(crate) fn bad(self, text: &str) -> String {
        self.paint("1;31", text)
    }
}

/// The program's two streams.
pub(crate) struct Ui {
    out: BufWriter<io::Stdout>,
    /// The reader of standard output has gone; whatever is still written is dropped.
    gone: bool,
    /// Style on standard output.
    pub(crate) style: Style,
    /// Style on standard error.
    pub(crate) error_style: Style,
    /// Whether a person is watching standard error.
    pub(crate) watched: bool,
}

impl Ui {
    pub(crate) fn new(choice: ColourChoice) -> Ui {
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
            out: BufWriter::with_capacity(1 << 16, io::stdout()),
            gone: false,
            watched,
        }
    }

    /// Prints to standard output.
    pub(crate) fn print(&mut self, text: &str) -> io::Result<()> {
        self.write_all(text.as_bytes())
    }

    /// One line to standard error. That stream's own failure is nobody's business.
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

/// Text from files made safe to print: control characters, line separators other than `\n`
/// and direction overrides are replaced by marks of the same byte length, so that byte
/// offsets stay true and nothing in a file can steer a terminal.
pub(crate) fn printable(text: &str) -> std::borrow::Cow<'_, str> {
    let bytes = text.as_bytes();
    let steering = |c: char| matches!(c, '\u{80}'..='\u{9f}' | '\u{200e}' | '\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}');
    let bad = |i: usize, c: char| match c {
        '\n' | '\t' => false,
        '\r' => bytes.get(i + 1) != Some(&b'\n'),
        c if c.is_ascii() => c.is_ascii_control(),
        c => steering(c),
    };
    let Some((first, _)) = text.char_indices().find(|&(i, c)| bad(i, c)) else {
        return text.into();
    };
    let mut out = String::with_capacity(text.len());
    out.push_str(&text[..first]);
    for (i, c) in text[first..].char_indices().map(|(i, c)| (i + first, c)) {
        out.push(match (bad(i, c), c.len_utf8()) {
            (false, _) => c,
            (true, 1) => '?',
            (true, 2) => '¿',
            (true, _) => '\u{fffd}',
        });
    }
    out.into()
}

/// Text broken at blanks so that no line is wider than `width`, lines after the first indented;
/// the first is taken to begin at that column too. What has no blank is not broken.
pub(crate) fn wrapped(text: &str, width: usize, indent: usize) -> String {
    use unicode_width::UnicodeWidthStr;
    let mut out = String::with_capacity(text.len() + 16);
    let mut at = indent;
    for word in whole_figures(text) {
        let word = word.as_str();
        let long = seen(word).width();
        if at > indent {
            if at + 1 + long > width {
                out.push('\n');
                out.push_str(&" ".repeat(indent));
                at = indent;
            } else {
                out.push(' ');
                at += 1;
            }
        }
        out.push_str(word);
        at += long;
    }
    out
}

/// Words, a figure and its unit as one.
fn whole_figures(text: &str) -> Vec<String> {
    const UNITS: [&str; 8] = ["%", "dB", "MHz", "GHz", "°C", "m", "min", "u"];
    let mut out: Vec<String> = Vec::new();
    for word in text.split(' ') {
        let bare = word.trim_end_matches([',', ';', '.', ':', ')']);
        match out.last_mut() {
            Some(last)
                if last.ends_with(['<', '='])
                    || UNITS.contains(&bare) && last.ends_with(|c: char| c.is_ascii_digit()) =>
            {
                last.push(' ');
                last.push_str(word);
            }
            _ => out.push(word.to_owned()),
        }
    }
    out
}

/// The text without its colours, for measuring.
fn seen(text: &str) -> std::borrow::Cow<'_, str> {
    if !text.contains('\u{1b}') {
        return text.into();
    }
    let mut out = String::with_capacity(text.len());
    let mut code = false;
    for c in text.chars() {
        match (code, c) {
            (false, '\u{1b}') => code = true,
            (true, 'm') => code = false,
            (true, _) => {}
            (false, c) => out.push(c),
        }
    }
    out.into()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn printable_keeps_offsets() {
        let wild = "a\u{1b}[2Jb\u{85}c\u{202e}d\re\r\nf\u{feff}";
        let tame = printable(wild);
        assert_eq!(tame.len(), wild.len());
        assert_eq!(tame, "a?[2Jb¿c\u{fffd}d?e\r\nf\u{fffd}");
        assert!(matches!(
            printable("±, µΩ\t\r\n"),
            std::borrow::Cow::Borrowed(_)
        ));
    }

    #[test]
    fn lines_are_broken_at_blanks() {
        assert_eq!(wrapped("one two three", 9, 2), "one two\n  three");
        assert_eq!(wrapped("unbreakable", 4, 0), "unbreakable");
        let red = Style { colour: true }.bad("two");
        assert_eq!(wrapped(&format!("one {red}"), 7, 0), format!("one {red}"));
        assert_eq!(wrapped("", 4, 2), "");
        assert_eq!(wrapped("loses 3.2 dB, then", 11, 0), "loses\n3.2 dB,\nthen");
    }

    #[test]
    fn no_codes_without_colour() {
        assert_eq!(Style { colour: false }.bad("x"), "x");
        assert_eq!(Style { colour: true }.bad("x"), "\u{1b}[1;31mx\u{1b}[0m");
    }
}
