//! `downlead manual`: man pages and completions, written into a folder.

use std::io;
use std::path::Path;

use clap::{CommandFactory, ValueEnum};

use crate::args::{Args, ManualArgs};
use crate::loader::plain_io;
use crate::ui::{Outcome, Ui};
use crate::write;

pub(crate) fn run(args: &ManualArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let mut files = Vec::new();
    pages(&Args::command(), &mut files)?;
    for shell in clap_complete::Shell::value_variants() {
        let mut script = Vec::new();
        let name = clap_complete::Generator::file_name(shell, "downlead");
        clap_complete::generate(*shell, &mut Args::command(), "downlead", &mut script);
        files.push((format!("completions/{name}"), script));
    }
    for (name, bytes) in files {
        let path = args.dir.join(&name);
        let text = String::from_utf8_lossy(&bytes);
        if let Err(e) = write::replace(&path, &text) {
            ui.complain(&format!("{}: {}", path.display(), plain_io(&e)));
            return Ok(Outcome::Trouble);
        }
        if !ui.quiet {
            let shown = path.strip_prefix(Path::new(".")).unwrap_or(&path);
            ui.print(&format!("{}\n", shown.display()))?;
        }
    }
    Ok(Outcome::Clean)
}

/// A page for the program and one for each command, section 1.
fn pages(command: &clap::Command, files: &mut Vec<(String, Vec<u8>)>) -> io::Result<()> {
    let mut page = Vec::new();
    clap_mangen::Man::new(command.clone()).render(&mut page)?;
    files.push(("man/man1/downlead.1".to_owned(), page));
    let mut built = command.clone();
    built.build();
    for sub in built.get_subcommands().filter(|s| !s.is_hide_set()) {
        if sub.get_name() == "help" {
            continue;
        }
        let name = format!("downlead-{}", sub.get_name());
        let mut page = Vec::new();
        clap_mangen::Man::new(sub.clone())
            .title(&name)
            .render(&mut page)?;
        files.push((format!("man/man1/{name}.1"), page));
    }
    Ok(())
}
