//! A session as a document, and the lenses above it.

use downlead_eval::Places;
use downlead_eval::bench::result::{BenchCell, SessionResult};
use downlead_eval::bench::verdict_word;
use downlead_quantity::{db, decibel_signed, number, percent};
use downlead_station::session::Session;

use downlead_report::words::figure::with_uncertainty;

use super::words::{self, Counts, counted};
use crate::documents::{Lens, LensCommand};
use crate::markdown::{escape, table};
use crate::view::View;

/// The lenses above a session: its verdicts, and what its doubt mostly comes from.
pub(crate) fn lenses(
    view: &View<'_>,
    places: &Places<'_>,
    file: usize,
    s: &Session,
    r: &SessionResult,
    out: &mut Vec<Lens>,
) {
    let Some(p) = view.place(s.name.loc) else {
        return;
    };
    let n = Counts::of(r.cells.iter());
    if r.readings == 0 && r.lost == 0 {
        return;
    }
    let lost = match r.lost {
        0 => String::new(),
        n => format!("; {} not taken", counted(n, "row")),
    };
    out.push(Lens {
        span: p.span,
        title: match n.all() {
            0 => format!("{}{lost}", n.words()),
            all => format!("{}: {}{lost}", counted(all, "comparison"), n.words()),
        },
        command: LensCommand::Report {
            file,
            name: s.name.text.to_string(),
        },
    });
    // a cell that is furthest off explains the largest doubt best
    let worst = r
        .cells
        .iter()
        .filter_map(|c| Some((c, c.comparison.as_ref()?.en.abs())))
        .max_by(|a, b| a.1.total_cmp(&b.1));
    if let (Some((cause, share)), Some((cell, _))) = (words::causes(r).into_iter().next(), worst) {
        out.push(Lens {
            span: p.span,
            title: format!(
                "largest doubt: {cause}, {} % of all",
                number(100.0 * share, 0)
            ),
            command: LensCommand::Explain {
                file,
                line: places.line(cell.rows.first().copied().unwrap_or(r.loc)),
            },
        });
    }
}

/// The report of a session as Markdown: pieces with their bands, the ranking, drift, doubt, what
/// was assumed.
pub(crate) fn session_report(
    out: &mut String,
    places: &Places<'_>,
    s: &Session,
    r: &SessionResult,
) {
    let title = s
        .title
        .as_ref()
        .map_or_else(String::new, |t| format!(": {}", escape(t)));
    out.push_str(&format!("# {}{title}\n\n", escape(&s.name.text)));
    head(out, s, r);
    for i in 0..r.pieces.len() {
        piece(out, r, i);
    }
    ranking(out, r);
    drift(out, r);
    reflections(out, places, r);
    let causes: Vec<Vec<String>> = words::causes(r)
        .into_iter()
        .map(|(cause, share)| vec![cause, percent(share)])
        .collect();
    if !causes.is_empty() {
        out.push_str("## Doubt of all comparisons\n\n");
        out.push_str(&table(&["cause", "share"], &causes));
        out.push('\n');
    }
    let list = r.assumptions(places);
    if !list.is_empty() {
        out.push_str("Assumed:\n\n");
        for a in list {
            out.push_str(&format!("- {}\n", escape(&a)));
        }
        out.push('\n');
    }
}

fn head(out: &mut String, s: &Session, r: &SessionResult) {
    let mut line = |name: &str, words: String| {
        out.push_str(&format!("- {name}: {}\n", escape(&words)));
    };
    let mut read = Vec::new();
    read.extend(s.meta.date.as_ref().map(ToString::to_string));
    let meters: Vec<&str> = r
        .meters
        .iter()
        .map(|m| &**m)
        .filter(|m| !m.is_empty())
        .collect();
    if !meters.is_empty() {
        read.push(format!("with {}", meters.join(", ")));
    }
    read.extend(s.meta.person.as_ref().map(|p| format!("by {p}")));
    if !read.is_empty() {
        line("read", read.join(" "));
    }
    if let Some(t) = s.temperature {
        line("temperature", format!("{} °C", number(t.value, 1)));
    }
    let lost = match r.lost {
        0 => String::new(),
        n => format!(", {} not taken", counted(n, "row")),
    };
    line(
        "readings",
        format!("{} on {}{lost}", r.readings, counted(r.bands.len(), "band")),
    );
    line("comparisons", Counts::of(r.cells.iter()).words());
    out.push('\n');
}

fn piece(out: &mut String, r: &SessionResult, index: usize) {
    let p = &r.pieces[index];
    let mut title = p.name.to_string();
    match p.length_m {
        Some((m, u)) if u > 0.0 => {
            let (m, u) = with_uncertainty(m, 2.0 * u, 3);
            title.push_str(&format!(", {m} m ± {u} m"));
        }
        Some((m, _)) => title.push_str(&format!(", {} m", number(m, 3))),
        None => {}
    }
    if !p.cable.is_empty() {
        title.push_str(&format!(" of {}", p.cable));
    }
    out.push_str(&format!(
        "## {}, {} °C\n\n",
        escape(&title),
        number(p.celsius, 1)
    ));
    let rows: Vec<Vec<String>> = r
        .cells
        .iter()
        .filter(|c| c.piece == index)
        .map(|c| cell(r, c))
        .collect();
    if !rows.is_empty() {
        let columns = [
            "band",
            "loss",
            "through",
            "expected",
            "differs by",
            "±",
            "verdict",
            "to tell it",
            "by",
        ];
        out.push_str(&table(&columns, &rows));
        out.push('\n');
    }
    let mut list = Vec::new();
    if let Some(w) = &p.whole {
        let worst = p
            .worst
            .and_then(|c| r.cells.get(c))
            .map_or_else(String::new, |c| {
                format!(", furthest off on {}", r.bands[c.band].band)
            });
        list.push(format!(
            "as a whole {}: {}, χ² {:.1} for {}{}{worst}",
            verdict_word(w.verdict),
            words::whole(w),
            w.chi2,
            w.dof,
            words::scatters(w)
        ));
    }
    for (_, l, tape) in &p.lengths {
        let (m, u) = with_uncertainty(l.metres, 2.0 * l.u_metres, 3);
        let tape = tape.as_ref().map_or_else(String::new, |t| {
            let (d, u) = with_uncertainty(t.difference_m, t.expanded_m, 3);
            format!(
                ", {d} m ± {u} m against the tape: {}",
                verdict_word(t.verdict)
            )
        });
        list.push(format!("{m} m ± {u} m by its waves{tape}"));
    }
    for l in &list {
        out.push_str(&format!("- {}\n", escape(l)));
    }
    if !list.is_empty() {
        out.push('\n');
    }
}

fn cell(r: &SessionResult, c: &BenchCell) -> Vec<String> {
    let b = &r.bands[c.band];
    let dash = || "–".to_owned();
    let x = c.comparison.as_ref();
    vec![
        words::band_in_words(&b.band, b.hz),
        db(c.measured.db),
        format!("{:.1} %", c.measured.through_percent),
        c.expected.map_or_else(dash, |e| db(e.db)),
        x.map_or_else(dash, |x| decibel_signed(x.difference_db)),
        db(x.map_or(c.measured.expanded_db, |x| x.expanded_db)),
        x.map_or_else(dash, |x| verdict_word(x.verdict).to_owned()),
        to_tell(r, c),
        c.method.words().to_owned(),
    ]
}

/// What would make a comparison tell: a better meter, or a longer piece.
fn to_tell(r: &SessionResult, c: &BenchCell) -> String {
    let Some(x) = c.comparison.as_ref() else {
        return String::new();
    };
    if verdict_word(x.verdict) != "cannot tell" {
        return String::new();
    }
    let meter = x.meter_factor.filter(|f| *f > 1.0 && f.is_finite());
    let meter = meter.map(|f| format!("a doubt {} times smaller", up(f)));
    let length = c.length_factor.zip(r.pieces[c.piece].length_m);
    let length = length.map(|(f, (m, _))| format!("{} m of it", up(f * m)));
    match (meter, length) {
        (Some(m), Some(l)) => format!("{m}, or {l}"),
        (Some(one), None) | (None, Some(one)) => one,
        (None, None) => "no meter: the sheet is too loose".to_owned(),
    }
}

/// Rounded up: what is needed must not be rounded away.
fn up(value: f64) -> String {
    if value < 10.0 {
        number(libm::ceil(value * 10.0 - 1e-9) / 10.0, 1)
    } else {
        number(libm::ceil(value - 1e-9), 0)
    }
}

fn ranking(out: &mut String, r: &SessionResult) {
    let rows: Vec<Vec<String>> = (0..r.bands.len())
        .filter(|b| !r.bands[*b].ranking.is_empty())
        .map(|b| {
            vec![
                words::band_in_words(&r.bands[b].band, r.bands[b].hz),
                words::ranking(r, b, true),
            ]
        })
        .collect();
    if !rows.is_empty() {
        out.push_str("## Loss per 100 m, dB, least first\n\n");
        out.push_str(&table(&["band", "pieces (k = 2)"], &rows));
        out.push_str("\nPieces that cannot be told apart stand beside each other with `=`.\n\n");
    }
}

fn drift(out: &mut String, r: &SessionResult) {
    let rows: Vec<Vec<String>> = r
        .bands
        .iter()
        .filter(|b| b.baselines.len() > 1)
        .filter_map(|b| {
            let d = b.drift?;
            Some(vec![
                words::band_in_words(&b.band, b.hz),
                format!("{:+.1} %", d.total_percent),
                format!("{} min", number(d.minutes, 1)),
                d.scatter_percent
                    .map_or_else(|| "–".to_owned(), |s| format!("{s:.1} %")),
            ])
        })
        .collect();
    if !rows.is_empty() {
        out.push_str("## Drift of the baseline\n\n");
        out.push_str(&table(
            &["band", "drift", "in", "off a straight line"],
            &rows,
        ));
        out.push('\n');
    }
}

fn reflections(out: &mut String, places: &Places<'_>, r: &SessionResult) {
    let rows: Vec<Vec<String>> = r
        .swrs
        .iter()
        .map(|x| {
            let piece = x
                .piece
                .map_or_else(String::new, |p| format!(" {}", r.pieces[p].name));
            let place = match &x.from {
                Some((path, line)) => format!("{path}:{line}"),
                None => format!("line {}", places.line(x.loc)),
            };
            vec![
                place,
                r.bands[x.band].band.to_string(),
                format!("{}{piece}", x.kind.word()),
                words::swr(&x.swr),
            ]
        })
        .collect();
    if !rows.is_empty() {
        out.push_str("## SWR at the meter\n\n");
        out.push_str(&table(&["read at", "band", "reading", "SWR"], &rows));
        out.push('\n');
    }
}
