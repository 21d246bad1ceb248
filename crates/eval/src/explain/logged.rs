//! What comes out at a further port of a part, and the rows of a log.

use downlead_quantity::{db, number, power};
use downlead_station::model::Node;

use super::Derivation;
use super::cx::Cx;
use super::node::watts_value;
use super::numbers::{NOTHING_DB, decibels, op, ratio_of_loss, share, share_value, value, watts};
use super::totals::items;
use crate::cause::Cause;
use crate::certificate;
use crate::chain::{NodeState, dbm_words};
use crate::result::{
    BudgetItem, CauseKind, CauseName, LogResult, LogRow, Logged, NodeResult, TapResult,
};
use crate::verdict::{SMALLEST_FAULT_DB, scatter_db};

impl Cx<'_> {
    /// What else comes out at the part of row `i`: a coupler's side arm, a leg that rejects it.
    pub(super) fn taps_at(&self, n: &NodeResult) -> Vec<Derivation> {
        let here = |t: &&TapResult| t.chain == n.chain && Some(t.part) == n.tag().or(Some(n.def));
        self.band
            .taps
            .iter()
            .filter(here)
            .map(|t| self.tap(n, t))
            .collect()
    }

    fn tap(&self, n: &NodeResult, t: &TapResult) -> Derivation {
        let name = self.name(n);
        let made = t.made;
        let whole = ratio_of_loss(made.less.0);
        let forward = watts(made.forward.0);
        let d = Derivation::of(
            self.title(&format!("power at {name}.{}", t.port)),
            format!(
                "{} ({}) ± {}",
                watts_value(t.power_w),
                dbm_words(t.power_w),
                db(t.uncertainty_db)
            ),
        )
        .at(n.chain);
        let back = made.back > 0.0;
        let d = match (made.reversed, back) {
            (true, _) => d.by(
                "forward power × reflected share × 10^(-coupling/10): the coupler is reversed",
                format!("{forward} × {} × {whole}", share(made.back)),
            ),
            (false, true) => d.by(
                "forward power × (1 + reflected share) × 10^(-rejection/10): mean over the phase of the reflection",
                format!("{forward} × (1 + {}) × {whole}", share(made.back)),
            ),
            (false, false) => d.by(
                "forward power × 10^(-rejection or coupling/10)",
                format!("{forward} × {whole}"),
            ),
        };
        let d = d
            .with(Derivation::of(
                "forward power on the line there",
                watts_value(made.forward.0),
            ))
            .with(Derivation::of(
                "rejection or coupling, as stated",
                decibels(made.less.0),
            ));
        let d = if back {
            d.with(Derivation::of("reflected share", share_value(made.back)))
        } else {
            d
        };
        if t.uncertainty_db < NOTHING_DB {
            return d;
        }
        let causes = [
            ("forward power", made.forward.1),
            ("rejection or coupling", made.less.1),
            ("phase or size of the reflection", made.waves_db),
        ];
        let causes: Vec<_> = causes.into_iter().filter(|c| c.1 > 0.0).collect();
        let squares: Vec<String> = causes.iter().map(|c| format!("{}^2", op(c.1))).collect();
        d.with(
            Derivation::of("uncertainty (k = 2)", decibels(t.uncertainty_db))
                .by("U = 2 √(Σ u²)", format!("2 × √({})", squares.join(" + ")))
                .with_all(
                    causes
                        .iter()
                        .map(|(what, u)| Derivation::of(*what, decibels(*u))),
                ),
        )
    }

    /// The rows of a log of each kind, against what the text lets expect at its place.
    pub(super) fn logged(&self, log: &LogResult) -> Vec<Derivation> {
        let Some((Node::Log { instrument, .. }, state)) = self.state(log.loc) else {
            return Vec::new();
        };
        let own = instrument.as_ref().map(|n| &*n.text);
        [Logged::Forward, Logged::Reflected, Logged::Swr]
            .into_iter()
            .filter_map(|what| {
                let rows: Vec<&LogRow> = log
                    .rows
                    .iter()
                    .filter(|r| r.what == what && r.older_than.is_none())
                    .collect();
                let expected = rows.first()?.expected?;
                let d = Derivation::of(
                    self.title(&format!("rows of the log: {}", what.word())),
                    match rows.len() {
                        1 => "1 row".to_owned(),
                        n => format!("{n} rows"),
                    },
                )
                .at(log.loc)
                .with(self.expected_by_log(what, expected, state));
                Some(match what {
                    Logged::Forward => d.with_all(rows.iter().map(|r| self.row(r, own, state))),
                    // no verdict rests on these; the trend does
                    Logged::Reflected => d.with_all(
                        rows.iter()
                            .map(|r| Derivation::of(row_title(r), watts_value(r.read))),
                    ),
                    Logged::Swr => d.with_all(
                        rows.iter()
                            .map(|r| Derivation::of(row_title(r), number(r.read, 4))),
                    ),
                })
            })
            .collect()
    }

    fn expected_by_log(&self, what: Logged, expected: f64, state: &NodeState<'_>) -> Derivation {
        match (what, state.forward_w, state.net_w) {
            (Logged::Reflected, Some(f), Some(n)) => Derivation::of(
                "reflected power expected",
                format!("{} ({})", watts_value(expected), power(expected)),
            )
            .by(
                "forward power - net power",
                format!("{} - {}", number(f, 10), number(n, 10)),
            )
            .with(self.forward(state)),
            (Logged::Swr, ..) => Derivation::of("SWR expected", value(expected, ""))
                .from("reflections of the parts after the place"),
            _ => self.forward(state),
        }
    }

    /// A row of forward power.
    fn row(&self, r: &LogRow, own: Option<&str>, state: &NodeState<'_>) -> Derivation {
        let (Some(expected), Some(d_db), Some(u_db), Some(verdict)) =
            (r.expected, r.difference_db, r.uncertainty_db, r.verdict)
        else {
            return Derivation::of(row_title(r), format!("{}, not judged", power(r.read)));
        };
        let d = Derivation::of(
            row_title(r),
            format!(
                "{} ({})",
                decibels(d_db),
                verdict.reading_word().replace('-', " ")
            ),
        );
        let instrument = r.instrument.as_deref().or(own);
        let instrument = instrument.and_then(|n| self.env.instrument(n));
        let date = Some(&*r.date).filter(|d| !d.is_empty());
        let (factor, u_read) = instrument.map_or((1.0, 0.0), |i| {
            certificate::read(i, self.env, date, (self.band.hz, r.read))
        });
        let d = super::judged::against(d, (r.read, factor), expected);
        let mut budget = state.forward.clone();
        if let Some(i) = instrument {
            budget.add(Cause::Instrument(&i.name.text), -u_read);
        }
        let mut causes = items(&budget);
        let scatter = scatter_db(instrument, state);
        if let (true, Some(i)) = (scatter > 0.0, instrument) {
            causes.push(BudgetItem {
                cause: CauseKind::Instrument,
                name: CauseName::Named(format!("{}, straightness and scatter", i.name.text).into()),
                standard_db: scatter,
            });
        }
        let to_show = state.loss_db.unwrap_or(0.0).max(SMALLEST_FAULT_DB);
        d.with_all(self.uncertainty("uncertainty of the difference", u_db, &causes))
            .with(
                Derivation::of("verdict", verdict.reading_word().replace('-', " ")).by(
                    format!(
                        "differs beyond the uncertainty; cannot tell where that is more than {}, half of what the reading is to show",
                        db(0.5 * to_show)
                    ),
                    "",
                ),
            )
    }
}

/// `line 3, 2026-05-01`.
fn row_title(r: &LogRow) -> String {
    match &*r.date {
        "" => format!("line {}", r.line),
        date => format!("line {}, {date}", r.line),
    }
}
