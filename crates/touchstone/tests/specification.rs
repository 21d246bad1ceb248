//! Files as the Touchstone specification (versions 1.1 and 2.0) describes them, and files as
//! programs really write them. Cases that were also tried with scikit-rf 2.2.0 are marked.

use downlead_touchstone::{
    Complex64, Format, Kind, Network, Parameter, Severity, Touchstone, TwoPortOrder, Unit, Version,
    measures, ports_from_name, read,
};

fn file(text: &str, ports: usize) -> Touchstone {
    read(text.as_bytes(), Some(ports))
}

/// The network of a file that has nothing wrong.
fn clean(text: &str, ports: usize) -> Network {
    let file = file(text, ports);
    assert_eq!(file.notes, [], "{text}");
    file.network.expect("a network")
}

fn kinds(file: &Touchstone) -> Vec<Kind> {
    file.notes.iter().map(|n| n.kind).collect()
}

fn c(re: f64, im: f64) -> Complex64 {
    Complex64::new(re, im)
}

fn near(got: Complex64, want: Complex64, tolerance: f64) {
    let off = (got - want).norm_sqr().sqrt();
    assert!(off <= tolerance, "{got} is not {want} ± {tolerance}");
}

/// Touchstone 1.1, two-port rows: N11 N21 N12 N22; scikit-rf agrees (check T01).
#[test]
fn t01_two_port_columns_of_version_1() {
    let n = clean("# MHz S RI R 50\n100 .1 0 .9 0 .2 0 .3 0\n", 2);
    assert_eq!(n.at(0, 0, 0), c(0.1, 0.0));
    assert_eq!(n.at(0, 1, 0), c(0.9, 0.0));
    assert_eq!(n.at(0, 0, 1), c(0.2, 0.0));
    assert_eq!(n.at(0, 1, 1), c(0.3, 0.0));
    assert_eq!(n.frequencies_hz(), [100e6]);
}

/// Touchstone 1.1, option line: a bare `#` is `# GHz S MA R 50`; scikit-rf agrees (check T02).
#[test]
fn t02_a_bare_option_line() {
    let file = file("#\n0.145 0.2 90\n", 1);
    assert_eq!(kinds(&file), [Kind::UnitDefaulted]);
    assert_eq!(file.notes[0].severity, Severity::Info);
    assert!(file.header.unit_defaulted && file.header.reference_defaulted);
    assert_eq!(file.header.unit, Unit::GHz);
    assert_eq!(file.header.format, Format::MA);
    assert_eq!(file.header.parameter, Parameter::S);
    let n = file.network.unwrap();
    assert_eq!(n.frequencies_hz(), [145e6]);
    assert_eq!(n.at(0, 0, 0), c(0.0, 0.2));
    assert_eq!(n.z0(), [50.0]);
}

/// Touchstone 2.0, `[Two-Port Data Order]`: 12_21 is N11 N12 N21 N22; scikit-rf agrees, a
/// widely read article has it the other way round (check T03).
#[test]
fn t03_two_port_data_order() {
    let text = |order: &str| {
        format!(
            "[Version] 2.0\n# MHz S RI R 50\n[Number of Ports] 2\n[Two-Port Data Order] {order}\n\
             [Number of Frequencies] 1\n[Network Data]\n100 .1 0 .9 0 .2 0 .3 0\n[End]\n"
        )
    };
    let n = clean(&text("12_21"), 2);
    assert_eq!(n.at(0, 0, 1), c(0.9, 0.0));
    assert_eq!(n.at(0, 1, 0), c(0.2, 0.0));
    let n = clean(&text("21_12"), 2);
    assert_eq!(n.at(0, 1, 0), c(0.9, 0.0));
}

/// Touchstone 1.1: Z is divided by R in the file; scikit-rf agrees (check T04).
#[test]
fn t04_version_1_impedances_are_normalised() {
    let n = clean("# HZ Z RI R 50\n145e6 1.5 0.2\n", 1);
    near(n.impedance(0, 0), c(75.0, 10.0), 1e-12);
    near(n.at(0, 0, 0), c(0.205_087, 0.063_593), 1e-5);
}

/// Touchstone 2.0: Z is in ohm; scikit-rf agrees (check T05).
#[test]
fn t05_version_2_impedances_are_in_ohm() {
    let text = "[Version] 2.0\n# HZ Z RI R 50\n[Number of Ports] 1\n[Number of Frequencies] 1\n\
                [Network Data]\n145e6 75 10\n[End]\n";
    let n = clean(text, 1);
    near(n.parameters(Parameter::Z).unwrap()[0], c(75.0, 10.0), 1e-12);
    near(n.at(0, 0, 0), c(0.205_087, 0.063_593), 1e-5);
}

/// Touchstone 1.1, noise parameters: they begin where the frequency is not above the one
/// before, and may begin below the network's lowest; scikit-rf agrees (check T06).
#[test]
fn t06_noise_rows_are_kept_apart() {
    let text = "# MHz S RI R 50\n100 .1 0 .9 0 .2 0 .3 0\n200 .1 0 .8 0 .2 0 .3 0\n\
                50 0.7 0.64 69 0.38\n";
    let file = file(text, 2);
    assert_eq!(file.notes, []);
    assert_eq!(file.network.unwrap().points(), 2);
    assert_eq!(file.noise.len(), 1);
    let noise = file.noise[0];
    assert_eq!(noise.frequency_hz, 50e6);
    assert_eq!(noise.minimum_noise_figure_db, 0.7);
    // version 1 holds Rn/R
    assert!((noise.noise_resistance_ohm - 19.0).abs() < 1e-12);
    near(
        noise.optimum_reflection,
        measures::polar_deg(0.64, 69.0),
        1e-15,
    );
}

/// Z = 50 (1 + Γ)/(1 − Γ), seen in 75 ohm (check A06).
#[test]
fn a06_swr_in_another_reference() {
    let n = clean("# MHz S MA R 50\n145 0.2 90\n", 1);
    let seen = n.re_referenced(&[75.0]).unwrap();
    assert!((seen.swr(0, 0) - 1.78791).abs() < 1e-5);
    near(seen.impedance(0, 0), n.impedance(0, 0), 1e-12);
    let g = measures::reflection_in(n.at(0, 0, 0), 50.0, 75.0);
    assert!((measures::swr(g) - 1.78791).abs() < 1e-5);
}

/// |Γ| at the antenna is |Γ| at the radio times 10^(A/10) (check A07).
#[test]
fn a07_swr_beyond_a_lossy_line() {
    let near_end = (1.5 - 1.0) / (1.5 + 1.0);
    let far = measures::reflection_beyond_loss(near_end, 2.4).unwrap();
    assert!((measures::swr(c(far, 0.0)) - 2.06542).abs() < 1e-5);
    assert_eq!(measures::reflection_beyond_loss(0.7, 2.4), None);
}

#[test]
fn option_words_in_any_order_and_case() {
    for line in [
        "# MHz S RI R 75",
        "# ri R 75 mhz s",
        "#R 75 S MHZ RI",
        "#\tr\t75\tRi\tMhZ ! S is the default",
        "  # MHz RI R 75.0",
        "# MHz RI R75",
    ] {
        let n = clean(&format!("! a comment\n{line}\n145 0.1 0.2\n"), 1);
        assert_eq!(n.frequencies_hz(), [145e6], "{line}");
        assert_eq!(n.at(0, 0, 0), c(0.1, 0.2), "{line}");
        assert_eq!(n.z0(), [75.0], "{line}");
    }
    // `# MA` alone: scikit-rf refuses it, the specification does not
    let ma = file("# MA\n1 0.5 180\n", 1);
    assert_eq!(kinds(&ma), [Kind::UnitDefaulted]);
    assert_eq!(ma.network.unwrap().at(0, 0, 0), c(-0.5, 0.0));
}

#[test]
fn only_the_first_option_line_counts() {
    let file = file("# MHz S RI R 50\n# Hz S MA R 75\n145 0.1 0.2\n", 1);
    assert_eq!(kinds(&file), [Kind::OptionLineRepeated]);
    let n = file.network.unwrap();
    assert_eq!((n.frequencies_hz()[0], n.z0()[0]), (145e6, 50.0));
}

#[test]
fn faults_of_the_option_line() {
    let cases = [
        ("# MHz S RI R 50 fast", Kind::OptionUnknown, true),
        // `XX` may have been meant for the notation, which nothing else states
        ("# MHz S XX R 50", Kind::OptionUnknown, false),
        ("# MHz kHz S RI R 50", Kind::OptionContradicts, true),
        ("# MHz S RI R", Kind::ReferenceMissing, true),
        ("# MHz S RI R -50", Kind::ReferenceInvalid, false),
        ("# MHz S RI R 0", Kind::ReferenceInvalid, false),
        ("# MHz S RI R nan", Kind::ReferenceInvalid, false),
        ("# MHz S RI R (50+1j)", Kind::ReferenceComplex, false),
        ("# MHz S RI R 50+j2", Kind::ReferenceComplex, false),
        ("# MHz S RI R 50 75", Kind::ReferenceCount, false),
        ("# MHz H RI R 50", Kind::HybridPorts, false),
    ];
    for (line, kind, usable) in cases {
        let file = file(&format!("{line}\n145 0.1 0.2\n"), 1);
        let kinds = kinds(&file);
        assert!(kinds.contains(&kind), "{line}: {kinds:?}");
        assert_eq!(file.network.is_some(), usable, "{line}");
        let note = file.notes.iter().find(|n| n.kind == kind).unwrap();
        assert_eq!(note.line, 1, "{line}");
        assert!(note.understood.is_some(), "{line}");
    }
}

#[test]
fn no_option_line_at_all() {
    let file = file("0.145 0.2 90\n", 1);
    assert_eq!(kinds(&file), [Kind::OptionLineMissing]);
    // GHz and MA would be a guess: a file in MHz and dB looks the same
    assert_eq!(file.network, None);
    assert_eq!((file.notes[0].line, file.notes[0].column), (1, 1));
}

/// One reference a port on the option line: version 1.1 as the Touchstone 2.1 document names it.
#[test]
fn a_reference_for_each_port() {
    let n = clean("# MHz S RI R 50 75\n100 .1 0 .9 0 .2 0 .3 0\n", 2);
    assert_eq!(n.z0(), [50.0, 75.0]);
}

#[test]
fn comments_tabs_line_ends_and_a_mark_at_the_front() {
    let want = clean("# MHz S RI R 50\n100 .1 0 .9 0 .2 0 .3 0\n", 2);
    for text in [
        "# MHz S RI R 50\r\n100 .1 0 .9 0 .2 0 .3 0\r\n",
        "# MHz S RI R 50\r100 .1 0 .9 0 .2 0 .3 0\r",
        "\u{feff}# MHz S RI R 50\n100 .1 0 .9 0 .2 0 .3 0",
        "! before\n\n# MHz S RI R 50 ! after\n\n \t\n100\t.1\t0 .9 0 .2 0 .3 0!x\n! end",
        "! Ω and é\n# MHz S RI R 50\n   100 .1 0 .9 0 .2 0 .3 0   \n\n",
    ] {
        assert_eq!(clean(text, 2), want, "{text:?}");
    }
    let latin = b"! 50 \xD8\n# MHz S RI R 50\n100 .1 0 .9 0 .2 0 .3 0\n";
    let file = read(latin, Some(2));
    assert_eq!(file.notes, []);
    assert_eq!(file.network, Some(want));
}

#[test]
fn comments_above_the_data_are_kept() {
    let file = file(
        "! a load\n# MHz S RI R 50\n!  seen at 20 C\n1 0 0\n! later\n",
        1,
    );
    assert_eq!(file.header.comments, [" a load", "  seen at 20 C"]);
}

/// Touchstone 1.1: from three ports on, row by row, at most four pairs a line.
#[test]
fn many_ports_wrap() {
    let row = |i: usize| (0..5).map(|j| format!(" 0.{i}{j} 0")).collect::<Vec<_>>();
    let mut text = "# GHz S RI R 50\n1".to_owned();
    for i in 0..5 {
        let r = row(i);
        text += &format!("{}\n{}\n", r[..4].concat(), r[4]);
    }
    let n = clean(&text, 5);
    assert_eq!(n.ports(), 5);
    for i in 0..5 {
        for j in 0..5 {
            let want = (i * 10 + j) as f64 / 100.0;
            assert_eq!(n.at(0, i, j), c(want, 0.0), "S{}{}", i + 1, j + 1);
        }
    }
    let three = clean(
        "# GHz S RI R 50\n1 .11 0 .12 0 .13 0\n.21 0 .22 0 .23 0\n.31 0 .32 0 .33 0\n",
        3,
    );
    assert_eq!(three.at(0, 2, 0), c(0.31, 0.0));
}

#[test]
fn ports_from_the_name_or_from_the_rows() {
    for (name, ports) in [
        ("load.s1p", Some(1)),
        ("a.b/LINE.S2P", Some(2)),
        ("x.s12p", Some(12)),
        ("x.z1p", Some(1)),
        ("x.ts", None),
        ("x.sp", None),
        ("x.s0p", None),
        ("x.s+2p", None),
        ("x.s99999999999999999999p", None),
        ("s2p", None),
    ] {
        assert_eq!(ports_from_name(name), ports, "{name}");
    }
    for (rows, ports) in [
        ("1 .1 0\n2 .1 0\n", 1),
        ("1 .1 0 .2 0 .3 0 .4 0\n", 2),
        ("1 .1 0 .2 0 .3 0\n .1 0 .2 0 .3 0\n .1 0 .2 0 .3 0\n", 3),
    ] {
        let file = read(format!("# MHz S RI R 50\n{rows}").as_bytes(), None);
        assert_eq!(kinds(&file), [Kind::PortsInferred]);
        assert_eq!(file.network.unwrap().ports(), ports);
    }
    // two ports by its name, all rows are of one
    let wrong = file("# MHz S RI R 50\n1 .1 0\n2 .2 0\n3 .3 0\n", 2);
    assert_eq!(kinds(&wrong), [Kind::PortsMismatch]);
    assert_eq!(wrong.network.unwrap().points(), 3);
}

/// Touchstone 2.0, `[Reference]`: a resistance for each port, on as many lines as it takes;
/// scikit-rf agrees.
#[test]
fn references_of_version_2() {
    let text = |references: &str| {
        format!(
            "[Version] 2.0\n# MHz S RI R 50\n[Number of Ports] 3\n[Number of Frequencies] 1\n\
             [Reference] {references}\n[Network Data]\n\
             1 .1 0 .2 0 .3 0\n.2 0 .2 0 .3 0\n.3 0 .3 0 .3 0\n[End]\n"
        )
    };
    for list in ["50 75 100", "50 ! first\n75\n\n  100", "\n50 75 100"] {
        assert_eq!(clean(&text(list), 3).z0(), [50.0, 75.0, 100.0], "{list:?}");
    }
    let short = file(&text("50 75"), 3);
    assert_eq!(kinds(&short), [Kind::ReferenceCount]);
    assert_eq!(short.network, None);
    let complex = file(&text("50 75+5j 100"), 3);
    assert_eq!(kinds(&complex), [Kind::ReferenceComplex]);
    assert_eq!(complex.network, None);
}

/// Touchstone 2.0, `[Matrix Format]`: triangles describe symmetric matrices.
#[test]
fn triangles() {
    let text = |format: &str, rows: &str| {
        format!(
            "[Version] 2.0\n# MHz S RI R 50\n[Number of Ports] 3\n[Number of Frequencies] 1\n\
             [Matrix Format] {format}\n[Network Data]\n{rows}[End]\n"
        )
    };
    let full = clean(
        &text(
            "Full",
            "1 .11 0 .12 0 .13 0\n.12 0 .22 0 .23 0\n.13 0 .23 0 .33 0\n",
        ),
        3,
    );
    let lower = clean(
        &text("Lower", "1 .11 0\n.12 0 .22 0\n.13 0 .23 0 .33 0\n"),
        3,
    );
    let upper = clean(
        &text("Upper", "1 .11 0 .12 0 .13 0\n.22 0 .23 0\n.33 0\n"),
        3,
    );
    assert_eq!(lower, full);
    assert_eq!(upper, full);
    assert_eq!(full.asymmetry(0), 0.0);
}

#[test]
fn everything_version_2_has() {
    let text = "! first\n[Version] 2.0\n# GHz S MA R 50\n[Number of Ports] 2\n\
        [Two-Port Data Order] 21_12\n[Number of Frequencies] 2\n[Number of Noise Frequencies] 1\n\
        [Reference] 50 25.0\n[Matrix Format] Full\n[Begin Information]\n[Manufacturer] none\n\
        1 2 3 this is text\n[End Information]\n[Network Data]\n\
        2 .95 -26 3.57 157 .04 76 .66 -14\n22 .60 -144 1.30 40 .14 40 .56 -85\n\
        [Noise Data]\n4 .7 .64 69 19\n[End]\n";
    let file = file(text, 2);
    assert_eq!(file.notes, []);
    assert_eq!(file.header.version, Version::V2);
    assert_eq!(file.header.two_port_order, TwoPortOrder::N21First);
    let n = file.network.unwrap();
    assert_eq!((n.points(), n.z0()), (2, &[50.0, 25.0][..]));
    near(n.at(1, 1, 0), measures::polar_deg(1.3, 40.0), 0.0);
    // version 2 holds Rn in ohm
    assert_eq!(file.noise[0].noise_resistance_ohm, 19.0);
}

#[test]
fn faults_of_version_2() {
    let head = "[Version] 2.0\n# MHz S RI R 50\n";
    let cases = [
        (
            "[Number of Ports] 1\n1 0 0\n[End]\n",
            Kind::KeywordMissing,
            true,
        ),
        (
            "[Number of Ports] 1\n[Network Data]\n1 0 0\n",
            Kind::EndMissing,
            true,
        ),
        (
            "[Number of Ports] 1\n[Number of Frequencies] 3\n[Network Data]\n1 0 0\n[End]\n",
            Kind::RowCount,
            true,
        ),
        (
            "[Number of Ports] 2\n[Network Data]\n1 0 0 0 0 0 0 0 0\n[End]\n",
            Kind::KeywordMissing,
            true,
        ),
        (
            "[Number of Ports] two\n[Network Data]\n1 0 0\n[End]\n",
            Kind::KeywordValue,
            true,
        ),
        (
            "[Number of Ports] 99999999\n[Network Data]\n1 0 0\n[End]\n",
            Kind::PortsImpossible,
            false,
        ),
        (
            "[Number of Ports] 0\n[Network Data]\n1 0 0\n[End]\n",
            Kind::PortsImpossible,
            false,
        ),
        (
            "[Number of Ports] 1\n[Speed] 5\n[Network Data]\n1 0 0\n[End]\n",
            Kind::KeywordUnknown,
            true,
        ),
        (
            "[Number of Ports] 1\n[Network Data\n1 0 0\n[End]\n",
            Kind::KeywordUnknown,
            true,
        ),
        (
            "[Number of Ports] 1\n[Matrix Format] Round\n[Network Data]\n1 0 0\n[End]\n",
            Kind::KeywordValue,
            false,
        ),
        (
            "[Number of Ports] 1\n[Network Data]\n1 0 0\n[End]\n2 0 0\n",
            Kind::StrayData,
            true,
        ),
        (
            "[Number of Ports] 2\n[Two-Port Data Order] 21_12\n[Mixed-Mode Order] D1,2 C1,2\n[Network Data]\n1 0 0 0 0 0 0 0 0\n[End]\n",
            Kind::MixedMode,
            false,
        ),
        (
            "[Number of Ports] 1\n[Network Data]\n[End]\n",
            Kind::NoData,
            false,
        ),
    ];
    for (body, kind, usable) in cases {
        let file = read(format!("{head}{body}").as_bytes(), None);
        let kinds = kinds(&file);
        assert!(kinds.contains(&kind), "{body}: {kinds:?}");
        assert_eq!(file.network.is_some(), usable, "{body}: {kinds:?}");
    }
    // Touchstone 2.0 requires the number of frequencies
    let uncounted = "[Version] 2.0\n# MHz S RI R 50\n[Number of Ports] 1\n[Network Data]\n1 0 0\n2 0 0\n[End]\n";
    let told = file(uncounted, 1);
    assert_eq!(kinds(&told), [Kind::KeywordMissing]);
    assert!(told.notes[0].message.contains("[Number of Frequencies]"));
    assert_eq!(told.network.expect("all rows").points(), 2);
    let unsaid = "[Version] 2.0\n# MHz S RI R 50\n[Number of Frequencies] 2\n[Network Data]\n1 0 0\n2 0 0\n[End]\n";
    assert_eq!(kinds(&file(unsaid, 1)), [Kind::KeywordMissing]);
    let told = read(unsaid.as_bytes(), None);
    assert_eq!(kinds(&told), [Kind::KeywordMissing, Kind::PortsInferred]);
    assert_eq!(told.network.unwrap().points(), 2);
    let old = read(
        b"# MHz S RI R 50\n[Number of Ports] 1\n[Number of Frequencies] 1\n[Network Data]\n1 0 0\n[End]\n",
        None,
    );
    assert_eq!(kinds(&old), [Kind::VersionMissing]);
    let new = read(
        b"[Version] 3.0\n# MHz S RI R 50\n[Number of Ports] 1\n[Number of Frequencies] 1\n[Network Data]\n1 0 0\n[End]\n",
        None,
    );
    assert_eq!(kinds(&new), [Kind::VersionUnknown]);
}

/// Without `[Two-Port Data Order]`, which Touchstone 2.0 requires of a two-port, 13 dB of difference
/// between the two ways through could be either way round; equal ways are no matter.
#[test]
fn the_order_of_a_two_port_matters_where_its_ways_differ() {
    let of = |order: &str, back: &str| {
        let text = format!(
            "[Version] 2.0\n# MHz S RI R 50\n[Number of Ports] 2\n{order}[Number of Frequencies] 1\n[Network Data]\n145 0.1 0 0.9 0 {back} 0 0.1 0\n[End]\n"
        );
        read(text.as_bytes(), None)
    };
    let file = of("", "0.2");
    assert_eq!(kinds(&file), [Kind::KeywordMissing, Kind::OrderUnknown]);
    assert_eq!(file.network, None);
    let note = &file.notes[1];
    assert_eq!((note.line, note.severity), (5, Severity::Error));
    assert!(of("", "0.9").network.is_some());
    assert!(of("[Two-Port Data Order] 21_12\n", "0.2").network.is_some());
}

#[test]
fn a_bad_row_costs_that_row() {
    let cases = [
        ("2 nan 0", Kind::NotFinite),
        ("2 0.1 -inf", Kind::NotFinite),
        ("2 0.1 1.#QNAN", Kind::NotFinite),
        ("2 0.1 1e999", Kind::NotFinite),
        ("2 0,1 0,2", Kind::NotANumber),
        ("2 0.1 x", Kind::NotANumber),
        ("two 0.1 0", Kind::NotANumber),
        ("2 0.1", Kind::RowLength),
        ("2", Kind::RowLength),
        ("2 0.1 0 0.2 0", Kind::RowLength),
        ("2 0.1 0 0.2", Kind::RowLength),
        ("-2 0.1 0", Kind::FrequencyNegative),
        ("1 0.1 0", Kind::FrequencyRepeated),
    ];
    for (row, kind) in cases {
        let file = file(&format!("# MHz S RI R 50\n1 0.5 0\n{row}\n3 0.25 0\n"), 1);
        assert_eq!(kinds(&file), [kind], "{row}");
        assert_eq!((file.notes[0].line, file.rows_left_out), (3, 1), "{row}");
        assert!(file.notes[0].understood.is_some(), "{row}");
        let n = file.network.unwrap();
        assert_eq!(n.frequencies_hz(), [1e6, 3e6], "{row}");
        assert_eq!(n.at(1, 0, 0), c(0.25, 0.0), "{row}");
    }
}

#[test]
fn a_bad_line_of_many_costs_one_point() {
    let point = |f: u32| format!("{f} .1 0 .2 0 .3 0\n.1 0 .2 0 .3 0\n.1 0 .2 0 .3 0\n");
    for (bad, kind) in [
        ("2 .1 0 .2 0 .3 0\n.1 0 .2 0 .3 0\n", Kind::RowLength),
        (
            "2 .1 0 .2 0 .3 0\n.1 0 .2 0 .3 0\n.1 0 .2 0 .3 0\n.1 0\n",
            Kind::RowLength,
        ),
        (
            "2 .1 0 .2 0 .3\n.1 0 .2 0 .3 0\n.1 0 .2 0 .3 0\n",
            Kind::RowLength,
        ),
        (
            "2 .1 0 .2 0 .3 0\n.1 0 ? 0 .3 0\n.1 0 .2 0 .3 0\n",
            Kind::NotANumber,
        ),
    ] {
        let text = format!("# MHz S RI R 50\n{}{bad}{}{}", point(1), point(3), point(4));
        let file = file(&text, 3);
        assert_eq!(kinds(&file), [kind], "{bad}");
        assert_eq!(
            file.network.unwrap().frequencies_hz(),
            [1e6, 3e6, 4e6],
            "{bad}"
        );
    }
}

#[test]
fn half_a_file() {
    let text = "# MHz S RI R 50\n100 .1 0 .9 0 .2 0 .3 0\n200 .1 0 .9 0 .2";
    let file = file(text, 2);
    assert_eq!(kinds(&file), [Kind::RowLength]);
    assert_eq!(file.network.unwrap().points(), 1);
    let text = "# MHz S RI R 50\n100 .1 0 .9 0 .2 0 .3 0\n200 .1 0 .9 0 .2 0";
    let cut = read(text.as_bytes(), Some(2));
    assert_eq!(kinds(&cut), [Kind::CutOff]);
    assert_eq!(cut.network.unwrap().points(), 1);
    for (text, kind) in [("", Kind::NoData), ("# MHz S RI R 50\n", Kind::NoData)] {
        let file = read(text.as_bytes(), Some(1));
        assert_eq!(kinds(&file), [kind]);
        assert_eq!(file.network, None);
    }
}

#[test]
fn frequencies_out_of_order_are_sorted() {
    let file = file(
        "# MHz S RI R 50\n3 .3 0\n2 .2 0\n1 .1 0\n2.5 .25 0\n3 .9 0\n",
        1,
    );
    assert_eq!(
        kinds(&file),
        [
            Kind::FrequencyOrder,
            Kind::FrequencyOrder,
            Kind::FrequencyRepeated
        ]
    );
    let n = file.network.unwrap();
    assert_eq!(n.frequencies_hz(), [1e6, 2e6, 2.5e6, 3e6]);
    // the first row in the file counts
    assert_eq!(n.at(3, 0, 0), c(0.3, 0.0));
    assert_eq!(n.at(0, 0, 0), c(0.1, 0.0));
}

#[test]
fn a_million_bad_rows_are_a_handful_of_notes() {
    let mut text = "# MHz S RI R 50\n".to_owned();
    text += &"1 x 0\n".repeat(1000);
    let file = file(&text, 1);
    let of_kind: Vec<_> = file
        .notes
        .iter()
        .filter(|n| n.kind == Kind::NotANumber)
        .collect();
    assert_eq!(of_kind.len(), 10);
    assert_eq!(of_kind[9].more, 990);
    assert_eq!(file.rows_left_out, 1000);
}

#[test]
fn numbers_that_look_like_another_format() {
    for (text, ports) in [
        ("# MHz S RI R 50\n1 -12 30\n", 1),
        ("# MHz S MA R 50\n1 12 30\n", 1),
        ("# MHz S DB R 50\n1 0.3 30\n", 1),
        ("# MHz S MA R 50\n1 -12 30\n", 1),
        ("# MHz S MA R 50\n1 -20 0 -1 0 -1 0 -20 0\n", 2),
    ] {
        let file = file(text, ports);
        assert!(!file.notes.is_empty(), "{text}");
        assert!(
            file.notes.iter().all(|n| n.kind == Kind::WrongFormat),
            "{text}"
        );
        assert!(file.network.is_some());
    }
    // an analyser's uncertainty, and an amplifier
    clean("# MHz S MA R 50\n1 1.005 30\n", 1);
    clean("# MHz S DB R 50\n1 -20 0 15 0 -40 0 -20 0\n", 2);
}

/// Impedances in comments are reported, not guessed (scikit-rf issues 652 and 1116).
#[test]
fn impedances_in_comments() {
    let file = file("# GHz S MA R\n1 .1 0\n! Port Impedance 75.0 0.0\n", 1);
    assert_eq!(
        kinds(&file),
        [Kind::ReferenceMissing, Kind::ImpedanceInComment]
    );
    assert_eq!(file.network.unwrap().z0(), [50.0]);
    let same = "# GHz S MA R 50\n1 .1 0\n! Port Impedance 50.0 0.0\n! Gamma 0 1\n";
    clean(same, 1);
    let complex = read(
        b"# GHz S MA R 50\n1 .1 0\n!Port Impedance 50.0 -1.5\n",
        Some(1),
    );
    assert_eq!(kinds(&complex), [Kind::ImpedanceInComment]);
}

#[test]
fn places_in_the_text() {
    let text = "! Ω\n# MHz S RI R 50\n1 0.5 é\n";
    let file = file(text, 1);
    let note = &file.notes[0];
    assert_eq!(
        (note.kind, note.line, note.column),
        (Kind::NotANumber, 3, 7)
    );
    assert_eq!(&text[note.bytes.clone()], "é");
    assert_eq!(
        note.to_string(),
        "3:7: error: `é` is not a number; the row was left out \
         (numbers are written 0.5 or -1.2e-3; comments begin with `!`)"
    );
}

#[test]
fn utf_16_and_words() {
    let file = read(b"\xFF\xFE#\x00\n\x00", Some(1));
    assert_eq!(kinds(&file), [Kind::Encoding, Kind::NoData]);
    let file = read(b"hello\n# MHz S RI R 50\n1 0 0\n", Some(1));
    assert_eq!(kinds(&file), [Kind::NotANumber]);
    assert!(file.network.is_some());
}

#[test]
fn kinds_have_different_names() {
    let mut names: Vec<_> = Kind::ALL.iter().map(|k| k.id()).collect();
    names.sort_unstable();
    names.dedup();
    assert_eq!(names.len(), Kind::ALL.len());
}
