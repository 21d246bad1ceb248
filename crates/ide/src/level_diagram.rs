//! The level diagram of a chain as a picture (SVG): the power after each part, step by step. It
//! reads in black and white and loads nothing; each step names the line it stands for.

use downlead_quantity::number;
use downlead_report::document::{Block, Document};
use downlead_report::shape::chain::{BandReport, ChainReport, NodeReport, Report};

const STEP: f64 = 64.0;
const LEFT: f64 = 56.0;
const TOP: f64 = 22.0;
const HEIGHT: f64 = 110.0;
/// Room for the names below, which are turned.
const BELOW: f64 = 78.0;

/// Puts the level diagram of each chain and band below its heading.
pub(crate) fn illustrate(doc: &mut Document, report: &Report) {
    let chains = report.stations.iter().flat_map(|s| &s.chains);
    let mut wanted = chains.flat_map(|c| c.bands.iter().map(move |b| (c, b)));
    let mut next = wanted.next();
    let mut out = Vec::with_capacity(doc.blocks.len());
    for block in std::mem::take(&mut doc.blocks) {
        let heading = match &block {
            Block::Heading(2, _, Some(at)) => Some((at.file.clone(), at.line)),
            _ => None,
        };
        out.push(block);
        let Some((chain, band)) = next else { continue };
        if heading.is_some_and(|(file, line)| *file == *chain.file && line == chain.line) {
            out.extend(figure(chain, band));
            next = wanted.next();
        }
    }
    doc.blocks = out;
}

/// None where fewer than two levels are known. Branches are not drawn: their powers do not follow
/// one another.
fn figure(chain: &ChainReport, band: &BandReport) -> Option<Block> {
    let levels: Vec<(&NodeReport, f64)> = band
        .nodes
        .iter()
        .filter(|n| n.branch.is_none())
        .filter_map(|n| Some((n, n.power_dbm.filter(|l| l.is_finite())?)))
        .collect();
    if levels.len() < 2 {
        return None;
    }
    Some(Block::Figure {
        svg: svg(&levels),
        lines: Vec::new(),
        alt: format!(
            "Power after each part of {} on {}, dBm",
            chain.name, band.band
        ),
    })
}

fn svg(levels: &[(&NodeReport, f64)]) -> String {
    let all = levels.iter().map(|l| l.1);
    let (low, high) = all.fold((f64::MAX, f64::MIN), |(a, b), l| (a.min(l), b.max(l)));
    let span = (high - low).max(1.0);
    let y = |level: f64| TOP + (high - level) / span * HEIGHT;
    let width = LEFT + STEP * levels.len() as f64 + 12.0;
    let height = TOP + HEIGHT + BELOW;
    let mut out = format!(
        "<svg viewBox=\"0 0 {width} {height}\" style=\"max-width:{width}px;font:11px sans-serif\" fill=\"currentColor\">"
    );
    let mut before: Option<f64> = None;
    for (i, (n, level)) in levels.iter().enumerate() {
        let (x, here) = (LEFT + STEP * i as f64, y(*level));
        let down = before.map_or_else(String::new, |b| format!("M{x:.0} {:.1}V{here:.1}", y(b)));
        let path = format!("{down}M{x:.0} {here:.1}h{STEP}");
        let name = escaped(&match &n.port {
            Some(port) => format!("{}.{port}", n.part),
            None => n.part.clone(),
        });
        let (middle, foot) = (x + STEP / 2.0, TOP + HEIGHT + 16.0);
        let figure = number(*level, 1);
        out.push_str(&format!(
            "<g data-at=\"{}:{}\"><path d=\"{path}\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"2\"/>\
             <text x=\"{middle:.0}\" y=\"{:.1}\" text-anchor=\"middle\">{figure}</text>\
             <text transform=\"translate({middle:.0} {foot:.0}) rotate(35)\">{name}</text></g>",
            escaped(&n.file),
            n.chain_line,
            here - 5.0,
        ));
        before = Some(*level);
    }
    out.push_str(&format!(
        "<text x=\"4\" y=\"{:.0}\">dBm</text></svg>",
        TOP + HEIGHT / 2.0
    ));
    out
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('"', "&quot;")
}
