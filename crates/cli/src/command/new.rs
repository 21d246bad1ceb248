//! `downlead new`: a file to start from.

use std::io;

use crate::args::{NewArgs, Starter};
use crate::loader::plain_io;
use crate::ui::{Outcome, Ui};
use crate::write;

const STATION: &str = include_str!("../starters/station.downlead");
const QUICK: &str = include_str!("../starters/quick.downlead");

pub(crate) fn run(args: &NewArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let (name, text) = match args.kind {
        Starter::Station => ("station.downlead", STATION),
        Starter::Quick => ("quick.downlead", QUICK),
    };
    let path = args.dir.join(name);
    match write::new(&path, text) {
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
