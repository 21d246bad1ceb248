//! `downlead new`: a file to start from.

use std::fs;
use std::io::{self, Write};

use crate::args::{NewArgs, Starter};
use crate::loader::plain_io;
use crate::ui::{Outcome, Ui};

const STATION: &str = include_str!("../starters/station.downlead");
const QUICK: &str = include_str!("../starters/quick.downlead");

pub(crate) fn run(args: &NewArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let (name, text) = match args.kind {
        Starter::Station => ("station.downlead", STATION),
        Starter::Quick => ("quick.downlead", QUICK),
    };
    let path = args.dir.join(name);
    match write_new(&path, text) {
        Ok(()) => {
            let shown = path
                .strip_prefix(".")
                .unwrap_or(&path)
                .display()
                .to_string();
            ui.print(&format!("{shown}\n"))?;
            if ui.watched {
                ui.note(&format!("next: downlead report {shown}"));
            }
            Ok(Outcome::Clean)
        }
        Err(e) if e.kind() == io::ErrorKind::AlreadyExists => {
            ui.complain(&format!(
                "{}: it is there already and stays as it is",
                path.display()
            ));
            Ok(Outcome::Trouble)
        }
        Err(e) => {
            ui.complain(&format!("{}: {}", path.display(), plain_io(&e)));
            Ok(Outcome::Trouble)
        }
    }
}

/// Writes a file that is not there yet, whole or not at all.
fn write_new(path: &std::path::Path, text: &str) -> io::Result<()> {
    let folder = path.parent().unwrap_or(path);
    fs::create_dir_all(folder)?;
    // an exclusive link refuses an existing name even when it appears meanwhile
    let mut builder = tempfile::Builder::new();
    builder.prefix(".downlead-");
    // a temporary file's usual mode is for one user only; the user's mask still applies to this one
    #[cfg(unix)]
    builder.permissions(std::os::unix::fs::PermissionsExt::from_mode(0o666));
    let mut file = builder.tempfile_in(folder)?;
    file.write_all(text.as_bytes())?;
    file.as_file().sync_all()?;
    file.persist_noclobber(path).map_err(|e| e.error)?;
    Ok(())
}
