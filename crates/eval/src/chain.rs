//! One chain at one frequency: elements, cascade, power, doubt.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::cx as complex;
use downlead_physics::mismatch::{gamma_from_swr, mismatch_loss, reflection, swr_from_gamma};
use downlead_physics::network::SMatrix;
use downlead_physics::noise::{Stage, cascade_noise_figure};
use downlead_quantity::{db, dbm_to_w, from_db, number, to_db, w_to_dbm};
use downlead_station::Env;
use downlead_station::model::{
    Antenna, Basis, Branch, Chain, Direction, Instrument, Mode, Name, Node, Part, PartData,
    PartKind, Phasing, Station, Transmitter, When,
};
use num_complex::Complex64;

use crate::assume::{Assumed, Assumptions};
use crate::cascade::{Changes, End, Piece, R0, Solved, Way, solve};
use crate::cause::{Budget, Cause};
use crate::element::{Build, Element};
use crate::network;
use crate::point::{Point, band_matches, pick, pick_by};
use crate::result::{BandResult, BudgetItem, CauseName, NodeResult};
use crate::verdict;
use crate::walk::{Stop, walk};

/// What evaluating a chain needs.
pub(crate) struct Cx<'m> {
    pub(crate) station: Option<&'m Station>,
    pub(crate) chain: &'m Chain,
    pub(crate) env: &'m Env,
    pub(crate) direction: Direction,
}

/// A stretch of chain between a source and an end, or the branches of a divider.
pub(crate) struct Stretch<'m> {
    pub(crate) elements: Vec<Element<'m>>,
    pub(crate) pieces: Vec<Piece>,
    /// Statements behind element `n` (count of elements before them).
    pub(crate) statements: Vec<(usize, &'m Node, Loc)>,
    pub(crate) end: Ending<'m>,
    pub(crate) end_wave: End,
    pub(crate) complete: bool,
    /// The first element behind a statement that could not be understood.
    pub(crate) gap: Option<usize>,
    pub(crate) branches: Vec<(Box<str>, Stretch<'m>)>,
}

/// What a stretch ends in.
pub(crate) enum Ending<'m> {
    Nothing,
    Antenna(&'m Part, &'m Antenna, Loc),
    Receiver(&'m Part, Loc),
    Divider,
}

impl Stretch<'_> {
    /// Whether something before element `i`, or that element itself, has no loss that is known.
    fn unknown_to(&self, i: usize) -> bool {
        self.gap.is_some_and(|g| g <= i) || self.elements.iter().take(i + 1).any(|e| !e.complete)
    }
}

/// Builds the stretch that some stops describe.
fn stretch<'m>(
    cx: &Cx<'m>,
    b: &mut Build<'m, '_>,
    stops: &[Stop<'m>],
    out: &mut Vec<Diagnostic>,
    after_part: bool,
) -> Stretch<'m> {
    let mut s = Stretch {
        elements: Vec::new(),
        pieces: Vec::new(),
        statements: Vec::new(),
        end: Ending::Nothing,
        end_wave: End::Magnitude(0.0),
        complete: true,
        gap: None,
        branches: Vec::new(),
    };
    let joins = cx.station.and_then(|st| st.joins.as_ref());
    let outer = std::mem::take(&mut b.pieces);
    // whether the next part gets a default join in front
    let mut open = after_part;
    for stop in stops {
        match *stop {
            Stop::Gap => {
                s.complete = false;
                s.gap.get_or_insert(s.elements.len());
                open = false;
            }
            Stop::Node(n, loc) => s.statements.push((s.elements.len(), n, loc)),
            // only statements follow a divider's branches; a part there has a finding
            Stop::Part { .. } if matches!(s.end, Ending::Divider) => {}
            Stop::Part {
                part,
                port,
                loc,
                branches,
            } => {
                let connector = matches!(part.kind, PartKind::Connector | PartKind::Adapter);
                if open
                    && !connector
                    && let Some(name) = joins
                {
                    let e = b.join(name, loc, s.elements.len());
                    s.complete &= e.complete;
                    s.elements.push(e);
                }
                open = !connector;
                match part.kind {
                    PartKind::Transmitter => {}
                    PartKind::Antenna | PartKind::Load
                        if cx.direction == Direction::Transmit || part.kind == PartKind::Load =>
                    {
                        if let PartData::Antenna(a) = &part.data {
                            match antenna_wave(b, part, a, loc) {
                                Some(w) => s.end_wave = w,
                                None => {
                                    // what comes back is not known, and so no power is
                                    s.complete = false;
                                    s.gap.get_or_insert(s.elements.len());
                                }
                            }
                            s.end = Ending::Antenna(part, a, loc);
                        } else {
                            s.complete = false;
                        }
                    }
                    PartKind::Antenna => {}
                    PartKind::Receiver => s.end = Ending::Receiver(part, loc),
                    _ => {
                        let from = b.pieces.len();
                        let mut e = b.part(part, port, loc, s.elements.len());
                        network::turned(cx.direction, part.kind, &mut e, &mut b.pieces[from..]);
                        s.complete &= e.complete;
                        s.elements.push(e);
                    }
                }
                if !branches.is_empty() {
                    s.end = Ending::Divider;
                    let here = std::mem::take(&mut b.pieces);
                    for br in branches {
                        s.branches.push(branch(cx, b, part, br, out));
                    }
                    b.pieces = here;
                }
            }
        }
    }
    s.pieces = std::mem::replace(&mut b.pieces, outer);
    s
}

fn branch<'m>(
    cx: &Cx<'m>,
    b: &mut Build<'m, '_>,
    divider: &'m Part,
    br: &'m Branch,
    out: &mut Vec<Diagnostic>,
) -> (Box<str>, Stretch<'m>) {
    let stops = walk(&br.steps, cx.station, out);
    let s = stretch(cx, b, &stops, out, true);
    if matches!(s.end, Ending::Nothing) && s.complete {
        out.push(
            Diagnostic::new(
                &codes::CHAIN_WITHOUT_END,
                br.loc,
                format!("Branch `{}` ends in nothing.", br.name),
            )
            .at("an antenna or a load belongs at its end"),
        );
    }
    let tag = divider.tag.as_ref().map_or("divider", |t| &t.text);
    (format!("{tag}/{}", br.name).into(), s)
}

/// What comes back from an antenna or load; none if the file that says so does not tell.
fn antenna_wave<'m>(
    b: &mut Build<'m, '_>,
    part: &'m Part,
    a: &'m Antenna,
    chain: Loc,
) -> Option<End> {
    let who = part.tag.as_ref().map_or(part.loc, |t| t.loc);
    let of_band = a.impedance.iter().find(|z| match &z.resistance.when {
        When::Bands(n) => n.iter().any(|n| band_matches(&n.text, b.point, b.env)),
        _ => false,
    });
    let file = network::picked(&a.network, b.point, b.env)
        // what holds on this band comes before what holds on all
        .filter(|f| of_band.is_none() || f.figure.when != When::Always);
    if let Some(file) = file {
        let asked = network::Asked {
            file,
            chain,
            point: b.point,
        };
        let (g, phase_known) = network::one_port(&asked, part.kind, b.env, &mut b.diags)?;
        b.assumed.add(Assumed::FileExact, who);
        return Some(if phase_known {
            End::Known(g)
        } else {
            End::Magnitude(complex::abs(g))
        });
    }
    let best = of_band.or_else(|| {
        a.impedance
            .iter()
            .find(|z| z.resistance.when == When::Always)
    });
    if let Some(z) = best {
        return Some(End::Known(reflection(
            Complex64::new(z.resistance.value.value, z.reactance),
            Complex64::new(R0, 0.0),
        )));
    }
    if let Some(s) = pick(&a.swr, b.point, b.env) {
        return Some(End::Magnitude(gamma_from_swr(s.value.value)));
    }
    b.assumed.add(Assumed::AntennaMatched, who);
    Some(End::Magnitude(0.0))
}

/// Gain of an antenna at the point: dBi with doubt, whether it includes the mismatch, where.
pub(crate) struct GainAt {
    pub(crate) dbi: f64,
    pub(crate) u: f64,
    pub(crate) realized: bool,
    pub(crate) dipole: bool,
    pub(crate) loc: Loc,
    pub(crate) basis: Basis,
}

pub(crate) fn gain_at(a: &Antenna, point: &Point, env: &Env) -> Option<GainAt> {
    // gains are few; the choice rule is that of all figures
    let p = pick_by(&a.gain, |g| &g.figure, point, env)?;
    let g = a.gain.iter().find(|g| g.figure.loc == p.figure.loc)?;
    let mut dbi = p.value.value;
    if g.directivity {
        dbi += a.efficiency.map_or(0.0, |e| to_db(e.value));
    }
    Some(GainAt {
        dbi,
        u: p.value.u,
        realized: g.realized,
        dipole: g.dipole,
        loc: g.figure.loc,
        basis: g.figure.meta.basis,
    })
}

/// The mode as physics names it.
pub(crate) fn physics_mode(m: Mode) -> downlead_physics::power::Mode {
    use downlead_physics::power::Mode as P;
    match m {
        Mode::Fm => P::Fm,
        Mode::Data => P::Data,
        Mode::Cw => P::Cw,
        Mode::Ssb => P::Ssb,
        Mode::SsbProcessed => P::SsbProcessed,
        Mode::Am => P::Am,
    }
}

/// The transmitter at the point.
pub(crate) struct Feed<'m> {
    pub(crate) part: &'m Part,
    pub(crate) data: &'m Transmitter,
    pub(crate) loc: Loc,
    pub(crate) watts: f64,
    pub(crate) figure: &'m downlead_station::model::Figure,
    pub(crate) kind: Option<downlead_station::model::PowerKind>,
    pub(crate) instrument: Option<&'m Instrument>,
}

fn feed<'m>(
    stops: &[Stop<'m>],
    point: &Point,
    env: &'m Env,
    out: &mut Vec<Diagnostic>,
) -> Option<Feed<'m>> {
    let Stop::Part { part, loc, .. } = stops
        .iter()
        .find(|s| matches!(s, Stop::Part { part, .. } if part.kind == PartKind::Transmitter))?
    else {
        return None;
    };
    let PartData::Transmitter(t) = &part.data else {
        return None;
    };
    let chosen = pick_by(&t.power, |p| &p.0, point, env).map(|p| p.figure.loc);
    let Some((figure, kind)) = t.power.iter().find(|p| Some(p.0.loc) == chosen) else {
        out.push(
            Diagnostic::new(
                &codes::NO_FIGURE_FOR_BAND,
                part.tag.as_ref().map_or(part.loc, |t| t.loc),
                format!(
                    "The transmitter has no power for {} ({}).",
                    point.band,
                    downlead_quantity::frequency(point.hz)
                ),
            )
            .at("no power for this band")
            .also(*loc, "the chain that needs it"),
        );
        return None;
    };
    let instrument = figure.meta.instrument.as_ref().and_then(|n| {
        let i = env.instrument(&n.text);
        if i.is_none() {
            out.push(verdict::unknown_instrument(n, env));
        }
        i
    });
    Some(Feed {
        part,
        data: t,
        loc: *loc,
        watts: figure.value.value,
        figure,
        kind: *kind,
        instrument,
    })
}

/// Doubt of the transmitter's power.
fn feed_cause<'m>(f: &Feed<'m>, assumed: &mut Assumptions) -> (Cause<'m>, f64) {
    let who = f.part.tag.as_ref().map_or(f.part.loc, |t| t.loc);
    let own = f.figure.value.u;
    match (f.instrument, own > 0.0) {
        (Some(i), true) => (Cause::Instrument(&i.name.text), own),
        (Some(i), false) => (
            Cause::Instrument(&i.name.text),
            verdict::instrument_db(i, f.watts),
        ),
        (None, true) => (Cause::Power(f.figure.loc), own),
        (None, false) => {
            assumed.add(Assumed::PowerExact, who);
            (Cause::Power(f.figure.loc), 0.0)
        }
    }
}

/// State of one stretch once solved, for the statements at its nodes.
pub(crate) struct NodeState<'m> {
    /// Net and forward power, W.
    pub(crate) net_w: f64,
    pub(crate) forward_w: f64,
    /// Loss so far, dB.
    pub(crate) loss_db: f64,
    /// SWR looking on.
    pub(crate) swr: f64,
    /// By how much the reflection may be larger over phases not known.
    pub(crate) gamma_spread: f64,
    /// Matched loss between here and the end of the line, dB, one way.
    pub(crate) ahead_db: f64,
    /// Nodes before this one.
    pub(crate) nodes: usize,
    /// Budget of the power there.
    pub(crate) budget: Budget<'m>,
}

/// Evaluates the chain at a point.
pub(crate) fn evaluate<'m>(
    cx: &Cx<'m>,
    stops: &[Stop<'m>],
    point: &Point,
    out: &mut Vec<Diagnostic>,
) -> BandResult {
    let mut b = Build {
        station: cx.station,
        env: cx.env,
        point,
        pieces: Vec::new(),
        assumed: Assumptions::default(),
        diags: Vec::new(),
    };
    let s = stretch(cx, &mut b, stops, out, false);
    let no_connectors = cx.station.and_then(|st| st.joins.as_ref()).is_none()
        && !s.elements.iter().any(|e| e.connector.is_some());
    if no_connectors && !s.elements.is_empty() {
        b.assumed.add(Assumed::JoinsLossless, cx.chain.name.loc);
    }
    let mut r = Run {
        cx,
        point,
        nodes: Vec::new(),
        branches: Vec::new(),
        states: Vec::new(),
        assumed: std::mem::take(&mut b.assumed),
        diags: std::mem::take(&mut b.diags),
        phases: 0,
    };
    let result = match cx.direction {
        Direction::Transmit => r.transmit(&s, stops, out),
        Direction::Receive => r.receive(&s, stops),
    };
    out.append(&mut r.diags);
    result
}

pub(crate) struct Run<'m, 'c> {
    pub(crate) cx: &'c Cx<'m>,
    pub(crate) point: &'c Point,
    pub(crate) nodes: Vec<NodeResult>,
    pub(crate) branches: Vec<Box<str>>,
    pub(crate) states: Vec<(Loc, &'m Node, NodeState<'m>)>,
    pub(crate) assumed: Assumptions,
    pub(crate) diags: Vec<Diagnostic>,
    phases: u32,
}

/// What reached the antennas of a stretch.
pub(crate) struct Reached<'m> {
    pub(crate) antenna_w: Option<f64>,
    pub(crate) eirp_w: Option<f64>,
    pub(crate) budget: Budget<'m>,
    pub(crate) worst: [f64; 2],
    pub(crate) wet: f64,
    pub(crate) complete: bool,
    /// Whether a gain was written in dBd.
    pub(crate) dipole: bool,
}

impl<'m> Run<'m, '_> {
    fn transmit(
        &mut self,
        s: &Stretch<'m>,
        stops: &[Stop<'m>],
        out: &mut Vec<Diagnostic>,
    ) -> BandResult {
        let feed = feed(stops, self.point, self.cx.env, out);
        let mut budget = Budget::default();
        let watts = match &feed {
            Some(f) => {
                let (cause, u) = feed_cause(f, &mut self.assumed);
                budget.add(cause, -u);
                f.watts
            }
            None => f64::NAN,
        };
        let solved = solve(&s.pieces, s.end_wave);
        let tuner = s.pieces.iter().any(|p| p.way == Way::Tuner);
        if let Some(f) = &feed {
            if !tuner && solved.gamma_in_worst > 0.01 {
                self.assumed.add(
                    Assumed::SourceMatched,
                    f.part.tag.as_ref().map_or(f.part.loc, |t| t.loc),
                );
            }
            self.foldback(f, &solved);
            let ml = mismatch_loss(solved.gamma_in);
            let net = watts * from_db(-ml);
            self.nodes.push(NodeResult {
                def: f.part.loc,
                chain: f.loc,
                tag: f.part.tag.as_ref().map(|t| t.loc),
                port: None,
                kind: f.part.kind.word(),
                branch: 0,
                basis: f.figure.meta.basis,
                loss_known: true,
                power_known: true,
                loss_db: ml,
                matched_db: 0.0,
                cumulative_db: ml,
                power_w: net,
                forward_w: watts,
                uncertainty_db: budget.expanded(),
                swr: swr_from_gamma(solved.gamma_in),
                heat_w: 0.0,
            });
        }
        let reached = self.stretch(s, &solved, watts, 0.0, budget, 0, true);
        let total = match reached.antenna_w {
            Some(w) if w > 0.0 => to_db(watts / w),
            _ => self.nodes.last().map_or(0.0, |n| n.cumulative_db),
        };
        self.ratings(s, feed.as_ref());
        let mean_w = feed.as_ref().and_then(|f| self.mean(f, reached.antenna_w));
        let mut result = self.result(
            s,
            &solved,
            tuner,
            reached.complete && feed.is_some(),
            &reached,
            total,
        );
        result.mean_w = mean_w;
        verdict::judge(self, &mut result, feed.as_ref(), &reached);
        result.assumptions = std::mem::take(&mut self.assumed.list).into();
        if feed.is_none() {
            result.antenna_w = None;
            result.eirp_w = None;
        }
        result
    }

    fn foldback(&mut self, f: &Feed<'m>, solved: &Solved) {
        let swr = swr_from_gamma(solved.gamma_in);
        if let Some(limit) = f.data.foldback_swr.filter(|l| swr > *l) {
            self.diags.push(
                Diagnostic::new(
                    &codes::FOLDBACK,
                    f.loc,
                    format!(
                        "The transmitter sees an SWR of {} and turns itself down above {}; the powers here are those without.",
                        number(swr, 2),
                        number(limit, 2)
                    ),
                )
                .at(format!("{} on {}", number(swr, 2), self.point.band)),
            );
        }
    }

    fn mean(&mut self, f: &Feed<'m>, antenna_w: Option<f64>) -> Option<f64> {
        let who = f.part.tag.as_ref().map_or(f.part.loc, |t| t.loc);
        let factor = verdict::mean_factor(f)?;
        let keyed = f.data.keyed.unwrap_or_else(|| {
            self.assumed.add(Assumed::AlwaysKeyed, who);
            1.0
        });
        Some(antenna_w? * factor * keyed)
    }

    /// Follows the power through a stretch; `forward` W come in, `so_far` dB were lost before, and
    /// whether all of that is `known`.
    #[allow(clippy::too_many_arguments, reason = "the state at its beginning")]
    fn stretch(
        &mut self,
        s: &Stretch<'m>,
        solved: &Solved,
        forward: f64,
        so_far: f64,
        mut budget: Budget<'m>,
        branch: u16,
        mut known: bool,
    ) -> Reached<'m> {
        let source = forward * from_db(so_far);
        let mut net = forward * from_db(-mismatch_loss(solved.gamma_in));
        let mut cumulative = to_db(source / net);
        let mut statements = s.statements.iter().peekable();
        let mut piece = 0;
        let mut gamma = solved.gamma_in;
        let mut wet = 0.0;
        let sensitivity = sensitivities(s, solved, self.point.hz);
        for (i, e) in s.elements.iter().enumerate() {
            while let Some((_, n, loc)) = statements.next_if(|x| x.0 <= i) {
                self.state(
                    *loc,
                    n,
                    net,
                    gamma,
                    cumulative,
                    &budget,
                    solved,
                    ahead(s, i),
                );
            }
            let mut loss = 0.0;
            while piece < s.pieces.len() && s.pieces[piece].element == i {
                loss += solved.net_loss[piece];
                gamma = solved.gamma_after[piece];
                piece += 1;
            }
            let before = net;
            net *= from_db(-loss);
            cumulative += loss;
            wet += e.wet_db;
            for (c, u) in &e.causes {
                budget.add(c.clone(), u * sensitivity.as_ref().map_or(1.0, |x| x[i]));
            }
            let active = e.loss_db < 0.0;
            known &= e.complete && s.gap.is_none_or(|g| g > i);
            self.nodes.push(NodeResult {
                def: e.def,
                chain: e.chain,
                tag: e.part.and_then(|p| p.tag.as_ref()).map(|t| t.loc),
                port: e.port.map(|p| p.loc),
                kind: e.kind,
                branch,
                basis: e.basis,
                loss_known: e.complete,
                power_known: known,
                loss_db: loss,
                matched_db: e.loss_db,
                cumulative_db: cumulative,
                power_w: net,
                forward_w: forward_of(net, gamma),
                uncertainty_db: 2.0 * libm::hypot(budget.standard(), solved.sigma_db),
                swr: swr_from_gamma(gamma),
                heat_w: if active { 0.0 } else { (before - net).max(0.0) },
            });
        }
        if solved.sigma_db > 0.0 {
            budget.add(Cause::Phases(self.phases), solved.sigma_db);
            self.phases += 1;
        }
        let mut reached = Reached {
            antenna_w: None,
            eirp_w: None,
            budget,
            worst: [-solved.worst_low_db, solved.worst_high_db],
            wet,
            complete: s.complete,
            dipole: false,
        };
        // what is said in front of the antenna or behind it is about the power into it, which does
        // not depend on its gain
        let here = reached.budget.clone();
        for (_, n, loc) in statements {
            self.state(*loc, n, net, gamma, cumulative, &here, solved, 0.0);
        }
        match &s.end {
            Ending::Antenna(part, a, loc) => self.antenna(
                part,
                a,
                *loc,
                net,
                gamma,
                cumulative,
                branch,
                known && s.gap.is_none(),
                &mut reached,
            ),
            Ending::Divider => {
                self.divide(s, net, cumulative, known && s.gap.is_none(), &mut reached);
            }
            Ending::Receiver(..) | Ending::Nothing => {}
        }
        reached
    }

    #[allow(clippy::too_many_arguments, reason = "the state of one node")]
    fn state(
        &mut self,
        loc: Loc,
        n: &'m Node,
        net: f64,
        gamma: f64,
        cumulative: f64,
        budget: &Budget<'m>,
        solved: &Solved,
        ahead_db: f64,
    ) {
        let mut budget = budget.clone();
        if solved.sigma_db > 0.0
            && cumulative > 0.0
            && !budget.terms.iter().any(|t| matches!(t.0, Cause::Phases(_)))
        {
            budget.add(Cause::Phases(u32::MAX), solved.sigma_db);
        }
        let state = NodeState {
            net_w: net,
            forward_w: forward_of(net, gamma),
            loss_db: cumulative,
            swr: swr_from_gamma(gamma),
            gamma_spread: (solved.gamma_in_worst - solved.gamma_in).max(0.0),
            ahead_db,
            nodes: self.nodes.len(),
            budget,
        };
        self.states.push((loc, n, state));
    }

    #[allow(clippy::too_many_arguments, reason = "the state of the last node")]
    fn antenna(
        &mut self,
        part: &'m Part,
        a: &'m Antenna,
        loc: Loc,
        net: f64,
        gamma: f64,
        cumulative: f64,
        branch: u16,
        power_known: bool,
        reached: &mut Reached<'m>,
    ) {
        let who = part.tag.as_ref().map_or(part.loc, |t| t.loc);
        reached.antenna_w = Some(net);
        let mut basis = part.meta.basis;
        if part.kind == PartKind::Antenna {
            match gain_at(a, self.point, self.cx.env) {
                Some(g) => {
                    basis = g.basis;
                    reached.dipole = g.dipole;
                    if g.u == 0.0 {
                        self.assumed.add(Assumed::GainExact, who);
                    }
                    if a.gain.iter().any(|x| x.directivity) && a.efficiency.is_none() {
                        self.assumed.add(Assumed::EfficiencyIncluded, who);
                    }
                    reached.budget.add(Cause::Gain(g.loc), -g.u);
                    // a realized gain counts the mismatch already: it starts from the forward power
                    let from = if g.realized {
                        forward_of(net, gamma)
                    } else {
                        net
                    };
                    reached.eirp_w = Some(from * from_db(g.dbi));
                }
                None if !a.gain.is_empty() => {
                    reached.complete = false;
                    self.diags.push(
                        Diagnostic::new(
                            &codes::NO_FIGURE_FOR_BAND,
                            who,
                            format!(
                                "The antenna has no gain for {} ({}).",
                                self.point.band,
                                downlead_quantity::frequency(self.point.hz)
                            ),
                        )
                        .at("no gain for this band")
                        .also(loc, "the chain that needs it"),
                    );
                }
                None => {}
            }
        }
        self.nodes.push(NodeResult {
            def: part.loc,
            chain: loc,
            tag: part.tag.as_ref().map(|t| t.loc),
            port: None,
            kind: part.kind.word(),
            branch,
            basis,
            loss_known: true,
            power_known,
            loss_db: 0.0,
            matched_db: 0.0,
            cumulative_db: cumulative,
            power_w: net,
            forward_w: forward_of(net, gamma),
            uncertainty_db: reached.budget.expanded(),
            swr: swr_from_gamma(gamma),
            heat_w: if part.kind == PartKind::Load {
                net
            } else {
                0.0
            },
        });
    }

    fn divide(
        &mut self,
        s: &Stretch<'m>,
        net: f64,
        cumulative: f64,
        known: bool,
        reached: &mut Reached<'m>,
    ) {
        let phasing = self.cx.chain.phasing.unwrap_or_else(|| {
            if let Some(e) = s.elements.last() {
                self.assumed.add(Assumed::BranchesInPhase, e.who);
            }
            Phasing::InPhase
        });
        let base = reached.budget.clone();
        let mut arms = Vec::new();
        for (name, b) in &s.branches {
            self.branches.push(name.clone());
            let at = u16::try_from(self.branches.len()).unwrap_or(u16::MAX);
            let solved = solve(&b.pieces, b.end_wave);
            let arm = self.stretch(b, &solved, net, cumulative, base.clone(), at, known);
            reached.complete &= arm.complete;
            reached.dipole |= arm.dipole;
            reached.wet = reached.wet.max(arm.wet);
            reached.worst = [
                reached.worst[0] + solved.worst_low_db.min(0.0),
                reached.worst[1].max(arm.worst[1]),
            ];
            arms.push(arm);
        }
        let antennas: Vec<f64> = arms.iter().filter_map(|a| a.antenna_w).collect();
        if antennas.is_empty() {
            return;
        }
        reached.antenna_w = Some(antennas.iter().sum());
        let fields: Vec<f64> = arms
            .iter()
            .map(|a| a.eirp_w.map_or(0.0, libm::sqrt))
            .collect();
        let total: f64 = fields.iter().sum();
        if total > 0.0 {
            let mut budget = Budget::default();
            match phasing {
                Phasing::InPhase => {
                    // fields add: the relative weight of an arm is its share of the field
                    reached.eirp_w = Some(total * total);
                    for (arm, f) in arms.iter().zip(&fields) {
                        budget.add_scaled(&arm.budget, f / total);
                    }
                }
                Phasing::Apart => {
                    let best = fields
                        .iter()
                        .enumerate()
                        .max_by(|a, b| a.1.total_cmp(b.1))
                        .map_or(0, |x| x.0);
                    reached.eirp_w = Some(fields[best] * fields[best]);
                    budget = arms[best].budget.clone();
                }
            }
            reached.budget = budget;
        }
    }

    fn receive(&mut self, s: &Stretch<'m>, stops: &[Stop<'m>]) -> BandResult {
        let antenna = stops.iter().find_map(|x| match x {
            Stop::Part { part, loc, .. } if part.kind == PartKind::Antenna => match &part.data {
                PartData::Antenna(a) => Some((*part, &**a, *loc)),
                _ => None,
            },
            _ => None,
        });
        let mut b = Build {
            station: self.cx.station,
            env: self.cx.env,
            point: self.point,
            pieces: Vec::new(),
            assumed: std::mem::take(&mut self.assumed),
            diags: Vec::new(),
        };
        let wave = match antenna {
            Some((p, a, loc)) => antenna_wave(&mut b, p, a, loc),
            None => Some(End::Magnitude(0.0)),
        };
        self.assumed = std::mem::take(&mut b.assumed);
        self.diags.append(&mut b.diags);
        // what comes back from the antenna is part of every loss behind it
        let all_known = s.complete && wave.is_some();
        // the loss from antenna to receiver is found looking from the receiver; only what passes
        // on the way to it counts
        let reversed: Vec<Piece> = s
            .pieces
            .iter()
            .rev()
            .map(|p| Piece {
                s: SMatrix {
                    s11: p.s.s22,
                    s22: p.s.s11,
                    ..p.s
                },
                s11: p.s22,
                s22: p.s11,
                ..*p
            })
            .collect();
        let solved = solve(&reversed, wave.unwrap_or(End::Magnitude(0.0)));
        let matched: f64 = s.elements.iter().map(|e| e.loss_db).sum();
        let total = solved.net_loss.iter().sum::<f64>() + mismatch_loss(solved.gamma_in);
        let mut budget = Budget::default();
        let receiver = match &s.end {
            Ending::Receiver(p, loc) => match &p.data {
                PartData::Receiver(r) => Some((*p, &**r, *loc)),
                _ => None,
            },
            _ => None,
        };
        let needed = receiver
            .and_then(|(_, r, _)| r.sensitivity)
            .map(|m| m.value);
        let stages: Vec<Stage> = s
            .elements
            .iter()
            .map(|e| match e.noise_figure {
                Some(nf) => Stage {
                    gain_db: -e.loss_db,
                    noise_figure_db: nf,
                },
                None => Stage::passive(e.loss_db, e.celsius + 273.15),
            })
            .collect();
        let nf = receiver.and_then(|(_, r, _)| r.noise_figure).map(|nf| {
            let mut all = vec![Stage::passive((total - matched).max(0.0), 290.0)];
            all.extend(stages);
            all.push(Stage {
                gain_db: 0.0,
                noise_figure_db: nf,
            });
            (cascade_noise_figure(&all), nf)
        });
        let active = s.elements.iter().any(|e| e.loss_db < 0.0);
        // with a preamplifier the sensitivity follows the noise figure; without, the loss
        let sensitivity = match (needed, nf) {
            (Some(n), Some((system, own))) if active => Some(n + system - own),
            (Some(n), _) if !active => Some(n + total),
            _ => None,
        };
        let mut cumulative = total - matched;
        let level = |lost: f64| sensitivity.map_or(f64::NAN, |l| dbm_to_w(l - lost));
        let push = |this: &mut Self,
                    part: Option<&'m Part>,
                    e: Option<&Element<'m>>,
                    chain: Loc,
                    loss: f64,
                    cum: f64,
                    u: f64,
                    unknown: bool| {
            let def = e.map(|e| e.def).or(part.map(|p| p.loc)).unwrap_or(chain);
            this.nodes.push(NodeResult {
                def,
                chain,
                tag: part.and_then(|p| p.tag.as_ref()).map(|t| t.loc),
                port: e.and_then(|e| e.port).map(|p| p.loc),
                kind: e.map_or_else(|| part.map_or("join", |p| p.kind.word()), |e| e.kind),
                branch: 0,
                basis: e.map_or(Basis::Stated, |e| e.basis),
                loss_known: e.is_none_or(|e| e.complete),
                power_known: !unknown,
                loss_db: loss,
                matched_db: e.map_or(0.0, |e| e.loss_db),
                cumulative_db: cum,
                power_w: level(cum),
                forward_w: level(cum),
                uncertainty_db: u,
                swr: 1.0,
                heat_w: 0.0,
            });
        };
        if let Some((p, _, loc)) = antenna {
            push(
                self,
                Some(p),
                None,
                loc,
                cumulative,
                cumulative,
                0.0,
                !all_known,
            );
        }
        let mut wet = 0.0;
        let mut statements = s.statements.iter().peekable();
        for (i, e) in s.elements.iter().enumerate() {
            while let Some((_, n, loc)) = statements.next_if(|x| x.0 <= i) {
                verdict::receive_statement(self, *loc, n, cumulative, all_known);
            }
            cumulative += e.loss_db;
            wet += e.wet_db;
            for (c, u) in &e.causes {
                budget.add(c.clone(), *u);
            }
            let u = 2.0 * libm::hypot(budget.standard(), solved.sigma_db);
            // the level is the one at the antenna less what was lost: all losses enter it
            let unknown = if sensitivity.is_some() {
                !all_known
            } else {
                wave.is_none() || s.unknown_to(i)
            };
            push(
                self,
                e.part,
                Some(e),
                e.chain,
                e.loss_db,
                cumulative,
                u,
                unknown,
            );
        }
        for (_, n, loc) in statements {
            verdict::receive_statement(self, *loc, n, cumulative, all_known);
        }
        if solved.sigma_db > 0.0 {
            budget.add(Cause::Phases(0), solved.sigma_db);
        }
        if let Some((p, _, loc)) = receiver {
            push(
                self,
                Some(p),
                None,
                loc,
                0.0,
                cumulative,
                budget.expanded(),
                !all_known,
            );
        }
        let complete = all_known && antenna.is_some() && receiver.is_some();
        let reached = Reached {
            antenna_w: None,
            eirp_w: None,
            budget,
            worst: [-solved.worst_low_db, solved.worst_high_db],
            wet,
            complete,
            dipole: false,
        };
        let mut result = self.result(s, &solved, false, complete, &reached, total);
        result.sensitivity_dbm = sensitivity;
        result.noise_figure_db = nf.map(|n| n.0);
        result.swr = 1.0;
        result.swr_worst = None;
        result.assumptions = std::mem::take(&mut self.assumed.list).into();
        result
    }

    fn result(
        &mut self,
        _s: &Stretch<'m>,
        solved: &Solved,
        tuner: bool,
        complete: bool,
        reached: &Reached<'m>,
        total: f64,
    ) -> BandResult {
        let mut budget: Vec<BudgetItem> = reached
            .budget
            .terms
            .iter()
            .map(|(c, v)| item(c, v.abs()))
            .collect();
        budget.sort_by(|a, b| b.standard_db.total_cmp(&a.standard_db));
        let worst = (reached.worst[1] - reached.worst[0] > 5e-4)
            .then(|| [total + reached.worst[0], total + reached.worst[1]]);
        let (swr, swr_worst) = if tuner && solved.gamma_in == 0.0 {
            (1.0, None)
        } else {
            let w = swr_from_gamma(solved.gamma_in_worst);
            let n = swr_from_gamma(solved.gamma_in);
            (n, (w > n * 1.001).then_some(w))
        };
        BandResult {
            band: self.point.band.clone(),
            point: self.point.part,
            hz: self.point.hz,
            complete,
            tuner,
            nodes: std::mem::take(&mut self.nodes).into(),
            branches: std::mem::take(&mut self.branches).into(),
            total_db: total,
            antenna_w: reached.antenna_w.filter(|w| w.is_finite()),
            eirp_w: reached.eirp_w.filter(|w| w.is_finite()),
            gain_dbi: reached
                .eirp_w
                .zip(reached.antenna_w)
                .map(|(e, a)| to_db(e / a))
                .filter(|g| g.is_finite()),
            uncertainty_db: reached.budget.expanded(),
            worst_db: worst,
            wet_db: (reached.wet > 0.0).then_some(reached.wet),
            swr,
            swr_worst,
            sensitivity_dbm: None,
            noise_figure_db: None,
            mean_w: None,
            limits: Box::default(),
            readings: Box::default(),
            logs: Box::default(),
            budget: budget.into(),
            assumptions: Box::default(),
        }
    }

    /// Mean power against ratings, peak voltage against working voltage.
    fn ratings(&mut self, s: &Stretch<'m>, feed: Option<&Feed<'m>>) {
        let Some(f) = feed else { return };
        crate::rating::check(self, s, f);
    }
}

/// By how many dB the whole loss changes for one dB more in each element (GUM, JCGM 100:2008,
/// 5.1.3, by differences). None where everything is matched and each dB counts as one: only
/// standing waves make a dB of line count for more or less.
fn sensitivities(s: &Stretch<'_>, solved: &Solved, hz: f64) -> Option<Vec<f64>> {
    const STEP_DB: f64 = 0.01;
    let reflects = |g: f64| g > 0.02;
    if !solved.gamma_after.iter().any(|g| reflects(*g)) && !reflects(solved.gamma_in) {
        return None;
    }
    let changes = Changes::new(&s.pieces, s.end_wave, solved);
    let mut out = vec![1.0; s.elements.len()];
    let mut at = 0;
    for (i, e) in s.elements.iter().enumerate() {
        // the pieces stand in the order of their elements
        while s.pieces.get(at).is_some_and(|p| p.element < i) {
            at += 1;
        }
        if e.causes.iter().all(|c| c.1 == 0.0) {
            continue;
        }
        let Some(piece) = s.pieces.get(at).filter(|p| p.element == i) else {
            continue;
        };
        let changed = match &e.line {
            Some(l) if piece.phase_known && l.length_m > 0.0 => {
                let matched = l.at.loss() * l.length_m;
                let scale = 1.0 + STEP_DB / matched.max(1e-9);
                let params = downlead_physics::line::LineParams {
                    r0_ohm: l.at.z0,
                    velocity_factor: l.at.velocity,
                    alpha_c_db_per_m: l.at.alpha_c * scale,
                    alpha_d_db_per_m: l.at.alpha_d * scale,
                };
                Piece::known(
                    downlead_physics::network::SMatrix::line(&params, hz, l.length_m, R0),
                    i,
                )
            }
            _ => {
                let mut p = *piece;
                p.loss_db += STEP_DB;
                let f = from_db(-0.5 * STEP_DB);
                p.s.s21 *= f;
                p.s.s12 *= f;
                p
            }
        };
        out[i] = changes.total(at, &changed) / STEP_DB;
    }
    Some(out)
}

/// Matched loss from an element to the end of its stretch. A divider gives back what its branches
/// reflect alike, so its division is no loss to a reflection.
fn ahead(s: &Stretch<'_>, from: usize) -> f64 {
    s.elements[from..]
        .iter()
        .filter(|e| e.part.is_none_or(|p| p.kind != PartKind::Divider))
        .map(|e| e.loss_db)
        .sum()
}

/// Forward power of a net power where a reflection `gamma` is seen.
pub(crate) fn forward_of(net: f64, gamma: f64) -> f64 {
    net / (1.0 - gamma * gamma)
}

fn item(c: &Cause<'_>, v: f64) -> BudgetItem {
    let (cause, name) = match c {
        Cause::Power(l) => ("power of", CauseName::At(*l)),
        Cause::Instrument(n) => ("scale of instrument", CauseName::Named((*n).into())),
        Cause::Cable(n) => ("cable loss,", CauseName::Named((*n).into())),
        Cause::Length(l) => ("length of", CauseName::At(*l)),
        Cause::Connector(n) => ("connectors of family", CauseName::Named((*n).into())),
        Cause::Device(l) => ("loss of", CauseName::At(*l)),
        Cause::Gain(l) => ("gain of", CauseName::At(*l)),
        Cause::Phases(_) => ("unknown phases of reflections", CauseName::None),
        Cause::Temperature(n) => ("temperature of", CauseName::Named((*n).into())),
        Cause::Added(l) => ("added loss of", CauseName::At(*l)),
    };
    BudgetItem {
        cause,
        name,
        standard_db: v,
    }
}

/// Names of bands a statement holds on: none means all.
pub(crate) fn holds(on: &[Name], point: &Point, env: &Env) -> bool {
    on.is_empty() || on.iter().any(|n| band_matches(&n.text, point, env))
}

/// A loss in words.
pub(crate) fn db_words(v: f64) -> String {
    db(v)
}

/// A level in words.
pub(crate) fn dbm_words(w: f64) -> String {
    format!("{:.1} dBm", w_to_dbm(w))
}
