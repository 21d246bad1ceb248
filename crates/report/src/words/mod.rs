//! One vocabulary for everything that is printed.

pub mod figure;
