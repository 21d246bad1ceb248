//! `beside`, `alone`, `bandwidth`: what is said for the site that stations share.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_syntax::{AtomKind, Stmt};

use crate::cx::{Cur, Cx};
use crate::model::{Alone, Beside, Isolation, LinkNoise, Name, Site};
use crate::quals::{missing, rest};

/// The lines of a station that are about its site, gathered.
#[derive(Default)]
pub(super) struct Draft {
    beside: Vec<Beside>,
    alone: Option<Alone>,
    isolations: Vec<Isolation>,
    noise: Option<(LinkNoise, Loc)>,
}

impl Draft {
    /// `beside harbour`; `own` is the station's own name.
    pub(super) fn beside<'a>(&mut self, cx: &mut Cx<'a>, s: Stmt<'a>, own: &Name) {
        let mut c = Cur::new(s, s.atoms());
        c.i = 1;
        let Some(station) = c.name(cx) else {
            return missing(cx, &c, "the other station follows", "beside harbour");
        };
        if !c.done() {
            c.unexpected(cx, "`beside`", &[]);
        }
        let loc = cx.loc(s.head_span());
        if station.text == own.text {
            cx.push(
                Diagnostic::new(
                    &codes::SITE_CONTRADICTS,
                    station.loc,
                    format!("`{}` cannot be beside itself.", own.text),
                )
                .at("this station")
                .help("Name the other station of the site."),
            );
        } else if let Some(first) = self.beside.iter().find(|b| b.station.text == station.text) {
            cx.push(
                Diagnostic::new(
                    &codes::SAID_TWICE,
                    loc,
                    format!("`beside {}` occurs twice.", station.text),
                )
                .at("again")
                .also(first.loc, "first here")
                .help("Remove one of them."),
            );
        } else {
            self.beside.push(Beside { station, loc });
        }
    }

    /// `alone, "who, when"`.
    pub(super) fn alone<'a>(&mut self, cx: &mut Cx<'a>, s: Stmt<'a>) {
        let text = |a: &&downlead_syntax::Atom| a.kind == AtomKind::Str;
        let by = s
            .atoms()
            .iter()
            .find(text)
            .map(|a| cx.text(a.span).trim_matches('"').into());
        self.alone = self.alone.take().or(Some(Alone {
            by,
            loc: cx.loc(s.head_span()),
        }));
    }

    /// `isolation A9 of harbour to A1 48 dB on 2m`; `own` is the station's own name.
    pub(super) fn isolation<'a>(&mut self, cx: &mut Cx<'a>, s: Stmt<'a>, own: &Name) {
        self.isolations
            .extend(super::isolation::isolation(cx, s, own));
    }

    /// `site-noise rural`.
    pub(super) fn noise<'a>(&mut self, cx: &mut Cx<'a>, s: Stmt<'a>) {
        let read = super::link::site_noise(cx, s).map(|n| (n.noise, n.loc));
        self.noise = self.noise.take().or(read);
    }

    pub(super) fn finish(self, cx: &mut Cx<'_>) -> Site {
        if let (Some(alone), Some(first)) = (&self.alone, self.beside.first()) {
            cx.push(
                Diagnostic::new(
                    &codes::SITE_CONTRADICTS,
                    alone.loc,
                    format!(
                        "The station is said to be alone, and to be beside `{}`.",
                        first.station.text
                    ),
                )
                .at("alone")
                .also(first.loc, "not alone")
                .help("Remove one of the two lines."),
            );
        }
        Site {
            beside: self.beside.into(),
            alone: self.alone,
            isolations: super::isolation::once(cx, self.isolations),
            noise: self.noise,
        }
    }
}

/// `bandwidth 12.6 kHz` of a transmitter or receiver, Hz.
pub(super) fn bandwidth<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) -> Option<f64> {
    let mut c = Cur::new(s, s.atoms());
    c.i = 1;
    let value = c.need(cx, "a bandwidth follows", "bandwidth 12.6 kHz");
    let hz = value.and_then(|v| {
        let v = cx.alone(&v, "a bandwidth");
        cx.frequency(&v, "a bandwidth")
    });
    if hz.is_some() {
        rest(cx, s, &mut c, "this line");
    }
    hz
}
