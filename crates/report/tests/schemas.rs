//! The JSON Schemas that `--schema` prints, byte for byte: programs rely on them.
//!
//! `UPDATE=1 cargo test -p downlead-report --test schemas` rewrites them; the change is then
//! described in the change log.

use std::path::Path;

use downlead_report::shape::paper::{form, materials, site_sheet};
use downlead_report::shape::{bench, card, chain, diff, fit, variants, verify};
use downlead_report::write::json::schema;

fn kept<T: schemars::JsonSchema>(name: &str) {
    let path = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("tests/schema")
        .join(format!("{name}.json"));
    let now = schema::<T>().expect("a schema");
    if std::env::var_os("UPDATE").is_some() {
        std::fs::write(&path, &now).expect("the file can be written");
    }
    let then = std::fs::read_to_string(&path).expect("the schema is kept");
    assert!(now == then, "the schema `{name}` changed");
}

#[test]
fn schemas_stay_as_they_are() {
    kept::<chain::Report>("report");
    kept::<bench::BenchReport>("bench");
    kept::<card::CardFile>("card");
    kept::<fit::FitFile>("fit");
    kept::<verify::Verification>("verify");
    kept::<diff::Diff>("diff");
    kept::<variants::Variants>("compare");
    kept::<site_sheet::SheetFile>("sheet");
    kept::<form::FormFile>("form");
    kept::<materials::MaterialsFile>("materials");
}
