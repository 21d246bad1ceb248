//! Frequencies that do not fit their band, and what is offered for them.

use downlead_station::{Lets, lower};
use downlead_syntax::File;

/// Messages, and what the fixes write.
fn found(text: &str) -> Vec<(String, Vec<String>)> {
    let tree = File::parse(text);
    let items = tree.items().iter();
    items
        .flat_map(|p| lower(&p.item, &Lets::default(), false).diagnostics)
        .map(|d| {
            assert_eq!(d.code.id, "frequency-off-band", "{}", d.message);
            let written = d.fixes.iter().map(|f| f.edits[0].text.clone());
            (d.message.clone(), written.collect())
        })
        .collect()
}

#[test]
fn a_slip_of_a_thousand_is_told_with_the_frequency_that_fits() {
    for (text, ends, write) in [
        (
            "band 2m 145.3 kHz\n",
            "2063 m long, one of 145.3 MHz is 2.06 m.",
            &["145.3 MHz"][..],
        ),
        (
            "band 80m 3.5 kHz to 3.8 kHz\n",
            "one of 3.5 MHz is 86 m.",
            &["3.5 MHz to 3.8 MHz"],
        ),
        (
            "band 2m { transmit 145.9 GHz }\n",
            "one of 145.9 MHz is 2.05 m.",
            &["145.9 MHz"],
        ),
        (
            "band 2m { transmit 146.9 MHz; receive 146.3 kHz }\n",
            "1004 times apart.",
            &["146.3 MHz"],
        ),
        (
            "band 2m { transmit 146.9 kHz; receive 146.3 MHz }\n",
            "times apart.",
            &["146.9 MHz"],
        ),
        (
            "band out { transmit 146.9 kHz; receive 146.3 MHz }\n",
            "times apart.",
            &["146.9 MHz"],
        ),
        (
            "band 70cm 145.3 MHz\n",
            "a wave of 145.3 MHz is 2.06 m long.",
            &[],
        ),
    ] {
        let all = found(text);
        assert_eq!(all.len(), 1, "{text}");
        assert!(all[0].0.ends_with(ends), "{}", all[0].0);
        assert_eq!(all[0].1, write, "{text}");
    }
}

#[test]
fn what_may_be_meant_is_left_alone() {
    for text in [
        "band 2m 144 MHz to 148 MHz\n",
        "band 1mm 250 GHz\n",
        "band 70cm-if 144 MHz\n",
        "band aprs 144.8 kHz\n",
        "band span 1 MHz to 1000 MHz\n",
        // across two bands, as through a satellite
        "band 2m { transmit 145.9 MHz; receive 435.2 MHz }\n",
        "band 70cm { transmit 145.9 MHz; receive 435.2 MHz }\n",
        "band moon { transmit 2304 MHz; receive 10368 MHz }\n",
    ] {
        assert_eq!(found(text), [], "{text}");
    }
}

#[test]
fn bands_of_a_figure_stand_without_commas() {
    let told = |text: &str| {
        let tree = File::parse(text);
        let items = tree.items().iter();
        items
            .flat_map(|p| lower(&p.item, &Lets::default(), false).diagnostics)
            .collect::<Vec<_>>()
    };
    for (line, corrected) in [
        (
            "transmitter TX1 { power 100 W pep on 80m, 20m }",
            "transmitter TX1 { power 100 W pep on 80m 20m }",
        ),
        (
            "run M1 46 m of x, added 1.3 dB on 2m, 70cm, at 15 °C",
            "run M1 46 m of x, added 1.3 dB on 2m 70cm, at 15 °C",
        ),
        (
            "protector P1 { loss 0.1 dB on 2m, 70cm, 23cm }",
            "protector P1 { loss 0.1 dB on 2m 70cm 23cm }",
        ),
        (
            "antenna A1 { gain 5 dBi on aprs, 2m }",
            "antenna A1 { gain 5 dBi on aprs 2m }",
        ),
    ] {
        let mut text = format!("station s {{ {line} }}");
        let right = format!("station s {{ {corrected} }}");
        let mut found = told(&text);
        assert!(!found.is_empty(), "{line}");
        // each comma has its finding and its fix
        while let Some(d) = found.pop() {
            assert_eq!(d.code.id, "unexpected-word", "{line}: {}", d.message);
            assert!(
                d.message.contains("without commas"),
                "{line}: {}",
                d.message
            );
            let edit = &d.fixes[0].edits[0];
            text.replace_range(edit.loc.span.range(), &edit.text);
        }
        assert_eq!(text, right);
        assert!(told(&text).is_empty(), "{text}: {:?}", told(&text));
    }
    // no band stands before it
    let found = told("station s { protector P1 { loss 0.1 dB, 70cm } }");
    assert!(!found[0].message.contains("without commas"));
}
