//! Part families.

use downlead_ide::{TypeItem, prepare_types, subtypes, supertypes};

use crate::case::Case;

fn name(i: &TypeItem) -> String {
    format!("{} ({:?}, {})", i.name, i.kind, i.detail)
}

#[test]
fn a_part_and_its_cable() {
    let c = Case::hill(
        "        M1\n        A1\n        limit",
        "        M$01\n        A1\n        limit",
    );
    let part = prepare_types(&c.s, c.doc, c.cursor()).unwrap();
    assert_eq!(name(&part), "M1 (Part, run M1 46 m of club-foam, mast)");
    let above = supertypes(&c.s, part.focus);
    assert_eq!(above.len(), 1);
    assert_eq!(
        name(&above[0]),
        "club-foam (Cable, cable club-foam \"seven-eighths foam\")"
    );
    assert_eq!(c.show(above[0].focus), "cables.downlead:1 club-foam");
    assert_eq!(subtypes(&c.s, above[0].focus), std::slice::from_ref(&part));
    assert_eq!(subtypes(&c.s, part.focus), []);
    assert_eq!(supertypes(&c.s, above[0].focus), []);
}

#[test]
fn devices_of_the_file_and_parts_of_nothing() {
    let text = "device iso \"isolator\" {\n    loss 0.5 dB\n}\nstation s {\n    isolator IS1 of iso\n    isolator IS2 of iso, sheet \"x\"\n    pad P1 1 dB\n    chain c on 145 MHz {\n        transmitter 5 W\n        IS1\n        P$01\n        load\n    }\n}\n";
    let c = Case::new(text);
    let pad = prepare_types(&c.s, c.doc, c.cursor()).unwrap();
    assert_eq!(pad.name, "P1");
    assert_eq!(supertypes(&c.s, pad.focus), []);
    let at = |word: &str, by: usize| u32::try_from(c.text().find(word).unwrap() + by).unwrap();
    let device = prepare_types(&c.s, c.doc, at("device iso", 8)).unwrap();
    assert_eq!(name(&device), "iso (Device, device iso \"isolator\")");
    let parts: Vec<String> = subtypes(&c.s, device.focus)
        .iter()
        .map(|p| p.name.clone())
        .collect();
    assert_eq!(parts, ["IS1", "IS2"]);
    assert_eq!(prepare_types(&c.s, c.doc, at("chain c", 6)), None);
    assert_eq!(prepare_types(&c.s, c.doc, 100_000), None);
}
