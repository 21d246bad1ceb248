//! From a station to its sheet.

use downlead_base::Severity;
use downlead_eval::licence::RuleVerdict;
use downlead_eval::{Evaluated, Places, Scope, Snapshot};
use downlead_station::model::{Meaning, PartData, PartKind, Station};

use super::{AID, From, origin};
use crate::build::card::{Meters, cards};
use crate::build::chain::stations;
use crate::page::card::SAFETY;
use crate::shape::chain::{
    BandReport, ChainReport, LimitReport, NodeReport, Report, SCHEMA as REPORT, StationReport,
    UnjudgedReport,
};
use crate::shape::paper::site_sheet::{
    AntennaReport, PaperReport, SCHEMA, SheetChain, SheetFile, SheetLimit, SheetPoint, SiteSheet,
};
use crate::shape::rules::RuleReport;
use crate::shape::word::{LimitVerdict, Word};

/// The sheets of all stations of the named files.
#[must_use]
pub fn sheets(s: &Snapshot, from: From<'_>) -> SheetFile {
    let places = Places::new(s);
    let found = s.diagnostics();
    let mut all = Vec::new();
    for scope in s.scopes() {
        let path = s.files().get(scope.file()).map_or("", |f| f.path.as_str());
        let of = |least: Severity| {
            let here = found.iter().filter(|d| d.severity == least);
            here.filter(|d| places.at(d.primary.loc).0 == path).count()
        };
        let (errors, warnings) = (of(Severity::Error), of(Severity::Warning));
        for report in stations(&places, scope, &|_, _| true) {
            let st = super::station_of(scope, &report.name);
            let mut one = sheet(scope, st, report);
            one.origin = origin(s, scope, st, from);
            (one.errors, one.warnings) = (errors, warnings);
            (one.file, one.line) = match item_of(scope, st) {
                Some(item) => {
                    let statement = item.0.statement().map(|x| x.head_span());
                    let at = downlead_base::Loc::new(item.0.id, statement.unwrap_or_default());
                    let (file, _, line) = places.at(at);
                    (file, line)
                }
                None => (path.to_owned(), 1),
            };
            all.push(one);
        }
    }
    SheetFile {
        schema: SCHEMA,
        caution: AID,
        safety: SAFETY.to_vec(),
        sheets: all,
    }
}

fn item_of<'s>(scope: &'s Scope, st: Option<&Station>) -> Option<&'s Evaluated> {
    let st = st?;
    scope.items().iter().find(|i| match &i.1.meaning {
        Meaning::Station(x) => std::ptr::eq(&**x, st),
        _ => false,
    })
}

fn sheet(scope: &Scope, st: Option<&Station>, report: StationReport) -> SiteSheet {
    let text = |t: &Option<Box<str>>| t.as_ref().map(ToString::to_string);
    let position = st.and_then(|s| s.position);
    let rules = report.rules.clone();
    let pairs = || {
        let chains = report.chains.iter();
        chains.flat_map(|c| c.bands.iter().map(move |b| (c, b)))
    };
    let mut assumptions: Vec<String> = pairs().flat_map(|(_, b)| b.assumptions.clone()).collect();
    let mut seen = std::collections::BTreeSet::new();
    assumptions.retain(|a| seen.insert(a.clone()));
    let mut sheet = SiteSheet {
        station: report.name.clone(),
        title: report.title.clone(),
        file: String::new(),
        line: 0,
        origin: crate::shape::paper::OriginReport {
            variant: None,
            version: "",
            files: Vec::new(),
            newest_date: None,
        },
        latitude_deg: position.map(|p| p.0),
        longitude_deg: position.map(|p| p.1),
        datum: st.and_then(|s| text(&s.datum)),
        ground_m: st.and_then(|s| s.ground_amsl),
        antennas: st.map_or_else(Vec::new, antennas),
        papers: st.map_or_else(Vec::new, |s| papers(scope, s)),
        chains: pairs().map(|(c, b)| chain(c, b)).collect(),
        limits: pairs().flat_map(|(c, b)| limits(c, b)).collect(),
        fixed: rules.as_ref().map_or_else(Vec::new, |r| r.fixed.clone()),
        duties: rules.as_ref().map_or_else(Vec::new, |r| r.duties.clone()),
        questions: rules
            .as_ref()
            .map_or_else(Vec::new, |r| r.questions.clone()),
        conditions: rules.map_or_else(Vec::new, |r| r.conditions),
        keep_clear: report
            .exposure
            .as_ref()
            .map_or_else(Vec::new, |e| e.keep_clear.clone()),
        neighbours: st.map_or_else(Vec::new, |s| {
            let all = scope.env().on_site_of(s);
            all.iter().map(|n| n.name.text.to_string()).collect()
        }),
        alone: st
            .and_then(|s| s.site.alone.as_ref())
            .map(|a| text(&a.by).unwrap_or_default()),
        points: Vec::new(),
        missing: Vec::new(),
        assumptions,
        errors: 0,
        warnings: 0,
    };
    sheet.missing = missing(st, &sheet);
    sheet.points = points(scope, report);
    sheet
}

fn antennas(st: &Station) -> Vec<AntennaReport> {
    let parts = st.parts.iter().filter(|p| p.kind == PartKind::Antenna);
    parts
        .map(|p| {
            let a = match &p.data {
                PartData::Antenna(a) => Some(a),
                _ => None,
            };
            let of = |get: fn(
                &downlead_station::model::Antenna,
            ) -> Option<downlead_quantity::Measure>| {
                a.and_then(|a| get(a)).map(|m| m.value)
            };
            AntennaReport {
                antenna: p.tag.as_ref().map_or("antenna", |t| &t.text).to_owned(),
                height_m: of(|a| a.height_agl),
                haat_m: of(|a| a.height_haat),
                size_m: of(|a| a.size),
            }
        })
        .collect()
}

fn papers(scope: &Scope, st: &Station) -> Vec<PaperReport> {
    let text = |t: &Option<Box<str>>| t.as_ref().map(ToString::to_string);
    let sets = st.under.iter();
    sets.filter_map(|u| scope.env().rule_set(&u.name.text))
        .map(|r| PaperReport {
            name: r.name.text.to_string(),
            licence: r.licence,
            title: text(&r.title),
            authority: text(&r.authority),
            holder: text(&r.holder),
            edition: text(&r.edition),
            dated: text(&r.dated),
            until: text(&r.until),
        })
        .collect()
}

fn chain(c: &ChainReport, b: &BandReport) -> SheetChain {
    let sends = |n: &&NodeReport| n.kind.sends();
    SheetChain {
        chain: c.name.clone(),
        direction: c.direction,
        band: b.band.clone(),
        point: b.point,
        frequency_hz: b.frequency_hz,
        transmitter_w: b
            .nodes
            .iter()
            .find(sends)
            .and_then(|n| n.forward_w.or(n.power_w)),
        loss_db: b.total_loss_db,
        antenna_w: b.antenna_w,
        erp_w: b.erp_w,
        eirp_w: b.eirp_w,
        uncertainty_db: b.uncertainty_db,
        sensitivity_dbm: b.sensitivity_dbm,
        complete: b.complete,
        file: c.file.clone(),
        line: c.line,
    }
}

fn limits(c: &ChainReport, b: &BandReport) -> Vec<SheetLimit> {
    let base = || SheetLimit {
        chain: c.name.clone(),
        band: b.band.clone(),
        frequency_hz: b.frequency_hz,
        cite: None,
        quantity: None,
        limit_w: None,
        value_w: None,
        margin_db: None,
        uncertainty_db: None,
        verdict: Word(RuleVerdict::CannotJudge),
        missing: Vec::new(),
    };
    let of_chain = |l: &LimitReport| SheetLimit {
        cite: l.source.clone(),
        quantity: Some(l.quantity.word().to_owned()),
        limit_w: Some(l.limit_w),
        value_w: Some(l.value_w),
        margin_db: Some(l.margin_db),
        uncertainty_db: Some(l.uncertainty_db),
        verdict: Word(match l.verdict {
            LimitVerdict::Met => RuleVerdict::Met,
            LimitVerdict::NotMet => RuleVerdict::NotMet,
            LimitVerdict::CannotTell => RuleVerdict::CannotTell,
        }),
        ..base()
    };
    let unjudged = |l: &UnjudgedReport| SheetLimit {
        quantity: Some(l.quantity.word().to_owned()),
        limit_w: Some(l.limit_w),
        missing: vec!["the power that it limits is not known".to_owned()],
        ..base()
    };
    let clause = |r: &RuleReport| SheetLimit {
        cite: Some(crate::words::rules::citation(r)),
        quantity: r.quantity.as_ref().map(|q| match &r.kind {
            Some(k) => format!("{q} {k}"),
            None => q.clone(),
        }),
        limit_w: r.limit_w,
        value_w: r.value_w,
        margin_db: r.margin_db,
        uncertainty_db: r.uncertainty_db,
        verdict: r.verdict,
        missing: Some(crate::words::rules::remarks(r))
            .filter(|m| !m.is_empty())
            .into_iter()
            .collect(),
        ..base()
    };
    let mut all: Vec<SheetLimit> = b.limits.iter().map(of_chain).collect();
    all.extend(b.limits_not_judged.iter().map(unjudged));
    all.extend(b.rules.iter().map(clause));
    all
}

/// What a sheet should say and the text does not. Nothing stands in its place.
fn missing(st: Option<&Station>, sheet: &SiteSheet) -> Vec<String> {
    let Some(st) = st else {
        return vec![
            "A chain outside a station has no position, no ground and no height.".to_owned(),
        ];
    };
    let mut out = Vec::new();
    if st.position.is_none() {
        out.push("The station states no `position`.".to_owned());
    } else if st.datum.is_none() {
        out.push("The position states no datum.".to_owned());
    }
    if st.ground_amsl.is_none() {
        out.push("The station states no `ground`.".to_owned());
    }
    for a in &sheet.antennas {
        if a.height_m.is_none() {
            out.push(format!("{} states no `height … agl`.", a.antenna));
        }
    }
    if sheet.limits.is_empty() {
        out.push("No limit and no clause is compared: nothing says what is allowed.".to_owned());
    }
    if sheet.keep_clear.is_empty() {
        out.push("No distance to keep is computed: the station is under no rules with limits of exposure.".to_owned());
    }
    for c in sheet.chains.iter().filter(|c| !c.complete) {
        out.push(format!(
            "Chain {} on {} could not be computed whole.",
            c.chain, c.band
        ));
    }
    out
}

/// The test points after devices and long lines and before the antennas: between them `card` has
/// the rest.
fn points(scope: &Scope, report: StationReport) -> Vec<SheetPoint> {
    let meters = Meters {
        envs: vec![scope.env()],
        with: None,
    };
    let mut wanted: Vec<(String, String, String)> = Vec::new();
    for c in &report.chains {
        for b in &c.bands {
            let kept = b
                .nodes
                .iter()
                .filter(|n| !n.kind.is(PartKind::Jumper) && !n.kind.is(PartKind::Tail));
            wanted.extend(kept.map(|n| {
                (
                    c.name.clone(),
                    b.band.clone(),
                    format!("after {}", n.name()),
                )
            }));
        }
    }
    let all = Report {
        schema: REPORT,
        stations: vec![report],
        links: Vec::new(),
        diagnostics: Vec::new(),
    };
    let mut out = Vec::new();
    for card in cards(&all, &meters) {
        for at in card.points {
            let key = (card.chain.clone(), card.band.clone(), at.at.clone());
            if at.at.starts_with("before ") || wanted.contains(&key) {
                out.push(SheetPoint {
                    chain: card.chain.clone(),
                    band: card.band.clone(),
                    instrument: card.instrument.clone(),
                    at,
                });
            }
        }
    }
    out
}
