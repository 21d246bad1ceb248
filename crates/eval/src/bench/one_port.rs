//! What is measured with a reflection or as a network: the bench's own ends, a piece from what
//! comes back of it, a piece from a file.

use downlead_base::Loc;
use downlead_physics::cx::abs;
use downlead_physics::measure::{
    Budget, Ends, Loss, OnePort, Source, Term, directivity_u, impedance, one_port, open_short,
};
use downlead_physics::mismatch::gamma_from_swr;
use downlead_physics::uncertainty::rectangular;
use downlead_quantity::Measure;
use downlead_station::model::Bound;
use downlead_station::session::{Match, ReadingKind};

use super::cells::{Bench, Found, sorted};
use super::findings::{self, Place};
use super::gather::{Group, Taken, TakenValue};
use super::result::{Expected, Method};
use crate::assume::Assumed;
use crate::point::pick;

/// Impedance of a cable against its nominal one, which one open or shorted end alone cannot
/// tell: one-way loss, dB, half-width (a cable of 52 ohm in 50 ohm at 145 MHz; common practice).
const ONE_END_DB: f64 = 0.1;

impl<'m> Bench<'m, '_> {
    /// Reflections of the bench and the piece; none if no end states its match.
    pub(super) fn ends(&mut self, loss_db: f64, expected: Option<&Expected>) -> Option<Ends> {
        let (load, load_bounded) = self.reflection(&self.session.load);
        let (source, source_bounded) = self.reflection(&self.session.generator);
        if load.is_none() || source.is_none() {
            self.assumed
                .add(Assumed::BenchMatched, self.session.name.loc);
        }
        if load.is_none() && source.is_none() {
            return None;
        }
        // what the meters see is the piece with both its ends
        let own = expected.map_or(0.0, |e| e.inserted);
        if own == 0.0 {
            self.assumed
                .add(Assumed::PieceMatched, self.session.name.loc);
        }
        let mut ends = Ends::new(
            source.unwrap_or(0.0),
            load.unwrap_or(0.0),
            own,
            own,
            loss_db.max(0.0),
        );
        ends.bounded = load_bounded && source_bounded;
        Some(ends)
    }

    /// |Γ| of an end, and whether that is only an upper bound.
    fn reflection(&self, m: &'m Match) -> (Option<f64>, bool) {
        if let Some(f) = &m.file
            && let Some(a) = self.env.attachments.at(f.loc)
            && let Some(n) = a.network()
            && let Ok(s) = n.matrix_at(self.point.hz)
        {
            return (s.first().map(|g| abs(*g)), false);
        }
        match pick(&m.swr, self.point, self.env) {
            Some(p) => (
                Some(spread(&p.value)),
                matches!(p.figure.meta.bound, Some((Bound::Maximum, _))),
            ),
            // not stated counts as a bound that is met
            None => (None, true),
        }
    }

    /// Loss from what comes back with the far end open and shorted.
    pub(super) fn reflections(
        &mut self,
        g: &Group<'m>,
        piece: usize,
        expected: Option<&Expected>,
    ) -> Option<Found> {
        let of = |k: ReadingKind| {
            g.taken
                .iter()
                .find(move |t| t.kind == k && t.piece == Some(piece))
        };
        let (open, short) = (of(ReadingKind::Open), of(ReadingKind::Short));
        let [open, short] = [open, short].map(|t| t.filter(|t| self.one_port(t)));
        let rows: Vec<Loc> = [open, short].into_iter().flatten().map(|t| t.loc).collect();
        let count = rows.len();
        let first = open.or(short)?;
        let place = Place::new(first, self.point);
        let complex = |t: Option<&Taken<'m>>| match t.map(|t| &t.shown) {
            Some(TakenValue::File(a)) => {
                let n = a.network()?;
                let s = n.matrix_at(self.point.hz).ok()?;
                Some(impedance(*s.first()?, *n.z0().first()?))
            }
            _ => None,
        };
        let mut budget = Budget::new();
        let m = self
            .meters
            .of(first, self.session, self.env, self.assumed, self.out)?;
        let (number, directivity, gain_db) = (
            m.number,
            m.instrument.and_then(|i| i.directivity_db),
            m.u_db,
        );
        if let (Some(zo), Some(zs)) = (complex(open), complex(short)) {
            let x = open_short(zo, zs);
            if !x.loss_db.is_finite() {
                findings::no_loss(&place, self.out);
                return None;
            }
            self.reflection_doubt(&mut budget, number, x.loss_db, directivity, gain_db, count);
            return Some(Found {
                method: Method::OpenShortExact,
                loss: Loss::from_budget(x.loss_db, &budget),
                budget: sorted(&budget),
                rows,
                count,
                reading: None,
                meter: None,
                losses: Vec::new(),
                half_difference_db: None,
            });
        }
        let return_loss = |t: Option<&Taken<'m>>| match t.map(|t| &t.shown) {
            Some(TakenValue::ReturnLoss(db)) => Some(*db),
            Some(TakenValue::File(a)) => {
                let s = a.network()?.matrix_at(self.point.hz).ok()?;
                Some(-2.0 * downlead_quantity::to_db(abs(*s.first()?)))
            }
            _ => None,
        };
        let (method, loss_db, half) = match (return_loss(open), return_loss(short)) {
            (Some(o), Some(s)) => {
                let OnePort {
                    loss_db,
                    half_difference_db,
                    ..
                } = one_port(o, s);
                (Method::OpenShort, loss_db, Some(half_difference_db))
            }
            (Some(x), None) | (None, Some(x)) => {
                findings::one_end(&place, self.out);
                budget.push(Term::type_b(Source::Other(0), rectangular(ONE_END_DB)));
                (Method::OneEnd, 0.5 * x, None)
            }
            (None, None) => return None,
        };
        if method == Method::OpenShort
            && let Some(e) = expected.filter(|e| e.reflection > 1e-6)
        {
            budget.push(Term::type_b(
                Source::Other(0),
                rectangular(half_mean_error_db(e.reflection, e.matched_db)),
            ));
        }
        self.reflection_doubt(&mut budget, number, loss_db, directivity, gain_db, count);
        Some(Found {
            method,
            loss: Loss::from_budget(loss_db, &budget),
            budget: sorted(&budget),
            rows,
            count,
            reading: None,
            meter: None,
            losses: Vec::new(),
            half_difference_db: half,
        })
    }

    /// Whether a reading of a return loss can be had: one from a file must be of one port (of a
    /// two-port the far end is the analyser's) and reach the band.
    fn one_port(&mut self, t: &Taken<'m>) -> bool {
        let TakenValue::File(a) = t.shown else {
            return true;
        };
        let place = Place::new(t, self.point);
        findings::of_network(a, 1, self.point, &place, self.out, |s| abs(s[0])).is_some()
    }

    fn reflection_doubt(
        &mut self,
        budget: &mut Budget,
        meter: usize,
        loss_db: f64,
        directivity: Option<f64>,
        gain_db: f64,
        count: usize,
    ) {
        match directivity {
            Some(d) => {
                // the two ends meet the same leak with other phases
                let u = directivity_u(2.0 * loss_db, d);
                let n = libm::sqrt(f64::from(u32::try_from(count.max(1)).unwrap_or(1)));
                budget.push(Term::type_b(Source::Other(1), u / n));
            }
            None => self
                .assumed
                .add(Assumed::DirectivityPerfect, self.session.name.loc),
        }
        // half of the uncertainty of a return loss, common to both ends
        budget.push(Term::type_b(Source::Scale(meter), 0.5 * gain_db));
    }

    /// Loss from the transmission of a network file.
    pub(super) fn network(&mut self, g: &Group<'m>, piece: usize) -> Option<Found> {
        let t = g.taken.iter().find(|t| {
            t.kind == ReadingKind::Through
                && t.piece == Some(piece)
                && matches!(t.shown, TakenValue::File(_))
        })?;
        let TakenValue::File(a) = t.shown else {
            return None;
        };
        let place = Place::new(t, self.point);
        let db = findings::of_network(a, 2, self.point, &place, self.out, |s| {
            -2.0 * downlead_quantity::to_db(abs(s[2]))
        })?;
        let m = self
            .meters
            .of(t, self.session, self.env, self.assumed, self.out)?;
        let mut budget = Budget::new();
        budget.push(Term::type_b(Source::Scale(m.number), m.u_db));
        Some(Found {
            method: Method::Network,
            loss: Loss::from_budget(db, &budget),
            budget: sorted(&budget),
            rows: vec![t.loc],
            count: 1,
            reading: None,
            meter: None,
            losses: Vec::new(),
            half_difference_db: None,
        })
    }
}

/// How far half of the mean return loss with the end open and shorted may be from the loss of a line
/// of `loss_db` whose impedance reflects `own` in 50 ohm, dB, at any electrical length.
///
/// With `x = A² exp(−2jβl)` the product of both reflections is `|own² − x| / |1 − own² x|`, which
/// lies between its values at `x = A²` and `x = −A²`.
fn half_mean_error_db(own: f64, loss_db: f64) -> f64 {
    let r = own * own;
    let a = downlead_quantity::from_db(-2.0 * loss_db);
    let db = |product: f64| -0.5 * downlead_quantity::to_db(product);
    let least = db((a + r) / (1.0 + r * a));
    let most = db(((a - r) / (1.0 - r * a)).abs().max(1e-4));
    (loss_db - least).abs().max((most - loss_db).abs())
}

/// Size of the reflection of an SWR; the root of the mean square over its ±.
pub(super) fn spread(swr: &Measure) -> f64 {
    let gamma = gamma_from_swr(swr.value);
    // d|Γ|/d(SWR)
    let slope = 2.0 / ((swr.value + 1.0) * (swr.value + 1.0));
    libm::hypot(gamma, slope * swr.u)
}
