//! The lenses above a session.

use downlead_eval::Places;
use downlead_eval::bench::result::SessionResult;
use downlead_quantity::number;
use downlead_report::build::bench::{contributions, counts};
use downlead_report::words::figure::counted;
use downlead_station::session::Session;

use crate::documents::{Lens, LensCommand};
use crate::view::View;

/// The lenses above a session: its verdicts, and what its uncertainty mostly comes from.
pub(crate) fn lenses(
    view: &View<'_>,
    places: &Places<'_>,
    file: usize,
    s: &Session,
    r: &SessionResult,
    out: &mut Vec<Lens>,
) {
    let Some(p) = view.place(s.name.loc) else {
        return;
    };
    let n = counts(r.cells.iter());
    if r.readings == 0 && r.lost == 0 {
        return;
    }
    let lost = match r.lost {
        0 => String::new(),
        n => format!("; {} not taken", counted(n, "row")),
    };
    out.push(Lens {
        span: p.span,
        title: match n.all() {
            0 => format!("{}{lost}", n.words()),
            all => format!("{}: {}{lost}", counted(all, "comparison"), n.words()),
        },
        command: LensCommand::Report {
            file,
            name: s.name.text.to_string(),
        },
    });
    // a cell that is furthest off explains the largest cause best
    let worst = r
        .cells
        .iter()
        .filter_map(|c| Some((c, c.comparison.as_ref()?.en.abs())))
        .max_by(|a, b| a.1.total_cmp(&b.1));
    if let (Some(first), Some((cell, _))) = (contributions(r).into_iter().next(), worst) {
        out.push(Lens {
            span: p.span,
            title: format!(
                "largest contribution: {}, {} % of the uncertainty of all",
                first.cause,
                number(100.0 * first.share, 0)
            ),
            command: LensCommand::Explain {
                file,
                line: places.line(cell.rows.first().copied().unwrap_or(r.loc)),
            },
        });
    }
}
