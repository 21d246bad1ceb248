//! Reading typed values out of statements: the cursor over a group of atoms, and the
//! checks of unit and kind with their messages.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_quantity::{
    ArithError, DB_PER_RELATIVE, Dim, Measure, Quantity, Shape, Tolerance, UnitId, dbm_to_w,
    from_db, number, power, similar_units, to_db, unit, units_of, w_to_dbm,
};
use downlead_syntax::{Atom, AtomKind, BinOp, Expr, ExprKind, Item, Stmt};
use rustc_hash::FxHashMap;

use crate::model::Name;

/// Named values of a scope, evaluated.
pub type Lets = FxHashMap<Box<str>, Val>;

/// A value as evaluated: kind, tolerance and upper end still apart.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Val {
    /// Nominal, or the lower end of an interval.
    pub q: Quantity,
    /// Half-width and shape of a `±`.
    pub half: Option<(Quantity, Shape)>,
    /// Upper end of `a to b`.
    pub upper: Option<Quantity>,
    /// Where.
    pub loc: Loc,
    /// Unit of a plain number, for messages and fixes.
    pub unit: Option<UnitId>,
    /// Place of the unit of a plain number (empty behind the number when it has none).
    pub unit_loc: Loc,
    /// Whether any number in it was written in feet, inches or yards.
    pub imperial: bool,
    /// The law of `per sqrt(GHz)`.
    pub per: Option<Loc>,
    /// The number after `k`, also without `±` (`accuracy 4 % k 2`).
    pub coverage: Option<f64>,
}

impl Val {
    /// The nominal value: the middle of an interval.
    #[must_use]
    pub fn middle(&self) -> Quantity {
        match self.upper {
            Some(u) => Quantity {
                value: 0.5 * (self.q.value + u.value),
                dim: self.q.dim,
            },
            None => self.q,
        }
    }

    /// Standard uncertainty in the base unit of its kind.
    #[must_use]
    pub fn standard(&self) -> f64 {
        if let Some(u) = self.upper {
            return Measure::interval(self.q.value, u.value).u;
        }
        let Some((h, shape)) = self.half else {
            return 0.0;
        };
        let half_width = match h.dim {
            Dim::Percent if self.q.dim != Dim::Percent => h.value * self.q.value.abs(),
            Dim::Decibel if self.q.dim == Dim::Power => h.value / DB_PER_RELATIVE * self.q.value,
            _ => h.value,
        };
        Tolerance { half_width, shape }.standard()
    }
}

/// What lowering an item needs and gathers.
pub(crate) struct Cx<'a> {
    pub(crate) item: &'a Item,
    pub(crate) lets: &'a Lets,
    pub(crate) diags: Vec<Diagnostic>,
    /// Other files the item names, see [`crate::Lowered::files`].
    pub(crate) files: Vec<Name>,
    pub(crate) built_in: bool,
}

impl<'a> Cx<'a> {
    pub(crate) fn loc(&self, span: Span) -> Loc {
        Loc::new(self.item.id, span)
    }

    pub(crate) fn text(&self, span: Span) -> &'a str {
        self.item.text().get(span.range()).unwrap_or("")
    }

    pub(crate) fn push(&mut self, d: Diagnostic) {
        self.diags.push(d);
    }

    pub(crate) fn name_at(&self, span: Span) -> Name {
        Name {
            text: self.text(span).into(),
            loc: self.loc(span),
        }
    }

    // ----- evaluation of expressions ---------------------------------------------------

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
                let a = self.expr(left)?;
                let b = self.expr(right)?;
                let r = match op {
                    BinOp::Add => a.add(b),
                    BinOp::Sub => a.sub(b),
                    BinOp::Mul => a.mul(b),
                    BinOp::Div => a.div(b),
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
                let mut half = None;
                if let Some((tol, k)) = view.tolerance() {
                    let mut t = self.expr(tol)?;
                    if let (Some(u), ..) = self.unit_facts(tol) {
                        // a tolerance is a difference: the zero point of °F or dBW must not enter
                        t.value -= unit(u).to_base(0.0);
                    }
                    let shape = match k {
                        Some(k) if k > 0.0 => Shape::Coverage(k),
                        Some(_) => {
                            let loc = self.loc(view.span());
                            self.push(
                                Diagnostic::new(&codes::IMPOSSIBLE_VALUE, loc, "The coverage factor k must be above zero.")
                                    .help("Write `k 2` for an expanded uncertainty, `k 1` for a standard one."),
                            );
                            return None;
                        }
                        None => Shape::Rectangular,
                    };
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
                let upper = match view.upper() {
                    Some(u) => Some(self.expr(u)?),
                    None => None,
                };
                if half.is_none() && upper.is_none() {
                    // named values bring their own doubt into what is made of them
                    let u = self.doubt(view.expr());
                    if u > 0.0 {
                        half = Some((
                            Quantity {
                                value: u,
                                dim: q.dim,
                            },
                            Shape::Coverage(1.0),
                        ));
                    }
                }
                let (unit_id, unit_loc, imperial) = self.unit_facts(view.expr());
                Some(Val {
                    q,
                    half,
                    upper,
                    loc: self.loc(view.span()),
                    unit: unit_id,
                    unit_loc,
                    imperial,
                    per,
                    coverage: view.coverage(),
                })
            }
            _ => None,
        }
    }

    /// Standard uncertainty of an expression in the base unit of its kind: named values as
    /// independent of each other, each use of one as fully correlated with itself (GUM, JCGM
    /// 100:2008, 5.1.2, with the sensitivities of sum and product).
    fn doubt(&self, e: Expr<'a>) -> f64 {
        let mut terms = Vec::new();
        self.sensitivities(e, 1.0, &mut terms);
        let mut sum = 0.0;
        while let Some((name, mut c)) = terms.pop() {
            terms.retain(|(n, more)| {
                let same = *n == name;
                c += if same { *more } else { 0.0 };
                !same
            });
            let u = self.lets.get(name).map_or(0.0, Val::standard);
            sum += c * c * u * u;
        }
        libm::sqrt(sum)
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
                    BinOp::Div => (1.0 / b, -a / (b * b)),
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
                    BinOp::Div => a / b,
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

    /// The value of the two sides of `K1 + K2`, whose kinds differ; or of a single term.
    pub(crate) fn two_terms(
        &mut self,
        stmt: Stmt<'a>,
        atom: &Atom,
    ) -> Option<Vec<(Quantity, Loc)>> {
        let view = stmt.value(*atom)?;
        let mut out = Vec::new();
        if let ExprKind::Binary(BinOp::Add, left, right) = view.expr().kind() {
            let (ll, rl) = (self.loc(left.span()), self.loc(right.span()));
            out.push((self.expr(left)?, ll));
            out.push((self.expr(right)?, rl));
        } else {
            let l = self.loc(view.span());
            out.push((self.expr(view.expr())?, l));
        }
        Some(out)
    }

    // ----- kinds -----------------------------------------------------------------------

    /// Says that `v` is not what stands here. `what` is "a run's length", `example` "46 m".
    pub(crate) fn wrong_kind(&mut self, v: &Val, want: &[Dim], what: &str, example: &str) {
        let got = v.q.dim;
        if got == Dim::Count && v.unit.is_none() {
            if self.misspelt_unit(v, want) {
                return;
            }
            let n = number(v.q.value, 6);
            let mut d = Diagnostic::new(
                &codes::MISSING_UNIT,
                v.loc,
                format!("{n} has no unit; {what} needs one."),
            )
            .at("no unit")
            .help(format!("Written for example `{example}`."));
            let units: Vec<&str> = want
                .iter()
                .flat_map(|w| units_of(*w))
                .map(downlead_quantity::Unit::symbol)
                .take(6)
                .collect();
            for u in units.iter().take(4) {
                d = d.fix(format!("write `{n} {u}`"), v.unit_loc, format!(" {u}"));
            }
            if units.len() > 1 {
                d = d.help(format!("Units that fit here: {}.", units.join(", ")));
            }
            self.push(d);
            return;
        }
        if matches!(got, Dim::GainDipole | Dim::GainIsotropic) && want.contains(&Dim::Decibel) {
            let d = Diagnostic::new(
                &codes::REFERENCE_ON_LOSS,
                v.loc,
                format!(
                    "{what} is plain dB; dBi and dBd compare an antenna with a reference antenna.",
                    what = capital(what)
                ),
            )
            .at("a reference belongs to antenna gains only")
            .fix("write plain dB", v.unit_loc, "dB")
            .preferred();
            self.push(d);
            return;
        }
        if got == Dim::Decibel
            && want
                .iter()
                .any(|w| matches!(w, Dim::GainDipole | Dim::GainIsotropic))
        {
            self.gain_without_reference(v);
            return;
        }
        self.push(
            Diagnostic::new(
                &codes::WRONG_UNIT,
                v.loc,
                format!("{} stands where {what} belongs.", capital(got.noun())),
            )
            .at(format!("this is {}", got.noun()))
            .help(format!("Written for example `{example}`.")),
        );
    }

    /// A word right behind a bare number that nothing else explains is meant as its unit.
    fn misspelt_unit(&mut self, v: &Val, want: &[Dim]) -> bool {
        let end = v.unit_loc.span.end;
        let rest = self.item.text().get(end as usize..).unwrap_or("");
        let blanks = rest.len() - rest.trim_start_matches([' ', '\t']).len();
        let word: &str = rest[blanks..]
            .split(|c: char| !(c.is_alphanumeric() || "°µμΩ%/".contains(c)))
            .next()
            .unwrap_or("");
        if word.is_empty() || crate::keywords::WORDS.contains(&word) || self.lets.contains_key(word)
        {
            return false;
        }
        let start = end + u32::try_from(blanks).unwrap_or(0);
        let loc = self.loc(Span::new(
            start,
            start + u32::try_from(word.len()).unwrap_or(0),
        ));
        let fitting: Vec<&str> = want
            .iter()
            .flat_map(|w| units_of(*w))
            .map(downlead_quantity::Unit::symbol)
            .collect();
        let near = similar_units(word);
        let near = near
            .iter()
            .find(|u| fitting.contains(u))
            .or(near.first())
            .copied();
        let mut d = Diagnostic::new(&codes::UNKNOWN_UNIT, loc, format!("`{word}` is no unit."))
            .at("not known");
        d = match near {
            Some(u) => d
                .help(format!("Did you mean `{u}`?"))
                .fix(format!("write `{u}`"), loc, u)
                .preferred(),
            None => d.help(format!("Units that fit here: {}.", fitting.join(", "))),
        };
        self.push(d);
        true
    }

    fn gain_without_reference(&mut self, v: &Val) {
        let n = number(v.q.value, 3);
        let d = Diagnostic::new(
            &codes::GAIN_WITHOUT_REFERENCE,
            v.loc,
            format!(
                "{n} dB of antenna gain over what? {n} dBi and {n} dBd differ by 2.15 dB, a factor of 1.64 in radiated power."
            ),
        )
        .at("no reference")
        .help(format!("Write `{n} dBi` (over isotropic) or `{n} dBd` (over a half-wave dipole), as the sheet says."))
        .fix(format!("write `{n} dBi`"), v.unit_loc, "dBi")
        .fix(format!("write `{n} dBd`"), v.unit_loc, "dBd");
        self.push(d);
    }

    /// Value and standard uncertainty in the base unit of `dim`; says what is wrong otherwise.
    pub(crate) fn measure(
        &mut self,
        v: &Val,
        dim: Dim,
        what: &str,
        example: &str,
    ) -> Option<Measure> {
        if v.q.dim != dim {
            self.wrong_kind(v, &[dim], what, example);
            return None;
        }
        if let Some(law) = v.per {
            self.push(
                Diagnostic::new(&codes::UNEXPECTED_WORD, law, format!("{} does not follow a law of frequency.", capital(what)))
                    .at("no law stands here")
                .help("A connector's loss is stated at one frequency, `loss 0.05 dB at 1 GHz`, and grows with its root."),
            );
            return None;
        }
        if let Some(up) = v.upper {
            if up.dim != dim {
                self.wrong_kind(
                    &Val {
                        q: up,
                        upper: None,
                        half: None,
                        ..*v
                    },
                    &[dim],
                    what,
                    example,
                );
                return None;
            }
            return Some(Measure::interval(v.q.value, up.value));
        }
        let u = match v.half {
            None => 0.0,
            Some((h, shape)) => {
                let half_width = match h.dim {
                    d if d == dim => h.value,
                    Dim::Percent if dim != Dim::Temperature => h.value * v.q.value.abs(),
                    Dim::Decibel
                        if matches!(dim, Dim::GainIsotropic | Dim::GainDipole | Dim::Level) =>
                    {
                        h.value
                    }
                    Dim::Count if matches!(dim, Dim::Count) => h.value,
                    _ => {
                        self.tolerance_kind(v, h, dim);
                        return None;
                    }
                };
                Tolerance { half_width, shape }.standard()
            }
        };
        Some(Measure {
            value: v.q.value,
            u,
        })
    }

    fn tolerance_kind(&mut self, v: &Val, h: Quantity, dim: Dim) {
        self.push(
            Diagnostic::new(
                &codes::WRONG_UNIT,
                v.loc,
                format!(
                    "The tolerance is {}, but it belongs to {}.",
                    h.dim.noun(),
                    dim.noun()
                ),
            )
            .at("tolerance does not fit")
            .help("Give it in the unit of the value, or in percent."),
        );
    }

    /// A power in W (dBm is converted) with its standard uncertainty in dB.
    pub(crate) fn power(&mut self, v: &Val, what: &str, example: &str) -> Option<Measure> {
        let Some(w) = v.q.watts() else {
            self.wrong_kind(v, &[Dim::Power, Dim::Level], what, example);
            return None;
        };
        if w <= 0.0 {
            self.push(
                Diagnostic::new(
                    &codes::IMPOSSIBLE_VALUE,
                    v.loc,
                    format!("{} must be above zero.", capital(what)),
                )
                .at("not a power that can flow"),
            );
            return None;
        }
        if let Some(up) = v.upper {
            let Some(w2) = up.watts() else {
                self.wrong_kind(
                    &Val {
                        q: up,
                        upper: None,
                        half: None,
                        ..*v
                    },
                    &[Dim::Power],
                    what,
                    example,
                );
                return None;
            };
            let mid = 0.5 * (w + w2);
            return Some(Measure {
                value: mid,
                u: DB_PER_RELATIVE * 0.5 * (w2 - w).abs() / mid / libm::sqrt(3.0),
            });
        }
        let u = match v.half {
            None => 0.0,
            Some((h, shape)) => {
                let half_width = match h.dim {
                    Dim::Percent => DB_PER_RELATIVE * h.value,
                    Dim::Decibel => h.value,
                    Dim::Power if v.q.dim == Dim::Power => DB_PER_RELATIVE * h.value / w,
                    _ => {
                        self.tolerance_kind(v, h, v.q.dim);
                        return None;
                    }
                };
                Tolerance { half_width, shape }.standard()
            }
        };
        Some(Measure { value: w, u })
    }

    /// A loss in dB, not negative; percent of power lost is converted (second: true).
    pub(crate) fn loss(&mut self, v: &Val, what: &str) -> Option<(Measure, bool)> {
        if v.q.dim == Dim::Percent {
            if !(0.0..1.0).contains(&v.q.value) {
                self.push(
                    Diagnostic::new(
                        &codes::IMPOSSIBLE_VALUE,
                        v.loc,
                        "A loss in percent lies between 0 % and 100 %.",
                    )
                    .at("cannot be"),
                );
                return None;
            }
            let db = -to_db(1.0 - v.q.value);
            let u = match v.half {
                Some((h, shape)) if h.dim == Dim::Percent => Tolerance {
                    half_width: DB_PER_RELATIVE * h.value / (1.0 - v.q.value),
                    shape,
                }
                .standard(),
                Some((h, shape)) if h.dim == Dim::Decibel => Tolerance {
                    half_width: h.value,
                    shape,
                }
                .standard(),
                Some((h, _)) => {
                    self.tolerance_kind(v, h, Dim::Percent);
                    return None;
                }
                None => 0.0,
            };
            return Some((Measure { value: db, u }, true));
        }
        let m = self.measure(v, Dim::Decibel, what, "0.55 dB")?;
        if v.q.value < 0.0 {
            let n = number(-v.q.value, 6);
            let mut d = Diagnostic::new(
                &codes::NEGATIVE_LOSS,
                v.loc,
                format!(
                    "Losses are written as positive dB; -{n} dB of loss would be an amplifier."
                ),
            )
            .at("negative");
            if self.text(v.loc.span).starts_with('-') {
                let sign = Loc::new(
                    v.loc.item,
                    Span::new(v.loc.span.start, v.loc.span.start + 1),
                );
                d = d.fix(format!("write `{n} dB`"), sign, "").preferred();
            }
            self.push(d.help("If it really amplifies, make it an `amplifier` with a gain."));
            return None;
        }
        Some((m, false))
    }

    /// An antenna gain in dBi; second: whether it was written in dBd.
    pub(crate) fn gain(&mut self, v: &Val) -> Option<(Measure, bool)> {
        if v.q.dbi().is_none() {
            self.wrong_kind(
                v,
                &[Dim::GainIsotropic, Dim::GainDipole],
                "an antenna's gain",
                "5.2 dBi",
            );
            return None;
        }
        let dim = v.q.dim;
        let m = self.measure(v, dim, "an antenna's gain", "5.2 dBi")?;
        let shift = if dim == Dim::GainDipole {
            downlead_quantity::DIPOLE_DBI
        } else {
            0.0
        };
        Some((
            Measure {
                value: m.value + shift,
                u: m.u,
            },
            dim == Dim::GainDipole,
        ))
    }

    /// An SWR: a bare number of at least 1.
    pub(crate) fn swr(&mut self, v: &Val) -> Option<Measure> {
        if v.q.dim != Dim::Count {
            self.wrong_kind(v, &[Dim::Count], "an SWR", "swr 1.3");
            return None;
        }
        let m = self.measure(v, Dim::Count, "an SWR", "swr 1.3")?;
        if v.q.value < 1.0 || v.upper.is_some_and(|u| u.value < 1.0) {
            let mut d = Diagnostic::new(
                &codes::SWR_BELOW_ONE,
                v.loc,
                format!(
                    "An SWR is never below 1; {} cannot be.",
                    number(v.q.value, 3)
                ),
            )
            .at("below 1");
            let g = v.q.value;
            if g > 0.0 && g < 1.0 {
                d = d.help(format!(
                    "If it is a reflection coefficient, the SWR is {}.",
                    number((1.0 + g) / (1.0 - g), 2)
                ));
            }
            self.push(d);
            return None;
        }
        Some(m)
    }

    /// A frequency in Hz between 1 kHz and 300 GHz.
    pub(crate) fn frequency(&mut self, v: &Val, what: &str) -> Option<f64> {
        let m = self.measure(v, Dim::Frequency, what, "145.3 MHz")?;
        if !(1e3..=300e9).contains(&m.value) {
            self.push(
                Diagnostic::new(
                    &codes::IMPOSSIBLE_VALUE,
                    v.loc,
                    format!(
                        "{} is no radio frequency this language computes (1 kHz to 300 GHz).",
                        downlead_quantity::frequency(m.value)
                    ),
                )
                .at("kHz, MHz or GHz?"),
            );
            return None;
        }
        Some(m.value)
    }

    /// A positive value of a kind.
    pub(crate) fn positive(
        &mut self,
        v: &Val,
        dim: Dim,
        what: &str,
        example: &str,
    ) -> Option<Measure> {
        let m = self.measure(v, dim, what, example)?;
        if m.value > 0.0 {
            return Some(m);
        }
        self.push(
            Diagnostic::new(
                &codes::IMPOSSIBLE_VALUE,
                v.loc,
                format!("{} must be above zero.", capital(what)),
            )
            .at("zero or negative"),
        );
        None
    }

    /// A temperature in °C that matter on a mast can have.
    pub(crate) fn temperature(&mut self, v: &Val) -> Option<Measure> {
        let m = self.measure(v, Dim::Temperature, "a temperature", "15 °C")?;
        let (lo, hi) = (v.q.value, v.upper.map_or(v.q.value, |u| u.value));
        if lo.min(hi) < -273.15 || lo.max(hi) > 1000.0 {
            self.push(
                Diagnostic::new(
                    &codes::IMPOSSIBLE_VALUE,
                    v.loc,
                    "No cable has this temperature.",
                )
                .at("cannot be"),
            );
            return None;
        }
        if lo.min(hi) < -70.0 || lo.max(hi) > 120.0 {
            let c = if lo.min(hi) < -70.0 {
                lo.min(hi)
            } else {
                lo.max(hi)
            };
            let mut d = Diagnostic::new(
                &codes::TEMPERATURE_UNLIKELY,
                v.loc,
                format!("{} °C is outside what cables see.", number(c, 1)),
            )
            .at("unlikely");
            if v.unit.is_some_and(|u| unit(u).symbol() == "°C") {
                d = d
                    .help(format!(
                        "If °F is meant: {} °F are {} °C.",
                        number(c, 1),
                        number((c - 32.0) / 1.8, 1)
                    ))
                    .fix("write °F", v.unit_loc, "°F");
            }
            self.push(d);
        }
        Some(m)
    }
}

fn participle(op: BinOp) -> &'static str {
    match op {
        BinOp::Add => "added",
        BinOp::Sub => "subtracted",
        BinOp::Mul => "multiplied",
        BinOp::Div => "divided",
    }
}

/// First letter in upper case.
pub(crate) fn capital(s: &str) -> String {
    let mut c = s.chars();
    c.next().map_or_else(String::new, |f| {
        f.to_uppercase().collect::<String>() + c.as_str()
    })
}

/// The nearest of some names, if it is near enough to be meant.
pub fn nearest<'n>(name: &str, all: impl Iterator<Item = &'n str>) -> Option<&'n str> {
    let lower = name.to_lowercase();
    all.filter(|n| !n.is_empty())
        .map(|n| {
            let l = n.to_lowercase();
            // a name that starts alike is meant more often than one of equal edit distance
            let bonus = if l.starts_with(&lower) || lower.starts_with(&l) {
                0.15
            } else {
                0.0
            };
            (
                strsim::normalized_damerau_levenshtein(&lower, &l) + bonus,
                n,
            )
        })
        .filter(|(score, _)| *score >= 0.6)
        .max_by(|a, b| a.0.total_cmp(&b.0).then_with(|| b.1.cmp(a.1)))
        .map(|(_, n)| n)
}

/// A walk over the atoms of one group.
pub(crate) struct Cur<'a> {
    pub(crate) stmt: Stmt<'a>,
    pub(crate) atoms: &'a [Atom],
    pub(crate) i: usize,
}

impl<'a> Cur<'a> {
    pub(crate) fn new(stmt: Stmt<'a>, atoms: &'a [Atom]) -> Self {
        Cur { stmt, atoms, i: 0 }
    }

    pub(crate) fn done(&self) -> bool {
        self.i >= self.atoms.len()
    }

    pub(crate) fn peek(&self) -> Option<&'a Atom> {
        self.atoms.get(self.i)
    }

    pub(crate) fn next_span(&self) -> Span {
        match self.peek() {
            Some(a) => a.span,
            None => {
                let end = self
                    .atoms
                    .last()
                    .map_or(self.stmt.head_span().end, |a| a.span.end);
                Span::new(end, end)
            }
        }
    }

    /// The current word, if it is one.
    pub(crate) fn word(&self, cx: &Cx<'a>) -> Option<&'a str> {
        self.peek()
            .filter(|a| a.kind == AtomKind::Word)
            .map(|a| cx.text(a.span))
    }

    pub(crate) fn eat(&mut self, cx: &Cx<'a>, w: &str) -> bool {
        let hit = self.word(cx) == Some(w);
        self.i += usize::from(hit);
        hit
    }

    /// A name: a word, or a value such as `2m` that is written without blanks.
    pub(crate) fn name(&mut self, cx: &Cx<'a>) -> Option<Name> {
        let a = self.peek()?;
        let text = cx.text(a.span);
        let ok = match a.kind {
            AtomKind::Word => true,
            AtomKind::Value(_) => !text.contains([' ', '\t', '±', '(']),
            _ => false,
        };
        if !ok {
            return None;
        }
        self.i += 1;
        Some(cx.name_at(a.span))
    }

    /// Whether the current atom is a value (or the name of one).
    pub(crate) fn at_value(&self, cx: &Cx<'a>) -> bool {
        match self.peek() {
            Some(a) => match a.kind {
                AtomKind::Value(_) => true,
                AtomKind::Word => cx.lets.contains_key(cx.text(a.span)),
                _ => false,
            },
            None => false,
        }
    }

    /// A value. `None` with no diagnostic if there is none here.
    pub(crate) fn val(&mut self, cx: &mut Cx<'a>) -> Option<Val> {
        if !self.at_value(cx) {
            return None;
        }
        let a = self.peek()?;
        self.i += 1;
        cx.value(self.stmt, a)
    }

    /// The value a line cannot do without; says so if there is none.
    pub(crate) fn need(&mut self, cx: &mut Cx<'a>, what: &str, example: &str) -> Option<Val> {
        let had = cx.diags.len();
        let v = self.val(cx);
        if v.is_none() && cx.diags.len() == had {
            crate::quals::missing(cx, self, what, example);
        }
        v
    }

    pub(crate) fn string(&mut self, cx: &Cx<'a>) -> Option<Box<str>> {
        let a = self.peek().filter(|a| matches!(a.kind, AtomKind::Str))?;
        self.i += 1;
        Some(cx.text(a.span).trim_matches('"').into())
    }

    pub(crate) fn date(&mut self, cx: &Cx<'a>) -> Option<Box<str>> {
        let a = self.peek().filter(|a| matches!(a.kind, AtomKind::Date))?;
        self.i += 1;
        Some(cx.text(a.span).into())
    }

    /// Says that what follows is not understood. `allowed` lists what could stand here.
    pub(crate) fn unexpected(&self, cx: &mut Cx<'a>, in_what: &str, allowed: &[&str]) {
        let Some(a) = self.peek() else { return };
        if matches!(a.kind, AtomKind::Error) {
            return;
        }
        let loc = cx.loc(a.span);
        if cx.diags.iter().any(|d| {
            d.primary.loc.span.touches(loc.span.start) && d.code.id == codes::UNKNOWN_UNIT.id
        }) {
            // said already, as the number's unit
            return;
        }
        let text = cx.text(a.span);
        // a number followed by a word that is nearly a unit is a misspelt unit
        if matches!(a.kind, AtomKind::Word)
            && self.i > 0
            && matches!(self.atoms[self.i - 1].kind, AtomKind::Value(_))
        {
            let near = similar_units(text);
            if let Some(u) = near.first() {
                cx.push(
                    Diagnostic::new(
                        &codes::UNKNOWN_UNIT,
                        loc,
                        format!("`{text}` is no unit; `{u}` is."),
                    )
                    .at("misspelt unit")
                    .fix(format!("write `{u}`"), loc, *u)
                    .preferred(),
                );
                return;
            }
        }
        let mut d = Diagnostic::new(
            &codes::UNEXPECTED_WORD,
            loc,
            format!("`{text}` has no meaning in {in_what}."),
        )
        .at("not understood");
        // a word that has a meaning elsewhere in the line is no slip of the pen
        if let Some(n) = nearest(text, allowed.iter().copied().filter(|w| *w != text)) {
            d = d
                .help(format!("Did you mean `{n}`?"))
                .fix(format!("write `{n}`"), loc, n);
        } else if !allowed.is_empty() {
            d = d.help(format!("What can stand here: {}.", allowed.join(", ")));
        }
        cx.push(d);
    }
}
