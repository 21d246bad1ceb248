//! What is radiated: ERP and EIRP of one antenna or of several.

use downlead_base::Loc;
use downlead_physics::net::Fields;
use downlead_physics::net::part::{Gain, Load};
use downlead_physics::net::record::{Recording, record};
use downlead_physics::net::scalar::Real;
use downlead_quantity::{DIPOLE_DBI, db, from_db, power, to_db};
use downlead_station::model::Meta;

use super::Derivation;
use super::cx::Cx;
use super::node::{NOT_KNOWN, watts_value};
use super::numbers::{NOTHING_DB, op, ratio_of_loss, share_value, sum, term, watts};
use super::rows::{Row, What};
use crate::result::NodeResult;

/// A mean that differs less from the product of means is that product, dB.
const MATTERS_DB: f64 = 1e-6;

/// An antenna as its field counts.
struct Source {
    name: String,
    /// Power that the gain multiplies, W.
    watts: f64,
    /// Gain, dBi.
    dbi: f64,
    /// Phase of its field against the first antenna's, degrees.
    degrees: f64,
    steps: Vec<Derivation>,
}

impl Source {
    /// Size of its field: the root of power times gain.
    fn field(&self) -> f64 {
        libm::sqrt(self.watts * from_db(self.dbi))
    }
}

impl Cx<'_> {
    /// ERP and EIRP of the antennas, at the row of one of them.
    pub(super) fn radiated(&self, i: usize) -> Derivation {
        let n = &self.band.nodes[i];
        let rows = self.rows();
        let name = self.name(n);
        let Some((eirp, erp)) = self.band.eirp_w.zip(self.band.erp_w()) else {
            return self.power_at(&rows, i, n);
        };
        let sources = self.sources(&rows);
        let together = match &sources[..] {
            [] => return self.power_at(&rows, i, n),
            [_] => name,
            more => {
                let names: Vec<&str> = more.iter().map(|s| &*s.name).collect();
                format!("{} together", names.join(", "))
            }
        };
        let d = Derivation::of(
            self.title(&format!("ERP of {together}")),
            format!(
                "{} ± {} (EIRP {})",
                power(erp),
                db(self.band.uncertainty_db),
                power(eirp)
            ),
        )
        .at(n.chain);
        self.erp(d, sources, eirp)
            .with_all(self.total_uncertainty())
    }

    /// ERP as what the line is about, for a limit on it: of EIRP where `dipole` is false.
    pub(super) fn radiated_value(&self, dipole: bool) -> Option<Derivation> {
        let (eirp, erp) = self.band.eirp_w.zip(self.band.erp_w())?;
        let sources = self.sources(&self.rows());
        if dipole {
            return Some(self.erp(Derivation::of("ERP", watts_value(erp)), sources, eirp));
        }
        Some(
            Derivation::of("EIRP", watts_value(eirp))
                .by(
                    "ERP × 10^(2.15/10)",
                    format!("{} × 10^(2.15/10)", watts(erp)),
                )
                .with(self.erp(Derivation::of("ERP", watts_value(erp)), sources, eirp)),
        )
    }

    /// ERP in a direction where the fields of all antennas add in phase.
    pub(super) fn erp_in_phase(&self, eirp: f64) -> Derivation {
        let sources = self.sources(&self.rows());
        let erp = downlead_physics::radiated::DipoleConvention::Itu215.erp(eirp);
        let d = Derivation::of("ERP in another direction", watts_value(erp));
        self.several(d, sources, eirp, Fields::InPhase)
    }

    /// `d`, which is the ERP, from what each antenna radiates.
    fn erp(&self, d: Derivation, mut sources: Vec<Source>, eirp: f64) -> Derivation {
        let fields = self.kept().c.net.fields;
        if let (Fields::Apart, 2..) = (fields, sources.len()) {
            // each radiates for itself, and the strongest counts
            sources.sort_by(|a, b| b.field().total_cmp(&a.field()));
            let others = sources.split_off(1);
            let d = self.single(d, sources, eirp);
            return d.with_all(others.into_iter().map(|s| {
                let w = s.watts * from_db(s.dbi - DIPOLE_DBI);
                Derivation::of(
                    format!("ERP of {}, weaker and for itself", s.name),
                    watts_value(w),
                )
                .by(
                    "P × 10^((G - 2.15)/10)",
                    format!("{} × {}", watts(s.watts), gain_ratio(&[s.dbi, -DIPOLE_DBI])),
                )
                .with_all(s.steps)
            }));
        }
        if sources.len() == 1 {
            return self.single(d, sources, eirp);
        }
        self.several(d, sources, eirp, fields)
    }

    fn single(&self, d: Derivation, sources: Vec<Source>, eirp: f64) -> Derivation {
        let Some(s) = sources.into_iter().next() else {
            return d;
        };
        let over = to_db(eirp / (s.watts * from_db(s.dbi)));
        let mut terms = vec![s.dbi, -DIPOLE_DBI];
        let mut formula = "ERP = P × 10^((G - 2.15)/10), EIRP = P × 10^(G/10)".to_owned();
        let mut steps = s.steps;
        if over.abs() >= MATTERS_DB {
            terms.push(over);
            formula = "ERP = P × 10^((G - 2.15 + M)/10), EIRP = P × 10^((G + M)/10), M: mean over the uncertainty less this product".to_owned();
            steps.push(self.mean_less_stated("M", to_db(eirp), to_db(s.watts) + s.dbi));
        }
        d.by(
            formula,
            format!("{} × {}", watts(s.watts), gain_ratio(&terms)),
        )
        .with_all(steps)
    }

    fn several(
        &self,
        d: Derivation,
        sources: Vec<Source>,
        eirp: f64,
        fields: Fields,
    ) -> Derivation {
        let turn = |s: &Source| s.degrees.to_radians();
        let (re, im) = sources.iter().fold((0.0, 0.0), |(re, im), s| {
            let (sin, cos) = libm::sincos(turn(s));
            (re + s.field() * cos, im + s.field() * sin)
        });
        let in_phase = fields == Fields::InPhase || sources.iter().all(|s| s.degrees == 0.0);
        let field = if in_phase {
            sources.iter().map(Source::field).sum()
        } else {
            libm::hypot(re, im)
        };
        let over = to_db(eirp / (field * field));
        let each: Vec<String> = sources.iter().map(|s| op(s.field())).collect();
        let (what, numbers) = if in_phase {
            (
                "(Σ √(P G))²".to_owned(),
                format!("({})^2", each.join(" + ")),
            )
        } else {
            let part = |f: &str| {
                let terms: Vec<String> = sources
                    .iter()
                    .zip(&each)
                    .map(|(s, e)| {
                        format!("{e} × {f}({}°)", downlead_quantity::number(s.degrees, 6))
                    })
                    .collect();
                format!("({})^2", terms.join(" + "))
            };
            (
                "((Σ √(P G) cos φ)² + (Σ √(P G) sin φ)²)".to_owned(),
                format!("({} + {})", part("cos"), part("sin")),
            )
        };
        let how = if in_phase {
            "fields add in phase in the main beam"
        } else {
            "fields add with the phase that the length of each feed gives them"
        };
        let mut terms = vec![-DIPOLE_DBI];
        let mut formula = format!("EIRP = {what}, ERP = EIRP × 10^(-2.15/10): {how}");
        let mut steps: Vec<Derivation> = Vec::new();
        for s in sources {
            let mut one = Derivation::of(format!("√(P G) of {}", s.name), op(s.field())).by(
                "√(P × 10^(G/10))",
                format!("√({} × {})", watts(s.watts), gain_ratio(&[s.dbi])),
            );
            if !in_phase {
                one.steps.push(
                    Derivation::of(
                        format!("phase φ of {} against the first", s.name),
                        format!("{}°", downlead_quantity::number(s.degrees, 6)),
                    )
                    .from("electrical length of its feed and the reflections on it"),
                );
            }
            steps.push(one.with_all(s.steps));
        }
        if over.abs() >= MATTERS_DB {
            terms.push(over);
            formula = format!(
                "EIRP = {what} × 10^(M/10), ERP = EIRP × 10^(-2.15/10): {how}; M: mean over the uncertainty less this sum"
            );
            steps.push(self.mean_less_stated("M", to_db(eirp), to_db(field * field)));
        }
        d.by(formula, format!("{numbers} × {}", gain_ratio(&terms)))
            .with_all(steps)
    }

    /// The antennas of the chain that radiate.
    fn sources(&self, rows: &[Row<'_>]) -> Vec<Source> {
        let kept = self.kept();
        let mut out = Vec::new();
        let mut first = None;
        for (k, row) in rows.iter().enumerate() {
            let What::End {
                load,
                gain: Some(gain),
                end,
            } = row.what
            else {
                continue;
            };
            let n = &self.band.nodes[k];
            let watts = if gain.realized {
                n.forward_w
            } else {
                n.power_w
            };
            let phasor = kept.stated.ends.get(end).map(|e| e.phasor);
            let degrees = phasor.map_or(0.0, |p| libm::atan2(p.im, p.re).to_degrees());
            let zero = *first.get_or_insert(degrees);
            let (dbi, of_gain) = self.gain(gain, n.def);
            let mut steps = vec![self.arrives(n, gain.realized)];
            steps.extend(self.end_reflection(load, n));
            steps.push(of_gain);
            out.push(Source {
                name: self.end_name(n),
                watts,
                dbi,
                degrees: turn_within(degrees - zero),
                steps,
            });
        }
        out
    }

    /// The gain with the source that states it.
    fn gain(&self, gain: &Gain, def: Loc) -> (f64, Derivation) {
        let (v, steps) = record(|| gain.decibels(&Recording).step("gain, dBi"));
        let mut d = self
            .taped(&steps, None)
            .unwrap_or_else(|| Derivation::of("gain", super::numbers::value(v.value(), "dBi")));
        if d.place.is_none() && d.formula.is_empty() {
            d.place = Some(def);
        }
        if gain.realized {
            d.title.push_str(", with the mismatch counted");
        }
        (v.value(), d)
    }

    /// The power that arrives at an antenna or load.
    fn arrives(&self, n: &NodeResult, forward: bool) -> Derivation {
        let name = self.end_name(n);
        if forward {
            return Derivation::of(format!("forward power at {name}"), watts_value(n.forward_w))
                .from("its gain counts the mismatch: the forward power is multiplied");
        }
        let d = Derivation::of(format!("power at {name}"), watts_value(n.power_w)).at(n.chain);
        let Some(from) = self.band.nodes.first().filter(|s| s.forward_w.is_finite()) else {
            return d;
        };
        if n.cumulative_db.abs() < NOTHING_DB {
            return d.by(
                "P = transmitter power, nothing is lost",
                watts(from.forward_w),
            );
        }
        d.by(
            "P = transmitter power × 10^(-loss so far/10)",
            format!(
                "{} × {}",
                watts(from.forward_w),
                ratio_of_loss(n.cumulative_db)
            ),
        )
        .from(format!(
            "{} less {} so far",
            self.name(from),
            db(n.cumulative_db)
        ))
    }

    /// Power at an antenna of which no gain is known, or at a load.
    fn power_at(&self, rows: &[Row<'_>], i: usize, n: &NodeResult) -> Derivation {
        let name = self.name(n);
        if !(n.power_known && n.power_w.is_finite()) {
            return Derivation::of(self.title(&format!("power at {name}")), NOT_KNOWN).at(n.def);
        }
        let mut d = self.arrives(n, false);
        d.title = self.title(&format!("power at {name}"));
        d.value = format!("{} ± {}", power(n.power_w), db(n.uncertainty_db));
        let Some(row) = rows.get(i) else { return d };
        if let What::End { load, .. } = row.what {
            d.steps.extend(self.end_reflection(load, n));
        }
        let budget = self.budget_of_net(row.at);
        d.with_all(self.uncertainty("uncertainty of this power", n.uncertainty_db, &budget))
    }

    /// What comes back from an end.
    pub(super) fn end_reflection(&self, load: &Load, n: &NodeResult) -> Option<Derivation> {
        let (back, steps) = record(|| {
            let (g, _) = load.reflection(&Recording);
            g.norm().step("reflected share")
        });
        let back = back.value();
        if back <= 0.0 {
            return None;
        }
        let name = self.end_name(n);
        let title = format!("reflected share at {name}");
        let mut d = self.taped(&steps, None).unwrap_or_else(|| {
            let part = self.parts.get(&n.def).copied();
            let words = part.and_then(|p| Meta::words(&p.meta));
            Derivation::of("", share_value(back))
                .from(words.unwrap_or_else(|| "|Γ|² of the file".to_owned()))
        });
        d.title = title;
        Some(d)
    }
}

/// `10^(x/10)` of a sum of decibels.
fn gain_ratio(terms: &[f64]) -> String {
    match terms {
        [x] => format!("10^({}/10)", term(*x)),
        more => format!("10^(({})/10)", sum(more)),
    }
}

/// An angle between −180° and 180°; rounding of nothing is nothing.
fn turn_within(degrees: f64) -> f64 {
    let d = degrees - 360.0 * libm::round(degrees / 360.0);
    if d.abs() < 1e-9 { 0.0 } else { d }
}
