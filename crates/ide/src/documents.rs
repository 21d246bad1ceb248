//! Virtual documents and lenses: the report of a chain or station as Markdown, an explanation of
//! a line, margins and the largest doubt above a chain.

use downlead_base::Span;
use downlead_eval::result::{BandResult, ChainResult, LimitResult, Verdict};
use downlead_eval::{Places, Snapshot};
use downlead_quantity::{db, decibel_signed, number, percent, power};
use downlead_station::model::{Direction, Meaning};

use crate::config::Config;
use crate::hover::total_row;
use crate::markdown::{Writer, escape};
use crate::view::{Doc, View, doc_text, to32};
use crate::words::{both, or_not_known, plus_minus, under_or_over};

/// A line above a chain or station.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Lens {
    /// The head it belongs to.
    pub span: Span,
    /// What it says.
    pub title: String,
    /// What a click does.
    pub command: LensCommand,
}

/// What a click on a lens does.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LensCommand {
    /// Opens the report.
    Report {
        /// File.
        file: usize,
        /// Station, chain, `station/chain`, or session.
        name: String,
    },
    /// Opens the explanation of a line.
    Explain {
        /// File.
        file: usize,
        /// From 1.
        line: u32,
    },
}

/// The lenses of a document: above a chain the nearest limit and the largest cause of doubt, above
/// a station its nearest limit, above a bench session its verdicts.
#[must_use]
pub fn code_lenses(s: &Snapshot, doc: Doc, c: &Config) -> Vec<Lens> {
    let Doc::File(file) = doc else {
        return Vec::new();
    };
    if !c.lenses {
        return Vec::new();
    }
    let view = View::new(s);
    let places = Places::new(s);
    let mut out = Vec::new();
    for scope in s.scopes().iter().filter(|x| x.file() == file) {
        for (_, low, result) in scope.items() {
            let station = match &low.meaning {
                Meaning::Station(st) => Some(st),
                _ => None,
            };
            if let Some(st) = station {
                let all: Vec<(&ChainResult, &BandResult, &LimitResult)> = limits(&result.chains, c);
                let worst = all
                    .iter()
                    .min_by(|a, b| a.2.margin_db.total_cmp(&b.2.margin_db));
                if let (Some((chain, b, l)), Some(p)) = (worst, view.place(st.name.loc)) {
                    out.push(Lens {
                        span: p.span,
                        title: format!(
                            "nearest limit: {} on {}, {} {}",
                            view.text(chain.name),
                            b.band,
                            verdict(l),
                            margin(l)
                        ),
                        command: LensCommand::Report {
                            file,
                            name: st.name.text.to_string(),
                        },
                    });
                }
            }
            if let (Meaning::Session(x), Some(r)) = (&low.meaning, &result.session) {
                crate::bench::lenses(&view, &places, file, x, r, &mut out);
            }
            for chain in &result.chains {
                let Some(p) = view.place(chain.name) else {
                    continue;
                };
                let name = match station {
                    Some(st) => format!("{}/{}", st.name.text, view.text(chain.name)),
                    None => view.text(chain.name).to_owned(),
                };
                let mine = limits(std::slice::from_ref(chain), c);
                let worst = mine
                    .iter()
                    .min_by(|a, b| a.2.margin_db.total_cmp(&b.2.margin_db));
                let shown = chain.bands.iter().filter(|b| c.shows(&b.band));
                match worst {
                    Some((_, b, l)) => out.push(Lens {
                        span: p.span,
                        title: format!(
                            "{}{} {}",
                            if chain.bands.len() > 1 {
                                format!("{}: ", b.band)
                            } else {
                                String::new()
                            },
                            verdict(l),
                            margin(l)
                        ),
                        command: LensCommand::Report {
                            file,
                            name: name.clone(),
                        },
                    }),
                    None => {
                        let text: Vec<String> = shown
                            .clone()
                            .filter(|b| b.complete)
                            .take(3)
                            .map(|b| summary(chain, b))
                            .collect();
                        if !text.is_empty() {
                            out.push(Lens {
                                span: p.span,
                                title: text.join(", "),
                                command: LensCommand::Report {
                                    file,
                                    name: name.clone(),
                                },
                            });
                        }
                    }
                }
                let doubt = shown
                    .filter_map(|b| Some((b, b.uncertainty_db.filter(|u| *u >= 0.005)?)))
                    .max_by(|a, b| a.1.total_cmp(&b.1))
                    .and_then(|b| Some((b, b.0.causes(&places, &low.meaning).into_iter().next()?)));
                if let Some(((b, all), (cause, u))) = doubt {
                    let total: f64 = b.budget.iter().map(|i| i.standard_db * i.standard_db).sum();
                    if total > 0.0 {
                        out.push(Lens {
                            span: p.span,
                            title: format!(
                                "largest doubt: {cause}, {} % of ± {}",
                                number(100.0 * u * u / total, 0),
                                db(all)
                            ),
                            command: LensCommand::Explain {
                                file,
                                line: places.line(chain.loc),
                            },
                        });
                    }
                }
            }
        }
    }
    out.sort_by_key(|l| l.span);
    out
}

fn limits<'r>(
    chains: &'r [ChainResult],
    c: &Config,
) -> Vec<(&'r ChainResult, &'r BandResult, &'r LimitResult)> {
    chains
        .iter()
        .flat_map(|x| x.bands.iter().map(move |b| (x, b)))
        .filter(|(_, b)| c.shows(&b.band))
        .flat_map(|(x, b)| b.limits.iter().map(move |l| (x, b, l)))
        .collect()
}

fn verdict(l: &LimitResult) -> &'static str {
    match l.verdict {
        Verdict::Yes => "met,",
        Verdict::No => "not met,",
        Verdict::CannotTell => "cannot tell,",
    }
}

fn margin(l: &LimitResult) -> String {
    format!(
        "{} the {} limit{}",
        under_or_over(l.margin_db),
        l.quantity.word(),
        plus_minus(l.uncertainty_db)
    )
}

fn summary(chain: &ChainResult, b: &BandResult) -> String {
    let value = match (chain.direction, b.sensitivity_dbm, b.erp_w(), b.antenna_w) {
        (Direction::Receive, Some(l), ..) => format!("{l:.1} dBm at the antenna"),
        (_, _, Some(erp), _) => format!("ERP {}", power(erp)),
        (_, _, None, Some(w)) => power(w),
        _ => format!("loss {}", or_not_known(b.total_db.map(db))),
    };
    if chain.bands.len() > 1 {
        format!("{} {value}", b.band)
    } else {
        value
    }
}

/// The report as Markdown: of a station, of a chain (by name or as `station/chain`), of a bench
/// session, or of the whole file. None if there is no such thing.
#[must_use]
pub fn report_markdown(s: &Snapshot, file: usize, name: Option<&str>) -> Option<String> {
    let scope = s.scopes().iter().find(|x| x.file() == file)?;
    let view = View::new(s);
    let places = Places::new(s);
    let mut out = String::new();
    for (_, low, result) in scope.items() {
        let station = match &low.meaning {
            Meaning::Station(st) => Some(st),
            _ => None,
        };
        if let (Meaning::Session(x), Some(r)) = (&low.meaning, &result.session)
            && name.is_none_or(|n| *n == *x.name.text)
        {
            crate::bench::session_report(&mut out, &places, x, r);
        }
        let title = station.map_or("", |st| &*st.name.text);
        let mut first = true;
        for chain in &result.chains {
            let own = view.text(chain.name);
            let wanted = match name {
                None => true,
                Some(n) => {
                    n == own || (!title.is_empty() && (n == title || n == format!("{title}/{own}")))
                }
            };
            if !wanted {
                continue;
            }
            if let Some(st) = station.filter(|_| std::mem::take(&mut first)) {
                let long = st
                    .title
                    .as_ref()
                    .map_or_else(String::new, |t| format!(": {}", escape(t)));
                out.push_str(&format!("# {}{long}\n\n", escape(&st.name.text)));
            }
            chain_report(&mut out, &view, &places, chain, &low.meaning);
        }
    }
    (!out.is_empty()).then(|| out.trim_end().to_owned() + "\n")
}

fn table(out: &mut String, head: &[&str], rows: &[Vec<String>]) {
    if rows.is_empty() {
        return;
    }
    out.push_str(&crate::markdown::table(head, rows));
    out.push('\n');
}

fn chain_report(
    out: &mut String,
    view: &View<'_>,
    places: &Places<'_>,
    chain: &ChainResult,
    meaning: &Meaning,
) {
    out.push_str(&format!(
        "## {} ({})\n\n",
        escape(view.text(chain.name)),
        chain.direction.word()
    ));
    let rows: Vec<Vec<String>> = chain.bands.iter().map(total_row).collect();
    table(
        out,
        &["band", "loss", "at the end", "ERP", "EIRP", "± (k = 2)"],
        &rows,
    );
    for b in &chain.bands {
        let name = match b.point {
            Some(p) => format!("{} {p}", b.band),
            None => b.band.to_string(),
        };
        out.push_str(&format!(
            "### {}\n\n",
            escape(&crate::cables::named(&name, b.hz))
        ));
        if !b.complete {
            out.push_str("Not all parts could be computed; what depends on them is not known.\n\n");
        }
        let rows: Vec<Vec<String>> = b
            .nodes
            .iter()
            .map(|n| {
                let part = match (n.tag(), n.kind) {
                    (Some(t), _) => match n.port() {
                        Some(p) => format!("{}.{}", view.text(t), view.text(p)),
                        None => view.text(t).to_owned(),
                    },
                    (None, k) if k.is_join() => format!("join {}", view.text(n.def)),
                    (None, k) => k.word().to_owned(),
                };
                let known = |x: f64| match n.power_known {
                    true => db(x),
                    false => "–".to_owned(),
                };
                let level = if n.power_known && n.power_w.is_finite() {
                    both(n.power_w)
                } else if n.forward_known {
                    format!("{} forward", both(n.forward_w))
                } else {
                    "–".to_owned()
                };
                vec![
                    part,
                    if n.loss_known {
                        db(n.loss_db)
                    } else {
                        "not known".to_owned()
                    },
                    known(n.cumulative_db),
                    level,
                    match n.forward_known {
                        true => db(n.uncertainty_db),
                        false => "–".to_owned(),
                    },
                    n.swr.map_or_else(|| "–".to_owned(), |s| number(s, 2)),
                    n.basis.word().to_owned(),
                ]
            })
            .collect();
        table(
            out,
            &["part", "loss", "so far", "behind it", "±", "SWR", "basis"],
            &rows,
        );
        let rows: Vec<Vec<String>> = b
            .limits
            .iter()
            .map(|l| {
                vec![
                    l.quantity.word().to_owned(),
                    power(l.limit_w),
                    power(l.value_w),
                    under_or_over(l.margin_db),
                    db(l.uncertainty_db),
                    l.verdict.limit_word().to_owned(),
                    l.safe_w.map_or_else(|| "–".to_owned(), power),
                ]
            })
            .collect();
        table(
            out,
            &[
                "limit",
                "at most",
                "is",
                "margin",
                "±",
                "verdict",
                "transmitter power that meets it",
            ],
            &rows,
        );
        let rows: Vec<Vec<String>> = b
            .readings
            .iter()
            .map(|r| {
                let show = |x: f64| {
                    if r.power.is_some() {
                        power(x)
                    } else {
                        format!("SWR {}", number(x, 2))
                    }
                };
                vec![
                    format!("line {}", places.line(r.loc)),
                    show(r.read),
                    show(r.expected),
                    decibel_signed(r.difference_db),
                    db(r.uncertainty_db),
                    r.verdict.reading_word().to_owned(),
                ]
            })
            .collect();
        table(
            out,
            &["reading", "read", "expected", "difference", "±", "verdict"],
            &rows,
        );
        let total: f64 = b.budget.iter().map(|i| i.standard_db * i.standard_db).sum();
        let rows: Vec<Vec<String>> = b
            .causes(places, meaning)
            .into_iter()
            .filter(|c| c.1 > 0.0)
            .map(|(cause, u)| {
                vec![
                    cause,
                    format!("{} dB", number(u, 3)),
                    percent(if total > 0.0 { u * u / total } else { 0.0 }),
                ]
            })
            .collect();
        table(out, &["cause of doubt", "standard", "share"], &rows);
        let list = b.assumptions(places);
        if !list.is_empty() {
            out.push_str("Assumed:\n\n");
            for a in list {
                out.push_str(&format!("- {}\n", escape(&a)));
            }
            out.push('\n');
        }
    }
}

/// How the numbers of a line (from 1) were come by, as Markdown. None where there are none.
#[must_use]
pub fn explain_markdown(s: &Snapshot, file: usize, line: u32) -> Option<String> {
    let path = &s.files().get(file)?.path;
    let all = s.explain_line(path, line);
    if all.is_empty() {
        return None;
    }
    let view = View::new(s);
    let mut w = Writer::new(&view, true);
    let text = doc_text(s, Doc::File(file))
        .lines()
        .nth(line.saturating_sub(1) as usize)
        .unwrap_or("")
        .trim();
    w.title(&format!("{path}:{line}"), "");
    w.code(text);
    for d in &all {
        w.derivation(d);
    }
    debug_assert!(to32(text.len()) < u32::MAX);
    Some(w.finish().0 + "\n")
}
