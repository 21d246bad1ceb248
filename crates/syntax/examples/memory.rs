//! Heap of a parsed 10,000-line file, counted by the allocator.
#![allow(clippy::print_stdout)]

use std::alloc::System;

use cap::Cap;
use downlead_syntax::File;

#[path = "../benches/generate/mod.rs"]
mod generate;

#[global_allocator]
static HEAP: Cap<System> = Cap::new(System, usize::MAX);

fn main() {
    let text = generate::station_file(10_000, 0);
    let _ = generate::toml_file(0);
    let before = HEAP.allocated();
    let file = File::parse(text.as_str());
    let held = HEAP.allocated() - before;
    let items: usize = file.items().iter().map(|p| p.item.heap_size()).sum();
    println!("text {} bytes, {} items", text.len(), file.items().len());
    println!(
        "heap held {held} bytes = {:.2} x the text (of it in items {items})",
        held as f64 / text.len() as f64
    );
}
