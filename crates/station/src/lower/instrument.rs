//! Instruments.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::Dim;
use downlead_syntax::Stmt;

use super::band::frequency_range;
use super::head::{declared, meant, no_keyword, unknown_statement};
use crate::cx::{Cur, Cx, Val};
use crate::keywords::Context;
use crate::model::{Accuracy, Instrument};
use crate::quals::missing;

pub(super) fn instrument<'a>(
    cx: &mut Cx<'a>,
    stmt: Stmt<'a>,
    cur: &mut Cur<'a>,
) -> Option<Instrument> {
    let name = declared(
        cx,
        cur,
        "an instrument",
        "instrument W1 { accuracy 5 % of reading }",
    )?;
    let mut ins = Instrument {
        name,
        title: cur.string(cx),
        accuracy: None,
        accuracy_normal: false,
        scale_w: None,
        band: None,
        resolution_w: None,
        calibrated: None,
        due: None,
        certificates: Box::default(),
        recalled: None,
        linearity: None,
        linearity_of_scale: false,
        repeatability: None,
        directivity_db: None,
        broken: false,
    };
    if !cur.done() {
        cur.unexpected(cx, "an instrument", &[]);
    }
    let mut dates = Dates::default();
    for s in stmt.block().into_iter().flat_map(|b| b.iter()) {
        let mut c = Cur::new(s, s.atoms());
        c.i = 1;
        if line(cx, s, &mut c, &mut ins, &mut dates) && !c.done() {
            c.unexpected(cx, "an instrument", &[]);
        }
    }
    if let (Some(made), Some(due)) = (dates.calibrated, dates.due) {
        due_before(cx, &ins, made, due);
    }
    Some(ins)
}

/// Where the dates of the calibration stand.
#[derive(Default)]
struct Dates {
    calibrated: Option<Loc>,
    due: Option<Loc>,
}

/// One line of the block. Whether what follows on it is still to be reported.
fn line<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    c: &mut Cur<'a>,
    ins: &mut Instrument,
    dates: &mut Dates,
) -> bool {
    match s.keyword() {
        Some("accuracy") => {
            if let Some(v) = c.val(cx) {
                ins.accuracy = accuracy(cx, c, &v);
                ins.accuracy_normal = v.coverage.is_some();
            } else {
                missing(cx, c, "the accuracy follows", "accuracy 5 % of reading");
            }
            ins.broken |= ins.accuracy.is_none();
        }
        Some("scale") => {
            ins.scale_w = watts(cx, c, "a full scale", "scale 100 W");
            ins.broken |= ins.scale_w.is_none();
        }
        Some("resolution") => {
            ins.resolution_w = watts(cx, c, "a resolution", "resolution 0.1 W");
            ins.broken |= ins.resolution_w.is_none();
        }
        Some("band") => {
            if let Some(v) = c.need(cx, "a range follows", "band 1.8 MHz to 500 MHz") {
                ins.band = frequency_range(cx, &v, "an instrument's band");
            }
        }
        Some("calibrated") => match c.date(cx) {
            Some(d) => {
                dates.calibrated = Some(cx.loc(s.head_span()));
                ins.calibrated = Some(d);
            }
            None => missing(cx, c, "a date follows", "calibrated 2026-01-10"),
        },
        Some("due") => match c.date(cx) {
            Some(d) => {
                dates.due = Some(cx.loc(s.head_span()));
                ins.due = Some(d);
            }
            None => missing(cx, c, "a date follows", "due 2028-01-10"),
        },
        Some("certificate") => {
            if !c.eat(cx, "from") {
                missing(
                    cx,
                    c,
                    "`from` and the file follow",
                    "certificate from \"w1-2026.csv\"",
                );
            } else if let Some(n) = super::session::file(cx, c, "w1-2026.csv") {
                let mut all = core::mem::take(&mut ins.certificates).into_vec();
                all.push(n);
                ins.certificates = all.into();
            }
        }
        Some("recalled") => {
            ins.recalled = super::recalled::recalled(cx, c, true);
            ins.broken |= ins.recalled.is_none();
        }
        Some("linearity") => return linearity(cx, c, ins),
        Some("repeatability") => return repeatability(cx, c, ins),
        Some("directivity") => {
            if let Some(v) = c.need(cx, "a ratio follows", "directivity 40 dB") {
                let v = cx.alone(&v, "a directivity");
                ins.directivity_db = cx
                    .positive(&v, Dim::Decibel, "a directivity", "40 dB")
                    .map(|m| m.value);
            }
        }
        Some("source") => {
            if c.string(cx).is_none() {
                missing(
                    cx,
                    c,
                    "the document follows in quotes",
                    "source \"certificate 4711\"",
                );
            }
        }
        Some(w) => {
            ins.broken |= meant(w, &["accuracy", "linearity", "repeatability"]);
            unknown_statement(cx, s, w, Context::Instrument);
            return false;
        }
        None => {
            no_keyword(cx, s, Context::Instrument);
            return false;
        }
    }
    true
}

/// A power without uncertainty, W.
fn watts<'a>(cx: &mut Cx<'a>, c: &mut Cur<'a>, what: &str, example: &str) -> Option<f64> {
    let v = c.need(cx, "a power follows", example)?;
    let v = cx.alone(&v, what);
    let power = example.split_once(' ').map_or(example, |(_, power)| power);
    cx.power(&v, what, power).map(|m| m.value)
}

/// `linearity 1 %`, of the reading or of full scale.
fn linearity<'a>(cx: &mut Cx<'a>, c: &mut Cur<'a>, ins: &mut Instrument) -> bool {
    const EXAMPLE: &str = "linearity 1 %";
    const OF_SCALE: &str = "linearity 1 % of full scale";
    let Some(v) = share(cx, c, "linearity", EXAMPLE, &mut ins.linearity) else {
        ins.broken = true;
        return true;
    };
    ins.broken |= ins.linearity.is_none();
    if !c.eat(cx, "of") {
        return true;
    }
    if !c.eat(cx, "full") {
        return of_reading(cx, c, "linearity", EXAMPLE, &["reading", "full scale"]);
    }
    let scale = c.eat(cx, "scale");
    if !scale {
        missing(cx, c, "`full` is followed by `scale`", OF_SCALE);
    }
    ins.broken |= !scale || v.q.dim != Dim::Percent;
    ins.linearity_of_scale = true;
    if v.q.dim == Dim::Decibel {
        cx.wrong_kind(&v, &[Dim::Percent], "a share of full scale", OF_SCALE);
    }
    true
}

/// `repeatability 1 %`, of the reading.
fn repeatability<'a>(cx: &mut Cx<'a>, c: &mut Cur<'a>, ins: &mut Instrument) -> bool {
    const EXAMPLE: &str = "repeatability 1 %";
    if share(cx, c, "repeatability", EXAMPLE, &mut ins.repeatability).is_none() {
        ins.broken = true;
        return true;
    }
    ins.broken |= ins.repeatability.is_none();
    !c.eat(cx, "of") || of_reading(cx, c, "repeatability", EXAMPLE, &["reading"])
}

/// The share that is written, and into `u` the standard uncertainty it means.
fn share<'a>(
    cx: &mut Cx<'a>,
    c: &mut Cur<'a>,
    what: &str,
    example: &str,
    u: &mut Option<f64>,
) -> Option<Val> {
    let v = c.need(cx, "a share of the reading follows", example)?;
    *u = spread(cx, &v, what, example);
    Some(v)
}

/// `reading` after `of`, which a share may say.
fn of_reading<'a>(
    cx: &mut Cx<'a>,
    c: &mut Cur<'a>,
    what: &str,
    example: &str,
    words: &[&str],
) -> bool {
    if c.eat(cx, "reading") {
        return true;
    }
    if c.done() {
        missing(cx, c, "`of` is followed by `reading`", example);
    }
    c.unexpected(cx, &format!("the {what}"), words);
    false
}

/// Points out a calibration that would be due before it was made. Of two dates that differ in
/// detail the common part counts.
fn due_before(cx: &mut Cx<'_>, i: &Instrument, made: Loc, due: Loc) {
    let (Some(from), Some(to)) = (&i.calibrated, &i.due) else {
        return;
    };
    let n = from.len().min(to.len());
    if to.get(..n) >= from.get(..n) {
        return;
    }
    cx.push(
        Diagnostic::new(
            &codes::IMPOSSIBLE_VALUE,
            due,
            format!("The next calibration is due on {to}, before the last one on {from}."),
        )
        .at("before the last one")
        .also(made, "the last one")
        .help("Correct one of the two dates."),
    );
}

/// Standard uncertainty of one reading, relative, from a share: a half-width (rectangular), or
/// with `k` an expanded uncertainty.
fn spread(cx: &mut Cx<'_>, v: &Val, what: &str, example: &str) -> Option<f64> {
    let k = v.coverage;
    let v = &cx.alone(
        &Val {
            coverage: None,
            ..*v
        },
        &format!("the {what}"),
    );
    let standard = |half: f64| k.map_or(half / libm::sqrt(3.0), |k| half / k);
    match v.q.dim {
        Dim::Percent => Some(standard(v.q.value.abs())),
        Dim::Decibel => Some(standard(v.q.value.abs()) / downlead_quantity::DB_PER_RELATIVE),
        _ => {
            cx.wrong_kind(
                v,
                &[Dim::Percent, Dim::Decibel],
                &format!("the {what}"),
                example,
            );
            None
        }
    }
}

fn accuracy<'a>(cx: &mut Cx<'a>, c: &mut Cur<'a>, v: &Val) -> Option<Accuracy> {
    // `5 %` alone is a half-width (rectangular); `5 % k 2` an expanded uncertainty
    let k = v.coverage;
    let v = &cx.alone(
        &Val {
            coverage: None,
            ..*v
        },
        "an accuracy",
    );
    let standard = |half: f64| k.map_or(half / libm::sqrt(3.0), |k| half / k);
    if v.q.dim == Dim::Decibel {
        return Some(Accuracy::Decibel(standard(v.q.value.abs())));
    }
    if v.q.dim != Dim::Percent {
        cx.wrong_kind(
            v,
            &[Dim::Percent, Dim::Decibel],
            "an accuracy",
            "5 % of reading",
        );
        return None;
    }
    let u = standard(v.q.value.abs());
    let begin = v.loc.span.end;
    let mut end = begin;
    if c.eat(cx, "of") {
        if c.eat(cx, "reading") {
            return Some(Accuracy::OfReading(u));
        }
        if c.eat(cx, "full") && c.eat(cx, "scale") {
            return Some(Accuracy::OfFullScale(u));
        }
        c.i = c.atoms.len();
        end = c.next_span().end;
    }
    // what is written of it is replaced
    let end = downlead_base::Loc::new(v.loc.item, downlead_base::Span::new(begin, end));
    cx.push(
        Diagnostic::new(
            &codes::ACCURACY_KIND_MISSING,
            v.loc,
            "5 % of what? Of the reading it is ±5 % everywhere; of full scale it is ±20 % at a quarter of the scale.".replacen(
                "5 %",
                &format!("{} %", downlead_quantity::number(v.q.value * 100.0, 3)),
                1,
            ),
        )
        .at("of reading or of full scale?")
        .fix("write `of reading`", end, " of reading")
        .fix("write `of full scale`", end, " of full scale"),
    );
    None
}
