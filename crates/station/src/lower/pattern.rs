//! `pattern elevation { 0° 0 dB; -30° 9 dB }` of an antenna.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::{Dim, number};
use downlead_syntax::Stmt;

use super::rules::{clean, name_of, slot, slots};
use crate::cx::{Cur, Cx};
use crate::forms::pattern::{PATTERN, PatternSlot};
use crate::model::{Gain, Pattern, When};
use crate::quals::missing;

const WRITTEN: &str = "pattern elevation { 0° 0 dB; -30° 9 dB; -60° 14 dB }";

/// The line with its rows; none where one of them cannot be read.
fn pattern<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) -> Option<Pattern> {
    let read = slots(cx, s, &PATTERN);
    let loc = cx.loc(s.head_span());
    let ok = clean(cx, s, &PATTERN);
    let on = slot(&read, PatternSlot::On.id()).map_or(&[][..], |(_, args)| args);
    let on = on.iter().map(|a| name_of(cx, a)).collect();
    let mut rows: Vec<(f64, f64, Loc)> = Vec::new();
    let mut whole = true;
    for row in s.block().into_iter().flat_map(|b| b.iter()) {
        match self::row(cx, row) {
            Some(r) => rows.push(r),
            None => whole = false,
        }
    }
    if !(whole && ok) {
        return None;
    }
    rows.sort_by(|a, b| a.0.total_cmp(&b.0));
    if let Some(w) = rows.windows(2).find(|w| w[0].0 == w[1].0) {
        let (first, again) = match w[0].2.span.start < w[1].2.span.start {
            true => (w[0].2, w[1].2),
            false => (w[1].2, w[0].2),
        };
        let d = Diagnostic::new(
            &codes::SAID_TWICE,
            again,
            format!("The angle {}° occurs twice.", number(w[0].0, 3)),
        )
        .at("again")
        .also(first, "first here")
        .help("Remove one of the two rows.");
        cx.push(d);
        return None;
    }
    let wrong = match rows.len() {
        0 | 1 => Some("A pattern has two rows or more."),
        _ if rows.iter().all(|r| r.1 != 0.0) => {
            Some("The gain is that of the peak, and no row of the pattern has 0 dB.")
        }
        _ => None,
    };
    if let Some(wrong) = wrong {
        let d = Diagnostic::new(&codes::MISSING_VALUE, loc, wrong)
            .at("a row is missing")
            .help(format!("Each row is an angle above the horizon and how far the gain is below the peak there: `{WRITTEN}`."));
        cx.push(d);
        return None;
    }
    Some(Pattern {
        on,
        rows: rows.into_iter().map(|r| (r.0, r.1)).collect(),
        loc,
    })
}

/// An angle above the horizon, degrees, and how far the gain is below the peak, dB.
fn row<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) -> Option<(f64, f64, Loc)> {
    let mut cur = Cur::new(s, s.atoms());
    let (Some(angle), Some(down)) = (cur.val(cx), cur.val(cx)) else {
        missing(
            cx,
            &cur,
            "a row is an angle and an attenuation",
            "-30° 9 dB",
        );
        return None;
    };
    let (angle, down) = (
        cx.alone(&angle, "an angle"),
        cx.alone(&down, "an attenuation"),
    );
    let deg = cx.measure(&angle, Dim::Angle, "an angle", "-30°")?.value;
    let db = cx
        .measure(&down, Dim::Decibel, "an attenuation", "9 dB")?
        .value;
    if !cur.done() {
        cur.unexpected(cx, "a row of a pattern", &[]);
        return None;
    }
    let wrong = if !(-90.0..=90.0).contains(&deg) {
        Some((angle.loc, "An elevation goes from -90° (down) to 90° (up)."))
    } else if db < 0.0 {
        Some((
            down.loc,
            "Nothing is above the peak: an attenuation is 0 dB or more.",
        ))
    } else {
        None
    };
    if let Some((loc, message)) = wrong {
        cx.push(Diagnostic::new(&codes::IMPOSSIBLE_VALUE, loc, message).at("cannot be"));
        return None;
    }
    Some((deg, db, cx.loc(s.head_span())))
}

/// Those of an antenna; one that does not say its band is none where the gain is stated by band.
pub(super) fn of_antenna<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, gains: &[Gain]) -> Box<[Pattern]> {
    let lines = s.block().into_iter().flat_map(|b| b.iter());
    let mine = lines.filter(|l| l.keyword() == Some("pattern"));
    let mut all: Vec<Pattern> = mine.filter_map(|l| pattern(cx, l)).collect();
    twice(cx, &mut all);
    let by_band = |g: &Gain| matches!(g.figure.when, When::Bands(_));
    let bands = gains.iter().filter(|g| by_band(g)).count();
    if bands < 2 {
        return all.into();
    }
    for p in all.iter().filter(|p| p.on.is_empty()) {
        let d = Diagnostic::new(
            &codes::MISSING_VALUE,
            p.loc,
            "On which band is this pattern? The gain of the antenna is stated by band, and its pattern differs too.",
        )
        .at("`on` is missing")
        .help("Written for example `pattern elevation on 2m { 0° 0 dB; -30° 9 dB }`.");
        cx.push(d);
    }
    all.retain(|p| !p.on.is_empty());
    all.into()
}

/// Two patterns of one band: neither counts.
fn twice(cx: &mut Cx<'_>, all: &mut Vec<Pattern>) {
    let same = |a: &Pattern, b: &Pattern| {
        let shared = a.on.iter().any(|x| b.on.iter().any(|y| x.text == y.text));
        shared || a.on.is_empty() && b.on.is_empty()
    };
    let mut gone = vec![false; all.len()];
    for (i, p) in all.iter().enumerate() {
        let Some(first) = all[..i].iter().position(|k| same(k, p)) else {
            continue;
        };
        (gone[first], gone[i]) = (true, true);
        let d = Diagnostic::new(
            &codes::SAID_TWICE,
            p.loc,
            "The antenna has a pattern on this band already; neither counts.",
        )
        .at("again")
        .also(all[first].loc, "first here")
        .help("Remove one of the two.");
        cx.push(d);
    }
    let mut gone = gone.into_iter();
    all.retain(|_| gone.next() == Some(false));
}
