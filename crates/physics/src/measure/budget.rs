//! A list of contributions to a loss, each with its source.

use std::collections::HashMap;
use std::collections::hash_map::Entry;

use crate::uncertainty::{coverage_factor, rss, welch_satterthwaite};

/// Where a contribution comes from. Contributions of one source move together.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Source {
    /// Scale error (of reading) of a meter.
    Scale(usize),
    /// Offset (of full scale) of a meter.
    Offset(usize),
    /// Linearity at one reading ([`Level::id`](super::Level::id)).
    Linearity(usize),
    /// Scatter of one reading.
    Repeatability(usize),
    /// Resolution of one reading.
    Resolution(usize),
    /// Drift that interpolation does not remove, after the baseline of this reading.
    Drift(usize),
    /// Mismatch between the ends and the piece of this reading.
    Mismatch(usize),
    /// An adapter that came or went with the piece.
    Adapter(usize),
    /// A point of the calibration certificate of a meter.
    Certificate(usize),
    /// Anything the caller adds.
    Other(usize),
}

/// A contribution in dB: sensitivity times standard uncertainty, with its sign.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Term {
    /// Where it comes from.
    pub source: Source,
    /// Signed contribution to the loss, dB.
    pub u_db: f64,
    /// Degrees of freedom; infinite for what was not found from readings (type B).
    pub dof: f64,
}

impl Term {
    /// A contribution of type B.
    #[must_use]
    pub fn type_b(source: Source, u_db: f64) -> Self {
        Self {
            source,
            u_db,
            dof: f64::INFINITY,
        }
    }
}

/// Up to so many terms are summed by looking through them again.
const FEW: usize = 48;

/// Contributions to one loss. Can be used again without allocating.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Budget {
    terms: Vec<Term>,
}

impl Budget {
    /// Without contributions.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// Takes all contributions out.
    pub fn clear(&mut self) {
        self.terms.clear();
    }

    /// Adds a contribution; one of nothing is left out.
    pub fn push(&mut self, term: Term) {
        if term.u_db != 0.0 {
            self.terms.push(term);
        }
    }

    /// Adds a contribution of type B.
    pub fn add(&mut self, source: Source, u_db: f64) {
        self.push(Term::type_b(source, u_db));
    }

    /// All contributions as they were added.
    #[must_use]
    pub fn terms(&self) -> &[Term] {
        &self.terms
    }

    /// One contribution a source, summed with their signs, in the order of first mention. Its
    /// degrees of freedom are the fewest of its parts.
    pub fn by_source(&self) -> impl Iterator<Item = Term> + '_ {
        let many = (self.terms.len() > FEW).then(|| self.merged());
        let few = many.is_none().then(|| self.looked_up());
        many.into_iter().flatten().chain(few.into_iter().flatten())
    }

    /// By looking through the list again for each: a dozen terms are summed so without allocating.
    fn looked_up(&self) -> impl Iterator<Item = Term> + '_ {
        self.terms.iter().enumerate().filter_map(|(i, first)| {
            if self.terms[..i].iter().any(|t| t.source == first.source) {
                return None;
            }
            let mut sum = *first;
            for t in self.terms[i + 1..]
                .iter()
                .filter(|t| t.source == first.source)
            {
                sum.u_db += t.u_db;
                sum.dof = sum.dof.min(t.dof);
            }
            Some(sum)
        })
    }

    /// The same in one pass, for thousands of terms.
    fn merged(&self) -> Vec<Term> {
        let mut at: HashMap<Source, usize> = HashMap::with_capacity(self.terms.len());
        let mut out: Vec<Term> = Vec::new();
        for t in &self.terms {
            match at.entry(t.source) {
                Entry::Occupied(o) => {
                    let sum = &mut out[*o.get()];
                    sum.u_db += t.u_db;
                    sum.dof = sum.dof.min(t.dof);
                }
                Entry::Vacant(v) => {
                    v.insert(out.len());
                    out.push(*t);
                }
            }
        }
        out
    }

    /// Combined standard uncertainty, dB (GUM 5.1.2; within a source 5.2.2 with correlation ±1).
    #[must_use]
    pub fn u_db(&self) -> f64 {
        rss(self.by_source().map(|t| t.u_db))
    }

    /// Effective degrees of freedom (Welch–Satterthwaite, GUM G.4.1).
    #[must_use]
    pub fn dof(&self) -> f64 {
        if self.terms.iter().all(|t| t.dof.is_infinite()) {
            return f64::INFINITY;
        }
        let mut parts = [(0.0, f64::INFINITY); 32];
        let mut many = Vec::new();
        let mut n = 0;
        for t in self.by_source() {
            if n < parts.len() {
                parts[n] = (t.u_db, t.dof);
            } else {
                many.push((t.u_db, t.dof));
            }
            n += 1;
        }
        if many.is_empty() {
            return welch_satterthwaite(&parts[..n]);
        }
        many.extend_from_slice(&parts);
        welch_satterthwaite(&many)
    }

    /// Coverage factor for 95.45 %: 2 above 20 effective degrees of freedom, Student's t below
    /// (GUM G.3, G.6.6).
    #[must_use]
    pub fn k(&self) -> f64 {
        coverage(self.dof())
    }

    /// Covariance with another result in dB², through the sources both have (GUM 5.2.2, F.1.2.3).
    #[must_use]
    pub fn covariance(&self, other: &Self) -> f64 {
        let theirs: HashMap<Source, f64> = other.by_source().map(|t| (t.source, t.u_db)).collect();
        self.by_source()
            .map(|a| a.u_db * theirs.get(&a.source).copied().unwrap_or(0.0))
            .sum()
    }
}

/// Coverage factor for 95.45 % with `dof` effective degrees of freedom.
pub(super) fn coverage(dof: f64) -> f64 {
    if dof > 20.0 {
        2.0
    } else {
        coverage_factor(dof)
    }
}
