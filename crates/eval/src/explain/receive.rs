//! Receive chains: the level needed at each point, and the noise figure of the system.

use downlead_physics::noise::{Stage, T0_K};
use downlead_quantity::{from_db, w_to_dbm};
use downlead_station::model::{PartData, Receiver};

use super::Derivation;
use super::cx::Cx;
use super::numbers::{NOTHING_DB, decibels, difference, op, sum, term, value};
use crate::chain::{Ending, dbm_words, noise_stages};

impl Cx<'_> {
    /// The level needed at row `i` of a receive chain; its loss where no level is known.
    pub(super) fn level(&self, i: usize) -> Derivation {
        let n = &self.band.nodes[i];
        let name = self.name(n);
        let rows = self.rows();
        if !n.power_known || !n.power_w.is_finite() || n.power_w <= 0.0 {
            return self.loss_alone(i);
        }
        let at = |w: f64| value(w_to_dbm(w), "dBm");
        let here = if n.kind.is_end() { "at" } else { "after" };
        let d = Derivation::of(
            self.title(&format!("level needed {here} {name}")),
            dbm_words(n.power_w),
        )
        .at(n.chain);
        let prev = rows.get(i).and_then(|r| r.prev);
        let before = prev.and_then(|p| self.band.nodes.get(p));
        let level = before.map_or(self.band.sensitivity_dbm, |b| Some(w_to_dbm(b.power_w)));
        let Some(level) = level.filter(|l| l.is_finite()) else {
            return self.loss_alone(i);
        };
        let d = if n.loss_db.abs() < NOTHING_DB {
            d.by(
                "level before, nothing is lost",
                format!("{} dBm", sum(&[level])),
            )
        } else {
            let lost = self.shown_loss(&rows, i);
            d.by("level before - loss", sum(&[level, -lost]))
        };
        let d = match before {
            Some(b) => d.with(
                Derivation::of(
                    format!("level before {name}, after {}", self.name(b)),
                    at(b.power_w),
                )
                .at(b.chain),
            ),
            None => d.with_all(self.sensitivity()),
        };
        if n.loss_db.abs() < NOTHING_DB {
            return d;
        }
        d.with(self.loss(&rows, i, format!("loss of {name}")).1)
    }

    fn receiver(&self) -> Option<&Receiver> {
        let Ending::Receiver(p, _) = &self.kept().c.stretch.end else {
            return None;
        };
        match &p.data {
            PartData::Receiver(r) => Some(r),
            _ => None,
        }
    }

    /// The sensitivity at the antenna: what the receiver needs, and what the chain adds to it.
    pub(super) fn sensitivity(&self) -> Vec<Derivation> {
        let b = self.band;
        let noise = self.noise_figure();
        let Some(level) = b.sensitivity_dbm.filter(|l| l.is_finite()) else {
            return noise.into_iter().collect();
        };
        let Some(r) = self.receiver() else {
            return Vec::new();
        };
        let Some(needed) = r.sensitivity else {
            return noise.into_iter().collect();
        };
        let own = Derivation::of("level that the receiver needs", value(needed.value, "dBm"));
        let own = match &r.criterion {
            Some(c) => own.from(c.to_string()),
            None => own,
        };
        let d = Derivation::of("sensitivity at the antenna", value(level, "dBm"));
        let amplified = self
            .kept()
            .c
            .stretch
            .elements
            .iter()
            .any(|e| e.loss_db < 0.0);
        let d = match (amplified, r.noise_figure, b.noise_figure_db) {
            (true, Some(nf), Some(system)) => d
                .by(
                    "needed level + noise figure of the system - noise figure of the receiver: a part before the receiver amplifies, so the noise decides",
                    sum(&[needed.value, system, -nf.value]),
                )
                .with(own)
                .with(Derivation::of(
                    "noise figure of the receiver",
                    value(nf.value, "dB"),
                )),
            _ => d
                .by(
                    "needed level + loss: nothing before the receiver amplifies, so each dB lost is a dB more that the antenna must deliver",
                    sum(&[needed.value, b.total_db]),
                )
                .with(own)
                .with(Derivation::of("total loss", decibels(b.total_db))),
        };
        std::iter::once(d).chain(noise).collect()
    }

    /// The noise figure of the system, stage by stage.
    fn noise_figure(&self) -> Option<Derivation> {
        let b = self.band;
        let system = b.noise_figure_db?;
        let own = self.receiver()?.noise_figure?.value;
        let stretch = &self.kept().c.stretch;
        let matched: f64 = stretch.elements.iter().map(|e| e.loss_db).sum();
        let stages = noise_stages(stretch, b.total_db - matched, own);
        let mut terms = Vec::new();
        let mut steps = Vec::new();
        let mut gain_db = 0.0;
        for (i, s) in stages.iter().enumerate() {
            let excess = from_db(s.noise_figure_db) - 1.0;
            let gain = from_db(gain_db);
            gain_db += s.gain_db;
            if excess.abs() < 1e-12 {
                continue;
            }
            terms.push(if terms.is_empty() && (gain - 1.0).abs() < 1e-12 {
                op(excess)
            } else {
                format!("{} / {}", op(excess), op(gain))
            });
            // the first stage is what reflections cost, the last the receiver
            let element = i.checked_sub(1).and_then(|k| stretch.elements.get(k));
            let name = match (i, element) {
                (0, _) => "what reflections cost".to_owned(),
                (_, Some(e)) => self.element_name(e),
                _ => "the receiver".to_owned(),
            };
            let kelvin = element.map_or(T0_K, |e| e.celsius + 273.15);
            let active = match element {
                Some(e) => e.noise_figure.is_some(),
                None => i > 0,
            };
            let mut loss = Derivation::of("loss", decibels(-s.gain_db));
            if i == 0 {
                let parts = stretch.elements.iter().map(|e| -e.loss_db);
                let terms: Vec<f64> = std::iter::once(b.total_db).chain(parts).collect();
                loss = loss.by(
                    "total loss - matched losses of the parts",
                    difference(&terms),
                );
            }
            steps.push(stage(&name, s, kelvin, active, gain).with_first(loss, !active));
        }
        if terms.is_empty() {
            return None;
        }
        Some(
            Derivation::of("noise figure of the system", value(system, "dB"))
                .by(
                    "10 log10(F), F = 1 + (F1 - 1) + (F2 - 1)/G1 + (F3 - 1)/(G1 G2) + …",
                    format!("10 log10(1 + {})", terms.join(" + ")),
                )
                .from("Friis, Proc. IRE 1944")
                .with_all(steps),
        )
    }

    fn element_name(&self, e: &crate::element::Element<'_>) -> String {
        match e.part.and_then(|p| p.tag.as_ref()) {
            Some(t) => t.text.to_string(),
            None if e.kind.is_join() => format!("join {}", self.places.text(e.def)),
            None => e.kind.word().to_owned(),
        }
    }
}

/// A stage of the system: its noise figure, what that is as a temperature, and the gain before it.
fn stage(name: &str, s: &Stage, kelvin: f64, active: bool, gain_before: f64) -> Derivation {
    let excess = from_db(s.noise_figure_db) - 1.0;
    let mut factor = Derivation::of(format!("F - 1 of {name}"), value(excess, ""));
    let nf = Derivation::of("noise figure", value(s.noise_figure_db, "dB"));
    if active {
        factor = factor
            .by(
                "10^(NF/10) - 1",
                format!("10^({}/10) - 1", term(s.noise_figure_db)),
            )
            .with(nf);
    } else {
        factor = factor
            .by(
                "(L - 1) T/290 of a passive loss at T kelvin",
                format!("(10^({}/10) - 1) × {} / 290", term(-s.gain_db), op(kelvin)),
            )
            .with(nf.by(
                "10 log10(1 + (F - 1))",
                format!("10 log10(1 + {})", op(excess)),
            ));
    }
    factor = factor.with(
        Derivation::of("noise temperature", value(T0_K * excess, "K"))
            .by("290 (F - 1)", format!("290 × {}", op(excess))),
    );
    factor.with(Derivation::of(
        "gain of all before it, a ratio",
        value(gain_before, ""),
    ))
}
