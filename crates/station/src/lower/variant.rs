//! `variant NAME of STATION { … }`: which lines change what. The figures themselves are read where
//! the station is known, see [`crate::variant`].

use downlead_base::{Diagnostic, codes};
use downlead_syntax::{AtomKind, Stmt};

use super::head::{declared, no_keyword};
use crate::cx::{Cur, Cx};
use crate::keywords::{Context, keyword};
use crate::model::{Change, Name, PartKind, Passed, Variant};
use crate::quals::missing;

const EXAMPLE: &str = "variant short-run of hill { M1 30 m }";

pub(super) fn variant<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, cur: &mut Cur<'a>) -> Option<Variant> {
    let name = declared(cx, cur, "a variant", EXAMPLE)?;
    if !cur.eat(cx, "of") {
        missing(cx, cur, "`of` and the station follow", EXAMPLE);
        return None;
    }
    let Some(of) = cur.name(cx) else {
        missing(cx, cur, "the station follows", EXAMPLE);
        return None;
    };
    let title = cur.string(cx);
    if !cur.done() {
        cur.unexpected(cx, "a variant's head", &[]);
    }
    let Some(block) = stmt.block() else {
        missing(cx, cur, "a variant has a block", EXAMPLE);
        return None;
    };
    let mut changes = Vec::new();
    for s in block.iter() {
        changes.extend(change(cx, s));
    }
    Some(Variant {
        name,
        title,
        of,
        changes: changes.into(),
    })
}

fn change<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) -> Option<Change> {
    let Some(word) = s.keyword() else {
        no_keyword(cx, s, Context::Variant);
        return None;
    };
    if s.is_broken() {
        return None;
    }
    let loc = cx.loc(s.head_span());
    let mut cur = Cur::new(s, s.groups().next().unwrap_or(&[]));
    cur.i = 1;
    match word {
        "take" => {
            let Some(tag) = cur.name(cx) else {
                missing(cx, &cur, "the tag of a part follows", "take IS1");
                return None;
            };
            if !cur.done() {
                cur.unexpected(cx, "`take`", &[]);
            }
            Some(Change::Take { tag, loc })
        }
        "put" => put(cx, s, &mut cur),
        w if PartKind::from_word(w).is_some() => {
            files(cx, s);
            let Some(tag) = cur
                .name(cx)
                .filter(|_| cur.peek().is_some() || s.block().is_some())
            else {
                let example = format!("{w} {}9 …", PartKind::from_word(w)?.tag());
                missing(cx, &cur, "a new part has a tag and its figures", &example);
                return None;
            };
            Some(Change::New { tag, loc })
        }
        w if keyword(w).is_some_and(|k| k.contexts.iter().any(is_of_station)) => {
            not_a_figure(cx, s, w);
            None
        }
        w => {
            files(cx, s);
            if cur.peek().is_none() && s.block().is_none() {
                missing(cx, &cur, "the figures follow the tag", "TX1 28 W ± 5 %");
                return None;
            }
            let at = cx.loc(s.atoms().first()?.span);
            Some(Change::Figures {
                part: Passed::of(w, at),
                loc,
            })
        }
    }
}

/// Whether a word that begins a line there could be taken for a line of a variant.
fn is_of_station(c: &Context) -> bool {
    matches!(c, Context::Top | Context::Station | Context::Chain)
}

fn not_a_figure<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, word: &str) {
    let Some(first) = s.atoms().first() else {
        return;
    };
    let (message, help) = match word {
        "variant" => (
            "A variant has no variants of its own.".to_owned(),
            "Write a second variant of the station at the left margin.",
        ),
        "limit" | "licence" | "rules" | "under" => (
            format!(
                "A variant cannot change `{word}`: what is proposed is judged by the same paper as the station."
            ),
            "To try another paper, copy the station.",
        ),
        "read" | "readings" | "expect" => (
            format!("A variant has no `{word}`: nothing was read on a station that is not built."),
            "Readings and expectations of the station are left out of its variants.",
        ),
        _ => (
            format!(
                "A variant cannot change `{word}`, only figures of parts and which parts a chain has."
            ),
            "What can stand here: the tag of a part with its new figures, `take TAG`, `put TAG after PART in CHAIN`, or a new part.",
        ),
    };
    let d = Diagnostic::new(&codes::VARIANT_NOT_A_FIGURE, cx.loc(first.span), message)
        .at("not in a variant")
        .help(help);
    cx.push(d);
}

fn put<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, cur: &mut Cur<'a>) -> Option<Change> {
    const PUT: &str = "put F9 after DU1.low in talk-in-2m";
    let loc = cx.loc(s.head_span());
    let passed = |n: Name| Passed::of(&n.text, n.loc);
    let Some(part) = cur.name(cx) else {
        missing(cx, cur, "the tag of a part follows", PUT);
        return None;
    };
    if !cur.eat(cx, "after") {
        missing(cx, cur, "`after` and the part before it follow", PUT);
        return None;
    }
    let Some(after) = cur.name(cx) else {
        missing(cx, cur, "the part before it follows", PUT);
        return None;
    };
    if !cur.eat(cx, "in") {
        missing(cx, cur, "`in` and the chains follow", PUT);
        return None;
    }
    let mut chains = Vec::new();
    for (n, g) in s.groups().enumerate() {
        let mut c = Cur::new(s, g);
        if n == 0 {
            c.i = cur.i;
        }
        match c.name(cx) {
            Some(name) => chains.push(name),
            None => {
                missing(cx, &c, "a chain follows", PUT);
                return None;
            }
        }
        if !c.done() {
            c.unexpected(cx, "`put`", &[]);
            return None;
        }
    }
    Some(Change::Put {
        part: passed(part),
        after: passed(after),
        chains: chains.into(),
        loc,
    })
}

/// Network files that a line names are read with the station's own.
fn files<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) {
    for pair in s.atoms().windows(2) {
        if pair[0].kind == AtomKind::Word
            && cx.text(pair[0].span) == "from"
            && let Some(path) = s.string(pair[1])
        {
            cx.files.push(Name {
                text: path.into(),
                loc: cx.loc(pair[1].span),
            });
        }
    }
    for inner in s.block().into_iter().flat_map(|b| b.iter()) {
        files(cx, inner);
    }
}
