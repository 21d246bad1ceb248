//! Bench sessions in words.

use downlead_quantity::{db, frequency, length, number, percent, sig};

use super::figure::{counted, with_uncertainty};
use super::verdict::{Judged, text};
use crate::document::Text;
use crate::shape::bench::*;
use crate::shape::loss_law::{PER, tidy};
use crate::shape::word::{BenchSlope, LengthFrom, ReadingVerdict, Worded};

/// The verdict on a result; one that is decided by less than a twentieth of its uncertainty says so.
#[must_use]
pub fn result_verdict(r: &ResultReport) -> Text {
    let Some(v) = r.verdict else {
        let words = if r.slip { "a slip? not judged" } else { "" };
        return Text::from(words);
    };
    let edge =
        v != ReadingVerdict::CannotTell && r.en.is_some_and(|en| (en.abs() - 1.0).abs() < 0.05);
    text(v).plus(if edge { ", just" } else { "" })
}

/// `5.60 ± 0.46` per 100 m.
#[must_use]
pub fn per_100(db_per_m: f64, u_per_m: f64) -> String {
    let (v, u) = with_uncertainty(PER * db_per_m, PER * u_per_m, 3);
    format!("{v} ± {u}")
}

/// Frequency in MHz, for a column that names the unit.
#[must_use]
pub fn mhz(hz: f64) -> String {
    number(hz / 1e6, 6)
}

/// A difference with a sign, for a column.
#[must_use]
pub fn signed_cell(value: f64) -> String {
    let s = format!("{value:+.2}");
    if s == "-0.00" { "+0.00".to_owned() } else { s }
}

/// What would make a comparison tell: a better meter, or a longer piece.
#[must_use]
pub fn to_tell(r: &ResultReport) -> String {
    if r.verdict != Some(ReadingVerdict::CannotTell) {
        return String::new();
    }
    let meter = r.better_meter_factor.filter(|f| *f > 1.0 && f.is_finite());
    let meter = meter.map(|f| format!("meter {}×", up(f)));
    let piece = r.longer_piece_m.map(|m| format!("{} m", up(m)));
    match (meter, piece) {
        (Some(m), Some(p)) => format!("{m}, or {p}"),
        (Some(m), None) => m,
        (None, Some(p)) => p,
        (None, None) if r.drift_prevails => "baselines closer in time".to_owned(),
        (None, None) => "no meter: sheet too loose".to_owned(),
    }
}

/// Rounded up: one decimal below ten, whole above. What is needed must not be rounded away.
fn up(value: f64) -> String {
    // a hair less, so that what is 8.0 but for the last bit stays 8
    if value < 10.0 {
        number(libm::ceil(value * 10.0 - 1e-9) / 10.0, 1)
    } else {
        number(libm::ceil(value - 1e-9), 0)
    }
}

/// `A, 11.4 m ± 0.02 m of demo-5mm-tinned, 2 n-pair, 12 °C`.
#[must_use]
pub fn piece_head(p: &PieceReport) -> String {
    let mut out = p.piece.clone();
    if let Some(m) = p.length_m {
        out += &format!(", {}", length(m));
        if let Some(u) = p.length_uncertainty_m.filter(|u| *u > 0.0) {
            out += &format!(" ± {}", length(u));
        }
    }
    if !p.cable.is_empty() {
        out += &format!(" of {}", p.cable);
    }
    for j in &p.joins {
        out += &format!(", {} {}", j.count, j.connector);
    }
    format!("{out}, {} °C", number(p.temperature_c, 1))
}

/// An instrument with its errors at k = 2.
#[must_use]
pub fn instrument(i: &InstrumentReport) -> String {
    let mut out = if i.name.is_empty() {
        "not named".to_owned()
    } else {
        i.name.clone()
    };
    if let Some(t) = &i.title {
        out += &format!(", {t}");
    }
    let mut errors = Vec::new();
    let twice = |u: f64| percent(2.0 * u);
    if let Some(u) = i.standard_of_reading {
        errors.push(format!("scale {} of reading", twice(u)));
    }
    if let Some(u) = i.standard_of_full_scale {
        let scale = i
            .full_scale_w
            .map_or(String::new(), |w| format!(" of {} W", number(w, 3)));
        errors.push(format!("{} of full scale{scale}", twice(u)));
    }
    if let Some(u) = i.standard_db {
        errors.push(format!("scale {}", db(2.0 * u)));
    }
    if let Some(u) = i.standard_linearity {
        errors.push(format!("linearity {}", twice(u)));
    }
    if let Some(u) = i.standard_linearity_of_full_scale {
        errors.push(format!("linearity {} of full scale", twice(u)));
    }
    if let Some(u) = i.standard_repeatability {
        errors.push(format!("repeatability {}", twice(u)));
    }
    if let Some(w) = i.resolution_w {
        errors.push(format!("step {} W", number(w, 4)));
    }
    if !errors.is_empty() {
        out += &format!(": ± {} (k = 2)", errors.join(", "));
    }
    if let Some(d) = i.directivity_db {
        out += &format!(", directivity {} dB", number(d, 1));
    }
    if let Some(c) = &i.certificate {
        out += &certificate(c);
    }
    if let Some(p) = i.recalled_percent {
        let since = i.recalled_since.as_ref();
        let since = since.map_or(String::new(), |d| format!(" since {d}"));
        let how = if p > 0.0 { "high" } else { "low" };
        out += &format!(
            "; recalled: its readings were {} % too {how}{since} and are corrected",
            number(p.abs(), 3)
        );
    }
    match (&i.calibrated, &i.due) {
        (Some(c), Some(d)) => out += &format!("; calibrated {c}, due {d}"),
        (Some(c), None) => out += &format!("; calibrated {c}"),
        (None, Some(d)) => out += &format!("; calibration due {d}"),
        (None, None) => {}
    }
    out
}

/// `; corrected by certificate 4711 (2026-02-03 to 2028-02-03; 4 points from 50 MHz to 440 MHz)`.
fn certificate(c: &CertificateReport) -> String {
    let name = c.number.as_ref().unwrap_or(&c.file);
    let days = match (&c.from, &c.until) {
        (Some(a), Some(b)) => format!("{a} to {b}; "),
        (Some(a), None) => format!("of {a}; "),
        (None, Some(b)) => format!("until {b}; "),
        (None, None) => String::new(),
    };
    let held = match c.holds {
        true => "; within its points it stands for scale and linearity",
        false => "; it did not hold on that day, and the errors above count as well",
    };
    format!(
        "; corrected by certificate {name} ({days}{} from {} to {}{held})",
        counted(c.points, "point"),
        frequency(c.lowest_hz),
        frequency(c.highest_hz)
    )
}

/// Probability in words: `p = 0.43`, `p < 0.001`.
#[must_use]
pub fn probability(p: Option<f64>) -> String {
    match p {
        Some(p) if p < 0.001 => ", p < 0.001".to_owned(),
        Some(p) => format!(", p = {}", sig(p, 2)),
        None => String::new(),
    }
}

/// The piece over all bands.
#[must_use]
pub fn whole(w: &WholeReport) -> Text {
    let (ratio, u) = ratio(w, 3);
    let mut out = format!(
        ": {ratio} ± {u} times the expected loss, {}",
        counted(w.bands_used, "band"),
    );
    if w.degrees_of_freedom > 0 {
        out += &format!(
            "; χ² {:.1} for {}{}",
            w.chi_square,
            w.degrees_of_freedom,
            probability(w.p)
        );
        if w.p.is_some_and(|p| p < 0.05) {
            out += "; one factor does not hold on all bands";
        }
        if let Some(b) = &w.worst_band {
            out += &format!("; furthest off on {b}");
        }
    }
    text(w.verdict).plus(&out)
}

/// Measured over expected loss of a piece, and its uncertainty (k = 2), with at most so many
/// decimals.
#[must_use]
pub fn ratio(w: &WholeReport, most: usize) -> (String, String) {
    with_uncertainty(w.ratio, 0.5 * (w.ratio_high - w.ratio_low), most)
}

/// The two coefficients with their uncertainty, in dB/100 m.
#[must_use]
pub fn fit(f: &FitReport) -> String {
    let law = &f.law;
    let mut out = format!(
        "k1 {} dB/100 m/√MHz, k2 {} dB/100 m/MHz at {} °C (k1 {} at 20 °C)",
        law.k1(),
        law.k2(),
        number(law.temperature_c, 1),
        sig(PER * law.k1_at_20c_db_per_m_per_sqrt_mhz, 4),
    );
    out += &match &f.held_at_zero {
        Some(k) => format!("; {} would come out negative and is held at 0", k.word()),
        None => format!(", correlation {:.2}", law.correlation),
    };
    out + &fit_quality(f)
}

fn fit_quality(f: &FitReport) -> String {
    let mut out = String::new();
    if f.degrees_of_freedom > 0 {
        out += &format!(
            "; χ² {:.1} for {}{}",
            f.chi_square,
            f.degrees_of_freedom,
            probability(f.p)
        );
    }
    if let Some(b) = &f.outlier_band {
        out += &match &f.outlier_or_band {
            Some(o) => format!(
                "; the reading on {b} or the one on {o} does not fit: which of the two cannot be told"
            ),
            None => format!("; the reading on {b} does not fit"),
        };
    }
    if let (Some(b), Some(r)) = (&f.worst_band, f.worst_residual) {
        out += &format!("; largest residual {r:+.1} u on {b}");
    }
    if let Some(hz) = f.add_frequency_hz {
        out += &format!("; weak: read at {} too", frequency(tidy(hz)));
    }
    out
}

/// An electrical length against the tape.
#[must_use]
pub fn electrical(l: &LengthReport) -> Text {
    let (m, u) = with_uncertainty(l.length_m, l.uncertainty_m, 3);
    let by = match l.by {
        LengthFrom::Delay => "its delay",
        LengthFrom::Phase => "the slope of its phase",
        LengthFrom::Resonance => "its resonances",
    };
    let mut out = Text::from(format!("{m} m ± {u} m by {by}"));
    if let (Some(d), Some(u), Some(v)) = (l.difference_m, l.difference_uncertainty_m, l.verdict) {
        let (d, u) = with_uncertainty(d, u, 3);
        let sign = if d.starts_with('-') { "" } else { "+" };
        out = out
            .plus(&format!("; {sign}{d} m ± {u} m against the tape: "))
            .and(v.run());
    }
    if let (Some(v), Some(u)) = (l.velocity_factor, l.velocity_factor_uncertainty) {
        let factor = match u > 0.0 {
            true => {
                let (v, u) = with_uncertainty(v, u, 4);
                format!("{v} ± {u}")
            }
            false => number(v, 3),
        };
        out = out.plus(&format!("; equal with a velocity factor of {factor}"));
    }
    out
}

/// So many readings of SWR are listed one by one; of more, each band's range.
const SINGLE: usize = 8;

/// Readings of SWR with no digit more than the meter carries.
#[must_use]
pub fn swrs(all: &[SwrReport]) -> Vec<String> {
    if all.len() <= SINGLE {
        return all.iter().map(one_swr).collect();
    }
    let mut bands: Vec<&str> = Vec::new();
    for s in all {
        if !bands.contains(&s.band.as_str()) {
            bands.push(&s.band);
        }
    }
    let of = |band: &str| {
        let mine: Vec<&SwrReport> = all.iter().filter(|s| s.band == band).collect();
        let digits = mine
            .iter()
            .map(|s| s.decimals.unwrap_or(0))
            .min()
            .unwrap_or(0);
        let low = mine.iter().map(|s| s.swr).fold(f64::INFINITY, f64::min);
        let high = mine.iter().map(|s| s.swr).fold(0.0, f64::max);
        match (plain_swr(low, digits), plain_swr(high, digits)) {
            (a, b) if a == b => format!("{band} {a}"),
            (a, b) => format!("{band} {a} to {b}"),
        }
    };
    let list: Vec<String> = bands.into_iter().map(of).collect();
    vec![format!(
        "{}; digits by the errors the meter states, its directivity not among them",
        list.join(", ")
    )]
}

fn plain_swr(value: f64, decimals: usize) -> String {
    if value.is_finite() && value < 1000.0 {
        format!("{value:.decimals$}")
    } else {
        "∞".to_owned()
    }
}

fn one_swr(s: &SwrReport) -> String {
    let what = match &s.piece {
        Some(p) => format!("{}, {} {p}", s.band, s.reading.word()),
        None => format!("{}, {}", s.band, s.reading.word()),
    };
    match s.decimals {
        Some(d) => format!(
            "{what}: {} ({} to {})",
            plain_swr(s.swr, d),
            plain_swr(s.swr_low, d.max(1) + 1),
            plain_swr(s.swr_high, d.max(1) + 1)
        ),
        None => format!("{what}: above {}", plain_swr(s.swr_low, 1)),
    }
}

/// Drift of the baselines, in one line where all bands took as long.
#[must_use]
pub fn drift(bands: &[BandReport]) -> Vec<String> {
    let with: Vec<(&BandReport, f64)> = bands
        .iter()
        .filter_map(|b| Some((b, b.drift_percent?)))
        .filter(|(b, _)| b.drift_percent_per_minute.is_some())
        .collect();
    let one = |(b, total): &(&BandReport, f64)| {
        let scatter = b.drift_scatter_percent.map_or(String::new(), |s| {
            format!(" ({s:.1} % off a straight line)")
        });
        format!("{} {total:+.1} %{scatter}", b.band)
    };
    let minutes = |b: &BandReport| number(b.drift_minutes.unwrap_or(0.0), 1);
    match with.first() {
        None => Vec::new(),
        Some((first, _)) if with.iter().all(|(b, _)| minutes(b) == minutes(first)) => {
            let all: Vec<String> = with.iter().map(one).collect();
            vec![format!("{} in {} min", all.join(", "), minutes(first))]
        }
        Some(_) => with
            .iter()
            .map(|x| format!("{} in {} min", one(x), minutes(x.0)))
            .collect(),
    }
}

/// A piece over the years.
#[must_use]
pub fn trend(t: &TrendReport) -> String {
    let days: Vec<String> = t
        .points
        .iter()
        .map(|p| {
            let (v, u) = with_uncertainty(p.ratio, p.ratio_uncertainty, 3);
            format!("{} {v} ± {u}", p.date)
        })
        .collect();
    let mut out = format!("{} ({}): {}", t.piece, t.cable, days.join(", "));
    if let (Some(slope), Some(u)) = (t.ratio_per_year, t.ratio_per_year_uncertainty) {
        let (slope, u) = with_uncertainty(slope, u, 3);
        let sign = if slope.starts_with('-') { "" } else { "+" };
        let means = match t.direction {
            Some(BenchSlope::Rising) => "rising",
            Some(BenchSlope::Falling) => "falling",
            Some(BenchSlope::CannotTell) | None => "steady within the uncertainty",
        };
        out += &format!("; {sign}{slope} ± {u} a year: {means}");
    }
    out
}

/// A contribution over all comparisons.
#[must_use]
pub fn contribution(d: &ContributionReport) -> String {
    let span = if d.largest_standard_db - d.smallest_standard_db < 0.000_5 {
        format!("{:.3} dB", d.largest_standard_db)
    } else {
        format!(
            "{:.3} to {:.3} dB",
            d.smallest_standard_db, d.largest_standard_db
        )
    };
    format!("{} {span} ({:.0} %)", d.cause, 100.0 * d.share)
}
