//! A value as evaluated: kind, tolerance and upper end still apart.

use downlead_base::Loc;
use downlead_quantity::{DB_PER_RELATIVE, Dim, Measure, Quantity, Shape, Tolerance, UnitId};
use rustc_hash::FxHashMap;

/// Named values of a scope, evaluated.
pub type Lets = FxHashMap<Box<str>, Val>;

/// A value as evaluated: kind, tolerance and upper end still apart.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Val {
    /// Nominal, or the lower end of an interval.
    pub q: Quantity,
    /// Half-width and shape of a `±`.
    pub half: Option<(Quantity, Shape)>,
    /// Upper end of `a to b`.
    pub upper: Option<Quantity>,
    /// Where.
    pub loc: Loc,
    /// Unit of a plain number, for messages and fixes.
    pub unit: Option<UnitId>,
    /// Place of the unit of a plain number (empty behind the number when it has none).
    pub unit_loc: Loc,
    /// Whether any number in it was written in feet, inches or yards.
    pub imperial: bool,
    /// The law of `per sqrt(GHz)`.
    pub per: Option<Loc>,
    /// The number after `k`, also without `±` (`accuracy 4 % k 2`).
    pub coverage: Option<f64>,
}

impl Val {
    /// The nominal value: the middle of an interval.
    #[must_use]
    pub fn middle(&self) -> Quantity {
        match self.upper {
            Some(u) => Quantity {
                value: 0.5 * (self.q.value + u.value),
                dim: self.q.dim,
            },
            None => self.q,
        }
    }

    /// Its upper end alone, for messages.
    pub(super) fn end(&self, upper: Quantity) -> Val {
        Val {
            q: upper,
            upper: None,
            half: None,
            ..*self
        }
    }

    /// Whether its `±` or interval is a rectangular one.
    #[must_use]
    pub fn is_rectangular(&self) -> bool {
        self.upper.is_some() || matches!(self.half, Some((_, Shape::Rectangular)))
    }

    /// Standard uncertainty in the base unit of its kind.
    #[must_use]
    pub fn standard(&self) -> f64 {
        if let Some(u) = self.upper {
            return Measure::interval(self.q.value, u.value).u;
        }
        let Some((h, shape)) = self.half else {
            return 0.0;
        };
        let half_width = match h.dim {
            Dim::Percent
                if matches!(
                    self.q.dim,
                    Dim::GainIsotropic | Dim::GainDipole | Dim::Level | Dim::SidebandNoise
                ) =>
            {
                DB_PER_RELATIVE * h.value
            }
            Dim::Percent if self.q.dim != Dim::Percent => h.value * self.q.value.abs(),
            Dim::Decibel if self.q.dim == Dim::Power => h.value / DB_PER_RELATIVE * self.q.value,
            _ => h.value,
        };
        Tolerance { half_width, shape }.standard()
    }
}
