//! Findings drawn for people, with the lines they are about.

use std::fmt::Write as _;

use ariadne::{Cache, CharSet, Color, Config, IndexType, Label, Report, ReportKind, Source};
use downlead_base::Severity;
use unicode_width::UnicodeWidthStr;

use crate::findings::{Change, Finding, SourceFile, Spot};
use crate::ui::{Style, printable};

/// At most this many are drawn; the rest is counted.
pub(crate) const DRAWN: usize = 200;

/// Lines longer than this are cut to the part that matters.
const LONG_LINE: usize = 400;

/// Draws the findings; errors first in the choice when there are more than `most`, then in order
/// of place.
pub(crate) fn draw(
    files: &[SourceFile],
    mut chosen: Vec<&Finding>,
    most: usize,
    style: Style,
) -> String {
    let left = chosen.len().saturating_sub(most);
    if left > 0 {
        let mut by_weight: Vec<(usize, &Finding)> = chosen.into_iter().enumerate().collect();
        by_weight.sort_by_key(|(_, f)| std::cmp::Reverse(f.severity));
        by_weight.truncate(most);
        by_weight.sort_by_key(|(at, _)| *at);
        chosen = by_weight.into_iter().map(|(_, f)| f).collect();
    }
    let mut sources = Sources {
        files,
        ready: Vec::new(),
    };
    let mut out = String::new();
    for finding in chosen {
        draw_one(finding, &mut sources, style, &mut out);
        out.push('\n');
    }
    if left > 0 {
        let _ = writeln!(out, "{left} more not drawn; --all draws all");
    }
    out
}

/// One source a file, shared by all findings: building it per finding costs a hundredfold.
struct Sources<'a> {
    files: &'a [SourceFile],
    ready: Vec<Option<Source<String>>>,
}

impl Sources<'_> {
    fn source(&mut self, file: usize) -> &Source<String> {
        if self.ready.len() <= file {
            self.ready.resize_with(file + 1, || None);
        }
        let files = self.files;
        self.ready[file]
            .get_or_insert_with(|| Source::from(printable(&files[file].text).into_owned()))
    }

    /// A spot in characters from the start of the file, cut at the end of its first line; None
    /// where the line is too long to draw.
    fn characters(&mut self, spot: &Spot) -> Option<std::ops::Range<usize>> {
        let source = self.source(spot.file);
        let (line, _, column) = source.get_byte_line(spot.bytes.start)?;
        let text = source.get_line_text(line)?;
        if text.len() > LONG_LINE {
            return None;
        }
        let start = text.get(..column)?.chars().count();
        let shown = text.trim_end_matches(['\n', '\r']);
        let end_byte = (column + spot.bytes.len()).min(shown.len().max(column));
        let length = text.get(column..end_byte)?.chars().count();
        Some(line.offset() + start..line.offset() + start + length)
    }
}

impl Cache<usize> for &mut Sources<'_> {
    type Storage = String;

    fn fetch(&mut self, id: &usize) -> Result<&Source<String>, impl std::fmt::Debug> {
        Ok::<_, std::convert::Infallible>(self.source(*id))
    }

    fn display<'a>(&self, id: &'a usize) -> Option<impl std::fmt::Display + 'a> {
        self.files
            .get(*id)
            .map(|f| printable(&f.shown).into_owned())
    }
}

fn kind(severity: Severity) -> (ReportKind<'static>, Color) {
    let (word, colour) = match severity {
        Severity::Error => ("error", Color::Red),
        Severity::Warning => ("warning", Color::Yellow),
        Severity::Info => ("note", Color::Blue),
        Severity::Hint => ("hint", Color::Cyan),
    };
    (ReportKind::Custom(word, colour), colour)
}

fn draw_one(finding: &Finding, sources: &mut Sources<'_>, style: Style, out: &mut String) {
    let message = printable(&finding.message).into_owned();
    let help = advice(finding, sources.files);
    let Some(spot) = &finding.spot else {
        plain_head(finding, &message, None, out);
        plain_help(&help, 3, style, out);
        return;
    };
    let Some(range) = sources.characters(spot) else {
        plain_head(
            finding,
            &message,
            Some((spot, &sources.files[spot.file])),
            out,
        );
        cut_line(
            spot,
            &sources.files[spot.file],
            &printable(&finding.label),
            out,
        );
        plain_help(&help, 3, style, out);
        return;
    };
    let (kind, colour) = kind(finding.severity);
    // Spans in characters: given bytes, ariadne 0.6 takes a character offset for a byte offset
    // when it names a second file, and panics inside a character.
    let config = Config::default()
        .with_index_type(IndexType::Char)
        .with_char_set(CharSet::Unicode)
        .with_color(style.colour)
        .with_tab_width(4);
    let mut report = Report::build(kind, (spot.file, range.clone()))
        .with_config(config)
        .with_code(finding.code.id)
        .with_message(message);
    let mut labels = vec![(spot, range, finding.label.as_str(), colour)];
    for (spot, words) in &finding.related {
        if let Some(range) = sources.characters(spot) {
            let words = if words.is_empty() { "and here" } else { words };
            labels.push((spot, range, words, Color::Cyan));
        }
    }
    // ariadne opens a new frame whenever it has to go back up a file
    let own = spot.file;
    labels.sort_by_key(|(spot, range, ..)| (spot.file != own, spot.file, range.start));
    for (spot, range, words, colour) in labels {
        // without words nothing would be underlined
        let words = if words.is_empty() {
            "here".into()
        } else {
            printable(words)
        };
        report = report.with_label(
            Label::new((spot.file, range))
                .with_color(colour)
                .with_message(words),
        );
    }
    let mut bytes = Vec::new();
    // writing into memory does not fail
    let _ = report.finish().write(&mut *sources, &mut bytes);
    let mut drawn = String::from_utf8_lossy(&bytes).into_owned();
    if !style.colour {
        drawn = without_styles(&drawn);
    }
    let lines: Vec<&str> = drawn.lines().map(str::trim_end).collect();
    let (last, body) = lines.split_last().unwrap_or((&"", &[]));
    for line in body {
        out.push_str(line);
        out.push('\n');
    }
    // our own help lines before the closing corner: ariadne numbers them and sets them apart
    let margin = without_styles(last)
        .chars()
        .take_while(|c| *c == '─')
        .count();
    plain_help(&help, margin, style, out);
}

/// The text without style sequences: a report kind of one's own keeps its colour whatever the
/// configuration says. No other escapes are in it, see [`printable`].
fn without_styles(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(at) = rest.find('\u{1b}') {
        out.push_str(&rest[..at]);
        rest = rest[at..].find('m').map_or("", |end| &rest[at + end + 1..]);
    }
    out.push_str(rest);
    out
}

/// Help lines, then the offered changes as what to write.
fn advice(finding: &Finding, files: &[SourceFile]) -> Vec<String> {
    let mut all: Vec<String> = finding
        .help
        .iter()
        .map(|h| printable(h).into_owned())
        .collect();
    let mut or = "";
    for change in &finding.changes {
        match rewritten(change, files) {
            Some(line) => all.push(format!("{or}write: {}", printable(&line))),
            // what is no line to write is said by the help already
            None if !finding.help.is_empty() => continue,
            None => all.push(format!("{or}{}", printable(&change.title))),
        }
        or = "or ";
    }
    all
}

/// The line as it reads after the change, where it is one short line.
fn rewritten(change: &Change, files: &[SourceFile]) -> Option<String> {
    let (first, _) = change.edits.first()?;
    let text = &files.get(first.file)?.text;
    let from = text[..first.bytes.start].rfind('\n').map_or(0, |n| n + 1);
    let to = text[first.bytes.start..]
        .find('\n')
        .map_or(text.len(), |n| first.bytes.start + n);
    if to - from > LONG_LINE {
        return None;
    }
    let mut edits: Vec<&(Spot, String)> = change.edits.iter().collect();
    edits.sort_by_key(|(spot, _)| spot.bytes.start);
    let mut line = String::new();
    let mut at = from;
    for (spot, with) in edits {
        if spot.file != first.file
            || spot.bytes.start < at
            || spot.bytes.end > to
            || with.contains('\n')
        {
            return None;
        }
        line.push_str(&text[at..spot.bytes.start]);
        line.push_str(with);
        at = spot.bytes.end;
    }
    line.push_str(&text[at..to]);
    let line = line.trim();
    // a change of blanks alone does not show
    (!line.is_empty() && line != text[from..to].trim()).then(|| line.to_owned())
}

fn plain_head(
    finding: &Finding,
    message: &str,
    place: Option<(&Spot, &SourceFile)>,
    out: &mut String,
) {
    let word = if finding.severity == Severity::Info {
        "note"
    } else {
        finding.severity.name()
    };
    let _ = writeln!(out, "[{}] {word}: {message}", finding.code.id);
    if let Some((spot, file)) = place {
        let _ = writeln!(
            out,
            "   ╭─[ {}:{}:{} ]",
            printable(&file.shown),
            spot.start.0,
            spot.start.1
        );
    }
}

/// Help lines inside the frame, and its closing corner.
fn plain_help(help: &[String], margin: usize, style: Style, out: &mut String) {
    let gap = " ".repeat(margin);
    for (i, line) in help.iter().enumerate() {
        if i == 0 && !out.trim_end().ends_with('│') {
            let _ = writeln!(out, "{gap}{}", style.faint("│"));
        }
        for part in wrapped(line) {
            let _ = writeln!(out, "{gap}{} {part}", style.faint("│"));
        }
    }
    let _ = writeln!(out, "{}", style.faint(&("─".repeat(margin) + "╯")));
}

/// Sentences broken at blanks to fit a page; a line to write stays one line.
fn wrapped(text: &str) -> Vec<String> {
    const WIDTH: usize = 96;
    if text.starts_with("write: ") || text.starts_with("or write: ") {
        return vec![text.to_owned()];
    }
    let mut lines = Vec::new();
    let mut line = String::new();
    for word in text.split(' ') {
        if !line.is_empty() && line.width() + 1 + word.width() > WIDTH {
            lines.push(std::mem::take(&mut line));
        }
        if !line.is_empty() {
            line.push(' ');
        }
        line.push_str(word);
    }
    lines.push(line);
    lines
}

/// The part of an overlong line about the place, underlined.
fn cut_line(spot: &Spot, file: &SourceFile, label: &str, out: &mut String) {
    const AROUND: usize = 40;
    let text = &file.text;
    let line_from = text[..spot.bytes.start].rfind('\n').map_or(0, |n| n + 1);
    let back = |at: usize| {
        text[line_from..at]
            .char_indices()
            .rev()
            .nth(AROUND - 1)
            .map_or(line_from, |(i, _)| line_from + i)
    };
    let from = back(spot.bytes.start);
    let before: String = printable(&text[from..spot.bytes.start]).replace('\t', " ");
    let after: String = text[spot.bytes.start..]
        .chars()
        .take_while(|c| *c != '\n')
        .take(2 * AROUND)
        .collect();
    let after = printable(&after).replace('\t', " ");
    let marked = text[spot.bytes.clone()]
        .chars()
        .take(2 * AROUND)
        .take_while(|c| *c != '\n')
        .count()
        .max(1);
    let gap = before.width();
    let _ = writeln!(out, "   │ …{before}{after}…");
    let _ = writeln!(
        out,
        "   │  {}{} {label}",
        " ".repeat(gap),
        "^".repeat(marked.min(2 * AROUND))
    );
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::findings::Findings;

    fn all(findings: &Findings, style: Style) -> String {
        draw(
            &findings.files,
            findings.list.iter().collect(),
            DRAWN,
            style,
        )
    }
    use crate::findings::tests::made;
    use downlead_base::codes;

    const PLAIN: Style = Style { colour: false };

    #[test]
    fn a_place_beyond_letters_of_two_bytes_is_underlined_where_it_is() {
        let text = "// Ω µ Ω\nantenna A1 { impedance 50 Ω; gain 6 dB }\n";
        let at = text.find("6 dB").unwrap();
        let drawn = all(
            &made(
                text,
                &[(
                    &codes::GAIN_WITHOUT_REFERENCE,
                    at..at + 4,
                    "Gain has no reference",
                )],
            ),
            PLAIN,
        );
        assert!(drawn.contains("a.downlead:2:35"), "{drawn}");
        let lines: Vec<&str> = drawn.lines().collect();
        let source = lines.iter().position(|l| l.contains("gain 6 dB")).unwrap();
        let column = |line: &str, what: &str| line[..line.find(what).unwrap()].chars().count();
        assert_eq!(
            column(lines[source], "6 dB"),
            column(lines[source + 1], "─"),
            "{drawn}"
        );
        assert!(drawn.contains("│ say which"), "{drawn}");
    }

    #[test]
    fn every_span_of_a_wild_text_can_be_drawn() {
        let text = "Ω\r\n\t\u{1b}[31mµ\u{85}±\u{2028}x\ry{\n\n}é";
        for start in 0..=text.len() + 1 {
            for end in start..=text.len() + 2 {
                let drawn = all(
                    &made(text, &[(&codes::NOT_UNDERSTOOD, start..end, "m\u{1b}[2J")]),
                    PLAIN,
                );
                assert!(!drawn.contains('\u{1b}'), "{start}..{end}: {drawn:?}");
                assert!(drawn.contains("not-understood"));
            }
        }
    }

    #[test]
    fn a_long_line_is_cut() {
        let text = format!("station s {}", "{".repeat(100_000));
        let drawn = all(
            &made(&text, &[(&codes::TOO_DEEP, 5000..5001, "too deep")]),
            PLAIN,
        );
        assert!(drawn.len() < 1000, "{}", drawn.len());
        assert!(drawn.contains("a.downlead:1:5001"), "{drawn}");
    }

    #[test]
    fn thousands_are_capped_and_errors_go_first() {
        let text = "run x\n".repeat(5000);
        let mut at: Vec<_> = (0..4999)
            .map(|i| (&codes::LOSSLESS_PART, i * 6..i * 6 + 3, "no loss"))
            .collect();
        at.push((
            &codes::UNKNOWN_CABLE,
            4999 * 6..4999 * 6 + 3,
            "no such cable",
        ));
        let drawn = all(&made(&text, &at), PLAIN);
        assert!(drawn.contains("no such cable"));
        assert!(
            drawn.contains("4800 more"),
            "{}",
            &drawn[drawn.len() - 100..]
        );
    }

    #[test]
    fn long_advice_is_broken_at_blanks_and_loses_nothing() {
        let advice = "eleven letters ".repeat(30);
        let lines = wrapped(advice.trim());
        assert!(lines.len() > 3 && lines.iter().all(|l| l.width() <= 96));
        assert_eq!(lines.join(" "), advice.trim());
        assert_eq!(wrapped(&"x".repeat(500)).len(), 1);
    }

    #[test]
    fn an_offered_change_is_shown_as_the_line_to_write() {
        let text = "    isolator IS1 -0.55 dB\n";
        let mut found = made(text, &[(&codes::NEGATIVE_LOSS, 17..25, "negative")]);
        let spot = found.list[0].spot.clone().unwrap();
        found.list[0].changes.push(Change {
            title: "write 0.55 dB".to_owned(),
            preferred: true,
            edits: vec![(spot, "0.55 dB".to_owned())],
        });
        let drawn = all(&found, PLAIN);
        assert!(drawn.contains("write: isolator IS1 0.55 dB"), "{drawn}");
    }
}
