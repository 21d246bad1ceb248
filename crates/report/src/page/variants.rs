//! Variants beside their station, for people.

use downlead_eval::licence::RuleVerdict;
use downlead_quantity::{db, decibel_signed, power};

use super::{caution, note};
use crate::document::{Block, Column, Document, Level, Place, Table, Text};
use crate::shape::variants::{ClauseState, StateReport, VariantChain, VariantReport, Variants};
use crate::words::exposure;
use crate::words::figure::counted;
use crate::words::verdict::Judged as _;

/// A row of a chain's table: the station, or a variant, by one of its clauses.
struct Row {
    name: String,
    state: Option<StateReport>,
    clause: Option<ClauseState>,
    chain: Option<VariantChain>,
}

static ROWS: &[Column<Row>] = &[
    Column::left("", |r| (&r.name).into()),
    Column::right("loss", |r: &Row| {
        shown(r, |s| s.loss_db).map(db).unwrap_or_default().into()
    }),
    Column::right("ERP", |r: &Row| {
        shown(r, |s| s.erp_w).map(power).unwrap_or_default().into()
    }),
    Column::left("limit", |r: &Row| {
        r.clause.as_ref().map(limit).unwrap_or_default().into()
    })
    .shrink(16),
    Column::left("verdict", |r: &Row| verdict(r)),
    Column::right("margin", |r: &Row| {
        let margin = r.clause.as_ref().and_then(|c| c.margin_db);
        margin.map(decibel_signed).unwrap_or_default().into()
    }),
    Column::right("uncertainty", |r: &Row| {
        let u = match &r.clause {
            Some(c) => c.uncertainty_db,
            None => shown(r, |s| s.uncertainty_db),
        };
        u.map(db).unwrap_or_default().into()
    })
    .drop(2),
    Column::right("against the station", |r: &Row| against(r).into()),
];

fn shown(r: &Row, get: fn(&StateReport) -> Option<f64>) -> Option<f64> {
    get(r.state.as_ref().filter(|_| !r.name.is_empty())?)
}

fn limit(c: &ClauseState) -> String {
    let quantity = c.quantity.unwrap_or("").to_uppercase();
    let value = c.limit_w.map(|w| format!("{} {quantity}", power(w)));
    [value, Some(c.cite.clone()).filter(|c| !c.is_empty())]
        .into_iter()
        .flatten()
        .collect::<Vec<_>>()
        .join(", ")
}

fn verdict(r: &Row) -> Text {
    if let Some(c) = &r.clause {
        let verdict = Text(vec![c.verdict.0.run()]);
        return match c.missing.is_empty() {
            true => verdict,
            false => verdict.plus(&format!(": {}", c.missing.join("; "))),
        };
    }
    match &r.state {
        Some(s) if !s.complete => "not computed".into(),
        Some(_) => "".into(),
        None => "no such chain or band".into(),
    }
}

fn against(r: &Row) -> String {
    let Some(c) = &r.chain else {
        return String::new();
    };
    // less loss is more power: what is radiated says it where something is
    let of = |what: &str, s: crate::shape::diff::StepDiff| {
        let change = decibel_signed(s.change_db);
        match s.speaks {
            true => format!("{change} ± {}{what}", db(s.uncertainty_db)),
            false if s.change_db.abs() < crate::shape::compare::SAME_DB => "same".to_owned(),
            false => format!(
                "{change} ± {}{what}, within the uncertainty",
                db(s.uncertainty_db)
            ),
        }
    };
    match (c.radiated, c.loss) {
        (Some(s), _) => of("", s),
        (None, Some(s)) => of(" of loss", s),
        _ => String::new(),
    }
}

/// The page.
#[must_use]
pub fn page(v: &Variants) -> Document {
    let mut doc = Document {
        title: "Variants".to_owned(),
        widest: None,
        blocks: Vec::new(),
    };
    doc.heading(1, "Variants", None);
    conclusion(v, &mut doc);
    let mut stations: Vec<&str> = Vec::new();
    for x in v.variants.iter().filter(|x| !x.chains.is_empty()) {
        if !stations.contains(&x.of.as_str()) {
            stations.push(&x.of);
        }
    }
    for station in stations {
        let of: Vec<&VariantReport> = v.variants.iter().filter(|x| x.of == station).collect();
        doc.heading(2, station, None);
        let titles: Vec<Text> = of
            .iter()
            .filter_map(|x| Some(format!("{}: {}", x.name, x.title.as_ref()?).into()))
            .collect();
        if !titles.is_empty() {
            doc.push(Block::List(titles));
        }
        chains(&of, v, &mut doc);
        let spots: Vec<Text> = of
            .iter()
            .flat_map(|x| x.spots.iter().map(|s| (&x.name, s)))
            .map(|(name, s)| format!("{name}: {}", exposure::step(s)).into())
            .collect();
        if !spots.is_empty() {
            doc.heading(3, "Exposure of people", None);
            doc.push(Block::List(spots));
        }
    }
    note(&mut doc, v.assumed);
    caution(&mut doc);
    doc
}

/// The conclusion alone: each variant by its worst clause.
#[must_use]
pub fn answers(v: &Variants) -> Document {
    let mut doc = Document {
        title: "Variants".to_owned(),
        widest: None,
        blocks: Vec::new(),
    };
    conclusion(v, &mut doc);
    let all = v.variants.iter().filter(|x| x.refused.is_none());
    let list: Vec<Text> = all.map(answer).collect();
    if !list.is_empty() {
        doc.push(Block::List(list));
    }
    doc
}

/// `no-isolator: ? cannot tell, +0.49 dB; tso-14-0093 clause 4, talk-out on 2m`.
fn answer(x: &VariantReport) -> Text {
    let of = |c: &'_ VariantChain| {
        let limits = c
            .variant
            .as_ref()
            .map_or_else(Vec::new, |s| s.limits.clone());
        limits
            .into_iter()
            .map(|l| (l, format!("{} on {}", c.name, c.band)))
            .collect::<Vec<_>>()
    };
    let margin = |c: &ClauseState| c.margin_db.unwrap_or(f64::INFINITY);
    let worst = x.chains.iter().flat_map(of).min_by(|(a, _), (b, _)| {
        (a.verdict.0.cmp(&b.verdict.0)).then(margin(a).total_cmp(&margin(b)))
    });
    let name = Text::from(format!("{} of {}: ", x.name, x.of));
    match worst {
        Some((c, place)) => {
            let left = c
                .margin_db
                .map_or(String::new(), |m| format!(", {}", decibel_signed(m)));
            let cite = if c.cite.is_empty() {
                String::new()
            } else {
                format!("{}, ", c.cite)
            };
            name.and(c.verdict.0.run())
                .plus(&format!("{left}; {cite}{place}"))
        }
        None => name.plus("no limit is compared"),
    }
}

fn conclusion(v: &Variants, doc: &mut Document) {
    for x in &v.variants {
        if let Some(why) = &x.refused {
            let words = format!("{} is not computed: {why}.", x.name);
            doc.push(Block::Note(Level::Warning, words.into()));
        }
    }
    let over: Vec<&str> = v
        .variants
        .iter()
        .filter(|x| {
            let states = x.chains.iter().filter_map(|c| c.variant.as_ref());
            let mut all = states.flat_map(|s| &s.limits);
            all.any(|l| l.verdict.0 == RuleVerdict::NotMet) || x.spots.iter().any(|s| s.over)
        })
        .map(|x| x.name.as_str())
        .collect();
    let refused = v.variants.iter().filter(|x| x.refused.is_some()).count();
    let computed = counted(v.variants.len() - refused, "variant");
    let computed = match refused {
        0 => computed,
        n => format!("{computed} computed, {n} not"),
    };
    let words = match over.is_empty() {
        true if refused == v.variants.len() => format!("{computed}; no limit is compared."),
        true => format!("{computed}; none of them exceeds a limit beyond the uncertainty."),
        false => format!(
            "{computed}; over a limit beyond the uncertainty: {}.",
            over.join(", ")
        ),
    };
    doc.push(Block::Paragraph(words.into()));
}

/// One table for each chain and band, with the station first.
fn chains(of: &[&VariantReport], v: &Variants, doc: &mut Document) {
    let mut keys: Vec<(&str, &str)> = Vec::new();
    for c in of.iter().flat_map(|x| &x.chains) {
        let key = (c.name.as_str(), c.band.as_str());
        if !keys.contains(&key) {
            keys.push(key);
        }
    }
    for (name, band) in keys {
        let at = |x: &&VariantReport| {
            let mut all = x.chains.iter();
            all.position(|c| c.name == name && c.band == band)
        };
        let base = of.iter().find_map(|x| x.chains[at(x)?].base.as_ref());
        let mut list = Vec::new();
        rows("as it is", base, None, &mut list);
        for x in of {
            if let Some(i) = at(x) {
                rows(
                    &x.name,
                    x.chains[i].variant.as_ref(),
                    Some(&x.chains[i]),
                    &mut list,
                );
            }
        }
        doc.heading(3, format!("{name} on {band}"), None);
        let mut t = Table::new(ROWS);
        for r in &list {
            let line = of.iter().find(|x| x.name == r.name).map(|x| x.line);
            t.row(ROWS, r, line.map(|l| Place::new(&v.file, l)));
        }
        doc.table(t.without_empty());
    }
}

fn rows(name: &str, state: Option<&StateReport>, chain: Option<&VariantChain>, out: &mut Vec<Row>) {
    let limits = state.map_or(&[][..], |s| &s.limits);
    let first = limits.first();
    out.push(Row {
        name: name.to_owned(),
        state: state.cloned(),
        clause: first.cloned(),
        chain: chain.cloned(),
    });
    for clause in limits.iter().skip(1) {
        out.push(Row {
            name: String::new(),
            state: state.cloned(),
            clause: Some(clause.clone()),
            chain: None,
        });
    }
}
