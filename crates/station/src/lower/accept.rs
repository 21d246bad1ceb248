//! `accept CODE "reason" until DATE`, in any block: which finding of the line above is accepted.

use downlead_base::{CODES, Diagnostic, Span, code_named, codes};
use downlead_syntax::{AtomKind, Item, Stmt, Stmts};

use crate::cx::{Cur, Cx, nearest};
use crate::model::{Accept, Covers, acceptable};
use crate::quals::missing;

const WORD: &str = "accept";
const EXAMPLE: &str = "accept limit-cannot-tell \"the sweep of A1 is booked\" until 2027-03-01";

/// The acceptances of an item, and where they stand.
#[derive(Default)]
pub(super) struct Found {
    pub(super) accepts: Vec<Accept>,
    pub(super) spans: Vec<Span>,
}

/// Reads all acceptances of an item.
pub(super) fn accepts<'a>(cx: &mut Cx<'a>, item: &'a Item) -> Found {
    let mut found = Found::default();
    if item.text().contains(WORD) {
        among(cx, item.statements(), None, &mut found);
    }
    found
}

/// Reads the acceptances among some statements; `above` is the line that opens their block.
fn among<'a>(cx: &mut Cx<'a>, list: Stmts<'a>, mut above: Option<Span>, found: &mut Found) {
    for s in list {
        if s.keyword() == Some(WORD) {
            found.spans.push(s.span());
            let covers = above.map_or(Covers::Above, Covers::Line);
            found.accepts.extend(accept(cx, s, covers));
            continue;
        }
        above = Some(s.head_span());
        if let Some(block) = s.block() {
            among(cx, block.iter(), above, found);
        }
    }
}

fn accept<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, covers: Covers) -> Option<Accept> {
    let mut cur = Cur::new(s, s.atoms());
    cur.i = 1;
    let Some(name) = cur.name(cx) else {
        missing(cx, &cur, "the code of the finding follows", EXAMPLE);
        return None;
    };
    let (mut reason, mut until, mut read) = (None, None, true);
    while let Some(a) = cur.peek() {
        if reason.is_none() && a.kind == AtomKind::Str {
            reason = cur.string(cx);
        } else if until.is_none() && cur.eat(cx, "until") {
            until = cur.date(cx);
            if until.is_none() {
                missing(cx, &cur, "the last day follows `until`", EXAMPLE);
                return None;
            }
        } else {
            cur.unexpected(cx, "an acceptance", &["until 2027-03-01"]);
            read = false;
            break;
        }
    }
    let code = code(cx, &name)?;
    if s.is_broken() || !read {
        return None;
    }
    let what = match (&reason, &until) {
        (None, _) => "the reason follows in quotes",
        (Some(r), _) if !r.contains(char::is_alphanumeric) => "the reason stands in the quotes",
        (_, None) => "`until` and its last day follow: an acceptance without an end is forgotten",
        _ => {
            return Some(Accept {
                code,
                loc: cx.loc(s.head_span()),
                reason: reason?,
                until: until?,
                covers,
            });
        }
    };
    missing(cx, &cur, what, EXAMPLE);
    None
}

/// The code of a finding that can be accepted.
fn code(cx: &mut Cx<'_>, name: &crate::model::Name) -> Option<&'static downlead_base::Code> {
    let d = |message: String| Diagnostic::new(&codes::ACCEPT_REFUSED, name.loc, message);
    let Some(code) = code_named(&name.text) else {
        let all = CODES.iter().filter(|c| acceptable(c)).map(|c| c.id);
        let d = d(format!("`{}` is the code of no finding.", name.text)).at("not known");
        cx.push(match nearest(&name.text, all) {
            Some(n) => {
                d.help(format!("Did you mean `{n}`?"))
                    .fix(format!("write `{n}`"), name.loc, n)
            }
            None => d.help("A finding's code stands in brackets before its message."),
        });
        return None;
    };
    if acceptable(code) {
        return Some(code);
    }
    let why = match code.severity {
        downlead_base::Severity::Error => {
            "an error is corrected, and a limit that is exceeded stays exceeded."
        }
        _ => "it is about an acceptance.",
    };
    cx.push(
        d(format!("`{}` cannot be accepted: {why}", name.text))
            .at("cannot be accepted")
            .help("Accepted can be warnings and notes, which leave the result as it is."),
    );
    None
}
