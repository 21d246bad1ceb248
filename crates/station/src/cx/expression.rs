//! Expressions: value, uncertainty and written unit.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_quantity::{
    ArithError, Dim, Quantity, Shape, UnitId, dbm_to_w, from_db, number, power, unit, w_to_dbm,
};
use downlead_syntax::{Atom, AtomKind, BinOp, Expr, ExprKind, Stmt};

use super::Cx;
use super::value::Val;
use super::word::{capital, nearest};

impl<'a> Cx<'a> {
    fn expr(&mut self, e: Expr<'a>) -> Option<Quantity> {
        let loc = self.loc(e.span());
        match e.kind() {
            ExprKind::Number(n) => Some(match n.unit {
                Some(u) => Quantity::new(n.value, u),
                None => Quantity::count(n.value),
            }),
            ExprKind::Per(inner, _) => self.expr(inner),
            ExprKind::Name(span) => {
                let name = self.text(span);
                match self.lets.get(name) {
                    Some(v) => Some(v.middle()),
                    None => {
                        let near = nearest(name, self.lets.keys().map(AsRef::as_ref));
                        let mut d = Diagnostic::new(
                            &codes::UNKNOWN_NAME,
                            loc,
                            format!("`{name}` is not a named value here."),
                        )
                        .at("not defined");
                        d = match near {
                            Some(n) => d.help(format!("Did you mean `{n}`?")).fix(
                                format!("write `{n}`"),
                                loc,
                                n,
                            ),
                            None => d.help(format!(
                                "Define it at the left margin: `let {name} = 30 m`."
                            )),
                        };
                        self.push(d);
                        None
                    }
                }
            }
            ExprKind::Neg(inner) => self.expr(inner).map(Quantity::negate),
            ExprKind::Binary(op, left, right) => {
                if op == BinOp::Pow {
                    self.power_outside_a_law(loc);
                    return None;
                }
                if self.plus_minus(op, right) {
                    return None;
                }
                let a = self.expr(left)?;
                let b = self.expr(right)?;
                let r = match op {
                    BinOp::Add => a.add(b),
                    BinOp::Sub => a.sub(b),
                    BinOp::Mul => a.mul(b),
                    BinOp::Div | BinOp::Pow => a.div(b),
                };
                match r {
                    Ok(q) => Some(q),
                    Err(e) => {
                        self.arith_error(e, op, (a, b), loc);
                        None
                    }
                }
            }
        }
    }

    /// `28 m +- 0.5 m`: a sign of uncertainty that would be read as the sum with a negative value.
    fn plus_minus(&mut self, op: BinOp, right: Expr<'a>) -> bool {
        let start = right.span().start;
        let text = self.item.text();
        let signs = start
            .checked_sub(1)
            .and_then(|s| text.get(s as usize..start as usize + 1));
        if op != BinOp::Add || signs != Some("+-") {
            return false;
        }
        let loc = self.loc(Span::new(start - 1, start + 1));
        let at = start as usize + 1;
        let blank = text
            .get(at..)
            .map_or(0, |t| t.len() - t.trim_start_matches(' ').len());
        self.push(
            Diagnostic::new(
                &codes::NOT_UNDERSTOOD,
                loc,
                "`+-` adds a negative value here; an uncertainty is written `±` or `+/-`.",
            )
            .at("not ±")
            .fix("write `±`", loc, if blank == 0 { "± " } else { "±" })
            .preferred(),
        );
        true
    }

    fn power_outside_a_law(&mut self, loc: Loc) {
        self.push(
            Diagnostic::new(
                &codes::UNEXPECTED_WORD,
                loc,
                "A power of a ratio stands in the law of a rule only.",
            )
            .at("`^` has no meaning here")
            .help("Write the product: `0.5 * 0.5` for a square."),
        );
    }

    fn arith_error(&mut self, e: ArithError, op: BinOp, (a, b): (Quantity, Quantity), loc: Loc) {
        let d = match e {
            ArithError::AddLevels => Diagnostic::new(
                &codes::LEVELS_ADDED,
                loc,
                format!(
                    "Two power levels do not add: {} dBm and {} dBm together are {} dBm, not {} dBm.",
                    number(a.value, 2),
                    number(b.value, 2),
                    number(w_to_dbm(dbm_to_w(a.value) + dbm_to_w(b.value)), 2),
                    number(a.value + b.value, 2)
                ),
            )
            .at("both are absolute powers")
            .help("Write the powers in watts and add those, or add a gain or loss in plain dB."),
            ArithError::PowerTimesDecibel => {
                let (w, db) = if a.dim == Dim::Decibel { (b.value, a.value) } else { (a.value, b.value) };
                let gain = if op == BinOp::Div { -db } else { db };
                Diagnostic::new(
                    &codes::POWER_TIMES_DECIBEL,
                    loc,
                    format!(
                        "A power is not {} by decibels: {} dB is a factor of {}, which makes {} of {}.",
                        participle(op),
                        number(gain, 2),
                        number(from_db(gain), 3),
                        power(w * from_db(gain)),
                        power(w)
                    ),
                )
            }
            .at("W and dB have no product")
            .help("Put the part into the chain with its loss or gain in dB, and let the chain do the sum."),
            ArithError::Mismatch(a, b) => Diagnostic::new(
                &codes::WRONG_UNIT,
                loc,
                format!("{} and {} cannot be {}.", capital(a.noun()), b.noun(), participle(op)),
            )
            .at("kinds do not fit"),
            ArithError::NotFinite => Diagnostic::new(&codes::NOT_A_NUMBER, loc, "This comes to no finite number.")
                .at("division by zero, or too large"),
        };
        self.push(d);
    }

    pub(crate) fn value(&mut self, stmt: Stmt<'a>, atom: &Atom) -> Option<Val> {
        match atom.kind {
            AtomKind::Word => {
                let name = self.text(atom.span);
                let v = self.lets.get(name)?;
                let loc = self.loc(atom.span);
                let end = self.loc(Span::new(atom.span.end, atom.span.end));
                Some(Val {
                    loc,
                    unit: None,
                    unit_loc: end,
                    ..*v
                })
            }
            AtomKind::Value(_) => {
                let view = stmt.value(*atom)?;
                let per = match view.expr().kind() {
                    ExprKind::Per(_, law) => Some(self.loc(law)),
                    _ => None,
                };
                let q = self.expr(view.expr())?;
                if view.coverage().is_some_and(|k| k <= 0.0) {
                    let loc = self.loc(view.span());
                    self.push(
                        Diagnostic::new(
                            &codes::IMPOSSIBLE_VALUE,
                            loc,
                            "The coverage factor k must be above zero.",
                        )
                        .help("Write `k 2` for an expanded uncertainty, `k 1` for a standard one."),
                    );
                    return None;
                }
                let mut half = None;
                if let Some((tol, k)) = view.tolerance() {
                    let mut t = self.expr(tol)?;
                    if let (Some(u), ..) = self.unit_facts(tol) {
                        // a tolerance is a difference: the zero point of °F or dBW must not enter
                        t.value -= unit(u).to_base(0.0);
                    }
                    let shape = k.map_or(Shape::Rectangular, Shape::Coverage);
                    if t.value < 0.0 {
                        let loc = self.loc(tol.span());
                        self.push(
                            Diagnostic::new(
                                &codes::IMPOSSIBLE_VALUE,
                                loc,
                                "A tolerance is a half-width and cannot be negative.",
                            )
                            .at("negative"),
                        );
                        return None;
                    }
                    half = Some((t, shape));
                }
                let mut q = q;
                let upper = match view.upper() {
                    Some(u) => {
                        let mut upper = self.expr(u)?;
                        // bands and other ranges of frequency say it themselves
                        if upper.dim == q.dim && upper.value < q.value && q.dim != Dim::Frequency {
                            self.wrong_way_round(view.span(), view.expr().span(), u.span());
                            std::mem::swap(&mut q, &mut upper);
                        }
                        Some(upper)
                    }
                    None => None,
                };
                let plain = self.operand(view.expr(), q, view.span());
                if upper.is_some()
                    && (plain.half.is_some()
                        || view.upper().is_some_and(|u| self.inherited(u).is_some()))
                {
                    self.push(
                        Diagnostic::new(
                            &codes::UNCERTAINTY_NOT_USED,
                            plain.loc,
                            "The ends of an interval have no ± of their own; a named value brings one in here.",
                        )
                        .at("not used")
                        .help("Write the ends as figures."),
                    );
                }
                Some(Val {
                    q,
                    half: match half {
                        Some(own) => Some(self.both(q, own, &plain)),
                        None => plain.half.filter(|_| upper.is_none()),
                    },
                    upper,
                    per,
                    coverage: view.coverage(),
                    ..plain
                })
            }
            _ => None,
        }
    }

    /// An expression whose value `q` is, with the uncertainty that named values bring into it.
    fn operand(&self, e: Expr<'a>, q: Quantity, span: Span) -> Val {
        let half = self.inherited(e).map(|(value, shape)| {
            // how far a level may be off is no level
            let dim = match q.dim {
                Dim::Level | Dim::SidebandNoise => Dim::Decibel,
                d => d,
            };
            (Quantity { value, dim }, shape)
        });
        let (unit, unit_loc, imperial) = self.unit_facts(e);
        Val {
            q,
            half,
            upper: None,
            loc: self.loc(span),
            unit,
            unit_loc,
            imperial,
            per: None,
            coverage: None,
        }
    }

    /// The `±` of an expression and that of the named values in it, as independent of each other.
    fn both(&self, q: Quantity, own: (Quantity, Shape), of_names: &Val) -> (Quantity, Shape) {
        let Some((Quantity { dim, .. }, _)) = of_names.half else {
            return own;
        };
        let stated = Val {
            q,
            half: Some(own),
            ..*of_names
        };
        let value = libm::hypot(stated.standard(), of_names.standard());
        (Quantity { value, dim }, Shape::Coverage(1.0))
    }

    fn wrong_way_round(&mut self, all: Span, low: Span, high: Span) {
        let (low, high) = (self.text(low), self.text(high));
        let loc = self.loc(all);
        self.push(
            Diagnostic::new(
                &codes::IMPOSSIBLE_VALUE,
                loc,
                "An interval runs from the lower to the higher value.",
            )
            .at("the wrong way round")
            .fix(
                format!("write `{high} to {low}`"),
                loc,
                format!("{high} to {low}"),
            )
            .preferred(),
        );
    }

    /// Half-width and shape that named values bring into an expression, in the base unit of its
    /// kind: named values as independent of each other, each use of one as fully correlated with
    /// itself (GUM, JCGM 100:2008, 5.1.2, with the sensitivities of sum and product). What one
    /// named value brings alone keeps its shape.
    fn inherited(&self, e: Expr<'a>) -> Option<(f64, Shape)> {
        let mut terms = Vec::new();
        self.sensitivities(e, 1.0, &mut terms);
        let (mut sum, mut of) = (0.0, Vec::new());
        while let Some((name, mut c)) = terms.pop() {
            terms.retain(|(n, more)| {
                let same = *n == name;
                c += if same { *more } else { 0.0 };
                !same
            });
            if let Some(v) = self.lets.get(name) {
                let u = c * v.standard();
                sum += u * u;
                if u != 0.0 {
                    of.push(v.is_rectangular());
                }
            }
        }
        let u = libm::sqrt(sum);
        match of[..] {
            [] => None,
            [true] => Some((u * libm::sqrt(3.0), Shape::Rectangular)),
            _ => Some((u, Shape::Coverage(1.0))),
        }
    }

    /// How much the expression changes with each named value in it, times `factor`.
    fn sensitivities(&self, e: Expr<'a>, factor: f64, out: &mut Vec<(&'a str, f64)>) {
        match e.kind() {
            ExprKind::Number(_) => {}
            ExprKind::Name(span) => out.push((self.text(span), factor)),
            ExprKind::Per(x, _) => self.sensitivities(x, factor, out),
            ExprKind::Neg(x) => self.sensitivities(x, -factor, out),
            ExprKind::Binary(op, l, r) => {
                let (a, b) = (self.plain(l), self.plain(r));
                let (fl, fr) = match op {
                    BinOp::Add => (1.0, 1.0),
                    BinOp::Sub => (1.0, -1.0),
                    BinOp::Mul => (b, a),
                    BinOp::Div | BinOp::Pow => (1.0 / b, -a / (b * b)),
                };
                self.sensitivities(l, factor * fl, out);
                self.sensitivities(r, factor * fr, out);
            }
        }
    }

    /// The value of an expression that is known to have one.
    fn plain(&self, e: Expr<'a>) -> f64 {
        match e.kind() {
            ExprKind::Number(n) => n.unit.map_or(n.value, |u| unit(u).to_base(n.value)),
            ExprKind::Name(span) => self
                .lets
                .get(self.text(span))
                .map_or(0.0, |v| v.middle().value),
            ExprKind::Per(x, _) => self.plain(x),
            ExprKind::Neg(x) => -self.plain(x),
            ExprKind::Binary(op, l, r) => {
                let (a, b) = (self.plain(l), self.plain(r));
                match op {
                    BinOp::Add => a + b,
                    BinOp::Sub => a - b,
                    BinOp::Mul => a * b,
                    BinOp::Div | BinOp::Pow => a / b,
                }
            }
        }
    }

    fn unit_facts(&self, e: Expr<'a>) -> (Option<UnitId>, Loc, bool) {
        match e.kind() {
            ExprKind::Number(n) => {
                let imperial = n
                    .unit
                    .is_some_and(|u| matches!(unit(u).symbol(), "ft" | "in" | "yd"));
                (n.unit, self.loc(n.unit_span), imperial)
            }
            ExprKind::Neg(x) | ExprKind::Per(x, _) => self.unit_facts(x),
            ExprKind::Binary(_, left, right) => {
                let (_, l, a) = self.unit_facts(left);
                let (_, _, b) = self.unit_facts(right);
                (None, l, a || b)
            }
            ExprKind::Name(span) => (None, self.loc(Span::new(span.end, span.end)), false),
        }
    }

    /// The two sides of `K1 + K2`, whose kinds differ, or a single term; and the `±` that belongs
    /// to their sum.
    pub(crate) fn two_terms(
        &mut self,
        stmt: Stmt<'a>,
        atom: &Atom,
    ) -> Option<(Vec<Val>, Option<Val>)> {
        let Some(view) = stmt.value(*atom) else {
            return Some((vec![self.value(stmt, atom)?], None));
        };
        let ExprKind::Binary(BinOp::Add, left, right) = view.expr().kind() else {
            return Some((vec![self.value(stmt, atom)?], None));
        };
        let mut terms = Vec::new();
        for side in [left, right] {
            let q = self.expr(side)?;
            terms.push(self.operand(side, q, side.span()));
        }
        let whole = Val {
            // the kind of neither side
            half: match view.tolerance() {
                Some((t, k)) => {
                    Some((self.expr(t)?, k.map_or(Shape::Rectangular, Shape::Coverage)))
                }
                None => None,
            },
            upper: match view.upper() {
                Some(u) => Some(self.expr(u)?),
                None => None,
            },
            loc: self.loc(view.span()),
            coverage: view.coverage(),
            ..*terms.first()?
        };
        let stated = whole.half.is_some() || whole.upper.is_some() || whole.coverage.is_some();
        Some((terms, stated.then_some(whole)))
    }
}

fn participle(op: BinOp) -> &'static str {
    match op {
        BinOp::Add => "added",
        BinOp::Sub => "subtracted",
        BinOp::Mul => "multiplied",
        BinOp::Div | BinOp::Pow => "divided",
    }
}
