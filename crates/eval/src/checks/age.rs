//! Cables out for many years whose loss is still that of a new one.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_station::Env;
use downlead_station::model::{
    Basis, Direction, Meta, Node, Part, PartData, Read, ReadPower, Station,
};
use rustc_hash::{FxHashMap, FxHashSet};

use crate::walk::{Stop, direction, walk};

/// A published loss is trusted for so long outdoors, months (common practice: ten years).
const OLD: i32 = 120;

/// A reading behind a cable vouches for it for so long, months (our choice: five years).
const VOUCHES: i32 = 60;

/// Months since the year 0 of `2014`, `2014-05` or `2014-05-17`.
fn months(date: &str) -> Option<i32> {
    let mut parts = date.split('-').map(str::parse::<i32>);
    let year = parts.next()?.ok()?;
    let month = parts.next().and_then(Result::ok).unwrap_or(1);
    Some(12 * year + month - 1)
}

/// When power was last read behind each part.
type LastRead<'m> = FxHashMap<*const Part, &'m str>;

/// What the transmit chains say of the parts on them.
#[derive(Default)]
struct Seen<'m> {
    /// Dates of readings.
    dates: Vec<&'m str>,
    last: LastRead<'m>,
    /// Of a log the dates stand in another file, which is judged by itself.
    logged: FxHashSet<*const Part>,
    /// Parts behind which power could be read.
    sent: FxHashSet<*const Part>,
}

impl<'m> Seen<'m> {
    /// Follows a chain or branch; `before` are the parts in front of it.
    fn follow(&mut self, st: &'m Station, stops: &[Stop<'m>], mut before: Vec<*const Part>) {
        for s in stops {
            match s {
                Stop::Part { part, branches, .. } => {
                    before.push(std::ptr::from_ref(*part));
                    self.sent.insert(std::ptr::from_ref(*part));
                    for b in *branches {
                        let stops = walk(&b.steps, Some(st), &mut Vec::new());
                        self.follow(st, &stops, before.clone());
                    }
                }
                Stop::Gap => before.clear(),
                Stop::Node(Node::Read { read, meta, .. }, _) => {
                    let Some(date) = meta.date.as_deref() else {
                        continue;
                    };
                    self.dates.push(date);
                    if matches!(read, Read::Power(ReadPower::Forward | ReadPower::Net, _)) {
                        for p in &before {
                            let l = self.last.entry(*p).or_insert(date);
                            if months(l) < months(date) {
                                *l = date;
                            }
                        }
                    }
                }
                Stop::Node(Node::Log { .. }, _) => self.logged.extend(&before),
                Stop::Node(..) => {}
            }
        }
    }
}

/// The losses of a line that were read: its cable's as defined, and its own figures.
fn read_losses<'m>(p: &'m Part, env: &'m Env) -> impl Iterator<Item = &'m Meta> {
    let line = match &p.data {
        PartData::Line(l) => Some(l),
        _ => None,
    };
    let cable = line.and_then(|l| env.cable(&l.cable.as_ref()?.text));
    let own = line.into_iter().flat_map(|l| l.loss.iter());
    let metas = own.map(|f| &*f.meta).chain(cable.map(|c| &c.meta));
    metas.filter(|m| m.basis == Basis::Read)
}

/// There is no clock: today is the newest date the station holds.
pub(super) fn old_cables(st: &Station, env: &Env, out: &mut Vec<Diagnostic>) {
    let aged = |p: &&Part| {
        p.meta.since.is_some()
            && p.meta.basis != Basis::Read
            && matches!(&p.data, PartData::Line(l)
                if l.cable.is_some() && l.network.is_empty() && l.added.is_empty())
    };
    if !st.parts.iter().any(|p| aged(&p)) {
        return;
    }
    let mut seen = Seen::default();
    for c in &st.chains {
        let stops = walk(&c.steps, Some(st), &mut Vec::new());
        if direction(c, &stops) == Direction::Transmit {
            seen.follow(st, &stops, Vec::new());
        }
    }
    let mut dates = std::mem::take(&mut seen.dates);
    for p in &st.parts {
        dates.extend(p.meta.since.as_deref());
        dates.extend(p.meta.date.as_deref());
        dates.extend(read_losses(p, env).filter_map(|m| m.date.as_deref()));
        if let Some(t) = p.data.transmitter() {
            dates.extend(t.power.iter().filter_map(|(f, _)| f.meta.date.as_deref()));
        }
    }
    let Some((now, today)) = dates
        .iter()
        .filter_map(|d| Some((months(d)?, *d)))
        .max_by_key(|d| d.0)
    else {
        return;
    };
    for p in st.parts.iter().filter(aged) {
        let key = std::ptr::from_ref(p);
        let since = p.meta.since.as_deref().unwrap_or("");
        let Some(age) = months(since).map(|s| now - s).filter(|a| *a >= OLD) else {
            continue;
        };
        let read = seen.last.get(&key).copied();
        let vouches = |d: &str| months(d).is_some_and(|r| now - r < VOUCHES);
        let measured = read_losses(p, env).any(|m| m.date.as_deref().is_none_or(vouches));
        if measured
            || read.is_some_and(vouches)
            || seen.logged.contains(&key)
            || !seen.sent.contains(&key)
        {
            continue;
        }
        out.push(finding(p, since, read, today, age / 12));
    }
}

fn finding(p: &Part, since: &str, read: Option<&str>, today: &str, years: i32) -> Diagnostic {
    let (at, name): (Loc, &str) = match &p.tag {
        Some(t) => (t.loc, &t.text),
        None => (p.loc, p.kind.word()),
    };
    let read = match read {
        Some(d) => format!("power was last read after it on {d}"),
        None => "no power was read after it".to_owned(),
    };
    Diagnostic::new(
        &codes::OLD_CABLE,
        at,
        format!(
            "`{name}` has been there since {since} and {read}; by {today}, the newest date of this station, it is {years} years old."
        ),
    )
    .at("a new cable's loss")
    .help("Published loss holds for new cable. Read the power after it, `read 16.2 W forward, 2026-07-04 with W1 by QY2TEC`, and state what it has `added`.")
}

#[cfg(test)]
mod tests {
    use super::months;

    #[test]
    fn dates_count_in_months() {
        assert_eq!(months("2014-05"), months("2014-05-17"));
        assert_eq!(months("2024-05").unwrap() - months("2014-06").unwrap(), 119);
        assert_eq!(months("2014"), months("2014-01"));
        assert_eq!(months("x"), None);
    }
}
