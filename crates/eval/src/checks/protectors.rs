//! Surge protectors: what stands between them and the main run is in front of them.

use downlead_base::{Diagnostic, Edit, Fix, Loc, codes};
use downlead_station::model::{Direction, Name, Part, PartKind};

use crate::walk::Stop;

/// A part on a chain: with its port and its line.
type On<'m> = (&'m Part, Option<&'m Name>, Loc);

/// What a surge harms and what costs more than a protector. Remote tuners, preamplifiers at the
/// mast head and relays stand behind the run, and are not meant.
fn is_protected(kind: PartKind) -> bool {
    use PartKind::*;
    matches!(
        kind,
        Duplexer
            | Diplexer
            | Combiner
            | Isolator
            | Circulator
            | Filter
            | Meter
            | Tuner
            | Amplifier
            | Preamplifier
    )
}

/// A surge comes down the run: whatever it meets before the protector is not protected.
pub(super) fn protectors(stops: &[Stop<'_>], direction: Direction, out: &mut Vec<Diagnostic>) {
    let mut parts: Vec<Option<On<'_>>> = stops
        .iter()
        .filter_map(|s| match s {
            Stop::Part {
                part, port, loc, ..
            } => Some(Some((*part, *port, *loc))),
            Stop::Gap => Some(None),
            Stop::Node(..) => None,
        })
        .collect();
    if direction == Direction::Receive {
        parts.reverse();
    }
    // from the radio to the mast: the last protector, and what followed it
    let mut last: Option<(On<'_>, Vec<On<'_>>)> = None;
    // told only if no other protector follows further out
    let mut found = Vec::new();
    for p in parts {
        let Some(on) = p else {
            last = None;
            found.clear();
            continue;
        };
        match on.0.kind {
            PartKind::Protector => {
                found.clear();
                last = Some((on, Vec::new()));
            }
            PartKind::Run => {
                if let Some((protector, behind)) = last.take() {
                    let exposed = behind.iter().enumerate();
                    found.extend(
                        exposed
                            .filter(|(_, b)| is_protected(b.0.kind))
                            .map(|(i, b)| finding(protector, *b, on, i == 0)),
                    );
                }
            }
            _ => {
                if let Some((_, behind)) = &mut last {
                    behind.push(on);
                }
            }
        }
    }
    out.append(&mut found);
}

fn name(p: &Part) -> String {
    p.tag.as_ref().map_or_else(
        || format!("the {}", p.kind.word()),
        |t| format!("`{}`", t.text),
    )
}

fn finding(protector: On<'_>, part: On<'_>, run: On<'_>, neighbours: bool) -> Diagnostic {
    let mut d = Diagnostic::new(
        &codes::PROTECTOR_BEHIND,
        part.2,
        format!(
            "{} stands between {} and {}: a surge that comes down the run meets it before the protector.",
            downlead_station::capital(&name(part.0)),
            name(protector.0),
            name(run.0)
        ),
    )
    .at("not protected")
    .also(protector.2, "the protector")
    .help("Put the protector where the run comes in, next to the run.");
    if neighbours
        && let (Some(a), Some(b)) = (written(protector), written(part))
        && protector.2 != protector.0.loc
        && part.2 != part.0.loc
    {
        d.fixes.push(Fix {
            title: format!("let `{a}` and `{b}` change places"),
            edits: vec![
                Edit {
                    loc: protector.2,
                    text: b,
                },
                Edit {
                    loc: part.2,
                    text: a,
                },
            ],
            preferred: false,
        });
    }
    d
}

/// The line of a chain that takes a part by its tag.
fn written((part, port, _): On<'_>) -> Option<String> {
    let tag = part.tag.as_ref()?;
    Some(match port {
        Some(p) => format!("{}.{}", tag.text, p.text),
        None => tag.text.to_string(),
    })
}
