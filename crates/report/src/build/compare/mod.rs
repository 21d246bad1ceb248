//! Two states of a file compared: chain by chain, band by band, part by part.

mod around;
mod part;

use downlead_eval::difference::{At, Moved, moved};
use downlead_eval::licence::RuleVerdict;
use downlead_eval::result::{BandResult, ChainResult, LimitResult, ReadingResult, Verdict};
use downlead_eval::{Evaluated, Places, Scope, Snapshot};
use downlead_station::model::{Confidence, Counted, Meaning, Node};

use crate::shape::compare::{
    BandChange, ChainChange, Comparison, Figures, LimitChange, LimitState, Pair, ReadingChange,
};
use part::{Part, paired, part_changes, parts};

/// A file in one state.
#[derive(Clone, Copy)]
pub struct State<'s> {
    /// The files it was read with.
    pub snapshot: &'s Snapshot,
    /// Their places.
    pub places: &'s Places<'s>,
    /// Its number among them.
    pub file: usize,
}

impl<'s> State<'s> {
    fn scope(&self) -> Option<&'s Scope> {
        let mut scopes = self.snapshot.scopes().iter();
        scopes.find(|x| x.file() == self.file)
    }
}

/// Compares a file as it was with the file as it is. `file` is its index in each.
#[must_use]
pub fn compare(old: (&Snapshot, usize), new: (&Snapshot, usize)) -> Comparison {
    let (p, q) = (Places::new(old.0), Places::new(new.0));
    let state = |snapshot, places, file| State {
        snapshot,
        places,
        file,
    };
    states(state(old.0, &p, old.1), state(new.0, &q, new.1))
}

/// The same with the places of both at hand.
#[must_use]
pub fn states(old: State<'_>, new: State<'_>) -> Comparison {
    let same_text = around::texts(old) == around::texts(new);
    if same_text {
        // nothing is computed twice where nothing can differ; files of readings and networks may
        let names = chains(new).into_iter().map(|c| still(&c));
        let list: Vec<ChainChange> = names.collect();
        if around::attachments(old) == around::attachments(new) {
            return Comparison {
                same_text,
                chains: list,
                ..Comparison::default()
            };
        }
    }
    let (was, is) = (chains(old), chains(new));
    let mut list = Vec::new();
    for now in &is {
        let then = was.iter().find(|c| c.name == now.name);
        list.push(chain(then, Some(now)));
    }
    for then in &was {
        if is.iter().all(|c| c.name != then.name) {
            list.push(chain(Some(then), None));
        }
    }
    Comparison {
        same_text,
        chains: list,
        stations: around::stations(old, new),
        definitions: around::definitions(old, new),
        findings: around::findings(old, new),
    }
}

/// A chain with what its names mean.
struct Named<'s> {
    name: String,
    station: String,
    item: &'s Evaluated,
    number: usize,
    state: State<'s>,
}

impl<'s> Named<'s> {
    fn result(&self) -> &'s ChainResult {
        &self.item.2.chains[self.number]
    }

    fn at(&self, band: usize) -> Option<At<'s>> {
        Some(At {
            places: self.state.places,
            scope: self.state.scope()?,
            item: self.item,
            chain: self.number,
            band,
        })
    }
}

fn chains(s: State<'_>) -> Vec<Named<'_>> {
    let mut out: Vec<Named<'_>> = Vec::new();
    for item in s.scope().into_iter().flat_map(Scope::items) {
        let station = match &item.1.meaning {
            Meaning::Station(st) => st.name.text.to_string(),
            _ => String::new(),
        };
        for (number, c) in item.2.chains.iter().enumerate() {
            let own = s.places.text(c.name);
            let mut name = match station.as_str() {
                "" => own.to_owned(),
                station => format!("{station}/{own}"),
            };
            // a name given twice is an error of its own; each is compared with its like
            let again = out
                .iter()
                .filter(|c| c.name.split(" (").next() == Some(&name))
                .count();
            if again > 0 {
                name = format!("{name} ({})", again + 1);
            }
            out.push(Named {
                name,
                station: station.clone(),
                item,
                number,
                state: s,
            });
        }
    }
    out
}

/// A chain of which nothing changed.
fn still(c: &Named<'_>) -> ChainChange {
    let word = Some(c.result().direction.word());
    ChainChange {
        name: c.name.clone(),
        station: c.station.clone(),
        direction: Pair {
            old: word,
            new: word,
        },
        bands: Vec::new(),
    }
}

fn chain(old: Option<&Named<'_>>, new: Option<&Named<'_>>) -> ChainChange {
    let any = new.or(old);
    let direction = Pair {
        old: old.map(|c| c.result().direction.word()),
        new: new.map(|c| c.result().direction.word()),
    };
    let names = |c: Option<&Named<'_>>| -> Vec<(String, String)> {
        c.map_or_else(Vec::new, |c| {
            let bands = c.result().bands.iter();
            bands.map(|b| (band_key(c, b), band_name(b))).collect()
        })
    };
    let (was, is) = (names(old), names(new));
    let mut all: Vec<&(String, String)> = is.iter().collect();
    all.extend(was.iter().filter(|n| is.iter().all(|x| x.0 != n.0)));
    let bands = all.into_iter().map(|n| {
        let find = |list: &[(String, String)]| list.iter().position(|x| x.0 == n.0);
        band(&n.1, (old, find(&was)), (new, find(&is)))
    });
    ChainChange {
        name: any.map_or_else(String::new, |c| c.name.clone()),
        station: any.map_or_else(String::new, |c| c.station.clone()),
        direction,
        bands: bands.collect(),
    }
}

/// What a band is found by in another state: its name, and of a frequency in the head of a chain the
/// frequency, in whichever unit it is written.
fn band_key(c: &Named<'_>, b: &BandResult) -> String {
    let defined = |s: &Scope| s.env().band(&b.band).is_some();
    if c.state.scope().is_some_and(defined) {
        return band_name(b);
    }
    // to the millihertz: the same number by way of another unit differs in its last bits
    format!("{:.3} Hz", b.hz)
}

fn band_name(b: &BandResult) -> String {
    b.place()
}

type Side<'c, 's> = (Option<&'c Named<'s>>, Option<usize>);

fn band(name: &str, old: Side<'_, '_>, new: Side<'_, '_>) -> BandChange {
    fn all<'c, 's>((c, b): Side<'c, 's>) -> Option<(&'c Named<'s>, usize, &'s BandResult)> {
        let (c, b) = (c?, b?);
        Some((c, b, c.result().bands.get(b)?))
    }
    let (a, b) = (all(old), all(new));
    fn list<'s>(x: Option<(&Named<'s>, usize, &BandResult)>) -> Vec<Part<'s>> {
        x.map_or_else(Vec::new, |(c, _, b)| parts(c.state.places, c.item, b))
    }
    let (was, is) = (list(a), list(b));
    let pairs = paired(&was, &is);
    let renamed: Vec<(String, String)> = pairs
        .iter()
        .filter(|(a, b)| was[*a].name != is[*b].name)
        .map(|(a, b)| (was[*a].name.clone(), is[*b].name.clone()))
        .collect();
    let tags = |(a, b): &(String, String)| {
        let tag = |n: &str| n.split(['.', ' ']).next().unwrap_or("").to_owned();
        (tag(a), tag(b))
    };
    let step = a.zip(b).and_then(|(a, b)| {
        let renamed: Vec<(String, String)> = renamed.iter().map(tags).collect();
        Some(moved(&a.0.at(a.1)?, &b.0.at(b.1)?, &renamed))
    });
    BandChange {
        band: name.to_owned(),
        figures: Pair {
            old: a.map(|x| figures(x.2)),
            new: b.map(|x| figures(x.2)),
        },
        moved: step.unwrap_or_else(Moved::default),
        parts: part_changes(&was, &is, &pairs),
        renamed,
        reordered: !pairs.is_sorted(),
        limits: limits(a, b),
        readings: readings(
            a.map_or(&[], |x| &x.2.readings),
            b.map_or(&[], |x| &x.2.readings),
        ),
    }
}

fn figures(b: &BandResult) -> Figures {
    // the first element is the transmitter where there is one; what it loses is the mismatch it sees
    let first = b.nodes.first().filter(|n| n.kind.sends());
    Figures {
        hz: b.hz,
        complete: b.complete,
        loss_db: b.total_db,
        transmitter_w: first
            .map(|n| n.forward_w)
            .filter(|w| w.is_finite() && *w > 0.0),
        gain_dbi: b.gain_dbi,
        antenna_w: b.antenna_w,
        erp_w: b.erp_w(),
        eirp_w: b.eirp_w,
        sensitivity_dbm: b.sensitivity_dbm,
        sensitivity_u_db: b.sensitivity_u_db,
        swr: b.swr,
        uncertainty_db: b.uncertainty_db,
    }
}

/// Limits of the same quantity belong together, clauses of a licence among them: by the document they
/// cite, and what is left in the order of the text.
fn limits(
    old: Option<(&Named<'_>, usize, &BandResult)>,
    new: Option<(&Named<'_>, usize, &BandResult)>,
) -> Vec<LimitChange> {
    let of = |x: Option<(&Named<'_>, usize, &BandResult)>| -> Vec<(&'static str, LimitState)> {
        let Some((c, _, b)) = x else {
            return Vec::new();
        };
        let limits = b.limits.iter().map(|l| (l.quantity.word(), limit(c, l)));
        let clauses = b.rules.iter().map(|r| {
            let j = r.judged.as_ref();
            let state = LimitState {
                source: Some(r.source()),
                set: Some(r.set.to_string()),
                limit_w: j.map(|j| j.limit_w),
                margin_db: j.map(|j| j.margin_db),
                uncertainty_db: j.map(|j| j.uncertainty_db),
                verdict: r.verdict,
                warns: r.confidence == Some(Confidence::Low),
                line: c.state.places.line(r.under),
            };
            (r.counted.map_or("", Counted::word), state)
        });
        limits.chain(clauses).collect()
    };
    let (was, is) = (of(old), of(new));
    let mut taken = vec![false; was.len()];
    let mut partner: Vec<Option<usize>> = vec![None; is.len()];
    // what no clause bears on any more belongs to what its licence or rules said before
    let none = |s: &LimitState| s.verdict == RuleVerdict::NoRule;
    for pass in ["source", "quantity", "set"] {
        for (j, now) in is.iter().enumerate() {
            if partner[j].is_some() {
                continue;
            }
            let like = |(i, then): (usize, &(&str, LimitState))| {
                let quantity = then.0 == now.0;
                !taken[i]
                    && match pass {
                        "source" => quantity && then.1.source == now.1.source,
                        "quantity" => quantity && none(&then.1) == none(&now.1),
                        _ => {
                            now.1.set.is_some()
                                && then.1.set == now.1.set
                                && (none(&then.1) || none(&now.1))
                        }
                    }
            };
            partner[j] = was.iter().enumerate().position(like);
            if let Some(i) = partner[j] {
                taken[i] = true;
            }
        }
    }
    let mut out: Vec<LimitChange> = is
        .into_iter()
        .zip(partner)
        .map(|((quantity, state), i)| LimitChange {
            quantity,
            state: Pair {
                old: i.map(|i| was[i].1.clone()),
                new: Some(state),
            },
        })
        .collect();
    for ((quantity, state), taken) in was.iter().zip(&taken) {
        if !taken {
            out.push(LimitChange {
                quantity,
                state: Pair {
                    old: Some(state.clone()),
                    new: None,
                },
            });
        }
    }
    out
}

fn limit(c: &Named<'_>, l: &LimitResult) -> LimitState {
    let source = match c.item.1.meaning.node(l.loc) {
        Some(Node::Limit { source, .. }) => source.as_ref().map(ToString::to_string),
        _ => None,
    };
    LimitState {
        source,
        set: None,
        limit_w: Some(l.limit_w),
        margin_db: Some(l.margin_db),
        uncertainty_db: Some(l.uncertainty_db),
        verdict: match l.verdict {
            Verdict::Yes => RuleVerdict::Met,
            Verdict::No => RuleVerdict::NotMet,
            Verdict::CannotTell => RuleVerdict::CannotTell,
        },
        warns: false,
        line: c.state.places.line(l.loc),
    }
}

/// Readings that came, that went, and that stayed with another verdict.
fn readings(was: &[ReadingResult], is: &[ReadingResult]) -> Vec<ReadingChange> {
    let like = |a: &ReadingResult, b: &ReadingResult| {
        let near = (a.read - b.read).abs() <= 1e-9 * a.read.abs().max(b.read.abs());
        a.power == b.power && near
    };
    let mut left: Vec<&ReadingResult> = was.iter().collect();
    let mut out = Vec::new();
    let change = |old: Option<&ReadingResult>, new: Option<&ReadingResult>| {
        let any = new.or(old);
        ReadingChange {
            what: any.map_or("swr", |r| r.power.map_or("swr", |p| p.word())),
            read: any.map_or(0.0, |r| r.read),
            verdict: Pair {
                old: old.map(|r| r.verdict),
                new: new.map(|r| r.verdict),
            },
        }
    };
    for now in is {
        let then = left
            .iter()
            .position(|x| like(x, now))
            .map(|i| left.remove(i));
        if then.map(|r| r.verdict) != Some(now.verdict) {
            out.push(change(then, Some(now)));
        }
    }
    out.extend(left.into_iter().map(|then| change(Some(then), None)));
    out
}

/// Rank of a verdict: what is higher is worse.
#[must_use]
pub fn badness(v: RuleVerdict) -> u8 {
    match v {
        RuleVerdict::Met => 0,
        RuleVerdict::MetIfAllocated => 1,
        RuleVerdict::AtLimit => 2,
        RuleVerdict::CannotTell => 3,
        RuleVerdict::NoRule => 4,
        RuleVerdict::CannotJudge => 5,
        RuleVerdict::NotMet => 6,
    }
}
