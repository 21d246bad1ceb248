//! `loss …` of a cable: two coefficients, a table, or the file of a measured piece.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::{Dim, Measure, Shape, Tolerance, frequency};
use downlead_syntax::{Block, Stmt};

use crate::cx::{Cur, Cx, Val};
use crate::keywords::Context;
use crate::model::{Cable, CableLoss, Figure, Meta, Name, NetworkFile, When};
use crate::quals::{Quals, missing};
use crate::words::own;

const EXAMPLE: &str = "loss 0.4 dB/100 m/sqrt(MHz) + 0.0016 dB/100 m/MHz";

/// What the line says before its block.
struct Head {
    quals: Quals,
    /// One or two coefficients, and the sum of both where a `±` follows it.
    terms: Option<(Vec<Val>, Option<Val>)>,
    file: Option<File>,
}

/// `from "reel.s2p" of 25 m, accuracy 0.1 dB`; what cannot be read is none.
struct File {
    path: Option<Name>,
    length: Option<Measure>,
    accuracy: Measure,
}

/// The loss; gives the `±` that holds for all of it, as a relative uncertainty about 1.
pub(super) fn loss<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, c: &mut Cable) -> Option<(Measure, Loc)> {
    c.loss_loc = cx.loc(s.head_span());
    let Head {
        mut quals,
        terms,
        file,
    } = head(cx, s, c);
    c.broken |= quals.broken;
    if let Some(t) = quals.at_temperature_alone(cx, "the temperature of a loss") {
        c.reference_c = t;
        c.reference_stated = true;
    }
    let source = c.meta.source.take();
    if let Some(file) = file {
        if let (Some(path), Some(length)) = (file.path, file.length) {
            quals.meta.source = quals.meta.source.take().or(source);
            c.meta = super::network::about(&path, quals.meta);
            c.loss = Some(of_file(path, length, file.accuracy, &c.meta));
        }
        return None;
    }
    c.meta = quals.meta;
    c.meta.source = c.meta.source.take().or(source);
    if let Some(block) = s.block() {
        let points = table(cx, block);
        if !points.is_empty() {
            c.loss = Some(CableLoss::Table(points.into()));
        }
        return None;
    }
    match terms {
        Some((terms, of_sum)) => two_terms(cx, c, terms, of_sum),
        None => {
            nothing_said(cx, s);
            None
        }
    }
}

fn head<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, c: &mut Cable) -> Head {
    let mut head = Head {
        quals: Quals::warm(),
        terms: None,
        file: None,
    };
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        if n == 0 {
            cur.i = 1;
        }
        while !cur.done() {
            if n == 0 && head.file.is_none() && cur.eat(cx, "from") {
                head.file = Some(File {
                    path: super::session::file(cx, &mut cur, "reel.s2p"),
                    length: of_length(cx, &mut cur),
                    accuracy: Measure::default(),
                });
            } else if let Some(file) = &mut head.file
                && cur.eat(cx, "accuracy")
            {
                let stated = super::network::accuracy(cx, &mut cur);
                c.broken |= stated.is_none();
                file.accuracy = stated.unwrap_or_default();
            } else if n == 0 && head.terms.is_none() && cur.at_value(cx) {
                let atom = cur.peek().expect("at a value");
                head.terms = cx.two_terms(s, atom);
                cur.i += 1;
            } else if !head.quals.take(cx, &mut cur) {
                let own = own(Context::Cable, "loss");
                head.quals.unexpected(cx, &cur, "a cable's loss", own);
                break;
            }
        }
    }
    head
}

/// Points out a line without a figure, unless it has a finding of its own.
fn nothing_said<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) {
    let beside = |d: &Diagnostic| {
        d.primary.loc.span.end < s.span().start || d.primary.loc.span.start > s.span().end
    };
    if !s.is_broken() && cx.diags.iter().all(beside) {
        let cur = Cur::new(s, s.atoms());
        missing(cx, &cur, "a loss is two coefficients or a table", EXAMPLE);
    }
}

type Point = (f64, Measure, Loc);

/// The rows of a table, by frequency; of two rows of one frequency the first counts.
fn table<'a>(cx: &mut Cx<'a>, block: Block<'a>) -> Vec<Point> {
    let mut points: Vec<Point> = Vec::new();
    for row in block.iter() {
        let Some((point, loc)) = table_row(cx, row) else {
            continue;
        };
        if let Some(other) = points.iter().find(|p| p.0 == point.0) {
            let d = Diagnostic::new(
                &codes::DUPLICATE_NAME,
                loc,
                format!("{} occurs twice in this table.", frequency(point.0)),
            )
            .at("again")
            .also(other.2, "first here");
            cx.push(d);
            continue;
        }
        points.push(point);
    }
    points.sort_by(|a, b| a.0.total_cmp(&b.0));
    points
}

/// A row, and the place of its frequency.
fn table_row<'a>(cx: &mut Cx<'a>, row: Stmt<'a>) -> Option<(Point, Loc)> {
    let mut cur = Cur::new(row, row.atoms());
    let (Some(f), Some(a)) = (cur.val(cx), cur.val(cx)) else {
        if !row.is_broken() {
            missing(
                cx,
                &cur,
                "a row of a loss table is a frequency and a loss",
                "100 MHz 4.1 dB/100 m",
            );
        }
        return None;
    };
    let hz = cx.frequency(&f, "a table's frequency");
    let m = cx.measure(&a, Dim::LossRate, "a cable's loss", "4.1 dB/100 m");
    let (hz, m) = (hz?, m?);
    cx.within_bounds(&a, &m, 0.0, "a cable's loss");
    if m.value <= 0.0 || a.q.value < 0.0 {
        let d = Diagnostic::new(
            &codes::NEGATIVE_LOSS,
            a.loc,
            "A cable's loss is positive dB per length.",
        )
        .at("not positive");
        cx.push(d);
        return None;
    }
    if !cur.done() {
        cur.unexpected(cx, "a loss table", &[]);
    }
    Some(((hz, m, cx.loc(row.head_span())), f.loc))
}

/// The law of two coefficients.
fn two_terms(
    cx: &mut Cx<'_>,
    c: &mut Cable,
    terms: Vec<Val>,
    of_sum: Option<Val>,
) -> Option<(Measure, Loc)> {
    let relative = match terms[..] {
        [
            Val {
                half: Some((h, shape)),
                loc,
                ..
            },
        ] if h.dim == Dim::Percent => Some((relative(cx, h.value, shape, loc), loc)),
        _ => None,
    };
    let (k1, k2) = coefficients(cx, terms)?;
    if k1.value < 0.0 || k2.value < 0.0 || k1.value + k2.value <= 0.0 {
        let d = Diagnostic::new(
            &codes::NEGATIVE_LOSS,
            c.loss_loc,
            "The coefficients of a cable's loss are positive.",
        )
        .at("not positive");
        cx.push(d);
        return None;
    }
    let mut terms = [k1, k2];
    let of_all = match of_sum {
        Some(v) => sum_accuracy(cx, &v),
        // a percentage of the only coefficient is one of the loss
        None => relative.map(|(of_one, loc)| {
            terms.iter_mut().for_each(|t| t.u = 0.0);
            (of_one, loc)
        }),
    };
    let [k1, k2] = terms;
    c.loss = Some(CableLoss::TwoTerm { k1, k2 });
    of_all
}

/// The coefficients by their units; one that is not written is 0.
fn coefficients(cx: &mut Cx<'_>, terms: Vec<Val>) -> Option<(Measure, Measure)> {
    const EXAMPLE: &str = "0.4 dB/100 m/sqrt(MHz)";
    let (mut k1, mut k2) = (None, None);
    for t in terms {
        match t.q.dim {
            d @ Dim::RootCoefficient if k1.is_none() => {
                k1 = cx.measure(&t, d, "a coefficient of a cable's loss", EXAMPLE);
            }
            d @ Dim::LinearCoefficient if k2.is_none() => {
                k2 = cx.measure(&t, d, "a coefficient of a cable's loss", EXAMPLE);
            }
            other => {
                let d = Diagnostic::new(
                    &codes::WRONG_UNIT,
                    t.loc,
                    format!("A coefficient of a cable's loss is needed here, not {}.", other.noun()),
                )
                .at("does not fit")
                .help("Written for example `loss 0.4 dB/100 m/sqrt(MHz) + 0.0016 dB/100 m/MHz`.")
                .help("A loss at one frequency goes into a table: `loss typical at 20 °C { 100 MHz 4.1 dB/100 m }`.");
                cx.push(d);
                return None;
            }
        }
    }
    if k1.is_none() && k2.is_none() {
        return None;
    }
    Some((k1.unwrap_or_default(), k2.unwrap_or_default()))
}

/// The `±` after the sum of both coefficients: a percentage is the accuracy of the loss.
fn sum_accuracy(cx: &mut Cx<'_>, v: &Val) -> Option<(Measure, Loc)> {
    match v.half {
        Some((h, shape)) if h.dim == Dim::Percent && h.value >= 0.0 => {
            Some((relative(cx, h.value, shape, v.loc), v.loc))
        }
        _ => {
            cx.push(
                Diagnostic::new(
                    &codes::UNCERTAINTY_NOT_USED,
                    v.loc,
                    "To which of the two coefficients this belongs is not said.",
                )
                .at("of a sum")
                .help("In percent it holds for the loss: `… ± 5 % k 1`, or the line `accuracy 5 % k 1`.")
                .help("For one coefficient: `let conductor = 0.4 dB/100 m/sqrt(MHz) ± 0.02 dB/100 m/sqrt(MHz)`, and `loss conductor + …`."),
            );
            None
        }
    }
}

/// A relative uncertainty of a cable's loss, about 1.
pub(super) fn relative(cx: &mut Cx<'_>, half_width: f64, shape: Shape, loc: Loc) -> Measure {
    let m = Tolerance { half_width, shape }.about(1.0);
    if m.reach() > 1.0 {
        cx.too_large(loc, "a cable's loss", false);
    }
    m
}

/// `of 25 m` after the file of a piece.
fn of_length<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> Option<Measure> {
    const EXAMPLE: &str = "loss from \"reel.s2p\" of 25 m";
    if !cur.eat(cx, "of") {
        missing(
            cx,
            cur,
            "`of` and the length of the piece that was measured follow",
            EXAMPLE,
        );
        return None;
    }
    let v = cur.need(cx, "the length of the piece follows", EXAMPLE)?;
    cx.positive(&v, Dim::Length, "the length of a piece", "25 m")
}

fn of_file(path: Name, length: Measure, accuracy: Measure, meta: &Meta) -> CableLoss {
    CableLoss::Network {
        file: Box::new(NetworkFile {
            figure: Figure {
                when: When::Always,
                value: accuracy,
                meta: meta.clone().into(),
                loc: path.loc,
                percent: false,
            },
            path,
            reversed: false,
        }),
        length,
    }
}
