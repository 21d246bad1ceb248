//! The clauses that bear on a chain at a frequency.

use downlead_base::{Diagnostic, Severity, codes};
use downlead_quantity::{db, power};
use downlead_station::model::{
    Amount, Clause, Confidence, Counted, Frequencies, LimitQuantity, Name, Part, PowerKind,
    RuleSet, Station, Step, Under,
};

use super::matching::{self, Bears, Facts, bears, now, place, replaced};
use super::missing::Missing;
use super::{RuleResult, RuleVerdict};
use crate::assume::Assumed;
use crate::chain::{Feed, Run};
use crate::result::{BandResult, LimitResult, Verdict};
use crate::verdict::{compare, kind_factor};
use crate::walk::walk;

/// Margin and uncertainty below which a limit counts as reached: laws round the dipole's gain three ways.
const AT_THE_LIMIT_DB: f64 = 0.02;

/// Judges the clauses of all licences and rules that the station is under.
pub(crate) fn judge<'m>(
    run: &mut Run<'m, '_>,
    result: &BandResult,
    feed: &Feed<'m>,
) -> Vec<RuleResult> {
    let Some(st) = run.cx.station.filter(|st| !st.under.is_empty()) else {
        return Vec::new();
    };
    let stops = walk(&run.cx.chain.steps, Some(st), &mut Vec::new());
    let antennas = matching::antennas(&stops, st);
    let haat = matching::span(&antennas, |a| a.height_haat);
    let height = matching::span(&antennas, |a| a.height_agl);
    let env = run.cx.env;
    let mut out = Vec::new();
    for under in &st.under {
        // a name that is not defined has its own finding
        let Some(set) = env.rule_set(&under.name.text) else {
            continue;
        };
        // rules of exposure alone, and forms, say nothing of powers
        if set.clauses.is_empty() && !(set.exposure.is_empty() && set.fields.is_empty()) {
            continue;
        }
        let facts = Facts {
            hz: run.point.hz,
            haat,
            height,
            under,
        };
        let mut one = Set {
            st,
            set,
            under,
            facts,
            allocated: false,
        };
        out.extend(one.judge(run, result, feed));
    }
    // the worst first, and of equal ones the smallest margin
    out.sort_by(|a, b| {
        let margin = |r: &RuleResult| r.judged.as_ref().map_or(f64::INFINITY, |j| j.margin_db);
        a.verdict
            .cmp(&b.verdict)
            .then(margin(a).total_cmp(&margin(b)))
    });
    out
}

/// One licence or set of rules.
struct Set<'m> {
    st: &'m Station,
    set: &'m RuleSet,
    under: &'m Under,
    facts: Facts<'m>,
    /// Whether the service is known to be allocated at the frequency.
    allocated: bool,
}

impl<'m> Set<'m> {
    fn judge(
        &mut self,
        run: &mut Run<'m, '_>,
        result: &BandResult,
        feed: &Feed<'m>,
    ) -> Vec<RuleResult> {
        let now = now(self.st.newest.as_deref(), self.set);
        let env = run.cx.env;
        let all: Vec<(&Clause, Bears<'m>)> = self
            .set
            .clauses
            .iter()
            .filter(|c| c.is_limit())
            .map(|c| (c, bears(c, run.point, &self.facts, now, env)))
            .filter(|(_, b)| *b != Bears::No)
            .collect();
        let bearing: Vec<&Clause> = all
            .iter()
            .filter(|(_, b)| *b == Bears::Yes)
            .map(|(c, _)| *c)
            .collect();
        self.allocated = self.is_allocated(run, &bearing);
        let expired = self.set.until.as_deref().filter(|u| matching::past(now, u));
        let mut out = Vec::new();
        let mut classless = false;
        for (c, b) in &all {
            if replaced(c, &bearing) {
                continue;
            }
            if let Some(date) = expired {
                out.push(self.cannot(run, c, Missing::Expired(date)));
                continue;
            }
            match b {
                Bears::Ended(until) => self.superseded(run, c, until, now),
                // one of them says it for all
                Bears::Class if classless => {}
                Bears::Class => {
                    classless = true;
                    out.push(self.cannot(run, c, Missing::Class));
                }
                Bears::Unknown(v) => out.push(self.cannot(run, c, Missing::Variable(*v))),
                Bears::Asks(q) => {
                    let quiet = run.diags.len();
                    let found = self.clause(run, result, feed, c);
                    run.diags.truncate(quiet);
                    // answered either way it changes nothing
                    let kept = matches!(
                        found.verdict,
                        RuleVerdict::Met | RuleVerdict::MetIfAllocated
                    );
                    let changes = !c.instead.is_empty() || !kept;
                    if changes {
                        out.push(self.cannot(run, c, Missing::Question(q)));
                    }
                }
                Bears::Yes if c.counted == Counted::DcInput && self.alternative(&bearing) => {
                    let _ = self.cannot(run, c, Missing::DcInput { instead: true });
                }
                // what each transmitter keeps, all of them together may exceed
                Bears::Yes if c.total && senders(self.st) > 1 => {
                    let had = run.diags.len();
                    let found = self.clause(run, result, feed, c);
                    if found.verdict == RuleVerdict::NotMet {
                        out.push(found);
                        continue;
                    }
                    run.diags.truncate(had);
                    out.push(self.cannot(run, c, Missing::Total));
                }
                Bears::Yes => out.push(self.clause(run, result, feed, c)),
                Bears::No => {}
            }
        }
        self.overlap(run, &out);
        if all.iter().all(|(_, b)| matches!(b, Bears::Ended(_))) {
            out.push(self.none(run, !all.is_empty()));
        }
        out
    }

    /// Whether another clause that bears here counts a power that is computed.
    fn alternative(&self, bearing: &[&Clause]) -> bool {
        bearing
            .iter()
            .any(|c| c.counted == Counted::Power(LimitQuantity::Output))
    }

    fn confidence(&self, c: &Clause) -> Confidence {
        c.confidence.unwrap_or(Confidence::High)
    }

    fn result(&self, c: &Clause, verdict: RuleVerdict) -> RuleResult {
        RuleResult {
            under: place(self.under),
            set: self.set.name.text.clone(),
            clause: Some(c.loc),
            cite: c.citation().into(),
            counted: Some(c.counted),
            kind: c.kind,
            confidence: Some(self.confidence(c)),
            judged: None,
            verdict,
            why: Box::default(),
        }
    }

    /// How a clause is called in messages.
    fn named(&self, c: &Clause) -> String {
        format!("{} {}", self.set.name.text, c.citation())
    }

    /// Adds the clause as a second place, where it is in a file of the user.
    fn also(&self, d: Diagnostic, c: &Clause) -> Diagnostic {
        match self.set.built_in {
            true => d,
            false => d.also(c.loc, "the clause"),
        }
    }

    fn cannot(&self, run: &mut Run<'m, '_>, c: &Clause, missing: Missing<'_>) -> RuleResult {
        let why = missing.words(self.set);
        let mut d = Diagnostic::new(
            &codes::CANNOT_JUDGE,
            place(self.under),
            format!(
                "Nothing can be judged by {} on {}: {why}.",
                self.named(c),
                run.point.words()
            ),
        )
        .at("not judged");
        d.severity = missing.severity();
        d = self.also(d, c);
        run.diags
            .push(missing.help(self.set).into_iter().fold(d, Diagnostic::help));
        RuleResult {
            why: [why.into()].into(),
            ..self.result(c, RuleVerdict::CannotJudge)
        }
    }

    fn superseded(&self, run: &mut Run<'m, '_>, c: &Clause, until: &str, now: &str) {
        let d = Diagnostic::new(
            &codes::RULE_SUPERSEDED,
            place(self.under),
            format!(
                "No longer in force: {} holds until {until}; the newest date here is {now}.",
                self.named(c)
            ),
        )
        .at("no longer in force")
        .help("Nothing is judged by it. Look for the clause that took its place.");
        let d = self.also(d, c);
        run.diags.push(d);
    }

    /// That no clause bears on the transmitter. Where a finding says why already, it is not said again.
    fn none(&self, run: &mut Run<'m, '_>, ended: bool) -> RuleResult {
        let defined = |n: &Name| self.set.classes.iter().any(|c| c.text == n.text);
        let say = !ended && self.under.classes.iter().all(defined);
        let classes: Vec<&str> = self.under.classes.iter().map(|c| &*c.text).collect();
        let class = match classes.is_empty() {
            true => String::new(),
            false => format!(" for class {}", classes.join(", ")),
        };
        let d = Diagnostic::new(
            &codes::NO_RULE,
            place(self.under),
            format!(
                "Nothing in {} bears on {}{class}. This is not \"met\".",
                self.set.name.text,
                downlead_quantity::frequency(run.point.hz)
            ),
        )
        .at("no clause bears on it")
        .help("Look for the rule that does; write it as a clause of your own with its citation.");
        if say {
            run.diags.push(d);
        }
        RuleResult {
            under: place(self.under),
            set: self.set.name.text.clone(),
            clause: None,
            cite: Box::default(),
            counted: None,
            kind: None,
            confidence: None,
            judged: None,
            verdict: RuleVerdict::NoRule,
            why: Box::default(),
        }
    }

    /// Two clauses on one quantity that hold at once and differ.
    fn overlap(&self, run: &mut Run<'m, '_>, found: &[RuleResult]) {
        let judged = |r: &&RuleResult| r.judged.is_some();
        for (i, a) in found.iter().enumerate().filter(|(_, r)| judged(r)) {
            let other = found[i + 1..].iter().filter(judged).find(|b| {
                let (x, y) = (a.judged.as_ref(), b.judged.as_ref());
                a.counted == b.counted
                    && a.kind == b.kind
                    && x.zip(y)
                        .is_some_and(|(x, y)| (x.limit_w / y.limit_w - 1.0).abs() > 1e-9)
            });
            let (Some(b), Some(x)) = (other, a.judged.as_ref()) else {
                continue;
            };
            let y = b.judged.as_ref().map_or(x.limit_w, |y| y.limit_w);
            let tighter = if x.limit_w < y { a } else { b };
            run.diags.push(
                Diagnostic::new(
                    &codes::RULES_OVERLAP,
                    place(self.under),
                    format!(
                        "Both {} ({} {}) and {} ({}) hold on {}; {} is the tighter.",
                        a.cite,
                        power(x.limit_w),
                        x.quantity.word(),
                        b.cite,
                        power(y),
                        run.point.words(),
                        tighter.cite
                    ),
                )
                .at("both are judged")
                .help("Where one takes the place of the other, it says so: `instead of \"CITATION\"`."),
            );
            return;
        }
    }

    /// Judges one clause.
    fn clause(
        &self,
        run: &mut Run<'m, '_>,
        result: &BandResult,
        feed: &Feed<'m>,
        c: &'m Clause,
    ) -> RuleResult {
        let Counted::Power(quantity) = c.counted else {
            return self.cannot(run, c, Missing::DcInput { instead: false });
        };
        let limits = match c.amount.candidates(&|v| self.facts.known(v)) {
            Ok(l) if !l.is_empty() => l,
            Ok(_) => return self.cannot(run, c, Missing::Step),
            Err(v) => return self.cannot(run, c, Missing::Variable(v)),
        };
        let had = run.diags.len();
        // a clause that says no kind counts what licences usually do, and is as strict as one that
        // says it: a paper's "met" rests on no kind that the transmitter does not state
        let want = c.kind.unwrap_or(PowerKind::Pep);
        let factor = kind_factor(run, feed, Some(want), place(self.under));
        if c.kind.is_none() && factor != Some(1.0) {
            run.assumed.add(Assumed::LimitPep, place(self.under));
        }
        let Some(factor) = factor else {
            let why = match run.diags.len() > had {
                true => "the kind of the transmitter's power is not stated",
                false => "the transmitter's mode could not be read",
            };
            return RuleResult {
                why: [why.into()].into(),
                ..self.result(c, RuleVerdict::CannotJudge)
            };
        };
        let at = (0, Some(feed.watts));
        let mut all = Vec::new();
        for limit_w in limits {
            if let Some(found) = compare(run, result, feed, at, quantity, limit_w, factor) {
                let verdict = if found.margin.abs() < AT_THE_LIMIT_DB && found.u < AT_THE_LIMIT_DB {
                    RuleVerdict::AtLimit
                } else {
                    of(found.verdict)
                };
                all.push((limit_w, found, verdict));
            }
        }
        all.sort_by(|a, b| a.1.margin.total_cmp(&b.1.margin));
        let Some((limit_w, found, mut verdict)) = all.first().map(|a| (a.0, &a.1, a.2)) else {
            let why = match result.complete {
                true => "the antenna states no gain, so nothing is known to radiate",
                false => "a part of the chain could not be computed",
            };
            return self.cannot(run, c, Missing::Value(why));
        };
        let mut why = Vec::new();
        let decides = all.iter().any(|a| a.2 != verdict);
        if decides {
            verdict = RuleVerdict::CannotTell;
            let v = c.amount.variables();
            let by: Vec<&str> = v.iter().map(|v| v.noun()).collect();
            why.push(format!("{} decides", by.join(" and ")).into());
        }
        if found.aside.is_some() {
            why.push("met in one direction only".into());
        }
        if verdict == RuleVerdict::Met && c.allocated && !self.allocated {
            verdict = RuleVerdict::MetIfAllocated;
            why.push(
                format!(
                    "`{}` does not list where the service is allocated, and the station does not say it",
                    self.set.name.text
                )
                .into(),
            );
        }
        let judged = LimitResult {
            loc: place(self.under),
            quantity,
            limit_w,
            value_w: found.value,
            margin_db: found.margin,
            uncertainty_db: found.u,
            exceeded: found.exceeded,
            verdict: match verdict {
                RuleVerdict::NotMet => Verdict::No,
                RuleVerdict::Met | RuleVerdict::MetIfAllocated => Verdict::Yes,
                _ => Verdict::CannotTell,
            },
            safe_w: found.safe.is_finite().then_some(found.safe),
        };
        run.assumed.add(Assumed::CarrierAlone, place(self.under));
        if !c.total {
            run.assumed.add(Assumed::PerTransmitter, place(self.under));
        }
        self.report(run, feed, c, &judged, verdict, &why);
        RuleResult {
            judged: Some(judged),
            why: why.into(),
            ..self.result(c, verdict)
        }
    }

    /// Whether the service is known to be allocated at the frequency: the station says so, or a clause
    /// that bears on it is of a segment there.
    fn is_allocated(&self, run: &Run<'m, '_>, bearing: &[&Clause]) -> bool {
        let here = |on: &Frequencies| matching::covers(on, run.point, run.cx.env);
        let segment = |c: &&Clause| !c.allocated && c.on != Frequencies::All;
        self.under.allocated.iter().any(here) || bearing.iter().any(segment)
    }

    /// The finding of a verdict that is not "met".
    fn report(
        &self,
        run: &mut Run<'m, '_>,
        feed: &Feed<'m>,
        c: &Clause,
        j: &LimitResult,
        verdict: RuleVerdict,
        why: &[Box<str>],
    ) {
        let what = match j.quantity {
            LimitQuantity::Output => "The output".to_owned(),
            q => q.word().to_uppercase(),
        };
        let band = run.point.words();
        let by = self.named(c);
        let because = match why {
            [] => String::new(),
            why => format!(" ({})", why.join(", ")),
        };
        let side = if j.margin_db >= 0.0 { "under" } else { "over" };
        let d = match verdict {
            RuleVerdict::NotMet => Diagnostic::new(
                &codes::LIMIT_NOT_MET,
                place(self.under),
                format!(
                    "{what} on {band} is {}, {} over the {} of {by}; the uncertainty is {}.",
                    power(j.value_w),
                    db(-j.margin_db),
                    power(j.limit_w),
                    db(j.uncertainty_db)
                ),
            )
            .at("exceeded, beyond the uncertainty"),
            RuleVerdict::CannotTell => Diagnostic::new(
                &codes::LIMIT_CANNOT_TELL,
                place(self.under),
                format!(
                    "{what} on {band} is {}, {} {side} the {} of {by}, and the uncertainty is {}: cannot tell{because}.",
                    power(j.value_w),
                    db(j.margin_db.abs()),
                    power(j.limit_w),
                    db(j.uncertainty_db)
                ),
            )
            .at("nearer than the uncertainty"),
            RuleVerdict::AtLimit => Diagnostic::new(
                &codes::LIMIT_CANNOT_TELL,
                place(self.under),
                format!(
                    "{what} on {band} is {}, at the {} of {by}: {}, so nothing closer can be said.",
                    power(j.value_w),
                    power(j.limit_w),
                    match j.quantity {
                        // no antenna takes part
                        LimitQuantity::Output => "margin and uncertainty are below 0.02 dB",
                        _ => "laws round the gain of a dipole by 0.02 dB",
                    }
                ),
            )
            .at("at the limit"),
            _ => return,
        };
        let mut d = self
            .also(d, c)
            .also(feed.loc, format!("{} here", power(feed.watts)));
        if let Some(w) = j.safe_w.filter(|_| verdict != RuleVerdict::AtLimit) {
            d = d.help(format!(
                "At {} it is met with its uncertainty allowed for; at {} it is just reached.",
                power(w),
                power(feed.watts * downlead_quantity::from_db(j.margin_db))
            ));
        }
        if self.confidence(c) == Confidence::Low && d.severity == Severity::Error {
            d.severity = Severity::Warning;
            d = d.help("The text of this clause is from memory or from sources that differ (confidence low), so this only warns: read the current text.");
        }
        run.diags.push(d);
    }
}

/// The verdict of a limit in the words of clauses.
fn of(v: Verdict) -> RuleVerdict {
    match v {
        Verdict::Yes => RuleVerdict::Met,
        Verdict::No => RuleVerdict::NotMet,
        Verdict::CannotTell => RuleVerdict::CannotTell,
    }
}

/// The fixed power of a clause without law and steps, W.
pub(super) fn plain(c: &Clause) -> Option<f64> {
    match &c.amount {
        Amount::Law(law) if law.factors.is_empty() => Some(law.watts),
        _ => None,
    }
}

/// Chains of a station that begin at a transmitter.
fn senders(station: &Station) -> usize {
    let sends = |part: &Part| part.kind.sends();
    let of_step = |s: &Step| match s {
        Step::Part { part, .. } => sends(part),
        Step::Use { tag, .. } => {
            let named = |p: &&Part| p.tag.as_ref().is_some_and(|t| t.text == tag.text);
            station.parts.iter().find(named).is_some_and(sends)
        }
        _ => false,
    };
    let chains = station.chains.iter();
    chains.filter(|c| c.steps.iter().any(of_step)).count()
}
