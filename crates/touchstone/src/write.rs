//! The writer: a network as a Touchstone file.

use crate::convert::{self, Parameter};
use crate::header::{Format, Unit, Version};
use crate::matrix::abs;
use crate::measures::{angle_deg, gain_db};
use crate::network::Network;
use crate::number::shortest;
use num_complex::Complex64;
use std::fmt::{self, Write as _};

/// Options of the writer. The default is version 1, MHz, S, RI: every program reads it, and
/// what keeps every bit.
#[derive(Clone, Debug, PartialEq)]
pub struct WriteOptions {
    /// Version of the format: 1.0 or 2.0. With references that differ between ports, version 1
    /// is 1.1, which few programs read.
    pub version: Version,
    /// Unit of the frequencies.
    pub unit: Unit,
    /// Notation of complex numbers. RI reads back to the last bit; MA and DB within a few units of
    /// the last place.
    pub format: Format,
    /// The network parameters.
    pub parameter: Parameter,
    /// Comments above all, one a line. Line breaks within one make more lines.
    pub comments: Vec<String>,
}

impl Default for WriteOptions {
    fn default() -> Self {
        WriteOptions {
            version: Version::V1,
            unit: Unit::MHz,
            format: Format::RI,
            parameter: Parameter::S,
            comments: Vec::new(),
        }
    }
}

/// Why a network cannot be written so.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum WriteError {
    /// The network has no such parameters at that point (from 0): write S instead.
    Singular(Parameter, usize),
    /// Hybrid parameters are for two ports: the parameter and the ports.
    Hybrid(Parameter, usize),
}

impl fmt::Display for WriteError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            WriteError::Singular(p, k) => {
                let p = p.letter();
                let k = k + 1;
                write!(
                    f,
                    "frequency {k}: the network has no {p}-parameters there; write S"
                )
            }
            WriteError::Hybrid(p, n) => {
                write!(
                    f,
                    "{}-parameters are for 2 ports, not {n}; write S",
                    p.letter()
                )
            }
        }
    }
}

impl std::error::Error for WriteError {}

/// The level written for nothing at all, in dB: low enough to read back as exactly 0.
const NOTHING_DB: f64 = -7000.0;

/// Writes a network. Numbers are the shortest that read back the same; frequencies are exact in
/// every unit.
///
/// # Errors
/// If the network has no such parameters.
pub fn write(network: &Network, options: &WriteOptions) -> Result<String, WriteError> {
    let n = network.ports();
    let parameter = options.parameter;
    if parameter.is_hybrid() && n != 2 {
        return Err(WriteError::Hybrid(parameter, n));
    }
    let mut out = String::with_capacity(256 + network.points() * (16 + 44 * n * n));
    head(&mut out, network, options);
    let mut m = vec![Complex64::new(0.0, 0.0); n * n];
    for (k, hz) in network.frequencies_hz().iter().enumerate() {
        m.copy_from_slice(network.matrix(k));
        if parameter != Parameter::S {
            if !convert::normalised_from_s(parameter, &mut m, n) {
                return Err(WriteError::Singular(parameter, k));
            }
            if options.version == Version::V2 {
                convert::denormalise(parameter, &mut m, network.z0());
            }
        }
        shortest(&mut out, *hz, options.unit.exponent());
        row(&mut out, &m, n, options.format);
    }
    if options.version == Version::V2 {
        out.push_str("[End]\n");
    }
    Ok(out)
}

fn head(out: &mut String, network: &Network, options: &WriteOptions) {
    let n = network.ports();
    if options.version == Version::V2 {
        out.push_str("[Version] 2.0\n");
    }
    for comment in options.comments.iter().flat_map(|c| c.lines()) {
        let _ = writeln!(out, "! {}", comment.replace('\r', " ").trim());
    }
    let (unit, letter) = (options.unit.name(), options.parameter.letter());
    let _ = write!(out, "# {unit} {letter} {} R", options.format.name());
    let z0 = network.z0();
    let alike = z0.iter().all(|z| *z == z0[0]);
    let listed = if alike || options.version == Version::V2 {
        1
    } else {
        n
    };
    numbers(out, &z0[..listed]);
    out.push('\n');
    if options.version == Version::V2 {
        let _ = writeln!(out, "[Number of Ports] {n}");
        if n == 2 {
            out.push_str("[Two-Port Data Order] 21_12\n");
        }
        let _ = writeln!(out, "[Number of Frequencies] {}", network.points());
        out.push_str("[Reference]");
        numbers(out, z0);
        out.push_str("\n[Network Data]\n");
    }
}

fn numbers(out: &mut String, list: &[f64]) {
    for x in list {
        out.push(' ');
        shortest(out, *x, 0);
    }
}

/// One matrix: two-ports N11 N21 N12 N22 on the frequency's line; from three ports on each row
/// of the matrix on its own line, at most four pairs a line.
fn row(out: &mut String, m: &[Complex64], n: usize, format: Format) {
    let order: &[usize] = &[0, 2, 1, 3];
    for k in 0..n * n {
        let column = k % n;
        if n > 2 && k > 0 && column.is_multiple_of(4) {
            out.push_str("\n ");
        }
        let z = if n == 2 { m[order[k]] } else { m[k] };
        let (a, b) = match format {
            Format::RI => (z.re, z.im),
            Format::MA => (abs(z), angle_deg(z)),
            Format::DB => (gain_db(z).max(NOTHING_DB), angle_deg(z)),
        };
        numbers(out, &[a, b]);
    }
    out.push('\n');
}
