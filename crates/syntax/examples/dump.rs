//! Prints the tree of a file: `cargo run -p downlead-syntax --example dump FILE`.
#![allow(clippy::print_stdout, clippy::print_stderr)]

use downlead_syntax::File;

fn main() {
    let Some(path) = std::env::args().nth(1) else {
        eprintln!("usage: dump FILE");
        return;
    };
    match std::fs::read_to_string(&path) {
        Ok(text) => {
            let file = File::parse(text);
            println!("{}", file.dump(std::env::args().nth(2).is_some()));
            for d in file.diagnostics() {
                let span = d.primary.loc.span;
                println!(
                    "{} {}..{}: {} [{}]",
                    d.code.id, span.start, span.end, d.message, d.primary.message
                );
                for help in &d.help {
                    println!("    {help}");
                }
            }
        }
        Err(error) => eprintln!("{path}: {error}"),
    }
}
