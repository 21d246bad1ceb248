//! What `report --verify` prints: each chain's result beside plain Monte Carlo of the same chain.

use std::fmt::Write as _;

use downlead_quantity::{db, frequency, power};
use downlead_report::shape::verify::{ChainVerification, Comparison, Estimate, Verification};

use crate::report::cells::{maybe, number, table};
use crate::report::words::NOT_KNOWN;
use crate::report::{Columns, inline};
use crate::ui::{Style, printable};

/// What is said of a chain.
const AGREES: &str = "No difference beyond the last printed digit.";

/// One way of computing, with its name.
type Way<'a> = (String, &'a Estimate);

/// The ways of a comparison, in order; the report's own only where it is another than the first.
fn ways(c: &Comparison, draws: usize) -> Vec<Way<'_>> {
    let mut out = vec![("derivatives".to_owned(), &c.derivatives)];
    if c.method != "derivatives" || c.reported != c.derivatives {
        let how = match c.method {
            "sample" => "as reported, by 1024 points",
            "both" => "as reported, in part by 1024 points",
            _ => "as reported",
        };
        out.push((how.to_owned(), &c.reported));
    }
    out.push((format!("{draws} random draws"), &c.drawn));
    out
}

/// A value in the unit of the comparison.
fn shown(c: &Comparison, value: f64) -> String {
    match c.unit {
        "W" => power(value),
        _ => db(value),
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

/// What differs from the draws, in sentences; one that says so where nothing does.
fn remarks(c: &Comparison) -> Vec<String> {
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
    let report = of("The report differs", &c.reported);
    let derivatives = match c.method {
        "derivatives" => None,
        _ => of("Derivatives alone would differ", &c.derivatives),
    };
    let mut out: Vec<String> = report.into_iter().chain(derivatives).collect();
    if out.is_empty() {
        out.push(AGREES.to_owned());
    }
    out
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
        "eirp" => "EIRP",
        "delivered" => "at the antenna",
        _ => "loss",
    }
}

fn heading(c: &ChainVerification) -> String {
    let mut out = format!("{}, {}", c.chain, c.direction);
    if !c.station.is_empty() {
        out = format!("{}: {out}", c.station);
    }
    let f = frequency(c.frequency_hz);
    if c.band != f {
        out += &format!(" on {}", c.band);
    }
    match c.point {
        Some("low") => out += ", low edge",
        Some("high") => out += ", high edge",
        Some(p) => out += &format!(", {p}"),
        None => {}
    }
    format!("{out}, {f}")
}

/// All chains, one under the other.
pub(crate) fn text(all: &Verification, style: Style) -> String {
    let mut out = String::new();
    for c in &all.chains {
        let place = format!("{}:{}", c.file, c.line);
        let _ = writeln!(
            out,
            "{}  {}\n",
            style.bold(&printable(&heading(c))),
            style.faint(&printable(&place))
        );
        let Some(x) = &c.compared else {
            let _ = writeln!(out, "  {NOT_KNOWN}: a part could not be computed\n");
            continue;
        };
        let mut table = Columns::default();
        table.left(quantity(x));
        table
            .right("mean")
            .right("U")
            .right("2.275 %")
            .right("97.725 %");
        for (name, e) in ways(x, all.draws) {
            let cells = figures(x, e).map(|f| f.words);
            table.row(std::iter::once(name).chain(cells).collect());
        }
        table.write(style, &mut out);
        if let Some(b) = bounds(x) {
            let _ = writeln!(out, "  bounds: {b}");
        }
        for r in remarks(x) {
            let line = match r == AGREES {
                true => r,
                false => style.doubtful(&r),
            };
            let _ = writeln!(out, "  {line}");
        }
        out.push('\n');
    }
    if out.is_empty() {
        out.push_str("No chain in these files: nothing to compute.\n");
    }
    out
}

/// The same as Markdown.
pub(crate) fn markdown(all: &Verification) -> String {
    let mut out = String::from("# Feed chains, verified\n");
    for c in &all.chains {
        let _ = writeln!(out, "\n## {}\n", inline(&heading(c)));
        let Some(x) = &c.compared else {
            let _ = writeln!(out, "{NOT_KNOWN}: a part could not be computed");
            continue;
        };
        let _ = writeln!(
            out,
            "| {} | mean | U (k = 2) | 2.275 % | 97.725 % |\n|---|---:|---:|---:|---:|",
            quantity(x)
        );
        for (name, e) in ways(x, all.draws) {
            let cells = figures(x, e).map(|f| f.words).join(" | ");
            let _ = writeln!(out, "| {name} | {cells} |");
        }
        out.push('\n');
        for line in bounds(x)
            .map(|b| format!("bounds: {b}"))
            .into_iter()
            .chain(remarks(x))
        {
            let _ = writeln!(out, "- {}", inline(&line));
        }
    }
    out
}

/// The same as CSV: one row a chain, band and way of computing.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub(crate) fn csv(all: &Verification) -> Result<String, csv::Error> {
    let head = [
        "station",
        "chain",
        "direction",
        "band",
        "point",
        "frequency_hz",
        "quantity",
        "unit",
        "by",
        "method",
        "draws",
        "mean",
        "uncertainty_db",
        "low",
        "high",
        "loss_worst_low_db",
        "loss_worst_high_db",
        "loss_floor_db",
        "file",
        "line",
    ];
    let mut rows = Vec::new();
    for c in &all.chains {
        let Some(x) = &c.compared else { continue };
        let [low, high] = x
            .loss_worst_db
            .map_or([None, None], |[low, high]| [Some(low), Some(high)]);
        for (by, method, e) in [
            ("derivatives", "derivatives", &x.derivatives),
            ("report", x.method, &x.reported),
            ("draws", "draws", &x.drawn),
        ] {
            let draws = (by == "draws").then_some(all.draws);
            rows.push(vec![
                c.station.clone(),
                c.chain.clone(),
                c.direction.to_owned(),
                c.band.clone(),
                c.point.unwrap_or_default().to_owned(),
                number(c.frequency_hz),
                x.quantity.to_owned(),
                x.unit.to_owned(),
                by.to_owned(),
                method.to_owned(),
                draws.map_or(String::new(), |n| n.to_string()),
                number(e.mean),
                number(e.uncertainty_db),
                number(e.low),
                number(e.high),
                maybe(low),
                maybe(high),
                maybe(x.loss_floor_db),
                c.file.clone(),
                c.line.to_string(),
            ]);
        }
    }
    table(&head, rows)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn estimate(mean: f64, uncertainty_db: f64, low: f64, high: f64) -> Estimate {
        Estimate {
            mean,
            uncertainty_db,
            low,
            high,
        }
    }

    fn made(method: &'static str, reported: Estimate) -> Comparison {
        Comparison {
            quantity: "eirp",
            unit: "W",
            derivatives: estimate(38.45, 0.7412, 32.4, 45.6),
            reported,
            method,
            drawn: estimate(38.47, 0.7388, 32.41, 45.55),
            loss_floor_db: Some(2.0),
            loss_worst_db: Some([2.1, 2.4]),
        }
    }

    #[test]
    fn a_unit_of_the_last_digit_is_no_difference() {
        let same = estimate(38.45, 0.7412, 32.4, 45.6);
        assert_eq!(remarks(&made("derivatives", same)), [AGREES]);
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
            let found = remarks(&made("sample", off));
            assert_eq!(found, [format!("The report differs: {words}")]);
        }
        // the steps of a kilowatt and of a milliwatt are theirs
        let mut big = made("sample", estimate(1_690.0, 0.5, 1_510.0, 1_890.0));
        big.derivatives = estimate(1_690.0, 0.5, 1_510.0, 1_900.0);
        big.drawn = estimate(1_694.0, 0.5, 1_512.0, 1_886.0);
        assert_eq!(
            remarks(&big),
            ["Derivatives alone would differ: upper end 1.90 kW, drawn 1.89 kW"]
        );
    }

    #[test]
    fn each_way_has_a_row() {
        let same = estimate(38.45, 0.7412, 32.4, 45.6);
        let names =
            |c: &Comparison| -> Vec<String> { ways(c, 1_000).into_iter().map(|w| w.0).collect() };
        let plain = made("derivatives", same);
        assert_eq!(names(&plain), ["derivatives", "1000 random draws"]);
        let sampled = made("sample", same);
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
