//! How lengths and losses along a chain are stated: units, percents, bases, one for many bands.

use downlead_base::{Diagnostic, Edit, Fix, Loc, codes};
use downlead_quantity::{db, frequency, number};
use downlead_station::model::{Bound, Chain, Figure, Part, PartData, PartKind, When};

use crate::chain::Cx;
use crate::point::Point;

pub(super) fn lengths(
    chain: &Chain,
    parts: &[(&Part, Option<&str>, Loc)],
    out: &mut Vec<Diagnostic>,
) {
    let (mut feet, mut metres) = (None, None);
    for (p, ..) in parts {
        if let PartData::Line(l) = &p.data
            && l.length.is_some()
        {
            if l.imperial {
                feet = Some(l.length_loc);
            } else {
                metres = Some(l.length_loc);
            }
        }
    }
    if let (Some(f), Some(m)) = (feet, metres) {
        out.push(
            Diagnostic::new(
                &codes::MIXED_LENGTH_UNITS,
                f,
                format!(
                    "Chain `{}` has lengths in feet and in metres.",
                    chain.name.text
                ),
            )
            .at("in feet or inches")
            .also(m, "in metres"),
        );
    }
}

fn all_losses(p: &Part) -> Vec<&Figure> {
    match &p.data {
        PartData::Line(l) => l.loss.iter().chain(&l.added).collect(),
        PartData::Device(d) => d.ports.iter().flat_map(|q| q.loss.iter()).collect(),
        _ => Vec::new(),
    }
}

pub(super) fn percents(parts: &[(&Part, Option<&str>, Loc)], out: &mut Vec<Diagnostic>) {
    let hits: Vec<&Figure> = parts
        .iter()
        .filter_map(|(p, ..)| all_losses(p).into_iter().find(|f| f.percent))
        .collect();
    if hits.len() < 2 {
        return;
    }
    let sum: f64 = hits
        .iter()
        .map(|f| 1.0 - downlead_quantity::from_db(-f.value.value))
        .sum();
    let total: f64 = hits.iter().map(|f| f.value.value).sum();
    let mut d = Diagnostic::new(
        &codes::PERCENT_ADDED,
        hits[1].loc,
        format!(
            "Percentages do not add along a chain: these {} come to {} % lost, not {} %.",
            hits.len(),
            number((1.0 - downlead_quantity::from_db(-total)) * 100.0, 1),
            number(sum * 100.0, 1)
        ),
    )
    .at(db(hits[1].value.value))
    .help("Write the losses in dB; those add.");
    for f in &hits {
        d = d.also(f.loc, db(f.value.value));
    }
    // one of them alone leaves the others in percent
    d.fixes = vec![Fix {
        title: "write them in dB".to_owned(),
        edits: hits
            .iter()
            .map(|f| Edit {
                loc: f.loc,
                text: format!("{} dB", number(f.value.value, 2)),
            })
            .collect(),
        preferred: false,
    }];
    out.push(d);
}

pub(super) fn bases(cx: &Cx<'_>, parts: &[(&Part, Option<&str>, Loc)], out: &mut Vec<Diagnostic>) {
    let (mut typical, mut maximum) = (None, None);
    let mut note = |bound: &Option<(Bound, Option<Loc>)>, fallback: Loc| match bound {
        Some((Bound::Typical, l)) => typical = typical.or(Some(l.unwrap_or(fallback))),
        Some((Bound::Maximum, l)) => maximum = maximum.or(Some(l.unwrap_or(fallback))),
        None => {}
    };
    for (p, _, loc) in parts {
        for f in all_losses(p) {
            note(&f.meta.bound, f.loc);
        }
        if let PartData::Line(l) = &p.data
            && let Some(c) = l.cable.as_ref().and_then(|n| cx.env.cable(&n.text))
        {
            let bound = c.meta.bound.map(|b| (b.0, None));
            note(&bound, *loc);
        }
    }
    if let (Some(t), Some(m)) = (typical, maximum) {
        out.push(
            Diagnostic::new(
                &codes::MIXED_BASIS,
                m,
                format!("Chain `{}` adds a maximum to typical figures: the sum is neither.", cx.chain.name.text),
            )
            .at("a maximum")
            .also(t, "typical")
            .help("For a limit the lowest credible loss counts; for coverage the highest. Use figures of one kind."),
        );
    }
}

pub(super) fn many_bands(
    parts: &[(&Part, Option<&str>, Loc)],
    points: &[Point],
    out: &mut Vec<Diagnostic>,
) {
    let lo = points.iter().map(|p| p.hz).fold(f64::INFINITY, f64::min);
    let hi = points.iter().map(|p| p.hz).fold(0.0, f64::max);
    if hi <= 1.5 * lo {
        return;
    }
    for (p, ..) in parts {
        if let PartData::Device(d) = &p.data {
            device_many_bands(p, d, lo, hi, out);
        }
        let PartData::Line(l) = &p.data else { continue };
        if let Some(f) = l
            .loss
            .iter()
            .find(|f| f.when == When::Always && f.value.value > 0.0)
        {
            out.push(
                Diagnostic::new(
                    &codes::ONE_LOSS_MANY_BANDS,
                    f.loc,
                    format!(
                        "A cable cannot lose {} on both {} and {}: the loss grows at least with the root of frequency, here by {} times.",
                        db(f.value.value),
                        frequency(lo),
                        frequency(hi),
                        number(libm::sqrt(hi / lo), 1)
                    ),
                )
                .at("one loss for all bands")
                .help("Give the cable and its length, or a loss `on` each band."),
            );
        }
    }
}

/// A pad is flat by design, a pass band says where a figure holds, and an uncertainty can cover
/// both.
fn device_many_bands(
    p: &Part,
    d: &downlead_station::model::Device,
    lo: f64,
    hi: f64,
    out: &mut Vec<Diagnostic>,
) {
    if matches!(
        p.kind,
        PartKind::Pad | PartKind::Divider | PartKind::Coupler
    ) {
        return;
    }
    let figures = d
        .ports
        .iter()
        .filter(|q| q.passes.is_empty())
        .flat_map(|q| q.loss.iter());
    for f in figures.filter(|f| f.when == When::Always && f.value.u == 0.0 && f.value.value >= 0.05)
    {
        let tag = p.tag.as_ref().map_or(p.kind.word(), |t| &t.text);
        let mut diag = Diagnostic::new(
            &codes::ONE_LOSS_MANY_BANDS,
            f.loc,
            format!(
                "`{tag}` is to lose {} on both {} and {}; the loss of a {} mostly grows with frequency.",
                db(f.value.value),
                frequency(lo),
                frequency(hi),
                p.kind.word()
            ),
        )
        .at("one loss for all bands")
        .help("Give a loss `on` each band, a table of frequencies, or a ± that covers all of them.");
        diag.severity = downlead_base::Severity::Info;
        out.push(diag);
    }
}
