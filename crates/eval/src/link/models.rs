//! The models of the loss between two stations, each with the conditions under which it holds.

use downlead_physics::path::{self, HataForm, Outside, Terrain};
use downlead_station::model::Model;

/// Why a model is not computed.
#[derive(Clone, Debug, PartialEq)]
pub enum Refused {
    /// Figures outside of the range in which it holds.
    Outside(Vec<Outside>),
    /// It needs a profile.
    NeedsProfile,
    /// It needs the heights of both antennas above ground.
    NeedsHeights,
    /// Flat ground: too near, m at which it begins.
    TooNear(f64),
    /// Flat ground: beyond the horizon, m.
    BeyondHorizon(f64),
}

fn kilometres(m: f64) -> String {
    format!("{} km", downlead_quantity::number(m / 1e3, 3))
}

impl Refused {
    /// In words.
    #[must_use]
    pub fn words(&self) -> String {
        match self {
            Refused::Outside(all) => {
                let all: Vec<String> = all.iter().map(super::outside_words).collect();
                all.join("; ")
            }
            Refused::NeedsProfile => "it needs a `profile`".to_owned(),
            Refused::NeedsHeights => "it needs the height of both antennas above ground".to_owned(),
            Refused::TooNear(m) => format!(
                "it holds beyond {} only, where both rays arrive at a small angle",
                kilometres(*m)
            ),
            Refused::BeyondHorizon(m) => format!(
                "the stations are beyond the radio horizon of {}",
                kilometres(*m)
            ),
        }
    }
}

/// What the models go by.
pub(super) struct Path<'a> {
    pub(super) hz: f64,
    /// Along the ground, m.
    pub(super) along_m: f64,
    pub(super) slant_m: f64,
    pub(super) horizon_m: Option<f64>,
    /// Heights above ground, m.
    pub(super) agl_m: Option<(f64, f64)>,
    /// Height of the higher antenna above the land at the other end, m, where both grounds are known.
    pub(super) base_m: Option<f64>,
    pub(super) terrain: Option<Terrain<'a>>,
}

impl Path<'_> {
    pub(super) fn free_space(&self) -> f64 {
        path::free_space(self.hz, self.slant_m)
    }

    /// Loss between isotropic antennas, dB.
    pub(super) fn loss(&self, model: Model) -> Result<f64, Refused> {
        let free = self.free_space();
        let with = |extra: Option<f64>| extra.map(|e| free + e).ok_or(Refused::NeedsProfile);
        let terrain = self.terrain.as_ref();
        match model {
            Model::FreeSpace => Ok(free),
            Model::Bullington => with(terrain.and_then(|t| Some(t.bullington(self.hz)?.loss_db))),
            Model::OneEdge => with(terrain.and_then(|t| Some(t.cascade(self.hz)?.main.loss_db))),
            Model::Cascade => with(terrain.and_then(|t| Some(t.cascade(self.hz)?.loss_db))),
            Model::TwoRay => self.two_ray(),
            Model::HataOpen => self.hata(HataForm::Open),
            Model::HataSuburban => self.hata(HataForm::Suburban),
            Model::HataUrban => self.hata(HataForm::Urban),
        }
    }

    fn two_ray(&self) -> Result<f64, Refused> {
        let (h1, h2) = self.agl_m.ok_or(Refused::NeedsHeights)?;
        let begins = path::two_ray_begins_m(self.hz, h1, h2);
        if self.along_m <= begins {
            return Err(Refused::TooNear(begins));
        }
        match self.horizon_m {
            Some(h) if self.along_m > h => Err(Refused::BeyondHorizon(h)),
            _ => Ok(path::two_ray(self.hz, self.along_m, h1, h2)),
        }
    }

    fn hata(&self, form: HataForm) -> Result<f64, Refused> {
        let (h1, h2) = self.agl_m.ok_or(Refused::NeedsHeights)?;
        let base = self.base_m.unwrap_or(h1.max(h2));
        path::hata(form, self.hz, base, h1.min(h2), self.along_m).map_err(Refused::Outside)
    }
}
