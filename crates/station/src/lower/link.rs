//! `link NAME { … }`: hops, what lies between the stations, what must arrive.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_quantity::{Dim, number};
use downlead_syntax::{Atom, AtomKind, Stmt};

use super::head::{declared, no_keyword, unknown_statement};
use crate::cx::{Cur, Cx};
use crate::keywords::Context;
use crate::model::{
    Around, End, Hop, Link, LinkNeed, LinkNoise, Model, Name, SiteNoise, UnreadHop,
};
use crate::quals::{Quals, ends, missing, rest};

/// A link.
pub(super) fn link<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, cur: &mut Cur<'a>) -> Option<Link> {
    let name = declared(cx, cur, "a link", "link harbour-quay { … }")?;
    let title = cur.string(cx);
    if !cur.done() {
        cur.unexpected(cx, "the head of a link", &[]);
    }
    let Some(block) = stmt.block() else {
        missing(cx, cur, "a link has a block", "link harbour-quay { … }");
        return None;
    };
    let mut l = Link {
        name,
        title,
        loc: cx.loc(stmt.head_span()),
        hops: Box::default(),
        unread_hops: Box::default(),
        profile: None,
        distance: None,
        k: None,
        noise: Box::default(),
        need: None,
        model: None,
        coverage: Box::default(),
        broken: false,
    };
    let (mut hops, mut unread, mut noise) = (Vec::new(), Vec::new(), Vec::new());
    for s in block.iter() {
        let Some(word) = s.keyword() else {
            no_keyword(cx, s, Context::Link);
            l.broken = true;
            continue;
        };
        let mut c = Cur::new(s, super::head::first_group(s));
        c.i = 1;
        let read = match word {
            "hop" => {
                let found = hop(cx, s);
                if found.is_none() {
                    unread.push(unread_hop(cx, s));
                }
                found.map(|h| hops.push(h))
            }
            "profile" => profile(cx, s, &mut c).map(|p| l.profile = Some(p)),
            "distance" => distance(cx, s, &mut c).map(|d| l.distance = Some(d)),
            "k-factor" => k_factor(cx, s, &mut c).map(|k| l.k = Some(k)),
            "site-noise" => site_noise(cx, s).map(|n| noise.push(n)),
            "need" => needed(cx, s).map(|n| l.need = Some(n)),
            "model" => model(cx, s, &mut c).map(|m| l.model = Some(m)),
            "coverage" => coverage(cx, s).map(|d| l.coverage = d),
            w => {
                unknown_statement(cx, s, w, Context::Link);
                None
            }
        };
        l.broken |= read.is_none();
    }
    l.hops = hops.into();
    l.unread_hops = unread.into();
    l.noise = noise.into();
    if l.hops.is_empty() && !l.broken && !stmt.is_broken() {
        missing(
            cx,
            cur,
            "a link needs its hops",
            "hop talk-out-2m of pellgarrow to hear of car",
        );
    }
    Some(l)
}

/// The words of a line after its first, as they are written; `to` makes one atom of what is about it.
fn words<'a>(cx: &Cx<'a>, s: Stmt<'a>) -> Vec<(&'a str, Span)> {
    let mut out = Vec::new();
    for a in s.atoms().iter().skip(1) {
        let text = cx.text(a.span);
        let mut at = 0;
        for word in text.split_whitespace() {
            let from = at + text[at..].find(word).unwrap_or(0);
            at = from + word.len();
            let place = |n: usize| a.span.start + u32::try_from(n).unwrap_or(0);
            out.push((word, Span::new(place(from), place(at))));
        }
    }
    out
}

fn unread_hop<'a>(cx: &Cx<'a>, s: Stmt<'a>) -> UnreadHop {
    let line = cx.text(s.head_span());
    let text = line.strip_prefix("hop").unwrap_or(line).trim();
    UnreadHop {
        text: text.into(),
        loc: cx.loc(s.head_span()),
    }
}

fn hop<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) -> Option<Hop> {
    let found = words(cx, s);
    let loc = cx.loc(s.head_span());
    let name = |i: usize| Name {
        text: found[i].0.into(),
        loc: cx.loc(found[i].1),
    };
    let texts: Vec<&str> = found.iter().map(|w| w.0).collect();
    if let [_, "of", _, "to", _, "of", _] = texts[..] {
        let (from, to) = (
            End {
                chain: name(0),
                station: name(2),
            },
            End {
                chain: name(4),
                station: name(6),
            },
        );
        return Some(Hop { from, to, loc });
    }
    if !s.is_broken() {
        let at = found.get(7).or(found.last()).map_or(s.head_span(), |w| w.1);
        let understood = match texts.len() {
            0 => String::new(),
            _ => format!(" Understood so far: `{}`.", texts.join(" ")),
        };
        cx.push(
            Diagnostic::new(
                if texts.len() > 7 {
                    &codes::UNEXPECTED_WORD
                } else {
                    &codes::MISSING_VALUE
                },
                cx.loc(at),
                format!("A hop is a chain of a station `to` a chain of another.{understood}"),
            )
            .at("not a hop")
            .help("Written for example `hop talk-out-2m of pellgarrow to hear of car`."),
        );
    }
    None
}

fn profile<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, c: &mut Cur<'a>) -> Option<Name> {
    let example = "profile from \"path.csv\"";
    if !c.eat(cx, "from") {
        missing(cx, c, "`from` and the table follow", example);
        return None;
    }
    let loc = c.peek().map(|a| cx.loc(a.span));
    let Some((text, loc)) = c.string(cx).zip(loc) else {
        missing(cx, c, "the table follows in quotes", example);
        return None;
    };
    ends(cx, s, c, "a profile");
    let name = Name { text, loc };
    cx.files.push(name.clone());
    Some(name)
}

fn distance<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    c: &mut Cur<'a>,
) -> Option<(downlead_quantity::Measure, Loc)> {
    let v = c.need(cx, "the distance follows", "distance 38.4 km ± 0.2 km")?;
    let m = cx.positive(&v, Dim::Length, "a distance", "38.4 km")?;
    rest(cx, s, c, "a distance");
    Some((m, v.loc))
}

fn k_factor<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, c: &mut Cur<'a>) -> Option<f64> {
    let v = c.need(cx, "the k factor follows", "k-factor 1.333")?;
    let v = cx.alone(&v, "a k factor");
    let k = cx.positive(&v, Dim::Count, "a k factor", "1.333")?.value;
    ends(cx, s, c, "a k factor");
    // beyond this the ray is bent more than in any air that was measured (ITU-R P.453)
    if (0.3..=100.0).contains(&k) {
        return Some(k);
    }
    cx.push(
        Diagnostic::new(
            &codes::IMPOSSIBLE_VALUE,
            v.loc,
            format!(
                "A k factor of {} is none of the air's: it goes from 0.3 to 100.",
                number(k, 3)
            ),
        )
        .at("0.3 to 100")
        .help("The median of temperate lands is 4/3: `k-factor 1.333`."),
    );
    None
}

pub(super) fn site_noise<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) -> Option<SiteNoise> {
    let mut q = Quals::default();
    let (mut noise, mut at) = (None, None);
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        if n == 0 {
            cur.i = 1;
            if cur.at_value(cx) {
                let v = cur.val(cx)?;
                let m = cx.measure(&v, Dim::Decibel, "a degradation", "3 dB")?;
                if m.value < 0.0 {
                    cx.push(
                        Diagnostic::new(
                            &codes::IMPOSSIBLE_VALUE,
                            v.loc,
                            "Noise from outside never makes a receiver quieter: 0 dB or more.",
                        )
                        .at("below 0 dB"),
                    );
                    return None;
                }
                cx.within_bounds(&v, &m, 0.0, "a degradation");
                noise = Some(LinkNoise::Read(m));
            }
        }
        while !cur.done() {
            let around = Around::ALL
                .into_iter()
                .find(|(w, _)| cur.word(cx) == Some(*w));
            if let Some((_, a)) = around {
                cur.i += 1;
                noise = noise.or(Some(LinkNoise::Around(a)));
            } else if cur.word(cx) == Some("at") && is_name(&cur, cur.i + 1) {
                cur.i += 1;
                at = cur.name(cx);
            } else if !q.take(cx, &mut cur) {
                let words = Around::ALL.map(|x| x.0);
                cur.unexpected(cx, "the noise of a site", &words);
                return None;
            }
        }
    }
    if noise.is_none() {
        let c = Cur::new(s, s.atoms());
        missing(
            cx,
            &c,
            "the surroundings or a figure in dB follow",
            "site-noise rural",
        );
    }
    let loc = cx.loc(s.head_span());
    noise.map(|noise| SiteNoise { noise, at, loc })
}

fn is_name(cur: &Cur<'_>, i: usize) -> bool {
    cur.atoms
        .get(i)
        .is_some_and(|a: &Atom| a.kind == AtomKind::Word)
}

const NEED: &str = "need 20 dB sinad, 90 % of places, spread 8 dB";

fn needed<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) -> Option<LinkNeed> {
    let mut n = LinkNeed {
        ratio_db: f64::NAN,
        word: "".into(),
        share: None,
        spread_db: None,
        loc: cx.loc(s.head_span()),
    };
    for (i, g) in s.groups().enumerate() {
        let mut c = Cur::new(s, g);
        if i == 0 {
            c.i = 1;
            let v = c.need(cx, "the criterion follows", NEED)?;
            let v = cx.alone(&v, "a criterion");
            n.ratio_db = cx
                .measure(&v, Dim::Decibel, "a criterion", "20 dB sinad")?
                .value;
            let Some(w) = c
                .word(cx)
                .filter(|w| ["sinad", "snr", "quieting"].contains(w))
            else {
                missing(
                    cx,
                    &c,
                    "what is measured follows: `sinad`, `snr` or `quieting`",
                    NEED,
                );
                return None;
            };
            c.i += 1;
            n.word = w.into();
        }
        while !c.done() {
            if c.eat(cx, "spread") {
                let v = c.need(cx, "the spread follows", NEED)?;
                let v = cx.alone(&v, "a spread");
                n.spread_db = Some(cx.positive(&v, Dim::Decibel, "a spread", "8 dB")?.value);
            } else if c.at_value(cx) {
                n.share = Some(share(cx, &mut c)?);
            } else {
                c.unexpected(cx, "what is needed", &["spread"]);
                return None;
            }
        }
    }
    if n.share.is_some_and(|p| p > 0.5) && n.spread_db.is_none() {
        cx.push(
            Diagnostic::new(
                &codes::MISSING_VALUE,
                n.loc,
                "A share of the places above a half needs to be told how far levels spread from place to place.",
            )
            .at("`spread` is missing")
            .help(format!("Written for example `{NEED}`: 6 dB to 8 dB are usual on VHF and UHF.")),
        );
        return None;
    }
    Some(n)
}

fn share<'a>(cx: &mut Cx<'a>, c: &mut Cur<'a>) -> Option<f64> {
    let v = c.val(cx)?;
    let v = cx.alone(&v, "a share of the places");
    let p = super::rating::share(cx, &v, "a share of the places")?.value;
    if !(c.eat(cx, "of") && c.eat(cx, "places")) {
        missing(cx, c, "a share is one `of places`", NEED);
        return None;
    }
    if p < 1.0 {
        return Some(p);
    }
    cx.push(
        Diagnostic::new(
            &codes::IMPOSSIBLE_VALUE,
            v.loc,
            "No margin is large enough for all places: a share is below 100 %.",
        )
        .at("below 100 %")
        .help(format!("Written for example `{NEED}`.")),
    );
    None
}

fn model<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, c: &mut Cur<'a>) -> Option<(Model, Loc)> {
    let loc = cx.loc(c.next_span());
    let found = Model::ALL
        .into_iter()
        .find(|m| c.word(cx) == Some(m.word()));
    let Some(m) = found else {
        if c.done() {
            missing(cx, c, "the model follows", "model bullington");
        } else {
            c.unexpected(cx, "a model", &Model::ALL.map(Model::word));
        }
        return None;
    };
    c.i += 1;
    ends(cx, s, c, "a model");
    Some((m, loc))
}

fn coverage<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) -> Option<Box<[f64]>> {
    let mut out = Vec::new();
    for (i, g) in s.groups().enumerate() {
        let mut c = Cur::new(s, g);
        c.i = usize::from(i == 0);
        let v = c.need(cx, "a distance follows", "coverage 10 km, 20 km, 40 km")?;
        let v = cx.alone(&v, "a distance of coverage");
        out.push(cx.positive(&v, Dim::Length, "a distance", "10 km")?.value);
        if !c.done() {
            c.unexpected(cx, "coverage", &[]);
        }
    }
    Some(out.into())
}
