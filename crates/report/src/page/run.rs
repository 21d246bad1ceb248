//! Pieces as runs of one length: which is the best, in dB and watts.

use downlead_quantity::{frequency, length, number, power};

use super::note;
use crate::document::{Block, Column, Document, Table, Text};
use crate::shape::run::{RunReport, RunsAtReport, RunsReport};
use crate::words::figure::with_uncertainty;

/// The sentence on top: the best piece at each frequency, and how sure that is.
pub(super) fn sentence(r: &RunsReport) -> Vec<Text> {
    r.frequencies.iter().map(|f| best(r, f)).collect()
}

fn best(r: &RunsReport, f: &RunsAtReport) -> Text {
    let run = format!("{} at {}: ", length(r.length_m), frequency(f.frequency_hz));
    let Some(first) = f.ranking.first() else {
        return format!("{run}cannot tell, no piece has a fit that reaches there").into();
    };
    let alike: Vec<&RunReport> = f.ranking.iter().filter(|x| x.rank == 1).collect();
    let figures = format!(
        "{} dB, {} of {} arrive between matched ends",
        pair(first.loss_db, first.uncertainty_db),
        power(first.power_w),
        power(r.power_w)
    );
    let mut out = match &alike[..] {
        [_] => format!("{run}{} is the best, {figures}", first.piece),
        many => {
            let names: Vec<&str> = many.iter().map(|x| x.piece.as_str()).collect();
            format!(
                "{run}{} cannot be distinguished; {} {figures}",
                names.join(" and "),
                first.piece
            )
        }
    };
    if let Some(next) = f.ranking.iter().find(|x| x.rank > 1)
        && let (Some(db), Some(u), Some(w)) = (next.more_db, next.more_uncertainty_db, next.less_w)
    {
        out += &format!(
            "; next {}, {} dB more loss, {} less",
            next.piece,
            pair(db, u),
            power(w)
        );
    }
    out.into()
}

fn pair(value: f64, u: f64) -> String {
    let (v, u) = with_uncertainty(value, u, 3);
    format!("{v} ± {u}")
}

fn columns<'a>() -> [Column<&'a RunReport>; 7] {
    [
        Column::left("rank", |x: &&'a RunReport| {
            let same = if x.sharing > 1 { "=" } else { "" };
            format!("{}{same}", x.rank).into()
        }),
        Column::left("piece", |x: &&'a RunReport| (&x.piece).into()),
        Column::right("loss dB (k = 2)", |x: &&'a RunReport| {
            pair(x.loss_db, x.uncertainty_db).into()
        }),
        Column::right("W at the end", |x: &&'a RunReport| {
            pair(x.power_w, x.power_uncertainty_w).into()
        }),
        Column::right("dB more than the best", |x: &&'a RunReport| {
            difference(x.more_db, x.more_uncertainty_db)
        })
        .drop(1),
        Column::right("W less", |x: &&'a RunReport| {
            difference(x.less_w, x.less_uncertainty_w)
        })
        .drop(2),
        Column::left("", |x: &&'a RunReport| {
            if x.inside { "" } else { "beyond its readings" }.into()
        }),
    ]
}

fn difference(value: Option<f64>, u: Option<f64>) -> Text {
    match (value, u) {
        (Some(v), Some(u)) => pair(v, u).into(),
        _ => Text::default(),
    }
}

/// The tables below the sentence.
pub(super) fn runs(doc: &mut Document, r: &RunsReport) {
    let with = match r.length_uncertainty_m > 0.0 {
        true => format!(" ± {}", length(r.length_uncertainty_m)),
        false => String::new(),
    };
    let head = format!(
        "a run of {}{with}, {} at its near end, {} °C",
        length(r.length_m),
        power(r.power_w),
        number(r.temperature_c, 1)
    );
    doc.heading(3, head, None);
    let columns = columns();
    let mut table = Table::new(&columns);
    for f in &r.frequencies {
        table.title(frequency(f.frequency_hz));
        for x in &f.ranking {
            table.row(&columns, &x, None);
        }
    }
    doc.table(table);
    let refused = r.frequencies.iter().flat_map(|f| {
        let at = frequency(f.frequency_hz);
        let one = move |n: &crate::shape::run::NoRunReport| {
            format!("{} at {at}: not answered, {}", n.piece, n.why).into()
        };
        f.refused.iter().map(one)
    });
    let refused: Vec<Text> = refused.collect();
    if !refused.is_empty() {
        doc.push(Block::List(refused));
    }
    note(
        doc,
        "by the two coefficients fitted to each piece's own readings, at the temperature of the bench, without joins and between ends of the \
         cable's own impedance (a cable of 75 ohm between ends of 50 ohm loses more); = cannot be distinguished from a neighbour of the same rank; beyond its readings: the fitted law is carried on",
    );
}
