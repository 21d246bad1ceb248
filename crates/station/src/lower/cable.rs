//! `cable NAME { … }`.

use downlead_base::{Diagnostic, Loc, Severity, codes};
use downlead_quantity::{Dim, Measure, Quantity, Shape, number};
use downlead_syntax::Stmt;

use super::band::frequency_range;
use super::cable_loss::{self, relative};
use super::head::{declared, meant, no_keyword, unknown_statement};
use super::rating::rating;
use super::recalled;
use crate::cx::{Cur, Cx, Val};
use crate::keywords::Context;
use crate::model::{AccuracyStep, Basis, Cable, CableLoss, Construction, Meta, Wires};
use crate::quals::{Quals, ends, missing, rest};
use crate::words::own;

/// Lines of a cable whose figures enter every result.
const FIGURES: &[&str] = &[
    "impedance",
    "velocity",
    "loss",
    "construction",
    "wires",
    "accuracy",
];

/// Resistivity of annealed copper at 20 °C, ohm m (IEC 60028, 100 % IACS).
const COPPER: f64 = 1.7241e-8;

pub(super) fn cable<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, cur: &mut Cur<'a>) -> Option<Cable> {
    let name = declared(cx, cur, "a cable", "cable foam-10 { … }")?;
    let title = cur.string(cx);
    if !cur.done() {
        cur.unexpected(cx, "a cable's head", &[]);
    }
    let head = cx.loc(stmt.head_span());
    let mut c = Cable {
        name,
        title,
        impedance: None,
        velocity: None,
        loss: None,
        loss_loc: head,
        reference_c: 20.0,
        reference_stated: false,
        meta: Meta::default(),
        valid: None,
        accuracy: Box::default(),
        shared: None,
        ratings: Box::default(),
        voltage: None,
        size: None,
        clad: false,
        recalled: None,
        built_in: cx.built_in,
        broken: false,
    };
    let had = cx.diags.len();
    let mut steps = Vec::new();
    let mut ratings = Vec::new();
    let mut of_loss = None;
    for s in stmt.block().into_iter().flat_map(|b| b.iter()) {
        line(cx, s, &mut c, &mut steps, &mut ratings, &mut of_loss);
    }
    if c.built_in {
        c.meta.basis = Basis::Library;
    }
    match of_loss {
        Some((m, loc)) if !steps.is_empty() => {
            let text = number(100.0 * m.u, 3);
            cx.push(
                Diagnostic::new(
                    &codes::FIGURE_TWICE,
                    loc,
                    format!("The accuracy of `{}` is given twice, here ({text} % standard) and by `accuracy`; the line `accuracy` is used.", c.name.text),
                )
                .at("not used")
                .help("Remove one of them."),
            );
        }
        Some((m, loc)) => steps.push((
            AccuracyStep {
                up_to_hz: f64::INFINITY,
                u_relative: m.u,
                normal: m.normal,
            },
            loc,
        )),
        None => {}
    }
    let mut steps: Vec<AccuracyStep> = steps.into_iter().map(|s| s.0).collect();
    steps.sort_by(|a: &AccuracyStep, b| a.up_to_hz.total_cmp(&b.up_to_hz));
    c.accuracy = steps.into();
    c.ratings = ratings.into();
    recalled::apply(&mut c);
    if c.loss.is_none() && cx.diags.len() == had && !stmt.is_broken() {
        let d = Diagnostic::new(
            &codes::MISSING_VALUE,
            head,
            format!("Cable `{}` has no loss.", c.name.text),
        )
        .at("no loss")
        .help("Give the sheet's table: `loss typical at 20 °C { 100 MHz 4.1 dB/100 m }`.")
        .help("Or two coefficients: `loss 0.4 dB/100 m/sqrt(MHz) + 0.0016 dB/100 m/MHz`.")
        .help("Or its `construction { … }`.")
        .help("Or a file of a measured piece: `loss from \"reel.s2p\" of 25 m`.");
        cx.push(d);
    }
    Some(c)
}

fn line<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    c: &mut Cable,
    steps: &mut Vec<(AccuracyStep, Loc)>,
    ratings: &mut Vec<crate::model::Rating>,
    of_loss: &mut Option<(Measure, Loc)>,
) {
    let mut cur = Cur::new(s, super::head::first_group(s));
    cur.i = 1;
    match s.keyword() {
        Some("impedance") => {
            if let Some(v) = cur.val(cx) {
                c.impedance = cx.positive(&v, Dim::Impedance, "a cable's impedance", "50 ohm");
            } else {
                missing(cx, &cur, "an impedance follows", "impedance 50 ohm");
            }
            c.broken |= c.impedance.is_none();
        }
        Some("velocity") => velocity(cx, &mut cur, c),
        Some("recalled") => {
            c.recalled = recalled::recalled(cx, &mut cur, false);
            c.broken |= c.recalled.is_none();
            ends(cx, s, &cur, "a recall");
        }
        Some("loss") => *of_loss = cable_loss::loss(cx, s, c),
        Some("construction") => {
            c.loss_loc = cx.loc(s.head_span());
            c.loss = construction(cx, s).map(CableLoss::Construction);
        }
        Some("wires") => {
            c.loss_loc = cx.loc(s.head_span());
            c.loss = wires(cx, s).map(CableLoss::Wires);
        }
        Some("valid") => {
            if let Some(v) = cur.val(cx) {
                c.valid = frequency_range(cx, &v, "the valid range");
            } else {
                missing(cx, &cur, "a range follows", "valid 0.5 MHz to 3000 MHz");
            }
        }
        Some("accuracy") => return accuracy(cx, s, c, steps),
        Some("rating") => {
            if let Some(r) = rating(cx, s, 1) {
                add_rating(cx, r, ratings);
            }
            return;
        }
        Some("voltage") => {
            if let Some(v) = cur.need(cx, "a working voltage follows", "voltage 1900 V") {
                let v = cx.alone(&v, "a working voltage");
                c.voltage = cx
                    .positive(&v, Dim::Voltage, "a working voltage", "1900 V")
                    .map(|m| m.value);
            }
        }
        Some("size") => {
            if let Some(v) = cur.need(cx, "the diameter over the jacket follows", "size 10.3 mm") {
                let v = cx.alone(&v, "a cable's size");
                c.size = cx
                    .positive(&v, Dim::Length, "a cable's size", "10.3 mm")
                    .map(|m| m.value);
            }
        }
        Some("conductor") => {
            if cur.eat(cx, "clad") {
                c.clad = true;
            } else {
                cur.unexpected(cx, "`conductor`", &["clad"]);
                return;
            }
        }
        Some("source") => source(cx, &mut cur, c),
        Some(w) => {
            c.broken |= meant(w, FIGURES);
            return unknown_statement(cx, s, w, Context::Cable);
        }
        None => return no_keyword(cx, s, Context::Cable),
    }
    match s.keyword() {
        Some("loss") => {}
        Some("construction" | "wires" | "conductor" | "source") => ends(cx, s, &cur, "this line"),
        _ => rest(cx, s, &mut cur, "a cable"),
    }
}

/// `velocity 0.66`; a percentage is a share of the speed of light, its ± too: `66 % ± 1 %` is 0.66 ± 0.01.
fn velocity<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>, c: &mut Cable) {
    if let Some(v) = cur.need(cx, "a velocity factor follows", "velocity 0.66") {
        let v = of_light(v);
        c.velocity = cx.measure(&v, Dim::Count, "a velocity factor", "0.66");
        if let Some(m) = &c.velocity {
            cx.within_bounds(&v, m, 0.0, "a velocity factor");
        }
        let ends = [v.q.value, v.upper.map_or(v.q.value, |u| u.value)];
        let can_be = |x: f64| x > 0.1 && x <= 1.0;
        if let Some(m) = c.velocity.filter(|_| !ends.into_iter().all(can_be)) {
            let d = Diagnostic::new(
                &codes::IMPOSSIBLE_VALUE,
                v.loc,
                format!(
                    "A velocity factor lies between 0.1 and 1; {} cannot be.",
                    number(m.value, 3)
                ),
            )
            .at("cannot be");
            cx.push(d);
            c.velocity = None;
        }
    }
    c.broken |= c.velocity.is_none();
}

fn of_light(v: Val) -> Val {
    if v.q.dim != Dim::Percent {
        return v;
    }
    let number = |q: Quantity| Quantity {
        dim: match q.dim {
            Dim::Percent => Dim::Count,
            d => d,
        },
        ..q
    };
    Val {
        q: number(v.q),
        half: v.half.map(|(h, shape)| (number(h), shape)),
        upper: v.upper.map(number),
        ..v
    }
}

/// One rating a frequency, and one without.
fn add_rating(cx: &mut Cx<'_>, r: crate::model::Rating, ratings: &mut Vec<crate::model::Rating>) {
    match ratings.iter().find(|x| x.at_hz == r.at_hz) {
        Some(first) => again(
            cx,
            r.loc,
            first.loc,
            &match r.at_hz {
                Some(f) => format!("The rating at {}", downlead_quantity::frequency(f)),
                None => "The rating".to_owned(),
            },
        ),
        None => ratings.push(r),
    }
}

fn source<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>, c: &mut Cable) {
    let Some(t) = cur.string(cx) else {
        return missing(
            cx,
            cur,
            "the document follows in quotes",
            "source \"sheet 7, page 2\"",
        );
    };
    c.meta.source = Some(match &c.loss {
        Some(CableLoss::Network { file, .. }) => format!("file {}, {t}", file.path.text).into(),
        _ => t,
    });
}

fn accuracy<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, c: &mut Cable, steps: &mut Vec<(AccuracyStep, Loc)>) {
    let mut u = None;
    let mut up_to = f64::INFINITY;
    let mut q = Quals::default();
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        if n == 0 {
            cur.i = 1;
            let Some(v) = cur.val(cx) else {
                c.broken = true;
                missing(cx, &cur, "the accuracy follows", "accuracy 5 % k 1");
                return;
            };
            let plain = cx.alone(
                &Val {
                    upper: None,
                    coverage: None,
                    ..v
                },
                "an accuracy",
            );
            let Some(m) = cx.measure(&plain, Dim::Percent, "a cable's accuracy", "5 % k 1") else {
                c.broken = true;
                return;
            };
            let shape = v
                .coverage
                .filter(|k| *k > 0.0)
                .map_or(Shape::Rectangular, Shape::Coverage);
            // `5 % to 450 MHz` reads as one interval
            if let Some(f) = v.upper.filter(|f| f.dim == Dim::Frequency) {
                up_to = f.value;
            }
            u = Some(relative(cx, m.value.abs(), shape, v.loc));
            if let Some(f) = v.upper.filter(|f| f.dim != Dim::Frequency) {
                cx.wrong_kind(
                    &Val {
                        q: f,
                        upper: None,
                        ..v
                    },
                    &[Dim::Frequency],
                    "the end of an accuracy's range",
                    "450 MHz",
                );
            }
            if cur.eat(cx, "to")
                && let Some(f) = cur
                    .val(cx)
                    .and_then(|f| cx.frequency(&f, "the end of an accuracy's range"))
            {
                up_to = f;
            }
        }
        while !cur.done() {
            if cur.eat(cx, "shared") {
                match cur.name(cx) {
                    Some(n) => c.shared = Some(n),
                    None => missing(
                        cx,
                        &cur,
                        "`shared` is followed by the cause's name",
                        "shared sheet-7",
                    ),
                }
            } else if !q.take(cx, &mut cur) {
                let own = own(Context::Cable, "accuracy");
                q.unexpected(cx, &cur, "an accuracy", own);
                break;
            }
        }
    }
    let Some(u) = u else { return };
    let loc = cx.loc(s.head_span());
    if let Some((_, first)) = steps.iter().find(|x| x.0.up_to_hz == up_to) {
        let to = match up_to.is_finite() {
            true => format!(" up to {}", downlead_quantity::frequency(up_to)),
            false => String::new(),
        };
        return again(cx, loc, *first, &format!("The accuracy{to}"));
    }
    steps.push((
        AccuracyStep {
            up_to_hz: up_to,
            u_relative: u.u,
            normal: u.normal,
        },
        loc,
    ));
}

/// Points out a line that says again what another one says; the first counts.
fn again(cx: &mut Cx<'_>, loc: Loc, first: Loc, what: &str) {
    cx.push(
        Diagnostic::new(
            &codes::FIGURE_TWICE,
            loc,
            format!("{what} is given twice; the first is used."),
        )
        .at("again here")
        .also(first, "first here")
        .help("Remove one of the two lines."),
    );
}

fn construction<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) -> Option<Construction> {
    let mut k = Construction {
        inner: Measure::default(),
        outer: Measure::default(),
        permittivity: Measure::default(),
        loss_tangent: Measure::default(),
        strand: Measure::exact(1.0),
        strand_diameter: Measure::exact(1.0),
        braid: Measure::exact(1.0),
        inner_resistivity: Measure::exact(COPPER),
        outer_resistivity: Measure::exact(COPPER),
    };
    // a line about one conductor takes precedence over a line about both
    let (mut both, mut of_inner, mut of_outer) = (None, None, None);
    let had = cx.diags.len();
    dimensions(cx, s, |cx, word, v| {
        match word {
            "inner" => {
                k.inner = cx.positive(v, Dim::Length, "the inner conductor's diameter", "2.7 mm")?
            }
            "outer" => {
                k.outer = cx.positive(v, Dim::Length, "the outer conductor's diameter", "7.2 mm")?
            }
            "permittivity" => {
                k.permittivity = cx.positive(v, Dim::Count, "the permittivity", "2.3")?
            }
            "loss-tangent" => {
                // air has none
                k.loss_tangent = if v.q.value == 0.0 {
                    cx.measure(v, Dim::Count, "the loss tangent", "0.0002")?
                } else {
                    cx.positive(v, Dim::Count, "the loss tangent", "0.0002")?
                }
            }
            "strand" => k.strand = cx.positive(v, Dim::Count, "the strand factor", "1.25")?,
            "braid" => k.braid = cx.positive(v, Dim::Count, "the braid factor", "1.9")?,
            "strand-diameter" => {
                k.strand_diameter = strand_diameter(cx, v)?;
            }
            "resistivity" | "inner-resistivity" | "outer-resistivity" => {
                let of = match word {
                    "resistivity" => &mut both,
                    "inner-resistivity" => &mut of_inner,
                    _ => &mut of_outer,
                };
                *of =
                    Some(cx.positive(v, Dim::Resistivity, "the resistivity", "1.7241e-8 ohm-m")?);
            }
            _ => return None,
        }
        Some(())
    });
    let loc = cx.loc(s.head_span());
    if cx
        .diags
        .iter()
        .skip(had)
        .any(|d| d.severity == Severity::Error)
    {
        return None;
    }
    k.inner_resistivity = of_inner.or(both).unwrap_or(k.inner_resistivity);
    k.outer_resistivity = of_outer.or(both).unwrap_or(k.outer_resistivity);
    if k.inner.value <= 0.0 || k.outer.value <= 0.0 || k.permittivity.value <= 0.0 {
        let d = Diagnostic::new(&codes::MISSING_VALUE, loc, "A construction needs `inner`, `outer` and `permittivity`.")
            .at("incomplete")
            .help("Written for example `construction { inner 0.92 mm; outer 2.98 mm; permittivity 2.07 }`.");
        cx.push(d);
        return None;
    }
    if k.inner.value >= k.outer.value || k.permittivity.value < 1.0 {
        let d = Diagnostic::new(
            &codes::IMPOSSIBLE_VALUE,
            loc,
            "The inner conductor is thinner than the outer one, and a permittivity is at least 1.",
        )
        .at("cannot be");
        cx.push(d);
        return None;
    }
    Some(k)
}

/// The factor of a stranded conductor's effective diameter: no more than 1.
fn strand_diameter(cx: &mut Cx<'_>, v: &Val) -> Option<Measure> {
    let m = cx.positive(v, Dim::Count, "the strand's diameter factor", "0.97")?;
    if v.upper.map_or(v.q.value, |u| u.value) <= 1.0 {
        return Some(m);
    }
    cx.push(
        Diagnostic::new(
            &codes::IMPOSSIBLE_VALUE,
            v.loc,
            "The effective diameter of strands is not larger than the diameter over them.",
        )
        .at("above 1")
        .help("Common are 0.939 for 7 strands, 0.970 for 19 and 0.980 for 37."),
    );
    None
}

fn wires<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) -> Option<Wires> {
    let mut w = Wires {
        diameter: Measure::default(),
        spacing: Measure::default(),
        permittivity: Measure::exact(1.0),
        resistivity: Measure::exact(COPPER),
    };
    let had = cx.diags.len();
    dimensions(cx, s, |cx, word, v| {
        match word {
            "diameter" => w.diameter = cx.positive(v, Dim::Length, "a wire's diameter", "2 mm")?,
            "spacing" => w.spacing = cx.positive(v, Dim::Length, "the wires' spacing", "150 mm")?,
            "permittivity" => {
                w.permittivity = cx.positive(v, Dim::Count, "the permittivity", "1.1")?
            }
            "resistivity" => {
                w.resistivity =
                    cx.positive(v, Dim::Resistivity, "the resistivity", "1.7241e-8 ohm-m")?
            }
            _ => return None,
        }
        Some(())
    });
    if cx
        .diags
        .iter()
        .skip(had)
        .any(|d| d.severity == Severity::Error)
    {
        return None;
    }
    let loc = cx.loc(s.head_span());
    if w.diameter.value <= 0.0 || w.spacing.value <= w.diameter.value || w.permittivity.value < 1.0
    {
        let d = Diagnostic::new(
            &codes::IMPOSSIBLE_VALUE,
            loc,
            "A parallel line needs `diameter` and a larger `spacing`, and a permittivity of at least 1.",
        )
        .at("cannot be")
        .help("Written for example `wires { diameter 2 mm; spacing 150 mm }`.");
        cx.push(d);
        return None;
    }
    Some(w)
}

fn dimensions<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    mut put: impl FnMut(&mut Cx<'a>, &str, &Val) -> Option<()>,
) {
    for row in s.block().into_iter().flat_map(|b| b.iter()) {
        let mut cur = Cur::new(row, row.atoms());
        cur.i = 1;
        let Some(word) = row.keyword() else {
            no_keyword(cx, row, Context::Construction);
            continue;
        };
        let known = crate::keywords::keyword(word)
            .is_some_and(|k| k.contexts.contains(&Context::Construction));
        if !known {
            unknown_statement(cx, row, word, Context::Construction);
            continue;
        }
        match cur.val(cx) {
            Some(v) => {
                let had = cx.diags.len();
                if put(cx, word, &v).is_none() && cx.diags.len() == had {
                    unknown_statement(cx, row, word, Context::Cable);
                }
            }
            None => missing(
                cx,
                &cur,
                &format!("`{word}` is followed by its value"),
                "inner 0.92 mm",
            ),
        }
        if !cur.done() {
            cur.unexpected(cx, "a construction", &[]);
        }
    }
}
