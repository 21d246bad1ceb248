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
    let mut known = Vec::new();
    let mut found: Vec<(usize, Snapshot)> = Vec::new();
    for (at, s) in loaded.snapshots.iter().enumerate() {
        for file in s.scopes().iter().map(Scope::file) {
            known.extend(s.variants(file).iter().map(|v| v.1.name.text.to_string()));
            found.extend(s.try_variant(file, name).map(|t| (at, t.variant)));
        }
    }
    let mut found = found.into_iter();
    match (found.next(), found.next()) {
        (Some((at, variant)), None) => {
            let mut findings = Findings::default();
            let mut snapshots: Vec<Snapshot> = Vec::new();
            for group in &gathered.groups[..at] {
                // the other roots have nothing to show, and keep their places
                snapshots.push(Snapshot::load(&[], &group.loader()));
            }
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
            let words = match known.is_empty() {
                true => "these files have no variants; one is written `variant NAME of STATION { TX1 28 W ± 5 % }`".to_owned(),
                false => format!("there is no such variant, or it has errors; there are {}", known.join(", ")),
            };
            ui.complain(&format!("--variant {name}: {words}"));
            None
        }
    }
}
