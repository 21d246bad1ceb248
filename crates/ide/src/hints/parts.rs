//! At chains and their parts: loss, power and what is radiated.

use std::collections::BTreeMap;

use downlead_base::Loc;
use downlead_eval::result::{BandResult, ChainResult, NodeResult};
use downlead_quantity::{db, number, power, power_dbm};
use downlead_station::model::{Direction, PartKind};

use super::lines::{Hints, LONGEST, alike, chosen, ends, label, separator, width};
use crate::inlay::LabelPart;
use crate::view::{Place, View, indent, line_start};
use crate::words::{both, padded, plus_minus, two_places};

/// A piece of cable, and the bands it is used on with its loss there in dB.
type Uses<'r> = (&'r NodeResult, Vec<(&'r BandResult, f64)>);

impl Hints<'_, '_> {
    pub(super) fn head(&mut self, chain: &ChainResult, bands: &[&BandResult]) {
        if !self.c.hints.loss {
            return;
        }
        let Some(end) = self.end_of(chain.loc) else {
            return;
        };
        let known: Vec<(&BandResult, f64)> = bands
            .iter()
            .filter_map(|b| Some((*b, b.total_db?)))
            .collect();
        if known.is_empty() {
            self.begin(end, "").word(LOSS_NOT_KNOWN);
            return;
        }
        let many = chain.bands.len() > 1;
        let line = self.begin(end, "");
        line.word("loss ");
        for (i, (b, total)) in ends(&known).into_iter().enumerate() {
            line.word(separator(i, known.len()));
            line.push(format!("{}{}", label(b, many), db(total)), None, None);
        }
        if !self.explains(end) {
            return;
        }
        let line = self.at(end);
        for (b, total) in &known {
            let worst = b.worst_db.map_or_else(String::new, |w| {
                format!(", {} to {} over all phases", db(w[0]), db(w[1]))
            });
            line.tooltip.push(format!(
                "{}: loss {}{worst}",
                label(b, true).trim(),
                db(*total)
            ));
        }
    }

    pub(super) fn part(&mut self, chain: &ChainResult, bands: &[&BandResult], loc: Loc) {
        if !(self.c.hints.loss || self.c.hints.power || self.c.hints.radiated) {
            return;
        }
        let Some(end) = self.end_of(loc) else { return };
        let rows: Vec<(&BandResult, &NodeResult)> = bands
            .iter()
            .filter_map(|b| {
                Some((
                    *b,
                    b.nodes
                        .iter()
                        .find(|n| n.chain == loc && !n.kind.is_join())?,
                ))
            })
            .collect();
        let Some((_, first)) = rows.first() else {
            return;
        };
        let many = chain.bands.len() > 1;
        let receive = chain.direction == Direction::Receive;
        let target = self.view.place(first.def);
        let target = target.filter(|_| first.def != first.chain);
        let name = match self.shared.contains(&end) {
            true => name(self.view, first),
            false => String::new(),
        };
        let labelled = |b: &BandResult, parts: Vec<LabelPart>| (label(b, many), parts);
        let figures = |brief: bool| -> Vec<(String, Vec<LabelPart>)> {
            let cell = |(b, n): &(&BandResult, &NodeResult)| {
                labelled(b, self.figures(b, n, receive, target, brief))
            };
            rows.iter().map(cell).collect()
        };
        // beside other statements an antenna says what it radiates
        let whole = figures(!name.is_empty() && first.kind.is(PartKind::Antenna));
        let shown = match alike(&whole) {
            // one figure for all bands needs no band's name
            true => vec![(
                String::new(),
                whole.into_iter().next().unwrap_or_default().1,
            )],
            false => {
                let chosen = chosen(&rows, bands);
                let take = |all: Vec<(String, Vec<LabelPart>)>| {
                    let all = all.into_iter().enumerate();
                    all.filter(|(i, _)| chosen.contains(i)).map(|(_, c)| c)
                };
                let shown: Vec<_> = take(whole).collect();
                match width(&shown) > LONGEST {
                    true => take(figures(true)).collect(),
                    false => shown,
                }
            }
        };
        let line = self.begin(end, &name);
        for (i, (band, parts)) in shown.into_iter().enumerate() {
            line.word(separator(i, rows.len()));
            line.word(band);
            parts.into_iter().for_each(|p| line.put(p));
        }
        if !self.explains(end) {
            return;
        }
        let fits = self.can_pin(loc, end);
        let indent = indent(self.text, line_start(self.text, end));
        let line = self.at(end);
        for (b, n) in &rows {
            line.tooltip.push(row(b, n, receive));
            if !receive && fits && n.power_w > 0.0 && n.power_known && b.complete {
                // a frequency that is no band cannot be named behind `on`
                let named = !many || is_name(&b.band);
                if named && b.point.is_none() {
                    let on = if many {
                        format!(" on {}", b.band)
                    } else {
                        String::new()
                    };
                    line.pins.push(pin(indent, b, n, &on));
                }
            }
        }
    }

    /// What a part comes to on a band; `brief`: the one figure that counts most.
    fn figures(
        &self,
        b: &BandResult,
        n: &NodeResult,
        receive: bool,
        target: Option<Place>,
        brief: bool,
    ) -> Vec<LabelPart> {
        let kinds = self.c.hints;
        let Some(figures) = Figures::of(n, receive) else {
            return vec![LabelPart::word(LOSS_NOT_KNOWN)];
        };
        let radiated = self
            .radiated(b, n, receive, brief)
            .filter(|_| kinds.radiated);
        let mut out = Vec::new();
        if brief && radiated.is_some() {
            out.extend(radiated);
            return out;
        }
        let power = figures.power.filter(|_| kinds.power);
        let loss = figures
            .loss
            .filter(|_| kinds.loss && !(brief && power.is_some()));
        if let Some(loss) = loss {
            let so_far = self.tip(|| match n.power_known {
                true => format!("loss of this part; {} so far", db(n.cumulative_db)),
                false => "loss of this part; other parts could not be computed".to_owned(),
            });
            out.push(LabelPart {
                text: format!("{} dB", padded(&loss, 5)),
                tooltip: so_far,
                target,
            });
        }
        if let Some(value) = power {
            let between = if out.is_empty() { "" } else { " " };
            // a level of a receive chain is not there: it is what the receiver needs
            let text = match receive && n.kind.is_end() {
                true => format!("{between}needs {value}"),
                false => format!("{between}→ {}", padded(&value, 7)),
            };
            out.push(LabelPart {
                text,
                tooltip: self.tip(|| about_power(n, receive)),
                target: None,
            });
        }
        if let Some(mut radiated) = radiated {
            if !out.is_empty() {
                radiated.text.insert_str(0, ", ");
            }
            out.push(radiated);
        }
        out
    }

    /// What an antenna radiates; of a receiver the noise of the whole chain.
    fn radiated(
        &self,
        b: &BandResult,
        n: &NodeResult,
        receive: bool,
        brief: bool,
    ) -> Option<LabelPart> {
        if receive {
            let figure = b.noise_figure_db.filter(|_| n.kind.hears())?;
            let text = format!("system noise figure {}", db(figure));
            return (!brief).then(|| LabelPart::word(text));
        }
        if !n.kind.is(PartKind::Antenna) || !b.branches.is_empty() {
            return None;
        }
        let (erp, eirp) = (b.erp_w()?, b.eirp_w?);
        let rest = b.uncertainty_db.map(plus_minus).unwrap_or_default();
        let more = self.tip(|| {
            format!(
                "ERP {}, EIRP {}{rest}, gain {} dBi",
                both(erp),
                both(eirp),
                number(b.gain_dbi.unwrap_or(0.0), 2)
            )
        });
        Some(LabelPart {
            text: match brief {
                true => format!("ERP {}", power(erp)),
                false => format!("ERP {}, EIRP {}{rest}", power(erp), power(eirp)),
            },
            tooltip: more,
            target: None,
        })
    }

    /// Whether a statement may be put below a line: it has no block, and nothing pinned there yet.
    fn can_pin(&self, loc: Loc, end: u32) -> bool {
        let Some(p) = self.view.place(loc) else {
            return false;
        };
        let tail = self
            .text
            .get(p.span.end as usize..end as usize)
            .unwrap_or("{");
        let next = self.text.get(end as usize..).unwrap_or("").trim_start();
        !tail.contains(['{', ';', '}']) && !next.starts_with("expect ")
    }

    /// At the definition of a piece of cable in a station: its loss on the bands it is used on.
    pub(super) fn definitions(&mut self, chains: &[ChainResult]) {
        if !self.c.hints.loss {
            return;
        }
        // by part, in the order of the text: (band, loss)
        let mut rows: BTreeMap<(u32, u32), Uses<'_>> = BTreeMap::new();
        for b in chains.iter().flat_map(|c| c.bands.iter()) {
            if !self.c.shows(&b.band) {
                continue;
            }
            for n in &b.nodes {
                if n.kind.is_line() && n.def != n.chain && n.loss_known {
                    let key = (n.def.span.start, n.def.span.end);
                    let mine = &mut rows.entry(key).or_insert((n, Vec::new())).1;
                    // a pair's two frequencies are one band here
                    if !mine.iter().any(|r| r.0.place() == b.place()) {
                        mine.push((b, n.matched_db));
                    }
                }
            }
        }
        for (n, mine) in rows.into_values() {
            let Some(end) = self.end_of(n.def) else {
                continue;
            };
            let name = n.tag().map_or("", |t| self.view.text(t));
            let line = self.begin(end, name);
            for (i, (b, db)) in ends(&mine).into_iter().enumerate() {
                line.word(separator(i, mine.len()));
                line.word(format!(
                    "{}{} dB",
                    label(b, true),
                    padded(&two_places(db), 5)
                ));
            }
            if self.explains(end) {
                let line = self.at(end);
                for (b, loss) in mine {
                    line.tooltip
                        .push(format!("{}matched loss {}", label(b, true), db(loss)));
                }
            }
        }
    }
}

/// Said of a part whose own loss could not be had.
const LOSS_NOT_KNOWN: &str = "loss not known";

/// What a part of a chain comes to on a band.
struct Figures {
    /// Its loss in dB, if it is of interest.
    loss: Option<String>,
    /// The power behind it, or of a receiver's chain the level, if it is known.
    power: Option<String>,
}

impl Figures {
    /// None if its loss is not known.
    fn of(n: &NodeResult, receive: bool) -> Option<Figures> {
        let end = n.kind.is_end();
        // of an end the power is of more interest than what it loses by mismatch
        (n.loss_known || end).then(|| Figures {
            loss: (!end || n.loss_known && n.loss_db.abs() >= 0.005).then(|| two_places(n.loss_db)),
            power: match (n.power_known && n.power_w.is_finite(), receive) {
                (true, true) => Some(power_dbm(n.power_w)),
                (true, false) => Some(power(n.power_w)),
                (false, false) if n.forward_known => {
                    Some(format!("{} forward", power(n.forward_w)))
                }
                (false, _) => None,
            },
        })
    }
}

/// What the power beside a part is.
fn about_power(n: &NodeResult, receive: bool) -> String {
    match receive {
        true => "level here when the receiver just gets what it needs".to_owned(),
        false if !n.power_known => {
            "forward power after it; what comes back is not known".to_owned()
        }
        false => format!(
            "net power after it: {}{}",
            both(n.power_w),
            plus_minus(n.uncertainty_db)
        ),
    }
}

/// What a part comes to, with its name: `M1 0.69 dB → 18.1 W`; none if nothing can be said.
pub(crate) fn in_short(view: &View<'_>, n: &NodeResult, receive: bool) -> Option<String> {
    let name = name(view, n);
    let Some(f) = Figures::of(n, receive) else {
        return Some(format!("{name} {LOSS_NOT_KNOWN}"));
    };
    match (f.loss, f.power) {
        (None, None) => None,
        (Some(loss), None) => Some(format!("{name} {loss} dB")),
        (None, Some(power)) => Some(format!("{name} → {power}")),
        (Some(loss), Some(power)) => Some(format!("{name} {loss} dB → {power}")),
    }
}

/// What a part is called where several stand on a line.
fn name(view: &View<'_>, n: &NodeResult) -> String {
    let tag = n.tag().map_or(n.kind.word(), |t| view.text(t));
    match n.port() {
        Some(p) => format!("{tag}.{}", view.text(p)),
        None => tag.to_owned(),
    }
}

fn is_name(band: &str) -> bool {
    !band.contains(' ') && !band.ends_with("Hz")
}

/// A row of the tooltip.
fn row(b: &BandResult, n: &NodeResult, receive: bool) -> String {
    let band = label(b, true).trim().to_owned();
    let forward = match n.forward_known {
        true => format!(", then {} forward", both(n.forward_w)),
        false => String::new(),
    };
    if !n.loss_known {
        let whose = match n.kind.is_end() {
            true => "what is lost by mismatch",
            false => "its loss",
        };
        return format!("{band}: {whose} is not known{forward}");
    }
    if !n.power_known {
        return format!(
            "{band}: loss {}{forward}; other parts could not be computed",
            db(n.loss_db)
        );
    }
    let mut t = format!(
        "{band}: loss {}, {} so far",
        db(n.loss_db),
        db(n.cumulative_db)
    );
    if n.power_w.is_finite() {
        t.push_str(&format!(", then {}", both(n.power_w)));
    }
    t.push_str(&plus_minus(n.uncertainty_db));
    if let Some(swr) = n.swr.filter(|s| !receive && *s > 1.005) {
        t.push_str(&format!(", SWR {}", number(swr, 2)));
    }
    if n.kind.is(PartKind::Antenna)
        && let (Some(erp), Some(eirp)) = (b.erp_w(), b.eirp_w)
    {
        t.push_str(&format!(
            "; ERP {}, EIRP {}{}",
            both(erp),
            both(eirp),
            b.uncertainty_db.map(plus_minus).unwrap_or_default()
        ));
    }
    t
}

/// The assertion that holds what is shown.
fn pin(indent: &str, b: &BandResult, n: &NodeResult, on: &str) -> String {
    match b
        .erp_w()
        .filter(|_| n.kind.is(PartKind::Antenna) && b.branches.is_empty())
    {
        Some(erp) => format!("{indent}expect erp {}{on}", power(erp)),
        None => format!("{indent}expect {}{on}", power(n.power_w)),
    }
}
