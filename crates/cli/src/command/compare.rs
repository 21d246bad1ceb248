//! `downlead compare`: the variants of a file beside their stations.

use std::io;

use downlead_report::build::variants::variants;
use downlead_report::page::variants::{answers, page};
use downlead_report::shape::variants::Variants;
use downlead_report::sheet;
use downlead_report::write::html::html;
use downlead_report::write::json::{json, schema};
use downlead_report::write::markdown::{UNLINKED, markdown};
use downlead_report::write::text::text;

use crate::change::compare::{Against, CompareArgs, CompareFormat};
use crate::files::gather;
use crate::loader::in_words;
use crate::model::Snapshot;
use crate::ui::{Outcome, Ui};

pub(crate) fn run(args: &CompareArgs, ui: &mut Ui) -> io::Result<Outcome> {
    if args.shape.schema {
        ui.print(&schema::<Variants>()?)?;
        return Ok(Outcome::Clean);
    }
    let v = match compared(args) {
        Ok(v) => v,
        Err(why) => {
            why.iter().for_each(|w| ui.complain(w));
            return Ok(Outcome::Trouble);
        }
    };
    let page = |v: &Variants| if ui.quiet { answers(v) } else { page(v) };
    let out = match args.format {
        CompareFormat::Text => text(&page(&v), ui.look()),
        CompareFormat::Markdown => markdown(&page(&v), UNLINKED),
        CompareFormat::Html => html(&page(&v)),
        CompareFormat::Csv => sheet::variants(&v).map_err(io::Error::other)?,
        CompareFormat::Json => json(&v)?,
    };
    ui.print(&out)?;
    let fails = match args.against {
        Against::Limits => v.not_met,
        Against::Base => v.worse,
    };
    Ok(if fails {
        Outcome::Findings
    } else {
        Outcome::Clean
    })
}

fn compared(args: &CompareArgs) -> Result<Variants, Vec<String>> {
    let Some(file) = &args.file else {
        return Err(vec!["name the file".to_owned()]);
    };
    let gathered = gather(std::slice::from_ref(file), args.within.root.as_deref());
    if !gathered.trouble.is_empty() {
        return Err(gathered.trouble);
    }
    let (Some(group), true) = (gathered.groups.first(), file.is_file()) else {
        return Err(vec![format!("{}: name one file", file.display())]);
    };
    let loader = group.loader();
    let s = Snapshot::load(&group.files, &loader);
    if let Some(e) = s.files().first().and_then(|f| f.error.as_ref()) {
        return Err(vec![format!("{}: {}", file.display(), in_words(e))]);
    }
    let known: Vec<String> = s
        .variants(0)
        .iter()
        .map(|v| v.1.name.text.to_string())
        .collect();
    if known.is_empty() {
        return Err(vec![format!(
            "{}: it has no variants; one is written `variant NAME of STATION {{ TX1 28 W ± 5 % }}`",
            file.display()
        )]);
    }
    for n in &args.variant {
        if !known.contains(n) {
            return Err(vec![format!(
                "--variant {n}: {} has {}",
                file.display(),
                known.join(", ")
            )]);
        }
    }
    let shown = group
        .files
        .first()
        .map_or_else(String::new, |f| group.shown(f));
    Ok(variants(&s, 0, &shown, &args.variant))
}
