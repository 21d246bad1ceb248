//! The shape of links.

use downlead_eval::link::{HopResult, Judged, LEFT_OUT, LinkResult, Modelled, TerrainResult};
use downlead_eval::{Places, Snapshot};
use downlead_quantity::w_to_dbm;
use downlead_station::model::{Link, Meaning};

use crate::shape::link::{
    CoverageReport, HopNotJudged, HopReport, JudgedReport, LinkReport, Links, ModelReport, SCHEMA,
    TerrainReport,
};
use crate::shape::word::Word;

/// The links of all named files.
#[must_use]
pub fn links(s: &Snapshot) -> Links {
    let places = Places::new(s);
    let items = s.scopes().iter().flat_map(downlead_eval::Scope::items);
    let links = items.filter_map(|(_, low, r)| {
        let (Meaning::Link(l), Some(found)) = (&low.meaning, &r.link) else {
            return None;
        };
        Some(link(&places, l, found))
    });
    Links {
        schema: SCHEMA,
        links: links.collect(),
    }
}

/// One link.
#[must_use]
pub fn link(places: &Places<'_>, l: &Link, found: &LinkResult) -> LinkReport {
    let (file, _, line) = places.at(l.loc);
    LinkReport {
        name: l.name.text.to_string(),
        title: l.title.as_ref().map(ToString::to_string),
        file,
        line,
        k_factor: found.k,
        profile_m: found.profile.iter().map(|p| [p.0, p.1]).collect(),
        hops: found.hops.iter().map(|h| hop(places, h)).collect(),
        not_judged: found
            .not_judged
            .iter()
            .map(|h| HopNotJudged {
                hop: h.hop.to_string(),
                why: h.why.words(),
                line: places.at(h.loc).2,
            })
            .collect(),
        assumed: found.assumed.iter().map(|a| a.words().to_owned()).collect(),
        left_out: LEFT_OUT.iter().map(|&w| w.to_owned()).collect(),
    }
}

fn hop(places: &Places<'_>, h: &HopResult) -> HopReport {
    HopReport {
        from: h.from.to_string(),
        to: h.to.to_string(),
        line: places.at(h.loc).2,
        frequency_hz: h.hz,
        eirp_dbm: h.eirp.map(|e| w_to_dbm(e.0)),
        eirp_uncertainty_db: h.eirp.map(|e| e.1),
        distance_m: h.distance.map(|d| d.0),
        slant_m: h.slant_m,
        horizon_m: h.horizon_m,
        free_space_db: h.free_space_db,
        model: h.model.word().to_owned(),
        path_loss_db: h.loss_db(),
        models: h.models.iter().map(model).collect(),
        terrain: h.terrain.as_ref().map(terrain),
        patterns_db: [h.patterns.0, h.patterns.1].map(|t| t.map(|t| t.down_db)),
        gain_dbi: h.gain_dbi,
        receive_loss_db: h.receive_loss_db,
        level_dbm: h.level_dbm,
        external_noise_db: h.noise.and_then(|n| n.external_db),
        degradation_db: h.noise.map(|n| n.degradation_db),
        judged: h.judged.as_ref().map(judged),
        coverage: h
            .coverage
            .iter()
            .map(|&(distance_m, margin_db)| CoverageReport {
                distance_m,
                margin_db,
            })
            .collect(),
        verdict: Word(h.verdict),
        missing: h.missing.iter().map(|m| m.words().to_owned()).collect(),
    }
}

fn model(m: &Modelled) -> ModelReport {
    ModelReport {
        model: m.model.word().to_owned(),
        loss_db: m.loss_db.as_ref().ok().copied(),
        refused: m
            .loss_db
            .as_ref()
            .err()
            .map(downlead_eval::link::Refused::words),
    }
}

fn terrain(t: &TerrainResult) -> TerrainReport {
    TerrainReport {
        loss_db: t.loss_db,
        in_sight: t.in_sight,
        edge_m: t.edge.at_m,
        above_m: t.edge.above_m,
        nu: t.edge.nu,
        ends_m: [t.ends_m.0, t.ends_m.1],
        clearances_m: t
            .clearances
            .iter()
            .map(|c| [c.at_m, c.clear_m, c.fresnel_m])
            .collect(),
        other_k: t.other_k.iter().map(|k| [k.0, k.1]).collect(),
        turned: t.turned,
    }
}

fn judged(j: &Judged) -> JudgedReport {
    JudgedReport {
        criterion: j.criterion.to_string(),
        receiver_dbm: j.receiver_dbm,
        needed_dbm: j.needed_dbm,
        margin_db: j.margin_db,
        share: j.share,
        spread_db: j.spread_db,
        places_db: j.places_db,
        left_db: j.left_db,
        uncertainty_db: j.u_db,
    }
}
