//! At what is judged: limits, readings, logs, expectations and bench sessions.

use std::collections::BTreeMap;

use downlead_base::Loc;
use downlead_eval::bench::result::SessionResult;
use downlead_eval::result::{BandResult, ChainResult, LimitResult, ReadingResult, Verdict};
use downlead_quantity::{db, decibel_signed, number, power};
use downlead_report::words;
use downlead_station::model::{Direction, Expect, LimitQuantity, Meaning};
use downlead_station::session::Session;
use rustc_hash::{FxHashMap, FxHashSet};

use super::lines::{Hints, ends, label};
use crate::bench::{self, Shown};
use crate::words::{both, plus_minus, under_or_over};

impl Hints<'_, '_> {
    pub(super) fn limits(&mut self, bands: &[&BandResult]) {
        let mut seen = FxHashSet::default();
        let all: Vec<(&BandResult, &LimitResult)> = bands
            .iter()
            .flat_map(|b| b.limits.iter().map(move |l| (*b, l)))
            .collect();
        for (_, l) in &all {
            if !seen.insert(l.loc) {
                continue;
            }
            let rows: Vec<_> = all.iter().filter(|r| r.1.loc == l.loc).collect();
            let Some(end) = self.end_of(l.loc) else {
                continue;
            };
            self.begin(end, "");
            let judged = rows.iter().map(|(_, l)| (l.loc, l.verdict.into()));
            self.judged.extend(judged);
            // the worst one first: it decides
            let mut shown = rows.clone();
            shown.sort_by(|a, b| a.1.margin_db.total_cmp(&b.1.margin_db));
            let many = rows.len() > 1;
            let text = |b: &BandResult, l: &LimitResult| {
                let verdict = words::verdict::limit(l.verdict);
                let margin = under_or_over(l.margin_db);
                let uncertainty = plus_minus(l.uncertainty_db);
                format!("{}{verdict}: {margin}{uncertainty}", label(b, many))
            };
            for (i, (b, l)) in shown.iter().take(2).enumerate() {
                let value = self.tip(|| {
                    format!(
                        "{} is {}, the limit {}",
                        l.quantity.word().to_uppercase(),
                        both(l.value_w),
                        both(l.limit_w)
                    )
                });
                let line = self.at(end);
                if i > 0 {
                    line.word(", ");
                }
                line.push(text(b, l), value, None);
            }
            if !self.explains(end) {
                continue;
            }
            let line = self.at(end);
            for (b, l) in rows {
                let mut t = format!(
                    "{}: {} {} against {}: {}{}",
                    label(b, true).trim(),
                    l.quantity.word().to_uppercase(),
                    both(l.value_w),
                    power(l.limit_w),
                    under_or_over(l.margin_db),
                    plus_minus(l.uncertainty_db)
                );
                if let Some(w) = l.safe_w.filter(|_| l.verdict != Verdict::Yes) {
                    t.push_str(&format!(
                        "; met with its uncertainty at a transmitter power of {}",
                        power(w)
                    ));
                }
                line.tooltip.push(t);
            }
        }
    }

    pub(super) fn readings(&mut self, bands: &[&BandResult]) {
        let all: Vec<(&BandResult, &ReadingResult)> = bands
            .iter()
            .flat_map(|b| b.readings.iter().map(move |r| (*b, r)))
            .collect();
        let many = bands.len() > 1;
        let mut count: BTreeMap<u32, usize> = BTreeMap::new();
        for (b, r) in &all {
            let Some(end) = self.end_of(r.loc) else {
                continue;
            };
            self.judged.push((r.loc, r.verdict.into()));
            let nth = count.entry(end).or_default();
            *nth += 1;
            if *nth == 1 {
                self.begin(end, "");
            }
            let (word, note) = match r.verdict {
                Verdict::Yes => ("agrees", "the meter could have told a fault of 1 dB"),
                Verdict::No => ("differs", "further off than the uncertainty of both"),
                Verdict::CannotTell => (
                    "cannot tell",
                    "the uncertainty is too large for the meter to have told",
                ),
            };
            let show = |x: f64| {
                if r.power.is_some() {
                    power(x)
                } else {
                    format!("SWR {}", number(x, 2))
                }
            };
            if *nth <= 2 {
                let note = self.tip(|| note.to_owned());
                let line = self.at(end);
                if *nth > 1 {
                    line.word(", ");
                }
                line.push(
                    format!(
                        "{}{word}: expected {}, {}{}",
                        label(b, many),
                        show(r.expected),
                        decibel_signed(r.difference_db),
                        plus_minus(r.uncertainty_db)
                    ),
                    note,
                    None,
                );
            }
            if !self.explains(end) {
                continue;
            }
            self.at(end).tooltip.push(format!(
                "{}: read {}, expected {}: {}{}; {note}",
                label(b, true).trim(),
                show(r.read),
                show(r.expected),
                decibel_signed(r.difference_db),
                plus_minus(r.uncertainty_db)
            ));
        }
    }

    pub(super) fn expectations(
        &mut self,
        chain: &ChainResult,
        bands: &[&BandResult],
        meaning: &Meaning,
    ) {
        for (loc, expect) in meaning.expectations(chain.loc) {
            let Some(end) = self.end_of(loc) else {
                continue;
            };
            let many = bands.len() > 1;
            let rows: Vec<String> = bands
                .iter()
                .filter_map(|b| {
                    let n = b
                        .nodes
                        .iter()
                        .filter(|n| n.chain.span.start <= loc.span.start)
                        .max_by_key(|n| n.chain.span.start)?;
                    let value = match expect {
                        Expect::Power(..) | Expect::Loss(..) if !n.power_known => return None,
                        Expect::Power(..) => n.power_w.is_finite().then(|| power(n.power_w))?,
                        Expect::Loss(..) => db(n.cumulative_db),
                        Expect::Swr(..) => format!("SWR {}", number(n.swr?, 2)),
                        Expect::Radiated(LimitQuantity::Eirp, ..) => power(b.eirp_w?),
                        Expect::Radiated(..) => power(b.erp_w()?),
                    };
                    Some(format!("{}{value}", label(b, many)))
                })
                .collect();
            if rows.is_empty() || chain.direction == Direction::Receive {
                continue;
            }
            let line = self.begin(end, "");
            line.word("is ");
            line.word(
                ends(&rows.iter().collect::<Vec<_>>())
                    .into_iter()
                    .map(String::as_str)
                    .collect::<Vec<_>>()
                    .join(", "),
            );
            if self.explains(end) {
                self.at(end).tooltip.extend(rows);
            }
        }
    }

    /// What the readings and pieces of a bench session come to.
    pub(super) fn session(&mut self, s: &Session, r: &SessionResult) {
        let env = crate::view::env_of(self.view.s, self.doc);
        let shown = bench::of_session(self.view, self.c, s, r, env, &|loc| {
            self.end_of(loc).is_some()
        });
        self.put(shown);
    }

    /// Readings at the site that other files hold.
    pub(super) fn logs(&mut self, bands: &[&BandResult]) {
        let many = bands.len() > 1;
        let mut shown: Vec<Shown> = Vec::new();
        let mut count: FxHashMap<Loc, usize> = FxHashMap::default();
        for b in bands {
            for l in b.logs.iter().filter(|l| self.end_of(l.loc).is_some()) {
                let nth = count.entry(l.loc).or_default();
                *nth += 1;
                let mut x = bench::of_log(&label(b, many), b, l, self.c);
                // the others are in the tooltip
                if *nth > 2 {
                    x.parts.clear();
                }
                shown.push(x);
            }
        }
        self.put(shown);
    }

    fn put(&mut self, shown: Vec<Shown>) {
        for x in shown {
            if let Some(end) = self.end_of(x.loc) {
                self.judged.extend(x.status.map(|s| (x.loc, s)));
                let line = match x.parts.is_empty() {
                    true => self.at(end),
                    false => self.begin(end, ""),
                };
                line.parts.extend(x.parts);
                line.more |= x.tooltip.as_ref().is_some_and(String::is_empty);
                line.tooltip.extend(x.tooltip.filter(|t| !t.is_empty()));
            }
        }
    }
}
