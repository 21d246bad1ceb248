//! Shows a file of the examples folder with its hints: `cargo run -p downlead-ide --example show -- FILE`.
#![allow(clippy::print_stdout, reason = "a picture for people")]

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_ide::{Config, Doc, inlay_hints};
use downlead_testkit::examples;

fn main() {
    let path = std::env::args()
        .nth(1)
        .unwrap_or_else(|| "pellgarrow/rev4.downlead".to_owned());
    let s = Snapshot::load(&[path], &examples());
    for (i, f) in s.files().iter().enumerate() {
        let hints = inlay_hints(&s, Doc::File(i), Span::new(0, u32::MAX), &Config::default());
        let mut at = 0;
        for h in hints {
            println!(
                "{}   ⟦{}⟧",
                f.text().get(at..h.offset as usize).unwrap_or(""),
                h.text()
            );
            at = h.offset as usize + 1;
        }
        println!("{}", f.text().get(at..).unwrap_or(""));
    }
}
