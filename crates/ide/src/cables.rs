//! What a cable comes to at the frequencies in use: at its definition and in hovers.

use downlead_base::Span;
use downlead_eval::{Scope, Snapshot, cable_at_in, table_fit};
use downlead_quantity::{frequency, number};
use downlead_station::model::{BandKind, Cable, Meaning};
use downlead_station::{Attachments, Env, keyword_of};
use downlead_syntax::Item;

use crate::config::Config;
use crate::inlay::LabelPart;
use crate::view::{Doc, View, doc_text, line_end, path_at, scope_of, tree, visible};
use crate::words::per_100m;

/// Frequencies in use where a document is seen, rising, with the names of their bands.
pub(crate) fn frequencies(s: &Snapshot, doc: Doc, c: &Config) -> Vec<(String, f64)> {
    let mut out: Vec<(String, f64)> = Vec::new();
    let sees = |x: &&Scope| match doc {
        Doc::File(f) => x.file() == f || visible(s, x.file()).contains(&f),
        Doc::Library(_) => true,
    };
    for scope in s.scopes().iter().filter(sees) {
        for (_, _, r) in scope.items() {
            for b in r.chains.iter().flat_map(|x| x.bands.iter()) {
                let name = b.place();
                if c.shows(&b.band) {
                    out.push((name, b.hz));
                }
            }
        }
    }
    if out.is_empty()
        && let Some(env) = scope_of(s, doc).map(Scope::env)
    {
        for name in env.bands.keys() {
            let hz = env.band(name).and_then(|b| match &b.kind {
                BandKind::Single(f) => Some(*f),
                BandKind::Range(lo, hi) => Some(0.5 * (lo + hi)),
                BandKind::Pair { transmit, receive } => transmit.or(*receive),
            });
            if let Some(hz) = hz.filter(|_| c.shows(name)) {
                out.push((name.to_string(), hz));
            }
        }
    }
    // a pair's two frequencies are one band here: the one met first, usually transmit
    let mut seen = rustc_hash::FxHashSet::default();
    out.retain(|x| seen.insert(x.0.clone()));
    out.sort_by(|a, b| a.1.total_cmp(&b.1).then_with(|| a.0.cmp(&b.0)));
    out.dedup_by(|a, b| a.1 == b.1);
    out
}

/// A frequency with its band's name, unless that is the frequency already.
pub(crate) fn named(name: &str, hz: f64) -> String {
    let f = frequency(hz);
    if name == f {
        f
    } else {
        format!("{name} ({f})")
    }
}

/// Loss at two frequencies at most, the lowest and the highest in use.
fn label(cable: &Cable, list: &[(String, f64)], files: &Attachments) -> Vec<LabelPart> {
    let mut out = Vec::new();
    let mut shown: Vec<&(String, f64)> = list.iter().collect();
    if shown.len() > 2 {
        shown = vec![shown[0], shown[shown.len() - 1]];
    }
    let gap = if list.len() > 2 { " … " } else { " | " };
    for (name, hz) in shown {
        let Some(at) = cable_at_in(cable, *hz, 20.0, files) else {
            continue;
        };
        let outside = if at.outside > 1.000_001 {
            ", outside its range"
        } else {
            ""
        };
        let uncertainty = if at.u_relative > 0.0 {
            format!(" ± {} % (k = 2)", number(200.0 * at.u_relative, 1))
        } else {
            String::new()
        };
        out.push(LabelPart {
            text: format!(
                "{}{} at {name}",
                if out.is_empty() { "" } else { gap },
                per_100m(at.loss())
            ),
            tooltip: Some(format!(
                "matched loss at {}, 20 °C{uncertainty}{outside}",
                frequency(*hz)
            )),
            target: None,
        });
    }
    if let Some(fit) = table_fit(cable) {
        out.push(LabelPart {
            text: format!("{}fits within {} %", if out.is_empty() { "" } else { ", " }, number(100.0 * fit.worst.1.abs(), 1)),
            tooltip: Some(format!(
                "k1 √f + k2 f through the table: k1 {}, k2 {} (dB/100 m, f in MHz); rms {} %, furthest off at {}",
                number(fit.k1 * 100.0, 4),
                number(fit.k2 * 100.0, 6),
                number(100.0 * fit.rms, 2),
                frequency(fit.worst.0)
            )),
            target: None,
        });
    }
    out
}

/// `2.21 dB/100 m at 2m … 4.05 at 70cm`: what a cable loses at the lowest and the highest of some
/// frequencies; none where it says nothing of them.
pub(crate) fn in_short(
    cable: &Cable,
    list: &[(String, f64)],
    files: &Attachments,
) -> Option<String> {
    let label = label(cable, list, files);
    let figures = label.iter().filter(|p| {
        let of_table = |t: &String| t.starts_with("k1 ");
        !p.tooltip.as_ref().is_some_and(of_table)
    });
    let text: String = figures.map(|p| p.text.as_str()).collect();
    (!text.is_empty()).then_some(text)
}

/// The bands of the chain around an offset of an item, as its head names them, each with its
/// frequency in the chain's direction.
pub(crate) fn of_chain(item: &Item, offset: u32, env: &Env) -> Vec<(String, f64)> {
    let path = path_at(item, offset);
    let Some(chain) = path.iter().find(|s| s.keyword() == Some("chain")) else {
        return Vec::new();
    };
    let words: Vec<&str> = chain.atoms().iter().map(|a| chain.text(*a)).collect();
    let receive = words.contains(&"receive");
    let mut out: Vec<(String, f64)> = words
        .iter()
        .filter_map(|w| {
            let hz = match &env.band(w)?.kind {
                BandKind::Single(f) => *f,
                BandKind::Range(lo, hi) => 0.5 * (lo + hi),
                BandKind::Pair {
                    transmit,
                    receive: hears,
                } => match receive {
                    true => hears.or(*transmit)?,
                    false => transmit.or(*hears)?,
                },
            };
            Some(((*w).to_owned(), hz))
        })
        .collect();
    out.sort_by(|a, b| a.1.total_cmp(&b.1));
    out
}

/// The heads of cable definitions in a range, with what stands at their line ends.
pub(crate) fn heads(
    view: &View<'_>,
    doc: Doc,
    range: Span,
    c: &Config,
) -> Vec<(u32, Vec<LabelPart>)> {
    let Some(t) = tree(view.s, doc) else {
        return Vec::new();
    };
    let items: Vec<_> = t
        .items()
        .iter()
        .filter(|p| {
            p.span().end >= range.start
                && p.start <= range.end
                && keyword_of(&p.item) == Some("cable")
        })
        .collect();
    if items.is_empty() {
        return Vec::new();
    }
    let list = frequencies(view.s, doc, c);
    let no_files = Attachments::default();
    let files = scope_of(view.s, doc).map_or(&no_files, |x| &x.env().attachments);
    let text = doc_text(view.s, doc);
    items
        .into_iter()
        .filter_map(|p| {
            let stmt = p.item.statement()?;
            let end = line_end(text, p.start + stmt.head_span().end);
            if end < range.start || end > range.end {
                return None;
            }
            let none = downlead_station::Lets::default();
            let lets = scope_of(view.s, doc).map_or(&none, |x| &x.env().lets);
            let low = downlead_station::lower(&p.item, lets, false);
            let Meaning::Cable(cable) = &low.meaning else {
                return None;
            };
            let parts = label(cable, &list, files);
            (!parts.is_empty()).then_some((end, parts))
        })
        .collect()
}

/// Rows `band | dB/100 m | ±` for a hover.
pub(crate) fn rows(cable: &Cable, list: &[(String, f64)], files: &Attachments) -> Vec<[String; 3]> {
    list.iter()
        .filter_map(|(name, hz)| {
            let at = cable_at_in(cable, *hz, 20.0, files)?;
            let mut loss = per_100m(at.loss());
            if at.outside > 1.000_001 {
                loss.push_str(", outside its range");
            }
            let u = if at.u_relative > 0.0 {
                format!("± {} %", number(200.0 * at.u_relative, 1))
            } else {
                "not stated".to_owned()
            };
            Some([named(name, *hz), loss, u])
        })
        .collect()
}
