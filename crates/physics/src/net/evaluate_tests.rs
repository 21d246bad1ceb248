//! Statistics of the evaluator against closed forms and numerical integration.

use super::*;

fn close(a: f64, b: f64, within: f64) {
    assert!((a - b).abs() <= within, "{a}, wanted {b}");
}

/// An output of mean 0 and standard uncertainty 1 by derivatives, with a sample.
fn output(samples: Vec<f64>, weight: f64) -> Output {
    let mut o = Output {
        mean: 0.0,
        u: 0.0,
        mean_w: 0.0,
        low: 0.0,
        high: 0.0,
        weight: 0.0,
        residual: 0.0,
        linear: (0.0, 0.0),
        samples: Vec::new(),
    };
    o.set_linear(1.0);
    o.weight = weight;
    o.samples = samples;
    o
}

#[test]
fn probabilities_of_derivatives_are_those_of_the_normal_distribution() {
    // standard normal table (NIST/SEMATECH e-Handbook, 1.3.6.7.1)
    let mut o = output(Vec::new(), 0.0);
    for (z, p) in [
        (0.0, 0.5),
        (1.0, 0.841_344_746),
        (-1.0, 0.158_655_254),
        (1.96, 0.975_002_105),
        (2.5, 0.993_790_335),
    ] {
        close(o.above(z), 1.0 - p, 1e-8);
    }
    assert!(o.low == -2.0 && o.high == 2.0);
    // of a spread of 1 dB the mean power is above that of the mean level: exp(s²/2), s = ln 10/10
    close(
        o.mean_w,
        libm::exp(0.5 * 0.230_258_509_3 * 0.230_258_509_3),
        1e-9,
    );
    o.mean = -3.0;
    o.set_linear(2.0);
    close(o.above(-1.0), 0.158_655_254, 1e-8);
    assert!(o.low == -7.0 && o.high == 1.0 && o.by_derivatives() == (-3.0, 2.0));
    // without any uncertainty it is above or not; exactly at the limit it does not exceed it
    o.set_linear(0.0);
    assert!(o.above(-3.001) == 1.0 && o.above(-3.0) == 0.0 && o.above(-2.999) == 0.0);
}

#[test]
fn probabilities_of_a_sample_are_its_shares() {
    // a rectangle from 10 to 20 by its midpoints
    let x: Vec<f64> = (0..1000)
        .map(|k| 10.0 + (f64::from(k) + 0.5) * 0.01)
        .collect();
    let o = output(x.clone(), 1.0);
    for limit in [10.5, 12.0, 12.003, 15.0, 15.005, 19.99] {
        close(o.above(limit), (20.0 - limit) / 10.0, 1e-9);
    }
    assert!(o.above(5.0) == 1.0 && o.above(25.0) == 0.0);
    // equal values are one step
    let o = output(vec![1.0, 2.0, 2.0, 3.0], 1.0);
    close(o.above(2.5), 0.25, 1e-12);
    // shared between sample and derivatives by its weight
    let half = output(x, 0.25);
    close(half.above(15.0), 0.25 * 0.5, 1e-9);
    close(half.above(0.0), 0.75 * 0.5 + 0.25, 1e-9);
    assert!(half.samples().len() == 1000);
}

#[test]
fn quantiles_are_at_the_middle_of_each_share() {
    let x: Vec<f64> = (0..40).map(|k| f64::from(k) * 2.0).collect();
    // value k stands for the probability (k + ½)/40
    for k in [0, 1, 7, 20, 38, 39] {
        close(
            quantile(&x, (f64::from(k) + 0.5) / 40.0),
            f64::from(k) * 2.0,
            1e-9,
        );
    }
    close(quantile(&x, 0.5), 39.0, 1e-12);
    // beyond the outer ones on the same line
    close(quantile(&x, 0.0), -1.0, 1e-12);
    close(quantile(&x, 1.0), 79.0, 1e-12);
}

#[test]
fn the_step_between_derivatives_and_sample_is_smooth() {
    assert!(smooth((2.0, 4.0), 1.0) == 0.0 && smooth((2.0, 4.0), 5.0) == 1.0);
    close(smooth((2.0, 4.0), 3.0), 0.5, 1e-15);
    close(smooth((2.0, 4.0), 2.5), 0.156_25, 1e-15);
    close(smooth((2.0, 4.0), 3.5), 1.0 - 0.156_25, 1e-15);
}

#[test]
fn moments_are_those_of_each_row() {
    // rows k·(0 … n−1): mean k (n−1)/2, variance k² (n²−1)/12; more rows than are done together
    let n = POINTS as f64;
    let rows = WIDTH + 3;
    let all: Vec<f64> = (0..rows * POINTS)
        .map(|i| (i / POINTS) as f64 * (i % POINTS) as f64)
        .collect();
    let got = moments(&all);
    assert_eq!(got.len(), rows);
    for (k, (mean, u)) in got.into_iter().enumerate() {
        let k = k as f64;
        close(mean, k * (n - 1.0) / 2.0, 1e-9);
        close(u, k * ((n * n - 1.0) / 12.0).sqrt(), 1e-9);
    }
}

/// Mean of the phasor e^(−j Σ aᵢ zᵢ), its spread along the mean, and across what is linear in the
/// angle, by points of a fine grid.
fn integrated(turn: &[f64], shapes: &[Shape]) -> [f64; 3] {
    let n = 400;
    let of = |shape: &Shape, k: i32| {
        let t = (f64::from(k) + 0.5) / f64::from(n);
        match shape {
            Shape::Rectangular => 3f64.sqrt() * (2.0 * t - 1.0),
            Shape::Normal => super::super::sample::normal_quantile(t),
        }
    };
    let (mut mean, mut along, mut across, mut count) = (0.0, 0.0, 0.0, 0.0);
    let grid: Vec<f64> = (0..n)
        .flat_map(|a| (0..n).map(move |b| (a, b)))
        .map(|(a, b)| turn[0] * of(&shapes[0], a) + turn[1] * of(&shapes[1], b))
        .collect();
    for angle in &grid {
        mean += libm::cos(*angle);
        count += 1.0;
    }
    mean /= count;
    for angle in &grid {
        along += (libm::cos(*angle) - mean).powi(2) / count;
        across += libm::sin(-*angle).powi(2) / count;
    }
    let linear: f64 = turn.iter().map(|a| a * a).sum::<f64>() * mean * mean;
    [mean, along.sqrt(), (across - linear).max(0.0).sqrt()]
}

#[test]
fn a_phase_has_the_moments_of_its_distribution() {
    let shapes = [Shape::Rectangular, Shape::Normal];
    for turn in [
        [0.02, 0.01],
        [0.3, 0.2],
        [0.9, -0.7],
        [0.0, 1.5],
        [2.0, 0.0],
    ] {
        let p = Phase::of_angle(turn.to_vec(), Spread::Known, &shapes);
        let [mean, along, across] = integrated(&turn, &shapes);
        close(p.rho, mean, 3e-3);
        close(p.along, along, 3e-3);
        close(p.across, across, 6e-3);
        close(p.deviation(), libm::hypot(turn[0], turn[1]), 1e-12);
        // √3 standard deviations of a rectangle, two of a normal one
        close(
            p.reach(),
            3f64.sqrt() * turn[0].abs() + 2.0 * turn[1].abs(),
            1e-12,
        );
        assert!(!p.leans_in_part());
    }
    let free = Phase::of_angle(vec![0.1, 0.0], Spread::Free, &shapes);
    assert!(free.rho == 0.0 && free.deviation() == f64::INFINITY && free.reach() == f64::INFINITY);
    // of a turn, whose cosine and sine have a mean square of ½
    close(free.along, 0.5f64.sqrt(), 1e-12);
    close(free.across, 0.5f64.sqrt(), 1e-12);
}

#[test]
fn a_phase_that_passivity_limits_has_the_moments_of_its_draws() {
    let d = Dimension::new(3);
    for most in [0.2, 0.6, 1.0] {
        let p = Phase::leaning(most);
        let all: Vec<(f64, f64, f64)> = (0..POINTS).map(|k| p.drawn(&[], 0, &d, k)).collect();
        let mean =
            |f: &dyn Fn(&(f64, f64, f64)) -> f64| all.iter().map(f).sum::<f64>() / POINTS as f64;
        let (cos, sin) = (mean(&|x| x.0), mean(&|x| x.1));
        close(p.rho, cos, 1e-5);
        close(sin, 0.0, 1e-5);
        close(p.along, mean(&|x| (x.0 - cos).powi(2)).sqrt(), 1e-5);
        close(p.across, mean(&|x| x.1 * x.1).sqrt(), 1e-5);
        for x in &all {
            // a phasor, within sin ψ/2 = ± most, without a linear part
            close(libm::hypot(x.0, x.1), 1.0, 1e-12);
            assert!((0.5 * (1.0 - x.0)).max(0.0).sqrt() <= most + 1e-12 && x.2 == 0.0);
        }
        assert_eq!(p.leans_in_part(), most < 1.0);
        assert!(p.deviation() == f64::INFINITY && p.reach() == f64::INFINITY);
    }
}

#[test]
fn a_phase_of_figures_is_drawn_with_them() {
    let d = Dimension::new(0);
    let shapes = [Shape::Rectangular, Shape::Normal];
    let p = Phase::of_angle(vec![0.4, -0.3], Spread::Known, &shapes);
    let z = [
        [0.0, 1.0, -1.5, 0.0, 0.0, 0.0, 0.0, 0.0],
        [2.0, 0.5, 1.0, 0.0, 0.0, 0.0, 0.0, 0.0],
    ];
    for k in 0..3 {
        let angle = 0.4 * z[0][k] - 0.3 * z[1][k];
        let (c, s, linear) = p.drawn(&z, k, &d, 0);
        close(c, libm::cos(angle), 1e-15);
        close(s, -libm::sin(angle), 1e-15);
        close(linear, -angle, 1e-15);
    }
    // a free one takes every direction: the mean of its phasor over all points is 0
    let free = Phase::of_angle(vec![0.0, 0.0], Spread::Free, &shapes);
    let all: Vec<_> = (0..POINTS).map(|k| free.drawn(&z, 0, &d, k)).collect();
    close(all.iter().map(|x| x.0).sum(), 0.0, 1e-9);
    close(all.iter().map(|x| x.1).sum(), 0.0, 1e-9);
    assert!(
        all.iter()
            .all(|x| (libm::hypot(x.0, x.1) - 1.0).abs() < 1e-12 && x.2 == 0.0)
    );
}

#[test]
fn outputs_stand_in_the_order_of_their_index() {
    let kinds: Vec<(bool, bool)> = (0..8).map(|i| (is_back(i), is_net(i))).collect();
    let (f, n, b) = ((false, false), (false, true), (true, false));
    assert_eq!(kinds, [f, f, f, n, b, f, n, b]);
    for k in 0..3 {
        assert!(is_net(Evaluation::index(Quantity::Net(k))));
        assert!(is_back(Evaluation::index(Quantity::Back(k))));
        assert_eq!(Evaluation::index(Quantity::Forward(k)), 2 + 3 * k);
        assert_eq!(Evaluation::index(Quantity::Net(k)), 3 + 3 * k);
        assert_eq!(Evaluation::index(Quantity::Back(k)), 4 + 3 * k);
    }
    assert!(Evaluation::index(Quantity::Eirp) == 0 && Evaluation::index(Quantity::Delivered) == 1);
}
