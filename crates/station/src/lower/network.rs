//! `from "f1.s2p"`: figures of a part that stand in a network file.

use downlead_base::{Diagnostic, codes};
use downlead_quantity::{Dim, Measure, Shape, Tolerance};
use downlead_syntax::{AtomKind, Stmt};

use crate::cx::{Cur, Cx};
use crate::model::{Basis, Figure, Meta, Name, NetworkFile, When};
use crate::quals::Quals;

/// How many ports the file is to have.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Ports {
    One,
    Two,
}

impl Ports {
    fn example(self) -> &'static str {
        match self {
            Ports::One => "a1.s1p",
            Ports::Two => "f1.s2p",
        }
    }
}

/// A network file while its words are gathered.
#[derive(Default)]
pub(super) struct Draft {
    path: Option<Name>,
    accuracy: Measure,
    reversed: bool,
    broken: bool,
}

impl Draft {
    /// Whether the file's path is known.
    pub(super) fn has_path(&self) -> bool {
        self.path.is_some()
    }

    /// `reversed` stood before the file.
    pub(super) fn reverse(&mut self) {
        self.reversed = true;
    }

    /// Whether there is a `from` whose path or accuracy could not be read.
    pub(super) fn is_broken(&self) -> bool {
        self.broken
    }

    /// Reads `from "FILE"`, or what may follow it: `reversed`, `accuracy 0.1 dB`. False if none
    /// of them stands at the cursor.
    pub(super) fn take<'a>(&mut self, cx: &mut Cx<'a>, cur: &mut Cur<'a>, ports: Ports) -> bool {
        if self.path.is_none() {
            if !cur.eat(cx, "from") {
                return ports == Ports::Two && self.too_early(cx, cur);
            }
            self.path = super::session::file(cx, cur, ports.example());
            self.broken = self.path.is_none();
            return true;
        }
        if ports == Ports::One {
            return false;
        }
        if cur.eat(cx, "reversed") {
            self.reversed = true;
            return true;
        }
        if cur.eat(cx, "accuracy") {
            match accuracy(cx, cur) {
                Some(a) => self.accuracy = a,
                None => self.broken = true,
            }
            return true;
        }
        false
    }

    /// What is said of a file stands without one.
    fn too_early<'a>(&self, cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> bool {
        let loc = cx.loc(cur.next_span());
        let Some(word) = cur
            .word(cx)
            .filter(|w| ["reversed", "accuracy"].contains(w))
        else {
            return false;
        };
        cur.i += 1;
        cur.val(cx);
        // the path of a broken `from` is a finding already
        if self.broken {
            return true;
        }
        let mut d = Diagnostic::new(
            &codes::UNEXPECTED_WORD,
            loc,
            format!("`{word}` is said of a network file, and none stands before it."),
        )
        .at("of which file?");
        d = if word == "accuracy" {
            d.help("A stated figure is followed by its tolerance: `0.3 dB ± 0.1 dB`.")
                .help("Of a file: `from \"f1.s2p\", accuracy 0.1 dB`.")
        } else {
            d.help("Written for example `from \"f1.s2p\" reversed`.")
                .help("Of a part with stated figures it is said of an isolator, circulator, coupler, amplifier or preamplifier.")
        };
        cx.push(d);
        true
    }

    /// The file with what the statement says about it.
    pub(super) fn finish(self, q: &Quals) -> Option<NetworkFile> {
        let path = self.path?;
        Some(NetworkFile {
            figure: Figure {
                when: if q.on.is_empty() {
                    When::Always
                } else {
                    When::Bands(q.on.clone().into())
                },
                value: self.accuracy,
                meta: about(&path, q.meta.clone()).into(),
                loc: path.loc,
                percent: false,
            },
            path,
            reversed: self.reversed,
        })
    }
}

/// What is said about figures of a file: it was read, unless the text says otherwise.
pub(super) fn about(path: &Name, meta: Meta) -> Meta {
    let file = format!("file {}", path.text);
    Meta {
        basis: match meta.basis {
            Basis::Stated => Basis::Read,
            b => b,
        },
        source: Some(match &meta.source {
            Some(s) => format!("{file}, {s}").into(),
            None => file.into(),
        }),
        ..meta
    }
}

/// `0.1 dB`, a half-width, or `0.1 dB k 2`: a loss of 0 dB with that uncertainty.
pub(super) fn accuracy<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> Option<Measure> {
    const EXAMPLE: &str = "accuracy 0.1 dB";
    let v = cur.need(cx, "the accuracy of the loss follows", EXAMPLE)?;
    let plain = crate::cx::Val {
        coverage: None,
        ..v
    };
    let plain = cx.alone(&plain, "an accuracy");
    let m = cx.measure(&plain, Dim::Decibel, "the accuracy of a loss", EXAMPLE)?;
    if m.value < 0.0 {
        cx.push(
            Diagnostic::new(
                &codes::IMPOSSIBLE_VALUE,
                v.loc,
                "An accuracy is a half-width and cannot be negative.",
            )
            .at("negative"),
        );
        return None;
    }
    let shape = v
        .coverage
        .filter(|k| *k > 0.0)
        .map_or(Shape::Rectangular, Shape::Coverage);
    Some(
        Tolerance {
            half_width: m.value,
            shape,
        }
        .about(0.0),
    )
}

/// Whether `from` and a path stand at the cursor: a `from` without one may be a name.
pub(super) fn begins<'a>(cx: &Cx<'a>, cur: &Cur<'a>) -> bool {
    cur.word(cx) == Some("from")
        && cur
            .atoms
            .get(cur.i + 1)
            .is_some_and(|a| a.kind == AtomKind::Str)
}

/// Says that a part cannot be a network file, if `from` stands at the cursor; passes over it.
pub(super) fn refused<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>, why: &str, help: &str) -> bool {
    if !begins(cx, cur) {
        return false;
    }
    let loc = cx.loc(cur.next_span());
    cur.i += 2;
    cx.push(
        Diagnostic::new(&codes::UNEXPECTED_WORD, loc, why)
            .at("not from a file")
            .help(help),
    );
    true
}

/// A statement whose first `skip` words are followed by `from "FILE"`, with the pass bands of a
/// leg.
pub(super) fn statement<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    skip: usize,
    what: &str,
    ports: Ports,
    own: super::device::Own<'_, 'a>,
) -> Option<NetworkFile> {
    let mut draft = Draft::default();
    let mut q = Quals::default();
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        if n == 0 {
            cur.i = skip;
        }
        while !cur.done() {
            if !own(cx, &mut cur) && !draft.take(cx, &mut cur, ports) && !q.take(cx, &mut cur) {
                let own: &[&str] = match ports {
                    Ports::One => &[],
                    Ports::Two => &["reversed", "accuracy", "passes"],
                };
                q.unexpected(cx, &cur, what, own);
                break;
            }
        }
    }
    if draft.broken {
        return None;
    }
    draft.finish(&q)
}

/// Points out a figure that holds where a file says the same: the file counts.
pub(super) fn twice(cx: &mut Cx<'_>, what: &str, files: &[NetworkFile], figures: &[Figure]) {
    let meet = |a: &When, b: &When| match (a, b) {
        (When::Always, When::Always) => true,
        (When::Bands(x), When::Bands(y)) => x.iter().any(|n| y.iter().any(|m| n.text == m.text)),
        _ => false,
    };
    for f in files {
        let Some(other) = figures.iter().find(|g| meet(&g.when, &f.figure.when)) else {
            continue;
        };
        cx.push(
            Diagnostic::new(
                &codes::FIGURE_TWICE,
                other.loc,
                format!(
                    "{what} is given twice, here and by `{}`; the file is used.",
                    f.path.text
                ),
            )
            .at("not used")
            .also(f.path.loc, "the file")
            .help("Remove one of them, or say with `on` on which band each holds."),
        );
    }
}
