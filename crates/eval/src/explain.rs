//! Derivations: every number of a line back to the lines and sources it came from, in steps
//! that a pocket calculator can follow.

use downlead_base::{ItemId, Loc, Span};
use downlead_quantity::{db, frequency, number, power};
use downlead_station::model::{
    CableLoss, ConnectorLoss, LineLength, Meaning, Part, PartData, PartKind, Station,
};
use downlead_station::{Env, keyword_of};
use downlead_syntax::Stmt;
use rustc_hash::FxHashMap;

use crate::build::{Places, parts_of, source};
use crate::chain::dbm_words;
use crate::point::{Point, pick};
use crate::result::{BandResult, ChainResult, NodeResult};
use crate::snapshot::Snapshot;

/// A number with the way it was come by.
#[derive(Clone, Debug, PartialEq)]
pub struct Derivation {
    /// What it is: `loss of M1 on talk-out-2m, 146.9137 MHz`.
    pub title: String,
    /// Its value in words.
    pub value: String,
    /// Formula in symbols.
    pub formula: String,
    /// Formula with the numbers put in.
    pub substituted: String,
    /// Source.
    pub source: Option<String>,
    /// Where it stands.
    pub place: Option<Loc>,
    /// Operands.
    pub steps: Vec<Derivation>,
}

impl Derivation {
    pub(crate) fn leaf(
        title: impl Into<String>,
        value: impl Into<String>,
        source: Option<String>,
        place: Option<Loc>,
    ) -> Self {
        Derivation {
            title: title.into(),
            value: value.into(),
            formula: String::new(),
            substituted: String::new(),
            source,
            place,
            steps: Vec::new(),
        }
    }

    pub(crate) fn by(mut self, formula: impl Into<String>, substituted: impl Into<String>) -> Self {
        self.formula = formula.into();
        self.substituted = substituted.into();
        self
    }

    pub(crate) fn with(mut self, step: Derivation) -> Self {
        self.steps.push(step);
        self
    }
}

/// End of each statement with a block, by the place of its head.
fn blocks_of(s: Stmt<'_>, out: &mut FxHashMap<Loc, Loc>) {
    if let Some(block) = s.block() {
        let end = s.span().end;
        out.insert(
            Loc::new(s.item_id(), s.head_span()),
            Loc::new(s.item_id(), Span::new(end, end)),
        );
        block.iter().for_each(|inner| blocks_of(inner, out));
    }
}

impl Snapshot {
    /// The item that alone has numbers on a line: the station or chain that stands there. None
    /// where a definition stands that others take.
    fn explained_by_one(&self, path: &str, line: u32) -> Option<ItemId> {
        let tree = &self.files.iter().find(|f| f.path == path)?.tree;
        let skipped = usize::try_from(line.checked_sub(1)?).ok()?;
        let text = tree.text();
        let offset = match skipped {
            0 => 0,
            n => text.match_indices('\n').nth(n - 1)?.0 + 1,
        };
        let placed = &tree.items()[tree.item_at(u32::try_from(offset).ok()?)?];
        matches!(keyword_of(&placed.item), Some("station" | "chain")).then_some(placed.item.id)
    }

    /// Derivations of the numbers on a line (from 1) of a file: of a part, all chains and bands
    /// it takes part in; of a chain's line, that chain; of a chain's head, its totals.
    #[must_use]
    pub fn explain_line(&self, path: &str, line: u32) -> Vec<Derivation> {
        let places = Places::new(self);
        let mut out = Vec::new();
        let only = self.explained_by_one(path, line);
        for scope in &self.scopes {
            for (item, low, result) in &scope.items {
                if let Some(s) = &result.session {
                    let on_line = |loc| {
                        let (file, _, at) = places.at(loc);
                        file == path && at == line
                    };
                    out.extend(s.cells_at(on_line).map(|c| s.derivation(c)));
                    if let Meaning::Session(text) = &low.meaning {
                        let here = text.lengths.iter().filter(|r| on_line(r.loc));
                        out.extend(here.filter_map(|r| s.length_derivation(r)));
                    }
                }
                if result.chains.is_empty() || only.is_some_and(|id| id != item.id) {
                    continue;
                }
                let parts = parts_of(&low.meaning);
                let mut blocks = FxHashMap::default();
                item.statements().for_each(|s| blocks_of(s, &mut blocks));
                let station = match &low.meaning {
                    Meaning::Station(s) => Some(&**s),
                    _ => None,
                };
                for c in &result.chains {
                    let (file, _, head) = places.at(c.loc);
                    let here = file == path;
                    for b in &c.bands {
                        let cx = Cx {
                            places: &places,
                            env: &scope.env,
                            station,
                            chain: c,
                            band: b,
                        };
                        if here && head == line {
                            out.push(cx.totals());
                        }
                        for (i, n) in b.nodes.iter().enumerate() {
                            let (def_file, _, def_line) = places.at(n.def);
                            let last = blocks.get(&n.def).map_or(def_line, |end| places.line(*end));
                            let on_part = def_file == path
                                && (def_line..=last).contains(&line)
                                && !n.kind.is_join();
                            let on_cable = cx.cable_line(parts.get(&n.def).copied(), path, line);
                            let on_chain =
                                here && places.line(n.chain) == line && !n.kind.is_join();
                            if on_cable {
                                let part = parts.get(&n.def).copied();
                                out.push(cx.loss(n, part, &cx.name(n), None));
                            } else if on_part || on_chain {
                                out.push(cx.node(i, n, parts.get(&n.def).copied()));
                            }
                        }
                        for l in &b.limits {
                            if here && places.line(l.loc) == line {
                                out.push(cx.limit(l));
                            }
                        }
                        for r in &b.readings {
                            if here && places.line(r.loc) == line {
                                out.push(cx.reading(r));
                            }
                        }
                    }
                }
            }
        }
        out
    }
}

struct Cx<'a> {
    places: &'a Places<'a>,
    env: &'a Env,
    station: Option<&'a Station>,
    chain: &'a ChainResult,
    band: &'a BandResult,
}

impl Cx<'_> {
    fn title(&self, what: &str) -> String {
        format!(
            "{what} on {}, {}",
            self.places.text(self.chain.name),
            frequency(self.band.hz)
        )
    }

    fn point(&self) -> Point {
        Point {
            band: self.band.band.clone(),
            part: self.band.point,
            hz: self.band.hz,
            named: self.env.band(&self.band.band).is_some(),
        }
    }

    /// Whether a line lies in the definition of the cable a part is made of.
    fn cable_line(&self, part: Option<&Part>, path: &str, line: u32) -> bool {
        let Some(PartData::Line(l)) = part.map(|p| &p.data) else {
            return false;
        };
        let Some(c) = l.cable.as_ref().and_then(|n| self.env.cable(&n.text)) else {
            return false;
        };
        let (file, _, first) = self.places.at(c.name.loc);
        if file != path {
            return false;
        }
        // the loss is the last of a cable's lines that matter here
        let last = self.places.line(c.loss_loc).max(first);
        (first..=last).contains(&line)
    }

    fn name(&self, n: &NodeResult) -> String {
        n.tag().map_or_else(
            || n.kind.word().to_owned(),
            |t| self.places.text(t).to_owned(),
        )
    }

    fn node(&self, i: usize, n: &NodeResult, part: Option<&Part>) -> Derivation {
        let name = self.name(n);
        let src = source(self.places, self.env, part, n, self.band);
        if n.kind.is(PartKind::Transmitter) {
            let d = Derivation::leaf(
                self.title(&format!("power of {name}")),
                format!("{} ({})", power(n.forward_w), dbm_words(n.forward_w)),
                src,
                Some(n.def),
            );
            return if n.loss_db > 5e-4 {
                d.with(
                    Derivation::leaf("mismatch at the transmitter", db(n.loss_db), None, None).by(
                        "ML = -10 log10(1 - |Γ|²), |Γ| = (SWR - 1)/(SWR + 1)",
                        format!("SWR {}", number(n.swr, 3)),
                    ),
                )
            } else {
                d
            };
        }
        if n.kind.is(PartKind::Antenna) {
            return self.radiated(n, &name, src);
        }
        if !n.loss_known {
            return Derivation::leaf(
                self.title(&format!("loss of {name}")),
                "not known, and so no power behind it",
                src,
                Some(n.def),
            );
        }
        let loss = self.loss(n, part, &name, src);
        if !n.power_known || !n.power_w.is_finite() {
            return loss;
        }
        let before = i.checked_sub(1).and_then(|k| self.band.nodes.get(k));
        let Some(before) = before.filter(|b| b.power_w.is_finite()) else {
            return loss;
        };
        let receive = self.chain.direction == downlead_station::model::Direction::Receive;
        if receive {
            return loss;
        }
        Derivation::leaf(
            self.title(&format!("power after {name}")),
            format!(
                "{} ({}) ± {}",
                power(n.power_w),
                dbm_words(n.power_w),
                db(n.uncertainty_db)
            ),
            None,
            Some(n.chain),
        )
        .by(
            "P = P before × 10^(-loss/10)",
            format!(
                "{} × 10^(-{}/10)",
                power(before.power_w),
                number(n.loss_db, 4)
            ),
        )
        .with(Derivation::leaf(
            format!("power before {name}"),
            power(before.power_w),
            Some(format!("after {}", self.name(before))),
            Some(before.chain),
        ))
        .with(loss)
    }

    fn loss(
        &self,
        n: &NodeResult,
        part: Option<&Part>,
        name: &str,
        src: Option<String>,
    ) -> Derivation {
        let title = self.title(&format!("loss of {name}"));
        let extra = n.loss_db - n.matched_db;
        let port = n.port().map(|p| self.places.text(p));
        let file = part.and_then(|p| crate::network::file_of(p, port, &self.point(), self.env));
        let matched = match part.map(|p| &p.data) {
            _ if file.is_some() => Derivation::leaf(
                title.clone(),
                db(n.matched_db),
                src,
                file.map(|f| f.path.loc),
            )
            .by(
                "loss = -20 log10 |S21| between ends of 50 ohm, S12 on receive",
                format!("the two-port of the file at {}", frequency(self.band.hz)),
            ),
            Some(PartData::Line(l)) if l.cable.is_some() => self.line(l, name, &title),
            Some(PartData::Connector(count, c)) => self.connector(*count, &c.text, &title, n),
            _ => Derivation::leaf(title.clone(), db(n.matched_db), src, Some(n.def))
                .by(n.basis.word(), String::new()),
        };
        if extra.abs() < 5e-5 {
            return matched;
        }
        Derivation::leaf(title, db(n.loss_db), None, Some(n.chain))
            .by(
                "loss = matched loss + what the standing wave adds or the mismatch takes",
                format!("{} + {}", number(n.matched_db, 4), number(extra, 4)),
            )
            .with(matched)
            .with(
                Derivation::leaf("difference by reflections", db(extra), None, None).by(
                    "exact power ratio of the line (complex Zc), or mean over unknown phases",
                    format!("SWR {} beyond it", number(n.swr, 3)),
                ),
            )
    }

    fn line(&self, l: &downlead_station::model::Line, name: &str, title: &str) -> Derivation {
        let Some(cable_name) = &l.cable else {
            return Derivation::leaf(title, "", None, None);
        };
        let Some(c) = self.env.cable(&cable_name.text) else {
            return Derivation::leaf(title, "", None, None);
        };
        let place = l
            .place
            .as_ref()
            .and_then(|p| self.station?.places.iter().find(|q| q.name.text == p.text))
            .and_then(|p| Some((p.temperature?, p.name.loc, p.name.text.clone())));
        let (t, t_src, t_loc) = match (l.temperature.as_deref().copied(), place) {
            (Some(t), _) => (t.value, "stated at the part".to_owned(), None),
            (None, Some((t, loc, n))) => (t.value, format!("place {n}"), Some(loc)),
            (None, None) => (20.0, "assumed: none is stated".to_owned(), None),
        };
        let Some(at) = crate::cable::at_in(c, self.band.hz, t, &self.env.attachments) else {
            return Derivation::leaf(title, "", None, None);
        };
        let length = match l.length {
            Some(LineLength::Metres(m)) => m.value,
            Some(LineLength::Wavelengths { length, at_hz }) => {
                let hz = at_hz.unwrap_or(self.band.hz);
                length.value * downlead_physics::line::wavelength(hz, at.velocity)
            }
            None => 0.0,
        };
        let per100 = at.loss() * 100.0;
        let mhz = self.band.hz / 1e6;
        let src = c
            .meta
            .words()
            .or_else(|| Some("no source is stated".to_owned()));
        let rate = Derivation::leaf(
            format!(
                "loss of {} at {}, {} °C",
                cable_name.text,
                frequency(self.band.hz),
                number(t, 1)
            ),
            format!("{} dB/100 m", number(per100, 4)),
            src,
            Some(c.loss_loc),
        );
        let rate = match at.two_term {
            _ if matches!(c.loss, Some(CableLoss::Network { .. })) => rate.by(
                "matched loss of the piece in the file, |Re θ| with cosh² θ = A D of its chain matrix, over its length; conductor part × F(T)",
                format!(
                    "conductor {} dB/100 m (F = {}), dielectric {} dB/100 m",
                    number(at.alpha_c * 100.0, 4),
                    number(at.temperature_factor, 5),
                    number(at.alpha_d * 100.0, 4)
                ),
            ),
            Some((k1, k2)) => rate
                .by(
                    "a = k1 √f × F(T) + k2 f, f in MHz, F = √((1 + 0.00393 (T - 20)) / (1 + 0.00393 (T0 - 20)))",
                    format!(
                        "{} × √{} × {} + {} × {}",
                        number(k1 * 100.0, 6),
                        number(mhz, 6),
                        number(at.temperature_factor, 5),
                        number(k2 * 100.0, 7),
                        number(mhz, 6)
                    ),
                ),
            None => rate.by(
                "between the neighbouring rows of the table by a = k1 √f + k2 f, conductor part × F(T)",
                format!(
                    "conductor {} dB/100 m (F = {}), dielectric {} dB/100 m",
                    number(at.alpha_c * 100.0, 4),
                    number(at.temperature_factor, 5),
                    number(at.alpha_d * 100.0, 4)
                ),
            ),
        };
        let rate = rate.with(Derivation::leaf(
            "temperature",
            format!("{} °C", number(t, 1)),
            Some(t_src),
            t_loc,
        ));
        let matched = at.loss() * length;
        let added = pick(&l.added, &self.point(), self.env);
        let total = matched + added.as_ref().map_or(0.0, |a| a.value.value);
        let mut d = Derivation::leaf(title, db(total), None, None)
            .by(
                if added.is_some() {
                    "loss = a × length / 100 m + added loss"
                } else {
                    "loss = a × length / 100 m"
                },
                match &added {
                    Some(a) => format!(
                        "{} × {} / 100 + {}",
                        number(per100, 4),
                        number(length, 4),
                        number(a.value.value, 4)
                    ),
                    None => format!(
                        "{} × {} / 100 = {}",
                        number(per100, 4),
                        number(length, 4),
                        db(matched)
                    ),
                },
            )
            .with(rate)
            .with(Derivation::leaf(
                format!("length of {name}"),
                format!("{} m", number(length, 4)),
                None,
                Some(l.length_loc),
            ));
        if let Some(a) = added {
            d = d.with(Derivation::leaf(
                "added loss",
                db(a.value.value),
                a.figure.meta.words(),
                Some(a.figure.loc),
            ));
        }
        d
    }

    fn connector(&self, count: u32, name: &str, title: &str, n: &NodeResult) -> Derivation {
        let Some(c) = self.env.connector(name) else {
            return Derivation::leaf(title, "", None, None);
        };
        let ghz = self.band.hz / 1e9;
        let d = Derivation::leaf(title, db(n.matched_db), c.meta.words(), Some(c.name.loc));
        match c.loss {
            Some(ConnectorLoss::Root(k)) => d.by(
                "loss = pairs × k √f, f in GHz",
                format!("{count} × {} × √{}", number(k.value, 4), number(ghz, 6)),
            ),
            Some(ConnectorLoss::Constant(l)) => d.by(
                "loss = pairs × loss of one",
                format!("{count} × {}", number(l.value, 4)),
            ),
            None => d.by(
                "reflection of a short line of another impedance",
                format!("{count} pairs"),
            ),
        }
    }

    fn radiated(&self, n: &NodeResult, name: &str, src: Option<String>) -> Derivation {
        let b = self.band;
        let Some((eirp, erp)) = b.eirp_w.zip(b.erp_w()) else {
            return Derivation::leaf(
                self.title(&format!("power at {name}")),
                format!("{} ± {}", power(n.power_w), db(n.uncertainty_db)),
                src,
                Some(n.chain),
            );
        };
        let gain = b.gain_dbi.unwrap_or(0.0);
        Derivation::leaf(
            self.title(&format!("ERP of {name}")),
            format!(
                "{} ± {} (EIRP {})",
                power(erp),
                db(b.uncertainty_db),
                power(eirp)
            ),
            None,
            Some(n.chain),
        )
        .by(
            "ERP = P × 10^((G - 2.15)/10), EIRP = P × 10^(G/10)",
            format!(
                "{} × 10^(({} - 2.15)/10)",
                power(n.power_w),
                number(gain, 3)
            ),
        )
        .with(Derivation::leaf(
            format!("power at {name}"),
            power(n.power_w),
            Some(format!("{} less {}", "transmitter power", db(b.total_db))),
            None,
        ))
        .with(Derivation::leaf(
            "gain",
            format!("{} dBi", number(gain, 3)),
            src,
            Some(n.def),
        ))
        .with(self.doubt())
    }

    fn doubt(&self) -> Derivation {
        let terms: Vec<String> = self
            .band
            .budget
            .iter()
            .map(|t| format!("{}²", number(t.standard_db, 4)))
            .collect();
        Derivation::leaf(
            "doubt (k = 2)",
            db(self.band.uncertainty_db),
            Some("GUM, JCGM 100:2008, 5.1.2 and 5.2.2".to_owned()),
            None,
        )
        .by(
            "U = 2 √(Σ u²); what has one cause is added before it is squared",
            format!("2 × √({})", terms.join(" + ")),
        )
    }

    fn totals(&self) -> Derivation {
        let b = self.band;
        let mut d = Derivation::leaf(
            self.title("total loss"),
            db(b.total_db),
            None,
            Some(self.chain.loc),
        )
        .by(
            "sum of the losses of net power",
            b.nodes
                .iter()
                .filter(|n| n.loss_db != 0.0)
                .map(|n| number(n.loss_db, 4))
                .collect::<Vec<_>>()
                .join(" + "),
        );
        for n in &b.nodes {
            if n.loss_db != 0.0 {
                d.steps.push(Derivation::leaf(
                    self.name(n),
                    db(n.loss_db),
                    None,
                    Some(n.chain),
                ));
            }
        }
        d.with(self.doubt())
    }

    fn limit(&self, l: &crate::result::LimitResult) -> Derivation {
        Derivation::leaf(
            self.title(&format!("margin to the {} limit", l.quantity.word())),
            format!(
                "{} ({})",
                db(l.margin_db),
                l.verdict.limit_word().replace('-', " ")
            ),
            None,
            Some(l.loc),
        )
        .by(
            "margin = 10 log10(limit / value); met only if the margin is larger than U",
            format!(
                "10 log10({} / {}) against U = {}",
                power(l.limit_w),
                power(l.value_w),
                db(l.uncertainty_db)
            ),
        )
        .with(self.doubt())
    }

    fn reading(&self, r: &crate::result::ReadingResult) -> Derivation {
        let (a, b) = if r.power.is_some() {
            (power(r.read), power(r.expected))
        } else {
            (number(r.read, 3), number(r.expected, 3))
        };
        Derivation::leaf(
            self.title("reading"),
            format!(
                "{} ({})",
                db(r.difference_db),
                r.verdict.reading_word().replace('-', " ")
            ),
            None,
            Some(r.loc),
        )
        .by(
            "difference = 10 log10(read / expected)",
            format!("10 log10({a} / {b}) against U = {}", db(r.uncertainty_db)),
        )
    }
}
