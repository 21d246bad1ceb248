//! A hop of a link, step by step.

use downlead_physics::C0;
use downlead_physics::path::{Cascade, Edge};
use downlead_quantity::{db, number};
use downlead_station::model::Model;

use super::Derivation;
use super::node::NOT_KNOWN;
use super::numbers::{decibels, op, sum, value, watts};
use crate::link::{HopResult, Judged, LinkResult, LinkVerdict, TerrainResult};

/// Added to 20 log10(f/MHz) + 20 log10(d/km): 20 log10(4 π 10⁹/c) (ITU-R P.525).
const FREE: &str = "32.4477832";

fn dbm(x: f64) -> String {
    value(x, "dBm")
}

/// A hop. `eirp` is the derivation of what is radiated, where the sending chain has one.
pub(super) fn hop(l: &LinkResult, h: &HopResult, eirp: Option<Derivation>) -> Derivation {
    let title = |what: &str| {
        format!(
            "{what}, {} to {}, {}",
            h.from,
            h.to,
            downlead_quantity::frequency(h.hz)
        )
    };
    let level = level(l, h, eirp);
    let Some(j) = &h.judged else {
        let verdict = match h.verdict {
            LinkVerdict::NoNeed => Vec::new(),
            v => vec![Derivation::of("verdict", v.words())],
        };
        let missing = h
            .missing
            .iter()
            .map(|m| Derivation::of("missing", m.words()));
        return Derivation::of(
            title("level at the receiver"),
            h.level_dbm.map_or_else(|| NOT_KNOWN.to_owned(), dbm),
        )
        .at(h.loc)
        .by(
            "level at the antenna - loss of the receiving chain",
            received(h),
        )
        .with(level)
        .with_all(chain_loss(h))
        .with_all(verdict)
        .with_all(missing);
    };
    Derivation::of(
        title("left of the margin"),
        format!("{} ± {} ({})", decibels(j.left_db), db(j.u_db), h.verdict.words()),
    )
    .at(h.loc)
    .by(
        "margin at half of the places - what the share of the places takes",
        sum(&[j.margin_db, -j.places_db]),
    )
    .with(margin(j, level, h))
    .with(places(j))
    .with(
        Derivation::of("U (k = 2)", decibels(j.u_db)).from(
            "what is radiated, the receiver, its antenna and line, noise as stated and the stated distance, by their squares; the spread of places is no part of it",
        ),
    )
    .with(
        Derivation::of("verdict", h.verdict.words()).by(
            "met where what is left exceeds U, not met where U does not reach it; else cannot tell; cannot tell too where free space alone or one of two models of the terrain says met",
            "",
        ),
    )
    .with_all(h.missing.iter().map(|m| Derivation::of("open", m.words())))
}

fn received(h: &HopResult) -> String {
    let at_antenna = h.level_dbm.zip(h.receive_loss_db);
    at_antenna.map_or_else(String::new, |(l, lost)| sum(&[l + lost, -lost]))
}

fn chain_loss(h: &HopResult) -> Option<Derivation> {
    let lost = h.receive_loss_db?;
    Some(Derivation::of("loss of the receiving chain", decibels(lost)).at(h.places.1))
}

fn margin(j: &Judged, level: Derivation, h: &HopResult) -> Derivation {
    let needed = j.at_antenna_dbm - j.margin_db;
    let degradation = h.noise.map_or(0.0, |n| n.degradation_db);
    let mut need = Derivation::of("needed at the antenna", dbm(needed))
        .by(
            "what the receiver needs + what its chain adds + noise from outside",
            sum(&[j.receiver_dbm, j.chain_db, degradation]),
        )
        .with(
            Derivation::of(
                format!("sensitivity for {}", j.criterion),
                dbm(j.receiver_dbm),
            )
            .at(j.from.0),
        )
        .with(
            Derivation::of("what the receiving chain adds", decibels(j.chain_db))
                .from("its loss, and what its uncertainty adds on the mean")
                .at(h.places.1),
        );
    if let Some(noise) = noise(h) {
        need = need.with(noise);
    }
    Derivation::of("margin at half of the places", decibels(j.margin_db))
        .by(
            "level at the antenna - needed at the antenna",
            sum(&[j.at_antenna_dbm, -needed]),
        )
        .with(level)
        .with(need)
}

/// What noise from outside adds to what is needed.
fn noise(h: &HopResult) -> Option<Derivation> {
    let n = h.noise?;
    let d = Derivation::of("noise from outside", decibels(n.degradation_db)).at(n.loc);
    let Some(((around, receiver), external)) = n.by.zip(n.external_db) else {
        return Some(d.from("as stated"));
    };
    let (c, slope) = around.median();
    Some(
        d.by(
            "10 log10(fa - 1 + f) - F, with fa and f as factors",
            format!(
                "10 log10(10^({}/10) - 1 + 10^({}/10)) - {}",
                op(external),
                op(receiver),
                op(receiver)
            ),
        )
        .from("ITU-R P.372, eq. (2) and (3), a lossless antenna and all at T0")
        .with(
            Derivation::of("Fa, noise of the place above kT0b", decibels(external))
                .by(
                    "c - d log10(f/MHz)",
                    format!("{} - {} log10({})", op(c), op(slope), op(h.hz / 1e6)),
                )
                .from("ITU-R P.372, median of man-made noise"),
        )
        .with(Derivation::of("F, noise figure at the antenna", decibels(receiver)).at(h.places.1)),
    )
}

fn places(j: &Judged) -> Derivation {
    let d =
        Derivation::of("what the share of the places takes", decibels(j.places_db)).at(j.from.1);
    match j.spread_db {
        Some(spread) if spread > 0.0 => {
            let z = j.places_db / spread;
            d.by("spread × z", format!("{} × {}", op(spread), op(z)))
                .with(Derivation::of("z", value(z, "")).from(format!(
                    "quantile of a normal distribution for {} %",
                    number(100.0 * j.share, 3)
                )))
        }
        _ => d.from("half of the places: nothing"),
    }
}

/// The level at the terminals of the receiving antenna.
fn level(l: &LinkResult, h: &HopResult, eirp: Option<Derivation>) -> Derivation {
    let title = "level at the antenna";
    let (Some((w, _)), Some(loss), Some(gain)) = (h.eirp, h.loss_db(), h.gain_dbi) else {
        return Derivation::of(title, NOT_KNOWN).with_all(path(l, h));
    };
    let sent = downlead_quantity::w_to_dbm(w);
    let radiated = eirp.unwrap_or_else(|| {
        Derivation::of(format!("EIRP of {}", h.from), super::node::watts_value(w)).at(h.places.0)
    });
    let antenna = Derivation::of("gain of the receiving antenna", value(gain, "dBi"))
        .from("at its peak, same polarisation");
    let mut terms = vec![sent, -loss, gain];
    let mut formula = "EIRP - path loss + gain of the receiving antenna".to_owned();
    let mut downs = Vec::new();
    let ends = [("sending", h.patterns.0), ("receiving", h.patterns.1)];
    for (end, taken) in ends {
        let Some(t) = taken else { continue };
        terms.push(-t.down_db);
        formula += &format!(" - pattern of the {end} antenna");
        downs.push(
            Derivation::of(format!("pattern of the {end} antenna"), decibels(t.down_db)).from(
                format!(
                    "at {}° above the horizon, on a straight line between its rows, which are its bounds",
                    number(t.angle_deg, 2)
                ),
            ),
        );
    }
    Derivation::of(title, dbm(terms.iter().sum()))
        .by(formula, sum(&terms))
        .with(
            Derivation::of("EIRP", dbm(sent))
                .by(
                    "10 log10(EIRP/1 W) + 30",
                    format!("10 log10({}) + 30", watts(w)),
                )
                .with(radiated),
        )
        .with_all(path(l, h))
        .with(match h.places.2 {
            Some(loc) => antenna.at(loc),
            None => antenna,
        })
        .with_all(downs)
}

/// The path loss by the model that counts.
fn path(l: &LinkResult, h: &HopResult) -> Option<Derivation> {
    let free = h.free_space_db?;
    let Some(loss) = h.loss_db() else {
        let why = h.models.first()?.loss_db.as_ref().err()?;
        return Some(Derivation::of(
            format!("path loss by {}", h.model.word()),
            format!("not computed: {}", why.words()),
        ));
    };
    let d = Derivation::of(format!("path loss by {}", h.model.word()), decibels(loss));
    let more = loss - free;
    let terrain = h.terrain.as_ref();
    let with = |extra: Derivation| {
        d.clone()
            .by("free space + terrain", sum(&[free, more]))
            .with(free_space(h, free))
            .with(extra)
    };
    Some(match (h.model, terrain) {
        (Model::Bullington, Some(t)) => with(bullington(l, h, t)),
        (Model::OneEdge, Some(t)) => with(one_edge(h, "terrain", &t.cascade?.main, length(l))),
        (Model::Cascade, Some(t)) => with(cascade(l, h, &t.cascade?)),
        (Model::FreeSpace, _) => free_space(h, loss),
        (Model::TwoRay, _) => two_ray(h, d),
        (Model::HataOpen | Model::HataSuburban | Model::HataUrban, _) => hata(h, d),
        _ => d,
    })
}

fn length(l: &LinkResult) -> f64 {
    l.profile.last().map_or(f64::NAN, |p| p.0)
}

fn free_space(h: &HopResult, free: f64) -> Derivation {
    let (Some(slant), Some((along, _))) = (h.slant_m, h.distance) else {
        return Derivation::of("free space", decibels(free));
    };
    let distance = Derivation::of("distance between the antennas", value(slant, "m"));
    let distance = match h.ends.amsl_m {
        Some((a, b)) => distance.by(
            "√(along the ground² + difference of the heights²)",
            format!("√({}^2 + ({} - {})^2)", op(along), op(a), op(b)),
        ),
        None => distance.from("along the ground: the height of an antenna is not known"),
    };
    Derivation::of("free space", decibels(free))
        .by(
            "20 log10(f/MHz) + 20 log10(d/km) + 32.45",
            format!(
                "20 log10({}) + 20 log10({}) + {FREE}",
                op(h.hz / 1e6),
                op(slant / 1e3)
            ),
        )
        .from("ITU-R P.525")
        .with(distance)
}

/// Loss over one edge.
fn one_edge(h: &HopResult, title: &str, e: &Edge, length: f64) -> Derivation {
    let d = Derivation::of(title, decibels(e.loss_db));
    let d = match e.nu > -0.78 {
        true => d.by(
            "6.9 + 20 log10(√((ν - 0.1)² + 1) + ν - 0.1)",
            format!(
                "6.9 + 20 log10(√(({} - 0.1)^2 + 1) + {} - 0.1)",
                op(e.nu),
                op(e.nu)
            ),
        ),
        false => d.by("0 for ν up to -0.78", ""),
    };
    d.from("ITU-R P.526, eq. (31)").with(nu(h, e, length))
}

fn nu(h: &HopResult, e: &Edge, length: f64) -> Derivation {
    let d = Derivation::of("ν", value(e.nu, "")).from(format!(
        "edge at {} km, {} m {} the line between the ends of its part, with the bulge of the earth",
        number(e.at_m / 1e3, 2),
        number(e.above_m.abs(), 2),
        if e.above_m < 0.0 { "below" } else { "above" }
    ));
    if !length.is_finite() {
        return d;
    }
    d.by(
        "h √(2/λ (1/d1 + 1/d2))",
        format!(
            "{} × √(2 / {} × (1 / {} + 1 / {}))",
            op(e.above_m),
            op(C0 / h.hz),
            op(e.at_m),
            op(length - e.at_m)
        ),
    )
}

fn bullington(l: &LinkResult, h: &HopResult, t: &TerrainResult) -> Derivation {
    let km = length(l) / 1e3;
    let j = t.edge.loss_db;
    Derivation::of("terrain by one edge", decibels(t.loss_db))
        .by(
            "J + (1 - exp(-J/6)) (10 + 0.02 d/km)",
            format!(
                "{} + (1 - exp(-{} / 6)) × (10 + 0.02 × {})",
                op(j),
                op(j),
                op(km)
            ),
        )
        .from(format!(
            "ITU-R P.1812-6, eq. (13) to (21); k factor {}",
            number(l.k, 3)
        ))
        .with(one_edge(h, "J, loss over the edge", &t.edge, length(l)))
}

fn cascade(l: &LinkResult, h: &HopResult, c: &Cascade) -> Derivation {
    let of = |e: &Option<Edge>| e.as_ref().map_or(0.0, |e| e.loss_db);
    let (p, t, r) = (c.main.loss_db, of(&c.before), of(&c.after));
    let side = |title: &str, e: &Option<Edge>| {
        e.as_ref()
            .map(|e| one_edge(h, title, e, f64::NAN))
            .unwrap_or_else(|| Derivation::of(title, decibels(0.0)).from("no point there"))
    };
    Derivation::of("terrain by a cascade of edges", decibels(c.loss_db))
        .by(
            "J(p) + (1 - exp(-J(p)/6)) (J(t) + J(r) + 10 + 0.04 d/km)",
            format!(
                "{} + (1 - exp(-{} / 6)) × ({} + {} + 10 + 0.04 × {})",
                op(p),
                op(p),
                op(t),
                op(r),
                op(length(l) / 1e3)
            ),
        )
        .from("ITU-R P.526")
        .with(one_edge(
            h,
            "J(p), over the highest edge",
            &c.main,
            length(l),
        ))
        .with(side("J(t), over the edge before it", &c.before))
        .with(side("J(r), over the edge after it", &c.after))
}

fn two_ray(h: &HopResult, d: Derivation) -> Derivation {
    let (Some((h1, h2)), Some((along, _))) = (h.ends.agl_m, h.distance) else {
        return d;
    };
    d.from(format!(
        "sum of the direct ray and of one that the ground reflects with -1; heights {} m and {} m above ground, {} km apart; far away 40 log10(d) - 20 log10(h1 h2)",
        number(h1, 2),
        number(h2, 2),
        number(along / 1e3, 3)
    ))
}

fn hata(h: &HopResult, d: Derivation) -> Derivation {
    let (Some((h1, h2)), Some((along, _))) = (h.ends.agl_m, h.distance) else {
        return d;
    };
    let base = h.ends.base_m.unwrap_or(h1.max(h2));
    let mobile = h1.min(h2);
    let f = libm::log10(h.hz / 1e6);
    let a = (1.1 * f - 0.7) * mobile - (1.56 * f - 0.8);
    let mhz = op(h.hz / 1e6);
    let (formula, more) = match h.model {
        Model::HataSuburban => (
            " - 2 (log10(f/28))² - 5.4",
            format!(" - 2 × (log10({mhz} / 28))^2 - 5.4"),
        ),
        Model::HataOpen => (
            " - 4.78 (log10 f)² + 18.33 log10 f - 40.94",
            format!(" - 4.78 × (log10({mhz}))^2 + 18.33 log10({mhz}) - 40.94"),
        ),
        _ => ("", String::new()),
    };
    d.by(
        format!("69.55 + 26.16 log10 f - 13.82 log10 hb - a + (44.9 - 6.55 log10 hb) log10 d{formula}"),
        format!(
            "69.55 + 26.16 log10({mhz}) - 13.82 log10({b}) - {a} + (44.9 - 6.55 log10({b})) × log10({km}){more}",
            b = op(base),
            a = op(a),
            km = op(along / 1e3)
        ),
    )
    .from("Hata 1980, ITU-R P.529: f in MHz, hb in m, d in km")
    .with(
        Derivation::of("a, for the height of the lower antenna", value(a, ""))
            .by(
                "(1.1 log10 f - 0.7) hm - (1.56 log10 f - 0.8)",
                format!(
                    "(1.1 log10({mhz}) - 0.7) × {} - (1.56 log10({mhz}) - 0.8)",
                    op(mobile)
                ),
            ),
    )
    .with(Derivation::of("hb, height of the higher antenna", value(base, "m")))
    .with(Derivation::of("hm, height of the lower antenna", value(mobile, "m")))
}
