//! What the stations of one site do to each other: isolation between their antennas, noise and
//! carriers in a receiver, intermodulation.

use core::ops::RangeInclusive;

use crate::C0;
use crate::noise::{T0_K, thermal_noise};
use downlead_quantity::{from_db, to_db};

/// Half-width in dB within which the rules for the isolation of two antennas hold (common
/// practice: "a few dB"; rectangular).
pub const ISOLATION_HALF_WIDTH_DB: f64 = 6.0;

/// Isolation in dB that antennas in line do not exceed in practice: currents on lines and
/// structure carry more (common practice).
pub const VERTICAL_CAP_DB: f64 = 70.0;

/// Why a rule for the isolation of two antennas does not apply.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Refused {
    /// A distance or frequency that is not a positive number.
    NotPositive,
    /// The antennas are closer than the rule holds for, metres.
    CloserThan(f64),
}

/// Isolation in dB of two vertical dipoles exactly in line, `spacing_m` between their centres:
/// `28 + 40 log(S/λ)`, from one wavelength on, at most [`VERTICAL_CAP_DB`]. Gains do not enter.
///
/// Uncertainty: [`ISOLATION_HALF_WIDTH_DB`]. Source: published practice for repeater sites.
///
/// # Errors
/// [`Refused`] below one wavelength.
pub fn vertical_isolation(spacing_m: f64, hz: f64) -> Result<f64, Refused> {
    let wavelengths = within(spacing_m, hz, |wavelength| wavelength)?;
    Ok((28.0 + 2.0 * to_db(wavelengths * wavelengths)).min(VERTICAL_CAP_DB))
}

/// Isolation in dB of two antennas beside each other, `distance_m` apart, of gains in dBi:
/// `22 + 20 log(d/λ) − G1 − G2`, from 10 wavelengths or 15 m on, the larger of the two. This is the
/// loss in free space (ITU-R P.525) with 20 log(4π) = 21.98 rounded.
///
/// Uncertainty: [`ISOLATION_HALF_WIDTH_DB`]. Source: published practice for repeater sites.
///
/// # Errors
/// [`Refused`] at shorter distances.
pub fn horizontal_isolation(distance_m: f64, hz: f64, gains_dbi: f64) -> Result<f64, Refused> {
    let wavelengths = within(distance_m, hz, |wavelength| (10.0 * wavelength).max(15.0))?;
    Ok(22.0 + to_db(wavelengths * wavelengths) - gains_dbi)
}

/// The distance in wavelengths, if it is at least `least` of the wavelength.
fn within(metres: f64, hz: f64, least: impl Fn(f64) -> f64) -> Result<f64, Refused> {
    if !(metres > 0.0 && hz > 0.0 && metres.is_finite() && hz.is_finite()) {
        return Err(Refused::NotPositive);
    }
    let wavelength = C0 / hz;
    let least = least(wavelength);
    if metres < least {
        return Err(Refused::CloserThan(least));
    }
    Ok(metres / wavelength)
}

/// Noise floor in dBm/Hz of a receiver: `kT₀ + NF`.
#[must_use]
pub fn noise_floor(noise_figure_db: f64) -> f64 {
    thermal_noise(1.0, T0_K) + noise_figure_db
}

/// Interference over noise in dB that raises the noise by `rise_db`: `10 log(10^(D/10) − 1)`, the
/// inverse of [`crate::noise::noise_rise`].
#[must_use]
pub fn interference_for_rise(rise_db: f64) -> f64 {
    to_db(from_db(rise_db) - 1.0)
}

/// Rejection in dB between a carrier of `tx_dbm` and a receiver that a carrier of `blocking_dbm`
/// at that offset blocks.
#[must_use]
pub fn needed_carrier_rejection(tx_dbm: f64, blocking_dbm: f64) -> f64 {
    tx_dbm - blocking_dbm
}

/// Level in dBm, at its output connector, of a product that a transmitter makes of a carrier
/// from outside: the carrier of `carrier_dbm` arrives through `coupling_db` and through the
/// isolator against its direction (`reverse_db`), the stage converts it with a loss of
/// `conversion_db`, and the product leaves through the isolator (`forward_db`).
#[must_use]
pub fn product_in_transmitter(
    carrier_dbm: f64,
    coupling_db: f64,
    reverse_db: f64,
    conversion_db: f64,
    forward_db: f64,
) -> f64 {
    carrier_dbm - coupling_db - reverse_db - conversion_db - forward_db
}

/// A carrier or a receive channel: its frequency and the width it occupies, hertz.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Channel {
    /// Centre.
    pub hz: f64,
    /// Width; 0 counts as a line.
    pub width_hz: f64,
}

/// A product of several carriers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Product<'a> {
    /// Index of each carrier with its coefficient; the first coefficient may be negative.
    pub terms: &'a [(usize, i32)],
    /// Where it falls, hertz, positive.
    pub hz: f64,
    /// Its width, hertz: sum of |coefficient| · width of the carrier.
    pub width_hz: f64,
}

/// Frequencies that rounding alone parts count as equal, hertz.
const EQUAL_HZ: f64 = 1e-3;

/// How many products of two or more of `carriers` carriers have exactly this order, each counted
/// once (a product and its mirror image at negative frequency are one); those at frequency 0 are
/// included. Saturates.
#[must_use]
pub fn count_products(carriers: usize, order: u32) -> u64 {
    let n = carriers as u128;
    let mut total: u128 = 0;
    // C(n, k) choices of carriers, C(order − 1, k − 1) ways to divide the order among them, and
    // a sign for each carrier but the first
    let (mut choices, mut shares) = (n, 1_u128);
    for k in 2..=u128::from(order).min(n) {
        choices = choices.saturating_mul(n + 1 - k) / k;
        shares = shares * (u128::from(order) + 1 - k) / (k - 1);
        let signs = 1_u128.checked_shl(k as u32 - 1).unwrap_or(u128::MAX);
        total = total.saturating_add(choices.saturating_mul(shares).saturating_mul(signs));
    }
    u64::try_from(total).unwrap_or(u64::MAX)
}

/// The orders up to `highest` that stay within `limit` products in all.
#[must_use]
pub fn orders_within(carriers: usize, highest: u32, limit: u64) -> RangeInclusive<u32> {
    let mut left = limit;
    let mut last = 1;
    for order in 2..=highest {
        match left.checked_sub(count_products(carriers, order)) {
            Some(rest) => (left, last) = (rest, order),
            None => break,
        }
    }
    2..=last
}

/// Searches the products of two or more carriers in these orders, each once, for those that
/// overlap a receive channel: `hit` is called with the channel's index, orders in turn.
///
/// A product overlaps a channel if the distance of their centres is at most half the sum of
/// their widths. Source of width and forms: published practice, ITU-R SM.1134.
pub fn products_in_channels(
    carriers: &[Channel],
    channels: &[Channel],
    orders: RangeInclusive<u32>,
    mut hit: impl FnMut(usize, Product<'_>),
) {
    let mut search = Search::new(carriers, channels);
    for order in orders {
        search.prefixes(Prefix::default(), order, &mut hit);
    }
}

/// Some carriers with their coefficients: all of a product but the last.
#[derive(Clone, Copy, Default)]
struct Prefix {
    /// The first carrier that may follow.
    start: usize,
    hz: f64,
    width_hz: f64,
}

/// Carriers and channels by frequency. Every channel is here twice, at its frequency and at the
/// mirrored one: a product is enumerated with one of its two signs, whichever that is.
struct Search {
    carriers: Vec<(usize, Channel)>,
    channels: Vec<(usize, Channel)>,
    widest_carrier: f64,
    widest_channel: f64,
    terms: Vec<(usize, i32)>,
    mirrored: Vec<(usize, i32)>,
}

impl Search {
    fn new(carriers: &[Channel], channels: &[Channel]) -> Self {
        let usable = |c: &Channel| c.hz.is_finite() && c.hz > 0.0 && c.width_hz.is_finite();
        let sorted = |list: &[Channel]| {
            let mut list: Vec<_> = list.iter().copied().enumerate().collect();
            list.retain(|(_, c)| usable(c));
            list
        };
        let by_frequency = |list: &mut Vec<(usize, Channel)>| {
            list.sort_by(|(_, a), (_, b)| a.hz.total_cmp(&b.hz));
        };
        let widest = |list: &[(usize, Channel)]| {
            let widths = list.iter().map(|(_, c)| c.width_hz);
            widths.fold(0.0, f64::max)
        };
        let mut carriers = sorted(carriers);
        by_frequency(&mut carriers);
        let mut channels = sorted(channels);
        channels.extend(
            channels
                .clone()
                .into_iter()
                .map(|(i, c)| (i, Channel { hz: -c.hz, ..c })),
        );
        by_frequency(&mut channels);
        Self {
            widest_carrier: widest(&carriers),
            widest_channel: widest(&channels),
            carriers,
            channels,
            terms: Vec::new(),
            mirrored: Vec::new(),
        }
    }

    /// All products that begin with `prefix` and whose other coefficients add up to `left`.
    fn prefixes(&mut self, prefix: Prefix, left: u32, hit: &mut impl FnMut(usize, Product<'_>)) {
        let first = self.terms.is_empty();
        for sign in if first { &[1_i32][..] } else { &[1, -1] } {
            if !first {
                self.last(prefix, sign * left as i32, hit);
            }
            for magnitude in 1..left {
                let coefficient = sign * magnitude as i32;
                for k in prefix.start..self.carriers.len() {
                    let (index, carrier) = self.carriers[k];
                    self.terms.push((index, coefficient));
                    let next = Prefix {
                        start: k + 1,
                        hz: prefix.hz + f64::from(coefficient) * carrier.hz,
                        width_hz: prefix.width_hz + f64::from(magnitude) * carrier.width_hz,
                    };
                    self.prefixes(next, left - magnitude, hit);
                    self.terms.pop();
                }
            }
        }
    }

    /// Lets the last carrier run upwards in the frequency of the product, with a window of channels
    /// that moves along.
    fn last(&mut self, prefix: Prefix, coefficient: i32, hit: &mut impl FnMut(usize, Product<'_>)) {
        let tail = prefix.start..self.carriers.len();
        if tail.is_empty() {
            return;
        }
        let factor = f64::from(coefficient);
        let widest = prefix.width_hz + factor.abs() * self.widest_carrier + self.widest_channel;
        let reach = 0.5 * widest + EQUAL_HZ;
        let at = |k: usize| prefix.hz + factor * self.carriers[k].1.hz;
        let (a, b) = (at(tail.start), at(tail.end - 1));
        let (low, high) = (a.min(b) - reach, a.max(b) + reach);
        let mut window = self.channels.partition_point(|(_, c)| c.hz < low);
        if self.channels.get(window).is_none_or(|(_, c)| c.hz > high) {
            return;
        }
        for i in 0..tail.len() {
            let k = if coefficient > 0 {
                tail.start + i
            } else {
                tail.end - 1 - i
            };
            let (index, carrier) = self.carriers[k];
            let hz = prefix.hz + factor * carrier.hz;
            let passed = |(_, c): &(usize, Channel)| c.hz < hz - reach;
            while self.channels.get(window).is_some_and(passed) {
                window += 1;
            }
            let width_hz = prefix.width_hz + factor.abs() * carrier.width_hz;
            for (channel, c) in self.channels[window..]
                .iter()
                .take_while(|(_, c)| c.hz <= hz + reach)
            {
                let overlaps = (hz - c.hz).abs() <= 0.5 * (width_hz + c.width_hz) + EQUAL_HZ;
                // a wide channel near 0 reaches over it: its mirror image is another channel
                if overlaps && hz * c.hz > 0.0 {
                    let sign = if c.hz < 0.0 { -1 } else { 1 };
                    self.mirrored.clear();
                    let mirror = |&(i, n): &(usize, i32)| (i, sign * n);
                    self.mirrored.extend(self.terms.iter().map(mirror));
                    self.mirrored.push((index, sign * coefficient));
                    let product = Product {
                        terms: &self.mirrored,
                        hz: hz.abs(),
                        width_hz,
                    };
                    hit(*channel, product);
                }
            }
        }
    }
}
