//! Written files read back: to the last bit in RI, within the printing of angles and levels
//! elsewhere.

use downlead_touchstone::{
    Complex64, Format, Network, Parameter, Unit, Version, WriteError, WriteOptions, read, write,
};
use proptest::prelude::*;

/// Any finite number, most of them of a usual size.
fn part() -> impl Strategy<Value = f64> {
    prop_oneof![
        6 => -1.0..1.0,
        1 => Just(0.0),
        1 => Just(-0.0),
        1 => any::<f64>().prop_filter("finite", |x| x.is_finite() && x.abs() < 1e150),
    ]
}

fn network() -> impl Strategy<Value = Network> {
    let any_frequency = any::<f64>()
        .prop_map(f64::abs)
        .prop_filter("usable", |f| *f < 1e200);
    let frequencies = prop::collection::vec(prop_oneof![0.0..3e11, any_frequency], 1..12);
    (1usize..7, frequencies).prop_flat_map(|(n, mut f)| {
        f.sort_by(f64::total_cmp);
        f.dedup_by(|a, b| a == b);
        let parts = prop::collection::vec((part(), part()), f.len() * n * n);
        let z0 = prop::collection::vec(prop_oneof![Just(50.0), 1e-3..1e6], n);
        (Just(f), parts, z0).prop_map(|(f, parts, z0)| {
            let s = parts
                .into_iter()
                .map(|(re, im)| Complex64::new(re, im))
                .collect();
            Network::new(f, s, z0).expect("a network")
        })
    })
}

fn units() -> impl Strategy<Value = Unit> {
    prop::sample::select(vec![Unit::Hz, Unit::KHz, Unit::MHz, Unit::GHz])
}

fn versions() -> impl Strategy<Value = Version> {
    prop::sample::select(vec![Version::V1, Version::V2])
}

fn back(net: &Network, options: &WriteOptions) -> Network {
    let text = write(net, options).expect("S always writes");
    let file = read(text.as_bytes(), Some(net.ports()));
    // random numbers may well look wrong
    let notes: Vec<_> = file
        .notes
        .iter()
        .filter(|n| n.kind.id() != "wrong-format")
        .collect();
    assert!(notes.is_empty(), "{notes:?}\n{text}");
    assert_eq!(file.header.version, options.version);
    assert_eq!(file.header.unit, options.unit);
    file.network.expect("a network")
}

fn bits(net: &Network) -> Vec<u64> {
    let s = net.s().iter().flat_map(|z| [z.re, z.im]);
    let all = net
        .frequencies_hz()
        .iter()
        .chain(net.z0())
        .copied()
        .chain(s);
    all.map(f64::to_bits).collect()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn to_the_last_bit_in_ri(net in network(), unit in units(), version in versions()) {
        let options = WriteOptions { unit, version, ..WriteOptions::default() };
        prop_assert_eq!(bits(&back(&net, &options)), bits(&net));
    }

    #[test]
    fn nearly_in_polar_formats(net in network(), unit in units(), version in versions(), db in any::<bool>()) {
        let format = if db { Format::DB } else { Format::MA };
        let options = WriteOptions { unit, version, format, ..WriteOptions::default() };
        let got = back(&net, &options);
        prop_assert_eq!(got.frequencies_hz(), net.frequencies_hz());
        for (g, w) in got.s().iter().zip(net.s()) {
            let size = libm::hypot(w.re, w.im);
            let off = libm::hypot(g.re - w.re, g.im - w.im);
            // a level of x dB has a step of x·1e-16, which is a ratio of 2.6e-17·x
            let levels = if db && size > 0.0 { libm::fabs(libm::log10(size)) } else { 0.0 };
            prop_assert!(off <= size * (3e-15 + 1e-15 * levels), "{} is not {}", g, w);
        }
    }

    #[test]
    fn comments_stay_comments(lines in prop::collection::vec(any::<String>(), 0..4)) {
        let net = Network::new(vec![1e6], vec![Complex64::new(0.5, 0.0)], vec![50.0]).unwrap();
        for version in [Version::V1, Version::V2] {
            let options = WriteOptions { version, comments: lines.clone(), ..WriteOptions::default() };
            prop_assert_eq!(&back(&net, &options), &net);
        }
    }
}

#[test]
fn nothing_at_all_in_db() {
    let net = Network::new(vec![1e6], vec![Complex64::new(0.0, 0.0)], vec![50.0]).unwrap();
    let options = WriteOptions {
        format: Format::DB,
        ..WriteOptions::default()
    };
    assert_eq!(back(&net, &options), net);
}

#[test]
fn what_cannot_be_written_says_why() {
    let open = Network::new(vec![1e6], vec![Complex64::new(1.0, 0.0)], vec![50.0]).unwrap();
    let options = |parameter| WriteOptions {
        parameter,
        ..WriteOptions::default()
    };
    let z = write(&open, &options(Parameter::Z)).unwrap_err();
    assert_eq!(z, WriteError::Singular(Parameter::Z, 0));
    assert_eq!(
        z.to_string(),
        "frequency 1: the network has no Z-parameters there; write S"
    );
    let h = write(&open, &options(Parameter::H)).unwrap_err();
    assert_eq!(
        h.to_string(),
        "H-parameters are for 2 ports, not 1; write S"
    );
}

#[test]
fn text_of_a_small_file() {
    let s = [0.1, 0.2, 0.3, 0.4].map(|re| Complex64::new(re, -0.5));
    let net = Network::new(vec![145.3e6], s.to_vec(), vec![50.0, 75.0]).unwrap();
    let one = write(&net, &WriteOptions::default()).unwrap();
    assert_eq!(
        one,
        "# MHz S RI R 50 75\n145.3 0.1 -0.5 0.3 -0.5 0.2 -0.5 0.4 -0.5\n"
    );
    let options = WriteOptions {
        version: Version::V2,
        comments: vec!["a\nb".to_owned()],
        ..WriteOptions::default()
    };
    let two = write(&net, &options).unwrap();
    assert_eq!(
        two,
        "[Version] 2.0\n! a\n! b\n# MHz S RI R 50\n[Number of Ports] 2\n\
         [Two-Port Data Order] 21_12\n[Number of Frequencies] 1\n[Reference] 50 75\n\
         [Network Data]\n145.3 0.1 -0.5 0.3 -0.5 0.2 -0.5 0.4 -0.5\n[End]\n"
    );
}
