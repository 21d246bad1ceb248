//! `downlead card`: expected readings to take to the site.

use std::io;

use downlead_base::Severity;

use super::{judged, load};
use crate::args::{CardArgs, ReportFormat};
use crate::card::shape::{CardFile, SCHEMA};
use crate::card::{self, Meters, SAFETY};
use crate::draw::draw;
use crate::files::gather;
use crate::report;
use crate::ui::{Outcome, Ui};

pub(crate) fn run(args: &CardArgs, ui: &mut Ui) -> io::Result<Outcome> {
    if args.schema {
        ui.print(&report::schema::<CardFile>()?)?;
        return Ok(Outcome::Clean);
    }
    let gathered = gather(&args.paths, args.root.as_deref());
    let loaded = load(&gathered, ui);
    if loaded.files == 0 {
        return Ok(loaded.outcome);
    }
    let mut file = CardFile {
        schema: SCHEMA,
        cards: Vec::new(),
        safety: SAFETY.to_vec(),
    };
    let meters = Meters {
        envs: loaded
            .snapshots
            .iter()
            .flat_map(|s| s.scopes())
            .map(downlead_eval::Scope::env)
            .collect(),
        with: args.with.as_deref(),
    };
    if let Some(name) = &args.with
        && meters.named(name).is_none()
    {
        ui.complain(&format!(
            "--with {name}: there is no such instrument in these files or in what they use"
        ));
        return Ok(Outcome::Trouble);
    }
    for (group, snapshot) in gathered.groups.iter().zip(&loaded.snapshots) {
        let mut cards = card::cards(&snapshot.report(), &meters);
        if args.format == ReportFormat::Text {
            cards
                .iter_mut()
                .for_each(|c| c.file.insert_str(0, &group.prefix));
        }
        file.cards.extend(cards);
    }
    match args.format {
        ReportFormat::Text => {
            let style = ui.style;
            ui.print(&card::text(&file, style))?;
        }
        ReportFormat::Json => ui.print(&report::json(&file)?)?,
        ReportFormat::Markdown => ui.print(&card::markdown(&file))?,
        ReportFormat::Csv => ui.print(&card::csv(&file).map_err(io::Error::other)?)?,
    }
    // a card is to be printed: what is wrong goes beside it
    let style = ui.error_style;
    let drawn = draw(&loaded.findings, style, |f| f.severity == Severity::Error);
    if !drawn.is_empty() {
        ui.note(drawn.trim_end());
    }
    Ok(loaded.outcome.max(judged(&loaded.findings, false)))
}
