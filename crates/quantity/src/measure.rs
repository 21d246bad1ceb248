//! A value with its standard uncertainty.

/// Distribution of a stated tolerance (GUM, JCGM 100:2008, 4.3).
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

    /// A value with this tolerance, which is in the value's unit.
    #[must_use]
    pub fn about(self, value: f64) -> Measure {
        Measure {
            value,
            u: self.standard(),
            normal: self.shape.is_normal(),
            return_loss: false,
        }
    }
}

impl Shape {
    /// True for a normal distribution. An expanded uncertainty is taken so (GUM, JCGM
    /// 100:2008, 4.3.3), a bound as rectangular (4.3.7).
    #[must_use]
    pub fn is_normal(self) -> bool {
        matches!(self, Shape::Coverage(_))
    }
}

/// A nominal value and its standard uncertainty, both in one unit.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct Measure {
    /// Nominal value.
    pub value: f64,
    /// Standard uncertainty (k = 1), never negative.
    pub u: f64,
    /// Distribution: normal (`k 1`, `k 2`, what is combined of several) or rectangular (a plain
    /// `±`, an interval).
    pub normal: bool,
    /// True for an SWR that was stated as a return loss: its distribution is one of the
    /// decibels, which for a large `±` is not symmetrical as an SWR.
    pub return_loss: bool,
}

impl Measure {
    /// A value without uncertainty.
    #[must_use]
    pub fn exact(value: f64) -> Self {
        Measure {
            value,
            u: 0.0,
            normal: false,
            return_loss: false,
        }
    }

    /// The interval `low to high`, taken as rectangular about its middle.
    #[must_use]
    pub fn interval(low: f64, high: f64) -> Self {
        Measure {
            value: 0.5 * (low + high),
            u: 0.5 * (high - low).abs() / libm::sqrt(3.0),
            normal: false,
            return_loss: false,
        }
    }

    /// Largest likely deviation: the half-width of a rectangular distribution, twice the
    /// standard uncertainty of a normal one.
    #[must_use]
    pub fn reach(self) -> f64 {
        self.u * if self.normal { 2.0 } else { libm::sqrt(3.0) }
    }

    /// The same value with its uncertainty times a factor: in another unit than the value's.
    #[must_use]
    pub fn scaled_u(self, factor: f64) -> Self {
        Measure {
            u: self.u * factor.abs(),
            ..self
        }
    }

    /// The same in another unit, or times an exact factor.
    #[must_use]
    pub fn scaled(self, factor: f64) -> Self {
        Measure {
            value: self.value * factor,
            u: self.u * factor.abs(),
            ..self
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_distribution_is_kept() {
        let of = |shape| {
            Tolerance {
                half_width: 3.0,
                shape,
            }
            .about(5.0)
        };
        assert!(!of(Shape::Rectangular).normal);
        assert!((of(Shape::Rectangular).u - 1.732_050_8).abs() < 1e-7);
        assert!(of(Shape::Coverage(2.0)).normal);
        assert_eq!(of(Shape::Coverage(2.0)).u, 1.5);
        assert!((of(Shape::Rectangular).reach() - 3.0).abs() < 1e-12);
        assert_eq!(of(Shape::Coverage(1.0)).reach(), 6.0);
        assert!(!Measure::interval(2.0, 8.0).normal);
        assert!(!Measure::exact(5.0).normal && !Measure::default().normal);
        let s = of(Shape::Coverage(1.0)).scaled(-2.0);
        assert_eq!((s.value, s.u, s.normal), (-10.0, 6.0, true));
    }
}
