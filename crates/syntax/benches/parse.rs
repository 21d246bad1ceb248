//! Speed of the parser compared with a TOML parser and a tree-sitter grammar of TOML, in one run.
//!
//! The TOML text has the same content and the same number of bytes. `toml` is measured twice: into
//! `DeTable` (borrowed values with spans, its fastest way to a tree) and into `Table`.

use std::hint::black_box;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use downlead_base::Span;
use downlead_syntax::{File, format, tokens};

mod generate;

fn whole_file(c: &mut Criterion) {
    let clean = generate::station_file(10_000, 0);
    let broken = generate::station_file(10_000, 50);
    let toml = generate::toml_file(clean.len());
    assert_eq!(File::parse(clean.as_str()).diagnostics().count(), 0);
    assert!(File::parse(broken.as_str()).diagnostics().count() > 100);

    let mut group = c.benchmark_group("whole-file");
    group.throughput(Throughput::Bytes(clean.len() as u64));
    group.bench_function("downlead lex only", |b| {
        b.iter(|| tokens(black_box(&clean)).count())
    });
    group.bench_function("downlead clean", |b| {
        b.iter(|| File::parse(black_box(clean.as_str())))
    });
    group.bench_function("downlead format", |b| b.iter(|| format(black_box(&clean))));
    group.throughput(Throughput::Bytes(broken.len() as u64));
    group.bench_function("downlead, an error every 50 lines", |b| {
        b.iter(|| File::parse(black_box(broken.as_str())))
    });
    group.throughput(Throughput::Bytes(toml.len() as u64));
    group.bench_function("toml DeTable", |b| {
        b.iter(|| toml::de::DeTable::parse(black_box(&toml)).expect("TOML"))
    });
    group.bench_function("toml Table", |b| {
        b.iter(|| black_box(&toml).parse::<toml::Table>().expect("TOML"))
    });
    group.bench_function("tree-sitter TOML", |b| {
        let mut parser = tree_sitter::Parser::new();
        parser
            .set_language(&tree_sitter_toml_ng::LANGUAGE.into())
            .expect("language");
        b.iter(|| parser.parse(black_box(&toml), None).expect("tree"));
    });
    group.finish();
}

fn one_edit(c: &mut Criterion) {
    let clean = generate::station_file(10_000, 0);
    let file = File::parse(clean.as_str());
    let line = clean[clean.len() / 2..].find("run M1 ").expect("a run") + clean.len() / 2 + 7;
    let place = Span::new(line as u32, line as u32 + 1);
    c.bench_function("edit/one digit in 10,000 lines", |b| {
        b.iter(|| black_box(&file).edit(black_box(place), "7"))
    });
    c.bench_function("edit/and the whole text again", |b| {
        b.iter(|| black_box(&file).edit(black_box(place), "7").text().len());
    });
}

criterion_group!(benches, whole_file, one_edit);
criterion_main!(benches);
