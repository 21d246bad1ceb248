//! The law of a clause: a power times ratios to a power, checked by units.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::{Dim, Quantity};
use downlead_syntax::{Atom, AtomKind, BinOp, Expr, ExprKind, Stmt};

use crate::cx::Cx;
use crate::model::{Factor, Field, Law, Variable};

/// What a term of a law is.
enum Term {
    /// A power, W, or a field, with its kind.
    Base(f64, Dim),
    /// A plain number.
    Number(f64),
    /// Ratios with a variable.
    Factors(Vec<Factor>),
}

/// How a law is written, for messages.
const WRITTEN: &str = "50 W * (7 m / haat)^2";
const OF_FIELD: &str = "2 W/m2 * (frequency / 300 MHz)";
const OF_ROOT: &str = "1.375 V/m * (frequency / 1 MHz)^0.5";

/// The law of a power that a value of a clause is; says what is wrong otherwise.
pub(super) fn law<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, atom: &Atom) -> Option<Law> {
    let (law, dim) = any_law(cx, stmt, atom)?;
    if dim != Dim::Power {
        wrong(
            cx,
            law.loc,
            &format!("{} is no power.", crate::cx::capital(dim.noun())),
        );
        return None;
    }
    Some(law)
}

/// The law of a power or of a field, with its kind.
pub(super) fn any_law<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, atom: &Atom) -> Option<(Law, Dim)> {
    let loc = cx.loc(atom.span);
    if let AtomKind::Value(_) = atom.kind
        && let Some(view) = stmt.value(*atom)
        && view.upper().is_none()
        && view.tolerance().is_none()
        && matches!(
            view.expr().kind(),
            ExprKind::Binary(BinOp::Mul | BinOp::Div, ..)
        )
        && has_variable(cx, view.expr())
    {
        let mut watts: Option<(f64, Dim)> = None;
        let mut scale = 1.0;
        let mut factors = Vec::new();
        for (e, inverse) in terms(view.expr()) {
            match term(cx, e)? {
                Term::Base(w, dim) if watts.is_none() && !inverse => watts = Some((w, dim)),
                Term::Base(..) => {
                    wrong(
                        cx,
                        cx.loc(e.span()),
                        "A law has one power, and ratios after it.",
                    );
                    return None;
                }
                Term::Number(n) => scale *= if inverse { 1.0 / n } else { n },
                Term::Factors(f) => factors.extend(f.into_iter().map(|f| Factor {
                    exponent: if inverse { -f.exponent } else { f.exponent },
                    ..f
                })),
            }
        }
        let Some((watts, dim)) = watts else {
            wrong(cx, loc, "This law has no power in it.");
            return None;
        };
        let watts = watts * scale;
        if !(watts.is_finite() && watts > 0.0) {
            wrong(cx, loc, "This law gives no power above zero.");
            return None;
        }
        return Some((
            Law {
                watts,
                factors: factors.into(),
                loc,
            },
            dim,
        ));
    }
    let v = cx.value(stmt, atom)?;
    // what comes after the operator could not be read, and that is said
    if stmt.is_broken() && v.q.dim == Dim::Count {
        return None;
    }
    if let (Some(root), Some(_)) = (v.per, Field::of(v.q.dim)) {
        wrong(cx, root, "A limit of a field does not fall `per` root.");
        return None;
    }
    let v = cx.alone(&v, "a limit");
    let (watts, dim) = match Field::of(v.q.dim) {
        Some(_) => (
            cx.positive(&v, v.q.dim, "a limit", "2 W/m2")?.value,
            v.q.dim,
        ),
        None => (cx.power(&v, "a limit", "30 W erp")?.value, Dim::Power),
    };
    Some((
        Law {
            watts,
            factors: Box::default(),
            loc,
        },
        dim,
    ))
}

/// The operands of a product, each with whether it is divided by.
fn terms(e: Expr<'_>) -> Vec<(Expr<'_>, bool)> {
    match e.kind() {
        ExprKind::Binary(BinOp::Mul, a, b) => {
            let mut all = terms(a);
            all.extend(terms(b));
            all
        }
        _ => vec![(e, false)],
    }
}

/// Whether a variable stands in it that is no named value.
fn has_variable(cx: &Cx<'_>, e: Expr<'_>) -> bool {
    match e.kind() {
        ExprKind::Name(span) => {
            let name = cx.text(span);
            !cx.lets.contains_key(name)
        }
        ExprKind::Neg(x) | ExprKind::Per(x, _) => has_variable(cx, x),
        ExprKind::Binary(op, a, b) => {
            op == BinOp::Pow || has_variable(cx, a) || has_variable(cx, b)
        }
        ExprKind::Number(_) => false,
    }
}

fn wrong(cx: &mut Cx<'_>, loc: Loc, message: &str) {
    cx.push(
        Diagnostic::new(&codes::RULE_LAW, loc, message)
            .at("not a law")
            .help(format!(
                "A law is a power or a field times ratios to a power, with a variable on one side of each ratio: `{WRITTEN}`, `{OF_FIELD}`, `{OF_ROOT}`; a field is written in W/m2, mW/cm2, V/m or A/m."
            )),
    );
}

/// A plain quantity: a number with its unit.
fn quantity(e: Expr<'_>) -> Option<Quantity> {
    match e.kind() {
        ExprKind::Number(n) => Some(match n.unit {
            Some(u) => Quantity::new(n.value, u),
            None => Quantity::count(n.value),
        }),
        _ => None,
    }
}

fn term<'a>(cx: &mut Cx<'a>, e: Expr<'a>) -> Option<Term> {
    let loc = cx.loc(e.span());
    match e.kind() {
        ExprKind::Number(_) => {
            let q = quantity(e)?;
            if q.dim == Dim::Count {
                return Some(Term::Number(q.value));
            }
            if Field::of(q.dim).is_some() {
                return Some(Term::Base(q.value, q.dim));
            }
            let Some(w) = q.watts() else {
                wrong(
                    cx,
                    loc,
                    &format!("{} is no power.", crate::cx::capital(q.dim.noun())),
                );
                return None;
            };
            Some(Term::Base(w, Dim::Power))
        }
        ExprKind::Binary(BinOp::Pow, base, n) => {
            let Some(exponent) = quantity(n).filter(|n| n.dim == Dim::Count) else {
                wrong(cx, loc, "An exponent is a plain number.");
                return None;
            };
            let exponent = exponent.value;
            match term(cx, base)? {
                Term::Factors(f) => Some(Term::Factors(
                    f.into_iter()
                        .map(|f| Factor {
                            exponent: f.exponent * exponent,
                            ..f
                        })
                        .collect(),
                )),
                Term::Number(x) => Some(Term::Number(libm::pow(x, exponent))),
                Term::Base(..) => {
                    wrong(cx, loc, "A power in watts is not raised to a power.");
                    None
                }
            }
        }
        ExprKind::Binary(BinOp::Div, a, b) => ratio(cx, a, b, loc),
        ExprKind::Name(_) if cx.text(e.span()) == "sqrt" => {
            wrong(cx, loc, "A law has no `sqrt`: a root is the power 0.5.");
            None
        }
        ExprKind::Name(_) => {
            wrong(
                cx,
                loc,
                &format!(
                    "`{}` stands alone here; a ratio has the same unit on both sides.",
                    cx.text(e.span())
                ),
            );
            None
        }
        _ => {
            wrong(cx, loc, "A law has no sums and no signs.");
            None
        }
    }
}

/// `7 m / haat`, `frequency / 1 MHz`, `30 m / 7 m`.
fn ratio<'a>(cx: &mut Cx<'a>, a: Expr<'a>, b: Expr<'a>, loc: Loc) -> Option<Term> {
    let name = |e: Expr<'a>| match e.kind() {
        ExprKind::Name(span) => Some(span),
        _ => None,
    };
    let (span, other, exponent) = match (name(a), name(b)) {
        (Some(v), None) => (v, b, 1.0),
        (None, Some(v)) => (v, a, -1.0),
        (Some(_), Some(_)) => {
            wrong(
                cx,
                loc,
                "Two variables in one ratio: divide each by a value of its unit.",
            );
            return None;
        }
        (None, None) => {
            if let (Some(x), Some(y)) = (quantity(a), quantity(b))
                && x.dim == y.dim
                && y.value != 0.0
            {
                return Some(Term::Number(x.value / y.value));
            }
            wrong(cx, loc, "A ratio has the same unit on both sides.");
            return None;
        }
    };
    let word = cx.text(span);
    let Some(variable) = Variable::from_word(word) else {
        let known: Vec<&str> = Variable::ALL.iter().map(|v| v.word()).collect();
        let at = cx.loc(span);
        let mut d = Diagnostic::new(
            &codes::RULE_LAW,
            at,
            format!("`{word}` is nothing that a law can go by."),
        )
        .at("not known");
        d = match crate::cx::nearest(word, known.iter().copied()) {
            Some(n) => d
                .help(format!("Did you mean `{n}`?"))
                .fix(format!("write `{n}`"), at, n),
            None => d.help(format!("A law goes by {}.", known.join(", "))),
        };
        cx.push(d);
        return None;
    };
    let Some(q) = quantity(other) else {
        wrong(
            cx,
            loc,
            "A variable is divided by one value, or one value by it.",
        );
        return None;
    };
    if q.dim != variable.dim() || q.value <= 0.0 {
        wrong(
            cx,
            loc,
            &format!(
                "`{word}` is {}; here it meets {}.",
                variable.dim().noun(),
                q.dim.noun()
            ),
        );
        return None;
    }
    Some(Term::Factors(vec![Factor {
        variable,
        reference: q.value,
        exponent,
    }]))
}
