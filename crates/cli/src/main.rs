//! The `downlead` program: the only crate that reads files and prints.

mod args;
mod bench;
mod change;
mod command;
mod conclusion;
mod draw;
mod files;
mod findings;
mod fit;
mod formats;
mod loader;
mod model;
mod parallel;
mod plot;
mod report;
mod stdin;
mod streamed;
mod svg;
mod ui;
mod write;

use std::io::Write;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::process::ExitCode;
use std::sync::{Arc, Mutex};

use clap::Parser;

use crate::ui::{Outcome, Ui};

/// Exit code when the program itself is at fault, as Rust programs end on a panic.
const OUR_FAULT: u8 = 101;

fn main() -> ExitCode {
    let args = args::Args::parse();
    if matches!(args.command, args::Command::Lsp { .. }) {
        // the server has its own guards, and standard output is the protocol's alone
        return downlead_server::run_stdio();
    }
    ExitCode::from(guarded(|| {
        let mut ui = Ui::new(args.color, args.quiet);
        let result = command::run(&args, &mut ui).and_then(|outcome| ui.flush().map(|()| outcome));
        match result {
            Ok(outcome) => outcome as u8,
            Err(e) => {
                ui.complain(&format!(
                    "cannot write the output: {}",
                    loader::plain_io(&e)
                ));
                Outcome::Trouble as u8
            }
        }
    }))
}

/// Runs the program; a panic becomes a message that takes the blame.
fn guarded(run: impl FnOnce() -> u8) -> u8 {
    let place = Arc::new(Mutex::new(String::new()));
    let noted = Arc::clone(&place);
    std::panic::set_hook(Box::new(move |info| {
        if let Ok(mut noted) = noted.lock() {
            *noted = info.to_string();
        }
    }));
    match catch_unwind(AssertUnwindSafe(run)) {
        Ok(code) => code,
        Err(_) => {
            let what = place.lock().map(|p| p.clone()).unwrap_or_default();
            let _ = writeln!(
                std::io::stderr().lock(),
                "error: downlead failed. This is a mistake of the program, not of your file, which is as it was.\n\
                 Please report it with the file, the command, and this:\n  downlead {}: {}",
                env!("CARGO_PKG_VERSION"),
                what.replace('\n', " "),
            );
            OUR_FAULT
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_panic_is_caught() {
        assert_eq!(guarded(|| panic!("made for the test")), OUR_FAULT);
        let _ = std::panic::take_hook();
        assert_eq!(guarded(|| 1), 1);
    }

    #[test]
    fn the_command_line_is_well_formed() {
        use clap::CommandFactory;
        args::Args::command().debug_assert();
    }
}
