//! Touchstone files: the tables of network parameters that analysers and simulators write.
//!
//! [`read`] takes the bytes of a file and gives all that can be had of it: the [`Network`], the
//! noise table if there is one, the header, and [`Note`]s about everything that is
//! wrong or had to be assumed, each with its place. It never panics, and a bad row costs that
//! row. [`write`](write()) makes a file of a network.
//!
//! ```
//! let text = "! a load\n# MHz S RI R 50\n145 0.0 0.2\n146 0.01 0.21\n";
//! let file = downlead_touchstone::read(text.as_bytes(), Some(1));
//! let network = file.network.expect("two good rows");
//! assert!(file.notes.is_empty());
//! assert_eq!(network.frequencies_hz(), [145e6, 146e6]);
//! let in_75_ohm = network.re_referenced(&[75.0]).unwrap();
//! assert!((in_75_ohm.swr(0, 0) - 1.788).abs() < 1e-3);
//! ```
//!
//! The reader accepts version 1.0 and 1.1 (with one reference resistance per port), 2.0 and 2.1 of
//! the Touchstone file format specification (IBIS Open Forum; section names are given where
//! known, the rest is from memory). S-, Z-, Y-, H- and G-parameters come out as S-parameters in
//! the real reference resistance of each port. Mixed-mode data and complex references are
//! reported and not read.
//!
//! The crate is pure: no files, no clock; transcendental functions go through [`libm`], so
//! results are bit-equal on every platform.

pub mod convert;
mod decimal;
mod header;
mod matrix;
pub mod measures;
mod network;
mod note;
mod number;
mod read;
mod rows;
mod write;

pub use convert::Parameter;
pub use header::{Format, Header, MatrixFormat, TwoPortOrder, Unit, Version};
pub use network::{Between, Network, NetworkError, RangeError};
pub use note::{Kind, Note, Severity};
pub use num_complex::Complex64;
pub use read::{NoisePoint, Touchstone, ports_from_name, read};
pub use write::{WriteError, WriteOptions, write};

/// The largest number of ports that is read; a file that declares more is a mistake.
pub const MAX_PORTS: usize = 1024;
