//! Isolation, desense and intermodulation against published figures and direct enumeration.

use std::collections::BTreeSet;

use downlead_physics::noise::{needed_noise_rejection, noise_rise};
use downlead_physics::site::{
    Channel, Refused, VERTICAL_CAP_DB, count_products, horizontal_isolation, interference_for_rise,
    needed_carrier_rejection, noise_floor, orders_within, product_in_transmitter,
    products_in_channels, vertical_isolation,
};
use proptest::prelude::*;

#[track_caller]
fn near(got: f64, want: f64, tolerance: f64) {
    assert!((got - want).abs() <= tolerance, "{got} is not {want}");
}

fn line(mhz: f64) -> Channel {
    wide(mhz, 0.0)
}

fn wide(mhz: f64, width_hz: f64) -> Channel {
    Channel {
        hz: mhz * 1e6,
        width_hz,
    }
}

/// Terms by index of carrier, frequency, width.
type Hit = (Vec<(usize, i32)>, f64, f64);

/// The products that overlap one channel.
fn hits(carriers: &[Channel], channel: Channel, last: u32) -> Vec<Hit> {
    let mut found = Vec::new();
    products_in_channels(carriers, &[channel], 2..=last, |_, p| {
        let mut terms = p.terms.to_vec();
        terms.sort_unstable();
        found.push((terms, p.hz, p.width_hz));
    });
    found
}

#[test]
fn isolation_of_antennas_in_line() {
    // 28 dB at one wavelength, 12 dB for each doubling (published practice)
    let wavelength = 299.792_458 / 146.94;
    near(
        vertical_isolation(wavelength * (1.0 + 1e-12), 146.94e6).unwrap(),
        28.0,
        1e-9,
    );
    near(
        vertical_isolation(2.0 * wavelength, 146.94e6).unwrap(),
        40.041,
        1e-3,
    );
    // 10.35 m at 146.3137 MHz by hand: 5.0514 wavelengths, 28 + 40 · 0.70341
    near(vertical_isolation(10.35, 146.3137e6).unwrap(), 56.136, 2e-3);
    assert_eq!(vertical_isolation(500.0, 146.94e6), Ok(VERTICAL_CAP_DB));
    let Err(Refused::CloserThan(least)) = vertical_isolation(2.0, 146.94e6) else {
        panic!("2 m is less than a wavelength");
    };
    near(least, 2.0402, 1e-4);
}

#[test]
fn isolation_of_antennas_beside_each_other() {
    // 30 m at 146.94 MHz, two dipoles: 22 + 20 log(30/2.0402) − 4.3 (published practice); the
    // free-space loss of ITU-R P.525 is 41.033 dB
    let got = horizontal_isolation(30.0, 146.94e6, 4.3).unwrap();
    near(got, 41.048_81, 1e-4);
    near(got, 41.033_01, 0.02);
    // 10 wavelengths decide below 200 MHz, 15 m above
    assert!(matches!(
        horizontal_isolation(20.0, 146.94e6, 4.3),
        Err(Refused::CloserThan(m)) if (m - 20.402).abs() < 1e-3
    ));
    assert_eq!(
        horizontal_isolation(14.9, 438.0e6, 4.3),
        Err(Refused::CloserThan(15.0))
    );
    assert!(horizontal_isolation(15.0, 438.0e6, 4.3).is_ok());
    for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        assert_eq!(
            horizontal_isolation(bad, 1e8, 0.0),
            Err(Refused::NotPositive)
        );
        assert_eq!(vertical_isolation(30.0, bad), Err(Refused::NotPositive));
    }
}

#[test]
fn two_requirements_of_a_receiver() {
    // addition of noise powers: 0.5, 1 and 3 dB of rise
    for (rise, under) in [(0.5, -9.1357), (1.0, -5.8683), (3.0, -0.0206)] {
        near(interference_for_rise(rise), under, 1e-3);
        near(noise_rise(interference_for_rise(rise)), rise, 1e-9);
    }
    // 47 dBm, −140 dBc/Hz, noise figure 8 dB: 78.8 dB for 1 dB of desense; with 70 dB the noise
    // is −163 dBm/Hz over a floor of −165.975, which costs 4.75 dB
    let needed = needed_noise_rejection(47.0, -140.0, 1.0, 8.0, interference_for_rise(1.0));
    near(needed, 78.84, 0.01);
    near(
        noise_rise(47.0 - 140.0 - 70.0 - noise_floor(8.0)),
        4.747_836,
        1e-3,
    );
    // 47 dBm against a blocking level of −15 dBm
    near(needed_carrier_rejection(47.0, -15.0), 62.0, 1e-9);
    // 50 dBm − 40 coupling − 25 reverse − 10 conversion − 0.5 forward
    near(
        product_in_transmitter(50.0, 40.0, 25.0, 10.0, 0.5),
        -25.5,
        1e-9,
    );
}

#[test]
fn published_products_of_third_order() {
    // published examination question: two transmitters make a product on 146.70 MHz
    for (a, b) in [(146.61, 146.52), (146.52, 146.34)] {
        let found = hits(&[line(a), line(b)], line(146.70), 3);
        assert_eq!(found.len(), 1, "{found:?}");
        assert_eq!(found[0].0, [(0, 2), (1, -1)]);
    }
    // A + B − C by hand
    let three = [line(155.205), line(154.430), line(153.890)];
    let found = hits(&three, line(155.745), 3);
    assert_eq!(found.len(), 1, "{found:?}");
    assert_eq!(found[0].0, [(0, 1), (1, 1), (2, -1)]);
}

#[test]
fn width_decides_about_a_hit() {
    // the repeater and its neighbour one split above: 2A − B on the channel, 37.5 kHz wide; the
    // seventh order 27.4 kHz off with 87.5 kHz
    let carriers = [
        wide(146.9137, 12.5e3),
        wide(438.9137, 12.5e3),
        wide(147.5137, 12.5e3),
    ];
    let found = hits(&carriers, wide(146.3137, 12.5e3), 7);
    assert_eq!(found.len(), 2, "{found:?}");
    assert_eq!(found[0].0, [(0, 2), (2, -1)]);
    near(found[0].2, 37.5e3, 1e-6);
    assert_eq!(found[1].0, [(0, -4), (1, 1), (2, 2)]);
    near(found[1].1, 146.2863e6, 1e-3);
    near(found[1].2, 87.5e3, 1e-6);
    // as lines, only the first
    let lines = carriers.map(|c| Channel { width_hz: 0.0, ..c });
    assert_eq!(hits(&lines, line(146.3137), 7).len(), 1);
}

#[test]
fn counts_of_products() {
    // odd orders 3, 5, 7 of three carriers: 16 + 48 + 96
    assert_eq!(
        [3, 5, 7].map(|order| count_products(3, order)),
        [16, 48, 96]
    );
    // C(50,2)·4·2 + C(50,3)·6·4 + C(50,4)·4·8 + C(50,5)·16
    let fifth = 1225 * 8 + 19_600 * 24 + 230_300 * 32 + 2_118_760 * 16;
    assert_eq!(count_products(50, 5), fifth);
    assert_eq!(count_products(1, 3), 0);
    assert_eq!(orders_within(50, 7, 50_000_000), 2..=5);
    assert_eq!(orders_within(50, 7, 40_000_000), 2..=4);
    assert!(orders_within(usize::MAX, 7, 10).is_empty());
}

#[test]
fn third_order_of_n_carriers_in_one_band() {
    // of the kind that stays in the band: n(n − 1) of 2A − B, n(n − 1)(n − 2)/2 of A + B − C
    let carriers = [145.0, 145.1, 145.31, 145.77].map(line);
    let (mut two, mut three) = (0, 0);
    let everything = wide(500.0, 2e9);
    for (terms, ..) in hits(&carriers, everything, 3) {
        let sum: i32 = terms.iter().map(|t| t.1).sum();
        let order: i32 = terms.iter().map(|t| t.1.abs()).sum();
        match terms.len() {
            2 if (sum, order) == (1, 3) => two += 1,
            3 if (sum, order) == (1, 3) => three += 1,
            _ => {}
        }
    }
    assert_eq!((two, three), (12, 12));
}

/// Every vector of coefficients in turn, without any order or window: the products of these
/// orders at positive frequency that overlap the channel.
fn enumerated(carriers: &[Channel], channel: Channel, last: i32) -> BTreeSet<Vec<(usize, i32)>> {
    let base = 2 * last as usize + 1;
    (0..base.pow(carriers.len() as u32))
        .map(|mut code| {
            let digit = |(i, _)| {
                let n = (code % base) as i32 - last;
                code /= base;
                (i, n)
            };
            let terms: Vec<_> = carriers.iter().enumerate().map(digit).collect();
            terms.into_iter().filter(|t| t.1 != 0).collect::<Vec<_>>()
        })
        .filter(|terms| {
            let order: i32 = terms.iter().map(|t| t.1.abs()).sum();
            let at = |t: &(usize, i32)| f64::from(t.1) * carriers[t.0].hz;
            let width = |t: &(usize, i32)| f64::from(t.1.abs()) * carriers[t.0].width_hz;
            let hz: f64 = terms.iter().map(at).sum();
            let width: f64 = terms.iter().map(width).sum::<f64>() + channel.width_hz;
            let reach = 0.5 * width + 1e-3;
            terms.len() > 1 && order <= last && hz > 0.0 && (hz - channel.hz).abs() <= reach
        })
        .collect()
}

proptest! {
    #[test]
    fn the_search_finds_what_direct_enumeration_finds(
        steps in prop::collection::vec((1_u32..400, 0_u32..3), 1..5),
        at in 1_u32..1200,
        channel_width in 0_u32..3,
        last in 2_u32..6,
    ) {
        let make = |step: u32, width: u32| Channel {
            hz: 144e6 + 12_500.0 * f64::from(step),
            width_hz: 8_000.0 * f64::from(width),
        };
        let carriers: Vec<_> = steps.iter().map(|&(s, w)| make(s, w)).collect();
        let channel = make(at, channel_width);
        let found = hits(&carriers, channel, last);
        let set: BTreeSet<_> = found.iter().map(|f| f.0.clone()).collect();
        prop_assert_eq!(set.len(), found.len(), "each product once");
        prop_assert_eq!(set, enumerated(&carriers, channel, last as i32));
        for (terms, hz, width) in found {
            let sum: f64 = terms.iter().map(|t| f64::from(t.1) * carriers[t.0].hz).sum();
            prop_assert!((sum - hz).abs() < 1e-3);
            let sum: f64 = terms.iter().map(|t| f64::from(t.1.abs()) * carriers[t.0].width_hz).sum();
            prop_assert!((sum - width).abs() < 1e-3);
        }
    }
}
