//! The built-in library lowers without a finding, and every entry says what it is.

use downlead_station::library;
use downlead_station::model::Meaning;

#[test]
fn no_findings() {
    let mut wrong = Vec::new();
    for (file, item, low) in &library().items {
        let (name, _) = library().files[*file];
        for d in item.diagnostics().iter().chain(&low.diagnostics) {
            wrong.push(format!("{name}: {} {}", d.code.id, d.message));
        }
    }
    for (name, file) in &library().files {
        wrong.extend(
            file.diagnostics()
                .map(|d| format!("{name}: {} {}", d.code.id, d.message)),
        );
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn adapters_have_two_families() {
    let mut adapters = 0;
    for (.., low) in &library().items {
        if let Meaning::Connector(c) = &low.meaning {
            let (a, b) = c
                .families
                .as_ref()
                .unwrap_or_else(|| panic!("`{}` has no family", c.name.text));
            adapters += usize::from(a != b);
            assert!(c.loss.is_some(), "`{}` has a loss", c.name.text);
        }
    }
    assert!(adapters >= 5);
}
