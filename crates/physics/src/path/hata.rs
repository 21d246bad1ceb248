//! Loss over built-up and open land by the formulas fitted to Okumura's measurements.

/// The land around the lower antenna.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum HataForm {
    /// Open land.
    Open,
    /// Suburbs.
    Suburban,
    /// A small or medium-sized city.
    Urban,
}

/// What has a range in which the formulas hold.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum HataLimit {
    /// Frequency, Hz.
    Frequency,
    /// Height of the base antenna above the land around, m.
    Base,
    /// Height of the mobile antenna above the ground, m.
    Mobile,
    /// Distance, m.
    Distance,
}

/// The ranges (Hata, IEEE Trans. VT-29, 1980; ITU-R P.529).
pub const HATA_LIMITS: [(HataLimit, f64, f64); 4] = [
    (HataLimit::Frequency, 150e6, 1500e6),
    (HataLimit::Base, 30.0, 200.0),
    (HataLimit::Mobile, 1.0, 10.0),
    (HataLimit::Distance, 1e3, 20e3),
];

/// A figure outside of its range.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outside {
    /// Which.
    pub what: HataLimit,
    /// Its value, in the unit of [`HataLimit`].
    pub value: f64,
    /// Smallest and largest value of the range.
    pub range: (f64, f64),
}

/// Loss in dB at `f_hz` over `distance_m`, from a base antenna `base_m` above the land around to a mobile
/// one `mobile_m` above its ground.
///
/// Source: Hata, IEEE Trans. VT-29, 1980; ITU-R P.529.
///
/// # Errors
/// Every figure that is outside of the range the formulas were fitted in.
pub fn hata(
    form: HataForm,
    f_hz: f64,
    base_m: f64,
    mobile_m: f64,
    distance_m: f64,
) -> Result<f64, Vec<Outside>> {
    let outside: Vec<Outside> = HATA_LIMITS
        .into_iter()
        .filter_map(|(what, low, high)| {
            let value = match what {
                HataLimit::Frequency => f_hz,
                HataLimit::Base => base_m,
                HataLimit::Mobile => mobile_m,
                HataLimit::Distance => distance_m,
            };
            let range = (low, high);
            (!(low..=high).contains(&value)).then_some(Outside { what, value, range })
        })
        .collect();
    if !outside.is_empty() {
        return Err(outside);
    }
    let f = libm::log10(f_hz / 1e6);
    let base = libm::log10(base_m);
    let mobile = (1.1 * f - 0.7) * mobile_m - (1.56 * f - 0.8);
    let urban = 69.55 + 26.16 * f - 13.82 * base - mobile
        + (44.9 - 6.55 * base) * libm::log10(distance_m / 1e3);
    Ok(match form {
        HataForm::Urban => urban,
        HataForm::Suburban => {
            let x = f - libm::log10(28.0);
            urban - 2.0 * x * x - 5.4
        }
        HataForm::Open => urban - 4.78 * f * f + 18.33 * f - 40.94,
    })
}
