//! At spots, neighbours, antennas and hops: the share of the limits, the distance to keep, what arrives.

use downlead_base::Loc;
use downlead_eval::exposure::{Exposure, KeepClear, SpotResult};
use downlead_eval::result::ItemResult;
use downlead_report::words::{exposure as words, link};
use downlead_station::model::{Meaning, Station};
use rustc_hash::FxHashSet;

use super::lines::Hints;
use crate::status::Status;

impl Hints<'_, '_> {
    pub(super) fn spots_and_hops(&mut self, meaning: &Meaning, result: &ItemResult) {
        if let (Meaning::Station(st), Some(e)) = (meaning, &result.exposure) {
            self.spots(e);
            self.neighbours(st, e);
            self.distances(e);
        }
        let Some(l) = &result.link else { return };
        let mut seen = FxHashSet::default();
        for h in &l.hops {
            let Some(end) = self.end_of(h.loc) else {
                continue;
            };
            self.judged
                .extend(Status::of_link(h.verdict).map(|s| (h.loc, s)));
            let more = !seen.insert(h.loc);
            let tip = self.tip(|| {
                let missing: Vec<&str> = h.missing.iter().map(|m| m.words()).collect();
                missing.join("; ")
            });
            let tip = tip.filter(|_| !h.missing.is_empty());
            let text = link::short(h);
            let line = match more {
                true => self.at(end),
                false => self.begin(end, ""),
            };
            if more {
                line.word(", ");
            }
            line.push(text, tip, None);
        }
        for n in &l.not_judged {
            self.open(n.loc, n.why.words());
        }
    }

    /// Of several sets of rules the one that says worst.
    fn spots(&mut self, e: &Exposure) {
        let mut seen = FxHashSet::default();
        for s in &e.spots {
            if !seen.insert(s.loc) {
                continue;
            }
            let Some(end) = self.end_of(s.loc) else {
                continue;
            };
            let mut all: Vec<&SpotResult> = e.spots.iter().filter(|x| x.loc == s.loc).collect();
            let upper = |s: &SpotResult| s.upper.unwrap_or(f64::INFINITY);
            all.sort_by(|a, b| {
                let worse = a.verdict.cmp(&b.verdict);
                worse.then(upper(b).total_cmp(&upper(a)))
            });
            self.judged
                .extend(all.iter().map(|s| (s.loc, s.verdict.into())));
            let tip = self.tip(|| {
                let each = all
                    .iter()
                    .map(|s| format!("{}: {}", s.set, words::short(s)));
                each.collect::<Vec<_>>().join("  \n")
            });
            let text = words::short(all[0]);
            self.begin(end, "").push(text, tip, None);
        }
        for n in &e.not_judged {
            self.open(n.loc, n.why.words());
        }
    }

    fn open(&mut self, loc: Loc, why: &str) {
        if let Some(end) = self.end_of(loc) {
            self.begin(end, "").word(format!("not judged: {why}"));
        }
    }

    fn neighbours(&mut self, st: &Station, e: &Exposure) {
        for b in &st.site.beside {
            let Some(end) = self.end_of(b.loc) else {
                continue;
            };
            if let Some(text) = words::beside(&b.station.text, &e.spots) {
                self.begin(end, "").word(text);
            }
        }
    }

    /// The farthest of the distances to keep from an antenna.
    fn distances(&mut self, e: &Exposure) {
        let mut seen = FxHashSet::default();
        for k in &e.keep_clear {
            if !seen.insert(k.antenna) {
                continue;
            }
            let metres = |k: &&KeepClear| k.distance.as_ref().map_or(f64::INFINITY, |d| d.keep_m);
            let all = e.keep_clear.iter().filter(|x| x.antenna == k.antenna);
            let far = all.max_by(|a, b| metres(a).total_cmp(&metres(b)));
            let (Some(far), Some(end)) = (far, self.end_of(k.antenna)) else {
                continue;
            };
            let tip = self.tip(|| format!("{}, by {}", far.tier.word(), far.set));
            let text = words::keep_clear(far);
            self.begin(end, "").push(text, tip, None);
        }
    }
}
