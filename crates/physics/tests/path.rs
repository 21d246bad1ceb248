//! Paths between stations against published and independently computed figures, each with its source.

use downlead_physics::path::{
    self, HataForm, HataLimit, Surroundings, Terrain, external_noise, hata, knife_edge,
};
use downlead_physics::{C0, noise, position};

#[track_caller]
fn close(got: f64, want: f64, within: f64) {
    assert!((got - want).abs() <= within, "{got} is not {want}");
}

#[test]
fn free_space_and_geometry() {
    // ITU-R P.525 with the exact constant, 20 log10(4π·10⁹/c)
    close(path::free_space(1e6, 1000.0), 32.447_783_2, 1e-7);
    close(path::free_space(146e6, 10e3), 95.734_84, 1e-5);
    // ITU-R Study Group 3, validation set of P.1812-6, b2iseac_1, eq. 8: it rounds the constant to 92.4 at 1 GHz
    let slant = path::slant_m(235.1e3, 696.1);
    let rounded = 92.4 - path::free_space(1e9, 1000.0);
    close(
        path::free_space(95.3e6, slant) + rounded,
        119.406_948_7,
        1e-6,
    );
    // geometry: 4.1218 km per √m for k = 4/3, from both ends
    close(path::radio_horizon_m(1.0, 0.0, 4.0 / 3.0), 4121.812, 0.01);
    close(
        path::radio_horizon_m(25.0, 4.0, 4.0 / 3.0),
        7.0 * 4121.812,
        0.1,
    );
    close(
        path::radio_horizon_m(25.0, -3.0, 4.0 / 3.0),
        5.0 * 4121.812,
        0.1,
    );
    // ITU-R P.1812-6, eq. 6, and the effective radius of the validation set
    close(path::k_factor(45.0), 1.401_785_7, 1e-6);
    close(
        path::k_factor(45.0) * path::EARTH_M / 1e3,
        8_930.776_786,
        1e-5,
    );
}

/// Loss of a knife edge by the Fresnel integrals, which are summed here by Simpson's rule (theory: ITU-R P.526
/// eq. 28; 6.0206 dB at ν = 0).
fn exact_edge(nu: f64) -> f64 {
    let simpson = |f: fn(f64) -> f64| {
        let n = 20_000;
        let h = nu / f64::from(n);
        let at = |i: i32| f(core::f64::consts::FRAC_PI_2 * (h * f64::from(i)).powi(2));
        let inner: f64 = (1..n)
            .map(|i| at(i) * if i % 2 == 1 { 4.0 } else { 2.0 })
            .sum();
        h / 3.0 * (at(0) + inner + at(n))
    };
    let (c, s) = (simpson(f64::cos), simpson(f64::sin));
    -10.0 * (((0.5 - c).powi(2) + (0.5 - s).powi(2)) / 2.0).log10()
}

#[test]
fn one_edge() {
    // ITU-R P.526 eq. 31 / P.1812-6 eq. 12, computed in Python
    close(knife_edge(-0.78), 0.0, 1e-4);
    close(knife_edge(-0.5), 1.959_25, 1e-4);
    close(knife_edge(2.4), 20.539_27, 1e-4);
    close(exact_edge(0.0), 6.020_599_9, 1e-5);
    // the approximation holds to about 0.1 dB above −0.7 (ITU-R P.526)
    for tenths in -7..30 {
        let nu = f64::from(tenths) / 10.0;
        close(knife_edge(nu), exact_edge(nu), 0.11);
    }
    // ITU-R P.526 eq. 26: 50 m above the line, 10 km and 20 km from the ends, 150 MHz
    let nu = path::edge_nu(150e6, 10e3, 20e3, 50.0);
    close(nu, 0.612_584_37, 1e-6);
    close(knife_edge(nu), 11.177_27, 1e-4);
    // P.530 practice: 60 % of the first Fresnel zone midway of 20 km at 146 MHz
    close(
        0.6 * path::fresnel_radius_m(146e6, 10e3, 10e3),
        60.795_32,
        1e-4,
    );
}

/// Four points, heights of the antennas 130 m and 100 m above sea level, effective radius 8500 km, 145 MHz.
const SMALL: Terrain = Terrain {
    points: &[(0.0, 100.0), (5e3, 180.0), (12e3, 150.0), (20e3, 90.0)],
    ends_m: (130.0, 100.0),
    k: 8500e3 / path::EARTH_M,
};

#[test]
fn a_small_profile() {
    // ITU-R P.1812-6 eq. 13 to 21, computed in Python; that code gives the 30.0317 dB of the validation set
    let b = SMALL.bullington(145e6).unwrap();
    close(b.edge.nu, 1.143_241, 1e-5);
    close(b.edge.loss_db, 14.818_24, 1e-4);
    close(b.loss_db, 24.3383, 1e-4);
    assert!(!b.in_sight);
    // Deygout's plain sum; ITU-R P.526 with T and C (from memory), both computed in Python
    let c = SMALL.cascade(145e6).unwrap();
    close(c.sum_db, 21.406_08, 1e-4);
    close(c.loss_db, 30.396_79, 1e-4);
    assert_eq!(c.main.point, Some(1));
}

#[test]
fn a_profile_in_sight_or_without_points() {
    // high above flat ground nothing stands in the way: no loss
    let high = Terrain {
        ends_m: (900.0, 900.0),
        ..SMALL
    };
    let b = high.bullington(145e6).unwrap();
    assert!(b.in_sight);
    close(b.loss_db, 0.0, 1e-12);
    assert!(b.edge.nu < -0.78 && b.edge.above_m < -600.0);
    // one antenna and the edge seen grazing: 6.9 + 20 log10(√1.01 − 0.1) = 6.03 dB, and the correction
    let grazing = Terrain {
        points: &[(0.0, 0.0), (10e3, 100.0), (20e3, 0.0)],
        ends_m: (100.0, 100.0),
        k: f64::INFINITY,
    };
    let b = grazing.bullington(145e6).unwrap();
    close(b.edge.nu, 0.0, 1e-9);
    close(b.edge.at_m, 10e3, 1e-3);
    for points in [&[][..], &[(0.0, 1.0)], &[(0.0, 1.0), (10.0, 2.0)]] {
        let none = Terrain { points, ..SMALL };
        assert_eq!(none.bullington(145e6), None);
        assert_eq!(none.cascade(145e6), None);
        assert!(none.clearances(145e6).is_empty());
    }
}

#[test]
fn flat_ground() {
    // theory: 40 log10 d − 20 log10(ht hr), begins at 4 ht hr/λ; two rays exactly, computed in Python
    close(path::plane_earth(10e3, 30.0, 2.0), 124.437, 1e-3);
    close(path::two_ray_begins_m(146e6, 30.0, 2.0), 116.8809, 0.01);
    close(path::two_ray(146e6, 10e3, 30.0, 2.0), 124.4375, 1e-3);
    // near the mast the sum goes between 6 dB below free space and far above it
    let near = path::two_ray(146e6, 20.0, 30.0, 2.0);
    assert!(near > path::free_space(146e6, path::slant_m(20.0, 28.0)) - 6.03);
}

#[test]
fn built_up_land() {
    // Hata 1980, ITU-R P.529, computed in Python
    let at = |form, f: f64, base, km: f64| hata(form, f * 1e6, base, 1.5, km * 1e3).unwrap();
    close(at(HataForm::Urban, 900.0, 30.0, 5.0), 151.0244, 1e-4);
    close(at(HataForm::Urban, 150.0, 30.0, 5.0), 130.738, 1e-4);
    close(at(HataForm::Open, 150.0, 100.0, 20.0), 116.5761, 1e-4);
    // Hata 1980: suburbs are 2 (log10(f/28))² + 5.4 dB below the city: 9.943 dB at 900 MHz
    let less = at(HataForm::Urban, 900.0, 30.0, 5.0) - at(HataForm::Suburban, 900.0, 30.0, 5.0);
    close(less, 9.9429, 1e-3);
    let refused = hata(HataForm::Open, 146.9e6, 637.0, 1.5, 10e3).unwrap_err();
    let what: Vec<HataLimit> = refused.iter().map(|o| o.what).collect();
    assert_eq!(what, [HataLimit::Frequency, HataLimit::Base]);
    assert_eq!(refused[1].range, (30.0, 200.0));
    assert!(hata(HataForm::Open, f64::NAN, 50.0, 1.5, 10e3).is_err());
}

#[test]
fn noise_from_outside() {
    // ITU-R P.372; reference code of ITU-R Study Group 3
    let fam = |around, mhz: f64| external_noise(around, mhz * 1e6).unwrap().median_db;
    close(fam(Surroundings::City, 146.0), 16.8474, 1e-3);
    close(fam(Surroundings::QuietRural, 7.1), 29.254, 1e-3);
    close(fam(Surroundings::Galactic, 50.0), 12.9237, 1e-3);
    close(fam(Surroundings::Residential, 3.65), 56.9245, 1e-3);
    // P.372 ends at 250 MHz, for quiet rural places at 30 MHz
    assert_eq!(
        external_noise(Surroundings::City, 440e6)
            .unwrap_err()
            .high_hz,
        250e6
    );
    assert!(external_noise(Surroundings::QuietRural, 146e6).is_err());
    // ITU-R P.372 eq. 2 and 3, computed in Python
    let fa = fam(Surroundings::Residential, 146.0);
    close(path::system_noise_figure(fa, 1.5, 6.0), 13.541_37, 1e-4);
    close(path::degradation(fa, 1.5, 6.0), 13.541_37 - 7.5, 1e-4);
    // −119 dBm for 12 dB SINAD with a carrier 4 dB over the noise in 12.6 kHz (from memory of TSB-88)
    close(
        -119.0 - 4.0 - noise::thermal_noise(12_600.0, 290.0),
        9.971_48,
        1e-3,
    );
}

#[test]
fn places_and_margins() {
    // log-normal spread; the quantiles are those of the normal tables
    close(path::margin_of_places(0.95, 8.0), 13.158_83, 1e-4);
    close(path::margin_of_places(0.90, 6.5), 8.330_085, 1e-4);
    close(path::margin_of_places(0.5, 8.0), 0.0, 1e-12);
    close(path::share_of_places(13.158_83, 8.0), 0.95, 1e-6);
}

#[test]
fn the_wavelength_is_that_of_vacuum() {
    // the first Fresnel zone midway is √(λ d/4): 1 m at d = 4 m and λ = 1 m
    close(path::fresnel_radius_m(C0, 2.0, 2.0), 1.0, 1e-12);
}

/// Geoscience Australia, Flinders Peak to Buninyong: 54 972.271 m on GRS 80 (as WGS 84 within a millimetre). The
/// radii of curvature promise 0.1 %.
#[test]
fn a_published_distance() {
    let dms = |d: f64, m: f64, s: f64| d + m / 60.0 + s / 3600.0;
    let flinders = (-dms(37.0, 57.0, 3.7203), dms(144.0, 25.0, 29.5244));
    let buninyong = (-dms(37.0, 39.0, 10.1561), dms(143.0, 55.0, 35.3839));
    close(position::distance_m(flinders, buninyong), 54_972.271, 5.0);
}

/// Friis, and a line at 330 K; the cascades are what the noise cascade of scikit-rf gives: 2.917 449 73 dB with the line
/// first, 1.668 011 32 dB with the preamplifier at the mast; F = 1 + (L - 1) T/290 gives 3.288 972 dB.
#[test]
fn noise_figures_of_cascades() {
    use downlead_physics::noise::{Stage, cascade_noise_figure, passive_noise_figure};
    let line = |db: f64| Stage::passive(db, 290.0);
    let active = |gain_db: f64, noise_figure_db: f64| Stage {
        gain_db,
        noise_figure_db,
    };
    let preamp = active(18.0, 0.8);
    let receiver = active(0.0, 8.0);
    let first = cascade_noise_figure(&[line(1.5), preamp, line(3.0), receiver]);
    close(first, 2.917_449_73, 1e-6);
    let mast = cascade_noise_figure(&[preamp, line(1.5), line(3.0), receiver]);
    close(mast, 1.668_011_32, 1e-6);
    close(passive_noise_figure(3.0, 330.0), 3.288_972, 1e-5);
}
