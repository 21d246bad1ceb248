//! By how much a chain moved between two states of a text, with the uncertainty of that
//! difference: causes that both states share cancel (GUM, JCGM 100:2008, 5.2).
//!
//! A stated figure is the same figure in both states when it stands at the same part (or
//! definition), is of the same kind and has the same value and uncertainty; its error is then one
//! error. A figure that was changed is another figure, and so is one of a part that was replaced
//! (`since` with another date). An instrument and a `shared` name are one cause by their name.

mod figures;

use downlead_physics::net::difference::{Compared, Difference, difference};
use downlead_station::model::{Meaning, Station};

use crate::chain::Cx;
use crate::explain::chains_of;
use crate::places::Places;
use crate::result::{BandResult, ChainResult};
use crate::snapshot::{Evaluated, Scope};
use figures::{Figures, shared};

/// A chain on a band in one state of a text.
#[derive(Clone, Copy)]
pub struct At<'s> {
    /// Places of the snapshot.
    pub places: &'s Places<'s>,
    /// The scope of the file.
    pub scope: &'s Scope,
    /// The item of the chain.
    pub item: &'s Evaluated,
    /// The chain, by its number in the item.
    pub chain: usize,
    /// The band, by its number in the chain.
    pub band: usize,
}

impl<'s> At<'s> {
    /// The chain's results.
    #[must_use]
    pub fn result(&self) -> Option<&'s ChainResult> {
        self.item.2.chains.get(self.chain)
    }

    /// The results on the band.
    #[must_use]
    pub fn band(&self) -> Option<&'s BandResult> {
        self.result()?.bands.get(self.band)
    }

    fn station(&self) -> Option<&'s Station> {
        match &self.item.1.meaning {
            Meaning::Station(st) => Some(st),
            _ => None,
        }
    }
}

/// A difference of a level or loss.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Step {
    /// New less old, dB.
    pub db: f64,
    /// Expanded uncertainty (k = 2) of that, dB.
    pub uncertainty_db: f64,
    /// Interval of 95 % (2.275 % to 97.725 %), dB.
    pub interval_db: [f64; 2],
}

impl Step {
    const NONE: Step = Step {
        db: 0.0,
        uncertainty_db: 0.0,
        interval_db: [0.0, 0.0],
    };

    fn of(d: &Difference) -> Step {
        Step {
            db: d.mean,
            uncertainty_db: 2.0 * d.u,
            interval_db: [d.low, d.high],
        }
    }

    /// Whether it is larger than its uncertainty and than what is rounding.
    #[must_use]
    pub fn speaks(&self, same_db: f64) -> bool {
        let [low, high] = self.interval_db;
        self.db.abs() >= same_db && (low > 0.0 || high < 0.0)
    }

    /// The same from the new state to the old one.
    #[must_use]
    pub fn reversed(&self) -> Step {
        Step {
            db: -self.db,
            uncertainty_db: self.uncertainty_db,
            interval_db: [-self.interval_db[1], -self.interval_db[0]],
        }
    }
}

/// By how much the results of a chain on a band moved.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Moved {
    /// ERP and EIRP.
    pub radiated: Option<Step>,
    /// Power into the antenna or load.
    pub delivered: Option<Step>,
    /// Loss of the chain.
    pub loss: Option<Step>,
}

/// Results closer than this are the same, dB.
const SAME: f64 = 1e-9;

/// By how much a chain on a band moved from the old to the new state. `renamed` are tags of parts:
/// then, now.
#[must_use]
pub fn moved(old: &At<'_>, new: &At<'_>, renamed: &[(String, String)]) -> Moved {
    let (Some(a), Some(b)) = (old.band(), new.band()) else {
        return Moved::default();
    };
    let both = |x: Option<f64>, y: Option<f64>| x.is_some() && y.is_some();
    let known = [
        both(a.eirp_w, b.eirp_w),
        both(a.antenna_w, b.antenna_w),
        both(a.total_db, b.total_db),
    ];
    if same(a, b) {
        let [radiated, delivered, loss] = known.map(|k| k.then_some(Step::NONE));
        return Moved {
            radiated,
            delivered,
            loss,
        };
    }
    let (Some(x), Some(y)) = (rebuilt(old), rebuilt(new)) else {
        return Moved::default();
    };
    let (f, g) = (Figures::of(old, &x), Figures::of(new, &y));
    let shared = shared(&f, &g, renamed);
    let step = |of: Compared, known: bool| {
        let d = difference(
            (&x.net, &x.evaluation),
            (&y.net, &y.evaluation),
            &shared,
            of,
        );
        d.filter(|_| known).map(|d| Step::of(&d))
    };
    Moved {
        radiated: step(Compared::Radiated, known[0]),
        delivered: step(Compared::Delivered, known[1]),
        loss: step(Compared::Loss, known[2]),
    }
}

/// Whether two results have the same numbers, part by part.
fn same(a: &BandResult, b: &BandResult) -> bool {
    let close = |x: f64, y: f64| (x - y).abs() <= SAME || x.to_bits() == y.to_bits();
    let option = |x: Option<f64>, y: Option<f64>| match (x, y) {
        (Some(x), Some(y)) => close(x, y),
        (None, None) => true,
        _ => false,
    };
    let ratio = |x: Option<f64>, y: Option<f64>| match (x, y) {
        (Some(x), Some(y)) => (x - y).abs() <= SAME * x.abs().max(y.abs()),
        (None, None) => true,
        _ => false,
    };
    ratio(a.eirp_w, b.eirp_w)
        && ratio(a.antenna_w, b.antenna_w)
        && option(a.total_db, b.total_db)
        && option(a.uncertainty_db, b.uncertainty_db)
        && a.nodes.len() == b.nodes.len()
        && a.nodes.iter().zip(&b.nodes).all(|(m, n)| {
            close(m.matched_db, n.matched_db)
                && close(m.uncertainty_db, n.uncertainty_db)
                && option(m.swr, n.swr)
        })
}

/// The chain on its band, evaluated once more with all that its numbers are made of.
fn rebuilt<'s>(at: &At<'s>) -> Option<crate::chain::Computed<'s>> {
    let cx = Cx {
        station: at.station(),
        chain: chains_of(&at.item.1.meaning).get(at.chain)?,
        env: at.scope.env(),
        direction: at.result()?.direction,
        stage: crate::stage::Stage::Whole,
    };
    Some(crate::verify::rebuilt(at.scope, &cx, at.band()?))
}

/// Mean and standard uncertainty (dB) of the difference of the radiated power (of the loss where
/// nothing radiates) by `draws` random draws of both states together, to check [`moved`].
#[must_use]
pub fn drawn_together(
    old: &At<'_>,
    new: &At<'_>,
    renamed: &[(String, String)],
    draws: usize,
) -> Option<(f64, f64)> {
    let (x, y) = (rebuilt(old)?, rebuilt(new)?);
    let shared = shared(&Figures::of(old, &x), &Figures::of(new, &y), renamed);
    let radiates = old.band()?.eirp_w.is_some() && new.band()?.eirp_w.is_some();
    let of = if radiates {
        Compared::Radiated
    } else {
        Compared::Loss
    };
    let d =
        downlead_physics::net::difference::drawn_together(&x.net, &y.net, &shared, of, draws, 11);
    Some((d.mean, d.u))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn step(db: f64, interval_db: [f64; 2]) -> Step {
        Step {
            db,
            uncertainty_db: 0.5,
            interval_db,
        }
    }

    #[test]
    fn a_difference_speaks_where_its_interval_leaves_out_zero() {
        assert!(step(1.0, [0.5, 1.5]).speaks(0.02));
        assert!(step(-1.0, [-1.5, -0.5]).speaks(0.02));
        assert!(!step(0.3, [-0.2, 0.8]).speaks(0.02));
        // an interval that ends at zero holds zero
        assert!(!step(1.0, [0.0, 2.0]).speaks(0.02));
        assert!(!step(-1.0, [-2.0, 0.0]).speaks(0.02));
        // and what is less than rounding is none
        assert!(!step(0.019, [0.01, 0.03]).speaks(0.02));
        assert!(step(0.02, [0.01, 0.03]).speaks(0.02));
        assert!(!Step::NONE.speaks(0.0));
    }

    #[test]
    fn reversed_it_is_the_way_back() {
        let there = step(1.0, [0.25, 1.5]);
        let back = there.reversed();
        assert_eq!(back, step(-1.0, [-1.5, -0.25]));
        assert_eq!(back.reversed(), there);
        assert_eq!(back.speaks(0.02), there.speaks(0.02));
    }

    #[test]
    fn its_uncertainty_is_expanded() {
        let of = Step::of(&Difference {
            mean: 0.7,
            u: 0.2,
            low: 0.3,
            high: 1.0,
        });
        assert_eq!(
            (of.db, of.uncertainty_db, of.interval_db),
            (0.7, 0.4, [0.3, 1.0])
        );
    }
}
