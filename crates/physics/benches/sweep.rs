//! Placeholder target, filled with the example chain.
fn main() {}
