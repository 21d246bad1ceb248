//! `downlead new`: files to start from.

use std::io;

use crate::args::{NewArgs, Starter};
use crate::loader::plain_io;
use crate::ui::{Outcome, Ui};
use crate::write;

const STATION: &[(&str, &str)] = &[(
    "station.downlead",
    include_str!("../starters/station.downlead"),
)];
const QUICK: &[(&str, &str)] = &[("quick.downlead", include_str!("../starters/quick.downlead"))];
/// The site first: it is what the next command reads.
const REPOSITORY: &[(&str, &str)] = &[
    (
        "sites/my-station.downlead",
        include_str!("../starters/repository/my-station.downlead"),
    ),
    (
        "lib/cables.downlead",
        include_str!("../starters/repository/cables.downlead"),
    ),
    (
        "lib/instruments.downlead",
        include_str!("../starters/repository/instruments.downlead"),
    ),
    (
        "ci/check.sh",
        include_str!("../starters/repository/check.sh"),
    ),
    (
        ".github/workflows/stations.yml",
        include_str!("../starters/repository/build.yml"),
    ),
    (
        ".pre-commit-config.yaml",
        include_str!("../starters/repository/pre-commit.yaml"),
    ),
    (
        ".gitattributes",
        include_str!("../starters/repository/gitattributes"),
    ),
    (
        "README.md",
        include_str!("../starters/repository/README.md"),
    ),
    (
        downlead_git::MARKER,
        include_str!("../starters/repository/root"),
    ),
];

pub(crate) fn run(args: &NewArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let files = match args.kind {
        Starter::Station => STATION,
        Starter::Quick => QUICK,
        Starter::Repository => REPOSITORY,
    };
    if args.dir.is_file() {
        ui.complain(&format!(
            "{}: this is a file; name a folder to write into",
            args.dir.display()
        ));
        return Ok(Outcome::Trouble);
    }
    // all or none, as far as can be seen beforehand
    let mut there = files.iter().map(|f| args.dir.join(f.0));
    if let Some(path) = there.find(|p| p.symlink_metadata().is_ok()) {
        ui.complain(&format!(
            "{}: already exists; not overwritten",
            path.display()
        ));
        return Ok(Outcome::Trouble);
    }
    for (name, text) in files {
        let path = args.dir.join(name);
        if let Err(e) = write::new(&path, text) {
            ui.complain(&format!("{}: {}", path.display(), plain_io(&e)));
            return Ok(Outcome::Trouble);
        }
        let shown = path.strip_prefix(".").unwrap_or(&path);
        ui.print(&format!("{}\n", shown.display()))?;
    }
    if let (true, Some((first, _))) = (ui.watched, files.first()) {
        let first = args.dir.join(first);
        let shown = first.strip_prefix(".").unwrap_or(&first);
        ui.note(&format!("next: downlead report {}", shown.display()));
    }
    Ok(Outcome::Clean)
}
