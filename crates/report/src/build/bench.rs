//! From computed sessions to the shape that is printed.

use downlead_eval::Places;
use downlead_eval::bench::result::{BenchBand, BenchCell, BenchPiece, SessionResult};
use downlead_physics::measure::{LossFit, Source, Verdict};
use downlead_station::Env;
use downlead_station::model::{Accuracy, Instrument, Meaning};
use downlead_station::session::{LengthBy, Session};

use crate::shape::bench::*;
use crate::shape::loss_law::{LossLaw, held_at_zero, refused};
use crate::shape::word::{LengthFrom, Word};
use downlead_eval::Snapshot;

/// The sessions of a snapshot, each with what it was written and computed as.
pub fn sessions(snapshot: &Snapshot) -> impl Iterator<Item = (&Session, &SessionResult, &Env)> {
    snapshot.scopes().iter().flat_map(|scope| {
        scope
            .items()
            .iter()
            .filter_map(|(_, low, result)| match &low.meaning {
                Meaning::Session(s) => Some((&**s, result.session.as_deref()?, scope.env())),
                _ => None,
            })
    })
}

/// A session as it is printed.
pub fn session(places: &Places<'_>, s: &Session, r: &SessionResult, env: &Env) -> SessionReport {
    let (file, _, line) = places.at(r.loc);
    let mut cells: Vec<&BenchCell> = r.cells.iter().collect();
    cells.sort_by_key(|c| (c.piece, c.band));
    SessionReport {
        name: s.name.text.to_string(),
        title: s.title.as_ref().map(ToString::to_string),
        file,
        line,
        date: s.meta.date.as_ref().map(ToString::to_string),
        person: s.meta.person.as_ref().map(ToString::to_string),
        temperature_c: s.temperature.map(|t| t.value),
        instruments: r
            .meters
            .iter()
            .map(|n| instrument(n, s.meta.date.as_deref(), env))
            .collect(),
        readings: r.readings,
        rows_lost: r.lost,
        verdicts: counts(cells.iter().copied()),
        bands: r.bands.iter().map(|b| band(b, r)).collect(),
        pieces: (0..r.pieces.len())
            .map(|i| piece(places, s, r, i))
            .collect(),
        results: cells.iter().map(|c| result(r, c)).collect(),
        reflections: reflections(places, r),
        contributions: contributions(r),
        assumptions: r.assumptions(places),
        runs: None,
    }
}

/// Comparisons by verdict.
#[must_use]
pub fn counts<'c>(cells: impl Iterator<Item = &'c BenchCell>) -> VerdictCounts {
    let compared = cells.filter_map(|c| c.comparison.as_ref());
    VerdictCounts::of(compared.map(|x| x.verdict.into()))
}

fn instrument(name: &str, date: Option<&str>, env: &Env) -> InstrumentReport {
    let i = env.instrument(name);
    let accuracy = i.and_then(|i| i.accuracy);
    InstrumentReport {
        name: name.to_owned(),
        title: i.and_then(|i| i.title.as_ref()).map(ToString::to_string),
        standard_of_reading: match accuracy {
            Some(Accuracy::OfReading(u)) => Some(u),
            _ => None,
        },
        standard_of_full_scale: match accuracy {
            Some(Accuracy::OfFullScale(u)) => Some(u),
            _ => None,
        },
        standard_db: match accuracy {
            Some(Accuracy::Decibel(u)) => Some(u),
            _ => None,
        },
        full_scale_w: i.and_then(|i| i.scale_w),
        resolution_w: i.and_then(|i| i.resolution_w),
        standard_linearity: i.and_then(|i| i.linearity.filter(|_| !i.linearity_of_scale)),
        standard_linearity_of_full_scale: i
            .and_then(|i| i.linearity.filter(|_| i.linearity_of_scale)),
        standard_repeatability: i.and_then(|i| i.repeatability),
        directivity_db: i.and_then(|i| i.directivity_db),
        certificate: i.and_then(|i| certificate(i, date, env)),
        recalled_percent: i.and_then(|i| Some(100.0 * i.recalled.as_ref()?.share)),
        recalled_since: i
            .and_then(|i| i.recalled.as_ref()?.since.as_ref())
            .map(ToString::to_string),
        calibrated: i
            .and_then(|i| i.calibrated.as_ref())
            .map(ToString::to_string),
        due: i.and_then(|i| i.due.as_ref()).map(ToString::to_string),
    }
}

fn certificate(i: &Instrument, date: Option<&str>, env: &Env) -> Option<CertificateReport> {
    let (file, c, holds) = downlead_eval::instrument::certificate(i, date, env)?;
    let (lowest_hz, highest_hz) = c.range_hz().filter(|_| c.problems.is_empty())?;
    Some(CertificateReport {
        file: file.to_owned(),
        number: c.number.as_deref().map(ToOwned::to_owned),
        from: c
            .from
            .as_deref()
            .or(i.calibrated.as_deref())
            .map(ToOwned::to_owned),
        until: c
            .until
            .as_deref()
            .or(i.due.as_deref())
            .map(ToOwned::to_owned),
        lowest_hz,
        highest_hz,
        points: c.points.len(),
        holds,
    })
}

fn band(b: &BenchBand, r: &SessionResult) -> BandReport {
    let finite = |v: f64| v.is_finite().then_some(v);
    BandReport {
        band: b.band.to_string(),
        frequency_hz: b.hz,
        drift_percent: b.drift.and_then(|d| finite(d.total_percent)),
        drift_percent_per_minute: b.drift.and_then(|d| finite(d.percent_per_minute)),
        drift_minutes: b.drift.and_then(|d| finite(d.minutes)),
        drift_scatter_percent: b.drift.and_then(|d| d.scatter_percent),
        ranking: ranking(b, r),
    }
}

fn ranking(b: &BenchBand, r: &SessionResult) -> Vec<RankReport> {
    let sharing = |group: usize| b.ranking.iter().filter(|x| x.1 == group).count();
    b.ranking
        .iter()
        .filter_map(|(cell, group)| {
            let c = r.cells.get(*cell)?;
            let p = c.per_length?;
            let before = b.ranking.iter().position(|x| x.1 == *group)?;
            Some(RankReport {
                rank: before + 1,
                sharing: sharing(*group),
                piece: r.pieces[c.piece].name.to_string(),
                loss_db_per_m: p.db_per_m,
                uncertainty_db_per_m: 2.0 * p.u_db_per_m,
                trusted: p.trusted,
            })
        })
        .collect()
}

fn piece(places: &Places<'_>, s: &Session, r: &SessionResult, index: usize) -> PieceReport {
    let p = &r.pieces[index];
    let (fit, fit_refused) = match &p.fit {
        Some(Ok(f)) => (Some(fit(f, p, r)), None),
        Some(Err(e)) => (
            None,
            Some(refused(e, &|i| {
                p.fit_bands
                    .get(i)
                    .map_or_else(String::new, |b| r.bands[*b].band.to_string())
            })),
        ),
        None => (None, None),
    };
    PieceReport {
        piece: p.name.to_string(),
        cable: p.cable.to_string(),
        length_m: p.length_m.map(|l| l.0),
        length_uncertainty_m: p.length_m.map(|l| 2.0 * l.1),
        joins: s.pieces.get(index).map_or_else(Vec::new, |x| {
            x.connectors
                .iter()
                .map(|(count, name)| JoinReport {
                    count: *count,
                    connector: name.text.to_string(),
                })
                .collect()
        }),
        temperature_c: p.celsius,
        line: places.line(p.loc),
        verdicts: counts(r.cells.iter().filter(|c| c.piece == index)),
        slip_bands: r
            .cells
            .iter()
            .filter(|c| c.piece == index && c.slip)
            .map(|c| r.bands[c.band].band.to_string())
            .collect(),
        whole: whole(p, r),
        fit,
        fit_refused,
        lengths: lengths(places, s, p),
    }
}

fn whole(p: &BenchPiece, r: &SessionResult) -> Option<WholeReport> {
    let w = p.whole.as_ref()?;
    let edge = |k: f64| libm::exp(w.ln_ratio + k * w.u_ln);
    Some(WholeReport {
        ratio: w.ratio,
        ratio_low: edge(-2.0),
        ratio_high: edge(2.0),
        ratio_standard_by_readings: w.ratio * w.u_random,
        chi_square: w.chi2,
        degrees_of_freedom: w.dof,
        p: w.p.is_finite().then(|| super::probability(w.p)),
        worst_band: p
            .worst
            .and_then(|c| r.cells.get(c))
            .map(|c| r.bands[c.band].band.to_string()),
        worst_en: w.worst_en,
        bands_used: w.used,
        verdict: w.verdict.into(),
    })
}

fn fit(f: &LossFit, p: &BenchPiece, r: &SessionResult) -> FitReport {
    let band = |i: usize| p.fit_bands.get(i).map(|b| r.bands[*b].band.to_string());
    let worst = (0..f.residuals.len())
        .max_by(|a, b| f.residuals[*a].abs().total_cmp(&f.residuals[*b].abs()));
    FitReport {
        law: LossLaw::of(f),
        standard_shared: f.shared,
        held_at_zero: held_at_zero(f),
        chi_square: f.chi2,
        degrees_of_freedom: f.dof,
        p: f.p.is_finite().then(|| super::probability(f.p)),
        worst_band: worst.and_then(band),
        worst_residual: worst.map(|w| f.residuals[w]),
        outlier_band: f.outlier.and_then(|o| band(o.index)),
        outlier_or_band: f.outlier.and_then(|o| band(o.rival?)),
        add_frequency_hz: f.advice.map(|a| a.add_hz),
        lowest_hz: f.range_hz.0,
        highest_hz: f.range_hz.1,
    }
}

fn lengths(places: &Places<'_>, s: &Session, p: &BenchPiece) -> Vec<LengthReport> {
    p.lengths
        .iter()
        .map(|(loc, length, tape)| LengthReport {
            by: match s.lengths.iter().find(|l| l.loc == *loc).map(|l| l.by) {
                Some(LengthBy::Delay(_)) => LengthFrom::Delay,
                Some(LengthBy::Phase(_)) => LengthFrom::Phase,
                Some(LengthBy::Resonance(_)) | None => LengthFrom::Resonance,
            },
            length_m: length.metres,
            uncertainty_m: 2.0 * length.u_metres,
            difference_m: tape.as_ref().map(|t| t.difference_m),
            difference_uncertainty_m: tape.as_ref().map(|t| t.expanded_m),
            verdict: tape.as_ref().map(|t| t.verdict.into()),
            velocity_factor: tape.as_ref().map(|t| t.velocity_factor),
            velocity_factor_uncertainty: tape.as_ref().map(|t| 2.0 * t.u_velocity_factor),
            line: places.line(*loc),
        })
        .collect()
}

fn result(r: &SessionResult, c: &BenchCell) -> ResultReport {
    let (b, p) = (&r.bands[c.band], &r.pieces[c.piece]);
    let x = c.comparison.as_ref();
    let cannot = x.is_some_and(|x| x.verdict == Verdict::CannotTell);
    ResultReport {
        piece: p.name.to_string(),
        band: b.band.to_string(),
        frequency_hz: b.hz,
        method: c.method.words(),
        readings: c.count,
        loss_db: c.measured.db,
        loss_uncertainty_db: c.measured.expanded_db,
        loss_coverage: c.measured.k,
        loss_low_db: c.measured.low_db,
        loss_high_db: c.measured.high_db,
        through_percent: c.measured.through_percent,
        uncorrected_loss_db: c.measured.naive_db,
        expected_db: c.expected.map(|e| e.db),
        expected_uncertainty_db: c.expected.map(|e| 2.0 * e.u_db),
        joins_db: c.expected.map(|e| e.joins_db),
        difference_db: x.map(|x| x.difference_db),
        uncertainty_db: x.map(|x| x.expanded_db),
        en: x.map(|x| x.en),
        verdict: x.map(|x| x.verdict.into()),
        slip: c.slip,
        better_meter_factor: x.filter(|_| cannot).and_then(|x| x.meter_factor),
        longer_piece_m: c
            .length_factor
            .filter(|_| cannot)
            .and_then(|f| Some(f * p.length_m?.0)),
        drift_prevails: c.drift_prevails(),
        loss_db_per_m: c.per_length.map(|x| x.db_per_m),
        loss_uncertainty_db_per_m: c.per_length.map(|x| 2.0 * x.u_db_per_m),
        trusted: c.per_length.map(|x| x.trusted),
        half_difference_db: c.half_difference_db,
        budget: budget(r, c),
    }
}

/// A kind of cause of the uncertainty of a comparison; meters by their place in the session.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Kind {
    Scale(usize),
    FullScale(usize),
    Linearity,
    Repeatability,
    Resolution,
    Drift,
    Mismatch,
    Adapters,
    Certificate,
    OneEnd,
    Directivity,
    Other,
    Sheet,
    Joins,
}

impl Kind {
    fn of(source: Source) -> Kind {
        match source {
            Source::Scale(m) => Kind::Scale(m),
            Source::Offset(m) => Kind::FullScale(m),
            Source::Linearity(_) => Kind::Linearity,
            Source::Repeatability(_) => Kind::Repeatability,
            Source::Resolution(_) => Kind::Resolution,
            Source::Drift(_) => Kind::Drift,
            Source::Mismatch(_) => Kind::Mismatch,
            Source::Adapter(_) => Kind::Adapters,
            Source::Certificate(_) => Kind::Certificate,
            Source::Other(0) => Kind::OneEnd,
            Source::Other(1) => Kind::Directivity,
            Source::Other(_) => Kind::Other,
        }
    }

    fn words(self, meters: &[Box<str>]) -> String {
        let meter = |i: usize| match meters.get(i).map(|n| &**n) {
            Some("") | None => "the meter".to_owned(),
            Some(n) => n.to_owned(),
        };
        let plain = match self {
            Kind::Scale(m) => return format!("scale of {}", meter(m)),
            Kind::FullScale(m) => return format!("full-scale error of {}", meter(m)),
            Kind::Linearity => "linearity",
            Kind::Repeatability => "repeatability",
            Kind::Resolution => "resolution",
            Kind::Drift => "drift between baselines",
            Kind::Mismatch => "mismatch of the bench",
            Kind::Adapters => "adapters",
            Kind::Certificate => "certificate of the meter",
            Kind::OneEnd => "one end only",
            Kind::Directivity => "directivity",
            Kind::Other => "other",
            Kind::Sheet => "the cable's sheet",
            Kind::Joins => "the joins",
        };
        plain.to_owned()
    }
}

/// The uncertainty of a comparison by kind of cause: words and standard uncertainty, dB.
fn causes(r: &SessionResult, c: &BenchCell) -> Vec<(Kind, String, f64)> {
    let mut sums: Vec<(Kind, String, f64)> = Vec::new();
    let mut add = |kind: Kind, u: f64| match sums.iter_mut().find(|s| s.0 == kind) {
        Some(s) => s.2 = libm::hypot(s.2, u),
        None => sums.push((kind, kind.words(&r.meters), u)),
    };
    for t in &c.budget {
        add(Kind::of(t.source), t.u_db.abs());
    }
    if let Some(e) = c.expected {
        let cable = libm::sqrt((e.u_db * e.u_db - e.u_joins_db * e.u_joins_db).max(0.0));
        add(Kind::Sheet, cable);
        add(Kind::Joins, e.u_joins_db);
    }
    sums.retain(|s| s.2 > 0.0);
    sums.sort_by(|a, b| b.2.total_cmp(&a.2).then(a.1.cmp(&b.1)));
    sums
}

fn budget(r: &SessionResult, c: &BenchCell) -> Vec<CauseReport> {
    causes(r, c)
        .into_iter()
        .map(|(_, cause, standard_db)| CauseReport { cause, standard_db })
        .collect()
}

/// The uncertainty over all comparisons by kind of cause, largest first.
#[must_use]
pub fn contributions(r: &SessionResult) -> Vec<ContributionReport> {
    let mut all: Vec<(Kind, ContributionReport)> = Vec::new();
    let mut total = 0.0;
    for c in &r.cells {
        for (kind, cause, standard_db) in causes(r, c) {
            let variance = standard_db * standard_db;
            total += variance;
            match all.iter_mut().find(|d| d.0 == kind) {
                Some((_, d)) => {
                    d.smallest_standard_db = d.smallest_standard_db.min(standard_db);
                    d.largest_standard_db = d.largest_standard_db.max(standard_db);
                    d.share += variance;
                }
                None => all.push((
                    kind,
                    ContributionReport {
                        cause,
                        smallest_standard_db: standard_db,
                        largest_standard_db: standard_db,
                        share: variance,
                    },
                )),
            }
        }
    }
    let mut all: Vec<ContributionReport> = all.into_iter().map(|d| d.1).collect();
    all.iter_mut().for_each(|d| d.share /= total);
    all.sort_by(|a, b| b.share.total_cmp(&a.share).then(a.cause.cmp(&b.cause)));
    all
}

fn reflections(places: &Places<'_>, r: &SessionResult) -> Vec<SwrReport> {
    r.swrs
        .iter()
        .map(|s| SwrReport {
            reading: Word(s.kind),
            piece: s.piece.map(|p| r.pieces[p].name.to_string()),
            band: r.bands[s.band].band.to_string(),
            frequency_hz: r.bands[s.band].hz,
            swr: s.swr.swr,
            swr_low: s.swr.low,
            swr_high: s.swr.high,
            decimals: s.swr.decimals,
            line: places.line(s.loc),
            imported_from: s.from.as_ref().map(|f| f.0.to_string()),
            imported_line: s.from.as_ref().map(|f| f.1),
        })
        .collect()
}
