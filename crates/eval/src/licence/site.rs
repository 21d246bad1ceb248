//! What licences and rules say of a station as a whole: what is fixed, thresholds, questions,
//! conditions, and clauses that bear on nothing.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::position::distance_m;
use downlead_quantity::{frequency, from_db, number, power};
use downlead_station::Env;
use downlead_station::model::{
    Chain, Clause, Counted, Direction, Fixed, FixedWhat, LimitQuantity, Node, RuleSet, Station,
    Step, Under,
};

use super::band::plain;
use super::matching::{self, Bears, Facts, bears, ends, now, place};
use super::{Duty, FixedResult, RuleVerdict, Said, SetResult, StationRules};
use crate::point::Point;
use crate::result::{BandResult, ChainResult};
use crate::walk::walk;

/// A chain at a frequency that transmits.
type Sent<'r> = (&'r ChainResult, &'r BandResult, &'r Chain);

/// What the licences and rules of a station say of it as a whole; none where it is under none.
pub(crate) fn station(
    st: &Station,
    chains: &[ChainResult],
    env: &Env,
    out: &mut Vec<Diagnostic>,
) -> Option<StationRules> {
    if st.under.is_empty() {
        return None;
    }
    let sent: Vec<Sent<'_>> = chains
        .iter()
        .zip(&st.chains)
        .filter(|(r, _)| r.direction == Direction::Transmit)
        .flat_map(|(r, c)| r.bands.iter().map(move |b| (r, b, c)))
        .collect();
    let mut all = Gathered::default();
    for under in &st.under {
        let Some(set) = env.rule_set(&under.name.text) else {
            continue;
        };
        all.sets.push(SetResult {
            name: set.name.text.clone(),
            title: set.title.clone(),
            edition: set.edition.clone(),
            dated: set.dated.clone(),
            built_in: set.built_in,
        });
        names(under, set, out);
        if env.misreads_rules(&set.name.text) {
            out.push(misread(under, set));
        }
        for f in &set.fixed {
            all.fixed.push(fixed(st, under, set, f, &sent, out));
        }
        let said = |cite: &str, text: &str| Said {
            set: set.name.text.clone(),
            cite: cite.into(),
            text: text.into(),
        };
        for c in &set.conditions {
            let cite = c.cite.as_ref().map_or("", |c| &*c.text);
            all.conditions.push(said(cite, &c.text));
        }
        for a in &set.asks {
            let open = !under.answers.iter().any(|x| x.name.text == a.name.text);
            let asked = |c: &Clause| c.asks.as_ref().is_some_and(|q| q.text == a.name.text);
            // a question that no clause here turns on is not asked
            let matters = sent.iter().any(|(_, b, _)| {
                let judged = |c: &Clause| b.rules.iter().any(|r| r.clause == Some(c.loc));
                set.clauses.iter().any(|c| asked(c) && judged(c))
            });
            if open && matters {
                all.questions.push(said(&a.name.text, &a.text));
            }
        }
        all.duties.extend(duties(st, under, set, &sent, env, out));
        let unused: Vec<&Clause> = set
            .clauses
            .iter()
            .filter(|c| c.is_limit())
            .filter(|c| {
                !sent
                    .iter()
                    .any(|(_, b, _)| b.rules.iter().any(|r| r.clause == Some(c.loc)))
            })
            .collect();
        for c in &unused {
            all.unused.push(said(c.citation(), &clause_words(c)));
            if set.licence {
                out.push(
                    Diagnostic::new(
                        &codes::CLAUSE_UNUSED,
                        place(under),
                        format!(
                            "No transmit chain is judged by {} {}.",
                            set.name.text,
                            c.citation()
                        ),
                    )
                    .at("nothing bears on it")
                    .also(c.loc, "the clause")
                    .help("Is a chain missing, or a band of another name?"),
                );
            }
        }
    }
    disagreeing(st, env, &sent, out);
    Some(StationRules {
        duties: all.duties.into(),
        fixed: all.fixed.into(),
        conditions: all.conditions.into(),
        questions: all.questions.into(),
        unused: all.unused.into(),
        sets: all.sets.into(),
    })
}

/// What was found so far.
#[derive(Default)]
struct Gathered {
    duties: Vec<Duty>,
    fixed: Vec<FixedResult>,
    conditions: Vec<Said>,
    questions: Vec<Said>,
    unused: Vec<Said>,
    sets: Vec<SetResult>,
}

/// A clause in a few words.
fn clause_words(c: &Clause) -> String {
    match plain(c) {
        Some(w) => format!("{} {}", power(w), c.counted.word()),
        None => format!("{} by steps or a law", c.counted.word()),
    }
}

/// Classes and questions of `under` that the set does not have.
fn names(under: &Under, set: &RuleSet, out: &mut Vec<Diagnostic>) {
    let mut say = |name: &downlead_station::model::Name, what: &str, known: Vec<&str>| {
        if known.contains(&&*name.text) {
            return;
        }
        let d = Diagnostic::new(
            &codes::UNKNOWN_IN_RULES,
            name.loc,
            format!("There is no {what} `{}` in {}.", name.text, set.name.text),
        )
        .at("not defined there");
        let near = downlead_station::nearest(&name.text, known.iter().copied());
        out.push(match near {
            Some(n) => {
                d.help(format!("Did you mean `{n}`?"))
                    .fix(format!("write `{n}`"), name.loc, n)
            }
            None if known.is_empty() => d.help(format!("It has no {what} at all.")),
            None => d.help(format!("There are: {}.", known.join(", "))),
        });
    };
    for c in &under.classes {
        say(c, "class", set.classes.iter().map(|c| &*c.text).collect());
    }
    for a in &under.answers {
        say(
            &a.name,
            "question",
            set.asks.iter().map(|a| &*a.name.text).collect(),
        );
    }
}

/// How far what is sent is off a fixed frequency, Hz: each frequency that is sent belongs to the
/// nearest one that the paper fixes, and the farthest of them counts. One that none belongs to is a
/// permission that is not used. None where nothing is sent.
fn off_frequency(hz: f64, set: &RuleSet, sent: &[Sent<'_>]) -> Option<f64> {
    let fixed = set.fixed.iter().filter_map(|f| match f.what {
        FixedWhat::Frequency(hz) => Some(hz),
        _ => None,
    });
    let nearest = |x: f64| {
        let off = |f: &f64| (f - x).abs();
        fixed.clone().min_by(|a, b| off(a).total_cmp(&off(b)))
    };
    let mut worst = None;
    for (_, b, _) in sent {
        let own = nearest(b.hz).is_some_and(|f| f.total_cmp(&hz).is_eq());
        let off = if own { (b.hz - hz).abs() } else { 0.0 };
        worst = Some(worst.map_or(off, |w: f64| w.max(off)));
    }
    worst
}

/// A clause that could not be read is not judged, and may be the one that decides.
fn misread(under: &Under, set: &RuleSet) -> Diagnostic {
    Diagnostic::new(
        &codes::CANNOT_JUDGE,
        place(under),
        format!(
            "A line of `{}` has an error, so a clause of it may not be judged. This is not \"met\".",
            set.name.text
        ),
    )
    .at("not judged in full")
    .help("Correct the lines of the licence or rules that are reported.")
}

/// What a paper fixes beside what the station says.
fn fixed(
    st: &Station,
    under: &Under,
    set: &RuleSet,
    f: &Fixed,
    sent: &[Sent<'_>],
    out: &mut Vec<Diagnostic>,
) -> FixedResult {
    let (what, off) = off_paper(st, set, f, sent);
    // the rounding of a difference of two written figures
    let within = f.within * (1.0 + 1e-9);
    let verdict = match off {
        None => RuleVerdict::CannotJudge,
        Some((_, far)) if far <= within => RuleVerdict::Met,
        Some((near, _)) if near > within => RuleVerdict::NotMet,
        Some(_) => RuleVerdict::CannotTell,
    };
    out.extend(
        fixed_finding(under, set, f, &what, off, verdict).map(|d| match set.built_in {
            true => d,
            false => d.also(f.loc, "what is fixed"),
        }),
    );
    FixedResult {
        under: place(under),
        set: set.name.text.clone(),
        cite: f.cite.as_ref().map_or("", |c| &*c.text).into(),
        what: what.into(),
        off: off.map(|o| o.1),
        within: f.within,
        metres: in_metres(f),
        verdict,
    }
}

/// Whether what is fixed is a place or a height; else it is a frequency.
fn in_metres(f: &Fixed) -> bool {
    !matches!(f.what, FixedWhat::Frequency(_))
}

/// The name of what is fixed, and the lower and upper end of how far the station is off: in m, or
/// in Hz of a frequency.
fn off_paper(
    st: &Station,
    set: &RuleSet,
    f: &Fixed,
    sent: &[Sent<'_>],
) -> (String, Option<(f64, f64)>) {
    match &f.what {
        FixedWhat::Position(lat, lon, datum) => {
            let same = match (datum, &st.datum) {
                (Some(a), Some(b)) => a == b,
                _ => true,
            };
            let off = st.position.filter(|_| same).map(|p| {
                let d = distance_m(p, (*lat, *lon));
                (d, d)
            });
            ("position".to_owned(), off)
        }
        FixedWhat::Height(m, of) => {
            let name = of.as_ref().map_or("the antennas", |n| &n.text);
            let off = off_height(st, *m, of.as_ref().map(|n| &*n.text));
            (format!("height of {name}"), off)
        }
        FixedWhat::Frequency(hz) => {
            let off = off_frequency(*hz, set, sent);
            (format!("frequency {}", frequency(*hz)), off.map(|d| (d, d)))
        }
    }
}

/// How far the antennas of a tag, or all, are off a height in m; None if one states no height.
fn off_height(st: &Station, m: f64, tag: Option<&str>) -> Option<(f64, f64)> {
    let stops: Vec<_> = st
        .chains
        .iter()
        .flat_map(|c| walk(&c.steps, Some(st), &mut Vec::new()))
        .collect();
    let antennas = matching::antennas(&stops, st);
    let mut off: Option<(f64, f64)> = None;
    let mine = antennas
        .iter()
        .filter(|(own, _)| tag.is_none_or(|n| own.is_some_and(|t| &*t.text == n)));
    for (_, a) in mine {
        let (low, high) = ends(&a.height_agl?);
        let far = (low - m).abs().max((high - m).abs());
        let near = match (low..=high).contains(&m) {
            true => 0.0,
            false => (low - m).abs().min((high - m).abs()),
        };
        off = Some(off.map_or((near, far), |o| (o.0.max(near), o.1.max(far))));
    }
    off
}

/// What is said of something fixed; nothing where the station agrees.
fn fixed_finding(
    under: &Under,
    set: &RuleSet,
    f: &Fixed,
    what: &str,
    off: Option<(f64, f64)>,
    verdict: RuleVerdict,
) -> Option<Diagnostic> {
    let cite = f.cite.as_ref().map_or("", |c| &*c.text);
    let by = format!("{} {cite}", set.name.text);
    match verdict {
        RuleVerdict::Met => None,
        RuleVerdict::CannotJudge => Some(
            Diagnostic::new(
                &codes::CANNOT_JUDGE,
                place(under),
                format!("The station does not say the {what}, which {by} fixes."),
            )
            .at("not judged")
            .help("State it with its datum: `position …, wgs84`, or `height 26 m agl` in the antenna's block."),
        ),
        _ => {
            let show = |x: f64| match in_metres(f) {
                true => format!("{} m", number(x, 1)),
                false => frequency(x),
            };
            let (near, far) = off.unwrap_or_default();
            let mut d = Diagnostic::new(
                &codes::FIXED_MOVED,
                place(under),
                format!(
                    "The {what} is off by {} from what {by} fixes; {} is allowed.",
                    match near == far {
                        true => show(far),
                        false => format!("{} to {}", show(near), show(far)),
                    },
                    show(f.within)
                ),
            )
            .at("not as in the paper")
            .help("Correct the station's text, or have the paper changed first.");
            if verdict == RuleVerdict::CannotTell {
                d.severity = downlead_base::Severity::Warning;
            }
            Some(d)
        }
    }
}

/// Thresholds that are reached, or may be.
fn duties(
    st: &Station,
    under: &Under,
    set: &RuleSet,
    sent: &[Sent<'_>],
    env: &Env,
    out: &mut Vec<Diagnostic>,
) -> Vec<Duty> {
    let mut all = Vec::new();
    for c in &set.clauses {
        let (Some(text), Counted::Power(quantity)) = (&c.duty, c.counted) else {
            continue;
        };
        let (powers, threshold) = counted(st, under, set, (c, quantity), sent, env);
        let Some(threshold) = threshold else { continue };
        let (value, high) = match c.total {
            true => powers
                .iter()
                .fold((0.0, 0.0), |s, p| (s.0 + p.1, s.1 + p.2)),
            false => powers
                .iter()
                .fold((0.0_f64, 0.0_f64), |s, p| (s.0.max(p.1), s.1.max(p.2))),
        };
        if high < threshold {
            continue;
        }
        let reached = value >= threshold;
        let total = if c.total { " together" } else { "" };
        let d = Diagnostic::new(
            &codes::RULE_DUTY,
            place(under),
            format!(
                "There is a duty by {} {}: {}{total} {} the threshold of {} {}: {text}.",
                set.name.text,
                c.citation(),
                power(value),
                if reached { "reaches" } else { "may reach" },
                power(threshold),
                quantity.word().to_uppercase()
            ),
        )
        .at("a duty");
        out.push(match set.built_in {
            true => d,
            false => d.also(c.loc, "the threshold"),
        });
        all.push(Duty {
            under: place(under),
            set: set.name.text.clone(),
            cite: c.citation().into(),
            text: text.clone(),
            threshold_w: threshold,
            value_w: value,
            counted: c.counted,
            reached,
        });
    }
    all
}

/// Of each chain that a clause bears on its name, its largest power in W and the upper end of that;
/// and the lowest threshold of the clause, W.
fn counted<'s>(
    st: &Station,
    under: &Under,
    set: &RuleSet,
    (clause, quantity): (&Clause, LimitQuantity),
    sent: &[Sent<'s>],
    env: &Env,
) -> (Vec<(&'s str, f64, f64)>, Option<f64>) {
    let now = now(st.newest.as_deref(), set);
    let mut powers: Vec<(&str, f64, f64)> = Vec::new();
    let mut threshold = None;
    for (_, b, chain) in sent {
        let point = Point {
            band: b.band.clone(),
            part: b.point,
            hz: b.hz,
            named: env.band(&b.band).is_some(),
        };
        let stops = walk(&chain.steps, Some(st), &mut Vec::new());
        let antennas = matching::antennas(&stops, st);
        let facts = Facts {
            hz: b.hz,
            haat: matching::span(&antennas, |a| a.height_haat),
            height: matching::span(&antennas, |a| a.height_agl),
            under,
        };
        if bears(clause, &point, &facts, now, env) != Bears::Yes {
            continue;
        }
        let value = match quantity {
            LimitQuantity::Erp => b.erp_w(),
            LimitQuantity::Eirp => b.eirp_w,
            LimitQuantity::Output => b.nodes.first().map(|n| n.forward_w),
        };
        let least = clause.amount.candidates(&|v| facts.known(v)).ok();
        let least = least.and_then(|l| l.into_iter().min_by(f64::total_cmp));
        let (Some(w), Some(least)) = (value, least) else {
            continue;
        };
        threshold = Some(threshold.map_or(least, |t: f64| t.min(least)));
        let high = w * from_db(b.uncertainty_db.unwrap_or(0.0));
        let name = &*chain.name.text;
        match powers.iter_mut().find(|p| p.0 == name) {
            Some(p) if p.1 < w => (p.1, p.2) = (w, high),
            Some(_) => {}
            None => powers.push((name, w, high)),
        }
    }
    (powers, threshold)
}

/// A `limit` of a chain and the clause of a licence that its source names, where they differ.
fn disagreeing(st: &Station, env: &Env, sent: &[Sent<'_>], out: &mut Vec<Diagnostic>) {
    fn limits<'m>(steps: &'m [Step], all: &mut Vec<(Loc, LimitQuantity, f64, &'m str)>) {
        for s in steps {
            match s {
                Step::Node(n, loc) => {
                    if let Node::Limit {
                        quantity,
                        watts,
                        source: Some(source),
                        ..
                    } = &**n
                    {
                        all.push((*loc, *quantity, *watts, source));
                    }
                }
                Step::Part { branches, .. } | Step::Use { branches, .. } => {
                    branches.iter().for_each(|b| limits(&b.steps, all));
                }
                Step::Broken(_) => {}
            }
        }
    }
    for c in &st.chains {
        let mut all = Vec::new();
        limits(&c.steps, &mut all);
        for (loc, quantity, watts, source) in all {
            let judged = sent
                .iter()
                .filter(|(_, b, chain)| {
                    std::ptr::eq(*chain, c) && b.limits.iter().any(|l| l.loc == loc)
                })
                .flat_map(|(_, b, _)| b.rules.iter());
            for r in judged {
                let Some(set) = env.rule_set(&r.set).filter(|s| s.licence) else {
                    continue;
                };
                let clause = set.clauses.iter().find(|x| Some(x.loc) == r.clause);
                let differs = |x: &&Clause| {
                    plain(x).is_some_and(|w| (w / watts - 1.0).abs() > 1e-9)
                        && x.counted == Counted::Power(quantity)
                        && names_clause(source, x.citation())
                };
                let Some(x) = clause.filter(differs) else {
                    continue;
                };
                out.push(
                    Diagnostic::new(
                        &codes::LIMIT_DISAGREES,
                        loc,
                        format!(
                            "This limit is {}, and {} of {} says {}. Keep one.",
                            power(watts),
                            x.citation(),
                            set.name.text,
                            power(plain(x).unwrap_or(watts))
                        ),
                    )
                    .at("another figure")
                    .also(x.loc, "the clause")
                    .help("With the licence in the text the chain needs no `limit` line."),
                );
            }
        }
    }
}

/// Whether a source names a clause: `TSO 14-0093 clause 4` names `clause 4`, `clause 41` does not.
fn names_clause(source: &str, cite: &str) -> bool {
    source.match_indices(cite).any(|(at, _)| {
        let after = source[at + cite.len()..].chars().next();
        after.is_none_or(|c| !c.is_alphanumeric() && c != '.')
    })
}
