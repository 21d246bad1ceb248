//! Results beside plain Monte Carlo of the same chain.

use downlead_eval::result::Method;
use downlead_quantity::{db, power};

use super::note;
use crate::document::{Block, Column, Document, Level, Place, Table};
use crate::shape::verify::{ChainVerification, Comparison, Estimate, Verification};
use crate::shape::word::{Unit, Verified};
use crate::words::chain::{NOT_KNOWN, of_band};
use crate::words::figure::counted;

/// What is said of a chain.
const AGREES: &str = "No difference beyond the last printed digit.";

/// One way of computing, with its name.
type Way<'a> = (String, &'a Estimate);

/// The ways of a comparison, in order; the report's own only where it is another than the first.
fn ways(c: &Comparison, draws: usize) -> Vec<Way<'_>> {
    let mut out = vec![("derivatives".to_owned(), &c.derivatives)];
    if c.method != Method::Derivatives || c.reported != c.derivatives {
        let how = match *c.method {
            Method::Sample => "as reported, by 1024 points",
            Method::Both => "as reported, in part by 1024 points",
            Method::Derivatives => "as reported",
        };
        out.push((how.to_owned(), &c.reported));
    }
    out.push((format!("{draws} random draws"), &c.drawn));
    out
}

/// A value in the unit of the comparison.
fn shown(c: &Comparison, value: f64) -> String {
    match c.unit {
        Unit::Watt => power(value),
        Unit::Decibel => db(value),
    }
}

/// A figure of an estimate.
struct Figure {
    name: &'static str,
    value: f64,
    words: String,
}

impl Figure {
    /// One unit of its last printed digit.
    fn step(&self) -> f64 {
        let digits = self.words.split(' ').next().unwrap_or_default();
        let places = digits.split_once('.').map_or(0, |(_, d)| d.len());
        let last = 10f64.powi(-i32::try_from(places).unwrap_or(0));
        // a kilowatt or milliwatt is printed as such
        match digits.parse::<f64>() {
            Ok(x) if x != 0.0 => last * (self.value / x).abs(),
            _ => last,
        }
    }

    /// Whether two differ by more than one unit of the last digit of either.
    fn differs(&self, other: &Figure) -> bool {
        (self.value - other.value).abs() > self.step().max(other.step())
    }
}

/// What stands in the columns.
fn figures(c: &Comparison, e: &Estimate) -> [Figure; 4] {
    let of = |name, value| Figure {
        name,
        value,
        words: shown(c, value),
    };
    [
        of("mean", e.mean),
        Figure {
            name: "U",
            value: e.uncertainty_db,
            words: db(e.uncertainty_db),
        },
        of("lower end", e.low),
        of("upper end", e.high),
    ]
}

/// What differs from the draws by more than the last printed digit.
#[derive(Debug, Default, PartialEq)]
struct Remarks {
    /// The report.
    report: Option<String>,
    /// The derivatives alone, where the report is not theirs.
    derivatives: Option<String>,
}

fn remarks(c: &Comparison) -> Remarks {
    let of = |whose: &str, e: &Estimate| {
        let mine = figures(c, e);
        let drawn = figures(c, &c.drawn);
        let off: Vec<String> = mine
            .iter()
            .zip(&drawn)
            .filter(|(a, b)| a.differs(b))
            .map(|(a, b)| format!("{} {}, drawn {}", a.name, a.words, b.words))
            .collect();
        (!off.is_empty()).then(|| format!("{whose}: {}", off.join("; ")))
    };
    Remarks {
        report: of("The report differs", &c.reported),
        derivatives: match *c.method {
            Method::Derivatives => None,
            Method::Sample | Method::Both => of("Derivatives alone would differ", &c.derivatives),
        },
    }
}

/// What no phase and no passive part can exceed.
fn bounds(c: &Comparison) -> Option<String> {
    let worst = c
        .loss_worst_db
        .map(|ends| ends.map(db))
        .filter(|[low, high]| low != high)
        .map(|[low, high]| format!("loss {low} to {high} over all phases"));
    let floor = c.loss_floor_db.map(|x| format!("at least {}", db(x)));
    match (worst, floor) {
        (Some(w), Some(f)) => Some(format!("{w}, {f}")),
        (None, Some(f)) => Some(format!("loss {f}")),
        (w, None) => w,
    }
}

/// What is compared, in words.
fn quantity(c: &Comparison) -> &'static str {
    match c.quantity {
        Verified::Eirp => "EIRP",
        Verified::Delivered => "at the antenna",
        Verified::Loss => "loss",
    }
}

fn heading(c: &ChainVerification) -> String {
    let mut out = format!("{}, {}", c.chain, c.direction.word());
    if !c.station.is_empty() {
        out = format!("{}: {out}", c.station);
    }
    of_band(out, &c.band, c.point, c.frequency_hz)
}

static COLUMNS: &[Column<(String, [String; 4])>] = &[
    Column::left("by", |r| (&r.0).into()),
    Column::right("mean", |r| (&r.1[0]).into()),
    Column::right("U (k = 2)", |r| (&r.1[1]).into()),
    Column::right("2.275 %", |r| (&r.1[2]).into()),
    Column::right("97.725 %", |r| (&r.1[3]).into()),
];

/// The page.
#[must_use]
pub fn page(all: &Verification) -> Document {
    let mut doc = Document {
        title: "Feed chains, verified".to_owned(),
        widest: None,
        blocks: Vec::new(),
    };
    if all.chains.is_empty() {
        doc.push(Block::Paragraph(
            "No chain in these files: nothing to compute.".into(),
        ));
        return doc;
    }
    conclusion(&mut doc, all);
    for c in &all.chains {
        chain(&mut doc, c, all.draws);
    }
    doc
}

/// How many results agree with the draws, and which do not.
fn conclusion(doc: &mut Document, all: &Verification) {
    let compared: Vec<(&ChainVerification, Remarks)> = all
        .chains
        .iter()
        .filter_map(|c| Some((c, remarks(c.compared.as_ref()?))))
        .collect();
    let differ: Vec<&ChainVerification> = compared
        .iter()
        .filter(|c| c.1.report.is_some())
        .map(|c| c.0)
        .collect();
    let unknown = all.chains.len() - compared.len();
    let mut words = format!(
        "{} beside {} random draws each: ",
        counted(compared.len(), "result"),
        all.draws
    );
    words += &match differ.len() {
        0 => "no difference beyond the last printed digit".to_owned(),
        1 => "1 differs".to_owned(),
        n => format!("{n} differ"),
    };
    if unknown > 0 {
        words += &format!(", {unknown} {NOT_KNOWN}");
    }
    doc.heading(1, words, None);
    let mut names: Vec<String> = differ.iter().take(3).map(|c| heading(c)).collect();
    if differ.len() > 3 {
        names.push(format!("{} more", differ.len() - 3));
    }
    if !names.is_empty() {
        note(doc, names.join("; "));
    }
}

fn chain(doc: &mut Document, c: &ChainVerification, draws: usize) {
    doc.heading(2, heading(c), Some(Place::new(&c.file, c.line)));
    let Some(x) = &c.compared else {
        let words = format!("{NOT_KNOWN}: a part could not be computed");
        doc.push(Block::Note(Level::Warning, words.into()));
        return;
    };
    let rows: Vec<(String, [String; 4])> = ways(x, draws)
        .into_iter()
        .map(|(name, e)| (name, figures(x, e).map(|f| f.words)))
        .collect();
    let mut table = Table::of(COLUMNS, &rows, |_| None);
    if let Some(h) = table.heads.first_mut() {
        h.words = quantity(x);
    }
    doc.table(table);
    if let Some(b) = bounds(x) {
        note(doc, format!("bounds: {b}"));
    }
    let said = remarks(x);
    if said == Remarks::default() {
        note(doc, AGREES);
    }
    if let Some(words) = said.report {
        doc.push(Block::Note(Level::Warning, words.into()));
    }
    if let Some(words) = said.derivatives {
        note(doc, words);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::shape::word::Word;

    fn estimate(mean: f64, uncertainty_db: f64, low: f64, high: f64) -> Estimate {
        Estimate {
            mean,
            uncertainty_db,
            low,
            high,
        }
    }

    fn made(method: Method, reported: Estimate) -> Comparison {
        Comparison {
            quantity: Verified::Eirp,
            unit: Unit::Watt,
            derivatives: estimate(38.45, 0.7412, 32.4, 45.6),
            reported,
            method: Word(method),
            drawn: estimate(38.47, 0.7388, 32.41, 45.55),
            loss_floor_db: Some(2.0),
            loss_worst_db: Some([2.1, 2.4]),
        }
    }

    #[test]
    fn a_unit_of_the_last_digit_is_no_difference() {
        let same = estimate(38.45, 0.7412, 32.4, 45.6);
        assert_eq!(
            remarks(&made(Method::Derivatives, same)),
            Remarks::default()
        );
        // 0.1 W and 0.01 dB are the last digits
        for (off, words) in [
            (
                estimate(38.6, 0.74, 32.4, 45.6),
                "mean 38.6 W, drawn 38.5 W",
            ),
            (
                estimate(38.45, 0.76, 32.4, 45.6),
                "U 0.76 dB, drawn 0.74 dB",
            ),
            (
                estimate(38.45, 0.74, 32.2, 45.6),
                "lower end 32.2 W, drawn 32.4 W",
            ),
            (
                estimate(38.45, 0.74, 32.4, 46.1),
                "upper end 46.1 W, drawn 45.5 W",
            ),
        ] {
            let found = remarks(&made(Method::Sample, off));
            assert_eq!(found.report, Some(format!("The report differs: {words}")));
            assert_eq!(found.derivatives, None);
        }
        // the steps of a kilowatt and of a milliwatt are theirs
        let mut big = made(Method::Sample, estimate(1_690.0, 0.5, 1_510.0, 1_890.0));
        big.derivatives = estimate(1_690.0, 0.5, 1_510.0, 1_900.0);
        big.drawn = estimate(1_694.0, 0.5, 1_512.0, 1_886.0);
        let found = remarks(&big);
        assert_eq!(found.report, None);
        let words = "Derivatives alone would differ: upper end 1.90 kW, drawn 1.89 kW";
        assert_eq!(found.derivatives.as_deref(), Some(words));
    }

    #[test]
    fn each_way_has_a_row() {
        let same = estimate(38.45, 0.7412, 32.4, 45.6);
        let names =
            |c: &Comparison| -> Vec<String> { ways(c, 1_000).into_iter().map(|w| w.0).collect() };
        let plain = made(Method::Derivatives, same);
        assert_eq!(names(&plain), ["derivatives", "1000 random draws"]);
        let sampled = made(Method::Sample, same);
        assert_eq!(names(&sampled)[1], "as reported, by 1024 points");
        assert_eq!(
            bounds(&plain).as_deref(),
            Some("loss 2.10 dB to 2.40 dB over all phases, at least 2.00 dB")
        );
        let mut close = plain;
        close.loss_worst_db = Some([2.101, 2.102]);
        assert_eq!(bounds(&close).as_deref(), Some("loss at least 2.00 dB"));
    }
}
