//! How a statement begins: its keyword, the name it gives, and what is said where they fail.

use downlead_base::{Diagnostic, Span, codes};
use downlead_syntax::{AtomKind, Stmt};

use crate::cx::{Cur, Cx, nearest};
use crate::keywords::{Context, KEYWORDS, Keyword, begun_in, keyword, keywords_in, meant_in};
use crate::model::{Name, PartKind, Role};
use crate::quals::missing;

pub(super) fn first_group<'a>(stmt: Stmt<'a>) -> &'a [downlead_syntax::Atom] {
    stmt.groups().next().unwrap_or(&[])
}

/// Reports a statement whose first word means nothing there.
/// Whether a word that is no keyword was most likely meant as one of these.
pub(super) fn meant(word: &str, words: &[&str]) -> bool {
    let of_trade = |k: &crate::keywords::Keyword| {
        words.contains(&k.word) && k.forms.iter().any(|f| f.also.contains(&word))
    };
    keyword(word).is_none()
        && (nearest(word, words.iter().copied()).is_some() || KEYWORDS.iter().any(of_trade))
}

pub(super) fn unknown_statement<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, word: &str, context: Context) {
    let Some(atom) = stmt.atoms().first() else {
        return;
    };
    let loc = cx.loc(atom.span);
    if let Some(k) = keyword(word) {
        let places: Vec<&str> = k.contexts.iter().map(|c| c.words()).collect();
        let d = Diagnostic::new(
            &codes::MISPLACED_STATEMENT,
            loc,
            format!(
                "`{word}` has no meaning {}; it stands {}.",
                context.words(),
                places.join(" or ")
            ),
        )
        .at("not here");
        cx.push(d.help(if context == Context::Top {
            "A line inside a block is indented; a line at the left margin begins something new."
                .to_owned()
        } else {
            format!("Written for example `{}`.", k.example())
        }));
        return;
    }
    let allowed: Vec<&str> = keywords_in(context).map(|k| k.word).collect();
    let mut d = Diagnostic::new(
        &codes::UNKNOWN_STATEMENT,
        loc,
        format!("`{word}` is no statement {}.", context.words()),
    )
    .at("not known");
    match meant_in(context, word) {
        Some(n) => {
            d = meant_for(cx, stmt, d, loc, n);
        }
        None if context == Context::Device
            && matches!(word, "tx" | "rx" | "transmit" | "receive") =>
        {
            d = d.help("The legs of a duplexer are named by frequency: `high` is the leg of the higher one of the pair, `low` that of the lower one.");
        }
        None => match &begun_in(context, word)[..] {
            several @ [_, _, ..] if several.len() <= 4 => {
                let names: Vec<String> = several.iter().map(|n| format!("`{n}`")).collect();
                d = d.help(format!("Did you mean {}?", names.join(" or ")));
                for n in several {
                    d = d.fix(format!("write `{n}`"), loc, *n);
                }
            }
            _ => d = d.help(format!("What can stand here: {}.", allowed.join(", "))),
        },
    }
    cx.push(d);
}

/// What to say of a word that was meant for the statement `n`. Of a line without a cable and a loss
/// the word alone would be refused next: it is said, and not offered.
pub(super) fn meant_for<'a>(
    cx: &Cx<'a>,
    stmt: Stmt<'a>,
    d: Diagnostic,
    loc: downlead_base::Loc,
    n: &str,
) -> Diagnostic {
    let line = PartKind::from_word(n).filter(|k| k.role() == Role::Line);
    let whole = stmt.atoms().iter().any(|a| {
        matches!(cx.text(a.span), "of" | "from") || cx.text(a.span).trim_end().ends_with("dB")
    });
    match line {
        Some(k) if !whole && stmt.block().is_none() => d
            .help("Did you mean `run`, the main line, or `jumper`, a short cable between devices?")
            .help(format!(
                "`of` and the cable's name follow the length: `{} 28 m of half-inch-foam`.",
                k.word()
            )),
        _ => d
            .help(format!("Did you mean `{n}`?"))
            .fix(format!("write `{n}`"), loc, n)
            .preferred(),
    }
}

/// Reports a line that does not even begin with a word.
pub(super) fn no_keyword<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, context: Context) {
    if stmt.is_broken() {
        return;
    }
    let loc = cx.loc(stmt.head_span());
    let allowed: Vec<&str> = keywords_in(context).map(|k| k.word).collect();
    cx.push(
        Diagnostic::new(
            &codes::UNKNOWN_STATEMENT,
            loc,
            format!(
                "A line {} begins with a word that says what it is.",
                context.words()
            ),
        )
        .at("no word in front")
        .help(format!("What can stand here: {}.", allowed.join(", "))),
    );
}

/// The name something is given.
pub(super) fn declared<'a>(
    cx: &mut Cx<'a>,
    cur: &mut Cur<'a>,
    what: &str,
    example: &str,
) -> Option<Name> {
    let Some(name) = cur.name(cx) else {
        missing(cx, cur, &format!("{what} needs a name"), example);
        return None;
    };
    // words of licences and rules are reserved at the beginning of their own lines only
    let contextual = |k: &Keyword| {
        k.contexts
            .iter()
            .all(|c| matches!(c, Context::Rules | Context::Clause | Context::Link))
            || matches!(
                k.word,
                "licence" | "rules" | "link" | "under" | "beside" | "alone" | "spot"
            )
            || matches!(k.word, "variant" | "take" | "put")
    };
    if KEYWORDS
        .iter()
        .any(|k| k.word == &*name.text && !contextual(k))
    {
        cx.push(
            Diagnostic::new(
                &codes::NAME_IS_KEYWORD,
                name.loc,
                format!(
                    "`{}` is a word of the language and cannot name {what}.",
                    name.text
                ),
            )
            .at("taken")
            .help("Take another word, or the tag that is on the thing."),
        );
        return None;
    }
    Some(name)
}

/// Points out a text in quotes with something right beside it: `"clause 4"eirp` is easily
/// overlooked.
pub(super) fn without_blank<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>) {
    for pair in stmt.atoms().windows(2) {
        let [a, b] = [pair[0], pair[1]];
        let text = [a, b].iter().any(|x| x.kind == AtomKind::Str);
        // a word that is wrong there has been reported
        let said = |d: &Diagnostic| d.primary.loc.span == b.span;
        if !text || a.span.end != b.span.start || cx.diags.iter().any(said) {
            continue;
        }
        let loc = cx.loc(b.span);
        let gap = cx.loc(Span::new(b.span.start, b.span.start));
        let (before, after) = (cx.text(a.span), cx.text(b.span));
        cx.push(
            Diagnostic::new(
                &codes::UNEXPECTED_WORD,
                loc,
                format!("`{after}` stands right after `{before}`; a blank belongs between them."),
            )
            .at("no blank before it")
            .help("Remove it if it was not meant to be there.")
            .fix("insert a blank", gap, " ")
            .fix(format!("remove `{after}`"), loc, ""),
        );
    }
    for inner in stmt.block().iter().flat_map(|b| b.iter()) {
        without_blank(cx, inner);
    }
}
