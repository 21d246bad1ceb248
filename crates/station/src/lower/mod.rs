//! Lowering: from the uniform tree of one item to what it means.

mod accept;
mod band;
mod band_slip;
mod cable;
mod cable_loss;
mod chain;
pub(crate) mod check;
mod connector;
mod device;
mod digits;
mod drift;
mod ends;
mod exposure;
mod form;
mod head;
mod instrument;
mod isolation;
mod kinds;
mod law;
mod leg;
mod line;
mod line_twice;
mod link;
mod network;
mod off_band;
mod part;
mod pattern;
mod rating;
mod recalled;
mod rules;
mod session;
mod site;
mod station;
mod unused;
mod variant;

use downlead_base::{Diagnostic, codes};
use downlead_syntax::{Item, Stmt};

use crate::cx::{Cur, Cx, Lets, Val};
use crate::keywords::{Context, keyword};
use crate::model::{Accept, Meaning, Name};
use crate::quals::missing;
use band::band;
pub use check::Mention;
use head::{declared, first_group, no_keyword, unknown_statement};
use instrument::instrument;

/// What lowering one item gives.
#[derive(Clone, Debug)]
pub struct Lowered {
    /// Its meaning.
    pub meaning: Meaning,
    /// What is wrong in it.
    pub diagnostics: Vec<Diagnostic>,
    /// Other files whose contents it takes part of (readings, networks), as written.
    pub files: Box<[Name]>,
    /// The names of definitions it uses, in the order of the text.
    pub names: Box<[Mention]>,
    /// The findings it accepts.
    pub accepts: Box<[Accept]>,
    /// Number of this lowering in its cache; 0 outside one.
    pub stamp: u64,
}

/// Lowers one item with the named values of its scope.
#[must_use]
pub fn lower(item: &Item, lets: &Lets, built_in: bool) -> Lowered {
    let mut cx = Cx::new(item, lets, built_in);
    let accept::Found { accepts, spans } = accept::accepts(&mut cx, item);
    // everything else reads the text without them
    let without = (!spans.is_empty())
        .then(|| downlead_syntax::without(item, &spans))
        .flatten();
    let item = without.as_ref().unwrap_or(item);
    let mut statements = item.statements();
    if !built_in && let Some(stmt) = item.statement() {
        cx.strays(stmt);
    }
    let meaning = match statements.next() {
        Some(stmt) => meaning(&mut cx, stmt),
        None => Meaning::Nothing,
    };
    if !built_in && let Some(stmt) = item.statement() {
        digits::too_fine(&mut cx, stmt);
    }
    if let Some(stmt) = item.statement() {
        head::without_blank(&mut cx, stmt);
    }
    for s in statements {
        // a line of its own inside no block: the syntax has said so
        if item.text()[..s.head_span().start as usize]
            .trim_end_matches([' ', '\t'])
            .ends_with(['\n', '\r'])
        {
            continue;
        }
        let Some(word) = s.keyword() else {
            no_keyword(&mut cx, s, Context::Top);
            continue;
        };
        if keyword(word).is_some_and(|k| k.contexts.contains(&Context::Top)) {
            let loc = cx.loc(s.head_span());
            cx.push(
                Diagnostic::new(&codes::MISPLACED_STATEMENT, loc, format!("`{word}` begins something new and stands at the left margin, on a line of its own."))
                    .at("indented, or after something else"),
            );
        } else {
            unknown_statement(&mut cx, s, word, Context::Top);
        }
    }
    // the library says nothing twice: a test holds it to the table
    let names = if built_in {
        Box::default()
    } else {
        check::check(&mut cx, item)
    };
    if !built_in
        && let Some(stmt) = item.statement()
        && matches!(stmt.keyword(), Some("station" | "chain"))
    {
        line_twice::check(&mut cx, stmt);
    }
    let names = with_senders(&meaning, names);
    cx.diags.shrink_to_fit();
    Lowered {
        meaning,
        diagnostics: cx.diags,
        files: cx.files.into(),
        names,
        accepts: accepts.into(),
        stamp: 0,
    }
}

/// Adds the stations that send in the hops of a link: `to` makes one value of such a name and the next, and
/// the table's reader tells only whole atoms.
fn with_senders(meaning: &Meaning, names: Box<[Mention]>) -> Box<[Mention]> {
    let Meaning::Link(l) = meaning else {
        return names;
    };
    let mut all = names.into_vec();
    all.extend(l.hops.iter().map(|h| Mention {
        kind: crate::forms::NameKind::Station,
        loc: h.from.station.loc,
    }));
    all.sort_by_key(|m| m.loc.span.start);
    all.into()
}

/// Evaluates a `let`. `None` if it is none or has no value.
#[must_use]
pub fn lower_let(item: &Item, lets: &Lets) -> (Option<(Name, Val)>, Vec<Diagnostic>) {
    let mut cx = Cx::new(item, lets, false);
    let Some(stmt) = item.statement() else {
        return (None, Vec::new());
    };
    let mut cur = Cur::new(stmt, stmt.atoms());
    cur.i = 1;
    let out = let_value(&mut cx, &mut cur);
    (out, cx.diags)
}

fn let_value<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> Option<(Name, Val)> {
    let name = declared(cx, cur, "a named value", "let mast = 30 m")?;
    let had = cx.diags.len();
    if cur
        .peek()
        .is_some_and(|a| a.kind == downlead_syntax::AtomKind::Equals)
    {
        cur.i += 1;
    }
    match cur.val(cx) {
        Some(v) => {
            if !cur.done() {
                cur.unexpected(cx, "a named value", &[]);
            }
            Some((name, v))
        }
        None => {
            let unknown = cur
                .peek()
                .filter(|a| a.kind == downlead_syntax::AtomKind::Word)
                .filter(|_| cx.diags.len() == had);
            if let Some(a) = unknown {
                let word = cx.text(a.span).to_owned();
                let itself = word == *name.text;
                let message = match itself {
                    true => format!("`{word}` cannot be its own value."),
                    false => format!("`{word}` is not a named value here."),
                };
                cx.push(
                    Diagnostic::new(&codes::UNKNOWN_NAME, cx.loc(a.span), message)
                        .at(if itself { "itself" } else { "not defined" })
                        .help("A value may use names that are defined above it, so none can use itself in a circle."),
                );
            } else if cx.diags.len() == had {
                missing(
                    cx,
                    cur,
                    "a named value needs `=` and its value",
                    "let mast = 30 m",
                );
            }
            None
        }
    }
}

fn meaning<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>) -> Meaning {
    let Some(word) = stmt.keyword() else {
        return Meaning::Nothing;
    };
    let mut cur = Cur::new(stmt, first_group(stmt));
    cur.i = 1;
    // heads are not lists, but for the bands of a chain and the arithmetic of a named value
    if !matches!(word, "chain" | "let")
        && keyword(word).is_some_and(|k| k.contexts.contains(&Context::Top))
        && let Some(g) = stmt.groups().nth(1)
    {
        Cur::new(stmt, g).unexpected(cx, &format!("the head of `{word}`"), &[]);
    }
    match word {
        "use" => {
            let loc = cur.peek().map(|a| cx.loc(a.span));
            match loc.zip(cur.string(cx)) {
                Some((loc, text)) => {
                    if !cur.done() {
                        cur.unexpected(cx, "`use`", &[]);
                    }
                    Meaning::Use(Name { text, loc })
                }
                None if unquoted(cx, &cur) => Meaning::Nothing,
                None => {
                    missing(
                        cx,
                        &cur,
                        "the path follows in quotes",
                        "use \"cables.downlead\"",
                    );
                    Meaning::Nothing
                }
            }
        }
        "band" => band(cx, stmt, &mut cur).map_or(Meaning::Nothing, Meaning::Band),
        "let" => {
            // the value itself is evaluated before everything else, see `lower_let`
            cur.name(cx).map_or(Meaning::Nothing, Meaning::Let)
        }
        "cable" => cable::cable(cx, stmt, &mut cur)
            .map_or(Meaning::Nothing, |c| Meaning::Cable(Box::new(c))),
        "connector" => connector::connector(cx, stmt, &mut cur)
            .map_or(Meaning::Nothing, |c| Meaning::Connector(Box::new(c))),
        "device" => device::class(cx, stmt, &mut cur)
            .map_or(Meaning::Nothing, |c| Meaning::Device(Box::new(c))),
        "instrument" => instrument(cx, stmt, &mut cur)
            .map_or(Meaning::Nothing, |c| Meaning::Instrument(Box::new(c))),
        "session" => session::session(cx, stmt, &mut cur)
            .map_or(Meaning::Nothing, |s| Meaning::Session(Box::new(s))),
        "licence" | "rules" => rules::rules(cx, stmt, &mut cur, word == "licence")
            .map_or(Meaning::Nothing, |r| Meaning::Rules(Box::new(r))),
        "link" => {
            link::link(cx, stmt, &mut cur).map_or(Meaning::Nothing, |l| Meaning::Link(Box::new(l)))
        }
        "station" => station::station(cx, stmt, &mut cur)
            .map_or(Meaning::Nothing, |s| Meaning::Station(Box::new(s))),
        "variant" => variant::variant(cx, stmt, &mut cur)
            .map_or(Meaning::Nothing, |v| Meaning::Variant(Box::new(v))),
        "chain" => chain::chain(cx, stmt, &mut cur, &[])
            .map_or(Meaning::Nothing, |c| Meaning::Chain(Box::new(c))),
        _ => {
            unknown_statement(cx, stmt, word, Context::Top);
            Meaning::Nothing
        }
    }
}

/// `use cables.downlead`: the path without its quotes. True if it has been reported.
fn unquoted<'a>(cx: &mut Cx<'a>, cur: &Cur<'a>) -> bool {
    let (Some(first), Some(last)) = (cur.atoms.get(cur.i), cur.atoms.last()) else {
        return false;
    };
    let loc = cx.loc(first.span.join(last.span));
    let path = cx.text(loc.span);
    if cur.stmt.is_broken() || path.contains(['"', ' ']) {
        return false;
    }
    cx.push(
        Diagnostic::new(&codes::MISSING_VALUE, loc, "The path follows in quotes.")
            .at("without quotes")
            .help(format!("Written so: `use \"{path}\"`."))
            .fix(format!("write `\"{path}\"`"), loc, format!("\"{path}\""))
            .preferred(),
    );
    true
}
