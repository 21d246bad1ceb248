//! Spots, neighbours, antennas and hops in an editor: hints, lenses, hovers, completion, reports.

use downlead_eval::Snapshot;
use downlead_ide::{
    Config, Doc, Status, code_lenses, completion, hover, inlay_hints, report_markdown, swatches,
};
use downlead_testkit::{Files, examples};

fn load(file: &str) -> Snapshot {
    Snapshot::load(&[file.to_owned()], &examples())
}

fn of_text(text: &str) -> Snapshot {
    let files = Files::default().with("a.downlead", text);
    Snapshot::load(&["a.downlead".to_owned()], &files)
}

fn offset(s: &Snapshot, needle: &str) -> u32 {
    let text = s.files()[0].text();
    let at = text.find(needle).unwrap_or_else(|| panic!("no `{needle}`"));
    u32::try_from(at).expect("a small text")
}

/// The hint at the end of the line that has the needle in it.
fn hint(s: &Snapshot, needle: &str) -> String {
    let text = s.files()[0].text();
    let at = offset(s, needle) as usize;
    let end = text[at..].find('\n').map_or(text.len(), |i| at + i);
    let whole = downlead_base::Span::new(0, u32::try_from(text.len()).expect("small"));
    let all = inlay_hints(s, Doc::File(0), whole, &Config::default());
    let found = all.iter().filter(|h| h.offset as usize == end);
    found
        .flat_map(|h| &h.parts)
        .map(|p| p.text.as_str())
        .collect()
}

/// The worked figures of the scenario: gate 3.85 %, H1 2.62 %, keep clear 2.7 m (tests/reference/exposure.py);
/// 11.2 dB left on the way to the quay.
#[test]
fn hints_say_what_spots_neighbours_antennas_and_hops_come_to() {
    let s = load("site/hill.downlead");
    let gate = hint(&s, "spot gate");
    assert_eq!(
        gate,
        "3.85 %, 4.72 % with U: met; most H1 of harbour 2.62 %"
    );
    let platform = hint(&s, "spot platform");
    assert!(
        platform.starts_with("no sum: refused, closer than"),
        "{platform}"
    );
    // at the roof the neighbour adds most: 4.23 %
    assert_eq!(hint(&s, "beside harbour"), "adds 4.23 % at shelter-roof");
    let antenna = hint(&s, "antenna A1 {");
    assert!(antenna.contains("keep clear 2.7 m"), "{antenna}");
    let s = load("link/quay.downlead");
    assert_eq!(
        hint(&s, "hop talk-out-2m"),
        "-87.6 dBm, 11.2 dB left ± 2.69 dB: met"
    );
}

#[test]
fn what_is_not_judged_is_said_at_its_line() {
    let s = of_text(
        "rules r {\n    dated 2026-01-15\n    reflection 1.6\n    limit 2 W/m2 on 30 MHz to 300 MHz, public, averaging 30 min, \"7\", confidence high\n}\nstation hill {\n    under r\n    spot porch 5 out, 2 m agl, public\n    transmitter TX1 5 W ± 5 % carrier, fm\n    antenna A1 2.15 dBi\n    chain out on 145 MHz {\n        TX1\n        A1\n    }\n}\nlink l {\n    hop out of hill to hear car\n}\n",
    );
    assert_eq!(hint(&s, "spot porch"), "not judged: the line has an error");
    assert_eq!(hint(&s, "hop out"), "not judged: the line has an error");
    let antenna = hint(&s, "antenna A1");
    assert!(antenna.contains("keep clear not known"), "{antenna}");
    let titles: Vec<String> = code_lenses(&s, Doc::File(0), &Config::default())
        .into_iter()
        .map(|l| l.title)
        .collect();
    assert!(
        titles.contains(&"exposure: 1 spot not judged".to_owned()),
        "{titles:?}"
    );
    assert!(
        titles.contains(&"link: 1 hop not judged".to_owned()),
        "{titles:?}"
    );
}

#[test]
fn lenses_sum_up_and_open_the_report() {
    let c = Config::default();
    let s = load("site/hill.downlead");
    let all = code_lenses(&s, Doc::File(0), &c);
    let exposure = all.iter().find(|l| l.title.starts_with("exposure"));
    assert_eq!(
        exposure.expect("a lens").title,
        "exposure: 1 spot not judged, 2 spots met"
    );
    let s = load("link/quay.downlead");
    let all = code_lenses(&s, Doc::File(0), &c);
    let links: Vec<_> = all.iter().filter(|l| l.title.starts_with("link")).collect();
    assert_eq!(links.len(), 2);
    assert_eq!(links[0].title, "link: 1 hop met");
    let report = report_markdown(&s, 0, Some("hill-to-quay")).expect("a report");
    assert!(report.contains("by one edge at 26 km"), "{report}");
    assert!(!report.contains("quay-to-hill"), "{report}");
}

#[test]
fn hovers_derive_spots_hops_and_neighbours() {
    let c = Config::default();
    let s = load("site/hill.downlead");
    for (at, words) in [
        ("spot gate", "sum of the shares of the limits"),
        ("gate 5 m", "sum of the shares of the limits"),
        ("beside harbour", "harbour adds at gate"),
        ("antenna A1 {", "keep clear of A1"),
    ] {
        let h = hover(&s, Doc::File(0), offset(&s, at) + 1, &c).expect(at);
        assert!(h.text.contains(words), "{at}: {}", h.text);
    }
    let s = load("link/quay.downlead");
    for at in ["hop talk-out-2m", "talk-out-2m of pellgarrow"] {
        let h = hover(&s, Doc::File(0), offset(&s, at) + 1, &c).expect(at);
        assert!(h.text.contains("left of the margin"), "{at}: {}", h.text);
    }
}

#[test]
fn swatches_stand_at_spots_and_hops() {
    let c = Config {
        swatches: true,
        ..Config::default()
    };
    let s = load("site/hill.downlead");
    let all = swatches(&s, Doc::File(0), &c);
    let status = |needle: &str| {
        let text = s.files()[0].text();
        let from = offset(&s, needle);
        let line = text[from as usize..].split('\n').next().unwrap_or("");
        let to = from + u32::try_from(line.len()).expect("small");
        let mut here = all
            .iter()
            .filter(|w| from <= w.span.start && w.span.end <= to);
        here.next().map(|w| w.status)
    };
    assert_eq!(status("spot gate"), Some(Status::Good));
    assert_eq!(status("spot platform"), Some(Status::Unclear));
}

#[test]
fn completion_within_hops_offers_whole_ends_and_never_the_wrong_way() {
    let text = "station hill {\n    chain out on 145 MHz transmit {\n        transmitter 5 W carrier\n        antenna 2 dBi\n    }\n}\nstation car {\n    chain hear on 145 MHz receive {\n        antenna 2 dBi\n        receiver -110 dBm for 12 dB sinad\n    }\n}\nlink l {\n    hop ";
    let offered = |typed: &str| -> Vec<String> {
        let text = format!("{text}{typed}");
        let s = of_text(&text);
        let at = u32::try_from(text.len()).expect("small");
        let all = completion(&s, Doc::File(0), at, &Config::default());
        all.into_iter().map(|c| c.label).collect()
    };
    assert_eq!(offered(""), ["out of hill"]);
    assert_eq!(offered("out "), ["of"]);
    assert_eq!(offered("out of "), ["hill"]);
    assert_eq!(offered("out of hill "), ["to"]);
    assert_eq!(offered("out of hill to "), ["hear of car"]);
    assert_eq!(offered("out of hill to hear of "), ["car"]);
    assert_eq!(offered("out of hill to hear of car "), [""; 0]);
}
