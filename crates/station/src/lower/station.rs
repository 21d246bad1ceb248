//! `station TAG { … }`.

use downlead_base::{Diagnostic, codes};
use downlead_quantity::Dim;
use downlead_syntax::{AtomKind, Stmt};
use rustc_hash::FxHashMap;

use super::head::{declared, no_keyword, unknown_statement};
use super::part;
use crate::cx::{Cur, Cx};
use crate::keywords::Context;
use crate::model::{Name, Place, Station};
use crate::quals::{missing, rest};
use crate::words::DATUMS;

pub(super) fn station<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, cur: &mut Cur<'a>) -> Option<Station> {
    let name = declared(cx, cur, "a station", "station hill \"the hill\" { … }")?;
    let title = cur.string(cx);
    if !cur.done() {
        cur.unexpected(cx, "a station's head", &[]);
    }
    let Some(block) = stmt.block() else {
        missing(cx, cur, "a station has a block", "station hill { … }");
        return None;
    };
    let (mut places, mut parts, mut chains) = (Vec::<Place>::new(), Vec::new(), Vec::new());
    let mut st = Station {
        name,
        title,
        places: Box::default(),
        joins: None,
        parts: Box::default(),
        chains: Box::default(),
        position: None,
        datum: None,
        ground_amsl: None,
        under: Box::default(),
        site: crate::model::Site::default(),
        spots: Box::default(),
        unread_spots: Box::default(),
        newest: super::rules::newest(stmt),
    };
    let mut under = Vec::new();
    let mut site = super::site::Draft::default();
    let mut spots = super::exposure::Spots::default();
    // places first: parts may name one that stands below them
    for s in block.iter().filter(|s| s.keyword() == Some("place")) {
        if let Some(p) = place(cx, s) {
            if let Some(other) = places.iter().find(|o| o.name.text == p.name.text) {
                duplicate(cx, &p.name, &other.name);
            } else {
                places.push(p);
            }
        }
    }
    let place_names: Vec<Name> = places.iter().map(|p| p.name.clone()).collect();
    for s in block.iter() {
        let mut c = Cur::new(s, s.atoms());
        c.i = 1;
        match s.keyword() {
            Some("place") => {}
            Some("position") => position(cx, s, &mut st),
            Some("ground") => {
                ground(cx, &mut c, &mut st);
                rest(cx, s, &mut c, "the height of the ground");
            }
            Some("joins") => match c.name(cx) {
                Some(n) => {
                    st.joins = Some(n);
                    if !c.done() {
                        c.unexpected(cx, "`joins`", &[]);
                    }
                }
                None => missing(cx, &c, "the connector of the joins follows", "joins n-pair"),
            },
            Some("under") => under.extend(super::rules::under(cx, s)),
            Some("beside") => site.beside(cx, s, &st.name),
            Some("alone") => site.alone(cx, s),
            Some("spot") => spots.line(cx, s),
            Some("isolation") => site.isolation(cx, s, &st.name),
            Some("site-noise") => site.noise(cx, s),
            Some("chain") => chains.push(s),
            Some(w) => match part::kind_of(s) {
                Some(k) => {
                    let p = part::part(cx, s, k, &place_names);
                    if p.tag.is_none() && !s.is_broken() {
                        let loc = cx.loc(s.atoms()[0].span);
                        let d = Diagnostic::new(
                            &codes::MISSING_VALUE,
                            loc,
                            format!(
                                "{} in a station needs a tag, so that chains can name it.",
                                crate::cx::capital(&k.with_article())
                            ),
                        )
                        .at("no tag")
                        .help(format!(
                            "The tag follows the keyword: `{w} {}1 …`.",
                            crate::cx::capital(&w[..1])
                        ));
                        cx.push(d);
                    }
                    parts.push(p);
                }
                None => unknown_statement(cx, s, w, Context::Station),
            },
            None => no_keyword(cx, s, Context::Station),
        }
    }
    let mut tags: FxHashMap<&str, &Name> = FxHashMap::default();
    let mut twice = Vec::new();
    for p in &parts {
        if let Some(t) = &p.tag {
            if let Some(first) = tags.get(&*t.text) {
                twice.push((t.clone(), (*first).clone()));
            } else {
                tags.insert(&t.text, t);
            }
        }
    }
    for (again, first) in twice {
        duplicate(cx, &again, &first);
    }
    let mut lowered: Vec<crate::model::Chain> = Vec::new();
    for s in chains {
        let mut c = Cur::new(s, super::head::first_group(s));
        c.i = 1;
        if let Some(ch) = super::chain::chain(cx, s, &mut c, &place_names) {
            if let Some(other) = lowered.iter().find(|o| o.name.text == ch.name.text) {
                duplicate(cx, &ch.name, &other.name.clone());
            } else {
                lowered.push(ch);
            }
        }
    }
    st.under = under.into();
    st.site = site.finish(cx);
    (st.spots, st.unread_spots) = spots.finish();
    st.places = places.into();
    st.parts = parts.into();
    st.chains = lowered.into();
    Some(st)
}

pub(crate) fn duplicate(cx: &mut Cx<'_>, again: &Name, first: &Name) {
    cx.push(
        Diagnostic::new(
            &codes::DUPLICATE_NAME,
            again.loc,
            format!("`{}` is the name of two things.", again.text),
        )
        .at("again here")
        .also(first.loc, "first here")
        .help("Every tag is given once; rename one of them."),
    );
}

fn place<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) -> Option<Place> {
    let mut c = Cur::new(s, s.atoms());
    c.i = 1;
    let name = declared(cx, &mut c, "a place", "place mast { temperature 10 °C }")?;
    if !c.done() {
        c.unexpected(cx, "the head of `place`", &["{ temperature 10 °C }"]);
    }
    let (mut temperature, mut broken) = (None, false);
    for row in s.block().into_iter().flat_map(|b| b.iter()) {
        let mut r = Cur::new(row, row.atoms());
        r.i = 1;
        match row.keyword() {
            Some("temperature") => match r.val(cx) {
                Some(v) => {
                    temperature = cx.temperature(&v);
                    rest(cx, row, &mut r, "a temperature");
                }
                None => missing(cx, &r, "a temperature follows", "temperature 15 °C"),
            },
            Some(w) => unknown_statement(cx, row, w, Context::Place),
            None => no_keyword(cx, row, Context::Place),
        }
        broken |= temperature.is_none();
    }
    Some(Place {
        name,
        temperature,
        broken,
    })
}

fn ground<'a>(cx: &mut Cx<'a>, c: &mut Cur<'a>, st: &mut Station) {
    let Some(v) = c.val(cx) else {
        missing(
            cx,
            c,
            "the height of the ground follows",
            "ground 612 m amsl",
        );
        return;
    };
    let v = cx.alone(&v, "the height of the ground");
    let Some(m) = cx.measure(&v, Dim::Length, "the height of the ground", "612 m amsl") else {
        return;
    };
    if c.eat(cx, "amsl") {
        st.ground_amsl = Some(m.value);
        return;
    }
    let end = downlead_base::Loc::new(
        v.loc.item,
        downlead_base::Span::new(v.loc.span.end, v.loc.span.end),
    );
    cx.push(
        Diagnostic::new(
            &codes::HEIGHT_WITHOUT_DATUM,
            v.loc,
            "The ground's height is above mean sea level: `amsl`.",
        )
        .at("no datum")
        .fix("write `amsl`", end, " amsl")
        .preferred(),
    );
}

/// `position 49.3333° S 123.1667° W, wgs84`.
fn position<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, st: &mut Station) {
    let mut groups = s.groups();
    let Some(g) = groups.next() else { return };
    let mut c = Cur::new(s, g);
    c.i = 1;
    let loc = cx.loc(s.head_span());
    let lat = angle(cx, &mut c);
    let ns = letter(cx, &mut c, ["N", "S"]);
    let lon = angle(cx, &mut c);
    let ew = letter(cx, &mut c, ["E", "W"]);
    let (Some(lat), Some(lon)) = (lat, lon) else {
        missing(
            cx,
            &c,
            "a position is a latitude and a longitude",
            "position 49.3333° S 123.1667° W, wgs84",
        );
        return;
    };
    let (Some(south), Some(west)) = (ns, ew) else {
        cx.push(
            Diagnostic::new(
                &codes::LONGITUDE_WITHOUT_LETTER,
                loc,
                "North or south, east or west? A position says both by a letter.",
            )
            .at("a letter is missing")
            .help("Written for example `position 49.3333° S 123.1667° W, wgs84`."),
        );
        return;
    };
    if !(0.0..=90.0).contains(&lat) || !(0.0..=180.0).contains(&lon) {
        cx.push(
            Diagnostic::new(
                &codes::IMPOSSIBLE_VALUE,
                loc,
                "A latitude lies between 0° and 90°, a longitude between 0° and 180°.",
            )
            .at("cannot be"),
        );
        return;
    }
    if !c.done() {
        c.unexpected(cx, "a position", &["wgs84"]);
        return;
    }
    st.position = Some((
        if south { -lat } else { lat },
        if west { -lon } else { lon },
    ));
    if let Some(g) = groups.next() {
        let mut c = Cur::new(s, g);
        match c.word(cx).filter(|w| DATUMS.contains(w)) {
            Some(w) => {
                st.datum = Some(w.into());
                c.i += 1;
                c.unexpected(cx, "a position", &[]);
            }
            None => return unknown_datum(cx, &c),
        }
        if let Some(g) = groups.next() {
            Cur::new(s, g).unexpected(cx, "a position", &[]);
        }
    }
    if st.datum.is_none() {
        let end = downlead_base::Loc::new(
            loc.item,
            downlead_base::Span::new(loc.span.end, loc.span.end),
        );
        cx.push(
            Diagnostic::new(
                &codes::POSITION_WITHOUT_DATUM,
                loc,
                "This position does not say in which datum; two of them put it up to 200 m apart.",
            )
            .at("no datum")
            .help(
                "Add it after a comma, for example `, wgs84` for what a satellite receiver shows.",
            )
            .fix("write `, wgs84`", end, ", wgs84"),
        );
    }
}

fn unknown_datum<'a>(cx: &mut Cx<'a>, c: &Cur<'a>) {
    let loc = cx.loc(c.next_span());
    let text = cx.text(loc.span);
    let mut d = Diagnostic::new(
        &codes::UNEXPECTED_WORD,
        loc,
        format!("`{text}` is no datum that is known here."),
    )
    .at("not known")
    .help(format!(
        "Known are {}. Convert a position in another datum to one of them.",
        DATUMS.join(", ")
    ));
    if let Some(n) = crate::cx::nearest(text, DATUMS.iter().copied()) {
        d = d
            .help(format!("Did you mean `{n}`?"))
            .fix(format!("write `{n}`"), loc, n);
    }
    cx.push(d);
}

pub(super) fn angle<'a>(cx: &mut Cx<'a>, c: &mut Cur<'a>) -> Option<f64> {
    let a = c.peek()?;
    if matches!(a.kind, AtomKind::Dms) {
        c.i += 1;
        let text = cx.text(a.span);
        let mut total = 0.0;
        let mut scale = 1.0;
        for part in text.split(['°', '′', '″']) {
            let t = part.trim();
            if !t.is_empty() {
                total += t.parse::<f64>().ok()? * scale;
            }
            scale /= 60.0;
        }
        return Some(total);
    }
    let v = c.val(cx)?;
    let v = cx.alone(&v, "a position");
    cx.measure(&v, Dim::Angle, "a latitude or longitude", "49.3333° S")
        .map(|m| m.value)
}

pub(super) fn letter<'a>(cx: &Cx<'a>, c: &mut Cur<'a>, pair: [&str; 2]) -> Option<bool> {
    let w = c.word(cx)?;
    let hit = pair.iter().position(|p| *p == w)?;
    c.i += 1;
    Some(hit == 1)
}
