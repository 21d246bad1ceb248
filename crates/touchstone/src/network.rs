//! A network: S-parameters of n ports over frequency, and what one asks of it.

use crate::convert::{self, Parameter};
use crate::matrix::{self, abs};
use crate::{MAX_PORTS, measures};
use num_complex::Complex64;
use std::fmt;

/// S-parameters of a network at strictly increasing frequencies.
///
/// Ports and points count from 0: S21 is row 1, column 0. The numbers are finite, the
/// references positive; that is checked once, in [`Network::new`].
#[derive(Clone, Debug, PartialEq)]
pub struct Network {
    ports: usize,
    frequencies_hz: Vec<f64>,
    s: Vec<Complex64>,
    z0: Vec<f64>,
}

/// Why a network cannot be.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum NetworkError {
    /// No port, or more than [`MAX_PORTS`].
    Ports(usize),
    /// The S-parameters are not points × ports × ports numbers: how many there are and should be.
    Length(usize, usize),
    /// Not one reference for each port: how many there are and should be.
    References(usize, usize),
    /// A reference that is not a positive number: the port (from 0) and the value in ohm.
    Reference(usize, f64),
    /// A frequency that is negative, not finite or not above the one before: the point (from 0)
    /// and the value in hertz.
    Frequency(usize, f64),
    /// A number that is not finite: the point (from 0).
    NotFinite(usize),
    /// The network has no such parameters at that point (from 0): an open has no impedance.
    Singular(Parameter, usize),
    /// Hybrid parameters are for two ports.
    Hybrid(Parameter, usize),
}

impl fmt::Display for NetworkError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            NetworkError::Ports(n) => {
                write!(f, "{n} ports: a network has 1 to {MAX_PORTS}")
            }
            NetworkError::Length(is, should) => {
                write!(f, "{is} matrix elements where points × ports² are {should}")
            }
            NetworkError::References(is, should) => {
                write!(f, "{is} reference resistances for {should} ports")
            }
            NetworkError::Reference(port, ohm) => {
                write!(
                    f,
                    "reference of port {}: {ohm} ohm is not above zero",
                    port + 1
                )
            }
            NetworkError::Frequency(k, hz) => {
                write!(
                    f,
                    "frequency {} is {hz} Hz: not above the one before",
                    k + 1
                )
            }
            NetworkError::NotFinite(k) => write!(f, "frequency {}: a number is not finite", k + 1),
            NetworkError::Singular(p, k) => {
                let p = p.letter();
                write!(
                    f,
                    "frequency {}: the network has no {p}-parameters there",
                    k + 1
                )
            }
            NetworkError::Hybrid(p, n) => {
                write!(f, "{}-parameters are for 2 ports, not {n}", p.letter())
            }
        }
    }
}

impl std::error::Error for NetworkError {}

/// A matrix between two points of the data.
#[derive(Clone, Debug, PartialEq)]
pub struct Between {
    /// Row-major.
    pub matrix: Vec<Complex64>,
    /// The angle by which the phase of the strongest path (of one port, of its reflection) turns from the
    /// point below to the point above, degrees, 0 to 180; 0 at a point of the data. Beyond some
    /// 30° the phases between the points mean little.
    pub turn_deg: f64,
    /// The largest change of a reflection from the point below to the point above. Where it is
    /// small its chord is close to its path, however far the phase turns (near zero it has none).
    pub step: f64,
}

/// A frequency outside the data; nothing is extrapolated.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RangeError {
    /// The requested frequency, Hz.
    pub asked_hz: f64,
    /// Lowest frequency of the data, Hz.
    pub low_hz: f64,
    /// Highest frequency of the data, Hz.
    pub high_hz: f64,
}

impl fmt::Display for RangeError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mhz = |hz: f64| hz / 1e6;
        write!(
            f,
            "{} MHz is outside the data, which go from {} to {} MHz",
            mhz(self.asked_hz),
            mhz(self.low_hz),
            mhz(self.high_hz)
        )
    }
}

impl std::error::Error for RangeError {}

/// The first fault of the frequencies, references and numbers of a network.
fn fault(ports: usize, frequencies: &[f64], m: &[Complex64], z0: &[f64]) -> Option<NetworkError> {
    if ports == 0 || ports > MAX_PORTS {
        return Some(NetworkError::Ports(ports));
    }
    let should = frequencies.len().saturating_mul(ports * ports);
    if m.len() != should {
        return Some(NetworkError::Length(m.len(), should));
    }
    if z0.len() != ports {
        return Some(NetworkError::References(z0.len(), ports));
    }
    if let Some(p) = z0.iter().position(|z| !(z.is_finite() && *z > 0.0)) {
        return Some(NetworkError::Reference(p, z0[p]));
    }
    let mut last = -1.0;
    for (k, f) in frequencies.iter().enumerate() {
        if !(f.is_finite() && *f >= 0.0 && *f > last) {
            return Some(NetworkError::Frequency(k, *f));
        }
        last = *f;
    }
    let bad = m.iter().position(|z| !z.is_finite())?;
    Some(NetworkError::NotFinite(bad / (ports * ports)))
}

impl Network {
    /// A network of `s`, row-major matrices one after the other, in the references `z0` (ohm,
    /// one a port).
    ///
    /// # Errors
    /// Says what is wrong with lengths, order of frequencies, references or numbers.
    pub fn new(
        frequencies_hz: Vec<f64>,
        s: Vec<Complex64>,
        z0: Vec<f64>,
    ) -> Result<Network, NetworkError> {
        let ports = z0.len();
        match fault(ports, &frequencies_hz, &s, &z0) {
            Some(fault) => Err(fault),
            None => Ok(Network {
                ports,
                frequencies_hz,
                s,
                z0,
            }),
        }
    }

    /// A network of other parameters, in ohm and siemens, seen in the references `z0`.
    ///
    /// # Errors
    /// As [`Network::new`]; and where a matrix has no S-parameters.
    pub fn from_parameters(
        parameter: Parameter,
        frequencies_hz: Vec<f64>,
        mut data: Vec<Complex64>,
        z0: Vec<f64>,
    ) -> Result<Network, NetworkError> {
        let n = z0.len();
        if let Some(fault) = fault(n, &frequencies_hz, &data, &z0) {
            return Err(fault);
        }
        if parameter.is_hybrid() && n != 2 {
            return Err(NetworkError::Hybrid(parameter, n));
        }
        for (k, m) in data.chunks_exact_mut(n * n).enumerate() {
            convert::normalise(parameter, m, &z0);
            if !convert::s_from_normalised(parameter, m, n) {
                return Err(NetworkError::Singular(parameter, k));
            }
        }
        Network::new(frequencies_hz, data, z0)
    }

    /// Other parameters of the network in ohm and siemens, row-major matrices as
    /// [`Network::s`].
    ///
    /// # Errors
    /// Where the network has none: `Singular`, and `Hybrid` if it has not two ports.
    pub fn parameters(&self, parameter: Parameter) -> Result<Vec<Complex64>, NetworkError> {
        let n = self.ports;
        if parameter.is_hybrid() && n != 2 {
            return Err(NetworkError::Hybrid(parameter, n));
        }
        let mut data = self.s.clone();
        for (k, m) in data.chunks_exact_mut(n * n).enumerate() {
            if !convert::normalised_from_s(parameter, m, n) {
                return Err(NetworkError::Singular(parameter, k));
            }
            convert::denormalise(parameter, m, &self.z0);
        }
        Ok(data)
    }

    /// The same network seen in other real references (ohm, one a port).
    ///
    /// # Errors
    /// A wrong number of references or one not above zero.
    pub fn re_referenced(&self, z0: &[f64]) -> Result<Network, NetworkError> {
        if let Some(fault) = fault(self.ports, &[], &[], z0) {
            return Err(fault);
        }
        let n = self.ports;
        let mut s = self.s.clone();
        for (k, m) in s.chunks_exact_mut(n * n).enumerate() {
            if !convert::re_reference(m, &self.z0, z0) {
                return Err(NetworkError::Singular(Parameter::S, k));
            }
        }
        Network::new(self.frequencies_hz.clone(), s, z0.to_vec())
    }

    /// Number of ports.
    #[must_use]
    pub fn ports(&self) -> usize {
        self.ports
    }

    /// Number of frequencies.
    #[must_use]
    pub fn points(&self) -> usize {
        self.frequencies_hz.len()
    }

    /// Frequencies in hertz, strictly increasing.
    #[must_use]
    pub fn frequencies_hz(&self) -> &[f64] {
        &self.frequencies_hz
    }

    /// Lowest and highest frequency in hertz; `None` without data.
    #[must_use]
    pub fn range_hz(&self) -> Option<(f64, f64)> {
        Some((*self.frequencies_hz.first()?, *self.frequencies_hz.last()?))
    }

    /// All S-parameters: points × ports × ports, row-major.
    #[must_use]
    pub fn s(&self) -> &[Complex64] {
        &self.s
    }

    /// Reference resistance of each port, ohm.
    #[must_use]
    pub fn z0(&self) -> &[f64] {
        &self.z0
    }

    /// The matrix at a point, row-major.
    ///
    /// # Panics
    /// If there is no such point.
    #[must_use]
    pub fn matrix(&self, point: usize) -> &[Complex64] {
        let size = self.ports * self.ports;
        &self.s[point * size..(point + 1) * size]
    }

    /// One S-parameter at a point: `at(k, 1, 0)` is S21.
    ///
    /// # Panics
    /// If there is no such point or port.
    #[must_use]
    pub fn at(&self, point: usize, to: usize, from: usize) -> Complex64 {
        assert!(to < self.ports && from < self.ports, "no such port");
        self.matrix(point)[to * self.ports + from]
    }

    /// SWR at a port with the others terminated in their references.
    ///
    /// # Panics
    /// As [`Network::at`].
    #[must_use]
    pub fn swr(&self, point: usize, port: usize) -> f64 {
        measures::swr(self.at(point, port, port))
    }

    /// Return loss at a port in dB, positive for a passive load.
    ///
    /// # Panics
    /// As [`Network::at`].
    #[must_use]
    pub fn return_loss_db(&self, point: usize, port: usize) -> f64 {
        measures::return_loss_db(self.at(point, port, port))
    }

    /// Insertion gain between references in dB, 20·log10|S|; negative for a lossy network.
    ///
    /// # Panics
    /// As [`Network::at`].
    #[must_use]
    pub fn insertion_gain_db(&self, point: usize, to: usize, from: usize) -> f64 {
        measures::gain_db(self.at(point, to, from))
    }

    /// Impedance seen into a port with the others terminated, ohm; not finite for an open.
    ///
    /// # Panics
    /// As [`Network::at`].
    #[must_use]
    pub fn impedance(&self, point: usize, port: usize) -> Complex64 {
        measures::impedance(self.at(point, port, port), self.z0[port])
    }

    /// The matrix at any frequency within the data: real and imaginary parts are interpolated
    /// linearly, as is right for data so dense that no part turns much between neighbours.
    ///
    /// # Errors
    /// Outside the data: nothing is extrapolated.
    pub fn matrix_at(&self, hz: f64) -> Result<Vec<Complex64>, RangeError> {
        let (k, t) = self.place(hz)?;
        let below = self.matrix(k);
        if t == 0.0 {
            return Ok(below.to_vec());
        }
        let above = self.matrix(k + 1);
        Ok(below
            .iter()
            .zip(above)
            .map(|(a, b)| between(*a, *b, t))
            .collect())
    }

    /// One S-parameter at any frequency within the data; see [`Network::matrix_at`].
    ///
    /// # Errors
    /// Outside the data.
    ///
    /// # Panics
    /// If there is no such port.
    pub fn at_hz(&self, hz: f64, to: usize, from: usize) -> Result<Complex64, RangeError> {
        let (k, t) = self.place(hz)?;
        let below = self.at(k, to, from);
        if t == 0.0 {
            return Ok(below);
        }
        Ok(between(below, self.at(k + 1, to, from), t))
    }

    /// The matrix at any frequency within the data with transmissions interpolated by magnitude
    /// and phase, reflections by real and imaginary part. A line turns the phase of what passes
    /// evenly with frequency, which a chord between two points would take for a loss.
    ///
    /// # Errors
    /// Outside the data.
    pub fn between_hz(&self, hz: f64) -> Result<Between, RangeError> {
        let (k, t) = self.place(hz)?;
        if t == 0.0 {
            return Ok(Between {
                matrix: self.matrix(k).to_vec(),
                turn_deg: 0.0,
                step: 0.0,
            });
        }
        let (below, above) = (self.matrix(k), self.matrix(k + 1));
        let n = self.ports;
        // the phase is that of the strongest path; one port has its reflection only
        let (mut strongest, mut turn_deg, mut step) = (0.0, 0.0, 0.0f64);
        let mut m = Vec::with_capacity(n * n);
        for (i, (a, b)) in below.iter().zip(above).enumerate() {
            let reflection = i / n == i % n;
            let weight = abs(*a).min(abs(*b));
            let turn = measures::angle_deg(b * a.conj());
            if reflection == (n == 1) && weight > strongest {
                strongest = weight;
                turn_deg = turn.abs();
            }
            m.push(if reflection {
                step = step.max(abs(b - a));
                between(*a, *b, t)
            } else {
                let size = abs(*a) + (abs(*b) - abs(*a)) * t;
                let phase = measures::angle_deg(*a) + turn * t;
                measures::polar_deg(size, phase)
            });
        }
        Ok(Between {
            matrix: m,
            turn_deg,
            step,
        })
    }

    /// The network on another grid of frequencies within its own.
    ///
    /// # Errors
    /// The first frequency outside the data.
    ///
    /// # Panics
    /// If the frequencies do not increase.
    pub fn interpolated(&self, frequencies_hz: &[f64]) -> Result<Network, RangeError> {
        let mut s = Vec::with_capacity(frequencies_hz.len() * self.ports * self.ports);
        for hz in frequencies_hz {
            s.extend(self.matrix_at(*hz)?);
        }
        let network = Network::new(frequencies_hz.to_vec(), s, self.z0.clone());
        Ok(network.expect("increasing frequencies"))
    }

    /// The point at or below a frequency and the part of the way to the next.
    fn place(&self, hz: f64) -> Result<(usize, f64), RangeError> {
        let (low_hz, high_hz) = self.range_hz().unwrap_or((f64::NAN, f64::NAN));
        let inside = hz >= low_hz && hz <= high_hz;
        if !inside {
            return Err(RangeError {
                asked_hz: hz,
                low_hz,
                high_hz,
            });
        }
        let f = &self.frequencies_hz;
        let k = f.partition_point(|x| *x <= hz) - 1;
        if f[k] == hz {
            return Ok((k, 0.0));
        }
        Ok((k, (hz - f[k]) / (f[k + 1] - f[k])))
    }

    /// The largest singular value of S at a point: how much the network can return of what it
    /// gets, as a ratio of amplitudes. At most 1 for a passive network, and no less than
    /// √(|S11|² + |S21|²).
    ///
    /// # Panics
    /// If there is no such point.
    #[must_use]
    pub fn largest_gain(&self, point: usize) -> f64 {
        let m = self.matrix(point);
        match self.ports {
            1 => abs(m[0]),
            2 => matrix::largest_of_two(m),
            n => matrix::largest_singular_value(m, n),
        }
    }

    /// The points where the network gives out more power than it gets, beyond `tolerance` of
    /// that power: 0.02 allows for the uncertainty of a usual analyser (common practice).
    #[must_use]
    pub fn active_points(&self, tolerance: f64) -> Vec<usize> {
        let over = |k: &usize| {
            let g = self.largest_gain(*k);
            g * g > 1.0 + tolerance
        };
        (0..self.points()).filter(over).collect()
    }

    /// True if the network is passive within `tolerance` at all points.
    #[must_use]
    pub fn is_passive(&self, tolerance: f64) -> bool {
        self.active_points(tolerance).is_empty()
    }

    /// The largest |Sij − Sji| at a point: 0 for a reciprocal network, however its ports are
    /// referenced.
    ///
    /// # Panics
    /// If there is no such point.
    #[must_use]
    pub fn asymmetry(&self, point: usize) -> f64 {
        let (m, n) = (self.matrix(point), self.ports);
        let pairs = (0..n).flat_map(|i| (0..i).map(move |j| (i, j)));
        pairs
            .map(|(i, j)| abs(m[i * n + j] - m[j * n + i]))
            .fold(0.0, f64::max)
    }

    /// True if |Sij − Sji| is within `tolerance` at all points.
    #[must_use]
    pub fn is_reciprocal(&self, tolerance: f64) -> bool {
        (0..self.points()).all(|k| self.asymmetry(k) <= tolerance)
    }
}

fn between(a: Complex64, b: Complex64, t: f64) -> Complex64 {
    Complex64::new(a.re + (b.re - a.re) * t, a.im + (b.im - a.im) * t)
}
