//! A fit as plain text.

use std::fmt::Write as _;

use downlead_quantity::{frequency, number, sig};

use crate::bench::words::{per_100, probability};
use crate::report::Columns;
use crate::ui::{Style, printable, wrapped};
use downlead_report::shape::fit::{Coefficients, FitPointReport, OneFit};
use downlead_report::shape::loss_law::{PER, tidy};

const WIDTH: usize = 96;
/// Rows of a table of residuals.
const ROWS: usize = 24;

/// All of it, the definition last.
pub(crate) fn text(f: &OneFit, style: Style) -> String {
    let mut out = format!("{}\n\n", style.bold(&printable(&f.subject)));
    points(f, style, &mut out);
    let mut lines: Vec<(&str, String)> = Vec::new();
    if let Some(c) = &f.coefficients {
        lines.extend(coefficients(c));
    }
    if let Some(why) = &f.refused {
        lines.push(("no fit", style.bad(why)));
    }
    lines.extend(f.notes.iter().map(|n| ("note", printable(n).into_owned())));
    out.push('\n');
    for (name, words) in &lines {
        let _ = writeln!(out, "  {name:<11}  {}", wrapped(words, WIDTH, 15));
    }
    if !f.predictions.is_empty() {
        out.push('\n');
        predictions(f, style, &mut out);
    }
    if let Some(d) = &f.definition {
        let _ = writeln!(out, "\n  {}\n", style.faint("as a definition:"));
        out.push_str(&printable(d));
    }
    out
}

/// The points, or so many of them that the largest residual is among them.
fn points(f: &OneFit, style: Style, out: &mut String) {
    let outlier = f.coefficients.as_ref().and_then(|c| c.outlier.as_ref());
    let mut t = Columns::default();
    t.left("point")
        .right("MHz")
        .right("dB/100 m (k = 2)")
        .right("fitted")
        .right("off by u")
        .left("");
    let every = f.points.len().div_ceil(ROWS).max(1);
    let size = |p: &FitPointReport| p.residual.map_or(0.0, f64::abs);
    let worst =
        (0..f.points.len()).max_by(|a, b| size(&f.points[*a]).total_cmp(&size(&f.points[*b])));
    let mut shown = 0;
    for (i, p) in f.points.iter().enumerate() {
        let out_of_line = outlier.is_some_and(|o| *o == p.label);
        if i % every != 0 && Some(i) != worst && !out_of_line && i + 1 != f.points.len() {
            continue;
        }
        shown += 1;
        let plain = frequency(p.frequency_hz) == p.label;
        t.row(vec![
            if plain {
                String::new()
            } else {
                p.label.clone()
            },
            number(p.frequency_hz / 1e6, 6),
            per_100(p.loss_db_per_m, 2.0 * p.standard_db_per_m),
            p.fitted_db_per_m
                .map(|v| sig(PER * v, 4))
                .unwrap_or_default(),
            p.residual.map(|r| format!("{r:+.1}")).unwrap_or_default(),
            match (out_of_line, Some(i) == worst && p.residual.is_some()) {
                (true, _) => "does not fit".to_owned(),
                (false, true) => "furthest off".to_owned(),
                (false, false) => String::new(),
            },
        ]);
    }
    t.write(style, out);
    if shown < f.points.len() {
        let _ = writeln!(
            out,
            "  {shown} of {} points shown; --format json lists all",
            f.points.len()
        );
    }
}

fn coefficients(c: &Coefficients) -> Vec<(&'static str, String)> {
    let at = number(c.law.temperature_c, 1);
    let at_20 = if at == "20" {
        String::new()
    } else {
        format!(
            "; {} at 20 °C",
            sig(PER * c.law.k1_at_20c_db_per_m_per_sqrt_mhz, 5)
        )
    };
    let mut out = vec![
        (
            "k1",
            format!("{} dB/100 m/√MHz at {at} °C{at_20}", c.law.k1()),
        ),
        ("k2", format!("{} dB/100 m/MHz", c.law.k2())),
    ];
    if let Some(k) = c.held_at_zero {
        out.push(("", format!("{k} would come out negative and is held at 0")));
    } else {
        out.push((
            "together",
            format!(
                "correlation {:.3}, covariance {:.3e} (dB/100 m)² per MHz to 3/2, k = 1: compare curves, not coefficients",
                c.law.correlation,
                PER * PER * c.covariance
            ),
        ));
    }
    if c.standard_shared > 0.0 {
        out.push((
            "all alike",
            format!(
                "± {} % (k = 2) that all points share is in the figures below",
                sig(200.0 * c.standard_shared, 2)
            ),
        ));
    }
    out.push(("scatter", scatter(c)));
    if let Some(o) = &c.outlier {
        out.push((
            "outlier",
            format!(
                "{o} does not fit: look at that reading, or leave it out with --without \"{o}\""
            ),
        ));
    }
    if let Some(hz) = c.add_frequency_hz {
        out.push((
            "weak",
            format!(
                "a reading at {} would make the two coefficients surer",
                frequency(tidy(hz))
            ),
        ));
    }
    out
}

fn scatter(c: &Coefficients) -> String {
    match (c.chi_square, c.degrees_of_freedom) {
        (_, 0) => {
            "two points lie on the curve whatever they are: a third would show whether it holds"
                .to_owned()
        }
        (None, n) => format!("doubt found from the scatter of the points ({n} degrees of freedom)"),
        (Some(x), n) => {
            let means = match c.p {
                Some(p) if p < 0.05 => {
                    ": more scatter than the doubt explains, and the doubts are widened by it"
                }
                _ => ": no more scatter than the doubt explains",
            };
            format!("χ² {x:.1} for {n}{}{means}", probability(c.p))
        }
    }
}

fn predictions(f: &OneFit, style: Style, out: &mut String) {
    let mut t = Columns::default();
    t.right("MHz").right("dB/100 m at 20 °C (k = 2)").left("");
    for p in &f.predictions {
        t.row(vec![
            number(p.frequency_hz / 1e6, 3),
            per_100(p.loss_db_per_m, p.uncertainty_db_per_m),
            if p.inside {
                String::new()
            } else {
                "outside the points".to_owned()
            },
        ]);
    }
    t.write(style, out);
}
