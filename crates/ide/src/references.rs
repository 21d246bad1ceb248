//! All places of a name, across files.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_syntax::Placed;

use crate::names::{Class, NameKind, Piece};
use crate::resolve::{Def, Named, global, local, name_at, pieces_of, port, resolve};
use crate::view::{Doc, Place, tree};

/// One occurrence.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Occurrence {
    pub(crate) place: Place,
    /// The name is given here.
    pub(crate) def: bool,
}

/// All places of the name at an offset.
#[must_use]
pub fn references(s: &Snapshot, doc: Doc, offset: u32, declaration: bool) -> Vec<Place> {
    let Some((placed, n)) = name_at(s, doc, offset) else {
        return Vec::new();
    };
    occurrences(s, doc, placed, &n)
        .into_iter()
        .filter(|o| declaration || !o.def)
        .map(|o| o.place)
        .collect()
}

/// All occurrences of a name, sorted by document and place.
pub(crate) fn occurrences(s: &Snapshot, doc: Doc, placed: &Placed, n: &Named) -> Vec<Occurrence> {
    let mut out = match n.kind {
        NameKind::Port => ports(s, doc, placed, n),
        NameKind::Tag | NameKind::Place => within(s, doc, placed, n),
        NameKind::Station | NameKind::Session | NameKind::Chain | NameKind::Branch => {
            vec![Occurrence {
                place: Place { doc, span: n.span },
                def: true,
            }]
        }
        NameKind::Person | NameKind::Family | NameKind::Shared => everywhere(s, n, &mut |_| true),
        _ => match resolve(s, doc, placed, n) {
            Some(d) => {
                let target = d.focus();
                everywhere(s, n, &mut |doc| {
                    global(s, doc, n.kind, &n.text).is_some_and(|x| x.focus() == target)
                })
            }
            None => within(s, doc, placed, n),
        },
    };
    out.sort();
    out.dedup();
    out
}

fn matching<'a>(
    item: &'a downlead_syntax::Item,
    list: &'a [Piece],
    n: &'a Named,
) -> impl Iterator<Item = (Span, bool)> + 'a {
    list.iter().filter_map(move |p| match p.class {
        Class::Name(k, def) if k == n.kind && item.slice(p.span) == n.text => Some((p.span, def)),
        _ => None,
    })
}

fn within(s: &Snapshot, doc: Doc, placed: &Placed, n: &Named) -> Vec<Occurrence> {
    let list = pieces_of(s, doc, &placed.item);
    matching(&placed.item, &list, n)
        .map(|(span, def)| Occurrence {
            place: Place {
                doc,
                span: span.shift(placed.start),
            },
            def,
        })
        .collect()
}

/// In all files, and in the library where its own definitions are asked about.
fn everywhere(s: &Snapshot, n: &Named, same: &mut dyn FnMut(Doc) -> bool) -> Vec<Occurrence> {
    let files = (0..s.files().len()).map(Doc::File);
    let library = (0..downlead_station::library().files.len()).map(Doc::Library);
    let mut out = Vec::new();
    for doc in files.chain(library) {
        let Some(t) = tree(s, doc) else { continue };
        // the library's texts name nothing of the files
        if !t.text().contains(n.text.as_str()) || !same(doc) {
            continue;
        }
        if matches!(doc, Doc::Library(_)) && !n.kind.is_global() {
            continue;
        }
        for p in t.items() {
            if !p.item.text().contains(n.text.as_str()) {
                continue;
            }
            let list = pieces_of(s, doc, &p.item);
            out.extend(matching(&p.item, &list, n).map(|(span, def)| Occurrence {
                place: Place {
                    doc,
                    span: span.shift(p.start),
                },
                def,
            }));
        }
    }
    out
}

fn ports(s: &Snapshot, doc: Doc, placed: &Placed, n: &Named) -> Vec<Occurrence> {
    let Some(target) = resolve(s, doc, placed, n).map(|d| d.focus()) else {
        return Vec::new();
    };
    let mut out = vec![Occurrence {
        place: target,
        def: true,
    }];
    for file in 0..s.files().len() {
        let doc = Doc::File(file);
        for p in s.files()[file].tree.items() {
            if !p.item.text().contains(n.text.as_str()) {
                continue;
            }
            let list = pieces_of(s, doc, &p.item);
            for (i, x) in list.iter().enumerate() {
                let Class::Name(NameKind::Port, false) = x.class else {
                    continue;
                };
                if p.item.slice(x.span) != n.text {
                    continue;
                }
                let Some(tag) = i.checked_sub(1).map(|k| &list[k]) else {
                    continue;
                };
                let part: Option<Def<'_>> = local(s, doc, p, NameKind::Tag, p.item.slice(tag.span));
                if part
                    .and_then(|d| port(s, &d, &n.text))
                    .is_some_and(|d| d.focus() == target)
                {
                    out.push(Occurrence {
                        place: Place {
                            doc,
                            span: x.span.shift(p.start),
                        },
                        def: false,
                    });
                }
            }
        }
    }
    out
}
