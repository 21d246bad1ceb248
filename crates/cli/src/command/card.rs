//! `downlead card`: expected readings to take to the site.

use std::io;
use std::ops::ControlFlow;

use downlead_base::Severity;
use downlead_report::build::card::{Meters, cards};
use downlead_report::page::card::SAFETY;
use downlead_report::{page, sheet};

use super::judged;
use super::printed::{Forms, begin, beside, print};
use crate::args::{CardArgs, ReportFormat};
use crate::ui::{Outcome, Ui};
use downlead_report::shape::card::{CardFile, SCHEMA};

pub(crate) fn run(args: &CardArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let (gathered, loaded) =
        match begin::<CardFile>(&args.shape, &args.inputs, args.format, false, ui)? {
            ControlFlow::Continue(all) => all,
            ControlFlow::Break(outcome) => return Ok(outcome),
        };
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
        let mut cards = cards(&downlead_report::build::chain::report(snapshot), &meters);
        if matches!(args.format, ReportFormat::Text | ReportFormat::Html) {
            cards.iter_mut().for_each(|c| c.file = group.shown(&c.file));
        }
        file.cards.extend(cards);
    }
    let forms = Forms {
        page: &page::card::page,
        csv: &sheet::card,
    };
    print(&file, args.format, &forms, ui)?;
    // a card is to be printed: what is wrong goes beside it
    beside(&loaded.findings, Severity::Error, ui);
    Ok(loaded.outcome.max(judged(&loaded.findings, false)))
}
