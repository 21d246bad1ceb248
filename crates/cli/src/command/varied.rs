//! `--variant NAME` of commands that show one station: the variant in the place of its station.

use downlead_eval::Scope;

use super::Loaded;
use crate::files::Gathered;
use crate::findings::Findings;
use crate::model::Snapshot;
use crate::ui::Ui;

/// The files with a variant in the place of its station: that file alone. Without a name, what was
/// loaded. None if there is no such variant, which is said.
pub(super) fn with(
    name: Option<&str>,
    gathered: &Gathered,
    loaded: Loaded,
    ui: &mut Ui,
) -> Option<Loaded> {
    let Some(name) = name else {
        return Some(loaded);
    };
    let mut found: Vec<(usize, Snapshot)> = Vec::new();
    let mut known = Vec::new();
    for (at, s) in loaded.snapshots.iter().enumerate() {
        match of(s, name) {
            Ok(variant) => found.push((at, variant)),
            Err(more) => known.extend(more),
        }
    }
    let mut found = found.into_iter();
    match (found.next(), found.next()) {
        (Some((at, variant)), None) => {
            let mut findings = Findings::default();
            // the other roots have nothing to show, and keep their places
            let others = gathered.groups[..at].iter();
            let mut snapshots: Vec<Snapshot> =
                others.map(|g| Snapshot::load(&[], &g.loader())).collect();
            findings.add(&gathered.groups[at], &variant);
            snapshots.push(variant);
            Some(Loaded {
                snapshots,
                findings,
                files: loaded.files,
                outcome: loaded.outcome,
            })
        }
        (Some(_), Some(_)) => {
            ui.complain(&format!(
                "--variant {name}: several files have one; name one file"
            ));
            None
        }
        (None, _) => {
            ui.complain(&none(name, &known));
            None
        }
    }
}

/// The set of files with a variant in the place of its station; the names of the variants there are
/// where none has this name, or several files have one.
fn of(s: &Snapshot, name: &str) -> Result<Snapshot, Vec<String>> {
    let mut known = Vec::new();
    let mut found = Vec::new();
    for file in s.scopes().iter().map(Scope::file) {
        known.extend(s.variants(file).iter().map(|v| v.1.name.text.to_string()));
        found.extend(s.try_variant(file, name).map(|t| t.variant));
    }
    match found.pop() {
        Some(variant) if found.is_empty() => Ok(variant),
        _ => Err(known),
    }
}

fn none(name: &str, known: &[String]) -> String {
    let words = match known.is_empty() {
        true => "these files have no variants; one is written `variant NAME of STATION { TX1 28 W ± 5 % }`".to_owned(),
        false => format!(
            "there is no such variant, or it has errors, or several files have one; there are {}",
            known.join(", ")
        ),
    };
    format!("--variant {name}: {words}")
}

/// The same for commands that take one file.
pub(super) fn of_one(s: Snapshot, name: Option<&str>) -> Result<Snapshot, String> {
    match name {
        None => Ok(s),
        Some(name) => find(&s, name),
    }
}

/// The files with this variant in the place of its station.
pub(super) fn find(s: &Snapshot, name: &str) -> Result<Snapshot, String> {
    of(s, name).map_err(|known| none(name, &known))
}
