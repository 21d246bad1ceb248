//! Hover: what a word is, what a number comes to, and how it was come by.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_eval::result::BandResult;
use downlead_quantity::{
    DIPOLE_DBI, Dim, Quantity, db, dbm_to_w, frequency, number, power, sig, unit, w_to_dbm,
};
use downlead_station::keywords::{Context, form_in, keyword};
use downlead_station::model::{Accuracy, BandKind, Cable, Connector, ConnectorLoss, Instrument};
use downlead_syntax::{AtomKind, Expr, ExprKind, Item, Number};

use crate::bench;
use crate::cables;
use crate::config::Config;
use crate::markdown::Writer;
use crate::names::{Class, NameKind};
use crate::resolve::{Def, Named, class_of, name_at, piece, ports, resolve, statements};
use crate::view::{
    Doc, Place, View, clamp, doc_path, doc_text, env_of, item_at, line_number, scope_of,
};
use crate::words::{in_units, or_not_known};

/// What is said about a place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Hover {
    /// The text it is about.
    pub span: Span,
    /// Markdown, or plain text.
    pub text: String,
    /// Places the text leads to.
    pub links: Vec<Place>,
}

/// Derivations shown before "N more".
const SHOWN: usize = 4;

/// Steps of steps shown: what is deeper is for the explanation of the line.
const DEPTH: usize = 2;

/// What is at an offset.
#[must_use]
pub fn hover(s: &Snapshot, doc: Doc, offset: u32, c: &Config) -> Option<Hover> {
    let text = doc_text(s, doc);
    let offset = clamp(text, offset);
    let view = View::new(s);
    let mut w = Writer::new(&view, c.markdown);
    let mut derive = true;
    let span = if let Some((span, file)) = bench::file_at(s, doc, offset) {
        let env = env_of(s, doc);
        let a = env.and_then(|e| e.attachments.at(file.loc));
        bench::file_words(&mut w, &file.text, a.map(|a| &**a));
        // a table has many lines to derive, a network has one
        derive = on_node(s, doc, offset) && a.is_none_or(|a| a.readings().is_none());
        span
    } else if let Some((span, n)) = number_at(s, doc, offset) {
        quantity(&mut w, n);
        derive = on_node(s, doc, offset) && bench::in_session(&mut w, s, doc, offset, None);
        span
    } else if let Some((placed, n)) = name_at(s, doc, offset) {
        derive = matches!(
            n.kind,
            NameKind::Tag | NameKind::Port | NameKind::Chain | NameKind::Spot
        ) || matches!(n.kind, NameKind::Station) && on_node(s, doc, offset);
        name(&mut w, s, doc, placed, &n, c);
        if n.kind == NameKind::Tag {
            derive = bench::in_session(&mut w, s, doc, offset, Some(&n.text)) && derive;
        }
        n.span
    } else if let Some((placed, p)) = piece(s, doc, offset) {
        let word = placed.item.slice(p.span);
        match p.class {
            Class::Keyword(_) | Class::Word(_) => {
                match p.class {
                    Class::Keyword(cx) => keyword_words(&mut w, word, cx),
                    Class::Word(says) if !says.is_empty() => w.title(word, says),
                    _ => {}
                }
                derive = matches!(p.class, Class::Keyword(_)) && on_node(s, doc, offset);
                derive = derive && bench::in_session(&mut w, s, doc, offset, None);
            }
            Class::Path => w.text(&format!("uses the definitions of {word}")),
            _ => {}
        }
        p.span.shift(placed.start)
    } else {
        return None;
    };
    if derive && let Doc::File(_) = doc {
        let all = s.explain_line(&doc_path(s, doc), line_number(text, offset));
        let mut whole = true;
        for d in all.iter().take(SHOWN) {
            whole &= w.derivation_to(d, DEPTH);
        }
        if all.len() > SHOWN {
            w.text(&format!(
                "and {} more on further chains and bands",
                all.len() - SHOWN
            ));
        }
        if !whole {
            w.text("further steps: downlead explain with this file and line");
        }
    }
    for line in crate::site::lines(s, doc, offset) {
        w.text(&line);
    }
    if w.is_empty() {
        return None;
    }
    let (text, links) = w.finish();
    Some(Hover { span, text, links })
}

/// Whether the line is a statement that has results: a part, a node statement, a chain's head.
fn on_node(s: &Snapshot, doc: Doc, offset: u32) -> bool {
    let Some(placed) = item_at(s, doc, offset) else {
        return false;
    };
    crate::view::path_at(&placed.item, offset - placed.start)
        .iter()
        .map(|s| s.keyword())
        .nth(1)
        .is_some()
        || matches!(
            placed.item.statement().and_then(|s| s.keyword()),
            Some("chain")
        )
}

/// A number with its unit at an offset.
pub(crate) fn number_at(s: &Snapshot, doc: Doc, offset: u32) -> Option<(Span, Number)> {
    let placed = item_at(s, doc, offset)?;
    let local = offset - placed.start;
    let mut found = None;
    each_number(&placed.item, &mut |n| {
        let span = n.digits.join(n.unit_span);
        if span.touches(local) && n.unit.is_some() {
            found = Some((span.shift(placed.start), n));
        }
    });
    // `2m` in the place of a name is a name
    if let Some((span, _)) = found
        && name_at(s, doc, offset).is_some_and(|(_, n)| n.span == span)
    {
        return None;
    }
    found
}

/// Every number of an item.
pub(crate) fn each_number(item: &Item, f: &mut dyn FnMut(Number)) {
    fn expr(e: Expr<'_>, f: &mut dyn FnMut(Number)) {
        match e.kind() {
            ExprKind::Number(n) => f(n),
            ExprKind::Name(_) => {}
            ExprKind::Neg(x) | ExprKind::Per(x, _) => expr(x, f),
            ExprKind::Binary(_, l, r) => {
                expr(l, f);
                expr(r, f);
            }
        }
    }
    statements(item, &mut |s| {
        for a in s.atoms() {
            if let AtomKind::Value(_) = a.kind
                && let Some(v) = s.value(*a)
            {
                expr(v.expr(), f);
                if let Some((t, _)) = v.tolerance() {
                    expr(t, f);
                }
                if let Some(u) = v.upper() {
                    expr(u, f);
                }
            }
        }
    });
}

/// The same quantity in the units people also use.
pub(crate) fn in_other_units(n: &Number) -> Option<String> {
    let u = unit(n.unit?);
    let base = u.to_base(n.value);
    Some(match u.dim {
        Dim::Power => format!(
            "{:.2} dBm, {} dBW",
            w_to_dbm(base),
            number(w_to_dbm(base) - 30.0, 2)
        ),
        Dim::Level => format!("{}, {} dBW", power(dbm_to_w(base)), number(base - 30.0, 2)),
        Dim::Length if matches!(u.symbol(), "ft" | "in" | "yd" | "mi") => {
            format!("{} m", sig(base, 4))
        }
        Dim::Length => format!("{} ft, {} in", sig(base / 0.3048, 4), sig(base / 0.0254, 4)),
        Dim::Decibel => format!(
            "a factor of {}; as a loss {} % is lost",
            sig(downlead_quantity::from_db(base), 4),
            number((1.0 - downlead_quantity::from_db(-base)) * 100.0, 2)
        ),
        Dim::GainIsotropic => format!(
            "{} dBd, a factor of {}",
            number(base - DIPOLE_DBI, 2),
            sig(downlead_quantity::from_db(base), 4)
        ),
        Dim::GainDipole => format!("{} dBi", number(base + DIPOLE_DBI, 2)),
        Dim::Frequency => format!(
            "a wavelength of {} m in free space",
            sig(299_792_458.0 / base, 4)
        ),
        Dim::Temperature if u.symbol() == "°C" => format!("{} °F", number(base * 1.8 + 32.0, 1)),
        Dim::Temperature => format!("{} °C", number(base, 1)),
        Dim::LossRate => format!(
            "{} dB/100 m, {} dB/100 ft",
            sig(base * 100.0, 4),
            sig(base * 30.48, 4)
        ),
        Dim::Voltage => format!(
            "across 50 ohm {} dBm",
            number(w_to_dbm(base * base / 50.0), 1)
        ),
        Dim::RootCoefficient => format!("{} dB/100 ft/sqrt(MHz)", sig(base * 30.48, 4)),
        Dim::LinearCoefficient => format!("{} dB/100 ft/MHz", sig(base * 30.48, 4)),
        _ => return None,
    })
}

fn quantity(w: &mut Writer<'_, '_>, n: Number) {
    let Some(id) = n.unit else { return };
    let u = unit(id);
    let q = Quantity::new(n.value, id);
    w.title(
        &format!("{} {}", number(n.value, 9), u.symbol()),
        &format!("{}, in {}", q.dim.noun(), plural(u.name)),
    );
    if let Some(o) = in_other_units(&n) {
        w.text(&format!("= {o}"));
    }
}

fn plural(name: &str) -> String {
    match name {
        "foot" => "feet".to_owned(),
        "inch" => "inches".to_owned(),
        "percent" | "megahertz" | "kilohertz" | "gigahertz" | "hertz" => name.to_owned(),
        n if n.starts_with("dB") || n.starts_with("degree ") || n.contains(' ') => n.to_owned(),
        n => format!("{n}s"),
    }
}

fn keyword_words(w: &mut Writer<'_, '_>, word: &str, cx: Context) {
    if let Some(f) = form_in(cx, word).or_else(|| keyword(word)?.forms.first().copied()) {
        w.code(&downlead_station::forms::signature(f).0);
        w.text(f.doc);
        if !f.also.is_empty() {
            w.text(&format!("Found also by: {}.", f.also.join(", ")));
        }
    }
}

fn name<'s>(
    w: &mut Writer<'_, 's>,
    s: &'s Snapshot,
    doc: Doc,
    placed: &'s downlead_syntax::Placed,
    n: &Named,
    c: &Config,
) {
    let Some(d) = resolve(s, doc, placed, n) else {
        match n.kind {
            NameKind::Person
            | NameKind::Family
            | NameKind::Shared
            | NameKind::Class
            | NameKind::Question => w.title(&n.text, n.kind.noun()),
            k => w.title(&n.text, &format!("{} that is not defined", k.noun())),
        }
        return;
    };
    let about = d.title().map_or_else(
        || n.kind.noun().to_owned(),
        |t| format!("{}, {t}", n.kind.noun()),
    );
    if !shared(w, (s, doc), n, &about, c) {
        of_station(w, (s, doc), &d, n, &about);
    }
    if !n.def {
        w.linked("defined in ", &doc_path(s, d.doc), d.focus());
    }
}

/// What several stations may name: cables, connectors, instruments, rules, bands and values.
/// False if it is something else.
fn shared<'s>(
    w: &mut Writer<'_, 's>,
    (s, doc): (&'s Snapshot, Doc),
    n: &Named,
    about: &str,
    c: &Config,
) -> bool {
    let env = env_of(s, doc);
    let library = downlead_station::library;
    match n.kind {
        NameKind::Cable => {
            w.title(&n.text, about);
            if let Some(cable) = env.map_or_else(|| library().cable(&n.text), |e| e.cable(&n.text))
            {
                cable_words(w, s, doc, cable, c);
            }
        }
        NameKind::Connector => {
            w.title(&n.text, about);
            if let Some(x) =
                env.map_or_else(|| library().connector(&n.text), |e| e.connector(&n.text))
            {
                connector_words(w, s, doc, x, c);
            }
        }
        NameKind::Instrument => {
            w.title(&n.text, about);
            if let Some(i) = env.and_then(|e| e.instrument(&n.text)) {
                instrument_words(w, i);
            }
        }
        NameKind::Rules => {
            w.title(&n.text, about);
            if let Some(set) = env.map_or_else(|| library().rules(&n.text), |e| e.rule_set(&n.text))
            {
                crate::rules::hover(w, set);
            }
        }
        NameKind::Band => {
            w.title(&n.text, "band");
            if let Some(b) = env.and_then(|e| e.band(&n.text)) {
                w.text(&band_words(&b.kind));
            }
        }
        _ => return false,
    }
    true
}

fn band_words(band: &BandKind) -> String {
    match band {
        BandKind::Single(f) => frequency(*f),
        BandKind::Range(lo, hi) => format!(
            "{} to {}, computed at both edges and in the middle",
            frequency(*lo),
            frequency(*hi)
        ),
        BandKind::Pair { transmit, receive } => {
            let f = |x: &Option<f64>| x.map_or_else(|| "none".to_owned(), frequency);
            let split = transmit.zip(*receive).map_or_else(String::new, |(t, r)| {
                format!(", split {}", frequency((t - r).abs()))
            });
            format!("transmit {}, receive {}{split}", f(transmit), f(receive))
        }
    }
}

/// What one file or station defines.
fn of_station<'s>(
    w: &mut Writer<'_, 's>,
    (s, doc): (&'s Snapshot, Doc),
    d: &Def<'s>,
    n: &Named,
    about: &str,
) {
    match n.kind {
        NameKind::Device => {
            w.title(&n.text, about);
            w.code(&dedented(s, d));
        }
        NameKind::Let => {
            w.title(&n.text, "named value");
            w.code(d.stmt.slice(d.stmt.head_span()));
            if let Some(v) = env_of(s, doc).and_then(|e| e.lets.get(n.text.as_str())) {
                w.text(&format!("{}: {}", v.q.dim.noun(), in_units(v.q)));
            }
        }
        NameKind::Tag => {
            w.title(&n.text, d.stmt.keyword().unwrap_or("part"));
            w.code(&dedented(s, d));
            if let Some(class) = class_of(s, d) {
                w.linked("of ", class.text(), class.focus());
            }
            let list = ports(s, d);
            if !list.is_empty() && !n.def {
                w.text(&format!("ports: {}", list.join(", ")));
            }
        }
        NameKind::Port => {
            w.title(&n.text, "port");
            w.code(&dedented(s, d));
        }
        NameKind::Place => {
            w.title(&n.text, "place");
            w.code(&dedented(s, d));
        }
        NameKind::Session => {
            w.title(&n.text, about);
            bench::session_words(w, s, doc, n.span.start);
        }
        NameKind::Chain => {
            w.title(&n.text, "chain");
            chain_words(w, s, doc, d);
        }
        _ => w.title(&n.text, about),
    }
}

/// A definition's text with the indentation of its first line taken off all.
fn dedented(s: &Snapshot, d: &Def<'_>) -> String {
    let pad = crate::view::indent(doc_text(s, d.doc), d.full().span.start);
    let lines: Vec<&str> = d
        .stmt
        .slice(d.stmt.span())
        .lines()
        .map(|l| l.strip_prefix(pad).unwrap_or(l))
        .collect();
    lines.join("\n")
}

fn chain_words(w: &mut Writer<'_, '_>, s: &Snapshot, doc: Doc, d: &Def<'_>) {
    let Doc::File(file) = doc else { return };
    for scope in s.scopes().iter().filter(|x| x.file() == file) {
        for (item, _, r) in scope.items().iter().filter(|i| i.0.id == d.item.id) {
            let _ = item;
            for c in r.chains.iter().filter(|c| c.name.span == d.name) {
                let rows: Vec<Vec<String>> = c.bands.iter().map(total_row).collect();
                w.table(&["band", "loss", "at the end", "ERP", "EIRP", "±"], &rows);
            }
        }
    }
}

pub(crate) fn total_row(b: &BandResult) -> Vec<String> {
    let p = |x: Option<f64>| x.map_or_else(|| "–".to_owned(), power);
    let end = match b.sensitivity_dbm {
        Some(l) => format!("{l:.1} dBm at the antenna"),
        None => p(b.antenna_w),
    };
    let name = b.place();
    vec![
        cables::named(&name, b.hz),
        or_not_known(b.total_db.map(db)),
        end,
        p(b.erp_w()),
        p(b.eirp_w),
        b.uncertainty_db.map_or_else(|| "–".to_owned(), db),
    ]
}

fn cable_words(w: &mut Writer<'_, '_>, s: &Snapshot, doc: Doc, cable: &Cable, c: &Config) {
    let mut list = cables::frequencies(s, doc, c);
    if list.is_empty() {
        list = [14e6, 145e6, 435e6]
            .into_iter()
            .map(|f| (frequency(f), f))
            .collect();
    }
    let no_files = downlead_station::Attachments::default();
    let files = scope_of(s, doc).map_or(&no_files, |x| &x.env().attachments);
    let rows: Vec<Vec<String>> = cables::rows(cable, &list, files)
        .into_iter()
        .map(Vec::from)
        .collect();
    w.table(&["at 20 °C", "loss", "uncertainty (k = 2)"], &rows);
    let mut facts = Vec::new();
    let hz = list.first().map_or(145e6, |f| f.1);
    if let Some(at) = downlead_eval::cable_at_in(cable, hz, 20.0, files) {
        facts.push(format!("{} ohm", number(at.z0, 1)));
        facts.push(format!(
            "velocity {}{}",
            number(at.velocity, 3),
            if at.velocity_assumed {
                " (assumed)"
            } else {
                ""
            }
        ));
    }
    if let Some((lo, hi)) = cable.valid {
        facts.push(format!("{} to {}", frequency(lo), frequency(hi)));
    }
    if let Some(m) = cable.size {
        facts.push(format!("{} mm", number(m * 1e3, 1)));
    }
    for r in &cable.ratings {
        facts.push(match r.at_hz {
            Some(f) => format!("{} at {}", power(r.watts), frequency(f)),
            None => power(r.watts),
        });
    }
    if let Some(v) = cable.voltage {
        facts.push(format!("{} V", number(v, 0)));
    }
    w.text(&facts.join(", "));
    w.text(&source(cable.meta.words()));
}

fn source(words: Option<String>) -> String {
    words.map_or_else(
        || "no source is stated".to_owned(),
        |t| format!("source: {t}"),
    )
}

fn connector_words(w: &mut Writer<'_, '_>, s: &Snapshot, doc: Doc, x: &Connector, c: &Config) {
    let list = cables::frequencies(s, doc, c);
    let rows: Vec<Vec<String>> = list
        .iter()
        .filter_map(|(name, hz)| {
            let loss = x.loss?.at(*hz).value;
            Some(vec![
                cables::named(name, *hz),
                format!("{} dB", sig(loss, 2)),
            ])
        })
        .collect();
    w.table(&["one pair at", "loss"], &rows);
    let mut facts = Vec::new();
    match &x.families {
        Some((a, b)) if a == b => facts.push(format!("family {a}")),
        Some((a, b)) => facts.push(format!("joins {a} to {b}")),
        None => {}
    }
    match x.loss {
        Some(ConnectorLoss::Root(k)) => facts.push(format!(
            "{} dB at 1 GHz, by the root of frequency",
            number(k.value, 3)
        )),
        Some(ConnectorLoss::Constant(l)) => {
            facts.push(format!("{} dB at all frequencies", number(l.value, 3)))
        }
        None => {}
    }
    if let Some((z, m)) = x.bump {
        facts.push(format!(
            "a bump of {} ohm, {} mm",
            number(z.value, 1),
            number(m.value * 1e3, 1)
        ));
    }
    if let Some(f) = x.limit_hz {
        facts.push(format!("up to {}", frequency(f)));
    }
    w.text(&facts.join(", "));
    w.text(&source(x.meta.words()));
}

fn instrument_words(w: &mut Writer<'_, '_>, i: &Instrument) {
    let mut facts = Vec::new();
    match i.accuracy {
        Some(Accuracy::OfReading(u)) => facts.push(format!(
            "standard uncertainty {} % of reading",
            number(u * 100.0, 2)
        )),
        Some(Accuracy::OfFullScale(u)) => facts.push(format!(
            "standard uncertainty {} % of full scale",
            number(u * 100.0, 2)
        )),
        Some(Accuracy::Decibel(u)) => {
            facts.push(format!("standard uncertainty {} dB", number(u, 3)))
        }
        None => facts.push("no accuracy stated".to_owned()),
    }
    if let Some(x) = i.scale_w {
        facts.push(format!("full scale {}", power(x)));
    }
    if let Some((lo, hi)) = i.band {
        facts.push(format!("{} to {}", frequency(lo), frequency(hi)));
    }
    let share = |u: f64| format!("{} % of reading", number(u * 100.0, 2));
    if let Some(u) = i.linearity {
        let of = match i.linearity_of_scale {
            true => format!("{} % of full scale", number(u * 100.0, 2)),
            false => share(u),
        };
        facts.push(format!("linearity {of} (standard)"));
    }
    if let Some(u) = i.repeatability {
        facts.push(format!("repeatability {} (standard)", share(u)));
    }
    if let Some(x) = i.resolution_w {
        facts.push(format!("steps of {}", power(x)));
    }
    if let Some(x) = i.directivity_db {
        facts.push(format!("directivity {}", db(x)));
    }
    if let Some(d) = &i.calibrated {
        facts.push(format!("calibrated {d}"));
    }
    if let Some(d) = &i.due {
        facts.push(format!("due {d}"));
    }
    w.text(&facts.join(", "));
}
