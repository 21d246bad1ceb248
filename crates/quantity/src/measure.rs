//! A value with its standard uncertainty.

/// How a stated tolerance is spread (GUM, JCGM 100:2008, 4.3).
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Shape {
    /// Half-width of a rectangular distribution: u = a/√3. A plain `±` and an interval mean this.
    Rectangular,
    /// Expanded uncertainty with coverage factor k: u = U/k.
    Coverage(f64),
}

/// A stated tolerance: half-width (in the base unit of its value, or relative) and shape.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tolerance {
    /// Half-width as stated, never negative.
    pub half_width: f64,
    /// Distribution.
    pub shape: Shape,
}

impl Tolerance {
    /// Standard uncertainty.
    #[must_use]
    pub fn standard(self) -> f64 {
        match self.shape {
            Shape::Rectangular => self.half_width / libm::sqrt(3.0),
            Shape::Coverage(k) => self.half_width / k,
        }
    }
}

/// A nominal value and its standard uncertainty, both in one unit.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct Measure {
    /// Nominal value.
    pub value: f64,
    /// Standard uncertainty (k = 1), never negative.
    pub u: f64,
}

impl Measure {
    /// A value without doubt.
    #[must_use]
    pub fn exact(value: f64) -> Self {
        Measure { value, u: 0.0 }
    }

    /// The interval `low to high`, taken as rectangular about its middle.
    #[must_use]
    pub fn interval(low: f64, high: f64) -> Self {
        Measure {
            value: 0.5 * (low + high),
            u: 0.5 * (high - low).abs() / libm::sqrt(3.0),
        }
    }
}
