//! Readings as they are corrected: by the certificate of their instrument, and by what was found out
//! later about it.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::measure::Calibration;
use downlead_quantity::{DB_PER_RELATIVE, frequency, power};
use downlead_station::attach::Certificate;
use downlead_station::model::{Instrument, Name};
use downlead_station::{Attachments, Env};

use crate::instrument::{instrument_db, resolution_db};

/// How a certificate stands to the day of a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Holds {
    /// The reading is within its days.
    Yes,
    /// The reading was taken before the calibration.
    Before,
    /// It had expired.
    Expired,
    /// The reading, or the certificate, has no date.
    Undated,
}

/// The certificate of an instrument that bears on a day.
#[derive(Clone, Copy)]
pub(crate) struct Bearing<'e> {
    pub(crate) name: &'e Name,
    pub(crate) certificate: &'e Certificate,
    pub(crate) holds: Holds,
}

/// A reading with what is known of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Taken {
    /// True power over what was shown.
    pub(crate) factor: f64,
    /// By the certificate, where it covers the reading: points of it, with their shares times their
    /// relative standard uncertainty.
    pub(crate) calibration: Option<Calibration>,
}

/// `a` before `b`; of two dates that differ in detail, the common part counts.
fn before(a: &str, b: &str) -> bool {
    let n = a.len().min(b.len());
    a.get(..n) < b.get(..n)
}

/// The certificate that bears on a reading of that day: the newest that holds, else the newest that
/// was made before it, else the oldest.
pub(crate) fn bearing<'e>(
    i: &'e Instrument,
    date: Option<&str>,
    files: &'e Attachments,
) -> Option<Bearing<'e>> {
    let all = i.certificates.iter().filter_map(|name| {
        let certificate = files.at(name.loc)?.certificate()?;
        let from = certificate.from.as_deref().or(i.calibrated.as_deref());
        let until = certificate.until.as_deref().or(i.due.as_deref());
        let holds = match (date, from) {
            (Some(d), _) if until.is_some_and(|u| before(u, d)) => Holds::Expired,
            (Some(d), Some(f)) if before(d, f) => Holds::Before,
            (Some(_), Some(_)) => Holds::Yes,
            _ => Holds::Undated,
        };
        let b = Bearing {
            name,
            certificate,
            holds,
        };
        Some((b, from.unwrap_or("").to_owned()))
    });
    let order = |h: Holds| match h {
        Holds::Yes => 3,
        Holds::Undated => 2,
        Holds::Expired => 1,
        Holds::Before => 0,
    };
    let chosen = all.reduce(|a, b| {
        let (x, y) = (order(a.0.holds), order(b.0.holds));
        let newer = match a.0.holds {
            // of those made later, the first
            Holds::Before => b.1 < a.1,
            _ => b.1 > a.1,
        };
        if y > x || y == x && newer { b } else { a }
    });
    chosen.map(|c| c.0)
}

/// What is known of a reading of `watts` at `hz` on a day. `first` is the number of the first point
/// of the certificate among all causes.
pub(crate) fn taken(
    i: &Instrument,
    found: Option<&Bearing<'_>>,
    date: Option<&str>,
    (hz, watts): (f64, f64),
    first: usize,
) -> Taken {
    let mut out = Taken {
        factor: 1.0,
        calibration: None,
    };
    if let Some(b) = found
        && let Some(c) = b.certificate.at(hz, watts)
    {
        out.factor = c.factor;
        // errors of the points, as shares of the reading
        let u = |point: usize| b.certificate.points[point].u * b.certificate.points[point].factor;
        out.calibration = Some(Calibration {
            terms: c
                .shares
                .map(|(p, share)| (first + p, share * u(p) / c.factor)),
            holds: b.holds == Holds::Yes,
        });
    }
    if let Some(r) = &i.recalled {
        let since = r.since.as_deref();
        let falls = match (since, date) {
            (Some(s), Some(d)) => !before(d, s),
            // without a day of its own a reading may be of those
            _ => true,
        };
        if falls {
            out.factor /= 1.0 + r.share;
        }
    }
    out
}

/// A reading of a station, corrected: the factor on it and its standard uncertainty, dB.
pub(crate) fn read(
    i: &Instrument,
    env: &Env,
    date: Option<&str>,
    (hz, watts): (f64, f64),
) -> (f64, f64) {
    let found = bearing(i, date, &env.attachments);
    let t = taken(i, found.as_ref(), date, (hz, watts), 0);
    let own = || instrument_db(i, watts);
    let u = match t.calibration {
        None => own(),
        Some(c) => {
            let by = DB_PER_RELATIVE * c.u_relative();
            let rest = if c.holds {
                resolution_db(i, watts)
            } else {
                own()
            };
            libm::hypot(by, rest)
        }
    };
    (t.factor, u)
}

/// What is to be said of the certificate of an instrument used on a day, at the place of its use.
pub(crate) fn findings(
    i: &Instrument,
    date: Option<&str>,
    loc: Loc,
    env: &Env,
    out: &mut Vec<Diagnostic>,
) {
    let Some(b) = bearing(i, date, &env.attachments) else {
        return;
    };
    let (name, file, c) = (&i.name.text, &b.name.text, b.certificate);
    let day = date.unwrap_or("");
    let message = match b.holds {
        Holds::Yes => return,
        Holds::Undated => format!(
            "Whether the certificate `{file}` of `{name}` held when this was read cannot be said: {}.",
            match date {
                Some(_) => "it states no day of calibration",
                None => "the reading has no date",
            }
        ),
        Holds::Before => format!(
            "`{name}` was used on {day}, before its certificate `{file}` was made on {}.",
            c.from.as_deref().or(i.calibrated.as_deref()).unwrap_or("")
        ),
        Holds::Expired => format!(
            "The certificate `{file}` of `{name}` held until {}; it was used on {day}.",
            c.until.as_deref().or(i.due.as_deref()).unwrap_or("")
        ),
    };
    out.push(
        Diagnostic::new(&codes::CERTIFICATE_NOT_VALID, loc, message)
            .at("outside the days of the certificate")
            .also(b.name.loc, "the certificate")
            .help("The reading is corrected by it all the same, and the instrument's own accuracy counts as well, if it states one."),
    );
}

/// Says that a reading lies outside what the certificate covers.
pub(crate) fn outside(
    i: &Instrument,
    b: &Bearing<'_>,
    (hz, watts): (f64, f64),
    count: usize,
    loc: Loc,
) -> Option<Diagnostic> {
    let c = b.certificate;
    if !c.problems.is_empty() {
        return None;
    }
    let (low, high) = c.range_hz()?;
    let levels = c.range_w().map_or(String::new(), |(low, high)| {
        format!(", from {} to {}", power(low), power(high))
    });
    let more = match count {
        0 | 1 => String::new(),
        n => format!(", {n} readings in all"),
    };
    Some(
        Diagnostic::new(
            &codes::CERTIFICATE_RANGE,
            loc,
            format!(
                "{} at {} on `{}` is outside its certificate `{}`, which goes from {} to {}{levels}{more}.",
                power(watts),
                frequency(hz),
                i.name.text,
                b.name.text,
                frequency(low),
                frequency(high)
            ),
        )
        .at("not corrected")
        .also(b.name.loc, "the certificate")
        .help("The reading counts as it is, with the instrument's own accuracy. Nothing is carried on beyond the points of a certificate."),
    )
}

/// Findings of the certificates that an instrument names: what is wrong in the files.
pub(crate) fn files(i: &Instrument, env: &Env, out: &mut Vec<Diagnostic>) {
    for name in &i.certificates {
        let Some(a) = env.attachments.at(name.loc).filter(|a| a.content.is_ok()) else {
            continue;
        };
        let file = |message: String| {
            Diagnostic::new(&codes::CERTIFICATE_FILE, name.loc, message).at("not applied")
        };
        let Some(c) = a.certificate() else {
            out.push(file(format!("`{}` is no calibration certificate.", name.text)).help(
                "A table begins with the names of its columns, for example `frequency_mhz,level_w,correction_percent,uncertainty_percent,k`; a digital certificate is a file `.xml`.",
            ));
            continue;
        };
        let Some(p) = c.problems.first() else {
            continue;
        };
        let more = match c.problems.len() - 1 {
            0 => String::new(),
            n => format!(" ({n} more)"),
        };
        let mut d = file(format!(
            "In `{}`, line {}: {}{more}",
            name.text, p.line, p.message
        ));
        if let Some(h) = &p.help {
            d = d.help(h.clone());
        }
        out.push(
            d.help("The readings of the instrument count as they are, with its own accuracy."),
        );
    }
}
