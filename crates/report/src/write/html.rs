//! A document as one HTML page: no script, nothing from elsewhere, to be read, printed or kept.
//!
//! Rows and headings carry the file and line they follow from as `data-at`.

use std::fmt::Write as _;

use super::plain::printable;
use crate::document::{
    Align, Answer, Block, Document, Head, Level, Line, Place, Run, Sign, Table, Text,
};

/// Colours keep a contrast of 4.5 to 1 (WCAG 2.1, 1.4.3) in light and dark; verdicts have signs
/// beside them. Pages break between blocks, not within rows, on A4 and Letter alike.
const STYLE: &str = "\
:root{color-scheme:light dark}
body{font:15px/1.45 system-ui,sans-serif;max-width:72rem;margin:1.5rem auto;padding:0 1rem}
h1{font-size:1.4rem;margin:2rem 0 .4rem}h2{font-size:1.15rem;margin:2rem 0 .4rem}h3{font-size:1rem;margin:1.4rem 0 .3rem}
h1 small,h2 small,h3 small{font-weight:400;opacity:.7;font-size:.8rem;margin-left:.6em}
.wide{overflow-x:auto}
table{border-collapse:collapse;margin:.5rem 0;font-variant-numeric:tabular-nums}
th,td{text-align:left;padding:.15rem .6rem;border-bottom:1px solid #8886;vertical-align:top}
th{font-weight:600;font-size:.85rem}.n{text-align:right;white-space:nowrap}
.answer td{white-space:nowrap}td:last-child{min-width:9rem}.answer td:last-child{min-width:0}.span td{font-style:italic}
dl{display:grid;grid-template-columns:max-content 1fr;gap:.15rem 1rem;margin:.6rem 0}dt{opacity:.75}dd{margin:0;grid-column:2}
.good{color:#17642a}.open{color:#7a4f00}.bad{color:#a3182c}
@media(prefers-color-scheme:dark){.good{color:#7fd694}.open{color:#e8b35a}.bad{color:#ff8f9c}}
.warn{border-left:3px solid currentColor;padding-left:.6rem;font-weight:600}
pre{overflow-x:auto;line-height:1.2}
tr:target,[data-at].here{background:#ffd54a40}
@media(max-width:50rem){.answer td{white-space:normal}}
@page{margin:15mm}
@media print{:root{color-scheme:light}body{font-size:9.5pt;max-width:none;margin:0;padding:0}
h1{break-before:page}h1:first-of-type{break-before:auto}h1,h2,h3{break-after:avoid}tr,dt,dd,figure{break-inside:avoid}thead{display:table-header-group}
.wide{overflow:visible}.answer td{white-space:normal}
.good,.open,.bad{color:#000;font-weight:700}}
";

/// For papers that are printed and hung up: black on white, and small enough that the sheet of a usual
/// station is one page of A4 (297 mm) and of Letter (279 mm) alike.
const PAPER: &str = "\
:root{color-scheme:light}
body{font:10pt/1.3 system-ui,sans-serif;color:#000;background:#fff;max-width:195mm;margin:1rem auto;padding:0 1rem}
h1{font-size:14pt;margin:1.2rem 0 .3rem;border-bottom:2px solid #000}h2{font-size:10.5pt;margin:.7rem 0 .15rem}
h1 small,h2 small{font-weight:400;font-size:8pt;margin-left:.6em}
p{margin:.25rem 0}ul{margin:.2rem 0;padding-left:1.2rem}
table{border-collapse:collapse;margin:.15rem 0;font-variant-numeric:tabular-nums}
th,td{text-align:left;padding:.06rem .5rem;border-bottom:1px solid #999;vertical-align:top}
th{font-weight:600;font-size:.85em}.n{text-align:right;white-space:nowrap}.span td{font-weight:600}
dl{display:grid;grid-template-columns:max-content 1fr;gap:.05rem .8rem;margin:.3rem 0}dt{font-weight:600}dd{margin:0;grid-column:2}
.warn{border:2px solid #000;padding:.2rem .5rem;font-weight:700}
.good,.open,.bad{font-weight:700}
@page{margin:9mm}
@media print{body{font-size:7.5pt;line-height:1.17;max-width:none;margin:0;padding:0}h1{font-size:12pt;break-before:page;margin-top:0}h1:first-of-type{break-before:auto}
h2{font-size:8.5pt;margin:.4rem 0 .1rem}h1,h2{break-after:avoid}tr,dt,dd{break-inside:avoid}thead{display:table-header-group}
.roomy{font-size:9pt}.roomy h1{font-size:14pt}.roomy h2{font-size:10pt}}
";

/// Lines of a station that fit one page in the larger print, headings counted twice.
const ROOMY: usize = 60;
/// Characters of a line in that print.
const WIDE: usize = 120;

/// The whole page.
#[must_use]
pub fn html(doc: &Document) -> String {
    styled(doc, STYLE, "")
}

/// A page to print and hang up, in black and white.
#[must_use]
pub fn paper(doc: &Document) -> String {
    let class = if longest(doc) <= ROOMY {
        " class=\"roomy\""
    } else {
        ""
    };
    styled(doc, PAPER, class)
}

/// Lines between two headings of the first level, at most.
fn longest(doc: &Document) -> usize {
    let mut most = 0;
    let mut here = 0;
    for b in &doc.blocks {
        here += match b {
            Block::Heading(1, ..) => {
                most = most.max(here);
                here = 0;
                3
            }
            Block::Heading(..) => 2,
            Block::Table(t) => t.lines.len() + 1,
            Block::Facts(f) => f.iter().map(|x| 1 + x.1.plain().len() / WIDE).sum(),
            Block::List(l) => l.len(),
            Block::Answers(a) => a.len(),
            Block::Figure { lines, .. } => lines.len(),
            Block::Code(t) => t.lines().count(),
            Block::Paragraph(_) | Block::Note(..) => 1,
        };
    }
    most.max(here)
}

fn styled(doc: &Document, style: &str, class: &str) -> String {
    let mut out = format!(
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n\
         <title>{}</title>\n<style>\n{style}</style>\n</head>\n<body{class}>\n<main>\n",
        escape(&doc.title)
    );
    doc.blocks.iter().for_each(|b| block(b, &mut out));
    out.push_str("</main>\n</body>\n</html>\n");
    out
}

fn block(b: &Block, out: &mut String) {
    let _ = match b {
        Block::Heading(level, words, at) => {
            let place = at.as_ref().map_or(String::new(), |p| {
                format!(" <small>{}</small>", escape(&p.to_string()))
            });
            writeln!(
                out,
                "<h{level}{}>{}{place}</h{level}>",
                at_of(at.as_ref()),
                run(words)
            )
        }
        Block::Answers(all) => {
            answers(all, out);
            Ok(())
        }
        Block::Paragraph(t) => writeln!(out, "<p>{}</p>", run(t)),
        Block::Note(Level::Plain, t) => writeln!(out, "<p class=\"note\">{}</p>", run(t)),
        Block::Note(Level::Warning, t) => writeln!(out, "<p class=\"warn\">{}</p>", run(t)),
        Block::Facts(all) => {
            out.push_str("<dl>\n");
            let mut before = "";
            for (name, t) in all {
                // one name, several things said of it
                if *name != before {
                    let _ = write!(out, "<dt>{}</dt>", escape(name));
                }
                before = name;
                let _ = writeln!(out, "<dd>{}</dd>", run(t));
            }
            writeln!(out, "</dl>")
        }
        Block::List(all) => {
            out.push_str("<ul>\n");
            for t in all {
                let _ = writeln!(out, "<li>{}</li>", run(t));
            }
            writeln!(out, "</ul>")
        }
        Block::Table(t) => {
            table(t, out);
            Ok(())
        }
        Block::Figure { svg, lines, alt } if svg.is_empty() => writeln!(
            out,
            "<figure><pre role=\"img\" aria-label=\"{}\">{}</pre></figure>",
            escape(alt),
            escape(&lines.join("\n"))
        ),
        Block::Figure { svg, alt, .. } => {
            writeln!(
                out,
                "<figure>{svg}<figcaption>{}</figcaption></figure>",
                escape(alt)
            )
        }
        Block::Code(t) => writeln!(out, "<pre><code>{}</code></pre>", escape(t.trim_end())),
    };
}

fn answers(all: &[Answer], out: &mut String) {
    out.push_str("<div class=\"wide\" tabindex=\"0\"><table class=\"answer\">\n<tbody>\n");
    let most = all.iter().map(|a| a.cells.len()).max().unwrap_or(0);
    for a in all {
        let used = a.cells.iter().rposition(|c| !c.is_empty());
        let used = used.map_or(0, |u| u + 1);
        let cells: String = a.cells[..used]
            .iter()
            .enumerate()
            .map(|(i, c)| match most - i {
                // what follows nothing takes the room of those that are not there
                span if i + 1 == used && span > 1 => {
                    format!("<td colspan=\"{span}\">{}</td>", run(c))
                }
                _ => format!("<td>{}</td>", run(c)),
            })
            .collect();
        let _ = writeln!(out, "<tr{}>{cells}</tr>", at_of(a.at.as_ref()));
    }
    out.push_str("</tbody>\n</table></div>\n");
}

fn table(t: &Table, out: &mut String) {
    let class = |h: &Head| match h.align {
        Align::Right => " class=\"n\"",
        Align::Left => "",
    };
    let heads: String = t
        .heads
        .iter()
        .map(|h| format!("<th scope=\"col\"{}>{}</th>", class(h), escape(h.words)))
        .collect();
    let _ = write!(
        out,
        "<div class=\"wide\" tabindex=\"0\"><table>\n<thead><tr>{heads}</tr></thead>\n<tbody>\n"
    );
    for line in &t.lines {
        let _ = match line {
            Line::Title(words) => writeln!(
                out,
                "<tr class=\"span\"><td colspan=\"{}\">{}</td></tr>",
                t.heads.len(),
                run(words)
            ),
            Line::Cells(cells, at) => {
                let cells: String = cells
                    .iter()
                    .zip(&t.heads)
                    .map(|(c, h)| format!("<td{}>{}</td>", class(h), run(c)))
                    .collect();
                writeln!(out, "<tr{}>{cells}</tr>", at_of(at.as_ref()))
            }
        };
    }
    out.push_str("</tbody>\n</table></div>\n");
}

fn at_of(at: Option<&Place>) -> String {
    at.map_or(String::new(), |p| {
        format!(" data-at=\"{}\"", escape(&p.to_string()))
    })
}

fn run(t: &Text) -> String {
    t.0.iter()
        .map(|r| match r {
            Run::Plain(s) => escape(s),
            Run::Verdict(sign, word) => {
                let class = match sign {
                    Sign::Good => "good",
                    Sign::Open => "open",
                    Sign::Bad => "bad",
                };
                format!("<b class=\"{class}\">{} {word}</b>", sign.sign())
            }
            Run::Link(s, p) => format!("<span{}>{}</span>", at_of(Some(p)), escape(s)),
            Run::Code(s) => format!("<code>{}</code>", escape(s)),
        })
        .collect()
}

pub(super) fn escape(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in printable(text).chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            c => out.push(c),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_file_says_stays_text() {
        let mut d = Document {
            title: "</title><script>x</script>".to_owned(),
            widest: None,
            blocks: Vec::new(),
        };
        let evil = "<img src=x onerror=alert(1)> \"'";
        d.heading(1, evil, Some(Place::new("\" onclick=\"x", 3)));
        d.facts(vec![("loss", evil.into())]);
        d.push(Block::Code(evil.to_owned()));
        let page = html(&d);
        for bad in ["<script", "<img", "onclick=\"x"] {
            assert!(!page.contains(bad), "{bad}: {page}");
        }
        assert!(
            page.contains("data-at=\"&quot; onclick=&quot;x:3\""),
            "{page}"
        );
        // nothing is loaded from elsewhere
        for bad in ["http:", "https:", "url(", "@import", "src=\"", "href="] {
            assert!(!page.contains(bad), "{bad}: {page}");
        }
    }
}
