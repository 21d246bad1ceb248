//! What is wrong with a variant, seen with its station.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_station::model::{Meaning, Name, Variant};
use downlead_station::variant::{Applied, Piece, apply};
use downlead_station::{Env, lower, nearest};
use downlead_syntax::{File, Item};

use crate::unknown::unknown;
use crate::walk;

/// The changed text of the station, if there is the station.
pub(crate) fn applied(item: &Item, v: &Variant, env: &Env) -> Option<Applied> {
    let (base, _) = env.base(&v.of.text)?;
    Some(apply(item, v, base, &env.lets))
}

/// Says what is wrong with a variant: with its lines, and with the station that they give.
pub(crate) fn check(item: &Item, v: &Variant, env: &Env, out: &mut Vec<Diagnostic>) {
    let Some(a) = applied(item, v, env) else {
        out.push(of_nothing(v, env));
        return;
    };
    let wrong = !a.diagnostics.is_empty();
    out.extend(a.diagnostics.iter().cloned());
    let file = File::parse(a.text.clone());
    let Some(changed) = file
        .items()
        .iter()
        .map(|p| &p.item)
        .find(|i| i.statement().is_some())
    else {
        return;
    };
    let low = lower(changed, &env.lets, false);
    for d in changed.diagnostics().iter().chain(&low.diagnostics) {
        out.extend(moved(d, &a.pieces, changed));
    }
    for m in &low.names {
        let Some(p) = piece(m.loc, &a.pieces) else {
            continue;
        };
        let name = Name {
            text: changed.slice(m.loc.span).into(),
            loc: p.from,
        };
        if !env.defines(m.kind, &name.text) {
            out.extend(unknown(m.kind, &name, env));
        }
    }
    // one slip in a line would make the chains wrong too
    if !wrong {
        chains(v, (&low.meaning, env), &a.pieces, out);
    }
}

/// Chains that the changes leave without a beginning, an end or a part.
fn chains(v: &Variant, (now, env): (&Meaning, &Env), pieces: &[Piece], out: &mut Vec<Diagnostic>) {
    let found = |m: &Meaning| {
        let mut out = Vec::new();
        if let Meaning::Station(st) = m {
            for c in &st.chains {
                let stops = walk::walk(&c.steps, Some(st), &mut out);
                walk::shape(c, &stops, walk::direction(c, &stops), env, &mut out);
            }
        }
        out
    };
    let was = env
        .base(&v.of.text)
        .map_or_else(Vec::new, |s| found(&s.1.meaning));
    for d in found(now) {
        if was
            .iter()
            .any(|w| w.code == d.code && w.message == d.message)
        {
            continue;
        }
        let loc = piece(d.primary.loc, pieces).map_or(v.name.loc, |p| p.from);
        let mut said = Diagnostic::new(d.code, loc, d.message.clone()).at("with this variant");
        said.help.clone_from(&d.help);
        out.push(said);
    }
}

fn piece(loc: Loc, pieces: &[Piece]) -> Option<&Piece> {
    let holds = |p: &&Piece| p.at.start <= loc.span.start && loc.span.end <= p.at.end;
    pieces.iter().find(holds)
}

/// A finding in the changed text at the line of the variant that it comes from; none if the station
/// has it by itself.
fn moved(d: &Diagnostic, pieces: &[Piece], changed: &Item) -> Option<Diagnostic> {
    let p = piece(d.primary.loc, pieces)?;
    let mut said = Diagnostic::new(d.code, p.from, d.message.clone());
    said.severity = d.severity;
    said.help.clone_from(&d.help);
    let at = changed.slice(d.primary.loc.span);
    Some(match d.primary.message.is_empty() {
        true => said,
        false => said.at(format!("`{at}`: {}", d.primary.message)),
    })
}

fn of_nothing(v: &Variant, env: &Env) -> Diagnostic {
    let name = &v.of;
    let mut known: Vec<&str> = env.names_of(downlead_station::NameKind::Station);
    known.sort_unstable();
    let d = Diagnostic::new(
        &codes::VARIANT_OF_NOTHING,
        name.loc,
        format!("There is no station `{}`.", name.text),
    )
    .at("not in this file or those it uses");
    if let Some(n) = nearest(&name.text, known.iter().copied()) {
        return d
            .help(format!("Did you mean `{n}`?"))
            .fix(format!("write `{n}`"), name.loc, n);
    }
    match known.is_empty() {
        true => d.help("A variant changes a station: `station hill { … }`."),
        false => d.help(format!("The stations are {}.", known.join(", "))),
    }
}
