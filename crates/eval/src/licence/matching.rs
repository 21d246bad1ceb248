//! Which clauses of a set bear on a transmitter.

use downlead_base::Loc;
use downlead_quantity::Measure;
use downlead_station::Env;
use downlead_station::model::{
    Antenna, BandKind, Clause, Frequencies, Name, PartData, PartKind, RuleSet, Station, Step,
    Under, Variable,
};

use crate::point::{Point, band_matches};
use crate::walk::Stop;

/// What is known at a frequency of a chain.
pub(super) struct Facts<'f> {
    pub(super) hz: f64,
    pub(super) haat: Option<(f64, f64)>,
    pub(super) height: Option<(f64, f64)>,
    pub(super) under: &'f Under,
}

impl Facts<'_> {
    /// Lower and upper end of a variable.
    pub(super) fn known(&self, v: Variable) -> Option<(f64, f64)> {
        match v {
            Variable::Frequency => Some((self.hz, self.hz)),
            Variable::Haat => self.haat,
            Variable::Height => self.height,
            _ => {
                let found = self.under.known.iter().find(|k| k.0 == v);
                found.map(|k| (k.1, k.1))
            }
        }
    }
}

/// Lower and upper end of a figure with its uncertainty: its whole spread, or k = 2.
pub(crate) fn ends(m: &Measure) -> (f64, f64) {
    let half = if m.normal { 2.0 } else { libm::sqrt(3.0) } * m.u;
    (m.value - half, m.value + half)
}

/// The antennas of a chain with their tags, those of branches too.
pub(super) fn antennas<'m>(
    stops: &[Stop<'m>],
    st: &'m Station,
) -> Vec<(Option<&'m Name>, &'m Antenna)> {
    antennas_at(stops, st)
        .into_iter()
        .map(|(_, tag, a)| (tag, a))
        .collect()
}

/// The same with where they are defined.
pub(crate) fn antennas_at<'m>(
    stops: &[Stop<'m>],
    st: &'m Station,
) -> Vec<(Loc, Option<&'m Name>, &'m Antenna)> {
    fn of_part<'m>(
        p: &'m downlead_station::model::Part,
        out: &mut Vec<(Loc, Option<&'m Name>, &'m Antenna)>,
    ) {
        if let (PartKind::Antenna, PartData::Antenna(a)) = (p.kind, &p.data) {
            out.push((p.loc, p.tag.as_ref(), a));
        }
    }
    fn of_steps<'m>(
        steps: &'m [Step],
        st: &'m Station,
        out: &mut Vec<(Loc, Option<&'m Name>, &'m Antenna)>,
    ) {
        of_stops(
            &crate::walk::walk(steps, Some(st), &mut Vec::new()),
            st,
            out,
        );
    }
    fn of_stops<'m>(
        stops: &[Stop<'m>],
        st: &'m Station,
        out: &mut Vec<(Loc, Option<&'m Name>, &'m Antenna)>,
    ) {
        for s in stops {
            if let Stop::Part { part, branches, .. } = s {
                of_part(part, out);
                for b in *branches {
                    of_steps(&b.steps, st, out);
                }
            }
        }
    }
    let mut out = Vec::new();
    of_stops(stops, st, &mut out);
    out
}

/// The span of a height over all antennas; none if one does not say it.
pub(super) fn span(
    all: &[(Option<&Name>, &Antenna)],
    height: impl Fn(&Antenna) -> Option<Measure>,
) -> Option<(f64, f64)> {
    let mut out: Option<(f64, f64)> = None;
    for (_, a) in all {
        let (low, high) = ends(&height(a)?);
        out = Some(out.map_or((low, high), |o| (o.0.min(low), o.1.max(high))));
    }
    out
}

/// Why a clause bears on a transmitter, or does not.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Bears<'m> {
    /// It does.
    Yes,
    /// It does not.
    No,
    /// It would, but ended before the newest date.
    Ended(&'m str),
    /// It does if a question is answered with yes.
    Asks(&'m Name),
    /// It is of some classes, and the station states none.
    Class,
    /// Whether it does depends on something that is not stated.
    Unknown(Variable),
}

/// Whether a day is after the last one of a date, which may be a month.
pub(super) fn past(now: &str, until: &str) -> bool {
    let n = until.len().min(now.len());
    now.get(..n) > until.get(..n)
}

/// Whether what holds until a day still does by the newest date that is known.
pub(crate) fn holds_until(newest: Option<&str>, set: &RuleSet, until: Option<&str>) -> bool {
    !until.is_some_and(|u| past(now(newest, set), u))
}

/// The ranges that are said of frequencies, Hz, both ends included.
pub(crate) fn spans(on: &Frequencies, env: &Env) -> Vec<(f64, f64)> {
    match on {
        Frequencies::All => vec![(0.0, f64::INFINITY)],
        Frequencies::Range(low, high) => vec![(*low, *high)],
        Frequencies::Bands(names) => names
            .iter()
            .filter_map(|n| env.band(&n.text))
            .flat_map(|b| match b.kind {
                BandKind::Single(f) => vec![(f, f)],
                BandKind::Range(low, high) => vec![(low, high)],
                BandKind::Pair { transmit, receive } => transmit
                    .into_iter()
                    .chain(receive)
                    .map(|f| (f, f))
                    .collect(),
            })
            .collect(),
    }
}

/// The newest date that is known: of the station's text and of the set.
pub(super) fn now<'m>(newest: Option<&'m str>, set: &'m RuleSet) -> &'m str {
    newest.unwrap_or("").max(set.dated.as_deref().unwrap_or(""))
}

/// Whether a clause holds at a frequency by its range and the station's classes.
pub(super) fn in_range(c: &Clause, point: &Point, env: &Env) -> bool {
    covers(&c.on, point, env)
}

/// Whether a frequency lies in what is said of frequencies.
pub(super) fn covers(on: &Frequencies, point: &Point, env: &Env) -> bool {
    match on {
        Frequencies::All => true,
        // a carrier at the edge of a range is in it
        Frequencies::Range(low, high) => {
            point.hz >= low * (1.0 - 1e-12) && point.hz <= high * (1.0 + 1e-12)
        }
        Frequencies::Bands(bands) => bands.iter().any(|b| band_matches(&b.text, point, env)),
    }
}

/// Whether a clause bears on a transmitter.
pub(super) fn bears<'m>(
    c: &'m Clause,
    point: &Point,
    facts: &Facts<'_>,
    now: &str,
    env: &Env,
) -> Bears<'m> {
    if !in_range(c, point, env) {
        return Bears::No;
    }
    let mine = |n: &Name| facts.under.classes.iter().any(|k| k.text == n.text);
    let stated = !facts.under.classes.is_empty();
    if stated && !c.classes.is_empty() && !c.classes.iter().any(mine) {
        return Bears::No;
    }
    if let Some((v, above, edge)) = c.bound {
        match facts.known(v) {
            None => return Bears::Unknown(v),
            Some((_, high)) if above && high <= edge => return Bears::No,
            Some((low, _)) if !above && low > edge => return Bears::No,
            Some(_) => {}
        }
    }
    let answer = c.asks.as_ref().map(|q| {
        let said = facts.under.answers.iter().find(|a| a.name.text == q.text);
        (q, said.map(|a| a.yes))
    });
    if let Some((_, Some(false))) = answer {
        return Bears::No;
    }
    if let Some(until) = c.until.as_deref().filter(|u| past(now, u)) {
        return Bears::Ended(until);
    }
    if c.since
        .as_deref()
        .is_some_and(|s| !now.is_empty() && s > now)
    {
        return Bears::No;
    }
    match answer {
        _ if !c.classes.is_empty() && facts.under.classes.is_empty() => Bears::Class,
        Some((q, None)) => Bears::Asks(q),
        _ => Bears::Yes,
    }
}

/// Whether a clause of a set is replaced by one that bears on the transmitter.
pub(super) fn replaced(c: &Clause, bearing: &[&Clause]) -> bool {
    let Some(cite) = &c.cite else { return false };
    bearing
        .iter()
        .any(|b| b.loc != c.loc && b.instead.iter().any(|i| i.text == cite.text))
}

/// The place of the name in a line `under`.
pub(super) fn place(under: &Under) -> Loc {
    under.name.loc
}
