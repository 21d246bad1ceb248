//! A fit of the two coefficients of a cable.

use downlead_quantity::{frequency, number, sig};

use super::note;
use crate::document::{Block, Column, Document, Level, Table, Text};
use crate::shape::fit::{Coefficients, FitPointReport, OneFit, PredictionReport};
use crate::shape::loss_law::{PER, tidy};
use crate::words::bench::{per_100, probability};

/// Rows of a table of residuals.
const ROWS: usize = 24;

/// A point, and what is to be said of it.
type Point<'a> = (&'a FitPointReport, &'static str);

fn point_columns<'a>() -> [Column<Point<'a>>; 6] {
    [
        Column::left("point", |p: &Point<'a>| {
            match frequency(p.0.frequency_hz) == p.0.label {
                true => Text::default(),
                false => (&p.0.label).into(),
            }
        }),
        Column::right("MHz", |p: &Point<'a>| {
            number(p.0.frequency_hz / 1e6, 6).into()
        }),
        Column::right("dB/100 m (k = 2)", |p: &Point<'a>| {
            per_100(p.0.loss_db_per_m, 2.0 * p.0.standard_db_per_m).into()
        }),
        Column::right("fitted", |p: &Point<'a>| {
            p.0.fitted_db_per_m
                .map(|v| sig(PER * v, 4))
                .unwrap_or_default()
                .into()
        })
        .drop(1),
        Column::right("off by u", |p: &Point<'a>| {
            p.0.residual
                .map(|r| format!("{r:+.1}"))
                .unwrap_or_default()
                .into()
        }),
        Column::left("", |p: &Point<'a>| p.1.into()).drop(2),
    ]
}

static PREDICTIONS: &[Column<PredictionReport>] = &[
    Column::right("MHz", |p: &PredictionReport| {
        number(p.frequency_hz / 1e6, 3).into()
    }),
    Column::right("dB/100 m at 20 °C (k = 2)", |p: &PredictionReport| {
        per_100(p.loss_db_per_m, p.uncertainty_db_per_m).into()
    }),
    Column::left("", |p: &PredictionReport| match p.inside {
        true => Text::default(),
        false => "outside the points".into(),
    })
    .drop(1),
];

/// The page: the two coefficients first, the definition last.
#[must_use]
pub fn page(f: &OneFit) -> Document {
    let mut doc = Document {
        title: f.subject.clone(),
        widest: None,
        blocks: Vec::new(),
    };
    doc.heading(1, &f.subject, None);
    let mut facts: Vec<(&str, Text)> = Vec::new();
    facts.extend(f.coefficients.iter().flat_map(coefficients));
    if let Some(why) = &f.refused {
        doc.push(Block::Note(Level::Warning, format!("no fit: {why}").into()));
    }
    facts.extend(f.notes.iter().map(|n| ("note", n.into())));
    doc.facts(facts);
    points(&mut doc, f);
    doc.table(Table::of(PREDICTIONS, &f.predictions, |_| None));
    if let Some(d) = &f.definition {
        doc.push(Block::Paragraph("as a definition:".into()));
        doc.push(Block::Code(d.clone()));
    }
    doc
}

/// The points, or so many of them that the largest residual is among them.
fn points(doc: &mut Document, f: &OneFit) {
    let outlier = f.coefficients.as_ref().and_then(|c| c.outlier.as_ref());
    let every = f.points.len().div_ceil(ROWS).max(1);
    let size = |p: &FitPointReport| p.residual.map_or(0.0, f64::abs);
    let worst =
        (0..f.points.len()).max_by(|a, b| size(&f.points[*a]).total_cmp(&size(&f.points[*b])));
    let mut rows: Vec<Point<'_>> = Vec::new();
    for (i, p) in f.points.iter().enumerate() {
        let out_of_line = outlier.is_some_and(|o| *o == p.label);
        if i % every != 0 && Some(i) != worst && !out_of_line && i + 1 != f.points.len() {
            continue;
        }
        let words = match (out_of_line, Some(i) == worst && p.residual.is_some()) {
            (true, _) => "does not fit",
            (false, true) => "furthest off",
            (false, false) => "",
        };
        rows.push((p, words));
    }
    let shown = rows.len();
    doc.table(Table::of(&point_columns(), &rows, |_| None));
    if shown < f.points.len() {
        let all = f.points.len();
        note(
            doc,
            format!("{shown} of {all} points shown; --format json lists all"),
        );
    }
}

fn coefficients(c: &Coefficients) -> Vec<(&'static str, Text)> {
    let at = number(c.law.temperature_c, 1);
    let at_20 = if at == "20" {
        String::new()
    } else {
        format!(
            "; {} at 20 °C",
            sig(PER * c.law.k1_at_20c_db_per_m_per_sqrt_mhz, 5)
        )
    };
    let mut out: Vec<(&str, Text)> = vec![
        (
            "k1",
            format!("{} dB/100 m/√MHz at {at} °C{at_20}", c.law.k1()).into(),
        ),
        ("k2", format!("{} dB/100 m/MHz", c.law.k2()).into()),
    ];
    if let Some(k) = c.held_at_zero {
        let words = format!("{} would come out negative and is held at 0", k.word());
        out.push(("", words.into()));
    } else {
        out.push((
            "together",
            format!(
                "correlation {:.3}, covariance {:.3e} (dB/100 m)² per MHz to 3/2, k = 1: compare curves, not coefficients",
                c.law.correlation,
                PER * PER * c.covariance
            )
            .into(),
        ));
    }
    if c.standard_shared > 0.0 {
        out.push((
            "all alike",
            format!(
                "± {} % (k = 2) that all points share is in the figures below",
                sig(200.0 * c.standard_shared, 2)
            )
            .into(),
        ));
    }
    out.push(("scatter", scatter(c).into()));
    if let Some(o) = &c.outlier {
        out.push((
            "outlier",
            match &c.outlier_or {
                Some(or) => format!(
                    "{o} or {or} does not fit: which of the two cannot be told; look at both, or leave one out with --without \"{o}\""
                ),
                None => format!(
                    "{o} does not fit: look at that reading, or leave it out with --without \"{o}\""
                ),
            }
            .into(),
        ));
    }
    if let Some(hz) = c.add_frequency_hz {
        out.push((
            "weak",
            format!(
                "a reading at {} would make the two coefficients surer",
                frequency(tidy(hz))
            )
            .into(),
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
        (None, n) => {
            format!("uncertainty found from the scatter of the points ({n} degrees of freedom)")
        }
        (Some(x), n) => {
            let means = match c.p {
                Some(p) if p < 0.05 => {
                    ": more scatter than the uncertainty explains, and the uncertainties are widened by it"
                }
                _ => ": no more scatter than the uncertainty explains",
            };
            format!("χ² {x:.1} for {n}{}{means}", probability(c.p))
        }
    }
}
