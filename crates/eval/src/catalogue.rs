//! Questions about the built-in library.

use downlead_base::LineIndex;
use downlead_station::library;
use downlead_station::model::{CableLoss, Meaning};

/// An entry of the library.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    /// Name.
    pub name: String,
    /// `cable`, `connector`, `device` or `rules`.
    pub kind: &'static str,
    /// Title, or the name.
    pub title: String,
    /// Source in words.
    pub source: Option<String>,
    /// Built-in file.
    pub file: String,
    /// Line in it, from 1.
    pub line: u32,
    /// The definition's text.
    pub text: String,
}

/// All entries, by file and place.
#[must_use]
pub fn entries() -> Vec<Entry> {
    let lib = library();
    let lines: Vec<LineIndex> = lib
        .files
        .iter()
        .map(|(_, f)| LineIndex::new(f.text()))
        .collect();
    let mut out = Vec::new();
    for (file, item, low) in &lib.items {
        let (name, kind, title, source) = match &low.meaning {
            Meaning::Cable(c) => (&c.name, "cable", &c.title, c.meta.source.clone()),
            Meaning::Connector(c) => (&c.name, "connector", &c.title, c.meta.source.clone()),
            Meaning::Device(d) => (&d.name, "device", &d.title, d.meta.source.clone()),
            Meaning::Rules(r) => (&r.name, "rules", &r.title, r.edition.clone()),
            _ => continue,
        };
        let start = lib.files[*file]
            .1
            .items()
            .iter()
            .find(|p| p.item.id == item.id)
            .map_or(0, |p| p.start);
        let statement = item.statement().map_or(item.text(), |s| s.slice(s.span()));
        let at = start + item.statement().map_or(0, |s| s.span().start);
        out.push(Entry {
            name: name.text.to_string(),
            kind,
            title: title
                .as_ref()
                .map_or_else(|| name.text.to_string(), ToString::to_string),
            source: source.map(|s| s.to_string()),
            file: lib.files[*file].0.to_owned(),
            line: lines[*file]
                .try_line_col(at.into())
                .map_or(0, |l| l.line + 1),
            text: statement.to_owned(),
        });
    }
    out
}

/// What does not depend on frequency.
#[derive(Clone, Debug, PartialEq)]
pub struct CableFacts {
    /// Impedance, ohm.
    pub z0: f64,
    /// Velocity factor.
    pub velocity_factor: f64,
    /// Valid frequencies, Hz.
    pub valid: Option<(f64, f64)>,
    /// Mean power ratings: W and Hz.
    pub ratings: Vec<(f64, Option<f64>)>,
    /// Working voltage, V rms.
    pub voltage: Option<f64>,
    /// Diameter over the jacket, m.
    pub size: Option<f64>,
    /// The two coefficients in dB/100 m, if the loss is given that way.
    pub two_term: Option<(f64, f64)>,
    /// Whether the loss is a table.
    pub table: bool,
}

/// Loss at one frequency.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CablePoint {
    /// Frequency, Hz.
    pub frequency_hz: f64,
    /// Matched loss at 20 °C, dB/100 m.
    pub loss_db_per_100m: f64,
    /// Expanded uncertainty (k = 2), dB/100 m.
    pub u_db_per_100m: f64,
    /// Whether the frequency is within the valid range.
    pub inside: bool,
}

/// A length of a library cable as a two-port in 50 ohm: the exact line with its complex
/// characteristic impedance, at rising frequencies (Hz) and a temperature (°C). None if there is
/// no such cable.
#[must_use]
pub fn cable_network(
    name: &str,
    length_m: f64,
    celsius: f64,
    frequencies_hz: &[f64],
) -> Option<downlead_touchstone::Network> {
    use downlead_physics::line::LineParams;
    use downlead_physics::network::SMatrix;
    let c = library().cable(name)?;
    let mut s = Vec::with_capacity(4 * frequencies_hz.len());
    for hz in frequencies_hz {
        let at = crate::cable::at(c, *hz, celsius)?;
        let line = LineParams {
            r0_ohm: at.z0,
            velocity_factor: at.velocity,
            alpha_c_db_per_m: at.alpha_c,
            alpha_d_db_per_m: at.alpha_d,
        };
        let m = SMatrix::line(&line, *hz, length_m, downlead_physics::net::R0);
        s.extend([m.s11, m.s12, m.s21, m.s22]);
    }
    let z0 = vec![downlead_physics::net::R0; 2];
    downlead_touchstone::Network::new(frequencies_hz.to_vec(), s, z0).ok()
}

/// A cable of the library at some frequencies (Hz).
#[must_use]
pub fn cable_points(name: &str, frequencies_hz: &[f64]) -> Option<(CableFacts, Vec<CablePoint>)> {
    let c = library().cable(name)?;
    let any = crate::cable::at(c, c.valid.map_or(100e6, |v| libm::sqrt(v.0 * v.1)), 20.0)?;
    let facts = CableFacts {
        z0: any.z0,
        velocity_factor: any.velocity,
        valid: c.valid,
        ratings: c.ratings.iter().map(|r| (r.watts, r.at_hz)).collect(),
        voltage: c.voltage,
        size: c.size,
        two_term: any.two_term.map(|t| (t.0 * 100.0, t.1 * 100.0)),
        table: matches!(c.loss, Some(CableLoss::Table(_))),
    };
    let points = frequencies_hz
        .iter()
        .filter_map(|f| {
            let a = crate::cable::at(c, *f, 20.0)?;
            Some(CablePoint {
                frequency_hz: *f,
                loss_db_per_100m: a.loss() * 100.0,
                u_db_per_100m: 2.0 * a.u_relative * a.loss() * 100.0,
                inside: a.outside <= 1.000_001,
            })
        })
        .collect();
    Some((facts, points))
}

/// A length of a cable at a frequency, beside the same length of another.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LengthPoint {
    /// Matched loss at 20 °C, dB.
    pub loss_db: f64,
    /// Its expanded uncertainty (k = 2), dB.
    pub u_db: f64,
    /// Loss less that of the other, dB.
    pub difference_db: f64,
    /// Expanded uncertainty (k = 2) of that difference, dB: an error that both cables share is one
    /// cause and cancels as far as it is the same (JCGM 100:2008, 5.2.2).
    pub u_difference_db: f64,
    /// Whether the frequency is within the valid range.
    pub inside: bool,
}

/// A length (m) of a cable of the library at a frequency (Hz), beside that of another. None if one of
/// them is not there or has no loss at the frequency.
#[must_use]
pub fn length_beside(name: &str, other: &str, length_m: f64, hz: f64) -> Option<LengthPoint> {
    let lib = library();
    let (a, b) = (lib.cable(name)?, lib.cable(other)?);
    let of = |c| {
        let at = crate::cable::at(c, hz, 20.0)?;
        let loss = at.loss() * length_m;
        Some((loss, at.u_relative * loss, at.outside <= 1.000_001))
    };
    let (la, ua, inside) = of(a)?;
    let (lb, ub, _) = of(b)?;
    let one_cause = match (&a.shared, &b.shared) {
        _ if std::ptr::eq(a, b) => true,
        (Some(x), Some(y)) => x.text == y.text,
        _ => false,
    };
    let u = if one_cause {
        (ua - ub).abs()
    } else {
        libm::hypot(ua, ub)
    };
    Some(LengthPoint {
        loss_db: la,
        u_db: 2.0 * ua,
        difference_db: la - lb,
        u_difference_db: 2.0 * u,
        inside,
    })
}
