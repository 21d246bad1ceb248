//! Against scikit-rf: files it wrote, files of ours it reads, conversions. All recorded, and
//! run again, by `tests/reference/touchstone.py`.

use downlead_touchstone::{
    Complex64, Format, Network, Parameter, Unit, Version, WriteOptions, convert, measures,
    ports_from_name, read, write,
};
use serde_json::Value;
use std::path::{Path, PathBuf};

fn data() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/data")
}

fn reference() -> Value {
    let text = include_str!("data/reference.json");
    serde_json::from_str(text).expect("the reference file is JSON")
}

fn numbers(v: &Value) -> Vec<f64> {
    let list = v.as_array().expect("a list");
    list.iter().map(|x| x.as_f64().expect("a number")).collect()
}

fn complexes(v: &Value) -> Vec<Complex64> {
    let flat = numbers(v);
    let pairs = flat.chunks_exact(2);
    pairs.map(|p| Complex64::new(p[0], p[1])).collect()
}

fn network(v: &Value) -> Network {
    let (f, s, z0) = (numbers(&v["f_hz"]), complexes(&v["s"]), numbers(&v["z0"]));
    Network::new(f, s, z0).expect("a network")
}

/// The largest difference, relative to the largest number (or 1).
fn compare(got: &[Complex64], want: &[Complex64], tolerance: f64, what: &str) {
    assert_eq!(got.len(), want.len(), "{what}");
    let size = |z: &Complex64| z.norm_sqr().sqrt();
    let scale = want.iter().map(size).fold(1.0, f64::max);
    for (k, (g, w)) in got.iter().zip(want).enumerate() {
        let off = size(&(g - w));
        assert!(off <= tolerance * scale, "{what}, {k}: {g} is not {w}");
    }
}

#[test]
fn files_scikit_rf_reads_the_same() {
    let reference = reference();
    let files = reference["files"].as_object().expect("files");
    assert!(files.len() >= 20);
    for (name, want) in files {
        let text = std::fs::read(data().join("theirs").join(name)).expect(name);
        let file = read(&text, ports_from_name(name));
        let loud: Vec<_> = file
            .notes
            .iter()
            .filter(|n| n.kind.id() != "unit-defaulted")
            .collect();
        assert!(loud.is_empty(), "{name}: {loud:?}");
        let got = file.network.expect(name);
        let want_network = network(want);
        assert_eq!(got.z0(), want_network.z0(), "{name}");
        let pairs = got
            .frequencies_hz()
            .iter()
            .zip(want_network.frequencies_hz());
        for (g, w) in pairs {
            // scikit-rf multiplies by the unit, we move the point
            assert!((g - w).abs() <= 4e-16 * w, "{name}: {g} is not {w}");
        }
        compare(got.s(), want_network.s(), 1e-12, name);
        let rows: Vec<_> = want["noise"]
            .as_array()
            .expect("rows")
            .iter()
            .map(numbers)
            .collect();
        assert_eq!(file.noise.len(), rows.len(), "{name}");
        for (g, w) in file.noise.iter().zip(rows) {
            assert!((g.frequency_hz - w[0]).abs() <= 4e-16 * w[0]);
            assert_eq!(g.minimum_noise_figure_db, w[1]);
            assert_eq!(g.optimum_reflection, measures::polar_deg(w[2], w[3]));
            assert!((g.noise_resistance_ohm - w[4] * got.z0()[0]).abs() < 1e-12);
        }
    }
}

#[test]
fn conversions_as_scikit_rf_makes_them() {
    let reference = reference();
    let cases = reference["conversions"].as_array().expect("cases");
    assert_eq!(cases.len(), 24);
    for (k, v) in cases.iter().enumerate() {
        let n = v["ports"].as_u64().expect("ports") as usize;
        let (z0, s) = (numbers(&v["z0"]), complexes(&v["s"]));
        let net = Network::new(vec![1e6], s.clone(), z0.clone()).expect("a network");
        for (name, parameter) in [
            ("Z", Parameter::Z),
            ("Y", Parameter::Y),
            ("H", Parameter::H),
            ("G", Parameter::G),
        ] {
            let what = format!("case {k}, {name}");
            if v[name].is_null() {
                assert!(n != 2 && net.parameters(parameter).is_err(), "{what}");
                continue;
            }
            let want = complexes(&v[name]);
            let got = net.parameters(parameter).expect(&what);
            compare(&got, &want, 1e-10, &what);
            let back = Network::from_parameters(parameter, vec![1e6], want, z0.clone());
            compare(
                back.expect(&what).s(),
                &s,
                1e-10,
                &format!("{what} and back"),
            );
        }
        let to = numbers(&v["to"]);
        let seen = net.re_referenced(&to).expect("references");
        compare(
            seen.s(),
            &complexes(&v["re_referenced"]),
            1e-10,
            &format!("case {k} in others"),
        );
        assert_eq!(seen.z0(), to);
        let gain = v["largest_gain"].as_f64().expect("a gain");
        assert!((net.largest_gain(0) - gain).abs() < 1e-12, "case {k}");
        assert_eq!(net.is_passive(1e-9), gain <= 1.0, "case {k}");
    }
}

/// Each network's file name and options.
fn variants(name: &str, net: &Network) -> Vec<(String, WriteOptions)> {
    let ports = net.ports();
    let alike = net.z0().iter().all(|z| *z == net.z0()[0]);
    let mut out = Vec::new();
    for (format, unit) in [
        (Format::RI, Unit::MHz),
        (Format::MA, Unit::GHz),
        (Format::DB, Unit::Hz),
    ] {
        for parameter in [
            Parameter::S,
            Parameter::Z,
            Parameter::Y,
            Parameter::H,
            Parameter::G,
        ] {
            // every format for S, one for the others
            let wanted = parameter == Parameter::S || format == Format::RI;
            if !wanted || parameter.is_hybrid() && ports != 2 {
                continue;
            }
            let options = |version| WriteOptions {
                version,
                unit,
                format,
                parameter,
                comments: vec!["a network of random numbers".to_owned()],
            };
            let stem = format!("{name}_{}_{}", parameter.letter(), format.name());
            if alike || parameter == Parameter::S {
                out.push((format!("{stem}.s{ports}p"), options(Version::V1)));
            }
            out.push((format!("{stem}.ts"), options(Version::V2)));
        }
    }
    out
}

/// The files in `ours` are what the writer writes; scikit-rf reads them in the script.
/// `UPDATE=1` renews them.
#[test]
fn files_scikit_rf_has_read() {
    let reference = reference();
    let folder = data().join("ours");
    let update = std::env::var_os("UPDATE").is_some();
    if update {
        std::fs::create_dir_all(&folder).expect("a folder");
    }
    let mut count = 0;
    for (name, v) in reference["networks"].as_object().expect("networks") {
        let net = network(v);
        for (file, options) in variants(name, &net) {
            let text = write(&net, &options).expect(&file);
            let path = folder.join(&file);
            if update {
                std::fs::write(&path, &text).expect(&file);
            }
            let committed = std::fs::read_to_string(&path).expect(&file);
            assert_eq!(text, committed, "{file}");
            let back = read(text.as_bytes(), ports_from_name(&file));
            assert_eq!(back.notes, [], "{file}");
            let back = back.network.expect(&file);
            assert_eq!(back.frequencies_hz(), net.frequencies_hz(), "{file}");
            assert_eq!(back.z0(), net.z0(), "{file}");
            if options.format == Format::RI && options.parameter == Parameter::S {
                assert_eq!(back, net, "{file}");
            }
            compare(back.s(), net.s(), 1e-12, &file);
            count += 1;
        }
    }
    let there = std::fs::read_dir(&folder).expect("a folder").count();
    assert_eq!(there, count, "files in ours");
}

/// An open, a short and a through line have no Z or Y, but S in any reference.
#[test]
fn references_without_impedances() {
    let c = |re| Complex64::new(re, 0.0);
    let net = |s: Vec<Complex64>, z0: Vec<f64>| Network::new(vec![1e6], s, z0).expect("a network");
    let open = net(vec![c(1.0)], vec![50.0]);
    assert!(open.parameters(Parameter::Z).is_err());
    assert_eq!(open.re_referenced(&[75.0]).unwrap().s(), [c(1.0)]);
    let short = net(vec![c(-1.0)], vec![50.0]);
    assert!(short.parameters(Parameter::Y).is_err());
    assert_eq!(short.re_referenced(&[75.0]).unwrap().s(), [c(-1.0)]);
    let through = net(vec![c(0.0), c(1.0), c(1.0), c(0.0)], vec![50.0; 2]);
    assert!(through.parameters(Parameter::Z).is_err());
    assert!(through.parameters(Parameter::Y).is_err());
    let seen = through.re_referenced(&[50.0, 75.0]).unwrap();
    // a step from 50 to 75 ohm: (75 − 50)/(75 + 50)
    compare(
        &[seen.at(0, 0, 0), seen.at(0, 1, 1)],
        &[c(0.2), c(-0.2)],
        1e-15,
        "step",
    );
    assert!((seen.largest_gain(0) - 1.0).abs() < 1e-14);
    assert!(seen.is_reciprocal(1e-15));
    let h = through.parameters(Parameter::H).unwrap();
    compare(
        &h,
        &[c(0.0), c(1.0), c(-1.0), c(0.0)],
        1e-15,
        "H of a through line",
    );
    let mut m = through.s().to_vec();
    assert!(convert::re_reference(&mut m, &[50.0, 50.0], &[50.0, 50.0]));
    assert_eq!(m, through.s());
}
