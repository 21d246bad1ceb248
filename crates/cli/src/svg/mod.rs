//! Pictures as SVG that read in black and white: line styles, markers and hatching instead of
//! colour, words beside the lines, generic fonts. The same figures give the same bytes.

mod axis;
pub(crate) mod loss;
pub(crate) mod rows;
pub(crate) mod trend;

use std::fmt::Write as _;

pub(crate) use axis::{Axis, Scale};

use crate::ui::printable;
use downlead_report::write::plain::shorten;

/// How a line is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Stroke {
    /// Full, of the usual weight.
    Full,
    /// Full and heavy.
    Heavy,
    /// Full and thin.
    Thin,
    /// Dashed.
    Dashed,
    /// Dotted and thin.
    Dotted,
    /// Thin and grey, for grids.
    Grid,
}

impl Stroke {
    fn class(self) -> &'static str {
        match self {
            Stroke::Full => "f",
            Stroke::Heavy => "h",
            Stroke::Thin => "t",
            Stroke::Dashed => "d",
            Stroke::Dotted => "o",
            Stroke::Grid => "g",
        }
    }
}

/// A mark at a point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Mark {
    /// Filled circle.
    Full,
    /// Open circle.
    Open,
    /// Cross.
    Cross,
}

/// Where a text stands relative to its point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Anchor {
    /// Begins there.
    Start,
    /// Centred on it.
    Middle,
    /// Ends there.
    End,
}

/// A picture under way. Coordinates are in pixels from the upper left.
pub(crate) struct Picture {
    width: f64,
    height: f64,
    title: String,
    description: String,
    body: String,
}

const STYLE: &str = "text{font-family:sans-serif;font-size:12px;fill:#000}.s{font-size:11px}.b{font-weight:bold}\
    .f,.h,.t,.d,.o,.g{fill:none;stroke:#000;stroke-width:1.5}.h{stroke-width:2.2}.t{stroke-width:1}\
    .d{stroke-dasharray:7 4}.o{stroke-width:1;stroke-dasharray:1.5 2.5}.g{stroke:#bbb;stroke-width:.6}\
    .k{fill:#000}.w{fill:#fff;stroke:#000;stroke-width:1.5}";

impl Picture {
    /// An empty picture; `title` is what it shows, `description` what it says to those who cannot
    /// see it.
    pub(crate) fn new(width: f64, height: f64, title: &str, description: &str) -> Picture {
        Picture {
            width,
            height,
            title: escaped(title),
            description: escaped(description),
            body: String::new(),
        }
    }

    pub(crate) fn line(&mut self, from: (f64, f64), to: (f64, f64), stroke: Stroke) {
        let _ = writeln!(
            self.body,
            r#"<path class="{}" d="M{} {}L{} {}"/>"#,
            stroke.class(),
            n(from.0),
            n(from.1),
            n(to.0),
            n(to.1)
        );
    }

    /// A line through points.
    pub(crate) fn path(&mut self, points: &[(f64, f64)], stroke: Stroke) {
        if points.len() < 2 {
            return;
        }
        let _ = writeln!(
            self.body,
            r#"<path class="{}" d="{}"/>"#,
            stroke.class(),
            course(points)
        );
    }

    /// A hatched area within points.
    pub(crate) fn hatched(&mut self, points: &[(f64, f64)]) {
        if points.len() < 3 {
            return;
        }
        let _ = writeln!(
            self.body,
            r#"<path fill="url(#hatch)" stroke="none" d="{}Z"/>"#,
            course(points)
        );
    }

    pub(crate) fn mark(&mut self, at: (f64, f64), mark: Mark) {
        let (x, y) = at;
        let _ = match mark {
            Mark::Full => writeln!(
                self.body,
                r#"<circle class="k" cx="{}" cy="{}" r="3.6"/>"#,
                n(x),
                n(y)
            ),
            Mark::Open => writeln!(
                self.body,
                r#"<circle class="w" cx="{}" cy="{}" r="3.6"/>"#,
                n(x),
                n(y)
            ),
            Mark::Cross => writeln!(
                self.body,
                r#"<path class="h" d="M{} {}L{} {}M{} {}L{} {}"/>"#,
                n(x - 4.5),
                n(y - 4.5),
                n(x + 4.5),
                n(y + 4.5),
                n(x - 4.5),
                n(y + 4.5),
                n(x + 4.5),
                n(y - 4.5)
            ),
        };
    }

    /// A bar with feet from one end to the other, upright or lying. An end beyond the picture has
    /// an arrow instead of its foot.
    pub(crate) fn bar(&mut self, from: (f64, f64), to: (f64, f64), open_start: bool) {
        self.line(from, to, Stroke::Thin);
        let upright = (from.0 - to.0).abs() < 1e-9;
        let foot = |p: &mut Picture, at: (f64, f64)| {
            let (dx, dy) = if upright { (4.0, 0.0) } else { (0.0, 4.0) };
            p.line((at.0 - dx, at.1 - dy), (at.0 + dx, at.1 + dy), Stroke::Thin);
        };
        foot(self, to);
        if open_start {
            let (x, y) = from;
            let (a, b) = if upright {
                ((x - 3.5, y - 6.0), (x + 3.5, y - 6.0))
            } else {
                ((x + 6.0, y - 3.5), (x + 6.0, y + 3.5))
            };
            self.path(&[a, (x, y), b], Stroke::Thin);
        } else {
            foot(self, from);
        }
    }

    /// The picture's title, cut where it would leave the picture.
    pub(crate) fn head(&mut self, at: (f64, f64), text: &str) {
        // bold letters are about a tenth wider
        let room = ((self.width - at.0 - 12.0) / 8.0).max(8.0);
        self.bold(at, Anchor::Start, &shorten(text, room as usize));
    }

    pub(crate) fn text(&mut self, at: (f64, f64), anchor: Anchor, text: &str) {
        self.words(at, anchor, text, "");
    }

    pub(crate) fn small(&mut self, at: (f64, f64), anchor: Anchor, text: &str) {
        self.words(at, anchor, text, "s");
    }

    pub(crate) fn bold(&mut self, at: (f64, f64), anchor: Anchor, text: &str) {
        self.words(at, anchor, text, "b");
    }

    fn words(&mut self, at: (f64, f64), anchor: Anchor, text: &str, class: &str) {
        let anchor = match anchor {
            Anchor::Start => "",
            Anchor::Middle => r#" text-anchor="middle""#,
            Anchor::End => r#" text-anchor="end""#,
        };
        let class = if class.is_empty() {
            String::new()
        } else {
            format!(r#" class="{class}""#)
        };
        let _ = writeln!(
            self.body,
            r#"<text{class} x="{}" y="{}"{anchor}>{}</text>"#,
            n(at.0),
            n(at.1),
            escaped(text)
        );
    }

    /// A text read upwards, centred on its point.
    pub(crate) fn upwards(&mut self, at: (f64, f64), text: &str) {
        let (x, y) = (n(at.0), n(at.1));
        let _ = writeln!(
            self.body,
            r#"<text x="{x}" y="{y}" text-anchor="middle" transform="rotate(-90 {x} {y})">{}</text>"#,
            escaped(text)
        );
    }

    /// The whole file.
    pub(crate) fn finish(self) -> String {
        let (w, h) = (n(self.width), n(self.height));
        format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{w}\" height=\"{h}\" viewBox=\"0 0 {w} {h}\" role=\"img\" \
             aria-labelledby=\"title desc\">\n<title id=\"title\">{}</title>\n<desc id=\"desc\">{}</desc>\n\
             <style>{STYLE}</style>\n\
             <defs><pattern id=\"hatch\" width=\"5\" height=\"5\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\">\
             <path d=\"M0 0V5\" stroke=\"#999\" stroke-width=\"1\"/></pattern></defs>\n\
             <rect width=\"{w}\" height=\"{h}\" fill=\"#fff\"/>\n{}</svg>\n",
            self.title, self.description, self.body
        )
    }
}

/// `M1 2L3 4…`.
fn course(points: &[(f64, f64)]) -> String {
    let mut out = String::new();
    for (i, (x, y)) in points.iter().enumerate() {
        let _ = write!(out, "{}{} {}", if i == 0 { 'M' } else { 'L' }, n(*x), n(*y));
    }
    out
}

/// A coordinate: two decimals at most, never `-0`.
fn n(value: f64) -> String {
    downlead_quantity::number(value, 2)
}

/// Text as XML: nothing in it can end the element or steer the reader.
fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in printable(text).chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            // not characters of XML 1.0
            '\u{fffe}' | '\u{ffff}' => out.push('\u{fffd}'),
            c => out.push(c),
        }
    }
    out
}

/// About how wide a text of 12 pixels is: digits and small letters of usual sans-serif fonts take
/// six to seven pixels (DejaVu Sans, the widest of them, 7.6 for a digit).
pub(crate) fn text_width(text: &str) -> f64 {
    use unicode_width::UnicodeWidthStr;
    7.2 * text.width() as f64
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_cannot_break_out() {
        let mut p = Picture::new(10.0, 10.0, "a<b", "\"]]>");
        p.text((1.0, 2.0), Anchor::Start, "</text><script>\u{1b}\u{202e}&'");
        let svg = p.finish();
        assert!(svg.contains("<title id=\"title\">a&lt;b</title>"));
        assert!(svg.contains("&lt;/text&gt;&lt;script&gt;?\u{fffd}&amp;&#39;</text>"));
        assert!(!svg.contains("<script"));
    }

    #[test]
    fn coordinates_are_short_and_the_same_everywhere() {
        assert_eq!(n(1.0 / 3.0), "0.33");
        assert_eq!(n(-0.001), "0");
        assert_eq!(n(12.0), "12");
    }
}
