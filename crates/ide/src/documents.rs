//! Virtual documents and lenses: the report of a chain or station as Markdown, an explanation of
//! a line, margins and the largest cause of uncertainty above a chain.

use downlead_base::Span;
use downlead_eval::result::{BandResult, ChainResult, LimitResult};
use downlead_eval::{Places, Snapshot};
use downlead_quantity::{db, number, power};
use downlead_report::document::Document;
use downlead_report::shape::chain::{Report, SCHEMA};
use downlead_report::write::markdown::markdown;
use downlead_report::{build, page, words};
use downlead_station::model::{Direction, Meaning};

use crate::config::Config;
use crate::level_diagram::illustrate;
use crate::markdown::{Writer, place_link};
use crate::radiated;
use crate::view::{Doc, View, doc_text, to32};
use crate::words::{or_not_known, plus_minus, under_or_over};

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

/// The lenses of a document: above a chain the nearest limit and the largest cause of uncertainty, above
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
            let found = radiated::summary(&view, &low.meaning, result);
            out.extend(found.map(|(p, title, name)| Lens {
                span: p.span,
                title,
                command: LensCommand::Report {
                    file,
                    name: name.to_owned(),
                },
            }));
            if let Meaning::Rules(set) = &low.meaning {
                let found = crate::lens_rules::lens(&view, scope, set);
                out.extend(found.map(|(span, title, name)| Lens {
                    span,
                    title,
                    command: LensCommand::Report { file, name },
                }));
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
                // a station's lens and the hint at the limit say it already
                let said = station.is_some() && c.hints.enabled && c.hints.limits;
                match worst {
                    Some(_) if said => {}
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
                let uncertainty = shown
                    .filter_map(|b| Some((b, b.uncertainty_db.filter(|u| *u >= 0.005)?)))
                    .max_by(|a, b| a.1.total_cmp(&b.1))
                    .and_then(|b| Some((b, b.0.causes(&places, &low.meaning).into_iter().next()?)));
                if let Some(((b, all), (cause, u))) = uncertainty {
                    let total: f64 = b.budget.iter().map(|i| i.standard_db * i.standard_db).sum();
                    if total > 0.0 {
                        out.push(Lens {
                            span: p.span,
                            title: format!(
                                "largest contribution: {cause}, {} % of ± {}",
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

fn verdict(l: &LimitResult) -> String {
    format!("{},", words::verdict::limit(l.verdict))
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
        (Direction::Receive, Some(l), ..) => format!("needs {l:.1} dBm at the antenna"),
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

/// The report: of a station, of a chain (by name or as `station/chain`), of a bench session, or of
/// the whole file. None if there is no such thing.
#[must_use]
pub fn report_document(s: &Snapshot, file: usize, name: Option<&str>) -> Option<Document> {
    reported(s, file, name, false)
}

/// The same with a level diagram of each chain.
#[must_use]
pub fn illustrated_report(s: &Snapshot, file: usize, name: Option<&str>) -> Option<Document> {
    reported(s, file, name, true)
}

fn reported(s: &Snapshot, file: usize, name: Option<&str>, illustrated: bool) -> Option<Document> {
    let scope = s.scopes().iter().find(|x| x.file() == file)?;
    let places = Places::new(s);
    let wanted = |station: &str, chain: &str| match name {
        None => true,
        Some(n) => {
            let within = n.strip_prefix(station).and_then(|n| n.strip_prefix('/'));
            n == chain || !station.is_empty() && (n == station || within == Some(chain))
        }
    };
    let report = Report {
        schema: SCHEMA,
        stations: build::chain::stations(&places, scope, &wanted),
        links: radiated::links(&places, scope, name),
        diagnostics: Vec::new(),
    };
    let chains = report
        .stations
        .iter()
        .map(|s| s.chains.len())
        .sum::<usize>();
    let mut doc = match chains + report.links.len() {
        0 => Document::default(),
        _ => page::chain::page(&report, page::chain::With::default()),
    };
    if illustrated {
        illustrate(&mut doc, &report);
    }
    for (_, low, result) in scope.items() {
        if let (Meaning::Session(x), Some(r)) = (&low.meaning, &result.session)
            && name.is_none_or(|n| *n == *x.name.text)
        {
            let session = build::bench::session(&places, x, r, scope.env());
            page::bench::session(&mut doc, &session);
        }
    }
    (!doc.blocks.is_empty()).then_some(doc)
}

/// The same as Markdown, with links to places.
#[must_use]
pub fn report_markdown(s: &Snapshot, file: usize, name: Option<&str>) -> Option<String> {
    let doc = report_document(s, file, name)?;
    Some(markdown(&doc, &|p| Some(place_link(&p.file, p.line))))
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
