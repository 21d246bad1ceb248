//! Receive chains: the level needed at each point, and the noise figure of the system.

use downlead_physics::net::input::Stated;
use downlead_physics::net::noise::ZERO_C_K;
use downlead_physics::noise::T0_K;
use downlead_quantity::{to_db, w_to_dbm};
use downlead_station::model::Receiver;

use super::Derivation;
use super::cx::Cx;
use super::numbers::{NOTHING_DB, decibels, op, sum, term, value};
use crate::chain::{Ending, dbm_words};

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
        p.data.receiver()
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
        let Some(needed) = r.sensitivity() else {
            return noise.into_iter().collect();
        };
        let own = Derivation::of("level that the receiver needs", value(needed.value, "dBm"));
        let own = match r.criterion() {
            Some(c) => own.from(c.to_string()),
            None => own,
        };
        let d = Derivation::of("sensitivity at the antenna", value(level, "dBm"));
        let total = b.total_db.unwrap_or(f64::NAN);
        let elements = &self.kept().c.stretch.elements;
        let amplified = elements.iter().any(|e| e.loss_db < 0.0);
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
                    sum(&[needed.value, total]),
                )
                .with(own)
                .with(Derivation::of("total loss", decibels(total))),
        };
        let d = d.with_all(self.sensitivity_uncertainty(needed.u));
        std::iter::once(d).chain(noise).collect()
    }

    /// The uncertainty of the sensitivity; none where nothing is uncertain.
    fn sensitivity_uncertainty(&self, needed_u: f64) -> Option<Derivation> {
        let whole = self.band.sensitivity_u_db?;
        if whole < NOTHING_DB {
            return None;
        }
        let needed = 2.0 * needed_u;
        // what of it is not the receiver's
        let rest = libm::sqrt((whole * whole - needed * needed).max(0.0));
        Some(
            Derivation::of("uncertainty of the sensitivity (k = 2)", decibels(whole))
                .by(
                    "√(U² of the needed level + U² of what the chain adds)",
                    format!("√({}^2 + {}^2)", op(needed), op(rest)),
                )
                .with(Derivation::of("U of the needed level", decibels(needed)))
                .with(
                    Derivation::of("U of what the chain adds", decibels(rest))
                        .from("derivatives by each figure (JCGM 100:2008)"),
                ),
        )
    }

    /// The noise figure of the system, stage by stage.
    fn noise_figure(&self) -> Option<Derivation> {
        let b = self.band;
        let system = b.noise_figure_db?;
        let kept = self.kept();
        let chain = kept.c.noise.as_ref()?;
        let cx = self.context();
        let elements = &kept.c.stretch.elements;
        let mut terms = Vec::new();
        let mut steps = Vec::new();
        let mut lost_db = chain.reflected_db;
        for (i, (own, lost)) in chain.factors(&cx, &Stated).into_iter().enumerate() {
            let stage = chain.stages.get(i);
            let loss = stage.map_or(0.0, |s| s.part.matched_loss(&cx, &Stated));
            let name = match elements.get(i) {
                Some(e) => self.element_name(e),
                None => "the receiver".to_owned(),
            };
            let passive = stage.filter(|s| s.figure.is_none());
            if (own - 1.0).abs() > 1e-12 {
                terms.push(format!("{} × {}", op(own - 1.0), op(lost)));
                let f = match passive {
                    Some(s) => passive_factor(&name, own, loss, s.celsius.nominal() + ZERO_C_K),
                    None => active_factor(&name, own),
                };
                let before = Derivation::of("L of all before it", op(lost)).by(
                    "10^(net loss so far/10)",
                    format!("10^({}/10)", term(lost_db)),
                );
                steps.push(f.with(before));
            }
            lost_db += loss + stage.map_or(0.0, |s| s.reflected_db);
        }
        if terms.is_empty() {
            return None;
        }
        let d = Derivation::of("noise figure of the system", value(system, "dB"))
            .by(
                "10 log10(F), F = 1 + Σ (F of each stage - 1) × L, L: net loss of all before it as a ratio",
                format!("10 log10(1 + {})", terms.join(" + ")),
            )
            .from("Friis, Proc. IRE 1944")
            .with_all(steps);
        let u = b.noise_figure_u_db.filter(|u| *u >= NOTHING_DB);
        Some(d.with_all(u.map(|u| {
            Derivation::of("uncertainty of it (k = 2)", decibels(u))
                .from("derivatives by each figure (JCGM 100:2008)")
        })))
    }

    fn element_name(&self, e: &crate::element::Element<'_>) -> String {
        match e.part.and_then(|p| p.tag.as_ref()) {
            Some(t) => t.text.to_string(),
            None if e.kind.is_join() => format!("join {}", self.places.text(e.def)),
            None => e.kind.word().to_owned(),
        }
    }
}

/// `F − 1` of a passive loss at a temperature.
fn passive_factor(name: &str, own: f64, loss_db: f64, kelvin: f64) -> Derivation {
    let excess = own - 1.0;
    Derivation::of(format!("F - 1 of {name}"), value(excess, ""))
        .by(
            "(10^(loss/10) - 1) T/290 of a passive loss at T kelvin",
            format!("(10^({}/10) - 1) × {} / 290", term(loss_db), op(kelvin)),
        )
        .with(Derivation::of("matched loss", decibels(loss_db)))
        .with(Derivation::of("noise figure", value(to_db(own), "dB")).by(
            "10 log10(1 + (F - 1))",
            format!("10 log10(1 + {})", op(excess)),
        ))
        .with(temperature(excess))
}

/// `F − 1` of a stage whose noise figure is stated.
fn active_factor(name: &str, own: f64) -> Derivation {
    let excess = own - 1.0;
    Derivation::of(format!("F - 1 of {name}"), value(excess, ""))
        .by(
            "10^(noise figure/10) - 1",
            format!("10^({}/10) - 1", term(to_db(own))),
        )
        .with(Derivation::of("noise figure", value(to_db(own), "dB")))
        .with(temperature(excess))
}

/// A noise factor as a temperature.
fn temperature(excess: f64) -> Derivation {
    Derivation::of("noise temperature", value(T0_K * excess, "K"))
        .by("290 (F - 1)", format!("290 × {}", op(excess)))
}
