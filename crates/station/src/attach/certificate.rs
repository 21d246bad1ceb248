//! Calibration certificates of power meters: the correction of a reading and how well it is known, by
//! frequency and level; from a table or from a digital calibration certificate.

mod digital;
mod table;

/// A point of a certificate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CertificatePoint {
    /// Hz.
    pub hz: f64,
    /// What the meter shows, W; none where the certificate does not go by level.
    pub level_w: Option<f64>,
    /// True power over what is shown.
    pub factor: f64,
    /// Relative standard uncertainty of that.
    pub u: f64,
    /// Line in the file, from 1.
    pub line: u64,
}

/// What is wrong in a certificate.
#[derive(Clone, Debug, PartialEq)]
pub struct CertificateProblem {
    /// Line in the file, from 1.
    pub line: u64,
    /// What.
    pub message: String,
    /// What to write instead.
    pub help: Option<String>,
}

/// A certificate as read.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Certificate {
    /// Its number.
    pub number: Option<Box<str>>,
    /// The day of the calibration as written, year first.
    pub from: Option<Box<str>>,
    /// The last day on which it holds.
    pub until: Option<Box<str>>,
    /// By frequency, then level.
    pub points: Vec<CertificatePoint>,
    /// What is wrong: a certificate with problems is not applied.
    pub problems: Vec<CertificateProblem>,
}

/// A correction between points of a certificate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Corrected {
    /// True power over what is shown.
    pub factor: f64,
    /// The points it lies between, each with its share of the factor.
    pub shares: [(usize, f64); 4],
}

/// A frequency this close to one of the certificate is that one, relative (our choice).
const SAME: f64 = 0.001;

impl Certificate {
    /// Reads a certificate by what the file is. None of a text table without the columns of one.
    #[must_use]
    pub fn parse(path: &str, text: &str) -> Option<Certificate> {
        let xml = path
            .rsplit_once('.')
            .is_some_and(|(_, e)| e.eq_ignore_ascii_case("xml"));
        let mut c = match xml {
            true => digital::read(text),
            false => table::read(text)?,
        };
        c.points.sort_by(|a, b| {
            let level = |p: &CertificatePoint| p.level_w.unwrap_or(0.0);
            a.hz.total_cmp(&b.hz).then(level(a).total_cmp(&level(b)))
        });
        c.check();
        Some(c)
    }

    fn problem(&mut self, line: u64, message: impl Into<String>, help: Option<&str>) {
        self.problems.push(CertificateProblem {
            line,
            message: message.into(),
            help: help.map(Into::into),
        });
    }

    fn check(&mut self) {
        if self.points.is_empty() && self.problems.is_empty() {
            self.problem(1, "It holds no correction.", None);
        }
        let twice = self
            .points
            .windows(2)
            .find(|w| (w[0].hz / w[1].hz - 1.0).abs() < 1e-9 && w[0].level_w == w[1].level_w);
        if let Some(line) = twice.map(|w| w[1].line) {
            self.problem(
                line,
                "One frequency and level stands there twice.",
                Some("Remove one of the two."),
            );
        }
        let levels = self.points.iter().filter(|p| p.level_w.is_some()).count();
        if levels > 0 && levels < self.points.len() {
            let line = self.points.iter().find(|p| p.level_w.is_none());
            let line = line.map_or(1, |p| p.line);
            self.problem(line, "This point states no level, and others do.", None);
        }
        if let (Some(from), Some(until)) = (&self.from, &self.until) {
            let n = from.len().min(until.len());
            if until.get(..n) < from.get(..n) {
                let message = format!("It holds until {until}, before its first day, {from}.");
                self.problem(1, message, None);
            }
        }
    }

    /// Lowest and highest frequency, Hz.
    #[must_use]
    pub fn range_hz(&self) -> Option<(f64, f64)> {
        Some((self.points.first()?.hz, self.points.last()?.hz))
    }

    /// Lowest and highest level of all, W; none where it does not go by level.
    #[must_use]
    pub fn range_w(&self) -> Option<(f64, f64)> {
        let levels = || self.points.iter().filter_map(|p| p.level_w);
        let low = levels().fold(f64::INFINITY, f64::min);
        let high = levels().fold(0.0, f64::max);
        (low <= high).then_some((low, high))
    }

    /// The correction of a reading of `watts` at `hz`: along the logarithm of frequency and level
    /// between the points around it. None outside them, or of a certificate with problems.
    #[must_use]
    pub fn at(&self, hz: f64, watts: f64) -> Option<Corrected> {
        if !self.problems.is_empty() {
            return None;
        }
        let rows = self.rows();
        let (below, above, share) = between(rows.iter().map(|r| self.points[r.0].hz), hz)?;
        let mut shares = [(0, 0.0); 4];
        for (k, (row, of)) in [(below, 1.0 - share), (above, share)]
            .into_iter()
            .enumerate()
        {
            if of == 0.0 {
                continue;
            }
            let (start, end) = rows[row];
            let points = &self.points[start..end];
            let (low, high, s) = match points[0].level_w {
                Some(_) => between(points.iter().filter_map(|p| p.level_w), watts)?,
                None => (0, 0, 0.0),
            };
            shares[2 * k] = (start + low, of * (1.0 - s));
            shares[2 * k + 1] = (start + high, of * s);
        }
        let factor = shares.iter().map(|(p, s)| s * self.points[*p].factor).sum();
        Some(Corrected { factor, shares })
    }

    /// Ranges of points of one frequency.
    fn rows(&self) -> Vec<(usize, usize)> {
        let mut out: Vec<(usize, usize)> = Vec::new();
        for (i, p) in self.points.iter().enumerate() {
            match out.last_mut() {
                Some(r) if (self.points[r.0].hz / p.hz - 1.0).abs() < 1e-9 => r.1 = i + 1,
                _ => out.push((i, i + 1)),
            }
        }
        out
    }
}

/// The two of some rising values around `x`, and its share of the way by logarithm.
fn between(values: impl Iterator<Item = f64>, x: f64) -> Option<(usize, usize, f64)> {
    let all: Vec<f64> = values.collect();
    if let Some(i) = all.iter().position(|v| (x / v - 1.0).abs() < SAME) {
        return Some((i, i, 0.0));
    }
    let above = all.iter().position(|v| *v > x)?;
    let below = above.checked_sub(1)?;
    let share = libm::log(x / all[below]) / libm::log(all[above] / all[below]);
    Some((below, above, share))
}
