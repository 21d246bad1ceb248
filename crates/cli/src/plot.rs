//! A curve on logarithmic scales, drawn with braille dots: two by four dots a character, no
//! colour needed. Small enough to be our own; the plotting crates at hand have linear axes.

use std::fmt::Write as _;

/// Characters of the drawing area.
const COLUMNS: usize = 64;
const ROWS: usize = 16;

/// One point of the curve; both figures positive.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Point {
    pub(crate) x: f64,
    pub(crate) y: f64,
    /// Drawn full if inside the known range, else dotted.
    pub(crate) inside: bool,
}

/// Labels of the axes.
#[derive(Clone, Copy)]
pub(crate) struct Labels<'a> {
    pub(crate) y: &'a str,
    pub(crate) x: &'a dyn Fn(f64) -> String,
    /// Under the part of the axis where the figures are known to hold.
    pub(crate) range: &'a str,
}

/// Dots, addressed from the lower left.
struct Canvas {
    cells: Vec<u8>,
}

impl Canvas {
    fn dot(&mut self, x: usize, y: usize) {
        /// Bits of the braille block by row from the top and column.
        const BITS: [[u8; 2]; 4] = [[0x01, 0x08], [0x02, 0x10], [0x04, 0x20], [0x40, 0x80]];
        if x < COLUMNS * 2 && y < ROWS * 4 {
            let down = ROWS * 4 - 1 - y;
            self.cells[down / 4 * COLUMNS + x / 2] |= BITS[down % 4][x % 2];
        }
    }

    fn row(&self, row: usize) -> String {
        self.cells[row * COLUMNS..(row + 1) * COLUMNS]
            .iter()
            .map(|bits| {
                if *bits == 0 {
                    ' '
                } else {
                    char::from_u32(0x2800 + u32::from(*bits)).unwrap_or(' ')
                }
            })
            .collect()
    }
}

/// A logarithmic scale onto `0..=last`.
struct Scale {
    low: f64,
    high: f64,
    last: usize,
}

impl Scale {
    fn at(&self, value: f64) -> usize {
        let share =
            (libm::log(value) - libm::log(self.low)) / (libm::log(self.high) - libm::log(self.low));
        libm::round(share.clamp(0.0, 1.0) * self.last as f64) as usize
    }

    /// 1, 2 and 5 of each decade, or the decades alone where those are many.
    fn ticks(&self) -> Vec<f64> {
        let decades = libm::log10(self.high / self.low);
        let steps: &[f64] = if decades > 3.0 {
            &[1.0]
        } else {
            &[1.0, 2.0, 5.0]
        };
        let first = libm::floor(libm::log10(self.low)) as i32;
        let last = libm::ceil(libm::log10(self.high)) as i32;
        let all = (first..=last)
            .flat_map(|e| steps.iter().map(move |s| s * libm::pow(10.0, f64::from(e))));
        all.filter(|t| *t >= self.low * 0.999 && *t <= self.high * 1.001)
            .collect()
    }
}

/// Draws `points`, which must be in order of x. Empty when there are not two to draw.
pub(crate) fn log_log(points: &[Point], labels: Labels<'_>) -> String {
    let sound = |p: &&Point| p.x > 0.0 && p.y > 0.0 && p.x.is_finite() && p.y.is_finite();
    let points: Vec<&Point> = points.iter().filter(sound).collect();
    let (Some(first), Some(last)) = (points.first(), points.last()) else {
        return String::new();
    };
    let low = points.iter().map(|p| p.y).fold(f64::INFINITY, f64::min);
    let high = points.iter().map(|p| p.y).fold(0.0, f64::max);
    if first.x >= last.x || low >= high {
        return String::new();
    }
    let xs = Scale {
        low: first.x,
        high: last.x,
        last: COLUMNS * 2 - 1,
    };
    let ys = Scale {
        low,
        high,
        last: ROWS * 4 - 1,
    };
    let mut canvas = Canvas {
        cells: vec![0; COLUMNS * ROWS],
    };
    for pair in points.windows(2) {
        segment(&mut canvas, &xs, &ys, pair[0], pair[1]);
    }
    let mut out = format!("  {}\n", labels.y);
    let y_ticks: Vec<(usize, f64)> = ys
        .ticks()
        .iter()
        .map(|t| (ROWS - 1 - ys.at(*t) / 4, *t))
        .collect();
    for row in 0..ROWS {
        let tick = y_ticks
            .iter()
            .find(|(at, _)| *at == row)
            .map(|(_, t)| downlead_quantity::number(*t, 4));
        let mark = if tick.is_some() { '┤' } else { '│' };
        let _ = writeln!(
            out,
            "{:>8} {mark}{}",
            tick.unwrap_or_default(),
            canvas.row(row).trim_end()
        );
    }
    out + &axis(&xs, labels) + &range(&points, &xs, labels)
}

/// A straight piece of the curve; outside the known range every fifth dot.
fn segment(canvas: &mut Canvas, xs: &Scale, ys: &Scale, a: &Point, b: &Point) {
    let (x0, y0, x1, y1) = (xs.at(a.x), ys.at(a.y), xs.at(b.x), ys.at(b.y));
    let steps = x0.abs_diff(x1).max(y0.abs_diff(y1)).max(1);
    for step in 0..=steps {
        let share = step as f64 / steps as f64;
        let mix = |from: usize, to: usize| {
            libm::round(from as f64 + share * (to as f64 - from as f64)) as usize
        };
        let x = mix(x0, x1);
        if (a.inside && b.inside) || x % 5 == 0 {
            canvas.dot(x, mix(y0, y1));
        }
    }
}

/// The lower axis with its ticks and their labels, those of the decades first, where they have room.
fn axis(xs: &Scale, labels: Labels<'_>) -> String {
    let mut line = vec!['─'; COLUMNS];
    let mut placed: Vec<(usize, usize, String)> = Vec::new();
    let mut ticks = xs.ticks();
    let off_decade = |t: &f64| {
        let power = libm::log10(*t);
        (power - libm::round(power)).abs() > 0.01
    };
    ticks.sort_by_key(off_decade);
    for tick in ticks {
        let column = xs.at(tick) / 2;
        line[column] = '┬';
        let label = (labels.x)(tick);
        let width = unicode_width::UnicodeWidthStr::width(label.as_str());
        let (from, to) = (
            column.saturating_sub(width / 2),
            column.saturating_sub(width / 2) + width,
        );
        if placed
            .iter()
            .all(|(start, end, _)| to < *start || from > *end)
        {
            placed.push((from, to, label));
        }
    }
    placed.sort_by_key(|(from, ..)| *from);
    let mut words = String::new();
    let mut at = 0;
    for (from, to, label) in placed {
        words += &" ".repeat(from - at);
        words += &label;
        at = to;
    }
    format!(
        "{:>9}└{}\n{:>10}{words}\n",
        "",
        line.into_iter().collect::<String>(),
        ""
    )
}

/// The known range, marked under the axis.
fn range(points: &[&Point], xs: &Scale, labels: Labels<'_>) -> String {
    let inside: Vec<usize> = points
        .iter()
        .filter(|p| p.inside)
        .map(|p| xs.at(p.x) / 2)
        .collect();
    let (Some(from), Some(to)) = (inside.first(), inside.last()) else {
        return String::new();
    };
    let room = to - from;
    let label = format!(" {} ", labels.range);
    let width = unicode_width::UnicodeWidthStr::width(label.as_str());
    let bar = if room > width + 4 {
        let left = (room - 1 - width) / 2;
        format!(
            "├{}{label}{}┤",
            "─".repeat(left),
            "─".repeat(room - 1 - width - left)
        )
    } else if room > 1 {
        format!("├{}┤{label}", "─".repeat(room - 1))
    } else {
        format!("│{label}")
    };
    format!("{:>10}{}{}\n", "", " ".repeat(*from), bar.trim_end())
}

#[cfg(test)]
mod tests {
    use super::*;

    const LABELS: Labels<'static> = Labels {
        y: "dB/100 m",
        x: &|f| format!("{f:.0} MHz"),
        range: "valid",
    };

    /// y = x^power from 1 to 1000, known from 10 to 100.
    fn curve(power: f64) -> Vec<Point> {
        (0..=300)
            .map(|i| {
                let x = libm::pow(10.0, f64::from(i) / 100.0);
                Point {
                    x,
                    y: libm::pow(x, power),
                    inside: (10.0..=100.0).contains(&x),
                }
            })
            .collect()
    }

    #[test]
    fn a_power_law_is_a_straight_line() {
        let mut points = curve(0.5);
        points.iter_mut().for_each(|p| p.inside = true);
        let drawn = log_log(&points, LABELS);
        // leftmost dot column of each row of the picture: equal steps down the page
        let starts: Vec<usize> = drawn
            .lines()
            .skip(1)
            .take(ROWS)
            .filter_map(|l| l.chars().skip(10).position(|c| c != ' '))
            .collect();
        assert_eq!(starts.len(), ROWS);
        let steps: Vec<usize> = starts.windows(2).map(|w| w[0].abs_diff(w[1])).collect();
        assert!(
            steps.iter().all(|s| (3..=5).contains(s)),
            "{steps:?}\n{drawn}"
        );
        assert!(starts[0] > starts[ROWS - 1]);
    }

    #[test]
    fn the_picture_is_as_it_was() {
        insta::assert_snapshot!("plot", log_log(&curve(0.5), LABELS));
    }

    #[test]
    fn nothing_to_draw_draws_nothing() {
        assert_eq!(log_log(&[], LABELS), "");
        assert_eq!(log_log(&curve(0.0), LABELS), "");
        let odd = [
            Point {
                x: -1.0,
                y: 1.0,
                inside: true,
            },
            Point {
                x: 1.0,
                y: f64::NAN,
                inside: true,
            },
        ];
        assert_eq!(log_log(&odd, LABELS), "");
    }
}
